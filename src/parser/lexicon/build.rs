//! A lexicon out of its files: every phrase under one meaning, every concept with words.
//!
//! In: a lexicon file, a list of plain words, overlays.
//! Out: the lexicon, or everything that is wrong in the files.

use std::collections::{HashMap, HashSet};

use strum::VariantArray;

use crate::parser::concept::Concept;
use crate::parser::normalize::normalize_word;

use super::file::{LexiconFile, LocaleTable, Overlay, Tables};
use super::grammar::Grammar;
use super::{Lexicon, LexiconError, Meaning, Phrase};

/// Shorter words are never what a slip meant.
const MENDABLE_LEAST: usize = 4;

/// A lexicon in the making.
pub(super) struct Builder {
    lexicon: Lexicon,
    /// Where each phrase stood first.
    seen: HashMap<String, String>,
    /// Words that a slip may mean.
    mendable: HashSet<String>,
    errors: Vec<LexiconError>,
}

/// Reads the files.
pub(super) fn build(
    text: &str,
    plain: &str,
    overlays: &[Overlay],
) -> Result<Lexicon, Vec<LexiconError>> {
    let file: LexiconFile = toml::from_str(text).map_err(|error| vec![error.into()])?;
    let (locale, tables) = file.parts();
    let plain_of_file = locale.plain.clone();
    let without = locale.without.clone();
    let mut builder = Builder::new(locale);
    builder.add_tables(&tables, "");
    builder.check_concepts(&tables, &without);
    for overlay in overlays {
        builder.add_tables(&overlay.tables, &format!(" of {}", overlay.name));
    }
    builder.add_slips(&tables);
    for overlay in overlays {
        builder.add_slips(&overlay.tables);
        builder.add_plain(&overlay.plain);
    }
    builder.add_plain(&plain_of_file);
    builder.add_plain(plain);
    builder.finish()
}

impl Builder {
    fn new(locale: LocaleTable) -> Self {
        let plain = |words: Vec<String>| -> Vec<String> {
            let mut words: Vec<String> = words.iter().map(|word| normalize_word(word)).collect();
            words.sort_by_key(|word| std::cmp::Reverse(word.len()));
            words
        };
        Self {
            lexicon: Lexicon {
                tag: locale.tag,
                name: locale.name,
                review: locale.review,
                spelling: locale.spelling,
                grammar: Grammar {
                    decimal_sign: locale.decimal_sign,
                    unit_order: locale.unit_order,
                    negation: locale.negation,
                    adjectives: locale.adjectives,
                    containers: locale.containers,
                    repeated_number: locale.repeated_number,
                },
                negative_prefixes: plain(locale.negative_prefixes),
                prefixes: plain(locale.prefixes),
                articles: plain(locale.articles),
                months: HashMap::new(),
                ordinals: HashMap::new(),
                slips: HashMap::new(),
                phrases: HashMap::new(),
                known: HashSet::new(),
                mendable: HashMap::new(),
                letters: HashSet::new(),
            },
            seen: HashMap::new(),
            mendable: HashSet::new(),
            errors: Vec::new(),
        }
    }

    fn add_tables(&mut self, tables: &Tables, place: &str) {
        for (word, month) in &tables.months {
            self.lexicon.months.insert(normalize_word(word), *month);
        }
        for (word, day) in &tables.ordinals {
            self.lexicon.ordinals.insert(normalize_word(word), *day);
        }
        for (phrase, value) in &tables.numbers {
            self.add(phrase, Meaning::Number(*value), &format!("numbers{place}"));
        }
        for (phrase, value) in &tables.scales {
            self.add(phrase, Meaning::Scale(*value), &format!("scales{place}"));
        }
        for (phrase, value) in &tables.fractions {
            let section = format!("fractions{place}");
            self.add(phrase, Meaning::Fraction(*value), &section);
        }
        for (phrase, tag) in &tables.languages {
            self.mendable.extend(self.lexicon.split(phrase));
            let section = format!("languages{place}");
            self.add(phrase, Meaning::Language(tag.clone()), &section);
        }
        for (name, phrases) in &tables.words {
            let Ok(concept) = name.parse::<Concept>() else {
                let unknown = LexiconError::UnknownConcept(format!("{name}{place}"));
                self.errors.push(unknown);
                continue;
            };
            for phrase in phrases {
                self.mendable.extend(self.lexicon.split(phrase));
                let section = format!("{name}{place}");
                self.add(phrase, Meaning::Concept(concept), &section);
            }
        }
    }

    /// Each concept has words, unless the file says that its language has none for it.
    fn check_concepts(&mut self, tables: &Tables, without: &[String]) {
        let has = |name: &str| {
            tables
                .words
                .get(name)
                .is_some_and(|words| !words.is_empty())
        };
        for concept in Concept::VARIANTS {
            let name: &'static str = concept.into();
            if !has(name) && !without.iter().any(|none| none == name) {
                self.errors.push(LexiconError::MissingConcept(name));
            }
        }
        for name in without {
            if name.parse::<Concept>().is_err() || has(name) {
                self.errors.push(LexiconError::WithoutWords(name.clone()));
            }
        }
    }

    fn add_slips(&mut self, tables: &Tables) {
        for (slip, meant) in &tables.slips {
            let words = self.lexicon.split(meant);
            match words.iter().find(|word| !self.lexicon.knows(word)) {
                // A plain word that only the list of plain words has is found there later.
                Some(word) if words.len() > 1 => self.errors.push(LexiconError::SlipToNothing {
                    slip: slip.clone(),
                    word: word.clone(),
                }),
                Some(_) | None => {
                    self.lexicon.slips.insert(normalize_word(slip), words);
                }
            }
        }
    }

    fn add_plain(&mut self, words: &str) {
        for word in words.split_whitespace() {
            for word in self.lexicon.split(word) {
                // A plain word that is a concept's by itself as well is one that a slip may mean.
                if self
                    .lexicon
                    .find(&[&word])
                    .is_none_or(|found| found.meaning == Meaning::Plain)
                {
                    self.mendable.remove(&word);
                }
                self.lexicon.known.insert(word);
            }
        }
    }

    fn add(&mut self, phrase: &str, meaning: Meaning, section: &str) {
        let mut words = self.lexicon.split(phrase);
        let whole = words.join(" ");
        if let Some(first) = self.seen.insert(whole.clone(), section.to_owned()) {
            if first != section {
                self.errors.push(LexiconError::TwoMeanings {
                    phrase: whole,
                    first,
                    second: section.to_owned(),
                });
            }
            return;
        }
        self.lexicon.known.extend(words.iter().cloned());
        if words.is_empty() {
            return;
        }
        let first = words.remove(0);
        self.lexicon.phrases.entry(first).or_default().push(Phrase {
            rest: words,
            meaning,
        });
    }

    fn finish(mut self) -> Result<Lexicon, Vec<LexiconError>> {
        if !self.errors.is_empty() {
            return Err(self.errors);
        }
        for phrases in self.lexicon.phrases.values_mut() {
            phrases.sort_by_key(|phrase| std::cmp::Reverse(phrase.rest.len()));
        }
        let mut mendable: Vec<String> = self
            .mendable
            .into_iter()
            .filter(|word| word.chars().count() >= MENDABLE_LEAST)
            .collect();
        // The order decides between equally near words: it must be the same every time.
        mendable.sort();
        for word in mendable {
            if let Some(first) = word.chars().next() {
                let key = (word.chars().count(), first);
                self.lexicon.mendable.entry(key).or_default().push(word);
            }
        }
        let letters = self.lexicon.known.iter().flat_map(|word| word.chars());
        self.lexicon.letters = letters
            .filter(|c| c.is_alphabetic() && !c.is_ascii())
            .collect();
        Ok(self.lexicon)
    }
}
