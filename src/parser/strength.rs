//! The strength on the label, out of all the percentages in a message.
//!
//! In: amounts with their surroundings.
//! Out: the percentages that may be a product's strength or a target, and what is doubtful.
//! Promises that an advertised, guessed, bounded or denied percentage is never a strength.

use super::amount::{Amount, Unit};
use super::concept::Concept;
use super::doubt::Doubt;
use super::number::Shape;
use super::product::is_product_word;
use super::scope::{Scope, Standing};
use super::tag::{Item, Tag};

/// Percent of available chlorine in one chlorometric degree (`INTERFACE.md` settles 0.317).
const PERCENT_PER_CHLOROMETRIC_DEGREE: f64 = 0.317;

/// A label range is taken at its lower end up to this ratio; a wider one is asked about.
const NARROW_RANGE: f64 = 1.35;

/// Below this a figure in ppm is a target in the water, not a product: 0.1%.
const PRODUCT_PPM_MIN: f64 = 1000.0;

/// A percentage that may be a strength.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Percentage {
    pub(super) percent: f64,
    /// First item of its amount.
    pub(super) item: usize,
    pub(super) from_range: FromRange,
}

/// Whether a label's range stands behind a percentage.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum FromRange {
    No,
    LowerEnd,
}

/// The percentages of a message.
#[derive(Debug, Default)]
pub(super) struct Percentages {
    pub(super) good: Vec<Percentage>,
    pub(super) doubts: Vec<Doubt>,
    /// Targets in ppm or mg/L, as percentages.
    pub(super) targets: Vec<f64>,
    /// The greatest percentage that was written at all, doubtful or not.
    pub(super) greatest: Option<f64>,
}

pub(super) fn percentages(items: &[Item], amounts: &[Amount], scope: &Scope) -> Percentages {
    let mut found = Percentages::default();
    for amount in amounts {
        let start = amount.items.start;
        let percent_of = |value: f64| match amount.unit {
            Unit::Percent => Some(value),
            Unit::PerMille => Some(value / 10.0),
            Unit::ChlorometricDegree => Some(value * PERCENT_PER_CHLOROMETRIC_DEGREE),
            Unit::Ppm | Unit::MgPerLitre => Some(value / 10_000.0),
            Unit::GramPerLitre => Some(value / 10.0),
            _ => None,
        };
        if percent_of(1.0).is_none() || is_no_strength(items, amount) {
            continue;
        }
        match scope.at(start) {
            Standing::Aside => continue,
            Standing::Denied => {
                found
                    .doubts
                    .push(if scope.denied_behind(items, amounts, amount) {
                        Doubt::StrengthTwo
                    } else {
                        Doubt::StrengthDenied
                    });
                continue;
            }
            Standing::Stated => {}
        }
        if matches!(amount.unit, Unit::Ppm | Unit::MgPerLitre)
            && amount.figure.value < PRODUCT_PPM_MIN
        {
            found.doubts.push(Doubt::StrengthIsTarget);
            found.targets.extend(amount.value().and_then(percent_of));
            continue;
        }
        // 1/2% is a half; 3/5% is a fraction or two figures.
        let is_cooks_fraction = [0.25, 0.5, 0.75]
            .iter()
            .any(|part| (amount.figure.value - part).abs() < 1e-9);
        if amount.figure.shape == Shape::Fraction && !is_cooks_fraction {
            found.doubts.push(Doubt::StrengthUnreadable);
            continue;
        }
        // "2 5%": two and a half, or a two that stands for something else?
        let torn = amounts.iter().any(|other| {
            other.unit == Unit::Pieces
                && other.items.end == start
                && other.items.len() == 1
                && other.figure.shape == Shape::Whole
                && other.figure.value < 10.0
        });
        if torn && amount.figure.shape == Shape::Whole && amount.figure.value < 10.0 {
            found.doubts.push(Doubt::StrengthUnreadable);
            continue;
        }
        // 5.250% can only be five and a quarter.
        let Some(value) = amount
            .figure
            .certain_within(0.0, 100.0)
            .and_then(percent_of)
        else {
            found.doubts.push(Doubt::StrengthUnreadable);
            continue;
        };
        found.greatest = Some(found.greatest.map_or(value, |greatest| greatest.max(value)));
        if nearby(items, amount, Concept::LessThan, 3, 2) {
            found.doubts.push(Doubt::StrengthBound);
            continue;
        }
        if nearby(items, amount, Concept::Perhaps, 5, 3) {
            found.doubts.push(Doubt::StrengthGuessed);
            continue;
        }
        let from_range = match amount.upper.and_then(percent_of) {
            None => FromRange::No,
            Some(upper) => {
                found.greatest = found.greatest.map(|greatest| greatest.max(upper));
                if upper < value || upper > value * NARROW_RANGE || value <= 0.0 {
                    found.doubts.push(Doubt::StrengthWide);
                    continue;
                }
                FromRange::LowerEnd
            }
        };
        found.good.push(Percentage {
            percent: value,
            item: start,
            from_range,
        });
    }
    take_back(&mut found.good, scope);
    keep_the_present(&mut found.good, items);
    // "Not 4%, it is 5%": the denied one is out of the way.
    if found.good.len() == 1 {
        found.doubts.retain(|doubt| *doubt != Doubt::StrengthDenied);
    }
    found.doubts.extend(loose_signs(items, amounts, scope));
    found
}

/// What was corrected later does not count: "3%, sorry, 5%".
fn take_back(good: &mut Vec<Percentage>, scope: &Scope) {
    for correction in &scope.corrections {
        if good.iter().any(|percentage| percentage.item > *correction) {
            good.retain(|percentage| percentage.item > *correction);
        }
    }
}

/// "Before it was 2.6%, now it is 4%": the present one.
fn keep_the_present(good: &mut Vec<Percentage>, items: &[Item]) {
    if let [before, after] = good.as_slice()
        && let Some(between) = items.get(before.item..after.item)
        && between.iter().any(|item| item.is(Concept::NowWord))
    {
        good.remove(0);
    }
}

/// A discount, a battery, "100% sure", "kills 99.9% of germs".
fn is_no_strength(items: &[Item], amount: &Amount) -> bool {
    let sentence = |item: &Item| item.ends_sentence() || item.is_sign(&[',']);
    let before = items
        .get(..amount.items.start)
        .unwrap_or_default()
        .iter()
        .rev()
        .take_while(|item| !sentence(item))
        .take(4);
    let after = items
        .get(amount.items.end..)
        .unwrap_or_default()
        .iter()
        .take_while(|item| !sentence(item))
        .take(2);
    // "100% sure"; but "4% for sure" is a strength.
    let elsewhere = |item: &Item| {
        item.is(Concept::Advertising)
            || (item.is(Concept::Surely)
                && amount.unit == Unit::Percent
                && amount.figure.value >= 50.0)
    };
    let before = before.clone().any(elsewhere);
    let after = after
        .clone()
        .any(|item| elsewhere(item) || (item.is(Concept::Germ) && amount.figure.value >= 90.0));
    before || after
}

/// Whether a concept stands within a few items of an amount, in the same sentence.
fn nearby(items: &[Item], amount: &Amount, concept: Concept, before: usize, after: usize) -> bool {
    let head = items.get(..amount.items.start).unwrap_or_default();
    let tail = items.get(amount.items.end..).unwrap_or_default();
    let stops = |item: &&Item| !item.ends_sentence() && !other_figure(item);
    head.iter()
        .rev()
        .take(before)
        .take_while(|item| stops(item) && !item.is_sign(&[',']))
        .any(|item| item.is(concept))
        || tail
            .iter()
            .enumerate()
            .take(after)
            .take_while(|(_, item)| stops(item))
            // "5%, about 20 L": what stands before another figure is said of that one.
            .any(|(i, item)| item.is(concept) && !tail.get(i + 1).is_some_and(other_figure))
}

/// The items of the clause around one of them: those before it, nearest first, and those behind.
fn clause(items: &[Item], at: usize) -> (impl Iterator<Item = &Item>, impl Iterator<Item = &Item>) {
    let goes_on = |item: &&Item| !item.ends_sentence() && !item.is_sign(&[',']);
    let before = items.get(..at).unwrap_or_default().iter().rev();
    let behind = items.get(at + 1..).unwrap_or_default().iter();
    (before.take_while(goes_on), behind.take_while(goes_on))
}

/// "How many grams do I dissolve", and nothing behind it: a verb, and no thinned product.
fn asks_how_much_to_dissolve(items: &[Item], at: usize) -> bool {
    let (mut before, mut behind) = clause(items, at);
    before.any(|item| item.is(Concept::HowMuch)) && behind.all(Item::is_filler)
}

/// "I mixed the 5% bleach with water", with no volume and no question in it: what is in the
/// bottle now is weaker than its label.
fn mixed_into_water(items: &[Item], at: usize) -> bool {
    let (before, behind) = clause(items, at);
    let rest: Vec<&Item> = before.chain(behind).collect();
    let has = |concept: Concept| rest.iter().any(|item| item.is(concept));
    let product = rest
        .iter()
        .any(|item| item.concept().is_some_and(is_product_word));
    let plans = [
        Concept::HowMuch,
        Concept::AddWord,
        Concept::Litre,
        Concept::Container,
        Concept::Negation,
        Concept::Acid,
        Concept::Ammonia,
        Concept::Chemical,
    ];
    product && has(Concept::Water) && !plans.into_iter().any(has)
}

fn other_figure(item: &Item) -> bool {
    matches!(item.tag, Tag::Figure(_) | Tag::Number(_))
}

/// A percent sign behind something that is no figure: `NaN%`, `S%`.
fn loose_signs(items: &[Item], amounts: &[Amount], scope: &Scope) -> Vec<Doubt> {
    let covered = |index: usize| amounts.iter().any(|amount| amount.items.contains(&index));
    let mut doubts = Vec::new();
    let figures = amounts
        .iter()
        .filter(|amount| amount.unit == Unit::Percent)
        .count();
    for (i, item) in items.iter().enumerate() {
        let behind_a_word = i
            .checked_sub(1)
            .and_then(|before| items.get(before))
            .is_some_and(|before| match before.tag {
                Tag::Unknown | Tag::Unreadable => true,
                Tag::Plain => item.glued,
                _ => false,
            });
        if item.is(Concept::Percent) && !covered(i) && scope.stated(i) && behind_a_word {
            doubts.push(Doubt::StrengthUnreadable);
        }
        // "Dilute bleach 5% to 1%" is a plan; "dilute bleach" alone has been thinned.
        let plan = figures >= 2 || asks_how_much_to_dissolve(items, i);
        let thinned = item.is(Concept::Thinned)
            || (item.is(Concept::DiluteWord) && !plan)
            || (item.is(Concept::Mix) && mixed_into_water(items, i));
        if thinned && scope.stated(i) {
            doubts.push(Doubt::StrengthThinned);
        }
        if item.is(Concept::Unlabelled) && scope.at(i) != Standing::Denied {
            doubts.push(Doubt::Unlabelled);
        }
    }
    doubts
}
