//! The treatment core: published tables in, doses and waits out.
//!
//! In: an [`Order`] that lacks nothing.
//! Out: an [`Outcome`], or a typed [`crate::request::Refusal`].
//! Promises that no dose falls below a published US agency row for its strength, that no wait is
//! shorter than the rule and the contact-time table ask, and that nothing here panics.
//! Knows no language, no person, no clock and no I/O.
//!
//! [`treat`] answers an order, [`adjust`] changes the last dose. What they rest on can be asked
//! for by itself: [`contact_time`], [`boiling_point`], [`Source::record`].

mod adjust;
mod atmosphere;
mod boil;
mod chlorine;
mod chlorine_dioxide;
mod choose;
mod condition;
mod contact_time;
mod dose;
mod filter;
mod first_aid;
mod iodine;
mod last_resort;
mod measure;
mod nadcc;
mod need;
mod order;
mod outcome;
mod rule;
mod source;
mod sun;
mod table;

pub use adjust::adjust;
pub use atmosphere::{boiling_point, saturation_temperature, standard_pressure};
pub use boil::BOIL_LONGER_ABOVE_METRES;
pub use contact_time::{CtAsked, contact_time};
pub use first_aid::{FirstAid, first_aid};
pub use last_resort::{LastResort, last_resort};
pub use order::*;
pub use outcome::*;
pub use source::{Source, SourceRecord, Status};
pub use sun::SUN_BOTTLE_MAX_LITRES;

/// Answers an order.
///
/// # Errors
/// A [`crate::request::Refusal`] where no answer would be right: iodine for somebody who must
/// not drink it.
pub fn treat(order: &Order) -> Verdict {
    match order {
        Order::Boil(order) => Ok(boil::treat(order)),
        Order::Choose(order) => choose::treat(order),
        Order::Dose(order) => dose::treat(order),
        Order::Filter(order) => Ok(filter::treat(order)),
        Order::Sun(order) => Ok(sun::treat(order)),
    }
}
