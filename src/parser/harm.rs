//! Whether somebody is hurt or ill: that comes first, whatever else the message says.
//!
//! In: the whole message, read.
//! Out: yes or no.

use super::concept::Concept;
use super::product::is_product_word;
use super::scope::Standing;
use super::tag::Item;
use super::topic::{SHORT, Signals};

/// More than anybody swallows of a product, L.
const WATER_LEAST_L: f64 = 5.0;

impl Signals<'_> {
    /// Swallowed, splashed, breathed in, or meant to be drunk as a remedy.
    pub(super) fn exposure(&self) -> bool {
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
        // Whoever tells it and whenever it was: somebody may be hurt.
        let mouthfuls = text.told(Concept::Mouthful);
        let swallowed = text.told(Concept::Swallowed).chain(mouthfuls).any(|place| {
            if addressed(place) {
                return false;
            }
            for at in place + 1..(place + 10).min(text.items.len()) {
                let Some(item) = text.items.get(at) else {
                    break;
                };
                // "Bleach ke do ghoont pi liye.": what was swallowed stands before.
                if item.ends_sentence() {
                    break;
                }
                if item.is(Concept::Water) || item.is(Concept::TreatedWater) {
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
        // Nobody drinks 20 L of bleach: that is water to be drunk.
        let of_water = self.dose_is_complete()
            && self
                .volumes
                .water
                .is_some_and(|water| water.litres >= WATER_LEAST_L);
        let about_to_drink = !of_water
            && text.places(Concept::Drink).any(|place| {
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
        let told = |concept: Concept| text.told(concept).next().is_some();
        let product = self.text.items.iter().enumerate().any(|(i, item)| {
            item.concept().is_some_and(is_product_word) && text.scope.at(i) != Standing::Denied
        });
        let mixture = self.any(&[Concept::Acid, Concept::Ammonia, Concept::Mix]);
        let washing_only = self.any(&[Concept::Washing, Concept::Wound])
            && !self.any(&[Concept::Splashed, Concept::OnBody]);
        swallowed
            || about_to_drink
            || (product && (told(Concept::Remedy) || told(Concept::Poisoned)))
            || (told(Concept::OnBody)
                && !washing_only
                && (product || self.says(Concept::Splashed) || self.words() <= SHORT * 2))
            || (product && self.any(&[Concept::Eye, Concept::Skin]) && self.says(Concept::Splashed))
            || (told(Concept::Inhaled)
                && (product || mixture || text.places(Concept::Inhaled).count() > 1))
    }

    pub(super) fn illness_urgent(&self) -> bool {
        // "A child has diarrhoea, and how do I clean the floor?"
        let somebody = self.says(Concept::Ill)
            && self.any(&[Concept::PersonNoun, Concept::Infant])
            && !self.says(Concept::Spill);
        if self.dilutes() {
            return somebody && !self.dose_is_complete();
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
            && !super::well::says_well(self.text)
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
}
