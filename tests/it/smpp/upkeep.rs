//! The link itself, with an SMSC of another make: throttled, broken, locked out, ended.

use std::process::Command;
use std::time::Duration;

use serde_json::{Value, json};

use super::program::{Program, until};
use super::smsc::{PERSON, QUESTION, Smsc, expected, person, started};
use crate::folder::Folder;

#[test]
fn what_is_throttled_goes_again_in_its_order() {
    let Some(mut smsc) = Smsc::start("what_is_throttled_goes_again_in_its_order") else {
        return;
    };
    let program = started(&mut smsc, "window = 2");
    let (throttled, full) = (0x58, 0x14);
    smsc.tell(&json!({"do": "answer", "with": [throttled, throttled, full]}));
    let people = [1, 2, 3, 4].map(|number| format!("25570000001{number}"));
    for from in &people {
        smsc.bring(from, "water 20 L bleach 5%");
    }
    let mut taken = Vec::new();
    let mut refused = 0;
    while taken.len() < people.len() {
        let sent = smsc.submitted();
        if sent.event["status"] == 0 {
            let to = sent.event["to"].as_str().unwrap().to_owned();
            if taken.last() != Some(&to) {
                taken.push(to);
            }
        } else {
            refused += 1;
        }
    }
    assert_eq!(taken, people);
    assert_eq!(refused, 3);
    program.wait_for_metric("matone_replies_sent_total{channel=\"carrier\"}", 4.0);
    // Nothing was given back: it went again out of our own hands.
    assert_eq!(
        program.metric("matone_replies_unsent_total{channel=\"carrier\",reason=\"again\"}"),
        None
    );
}

#[test]
fn what_the_smsc_never_takes_is_given_up_and_what_it_does_not_take_now_is_sent_again() {
    let Some(mut smsc) = Smsc::start("what_the_smsc_never_takes_is_given_up") else {
        return;
    };
    let program = started(&mut smsc, "");
    let (invalid_destination, system_error) = (0x0b, 0x08);
    smsc.tell(&json!({"do": "answer", "with": [invalid_destination]}));
    smsc.bring(PERSON, QUESTION);
    program.wait_for_metric(
        "matone_replies_unsent_total{channel=\"carrier\",reason=\"given_up\"}",
        1.0,
    );
    smsc.tell(&json!({"do": "answer", "with": [system_error]}));
    smsc.bring("255700000002", QUESTION);
    program.wait_for_metric(
        "matone_replies_unsent_total{channel=\"carrier\",reason=\"again\"}",
        1.0,
    );
    program.wait_for_metric("matone_replies_sent_total{channel=\"carrier\"}", 1.0);
    let to: Vec<Value> = smsc
        .all("submit_sm")
        .iter()
        .map(|event| event["to"].clone())
        .collect();
    assert_eq!(to.first(), Some(&json!(PERSON)));
    assert_eq!(to.iter().filter(|to| **to == PERSON).count(), 1);
}

#[test]
fn the_same_delivery_twice_is_answered_once() {
    let Some(mut smsc) = Smsc::start("the_same_delivery_twice_is_answered_once") else {
        return;
    };
    let program = started(&mut smsc, "");
    smsc.bring(PERSON, QUESTION);
    smsc.bring(PERSON, QUESTION);
    // And in another session, as an SMSC does that has not heard our answer.
    smsc.tell(&json!({"do": "destroy"}));
    smsc.event_where("bound", |event| event["session"] == 2);
    smsc.bring(PERSON, QUESTION);
    smsc.bring(PERSON, "HELP");
    program.wait_for_metric("matone_replies_sent_total{channel=\"carrier\"}", 2.0);
    program.wait_for_metric(
        "matone_messages_set_aside_total{channel=\"carrier\",reason=\"duplicate\"}",
        2.0,
    );
    let first = &expected(QUESTION).0[0];
    let answers = smsc.all("submit_sm");
    let same = answers
        .iter()
        .filter(|event| event["text"] == first.as_str());
    assert_eq!(same.count(), 1, "{answers:?}");
}

#[test]
fn the_link_is_made_again_after_the_smsc_ends_it() {
    let Some(mut smsc) = Smsc::start("the_link_is_made_again_after_the_smsc_ends_it") else {
        return;
    };
    let program = started(&mut smsc, "");
    smsc.tell(&json!({"do": "unbind"}));
    assert_eq!(smsc.event("unbind_resp")["status"], 0);
    smsc.event_where("bound", |event| event["session"] == 2);
    smsc.bring(PERSON, QUESTION);
    smsc.submitted();
    // In the middle of what it was sent.
    smsc.tell(&json!({"do": "silence", "on": true}));
    smsc.bring("255700000002", QUESTION);
    smsc.event_where("submit_sm", |event| event["to"] == "255700000002");
    smsc.tell(&json!({"do": "destroy"}));
    smsc.tell(&json!({"do": "silence", "on": false}));
    smsc.event_where("bound", |event| event["session"] == 3);
    smsc.event_where("submit_sm", |event| event["to"] == "255700000002");
    program.wait_for_metric("matone_replies_sent_total{channel=\"carrier\"}", 2.0);
}

#[test]
fn a_refused_bind_is_tried_again() {
    let Some(mut smsc) = Smsc::start("a_refused_bind_is_tried_again") else {
        return;
    };
    let invalid_password = 0x0e;
    smsc.tell(&json!({"do": "refuse", "status": invalid_password}));
    let program = Program::start(smsc.port, "", "");
    assert_eq!(smsc.event("bound")["status"], invalid_password);
    assert_eq!(smsc.event("bound")["status"], 0);
    assert!(program.log().contains("ESME_RINVPASWD"));
}

#[test]
fn a_delivery_is_acknowledged_only_when_it_is_on_the_disk() {
    let Some(mut smsc) = Smsc::start("a_delivery_is_acknowledged_only_when_it_is_on_the_disk")
    else {
        return;
    };
    let program = started(&mut smsc, "");
    let store = program.store();
    store.execute_batch("BEGIN IMMEDIATE").expect("the lock");
    smsc.tell(&json!({
        "do": "deliver", "tag": "locked", "text": QUESTION, "fields": person(PERSON),
    }));
    // Long enough for an answer that does not wait.
    smsc.none_within("deliver_sm_resp", Duration::from_secs(2));
    store
        .execute_batch("ROLLBACK")
        .expect("the end of the lock");
    smsc.taken("locked");
    smsc.submitted();
}

#[test]
fn a_delivery_that_cannot_be_kept_is_told_to_come_again() {
    let Some(mut smsc) = Smsc::start("a_delivery_that_cannot_be_kept_is_told_to_come_again") else {
        return;
    };
    let program = started(&mut smsc, "");
    let store = program.store();
    store.execute_batch("BEGIN IMMEDIATE").expect("the lock");
    let delivery = json!({
        "do": "deliver", "tag": "refused", "text": QUESTION, "fields": person(PERSON),
    });
    smsc.tell(&delivery);
    let temporary = 0x64;
    assert_eq!(smsc.event("deliver_sm_resp")["status"], temporary);
    store
        .execute_batch("ROLLBACK")
        .expect("the end of the lock");
    smsc.tell(&delivery);
    smsc.taken("refused");
    smsc.submitted();
}

#[test]
fn both_sides_ask_whether_the_other_is_there() {
    let Some(mut smsc) = Smsc::start("both_sides_ask_whether_the_other_is_there") else {
        return;
    };
    let _program = started(&mut smsc, "enquire_link_seconds = 1");
    smsc.event("enquire_link");
    smsc.event("enquire_link");
    smsc.tell(&json!({"do": "enquire"}));
    assert_eq!(smsc.event("enquire_link_resp")["status"], 0);
}

#[test]
fn it_ends_within_ten_seconds_and_says_goodbye() {
    let Some(mut smsc) = Smsc::start("it_ends_within_ten_seconds_and_says_goodbye") else {
        return;
    };
    let mut program = started(&mut smsc, "");
    smsc.bring(PERSON, QUESTION);
    smsc.submitted();
    smsc.tell(&json!({"do": "silence", "on": true}));
    smsc.bring("255700000002", QUESTION);
    smsc.submitted();
    // One reply is in flight and will not be answered.
    program.terminate();
    smsc.event("unbind");
    program.wait();
    // It is sent by the next start.
    smsc.tell(&json!({"do": "silence", "on": false}));
    program.start_again();
    assert_eq!(smsc.submitted().event["to"], "255700000002");
}

#[test]
fn it_ends_while_nobody_listens() {
    let free = std::net::TcpListener::bind("127.0.0.1:0").expect("a port");
    let port = free.local_addr().expect("its address").port();
    drop(free);
    let mut program = Program::start(port, "", "");
    until("the first attempt", || {
        program.log().contains("channel is retrying").then_some(())
    });
    program.terminate();
    program.wait();
}

#[test]
fn the_connection_is_encrypted_where_the_settings_say_so() {
    let test = "the_connection_is_encrypted_where_the_settings_say_so";
    let folder = Folder::new("smpp-tls");
    let (key, certificate) = (folder.path("key.pem"), folder.path("cert.pem"));
    let made = Command::new("openssl")
        .args([
            "req", "-x509", "-newkey", "rsa:2048", "-nodes", "-days", "2",
        ])
        .args([
            "-subj",
            "/CN=localhost",
            "-addext",
            "subjectAltName=DNS:localhost",
        ])
        .args(["-addext", "basicConstraints=critical,CA:FALSE"])
        .arg("-keyout")
        .arg(&key)
        .arg("-out")
        .arg(&certificate)
        .output();
    if !made.is_ok_and(|output| output.status.success()) {
        use std::io::Write;
        let _ = writeln!(
            std::io::stderr(),
            "skipped: smpp::{test}, because openssl makes no certificate"
        );
        return;
    }
    let environment = [
        ("MATONE_TEST_KEY", key.to_str().unwrap()),
        ("MATONE_TEST_CERT", certificate.to_str().unwrap()),
    ];
    if let Some(mut smsc) = Smsc::start_with(test, &environment) {
        let channel = format!("tls = true\ntls_ca_file = {certificate:?}");
        let _program = started(&mut smsc, &channel);
        smsc.bring(PERSON, QUESTION);
        smsc.submitted();
        // Who is not vouched for is not spoken to.
        let stranger = Program::start(smsc.port, "tls = true", "");
        until("the refusal", || {
            stranger.log().contains("channel is retrying").then_some(())
        });
    }
}
