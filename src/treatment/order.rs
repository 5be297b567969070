//! What can be answered: an order lacks nothing that its answer needs.

use crate::quantity::{Altitude, Ph, Pore, Strength, TabletMass, Temperature, UnitSystem, Volume};
use crate::request::{AtHand, Change, Clarity, Person, Sky};

/// A complete question to the core.
#[derive(Debug, Clone, PartialEq)]
pub enum Order {
    /// How long to boil.
    Boil(BoilOrder),
    /// Which of the methods at hand.
    Choose(ChooseOrder),
    /// How much to add.
    Dose(DoseOrder),
    /// What a filter stops.
    Filter(FilterOrder),
    /// How long in the sun.
    Sun(SunOrder),
}

/// What is added to the water, with the figure that its label must give.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Agent {
    /// Sodium hypochlorite solution.
    Bleach(Strength),
    /// Chlorinated lime.
    BleachingPowder(Strength),
    /// Calcium hypochlorite powder.
    CalciumHypochlorite(Strength),
    /// Chlorine dioxide: the label gives the amount.
    ChlorineDioxide,
    /// Iodine tablets.
    IodineTablet(TabletMass),
    /// Tincture of iodine.
    IodineTincture(Strength),
    /// Chlorine tablets; with the litres that the label gives to one tablet, where known.
    Nadcc(TabletMass, Option<Volume>),
    /// Povidone-iodine; the label's percentage, of which a tenth is available iodine.
    PovidoneIodine(Strength),
}

/// How warm the water is, as far as it is known.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub enum Warmth {
    /// Cold to the hand, snow melt; no figure.
    Cold,
    /// Measured.
    Measured(Temperature),
    /// Not said.
    #[default]
    Unknown,
}

/// What is known of the water.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Water {
    /// How it looks, where said.
    pub clarity: Option<Clarity>,
    /// How warm it is.
    pub warmth: Warmth,
    /// Its pH, where said.
    pub ph: Option<Ph>,
    /// Whether sewage gets in.
    pub sewage: Sewage,
}

/// Whether sewage gets into the source.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Sewage {
    /// Nobody said so.
    #[default]
    NotSaid,
    /// It does.
    Present,
}

/// How much of what for which water.
#[derive(Debug, Clone, PartialEq)]
pub struct DoseOrder {
    /// What is added.
    pub agent: Agent,
    /// Water to treat.
    pub volume: Volume,
    /// The units it was written in: published rows scale in the person's own unit.
    pub system: UnitSystem,
    /// The water.
    pub water: Water,
    /// Who drinks it, where said.
    pub people: Vec<Person>,
}

/// How high the kitchen stands.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub enum Elevation {
    /// In the mountains; no figure.
    High,
    /// In metres.
    Measured(Altitude),
    /// Not said.
    #[default]
    Unknown,
}

/// How long to boil.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct BoilOrder {
    /// How high.
    pub elevation: Elevation,
    /// How the water looks, where said.
    pub clarity: Option<Clarity>,
}

/// How long in the sun.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct SunOrder {
    /// The sky, where said.
    pub sky: Option<Sky>,
    /// Size of one bottle, where said.
    pub bottle: Option<Volume>,
    /// How the water looks, where said.
    pub clarity: Option<Clarity>,
}

/// What a filter stops.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct FilterOrder {
    /// Its rating, where said.
    pub pore: Option<Pore>,
    /// Whether sewage gets in.
    pub sewage: Sewage,
}

/// Which of the methods at hand.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct ChooseOrder {
    /// What is at hand, in the order said.
    pub have: Vec<AtHand>,
    /// The water.
    pub water: Water,
    /// Who drinks it, where said.
    pub people: Vec<Person>,
    /// How high.
    pub elevation: Elevation,
    /// The filter's rating, where said.
    pub pore: Option<Pore>,
    /// The sky, where said.
    pub sky: Option<Sky>,
}

/// The last dose, to be changed.
#[derive(Debug, Clone, PartialEq)]
pub struct AdjustOrder {
    /// The dose that was answered.
    pub last: DoseOrder,
    /// What is wanted of it.
    pub change: Change,
}
