//! Liquid bleach and hypochlorite powders.
//!
//! In: strength, volume, the person's units, the water.
//! Out: an exact need, in mL or grams.
//! Promises that a liquid need is never below the US agencies' row for its strength, scaled in
//! the unit that the person used.
//! Does not know waits, drops or how to round.

use crate::quantity::{Strength, UnitSystem, litres_in};

use super::condition;
use super::dose::{Halogen, Plan};
use super::need::Need;
use super::order::DoseOrder;
use super::rule;
use super::source::Source;
use super::table::{self, BleachRow, Condition, Reach, RowUnit};

/// The larger of the target and the published row.
pub(super) fn liquid(order: &DoseOrder, strength: Strength) -> Plan {
    let litres = order.volume.litres();
    let factor = condition::chlorine_factor(&order.water);
    let mg_per_ml = strength.mg_per_ml();
    let computed = rule::CHLORINE_MG_PER_L * litres / mg_per_ml;
    let mut sources = vec![rule::CHLORINE_SOURCE];
    let floor = published_floor(strength.percent(), litres, order.system);
    let clear_ml = match floor {
        Some((row_ml, source)) if row_ml >= computed * (1.0 - 1e-9) => {
            if !sources.contains(&source) {
                sources.push(source);
            }
            row_ml
        }
        Some(_) | None => computed,
    };
    Plan {
        need: Need::Liquid {
            ml: clear_ml * factor,
            mg_per_ml,
        },
        halogen: Halogen::Chlorine,
        sources,
    }
}

/// The target from the label's strength: no agency prints rows for powder by the litre.
pub(super) fn powder(order: &DoseOrder, strength: Strength) -> Plan {
    let target = rule::CHLORINE_MG_PER_L * condition::chlorine_factor(&order.water);
    // 1% of a powder is 10 mg in each gram, as it is in each mL of a solution.
    let mg_per_gram = strength.percent() * 10.0;
    Plan {
        need: Need::Powder {
            grams: target * order.volume.litres() / mg_per_gram,
            mg_per_gram,
        },
        halogen: Halogen::Chlorine,
        sources: vec![rule::CHLORINE_SOURCE, Source::GtfccAppendix14],
    }
}

/// The largest published amount for clear water, in mL, and whose it is.
fn published_floor(percent: f64, litres: f64, system: UnitSystem) -> Option<(f64, Source)> {
    let rows = rows_for(percent);
    let small = match system {
        UnitSystem::Metric => 1.0,
        UnitSystem::Imperial | UnitSystem::Us => litres_in::US_QUART,
    };
    let by_small = || {
        let reaching = rows.iter().filter(|row| match row.reach {
            Reach::Any => true,
            Reach::Own => at_least(small * row.count, litres),
        });
        largest(reaching.copied(), RowUnit::QuartOrLitre, small, litres)
    };
    // A spoon of a large row holds a little more than its drops: rows count from their own
    // volume up, so that nobody is held to a row for more water than they have.
    let by_gallon = || {
        let reached = rows
            .iter()
            .filter(|row| at_least(litres, row.count * litres_in::US_GALLON));
        largest(
            reached.copied(),
            RowUnit::Gallon,
            litres_in::US_GALLON,
            litres,
        )
    };
    // The 8.25% quart row holds for its own volume only; from there to a gallon, the gallon row
    // is taken in proportion (DECISIONS: 8.25% bleach).
    let below_gallon = || {
        let single = rows.iter().filter(|row| row.count < 1.0 + 1e-9);
        largest(
            single.copied(),
            RowUnit::Gallon,
            litres_in::US_GALLON,
            litres,
        )
    };
    match system {
        UnitSystem::Metric => by_small().or_else(by_gallon).or_else(below_gallon),
        UnitSystem::Imperial | UnitSystem::Us => {
            by_gallon().or_else(by_small).or_else(below_gallon)
        }
    }
}

/// The clear-water rows for a strength. A row for exactly that strength beats a band.
fn rows_for(percent: f64) -> Vec<&'static BleachRow> {
    let near = |a: f64, b: f64| (a - b).abs() < 1e-9;
    let clear = || {
        table::BLEACH
            .iter()
            .filter(|row| row.condition == Condition::Clear)
    };
    let exact: Vec<_> = clear()
        .filter(|row| near(row.percent_min, percent) && near(row.percent_max, percent))
        .collect();
    if exact.is_empty() {
        clear()
            .filter(|row| at_least(percent, row.percent_min) && at_least(row.percent_max, percent))
            .collect()
    } else {
        exact
    }
}

/// The row of one unit that asks for most when scaled to the volume.
fn largest(
    rows: impl Iterator<Item = &'static BleachRow>,
    unit: RowUnit,
    litres_of_unit: f64,
    litres: f64,
) -> Option<(f64, Source)> {
    rows.filter(|row| row.unit == unit)
        .map(|row| (row.ml() * litres / (row.count * litres_of_unit), row.source))
        // The first of equals stays: tables are read in the order of their standing.
        .reduce(|best, row| {
            if row.0 > best.0 * (1.0 + 1e-9) {
                row
            } else {
                best
            }
        })
}

fn at_least(value: f64, bound: f64) -> bool {
    value >= bound * (1.0 - 1e-9)
}
