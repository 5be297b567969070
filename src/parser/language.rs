//! Which language a message is in.
//!
//! In: the text, the lexicons, and the language that the person set or wrote last.
//! Out: one of the lexicons' languages.
//! Promises that a message too short to tell is in the person's language.
//! Knows no language: a word counts for the lexicons that know it, the more the fewer they are.

use super::lexicon::Lexicon;
use super::normalize::normalize;
use super::token::{TokenKind, tokenize};

/// What a message's language is compared with.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Expected<'a> {
    /// The language that comes with the message, or that the person set.
    Set(&'a str),
    /// The language of the message before.
    Wrote(&'a str),
    /// Nothing is known of the person: the deployment's own.
    Usual(&'a str),
}

impl<'a> Expected<'a> {
    /// The language.
    #[must_use]
    pub const fn tag(self) -> &'a str {
        match self {
            Self::Set(tag) | Self::Wrote(tag) | Self::Usual(tag) => tag,
        }
    }

    /// So many words more must speak for another language.
    const fn margin(self) -> f64 {
        match self {
            Self::Set(_) => 1.4,
            Self::Wrote(_) => 0.7,
            Self::Usual(_) => 0.1,
        }
    }
}

/// The weight of a word that a language has as it is written.
const KNOWN: f64 = 1.0;
/// Text-speak of a language.
const SLIP: f64 = 0.9;
/// A word with a little word glued to it.
const PREFIXED: f64 = 0.8;
/// A word that is one slip away from one of the language.
const MENDED: f64 = 0.35;
/// A word that is only spelt with the language's letters.
const SPELT: f64 = 0.6;

/// The language of a text, as an index into the lexicons.
#[must_use]
pub fn recognise(text: &str, lexicons: &[&Lexicon], expected: Expected<'_>) -> Option<usize> {
    let usual = lexicons
        .iter()
        .position(|lexicon| lexicon.tag() == expected.tag());
    let scores = scores(text, lexicons);
    let (best, score) = scores
        .iter()
        .enumerate()
        .max_by(|(_, a), (_, b)| a.total_cmp(b))
        .map(|(i, score)| (i, *score))?;
    let Some(usual) = usual else {
        return (score > 0.0).then_some(best);
    };
    let at_home = scores.get(usual).copied().unwrap_or_default();
    Some(if score > at_home + expected.margin() {
        best
    } else {
        usual
    })
}

/// How many of a text's words speak for each language.
fn scores(text: &str, lexicons: &[&Lexicon]) -> Vec<f64> {
    let mut scores = vec![0.0; lexicons.len()];
    let plain = normalize(text);
    let tokens = tokenize(&plain, text.len());
    for token in &tokens {
        let TokenKind::Word(word) = &token.kind else {
            continue;
        };
        let weights: Vec<f64> = lexicons
            .iter()
            .map(|lexicon| weight(word, lexicon))
            .collect();
        // A word that all of them have says nothing.
        let total: f64 = weights.iter().sum();
        if total <= 0.0 {
            continue;
        }
        for (score, weight) in scores.iter_mut().zip(&weights) {
            *score += weight * weight / total;
        }
    }
    scores
}

fn weight(word: &str, lexicon: &Lexicon) -> f64 {
    let stem = lexicon.without_article(word);
    if word.chars().count() == 1 {
        // An l or a g is a unit in every language, whoever lists it.
        return if lexicon.knows(word) { 0.1 } else { 0.0 };
    }
    if lexicon.knows(stem) {
        KNOWN
    } else if lexicon.slip(word).is_some() {
        SLIP
    } else if lexicon.cut_prefix(word).is_some() {
        PREFIXED
    } else if lexicon.spells(word) {
        SPELT
    } else if lexicon.mend(stem).is_some() {
        MENDED
    } else {
        0.0
    }
}
