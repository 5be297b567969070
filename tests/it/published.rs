//! Reads the published figures in `tests/data/published/` and builds orders to hold against them.
//!
//! The figures' publications are listed in that folder's README.

use std::collections::HashMap;
use std::path::Path;

use matone::quantity::{
    Altitude, Ph, Strength, TabletMass, Temperature, UnitSystem, Volume, litres_in,
};
use matone::request::Clarity;
use matone::treatment::{
    Agent, DoseOrder, LiquidMeasure, Measure, Order, Outcome, PowderMeasure, Warmth, Water, treat,
};

/// A row of a published table, by column name.
pub(crate) struct Row(HashMap<String, String>);

impl Row {
    /// A cell as text; a column that is not there is a mistake in the test.
    pub(crate) fn text(&self, column: &str) -> &str {
        self.0
            .get(column)
            .unwrap_or_else(|| panic!("no column {column}"))
    }

    /// A cell as a number, where it is one.
    pub(crate) fn maybe(&self, column: &str) -> Option<f64> {
        self.text(column).parse().ok()
    }

    /// A cell that must be a number.
    pub(crate) fn number(&self, column: &str) -> f64 {
        self.maybe(column)
            .unwrap_or_else(|| panic!("{column} = {:?}", self.text(column)))
    }

    /// For messages.
    pub(crate) fn shown(&self) -> String {
        let mut cells: Vec<_> = self.0.iter().filter(|(_, cell)| !cell.is_empty()).collect();
        cells.sort();
        format!("{cells:?}")
    }
}

/// All rows of one table; never none.
pub(crate) fn rows(table: &str) -> Vec<Row> {
    let path = Path::new(env!("CARGO_MANIFEST_DIR"))
        .join("tests/data/published")
        .join(table)
        .with_extension("csv");
    let mut reader = csv::Reader::from_path(&path).expect("the table is in the repository");
    let rows: Vec<Row> = reader
        .deserialize()
        .map(|row| Row(row.expect("every line has every column")))
        .collect();
    assert!(!rows.is_empty(), "{table} is empty");
    rows
}

/// Litres of water.
pub(crate) fn litres(value: f64) -> Volume {
    Volume::from_litres(value).expect("a volume within the limits")
}

/// US gallons of water.
pub(crate) fn gallons(value: f64) -> Volume {
    litres(value * litres_in::US_GALLON)
}

/// A labelled strength.
pub(crate) fn percent(value: f64) -> Strength {
    Strength::from_percent(value).expect("a strength within the limits")
}

/// A tablet's label.
pub(crate) fn mg(value: f64) -> TabletMass {
    TabletMass::from_mg(value).expect("a tablet within the limits")
}

/// Water of a measured temperature.
pub(crate) fn celsius(value: f64) -> Warmth {
    Warmth::Measured(Temperature::from_celsius(value).expect("a temperature within the limits"))
}

/// A measured pH.
pub(crate) fn ph(value: f64) -> Option<Ph> {
    Some(Ph::from_ph(value).expect("a pH within the limits"))
}

/// A height.
pub(crate) fn metres(value: f64) -> Altitude {
    Altitude::from_metres(value).expect("an altitude within the limits")
}

/// Water of which nothing is known.
pub(crate) const PLAIN: Water = Water {
    clarity: None,
    warmth: Warmth::Unknown,
    ph: None,
    sewage: matone::treatment::Sewage::NotSaid,
};

/// Cloudy water.
pub(crate) const CLOUDY: Water = Water {
    clarity: Some(Clarity::Cloudy),
    ..PLAIN
};

/// A dose order in litres, for people of whom nothing is known.
pub(crate) fn metric(agent: Agent, volume: f64, water: Water) -> DoseOrder {
    DoseOrder {
        agent,
        volume: litres(volume),
        system: UnitSystem::Metric,
        water,
        people: Vec::new(),
    }
}

/// A dose order in US gallons.
pub(crate) fn us(agent: Agent, volume: f64, water: Water) -> DoseOrder {
    DoseOrder {
        volume: gallons(volume),
        system: UnitSystem::Us,
        ..metric(agent, 1.0, water)
    }
}

/// The outcome of a dose that is not refused.
pub(crate) fn answer(order: &DoseOrder) -> Outcome {
    treat(&Order::Dose(order.clone())).unwrap_or_else(|refusal| panic!("{refusal:?}: {order:?}"))
}

/// The liquid of an outcome.
pub(crate) fn liquid(outcome: &Outcome) -> LiquidMeasure {
    match outcome.measure {
        Measure::Liquid(liquid) => liquid,
        Measure::ByLabel | Measure::Nothing | Measure::Powder(_) | Measure::Tablets(_) => {
            panic!("no liquid: {:?}", outcome.measure)
        }
    }
}

/// The powder of an outcome.
pub(crate) fn powder(outcome: &Outcome) -> PowderMeasure {
    match outcome.measure {
        Measure::Powder(powder) => powder,
        Measure::ByLabel | Measure::Nothing | Measure::Liquid(_) | Measure::Tablets(_) => {
            panic!("no powder: {:?}", outcome.measure)
        }
    }
}

/// The tablets of an outcome.
pub(crate) fn tablets(outcome: &Outcome) -> u32 {
    match outcome.measure {
        Measure::Tablets(count) => count,
        Measure::ByLabel | Measure::Nothing | Measure::Liquid(_) | Measure::Powder(_) => {
            panic!("no tablets: {:?}", outcome.measure)
        }
    }
}

/// Minutes of the wait.
pub(crate) fn minutes(outcome: &Outcome) -> f64 {
    outcome.wait.expect("a wait").as_secs_f64() / 60.0
}

/// The dose in mg/L.
pub(crate) fn mg_per_l(outcome: &Outcome) -> f64 {
    outcome.dose.expect("a dose").mg_per_litre()
}
