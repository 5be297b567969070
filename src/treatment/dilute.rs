//! Cleaning, hand and stock solutions.
//!
//! In: the product and its strength, the strength wanted, how much of it.
//! Out: mL and water, grams or tablets, by the formulas of US CDC Appendix E.
//! Promises a solution made up TO its volume, at least as strong as asked and, measured by mL or
//! gram, no more than a quarter stronger.
//! Does not know what it is for, nor that the dialogue asks again when the product is too weak.

use crate::quantity::{CleaningTabletMass, Concentration, Strength};

use super::dose::minutes;
use super::measure;
use super::nadcc;
use super::order::{BulkChlorine, CleaningChlorine, DiluteOrder};
use super::outcome::{Caution, Detail, Dilution, Measure, Outcome, PowderMeasure};
use super::source::Source;

/// A surface stays wet with it so long (cholera guideline, appendix 15).
///
/// DIFFERENCE: one hospital paper prints 30 min for 0.5%; DECISIONS settles on 15.
const CONTACT_MIN: f64 = 15.0;

/// 1% is so many mg/L.
const MG_PER_LITRE_OF_PERCENT: f64 = 10_000.0;

/// Powder for a solution weaker than this may be measured as 1% stock.
const STOCK_PERCENT: f64 = 1.0;

/// Whole tablets may make a solution this much stronger than asked; beyond it they make more of it.
const MOST_OVER: f64 = 1.25;

/// What was worked out for one form of product.
struct Made {
    measure: Measure,
    /// Active chlorine that it brings, mg.
    mg: f64,
    dilution: Dilution,
    source: Source,
}

/// How the product and the water go together.
pub(super) fn treat(order: &DiluteOrder) -> Outcome {
    let made = match order.from {
        CleaningChlorine::Bulk(BulkChlorine::Liquid(strength)) => liquid(order, strength),
        CleaningChlorine::Bulk(BulkChlorine::Powder(strength)) => powder(order, strength),
        CleaningChlorine::Tablet(mass) => tablets(order, mass),
    };
    let mut sources = vec![made.source];
    // Fresh every day: one appendix says it of the 1% stock (a week, from memory elsewhere, gives
    // way to it), the other of weaker solutions.
    for source in [
        Source::CdcAppendixE,
        Source::MsfCholeraAppendix15,
        if made.dilution.target_percent < STOCK_PERCENT {
            Source::GtfccAppendix9
        } else {
            Source::GtfccAppendix14
        },
    ] {
        if !sources.contains(&source) {
            sources.push(source);
        }
    }
    Outcome {
        measure: made.measure,
        dose: Some(Concentration::from_mg_per_litre(
            made.mg / made.dilution.litres,
        )),
        wait: Some(minutes(CONTACT_MIN)),
        cautions: vec![
            Caution::NeverMix,
            Caution::GlovesAndAir,
            Caution::FreshDaily,
            Caution::NotForDrinking,
            Caution::KeepFromChildren,
        ],
        sources,
        ..Outcome::without_dose(Detail::Dilution(made.dilution))
    }
}

/// What every form has in common.
fn plain(order: &DiluteOrder) -> Dilution {
    Dilution {
        target_percent: order.target.percent(),
        litres: order.volume.litres(),
        parts_water: None,
        water_ml: None,
        grams_per_litre: None,
        tablets_per_litre: None,
    }
}

/// Parts of water to one part: strength over target, less one.
fn liquid(order: &DiluteOrder, strength: Strength) -> Made {
    let total_ml = order.volume.litres() * 1000.0;
    let parts = (strength.percent() / order.target.percent()).max(1.0);
    let needed = measure::liquid_up(total_ml / parts);
    // As strong as asked already, or so near it that no hand could measure the water.
    let as_it_is = measure::ceil(parts) <= 1.0 || needed.ml >= total_ml;
    let product = if as_it_is {
        measure::liquid_exactly(total_ml)
    } else {
        needed
    };
    Made {
        measure: Measure::Liquid(product),
        mg: product.ml * strength.mg_per_ml(),
        dilution: Dilution {
            parts_water: Some(if as_it_is {
                0.0
            } else {
                hundredths(parts - 1.0)
            }),
            water_ml: Some(if as_it_is { 0.0 } else { total_ml - product.ml }),
            ..plain(order)
        },
        source: Source::CdcAppendixE,
    }
}

/// Grams to the litre: target over strength, times a thousand; made up to the litre.
fn powder(order: &DiluteOrder, strength: Strength) -> Made {
    let mg_per_gram = strength.percent() * 10.0;
    let share = (order.target.percent() / strength.percent()).min(1.0);
    let per_litre = share * 1000.0;
    let weighed = measure::powder_up(per_litre * order.volume.litres(), mg_per_gram);
    let powder = PowderMeasure {
        // A 1% stock cannot make anything as strong as itself or stronger.
        stock: weighed
            .stock
            .filter(|_| order.target.percent() < STOCK_PERCENT),
        ..weighed
    };
    Made {
        measure: Measure::Powder(powder),
        mg: powder.grams * mg_per_gram,
        dilution: Dilution {
            grams_per_litre: Some(hundredths(per_litre)),
            ..plain(order)
        },
        source: Source::CdcAppendixE,
    }
}

/// Whole tablets, upward; a tablet too large for the volume makes more of it, not a solution
/// that burns (0.05% is for hands: one tablet of 5 g in a litre would be ten times that).
fn tablets(order: &DiluteOrder, mass: CleaningTabletMass) -> Made {
    let (mg_each, source) = nadcc::available_chlorine(mass.mg());
    let mg_per_litre = order.target.percent() * MG_PER_LITRE_OF_PERCENT;
    let asked = order.volume.litres();
    let count = measure::tablets_up(asked * mg_per_litre / mg_each);
    let mg = f64::from(count) * mg_each;
    let over = mg / (asked * mg_per_litre);
    let litres = if over > MOST_OVER * (1.0 + 1e-9) {
        let made = mg / mg_per_litre;
        measure::floor_to(made, if made < 10.0 { 0.01 } else { 0.1 }).max(asked)
    } else {
        asked
    };
    Made {
        measure: Measure::Tablets(count),
        mg,
        dilution: Dilution {
            litres,
            tablets_per_litre: Some(hundredths(mg_per_litre / mg_each)),
            ..plain(order)
        },
        source,
    }
}

fn hundredths(value: f64) -> f64 {
    (value * 100.0).round() / 100.0
}
