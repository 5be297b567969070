//! The water to treat, out of all the volumes in a message.
//!
//! In: items and amounts.
//! Out: one volume of water, a stock of product, or why the water's volume cannot be told.
//! Promises that a rate, a flow, a bottle of product and a dose are never the water, and that
//! volumes are added up only where containers are.
//!
//! ```text
//! water = [count] container {link} volume ["each"]     four cans of 18 litres each
//!       | [count] ["x"] volume [container]             3 x 20 L, two 20 L jerrycans
//!       | fill container {link} volume                 half-full 20 L jerrycan
//! sum   = water ("and" | "plus" | ",") water           where each has a container
//! ```

mod count;
mod part;
mod role;

use crate::quantity::{UnitSystem, limit};

use super::amount::{Amount, Unit};
use super::concept::Concept;
use super::doubt::Doubt;
use super::lexicon::Grammar;
use super::product::is_product_word;
use super::scope::{Scope, Standing};
use super::tag::Item;

pub(super) use part::part_filled;
use role::{Role, role};

/// A volume of water that a message states.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct WaterVolume {
    pub(super) litres: f64,
    pub(super) system: UnitSystem,
}

/// What the volumes of a message say.
#[derive(Debug, Default)]
pub(super) struct Volumes {
    pub(super) water: Option<WaterVolume>,
    /// The size of one container, or the volume itself.
    pub(super) each_litres: Option<f64>,
    pub(super) doubts: Vec<Doubt>,
    /// Litres that one tablet treats, by its label.
    pub(super) label_litres: Option<f64>,
    /// Product in stock, mL.
    pub(super) stock_ml: Option<f64>,
    /// A gallon or less, and the product right behind it: of the product, where that is asked.
    pub(super) of_product_l: Option<f64>,
    /// Less than can be treated: of a product it is an amount all the same.
    pub(super) small_litres: Option<f64>,
    /// Whether any volume at all was read, in whatever role.
    pub(super) mentioned: bool,
}

/// Larger bottles of a product are seldom sold, L.
pub(super) const BOTTLE_MAX_L: f64 = 5.0;

#[derive(Debug, Clone, Copy, PartialEq)]
struct Mention {
    litres: f64,
    each: f64,
    system: UnitSystem,
    item: usize,
    end: usize,
    contained: Contained,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Contained {
    /// Nothing says what holds it.
    Loose,
    /// A container or a count stands by it.
    Yes,
}

pub(super) fn volumes(
    items: &[Item],
    amounts: &[Amount],
    scope: &Scope,
    grammar: Grammar,
) -> Volumes {
    let mut out = Volumes::default();
    let mut water: Vec<Mention> = Vec::new();
    let mut unreadable = false;
    let mut too_small = false;
    let mut two = false;
    for (n, amount) in amounts.iter().enumerate() {
        let Unit::Litres(_, system) = amount.unit else {
            continue;
        };
        out.mentioned = true;
        match scope.at(amount.items.start) {
            Standing::Aside => continue,
            Standing::Denied => {
                two |= scope.denied_behind(items, amounts, amount);
                continue;
            }
            Standing::Stated => {}
        }
        match role(items, amounts, n, system, grammar) {
            Role::LabelRate => out.label_litres = amount.value(),
            Role::NotWater => {}
            Role::Stock => {
                if let Some(litres) = amount.value() {
                    out.stock_ml = Some(litres * 1000.0);
                }
            }
            Role::Unreadable => unreadable = true,
            Role::Water(mention) if mention.litres < limit::VOLUME.min && mention.litres > 0.0 => {
                too_small = true;
                out.small_litres = Some(mention.litres);
            }
            Role::Water(mention) => water.push(mention),
        }
    }
    if two && !water.is_empty() {
        out.doubts.push(Doubt::VolumeTwo);
        return out;
    }
    // "The 20 L can is not full": how much is in it?
    let not_full = items
        .iter()
        .enumerate()
        .any(|(i, item)| item.is(Concept::Full) && scope.at(i) == Standing::Denied);
    if not_full && !water.is_empty() {
        out.doubts.push(Doubt::VolumeUnreadable);
        return out;
    }
    for correction in &scope.corrections {
        if water.iter().any(|mention| mention.item > *correction) {
            water.retain(|mention| mention.item > *correction);
        }
    }
    // "Six jerrycans of 20 L, no, five": the count was taken back, and nothing else.
    let recounted = scope.corrections.iter().any(|correction| {
        water.iter().any(|mention| mention.item < *correction)
            && !water.iter().any(|mention| mention.item > *correction)
            && amounts.iter().any(|amount| {
                amount.unit == Unit::Pieces
                    && amount.items.start > *correction
                    && amount.items.start <= correction + 3
            })
    });
    if recounted {
        out.doubts.push(Doubt::VolumeUnreadable);
        return out;
    }
    out.each_litres = water.first().map(|mention| mention.each);
    if let [mention] = water.as_slice() {
        let product = items
            .get(mention.end)
            .and_then(Item::concept)
            .is_some_and(is_product_word);
        out.of_product_l = (product && mention.each <= BOTTLE_MAX_L).then_some(mention.litres);
    }
    match part_filled(items, scope) {
        // "A 1 litre bottle of bleach, half full".
        Some(part) if water.is_empty() => {
            out.stock_ml = out.stock_ml.map(|ml| ml * part);
        }
        // "Used half the bottle, 20 L": half of what is not water.
        Some(_) if part::part_of_other(items, scope) => {
            out.doubts.push(Doubt::VolumeUnreadable);
            return out;
        }
        Some(part) => {
            if let Err(doubt) = part::fill(part, &mut water) {
                out.doubts.push(doubt);
                return out;
            }
        }
        // "1000 L tank, a quarter of it is gone": a part of something, and not of what.
        None if !water.is_empty() && part::has_loose_part(amounts, scope) => {
            out.doubts.push(Doubt::VolumeUnreadable);
            return out;
        }
        None => {}
    }
    if let Err(doubt) = count::multiply_each(items, amounts, scope, &mut water) {
        out.doubts.push(doubt);
        return out;
    }
    if count::is_counted_apart(items, amounts, &water, grammar.unit_order) {
        out.doubts.push(Doubt::VolumeUncounted);
        return out;
    }
    if count::is_uncounted(items, scope, &water) {
        out.doubts.push(Doubt::VolumeUncounted);
        return out;
    }

    if unreadable || (!water.is_empty() && count::has_unsized_rest(items, amounts, scope)) {
        out.doubts.push(Doubt::VolumeUnreadable);
        return out;
    }
    match combine(items, &water) {
        Ok(Some(volume)) => {
            if limit::VOLUME.check(volume.litres).is_ok() {
                out.water = Some(volume);
            } else {
                out.doubts.push(Doubt::VolumeOutside);
            }
        }
        Ok(None) if too_small => out.doubts.push(Doubt::VolumeOutside),
        Ok(None) => {
            let unsized_container = items
                .iter()
                .enumerate()
                .any(|(i, item)| item.is(Concept::Container) && scope.stated(i));
            if unsized_container {
                out.doubts.push(Doubt::VolumeUnsized);
            }
        }
        Err(doubt) => out.doubts.push(doubt),
    }
    out
}

fn item_is(items: &[Item], index: Option<usize>, concept: Concept) -> bool {
    index
        .and_then(|index| items.get(index))
        .is_some_and(|item| item.is(concept))
}

fn combine(items: &[Item], water: &[Mention]) -> Result<Option<WaterVolume>, Doubt> {
    let Some((first, rest)) = water.split_first() else {
        return Ok(None);
    };
    let volume = |litres: f64, mention: &Mention| WaterVolume {
        litres,
        system: mention.system,
    };
    let same = |mention: &Mention| {
        let ratio = mention.litres / first.litres;
        let converted = mention.system != first.system && (0.92..=1.08).contains(&ratio);
        converted || (ratio - 1.0).abs() < 1e-6
    };
    // "A bucket of 20 L and two of 10 L": the second does not repeat the first.
    let adds = |mention: &Mention| {
        let before = items.get(first.end..mention.item).unwrap_or_default();
        let held = first.contained == Contained::Yes && mention.contained == Contained::Yes;
        held && before.iter().any(|item| item.is(Concept::And))
            && (mention.each - first.each).abs() > f64::EPSILON
    };
    if rest.iter().all(|mention| same(mention) && !adds(mention)) {
        return Ok(Some(volume(first.litres, first)));
    }
    // Containers joined by "and" add up, unless two questions are asked.
    let mut previous = first;
    for mention in rest {
        let between = items.get(previous.end..mention.item).unwrap_or_default();
        let joined = between
            .iter()
            .any(|item| item.is(Concept::And) || item.is_sign(&[',', '+']));
        let asked_again = between
            .iter()
            .any(|item| item.is(Concept::HowMuch) || item.is(Concept::Or) || item.ends_sentence());
        let written_sum = between.iter().all(|item| item.is_sign(&['+']));
        let loose = previous.contained == Contained::Loose || mention.contained == Contained::Loose;
        if (loose && !written_sum) || !joined || asked_again {
            return Err(Doubt::VolumeTwo);
        }
        previous = mention;
    }
    let total = water.iter().map(|mention| mention.litres).sum();
    Ok(Some(volume(total, first)))
}
