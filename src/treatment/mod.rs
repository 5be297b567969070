//! The treatment core: published tables in, doses and waits out.
//!
//! In: an [`Order`] that lacks nothing.
//! Out: an [`Outcome`], or a typed [`crate::request::Refusal`].
//! Promises that no dose falls below a published US agency row for its strength, that no wait is
//! shorter than the rule and the contact-time table ask, and that nothing here panics.
//! Knows no language, no person, no clock and no I/O.
//!
//! [`treat`] answers an order, [`adjust`] changes the last dose, [`ageing()`] tells whether a
//! bottle is too old. What they rest on can be asked for by itself: [`contact_time`],
//! [`boiling_point`], [`Source::record`].

mod adjust;
mod ageing;
mod atmosphere;
mod boil;
mod chlorine;
mod chlorine_dioxide;
mod choose;
mod condition;
mod contact_time;
mod dilute;
mod dose;
mod filter;
mod first_aid;
mod illness;
mod iodine;
mod jar_test;
mod last_resort;
mod measure;
mod nadcc;
mod need;
mod order;
mod outcome;
mod residual;
mod residual_source;
mod rule;
mod source;
mod storage;
mod sun;
mod supply;
mod table;
mod use_strength;
mod well;

pub use adjust::adjust;
pub use ageing::{Ageing, DecayEstimate, Replace, ageing};
pub use atmosphere::{boiling_point, saturation_temperature, standard_pressure};
pub use boil::BOIL_LONGER_ABOVE_METRES;
pub use contact_time::{CtAsked, contact_time};
pub use first_aid::{FirstAid, first_aid};
pub use last_resort::{LastResort, last_resort};
pub use order::*;
pub use outcome::*;
pub use source::{Source, SourceRecord, Status};
pub use sun::SUN_BOTTLE_MAX_LITRES;
pub use use_strength::*;

/// Answers an order.
///
/// # Errors
/// A [`crate::request::Refusal`] where no answer would be right: iodine for somebody who must
/// not drink it or for longer than a few weeks, a stock that nothing here can count by.
pub fn treat(order: &Order) -> Verdict {
    match order {
        Order::Boil(order) => Ok(boil::treat(order)),
        Order::Choose(order) => choose::treat(order),
        Order::Dose(order) => dose::treat(order),
        Order::Dilute(order) => Ok(dilute::treat(order)),
        Order::Filter(order) => Ok(filter::treat(order)),
        Order::Illness => Ok(illness::treat()),
        Order::JarTest(order) => Ok(jar_test::treat(order)),
        Order::Residual(order) => Ok(residual::treat(order)),
        Order::Storage(order) => Ok(storage::treat(*order)),
        Order::Supply(order) => supply::treat(order),
        Order::Well(order) => Ok(well::treat(order)),
        Order::Sun(order) => Ok(sun::treat(order)),
    }
}

/// An outcome for other water, measured the way the first one is: where that goes by a stock
/// solution, this does too.
#[must_use]
pub fn measured_like(outcome: Outcome, first: &Outcome) -> Outcome {
    let measure = match (outcome.measure, first.measure) {
        (Measure::Powder(powder), Measure::Powder(other)) => {
            Measure::Powder(measure::in_stock_like(powder, other))
        }
        (measure, _) => measure,
    };
    Outcome { measure, ..outcome }
}

/// The first filling of a new or dirty tank, for an order of that size: nobody drinks it.
#[must_use]
pub fn new_tank(order: &DoseOrder) -> Option<Outcome> {
    dose::new_tank(order)
}
