//! Replies as files that a person can read.
//!
//! `tests/data/bad`: one file a mistake, named for it: the text, and the reply it gets.
//! `tests/data/conversation`: whole conversations. Run with `MATONE_BLESS=1` to write the replies
//! anew, then read the difference.

use std::fmt::Write as _;
use std::path::{Path, PathBuf};

use jiff::{SignedDuration, Timestamp};

use crate::desk::{Office, json, noon};

fn files(folder: &str) -> Vec<PathBuf> {
    let folder = format!("{}/tests/data/{folder}", env!("CARGO_MANIFEST_DIR"));
    let mut files: Vec<PathBuf> = std::fs::read_dir(&folder)
        .unwrap_or_else(|error| panic!("{folder}: {error}"))
        .map(|entry| entry.expect("an entry").path())
        .collect();
    files.sort();
    assert!(!files.is_empty(), "{folder} is empty");
    files
}

fn compare(file: &Path, old: &str, new: &str) {
    if std::env::var_os("MATONE_BLESS").is_some() {
        std::fs::write(file, new).expect("written");
        return;
    }
    assert_eq!(
        old,
        new,
        "{} differs; if the new reply is right, MATONE_BLESS=1",
        file.display()
    );
}

#[test]
fn each_bad_text_gets_the_reply_that_is_written_beside_it() {
    for file in files("bad") {
        let old = std::fs::read_to_string(&file).expect("readable");
        let text = old
            .split("\n---\n")
            .next()
            .expect("a text")
            .trim_end_matches('\n');
        let answered = Office::once(text);
        let line = json(&answered.line(None));
        let dose = ["dose_ml", "drops", "grams", "tablets"]
            .iter()
            .any(|key| !line["answer"][key].is_null());
        assert!(!dose, "{}: {}", file.display(), answered.reply);
        compare(&file, &old, &format!("{text}\n---\n{}\n", answered.reply));
    }
}

/// `# …` is commentary, `@ 25m` lets time pass, `> …` is the person, `< …` is matone.
#[test]
fn conversations_read_as_they_are_written() {
    for file in files("conversation") {
        let old = std::fs::read_to_string(&file).expect("readable");
        let mut office = Office::new();
        let mut now: Timestamp = noon();
        let mut new = String::new();
        for line in old.lines().filter(|line| !line.starts_with('<')) {
            writeln!(new, "{line}").expect("a string");
            if let Some(pause) = line.strip_prefix("@ ") {
                let minutes: i64 = pause
                    .trim_end_matches('m')
                    .parse()
                    .expect("a pause like `@ 25m`");
                now += SignedDuration::from_mins(minutes);
            } else if let Some(text) = line.strip_prefix("> ") {
                writeln!(new, "< {}", office.hear("p", text, now).reply).expect("a string");
                now += SignedDuration::from_mins(1);
            }
        }
        compare(&file, &old, &new);
    }
}

/// The README's exchange is what the program says today.
#[test]
fn the_readme_tells_the_truth() {
    let readme = include_str!("../../README.md");
    let talk = readme
        .split("```text\n")
        .nth(1)
        .and_then(|rest| rest.split("```").next())
        .expect("a conversation in the README");
    let mut office = Office::new();
    let mut lines = talk.lines();
    let mut exchanges = 0;
    while let (Some(question), Some(reply)) = (lines.next(), lines.next()) {
        let text = question.strip_prefix("> ").expect("a question");
        assert_eq!(office.hear("p", text, noon()).reply, reply, "{text:?}");
        exchanges += 1;
    }
    assert!(exchanges >= 4);
}
