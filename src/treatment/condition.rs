//! What the condition of the water means for dose, wait and warnings.

use crate::quantity::{Ph, Volume};
use crate::request::{Clarity, Person};

use super::order::{Sewage, Warmth, Water};
use super::outcome::Caution;
use super::rule;

/// Whether it is cloudy. Water of which nothing was said counts as clear; the reply says what to
/// do if it is not.
pub(super) fn is_cloudy(clarity: Option<Clarity>) -> bool {
    match clarity {
        Some(Clarity::Cloudy) => true,
        Some(Clarity::Clear) | None => false,
    }
}

/// Whether it is very cold.
pub(super) fn is_cold(warmth: Warmth) -> bool {
    match warmth {
        Warmth::Cold => true,
        Warmth::Measured(temperature) => temperature.celsius() < rule::COLD_BELOW_CELSIUS,
        Warmth::Unknown => false,
    }
}

/// Whether the chlorine dose is doubled. Cloudy and cold is still double, not fourfold.
pub(super) fn is_doubled(water: &Water) -> bool {
    is_cloudy(water.clarity) || is_cold(water.warmth)
}

/// The factor of the chlorine dose.
pub(super) fn chlorine_factor(water: &Water) -> f64 {
    if is_doubled(water) { rule::DOUBLE } else { 1.0 }
}

/// Whether chlorine works slowly in it: more must be left, and later. Water of unknown pH counts
/// as ordinary.
pub(super) fn is_alkaline(ph: Option<Ph>) -> bool {
    ph.is_some_and(|ph| ph.ph() >= rule::ALKALINE_FROM_PH)
}

/// Whether so much water stands in a tank.
pub(super) fn is_tank(volume: Volume) -> bool {
    volume.litres() >= rule::TANK_LITRES * (1.0 - 1e-9)
}

/// The shortest wait for chlorine that the size of the water asks for, in minutes: a tank mixes
/// slowly.
pub(super) fn tank_wait(volume: Volume) -> f64 {
    if is_tank(volume) {
        rule::TANK_WAIT_MIN
    } else {
        0.0
    }
}

/// The temperature that the wait is worked out for, where there is one.
pub(super) fn celsius(warmth: Warmth) -> Option<f64> {
    match warmth {
        Warmth::Cold => Some(rule::COLD_TO_THE_HAND_CELSIUS),
        Warmth::Measured(temperature) => Some(temperature.celsius()),
        Warmth::Unknown => None,
    }
}

/// Whether sewage gets in.
pub(super) fn has_sewage(sewage: Sewage) -> bool {
    match sewage {
        Sewage::Present => true,
        Sewage::NotSaid => false,
    }
}

/// Whether somebody drinks it whom the leftover risk would hit hardest.
pub(super) fn is_frail(people: &[Person]) -> bool {
    people.iter().any(|person| match person {
        Person::Infant | Person::WeakImmunity => true,
        Person::Pregnant | Person::Thyroid => false,
    })
}

/// The cautions that come before any dose: boil if it can be had, then make the water clear.
pub(super) fn first_cautions(water: &Water, people: &[Person]) -> Vec<Caution> {
    let mut cautions = Vec::new();
    if has_sewage(water.sewage) {
        cautions.push(Caution::Sewage);
    }
    if is_frail(people) {
        cautions.push(Caution::WeakImmunityBoil);
    }
    if is_cloudy(water.clarity) {
        cautions.push(Caution::StrainFirst);
    }
    cautions
}

/// The caution for water of unknown temperature.
pub(super) fn cold_caution(warmth: Warmth) -> Option<Caution> {
    match warmth {
        Warmth::Unknown => Some(Caution::ColdTakesLonger),
        Warmth::Cold | Warmth::Measured(_) => None,
    }
}
