//! The day's other work in words: wells, solutions, chlorine tests, stocks, storing.
//!
//! In: an answer of the dialogue.
//! Out: its head, which can be acted on alone, and the sentences that belong to its kind.
//! Promises that a figure in a sentence is a figure of the answer.

use crate::dialogue::Answer;
use crate::request::{Clarity, Form, Product, Purpose, Taken};
use crate::treatment::{
    self, Caution, Detail, Dilution, JarFinding, JarVerdict, Measure, Outcome, PowderMeasure,
    ResidualFinding, ResidualVerdict, StorageFinding, SupplyFinding, WellFinding,
};

use super::answer::{Said, Written};
use super::catalog::Args;
use super::phrase::Phrases;

impl Phrases<'_> {
    pub(super) fn well_head(
        self,
        answer: &Answer,
        well: &WellFinding,
        said: &mut Said,
    ) -> Written<String> {
        said.cautions.push(Caution::NotUntilPumped);
        let facts = &answer.facts;
        let key = if facts.clarity == Some(Clarity::Cloudy) {
            said.cautions.push(Caution::WellClearFirst);
            "head-well-cloudy"
        } else {
            "head-well"
        };
        self.message(
            key,
            &Args::new()
                .text("across", self.metres(facts.diameter_m.unwrap_or_default())?)
                .text(
                    "depth",
                    self.metres(facts.water_depth_m.unwrap_or_default())?,
                )
                .text("volume", self.litres(well.litres)?)
                .text("product", self.labelled(facts)?)
                .text("measure", self.bulk(&answer.outcome.measure)?)
                .text("wait", self.wait(&answer.outcome)?)
                .text("ready", self.figure(well.ready_mg_per_l, 1)),
        )
    }

    /// A well takes its time.
    pub(super) fn well_hurry(self, answer: &Answer) -> Written<String> {
        let emergency = match &answer.outcome.detail {
            Detail::Well(well) => well.emergency_wait_min,
            Detail::Choice(_)
            | Detail::Dilution(_)
            | Detail::JarTest(_)
            | Detail::Plain
            | Detail::Residual(_)
            | Detail::Storage(_)
            | Detail::Supply(_) => 0,
        };
        self.message(
            "well-hurry",
            &Args::new()
                .text("wait", self.wait(&answer.outcome)?)
                .text("emergency", self.minutes(u64::from(emergency))?),
        )
    }

    pub(super) fn well_more(self, answer: &Answer, well: &WellFinding) -> Written<Vec<String>> {
        let key = match answer.facts.product.map(Product::form) {
            Some(Form::Powder) => "well-wall-stock",
            Some(Form::Liquid | Form::Tablets) | None => "well-wall",
        };
        Ok(vec![
            self.message(
                key,
                &Args::new()
                    .text("ml", self.millilitres(well.wall_ml)?)
                    .text("litres", self.litres(well.wall_litres)?)
                    .text("percent", self.figure(1.0, 0)),
            )?,
            self.message(
                "well-emergency",
                &Args::new().text("wait", self.minutes(u64::from(well.emergency_wait_min))?),
            )?,
        ])
    }

    pub(super) fn dilute_head(
        self,
        answer: &Answer,
        solution: &Dilution,
        said: &mut Said,
    ) -> Written<String> {
        let system = answer.facts.volume_system.unwrap_or_default();
        let args = Args::new()
            .text("volume", self.volume(solution.litres, system)?)
            .text("target", self.figure(solution.target_percent, 3))
            .text("product", self.labelled(&answer.facts)?)
            .text("measure", self.bulk(&answer.outcome.measure)?);
        let head = match (solution.parts_water, solution.water_ml) {
            (Some(_), Some(water)) if water <= 0.0 => self.message("head-dilute-as-is", &args),
            (Some(parts), Some(water)) => self.message(
                "head-dilute-liquid",
                &args
                    .text("water", self.millilitres(water)?)
                    .text("parts", self.figure(parts, 2)),
            ),
            _ => match (solution.grams_per_litre, solution.tablets_per_litre) {
                (_, Some(tablets)) => self.message(
                    "head-dilute-tablets",
                    &args
                        .text("count", self.figure(drawn_of(&answer.outcome.measure), 0))
                        .text("per", self.figure(tablets, 2)),
                ),
                (grams, None) => self.message(
                    "head-dilute-made-up",
                    &args.text("per", self.grams_about(grams.unwrap_or_default())?),
                ),
            },
        }?;
        said.cautions.push(Caution::NotForDrinking);
        let use_ = match answer.facts.purpose {
            // What is said to be for hands and is stronger than for hands is none.
            Some(Purpose::Hands) if solution.target_percent <= treatment::HANDS_PERCENT * 1.5 => {
                self.plain("dilute-hands")?
            }
            Some(Purpose::Stock) => self.plain("dilute-stock")?,
            Some(Purpose::Hands | Purpose::Spills | Purpose::Surfaces) | None => self.message(
                "dilute-surfaces",
                &Args::new().text("wait", self.wait(&answer.outcome)?),
            )?,
        };
        Ok(format!("{head} {use_}"))
    }

    pub(super) fn residual_head(
        self,
        answer: &Answer,
        finding: &ResidualFinding,
        said: &mut Said,
    ) -> Written<String> {
        let reading = finding.reading_mg_per_l.unwrap_or_default();
        // Old water at home is held to less than water that was just dosed.
        let kept = answer.facts.taken == Some(Taken::AtUse);
        let least = if reading < finding.aim_mg_per_l {
            finding.at_use_mg_per_l
        } else {
            finding.aim_mg_per_l
        };
        let mut args = Args::new()
            .text("reading", self.figure(reading, 2))
            .text("least", self.figure(least, 1))
            .text(
                "aim",
                self.figure(
                    if kept
                        && finding.verdict == ResidualVerdict::Low
                        && answer.outcome.measure == Measure::Nothing
                    {
                        finding.at_use_mg_per_l
                    } else {
                        finding.aim_mg_per_l
                    },
                    1,
                ),
            )
            .text("atuse", self.figure(finding.at_use_mg_per_l, 1))
            .text("most", self.figure(finding.most_mg_per_l, 1))
            .text("ready", self.figure(finding.well_ready_mg_per_l, 1))
            .text("retest", self.minutes(u64::from(finding.retest_min))?)
            .text("keeps", self.minutes(u64::from(finding.keeps_h) * 60)?);
        let verdict: &str = finding.verdict.into();
        match finding.verdict {
            ResidualVerdict::AlreadyDosed | ResidualVerdict::NoKit | ResidualVerdict::NoSmell => {
                said.cautions.push(Caution::SmellCheck);
            }
            ResidualVerdict::High | ResidualVerdict::TooHigh | ResidualVerdict::Smells => {
                said.cautions.push(Caution::LetStand);
            }
            ResidualVerdict::WellNotReady | ResidualVerdict::WellReady => {
                said.cautions
                    .extend([Caution::NotUntilPumped, Caution::KeepTreating]);
            }
            ResidualVerdict::Enough
            | ResidualVerdict::EnoughAtUse
            | ResidualVerdict::Low
            | ResidualVerdict::Stale
            | ResidualVerdict::StillNoSmell
            | ResidualVerdict::TooEarly => {}
        }
        if answer.outcome.measure == Measure::Nothing {
            return self.message(&format!("residual-{verdict}"), &args);
        }
        said.cautions.push(Caution::RetestLater);
        let system = answer.facts.volume_system.unwrap_or_default();
        let litres = answer.facts.volume_l.unwrap_or_default();
        args = args
            .text("product", self.labelled(&answer.facts)?)
            .text("volume", self.volume(litres, system)?)
            .text("wait", self.wait(&answer.outcome)?);
        if let Measure::Powder(PowderMeasure {
            stock: Some(stock), ..
        }) = answer.outcome.measure
        {
            // Less than a scale can weigh.
            args = args
                .text("grams", self.grams(stock.grams_per_litre)?)
                .text("litre", self.litres(1.0)?)
                .text("percent", self.figure(crate::treatment::STOCK_PERCENT, 0))
                .text("measure", self.by_syringe(stock.add)?);
            let key = if reading > 0.0 {
                "residual-add-stock"
            } else {
                "residual-add-zero-stock"
            };
            return self.message(key, &args);
        }
        args = args.text("measure", self.bulk(&answer.outcome.measure)?);
        let key = if reading > 0.0 {
            "residual-add"
        } else {
            "residual-add-zero"
        };
        self.message(key, &args)
    }

    pub(super) fn residual_more(self, finding: &ResidualFinding) -> Written<Vec<String>> {
        let eaten =
            finding.reading_mg_per_l == Some(0.0) && finding.verdict == ResidualVerdict::Low;
        Ok(if eaten {
            vec![self.plain("residual-zero")?]
        } else {
            Vec::new()
        })
    }

    pub(super) fn jar_head(
        self,
        answer: &Answer,
        finding: &JarFinding,
        said: &mut Said,
    ) -> Written<String> {
        said.cautions.push(Caution::RetestLater);
        let args = Args::new()
            .text("aim", self.figure(finding.aim_mg_per_l, 1))
            .text("jar", self.litres(finding.jar_litres)?);
        match finding.verdict {
            JarVerdict::AllAbove => self.message("jar-all-above", &args),
            JarVerdict::AllBelow => self.message("jar-all-below", &args),
            JarVerdict::Uneven => self.message("jar-uneven", &args),
            JarVerdict::HowTo { ml } => {
                let doses: Vec<String> = ml.iter().map(|ml| self.figure(*ml, 2)).collect();
                self.message(
                    "jar-how-to",
                    &args
                        .text("doses", self.list(&doses)?)
                        .text("percent", self.figure(treatment::STOCK_PERCENT, 0))
                        .text("wait", self.wait(&answer.outcome)?),
                )
            }
            JarVerdict::Found {
                ml_per_jar,
                ml_per_1000_l,
            } => {
                let args = args
                    .text("dose", self.millilitres(ml_per_jar)?)
                    .text("each", self.millilitres(ml_per_1000_l)?)
                    .text("thousand", self.litres(1000.0)?)
                    .text("wait", self.wait(&answer.outcome)?);
                match answer.facts.volume_l {
                    Some(tank) => self.message(
                        "jar-found-tank",
                        &args
                            .text("tank", self.litres(tank)?)
                            .text("measure", self.bulk(&answer.outcome.measure)?),
                    ),
                    None => self.message("jar-found", &args),
                }
            }
        }
    }

    pub(super) fn supply_head(self, answer: &Answer, supply: &SupplyFinding) -> Written<String> {
        let facts = &answer.facts;
        let form = facts.product.map_or(Form::Liquid, Product::form);
        let stock = match form {
            Form::Liquid => facts.stock_ml,
            Form::Powder => facts.stock_g,
            Form::Tablets => facts.tablets,
        };
        let clarity = match facts.clarity {
            Some(Clarity::Cloudy) => "supply-cloudy-water",
            Some(Clarity::Clear) | None => "supply-clear-water",
        };
        let whole = |value: f64| self.figure(value, 0);
        let mut args = Args::new()
            .text(
                "stock",
                self.in_store(answer, form, stock.unwrap_or_default())?,
            )
            .text("litres", self.litres(supply.treats_litres)?)
            .text("water", self.plain(clarity)?)
            .text("each", self.litres(supply.litres_per_person)?)
            .text("drinking", self.litres(supply.drinking_litres_per_person)?)
            .text("margin", whole(supply.margin_percent));
        if let Some(people) = supply.people {
            let phrase = self.message(
                "people",
                &Args::new()
                    .count("people-n", people)
                    .text("people", whole(people)),
            )?;
            args = args.text("people", phrase);
        }
        if let Some(days) = supply.days {
            args = args.text("days", self.days(days)?);
        }
        if let Some(need) = &supply.bare_need {
            let bare = drawn_of(need);
            let args = args
                .text("need", self.in_store(answer, form, bare)?)
                .text("measure", self.bulk(&answer.outcome.measure)?);
            return self.message("supply-needs", &args);
        }
        match (supply.drinking_days, supply.drinking_people) {
            (Some(days), _) => {
                let args = args.text("drinkingdays", self.days(days)?);
                self.message("supply-lasts", &args)
            }
            (None, Some(people)) => {
                self.message("supply-serves", &args.text("drinkingpeople", whole(people)))
            }
            (None, None) => self.message("supply-treats", &args),
        }
    }

    /// "2 kg of calcium hypochlorite 65%", "400 chlorine tablets 67 mg".
    fn in_store(self, answer: &Answer, form: Form, amount: f64) -> Written<String> {
        let product = self.labelled(&answer.facts)?;
        match form {
            Form::Tablets => self.message(
                "stock-counted",
                &Args::new()
                    .text("count", self.figure(amount, 0))
                    .text("product", product),
            ),
            Form::Liquid | Form::Powder => self.message(
                "stock-measured",
                &Args::new()
                    .text("amount", self.amount(form, amount)?)
                    .text("product", product),
            ),
        }
    }

    pub(super) fn supply_more(
        self,
        answer: &Answer,
        supply: &SupplyFinding,
    ) -> Written<Vec<String>> {
        let mut sentences = vec![match answer.facts.clarity {
            Some(Clarity::Cloudy) => self.plain("supply-counted-cloudy")?,
            Some(Clarity::Clear) | None => self.plain("supply-if-cloudy")?,
        }];
        // More than can be used before it is too old.
        let ageing = answer
            .facts
            .product
            .and_then(|product| treatment::ageing(product, answer.facts.strength_percent, 0.0));
        if let (Some(ageing), Some(days)) = (ageing, supply.days) {
            let months = f64::from(ageing.replace_months);
            if days > months * 30.0 {
                sentences.push(self.message(
                    "supply-ages",
                    &Args::new().text("months", self.figure(months, 0)),
                )?);
            }
        }
        Ok(sentences)
    }

    pub(super) fn storage_head(
        self,
        answer: &Answer,
        storage: &StorageFinding,
        said: &mut Said,
    ) -> Written<String> {
        match storage {
            StorageFinding::Water { keeps_h, .. } => {
                said.cautions.push(Caution::NarrowNeck);
                let keeps = self.minutes(u64::from(*keeps_h) * 60)?;
                self.message("storage-water", &Args::new().text("keeps", keeps))
            }
            StorageFinding::Product { replace_months } => {
                said.cautions
                    .extend([Caution::CoolAndDark, Caution::KeepFromChildren]);
                let args = Args::new().text("product", self.labelled(&answer.facts)?);
                match replace_months {
                    Some(months) => self.message(
                        "storage-product",
                        &args.text("months", self.figure(f64::from(*months), 0)),
                    ),
                    None => self.message("storage-product-by-pack", &args),
                }
            }
        }
    }

    pub(super) fn storage_more(self, storage: &StorageFinding) -> Written<Vec<String>> {
        match storage {
            StorageFinding::Water {
                rinse_ml_per_litre,
                rinse_s,
                ..
            } => Ok(vec![
                self.plain("storage-hands")?,
                self.message(
                    "storage-rinse",
                    &Args::new()
                        .text("ml", self.millilitres(*rinse_ml_per_litre)?)
                        .text("litre", self.litres(1.0)?)
                        .text("seconds", self.figure(f64::from(*rinse_s), 0)),
                )?,
            ]),
            StorageFinding::Product { .. } => Ok(Vec::new()),
        }
    }

    /// A measure without drops and spoons: these are no drinking doses.
    pub(super) fn bulk(self, measure: &Measure) -> Written<String> {
        match measure {
            Measure::ByLabel | Measure::Nothing => Ok(String::new()),
            // Less than this no spoon or cup measures.
            Measure::Liquid(liquid) if liquid.ml < 2.0 => self.liquid(*liquid),
            Measure::Liquid(liquid) => self.millilitres(liquid.ml),
            Measure::Powder(powder) => self.grams(powder.grams),
            Measure::Tablets(count) => self.tablets(*count),
        }
    }

    pub(super) fn wait(self, outcome: &Outcome) -> Written<String> {
        self.duration(outcome.wait.unwrap_or_default())
    }
}

/// How much a measure is: mL, grams or tablets.
fn drawn_of(measure: &Measure) -> f64 {
    match measure {
        Measure::ByLabel | Measure::Nothing => 0.0,
        Measure::Liquid(liquid) => liquid.ml,
        Measure::Powder(powder) => powder.grams,
        Measure::Tablets(count) => f64::from(*count),
    }
}
