//! The CT tables, cell by cell, and the equations that approximate them.
//!
//! Sources: 40 CFR 141.74(b)(3)(v), Tables 1.1-1.6, and EPA 815-R-20-003, Appendix B
//! (`ct_free_chlorine_giardia`, `ct_virus`). The instructions for stepping and their worked
//! examples are quoted from the same manual. The Smith equations of 1995 are from memory.

use matone::treatment::{Agent, WaitBasis, Warmth, Water, contact_time};

use super::published::{PLAIN, answer, celsius, mg_per_l, minutes, percent, ph, rows, us};

struct Cell {
    celsius: f64,
    ph: f64,
    chlorine: f64,
    ct: f64,
}

fn giardia_cells() -> Vec<Cell> {
    let cells: Vec<_> = rows("ct_free_chlorine_giardia")
        .iter()
        .map(|row| Cell {
            celsius: row.number("temperature_C_max"),
            ph: row.number("pH_max"),
            chlorine: row.number("free_chlorine_mg_per_L_max"),
            ct: row.number("ct_mg_min_per_L"),
        })
        .collect();
    assert_eq!(cells.len(), 588);
    cells
}

#[test]
fn all_588_giardia_cells_through_the_lookup() {
    for cell in giardia_cells() {
        let found = contact_time(cell.celsius, cell.ph, cell.chlorine).giardia;
        assert_eq!(
            found, cell.ct,
            "{} °C, pH {}, {} mg/L",
            cell.celsius, cell.ph, cell.chlorine
        );
    }
}

/// A little warmer, a little less alkaline, a little less chlorine: the same cell.
#[test]
fn all_588_giardia_cells_by_stepping() {
    for cell in giardia_cells() {
        let found = contact_time(cell.celsius + 4.4, cell.ph - 0.4, cell.chlorine - 0.1).giardia;
        assert_eq!(
            found, cell.ct,
            "{} °C, pH {}, {} mg/L",
            cell.celsius, cell.ph, cell.chlorine
        );
    }
}

/// Beyond the ends of the table its last row holds.
#[test]
fn giardia_beyond_the_ends_of_the_table() {
    assert_eq!(contact_time(-1.0, 8.0, 1.0), contact_time(0.5, 8.0, 1.0));
    assert_eq!(contact_time(40.0, 8.0, 1.0), contact_time(25.0, 8.0, 1.0));
    assert_eq!(contact_time(10.0, 4.0, 1.0), contact_time(10.0, 6.0, 1.0));
    assert_eq!(contact_time(10.0, 8.0, 0.1), contact_time(10.0, 8.0, 0.4));
    assert_eq!(contact_time(10.0, 8.0, 20.0), contact_time(10.0, 8.0, 3.0));
    assert_eq!(
        contact_time(10.0, 10.5, 2.0).giardia,
        contact_time(10.0, 9.0, 2.0).giardia
    );
}

/// EPA 815-R-20-003, worked examples: pH 7.2 counts as 7.5, 19 °C as 15, 1.1 mg/L as 1.2; and at
/// 0.5 °C, pH 8, 1.0 mg/L, half of the 3-log figure of 304 is the 152 of 1.5 log.
#[test]
fn worked_examples_of_the_manual() {
    assert_eq!(contact_time(19.0, 7.2, 1.1).giardia, 92.0);
    assert_eq!(contact_time(0.5, 8.0, 1.0).giardia, 304.0);
    assert_eq!(contact_time(0.5, 8.0, 1.0).giardia / 2.0, 152.0);
}

/// One cell breaks the pattern (about 292 expected); it is printed so and stays so.
#[test]
fn the_odd_cell_is_kept_as_printed() {
    assert_eq!(contact_time(0.5, 7.5, 2.2).giardia, 297.0);
}

#[test]
fn virus_cells_through_the_lookup() {
    let mut checked = 0;
    for row in rows("ct_virus") {
        if row.text("disinfectant") != "free chlorine" || row.maybe("log_inactivation") != Some(4.0)
        {
            continue;
        }
        let (t, ct) = (
            row.number("temperature_C_max"),
            row.number("ct_mg_min_per_L"),
        );
        let at = match row.text("pH_range") {
            "6-9" => [6.0, 8.0, 9.0],
            "10" => [9.1, 10.0, 11.0],
            other => panic!("pH {other}"),
        };
        for ph in at {
            assert_eq!(contact_time(t, ph, 2.0).viruses, ct, "{t} °C, pH {ph}");
            assert_eq!(
                contact_time(t + 4.4, ph, 2.0).viruses,
                ct,
                "{t} °C, pH {ph}"
            );
        }
        checked += 1;
    }
    assert_eq!(checked, 12);
}

/// Least and greatest deviation from the table, in percent, and in how many cells it is below.
fn band(equation: impl Fn(&Cell) -> f64) -> (f64, f64, usize) {
    let cells = giardia_cells();
    let off: Vec<f64> = cells
        .iter()
        .map(|cell| (equation(cell) / cell.ct - 1.0) * 100.0)
        .collect();
    let least = off.iter().copied().fold(f64::INFINITY, f64::min);
    let greatest = off.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    (
        least,
        greatest,
        off.iter().filter(|off| **off < 0.0).count(),
    )
}

/// The rational regression (a page on chlorine disinfection) runs from -11.2 to +8.1% of the
/// table and is below it in 311 cells: the reason why the table is used.
#[test]
fn the_rational_equation_is_below_the_table_in_half_the_cells() {
    let (least, greatest, below) = band(|cell| {
        0.2828
            * cell.ph.powf(2.69)
            * cell.chlorine.powf(0.15)
            * 0.933_f64.powf(cell.celsius - 5.0)
            * 3.0
    });
    assert!((least + 11.2).abs() < 0.05, "{least}");
    assert!((greatest - 8.1).abs() < 0.05, "{greatest}");
    assert_eq!(below, 311);
}

/// The equations of 1995 (memory) were made to lie at or above the table: 0.0 to +17.4%.
#[test]
fn the_smith_equations_are_never_below_the_table() {
    let (least, greatest, _) = band(|cell| {
        let Cell {
            celsius: t,
            ph,
            chlorine: c,
            ..
        } = *cell;
        if t < 12.5 {
            0.353 * 3.0 * (12.006 + (2.46 - 0.073 * t + 0.125 * c + 0.389 * ph).exp())
        } else {
            0.361 * 3.0 * (-2.261 + (2.69 - 0.065 * t + 0.111 * c + 0.361 * ph).exp())
        }
    });
    assert!(least.abs() < 0.05, "{least}");
    assert!((greatest - 17.4).abs() < 0.05, "{greatest}");
}

/// Half the dose over the wait reaches what the table asks, whatever is measured, and then
/// *Giardia* is covered up to pH 9, the end of its table.
#[test]
fn waits_reach_the_contact_time() {
    let agent = Agent::Bleach(percent(1.0));
    let mut decided_by_table = 0;
    for t in [-0.5, 0.5, 4.0, 7.0, 10.0, 14.9, 20.0, 25.0, 40.0] {
        for acidity in [5.0, 6.5, 7.5, 8.0, 8.6, 9.0, 9.5, 11.0] {
            let water = Water {
                warmth: celsius(t),
                ph: ph(acidity),
                ..PLAIN
            };
            let outcome = answer(&us(agent, 1.0, water));
            let residual = mg_per_l(&outcome) / 2.0;
            let asked = contact_time(t, acidity, residual).greatest();
            let shown = format!("{t} °C, pH {acidity}: {outcome:?}");
            assert!(residual * minutes(&outcome) >= asked - 1e-9, "{shown}");
            assert_eq!(minutes(&outcome) % 5.0, 0.0, "{shown}");
            let giardia: &str = outcome.covers.expect("covers").giardia.into();
            assert_eq!(
                giardia,
                if acidity <= 9.0 { "yes" } else { "partly" },
                "{shown}"
            );
            if let WaitBasis::ContactTime(ct) = outcome.wait_basis {
                assert_eq!(ct.needed, asked, "{shown}");
                assert!((ct.residual - residual).abs() < 1e-9, "{shown}");
                assert!(
                    (ct.reached - residual * minutes(&outcome)).abs() < 1e-9,
                    "{shown}"
                );
                decided_by_table += 1;
            }
        }
    }
    assert!(decided_by_table > 5, "{decided_by_table}");
}

/// By hand: 40 drops of 1% in a US gallon are 5.28 mg/L, so 2.64 is taken for the residual and
/// the 2.8 mg/L row read. At 20 °C and pH 8 that is 99, so 38 min: WHO's doubling asks 42.4, and
/// 45 is answered. At pH 9 it is 143, so 55 min.
#[test]
fn a_wait_by_the_cold_and_a_wait_by_the_table() {
    let agent = Agent::Bleach(percent(1.0));
    let at = |acidity| {
        let water = Water {
            warmth: celsius(20.0),
            ph: ph(acidity),
            ..PLAIN
        };
        answer(&us(agent, 1.0, water))
    };
    assert_eq!(contact_time(20.0, 8.0, 2.64).giardia, 99.0);
    assert_eq!(minutes(&at(8.0)), 45.0);
    assert_eq!(at(8.0).wait_basis, WaitBasis::ColdWater);
    assert_eq!(contact_time(20.0, 9.0, 2.64).giardia, 143.0);
    assert_eq!(minutes(&at(9.0)), 55.0);
    assert!(matches!(at(9.0).wait_basis, WaitBasis::ContactTime(_)));
}

/// An unknown pH counts as 8, an unknown temperature as none: the rule holds and says why.
#[test]
fn unknown_ph_and_unknown_temperature() {
    let agent = Agent::Bleach(percent(5.0));
    let warm = Water {
        warmth: celsius(10.0),
        ..PLAIN
    };
    let known = Water {
        ph: ph(8.0),
        ..warm
    };
    assert_eq!(
        answer(&us(agent, 5.0, warm)).wait,
        answer(&us(agent, 5.0, known)).wait
    );
    let unknown = answer(&us(
        agent,
        5.0,
        Water {
            warmth: Warmth::Unknown,
            ..known
        },
    ));
    assert_eq!(minutes(&unknown), 30.0);
    assert_eq!(unknown.wait_basis, WaitBasis::RuleTemperatureUnknown);
    // Above pH 8 the test is read after 60 min (appendix 16); nobody drinks before.
    let alkaline = Water {
        warmth: Warmth::Unknown,
        ph: ph(8.5),
        ..PLAIN
    };
    assert_eq!(minutes(&answer(&us(agent, 5.0, alkaline))), 60.0);
}
