//! Free chlorine left in the water: what a test means, and what to add where it is too little.
//!
//! In: a reading or a nose, where and when it was taken, perhaps a product to add.
//! Out: a verdict, the bounds it rests on, and the measure that lifts the reading to the aim.
//! Promises that what is added lifts the reading at least to the aim, and over it by no more
//! than rounding does; nothing is added to water that has enough.
//! Does not know the first dose, or how much chlorine the water will eat of the second.

use std::time::Duration;

use crate::quantity::Concentration;
use crate::request::Taken;

use super::condition;
use super::need::{Given, Need};
use super::order::{BulkChlorine, Evidence, Outbreak, ResidualOrder, TopUpChlorine};
use super::outcome::{Caution, Detail, Measure, Outcome, ResidualFinding, ResidualVerdict};
use super::rule;
use super::source::Source;
use super::{nadcc, residual_source};

/// Least where people drink, up to a day after the dose, mg/L (US CDC, quoted in a design
/// guideline on residual disinfection; WHO's figure at delivery is the same, from memory).
const AT_USE_MG_PER_L: f64 = 0.2;

/// Most for routine drinking, mg/L (US EPA maximum residual disinfectant level).
const MOST_MG_PER_L: f64 = 4.0;

/// Not to be drunk above this, mg/L (WHO, Guidelines for drinking-water quality, 2nd edition,
/// 1996, health-based value).
const HEALTH_MG_PER_L: f64 = 5.0;

/// Hours that treated water keeps (the 24 h of US CDC's 0.2 mg/L).
const KEEPS_H: u32 = 24;

/// A reading up to so many minutes after the dose is read as one soon after it. Our choice, no
/// source: the published times end at 60 min and go on at 24 h, and the greater bound is safe.
const SOON_UNTIL_MIN: f64 = 120.0;

/// The bounds that pH and outbreak set.
struct Bounds {
    aim: f64,
    wait_min: u32,
}

/// Which bound a reading is held against.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Against {
    /// What a dose is to leave.
    Aim,
    /// What must be left where people drink.
    AtUse,
    /// Nobody said when or where it was taken.
    Either,
}

/// What is found.
pub(super) fn treat(order: &ResidualOrder) -> Outcome {
    let bounds = bounds(order);
    let reading = match order.evidence {
        Evidence::Measured(residual) => Some(residual.mg_per_litre()),
        Evidence::AlreadyDosed
        | Evidence::NoKit
        | Evidence::NoSmell
        | Evidence::Smells
        | Evidence::StillNoSmell => None,
    };
    let verdict = match order.evidence {
        Evidence::Measured(residual) => judge(order, &bounds, residual.mg_per_litre()),
        Evidence::NoKit => ResidualVerdict::NoKit,
        Evidence::NoSmell => ResidualVerdict::NoSmell,
        Evidence::Smells => ResidualVerdict::Smells,
        Evidence::StillNoSmell => ResidualVerdict::StillNoSmell,
        Evidence::AlreadyDosed => ResidualVerdict::AlreadyDosed,
    };
    let top_up = reading.and_then(|reading| top_up(order, verdict, bounds.aim - reading));
    let added = top_up.as_ref().map_or(0.0, |top_up| top_up.mg_per_l);
    let after = reading.unwrap_or(0.0) + added;
    let mut sources = residual_source::sources(order, verdict, against(order));
    if let Some(top_up) = &top_up {
        sources.extend(top_up.source);
    }
    Outcome {
        measure: top_up
            .as_ref()
            .map_or(Measure::Nothing, |top_up| top_up.given.measure),
        dose: top_up
            .as_ref()
            .map(|top_up| Concentration::from_mg_per_litre(top_up.mg_per_l)),
        wait: waits(verdict, top_up.is_some())
            .then(|| Duration::from_secs(u64::from(bounds.wait_min) * 60)),
        cautions: cautions(verdict, top_up.is_some(), after),
        sources,
        ..Outcome::without_dose(Detail::Residual(ResidualFinding {
            reading_mg_per_l: reading,
            verdict,
            aim_mg_per_l: bounds.aim,
            at_use_mg_per_l: AT_USE_MG_PER_L,
            most_mg_per_l: MOST_MG_PER_L,
            retest_min: bounds.wait_min,
            keeps_h: KEEPS_H,
            well_ready_mg_per_l: super::well::READY_MG_PER_L,
        }))
    }
}

fn bounds(order: &ResidualOrder) -> Bounds {
    let alkaline = condition::is_alkaline(order.ph);
    Bounds {
        aim: if alkaline || is_outbreak(order.outbreak) {
            rule::RESIDUAL_MORE_MG_PER_L
        } else {
            rule::RESIDUAL_MG_PER_L
        },
        wait_min: if alkaline {
            rule::RESIDUAL_WAIT_ALKALINE_MIN
        } else {
            rule::RESIDUAL_WAIT_MIN
        },
    }
}

pub(super) fn is_outbreak(outbreak: Outbreak) -> bool {
    match outbreak {
        Outbreak::Present => true,
        Outbreak::NotSaid => false,
    }
}

/// What a reading means. Too much is too much at any time.
fn judge(order: &ResidualOrder, bounds: &Bounds, reading: f64) -> ResidualVerdict {
    if order.taken == Some(Taken::InWell) {
        return if reading > super::well::READY_MG_PER_L {
            ResidualVerdict::WellNotReady
        } else {
            ResidualVerdict::WellReady
        };
    }
    if reading > HEALTH_MG_PER_L {
        return ResidualVerdict::TooHigh;
    }
    if reading > MOST_MG_PER_L {
        return ResidualVerdict::High;
    }
    match order.minutes {
        Some(minutes) if minutes < f64::from(bounds.wait_min) => {
            return ResidualVerdict::TooEarly;
        }
        Some(minutes) if minutes > f64::from(KEEPS_H) * 60.0 => return ResidualVerdict::Stale,
        Some(_) | None => {}
    }
    let at_use_at_least = match against(order) {
        Against::Aim => ResidualVerdict::Low,
        Against::AtUse => ResidualVerdict::Enough,
        Against::Either => ResidualVerdict::EnoughAtUse,
    };
    if reading >= bounds.aim {
        ResidualVerdict::Enough
    } else if reading >= AT_USE_MG_PER_L {
        at_use_at_least
    } else {
        ResidualVerdict::Low
    }
}

/// Time tells more than place: a can that was dosed an hour ago is held against the aim.
fn against(order: &ResidualOrder) -> Against {
    let soon = order.minutes.map(|minutes| minutes <= SOON_UNTIL_MIN);
    match (soon, order.taken) {
        (Some(true), _) | (Some(false) | None, Some(Taken::AtTap | Taken::InWell)) => Against::Aim,
        (Some(false), Some(Taken::AtUse) | None) | (None, Some(Taken::AtUse)) => Against::AtUse,
        (None, None) => Against::Either,
    }
}

/// What is added.
struct TopUp {
    given: Given,
    mg_per_l: f64,
    source: Option<Source>,
}

/// What lifts the reading by what is missing, where something is.
fn top_up(order: &ResidualOrder, verdict: ResidualVerdict, missing: f64) -> Option<TopUp> {
    match verdict {
        ResidualVerdict::EnoughAtUse | ResidualVerdict::Low => {}
        ResidualVerdict::Enough
        | ResidualVerdict::High
        | ResidualVerdict::NoKit
        | ResidualVerdict::NoSmell
        | ResidualVerdict::AlreadyDosed
        | ResidualVerdict::Smells
        | ResidualVerdict::Stale
        | ResidualVerdict::StillNoSmell
        | ResidualVerdict::TooEarly
        | ResidualVerdict::TooHigh
        | ResidualVerdict::WellNotReady
        | ResidualVerdict::WellReady => return None,
    }
    let (product, volume) = order.top_up?;
    let mg = missing * volume.litres();
    let (need, source) = match product {
        TopUpChlorine::Bulk(BulkChlorine::Liquid(strength)) => {
            let mg_per_ml = strength.mg_per_ml();
            let ml = mg / mg_per_ml;
            (Need::Liquid { ml, mg_per_ml }, None)
        }
        TopUpChlorine::Bulk(BulkChlorine::Powder(strength)) => {
            // 1% of a powder is 10 mg in each gram.
            let mg_per_gram = strength.percent() * 10.0;
            let grams = mg / mg_per_gram;
            (
                Need::Powder { grams, mg_per_gram },
                Some(Source::GtfccAppendix14),
            )
        }
        TopUpChlorine::Tablet(mass) => {
            let (mg_each, source) = nadcc::available_chlorine(mass.mg());
            let count = mg / mg_each;
            (Need::Tablets { count, mg_each }, Some(source))
        }
    };
    let given = need.rounded_up();
    Some(TopUp {
        mg_per_l: given.mg / volume.litres(),
        given,
        source,
    })
}

/// Whether there is something to wait for.
fn waits(verdict: ResidualVerdict, added: bool) -> bool {
    match verdict {
        ResidualVerdict::AlreadyDosed
        | ResidualVerdict::Low
        | ResidualVerdict::NoKit
        | ResidualVerdict::NoSmell
        | ResidualVerdict::TooEarly => true,
        ResidualVerdict::EnoughAtUse => added,
        ResidualVerdict::Enough
        | ResidualVerdict::High
        | ResidualVerdict::Smells
        | ResidualVerdict::Stale
        | ResidualVerdict::StillNoSmell
        | ResidualVerdict::TooHigh
        | ResidualVerdict::WellNotReady
        | ResidualVerdict::WellReady => false,
    }
}

/// `after` is what the water will hold then, mg/L.
fn cautions(verdict: ResidualVerdict, added: bool, after: f64) -> Vec<Caution> {
    match verdict {
        ResidualVerdict::High | ResidualVerdict::TooHigh | ResidualVerdict::Smells => {
            vec![Caution::LetStand]
        }
        ResidualVerdict::AlreadyDosed | ResidualVerdict::NoKit | ResidualVerdict::NoSmell => {
            vec![Caution::SmellCheck]
        }
        ResidualVerdict::WellNotReady => vec![Caution::NotUntilPumped, Caution::KeepTreating],
        ResidualVerdict::WellReady => vec![Caution::KeepTreating],
        // One tablet, or one drop of a strong liquid, can be far too much for a small can.
        ResidualVerdict::Low | ResidualVerdict::EnoughAtUse if after > MOST_MG_PER_L => {
            vec![Caution::LetStand, Caution::RetestLater]
        }
        ResidualVerdict::Low => vec![Caution::RetestLater],
        ResidualVerdict::EnoughAtUse if added => vec![Caution::RetestLater],
        ResidualVerdict::Enough
        | ResidualVerdict::EnoughAtUse
        | ResidualVerdict::Stale
        | ResidualVerdict::StillNoSmell
        | ResidualVerdict::TooEarly => Vec::new(),
    }
}
