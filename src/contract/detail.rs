//! What belongs to one kind of answer only, as JSON.
//!
//! Each figure that a reply may tell stands here under a name of its own.

use serde::Serialize;

use crate::dialogue::{Answer, BottleLine, Kept, LeftLine, Reminder};
use crate::request::Form;
use crate::treatment::{
    Ageing, DecayEstimate, Detail, Dilution, JarFinding, JarVerdict, Logs, Replace,
    ResidualFinding, StorageFinding, SupplyFinding, WellFinding,
};

use super::{MeasureJson, rounded};

/// Further fields of `answer`, each only where it applies.
#[derive(Debug, Clone, PartialEq, Default, Serialize)]
pub struct DetailJson {
    /// A well.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub well: Option<WellJson>,
    /// A solution.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub solution: Option<SolutionJson>,
    /// A chlorine test.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub residual: Option<ResidualJson>,
    /// A jar test.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub jar_test: Option<JarTestJson>,
    /// A stock.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub supply: Option<SupplyJson>,
    /// Keeping water or a product.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub storage: Option<StorageJson>,
    /// Why a method is proposed.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub reason: Option<&'static str>,
    /// Log reductions.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub logs: Option<LogsJson>,
    /// What is left in the remembered bottle.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub left: Option<LeftJson>,
    /// What may be left of its strength.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub estimate: Option<EstimateJson>,
    /// Remembered bottles.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub bottles: Vec<BottleJson>,
    /// A message to come.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub reminder: Option<ReminderJson>,
    /// Topics that the message asked about as well.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub seen: Vec<&'static str>,
}

/// A well.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[expect(missing_docs, reason = "the names say it")]
pub struct WellJson {
    pub water_l: f64,
    pub ready_mg_per_l: f64,
    pub emergency_wait_min: u32,
    pub wall_mg_per_l: f64,
    pub wall_ml: f64,
    pub wall_l: f64,
}

/// A solution.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[expect(missing_docs, reason = "the names say it")]
pub struct SolutionJson {
    pub target_percent: f64,
    pub volume_l: f64,
    pub parts_water: Option<f64>,
    pub water_ml: Option<f64>,
    pub grams_per_litre: Option<f64>,
    pub tablets_per_litre: Option<f64>,
}

/// A chlorine test.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[expect(missing_docs, reason = "the names say it")]
pub struct ResidualJson {
    pub verdict: &'static str,
    pub reading_mg_per_l: Option<f64>,
    pub aim_mg_per_l: f64,
    pub at_use_mg_per_l: f64,
    pub most_mg_per_l: f64,
    pub retest_min: u32,
    pub keeps_h: u32,
    pub well_ready_mg_per_l: f64,
}

/// A jar test.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[expect(missing_docs, reason = "the names say it")]
pub struct JarTestJson {
    pub verdict: &'static str,
    pub aim_mg_per_l: f64,
    pub jar_l: f64,
    pub ml_per_jar: Option<f64>,
    pub ml_per_1000_l: Option<f64>,
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub first_jars_ml: Vec<f64>,
}

/// A stock.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[expect(missing_docs, reason = "the names say it")]
pub struct SupplyJson {
    pub treats_l: f64,
    pub litres_per_person: f64,
    pub drinking_litres_per_person: f64,
    pub people: Option<f64>,
    pub days: Option<f64>,
    pub drinking_people: Option<f64>,
    pub drinking_days: Option<f64>,
    pub bare_ml: Option<f64>,
    pub bare_grams: Option<f64>,
    pub bare_tablets: Option<u32>,
    pub margin_percent: f64,
}

/// Keeping water or a product.
#[derive(Debug, Clone, PartialEq, Default, Serialize)]
#[expect(missing_docs, reason = "the names say it")]
pub struct StorageJson {
    #[serde(skip_serializing_if = "Option::is_none")]
    pub keeps_h: Option<u32>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub rinse_ml_per_l: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub rinse_s: Option<u32>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub replace_months: Option<u32>,
}

/// Log reductions, with what they count on.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[expect(missing_docs, reason = "the names say it")]
pub struct LogsJson {
    pub giardia: f64,
    pub viruses: f64,
    pub celsius: f64,
    pub ph: f64,
    pub ct_reached: f64,
    pub ct_needed: f64,
    pub residual_mg_per_l: f64,
}

/// What is left in a bottle.
#[derive(Debug, Clone, PartialEq, Default, Serialize)]
#[expect(missing_docs, reason = "the names say it")]
pub struct LeftJson {
    #[serde(skip_serializing_if = "Option::is_none")]
    pub ml: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub grams: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub tablets: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub treats_l: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub days: Option<f64>,
}

/// An estimate that no dose counts on.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[expect(missing_docs, reason = "the names say it")]
pub struct EstimateJson {
    pub percent_left: f64,
    pub celsius: f64,
    pub source: &'static str,
}

/// A remembered bottle.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[expect(missing_docs, reason = "the names say it")]
pub struct BottleJson {
    pub product: Option<&'static str>,
    pub strength_percent: Option<f64>,
    pub tablet_mg: Option<f64>,
    pub opened: Option<String>,
    pub left: Option<LeftJson>,
    pub replace: Option<&'static str>,
    pub replace_months: Option<u32>,
}

/// A message to come.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[expect(missing_docs, reason = "the names say it")]
pub struct ReminderJson {
    pub due: String,
    pub wait_min: u64,
}

impl From<&Answer> for DetailJson {
    fn from(answer: &Answer) -> Self {
        let mut json = Self {
            logs: answer.outcome.logs.as_ref().map(LogsJson::from),
            left: answer.beside.left.as_ref().map(LeftJson::from),
            estimate: answer.estimate.as_ref().map(EstimateJson::from),
            reminder: answer.beside.reminder.as_ref().map(ReminderJson::from),
            seen: answer.beside.seen.iter().copied().map(Into::into).collect(),
            ..Self::default()
        };
        match &answer.outcome.detail {
            Detail::Choice(choice) => json.reason = Some(choice.reason.into()),
            Detail::Dilution(solution) => json.solution = Some(solution.into()),
            Detail::JarTest(finding) => json.jar_test = Some(finding.into()),
            Detail::Plain => {}
            Detail::Residual(finding) => json.residual = Some(finding.into()),
            Detail::Storage(storage) => json.storage = Some(storage.into()),
            Detail::Supply(supply) => json.supply = Some(supply.into()),
            Detail::Well(well) => json.well = Some(well.into()),
        }
        json
    }
}

impl From<&WellFinding> for WellJson {
    fn from(well: &WellFinding) -> Self {
        Self {
            water_l: rounded(well.litres),
            ready_mg_per_l: rounded(well.ready_mg_per_l),
            emergency_wait_min: well.emergency_wait_min,
            wall_mg_per_l: rounded(well.wall_mg_per_l),
            wall_ml: rounded(well.wall_ml),
            wall_l: rounded(well.wall_litres),
        }
    }
}

impl From<&Dilution> for SolutionJson {
    fn from(solution: &Dilution) -> Self {
        Self {
            target_percent: rounded(solution.target_percent),
            volume_l: rounded(solution.litres),
            parts_water: solution.parts_water.map(rounded),
            water_ml: solution.water_ml.map(rounded),
            grams_per_litre: solution.grams_per_litre.map(rounded),
            tablets_per_litre: solution.tablets_per_litre.map(rounded),
        }
    }
}

impl From<&ResidualFinding> for ResidualJson {
    fn from(finding: &ResidualFinding) -> Self {
        Self {
            verdict: finding.verdict.into(),
            reading_mg_per_l: finding.reading_mg_per_l.map(rounded),
            aim_mg_per_l: rounded(finding.aim_mg_per_l),
            at_use_mg_per_l: rounded(finding.at_use_mg_per_l),
            most_mg_per_l: rounded(finding.most_mg_per_l),
            retest_min: finding.retest_min,
            keeps_h: finding.keeps_h,
            well_ready_mg_per_l: rounded(finding.well_ready_mg_per_l),
        }
    }
}

impl From<&JarFinding> for JarTestJson {
    fn from(finding: &JarFinding) -> Self {
        let (verdict, ml_per_jar, ml_per_1000_l) = match finding.verdict {
            JarVerdict::AllAbove => ("all-above", None, None),
            JarVerdict::AllBelow => ("all-below", None, None),
            JarVerdict::HowTo { .. } => ("how-to", None, None),
            JarVerdict::Uneven => ("uneven", None, None),
            JarVerdict::Found {
                ml_per_jar,
                ml_per_1000_l,
            } => ("found", Some(ml_per_jar), Some(ml_per_1000_l)),
        };
        Self {
            verdict,
            aim_mg_per_l: rounded(finding.aim_mg_per_l),
            jar_l: rounded(finding.jar_litres),
            ml_per_jar: ml_per_jar.map(rounded),
            ml_per_1000_l: ml_per_1000_l.map(rounded),
            first_jars_ml: match finding.verdict {
                JarVerdict::HowTo { ml } => ml.to_vec(),
                JarVerdict::AllAbove
                | JarVerdict::AllBelow
                | JarVerdict::Found { .. }
                | JarVerdict::Uneven => Vec::new(),
            },
        }
    }
}

impl From<&SupplyFinding> for SupplyJson {
    fn from(supply: &SupplyFinding) -> Self {
        let bare = supply.bare_need.as_ref().map(MeasureJson::from);
        Self {
            treats_l: rounded(supply.treats_litres),
            litres_per_person: rounded(supply.litres_per_person),
            drinking_litres_per_person: rounded(supply.drinking_litres_per_person),
            people: supply.people.map(rounded),
            days: supply.days.map(rounded),
            drinking_people: supply.drinking_people.map(rounded),
            drinking_days: supply.drinking_days.map(rounded),
            bare_ml: bare.as_ref().and_then(|need| need.dose_ml),
            bare_grams: bare.as_ref().and_then(|need| need.grams),
            bare_tablets: bare.as_ref().and_then(|need| need.tablets),
            margin_percent: rounded(supply.margin_percent),
        }
    }
}

impl From<&StorageFinding> for StorageJson {
    fn from(storage: &StorageFinding) -> Self {
        match storage {
            StorageFinding::Product { replace_months } => Self {
                replace_months: *replace_months,
                ..Self::default()
            },
            StorageFinding::Water {
                keeps_h,
                rinse_ml_per_litre,
                rinse_s,
            } => Self {
                keeps_h: Some(*keeps_h),
                rinse_ml_per_l: Some(rounded(*rinse_ml_per_litre)),
                rinse_s: Some(*rinse_s),
                ..Self::default()
            },
        }
    }
}

impl From<&Logs> for LogsJson {
    fn from(logs: &Logs) -> Self {
        Self {
            giardia: rounded(logs.giardia),
            viruses: rounded(logs.viruses),
            celsius: rounded(logs.celsius),
            ph: rounded(logs.ph),
            ct_reached: rounded(logs.contact.reached),
            ct_needed: rounded(logs.contact.needed),
            residual_mg_per_l: rounded(logs.contact.residual),
        }
    }
}

impl From<&LeftLine> for LeftJson {
    fn from(left: &LeftLine) -> Self {
        let amount = Some(rounded(left.amount));
        let form = match left.form {
            Form::Liquid => Self {
                ml: amount,
                ..Self::default()
            },
            Form::Powder => Self {
                grams: amount,
                ..Self::default()
            },
            Form::Tablets => Self {
                tablets: amount,
                ..Self::default()
            },
        };
        Self {
            treats_l: left.treats_litres.map(rounded),
            days: left.days_left.map(f64::floor),
            ..form
        }
    }
}

impl From<&DecayEstimate> for EstimateJson {
    fn from(estimate: &DecayEstimate) -> Self {
        Self {
            percent_left: rounded(estimate.percent_left),
            celsius: rounded(estimate.celsius),
            source: estimate.source.code(),
        }
    }
}

impl From<&Reminder> for ReminderJson {
    fn from(reminder: &Reminder) -> Self {
        Self {
            due: reminder.due.to_string(),
            wait_min: reminder.wait_min,
        }
    }
}

fn bottle(
    bottle: &crate::dialogue::Bottle,
    left: Option<&LeftLine>,
    ageing: Option<&Ageing>,
) -> BottleJson {
    BottleJson {
        product: bottle.product.map(Into::into),
        strength_percent: bottle.strength_percent,
        tablet_mg: bottle.tablet_mg,
        opened: bottle.opened.map(|date| date.to_string()),
        left: left.map(LeftJson::from),
        replace: ageing.map(|ageing| match ageing.replace {
            Replace::Now => "now",
            Replace::NotYet => "not-yet",
            Replace::Soon => "soon",
        }),
        replace_months: ageing.map(|ageing| ageing.replace_months),
    }
}

impl From<&BottleLine> for BottleJson {
    fn from(line: &BottleLine) -> Self {
        bottle(&line.bottle, line.left.as_ref(), line.ageing.as_ref())
    }
}

impl From<&Kept> for BottleJson {
    fn from(kept: &Kept) -> Self {
        bottle(&kept.bottle, kept.left.as_ref(), kept.ageing.as_ref())
    }
}
