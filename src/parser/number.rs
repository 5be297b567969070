//! Figures as people type them.
//!
//! In: digits with their separators, and the locale's decimal sign.
//! Out: a value, or that it can be read in two ways.
//! Promises never to choose between two readings.

/// A figure that was read.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Figure {
    pub(super) value: f64,
    pub(super) certainty: Certainty,
    pub(super) shape: Shape,
}

/// Whether a figure has one reading.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum Certainty {
    /// One reading.
    Plain,
    /// Two readings: this one, and another.
    Or(f64),
    /// No reading to act on.
    Garbled,
}

/// How the figure was written.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Shape {
    Whole,
    Decimal,
    Fraction,
    /// Written out.
    Words,
}

/// Which sign a locale puts before decimals.
#[derive(Debug, Clone, Copy, PartialEq, Eq, serde::Deserialize, serde::Serialize)]
#[serde(rename_all = "kebab-case")]
pub(super) enum DecimalSign {
    Comma,
    /// Both are met: three digits behind one of them may be either.
    Either,
    Point,
}

impl DecimalSign {
    const fn char(self) -> char {
        match self {
            Self::Comma | Self::Either => ',',
            Self::Point => '.',
        }
    }

    const fn other(self) -> char {
        match self {
            Self::Comma | Self::Either => '.',
            Self::Point => ',',
        }
    }
}

impl Figure {
    pub(super) const GARBLED: Self = Self {
        value: f64::NAN,
        certainty: Certainty::Garbled,
        shape: Shape::Whole,
    };

    pub(super) const fn plain(value: f64, shape: Shape) -> Self {
        Self {
            value,
            certainty: Certainty::Plain,
            shape,
        }
    }

    /// The value, if there is only one reading.
    pub(super) fn certain(self) -> Option<f64> {
        match self.certainty {
            Certainty::Plain => Some(self.value),
            Certainty::Or(_) | Certainty::Garbled => None,
        }
    }

    /// The value, if only one of its readings lies inside `min..=max`.
    pub(super) fn certain_within(self, min: f64, max: f64) -> Option<f64> {
        let fits = |value: f64| value >= min && value <= max;
        match self.certainty {
            Certainty::Plain => Some(self.value),
            Certainty::Or(other) if fits(self.value) && !fits(other) => Some(self.value),
            Certainty::Or(_) | Certainty::Garbled => None,
        }
    }
}

/// Reads digits with separators. `sign` is the locale's decimal sign; `comma_decimals` says that
/// the same message writes other decimals with the sign that groups thousands.
pub(super) fn read_figure(
    text: &str,
    sign: DecimalSign,
    foreign_decimals: ForeignDecimals,
) -> Figure {
    if let Some((mantissa, exponent)) = text.split_once('e') {
        return match format!("{mantissa}e{exponent}").parse::<f64>() {
            Ok(value) => Figure::plain(value, Shape::Whole),
            Err(_) => Figure::GARBLED,
        };
    }
    if let Some((top, bottom)) = text.split_once('/') {
        return match (top.parse::<f64>(), bottom.parse::<f64>()) {
            (Ok(top), Ok(bottom)) if bottom > 0.0 => Figure::plain(top / bottom, Shape::Fraction),
            _ => Figure::GARBLED,
        };
    }
    // 1'000 groups, whatever the locale.
    let text = match text.split_once('\'') {
        Some(_) if is_grouping(&text.split('\'').collect::<Vec<_>>()) => text.replace('\'', ""),
        Some(_) => text.replace('\'', if sign == DecimalSign::Point { "," } else { "." }),
        None => text.to_owned(),
    };
    let groups_of = |separator: char| -> Vec<&str> { text.split(separator).collect() };
    let own = text.matches(sign.char()).count();
    let foreign = text.matches(sign.other()).count();
    let parse = |digits: String| digits.parse::<f64>().ok();
    match (own, foreign) {
        (0, 0) => {
            parse(text.clone()).map_or(Figure::GARBLED, |value| Figure::plain(value, Shape::Whole))
        }
        // 3.5 in English: a decimal, unless three digits follow.
        (1, 0) => {
            let value = parse(text.replace(sign.char(), "."));
            match (value, groups_of(sign.char()).as_slice()) {
                (Some(value), [whole, decimals]) if looks_grouped(whole, decimals) => Figure {
                    value,
                    certainty: Certainty::Or(value * 1000.0),
                    shape: Shape::Decimal,
                },
                (Some(value), _) => Figure::plain(value, Shape::Decimal),
                (None, _) => Figure::GARBLED,
            }
        }
        // 1,000 or 3,5 in English.
        (0, 1) => {
            let value = parse(text.replace(sign.other(), "."));
            match (value, groups_of(sign.other()).as_slice()) {
                (Some(value), [whole, decimals]) if looks_grouped(whole, decimals) => Figure {
                    value: value * 1000.0,
                    certainty: match (foreign_decimals, sign) {
                        (ForeignDecimals::Absent, DecimalSign::Comma | DecimalSign::Point) => {
                            Certainty::Plain
                        }
                        (ForeignDecimals::Present, _) | (_, DecimalSign::Either) => {
                            Certainty::Or(value)
                        }
                    },
                    shape: Shape::Whole,
                },
                (Some(value), _) => Figure::plain(value, Shape::Decimal),
                (None, _) => Figure::GARBLED,
            }
        }
        (0, _) if is_grouping(&groups_of(sign.other())) => parse(text.replace(sign.other(), ""))
            .map_or(Figure::GARBLED, |value| Figure::plain(value, Shape::Whole)),
        // 1.000.000 in English can only be thousands.
        (_, 0) if is_grouping(&groups_of(sign.char())) => parse(text.replace(sign.char(), ""))
            .map_or(Figure::GARBLED, |value| Figure::plain(value, Shape::Whole)),
        // 1,000.5 and 1.000,5: the last sign is the decimal one.
        (1, _) if mixed_is_sound(&text, sign.other(), sign.char()) => {
            parse(text.replace(sign.other(), "").replace(sign.char(), "."))
                .map_or(Figure::GARBLED, |value| {
                    Figure::plain(value, Shape::Decimal)
                })
        }
        (_, 1) if mixed_is_sound(&text, sign.char(), sign.other()) => {
            parse(text.replace(sign.char(), "").replace(sign.other(), "."))
                .map_or(Figure::GARBLED, |value| {
                    Figure::plain(value, Shape::Decimal)
                })
        }
        _ => Figure::GARBLED,
    }
}

/// Whether the message writes decimals with the sign that its language uses for thousands.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum ForeignDecimals {
    Absent,
    Present,
}

impl ForeignDecimals {
    /// Looks through all figures of a message.
    pub(super) fn among<'a>(figures: impl Iterator<Item = &'a str>, sign: DecimalSign) -> Self {
        let mut found = Self::Absent;
        for text in figures {
            if let [whole, decimals] = text.split(sign.other()).collect::<Vec<_>>().as_slice()
                && !decimals.contains(sign.char())
                && !looks_grouped(whole, decimals)
            {
                found = Self::Present;
            }
        }
        found
    }
}

/// `1` and `000` as in 1,000; a leading zero as in 0,125 cannot be a group.
fn looks_grouped(whole: &str, decimals: &str) -> bool {
    decimals.len() == 3 && (1..=3).contains(&whole.len()) && !whole.starts_with('0')
}

/// 1,000,000 or, as in South Asia, 1,00,000.
fn is_grouping(groups: &[&str]) -> bool {
    let [first, middle @ .., last] = groups else {
        return false;
    };
    let same = |size: usize| middle.iter().all(|group| group.len() == size);
    (1..=3).contains(&first.len())
        && !first.starts_with('0')
        && last.len() == 3
        && (same(3) || (same(2) && first.len() <= 2))
}

fn mixed_is_sound(text: &str, group: char, decimal: char) -> bool {
    text.split_once(decimal).is_some_and(|(whole, decimals)| {
        !decimals.contains(group)
            && !decimals.is_empty()
            && is_grouping(&whole.split(group).collect::<Vec<_>>())
    })
}
