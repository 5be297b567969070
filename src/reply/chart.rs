//! The words of the printed chart.
//!
//! In: amounts, waits, covers, sources, a day, and a locale.
//! Out: phrases, each for its own place on the page.
//! Promises the figures, units and rounding of the replies.
//! Does not know the page, nor which doses are on it.

use std::time::Duration;

use jiff::civil::Date;

use crate::locale::Locale;
use crate::quantity::{Strength, UnitSystem, Volume, litres_in};
use crate::treatment::{Caution, Cover, Coverage, LiquidMeasure, Source, Spoon};

use super::catalog::{Args, CatalogError};
use super::phrase::{DROPS_MAX, Phrases};

type Written<T> = Result<T, CatalogError>;

/// Phrases of the chart in one language.
#[derive(Clone, Copy)]
pub(crate) struct ChartPhrases<'a>(Phrases<'a>);

impl<'a> ChartPhrases<'a> {
    pub(crate) const fn new(locale: &'a Locale) -> Self {
        Self(Phrases(locale))
    }

    pub(crate) fn title(self) -> Written<String> {
        self.0.plain("chart-title")
    }

    /// What the table is about.
    pub(crate) fn caption(self) -> Written<String> {
        self.0.plain("chart-caption")
    }

    /// Above the column of volumes.
    pub(crate) fn water(self) -> Written<String> {
        self.0.plain("chart-water")
    }

    /// Above the columns of one bottle.
    pub(crate) fn bottle(self, strength: Strength) -> Written<String> {
        let percent = self.0.figure(strength.percent(), 3);
        self.0
            .message("chart-bottle", &Args::new().text("percent", percent))
    }

    pub(crate) fn clear(self) -> Written<String> {
        self.0.plain("chart-clear")
    }

    pub(crate) fn cloudy_or_cold(self) -> Written<String> {
        self.0.plain("chart-cloudy-or-cold")
    }

    /// Water in the chart's units. A quart is read off a wall more surely than a quarter gallon.
    pub(crate) fn volume(self, volume: Volume, units: UnitSystem) -> Written<String> {
        let litres = volume.litres();
        if units == UnitSystem::Imperial && litres < litres_in::IMPERIAL_GALLON - 1e-9 {
            let quarts = self.0.figure(litres / litres_in::IMPERIAL_GALLON * 4.0, 2);
            return self
                .0
                .message("chart-imperial-quarts", &Args::new().text("value", quarts));
        }
        self.0.volume(litres, units)
    }

    /// One amount in all the ways to measure it, the surest first: drops while they can be
    /// counted, mL, and a spoon where one holds it.
    pub(crate) fn amount(self, liquid: LiquidMeasure) -> Written<Vec<String>> {
        let mut ways = Vec::new();
        if liquid.drops <= DROPS_MAX {
            ways.push(self.0.drops(liquid.drops)?);
        }
        let ml = self.0.figure(liquid.ml, 2);
        ways.push(self.0.message("measure-ml", &Args::new().text("ml", ml))?);
        if let Some(measure) = liquid.spoon {
            let key = match measure.spoon {
                Spoon::Tablespoon => "chart-tablespoons",
                Spoon::Teaspoon => "chart-teaspoons",
            };
            let args = Args::new()
                .count("spoons-n", measure.count)
                .text("spoons", self.0.spoons(measure.count));
            ways.push(self.0.message(key, &args)?);
        }
        Ok(ways)
    }

    /// Another way to measure the same, after the first: nobody is to add both.
    pub(crate) fn or(self, way: &str) -> Written<String> {
        self.0.message("chart-or", &Args::new().text("way", way))
    }

    /// Beside the waits.
    pub(crate) fn then_wait(self) -> Written<String> {
        self.0.plain("chart-then-wait")
    }

    pub(crate) fn wait(self, wait: Duration) -> Written<String> {
        self.0.duration(wait)
    }

    pub(crate) fn wait_if_cold(self, wait: Duration) -> Written<String> {
        let wait = self.0.duration(wait)?;
        self.0
            .message("chart-wait-if-cold", &Args::new().text("wait", wait))
    }

    /// What the short forms in the table mean.
    pub(crate) fn legend(self) -> Written<String> {
        self.0.plain("chart-legend")
    }

    /// What to do, in order.
    pub(crate) fn steps(self) -> Written<Vec<String>> {
        [
            "chart-caution-strain-first",
            "chart-step-add",
            "chart-step-wait",
            "chart-caution-smell-check",
        ]
        .into_iter()
        .map(|key| self.0.plain(key))
        .collect()
    }

    /// The number of a step.
    pub(crate) fn number(self, number: usize) -> String {
        self.0.figure(number as f64, 0)
    }

    /// What bleach leaves alive, and what to do about it.
    pub(crate) fn survivors(self, covers: Coverage) -> Written<Vec<String>> {
        let mut survive = Vec::new();
        let mut may_survive = Vec::new();
        for (key, cover) in [
            ("organism-bacteria", covers.bacteria),
            ("organism-viruses", covers.viruses),
            ("organism-giardia", covers.giardia),
            ("organism-cryptosporidium", covers.cryptosporidium),
        ] {
            match cover {
                Cover::No => survive.push(self.0.plain(key)?),
                Cover::Partly => may_survive.push(self.0.plain(key)?),
                Cover::Yes => {}
            }
        }
        let mut said = Vec::new();
        for (key, list) in [
            ("chart-survive", &survive),
            ("chart-may-survive", &may_survive),
        ] {
            if !list.is_empty() {
                let list = self.0.list(list)?;
                said.push(self.0.message(key, &Args::new().text("list", list))?);
            }
        }
        if !said.is_empty() {
            said.push(self.0.plain("boil-kills-all")?);
        }
        Ok(said)
    }

    pub(crate) fn caution(self, caution: Caution) -> Written<String> {
        self.0
            .plain(&format!("chart-caution-{}", <&str>::from(caution)))
    }

    /// Who has the last word.
    pub(crate) fn defer(self) -> Written<String> {
        self.0.plain("defer")
    }

    pub(crate) fn sources(self, sources: &[Source]) -> Written<String> {
        let mut titles = Vec::new();
        for source in sources {
            titles.push(self.0.source(*source)?);
        }
        self.0.message(
            "chart-sources",
            &Args::new().text("sources", titles.join("; ")),
        )
    }

    /// The day of printing; month and day with two figures each, so that no reader takes it for
    /// another order.
    pub(crate) fn printed(self, day: Date) -> Written<String> {
        let figure = |value: i8| self.0.figure(f64::from(value), 0);
        let two = |value: i8| format!("{}{}", figure(value / 10), figure(value % 10));
        self.0.message(
            "chart-printed",
            &Args::new()
                .text("year", self.0.figure(f64::from(day.year()), 0))
                .text("month", two(day.month()))
                .text("day", two(day.day())),
        )
    }
}
