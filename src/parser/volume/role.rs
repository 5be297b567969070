//! What a volume in a message is of: the water, the product, a label's rate, or nothing to treat.
//!
//! In: items and amounts.
//! Out: the part that one volume plays.

use crate::parser::amount::{Amount, Origin, Unit};
use crate::parser::concept::Concept;
use crate::parser::container::{
    container_before, container_follows, count_before, count_is_a_word, part_of_it,
    stray_number_before, times_after, unexplained_count_before,
};
use crate::parser::lexicon::{Adjectives, Grammar};
use crate::parser::product::is_product_word;
use crate::parser::tag::{Item, Tag};
use crate::quantity::{UnitSystem, limit};

use super::{BOTTLE_MAX_L, Contained, Mention, item_is};

#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum Role {
    /// Litres that the label gives to one tablet.
    LabelRate,
    /// A dose of product, a rate, a flow, a clock time.
    NotWater,
    Stock,
    Unreadable,
    Water(Mention),
}

pub(super) fn role(
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
    // "Lita 2 mia": two, or two hundred?
    if items
        .get(end)
        .is_some_and(|item| matches!(item.tag, Tag::Scale(_)))
    {
        return Role::Unreadable;
    }
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
    // "5% bleach, 20 L left in the store. How much into the tank?": 20 L of which?
    if elsewhere && asked_later && !of_water(items, amount) && of_stored(items, amount) {
        return Role::Unreadable;
    }
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
    let counted = (count - 1.0).abs() > f64::EPSILON;
    if !counted && unexplained_count_before(items, amounts, start) {
        return Role::Unreadable;
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

/// The items of the sentence around an amount.
fn sentence<'a>(items: &'a [Item], amount: &Amount) -> &'a [Item] {
    let ends = |item: &Item| item.ends_sentence();
    let start = items
        .get(..amount.items.start)
        .and_then(|before| before.iter().rposition(ends))
        .map_or(0, |at| at + 1);
    let end = (amount.items.end..items.len())
        .find(|at| items.get(*at).is_some_and(ends))
        .unwrap_or(items.len());
    items.get(start..end).unwrap_or_default()
}

/// Whether water or what holds it is spoken of in the amount's sentence.
fn of_water(items: &[Item], amount: &Amount) -> bool {
    sentence(items, amount)
        .iter()
        .any(|item| item.is(Concept::Water) || item.is(Concept::Container))
}

/// Whether a product is spoken of in the amount's sentence, and nothing is asked in it.
fn of_stored(items: &[Item], amount: &Amount) -> bool {
    let sentence = sentence(items, amount);
    let has = |concept: Concept| sentence.iter().any(|item| item.is(concept));
    sentence
        .iter()
        .any(|item| item.concept().is_some_and(is_product_word))
        && !has(Concept::HowMuch)
        && !has(Concept::AskToAdd)
}
