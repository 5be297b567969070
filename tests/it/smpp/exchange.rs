//! What goes to and fro between a person and the real program, with an SMSC of another make.

use serde_json::{Value, json};

use super::program::{Program, Words, until};
use super::smsc::{PERSON, QUESTION, Smsc, expected, person, started};

#[test]
fn a_question_is_answered() {
    let Some(mut smsc) = Smsc::start("a_question_is_answered") else {
        return;
    };
    let program = Program::start(smsc.port, "system_type = \"SMS\"", "");
    let bound = smsc.event("bound");
    assert_eq!(bound["system_id"], "matone");
    assert_eq!(bound["password"], "longer than eight");
    assert_eq!(bound["system_type"], "SMS");
    assert_eq!(bound["interface_version"], 0x34);
    smsc.bring(PERSON, QUESTION);
    let (parts, _) = expected(QUESTION);
    for part in &parts {
        let sent = smsc.submitted();
        assert_eq!(&sent.text, part);
        assert_eq!(sent.event["to"], PERSON);
        assert_eq!(sent.event["to_ton"], 1);
        assert_eq!(sent.event["to_npi"], 1);
        assert_eq!(sent.event["from"], "4321");
        assert_eq!(sent.event["registered_delivery"], 1);
        assert_eq!(sent.event["data_coding"], 0);
    }
    program.wait_for_metric("matone_messages_received_total{channel=\"carrier\"}", 1.0);
    program.wait_for_metric("matone_replies_sent_total{channel=\"carrier\"}", 1.0);
    program.wait_for_metric("matone_channel_up{channel=\"carrier\"}", 1.0);
}

#[test]
fn arabic_goes_both_ways() {
    let Some(mut smsc) = Smsc::start("arabic_goes_both_ways") else {
        return;
    };
    let _program = started(&mut smsc, "");
    let question = "٣ دبات كل دبة ٢٠ لتر، كلور ٤٪، للكل كم؟";
    let mut fields = person(PERSON);
    fields["data_coding"] = json!(8);
    smsc.tell(&json!({"do": "deliver", "tag": "ar", "text": question, "fields": fields}));
    smsc.taken("ar");
    let (parts, encoding) = expected(question);
    assert_eq!(encoding, "ucs2");
    for part in &parts {
        let sent = smsc.submitted();
        assert_eq!(sent.event["data_coding"], 8);
        assert!(sent.octets.len() <= 140, "{}", sent.octets.len());
        assert_eq!(&sent.text, part);
    }
}

#[test]
fn a_long_answer_goes_in_parts_with_headers() {
    let Some(mut smsc) = Smsc::start("a_long_answer_goes_in_parts_with_headers") else {
        return;
    };
    let _program = started(&mut smsc, "");
    let question = "how long to boil at 3000 m altitude muddy";
    let (parts, encoding) = expected(question);
    assert!(parts.len() > 1 && encoding == "gsm7", "{parts:?}");
    smsc.bring(PERSON, question);
    let sent: Vec<_> = parts.iter().map(|_| smsc.submitted()).collect();
    let total = u8::try_from(parts.len()).unwrap();
    let reference = sent[0].part().expect("a header")[0];
    for ((number, part), sent) in (1..).zip(&parts).zip(&sent) {
        assert_eq!(&sent.text, part);
        assert_eq!(sent.part(), Some([reference, total, number]));
        assert!(sent.octets.len() <= 6 + 153, "{}", sent.octets.len());
    }
}

/// A question in two parts, cut in the middle of a word.
const HALVES: [&str; 2] = ["2 gallons clo", "udy 1% bleach"];

#[test]
fn a_long_question_is_put_together_whatever_says_its_parts() {
    let Some(mut smsc) = Smsc::start("a_long_question_is_put_together_whatever_says_its_parts")
    else {
        return;
    };
    let _program = started(&mut smsc, "");
    let (parts, _) = expected(QUESTION);
    let answered = |smsc: &mut Smsc| {
        for part in &parts {
            assert_eq!(&smsc.submitted().text, part);
        }
    };
    let mut fields = person(PERSON);
    fields["esm_class"] = json!(0x40);
    // 8-bit reference, the second part first; then a 16-bit one.
    for (name, headers) in [
        ("udh8", ["050003070202", "050003070201"]),
        ("udh16", ["06080401090201", "06080401090202"]),
    ] {
        for header in headers {
            let half = HALVES[usize::from(header.ends_with("02"))];
            let tag = format!("{name}{header}");
            smsc.tell(&json!({
                "do": "deliver", "tag": tag, "udh": header, "text": half, "fields": fields,
            }));
            smsc.taken(&tag);
        }
        answered(&mut smsc);
    }
    for (number, half) in (1..).zip(HALVES) {
        let mut fields = person(PERSON);
        fields["sar_msg_ref_num"] = json!(513);
        fields["sar_total_segments"] = json!(2);
        fields["sar_segment_seqnum"] = json!(number);
        let tag = format!("sar{number}");
        smsc.tell(&json!({"do": "deliver", "tag": tag, "text": half, "fields": fields}));
        smsc.taken(&tag);
    }
    answered(&mut smsc);
    let question = format!("{}{}", HALVES[0], HALVES[1]);
    smsc.tell(&json!({
        "do": "deliver", "tag": "payload", "text": question, "payload": true,
        "fields": person(PERSON),
    }));
    smsc.taken("payload");
    answered(&mut smsc);
}

#[test]
fn escaped_characters_go_both_ways() {
    let Some(mut smsc) = Smsc::start("escaped_characters_go_both_ways") else {
        return;
    };
    let escaped = "€[]~^|\\";
    let words = Words::with_help(escaped);
    let program = Program::start(smsc.port, "", &words.settings());
    smsc.event("bound");
    // What is not understood is kept as it was read.
    let unread = "flim €[{flam}]|~^ èéùìòÇØøÅåΔΦΓΛΩΠΨΣΘΞÆæßÉ¤¡ÄÖÑÜ§¿äöñüà @£$¥_";
    smsc.bring(PERSON, unread);
    smsc.submitted();
    let kept = program
        .store()
        .query_row("SELECT body FROM unread", [], |row| row.get::<_, String>(0))
        .expect("an unread message");
    assert_eq!(kept, unread);
    smsc.bring(PERSON, "HELP");
    let sent = smsc.submitted();
    assert_eq!(sent.text, escaped);
    assert_eq!(sent.event["data_coding"], 0);
    assert_eq!(sent.octets.len(), 2 * escaped.chars().count());
}

#[test]
fn a_latin1_link_carries_latin1_and_all_else_as_ucs2() {
    let Some(mut smsc) = Smsc::start("a_latin1_link_carries_latin1_and_all_else_as_ucs2") else {
        return;
    };
    let words = Words::with_help("€1");
    let channel = "default_alphabet = \"latin1\"";
    let _program = Program::start(smsc.port, channel, &words.settings());
    smsc.event("bound");
    // GSM 7-bit has no á and no í.
    let question = "cuánta lejía al 5% para 20 litros de agua turbia";
    let octets: Vec<u8> = question.chars().map(|c| u8::try_from(c).unwrap()).collect();
    let hex: String = octets.iter().map(|octet| format!("{octet:02x}")).collect();
    smsc.tell(&json!({"do": "deliver", "tag": "es", "hex": hex, "fields": person(PERSON)}));
    smsc.taken("es");
    let (parts, _) = expected(question);
    for part in &parts {
        let sent = smsc.submitted();
        assert_eq!(sent.event["data_coding"], 0);
        let header = if sent.part().is_some() { 6 } else { 0 };
        let text: String = sent.octets[header..]
            .iter()
            .map(|octet| char::from(*octet))
            .collect();
        assert_eq!(&text, part);
    }
    // Latin-1 has no euro sign.
    smsc.bring("255700000002", "HELP");
    let sent = smsc.submitted();
    assert_eq!(
        (sent.text.as_str(), &sent.event["data_coding"]),
        ("€1", &json!(8))
    );
}

#[test]
fn receipts_are_counted_whatever_way_they_write_the_name() {
    let Some(mut smsc) = Smsc::start("receipts_are_counted_whatever_way_they_write_the_name")
    else {
        return;
    };
    let program = started(&mut smsc, "");
    let delivered = "matone_replies_delivered_total{channel=\"carrier\"}";
    let state = |program: &Program, person: i64| {
        until("the fate of a reply", || {
            let state: i64 = program
                .store()
                .query_row("SELECT state FROM outbox WHERE id = ?1", [person], |row| {
                    row.get(0)
                })
                .expect("a reply");
            (state > 2).then_some(state)
        })
    };
    let receipt = |smsc: &mut Smsc, text: &str, more: Value| {
        let mut fields = person(PERSON);
        fields["esm_class"] = json!(4);
        for (key, value) in more.as_object().expect("fields") {
            fields[key] = value.clone();
        }
        smsc.tell(&json!({"do": "deliver", "tag": text, "text": text, "fields": fields}));
        smsc.taken(text);
    };
    // In the text, without the noughts of "0000000001".
    let question = "water 20 L bleach 5%";
    smsc.bring("255700000011", question);
    smsc.submitted();
    program.wait_for_metric("matone_replies_sent_total{channel=\"carrier\"}", 1.0);
    let text = "id:1 sub:001 dlvrd:001 submit date:2603010800 done date:2603010801 \
                stat:DELIVRD err:000 text:";
    receipt(&mut smsc, text, json!({}));
    program.wait_for_metric(delivered, 1.0);
    assert_eq!(state(&program, 1), 3);
    // In fields, and not marked as a receipt.
    smsc.bring("255700000012", question);
    let name = smsc.submitted().name;
    program.wait_for_metric("matone_replies_sent_total{channel=\"carrier\"}", 2.0);
    let fields = json!({"esm_class": 0, "receipted_message_id": name, "message_state": 5});
    receipt(&mut smsc, "undeliverable", fields);
    assert_eq!(state(&program, 2), 4);
    // Hexadecimal when it was taken, decimal in the receipt.
    smsc.tell(&json!({"do": "ids", "as": "hexadecimal"}));
    smsc.bring("255700000013", question);
    let name = smsc.submitted().name;
    program.wait_for_metric("matone_replies_sent_total{channel=\"carrier\"}", 3.0);
    let decimal = u64::from_str_radix(&name, 16).unwrap();
    receipt(&mut smsc, &format!("id:{decimal} stat:DELIVRD"), json!({}));
    program.wait_for_metric(delivered, 2.0);
    assert_eq!(state(&program, 3), 3);
    // None of them was taken for a message.
    assert_eq!(
        program.metric("matone_messages_received_total{channel=\"carrier\"}"),
        Some(3.0)
    );
}

#[test]
fn machines_are_not_answered() {
    let Some(mut smsc) = Smsc::start("machines_are_not_answered") else {
        return;
    };
    let program = started(&mut smsc, "");
    for (ton, number) in [
        (5, "WATERBOARD"),
        (5, "255700000009"),
        (3, "15400"),
        (0, ""),
    ] {
        let mut fields = person(number);
        fields["source_addr_ton"] = json!(ton);
        let tag = format!("{ton}{number}");
        smsc.tell(&json!({"do": "deliver", "tag": tag, "text": QUESTION, "fields": fields}));
        smsc.taken(&tag);
    }
    program.wait_for_metric(
        "matone_messages_set_aside_total{channel=\"carrier\",reason=\"machine\"}",
        4.0,
    );
    smsc.bring(PERSON, QUESTION);
    assert_eq!(smsc.submitted().event["to"], PERSON);
}
