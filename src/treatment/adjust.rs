//! Less waiting, or less taste: the last dose changed.
//!
//! In: the dose that was answered, and which way to change it.
//! Out: twice or half as much with the wait that this takes, or a refusal.
//! Promises never more than twice the published dose, never half a dose in cloudy, cold or
//! fouled water, never under 2 mg/L, and never a wait shorter than the trade, the grid and the
//! CT tables ask.
//! Does not know that the last dose was really taken.

use crate::request::{Change, Refusal};

use super::condition;
use super::contact_time::{self, Wait};
use super::dose::{self, Halogen, Plan};
use super::need::Given;
use super::order::{AdjustOrder, Agent, DoseOrder};
use super::outcome::{Caution, Cover, Verdict, WaitBasis};
use super::rule;
use super::source::Source;

/// Changes the last dose.
///
/// # Errors
/// [`Refusal::OverLimit`] where the change is not allowed or gains nothing, and whatever refusal
/// the last dose itself meets.
pub fn adjust(order: &AdjustOrder) -> Verdict {
    let last = &order.last;
    let plan = dose::plan(last)?.ok_or(Refusal::OverLimit)?;
    // Both changes need clear water that is not cold: a doubled dose is not doubled again, and a
    // demand that eats half the dose would leave nothing of a half dose.
    if condition::is_doubled(&last.water) {
        return Err(Refusal::OverLimit);
    }
    let given = plan.need.rounded_up();
    let wait = dose::wait(last, &plan, &given);
    match order.change {
        Change::Faster => faster(last, plan, &given, &wait),
        Change::Weaker => weaker(last, plan, &given, &wait),
    }
}

fn faster(last: &DoseOrder, plan: Plan, given: &Given, wait: &Wait) -> Verdict {
    // The ceiling is twice the exact dose, not twice what rounding made of it.
    let twice = plan
        .need
        .times(rule::DOUBLE)
        .rounded_down()
        .ok_or(Refusal::OverLimit)?;
    if twice.mg <= given.mg {
        return Err(Refusal::OverLimit);
    }
    let least = wait.minutes / rule::DOUBLE;
    let changed = changed_wait(last, plan.halogen, &twice, least);
    if changed.minutes >= wait.minutes {
        return Err(Refusal::OverLimit);
    }
    Ok(changed_outcome(last, plan, twice, changed))
}

fn weaker(last: &DoseOrder, plan: Plan, given: &Given, wait: &Wait) -> Verdict {
    if !may_be_halved(last.agent) || condition::has_sewage(last.water.sewage) {
        return Err(Refusal::OverLimit);
    }
    // Half of what was answered, which is at least half of what is published.
    let share = given.mg / plan.need.mg() / rule::DOUBLE;
    let half = plan.need.times(share).rounded_up();
    let concentration = half.least_mg / last.volume.litres();
    if half.mg >= given.mg || concentration < rule::LEAST_MG_PER_L * (1.0 - 1e-9) {
        return Err(Refusal::OverLimit);
    }
    let least = wait.minutes * rule::DOUBLE;
    let changed = changed_wait(last, plan.halogen, &half, least);
    let mut outcome = changed_outcome(last, plan, half, changed);
    let first = condition::first_cautions(&last.water, &last.people).len();
    outcome
        .cautions
        .insert(first.min(outcome.cautions.len()), Caution::NoShorterWait);
    Ok(outcome)
}

/// Whether half a dose can be had of it. Iodine tablets and chlorine dioxide go by their labels.
fn may_be_halved(agent: Agent) -> bool {
    match agent {
        Agent::Bleach(_)
        | Agent::BleachingPowder(_)
        | Agent::CalciumHypochlorite(_)
        | Agent::IodineTincture(_)
        | Agent::Nadcc(..)
        | Agent::PovidoneIodine(_) => true,
        Agent::ChlorineDioxide | Agent::IodineTablet(_) => false,
    }
}

/// The wait at the new dose: the first-order trade, and no less than the grid, the rule's half
/// hour and the CT tables ask for it.
fn changed_wait(last: &DoseOrder, halogen: Halogen, given: &Given, least: f64) -> Wait {
    let dose = given.least_mg / last.volume.litres();
    let celsius = condition::celsius(last.water.warmth);
    let tank = match halogen {
        Halogen::Chlorine => condition::tank_wait(last.volume),
        Halogen::Iodine => 0.0,
    };
    let trade = contact_time::in_fives(least)
        .max(rule::CLEAR_WAIT_MIN)
        .max(tank);
    let grid = contact_time::halogen_minutes(dose, celsius);
    let basis = if celsius.is_none() {
        WaitBasis::RuleTemperatureUnknown
    } else if grid > trade {
        WaitBasis::ColdWater
    } else {
        WaitBasis::Rule
    };
    let least = trade.max(grid);
    match halogen {
        Halogen::Chlorine => contact_time::with_contact_time(&last.water, dose, least, basis),
        Halogen::Iodine => Wait {
            minutes: least,
            basis,
            giardia: Cover::Partly,
        },
    }
}

fn changed_outcome(
    last: &DoseOrder,
    plan: Plan,
    given: Given,
    wait: Wait,
) -> super::outcome::Outcome {
    let mut outcome = dose::outcome(last, plan, given, wait);
    for source in [Source::WmsPractice2e, Source::CommonPractice] {
        if !outcome.sources.contains(&source) {
            outcome.sources.push(source);
        }
    }
    outcome
}
