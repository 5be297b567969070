//! The typed request: where the parser and the core meet.
//!
//! A [`Request`] holds what one message says and nothing else; each fact may be absent.
//! What can be answered is another type, [`crate::treatment::Order`], which lacks nothing.
//! Knows no spelling, no language and no channel.

use crate::quantity::UnitSystem;

/// What the person wants.
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
pub enum Topic {
    /// Less waiting, or less taste, for the last dose.
    Adjust,
    /// How long to boil.
    Boil,
    /// Which method, from what is at hand.
    Choose,
    /// A cleaning or stock solution.
    Dilute,
    /// How much to add to so much water, how long to wait.
    Dose,
    /// Somebody swallowed or was splashed with the chemical.
    Exposure,
    /// What a filter stops.
    Filter,
    /// Delete all that is kept of the person.
    Forget,
    /// What can be asked.
    Help,
    /// Somebody is ill from water.
    Illness,
    /// The rest of the last answer.
    More,
    /// A message when the wait is over.
    Remind,
    /// What a chlorine reading means.
    Residual,
    /// Language or units.
    Settings,
    /// Messages again, please.
    Start,
    /// Remember my bottle.
    Stock,
    /// No more messages.
    Stop,
    /// How to keep treated water, or the product.
    Storage,
    /// Solar disinfection in bottles.
    Sun,
    /// How much water a stock treats.
    Supply,
    /// None of these could be told.
    #[default]
    Unclear,
    /// Shock chlorination of a dug well.
    Well,
    /// The reasons and sources of the last answer.
    Why,
}

/// Topics whose facts are gathered over several messages, and which follow-ups are about.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, serde::Serialize, serde::Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Work {
    /// A solution.
    Dilute,
    /// A drinking dose.
    Dose,
    /// A chlorine test.
    Residual,
    /// A stock.
    Supply,
    /// A well.
    Well,
}

impl From<Work> for Topic {
    fn from(work: Work) -> Self {
        match work {
            Work::Dilute => Self::Dilute,
            Work::Dose => Self::Dose,
            Work::Residual => Self::Residual,
            Work::Supply => Self::Supply,
            Work::Well => Self::Well,
        }
    }
}

impl Topic {
    /// The work that it is, if its facts are gathered.
    #[must_use]
    pub const fn work(self) -> Option<Work> {
        match self {
            Self::Dilute => Some(Work::Dilute),
            Self::Dose => Some(Work::Dose),
            Self::Residual => Some(Work::Residual),
            Self::Supply => Some(Work::Supply),
            Self::Well => Some(Work::Well),
            Self::Adjust
            | Self::Boil
            | Self::Choose
            | Self::Exposure
            | Self::Filter
            | Self::Forget
            | Self::Help
            | Self::Illness
            | Self::More
            | Self::Remind
            | Self::Settings
            | Self::Start
            | Self::Stock
            | Self::Stop
            | Self::Storage
            | Self::Sun
            | Self::Unclear
            | Self::Why => None,
        }
    }
}

/// A product that is added to water.
#[derive(
    Debug,
    Clone,
    Copy,
    PartialEq,
    Eq,
    Hash,
    PartialOrd,
    Ord,
    strum::EnumString,
    strum::IntoStaticStr,
    serde::Serialize,
    serde::Deserialize,
    strum::VariantArray,
)]
#[strum(serialize_all = "snake_case")]
#[serde(rename_all = "snake_case")]
pub enum Product {
    /// Sodium hypochlorite solution.
    Bleach,
    /// Chlorinated lime.
    BleachingPowder,
    /// Calcium hypochlorite powder or granules.
    CalciumHypochlorite,
    /// Chlorine dioxide tablets or liquid.
    ChlorineDioxide,
    /// Iodine tablets.
    IodineTablet,
    /// Tincture of iodine.
    IodineTincture,
    /// Chlorine tablets (sodium dichloroisocyanurate).
    Nadcc,
    /// Povidone-iodine solution.
    PovidoneIodine,
}

impl Product {
    /// Whether its active substance is iodine.
    #[must_use]
    pub const fn is_iodine(self) -> bool {
        match self {
            Self::IodineTablet | Self::IodineTincture | Self::PovidoneIodine => true,
            Self::Bleach
            | Self::BleachingPowder
            | Self::CalciumHypochlorite
            | Self::ChlorineDioxide
            | Self::Nadcc => false,
        }
    }

    /// Which label figure a dose needs.
    #[must_use]
    pub const fn label_figure(self) -> LabelFigure {
        match self {
            Self::Bleach
            | Self::BleachingPowder
            | Self::CalciumHypochlorite
            | Self::IodineTincture
            | Self::PovidoneIodine => LabelFigure::Strength,
            Self::IodineTablet | Self::Nadcc => LabelFigure::TabletMass,
            Self::ChlorineDioxide => LabelFigure::Directions,
        }
    }
}

impl Product {
    /// How it is measured.
    #[must_use]
    pub const fn form(self) -> Form {
        match self {
            Self::Bleach | Self::IodineTincture | Self::PovidoneIodine => Form::Liquid,
            Self::BleachingPowder | Self::CalciumHypochlorite => Form::Powder,
            Self::ChlorineDioxide | Self::IodineTablet | Self::Nadcc => Form::Tablets,
        }
    }
}

/// How a product is measured.
#[derive(Debug, Clone, Copy, PartialEq, Eq, serde::Serialize, serde::Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Form {
    /// By the mL.
    Liquid,
    /// By the gram.
    Powder,
    /// By the piece.
    Tablets,
}

/// What must be read off the label before a dose can be worked out.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum LabelFigure {
    /// The label's own directions.
    Directions,
    /// A percentage.
    Strength,
    /// The mg of a tablet.
    TabletMass,
}

/// How the water looks.
#[derive(
    Debug,
    Clone,
    Copy,
    PartialEq,
    Eq,
    Hash,
    strum::EnumString,
    strum::IntoStaticStr,
    serde::Serialize,
    serde::Deserialize,
)]
#[strum(serialize_all = "snake_case")]
#[serde(rename_all = "snake_case")]
pub enum Clarity {
    /// Clear.
    Clear,
    /// Cloudy, muddy, coloured.
    Cloudy,
}

/// How the sky looks.
#[derive(
    Debug,
    Clone,
    Copy,
    PartialEq,
    Eq,
    Hash,
    strum::EnumString,
    strum::IntoStaticStr,
    serde::Serialize,
    serde::Deserialize,
)]
#[strum(serialize_all = "snake_case")]
#[serde(rename_all = "snake_case")]
pub enum Sky {
    /// Clouds.
    Cloudy,
    /// Rain.
    Rain,
    /// Bright.
    Sunny,
}

/// Somebody for whom a method may be unsuitable.
#[derive(
    Debug,
    Clone,
    Copy,
    PartialEq,
    Eq,
    Hash,
    PartialOrd,
    Ord,
    strum::EnumString,
    strum::IntoStaticStr,
    serde::Serialize,
    serde::Deserialize,
)]
#[strum(serialize_all = "snake_case")]
#[serde(rename_all = "snake_case")]
pub enum Person {
    /// A baby.
    Infant,
    /// A pregnant or breast-feeding woman.
    Pregnant,
    /// Somebody with thyroid disease.
    Thyroid,
    /// Somebody whose defence against germs is weak.
    WeakImmunity,
}

/// Something at hand, for [`Topic::Choose`].
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, serde::Serialize, serde::Deserialize,
)]
#[serde(rename_all = "snake_case")]
pub enum AtHand {
    /// A filter.
    Filter,
    /// A pot and fuel.
    Fire,
    /// A product.
    Product(Product),
    /// Clear bottles and sun.
    Sunlight,
}

impl AtHand {
    /// Its name in the contract.
    #[must_use]
    pub fn code(self) -> &'static str {
        match self {
            Self::Filter => "filter",
            Self::Fire => "fire",
            Self::Product(product) => product.into(),
            Self::Sunlight => "sunlight",
        }
    }
}

/// Which way the last dose is to be changed.
#[derive(
    Debug,
    Clone,
    Copy,
    PartialEq,
    Eq,
    Hash,
    strum::EnumString,
    strum::IntoStaticStr,
    serde::Serialize,
    serde::Deserialize,
)]
#[strum(serialize_all = "snake_case")]
#[serde(rename_all = "snake_case")]
pub enum Change {
    /// Less waiting.
    Faster,
    /// Less taste.
    Weaker,
}

/// Cold that was said without a figure.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, serde::Serialize, serde::Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Chill {
    /// Cold to the hand, snow melt, ice.
    Cold,
}

/// Height that was said without a figure.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, serde::Serialize, serde::Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Height {
    /// In the mountains, high up.
    High,
}

/// Where water for a chlorine test was taken.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, serde::Serialize, serde::Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Taken {
    /// At the tap stand or the end of the pipe.
    AtTap,
    /// From the can or cup that people drink from.
    AtUse,
    /// From a well that was shocked.
    InWell,
}

/// One jar of a jar test.
#[derive(Debug, Clone, Copy, PartialEq, serde::Serialize, serde::Deserialize)]
pub struct JarReading {
    /// Solution added, in mL.
    pub ml: f64,
    /// Free chlorine read after the wait, in mg/L.
    pub mg_per_l: f64,
}

/// What a cleaning solution is for.
#[derive(
    Debug,
    Clone,
    Copy,
    PartialEq,
    Eq,
    Hash,
    strum::IntoStaticStr,
    serde::Serialize,
    serde::Deserialize,
    strum::VariantArray,
)]
#[strum(serialize_all = "snake_case")]
#[serde(rename_all = "snake_case")]
pub enum Purpose {
    /// Hands and skin.
    Hands,
    /// A stock solution, to dose water from.
    Stock,
    /// Floors, beds, latrines, things.
    Surfaces,
    /// Blood, stools, vomit, the dead.
    Spills,
}

/// What is known without a test kit.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, serde::Serialize, serde::Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Nose {
    /// It was dosed already, with how much is not known.
    AlreadyDosed,
    /// There is no kit, or how to tell without one is asked.
    NoKit,
    /// It does not smell of chlorine.
    NoSmell,
    /// It smells of chlorine.
    Smells,
    /// It does not smell of chlorine after a second dose either.
    StillNoSmell,
}

/// Why nothing here may be answered with a dose.
#[derive(
    Debug,
    Clone,
    Copy,
    PartialEq,
    Eq,
    Hash,
    PartialOrd,
    Ord,
    strum::EnumString,
    strum::IntoStaticStr,
    serde::Serialize,
    serde::Deserialize,
    strum::VariantArray,
)]
#[strum(serialize_all = "snake_case")]
#[serde(rename_all = "snake_case")]
pub enum Refusal {
    /// Fuel, pesticide, waste or salt in the water.
    Chemical,
    /// Pregnancy, thyroid disease, an infant or long use against iodine.
    IodineUnsuitable,
    /// The product mixed with acid or ammonia.
    Mixed,
    /// Not for drinking water.
    OtherUse,
    /// More than twice the published dose, or a half dose where it is not allowed.
    OverLimit,
}

/// A fact that a question may ask for.
#[derive(
    Debug,
    Clone,
    Copy,
    PartialEq,
    Eq,
    Hash,
    PartialOrd,
    Ord,
    strum::EnumString,
    strum::IntoStaticStr,
    serde::Serialize,
    serde::Deserialize,
    strum::VariantArray,
)]
#[strum(serialize_all = "snake_case")]
#[serde(rename_all = "snake_case")]
pub enum Field {
    /// Which product.
    Product,
    /// Its strength.
    StrengthPercent,
    /// The tablet's mg.
    TabletMg,
    /// How much water.
    VolumeL,
    /// The well's diameter.
    DiameterM,
    /// The depth of water in the well.
    WaterDepthM,
    /// How strong the solution is to become.
    TargetPercent,
    /// The test's reading.
    ResidualMgPerL,
    /// How many people.
    People,
    /// For how many days.
    Days,
    /// How much liquid product there is.
    StockMl,
    /// How much powder there is.
    StockG,
    /// How many tablets there are.
    Tablets,
}

/// Everything a message can say, each fact on its own.
#[derive(Debug, Clone, PartialEq, Default, serde::Serialize, serde::Deserialize)]
#[serde(default)]
pub struct Facts {
    /// The product named, without doubt.
    pub product: Option<Product>,
    /// Its strength as the label prints it, in percent.
    pub strength_percent: Option<f64>,
    /// Labelled mg of a tablet.
    pub tablet_mg: Option<f64>,
    /// Litres that one tablet treats, by its label.
    pub label_litres: Option<f64>,
    /// Water to treat, in litres at full precision.
    pub volume_l: Option<f64>,
    /// The unit system the volume was written in.
    pub volume_system: Option<UnitSystem>,
    /// How the water looks.
    pub clarity: Option<Clarity>,
    /// Water temperature, °C.
    pub temperature_c: Option<f64>,
    /// Cold without a figure.
    pub chill: Option<Chill>,
    /// Acidity.
    pub ph: Option<f64>,
    /// Sewage in the water.
    pub sewage: bool,
    /// Chemicals in the water.
    pub chemical: bool,
    /// For whom.
    pub person: Vec<Person>,
    /// Height above the sea, m.
    pub altitude_m: Option<f64>,
    /// Height without a figure.
    pub height: Option<Height>,
    /// The sky.
    pub sky: Option<Sky>,
    /// A filter's rating, µm.
    pub pore_um: Option<f64>,
    /// What is at hand, in the order said.
    pub have: Vec<AtHand>,
    /// How the last dose is to change.
    pub change: Option<Change>,
    /// Free chlorine read, mg/L.
    pub residual_mg_per_l: Option<f64>,
    /// Minutes since the dose.
    pub minutes: Option<f64>,
    /// Well diameter, m.
    pub diameter_m: Option<f64>,
    /// Depth of water in the well, m.
    pub water_depth_m: Option<f64>,
    /// Strength wanted, percent.
    pub target_percent: Option<f64>,
    /// What a solution is for.
    pub purpose: Option<Purpose>,
    /// Where water for a chlorine test was taken.
    pub taken: Option<Taken>,
    /// What is known without a kit.
    pub nose: Option<Nose>,
    /// Diarrhoea goes round.
    pub outbreak: bool,
    /// Jars of a jar test.
    pub jars: Vec<JarReading>,
    /// Size of one jar, L.
    pub jar_l: Option<f64>,
    /// How a jar test is done is asked.
    pub asks_jar_method: bool,
    /// The people are patients of a clinic.
    pub patients: bool,
    /// The size of one container, where the volume is one of several or one alone, L.
    pub each_l: Option<f64>,
    /// Which kind of container that is, by the beginning of its word.
    pub each_in: Option<String>,
    /// Litres for each of them and a day, where told.
    pub litres_each: Option<f64>,
    /// How old the bottle is, days.
    pub age_days: Option<f64>,
    /// Stock of liquid, mL.
    pub stock_ml: Option<f64>,
    /// Stock of powder, g.
    pub stock_g: Option<f64>,
    /// Stock of tablets.
    pub tablets: Option<f64>,
    /// People to serve.
    pub people: Option<f64>,
    /// Days to serve.
    pub days: Option<f64>,
    /// When the bottle was opened, as an ISO date.
    pub opened: Option<jiff::civil::Date>,
    /// Language wanted, BCP 47.
    pub set_lang: Option<String>,
    /// Units wanted.
    pub set_units: Option<UnitSystem>,
}

/// What one message says.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Request {
    /// What is wanted.
    pub topic: Topic,
    /// What is said.
    pub facts: Facts,
}

impl Facts {
    /// The facts that belong to a topic (the contract's table).
    #[must_use]
    pub fn of_topic(&self, topic: Topic) -> Self {
        let all = self.clone();
        let none = Self::default();
        match topic {
            Topic::Dose => Self {
                product: all.product,
                strength_percent: all.strength_percent,
                tablet_mg: all.tablet_mg,
                label_litres: all.label_litres,
                volume_l: all.volume_l,
                volume_system: all.volume_system,
                clarity: all.clarity,
                temperature_c: all.temperature_c,
                chill: all.chill,
                ph: all.ph,
                sewage: all.sewage,
                chemical: all.chemical,
                person: all.person,
                ..none
            },
            Topic::Boil => Self {
                altitude_m: all.altitude_m,
                height: all.height,
                volume_l: all.volume_l,
                volume_system: all.volume_system,
                clarity: all.clarity,
                ..none
            },
            Topic::Sun => Self {
                sky: all.sky,
                volume_l: all.volume_l,
                volume_system: all.volume_system,
                clarity: all.clarity,
                ..none
            },
            Topic::Filter => Self {
                pore_um: all.pore_um,
                sewage: all.sewage,
                ..none
            },
            Topic::Choose => Self {
                have: all.have,
                clarity: all.clarity,
                sewage: all.sewage,
                chemical: all.chemical,
                person: all.person,
                altitude_m: all.altitude_m,
                height: all.height,
                temperature_c: all.temperature_c,
                chill: all.chill,
                ..none
            },
            Topic::Adjust => Self {
                change: all.change,
                ..none
            },
            Topic::Residual => Self {
                residual_mg_per_l: all.residual_mg_per_l,
                volume_l: all.volume_l,
                volume_system: all.volume_system,
                strength_percent: all.strength_percent,
                minutes: all.minutes,
                ..none
            },
            Topic::Well => Self {
                diameter_m: all.diameter_m,
                water_depth_m: all.water_depth_m,
                product: all.product,
                strength_percent: all.strength_percent,
                ..none
            },
            Topic::Dilute => Self {
                target_percent: all.target_percent,
                product: all.product,
                strength_percent: all.strength_percent,
                tablet_mg: all.tablet_mg,
                volume_l: all.volume_l,
                volume_system: all.volume_system,
                ..none
            },
            Topic::Supply => Self {
                product: all.product,
                strength_percent: all.strength_percent,
                stock_ml: all.stock_ml,
                stock_g: all.stock_g,
                tablets: all.tablets,
                tablet_mg: all.tablet_mg,
                people: all.people,
                days: all.days,
                ..none
            },
            Topic::Stock => Self {
                product: all.product,
                strength_percent: all.strength_percent,
                tablet_mg: all.tablet_mg,
                opened: all.opened,
                stock_ml: all.stock_ml,
                ..none
            },
            Topic::Settings => Self {
                set_lang: all.set_lang,
                set_units: all.set_units,
                ..none
            },
            Topic::Exposure => Self {
                product: all.product,
                ..none
            },
            Topic::Forget
            | Topic::Help
            | Topic::Illness
            | Topic::More
            | Topic::Remind
            | Topic::Start
            | Topic::Stop
            | Topic::Storage
            | Topic::Unclear
            | Topic::Why => none,
        }
    }
}
