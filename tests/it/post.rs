//! The inbox and the outbox: kept before it is said, answered once, sent until it is taken.

use std::sync::Arc;
use std::time::Duration;

use jiff::{SignedDuration, Timestamp};
use matone::dialogue::Person;
use matone::message::{
    Address, Arrival, ChannelName, DeliveryKey, OutboxId, PartOf, Receipt, Sending,
};
use matone::post::{GIVE_UP_AFTER, Keeper, Metrics, Spread, fate};
use matone::privacy::{Purpose, Seal, without_numbers};
use matone::store::{
    Change, Claimed, Effect, Fate, InboxId, Known, Ledger, LedgerReader, Outcome, Outgoing, Purge,
    Question, Reach, Received, Settled, Settlement, Store, Taken,
};

use crate::folder::Folder;

fn at(second: i64) -> Timestamp {
    Timestamp::from_second(1_770_000_000 + second).expect("a time")
}

fn carrier() -> ChannelName {
    "carrier".into()
}

fn named(name: &str) -> Received {
    Received {
        channel: carrier(),
        delivery: name.as_bytes().to_vec(),
        known: Known::ByName,
        part: None,
        person: "p".to_owned(),
        address: b"address".to_vec(),
        body: b"body".to_vec(),
        at: at(0),
    }
}

fn alike(session: i64, second: i64) -> Received {
    let since = |span| at(second).checked_sub(SignedDuration::from_secs(span));
    Received {
        known: Known::ByLikeness {
            session,
            same_session_since: since(12).expect("a time"),
            other_session_since: since(600).expect("a time"),
        },
        at: at(second),
        ..named("alike")
    }
}

fn part(name: &str, number: u8, total: u8) -> Received {
    Received {
        part: Some(PartOf {
            reference: 7,
            total,
            number,
        }),
        body: name.as_bytes().to_vec(),
        ..named(name)
    }
}

fn take(store: &mut Store, received: Received) -> Taken {
    let effects = store.apply(&[Change::Receive(received)]).expect("written");
    match effects.as_slice() {
        [Effect::Received(taken)] => *taken,
        other => panic!("{other:?}"),
    }
}

fn answered(id: InboxId, person: Option<Person>) -> Change {
    Change::Settle(Box::new(Settled {
        id,
        person: "p".to_owned(),
        at: at(1),
        how: Settlement::Answered {
            person: person.map(Box::new),
            reach: Reach {
                channel: carrier(),
                address: b"address".to_vec(),
            },
            question: Question {
                language: "en".to_owned(),
                topic: "unclear".to_owned(),
                request: "{}".to_owned(),
                outcome: Outcome::NotUnderstood,
                detail: String::new(),
                segments: 1,
                unread: Some("wat".to_owned()),
            },
            reply: Outgoing {
                channel: carrier(),
                address: b"address".to_vec(),
                body: b"reply".to_vec(),
                next_words: vec!["HELP".to_owned()],
            },
        },
    }))
}

fn claim(store: &mut Store, now: Timestamp) -> Vec<Claimed> {
    let effects = store
        .apply(&[Change::Claim {
            channel: carrier(),
            now,
            lease: now + Duration::from_secs(120),
            most: 10,
        }])
        .expect("written");
    match effects.into_iter().next() {
        Some(Effect::Claimed(claimed)) => claimed,
        other => panic!("{other:?}"),
    }
}

fn sent(id: OutboxId, fate: Fate, second: i64) -> Change {
    Change::Sent {
        id,
        channel: carrier(),
        fate,
        at: at(second),
    }
}

#[test]
fn a_delivery_with_a_name_is_taken_once_for_ever() {
    let mut store = Store::in_memory().expect("a store");
    assert_eq!(take(&mut store, named("1")), Taken::New);
    assert_eq!(take(&mut store, named("2")), Taken::New);
    let later = Received {
        at: at(400 * 24 * 3600),
        ..named("1")
    };
    assert_eq!(take(&mut store, later), Taken::Again);
    assert_eq!(store.waiting(10).expect("read").len(), 2);
}

#[test]
fn a_delivery_without_a_name_is_the_same_for_a_while() {
    let mut store = Store::in_memory().expect("a store");
    assert_eq!(take(&mut store, alike(1, 0)), Taken::New);
    assert_eq!(take(&mut store, alike(1, 5)), Taken::Again);
    // MORE, read and asked for again.
    assert_eq!(take(&mut store, alike(1, 30)), Taken::New);
    // The network lost the session before it heard that we had it.
    assert_eq!(take(&mut store, alike(2, 400)), Taken::Again);
    assert_eq!(take(&mut store, alike(2, 2000)), Taken::New);
}

#[test]
fn a_long_message_waits_until_it_is_whole_and_reads_in_order() {
    let mut store = Store::in_memory().expect("a store");
    assert_eq!(take(&mut store, part("two", 2, 3)), Taken::Part);
    assert_eq!(take(&mut store, part("three", 3, 3)), Taken::Part);
    assert_eq!(take(&mut store, part("two", 2, 3)), Taken::Again);
    assert_eq!(store.waiting(10).expect("read"), []);
    assert_eq!(take(&mut store, part("one", 1, 3)), Taken::New);
    let waiting = store.waiting(10).expect("read");
    let [whole] = waiting.as_slice() else {
        panic!("{waiting:?}")
    };
    let bodies: Vec<&[u8]> = whole.bodies.iter().map(Vec::as_slice).collect();
    assert_eq!(bodies, [b"one".as_slice(), b"two", b"three"]);
    store
        .apply(&[answered(whole.id, Some(Person::default()))])
        .expect("written");
    assert_eq!(store.waiting(10).expect("read"), []);
}

#[test]
fn a_long_message_that_never_gets_whole_is_answered_without_its_text() {
    let mut store = Store::in_memory().expect("a store");
    assert_eq!(take(&mut store, part("one", 1, 2)), Taken::Part);
    store
        .apply(&[Change::GatherLate { before: at(0) }])
        .expect("written");
    assert_eq!(store.waiting(10).expect("read"), []);
    store
        .apply(&[Change::GatherLate { before: at(1) }])
        .expect("written");
    let waiting = store.waiting(10).expect("read");
    assert_eq!(waiting.len(), 1);
    assert!(waiting.iter().all(|message| message.bodies.is_empty()));
}

#[test]
fn a_message_that_is_settled_twice_is_answered_once() {
    let mut store = Store::in_memory().expect("a store");
    take(&mut store, named("1"));
    let id = store.waiting(1).expect("read").first().expect("one").id;
    for _ in 0..2 {
        store
            .apply(&[answered(id, Some(Person::default()))])
            .expect("written");
    }
    assert_eq!(claim(&mut store, at(2)).len(), 1);
}

#[test]
fn what_is_lent_is_nobody_elses_until_the_lease_is_over() {
    let mut store = Store::in_memory().expect("a store");
    take(&mut store, named("1"));
    store
        .apply(&[answered(InboxId(1), Some(Person::default()))])
        .expect("written");
    let first = claim(&mut store, at(2));
    assert_eq!(first.iter().map(|row| row.attempt).collect::<Vec<_>>(), [1]);
    assert_eq!(claim(&mut store, at(3)), []);
    let second = claim(&mut store, at(200));
    assert_eq!(
        second.iter().map(|row| row.attempt).collect::<Vec<_>>(),
        [2]
    );
    // The program ended in the middle: the next one goes on at once.
    store.apply(&[Change::Resume]).expect("written");
    assert_eq!(claim(&mut store, at(201)).len(), 1);
}

#[test]
fn what_is_sent_keeps_neither_address_nor_text() {
    let folder = Folder::new("sent");
    let path = folder.path("matone.db");
    let mut store = Store::open(&path).expect("a store");
    take(&mut store, named("1"));
    store
        .apply(&[answered(InboxId(1), Some(Person::default()))])
        .expect("written");
    let id = claim(&mut store, at(2)).first().expect("one").id;
    store
        .apply(&[
            sent(id, Fate::PartAccepted(1), 3),
            sent(id, Fate::Accepted(vec!["c1".to_owned()]), 3),
            Change::Receipt {
                channel: carrier(),
                carrier_id: "c1".to_owned(),
                receipt: Receipt::Delivered,
            },
        ])
        .expect("written");
    assert_eq!(claim(&mut store, at(4000)), []);
    let raw = rusqlite::Connection::open(&path).expect("open");
    let kept: (i64, i64, i64) = raw
        .query_row(
            "SELECT state, length(address) + length(body),
                    (SELECT sum(length(address) + length(body)) FROM inbox) FROM outbox",
            [],
            |row| Ok((row.get(0)?, row.get(1)?, row.get(2)?)),
        )
        .expect("read");
    assert_eq!(kept, (3, 0, 0));
    store
        .apply(&[Change::Purge(Purge {
            unread_before: at(2),
            sent_before: at(4),
        })])
        .expect("written");
    let left: i64 = raw
        .query_row(
            "SELECT (SELECT count(*) FROM outbox) + (SELECT count(*) FROM unread)
                  + (SELECT count(*) FROM carried)",
            [],
            |row| row.get(0),
        )
        .expect("read");
    assert_eq!(left, 0);
}

#[test]
fn somebody_who_is_forgotten_leaves_nothing_but_that_a_message_came() {
    let folder = Folder::new("forgotten");
    let path = folder.path("matone.db");
    let mut store = Store::open(&path).expect("a store");
    for (name, person) in [("1", Some(Person::default())), ("2", None)] {
        take(&mut store, named(name));
        let id = store.waiting(1).expect("read").first().expect("one").id;
        store.apply(&[answered(id, person)]).expect("written");
    }
    let raw = rusqlite::Connection::open(&path).expect("open");
    let left: i64 = raw
        .query_row(
            "SELECT (SELECT count(*) FROM person) + (SELECT count(*) FROM question)
                  + (SELECT count(*) FROM unread)",
            [],
            |row| row.get(0),
        )
        .expect("read");
    assert_eq!(left, 0);
    // The reply that says so still goes out.
    assert_eq!(claim(&mut store, at(2)).len(), 2);
}

#[test]
fn attempts_get_rarer_and_end() {
    let again = |attempt, second| {
        let sending = Sending::TryAgain {
            reason: "busy".to_owned(),
            after: None,
        };
        fate(&sending, attempt, at(0), at(second), Spread::from_random(0))
    };
    assert_eq!(again(1, 0), Fate::Again(at(4)));
    assert_eq!(again(3, 0), Fate::Again(at(16)));
    assert_eq!(again(30, 0), Fate::Again(at(15 * 60)));
    let end = i64::try_from(GIVE_UP_AFTER.as_secs()).expect("short");
    assert_eq!(again(5, end), Fate::GivenUp);
    let wanted = Sending::TryAgain {
        reason: "busy".to_owned(),
        after: Some(Duration::from_secs(77)),
    };
    let spread = Spread::from_random(u16::MAX);
    assert_eq!(fate(&wanted, 1, at(0), at(0), spread), Fate::Again(at(77)));
}

#[test]
fn what_is_sealed_opens_for_its_purpose_and_its_key_only() {
    let seal = Seal::from_key(&[7; 32]);
    let address = Address::phone("+255 700 000 001");
    let sealed = seal.close_address(&address).expect("sealed");
    assert_eq!(seal.open_address(&sealed).expect("opened"), address);
    assert!(!sealed.windows(6).any(|six| six == b"700000"));
    assert!(Seal::from_key(&[8; 32]).open_address(&sealed).is_err());
    assert!(seal.open(&sealed, Purpose::Inbox).is_err());
    let twice = seal.close_address(&address).expect("sealed");
    assert_ne!(sealed, twice, "the same number twice shows nothing");
    assert_eq!(
        seal.person(&address),
        seal.person(&Address::phone("00255700000001"))
    );
    assert_ne!(
        seal.person(&address),
        Seal::from_key(&[8; 32]).person(&address)
    );
}

#[test]
fn the_key_file_is_made_once_and_for_its_owner_only() {
    use std::os::unix::fs::PermissionsExt;
    let folder = Folder::new("key");
    let path = folder.path("matone.key");
    let address = Address::chat(42);
    let person = Seal::open_or_make(&path).expect("made").person(&address);
    let mode = std::fs::metadata(&path)
        .expect("a file")
        .permissions()
        .mode();
    assert_eq!(mode & 0o777, 0o600);
    assert_eq!(
        Seal::open_or_make(&path).expect("read").person(&address),
        person
    );
    std::fs::set_permissions(&path, std::fs::Permissions::from_mode(0o644)).expect("set");
    let error = Seal::open_or_make(&path).expect_err("open to others");
    assert!(error.to_string().contains("chmod 600"), "{error}");
}

#[test]
fn telephone_numbers_are_blanked_and_amounts_are_not() {
    for (text, kept) in [
        ("call me on 0700 123 456 now", "call me on #### ### ### now"),
        ("+255-700-000-001", "+###-###-###-###"),
        ("٠٧٠٠١٢٣٤٥٦ كلور", "########## كلور"),
        ("20 L bleach 5.25%", "20 L bleach 5.25%"),
        ("1500 L", "1500 L"),
    ] {
        assert_eq!(without_numbers(text), kept);
    }
}

/// One that cannot be made does not take the others of its group with it.
#[tokio::test]
async fn a_change_that_fails_costs_itself_only() {
    struct Grumpy(Store);
    impl Ledger for Grumpy {
        fn apply(&mut self, changes: &[Change]) -> Result<Vec<Effect>, matone::store::StoreError> {
            let bad = Change::Receive(named("bad"));
            if changes.contains(&bad) {
                return Err(rusqlite::Error::InvalidQuery.into());
            }
            self.0.apply(changes)
        }
    }
    let store = Store::in_memory().expect("a store");
    let (keeper, _thread) =
        Keeper::start(Box::new(Grumpy(store)), Arc::new(Metrics::default())).expect("a thread");
    let names = ["1", "bad", "2", "3"];
    let jobs = names.map(|name| {
        let keeper = keeper.clone();
        tokio::spawn(async move { keeper.change(Change::Receive(named(name))).await })
    });
    for (name, job) in names.into_iter().zip(jobs) {
        let done = job.await.expect("it ran");
        assert_eq!(done.is_err(), name == "bad", "{name}");
    }
}

/// What a channel hands in is a plain value: nothing of a network's own types.
#[test]
fn an_arrival_does_not_show_whose_it_is() {
    let arrival = Arrival {
        from: Address::phone("+255700000001"),
        text: "hello".to_owned(),
        part: None,
        delivery: DeliveryKey::Named("1".to_owned()),
        at: at(0),
    };
    assert!(!format!("{:?}", arrival.from).contains("700000001"));
}
