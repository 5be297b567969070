//! Reads the published tables that are embedded in the program.
//!
//! In: the CSV files beside this one, each headed by its publication.
//! Out: typed rows, parsed once.
//! Promises that every line becomes a row: a line that did not parse would be left out, and the
//! test below counts them.
//! Does not know what the rows mean for a dose.

use std::sync::LazyLock;

use serde::de::{DeserializeOwned, Error};
use serde::{Deserialize, Deserializer};

use crate::quantity::litres_in;

use super::measure::DROP_ML;
use super::source::Source;

/// The condition of the water that a row is for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "snake_case")]
pub(super) enum Condition {
    Clear,
    Cloudy,
}

/// The unit in which a bleach row gives its volume.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "snake_case")]
pub(super) enum RowUnit {
    Gallon,
    QuartOrLitre,
}

/// How far a bleach row may be scaled.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "snake_case")]
pub(super) enum Reach {
    Any,
    /// For its own volume and less only.
    Own,
}

/// A row of an emergency bleach table.
#[derive(Debug, Clone, Deserialize)]
pub(super) struct BleachRow {
    pub(super) percent_min: f64,
    pub(super) percent_max: f64,
    pub(super) count: f64,
    pub(super) unit: RowUnit,
    pub(super) condition: Condition,
    drops: Option<f64>,
    teaspoons: Option<f64>,
    pub(super) reach: Reach,
    #[serde(deserialize_with = "source")]
    pub(super) source: Source,
}

impl BleachRow {
    /// The row's amount in mL. Drops count where they are printed: one row prints a spoon that
    /// holds half as much again as its drops.
    pub(super) fn ml(&self) -> f64 {
        let by_spoon = || {
            self.teaspoons
                .map(|spoons| spoons * litres_in::US_TEASPOON * 1000.0)
        };
        self.drops
            .map(|drops| drops * DROP_ML)
            .or_else(by_spoon)
            .unwrap_or(0.0)
    }
}

/// A cell of the *Giardia* table.
#[derive(Debug, Clone, Copy, Deserialize)]
pub(super) struct GiardiaCell {
    pub(super) celsius: f64,
    pub(super) ph: f64,
    pub(super) chlorine_mg_per_l: f64,
    pub(super) ct: f64,
}

/// A cell of the virus table.
#[derive(Debug, Clone, Copy, Deserialize)]
pub(super) struct VirusCell {
    pub(super) celsius: f64,
    pub(super) ph: f64,
    pub(super) ct: f64,
}

/// A cell of the halogen grid.
#[derive(Debug, Clone, Copy, Deserialize)]
pub(super) struct HalogenCell {
    pub(super) mg_per_l: f64,
    pub(super) celsius: f64,
    pub(super) minutes: f64,
}

/// Which iodine solution a row is for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "snake_case")]
pub(super) enum IodineForm {
    PovidoneIodine,
    Tincture,
}

/// The unit in which an iodine row gives its volume.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "snake_case")]
pub(super) enum IodineUnit {
    Litre,
    Quart,
}

/// A row of drops of an iodine solution.
#[derive(Debug, Clone, Copy, Deserialize)]
pub(super) struct IodineRow {
    pub(super) form: IodineForm,
    pub(super) percent: f64,
    pub(super) unit: IodineUnit,
    pub(super) clear_drops: f64,
    pub(super) cloudy_drops: f64,
    #[serde(deserialize_with = "source")]
    pub(super) source: Source,
}

/// A chlorine tablet of the relief catalogues.
#[derive(Debug, Clone, Copy, Deserialize)]
pub(super) struct TabletRow {
    pub(super) nadcc_mg: f64,
    pub(super) chlorine_mg: f64,
    #[serde(deserialize_with = "source")]
    pub(super) source: Source,
}

/// A class of organism with the filter ratings that stop it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "snake_case")]
pub(super) enum OrganismClass {
    Bacteria,
    Cryptosporidium,
    Giardia,
    Leptospira,
    Viruses,
}

/// Filter ratings against one class.
#[derive(Debug, Clone, Copy, Deserialize)]
pub(super) struct FilterRow {
    pub(super) class: OrganismClass,
    pub(super) stops_um: Option<f64>,
    pub(super) partly_um: Option<f64>,
    pub(super) passes_um: Option<f64>,
}

/// How long bleach of a strength takes to lose half of it.
#[derive(Debug, Clone, Copy, Deserialize)]
pub(super) struct HalfLifeRow {
    pub(super) percent: f64,
    pub(super) celsius: f64,
    pub(super) days: f64,
    #[serde(deserialize_with = "source")]
    pub(super) source: Source,
}

const BLEACH_TABLES: [&str; 4] = [
    include_str!("tables/epa-816-f-15-003.csv"),
    include_str!("tables/epa-strength-bands.csv"),
    include_str!("tables/cdc-make-water-safe.csv"),
    include_str!("tables/cdc-emergency-water-2021.csv"),
];
const GIARDIA_TABLE: &str = include_str!("tables/cfr-40-141-74.csv");
const VIRUS_TABLE: &str = include_str!("tables/epa-815-r-20-003.csv");
const HALOGEN_TABLE: &str = include_str!("tables/wms-practice-2e.csv");
const IODINE_TABLE: &str = include_str!("tables/wms-2024.csv");
const TABLET_TABLE: &str = include_str!("tables/relief-catalogues.csv");
const FILTER_TABLE: &str = include_str!("tables/filter-sizes.csv");
const HALF_LIFE_TABLE: &str = include_str!("tables/chlorination-handbook.csv");

// DIFFERENCE: the WHO travel table (4 drops a litre of 5%, twice the agencies'; 4 drops of 1%,
// two fifths of theirs), a county sheet, a clinic handout, a community guide and the wilderness
// guideline's drops are not among the rows: they contradict one another, and the US agencies'
// charts are the ones that answers are held to.
pub(super) static BLEACH: LazyLock<Vec<BleachRow>> =
    LazyLock::new(|| BLEACH_TABLES.iter().flat_map(|text| rows(text)).collect());
pub(super) static GIARDIA: LazyLock<Vec<GiardiaCell>> = LazyLock::new(|| rows(GIARDIA_TABLE));
pub(super) static VIRUS: LazyLock<Vec<VirusCell>> = LazyLock::new(|| rows(VIRUS_TABLE));
pub(super) static HALOGEN: LazyLock<Vec<HalogenCell>> = LazyLock::new(|| rows(HALOGEN_TABLE));
pub(super) static IODINE: LazyLock<Vec<IodineRow>> = LazyLock::new(|| rows(IODINE_TABLE));
pub(super) static TABLETS: LazyLock<Vec<TabletRow>> = LazyLock::new(|| rows(TABLET_TABLE));
pub(super) static FILTERS: LazyLock<Vec<FilterRow>> = LazyLock::new(|| rows(FILTER_TABLE));
pub(super) static HALF_LIVES: LazyLock<Vec<HalfLifeRow>> = LazyLock::new(|| rows(HALF_LIFE_TABLE));

/// The rows of one table. Lines that begin with `#` are its heading.
pub(super) fn rows<T: DeserializeOwned>(text: &str) -> Vec<T> {
    reader(text).deserialize().filter_map(Result::ok).collect()
}

fn reader(text: &str) -> csv::Reader<&[u8]> {
    csv::ReaderBuilder::new()
        .comment(Some(b'#'))
        .from_reader(text.as_bytes())
}

/// Reads a source's code in a `source` or `code` column.
pub(super) fn source<'de, D: Deserializer<'de>>(deserializer: D) -> Result<Source, D::Error> {
    String::deserialize(deserializer)?
        .parse()
        .map_err(D::Error::custom)
}

#[cfg(test)]
mod tests {
    use super::super::source::{SourceRecord, Status};
    use super::*;

    /// The columns that every table of figures has beside its own.
    #[derive(Deserialize)]
    struct Provenance {
        #[serde(deserialize_with = "source")]
        source: Source,
        status: Status,
    }

    /// Fails, with the line, if any row does not parse or the table has another length.
    fn check<T: DeserializeOwned>(text: &str, expected: usize) {
        let parsed: Result<Vec<T>, _> = reader(text).deserialize().collect();
        assert_eq!(
            parsed
                .map(|all| all.len())
                .map_err(|error| error.to_string()),
            Ok(expected)
        );
        assert!(
            text.starts_with("# "),
            "a table is headed by its publication"
        );
    }

    fn check_figures<T: DeserializeOwned>(text: &str, expected: usize) {
        check::<T>(text, expected);
        check::<Provenance>(text, expected);
        for row in rows::<Provenance>(text) {
            assert!(
                row.source.record().is_some(),
                "{:?} has no record",
                row.source
            );
            assert_ne!(
                row.status,
                Status::CommonPractice,
                "{:?} is a published table",
                row.source
            );
        }
    }

    #[test]
    fn every_line_of_every_table_is_read() {
        let bleach = [10, 6, 4, 12];
        for (text, expected) in BLEACH_TABLES.iter().zip(bleach) {
            check_figures::<BleachRow>(text, expected);
        }
        check_figures::<GiardiaCell>(GIARDIA_TABLE, 588);
        check_figures::<VirusCell>(VIRUS_TABLE, 12);
        check_figures::<HalogenCell>(HALOGEN_TABLE, 9);
        check_figures::<IodineRow>(IODINE_TABLE, 3);
        check_figures::<TabletRow>(TABLET_TABLE, 7);
        check_figures::<FilterRow>(FILTER_TABLE, 5);
        check_figures::<HalfLifeRow>(HALF_LIFE_TABLE, 4);
        check::<SourceRecord>(include_str!("tables/sources.csv"), 55);
    }

    #[test]
    fn every_bleach_row_gives_an_amount() {
        for row in BLEACH.iter() {
            assert!(row.ml() > 0.0, "{row:?}");
            assert!(row.percent_min <= row.percent_max, "{row:?}");
        }
    }

    /// The agencies double for cloudy water: their printed cloudy rows must be twice the clear
    /// ones, because answers are worked out from the clear rows alone.
    #[test]
    fn printed_cloudy_rows_are_twice_the_clear_ones() {
        let mut seen = 0;
        for cloudy in BLEACH
            .iter()
            .filter(|row| row.condition == Condition::Cloudy)
        {
            let clear = BLEACH.iter().find(|row| {
                row.condition == Condition::Clear
                    && row.source == cloudy.source
                    && row.unit == cloudy.unit
                    && (row.count - cloudy.count).abs() < 1e-9
                    && (row.percent_min - cloudy.percent_min).abs() < 1e-9
            });
            let clear_ml = clear.map(BleachRow::ml);
            assert_eq!(
                clear_ml.map(|ml| (ml * 2.0 - cloudy.ml()).abs() < 1e-9),
                Some(true)
            );
            seen += 1;
        }
        assert_eq!(seen, 8, "two of the flyer, six of the 2021 charts");
    }
}
