//! Puts into words what the dialogue decided, within an SMS where that can be.
//!
//! In: what to say, and a locale.
//! Out: the text.
//! Promises that every figure comes from the answer, that no warning is cut in half, and that what
//! does not fit into the first SMS waits for `more`.
//! Does not know how a dose is worked out, nor who sends.

mod answer;
mod ask;
mod bottle;
mod catalog;
mod chart;
mod next;
mod phrase;
mod segment;
mod wording;
mod work;

use unic_langid::LanguageIdentifier;

use crate::dialogue::{Answer, FirstAidFor, Reminder, Say};
use crate::locale::Locale;
use crate::quantity::UnitSystem;
use crate::request::{Change, Product};

pub use catalog::{Catalog, CatalogError};
pub(crate) use chart::ChartPhrases;
pub use next::next_words;
pub use segment::{Encoding, Segments, encoding, fits_one, segment, segment_as, segments};
pub use wording::Wording;

use answer::{Assumption, Measures, Need, Room, Sentences};
use catalog::Args;
use phrase::Phrases;

/// Writes what is to be said.
///
/// # Errors
/// [`CatalogError`] when the locale lacks a message or a message lacks an argument; a test keeps
/// the embedded locales whole.
pub fn render(say: &Say, locale: &Locale) -> Result<String, CatalogError> {
    let phrases = Phrases(locale);
    match say {
        Say::Adjusted(answer, change) => adjusted(phrases, answer, *change),
        Say::Answer(answer) => first_message(phrases, answer),
        Say::Ask(question) => phrases.ask(question),
        Say::Bottles(lines) => phrases.bottles(lines),
        Say::CannotAdjust(Change::Faster, _) => phrases.plain("cannot-faster"),
        Say::CannotAdjust(Change::Weaker, _) => phrases.plain("cannot-weaker"),
        Say::FirstAid(aid) => first_aid(phrases, aid),
        Say::Dropped(product) => {
            let product = phrases.product(*product)?;
            phrases.message("dropped", &Args::new().text("product", product))
        }
        Say::Forgotten => phrases.plain("forgotten"),
        Say::Greeting => phrases.plain("greeting"),
        Say::Help => phrases.plain("help"),
        Say::Kept(kept) => phrases.kept(kept),
        Say::LastResort(resort, _) => {
            let wait = std::time::Duration::from_secs(u64::from(resort.wait_min) * 60);
            let args = Args::new()
                .text("drops", phrases.drops(resort.drops_per_litre)?)
                .text("wait", phrases.duration(wait)?);
            match resort.drops {
                Some(total) => phrases.message(
                    "last-resort-total",
                    &args.text("total", phrases.drops(total)?),
                ),
                None => phrases.message("last-resort", &args),
            }
        }
        Say::MoreOf(answer) => rest(phrases, answer),
        Say::NotKept(_) => phrases.plain("not-kept"),
        Say::NotUnderstood => phrases.plain("not-understood"),
        Say::NothingBefore => phrases.plain("nothing-before"),
        Say::NothingToUndo => phrases.plain("nothing-to-undo"),
        Say::NothingToWaitFor => phrases.plain("nothing-to-wait-for"),
        Say::OfSolution => phrases.plain("of-solution"),
        Say::Refused(refusal) => phrases.plain(&format!("refused-{}", <&str>::from(*refusal))),
        Say::Set { language, units } => set(phrases, language.as_deref(), *units),
        Say::Started => phrases.plain("started"),
        Say::Stopped => phrases.plain("stopped"),
        Say::TooStrong => phrases.plain("too-strong"),
        Say::Undone(line) => {
            let left = line.left.as_ref().map(|left| phrases.left(left));
            let left = left.transpose()?.unwrap_or_default();
            phrases.message("undone", &Args::new().text("left", left))
        }
        Say::Unsure => phrases.plain("unsure"),
        Say::WellHurry(answer) => phrases.well_hurry(answer),
        Say::WhyOf(answer) => phrases.why(answer),
        Say::WaitIsOver(over) => phrases.reminder(over),
        Say::WillRemind(reminder) => phrases.will_remind(reminder),
    }
}

/// Writes the message that was promised for the end of a wait.
///
/// # Errors
/// [`CatalogError`] when the locale lacks the message.
pub fn reminder(reminder: &Reminder, locale: &Locale) -> Result<String, CatalogError> {
    Phrases(locale).reminder(reminder)
}

/// Writes the number to call in an emergency, as it stands before first aid.
///
/// # Errors
/// [`CatalogError`] when the locale lacks the message.
pub fn help_line(number: &str, locale: &Locale) -> Result<String, CatalogError> {
    Phrases(locale).message("help-line", &Args::new().text("number", number.to_owned()))
}

/// The head, and as many further sentences as go out with it, with the hint that there is more
/// where it has room.
fn first_message(phrases: Phrases<'_>, answer: &Answer) -> Result<String, CatalogError> {
    let message = split(phrases, answer)?;
    let hinted = format!("{} {}", message.text, phrases.plain("more-hint")?);
    if message.left.is_empty() || segments(&hinted) > segments(&message.text) {
        return Ok(message.text);
    }
    Ok(hinted)
}

/// What the first SMS had no room for.
fn rest(phrases: Phrases<'_>, answer: &Answer) -> Result<String, CatalogError> {
    let left: Vec<String> = match answer.facts.change {
        // The changed dose stood alone in its message.
        Some(_) => {
            let tail = phrases.answer(answer, Room::WIDE)?.tail;
            tail.into_iter().map(|sentence| sentence.text).collect()
        }
        None => split(phrases, answer)?.left,
    };
    if left.is_empty() {
        phrases.plain("nothing-more")
    } else {
        Ok(left.join(" "))
    }
}

/// Whether what holds for other water goes out with the head.
#[derive(PartialEq, Eq)]
enum Conditions {
    Fit,
    Wait,
}

/// The sentences of an answer, in the room that there is.
struct Layout {
    sentences: Sentences,
    conditions: Conditions,
}

/// The fullest head that leaves room in one segment: with what holds for other water; else for
/// the water that it takes for clear, and says so; else without the spoons.
fn layout(phrases: Phrases<'_>, answer: &Answer) -> Result<Layout, CatalogError> {
    for most in 1..=SEGMENTS_MOST {
        for measures in [Measures::Two, Measures::One] {
            for assumption in [Assumption::Unsaid, Assumption::Said] {
                let room = Room {
                    assumption,
                    measures,
                };
                let laid = Layout::of(phrases.answer(answer, room)?, most);
                let covers = assumption == Assumption::Said || laid.conditions == Conditions::Fit;
                if covers && segments(&laid.with(Need::Urgent)) <= most {
                    return Ok(laid);
                }
            }
        }
    }
    Ok(Layout::of(
        phrases.answer(answer, Room::WIDE)?,
        SEGMENTS_MOST,
    ))
}

impl Layout {
    fn of(sentences: Sentences, most: usize) -> Self {
        let mut laid = Self {
            sentences,
            conditions: Conditions::Wait,
        };
        if segments(&laid.with(Need::Condition)) <= most {
            laid.conditions = Conditions::Fit;
        }
        laid
    }

    /// The head with all sentences that are needed so much, or more.
    fn with(&self, need: Need) -> String {
        let mut text = self.sentences.head.clone();
        for sentence in &self.sentences.tail {
            if sentence.need == Need::Urgent || sentence.need == need {
                text.push(' ');
                text.push_str(&sentence.text);
            }
        }
        text
    }
}

/// Nothing that has to be acted on at once takes more.
const SEGMENTS_MOST: usize = 3;

/// A first message, and what waits for the second.
struct Split {
    text: String,
    left: Vec<String>,
}

/// Fills the segments that the head needs anyway, one in most cases.
fn split(phrases: Phrases<'_>, answer: &Answer) -> Result<Split, CatalogError> {
    let Layout {
        sentences,
        conditions,
    } = layout(phrases, answer)?;
    let hint = phrases.plain("more-hint")?;
    let room = segments(&sentences.head);
    let mut text = sentences.head;
    let mut left = Vec::new();
    for sentence in sentences.tail {
        let longer = format!("{text} {}", sentence.text);
        // A sentence that fits may go before a longer one that waits: both are said.
        let goes = match sentence.need {
            Need::Urgent => true,
            Need::Condition if conditions == Conditions::Fit => true,
            Need::Condition | Need::Later => {
                segments(&format!("{longer} {hint}")) <= segments(&text).max(room)
            }
        };
        if goes {
            text = longer;
        } else {
            left.push(sentence.text);
        }
    }
    // Nobody needs a second message for the last sentence of all.
    if left == [phrases.plain("defer")?] {
        left.clear();
    }
    Ok(Split { text, left })
}

fn adjusted(phrases: Phrases<'_>, answer: &Answer, change: Change) -> Result<String, CatalogError> {
    let key = match change {
        Change::Faster => "adjusted-faster",
        Change::Weaker => "adjusted-weaker",
    };
    let measure = phrases
        .measure(&answer.outcome.measure)?
        .unwrap_or_default();
    let wait = phrases.duration(answer.outcome.wait.unwrap_or_default())?;
    let text = phrases.message(
        key,
        &Args::new()
            .text("echo", phrases.echo(answer, Assumption::Unsaid)?)
            .text("measure", measure)
            .text("wait", wait),
    )?;
    let hint = phrases.plain("more-hint")?;
    let left = answer.beside.left.as_ref();
    let text = match left.map(|left| phrases.left(left)).transpose()? {
        Some(left) if fits_one(&format!("{text} {left} {hint}")) => format!("{text} {left}"),
        Some(_) | None => text,
    };
    Ok(format!("{text} {hint}"))
}

fn first_aid(phrases: Phrases<'_>, aid: &FirstAidFor) -> Result<String, CatalogError> {
    let product = aid.product;
    let key = match product {
        Some(Product::BleachingPowder | Product::CalciumHypochlorite) => "first-aid-powder",
        Some(
            Product::Bleach
            | Product::ChlorineDioxide
            | Product::IodineTablet
            | Product::IodineTincture
            | Product::Nadcc
            | Product::PovidoneIodine,
        )
        | None => "first-aid",
    };
    let rinse = crate::treatment::first_aid(product).rinse_min;
    let rinse = std::time::Duration::from_secs(u64::from(rinse) * 60);
    let text = phrases.message(key, &Args::new().text("rinse", phrases.duration(rinse)?))?;
    if aid.seen.is_empty() {
        Ok(text)
    } else {
        Ok(format!("{text} {}", phrases.plain("first-aid-then")?))
    }
}

fn set(
    phrases: Phrases<'_>,
    language: Option<&str>,
    units: Option<UnitSystem>,
) -> Result<String, CatalogError> {
    let mut said = Vec::new();
    if let Some(tag) = language {
        // A language that is spoken is spoken at once.
        let lexicon = &phrases.0.lexicon;
        said.push(if same_language(tag, lexicon.tag()) {
            phrases.message(
                "set-language",
                &Args::new().text("language", lexicon.name_in_sms().to_owned()),
            )?
        } else {
            phrases.message(
                "set-language-unknown",
                &Args::new().text("language", tag.to_owned()),
            )?
        });
    }
    if let Some(units) = units {
        said.push(phrases.plain(&format!("set-units-{}", <&str>::from(units)))?);
    }
    Ok(said.join(" "))
}

fn same_language(one: &str, other: &str) -> bool {
    let language = |tag: &str| tag.parse::<LanguageIdentifier>().map(|tag| tag.language);
    matches!((language(one), language(other)), (Ok(a), Ok(b)) if a == b)
}

/// The words of the terminal.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct TerminalText {
    /// What this is.
    pub greeting: String,
    /// Three things to try.
    pub examples: String,
    /// At the end.
    pub bye: String,
}

/// What the terminal shows around a conversation.
///
/// # Errors
/// [`CatalogError`] when the locale lacks one of the messages.
pub fn terminal_text(locale: &Locale) -> Result<TerminalText, CatalogError> {
    let phrases = Phrases(locale);
    Ok(TerminalText {
        greeting: phrases.plain("terminal-greeting")?,
        examples: phrases.plain("terminal-examples")?,
        bye: phrases.plain("terminal-bye")?,
    })
}
