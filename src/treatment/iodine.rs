//! Iodine: tincture, povidone-iodine, tablets.
//!
//! In: the label's figure, the water, who drinks it.
//! Out: an exact need and the wait of the dose-and-temperature grid; or a refusal.
//! Promises a refusal for pregnancy, thyroid disease and infants.
//! Does not know for how many weeks somebody has drunk it already.

use crate::quantity::{Strength, TabletMass, UnitSystem, litres_in};
use crate::request::{Person, Refusal};

use super::condition;
use super::contact_time::{self, Wait};
use super::dose::{Halogen, Plan};
use super::measure::DROP_ML;
use super::need::Need;
use super::order::{DoseOrder, Water};
use super::outcome::{Cover, WaitBasis};
use super::rule;
use super::source::Source;
use super::table::{self, IodineForm, IodineUnit};

/// Whether any of them must not drink iodine (US CDC, Health Information for International
/// Travel, for pregnancy and thyroid disease; infants by the same reason).
pub(super) fn is_unsuitable(people: &[Person]) -> bool {
    people.iter().any(|person| match person {
        Person::Infant | Person::Pregnant | Person::Thyroid => true,
        Person::WeakImmunity => false,
    })
}

/// Tincture: the larger of the target and the published drops.
pub(super) fn tincture(order: &DoseOrder, strength: Strength) -> Result<Plan, Refusal> {
    solution(
        order,
        IodineForm::Tincture,
        strength.percent(),
        strength.mg_per_ml(),
    )
}

/// Povidone-iodine, of which a tenth of the label's percentage is iodine.
pub(super) fn povidone(order: &DoseOrder, strength: Strength) -> Result<Plan, Refusal> {
    let available = strength.mg_per_ml() * rule::POVIDONE_SHARE;
    solution(
        order,
        IodineForm::PovidoneIodine,
        strength.percent(),
        available,
    )
}

/// Tablets by their labelled mg.
pub(super) fn tablet(order: &DoseOrder, mass: TabletMass) -> Result<Plan, Refusal> {
    let count = target(order)? * order.volume.litres() / mass.mg();
    Ok(plan(
        Need::Tablets {
            count,
            mg_each: mass.mg(),
        },
        Source::Wms2024,
    ))
}

fn solution(
    order: &DoseOrder,
    form: IodineForm,
    percent: f64,
    mg_per_ml: f64,
) -> Result<Plan, Refusal> {
    let litres = order.volume.litres();
    let computed = target(order)? * litres / mg_per_ml;
    let cloudy = condition::is_cloudy(order.water.clarity);
    let published = table::IODINE
        .iter()
        .filter(|row| row.form == form && (row.percent - percent).abs() < 1e-9)
        .filter(|row| match (order.system, row.unit) {
            (UnitSystem::Metric | UnitSystem::Imperial | UnitSystem::Us, IodineUnit::Litre) => true,
            (UnitSystem::Us, IodineUnit::Quart) => true,
            (UnitSystem::Metric | UnitSystem::Imperial, IodineUnit::Quart) => false,
        })
        .map(|row| {
            let drops = if cloudy {
                row.cloudy_drops
            } else {
                row.clear_drops
            };
            let unit = match row.unit {
                IodineUnit::Litre => 1.0,
                IodineUnit::Quart => litres_in::US_QUART,
            };
            (drops * DROP_ML * litres / unit, row.source)
        })
        .reduce(|best, row| {
            if row.0 > best.0 * (1.0 + 1e-9) {
                row
            } else {
                best
            }
        });
    let (ml, source) = match published {
        Some((row_ml, source)) if row_ml >= computed * (1.0 - 1e-9) => (row_ml, source),
        Some(_) | None => (computed, Source::Wms2024),
    };
    Ok(plan(Need::Liquid { ml, mg_per_ml }, source))
}

/// Iodine aimed at, in mg/L. Cold lengthens the wait and does not double the dose.
fn target(order: &DoseOrder) -> Result<f64, Refusal> {
    if is_unsuitable(&order.people) {
        Err(Refusal::IodineUnsuitable)
    } else if condition::is_cloudy(order.water.clarity) {
        Ok(rule::IODINE_MG_PER_L * rule::DOUBLE)
    } else {
        Ok(rule::IODINE_MG_PER_L)
    }
}

fn plan(need: Need, source: Source) -> Plan {
    Plan {
        need,
        halogen: Halogen::Iodine,
        sources: vec![source, Source::CdcYellowBook],
    }
}

/// The wait: the grid's row for 4 mg/L whatever the dose, because in cloudy water the demand
/// eats what is added; half an hour, or an hour when cloudy, is only the floor.
pub(super) fn wait(water: &Water) -> Wait {
    let celsius = condition::celsius(water.warmth);
    let grid = contact_time::halogen_minutes(rule::IODINE_MG_PER_L, celsius);
    let floor = if condition::is_cloudy(water.clarity) {
        rule::CLOUDY_WAIT_MIN
    } else {
        rule::CLEAR_WAIT_MIN
    };
    let basis = match (celsius, grid > floor) {
        (None, true | false) => WaitBasis::RuleTemperatureUnknown,
        (Some(_), true) => WaitBasis::ColdWater,
        (Some(_), false) => WaitBasis::Rule,
    };
    Wait {
        minutes: grid.max(floor),
        basis,
        giardia: Cover::Partly,
    }
}
