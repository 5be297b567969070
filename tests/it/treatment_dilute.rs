//! Cleaning, hand and stock solutions: what is promised of each.

use matone::quantity::limit;
use matone::treatment::{Caution, Measure, Source};
use proptest::prelude::*;

use super::published::{mg_per_l, minutes};
use super::published_solutions::{amount, bulk_liquid, bulk_powder, dilute, dilution, tablet};

#[test]
fn as_strong_as_asked_is_used_as_it_is() {
    for (strength, volume) in [(1.0, 1.0), (1.0, 0.333), (0.9, 20.0)] {
        let outcome = dilute(bulk_liquid(strength), 1.0, volume);
        assert!(
            (amount(&outcome) - volume * 1000.0).abs() < 1e-6,
            "{outcome:?}"
        );
        let made = dilution(&outcome);
        assert_eq!((made.water_ml, made.parts_water), (Some(0.0), Some(0.0)));
    }
}

#[test]
fn product_and_water_make_the_volume() {
    // 3.5% to 0.5%, 20 L: a seventh is 2857 mL, rounded up.
    let outcome = dilute(bulk_liquid(3.5), 0.5, 20.0);
    let made = dilution(&outcome);
    assert_eq!(amount(&outcome), 2900.0);
    assert_eq!(
        (made.parts_water, made.water_ml),
        (Some(6.0), Some(17_100.0))
    );
    assert!((mg_per_l(&outcome) - 5075.0).abs() < 1e-6);
    assert_eq!(minutes(&outcome), 15.0);
}

#[test]
fn powder_is_made_up_to_the_volume() {
    let outcome = dilute(bulk_powder(70.0), 0.5, 10.0);
    assert_eq!(
        (amount(&outcome), dilution(&outcome).grams_per_litre),
        (72.0, Some(7.14))
    );
    let Measure::Powder(powder) = outcome.measure else {
        panic!("{outcome:?}")
    };
    assert_eq!(powder.stock, None, "it can be weighed");
    // Hands, one litre: 0.71 g cannot, and 50 mL of 1% stock is the same.
    let hands = dilute(bulk_powder(70.0), 0.05, 1.0);
    let Measure::Powder(powder) = hands.measure else {
        panic!("{hands:?}")
    };
    assert_eq!(powder.stock.map(|stock| stock.add.ml), Some(50.0));
}

/// A tablet of 5 g of chlorine in a litre would be ten times what hands may have: it makes ten.
#[test]
fn a_tablet_too_large_makes_more_of_it() {
    let hands = dilute(tablet(8680.0), 0.05, 1.0);
    assert_eq!((amount(&hands), dilution(&hands).litres), (1.0, 10.0));
    assert!((mg_per_l(&hands) - 500.0).abs() < 1e-6);
    let exact = dilute(tablet(8680.0), 0.2, 10.0);
    assert_eq!((amount(&exact), dilution(&exact).litres), (4.0, 10.0));
    // A catalogued size by its row: 67 mg carry 40, so 500 mg are 12.5 tablets.
    let small = dilute(tablet(67.0), 0.05, 1.0);
    assert_eq!((amount(&small), dilution(&small).litres), (13.0, 1.0));
    assert_eq!(dilution(&small).tablets_per_litre, Some(12.5));
    // Any other by the lower bound, 55%.
    assert_eq!(amount(&dilute(tablet(1000.0), 0.5, 11.0)), 100.0);
}

#[test]
fn cautions_and_sources() {
    let weak = dilute(bulk_liquid(5.0), 0.05, 10.0);
    assert_eq!(
        weak.cautions,
        [
            Caution::NeverMix,
            Caution::GlovesAndAir,
            Caution::FreshDaily,
            Caution::NotForDrinking,
            Caution::KeepFromChildren
        ]
    );
    assert_eq!(
        weak.sources,
        [
            Source::CdcAppendixE,
            Source::MsfCholeraAppendix15,
            Source::GtfccAppendix9
        ]
    );
    let stock = dilute(bulk_powder(70.0), 1.0, 1.0);
    assert!(stock.cautions.contains(&Caution::FreshDaily));
    assert!(stock.sources.contains(&Source::GtfccAppendix14));
    assert!(
        dilute(tablet(8680.0), 0.5, 1.0)
            .sources
            .contains(&Source::IfrcAction39)
    );
    assert_eq!(weak.covers, None);
}

fn within(limit: limit::Limit) -> impl Strategy<Value = f64> {
    (limit.min.ln()..=limit.max.ln()).prop_map(move |x| x.exp().clamp(limit.min, limit.max))
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

    /// Never weaker than asked, never more than a quarter stronger, product and water are the whole.
    #[test]
    fn solutions_are_as_strong_as_asked(
        strength in within(limit::BLEACH),
        lime in within(limit::BLEACHING_POWDER),
        mg in within(limit::CLEANING_TABLET),
        target in within(limit::SOLUTION),
        volume in within(limit::VOLUME),
    ) {
        let asked = target * 10_000.0;
        for outcome in [
            dilute(bulk_liquid(strength.max(target)), target, volume),
            dilute(bulk_powder(lime), target, volume),
            dilute(tablet(mg), target, volume),
        ] {
            let made = dilution(&outcome);
            let is_saturated = matches!(outcome.measure, Measure::Tablets(u32::MAX));
            if !is_saturated {
                prop_assert!(mg_per_l(&outcome) >= asked * (1.0 - 1e-6), "{outcome:?}");
                prop_assert!(mg_per_l(&outcome) <= asked * 1.2501 + 50.0, "{outcome:?}");
            }
            prop_assert!(made.litres >= volume);
            if let Some(water) = made.water_ml {
                prop_assert!(water >= 0.0);
                prop_assert!((water + amount(&outcome) - volume * 1000.0).abs() < 1e-6 * volume * 1000.0);
                prop_assert!(mg_per_l(&outcome) <= strength.max(target) * 10_000.0 * (1.0 + 1e-6));
            }
        }
    }
}
