//! Chlorine tablets for drinking water (NaDCC).
//!
//! In: the labelled mg of NaDCC, perhaps the litres that the label gives to one tablet.
//! Out: how many tablets, exactly.
//! Promises the label's litres where they are believable, otherwise 4 mg/L of chlorine.
//! Does not know the larger, stabilised products for pools: those are no drinking-water tablets.

use crate::quantity::{TabletMass, Volume};

use super::condition;
use super::dose::{Halogen, Plan};
use super::need::Need;
use super::order::DoseOrder;
use super::rule;
use super::source::Source;
use super::table;

/// Doses that a label's litres may come to, in mg/L of chlorine. The published pairs run from 2
/// to 5 mg/L (relief catalogues); a figure beyond half or twice that is a misreading of the
/// label, and the emergency dose is safer.
const BELIEVED_MG_PER_L: std::ops::RangeInclusive<f64> = 1.0..=10.0;

/// Tablets for the water, doubled when cloudy or cold.
pub(super) fn tablet(order: &DoseOrder, mass: TabletMass, label: Option<Volume>) -> Plan {
    let litres = order.volume.litres();
    let factor = condition::chlorine_factor(&order.water);
    let (mg_each, source) = available_chlorine(mass.mg());
    let by_label = label
        .map(Volume::litres)
        .filter(|litres| BELIEVED_MG_PER_L.contains(&(mg_each / litres)));
    let count = match by_label {
        Some(each) => litres / each,
        None => rule::TABLET_MG_PER_L * litres / mg_each,
    };
    let sources = if by_label.is_some() {
        vec![Source::LabelDirections, source]
    } else {
        vec![source, rule::CHLORINE_SOURCE]
    };
    Plan {
        need: Need::Tablets {
            count: count * factor,
            mg_each,
        },
        halogen: Halogen::Chlorine,
        sources,
    }
}

/// mg of available chlorine in a tablet. Catalogued sizes as printed, others by the lower bound.
pub(super) fn available_chlorine(nadcc_mg: f64) -> (f64, Source) {
    table::TABLETS
        .iter()
        .find(|row| (row.nadcc_mg - nadcc_mg).abs() < 1e-6)
        .map_or(
            (nadcc_mg * rule::NADCC_SHARE, Source::MsfCatalogue),
            |row| (row.chlorine_mg, row.source),
        )
}
