//! Puts into words what the dialogue decided, within an SMS where that can be.
//!
//! In: what to say, and a locale.
//! Out: the text.
//! Promises that every figure comes from the answer, that no warning is cut in half, and that what
//! does not fit into the first SMS waits for `more`.
//! Does not know how a dose is worked out, nor who sends.

mod answer;
mod catalog;
mod phrase;
mod segment;

use crate::dialogue::{Answer, Question, Say};
use crate::locale::Locale;
use crate::parser::Doubt;
use crate::quantity::UnitSystem;
use crate::request::{Change, Facts, Field, Product};

pub use catalog::{Catalog, CatalogError};
pub use segment::{Encoding, Segments, encoding, fits_one, segment};

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
        Say::Ask(question) => ask(phrases, question),
        Say::CannotAdjust(Change::Faster, _) => phrases.plain("cannot-faster"),
        Say::CannotAdjust(Change::Weaker, _) => phrases.plain("cannot-weaker"),
        Say::FirstAid(product) => first_aid(phrases, *product),
        Say::Forgotten => phrases.plain("forgotten"),
        Say::Greeting => phrases.plain("greeting"),
        Say::Help => phrases.plain("help"),
        Say::Illness => phrases.plain("illness"),
        Say::Kept(bottle) => {
            let facts = Facts {
                product: bottle.product,
                strength_percent: bottle.strength_percent,
                tablet_mg: bottle.tablet_mg,
                ..Facts::default()
            };
            let label = phrases.label(&facts)?;
            let key = match (bottle.product, label.is_empty()) {
                (Some(_), false) => "kept",
                (Some(_), true) => "kept-part",
                (None, _) => "kept-figure",
            };
            let product = bottle
                .product
                .map(|product| phrases.product(product))
                .transpose()?;
            phrases.message(
                key,
                &Args::new()
                    .text("product", product.unwrap_or_default())
                    .text("label", label),
            )
        }
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
        Say::NotServed(_) => phrases.plain("not-served"),
        Say::NotUnderstood => phrases.plain("not-understood"),
        Say::NothingBefore => phrases.plain("nothing-before"),
        Say::Refused(refusal) => phrases.plain(&format!("refused-{}", <&str>::from(*refusal))),
        Say::Set { language, units } => set(phrases, language.as_deref(), *units),
        Say::Started => phrases.plain("started"),
        Say::Stopped => phrases.plain("stopped"),
        Say::Unsure => phrases.plain("unsure"),
        Say::WhyOf(answer) => phrases.why(answer),
    }
}

/// The head, and as many further sentences as one SMS holds beside the hint that there is more.
fn first_message(phrases: Phrases<'_>, answer: &Answer) -> Result<String, CatalogError> {
    let (text, left) = split(phrases, answer)?;
    if left.is_empty() {
        return Ok(text);
    }
    Ok(format!("{text} {}", phrases.plain("more-hint")?))
}

/// What the first SMS had no room for.
fn rest(phrases: Phrases<'_>, answer: &Answer) -> Result<String, CatalogError> {
    let (_, left) = split(phrases, answer)?;
    if left.is_empty() {
        phrases.plain("nothing-more")
    } else {
        Ok(left.join(" "))
    }
}

fn split(phrases: Phrases<'_>, answer: &Answer) -> Result<(String, Vec<String>), CatalogError> {
    let hint = phrases.plain("more-hint")?;
    let sentences = phrases.answer(answer)?;
    let mut text = sentences.head;
    let mut left = Vec::new();
    for sentence in sentences.tail {
        let longer = format!("{text} {sentence}");
        // A sentence that fits may go before a longer one that waits: both are said.
        let fits = fits_one(&format!("{longer} {hint}"));
        if fits {
            text = longer;
        } else {
            left.push(sentence);
        }
    }
    Ok((text, left))
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
    phrases.message(
        key,
        &Args::new().text("measure", measure).text("wait", wait),
    )
}

fn ask(phrases: Phrases<'_>, question: &Question) -> Result<String, CatalogError> {
    let product = match question.product {
        Some(product) => phrases.product(product)?,
        None => String::new(),
    };
    let key = match (question.field, question.doubt) {
        (Field::Product, Some(doubt)) => format!("ask-product-{}", <&str>::from(doubt)),
        (Field::Product, None) => "ask-product".to_owned(),
        (Field::StrengthPercent, _) if question.no_label => "ask-strength-no-label".to_owned(),
        (Field::StrengthPercent, Some(doubt)) => strength_question(doubt).to_owned(),
        (Field::StrengthPercent, None) => "ask-strength".to_owned(),
        (Field::TabletMg, Some(doubt)) => {
            format!("ask-{}", <&str>::from(doubt))
        }
        (Field::TabletMg, None) => "ask-tablet".to_owned(),
        (Field::VolumeL, Some(doubt)) => format!("ask-{}", <&str>::from(doubt)),
        (Field::VolumeL, None) => "ask-volume".to_owned(),
        (
            Field::Days
            | Field::DiameterM
            | Field::People
            | Field::ResidualMgPerL
            | Field::StockMl
            | Field::TargetPercent
            | Field::WaterDepthM,
            _,
        ) => "not-served".to_owned(),
    };
    let text = phrases.message(&key, &Args::new().text("product", product))?;
    Ok(capitalized(&text))
}

const fn strength_question(doubt: Doubt) -> &'static str {
    match doubt {
        Doubt::Degrees => "ask-strength-degrees",
        Doubt::StrengthBound => "ask-strength-bound",
        Doubt::StrengthDenied => "ask-strength-denied",
        Doubt::StrengthGuessed => "ask-strength-guessed",
        Doubt::StrengthIsTarget => "ask-strength-is-target",
        Doubt::StrengthOutside => "ask-strength-outside",
        Doubt::StrengthThinned => "ask-strength-thinned",
        Doubt::StrengthTwo => "ask-strength-two",
        Doubt::StrengthUnreadable => "ask-strength-unreadable",
        Doubt::StrengthWide => "ask-strength-wide",
        Doubt::Unlabelled => "ask-strength-no-label",
        Doubt::BleachTablet
        | Doubt::ChlorineForm
        | Doubt::IodineForm
        | Doubt::Pool
        | Doubt::PowderForm
        | Doubt::Spoiled
        | Doubt::TabletCompound
        | Doubt::TabletForm
        | Doubt::TabletOutside
        | Doubt::TabletTwo
        | Doubt::TwoProducts
        | Doubt::VolumeOutside
        | Doubt::VolumeTwo
        | Doubt::VolumeUncounted
        | Doubt::VolumeUnreadable
        | Doubt::VolumeUnsized => "ask-strength",
    }
}

/// A sentence may begin with a product's name.
fn capitalized(text: &str) -> String {
    let mut chars = text.chars();
    chars.next().map_or_else(String::new, |first| {
        first.to_uppercase().chain(chars).collect()
    })
}

fn first_aid(phrases: Phrases<'_>, product: Option<Product>) -> Result<String, CatalogError> {
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
    phrases.message(key, &Args::new().text("rinse", phrases.duration(rinse)?))
}

fn set(
    phrases: Phrases<'_>,
    language: Option<&str>,
    units: Option<UnitSystem>,
) -> Result<String, CatalogError> {
    let mut said = Vec::new();
    if let Some(tag) = language {
        let spoken = crate::locale::Locales::embedded()
            .ok()
            .and_then(|locales| locales.get(tag));
        said.push(match spoken {
            Some((_, locale)) => phrases.message(
                "set-language",
                &Args::new().text("language", locale.lexicon.name().to_owned()),
            )?,
            None => phrases.message(
                "set-language-unknown",
                &Args::new().text("language", tag.to_owned()),
            )?,
        });
    }
    if let Some(units) = units {
        said.push(phrases.plain(&format!("set-units-{}", <&str>::from(units)))?);
    }
    Ok(said.join(" "))
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
