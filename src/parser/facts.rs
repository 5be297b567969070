//! Everything else that a message says of the water, the people and the place.
//!
//! In: items, amounts and scope.
//! Out: single facts, each absent where it is not said or said in two ways.

use jiff::civil::Date;

use crate::quantity::limit;
use crate::request::{AtHand, Chill, Clarity, Height, Person, Product, Purpose, Sky};

use super::Counted;
use super::amount::{Amount, Unit};
use super::concept::Concept;
use super::lexicon::{Adjectives, Grammar, UnitOrder};
use super::numeral::number_at;
use super::scope::{Scope, Standing};
use super::tag::{Item, Tag};

/// The items of a message with what was made of them.
#[derive(Clone, Copy)]
pub(super) struct Text<'a> {
    pub(super) items: &'a [Item],
    pub(super) amounts: &'a [Amount],
    pub(super) scope: &'a Scope,
    /// A jar test, where the message tells of one.
    pub(super) jars: Option<&'a super::jar::Jars>,
    /// The order of words in the message's language.
    pub(super) grammar: Grammar,
}

impl Text<'_> {
    /// Whether a concept is said, not denied and not only told of.
    pub(super) fn says(&self, concept: Concept) -> bool {
        self.places(concept).next().is_some()
    }

    /// Whether a concept stands in the message, however it stands.
    pub(super) fn mentions(&self, concept: Concept) -> bool {
        self.items.iter().any(|item| item.is(concept))
    }

    /// Where a concept is said or told of, and not denied.
    pub(super) fn told(&self, concept: Concept) -> impl Iterator<Item = usize> + '_ {
        self.items
            .iter()
            .enumerate()
            .filter(move |(i, item)| item.is(concept) && self.scope.at(*i) != Standing::Denied)
            .map(|(i, _)| i)
    }

    /// Where a concept is said.
    pub(super) fn places(&self, concept: Concept) -> impl Iterator<Item = usize> + '_ {
        self.items
            .iter()
            .enumerate()
            .filter(move |(i, item)| item.is(concept) && self.scope.stated(*i))
            .map(|(i, _)| i)
    }

    /// Whether a word describes a container, and not what is in it.
    fn of_container(&self, index: usize) -> bool {
        let is_container = |item: &Item| item.is(Concept::Container);
        // "Bouteille transparente", where adjectives follow.
        let before = self.items.get(..index).unwrap_or_default();
        if self.grammar.adjectives == Adjectives::AfterNoun
            && before.last().is_some_and(is_container)
        {
            return true;
        }
        self.items
            .get(index + 1..)
            .unwrap_or_default()
            .iter()
            .take(2)
            .find(|item| !item.is_filler())
            .is_some_and(is_container)
    }

    pub(super) fn concept_at(&self, index: usize) -> Option<Concept> {
        self.items.get(index).and_then(Item::concept)
    }

    pub(super) fn window(
        &self,
        amount: &Amount,
        before: usize,
        after: usize,
    ) -> impl Iterator<Item = &Item> {
        let start = amount.items.start.saturating_sub(before);
        let end = (amount.items.end + after).min(self.items.len());
        let stops = |item: &&Item| !item.ends_sentence();
        let head = self
            .items
            .get(start..amount.items.start)
            .unwrap_or_default();
        let tail = self.items.get(amount.items.end..end).unwrap_or_default();
        let head: Vec<&Item> = head.iter().rev().take_while(stops).collect();
        head.into_iter().chain(tail.iter().take_while(stops))
    }

    pub(super) fn beside(
        &self,
        amount: &Amount,
        concept: Concept,
        before: usize,
        after: usize,
    ) -> bool {
        self.window(amount, before, after)
            .any(|item| item.is(concept))
    }

    pub(super) fn stated(&self) -> impl Iterator<Item = &Amount> {
        self.amounts
            .iter()
            .filter(|amount| self.scope.stated(amount.items.start))
    }
}

/// How far a word of degree stands from what it grades: "mush 'akir jiddan", "pas du tout trop".
const DEGREE_REACH: usize = 2;

/// Whether a word's quality is graded ("too cloudy", "machafu sana"), or may be: by a word that
/// is not known.
fn graded(text: Text<'_>, at: usize) -> bool {
    let grades = |item: &&Item| item.grades || item.tag == Tag::Unknown;
    let goes_on = |item: &&Item| !item.ends_sentence() && !item.is_sign(&[',']);
    let before = text.items.get(..at).unwrap_or_default();
    let behind = text.items.get(at + 1..).unwrap_or_default();
    let mut before = before.iter().rev().take(DEGREE_REACH).take_while(goes_on);
    let mut behind = behind.iter().take(DEGREE_REACH).take_while(goes_on);
    let itself = text.items.get(at).is_some_and(|item| item.grades);
    // "That is not cloudy": what stands before the denial grades nothing.
    let grades_before = before
        .find(|item| grades(item) || item.denies)
        .is_some_and(|item| grades(&item));
    itself || grades_before || behind.any(|item| grades(&item))
}

/// Whether what is said here is only supposed: "I am not sure if the water is clear".
fn perhaps(text: Text<'_>, at: usize) -> bool {
    /// "Not sure if the water in it is clear."
    const REACH: usize = 5;
    let before = text.items.get(..at).unwrap_or_default().iter().rev();
    before
        .take(REACH)
        .take_while(|item| !item.ends_sentence() && !item.is_sign(&[',']))
        // "About 10 L of clear water": said of the figure.
        .take_while(|item| !matches!(item.tag, Tag::Figure(_) | Tag::Number(_)))
        .any(|item| item.is(Concept::Perhaps))
}

pub(super) fn clarity(text: Text<'_>) -> Option<Clarity> {
    let mut clear = false;
    let mut cloudy = false;
    let not_clean = (text.items.iter().enumerate())
        .any(|(i, item)| item.is(Concept::Clean) && text.scope.at(i) == Standing::Denied);
    for (i, item) in text.items.iter().enumerate() {
        let Some(concept) = item.concept() else {
            continue;
        };
        let standing = text.scope.at(i);
        match (concept, standing) {
            // "A clear plastic bottle" says nothing of the water in it.
            (Concept::Clear, _) if text.of_container(i) => {}
            // "Zyada ganda nahi", where "ganda nahi" is a word for clear.
            (Concept::Clear, Standing::Stated) if item.denies && graded(text, i) => {}
            // "Perhaps it is clear."
            (Concept::Clear, Standing::Stated) if perhaps(text, i) => {}
            (Concept::Clear, Standing::Stated) => clear = true,
            (Concept::Clear, Standing::Denied) => cloudy = true,
            (Concept::Cloudy, Standing::Stated) => cloudy = true,
            // "Not too cloudy" is a little cloudy, or it is not, and so is "neither dirty nor
            // clean": both doses are told.
            (Concept::Cloudy, Standing::Denied) => clear |= !graded(text, i) && !not_clean,
            // "The water is clean", but not "to clean the floor".
            (Concept::Clean, Standing::Stated | Standing::Denied) => {
                let of_water = (1..=3).any(|back| {
                    i.checked_sub(back).is_some_and(|j| {
                        matches!(
                            text.concept_at(j),
                            Some(Concept::Water | Concept::WaterDepth)
                        )
                    })
                });
                if of_water {
                    match standing {
                        Standing::Denied => cloudy = true,
                        Standing::Aside | Standing::Stated => clear = true,
                    }
                }
            }
            _ => {}
        }
    }
    if let Some(ntu) = turbidity(text) {
        cloudy |= ntu >= CLOUDY_NTU;
    }
    match (clear, cloudy) {
        (true, false) => Some(Clarity::Clear),
        (false, true) => Some(Clarity::Cloudy),
        // "Not muddy, it is clear" agrees; "clear on top, muddy below" is cloudy: the larger dose.
        (true, true) => Some(Clarity::Cloudy),
        (false, false) => None,
    }
}

/// From here on water counts as cloudy (routine programmes double the dose from 10 NTU on:
/// LANTAGNE-2008 and WHO's household guidance as quoted in the reference tables).
const CLOUDY_NTU: f64 = 10.0;

/// Turbidity, NTU.
fn turbidity(text: Text<'_>) -> Option<f64> {
    text.stated()
        .filter(|amount| amount.unit == Unit::Turbidity)
        .find_map(Amount::value)
}

pub(super) fn sky(text: Text<'_>) -> Option<Sky> {
    let rain = text.says(Concept::Rain);
    let cloudy = text.says(Concept::CloudySky);
    let sunny = text.says(Concept::Sunny);
    match (rain, cloudy, sunny) {
        (true, _, _) => Some(Sky::Rain),
        (false, true, _) => Some(Sky::Cloudy),
        (false, false, true) => Some(Sky::Sunny),
        (false, false, false) => None,
    }
}

pub(super) fn chill(text: Text<'_>) -> Option<Chill> {
    text.says(Concept::Cold).then_some(Chill::Cold)
}

pub(super) fn temperature(text: Text<'_>) -> Option<f64> {
    // Bare degrees above this are hardly Celsius and hardly Fahrenheit: not used.
    const BARE_CELSIUS_MAX: f64 = 32.0;
    let mut found = text.stated().filter_map(|amount| {
        let value = amount.value()?;
        let celsius = match amount.unit {
            Unit::Celsius => value,
            Unit::Fahrenheit => (value - 32.0) / 1.8,
            Unit::Degree => {
                let of_product = text
                    .window(amount, 2, 0)
                    .any(|item| item.concept().is_some_and(super::product::is_product_word));
                if of_product || value > BARE_CELSIUS_MAX {
                    return None;
                }
                value
            }
            _ => return None,
        };
        limit::TEMPERATURE.check(celsius).ok()
    });
    let first = found.next()?;
    found
        .all(|other| (other - first).abs() < 0.5)
        .then_some(first)
}

/// Bare degrees by a product's side: of what kind is not said.
pub(super) fn degrees_of_product(text: Text<'_>) -> bool {
    text.stated().any(|amount| {
        amount.unit == Unit::Degree
            && text
                .window(amount, 2, 0)
                .any(|item| item.concept().is_some_and(super::product::is_product_word))
    })
}

pub(super) fn ph(text: Text<'_>) -> Option<f64> {
    text.stated()
        .filter(|amount| amount.unit == Unit::Ph)
        .find_map(Amount::value)
        .filter(|value| limit::PH.check(*value).is_ok())
}

pub(super) fn people(text: Text<'_>) -> Vec<Person> {
    let mut people = Vec::new();
    for (concept, person) in [
        (Concept::Pregnant, Person::Pregnant),
        (Concept::Thyroid, Person::Thyroid),
        (Concept::Infant, Person::Infant),
        (Concept::WeakImmunity, Person::WeakImmunity),
    ] {
        if text.says(concept) {
            people.push(person);
        }
    }
    people
}

pub(super) fn sewage(text: Text<'_>) -> bool {
    text.says(Concept::Sewage)
}

pub(super) fn altitude(text: Text<'_>) -> Option<f64> {
    text.stated().find_map(|amount| {
        let Unit::Metres(factor) = amount.unit else {
            return None;
        };
        let metres = amount.value()?;
        let in_height_units = factor >= 0.3;
        let is_height = in_height_units
            && (text.beside(amount, Concept::Altitude, 4, 3)
                || text.beside(amount, Concept::High, 4, 3)
                || metres >= 300.0);
        (is_height && limit::ALTITUDE.check(metres).is_ok()).then_some(metres)
    })
}

pub(super) fn height(text: Text<'_>) -> Option<Height> {
    text.says(Concept::High).then_some(Height::High)
}

pub(super) fn pore(text: Text<'_>) -> Option<f64> {
    text.stated()
        .filter(|amount| amount.unit == Unit::Micrometre)
        .find_map(Amount::value)
        .filter(|value| limit::PORE.check(*value).is_ok())
}

/// No tablet is heavier, g.
const TABLET_MAX_G: f64 = 10.0;

/// The mg of a tablet: one size, or none.
pub(super) fn tablet_mg(text: Text<'_>) -> Result<Option<f64>, TwoSizes> {
    // "Tablets of 8.68 g": by the gram only beside the tablet.
    let by_gram = |amount: &Amount| {
        matches!(amount.unit, Unit::Grams(factor) if factor <= 1.0)
            && amount.figure.value <= TABLET_MAX_G
            && text
                .window(amount, 3, 2)
                .any(|item| item.is(Concept::Tablet) || item.is(Concept::Nadcc))
    };
    let mut sizes: Vec<f64> = text
        .stated()
        .filter(|amount| amount.unit == Unit::Milligram || by_gram(amount))
        .filter_map(|amount| {
            let mg = match amount.unit {
                Unit::Grams(_) => amount.value()? * 1000.0,
                _ => amount.value()?,
            };
            Some((amount.items.start, mg))
        })
        .filter(|(start, _)| {
            !text.scope.corrections.iter().any(|correction| {
                start < correction
                    && text.stated().any(|later| {
                        later.unit == Unit::Milligram && later.items.start > *correction
                    })
            })
        })
        .map(|(_, value)| value)
        .collect();
    sizes.dedup();
    match sizes.as_slice() {
        [] => Ok(None),
        [one] => Ok(Some(*one)),
        _ => Err(TwoSizes),
    }
}

/// Two sizes of tablet in one message.
pub(super) struct TwoSizes;

pub(super) fn at_hand(text: Text<'_>, named: &[Product]) -> Vec<AtHand> {
    let mut found: Vec<AtHand> = Vec::new();
    for (i, item) in text.items.iter().enumerate() {
        if !text.scope.stated(i) {
            continue;
        }
        let thing = match item.concept() {
            Some(Concept::Filter) => Some(AtHand::Filter),
            Some(Concept::Fire | Concept::Boil) => Some(AtHand::Fire),
            Some(Concept::Sun | Concept::Sunny) => Some(AtHand::Sunlight),
            Some(concept) => super::product::named_by(concept)
                .or(match concept {
                    Concept::Chlorine | Concept::Hypochlorite if named.len() == 1 => {
                        named.first().copied()
                    }
                    _ => None,
                })
                .map(AtHand::Product),
            None => None,
        };
        if let Some(thing) = thing
            && !found.contains(&thing)
        {
            found.push(thing);
        }
    }
    for product in named {
        if !found.contains(&AtHand::Product(*product)) {
            found.push(AtHand::Product(*product));
        }
    }
    found
}

/// "Opened 3 years ago", "2 years old".
pub(super) fn age_days(text: Text<'_>) -> Option<f64> {
    text.stated().find_map(|amount| match amount.unit {
        Unit::Days(_) if text.beside(amount, Concept::Ago, 1, 2) => amount.value(),
        _ => None,
    })
}

/// What a solution is for: the more dangerous use where several are named.
pub(super) fn purpose(text: Text<'_>) -> Option<Purpose> {
    [
        (Concept::Spill, Purpose::Spills),
        (Concept::Cleaning, Purpose::Surfaces),
        (Concept::HandWashing, Purpose::Hands),
        (Concept::StockSolution, Purpose::Stock),
    ]
    .into_iter()
    .find(|(concept, _)| text.says(*concept))
    .map(|(_, purpose)| purpose)
}

pub(super) fn minutes(text: Text<'_>) -> Option<f64> {
    let times: Vec<&Amount> = text
        .stated()
        .filter(|amount| matches!(amount.unit, Unit::Minutes(_)))
        .collect();
    let first = times.first()?;
    // "1 hour 30 minutes"
    let rest = times.get(1).filter(|next| follows(text, first, next));
    let more = rest.and_then(|next| next.value()).unwrap_or(0.0);
    first.value().map(|minutes| minutes + more)
}

/// Whether a smaller unit stands right behind a larger one: 5 ft 6 in, 1 hour and 30 minutes.
pub(super) fn follows(text: Text<'_>, first: &Amount, next: &Amount) -> bool {
    let between = text
        .items
        .get(first.items.end..next.items.start)
        .unwrap_or_default();
    // Inches in a foot, centimetres in a metre, minutes in an hour.
    let parts = first.factor() / next.factor();
    [12.0, 60.0, 100.0]
        .iter()
        .any(|of| (parts - of).abs() < 1e-6)
        && between.len() <= 1
        && between.iter().all(|item| item.is(Concept::And))
}

pub(super) fn days(text: Text<'_>) -> Option<f64> {
    text.stated().find_map(|amount| match amount.unit {
        Unit::Days(_) => amount.value(),
        _ => None,
    })
}

pub(super) fn counted(text: Text<'_>, of: &[Concept]) -> Option<f64> {
    text.stated()
        .filter(|amount| amount.unit == Unit::Pieces)
        .find_map(|amount| {
            let end = amount.items.end;
            // "Watu 60", "people: 60".
            let before = amount
                .items
                .start
                .checked_sub(1)
                .and_then(|at| text.items.get(at))
                .filter(|item| item.concept().is_some_and(|concept| of.contains(&concept)));
            let noun_first = text.grammar.unit_order == UnitOrder::EitherSide;
            if before.is_some() && (noun_first || of.contains(&Concept::PeopleWord)) {
                return amount.value();
            }
            let named =
                (end..end + 3).find_map(|at| text.items.get(at).filter(|item| !item.is_filler()));
            named
                .and_then(Item::concept)
                .filter(|concept| of.contains(concept))
                .and_then(|_| amount.value())
        })
}

/// "A family of seven", "40 families of 5 persons each": families without a size are no number of
/// people.
pub(super) fn family(text: Text<'_>) -> Option<f64> {
    text.places(Concept::Family).find_map(|place| {
        let of = text
            .items
            .get(place + 1)
            .is_some_and(|item| item.is(Concept::Of));
        let size = text
            .amounts
            .iter()
            .find(|amount| amount.items.start == place + 2)
            .filter(|amount| of && amount.unit == Unit::Pieces)
            .and_then(Amount::value)?;
        let families = text
            .amounts
            .iter()
            .find(|amount| amount.items.end == place && amount.unit == Unit::Pieces)
            .and_then(Amount::value);
        Some(size * families.unwrap_or(1.0))
    })
}

/// "15 L each a day", "5 L per person": litres for each of the people, and where they stand.
pub(super) fn litres_each(text: Text<'_>) -> Option<(usize, f64)> {
    counted(text, &[Concept::PeopleWord])?;
    text.stated()
        .filter(|amount| matches!(amount.unit, Unit::Litres(factor, _) if factor > 0.1))
        .find_map(|amount| {
            let says = |at: usize, concept| text.items.get(at).is_some_and(|i| i.is(concept));
            let end = amount.items.end;
            // "3 jugs of 2 L each" hold it.
            let start = amount.items.start;
            let held = (start.saturating_sub(4)..start).any(|at| says(at, Concept::Container));
            let rate = (says(end, Concept::Per) || says(end, Concept::Flow)) && !held;
            // "200 people 30 days, drinking only 3 litres".
            let to_drink = text.says(Concept::Drink) || text.says(Concept::ToDrink);
            let each = rate || (to_drink && !held && days(text).is_some());
            let litres = amount.value().filter(|litres| *litres <= LITRES_EACH_MAX)?;
            each.then_some((amount.items.start, litres))
        })
}

/// More people than this are no one family.
pub(super) const FAMILY_MAX: f64 = 20.0;

/// "Three jerrycans", "two of them": so many, of a size that is known or not.
pub(super) fn counted_containers(text: Text<'_>) -> Option<Counted> {
    text.stated()
        .filter(|amount| amount.unit == Unit::Pieces)
        .find_map(|amount| {
            let end = amount.items.end;
            let item = |at: usize| text.items.get(at);
            let container = |at: usize| item(at).is_some_and(|i| i.is(Concept::Container));
            // Of cans, and not "two of us" or "two of the tablets".
            let of_else = (end + 1..text.items.len()).any(|at| {
                item(at).and_then(Item::concept).is_some_and(|concept| {
                    super::product::is_product_word(concept)
                        || matches!(
                            concept,
                            Concept::Family
                                | Concept::Infant
                                | Concept::PeopleWord
                                | Concept::PersonNoun
                                | Concept::UsShort
                                | Concept::Water
                        )
                })
            });
            // "Two of my friends want it too" goes on.
            let ends = item(end + 2).is_none_or(|i| matches!(i.tag, Tag::Sign(_)));
            let of_them = item(end).is_some_and(|i| i.is(Concept::Of)) && ends && !of_else;
            let count = amount
                .value()
                .filter(|count| *count >= 2.0 && count.fract() == 0.0)?;
            if container(end) || container(end + 1) {
                Some(Counted::Containers(count))
            } else {
                of_them.then_some(Counted::OfThem(count))
            }
        })
}

/// "5 litres each" and nothing else that could be each.
pub(super) fn litres_per(text: Text<'_>) -> Option<f64> {
    text.stated()
        .filter(|amount| matches!(amount.unit, Unit::Litres(factor, _) if factor > 0.1))
        .find(|amount| {
            text.items
                .get(amount.items.end)
                .is_some_and(|item| item.is(Concept::Per) || item.is(Concept::Flow))
        })
        .filter(|_| !text.says(Concept::Container))
        .and_then(Amount::value)
        .filter(|litres| *litres <= LITRES_EACH_MAX)
}

/// Nobody is given more for a day, L.
const LITRES_EACH_MAX: f64 = 200.0;

pub(super) fn grams(text: Text<'_>) -> Option<f64> {
    text.stated().find_map(|amount| match amount.unit {
        Unit::Grams(_) => amount.value(),
        _ => None,
    })
}

/// The date that stands by "opened".
pub(super) fn opened(text: Text<'_>) -> Option<Date> {
    let place = text.places(Concept::Opened).next()?;
    (place + 1..(place + 6).min(text.items.len()))
        .chain(place.saturating_sub(5)..place)
        .find_map(|at| date_at(text, at))
}

fn date_at(text: Text<'_>, at: usize) -> Option<Date> {
    let item = text.items.get(at)?;
    if let Tag::Date(written) = &item.tag {
        return numeric_date(written);
    }
    // "2 January 2026", "the 3rd of March 2026", "March 3, 2026"
    let year_after = |from: usize| {
        (from..from + 3).find_map(|i| match text.items.get(i)?.tag {
            Tag::Figure(figure) if (2000.0..2100.0).contains(&figure.value) => Some(figure.value),
            _ => None,
        })
    };
    let day_of = |index: usize| match text.items.get(index)?.tag {
        Tag::Figure(figure) if (1.0..=31.0).contains(&figure.value) => Some(figure.value),
        Tag::Number(value) if (1.0..=31.0).contains(&value) => {
            number_at(text.items, index).map(|(figure, _)| figure.value)
        }
        _ => text.items.get(index)?.ordinal.map(f64::from),
    };
    let month = item.month?;
    let before = (1..=2).find_map(|back| at.checked_sub(back).and_then(day_of));
    let (day, year) = match (before, day_of(at + 1)) {
        (Some(day), _) => (day, year_after(at + 1)?),
        (None, Some(day)) => (day, year_after(at + 2)?),
        // "Opened March 2026": the older end of it.
        (None, None) => (1.0, year_after(at + 1)?),
    };
    Date::new(year as i16, i8::try_from(month).ok()?, day as i8).ok()
}

/// Year first, or day, month and year.
fn numeric_date(written: &str) -> Option<Date> {
    let parts: Vec<i16> = written
        .split(['-', '/', '.'])
        .map(str::parse)
        .collect::<Result<_, _>>()
        .ok()?;
    let [first, second, third] = parts.as_slice() else {
        return None;
    };
    let (day, month, year) = if *first > 31 {
        (*third, *second, *first)
    } else {
        (*first, *second, *third)
    };
    let year = if year < 100 { year + 2000 } else { year };
    Date::new(year, i8::try_from(month).ok()?, i8::try_from(day).ok()?).ok()
}
