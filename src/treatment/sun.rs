//! Solar disinfection in bottles.
//!
//! In: the sky, the bottle, how the water looks.
//! Out: hours in the sun, or that it will not do.
//! Promises six hours only under a sky that was said to be bright. Does not know the season.

use crate::request::Sky;

use super::condition;
use super::dose::minutes;
use super::order::SunOrder;
use super::outcome::{Caution, Cover, Coverage, Detail, Measure, Outcome, WaitBasis};
use super::source::Source;

/// Six hours under a bright sky (method summary of 2007; US CDC 2011).
const BRIGHT_MIN: f64 = 360.0;

/// Two days in a row under cloud (same sources).
const TWO_DAYS_MIN: f64 = 2880.0;

/// The largest bottle, in litres (US CDC 2011).
pub const SUN_BOTTLE_MAX_LITRES: f64 = 2.0;

/// Hours in the sun.
pub(super) fn treat(order: &SunOrder) -> Outcome {
    let covers = |bacteria, others| Coverage {
        bacteria,
        viruses: others,
        giardia: others,
        cryptosporidium: others,
    };
    let too_large = order
        .bottle
        .is_some_and(|bottle| bottle.litres() > SUN_BOTTLE_MAX_LITRES * (1.0 + 1e-9));
    let mut cautions = Vec::new();
    // One day gave a complete kill about half the time in a field study, two days always.
    let (wait, covers) = match order.sky {
        Some(Sky::Sunny) => (Some(BRIGHT_MIN), covers(Cover::Yes, Cover::Partly)),
        Some(Sky::Cloudy) | None => (Some(TWO_DAYS_MIN), covers(Cover::Yes, Cover::Partly)),
        Some(Sky::Rain) => {
            cautions.push(Caution::NotInRain);
            (None, covers(Cover::No, Cover::No))
        }
    };
    if too_large {
        cautions.push(Caution::BottleSize);
    }
    if condition::is_cloudy(order.clarity) {
        cautions.push(Caution::StrainFirst);
    }
    if order.sky.is_none() {
        cautions.push(Caution::TwoDays);
    }
    cautions.push(Caution::PrintTest);
    if !too_large {
        cautions.push(Caution::BottleSize);
    }
    Outcome {
        measure: Measure::Nothing,
        dose: None,
        wait: wait.map(minutes),
        wait_basis: WaitBasis::Rule,
        covers: Some(covers),
        logs: None,
        cautions,
        sources: vec![
            Source::EawagSodis2007,
            Source::CdcSodis2011,
            Source::WaterResearch3747,
        ],
        boiling_point_c: None,
        detail: Detail::Plain,
    }
}
