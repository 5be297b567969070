//! The languages, each a folder of data.
//!
//! In: the embedded `locales/` folder.
//! Out: for a language tag, its lexicon, its messages and the way it writes figures.
//! A language is added by adding a folder; no Rust changes.

use std::str::FromStr;
use std::sync::LazyLock;

use icu_decimal::DecimalFormatter;
use icu_decimal::input::Decimal;
use icu_decimal::options::{DecimalFormatterOptions, GroupingStrategy};
use include_dir::{Dir, include_dir};
use unic_langid::LanguageIdentifier;

use crate::parser::{Lexicon, LexiconError};
use crate::reply::{Catalog, CatalogError};

static FOLDER: Dir<'_> = include_dir!("$CARGO_MANIFEST_DIR/locales");

/// The language spoken when none can be told.
pub const FALLBACK: &str = "en";

/// One language.
#[derive(Debug)]
pub struct Locale {
    /// Its words, for reading.
    pub lexicon: Lexicon,
    /// Its messages, for writing.
    pub catalog: Catalog,
    figures: DecimalFormatter,
}

/// What is wrong with a language's folder.
#[derive(Debug, thiserror::Error)]
pub enum LocaleError {
    /// A file is missing.
    #[error("locales/{tag} lacks {file}")]
    File {
        /// Which folder.
        tag: String,
        /// Which file.
        file: &'static str,
    },
    /// The lexicon is not sound.
    #[error("locales/{tag}/lexicon.toml: {error}")]
    Lexicon {
        /// Which folder.
        tag: String,
        /// What is wrong.
        error: LexiconError,
    },
    /// The messages are not sound.
    #[error("locales/{tag}/reply.ftl: {error}")]
    Catalog {
        /// Which folder.
        tag: String,
        /// What is wrong.
        error: CatalogError,
    },
    /// The folder's name is no language tag, or nothing is known of its figures.
    #[error("locales/{0}: no way to write figures is known for this language tag")]
    Figures(String),
}

impl Locale {
    /// Reads a language from the text of its files.
    ///
    /// # Errors
    /// [`LocaleError`] naming the file and what is wrong in it.
    pub fn parse(
        tag: &str,
        lexicon: &str,
        plain: &str,
        messages: &str,
    ) -> Result<Self, LocaleError> {
        let lexicon = Lexicon::parse(lexicon, plain).map_err(|error| LocaleError::Lexicon {
            tag: tag.to_owned(),
            error,
        })?;
        let catalog = Catalog::parse(tag, messages).map_err(|error| LocaleError::Catalog {
            tag: tag.to_owned(),
            error,
        })?;
        let no_figures = || LocaleError::Figures(tag.to_owned());
        let locale = icu_locale_core::Locale::from_str(tag).map_err(|_| no_figures())?;
        let mut options = DecimalFormatterOptions::default();
        // A grouped 1,000 L reads as a single litre to half the world.
        options.grouping_strategy = Some(GroupingStrategy::Never);
        let figures =
            DecimalFormatter::try_new(locale.into(), options).map_err(|_| no_figures())?;
        Ok(Self {
            lexicon,
            catalog,
            figures,
        })
    }

    /// A figure as this language writes it, with at most so many decimals and no idle zeros.
    #[must_use]
    pub fn figure(&self, value: f64, decimals_max: usize) -> String {
        let written = format!("{value:.decimals_max$}");
        let written = if written.contains('.') {
            written.trim_end_matches('0').trim_end_matches('.')
        } else {
            written.as_str()
        };
        Decimal::from_str(written).map_or_else(
            |_| written.to_owned(),
            |decimal| self.figures.format(&decimal).to_string(),
        )
    }
}

/// All languages that are spoken.
#[derive(Debug)]
pub struct Locales {
    all: Vec<(String, Locale)>,
}

static EMBEDDED: LazyLock<Result<Locales, LocaleError>> = LazyLock::new(Locales::load_embedded);

impl Locales {
    /// The embedded languages, read once.
    ///
    /// # Errors
    /// The first [`LocaleError`]; a test keeps the embedded folders sound.
    pub fn embedded() -> Result<&'static Self, &'static LocaleError> {
        EMBEDDED.as_ref()
    }

    fn load_embedded() -> Result<Self, LocaleError> {
        let mut all = Vec::new();
        for folder in FOLDER.dirs() {
            let tag = folder
                .path()
                .file_name()
                .map(|name| name.to_string_lossy().into_owned())
                .unwrap_or_default();
            let file = |name: &'static str| {
                FOLDER
                    .get_file(folder.path().join(name))
                    .and_then(include_dir::File::contents_utf8)
                    .ok_or(LocaleError::File {
                        tag: tag.clone(),
                        file: name,
                    })
            };
            let plain = file("plain.txt").unwrap_or_default();
            let locale = Locale::parse(&tag, file("lexicon.toml")?, plain, file("reply.ftl")?)?;
            all.push((tag, locale));
        }
        Ok(Self { all })
    }

    /// The tags of all languages.
    pub fn tags(&self) -> impl Iterator<Item = &str> {
        self.all.iter().map(|(tag, _)| tag.as_str())
    }

    /// The language for a BCP 47 tag, by its primary language; nothing if it is not spoken.
    #[must_use]
    pub fn get(&self, tag: &str) -> Option<(&str, &Locale)> {
        let wanted = LanguageIdentifier::from_str(tag).ok()?;
        self.all
            .iter()
            .find(|(ours, _)| {
                LanguageIdentifier::from_str(ours)
                    .is_ok_and(|ours| ours.language == wanted.language)
            })
            .map(|(ours, locale)| (ours.as_str(), locale))
    }

    /// The language for a tag, or the fallback.
    #[must_use]
    pub fn get_or_fallback(&self, tag: Option<&str>) -> Option<(&str, &Locale)> {
        tag.and_then(|tag| self.get(tag))
            .or_else(|| self.get(FALLBACK))
    }
}
