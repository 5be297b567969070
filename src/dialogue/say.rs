//! What to say, before anybody puts it into words.

use crate::parser::Doubt;
use crate::quantity::UnitSystem;
use crate::request::{Change, Facts, Field, Product, Refusal, Topic};
use crate::treatment::{LastResort, Outcome};

use super::person::Bottle;

/// What to say.
#[derive(Debug, Clone, PartialEq)]
pub enum Say {
    /// The last dose, changed.
    Adjusted(Box<Answer>, Change),
    /// An answer.
    Answer(Box<Answer>),
    /// One question.
    Ask(Question),
    /// The last dose cannot be changed so.
    CannotAdjust(Change, Refusal),
    /// First aid for a product, where named.
    FirstAid(Option<Product>),
    /// All that was kept is deleted.
    Forgotten,
    /// Good day to you.
    Greeting,
    /// What can be asked.
    Help,
    /// Somebody is ill.
    Illness,
    /// The bottle is remembered.
    Kept(Bottle),
    /// No label and no fire: the old last resort, with the question that would be better.
    LastResort(LastResort, Question),
    /// The rest of an answer.
    MoreOf(Box<Answer>),
    /// The bottle is not remembered, for this reason.
    NotKept(Doubt),
    /// Understood, and not yet answered by this program.
    NotServed(Topic),
    /// Not understood.
    NotUnderstood,
    /// There is no answer before to speak of.
    NothingBefore,
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
    /// Is somebody hurt, or is a dose wanted?
    Unsure,
    /// The reasons of an answer.
    WhyOf(Box<Answer>),
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
    /// What else must be said.
    pub extra: Vec<Extra>,
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
    /// The bottle's figures come from memory.
    FromMemory,
    /// The label's lower figure was taken.
    LowerFigure,
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
    /// Why what was said will not do.
    pub doubt: Option<Doubt>,
    /// All that is missing, most needed first.
    pub missing: Vec<Field>,
    /// The product, where known.
    pub product: Option<Product>,
    /// The person said that there is no label.
    pub no_label: bool,
}
