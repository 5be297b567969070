//! How old a product may grow, and how it is kept.
//!
//! Sources: `bleach_storage` in `tests/data/published/`; the half-lives there are from memory.

use matone::request::Product;
use matone::treatment::{
    Ageing, Caution, Detail, Order, Replace, Source, StorageFinding, StorageOrder, ageing, treat,
};
use strum::VariantArray;

use super::published::{Row, rows};

fn bleach(percent: Option<f64>, days: f64) -> Ageing {
    ageing(Product::Bleach, percent, days).expect("bleach ages")
}

fn half_lives() -> Vec<Row> {
    rows("bleach_storage")
        .into_iter()
        .filter(|row| row.text("item") == "half-life" && row.text("temperature_C") == "25")
        .collect()
}

/// After its half-life half is left (memory rows).
#[test]
fn half_lives_at_25_degrees() {
    let all = half_lives();
    assert_eq!(all.len(), 4);
    for row in all {
        let days = row.number("value");
        let estimate = bleach(row.maybe("strength_percent"), days)
            .estimate
            .expect("an estimate");
        assert!(
            (estimate.percent_left - 50.0).abs() < 1e-9,
            "{}",
            row.shown()
        );
        assert_eq!(estimate.celsius, 25.0);
        assert_eq!(estimate.source, Source::ChlorinationHandbook);
    }
}

#[test]
fn between_two_strengths_the_faster_counts() {
    let left = |percent, days| bleach(Some(percent), days).estimate.map(|e| e.percent_left);
    assert_eq!(left(6.0, 300.0), left(10.0, 300.0));
    assert_eq!(left(5.0, 300.0), left(4.0, 300.0));
    assert_eq!(left(0.1, 300.0), left(0.5, 300.0));
    assert!(left(5.1, 300.0) < left(5.0, 300.0));
    assert_eq!(left(10.1, 300.0), None, "nothing is printed above 10%");
    assert_eq!(bleach(None, 300.0).estimate, None);
    assert_eq!(left(5.0, 0.0), Some(100.0));
    assert_eq!(left(5.0, -3.0), Some(100.0), "a date yet to come");
}

/// A year for bleach (EPA 816-F-15-003), three months for chlorinated lime (GTFCC-A14).
#[test]
fn when_to_replace() {
    let year = rows("bleach_storage")
        .iter()
        .find(|row| row.text("source") == "EPA-2017-TABLE")
        .map(|row| row.number("value"));
    assert_eq!(year, Some(f64::from(bleach(None, 1.0).replace_months)));
    let at = |percent, days| bleach(percent, days).replace;
    for percent in [None, Some(5.0), Some(9.9)] {
        assert_eq!(at(percent, 300.0), Replace::NotYet);
        assert_eq!(at(percent, 335.0), Replace::Soon);
        assert_eq!(at(percent, 364.9), Replace::Soon);
        assert_eq!(at(percent, 365.0), Replace::Now);
    }
    assert_eq!(at(Some(10.0), 182.0), Replace::NotYet);
    assert_eq!(at(Some(12.5), 183.0), Replace::Soon);
    assert_eq!(at(Some(12.5), 365.0), Replace::Now);
    assert!(bleach(Some(12.5), 1.0).sources.contains(&Source::Hsdb));
    let lime = |days| ageing(Product::BleachingPowder, Some(30.0), days).map(|a| a.replace);
    assert_eq!(lime(60.0), Some(Replace::NotYet));
    assert_eq!(lime(61.0), Some(Replace::Soon));
    assert_eq!(lime(92.0), Some(Replace::Now));
    assert_eq!(
        ageing(Product::Nadcc, None, 9e9),
        None,
        "nobody published it"
    );
    assert_eq!(ageing(Product::Bleach, None, f64::NAN), None);
    assert_eq!(at(None, f64::INFINITY), Replace::Now);
}

#[test]
fn water_is_kept_for_a_day_in_a_rinsed_can() {
    let outcome = treat(&Order::Storage(StorageOrder::Water)).expect("an answer");
    let keeps = rows("residual_and_limits")
        .iter()
        .find(|row| row.text("item") == "household free chlorine CDC lower")
        .map(|row| row.text("conditions").to_owned());
    assert_eq!(keeps.as_deref(), Some("24 h after dosing"));
    assert_eq!(
        outcome.detail,
        Detail::Storage(StorageFinding::Water {
            keeps_h: 24,
            rinse_ml_per_litre: 5.0,
            rinse_s: 30
        })
    );
    assert_eq!(outcome.cautions, [Caution::NarrowNeck]);
}

#[test]
fn products_are_kept_as_long_as_somebody_published() {
    for product in Product::VARIANTS {
        let outcome = treat(&Order::Storage(StorageOrder::Product(*product))).expect("an answer");
        let months = match product {
            Product::Bleach => Some(12),
            Product::BleachingPowder => Some(3),
            _ => None,
        };
        assert_eq!(
            outcome.detail,
            Detail::Storage(StorageFinding::Product {
                replace_months: months
            }),
            "{product:?}"
        );
        assert_eq!(
            ageing(*product, None, 1.0).map(|a| a.replace_months),
            months
        );
        assert!(
            outcome
                .cautions
                .starts_with(&[Caution::CoolAndDark, Caution::KeepFromChildren])
        );
        assert_eq!(
            outcome.cautions.contains(&Caution::NeverMix),
            !product.is_iodine(),
            "{product:?}"
        );
        assert!(!outcome.sources.is_empty());
    }
}
