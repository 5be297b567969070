//! What the core answers: figures and codes, no words.

use std::time::Duration;

use crate::quantity::Concentration;
use crate::request::{AtHand, Refusal};

use super::source::Source;

/// An answer, or the reason why there is none.
pub type Verdict = Result<Outcome, Refusal>;

/// How far a method works against one class of organism.
#[derive(
    Debug,
    Clone,
    Copy,
    PartialEq,
    Eq,
    PartialOrd,
    Ord,
    Hash,
    strum::IntoStaticStr,
    strum::EnumString,
)]
#[strum(serialize_all = "snake_case")]
pub enum Cover {
    /// Not to be relied on.
    No,
    /// Some of them, or some of the time.
    Partly,
    /// Yes.
    Yes,
}

/// Cover by class of organism.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Coverage {
    /// Bacteria.
    pub bacteria: Cover,
    /// Viruses.
    pub viruses: Cover,
    /// *Giardia* cysts.
    pub giardia: Cover,
    /// *Cryptosporidium* oocysts.
    pub cryptosporidium: Cover,
}

impl Coverage {
    /// The better of two barriers, class by class.
    #[must_use]
    pub fn with(self, other: Self) -> Self {
        Self {
            bacteria: self.bacteria.max(other.bacteria),
            viruses: self.viruses.max(other.viruses),
            giardia: self.giardia.max(other.giardia),
            cryptosporidium: self.cryptosporidium.max(other.cryptosporidium),
        }
    }
}

/// What the hand adds to the water.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Measure {
    /// As the label says; no figure of ours.
    ByLabel,
    /// A liquid, in drops of 0.05 mL; always whole.
    Liquid(LiquidMeasure),
    /// Nothing is added.
    Nothing,
    /// Powder, weighed dry.
    Powder(PowderMeasure),
    /// Whole tablets.
    Tablets(u32),
}

/// A liquid measure: drops, the same in mL, and the spoon that holds at least as much.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LiquidMeasure {
    /// Whole drops of 0.05 mL.
    pub drops: u32,
    /// The same in mL.
    pub ml: f64,
    /// A kitchen measure that holds as much or up to a quarter more, where there is one.
    pub spoon: Option<SpoonMeasure>,
}

/// A count of kitchen measures.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SpoonMeasure {
    /// How many: quarters and halves are exact.
    pub count: f64,
    /// Of which.
    pub spoon: Spoon,
}

/// A kitchen measure.
#[derive(Debug, Clone, Copy, PartialEq, Eq, strum::IntoStaticStr)]
#[strum(serialize_all = "snake_case")]
pub enum Spoon {
    /// Level tablespoon, 15 mL.
    Tablespoon,
    /// Level teaspoon, 5 mL.
    Teaspoon,
}

/// A powder measure.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PowderMeasure {
    /// Dry powder for the whole water, in grams.
    pub grams: f64,
    /// Where the grams are too few to weigh in the field: a 1% stock solution, and how much of it.
    pub stock: Option<StockMeasure>,
}

/// A 1% stock solution and how much of it goes into the water.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct StockMeasure {
    /// Powder made up to one litre, in grams.
    pub grams_per_litre: f64,
    /// Stock added to the water.
    pub add: LiquidMeasure,
}

/// Why the wait is as long as it is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum WaitBasis {
    /// The CT table asked for more than the rule.
    ContactTime(ContactTime),
    /// The published rule.
    Rule,
    /// The published rule, because nobody said how warm the water is.
    RuleTemperatureUnknown,
    /// The doubling for each 10 °C below 25 °C, or the dose-and-temperature grid.
    ColdWater,
}

/// Contact time asked and reached, in mg·min/L.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ContactTime {
    /// Asked by the table for 3-log *Giardia* and 4-log viruses.
    pub needed: f64,
    /// Reached by the residual assumed over the wait.
    pub reached: f64,
    /// The residual assumed, in mg/L.
    pub residual: f64,
}

/// Something the person must know. The codes are part of the contract's output.
#[derive(
    Debug,
    Clone,
    Copy,
    PartialEq,
    Eq,
    Hash,
    PartialOrd,
    Ord,
    strum::IntoStaticStr,
    strum::EnumString,
    strum::VariantArray,
)]
#[strum(serialize_all = "kebab-case")]
pub enum Caution {
    /// The rating must be absolute, not nominal.
    AbsolutePore,
    /// Clear bottles of PET, up to 2 L.
    BottleSize,
    /// Disinfection does not remove chemicals or salt.
    ChemicalsStay,
    /// Longer when the water is cold.
    ColdTakesLonger,
    /// *Cryptosporidium* survives: boil or filter.
    CryptosporidiumSurvives,
    /// Gas: out into fresh air.
    FreshAir,
    /// Too weak to rely on against *Giardia*.
    GiardiaPartly,
    /// At altitude, three minutes.
    HigherBoilLonger,
    /// Not for pregnancy, thyroid disease, infants, or longer than a few weeks.
    IodineUnsuitable,
    /// *Leptospira* swims through.
    LeptospiraPasses,
    /// The label's directions for drinking water come first.
    LabelFirst,
    /// Get medical help at once.
    MedicalHelp,
    /// Never make the person vomit.
    NoVomiting,
    /// Make the wait no shorter.
    NoShorterWait,
    /// Rinse eyes and skin with water.
    RinseWithWater,
    /// Not reliable in rain.
    NotInRain,
    /// The bottle is over a year old: replace it.
    OldBottle,
    /// The rating was not said.
    PoreUnknown,
    /// No chlorine smell after the wait: repeat once.
    SmellCheck,
    /// A second method is needed.
    SecondMethod,
    /// Sewage: boil if at all possible.
    Sewage,
    /// Heat-proof spores survive boiling.
    SporesSurvive,
    /// Settle and strain first.
    StrainFirst,
    /// Print must be readable through the bottle.
    PrintTest,
    /// The label prints a range: its lower figure was taken.
    LowerFigure,
    /// Too murky to read print through: boil, or let chemicals settle it.
    TooMurky,
    /// Plain, unscented product only.
    UnscentedOnly,
    /// Viruses pass.
    VirusesPass,
    /// People with weak immunity: boil.
    WeakImmunityBoil,
    /// One day often is not enough: two days unless bright.
    TwoDays,
}

/// A method that can be proposed.
pub type Method = AtHand;

/// What was worked out.
#[derive(Debug, Clone, PartialEq)]
pub struct Outcome {
    /// What to add.
    pub measure: Measure,
    /// Active substance that this brings into the water.
    pub dose: Option<Concentration>,
    /// How long to wait, boil or leave in the sun.
    pub wait: Option<Duration>,
    /// Why so long.
    pub wait_basis: WaitBasis,
    /// What it works against.
    pub covers: Coverage,
    /// The cautions that apply, the one that matters most first.
    pub cautions: Vec<Caution>,
    /// What it rests on, the figure's own source first.
    pub sources: Vec<Source>,
    /// Boiling point at the stated altitude, °C.
    pub boiling_point_c: Option<f64>,
    /// Proposed methods, best first; two that belong together share a rank.
    pub methods: Vec<Vec<Method>>,
}
