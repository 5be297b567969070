//! Containers and how many there are.
//!
//! In: items, amounts, and which amount is a volume.
//! Out: the container it is the size of, and the count that stands with it.

use super::amount::{Amount, Origin, Unit, is_counted_thing};
use super::concept::Concept;
use super::lexicon::{ContainerOrder, UnitOrder};
use super::number::Shape;
use super::numeral::number_at;
use super::tag::{GrammaticalNumber, Item, Tag};

/// Words that may stand between a container and its size.
fn is_link(item: &Item) -> bool {
    item.is_filler()
        || item.is_sign(&['(', ')', ':', '=', ',', '@'])
        || matches!(
            item.concept(),
            Some(
                Concept::Of
                    | Concept::Article
                    | Concept::Times
                    | Concept::Each
                    | Concept::Per
                    | Concept::Perhaps
                    | Concept::Full
                    | Concept::Water
                    | Concept::TreatedWater
                    | Concept::Clear
                    | Concept::Clean
                    | Concept::Cloudy
                    | Concept::HowLong
            )
        )
}

/// The container that this volume is the size of, and how many there are.
pub(super) fn container_before(
    items: &[Item],
    amounts: &[Amount],
    n: usize,
) -> Option<(usize, Option<f64>)> {
    let amount = amounts.get(n)?;
    let mut at = amount.items.start;
    for _ in 0..6 {
        let before = at.checked_sub(1)?;
        let item = items.get(before)?;
        let bare_gallon = item.is(Concept::Gallon) && !gallon_is_unit(amounts, before);
        // "2 gallons of 5 L": the gallon is a can. "5 gallons (19 L)": it is not.
        let next_to_it = before + 1 == amount.items.start
            || (before + 2 == amount.items.start
                && items
                    .get(before + 1)
                    .is_some_and(|item| item.is(Concept::Of)));
        let counted_gallon = item.is(Concept::Gallon) && next_to_it;
        if item.is(Concept::Container) || bare_gallon || counted_gallon {
            let covering = amounts.iter().find(|other| {
                let of = other.items.end + 1 == before
                    && items
                        .get(other.items.end)
                        .is_some_and(|item| item.is(Concept::Of));
                (other.items.end == before || other.items.end == before + 1 || of)
                    && matches!(other.unit, Unit::Pieces | Unit::Litres(..))
                    && other.origin == Origin::Written
            });
            // "3 big jerrycans"
            let further = || {
                let word = before.checked_sub(1)?;
                items.get(word)?.is_filler().then_some(())?;
                amounts
                    .iter()
                    .find(|other| other.items.end == word && matches!(other.unit, Unit::Pieces))
            };
            let count = covering
                .filter(|other| matches!(other.unit, Unit::Pieces) || other.items.end == before + 1)
                .or_else(further)
                .and_then(|other| other.figure.certain())
                .filter(|count| is_count(*count));
            return Some((before, count));
        }
        // "Madumu matano ya lita 20": the count behind the container.
        let count = amounts
            .iter()
            .find(|other| other.items.end == at && matches!(other.unit, Unit::Pieces));
        if let Some(count) = count
            && let Some(thing) = count.items.start.checked_sub(1)
            && items
                .get(thing)
                .is_some_and(|item| item.is(Concept::Container))
        {
            let count = count.figure.certain().filter(|count| is_count(*count));
            return Some((thing, count));
        }
        if item.ends_sentence() || !is_link(item) {
            return None;
        }
        at = before;
    }
    None
}

/// Two cans, two and a half; 4.6 is no number of cans.
fn is_count(count: f64) -> bool {
    (1.0..=10_000.0).contains(&count) && (count * 2.0).fract() == 0.0
}

fn gallon_is_unit(amounts: &[Amount], index: usize) -> bool {
    amounts.iter().any(|amount| amount.items.contains(&index))
}

/// `3 x 20 L`, `two 20 L jerrycans`, `one of 5 L`, `a dozen 1.5 L bottles`, `half a 20 L can`.
pub(super) fn count_before(items: &[Item], amounts: &[Amount], n: usize) -> Option<f64> {
    let amount = amounts.get(n)?;
    let start = amount.items.start;
    let piece = |end: usize| {
        amounts
            .iter()
            .find(|other| other.items.end == end && matches!(other.unit, Unit::Pieces))
            .and_then(|other| other.figure.certain())
            .filter(|count| *count > 0.0 && *count <= 10_000.0)
    };
    let before = start.checked_sub(1)?;
    let item = items.get(before)?;
    if (item.is(Concept::Times) || item.is(Concept::Of))
        && let Some(count) = piece(before)
    {
        return Some(count);
    }
    let directly = piece(start)?;
    container_follows(items, amount.items.end).then_some(directly)
}

/// A number directly before a volume, other than a 2 or a 4 that stands for "to" or "for", and
/// other than one that counts the thing before it where nouns stand first.
pub(super) fn stray_number_before(
    items: &[Item],
    amounts: &[Amount],
    start: usize,
    order: UnitOrder,
) -> bool {
    let counts = |other: &Amount| {
        order == UnitOrder::EitherSide
            && other
                .items
                .start
                .checked_sub(1)
                .and_then(|before| items.get(before))
                .is_some_and(is_counted_thing)
    };
    amounts.iter().filter(|other| !counts(other)).any(|other| {
        let word = other.figure.shape == Shape::Whole
            && (other.figure.value == 2.0 || other.figure.value == 4.0);
        other.items.end == start && matches!(other.unit, Unit::Pieces) && !word
    })
}

/// "2 nice red buckets 20 L", "3 paint tins 15 L": a number of things that nothing here multiplies
/// by. Are they as many?
pub(super) fn unexplained_count_before(items: &[Item], amounts: &[Amount], start: usize) -> bool {
    /// Words between a number and its thing's size.
    const REACH: usize = 4;
    /// More of them would be a price or a room.
    const MOST: f64 = 60.0;
    let describes = |item: &Item| {
        item.is_filler()
            || matches!(
                item.concept(),
                Some(
                    Concept::Article
                        | Concept::Clean
                        | Concept::Clear
                        | Concept::Cloudy
                        | Concept::Container
                        | Concept::Day
                        | Concept::Homonym
                        | Concept::NowWord
                        | Concept::Of
                        | Concept::SpoiledHint
                        | Concept::SpoiledProduct
                )
            )
    };
    // "4 a 20 L can" is text-speak.
    let is_thing = |item: &Item| {
        item.is(Concept::Container)
            || item.is(Concept::Homonym)
            || (matches!(item.tag, Tag::Plain | Tag::Unknown) && item.letters > 2)
    };
    amounts.iter().any(|count| {
        let between = items.get(count.items.end..start).unwrap_or_default();
        // "Tank no. 12 holds 640 L."
        let is_name = count
            .items
            .start
            .checked_sub(1)
            .and_then(|before| items.get(before))
            .is_some_and(|before| before.is_sign(&['.', '#']));
        count.unit == Unit::Pieces
            && !is_name
            && count.figure.shape == Shape::Whole
            && (2.0..=MOST).contains(&count.figure.value)
            && (1..=REACH).contains(&between.len())
            && between.iter().all(describes)
            && between.iter().any(is_thing)
    })
}

/// `up to 700 of its 1000 litres`: which of the two is the water is not for us to say.
pub(super) fn part_of_it(items: &[Item], amounts: &[Amount], n: usize) -> bool {
    let Some(amount) = amounts.get(n) else {
        return false;
    };
    let part = n.checked_sub(1).and_then(|m| amounts.get(m));
    part.is_some_and(|part| {
        let between = items
            .get(part.items.end..amount.items.start)
            .unwrap_or_default();
        matches!(part.unit, Unit::Pieces)
            && part.figure.value > 10.0
            && between.first().is_some_and(|item| item.is(Concept::Of))
            && between.len() <= 2
            && !items
                .get(part.items.start.saturating_sub(1)..part.items.start)
                .unwrap_or_default()
                .iter()
                .any(|item| item.is(Concept::Container))
            && part.figure.value < amount.figure.value
    })
}

/// `bleach 5% 4 25 L jerrican`: "four jerricans", or "for a jerrican"? The same for two.
pub(super) fn count_is_a_word(
    items: &[Item],
    amounts: &[Amount],
    start: usize,
    end: usize,
) -> bool {
    let sounds_like_a_word = amounts.iter().any(|other| {
        other.items.end == start
            && other.items.len() == 1
            && matches!(other.unit, Unit::Pieces)
            && (other.figure.value == 2.0 || other.figure.value == 4.0)
            && other.figure.shape == Shape::Whole
            && other.items.start > 0
    });
    let one = |index: usize| {
        items.get(index).is_some_and(|item| {
            item.is(Concept::Container) && item.number == GrammaticalNumber::Singular
        })
    };
    sounds_like_a_word
        && (one(end) || (one(end + 1) && !items.get(end).is_some_and(Item::ends_sentence)))
}

/// `20 L x 3`, `20 L cans x 3`, `20 L, three of them`, and, where the size stands first,
/// `20 litre ki do balti`.
pub(super) fn times_after(items: &[Item], end: usize, order: ContainerOrder) -> Option<f64> {
    let mut at = end;
    if order == ContainerOrder::SizeFirst {
        let link = |item: &Item| item.is(Concept::Determiner) || item.is(Concept::Of);
        let start = if items.get(at).is_some_and(link) {
            at + 1
        } else {
            at
        };
        if let Some((figure, after)) = number_at(items, start)
            && items
                .get(after)
                .is_some_and(|item| item.is(Concept::Container))
        {
            return figure
                .certain()
                .filter(|count| *count > 0.0 && *count <= 10_000.0);
        }
    }
    if items
        .get(at)
        .is_some_and(|item| item.is(Concept::Container))
    {
        at += 1;
    }
    if items.get(at).is_some_and(|item| item.is(Concept::Times)) {
        let (figure, after) = number_at(items, at + 1)?;
        // "20 L x 3 L" is no count.
        if items
            .get(after)
            .and_then(Item::concept)
            .is_some_and(|c| c == Concept::Litre)
        {
            return None;
        }
        return figure
            .certain()
            .filter(|count| *count > 0.0 && *count <= 10_000.0);
    }
    if items.get(at).is_some_and(|item| item.is_sign(&[','])) {
        let (figure, after) = number_at(items, at + 1)?;
        if items.get(after).is_some_and(|item| item.is(Concept::Of)) {
            return figure
                .certain()
                .filter(|count| *count > 0.0 && *count <= 10_000.0);
        }
    }
    None
}

pub(super) fn container_follows(items: &[Item], end: usize) -> bool {
    let skip = |item: &Item| {
        item.is_filler()
            || matches!(
                item.concept(),
                Some(Concept::Water | Concept::Full | Concept::Cold)
            )
    };
    let first = items.get(end);
    first.is_some_and(|item| item.is(Concept::Container))
        || (first.is_some_and(skip)
            && items
                .get(end + 1)
                .is_some_and(|item| item.is(Concept::Container)))
}

/// So many letters tell containers apart, one from several or not.
const KIND_LETTERS: usize = 3;

/// The beginning of the container's word, where all containers of the message share it.
pub(super) fn kind(text: &str, items: &[Item]) -> Option<String> {
    let mut kinds = items
        .iter()
        .filter(|item| item.is(Concept::Container))
        .map(|item| {
            let word = text.get(item.span.clone()).unwrap_or_default();
            let word = word.trim_start_matches(|c: char| !c.is_alphabetic());
            word.to_lowercase()
                .chars()
                .take(KIND_LETTERS)
                .collect::<String>()
        });
    let first = kinds.next().filter(|kind| !kind.is_empty())?;
    kinds.all(|kind| kind == first).then_some(first)
}
