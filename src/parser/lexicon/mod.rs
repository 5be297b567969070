//! A locale's words, each under one concept.
//!
//! In: a lexicon file (TOML) and overlays of local words.
//! Out: for a run of words, the concept of the longest phrase that begins there.
//! Promises that a slip is mended only when one concept is meant, and that no slip leads to a
//! figure or across a negative prefix.

mod build;
mod file;
mod grammar;

use std::collections::{HashMap, HashSet};

use strsim::osa_distance;

use super::concept::Concept;
use super::normalize::normalize_word;
use super::number::DecimalSign;

pub use file::Overlay;
pub(super) use grammar::{
    Adjectives, ContainerOrder, Grammar, Negation, RepeatedNumber, UnitOrder,
};

/// Fewer letters than this are no word without its article.
const STEM_LEAST: usize = 3;

/// What a phrase stands for.
#[derive(Debug, Clone, PartialEq)]
pub(super) enum Meaning {
    Concept(Concept),
    /// A fraction such as a half.
    Fraction(f64),
    /// A language's name, as its BCP 47 tag.
    Language(String),
    /// A number word below a hundred.
    Number(f64),
    /// A word without a meaning of its own here.
    Plain,
    /// A word that multiplies the number before it.
    Scale(f64),
}

/// What is wrong with a lexicon file.
#[derive(Debug, thiserror::Error)]
pub enum LexiconError {
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
    tag: String,
    name: String,
    name_in_sms: String,
    review: String,
    spelling: String,
    pub(super) grammar: Grammar,
    negative_prefixes: Vec<String>,
    /// Little words that are written as one with the next, longest first.
    prefixes: Vec<String>,
    /// Articles that are written as one with the noun, and say nothing.
    articles: Vec<String>,
    /// Words that tell how much of a quality there is.
    degrees: HashSet<String>,
    /// Words that say no by themselves.
    bare_no: HashSet<String>,
    months: HashMap<String, u8>,
    ordinals: HashMap<String, u8>,
    /// Text-speak and slips that stand for a whole word, or several.
    slips: HashMap<String, Vec<String>>,
    /// By first word: the other words and the meaning, longest first.
    phrases: HashMap<String, Vec<Phrase>>,
    /// All words of all phrases, and the plain ones.
    known: HashSet<String>,
    /// The known words that stand by themselves, and not only in a phrase.
    alone: HashSet<String>,
    /// Words that a slip may be mended to, by length in characters and first letter.
    mendable: HashMap<(usize, char), Vec<String>>,
    /// Letters beyond a to z that its words are written with.
    letters: HashSet<char>,
    /// Words that have accents, with them.
    written: HashSet<String>,
    /// The letters with accents, and those of other scripts, of these words.
    accents: HashSet<char>,
}

#[derive(Debug)]
struct Phrase {
    rest: Vec<String>,
    meaning: Meaning,
}

/// A phrase that was found.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Found {
    pub(super) words: usize,
    pub(super) meaning: Meaning,
}

impl Lexicon {
    /// Reads a lexicon file, the words of the language that mean nothing here (one a line: no slip
    /// is looked for in them), and the overlays that belong to the language.
    ///
    /// # Errors
    /// Every [`LexiconError`] of it, each naming its entry, when the file is not whole or
    /// contradicts itself.
    pub fn parse(text: &str, plain: &str, overlays: &[Overlay]) -> Result<Self, Vec<LexiconError>> {
        build::build(text, plain, overlays)
    }

    /// BCP 47 tag.
    #[must_use]
    pub fn tag(&self) -> &str {
        &self.tag
    }

    /// The language's own name.
    #[must_use]
    pub fn name(&self) -> &str {
        &self.name
    }

    /// The name in letters that a message has.
    #[must_use]
    pub fn name_in_sms(&self) -> &str {
        &self.name_in_sms
    }

    /// Who has read the locale.
    #[must_use]
    pub fn review(&self) -> &str {
        &self.review
    }

    /// Which spellings the language uses in a message, and what it leaves out.
    #[must_use]
    pub fn spelling(&self) -> &str {
        &self.spelling
    }

    /// Whether decimals are written with a comma; nothing where both signs are met.
    #[must_use]
    pub const fn writes_commas(&self) -> Option<bool> {
        match self.grammar.decimal_sign {
            DecimalSign::Comma => Some(true),
            DecimalSign::Either => None,
            DecimalSign::Point => Some(false),
        }
    }

    /// The month that a word names.
    pub(super) fn month(&self, word: &str) -> Option<u8> {
        self.months.get(word).copied()
    }

    /// The day of a month that a word names.
    pub(super) fn ordinal(&self, word: &str) -> Option<u8> {
        self.ordinals.get(word).copied()
    }

    /// The longest phrase at the head of `words`.
    pub(super) fn find(&self, words: &[&str]) -> Option<Found> {
        let (first, rest) = words.split_first()?;
        let by_phrase = self.phrases.get(*first).and_then(|phrases| {
            phrases
                .iter()
                .find(|phrase| {
                    phrase.rest.len() <= rest.len()
                        && phrase
                            .rest
                            .iter()
                            .zip(rest)
                            .all(|(ours, theirs)| ours == theirs)
                })
                .map(|phrase| Found {
                    words: phrase.rest.len() + 1,
                    meaning: phrase.meaning.clone(),
                })
        });
        by_phrase.or_else(|| {
            self.known.contains(*first).then_some(Found {
                words: 1,
                meaning: Meaning::Plain,
            })
        })
    }

    /// The words that a slip stands for.
    pub(super) fn slip(&self, word: &str) -> Option<&[String]> {
        self.slips.get(word).map(Vec::as_slice)
    }

    /// Whether a word stands in the file.
    pub(super) fn knows(&self, word: &str) -> bool {
        self.known.contains(word) || self.months.contains_key(word)
    }

    /// Whether a word stands in the file by itself, and not only in a phrase.
    pub(super) fn has_alone(&self, word: &str) -> bool {
        self.alone.contains(word) || self.months.contains_key(word)
    }

    /// Whether a word has a meaning by itself.
    pub(super) fn means(&self, word: &str) -> bool {
        self.find(&[word])
            .is_some_and(|found| found.words == 1 && found.meaning != Meaning::Plain)
    }

    /// Whether a word by itself denies.
    pub(super) fn denies(&self, word: &str) -> bool {
        let negation = Meaning::Concept(Concept::Negation);
        self.find(&[word])
            .is_some_and(|found| found.meaning == negation)
    }

    /// Whether a word says no by itself, as an answer or a correction.
    pub(super) fn says_no(&self, word: &str) -> bool {
        self.bare_no.contains(word)
    }

    /// Whether a word tells how much of a quality there is: too, very, so.
    pub(super) fn grades(&self, word: &str) -> bool {
        self.degrees.contains(word)
    }

    /// Whether a word is written with letters beyond a to z, all of them of this language.
    pub(super) fn spells(&self, word: &str) -> bool {
        let mut foreign = word.chars().filter(|c| !c.is_ascii()).peekable();
        foreign.peek().is_some() && foreign.all(|c| self.letters.contains(&c))
    }

    /// Whether a little word only joins others: what is cut off another word is never a unit.
    pub(super) fn joins(&self, word: &str) -> bool {
        self.find(&[word]).is_some_and(|found| {
            matches!(
                found.meaning,
                Meaning::Concept(
                    Concept::And
                        | Concept::AtWord
                        | Concept::Determiner
                        | Concept::FromWord
                        | Concept::Negation
                        | Concept::Of
                        | Concept::Or
                        | Concept::Per
                        | Concept::Possessive
                )
            )
        })
    }

    /// Whether all letters beyond a to z of a word are met in the language.
    pub(super) fn has_accents_of(&self, typed: &str) -> bool {
        let lower = typed.to_lowercase();
        let mut foreign = lower.chars().filter(|c| c.is_alphabetic() && !c.is_ascii());
        foreign.all(|c| self.accents.contains(&c))
    }

    /// Whether the file has a word with just these accents.
    pub(super) fn writes(&self, typed: &str) -> bool {
        self.written.contains(&typed.to_lowercase())
    }

    /// A word without an article that is written as one with it.
    pub(super) fn without_article<'w>(&self, word: &'w str) -> &'w str {
        let stem = self
            .articles
            .iter()
            .find_map(|article| word.strip_prefix(article.as_str()));
        stem.filter(|stem| stem.chars().count() >= STEM_LEAST)
            .unwrap_or(word)
    }

    /// A word cut behind a little word that is written as one with it: the little word, if it is
    /// known, and the rest. The shorter little word goes first, and a rest as it is written before
    /// one with a slip.
    pub(super) fn cut_prefix(&self, word: &str) -> Option<(Option<&str>, String)> {
        let cuts = || {
            self.prefixes.iter().rev().filter_map(|prefix| {
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
            .articles
            .iter()
            .find_map(|article| prefix.strip_suffix(article.as_str()))
            .unwrap_or(prefix);
        Some((self.knows(little).then_some(little), stem.to_owned()))
    }

    /// The word that was meant, if only one can have been.
    pub(super) fn mend(&self, word: &str) -> Option<&str> {
        let length = word.chars().count();
        // A slip in the first letter is rare and leads far astray.
        let first = word.chars().next()?;
        let reach = match length {
            0..=3 => return None,
            4..=6 => 1,
            _ => 2,
        };
        let negative = |w: &str| {
            self.negative_prefixes
                .iter()
                .find(|prefix| w.starts_with(prefix.as_str()))
        };
        let mut best: Option<(usize, &str)> = None;
        let mut tied = false;
        for size in length.saturating_sub(reach)..=length + reach {
            for candidate in self.mendable.get(&(size, first)).into_iter().flatten() {
                if negative(candidate) != negative(word) {
                    continue;
                }
                let distance = osa_distance(word, candidate);
                if distance > reach || (distance == 2 && (size < 6 || self.is_grave(candidate))) {
                    continue;
                }
                // In a short word another letter is another word: a sack is not sick.
                if length <= 5 && size == length && !same_letters(word, candidate) {
                    continue;
                }
                match best {
                    Some((nearest, _)) if distance > nearest => {}
                    Some((nearest, other)) if distance == nearest => {
                        tied = tied || !self.same_meaning(other, candidate);
                    }
                    Some(_) | None => {
                        best = Some((distance, candidate));
                        tied = false;
                    }
                }
            }
        }
        best.filter(|_| !tied).map(|(_, candidate)| candidate)
    }

    /// Words that a dose hangs on: taken for another word at two letters' distance, they would
    /// halve it.
    fn is_grave(&self, word: &str) -> bool {
        let grave = [Concept::Clear, Concept::Negation, Concept::HalfWay];
        self.find(&[word]).is_some_and(
            |found| matches!(found.meaning, Meaning::Concept(concept) if grave.contains(&concept)),
        )
    }

    fn same_meaning(&self, one: &str, other: &str) -> bool {
        let meaning = |word: &str| self.find(&[word]).map(|found| found.meaning);
        meaning(one).is_some() && meaning(one) == meaning(other)
    }
}

/// The same letters in another order.
fn same_letters(one: &str, other: &str) -> bool {
    let sorted = |word: &str| {
        let mut letters: Vec<char> = word.chars().collect();
        letters.sort_unstable();
        letters
    };
    sorted(one) == sorted(other)
}

impl Lexicon {
    /// A phrase's words, made plain; a hyphen parts words as a space does. Signs stand for
    /// themselves.
    fn split(&self, phrase: &str) -> Vec<String> {
        let plain = normalize_word(phrase);
        let mut words: Vec<String> = Vec::new();
        let mut push = |word: String| words.push(self.without_article(&word).to_owned());
        for part in plain.split([' ', '-']) {
            let mut word = String::new();
            for c in part.chars() {
                if is_letter(c) {
                    word.push(c);
                } else {
                    if !word.is_empty() {
                        push(std::mem::take(&mut word));
                    }
                    push(c.to_string());
                }
            }
            if !word.is_empty() {
                push(word);
            }
        }
        words
    }
}

/// Letters, their vowel signs, digits and the apostrophe make words.
fn is_letter(c: char) -> bool {
    c.is_alphanumeric() || c == '\'' || unicode_normalization::char::is_combining_mark(c)
}
