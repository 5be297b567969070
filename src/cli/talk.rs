//! `matone`: the conversation in the terminal, on the embedded store.
//!
//! Reminders that are due are told before the first prompt, after each answer, and, where there
//! is somebody at the keyboard, in between.

use std::io::{BufRead, IsTerminal, Write};
use std::time::Duration;

use jiff::Timestamp;
use rustyline::error::ReadlineError;
use rustyline::{DefaultEditor, ExternalPrinter};

use crate::desk::{Desk, DeskError};
use crate::reply::{reminder, terminal_text};
use crate::store::{Store, Whose};

use super::CliError;
use super::ask::Teller;

const PROMPT: &str = "> ";
/// The person at the terminal.
const AT_TERMINAL: &str = "terminal";
/// How often the clock is looked at.
const TICK: Duration = Duration::from_secs(1);

pub(super) fn run() -> Result<(), CliError> {
    let store = super::data_file("matone.db")?;
    let mut teller = Teller {
        desk: super::desk(None)?,
        store: super::store(Some(&store))?,
        language: None,
    };
    let person = teller.store.person(AT_TERMINAL)?;
    let language = person.language.or(person.wrote);
    let words = terminal_text(teller.desk.locale(language.as_deref())?)
        .map_err(crate::desk::DeskError::from)?;
    let mut out = std::io::stdout();
    writeln!(out, "{}\n{}", words.greeting, words.examples)?;
    tell_due(&mut teller, &mut out)?;
    if std::io::stdin().is_terminal() {
        edited(&mut teller, &mut out)?;
        writeln!(out, "{}", words.bye)?;
    } else {
        for line in std::io::stdin().lock().split(b'\n') {
            answer(&mut teller, &String::from_utf8_lossy(&line?), &mut out)?;
        }
    }
    Ok(())
}

/// With line editing and a history that is there the next time.
fn edited(teller: &mut Teller, out: &mut impl Write) -> Result<(), CliError> {
    let history = super::data_file("history.txt")?;
    let mut editor = DefaultEditor::new()?;
    // The first time there is no history to load.
    let _ = editor.load_history(&history);
    watch(teller.desk.clone(), &mut editor)?;
    loop {
        match editor.readline(PROMPT) {
            Ok(line) => {
                editor.add_history_entry(&line)?;
                answer(teller, &line, out)?;
            }
            Err(ReadlineError::Eof | ReadlineError::Interrupted) => break,
            Err(error) => return Err(error.into()),
        }
    }
    // A history that cannot be kept is no reason to fail a conversation that is over.
    let _ = editor.save_history(&history);
    Ok(())
}

fn answer(teller: &mut Teller, line: &str, out: &mut impl Write) -> Result<(), CliError> {
    if line.trim().is_empty() {
        return Ok(());
    }
    let answered = teller.answer(Some(AT_TERMINAL), line, None, Timestamp::now())?;
    writeln!(out, "{}", answered.reply)?;
    tell_due(teller, out)?;
    out.flush()?;
    Ok(())
}

fn tell_due(teller: &mut Teller, out: &mut impl Write) -> Result<(), CliError> {
    for text in due(&teller.desk, &mut teller.store)? {
        writeln!(out, "{text}")?;
    }
    Ok(())
}

/// The reminders that are due now, in words.
fn due(desk: &Desk, store: &mut Store) -> Result<Vec<String>, CliError> {
    let mut texts = Vec::new();
    for due in store.take_due(Whose::One(AT_TERMINAL), Timestamp::now())? {
        let locale = desk.locale(due.language.as_deref())?;
        if let Some(due) = &due.reminder {
            texts.push(reminder(due, locale).map_err(DeskError::from)?);
        }
    }
    Ok(texts)
}

/// Looks at the clock while the prompt waits. It has its own way into the store, and ends with
/// the program.
fn watch(desk: Desk, editor: &mut DefaultEditor) -> Result<(), CliError> {
    let mut printer = editor.create_external_printer()?;
    let mut store = Store::open(&super::data_file("matone.db")?)?;
    std::thread::spawn(move || {
        loop {
            std::thread::sleep(TICK);
            // What cannot be told in between is told after the next answer.
            let Ok(texts) = due(&desk, &mut store) else {
                continue;
            };
            for text in texts {
                let _ = printer.print(format!("{text}\n"));
            }
        }
    });
    Ok(())
}
