//! The desk where a message is read, settled and answered: the rooms of the core, joined.
//!
//! In: a person as remembered, a text, the time of arrival.
//! Out: the reply, and the person as to be remembered.
//! Pure: no store, no channel, no clock.

use jiff::Timestamp;

use crate::contract::{LineOut, RequestJson, verdict};
use crate::dialogue::{Person, Step, step};
use crate::locale::{Locale, LocaleError, Locales};
use crate::parser::{Reading, read};
use crate::quantity::UnitSystem;
use crate::reply::{CatalogError, Segments, render, segment};

/// The desk.
#[derive(Debug, Clone, Copy)]
pub struct Desk {
    locales: &'static Locales,
    /// Whose gallons a bare gallon is, unless the person said otherwise.
    units: UnitSystem,
}

/// Why the desk cannot answer.
#[derive(Debug, thiserror::Error)]
pub enum DeskError {
    /// A language's folder is not sound.
    #[error("{0}")]
    Locale(&'static LocaleError),
    /// No language is spoken at all.
    #[error("the locales folder lacks the language {}", crate::locale::FALLBACK)]
    NoLanguage,
    /// A message could not be formed.
    #[error("{0}")]
    Catalog(#[from] CatalogError),
}

/// A message, answered.
#[derive(Debug, Clone, PartialEq)]
pub struct Answered {
    /// The language of the reply.
    pub language: String,
    /// What was read.
    pub reading: Reading,
    /// What it led to.
    pub step: Step,
    /// The reply.
    pub reply: String,
    /// The reply as it travels.
    pub segments: Segments,
}

impl Desk {
    /// A desk with the embedded languages.
    ///
    /// # Errors
    /// [`DeskError`] when a language's folder is not sound.
    pub fn new(units: UnitSystem) -> Result<Self, DeskError> {
        Ok(Self {
            locales: Locales::embedded().map_err(DeskError::Locale)?,
            units,
        })
    }

    /// Answers a message.
    ///
    /// # Errors
    /// [`DeskError`] when a message of the locale cannot be formed.
    pub fn answer(
        &self,
        person: &Person,
        text: &str,
        now: Timestamp,
    ) -> Result<Answered, DeskError> {
        let (language, locale) = self.language_of(person)?;
        let reading = read(text, &locale.lexicon, person.units.unwrap_or(self.units));
        let step = step(person, &reading, now);
        // Where a language was just set, the reply is in it already.
        let (language, locale) = match &step.person {
            Some(next) if next.language != person.language => self.language_of(next)?,
            Some(_) | None => (language, locale),
        };
        let reply = render(&step.say, locale)?;
        let segments = segment(&reply);
        Ok(Answered {
            language: language.to_owned(),
            reading,
            step,
            reply,
            segments,
        })
    }

    fn language_of(&self, person: &Person) -> Result<(&'static str, &'static Locale), DeskError> {
        self.locales
            .get_or_fallback(person.language.as_deref())
            .ok_or(DeskError::NoLanguage)
    }

    /// A locale by its tag, or the fallback.
    ///
    /// # Errors
    /// [`DeskError::NoLanguage`] when not even the fallback is there.
    pub fn locale(&self, tag: Option<&str>) -> Result<&'static Locale, DeskError> {
        self.locales
            .get_or_fallback(tag)
            .map(|(_, locale)| locale)
            .ok_or(DeskError::NoLanguage)
    }
}

impl Answered {
    /// The contract's line.
    #[must_use]
    pub fn line(&self, from: Option<String>) -> LineOut {
        let (answer, missing, refused) = verdict(&self.step.say);
        LineOut {
            from,
            lang: self.language.clone(),
            request: RequestJson::from(&self.step.request),
            missing,
            remembered: self.step.remembered.iter().map(Into::into).collect(),
            answer,
            refused,
            reply: self.reply.clone(),
            parts: self.segments.parts.clone(),
            encoding: self.segments.encoding.into(),
        }
    }
}
