//! What was gathered of a language, in tables.
//!
//! In: phrases, words, slips.
//! Out: the tables that are read, and from such tables what was gathered.

use std::borrow::Cow;
use std::collections::{BTreeMap, BTreeSet};

use fst::{MapBuilder, SetBuilder};

use super::LexiconError;
use super::marks::{Mark, Marks};
use super::meaning::Meaning;
use super::tables::{Group, Head, Stored, Tables};

/// Shorter words are never what a slip meant.
const MENDABLE_LEAST: usize = 4;

/// Everything that is known of a language's words.
#[derive(Debug)]
pub(super) struct Gathered {
    pub(super) head: Head,
    /// Phrase, its words parted by a space → what it means.
    pub(super) phrases: BTreeMap<String, Meaning>,
    pub(super) words: BTreeMap<String, Marks>,
    /// Text-speak and slips that stand for a whole word, or several.
    pub(super) slips: BTreeMap<String, Vec<String>>,
    /// Words that have accents, with them.
    pub(super) written: BTreeSet<String>,
}

impl Gathered {
    pub(super) const fn new(head: Head) -> Self {
        Self {
            head,
            phrases: BTreeMap::new(),
            words: BTreeMap::new(),
            slips: BTreeMap::new(),
            written: BTreeSet::new(),
        }
    }

    /// The tables; the words in them are in an order that is the same every time.
    pub(super) fn freeze(mut self) -> Result<Stored<'static>, LexiconError> {
        // A plain word that is a concept's by itself as well is one that a slip may mean.
        for (word, marks) in &mut self.words {
            if marks.has(Mark::Plain) && !self.phrases.contains_key(word) {
                marks.clear(Mark::Mendable);
            }
        }
        let (groups, mendable) = mendable(&self.words);
        let accents = self.written.iter().flat_map(|word| word.chars());
        let accents: BTreeSet<char> = accents.filter(|c| !c.is_ascii()).collect();
        let known = self
            .words
            .iter()
            .filter(|(_, marks)| marks.has(Mark::Known));
        let letters: BTreeSet<char> = known
            .flat_map(|(word, _)| word.chars())
            .filter(|c| c.is_alphabetic() && !c.is_ascii())
            .collect();
        let (meanings, phrases) = places(self.phrases);
        let (meant, slips) = lines(self.slips);
        let words = self.words.into_iter();
        Ok(Stored {
            head: self.head,
            meanings,
            phrases: map(phrases).map_err(unwritten)?,
            words: map(words.map(|(word, marks)| (word, marks.into()))).map_err(unwritten)?,
            slips: map(slips).map_err(unwritten)?,
            meant: Cow::Owned(meant),
            groups,
            mendable: Cow::Owned(mendable),
            written: set(self.written).map_err(unwritten)?,
            accents: accents.into_iter().collect(),
            letters: letters.into_iter().collect(),
        })
    }
}

fn unwritten(error: fst::Error) -> LexiconError {
    LexiconError::Tables(error.to_string())
}

/// The words that a slip may mean, by length and first letter, a line each; their order decides
/// between equally near ones.
fn mendable(words: &BTreeMap<String, Marks>) -> (Vec<Group>, String) {
    let mut grouped: BTreeMap<(usize, char), Vec<&str>> = BTreeMap::new();
    for (word, _) in words.iter().filter(|(_, marks)| marks.has(Mark::Mendable)) {
        let length = word.chars().count();
        if let Some(first) = word.chars().next().filter(|_| length >= MENDABLE_LEAST) {
            grouped.entry((length, first)).or_default().push(word);
        }
    }
    let mut text = String::new();
    let groups = grouped
        .into_iter()
        .map(|((length, first), words)| {
            let start = text.len();
            for word in words {
                text.push_str(word);
                text.push('\n');
            }
            Group {
                length,
                first,
                start,
                end: text.len(),
            }
        })
        .collect();
    (groups, text)
}

/// All meanings, and for each phrase the place of its own.
fn places(phrases: BTreeMap<String, Meaning>) -> (Vec<Meaning>, Vec<(String, u64)>) {
    let mut meanings: Vec<Meaning> = Vec::new();
    let mut placed = Vec::with_capacity(phrases.len());
    for (phrase, meaning) in phrases {
        let known = meanings.iter().position(|known| *known == meaning);
        let place = known.unwrap_or_else(|| {
            meanings.push(meaning);
            meanings.len() - 1
        });
        placed.push((phrase, place as u64));
    }
    (meanings, placed)
}

/// What slips stand for, a line each, and for each slip where its line begins.
fn lines(slips: BTreeMap<String, Vec<String>>) -> (String, Vec<(String, u64)>) {
    let mut text = String::new();
    let mut begun: BTreeMap<String, u64> = BTreeMap::new();
    let slips = slips
        .into_iter()
        .map(|(slip, words)| {
            let line = words.join(" ");
            let at = *begun.entry(line).or_insert_with_key(|line| {
                let at = text.len() as u64;
                text.push_str(line);
                text.push('\n');
                at
            });
            (slip, at)
        })
        .collect();
    (text, slips)
}

fn map(entries: impl IntoIterator<Item = (String, u64)>) -> Result<Cow<'static, [u8]>, fst::Error> {
    let mut table = MapBuilder::memory();
    table.extend_iter(entries)?;
    table.into_inner().map(Cow::Owned)
}

fn set(entries: BTreeSet<String>) -> Result<Cow<'static, [u8]>, fst::Error> {
    let mut table = SetBuilder::memory();
    table.extend_iter(entries)?;
    table.into_inner().map(Cow::Owned)
}

impl Tables {
    /// What the tables were made of, to add to it.
    pub(super) fn thaw(&self) -> Result<Gathered, LexiconError> {
        let mut gathered = Gathered::new(self.head.clone());
        for (phrase, place) in self.phrases.stream().into_str_vec().map_err(unwritten)? {
            let place = usize::try_from(place).unwrap_or(usize::MAX);
            if let Some(meaning) = self.meanings.get(place) {
                gathered.phrases.insert(phrase, meaning.clone());
            }
        }
        let words = self.words.stream().into_str_vec().map_err(unwritten)?;
        gathered.words = words
            .into_iter()
            .map(|(word, marks)| (word, Marks::from(marks)))
            .collect();
        for slip in self.slips.stream().into_str_keys().map_err(unwritten)? {
            let meant = self.slip(&slip).unwrap_or_default();
            let words = meant.split(' ').map(str::to_owned).collect();
            gathered.slips.insert(slip, words);
        }
        let written = self.written.stream().into_strs().map_err(unwritten)?;
        gathered.written = written.into_iter().collect();
        Ok(gathered)
    }
}
