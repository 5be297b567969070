//! What to say, before anybody puts it into words.

use serde::{Deserialize, Serialize};

use crate::parser::Doubt;
use crate::quantity::UnitSystem;
use crate::request::{
    Change, Facts, Field, Form, Person as Drinker, Product, Refusal, Topic, Work,
};
use crate::treatment::{Ageing, DecayEstimate, LastResort, Outcome};

use super::bottle::{Bottle, Place};
use super::person::Reminder;

/// What to say.
#[derive(Debug, Clone, PartialEq)]
pub enum Say {
    /// The last dose, changed.
    Adjusted(Box<Answer>, Change),
    /// An answer.
    Answer(Box<Answer>),
    /// One question.
    Ask(Question),
    /// The remembered bottles.
    Bottles(Vec<BottleLine>),
    /// The last dose cannot be changed so.
    CannotAdjust(Change, Refusal),
    /// First aid for a product, where named.
    FirstAid(FirstAidFor),
    /// A bottle is remembered no longer.
    Dropped(Product),
    /// All that was kept is deleted.
    Forgotten,
    /// Good day to you.
    Greeting,
    /// What can be asked.
    Help,
    /// The bottle is remembered.
    Kept(Box<Kept>),
    /// No label and no fire: the old last resort, with the question that would be better.
    LastResort(LastResort, Question),
    /// The rest of an answer.
    MoreOf(Box<Answer>),
    /// The bottle is not remembered, for this reason.
    NotKept(Doubt),
    /// Not understood.
    NotUnderstood,
    /// There is no answer before to speak of.
    NothingBefore,
    /// No dose was taken from a bottle.
    NothingToUndo,
    /// Nothing is being waited for.
    NothingToWaitFor,
    /// How a solution for cleaning is kept, and that nobody may drink it.
    OfSolution,
    /// No dose.
    Refused(Refusal),
    /// Language or units are set.
    Set {
        /// The language, where set.
        language: Option<String>,
        /// The units, where set.
        units: Option<UnitSystem>,
    },
    /// Messages again.
    Started,
    /// No unasked messages.
    Stopped,
    /// The last dose is back in its bottle.
    Undone(Box<BottleLine>),
    /// The water tastes of chlorine, and no dose is known.
    TooStrong,
    /// Is somebody hurt, or is a dose wanted?
    Unsure,
    /// A well cannot be hurried, but in an emergency.
    WellHurry(Box<Answer>),
    /// The reasons of an answer.
    WhyOf(Box<Answer>),
    /// The wait that was told is over.
    WaitIsOver(Reminder),
    /// A message will come when the wait is over.
    WillRemind(Reminder),
}

/// First aid, whatever else was asked.
#[derive(Debug, Clone, PartialEq)]
pub struct FirstAidFor {
    /// The product, where named.
    pub product: Option<Product>,
    /// Further questions that were seen and wait.
    pub seen: Vec<Topic>,
}

/// A bottle, remembered just now.
#[derive(Debug, Clone, PartialEq)]
pub struct Kept {
    /// The bottle.
    pub bottle: Bottle,
    /// How much is left, where told.
    pub left: Option<LeftLine>,
    /// What its age means, where it ages.
    pub ageing: Option<Ageing>,
    /// A date of opening that lies in the future: not kept, and asked for again.
    pub opened_in_future: Option<jiff::civil::Date>,
}

/// A remembered bottle.
#[derive(Debug, Clone, PartialEq)]
pub struct BottleLine {
    /// The bottle.
    pub bottle: Bottle,
    /// How much is left, where told.
    pub left: Option<LeftLine>,
    /// What its age means, where it ages.
    pub ageing: Option<Ageing>,
}

/// Whether a bottle holds the dose.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Suffices {
    /// It holds less.
    No,
    /// It does.
    Yes,
}

/// How much is left in a bottle.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct LeftLine {
    /// How it is measured.
    pub form: Form,
    /// mL, grams or tablets.
    pub amount: f64,
    /// Whether there was enough of it for the dose.
    pub suffices: Suffices,
    /// Litres of clear water that this treats, where the label's figure is known.
    pub treats_litres: Option<f64>,
    /// Days at the person's own pace, where under a week.
    pub days_left: Option<f64>,
}

impl LeftLine {
    /// Whether something must be done about it.
    #[must_use]
    pub fn warns(&self) -> bool {
        self.amount <= 0.0 || self.days_left.is_some() || self.suffices == Suffices::No
    }
}

/// An answer with the facts it rests on.
#[derive(Debug, Clone, PartialEq)]
pub struct Answer {
    /// All facts, remembered ones included.
    pub facts: Facts,
    /// What it is about.
    pub topic: Topic,
    /// What was worked out.
    pub outcome: Outcome,
    /// The same for cloudy water, where nobody said how the water looks.
    pub if_cloudy: Option<Outcome>,
    /// The same for cold water, where nobody said how warm the water is.
    pub if_cold: Option<Outcome>,
    /// The same high up, where nobody said how high.
    pub if_high: Option<Outcome>,
    /// The same under a bright sky, where nobody said how the sky looks.
    pub if_sunny: Option<Outcome>,
    /// The first filling of a new or dirty tank of this size.
    pub if_new_tank: Option<Outcome>,
    /// What else must be said.
    pub extra: Vec<Extra>,
    /// What may be left of an old bottle's strength; no dose counts on it.
    pub estimate: Option<DecayEstimate>,
    /// What was counted, promised and noticed beside it.
    pub beside: Beside,
    /// Whether it stands beside the answer before or in its place.
    pub(super) place: Place,
}

/// What was counted, promised and noticed beside an answer. It is kept with the answer, so that
/// `more` goes on exactly where the first message ended.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
#[serde(default)]
pub struct Beside {
    /// Facts that came from a remembered bottle.
    pub remembered: Vec<Field>,
    /// How much is left in the remembered bottle after this dose.
    pub left: Option<LeftLine>,
    /// A reminder that was set along with it.
    pub reminder: Option<Reminder>,
    /// Further questions that were seen and wait.
    pub seen: Vec<Topic>,
    /// For whom the water was said to be before: it holds for a later iodine.
    pub persons: Vec<Drinker>,
}

impl Answer {
    /// An outcome with nothing around it.
    pub(super) const fn plain(topic: Topic, facts: Facts, outcome: Outcome) -> Self {
        Self {
            facts,
            topic,
            outcome,
            if_cloudy: None,
            if_cold: None,
            if_high: None,
            if_sunny: None,
            if_new_tank: None,
            extra: Vec::new(),
            estimate: None,
            beside: Beside {
                remembered: Vec::new(),
                left: None,
                reminder: None,
                seen: Vec::new(),
                persons: Vec::new(),
            },
            place: Place::Beside,
        }
    }
}

/// What must be said beside the outcome.
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
    strum::VariantArray,
)]
#[strum(serialize_all = "kebab-case")]
pub enum Extra {
    /// A danger sign was told.
    Danger,
    /// The bottle's figures come from memory.
    FromMemory,
    /// The label's lower figure was taken.
    LowerFigure,
    /// The tank itself is to be disinfected first.
    NewTank,
    /// The remembered bottle is over a year old.
    OldBottle,
    /// Somebody is ill: get help.
    SeeHealthWorker,
}

/// One question.
#[derive(Debug, Clone, PartialEq)]
pub struct Question {
    /// What it asks for.
    pub field: Field,
    /// What the answer is for.
    pub work: Work,
    /// Why what was said will not do.
    pub doubt: Option<Doubt>,
    /// All that is missing, most needed first.
    pub missing: Vec<Field>,
    /// The product, where known.
    pub product: Option<Product>,
    /// The person said that there is no label.
    pub no_label: bool,
    /// Parts of water to one of the product: holds whatever the volume.
    pub parts_water: Option<f64>,
    /// A jar test waits for the size of its jars.
    pub jars: bool,
}
