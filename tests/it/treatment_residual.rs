//! Chlorine tests and topping up.

use matone::quantity::{Ph, Residual, Strength, TabletMass, limit};
use matone::request::Taken;
use matone::treatment::{
    BulkChlorine, Caution, Detail, Evidence, Measure, Order, Outbreak, Outcome, ResidualFinding,
    ResidualOrder, ResidualVerdict, Source, TopUpChlorine, treat,
};
use proptest::prelude::*;

use super::published::{liquid, litres, mg, mg_per_l, minutes, percent, ph, powder, tablets};

/// No kit, nothing known.
const NOTHING: ResidualOrder = ResidualOrder {
    evidence: Evidence::NoKit,
    taken: None,
    minutes: None,
    ph: None,
    outbreak: Outbreak::NotSaid,
    top_up: None,
};

/// A bare reading.
pub(crate) fn reading(value: f64) -> ResidualOrder {
    ResidualOrder {
        evidence: Evidence::Measured(Residual::from_mg_per_litre(value).expect("within")),
        ..NOTHING
    }
}

/// The outcome; a test is never refused.
pub(crate) fn ask(order: ResidualOrder) -> Outcome {
    treat(&Order::Residual(order)).expect("not refused")
}

/// What belongs to chlorine tests only.
pub(crate) fn finding(outcome: &Outcome) -> ResidualFinding {
    match outcome.detail {
        Detail::Residual(finding) => finding,
        Detail::Choice(_)
        | Detail::Dilution(_)
        | Detail::JarTest(_)
        | Detail::Plain
        | Detail::Storage(_)
        | Detail::Supply(_)
        | Detail::Well(_) => panic!("no chlorine test: {:?}", outcome.detail),
    }
}

/// What an order's reading means.
pub(crate) fn verdict(order: ResidualOrder) -> ResidualVerdict {
    finding(&ask(order)).verdict
}

fn after(value: f64, minutes: f64) -> ResidualOrder {
    ResidualOrder {
        minutes: Some(minutes),
        ..reading(value)
    }
}

fn taken(value: f64, place: Taken) -> ResidualOrder {
    ResidualOrder {
        taken: Some(place),
        ..reading(value)
    }
}

#[test]
fn a_bare_reading_is_held_against_both_bounds() {
    for (value, expected) in [
        (0.0, ResidualVerdict::Low),
        (0.19, ResidualVerdict::Low),
        (0.2, ResidualVerdict::EnoughAtUse),
        (0.49, ResidualVerdict::EnoughAtUse),
        (0.5, ResidualVerdict::Enough),
        (4.0, ResidualVerdict::Enough),
        (4.1, ResidualVerdict::High),
        (5.0, ResidualVerdict::High),
        (5.1, ResidualVerdict::TooHigh),
    ] {
        assert_eq!(verdict(reading(value)), expected, "{value}");
    }
}

#[test]
fn time_and_place_choose_the_bound() {
    use ResidualVerdict::{Enough, High, Low, Stale, TooEarly};
    for (value, minutes, expected) in [
        (0.3, 29.0, TooEarly),
        (0.8, 10.0, TooEarly),
        (4.5, 10.0, High),
        (0.3, 30.0, Low),
        (0.5, 30.0, Enough),
        (0.3, 120.0, Low),
        (0.3, 121.0, Enough),
        (0.1, 600.0, Low),
        (0.2, 1440.0, Enough),
        (0.2, 1441.0, Stale),
        (4.5, 2000.0, High),
    ] {
        assert_eq!(
            verdict(after(value, minutes)),
            expected,
            "{value} {minutes}"
        );
    }
    assert_eq!(verdict(taken(0.3, Taken::AtUse)), Enough);
    assert_eq!(verdict(taken(0.1, Taken::AtUse)), Low);
    assert_eq!(verdict(taken(0.3, Taken::AtTap)), Low);
    assert_eq!(verdict(taken(0.5, Taken::AtTap)), Enough);
    let of = |taken, minutes| ResidualOrder {
        taken: Some(taken),
        ..after(0.3, minutes)
    };
    assert_eq!(verdict(of(Taken::AtUse, 45.0)), Low, "soon after the dose");
    assert_eq!(
        verdict(of(Taken::AtTap, 300.0)),
        Low,
        "on its way to people"
    );
}

#[test]
fn an_outbreak_or_a_high_ph_asks_for_more() {
    let outbreak = ResidualOrder {
        outbreak: Outbreak::Present,
        ..taken(0.7, Taken::AtTap)
    };
    assert_eq!(verdict(outbreak), ResidualVerdict::Low);
    assert_eq!(finding(&ask(outbreak)).aim_mg_per_l, 1.0);
    assert_eq!(finding(&ask(outbreak)).at_use_mg_per_l, 0.2);
    let alkaline = ResidualOrder {
        ph: ph(8.4),
        ..after(0.7, 40.0)
    };
    assert_eq!(verdict(alkaline), ResidualVerdict::TooEarly, "an hour");
    assert_eq!(minutes(&ask(alkaline)), 60.0);
    assert_eq!(finding(&ask(alkaline)).retest_min, 60);
    let later = ResidualOrder {
        minutes: Some(60.0),
        ..alkaline
    };
    assert_eq!(verdict(later), ResidualVerdict::Low);
    assert_eq!(
        ask(later).sources,
        [Source::MsfCholA16, Source::WhoGdwq1996]
    );
}

#[test]
fn without_a_kit_the_nose_decides() {
    for (evidence, expected, waits, caution) in [
        (
            Evidence::NoKit,
            ResidualVerdict::NoKit,
            true,
            Some(Caution::SmellCheck),
        ),
        (
            Evidence::NoSmell,
            ResidualVerdict::NoSmell,
            true,
            Some(Caution::SmellCheck),
        ),
        (
            Evidence::AlreadyDosed,
            ResidualVerdict::AlreadyDosed,
            true,
            Some(Caution::SmellCheck),
        ),
        // The dose is repeated once (EPA): after that nobody waits for anything.
        (
            Evidence::StillNoSmell,
            ResidualVerdict::StillNoSmell,
            false,
            None,
        ),
        (
            Evidence::Smells,
            ResidualVerdict::Smells,
            false,
            Some(Caution::LetStand),
        ),
    ] {
        let outcome = ask(ResidualOrder {
            evidence,
            top_up: Some((TopUpChlorine::Tablet(mg(67.0)), litres(20.0))),
            ..NOTHING
        });
        assert_eq!(finding(&outcome).verdict, expected);
        assert_eq!(finding(&outcome).reading_mg_per_l, None);
        assert_eq!(outcome.wait.is_some(), waits, "{evidence:?}");
        assert_eq!(outcome.cautions, Vec::from_iter(caution));
        assert_eq!(outcome.measure, Measure::Nothing, "no reading, no figure");
    }
}

fn topped(value: f64, product: TopUpChlorine, volume: f64) -> Outcome {
    ask(ResidualOrder {
        top_up: Some((product, litres(volume))),
        ..reading(value)
    })
}

#[test]
fn what_is_missing_is_added() {
    let bleach = TopUpChlorine::Bulk(BulkChlorine::Liquid(percent(5.0)));
    let outcome = topped(0.1, bleach, 1000.0);
    // 0.4 mg/L in 1000 L are 400 mg, 8 mL of 5%.
    assert_eq!(liquid(&outcome).ml, 8.0);
    assert_eq!(mg_per_l(&outcome), 0.4);
    assert_eq!(minutes(&outcome), 30.0);
    assert_eq!(outcome.cautions, [Caution::RetestLater]);
    assert_eq!(outcome.sources, [Source::PathResidual, Source::WhoGdwq1996]);

    let lime = TopUpChlorine::Bulk(BulkChlorine::Powder(percent(70.0)));
    let outcome = topped(0.3, lime, 1000.0);
    // 200 mg: 0.29 g is not weighed; 20 mL of stock are measured.
    assert_eq!(powder(&outcome).stock.map(|stock| stock.add.ml), Some(20.0));
    assert!(outcome.sources.contains(&Source::GtfccAppendix14));

    let tablet = TopUpChlorine::Tablet(mg(67.0));
    let outcome = topped(0.0, tablet, 200.0);
    // 100 mg of chlorine, 40 in each.
    assert_eq!(tablets(&outcome), 3);
    assert_eq!(mg_per_l(&outcome), 0.6);
}

#[test]
fn water_that_has_enough_gets_nothing() {
    let bleach = TopUpChlorine::Bulk(BulkChlorine::Liquid(percent(5.0)));
    for value in [0.5, 3.0, 4.5, 8.0] {
        let outcome = topped(value, bleach, 20.0);
        assert_eq!(outcome.measure, Measure::Nothing, "{value}");
        assert_eq!((outcome.dose, outcome.wait), (None, None), "{value}");
    }
    let high = ask(reading(4.5));
    assert_eq!(high.cautions, [Caution::LetStand]);
    assert_eq!(high.sources.first(), Some(&Source::EpaMrdl));
    assert_eq!(
        ask(reading(6.0)).sources.first(),
        Some(&Source::WhoGdwq1996)
    );
}

#[test]
fn one_tablet_too_strong_for_the_can_is_said() {
    let outcome = topped(0.1, TopUpChlorine::Tablet(mg(67.0)), 5.0);
    assert_eq!(tablets(&outcome), 1);
    assert_eq!(outcome.cautions, [Caution::LetStand, Caution::RetestLater]);
}

fn product() -> impl Strategy<Value = TopUpChlorine> {
    let strength = |value: f64| Strength::from_percent(value).expect("within");
    prop_oneof![
        (limit::BLEACH.min..=limit::BLEACH.max)
            .prop_map(move |value| TopUpChlorine::Bulk(BulkChlorine::Liquid(strength(value)))),
        (limit::BLEACHING_POWDER.min..=limit::CALCIUM_HYPOCHLORITE.max)
            .prop_map(move |value| { TopUpChlorine::Bulk(BulkChlorine::Powder(strength(value))) }),
        (limit::CHLORINE_TABLET.min..=limit::CHLORINE_TABLET.max)
            .prop_map(|value| TopUpChlorine::Tablet(TabletMass::from_mg(value).expect("within"))),
    ]
}

proptest! {
    #[test]
    fn a_top_up_reaches_the_aim_and_little_more(
        value in 0.0..6.0_f64,
        product in product(),
        volume in prop_oneof![0.25..100.0_f64, 100.0..1_000_000.0_f64],
        place in prop_oneof![Just(None), Just(Some(Taken::AtTap)), Just(Some(Taken::AtUse))],
        minutes in proptest::option::of(0.0..3000.0_f64),
        acidity in proptest::option::of(limit::PH.min..=limit::PH.max),
        outbreak in prop_oneof![Just(Outbreak::NotSaid), Just(Outbreak::Present)],
    ) {
        let outcome = ask(ResidualOrder {
            taken: place,
            minutes,
            ph: acidity.map(|value| Ph::from_ph(value).expect("within")),
            outbreak,
            top_up: Some((product, litres(volume))),
            ..reading(value)
        });
        let ResidualFinding { verdict, aim_mg_per_l: aim, most_mg_per_l: most, .. } =
            finding(&outcome);
        prop_assert!(!outcome.sources.is_empty());
        // What one drop or tablet of it brings, mg/L; of a powder, one drop of its stock.
        let one = match product {
            TopUpChlorine::Bulk(BulkChlorine::Liquid(strength)) => strength.mg_per_ml() * 0.05,
            TopUpChlorine::Bulk(BulkChlorine::Powder(_)) => 0.5,
            TopUpChlorine::Tablet(mass) => mass.mg(),
        } / volume;
        let expected = matches!(verdict, ResidualVerdict::Low | ResidualVerdict::EnoughAtUse);
        prop_assert_eq!(outcome.dose.is_some(), expected);
        if !expected {
            prop_assert_eq!(outcome.measure, Measure::Nothing);
            return Ok(());
        }
        let mut added = vec![mg_per_l(&outcome)];
        if let Measure::Powder(powder) = outcome.measure {
            added.extend(powder.stock.map(|stock| stock.add.ml * 10.0 / volume));
        }
        for added in added {
            let missing = aim - value;
            prop_assert!(added >= missing * (1.0 - 1e-8), "{added} of {missing}");
            prop_assert!(added <= missing * 1.25 + one + 1e-9, "{added} of {missing}");
        }
        prop_assert!(outcome.cautions.contains(&Caution::RetestLater));
        prop_assert_eq!(
            outcome.cautions.contains(&Caution::LetStand),
            value + mg_per_l(&outcome) > most
        );
    }
}
