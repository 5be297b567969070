//! How long to wait for chlorine: rule, cold and contact time (CT).
//!
//! In: temperature, pH, chlorine.
//! Out: minutes, why so many, whether *Giardia* is covered, and the log reductions reached.
//! Promises the longest of the published rule, the doubling in the cold and the CT tables, which
//! are stepped and never interpolated (40 CFR 141.74; instructions in EPA 815-R-20-003).
//! Does not know the product.

use super::condition;
use super::measure;
use super::order::{Warmth, Water};
use super::outcome::{ContactTime, Cover, Logs, WaitBasis};
use super::rule;
use super::table;

/// CT asked for by the tables, in mg·min/L.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CtAsked {
    /// For 3-log *Giardia*.
    pub giardia: f64,
    /// For 4-log viruses.
    pub viruses: f64,
}

impl CtAsked {
    /// The greater of the two.
    #[must_use]
    pub fn greatest(self) -> f64 {
        self.giardia.max(self.viruses)
    }
}

/// Looks up the CT that free chlorine of `mg_per_l` must reach at this temperature and pH.
///
/// Takes the next lower temperature, the next higher pH and the next higher chlorine of the
/// tables; what lies beyond their ends takes the last row. Above pH 9 the viruses' pH 10 column
/// holds, and the *Giardia* figure is no more than that of pH 9.
#[must_use]
pub fn contact_time(celsius: f64, ph: f64, mg_per_l: f64) -> CtAsked {
    let cells = &*table::GIARDIA;
    let t = step_down(cells.iter().map(|cell| cell.celsius), celsius);
    let p = step_up(cells.iter().map(|cell| cell.ph), ph);
    let c = step_up(cells.iter().map(|cell| cell.chlorine_mg_per_l), mg_per_l);
    let giardia = cells
        .iter()
        .filter(|cell| same(cell.celsius, t) && same(cell.ph, p) && same(cell.chlorine_mg_per_l, c))
        .map(|cell| cell.ct)
        .fold(0.0, f64::max);

    let cells = &*table::VIRUS;
    let t = step_down(cells.iter().map(|cell| cell.celsius), celsius);
    let p = step_up(cells.iter().map(|cell| cell.ph), ph);
    let viruses = cells
        .iter()
        .filter(|cell| same(cell.celsius, t) && same(cell.ph, p))
        .map(|cell| cell.ct)
        .fold(0.0, f64::max);
    CtAsked { giardia, viruses }
}

/// The highest pH for which the *Giardia* table speaks.
const GIARDIA_PH_MAX: f64 = 9.0;

/// The highest pH for which the virus table speaks.
const VIRUS_PH_MAX: f64 = 10.0;

/// Figures of one table are the same text, so they are the same number but for nothing.
fn same(a: f64, b: f64) -> bool {
    (a - b).abs() < 1e-9
}

/// The greatest heading not over `value`, or the least there is.
fn step_down(headings: impl Iterator<Item = f64> + Clone, value: f64) -> f64 {
    let below = headings
        .clone()
        .filter(|heading| *heading <= value + 1e-9)
        .reduce(f64::max);
    below.or_else(|| headings.reduce(f64::min)).unwrap_or(value)
}

/// The least heading not under `value`, or the greatest there is.
fn step_up(headings: impl Iterator<Item = f64> + Clone, value: f64) -> f64 {
    let above = headings
        .clone()
        .filter(|heading| *heading >= value - 1e-9)
        .reduce(f64::min);
    above.or_else(|| headings.reduce(f64::max)).unwrap_or(value)
}

/// A wait that was worked out.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Wait {
    pub(super) minutes: f64,
    pub(super) basis: WaitBasis,
    /// Whether *Giardia* is covered at its end.
    pub(super) giardia: Cover,
}

/// The wait for a chlorine dose in mg/L: the rule, `least` minutes, the cold, the tables.
pub(super) fn chlorine_wait(water: &Water, dose_mg_per_l: f64, least: f64) -> Wait {
    // Chlorine works slower above pH 8. With a temperature the tables say by how much; without
    // one the water is drunk when the test is read, after 60 min (appendix 16 of the MSF
    // guideline; no sheet for households prints a wait by pH).
    let by_table = condition::celsius(water.warmth).is_some();
    let alkaline = if !by_table && acidity(water) > rule::PH_UNKNOWN {
        f64::from(rule::RESIDUAL_WAIT_ALKALINE_MIN)
    } else {
        0.0
    };
    let rule = shortest_wait(water).max(least).max(alkaline);
    let cold = condition::celsius(water.warmth).map_or(0.0, doubled_for_cold);
    with_contact_time(
        water,
        dose_mg_per_l,
        rule.max(cold),
        if cold > rule {
            WaitBasis::ColdWater
        } else {
            rule_basis(water.warmth)
        },
    )
}

/// `least` minutes, or as many as the CT tables ask for.
pub(super) fn with_contact_time(
    water: &Water,
    dose_mg_per_l: f64,
    least: f64,
    basis: WaitBasis,
) -> Wait {
    let Some(celsius) = condition::celsius(water.warmth) else {
        return Wait {
            minutes: least,
            basis,
            giardia: Cover::Partly,
        };
    };
    let residual = dose_mg_per_l * rule::RESIDUAL_SHARE;
    let ph = acidity(water);
    let needed = contact_time(celsius, ph, residual).greatest();
    let asked = in_fives(measure::ceil(needed / residual));
    let giardia = match water.warmth {
        Warmth::Measured(_) if ph <= GIARDIA_PH_MAX => Cover::Yes,
        Warmth::Measured(_) | Warmth::Cold | Warmth::Unknown => Cover::Partly,
    };
    if asked > least {
        let reached = residual * asked;
        let basis = WaitBasis::ContactTime(ContactTime {
            needed,
            reached,
            residual,
        });
        Wait {
            minutes: asked,
            basis,
            giardia,
        }
    } else {
        Wait {
            minutes: least,
            basis,
            giardia,
        }
    }
}

/// The pH measured, or the one assumed.
fn acidity(water: &Water) -> f64 {
    water.ph.map_or(rule::PH_UNKNOWN, |ph| ph.ph())
}

/// What the tables print: CT for so many log reductions, and no more is claimed.
const GIARDIA_LOGS: f64 = 3.0;
const VIRUS_LOGS: f64 = 4.0;

/// Log reductions that a chlorine dose reaches in so many minutes, by the same tables: in
/// proportion to CT (EPA 815-R-20-003), never beyond what they print, in tenths downward.
pub(super) fn logs(water: &Water, dose_mg_per_l: f64, minutes: f64) -> Logs {
    let celsius = condition::celsius(water.warmth).unwrap_or(rule::CELSIUS_UNKNOWN);
    let ph = acidity(water);
    let residual = dose_mg_per_l * rule::RESIDUAL_SHARE;
    let asked = contact_time(celsius, ph, residual);
    let reached = residual * minutes;
    let share = |ct: f64, most: f64| measure::floor_to((most * reached / ct).min(most), 0.1);
    Logs {
        // Above its last pH the table says nothing.
        giardia: if ph <= GIARDIA_PH_MAX {
            share(asked.giardia, GIARDIA_LOGS)
        } else {
            0.0
        },
        viruses: if ph <= VIRUS_PH_MAX {
            share(asked.viruses, VIRUS_LOGS)
        } else {
            0.0
        },
        celsius,
        ph,
        contact: ContactTime {
            needed: asked.greatest(),
            reached,
            residual,
        },
    }
}

/// The published rule's wait.
pub(super) fn shortest_wait(water: &Water) -> f64 {
    if condition::is_doubled(water) {
        rule::CLOUDY_WAIT_MIN
    } else {
        rule::CLEAR_WAIT_MIN
    }
}

/// The rule as a reason.
pub(super) fn rule_basis(warmth: Warmth) -> WaitBasis {
    match warmth {
        Warmth::Unknown => WaitBasis::RuleTemperatureUnknown,
        Warmth::Cold | Warmth::Measured(_) => WaitBasis::Rule,
    }
}

/// Doubles half an hour for each 10 °C below 25 °C (WHO, International Travel and Health, 2012).
fn doubled_for_cold(celsius: f64) -> f64 {
    let below = (rule::DOUBLING_BELOW_CELSIUS - celsius).max(0.0);
    in_fives(rule::CLEAR_WAIT_MIN * (below / rule::DOUBLING_STEP_CELSIUS).exp2())
}

/// Upward to a multiple of five minutes.
pub(super) fn in_fives(minutes: f64) -> f64 {
    measure::ceil_to(minutes, rule::WAIT_STEP_MIN)
}

/// Minutes by halogen dose and temperature (Wilderness Medical Society, Practice Guidelines, 2nd
/// edition, page 63): the greatest dose not over `mg_per_l`, the warmest column not over the
/// water's temperature, the 15 °C column where nobody knows it.
pub(super) fn halogen_minutes(mg_per_l: f64, celsius: Option<f64>) -> f64 {
    let cells = &*table::HALOGEN;
    let dose = step_down(cells.iter().map(|cell| cell.mg_per_l), mg_per_l);
    let column = celsius.unwrap_or(rule::GRID_UNKNOWN_CELSIUS);
    let column = step_down(cells.iter().map(|cell| cell.celsius), column);
    cells
        .iter()
        .filter(|cell| same(cell.mg_per_l, dose) && same(cell.celsius, column))
        .map(|cell| cell.minutes)
        .fold(0.0, f64::max)
}
