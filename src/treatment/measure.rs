//! Rounding to what a hand can measure.
//!
//! In: exact amounts.
//! Out: whole drops, mL, spoons, grams and tablets.
//! Promises that rounding goes upward (an underdose is the danger), by no more than a quarter
//! once the amount is over a few drops; and downward only where a ceiling is asked for.
//! Does not know products.

use super::outcome::{LiquidMeasure, PowderMeasure, Spoon, SpoonMeasure, StockMeasure};

/// A drop, in mL: 20 drops to the mL (pharmacopoeia, USP general chapter 1101). Real drops of
/// water are larger, which errs on the safe side.
pub(super) const DROP_ML: f64 = 0.05;
const DROPS_PER_ML: f64 = 20.0;

/// Above this many drops nobody counts any more (common practice).
const DROPS_COUNTED: f64 = 40.0;

/// Floating-point noise, relative: 40.000 000 01 drops are 40.
const NOISE: f64 = 1e-9;

/// Below this many grams a field scale is no use, and a stock solution is made (common practice).
const GRAMS_WEIGHED: f64 = 5.0;

/// mg of chlorine in a mL of the 1% stock solution.
const STOCK_MG_PER_ML: f64 = 10.0;

/// Upward to a whole number.
pub(super) fn ceil(value: f64) -> f64 {
    (value * (1.0 - NOISE)).ceil()
}

/// Downward to a whole number.
pub(super) fn floor(value: f64) -> f64 {
    (value * (1.0 + NOISE)).floor()
}

/// Upward to a multiple of `step`.
pub(super) fn ceil_to(value: f64, step: f64) -> f64 {
    tidy(ceil(value / step) * step)
}

/// Downward to a multiple of `step`.
pub(super) fn floor_to(value: f64, step: f64) -> f64 {
    tidy(floor(value / step) * step)
}

/// Takes the noise off a multiple of a decimal step. A microgram and a nanolitre are below
/// anything measured.
fn tidy(value: f64) -> f64 {
    (value * 1e6).round() / 1e6
}

/// The finest division of the syringe, spoon or cup that measures so much (common practice).
/// Each step divides the next range's end, so rounding keeps the order of amounts.
fn step_ml(ml: f64) -> f64 {
    if ml <= 10.0 {
        0.5
    } else if ml <= 50.0 {
        1.0
    } else if ml <= 100.0 {
        5.0
    } else if ml <= 500.0 {
        10.0
    } else if ml <= 1000.0 {
        50.0
    } else {
        100.0
    }
}

/// A liquid, upward: whole drops while they can be counted, then mL.
pub(super) fn liquid_up(ml: f64) -> LiquidMeasure {
    let drops = ceil(ml * DROPS_PER_ML).max(1.0);
    if drops <= DROPS_COUNTED {
        liquid(drops)
    } else {
        let exact = drops * DROP_ML;
        liquid(ceil_to(exact, step_ml(exact)) * DROPS_PER_ML)
    }
}

/// A liquid, downward, for a ceiling that must not be passed; nothing if it is below a drop.
pub(super) fn liquid_down(ml: f64) -> Option<LiquidMeasure> {
    let drops = floor(ml * DROPS_PER_ML);
    if drops < 1.0 {
        None
    } else if drops <= DROPS_COUNTED {
        Some(liquid(drops))
    } else {
        let exact = drops * DROP_ML;
        Some(liquid(floor_to(exact, step_ml(exact)) * DROPS_PER_ML))
    }
}

/// `drops` is whole already but for noise. A cast saturates: drinking water stays far below, and
/// past 200 m³ of product, for a well like a lake, the mL alone hold.
/// A liquid that is not rounded: all there is of it.
pub(super) fn liquid_exactly(ml: f64) -> LiquidMeasure {
    liquid(ml * DROPS_PER_ML)
}

/// An amount for a shopping list, upward to two significant figures once it is over a thousand
/// (mL or grams): never more than a tenth over, and no spoons.
fn bulk_step(amount: f64) -> f64 {
    10.0_f64.powf(amount.log10().floor() - 1.0)
}

/// A liquid to be ordered. Drops beyond what a `u32` holds saturate; the mL are right.
pub(super) fn liquid_order(ml: f64) -> LiquidMeasure {
    let measured = if ml > 1000.0 {
        liquid(ceil_to(ml, bulk_step(ml)) * DROPS_PER_ML)
    } else {
        liquid_up(ml)
    };
    LiquidMeasure {
        spoon: None,
        ..measured
    }
}

/// Powder to be ordered.
pub(super) fn powder_order(grams: f64) -> PowderMeasure {
    let step = if grams > 1000.0 {
        bulk_step(grams)
    } else {
        step_grams(grams)
    };
    PowderMeasure {
        grams: ceil_to(grams, step),
        stock: None,
    }
}

/// `drops` is whole already but for noise. A cast saturates, and the limits keep it far below.
fn liquid(drops: f64) -> LiquidMeasure {
    let ml = tidy(drops * DROP_ML);
    LiquidMeasure {
        drops: drops.round() as u32,
        ml,
        spoon: spoon(ml),
    }
}

/// Volumes of kitchen spoons: the US ones are the smallest in use and must still hold enough;
/// the metric ones are the largest and must not hold too much (reference table
/// `drops_and_measures`, UNIT-TABLE).
const TEASPOON_ML: (f64, f64) = (4.928_921_593_75, 5.0);
const TABLESPOON_ML: (f64, f64) = (14.786_764_781_25, 15.0);

fn spoon(ml: f64) -> Option<SpoonMeasure> {
    if ml < 1.0 {
        return None;
    }
    let teaspoons = ceil_to(ml / TEASPOON_ML.0, 0.25);
    let tablespoons = ceil_to(ml / TABLESPOON_ML.0, 0.5);
    let half_teaspoons = ceil_to(ml / TEASPOON_ML.0, 0.5);
    let fits = |count: f64, most: f64, largest: f64| count <= most && count * largest <= ml * 1.25;
    if fits(teaspoons, 3.0, TEASPOON_ML.1) {
        Some(SpoonMeasure {
            count: teaspoons,
            spoon: Spoon::Teaspoon,
        })
    } else if fits(tablespoons, 8.0, TABLESPOON_ML.1) {
        Some(SpoonMeasure {
            count: tablespoons,
            spoon: Spoon::Tablespoon,
        })
    } else if fits(half_teaspoons, 6.0, TEASPOON_ML.1) {
        Some(SpoonMeasure {
            count: half_teaspoons,
            spoon: Spoon::Teaspoon,
        })
    } else {
        None
    }
}

fn step_grams(grams: f64) -> f64 {
    if grams < 1.0 {
        0.01
    } else if grams < 10.0 {
        0.1
    } else if grams < 100.0 {
        1.0
    } else if grams < 1000.0 {
        5.0
    } else {
        10.0
    }
}

/// Powder that carries `mg_per_gram`, upward, never more than a quarter over.
pub(super) fn powder_up(grams: f64, mg_per_gram: f64) -> PowderMeasure {
    let mut step = step_grams(grams);
    let mut rounded = ceil_to(grams, step);
    // Milligrams for less than a litre: only the stock is measured then, so a finer figure is
    // more honest than a rounder one. A microgram ends the search.
    while rounded > grams * 1.25 && step > 1e-6 {
        step /= 10.0;
        rounded = ceil_to(grams, step);
    }
    powder(
        rounded,
        mg_per_gram,
        Some(liquid_up(grams * mg_per_gram / STOCK_MG_PER_ML)),
    )
}

/// The same powder by the stock solution that another measure goes by: two ways to measure side
/// by side would be mixed up.
pub(super) fn in_stock_like(powder: PowderMeasure, other: PowderMeasure) -> PowderMeasure {
    let stock = other.stock.filter(|_| powder.stock.is_none()).map(|stock| {
        let ml = powder.grams * stock.add.ml / other.grams;
        StockMeasure {
            add: liquid_up(ml),
            ..stock
        }
    });
    PowderMeasure {
        stock: powder.stock.or(stock),
        ..powder
    }
}

/// Powder, downward, for a ceiling that must not be passed.
pub(super) fn powder_down(grams: f64, mg_per_gram: f64) -> Option<PowderMeasure> {
    let rounded = floor_to(grams, step_grams(grams));
    let add = liquid_down(grams * mg_per_gram / STOCK_MG_PER_ML)?;
    (rounded > 0.0).then(|| powder(rounded, mg_per_gram, Some(add)))
}

fn powder(grams: f64, mg_per_gram: f64, add: Option<LiquidMeasure>) -> PowderMeasure {
    let grams_per_litre = ceil_to(1000.0 * STOCK_MG_PER_ML / mg_per_gram, 0.5);
    let stock = add
        .filter(|_| grams < GRAMS_WEIGHED)
        .map(|add| StockMeasure {
            grams_per_litre,
            add,
        });
    PowderMeasure { grams, stock }
}

/// mg of chlorine that a powder measure brings into the water: the least of the ways to measure
/// it, so that a wait holds for each.
pub(super) fn powder_least_mg(powder: PowderMeasure, mg_per_gram: f64) -> f64 {
    let dry = powder.grams * mg_per_gram;
    powder
        .stock
        .map_or(dry, |stock| dry.min(stock.add.ml * STOCK_MG_PER_ML))
}

/// Whole tablets, upward, at least one. A cast saturates.
pub(super) fn tablets_up(count: f64) -> u32 {
    ceil(count).max(1.0) as u32
}

/// Whole tablets, downward; none if it is less than one.
pub(super) fn tablets_down(count: f64) -> Option<u32> {
    let whole = floor(count);
    (whole >= 1.0).then_some(whole as u32)
}
