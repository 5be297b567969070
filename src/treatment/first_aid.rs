//! First aid after contact with the chemical: what all sources agree on.
//!
//! Where they differ (a serving of water, plenty of water, none) `DECISIONS.md` takes the
//! cautious common part: rinse the mouth, sips only if awake, never make vomit, get help at once.

use crate::request::Product;

use super::outcome::Caution;
use super::source::Source;

/// Minutes of rinsing eyes and skin. The safety card for iodine and the label of calcium
/// hypochlorite print at least 15; a bleach makers' association prints 10 to 15: the longer wins.
const RINSE_MIN: u32 = 15;

/// What holds for first aid.
#[derive(Debug, Clone, PartialEq)]
pub struct FirstAid {
    /// Minutes of rinsing.
    pub rinse_min: u32,
    /// What must be done or left.
    pub cautions: Vec<Caution>,
    /// What it rests on.
    pub sources: Vec<Source>,
}

/// First aid for a product, or for any of them.
#[must_use]
pub fn first_aid(product: Option<Product>) -> FirstAid {
    let sources = match product {
        Some(Product::BleachingPowder | Product::CalciumHypochlorite | Product::Nadcc) => {
            vec![Source::CalciumHypochloriteLabel, Source::Icsc0482]
        }
        Some(Product::IodineTablet | Product::IodineTincture | Product::PovidoneIodine) => {
            vec![Source::Icsc0167]
        }
        Some(Product::Bleach | Product::ChlorineDioxide) | None => {
            vec![Source::Icsc0482, Source::CdcGetOff]
        }
    };
    FirstAid {
        rinse_min: RINSE_MIN,
        cautions: vec![
            Caution::MedicalHelp,
            Caution::NoVomiting,
            Caution::RinseWithWater,
            Caution::FreshAir,
        ],
        sources,
    }
}
