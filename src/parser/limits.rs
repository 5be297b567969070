//! Figures that nobody can mean.
//!
//! In: the facts of a message.
//! Out: the facts that lie inside their limits; for each other one a doubt, which asks again.

use crate::quantity::{Limit, limit};
use crate::request::Facts;

use super::doubt::Doubt;

/// Takes out what lies outside its limit, and says so.
pub(super) fn check(all: &mut Facts, doubts: &mut Vec<Doubt>) {
    let figures: [(&mut Option<f64>, Limit, Doubt); 8] = [
        (
            &mut all.target_percent,
            limit::SOLUTION,
            Doubt::TargetOutside,
        ),
        (
            &mut all.diameter_m,
            limit::WELL_DIAMETER,
            Doubt::DiameterOutside,
        ),
        (
            &mut all.water_depth_m,
            limit::WELL_DEPTH,
            Doubt::WaterDepthOutside,
        ),
        (&mut all.people, limit::PEOPLE, Doubt::PeopleOutside),
        (&mut all.days, limit::DAYS, Doubt::DaysOutside),
        (&mut all.stock_ml, limit::STOCK_ML, Doubt::StockOutside),
        (&mut all.stock_g, limit::STOCK_GRAMS, Doubt::StockOutside),
        (&mut all.tablets, limit::STOCK_TABLETS, Doubt::StockOutside),
    ];
    for (figure, limit, doubt) in figures {
        if figure.is_some_and(|value| limit.check(value).is_err()) {
            *figure = None;
            doubts.push(doubt);
        }
    }
}
