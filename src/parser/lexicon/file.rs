//! The files that words come from: a locale's lexicon, and overlays of local words.
//!
//! In: TOML.
//! Out: its entries, as written.

use std::collections::BTreeMap;

use serde::Deserialize;

use crate::parser::number::DecimalSign;

use super::LexiconError;
use super::grammar::{Adjectives, ContainerOrder, Negation, RepeatedNumber, UnitOrder};

/// A locale's lexicon as written.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct LexiconFile {
    pub(super) locale: LocaleTable,
    #[serde(default)]
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

/// The entries that a lexicon and an overlay share.
#[derive(Debug, Clone, Default)]
pub(super) struct Entries {
    pub(super) slips: BTreeMap<String, String>,
    pub(super) numbers: BTreeMap<String, f64>,
    pub(super) scales: BTreeMap<String, f64>,
    pub(super) fractions: BTreeMap<String, f64>,
    pub(super) months: BTreeMap<String, u8>,
    pub(super) ordinals: BTreeMap<String, u8>,
    pub(super) languages: BTreeMap<String, String>,
    pub(super) words: BTreeMap<String, Vec<String>>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct LocaleTable {
    pub(super) tag: String,
    pub(super) name: String,
    #[serde(default)]
    pub(super) name_in_sms: Option<String>,
    pub(super) review: String,
    pub(super) decimal_sign: DecimalSign,
    pub(super) unit_order: UnitOrder,
    pub(super) negation: Negation,
    pub(super) adjectives: Adjectives,
    #[serde(default)]
    pub(super) containers: ContainerOrder,
    #[serde(default)]
    pub(super) repeated_number: RepeatedNumber,
    pub(super) negative_prefixes: Vec<String>,
    #[serde(default)]
    pub(super) prefixes: Vec<String>,
    #[serde(default)]
    pub(super) articles: Vec<String>,
    #[serde(default)]
    pub(super) without: Vec<String>,
    /// Too, very, so: "not too cloudy" is not clear.
    pub(super) degrees: String,
    /// No, as an answer or a correction, and not only "not".
    pub(super) bare_no: String,
    pub(super) spelling: String,
    pub(super) plain: String,
}

impl LexiconFile {
    pub(super) fn parts(self) -> (LocaleTable, Entries) {
        let entries = Entries {
            slips: self.slips,
            numbers: self.numbers,
            scales: self.scales,
            fractions: self.fractions,
            months: self.months,
            ordinals: self.ordinals,
            languages: self.languages,
            words: self.words,
        };
        (self.locale, entries)
    }
}

/// Words of a district, added to a language's own: what a jerrycan is called there, a dialect's
/// word for muddy.
#[derive(Debug, Clone)]
pub struct Overlay {
    /// Where it was read, for whoever has to mend it.
    pub name: String,
    /// The language that it belongs to, BCP 47.
    pub language: String,
    pub(super) entries: Entries,
    pub(super) plain: String,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct OverlayFile {
    language: String,
    #[serde(default)]
    plain: String,
    #[serde(default)]
    slips: BTreeMap<String, String>,
    #[serde(default)]
    numbers: BTreeMap<String, f64>,
    #[serde(default)]
    words: BTreeMap<String, Vec<String>>,
}

impl Overlay {
    /// Reads an overlay; `name` is how its file is called.
    ///
    /// # Errors
    /// What the TOML reader says, when it is not the TOML that is expected.
    pub fn parse(name: &str, text: &str) -> Result<Self, LexiconError> {
        let file: OverlayFile = toml::from_str(text)?;
        Ok(Self {
            name: name.to_owned(),
            language: file.language,
            entries: Entries {
                slips: file.slips,
                numbers: file.numbers,
                words: file.words,
                ..Entries::default()
            },
            plain: file.plain,
        })
    }
}
