//! What is kept for the person beside the conversation: bottles and reminders.
//!
//! In: what the message tells of a bottle, and the doses answered from it.
//! Out: the person with bottles and reminders brought up to date.
//! Promises that a remembered figure never stands in for one that was doubted or asked about.

use jiff::{SignedDuration, Timestamp};

use crate::parser::{Doubt, Note, strength_limit};
use crate::request::{Change, Facts, Field, Form, LabelFigure, Product, Topic, Work};
use crate::treatment::{
    self, DecayEstimate, Detail, Order, Outcome, Served, Stock, SupplyOrder, SupplyQuestion,
};

use super::bottle::{Bottle, Drawn, Left, Place, WARN_DAYS, amount_told, date_of, drawn_by};
use super::facts::product_doubted;
use super::order;
use super::person::{Reminder, Waited};
use super::say::{BottleLine, Kept, LeftLine, Say, Suffices};
use super::state::{ANSWER_LIVES_MINUTES, Talk};
use super::{Conversation, Step};

impl Conversation<'_> {
    pub(super) fn stock(&self) -> Step {
        if self.reading.notes.contains(&Note::NotMade) {
            return self.not_made();
        }
        if self.reading.notes.contains(&Note::AsksLeft) {
            return self.bottles();
        }
        if self.reading.notes.contains(&Note::BottleGone) && self.person.bottles.is_empty() {
            return self.bottles();
        }
        if self.reading.notes.contains(&Note::BottleGone)
            && let Some(bottle) = self.bottle_named().or(self.person.current()).cloned()
            && let Some(product) = bottle.product
        {
            return self.changed(Say::Dropped(product), |person| {
                person.bottles.retain(|other| !other.is_same(&bottle));
            });
        }
        if let Some(step) = self.recount() {
            return step;
        }
        if self.reading.notes.contains(&Note::Forgets)
            && let Some(product) = self.bottle_named().and_then(|bottle| bottle.product)
        {
            return self.changed(Say::Dropped(product), |person| {
                person
                    .bottles
                    .retain(|bottle| bottle.product != Some(product));
            });
        }
        let facts = &self.reading.stated;
        let product_doubt = self.reading.doubts.iter().copied().find(|doubt| {
            matches!(
                doubt.field(),
                Field::Product | Field::StrengthPercent | Field::TabletMg
            )
        });
        if let Some(doubt) = product_doubt {
            return self.unchanged(Say::NotKept(doubt));
        }
        let figure_said = facts.strength_percent.is_some() || facts.tablet_mg.is_some();
        let about_current = facts.product.is_none() && !figure_said;
        let known = self.person.current();
        let amount_of = |product: Option<Product>| {
            product.and_then(|product| amount_told(facts, product.form()))
        };
        // A bottle opened in the future is a slip: the date is asked for again.
        let by_age = || {
            let days = jiff::Span::new().try_days(facts.age_days? as i64).ok()?;
            date_of(self.now).checked_sub(days).ok()
        };
        let (opened, in_future) = match facts.opened.or_else(by_age) {
            Some(date) if date > date_of(self.now) => (None, Some(date)),
            other => (other, None),
        };
        if about_current {
            // "My bottle was opened on 1 March, half a litre is left": the current one.
            let Some(current) = known else {
                return self.unchanged(Say::NotKept(Doubt::Unlabelled));
            };
            let amount = amount_of(current.product);
            if amount.is_none() && opened.is_none() && in_future.is_none() {
                return self.unchanged(Say::NotKept(Doubt::Unlabelled));
            }
            let bottle = Bottle {
                opened: opened.or(current.opened),
                left: amount
                    .map(|amount| Left::told(amount, self.now))
                    .or(current.left),
                ..current.clone()
            };
            return self.keep(bottle, in_future);
        }
        // "Remember: 5%" keeps the product that was already known.
        let product = facts
            .product
            .or_else(|| known.and_then(|bottle| bottle.product));
        let told = Bottle {
            product,
            strength_percent: facts.strength_percent,
            tablet_mg: facts.tablet_mg,
            opened,
            told_at: self.now,
            left: amount_of(product).map(|amount| Left::told(amount, self.now)),
        };
        self.keep(told, in_future)
    }

    fn keep(&self, bottle: Bottle, opened_in_future: Option<jiff::civil::Date>) -> Step {
        let line = Kept {
            left: bottle.left.and_then(|left| self.left_line(&bottle, left)),
            ageing: self.ageing(&bottle),
            bottle: bottle.clone(),
            opened_in_future,
        };
        let kept = self.cautions();
        self.changed(Say::Kept(Box::new(line)), |person| {
            // "Remember bleach", then "it is 5%": one bottle, told in two messages.
            if let Some(first) = person.bottles.first()
                && first.product == bottle.product
                && first.strength_percent.is_none()
                && first.tablet_mg.is_none()
            {
                person.bottles.remove(0);
            }
            // From now on questions are about this bottle, and not the one spoken of before.
            let other = person
                .talk
                .work(self.now, ANSWER_LIVES_MINUTES)
                .is_some_and(|work| work.facts.product.is_some() && !bottle.is_of(&work.facts));
            if other {
                person.talk = Talk::only(kept);
            }
            person.put_first(bottle);
        })
    }

    /// "Used 300 mL", "bought 2 L more": what is left in the remembered bottle changes by that.
    fn recount(&self) -> Option<Step> {
        let notes = &self.reading.notes;
        let gained = notes.contains(&Note::Gained);
        if !gained && !notes.contains(&Note::Spent) {
            return None;
        }
        let stated = &self.reading.stated;
        let other_label = |bottle: &&Bottle| {
            stated
                .strength_percent
                .is_none_or(|percent| bottle.strength_percent == Some(percent))
        };
        let bottle = self
            .bottle_named()
            .or(self.person.current())
            .filter(other_label)?
            .clone();
        let amount = amount_told(stated, bottle.product?.form())?;
        let left = match (bottle.left, gained) {
            (Some(left), true) => left.amount + amount,
            (Some(left), false) => (left.amount - amount).max(0.0),
            // Nobody said how much there was.
            (None, _) => return Some(self.bottles()),
        };
        let left = Left::told(left, self.now);
        Some(self.keep(
            Bottle {
                left: Some(left),
                ..bottle
            },
            None,
        ))
    }

    fn bottles(&self) -> Step {
        let lines: Vec<BottleLine> = self
            .person
            .bottles
            .iter()
            .map(|bottle| BottleLine {
                bottle: bottle.clone(),
                left: bottle.left.and_then(|left| self.left_line(bottle, left)),
                ageing: self.ageing(bottle),
            })
            .collect();
        self.unchanged(Say::Bottles(lines))
    }

    fn not_made(&self) -> Step {
        let undone = self.person.bottles.iter().enumerate().find_map(|(i, b)| {
            let left = b.left?;
            let recent = left
                .last
                .is_some_and(|last| super::state::lives(last.at, self.now, ANSWER_LIVES_MINUTES));
            recent
                .then(|| left.undone())
                .flatten()
                .map(|left| (i, left))
        });
        let Some((at, left)) = undone else {
            return self.unchanged(Say::NothingToUndo);
        };
        let mut say = Say::NothingToUndo;
        let mut bottles = self.person.bottles.clone();
        if let Some(bottle) = bottles.get_mut(at) {
            bottle.left = Some(left);
            say = Say::Undone(Box::new(BottleLine {
                bottle: bottle.clone(),
                left: self.left_line(bottle, left),
                ageing: None,
            }));
        }
        self.changed(say, |person| person.bottles = bottles)
    }

    /// What is left in the bottle that these facts rest on, once this dose is taken.
    pub(super) fn left_after(
        &self,
        facts: &Facts,
        outcome: &Outcome,
        place: Place,
    ) -> Option<LeftLine> {
        let bottle = self.person.bottle_of(facts)?;
        match self.drawn(bottle, outcome, place)? {
            Drawn::Left(left) => self.left_line(bottle, left),
            Drawn::TooLittle(left) => Some(LeftLine {
                suffices: Suffices::No,
                ..self.left_line(bottle, left)?
            }),
        }
    }

    fn drawn(&self, bottle: &Bottle, outcome: &Outcome, place: Place) -> Option<Drawn> {
        // A plan or a recipe for later takes nothing.
        match outcome.detail {
            Detail::Dilution(_) | Detail::Plain | Detail::Residual(_) | Detail::Well(_) => {}
            Detail::Choice(_) | Detail::JarTest(_) | Detail::Storage(_) | Detail::Supply(_) => {
                return None;
            }
        }
        let product = bottle.product?;
        let amount = drawn_by(&outcome.measure, product.form())?;
        let left = bottle.left?;
        Some(
            left.draw(amount, place, self.now)
                .map_or(Drawn::TooLittle(left), Drawn::Left),
        )
    }

    fn left_line(&self, bottle: &Bottle, left: Left) -> Option<LeftLine> {
        let days = left.days_left(self.now).filter(|days| *days < WARN_DAYS);
        Some(LeftLine {
            form: bottle.product?.form(),
            amount: left.amount,
            suffices: Suffices::Yes,
            treats_litres: self.treats(bottle, left.amount),
            days_left: days,
        })
    }

    /// Litres of clear water that so much of a bottle treats.
    fn treats(&self, bottle: &Bottle, amount: f64) -> Option<f64> {
        let facts = Facts {
            product: bottle.product,
            strength_percent: bottle.strength_percent,
            tablet_mg: bottle.tablet_mg,
            ..Facts::default()
        };
        let stock = Stock::of(bottle.product?.form(), amount)?;
        let order = SupplyOrder {
            agent: order::agent(bottle.product?, &facts).ok()?,
            question: SupplyQuestion::Treats(stock),
            clarity: None,
            served: Served::People,
        };
        match treatment::treat(&Order::Supply(order)).ok()?.detail {
            Detail::Supply(supply) => Some(three_figures_down(supply.treats_litres)),
            Detail::Choice(_)
            | Detail::Dilution(_)
            | Detail::JarTest(_)
            | Detail::Plain
            | Detail::Residual(_)
            | Detail::Storage(_)
            | Detail::Well(_) => None,
        }
    }

    /// Takes the answered dose out of its bottle and makes that bottle the current one. A bottle
    /// that the message asks to remember is remembered.
    pub(super) fn drawing(&self, mut step: Step) -> Step {
        let (answer, place) = if let Say::Answer(answer) = &step.say {
            (answer, answer.place)
        } else if let Say::Adjusted(answer, _) = &step.say {
            (answer, Place::Instead)
        } else {
            return step;
        };
        let Some(person) = &mut step.person else {
            return step;
        };
        let keep = self.reading.notes.contains(&Note::Keep)
            && self.reading.request.topic != Topic::Stock
            && self.reading.doubts.is_empty();
        if keep && person.bottle_of(&answer.facts).is_none() && answer.facts.product.is_some() {
            person.put_first(Bottle {
                product: answer.facts.product,
                strength_percent: answer.facts.strength_percent,
                tablet_mg: answer.facts.tablet_mg,
                opened: self.reading.stated.opened,
                told_at: self.now,
                left: None,
            });
        }
        let Some(bottle) = person.bottle_of(&answer.facts).cloned() else {
            return step;
        };
        let left = match self.drawn(&bottle, &answer.outcome, place) {
            Some(Drawn::Left(left)) => Some(left),
            Some(Drawn::TooLittle(_)) | None => bottle.left,
        };
        person.put_first(Bottle { left, ..bottle });
        step
    }

    /// Fills in what a remembered bottle knows, and says which facts came from it.
    pub(super) fn remember(&self, work: Work, facts: &mut Facts, doubts: &[Doubt]) -> Vec<Field> {
        let mut used = Vec::new();
        let needs_product = work != Work::Residual
            || self.reading.notes.contains(&Note::AsksAmount)
            || self
                .asked()
                .is_some_and(|asked| asked.notes.contains(&Note::AsksAmount));
        let named = self.named_by_form(facts, doubts);
        if (product_doubted(doubts) && named.is_none()) || !needs_product || !facts.jars.is_empty()
        {
            return used;
        }
        let Some(bottle) = named.or_else(|| self.bottle_for(work, facts)) else {
            return used;
        };
        // What we asked about in spite of this bottle is not answered by this bottle.
        let questioned = self
            .asked()
            .filter(|asked| asked.at >= bottle.told_at)
            .map(|asked| asked.field);
        if questioned == Some(Field::Product) && named.is_none() {
            return used;
        }
        if facts.product.is_none() {
            facts.product = bottle.product;
            used.push(Field::Product);
        }
        let doubted = |field: Field| {
            questioned == Some(field) || doubts.iter().any(|doubt| doubt.field() == field)
        };
        if facts.strength_percent.is_none()
            && bottle.strength_percent.is_some()
            && !doubted(Field::StrengthPercent)
        {
            facts.strength_percent = bottle.strength_percent;
            used.push(Field::StrengthPercent);
        }
        if facts.tablet_mg.is_none() && bottle.tablet_mg.is_some() && !doubted(Field::TabletMg) {
            facts.tablet_mg = bottle.tablet_mg;
            used.push(Field::TabletMg);
        }
        if work == Work::Supply {
            self.remember_stock(bottle, facts, &mut used);
        }
        used
    }

    /// The remembered bottle that the message names, by its product or its form.
    fn bottle_named(&self) -> Option<&Bottle> {
        let stated = &self.reading.stated;
        let by_product = || {
            let product = stated.product?;
            let mut bottles = self.person.bottles.iter();
            bottles.find(|bottle| bottle.product == Some(product))
        };
        by_product().or_else(|| self.named_by_form(stated, &self.reading.doubts))
    }

    /// "My tablets", "my powder": the one remembered product of that form.
    fn named_by_form(&self, facts: &Facts, doubts: &[Doubt]) -> Option<&Bottle> {
        let product_doubts: Vec<&Doubt> = doubts
            .iter()
            .filter(|doubt| doubt.field() == Field::Product)
            .collect();
        let [doubt] = product_doubts.as_slice() else {
            return None;
        };
        if facts.product.is_some() {
            return None;
        }
        let fits = |product: Product| {
            let chlorine = !product.is_iodine() && product != Product::ChlorineDioxide;
            (**doubt == Doubt::TabletForm && product.form() == Form::Tablets)
                || (**doubt == Doubt::PowderForm && product.form() == Form::Powder)
                || (**doubt == Doubt::IodineForm && product.is_iodine())
                || (**doubt == Doubt::ChlorineForm && chlorine)
        };
        let mut fitting = self
            .person
            .bottles
            .iter()
            .filter(|bottle| bottle.product.is_some_and(fits));
        let only = fitting.next()?;
        fitting.next().is_none().then_some(only)
    }

    /// "How long will my bottle last 50 people?": what is left in it.
    fn remember_stock(&self, bottle: &Bottle, facts: &mut Facts, used: &mut Vec<Field>) {
        let (Some(product), Some(left)) = (bottle.product, bottle.left) else {
            return;
        };
        // So many people for so many days asks what to order.
        let orders = facts.people.is_some() && facts.days.is_some();
        if orders || !bottle.is_of(facts) || amount_told(facts, product.form()).is_some() {
            return;
        }
        let (slot, field) = match product.form() {
            Form::Liquid => (&mut facts.stock_ml, Field::StockMl),
            Form::Powder => (&mut facts.stock_g, Field::StockG),
            Form::Tablets => (&mut facts.tablets, Field::Tablets),
        };
        *slot = Some(left.amount);
        used.push(field);
    }

    /// The remembered bottle that a question means: the one used last of the product named. Two
    /// of one product with different figures are told apart only by the one used last.
    fn bottle_for(&self, work: Work, facts: &Facts) -> Option<&Bottle> {
        self.person.bottles.iter().find(|bottle| {
            let Some(product) = bottle.product else {
                return false;
            };
            let suits = order::unfit(work, product).is_none();
            let same = match facts.product {
                Some(named) => named == product,
                None => facts.strength_percent.is_none_or(|percent| {
                    product.label_figure() == LabelFigure::Strength
                        && strength_limit(product).check(percent).is_ok()
                }),
            };
            suits && same
        })
    }

    /// Hypochlorite loses strength with age; tablets and iodine keep.
    pub(super) fn bottle_is_old(&self, facts: &Facts) -> bool {
        // "Same but cloudy" is still from that bottle; another strength is another bottle.
        self.person.bottle_of(facts).is_some_and(|bottle| {
            self.ageing(bottle)
                .is_some_and(|ageing| ageing.replace == treatment::Replace::Now)
        })
    }

    fn ageing(&self, bottle: &Bottle) -> Option<treatment::Ageing> {
        treatment::ageing(
            bottle.product?,
            bottle.strength_percent,
            bottle.age_days(self.now),
        )
    }

    /// What may be left of an old bottle's strength: told, never counted on.
    pub(super) fn estimate(&self, facts: &Facts) -> Option<DecayEstimate> {
        let bottle = self.person.bottle_of(facts)?;
        self.ageing(bottle)
            .filter(|ageing| ageing.replace == treatment::Replace::Now)?
            .estimate
    }

    pub(super) fn remind(&self) -> Step {
        let last = self.person.talk.last(self.now, ANSWER_LIVES_MINUTES);
        let work = self.person.talk.work(self.now, ANSWER_LIVES_MINUTES);
        let reminder = last.into_iter().chain(work).find_map(|last| {
            let answer = self
                .work_out(last.topic, &last.facts, &last.notes, &last.beside)
                .ok()?;
            self.reminder_for(last.topic, &last.facts, &answer.outcome)
        });
        let Some(reminder) = reminder else {
            return self.unchanged(Say::NothingToWaitFor);
        };
        self.changed(Say::WillRemind(reminder), |person| {
            person.promise(Some(reminder));
        })
    }

    /// "Can we drink it now?", long enough after the dose: the wait that is over.
    pub(super) fn waited_for(&self) -> Option<Reminder> {
        let asks = self.reading.notes.contains(&Note::ToDrink)
            && self.reading.request.facts.change == Some(Change::Faster);
        let last = self.person.talk.work(self.now, ANSWER_LIVES_MINUTES)?;
        let answer = self
            .work_out(last.topic, &last.facts, &last.notes, &last.beside)
            .ok()?;
        let reminder = self.reminder_for(last.topic, &last.facts, &answer.outcome)?;
        let wait = i64::try_from(reminder.wait_min).ok()? * 60;
        let over = self.now.as_second() - last.at.as_second() >= wait;
        (asks && over).then_some(reminder)
    }

    /// Counted from now: the water may have been treated later than we answered, never earlier
    /// than we are told.
    pub(super) fn reminder_for(
        &self,
        topic: Topic,
        facts: &Facts,
        outcome: &Outcome,
    ) -> Option<Reminder> {
        let kind = match topic {
            Topic::Dilute => Waited::Surface,
            Topic::Dose if facts.product.is_some_and(is_smelt) => Waited::Chlorine,
            Topic::Dose => Waited::Disinfectant,
            Topic::Residual => Waited::Retest,
            Topic::Sun => Waited::Sun,
            Topic::Well => Waited::Well,
            Topic::Adjust
            | Topic::Boil
            | Topic::Choose
            | Topic::Exposure
            | Topic::Filter
            | Topic::Forget
            | Topic::Help
            | Topic::Illness
            | Topic::More
            | Topic::Remind
            | Topic::Settings
            | Topic::Start
            | Topic::Stock
            | Topic::Stop
            | Topic::Storage
            | Topic::Supply
            | Topic::Unclear
            | Topic::Why => return None,
        };
        let wait = outcome.wait?;
        let seconds = i64::try_from(wait.as_secs()).ok()?;
        let due: Timestamp = self
            .now
            .checked_add(SignedDuration::from_secs(seconds))
            .ok()?;
        Some(Reminder {
            due,
            kind,
            wait_min: wait.as_secs().div_ceil(60),
        })
    }
}

/// Whether water treated with it smells of chlorine when there is enough.
const fn is_smelt(product: Product) -> bool {
    match product {
        Product::Bleach
        | Product::BleachingPowder
        | Product::CalciumHypochlorite
        | Product::Nadcc => true,
        Product::ChlorineDioxide
        | Product::IodineTablet
        | Product::IodineTincture
        | Product::PovidoneIodine => false,
    }
}

/// What a bottle treats is counted, not measured: three figures, downward.
fn three_figures_down(litres: f64) -> f64 {
    if litres < 1000.0 {
        return litres.floor();
    }
    let step = 10.0_f64.powf(litres.log10().floor() - 2.0);
    (litres / step * (1.0 + 1e-9)).floor() * step
}
