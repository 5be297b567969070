//! The command line: one file a command.
//!
//! Promises that a mistake gets one clear line on standard error and exit 2 (usage) or 1
//! (failure), and that nothing else is printed there.

mod ask;
mod backup;
mod chart;
mod check;
mod serve;
mod talk;

use std::path::PathBuf;
use std::process::ExitCode;
use std::sync::Arc;

use clap::{Parser, Subcommand};

use crate::chart::ChartError;
use crate::config::{Config, ConfigError};
use crate::desk::{Desk, DeskError};
use crate::locale::{FALLBACK, LocaleErrors, Locales};
use crate::quantity::UnitSystem;
use crate::store::{Store, StoreError};

/// How to make the water at hand safe to drink.
///
/// Without a command: the conversation in the terminal.
#[derive(Debug, Parser)]
#[command(name = "matone", version, about, long_about = None)]
struct Arguments {
    #[command(subcommand)]
    command: Option<Command>,
}

#[derive(Debug, Subcommand)]
enum Command {
    /// One message in, the reply on standard output.
    Ask(ask::AskArguments),
    /// Copies the store while the service works in it.
    Backup(backup::BackupArguments),
    /// Reads the configuration, the languages and the store, says what is wrong, starts nothing.
    Check(check::CheckArguments),
    /// A printable dose chart for a wall, as HTML on standard output.
    Chart(chart::ChartArguments),
    /// Runs the channels of a configuration until it is told to end.
    Serve(serve::ServeArguments),
}

/// Why a command failed.
#[derive(Debug, thiserror::Error)]
enum CliError {
    /// The arguments do not say what to do.
    #[error("{0}")]
    Usage(String),
    #[error("{0}")]
    Chart(#[from] ChartError),
    #[error("{0}")]
    Config(#[from] ConfigError),
    #[error("{0}")]
    Desk(#[from] DeskError),
    #[error("{0} (matone check tells all that is wrong)")]
    Locale(String),
    /// What is wrong has been told already.
    #[error("{0} found wrong")]
    Wrong(usize),
    #[error("{0}")]
    Service(#[from] crate::service::ServiceError),
    #[error("{0}")]
    Store(#[from] StoreError),
    #[error("{0}")]
    Io(#[from] std::io::Error),
    #[error("the answer cannot be written as JSON: {0}")]
    Json(#[from] serde_json::Error),
    #[error("the terminal cannot be used: {0}")]
    Terminal(#[from] rustyline::error::ReadlineError),
    #[error("this system names no folder for a program's data; name a file with --store")]
    NoDataFolder,
}

/// Runs the program with the arguments of the process.
#[must_use]
pub fn run() -> ExitCode {
    let arguments = match Arguments::try_parse() {
        Ok(arguments) => arguments,
        Err(error) => return usage(&error),
    };
    let done = match arguments.command {
        None => talk::run(),
        Some(Command::Ask(arguments)) => ask::run(&arguments),
        Some(Command::Backup(arguments)) => backup::run(&arguments),
        Some(Command::Chart(arguments)) => chart::run(&arguments),
        Some(Command::Check(arguments)) => check::run(&arguments),
        Some(Command::Serve(arguments)) => serve::run(&arguments),
    };
    match done {
        Ok(()) => ExitCode::SUCCESS,
        Err(error) => complain(&error),
    }
}

#[expect(
    clippy::print_stderr,
    reason = "this is where the program speaks of its own failure"
)]
fn complain(error: &CliError) -> ExitCode {
    // A reader that went away (`matone ask … | head -1`) is no failure of ours.
    if let CliError::Io(io) = error
        && io.kind() == std::io::ErrorKind::BrokenPipe
    {
        return ExitCode::SUCCESS;
    }
    eprintln!("matone: {error}");
    match error {
        CliError::Usage(_) => ExitCode::from(2),
        CliError::Chart(_)
        | CliError::Config(_)
        | CliError::Desk(_)
        | CliError::Locale(_)
        | CliError::Wrong(_)
        | CliError::Service(_)
        | CliError::Store(_)
        | CliError::Io(_)
        | CliError::Json(_)
        | CliError::Terminal(_)
        | CliError::NoDataFolder => ExitCode::from(1),
    }
}

/// Help and version go to standard output; a mistake gets its first paragraph, as one line: what
/// is wrong, and which values there are.
#[expect(
    clippy::print_stderr,
    reason = "this is where the program speaks of a wrong call"
)]
fn usage(error: &clap::Error) -> ExitCode {
    if !error.use_stderr() {
        // Nobody to show the help to is no failure.
        let _ = error.print();
        return ExitCode::SUCCESS;
    }
    let text = error.to_string();
    let paragraph = text
        .lines()
        .map(str::trim)
        .take_while(|line| !line.is_empty());
    let line = paragraph.collect::<Vec<_>>().join(" ");
    let line = line.strip_prefix("error: ").unwrap_or(&line);
    eprintln!("matone: {line} (see matone --help)");
    ExitCode::from(2)
}

/// Where the conversation is kept unless told otherwise.
fn data_file(name: &str) -> Result<PathBuf, CliError> {
    let folders = directories::ProjectDirs::from("", "", "matone").ok_or(CliError::NoDataFolder)?;
    Ok(folders.data_dir().join(name))
}

/// The program's own languages.
fn embedded() -> Result<&'static Arc<Locales>, CliError> {
    Locales::embedded().map_err(|errors| CliError::Locale(errors.first()))
}

impl From<LocaleErrors> for CliError {
    fn from(errors: LocaleErrors) -> Self {
        Self::Locale(errors.first())
    }
}

/// The desk of a configuration, or the program's own.
fn desk(config: Option<&PathBuf>) -> Result<Desk, CliError> {
    match config {
        None => {
            let locales = embedded()?;
            Ok(Desk::new(
                Arc::clone(locales),
                UnitSystem::default(),
                FALLBACK,
            ))
        }
        Some(path) => {
            let config = Config::read(path)?;
            let locales = check::languages(&config)?;
            let units = config.answers.units.into();
            Ok(
                Desk::new(Arc::new(locales), units, &config.answers.language)
                    .with_help_line(config.answers.help_line),
            )
        }
    }
}

fn store(path: Option<&PathBuf>) -> Result<Store, CliError> {
    Ok(match path {
        Some(path) => Store::open(path)?,
        None => Store::in_memory()?,
    })
}
