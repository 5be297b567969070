//! The states of a session.

use std::time::{Duration, Instant};

use matone::channel::smpp::bind::Credentials;
use matone::channel::smpp::frame::{Frames, Pdu, write};
use matone::channel::smpp::session::{Event, Over, Reaction, Session, following};
use rusmpp::{Command, CommandId, CommandStatus};
use tokio_util::bytes::BytesMut;

use super::socket::{
    BIND_TRANSCEIVER, DELIVER_SM, ENQUIRE_LINK, GENERIC_NACK, RESPONSE, SUBMIT_SM, UNBIND,
    delivery, pdu,
};

const SECOND: Duration = Duration::from_secs(1);
const ENQUIRE: Duration = Duration::from_secs(30);
const OK: u32 = 0;

fn credentials() -> Credentials {
    Credentials {
        system_id: "matone".to_owned(),
        password: "secret".into(),
        system_type: String::new(),
    }
}

fn read(id: u32, status: u32, sequence: u32, body: &[u8]) -> Pdu {
    let mut frames = Frames::default();
    frames
        .space()
        .extend_from_slice(&pdu(id, status, sequence, body));
    frames.next().expect("a PDU").expect("all of it")
}

fn begun(now: Instant) -> Session {
    let (session, bind) = Session::begin(&credentials(), ENQUIRE, now);
    assert_eq!(bind.sequence_number(), 1);
    session
}

fn bound(now: Instant) -> Session {
    let mut session = begun(now);
    let reaction = session.heard(&read(BIND_TRANSCEIVER | RESPONSE, OK, 1, b"smsc\0"), now);
    assert_eq!(reaction.event, Some(Event::Bound));
    assert!(session.is_bound());
    session
}

fn over(reaction: &Reaction) -> Option<&Over> {
    match &reaction.event {
        Some(Event::Over(over)) => Some(over),
        _ => None,
    }
}

fn sent(reaction: &Reaction) -> (CommandId, CommandStatus, u32) {
    let command: &Command = reaction.send.as_ref().expect("a command");
    (command.id(), command.status(), command.sequence_number())
}

#[test]
fn the_bind_is_that_of_version_3_4() {
    let (_, bind) = Session::begin(&credentials(), ENQUIRE, Instant::now());
    let mut octets = BytesMut::new();
    write(&bind, &mut octets);
    let body = b"matone\0secret\0\0\x34\x00\x00\x00";
    assert_eq!(octets, pdu(BIND_TRANSCEIVER, OK, 1, body));
    assert!(!format!("{:?}", credentials()).contains("secret"));
}

#[test]
fn a_refused_bind_is_the_end() {
    let now = Instant::now();
    for (id, sequence) in [(BIND_TRANSCEIVER | RESPONSE, 1), (GENERIC_NACK, 0)] {
        let reaction = begun(now).heard(&read(id, 0x0e, sequence, b""), now);
        let reason = Over::Refused("ESME_RINVPASWD".to_owned());
        assert_eq!(over(&reaction), Some(&reason));
    }
    let mut session = begun(now);
    assert_eq!(session.tick(now + 29 * SECOND), Reaction::default());
    let reaction = session.tick(now + 30 * SECOND);
    assert_eq!(over(&reaction), Some(&Over::Silent("bind_transceiver")));
}

#[test]
fn silence_is_asked_about_and_then_the_end() {
    let mut now = Instant::now();
    let mut session = bound(now);
    now += 20 * SECOND;
    // Whatever is heard, the other side is there.
    let answer = session.heard(&read(ENQUIRE_LINK, OK, 9, b""), now);
    assert_eq!(
        sent(&answer),
        (CommandId::EnquireLinkResp, CommandStatus::EsmeRok, 9)
    );
    assert_eq!(session.wake_at(), now + ENQUIRE);
    now += ENQUIRE;
    let asked = session.tick(now);
    assert_eq!(sent(&asked).0, CommandId::EnquireLink);
    assert_eq!(session.tick(now + SECOND), Reaction::default());
    // An answer, even one of another number.
    let heard = session.heard(&read(ENQUIRE_LINK | RESPONSE, OK, 77, b""), now + SECOND);
    assert_eq!(heard, Reaction::default());
    now += SECOND + ENQUIRE;
    assert_eq!(sent(&session.tick(now)).0, CommandId::EnquireLink);
    let reaction = session.tick(now + 30 * SECOND);
    assert_eq!(over(&reaction), Some(&Over::Silent("enquire_link")));
}

#[test]
fn deliveries_are_taken_only_while_bound() {
    let now = Instant::now();
    let deliver = read(DELIVER_SM, OK, 5, &delivery("255700000001", "hello", &[]));
    let reaction = begun(now).heard(&deliver, now);
    assert_eq!(
        sent(&reaction),
        (CommandId::DeliverSmResp, CommandStatus::EsmeRinvbndsts, 5)
    );
    let mut session = bound(now);
    let reaction = session.heard(&deliver, now);
    assert_eq!(reaction.send, None);
    assert!(matches!(
        reaction.event,
        Some(Event::Delivered {
            sequence: 5,
            delivery: Some(_)
        })
    ));
    let reaction = session.heard(&read(DELIVER_SM, OK, 6, b"no fields"), now);
    assert_eq!(
        reaction.event,
        Some(Event::Delivered {
            sequence: 6,
            delivery: None
        })
    );
    let _ = session.unbind(now);
    assert_eq!(session.heard(&deliver, now), Reaction::default());
}

#[test]
fn answers_carry_the_name_if_there_is_one() {
    let now = Instant::now();
    let mut session = bound(now);
    for (id, status, body, expected, name) in [
        (
            SUBMIT_SM | RESPONSE,
            OK,
            &b"name\0"[..],
            CommandStatus::EsmeRok,
            Some("name"),
        ),
        // Without its zero, and with none.
        (
            SUBMIT_SM | RESPONSE,
            OK,
            b"name",
            CommandStatus::EsmeRok,
            Some("name"),
        ),
        (SUBMIT_SM | RESPONSE, OK, b"", CommandStatus::EsmeRok, None),
        (
            SUBMIT_SM | RESPONSE,
            0x58,
            b"",
            CommandStatus::EsmeRthrottled,
            None,
        ),
        (
            SUBMIT_SM | RESPONSE,
            0x58,
            b"name\0",
            CommandStatus::EsmeRthrottled,
            None,
        ),
        (GENERIC_NACK, 3, b"", CommandStatus::EsmeRinvcmdid, None),
        // A refusal is none the less one.
        (GENERIC_NACK, OK, b"", CommandStatus::EsmeRsyserr, None),
    ] {
        let reaction = session.heard(&read(id, status, 7, body), now);
        assert_eq!(
            reaction.event,
            Some(Event::Answered {
                sequence: 7,
                status: expected,
                name: name.map(str::to_owned),
            })
        );
        assert_eq!(reaction.send, None);
    }
}

#[test]
fn both_sides_can_say_goodbye() {
    let now = Instant::now();
    let reaction = bound(now).heard(&read(UNBIND, OK, 4, b""), now);
    assert_eq!(
        sent(&reaction),
        (CommandId::UnbindResp, CommandStatus::EsmeRok, 4)
    );
    assert_eq!(over(&reaction), Some(&Over::Unbound));
    let mut session = bound(now);
    assert_eq!(session.unbind(now).id(), CommandId::Unbind);
    assert!(!session.is_bound());
    // What was in flight may still be answered.
    let answer = session.heard(&read(SUBMIT_SM | RESPONSE, OK, 3, b"n\0"), now);
    assert!(matches!(answer.event, Some(Event::Answered { .. })));
    let reaction = session.heard(&read(UNBIND | RESPONSE, OK, 2, b""), now);
    assert_eq!(over(&reaction), Some(&Over::Ended));
    // Who does not answer is not waited for.
    let mut session = bound(now);
    let _ = session.unbind(now);
    assert_eq!(over(&session.tick(now + SECOND)), Some(&Over::Ended));
}

#[test]
fn sequence_numbers_stay_within_the_standards_range() {
    let mut session = bound(Instant::now());
    assert_eq!([session.sequence(), session.sequence()], [2, 3]);
    assert_eq!(following(0x7fff_fffe), 0x7fff_ffff);
    assert_eq!(following(0x7fff_ffff), 1);
}
