//! `matone check`: reads the configuration, the languages and the store, and starts nothing.

use std::io::Write;
use std::net::TcpListener;
use std::path::PathBuf;

use clap::Args;

use crate::channel;
use crate::config::{ChannelSettings, Config};
use crate::locale::{LocaleErrors, Locales};
use crate::privacy::Seal;
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
    let mut wrong = config.contradictions();
    wrong.extend(surroundings(&config));
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

/// What a start would stumble over: secrets, the key file, the port, a device.
fn surroundings(config: &Config) -> Vec<String> {
    let mut wrong = Vec::new();
    for settings in &config.channel {
        if let Err(error) = channel::open(settings) {
            wrong.push(error.to_string());
        }
        if let ChannelSettings::Modem(modem) = settings
            && !modem.device.exists()
        {
            wrong.push(format!(
                "[[channel]] {}: there is no device {}; is the modem plugged in?",
                modem.name,
                modem.device.display()
            ));
        }
    }
    let key = &config.privacy.key_file;
    if key.exists() {
        if let Err(error) = Seal::open_or_make(key) {
            wrong.push(error.to_string());
        }
    } else if config.store.path.exists() && !config.channel.is_empty() {
        wrong.push(format!(
            "[privacy] key_file: {} is not there, and without the key that the store was made \
             with what waits in it cannot be opened",
            key.display()
        ));
    }
    if let Some(http) = &config.http
        && let Err(error) = TcpListener::bind(http.listen)
    {
        wrong.push(format!(
            "[http] listen: {} cannot be listened on: {error}",
            http.listen
        ));
    }
    wrong
}
