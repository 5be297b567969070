//! The languages, as the program is built with them.
//!
//! In: `locales/`, a folder a language.
//! Out: `languages.rs`, which embeds each language's messages as they are and its lexicon as
//! tables, made by the same code that reads a deployer's own lexicon at a start.
//! Promises that a mistake in a lexicon ends the build with its file and key.

use std::fmt::Write as _;
use std::path::{Path, PathBuf};

// What a lexicon is made with, under the names that it has in the program.
#[path = "src/parser"]
#[allow(
    dead_code,
    unfulfilled_lint_expectations,
    unreachable_pub,
    unused_imports,
    clippy::wildcard_enum_match_arm,
    reason = "the program uses more of it, and is where it is linted"
)]
mod parser {
    pub mod concept;
    pub mod lexicon;
    pub mod normalize;
    pub mod number;
}

use parser::lexicon::Lexicon;

const FILES: [&str; 4] = ["lexicon.toml", "plain.txt", "reply.ftl", "checks.toml"];

fn main() {
    println!("cargo::rerun-if-changed=locales");
    let languages = languages();
    for fault in languages.as_ref().err().into_iter().flatten() {
        for line in fault.lines() {
            println!("cargo::error={line}");
        }
    }
}

/// Every language in turn, or what is wrong in all of them.
fn languages() -> Result<(), Vec<String>> {
    let wrong = |error: std::io::Error| vec![format!("locales: {error}")];
    let root = PathBuf::from(std::env::var_os("CARGO_MANIFEST_DIR").unwrap_or_default());
    let out = PathBuf::from(std::env::var_os("OUT_DIR").unwrap_or_default());
    let mut folders = std::fs::read_dir(root.join("locales"))
        .and_then(|entries| {
            entries
                .map(|entry| entry.map(|entry| entry.path()))
                .collect::<Result<Vec<_>, _>>()
        })
        .map_err(wrong)?;
    folders.retain(|folder| folder.is_dir());
    folders.sort();
    let written: Vec<Result<String, Vec<String>>> = std::thread::scope(|scope| {
        let started: Vec<_> = folders
            .iter()
            .map(|folder| scope.spawn(|| language(folder, &out)))
            .collect();
        started
            .into_iter()
            .map(|thread| {
                thread
                    .join()
                    .unwrap_or_else(|_| Err(vec!["locales: a lexicon cannot be built".to_owned()]))
            })
            .collect()
    });
    let mut text = String::new();
    let mut faults = Vec::new();
    for language in written {
        match language {
            Ok(language) => text.push_str(&language),
            Err(wrong) => faults.extend(wrong),
        }
    }
    if !faults.is_empty() {
        return Err(faults);
    }
    std::fs::write(out.join("languages.rs"), format!("&[\n{text}]\n")).map_err(wrong)
}

/// Writes a language's tables; its entry among the languages comes back.
fn language(folder: &Path, out: &Path) -> Result<String, Vec<String>> {
    let tag = folder.file_name().unwrap_or_default().to_string_lossy();
    let read = |name: &str| {
        std::fs::read_to_string(folder.join(name))
            .map_err(|error| vec![format!("locales/{tag}/{name} cannot be read: {error}")])
    };
    for name in FILES {
        read(name)?;
    }
    let tables =
        Lexicon::tables(&read("lexicon.toml")?, &read("plain.txt")?).map_err(|errors| {
            errors
                .into_iter()
                .map(|error| format!("locales/{tag}/lexicon.toml: {error}"))
                .collect::<Vec<_>>()
        })?;
    let place = out.join(format!("{tag}.lexicon"));
    std::fs::write(&place, tables)
        .map_err(|error| vec![format!("{} cannot be written: {error}", place.display())])?;
    let mut entry = String::new();
    writeln!(
        entry,
        "Embedded {{ tag: {tag:?}, tables: include_bytes!({place:?}), \
         reply: include_str!({:?}), checks: include_str!({:?}) }},",
        folder.join("reply.ftl"),
        folder.join("checks.toml"),
    )
    .map_err(|error| vec![error.to_string()])?;
    Ok(entry)
}
