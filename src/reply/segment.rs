//! What travels: characters counted and cut as an SMS carries them.
//!
//! In: any text.
//! Out: the encoding and the segments, each as it is shown to the person.
//! Promises that no segment is longer than its budget and that no escape pair, surrogate pair or
//! grapheme is cut in two.
//! Follows 3GPP TS 23.038 (alphabet) and TS 23.040 (concatenation with a 6-octet header).

use unicode_segmentation::UnicodeSegmentation;

use crate::sms::alphabet::septets;

/// How a text is encoded.
#[derive(Debug, Clone, Copy, PartialEq, Eq, strum::IntoStaticStr)]
#[strum(serialize_all = "lowercase")]
pub enum Encoding {
    /// GSM 7-bit default alphabet with its extension table.
    Gsm7,
    /// UTF-16 code units.
    Ucs2,
}

/// What one encoding allows.
struct Budget {
    /// One message alone.
    single: usize,
    /// One of several.
    joined: usize,
}

impl Encoding {
    const fn budget(self) -> Budget {
        match self {
            Self::Gsm7 => Budget {
                single: 160,
                joined: 153,
            },
            Self::Ucs2 => Budget {
                single: 70,
                joined: 67,
            },
        }
    }

    /// Septets or code units that a text takes.
    #[must_use]
    pub fn length(self, text: &str) -> usize {
        match self {
            Self::Gsm7 => text.chars().map(|c| septets(c).unwrap_or(2)).sum(),
            Self::Ucs2 => text.encode_utf16().count(),
        }
    }
}

/// The encoding that a text needs.
#[must_use]
pub fn encoding(text: &str) -> Encoding {
    if text.chars().all(|c| septets(c).is_some()) {
        Encoding::Gsm7
    } else {
        Encoding::Ucs2
    }
}

/// Whether a text travels in one message.
#[must_use]
pub fn fits_one(text: &str) -> bool {
    let encoding = encoding(text);
    encoding.length(text) <= encoding.budget().single
}

/// How many segments a text travels in.
#[must_use]
pub fn segments(text: &str) -> usize {
    if fits_one(text) {
        1
    } else {
        segment(text).parts.len()
    }
}

/// A text, cut as it travels.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Segments {
    /// The encoding of all of them.
    pub encoding: Encoding,
    /// What each shows.
    pub parts: Vec<String>,
}

/// Cuts a text into segments, between words where it can.
#[must_use]
pub fn segment(text: &str) -> Segments {
    segment_as(text, encoding(text))
}

/// Cuts a text into segments of an encoding that has all of its characters.
#[must_use]
pub fn segment_as(text: &str, encoding: Encoding) -> Segments {
    let budget = encoding.budget();
    if encoding.length(text) <= budget.single {
        return Segments {
            encoding,
            parts: vec![text.to_owned()],
        };
    }
    let mut parts: Vec<String> = Vec::new();
    let mut part = String::new();
    for word in text.split_inclusive(' ') {
        let fits =
            |part: &str, more: &str| encoding.length(part) + encoding.length(more) <= budget.joined;
        if fits(&part, word) {
            part.push_str(word);
            continue;
        }
        if !part.is_empty() {
            parts.push(std::mem::take(&mut part));
        }
        for grapheme in word.graphemes(true) {
            // A grapheme longer than a segment can only be cut between its characters.
            if encoding.length(grapheme) > budget.joined {
                for c in grapheme.chars() {
                    let c = c.to_string();
                    if !fits(&part, &c) {
                        parts.push(std::mem::take(&mut part));
                    }
                    part.push_str(&c);
                }
                continue;
            }
            if !fits(&part, grapheme) {
                parts.push(std::mem::take(&mut part));
            }
            part.push_str(grapheme);
        }
    }
    if !part.is_empty() {
        parts.push(part);
    }
    Segments { encoding, parts }
}
