//! Choosing among what is at hand.

use matone::quantity::Pore;
use matone::request::{AtHand, Clarity, Person, Product, Refusal, Sky};
use matone::treatment::{
    Caution, ChooseOrder, Cover, Elevation, Order, Outcome, Sewage, Verdict, Water, treat,
};

use super::published::{metres, minutes};

const BLEACH: AtHand = AtHand::Product(Product::Bleach);
const IODINE: AtHand = AtHand::Product(Product::IodineTincture);
const TABLETS: AtHand = AtHand::Product(Product::Nadcc);
const DIOXIDE: AtHand = AtHand::Product(Product::ChlorineDioxide);
const SUN: AtHand = AtHand::Sunlight;
const FILTER: AtHand = AtHand::Filter;
const FIRE: AtHand = AtHand::Fire;

fn having(have: &[AtHand]) -> ChooseOrder {
    ChooseOrder {
        have: have.to_vec(),
        ..ChooseOrder::default()
    }
}

fn ask(order: ChooseOrder) -> Verdict {
    treat(&Order::Choose(order))
}

fn choose(order: ChooseOrder) -> Outcome {
    ask(order).expect("not refused")
}

#[test]
fn fire_comes_first_whatever_the_order_said() {
    let order = ChooseOrder {
        elevation: Elevation::Measured(metres(2000.0)),
        ..having(&[IODINE, BLEACH, SUN, FILTER, FIRE])
    };
    let outcome = choose(order);
    assert_eq!(
        outcome.methods,
        [
            vec![FIRE],
            vec![FILTER, BLEACH],
            vec![BLEACH],
            vec![SUN],
            vec![FILTER],
            vec![IODINE]
        ]
    );
    assert_eq!(minutes(&outcome), 3.0);
    assert!(outcome.boiling_point_c.is_some());
    assert_eq!(outcome.covers.cryptosporidium, Cover::Yes);
}

#[test]
fn a_fine_filter_and_chlorine_are_a_pair() {
    let order = ChooseOrder {
        pore: Some(Pore::from_micrometres(1.0).expect("a pore")),
        ..having(&[TABLETS, FILTER])
    };
    let outcome = choose(order);
    assert_eq!(outcome.methods.first(), Some(&vec![FILTER, TABLETS]));
    assert_eq!(outcome.wait, None);
    let covers = outcome.covers;
    for cover in [
        covers.bacteria,
        covers.viruses,
        covers.giardia,
        covers.cryptosporidium,
    ] {
        assert_eq!(cover, Cover::Yes, "each stops what the other lets through");
    }
    // What the pair covers is not warned of.
    assert!(!outcome.cautions.contains(&Caution::VirusesPass));
    assert!(!outcome.cautions.contains(&Caution::CryptosporidiumSurvives));
    assert!(outcome.cautions.contains(&Caution::AbsolutePore));
}

#[test]
fn a_coarse_filter_is_no_partner() {
    let order = ChooseOrder {
        pore: Some(Pore::from_micrometres(5.0).expect("a pore")),
        ..having(&[FILTER, BLEACH])
    };
    assert_eq!(choose(order).methods, [vec![BLEACH], vec![FILTER]]);
}

#[test]
fn chlorine_before_dioxide_before_sun_before_iodine() {
    let outcome = choose(having(&[IODINE, SUN, DIOXIDE, TABLETS, BLEACH]));
    assert_eq!(
        outcome.methods,
        [
            vec![BLEACH],
            vec![TABLETS],
            vec![DIOXIDE],
            vec![SUN],
            vec![IODINE]
        ]
    );
    let cloudy = Water {
        clarity: Some(Clarity::Cloudy),
        ..Water::default()
    };
    let outcome = choose(ChooseOrder {
        water: cloudy,
        ..having(&[SUN, BLEACH])
    });
    assert_eq!(outcome.methods, [vec![BLEACH], vec![SUN]]);
    assert_eq!(outcome.cautions.first(), Some(&Caution::StrainFirst));
}

#[test]
fn no_sun_in_the_rain() {
    let rain = |have: &[AtHand]| {
        choose(ChooseOrder {
            sky: Some(Sky::Rain),
            ..having(have)
        })
    };
    assert_eq!(rain(&[SUN, BLEACH]).methods, [vec![BLEACH]]);
    assert_eq!(
        rain(&[SUN]).methods,
        [vec![FIRE]],
        "nothing helps: look for fire"
    );
}

#[test]
fn iodine_is_never_proposed_to_those_who_must_not_drink_it() {
    for person in [Person::Infant, Person::Pregnant, Person::Thyroid] {
        let order = |have: &[AtHand]| ChooseOrder {
            people: vec![person],
            ..having(have)
        };
        assert_eq!(
            ask(order(&[IODINE])),
            Err(Refusal::IodineUnsuitable),
            "{person:?}"
        );
        assert_eq!(
            choose(order(&[IODINE, SUN])).methods,
            [vec![SUN]],
            "{person:?}"
        );
        assert_eq!(
            choose(order(&[IODINE, FILTER])).methods,
            [vec![FILTER]],
            "{person:?}"
        );
    }
    assert_eq!(choose(having(&[IODINE])).methods, [vec![IODINE]]);
}

#[test]
fn with_nothing_at_hand_boiling_is_named() {
    let outcome = choose(having(&[]));
    assert_eq!(outcome.methods, [vec![FIRE]]);
    assert_eq!(minutes(&outcome), 1.0);
    assert_eq!(outcome.covers.viruses, Cover::Yes);
}

#[test]
fn sewage_and_weak_immunity_want_two_barriers() {
    let foul = Water {
        sewage: Sewage::Present,
        ..Water::default()
    };
    let sewage = |have: &[AtHand]| {
        choose(ChooseOrder {
            water: foul,
            ..having(have)
        })
        .cautions
    };
    assert!(sewage(&[BLEACH]).starts_with(&[Caution::Sewage, Caution::SecondMethod]));
    assert!(sewage(&[FILTER]).contains(&Caution::SecondMethod));
    assert!(!sewage(&[FILTER, BLEACH]).contains(&Caution::SecondMethod));
    assert!(!sewage(&[FIRE, BLEACH]).contains(&Caution::SecondMethod));
    let weak = |have: &[AtHand]| {
        choose(ChooseOrder {
            people: vec![Person::WeakImmunity],
            ..having(have)
        })
        .cautions
    };
    assert!(weak(&[BLEACH]).starts_with(&[Caution::WeakImmunityBoil, Caution::SecondMethod]));
    assert!(!weak(&[FIRE]).contains(&Caution::SecondMethod));
}

#[test]
fn no_caution_or_source_is_said_twice() {
    let all = [FIRE, FILTER, SUN, BLEACH, TABLETS, DIOXIDE, IODINE];
    let cloudy = Water {
        clarity: Some(Clarity::Cloudy),
        ..Water::default()
    };
    for first in 0..all.len() {
        let have: Vec<_> = all.iter().copied().skip(first).collect();
        let outcome = choose(ChooseOrder {
            water: cloudy,
            ..having(&have)
        });
        let mut cautions = outcome.cautions.clone();
        cautions.sort();
        cautions.dedup();
        assert_eq!(cautions.len(), outcome.cautions.len(), "{outcome:?}");
        assert!(!outcome.sources.is_empty(), "{outcome:?}");
    }
}
