//! Figures and names in words: measures, waits, volumes, products, lists.
//!
//! In: quantities and codes.
//! Out: phrases of one language that a sentence is made of.

use std::time::Duration;

use crate::locale::Locale;
use crate::quantity::{UnitSystem, litres_in};
use crate::request::{AtHand, Facts, Form, LabelFigure, Product};
use crate::treatment::{LiquidMeasure, Measure, Spoon};

use super::catalog::{Args, CatalogError};

/// Drops are counted up to this many; beyond, a spoon or a syringe is surer.
pub(super) const DROPS_MAX: u32 = 40;

/// From here on a liquid is measured in litres, and a powder in kilograms.
const LITRES_FROM_ML: f64 = 1000.0;

/// What joins the last two of a list.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Join {
    /// "a and b".
    And,
    /// "a or b", after a negation.
    Or,
}

/// Phrases of one language.
#[derive(Clone, Copy)]
pub(super) struct Phrases<'a>(pub(super) &'a Locale);

impl Phrases<'_> {
    pub(super) fn plain(self, key: &str) -> Result<String, CatalogError> {
        self.0.catalog.plain(key)
    }

    pub(super) fn message(self, key: &str, args: &Args<'_>) -> Result<String, CatalogError> {
        self.0.catalog.message(key, args)
    }

    pub(super) fn figure(self, value: f64, decimals_max: usize) -> String {
        self.0.figure(value, decimals_max)
    }

    pub(super) fn product(self, product: Product) -> Result<String, CatalogError> {
        self.plain(&format!("product-{}", <&str>::from(product)))
    }

    pub(super) fn method(self, method: AtHand) -> Result<String, CatalogError> {
        match method {
            AtHand::Product(product) => self.product(product),
            AtHand::Filter | AtHand::Fire | AtHand::Sunlight => {
                self.plain(&format!("method-{}", method.code()))
            }
        }
    }

    /// The water in the person's own unit.
    pub(super) fn volume(self, litres: f64, system: UnitSystem) -> Result<String, CatalogError> {
        let (key, value) = match system {
            UnitSystem::Metric => ("volume-litres", litres),
            UnitSystem::Us if litres < litres_in::US_GALLON - 1e-9 => {
                ("volume-us-quarts", litres / litres_in::US_QUART)
            }
            UnitSystem::Us => ("volume-us-gallons", litres / litres_in::US_GALLON),
            UnitSystem::Imperial => (
                "volume-imperial-gallons",
                litres / litres_in::IMPERIAL_GALLON,
            ),
        };
        self.message(key, &Args::new().text("value", self.figure(value, 2)))
    }

    /// The label's figure of a product: a percentage or a tablet's mg, with a space before.
    pub(super) fn label(self, facts: &Facts) -> Result<String, CatalogError> {
        let figure = facts.product.map(Product::label_figure);
        match (figure, facts.strength_percent, facts.tablet_mg) {
            (Some(LabelFigure::TabletMass) | None, _, Some(mg)) => {
                self.message("label-mg", &Args::new().text("value", self.figure(mg, 2)))
            }
            (Some(LabelFigure::Strength) | None, Some(percent), _) => self.message(
                "label-percent",
                &Args::new().text("value", self.figure(percent, 3)),
            ),
            _ => Ok(String::new()),
        }
    }

    /// A wait: minutes, and whole hours or days from two hours on.
    pub(super) fn duration(self, duration: Duration) -> Result<String, CatalogError> {
        let minutes = duration.as_secs().div_ceil(60);
        let (key, value) = if minutes > 1440 && minutes.is_multiple_of(1440) {
            ("days", minutes / 1440)
        } else if minutes >= 120 && minutes.is_multiple_of(60) {
            ("hours", minutes / 60)
        } else {
            ("minutes", minutes)
        };
        self.message(
            key,
            &Args::new().text("value", self.figure(value as f64, 0)),
        )
    }

    pub(super) fn drops(self, drops: u32) -> Result<String, CatalogError> {
        self.message(
            "drops",
            &Args::new()
                .count("drops-n", f64::from(drops))
                .text("drops", self.figure(f64::from(drops), 0)),
        )
    }

    pub(super) fn liquid(self, liquid: LiquidMeasure) -> Result<String, CatalogError> {
        let ml = self.figure(liquid.ml, 2);
        if liquid.ml >= LITRES_FROM_ML {
            return self.millilitres(liquid.ml);
        }
        if liquid.drops <= DROPS_MAX {
            return self.message(
                "measure-drops",
                &Args::new()
                    .text("drops", self.drops(liquid.drops)?)
                    .text("ml", ml),
            );
        }
        let Some(measure) = liquid.spoon else {
            return self.message("measure-ml", &Args::new().text("ml", ml));
        };
        let key = match measure.spoon {
            Spoon::Teaspoon => "measure-ml-teaspoon",
            Spoon::Tablespoon => "measure-ml-tablespoon",
        };
        self.message(
            key,
            &Args::new()
                .text("ml", ml)
                .text("spoons", self.spoons(measure.count)),
        )
    }

    /// In one measure only: drops while they can be counted, else mL.
    pub(super) fn narrow(self, liquid: LiquidMeasure) -> Result<String, CatalogError> {
        if liquid.drops <= DROPS_MAX {
            self.drops(liquid.drops)
        } else {
            self.millilitres(liquid.ml)
        }
    }

    /// Without spoons: who weighed powder has a syringe or a measuring cup.
    pub(super) fn by_syringe(self, liquid: LiquidMeasure) -> Result<String, CatalogError> {
        if liquid.drops <= DROPS_MAX {
            self.liquid(liquid)
        } else {
            self.millilitres(liquid.ml)
        }
    }

    /// Spoons in halves and quarters, as cooks write them: 1 3/4.
    pub(super) fn spoons(self, count: f64) -> String {
        let whole = count.floor();
        let part = match ((count - whole) * 4.0).round() as u8 {
            1 => "1/4",
            2 => "1/2",
            3 => "3/4",
            _ => "",
        };
        match (whole > 0.0, part.is_empty()) {
            (true, true) => self.figure(whole, 0),
            (true, false) => format!("{} {part}", self.figure(whole, 0)),
            (false, _) => part.to_owned(),
        }
    }

    pub(super) fn grams(self, grams: f64) -> Result<String, CatalogError> {
        if grams >= LITRES_FROM_ML {
            let kilograms = self.figure(grams / 1000.0, 3);
            return self.message("kilograms", &Args::new().text("kilograms", kilograms));
        }
        self.message("grams", &Args::new().text("grams", self.figure(grams, 3)))
    }

    /// Grams for each litre: a tenth of a gram is as fine as a field scale goes.
    pub(super) fn grams_about(self, grams: f64) -> Result<String, CatalogError> {
        let decimals = if grams < 1.0 { 2 } else { 1 };
        self.message(
            "grams",
            &Args::new().text("grams", self.figure(grams, decimals)),
        )
    }

    /// mL, or litres where they are many.
    pub(super) fn millilitres(self, ml: f64) -> Result<String, CatalogError> {
        if ml >= LITRES_FROM_ML {
            self.litres(ml / 1000.0)
        } else {
            self.message("measure-ml", &Args::new().text("ml", self.figure(ml, 2)))
        }
    }

    pub(super) fn litres(self, litres: f64) -> Result<String, CatalogError> {
        self.message(
            "volume-litres",
            &Args::new().text("value", self.figure(litres, 3)),
        )
    }

    pub(super) fn metres(self, metres: f64) -> Result<String, CatalogError> {
        self.message(
            "metres",
            &Args::new().text("metres", self.figure(metres, 2)),
        )
    }

    /// An amount of product in store.
    pub(super) fn amount(self, form: Form, amount: f64) -> Result<String, CatalogError> {
        match form {
            Form::Liquid => self.millilitres(amount),
            Form::Powder => self.grams(amount),
            Form::Tablets => self.tablets(amount.round() as u32),
        }
    }

    /// A product with its label's figure.
    pub(super) fn labelled(self, facts: &Facts) -> Result<String, CatalogError> {
        let product = match facts.product {
            Some(product) => self.product(product)?,
            None => self.plain("product-any")?,
        };
        Ok(format!("{product}{}", self.label(facts)?))
    }

    pub(super) fn days(self, days: f64) -> Result<String, CatalogError> {
        self.message(
            "days-n",
            &Args::new()
                .count("days-n", days)
                .text("value", self.figure(days, 1)),
        )
    }

    pub(super) fn minutes(self, minutes: u64) -> Result<String, CatalogError> {
        self.duration(Duration::from_secs(minutes * 60))
    }

    pub(super) fn tablets(self, count: u32) -> Result<String, CatalogError> {
        self.message(
            "tablets",
            &Args::new()
                .count("count-n", f64::from(count))
                .text("count", self.figure(f64::from(count), 0)),
        )
    }

    /// A measure, in one phrase; nothing where there is no figure to say.
    pub(super) fn measure(self, measure: &Measure) -> Result<Option<String>, CatalogError> {
        Ok(match measure {
            Measure::ByLabel | Measure::Nothing => None,
            Measure::Liquid(liquid) => Some(self.liquid(*liquid)?),
            Measure::Powder(powder) => Some(match powder.stock {
                Some(stock) => self.by_syringe(stock.add)?,
                None => self.grams(powder.grams)?,
            }),
            Measure::Tablets(count) => Some(self.tablets(*count)?),
        })
    }

    /// "a", "a and b", "a, b and c".
    pub(super) fn list(self, items: &[String]) -> Result<String, CatalogError> {
        self.joined(items, Join::And)
    }

    /// The same, with the word that joins the last two.
    pub(super) fn joined(self, items: &[String], join: Join) -> Result<String, CatalogError> {
        match items {
            [] => Ok(String::new()),
            [one] => Ok(one.clone()),
            [one, two] => {
                let key = match join {
                    Join::And => "list-two",
                    Join::Or => "list-two-or",
                };
                self.message(
                    key,
                    &Args::new()
                        .text("one", one.as_str())
                        .text("two", two.as_str()),
                )
            }
            [one, rest @ ..] => {
                let rest = self.joined(rest, join)?;
                self.message(
                    "list-more",
                    &Args::new().text("one", one.as_str()).text("rest", rest),
                )
            }
        }
    }
}
