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
            Self::Usual(_) => 0.2,
        }
    }
}

/// The weight of a word that a language has as it is written.
const KNOWN: f64 = 1.0;
/// So many words before all others, a language needs no slips to be told.
const CLEAR_LEAD: f64 = 1.5;
/// A word that a language has and that means nothing here.
const PLAIN: f64 = 0.8;
/// The same for a language that does not have them at all.
const UNWRITTEN: f64 = 0.5;
/// A word that a language has in some phrase only.
const IN_A_PHRASE: f64 = 0.5;
/// So much more where the accents are the language's as well.
const WRITTEN: f64 = 1.5;
/// So much of a word that was borrowed from the common language.
const BORROWED: f64 = 0.5;
/// Text-speak of a language.
const SLIP: f64 = 0.5;
/// A word with a little word glued to it.
const PREFIXED: f64 = 0.8;
/// A word that is one slip away from one of the language.
const MENDED: f64 = 0.35;
/// A language that has every word of a message, where the common one lacks some.
const COMPLETE: f64 = 0.9;
/// A word that is only spelt with the language's letters.
const SPELT: f64 = 0.6;

/// The language of a text, as an index into the lexicons; `common` is the tag of the one that all
/// others borrow from.
#[must_use]
pub fn recognise(
    text: &str,
    lexicons: &[&Lexicon],
    common: &str,
    expected: Expected<'_>,
) -> Option<usize> {
    let usual = lexicons
        .iter()
        .position(|lexicon| lexicon.tag() == expected.tag());
    let scores = scores(text, lexicons, common);
    // Of equal ones the first, so that it is the same every time.
    let (best, score) = scores
        .iter()
        .enumerate()
        .rev()
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
fn scores(text: &str, lexicons: &[&Lexicon], common: &str) -> Vec<f64> {
    let mut scores = vec![0.0; lexicons.len()];
    let plain = normalize(text);
    let tokens = tokenize(&plain, text.len());
    let mut unknown: Vec<&str> = Vec::new();
    let mut lacking = vec![0_usize; lexicons.len()];
    for token in &tokens {
        let TokenKind::Word(word) = &token.kind else {
            continue;
        };
        let mut weights: Vec<f64> = lexicons
            .iter()
            .map(|lexicon| known(word, lexicon))
            .collect();
        if word.chars().all(char::is_alphabetic) && word.chars().count() > 1 {
            for ((lacking, weight), lexicon) in lacking.iter_mut().zip(&weights).zip(lexicons) {
                // The common one has a word if only in a phrase; who is to have all, by itself.
                let has = if lexicon.tag() == common {
                    *weight > 0.0
                } else {
                    *weight >= PLAIN
                };
                *lacking += usize::from(!has);
            }
        }
        // "Vírus" with its accent is Portuguese, whoever else has the word.
        let typed = text.get(token.span.clone()).unwrap_or_default();
        if !typed.is_ascii() {
            for (weight, lexicon) in weights.iter_mut().zip(lexicons) {
                if lexicon.writes(typed) {
                    *weight *= WRITTEN;
                } else if !lexicon.has_accents_of(typed) {
                    *weight *= UNWRITTEN;
                }
            }
        }
        if weights.iter().all(|weight| *weight <= 0.0) {
            unknown.push(word);
        }
        // "Bleach" in a Hindi lexicon is English still.
        let is_common = |lexicon: &Lexicon| lexicon.tag() == common;
        if lexicons
            .iter()
            .any(|lexicon| is_common(lexicon) && lexicon.means(word))
        {
            for (weight, lexicon) in weights.iter_mut().zip(lexicons) {
                if !is_common(lexicon) {
                    *weight *= BORROWED;
                }
            }
        }
        add(&mut scores, &weights);
    }
    // "Do drum 200 litre ke bleach": the one that all borrow from lacks a word, and one that
    // borrows lacks none.
    let common_lacks = lexicons
        .iter()
        .zip(&lacking)
        .any(|(lexicon, lacking)| lexicon.tag() == common && *lacking > 0);
    for (score, lacking) in scores.iter_mut().zip(&lacking) {
        if common_lacks && *lacking == 0 {
            *score += COMPLETE;
        }
    }
    // What nobody has may be a slip; to look for it pays where the rest leaves doubt.
    if !is_clear(&scores) {
        for word in unknown {
            let weights: Vec<f64> = lexicons
                .iter()
                .map(|lexicon| mended(word, lexicon))
                .collect();
            add(&mut scores, &weights);
        }
    }
    scores
}

/// A word counts for each language that has it, the less the more they are.
fn add(scores: &mut [f64], weights: &[f64]) {
    let total: f64 = weights.iter().sum();
    if total > 0.0 {
        for (score, weight) in scores.iter_mut().zip(weights) {
            *score += weight * weight / total;
        }
    }
}

/// Whether one language is so far before the others that slips change nothing.
fn is_clear(scores: &[f64]) -> bool {
    let mut sorted = scores.to_vec();
    sorted.sort_by(|a, b| b.total_cmp(a));
    match sorted.as_slice() {
        [first, second, ..] => first - second >= CLEAR_LEAD,
        _ => true,
    }
}

/// A word that no language has may be a slip of one that some have.
fn mended(word: &str, lexicon: &Lexicon) -> f64 {
    let stem = lexicon.without_article(word);
    lexicon.mend(stem).map_or(0.0, |_| MENDED)
}

fn known(word: &str, lexicon: &Lexicon) -> f64 {
    let stem = lexicon.without_article(word);
    if word.chars().count() == 1 {
        // An l or a g is a unit in every language, whoever lists it.
        return if lexicon.knows(word) { 0.1 } else { 0.0 };
    }
    if lexicon.means(stem) {
        KNOWN
    } else if lexicon.has_alone(stem) {
        PLAIN
    } else if lexicon.knows(stem) {
        IN_A_PHRASE
    } else if lexicon.slip(word).is_some() {
        SLIP
    } else if lexicon.cut_prefix(word).is_some() {
        PREFIXED
    } else if lexicon.spells(word) {
        SPELT
    } else {
        0.0
    }
}
