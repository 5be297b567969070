//! The product, out of all the product words in a message.
//!
//! In: items, their standing, and the percentages.
//! Out: the one product that is meant, or why it cannot be told.

use crate::request::Product;

use super::concept::Concept;
use super::doubt::Doubt;
use super::scope::{Scope, Standing};
use super::strength::Percentages;
use super::tag::{Item, Tag};

/// What the product words of a message say.
#[derive(Debug, Default)]
pub(super) struct ProductReading {
    /// The one meant.
    pub(super) product: Option<Product>,
    pub(super) doubts: Vec<Doubt>,
    /// Every product named, in order, for choosing.
    pub(super) named: Vec<Product>,
    /// Whether any word for a product stands in the message, denied or not.
    pub(super) mentioned: bool,
}

/// The product that a word names by itself.
pub(super) fn named_by(concept: Concept) -> Option<Product> {
    Some(match concept {
        Concept::Bleach => Product::Bleach,
        Concept::BleachingPowder => Product::BleachingPowder,
        Concept::CalciumHypochlorite => Product::CalciumHypochlorite,
        Concept::ChlorineDioxide => Product::ChlorineDioxide,
        Concept::IodineTablet => Product::IodineTablet,
        Concept::IodineTincture => Product::IodineTincture,
        Concept::Nadcc => Product::Nadcc,
        Concept::PovidoneIodine => Product::PovidoneIodine,
        _ => return None,
    })
}

/// Whether a word has to do with a product at all.
pub(super) fn is_product_word(concept: Concept) -> bool {
    named_by(concept).is_some()
        || matches!(
            concept,
            Concept::Chlorine
                | Concept::Hypochlorite
                | Concept::Iodine
                | Concept::PoolProduct
                | Concept::Powder
                | Concept::Tablet
        )
}

pub(super) fn product(items: &[Item], scope: &Scope, percentages: &Percentages) -> ProductReading {
    let mut reading = ProductReading::default();
    let mut words: Vec<(usize, Concept)> = Vec::new();
    for (i, item) in items.iter().enumerate() {
        let Some(concept) = item.concept() else {
            continue;
        };
        reading.mentioned |= is_product_word(concept) || concept == Concept::Liquid;
        if scope.stated(i) {
            words.push((i, concept));
        }
    }
    // "My friend uses bleach of 5%; mine has no label": the product of the talk, not its figures.
    // Yesterday's may be another than today's.
    let yesterday = items.iter().any(|item| item.is(Concept::Yesterday));
    if !yesterday && !words.iter().any(|(_, word)| is_product_word(*word)) {
        let told = items.iter().enumerate().filter(|(i, item)| {
            scope.at(*i) == Standing::Aside && item.concept().is_some_and(is_product_word)
        });
        words.extend(told.filter_map(|(i, item)| Some((i, item.concept()?))));
    }
    for correction in &scope.corrections {
        let later = words
            .iter()
            .any(|(i, concept)| i > correction && named_by(*concept).is_some());
        if later {
            words.retain(|(i, concept)| i > correction || named_by(*concept).is_none());
        }
    }
    let has = |concept: Concept| words.iter().any(|(_, word)| *word == concept);
    let strongest = percentages.greatest;

    let mut named: Vec<Product> = Vec::new();
    for (_, concept) in &words {
        if let Some(product) = named_by(*concept)
            && !named.contains(&product)
        {
            named.push(product);
        }
    }
    // "Tablets of chlorine", "hypochlorite tablets", "iodine in tablets".
    let chlorine_word = has(Concept::Chlorine) || has(Concept::Hypochlorite);
    if has(Concept::Tablet) && named.is_empty() {
        match (chlorine_word, has(Concept::Iodine)) {
            (true, false) => named.push(Product::Nadcc),
            (false, true) => named.push(Product::IodineTablet),
            (true, true) => reading.doubts.push(Doubt::TwoProducts),
            (false, false) => reading.doubts.push(Doubt::TabletForm),
        }
    } else if has(Concept::Tablet) && named == [Product::Bleach] && !says_bleach(items, scope) {
        // "Tabletas de 8,5 mg de cloro".
        named = vec![Product::Nadcc];
    } else if has(Concept::Tablet) && named == [Product::Bleach] {
        named.clear();
        reading.doubts.push(Doubt::BleachTablet);
    } else if has(Concept::Powder) && (named.is_empty() || named == [Product::Bleach]) {
        named.clear();
        match strongest.and_then(powder) {
            Some(product) => named.push(product),
            None => reading.doubts.push(Doubt::PowderForm),
        }
    } else if named == [Product::Bleach]
        && strongest.is_some_and(|percent| percent >= 60.0)
        && has(Concept::Hypochlorite)
    {
        named = vec![Product::CalciumHypochlorite];
    } else if named.is_empty() && chlorine_word && !has(Concept::PoolProduct) {
        match strongest {
            // More than a liquid can have is asked about, as its strength.
            Some(_) => named.push(Product::Bleach),
            // "Chlorine solution": a liquid.
            None if has(Concept::Solution) || has(Concept::Liquid) => named.push(Product::Bleach),
            None => reading.doubts.push(Doubt::ChlorineForm),
        }
    } else if named.is_empty() && has(Concept::Iodine) {
        reading.doubts.push(Doubt::IodineForm);
    }
    reading.named.clone_from(&named);

    // Calcium hypochlorite by its name is not stabilised; a powder by its strength may be.
    let stabilised = items
        .iter()
        .enumerate()
        .any(|(i, item)| item.is(Concept::Stabilised) && scope.stated(i));
    if (has(Concept::PoolProduct) && !has(Concept::CalciumHypochlorite)) || stabilised {
        reading.doubts.push(Doubt::Pool);
    }
    if spoiled(items, scope) && !has(Concept::PlainProduct) && !has(Concept::NoSmell) {
        reading.doubts.push(Doubt::Spoiled);
    }
    match named.as_slice() {
        [one] => reading.product = Some(*one),
        [] => {}
        [_, _, ..] => reading.doubts.push(Doubt::TwoProducts),
    }
    if !reading.doubts.is_empty() {
        reading.product = None;
    }
    reading
}

/// Whether bleach is named by a word that means nothing else.
fn says_bleach(items: &[Item], scope: &Scope) -> bool {
    items
        .iter()
        .enumerate()
        .any(|(i, item)| item.tag == Tag::Concept(Concept::Bleach) && scope.stated(i))
}

/// The powder of a strength, percent.
pub(crate) fn powder(percent: f64) -> Option<Product> {
    if (60.0..=80.0).contains(&percent) {
        Some(Product::CalciumHypochlorite)
    } else if (20.0..=40.0).contains(&percent) {
        Some(Product::BleachingPowder)
    } else {
        None
    }
}

/// Scented, thickened or coloured, said of a product and not of the water or its container.
fn spoiled(items: &[Item], scope: &Scope) -> bool {
    let of_else = |i: usize| {
        items
            .get(i + 1..)
            .unwrap_or_default()
            .iter()
            .take(2)
            .find(|item| !item.is_filler())
            .is_some_and(|item| {
                matches!(
                    item.concept(),
                    Some(Concept::Cloudy | Concept::Container | Concept::Water | Concept::Clear)
                )
            })
    };
    let by_product = |i: usize| {
        let start = i.saturating_sub(3);
        let parts = |item: &Item| item.ends_sentence() || item.is_sign(&[',']);
        let before = items.get(start..i).unwrap_or_default();
        let after = items.get(i + 1..).unwrap_or_default();
        let is_product = |item: &Item| item.concept().is_some_and(is_product_word);
        before
            .iter()
            .rev()
            .take_while(|item| !parts(item))
            .any(is_product)
            || after
                .iter()
                .take(3)
                .take_while(|item| !parts(item))
                .any(is_product)
    };
    items.iter().enumerate().any(|(i, item)| {
        scope.stated(i)
            && !of_else(i)
            && (item.is(Concept::SpoiledProduct)
                || (item.is(Concept::SpoiledHint) && by_product(i)))
    })
}
