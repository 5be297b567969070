//! A locale's words, each under one concept.
//!
//! In: a lexicon file (TOML) and, later, overlays of local words.
//! Out: for a run of words, the concept of the longest phrase that begins there.
//! Promises that a slip is mended only when one concept is meant, and that no slip leads to a
//! figure or across a negative prefix.

use std::collections::{BTreeMap, HashMap, HashSet};

use serde::Deserialize;
use strsim::osa_distance;

use super::concept::Concept;
use super::normalize::normalize_word;
use super::number::DecimalSign;

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

/// Where a locale writes its units.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub(super) enum UnitOrder {
    /// 20 litres.
    AfterNumber,
    /// Lita 20, and 20 lita as well.
    EitherSide,
}

#[derive(Deserialize)]
struct LexiconFile {
    locale: LocaleTable,
    slips: BTreeMap<String, String>,
    numbers: BTreeMap<String, f64>,
    scales: BTreeMap<String, f64>,
    fractions: BTreeMap<String, f64>,
    months: BTreeMap<String, u8>,
    #[serde(default)]
    ordinals: BTreeMap<String, u8>,
    languages: BTreeMap<String, String>,
    words: BTreeMap<String, Vec<String>>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct LocaleTable {
    tag: String,
    name: String,
    review: String,
    decimal_sign: SignName,
    unit_order: UnitOrder,
    negative_prefixes: Vec<String>,
    plain: String,
}

#[derive(Deserialize)]
#[serde(rename_all = "kebab-case")]
enum SignName {
    Comma,
    Point,
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
    review: String,
    pub(super) decimal_sign: DecimalSign,
    pub(super) unit_order: UnitOrder,
    negative_prefixes: Vec<String>,
    months: HashMap<String, u8>,
    ordinals: HashMap<String, u8>,
    /// Text-speak and slips that stand for a whole word.
    slips: HashMap<String, String>,
    /// By first word: the other words and the meaning, longest first.
    phrases: HashMap<String, Vec<Phrase>>,
    /// All words of all phrases, and the plain ones.
    known: HashSet<String>,
    /// Words that a slip may be mended to, by length in characters and first letter.
    mendable: HashMap<(usize, char), Vec<String>>,
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
    /// Reads a lexicon file, and the words of the language that mean nothing here (one a line):
    /// no slip is looked for in them.
    ///
    /// # Errors
    /// [`LexiconError`] naming the entry, when the file is not whole or contradicts itself.
    pub fn parse(text: &str, plain: &str) -> Result<Self, LexiconError> {
        use strum::VariantArray;
        let file: LexiconFile = toml::from_str(text)?;
        let mut lexicon = Self {
            tag: file.locale.tag,
            name: file.locale.name,
            review: file.locale.review,
            decimal_sign: match file.locale.decimal_sign {
                SignName::Comma => DecimalSign::Comma,
                SignName::Point => DecimalSign::Point,
            },
            unit_order: file.locale.unit_order,
            negative_prefixes: file.locale.negative_prefixes,
            months: file
                .months
                .iter()
                .map(|(word, n)| (normalize_word(word), *n))
                .collect(),
            ordinals: file
                .ordinals
                .iter()
                .map(|(word, n)| (normalize_word(word), *n))
                .collect(),
            slips: file
                .slips
                .iter()
                .map(|(slip, word)| (normalize_word(slip), normalize_word(word)))
                .collect(),
            phrases: HashMap::new(),
            known: HashSet::new(),
            mendable: HashMap::new(),
        };
        let mut seen: HashMap<String, String> = HashMap::new();
        let mut mendable: HashSet<String> = HashSet::new();
        for (section, table) in [
            ("numbers", &file.numbers),
            ("scales", &file.scales),
            ("fractions", &file.fractions),
        ] {
            for (phrase, value) in table {
                let meaning = match section {
                    "numbers" => Meaning::Number(*value),
                    "scales" => Meaning::Scale(*value),
                    _ => Meaning::Fraction(*value),
                };
                lexicon.add(phrase, meaning, section, &mut seen)?;
            }
        }
        for (phrase, tag) in file.languages {
            mendable.extend(split_words(&phrase));
            lexicon.add(&phrase, Meaning::Language(tag), "languages", &mut seen)?;
        }
        for (name, phrases) in &file.words {
            let concept: Concept = name
                .parse()
                .map_err(|_| LexiconError::UnknownConcept(name.clone()))?;
            for phrase in phrases {
                for word in split_words(phrase) {
                    mendable.insert(word);
                }
                lexicon.add(phrase, Meaning::Concept(concept), name, &mut seen)?;
            }
        }
        for concept in Concept::VARIANTS {
            let name: &'static str = concept.into();
            if file.words.get(name).is_none_or(Vec::is_empty) {
                return Err(LexiconError::MissingConcept(name));
            }
        }
        for word in file
            .locale
            .plain
            .split_whitespace()
            .chain(plain.split_whitespace())
        {
            let word = normalize_word(word);
            // A plain word that is a concept's by itself as well is one that a slip may mean.
            if lexicon
                .find(&[&word])
                .is_none_or(|found| found.meaning == Meaning::Plain)
            {
                mendable.remove(&word);
            }
            lexicon.known.insert(word);
        }
        for phrases in lexicon.phrases.values_mut() {
            phrases.sort_by_key(|phrase| std::cmp::Reverse(phrase.rest.len()));
        }
        let mut mendable: Vec<String> = mendable
            .into_iter()
            .filter(|word| word.chars().count() >= 4)
            .collect();
        // The order decides between equally near words: it must be the same every time.
        mendable.sort();
        for word in mendable {
            if let Some(first) = word.chars().next() {
                lexicon
                    .mendable
                    .entry((word.chars().count(), first))
                    .or_default()
                    .push(word);
            }
        }
        Ok(lexicon)
    }

    fn add(
        &mut self,
        phrase: &str,
        meaning: Meaning,
        section: &str,
        seen: &mut HashMap<String, String>,
    ) -> Result<(), LexiconError> {
        let mut words = split_words(phrase);
        let whole = words.join(" ");
        if let Some(first) = seen.insert(whole.clone(), section.to_owned()) {
            if first == section {
                return Ok(());
            }
            return Err(LexiconError::TwoMeanings {
                phrase: whole,
                first,
                second: section.to_owned(),
            });
        }
        self.known.extend(words.iter().cloned());
        if words.is_empty() {
            return Ok(());
        }
        let first = words.remove(0);
        self.phrases.entry(first).or_default().push(Phrase {
            rest: words,
            meaning,
        });
        Ok(())
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

    /// Who has read the locale.
    #[must_use]
    pub fn review(&self) -> &str {
        &self.review
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

    /// The word that a slip stands for.
    pub(super) fn slip(&self, word: &str) -> Option<&str> {
        self.slips.get(word).map(String::as_str)
    }

    /// Whether a word stands in the file.
    pub(super) fn knows(&self, word: &str) -> bool {
        self.known.contains(word) || self.months.contains_key(word)
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
                if distance > reach || (distance == 2 && size < 6) {
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

/// A phrase's words, made plain; a hyphen parts words as a space does. Signs stand for
/// themselves.
fn split_words(phrase: &str) -> Vec<String> {
    let plain = normalize_word(phrase);
    let mut words: Vec<String> = Vec::new();
    for part in plain.split([' ', '-']) {
        let mut word = String::new();
        for c in part.chars() {
            if c.is_alphanumeric() || c == '\'' {
                word.push(c);
            } else {
                if !word.is_empty() {
                    words.push(std::mem::take(&mut word));
                }
                words.push(c.to_string());
            }
        }
        if !word.is_empty() {
            words.push(word);
        }
    }
    words
}
