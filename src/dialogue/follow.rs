//! What a message hangs on: our open question, the last answer, or nothing.
//!
//! In: the message as read, the person's conversation, the time.
//! Out: the work that it is about, and the facts that it adds to.
//! Promises that a whole question of its own is not taken for an answer to another.

use crate::parser::{Doubt, Link, Note};
use crate::quantity::limit;
use crate::request::{Facts, Field, Form, Product, Purpose, Topic, Work};

use crate::treatment;

use super::Conversation;
use super::bottle::Place;
use super::facts::{matters, product_doubted, states_something};
use super::order;
use super::state::{ANSWER_LIVES_MINUTES, Asked, FOLLOW_UP_LIVES_MINUTES, Urge};

/// What a message adds to.
pub(super) struct Base {
    pub(super) facts: Facts,
    pub(super) notes: Vec<Note>,
    pub(super) place: Place,
}

impl Conversation<'_> {
    /// What a message that reads like a dose is about: "5%" alone may answer a question about a
    /// well.
    pub(super) fn meant_by_dose(&self) -> Work {
        if self.reading.refusal.is_some() || self.is_to_drink() {
            return Work::Dose;
        }
        if self.uses_stock() {
            return Work::Dose;
        }
        // "New water, 20 L", and the litres that we asked for, are about a dose.
        let asked_dose = self
            .asked()
            .is_some_and(|asked| asked.work == Work::Dose && asked.urge == Urge::Needed);
        let untested = self.reading.notes.contains(&Note::OtherWater)
            && self.reading.stated.residual_mg_per_l.is_none();
        if asked_dose || untested {
            return Work::Dose;
        }
        if let Some(asked) = self.asked().filter(|asked| asked.work != Work::Dose) {
            return if self.answers(asked) {
                asked.work
            } else {
                Work::Dose
            };
        }
        let another_reading = self.reading.stated.residual_mg_per_l.is_some()
            && self.reading.link != Link::None
            && self.last_work_is(Topic::Residual);
        if self.adds_to_reading() || another_reading {
            return Work::Residual;
        }
        self.follows().unwrap_or(Work::Dose)
    }

    /// "Use the stock for 1000 L" after it was made: water is treated with it. More of the stock
    /// is made where the message says so.
    pub(super) fn uses_stock(&self) -> bool {
        self.made_stock().is_some()
            && self.reading.stated.volume_l.is_some()
            && self.reading.stated.product.is_none()
            && self.of_this_stock()
            && (self.reading.notes.contains(&Note::UsesStock)
                || self.reading.link == Link::None
                || self.is_to_drink())
    }

    /// "We only have 3.5% bleach": of no other well and no other water.
    fn only_names_product(&self) -> bool {
        let stated = &self.reading.stated;
        let of_well = |doubt: &Doubt| {
            matches!(
                doubt.field(),
                Field::DiameterM | Field::WaterDepthM | Field::VolumeL
            )
        };
        self.reading.request.topic != Topic::Well
            && stated.volume_l.is_none()
            && stated.diameter_m.is_none()
            && stated.water_depth_m.is_none()
            && self.reading.length_m.is_none()
            && !self.reading.doubts.iter().any(of_well)
    }

    /// No percentage, or the stock's own.
    fn of_this_stock(&self) -> bool {
        let target = self.made_stock().and_then(order::target_percent);
        self.reading
            .percents
            .iter()
            .all(|percent| Some(*percent) == target)
    }

    /// The stock solution that was made last.
    fn made_stock(&self) -> Option<&Facts> {
        let made = self.person.talk.work(self.now, ANSWER_LIVES_MINUTES)?;
        let of_stock = made.topic == Topic::Dilute
            && (made.facts.purpose == Some(Purpose::Stock)
                || order::target_percent(&made.facts) == Some(treatment::STOCK_PERCENT));
        (of_stock && self.asked().is_none()).then_some(&made.facts)
    }

    /// "And for drinking, 40 L": a dose, whatever was spoken of before.
    pub(super) fn is_to_drink(&self) -> bool {
        self.reading.notes.contains(&Note::ToDrink) && self.reading.stated.volume_l.is_some()
    }

    /// "The second tank shows 0.1, how much bleach do I add?" after a chlorine test.
    pub(super) fn adds_to_reading(&self) -> bool {
        self.last_work_is(Topic::Residual)
            && self.reading.notes.contains(&Note::AsksAmount)
            && self
                .reading
                .bare
                .is_some_and(|bare| limit::RESIDUAL.check(bare).is_ok())
    }

    pub(super) fn last_work_is(&self, topic: Topic) -> bool {
        let work = self.person.talk.work(self.now, FOLLOW_UP_LIVES_MINUTES);
        work.is_some_and(|work| work.topic == topic)
    }

    /// Whether a message that reads like a dose answers our question about something else.
    pub(super) fn answers(&self, asked: &Asked) -> bool {
        let stated = &self.reading.stated;
        let anew = self.reading.notes.contains(&Note::AsksAmount)
            && self.reading.link == Link::None
            && !(asked.work == Work::Residual && stated.clarity.is_none())
            // "How much for 10 L?" after "how many litres of the solution?"
            && !(asked.work == Work::Dilute
                && stated.clarity.is_none()
                && stated.product.is_none());
        let other_water = stated.clarity.is_some() && asked.work == Work::Residual;
        !anew && !other_water && self.states_what_matters(asked.work)
    }

    /// Whether the message states what a topic needs, and nothing that it has no use for.
    pub(super) fn states_what_matters(&self, work: Work) -> bool {
        let doubted = self.reading.doubts.iter().any(|doubt| {
            let of_well = matches!(doubt.field(), Field::DiameterM | Field::WaterDepthM);
            if work == Work::Well {
                doubt.field() != Field::VolumeL
            } else {
                !of_well
            }
        });
        (matters(work, &self.reading.stated)
            || doubted
            || (work == Work::Well && self.reading.length_m.is_some()))
            && !(work == Work::Well && self.reading.stated.volume_l.is_some())
    }

    /// The work of the last answer, where this message is about it.
    pub(super) fn follows(&self) -> Option<Work> {
        let stated = &self.reading.stated;
        let linked = self.reading.link != Link::None;
        let lives_for = if linked {
            ANSWER_LIVES_MINUTES
        } else {
            FOLLOW_UP_LIVES_MINUTES
        };
        let work = self.person.talk.work(self.now, lives_for)?.topic.work()?;
        if work == Work::Dose {
            // "Same again" is about what was answered last.
            let last = self.person.talk.last(self.now, lives_for);
            let is_last = last.is_some_and(|last| last.topic == Topic::Dose);
            let follows = match self.reading.link {
                Link::FollowOn | Link::HalfThat | Link::TwiceThat => {
                    is_last || states_something(stated)
                }
                Link::Correction | Link::None => {
                    states_something(stated)
                        || self.reading.notes.contains(&Note::DoubleIt)
                        || self.reading.notes.contains(&Note::NewTank)
                }
            };
            return follows.then_some(Work::Dose);
        }
        // "Now it shows 0.3": a figure after a chlorine test is the next reading.
        if work == Work::Residual && self.reading.bare.is_some() && self.reading.unread.is_empty() {
            return Some(work);
        }
        let anew = self.reading.notes.contains(&Note::AsksAmount) && !linked;
        let names_a_product = stated.product.is_some() || product_doubted(&self.reading.doubts);
        let whole_dose = order::missing_for_dose(stated).is_empty();
        // "And for one 20 L can?" is about water, even after a plan.
        if work == Work::Supply && whole_dose && stated.people.is_none() {
            return None;
        }
        let planned = self.person.talk.work(self.now, lives_for);
        let of_tablets = planned
            .and_then(|plan| plan.facts.product)
            .is_some_and(|product| product.form() != Form::Liquid);
        let stock_told = planned.is_some_and(|plan| {
            let facts = &plan.facts;
            facts.people.is_none()
                && (facts.stock_ml.is_some() || facts.stock_g.is_some() || facts.tablets.is_some())
        });
        // "And for 20 L?" after what a bottle treats: a bucket of water.
        if work == Work::Supply
            && stated.volume_l.is_some()
            && stated.people.is_none()
            && (of_tablets || stock_told)
        {
            return None;
        }
        // "We only have 3.5% bleach": for the same well.
        let same_well = work == Work::Well && self.only_names_product();
        let other = (names_a_product || whole_dose) && !same_well;
        (self.states_what_matters(work) && !anew && (linked || !other)).then_some(work)
    }

    /// The facts that this message adds to: our open question's, or the last answer's.
    pub(super) fn base(&self, work: Work) -> Option<Base> {
        let stated = &self.reading.stated;
        let linked = self.reading.link != Link::None;
        if work == Work::Residual
            && let Some(next) = self.next_reading()
        {
            return Some(next);
        }
        if let Some(asked) = self.asked().filter(|asked| asked.work == work) {
            let other_product = match (stated.product, asked.facts.product) {
                (Some(new), Some(old)) => new != old,
                (Some(_), None) | (None, _) => false,
            };
            // Another product with its own figures is another question.
            let another = other_product && !linked;
            return (!another).then(|| Base {
                facts: asked.facts.clone(),
                notes: asked.notes.clone(),
                place: Place::Beside,
            });
        }
        let whole = order::missing(work, stated, &self.reading.notes).is_empty();
        let lives_for = if linked {
            ANSWER_LIVES_MINUTES
        } else {
            FOLLOW_UP_LIVES_MINUTES
        };
        let last = self
            .person
            .talk
            .work(self.now, lives_for)
            .filter(|last| last.topic == work.into())?;
        if whole && !(linked && work != Work::Dose) {
            return None;
        }
        let names_a_product = stated.product.is_some() || product_doubted(&self.reading.doubts);
        let same_well = work == Work::Well
            && self.only_names_product()
            && !self.reading.notes.contains(&Note::AsksAmount);
        if names_a_product && !linked && !same_well {
            // "How much bleach for 20 L" asks anew, even after an answer about bleach.
            return None;
        }
        let new_question = work != Work::Dose
            && self.reading.request.topic == work.into()
            && !linked
            && self.reading.notes.contains(&Note::AsksAmount);
        if new_question && work != Work::Residual {
            return None;
        }
        let doubled = self.reading.notes.contains(&Note::DoubleIt)
            || self.reading.notes.contains(&Note::NewTank)
            || self.reading.counted.is_some()
            || self.reading.part_full.is_some();
        (linked || doubled || matters(work, stated) || !self.reading.doubts.is_empty()).then(|| {
            // "100 L" after "20 L" is more water; "no, 100 L" and "same but cloudy" are not.
            let more_water = stated.volume_l.is_some() && self.reading.link != Link::Correction;
            Base {
                facts: last.facts.clone(),
                notes: last.notes.clone(),
                place: if more_water {
                    Place::Beside
                } else {
                    Place::Instead
                },
            }
        })
    }

    /// A new reading of the tank that was topped up before: what it holds and what is added stay.
    pub(super) fn next_reading(&self) -> Option<Base> {
        let before = self.person.talk.work(self.now, FOLLOW_UP_LIVES_MINUTES)?;
        let stated = self.as_answer(Work::Residual, &Facts::default());
        let again = before.topic == Topic::Residual
            && before.facts.residual_mg_per_l.is_some()
            && stated.residual_mg_per_l.is_some()
            && self.asked().is_none_or(|asked| asked.urge == Urge::Invited);
        let facts = Facts {
            product: before.facts.product,
            strength_percent: before.facts.strength_percent,
            tablet_mg: before.facts.tablet_mg,
            volume_l: before.facts.volume_l,
            volume_system: before.facts.volume_system,
            outbreak: before.facts.outbreak,
            ..Facts::default()
        };
        again.then(|| Base {
            facts,
            notes: before.notes.clone(),
            place: Place::Beside,
        })
    }

    /// "And how much for 20 L to drink?" after a question about something else: with the same
    /// bottle.
    pub(super) fn inherit_product(&self, work: Work, facts: &mut Facts, doubts: &[Doubt]) {
        if work == Work::Dose && self.reading.notes.contains(&Note::NeverDosed) {
            let tested = self.person.talk.work(self.now, FOLLOW_UP_LIVES_MINUTES);
            if let Some(tested) = tested.filter(|tested| tested.topic == Topic::Residual) {
                let before = &tested.facts;
                facts.product = facts.product.or(before.product);
                facts.strength_percent = facts.strength_percent.or(before.strength_percent);
                facts.tablet_mg = facts.tablet_mg.or(before.tablet_mg);
                facts.volume_l = facts.volume_l.or(before.volume_l);
                facts.volume_system = facts.volume_system.or(before.volume_system);
                facts.ph = facts.ph.or(before.ph);
                return;
            }
        }
        if work == Work::Dose && self.uses_stock() {
            facts.product = Some(Product::Bleach);
            facts.strength_percent = self.made_stock().and_then(order::target_percent);
            return;
        }
        // "20 L with the same bleach": the product is named, and its label was.
        let same = self.reading.notes.contains(&Note::SameAsBefore)
            && facts.strength_percent.is_none()
            && self
                .person
                .talk
                .work(self.now, FOLLOW_UP_LIVES_MINUTES)
                .is_some_and(|before| before.facts.product == facts.product);
        let told = (facts.product.is_some() && !same) || facts.strength_percent.is_some();
        // "Now the floor" after a dose: with the same bottle.
        let other_use = work == Work::Dilute && self.last_work_is(Topic::Dose);
        let other_water = work == Work::Dose
            && (self.reading.notes.contains(&Note::OtherWater) || self.is_to_drink());
        let after_plan = work == Work::Dose
            && self.last_work_is(Topic::Supply)
            && self.reading.stated.volume_l.is_some();
        let joined = self.reading.link == Link::FollowOn || other_use || other_water || after_plan;
        if !joined || told || product_doubted(doubts) {
            return;
        }
        let before = self.person.talk.work(self.now, FOLLOW_UP_LIVES_MINUTES);
        let before = match self.asked() {
            Some(asked) if asked.work == work => return,
            Some(asked) => &asked.facts,
            None => match before.filter(|before| before.topic != work.into()) {
                Some(before) => &before.facts,
                None => return,
            },
        };
        facts.product = before.product;
        facts.strength_percent = facts.strength_percent.or(before.strength_percent);
        facts.tablet_mg = before
            .tablet_mg
            .filter(|mg| work == Work::Dilute || limit::CHLORINE_TABLET.check(*mg).is_ok());
    }
}
