//! `matone check`: reads the configuration, the languages and the store, and starts nothing.

use std::collections::BTreeSet;
use std::io::Write;
use std::path::PathBuf;

use clap::Args;

use crate::config::{Config, Regime};
use crate::locale::{LocaleErrors, Locales};
use crate::store::Store;

use super::CliError;

#[derive(Debug, Args)]
pub(super) struct CheckArguments {
    /// The configuration file; left out, the program's own languages are read.
    #[arg(long, value_name = "FILE")]
    config: Option<PathBuf>,
}

pub(super) fn run(arguments: &CheckArguments) -> Result<(), CliError> {
    let mut out = std::io::stdout().lock();
    let config = match &arguments.config {
        Some(path) => match Config::read(path) {
            Ok(config) => config,
            Err(error) => {
                writeln!(out, "{error}")?;
                return Err(CliError::Wrong(1));
            }
        },
        None => Config::default(),
    };
    let mut wrong = settings(&config);
    match languages(&config) {
        Ok(locales) => {
            for (tag, locale) in locales.all() {
                let lexicon = &locale.lexicon;
                writeln!(
                    out,
                    "{tag}: {}, {} messages, {}",
                    lexicon.name(),
                    locale.catalog.wordings().len(),
                    lexicon.review(),
                )?;
                if !lexicon.spelling().is_empty() {
                    writeln!(out, "    {}", lexicon.spelling())?;
                }
            }
            if locales.get(&config.answers.language).is_none() {
                wrong.push(format!(
                    "[answers] language: there is no language `{}`",
                    config.answers.language
                ));
            }
        }
        Err(errors) => wrong.extend(errors.0.iter().map(ToString::to_string)),
    }
    // A store that is not there yet is made on the first start.
    let store = &config.store.path;
    if arguments.config.is_some()
        && store.exists()
        && let Err(error) = Store::verify(store)
    {
        wrong.push(error.to_string());
    }
    for line in &wrong {
        writeln!(out, "{line}")?;
    }
    if wrong.is_empty() {
        Ok(())
    } else {
        Err(CliError::Wrong(wrong.len()))
    }
}

/// The languages of a configuration.
pub(super) fn languages(config: &Config) -> Result<Locales, LocaleErrors> {
    Locales::load(config.answers.locales.as_deref(), &config.answers.words)
}

/// What is wrong in the settings themselves.
fn settings(config: &Config) -> Vec<String> {
    let mut wrong = Vec::new();
    if config.answers.regime == Regime::Household {
        wrong.push(
            "[answers] regime: `household` is not answered yet; only `emergency` is".to_owned(),
        );
    }
    let mut names = BTreeSet::new();
    for channel in &config.channel {
        if !names.insert(channel.name()) {
            wrong.push(format!(
                "[[channel]] name: two channels are called `{}`",
                channel.name()
            ));
        }
    }
    wrong
}
