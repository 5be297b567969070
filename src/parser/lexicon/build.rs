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
    let degrees = locale.degrees.clone();
    let bare_no = locale.bare_no.clone();
    let without = locale.without.clone();
    let mut builder = Builder::new(locale);
    builder.add_tables(&tables, "");
    builder.check_concepts(&tables, &without);
    for overlay in overlays {
        builder.add_tables(&overlay.tables, &format!(" of {}", overlay.name));
    }
    builder.add_degrees(&degrees);
    builder.add_bare_no(&bare_no);
    builder.add_plain(&plain_of_file);
    builder.add_plain(plain);
    builder.add_slips(&tables);
    for overlay in overlays {
        builder.add_plain(&overlay.plain);
        builder.add_slips(&overlay.tables);
    }
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
                name_in_sms: locale.name_in_sms.unwrap_or_else(|| locale.name.clone()),
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
                degrees: HashSet::new(),
                bare_no: HashSet::new(),
                months: HashMap::new(),
                ordinals: HashMap::new(),
                slips: HashMap::new(),
                phrases: HashMap::new(),
                known: HashSet::new(),
                alone: HashSet::new(),
                mendable: HashMap::new(),
                letters: HashSet::new(),
                written: HashSet::new(),
                accents: HashSet::new(),
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
        let section = |name: &str| format!("{name}{place}");
        for (phrase, value) in &tables.numbers {
            self.add(phrase, &Meaning::Number(*value), &section("numbers"));
        }
        for (phrase, value) in &tables.scales {
            self.add(phrase, &Meaning::Scale(*value), &section("scales"));
        }
        for (phrase, value) in &tables.fractions {
            self.add(phrase, &Meaning::Fraction(*value), &section("fractions"));
        }
        for (phrase, tag) in &tables.languages {
            let words = self.add(
                phrase,
                &Meaning::Language(tag.clone()),
                &section("languages"),
            );
            self.mendable.extend(words);
        }
        for (name, phrases) in &tables.words {
            let section = section(name);
            let Ok(concept) = name.parse::<Concept>() else {
                self.errors.push(LexiconError::UnknownConcept(section));
                continue;
            };
            let meaning = Meaning::Concept(concept);
            for phrase in phrases {
                let words = self.add(phrase, &meaning, &section);
                self.mendable.extend(words);
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

    /// Behind all other words: a slip that stands for none of them is one itself.
    fn add_slips(&mut self, tables: &Tables) {
        for (slip, meant) in &tables.slips {
            let words = self.lexicon.split(meant);
            if words.iter().any(|word| self.lexicon.knows(word)) {
                self.lexicon.slips.insert(normalize_word(slip), words);
            } else {
                self.errors.push(LexiconError::SlipToNothing {
                    slip: slip.clone(),
                    word: meant.clone(),
                });
            }
        }
    }

    fn add_bare_no(&mut self, words: &str) {
        for word in words.split_whitespace() {
            let words = self.lexicon.split(word);
            self.lexicon.bare_no.extend(words);
        }
    }

    /// Words of degree mean nothing by themselves; one that is a concept's as well stays that.
    fn add_degrees(&mut self, words: &str) {
        self.add_plain(words);
        for word in words.split_whitespace() {
            let words = self.lexicon.split(word);
            self.lexicon.degrees.extend(words);
        }
    }

    fn add_plain(&mut self, words: &str) {
        self.note_accents(words);
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
                self.lexicon.alone.insert(word.clone());
                self.lexicon.known.insert(word);
            }
        }
    }

    /// Words with the accents that the file gives them.
    fn note_accents(&mut self, words: &str) {
        if words.is_ascii() {
            return;
        }
        let accented = words
            .split([' ', '-', '\'', '\n'])
            .filter(|word| !word.is_ascii())
            .map(str::to_lowercase);
        self.lexicon.written.extend(accented);
    }

    /// Adds a phrase; its words come back.
    fn add(&mut self, phrase: &str, meaning: &Meaning, section: &str) -> Vec<String> {
        self.note_accents(phrase);
        let words = self.lexicon.split(phrase);
        let whole = words.join(" ");
        match self.seen.get(&whole) {
            Some(first) if first == section => return words,
            Some(first) => {
                let first = first.clone();
                self.errors.push(LexiconError::TwoMeanings {
                    phrase: whole,
                    first,
                    second: section.to_owned(),
                });
                return words;
            }
            None => {
                self.seen.insert(whole, section.to_owned());
            }
        }
        self.lexicon.known.extend(words.iter().cloned());
        if let [alone] = words.as_slice() {
            self.lexicon.alone.insert(alone.clone());
        }
        if let Some((first, rest)) = words.split_first() {
            let phrases = self.lexicon.phrases.entry(first.clone()).or_default();
            phrases.push(Phrase {
                rest: rest.to_vec(),
                meaning: meaning.clone(),
            });
        }
        words
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
        let written = self.lexicon.written.iter().flat_map(|word| word.chars());
        self.lexicon.accents = written.filter(|c| !c.is_ascii()).collect();
        let letters = self.lexicon.known.iter().flat_map(|word| word.chars());
        self.lexicon.letters = letters
            .filter(|c| c.is_alphabetic() && !c.is_ascii())
            .collect();
        Ok(self.lexicon)
    }
}
