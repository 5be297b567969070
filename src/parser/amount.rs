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
//! ```

use std::ops::Range;

use crate::quantity::{UnitSystem, litres_in};

use super::concept::Concept;
use super::lexicon::{Grammar, UnitOrder};
use super::number::{Figure, Shape};
use super::numeral::{and_a_fraction, number_at};
use super::tag::Item;

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
        && upper_end(items, amount.items.end, units).is_none()
    {
        return Some(amount);
    }
    if order == UnitOrder::EitherSide
        && let Some(amount) = unit_first(items, at, units)
    {
        return Some(amount);
    }
    if let Some(amount) = unit_and_a_half(items, at, units)
        .or_else(|| own_gallon(items, at, units))
        .or_else(|| bare_metre(items, at, units))
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
    let between = at
        .checked_sub(1)
        .and_then(|before| items.get(before))
        .is_some_and(|item| item.is(Concept::Between));
    let range = (!article)
        .then(|| upper_end(items, end, units).or_else(|| end_of_between(items, end, between)))
        .flatten()
        // "20 al 5%" is no range.
        .filter(|(upper, _)| {
            let by_word = items
                .get(end)
                .is_some_and(|item| item.is(Concept::RangeWord));
            !by_word || *upper >= figure.value
        })
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
        Unit::Metres(metres) => (metres - 1.0).abs() < f64::EPSILON,
        // "Un pour cent".
        Unit::Percent => !items.get(at + 1).is_some_and(is_bare_sign),
        _ => false,
    };
    if article && !countable {
        return None;
    }
    let mut figure = figure;
    let (unit, after) = system_behind(items, end, unit);
    end = after;
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
pub(super) fn is_counted_thing(item: &Item) -> bool {
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
    // A sign stands behind its figure, unless nothing else is there for it, and a single letter
    // before a figure is a preposition as soon as a unit.
    let Some(item) = items.get(at) else {
        return false;
    };
    if (item.glued && is_bare_sign(item)) || item.letters == 1 {
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

/// `litro e meio`: one and a half, and nobody says one.
fn unit_and_a_half(items: &[Item], at: usize, units: UnitSystem) -> Option<Amount> {
    let (unit, after) = unit_at(items, at, units)?;
    let whole = match unit {
        Unit::Litres(litres, _) => litres >= 0.9,
        Unit::Metres(metres) => metres >= 0.9,
        Unit::Minutes(minutes) => minutes >= 60.0,
        _ => false,
    };
    let (part, end) = and_a_fraction(items, after).filter(|_| whole)?;
    Some(Amount {
        figure: Figure::plain(1.0 + part, Shape::Words),
        upper: None,
        unit,
        items: at..end,
        origin: Origin::Written,
    })
}

/// "My gallon is full of spring water": one, unless its size is told.
fn own_gallon(items: &[Item], at: usize, units: UnitSystem) -> Option<Amount> {
    let gallon = items.get(at + 1).filter(|item| item.is(Concept::Gallon))?;
    let (unit, end) = unit_at(items, at + 1, units)?;
    let sized = items
        .iter()
        .any(|item| item.is(Concept::Litre) || item.is(Concept::Container));
    let owned = items.get(at)?.is(Concept::Possessive) && !sized && !gallon.glued;
    owned.then_some(Amount {
        figure: Figure::plain(1.0, Shape::Words),
        upper: None,
        unit,
        items: at..end,
        origin: Origin::Written,
    })
}

/// `qutruha mitr`: a metre across, and nobody says one.
fn bare_metre(items: &[Item], at: usize, units: UnitSystem) -> Option<Amount> {
    let (unit, end) = unit_at(items, at, units)?;
    let measured = at
        .checked_sub(1)
        .and_then(|before| items.get(before))
        .is_some_and(|item| item.is(Concept::Wide) || item.is(Concept::WaterDepth));
    let numbered = number_at(items, end).is_some();
    (unit == Unit::Metres(1.0) && measured && !numbered).then_some(Amount {
        figure: Figure::plain(1.0, Shape::Words),
        upper: None,
        unit,
        items: at..end,
        origin: Origin::Article,
    })
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
    if let Some((other, after)) = upper_end(items, end, units) {
        upper = Some(other);
        end = after;
    }
    if let Some((part, after)) = and_a_fraction(items, end) {
        figure.value += part;
        end = after;
    }
    let (unit, end) = system_behind(items, end, unit);
    Some(Amount {
        figure,
        upper,
        unit,
        items: at..end,
        origin: Origin::Written,
    })
}

/// `galones imperiales`: whose gallons, where the word stands behind.
fn system_behind(items: &[Item], end: usize, unit: Unit) -> (Unit, usize) {
    let told = items.get(end).and_then(|item| match item.concept() {
        Some(Concept::ImperialWord) => Some(UnitSystem::Imperial),
        Some(Concept::UsWord) => Some(UnitSystem::Us),
        _ => None,
    });
    let ratio = litres_in::IMPERIAL_GALLON / litres_in::US_GALLON;
    match (unit, told) {
        (Unit::Litres(litres, UnitSystem::Us), Some(UnitSystem::Imperial)) => {
            (Unit::Litres(litres * ratio, UnitSystem::Imperial), end + 1)
        }
        (Unit::Litres(litres, UnitSystem::Imperial), Some(UnitSystem::Us)) => {
            (Unit::Litres(litres / ratio, UnitSystem::Us), end + 1)
        }
        (Unit::Litres(_, read), Some(system)) if read == system => (unit, end + 1),
        _ => (unit, end),
    }
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
    // "20 ou de 25 litros".
    let of = joint.is(Concept::Or) && items.get(at + 1).is_some_and(|item| item.is(Concept::Of));
    let (upper, end) = number_at(items, if of { at + 2 } else { at + 1 })?;
    let and_percent = joint.is(Concept::And)
        && unit_at(items, end, units).is_some_and(|(unit, _)| unit == Unit::Percent);
    (joins_range(joint) || joint.is(Concept::Or) || and_percent)
        .then(|| upper.certain())
        .flatten()
        .map(|upper| (upper, end))
}

/// "Between 10 and 20 litres".
fn end_of_between(items: &[Item], at: usize, between: bool) -> Option<(f64, usize)> {
    if !between || !items.get(at)?.is(Concept::And) {
        return None;
    }
    let (upper, end) = number_at(items, at + 1)?;
    upper.certain().map(|upper| (upper, end))
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

/// Whether a word is a unit of volume or strength.
pub(super) const fn is_unit(concept: Concept) -> bool {
    matches!(
        concept,
        Concept::CubicMetre
            | Concept::Gallon
            | Concept::Litre
            | Concept::Milligram
            | Concept::Millilitre
            | Concept::Percent
            | Concept::PercentWord
    )
}
