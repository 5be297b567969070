//! Jar tests.

use std::time::Duration;

use matone::request::JarReading;
use matone::treatment::{
    Caution, Detail, JarFinding, JarTestOrder, JarVerdict, Measure, Order, Outcome, Source, treat,
};
use proptest::prelude::*;

use super::published::{liquid, litres, ph};

/// Jars of 20 L, nothing else known.
pub(crate) fn jars(readings: &[(f64, f64)]) -> JarTestOrder {
    JarTestOrder {
        jars: readings
            .iter()
            .map(|&(ml, mg_per_l)| JarReading { ml, mg_per_l })
            .collect(),
        jar: litres(20.0),
        minutes: None,
        ph: None,
        tank: None,
    }
}

/// The outcome; a jar test is never refused.
pub(crate) fn ask(order: &JarTestOrder) -> Outcome {
    treat(&Order::JarTest(order.clone())).expect("not refused")
}

/// What belongs to jar tests only.
pub(crate) fn finding(outcome: &Outcome) -> JarFinding {
    match outcome.detail {
        Detail::JarTest(finding) => finding,
        Detail::Choice(_)
        | Detail::Dilution(_)
        | Detail::Plain
        | Detail::Residual(_)
        | Detail::Storage(_)
        | Detail::Supply(_)
        | Detail::Well(_) => panic!("no jar test: {:?}", outcome.detail),
    }
}

fn verdict(readings: &[(f64, f64)]) -> JarVerdict {
    finding(&ask(&jars(readings))).verdict
}

/// The dose found, mL in a jar and in 1000 L.
fn found(readings: &[(f64, f64)]) -> (f64, f64) {
    match verdict(readings) {
        JarVerdict::Found {
            ml_per_jar,
            ml_per_1000_l,
        } => (ml_per_jar, ml_per_1000_l),
        other @ (JarVerdict::AllAbove
        | JarVerdict::AllBelow
        | JarVerdict::HowTo { .. }
        | JarVerdict::Uneven) => {
            panic!("{other:?}: {readings:?}")
        }
    }
}

#[test]
fn between_two_jars_the_dose_is_in_proportion() {
    let readings = [(1.0, 0.0), (2.0, 0.1), (3.0, 0.4), (4.0, 0.8)];
    assert_eq!(found(&readings), (3.25, 162.5));
    let mut shuffled = readings;
    shuffled.reverse();
    assert_eq!(found(&shuffled), (3.25, 162.5), "in any order");
    // A third of the way is 1.333 mL: a syringe gives 1.35.
    assert_eq!(found(&[(1.0, 0.4), (2.0, 0.7)]).0, 1.35);
}

#[test]
fn a_jar_at_the_aim_is_the_dose() {
    assert_eq!(found(&[(1.0, 0.2), (2.0, 0.5), (3.0, 0.9)]), (2.0, 100.0));
    assert_eq!(found(&[(1.0, 0.5), (2.0, 0.9)]), (1.0, 50.0));
    assert_eq!(found(&[(1.0, 0.1), (2.0, 0.5)]), (2.0, 100.0));
    // Two at the aim: the smaller.
    assert_eq!(found(&[(1.0, 0.1), (2.0, 0.5), (3.0, 0.5)]).0, 2.0);
}

#[test]
fn nothing_is_read_beyond_the_jars() {
    assert_eq!(verdict(&[(1.0, 0.0), (2.0, 0.4)]), JarVerdict::AllBelow);
    assert_eq!(verdict(&[(1.0, 0.6), (2.0, 0.9)]), JarVerdict::AllAbove);
    let tank = JarTestOrder {
        tank: Some(litres(1000.0)),
        ..jars(&[(1.0, 0.0), (2.0, 0.4)])
    };
    assert_eq!(ask(&tank).measure, Measure::Nothing);
}

#[test]
fn less_chlorine_after_more_solution_is_uneven() {
    assert_eq!(
        verdict(&[(1.0, 0.1), (2.0, 0.6), (3.0, 0.4), (4.0, 0.9)]),
        JarVerdict::Uneven
    );
    // A slow slide is no noise.
    assert_eq!(
        verdict(&[(1.0, 0.3), (2.0, 0.26), (3.0, 0.22), (4.0, 0.9)]),
        JarVerdict::Uneven
    );
    assert_eq!(verdict(&[(2.0, 0.3), (2.0, 0.6)]), JarVerdict::Uneven);
    assert_eq!(
        verdict(&[]),
        // The first step of the guideline (MSF cholera guideline, appendix 16).
        JarVerdict::HowTo {
            ml: [1.0, 1.5, 2.0, 2.5]
        }
    );
    assert_eq!(verdict(&[(1.0, f64::NAN), (2.0, 0.6)]), JarVerdict::Uneven);
    assert_eq!(verdict(&[(-1.0, 0.1), (2.0, 0.6)]), JarVerdict::Uneven);
    assert_eq!(
        verdict(&[(1.0, 0.1), (f64::INFINITY, 0.6)]),
        JarVerdict::Uneven
    );
    // The largest dose fell just below the aim that another reached.
    assert_eq!(
        verdict(&[(1.0, 0.2), (2.0, 0.52), (3.0, 0.48)]),
        JarVerdict::Uneven
    );
}

#[test]
fn within_the_noise_of_a_kit_the_larger_dose_is_taken() {
    let (ml, _) = found(&[(1.0, 0.3), (2.0, 0.52), (3.0, 0.48), (4.0, 0.68)]);
    assert_eq!(ml, 3.1);
    // The same jar told twice is one jar.
    assert_eq!(found(&[(1.0, 0.3), (1.0, 0.3), (2.0, 0.7)]).0, 1.5);
}

#[test]
fn above_ph_8_twice_as_much_is_left_after_an_hour() {
    let order = JarTestOrder {
        ph: ph(8.2),
        ..jars(&[(1.0, 0.4), (2.0, 0.8), (3.0, 1.2)])
    };
    let outcome = ask(&order);
    assert_eq!(outcome.wait, Some(Duration::from_secs(3600)));
    assert_eq!(finding(&outcome).aim_mg_per_l, 1.0);
    assert_eq!(
        finding(&outcome).verdict,
        JarVerdict::Found {
            ml_per_jar: 2.5,
            ml_per_1000_l: 125.0
        }
    );
    assert_eq!(outcome.sources, [Source::MsfCholA16, Source::WhoTn11]);
    assert_eq!(outcome.dose, None);
}

#[test]
fn jars_read_too_early_are_read_again_first() {
    let order = jars(&[(1.0, 0.4), (2.0, 0.8)]);
    let first = |minutes, acidity| {
        let outcome = ask(&JarTestOrder {
            minutes,
            ph: acidity,
            ..order.clone()
        });
        (finding(&outcome).verdict, outcome.cautions.first().copied())
    };
    assert_eq!(first(Some(30.0), None).1, Some(Caution::StirTank));
    assert_eq!(first(None, None).1, Some(Caution::StirTank));
    assert_eq!(first(Some(29.0), None).1, Some(Caution::RetestLater));
    assert_eq!(first(Some(29.0), None).0, first(Some(30.0), None).0);
    assert_eq!(first(Some(45.0), ph(8.5)).1, Some(Caution::RetestLater));
}

proptest! {
    #[test]
    fn the_dose_lies_between_two_jars_that_were_read(
        steps in proptest::collection::vec((0.05..3.0_f64, 0.0..0.6_f64), 2..6),
        jar in 1.0..40.0_f64,
        tank in 1.0..100_000.0_f64,
        acidity in proptest::option::of(6.0..9.5_f64),
    ) {
        let mut total = (0.0, 0.0);
        let readings: Vec<_> = steps
            .iter()
            .map(|step| {
                total = (total.0 + step.0, total.1 + step.1);
                total
            })
            .collect();
        let order = JarTestOrder {
            jar: litres(jar),
            tank: Some(litres(tank)),
            ph: acidity.and_then(ph),
            ..jars(&readings)
        };
        let outcome = ask(&order);
        let JarFinding { verdict, aim_mg_per_l, .. } = finding(&outcome);
        let least = readings.iter().find(|reading| reading.1 >= aim_mg_per_l);
        let low = readings.iter().rfind(|reading| reading.1 < aim_mg_per_l);
        match verdict {
            JarVerdict::Found { ml_per_jar, ml_per_1000_l } => {
                let high = least.expect("one reached the aim");
                let low = low.map_or(high.0, |low| low.0);
                prop_assert!(ml_per_jar <= high.0 + 1e-9, "{ml_per_jar} {readings:?}");
                prop_assert!(ml_per_jar >= low - 1e-9, "{ml_per_jar} {readings:?}");
                prop_assert!((ml_per_1000_l * jar / 1000.0 - ml_per_jar).abs() < 1e-9);
                let given = liquid(&outcome).ml;
                prop_assert!(given >= low * tank / jar * (1.0 - 1e-8));
                let most = (high.0 * tank / jar * 1.25).max(high.0 * tank / jar + 0.05);
                prop_assert!(given <= most + 1e-9, "{given} over {most}");
            }
            JarVerdict::AllAbove => prop_assert!(low.is_none()),
            JarVerdict::AllBelow => prop_assert!(least.is_none()),
            JarVerdict::HowTo { .. } | JarVerdict::Uneven => {
                prop_assert!(false, "{readings:?} rise");
            }
        }
    }
}
