//! The words of a language in tables that are read as they lie.
//!
//! In: bytes that the program was built with, or that were made of a file at a start.
//! Out: what stands under a phrase, a word or a slip.
//! Promises to copy no table: what the program was built with costs no memory until it is read.

use std::borrow::Cow;

use fst::raw::{Fst, Output};
use fst::{Map, Set};
use serde::{Deserialize, Serialize};

use super::LexiconError;
use super::grammar::Grammar;
use super::marks::Marks;
use super::meaning::Meaning;

/// Tables of another shape are not read.
const SHAPE: u8 = 1;

/// What parts the words of a phrase.
const GAP: u8 = b' ';

/// What is said of a language as a whole.
#[derive(Debug, Clone, Deserialize, Serialize)]
pub(super) struct Head {
    pub(super) tag: String,
    pub(super) name: String,
    pub(super) name_in_sms: String,
    pub(super) review: String,
    pub(super) spelling: String,
    pub(super) grammar: Grammar,
    pub(super) negative_prefixes: Vec<String>,
    /// Little words that are written as one with the next, longest first.
    pub(super) prefixes: Vec<String>,
    /// Articles that are written as one with the noun, and say nothing.
    pub(super) articles: Vec<String>,
}

/// The words that a slip may be mended to, of one length and first letter.
#[derive(Debug, Clone, Copy, Deserialize, Serialize)]
pub(super) struct Group {
    /// In characters.
    pub(super) length: usize,
    pub(super) first: char,
    /// Where its words begin and end in the text of all of them.
    pub(super) start: usize,
    pub(super) end: usize,
}

/// The tables as they are kept.
#[derive(Debug, Deserialize, Serialize)]
pub(super) struct Stored<'a> {
    pub(super) head: Head,
    /// Everything that a phrase can mean here.
    pub(super) meanings: Vec<Meaning>,
    /// Phrase → the place of its meaning.
    #[serde(borrow)]
    pub(super) phrases: Cow<'a, [u8]>,
    /// Word → [`Marks`].
    #[serde(borrow)]
    pub(super) words: Cow<'a, [u8]>,
    /// Slip → where its line begins in `meant`.
    #[serde(borrow)]
    pub(super) slips: Cow<'a, [u8]>,
    /// What slips stand for, a line each.
    #[serde(borrow)]
    pub(super) meant: Cow<'a, str>,
    /// By length and first letter.
    pub(super) groups: Vec<Group>,
    /// The words of all groups, a line each.
    #[serde(borrow)]
    pub(super) mendable: Cow<'a, str>,
    /// Words that have accents, with them.
    #[serde(borrow)]
    pub(super) written: Cow<'a, [u8]>,
    /// The letters with accents, and those of other scripts, of these words, in their order.
    pub(super) accents: Vec<char>,
    /// Letters beyond a to z that the words are written with, in their order.
    pub(super) letters: Vec<char>,
}

type Bytes = Cow<'static, [u8]>;

/// The tables, ready for reading.
#[derive(Debug)]
pub(super) struct Tables {
    pub(super) head: Head,
    pub(super) meanings: Vec<Meaning>,
    pub(super) phrases: Map<Bytes>,
    pub(super) words: Map<Bytes>,
    pub(super) slips: Map<Bytes>,
    meant: Cow<'static, str>,
    groups: Vec<Group>,
    mendable: Cow<'static, str>,
    pub(super) written: Set<Bytes>,
    accents: Vec<char>,
    letters: Vec<char>,
}

impl Stored<'_> {
    /// The bytes that the program is built with.
    pub(super) fn bytes(&self) -> Result<Vec<u8>, LexiconError> {
        let mut bytes = vec![SHAPE];
        bytes.extend(postcard::to_allocvec(self).map_err(unread)?);
        Ok(bytes)
    }
}

fn unread(error: impl std::fmt::Display) -> LexiconError {
    LexiconError::Tables(error.to_string())
}

impl Tables {
    /// The tables in bytes that the program was built with.
    pub(super) fn read(bytes: &'static [u8]) -> Result<Self, LexiconError> {
        let stored = bytes
            .strip_prefix(&[SHAPE])
            .ok_or_else(|| unread("another shape"))?;
        Self::of(postcard::from_bytes(stored).map_err(unread)?)
    }

    pub(super) fn of(stored: Stored<'static>) -> Result<Self, LexiconError> {
        Ok(Self {
            head: stored.head,
            meanings: stored.meanings,
            phrases: Map::new(stored.phrases).map_err(unread)?,
            words: Map::new(stored.words).map_err(unread)?,
            slips: Map::new(stored.slips).map_err(unread)?,
            meant: stored.meant,
            groups: stored.groups,
            mendable: stored.mendable,
            written: Set::new(stored.written).map_err(unread)?,
            accents: stored.accents,
            letters: stored.letters,
        })
    }

    /// How many of the words the longest phrase at their head has, and what it means.
    pub(super) fn longest(&self, words: &[&str]) -> Option<(usize, &Meaning)> {
        let phrases = self.phrases.as_fst();
        let mut state = (phrases.root(), Output::zero());
        let mut longest = None;
        'words: for (before, word) in words.iter().enumerate() {
            let gap = (before > 0).then_some(GAP);
            for (i, byte) in gap.into_iter().chain(word.bytes()).enumerate() {
                // A gap inside a word would make two of it.
                let is_gap_inside = byte == GAP && (before == 0 || i > 0);
                let (node, output) = state;
                match node.find_input(byte) {
                    Some(at) if !is_gap_inside => {
                        let step = node.transition(at);
                        state = (phrases.node(step.addr), output.cat(step.out));
                    }
                    Some(_) | None => break 'words,
                }
            }
            let (node, output) = state;
            if node.is_final() {
                longest = Some((before + 1, output.cat(node.final_output()).value()));
            }
        }
        let (taken, place) = longest?;
        Some((taken, self.meanings.get(usize::try_from(place).ok()?)?))
    }

    /// What is known of a word.
    pub(super) fn marks(&self, word: &str) -> Marks {
        Marks::from(look_up(self.words.as_fst(), word).unwrap_or_default())
    }

    /// The words that a slip stands for, parted by a space.
    pub(super) fn slip(&self, word: &str) -> Option<&str> {
        let line = look_up(self.slips.as_fst(), word)?;
        let text = self.meant.get(usize::try_from(line).ok()?..)?;
        text.split('\n').next()
    }

    /// The words of so many letters and this first one that a slip may be mended to, in their
    /// order.
    pub(super) fn mendable(&self, length: usize, first: char) -> impl Iterator<Item = &str> {
        let group = self
            .groups
            .binary_search_by_key(&(length, first), |group| (group.length, group.first))
            .ok()
            .and_then(|at| self.groups.get(at));
        group
            .and_then(|group| self.mendable.get(group.start..group.end))
            .into_iter()
            .flat_map(str::lines)
    }

    /// Whether a word is written with just these accents.
    pub(super) fn writes(&self, word: &str) -> bool {
        self.written.contains(word)
    }

    /// Whether the letter is one of an accented word.
    pub(super) fn has_accent(&self, c: char) -> bool {
        self.accents.binary_search(&c).is_ok()
    }

    /// Whether words are written with the letter.
    pub(super) fn has_letter(&self, c: char) -> bool {
        self.letters.binary_search(&c).is_ok()
    }
}

fn look_up(table: &Fst<Bytes>, key: &str) -> Option<u64> {
    table.get(key).map(Output::value)
}
