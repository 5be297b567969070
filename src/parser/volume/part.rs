//! Parts of a container: half full, three quarters of a drum.
//!
//! In: items, amounts and scope.
//! Out: the part that is filled, or the doubt what it is a part of.

use crate::parser::amount::{Amount, Unit};
use crate::parser::concept::Concept;
use crate::parser::doubt::Doubt;
use crate::parser::product::is_product_word;
use crate::parser::scope::Scope;
use crate::parser::tag::{Item, Tag};

use super::{Contained, Mention};

/// The part that a container is filled to, where the message says so.
pub(in crate::parser) fn part_filled(items: &[Item], scope: &Scope) -> Option<f64> {
    let full = |index: usize| items.get(index).is_some_and(|item| item.is(Concept::Full));
    let container = |index: usize| {
        items
            .get(index)
            .is_some_and(|item| item.is(Concept::Container))
    };
    let part = items.iter().enumerate().find_map(|(i, item)| {
        if !scope.stated(i) {
            return None;
        }
        match &item.tag {
            Tag::Concept(Concept::HalfWay) => Some(0.5),
            Tag::Fraction(value) => {
                let times = match i.checked_sub(1).and_then(|before| items.get(before)) {
                    Some(Item {
                        tag: Tag::Number(count),
                        ..
                    }) => *count,
                    Some(Item {
                        tag: Tag::Figure(figure),
                        ..
                    }) if figure.value < 10.0 => figure.value,
                    _ => 1.0,
                };
                let of = items
                    .get(i + 1)
                    .is_some_and(|next| next.is(Concept::Article) || next.is(Concept::Of));
                let is_fill = full(i + 1) || container(i + 1) || (of && container(i + 2));
                is_fill.then_some(times * value)
            }
            Tag::Figure(figure) if figure.value < 1.0 && full(i + 1) => Some(figure.value),
            _ => None,
        }
    })?;
    (part > 0.0 && part < 1.0).then_some(part)
}

/// Whether a part may be of a bottle that was used, and not of the water.
pub(super) fn part_of_other(items: &[Item], scope: &Scope) -> bool {
    let used = items
        .iter()
        .enumerate()
        .any(|(i, item)| item.is(Concept::Spent) && scope.stated(i));
    // "Bottle half empty, bleach 5%".
    let of_product = items.iter().enumerate().any(|(i, item)| {
        let part = matches!(item.tag, Tag::Fraction(_) | Tag::Concept(Concept::HalfWay));
        part && items
            .iter()
            .skip(i + 1)
            .take(3)
            .take_while(|item| !item.ends_sentence() && !item.is_sign(&[',']))
            .filter_map(Item::concept)
            .any(is_product_word)
    });
    used || of_product
}

/// Parts that people see in a container; other fractions are something else.
fn is_household_part(value: f64) -> bool {
    [1.0 / 4.0, 1.0 / 3.0, 1.0 / 2.0, 2.0 / 3.0, 3.0 / 4.0]
        .iter()
        .any(|part| (value - part).abs() < 1e-6)
}

/// A half or a quarter that is neither a count nor has a unit.
pub(super) fn has_loose_part(amounts: &[Amount], scope: &Scope) -> bool {
    amounts.iter().any(|part| {
        let counts = amounts
            .iter()
            .any(|other| other.items.start == part.items.end && other.unit != Unit::Pieces);
        matches!(part.unit, Unit::Pieces)
            && scope.stated(part.items.start)
            && part.figure.certain().is_some_and(is_household_part)
            && !counts
    })
}

/// A container that is part full holds that part; of several, it is not told which.
pub(super) fn fill(part: f64, water: &mut [Mention]) -> Result<(), Doubt> {
    let contained = water
        .iter()
        .position(|mention| mention.contained == Contained::Yes);
    // Only the container that is part full, not what was measured out of it.
    let Some(mention) = water.get_mut(contained.unwrap_or(0)) else {
        return Ok(());
    };
    if mention.litres > mention.each * 1.5 {
        return Err(Doubt::VolumeUncounted);
    }
    mention.litres *= part;
    Ok(())
}
