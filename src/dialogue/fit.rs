//! Each figure of a message in the place that its work has for it.
//!
//! In: the message as read, and the facts it adds to.
//! Out: the facts, put together.
//! Promises that a target is not taken for a strength, water not for stock, a tank not for a jar.

use crate::parser::{Counted, Doubt, Link, Note, strength_limit};
use crate::quantity::limit;
use crate::request::{Facts, Field, Form, Nose, Purpose, Taken, Topic, Work};
use crate::treatment;

use super::Conversation;
use super::facts::merge;
use super::order;
use super::state::{ANSWER_LIVES_MINUTES, FOLLOW_UP_LIVES_MINUTES};

/// Nobody tests doses in larger jars.
pub(super) const JAR_MAX_LITRES: f64 = 60.0;

/// A shocked well stands overnight and is pumped out the day after.
const WELL_LIVES_MINUTES: i64 = 48 * 60;

impl Conversation<'_> {
    /// What was said before, with this message on top.
    pub(super) fn added_to(&self, work: Work, base: &Facts, doubts: &[Doubt]) -> Facts {
        let stated = self.as_answer(work, base);
        let mut facts = merge(base, &stated, doubts);
        let other_use = stated.purpose.is_some() && stated.purpose != base.purpose;
        if work == Work::Dilute && other_use && stated.target_percent.is_none() {
            // "And for hands?" asks for another strength.
            facts.target_percent = None;
        }
        if work == Work::Supply && stated.people.is_some() && stated.days.is_some() {
            // So many people for so many days asks what to order, whatever there is.
            facts.stock_ml = stated.stock_ml;
            facts.stock_g = stated.stock_g;
            facts.tablets = stated.tablets;
        }
        if self.reading.notes.contains(&Note::DoubleIt) && stated.volume_l.is_none() {
            // Twice the water, or twice the dose? The litres settle it.
            facts.volume_l = None;
        }
        if work == Work::Dose && stated.volume_l.is_none() && !self.names_other_facts() {
            self.count_containers(base, &mut facts);
        }
        match self.reading.link {
            Link::TwiceThat if stated.volume_l.is_none() => {
                facts.volume_l = base.volume_l.map(|litres| litres * 2.0);
            }
            Link::HalfThat if stated.volume_l.is_none() => {
                facts.volume_l = base.volume_l.map(|litres| litres / 2.0);
            }
            Link::Correction | Link::FollowOn | Link::HalfThat | Link::None | Link::TwiceThat => {}
        }
        facts
    }

    /// What the message states, each figure in the place that the topic has for it.
    pub(super) fn as_answer(&self, work: Work, base: &Facts) -> Facts {
        let mut stated = self.reading.stated.clone();
        // "Hurry: how much for 20 L?" hastens the answer, not the wait.
        stated.change = None;
        let contained = |_: &String| stated.volume_l.is_some();
        stated.each_in = self.reading.container.clone().filter(contained);
        stated.each_l = self
            .reading
            .each_litres
            .filter(|_| stated.volume_l.is_some());
        let asked = self.asked().map(|asked| asked.field);
        match work {
            Work::Dilute => self.percents_of_solution(base, asked, &mut stated),
            Work::Well => match (asked, self.reading.length_m) {
                (Some(Field::DiameterM), Some(metres)) if stated.diameter_m.is_none() => {
                    stated.diameter_m = limit::WELL_DIAMETER.check(metres).ok();
                }
                (Some(Field::WaterDepthM), Some(metres)) if stated.water_depth_m.is_none() => {
                    stated.water_depth_m = limit::WELL_DEPTH.check(metres).ok();
                }
                (_, _) => {}
            },
            Work::Supply => {
                // "5 litres each", of people told before.
                if base.people.is_some() && self.reading.per_litres.is_some() {
                    stated.litres_each = self.reading.per_litres;
                    stated.volume_l = None;
                }
                // Any volume is the stock's: water is counted by people here.
                stated.stock_ml = stated
                    .stock_ml
                    .or(stated.volume_l.map(|litres| litres * 1000.0));
                stated.volume_l = None;
            }
            Work::Residual if self.jars_lack_size() => {
                // What is larger is the tank.
                let each = self.reading.each_litres;
                if each.is_some_and(|litres| litres <= JAR_MAX_LITRES) {
                    stated.jar_l = stated.jar_l.or(each);
                    stated.volume_l = None;
                }
            }
            Work::Residual if !stated.jars.is_empty() => {
                // The jars that we told of, unless others are named.
                let told = self.person.talk.work(self.now, ANSWER_LIVES_MINUTES);
                if told.is_some_and(|told| told.facts.asks_jar_method) {
                    stated.jar_l = stated.jar_l.or(Some(order::JAR_LITRES));
                }
                // The same water: its pH and the outbreak hold.
                if let Some(told) = told.filter(|told| told.topic == Topic::Residual) {
                    stated.ph = stated.ph.or(told.facts.ph);
                    stated.outbreak |= told.facts.outbreak;
                }
            }
            Work::Residual if self.is_of_well(&stated) => {
                stated.taken = Some(Taken::InWell);
                let reading = self.bare_residual(&stated);
                stated.residual_mg_per_l = stated.residual_mg_per_l.or(reading);
            }
            Work::Residual if stated.nose == Some(Nose::NoSmell) && self.dosed_twice() => {
                stated.nose = Some(Nose::StillNoSmell);
            }
            Work::Residual => {
                // "The second tank shows 0.1": a bare reading beside the one before.
                let reading = self.bare_residual(&stated);
                stated.residual_mg_per_l = stated.residual_mg_per_l.or(reading);
            }
            Work::Dose => {}
        }
        stated
    }

    /// Strength and target of a solution, where the message did not tell them apart.
    pub(super) fn percents_of_solution(
        &self,
        base: &Facts,
        asked: Option<Field>,
        stated: &mut Facts,
    ) {
        if stated.target_percent.is_some()
            || stated.product.is_some() && stated.strength_percent.is_some()
        {
            return;
        }
        stated.target_percent = self.target_by_use();
        if asked == Some(Field::TargetPercent) && stated.purpose == Some(Purpose::Surfaces) {
            // Named from the list that we gave.
            stated.target_percent = Some(treatment::FLOORS_PERCENT);
        }
        match self.reading.percents.as_slice() {
            [one, other] if stated.strength_percent.is_none() => {
                stated.target_percent = Some(one.min(*other));
                stated.strength_percent = Some(one.max(*other));
            }
            [one] => {
                let is_target = match asked {
                    Some(Field::TargetPercent) => true,
                    Some(Field::StrengthPercent) => false,
                    _ => nearer_the_target(*one, base),
                };
                if is_target {
                    stated.strength_percent = None;
                    stated.target_percent = limit::SOLUTION.check(*one).ok();
                }
            }
            _ => {}
        }
    }

    /// "Blood", "vomit": named from the list of our question how strong it must be. Of a person
    /// who is ill it is no answer to that.
    pub(super) fn target_by_use(&self) -> Option<f64> {
        let notes = &self.reading.notes;
        let asked = self.asked()?;
        if asked.field != Field::TargetPercent
            || notes.contains(&Note::OfSomebody)
            || self.reading.unread.len() > 2
            || !self.reading.percents.is_empty()
        {
            return None;
        }
        if notes.contains(&Note::OfStools) {
            Some(treatment::STOOLS_PERCENT)
        } else if notes.contains(&Note::OfBlood) {
            Some(treatment::BLOOD_PERCENT)
        } else {
            None
        }
    }

    /// A chlorine test after a well was shocked is the well's, unless a place is told.
    pub(super) fn is_of_well(&self, stated: &Facts) -> bool {
        let work = self.person.talk.work(self.now, WELL_LIVES_MINUTES);
        stated.taken.is_none()
            && stated.volume_l.is_none()
            && work.is_some_and(|work| {
                work.topic == Topic::Well || work.facts.taken == Some(Taken::InWell)
            })
    }

    /// Whether the message tells what its figure is.
    fn names_other_facts(&self) -> bool {
        let stated = &self.reading.stated;
        stated.strength_percent.is_some()
            || stated.tablet_mg.is_some()
            || stated.people.is_some()
            || stated.minutes.is_some()
            || self.asked().is_some()
    }

    /// "And for three of these?": as many cans as said, of the size told; without a size, and
    /// for a part of something, the litres are asked.
    fn count_containers(&self, base: &Facts, facts: &mut Facts) {
        let tablets = base
            .product
            .is_some_and(|product| product.form() == Form::Tablets);
        let kind = self.reading.container.as_ref();
        let same_kind = kind.is_some() && kind == base.each_in.as_ref();
        if let Some(counted) = self.reading.counted {
            let count = match counted {
                // Three buckets are not three of the drum.
                Counted::Containers(count) => Some(count).filter(|_| same_kind),
                // "Two of them" may be the tablets.
                Counted::OfThem(count) => Some(count).filter(|_| !tablets),
            };
            facts.volume_l = base
                .each_l
                .zip(count)
                .map(|(each, count)| each * count)
                .filter(|litres| limit::VOLUME.check(*litres).is_ok());
        } else if let Some(part) = self.reading.part_full {
            // One drum, and not several of which one is half full.
            let one = base
                .each_l
                .filter(|each| base.volume_l == Some(*each))
                .filter(|_| same_kind || kind.is_none());
            facts.volume_l = one.map(|litres| litres * part);
        } else if self.reading.notes.contains(&Note::SaysFull)
            && base
                .each_l
                .zip(base.volume_l)
                .is_some_and(|(each, now)| each > now)
        {
            // "Full again", after it was half full.
            facts.volume_l = base.each_l;
        } else if self.reading.link == Link::FollowOn
            && (self.reading.bare.is_some() || (kind.is_some() && base.each_in.is_some()))
            && !same_kind
        {
            // "And for 40?": litres, or cans? "And for a bucket?" after a drum: of what size?
            facts.volume_l = None;
        }
    }

    /// A bare figure as a reading, where nobody tells of a nose or of what was put in.
    fn bare_residual(&self, stated: &Facts) -> Option<f64> {
        let bare = self.reading.bare.filter(|_| stated.nose.is_none())?;
        limit::RESIDUAL.check(bare).ok()
    }

    /// "No smell" after we said to dose once more: a third dose is never given.
    fn dosed_twice(&self) -> bool {
        let last = self.person.talk.work(self.now, FOLLOW_UP_LIVES_MINUTES * 3);
        last.is_some_and(|last| matches!(last.facts.nose, Some(Nose::NoSmell | Nose::StillNoSmell)))
    }

    pub(super) fn jars_lack_size(&self) -> bool {
        self.asked()
            .is_some_and(|asked| !asked.facts.jars.is_empty() && asked.facts.jar_l.is_none())
    }
}

/// "No, 4%" after 0.5% from 5% is the bottle's; "and if I want 0.1%" is the solution's.
fn nearer_the_target(percent: f64, base: &Facts) -> bool {
    let close =
        |other: Option<f64>| other.is_some_and(|other| (0.4..=2.5).contains(&(percent / other)));
    let fits = base
        .product
        .is_none_or(|product| strength_limit(product).check(percent).is_ok());
    if !fits {
        return true;
    }
    match (
        close(base.strength_percent),
        close(order::target_percent(base)),
    ) {
        (true, false) => false,
        (false, true) => true,
        // No solution for hands or floors is over 1%; few bottles are under it.
        (true, true) | (false, false) => percent <= 1.0,
    }
}
