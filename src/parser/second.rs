//! Further questions in one message: "how much for 20 L, and how do I store it?"
//!
//! In: the items of a message and the topic it was read as.
//! Out: other topics that a part of it asks about by itself.
//! Does not read their facts: the person is told that the question was seen.

use crate::quantity::UnitSystem;
use crate::request::Topic;

use super::amount::{self, Unit};
use super::concept::Concept;
use super::facts::Text;
use super::lexicon::Grammar;
use super::product::is_product_word;
use super::scope::Scope;
use super::tag::Item;

/// Topics beside `first` that the message asks about.
pub(super) fn questions(
    items: &[Item],
    grammar: Grammar,
    units: UnitSystem,
    first: Topic,
) -> Vec<Topic> {
    // A bare command has nothing beside it.
    match first {
        Topic::Boil
        | Topic::Choose
        | Topic::Dilute
        | Topic::Dose
        | Topic::Exposure
        | Topic::Filter
        | Topic::Illness
        | Topic::Residual
        | Topic::Stock
        | Topic::Storage
        | Topic::Sun
        | Topic::Supply
        | Topic::Well => {}
        Topic::Adjust
        | Topic::Forget
        | Topic::Help
        | Topic::More
        | Topic::Remind
        | Topic::Settings
        | Topic::Start
        | Topic::Stop
        | Topic::Unclear
        | Topic::Why => return Vec::new(),
    }
    let parts: Vec<&[Item]> = items
        .split(|item| item.ends_sentence() || item.is(Concept::And) || item.is_sign(&[',', '?']))
        .filter(|part| !part.is_empty())
        .collect();
    if parts.len() < 2 {
        return Vec::new();
    }
    let mut also = Vec::new();
    for part in parts {
        let amounts = amount::amounts(part, grammar, units);
        let scope = Scope::of(part, grammar);
        let text = Text {
            items: part,
            amounts: &amounts,
            scope: &scope,
            jars: None,
            grammar,
        };
        if let Some(topic) = asked_by(text)
            && topic != first
            && !also.contains(&topic)
        {
            also.push(topic);
        }
    }
    also
}

/// The topic that a part asks about, where its words leave no doubt.
fn asked_by(text: Text<'_>) -> Option<Topic> {
    let says = |concept| text.says(concept);
    let has = |unit: fn(&Unit) -> bool| text.amounts.iter().any(|amount| unit(&amount.unit));
    let figures = has(|unit| matches!(unit, Unit::Litres(..) | Unit::Percent | Unit::Milligram));
    let reminds = says(Concept::Remind) || (says(Concept::Notify) && says(Concept::WaitOver));
    if reminds && !figures {
        return Some(Topic::Remind);
    }
    if (says(Concept::Storage) || says(Concept::KeepIt) || says(Concept::KeepProduct))
        && !figures
        && !says(Concept::Fire)
    {
        return Some(Topic::Storage);
    }
    if says(Concept::Boil) && says(Concept::HowLong) {
        return Some(Topic::Boil);
    }
    let sized = has(|unit| matches!(unit, Unit::Metres(_)));
    if (says(Concept::Well) || says(Concept::SureWell))
        && (sized || says(Concept::HowMuch) || says(Concept::Dug) || says(Concept::Treats))
    {
        return Some(Topic::Well);
    }
    if (says(Concept::HowMuch) || says(Concept::Clean) || !figures)
        && (says(Concept::HandWashing) || says(Concept::Spill) || says(Concept::Cleaning))
    {
        return Some(Topic::Dilute);
    }
    if says(Concept::Why) && !figures {
        return Some(Topic::Why);
    }
    let product = text
        .items
        .iter()
        .any(|item| item.concept().is_some_and(is_product_word));
    if says(Concept::HowMuch) && (product || figures) {
        return Some(Topic::Dose);
    }
    None
}
