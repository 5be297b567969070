//! The desk where a message is read, settled and answered: the rooms of the core, joined.
//!
//! In: a person as remembered, a text, the time of arrival.
//! Out: the reply, and the person as to be remembered.
//! Pure: no store, no channel, no clock.

use std::sync::Arc;

use jiff::Timestamp;

use crate::contract::{LineOut, RequestJson, verdict};
use crate::dialogue::{Person, Say, Step, step};
use crate::locale::{FALLBACK, Locale, Locales};
use crate::parser::{Expected, Lexicon, Reading, Vocabulary, read, recognise};
use crate::quantity::UnitSystem;
use crate::reply::{CatalogError, Segments, help_line, render, segment};

/// The desk.
#[derive(Debug, Clone)]
pub struct Desk {
    locales: Arc<Locales>,
    /// Whose gallons a bare gallon is, unless the person said otherwise.
    units: UnitSystem,
    /// The language that is spoken when none can be told.
    usual: String,
    /// Whom to call in an emergency, where the deployment says it.
    help_line: Option<String>,
}

/// Why the desk cannot answer.
#[derive(Debug, thiserror::Error)]
pub enum DeskError {
    /// No language is spoken at all.
    #[error("the locales folder lacks the language {FALLBACK}")]
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
    /// A desk that speaks these languages, and `usual` where none can be told.
    #[must_use]
    pub fn new(locales: Arc<Locales>, units: UnitSystem, usual: &str) -> Self {
        let usual = locales
            .get_or_fallback(Some(usual))
            .map_or(FALLBACK, |(tag, _)| tag)
            .to_owned();
        Self {
            locales,
            units,
            usual,
            help_line: None,
        }
    }

    /// The same desk, naming a number to call before first aid.
    #[must_use]
    pub fn with_help_line(self, number: Option<String>) -> Self {
        Self {
            help_line: number,
            ..self
        }
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
        let locale = self.read_in(person, text)?;
        let vocabulary = self.vocabulary(locale);
        let reading = read(text, &vocabulary, person.units.unwrap_or(self.units));
        let mut step = step(person, &reading, now);
        let mut replies_in = locale;
        if let Some(next) = &mut step.person {
            if next.language != person.language {
                match next
                    .language
                    .as_deref()
                    .and_then(|set| self.locales.get(set))
                {
                    // Where a language was just set, the reply is in it already.
                    Some((_, set)) => replies_in = set,
                    // One that is not spoken cannot be set.
                    None => next.language.clone_from(&person.language),
                }
            }
            next.wrote = Some(replies_in.lexicon.tag().to_owned());
        }
        let mut reply = render(&step.say, replies_in)?;
        if let (Say::FirstAid(_), Some(number)) = (&step.say, &self.help_line) {
            reply = format!("{} {reply}", help_line(number, replies_in)?);
        }
        let segments = segment(&reply);
        Ok(Answered {
            language: replies_in.lexicon.tag().to_owned(),
            reading,
            step,
            reply,
            segments,
        })
    }

    /// The language that a message is in.
    fn read_in(&self, person: &Person, text: &str) -> Result<&Locale, DeskError> {
        let expected = match (&person.language, &person.wrote) {
            (Some(set), _) => Expected::Set(self.spoken(set)),
            (None, Some(wrote)) => Expected::Wrote(self.spoken(wrote)),
            (None, None) => Expected::Usual(&self.usual),
        };
        let lexicons: Vec<&Lexicon> = self
            .locales
            .all()
            .map(|(_, locale)| &locale.lexicon)
            .collect();
        let found = recognise(text, &lexicons, FALLBACK, expected).and_then(|i| lexicons.get(i));
        self.locale(Some(found.map_or(expected.tag(), |lexicon| lexicon.tag())))
    }

    /// The tag of the language as it is spoken here.
    fn spoken<'a>(&'a self, tag: &str) -> &'a str {
        self.locales
            .get(tag)
            .map_or(self.usual.as_str(), |(spoken, _)| spoken)
    }

    /// The words to read a message of a language with.
    fn vocabulary<'a>(&'a self, own: &'a Locale) -> Vocabulary<'a> {
        let is_own = |lexicon: &Lexicon| lexicon.tag() == own.lexicon.tag();
        let common = self
            .locales
            .get(FALLBACK)
            .map(|(_, locale)| &locale.lexicon)
            .filter(|lexicon| !is_own(lexicon));
        Vocabulary {
            own: &own.lexicon,
            common,
            others: self
                .locales
                .all()
                .map(|(_, locale)| &locale.lexicon)
                .filter(|lexicon| !is_own(lexicon) && lexicon.tag() != FALLBACK)
                .collect(),
        }
    }

    /// A locale by its tag, or the one that is usual here.
    ///
    /// # Errors
    /// [`DeskError::NoLanguage`] when not even the fallback is there.
    pub fn locale(&self, tag: Option<&str>) -> Result<&Locale, DeskError> {
        tag.and_then(|tag| self.locales.get(tag))
            .or_else(|| self.locales.get_or_fallback(Some(&self.usual)))
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
