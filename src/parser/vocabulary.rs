//! The words that a message is read with: its own language's, and those it may borrow.
//!
//! In: the lexicons of all languages, and which one the message is in.
//! Out: what a word means that its own language does not know.
//! Promises that borrowed words are taken as they are written, but for slips of the language that
//! everybody borrows from.

use super::lexicon::{Found, Lexicon, Meaning};

/// Shorter words mean something else in every language.
const COMMON_LEAST: usize = 3;
/// The same, of languages that fewer people borrow from.
const BORROWED_LEAST: usize = 4;
/// Shorter words are not mended into a borrowed one.
const MENDED_LEAST: usize = 5;

/// The words that one message is read with.
#[derive(Debug, Clone)]
pub struct Vocabulary<'a> {
    /// Its language.
    pub own: &'a Lexicon,
    /// The language that others borrow from most, unless it is the message's own.
    pub common: Option<&'a Lexicon>,
    /// All others.
    pub others: Vec<&'a Lexicon>,
}

impl<'a> Vocabulary<'a> {
    /// One language and no other.
    #[must_use]
    pub const fn of(own: &'a Lexicon) -> Self {
        Self {
            own,
            common: None,
            others: Vec::new(),
        }
    }

    /// What the words say in the language that everybody borrows from.
    pub(super) fn common(&self, words: &[&str]) -> Option<Found> {
        let lexicon = self.common?;
        borrowed(lexicon, words, COMMON_LEAST)
    }

    /// What the words say in any other language.
    pub(super) fn others(&self, words: &[&str]) -> Option<Found> {
        self.others
            .iter()
            .find_map(|lexicon| borrowed(lexicon, words, BORROWED_LEAST))
    }

    /// What a word with a slip says in the common language.
    pub(super) fn common_mended(&self, word: &str) -> Option<Found> {
        let lexicon = self.common?;
        (word.chars().count() >= MENDED_LEAST)
            .then(|| lexicon.mend(word))
            .flatten()
            .and_then(|mended| borrowed(lexicon, &[mended], COMMON_LEAST))
    }
}

/// The meaning of words whose first has so many letters at least, as it is written or by a slip
/// that the language lists.
fn borrowed(lexicon: &Lexicon, words: &[&str], least: usize) -> Option<Found> {
    let (first, rest) = words.split_first()?;
    if first.chars().count() < least {
        return None;
    }
    let has_meaning = |found: &Found| found.meaning != Meaning::Plain;
    match lexicon.slip(first) {
        Some(meant) if !meant.contains(' ') => {
            let words: Vec<&str> = std::iter::once(meant).chain(rest.iter().copied()).collect();
            lexicon.find(&words).filter(has_meaning)
        }
        Some(_) | None => lexicon.find(words).filter(has_meaning),
    }
}
