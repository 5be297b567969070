//! What phrases stand for.

use serde::{Deserialize, Serialize};

use crate::parser::concept::Concept;

/// What a phrase stands for.
#[derive(Debug, Clone, PartialEq, Deserialize, Serialize)]
pub(in crate::parser) enum Meaning {
    Concept(Concept),
    /// A fraction such as a half.
    Fraction(f64),
    /// A language's name, as its BCP 47 tag.
    Language(String),
    /// A number word below a hundred.
    Number(f64),
    /// A word without a meaning of its own here.
    Plain,
    /// A word that multiplies the number before it.
    Scale(f64),
}

impl Meaning {
    /// The section of a lexicon file that it stands in.
    pub(super) fn section(&self) -> &'static str {
        match self {
            Self::Concept(concept) => concept.into(),
            Self::Fraction(_) => "fractions",
            Self::Language(_) => "languages",
            Self::Number(_) => "numbers",
            Self::Plain => "plain",
            Self::Scale(_) => "scales",
        }
    }
}

/// A phrase that was found.
#[derive(Debug, Clone, PartialEq)]
pub(in crate::parser) struct Found {
    pub(in crate::parser) words: usize,
    pub(in crate::parser) meaning: Meaning,
}
