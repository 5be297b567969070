//! Facts of several messages, put together.

use crate::parser::{Doubt, Note};
use crate::request::{Facts, Field, Person as Drinker, Refusal};

/// Why no dose is given for these facts, however complete they are.
pub(super) fn refusal_of(facts: &Facts, notes: &[Note]) -> Option<Refusal> {
    let iodine = facts.product.is_some_and(|product| product.is_iodine());
    if facts.chemical {
        Some(Refusal::Chemical)
    } else if iodine && (!iodine_suits(facts) || notes.contains(&Note::LongUse)) {
        Some(Refusal::IodineUnsuitable)
    } else {
        None
    }
}

pub(super) fn product_doubted(doubts: &[Doubt]) -> bool {
    doubts.iter().any(|doubt| doubt.field() == Field::Product)
}

fn iodine_suits(facts: &Facts) -> bool {
    !facts.person.iter().any(|person| match person {
        Drinker::Infant | Drinker::Pregnant | Drinker::Thyroid => true,
        Drinker::WeakImmunity => false,
    })
}

/// Whether a message states anything that a dose depends on.
pub(super) fn states_something(stated: &Facts) -> bool {
    stated.product.is_some()
        || stated.strength_percent.is_some()
        || stated.tablet_mg.is_some()
        || stated.volume_l.is_some()
        || stated.clarity.is_some()
        || stated.temperature_c.is_some()
        || stated.chill.is_some()
        || stated.ph.is_some()
        || stated.sewage
        || stated.chemical
        || !stated.person.is_empty()
}

/// What was said before, with what is said now on top. Another product brings its own figures.
pub(super) fn merge(base: &Facts, stated: &Facts, doubts: &[Doubt]) -> Facts {
    let mut facts = base.clone();
    let doubted = |field: Field| doubts.iter().any(|doubt| doubt.field() == field);
    if doubted(Field::Product) || stated.product.is_some_and(|new| base.product != Some(new)) {
        if base.product.is_some() {
            facts.strength_percent = None;
            facts.tablet_mg = None;
            facts.label_litres = None;
        }
        facts.product = None;
    }
    // A doubt about a figure replaces the figure: what was sure before is sure no more.
    if doubted(Field::StrengthPercent) {
        facts.strength_percent = None;
    }
    if doubted(Field::TabletMg) {
        facts.tablet_mg = None;
    }
    if doubts
        .iter()
        .any(|doubt| doubt.field() == Field::VolumeL && *doubt != Doubt::VolumeUnsized)
    {
        facts.volume_l = None;
    }
    facts.product = stated.product.or(facts.product);
    facts.strength_percent = stated.strength_percent.or(facts.strength_percent);
    facts.tablet_mg = stated.tablet_mg.or(facts.tablet_mg);
    facts.label_litres = stated.label_litres.or(facts.label_litres);
    if stated.volume_l.is_some() {
        facts.volume_l = stated.volume_l;
        facts.volume_system = stated.volume_system;
    }
    facts.clarity = stated.clarity.or(facts.clarity);
    if stated.temperature_c.is_some() || stated.chill.is_some() {
        facts.temperature_c = stated.temperature_c;
        facts.chill = stated.chill;
    }
    facts.ph = stated.ph.or(facts.ph);
    facts.sewage |= stated.sewage;
    facts.chemical |= stated.chemical;
    for person in &stated.person {
        if !facts.person.contains(person) {
            facts.person.push(*person);
        }
    }
    facts
}
