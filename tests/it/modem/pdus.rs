//! Our octets against those of others: `tests/data/wire/modem/README.md` tells whose.

use std::fmt::Write as _;

use matone::channel::modem::pdu::{
    self, Coding, Deliver, Incoming, Number, NumberKind, Party, PduError, Status, submit,
};
use matone::channel::modem::{receiver, sender};
use matone::message::Address;
use matone::sms::segments;
use proptest::prelude::*;
use serde_json::{Value, json};

use super::octets::{binary, sms};

const PDUS: &str = include_str!("../../data/wire/modem/pdus.jsonl");

fn cases(kind: &str) -> Vec<Value> {
    let cases: Vec<Value> = PDUS
        .lines()
        .map(|line| serde_json::from_str(line).unwrap())
        .filter(|case: &Value| case["kind"] == kind)
        .collect();
    assert!(!cases.is_empty(), "{kind}");
    cases
}

fn incoming(case: &Value) -> Incoming {
    let length = usize::try_from(case["length"].as_u64().unwrap()).unwrap();
    let octets = pdu::octets(case["line"].as_str().unwrap(), length).unwrap();
    pdu::read(&octets).unwrap_or_else(|error| panic!("{}: {error}", case["case"]))
}

fn deliver(line: &str) -> Result<Deliver, PduError> {
    match pdu::read(&pdu::octets_of_any_length(line)?)? {
        Incoming::Deliver(deliver) => Ok(deliver),
        Incoming::Report(_) => panic!("a receipt"),
    }
}

fn shown(party: &Party) -> String {
    match party {
        Party::Name(name) => name.clone(),
        Party::Number(number) if number.kind == NumberKind::International => {
            format!("+{}", number.digits)
        }
        Party::Number(number) => number.digits.clone(),
    }
}

#[test]
fn messages_that_come_in_are_read_as_others_read_them() {
    for case in cases("deliver") {
        let Incoming::Deliver(deliver) = incoming(&case) else {
            panic!("{}", case["case"]);
        };
        let part = deliver
            .part
            .map(|part| json!([part.reference, part.total, part.number]));
        let read = json!({
            "from": shown(&deliver.from),
            "text": deliver.text,
            "part": part,
            "sent_at": deliver.sent_at.map(|at| at.to_string()),
        });
        for (field, value) in read.as_object().unwrap() {
            assert_eq!(*value, case[field], "{}: {field}", case["case"]);
        }
        let centre = deliver.centre.unwrap();
        assert_eq!(centre.digits, "25520000009");
        assert_eq!(centre.kind, NumberKind::International);
    }
}

#[test]
fn receipts_are_read_as_others_read_them() {
    for case in cases("report") {
        let Incoming::Report(report) = incoming(&case) else {
            panic!("{}", case["case"]);
        };
        assert_eq!(Value::from(shown(&report.to)), case["to"]);
        assert_eq!(Value::from(report.reference), case["reference"]);
        let status = match case["status"].as_u64().unwrap() {
            0x00 | 0x01 => Status::Delivered,
            0x20 | 0x30 => Status::Pending,
            _ => Status::Failed,
        };
        assert_eq!(report.status, status, "{}", case["status"]);
    }
}

/// What we send; the fixture holds what others read in it.
fn outgoing() -> Vec<(&'static str, &'static str, String)> {
    let long = "We are at the clinic by the river and the well is brown after the rain. ".repeat(5);
    let arabic = "ضع 5 مل من الكلور في 20 لترا من الماء وانتظر 30 دقيقة. ";
    vec![
        (
            "GSM 7-bit",
            "+255700000001",
            "Add 8 mL. Wait 60 min.".to_owned(),
        ),
        ("seven septets", "+255700000001", "8 mL/7L".to_owned()),
        ("eight septets", "+255700000001", "8 mL/20L".to_owned()),
        (
            "an at sign at the end",
            "+255700000001",
            "12345@".to_owned(),
        ),
        (
            "extension table",
            "+50900000001",
            "Mete {8} mL [dlo] ~ 1€ |^\\".to_owned(),
        ),
        ("as dialled", "0700000001", "Add 8 mL.".to_owned()),
        ("an odd number of digits", "+50900000001", "8 mL".to_owned()),
        ("160 septets", "+255700000001", "a".repeat(160)),
        ("161 septets", "+255700000001", "a".repeat(161)),
        (
            "a pair at the cut",
            "+255700000001",
            "a".repeat(152) + &"€".repeat(40),
        ),
        ("three parts", "+255700000001", long.trim_end().to_owned()),
        ("Arabic", "+249100000001", arabic.trim_end().to_owned()),
        (
            "Arabic in parts",
            "+249100000001",
            arabic.repeat(3).trim_end().to_owned(),
        ),
        (
            "Devanagari in parts",
            "+919000000001",
            "20 लीटर में 8 मिली डालें। ".repeat(6).trim_end().to_owned(),
        ),
        ("a surrogate pair", "+255700000001", "8 mL 💧".to_owned()),
    ]
}

#[test]
fn messages_that_go_out_are_as_others_read_them() {
    let mut written = String::new();
    for (case, to, text) in outgoing() {
        let number = receiver(&Address::phone(to)).unwrap();
        let cut = segments(&text, 0xa5);
        let parts: Vec<&str> = cut.iter().map(|segment| segment.text.as_str()).collect();
        let lines: Vec<String> = cut
            .iter()
            .map(|segment| submit(&number, segment).unwrap().line())
            .collect();
        let ours = json!({"case": case, "to": to, "text": text, "parts": parts, "lines": lines,
            "reference": 0xa5});
        writeln!(written, "{ours}").unwrap();
    }
    if let Ok(path) = std::env::var("MATONE_WRITE_SUBMITS") {
        std::fs::write(path, written).unwrap();
        return;
    }
    let read: Vec<Value> = cases("submit");
    let ours: Vec<Value> = written
        .lines()
        .map(|line| serde_json::from_str(line).unwrap())
        .collect();
    assert_eq!(ours.len(), read.len());
    for (ours, read) in ours.iter().zip(&read) {
        for field in ["case", "to", "text", "lines"] {
            assert_eq!(ours[field], read[field], "{}", ours["case"]);
        }
        let total = read["parts"].as_array().unwrap().len();
        for (number, part) in (1..).zip(read["parts"].as_array().unwrap()) {
            let place = (total > 1).then(|| json!([0xa5, total, number]));
            assert_eq!(part["part"], json!(place), "{}", ours["case"]);
            assert_eq!(part["text"], ours["parts"][number - 1], "{}", ours["case"]);
        }
    }
}

#[test]
fn a_message_that_ends_early_is_none() {
    for text in ["20 L of cloudy water", "عشرين لترا"] {
        let line = sms("+255700000001", text).line();
        let octets = pdu::octets_of_any_length(&line).unwrap();
        for end in 0..octets.len() {
            assert!(pdu::read(&octets[..end]).is_err(), "{end}");
        }
    }
}

#[test]
fn octets_that_are_no_text_are_told_apart() {
    assert_eq!(deliver(&binary("+255700000001")), Err(PduError::NoText));
    // Whether a telephone is there is nothing to answer.
    let line = sms("+255700000001", "").line();
    assert_eq!(deliver(&line).unwrap().text, "");
    let silent = line.replacen("100000623", "104000623", 1);
    assert_ne!(line, silent);
    assert_eq!(deliver(&silent), Err(PduError::NoText));
    let codings = [
        (0x00, Coding::Gsm7),
        (0x04, Coding::Octets),
        (0x08, Coding::Ucs2),
        (0x0c, Coding::Gsm7),
        (0x10, Coding::Gsm7),
        (0x18, Coding::Ucs2),
        (0x20, Coding::Octets),
        (0x48, Coding::Ucs2),
        (0x80, Coding::Gsm7),
        (0xc8, Coding::Gsm7),
        (0xd0, Coding::Gsm7),
        (0xe0, Coding::Ucs2),
        (0xf0, Coding::Gsm7),
        (0xf1, Coding::Gsm7),
        (0xf5, Coding::Octets),
    ];
    for (data_coding, coding) in codings {
        assert_eq!(Coding::of(data_coding), coding, "{data_coding:#04x}");
    }
}

#[test]
fn a_time_that_there_is_not_is_none_and_the_message_is_read() {
    let line = sms("+255700000001", "20 L").line();
    let without = line.replacen("62301080000021", "00000000000000", 1);
    assert_ne!(line, without);
    let read = deliver(&without).unwrap();
    assert_eq!(read.sent_at, None);
    assert_eq!(read.text, "20 L");
}

#[test]
fn a_line_is_as_long_as_the_modem_says() {
    let line = sms("+255700000001", "20 L").line();
    let length = super::octets::length(&line);
    assert!(pdu::octets(&line, length).is_ok());
    assert_eq!(pdu::octets(&line, length + 1), Err(PduError::Broken));
    let odd = line.trim_start_matches('0');
    assert_eq!(pdu::octets(odd, length), Err(PduError::Broken));
    assert_eq!(pdu::octets("+7", 0), Err(PduError::Broken));
    assert_eq!(pdu::octets("", 0), Err(PduError::Broken));
}

fn number(kind: NumberKind, digits: &str) -> Number {
    Number {
        kind,
        digits: digits.to_owned(),
    }
}

/// What is written back to somebody who wrote from this number by way of this service centre.
fn back(kind: NumberKind, digits: &str, centre: &str) -> Option<(NumberKind, String)> {
    let centre = Number::international(centre);
    let party = Party::Number(number(kind, digits));
    let address = sender(&party, (!centre.digits.is_empty()).then_some(&centre))?;
    let to = receiver(&address)?;
    Some((to.kind, to.digits))
}

#[test]
fn who_wrote_is_written_back_to_and_nobody_abroad() {
    use NumberKind::{International, National, Unknown};
    let abroad = |digits: &str| Some((International, digits.to_owned()));
    let dialled = |digits: &str| Some((Unknown, digits.to_owned()));
    let tz = "255700000099";
    assert_eq!(
        back(International, "255700000001", tz),
        abroad("255700000001")
    );
    assert_eq!(back(National, "700000001", tz), abroad("255700000001"));
    assert_eq!(back(Unknown, "700000001", tz), abroad("255700000001"));
    assert_eq!(back(Unknown, "255700000001", tz), abroad("255700000001"));
    assert_eq!(back(Unknown, "0700000001", tz), dialled("0700000001"));
    assert_eq!(
        back(National, "9123456789", "919000000099"),
        abroad("919123456789")
    );
    assert_eq!(
        back(Unknown, "9123456789", "919000000099"),
        abroad("919123456789")
    );
    assert_eq!(
        back(Unknown, "5551234567", "12025550199"),
        abroad("15551234567")
    );
    // Without a country nothing is guessed: it is dialled as at home.
    assert_eq!(back(National, "700000001", ""), dialled("0700000001"));
    // A service reads no answer. The spare bits behind seven letters are no eighth.
    let named = deliver(&sms("MobiPay", "20 L").line()).unwrap();
    assert_eq!(shown(&named.from), "MobiPay");
    assert_eq!(back(Unknown, "15500", tz), None);
    assert_eq!(sender(&Party::Name("MobiPay".to_owned()), None), None);
    assert_eq!(sender(&Party::Name("255700000001".to_owned()), None), None);
    assert_eq!(receiver(&Address::chat(255_700_000_001)), None);
}

#[test]
fn a_number_that_is_none_is_not_written_to() {
    let segment = &segments("8 mL", 0)[0];
    assert!(submit(&Number::international("25570000000a1x"), segment).is_none());
    assert!(submit(&Number::international(""), segment).is_none());
    assert!(submit(&Number::international(&"1".repeat(21)), segment).is_none());
}

#[test]
fn nobodys_number_or_text_is_shown_by_mistake() {
    let line = sms("+255700000001", "private").line();
    let shown = format!(
        "{:?}",
        pdu::read(&pdu::octets_of_any_length(&line).unwrap())
    );
    assert!(
        !shown.contains("2557") && !shown.contains("private"),
        "{shown}"
    );
}

proptest! {
    #[test]
    fn no_octets_make_it_panic(octets in proptest::collection::vec(any::<u8>(), 0..200)) {
        let _ = pdu::read(&octets);
    }

    #[test]
    fn no_message_with_a_flaw_makes_it_panic(place in 0_usize..40, octet in any::<u8>()) {
        let line = sms("+255700000001", "20 L of cloudy water").line();
        let mut octets = pdu::octets_of_any_length(&line).unwrap();
        if let Some(flawed) = octets.get_mut(place) {
            *flawed = octet;
        }
        let _ = pdu::read(&octets);
    }

    #[test]
    fn every_text_comes_out_as_it_went_in(text in "[a-zA-Z0-9 €{}\\[\\]@àéñ]{0,153}") {
        let line = sms("+255700000001", &text).line();
        if text.chars().map(|c| if "€{}[]".contains(c) { 2 } else { 1 }).sum::<usize>() <= 160 {
            prop_assert_eq!(deliver(&line).unwrap().text, text);
        }
    }
}
