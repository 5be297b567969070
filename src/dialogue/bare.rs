//! A number without a unit, in answer to our question.
//!
//! In: the number, and what we asked.
//! Out: the fact that it is, or the question again.
//! Promises that a number that may be in two units is asked about.

use crate::parser::{Doubt, strength_limit};
use crate::quantity::{UnitSystem, limit};
use crate::request::{Facts, Field};

use super::bottle::Place;
use super::fit::JAR_MAX_LITRES;
use super::order;
use super::state::{Asked, Urge};
use super::{Conversation, Step};

impl Conversation<'_> {
    /// A number without a unit, taken for what we asked.
    pub(super) fn bare_answer(&self, asked: &Asked, bare: f64) -> Step {
        self.about(asked.work, &Facts::default())
            .bare_answered(asked, bare)
    }

    pub(super) fn bare_answered(&self, asked: &Asked, bare: f64) -> Step {
        let mut facts = asked.facts.clone();
        let metric = self.person.units.unwrap_or_default() == UnitSystem::Metric;
        let doubt = match asked.field {
            Field::StrengthPercent => {
                let allowed = facts.product.map_or(limit::BLEACH, strength_limit);
                take(
                    allowed.check(bare).ok(),
                    &mut facts.strength_percent,
                    Doubt::StrengthOutside,
                )
            }
            Field::TabletMg => take(
                limit::CHLORINE_TABLET.check(bare).ok(),
                &mut facts.tablet_mg,
                Doubt::TabletOutside,
            ),
            // Somebody who thinks in gallons may mean gallons.
            Field::VolumeL if !metric => Some(Doubt::VolumeUnreadable),
            Field::VolumeL if self.jars_lack_size() => take(
                limit::VOLUME
                    .check(bare)
                    .ok()
                    .filter(|litres| *litres <= JAR_MAX_LITRES),
                &mut facts.jar_l,
                Doubt::VolumeOutside,
            ),
            Field::VolumeL => take(
                limit::VOLUME.check(bare).ok(),
                &mut facts.volume_l,
                Doubt::VolumeOutside,
            ),
            // Feet, for somebody who thinks in gallons.
            Field::DiameterM if metric => take(
                limit::WELL_DIAMETER.check(bare).ok(),
                &mut facts.diameter_m,
                Doubt::DiameterOutside,
            ),
            Field::WaterDepthM if metric => take(
                limit::WELL_DEPTH.check(bare).ok(),
                &mut facts.water_depth_m,
                Doubt::WaterDepthOutside,
            ),
            Field::TargetPercent => take(
                limit::SOLUTION.check(bare).ok(),
                &mut facts.target_percent,
                Doubt::TargetOutside,
            ),
            Field::People => take(
                limit::PEOPLE.check(bare).ok(),
                &mut facts.people,
                Doubt::PeopleOutside,
            ),
            Field::Days => take(
                limit::DAYS.check(bare).ok(),
                &mut facts.days,
                Doubt::DaysOutside,
            ),
            Field::Tablets => take(
                limit::STOCK_TABLETS.check(bare).ok(),
                &mut facts.tablets,
                Doubt::StockOutside,
            ),
            Field::ResidualMgPerL if asked.urge == Urge::Needed => take(
                limit::RESIDUAL.check(bare).ok(),
                &mut facts.residual_mg_per_l,
                Doubt::VolumeUnreadable,
            ),
            // Litres or bottles, metres or feet: the unit is needed.
            Field::DiameterM
            | Field::Product
            | Field::ResidualMgPerL
            | Field::StockG
            | Field::StockMl
            | Field::WaterDepthM => return self.ask_again(asked),
        };
        match doubt {
            Some(doubt) => {
                let missing = order::missing(asked.work, &facts, &asked.notes);
                let notes = asked.notes.clone();
                self.ask(asked.work, facts, missing, Some(doubt), Vec::new(), notes)
            }
            None => self.answer(
                asked.work.into(),
                facts,
                Vec::new(),
                asked.notes.clone(),
                Place::Beside,
            ),
        }
    }

    /// "67 on the strip": a number with other words around it, in answer to our question.
    pub(super) fn apply_bare(&self, facts: &mut Facts, doubts: &[Doubt]) {
        let (Some(asked), Some(bare)) = (self.asked(), self.reading.bare) else {
            return;
        };
        let untouched = |field: Field| !doubts.iter().any(|doubt| doubt.field() == field);
        match asked.field {
            Field::TabletMg
                if facts.tablet_mg.is_none()
                    && untouched(Field::TabletMg)
                    && limit::CHLORINE_TABLET.check(bare).is_ok() =>
            {
                facts.tablet_mg = Some(bare);
            }
            Field::StrengthPercent
                if facts.strength_percent.is_none()
                    && self.reading.stated.volume_l.is_none()
                    && untouched(Field::StrengthPercent)
                    && facts
                        .product
                        .is_some_and(|p| strength_limit(p).check(bare).is_ok()) =>
            {
                facts.strength_percent = Some(bare);
            }
            Field::Product
            | Field::StrengthPercent
            | Field::TabletMg
            | Field::VolumeL
            | Field::DiameterM
            | Field::WaterDepthM
            | Field::TargetPercent
            | Field::ResidualMgPerL
            | Field::People
            | Field::Days
            | Field::StockG
            | Field::StockMl
            | Field::Tablets => {}
        }
    }
}

/// Takes a figure that lies inside its limit; otherwise the doubt stands.
fn take(checked: Option<f64>, slot: &mut Option<f64>, doubt: Doubt) -> Option<Doubt> {
    match checked {
        Some(value) => {
            *slot = Some(value);
            None
        }
        None => Some(doubt),
    }
}
