//! The files of one language, embedded or on disk.

use std::path::{Path, PathBuf};

use super::LocaleError;

/// A language that is part of the program; the build makes the list.
struct Embedded {
    tag: &'static str,
    tables: &'static [u8],
    reply: &'static str,
    checks: &'static str,
}

const EMBEDDED: &[Embedded] = include!(concat!(env!("OUT_DIR"), "/languages.rs"));

/// The text of a language's files.
#[derive(Debug, Clone, Default)]
pub struct Folder {
    /// BCP 47 tag: the folder's name.
    pub tag: String,
    /// Where the folder is, for whoever has to mend it.
    pub place: String,
    /// The words that are read, where the program was built with them; their files then are empty.
    pub tables: Option<&'static [u8]>,
    /// `lexicon.toml`: the words that are read.
    pub lexicon: String,
    /// `plain.txt`: words that mean nothing here.
    pub plain: String,
    /// `reply.ftl`: what is written.
    pub reply: String,
    /// `checks.toml`: what must not get lost in a message.
    pub checks: String,
}

const LEXICON: &str = "lexicon.toml";
const PLAIN: &str = "plain.txt";
const REPLY: &str = "reply.ftl";
const CHECKS: &str = "checks.toml";

impl Folder {
    fn read(
        tag: String,
        place: String,
        mut file: impl FnMut(&'static str) -> Result<String, LocaleError>,
    ) -> Result<Self, LocaleError> {
        Ok(Self {
            tag,
            place,
            tables: None,
            lexicon: file(LEXICON)?,
            plain: file(PLAIN)?,
            reply: file(REPLY)?,
            checks: file(CHECKS)?,
        })
    }

    /// The languages that are part of the program.
    pub(super) fn embedded() -> Vec<Self> {
        EMBEDDED
            .iter()
            .map(|language| Self {
                tag: language.tag.to_owned(),
                place: format!("locales/{}", language.tag),
                tables: Some(language.tables),
                reply: language.reply.to_owned(),
                checks: language.checks.to_owned(),
                ..Self::default()
            })
            .collect()
    }

    /// The languages in a deployer's folder: one folder each.
    pub(super) fn all_in(path: &Path) -> Result<Vec<Self>, LocaleError> {
        let unread = |error: std::io::Error| LocaleError::Folder {
            path: path.display().to_string(),
            reason: error.to_string(),
        };
        let mut folders: Vec<PathBuf> = std::fs::read_dir(path)
            .map_err(unread)?
            .map(|entry| entry.map(|entry| entry.path()))
            .collect::<Result<Vec<_>, _>>()
            .map_err(unread)?
            .into_iter()
            .filter(|entry| entry.is_dir())
            .collect();
        folders.sort();
        folders
            .into_iter()
            .map(|folder| {
                let name = folder.file_name().unwrap_or_default();
                let place = folder.display().to_string();
                Self::read(name.to_string_lossy().into_owned(), place.clone(), |name| {
                    std::fs::read_to_string(folder.join(name)).map_err(|error| LocaleError::File {
                        place: place.clone(),
                        file: name,
                        reason: error.to_string(),
                    })
                })
            })
            .collect()
    }
}
