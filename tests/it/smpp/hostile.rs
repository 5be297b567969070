//! The real program against a socket that says whatever it likes.

use super::program::Program;
use super::socket::{
    DELIVER_SM, ENQUIRE_LINK, GENERIC_NACK, RESPONSE, SUBMIT_SM, Socket, UNBIND, delivery, pdu, tlv,
};

const PERSON: &str = "255700000001";
const QUESTION: &str = "2 gallons cloudy 1% bleach";

fn question() -> Vec<u8> {
    delivery(PERSON, QUESTION, &[])
}

#[test]
fn a_pdu_in_pieces_is_one_pdu() {
    let socket = Socket::listen();
    let _program = Program::start(socket.port(), "", "");
    let mut wire = socket.bound();
    for octet in pdu(DELIVER_SM, 0, 1, &question()) {
        wire.say(&[octet]);
    }
    let taken = wire.hear();
    assert_eq!(
        (taken.id, taken.status, taken.sequence),
        (DELIVER_SM | RESPONSE, 0, 1)
    );
    wire.accept();
    // And several in one piece.
    let link = pdu(ENQUIRE_LINK, 0, 7, &[]);
    wire.say(&[link.clone(), link.clone(), link].concat());
    for _ in 0..3 {
        let answer = wire.hear_a(ENQUIRE_LINK | RESPONSE);
        assert_eq!((answer.status, answer.sequence), (0, 7));
    }
}

#[test]
fn what_cannot_be_read_is_acknowledged_and_costs_only_itself() {
    let socket = Socket::listen();
    let program = Program::start(socket.port(), "", "");
    let mut wire = socket.bound();
    let mut short = question();
    short.truncate(20);
    let mut overlong = question();
    let length_at = overlong.len() - QUESTION.len() - 1;
    overlong[length_at] = 255;
    let mut binary = question();
    binary[length_at - 2] = 4;
    let mut headed = question();
    let esm_class_at = length_at - 9;
    headed[esm_class_at] = 0x40;
    let bad = [Vec::new(), vec![0xff; 300], short, overlong, binary, headed];
    for (sequence, body) in (10..).zip(&bad) {
        let answer = wire.bring(sequence, body);
        assert_eq!((answer.status, answer.sequence), (0, sequence));
    }
    program.wait_for_metric(
        "matone_messages_set_aside_total{channel=\"carrier\",reason=\"unreadable\"}",
        6.0,
    );
    // The next one is read in the same session.
    assert_eq!(wire.bring(20, &question()).status, 0);
    wire.accept();
}

#[test]
fn optional_parameters_of_odd_lengths_do_no_harm() {
    let socket = Socket::listen();
    let program = Program::start(socket.port(), "", "");
    let mut wire = socket.bound();
    assert_eq!(wire.bring(1, &question()).status, 0);
    let submit = wire.hear_a(SUBMIT_SM);
    wire.say(&pdu(SUBMIT_SM | RESPONSE, 0, submit.sequence, b"beef\0"));
    program.wait_for_metric("matone_replies_sent_total{channel=\"carrier\"}", 1.0);
    // The name without its zero, and a parameter that ends behind the PDU.
    let mut receipt = delivery(PERSON, "", &tlv(0x001e, b"BEEF"));
    receipt.extend(tlv(0x0427, &[2]));
    receipt.extend([0x02, 0x0c, 0x00, 0x09, 1]);
    assert_eq!(wire.bring(2, &receipt).status, 0);
    program.wait_for_metric("matone_replies_delivered_total{channel=\"carrier\"}", 1.0);
    // A reference of one octet.
    for (number, half) in (1..).zip(["2 gallons clear", " 1% bleach"]) {
        let tlvs = [tlv(0x020c, &[7]), tlv(0x020e, &[2]), tlv(0x020f, &[number])].concat();
        let body = delivery(PERSON, half, &tlvs);
        assert_eq!(wire.bring(2 + u32::from(number), &body).status, 0);
    }
    wire.accept();
}

#[test]
fn unknown_requests_are_refused_and_unknown_answers_ignored() {
    let socket = Socket::listen();
    let _program = Program::start(socket.port(), "", "");
    let mut wire = socket.bound();
    let invalid_command = 3;
    for id in [0x777, 0x103, 0x7fff_ffff] {
        wire.say(&pdu(id, 0, 5, b"whatever"));
        let answer = wire.hear();
        assert_eq!(
            (answer.id, answer.status, answer.sequence),
            (GENERIC_NACK, invalid_command, 5)
        );
    }
    for id in [
        0x8000_0777,
        SUBMIT_SM | RESPONSE,
        GENERIC_NACK,
        UNBIND | RESPONSE,
        0x102,
    ] {
        wire.say(&pdu(id, 0, 99, b""));
    }
    wire.say(&pdu(ENQUIRE_LINK, 0, 6, b"with a body"));
    let answer = wire.hear();
    assert_eq!((answer.id, answer.sequence), (ENQUIRE_LINK | RESPONSE, 6));
    assert_eq!(wire.bring(7, &question()).status, 0);
}

#[test]
fn a_stream_without_measure_is_ended_and_begun_anew() {
    let socket = Socket::listen();
    let _program = Program::start(socket.port(), "", "");
    let invalid_length = 2;
    let endless = [&u32::MAX.to_be_bytes()[..], &[0x15; 60]].concat();
    let tiny = [&15_u32.to_be_bytes()[..], &[0; 60]].concat();
    for garbage in [endless, tiny] {
        let mut wire = socket.bound();
        wire.say(&garbage);
        let answer = wire.hear();
        assert_eq!(
            (answer.id, answer.status, answer.sequence),
            (GENERIC_NACK, invalid_length, 0)
        );
        wire.hear_the_end();
    }
    let mut wire = socket.bound();
    assert_eq!(wire.bring(1, &question()).status, 0);
}

#[test]
fn a_connection_that_ends_in_the_middle_of_a_pdu_is_made_again() {
    let socket = Socket::listen();
    let program = Program::start(socket.port(), "", "");
    let mut wire = socket.bound();
    let whole = pdu(DELIVER_SM, 0, 1, &question());
    wire.say(&whole[..40]);
    drop(wire);
    let mut wire = socket.bound();
    assert_eq!(wire.bring(1, &question()).status, 0);
    wire.accept();
    program.wait_for_metric("matone_messages_received_total{channel=\"carrier\"}", 1.0);
}

#[test]
fn a_reply_in_flight_when_the_connection_ends_is_sent_again() {
    let socket = Socket::listen();
    let program = Program::start(socket.port(), "", "");
    let mut wire = socket.bound();
    assert_eq!(wire.bring(1, &question()).status, 0);
    let first = wire.hear_a(SUBMIT_SM);
    drop(wire);
    let mut wire = socket.bound();
    let second = wire.accept();
    assert_eq!(first.body, second.body);
    program.wait_for_metric("matone_replies_sent_total{channel=\"carrier\"}", 1.0);
}

#[test]
fn parts_that_were_accepted_are_not_sent_again() {
    let socket = Socket::listen();
    let program = Program::start(socket.port(), "", "");
    let mut wire = socket.bound();
    let long = "how long to boil at 3000 m altitude muddy";
    assert_eq!(wire.bring(1, &delivery(PERSON, long, &[])).status, 0);
    let first = wire.accept();
    let second = wire.hear_a(SUBMIT_SM);
    drop(wire);
    let mut wire = socket.bound();
    let again = wire.accept();
    assert_ne!(again.body, first.body);
    assert_eq!(again.body, second.body);
    // Any others, until all of it is accepted.
    let [.., total, mut number] = header(&again.body);
    while number < total {
        [.., number] = header(&wire.accept().body);
    }
    program.wait_for_metric("matone_replies_sent_total{channel=\"carrier\"}", 1.0);
}

/// The header of a part, by its first octets.
fn header(body: &[u8]) -> [u8; 6] {
    let at = body
        .windows(3)
        .position(|octets| octets == [5, 0, 3])
        .expect("a header");
    body[at..at + 6].try_into().unwrap()
}

#[test]
fn a_delivery_before_the_bind_is_not_taken() {
    let socket = Socket::listen();
    let program = Program::start(socket.port(), "", "");
    let mut wire = socket.accept();
    wire.hear();
    let not_bound = 4;
    wire.say(&pdu(DELIVER_SM, 0, 1, &question()));
    let answer = wire.hear();
    assert_eq!(
        (answer.id, answer.status),
        (DELIVER_SM | RESPONSE, not_bound)
    );
    assert_eq!(
        program.metric("matone_messages_received_total{channel=\"carrier\"}"),
        Some(0.0)
    );
    drop(wire);
    let mut wire = socket.bound();
    assert_eq!(wire.bring(1, &question()).status, 0);
}

#[test]
fn a_session_that_the_smsc_forgot_is_begun_anew() {
    let socket = Socket::listen();
    let program = Program::start(socket.port(), "", "");
    let mut wire = socket.bound();
    assert_eq!(wire.bring(1, &question()).status, 0);
    let submit = wire.hear_a(SUBMIT_SM);
    let not_bound = 4;
    wire.say(&pdu(SUBMIT_SM | RESPONSE, not_bound, submit.sequence, b""));
    wire.hear_the_end();
    let mut wire = socket.bound();
    wire.accept();
    program.wait_for_metric("matone_replies_sent_total{channel=\"carrier\"}", 1.0);
}

#[test]
fn a_flood_is_taken_in_without_losing_any() {
    let socket = Socket::listen();
    let program = Program::start(socket.port(), "", "[limits]\nper_person_per_minute = 1");
    let mut wire = socket.bound();
    let count = 2000_u32;
    let mut flood = Vec::new();
    for sequence in 1..=count {
        let from = format!("2557{:08}", sequence % 1000);
        let body = delivery(&from, &format!("flim flam {sequence}"), &[]);
        flood.extend(pdu(DELIVER_SM, 0, sequence, &body));
    }
    wire.say(&flood);
    let mut answered = 0;
    while answered < count {
        let heard = wire.hear();
        match heard.id {
            id if id == DELIVER_SM | RESPONSE => {
                assert_eq!(heard.status, 0);
                answered += 1;
            }
            SUBMIT_SM => {
                wire.say(&pdu(SUBMIT_SM | RESPONSE, 0, heard.sequence, b"n\0"));
            }
            other => panic!("{other:x}"),
        }
    }
    program.wait_for_metric(
        "matone_messages_received_total{channel=\"carrier\"}",
        f64::from(count),
    );
}

#[test]
fn a_store_that_stands_still_does_not_make_the_link_stand_still() {
    let socket = Socket::listen();
    let program = Program::start(socket.port(), "", "");
    let mut wire = socket.bound();
    let store = program.store();
    store.execute_batch("BEGIN IMMEDIATE").expect("the lock");
    // More than are on their way to the disk at once.
    let count = 300_u32;
    let mut flood = Vec::new();
    for sequence in 1..=count {
        let body = delivery(&format!("2557{sequence:08}"), "HELP", &[]);
        flood.extend(pdu(DELIVER_SM, 0, sequence, &body));
    }
    flood.extend(pdu(ENQUIRE_LINK, 0, count + 1, &[]));
    wire.say(&flood);
    let (mut taken, mut refused, mut is_alive) = (0, 0, false);
    let temporary = 0x64;
    while taken + refused < count || !is_alive {
        let heard = wire.hear();
        match (heard.id, heard.status) {
            (ENQUIRE_LINK_RESP, 0) => {
                is_alive = true;
                assert_eq!(taken, 0);
                store
                    .execute_batch("ROLLBACK")
                    .expect("the end of the lock");
            }
            (DELIVER_SM_RESP, 0) => taken += 1,
            (DELIVER_SM_RESP, status) if status == temporary => refused += 1,
            (SUBMIT_SM, 0) => {
                wire.say(&pdu(SUBMIT_SM | RESPONSE, 0, heard.sequence, b"n\0"));
            }
            other => panic!("{other:x?}"),
        }
    }
    assert!(refused >= 40, "{refused}");
    program.wait_for_metric(
        "matone_messages_received_total{channel=\"carrier\"}",
        f64::from(taken),
    );
}

const ENQUIRE_LINK_RESP: u32 = ENQUIRE_LINK | RESPONSE;
const DELIVER_SM_RESP: u32 = DELIVER_SM | RESPONSE;

#[test]
fn it_ends_while_the_smsc_says_nothing() {
    let socket = Socket::listen();
    let mut program = Program::start(socket.port(), "", "");
    let mut wire = socket.accept();
    wire.hear();
    program.terminate();
    program.wait();
}
