//! The conversation: what is still missing, what was asked, what a message hangs on.
//!
//! In: a person as remembered, a message as read, the time of arrival.
//! Out: what to say, and the person as to be remembered.
//! Promises at most one question in a reply, that a question of ours and the last answer lapse
//! after stated times, and that nothing doubtful becomes part of an order.
//! Knows no wording, no channel and no SQL.
//!
//! [`Talk`] has the states. `follow` tells what a message hangs on, `fit` puts its figures in
//! their places, `gather` collects the facts of a question over several messages, `memory` keeps
//! bottles and reminders.

mod bare;
mod bottle;
mod facts;
mod fit;
mod follow;
mod gather;
mod memory;
mod order;
mod person;
mod say;
mod state;
mod variants;

use jiff::Timestamp;

use crate::parser::{Doubt, Link, Note, Reading};
use crate::quantity::limit;
use crate::request::{
    Change, Clarity, Facts, Field, Person as Drinker, Product, Refusal, Request, Topic, Work,
};
use crate::treatment::{self, AdjustOrder, Order};

pub use bottle::{Bottle, Draw, Left, WARN_DAYS};
pub use person::{Listening, Person, Reminder, Waited};
pub use say::*;
pub use state::*;

use bottle::Place;
use facts::refusal_of;
use variants::Variants;

/// What one message leads to.
#[derive(Debug, Clone, PartialEq)]
pub struct Step {
    /// What the message itself said.
    pub request: Request,
    /// What to say.
    pub say: Say,
    /// Which facts came from memory.
    pub remembered: Vec<Field>,
    /// The person from now on; nothing, if all is to be forgotten.
    pub person: Option<Person>,
}

/// Takes the conversation one message further.
#[must_use]
pub fn step(person: &Person, reading: &Reading, now: Timestamp) -> Step {
    let conversation = Conversation {
        person,
        reading,
        now,
        request: reading.request.clone(),
    };
    conversation.step()
}

#[derive(Clone)]
struct Conversation<'a> {
    person: &'a Person,
    reading: &'a Reading,
    now: Timestamp,
    /// What the message says and wants, once it is known what it hangs on: "5%" in answer to a
    /// question about a well is about the well.
    request: Request,
}

impl Conversation<'_> {
    fn step(&self) -> Step {
        let topic = self.reading.request.topic;
        if self.target_by_use().is_some() {
            return self.gather(Work::Dilute);
        }
        match topic {
            Topic::Exposure => {
                let aid = FirstAidFor {
                    product: self.reading.stated.product,
                    seen: self.reading.also.clone(),
                };
                // "More" now is not about the floor of a minute ago.
                let neutral = self
                    .cautions()
                    .unwrap_or_else(|| self.neutral(Facts::default()));
                self.changed(Say::FirstAid(aid), |person| {
                    person.talk = std::mem::take(&mut person.talk).tell(neutral);
                })
            }
            Topic::Stop => self.changed(Say::Stopped, |person| {
                person.listening = Listening::Stopped;
                person.reminders.clear();
                person.talk = std::mem::take(&mut person.talk).close();
            }),
            Topic::Start => self.changed(Say::Started, |person| person.listening = Listening::Open),
            Topic::Forget => Step {
                person: None,
                ..self.unchanged(Say::Forgotten)
            },
            Topic::Help => self.unchanged(Say::Help),
            Topic::Settings => self.settings(),
            Topic::Stock => self.stock(),
            Topic::Remind => self.remind(),
            Topic::More => self.about_last(Say::MoreOf),
            Topic::Why => self.about_last(Say::WhyOf),
            Topic::Adjust => match self.waited_for() {
                Some(over) => self.unchanged(Say::WaitIsOver(over)),
                None => self.adjust(),
            },
            Topic::Storage | Topic::Unclear if self.is_of_solution() => self.of_solution(),
            // "We filtered it with cloth and now it is clear": the dose for clear water.
            Topic::Filter
                if self.last_work_is(Topic::Dose)
                    && self.reading.stated.pore_um.is_none()
                    && self.reading.stated.clarity == Some(Clarity::Clear) =>
            {
                self.gather(Work::Dose)
            }
            Topic::Boil
            | Topic::Choose
            | Topic::Filter
            | Topic::Illness
            | Topic::Storage
            | Topic::Sun
                if topic != Topic::Illness
                    && topic != Topic::Storage
                    && self.chemical_spoken_of() =>
            {
                self.unchanged(Say::Refused(Refusal::Chemical))
            }
            Topic::Boil
            | Topic::Choose
            | Topic::Filter
            | Topic::Illness
            | Topic::Storage
            | Topic::Sun => self.answer(
                topic,
                // The filter's pores and the sky matter to the choice as well, the product to
                // its storage.
                Facts {
                    pore_um: self.reading.stated.pore_um,
                    // "My baby, boil or iodine?": the iodine of the next message knows.
                    person: self.reading.stated.person.clone(),
                    sky: self.reading.stated.sky,
                    product: self.product_to_keep(topic),
                    ..self.reading.request.facts.clone()
                },
                Vec::new(),
                self.notes(),
                Place::Beside,
            ),
            // "For 40 L with this 1% solution": it is there, and used.
            Topic::Dilute if self.uses_stock() && !self.reading.notes.contains(&Note::Makes) => {
                self.gather(Work::Dose)
            }
            Topic::Dilute => self.gather(Work::Dilute),
            Topic::Dose => self
                .method_of_water()
                .unwrap_or_else(|| self.gather(self.meant_by_dose())),
            Topic::Residual => self.gather(Work::Residual),
            Topic::Supply => self.gather(Work::Supply),
            Topic::Well => self.gather(Work::Well),
            Topic::Unclear => self.unclear(),
        }
    }

    /// "Can I drink it?", "how long does it keep?" of the solution for cleaning made just now.
    fn is_of_solution(&self) -> bool {
        let notes = &self.reading.notes;
        let last = self.person.talk.last(self.now, FOLLOW_UP_LIVES_MINUTES);
        last.is_some_and(|last| last.topic == Topic::Dilute)
            && self.reading.stated.product.is_none()
            && self.reading.stated.volume_l.is_none()
            && (notes.contains(&Note::ToDrink) || notes.contains(&Note::KeepsIt))
    }

    /// Never to be drunk; the litres that come next are for drinking, and no more of it.
    fn of_solution(&self) -> Step {
        let drunk = self.reading.notes.contains(&Note::ToDrink);
        let made = self.person.talk.work(self.now, FOLLOW_UP_LIVES_MINUTES);
        let asked = made.filter(|_| drunk).map(|made| Asked {
            field: Field::VolumeL,
            work: Work::Dose,
            facts: Facts {
                product: made.facts.product,
                strength_percent: made.facts.strength_percent,
                ..Facts::default()
            },
            notes: vec![Note::ToDrink],
            at: self.now,
            urge: Urge::Needed,
        });
        self.changed(Say::OfSolution, |person| {
            if let Some(asked) = asked {
                person.talk = std::mem::take(&mut person.talk).ask(asked);
            }
        })
    }

    /// Water refused for its petrol or salt a moment ago: no fire and no filter helps it.
    fn chemical_spoken_of(&self) -> bool {
        let work = self.person.talk.work(self.now, FOLLOW_UP_LIVES_MINUTES);
        let last = self.person.talk.last(self.now, FOLLOW_UP_LIVES_MINUTES);
        work.into_iter().chain(last).any(|told| told.facts.chemical)
    }

    /// What must not be forgotten with the talk: petrol in the water, and who is to drink it.
    fn cautions(&self) -> Option<Answered> {
        let facts = Facts {
            person: self.persons_spoken_of(),
            chemical: self.chemical_spoken_of(),
            ..Facts::default()
        };
        (facts.chemical || !facts.person.is_empty()).then(|| self.neutral(facts))
    }

    /// Something told of which nothing more is to be said.
    fn neutral(&self, facts: Facts) -> Answered {
        Answered {
            topic: Topic::Stock,
            facts,
            notes: Vec::new(),
            at: self.now,
            beside: Beside::default(),
        }
    }

    /// The product that is to be kept: the one named, or the one spoken of before.
    fn product_to_keep(&self, topic: Topic) -> Option<Product> {
        if topic != Topic::Storage {
            return None;
        }
        let before = || {
            let work = self.person.talk.work(self.now, ANSWER_LIVES_MINUTES);
            work.and_then(|work| work.facts.product)
        };
        let current = || self.person.current().and_then(|bottle| bottle.product);
        self.reading.stated.product.or_else(|| {
            let asks = self.reading.notes.contains(&Note::OfProduct)
                && !facts::product_doubted(&self.reading.doubts);
            let doubtful = |doubt: Doubt| self.reading.doubts.contains(&doubt);
            if doubtful(Doubt::TabletForm) || doubtful(Doubt::BleachTablet) {
                return Some(Product::Nadcc);
            }
            if doubtful(Doubt::ChlorineForm) {
                return Some(Product::Bleach);
            }
            asks.then(|| before().or_else(current)).flatten()
        })
    }

    /// The same conversation, where the message turns out to be about this work.
    fn about(&self, work: Work, stated: &Facts) -> Self {
        let topic = Topic::from(work);
        let request = if self.reading.request.topic == topic {
            self.reading.request.clone()
        } else {
            Request {
                topic,
                facts: stated.of_topic(topic),
            }
        };
        Self {
            request,
            ..self.clone()
        }
    }

    fn notes(&self) -> Vec<Note> {
        self.reading.notes.clone()
    }

    fn unchanged(&self, say: Say) -> Step {
        self.changed(say, |_| {})
    }

    fn changed(&self, say: Say, change: impl FnOnce(&mut Person)) -> Step {
        let mut person = self.person.clone();
        change(&mut person);
        Step {
            request: self.request.clone(),
            say,
            remembered: Vec::new(),
            person: Some(person),
        }
    }

    /// Our question, while it waits for its answer.
    fn asked(&self) -> Option<&Asked> {
        self.person.talk.asked(self.now)
    }

    fn settings(&self) -> Step {
        let facts = &self.reading.request.facts;
        let say = Say::Set {
            language: facts.set_lang.clone(),
            units: facts.set_units,
        };
        self.changed(say, |person| {
            if let Some(language) = &facts.set_lang {
                person.language = Some(language.clone());
            }
            if let Some(units) = facts.set_units {
                person.units = Some(units);
            }
        })
    }

    fn about_last(&self, say: impl Fn(Box<Answer>) -> Say) -> Step {
        let Some(last) = self.person.talk.last(self.now, ANSWER_LIVES_MINUTES) else {
            return self.unchanged(Say::NothingBefore);
        };
        match self.work_out(last.topic, &last.facts, &last.notes, &last.beside) {
            Ok(answer) => self.unchanged(say(Box::new(answer))),
            Err(_) => self.unchanged(Say::NothingBefore),
        }
    }

    fn adjust(&self) -> Step {
        let work = self.person.talk.work(self.now, ANSWER_LIVES_MINUTES);
        if let Some(well) = work.filter(|work| work.topic == Topic::Well)
            && let Ok(answer) = self.work_out(well.topic, &well.facts, &well.notes, &well.beside)
        {
            return self.unchanged(Say::WellHurry(Box::new(answer)));
        }
        let last = work
            .filter(|last| last.topic == Topic::Dose)
            .filter(|last| refusal_of(&last.facts, &last.notes).is_none())
            .and_then(|last| order::dose(&last.facts).ok().map(|order| (last, order)));
        let change = self.reading.request.facts.change;
        let (Some((last, order)), Some(change)) = (last, change) else {
            return self.unchanged(match change {
                // Of whatever dose: this much can be done.
                Some(Change::Weaker) => Say::TooStrong,
                Some(Change::Faster) | None => Say::NothingBefore,
            });
        };
        match treatment::adjust(&AdjustOrder {
            last: order.clone(),
            change,
        }) {
            Ok(outcome) => {
                let mut answer = Answer::plain(Topic::Dose, last.facts.clone(), outcome);
                answer.facts.change = Some(change);
                answer.beside.left = self.left_after(&last.facts, &answer.outcome, Place::Instead);
                let answered = Answered {
                    facts: answer.facts.clone(),
                    beside: answer.beside.clone(),
                    at: self.now,
                    ..last.clone()
                };
                self.drawing(
                    self.changed(Say::Adjusted(Box::new(answer), change), |person| {
                        person.talk = std::mem::take(&mut person.talk).tell(answered);
                    }),
                )
            }
            Err(refusal) => self.unchanged(Say::CannotAdjust(change, refusal)),
        }
    }

    fn unclear(&self) -> Step {
        if self.reading.notes.contains(&Note::NeverDosed) && self.last_work_is(Topic::Residual) {
            return self.gather(Work::Dose);
        }
        if let Some(asked) = self.asked() {
            // "No fire either": the last resort hangs on it.
            if self.reading.notes.contains(&Note::NoFire)
                || self.reading.notes.contains(&Note::NoLabel)
            {
                let mut asked = asked.clone();
                asked.notes.extend(self.notes());
                return self.ask_again(&asked);
            }
            // "Liquid", in answer to which form the chlorine has.
            if asked.field == Field::Product && self.reading.notes.contains(&Note::Liquid) {
                return self.gather(asked.work);
            }
            if let Some(bare) = self.reading.bare
                && self.reading.unread.len() <= 2
            {
                return self.bare_answer(asked, bare);
            }
            if self.is_to_drink() {
                return self.gather(Work::Dose);
            }
            if self.states_what_matters(asked.work) {
                return self.gather(asked.work);
            }
            if self.reading.notes.contains(&Note::AsksAmount) && asked.urge == Urge::Invited {
                return self.gather(asked.work);
            }
            if asked.urge == Urge::Needed {
                // Chit-chat in between: the question stands.
                return self.ask_again(asked);
            }
        }
        if let Some(step) = self.method_follow_up() {
            return step;
        }
        let counts = self.reading.counted.is_some() || self.reading.part_full.is_some();
        if counts && self.last_work_is(Topic::Dose) {
            return self.gather(Work::Dose);
        }
        if let Some(work) = self.follows() {
            return self.gather(work);
        }
        // "I am pregnant": it holds for what is asked next.
        let persons = &self.reading.stated.person;
        if persons
            .iter()
            .any(|person| *person != Drinker::WeakImmunity)
        {
            let facts = Facts {
                person: persons.clone(),
                ..Facts::default()
            };
            return self.refuse_for(Refusal::IodineUnsuitable, facts, self.notes());
        }
        if let Some(step) = self.said_again() {
            return step;
        }
        if self.reading.notes.contains(&Note::Greeting) {
            return self.unchanged(Say::Greeting);
        }
        self.unchanged(Say::NotUnderstood)
    }

    /// "How long do I wait?", "can people drink it?" after an answer: the answer says it.
    fn said_again(&self) -> Option<Step> {
        let last = self.person.talk.last(self.now, FOLLOW_UP_LIVES_MINUTES)?;
        let notes = &self.reading.notes;
        let tested = last.topic == Topic::Residual && notes.contains(&Note::ToDrink);
        let known = self.reading.unread.len() <= 1 && last.topic != Topic::Stock;
        if !known || !(notes.contains(&Note::AsksAgain) || tested) {
            return None;
        }
        let again = self.work_out(last.topic, &last.facts, &last.notes, &last.beside);
        match again {
            Ok(answer) => Some(self.unchanged(Say::Answer(Box::new(answer)))),
            Err(Unanswered::Refused(refusal)) => Some(self.unchanged(Say::Refused(refusal))),
            // Refused before its figures were told.
            Err(Unanswered::Missing(_)) => {
                let refusal = refusal_of(&last.facts, &last.notes)?;
                Some(self.unchanged(Say::Refused(refusal)))
            }
        }
    }

    /// "Muddy water" after an answer about the sun: no dose is asked.
    fn method_of_water(&self) -> Option<Step> {
        let stated = &self.reading.stated;
        let doses = stated.product.is_some()
            || stated.strength_percent.is_some()
            || stated.tablet_mg.is_some()
            || stated.volume_l.is_some()
            || self.reading.refusal.is_some()
            || !self.reading.doubts.is_empty()
            || self.reading.notes.contains(&Note::AsksAmount);
        (!doses && self.asked().is_none())
            .then(|| self.method_follow_up())
            .flatten()
    }

    /// "We are at 2500 m" after an answer about boiling: the same method with a new fact.
    fn method_follow_up(&self) -> Option<Step> {
        let stated = &self.reading.stated;
        let linked = self.reading.link != Link::None;
        let lives_for = if linked {
            ANSWER_LIVES_MINUTES
        } else {
            FOLLOW_UP_LIVES_MINUTES
        };
        let last = self.person.talk.last(self.now, lives_for)?;
        // "Same but 0.01" after a filter.
        let pore = stated.pore_um.or(self
            .reading
            .bare
            .filter(|bare| linked && limit::PORE.check(*bare).is_ok()));
        let place = stated.altitude_m.is_some() || stated.height.is_some();
        let water = stated.clarity.is_some();
        let sky = stated.sky.is_some();
        let choice = place
            || water
            || sky
            || stated.sewage
            || stated.chill.is_some()
            || !stated.have.is_empty()
            || !stated.person.is_empty();
        let says_more = (last.topic == Topic::Boil && (place || water))
            || (last.topic == Topic::Sun && (sky || water || stated.volume_l.is_some()))
            || (last.topic == Topic::Filter && (pore.is_some() || stated.sewage))
            || (last.topic == Topic::Choose && choice);
        if !says_more {
            return None;
        }
        let mut facts = facts::merge(&last.facts, stated, &[]);
        if last.topic == Topic::Filter {
            facts.pore_um = pore.or(facts.pore_um);
        }
        for thing in &stated.have {
            if !facts.have.contains(thing) {
                facts.have.push(*thing);
            }
        }
        let with_topic = Self {
            request: Request {
                topic: last.topic,
                facts: stated.of_topic(last.topic),
            },
            ..self.clone()
        };
        Some(with_topic.answer(last.topic, facts, Vec::new(), self.notes(), Place::Instead))
    }

    /// No dose, and none by a follow-up either: what was answered before is not spoken of again.
    fn refuse(&self, refusal: Refusal) -> Step {
        let kept = self.cautions();
        self.changed(Say::Refused(refusal), |person| {
            person.talk = Talk::only(kept);
        })
    }

    fn answer(
        &self,
        topic: Topic,
        facts: Facts,
        remembered: Vec<Field>,
        notes: Vec<Note>,
        place: Place,
    ) -> Step {
        let mut beside = Beside {
            remembered: remembered.clone(),
            persons: self.persons_spoken_of(),
            ..Beside::default()
        };
        match self.work_out(topic, &facts, &notes, &beside) {
            Ok(mut answer) => {
                answer.place = place;
                beside.left = self.left_after(&facts, &answer.outcome, place);
                for also in &self.reading.also {
                    if *also == Topic::Remind {
                        // No need to ask again for what can be promised at once.
                        beside.reminder = self.reminder_for(topic, &facts, &answer.outcome);
                    } else {
                        beside.seen.push(*also);
                    }
                }
                answer.beside = beside.clone();
                let reminder = beside.reminder;
                let answered = Answered {
                    topic,
                    facts,
                    notes,
                    at: self.now,
                    beside,
                };
                let invitation = self.invitation(&answer, &answered);
                let say = Say::Answer(Box::new(answer));
                self.drawing(Step {
                    remembered,
                    ..self.changed(say, |person| {
                        person.promise(reminder);
                        let talk = std::mem::take(&mut person.talk).tell(answered);
                        person.talk = match invitation {
                            Some(asked) => talk.ask(asked),
                            None => talk,
                        };
                    })
                })
            }
            Err(Unanswered::Missing(missing)) => {
                let Some(work) = topic.work() else {
                    return self.unchanged(Say::NotUnderstood);
                };
                let doubt = self.doubt_about(work, &facts, missing.first());
                self.ask(work, facts, missing, doubt, remembered, notes)
            }
            Err(Unanswered::Refused(refusal)) => self.refuse(refusal),
        }
    }

    fn work_out(
        &self,
        topic: Topic,
        facts: &Facts,
        notes: &[Note],
        beside: &Beside,
    ) -> Result<Answer, Unanswered> {
        let order = order::order(topic, facts, notes).map_err(Unanswered::Missing)?;
        if topic == Topic::Dose
            && let Some(refusal) = refusal_of(facts, notes)
        {
            return Err(Unanswered::Refused(refusal));
        }
        let (outcome, variants) = match (&order, facts.change) {
            // "More" and "remind me" after "weaker" are about the weaker dose.
            (Order::Dose(dose), Some(change)) => {
                let last = dose.clone();
                let adjusted = treatment::adjust(&AdjustOrder { last, change });
                (adjusted.map_err(Unanswered::Refused)?, Variants::default())
            }
            _ => {
                let outcome = treatment::treat(&order).map_err(Unanswered::Refused)?;
                let variants = Variants::of(&order, &outcome);
                (outcome, variants)
            }
        };
        let mut extra = Vec::new();
        if notes.contains(&Note::Ill) && topic != Topic::Illness {
            extra.push(Extra::SeeHealthWorker);
        }
        if notes.contains(&Note::Danger) && topic == Topic::Illness {
            extra.push(Extra::Danger);
        }
        if notes.contains(&Note::NewTank) && variants.new_tank.is_some() {
            extra.push(Extra::NewTank);
        }
        if notes.contains(&Note::LowerEnd) {
            extra.push(Extra::LowerFigure);
        }
        if !beside.remembered.is_empty() {
            extra.push(Extra::FromMemory);
        }
        if self.bottle_is_old(facts) {
            extra.push(Extra::OldBottle);
        }
        Ok(Answer {
            if_cloudy: variants.cloudy,
            if_cold: variants.cold,
            if_high: variants.high,
            if_sunny: variants.sunny,
            if_new_tank: variants.new_tank,
            extra,
            estimate: self.estimate(facts),
            beside: beside.clone(),
            ..Answer::plain(topic, facts.clone(), outcome)
        })
    }
}

enum Unanswered {
    Missing(Vec<Field>),
    Refused(Refusal),
}
