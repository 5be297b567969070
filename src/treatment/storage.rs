//! How to keep a product, or treated water.
//!
//! In: which.
//! Out: months or hours, how to rinse a container, what to beware of.
//! Promises no months that nobody published. Does not know how old a bottle is: that is
//! [`super::ageing()`].

use crate::request::Product;

use super::order::StorageOrder;
use super::outcome::{Caution, Detail, Outcome, StorageFinding};
use super::source::Source;

/// Treated water is drunk within a day: the US CDC asks for 0.2 mg/L of chlorine 24 h after the
/// dose (quoted in a guideline on residual disinfection).
const KEEPS_H: u32 = 24;

/// Bleach to a litre of water for rinsing a container: a teaspoon (US CDC, Make Water Safe).
const RINSE_ML_PER_LITRE: f64 = 5.0;

/// Seconds that the rinse stays in, at least (same flyer).
const RINSE_S: u32 = 30;

/// Months that bleach keeps (EPA 816-F-15-003: less than one year old).
const BLEACH_MONTHS: u32 = 12;

/// Months that chlorinated lime keeps (cholera outbreak manual, appendix 14: to be used within
/// three months of manufacture).
const LIME_MONTHS: u32 = 3;

/// How to keep it.
pub(super) fn treat(order: StorageOrder) -> Outcome {
    match order {
        StorageOrder::Product(product) => keep(product),
        StorageOrder::Water => Outcome {
            cautions: vec![Caution::NarrowNeck],
            sources: vec![Source::PathResidual, Source::CdcMakeWaterSafe],
            ..Outcome::without_dose(Detail::Storage(StorageFinding::Water {
                keeps_h: KEEPS_H,
                rinse_ml_per_litre: RINSE_ML_PER_LITRE,
                rinse_s: RINSE_S,
            }))
        },
    }
}

/// Months after which a product is replaced, where somebody published them. Calcium
/// hypochlorite, tablets and iodine keep for years by common practice; no figure was found, so
/// the date on the pack counts.
pub(super) fn replaced_after(product: Product) -> Option<(u32, Source)> {
    match product {
        Product::Bleach => Some((BLEACH_MONTHS, Source::Epa816F15003)),
        Product::BleachingPowder => Some((LIME_MONTHS, Source::GtfccAppendix14)),
        Product::CalciumHypochlorite
        | Product::ChlorineDioxide
        | Product::IodineTablet
        | Product::IodineTincture
        | Product::Nadcc
        | Product::PovidoneIodine => None,
    }
}

fn keep(product: Product) -> Outcome {
    let mut cautions = vec![Caution::CoolAndDark, Caution::KeepFromChildren];
    // Acids and ammonia set gas free from chlorine products.
    if !product.is_iodine() {
        cautions.push(Caution::NeverMix);
    }
    let months = replaced_after(product);
    let mut sources: Vec<Source> = months.iter().map(|(_, source)| *source).collect();
    sources.push(Source::CommonPractice);
    Outcome {
        cautions,
        sources,
        ..Outcome::without_dose(Detail::Storage(StorageFinding::Product {
            replace_months: months.map(|(months, _)| months),
        }))
    }
}
