//! The JSON of the contract: serializable twins of the inner types.
//!
//! In: requests and outcomes.
//! Out: what `matone ask --jsonl` prints.
//! Inner types are not serialized, so that they can change without changing the contract.

mod detail;

use serde::{Deserialize, Serialize};

pub use detail::*;

use crate::dialogue::{Answer, Question, Say};
use crate::request::{Facts, Request, Topic};
use crate::treatment::{
    self, Caution, FirstAid, LastResort, LiquidMeasure, Measure, Outcome, WaitBasis,
};

/// `request` of one line out: absent fields were not said.
#[derive(Debug, Clone, PartialEq, Default, Serialize)]
#[expect(missing_docs, reason = "the names are the contract's")]
pub struct RequestJson {
    pub topic: &'static str,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub product: Option<&'static str>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub strength_percent: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub tablet_mg: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub volume_l: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub clarity: Option<&'static str>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub temperature_c: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub ph: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub sewage: Option<bool>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub chemical: Option<bool>,
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub person: Vec<&'static str>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub altitude_m: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub sky: Option<&'static str>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub pore_um: Option<f64>,
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub have: Vec<&'static str>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub change: Option<&'static str>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub residual_mg_per_l: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub minutes: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub diameter_m: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub water_depth_m: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub target_percent: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub stock_ml: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub stock_g: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub tablets: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub people: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub days: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub opened: Option<String>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub set_lang: Option<String>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub set_units: Option<&'static str>,
}

impl From<&Request> for RequestJson {
    fn from(request: &Request) -> Self {
        let Facts {
            product,
            strength_percent,
            tablet_mg,
            label_litres: _,
            volume_l,
            volume_system: _,
            clarity,
            temperature_c,
            chill: _,
            ph,
            sewage,
            chemical,
            person,
            altitude_m,
            height: _,
            sky,
            pore_um,
            have,
            change,
            residual_mg_per_l,
            minutes,
            diameter_m,
            water_depth_m,
            target_percent,
            purpose: _,
            taken: _,
            nose: _,
            outbreak: _,
            jars: _,
            jar_l: _,
            asks_jar_method: _,
            patients: _,
            litres_each: _,
            each_l: _,
            each_in: _,
            age_days: _,
            stock_ml,
            stock_g,
            tablets,
            people,
            days,
            opened,
            set_lang,
            set_units,
        } = &request.facts;
        Self {
            topic: request.topic.into(),
            product: product.map(Into::into),
            strength_percent: *strength_percent,
            tablet_mg: *tablet_mg,
            volume_l: *volume_l,
            clarity: clarity.map(Into::into),
            temperature_c: *temperature_c,
            ph: *ph,
            sewage: sewage.then_some(true),
            chemical: chemical.then_some(true),
            person: person.iter().map(Into::into).collect(),
            altitude_m: *altitude_m,
            sky: sky.map(Into::into),
            pore_um: *pore_um,
            have: have.iter().map(|thing| thing.code()).collect(),
            change: change.map(Into::into),
            residual_mg_per_l: *residual_mg_per_l,
            minutes: *minutes,
            diameter_m: *diameter_m,
            water_depth_m: *water_depth_m,
            target_percent: *target_percent,
            stock_ml: *stock_ml,
            stock_g: *stock_g,
            tablets: *tablets,
            people: *people,
            days: *days,
            opened: opened.map(|date| date.to_string()),
            set_lang: set_lang.clone(),
            set_units: set_units.map(Into::into),
        }
    }
}

/// `answer` of one line out.
#[derive(Debug, Clone, PartialEq, Default, Serialize)]
#[expect(missing_docs, reason = "the names are the contract's")]
pub struct AnswerJson {
    pub dose_ml: Option<f64>,
    pub drops: Option<u32>,
    pub grams: Option<f64>,
    pub tablets: Option<u32>,
    pub dose_mg_per_l: Option<f64>,
    pub wait_min: Option<u64>,
    pub covers: Option<CoversJson>,
    pub cautions: Vec<&'static str>,
    pub sources: Vec<&'static str>,
    /// A kitchen measure that holds as much.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub spoon: Option<SpoonJson>,
    /// Powder in a 1% stock solution, where the grams are too few to weigh.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub stock: Option<StockJson>,
    /// The same for cloudy water, where nobody said how it looks.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub if_cloudy: Option<VariantJson>,
    /// The same for cold water, where nobody said how warm it is.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub if_cold: Option<VariantJson>,
    /// The same under a bright sky.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub if_sunny: Option<VariantJson>,
    /// The same high up.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub if_high: Option<VariantJson>,
    /// The first filling of a new or dirty tank; nobody drinks it.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub if_new_tank: Option<VariantJson>,
    /// Height from which it is longer.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub high_above_m: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub boiling_point_c: Option<f64>,
    /// Contact time asked and reached, mg·min/L, where it decides the wait.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub contact_time: Option<ContactTimeJson>,
    /// Greatest bottle for the sun.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub bottle_max_l: Option<f64>,
    /// Proposals, best first; methods that belong together share one.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub methods: Vec<Vec<&'static str>>,
    /// Minutes of rinsing.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub rinse_min: Option<u32>,
    /// Drops in each litre, of the last resort.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub drops_per_litre: Option<u32>,
    /// What belongs to one kind of answer only.
    #[serde(flatten)]
    pub detail: DetailJson,
}

/// Cover by class of organism.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[expect(missing_docs, reason = "the names are the contract's")]
pub struct CoversJson {
    pub bacteria: &'static str,
    pub viruses: &'static str,
    pub giardia: &'static str,
    pub cryptosporidium: &'static str,
}

/// Spoons.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[expect(missing_docs, reason = "the names say it")]
pub struct SpoonJson {
    pub spoon: &'static str,
    pub count: f64,
}

/// A stock solution.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[expect(missing_docs, reason = "the names say it")]
pub struct StockJson {
    pub percent: f64,
    pub grams_per_litre: f64,
    pub add_ml: f64,
    pub add_drops: u32,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub spoon: Option<SpoonJson>,
}

/// An answer under another condition.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[expect(missing_docs, reason = "the names say it")]
pub struct VariantJson {
    pub dose_ml: Option<f64>,
    pub drops: Option<u32>,
    pub grams: Option<f64>,
    pub tablets: Option<u32>,
    pub wait_min: Option<u64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub spoon: Option<SpoonJson>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub stock: Option<StockJson>,
}

/// Contact time.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[expect(missing_docs, reason = "the names say it")]
pub struct ContactTimeJson {
    pub needed: f64,
    pub reached: f64,
    pub residual_mg_per_l: f64,
}

struct MeasureJson {
    dose_ml: Option<f64>,
    drops: Option<u32>,
    grams: Option<f64>,
    tablets: Option<u32>,
    spoon: Option<SpoonJson>,
    stock: Option<StockJson>,
}

/// Three decimals are finer than any hand; binary noise behind them is not for a contract.
fn rounded(value: f64) -> f64 {
    (value * 1000.0).round() / 1000.0
}

fn spoon(liquid: &LiquidMeasure) -> Option<SpoonJson> {
    liquid.spoon.map(|measure| SpoonJson {
        spoon: measure.spoon.into(),
        count: measure.count,
    })
}

impl From<&Measure> for MeasureJson {
    fn from(measure: &Measure) -> Self {
        let nothing = Self {
            dose_ml: None,
            drops: None,
            grams: None,
            tablets: None,
            spoon: None,
            stock: None,
        };
        match measure {
            Measure::ByLabel | Measure::Nothing => nothing,
            Measure::Liquid(liquid) => Self {
                dose_ml: Some(rounded(liquid.ml)),
                // An order for a camp is beyond what is counted in drops.
                drops: Some(liquid.drops).filter(|drops| *drops < u32::MAX),
                spoon: spoon(liquid),
                ..nothing
            },
            Measure::Powder(powder) => Self {
                grams: Some(rounded(powder.grams)),
                stock: powder.stock.map(|stock| StockJson {
                    percent: 1.0,
                    grams_per_litre: rounded(stock.grams_per_litre),
                    add_ml: rounded(stock.add.ml),
                    add_drops: stock.add.drops,
                    spoon: spoon(&stock.add),
                }),
                ..nothing
            },
            Measure::Tablets(count) => Self {
                tablets: Some(*count),
                ..nothing
            },
        }
    }
}

fn minutes(outcome: &Outcome) -> Option<u64> {
    outcome.wait.map(|wait| wait.as_secs().div_ceil(60))
}

impl From<&Outcome> for VariantJson {
    fn from(outcome: &Outcome) -> Self {
        let MeasureJson {
            dose_ml,
            drops,
            grams,
            tablets,
            spoon,
            stock,
        } = MeasureJson::from(&outcome.measure);
        Self {
            dose_ml,
            drops,
            grams,
            tablets,
            wait_min: minutes(outcome),
            spoon,
            stock,
        }
    }
}

impl From<&Answer> for AnswerJson {
    fn from(answer: &Answer) -> Self {
        let outcome = &answer.outcome;
        let MeasureJson {
            dose_ml,
            drops,
            grams,
            tablets,
            spoon,
            stock,
        } = MeasureJson::from(&outcome.measure);
        let mut cautions: Vec<&'static str> = outcome.cautions.iter().map(Into::into).collect();
        cautions.extend(answer.extra.iter().map(<&'static str>::from));
        let variant = |outcome: &Option<Outcome>| outcome.as_ref().map(VariantJson::from);
        Self {
            dose_ml,
            drops,
            grams,
            tablets,
            dose_mg_per_l: outcome.dose.map(|dose| rounded(dose.mg_per_litre())),
            wait_min: minutes(outcome),
            covers: outcome.covers.map(|covers| CoversJson {
                bacteria: covers.bacteria.into(),
                viruses: covers.viruses.into(),
                giardia: covers.giardia.into(),
                cryptosporidium: covers.cryptosporidium.into(),
            }),
            cautions,
            sources: outcome.sources.iter().map(|source| source.code()).collect(),
            spoon,
            stock,
            if_cloudy: variant(&answer.if_cloudy),
            if_cold: variant(&answer.if_cold),
            if_sunny: variant(&answer.if_sunny),
            if_high: variant(&answer.if_high),
            if_new_tank: variant(&answer.if_new_tank),
            high_above_m: answer
                .if_high
                .as_ref()
                .map(|_| treatment::BOIL_LONGER_ABOVE_METRES),
            boiling_point_c: outcome.boiling_point_c.map(rounded),
            contact_time: match outcome.wait_basis {
                WaitBasis::ContactTime(ct) => Some(ContactTimeJson {
                    needed: rounded(ct.needed),
                    reached: rounded(ct.reached),
                    residual_mg_per_l: rounded(ct.residual),
                }),
                WaitBasis::ColdWater | WaitBasis::Rule | WaitBasis::RuleTemperatureUnknown => None,
            },
            bottle_max_l: (answer.topic == Topic::Sun).then_some(treatment::SUN_BOTTLE_MAX_LITRES),
            methods: outcome
                .methods()
                .iter()
                .map(|rank| rank.iter().map(|method| method.code()).collect())
                .collect(),
            rinse_min: None,
            drops_per_litre: None,
            detail: DetailJson::from(answer),
        }
    }
}

impl From<&FirstAid> for AnswerJson {
    fn from(aid: &FirstAid) -> Self {
        Self {
            cautions: aid.cautions.iter().map(Into::into).collect(),
            sources: aid.sources.iter().map(|source| source.code()).collect(),
            rinse_min: Some(aid.rinse_min),
            ..Self::default()
        }
    }
}

impl From<&LastResort> for AnswerJson {
    fn from(resort: &LastResort) -> Self {
        Self {
            drops: resort.drops,
            drops_per_litre: Some(resort.drops_per_litre),
            wait_min: Some(u64::from(resort.wait_min)),
            cautions: vec![Caution::SmellCheck.into()],
            sources: vec![resort.source.code()],
            ..Self::default()
        }
    }
}

/// The answer, the missing fields and the refusal that a reply stands for.
#[must_use]
pub fn verdict(say: &Say) -> (Option<AnswerJson>, Vec<&'static str>, Option<&'static str>) {
    let missing = |question: &Question| question.missing.iter().map(Into::into).collect();
    match say {
        Say::Adjusted(answer, _)
        | Say::Answer(answer)
        | Say::MoreOf(answer)
        | Say::WellHurry(answer)
        | Say::WhyOf(answer) => (Some(AnswerJson::from(answer.as_ref())), Vec::new(), None),
        Say::Ask(question) => (None, missing(question), None),
        Say::CannotAdjust(_, refusal) | Say::Refused(refusal) => {
            (None, Vec::new(), Some((*refusal).into()))
        }
        Say::FirstAid(aid) => (
            Some(AnswerJson {
                detail: DetailJson {
                    seen: aid.seen.iter().copied().map(Into::into).collect(),
                    ..DetailJson::default()
                },
                ..AnswerJson::from(&treatment::first_aid(aid.product))
            }),
            Vec::new(),
            None,
        ),
        Say::LastResort(resort, _) => (Some(AnswerJson::from(resort)), Vec::new(), None),
        Say::Bottles(lines) => of(DetailJson {
            bottles: lines.iter().map(BottleJson::from).collect(),
            ..DetailJson::default()
        }),
        Say::Kept(kept) => of(DetailJson {
            bottles: vec![BottleJson::from(kept.as_ref())],
            ..DetailJson::default()
        }),
        Say::Undone(line) => of(DetailJson {
            bottles: vec![BottleJson::from(line.as_ref())],
            ..DetailJson::default()
        }),
        Say::WaitIsOver(reminder) | Say::WillRemind(reminder) => of(DetailJson {
            reminder: Some(reminder.into()),
            ..DetailJson::default()
        }),
        // Done as asked: nothing to work out.
        Say::Dropped(_)
        | Say::Forgotten
        | Say::Help
        | Say::OfSolution
        | Say::Set { .. }
        | Say::Started
        | Say::Stopped => of(DetailJson::default()),
        Say::Greeting
        | Say::NotKept(_)
        | Say::NotUnderstood
        | Say::NothingBefore
        | Say::NothingToUndo
        | Say::NothingToWaitFor
        | Say::TooStrong
        | Say::Unsure => (None, Vec::new(), None),
    }
}

/// An answer without a dose.
fn of(detail: DetailJson) -> (Option<AnswerJson>, Vec<&'static str>, Option<&'static str>) {
    let answer = AnswerJson {
        detail,
        ..AnswerJson::default()
    };
    (Some(answer), Vec::new(), None)
}

/// One line in.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
pub struct LineIn {
    /// Who writes; left out, a fresh person.
    pub from: Option<String>,
    /// The message.
    pub text: String,
    /// The person's set language, BCP 47.
    pub lang: Option<String>,
    /// When it came, RFC 3339.
    pub at: Option<jiff::Timestamp>,
}

/// One line out.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct LineOut {
    /// Who wrote; null for a fresh person.
    pub from: Option<String>,
    /// The language of the reply.
    pub lang: String,
    /// What the message said.
    pub request: RequestJson,
    /// What the reply asks for, most needed first.
    pub missing: Vec<&'static str>,
    /// What came from memory.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub remembered: Vec<&'static str>,
    /// What was worked out.
    pub answer: Option<AnswerJson>,
    /// Why there is no answer.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub refused: Option<&'static str>,
    /// The whole text.
    pub reply: String,
    /// What each SMS carries.
    pub parts: Vec<String>,
    /// How.
    pub encoding: &'static str,
}

/// A line that could not be answered.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct LineError {
    /// What was wrong, and where.
    pub error: String,
}
