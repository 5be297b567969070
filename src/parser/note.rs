//! What a message says beside its request: somebody is ill, a bottle is gone, a thing is asked again.
//!
//! In: the whole message, read.
//! Out: notes for the dialogue.

use crate::request::Facts;

use super::amount::Unit;
use super::concept::Concept;
use super::facts::Text;
use super::tag::Tag;
use super::{topic, work};

/// What was noticed beside the request.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, serde::Serialize, serde::Deserialize,
)]
#[serde(rename_all = "snake_case")]
pub enum Note {
    /// Somebody is ill.
    Ill,
    /// Iodine for longer than a few weeks.
    LongUse,
    /// Which bottles are remembered, and what is left in them, is asked.
    AsksLeft,
    /// How much to add is asked.
    AsksAmount,
    /// A danger sign is told.
    Danger,
    /// "Double it": the water or the dose?
    DoubleIt,
    /// The stock solution spoken of before is to be used.
    UsesStock,
    /// The water is to be drunk.
    ToDrink,
    /// How many days it lasts is asked.
    AsksDays,
    /// How many people it serves is asked.
    AsksPeople,
    /// A tank is new or dirty: it is to be disinfected itself.
    NewTank,
    /// How long something that was made keeps is asked.
    KeepsIt,
    /// So much is gone from the remembered bottle.
    Spent,
    /// So much came to the remembered bottle.
    Gained,
    /// The bottle used last is no more.
    BottleGone,
    /// Nothing was put into the tested water yet.
    NeverDosed,
    /// Water that is not the one spoken of before.
    OtherWater,
    /// Blood: on the floor, or a sign of danger.
    OfBlood,
    /// Vomit or stools.
    OfStools,
    /// Somebody is spoken of.
    OfSomebody,
    /// "How long do I wait?": of what was answered.
    AsksAgain,
    /// "It is full again."
    SaysFull,
    /// "The same": bottle, or anything.
    SameAsBefore,
    /// A thing is to be made.
    Makes,
    /// Something is to be forgotten.
    Forgets,
    /// It is a liquid, of whatever product.
    Liquid,
    /// It is chlorine, in whatever form.
    OfChlorine,
    /// It is iodine, in whatever form.
    OfIodine,
    /// It is of a pool, and may be stabilised.
    OfPool,
    /// It is a powder, of whatever product.
    OfPowder,
    /// It is in tablets, of whatever product.
    OfTablets,
    /// The bottle is to be remembered, beside another question.
    Keep,
    /// The label prints a range; its lower end was taken.
    LowerEnd,
    /// The last dose was not made.
    NotMade,
    /// It is the product that is kept, not the water.
    OfProduct,
    /// There is no label.
    NoLabel,
    /// No fire.
    NoFire,
    /// "My bottle": the remembered one.
    OwnBottle,
    /// A greeting or thanks.
    Greeting,
    /// Mostly words that are not known: another language, perhaps.
    Strange,
    /// A story about somebody, with words that are not known and nothing asked: it may be about
    /// harm done.
    Story,
}

/// Longer than a few weeks of iodine is too long (`DECISIONS.md`, BACKER-2000: three weeks).
const IODINE_DAYS_MAX: f64 = 21.0;

/// All that was noticed.
pub(super) fn notes(text: Text<'_>) -> Vec<Note> {
    [
        (Concept::Ill, Note::Ill),
        (Concept::Unlabelled, Note::NoLabel),
        (Concept::NoFire, Note::NoFire),
        (Concept::Greeting, Note::Greeting),
        (Concept::LastsWord, Note::AsksDays),
        (Concept::ServesWord, Note::AsksPeople),
        (Concept::LeftInBottle, Note::AsksLeft),
        (Concept::NotMade, Note::NotMade),
        (Concept::Remember, Note::Keep),
        (Concept::Forget, Note::Forgets),
        (Concept::Blood, Note::OfBlood),
        (Concept::VomitWord, Note::OfStools),
        (Concept::Stools, Note::OfStools),
        (Concept::CholeraStools, Note::OfStools),
        (Concept::PersonNoun, Note::OfSomebody),
        (Concept::Infant, Note::OfSomebody),
        (Concept::Same, Note::SameAsBefore),
        (Concept::Full, Note::SaysFull),
        (Concept::HowLong, Note::AsksAgain),
        (Concept::WhatToDo, Note::AsksAgain),
        (Concept::Germ, Note::AsksAgain),
        (Concept::HowMuch, Note::AsksAgain),
        (Concept::Liquid, Note::Liquid),
        (Concept::MakeWord, Note::Makes),
        (Concept::OtherWater, Note::OtherWater),
        (Concept::Spent, Note::Spent),
        (Concept::Gained, Note::Gained),
        (Concept::BottleGone, Note::BottleGone),
        (Concept::NeverDosed, Note::NeverDosed),
        (Concept::KeepIt, Note::KeepsIt),
        (Concept::NewTank, Note::NewTank),
        (Concept::DoubleIt, Note::DoubleIt),
        (Concept::ToDrink, Note::ToDrink),
        (Concept::UsesStock, Note::UsesStock),
        (Concept::Drink, Note::ToDrink),
        (Concept::DrinkNow, Note::ToDrink),
        (Concept::DangerSign, Note::Danger),
    ]
    .into_iter()
    .filter(|(concept, _)| text.says(*concept))
    .map(|(_, note)| note)
    .chain(work::asks_amount(text).then_some(Note::AsksAmount))
    .chain(work::keeps_product(text).then_some(Note::OfProduct))
    .chain(topic::owns_bottle(text).then_some(Note::OwnBottle))
    .chain(tells_a_story(text).then_some(Note::Story))
    .chain(is_strange(text).then_some(Note::Strange))
    .collect()
}

/// Three unknown words or more, and as many as the known ones: a word that would change
/// everything may be among them.
fn is_strange(text: Text<'_>) -> bool {
    let unknown = text
        .items
        .iter()
        .filter(|item| item.tag == Tag::Unknown)
        .count();
    let known = text
        .items
        .iter()
        .filter(|item| matches!(item.tag, Tag::Concept(_) | Tag::Plain | Tag::Language(_)))
        .filter(|item| !item.is(Concept::Percent) && !item.is(Concept::Litre))
        .count();
    unknown >= 3 && unknown >= known
}

fn tells_a_story(text: Text<'_>) -> bool {
    let asks = [
        Concept::HowMuch,
        Concept::HowLong,
        Concept::Treats,
        Concept::SupplyWord,
        Concept::FollowOn,
        Concept::Same,
    ]
    .iter()
    .any(|concept| text.says(*concept))
        || text.items.iter().any(|item| item.is_sign(&['?']));
    let unknown = text.items.iter().any(|item| item.tag == Tag::Unknown);
    !asks && unknown && text.says(Concept::PersonNoun)
}

/// Iodine for too long.
pub(super) fn long_use(text: Text<'_>, all: &Facts, notes: &mut Vec<Note>) {
    let age = text.says(Concept::Infant) || text.says(Concept::Pregnant);
    let long = text.amounts.iter().any(|amount| {
        matches!(amount.unit, Unit::Days(_)) && amount.value().is_some_and(|d| d > IODINE_DAYS_MAX)
    }) || text.says(Concept::Year);
    if long && !age && all.opened.is_none() && !text.says(Concept::Opened) {
        notes.push(Note::LongUse);
    }
}
