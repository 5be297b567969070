//! Figures with their units.
//!
//! In: tagged items.
//! Out: amounts in the order they stand, each with the items it covers.
//! Promises that a figure is paired with the unit beside it and with nothing else.
//!
//! ```text
//! amount   = number [us | imperial] unit ["and" ["a"] fraction]
//!          | number ("-" | "to") number unit          a range
//!          | unit number                              where the locale writes units first
//!          | "pH" ["is" | ":" …] number
//! number   = figure [fraction] [scale] | words | fraction ["of"] ["a"] | "a" before a unit
//! words    = word {"and" | word | scale} ["point" digits] ["and" ["a"] fraction]
//! ```

use std::ops::Range;

use crate::quantity::{UnitSystem, litres_in};

use super::concept::Concept;
use super::lexicon::{Grammar, UnitOrder};
use super::number::{Certainty, Figure, Shape};
use super::tag::{Item, Tag};

/// A unit, with what one of it is in the unit that the request uses.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum Unit {
    Capful,
    Celsius,
    ChlorometricDegree,
    /// A degree of nothing in particular.
    Degree,
    Days(f64),
    Drop,
    Fahrenheit,
    GramPerLitre,
    Grams(f64),
    Litres(f64, UnitSystem),
    Metres(f64),
    MgPerLitre,
    Micrometre,
    Milligram,
    Minutes(f64),
    /// None.
    Pieces,
    PerMille,
    Percent,
    Ph,
    Ppm,
    Spoon,
    /// NTU.
    Turbidity,
}

/// A figure with its unit.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Amount {
    pub(super) figure: Figure,
    /// The upper end, where a range is given.
    pub(super) upper: Option<f64>,
    pub(super) unit: Unit,
    /// Items covered.
    pub(super) items: Range<usize>,
    pub(super) origin: Origin,
}

/// Whether somebody wrote a figure.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Origin {
    /// "a litre".
    Article,
    Written,
}

impl Amount {
    /// The one value, if there is one, in the unit's base.
    pub(super) fn value(&self) -> Option<f64> {
        if self.upper.is_some() {
            None
        } else {
            self.figure.certain().map(|v| v * self.factor())
        }
    }

    /// What one unit is in its base unit.
    pub(super) fn factor(&self) -> f64 {
        match self.unit {
            Unit::Days(factor)
            | Unit::Grams(factor)
            | Unit::Litres(factor, _)
            | Unit::Metres(factor)
            | Unit::Minutes(factor) => factor,
            Unit::Capful
            | Unit::Celsius
            | Unit::ChlorometricDegree
            | Unit::Degree
            | Unit::Drop
            | Unit::Fahrenheit
            | Unit::GramPerLitre
            | Unit::MgPerLitre
            | Unit::Micrometre
            | Unit::Milligram
            | Unit::Pieces
            | Unit::PerMille
            | Unit::Percent
            | Unit::Ph
            | Unit::Ppm
            | Unit::Spoon
            | Unit::Turbidity => 1.0,
        }
    }
}

/// All amounts of a message.
pub(super) fn amounts(items: &[Item], grammar: Grammar, units: UnitSystem) -> Vec<Amount> {
    let mut found = Vec::new();
    let mut at = 0;
    while at < items.len() {
        if let Some(amount) = amount_at(items, at, grammar.unit_order, units) {
            at = amount.items.end;
            found.push(amount);
        } else {
            at += 1;
        }
    }
    found
}

fn amount_at(items: &[Item], at: usize, order: UnitOrder, units: UnitSystem) -> Option<Amount> {
    if items.get(at)?.is(Concept::Ph) {
        return prefixed(items, at, Unit::Ph);
    }
    // "NTU 150"; but "20 L 5 NTU" has its figure before it.
    if items.get(at)?.is(Concept::Ntu)
        && let Some(amount) = prefixed(items, at, Unit::Turbidity)
    {
        return Some(amount);
    }
    // "The percentage is 2": unless the figure has a unit of its own.
    if items.get(at)?.is(Concept::PercentWord)
        && let Some(amount) = prefixed(items, at, Unit::Percent)
        && unit_at(items, amount.items.end, units).is_none()
    {
        return Some(amount);
    }
    if order == UnitOrder::EitherSide
        && let Some(amount) = unit_first(items, at, units)
    {
        return Some(amount);
    }
    let (figure, mut end) = number_at(items, at)?;
    let negative = items.get(at).is_some_and(|item| item.negative);
    let figure = if negative {
        Figure {
            value: -figure.value,
            ..figure
        }
    } else {
        figure
    };
    let article = items.get(at).is_some_and(|item| item.is(Concept::Article)) && end == at + 1;

    // "20 (twenty) litres": the second figure only repeats the first.
    if let Some((repeated, close)) = repeated_in_brackets(items, end)
        && repeated == figure.value
    {
        end = close;
    }
    let range = (!article)
        .then(|| upper_end(items, end, units))
        .flatten()
        // "20-20 litre ki do balti": each of them.
        .map(|(upper, end)| ((upper != figure.value).then_some(upper), end));
    let (upper, end) = match range {
        Some((upper, end)) => (upper, end),
        None => (None, end),
    };
    // "Madumu 5 lita 20": the cans are five, and the litre is the next figure's.
    let counts = order == UnitOrder::EitherSide
        && at
            .checked_sub(1)
            .and_then(|i| items.get(i))
            .is_some_and(is_counted_thing)
        && leads(items, end, units);
    let found = if counts {
        None
    } else {
        unit_at(items, end, units)
    };
    let Some((unit, mut end)) = found else {
        // An article alone is not a number.
        return (!article).then_some(Amount {
            figure,
            upper,
            unit: Unit::Pieces,
            items: at..end,
            origin: Origin::Written,
        });
    };
    // "A litre", "a week", "an hour"; but "a day" is how a rate ends.
    let countable = match unit {
        Unit::Litres(..) => true,
        Unit::Days(days) => (7.0..365.0).contains(&days),
        Unit::Minutes(minutes) => minutes >= 60.0,
        // "Un pour cent".
        Unit::Percent => !items.get(at + 1).is_some_and(is_bare_sign),
        _ => false,
    };
    if article && !countable {
        return None;
    }
    let mut figure = figure;
    if let Some((part, after)) = and_a_fraction(items, end) {
        figure.value += part;
        end = after;
    }
    // "5% to 6%": one range, not two figures.
    let mut upper = upper;
    if upper.is_none()
        && items.get(end).is_some_and(joins_range)
        && let Some((other, after)) = number_at(items, end + 1)
        && let Some((same, after)) = unit_at(items, after, units)
        && same == unit
        && unit == Unit::Percent
        && let Some(other) = other.certain()
        && other > figure.value
    {
        upper = Some(other);
        end = after;
    }
    let origin = if article {
        Origin::Article
    } else {
        Origin::Written
    };
    Some(Amount {
        figure,
        upper,
        unit,
        items: at..end,
        origin,
    })
}

/// A sign, and not a word.
fn is_bare_sign(item: &Item) -> bool {
    item.span.len() <= 2
}

/// What a figure behind it counts, where nouns stand first: "madumu 5", "watu 60".
fn is_counted_thing(item: &Item) -> bool {
    [
        Concept::Container,
        Concept::Family,
        Concept::IodineTablet,
        Concept::Nadcc,
        Concept::PeopleWord,
        Concept::Tablet,
    ]
    .iter()
    .any(|concept| item.is(*concept))
}

/// Whether the unit that begins here belongs to the figure behind it.
fn leads(items: &[Item], at: usize, units: UnitSystem) -> bool {
    let Some((_, after)) = unit_at(items, at, units) else {
        return false;
    };
    // A sign stands behind its figure, unless nothing else is there for it.
    if items
        .get(at)
        .is_some_and(|item| item.glued && is_bare_sign(item))
    {
        return false;
    }
    let Some((_, end)) = number_at(items, after) else {
        return false;
    };
    if items
        .get(after)
        .is_some_and(|item| item.is(Concept::Article))
    {
        return false;
    }
    unit_at(items, end, units).is_none() || leads(items, end, units)
}

/// `lita 20`, `asilimia 5`, `%5`: the unit first.
fn unit_first(items: &[Item], at: usize, units: UnitSystem) -> Option<Amount> {
    if !leads(items, at, units) {
        return None;
    }
    let (unit, number) = unit_at(items, at, units)?;
    let (mut figure, mut end) = number_at(items, number)?;
    if items.get(number).is_some_and(|item| item.negative) {
        figure.value = -figure.value;
    }
    let mut upper = None;
    if items.get(end).is_some_and(joins_range)
        && let Some((other, after)) = upper_end(items, end, units)
    {
        upper = Some(other);
        end = after;
    }
    if let Some((part, after)) = and_a_fraction(items, end) {
        figure.value += part;
        end = after;
    }
    Some(Amount {
        figure,
        upper,
        unit,
        items: at..end,
        origin: Origin::Written,
    })
}

fn prefixed(items: &[Item], at: usize, unit: Unit) -> Option<Amount> {
    let link = |item: &Item| {
        item.is_filler()
            || item.is_sign(&[':', '='])
            || matches!(
                item.concept(),
                Some(Concept::Perhaps | Concept::Of | Concept::Water)
            )
    };
    let mut number = at + 1;
    while number < at + 6 && items.get(number).is_some_and(link) {
        number += 1;
    }
    let (figure, end) = number_at(items, number)?;
    Some(Amount {
        figure,
        upper: None,
        unit,
        items: at..end,
        origin: Origin::Written,
    })
}

fn joins_range(item: &Item) -> bool {
    item.is_sign(&['-', '~']) || item.is(Concept::RangeWord)
}

/// `- 6` after a 5, or `to 6`, or `or 6`; `and 6` before a percent sign ("between 5 and 6%", but
/// "4 and 5%" is no single figure either).
fn upper_end(items: &[Item], at: usize, units: UnitSystem) -> Option<(f64, usize)> {
    let joint = items.get(at)?;
    let (upper, end) = number_at(items, at + 1)?;
    let and_percent = joint.is(Concept::And)
        && unit_at(items, end, units).is_some_and(|(unit, _)| unit == Unit::Percent);
    (joins_range(joint) || joint.is(Concept::Or) || and_percent)
        .then(|| upper.certain())
        .flatten()
        .map(|upper| (upper, end))
}

fn repeated_in_brackets(items: &[Item], at: usize) -> Option<(f64, usize)> {
    if !items.get(at)?.is_sign(&['(']) {
        return None;
    }
    let (figure, end) = number_at(items, at + 1)?;
    items
        .get(end)?
        .is_sign(&[')'])
        .then_some((figure.value, end + 1))
}

/// `and a half` behind a unit: "a litre and a half".
fn and_a_fraction(items: &[Item], at: usize) -> Option<(f64, usize)> {
    if !items.get(at)?.is(Concept::And) {
        return None;
    }
    let after_article = if items.get(at + 1)?.is(Concept::Article) {
        at + 2
    } else {
        at + 1
    };
    if let Some(Tag::Fraction(value)) = items.get(after_article).map(|item| &item.tag) {
        return Some((*value, after_article + 1));
    }
    None
}

/// The number that begins at an item.
pub(super) fn number_at(items: &[Item], at: usize) -> Option<(Figure, usize)> {
    let item = items.get(at)?;
    match &item.tag {
        Tag::Unreadable => Some((Figure::GARBLED, at + 1)),
        Tag::Figure(figure) => Some(figure_at(items, at, *figure)),
        Tag::Number(_) | Tag::Scale(_) => words_at(items, at),
        Tag::Fraction(value) => Some(fraction_of(items, at + 1, *value)),
        Tag::Concept(Concept::Article) => match items.get(at + 1).map(|item| &item.tag) {
            Some(Tag::Scale(_)) => words_at(items, at + 1),
            // "a couple of", and "a five litre can".
            Some(Tag::Number(_)) => words_at(items, at + 1).map(|(figure, end)| {
                let of = items.get(end).is_some_and(|item| item.is(Concept::Of));
                (figure, if of { end + 1 } else { end })
            }),
            Some(Tag::Fraction(value)) => Some(fraction_of(items, at + 2, *value)),
            _ => Some((Figure::plain(1.0, Shape::Words), at + 1)),
        },
        Tag::Concept(_)
        | Tag::Date(_)
        | Tag::Language(_)
        | Tag::Other
        | Tag::Plain
        | Tag::Sign(_)
        | Tag::Unknown => None,
    }
}

/// "half", "half a", "quarter of a".
fn fraction_of(items: &[Item], mut end: usize, value: f64) -> (Figure, usize) {
    let of = items.get(end).is_some_and(|item| item.is(Concept::Of));
    let article_at = if of { end + 1 } else { end };
    if items
        .get(article_at)
        .is_some_and(|item| item.is(Concept::Article))
    {
        end = article_at + 1;
    }
    if let Some(Tag::Scale(scale)) = items.get(end).map(|item| &item.tag) {
        return (Figure::plain(value * scale, Shape::Words), end + 1);
    }
    (Figure::plain(value, Shape::Words), end)
}

fn figure_at(items: &[Item], at: usize, figure: Figure) -> (Figure, usize) {
    let mut figure = figure;
    let mut end = at + 1;
    if figure.shape == Shape::Fraction && figure.value < 1.0 {
        let (_, end) = fraction_of(items, end, figure.value);
        return (figure, end);
    }
    if let Some(item) = items.get(end) {
        match &item.tag {
            // 2 1/2
            Tag::Figure(part)
                if part.shape == Shape::Fraction
                    && part.value < 1.0
                    && figure.shape == Shape::Whole =>
            {
                figure.value += part.value;
                end += 1;
            }
            // 10 000: digits in groups; with other digits it could be two figures.
            Tag::Figure(group)
                if figure.shape == Shape::Whole
                    && group.shape == Shape::Whole
                    && !item.glued
                    && item.span.len() == 3
                    && figure.value < 1000.0
                    && figure.value >= 1.0
                    && group.certainty == Certainty::Plain =>
            {
                let grouped = figure.value * 1000.0 + group.value;
                figure = if group.value == 0.0 {
                    Figure {
                        value: grouped,
                        ..figure
                    }
                } else {
                    Figure {
                        value: group.value,
                        certainty: Certainty::Or(grouped),
                        ..figure
                    }
                };
                end += 1;
            }
            Tag::Scale(scale) => {
                figure.value *= scale;
                if let Certainty::Or(other) = figure.certainty {
                    figure.certainty = Certainty::Or(other * scale);
                }
                end += 1;
            }
            Tag::Fraction(value) if figure.shape == Shape::Whole => {
                // "3 quarters"
                figure.value *= value;
                end += 1;
            }
            _ => {}
        }
    }
    if let Some((part, after)) = and_a_fraction(items, end) {
        figure.value += part;
        end = after;
    }
    (figure, end)
}

fn words_at(items: &[Item], at: usize) -> Option<(Figure, usize)> {
    let mut total = 0.0;
    let mut current: Option<f64> = None;
    let mut end = at;
    while let Some(item) = items.get(end) {
        match &item.tag {
            Tag::Number(value) => {
                let fits = current.is_none_or(|current| {
                    (current % 100.0 == 0.0 && current >= 100.0)
                        || (current % 10.0 == 0.0
                            && (20.0..100.0).contains(&(current % 100.0))
                            && *value < 10.0)
                });
                if !fits {
                    break;
                }
                current = Some(current.unwrap_or(0.0) + value);
            }
            Tag::Scale(scale) if *scale < 1000.0 => {
                current = Some(current.unwrap_or(1.0) * scale);
            }
            Tag::Scale(scale) => {
                total += current.take().unwrap_or(1.0) * scale;
            }
            Tag::Concept(Concept::And)
                if (total > 0.0 || current.is_some_and(|current| current >= 100.0))
                    && matches!(
                        items.get(end + 1).map(|item| &item.tag),
                        Some(Tag::Number(_))
                    ) => {}
            _ => break,
        }
        end += 1;
    }
    if end == at {
        return None;
    }
    let mut value = total + current.unwrap_or(0.0);
    if items
        .get(end)
        .is_some_and(|item| item.is(Concept::DecimalWord))
    {
        let mut place = 0.1;
        let mut digit_at = end + 1;
        while let Some(digit) = items.get(digit_at).and_then(|item| match item.tag {
            Tag::Number(digit) if digit < 10.0 => Some(digit),
            Tag::Concept(Concept::Article) if place == 0.1 => Some(1.0),
            Tag::Figure(figure) if figure.value < 10.0 && place == 0.1 => Some(figure.value),
            _ => None,
        }) {
            value += digit * place;
            place /= 10.0;
            digit_at += 1;
        }
        if place == 0.1 {
            // "point twenty-five"
            if let Some(Tag::Number(tens)) = items.get(digit_at).map(|item| &item.tag) {
                let (decimals, after) = words_at(items, digit_at)
                    .map_or((*tens, digit_at + 1), |(figure, after)| {
                        (figure.value, after)
                    });
                value += decimals / 100.0;
                end = after;
            }
        } else {
            end = digit_at;
        }
        // Decimal places added one by one leave noise in the last bits.
        value = (value * 1e6).round() / 1e6;
    }
    if let Some(Tag::Fraction(part)) = items.get(end).map(|item| &item.tag)
        && (0.0..10.0).contains(&value)
        && value > 0.0
    {
        let (figure, end) = fraction_of(items, end + 1, value * part);
        return Some((figure, end));
    }
    if let Some((part, after)) = and_a_fraction(items, end) {
        value += part;
        end = after;
    }
    Some((Figure::plain(value, Shape::Words), end))
}

/// The unit that begins at an item.
fn unit_at(items: &[Item], at: usize, units: UnitSystem) -> Option<(Unit, usize)> {
    let item = items.get(at)?;
    let concept = item.concept()?;
    let litre = |litres, system| Some((Unit::Litres(litres, system), at + 1));
    let gallon = |system| match system {
        UnitSystem::Imperial => (litres_in::IMPERIAL_GALLON, UnitSystem::Imperial),
        UnitSystem::Metric | UnitSystem::Us => (litres_in::US_GALLON, UnitSystem::Us),
    };
    match concept {
        Concept::UsShort | Concept::UsWord | Concept::ImperialWord => {
            let system = if concept == Concept::ImperialWord {
                UnitSystem::Imperial
            } else {
                UnitSystem::Us
            };
            match unit_at(items, at + 1, system)? {
                (unit @ Unit::Litres(_, read), end) if read == system => Some((unit, end)),
                _ => None,
            }
        }
        Concept::Litre => litre(1.0, UnitSystem::Metric),
        Concept::Millilitre => litre(0.001, UnitSystem::Metric),
        Concept::Centilitre => litre(0.01, UnitSystem::Metric),
        Concept::CubicMetre => litre(1000.0, UnitSystem::Metric),
        Concept::Gallon => {
            let (litres, system) = gallon(units);
            litre(litres, system)
        }
        Concept::Quart => {
            let (litres, system) = gallon(units);
            litre(litres / 4.0, system)
        }
        Concept::Pint => {
            let (litres, system) = gallon(units);
            litre(litres / 8.0, system)
        }
        Concept::Cup => litre(litres_in::US_GALLON / 16.0, UnitSystem::Us),
        Concept::FluidOunce => {
            let (litres, system) = gallon(units);
            let ounces = match system {
                UnitSystem::Imperial => 160.0,
                UnitSystem::Metric | UnitSystem::Us => 128.0,
            };
            litre(litres / ounces, system)
        }
        Concept::Percent => Some((Unit::Percent, at + 1)),
        Concept::PerMille => Some((Unit::PerMille, at + 1)),
        Concept::Ppm => Some((Unit::Ppm, at + 1)),
        Concept::MgPerLitre => Some((Unit::MgPerLitre, at + 1)),
        Concept::GramPerLitre => Some((Unit::GramPerLitre, at + 1)),
        Concept::ChlorometricDegree => Some((Unit::ChlorometricDegree, at + 1)),
        Concept::Degree => match items.get(at + 1).and_then(Item::concept) {
            Some(Concept::Celsius) => Some((Unit::Celsius, at + 2)),
            Some(Concept::Fahrenheit) => Some((Unit::Fahrenheit, at + 2)),
            Some(Concept::ChlorometricDegree) => Some((Unit::ChlorometricDegree, at + 2)),
            _ => Some((Unit::Degree, at + 1)),
        },
        Concept::Celsius => Some((Unit::Celsius, at + 1)),
        Concept::Fahrenheit => Some((Unit::Fahrenheit, at + 1)),
        Concept::Milligram => Some((Unit::Milligram, at + 1)),
        Concept::Gram => Some((Unit::Grams(1.0), at + 1)),
        Concept::Kilogram => Some((Unit::Grams(1000.0), at + 1)),
        Concept::Micrometre => Some((Unit::Micrometre, at + 1)),
        Concept::Metre => Some((Unit::Metres(1.0), at + 1)),
        Concept::Centimetre => Some((Unit::Metres(0.01), at + 1)),
        Concept::Kilometre => Some((Unit::Metres(1000.0), at + 1)),
        Concept::Foot => Some((Unit::Metres(0.3048), at + 1)),
        Concept::Inch => Some((Unit::Metres(0.0254), at + 1)),
        Concept::Minute => Some((Unit::Minutes(1.0), at + 1)),
        Concept::Hour => Some((Unit::Minutes(60.0), at + 1)),
        Concept::Day => Some((Unit::Days(1.0), at + 1)),
        Concept::Week => Some((Unit::Days(7.0), at + 1)),
        Concept::Month => Some((Unit::Days(30.0), at + 1)),
        Concept::Year => Some((Unit::Days(365.0), at + 1)),
        Concept::Ntu => Some((Unit::Turbidity, at + 1)),
        Concept::Drop => Some((Unit::Drop, at + 1)),
        Concept::Capful => Some((Unit::Capful, at + 1)),
        Concept::Teaspoon | Concept::Tablespoon => Some((Unit::Spoon, at + 1)),
        _ => None,
    }
}
