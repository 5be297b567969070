//! Reads a message.
//!
//! In: text as typed, one locale's lexicon, and whose gallons are meant.
//! Out: a [`Reading`]: the request as far as it is stated, what is doubtful, how the message
//! hangs on the one before, and the words that were not known.
//! Promises on any input: no panic, no work out of proportion to the text's length, and no fact
//! that the message does not state.
//! Does not know treatment rules, the person, the store or the clock.

// The concepts are over a hundred; a match names those it reads and passes over the others.
#![allow(clippy::wildcard_enum_match_arm)]

mod amount;
mod concept;
mod container;
mod doubt;
mod facts;
mod harm;
mod jar;
mod lexicon;
mod limits;
mod normalize;
mod number;
mod product;
mod scope;
mod second;
mod strength;
mod tag;
mod test_kit;
mod token;
mod topic;
mod volume;
mod well;
mod work;

use std::ops::Range;

use crate::quantity::{UnitSystem, limit};
use crate::request::{Facts, Field, Product, Refusal, Request, Topic};

pub use concept::Concept;
pub use doubt::{Doubt, strength_limit};
pub use lexicon::{Lexicon, LexiconError};

use amount::{Amount, Unit};
use facts::Text;
use strength::{FromRange, Percentage, Percentages};
use tag::{Item, Tag};

/// A longer message is not a question to this service; it is not read at all.
pub const TEXT_MAX_CHARS: usize = 2_000;

/// How a message hangs on the one before.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Link {
    /// "No, 5%": what follows replaces what was said.
    Correction,
    /// "And for 5 gallons?", "what if it is cloudy": the last question with a change.
    FollowOn,
    /// Half the water.
    HalfThat,
    /// On its own.
    #[default]
    None,
    /// Twice the water.
    TwiceThat,
}

/// So many of something, without its size.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Counted {
    /// "Three jerrycans".
    Containers(f64),
    /// "Two of them".
    OfThem(f64),
}

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

/// A message, read.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Reading {
    /// What it says and wants.
    pub request: Request,
    /// Why facts are left out, most needed first.
    pub doubts: Vec<Doubt>,
    /// Why the message itself must be refused.
    pub refusal: Option<Refusal>,
    /// How it hangs on the one before.
    pub link: Link,
    /// A figure without a unit that may answer a question of ours.
    pub bare: Option<f64>,
    /// What was noticed beside the request.
    pub notes: Vec<Note>,
    /// Bytes of the words that are not known.
    pub unread: Vec<Range<usize>>,
    /// Every fact that was read, whatever the topic: a question of ours may have asked for it.
    pub stated: Facts,
    /// The size of one container, however many there are.
    pub each_litres: Option<f64>,
    /// "Three of these cans": a count of containers, and no size.
    pub counted: Option<Counted>,
    /// The beginning of the word for the one kind of container that is spoken of: a drum is no
    /// bucket.
    pub container: Option<String>,
    /// "Only half full": a part of a container, and no size.
    pub part_full: Option<f64>,
    /// "5 litres each", of whatever.
    pub per_litres: Option<f64>,
    /// A length of which nothing is said.
    pub length_m: Option<f64>,
    /// Every percentage that may be a strength or a target, in the order said.
    pub percents: Vec<f64>,
    /// Further questions of the same message, which wait.
    pub also: Vec<Topic>,
}

/// Longer than a few weeks of iodine is too long (`DECISIONS.md`, BACKER-2000: three weeks).
const IODINE_DAYS_MAX: f64 = 21.0;

/// Reads a message in one language.
#[must_use]
pub fn read(text: &str, lexicon: &Lexicon, units: UnitSystem) -> Reading {
    if text.chars().count() > TEXT_MAX_CHARS {
        return Reading::default();
    }
    let plain = normalize::normalize(text);
    let tokens = token::tokenize(&plain, text.len());
    let items = tag::tag(&tokens, lexicon);
    let amounts = amount::amounts(&items, lexicon, units);
    let scope = scope::Scope::of(&items);
    let jars = jar::jars(&items, &amounts, &scope);
    let reading = interpret(Text {
        items: &items,
        amounts: &amounts,
        scope: &scope,
        jars: jars.as_ref(),
    });
    Reading {
        also: second::questions(&items, lexicon, units, reading.request.topic),
        container: container::kind(text, &items),
        ..reading
    }
}

fn interpret(text: Text<'_>) -> Reading {
    let percentages = strength::percentages(text.items, text.amounts, text.scope);
    let mut product = product::product(text.items, text.scope, &percentages);
    // "Chlorine test 12 in tank 1000 L": the reading counts no tanks.
    let reading_at = test_kit::bare_reading(text).map(|(at, _)| at);
    // "15 L each a day" is no water that stands there.
    let each = facts::litres_each(text);
    let counted: Vec<Amount> = text
        .amounts
        .iter()
        .filter(|amount| Some(amount.items.start) != reading_at)
        .filter(|amount| each.is_none_or(|(at, _)| amount.items.start != at))
        // "A residual of 0.5 in 2000 L" wants that much in the water.
        .filter(|amount| {
            amount.unit != Unit::Pieces
                || !text.mentions(Concept::Residual)
                || !test_kit::is_wanted(text, amount.items.start)
        })
        .cloned()
        .collect();
    let volumes = volume::volumes(text.items, &counted, text.scope);
    if work::uses_made_stock(text, &percentages, &volumes) && !product.mentioned {
        // "1% stock, how much for 200 L": liquid chlorine of that strength.
        product.product = Some(Product::Bleach);
    }
    let tablet = facts::tablet_mg(text);
    let size = well::well(text);
    let have = facts::at_hand(text, &product.named);
    let percents: Vec<f64> = percentages.good.iter().map(|good| good.percent).collect();
    let signals = topic::Signals {
        percents: &percents,
        well_is_whole: size.diameter_m.is_some() && size.water_depth_m.is_some(),
        text,
        product: &product,
        percentages: percentages.good.len(),
        strength_mentioned: !percentages.good.is_empty() || !percentages.doubts.is_empty(),
        volumes: &volumes,
        methods: have.len(),
        has_well_size: size.is_told(),
        tablet_mg: tablet.as_ref().ok().copied().flatten(),
    };
    let (topic, refusal) = signals.topic();

    let mut doubts: Vec<Doubt> = product.doubts.clone();
    doubts.extend(size.doubts.iter().copied());
    let mut notes = notes(text);
    let mut all = Facts {
        product: product.product,
        clarity: facts::clarity(text),
        temperature_c: facts::temperature(text),
        chill: facts::chill(text),
        ph: facts::ph(text),
        sewage: facts::sewage(text),
        chemical: refusal == Some(Refusal::Chemical),
        person: facts::people(text),
        altitude_m: facts::altitude(text),
        height: facts::height(text),
        sky: facts::sky(text),
        pore_um: facts::pore(text),
        have,
        change: change(text),
        residual_mg_per_l: test_kit::residual(text),
        minutes: facts::minutes(text),
        label_litres: volumes.label_litres,
        diameter_m: size.diameter_m,
        water_depth_m: size.water_depth_m,
        purpose: facts::purpose(text),
        taken: test_kit::taken(text),
        nose: test_kit::nose(text),
        outbreak: text.says(Concept::Outbreak),
        jars: text
            .jars
            .map(|jars| jars.readings.clone())
            .unwrap_or_default(),
        jar_l: text.jars.and_then(|jars| jars.jar_l),
        stock_ml: volumes.stock_ml,
        stock_g: facts::grams(text),
        tablets: facts::counted(
            text,
            &[Concept::Tablet, Concept::Nadcc, Concept::IodineTablet],
        ),
        patients: text.says(Concept::Patients),
        litres_each: each.map(|(_, litres)| litres),
        age_days: facts::age_days(text),
        asks_jar_method: text.says(Concept::JarTest) && text.jars.is_none(),
        people: facts::family(text).or_else(|| {
            // "5 people in each family", and nobody says how many families: asked.
            let people = facts::counted(text, &[Concept::PeopleWord])?;
            let few = text.says(Concept::Per) || people <= facts::FAMILY_MAX;
            (!(text.says(Concept::Family) && few)).then_some(people)
        }),
        days: facts::days(text),
        opened: facts::opened(text),
        set_lang: topic::language(text),
        set_units: topic::units(text),
        ..Facts::default()
    };
    if all.temperature_c.is_some() {
        all.chill = None;
    }
    match tablet {
        Ok(None) => {}
        Ok(Some(mg)) => {
            // Tablets for floors are larger than those for drinking water.
            let size = if topic == Topic::Dilute {
                limit::CLEANING_TABLET
            } else {
                limit::CHLORINE_TABLET
            };
            match size.check(mg) {
                Ok(mg) => all.tablet_mg = Some(mg),
                Err(_) => doubts.push(Doubt::TabletOutside),
            }
            if all.product == Some(Product::IodineTablet) && limit::IODINE_TABLET.check(mg).is_err()
            {
                doubts.push(Doubt::TabletCompound);
            }
        }
        Err(_) => doubts.push(Doubt::TabletTwo),
    }
    if topic == Topic::Dilute {
        set_dilution(text, &percentages, &mut all, &mut doubts);
    } else {
        set_strength(text, &percentages, &mut all, &mut doubts, &mut notes);
    }
    if facts::degrees_of_product(text) && all.strength_percent.is_none() {
        doubts.push(Doubt::Degrees);
    }
    if topic == Topic::Sun {
        // Bottles in the sun: the size of one, however many.
        all.volume_l = volumes.each_litres;
    } else if let Some(water) = volumes.water {
        all.volume_l = Some(water.litres);
        all.volume_system = Some(water.system);
    }
    doubts.extend(volumes.doubts.iter().copied());
    if topic == Topic::Residual {
        // A reading in mg/L is no strength that somebody wants.
        doubts.retain(|doubt| *doubt != Doubt::StrengthIsTarget);
    }
    if let Some(jars) = text.jars {
        // The jars' volumes are theirs, and their readings are not one reading.
        doubts.retain(|doubt| doubt.field() != Field::VolumeL);
        all.volume_l = jars.tank_l;
        all.volume_system = None;
        all.residual_mg_per_l = None;
    }
    limits::check(&mut all, &mut doubts);
    long_use(text, &all, &mut notes);
    if matches!(topic, Topic::Stock | Topic::Supply) && all.stock_ml.is_none() {
        // "How much water can 1 litre of bleach treat?": any volume is the stock's.
        let litres = all.volume_l.or(volumes.small_litres);
        all.stock_ml = litres.map(|litres| litres * 1000.0);
    }
    if topic == Topic::Dilute && all.volume_l.is_none() {
        // "10 litres of 0.5% chlorine solution" is what is to be made.
        all.volume_l = volumes.stock_ml.map(|ml| ml / 1000.0);
    }
    doubts.sort_by_key(|doubt| (doubt.field(), *doubt));
    doubts.dedup();

    let request = Request {
        topic,
        facts: all.of_topic(topic),
    };
    Reading {
        request,
        doubts,
        refusal,
        also: Vec::new(),
        each_litres: volumes.each_litres,
        container: None,
        per_litres: facts::litres_per(text),
        counted: (!volumes.mentioned)
            .then(|| facts::counted_containers(text))
            .flatten(),
        // Of "the bottle" it may be the product.
        part_full: (!volumes.mentioned && !product.mentioned && !text.says(Concept::Bottle))
            .then(|| volume::part_filled(text.items, text.scope))
            .flatten(),
        length_m: size.length_m,
        percents,
        link: link(text),
        bare: bare(text),
        notes,
        unread: text
            .items
            .iter()
            .filter(|item| matches!(item.tag, Tag::Unknown | Tag::Unreadable))
            .map(|item| item.span.clone())
            .collect(),
        stated: all,
    }
}

fn change(text: Text<'_>) -> Option<crate::request::Change> {
    use crate::request::Change;
    match (text.says(Concept::Faster), text.says(Concept::Weaker)) {
        (true, _) => Some(Change::Faster),
        (false, true) => Some(Change::Weaker),
        (false, false) => None,
    }
}

fn notes(text: Text<'_>) -> Vec<Note> {
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

fn long_use(text: Text<'_>, all: &Facts, notes: &mut Vec<Note>) {
    let age = text.says(Concept::Infant) || text.says(Concept::Pregnant);
    let long = text.amounts.iter().any(|amount| {
        matches!(amount.unit, Unit::Days(_)) && amount.value().is_some_and(|d| d > IODINE_DAYS_MAX)
    }) || text.says(Concept::Year);
    if long && !age && all.opened.is_none() && !text.says(Concept::Opened) {
        notes.push(Note::LongUse);
    }
}

fn set_strength(
    text: Text<'_>,
    percentages: &Percentages,
    all: &mut Facts,
    doubts: &mut Vec<Doubt>,
    notes: &mut Vec<Note>,
) {
    // A doubtful percentage beside a good one leaves two stories: neither is taken, unless the
    // doubtful one was only a target in ppm.
    let spoiling: Vec<Doubt> = percentages
        .doubts
        .iter()
        .copied()
        .filter(|doubt| *doubt != Doubt::StrengthIsTarget || percentages.good.is_empty())
        .collect();
    if !spoiling.is_empty() {
        doubts.extend(spoiling);
        return;
    }
    let mut distinct: Vec<Percentage> = Vec::new();
    for percentage in &percentages.good {
        if !distinct
            .iter()
            .any(|other| (other.percent - percentage.percent).abs() < 1e-9)
        {
            distinct.push(*percentage);
        }
    }
    match distinct.as_slice() {
        [] => {}
        // "It was washed with 0.5% solution. I have bleach": the one is not the other's.
        [one] if of_other_solution(text, one) => doubts.push(Doubt::StrengthUnreadable),
        [one] => {
            let limit = all.product.map_or(limit::PERCENT, strength_limit);
            match limit.check(one.percent) {
                Ok(percent) => {
                    all.strength_percent = Some(percent);
                    if one.from_range == FromRange::LowerEnd {
                        notes.push(Note::LowerEnd);
                    }
                }
                Err(_) => doubts.push(Doubt::StrengthOutside),
            }
        }
        [_, _, ..] => doubts.push(Doubt::StrengthTwo),
    }
}

/// A solution in a sentence without the product, while another sentence names it.
fn of_other_solution(text: Text<'_>, percentage: &Percentage) -> bool {
    let is_solution = text
        .items
        .get(percentage.item + 2)
        .is_some_and(|item| item.is(Concept::Solution));
    if !is_solution {
        return false;
    }
    let before = text.items.get(..percentage.item).unwrap_or_default();
    let start = before
        .iter()
        .rposition(Item::ends_sentence)
        .map_or(0, |at| at + 1);
    let end = text
        .items
        .get(percentage.item..)
        .and_then(|rest| rest.iter().position(Item::ends_sentence))
        .map_or(text.items.len(), |at| percentage.item + at);
    let names = |item: &Item| item.concept().is_some_and(product::is_product_word);
    let inside = text.items.get(start..end).unwrap_or_default();
    !inside.iter().any(names) && text.items.iter().any(names)
}

/// Two percentages: the weaker is wanted, the stronger is in the bottle. One: by its neighbour.
fn set_dilution(
    text: Text<'_>,
    percentages: &Percentages,
    all: &mut Facts,
    doubts: &mut Vec<Doubt>,
) {
    doubts.extend(
        percentages
            .doubts
            .iter()
            .copied()
            .filter(|doubt| *doubt != Doubt::StrengthIsTarget),
    );
    let mut figures: Vec<&Percentage> = percentages.good.iter().collect();
    figures.sort_by(|a, b| a.percent.total_cmp(&b.percent));
    match figures.as_slice() {
        [] => {}
        [one] => {
            let by_product = [one.item.checked_sub(1), Some(one.item + 2)]
                .into_iter()
                .flatten()
                .filter_map(|i| text.items.get(i).and_then(Item::concept))
                .any(product::is_product_word);
            let of_solution = (one.item..one.item + 5)
                .filter_map(|i| text.items.get(i))
                .take_while(|item| !item.ends_sentence() && !item.is_sign(&[',']))
                .any(|item| item.is(Concept::Solution));
            if by_product && !of_solution {
                all.strength_percent = Some(one.percent);
            } else {
                all.target_percent = Some(one.percent);
                if all.product == Some(Product::Bleach) && !text.says(Concept::Bleach) {
                    // "0.5% chlorine solution" is what is wanted, not what there is.
                    all.product = None;
                    doubts.push(Doubt::ChlorineForm);
                }
            }
        }
        [weak, strong] => {
            // "6% from 5% bleach" is asked about: what stands by the product is in the bottle.
            let at = |index: Option<usize>| index.and_then(|index| text.items.get(index));
            let names = |item: Option<&Item>| {
                item.and_then(Item::concept)
                    .is_some_and(|concept| product::named_by(concept).is_some())
            };
            let of_solution = |figure: &Percentage| {
                at(Some(figure.item + 2)).is_some_and(|i| i.is(Concept::Solution))
            };
            let of_bottle = |figure: &Percentage| {
                let behind = names(at(Some(figure.item + 2)))
                    && !at(Some(figure.item + 3)).is_some_and(|i| i.is(Concept::Solution));
                let from = at(figure.item.checked_sub(1)).is_some_and(|i| i.is(Concept::FromWord));
                behind || from || (names(at(figure.item.checked_sub(1))) && !of_solution(figure))
            };
            let swapped = (of_bottle(weak) && !of_bottle(strong))
                || (of_solution(strong) && !of_solution(weak));
            let (target, strength) = if swapped {
                (strong, weak)
            } else {
                (weak, strong)
            };
            all.target_percent = Some(target.percent);
            all.strength_percent = Some(strength.percent);
        }
        // "10 L of 0.5%, the label says 5% and the shopman 4%": the weak one is wanted, and which is
        // in the bottle is asked.
        [weak, next, ..] if weak.percent * 3.0 <= next.percent => {
            all.target_percent = Some(weak.percent);
            doubts.push(Doubt::StrengthTwo);
        }
        _ => doubts.push(Doubt::StrengthTwo),
    }
    // "500 ppm hand rinse"
    if all.target_percent.is_none()
        && let [target] = percentages.targets.as_slice()
    {
        all.target_percent = Some(*target);
    }
}

/// A figure without a unit, if there is one only.
fn bare(text: Text<'_>) -> Option<f64> {
    let mut figures = text
        .amounts
        .iter()
        .filter(|amount| amount.unit == Unit::Pieces && text.scope.stated(amount.items.start))
        // "200 people" is no figure of the water or the label.
        .filter(|amount| {
            !text
                .items
                .get(amount.items.end)
                .is_some_and(|item| item.is(Concept::PeopleWord) || item.is(Concept::Family))
        });
    let first = figures.next()?;
    // "Half" alone is half of something.
    let half = first.figure.shape != number::Shape::Decimal && first.figure.value < 1.0;
    if figures.next().is_some() || first.upper.is_some() || half {
        return None;
    }
    first.figure.certain()
}

fn link(text: Text<'_>) -> Link {
    let says = |concept| text.says(concept);
    // "Not bleach, it is calcium hypochlorite."
    let instead = text.items.iter().enumerate().any(|(i, item)| {
        text.scope.at(i) == scope::Standing::Denied
            && item.concept().is_some_and(product::is_product_word)
    }) && text.items.iter().enumerate().any(|(i, item)| {
        text.scope.stated(i) && item.concept().is_some_and(product::is_product_word)
    });
    if says(Concept::TwiceThat) {
        Link::TwiceThat
    } else if says(Concept::HalfThat) {
        Link::HalfThat
    } else if !text.scope.corrections.is_empty() || (instead && !says(Concept::HowMuch)) {
        Link::Correction
    } else if says(Concept::Same) || says(Concept::FollowOn) || starts_joined(text.items) {
        Link::FollowOn
    } else {
        Link::None
    }
}

/// "and for …", "and if …" at the head of a message.
fn starts_joined(items: &[Item]) -> bool {
    items
        .first()
        .is_some_and(|item| item.is(Concept::And) || item.is(Concept::Or))
}
