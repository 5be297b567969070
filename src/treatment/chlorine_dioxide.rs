//! Chlorine dioxide: the label measures it, the longest label wait holds.
//!
//! In: the water. Out: four hours, and what they cover.
//! Promises the wait that the labels give for all conditions, never the shorter ones for clear
//! warm water. Does not know how strong a product is.

use super::condition;
use super::order::{DoseOrder, Warmth};
use super::outcome::{Caution, Cover, Coverage, Detail, Measure, Outcome, WaitBasis};
use super::source::Source;

/// Four hours for whatever can be had against *Cryptosporidium* (label directions, from memory;
/// a travel-medicine summary says the same).
const WAIT_MIN: f64 = 240.0;

/// From here on four hours do something to *Cryptosporidium*: at a fading 4 mg/L they reach
/// about 3.9 log at 20 °C but 1.0 at 5 °C by 40 CFR 141.720; US CDC rates it low to moderate.
const CRYPTOSPORIDIUM_FROM_CELSIUS: f64 = 20.0;

/// Label directions, four hours.
pub(super) fn treat(order: &DoseOrder) -> Outcome {
    let mut cautions = condition::first_cautions(&order.water, &order.people);
    cautions.extend([
        Caution::LabelFirst,
        Caution::NoShorterWait,
        Caution::CryptosporidiumSurvives,
    ]);
    Outcome {
        measure: Measure::ByLabel,
        dose: None,
        wait: Some(super::dose::minutes(WAIT_MIN)),
        wait_basis: WaitBasis::Rule,
        covers: Some(Coverage {
            bacteria: Cover::Yes,
            viruses: Cover::Yes,
            giardia: Cover::Yes,
            cryptosporidium: against_cryptosporidium(order.water.warmth),
        }),
        logs: None,
        cautions,
        sources: vec![Source::LabelDirections, Source::CdcBackcountry],
        boiling_point_c: None,
        detail: Detail::Plain,
    }
}

/// What four hours do against *Cryptosporidium*: something, and only in water measured warm.
pub(super) fn against_cryptosporidium(warmth: Warmth) -> Cover {
    match warmth {
        Warmth::Measured(temperature) if temperature.celsius() >= CRYPTOSPORIDIUM_FROM_CELSIUS => {
            Cover::Partly
        }
        Warmth::Measured(_) | Warmth::Cold | Warmth::Unknown => Cover::No,
    }
}
