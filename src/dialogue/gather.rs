//! The facts of one question, gathered over several messages.
//!
//! In: what the message states, our open question or the last answer, the remembered bottles.
//! Out: an answer, one question, or a refusal.
//! Promises that another product brings its own figures, and that a doubt takes away what was
//! sure before.

use crate::parser::{Doubt, Link, Note, powder};
use crate::quantity::limit;
use crate::request::{Facts, Field, LabelFigure, Person as Drinker, Product, Refusal, Topic, Work};
use crate::treatment::{self, Detail, JarVerdict, Measure, ResidualVerdict};

use super::bottle::Place;
use super::facts::{iodine_suits, merge, product_doubted, refusal_of};
use super::order;
use super::say::{Answer, Beside, Question, Say};
use super::state::{ANSWER_LIVES_MINUTES, Answered, Asked, Talk, Urge};
use super::{Conversation, Step};

/// Water is tested half an hour to two hours after its dose.
const TESTED_WITHIN_MINUTES: i64 = 180;

impl Conversation<'_> {
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
        self.name_the_tablet(&mut facts, &mut doubts);
        if work == Work::Dose && self.strength_is_of_solution() {
            doubts.push(Doubt::StrengthIsSolution);
            facts.strength_percent = None;
        }
        let mut place = Place::Beside;
        if let Some(base) = self.base(work) {
            place = base.place;
            if work == Work::Dilute && self.reading.percents.len() == 2 {
                doubts.retain(|doubt| *doubt != Doubt::StrengthTwo);
            }
            let named = facts.product;
            facts = self.added_to(work, &base.facts, &doubts);
            facts.product = facts.product.or(named);
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
            self.name_the_form(&notes, &mut facts, &mut doubts);
        }
        if place == Place::Beside {
            self.inherit_product(work, &mut facts, &doubts);
            self.inherit_tested_water(work, &mut facts);
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
        if facts.product.is_some_and(Product::is_iodine) || doubts.contains(&Doubt::IodineForm) {
            // "I am pregnant" of a minute ago holds for the iodine of now.
            for person in self.persons_spoken_of() {
                if !facts.person.contains(&person) {
                    facts.person.push(person);
                }
            }
        }
        if work == Work::Dose
            && self.chemical_spoken_of()
            && !self.reading.notes.contains(&Note::OtherWater)
        {
            facts.chemical = true;
        }
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
        let mut missing = order::missing(work, &facts, &notes);
        // The label of a product that will not do is of no use.
        let of_product = |doubt: &Doubt| doubt.field() == Field::Product;
        if let Some(first) = missing.first_mut()
            && *first == Field::StrengthPercent
            && facts.product.is_none()
            && doubts.iter().any(of_product)
        {
            *first = Field::Product;
        }
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

    /// "Chlorine", in answer to "are the tablets chlorine or iodine?": tablets it is.
    fn name_the_tablet(&self, facts: &mut Facts, doubts: &mut Vec<Doubt>) {
        let tablets = self
            .asked()
            .filter(|asked| asked.field == Field::Product)
            .and_then(|asked| asked.facts.tablet_mg);
        let (Some(mg), None) = (tablets, facts.product) else {
            return;
        };
        let named = if doubts.contains(&Doubt::ChlorineForm)
            && limit::CHLORINE_TABLET.check(mg).is_ok()
        {
            (Product::Nadcc, Doubt::ChlorineForm)
        } else if doubts.contains(&Doubt::IodineForm) && limit::IODINE_TABLET.check(mg).is_ok() {
            (Product::IodineTablet, Doubt::IodineForm)
        } else {
            return;
        };
        facts.product = Some(named.0);
        doubts.retain(|doubt| *doubt != named.1);
    }

    /// "Liquid", "5%" or "tablets", in answer to "is the chlorine a liquid, a powder or tablets?";
    /// "65%", in answer to "which powder?".
    fn name_the_form(&self, notes: &[Note], facts: &mut Facts, doubts: &mut Vec<Doubt>) {
        let asked = self
            .asked()
            .is_some_and(|asked| asked.field == Field::Product);
        if !asked || facts.product.is_some() {
            return;
        }
        // A form that was told before, or is told now.
        let of = |note: Note| notes.contains(&note);
        let other: Vec<Doubt> = doubts.iter().copied().filter(|d| !is_form(*d)).collect();
        if product_doubted(&other) {
            return;
        }
        let liquid = self.reading.notes.contains(&Note::Liquid);
        let named = match facts.strength_percent {
            // What may be stabilised stays so, whatever its form.
            _ if of(Note::OfPool) => None,
            Some(percent) if of(Note::OfPowder) => powder(percent),
            _ if of(Note::OfChlorine) && of(Note::OfTablets) => Some(Product::Nadcc),
            _ if of(Note::OfChlorine) && liquid => Some(Product::Bleach),
            // More than a liquid can have is a powder's.
            Some(percent) if of(Note::OfChlorine) && limit::BLEACH.check(percent).is_ok() => {
                Some(Product::Bleach)
            }
            Some(_) | None => None,
        };
        doubts.retain(|doubt| !is_form(*doubt));
        facts.product = named;
        if named.is_none() {
            // The same question again, and not one that has forgotten what was said.
            let still = [
                (Note::OfPool, Doubt::Pool),
                (Note::OfPowder, Doubt::PowderForm),
                (Note::OfTablets, Doubt::TabletForm),
                (Note::OfIodine, Doubt::IodineForm),
                (Note::OfChlorine, Doubt::ChlorineForm),
            ];
            let still = still.into_iter().find(|(note, _)| of(*note));
            doubts.extend(still.map(|(_, doubt)| doubt));
        }
    }

    /// "0.2%" with no product beside it, while the bottle is many times stronger: what the
    /// cleaners want, and no label.
    fn strength_is_of_solution(&self) -> bool {
        let stated = &self.reading.stated;
        let asked = self.asked();
        if stated.product.is_some()
            || self.reading.link == Link::Correction
            || asked.is_some_and(|asked| asked.field == Field::StrengthPercent)
        {
            return false;
        }
        let told = self.person.talk.work(self.now, ANSWER_LIVES_MINUTES);
        let known = [
            asked.and_then(|asked| asked.facts.strength_percent),
            told.and_then(|told| told.facts.strength_percent),
            self.person.current().and_then(|b| b.strength_percent),
        ];
        stated.strength_percent.is_some_and(|percent| {
            percent <= treatment::STOCK_PERCENT
                && known.iter().flatten().any(|known| *known >= percent * 2.5)
        })
    }

    /// "Test shows 0.1", half an hour after the dose for 20 L: those 20 L.
    fn inherit_tested_water(&self, work: Work, facts: &mut Facts) {
        let elsewhere = facts.product.is_some()
            || facts.volume_l.is_some()
            || facts.taken.is_some()
            || facts.residual_mg_per_l.is_none()
            || self.reading.notes.contains(&Note::OtherWater)
            || self.asked().is_some();
        let dosed = self.person.talk.work(self.now, TESTED_WITHIN_MINUTES);
        let Some(dosed) = dosed.filter(|dosed| dosed.topic == Topic::Dose) else {
            return;
        };
        let suits = dosed
            .facts
            .product
            .is_some_and(|product| order::unfit(Work::Residual, product).is_none());
        if work != Work::Residual || elsewhere || !suits || dosed.facts.chemical {
            return;
        }
        facts.product = dosed.facts.product;
        facts.strength_percent = dosed.facts.strength_percent;
        facts.tablet_mg = dosed.facts.tablet_mg;
        facts.volume_l = dosed.facts.volume_l;
        facts.volume_system = dosed.facts.volume_system;
        facts.ph = facts.ph.or(dosed.facts.ph);
    }

    /// For whom the water was said to be, in the question or the answer before.
    pub(super) fn persons_spoken_of(&self) -> Vec<Drinker> {
        let asked = self.asked().map(|asked| &asked.facts);
        let last = self.person.talk.last(self.now, ANSWER_LIVES_MINUTES);
        let work = self.person.talk.work(self.now, ANSWER_LIVES_MINUTES);
        let facts = asked
            .into_iter()
            .chain(last.into_iter().chain(work).map(|told| &told.facts));
        let beside = last
            .into_iter()
            .chain(work)
            .map(|told| &told.beside.persons);
        facts
            .map(|facts| &facts.person)
            .chain(beside)
            .flatten()
            .copied()
            .collect()
    }

    /// After some answers one more fact would make them exact: it is waited for, not asked for.
    pub(super) fn invitation(&self, answer: &Answer, answered: &Answered) -> Option<Asked> {
        let mut notes = answered.notes.clone();
        let field = match &answer.outcome.detail {
            Detail::Residual(finding) => match finding.verdict {
                ResidualVerdict::Low
                    if !notes.contains(&Note::AsksAmount)
                        && answer.outcome.measure == Measure::Nothing =>
                {
                    notes.push(Note::AsksAmount);
                    Field::VolumeL
                }
                ResidualVerdict::EnoughAtUse => Field::ResidualMgPerL,
                ResidualVerdict::Enough
                | ResidualVerdict::High
                | ResidualVerdict::Low
                | ResidualVerdict::NoKit
                | ResidualVerdict::NoSmell
                | ResidualVerdict::AlreadyDosed
                | ResidualVerdict::Smells
                | ResidualVerdict::StillNoSmell
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

    /// No dose for these facts: they stay, so that "and for 40 L?" is refused as well.
    pub(super) fn refuse_for(&self, refusal: Refusal, facts: Facts, notes: Vec<Note>) -> Step {
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

/// Whether a doubt is only about the form of a product.
const fn is_form(doubt: Doubt) -> bool {
    matches!(
        doubt,
        Doubt::ChlorineForm | Doubt::IodineForm | Doubt::PowderForm | Doubt::TabletForm
    )
}
