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
mod label;
mod language;
mod lexicon;
mod limits;
mod normalize;
mod note;
mod number;
mod numeral;
mod product;
mod scope;
mod second;
mod strength;
mod tag;
mod test_kit;
mod token;
mod topic;
mod vocabulary;
mod volume;
mod well;
mod work;

use std::ops::Range;

use crate::quantity::{UnitSystem, limit};
use crate::request::{Facts, Field, Product, Refusal, Request, Topic};

pub use concept::Concept;
pub use doubt::{Doubt, strength_limit};
pub use language::{Expected, recognise};
pub use lexicon::{Lexicon, LexiconError, Overlay};
pub use note::Note;
pub(crate) use product::powder;
pub use vocabulary::Vocabulary;

use amount::{Amount, Unit};
use facts::Text;
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

/// Reads a message with the words of its language, and those that it borrows.
#[must_use]
pub fn read(text: &str, vocabulary: &Vocabulary<'_>, units: UnitSystem) -> Reading {
    if text.chars().count() > TEXT_MAX_CHARS {
        return Reading::default();
    }
    let plain = normalize::normalize(text);
    let tokens = token::tokenize(&plain, text.len());
    let items = tag::tag(&tokens, vocabulary);
    let grammar = vocabulary.own.grammar();
    let amounts = amount::amounts(&items, grammar, units);
    let scope = scope::Scope::of(&items, grammar);
    let jars = jar::jars(&items, &amounts, &scope);
    let reading = interpret(Text {
        items: &items,
        amounts: &amounts,
        scope: &scope,
        jars: jars.as_ref(),
        grammar,
    });
    Reading {
        also: second::questions(&items, grammar, units, reading.request.topic),
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
    let volumes = volume::volumes(text.items, &counted, text.scope, text.grammar);
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
    let mut notes = note::notes(text);
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
        label::set_dilution(text, &percentages, &mut all, &mut doubts);
    } else {
        label::set_strength(text, &percentages, &mut all, &mut doubts, &mut notes);
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
        // "Chlorine 0.1, how much to add": most have a bottle, and its label's figure tells.
        if doubts.contains(&Doubt::ChlorineForm) {
            doubts.retain(|doubt| *doubt != Doubt::ChlorineForm);
            all.product = Some(Product::Bleach);
        }
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
    note::long_use(text, &all, &mut notes);
    let forms = [
        (Doubt::ChlorineForm, Note::OfChlorine),
        (Doubt::IodineForm, Note::OfIodine),
        (Doubt::Pool, Note::OfPool),
        (Doubt::PowderForm, Note::OfPowder),
        (Doubt::TabletForm, Note::OfTablets),
    ];
    let forms = forms
        .into_iter()
        .filter(|(doubt, _)| doubts.contains(doubt));
    notes.extend(forms.map(|(_, note)| note));
    let in_tablets = all.tablets.is_some() || all.tablet_mg.is_some();
    if matches!(topic, Topic::Stock | Topic::Supply) && all.stock_ml.is_none() && !in_tablets {
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
