//! Which percentage is in the bottle, and which is wanted.
//!
//! In: the percentages of a message and what stands beside them.
//! Out: strength and target among the facts, or why they cannot be told.

use crate::quantity::limit;
use crate::request::{Facts, Product};

use super::concept::Concept;
use super::doubt::{Doubt, strength_limit};
use super::facts::Text;
use super::note::Note;
use super::product;
use super::strength::{FromRange, Percentage, Percentages};
use super::tag::Item;

/// One percentage is the bottle's.
pub(super) fn set_strength(
    text: Text<'_>,
    percentages: &Percentages,
    all: &mut Facts,
    doubts: &mut Vec<Doubt>,
    notes: &mut Vec<Note>,
) {
    // A doubtful percentage beside a good one leaves two stories: neither is taken, unless the
    // doubtful one was only a target in ppm.
    let spoiling: Vec<Doubt> = percentages
        .doubts
        .iter()
        .copied()
        .filter(|doubt| *doubt != Doubt::StrengthIsTarget || percentages.good.is_empty())
        .collect();
    if !spoiling.is_empty() {
        doubts.extend(spoiling);
        return;
    }
    let mut distinct: Vec<Percentage> = Vec::new();
    for percentage in &percentages.good {
        if !distinct
            .iter()
            .any(|other| (other.percent - percentage.percent).abs() < 1e-9)
        {
            distinct.push(*percentage);
        }
    }
    match distinct.as_slice() {
        [] => {}
        // "It was washed with 0.5% solution. I have bleach": the one is not the other's.
        [one] if of_other_solution(text, one) => doubts.push(Doubt::StrengthUnreadable),
        [one] => {
            let limit = all.product.map_or(limit::PERCENT, strength_limit);
            match limit.check(one.percent) {
                Ok(percent) => {
                    all.strength_percent = Some(percent);
                    if one.from_range == FromRange::LowerEnd {
                        notes.push(Note::LowerEnd);
                    }
                }
                Err(_) => doubts.push(Doubt::StrengthOutside),
            }
        }
        [_, _, ..] => doubts.push(Doubt::StrengthTwo),
    }
}

/// A solution in a sentence without the product, while another sentence names it.
fn of_other_solution(text: Text<'_>, percentage: &Percentage) -> bool {
    let is_solution = text
        .items
        .get(percentage.item + 2)
        .is_some_and(|item| item.is(Concept::Solution));
    if !is_solution {
        return false;
    }
    let before = text.items.get(..percentage.item).unwrap_or_default();
    let start = before
        .iter()
        .rposition(Item::ends_sentence)
        .map_or(0, |at| at + 1);
    let end = text
        .items
        .get(percentage.item..)
        .and_then(|rest| rest.iter().position(Item::ends_sentence))
        .map_or(text.items.len(), |at| percentage.item + at);
    let names = |item: &Item| item.concept().is_some_and(product::is_product_word);
    let inside = text.items.get(start..end).unwrap_or_default();
    !inside.iter().any(names) && text.items.iter().any(names)
}

/// Two percentages: the weaker is wanted, the stronger is in the bottle. One: by its neighbour.
pub(super) fn set_dilution(
    text: Text<'_>,
    percentages: &Percentages,
    all: &mut Facts,
    doubts: &mut Vec<Doubt>,
) {
    doubts.extend(
        percentages
            .doubts
            .iter()
            .copied()
            .filter(|doubt| *doubt != Doubt::StrengthIsTarget),
    );
    let mut figures: Vec<&Percentage> = percentages.good.iter().collect();
    figures.sort_by(|a, b| a.percent.total_cmp(&b.percent));
    match figures.as_slice() {
        [] => {}
        [one] => {
            let by_product = [one.item.checked_sub(1), Some(one.item + 2)]
                .into_iter()
                .flatten()
                .filter_map(|i| text.items.get(i).and_then(Item::concept))
                .any(product::is_product_word);
            let of_solution = (one.item..one.item + 5)
                .filter_map(|i| text.items.get(i))
                .take_while(|item| !item.ends_sentence() && !item.is_sign(&[',']))
                .any(|item| item.is(Concept::Solution));
            if by_product && !of_solution {
                all.strength_percent = Some(one.percent);
            } else {
                all.target_percent = Some(one.percent);
                if all.product == Some(Product::Bleach) && !text.says(Concept::Bleach) {
                    // "0.5% chlorine solution" is what is wanted, not what there is.
                    all.product = None;
                    doubts.push(Doubt::ChlorineForm);
                }
            }
        }
        [weak, strong] => {
            // "6% from 5% bleach" is asked about: what stands by the product is in the bottle.
            let at = |index: Option<usize>| index.and_then(|index| text.items.get(index));
            let names = |item: Option<&Item>| {
                item.and_then(Item::concept)
                    .is_some_and(|concept| product::named_by(concept).is_some())
            };
            let of_solution = |figure: &Percentage| {
                at(Some(figure.item + 2)).is_some_and(|i| i.is(Concept::Solution))
            };
            let of_bottle = |figure: &Percentage| {
                let behind = names(at(Some(figure.item + 2)))
                    && !at(Some(figure.item + 3)).is_some_and(|i| i.is(Concept::Solution));
                let from = at(figure.item.checked_sub(1)).is_some_and(|i| i.is(Concept::FromWord));
                behind || from || (names(at(figure.item.checked_sub(1))) && !of_solution(figure))
            };
            let swapped = (of_bottle(weak) && !of_bottle(strong))
                || (of_solution(strong) && !of_solution(weak));
            let (target, strength) = if swapped {
                (strong, weak)
            } else {
                (weak, strong)
            };
            all.target_percent = Some(target.percent);
            all.strength_percent = Some(strength.percent);
        }
        // "10 L of 0.5%, the label says 5% and the shopman 4%": the weak one is wanted, and which is
        // in the bottle is asked.
        [weak, next, ..] if weak.percent * 3.0 <= next.percent => {
            all.target_percent = Some(weak.percent);
            doubts.push(Doubt::StrengthTwo);
        }
        _ => doubts.push(Doubt::StrengthTwo),
    }
    // "500 ppm hand rinse"
    if all.target_percent.is_none()
        && let [target] = percentages.targets.as_slice()
    {
        all.target_percent = Some(*target);
    }
}
