//! Wells, jar tests and chlorine left in the water against the published figures.
//!
//! Sources: `bulk_chlorination` and `residual_and_limits` in `tests/data/published/`. Rows marked
//! `memory` there (the boxes of WHO's Technical notes 1 and 11, WHO 2017, Sphere 2018) prove
//! nothing until they are read.

use matone::quantity::litres_in;
use matone::request::Taken;
use matone::treatment::ResidualVerdict;
use matone::treatment::{Caution, JarTestOrder, JarVerdict, Outbreak, ResidualOrder, WellOrder};

use super::published::{Row, liquid, litres, mg_per_l, minutes, ph, powder, rows};
use super::treatment_jar_test as jar;
use super::treatment_residual as residual;
use super::treatment_well::{bleach, finding, hypochlorite, shock, well};

const FOOT_M: f64 = 0.3048;
const INCH_M: f64 = 0.0254;
const CUP_ML: f64 = litres_in::US_GALLON * 1000.0 / 16.0;

/// Household bleach of 2004, which the flood page does not name (common practice).
const HOUSEHOLD_PERCENT: f64 = 5.25;

/// Width of a well that holds a cubic metre for each metre.
const CUBIC_METRE_M: f64 = std::f64::consts::FRAC_2_SQRT_PI;

fn bulk(item: &str) -> Row {
    rows("bulk_chlorination")
        .into_iter()
        .find(|row| row.text("item") == item)
        .unwrap_or_else(|| panic!("no row {item}"))
}

fn value(item: &str) -> f64 {
    bulk(item).number("value")
}

/// Rows whose figures no module of wells, jars or residuals uses.
const BULK_ELSEWHERE: [&str; 8] = [
    "well_open_maintenance",
    "hsch_strength_range",
    "dug_well_cdc_mix_water",
    "tank_new_or_polluted_hsch",
    "tank_urgent",
    "well_tn1_bucket",
    "well_volume_formula",
    "well_reasons",
];

#[test]
fn wells_get_the_published_dose() {
    let outcome = shock(well(bleach(1.0), CUBIC_METRE_M, 1.0));
    for item in ["well_shock_dose", "drilled_well_min_concentration"] {
        assert!(mg_per_l(&outcome) >= value(item) - 1e-6, "{item}");
        assert!(mg_per_l(&outcome) <= value(item) * 1.25, "{item}");
    }
    // Litres of 1% solution for a cubic metre (memory).
    let litres_of_stock = liquid(&outcome).ml / 1000.0;
    assert_eq!(litres_of_stock, value("well_tn1_dose"));
}

// DIFFERENCE: WHO-UNHCR-1997 rounds 100 mg/L to 140 g of 70% powder, which gives 98. The answer
// is rounded upward, never below 100.
#[test]
fn powder_is_not_below_the_published_grams() {
    let printed = value("well_shock_ca_hypochlorite_70pct");
    let outcome = shock(well(hypochlorite(70.0), CUBIC_METRE_M, 1.0));
    assert_eq!(powder(&outcome).grams, 145.0);
    assert!(printed * 700.0 / 1000.0 < 100.0 && mg_per_l(&outcome) >= 100.0);
    assert!(powder(&outcome).grams <= printed * 1.05);
}

// DIFFERENCE: WHO-UNHCR-1997 rounds its example of 5.39 m³ down to 5; a volume is not rounded
// down here (DECISIONS: wells).
#[test]
fn volumes_are_those_of_the_formula_and_the_drillers_table() {
    let told = finding(&shock(well(
        bleach(5.0),
        value("well_volume_example_diameter"),
        value("well_volume_example_depth"),
    )));
    assert_eq!(told.litres, 5388.0);
    assert!(told.litres > value("well_volume_example_result") * 1000.0);
    for (item, inches) in [
        ("drilled_well_gal_per_ft_4in", 4.0),
        ("drilled_well_gal_per_ft_6in", 6.0),
        ("drilled_well_gal_per_ft_8in", 8.0),
    ] {
        let outcome = shock(well(bleach(5.0), inches * INCH_M, 100.0 * FOOT_M));
        let printed = value(item) * 100.0 * litres_in::US_GALLON;
        let ratio = finding(&outcome).litres / printed;
        assert!((ratio - 1.0).abs() < 0.01, "{item}: {ratio}");
    }
}

#[test]
fn dug_wells_agree_with_the_flood_page() {
    for (item, feet) in [("dug_well_cdc_5ft", 1.0), ("dug_well_cdc_example", 30.0)] {
        let outcome = shock(well(bleach(HOUSEHOLD_PERCENT), 5.0 * FOOT_M, feet * FOOT_M));
        let ratio = liquid(&outcome).ml / (value(item) * CUP_ML);
        assert!((0.99..1.1).contains(&ratio), "{item}: {ratio}");
    }
    assert_eq!(bulk("dug_well_cdc_hold").text("value"), "overnight");
}

// DIFFERENCE: AGWT gives drilled wells a quart of bleach for 50 gallons, 200-300 mg/L, twice and
// three times the dose that DECISIONS takes for all wells.
#[test]
fn the_trusts_quart_is_more_than_twice_the_answer() {
    let row = bulk("drilled_well_bleach");
    let litres = 50.0 * litres_in::US_GALLON;
    let printed_ml = row.number("value") * litres_in::US_QUART * 1000.0;
    for (percent, least, most) in [(5.0, 2.0, 3.0), (6.0, 2.0, 3.1)] {
        let printed = printed_ml * percent * 10.0 / litres;
        assert!((200.0..=300.0 + 1e-6).contains(&printed), "{printed}");
        let outcome = shock(well(bleach(percent), CUBIC_METRE_M, litres / 1000.0));
        let ratio = printed_ml / liquid(&outcome).ml;
        assert!((least..most).contains(&ratio), "{ratio}");
    }
}

#[test]
fn wells_stand_and_are_ready_as_published() {
    let order = well(bleach(5.0), 1.0, 3.0);
    let outcome = shock(order);
    let told = finding(&outcome);
    assert_eq!(minutes(&outcome) / 60.0, value("well_min_hold_extension"));
    assert_eq!(
        f64::from(told.emergency_wait_min),
        value("well_contact_time")
    );
    assert_eq!(told.ready_mg_per_l, value("well_ready_residual_below"));
    assert_eq!(told.wall_mg_per_l, value("well_wall_brush_solution"));
    // Of 1%, as the row has it; the same for powders, whose stock it is.
    for product in [bleach(1.0), hypochlorite(70.0)] {
        let walls = finding(&shock(well(product, 1.0, 3.0)));
        assert_eq!(walls.wall_ml, value("well_wall_solution_example"));
        assert_eq!(walls.wall_litres, 10.0);
    }
    // The gate of 20 NTU is a look into the well here.
    assert_eq!(value("well_turbidity_gate"), 20.0);
    assert!(outcome.cautions.contains(&Caution::WellClearFirst));
    let printed = bulk("drilled_well_pH");
    let (low, high) = printed.text("value").split_once('-').unwrap();
    for (acidity, warned) in [
        (low.parse::<f64>().unwrap(), false),
        (high.parse::<f64>().unwrap(), false),
        (low.parse::<f64>().unwrap() - 0.1, true),
        (high.parse::<f64>().unwrap() + 0.1, true),
    ] {
        let outcome = shock(WellOrder {
            ph: ph(acidity),
            ..order
        });
        assert_eq!(
            outcome.cautions.contains(&Caution::WellPh),
            warned,
            "{acidity}"
        );
    }
}

// DIFFERENCE: WHO's Technical note 11 is recalled with 0.4-0.5 mg/L; the aim is the upper end,
// as the cholera guideline prints it.
#[test]
fn jars_as_published() {
    let dose = value("jar_test_example_dose");
    let order = JarTestOrder {
        tank: Some(litres(2000.0)),
        ..jar::jars(&[(1.0, 0.1), (1.5, 0.3), (dose, 0.5), (2.5, 0.8)])
    };
    let outcome = jar::ask(&order);
    let told = jar::finding(&outcome);
    assert_eq!(told.aim_mg_per_l, value("jar_test_choose"));
    assert_eq!(
        told.verdict,
        JarVerdict::Found {
            ml_per_jar: dose,
            ml_per_1000_l: 100.0
        }
    );
    assert_eq!(liquid(&outcome).ml, value("jar_test_example_tank"));
    assert_eq!(minutes(&outcome), value("contact_time"));
    // "1.0 mg/L when pH is above 8", "60 min at pH above 8".
    let outcome = jar::ask(&JarTestOrder {
        ph: ph(8.1),
        ..order
    });
    assert_eq!(jar::finding(&outcome).aim_mg_per_l, 1.0);
    assert_eq!(minutes(&outcome), 60.0);
}

#[test]
fn no_row_on_wells_and_jars_is_left_out() {
    let here = include_str!("published_bulk.rs");
    for row in rows("bulk_chlorination") {
        let item = row.text("item");
        let named = here.contains(&format!("\"{item}\""));
        let text = ["jar_test_step1", "tank_use_food_grade_only"].contains(&item);
        assert!(named || text, "{item} is checked nowhere");
    }
    for item in BULK_ELSEWHERE {
        bulk(item);
    }
}

/// What a row of `residual_and_limits` is to the program.
fn check(row: &Row) -> bool {
    use ResidualVerdict::{Enough, High, Low, TooHigh};
    let told = residual::finding(&residual::ask(residual::reading(0.0)));
    let (least, most) = (row.maybe("value_min"), row.maybe("value_max"));
    let verdict = |value| residual::verdict(residual::reading(value));
    let at_use = |value| {
        residual::verdict(ResidualOrder {
            taken: Some(Taken::AtUse),
            ..residual::reading(value)
        })
    };
    match row.text("item") {
        "free chlorine guideline value" => {
            let most = most.unwrap();
            assert_eq!((verdict(most), verdict(most + 0.1)), (High, TooHigh));
        }
        "free chlorine residual for effective disinfection"
        | "same as quoted for household products"
        | "free chlorine UNHCR" => assert_eq!(told.aim_mg_per_l, least.unwrap()),
        // DIFFERENCE: where 0.2 to 0.5 is printed for soon after the dose or for the tap, the
        // upper end is asked for (DECISIONS: residual).
        "free chlorine 1984 guideline"
        | "free chlorine at delivery (Sphere)"
        | "free chlorine target in tank advice" => {
            assert_eq!(told.aim_mg_per_l, most.unwrap());
            assert_eq!(told.at_use_mg_per_l, least.unwrap());
        }
        "free chlorine at point of delivery" | "household free chlorine CDC lower" => {
            let least = least.unwrap();
            assert_eq!(told.at_use_mg_per_l, least);
            assert_eq!((at_use(least), at_use(least - 0.01)), (Enough, Low));
        }
        "free chlorine at tap when outbreak or cholera risk" => {
            let outbreak = residual::ask(ResidualOrder {
                outbreak: Outbreak::Present,
                taken: Some(Taken::AtTap),
                ..residual::reading(0.9)
            });
            assert_eq!(residual::finding(&outbreak).aim_mg_per_l, least.unwrap());
            assert_eq!(residual::finding(&outbreak).verdict, Low);
        }
        // DIFFERENCE: 2.0 is where a household programme stops for taste; the emergency regime
        // goes up to what may be drunk every day.
        "household free chlorine CDC upper" => assert_eq!(verdict(most.unwrap() + 0.5), Enough),
        "household relaxed upper (unimproved source)" | "EPA MRDL chlorine" => {
            let most = most.unwrap();
            assert_eq!(told.most_mg_per_l, most);
            assert_eq!((verdict(most), verdict(most + 0.1)), (Enough, High));
        }
        "well water ready to use after shock" => {
            let ready = finding(&shock(well(bleach(5.0), 1.0, 3.0))).ready_mg_per_l;
            assert_eq!(ready, most.unwrap());
        }
        // DIFFERENCE: soldiers drink 5 mg/L in the field; for people at home it is high.
        "US Army field residual" | "US Army raw water dose table" => {
            assert_eq!(verdict(least.unwrap()), High);
        }
        // Other substances, and litres for each person.
        other => {
            let elsewhere = [
                "chloramine",
                "dioxide",
                "chlorite",
                "Sphere ",
                "US aid",
                "centre",
            ];
            assert!(elsewhere.iter().any(|word| other.contains(word)), "{other}");
            return false;
        }
    }
    true
}

#[test]
fn residuals_and_limits_as_published() {
    let rows = rows("residual_and_limits");
    let checked = rows.iter().filter(|row| check(row)).count();
    assert_eq!((rows.len(), checked), (29, 16));
}
