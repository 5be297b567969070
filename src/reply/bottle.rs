//! Bottles and reminders in words.
//!
//! In: what is remembered of a bottle, what is left in it, what its age means.
//! Out: sentences.

use crate::dialogue::{Answer, BottleLine, Kept, LeftLine, Reminder, Suffices};
use crate::request::{Facts, Form};
use crate::treatment::{Ageing, Replace};

use super::answer::Written;
use super::ask::capitalized;
use super::catalog::Args;
use super::phrase::Phrases;

impl Phrases<'_> {
    pub(super) fn kept(self, kept: &Kept) -> Written<String> {
        let bottle = &kept.bottle;
        let facts = Facts {
            product: bottle.product,
            strength_percent: bottle.strength_percent,
            tablet_mg: bottle.tablet_mg,
            ..Facts::default()
        };
        let label = self.label(&facts)?;
        let key = match (bottle.product, label.is_empty()) {
            (Some(_), false) => "kept",
            (Some(_), true) => "kept-part",
            (None, _) => "kept-figure",
        };
        let product = bottle
            .product
            .map(|product| self.product(product))
            .transpose()?;
        let mut sentences = vec![
            self.message(
                key,
                &Args::new()
                    .text("product", product.unwrap_or_default())
                    .text("label", label),
            )?,
        ];
        if let Some(date) = kept.opened_in_future {
            sentences
                .push(self.message("kept-future", &Args::new().text("date", date.to_string()))?);
        }
        if let Some(date) = bottle.opened {
            sentences
                .push(self.message("kept-opened", &Args::new().text("date", date.to_string()))?);
        }
        if let Some(left) = &kept.left {
            sentences.push(self.left(left)?);
        }
        if let Some(ageing) = &kept.ageing {
            sentences.extend(self.age(ageing)?);
        }
        Ok(sentences.join(" "))
    }

    pub(super) fn bottles(self, lines: &[BottleLine]) -> Written<String> {
        if lines.is_empty() {
            return self.plain("bottles-none");
        }
        let mut said = Vec::new();
        for line in lines {
            said.push(self.bottle_line(line)?);
        }
        self.message("bottles", &Args::new().text("list", said.join(" ")))
    }

    pub(super) fn bottle_line(self, line: &BottleLine) -> Written<String> {
        let facts = Facts {
            product: line.bottle.product,
            strength_percent: line.bottle.strength_percent,
            tablet_mg: line.bottle.tablet_mg,
            ..Facts::default()
        };
        let name = self.labelled(&facts)?;
        let name = capitalized(&name);
        let mut sentences = vec![self.message("bottle", &Args::new().text("bottle", name))?];
        if let Some(left) = &line.left {
            sentences.push(self.left(left)?);
        }
        if let Some(ageing) = &line.ageing {
            sentences.extend(self.age(ageing)?);
        }
        Ok(sentences.join(" "))
    }

    /// What is left, and for how long at the person's pace where it is not long.
    pub(super) fn left(self, left: &LeftLine) -> Written<String> {
        if left.amount <= 0.0 {
            return self.plain("left-empty");
        }
        let amount = match left.form {
            Form::Liquid if left.amount >= 1000.0 => self.message(
                "volume-litres",
                &Args::new().text("value", self.figure(left.amount / 1000.0, 2)),
            )?,
            Form::Liquid | Form::Powder if left.amount >= 100.0 => {
                self.amount(left.form, left.amount.round())?
            }
            Form::Liquid | Form::Powder | Form::Tablets => self.amount(left.form, left.amount)?,
        };
        let args = Args::new().text("amount", amount);
        if left.suffices == Suffices::No {
            return self.message("left-short", &args);
        }
        let sentence = match left.treats_litres {
            Some(litres) => self.message("left", &args.text("litres", self.litres(litres)?))?,
            None => self.message("left-amount", &args)?,
        };
        match left.days_left {
            Some(days) => {
                let warning = self.message(
                    "left-days",
                    // Fewer days are the safer figure.
                    &Args::new().text("days", self.days(days.floor())?),
                )?;
                Ok(format!("{sentence} {warning}"))
            }
            None => Ok(sentence),
        }
    }

    /// Only what calls for something to be done.
    fn age(self, ageing: &Ageing) -> Written<Option<String>> {
        let months = self.figure(f64::from(ageing.replace_months), 0);
        let args = Args::new().text("months", months);
        match ageing.replace {
            Replace::NotYet => Ok(None),
            Replace::Soon => self.message("age-soon", &args).map(Some),
            Replace::Now => self.message("age-now", &args).map(Some),
        }
    }

    /// What may be left of an old bottle's strength, as an estimate.
    pub(super) fn estimate(self, answer: &Answer) -> Written<Option<String>> {
        answer
            .estimate
            .map(|estimate| {
                self.message(
                    "age-estimate",
                    &Args::new()
                        .text("percent", self.figure(estimate.percent_left, 0))
                        .text("celsius", self.figure(estimate.celsius, 0)),
                )
            })
            .transpose()
    }

    pub(super) fn will_remind(self, reminder: &Reminder) -> Written<String> {
        self.message(
            "will-remind",
            &Args::new().text("wait", self.minutes(reminder.wait_min)?),
        )
    }

    /// The message itself, when the wait is over.
    pub(super) fn reminder(self, reminder: &Reminder) -> Written<String> {
        let kind: &str = reminder.kind.into();
        self.message(
            &format!("reminder-{kind}"),
            &Args::new().text("wait", self.minutes(reminder.wait_min)?),
        )
    }
}
