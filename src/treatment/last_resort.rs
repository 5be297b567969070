//! No label, no fuel: what was once advised, named as such.

use super::source::Source;

/// Drops of household bleach a litre when its strength is unknown.
/// `DECISIONS.md`: the old last resort, two drops a litre, only when there is neither a label
/// nor fire.
const DROPS_PER_LITRE: f64 = 2.0;
/// Then this wait, in minutes; the water must smell faintly of chlorine.
const WAIT_MINUTES: u32 = 30;

/// The old last resort.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LastResort {
    /// Drops in each litre.
    pub drops_per_litre: u32,
    /// Drops for all the water, where its volume is known.
    pub drops: Option<u32>,
    /// Minutes to wait, and to wait again after the one repeat.
    pub wait_min: u32,
    /// Where it comes from.
    pub source: Source,
}

/// Two drops a litre, half an hour, and the smell decides.
#[must_use]
pub fn last_resort(litres: Option<f64>) -> LastResort {
    LastResort {
        drops_per_litre: DROPS_PER_LITRE as u32,
        drops: litres.map(|litres| (litres * DROPS_PER_LITRE).ceil() as u32),
        wait_min: WAIT_MINUTES,
        source: Source::CommonPractice,
    }
}
