//! What a chlorine test showed, where, and what the nose says without one.
//!
//! In: items, amounts and scope.
//! Out: single facts, each absent where it is not said.

use crate::request::{Nose, Taken};

use super::amount::{Amount, Unit};
use super::concept::Concept;
use super::facts::Text;
use super::product::is_product_word;
use super::tag::Tag;

/// No field kit shows more, mg/L.
pub(super) const READING_MAX: f64 = 20.0;

/// Free chlorine read from a test.
pub(super) fn residual(text: Text<'_>) -> Option<f64> {
    let by_unit = text
        .stated()
        .filter(|amount| matches!(amount.unit, Unit::MgPerLitre | Unit::Ppm))
        .filter(|amount| !is_wanted(text, amount.items.start))
        .find_map(Amount::value);
    by_unit
        .or_else(|| bare_reading(text).map(|(_, value)| value))
        .filter(|value| *value <= READING_MAX)
}

/// A reading without its unit, and where it stands: behind the word for the test.
pub(super) fn bare_reading(text: Text<'_>) -> Option<(usize, f64)> {
    let places = text
        .items
        .iter()
        .enumerate()
        .filter(|(_, item)| item.is(Concept::Residual) || item.is(Concept::TestWord))
        .map(|(i, _)| i);
    let figure_at = |at: usize| {
        let amount = text
            .amounts
            .iter()
            .find(|amount| amount.items.start == at)?;
        (matches!(amount.unit, Unit::Pieces) && text.scope.stated(at) && !is_wanted(text, at))
            .then(|| amount.value())
            .flatten()
            .filter(|value| *value <= READING_MAX)
            .map(|value| (at, value))
    };
    let by_test = places
        .rev()
        .find_map(|place| (place + 1..place + 9).find_map(figure_at));
    // "Chlorine is 0.3": with decimals, or it counts something.
    let by_chlorine = || {
        text.places(Concept::Chlorine)
            .find_map(|place| (place + 1..place + 3).find_map(figure_at))
            .filter(|(_, value)| value.fract() > 0.0)
    };
    by_test.or_else(by_chlorine)
}

/// "To get 0.5 mg/L", "0.5 wanted": what the water shall hold, and no kit showed it.
pub(super) fn is_wanted(text: Text<'_>, at: usize) -> bool {
    let wants = |at: usize| {
        text.items
            .get(at)
            .is_some_and(|item| item.is(Concept::WantedLevel) || item.is(Concept::SettingsWord))
    };
    let inside = |at: &usize| {
        text.items
            .get(*at)
            .is_some_and(|item| !item.ends_sentence() && !item.is_sign(&[',']))
    };
    (at.saturating_sub(5)..at)
        .rev()
        .take_while(inside)
        .any(wants)
        || (at + 1..at + 4).take_while(inside).any(wants)
}

/// "I put 10 mL in": the product is in the water, and nobody asks how much more.
pub(super) fn dosed_already(text: Text<'_>) -> bool {
    let is_dose = |at: usize| {
        let by_amount = text.amounts.iter().any(|amount| {
            amount.items.start == at
                && (matches!(amount.unit, Unit::Drop | Unit::Capful | Unit::Spoon)
                    || matches!(amount.unit, Unit::Litres(factor, _) if factor <= 0.001)
                    || matches!(amount.unit, Unit::Grams(_)))
        });
        by_amount || text.concept_at(at).is_some_and(is_product_word)
    };
    // "Used 300 mL in 20 L"; but "used 300 mL" only counts the bottle.
    let in_water = text
        .amounts
        .iter()
        .filter(|amount| {
            matches!(
                amount.unit,
                Unit::Drop | Unit::Capful | Unit::Spoon | Unit::Litres(..)
            )
        })
        .count()
        >= 2;
    let used = text.places(Concept::Spent).filter(|_| in_water);
    let keeps = [Concept::HowLong, Concept::KeepIt, Concept::Storage]
        .iter()
        .any(|concept| text.says(*concept));
    let product = text
        .items
        .iter()
        .any(|item| item.concept().is_some_and(is_product_word));
    let state = text.says(Concept::DosedState) && product && !keeps;
    let other_water = text.says(Concept::OtherWater);
    (state && !other_water)
        || text.places(Concept::AlreadyDosed).chain(used).any(|place| {
            // "Where should I put the tablets?"
            let asked = place
                .checked_sub(1)
                .and_then(|before| text.items.get(before))
                .is_some_and(|item| matches!(item.tag, Tag::Plain | Tag::Unknown));
            !asked
                && (place + 1..place + 5)
                    .take_while(|at| {
                        text.items
                            .get(*at)
                            .is_some_and(|item| !item.ends_sentence() && !item.is_sign(&[',']))
                    })
                    .any(is_dose)
        })
}

/// Where the tested water was taken.
pub(super) fn taken(text: Text<'_>) -> Option<Taken> {
    if text.says(Concept::SureWell) && !text.says(Concept::TapStand) && !text.says(Concept::AtHome)
    {
        return Some(Taken::InWell);
    }
    match (text.says(Concept::TapStand), text.says(Concept::AtHome)) {
        (true, false) => Some(Taken::AtTap),
        (false, true) => Some(Taken::AtUse),
        (true, true) | (false, false) => None,
    }
}

/// What is known without a kit.
pub(super) fn nose(text: Text<'_>) -> Option<Nose> {
    if text.says(Concept::StillNoSmell) {
        Some(Nose::StillNoSmell)
    } else if text.says(Concept::NoSmell) {
        Some(Nose::NoSmell)
    } else if text.says(Concept::Smell) || text.says(Concept::StrongSmell) {
        Some(Nose::Smells)
    } else if text.says(Concept::NoKit) {
        Some(Nose::NoKit)
    } else if dosed_already(text) {
        Some(Nose::AlreadyDosed)
    } else {
        None
    }
}
