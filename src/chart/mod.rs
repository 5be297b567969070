//! A dose chart for a clinic's wall: one printed page that answers without a phone.
//!
//! In: the strengths of the bottles at hand, units, paper, the day, and a locale.
//! Out: a page of HTML that needs nothing beside itself.
//! Promises that every amount, wait, cover and source on it is what [`crate::treatment::treat`]
//! answers for that water, in the words and the rounding of the replies, and that the page reads
//! the same without colour.
//! Does not know the clock, the command line, nor how a dose is worked out.

mod page;

use std::time::Duration;

use jiff::civil::Date;

use crate::locale::Locale;
use crate::quantity::{OutOfLimit, Strength, UnitSystem, Volume, limit, litres_in};
use crate::reply::{CatalogError, ChartPhrases};
use crate::request::{Clarity, Refusal};
use crate::treatment::{
    Agent, Caution, Coverage, DoseOrder, LiquidMeasure, Measure, Order, Outcome, Source, Warmth,
    Water, treat,
};

/// More would make the figures too small for a wall.
pub const STRENGTHS_MAX: usize = 3;

/// What people fetch and keep water in, in litres. A tank of 1000 L and more waits longer: its wait would
/// stand for the whole column.
const LITRES: [f64; 9] = [1.0, 2.0, 5.0, 10.0, 20.0, 50.0, 100.0, 200.0, 500.0];

/// The same in gallons, from a quart to a drum, with every volume that the agencies print.
const GALLONS: [f64; 9] = [0.25, 1.0, 2.0, 4.0, 5.0, 8.0, 10.0, 30.0, 55.0];

/// The cautions that stand on every chart, those that decide whether to use bleach at all first.
pub const CAUTIONS: [Caution; 8] = [
    Caution::TooMurky,
    Caution::WeakImmunityBoil,
    Caution::ChemicalsStay,
    Caution::UnscentedOnly,
    Caution::LabelFirst,
    Caution::OldBottle,
    Caution::NeverMix,
    Caution::KeepFromChildren,
];

/// Why there is no chart.
#[derive(Debug, thiserror::Error)]
pub enum ChartError {
    /// The core answered something else than an amount of liquid for bleach.
    #[error("there is no bleach dose for {litres} L at {percent}%")]
    NoDose {
        /// Of the water.
        litres: f64,
        /// Of the bleach.
        percent: f64,
    },
    /// The core refused to answer.
    #[error("no dose is given: {}", <&str>::from(*.0))]
    Refused(Refusal),
    /// Without a strength there is no dose.
    #[error("a chart needs the % on the bleach label, like --strength 5")]
    NoStrength,
    /// No liquid bleach is so weak or so strong.
    #[error("{0}; write the % that is printed on the bleach label")]
    Strength(#[from] OutOfLimit),
    /// Too many for one page.
    #[error("{0} strengths do not fit on one chart; ask for up to {STRENGTHS_MAX} at a time")]
    TooMany(usize),
    /// The locale lacks a message.
    #[error("{0}")]
    Words(#[from] CatalogError),
}

/// The strengths on one chart: one to [`STRENGTHS_MAX`], of liquid bleach, the weakest first.
#[derive(Debug, Clone, PartialEq)]
pub struct Strengths(Vec<Strength>);

impl Strengths {
    /// Checks the percentages on the labels. One that is given twice counts once.
    ///
    /// # Errors
    /// [`ChartError`] when there is none, too many, or one that liquid bleach does not come in.
    pub fn from_percents(percents: &[f64]) -> Result<Self, ChartError> {
        let mut checked = Vec::new();
        for percent in percents {
            checked.push(limit::BLEACH.check(*percent)?);
        }
        checked.sort_by(f64::total_cmp);
        checked.dedup();
        if checked.is_empty() {
            return Err(ChartError::NoStrength);
        }
        if checked.len() > STRENGTHS_MAX {
            return Err(ChartError::TooMany(checked.len()));
        }
        let strengths = checked.into_iter().map(Strength::from_percent);
        Ok(Self(strengths.collect::<Result<_, _>>()?))
    }
}

/// The sheet in the printer.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Paper {
    /// 210 by 297 mm.
    A4,
    /// 148 by 210 mm.
    A5,
}

/// What is asked for.
#[derive(Debug, Clone, PartialEq)]
pub struct Chart {
    /// Of the bottles at hand.
    pub strengths: Strengths,
    /// Of the containers.
    pub units: UnitSystem,
    /// To print on.
    pub paper: Paper,
    /// The day that is printed on it.
    pub day: Date,
}

impl Chart {
    /// Writes the page in a language; `tag` is the language's own.
    ///
    /// # Errors
    /// [`ChartError`] when the locale lacks a message of the chart, which a test rules out for
    /// the embedded ones, or the core gives no dose.
    pub fn page(&self, tag: &str, locale: &Locale) -> Result<String, ChartError> {
        let figures = Figures::of(self)?;
        Ok(page::write(self, &figures, tag, ChartPhrases::new(locale))?)
    }
}

/// The water on the chart, one volume a row.
///
/// # Errors
/// [`OutOfLimit`] never, as a test shows.
pub fn volumes(units: UnitSystem) -> Result<Vec<Volume>, OutOfLimit> {
    let (counts, litres) = match units {
        UnitSystem::Imperial => (GALLONS, litres_in::IMPERIAL_GALLON),
        UnitSystem::Metric => (LITRES, 1.0),
        UnitSystem::Us => (GALLONS, litres_in::US_GALLON),
    };
    counts
        .into_iter()
        .map(|count| Volume::from_litres(count * litres))
        .collect()
}

/// Water of which nothing else is known.
const CLEAR: Water = Water {
    clarity: Some(Clarity::Clear),
    warmth: Warmth::Unknown,
    ph: None,
    sewage: crate::treatment::Sewage::NotSaid,
};

const CLOUDY: Water = Water {
    clarity: Some(Clarity::Cloudy),
    ..CLEAR
};

/// Cloudy as well, so that its dose and wait hold for either and for both.
const COLD: Water = Water {
    warmth: Warmth::Cold,
    ..CLOUDY
};

/// All figures of a chart.
struct Figures {
    rows: Vec<Row>,
    /// A strength each.
    waits: Vec<Waits>,
    /// What holds for all of them.
    covers: Option<Coverage>,
    sources: Vec<Source>,
}

/// One volume of water.
struct Row {
    volume: Volume,
    /// A strength each.
    amounts: Vec<Amounts>,
}

/// What one volume takes of one bottle.
struct Amounts {
    clear: LiquidMeasure,
    cloudy_or_cold: LiquidMeasure,
}

/// The longest wait of a column: one that is right for every row.
#[derive(Clone, Copy, Default)]
struct Waits {
    clear: Duration,
    cloudy: Duration,
    cold: Duration,
}

impl Figures {
    fn of(chart: &Chart) -> Result<Self, ChartError> {
        let strengths = &chart.strengths.0;
        let mut figures = Self {
            rows: Vec::new(),
            waits: vec![Waits::default(); strengths.len()],
            covers: None,
            sources: Vec::new(),
        };
        for volume in volumes(chart.units)? {
            let mut amounts = Vec::new();
            for (strength, waits) in strengths.iter().zip(&mut figures.waits) {
                let answer = |water| {
                    let order = DoseOrder {
                        agent: Agent::Bleach(*strength),
                        volume,
                        system: chart.units,
                        water,
                        people: Vec::new(),
                    };
                    Answer::to(&order, *strength)
                };
                let (clear, cloudy, cold) = (answer(CLEAR)?, answer(CLOUDY)?, answer(COLD)?);
                amounts.push(Amounts {
                    clear: clear.amount,
                    cloudy_or_cold: cold.amount,
                });
                waits.clear = waits.clear.max(clear.wait());
                waits.cloudy = waits.cloudy.max(cloudy.wait());
                waits.cold = waits.cold.max(cold.wait());
                for answer in [clear, cloudy, cold] {
                    note(&mut figures.covers, &mut figures.sources, &answer.outcome);
                }
            }
            figures.rows.push(Row { volume, amounts });
        }
        Ok(figures)
    }
}

/// The core's answer for one cell.
struct Answer {
    amount: LiquidMeasure,
    outcome: Outcome,
}

impl Answer {
    fn to(order: &DoseOrder, strength: Strength) -> Result<Self, ChartError> {
        let outcome = treat(&Order::Dose(order.clone())).map_err(ChartError::Refused)?;
        match outcome.measure {
            Measure::Liquid(amount) => Ok(Self { amount, outcome }),
            Measure::ByLabel | Measure::Nothing | Measure::Powder(_) | Measure::Tablets(_) => {
                Err(ChartError::NoDose {
                    litres: order.volume.litres(),
                    percent: strength.percent(),
                })
            }
        }
    }

    fn wait(&self) -> Duration {
        self.outcome.wait.unwrap_or_default()
    }
}

/// The chart claims of each class of germ no more than the weakest of its answers does.
fn note(covers: &mut Option<Coverage>, sources: &mut Vec<Source>, outcome: &Outcome) {
    let these = outcome.covers.unwrap_or(Coverage::NOTHING);
    *covers = Some(covers.map_or(these, |all| Coverage {
        bacteria: all.bacteria.min(these.bacteria),
        viruses: all.viruses.min(these.viruses),
        giardia: all.giardia.min(these.giardia),
        cryptosporidium: all.cryptosporidium.min(these.cryptosporidium),
    }));
    for source in &outcome.sources {
        if !sources.contains(source) {
            sources.push(*source);
        }
    }
}
