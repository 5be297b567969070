//! How far a stock goes, and how much to order.
//!
//! In: the product, the stock or the people and days.
//! Out: litres, days, people, or an order with a margin.
//! Promises the same dose for each litre as [`super::dose`] gives to 20 L, rounds what a stock
//! does downward and what is ordered upward.
//! Does not know bottles, packs or prices.

use crate::quantity::{UnitSystem, Volume};
use crate::request::Refusal;

use super::dose::{self, Halogen, Plan};
use super::measure;
use super::need::Need;
use super::order::{DoseOrder, Served, Stock, SupplyOrder, SupplyQuestion, Water};
use super::outcome::{Caution, Detail, Measure, Outcome, SupplyFinding, Verdict};
use super::rule;
use super::source::Source;

/// Litres for a person and day, for everything (US aid field guide; Sphere: 7.5 to 15). The
/// greater figure, so that a stock is not promised for longer than it lasts.
const LITRES_PER_PERSON: f64 = 15.0;

/// Litres for a patient and day in a health centre (US aid field guide: 40 to 60); the greater by
/// the same reason.
const LITRES_PER_PATIENT: f64 = 60.0;

/// Litres for drinking and food alone (Sphere: 2.5 to 3); the greater by the same reason.
const DRINKING_LITRES_PER_PERSON: f64 = 3.0;

/// Ordered beyond the need, percent: spills, stale bottles (common practice without a source).
const MARGIN_PERCENT: f64 = 20.0;

/// The can that the dose for each litre is worked out for: 20 L.
const CAN_LITRES: f64 = 20.0;

/// Days are told in tenths up to here.
const TENTHS_BELOW: f64 = 10.0;

/// Answers a question about a stock.
///
/// # Errors
/// [`Refusal::OtherUse`] for chlorine dioxide, which only its label measures, and for a stock in
/// a form that the product does not have: the dialogue orders neither.
/// [`Refusal::IodineUnsuitable`] for iodine over more than three weeks.
pub(super) fn treat(order: &SupplyOrder) -> Verdict {
    let plan = plan(order)?;
    let each = match order.served {
        Served::Patients => LITRES_PER_PATIENT,
        Served::People => LITRES_PER_PERSON,
        Served::With(each) => each.litres(),
    };
    let (measure, finding) = match order.question {
        SupplyQuestion::Lasts(stock, people) => {
            let litres = litres_of(stock, plan.need)?;
            (Measure::Nothing, lasts(litres, people.people(), each))
        }
        SupplyQuestion::Needs(people, days) => {
            may_last(plan.halogen, days.days())?;
            needs(plan.need, people.people(), days.days(), each)
        }
        SupplyQuestion::Serves(stock, days) => {
            may_last(plan.halogen, days.days())?;
            let litres = litres_of(stock, plan.need)?;
            (Measure::Nothing, serves(litres, days.days(), each))
        }
        SupplyQuestion::Treats(stock) => {
            let litres = litres_of(stock, plan.need)?;
            (Measure::Nothing, treating(downward(litres), each))
        }
    };
    let mut sources = plan.sources;
    sources.extend_from_slice(match order.question {
        SupplyQuestion::Lasts(..) | SupplyQuestion::Serves(..) => {
            &[Source::Sphere2011, Source::UsaidFieldOperationsGuide]
        }
        // The margin is common practice.
        SupplyQuestion::Needs(..) => &[
            Source::Sphere2011,
            Source::UsaidFieldOperationsGuide,
            Source::CommonPractice,
        ],
        SupplyQuestion::Treats(_) => &[],
    });
    Ok(Outcome {
        measure,
        cautions: match plan.halogen {
            Halogen::Chlorine => Vec::new(),
            Halogen::Iodine => vec![Caution::IodineUnsuitable],
        },
        sources,
        ..Outcome::without_dose(Detail::Supply(finding))
    })
}

fn lasts(litres: f64, people: f64, each: f64) -> SupplyFinding {
    SupplyFinding {
        days: Some(downward(litres / (people * each))),
        drinking_days: Some(downward(litres / (people * DRINKING_LITRES_PER_PERSON))),
        people: Some(people),
        ..treating(downward(litres), each)
    }
}

fn serves(litres: f64, days: f64, each: f64) -> SupplyFinding {
    let people = |each| measure::floor(litres / (days * each));
    SupplyFinding {
        people: Some(people(each)),
        drinking_people: Some(people(DRINKING_LITRES_PER_PERSON)),
        days: Some(days),
        ..treating(downward(litres), each)
    }
}

fn needs(for_a_litre: Need, people: f64, days: f64, each: f64) -> (Measure, SupplyFinding) {
    let litres = people * days * each;
    let bare = for_a_litre.times(litres);
    let finding = SupplyFinding {
        days: Some(days),
        people: Some(people),
        bare_need: Some(to_order(bare)),
        margin_percent: MARGIN_PERCENT,
        ..treating(litres, each)
    };
    (to_order(bare.times(1.0 + MARGIN_PERCENT / 100.0)), finding)
}

/// The dose for one litre, by the plan for a can of 20 L.
fn plan(order: &SupplyOrder) -> Result<Plan, Refusal> {
    let can = DoseOrder {
        agent: order.agent,
        volume: Volume::from_litres(CAN_LITRES).map_err(|_| Refusal::OtherUse)?,
        system: UnitSystem::Metric,
        water: Water {
            clarity: order.clarity,
            ..Water::default()
        },
        people: Vec::new(),
    };
    let plan = dose::plan(&can)?.ok_or(Refusal::OtherUse)?;
    Ok(Plan {
        need: plan.need.times(1.0 / CAN_LITRES),
        ..plan
    })
}

/// Iodine is for a few weeks at most (DECISIONS).
fn may_last(halogen: Halogen, days: f64) -> Result<(), Refusal> {
    match halogen {
        Halogen::Iodine if days > rule::IODINE_DAYS => Err(Refusal::IodineUnsuitable),
        Halogen::Chlorine | Halogen::Iodine => Ok(()),
    }
}

/// Litres that a stock treats, exactly.
fn litres_of(stock: Stock, for_a_litre: Need) -> Result<f64, Refusal> {
    match (stock, for_a_litre) {
        (Stock::Liquid(stock), Need::Liquid { ml, .. }) => Ok(stock.ml() / ml),
        (Stock::Powder(stock), Need::Powder { grams, .. }) => Ok(stock.grams() / grams),
        (Stock::Tablets(stock), Need::Tablets { count, .. }) => {
            // Half a tablet in the box treats nothing.
            Ok(measure::floor(stock.count()) / count)
        }
        (Stock::Liquid(_), Need::Powder { .. } | Need::Tablets { .. })
        | (Stock::Powder(_), Need::Liquid { .. } | Need::Tablets { .. })
        | (Stock::Tablets(_), Need::Liquid { .. } | Need::Powder { .. }) => Err(Refusal::OtherUse),
    }
}

fn treating(treats_litres: f64, each: f64) -> SupplyFinding {
    SupplyFinding {
        treats_litres,
        litres_per_person: each,
        drinking_litres_per_person: DRINKING_LITRES_PER_PERSON,
        days: None,
        people: None,
        drinking_days: None,
        drinking_people: None,
        bare_need: None,
        margin_percent: 0.0,
    }
}

/// What is ordered, upward. Tablets and drops saturate where a `u32` ends; mL and grams do not.
fn to_order(need: Need) -> Measure {
    match need {
        Need::Liquid { ml, .. } => Measure::Liquid(measure::liquid_order(ml)),
        Need::Powder { grams, .. } => Measure::Powder(measure::powder_order(grams)),
        Need::Tablets { count, .. } => Measure::Tablets(measure::tablets_up(count)),
    }
}

/// Tenths while small, then whole ones.
fn downward(value: f64) -> f64 {
    if value < TENTHS_BELOW {
        measure::floor_to(value, 0.1)
    } else {
        measure::floor(value)
    }
}
