//! How a language orders its words, as far as reading amounts and denials needs it.

use serde::{Deserialize, Serialize};

use crate::parser::number::DecimalSign;

/// Where a language writes its units.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize, Serialize)]
#[serde(rename_all = "kebab-case")]
pub(in crate::parser) enum UnitOrder {
    /// 20 litres.
    AfterNumber,
    /// Lita 20, and 20 lita as well.
    EitherSide,
}

/// Where the denying word stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize, Serialize)]
#[serde(rename_all = "kebab-case")]
pub(in crate::parser) enum Negation {
    /// Saaf nahi.
    After,
    /// Not clear.
    Before,
}

/// Where an adjective stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize, Serialize)]
#[serde(rename_all = "kebab-case")]
pub(in crate::parser) enum Adjectives {
    /// Bouteille transparente.
    AfterNoun,
    /// A clear bottle.
    BeforeNoun,
}

/// How containers and their size are put together.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Deserialize, Serialize)]
#[serde(rename_all = "kebab-case")]
pub(in crate::parser) enum ContainerOrder {
    /// Two cans of 20 L, two 20 L cans.
    #[default]
    CountFirst,
    /// 20 L ki do balti: the size first, then how many.
    SizeFirst,
}

/// What a number word said twice means.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Deserialize, Serialize)]
#[serde(rename_all = "kebab-case")]
pub(in crate::parser) enum RepeatedNumber {
    /// Bees bees litre: 20 L each.
    Each,
    /// Two two-litre bottles: two numbers.
    #[default]
    Two,
}

/// A language's order of words.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize, Serialize)]
pub(in crate::parser) struct Grammar {
    pub(in crate::parser) decimal_sign: DecimalSign,
    pub(in crate::parser) unit_order: UnitOrder,
    pub(in crate::parser) negation: Negation,
    pub(in crate::parser) adjectives: Adjectives,
    pub(in crate::parser) containers: ContainerOrder,
    pub(in crate::parser) repeated_number: RepeatedNumber,
}
