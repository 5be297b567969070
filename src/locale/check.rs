//! Whether a language's messages say what the program's own say.
//!
//! In: the messages of a language, its check list, and the messages they are translated from.
//! Out: everything that is missing, unknown or lost, by file and key.
//! Promises that a figure, and a word that denies or forbids, cannot get lost unseen.

use std::collections::{BTreeMap, BTreeSet};

use serde::Deserialize;

use crate::reply::{Catalog, Wording};

/// What is wrong with a message or its check list.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum Fault {
    /// A message that the program needs.
    #[error("reply.ftl: no message `{0}`")]
    MissingMessage(String),
    /// A message that nothing says.
    #[error("reply.ftl: `{0}` is no message of the program")]
    UnknownMessage(String),
    /// A variable that the program does not give.
    #[error("reply.ftl: `{key}` uses ${variable}, which the program does not give")]
    UnknownVariable {
        /// The message.
        key: String,
        /// The variable.
        variable: String,
    },
    /// A figure or a name that the message does not pass on.
    #[error("reply.ftl: `{key}` does not say ${variable}")]
    LostVariable {
        /// The message.
        key: String,
        /// The variable.
        variable: String,
    },
    /// A message has no form for the rest of the numbers.
    #[error("reply.ftl: `{key}` lacks the plural form [{category}] of this language")]
    MissingPlural {
        /// The message.
        key: String,
        /// CLDR's name of the form.
        category: &'static str,
    },
    /// A character that nobody sees.
    #[error("reply.ftl: `{key}` has the invisible character U+{code:04X}")]
    Invisible {
        /// The message.
        key: String,
        /// The character.
        code: u32,
    },
    /// The check list is not the TOML that is expected.
    #[error("checks.toml cannot be read: {0}")]
    ChecksUnread(String),
    /// A message that denies, forbids or limits, and no word that carries it.
    #[error("checks.toml: no words for `{0}`, which must not lose its warning")]
    MissingCheck(String),
    /// A word of the check list that its message lacks.
    #[error("checks.toml: `{key}` must hold \"{word}\" and does not")]
    LostWord {
        /// The message.
        key: String,
        /// The word.
        word: String,
    },
    /// A key of the check list that is no message.
    #[error("checks.toml: `{0}` is no message")]
    UnknownCheck(String),
}

/// A language's check list.
#[derive(Debug, Default, Deserialize)]
#[serde(deny_unknown_fields)]
struct Checks {
    keep: BTreeMap<String, Vec<String>>,
}

/// The messages that others are translated from.
#[derive(Debug)]
pub(super) struct Pattern {
    messages: BTreeMap<String, Wording>,
    /// The messages that deny, forbid or limit.
    warnings: BTreeSet<String>,
}

impl Pattern {
    /// The program's own messages and check list.
    pub(super) fn of(catalog: &Catalog, checks: &str) -> Result<Self, Fault> {
        Ok(Self {
            messages: catalog.wordings(),
            warnings: parse(checks)?.keep.into_keys().collect(),
        })
    }

    /// Everything in which a language differs from it.
    pub(super) fn compare(&self, catalog: &Catalog, checks: &str) -> Vec<Fault> {
        let ours = catalog.wordings();
        let mut faults = Vec::new();
        for (key, wording) in &self.messages {
            match ours.get(key) {
                None => faults.push(Fault::MissingMessage(key.clone())),
                Some(own) => faults.extend(variables(key, wording, own)),
            }
        }
        for key in ours.keys() {
            if !self.messages.contains_key(key) {
                faults.push(Fault::UnknownMessage(key.clone()));
            }
        }
        faults.extend(seen(&ours));
        faults.extend(plurals(catalog, &ours));
        match parse(checks) {
            Ok(checks) => faults.extend(self.warnings(&ours, &checks)),
            Err(fault) => faults.push(fault),
        }
        faults
    }

    fn warnings(&self, ours: &BTreeMap<String, Wording>, checks: &Checks) -> Vec<Fault> {
        let mut faults = Vec::new();
        for key in &self.warnings {
            if checks.keep.get(key).is_none_or(Vec::is_empty) {
                faults.push(Fault::MissingCheck(key.clone()));
            }
        }
        for (key, words) in &checks.keep {
            let Some(wording) = ours.get(key) else {
                faults.push(Fault::UnknownCheck(key.clone()));
                continue;
            };
            for word in words {
                if word.is_empty() || !wording.text.contains(word.as_str()) {
                    faults.push(Fault::LostWord {
                        key: key.clone(),
                        word: word.clone(),
                    });
                }
            }
        }
        faults
    }
}

fn parse(checks: &str) -> Result<Checks, Fault> {
    toml::from_str(checks).map_err(|error| Fault::ChecksUnread(error.to_string()))
}

/// What is only there to choose a plural form.
fn only_counts(variable: &str) -> bool {
    variable.ends_with("-n")
}

fn variables(key: &str, pattern: &Wording, own: &Wording) -> Vec<Fault> {
    let unknown = own
        .variables
        .difference(&pattern.variables)
        .map(|variable| Fault::UnknownVariable {
            key: key.to_owned(),
            variable: variable.clone(),
        });
    let lost = pattern
        .variables
        .difference(&own.variables)
        .filter(|variable| !only_counts(variable))
        .map(|variable| Fault::LostVariable {
            key: key.to_owned(),
            variable: variable.clone(),
        });
    unknown.chain(lost).collect()
}

/// Marks that turn a message into another encoding or order and that nobody sees.
fn seen(ours: &BTreeMap<String, Wording>) -> Vec<Fault> {
    let invisible = |c: char| {
        matches!(c, '\u{00A0}' | '\u{00AD}' | '\u{061C}' | '\u{200B}'..='\u{200F}'
            | '\u{202A}'..='\u{202F}' | '\u{2060}'..='\u{2069}' | '\u{FEFF}')
    };
    ours.iter()
        .filter_map(|(key, wording)| {
            let found = wording.text.chars().find(|c| invisible(*c))?;
            Some(Fault::Invisible {
                key: key.clone(),
                code: found.into(),
            })
        })
        .collect()
}

/// Where a message chooses a plural form, it has all forms of the language.
fn plurals(catalog: &Catalog, ours: &BTreeMap<String, Wording>) -> Vec<Fault> {
    let categories = catalog.plural_categories();
    let mut faults = Vec::new();
    for (key, wording) in ours {
        for forms in &wording.selections {
            for category in &categories {
                if !forms.contains(*category) {
                    faults.push(Fault::MissingPlural {
                        key: key.clone(),
                        category,
                    });
                }
            }
        }
    }
    faults
}
