//! Published cleaning and stock solutions against the core, row by row.
//!
//! Sources: `cleaning_solutions` and `stock_solution_1pct` in `tests/data/published/`.

use matone::quantity::{CleaningTabletMass, Strength};
use matone::treatment::{
    BulkChlorine, Caution, CleaningChlorine, Detail, DiluteOrder, Dilution, Measure, Order,
    Outcome, treat,
};

use super::published::{Row, litres, minutes, percent, rows};

pub(crate) fn bulk_liquid(strength: f64) -> CleaningChlorine {
    CleaningChlorine::Bulk(BulkChlorine::Liquid(percent(strength)))
}

pub(crate) fn bulk_powder(strength: f64) -> CleaningChlorine {
    CleaningChlorine::Bulk(BulkChlorine::Powder(percent(strength)))
}

pub(crate) fn tablet(mg: f64) -> CleaningChlorine {
    CleaningChlorine::Tablet(CleaningTabletMass::from_mg(mg).expect("a tablet"))
}

pub(crate) fn dilute(from: CleaningChlorine, target: f64, volume: f64) -> Outcome {
    let order = DiluteOrder {
        from,
        target: Strength::from_percent(target).expect("a strength"),
        volume: litres(volume),
    };
    treat(&Order::Dilute(order)).expect("solutions are not refused")
}

pub(crate) fn dilution(outcome: &Outcome) -> Dilution {
    match outcome.detail {
        Detail::Dilution(dilution) => dilution,
        _ => panic!("no solution: {:?}", outcome.detail),
    }
}

/// mL, grams or tablets.
pub(crate) fn amount(outcome: &Outcome) -> f64 {
    match outcome.measure {
        Measure::Liquid(liquid) => liquid.ml,
        Measure::Powder(powder) => powder.grams,
        Measure::Tablets(count) => f64::from(count),
        Measure::ByLabel | Measure::Nothing => panic!("nothing measured"),
    }
}

fn close(a: f64, b: f64) -> bool {
    (a - b).abs() < 1e-6
}

/// The strength in percent that a row of mL or parts really makes, made up to the whole.
fn parts_of_water(row: &Row) -> Option<f64> {
    row.text("water").strip_suffix(" parts")?.parse().ok()
}

/// What the row's product is, in the core's terms.
fn product(row: &Row) -> Option<CleaningChlorine> {
    let strength = row.maybe("product_percent");
    let name = row.text("product");
    if name.starts_with("liquid") || name == "STRONG solution" {
        strength.map(bulk_liquid)
    } else if name.starts_with("calcium hypochlorite") || name.starts_with("bleach powder") {
        strength.map(bulk_powder)
    } else if name.starts_with("NaDCC large tablet") {
        // The page prints 8.68 g as the chlorine; 5 g, in the row's name, is the chlorine.
        Some(tablet(8680.0))
    } else {
        None
    }
}

// DIFFERENCE, each with the row's source and target:
// - IFRC-39 and GTFCC-A9 round powder of 70% to 30, 7.5, 3 and 0.7 g a litre where the formula
//   gives 28.57, 7.14, 2.86 and 0.71: at 0.7 g the answer is the larger, the others are within 5%.
// - IARC cuts 14.29 to 14.2, a paper 7.14 to 7.0: the answers are not below the formula.
// - GTFCC-A9 adds bleach to a full litre: at 2% that makes 1.43%, at 0.2% 0.19%; the answer is
//   made up to the litre, which is the stronger (DECISIONS).
// - CDC-EBOLA-26 prints 1 part to 100 for 2.6% and hands: that makes 0.026%, half of what it says;
//   the answer is 1 to 51 (DECISIONS: never that ratio). For 0.5% it prints 4 parts, which is 0.52%.
#[test]
fn cleaning_solutions() {
    let mut checked = 0;
    let mut left_out = Vec::new();
    for row in rows("cleaning_solutions") {
        let (Some(from), Some(target)) = (product(&row), row.maybe("target_percent")) else {
            left_out.push(row.text("product").to_owned());
            continue;
        };
        let printed = row.number("amount");
        match row.text("unit") {
            "part" => {
                let parts = parts_of_water(&row).expect("parts of water");
                let own = dilution(&dilute(from, target, 10.0))
                    .parts_water
                    .expect("parts");
                if row.text("source") == "CDC-EBOLA-26" && target < 0.1 && parts > 50.0 {
                    assert!(close(own, 51.0), "{own}: {}", row.shown());
                } else if row.text("source") == "CDC-EBOLA-26" && parts < 5.0 {
                    assert!(close(own, 4.2), "{own}: {}", row.shown());
                } else {
                    assert!(close(own, parts), "{own}: {}", row.shown());
                }
            }
            "mL" | "mL per L" => {
                let outcome = dilute(from, target, 1.0);
                assert!(close(amount(&outcome), printed), "{}", row.shown());
                let water = dilution(&outcome).water_ml.expect("water");
                assert!(close(water, 1000.0 - printed), "{water}: {}", row.shown());
            }
            "g per L" => {
                let outcome = dilute(from, target, 1.0);
                let exact = target / row.number("product_percent") * 1000.0;
                let own = dilution(&outcome).grams_per_litre.expect("grams");
                assert!((own - exact).abs() <= 0.005, "{own}: {}", row.shown());
                assert!(amount(&outcome) >= exact * (1.0 - 1e-9), "{}", row.shown());
                assert!(
                    (own - printed).abs() <= 0.06 * printed,
                    "{own}: {}",
                    row.shown()
                );
                if row.text("source") == "CDC-APPE" {
                    assert!((own - printed).abs() < 0.05, "{own}: {}", row.shown());
                }
            }
            "tablets per L" | "tablets per 10 L" => {
                let volume = if row.text("unit").ends_with("10 L") {
                    10.0
                } else {
                    1.0
                };
                let outcome = dilute(from, target, volume);
                assert!(close(amount(&outcome), printed), "{}", row.shown());
                assert!(close(dilution(&outcome).litres, volume), "{}", row.shown());
                let each = dilution(&outcome).tablets_per_litre.expect("tablets");
                assert!(close(each, printed / volume), "{each}: {}", row.shown());
            }
            other => panic!("unit {other}: {}", row.shown()),
        }
        checked += 1;
    }
    assert_eq!(checked, 28);
    // Formulas, NaDCC powder (no product of ours), uses, contact time, laundry.
    assert_eq!(
        left_out,
        [
            "formula liquid",
            "formula powder",
            "degrees chlorum",
            "NaDCC powder",
            "use: non-living surfaces",
            "use: living skin hands",
            "contact time surfaces and laundry",
            "laundry strength"
        ]
    );
}

// DIFFERENCE: two papers on Ebola print 30 min for 0.5%; DECISIONS settles on MSF's 15.
#[test]
fn contact_is_what_the_cholera_guideline_prints() {
    let row = rows("cleaning_solutions")
        .into_iter()
        .find(|row| row.text("source") == "MSF-CHOL-A15" && row.text("unit") == "min")
        .expect("the contact time");
    let outcome = dilute(bulk_liquid(5.0), 0.2, 10.0);
    assert_eq!(minutes(&outcome), row.number("amount"));
}

// DIFFERENCE, stock solutions of 1%:
// - GTFCC-A14 takes 250 mL of 5% to the litre to allow for lost strength, the formula 200: an old
//   bottle is answered with a warning, never with a greater figure (DECISIONS: bleach age).
// - WHO-CHOLERA-1993 (memory) takes 110 mL of 10%, the formula 100: the same allowance.
// - Powders are printed rounded: 14, 15 and 286 g of 70%, 30 of 34%, 33 of 30%, 40 of 25%; the
//   answers are within 5% of them and never below the formula.
// - GTFCC-A14's "fresh every day" wins over a week from memory (DECISIONS).
#[test]
fn stock_solutions() {
    let mut checked = 0;
    for row in rows("stock_solution_1pct") {
        // Two rows tell how a stock is used, not how it is made.
        if row.text("product").contains(": use") {
            continue;
        }
        let strength = row.number("available_chlorine_percent");
        let volume = row.number("final_volume_L");
        let printed = row.number("amount");
        let outcome = match row.text("unit") {
            "g" => dilute(bulk_powder(strength), 1.0, volume),
            _ => dilute(bulk_liquid(strength), 1.0, volume),
        };
        let own = amount(&outcome);
        let exact = volume * 1000.0 / strength;
        assert!(own >= exact * (1.0 - 1e-9), "{own}: {}", row.shown());
        let allows_for_loss = ["GTFCC-A14", "WHO-CHOLERA-1993"].contains(&row.text("source"))
            && row.text("unit") == "mL";
        if allows_for_loss {
            assert!(close(own, exact) && own < printed, "{own}: {}", row.shown());
        } else {
            assert!(
                (own - printed).abs() <= 0.075 * printed,
                "{own}: {}",
                row.shown()
            );
        }
        assert!(outcome.cautions.contains(&Caution::FreshDaily));
        // Nothing is measured by a stock of its own strength.
        if let Measure::Powder(powder) = outcome.measure {
            assert_eq!(powder.stock, None, "{}", row.shown());
        }
        checked += 1;
    }
    assert_eq!(checked, 11);
}
