//! Shock chlorination of a well.
//!
//! In: the well's width and depth of water, and a chlorine product by the mL or gram.
//! Out: how much goes into the well, how long it stands, and the solution for its walls.
//! Promises at least 100 mg/L in all the water and never 500; the volume is not rounded down.
//! Does not know how the water is pumped out, or what keeps polluting it.

use std::f64::consts::PI;
use std::time::Duration;

use crate::quantity::{Concentration, Ph, Strength};
use crate::request::Clarity;

use super::measure;
use super::need::Need;
use super::order::{BulkChlorine, WellOrder};
use super::outcome::{Caution, Detail, Outcome, WellFinding};
use super::source::Source;

/// Free chlorine in all the water, mg/L (guidelines on disinfectants, WHO and UNHCR, 1997; a US
/// state's law asks for the same at least, and for 500 mg/L at most: COMAR 26.04.04.24).
// DIFFERENCE: a ground-water trust's quart for 50 gallons comes to 200-300 mg/L, for drilled
// wells; DECISIONS: wells.
const SHOCK_MG_PER_L: f64 = 100.0;

/// For brushing the walls above the water, mg/L (same guidelines).
const WALL_MG_PER_L: f64 = 200.0;

/// One bucket of it: 200 mL of 1% solution in 10 L (relief engineers' answer 5209).
const WALL_LITRES: f64 = 10.0;

/// mg of chlorine in a mL of 1% stock, which walls are brushed with where the product is a powder.
const STOCK_MG_PER_ML: f64 = 10.0;

/// Hours of standing (an extension text: 12 h, rather overnight; US CDC's flood page: overnight).
const STAND_HOURS: u64 = 12;

/// Minutes of standing in emergency work (WHO, Technical note 1).
const EMERGENCY_WAIT_MIN: u32 = 30;

/// Pumped out until no more than this is left, mg/L (same note, half an hour after it refilled).
pub(super) const READY_MG_PER_L: f64 = 0.5;

/// Shock chlorination works at this pH (a ground-water trust's page on wells).
const WORKING_PH: std::ops::RangeInclusive<f64> = 6.0..=7.5;

/// What goes into the well.
pub(super) fn treat(order: &WellOrder) -> Outcome {
    let litres = litres(order);
    let given = need(order.with, SHOCK_MG_PER_L * litres).rounded_up();
    let unfit_ph = unfit(order.ph);
    Outcome {
        measure: given.measure,
        dose: Some(Concentration::from_mg_per_litre(given.mg / litres)),
        wait: Some(Duration::from_secs(STAND_HOURS * 3600)),
        cautions: cautions(order.with, order.clarity, unfit_ph),
        sources: sources(unfit_ph),
        ..Outcome::without_dose(Detail::Well(WellFinding {
            litres: measure::ceil(litres),
            ready_mg_per_l: READY_MG_PER_L,
            emergency_wait_min: EMERGENCY_WAIT_MIN,
            wall_mg_per_l: WALL_MG_PER_L,
            wall_ml: wall_ml(order.with),
            wall_litres: WALL_LITRES,
        }))
    }
}

/// Water in a round well: π r² h. The dose is reckoned from the exact figure: a whole litre is
/// much in the narrowest pipe, and nothing in a dug well.
fn litres(order: &WellOrder) -> f64 {
    let radius = order.diameter.metres() / 2.0;
    PI * radius * radius * order.water_depth.metres() * 1000.0
}

/// 1% is 10 mg in each mL, and in each gram of a powder.
fn need(with: BulkChlorine, mg: f64) -> Need {
    match with {
        BulkChlorine::Liquid(strength) => Need::Liquid {
            ml: mg / strength.mg_per_ml(),
            mg_per_ml: strength.mg_per_ml(),
        },
        BulkChlorine::Powder(strength) => {
            let mg_per_gram = mg_per_gram(strength);
            Need::Powder {
                grams: mg / mg_per_gram,
                mg_per_gram,
            }
        }
    }
}

fn mg_per_gram(strength: Strength) -> f64 {
    strength.percent() * 10.0
}

fn wall_ml(with: BulkChlorine) -> f64 {
    let mg_per_ml = match with {
        BulkChlorine::Liquid(strength) => strength.mg_per_ml(),
        BulkChlorine::Powder(_) => STOCK_MG_PER_ML,
    };
    measure::liquid_up(WALL_MG_PER_L * WALL_LITRES / mg_per_ml).ml
}

fn unfit(ph: Option<Ph>) -> bool {
    ph.is_some_and(|ph| !WORKING_PH.contains(&ph.ph()))
}

fn cautions(with: BulkChlorine, clarity: Option<Clarity>, unfit_ph: bool) -> Vec<Caution> {
    let mut cautions = vec![Caution::NotUntilPumped];
    match clarity {
        // A well is looked into from above: who did not say that it is clear may not know.
        Some(Clarity::Cloudy) | None => cautions.push(Caution::WellClearFirst),
        Some(Clarity::Clear) => {}
    }
    if unfit_ph {
        cautions.push(Caution::WellPh);
    }
    if let BulkChlorine::Liquid(_) = with {
        cautions.push(Caution::UnscentedOnly);
    }
    cautions.extend([
        Caution::NeverMix,
        Caution::GlovesAndAir,
        Caution::KeepTreating,
    ]);
    cautions
}

fn sources(unfit_ph: bool) -> Vec<Source> {
    let mut sources = vec![
        Source::WhoUnhcr1997,
        Source::Comar,
        Source::IlExt,
        Source::CdcWell2004,
        Source::WhoTn1,
        Source::Kp5209,
    ];
    if unfit_ph {
        sources.push(Source::Agwt);
    }
    sources
}
