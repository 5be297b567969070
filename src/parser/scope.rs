//! What is said, what is denied and what is only told of.
//!
//! In: tagged items.
//! Out: how each item stands.
//! Promises that yesterday's figures, a friend's figures and quoted ones are not facts, and that
//! a denied word is not read as its affirmation.

use super::amount::Amount;
use super::concept::Concept;
use super::lexicon::{Grammar, Negation, UnitOrder};
use super::tag::{Item, Tag};

/// How an item stands in the message.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub(super) enum Standing {
    /// Told of yesterday, by somebody else, or in quotation marks.
    Aside,
    /// Denied.
    Denied,
    /// Said.
    #[default]
    Stated,
}

/// The standing of every item.
pub(super) struct Scope {
    standing: Vec<Standing>,
    /// Items that take back what stands before them.
    pub(super) corrections: Vec<usize>,
}

impl Scope {
    pub(super) fn of(items: &[Item], grammar: Grammar) -> Self {
        let mut scope = Self {
            standing: vec![Standing::Stated; items.len()],
            corrections: vec![],
        };
        scope.set_aside_told(items);
        scope.set_aside_quoted(items);
        scope.deny(items, grammar);
        scope.find_corrections(items);
        scope
    }

    pub(super) fn at(&self, index: usize) -> Standing {
        self.standing.get(index).copied().unwrap_or_default()
    }

    pub(super) fn stated(&self, index: usize) -> bool {
        self.at(index) == Standing::Stated
    }

    /// Whether a denied amount stands behind another of its kind, with only the denial before it:
    /// "20 L, no 200 L" may take the first one back, or rule the second one out.
    pub(super) fn denied_behind(
        &self,
        items: &[Item],
        amounts: &[Amount],
        denied: &Amount,
    ) -> bool {
        let start = denied.items.start;
        let by_denial = start
            .checked_sub(1)
            .and_then(|before| items.get(before))
            .is_some_and(|before| before.is(Concept::Negation) && before.says_no);
        by_denial
            && amounts.iter().any(|first| {
                std::mem::discriminant(&first.unit) == std::mem::discriminant(&denied.unit)
                    && first.items.end <= start
                    && self.stated(first.items.start)
                    && items
                        .get(first.items.end..start)
                        .is_some_and(|between| !between.iter().any(Item::ends_sentence))
            })
    }

    fn set(&mut self, index: usize, standing: Standing) {
        if let Some(slot) = self.standing.get_mut(index) {
            *slot = standing;
        }
    }

    fn set_aside_told(&mut self, items: &[Item]) {
        for (i, item) in items.iter().enumerate() {
            let turns = |item: &Item| item.ends_sentence() || item.is(Concept::NowWord);
            if item.is(Concept::Yesterday) {
                let start = items
                    .get(..i)
                    .and_then(|before| before.iter().rposition(turns))
                    .map_or(0, |at| at + 1);
                let end = items
                    .get(i..)
                    .and_then(|after| after.iter().position(turns))
                    .map_or(items.len(), |at| i + at);
                // "The bottle I bought yesterday" is today's bottle.
                let about_today = items.get(start..end).is_some_and(|told| {
                    told.iter()
                        .any(|item| item.is(Concept::Acquired) || item.is(Concept::Opened))
                });
                if !about_today {
                    for told in start..end {
                        self.set(told, Standing::Aside);
                    }
                }
            }
            if item.is(Concept::Reported) {
                let end = items
                    .get(i..)
                    .and_then(|after| {
                        after
                            .iter()
                            .position(|item| turns(item) || item.is_sign(&[',']))
                    })
                    .map_or(items.len(), |at| i + at);
                for told in i..end {
                    self.set(told, Standing::Aside);
                }
            }
        }
    }

    fn set_aside_quoted(&mut self, items: &[Item]) {
        for mark in ['"', '\''] {
            self.set_aside_between(items, mark);
        }
    }

    fn set_aside_between(&mut self, items: &[Item], mark: char) {
        let marks: Vec<usize> = items
            .iter()
            .enumerate()
            .filter(|(_, item)| item.is_sign(&[mark]))
            .map(|(i, _)| i)
            .collect();
        for pair in marks.chunks(2) {
            let [open, close] = pair else { continue };
            // What the label says is a fact, whoever copies it.
            let from_label = items
                .get(open.saturating_sub(4)..*open)
                .is_some_and(|before| {
                    before.iter().any(|item| {
                        item.is(Concept::Label)
                            || item.is(Concept::Container)
                            || item.is(Concept::Bleach)
                    })
                });
            if !from_label {
                for quoted in *open..*close {
                    self.set(quoted, Standing::Aside);
                }
            }
        }
    }

    fn deny(&mut self, items: &[Item], grammar: Grammar) {
        for (i, item) in items.iter().enumerate() {
            if !item.is(Concept::Negation) {
                continue;
            }
            match grammar.negation {
                // "Turbia no: clara", "kuni hatuna, tuna jua".
                Negation::Before if self.deny_at_the_end(items, i) => continue,
                Negation::Before => {}
                Negation::After => {
                    if self.deny_before(items, i) {
                        continue;
                    }
                }
            }
            let mut at = i + 1;
            let mut denied_one = false;
            while at <= i + 6 {
                let Some(next) = items.get(at) else { break };
                if next.ends_sentence() || next.is_sign(&[',']) {
                    break;
                }
                // "Does not suck and has sunken eyes": the denial ends before the joint.
                let links = is_link(next) && (at == i + 1 || !next.is(Concept::And));
                if denied_one {
                    // "no bleach or tablets": both; anything else ends it.
                    let second = (at + 1..at + 4)
                        .find(|i| items.get(*i).is_some_and(|item| !item.is_filler()));
                    let joined = second
                        .filter(|i| next.is(Concept::Or) && items.get(*i).is_some_and(deniable));
                    let Some(second) = joined else { break };
                    self.set(second, Standing::Denied);
                    at = second + 1;
                    continue;
                }
                // "Si lita 20": the unit is denied with its figure.
                let unit_of_next = grammar.unit_order == UnitOrder::EitherSide
                    && next.concept().is_some_and(super::amount::is_unit)
                    && items.get(at + 1).is_some_and(deniable);
                if unit_of_next {
                    self.set(at, Standing::Denied);
                } else if deniable(next) {
                    if self.stated(at) {
                        self.set(at, Standing::Denied);
                    }
                    denied_one = true;
                } else if !links {
                    break;
                }
                at += 1;
            }
        }
    }

    /// "Cloudy no: clear", "firewood, none": a denial behind its word, with nothing behind itself.
    fn deny_at_the_end(&mut self, items: &[Item], negation: usize) -> bool {
        let ends = items
            .get(negation + 1)
            .is_none_or(|next| next.is_sign(&[':', ',', '.', '-', ';', '!']));
        // "Is it clear? No."
        let asked = |at: &usize| !items.get(*at).is_some_and(|item| item.is_sign(&['?']));
        let mut back = (negation.saturating_sub(2)..negation).rev();
        let Some(before) = back.find(asked).filter(|_| ends) else {
            return false;
        };
        let denied = items
            .get(before)
            .is_some_and(|item| item.concept().is_some() && deniable(item));
        if denied {
            self.set(before, Standing::Denied);
        }
        denied
    }

    /// Denies the nearest word before the denial, and what is joined to it: "bleach ya tablet
    /// nahi hai". Whether there was one.
    fn deny_before(&mut self, items: &[Item], negation: usize) -> bool {
        let mut at = negation;
        let mut denied_one = false;
        for _ in 0..6 {
            let Some(before) = at.checked_sub(1) else {
                break;
            };
            let Some(item) = items.get(before) else { break };
            if item.ends_sentence() || item.is_sign(&[',']) {
                break;
            }
            // "Saaf hai ya nahi": a question.
            if !denied_one && before + 1 == negation && item.is(Concept::Or) {
                return true;
            }
            let joins = item.is(Concept::Or) || item.is(Concept::And);
            if deniable(item) && (!denied_one || joined_before(items, at)) {
                if self.stated(before) {
                    self.set(before, Standing::Denied);
                }
                denied_one = true;
            } else if !denied_one && item.concept().is_some_and(super::amount::is_unit) {
                // "5% wala nahi": the figure is denied with its unit.
            } else if !joins && (denied_one || !is_link(item)) {
                break;
            }
            at = before;
        }
        denied_one
    }

    fn find_corrections(&mut self, items: &[Item]) {
        for (i, item) in items.iter().enumerate() {
            let bare_no = item.is(Concept::Negation)
                && items
                    .get(i + 1)
                    .is_some_and(|next| next.is_sign(&[',', '.', '-']));
            if item.is(Concept::Correction) || bare_no {
                self.corrections.push(i);
            }
        }
    }
}

/// Words that may stand between a denial and its word.
fn is_link(item: &Item) -> bool {
    item.is_filler()
        || [
            Concept::Or,
            Concept::And,
            Concept::AddWord,
            Concept::Article,
            Concept::RangeWord,
            Concept::SettingsWord,
            Concept::Spoken,
            Concept::Notify,
            Concept::Perhaps,
            Concept::Of,
        ]
        .iter()
        .any(|concept| item.is(*concept))
}

/// Whether the word before this place is joined to the one behind it.
fn joined_before(items: &[Item], at: usize) -> bool {
    items
        .get(at)
        .is_some_and(|item| item.is(Concept::Or) || item.is(Concept::And))
}

/// Whether a word can be denied; others only stand between the denial and its word.
fn deniable(item: &Item) -> bool {
    match &item.tag {
        Tag::Figure(_) | Tag::Number(_) | Tag::Fraction(_) | Tag::Scale(_) | Tag::Language(_) => {
            true
        }
        // A narrow word is denied like the wide one.
        Tag::Concept(concept) => matches!(
            concept.wider().unwrap_or(*concept),
            Concept::Acid
                | Concept::Ammonia
                | Concept::Bleach
                | Concept::BleachingPowder
                | Concept::Boil
                | Concept::CalciumHypochlorite
                | Concept::Chemical
                | Concept::Chlorine
                | Concept::ChlorineDioxide
                | Concept::Clean
                | Concept::Clear
                | Concept::Cloudy
                | Concept::CloudySky
                | Concept::Cold
                | Concept::DangerSign
                | Concept::Drink
                | Concept::Filter
                | Concept::Fire
                | Concept::Full
                | Concept::Gallon
                | Concept::Hypochlorite
                | Concept::Ill
                | Concept::ImperialUnits
                | Concept::ImperialWord
                | Concept::Infant
                | Concept::Inhaled
                | Concept::Iodine
                | Concept::IodineTablet
                | Concept::IodineTincture
                | Concept::MetricWord
                | Concept::Mix
                | Concept::Mouthful
                | Concept::Nadcc
                | Concept::OtherUse
                | Concept::Poisoned
                | Concept::PoolProduct
                | Concept::PovidoneIodine
                | Concept::Powder
                | Concept::Pregnant
                | Concept::Rain
                | Concept::Salty
                | Concept::Sewage
                | Concept::Splashed
                | Concept::SpoiledHint
                | Concept::SpoiledProduct
                | Concept::Sun
                | Concept::Sunny
                | Concept::Swallowed
                | Concept::Tablet
                | Concept::Thinned
                | Concept::Thyroid
                | Concept::Unlabelled
                | Concept::UsShort
                | Concept::UsUnits
                | Concept::UsWord
                | Concept::WeakImmunity
        ),
        Tag::Date(_) | Tag::Other | Tag::Plain | Tag::Sign(_) | Tag::Unknown | Tag::Unreadable => {
            false
        }
    }
}
