//! Remembered bottles: what they are, how much is left, how old they grow.
//!
//! In: what the person tells of a bottle, and the doses that were answered from it.
//! Out: which bottle a question means, what is left, and how long that lasts.
//! Promises that age and emptiness warn and never change a dose.

use jiff::Timestamp;
use jiff::civil::Date;
use serde::{Deserialize, Serialize};

use crate::request::{Facts, Form, LabelFigure, Product};
use crate::treatment::Measure;

use super::state::{FOLLOW_UP_LIVES_MINUTES, lives};

/// More bottles than this nobody keeps apart; the one unused longest is dropped.
pub(super) const BOTTLES_MAX: usize = 6;

/// A pace is told after this many days; before, a few doses say nothing.
const PACE_DAYS_MIN: f64 = 2.0;

/// A warning when less than this is left.
pub const WARN_DAYS: f64 = 7.0;

/// A remembered bottle or box.
#[derive(Debug, Clone, PartialEq)]
pub struct Bottle {
    /// The product, where said.
    pub product: Option<Product>,
    /// Its strength, percent.
    pub strength_percent: Option<f64>,
    /// Its tablets' mg.
    pub tablet_mg: Option<f64>,
    /// When it was opened.
    pub opened: Option<Date>,
    /// When we were told.
    pub told_at: Timestamp,
    /// How much is left, where said.
    pub left: Option<Left>,
}

/// How much is left in a bottle: mL, grams or tablets, as its product is measured.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Left {
    /// Now.
    pub amount: f64,
    /// Taken since `since`.
    pub drawn: f64,
    /// When the amount was told.
    pub since: Timestamp,
    /// The last dose taken.
    pub last: Option<Draw>,
}

/// A dose taken from a bottle.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Draw {
    /// How much.
    pub amount: f64,
    /// When.
    pub at: Timestamp,
}

/// Whether a dose stands beside the one before it or in its place.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Place {
    /// Another dose.
    Beside,
    /// The last one, changed: "same but cloudy".
    Instead,
}

impl Left {
    pub(super) const fn told(amount: f64, now: Timestamp) -> Self {
        Self {
            amount,
            drawn: 0.0,
            since: now,
            last: None,
        }
    }

    /// A dose is taken; nothing if there is less than that: then it comes from elsewhere, or the
    /// count is wrong.
    pub(super) fn draw(self, amount: f64, place: Place, now: Timestamp) -> Option<Self> {
        let before = match (place, self.last) {
            (Place::Instead, Some(last)) if lives(last.at, now, FOLLOW_UP_LIVES_MINUTES) => {
                self.undone().unwrap_or(self)
            }
            (Place::Beside | Place::Instead, _) => self,
        };
        (amount <= before.amount).then_some(Self {
            amount: before.amount - amount,
            drawn: before.drawn + amount,
            since: before.since,
            last: Some(Draw { amount, at: now }),
        })
    }

    /// The last dose was not made.
    pub(super) fn undone(self) -> Option<Self> {
        let last = self.last?;
        Some(Self {
            amount: self.amount + last.amount,
            drawn: (self.drawn - last.amount).max(0.0),
            since: self.since,
            last: None,
        })
    }

    /// Days until it is empty at the person's own pace, once there is one.
    #[must_use]
    pub fn days_left(&self, now: Timestamp) -> Option<f64> {
        let days = days_between(self.since, now);
        (days >= PACE_DAYS_MIN && self.drawn > 0.0).then(|| self.amount / (self.drawn / days))
    }
}

impl Bottle {
    /// The same product with the same figure on its label.
    pub(super) fn is_same(&self, other: &Self) -> bool {
        let near = |one: Option<f64>, other: Option<f64>| match (one, other) {
            (Some(one), Some(other)) => (one - other).abs() < 1e-9,
            (None, None) => true,
            (Some(_), None) | (None, Some(_)) => false,
        };
        self.product == other.product
            && near(self.strength_percent, other.strength_percent)
            && near(self.tablet_mg, other.tablet_mg)
    }

    /// Whether facts rest on this bottle: its product, with its figure.
    pub(super) fn is_of(&self, facts: &Facts) -> bool {
        let Some(product) = self.product else {
            return false;
        };
        facts.product == Some(product)
            && match product.label_figure() {
                LabelFigure::Directions => true,
                LabelFigure::Strength => {
                    self.strength_percent.is_some()
                        && facts.strength_percent == self.strength_percent
                }
                LabelFigure::TabletMass => {
                    self.tablet_mg.is_some() && facts.tablet_mg == self.tablet_mg
                }
            }
    }

    /// Days since it was opened; without a date, since we were told.
    #[must_use]
    pub fn age_days(&self, now: Timestamp) -> f64 {
        let since = self.opened.unwrap_or_else(|| date_of(self.told_at));
        f64::from(i32::try_from(date_of(now).duration_since(since).as_hours() / 24).unwrap_or(0))
    }

    /// Liquid chlorine over a year old is to be replaced (EPA 816-F-15-003: "less than one year
    /// old").
    #[must_use]
    pub fn is_old(&self, now: Timestamp) -> bool {
        const DAYS: f64 = 365.0;
        self.age_days(now) > DAYS
    }
}

/// What a dose leaves.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum Drawn {
    /// So much is left.
    Left(Left),
    /// There is less than the dose.
    TooLittle(Left),
}

/// What a measure takes out of a bottle of this form; nothing where the label alone tells.
pub(super) fn drawn_by(measure: &Measure, form: Form) -> Option<f64> {
    match (measure, form) {
        (Measure::Liquid(liquid), Form::Liquid) => Some(liquid.ml),
        (Measure::Powder(powder), Form::Powder) => Some(powder.grams),
        (Measure::Tablets(count), Form::Tablets) => Some(f64::from(*count)),
        (
            Measure::ByLabel
            | Measure::Liquid(_)
            | Measure::Nothing
            | Measure::Powder(_)
            | Measure::Tablets(_),
            _,
        ) => None,
    }
}

/// The amount that the facts of a message give to a product of this form.
pub(super) const fn amount_told(facts: &Facts, form: Form) -> Option<f64> {
    match form {
        Form::Liquid => facts.stock_ml,
        Form::Powder => facts.stock_g,
        Form::Tablets => facts.tablets,
    }
}

/// The day, everywhere the same: a bottle's age does not hang on a time zone.
pub(super) fn date_of(timestamp: Timestamp) -> Date {
    jiff::tz::TimeZone::UTC.to_datetime(timestamp).date()
}

fn days_between(since: Timestamp, now: Timestamp) -> f64 {
    let seconds = now.as_second() - since.as_second();
    // Seconds of a lifetime are exact in a float.
    (seconds as f64 / 86_400.0).max(0.0)
}
