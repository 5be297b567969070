//! An exact need, and the measure that a hand makes of it.
//!
//! In: mL, grams or tablets, unrounded, with what one of them carries.
//! Out: a [`Given`]: the measure and the mg it brings into the water.
//! Shared by first doses (upward) and changed doses (half, or no more than twice).

use super::measure;
use super::outcome::Measure;

/// What is needed, exactly.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum Need {
    Liquid { ml: f64, mg_per_ml: f64 },
    Powder { grams: f64, mg_per_gram: f64 },
    Tablets { count: f64, mg_each: f64 },
}

/// What is given.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Given {
    pub(super) measure: Measure,
    /// Active substance, as the answer's figure says it.
    pub(super) mg: f64,
    /// Active substance by the weakest way to measure it, for the wait.
    pub(super) least_mg: f64,
}

impl Need {
    /// Active substance needed, in mg.
    pub(super) fn mg(self) -> f64 {
        match self {
            Self::Liquid { ml, mg_per_ml } => ml * mg_per_ml,
            Self::Powder { grams, mg_per_gram } => grams * mg_per_gram,
            Self::Tablets { count, mg_each } => count * mg_each,
        }
    }

    /// So many times as much.
    pub(super) fn times(self, factor: f64) -> Self {
        match self {
            Self::Liquid { ml, mg_per_ml } => Self::Liquid {
                ml: ml * factor,
                mg_per_ml,
            },
            Self::Powder { grams, mg_per_gram } => Self::Powder {
                grams: grams * factor,
                mg_per_gram,
            },
            Self::Tablets { count, mg_each } => Self::Tablets {
                count: count * factor,
                mg_each,
            },
        }
    }

    /// The measure that holds at least as much.
    pub(super) fn rounded_up(self) -> Given {
        match self {
            Self::Liquid { ml, mg_per_ml } => {
                let liquid = measure::liquid_up(ml);
                Given::exactly(Measure::Liquid(liquid), liquid.ml * mg_per_ml)
            }
            Self::Powder { grams, mg_per_gram } => {
                Given::powder(measure::powder_up(grams, mg_per_gram), mg_per_gram)
            }
            Self::Tablets { count, mg_each } => {
                let tablets = measure::tablets_up(count);
                Given::exactly(Measure::Tablets(tablets), f64::from(tablets) * mg_each)
            }
        }
    }

    /// The measure that holds no more, where there is one.
    pub(super) fn rounded_down(self) -> Option<Given> {
        match self {
            Self::Liquid { ml, mg_per_ml } => measure::liquid_down(ml)
                .map(|liquid| Given::exactly(Measure::Liquid(liquid), liquid.ml * mg_per_ml)),
            Self::Powder { grams, mg_per_gram } => measure::powder_down(grams, mg_per_gram)
                .map(|powder| Given::powder(powder, mg_per_gram)),
            Self::Tablets { count, mg_each } => measure::tablets_down(count).map(|tablets| {
                Given::exactly(Measure::Tablets(tablets), f64::from(tablets) * mg_each)
            }),
        }
    }
}

impl Given {
    fn exactly(measure: Measure, mg: f64) -> Self {
        Self {
            measure,
            mg,
            least_mg: mg,
        }
    }

    fn powder(powder: super::outcome::PowderMeasure, mg_per_gram: f64) -> Self {
        Self {
            measure: Measure::Powder(powder),
            mg: powder.grams * mg_per_gram,
            least_mg: measure::powder_least_mg(powder, mg_per_gram),
        }
    }
}
