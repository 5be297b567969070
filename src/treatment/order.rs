//! What can be answered: an order lacks nothing that its answer needs.

use crate::quantity::{
    Altitude, CleaningTabletMass, Days, Depth, Diameter, Headcount, Ph, Pore, Residual, StockGrams,
    StockMl, StockTablets, Strength, TabletMass, Temperature, UnitSystem, Volume,
};
use crate::request::{AtHand, Change, Clarity, Form, JarReading, Person, Product, Sky, Taken};

/// A complete question to the core.
#[derive(Debug, Clone, PartialEq)]
pub enum Order {
    /// How long to boil.
    Boil(BoilOrder),
    /// Which of the methods at hand.
    Choose(ChooseOrder),
    /// A cleaning, hand or stock solution.
    Dilute(DiluteOrder),
    /// How much to add.
    Dose(DoseOrder),
    /// What a filter stops.
    Filter(FilterOrder),
    /// Somebody is ill from water.
    Illness,
    /// Which dose a jar test points to.
    JarTest(JarTestOrder),
    /// What a chlorine test means.
    Residual(ResidualOrder),
    /// How to keep it.
    Storage(StorageOrder),
    /// How long in the sun.
    Sun(SunOrder),
    /// How far a stock goes, or how much of it is needed.
    Supply(SupplyOrder),
    /// Shock chlorination of a dug well.
    Well(WellOrder),
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

/// A chlorine product that is measured by the mL or by the gram.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum BulkChlorine {
    /// Sodium hypochlorite solution.
    Liquid(Strength),
    /// Calcium hypochlorite or chlorinated lime.
    Powder(Strength),
}

/// A chlorine product for cleaning and hand solutions.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum CleaningChlorine {
    /// By the mL or gram.
    Bulk(BulkChlorine),
    /// Tablets; those for surfaces are larger than those for drinking water.
    Tablet(CleaningTabletMass),
}

/// A chlorine product that raises a residual.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum TopUpChlorine {
    /// By the mL or gram.
    Bulk(BulkChlorine),
    /// Drinking-water tablets.
    Tablet(TabletMass),
}

/// A solution to be made.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DiluteOrder {
    /// What of; never weaker than `target` (the dialogue asks).
    pub from: CleaningChlorine,
    /// How strong it is to become.
    pub target: Strength,
    /// How much of it.
    pub volume: Volume,
}

/// Jars of the same water with different doses, read after the wait.
#[derive(Debug, Clone, PartialEq)]
pub struct JarTestOrder {
    /// Dose and reading of each, as told; two at least.
    pub jars: Vec<JarReading>,
    /// Size of one jar.
    pub jar: Volume,
    /// Minutes between dose and reading, where said.
    pub minutes: Option<f64>,
    /// Acidity, where said.
    pub ph: Option<Ph>,
    /// The tank to be dosed, where said.
    pub tank: Option<Volume>,
}

/// What is known of the chlorine left in the water.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Evidence {
    /// No reading, and dosed already: nothing is added before it is known how much.
    AlreadyDosed,
    /// A reading of free chlorine.
    Measured(Residual),
    /// No kit: what to do by the smell.
    NoKit,
    /// No kit, and it does not smell of chlorine.
    NoSmell,
    /// No kit, and it smells of chlorine.
    Smells,
    /// No kit, and no smell after a second dose.
    StillNoSmell,
}

/// What a test means, and perhaps how much to add.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ResidualOrder {
    /// What was found.
    pub evidence: Evidence,
    /// Where the water was taken, where said.
    pub taken: Option<Taken>,
    /// Minutes since the dose, where said.
    pub minutes: Option<f64>,
    /// Acidity, where said.
    pub ph: Option<Ph>,
    /// Whether people fall ill of the water now.
    pub outbreak: Outbreak,
    /// What would be added to which water, where asked.
    pub top_up: Option<(TopUpChlorine, Volume)>,
}

/// Whether diarrhoea goes round.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Outbreak {
    /// Nobody said so.
    #[default]
    NotSaid,
    /// It does.
    Present,
}

/// What is to be kept.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum StorageOrder {
    /// The product.
    Product(Product),
    /// Treated water.
    Water,
}

/// What there is of a product.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Stock {
    /// A liquid.
    Liquid(StockMl),
    /// A powder.
    Powder(StockGrams),
    /// Tablets.
    Tablets(StockTablets),
}

impl Stock {
    /// So many mL, grams or tablets; nothing if nobody can mean it.
    #[must_use]
    pub fn of(form: Form, amount: f64) -> Option<Self> {
        match form {
            Form::Liquid => StockMl::from_ml(amount).ok().map(Self::Liquid),
            Form::Powder => StockGrams::from_grams(amount).ok().map(Self::Powder),
            Form::Tablets => StockTablets::from_count(amount).ok().map(Self::Tablets),
        }
    }
}

/// What is asked of a stock.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum SupplyQuestion {
    /// How many days for so many people.
    Lasts(Stock, Headcount),
    /// How much to order.
    Needs(Headcount, Days),
    /// How many people for so many days.
    Serves(Stock, Days),
    /// How many litres of water.
    Treats(Stock),
}

/// How far a stock goes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SupplyOrder {
    /// The product.
    pub agent: Agent,
    /// What is asked; the stock's form fits the product (the dialogue asks).
    pub question: SupplyQuestion,
    /// How the water looks, where said.
    pub clarity: Option<Clarity>,
    /// Who is served.
    pub served: Served,
}

/// Who is served.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub enum Served {
    /// Patients of a clinic, for whom more is washed than at home.
    Patients,
    /// People at home or in a camp.
    #[default]
    People,
    /// People with so much each a day, as told.
    With(Volume),
}

/// A dug well to be shocked.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WellOrder {
    /// With what.
    pub with: BulkChlorine,
    /// Across.
    pub diameter: Diameter,
    /// Of the water in it.
    pub water_depth: Depth,
    /// How the water looks, where said.
    pub clarity: Option<Clarity>,
    /// Acidity, where said.
    pub ph: Option<Ph>,
}
