//! Boiling.
//!
//! In: how high the kitchen stands, how the water looks.
//! Out: minutes at a rolling boil, and the temperature that this is.
//! Promises the stricter of the US agencies' rules. Does not know stoves.

use super::atmosphere;
use super::condition;
use super::dose::minutes;
use super::order::{BoilOrder, Elevation};
use super::outcome::{Caution, Cover, Coverage, Detail, Measure, Outcome, WaitBasis};
use super::source::Source;

/// A rolling boil for a minute (EPA 816-F-15-003).
const LOW_MIN: f64 = 1.0;

/// Three minutes higher up (same sheet).
const HIGH_MIN: f64 = 3.0;

/// From where: 5,000 ft is 1,524 m, taken at the round figure below it. The sheet itself prints
/// 1,000 m for it, US CDC 2,000 m, and WHO asks for no more than a rolling boil anywhere.
pub const BOIL_LONGER_ABOVE_METRES: f64 = 1500.0;

/// Minutes at a rolling boil.
pub(super) fn treat(order: &BoilOrder) -> Outcome {
    let mut cautions = Vec::new();
    if condition::is_cloudy(order.clarity) {
        cautions.push(Caution::StrainFirst);
    }
    let (boil, boiling_point_c) = match order.elevation {
        Elevation::High => (HIGH_MIN, None),
        Elevation::Measured(altitude) => {
            let boil = if altitude.metres() > BOIL_LONGER_ABOVE_METRES {
                HIGH_MIN
            } else {
                LOW_MIN
            };
            (boil, Some(atmosphere::boiling_point(altitude)))
        }
        Elevation::Unknown => {
            cautions.push(Caution::HigherBoilLonger);
            (LOW_MIN, None)
        }
    };
    cautions.extend([Caution::ChemicalsStay, Caution::SporesSurvive]);
    let mut sources = vec![
        Source::Epa816F15003,
        Source::CdcEmergencyWater,
        Source::WhoFwcWsh1502,
    ];
    if boiling_point_c.is_some() {
        sources.extend([Source::Icao1964, Source::IapwsR797]);
    }
    Outcome {
        measure: Measure::Nothing,
        dose: None,
        wait: Some(minutes(boil)),
        wait_basis: WaitBasis::Rule,
        covers: Some(Coverage {
            bacteria: Cover::Yes,
            viruses: Cover::Yes,
            giardia: Cover::Yes,
            cryptosporidium: Cover::Yes,
        }),
        logs: None,
        cautions,
        sources,
        boiling_point_c,
        detail: Detail::Plain,
    }
}
