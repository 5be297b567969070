//! Words that a person is likely to write next, for networks that can show them as buttons.
//!
//! Promises that each is a word that the language reads as what it stands for; a test keeps that.

use crate::dialogue::{Question, Say};
use crate::locale::Locale;
use crate::request::{Field, Product};

use super::CatalogError;
use super::phrase::Phrases;

/// The products that people mostly have.
const USUAL: [Product; 4] = [
    Product::Bleach,
    Product::Nadcc,
    Product::CalciumHypochlorite,
    Product::IodineTincture,
];

/// The likely next words, the likeliest first.
///
/// # Errors
/// [`CatalogError`] when the locale lacks one.
pub fn next_words(say: &Say, locale: &Locale) -> Result<Vec<String>, CatalogError> {
    let phrases = Phrases(locale);
    match say {
        Say::Adjusted(..) | Say::Answer(_) | Say::MoreOf(_) | Say::WellHurry(_) | Say::WhyOf(_) => {
            ["more-hint", "next-why", "next-remind", "next-help"]
                .iter()
                .map(|key| phrases.plain(key))
                .collect()
        }
        Say::Ask(Question {
            field: Field::Product,
            ..
        }) => USUAL
            .iter()
            .map(|product| phrases.product(*product))
            .collect(),
        Say::Ask(_) | Say::LastResort(..) | Say::Unsure | Say::FirstAid(_) => Ok(Vec::new()),
        Say::Bottles(_)
        | Say::CannotAdjust(..)
        | Say::Dropped(_)
        | Say::Forgotten
        | Say::Greeting
        | Say::Help
        | Say::Kept(_)
        | Say::NotKept(_)
        | Say::NotUnderstood
        | Say::NothingBefore
        | Say::NothingToUndo
        | Say::NothingToWaitFor
        | Say::OfSolution
        | Say::Refused(_)
        | Say::Set { .. }
        | Say::Started
        | Say::Stopped
        | Say::TooStrong
        | Say::Undone(_)
        | Say::WaitIsOver(_)
        | Say::WillRemind(_) => Ok(vec![phrases.plain("next-help")?]),
    }
}
