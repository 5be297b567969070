//! Which method, from what is at hand.
//!
//! In: what is at hand, the water, who drinks it.
//! Out: methods, best first; those that belong together share a rank; why the first is first.
//! Promises boiling first wherever there is a fire, two barriers before one (against sewage and
//! for weak immunity also where one alone would do), no sun on cloudy water unless there is
//! nothing else, and iodine last and never for those who must not drink it.
//! Does not know strengths: the dose is another question.

use crate::request::{AtHand, Person, Product, Refusal, Sky};

use super::condition;
use super::iodine;
use super::order::{BoilOrder, ChooseOrder, FilterOrder, Sewage, SunOrder, Warmth};
use super::outcome::{
    Caution, Choice, Cover, Coverage, Detail, Measure, Method, Outcome, Reason, Verdict, WaitBasis,
};
use super::source::Source;
use super::{boil, chlorine_dioxide, filter, sun};

/// A filter must be this fine to stop *Cryptosporidium*, µm absolute (US CDC backcountry guide).
const FINE_UM: f64 = 1.0;

/// A filter this fine needs no chemical beside it (Wilderness Medical Society 2024, Table 3).
const STOPS_VIRUSES_UM: f64 = 0.02;

/// Products in the order they are proposed beside a filter: the known strength of household
/// bleach first, iodine, with its cautions, last.
const PRODUCTS: [Product; 8] = [
    Product::Bleach,
    Product::Nadcc,
    Product::CalciumHypochlorite,
    Product::BleachingPowder,
    Product::ChlorineDioxide,
    Product::PovidoneIodine,
    Product::IodineTincture,
    Product::IodineTablet,
];

/// Ranks what is at hand.
pub(super) fn treat(order: &ChooseOrder) -> Verdict {
    let mut methods = Candidates::of(order).ranked();
    if methods.is_empty() && unsuitable_iodine_at_hand(order) {
        return Err(Refusal::IodineUnsuitable);
    }
    let reason = reason(&methods);
    // With nothing that helps at hand, fire is what to look for.
    if methods.is_empty() {
        methods.push(vec![AtHand::Fire]);
    }
    let outcome = proposal(order, methods.first().map_or(&[], Vec::as_slice));
    Ok(Outcome {
        detail: Detail::Choice(Choice { methods, reason }),
        ..outcome
    })
}

/// Why the first of them is first.
fn reason(methods: &[Vec<Method>]) -> Reason {
    match methods {
        [] => Reason::NothingElse,
        [first, ..] if first.contains(&AtHand::Fire) => Reason::KillsAll,
        [first, ..] if first.len() > 1 => Reason::TwoBarriers,
        [_] => Reason::OnlyOne,
        [_, ..] => Reason::WidestCover,
    }
}

/// What of the things at hand suits this water and these people.
struct Candidates {
    fire: bool,
    /// A filter that stops something.
    filter: bool,
    /// The filter stops *Cryptosporidium*, or may.
    is_fine: bool,
    /// The filter stops viruses too.
    is_finest: bool,
    sun: bool,
    is_cloudy: bool,
    two_wanted: bool,
    /// Suitable products, in the order of [`PRODUCTS`].
    products: Vec<Product>,
}

impl Candidates {
    fn of(order: &ChooseOrder) -> Self {
        let at_hand = |method| order.have.contains(&method);
        let um = order.pore.map(|pore| pore.micrometres());
        let iodine_allowed = !iodine::is_unsuitable(&order.people);
        Self {
            fire: at_hand(AtHand::Fire),
            filter: at_hand(AtHand::Filter)
                && alone(order, AtHand::Filter).covers != Some(Coverage::NOTHING),
            is_fine: um.is_none_or(|um| um <= FINE_UM),
            is_finest: um.is_some_and(|um| um <= STOPS_VIRUSES_UM),
            sun: at_hand(AtHand::Sunlight) && order.sky != Some(Sky::Rain),
            is_cloudy: condition::is_cloudy(order.water.clarity),
            two_wanted: two_wanted(order),
            products: PRODUCTS
                .into_iter()
                .filter(|product| at_hand(AtHand::Product(*product)))
                .filter(|product| !product.is_iodine() || iodine_allowed)
                .collect(),
        }
    }

    /// Boiling; then two barriers; then one, the widest cover first; iodine last.
    fn ranked(&self) -> Vec<Vec<Method>> {
        let mut methods = Vec::new();
        if self.fire {
            methods.push(vec![AtHand::Fire]);
        }
        methods.extend(self.pairs());
        if self.filter && self.is_finest {
            methods.push(vec![AtHand::Filter]);
        }
        methods.extend(self.singles(Self::is_dioxide));
        methods.extend(self.singles(|product| !product.is_iodine() && !Self::is_dioxide(product)));
        if self.sun && (!self.is_cloudy || !self.has_better_than_sun()) {
            methods.push(vec![AtHand::Sunlight]);
        }
        if self.filter && self.is_fine && !self.is_finest {
            methods.push(vec![AtHand::Filter]);
        }
        methods.extend(self.singles(Product::is_iodine));
        // It lets bacteria and viruses pass, which iodine kills.
        if self.filter && !self.is_fine {
            methods.push(vec![AtHand::Filter]);
        }
        methods
    }

    /// Mud shades the germs from the sun: in cloudy water anything that deals with bacteria is
    /// better.
    fn has_better_than_sun(&self) -> bool {
        self.fire || !self.products.is_empty() || self.filter && self.is_fine
    }

    /// It covers more than chlorine does, so that it comes before it where neither has a partner.
    fn is_dioxide(product: Product) -> bool {
        product == Product::ChlorineDioxide
    }

    fn singles(&self, kind: impl Fn(Product) -> bool) -> impl Iterator<Item = Vec<Method>> {
        self.products
            .iter()
            .filter(move |product| kind(**product))
            .map(|product| vec![AtHand::Product(*product)])
    }

    /// Two barriers, each for what the other lets pass: a fine filter stops the *Cryptosporidium*
    /// that a chemical leaves, a chemical or the sun the viruses that a filter leaves.
    fn pairs(&self) -> Vec<Vec<Method>> {
        let partner = self.products.first().copied();
        let mut pairs = Vec::new();
        if self.filter && self.is_fine {
            if let Some(product) = partner {
                pairs.push(vec![AtHand::Filter, AtHand::Product(product)]);
            }
            // The filter clears the water first, so that mud does not matter.
            if self.sun && partner.is_none_or(Product::is_iodine) {
                pairs.push(vec![AtHand::Filter, AtHand::Sunlight]);
            }
        } else if let Some(product) = partner
            && self.two_wanted
            && self.sun
            && !self.is_cloudy
        {
            // In this order: the sun eats chlorine.
            pairs.push(vec![AtHand::Sunlight, AtHand::Product(product)]);
        }
        pairs
    }
}

/// Sewage and weak immunity ask for two barriers, or for boiling.
fn two_wanted(order: &ChooseOrder) -> bool {
    condition::has_sewage(order.water.sewage) || order.people.contains(&Person::WeakImmunity)
}

fn unsuitable_iodine_at_hand(order: &ChooseOrder) -> bool {
    iodine::is_unsuitable(&order.people)
        && order.have.iter().any(|method| match method {
            AtHand::Product(product) => product.is_iodine(),
            AtHand::Filter | AtHand::Fire | AtHand::Sunlight => false,
        })
}

/// What the first method, or pair, is good for.
fn proposal(order: &ChooseOrder, first: &[Method]) -> Outcome {
    let mut parts = first.iter().map(|method| alone(order, *method));
    let Some(mut outcome) = parts.next() else {
        return alone(order, AtHand::Fire);
    };
    for part in parts {
        outcome.covers = outcome
            .covers
            .zip(part.covers)
            .map(|(one, other)| one.with(other));
        // What the second barrier stops need not be warned of.
        outcome.cautions.extend(part.cautions);
        outcome.sources.extend(part.sources);
    }
    if let Some(covers) = outcome.covers {
        outcome.cautions.retain(|caution| !is_met(*caution, covers));
    }
    let mut cautions = condition::first_cautions(&order.water, &order.people);
    let one_barrier = first.len() < 2 && !first.contains(&AtHand::Fire);
    if one_barrier && two_wanted(order) {
        cautions.push(Caution::SecondMethod);
    }
    cautions.append(&mut outcome.cautions);
    let at_fire = first.contains(&AtHand::Fire);
    // Boiling is the very thing that these two ask for.
    cautions.retain(|caution| {
        !(at_fire && matches!(caution, Caution::Sewage | Caution::WeakImmunityBoil))
    });
    outcome.cautions = first_of_each(cautions);
    outcome.sources = first_of_each(outcome.sources);
    outcome
}

/// Whether a caution is moot, because another barrier covers what it warns of.
fn is_met(caution: Caution, covers: Coverage) -> bool {
    match caution {
        Caution::VirusesPass => covers.viruses == Cover::Yes,
        Caution::LeptospiraPasses => covers.bacteria == Cover::Yes,
        Caution::CryptosporidiumSurvives => covers.cryptosporidium == Cover::Yes,
        Caution::GiardiaPartly => covers.giardia == Cover::Yes,
        Caution::AbsolutePore
        | Caution::BottleSize
        | Caution::CleanTankFirst
        | Caution::CoolAndDark
        | Caution::DangerSigns
        | Caution::FreshDaily
        | Caution::GlovesAndAir
        | Caution::KeepFromChildren
        | Caution::KeepTreating
        | Caution::LetStand
        | Caution::NarrowNeck
        | Caution::NeverMix
        | Caution::NotForDrinking
        | Caution::NotUntilPumped
        | Caution::Rehydrate
        | Caution::RetestLater
        | Caution::StirTank
        | Caution::TabletTooStrong
        | Caution::WellClearFirst
        | Caution::WellPh
        | Caution::ChemicalsStay
        | Caution::ColdTakesLonger
        | Caution::FreshAir
        | Caution::HigherBoilLonger
        | Caution::IodineUnsuitable
        | Caution::LabelFirst
        | Caution::LowerFigure
        | Caution::MedicalHelp
        | Caution::NoVomiting
        | Caution::RinseWithWater
        | Caution::NoShorterWait
        | Caution::NotInRain
        | Caution::OldBottle
        | Caution::PoreUnknown
        | Caution::PrintTest
        | Caution::SecondMethod
        | Caution::Sewage
        | Caution::SmellCheck
        | Caution::SporesSurvive
        | Caution::StrainFirst
        | Caution::TooMurky
        | Caution::TwoDays
        | Caution::UnscentedOnly
        | Caution::WeakImmunityBoil => false,
    }
}

/// One method by itself.
fn alone(order: &ChooseOrder, method: Method) -> Outcome {
    match method {
        AtHand::Fire => boil::treat(&BoilOrder {
            elevation: order.elevation,
            clarity: order.water.clarity,
        }),
        AtHand::Filter => {
            // Sewage is warned of once, for the whole proposal.
            filter::treat(&FilterOrder {
                pore: order.pore,
                sewage: Sewage::NotSaid,
            })
        }
        AtHand::Sunlight => {
            let clarity = order.water.clarity;
            Outcome {
                wait: None,
                ..sun::treat(&SunOrder {
                    sky: order.sky,
                    bottle: None,
                    clarity,
                })
            }
        }
        AtHand::Product(product) => chemical(order, product),
    }
}

/// A product of which only the kind is known.
fn chemical(order: &ChooseOrder, product: Product) -> Outcome {
    let (giardia, cautions, source): (_, &[Caution], _) = match product {
        Product::Bleach => (
            Cover::Partly,
            &[Caution::UnscentedOnly],
            Source::Epa816F15003,
        ),
        Product::BleachingPowder | Product::CalciumHypochlorite => {
            (Cover::Partly, &[], Source::Epa816F15003)
        }
        Product::Nadcc => (Cover::Partly, &[Caution::LabelFirst], Source::IcrcCatalogue),
        Product::ChlorineDioxide => (Cover::Yes, &[Caution::LabelFirst], Source::LabelDirections),
        Product::IodineTablet | Product::IodineTincture | Product::PovidoneIodine => {
            (Cover::Partly, &[Caution::IodineUnsuitable], Source::Wms2024)
        }
    };
    let mut cautions = cautions.to_vec();
    cautions.push(Caution::CryptosporidiumSurvives);
    if giardia != Cover::Yes {
        cautions.push(Caution::GiardiaPartly);
    }
    // No wait is told here, so that cold water needs the word as much as unknown water does.
    if condition::is_cold(order.water.warmth) || order.water.warmth == Warmth::Unknown {
        cautions.push(Caution::ColdTakesLonger);
    }
    let cryptosporidium = if product == Product::ChlorineDioxide {
        chlorine_dioxide::against_cryptosporidium(order.water.warmth)
    } else {
        Cover::No
    };
    Outcome {
        measure: Measure::Nothing,
        dose: None,
        wait: None,
        wait_basis: WaitBasis::Rule,
        covers: Some(Coverage {
            bacteria: Cover::Yes,
            viruses: Cover::Yes,
            giardia,
            cryptosporidium,
        }),
        logs: None,
        cautions,
        sources: vec![source],
        boiling_point_c: None,
        detail: Detail::Plain,
    }
}

/// Takes out repetitions and keeps the order.
fn first_of_each<T: PartialEq>(items: Vec<T>) -> Vec<T> {
    let mut kept = Vec::with_capacity(items.len());
    for item in items {
        if !kept.contains(&item) {
            kept.push(item);
        }
    }
    kept
}
