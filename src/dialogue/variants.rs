//! What holds under conditions that nobody spoke of.

use crate::request::{Clarity, Sky};
use crate::treatment::{self, BoilOrder, Elevation, Order, Outcome, SunOrder, Warmth, Water};

/// The same order under conditions that nobody spoke of: the answer tells them as well.
#[derive(Default)]
pub(super) struct Variants {
    pub(super) cloudy: Option<Outcome>,
    pub(super) cold: Option<Outcome>,
    pub(super) high: Option<Outcome>,
    pub(super) sunny: Option<Outcome>,
    pub(super) new_tank: Option<Outcome>,
}

impl Variants {
    /// What holds under conditions that nobody spoke of, measured the way `first` is.
    pub(super) fn of(order: &Order, first: &Outcome) -> Self {
        match order {
            Order::Dose(dose) => {
                let with = |change: &dyn Fn(&mut Water)| {
                    let mut dose = dose.clone();
                    change(&mut dose.water);
                    treatment::treat(&Order::Dose(dose))
                        .ok()
                        .map(|outcome| treatment::measured_like(outcome, first))
                };
                let unsaid = dose.water.clarity.is_none();
                Self {
                    cloudy: unsaid
                        .then(|| with(&|water| water.clarity = Some(Clarity::Cloudy)))
                        .flatten(),
                    cold: (dose.water.warmth == Warmth::Unknown)
                        .then(|| with(&|water| water.warmth = Warmth::Cold))
                        .flatten(),
                    new_tank: treatment::new_tank(dose),
                    ..Self::default()
                }
            }
            Order::Boil(boil) if boil.elevation == Elevation::Unknown => {
                let high = BoilOrder {
                    elevation: Elevation::High,
                    ..boil.clone()
                };
                Self {
                    high: treatment::treat(&Order::Boil(high)).ok(),
                    ..Self::default()
                }
            }
            Order::Sun(sun) if sun.sky.is_none() => {
                let bright = SunOrder {
                    sky: Some(Sky::Sunny),
                    ..sun.clone()
                };
                Self {
                    sunny: treatment::treat(&Order::Sun(bright)).ok(),
                    ..Self::default()
                }
            }
            Order::Boil(_)
            | Order::Choose(_)
            | Order::Dilute(_)
            | Order::Filter(_)
            | Order::Illness
            | Order::JarTest(_)
            | Order::Residual(_)
            | Order::Storage(_)
            | Order::Sun(_)
            | Order::Supply(_)
            | Order::Well(_) => Self::default(),
        }
    }
}
