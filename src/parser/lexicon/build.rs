//! A lexicon out of its files: every phrase under one meaning, every concept with words.
//!
//! In: a lexicon file, a list of plain words, overlays.
//! Out: the lexicon's tables, or everything that is wrong in the files.

use std::collections::HashMap;

use strum::VariantArray;

use crate::parser::concept::Concept;
use crate::parser::normalize::normalize_word;

use super::LexiconError;
use super::file::{Entries, LexiconFile, LocaleTable, Overlay};
use super::freeze::Gathered;
use super::grammar::Grammar;
use super::marks::{Mark, Marks};
use super::meaning::Meaning;
use super::split::split;
use super::tables::{Head, Stored, Tables};

/// A lexicon in the making.
struct Builder {
    gathered: Gathered,
    /// Where each phrase stood first.
    seen: HashMap<String, String>,
    errors: Vec<LexiconError>,
}

/// Reads the files.
pub(super) fn build(
    text: &str,
    plain: &str,
    overlays: &[Overlay],
) -> Result<Stored<'static>, Vec<LexiconError>> {
    let file: LexiconFile = toml::from_str(text).map_err(|error| vec![error.into()])?;
    let (locale, entries) = file.parts();
    let plain_of_file = locale.plain.clone();
    let degrees = locale.degrees.clone();
    let bare_no = locale.bare_no.clone();
    let without = locale.without.clone();
    let mut builder = Builder::new(Gathered::new(head(locale)));
    builder.add_entries(&entries, "");
    builder.check_concepts(&entries, &without);
    builder.add_phrases_of(overlays);
    builder.add_degrees(&degrees);
    builder.add_bare_no(&bare_no);
    builder.add_plain(&plain_of_file);
    builder.add_plain(plain);
    builder.add_slips(&entries);
    builder.add_rest_of(overlays);
    builder.finish()
}

/// Adds overlays to tables that were built before.
pub(super) fn build_on(
    tables: &Tables,
    overlays: &[Overlay],
) -> Result<Stored<'static>, Vec<LexiconError>> {
    let mut builder = Builder::new(tables.thaw().map_err(|error| vec![error])?);
    builder.seen = builder
        .gathered
        .phrases
        .iter()
        .map(|(phrase, meaning)| (phrase.clone(), meaning.section().to_owned()))
        .collect();
    builder.add_phrases_of(overlays);
    builder.add_rest_of(overlays);
    builder.finish()
}

fn head(locale: LocaleTable) -> Head {
    let plain = |words: Vec<String>| -> Vec<String> {
        let mut words: Vec<String> = words.iter().map(|word| normalize_word(word)).collect();
        words.sort_by_key(|word| std::cmp::Reverse(word.len()));
        words
    };
    Head {
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
    }
}

impl Builder {
    fn new(gathered: Gathered) -> Self {
        Self {
            gathered,
            seen: HashMap::new(),
            errors: Vec::new(),
        }
    }

    fn add_phrases_of(&mut self, overlays: &[Overlay]) {
        for overlay in overlays {
            self.add_entries(&overlay.entries, &format!(" of {}", overlay.name));
        }
    }

    fn add_rest_of(&mut self, overlays: &[Overlay]) {
        for overlay in overlays {
            self.add_plain(&overlay.plain);
            self.add_slips(&overlay.entries);
        }
    }

    fn add_entries(&mut self, entries: &Entries, place: &str) {
        for (word, month) in &entries.months {
            self.marks(normalize_word(word)).set_month(*month);
        }
        for (word, day) in &entries.ordinals {
            self.marks(normalize_word(word)).set_ordinal(*day);
        }
        let section = |name: &str| format!("{name}{place}");
        for (phrase, value) in &entries.numbers {
            self.add(phrase, &Meaning::Number(*value), &section("numbers"));
        }
        for (phrase, value) in &entries.scales {
            self.add(phrase, &Meaning::Scale(*value), &section("scales"));
        }
        for (phrase, value) in &entries.fractions {
            self.add(phrase, &Meaning::Fraction(*value), &section("fractions"));
        }
        for (phrase, tag) in &entries.languages {
            let meaning = Meaning::Language(tag.clone());
            let words = self.add(phrase, &meaning, &section("languages"));
            self.mark(words, Mark::Mendable);
        }
        for (name, phrases) in &entries.words {
            let section = section(name);
            let Ok(concept) = name.parse::<Concept>() else {
                self.errors.push(LexiconError::UnknownConcept(section));
                continue;
            };
            let meaning = Meaning::Concept(concept);
            for phrase in phrases {
                let words = self.add(phrase, &meaning, &section);
                self.mark(words, Mark::Mendable);
            }
        }
    }

    /// Each concept has words, unless the file says that its language has none for it.
    fn check_concepts(&mut self, entries: &Entries, without: &[String]) {
        let has = |name: &str| {
            entries
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
    fn add_slips(&mut self, entries: &Entries) {
        for (slip, meant) in &entries.slips {
            let words = self.split(meant);
            if words.iter().any(|word| self.knows(word)) {
                self.gathered.slips.insert(normalize_word(slip), words);
            } else {
                self.errors.push(LexiconError::SlipToNothing {
                    slip: slip.clone(),
                    word: meant.clone(),
                });
            }
        }
    }

    fn knows(&self, word: &str) -> bool {
        let marks = self.gathered.words.get(word);
        marks.is_some_and(|marks| marks.has(Mark::Known) || marks.has(Mark::Month))
    }

    fn add_bare_no(&mut self, words: &str) {
        for word in words.split_whitespace() {
            let words = self.split(word);
            self.mark(words, Mark::BareNo);
        }
    }

    /// Words of degree mean nothing by themselves; one that is a concept's as well stays that.
    fn add_degrees(&mut self, words: &str) {
        self.add_plain(words);
        for word in words.split_whitespace() {
            let words = self.split(word);
            self.mark(words, Mark::Degree);
        }
    }

    fn add_plain(&mut self, words: &str) {
        self.note_accents(words);
        for word in words.split_whitespace() {
            for word in self.split(word) {
                let marks = self.marks(word);
                marks.set(Mark::Plain);
                marks.set(Mark::Alone);
                marks.set(Mark::Known);
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
        self.gathered.written.extend(accented);
    }

    /// Adds a phrase; its words come back.
    fn add(&mut self, phrase: &str, meaning: &Meaning, section: &str) -> Vec<String> {
        self.note_accents(phrase);
        let words = self.split(phrase);
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
                self.seen.insert(whole.clone(), section.to_owned());
            }
        }
        self.mark(words.iter().cloned(), Mark::Known);
        if let [alone] = words.as_slice() {
            self.marks(alone.clone()).set(Mark::Alone);
        }
        if !words.is_empty() {
            self.gathered.phrases.insert(whole, meaning.clone());
        }
        words
    }

    fn split(&self, phrase: &str) -> Vec<String> {
        split(&self.gathered.head.articles, phrase)
    }

    fn marks(&mut self, word: String) -> &mut Marks {
        self.gathered.words.entry(word).or_default()
    }

    fn mark(&mut self, words: impl IntoIterator<Item = String>, mark: Mark) {
        for word in words {
            self.marks(word).set(mark);
        }
    }

    fn finish(self) -> Result<Stored<'static>, Vec<LexiconError>> {
        if !self.errors.is_empty() {
            return Err(self.errors);
        }
        self.gathered.freeze().map_err(|error| vec![error])
    }
}
