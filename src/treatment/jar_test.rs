//! Jar tests: the same water with different doses, to find the dose of a tank.
//!
//! In: dose and free chlorine of each jar, the jar's size, perhaps the tank's.
//! Out: the dose that leaves what is aimed at, or why the jars do not show it.
//! Promises a dose between two jars that were read, never one beyond them.
//! Does not know what the solution is made of: it is the same for jar and tank.

use std::time::Duration;

use crate::request::JarReading;

use super::condition;
use super::measure;
use super::order::JarTestOrder;
use super::outcome::{Caution, Detail, JarFinding, JarVerdict, Measure, Outcome};
use super::rule;
use super::source::Source;

/// Two readings that differ by no more are the same to a field kit (common practice).
const NOISE_MG_PER_L: f64 = 0.05;

/// The finest division of the syringe that doses a jar: a drop.
const STEP_ML: f64 = measure::DROP_ML;

const SAME: f64 = 1e-9;

/// Which dose the jars point to.
pub(super) fn treat(order: &JarTestOrder) -> Outcome {
    if order.jars.is_empty() {
        return how_to(order);
    }
    let alkaline = condition::is_alkaline(order.ph);
    let (aim, wait_min) = aim_and_wait(alkaline);
    let jar_litres = order.jar.litres();
    let place = place(&order.jars, aim);
    let measure = match (place, order.tank) {
        // A jar without any solution may hold enough already.
        (Place::At(ml), Some(tank)) if ml > 0.0 => {
            // As told for each 1000 L: both figures of the answer agree.
            Measure::Liquid(measure::liquid_up(ml * tank.litres() / jar_litres))
        }
        (Place::At(_) | Place::Above | Place::Below | Place::Uneven, _) => Measure::Nothing,
    };
    let early = order
        .minutes
        .is_some_and(|minutes| minutes < f64::from(wait_min));
    Outcome {
        measure,
        wait: Some(Duration::from_secs(u64::from(wait_min) * 60)),
        cautions: cautions(place, early),
        sources: vec![Source::MsfCholA16, Source::WhoTn11],
        ..Outcome::without_dose(Detail::JarTest(JarFinding {
            verdict: verdict(place, jar_litres),
            aim_mg_per_l: aim,
            jar_litres,
        }))
    }
}

fn aim_and_wait(alkaline: bool) -> (f64, u32) {
    if alkaline {
        (
            rule::RESIDUAL_MORE_MG_PER_L,
            rule::RESIDUAL_WAIT_ALKALINE_MIN,
        )
    } else {
        (rule::RESIDUAL_MG_PER_L, rule::RESIDUAL_WAIT_MIN)
    }
}

/// mL of 1% solution for four jars of 20 L (Médecins Sans Frontières, cholera guideline,
/// appendix 16, first step).
const FIRST_JARS_ML: [f64; 4] = [1.0, 1.5, 2.0, 2.5];

/// How the test is done.
fn how_to(order: &JarTestOrder) -> Outcome {
    let alkaline = condition::is_alkaline(order.ph);
    let (aim_mg_per_l, wait_min) = aim_and_wait(alkaline);
    Outcome {
        wait: Some(Duration::from_secs(u64::from(wait_min) * 60)),
        sources: vec![Source::MsfCholA16, Source::WhoTn11],
        ..Outcome::without_dose(Detail::JarTest(JarFinding {
            verdict: JarVerdict::HowTo { ml: FIRST_JARS_ML },
            aim_mg_per_l,
            jar_litres: order.jar.litres(),
        }))
    }
}

/// Where the aim lies.
#[derive(Debug, Clone, Copy, PartialEq)]
enum Place {
    Above,
    Below,
    /// mL in a jar, as a syringe measures it.
    At(f64),
    Uneven,
}

impl Place {
    fn at(exact: f64, most: f64) -> Self {
        // The upper jar did leave enough: rounding needs not go past it.
        Self::At(measure::ceil_to(exact, STEP_ML).min(most))
    }
}

fn place(jars: &[JarReading], aim: f64) -> Place {
    let Some(jars) = even(jars) else {
        return Place::Uneven;
    };
    let (Some(first), Some(last)) = (jars.first(), jars.last()) else {
        return Place::Uneven;
    };
    if first.mg_per_l > aim + SAME && jars.iter().all(|jar| jar.mg_per_l >= aim) {
        return Place::Above;
    }
    if jars.iter().all(|jar| jar.mg_per_l < aim - SAME) {
        return Place::Below;
    }
    if last.mg_per_l < aim - SAME {
        // One jar did reach the aim, and the largest dose did not quite.
        return Place::Uneven;
    }
    // Readings may waver by their noise: the last jar below the aim leaves the larger dose.
    let crossing = jars.windows(2).rev().find_map(|pair| match pair {
        [low, high] if low.mg_per_l < aim - SAME => Some((low, high)),
        _ => None,
    });
    match crossing {
        Some((low, high)) => {
            let share = (aim - low.mg_per_l) / (high.mg_per_l - low.mg_per_l);
            let exact = low.ml + (high.ml - low.ml) * share.min(1.0);
            Place::at(exact, high.ml)
        }
        None => Place::at(first.ml, first.ml),
    }
}

/// The jars by dose, each dose once; none if more solution left less chlorine, or if one dose
/// was read in two ways, or if a figure is none.
fn even(jars: &[JarReading]) -> Option<Vec<JarReading>> {
    let believed = |value: f64| value.is_finite() && value >= 0.0;
    if !jars
        .iter()
        .all(|jar| believed(jar.ml) && believed(jar.mg_per_l))
    {
        return None;
    }
    let mut sorted = jars.to_vec();
    sorted.sort_by(|a, b| a.ml.total_cmp(&b.ml));
    let mut kept: Vec<JarReading> = Vec::new();
    let mut most: f64 = 0.0;
    for jar in sorted {
        match kept.last() {
            Some(before) if jar.ml - before.ml < SAME => {
                if (jar.mg_per_l - before.mg_per_l).abs() > SAME {
                    return None;
                }
            }
            Some(_) | None => {
                // Against the highest so far: a slow slide is no noise.
                if jar.mg_per_l < most - NOISE_MG_PER_L - SAME {
                    return None;
                }
                most = most.max(jar.mg_per_l);
                kept.push(jar);
            }
        }
    }
    Some(kept)
}

fn verdict(place: Place, jar_litres: f64) -> JarVerdict {
    match place {
        Place::Above => JarVerdict::AllAbove,
        Place::Below => JarVerdict::AllBelow,
        Place::At(ml) => JarVerdict::Found {
            ml_per_jar: ml,
            ml_per_1000_l: ml * 1000.0 / jar_litres,
        },
        Place::Uneven => JarVerdict::Uneven,
    }
}

/// Jars that were read too early may still lose chlorine: then the test comes first.
fn cautions(place: Place, early: bool) -> Vec<Caution> {
    match (place, early) {
        (Place::At(_), true) => vec![Caution::RetestLater, Caution::StirTank],
        (Place::At(_), false) => vec![Caution::StirTank, Caution::RetestLater],
        (Place::Above | Place::Below | Place::Uneven, _) => vec![Caution::RetestLater],
    }
}
