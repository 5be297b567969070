//! What the person wants.
//!
//! In: the whole message, read.
//! Out: one topic, and a refusal where the message itself calls for one.
//! Promises that somebody hurt comes first, whatever else the message says.

use crate::request::{Refusal, Topic};

use super::amount::Unit;
use super::concept::Concept;
use super::facts::Text;
use super::product::{ProductReading, is_product_word};
use super::scope::Standing;
use super::tag::{Item, Tag};
use super::volume::{BOTTLE_MAX_L, Volumes};

/// What the choice of topic looks at.
pub(super) struct Signals<'a> {
    pub(super) text: Text<'a>,
    pub(super) product: &'a ProductReading,
    pub(super) percentages: usize,
    /// The percentages that may be a strength or a target.
    pub(super) percents: &'a [f64],
    /// A percentage stands in the message, good or doubtful.
    pub(super) strength_mentioned: bool,
    pub(super) volumes: &'a Volumes,
    pub(super) methods: usize,
    pub(super) has_well_size: bool,
    /// Both measures of a well are told.
    pub(super) well_is_whole: bool,
    pub(super) tablet_mg: Option<f64>,
}

/// A message of at most so many words is a bare command.
pub(super) const SHORT: usize = 4;

impl Signals<'_> {
    pub(super) fn says(&self, concept: Concept) -> bool {
        self.text.says(concept)
    }

    pub(super) fn any(&self, concepts: &[Concept]) -> bool {
        concepts.iter().any(|concept| self.says(*concept))
    }

    pub(super) fn words(&self) -> usize {
        self.text
            .items
            .iter()
            .filter(|item| !matches!(item.tag, Tag::Sign(_)))
            .count()
    }

    pub(super) fn unknown_words(&self) -> usize {
        self.text
            .items
            .iter()
            .filter(|item| item.tag == Tag::Unknown)
            .count()
    }

    pub(super) fn has_figures(&self) -> bool {
        self.volumes.water.is_some() || self.percentages > 0 || self.tablet_mg.is_some()
    }

    pub(super) fn product_stated(&self) -> bool {
        self.text.items.iter().enumerate().any(|(i, item)| {
            item.concept().is_some_and(is_product_word) && self.text.scope.stated(i)
        })
    }

    /// Enough to work a dose out.
    pub(super) fn dose_is_complete(&self) -> bool {
        let label = self.percentages > 0 || self.tablet_mg.is_some();
        self.product.product.is_some() && label && self.volumes.water.is_some()
    }

    /// The topic, and whether the message itself must be refused.
    pub(super) fn topic(&self) -> (Topic, Option<Refusal>) {
        if self.exposure() {
            return (Topic::Exposure, None);
        }
        if let Some(command) = self.command() {
            return (command, None);
        }
        if self.illness_urgent() {
            return (Topic::Illness, None);
        }
        if self.says(Concept::Instruction) && !self.product_stated() {
            return (Topic::Unclear, None);
        }
        if let Some(refusal) = self.refusal() {
            return (Topic::Dose, Some(refusal));
        }
        (self.ordinary(), None)
    }

    /// The short words of an SMS service, said without figures.
    fn command(&self) -> Option<Topic> {
        // "And?"
        if self.words() == 1 && self.says(Concept::And) {
            return Some(Topic::More);
        }
        let first = |concepts: &[Concept]| {
            self.text
                .items
                .iter()
                .take(2)
                .any(|item| concepts.iter().any(|concept| item.is(*concept)))
        };
        if !self.says(Concept::HowMuch) {
            // What the message begins with is what it wants, whatever it goes on to mention.
            if first(&[Concept::Notify, Concept::Remind]) && self.says(Concept::WaitOver) {
                return Some(Topic::Remind);
            }
            if first(&[Concept::Erase, Concept::Forget]) && self.says(Concept::DataWord) {
                return Some(Topic::Forget);
            }
        }
        if self.has_figures() {
            return None;
        }
        let short = self.words() <= SHORT;
        let about_messages = self.text.mentions(Concept::MessageWord);
        let stops = self.text.mentions(Concept::StopWord)
            || (self.text.mentions(Concept::Cease) && about_messages);
        let stop_words = self
            .text
            .items
            .iter()
            .filter(|item| item.is(Concept::StopWord) || item.is(Concept::Cease))
            .count();
        if stops
            && (short || about_messages || stop_words > 1)
            && !self.any(&[Concept::Filter, Concept::Germ])
        {
            return Some(Topic::Stop);
        }
        if self.says(Concept::Remind)
            || ((self.says(Concept::Notify) || about_messages) && self.says(Concept::WaitOver))
        {
            return Some(Topic::Remind);
        }
        let elsewhere = self.product_stated() || self.text.mentions(Concept::Water);
        if self.says(Concept::Erase) && (self.says(Concept::DataWord) || (short && !elsewhere)) {
            return Some(Topic::Forget);
        }
        // "Forget my bleach": the bottle, not the person.
        if self.says(Concept::Forget)
            && self.product_stated()
            && !self.says(Concept::DataWord)
            && short
        {
            return Some(Topic::Stock);
        }
        if self.says(Concept::Forget) && (short || self.says(Concept::DataWord) || !elsewhere) {
            return Some(Topic::Forget);
        }
        if self.says(Concept::StartWord) && (short || about_messages || !elsewhere) {
            return Some(Topic::Start);
        }
        if self.says(Concept::Resume) && about_messages && !elsewhere {
            return Some(Topic::Start);
        }
        let wants_setting = self.says(Concept::SettingsWord) || short;
        if wants_setting && (language(self.text).is_some() || units(self.text).is_some()) {
            return Some(Topic::Settings);
        }
        None
    }

    fn refusal(&self) -> Option<Refusal> {
        let product = self.product_stated();
        if self.any(&[Concept::Acid, Concept::Ammonia]) && product {
            return Some(Refusal::Mixed);
        }
        let fuel_only = self.says(Concept::FuelAtHand) && !self.says(Concept::Chemical);
        if self.any(&[Concept::Chemical, Concept::Salty]) && !fuel_only {
            return Some(Refusal::Chemical);
        }
        let wound =
            self.says(Concept::Wound) || (self.says(Concept::Eye) && self.says(Concept::Washing));
        let washed = wound && self.says(Concept::Cleaning) && self.volumes.mentioned;
        // "And laundry?"
        let other = self.says(Concept::OtherUse) && (product || self.words() <= SHORT);
        if other || (product && wound) || washed {
            return Some(Refusal::OtherUse);
        }
        None
    }

    fn ordinary(&self) -> Topic {
        let figures = self.has_figures();
        let product = self.product_stated();
        if !figures && self.any(&[Concept::NotMade, Concept::LeftInBottle]) {
            return Topic::Stock;
        }
        // "Used 300 mL", "bought 2 L more", "I threw it away".
        let amount = self.volumes.mentioned
            || self
                .text
                .amounts
                .iter()
                .any(|amount| matches!(amount.unit, Unit::Grams(_)))
            || super::facts::counted(self.text, &[Concept::Tablet, Concept::Nadcc]).is_some();
        let of_water = self.any(&[
            Concept::WaterDepth,
            Concept::Treats,
            Concept::TreatedWater,
            Concept::Drink,
        ]);
        let spent = self.says(Concept::Spent) && !self.says(Concept::Container);
        let counts = (spent || self.says(Concept::Gained)) && amount && !of_water;
        let counts = counts && !self.residual();
        if (counts || (self.says(Concept::BottleGone) && self.words() <= SHORT * 2))
            && !self.any(&[Concept::HowMuch, Concept::Clear, Concept::Cloudy])
            && !self.text.mentions(Concept::Water)
        {
            return Topic::Stock;
        }
        // "Opened 1 March 2026": of the bottle that is remembered.
        if super::facts::opened(self.text).is_some() && !figures && !self.volumes.mentioned {
            return Topic::Stock;
        }
        // "I opened a new bottle today, bleach 4%, 500 ml."
        let new_bottle = self.says(Concept::Opened)
            && product
            && self.percentages > 0
            && self
                .volumes
                .each_litres
                .is_none_or(|each| each <= BOTTLE_MAX_L)
            && !self.any(&[
                Concept::HowMuch,
                Concept::AskToAdd,
                Concept::Clear,
                Concept::Cloudy,
            ])
            && !self.text.mentions(Concept::Water);
        if new_bottle
            || (self.says(Concept::Remember)
                && !self.says(Concept::HowMuch)
                && (product || self.strength_mentioned || owns_bottle(self.text)))
            || (owns_bottle(self.text)
                && (self.percentages > 0 || self.tablet_mg.is_some())
                && (!self.volumes.mentioned || self.says(Concept::Opened))
                && !self.has_well_size
                && !self.any(&[Concept::HowMuch, Concept::Residual, Concept::SupplyWord]))
        {
            return Topic::Stock;
        }
        if self.residual() {
            return Topic::Residual;
        }
        if self.says(Concept::Why) && !figures && !self.volumes.mentioned && self.methods == 0 {
            return Topic::Why;
        }
        if self.has_well_size && self.well() {
            return Topic::Well;
        }
        if self.dilutes() {
            return Topic::Dilute;
        }
        if self.well() {
            return Topic::Well;
        }
        if self.supply() {
            return Topic::Supply;
        }
        if self.says(Concept::Boil)
            && self.says(Concept::HowLong)
            && !self.text.mentions(Concept::TreatedWater)
            && !product
        {
            return Topic::Boil;
        }
        if self.storage() && product && !figures && !self.any(&[Concept::HowMuch, Concept::Choose])
        {
            return Topic::Storage;
        }
        // "How long will the 20 L I treated with 5% bleach keep?"
        if self.any(&[Concept::HowLong, Concept::LastsWord])
            && self.text.mentions(Concept::Storage)
            && self.text.mentions(Concept::TreatedWater)
        {
            return Topic::Storage;
        }
        // "Bleach or fire, which is better for 20 L?"
        if self.methods >= 2 && self.says(Concept::Choose) && self.percentages == 0 {
            return Topic::Choose;
        }
        let has_pore = |amount: &super::amount::Amount| amount.unit == Unit::Micrometre;
        if !product && self.text.amounts.iter().any(has_pore) {
            return Topic::Filter;
        }
        if self.storage()
            && self.text.mentions(Concept::TreatedWater)
            && !figures
            && self.volumes.water.is_none()
        {
            return Topic::Storage;
        }
        let choosing = self.any(&[Concept::Choose, Concept::Or]);
        if !self.dose_is_complete()
            && (self.methods >= 2
                && (choosing || !self.says(Concept::HowMuch))
                && self.volumes.water.is_none()
                || self.says(Concept::Choose) && !figures)
            && !self.sun_only()
        {
            return Topic::Choose;
        }
        let in_the_open = self.bottles_on_roof()
            || self.any(&[Concept::Rain, Concept::Sunny, Concept::CloudySky]);
        if self.storage()
            && (product || !in_the_open)
            && self.volumes.water.is_none()
            && self.percentages == 0
        {
            return Topic::Storage;
        }
        if self.sun() {
            return Topic::Sun;
        }
        if self.says(Concept::Filter) && !product {
            return Topic::Filter;
        }
        if self.says(Concept::Boil) && !(product && figures) {
            return Topic::Boil;
        }
        if !figures && self.any(&[Concept::Weaker, Concept::Faster]) {
            return Topic::Adjust;
        }
        if !figures && !self.volumes.mentioned && self.says(Concept::Why) {
            return Topic::Why;
        }
        if !figures && !product && self.says(Concept::More) && self.words() <= 12 {
            return Topic::More;
        }
        if self.dose() {
            return Topic::Dose;
        }
        if self.says(Concept::Help) {
            return Topic::Help;
        }
        Topic::Unclear
    }

    pub(super) fn sun_only(&self) -> bool {
        !self.product_stated()
            && (self.any(&[Concept::Sun, Concept::Sunny]) || self.bottles_on_roof())
            && !self.any(&[Concept::Fire, Concept::Boil, Concept::Filter])
    }

    fn bottles_on_roof(&self) -> bool {
        self.says(Concept::Roof)
    }

    fn sun(&self) -> bool {
        let bright = self.any(&[Concept::Sun, Concept::Sunny]) || self.bottles_on_roof();
        let weather =
            self.any(&[Concept::CloudySky, Concept::Rain]) && self.says(Concept::Container);
        (bright || (weather && !self.product_stated()))
            && !(self.product_stated() && self.has_figures())
    }

    fn dose(&self) -> bool {
        let asks = self.any(&[Concept::HowMuch, Concept::HowLong, Concept::Treats]);
        let water = self.text.mentions(Concept::Water);
        let about_water = self.any(&[
            Concept::Clear,
            Concept::Cloudy,
            Concept::Cold,
            Concept::Sewage,
            Concept::Container,
        ]);
        let drops = self
            .text
            .amounts
            .iter()
            .any(|amount| matches!(amount.unit, Unit::Drop | Unit::Capful));
        let figures = self.has_figures() || self.volumes.mentioned || self.strength_mentioned;
        let told = self
            .text
            .items
            .iter()
            .enumerate()
            .any(|(i, _)| self.text.scope.at(i) == Standing::Aside);
        if self.product_stated() {
            // A product by itself is a question about it, or the answer to one of ours.
            return true;
        }
        let rate = drops && self.text.mentions(Concept::Per);
        if (rate || (drops || told) && (asks || figures)) && !self.says(Concept::Greeting) {
            return true;
        }
        if figures {
            // Figures among strangers are not about water: a score, a price.
            return asks || water || about_water || self.unknown_words() <= 1;
        }
        (asks && (water || about_water || self.says(Concept::Treats)))
            || (about_water && self.unknown_words() <= 2)
    }
}

/// "My bottle", "our bleach".
pub(super) fn owns_bottle(text: Text<'_>) -> bool {
    text.says(Concept::MyBottle)
        || text.places(Concept::Possessive).any(|place| {
            text.items
                .get(place + 1)
                .and_then(Item::concept)
                .is_some_and(is_product_word)
        })
}

/// The language that is asked for.
pub(super) fn language(text: Text<'_>) -> Option<String> {
    let mut named = text
        .items
        .iter()
        .enumerate()
        .filter_map(|(i, item)| match &item.tag {
            Tag::Language(tag) if text.scope.stated(i) => Some(tag.clone()),
            // English is a word for British measures as well; alone it is the language.
            _ => None,
        });
    named.next_back()
}

/// The units that are asked for.
pub(super) fn units(text: Text<'_>) -> Option<crate::quantity::UnitSystem> {
    use crate::quantity::UnitSystem;
    let us_before_unit = text.places(Concept::UsShort).any(|place| {
        text.items.get(place + 1).is_some_and(|next| {
            matches!(
                next.concept(),
                Some(Concept::Gallon | Concept::Quart | Concept::Pint | Concept::Cup)
            )
        })
    });
    let says = |concepts: &[Concept]| concepts.iter().any(|concept| text.says(*concept));
    if says(&[Concept::ImperialWord, Concept::ImperialUnits]) {
        Some(UnitSystem::Imperial)
    } else if says(&[Concept::UsWord, Concept::UsUnits]) || us_before_unit {
        Some(UnitSystem::Us)
    } else if says(&[Concept::MetricWord]) || (says(&[Concept::Litre]) && text.amounts.is_empty()) {
        Some(UnitSystem::Metric)
    } else {
        None
    }
}
