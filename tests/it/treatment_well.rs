//! Shock chlorination of wells.

use std::f64::consts::PI;
use std::time::Duration;

use matone::quantity::{Depth, Diameter, Ph, Strength, limit};
use matone::request::Clarity;
use matone::treatment::{
    BulkChlorine, Caution, Detail, Measure, Order, Outcome, Source, WellFinding, WellOrder, treat,
};
use proptest::prelude::*;

use super::published::{liquid, mg_per_l, percent, ph, powder};

/// A well of which only the size is known.
pub(crate) fn well(with: BulkChlorine, across: f64, deep: f64) -> WellOrder {
    WellOrder {
        with,
        diameter: Diameter::from_metres(across).expect("a width within the limits"),
        water_depth: Depth::from_metres(deep).expect("a depth within the limits"),
        clarity: None,
        ph: None,
    }
}

/// The outcome; a well is never refused.
pub(crate) fn shock(order: WellOrder) -> Outcome {
    treat(&Order::Well(order)).expect("not refused")
}

/// What belongs to wells only.
pub(crate) fn finding(outcome: &Outcome) -> WellFinding {
    match outcome.detail {
        Detail::Well(finding) => finding,
        Detail::Choice(_)
        | Detail::Dilution(_)
        | Detail::JarTest(_)
        | Detail::Plain
        | Detail::Residual(_)
        | Detail::Storage(_)
        | Detail::Supply(_) => panic!("no well: {:?}", outcome.detail),
    }
}

/// A labelled liquid.
pub(crate) fn bleach(value: f64) -> BulkChlorine {
    BulkChlorine::Liquid(percent(value))
}

/// A labelled powder.
pub(crate) fn hypochlorite(value: f64) -> BulkChlorine {
    BulkChlorine::Powder(percent(value))
}

#[test]
fn a_dug_well_by_bleach_and_by_powder() {
    let outcome = shock(well(bleach(5.0), 1.4, 3.5));
    // 5387.8 L at 100 mg/L are 538.8 g, 10.776 L of 5%.
    assert_eq!(liquid(&outcome).ml, 10_800.0);
    assert_eq!(finding(&outcome).litres, 5388.0);
    assert_eq!(finding(&outcome).wall_ml, 40.0);
    assert_eq!(finding(&outcome).wall_litres, 10.0);
    assert_eq!(outcome.wait, Some(Duration::from_secs(12 * 3600)));
    assert_eq!(outcome.sources.first(), Some(&Source::WhoUnhcr1997));

    let outcome = shock(well(hypochlorite(70.0), 1.4, 3.5));
    assert_eq!(powder(&outcome).grams, 770.0);
    assert_eq!(powder(&outcome).stock, None, "it can be weighed");
    assert_eq!(finding(&outcome).wall_ml, 200.0);
}

#[test]
fn a_few_grams_for_a_narrow_pipe_go_by_stock() {
    // 19.6 L ask for 2.8 g.
    let measure = powder(&shock(well(hypochlorite(70.0), 0.05, 10.0)));
    assert_eq!(measure.grams, 2.9);
    assert_eq!(measure.stock.map(|stock| stock.add.ml), Some(200.0));
}

#[test]
fn nobody_drinks_first_then_it_must_be_clear() {
    let order = well(bleach(5.0), 1.0, 3.0);
    assert_eq!(
        shock(order).cautions,
        [
            Caution::NotUntilPumped,
            Caution::WellClearFirst,
            Caution::UnscentedOnly,
            Caution::NeverMix,
            Caution::GlovesAndAir,
            Caution::KeepTreating
        ]
    );
    let with = |clarity, ph| {
        shock(WellOrder {
            clarity,
            ph,
            ..order
        })
        .cautions
    };
    let clear = with(Some(Clarity::Clear), None);
    assert!(!clear.contains(&Caution::WellClearFirst));
    let cloudy = with(Some(Clarity::Cloudy), ph(8.0));
    assert_eq!(
        cloudy[..3],
        [
            Caution::NotUntilPumped,
            Caution::WellClearFirst,
            Caution::WellPh
        ]
    );
    for (value, warned) in [(5.9, true), (6.0, false), (7.5, false), (7.6, true)] {
        let outcome = shock(WellOrder {
            ph: ph(value),
            ..order
        });
        assert_eq!(
            outcome.cautions.contains(&Caution::WellPh),
            warned,
            "{value}"
        );
        assert_eq!(outcome.sources.contains(&Source::Agwt), warned, "{value}");
    }
}

fn product() -> impl Strategy<Value = BulkChlorine> {
    let strength = |value: f64| Strength::from_percent(value).expect("within");
    prop_oneof![
        (limit::BLEACH.min..=limit::BLEACH.max)
            .prop_map(move |value| BulkChlorine::Liquid(strength(value))),
        (limit::BLEACHING_POWDER.min..=limit::CALCIUM_HYPOCHLORITE.max)
            .prop_map(move |value| BulkChlorine::Powder(strength(value))),
    ]
}

/// Small as often as large: a well is rarely twenty metres across.
fn spread(limit: limit::Limit) -> impl Strategy<Value = f64> {
    (0.0..=1.0_f64).prop_map(move |share| {
        (limit.min * (limit.max / limit.min).powf(share)).clamp(limit.min, limit.max)
    })
}

proptest! {
    #[test]
    fn a_well_gets_100_mg_per_litre_and_never_500(
        with in product(),
        across in spread(limit::WELL_DIAMETER),
        deep in spread(limit::WELL_DEPTH),
        acidity in proptest::option::of(limit::PH.min..=limit::PH.max),
    ) {
        let order = WellOrder {
            ph: acidity.map(|value| Ph::from_ph(value).expect("within")),
            ..well(with, across, deep)
        };
        let outcome = shock(order);
        let exact = PI * across * across / 4.0 * deep * 1000.0;
        let told = finding(&outcome).litres;
        prop_assert!(told >= exact * (1.0 - 1e-8), "{told} for {exact}");
        prop_assert!(told <= exact + 1.0 + 1e-8 * exact);
        let dose = mg_per_l(&outcome);
        prop_assert!(dose >= 100.0 * (1.0 - 1e-8), "{dose}");
        prop_assert!(dose < 500.0, "{dose}");
        // From a litre on, rounding adds no more than a quarter.
        if exact >= 1.0 {
            prop_assert!(dose <= 125.0 + 1e-6, "{dose}");
        }
        // The measure is what the dose says.
        let brought = match (outcome.measure, with) {
            (Measure::Liquid(liquid), BulkChlorine::Liquid(strength)) => {
                liquid.ml * strength.mg_per_ml()
            }
            (Measure::Powder(powder), BulkChlorine::Powder(strength)) => {
                prop_assert_eq!(powder.stock.is_some(), powder.grams < 5.0);
                if let Some(stock) = powder.stock {
                    let by_stock = stock.add.ml * 10.0 / exact;
                    prop_assert!((100.0 - 1e-6..500.0).contains(&by_stock), "{}", by_stock);
                }
                powder.grams * strength.percent() * 10.0
            }
            (other, _) => return Err(TestCaseError::fail(format!("{other:?}"))),
        };
        prop_assert!((brought / exact / dose - 1.0).abs() < 1e-9);
        // The walls: at least 200 mg/L, and the bucket holds it.
        let walls = finding(&outcome);
        prop_assert!(walls.wall_ml <= walls.wall_litres * 1000.0);
        let strength = match with {
            BulkChlorine::Liquid(strength) => strength.mg_per_ml(),
            BulkChlorine::Powder(_) => 10.0,
        };
        let wall = walls.wall_ml * strength / walls.wall_litres;
        prop_assert!((200.0 - 1e-6..=250.0 + 1e-6).contains(&wall), "{wall}");
        prop_assert_eq!(outcome.cautions.first(), Some(&Caution::NotUntilPumped));
    }
}
