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
    /// Nothing is covered.
    pub const NOTHING: Self = Self {
        bacteria: Cover::No,
        viruses: Cover::No,
        giardia: Cover::No,
        cryptosporidium: Cover::No,
    };

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
    /// A tank is scrubbed and flushed before it is filled; never one that held fuel or sewage.
    CleanTankFirst,
    /// Cool, dark, closed, upright, away from metal and acids.
    CoolAndDark,
    /// Disinfection does not remove chemicals or salt.
    ChemicalsStay,
    /// Longer when the water is cold.
    ColdTakesLonger,
    /// *Cryptosporidium* survives: boil or filter.
    CryptosporidiumSurvives,
    /// Diarrhoea with danger signs: to a clinic now.
    DangerSigns,
    /// Made fresh every day.
    FreshDaily,
    /// Gas: out into fresh air.
    FreshAir,
    /// Too weak to rely on against *Giardia*.
    GiardiaPartly,
    /// Gloves, eyes covered, doors open.
    GlovesAndAir,
    /// At altitude, three minutes.
    HigherBoilLonger,
    /// Not for pregnancy, thyroid disease, infants, or longer than a few weeks.
    IodineUnsuitable,
    /// *Leptospira* swims through.
    LeptospiraPasses,
    /// The label's directions for drinking water come first.
    LabelFirst,
    /// Out of the reach of children.
    KeepFromChildren,
    /// The well's water is treated until it tests clean.
    KeepTreating,
    /// Too much chlorine: let it stand open or pour it between clean cans.
    LetStand,
    /// Get medical help at once.
    MedicalHelp,
    /// Narrow neck, lid, tap or ladle: no hands in the water.
    NarrowNeck,
    /// Never with acids, ammonia or other cleaners.
    NeverMix,
    /// Not for drinking.
    NotForDrinking,
    /// Nobody drinks from the well until it is pumped out and tested.
    NotUntilPumped,
    /// Never make the person vomit.
    NoVomiting,
    /// Make the wait no shorter.
    NoShorterWait,
    /// Rehydration salts in safe water, small sips, go on feeding.
    Rehydrate,
    /// Test again after half an hour.
    RetestLater,
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
    /// A tank is dosed while it fills, or stirred with a clean paddle; taps stay shut.
    StirTank,
    /// Settle and strain first.
    StrainFirst,
    /// Print must be readable through the bottle.
    PrintTest,
    /// The label prints a range: its lower figure was taken.
    LowerFigure,
    /// One tablet is too much for so little water.
    TabletTooStrong,
    /// Too murky to read print through: boil, or let chemicals settle it.
    TooMurky,
    /// Plain, unscented product only.
    UnscentedOnly,
    /// Viruses pass.
    VirusesPass,
    /// A well works under 20 NTU only: bail and let it clear first.
    WellClearFirst,
    /// A well works at pH 6 to 7.5 only.
    WellPh,
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
    /// What to add, weigh out or order.
    pub measure: Measure,
    /// Active substance that this brings into the water.
    pub dose: Option<Concentration>,
    /// How long to wait, boil, stand or leave in the sun.
    pub wait: Option<Duration>,
    /// Why so long.
    pub wait_basis: WaitBasis,
    /// What it works against; none where the question is not about germs.
    pub covers: Option<Coverage>,
    /// Log reductions counted on, where a published table gives them.
    pub logs: Option<Logs>,
    /// The cautions that apply, the one that matters most first.
    pub cautions: Vec<Caution>,
    /// What it rests on, the figure's own source first.
    pub sources: Vec<Source>,
    /// Boiling point at the stated altitude, °C.
    pub boiling_point_c: Option<f64>,
    /// What belongs to its kind of question only.
    pub detail: Detail,
}

impl Outcome {
    /// Nothing added, nothing claimed: what kinds of question without a dose begin with.
    pub(super) const fn without_dose(detail: Detail) -> Self {
        Self {
            measure: Measure::Nothing,
            dose: None,
            wait: None,
            wait_basis: WaitBasis::Rule,
            covers: None,
            logs: None,
            cautions: Vec::new(),
            sources: Vec::new(),
            boiling_point_c: None,
            detail,
        }
    }

    /// Proposed methods, best first; none but for a choice.
    #[must_use]
    pub fn methods(&self) -> &[Vec<Method>] {
        match &self.detail {
            Detail::Choice(choice) => &choice.methods,
            Detail::Dilution(_)
            | Detail::JarTest(_)
            | Detail::Plain
            | Detail::Residual(_)
            | Detail::Storage(_)
            | Detail::Supply(_)
            | Detail::Well(_) => &[],
        }
    }
}

/// Log reductions of a chlorine dose, by the contact-time tables. Nothing is claimed beyond what
/// the tables print (3 for *Giardia*, 4 for viruses).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Logs {
    /// *Giardia*.
    pub giardia: f64,
    /// Viruses.
    pub viruses: f64,
    /// Temperature they hold for, °C: measured, or assumed where nobody knows it.
    pub celsius: f64,
    /// pH they hold for.
    pub ph: f64,
    /// Contact time that they count on.
    pub contact: ContactTime,
}

/// What belongs to one kind of question only.
#[derive(Debug, Clone, PartialEq)]
pub enum Detail {
    /// A proposal.
    Choice(Choice),
    /// A solution.
    Dilution(Dilution),
    /// A jar test.
    JarTest(JarFinding),
    /// Nothing further.
    Plain,
    /// A chlorine test.
    Residual(ResidualFinding),
    /// Water or product to be kept.
    Storage(StorageFinding),
    /// A stock.
    Supply(SupplyFinding),
    /// A well.
    Well(WellFinding),
}

/// Proposed methods and why.
#[derive(Debug, Clone, PartialEq)]
pub struct Choice {
    /// Best first; two that belong together share a rank.
    pub methods: Vec<Vec<Method>>,
    /// Why the first is first, in one line.
    pub reason: Reason,
}

/// Why a method is proposed.
#[derive(
    Debug,
    Clone,
    Copy,
    PartialEq,
    Eq,
    Hash,
    strum::IntoStaticStr,
    strum::EnumString,
    strum::VariantArray,
)]
#[strum(serialize_all = "kebab-case")]
pub enum Reason {
    /// Boiling kills all classes, in muddy and in cold water too.
    KillsAll,
    /// Nothing at hand helps; fire is what to look for.
    NothingElse,
    /// The only one at hand that suits.
    OnlyOne,
    /// Two barriers: each stops what the other lets pass.
    TwoBarriers,
    /// The widest cover of those at hand.
    WidestCover,
}

/// A solution: how the product and the water go together.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Dilution {
    /// Its strength, percent.
    pub target_percent: f64,
    /// Its whole volume, litres: what was asked, or more where the least count of whole tablets
    /// makes more at this strength.
    pub litres: f64,
    /// Parts of water to one part of liquid product.
    pub parts_water: Option<f64>,
    /// Water beside the liquid product, mL.
    pub water_ml: Option<f64>,
    /// Powder in each litre, made up to it, g.
    pub grams_per_litre: Option<f64>,
    /// Tablets in each litre.
    pub tablets_per_litre: Option<f64>,
}

/// What a jar test points to.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct JarFinding {
    /// What.
    pub verdict: JarVerdict,
    /// Residual aimed at, mg/L.
    pub aim_mg_per_l: f64,
    /// Size of one jar, litres.
    pub jar_litres: f64,
}

/// Where the aim lies among the jars.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum JarVerdict {
    /// Every jar is above it: try less.
    AllAbove,
    /// Every jar is below it: try more.
    AllBelow,
    /// Nothing is read yet: how the test is done.
    HowTo {
        /// mL of 1% solution, one a jar.
        ml: [f64; 4],
    },
    /// Between two jars, or at one.
    Found {
        /// mL in one jar.
        ml_per_jar: f64,
        /// mL in each 1000 L.
        ml_per_1000_l: f64,
    },
    /// More solution left less chlorine somewhere: the test is to be done again.
    Uneven,
}

/// What a chlorine test means.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ResidualFinding {
    /// The reading, mg/L; none without a kit.
    pub reading_mg_per_l: Option<f64>,
    /// What it means.
    pub verdict: ResidualVerdict,
    /// Least to be reached after the wait, mg/L.
    pub aim_mg_per_l: f64,
    /// Least where people drink, mg/L.
    pub at_use_mg_per_l: f64,
    /// Most for routine drinking, mg/L.
    pub most_mg_per_l: f64,
    /// Minutes after which it is to be tested again.
    pub retest_min: u32,
    /// Hours that treated water keeps its residual.
    pub keeps_h: u32,
    /// Most in a shocked well before anybody drinks from it, mg/L.
    pub well_ready_mg_per_l: f64,
}

/// What a reading means, or a nose.
#[derive(
    Debug,
    Clone,
    Copy,
    PartialEq,
    Eq,
    Hash,
    strum::IntoStaticStr,
    strum::EnumString,
    strum::VariantArray,
)]
#[strum(serialize_all = "kebab-case")]
pub enum ResidualVerdict {
    /// Dosed already: nothing more before the wait is over.
    AlreadyDosed,
    /// Enough.
    Enough,
    /// Fine where people drink, too little soon after the dose: when was it taken?
    EnoughAtUse,
    /// Over what is drunk every day.
    High,
    /// Too little: add, wait, test again.
    Low,
    /// No kit: smell it after the wait.
    NoKit,
    /// No kit and no smell: the same dose once more.
    NoSmell,
    /// No kit, and it smells.
    Smells,
    /// No smell after the second dose: not to be drunk.
    StillNoSmell,
    /// Treated over a day ago: treat it anew.
    Stale,
    /// Enough already before the wait is over, or too little so far: test after the wait.
    TooEarly,
    /// Over the health limit: do not drink it so.
    TooHigh,
    /// A shocked well that is not pumped out yet.
    WellNotReady,
    /// A shocked well that is pumped out.
    WellReady,
}

/// How to keep it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum StorageFinding {
    /// A product.
    Product {
        /// Months after which it is to be replaced; none where nobody published them: the date on
        /// the pack counts.
        replace_months: Option<u32>,
    },
    /// Treated water.
    Water {
        /// Hours until it is to be treated anew.
        keeps_h: u32,
        /// Bleach in each litre of the water that the container is rinsed with, mL.
        rinse_ml_per_litre: f64,
        /// Seconds of that rinsing, at least.
        rinse_s: u32,
    },
}

/// How far a stock goes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SupplyFinding {
    /// Litres of the water asked about in all; rounded down.
    pub treats_litres: f64,
    /// Litres counted for a person (a patient) and day.
    pub litres_per_person: f64,
    /// The same for drinking alone.
    pub drinking_litres_per_person: f64,
    /// Days, asked or worked out.
    pub days: Option<f64>,
    /// People, asked or worked out.
    pub people: Option<f64>,
    /// Days if it is for drinking alone.
    pub drinking_days: Option<f64>,
    /// People if it is for drinking alone.
    pub drinking_people: Option<f64>,
    /// The order without the margin.
    pub bare_need: Option<Measure>,
    /// The margin in the order, percent.
    pub margin_percent: f64,
}

/// A shocked well.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WellFinding {
    /// Water in it, litres; never rounded down.
    pub litres: f64,
    /// Drinkable again at or below this residual, mg/L.
    pub ready_mg_per_l: f64,
    /// Minutes of standing that will do in an emergency.
    pub emergency_wait_min: u32,
    /// For brushing the walls, mg/L.
    pub wall_mg_per_l: f64,
    /// For brushing the walls: mL of the liquid product in `wall_litres`; for powders of their 1% stock.
    pub wall_ml: f64,
    /// Litres of wall solution.
    pub wall_litres: f64,
}
