//! The store: what is remembered survives, what is forgotten is gone from the file.

use std::path::PathBuf;

use matone::desk::Desk;
use matone::dialogue::Person;
use matone::quantity::UnitSystem;
use matone::request::Product;
use matone::store::{Store, StoreError};

use crate::desk::noon;

/// A folder of its own for each test, removed at the end.
struct Folder(PathBuf);

impl Folder {
    fn new(name: &str) -> Self {
        let path = std::env::temp_dir().join(format!("matone-{}-{name}", std::process::id()));
        let _ = std::fs::remove_dir_all(&path);
        Self(path)
    }

    fn file(&self) -> PathBuf {
        self.0.join("deep").join("matone.db")
    }
}

impl Drop for Folder {
    fn drop(&mut self) {
        let _ = std::fs::remove_dir_all(&self.0);
    }
}

fn tell(store: &mut Store, id: &str, text: &str) -> String {
    let desk = Desk::new(UnitSystem::Metric).expect("a desk");
    let person = store.person(id).expect("a person");
    let answered = desk.answer(&person, text, noon()).expect("an answer");
    store
        .keep(id, answered.step.person.as_ref(), noon())
        .expect("kept");
    answered.reply
}

#[test]
fn the_bottle_units_and_language_are_there_after_a_restart() {
    let folder = Folder::new("restart");
    {
        let mut store = Store::open(&folder.file()).expect("a new store");
        tell(&mut store, "ada", "my bleach is 5%, opened 2 January 2026");
        tell(&mut store, "ada", "use imperial gallons please");
        tell(&mut store, "ada", "answer in English");
    }
    let mut store = Store::open(&folder.file()).expect("the same store");
    let ada = store.person("ada").expect("ada");
    let bottle = ada.bottles.first().cloned().expect("her bottle");
    assert_eq!(bottle.product, Some(Product::Bleach));
    assert_eq!(bottle.strength_percent, Some(5.0));
    assert_eq!(
        bottle.opened.map(|date| date.to_string()).as_deref(),
        Some("2026-01-02")
    );
    assert_eq!(ada.units, Some(UnitSystem::Imperial));
    assert_eq!(ada.language.as_deref(), Some("en"));
    // And somebody else is somebody else.
    assert_eq!(store.person("bo").expect("bo"), Person::default());
    let reply = tell(&mut store, "ada", "2 gallons");
    assert!(
        reply.contains("imp gal") && reply.contains("your bleach 5%"),
        "{reply}"
    );
}

#[test]
fn a_question_waits_for_its_answer_over_a_restart() {
    let folder = Folder::new("question");
    {
        let mut store = Store::open(&folder.file()).expect("a new store");
        tell(&mut store, "ada", "how much bleach for 20 L");
    }
    let mut store = Store::open(&folder.file()).expect("the same store");
    let reply = tell(&mut store, "ada", "5");
    assert!(reply.contains("40 drops"), "{reply}");
}

#[test]
fn what_is_forgotten_is_gone_from_the_file() {
    let folder = Folder::new("forget");
    let needle = "a-sender-nobody-else-has";
    let bytes_hold_it = || {
        ["", "-wal", "-shm"].iter().any(|suffix| {
            let path = format!("{}{suffix}", folder.file().display());
            std::fs::read(path).is_ok_and(|bytes| {
                bytes
                    .windows(needle.len())
                    .any(|at| at == needle.as_bytes())
            })
        })
    };
    let mut store = Store::open(&folder.file()).expect("a new store");
    tell(&mut store, needle, "remember bleach 5%");
    assert!(bytes_hold_it(), "it was kept");
    let reply = tell(&mut store, needle, "forget me");
    assert!(reply.contains("deleted"), "{reply}");
    assert!(!bytes_hold_it(), "it is still in the file");
    assert_eq!(store.person(needle).expect("nobody"), Person::default());
}

#[test]
fn a_conversation_that_cannot_be_read_lapses_and_nothing_else() {
    let folder = Folder::new("lapse");
    {
        let mut store = Store::open(&folder.file()).expect("a new store");
        tell(&mut store, "ada", "remember bleach 5%");
        tell(&mut store, "ada", "how much for the water");
    }
    let raw = rusqlite::Connection::open(folder.file()).expect("the file");
    raw.execute("UPDATE person SET talk = '{\"version\": 999}'", [])
        .expect("a newer program");
    drop(raw);
    let store = Store::open(&folder.file()).expect("the same store");
    let ada = store.person("ada").expect("ada");
    assert!(ada.talk == matone::dialogue::Talk::Quiet);
    assert_eq!(
        ada.current().and_then(|bottle| bottle.strength_percent),
        Some(5.0)
    );
}

#[test]
fn a_file_that_is_no_store_is_refused_and_left_alone() {
    let folder = Folder::new("foreign");
    let file = folder.file();
    std::fs::create_dir_all(file.parent().expect("a folder")).expect("a folder");
    let text = "a diary of somebody, long enough to be no database".repeat(100);
    std::fs::write(&file, &text).expect("written");
    assert!(matches!(Store::open(&file), Err(StoreError::Open { .. })));
    assert_eq!(std::fs::read_to_string(&file).expect("still there"), text);
}

#[test]
fn commits_survive_a_power_cut() {
    let folder = Folder::new("durable");
    let _store = Store::open(&folder.file()).expect("a new store");
    let raw = rusqlite::Connection::open(folder.file()).expect("the file");
    let mode: String = raw
        .query_row("PRAGMA journal_mode", [], |row| row.get(0))
        .expect("a mode");
    assert_eq!(mode, "wal");
}
