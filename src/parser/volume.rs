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

use crate::quantity::{UnitSystem, limit};

use super::amount::{Amount, Origin, Unit};
use super::concept::Concept;
use super::container::{
    container_before, container_follows, count_before, count_is_a_word, part_of_it,
    stray_number_before, times_after,
};
use super::doubt::Doubt;
use super::lexicon::{Adjectives, Grammar, UnitOrder};
use super::product::is_product_word;
use super::scope::{Scope, Standing};
use super::tag::{GrammaticalNumber, Item, Tag};

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
const BOTTLE_MAX_L: f64 = 5.0;

#[derive(Debug, Clone, Copy, PartialEq)]
enum Role {
    /// Litres that the label gives to one tablet.
    LabelRate,
    /// A dose of product, a rate, a flow, a clock time.
    NotWater,
    Stock,
    Unreadable,
    Water(Mention),
}

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
    for (n, amount) in amounts.iter().enumerate() {
        let Unit::Litres(_, system) = amount.unit else {
            continue;
        };
        out.mentioned = true;
        match scope.at(amount.items.start) {
            Standing::Aside => continue,
            Standing::Denied => {
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
        Some(_) if part_of_other(items, scope) => {
            out.doubts.push(Doubt::VolumeUnreadable);
            return out;
        }
        Some(part) => {
            if let Err(doubt) = fill(part, &mut water) {
                out.doubts.push(doubt);
                return out;
            }
        }
        // "1000 L tank, a quarter of it is gone": a part of something, and not of what.
        None if !water.is_empty() && has_loose_part(amounts, scope) => {
            out.doubts.push(Doubt::VolumeUnreadable);
            return out;
        }
        None => {}
    }
    if let Err(doubt) = multiply_each(items, amounts, scope, &mut water) {
        out.doubts.push(doubt);
        return out;
    }
    if is_counted_apart(items, amounts, &water, grammar.unit_order) {
        out.doubts.push(Doubt::VolumeUncounted);
        return out;
    }
    if is_uncounted(items, scope, &water) {
        out.doubts.push(Doubt::VolumeUncounted);
        return out;
    }

    if unreadable || (!water.is_empty() && has_unsized_rest(items, amounts, scope)) {
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

/// "Two cans of ten litres and one of five", "two cans of ten and one of five litres": ten or five
/// of what?
fn has_unsized_rest(items: &[Item], amounts: &[Amount], scope: &Scope) -> bool {
    let unsized_can = amounts.iter().any(|size| {
        let start = size.items.start;
        size.unit == Unit::Pieces
            && scope.stated(start)
            && item_is(items, start.checked_sub(1), Concept::Of)
            && item_is(items, start.checked_sub(2), Concept::Container)
            && !item_is(items, Some(size.items.end), Concept::Container)
    });
    unsized_can
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

fn item_is(items: &[Item], index: Option<usize>, concept: Concept) -> bool {
    index
        .and_then(|index| items.get(index))
        .is_some_and(|item| item.is(concept))
}

fn role(
    items: &[Item],
    amounts: &[Amount],
    n: usize,
    system: UnitSystem,
    grammar: Grammar,
) -> Role {
    let Some(amount) = amounts.get(n) else {
        return Role::NotWater;
    };
    let start = amount.items.start;
    let end = amount.items.end;
    let before = start.checked_sub(1);
    let single_letter = amount.origin == Origin::Written
        && items
            .get(end - 1)
            .is_some_and(|unit| unit.span.len() == 1 && !unit.glued);
    if item_is(items, before, Concept::MeetingWord)
        || (item_is(items, before, Concept::AtWord) && single_letter)
    {
        return Role::NotWater;
    }
    // "per litre", "/ L", and "8 drops a gallon".
    let is_rate = item_is(items, before, Concept::Per)
        || before
            .and_then(|i| items.get(i))
            .is_some_and(|item| item.is_sign(&['/']))
        || (amount.origin == Origin::Article && follows_measure(amounts, n));
    if is_rate && container_before(items, amounts, n).is_none_or(|(_, counted)| counted.is_none()) {
        return if one_tablet_before(items, amounts, start) {
            Role::LabelRate
        } else {
            Role::NotWater
        };
    }
    // "Label says 1 tablet for 20 L".
    let from_label = items.iter().any(|item| item.is(Concept::Label));
    let for_it = before
        .and_then(|i| items.get(i))
        .is_some_and(|item| item.tag == Tag::Plain);
    if from_label && for_it && one_tablet_before(items, amounts, start) {
        return Role::LabelRate;
    }
    if item_is(items, Some(end), Concept::Flow)
        || (item_is(items, Some(end), Concept::Per) || item_is(items, Some(end), Concept::Article))
            && items.get(end + 1).is_some_and(|item| {
                matches!(
                    item.concept(),
                    Some(
                        Concept::Minute
                            | Concept::Hour
                            | Concept::Day
                            | Concept::Family
                            | Concept::PeopleWord
                    )
                )
            })
    {
        return Role::NotWater;
    }
    // "De galon 20 lit": the gallon is the can, and its litres are told.
    let next = amounts.get(n + 1).filter(|next| {
        next.items.start == end
            || (next.items.start == end + 1 && item_is(items, Some(end), Concept::Of))
    });
    if system != UnitSystem::Metric
        && next.is_some_and(|next| matches!(next.unit, Unit::Litres(_, UnitSystem::Metric)))
    {
        return Role::NotWater;
    }
    if is_stock(items, amounts, n, grammar) {
        return Role::Stock;
    }
    let Some(each) = amount.value() else {
        return Role::Unreadable;
    };
    if count_is_a_word(items, amounts, start, end) || part_of_it(items, amounts, n) {
        return Role::Unreadable;
    }
    // "Mere paas 10 litre bleach hai, tanki me kitna": the tank's size is not told.
    let of_product = items
        .get(end)
        .and_then(Item::concept)
        .is_some_and(is_product_word);
    let sized = |i: usize| {
        amounts.iter().any(|other| {
            matches!(other.unit, Unit::Litres(..))
                && (other.items.start.saturating_sub(3)..=other.items.end).contains(&i)
        })
    };
    let elsewhere = items
        .iter()
        .enumerate()
        .any(|(i, item)| item.is(Concept::Container) && !sized(i));
    // "I have 5 L bleach 4%. How much of it goes into the water?"
    let sentence_end = (end..items.len()).find(|i| items.get(*i).is_some_and(Item::ends_sentence));
    let asked_later = sentence_end.is_some_and(|stop| {
        items
            .iter()
            .skip(stop)
            .any(|item| item.is(Concept::HowMuch) || item.is(Concept::AskToAdd))
    });
    let bottle = amount.value().is_some_and(|litres| litres <= BOTTLE_MAX_L);
    if of_product && (elsewhere || (bottle && asked_later)) {
        return Role::Stock;
    }
    // "500 ml bleach 5%": what there is of it, or how much water? Nobody fetches so little.
    if each < 1.0 && of_product && !items.iter().any(|item| item.is(Concept::Water)) {
        return Role::Stock;
    }
    let is_dose = each < limit::VOLUME.min && each > 0.0;
    if is_dose
        && amounts
            .iter()
            .filter(|other| matches!(other.unit, Unit::Litres(..)))
            .count()
            > 1
    {
        return Role::NotWater;
    }
    // "Six (unknown word) of 25 litres": of what there are six is not for us to say.
    let of = item_is(items, before, Concept::Of);
    let named = start.checked_sub(if of { 2 } else { 1 });
    let counted_unknown = named
        .filter(|at| {
            items.get(*at).is_some_and(|item| {
                item.tag == Tag::Unknown && item.letters > 1 || (of && item.tag == Tag::Plain)
            })
        })
        .is_some_and(|at| {
            amounts.iter().any(|other| {
                other.unit == Unit::Pieces
                    && other.items.end == at
                    && other.figure.certain().is_some_and(|count| count >= 2.0)
            })
        });
    if counted_unknown {
        return Role::Unreadable;
    }
    // "20+20 L", "10 and 20 L": one of them has no unit.
    let added = before
        .and_then(|i| items.get(i))
        .is_some_and(|item| item.is_sign(&['+']) || item.is(Concept::And))
        && amounts
            .iter()
            .any(|other| other.unit == Unit::Pieces && other.items.end + 1 == start);
    if added {
        return Role::Unreadable;
    }
    // "less than 20 L" is no figure to act on.
    let bound = before
        .and_then(|i| items.get(i))
        .is_some_and(|item| item.is(Concept::LessThan));
    if bound {
        return Role::Unreadable;
    }
    // A litre that is only the size of a gallon can: "gallon 20 L".
    let mut contained = Contained::Loose;
    let mut count = 1.0;
    let mut by_container = None;
    if let Some((_, counted)) = container_before(items, amounts, n) {
        contained = Contained::Yes;
        by_container = counted;
        count = counted.unwrap_or(1.0);
    }
    match count_before(items, amounts, n).filter(|_| by_container.is_none()) {
        Some(factor) => {
            count *= factor;
            contained = Contained::Yes;
        }
        // "Twenty-twelve litres": a number that counts nothing stands before the figure.
        None if stray_number_before(items, amounts, start, grammar.unit_order) => {
            return Role::Unreadable;
        }
        None => {}
    }
    if let Some(factor) = times_after(items, end, grammar.containers) {
        count *= factor;
        contained = Contained::Yes;
    }
    if container_follows(items, end) {
        contained = Contained::Yes;
    }
    Role::Water(Mention {
        litres: each * count,
        each,
        system,
        item: start,
        end,
        contained,
    })
}

/// "1 tablet per 20 L", "one per 20 L": what a label says; but not "how many per 20 L".
fn one_tablet_before(items: &[Item], amounts: &[Amount], start: usize) -> bool {
    let per = start.saturating_sub(1);
    let tablet = |index: usize| {
        items.get(index).is_some_and(|item| {
            matches!(
                item.concept(),
                Some(Concept::Tablet | Concept::Nadcc | Concept::IodineTablet)
            )
        })
    };
    amounts.iter().any(|count| {
        let end = count.items.end;
        matches!(count.unit, Unit::Pieces)
            && count.figure.certain() == Some(1.0)
            && (end == per || (end + 1 == per && tablet(end)))
    })
}

/// Whether the amount before is a measure of product, next to this one.
fn follows_measure(amounts: &[Amount], n: usize) -> bool {
    let Some(amount) = amounts.get(n) else {
        return false;
    };
    n.checked_sub(1)
        .and_then(|m| amounts.get(m))
        .is_some_and(|measure| {
            measure.items.end == amount.items.start
                && (matches!(measure.unit, Unit::Drop | Unit::Spoon | Unit::Capful)
                    || matches!(measure.unit, Unit::Litres(factor, _) if factor <= 0.001))
        })
}

/// `20 L of 5% bleach`, `a 5 L can of bleach`, `the bleach jug is 5 L`, `bottle of bleach 500 ml`.
fn is_stock(items: &[Item], amounts: &[Amount], n: usize, grammar: Grammar) -> bool {
    let Some(amount) = amounts.get(n) else {
        return false;
    };
    let mut at = amount.items.end;
    if items
        .get(at)
        .is_some_and(|item| item.is(Concept::Container))
    {
        at += 1;
    }
    if items.get(at).is_some_and(|item| item.is(Concept::Of)) {
        let mut next = at + 1;
        // Words between, whatever the length of a percentage in words.
        for _ in 0..5 {
            let Some(item) = items.get(next) else { break };
            if item.concept().is_some_and(is_product_word) {
                return true;
            }
            let strength = amounts
                .iter()
                .find(|other| other.items.start == next && matches!(other.unit, Unit::Percent));
            match strength {
                Some(strength) => next = strength.items.end,
                None if item.is_filler()
                    || item.is(Concept::Article)
                    || item.is(Concept::PlainProduct) =>
                {
                    next += 1
                }
                None => break,
            }
        }
    }
    // "A 5 litre can, that is the bleach": said of the can before.
    let behind = items.get(at..).unwrap_or_default();
    let told = behind
        .iter()
        .take(6)
        .take_while(|item| !item.ends_sentence())
        .skip_while(|item| item.is_sign(&[',']))
        .skip_while(|item| item.is(Concept::Container));
    let mut told = told.skip_while(|item| item.is_sign(&[',']));
    if told.next().is_some_and(|item| item.is(Concept::ThatIs))
        && told
            .find(|item| !item.is_filler() && !item.is(Concept::Article))
            .is_some_and(|item| item.concept().is_some_and(is_product_word))
    {
        return true;
    }
    // Backwards: a product's own container.
    let mut at = amount.items.start;
    let mut container_at = None;
    let mut product_at = None;
    for _ in 0..7 {
        let Some(before) = at.checked_sub(1) else {
            break;
        };
        let Some(item) = items.get(before) else { break };
        if item.ends_sentence() || item.is_sign(&[',']) || item.is(Concept::Water) {
            break;
        }
        if item.is(Concept::Container) || item.is(Concept::Label) {
            container_at = container_at.or(Some(before));
        } else if item.concept().is_some_and(is_product_word) {
            product_at = product_at.or(Some(before));
        } else if matches!(
            item.concept(),
            Some(Concept::HowMuch | Concept::And | Concept::Or | Concept::Percent | Concept::Per)
        ) || matches!(item.tag, Tag::Figure(_) | Tag::Number(_))
        {
            break;
        }
        at = before;
    }
    match (container_at, product_at) {
        // "the bleach jug is 5 L", "bleach ki botal 1 L"; but "javel bidon 25 L" is two things.
        (Some(container), Some(product))
            if grammar.adjectives == Adjectives::BeforeNoun
                && (product + 1 == container
                    || (product + 2 == container
                        && item_is(items, Some(product + 1), Concept::Determiner))) =>
        {
            true
        }
        // "Boutèy javèl la se 1 lit, doum dlo a se 100 lit", where nothing joins the two.
        (Some(container), Some(product))
            if grammar.adjectives == Adjectives::AfterNoun
                && product == container + 1
                && amounts
                    .iter()
                    .filter(|other| matches!(other.unit, Unit::Litres(..)))
                    .count()
                    > 1 =>
        {
            true
        }
        // "bottle of bleach 500 ml"
        (Some(container), Some(product)) => {
            product == container + 2
                && items
                    .get(container + 1)
                    .is_some_and(|item| item.is(Concept::Of))
        }
        _ => false,
    }
}

/// `three jerrycans … each is 20 L`: the count stands in another sentence.
fn multiply_each(
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

/// The part that a container is filled to, where the message says so.
pub(super) fn part_filled(items: &[Item], scope: &Scope) -> Option<f64> {
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
fn part_of_other(items: &[Item], scope: &Scope) -> bool {
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
fn has_loose_part(amounts: &[Amount], scope: &Scope) -> bool {
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
fn fill(part: f64, water: &mut [Mention]) -> Result<(), Doubt> {
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

/// "20 L jerrycans" and "20 L twice": one of them, or how many?
fn is_uncounted(items: &[Item], scope: &Scope, water: &[Mention]) -> bool {
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
fn is_counted_apart(
    items: &[Item],
    amounts: &[Amount],
    water: &[Mention],
    order: UnitOrder,
) -> bool {
    let [mention] = water else { return false };
    let counted = (mention.litres - mention.each).abs() > f64::EPSILON;
    let apart = amounts.iter().any(|count| {
        count.unit == Unit::Pieces
            && count.figure.certain().is_some_and(|count| count >= 2.0)
            && ((order == UnitOrder::EitherSide
                && item_is(items, count.items.start.checked_sub(1), Concept::Container))
                // "Two cans of water, the can is 20 L."
                || (item_is(items, Some(count.items.end), Concept::Container)
                    && mention.contained == Contained::Yes
                    && count.items.end + 3 < mention.item))
    });
    !counted && apart
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
