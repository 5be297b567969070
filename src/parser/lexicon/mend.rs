//! Words with a slip.
//!
//! In: a word that the lexicon does not have.
//! Out: the word of the lexicon that was meant.
//! Promises that a slip is mended only when one concept is meant, and that none leads across a
//! negative prefix.

use strsim::osa_distance;

use crate::parser::concept::Concept;

use super::{Lexicon, Meaning};

impl Lexicon {
    /// The word that was meant, if only one can have been.
    pub(in crate::parser) fn mend(&self, word: &str) -> Option<&str> {
        let length = word.chars().count();
        // A slip in the first letter is rare and leads far astray.
        let first = word.chars().next()?;
        let reach = match length {
            0..=3 => return None,
            4..=6 => 1,
            _ => 2,
        };
        let negative = |w: &str| {
            let mut prefixes = self.tables.head.negative_prefixes.iter();
            prefixes.find(|prefix| w.starts_with(prefix.as_str()))
        };
        let negated = negative(word);
        let mut best: Option<(usize, &str)> = None;
        let mut tied = false;
        for size in length.saturating_sub(reach)..=length + reach {
            for candidate in self.tables.mendable(size, first) {
                if negative(candidate) != negated {
                    continue;
                }
                let distance = osa_distance(word, candidate);
                if distance > reach || (distance == 2 && (size < 6 || self.is_grave(candidate))) {
                    continue;
                }
                // In a short word another letter is another word: a sack is not sick.
                if length <= 5 && size == length && !same_letters(word, candidate) {
                    continue;
                }
                match best {
                    Some((nearest, _)) if distance > nearest => {}
                    Some((nearest, other)) if distance == nearest => {
                        tied = tied || !self.same_meaning(other, candidate);
                    }
                    Some(_) | None => {
                        best = Some((distance, candidate));
                        tied = false;
                    }
                }
            }
        }
        best.filter(|_| !tied).map(|(_, candidate)| candidate)
    }

    /// Words that a dose hangs on: taken for another word at two letters' distance, they would
    /// halve it.
    fn is_grave(&self, word: &str) -> bool {
        let grave = [Concept::Clear, Concept::Negation, Concept::HalfWay];
        matches!(self.alone(word), Some(Meaning::Concept(concept)) if grave.contains(concept))
    }

    fn same_meaning(&self, one: &str, other: &str) -> bool {
        let meaning = |word: &str| self.find(&[word]).map(|found| found.meaning);
        meaning(one).is_some() && meaning(one) == meaning(other)
    }
}

/// The same letters in another order.
fn same_letters(one: &str, other: &str) -> bool {
    let sorted = |word: &str| {
        let mut letters: Vec<char> = word.chars().collect();
        letters.sort_unstable();
        letters
    };
    sorted(one) == sorted(other)
}
