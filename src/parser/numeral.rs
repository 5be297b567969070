//! Numbers, in figures and in words.
//!
//! In: tagged items.
//! Out: the number that begins at an item, and where it ends.
//!
//! ```text
//! number = figure [fraction] [scale] | words | fraction ["of"] ["a"] | "a" before a unit
//!        | figure "point" figure | scale figure
//! words  = word {"and" | word | scale} ["point" digits] ["and" ["a"] fraction]
//! ```

use super::concept::Concept;
use super::number::{Certainty, Figure, Shape};
use super::tag::{Item, Tag};

/// `and a half` behind a unit: "a litre and a half".
pub(super) fn and_a_fraction(items: &[Item], at: usize) -> Option<(f64, usize)> {
    if !items.get(at)?.is(Concept::And) {
        return None;
    }
    let after_article = if items.get(at + 1)?.is(Concept::Article) {
        at + 2
    } else {
        at + 1
    };
    if let Some(Tag::Fraction(value)) = items.get(after_article).map(|item| &item.tag) {
        return Some((*value, after_article + 1));
    }
    None
}

/// The number that begins at an item.
pub(super) fn number_at(items: &[Item], at: usize) -> Option<(Figure, usize)> {
    let item = items.get(at)?;
    match &item.tag {
        Tag::Unreadable => Some((Figure::GARBLED, at + 1)),
        Tag::Figure(figure) => Some(figure_at(items, at, *figure)),
        Tag::Scale(_) => scaled_figure(items, at).or_else(|| words_at(items, at)),
        Tag::Number(_) => words_at(items, at),
        Tag::Fraction(value) => Some(fraction_of(items, at + 1, *value)),
        Tag::Concept(Concept::Article) => match items.get(at + 1).map(|item| &item.tag) {
            Some(Tag::Scale(_)) => words_at(items, at + 1),
            // "a couple of", and "a five litre can".
            Some(Tag::Number(_)) => words_at(items, at + 1).map(|(figure, end)| {
                let of = items.get(end).is_some_and(|item| item.is(Concept::Of));
                (figure, if of { end + 1 } else { end })
            }),
            Some(Tag::Fraction(value)) => Some(fraction_of(items, at + 2, *value)),
            _ => Some((Figure::plain(1.0, Shape::Words), at + 1)),
        },
        Tag::Concept(_)
        | Tag::Date(_)
        | Tag::Language(_)
        | Tag::Other
        | Tag::Plain
        | Tag::Sign(_)
        | Tag::Unknown => None,
    }
}

/// "half", "half a", "quarter of a".
fn fraction_of(items: &[Item], mut end: usize, value: f64) -> (Figure, usize) {
    let of = items.get(end).is_some_and(|item| item.is(Concept::Of));
    let article_at = if of { end + 1 } else { end };
    if items
        .get(article_at)
        .is_some_and(|item| item.is(Concept::Article))
    {
        end = article_at + 1;
    }
    if let Some(Tag::Scale(scale)) = items.get(end).map(|item| &item.tag) {
        return (Figure::plain(value * scale, Shape::Words), end + 1);
    }
    (Figure::plain(value, Shape::Words), end)
}

fn figure_at(items: &[Item], at: usize, figure: Figure) -> (Figure, usize) {
    let mut figure = figure;
    let mut end = at + 1;
    if figure.shape == Shape::Fraction && figure.value < 1.0 {
        let (_, end) = fraction_of(items, end, figure.value);
        return (figure, end);
    }
    if let Some((decimals, after)) = spoken_decimals(items, end)
        && figure.shape == Shape::Whole
    {
        let value = decimals.map(|decimals| figure.value + decimals);
        let read = value.map_or(Figure::GARBLED, |value| {
            Figure::plain(value, Shape::Decimal)
        });
        return (read, after);
    }
    if let Some(item) = items.get(end) {
        match &item.tag {
            // 2 1/2
            Tag::Figure(part)
                if part.shape == Shape::Fraction
                    && part.value < 1.0
                    && figure.shape == Shape::Whole =>
            {
                figure.value += part.value;
                end += 1;
            }
            // 10 000: digits in groups; with other digits it could be two figures.
            Tag::Figure(group)
                if figure.shape == Shape::Whole
                    && group.shape == Shape::Whole
                    && !item.glued
                    && item.span.len() == 3
                    && figure.value < 1000.0
                    && figure.value >= 1.0
                    && group.certainty == Certainty::Plain =>
            {
                let grouped = figure.value * 1000.0 + group.value;
                figure = if group.value == 0.0 {
                    Figure {
                        value: grouped,
                        ..figure
                    }
                } else {
                    Figure {
                        value: group.value,
                        certainty: Certainty::Or(grouped),
                        ..figure
                    }
                };
                end += 1;
            }
            Tag::Scale(scale) => {
                figure.value *= scale;
                if let Certainty::Or(other) = figure.certainty {
                    figure.certainty = Certainty::Or(other * scale);
                }
                end += 1;
            }
            Tag::Fraction(value) if figure.shape == Shape::Whole => {
                // "3 quarters"
                figure.value *= value;
                end += 1;
            }
            _ => {}
        }
    }
    if let Some((part, after)) = and_a_fraction(items, end) {
        figure.value += part;
        end = after;
    }
    (figure, end)
}

/// `virgule 6` behind a figure; nothing to act on where zeros lead.
fn spoken_decimals(items: &[Item], at: usize) -> Option<(Option<f64>, usize)> {
    if !items.get(at)?.is(Concept::DecimalWord) {
        return None;
    }
    let item = items.get(at + 1)?;
    let Tag::Figure(figure) = item.tag else {
        return None;
    };
    let (digits, places) = match figure.value {
        value if value < 10.0 => (1, 10.0),
        value if value < 100.0 => (2, 100.0),
        _ => (3, 1000.0),
    };
    let plain = figure.shape == Shape::Whole
        && figure.value < 1000.0
        && (item.span.len() == digits || item.span.len() == 2 * digits);
    Some((plain.then_some(figure.value / places), at + 2))
}

/// `elfu 5`: the scale before its figure.
fn scaled_figure(items: &[Item], at: usize) -> Option<(Figure, usize)> {
    let Tag::Scale(scale) = items.get(at)?.tag else {
        return None;
    };
    let Tag::Figure(figure) = items.get(at + 1)?.tag else {
        return None;
    };
    let whole = figure.shape == Shape::Whole && figure.value < 1000.0 && figure.value >= 1.0;
    whole.then(|| (Figure::plain(figure.value * scale, Shape::Words), at + 2))
}

fn words_at(items: &[Item], at: usize) -> Option<(Figure, usize)> {
    let mut total = 0.0;
    let mut current: Option<f64> = None;
    let mut end = at;
    while let Some(item) = items.get(end) {
        match &item.tag {
            Tag::Number(value) => {
                let fits = current.is_none_or(|current| {
                    (current % 100.0 == 0.0 && current >= 100.0)
                        || (current % 10.0 == 0.0
                            && (20.0..100.0).contains(&(current % 100.0))
                            && *value < 10.0)
                });
                if !fits {
                    break;
                }
                current = Some(current.unwrap_or(0.0) + value);
            }
            Tag::Scale(scale) if *scale < 1000.0 => {
                current = Some(current.unwrap_or(1.0) * scale);
            }
            Tag::Scale(scale) => {
                total += current.take().unwrap_or(1.0) * scale;
            }
            Tag::Concept(Concept::And)
                if (total > 0.0 || current.is_some_and(|current| current >= 100.0))
                    && matches!(
                        items.get(end + 1).map(|item| &item.tag),
                        Some(Tag::Number(_))
                    ) => {}
            _ => break,
        }
        end += 1;
    }
    if end == at {
        return None;
    }
    let mut value = total + current.unwrap_or(0.0);
    if items
        .get(end)
        .is_some_and(|item| item.is(Concept::DecimalWord))
    {
        let mut place = 0.1;
        let mut digit_at = end + 1;
        while let Some(digit) = items.get(digit_at).and_then(|item| match item.tag {
            Tag::Number(digit) if digit < 10.0 => Some(digit),
            Tag::Concept(Concept::Article) if place == 0.1 => Some(1.0),
            Tag::Figure(figure) if figure.value < 10.0 && place == 0.1 => Some(figure.value),
            _ => None,
        }) {
            value += digit * place;
            place /= 10.0;
            digit_at += 1;
        }
        if place == 0.1 {
            // "point twenty-five"
            if let Some(Tag::Number(tens)) = items.get(digit_at).map(|item| &item.tag) {
                let (decimals, after) = words_at(items, digit_at)
                    .map_or((*tens, digit_at + 1), |(figure, after)| {
                        (figure.value, after)
                    });
                value += decimals / 100.0;
                end = after;
            }
        } else {
            end = digit_at;
        }
        // Decimal places added one by one leave noise in the last bits.
        value = (value * 1e6).round() / 1e6;
    }
    if let Some(Tag::Fraction(part)) = items.get(end).map(|item| &item.tag)
        && (0.0..10.0).contains(&value)
        && value > 0.0
    {
        let (figure, end) = fraction_of(items, end + 1, value * part);
        return Some((figure, end));
    }
    if let Some((part, after)) = and_a_fraction(items, end) {
        value += part;
        end = after;
    }
    Some((Figure::plain(value, Shape::Words), end))
}
