//! How old a product may grow.
//!
//! In: the product, perhaps its strength, its age in days.
//! Out: whether to replace it, and roughly how much of its chlorine is left.
//! Promises no month that nobody published, and no estimate for a strength beyond the printed ones.
//!
//! Never used to lower or raise a dose: a dose goes by the label, and an old bottle is answered
//! with a warning, a smell test or a test kit (DECISIONS: bleach age). The half-lives are from
//! memory and for 25 °C; a bottle in the sun loses far more.
//! Does not know how the bottle was kept.

use crate::request::Product;

use super::source::Source;
use super::storage;
use super::table;

/// Days of a month, a twelfth of a year.
const DAYS_PER_MONTH: f64 = 365.0 / 12.0;

/// Bleach as strong as this ages faster: a 10% solution loses faster than 5 or 1% (Hazardous
/// Substances Data Bank).
const STRONG_PERCENT: f64 = 10.0;

/// Share of its months after which strong bleach is to be replaced soon. Our choice; no source.
const STRONG_SHARE: f64 = 0.5;

/// Everything else is to be replaced soon within its last month. Our choice; no source.
const LAST_DAYS: f64 = DAYS_PER_MONTH;

/// What an age means.
#[derive(Debug, Clone, PartialEq)]
pub struct Ageing {
    /// Whether to replace it.
    pub replace: Replace,
    /// After how many months from manufacture it is replaced.
    pub replace_months: u32,
    /// How much may be left, where a half-life is known.
    pub estimate: Option<DecayEstimate>,
    /// What it rests on, but for the estimate, which names its own.
    pub sources: Vec<Source>,
}

/// Whether a product is to be replaced.
#[derive(Debug, Clone, Copy, PartialEq, Eq, strum::IntoStaticStr)]
#[strum(serialize_all = "snake_case")]
pub enum Replace {
    /// It is too old.
    Now,
    /// It is young enough.
    NotYet,
    /// Get the next one.
    Soon,
}

/// First-order decay in a closed, dark bottle.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DecayEstimate {
    /// Chlorine left, percent of what was in it.
    pub percent_left: f64,
    /// The temperature it holds for, °C.
    pub celsius: f64,
    /// Whose half-life.
    pub source: Source,
}

/// What an age means for a product; none where nobody published how long it keeps, or where the
/// age is not a number. An age below nothing counts as nothing.
#[must_use]
pub fn ageing(product: Product, strength_percent: Option<f64>, age_days: f64) -> Option<Ageing> {
    let (replace_months, source) = storage::replaced_after(product)?;
    if age_days.is_nan() {
        return None;
    }
    let age = age_days.max(0.0);
    let most = f64::from(replace_months) * DAYS_PER_MONTH;
    let is_strong =
        product == Product::Bleach && strength_percent.is_some_and(|p| p >= STRONG_PERCENT);
    let mut sources = vec![source];
    let soon = if is_strong {
        sources.push(Source::Hsdb);
        most * STRONG_SHARE
    } else {
        most - LAST_DAYS
    };
    let replace = if age >= most {
        Replace::Now
    } else if age >= soon {
        Replace::Soon
    } else {
        Replace::NotYet
    };
    Some(Ageing {
        replace,
        replace_months,
        estimate: match product {
            Product::Bleach => strength_percent.and_then(|percent| left_of(percent, age)),
            Product::BleachingPowder
            | Product::CalciumHypochlorite
            | Product::ChlorineDioxide
            | Product::IodineTablet
            | Product::IodineTincture
            | Product::Nadcc
            | Product::PovidoneIodine => None,
        },
        sources,
    })
}

/// What is left by the half-life of the next stronger printed strength: stronger is faster.
fn left_of(percent: f64, age_days: f64) -> Option<DecayEstimate> {
    let row = table::HALF_LIVES
        .iter()
        .filter(|row| row.percent >= percent * (1.0 - 1e-9))
        .reduce(|best, row| {
            if row.percent < best.percent {
                row
            } else {
                best
            }
        })?;
    Some(DecayEstimate {
        percent_left: 100.0 * (-age_days / row.days).exp2(),
        celsius: row.celsius,
        source: row.source,
    })
}
