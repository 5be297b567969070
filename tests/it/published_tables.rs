//! The tables that the core computes with against the reference copies, row by row.
//!
//! Rows that never decide a dose by themselves (two agencies print the same figure, or a larger
//! row covers them) are caught here and nowhere else.

use std::path::Path;

use super::published::rows;

/// Lines of an embedded table, split into cells; heading and column names left out.
fn embedded(table: &str) -> Vec<Vec<String>> {
    let path = Path::new(env!("CARGO_MANIFEST_DIR"))
        .join("src/treatment/tables")
        .join(table)
        .with_extension("csv");
    let mut reader = csv::ReaderBuilder::new()
        .comment(Some(b'#'))
        .from_path(&path)
        .expect("the table is in the repository");
    reader
        .records()
        .map(|record| {
            record
                .expect("a whole line")
                .iter()
                .map(str::to_owned)
                .collect()
        })
        .collect()
}

/// Cells that are the same number are the same, however many digits a third is printed with.
fn same(a: &str, b: &str) -> bool {
    match (a.parse::<f64>(), b.parse::<f64>()) {
        (Ok(a), Ok(b)) => (a - b).abs() < 1e-4,
        (Ok(_), Err(_)) | (Err(_), Ok(_)) => false,
        (Err(_), Err(_)) => a == b,
    }
}

/// Holds the first `columns` of an embedded table to the reference rows that `keep` admits.
fn check(
    table: &str,
    reference: &str,
    columns: &[&str],
    keep: impl Fn(&[&str]) -> bool,
    by: &[&str],
) {
    let own = embedded(table);
    let mut expected = Vec::new();
    for row in rows(reference) {
        let keys: Vec<_> = by.iter().map(|column| row.text(column)).collect();
        if keep(&keys) {
            let cells: Vec<_> = columns
                .iter()
                .map(|column| row.text(column).to_owned())
                .collect();
            expected.push(cells);
        }
    }
    assert_eq!(own.len(), expected.len(), "{table}");
    for (own, expected) in own.iter().zip(&expected) {
        for (own, expected) in own.iter().zip(expected) {
            assert!(same(own, expected), "{table}: {own} is not {expected}");
        }
    }
}

/// The four bleach tables (EPA 2017, EPA by bands, CDC flyer, CDC charts of 2021 from memory).
#[test]
fn bleach_tables_are_the_reference() {
    for (table, source) in [
        ("epa-816-f-15-003", "EPA-2017-TABLE"),
        ("epa-strength-bands", "EPA-OLD-BANDS"),
        ("cdc-make-water-safe", "CDC-FLYER-2"),
        ("cdc-emergency-water-2021", "CDC-WEB-2021"),
    ] {
        check(
            table,
            "household_bleach_drops",
            &[
                "naocl_percent_min",
                "naocl_percent_max",
                "volume_value",
                "volume_unit",
                "water_condition",
                "drops",
                "teaspoons",
            ],
            |keys| matches!(keys, [found, percent] if *found == source && !percent.is_empty()),
            &["source", "naocl_percent_min"],
        );
    }
}

/// The dose-and-temperature grid (Wilderness Medical Society, Practice Guidelines, 2nd edition).
#[test]
fn the_halogen_grid_is_the_reference() {
    check(
        "wms-practice-2e",
        "halogen_contact_times",
        &["halogen_mg_per_L", "water_temperature_C", "contact_min"],
        |keys| matches!(keys, ["WMS-PG2"]),
        &["source"],
    );
}

/// The *Giardia* cells (40 CFR 141.74(b)(3)(v), Tables 1.1-1.6).
#[test]
fn the_giardia_table_is_the_reference() {
    check(
        "cfr-40-141-74",
        "ct_free_chlorine_giardia",
        &[
            "temperature_C_max",
            "pH_max",
            "free_chlorine_mg_per_L_max",
            "ct_mg_min_per_L",
        ],
        |_| true,
        &[],
    );
}

/// A status other than the reference's would make a memory row look read.
#[test]
fn memory_rows_are_marked_as_such() {
    let memory = |table| {
        embedded(table)
            .iter()
            .filter(|row| row.last().is_some_and(|cell| cell == "memory"))
            .count()
    };
    assert_eq!(memory("epa-816-f-15-003"), 1);
    assert_eq!(memory("cdc-emergency-water-2021"), 12);
    assert_eq!(memory("epa-strength-bands"), 0);
    assert_eq!(memory("cfr-40-141-74"), 0);
}
