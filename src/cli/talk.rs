//! `matone`: the conversation in the terminal, on the embedded store.

use std::io::{BufRead, IsTerminal, Write};

use jiff::Timestamp;
use rustyline::DefaultEditor;
use rustyline::error::ReadlineError;

use crate::reply::terminal_text;

use super::CliError;
use super::ask::Teller;

const PROMPT: &str = "> ";
/// The person at the terminal.
const AT_TERMINAL: &str = "terminal";

pub(super) fn run() -> Result<(), CliError> {
    let store = super::data_file("matone.db")?;
    let mut teller = Teller {
        desk: super::desk()?,
        store: super::store(Some(&store))?,
        language: None,
    };
    let language = teller.store.person(AT_TERMINAL)?.language;
    let words = terminal_text(teller.desk.locale(language.as_deref())?)
        .map_err(crate::desk::DeskError::from)?;
    let mut out = std::io::stdout();
    writeln!(out, "{}\n{}", words.greeting, words.examples)?;
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
    out.flush()?;
    Ok(())
}
