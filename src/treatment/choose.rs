//! Which method, from what is at hand.
//!
//! In: what is at hand, the water, who drinks it.
//! Out: methods, best first; those that belong together share a rank.
//! Promises boiling first wherever there is a fire, two barriers against sewage and for weak
//! immunity where they can be had, and iodine last and never for those who must not drink it.
//! Does not know strengths: the dose is another question.

use crate::request::{AtHand, Person, Product, Refusal, Sky};

use super::condition;
use super::iodine;
use super::order::{BoilOrder, ChooseOrder, FilterOrder, Sewage, SunOrder};
use super::outcome::{Caution, Cover, Coverage, Measure, Method, Outcome, Verdict, WaitBasis};
use super::source::Source;
use super::{boil, chlorine_dioxide, filter, sun};

/// A filter must be this fine to stop *Cryptosporidium*, µm absolute (US CDC backcountry guide).
const FINE_UM: f64 = 1.0;

/// A filter this fine needs no chemical beside it (Wilderness Medical Society 2024, Table 3).
const STOPS_VIRUSES_UM: f64 = 0.02;

/// Products in the order they are proposed: the known strength of household bleach first,
/// iodine, with its cautions, last.
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
    let methods = ranked(order);
    if methods.is_empty() && unsuitable_iodine_at_hand(order) {
        return Err(Refusal::IodineUnsuitable);
    }
    // With nothing that helps at hand, fire is what to look for.
    let methods = if methods.is_empty() {
        vec![vec![AtHand::Fire]]
    } else {
        methods
    };
    let first = methods.first().map_or(&[] as &[Method], Vec::as_slice);
    Ok(Outcome {
        methods: methods.clone(),
        ..proposal(order, first)
    })
}

fn ranked(order: &ChooseOrder) -> Vec<Vec<Method>> {
    let at_hand = |method: &Method| order.have.contains(method);
    let iodine_allowed = !iodine::is_unsuitable(&order.people);
    let products: Vec<Product> = PRODUCTS
        .into_iter()
        .filter(|product| at_hand(&AtHand::Product(*product)))
        .filter(|product| !product.is_iodine() || iodine_allowed)
        .collect();
    let um = order.pore.map(|pore| pore.micrometres());
    let has_filter = at_hand(&AtHand::Filter);
    let is_fine = um.is_none_or(|um| um <= FINE_UM);
    let is_finest = um.is_some_and(|um| um <= STOPS_VIRUSES_UM);
    let single = |method: Method| vec![method];
    let alone = |iodine: bool| {
        let chosen: Vec<_> = products
            .iter()
            .filter(|product| product.is_iodine() == iodine)
            .collect();
        chosen
            .into_iter()
            .map(|product| single(AtHand::Product(*product)))
    };

    let mut methods = Vec::new();
    if at_hand(&AtHand::Fire) {
        methods.push(single(AtHand::Fire));
    }
    if let Some(product) = products.first().filter(|_| has_filter && is_fine) {
        methods.push(vec![AtHand::Filter, AtHand::Product(*product)]);
    }
    if has_filter && is_finest {
        methods.push(single(AtHand::Filter));
    }
    methods.extend(alone(false));
    if at_hand(&AtHand::Sunlight) && order.sky != Some(Sky::Rain) {
        methods.push(single(AtHand::Sunlight));
    }
    if has_filter && !is_finest {
        methods.push(single(AtHand::Filter));
    }
    methods.extend(alone(true));
    methods
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
        outcome.covers = outcome.covers.with(part.covers);
        // What the second barrier stops need not be warned of.
        outcome.cautions.extend(part.cautions);
        outcome.sources.extend(part.sources);
    }
    let covers = outcome.covers;
    outcome.cautions.retain(|caution| !is_met(*caution, covers));
    let mut cautions = condition::first_cautions(&order.water, &order.people);
    let one_barrier = first.len() < 2 && !first.contains(&AtHand::Fire);
    let two_wanted =
        condition::has_sewage(order.water.sewage) || order.people.contains(&Person::WeakImmunity);
    if one_barrier && two_wanted {
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
    cautions.extend(condition::cold_caution(order.water.warmth));
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
        covers: Coverage {
            bacteria: Cover::Yes,
            viruses: Cover::Yes,
            giardia,
            cryptosporidium,
        },
        cautions,
        sources: vec![source],
        boiling_point_c: None,
        methods: Vec::new(),
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
