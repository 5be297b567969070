//! The core stays pure: no I/O, no clock, no async, no SQL, no locale, no words for people.

use std::fs;
use std::path::{Path, PathBuf};

/// What the core must never name, outside comments.
const FORBIDDEN: [&str; 16] = [
    "async ",
    "tokio",
    "rusqlite",
    "fluent",
    "unic_langid",
    "std::fs",
    "std::io",
    "std::net",
    "std::env",
    "std::process",
    "std::thread",
    "SystemTime",
    "Instant",
    "Zoned",
    "Timestamp",
    "println!",
];

fn sources(folder: &Path, found: &mut Vec<PathBuf>) {
    for entry in fs::read_dir(folder).expect("the folder is in the repository") {
        let path = entry.expect("an entry").path();
        if path.is_dir() {
            sources(&path, found);
        } else if path.extension().is_some_and(|extension| extension == "rs") {
            found.push(path);
        }
    }
}

#[test]
fn quantity_request_and_treatment_know_no_world() {
    let src = Path::new(env!("CARGO_MANIFEST_DIR")).join("src");
    let mut files = vec![src.join("quantity.rs"), src.join("request.rs")];
    sources(&src.join("treatment"), &mut files);
    assert!(files.len() > 20, "{files:?}");
    for file in files {
        let text = fs::read_to_string(&file).expect("a source file is text");
        for (number, line) in text.lines().enumerate() {
            let code = line.split("//").next().unwrap_or_default();
            for word in FORBIDDEN {
                assert!(
                    !code.contains(word),
                    "{word} in {}:{}",
                    file.display(),
                    number + 1
                );
            }
        }
    }
}

/// `use crate::…` reaches no other room than these.
#[test]
fn the_core_uses_only_quantities_and_requests() {
    let mut files = Vec::new();
    sources(
        &Path::new(env!("CARGO_MANIFEST_DIR")).join("src/treatment"),
        &mut files,
    );
    let mut seen = 0;
    for file in files {
        let text = fs::read_to_string(&file).expect("a source file is text");
        for line in text.lines().map(str::trim) {
            if let Some(room) = line.strip_prefix("use crate::") {
                let known = room.starts_with("quantity::") || room.starts_with("request::");
                assert!(known, "{line} in {}", file.display());
                seen += 1;
            }
        }
    }
    assert!(seen > 10, "{seen}");
}
