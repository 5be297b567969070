//! The facts of one question, gathered over several messages.
//!
//! In: what the message states, our open question or the last answer, the remembered bottles.
//! Out: an answer, one question, or a refusal.
//! Promises that another product brings its own figures, and that a doubt takes away what was
//! sure before.

use crate::parser::{Doubt, Link, Note, strength_limit};
use crate::quantity::{UnitSystem, limit};
use crate::request::{Facts, Field, LabelFigure, Product, Purpose, Refusal, Taken, Topic, Work};
use crate::treatment::{self, Detail, JarVerdict, ResidualVerdict};

use super::bottle::Place;
use super::facts::{iodine_suits, matters, merge, product_doubted, refusal_of, states_something};
use super::order;
use super::say::{Answer, Beside, Question, Say};
use super::state::{ANSWER_LIVES_MINUTES, Answered, Asked, FOLLOW_UP_LIVES_MINUTES, Talk, Urge};
use super::{Conversation, Step};

/// Nobody tests doses in larger jars.
const JAR_MAX_LITRES: f64 = 60.0;

/// A shocked well stands overnight and is pumped out the day after.
const WELL_LIVES_MINUTES: i64 = 48 * 60;

/// What a message adds to.
struct Base {
    facts: Facts,
    notes: Vec<Note>,
    place: Place,
}

impl Conversation<'_> {
    /// What a message that reads like a dose is about: "5%" alone may answer a question about a
    /// well.
    pub(super) fn meant_by_dose(&self) -> Work {
        if self.reading.refusal.is_some() || self.is_to_drink() {
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

    /// "And for drinking, 40 L": a dose, whatever was spoken of before.
    pub(super) fn is_to_drink(&self) -> bool {
        self.reading.notes.contains(&Note::ToDrink) && self.reading.stated.volume_l.is_some()
    }

    /// "The second tank shows 0.1, how much bleach do I add?" after a chlorine test.
    fn adds_to_reading(&self) -> bool {
        self.last_work_is(Topic::Residual)
            && self.reading.notes.contains(&Note::AsksAmount)
            && self
                .reading
                .bare
                .is_some_and(|bare| limit::RESIDUAL.check(bare).is_ok())
    }

    fn last_work_is(&self, topic: Topic) -> bool {
        let work = self.person.talk.work(self.now, FOLLOW_UP_LIVES_MINUTES);
        work.is_some_and(|work| work.topic == topic)
    }

    /// Whether a message that reads like a dose answers our question about something else.
    fn answers(&self, asked: &Asked) -> bool {
        let stated = &self.reading.stated;
        let anew = self.reading.notes.contains(&Note::AsksAmount)
            && self.reading.link == Link::None
            && !(asked.work == Work::Residual && stated.clarity.is_none());
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
                    states_something(stated) || self.reading.notes.contains(&Note::DoubleIt)
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
        (self.states_what_matters(work) && !anew && (linked || !(names_a_product || whole_dose)))
            .then_some(work)
    }

    /// Puts the facts of a question together, and answers it or asks for the first that lacks.
    pub(super) fn gather(&self, work: Work) -> Step {
        let stated = self.as_answer(work, &Facts::default());
        self.about(work, &stated).gathered(work)
    }

    fn gathered(&self, work: Work) -> Step {
        let stated = &self.reading.stated;
        if work == Work::Dose {
            match self.reading.refusal {
                Some(Refusal::Chemical) => {
                    let base = self.base(work);
                    let (base, notes) = base
                        .map(|base| (base.facts, base.notes))
                        .unwrap_or_default();
                    let facts = Facts {
                        chemical: true,
                        ..merge(&base, stated, &self.reading.doubts)
                    };
                    return self.refuse_for(Refusal::Chemical, facts, notes);
                }
                Some(refusal) => return self.refuse(refusal),
                None => {}
            }
        }
        let mut notes = self.notes();
        let mut facts = self.as_answer(work, &Facts::default());
        let mut doubts = self.reading.doubts.clone();
        if work == Work::Residual {
            // A figure in mg/L is a reading here, no strength that is wanted.
            doubts.retain(|doubt| *doubt != Doubt::StrengthIsTarget);
        }
        let mut place = Place::Beside;
        if let Some(base) = self.base(work) {
            place = base.place;
            if work == Work::Dilute && self.reading.percents.len() == 2 {
                doubts.retain(|doubt| *doubt != Doubt::StrengthTwo);
            }
            facts = self.added_to(work, &base.facts, &doubts);
            for note in base.notes {
                let passes = !matches!(
                    note,
                    Note::Greeting | Note::OwnBottle | Note::Story | Note::Strange
                );
                if passes && !notes.contains(&note) {
                    notes.push(note);
                }
            }
            // "Its a bucket" takes nothing away from a volume already told.
            doubts.retain(|doubt| !(*doubt == Doubt::VolumeUnsized && facts.volume_l.is_some()));
            self.apply_bare(&mut facts, &doubts);
        }
        if place == Place::Beside {
            self.inherit_product(work, &mut facts, &doubts);
        }
        let unfit = facts
            .product
            .and_then(|product| order::unfit(work, product));
        if let Some(doubt) = unfit {
            facts.product = None;
            facts.strength_percent = None;
            facts.tablet_mg = None;
            doubts.push(doubt);
        }
        let remembered = self.remember(work, &mut facts, &doubts);
        let only_iodine = doubts.contains(&Doubt::IodineForm) && facts.product.is_none();
        if work == Work::Dose
            && let Some(refusal) = refusal_of(&facts, &notes).or_else(|| {
                // Whatever its form.
                (only_iodine && !iodine_suits(&facts, &notes)).then_some(Refusal::IodineUnsuitable)
            })
        {
            return self.refuse_for(refusal, facts, notes);
        }
        if facts
            .product
            .is_some_and(|product| product.label_figure() != LabelFigure::TabletMass)
        {
            doubts.retain(|doubt| doubt.field() != Field::TabletMg);
        }
        let missing = order::missing(work, &facts, &notes);
        let doubtful_story = self.reading.notes.contains(&Note::Story);
        // An answer to our question may be in any words; a whole order may not.
        let strange = self.reading.notes.contains(&Note::Strange) && self.asked().is_none();
        if work == Work::Dose && missing.is_empty() && (doubtful_story || strange) {
            return self.unchanged(Say::Unsure);
        }
        if let Some(first) = missing.first() {
            let doubt = doubts
                .iter()
                .copied()
                .find(|doubt| same_question(doubt.field(), *first))
                .or_else(|| self.doubt_about(work, &facts, Some(first)));
            return self.ask(work, facts, missing, doubt, remembered, notes);
        }
        self.answer(work.into(), facts, remembered, notes, place)
    }

    /// "And how much for 20 L to drink?" after a question about something else: with the same
    /// bottle.
    fn inherit_product(&self, work: Work, facts: &mut Facts, doubts: &[Doubt]) {
        let told = facts.product.is_some() || facts.strength_percent.is_some();
        if self.reading.link != Link::FollowOn || told || product_doubted(doubts) {
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
        facts.strength_percent = before.strength_percent;
        facts.tablet_mg = before
            .tablet_mg
            .filter(|mg| work == Work::Dilute || limit::CHLORINE_TABLET.check(*mg).is_ok());
    }

    /// What was said before, with this message on top.
    fn added_to(&self, work: Work, base: &Facts, doubts: &[Doubt]) -> Facts {
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
    fn as_answer(&self, work: Work, base: &Facts) -> Facts {
        let mut stated = self.reading.stated.clone();
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
            }
            Work::Residual if self.is_of_well(&stated) => {
                stated.taken = Some(Taken::InWell);
                let reading = self
                    .reading
                    .bare
                    .and_then(|b| limit::RESIDUAL.check(b).ok());
                stated.residual_mg_per_l = stated.residual_mg_per_l.or(reading);
            }
            Work::Residual => {
                // "The second tank shows 0.1": a bare reading beside the one before.
                let reading = self
                    .reading
                    .bare
                    .and_then(|b| limit::RESIDUAL.check(b).ok());
                stated.residual_mg_per_l = stated.residual_mg_per_l.or(reading);
            }
            Work::Dose => {}
        }
        stated
    }

    /// Strength and target of a solution, where the message did not tell them apart.
    fn percents_of_solution(&self, base: &Facts, asked: Option<Field>, stated: &mut Facts) {
        if stated.target_percent.is_some()
            || stated.product.is_some() && stated.strength_percent.is_some()
        {
            return;
        }
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

    /// A chlorine test after a well was shocked is the well's, unless a place is told.
    fn is_of_well(&self, stated: &Facts) -> bool {
        let work = self.person.talk.work(self.now, WELL_LIVES_MINUTES);
        stated.taken.is_none()
            && stated.volume_l.is_none()
            && work.is_some_and(|work| {
                work.topic == Topic::Well || work.facts.taken == Some(Taken::InWell)
            })
    }

    fn jars_lack_size(&self) -> bool {
        self.asked()
            .is_some_and(|asked| !asked.facts.jars.is_empty() && asked.facts.jar_l.is_none())
    }

    /// The facts that this message adds to: our open question's, or the last answer's.
    fn base(&self, work: Work) -> Option<Base> {
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
        if names_a_product && !linked {
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
        let doubled = self.reading.notes.contains(&Note::DoubleIt);
        (linked || doubled || matters(work, stated) || !self.reading.doubts.is_empty()).then(|| {
            Base {
                facts: last.facts.clone(),
                notes: last.notes.clone(),
                place: Place::Instead,
            }
        })
    }

    /// A new reading of the tank that was topped up before: what it holds and what is added stay.
    fn next_reading(&self) -> Option<Base> {
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

    /// After some answers one more fact would make them exact: it is waited for, not asked for.
    pub(super) fn invitation(&self, answer: &Answer, answered: &Answered) -> Option<Asked> {
        let mut notes = answered.notes.clone();
        let field = match &answer.outcome.detail {
            Detail::Residual(finding) => match finding.verdict {
                ResidualVerdict::Low if !notes.contains(&Note::AsksAmount) => {
                    notes.push(Note::AsksAmount);
                    Field::VolumeL
                }
                ResidualVerdict::EnoughAtUse => Field::ResidualMgPerL,
                ResidualVerdict::Enough
                | ResidualVerdict::High
                | ResidualVerdict::Low
                | ResidualVerdict::NoKit
                | ResidualVerdict::NoSmell
                | ResidualVerdict::Smells
                | ResidualVerdict::Stale
                | ResidualVerdict::TooEarly
                | ResidualVerdict::TooHigh
                | ResidualVerdict::WellNotReady
                | ResidualVerdict::WellReady => return None,
            },
            Detail::JarTest(finding)
                if answered.facts.volume_l.is_none()
                    && matches!(finding.verdict, JarVerdict::Found { .. }) =>
            {
                Field::VolumeL
            }
            Detail::Choice(_)
            | Detail::Dilution(_)
            | Detail::JarTest(_)
            | Detail::Plain
            | Detail::Storage(_)
            | Detail::Supply(_)
            | Detail::Well(_) => return None,
        };
        Some(Asked {
            field,
            work: answered.topic.work()?,
            facts: answered.facts.clone(),
            notes,
            at: self.now,
            urge: Urge::Invited,
        })
    }

    pub(super) fn ask_again(&self, asked: &Asked) -> Step {
        let missing = order::missing(asked.work, &asked.facts, &asked.notes);
        self.ask(
            asked.work,
            asked.facts.clone(),
            missing,
            None,
            Vec::new(),
            asked.notes.clone(),
        )
    }

    /// The doubt that a question for this field comes from.
    pub(super) fn doubt_about(
        &self,
        work: Work,
        facts: &Facts,
        field: Option<&Field>,
    ) -> Option<Doubt> {
        let field = *field?;
        if work == Work::Dilute
            && field == Field::TargetPercent
            && order::target_percent(facts).is_some()
        {
            return Some(Doubt::TargetTooStrong);
        }
        self.reading
            .doubts
            .iter()
            .copied()
            .find(|doubt| same_question(doubt.field(), field))
    }

    /// A number without a unit, taken for what we asked.
    pub(super) fn bare_answer(&self, asked: &Asked, bare: f64) -> Step {
        self.about(asked.work, &Facts::default())
            .bare_answered(asked, bare)
    }

    fn bare_answered(&self, asked: &Asked, bare: f64) -> Step {
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
    fn apply_bare(&self, facts: &mut Facts, doubts: &[Doubt]) {
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

    /// No dose for these facts: they stay, so that "and for 40 L?" is refused as well.
    fn refuse_for(&self, refusal: Refusal, facts: Facts, notes: Vec<Note>) -> Step {
        let answered = Answered {
            topic: Topic::Dose,
            facts,
            notes,
            at: self.now,
            beside: Beside::default(),
        };
        self.changed(Say::Refused(refusal), |person| {
            person.talk = Talk::default().tell(answered);
        })
    }

    pub(super) fn ask(
        &self,
        work: Work,
        facts: Facts,
        missing: Vec<Field>,
        doubt: Option<Doubt>,
        remembered: Vec<Field>,
        notes: Vec<Note>,
    ) -> Step {
        let Some(field) = missing.first().copied() else {
            return self.unchanged(Say::NotUnderstood);
        };
        let last_resort = work == Work::Dose
            && field == Field::StrengthPercent
            && notes.contains(&Note::NoLabel)
            && notes.contains(&Note::NoFire);
        let question = Question {
            field,
            work,
            doubt,
            missing,
            product: facts.product,
            no_label: notes.contains(&Note::NoLabel),
            parts_water: parts_water(work, &facts),
            jars: !facts.jars.is_empty(),
        };
        let asked = Asked {
            field,
            work,
            facts: facts.clone(),
            notes,
            at: self.now,
            urge: Urge::Needed,
        };
        let say = match last_resort.then(|| treatment::last_resort(facts.volume_l)) {
            Some(resort) => Say::LastResort(resort, question),
            None => Say::Ask(question),
        };
        Step {
            remembered,
            ..self.changed(say, |person| {
                person.talk = std::mem::take(&mut person.talk).ask(asked);
            })
        }
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

/// Parts of water to one of liquid: all that a question for the volume leaves open is how much.
fn parts_water(work: Work, facts: &Facts) -> Option<f64> {
    let target = order::target_percent(facts)?;
    let strength = facts.strength_percent?;
    (work == Work::Dilute && facts.product == Some(Product::Bleach) && strength > target)
        .then(|| strength / target - 1.0)
}

/// A stock of any form is one question.
fn same_question(doubt: Field, field: Field) -> bool {
    let is_stock = |field: Field| matches!(field, Field::StockG | Field::StockMl | Field::Tablets);
    doubt == field || (is_stock(doubt) && is_stock(field))
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
