//! Which work a message is about: a solution, a chlorine test, a well, a stock, storing.
//!
//! In: the whole message, read.
//! Out: yes or no for each.

use crate::request::Product;

use super::amount::Unit;
use super::concept::Concept;
use super::facts::Text;
use super::product::is_product_word;
use super::strength::Percentages;
use super::test_kit::READING_MAX;
use super::topic::{SHORT, Signals, owns_bottle};
use super::volume::Volumes;

/// Solutions for hands, floors, spills and stock go up to this, percent.
const WEAK_PERCENT: f64 = 2.0;
/// Parts of water to one of product: less would be a range of something else.
const RATIO_LEAST: f64 = 5.0;
/// So many people are served from no one bucket.
const MANY_HEADS: f64 = 20.0;
/// Less than this for each person and day is no drinking water, L.
const LEAST_TO_DRINK_L: f64 = 0.2;
/// Larger bottles of a product are seldom sold, L.
const BOTTLE_MAX_L: f64 = 5.0;
/// Solutions for floors and spills of every day go up to this, percent.
const FLOORS_PERCENT: f64 = 0.5;

impl Signals<'_> {
    pub(super) fn dilutes(&self) -> bool {
        let purpose = self.any(&[
            Concept::Cleaning,
            Concept::HandWashing,
            Concept::Spill,
            Concept::StockSolution,
        ]) || (self.percentages >= 2
            && self.any(&[Concept::Blood, Concept::VomitWord, Concept::Stools])
            && !self.any(&[Concept::PersonNoun, Concept::Infant]));
        let solution = self.says(Concept::Solution) || self.says(Concept::MakeWord);
        // "20 L of drinking water on the ward": a dose, wherever the water stands.
        let drunk = self.any(&[Concept::ToDrink, Concept::Drink]);
        if self.dose_is_complete() && drunk && !self.says(Concept::Solution) {
            return false;
        }
        let stock = !self.product.mentioned && self.product.product.is_some();
        // "2% chlorine solution, 40 L, cloudy": the water is told of.
        let of_water = self.dose_is_complete()
            && !purpose
            && self.percentages == 1
            && self.any(&[Concept::Clear, Concept::Cloudy]);
        if stock || of_water {
            return false;
        }
        if self.weak_solution() || self.ratio() {
            return true;
        }
        // "Now the floor", "mop floor 10 L": whatever it is done with.
        let only_purpose = purpose
            && !self.says(Concept::ToDrink)
            && !self.says(Concept::Drink)
            && !self.says(Concept::StockSolution)
            && (self.volumes.water.is_some() || self.product_stated() || self.words() <= SHORT);
        if only_purpose && !self.text.mentions(Concept::NewTank) && !self.says(Concept::Ill) {
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
    pub(super) fn weak_solution(&self) -> bool {
        let mut percents = self.percents.to_vec();
        percents.sort_by(f64::total_cmp);
        match percents.as_slice() {
            // "Make 0.5%, 10 L": no label has so little, and nobody makes water.
            [one]
                if *one <= FLOORS_PERCENT
                    && self.says(Concept::MakeWord)
                    && !self.percent_by_product() =>
            {
                !self.says(Concept::ToDrink)
                    && !self.says(Concept::Drink)
                    && !self.says(Concept::Treats)
                    && !self.text.mentions(Concept::Water)
            }
            // A tablet has no percentage: "tablets of 5 g for 0.5%".
            [one] if self.product.product == Some(Product::Nadcc) => *one <= WEAK_PERCENT,
            [one] => {
                *one <= WEAK_PERCENT && self.says(Concept::Solution) && !self.product.mentioned
            }
            [weak, strong] => {
                *weak <= WEAK_PERCENT && *strong >= *weak * 3.0 && self.says(Concept::FromWord)
            }
            _ => false,
        }
    }

    /// "1 to 10", "1:100": parts of product and water are no dose.
    fn ratio(&self) -> bool {
        let one = |amount: &super::amount::Amount| {
            amount.unit == Unit::Pieces && (amount.figure.value - 1.0).abs() < 1e-9
        };
        let ratio = self.text.stated().any(|amount| {
            // Behind a colon there is no doubt.
            let next = |at: usize| {
                self.text
                    .amounts
                    .iter()
                    .find(|other| other.items.start == at && other.unit == Unit::Pieces)
                    .is_some_and(|other| other.figure.value >= 2.0)
            };
            let sign = self
                .text
                .items
                .get(amount.items.end)
                .is_some_and(|item| item.is_sign(&[':']));
            one(amount)
                && (amount.upper.is_some_and(|upper| upper >= RATIO_LEAST)
                    || (sign && next(amount.items.end + 1)))
        });
        ratio && self.product_stated() && !self.says(Concept::Container)
    }

    /// "Bleach 0.5%": the label of a weak product.
    fn percent_by_product(&self) -> bool {
        let product = |at: usize| self.text.concept_at(at).is_some_and(is_product_word);
        self.text.amounts.iter().any(|amount| {
            let before = amount.items.start.checked_sub(1);
            amount.unit == Unit::Percent
                && (before.is_some_and(product) || product(amount.items.end))
        })
    }

    /// No kit, or what the nose says after the wait.
    pub(super) fn by_the_nose(&self) -> bool {
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

    pub(super) fn residual(&self) -> bool {
        // "I put 10 mL in 20 L, can we drink?": whatever the figures, a dose more is not asked.
        let dosed = super::test_kit::dosed_already(self.text)
            && !self.any(&[Concept::DataWord, Concept::Remember, Concept::NotMade]);
        let drunk = self.dose_is_complete()
            && self.any(&[Concept::NoSmell, Concept::Smell, Concept::StrongSmell])
            && !self.says(Concept::HowMuch);
        dosed
            || drunk
            || self.text.jars.is_some()
            || self.says(Concept::JarTest)
            || self.by_the_nose()
            || self.residual_read()
    }

    pub(super) fn residual_read(&self) -> bool {
        // "To get a residual of 0.5 in 2000 L": the dose is asked.
        if self.any(&[Concept::WantedLevel, Concept::SettingsWord])
            && super::test_kit::residual(self.text).is_none()
            && self.product_stated()
        {
            return false;
        }
        let tested = self.any(&[Concept::TestWord, Concept::Residual]);
        let in_mg = self.text.amounts.iter().any(|amount| {
            (amount.unit == Unit::MgPerLitre || (amount.unit == Unit::Ppm && tested))
                && self.text.scope.stated(amount.items.start)
                && !super::test_kit::is_wanted(self.text, amount.items.start)
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
        let read = in_mg || super::test_kit::bare_reading(self.text).is_some();
        if read && (tests || self.any(&[Concept::TapStand, Concept::AtHome, Concept::AskToAdd])) {
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

    pub(super) fn well(&self) -> bool {
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

    pub(super) fn supply(&self) -> bool {
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
        let stock = self.volumes.stock_ml.is_some()
            || self.volumes.of_product_l.is_some()
            || weighed
            || counted;
        // So many people for so many days: of which product is asked.
        let planning = self.any(&[Concept::HowMuch, Concept::LastsWord, Concept::ServesWord])
            || self.says(Concept::SupplyWord);
        let bare_plan = people && days.is_some() && self.unknown_words() == 0;
        if (people && days.is_some() && planning)
            || (people && self.says(Concept::LastsWord))
            || (bare_plan && !self.says(Concept::Ill) && !self.iodine())
        {
            return true;
        }
        // "2 kg of powder, 400 people", "5 L of bleach, 100 people": nobody drinks 50 mL a day.
        let heads = super::facts::counted(self.text, &[Concept::PeopleWord]);
        let too_little = heads
            .zip(self.volumes.water)
            .is_some_and(|(heads, water)| water.litres / heads < LEAST_TO_DRINK_L);
        // "200 people, how much": of which water nobody says.
        let many = heads.is_some_and(|heads| heads >= MANY_HEADS)
            && self.says(Concept::HowMuch)
            && !self.volumes.mentioned
            && !self.text.mentions(Concept::Residual)
            && !super::well::says_well(self.text);
        if self.product_stated()
            && heads.is_some()
            && (many || weighed || too_little || super::facts::litres_each(self.text).is_some())
        {
            return true;
        }
        if !self.product.mentioned && !owns_bottle(self.text) {
            return false;
        }
        // "I have 200 tablets of 67 mg, how much water is that?"
        if counted
            && self.product_stated()
            && self.tablet_mg.is_some()
            && self.volumes.water.is_none()
            && !self.volumes.mentioned
            && self.says(Concept::HowMuch)
            && (self.text.mentions(Concept::Water)
                || self.text.mentions(Concept::WaterDepth)
                || self.says(Concept::Treats))
        {
            return true;
        }
        // "2 L of 4% bleach, how much water will it treat?", in whatever order.
        let bottle = self
            .volumes
            .water
            .is_none_or(|water| water.litres <= BOTTLE_MAX_L);
        // "Bottle of 4% bleach of 750 mL: treats how many litres?"
        let of_bottle = self.says(Concept::Bottle)
            && !self.says(Concept::HowMuch)
            && self.text.places(Concept::SupplyWord).any(|place| {
                self.text.amounts.iter().any(|amount| {
                    matches!(amount.unit, Unit::Litres(..)) && amount.items.end <= place
                })
            });
        if self.volumes.mentioned
            && bottle
            && (self.asks_how_much_water() || (of_bottle && self.product_stated()))
        {
            return true;
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

    /// "How much water", "how many litres", "maji lita ngapi", and that it is treated.
    fn asks_how_much_water(&self) -> bool {
        let of_water = |at: usize| {
            self.text.items.get(at).is_some_and(|item| {
                item.is(Concept::Water) || item.is(Concept::Litre) || item.is(Concept::WaterDepth)
            })
        };
        let covered = |at: usize| {
            let mut amounts = self.text.amounts.iter();
            amounts.any(|amount| amount.items.contains(&at))
        };
        let beside = |at: usize| of_water(at) && !covered(at);
        let asked = self
            .text
            .places(Concept::HowMuch)
            .any(|place| beside(place + 1) || place.checked_sub(1).is_some_and(beside));
        asked && self.says(Concept::Treats) && self.product_stated()
    }

    pub(super) fn iodine(&self) -> bool {
        self.any(&[
            Concept::Iodine,
            Concept::IodineTablet,
            Concept::IodineTincture,
            Concept::PovidoneIodine,
        ])
    }

    pub(super) fn storage(&self) -> bool {
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
}

/// "1% stock solution, how much for 200 L": the stock is there, and water is to be treated.
pub(super) fn uses_made_stock(text: Text<'_>, percents: &Percentages, volumes: &Volumes) -> bool {
    let one = matches!(percents.good.as_slice(), [one] if one.percent <= WEAK_PERCENT);
    one && percents.doubts.is_empty()
        && volumes.water.is_some()
        && text.says(Concept::HowMuch)
        && (text.says(Concept::StockSolution) || text.says(Concept::UsesStock))
        && !text.says(Concept::MakeWord)
        && !text.says(Concept::Cleaning)
        && !text.says(Concept::HandWashing)
        && !text.says(Concept::Spill)
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
