//! Facts of several messages, put together.

use crate::parser::{Doubt, Note};
use crate::request::{Facts, Field, Person as Drinker, Refusal, Work};

/// Why no dose is given for these facts, however complete they are.
pub(super) fn refusal_of(facts: &Facts, notes: &[Note]) -> Option<Refusal> {
    let iodine = facts.product.is_some_and(|product| product.is_iodine());
    if facts.chemical {
        Some(Refusal::Chemical)
    } else if iodine && !iodine_suits(facts, notes) {
        Some(Refusal::IodineUnsuitable)
    } else {
        None
    }
}

pub(super) fn product_doubted(doubts: &[Doubt]) -> bool {
    doubts.iter().any(|doubt| doubt.field() == Field::Product)
}

/// Whether iodine may be drunk by whom and for as long as is told.
pub(super) fn iodine_suits(facts: &Facts, notes: &[Note]) -> bool {
    !notes.contains(&Note::LongUse)
        && !facts.person.iter().any(|person| match person {
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

/// Whether a message states anything that a kind of work has a use for.
pub(super) fn matters(work: Work, stated: &Facts) -> bool {
    let label = stated.product.is_some() || stated.strength_percent.is_some();
    let tablet = stated.tablet_mg.is_some();
    let volume = stated.volume_l.is_some();
    match work {
        Work::Well => {
            label
                || stated.diameter_m.is_some()
                || stated.water_depth_m.is_some()
                || stated.clarity.is_some()
                || stated.ph.is_some()
        }
        Work::Dilute => {
            label || tablet || volume || stated.target_percent.is_some() || stated.purpose.is_some()
        }
        Work::Residual => {
            label
                || tablet
                || volume
                || stated.residual_mg_per_l.is_some()
                || stated.minutes.is_some()
                || stated.taken.is_some()
                || stated.ph.is_some()
                || stated.outbreak
        }
        Work::Supply => {
            label
                || tablet
                || volume
                || stated.clarity.is_some()
                || stated.people.is_some()
                || stated.days.is_some()
                || stated.stock_ml.is_some()
                || stated.stock_g.is_some()
                || stated.tablets.is_some()
        }
        Work::Dose => states_something(stated),
    }
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
        facts.each_l = stated.each_l;
        facts.each_in.clone_from(&stated.each_in);
    }
    facts.clarity = stated.clarity.or(facts.clarity);
    // "There is ice" does not warm the water that was measured.
    let colder = facts.temperature_c.is_some_and(|celsius| celsius < 10.0);
    if stated.temperature_c.is_some() || (stated.chill.is_some() && !colder) {
        facts.temperature_c = stated.temperature_c;
        facts.chill = stated.chill;
    }
    facts.ph = stated.ph.or(facts.ph);
    facts.patients |= stated.patients;
    for (slot, new) in [
        (&mut facts.diameter_m, stated.diameter_m),
        (&mut facts.water_depth_m, stated.water_depth_m),
        (&mut facts.target_percent, stated.target_percent),
        (&mut facts.residual_mg_per_l, stated.residual_mg_per_l),
        (&mut facts.minutes, stated.minutes),
        (&mut facts.people, stated.people),
        (&mut facts.days, stated.days),
        (&mut facts.stock_ml, stated.stock_ml),
        (&mut facts.stock_g, stated.stock_g),
        (&mut facts.tablets, stated.tablets),
        (&mut facts.jar_l, stated.jar_l),
        (&mut facts.litres_each, stated.litres_each),
    ] {
        *slot = new.or(*slot);
    }
    if stated.altitude_m.is_some() || stated.height.is_some() {
        facts.altitude_m = stated.altitude_m;
        facts.height = stated.height;
    }
    facts.sky = stated.sky.or(facts.sky);
    facts.pore_um = stated.pore_um.or(facts.pore_um);
    facts.asks_jar_method = stated.asks_jar_method;
    // A weaker dose was for the water before.
    facts.change = None;
    facts.purpose = stated.purpose.or(facts.purpose);
    facts.taken = stated.taken.or(facts.taken);
    facts.nose = stated.nose.or(facts.nose);
    // A nose speaks of other water than the reading before, and a reading settles what it said.
    if stated.residual_mg_per_l.is_some() {
        facts.nose = None;
    } else if stated.nose.is_some() {
        facts.residual_mg_per_l = None;
        facts.jars.clear();
    }
    facts.outbreak |= stated.outbreak;
    if !stated.jars.is_empty() {
        facts.jars.clone_from(&stated.jars);
    }
    facts.sewage |= stated.sewage;
    facts.chemical |= stated.chemical;
    for person in &stated.person {
        if !facts.person.contains(person) {
            facts.person.push(*person);
        }
    }
    facts
}
