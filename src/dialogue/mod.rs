//! The conversation: what is still missing, what was asked, what a message hangs on.
//!
//! In: a person as remembered, a message as read, the time of arrival.
//! Out: what to say, and the person as to be remembered.
//! Promises at most one question in a reply, that a question of ours and the last answer lapse
//! after stated times, and that nothing doubtful becomes part of an order.
//! Knows no wording, no channel and no SQL.

mod facts;
mod order;
mod person;
mod say;
mod variants;

use jiff::Timestamp;

use crate::parser::{Doubt, Link, Note, Reading, strength_limit};
use crate::quantity::{UnitSystem, limit};
use crate::request::{Facts, Field, LabelFigure, Refusal, Request, Topic};
use crate::treatment::{self, AdjustOrder};

pub use person::*;
pub use say::*;

use facts::{merge, product_doubted, refusal_of, states_something};
use order::NoOrder;
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
    Conversation {
        person,
        reading,
        now,
    }
    .step()
}

struct Conversation<'a> {
    person: &'a Person,
    reading: &'a Reading,
    now: Timestamp,
}

impl Conversation<'_> {
    fn step(&self) -> Step {
        let topic = self.reading.request.topic;
        match topic {
            Topic::Exposure => self.unchanged(Say::FirstAid(self.reading.stated.product)),
            Topic::Illness => self.unchanged(Say::Illness),
            Topic::Stop => self.changed(Say::Stopped, |person| {
                person.listening = Listening::Stopped;
                person.talk.asked = None;
            }),
            Topic::Start => self.changed(Say::Started, |person| person.listening = Listening::Open),
            Topic::Forget => Step {
                person: None,
                ..self.unchanged(Say::Forgotten)
            },
            Topic::Help => self.unchanged(Say::Help),
            Topic::Settings => self.settings(),
            Topic::Stock => self.stock(),
            Topic::More => self.about_last(Say::MoreOf),
            Topic::Why => self.about_last(Say::WhyOf),
            Topic::Adjust => self.adjust(),
            Topic::Dilute
            | Topic::Remind
            | Topic::Residual
            | Topic::Storage
            | Topic::Supply
            | Topic::Well => self.unchanged(Say::NotServed(topic)),
            Topic::Boil | Topic::Choose | Topic::Filter | Topic::Sun => self.answer(
                topic,
                // The filter's pores and the sky matter to the choice as well.
                Facts {
                    pore_um: self.reading.stated.pore_um,
                    sky: self.reading.stated.sky,
                    ..self.reading.request.facts.clone()
                },
                Vec::new(),
                self.notes(),
            ),
            Topic::Dose => self.dose(),
            Topic::Unclear => self.unclear(),
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
            request: self.reading.request.clone(),
            say,
            remembered: Vec::new(),
            person: Some(person),
        }
    }

    /// Our question, while it waits for its answer.
    fn asked(&self) -> Option<&Asked> {
        self.person
            .talk
            .asked
            .as_ref()
            .filter(|asked| lives(asked.at, self.now, QUESTION_LIVES_MINUTES))
    }

    /// Our last answer, while it is fresh enough.
    fn answered(&self, minutes: i64) -> Option<&Answered> {
        self.person
            .talk
            .answered
            .as_ref()
            .filter(|answered| lives(answered.at, self.now, minutes))
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

    fn stock(&self) -> Step {
        let facts = &self.reading.request.facts;
        let product_doubt = self.reading.doubts.iter().copied().find(|doubt| {
            matches!(
                doubt.field(),
                Field::Product | Field::StrengthPercent | Field::TabletMg
            )
        });
        if let Some(doubt) = product_doubt {
            return self.unchanged(Say::NotKept(doubt));
        }
        // "Remember: 5%" keeps the product that was already known.
        let known = self.person.bottle.as_ref();
        let product = facts
            .product
            .or_else(|| known.and_then(|bottle| bottle.product));
        let figure_said = facts.strength_percent.is_some() || facts.tablet_mg.is_some();
        if facts.product.is_none() && !figure_said {
            return self.unchanged(Say::NotKept(Doubt::Unlabelled));
        }
        let bottle = Bottle {
            product,
            strength_percent: facts.strength_percent,
            tablet_mg: facts.tablet_mg,
            // A bottle opened in the future is a slip.
            opened: facts.opened.filter(|date| *date <= date_of(self.now)),
            told_at: self.now,
        };
        self.changed(Say::Kept(bottle.clone()), |person| {
            person.bottle = Some(bottle)
        })
    }

    fn about_last(&self, say: impl Fn(Box<Answer>) -> Say) -> Step {
        let Some(last) = self.answered(ANSWER_LIVES_MINUTES) else {
            return self.unchanged(Say::NothingBefore);
        };
        match self.work_out(last.topic, &last.facts, &last.notes, Vec::new()) {
            Ok(answer) => self.unchanged(say(Box::new(answer))),
            Err(_) => self.unchanged(Say::NothingBefore),
        }
    }

    fn adjust(&self) -> Step {
        let last = self
            .answered(ANSWER_LIVES_MINUTES)
            .filter(|last| last.topic == Topic::Dose)
            .filter(|last| refusal_of(&last.facts, &last.notes).is_none())
            .and_then(|last| order::dose(&last.facts).ok().map(|order| (last, order)));
        let (Some((last, order)), Some(change)) = (last, self.reading.request.facts.change) else {
            return self.unchanged(Say::NothingBefore);
        };
        match treatment::adjust(&AdjustOrder {
            last: order.clone(),
            change,
        }) {
            Ok(outcome) => self.unchanged(Say::Adjusted(
                Box::new(Answer {
                    facts: last.facts.clone(),
                    topic: Topic::Dose,
                    outcome,
                    if_cloudy: None,
                    if_cold: None,
                    if_high: None,
                    if_sunny: None,
                    extra: Vec::new(),
                }),
                change,
            )),
            Err(refusal) => self.unchanged(Say::CannotAdjust(change, refusal)),
        }
    }

    fn unclear(&self) -> Step {
        if let Some(asked) = self.asked() {
            // "No fire either": the last resort hangs on it.
            if self.reading.notes.contains(&Note::NoFire)
                || self.reading.notes.contains(&Note::NoLabel)
            {
                let mut asked = asked.clone();
                asked.notes.extend(self.notes());
                return self.ask_again(&asked);
            }
            if let Some(bare) = self.reading.bare
                && self.reading.unread.len() <= 2
            {
                return self.bare_answer(asked, bare);
            }
            if states_something(&self.reading.stated) {
                return self.dose();
            }
            // Chit-chat in between: the question stands.
            return self.ask_again(asked);
        }
        let follows_on = match self.reading.link {
            Link::FollowOn | Link::HalfThat | Link::TwiceThat => {
                self.answered(ANSWER_LIVES_MINUTES).is_some()
            }
            Link::Correction | Link::None => {
                self.answered(FOLLOW_UP_LIVES_MINUTES).is_some()
                    && states_something(&self.reading.stated)
            }
        };
        if follows_on {
            return self.dose();
        }
        if self.reading.notes.contains(&Note::Greeting) {
            return self.unchanged(Say::Greeting);
        }
        self.unchanged(Say::NotUnderstood)
    }

    fn ask_again(&self, asked: &Asked) -> Step {
        let missing = order::missing_for_dose(&asked.facts);
        self.ask(
            asked.topic,
            asked.facts.clone(),
            missing,
            None,
            Vec::new(),
            asked.notes.clone(),
        )
    }

    /// A number without a unit, taken for what we asked.
    fn bare_answer(&self, asked: &Asked, bare: f64) -> Step {
        let mut facts = asked.facts.clone();
        let doubt = match asked.field {
            Field::StrengthPercent => {
                let allowed = facts.product.map_or(limit::BLEACH, strength_limit);
                if allowed.check(bare).is_ok() {
                    facts.strength_percent = Some(bare);
                    None
                } else {
                    Some(Doubt::StrengthOutside)
                }
            }
            Field::TabletMg => {
                if limit::CHLORINE_TABLET.check(bare).is_ok() {
                    facts.tablet_mg = Some(bare);
                    None
                } else {
                    Some(Doubt::TabletOutside)
                }
            }
            Field::VolumeL => {
                if self.person.units.unwrap_or_default() != UnitSystem::Metric {
                    // Somebody who thinks in gallons may mean gallons.
                    Some(Doubt::VolumeUnreadable)
                } else if limit::VOLUME.check(bare).is_ok() {
                    facts.volume_l = Some(bare);
                    None
                } else {
                    Some(Doubt::VolumeOutside)
                }
            }
            Field::Product
            | Field::DiameterM
            | Field::WaterDepthM
            | Field::TargetPercent
            | Field::ResidualMgPerL
            | Field::People
            | Field::Days
            | Field::StockMl => return self.ask_again(asked),
        };
        match doubt {
            Some(doubt) => {
                let missing = order::missing_for_dose(&facts);
                let notes = asked.notes.clone();
                self.ask(asked.topic, facts, missing, Some(doubt), Vec::new(), notes)
            }
            None => self.answer(asked.topic, facts, Vec::new(), asked.notes.clone()),
        }
    }

    fn dose(&self) -> Step {
        let stated = &self.reading.stated;
        match self.reading.refusal {
            Some(Refusal::Chemical) => {
                let (base, notes) = self.base().unwrap_or_default();
                let facts = Facts {
                    chemical: true,
                    ..merge(&base, stated, &self.reading.doubts)
                };
                return self.refuse_for(Refusal::Chemical, facts, notes);
            }
            Some(refusal) => return self.refuse(refusal),
            None => {}
        }
        let mut notes = self.notes();
        let mut facts = stated.clone();
        let mut doubts = self.reading.doubts.clone();
        if let Some((base, base_notes)) = self.base() {
            facts = merge(&base, stated, &doubts);
            match self.reading.link {
                Link::TwiceThat if stated.volume_l.is_none() => {
                    facts.volume_l = base.volume_l.map(|litres| litres * 2.0);
                }
                Link::HalfThat if stated.volume_l.is_none() => {
                    facts.volume_l = base.volume_l.map(|litres| litres / 2.0);
                }
                Link::Correction
                | Link::FollowOn
                | Link::HalfThat
                | Link::None
                | Link::TwiceThat => {}
            }
            for note in base_notes {
                if !notes.contains(&note)
                    && !matches!(
                        note,
                        Note::Greeting | Note::OwnBottle | Note::Story | Note::Strange
                    )
                {
                    notes.push(note);
                }
            }
            // "Its a bucket" takes nothing away from a volume already told.
            doubts.retain(|doubt| !(*doubt == Doubt::VolumeUnsized && facts.volume_l.is_some()));
            self.apply_bare(&mut facts, &doubts);
        }
        let remembered = self.remember(&mut facts, &doubts);
        if let Some(refusal) = refusal_of(&facts, &notes) {
            return self.refuse_for(refusal, facts, notes);
        }
        if facts
            .product
            .is_some_and(|product| product.label_figure() != LabelFigure::TabletMass)
        {
            doubts.retain(|doubt| doubt.field() != Field::TabletMg);
        }
        let missing = order::missing_for_dose(&facts);
        let doubtful_story = self.reading.notes.contains(&Note::Story);
        // An answer to our question may be in any words; a whole order may not.
        let strange = self.reading.notes.contains(&Note::Strange) && self.asked().is_none();
        if missing.is_empty() && (doubtful_story || strange) {
            return self.unchanged(Say::Unsure);
        }
        if let Some(first) = missing.first() {
            let doubt = doubts.iter().copied().find(|doubt| doubt.field() == *first);
            return self.ask(Topic::Dose, facts, missing, doubt, remembered, notes);
        }
        self.answer(Topic::Dose, facts, remembered, notes)
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
            | Field::StockMl => {}
        }
    }

    /// No dose, and none by a follow-up either: what was answered before is not spoken of again.
    fn refuse(&self, refusal: Refusal) -> Step {
        self.changed(Say::Refused(refusal), |person| {
            person.talk = Talk::default()
        })
    }

    /// No dose for these facts: they stay, so that "and for 40 L?" is refused as well.
    fn refuse_for(&self, refusal: Refusal, facts: Facts, notes: Vec<Note>) -> Step {
        let answered = Answered {
            topic: Topic::Dose,
            facts,
            notes,
            at: self.now,
        };
        self.changed(Say::Refused(refusal), |person| {
            person.talk = Talk {
                asked: None,
                answered: Some(answered),
            };
        })
    }

    /// The facts that this message adds to: our open question's, or the last answer's.
    fn base(&self) -> Option<(Facts, Vec<Note>)> {
        let stated = &self.reading.stated;
        let linked = self.reading.link != Link::None;
        if let Some(asked) = self.asked().filter(|asked| asked.topic == Topic::Dose) {
            let other_product = match (stated.product, asked.facts.product) {
                (Some(new), Some(old)) => new != old,
                (Some(_), None) | (None, _) => false,
            };
            // Another product with its own figures is another question.
            let another = other_product && !linked;
            return (!another).then(|| (asked.facts.clone(), asked.notes.clone()));
        }
        let whole = order::missing_for_dose(stated).is_empty();
        let lives_for = if linked {
            ANSWER_LIVES_MINUTES
        } else {
            FOLLOW_UP_LIVES_MINUTES
        };
        let last = self
            .answered(lives_for)
            .filter(|last| last.topic == Topic::Dose)?;
        if whole {
            return None;
        }
        let names_a_product = stated.product.is_some() || product_doubted(&self.reading.doubts);
        if names_a_product && !linked {
            // "How much bleach for 20 L" asks anew, even after an answer about bleach.
            return None;
        }
        (linked || states_something(stated) || !self.reading.doubts.is_empty())
            .then(|| (last.facts.clone(), last.notes.clone()))
    }

    /// Fills in the remembered bottle, and says which facts came from it.
    fn remember(&self, facts: &mut Facts, doubts: &[Doubt]) -> Vec<Field> {
        let mut used = Vec::new();
        let Some(bottle) = &self.person.bottle else {
            return used;
        };
        if product_doubted(doubts) {
            return used;
        }
        // What we asked about in spite of this bottle is not answered by this bottle.
        let questioned = self
            .asked()
            .filter(|asked| asked.at >= bottle.told_at)
            .map(|asked| asked.field);
        if questioned == Some(Field::Product) {
            return used;
        }
        if facts.product.is_none()
            && let Some(product) = bottle.product
            && facts.strength_percent.is_none_or(|percent| {
                product.label_figure() == LabelFigure::Strength
                    && strength_limit(product).check(percent).is_ok()
            })
        {
            facts.product = Some(product);
            used.push(Field::Product);
        }
        let same_product = facts.product.is_some() && facts.product == bottle.product;
        let doubted = |field: Field| {
            questioned == Some(field) || doubts.iter().any(|doubt| doubt.field() == field)
        };
        if same_product && facts.strength_percent.is_none() && !doubted(Field::StrengthPercent) {
            facts.strength_percent = bottle.strength_percent;
            if facts.strength_percent.is_some() {
                used.push(Field::StrengthPercent);
            }
        }
        if same_product && facts.tablet_mg.is_none() && !doubted(Field::TabletMg) {
            facts.tablet_mg = bottle.tablet_mg;
            if facts.tablet_mg.is_some() {
                used.push(Field::TabletMg);
            }
        }
        used
    }

    fn ask(
        &self,
        topic: Topic,
        facts: Facts,
        missing: Vec<Field>,
        doubt: Option<Doubt>,
        remembered: Vec<Field>,
        notes: Vec<Note>,
    ) -> Step {
        let Some(field) = missing.first().copied() else {
            return self.unchanged(Say::NotUnderstood);
        };
        let last_resort = field == Field::StrengthPercent
            && notes.contains(&Note::NoLabel)
            && notes.contains(&Note::NoFire);
        let question = Question {
            field,
            doubt,
            missing,
            product: facts.product,
            no_label: notes.contains(&Note::NoLabel),
        };
        let asked = Asked {
            field,
            topic,
            facts: facts.clone(),
            notes,
            at: self.now,
        };
        let say = match last_resort.then(|| treatment::last_resort(facts.volume_l)) {
            Some(resort) => Say::LastResort(resort, question),
            None => Say::Ask(question),
        };
        Step {
            remembered,
            ..self.changed(say, |person| person.talk.asked = Some(asked))
        }
    }

    fn answer(&self, topic: Topic, facts: Facts, remembered: Vec<Field>, notes: Vec<Note>) -> Step {
        match self.work_out(topic, &facts, &notes, remembered.clone()) {
            Ok(answer) => {
                let answered = Answered {
                    topic,
                    facts,
                    notes,
                    at: self.now,
                };
                let say = Say::Answer(Box::new(answer));
                Step {
                    remembered,
                    ..self.changed(say, |person| {
                        if topic == Topic::Dose {
                            person.talk.asked = None;
                        }
                        person.talk.answered = Some(answered);
                    })
                }
            }
            Err(Unanswered::Missing(missing)) => {
                let doubt = self
                    .reading
                    .doubts
                    .iter()
                    .copied()
                    .find(|doubt| missing.first() == Some(&doubt.field()));
                self.ask(topic, facts, missing, doubt, remembered, notes)
            }
            Err(Unanswered::Refused(refusal)) => self.refuse(refusal),
        }
    }

    fn work_out(
        &self,
        topic: Topic,
        facts: &Facts,
        notes: &[Note],
        remembered: Vec<Field>,
    ) -> Result<Answer, Unanswered> {
        let order = order::order(topic, facts).map_err(|no_order| match no_order {
            NoOrder::Missing(missing) => Unanswered::Missing(missing),
            NoOrder::NotServed => Unanswered::Missing(Vec::new()),
        })?;
        if topic == Topic::Dose
            && let Some(refusal) = refusal_of(facts, notes)
        {
            return Err(Unanswered::Refused(refusal));
        }
        let outcome = treatment::treat(&order).map_err(Unanswered::Refused)?;
        let variants = Variants::of(&order);
        let mut extra = Vec::new();
        if notes.contains(&Note::Ill) {
            extra.push(Extra::SeeHealthWorker);
        }
        if notes.contains(&Note::LowerEnd) {
            extra.push(Extra::LowerFigure);
        }
        if !remembered.is_empty() {
            extra.push(Extra::FromMemory);
        }
        if self.bottle_is_old(facts) {
            extra.push(Extra::OldBottle);
        }
        Ok(Answer {
            facts: facts.clone(),
            topic,
            outcome,
            if_cloudy: variants.cloudy,
            if_cold: variants.cold,
            if_high: variants.high,
            if_sunny: variants.sunny,
            extra,
        })
    }

    /// Hypochlorite loses strength with age; tablets and iodine keep.
    fn bottle_is_old(&self, facts: &Facts) -> bool {
        use crate::request::Product;
        let ages = matches!(
            facts.product,
            Some(Product::Bleach | Product::BleachingPowder | Product::CalciumHypochlorite)
        );
        // "Same but cloudy" is still from that bottle; another strength is another bottle.
        ages && self.person.bottle.as_ref().is_some_and(|bottle| {
            bottle.product == facts.product
                && bottle.strength_percent == facts.strength_percent
                && bottle.is_old(self.now)
        })
    }
}

enum Unanswered {
    Missing(Vec<Field>),
    Refused(Refusal),
}
