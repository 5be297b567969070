//! Counting and cutting as an SMS carries it, and beside an independent implementation.

use matone::reply::{Encoding, segment};
use proptest::prelude::*;

use crate::desk::json_lines;

/// 3GPP TS 23.038: 160 septets, or 153 in each of several; the extension table counts twice.
#[test]
fn gsm_segments_are_counted_by_septets() {
    for (text, parts) in [
        ("a".repeat(160), 1),
        ("a".repeat(161), 2),
        ("a".repeat(306), 2),
        ("a".repeat(307), 3),
        ("€".repeat(80), 1),
        ("€".repeat(81), 2),
        // 153 is odd: the pair that does not fit goes over whole.
        ("€".repeat(152), 2),
        ("€".repeat(153), 3),
        (String::new(), 1),
    ] {
        let segments = segment(&text);
        assert_eq!(segments.encoding, Encoding::Gsm7);
        assert_eq!(
            segments.parts.len(),
            parts,
            "{} characters",
            text.chars().count()
        );
        assert_eq!(segments.parts.concat(), text);
    }
}

/// 70 code units, or 67 in each of several; a surrogate pair counts two and stays whole.
#[test]
fn ucs2_segments_are_counted_by_code_units() {
    for (text, parts) in [
        ("ж".repeat(70), 1),
        ("ж".repeat(71), 2),
        ("ж".repeat(134), 2),
        ("😀".repeat(35), 1),
        ("😀".repeat(36), 2),
        ("😀".repeat(67), 3),
    ] {
        let segments = segment(&text);
        assert_eq!(segments.encoding, Encoding::Ucs2);
        assert_eq!(
            segments.parts.len(),
            parts,
            "{} characters",
            text.chars().count()
        );
        assert_eq!(segments.parts.concat(), text);
    }
}

proptest! {
    #[test]
    fn cutting_loses_nothing_and_keeps_the_budget(text in "(\\PC|€|😀|\u{0915}\u{094D}\u{0937}| ){0,400}") {
        let segments = segment(&text);
        prop_assert_eq!(segments.parts.concat(), text.clone());
        let most = match (segments.encoding, segments.parts.len()) {
            (Encoding::Gsm7, 1) => 160,
            (Encoding::Gsm7, _) => 153,
            (Encoding::Ucs2, 1) => 70,
            (Encoding::Ucs2, _) => 67,
        };
        for part in &segments.parts {
            prop_assert!(segments.encoding.length(part) <= most);
        }
    }
}

/// `tests/data/segments/smsutil.jsonl` was made once with the general-purpose package that its
/// first line names.
#[test]
fn an_independent_implementation_cuts_in_the_same_places() {
    let mut cases = 0;
    for case in json_lines("segments/smsutil.jsonl") {
        let Some(text) = case["text"].as_str() else {
            assert!(case["made_with"].is_string());
            continue;
        };
        let ours = segment(text);
        let encoding: &str = ours.encoding.into();
        assert_eq!(case["encoding"], encoding, "{text}");
        assert_eq!(case["parts"], serde_json::json!(ours.parts), "{text}");
        let octets = ours.parts.iter().map(|part| match ours.encoding {
            Encoding::Gsm7 => ours.encoding.length(part),
            Encoding::Ucs2 => 2 * ours.encoding.length(part),
        });
        let octets: Vec<usize> = octets.collect();
        assert_eq!(case["octets"], serde_json::json!(octets), "{text}");
        cases += 1;
    }
    assert!(cases > 200);
}
