//! The languages, each a folder of data.
//!
//! In: the embedded `locales/` folder, a deployer's folder, and overlays of local words.
//! Out: for a language tag, its lexicon, its messages and the way it writes figures.
//! A language is added by adding a folder; no Rust changes.

mod check;
mod folder;

use std::path::{Path, PathBuf};
use std::str::FromStr;
use std::sync::{Arc, LazyLock};

use icu_decimal::DecimalFormatter;
use icu_decimal::input::Decimal;
use icu_decimal::options::{DecimalFormatterOptions, GroupingStrategy};
use unic_langid::LanguageIdentifier;

use crate::parser::{Lexicon, LexiconError, Overlay};
use crate::reply::{Catalog, CatalogError};

pub use check::Fault;
pub use folder::Folder;

use check::Pattern;

/// The language spoken when none can be told, and the one that all are translated from.
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
    /// The messages are not sound.
    #[error("{place}/reply.ftl: {error}")]
    Catalog {
        /// Which folder.
        place: String,
        /// What is wrong.
        error: CatalogError,
    },
    /// A message or its check list is not what it should be.
    #[error("{place}/{fault}")]
    Fault {
        /// Which folder.
        place: String,
        /// What is wrong.
        fault: Fault,
    },
    /// The folder's name is no language tag, or nothing is known of its figures.
    #[error("{0}: no way to write figures is known for this language tag")]
    Figures(String),
    /// A file is missing.
    #[error("{place}/{file} cannot be read: {reason}")]
    File {
        /// Which folder.
        place: String,
        /// Which file.
        file: &'static str,
        /// Why.
        reason: String,
    },
    /// A folder of languages cannot be read.
    #[error("{path} cannot be read as a folder of languages: {reason}")]
    Folder {
        /// Which folder.
        path: String,
        /// Why.
        reason: String,
    },
    /// The lexicon is not sound.
    #[error("{place}/lexicon.toml: {error}")]
    Lexicon {
        /// Which folder.
        place: String,
        /// What is wrong.
        error: LexiconError,
    },
    /// No English, or whatever all are translated from.
    #[error("the folder of the language {FALLBACK} is missing")]
    NoFallback,
    /// A file of local words cannot be read.
    #[error("{name}: {reason}")]
    Overlay {
        /// The file.
        name: String,
        /// What is wrong.
        reason: String,
    },
    /// Local words for a language that is not there.
    #[error("{name}: there is no language `{language}` to add words to")]
    OverlayLanguage {
        /// The file.
        name: String,
        /// The language.
        language: String,
    },
    /// The folder is called otherwise than its language.
    #[error("{place}/lexicon.toml: [locale] tag is `{tag}`; it must be the folder's name")]
    Tag {
        /// Which folder.
        place: String,
        /// What the file says.
        tag: String,
    },
}

/// Everything that is wrong, in the order it was found.
#[derive(Debug, thiserror::Error)]
#[error("{}", .0.iter().map(ToString::to_string).collect::<Vec<_>>().join("\n"))]
pub struct LocaleErrors(pub Vec<LocaleError>);

impl LocaleErrors {
    /// The first, for where only one line is shown.
    #[must_use]
    pub fn first(&self) -> String {
        self.0.first().map(ToString::to_string).unwrap_or_default()
    }
}

impl From<LocaleError> for LocaleErrors {
    fn from(error: LocaleError) -> Self {
        Self(vec![error])
    }
}

impl Locale {
    /// Reads a language from the text of its files.
    ///
    /// # Errors
    /// Every [`LocaleError`] of it, naming the file and what is wrong in it.
    pub fn parse(folder: &Folder, overlays: &[Overlay]) -> Result<Self, Vec<LocaleError>> {
        let mut errors = Vec::new();
        let place = || folder.place.clone();
        let overlays: Vec<Overlay> = overlays
            .iter()
            .filter(|overlay| overlay.language == folder.tag)
            .cloned()
            .collect();
        let read = match folder.tables {
            Some(tables) => Lexicon::built(tables, &overlays),
            None => Lexicon::parse(&folder.lexicon, &folder.plain, &overlays),
        };
        let lexicon = read
            .map_err(|wrong| {
                errors.extend(wrong.into_iter().map(|error| LocaleError::Lexicon {
                    place: place(),
                    error,
                }));
            })
            .ok();
        let catalog = Catalog::parse(&folder.tag, &folder.reply)
            .map_err(|error| {
                errors.push(LocaleError::Catalog {
                    place: place(),
                    error,
                });
            })
            .ok();
        let figures = figures(&folder.tag).and_then(|own| match &lexicon {
            Some(lexicon) => in_decimals_of(own, lexicon.writes_commas()),
            None => Some(own),
        });
        if figures.is_none() {
            errors.push(LocaleError::Figures(place()));
        }
        let (Some(lexicon), Some(catalog), Some(figures)) = (lexicon, catalog, figures) else {
            return Err(errors);
        };
        if lexicon.tag() != folder.tag {
            return Err(vec![LocaleError::Tag {
                place: place(),
                tag: lexicon.tag().to_owned(),
            }]);
        }
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

    /// Whether the language is written from right to left.
    #[must_use]
    pub fn direction(&self) -> Direction {
        let tag = self.lexicon.tag().parse::<LanguageIdentifier>();
        match tag.map(|tag| tag.character_direction()) {
            Ok(unic_langid::CharacterDirection::RTL) => Direction::RightToLeft,
            Ok(unic_langid::CharacterDirection::LTR | unic_langid::CharacterDirection::TTB)
            | Err(_) => Direction::LeftToRight,
        }
    }
}

/// Which way a language is written.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Direction {
    /// Like English.
    LeftToRight,
    /// Like Arabic.
    RightToLeft,
}

/// Figures in the digits that every phone shows in the right order: 0 to 9.
fn figures(tag: &str) -> Option<DecimalFormatter> {
    tag.parse::<LanguageIdentifier>().ok()?;
    let locale = icu_locale_core::Locale::from_str(&format!("{tag}-u-nu-latn")).ok()?;
    let mut options = DecimalFormatterOptions::default();
    // A grouped 1,000 L reads as a single litre to half the world.
    options.grouping_strategy = Some(GroupingStrategy::Never);
    DecimalFormatter::try_new(locale.into(), options).ok()
}

/// Where nothing is known of a language's figures, they are written with a point: then those of
/// another language that writes decimals as this one does.
fn in_decimals_of(own: DecimalFormatter, commas: Option<bool>) -> Option<DecimalFormatter> {
    let half = own.format(&Decimal::from_str("0.5").ok()?).to_string();
    match commas {
        Some(true) if !half.contains(',') => figures("fr"),
        Some(false) if !half.contains('.') => figures(FALLBACK),
        Some(_) | None => Some(own),
    }
}

/// All languages that are spoken.
#[derive(Debug)]
pub struct Locales {
    /// By tag, in its order; the fallback is among them.
    all: Vec<(String, Locale)>,
}

static EMBEDDED: LazyLock<Result<Arc<Locales>, LocaleErrors>> =
    LazyLock::new(|| Locales::load(None, &[]).map(Arc::new));

impl Locales {
    /// The embedded languages, read once.
    ///
    /// # Errors
    /// [`LocaleErrors`]; a test keeps the embedded folders sound.
    pub fn embedded() -> Result<&'static Arc<Self>, &'static LocaleErrors> {
        EMBEDDED.as_ref()
    }

    /// The embedded languages with those of a deployer's folder, which go before, and with
    /// overlays of local words.
    ///
    /// # Errors
    /// [`LocaleErrors`] of all of them.
    pub fn load(folder: Option<&Path>, words: &[PathBuf]) -> Result<Self, LocaleErrors> {
        let mut errors = Vec::new();
        let mut folders = Folder::embedded();
        if let Some(path) = folder {
            for own in Folder::all_in(path)? {
                folders.retain(|other| other.tag != own.tag);
                folders.push(own);
            }
        }
        folders.sort_by(|a, b| a.tag.cmp(&b.tag));
        let overlays: Vec<Overlay> = words
            .iter()
            .filter_map(|path| overlay(path).map_err(|error| errors.push(error)).ok())
            .collect();
        for overlay in &overlays {
            if !folders.iter().any(|folder| folder.tag == overlay.language) {
                errors.push(LocaleError::OverlayLanguage {
                    name: overlay.name.clone(),
                    language: overlay.language.clone(),
                });
            }
        }
        let mut all = Vec::new();
        for (folder, parsed) in folders.iter().zip(parse_all(&folders, &overlays)) {
            match parsed {
                Ok(locale) => all.push((folder, locale)),
                Err(wrong) => errors.extend(wrong),
            }
        }
        if !folders.iter().any(|folder| folder.tag == FALLBACK) {
            errors.push(LocaleError::NoFallback);
        }
        errors.extend(compare(&all));
        if !errors.is_empty() {
            return Err(LocaleErrors(errors));
        }
        let all = all
            .into_iter()
            .map(|(folder, locale)| (folder.tag.clone(), locale))
            .collect();
        Ok(Self { all })
    }

    /// The tags of all languages.
    pub fn tags(&self) -> impl Iterator<Item = &str> {
        self.all.iter().map(|(tag, _)| tag.as_str())
    }

    /// All languages, in the order of their tags.
    pub fn all(&self) -> impl Iterator<Item = (&str, &Locale)> {
        self.all.iter().map(|(tag, locale)| (tag.as_str(), locale))
    }

    /// The language for a BCP 47 tag, by its primary language; nothing if it is not spoken.
    #[must_use]
    pub fn get(&self, tag: &str) -> Option<(&str, &Locale)> {
        let wanted = LanguageIdentifier::from_str(tag).ok()?;
        self.all().find(|(ours, _)| {
            LanguageIdentifier::from_str(ours).is_ok_and(|ours| ours.language == wanted.language)
        })
    }

    /// The language for a tag, or the fallback.
    #[must_use]
    pub fn get_or_fallback(&self, tag: Option<&str>) -> Option<(&str, &Locale)> {
        tag.and_then(|tag| self.get(tag))
            .or_else(|| self.get(FALLBACK))
    }
}

/// All languages at once: a start waits for the longest and not for their sum.
fn parse_all(folders: &[Folder], overlays: &[Overlay]) -> Vec<Result<Locale, Vec<LocaleError>>> {
    std::thread::scope(|scope| {
        let started: Vec<_> = folders
            .iter()
            .map(|folder| scope.spawn(move || Locale::parse(folder, overlays)))
            .collect();
        started
            .into_iter()
            .zip(folders)
            .map(|(thread, folder)| {
                // A thread that cannot go on is tried again here, where its failure is seen.
                thread
                    .join()
                    .unwrap_or_else(|_| Locale::parse(folder, overlays))
            })
            .collect()
    })
}

/// Every language beside the one that all are translated from.
fn compare(all: &[(&Folder, Locale)]) -> Vec<LocaleError> {
    let Some((folder, fallback)) = all.iter().find(|(folder, _)| folder.tag == FALLBACK) else {
        // What is wrong with it has been told.
        return Vec::new();
    };
    let fault = |folder: &Folder, fault| LocaleError::Fault {
        place: folder.place.clone(),
        fault,
    };
    let pattern = match Pattern::of(&fallback.catalog, &folder.checks) {
        Ok(pattern) => pattern,
        Err(wrong) => return vec![fault(folder, wrong)],
    };
    all.iter()
        .flat_map(|(folder, locale)| {
            pattern
                .compare(&locale.catalog, &folder.checks)
                .into_iter()
                .map(move |wrong| fault(folder, wrong))
        })
        .collect()
}

fn overlay(path: &Path) -> Result<Overlay, LocaleError> {
    let name = path.display().to_string();
    let wrong = |reason: String| LocaleError::Overlay {
        name: name.clone(),
        reason,
    };
    let text = std::fs::read_to_string(path).map_err(|error| wrong(error.to_string()))?;
    Overlay::parse(&name, &text).map_err(|error| wrong(error.to_string()))
}
