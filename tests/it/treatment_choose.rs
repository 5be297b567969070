//! Choosing among what is at hand.

use matone::quantity::Pore;
use matone::request::{AtHand, Clarity, Person, Product, Refusal, Sky};
use matone::treatment::{
    Caution, ChooseOrder, Cover, Coverage, Detail, Elevation, Order, Outcome, Reason, Sewage,
    Verdict, Warmth, Water, treat,
};
use proptest::prelude::*;
use proptest::sample::{select, subsequence};

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

fn reason(outcome: &Outcome) -> Reason {
    match &outcome.detail {
        Detail::Choice(choice) => choice.reason,
        other => panic!("no choice: {other:?}"),
    }
}

/// A filter of so many µm.
fn rated(um: f64, have: &[AtHand]) -> ChooseOrder {
    ChooseOrder {
        pore: Some(Pore::from_micrometres(um).expect("a pore")),
        ..having(have)
    }
}

fn muddy(order: ChooseOrder) -> ChooseOrder {
    ChooseOrder {
        water: Water {
            clarity: Some(Clarity::Cloudy),
            ..order.water
        },
        ..order
    }
}

#[test]
fn the_reason_is_that_of_the_first() {
    for (have, expected) in [
        (&[FIRE] as &[AtHand], Reason::KillsAll),
        (&[BLEACH, FILTER, FIRE], Reason::KillsAll),
        (&[BLEACH, FILTER], Reason::TwoBarriers),
        (&[SUN, FILTER], Reason::TwoBarriers),
        (&[BLEACH], Reason::OnlyOne),
        (&[SUN], Reason::OnlyOne),
        (&[BLEACH, SUN], Reason::WidestCover),
        (&[], Reason::NothingElse),
    ] {
        assert_eq!(reason(&choose(having(have))), expected, "{have:?}");
    }
    let rain = ChooseOrder {
        sky: Some(Sky::Rain),
        ..having(&[SUN])
    };
    assert_eq!(reason(&choose(rain)), Reason::NothingElse);
    // Cloth: nothing is stopped, so nothing is at hand.
    let cloth = choose(rated(100.0, &[FILTER]));
    assert_eq!(
        (cloth.methods(), reason(&cloth)),
        (&[vec![FIRE]] as _, Reason::NothingElse)
    );
    // Iodine is there, but not for her.
    let pregnant = ChooseOrder {
        people: vec![Person::Pregnant],
        ..having(&[IODINE, SUN])
    };
    assert_eq!(reason(&choose(pregnant)), Reason::OnlyOne);
}

#[test]
fn sun_and_a_fine_filter_are_a_pair_where_there_is_no_chlorine() {
    let pair = choose(rated(0.2, &[SUN, FILTER]));
    assert_eq!(pair.methods(), [vec![FILTER, SUN], vec![SUN], vec![FILTER]]);
    let covers = pair.covers.expect("covers");
    assert_eq!(covers.bacteria, Cover::Yes);
    assert_eq!(covers.cryptosporidium, Cover::Yes);
    assert_eq!(covers.viruses, Cover::Partly);
    assert_eq!(
        choose(rated(5.0, &[SUN, FILTER])).methods(),
        [vec![SUN], vec![FILTER]],
        "a coarse filter is no partner"
    );
    assert!(
        !choose(having(&[SUN, FILTER, BLEACH]))
            .methods()
            .contains(&vec![FILTER, SUN])
    );
    // Iodine's cautions leave the sun its chance, behind the wider cover.
    assert_eq!(
        choose(rated(0.2, &[SUN, FILTER, IODINE])).methods(),
        [
            vec![FILTER, IODINE],
            vec![FILTER, SUN],
            vec![SUN],
            vec![FILTER],
            vec![IODINE]
        ]
    );
}

/// It kills bacteria and viruses, which a coarse filter lets pass.
#[test]
fn iodine_comes_before_a_coarse_filter() {
    assert_eq!(
        choose(rated(5.0, &[FILTER, IODINE])).methods(),
        [vec![IODINE], vec![FILTER]]
    );
}

#[test]
fn mud_puts_the_sun_last_or_out() {
    let methods = |have: &[AtHand]| choose(muddy(having(have))).methods().to_vec();
    assert_eq!(methods(&[SUN]), [vec![SUN]], "the only thing");
    assert_eq!(methods(&[SUN, IODINE]), [vec![IODINE]]);
    assert_eq!(
        methods(&[SUN, BLEACH, FILTER, FIRE]),
        [vec![FIRE], vec![FILTER, BLEACH], vec![BLEACH], vec![FILTER]]
    );
    // The filter clears the water first.
    assert_eq!(methods(&[SUN, FILTER]), [vec![FILTER, SUN], vec![FILTER]]);
    assert_eq!(
        choose(muddy(rated(5.0, &[SUN, FILTER]))).methods(),
        [vec![SUN], vec![FILTER]]
    );
    for have in [&[SUN] as &[AtHand], &[BLEACH], &[FILTER, BLEACH], &[FIRE]] {
        assert!(
            choose(muddy(having(have)))
                .cautions
                .contains(&Caution::StrainFirst),
            "{have:?}"
        );
    }
}

#[test]
fn cold_water_takes_longer() {
    let cautions = |warmth| {
        let water = Water {
            warmth,
            ..Water::default()
        };
        choose(ChooseOrder {
            water,
            ..having(&[BLEACH])
        })
        .cautions
    };
    for warmth in [
        Warmth::Cold,
        Warmth::Unknown,
        super::published::celsius(4.0),
    ] {
        assert!(
            cautions(warmth).contains(&Caution::ColdTakesLonger),
            "{warmth:?}"
        );
    }
    assert!(!cautions(super::published::celsius(25.0)).contains(&Caution::ColdTakesLonger));
}

/// Sun, then chlorine: two barriers for those who need them, though one would do for others.
#[test]
fn sewage_makes_a_pair_of_sun_and_chlorine() {
    let foul = |order: ChooseOrder| ChooseOrder {
        water: Water {
            sewage: Sewage::Present,
            ..order.water
        },
        ..order
    };
    let outcome = choose(foul(having(&[BLEACH, SUN])));
    assert_eq!(outcome.methods().first(), Some(&vec![SUN, BLEACH]));
    assert_eq!(reason(&outcome), Reason::TwoBarriers);
    assert_eq!(
        outcome.cautions.first(),
        Some(&Caution::Sewage),
        "boil if it can be had"
    );
    assert!(!outcome.cautions.contains(&Caution::SecondMethod));
    let mud = choose(foul(muddy(having(&[BLEACH, SUN]))));
    assert_eq!(mud.methods(), [vec![BLEACH]]);
    assert!(mud.cautions.contains(&Caution::SecondMethod));
}

/// Two points for a class that is covered, one for part of it.
fn width(covers: Coverage) -> u32 {
    [
        covers.bacteria,
        covers.viruses,
        covers.giardia,
        covers.cryptosporidium,
    ]
    .into_iter()
    .map(|cover| match cover {
        Cover::No => 0,
        Cover::Partly => 1,
        Cover::Yes => 2,
    })
    .sum()
}

proptest! {
    /// "The widest cover" is said only where it is true, and the reason fits the first in all cases.
    #[test]
    fn reasons_are_true(
        have in subsequence(vec![FIRE, FILTER, SUN, BLEACH, TABLETS, DIOXIDE, IODINE], 0..=7),
        clarity in select(vec![None, Some(Clarity::Clear), Some(Clarity::Cloudy)]),
        sewage in select(vec![Sewage::NotSaid, Sewage::Present]),
        warmth in select(vec![Warmth::Cold, Warmth::Unknown, super::published::celsius(22.0)]),
        sky in select(vec![None, Some(Sky::Rain), Some(Sky::Sunny)]),
        um in select(vec![None, Some(0.01), Some(0.2), Some(1.0), Some(5.0), Some(50.0)]),
    ) {
        let order = ChooseOrder {
            water: Water { clarity, sewage, warmth, ph: None },
            sky,
            pore: um.map(|um| Pore::from_micrometres(um).expect("a pore")),
            ..having(&have)
        };
        let outcome = choose(order.clone());
        let methods = outcome.methods();
        let first = methods.first().expect("something is proposed");
        for method in methods.iter().flatten() {
            prop_assert!(have.contains(method) || reason(&outcome) == Reason::NothingElse);
        }
        match reason(&outcome) {
            Reason::KillsAll => prop_assert_eq!(first, &vec![FIRE]),
            Reason::NothingElse => prop_assert!(!have.contains(&FIRE)),
            Reason::OnlyOne => prop_assert_eq!((first.len(), methods.len()), (1, 1)),
            Reason::TwoBarriers => prop_assert_eq!(first.len(), 2),
            Reason::WidestCover => {
                let own = width(outcome.covers.expect("covers"));
                for other in methods {
                    let other = choose(ChooseOrder { have: other.clone(), ..order.clone() });
                    prop_assert!(width(other.covers.expect("covers")) <= own);
                }
            }
        }
        prop_assert_eq!(have.contains(&FIRE), reason(&outcome) == Reason::KillsAll);
    }
}

#[test]
fn fire_comes_first_whatever_the_order_said() {
    let order = ChooseOrder {
        elevation: Elevation::Measured(metres(2000.0)),
        ..having(&[IODINE, BLEACH, SUN, FILTER, FIRE])
    };
    let outcome = choose(order);
    assert_eq!(
        outcome.methods(),
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
    assert_eq!(outcome.covers.expect("covers").cryptosporidium, Cover::Yes);
}

#[test]
fn a_fine_filter_and_chlorine_are_a_pair() {
    let order = ChooseOrder {
        pore: Some(Pore::from_micrometres(1.0).expect("a pore")),
        ..having(&[TABLETS, FILTER])
    };
    let outcome = choose(order);
    assert_eq!(outcome.methods().first(), Some(&vec![FILTER, TABLETS]));
    assert_eq!(outcome.wait, None);
    let covers = outcome.covers.expect("covers");
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
    assert_eq!(choose(order).methods(), [vec![BLEACH], vec![FILTER]]);
}

#[test]
fn dioxide_before_chlorine_before_sun_before_iodine() {
    let outcome = choose(having(&[IODINE, SUN, DIOXIDE, TABLETS, BLEACH]));
    assert_eq!(
        outcome.methods(),
        [
            vec![DIOXIDE],
            vec![BLEACH],
            vec![TABLETS],
            vec![SUN],
            vec![IODINE]
        ]
    );
    assert_eq!(reason(&outcome), Reason::WidestCover);
    let cloudy = Water {
        clarity: Some(Clarity::Cloudy),
        ..Water::default()
    };
    let outcome = choose(ChooseOrder {
        water: cloudy,
        ..having(&[SUN, BLEACH])
    });
    assert_eq!(outcome.methods(), [vec![BLEACH]], "no sun through mud");
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
    assert_eq!(rain(&[SUN, BLEACH]).methods(), [vec![BLEACH]]);
    assert_eq!(
        rain(&[SUN]).methods(),
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
            choose(order(&[IODINE, SUN])).methods(),
            [vec![SUN]],
            "{person:?}"
        );
        assert_eq!(
            choose(order(&[IODINE, FILTER])).methods(),
            [vec![FILTER]],
            "{person:?}"
        );
    }
    assert_eq!(choose(having(&[IODINE])).methods(), [vec![IODINE]]);
}

#[test]
fn with_nothing_at_hand_boiling_is_named() {
    let outcome = choose(having(&[]));
    assert_eq!(outcome.methods(), [vec![FIRE]]);
    assert_eq!(minutes(&outcome), 1.0);
    assert_eq!(outcome.covers.expect("covers").viruses, Cover::Yes);
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
