//! `matone ask`: one message, or JSON Lines.

use std::io::{BufRead, Write};
use std::path::PathBuf;
use std::str::FromStr;

use clap::Args;
use jiff::Timestamp;
use unic_langid::LanguageIdentifier;

use crate::contract::{LineError, LineIn};
use crate::desk::{Answered, Desk};
use crate::dialogue::Person;
use crate::store::Store;

use super::CliError;

/// The person that `ask TEXT` speaks for.
const MYSELF: &str = "me";

#[derive(Debug, Args)]
pub(super) struct AskArguments {
    /// The message.
    text: Vec<String>,
    /// JSON Lines on standard input, JSON Lines on standard output.
    #[arg(long, conflicts_with = "text")]
    jsonl: bool,
    /// Remember the person in this file; left out, all is forgotten at exit.
    #[arg(long, value_name = "FILE")]
    store: Option<PathBuf>,
    /// Answer as this configuration says: its languages, local words and units.
    #[arg(long, value_name = "FILE")]
    config: Option<PathBuf>,
    /// The person's language (BCP 47).
    #[arg(long, value_name = "L")]
    lang: Option<String>,
    /// Who asks.
    #[arg(long, value_name = "ID")]
    from: Option<String>,
}

pub(super) fn run(arguments: &AskArguments) -> Result<(), CliError> {
    if let Some(tag) = &arguments.lang
        && LanguageIdentifier::from_str(tag).is_err()
    {
        return Err(CliError::Usage(format!(
            "`{tag}` is no language tag; write one like en or sw"
        )));
    }
    let mut teller = Teller {
        desk: super::desk(arguments.config.as_ref())?,
        store: super::store(arguments.store.as_ref())?,
        language: arguments.lang.clone(),
    };
    if arguments.jsonl {
        return lines(&mut teller, arguments.from.as_deref());
    }
    if arguments.text.is_empty() {
        return Err(CliError::Usage(
            "ask needs a message, or --jsonl (see matone ask --help)".to_owned(),
        ));
    }
    let text = arguments.text.join(" ");
    let from = arguments.from.as_deref().unwrap_or(MYSELF);
    let answered = teller.answer(Some(from), &text, None, Timestamp::now())?;
    let mut out = std::io::stdout().lock();
    writeln!(out, "{}", answered.reply)?;
    Ok(())
}

/// Answers for whoever asks, and remembers those who have a name.
pub(super) struct Teller {
    pub(super) desk: Desk,
    pub(super) store: Store,
    pub(super) language: Option<String>,
}

impl Teller {
    pub(super) fn answer(
        &mut self,
        from: Option<&str>,
        text: &str,
        language: Option<&str>,
        now: Timestamp,
    ) -> Result<Answered, CliError> {
        let mut person = match from {
            Some(id) => self.store.person(id)?,
            None => Person::default(),
        };
        if let Some(language) = language.or(self.language.as_deref()) {
            person.language = Some(language.to_owned());
        }
        let answered = self.desk.answer(&person, text, now)?;
        if let Some(id) = from {
            self.store.keep(id, answered.step.person.as_ref(), now)?;
        }
        Ok(answered)
    }
}

fn lines(teller: &mut Teller, from: Option<&str>) -> Result<(), CliError> {
    let input = std::io::stdin().lock();
    let mut out = std::io::BufWriter::new(std::io::stdout().lock());
    for (n, bytes) in input.split(b'\n').enumerate() {
        let bytes = bytes?;
        if bytes.iter().all(u8::is_ascii_whitespace) {
            continue;
        }
        match line(teller, from, &bytes) {
            Ok(line) => serde_json::to_writer(&mut out, &line)?,
            Err(LineFailure::Bad(reason)) => {
                let error = LineError {
                    error: format!("line {}: {reason}", n + 1),
                };
                serde_json::to_writer(&mut out, &error)?;
            }
            Err(LineFailure::Ours(error)) => return Err(error),
        }
        writeln!(out)?;
        // Somebody may be waiting for this answer before writing the next line.
        out.flush()?;
    }
    Ok(())
}

enum LineFailure {
    /// The line is not what it should be.
    Bad(String),
    /// The program failed.
    Ours(CliError),
}

fn line(
    teller: &mut Teller,
    from: Option<&str>,
    bytes: &[u8],
) -> Result<crate::contract::LineOut, LineFailure> {
    let line: LineIn =
        serde_json::from_slice(bytes).map_err(|error| LineFailure::Bad(error.to_string()))?;
    if let Some(tag) = &line.lang
        && LanguageIdentifier::from_str(tag).is_err()
    {
        return Err(LineFailure::Bad(format!(
            "`lang`: `{tag}` is no language tag"
        )));
    }
    let from = line.from.as_deref().or(from);
    let now = line.at.unwrap_or_else(Timestamp::now);
    let answered = teller
        .answer(from, &line.text, line.lang.as_deref(), now)
        .map_err(LineFailure::Ours)?;
    Ok(answered.line(from.map(str::to_owned)))
}
