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
use super::volume::Volumes;

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

/// Solutions for hands, floors, spills and stock go up to this, percent.
const WEAK_PERCENT: f64 = 2.0;

/// No field kit shows more, mg/L.
const READING_MAX: f64 = 20.0;

/// A message of at most so many words is a bare command.
const SHORT: usize = 4;

impl Signals<'_> {
    fn says(&self, concept: Concept) -> bool {
        self.text.says(concept)
    }

    fn any(&self, concepts: &[Concept]) -> bool {
        concepts.iter().any(|concept| self.says(*concept))
    }

    fn words(&self) -> usize {
        self.text
            .items
            .iter()
            .filter(|item| !matches!(item.tag, Tag::Sign(_)))
            .count()
    }

    fn unknown_words(&self) -> usize {
        self.text
            .items
            .iter()
            .filter(|item| item.tag == Tag::Unknown)
            .count()
    }

    fn has_figures(&self) -> bool {
        self.volumes.water.is_some() || self.percentages > 0 || self.tablet_mg.is_some()
    }

    fn product_stated(&self) -> bool {
        self.text.items.iter().enumerate().any(|(i, item)| {
            item.concept().is_some_and(is_product_word) && self.text.scope.stated(i)
        })
    }

    /// Enough to work a dose out.
    fn dose_is_complete(&self) -> bool {
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

    /// Swallowed, splashed, breathed in, or meant to be drunk as a remedy.
    fn exposure(&self) -> bool {
        let text = self.text;
        let is_product = |index: usize| {
            text.items
                .get(index)
                .and_then(Item::concept)
                .is_some_and(is_product_word)
        };
        let made_water_of = |index: usize| {
            text.items
                .get(index + 1)
                .is_some_and(|next| next.is(Concept::Water) || next.is(Concept::TreatedWater))
        };
        // "Ate, …" at the head is how somebody is addressed.
        let addressed =
            |place: usize| place == 0 && text.items.get(1).is_some_and(|next| next.is_sign(&[',']));
        let mouthfuls = text.places(Concept::Mouthful);
        let swallowed = text
            .places(Concept::Swallowed)
            .chain(mouthfuls)
            .any(|place| {
                if addressed(place) {
                    return false;
                }
                for at in place + 1..(place + 10).min(text.items.len()) {
                    let Some(item) = text.items.get(at) else {
                        break;
                    };
                    if item.ends_sentence()
                        || item.is(Concept::Water)
                        || item.is(Concept::TreatedWater)
                    {
                        return false;
                    }
                    if is_product(at) {
                        return !made_water_of(at);
                    }
                }
                let before = (place.saturating_sub(8)..place)
                    .rev()
                    .take_while(|at| {
                        text.items.get(*at).is_some_and(|item| {
                            !item.ends_sentence()
                                && !item.is(Concept::Water)
                                && !item.is(Concept::TreatedWater)
                        })
                    })
                    .any(is_product);
                let about_water = text.mentions(Concept::Water) || self.volumes.mentioned;
                // "My child swallowed it": of nothing else is there talk.
                before || (!about_water && !self.says(Concept::Ill) && self.words() <= SHORT * 2)
            });
        let about_to_drink = text.places(Concept::Drink).any(|place| {
            let mut at = place + 1;
            while let Some(item) = text.items.get(at) {
                if is_product(at) {
                    return !made_water_of(at);
                }
                let amount = text.amounts.iter().find(|amount| amount.items.start == at);
                match amount {
                    Some(amount) => at = amount.items.end,
                    None if item.is(Concept::Determiner)
                        || item.is(Concept::Article)
                        || item.is(Concept::Of)
                        || item.is(Concept::PlainProduct)
                        || item.is(Concept::Possessive) =>
                    {
                        at += 1;
                    }
                    None => return false,
                }
            }
            false
        });
        let product = self.product_stated();
        let mixture = self.any(&[Concept::Acid, Concept::Ammonia, Concept::Mix]);
        let washing_only = self.any(&[Concept::Washing, Concept::Wound])
            && !self.any(&[Concept::Splashed, Concept::OnBody]);
        swallowed
            || about_to_drink
            || (product && self.any(&[Concept::Remedy, Concept::Poisoned]))
            || (self.says(Concept::OnBody)
                && !washing_only
                && (product || self.says(Concept::Splashed) || self.words() <= SHORT * 2))
            || (product && self.any(&[Concept::Eye, Concept::Skin]) && self.says(Concept::Splashed))
            || (self.says(Concept::Inhaled)
                && (product || mixture || text.places(Concept::Inhaled).count() > 1))
    }

    /// The short words of an SMS service, said without figures.
    fn command(&self) -> Option<Topic> {
        if self.has_figures() {
            return None;
        }
        let short = self.words() <= SHORT;
        let about_messages = self.text.mentions(Concept::MessageWord);
        let stops = self.text.mentions(Concept::StopWord)
            || (self.text.mentions(Concept::Cease) && about_messages);
        if stops && (short || about_messages) && !self.any(&[Concept::Filter, Concept::Germ]) {
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

    fn illness_urgent(&self) -> bool {
        if self.dilutes() {
            return false;
        }
        // "Does the filter stop cholera?" tells of nobody who is ill.
        // "0.3 at the tap, cholera in the village", "clean up vomit": what is asked is another thing.
        let asks_other =
            self.residual_read() || (self.says(Concept::Spill) && !self.says(Concept::PersonNoun));
        let of_germs =
            self.any(&[Concept::Filter, Concept::Germ]) && !self.says(Concept::PersonNoun);
        // "Cholera has come" by itself is a call for help; beside a product it tells why one asks.
        let outbreak = self.says(Concept::Outbreak)
            && !self.product_stated()
            && !self.any(&[Concept::HowMuch, Concept::Residual])
            && !super::facts::says_well(self.text)
            && !self.text.mentions(Concept::Storage);
        self.says(Concept::DangerSign)
            || outbreak
            || (self.says(Concept::Ill)
                && !self.dose_is_complete()
                && !asks_other
                && !of_germs
                // "Treat our well after the cholera": nobody asks for the sick here.
                && (!self.has_well_size || !self.product_stated()))
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
        if product && (self.says(Concept::OtherUse) || wound) {
            return Some(Refusal::OtherUse);
        }
        None
    }

    fn dilutes(&self) -> bool {
        let purpose = self.any(&[
            Concept::Cleaning,
            Concept::HandWashing,
            Concept::Spill,
            Concept::StockSolution,
        ]);
        let solution = self.says(Concept::Solution) || self.says(Concept::MakeWord);
        // "20 L of drinking water on the ward": a dose, wherever the water stands.
        if self.dose_is_complete() && self.says(Concept::ToDrink) && !self.says(Concept::Solution) {
            return false;
        }
        if self.weak_solution() {
            return true;
        }
        let made = self.says(Concept::Solution) && self.says(Concept::MakeWord);
        // For hands and spills nobody asks a drinking dose.
        let not_to_drink = self.any(&[Concept::HandWashing, Concept::Spill])
            && (self.product.mentioned || self.volumes.mentioned || self.says(Concept::Mix));
        not_to_drink
            || (purpose
                && (self.strength_mentioned
                    || (self.product.mentioned && self.volumes.mentioned)
                    || made
                    || self.says(Concept::Solution)
                    || (solution && self.product.mentioned)))
            || (self.percentages >= 2 && (solution || self.says(Concept::DiluteWord)))
    }

    /// "0.5% solution, 10 L" of nothing in particular, or "1% from powder 70%".
    fn weak_solution(&self) -> bool {
        let mut percents = self.percents.to_vec();
        percents.sort_by(f64::total_cmp);
        match percents.as_slice() {
            [one] => {
                *one <= WEAK_PERCENT && self.says(Concept::Solution) && !self.product.mentioned
            }
            [weak, strong] => {
                *weak <= WEAK_PERCENT && *strong >= *weak * 3.0 && self.says(Concept::FromWord)
            }
            _ => false,
        }
    }

    fn ordinary(&self) -> Topic {
        let figures = self.has_figures();
        let product = self.product_stated();
        if !figures && self.any(&[Concept::NotMade, Concept::LeftInBottle]) {
            return Topic::Stock;
        }
        // "Opened 1 March 2026": of the bottle that is remembered.
        if super::facts::opened(self.text).is_some() && !figures && !self.volumes.mentioned {
            return Topic::Stock;
        }
        if (self.says(Concept::Remember)
            && !self.says(Concept::HowMuch)
            && (product || self.strength_mentioned || owns_bottle(self.text)))
            || (owns_bottle(self.text)
                && (self.percentages > 0 || self.tablet_mg.is_some())
                && (!self.volumes.mentioned || super::facts::opened(self.text).is_some())
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

    /// No kit, or what the nose says after the wait.
    fn by_the_nose(&self) -> bool {
        let smells = self.any(&[Concept::NoSmell, Concept::Smell]);
        let of_chlorine = self.product_stated()
            || self.text.mentions(Concept::TreatedWater)
            || self.text.mentions(Concept::Water)
            || self
                .text
                .amounts
                .iter()
                .any(|amount| matches!(amount.unit, Unit::Minutes(_)))
            || self.words() <= SHORT * 2;
        !self.dose_is_complete()
            && self.percentages == 0
            && (self.says(Concept::NoKit) || (smells && of_chlorine))
    }

    fn residual(&self) -> bool {
        self.text.jars.is_some()
            || self.says(Concept::JarTest)
            || self.by_the_nose()
            || self.residual_read()
    }

    fn residual_read(&self) -> bool {
        let in_mg = self.text.amounts.iter().any(|amount| {
            matches!(amount.unit, Unit::MgPerLitre)
                && self.text.scope.stated(amount.items.start)
                && amount.figure.value < READING_MAX
        });
        // "0.1 mg/L chlorine in the bucket": a reading, whatever it is called.
        let tests = self.any(&[Concept::TestWord, Concept::Residual]);
        let names_it = self.text.mentions(Concept::Chlorine) || tests;
        let bare_reading = self.says(Concept::TestWord)
            && self.percentages == 0
            && !self.product_stated()
            && self
                .text
                .amounts
                .iter()
                .any(|amount| amount.unit == Unit::Pieces && amount.figure.value < READING_MAX);
        // "Reading 0.2, tank 5000 L, bleach 5%, how much to add."
        let read = in_mg || super::facts::bare_reading(self.text).is_some();
        if read
            && (tests || self.any(&[Concept::TapStand, Concept::AtHome, Concept::AskToAdd]))
            && self.any(&[
                Concept::AddWord,
                Concept::AskToAdd,
                Concept::TapStand,
                Concept::AtHome,
            ])
        {
            return true;
        }
        if (in_mg
            && self.percentages == 0
            && self.volumes.water.is_none()
            && names_it
            && !self.dilutes())
            || bare_reading
        {
            return true;
        }
        if self.says(Concept::Residual) && self.any(&[Concept::TooLow, Concept::AskToAdd]) {
            return true;
        }
        self.text.mentions(Concept::Residual)
            && (self
                .text
                .amounts
                .iter()
                .any(|amount| matches!(amount.unit, Unit::MgPerLitre | Unit::Pieces | Unit::Ppm))
                || !(self.product.product.is_some() && self.volumes.water.is_some()))
    }

    fn well(&self) -> bool {
        // "Well, how much": only a greeting.
        if !self.says(Concept::Well) && !self.says(Concept::SureWell) {
            return false;
        }
        // "A bucket of 15 L from the well": the bucket is to be treated.
        if self.volumes.water.is_some() && !self.well_is_whole {
            return false;
        }
        self.has_well_size
            || (self.says(Concept::SureWell)
                && self.volumes.water.is_none()
                && !self.volumes.mentioned
                && self.any(&[Concept::HowMuch, Concept::MakeWord, Concept::Clean]))
            || self.says(Concept::Dug)
            || self.any(&[Concept::Deep, Concept::Wide])
            || (self.product_stated() && self.volumes.water.is_none())
            || (self.says(Concept::Treats) && self.volumes.water.is_none())
    }

    fn supply(&self) -> bool {
        let has = |unit: fn(&Unit) -> bool| {
            self.text
                .amounts
                .iter()
                .any(|amount| unit(&amount.unit) && self.text.scope.stated(amount.items.start))
        };
        let days = super::facts::days(self.text);
        let people = super::facts::counted(self.text, &[Concept::PeopleWord])
            .or_else(|| super::facts::family(self.text))
            .is_some();
        let of_people = self.any(&[Concept::PeopleWord, Concept::Family]);
        let counted = super::facts::counted(
            self.text,
            &[Concept::Tablet, Concept::Nadcc, Concept::IodineTablet],
        )
        .is_some();
        let weighed = has(|unit| matches!(unit, Unit::Grams(_)));
        let stock = self.volumes.stock_ml.is_some() || weighed || counted;
        // So many people for so many days: of which product is asked.
        let planning = self.any(&[Concept::HowMuch, Concept::LastsWord, Concept::ServesWord])
            || self.says(Concept::SupplyWord);
        if (people && days.is_some() && planning) || (people && self.says(Concept::LastsWord)) {
            return true;
        }
        if !self.product.mentioned && !owns_bottle(self.text) {
            return false;
        }
        let treats = self.says(Concept::Treats) && self.volumes.water.is_none();
        let planned = days.is_some_and(|days| days >= 2.0)
            && self.says(Concept::HowMuch)
            && !self.iodine()
            && !self.says(Concept::Container)
            && !self.text.mentions(Concept::Storage)
            && self.volumes.water.is_none();
        let asks_stock = self.says(Concept::SupplyWord)
            && (stock || people || days.is_some() || (of_people && days.is_some()));
        let asks_water = self.says(Concept::SupplyWord)
            && !self.storage()
            && !self.sun_only()
            && self.volumes.water.is_none()
            && self.says(Concept::Treats);
        asks_stock
            || self.says(Concept::StockOnHand)
            || (people && days.is_some())
            || (treats && stock && self.text.mentions(Concept::Water))
            || planned
            || asks_water
            // "12 bottles of 750 ml: total water this stock can treat?"
            || (self.says(Concept::SupplyWord) && self.says(Concept::Treats) && !self.storage())
    }

    fn iodine(&self) -> bool {
        self.any(&[
            Concept::Iodine,
            Concept::IodineTablet,
            Concept::IodineTincture,
            Concept::PovidoneIodine,
        ])
    }

    fn storage(&self) -> bool {
        self.any(&[Concept::KeepIt, Concept::KeepProduct])
            // "How long is treated water good?"
            || (self.text.mentions(Concept::TreatedWater)
                && !self.has_figures()
                && (self.any(&[Concept::HowLong, Concept::Ago])
                    || self
                        .text
                        .amounts
                        .iter()
                        .any(|amount| matches!(amount.unit, Unit::Days(_)))))
            || self.text.mentions(Concept::Storage)
                && (self.text.mentions(Concept::TreatedWater)
                    || self.text.mentions(Concept::Water)
                    || self.says(Concept::Container)
                    || self.product_stated())
    }

    fn sun_only(&self) -> bool {
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
        let rate = drops && self.says(Concept::Per);
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

/// Whether the message asks how much product to add. "Do we need to worry" does not.
pub(super) fn asks_amount(text: Text<'_>) -> bool {
    let product = text
        .items
        .iter()
        .enumerate()
        .any(|(i, item)| item.concept().is_some_and(is_product_word) && text.scope.stated(i));
    let volume = text
        .amounts
        .iter()
        .any(|amount| matches!(amount.unit, Unit::Litres(..)));
    text.says(Concept::AskToAdd)
        || (text.says(Concept::HowMuch) && (text.says(Concept::AddWord) || product || volume))
}

/// Whether it is the product that is to be kept.
pub(super) fn keeps_product(text: Text<'_>) -> bool {
    let product = text
        .items
        .iter()
        .enumerate()
        .any(|(i, item)| item.concept().is_some_and(is_product_word) && text.scope.stated(i));
    let of_water = text.mentions(Concept::TreatedWater) || text.mentions(Concept::Water);
    (product && !of_water) || text.says(Concept::KeepProduct)
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
