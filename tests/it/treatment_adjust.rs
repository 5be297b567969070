//! Half the dose, twice the dose: what the trade allows.

use matone::request::{Change, Refusal};
use matone::treatment::{
    AdjustOrder, Agent, Caution, DoseOrder, Outcome, Sewage, Verdict, Warmth, Water, adjust,
};

use super::published::{
    CLOUDY, PLAIN, answer, celsius, liquid, litres, metric, mg, mg_per_l, minutes, percent, powder,
    rows, tablets,
};

fn change(last: &DoseOrder, change: Change) -> Verdict {
    adjust(&AdjustOrder {
        last: last.clone(),
        change,
    })
}

fn changed(last: &DoseOrder, way: Change) -> Outcome {
    change(last, way).unwrap_or_else(|refusal| panic!("{refusal:?}: {last:?}"))
}

/// The grid's minutes (Wilderness Medical Society, Practice Guidelines, 2nd edition, page 63).
fn grid(mg_per_l: f64, t: f64) -> f64 {
    rows("halogen_contact_times")
        .iter()
        .find(|row| {
            row.text("source") == "WMS-PG2"
                && row.number("halogen_mg_per_L") == mg_per_l
                && row.number("water_temperature_C") == t
        })
        .map(|row| row.number("contact_min"))
        .expect("a cell")
}

/// Half of 5.0 mg/L is 2.5: the grid's 2 mg/L row, at 15 °C where nobody measured, asks three
/// hours, far more than the trade's one.
#[test]
fn half_a_bleach_dose_waits_by_the_grid() {
    let last = metric(Agent::Bleach(percent(5.0)), 20.0, PLAIN);
    let weaker = changed(&last, Change::Weaker);
    assert_eq!(liquid(&weaker).drops, 20);
    assert!((mg_per_l(&weaker) - 2.5).abs() < 1e-9);
    assert_eq!(minutes(&weaker), grid(2.0, 15.0));
    assert_eq!(weaker.cautions.first(), Some(&Caution::NoShorterWait));
}

/// Warm: the grid's 30 °C column and the trade both ask an hour, the CT table may ask more.
#[test]
fn half_a_dose_in_warm_water() {
    let warm = Water {
        warmth: celsius(30.0),
        ..PLAIN
    };
    let last = metric(Agent::Bleach(percent(5.0)), 20.0, warm);
    assert_eq!(grid(2.0, 30.0), 60.0);
    let weaker = changed(&last, Change::Weaker);
    let asked = matone::treatment::contact_time(30.0, 8.0, 1.25).greatest() / 1.25;
    assert!(minutes(&weaker) >= asked.max(60.0), "{weaker:?}");
    assert!(minutes(&weaker) >= 2.0 * minutes(&answer(&last)));
}

#[test]
fn half_doses_of_the_other_products() {
    let tincture = metric(Agent::IodineTincture(percent(2.0)), 20.0, PLAIN);
    let weaker = changed(&tincture, Change::Weaker);
    // The published 5 drops a litre of 2% carry 5 mg.
    assert!((mg_per_l(&weaker) - 2.5).abs() < 1e-9);
    assert_eq!(minutes(&weaker), grid(2.0, 15.0));
    let nadcc = metric(Agent::Nadcc(mg(67.0), None), 40.0, PLAIN);
    assert_eq!(tablets(&changed(&nadcc, Change::Weaker)), 2);
    let powdered = metric(Agent::CalciumHypochlorite(percent(65.0)), 10_000.0, PLAIN);
    let grams = powder(&changed(&powdered, Change::Weaker)).grams;
    assert!((grams - 39.0).abs() < 1e-9, "77 g halved: {grams}");
}

/// In cold water the trade's own doubling is longer than the grid's cell.
#[test]
fn half_of_an_iodine_dose_in_cool_water_is_twice_the_wait() {
    let cool = Water {
        warmth: celsius(10.0),
        ..PLAIN
    };
    let last = metric(Agent::IodineTincture(percent(2.0)), 20.0, cool);
    assert_eq!(minutes(&answer(&last)), 180.0);
    assert!(grid(2.0, 5.0) < 360.0);
    assert_eq!(minutes(&changed(&last, Change::Weaker)), 360.0);
}

#[test]
fn half_doses_are_refused_where_they_are_not_allowed() {
    let bleach = Agent::Bleach(percent(5.0));
    let refused = [
        metric(bleach, 20.0, CLOUDY),
        metric(
            bleach,
            20.0,
            Water {
                warmth: Warmth::Cold,
                ..PLAIN
            },
        ),
        metric(
            bleach,
            20.0,
            Water {
                warmth: celsius(6.0),
                ..PLAIN
            },
        ),
        metric(
            bleach,
            20.0,
            Water {
                sewage: Sewage::Present,
                ..PLAIN
            },
        ),
        // A single drop or tablet cannot be halved.
        metric(bleach, 0.4, PLAIN),
        metric(Agent::Nadcc(mg(67.0), None), 10.0, PLAIN),
        // The household label's 2 mg/L would fall to 1.
        metric(Agent::Nadcc(mg(67.0), Some(litres(20.0))), 40.0, PLAIN),
        metric(Agent::IodineTablet(mg(8.0)), 20.0, PLAIN),
        metric(Agent::ChlorineDioxide, 20.0, PLAIN),
    ];
    for last in refused {
        assert_eq!(
            change(&last, Change::Weaker),
            Err(Refusal::OverLimit),
            "{last:?}"
        );
    }
}

/// Chlorine of unknown warmth waits half an hour already, and nothing goes below that.
#[test]
fn faster_is_refused_where_nothing_can_be_gained() {
    let refused = [
        metric(Agent::Bleach(percent(5.0)), 20.0, PLAIN),
        metric(Agent::Bleach(percent(5.0)), 20.0, CLOUDY),
        metric(
            Agent::Bleach(percent(5.0)),
            20.0,
            Water {
                warmth: Warmth::Cold,
                ..PLAIN
            },
        ),
        metric(Agent::IodineTincture(percent(2.0)), 20.0, CLOUDY),
        metric(Agent::ChlorineDioxide, 20.0, PLAIN),
    ];
    for last in refused {
        assert_eq!(
            change(&last, Change::Faster),
            Err(Refusal::OverLimit),
            "{last:?}"
        );
    }
}

#[test]
fn twice_the_iodine_takes_half_the_time() {
    let at = |t| {
        metric(
            Agent::IodineTincture(percent(2.0)),
            20.0,
            Water {
                warmth: celsius(t),
                ..PLAIN
            },
        )
    };
    let unknown = metric(Agent::IodineTincture(percent(2.0)), 20.0, PLAIN);
    let faster = changed(&unknown, Change::Faster);
    // Twice the published 5 drops a litre, which carry 5 mg: the grid's 8 mg/L row.
    assert!((mg_per_l(&faster) - 10.0).abs() < 1e-9);
    assert_eq!(minutes(&faster), grid(8.0, 15.0));
    // 180 min halved is more than the grid's 60.
    assert_eq!(minutes(&changed(&at(10.0), Change::Faster)), 90.0);
    // 45 min halved and the grid's 15 are both under the half hour that is the least.
    assert_eq!(minutes(&changed(&at(30.0), Change::Faster)), 30.0);
    let tabs = metric(Agent::IodineTablet(mg(8.0)), 20.0, PLAIN);
    assert_eq!(
        (
            tablets(&answer(&tabs)),
            tablets(&changed(&tabs, Change::Faster))
        ),
        (10, 20)
    );
}

/// Twice the published dose is the ceiling, whatever rounding did to the first dose.
#[test]
fn twice_is_twice_the_exact_dose() {
    let cool = Water {
        warmth: celsius(10.0),
        ..PLAIN
    };
    let last = metric(Agent::Bleach(percent(5.0)), 21.0, cool);
    // 42 drops exactly, rounded to 2.5 mL; twice is 4.2 mL, rounded down to 4.0.
    assert!((liquid(&answer(&last)).ml - 2.5).abs() < 1e-9);
    let faster = changed(&last, Change::Faster);
    assert!((liquid(&faster).ml - 4.0).abs() < 1e-9);
    assert!(minutes(&faster) < minutes(&answer(&last)));
}

#[test]
fn a_refused_product_stays_refused() {
    let last = DoseOrder {
        people: vec![matone::request::Person::Pregnant],
        ..metric(Agent::IodineTincture(percent(2.0)), 20.0, PLAIN)
    };
    for way in [Change::Faster, Change::Weaker] {
        assert_eq!(change(&last, way), Err(Refusal::IodineUnsuitable));
    }
}
