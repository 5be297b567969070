//! A locale's messages.
//!
//! In: a Fluent file.
//! Out: text for a key and its arguments.
//! Promises that an argument that the message does not get, or a key that it lacks, is an error
//! and not half a sentence.

use std::borrow::Cow;
use std::collections::{BTreeMap, BTreeSet};

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use intl_pluralrules::{PluralCategory, PluralRuleType, PluralRules};
use unic_langid::LanguageIdentifier;

use super::wording::{Wording, wordings};

/// What is wrong with a message file or a message.
#[derive(Debug, thiserror::Error)]
pub enum CatalogError {
    /// The file has errors.
    #[error("the messages cannot be read: {0}")]
    Syntax(String),
    /// Not a language tag.
    #[error("`{0}` is no language tag")]
    Tag(String),
    /// The file lacks a message.
    #[error("no message `{0}`")]
    Missing(String),
    /// A message could not be formed.
    #[error("message `{key}`: {reason}")]
    Message {
        /// Which.
        key: String,
        /// What Fluent says.
        reason: String,
    },
}

/// A locale's messages, ready for writing.
pub struct Catalog {
    bundle: FluentBundle<FluentResource>,
    language: LanguageIdentifier,
    wordings: BTreeMap<String, Wording>,
}

impl std::fmt::Debug for Catalog {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("Catalog")
            .field("locales", &self.bundle.locales)
            .finish()
    }
}

/// Forms that only greater numbers take are of no use in a dose.
const PLURALS_TRIED: u32 = 300;

const fn name(category: PluralCategory) -> &'static str {
    match category {
        PluralCategory::ZERO => "zero",
        PluralCategory::ONE => "one",
        PluralCategory::TWO => "two",
        PluralCategory::FEW => "few",
        PluralCategory::MANY => "many",
        PluralCategory::OTHER => "other",
    }
}

/// Arguments of a message.
#[derive(Debug, Default)]
pub(super) struct Args<'a>(FluentArgs<'a>);

impl<'a> Args<'a> {
    pub(super) fn new() -> Self {
        Self(FluentArgs::new())
    }

    /// A text, or a figure already written out.
    pub(super) fn text(mut self, name: &'static str, value: impl Into<Cow<'a, str>>) -> Self {
        self.0.set(name, FluentValue::String(value.into()));
        self
    }

    /// A number that only chooses a plural form; what is shown is a text of its own.
    pub(super) fn count(mut self, name: &'static str, value: f64) -> Self {
        self.0.set(name, FluentValue::from(value));
        self
    }
}

impl Catalog {
    /// Reads a message file.
    ///
    /// # Errors
    /// [`CatalogError`] when the tag or the file is not sound.
    pub fn parse(tag: &str, text: &str) -> Result<Self, CatalogError> {
        let language: LanguageIdentifier =
            tag.parse().map_err(|_| CatalogError::Tag(tag.to_owned()))?;
        let resource = FluentResource::try_new(text.to_owned())
            .map_err(|(_, errors)| CatalogError::Syntax(format!("{errors:?}")))?;
        let wordings = wordings(&resource);
        let mut bundle = FluentBundle::new_concurrent(vec![language.clone()]);
        // The isolation marks would turn every SMS into UCS-2.
        bundle.set_use_isolating(false);
        bundle
            .add_resource(resource)
            .map_err(|errors| CatalogError::Syntax(format!("{errors:?}")))?;
        Ok(Self {
            bundle,
            language,
            wordings,
        })
    }

    /// Whether a message exists.
    #[must_use]
    pub fn has(&self, key: &str) -> bool {
        self.bundle
            .get_message(key)
            .is_some_and(|message| message.value().is_some())
    }

    /// All messages, without their arguments.
    #[must_use]
    pub fn wordings(&self) -> BTreeMap<String, Wording> {
        self.wordings.clone()
    }

    /// The plural forms that whole numbers take in this language, by CLDR's names.
    #[must_use]
    pub fn plural_categories(&self) -> Vec<&'static str> {
        let Ok(rules) = PluralRules::create(self.language.clone(), PluralRuleType::CARDINAL) else {
            return vec!["other"];
        };
        let forms: BTreeSet<&'static str> = (0..=PLURALS_TRIED)
            .filter_map(|n| rules.select(n).ok())
            .map(name)
            .collect();
        forms.into_iter().collect()
    }

    /// A message with its arguments.
    pub(super) fn message(&self, key: &str, args: &Args<'_>) -> Result<String, CatalogError> {
        let pattern = self
            .bundle
            .get_message(key)
            .and_then(|message| message.value())
            .ok_or_else(|| CatalogError::Missing(key.to_owned()))?;
        let mut errors = Vec::new();
        let text = self
            .bundle
            .format_pattern(pattern, Some(&args.0), &mut errors)
            .into_owned();
        if errors.is_empty() {
            Ok(text)
        } else {
            let reason = format!("{errors:?}");
            Err(CatalogError::Message {
                key: key.to_owned(),
                reason,
            })
        }
    }

    /// A message without arguments.
    pub(super) fn plain(&self, key: &str) -> Result<String, CatalogError> {
        self.message(key, &Args::new())
    }
}
