//! Products that are added to water: from the order to the outcome.
//!
//! In: a [`DoseOrder`].
//! Out: the measure, the wait, what is covered and what to know; or a refusal.
//! Promises nothing of its own: the figures are those of [`super::chlorine`], [`super::nadcc`],
//! [`super::iodine`] and [`super::chlorine_dioxide`].

use std::time::Duration;

use crate::quantity::Concentration;
use crate::request::Refusal;

use super::condition;
use super::contact_time::{self, Wait};
use super::need::{Given, Need};
use super::order::{Agent, DoseOrder};
use super::outcome::{Caution, Cover, Coverage, Detail, Measure, Outcome, Verdict, WaitBasis};
use super::rule;
use super::source::Source;
use super::{chlorine, chlorine_dioxide, iodine, nadcc};

/// Which element does the work.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Halogen {
    Chlorine,
    Iodine,
}

/// What a product asks for, before rounding.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Plan {
    pub(super) need: Need,
    pub(super) halogen: Halogen,
    /// Where the amount comes from.
    pub(super) sources: Vec<Source>,
}

/// Works out how much to add and how long to wait.
pub(super) fn treat(order: &DoseOrder) -> Verdict {
    let Some(plan) = plan(order)? else {
        return Ok(chlorine_dioxide::treat(order));
    };
    let given = plan.need.rounded_up();
    let wait = wait(order, &plan, &given);
    Ok(outcome(order, plan, given, wait))
}

/// The plan for the order's product; none for a product that only its label measures.
pub(super) fn plan(order: &DoseOrder) -> Result<Option<Plan>, Refusal> {
    match order.agent {
        Agent::Bleach(strength) => Ok(Some(chlorine::liquid(order, strength))),
        Agent::BleachingPowder(strength) | Agent::CalciumHypochlorite(strength) => {
            Ok(Some(chlorine::powder(order, strength)))
        }
        Agent::ChlorineDioxide => Ok(None),
        Agent::IodineTablet(mass) => iodine::tablet(order, mass).map(Some),
        Agent::IodineTincture(strength) => iodine::tincture(order, strength).map(Some),
        Agent::Nadcc(mass, label) => Ok(Some(nadcc::tablet(order, mass, label))),
        Agent::PovidoneIodine(strength) => iodine::povidone(order, strength).map(Some),
    }
}

/// The wait for what the plan gives.
pub(super) fn wait(order: &DoseOrder, plan: &Plan, given: &Given) -> Wait {
    match plan.halogen {
        Halogen::Chlorine => {
            let least = given.least_mg / order.volume.litres();
            contact_time::chlorine_wait(&order.water, least, condition::tank_wait(order.volume))
        }
        Halogen::Iodine => iodine::wait(&order.water),
    }
}

/// Puts an outcome together.
pub(super) fn outcome(order: &DoseOrder, plan: Plan, given: Given, wait: Wait) -> Outcome {
    let mut sources = plan.sources;
    let by_time: &[Source] = match (plan.halogen, wait.basis) {
        (Halogen::Chlorine, WaitBasis::ContactTime(_)) => {
            &[Source::Cfr4014174, Source::Epa815R20003]
        }
        (Halogen::Chlorine, WaitBasis::ColdWater) => &[Source::WhoIth2012],
        (Halogen::Iodine, WaitBasis::ContactTime(_) | WaitBasis::ColdWater)
        | (Halogen::Iodine, WaitBasis::Rule | WaitBasis::RuleTemperatureUnknown) => {
            &[Source::WmsPractice2e]
        }
        (Halogen::Chlorine, WaitBasis::Rule | WaitBasis::RuleTemperatureUnknown) => &[],
    };
    let by_size: &[Source] = if is_chlorine_tank(order, plan.halogen) {
        &[Source::TasmaniaTank]
    } else {
        &[]
    };
    for source in by_time.iter().chain(by_size) {
        if !sources.contains(source) {
            sources.push(*source);
        }
    }
    let logs = match plan.halogen {
        Halogen::Chlorine => {
            let least = given.least_mg / order.volume.litres();
            Some(contact_time::logs(&order.water, least, wait.minutes))
        }
        // No table of contact times is printed for iodine.
        Halogen::Iodine => None,
    };
    Outcome {
        measure: given.measure,
        dose: Some(Concentration::from_mg_per_litre(
            given.mg / order.volume.litres(),
        )),
        wait: Some(minutes(wait.minutes)),
        wait_basis: wait.basis,
        covers: Some(Coverage {
            bacteria: Cover::Yes,
            viruses: Cover::Yes,
            giardia: wait.giardia,
            cryptosporidium: Cover::No,
        }),
        logs,
        cautions: {
            let mut cautions = cautions(order, plan.halogen, wait.giardia);
            // A whole tablet in a small can: over twice what is published for it.
            let one = given.measure == Measure::Tablets(1);
            if one && given.mg > plan.need.mg() * rule::DOUBLE * (1.0 + 1e-9) {
                cautions.insert(0, Caution::TabletTooStrong);
            }
            cautions
        },
        sources,
        boiling_point_c: None,
        detail: Detail::Plain,
    }
}

/// A new or polluted tank is filled with this, left and emptied: 50 mg/L, ten times the dose that
/// is drunk (WHO, technical note 3, from memory: 80 g of high-strength hypochlorite for 1000 L).
const NEW_TANK_MG_PER_L: f64 = 50.0;
/// Hours that it stands (same note).
const NEW_TANK_HOURS: f64 = 24.0;

/// The first filling of a tank, where the order is of that size.
pub(super) fn new_tank(order: &DoseOrder) -> Option<Outcome> {
    let clean = DoseOrder {
        water: super::order::Water::default(),
        people: Vec::new(),
        ..order.clone()
    };
    let plan = plan(&clean).ok()??;
    if !is_chlorine_tank(order, plan.halogen) {
        return None;
    }
    let mg = NEW_TANK_MG_PER_L * order.volume.litres();
    let given = plan.need.times(mg / plan.need.mg()).rounded_up();
    Some(Outcome {
        measure: given.measure,
        dose: Some(Concentration::from_mg_per_litre(
            given.mg / order.volume.litres(),
        )),
        wait: Some(minutes(NEW_TANK_HOURS * 60.0)),
        cautions: vec![Caution::CleanTankFirst, Caution::NotForDrinking],
        sources: vec![Source::WhoTn3],
        ..Outcome::without_dose(Detail::Plain)
    })
}

/// Minutes as a duration. A cast saturates, and no wait comes near.
pub(super) fn minutes(minutes: f64) -> Duration {
    Duration::from_secs((minutes * 60.0).round() as u64)
}

/// The publication on tanks speaks of chlorine only.
fn is_chlorine_tank(order: &DoseOrder, halogen: Halogen) -> bool {
    halogen == Halogen::Chlorine && condition::is_tank(order.volume)
}

fn cautions(order: &DoseOrder, halogen: Halogen, giardia: Cover) -> Vec<Caution> {
    let mut cautions = condition::first_cautions(&order.water, &order.people);
    // What must be known before anything is poured.
    match order.agent {
        Agent::Bleach(_) => cautions.push(Caution::UnscentedOnly),
        Agent::IodineTablet(_) => {
            cautions.extend([Caution::IodineUnsuitable, Caution::LabelFirst]);
        }
        Agent::IodineTincture(_) | Agent::PovidoneIodine(_) => {
            cautions.push(Caution::IodineUnsuitable);
        }
        Agent::ChlorineDioxide | Agent::Nadcc(..) => cautions.push(Caution::LabelFirst),
        Agent::BleachingPowder(_) | Agent::CalciumHypochlorite(_) => {}
    }
    if is_chlorine_tank(order, halogen) {
        cautions.extend([Caution::CleanTankFirst, Caution::StirTank]);
    }
    cautions.push(Caution::CryptosporidiumSurvives);
    cautions.extend(condition::cold_caution(order.water.warmth));
    if condition::is_cloudy(order.water.clarity) {
        cautions.push(Caution::TooMurky);
    }
    match halogen {
        Halogen::Chlorine => cautions.push(Caution::SmellCheck),
        Halogen::Iodine => {}
    }
    match giardia {
        Cover::No | Cover::Partly => cautions.push(Caution::GiardiaPartly),
        Cover::Yes => {}
    }
    cautions
}
