//! A locale's words, each under one concept.
//!
//! In: a lexicon file (TOML) and overlays of local words, or the tables that the program was built
//! with: what `build` made of such a file.
//! Out: for a run of words, the concept of the longest phrase that begins there.
//! Promises that a slip is mended only when one concept is meant, and that no slip leads to a
//! figure or across a negative prefix.

mod build;
mod file;
mod freeze;
mod grammar;
mod marks;
mod meaning;
mod mend;
mod split;
mod tables;

use super::concept::Concept;
use super::number::DecimalSign;

pub use file::Overlay;
pub(super) use grammar::{
    Adjectives, ContainerOrder, Grammar, Negation, RepeatedNumber, UnitOrder,
};
pub(super) use meaning::{Found, Meaning};

use marks::Mark;
use split::STEM_LEAST;
use tables::Tables;

/// What is wrong with a lexicon file.
#[derive(Debug, thiserror::Error)]
pub enum LexiconError {
    /// Not the tables that are expected.
    #[error("the tables cannot be read: {0}")]
    Tables(String),
    /// Not the TOML that is expected.
    #[error("the lexicon cannot be read: {0}")]
    Toml(#[from] toml::de::Error),
    /// A concept that the program does not know.
    #[error("[words] has `{0}`, which is no concept of the program")]
    UnknownConcept(String),
    /// A concept without words.
    #[error("[words] has no words for `{0}`")]
    MissingConcept(&'static str),
    /// A concept that is said to have no words, and has some.
    #[error("[locale] without names `{0}`, which is no concept, or has words")]
    WithoutWords(String),
    /// A slip that stands for a word the file does not have.
    #[error("[slips] `{slip}` stands for `{word}`, which is no word of the file")]
    SlipToNothing {
        /// The slip.
        slip: String,
        /// What it stands for.
        word: String,
    },
    /// One phrase, two meanings.
    #[error("`{phrase}` stands under `{first}` and under `{second}`: it can mean only one")]
    TwoMeanings {
        /// The phrase.
        phrase: String,
        /// Where it stood first.
        first: String,
        /// Where it stands again.
        second: String,
    },
}

/// A locale's words, ready for reading.
#[derive(Debug)]
pub struct Lexicon {
    tables: Tables,
}

impl Lexicon {
    /// Reads a lexicon file, the words of the language that mean nothing here (one a line: no slip
    /// is looked for in them), and the overlays that belong to the language.
    ///
    /// # Errors
    /// Every [`LexiconError`] of it, each naming its entry, when the file is not whole or
    /// contradicts itself.
    pub fn parse(text: &str, plain: &str, overlays: &[Overlay]) -> Result<Self, Vec<LexiconError>> {
        Self::of(build::build(text, plain, overlays)?)
    }

    /// The tables of a lexicon file and its plain words, as the program is built with them.
    ///
    /// # Errors
    /// As for [`Lexicon::parse`].
    pub fn tables(text: &str, plain: &str) -> Result<Vec<u8>, Vec<LexiconError>> {
        let stored = build::build(text, plain, &[])?;
        stored.bytes().map_err(|error| vec![error])
    }

    /// Reads the tables that the program was built with, and the overlays that belong to the
    /// language.
    ///
    /// # Errors
    /// [`LexiconError`], when the tables are not what [`Lexicon::tables`] makes, or an overlay
    /// contradicts them.
    pub fn built(tables: &'static [u8], overlays: &[Overlay]) -> Result<Self, Vec<LexiconError>> {
        let tables = Tables::read(tables).map_err(|error| vec![error])?;
        if overlays.is_empty() {
            return Ok(Self { tables });
        }
        Self::of(build::build_on(&tables, overlays)?)
    }

    fn of(stored: tables::Stored<'static>) -> Result<Self, Vec<LexiconError>> {
        let tables = Tables::of(stored).map_err(|error| vec![error])?;
        Ok(Self { tables })
    }

    /// How the language orders its words.
    pub(super) const fn grammar(&self) -> Grammar {
        self.tables.head.grammar
    }

    /// BCP 47 tag.
    #[must_use]
    pub fn tag(&self) -> &str {
        &self.tables.head.tag
    }

    /// The language's own name.
    #[must_use]
    pub fn name(&self) -> &str {
        &self.tables.head.name
    }

    /// The name in letters that a message has.
    #[must_use]
    pub fn name_in_sms(&self) -> &str {
        &self.tables.head.name_in_sms
    }

    /// Who has read the locale.
    #[must_use]
    pub fn review(&self) -> &str {
        &self.tables.head.review
    }

    /// Which spellings the language uses in a message, and what it leaves out.
    #[must_use]
    pub fn spelling(&self) -> &str {
        &self.tables.head.spelling
    }

    /// Whether decimals are written with a comma; nothing where both signs are met.
    #[must_use]
    pub const fn writes_commas(&self) -> Option<bool> {
        match self.grammar().decimal_sign {
            DecimalSign::Comma => Some(true),
            DecimalSign::Either => None,
            DecimalSign::Point => Some(false),
        }
    }

    /// The month that a word names.
    pub(super) fn month(&self, word: &str) -> Option<u8> {
        self.tables.marks(word).month()
    }

    /// The day of a month that a word names.
    pub(super) fn ordinal(&self, word: &str) -> Option<u8> {
        self.tables.marks(word).ordinal()
    }

    /// The longest phrase at the head of `words`.
    pub(super) fn find(&self, words: &[&str]) -> Option<Found> {
        if let Some((words, meaning)) = self.tables.longest(words) {
            return Some(Found {
                words,
                meaning: meaning.clone(),
            });
        }
        let first = self.tables.marks(words.first()?);
        first.has(Mark::Known).then_some(Found {
            words: 1,
            meaning: Meaning::Plain,
        })
    }

    /// The words that a slip stands for, parted by a space.
    pub(super) fn slip(&self, word: &str) -> Option<&str> {
        self.tables.slip(word)
    }

    /// Whether a word stands in the file.
    pub(super) fn knows(&self, word: &str) -> bool {
        let marks = self.tables.marks(word);
        marks.has(Mark::Known) || marks.has(Mark::Month)
    }

    /// Whether a word stands in the file by itself, and not only in a phrase.
    pub(super) fn has_alone(&self, word: &str) -> bool {
        let marks = self.tables.marks(word);
        marks.has(Mark::Alone) || marks.has(Mark::Month)
    }

    /// What a word means by itself.
    fn alone(&self, word: &str) -> Option<&Meaning> {
        self.tables.longest(&[word]).map(|(_, meaning)| meaning)
    }

    /// Whether a word has a meaning by itself.
    pub(super) fn means(&self, word: &str) -> bool {
        self.alone(word).is_some()
    }

    /// Whether a word by itself denies.
    pub(super) fn denies(&self, word: &str) -> bool {
        matches!(self.alone(word), Some(Meaning::Concept(Concept::Negation)))
    }

    /// Whether a word says no by itself, as an answer or a correction.
    pub(super) fn says_no(&self, word: &str) -> bool {
        self.tables.marks(word).has(Mark::BareNo)
    }

    /// Whether a word tells how much of a quality there is: too, very, so.
    pub(super) fn grades(&self, word: &str) -> bool {
        self.tables.marks(word).has(Mark::Degree)
    }

    /// Whether a word is written with letters beyond a to z, all of them of this language.
    pub(super) fn spells(&self, word: &str) -> bool {
        let mut foreign = word.chars().filter(|c| !c.is_ascii()).peekable();
        foreign.peek().is_some() && foreign.all(|c| self.tables.has_letter(c))
    }

    /// Whether a little word only joins others: what is cut off another word is never a unit.
    pub(super) fn joins(&self, word: &str) -> bool {
        matches!(
            self.alone(word),
            Some(Meaning::Concept(
                Concept::And
                    | Concept::AtWord
                    | Concept::Determiner
                    | Concept::FromWord
                    | Concept::Negation
                    | Concept::Of
                    | Concept::Or
                    | Concept::Per
                    | Concept::Possessive
            ))
        )
    }

    /// Whether all letters beyond a to z of a word are met in the language.
    pub(super) fn has_accents_of(&self, typed: &str) -> bool {
        let lower = typed.to_lowercase();
        let mut foreign = lower.chars().filter(|c| c.is_alphabetic() && !c.is_ascii());
        foreign.all(|c| self.tables.has_accent(c))
    }

    /// Whether the file has a word with just these accents.
    pub(super) fn writes(&self, typed: &str) -> bool {
        self.tables.writes(&typed.to_lowercase())
    }

    /// A word without an article that is written as one with it.
    pub(super) fn without_article<'w>(&self, word: &'w str) -> &'w str {
        split::without_article(&self.tables.head.articles, word)
    }

    /// A word cut behind a little word that is written as one with it: the little word, if it is
    /// known, and the rest. The shorter little word goes first, and a rest as it is written before
    /// one with a slip.
    pub(super) fn cut_prefix(&self, word: &str) -> Option<(Option<&str>, String)> {
        let cuts = || {
            self.tables.head.prefixes.iter().rev().filter_map(|prefix| {
                let stem = self.without_article(word.strip_prefix(prefix.as_str())?);
                (stem.chars().count() >= 2).then_some((prefix, stem))
            })
        };
        let (prefix, stem) = cuts().find(|(_, stem)| self.knows(stem)).or_else(|| {
            cuts()
                .filter(|(_, stem)| stem.chars().count() > STEM_LEAST)
                .find_map(|(prefix, stem)| Some((prefix, self.mend(stem)?)))
        })?;
        // The article inside `wal-` and `bil-` says nothing.
        let little = self
            .tables
            .head
            .articles
            .iter()
            .find_map(|article| prefix.strip_suffix(article.as_str()))
            .unwrap_or(prefix);
        Some((self.knows(little).then_some(little), stem.to_owned()))
    }
}
