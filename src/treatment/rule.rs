//! The single figures that the rules rest on, each with its source.
//!
//! Out: constants. Figures that come in tables are in `tables/`.

use super::source::Source;

/// Chlorine for clear water, mg/L: what the US agencies' charts come to (EPA 816-F-15-003; the
/// drop counts give 5.0 to 6.5).
pub(super) const CHLORINE_MG_PER_L: f64 = 5.0;

/// Cloudy, coloured or very cold water takes twice as much (EPA 816-F-15-003).
pub(super) const DOUBLE: f64 = 2.0;

/// Water below this is very cold: 7 °C, the 45 °F of the older US rules.
pub(super) const COLD_BELOW_CELSIUS: f64 = 7.0;

/// Water that is cold to the hand is taken for this, for the wait. Common practice; it gives
/// 120 min by the doubling.
pub(super) const COLD_TO_THE_HAND_CELSIUS: f64 = 5.0;

/// Shortest wait for clear water (EPA 816-F-15-003).
pub(super) const CLEAR_WAIT_MIN: f64 = 30.0;

/// Shortest wait for cloudy or cold water: the first-order trade's doubling, common practice.
pub(super) const CLOUDY_WAIT_MIN: f64 = 60.0;

/// From this much water on it is a tank, in litres: the smallest that the health departments'
/// tables give doses for.
pub(super) const TANK_LITRES: f64 = 1000.0;

/// Shortest wait for a tank (Department of Health of Tasmania: at least an hour at 5 mg/L).
pub(super) const TANK_WAIT_MIN: f64 = 60.0;

/// Waits are told in fives, upward.
pub(super) const WAIT_STEP_MIN: f64 = 5.0;

/// The doubling of time begins below this (WHO, International Travel and Health, 2012).
pub(super) const DOUBLING_BELOW_CELSIUS: f64 = 25.0;

/// The time doubles for each so many degrees (same table).
pub(super) const DOUBLING_STEP_CELSIUS: f64 = 10.0;

/// Share of the dose that is taken for the residual. Our allowance for demand; no source.
pub(super) const RESIDUAL_SHARE: f64 = 0.5;

/// pH taken where nobody measured it: the upper end of common water (our choice, safe side).
pub(super) const PH_UNKNOWN: f64 = 8.0;

/// Temperature that log reductions are counted for where nobody measured it, °C (our choice,
/// safe side; no source).
pub(super) const CELSIUS_UNKNOWN: f64 = 10.0;

/// Chlorine by tablets, mg/L, clear water: 33 mg (20 mg chlorine) for 5 L (relief catalogues).
pub(super) const TABLET_MG_PER_L: f64 = 4.0;

/// Available chlorine in NaDCC of the hydrated kind, lower bound (MSF items catalogue: 55-57%).
pub(super) const NADCC_SHARE: f64 = 0.55;

/// Iodine for clear water, mg/L (Wilderness Medical Society 2024, Table 7).
pub(super) const IODINE_MG_PER_L: f64 = 4.0;

/// Iodine set free by povidone-iodine, as a share of the labelled percentage (same table: 8
/// drops a litre of a 10% solution for 4 mg/L).
pub(super) const POVIDONE_SHARE: f64 = 0.1;

/// The column of the halogen grid for water of unknown temperature.
pub(super) const GRID_UNKNOWN_CELSIUS: f64 = 15.0;

/// Nobody drinks iodine for longer, in days: the customary three weeks (Environmental Health
/// Perspectives 108(8), 2000, which finds no firm basis for them).
pub(super) const IODINE_DAYS: f64 = 21.0;

/// Half a dose goes no lower than this, mg/L (Wilderness Medical Society 2024, Table 5: the
/// target for good water).
pub(super) const LEAST_MG_PER_L: f64 = 2.0;

/// From this pH on chlorine works slowly (Médecins Sans Frontières, cholera guideline, appendix 16).
pub(super) const ALKALINE_FROM_PH: f64 = 8.0;

/// Free chlorine that a dose is to leave, mg/L (WHO, Guidelines for drinking-water quality, 2nd
/// edition, 1996: after 30 min at a pH below 8; the cholera guideline's appendix 16 likewise).
pub(super) const RESIDUAL_MG_PER_L: f64 = 0.5;

/// The same above pH 8 (appendix 16), and at the tap stand in an outbreak (Sphere 2004: above 1).
pub(super) const RESIDUAL_MORE_MG_PER_L: f64 = 1.0;

/// Minutes from dose to test (WHO 1996 and appendix 16).
pub(super) const RESIDUAL_WAIT_MIN: u32 = 30;

/// The same above pH 8 (appendix 16).
pub(super) const RESIDUAL_WAIT_ALKALINE_MIN: u32 = 60;

/// Sources of the chlorine target and rule.
pub(super) const CHLORINE_SOURCE: Source = Source::Epa816F15003;
