//! Containers that are counted in one place and sized in another.
//!
//! In: items, amounts and the water's volumes.
//! Out: the volumes with their counts, or the doubt how many there are.

use crate::parser::amount::{Amount, Unit};
use crate::parser::concept::Concept;
use crate::parser::doubt::Doubt;
use crate::parser::lexicon::UnitOrder;
use crate::parser::scope::Scope;
use crate::parser::tag::{GrammaticalNumber, Item};

use super::{Contained, Mention, item_is};

/// "Two cans of ten litres and one of five", "two cans of ten and one of five litres": ten or five
/// of what?
pub(super) fn has_unsized_rest(items: &[Item], amounts: &[Amount], scope: &Scope) -> bool {
    let unsized_can = amounts.iter().any(|size| {
        let start = size.items.start;
        size.unit == Unit::Pieces
            && scope.stated(start)
            && item_is(items, start.checked_sub(1), Concept::Of)
            && item_is(items, start.checked_sub(2), Concept::Container)
            && !item_is(items, Some(size.items.end), Concept::Container)
    });
    // "Two cans of twenty litres and one of ten", where one is an article.
    let unsized_one = amounts.iter().any(|size| {
        let start = size.items.start;
        size.unit == Unit::Pieces
            && scope.stated(start)
            && item_is(items, start.checked_sub(1), Concept::Of)
            && item_is(items, start.checked_sub(2), Concept::Article)
            && item_is(items, start.checked_sub(3), Concept::And)
    });
    unsized_can
        || unsized_one
        || amounts.windows(2).any(|pair| match pair {
            [count, size] => {
                count.unit == Unit::Pieces
                    && size.unit == Unit::Pieces
                    && count.items.end + 1 == size.items.start
                    && item_is(items, Some(count.items.end), Concept::Of)
                    && item_is(items, count.items.start.checked_sub(1), Concept::And)
                    && scope.stated(size.items.start)
            }
            _ => false,
        })
}

/// `three jerrycans … each is 20 L`: the count stands in another sentence.
pub(super) fn multiply_each(
    items: &[Item],
    amounts: &[Amount],
    scope: &Scope,
    water: &mut [Mention],
) -> Result<(), Doubt> {
    let [mention] = water else { return Ok(()) };
    if (mention.litres - mention.each).abs() > f64::EPSILON {
        return Ok(());
    }
    let each_by_it = [
        mention.item.checked_sub(1),
        mention.item.checked_sub(2),
        Some(mention.end),
    ]
    .into_iter()
    .flatten()
    .filter_map(|i| items.get(i))
    .any(|item| item.is(Concept::Each) || item.is(Concept::Per));
    if !each_by_it {
        return Ok(());
    }
    let counts = amounts.iter().filter_map(|amount| {
        let is_container = |index: usize| {
            items
                .get(index)
                .is_some_and(|item| item.is(Concept::Container))
        };
        // "Five tins", and "tins: five".
        let named_before = amount.items.start >= 2
            && is_container(amount.items.start - 2)
            && items
                .get(amount.items.start - 1)
                .is_some_and(|item| item.is_sign(&[':', ',', '=', '(']) || item.is_filler());
        let counted =
            matches!(amount.unit, Unit::Pieces) && (is_container(amount.items.end) || named_before);
        let count = counted.then(|| amount.figure.certain()).flatten()?;
        (count > 0.0).then_some((amount.items.start, count))
    });
    let mut counts: Vec<(usize, f64)> = counts.collect();
    // "Four cans, no, six cans, each 20 L."
    for correction in &scope.corrections {
        if counts.iter().any(|(at, _)| at > correction) {
            counts.retain(|(at, _)| at > correction);
        }
    }
    let Some((_, count)) = counts.first().copied() else {
        return Ok(());
    };
    if counts
        .iter()
        .any(|(_, other)| (other - count).abs() > f64::EPSILON)
    {
        return Err(Doubt::VolumeUncounted);
    }
    mention.litres *= count;
    mention.contained = Contained::Yes;
    Ok(())
}

/// "20 L jerrycans" and "20 L twice": one of them, or how many?
pub(super) fn is_uncounted(items: &[Item], scope: &Scope, water: &[Mention]) -> bool {
    let [mention] = water else { return false };
    let counted = (mention.litres - mention.each).abs() > f64::EPSILON;
    let twice = [mention.item.checked_sub(1), Some(mention.end)]
        .into_iter()
        .flatten()
        .any(|i| items.get(i).is_some_and(|item| item.is(Concept::TwiceThat)));
    // "Of 25 L jerrycans I have some": the word stands by the volume, and no number by the word.
    let several = (mention.item.saturating_sub(4)..mention.end + 2).any(|i| {
        items.get(i).is_some_and(|item| {
            item.is(Concept::Container) && item.number == GrammaticalNumber::Plural
        }) && scope.stated(i)
    });
    twice || (several && !counted)
}

/// "Lita 20 kila ndoo, ndoo 3": one volume, and cans counted in another place.
pub(super) fn is_counted_apart(
    items: &[Item],
    amounts: &[Amount],
    water: &[Mention],
    order: UnitOrder,
) -> bool {
    let [mention] = water else { return false };
    let counted = (mention.litres - mention.each).abs() > f64::EPSILON;
    // "20 L, two jerrycans": each, or both together?
    let behind = |count: &Amount| {
        item_is(items, Some(count.items.end), Concept::Container)
            && !item_is(items, Some(count.items.end + 1), Concept::Or)
            && count.items.start > mention.end
            && items
                .get(mention.end..count.items.start)
                .is_some_and(|between| between.iter().all(|item| item.is_sign(&[','])))
    };
    let apart = amounts.iter().any(|count| {
        count.unit == Unit::Pieces
            && count.figure.certain().is_some_and(|count| count >= 2.0)
            && ((order == UnitOrder::EitherSide
                && item_is(items, count.items.start.checked_sub(1), Concept::Container))
                // "Two cans of water, the can is 20 L."
                || (item_is(items, Some(count.items.end), Concept::Container)
                    && mention.contained == Contained::Yes
                    && count.items.end + 3 < mention.item)
                || behind(count))
    });
    !counted && apart
}
