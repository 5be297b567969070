//! A jar test: the same water with different doses, each read after the wait.
//!
//! In: items, amounts and scope.
//! Out: dose and reading of each jar, and the size of one jar.
//! Promises that doses and readings are paired only where there are as many of one as of the
//! other, and that a message without both is no jar test.
//!
//! ```text
//! lists = dose {"," dose} "mL" … reading {"," reading} ["mg/L"]
//! pairs = (dose "mL" [":" | "="] reading ["mg/L"]) {"," …}
//! ```

use crate::request::JarReading;

use super::amount::{Amount, Unit};
use super::concept::Concept;
use super::scope::Scope;
use super::tag::Item;

/// What a message tells of a jar test.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Jars {
    /// Each jar, in the order told.
    pub(super) readings: Vec<JarReading>,
    /// Size of one jar, L.
    pub(super) jar_l: Option<f64>,
    /// The tank to be dosed, L.
    pub(super) tank_l: Option<f64>,
}

/// More solution than this in a jar is no trial dose, mL.
const DOSE_MAX_ML: f64 = 100.0;
/// No kit shows more, mg/L.
const READING_MAX: f64 = 20.0;
/// What is larger is the tank and not a jar, L.
const JAR_MAX_L: f64 = 60.0;

/// One figure of the message, in its part.
#[derive(Debug, Clone, Copy, PartialEq)]
enum Figure {
    Bare(f64),
    Dose(f64),
    Reading(f64),
    /// Something else stands between.
    Break,
}

/// Reads a jar test, if the message tells of one.
pub(super) fn jars(items: &[Item], amounts: &[Amount], scope: &Scope) -> Option<Jars> {
    let stated = || {
        amounts
            .iter()
            .filter(|amount| scope.stated(amount.items.start))
    };
    let told = items
        .iter()
        .enumerate()
        .any(|(i, item)| item.is(Concept::JarTest) && scope.stated(i));
    let millilitres = stated().filter(|amount| is_dose(amount)).count();
    if millilitres == 0 {
        return None;
    }
    let figures: Vec<Figure> = stated().map(|amount| figure(items, amount)).collect();
    let readings = pairs(&figures).or_else(|| lists(&figures))?;
    // Three doses with three readings are a jar test, whatever it is called; two may be chance.
    let named = told || items.iter().any(speaks_of_test);
    if !named && readings.len() < 3 {
        return None;
    }
    let litres = |tank: bool| {
        stated()
            .filter(|amount| matches!(amount.unit, Unit::Litres(factor, _) if factor > 0.001))
            .filter_map(Amount::value)
            .find(|litres| (*litres > JAR_MAX_L) == tank)
    };
    Some(Jars {
        readings,
        jar_l: litres(false),
        tank_l: litres(true),
    })
}

fn speaks_of_test(item: &Item) -> bool {
    item.is(Concept::Residual)
}

fn is_dose(amount: &Amount) -> bool {
    matches!(amount.unit, Unit::Litres(factor, _) if factor <= 0.001)
        && amount.figure.value <= DOSE_MAX_ML
}

fn figure(items: &[Item], amount: &Amount) -> Figure {
    // "4 buckets of 20 L" counts buckets, "bucket two" names one.
    let counts = items
        .get(amount.items.end)
        .is_some_and(|item| item.is(Concept::Container) || item.is(Concept::Times))
        || amount
            .items
            .start
            .checked_sub(1)
            .and_then(|before| items.get(before))
            .is_some_and(|item| item.is(Concept::Container));
    match (amount.value(), amount.unit) {
        (Some(value), Unit::Pieces) if !counts && value <= DOSE_MAX_ML => Figure::Bare(value),
        (Some(value), Unit::MgPerLitre | Unit::Ppm) if value <= READING_MAX => {
            Figure::Reading(value)
        }
        (Some(_), Unit::Litres(..)) if is_dose(amount) => Figure::Dose(amount.figure.value),
        _ => Figure::Break,
    }
}

/// Dose and reading by turns: each dose with its unit, its reading behind it.
fn pairs(figures: &[Figure]) -> Option<Vec<JarReading>> {
    let relevant: Vec<Figure> = figures
        .iter()
        .copied()
        .filter(|figure| *figure != Figure::Break)
        .collect();
    if relevant.len() < 4 || !relevant.len().is_multiple_of(2) {
        return None;
    }
    relevant
        .chunks(2)
        .map(|pair| match pair {
            [Figure::Dose(ml), Figure::Bare(mg) | Figure::Reading(mg)] => Some(JarReading {
                ml: *ml,
                mg_per_l: *mg,
            }),
            _ => None,
        })
        .collect()
}

/// All doses, the last with its unit or each, then as many readings.
fn lists(figures: &[Figure]) -> Option<Vec<JarReading>> {
    let last_dose = figures
        .iter()
        .rposition(|figure| matches!(figure, Figure::Dose(_)))?;
    let run = |part: &[Figure], of: fn(&Figure) -> Option<f64>| -> Vec<f64> {
        part.iter().map_while(of).collect()
    };
    let mut doses: Vec<f64> = figures
        .get(..=last_dose)?
        .iter()
        .rev()
        .map_while(|figure| match figure {
            Figure::Bare(value) | Figure::Dose(value) => Some(*value),
            Figure::Break | Figure::Reading(_) => None,
        })
        .collect();
    doses.reverse();
    let behind = figures.get(last_dose + 1..)?;
    let first = behind
        .iter()
        .position(|figure| matches!(figure, Figure::Bare(_) | Figure::Reading(_)))?;
    // A count or a time may stand between the two lists; the readings are the longest run.
    let mut best: Vec<f64> = Vec::new();
    for start in first..behind.len() {
        let readings = run(behind.get(start..)?, |figure| match figure {
            Figure::Bare(value) | Figure::Reading(value) => Some(*value),
            Figure::Break | Figure::Dose(_) => None,
        });
        if readings.len() > best.len() {
            best = readings;
        }
    }
    // "4 buckets" without a word that we know: one figure too many at the head.
    if best.len() == doses.len() + 1 && best.first() == Some(&(doses.len() as f64)) {
        best.remove(0);
    }
    (doses.len() == best.len() && doses.len() >= 2).then(|| {
        doses
            .into_iter()
            .zip(best)
            .map(|(ml, mg_per_l)| JarReading { ml, mg_per_l })
            .collect()
    })
}
