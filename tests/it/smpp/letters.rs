//! Letters as `submit_sm`.

use matone::channel::smpp::address::plan;
use matone::channel::smpp::submission::{Numbering, Unsendable, submissions};
use matone::config::Alphabet;
use matone::message::{Address, Letter, OutboxId};
use matone::reply::segment;
use proptest::prelude::*;
use rusmpp::pdus::SubmitSm;
use rusmpp::values::{Npi, Ton};

fn numbering() -> Numbering {
    Numbering {
        source: "4321".to_owned(),
        source_plan: plan("4321", None, None),
        dest_ton: None,
        dest_npi: None,
    }
}

fn letter(to: &str, text: &str) -> Letter {
    Letter {
        id: OutboxId(0x0107),
        to: Address::phone(to),
        text: text.to_owned(),
        next_words: Vec::new(),
        parts_accepted: 0,
        attempt: 1,
    }
}

fn sent(text: &str, alphabet: Alphabet) -> Vec<SubmitSm> {
    submissions(&letter("255700000001", text), &numbering(), alphabet).expect("segments")
}

/// esm_class, data_coding and message of each segment.
fn octets(segments: &[SubmitSm]) -> Vec<(u8, u8, Vec<u8>)> {
    segments
        .iter()
        .map(|sm| {
            (
                sm.esm_class.into(),
                sm.data_coding.into(),
                sm.short_message().to_vec(),
            )
        })
        .collect()
}

#[test]
fn a_short_text_is_one_plain_segment() {
    let segments = sent("a@€", Alphabet::Gsm7);
    assert_eq!(octets(&segments), [(0, 0, b"a\x00\x1b\x65".to_vec())]);
    assert_eq!(u8::from(segments[0].registered_delivery), 1);
    assert_eq!(u8::from(segments[0].priority_flag), 0);
    assert_eq!(segments[0].source_addr.as_str(), "4321");
    assert_eq!(segments[0].destination_addr.as_str(), "255700000001");
}

#[test]
fn the_default_alphabet_is_used_where_it_carries_the_text() {
    for (text, alphabet, data_coding, message) in [
        ("[é]", Alphabet::Gsm7, 0, b"\x1b\x3c\x05\x1b\x3e".to_vec()),
        ("[é]", Alphabet::Latin1, 0, b"[\xe9]".to_vec()),
        ("[é]", Alphabet::Ascii, 8, b"\0[\0\xe9\0]".to_vec()),
        ("[e]", Alphabet::Ascii, 0, b"[e]".to_vec()),
        ("í", Alphabet::Gsm7, 8, vec![0, 0xed]),
        ("í", Alphabet::Latin1, 0, vec![0xed]),
        ("€", Alphabet::Latin1, 8, vec![0x20, 0xac]),
        ("م", Alphabet::Gsm7, 8, vec![0x06, 0x45]),
    ] {
        let segments = octets(&sent(text, alphabet));
        assert_eq!(segments, [(0, data_coding, message)], "{text}");
    }
}

#[test]
fn parts_carry_a_header_that_is_the_same_in_every_attempt() {
    let text = "a".repeat(400);
    let segments = octets(&sent(&text, Alphabet::Gsm7));
    assert_eq!(segments.len(), 3);
    for (number, (esm_class, _, message)) in (1..).zip(&segments) {
        assert_eq!(*esm_class, 0x40);
        assert_eq!(&message[..6], [5, 0, 3, 0x07, 3, number]);
    }
    assert_eq!(segments, octets(&sent(&text, Alphabet::Gsm7)));
}

#[test]
fn what_goes_as_ucs2_instead_is_cut_shorter() {
    // Two segments of GSM 7-bit; on a link that has no €, five of UCS-2.
    let text = format!("€{}", "a".repeat(300));
    assert_eq!(sent(&text, Alphabet::Gsm7).len(), 2);
    let segments = octets(&sent(&text, Alphabet::Latin1));
    assert_eq!(segments.len(), 5);
    assert!(segments.iter().all(|(_, _, message)| message.len() <= 140));
}

#[test]
fn numbers_by_their_looks_unless_settings_say_it() {
    let looks = |number: &str| {
        let plan = plan(number, None, None);
        (plan.ton, plan.npi)
    };
    assert_eq!(looks("255700000001"), (Ton::International, Npi::Isdn));
    assert_eq!(looks("0700000001"), (Ton::Unknown, Npi::Isdn));
    assert_eq!(looks("4321"), (Ton::Unknown, Npi::Unknown));
    assert_eq!(looks("Water"), (Ton::Alphanumeric, Npi::Unknown));
    let said = plan("4321", Some(3), Some(1));
    assert_eq!((said.ton, said.npi), (Ton::NetworkSpecific, Npi::Isdn));
}

#[test]
fn an_address_that_is_no_number_is_never_sent_to() {
    for to in ["255700000001255700000001", "الماء"] {
        let sent = submissions(&letter(to, "a"), &numbering(), Alphabet::Gsm7);
        assert_eq!(sent, Err(Unsendable::Address));
    }
}

proptest! {
    #[test]
    fn any_text_goes_in_segments_that_fit(text: String) {
        for alphabet in [Alphabet::Ascii, Alphabet::Gsm7, Alphabet::Latin1] {
            let segments = octets(&sent(&text, alphabet));
            for (_, data_coding, message) in &segments {
                let most = if *data_coding == 8 { 140 } else { 160 };
                prop_assert!(message.len() <= most);
            }
        }
    }

    #[test]
    fn a_gsm7_link_carries_just_the_segments_that_are_counted(text: String) {
        prop_assert_eq!(sent(&text, Alphabet::Gsm7).len(), segment(&text).parts.len());
    }
}
