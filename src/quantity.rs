//! Quantities with their limits: a litre is not a millilitre, a strength is not a concentration.
//!
//! In: plain numbers.
//! Out: values that are known to lie inside [`limit`].
//! Promises that no value outside its limit, and no NaN, can be held.
//! Knows no words, no tables and no rounding of doses.

use std::fmt;

/// The least and the greatest value that is believed, one constant a quantity.
///
/// The constructors check against them and the test generators draw from them.
pub mod limit {
    /// A limit: name for error messages, unit, least and greatest value, both allowed.
    #[derive(Debug, Clone, Copy, PartialEq)]
    pub struct Limit {
        /// What is measured, in the trade's words.
        pub name: &'static str,
        /// Its unit.
        pub unit: &'static str,
        /// The least value believed.
        pub min: f64,
        /// The greatest value believed.
        pub max: f64,
    }

    const fn limit(name: &'static str, unit: &'static str, min: f64, max: f64) -> Limit {
        Limit {
            name,
            unit,
            min,
            max,
        }
    }

    /// Water to treat. Below a quarter litre a single drop is too coarse; above a million the
    /// message is a slip of the finger.
    pub const VOLUME: Limit = limit("volume", "L", 0.25, 1_000_000.0);
    /// Available chlorine of liquid bleach; concentrated solutions end at about 15%.
    pub const BLEACH: Limit = limit("bleach strength", "%", 0.1, 15.0);
    /// Available chlorine of calcium hypochlorite powder (common practice 60-75%, to 80%).
    pub const CALCIUM_HYPOCHLORITE: Limit = limit("calcium hypochlorite strength", "%", 40.0, 80.0);
    /// Available chlorine of chlorinated lime (25-37%, weaker when old).
    pub const BLEACHING_POWDER: Limit = limit("bleaching powder strength", "%", 15.0, 40.0);
    /// Povidone-iodine as labelled; a tenth of it is available iodine.
    pub const POVIDONE_IODINE: Limit = limit("povidone-iodine strength", "%", 1.0, 12.0);
    /// Tincture of iodine as labelled.
    pub const TINCTURE: Limit = limit("iodine tincture strength", "%", 1.0, 10.0);
    /// Any percentage before the product is known.
    pub const PERCENT: Limit = limit("percentage", "%", 0.001, 100.0);
    /// Labelled mg of a chlorine tablet for drinking water (3.5 to 167 mg in the relief
    /// catalogues); grams-sized ones are for disinfecting surfaces.
    pub const CHLORINE_TABLET: Limit = limit("chlorine tablet", "mg", 2.0, 500.0);
    /// mg of iodine in a tablet. A greater figure is the mass of the compound, of which less than
    /// half is iodine (memory): it is asked about.
    pub const IODINE_TABLET: Limit = limit("iodine tablet", "mg", 2.0, 12.0);
    /// Water that is still liquid.
    pub const TEMPERATURE: Limit = limit("temperature", "°C", -1.0, 60.0);
    /// pH that natural water can have.
    pub const PH: Limit = limit("pH", "", 4.0, 11.0);
    /// Where people live.
    pub const ALTITUDE: Limit = limit("altitude", "m", -430.0, 6_000.0);
    /// Chlorine tablets for surfaces come up to 8.68 g of NaDCC (5 g of chlorine) and a little more.
    pub const CLEANING_TABLET: Limit = limit("cleaning tablet", "mg", 2.0, 10_000.0);
    /// Dug wells and bored ones; wider is a pond.
    pub const WELL_DIAMETER: Limit = limit("well diameter", "m", 0.05, 20.0);
    /// Water standing in a well.
    pub const WELL_DEPTH: Limit = limit("depth of water", "m", 0.05, 150.0);
    /// Strength of a solution for hands, surfaces, spills or stock.
    pub const SOLUTION: Limit = limit("solution strength", "%", 0.005, 10.0);
    /// Free chlorine that a field kit can show.
    pub const RESIDUAL: Limit = limit("free chlorine", "mg/L", 0.0, 20.0);
    /// People to serve.
    pub const PEOPLE: Limit = limit("people", "", 1.0, 10_000_000.0);
    /// Days to serve.
    pub const DAYS: Limit = limit("days", "", 1.0, 3_660.0);
    /// Liquid in store, up to a thousand tankers.
    pub const STOCK_ML: Limit = limit("stock", "mL", 1.0, 1e10);
    /// Powder in store.
    pub const STOCK_GRAMS: Limit = limit("stock", "g", 1.0, 1e10);
    /// Tablets in store.
    pub const STOCK_TABLETS: Limit = limit("stock", "tablets", 1.0, 1e9);
    /// Filter ratings from reverse osmosis to cloth.
    pub const PORE: Limit = limit("pore size", "µm", 0.000_1, 500.0);
}

pub use limit::Limit;

/// A number that lies outside what is believed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OutOfLimit {
    /// The limit that was crossed.
    pub limit: Limit,
    /// The number given.
    pub value: f64,
}

impl fmt::Display for OutOfLimit {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Limit {
            name,
            unit,
            min,
            max,
        } = self.limit;
        write!(
            f,
            "{name} of {} {unit} is outside {min} to {max} {unit}",
            self.value
        )
    }
}

impl std::error::Error for OutOfLimit {}

impl Limit {
    /// The value itself if it lies inside.
    ///
    /// # Errors
    /// [`OutOfLimit`] when it does not, or is not a number.
    pub fn check(self, value: f64) -> Result<f64, OutOfLimit> {
        if value >= self.min && value <= self.max {
            Ok(value)
        } else {
            Err(OutOfLimit { limit: self, value })
        }
    }
}

macro_rules! quantity {
    ($(#[$doc:meta])* $name:ident, $limit:expr, $new:ident, $read:ident) => {
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
        pub struct $name(f64);

        impl $name {
            /// Checks the number against its limit.
            ///
            /// # Errors
            /// [`OutOfLimit`] when it lies outside.
            pub fn $new(value: f64) -> Result<Self, OutOfLimit> {
                $limit.check(value).map(Self)
            }

            /// The number in the unit that the method's name says.
            #[must_use]
            pub fn $read(self) -> f64 {
                self.0
            }
        }
    };
}

quantity!(
    /// Water to be treated, in litres.
    Volume, limit::VOLUME, from_litres, litres
);
quantity!(
    /// A percentage as the label prints it, mass of available chlorine (or, for iodine, what the
    /// label counts) over volume: 1% is 10 mg in each mL.
    Strength, limit::PERCENT, from_percent, percent
);
quantity!(
    /// The labelled mass of a tablet's active substance, in mg.
    TabletMass, limit::CHLORINE_TABLET, from_mg, mg
);
quantity!(
    /// Water temperature in degrees Celsius.
    Temperature, limit::TEMPERATURE, from_celsius, celsius
);
quantity!(
    /// Acidity of the water.
    Ph, limit::PH, from_ph, ph
);
quantity!(
    /// Height above the sea in metres.
    Altitude, limit::ALTITUDE, from_metres, metres
);
quantity!(
    /// A filter's rating in micrometres.
    Pore, limit::PORE, from_micrometres, micrometres
);

quantity!(
    /// The labelled mass of a tablet for surfaces or for water, in mg of NaDCC.
    CleaningTabletMass, limit::CLEANING_TABLET, from_mg, mg
);
quantity!(
    /// A well, across, in metres.
    Diameter, limit::WELL_DIAMETER, from_metres, metres
);
quantity!(
    /// Water standing in a well, in metres.
    Depth, limit::WELL_DEPTH, from_metres, metres
);
quantity!(
    /// Free chlorine as a kit shows it, in mg per litre.
    Residual, limit::RESIDUAL, from_mg_per_litre, mg_per_litre
);
quantity!(
    /// People to serve.
    Headcount, limit::PEOPLE, from_people, people
);
quantity!(
    /// Days to serve.
    Days, limit::DAYS, from_days, days
);
quantity!(
    /// Liquid in store, in mL.
    StockMl, limit::STOCK_ML, from_ml, ml
);
quantity!(
    /// Powder in store, in grams.
    StockGrams, limit::STOCK_GRAMS, from_grams, grams
);
quantity!(
    /// Tablets in store.
    StockTablets, limit::STOCK_TABLETS, from_count, count
);

/// Active substance in the water, in mg per litre. Never compared with a [`Strength`].
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct Concentration(f64);

impl Concentration {
    /// A concentration worked out by the core, in mg per litre.
    #[must_use]
    pub(crate) const fn from_mg_per_litre(value: f64) -> Self {
        Self(value)
    }

    /// In mg per litre.
    #[must_use]
    pub const fn mg_per_litre(self) -> f64 {
        self.0
    }
}

impl Strength {
    /// Mass of the labelled substance in one millilitre: 1% is 10 mg/mL.
    #[must_use]
    pub fn mg_per_ml(self) -> f64 {
        self.0 * 10.0
    }
}

/// Whose gallons, spoons and cups.
#[derive(
    Debug,
    Clone,
    Copy,
    PartialEq,
    Eq,
    Hash,
    Default,
    strum::EnumString,
    strum::IntoStaticStr,
    serde::Serialize,
    serde::Deserialize,
)]
#[strum(serialize_all = "snake_case")]
#[serde(rename_all = "snake_case")]
pub enum UnitSystem {
    /// Gallons of 4.54609 L.
    Imperial,
    /// Litres and millilitres.
    #[default]
    Metric,
    /// Gallons of 3.785411784 L.
    Us,
}

/// Litres in one of each unit, exact (reference table `drops_and_measures`, UNIT-TABLE).
pub mod litres_in {
    /// US liquid gallon.
    pub const US_GALLON: f64 = 3.785_411_784;
    /// Imperial gallon.
    pub const IMPERIAL_GALLON: f64 = 4.546_09;
    /// A quarter of a US gallon.
    pub const US_QUART: f64 = US_GALLON / 4.0;
    /// US teaspoon: a 768th of a gallon.
    pub const US_TEASPOON: f64 = US_GALLON / 768.0;
}
