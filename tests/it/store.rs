//! The store: what is remembered survives, what is forgotten is gone from the file.

use std::path::PathBuf;

use matone::dialogue::{Person, Waited};
use matone::quantity::UnitSystem;
use matone::request::Product;
use matone::store::{Store, StoreError, Whose};

use crate::desk::noon;
use crate::folder::Folder;

/// The store of a test: in a folder that is not there yet.
fn file(folder: &Folder) -> PathBuf {
    folder.path("deep").join("matone.db")
}

fn tell(store: &mut Store, id: &str, text: &str) -> String {
    let desk = crate::desk::desk();
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
        let mut store = Store::open(&file(&folder)).expect("a new store");
        tell(&mut store, "ada", "my bleach is 5%, opened 2 January 2026");
        tell(&mut store, "ada", "use imperial gallons please");
        tell(&mut store, "ada", "answer in English");
    }
    let mut store = Store::open(&file(&folder)).expect("the same store");
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
        let mut store = Store::open(&file(&folder)).expect("a new store");
        tell(&mut store, "ada", "how much bleach for 20 L");
    }
    let mut store = Store::open(&file(&folder)).expect("the same store");
    let reply = tell(&mut store, "ada", "5");
    assert!(reply.contains("40 drops"), "{reply}");
}

#[test]
fn what_is_forgotten_is_gone_from_the_file() {
    let folder = Folder::new("forget");
    let needle = "a-sender-nobody-else-has";
    let bytes_hold_it = || {
        ["", "-wal", "-shm"].iter().any(|suffix| {
            let path = format!("{}{suffix}", file(&folder).display());
            std::fs::read(path).is_ok_and(|bytes| {
                bytes
                    .windows(needle.len())
                    .any(|at| at == needle.as_bytes())
            })
        })
    };
    let mut store = Store::open(&file(&folder)).expect("a new store");
    tell(&mut store, needle, "remember bleach 5%, 500 ml");
    tell(&mut store, needle, "20 L");
    tell(&mut store, needle, "remind me");
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
        let mut store = Store::open(&file(&folder)).expect("a new store");
        tell(&mut store, "ada", "remember bleach 5%");
        tell(&mut store, "ada", "how much for the water");
    }
    let raw = rusqlite::Connection::open(file(&folder)).expect("the file");
    raw.execute("UPDATE person SET talk = '{\"version\": 999}'", [])
        .expect("a newer program");
    drop(raw);
    let store = Store::open(&file(&folder)).expect("the same store");
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
    let file = file(&folder);
    std::fs::create_dir_all(file.parent().expect("a folder")).expect("a folder");
    let text = "a diary of somebody, long enough to be no database".repeat(100);
    std::fs::write(&file, &text).expect("written");
    assert!(matches!(Store::open(&file), Err(StoreError::Open { .. })));
    assert_eq!(std::fs::read_to_string(&file).expect("still there"), text);
}

#[test]
fn commits_survive_a_power_cut() {
    let folder = Folder::new("durable");
    let _store = Store::open(&file(&folder)).expect("a new store");
    let raw = rusqlite::Connection::open(file(&folder)).expect("the file");
    let mode: String = raw
        .query_row("PRAGMA journal_mode", [], |row| row.get(0))
        .expect("a mode");
    assert_eq!(mode, "wal");
}

#[test]
fn a_reminder_survives_a_restart_and_is_handed_out_once() {
    let folder = Folder::new("reminder");
    {
        let mut store = Store::open(&file(&folder)).expect("a new store");
        tell(&mut store, "ada", "20 L bleach 5%");
        let reply = tell(&mut store, "ada", "text me when it is ready");
        assert!(reply.contains("30 min"), "{reply}");
        tell(&mut store, "bo", "well 1 m wide, 2 m of water, bleach 5%");
        tell(&mut store, "bo", "remind me");
    }
    let mut store = Store::open(&file(&folder)).expect("the same store");
    let after = |minutes: i64| noon() + jiff::SignedDuration::from_mins(minutes);
    assert_eq!(store.take_due(Whose::Anybody, after(29)).expect("due"), []);
    assert_eq!(
        store.take_due(Whose::One("bo"), after(31)).expect("due"),
        []
    );
    let due = store.take_due(Whose::Anybody, after(31)).expect("due");
    let [due] = due.as_slice() else {
        panic!("{due:?}");
    };
    assert_eq!(due.person, "ada");
    let reminder = due.reminder.expect("readable");
    assert_eq!((reminder.kind, reminder.wait_min), (Waited::Chlorine, 30));
    let desk = crate::desk::desk();
    let locale = desk.locale(due.language.as_deref()).expect("a locale");
    let text = matone::reply::reminder(&reminder, locale).expect("a text");
    assert!(text.contains("30 min") && text.contains("Smell"), "{text}");
    assert_eq!(store.take_due(Whose::Anybody, after(31)).expect("due"), []);
    let late = store.take_due(Whose::Anybody, after(12 * 60)).expect("due");
    assert_eq!(late.len(), 1);
}

#[test]
fn stop_and_forget_end_what_was_promised() {
    let folder = Folder::new("promised");
    let mut store = Store::open(&file(&folder)).expect("a new store");
    for (who, word) in [("ada", "stop"), ("bo", "forget me")] {
        tell(&mut store, who, "20 L bleach 5%");
        tell(&mut store, who, "remind me");
        assert_eq!(store.person(who).expect("a person").reminders.len(), 1);
        tell(&mut store, who, word);
        assert!(store.person(who).expect("a person").reminders.is_empty());
    }
    let later = noon() + jiff::SignedDuration::from_hours(24);
    assert_eq!(store.take_due(Whose::Anybody, later).expect("due"), []);
}

#[test]
fn bottles_keep_their_order_and_what_is_left() {
    let folder = Folder::new("bottles");
    {
        let mut store = Store::open(&file(&folder)).expect("a new store");
        tell(&mut store, "ada", "remember bleach 5%, 500 ml");
        tell(&mut store, "ada", "remember chlorine tablets 67 mg");
        tell(&mut store, "ada", "20 L with my bleach");
    }
    let store = Store::open(&file(&folder)).expect("the same store");
    let ada = store.person("ada").expect("ada");
    let products: Vec<_> = ada.bottles.iter().map(|bottle| bottle.product).collect();
    assert_eq!(products, [Some(Product::Bleach), Some(Product::Nadcc)]);
    let left = ada.current().and_then(|bottle| bottle.left).expect("left");
    assert_eq!((left.amount, left.drawn), (498.0, 2.0));
}

/// The first released shape of the store: what it holds must not be lost.
#[test]
fn a_store_of_the_first_shape_is_brought_up_to_date() {
    let folder = Folder::new("first-shape");
    let file = file(&folder);
    std::fs::create_dir_all(file.parent().expect("a folder")).expect("a folder");
    let old = rusqlite::Connection::open(&file).expect("the file");
    old.execute_batch(include_str!("../../src/store/migrations/0001_person.sql"))
        .expect("the first shape");
    old.execute_batch(
        "INSERT INTO person VALUES ('ada', 'en', 'us', 'open', '{}', 0);
         INSERT INTO bottle VALUES ('ada', 'bleach', 5.0, NULL, '2026-01-02', 1767312000);
         PRAGMA user_version = 1;",
    )
    .expect("a person of then");
    drop(old);
    let store = Store::open(&file).expect("brought up to date");
    let ada = store.person("ada").expect("ada");
    assert_eq!(ada.units, Some(UnitSystem::Us));
    let bottle = ada.current().expect("her bottle");
    assert_eq!(bottle.strength_percent, Some(5.0));
    assert_eq!(bottle.left, None);
}
