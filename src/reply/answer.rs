//! Answers in words: a head that can be acted on alone, then cautions.
//!
//! In: an answer of the dialogue.
//! Out: its head, and its further sentences in the order they matter.
//! Promises that a figure in a sentence is a figure of the answer.

use crate::dialogue::{Answer, Extra};
use crate::request::{AtHand, Clarity, Sky, Topic};
use crate::treatment::{
    Caution, Cover, Coverage, Detail, Measure, Outcome, Source, Status, WaitBasis,
};

use super::catalog::{Args, CatalogError};
use super::phrase::{Join, Phrases};

/// So many sources are told, the figure's own first: each costs a third of an SMS. The JSON has
/// them all.
const SOURCES_TOLD: usize = 3;

/// An answer in sentences.
pub(super) struct Sentences {
    /// Dose and wait: goes out whatever its length.
    pub(super) head: String,
    /// Everything else, the most urgent first.
    pub(super) tail: Vec<Sentence>,
}

/// A sentence behind the head.
pub(super) struct Sentence {
    pub(super) text: String,
    pub(super) need: Need,
}

/// Whether a sentence can wait for the second message.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Need {
    /// What holds for other water: goes out where there is room, or the head says which water it
    /// is for.
    Condition,
    /// It can wait.
    Later,
    /// Goes out with the head, whatever its length.
    Urgent,
}

/// Whether the head says that it takes the water for clear.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Assumption {
    /// It does.
    Said,
    /// What follows it covers cloudy water.
    Unsaid,
}

/// In which measures a dose is told first.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Measures {
    /// In drops or in mL; the other measures wait for the second message.
    One,
    /// In drops and mL, or in mL and spoons.
    Two,
}

/// How much room a first message leaves.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Room {
    pub(super) assumption: Assumption,
    pub(super) measures: Measures,
}

impl Room {
    /// Room for everything.
    pub(super) const WIDE: Self = Self {
        assumption: Assumption::Unsaid,
        measures: Measures::Two,
    };
}

pub(super) type Written<T> = Result<T, CatalogError>;

/// A sentence that most answers of a kind share stands for its caution already.
pub(super) struct Said {
    pub(super) cautions: Vec<Caution>,
    pub(super) room: Room,
}

impl Phrases<'_> {
    pub(super) fn answer(self, answer: &Answer, room: Room) -> Written<Sentences> {
        let outcome = &answer.outcome;
        let mut said = Said {
            cautions: Vec::new(),
            room,
        };
        let mut head = self.head(answer, &mut said)?;
        let mut first = self.beside(answer)?;
        let (urgent, rest): (Vec<Caution>, Vec<Caution>) = outcome
            .cautions
            .iter()
            .copied()
            .filter(|caution| !said.cautions.contains(caution))
            .partition(|caution| is_urgent(*caution));
        let mut beside = first.len();
        for caution in urgent {
            first.push(self.caution(caution)?);
        }
        let conditions = self.conditions(answer, &mut said)?;
        let mut tail = self.measures_later(answer, room)?;
        let mut others = Vec::new();
        match &answer.if_new_tank {
            // First things first: the dose is for when the tank is clean, and stays in one piece.
            Some(tank) if answer.extra.contains(&Extra::NewTank) => {
                let args = self
                    .new_tank(tank)?
                    .text("echo", self.echo(answer, room.assumption)?);
                let tank = self.message("head-new-tank", &args)?;
                let mut dose = vec![std::mem::replace(&mut head, tank)];
                dose.extend(conditions);
                first.insert(0, dose.join(" "));
                beside += 1;
            }
            Some(tank) => {
                others = conditions;
                tail.push(self.message("if-new-tank", &self.new_tank(tank)?)?);
            }
            None => others = conditions,
        }
        tail.extend(self.particulars(answer)?);
        // What is left in the bottle comes after what the dose does not kill.
        let mut left = answer.beside.left.as_ref().filter(|left| !left.warns());
        for caution in rest {
            if !said.cautions.contains(&caution) {
                tail.push(self.caution(caution)?);
            }
            if caution == Caution::CryptosporidiumSurvives {
                tail.extend(left.take().map(|left| self.left(left)).transpose()?);
            }
        }
        tail.extend(left.map(|left| self.left(left)).transpose()?);
        if let Some(covers) = outcome.covers.filter(|_| answer.topic != Topic::Choose) {
            tail.push(self.covers(covers)?);
            if covers.cryptosporidium != Cover::Yes {
                tail.push(self.plain("boil-kills-all")?);
            }
        }
        tail.extend(self.estimate(answer)?);
        tail.push(self.plain("defer")?);
        let needing = |need: Need| move |text: String| Sentence { text, need };
        // Nobody drinks by a dose whose caution waits for another message.
        let first = first.into_iter().enumerate().map(|(i, text)| Sentence {
            text,
            need: if i >= beside {
                Need::Urgent
            } else {
                Need::Later
            },
        });
        // What holds for other water can only be left out of a dose: the head says which it is for.
        let other = if answer.topic == Topic::Dose {
            Need::Condition
        } else if answer.topic == Topic::Boil {
            // High up the shorter boil is too short.
            Need::Urgent
        } else {
            Need::Later
        };
        let tail = first
            .chain(others.into_iter().map(needing(other)))
            .chain(tail.into_iter().map(needing(Need::Later)))
            .collect();
        Ok(Sentences { head, tail })
    }

    fn new_tank(self, first: &Outcome) -> Written<Args<'static>> {
        Ok(Args::new()
            .text("measure", self.bulk(&first.measure)?)
            .text("wait", self.wait(first)?))
    }

    fn caution(self, caution: Caution) -> Written<String> {
        self.plain(&format!("caution-{}", <&str>::from(caution)))
    }

    fn covers(self, covers: Coverage) -> Written<String> {
        let cover = |cover: Cover| self.plain(&format!("cover-{}", <&str>::from(cover)));
        self.message(
            "covers",
            &Args::new()
                .text("bacteria", cover(covers.bacteria)?)
                .text("viruses", cover(covers.viruses)?)
                .text("giardia", cover(covers.giardia)?)
                .text("cryptosporidium", cover(covers.cryptosporidium)?),
        )
    }

    fn head(self, answer: &Answer, said: &mut Said) -> Written<String> {
        match &answer.outcome.detail {
            Detail::Choice(_) => self.choose_head(answer),
            Detail::Dilution(solution) => self.dilute_head(answer, solution, said),
            Detail::JarTest(finding) => self.jar_head(answer, finding, said),
            Detail::Residual(finding) => self.residual_head(answer, finding, said),
            Detail::Storage(storage) => self.storage_head(answer, storage, said),
            Detail::Supply(supply) => self.supply_head(answer, supply),
            Detail::Well(well) => self.well_head(answer, well, said),
            Detail::Plain if answer.topic == Topic::Boil => self.boil_head(answer, said),
            Detail::Plain if answer.topic == Topic::Filter => self.filter_head(answer, said),
            Detail::Plain if answer.topic == Topic::Sun => self.sun_head(answer, said),
            Detail::Plain if answer.topic == Topic::Illness => {
                said.cautions
                    .extend([Caution::DangerSigns, Caution::Rehydrate]);
                let key = if answer.extra.contains(&Extra::Danger) {
                    "illness-danger"
                } else {
                    "illness"
                };
                self.plain(key)
            }
            Detail::Plain => self.dose_head(answer, said),
        }
    }

    /// What belongs to one kind of answer only.
    fn particulars(self, answer: &Answer) -> Written<Vec<String>> {
        match &answer.outcome.detail {
            Detail::Choice(choice) => {
                let reason: &str = choice.reason.into();
                Ok(vec![self.plain(&format!("reason-{reason}"))?])
            }
            Detail::Residual(finding) => self.residual_more(finding),
            Detail::Storage(storage) => self.storage_more(storage),
            Detail::Supply(supply) => self.supply_more(answer, supply),
            Detail::Well(well) => self.well_more(answer, well),
            Detail::Dilution(_) | Detail::JarTest(_) => Ok(Vec::new()),
            Detail::Plain if answer.topic == Topic::Illness => Ok(vec![
                self.plain("illness-feeding")?,
                self.plain("illness-water")?,
            ]),
            Detail::Plain => Ok(Vec::new()),
        }
    }

    /// What was noticed, promised or counted beside the answer itself.
    fn beside(self, answer: &Answer) -> Written<Vec<String>> {
        let mut sentences = Vec::new();
        if let Some(reminder) = &answer.beside.reminder {
            sentences.push(self.will_remind(reminder)?);
        }
        for topic in &answer.beside.seen {
            let name = self.plain(&format!("topic-{}", <&str>::from(*topic)))?;
            sentences.push(self.message("seen", &Args::new().text("topic", name))?);
        }
        if let Some(left) = answer.beside.left.as_ref().filter(|left| left.warns()) {
            sentences.push(self.left(left)?);
        }
        for extra in &answer.extra {
            match extra {
                // The head says so already.
                Extra::Danger | Extra::FromMemory | Extra::NewTank => {}
                Extra::LowerFigure | Extra::OldBottle | Extra::SeeHealthWorker => {
                    sentences.push(self.plain(&format!("extra-{}", <&str>::from(*extra)))?);
                }
            }
        }
        Ok(sentences)
    }

    pub(super) fn echo(self, answer: &Answer, assumption: Assumption) -> Written<String> {
        let facts = &answer.facts;
        let system = facts.volume_system.unwrap_or_default();
        let volume = self.volume(facts.volume_l.unwrap_or_default(), system)?;
        let clarity = match facts.clarity {
            Some(clarity) => self.plain(&format!("clarity-{}", <&str>::from(clarity)))?,
            None if assumption == Assumption::Said => self.plain("clarity-assumed")?,
            None => String::new(),
        };
        let warmth = match (facts.temperature_c, facts.chill) {
            (Some(celsius), _) => self.message(
                "warmth-celsius",
                &Args::new().text("celsius", self.figure(celsius, 1)),
            )?,
            (None, Some(_)) => self.plain("warmth-cold")?,
            (None, None) => String::new(),
        };
        let product = match facts.product {
            Some(product) => self.product(product)?,
            None => String::new(),
        };
        let key = if answer.extra.contains(&Extra::FromMemory) {
            "echo-remembered"
        } else {
            "echo"
        };
        self.message(
            key,
            &Args::new()
                .text("volume", volume)
                .text("clarity", clarity)
                .text("warmth", warmth)
                .text("product", product)
                .text("label", self.label(facts)?),
        )
    }

    fn dose_head(self, answer: &Answer, said: &mut Said) -> Written<String> {
        let outcome = &answer.outcome;
        let cloudy = answer.facts.clarity == Some(Clarity::Cloudy);
        if cloudy {
            said.cautions.push(Caution::StrainFirst);
        }
        let mut args = Args::new()
            .text("echo", self.echo(answer, said.room.assumption)?)
            .text("wait", self.wait(outcome)?);
        let kind = match &outcome.measure {
            Measure::ByLabel | Measure::Nothing => "label",
            Measure::Liquid(liquid) => {
                let measure = match said.room.measures {
                    Measures::One => self.narrow(*liquid)?,
                    Measures::Two => self.liquid(*liquid)?,
                };
                args = args.text("measure", measure);
                "liquid"
            }
            Measure::Tablets(count) => {
                args = args.text("measure", self.tablets(*count)?);
                "tablets"
            }
            Measure::Powder(powder) => match powder.stock {
                None => {
                    args = args.text("measure", self.grams(powder.grams)?);
                    "powder"
                }
                Some(stock) => {
                    let litre = self.message(
                        "volume-litres",
                        &Args::new().text("value", self.figure(1.0, 0)),
                    )?;
                    args = args
                        .text("grams", self.grams(stock.grams_per_litre)?)
                        .text("litres", litre)
                        .text("percent", self.figure(1.0, 0))
                        .text("measure", self.by_syringe(stock.add)?);
                    "stock"
                }
            },
        };
        let suffix = if cloudy { "-cloudy" } else { "" };
        self.message(&format!("head-{kind}{suffix}"), &args)
    }

    /// The dose in all its measures, where the head had room for one.
    fn measures_later(self, answer: &Answer, room: Room) -> Written<Vec<String>> {
        match (&answer.outcome.measure, room.measures) {
            (Measure::Liquid(liquid), Measures::One) if answer.topic == Topic::Dose => {
                let measure = self.liquid(*liquid)?;
                if measure == self.narrow(*liquid)? {
                    return Ok(Vec::new());
                }
                let args = Args::new().text("measure", measure);
                Ok(vec![self.message("measure-later", &args)?])
            }
            _ => Ok(Vec::new()),
        }
    }

    fn boil_head(self, answer: &Answer, said: &mut Said) -> Written<String> {
        let cloudy = answer.facts.clarity == Some(Clarity::Cloudy);
        if cloudy {
            said.cautions.push(Caution::StrainFirst);
        }
        let key = if cloudy {
            "head-boil-cloudy"
        } else {
            "head-boil"
        };
        self.message(key, &Args::new().text("wait", self.wait(&answer.outcome)?))
    }

    fn sun_head(self, answer: &Answer, said: &mut Said) -> Written<String> {
        said.cautions
            .extend([Caution::BottleSize, Caution::NotInRain, Caution::TwoDays]);
        let size = self.message(
            "volume-litres",
            &Args::new().text(
                "value",
                self.figure(crate::treatment::SUN_BOTTLE_MAX_LITRES, 1),
            ),
        )?;
        let mut args = Args::new()
            .text("size", size)
            .text("wait", self.wait(&answer.outcome)?);
        let key = match answer.facts.sky {
            Some(Sky::Rain) => "head-sun-rain",
            Some(Sky::Sunny | Sky::Cloudy) => "head-sun",
            None => {
                if let Some(sunny) = &answer.if_sunny {
                    args = args.text("sunny", self.wait(sunny)?);
                }
                "head-sun-unsure"
            }
        };
        self.message(key, &args)
    }

    fn filter_head(self, answer: &Answer, said: &mut Said) -> Written<String> {
        let covers = answer.outcome.covers.unwrap_or(Coverage::NOTHING);
        said.cautions.push(Caution::PoreUnknown);
        let mut stops = Vec::new();
        let mut passes = Vec::new();
        for (key, cover) in [
            ("organism-bacteria", covers.bacteria),
            ("organism-giardia", covers.giardia),
            ("organism-cryptosporidium", covers.cryptosporidium),
            ("organism-viruses", covers.viruses),
        ] {
            let name = self.plain(key)?;
            match cover {
                Cover::Yes => stops.push(name),
                Cover::Partly => {
                    stops.push(self.message("organism-some", &Args::new().text("what", name))?);
                }
                Cover::No => passes.push(name),
            }
        }
        let list = |items: &[String], key: &str, join: Join| -> Written<String> {
            if items.is_empty() {
                return Ok(String::new());
            }
            self.message(key, &Args::new().text("list", self.joined(items, join)?))
        };
        let passes_key = if stops.is_empty() {
            "filter-passes-only"
        } else {
            "filter-passes-after-stops"
        };
        let args = Args::new()
            .text("stops", list(&stops, "filter-stops", Join::And)?)
            .text("passes", list(&passes, passes_key, Join::Or)?);
        match answer.facts.pore_um {
            Some(pore) => self.message("head-filter", &args.text("pore", self.figure(pore, 4))),
            None => self.message("head-filter-unknown", &args),
        }
    }

    fn choose_head(self, answer: &Answer) -> Written<String> {
        let rank = |methods: &Vec<AtHand>| -> Written<String> {
            let names: Vec<String> = methods
                .iter()
                .map(|method| self.method(*method))
                .collect::<Written<_>>()?;
            match names.as_slice() {
                [one, two] => self.message(
                    "method-pair",
                    &Args::new()
                        .text("one", one.as_str())
                        .text("two", two.as_str()),
                ),
                others => self.list(others),
            }
        };
        let mut ranks = answer.outcome.methods().iter();
        let first = match ranks.next() {
            Some(methods) => rank(methods)?,
            None => self.method(AtHand::Fire)?,
        };
        let args = Args::new().text("first", first);
        if answer.facts.have.is_empty() {
            return self.message("head-choose-nothing", &args);
        }
        match ranks.next() {
            Some(second) => self.message("head-choose-then", &args.text("second", rank(second)?)),
            None => self.message("head-choose", &args),
        }
    }

    /// What holds if the water is otherwise than assumed.
    fn conditions(self, answer: &Answer, said: &mut Said) -> Written<Vec<String>> {
        if answer.topic == Topic::Choose && boils_first(&answer.outcome) {
            // The best of them can be done at once, without another question.
            let args = Args::new().text("wait", self.wait(&answer.outcome)?);
            return Ok(vec![self.message("head-boil", &args)?]);
        }
        if answer.topic == Topic::Boil {
            return self.boil_conditions(answer, said);
        }
        if answer.topic == Topic::Sun && answer.facts.sky != Some(Sky::Rain) {
            return Ok(vec![self.plain("fill-and-shake")?]);
        }
        if answer.topic != Topic::Dose {
            return Ok(Vec::new());
        }
        let base = &answer.outcome;
        let differs = |other: &&Outcome| other.measure != base.measure || other.wait != base.wait;
        let cloudy = answer.if_cloudy.as_ref().filter(differs);
        let cold = answer.if_cold.as_ref().filter(differs);
        if cold.is_some() {
            said.cautions.push(Caution::ColdTakesLonger);
        }
        let args = |outcome: &Outcome| -> Written<Args<'static>> {
            let measure = self.measure(&outcome.measure)?.unwrap_or_default();
            Ok(Args::new()
                .text("measure", measure)
                .text("wait", self.wait(outcome)?))
        };
        if let (Some(cloudy), Some(cold)) = (cloudy, cold)
            && cloudy.measure == cold.measure
            && self.measure(&cloudy.measure)?.is_some()
        {
            let both = args(cloudy)?;
            return Ok(vec![if cloudy.wait == cold.wait {
                self.message("if-cloudy-or-cold-same", &both)?
            } else {
                self.message(
                    "if-cloudy-or-cold",
                    &both.text("coldwait", self.wait(cold)?),
                )?
            }]);
        }
        let mut sentences = Vec::new();
        if let Some(cloudy) = cloudy {
            sentences.push(self.message("if-cloudy", &args(cloudy)?)?);
        }
        if let Some(cold) = cold {
            let key = if cold.measure == base.measure {
                "if-cold-wait"
            } else {
                "if-cold"
            };
            sentences.push(self.message(key, &args(cold)?)?);
        }
        Ok(sentences)
    }

    fn boil_conditions(self, answer: &Answer, said: &mut Said) -> Written<Vec<String>> {
        if let Some(celsius) = answer.outcome.boiling_point_c
            && let Some(altitude) = answer.facts.altitude_m
        {
            return Ok(vec![
                self.message(
                    "boiling-point",
                    &Args::new()
                        .text("altitude", self.figure(altitude, 0))
                        .text("celsius", self.figure(celsius, 0)),
                )?,
            ]);
        }
        let Some(high) = &answer.if_high else {
            return Ok(Vec::new());
        };
        said.cautions.push(Caution::HigherBoilLonger);
        Ok(vec![
            self.message(
                "if-high",
                &Args::new()
                    .text(
                        "altitude",
                        self.figure(crate::treatment::BOIL_LONGER_ABOVE_METRES, 0),
                    )
                    .text("wait", self.wait(high)?),
            )?,
        ])
    }

    /// Sources by title and year, and the figures used.
    pub(super) fn why(self, answer: &Answer) -> Written<String> {
        let outcome = &answer.outcome;
        let dose = match outcome.dose {
            Some(dose) => {
                let mg = self.figure(dose.mg_per_litre(), 1);
                self.message("why-dose", &Args::new().text("mg", mg))?
            }
            None if answer.topic == Topic::Boil => self.plain("why-boil")?,
            None => String::new(),
        };
        let wait = match (outcome.dose, outcome.wait_basis) {
            (None, _) => String::new(),
            (Some(_), _) if answer.topic != Topic::Dose => String::new(),
            (Some(_), WaitBasis::Rule) => self.plain("why-wait-rule")?,
            (Some(_), WaitBasis::RuleTemperatureUnknown) => self.plain("why-wait-unknown")?,
            (Some(_), WaitBasis::ColdWater) => self.plain("why-wait-cold")?,
            (Some(_), WaitBasis::ContactTime(ct)) => self.message(
                "why-wait-ct",
                &Args::new()
                    .text("reached", self.figure(ct.reached, 0))
                    .text("needed", self.figure(ct.needed, 0))
                    .text("residual", self.figure(ct.residual, 1)),
            )?,
        };
        let logs = match &outcome.logs {
            Some(logs)
                if answer.topic == Topic::Dose
                    // What cloudy water leaves of a dose nobody knows.
                    && answer.facts.clarity != Some(Clarity::Cloudy) =>
            {
                self.message(
                    "why-logs",
                    &Args::new()
                        .text("reached", self.figure(logs.contact.reached, 0))
                        .text("needed", self.figure(logs.contact.needed, 0))
                        .text("residual", self.figure(logs.contact.residual, 1))
                        .text("celsius", self.figure(logs.celsius, 0))
                        .text("ph", self.figure(logs.ph, 1))
                        .text("giardia", self.figure(logs.giardia, 1))
                        .text("viruses", self.figure(logs.viruses, 1)),
                )?
            }
            Some(_) | None => String::new(),
        };
        let mut sources = Vec::new();
        for source in outcome.sources.iter().take(SOURCES_TOLD) {
            sources.push(self.source(*source)?);
        }
        self.message(
            "why",
            &Args::new()
                .text("dose", dose)
                .text("wait", wait)
                .text("logs", logs)
                .text("sources", sources.join("; ")),
        )
        .map(|text| text.trim().to_owned())
    }

    pub(super) fn source(self, source: Source) -> Written<String> {
        let Some(record) = source.record() else {
            return self.plain("source-common");
        };
        let args = Args::new()
            .text("title", record.title.as_str())
            .text("publisher", record.publisher.as_str());
        match (record.status, record.year) {
            (Status::CommonPractice, _) => self.plain("source-common"),
            (Status::Memory, _) => self.message("source-memory", &args),
            (_, Some(year)) => {
                self.message("source-published", &args.text("year", year.to_string()))
            }
            (_, None) => self.message("source-undated", &args),
        }
    }
}

fn boils_first(outcome: &Outcome) -> bool {
    outcome.wait.is_some()
        && outcome
            .methods()
            .first()
            .is_some_and(|methods| methods.contains(&AtHand::Fire))
}

/// Cautions that come before anything about other water.
fn is_urgent(caution: Caution) -> bool {
    match caution {
        Caution::AbsolutePore
        | Caution::IodineUnsuitable
        | Caution::NotInRain
        | Caution::SecondMethod
        | Caution::Sewage
        | Caution::TabletTooStrong
        | Caution::WeakImmunityBoil => true,
        Caution::BottleSize
        | Caution::CleanTankFirst
        | Caution::CoolAndDark
        | Caution::DangerSigns
        | Caution::FreshDaily
        | Caution::GlovesAndAir
        | Caution::KeepFromChildren
        | Caution::KeepTreating
        | Caution::LetStand
        | Caution::NarrowNeck
        | Caution::NeverMix
        | Caution::NotForDrinking
        | Caution::NotUntilPumped
        | Caution::Rehydrate
        | Caution::RetestLater
        | Caution::StirTank
        | Caution::WellClearFirst
        | Caution::WellPh
        | Caution::ChemicalsStay
        | Caution::ColdTakesLonger
        | Caution::CryptosporidiumSurvives
        | Caution::FreshAir
        | Caution::GiardiaPartly
        | Caution::HigherBoilLonger
        | Caution::LabelFirst
        | Caution::LeptospiraPasses
        | Caution::LowerFigure
        | Caution::MedicalHelp
        | Caution::NoShorterWait
        | Caution::NoVomiting
        | Caution::OldBottle
        | Caution::PoreUnknown
        | Caution::PrintTest
        | Caution::RinseWithWater
        | Caution::SmellCheck
        | Caution::SporesSurvive
        | Caution::StrainFirst
        | Caution::TooMurky
        | Caution::TwoDays
        | Caution::UnscentedOnly
        | Caution::VirusesPass => false,
    }
}
