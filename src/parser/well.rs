//! How wide a well is and how much water stands in it.
//!
//! In: lengths and the words beside them.
//! Out: diameter and depth of water, each absent where it is not told or told in two ways.
//! Promises that the depth of the well is not taken for that of its water.

use super::amount::{Amount, Unit};
use super::concept::Concept;
use super::doubt::Doubt;
use super::facts::{Text, follows};
use super::tag::{Item, Tag};

/// A foot, exactly.
const FOOT_M: f64 = 0.3048;

/// What is told of a well's size.
#[derive(Debug, Default)]
pub(super) struct WellSize {
    pub(super) diameter_m: Option<f64>,
    pub(super) water_depth_m: Option<f64>,
    /// A length of which nothing is said: the answer to a question of ours, perhaps.
    pub(super) length_m: Option<f64>,
    pub(super) doubts: Vec<Doubt>,
}

impl WellSize {
    pub(super) const fn is_told(&self) -> bool {
        self.diameter_m.is_some() || self.water_depth_m.is_some()
    }
}

/// Which measure of a well a length is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Side {
    Across,
    /// Half of it.
    Radius,
    /// All the way round.
    Round,
    /// From the ground down to the water.
    ToWater,
    Unsaid,
    WaterDepth,
    WellDepth,
}

/// Diameter and depth of water of a well, in metres.
pub(super) fn well(text: Text<'_>) -> WellSize {
    let mut size = WellSize::default();
    let mut bare: Vec<f64> = Vec::new();
    let mut across = 0;
    let mut whole_depth = None;
    let mut dry_depth = None;
    let lengths = lengths(text);
    let sides = sides(text, &lengths);
    for (amount, side) in lengths.iter().zip(sides) {
        let Some(metres) = amount.value() else {
            continue;
        };
        match side {
            Side::WaterDepth => size.water_depth_m = Some(metres),
            Side::Across => {
                size.diameter_m = Some(metres);
                across += 1;
            }
            Side::Radius => {
                size.diameter_m = Some(metres * 2.0);
                across += 1;
            }
            Side::Round => size.diameter_m = Some(metres / std::f64::consts::PI),
            Side::WellDepth => whole_depth = Some(metres),
            Side::ToWater => dry_depth = Some(metres),
            Side::Unsaid => bare.push(metres),
        }
    }
    if size.diameter_m.is_none() && text.says(Concept::Wide) && bare.len() == 1 {
        size.diameter_m = bare.first().copied();
    }
    if let [one] = bare.as_slice() {
        size.length_m = Some(*one);
    }
    if text.says(Concept::Ring) {
        // "10 rings of 0.5 m": how many stand in water, and how wide they are, is asked.
        size.diameter_m = None;
        size.water_depth_m = None;
        size.doubts.push(Doubt::WellDepthOnly);
        return size;
    }
    if across + bare.len() == 1 && text.says(Concept::Radius) && text.says(Concept::Wide) {
        // "I do not know whether it is the radius or the diameter."
        size.diameter_m = None;
    }
    match (whole_depth, dry_depth) {
        // "10 m deep, the water is 7 m down": three metres of water.
        (Some(whole), Some(dry)) if whole > dry => {
            size.water_depth_m = Some(((whole - dry) * 1e6).round() / 1e6);
        }
        // The depth of the well is not the depth of its water.
        (Some(_), _) | (None, Some(_)) if size.water_depth_m.is_none() => {
            size.doubts.push(Doubt::WellDepthOnly);
        }
        (_, _) => {}
    }
    size
}

/// Whether a well is spoken of at all.
pub(super) fn says_well(text: Text<'_>) -> bool {
    text.mentions(Concept::Well) || text.mentions(Concept::SureWell)
}

/// All lengths, feet and inches put together.
fn lengths(text: Text<'_>) -> Vec<Amount> {
    let mut lengths: Vec<Amount> = Vec::new();
    for amount in text.stated() {
        // "5 ft 6": inches.
        if let (Unit::Pieces, Some(last), Some(inches)) =
            (amount.unit, lengths.last_mut(), amount.value())
            && last.unit == Unit::Metres(FOOT_M)
            && last.items.end == amount.items.start
            && inches < 12.0
        {
            last.figure.value += inches / 12.0;
            last.items.end = amount.items.end;
        }
        // "1 m 20", "un mètre vingt": centimetres.
        if let (Unit::Pieces, Some(last), Some(centimetres)) =
            (amount.unit, lengths.last_mut(), amount.value())
            && last.unit == Unit::Metres(1.0)
            && last.items.end == amount.items.start
            && (10.0..100.0).contains(&centimetres)
            && centimetres.fract() == 0.0
        {
            last.figure.value += centimetres / 100.0;
            last.items.end = amount.items.end;
        }
        if !matches!(amount.unit, Unit::Metres(_)) {
            continue;
        }
        match lengths.last_mut() {
            Some(last) if follows(text, last, amount) => {
                let metres = last.value().zip(amount.value()).map(|(a, b)| a + b);
                if let (Some(metres), Unit::Metres(factor)) = (metres, last.unit) {
                    last.figure.value = (metres / factor * 1e9).round() / 1e9;
                    last.items.end = amount.items.end;
                }
            }
            Some(_) | None => lengths.push(amount.clone()),
        }
    }
    lengths
}

/// Which measure each length is. Where several stand without a comma between them, words and
/// figures take turns: "2 m diameter 15 m deep 3 m water", "diameter 2 m depth 15 m water 3 m".
fn sides(text: Text<'_>, lengths: &[Amount]) -> Vec<Side> {
    let parts = |item: &Item| {
        item.is_sign(&[',', '.', ';', ':']) || item.ends_sentence() || item.is(Concept::And)
    };
    let mut sides = Vec::new();
    let mut rest = lengths;
    let mut start = 0;
    while let Some(first) = rest.first() {
        let end = (first.items.end..text.items.len())
            .find(|at| text.items.get(*at).is_some_and(parts))
            .unwrap_or(text.items.len());
        let count = rest
            .iter()
            .take_while(|amount| amount.items.start < end)
            .count()
            .max(1);
        let (run, later) = rest.split_at(count);
        start = (start..first.items.start)
            .rev()
            .find(|at| text.items.get(*at).is_some_and(parts))
            .map_or(start, |at| at + 1);
        let by_turns = (run.len() > 1).then(|| in_turn(text, run, start, end));
        match by_turns.flatten() {
            Some(found) => sides.extend(found),
            None => sides.extend(run.iter().map(|amount| side(text, amount))),
        }
        start = end;
        rest = later;
    }
    sides
}

/// The words for measures between figures, each with the figure that it is about. Nothing, where
/// they do not take turns.
fn in_turn(text: Text<'_>, run: &[Amount], start: usize, end: usize) -> Option<Vec<Side>> {
    let word = |at: usize| {
        Some(match text.concept_at(at)? {
            Concept::Wide => Side::Across,
            Concept::Radius => Side::Radius,
            Concept::Girth => Side::Round,
            Concept::ToWater => Side::ToWater,
            Concept::WaterDepth | Concept::Water => Side::WaterDepth,
            Concept::Deep => Side::WellDepth,
            _ => return None,
        })
    };
    let words_in = |from: usize, to: usize| (from..to).filter_map(word).collect::<Vec<_>>();
    let first = run.first()?.items.start;
    let mut between = Vec::new();
    for pair in run.windows(2) {
        if let [one, next] = pair {
            between.extend(words_in(one.items.end, next.items.start));
        }
    }
    between.extend(words_in(run.last()?.items.end, end));
    let mut head = words_in(start, first);
    // "Treat the water of a well 1 m wide 3 m deep": what is treated, and no measure.
    if between.len() == run.len() && head.iter().all(|side| *side == Side::WaterDepth) {
        head.clear();
    }
    let words: Vec<Side> = head.into_iter().chain(between).collect();
    // "Water 3 m deep" names one figure twice: the turns are no help then.
    (words.len() == run.len()).then_some(words)
}

fn side(text: Text<'_>, amount: &Amount) -> Side {
    // What stands directly behind says it; else what stands before.
    let behind: Vec<Concept> = (0..2)
        .map_while(|n| text.items.get(amount.items.end + n))
        .take_while(|item| !matches!(item.tag, Tag::Sign(_)))
        .filter_map(Item::concept)
        .collect();
    let before: Vec<Concept> = (1..=6)
        .map_while(|back| amount.items.start.checked_sub(back))
        .take_while(|i| {
            text.items.get(*i).is_some_and(|item| {
                !item.is_sign(&[',', '.', ';'])
                    && !item.is(Concept::And)
                    && !matches!(item.tag, Tag::Figure(_))
            })
        })
        .filter_map(|i| text.concept_at(i))
        .collect();
    let says = |list: &[Concept], concept: Concept| list.contains(&concept);
    let of_water = says(&behind, Concept::WaterDepth)
        || says(&before, Concept::WaterDepth)
        || says(&behind, Concept::Water)
        || (says(&before, Concept::Water) && !says(&before, Concept::Wide));
    let either = |concept: Concept| says(&behind, concept) || says(&before, concept);
    // "1.2 m wide, 3 m of water": what stands behind a figure is that figure's.
    let taken = |index: usize| {
        text.amounts
            .iter()
            .any(|other| other.items.end == index && matches!(other.unit, Unit::Metres(_)))
    };
    let nearest = (1..=4)
        .map_while(|back| amount.items.start.checked_sub(back))
        .take_while(|at| {
            text.items
                .get(*at)
                .is_some_and(|item| !item.is_sign(&[',', '.', ';']))
        })
        .find(|at| text.concept_at(*at).is_some())
        .filter(|at| !taken(*at))
        .and_then(|at| text.concept_at(at));
    let from_above = nearest == Some(Concept::ToWater);
    let level_told = text.says(Concept::ToWater);
    if says(&behind, Concept::ToWater) || from_above {
        Side::ToWater
    } else if level_told && nearest == Some(Concept::Deep) {
        // "Depth 8 m, water from 5 m down": of the well.
        Side::WellDepth
    } else if either(Concept::Radius) {
        Side::Radius
    } else if either(Concept::Girth) {
        Side::Round
    } else if behind.first() == Some(&Concept::Wide) {
        Side::Across
    } else if nearest == Some(Concept::Wide)
        && !says(&behind, Concept::Wide)
        && (says(&behind, Concept::Water) || says(&behind, Concept::WaterDepth))
    {
        // "Diameter 3 ft, water 10 ft": what stands behind belongs to the next figure.
        Side::Across
    } else if of_water {
        Side::WaterDepth
    } else if says(&behind, Concept::Wide) || says(&before, Concept::Wide) {
        Side::Across
    } else if says(&behind, Concept::Deep) || says(&before, Concept::Deep) {
        // The depth of the well is not the depth of its water.
        Side::WellDepth
    } else {
        Side::Unsaid
    }
}
