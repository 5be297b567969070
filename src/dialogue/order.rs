//! From facts to an order that lacks nothing, or to the facts that it lacks.

use crate::parser::strength_limit;
use crate::quantity::{
    Altitude, OutOfLimit, Ph, Pore, Strength, TabletMass, Temperature, Volume, limit,
};
use crate::request::{Facts, Field, LabelFigure, Product, Topic};
use crate::treatment::{
    Agent, BoilOrder, ChooseOrder, DoseOrder, Elevation, FilterOrder, Order, Sewage, SunOrder,
    Warmth, Water,
};

/// The fields that a dose lacks, most needed first.
pub(super) fn missing_for_dose(facts: &Facts) -> Vec<Field> {
    let mut missing = Vec::new();
    match facts.product {
        // What depends on the product is asked once it is known.
        None => missing.push(Field::Product),
        Some(product) => match product.label_figure() {
            LabelFigure::Strength if facts.strength_percent.is_none() => {
                missing.push(Field::StrengthPercent);
            }
            LabelFigure::TabletMass if facts.tablet_mg.is_none() => missing.push(Field::TabletMg),
            LabelFigure::Directions | LabelFigure::Strength | LabelFigure::TabletMass => {}
        },
    }
    if facts.volume_l.is_none() {
        missing.push(Field::VolumeL);
    }
    missing
}

/// Why facts do not make an order.
#[derive(Debug, Clone, PartialEq)]
pub(super) enum NoOrder {
    /// These are missing.
    Missing(Vec<Field>),
    /// This topic has no order of the core yet.
    NotServed,
}

/// The complete order, if the facts suffice.
pub(super) fn order(topic: Topic, facts: &Facts) -> Result<Order, NoOrder> {
    match topic {
        Topic::Dose => dose(facts).map(Order::Dose),
        Topic::Boil => Ok(Order::Boil(BoilOrder {
            elevation: elevation(facts),
            clarity: facts.clarity,
        })),
        Topic::Sun => Ok(Order::Sun(SunOrder {
            sky: facts.sky,
            bottle: facts
                .volume_l
                .and_then(|litres| Volume::from_litres(litres).ok()),
            clarity: facts.clarity,
        })),
        Topic::Filter => Ok(Order::Filter(FilterOrder {
            pore: facts.pore_um.and_then(|um| Pore::from_micrometres(um).ok()),
            sewage: sewage(facts),
        })),
        Topic::Choose => Ok(Order::Choose(ChooseOrder {
            have: facts.have.clone(),
            water: water(facts),
            people: facts.person.clone(),
            elevation: elevation(facts),
            pore: facts.pore_um.and_then(|um| Pore::from_micrometres(um).ok()),
            sky: facts.sky,
        })),
        Topic::Adjust
        | Topic::Dilute
        | Topic::Exposure
        | Topic::Forget
        | Topic::Help
        | Topic::Illness
        | Topic::More
        | Topic::Remind
        | Topic::Residual
        | Topic::Settings
        | Topic::Start
        | Topic::Stock
        | Topic::Stop
        | Topic::Storage
        | Topic::Supply
        | Topic::Unclear
        | Topic::Well
        | Topic::Why => Err(NoOrder::NotServed),
    }
}

/// A dose order, if the facts suffice.
pub(super) fn dose(facts: &Facts) -> Result<DoseOrder, NoOrder> {
    let missing = missing_for_dose(facts);
    let (Some(product), Some(litres)) = (facts.product, facts.volume_l) else {
        return Err(NoOrder::Missing(missing));
    };
    if !missing.is_empty() {
        return Err(NoOrder::Missing(missing));
    }
    // A figure outside its limit never came this far unnoticed; should one, it is asked again.
    let again = |field: Field| NoOrder::Missing(vec![field]);
    let volume = Volume::from_litres(litres).map_err(|_| again(Field::VolumeL))?;
    let agent = agent(product, facts)?;
    Ok(DoseOrder {
        agent,
        volume,
        system: facts.volume_system.unwrap_or_default(),
        water: water(facts),
        people: facts.person.clone(),
    })
}

fn agent(product: Product, facts: &Facts) -> Result<Agent, NoOrder> {
    let strength = || -> Result<Strength, NoOrder> {
        let ask = || NoOrder::Missing(vec![Field::StrengthPercent]);
        let percent = facts.strength_percent.ok_or_else(ask)?;
        strength_limit(product)
            .check(percent)
            .and_then(Strength::from_percent)
            .map_err(|_: OutOfLimit| ask())
    };
    let tablet = || -> Result<TabletMass, NoOrder> {
        let ask = || NoOrder::Missing(vec![Field::TabletMg]);
        if product == Product::IodineTablet {
            limit::IODINE_TABLET
                .check(facts.tablet_mg.ok_or_else(ask)?)
                .map_err(|_| ask())?;
        }
        TabletMass::from_mg(facts.tablet_mg.ok_or_else(ask)?).map_err(|_| ask())
    };
    Ok(match product {
        Product::Bleach => Agent::Bleach(strength()?),
        Product::BleachingPowder => Agent::BleachingPowder(strength()?),
        Product::CalciumHypochlorite => Agent::CalciumHypochlorite(strength()?),
        Product::ChlorineDioxide => Agent::ChlorineDioxide,
        Product::IodineTablet => Agent::IodineTablet(tablet()?),
        Product::IodineTincture => Agent::IodineTincture(strength()?),
        Product::Nadcc => Agent::Nadcc(
            tablet()?,
            facts
                .label_litres
                .and_then(|litres| Volume::from_litres(litres).ok()),
        ),
        Product::PovidoneIodine => Agent::PovidoneIodine(strength()?),
    })
}

fn water(facts: &Facts) -> Water {
    let measured = facts
        .temperature_c
        .and_then(|c| Temperature::from_celsius(c).ok());
    Water {
        clarity: facts.clarity,
        warmth: match (measured, facts.chill) {
            (Some(temperature), _) => Warmth::Measured(temperature),
            (None, Some(_)) => Warmth::Cold,
            (None, None) => Warmth::Unknown,
        },
        ph: facts.ph.and_then(|ph| Ph::from_ph(ph).ok()),
        sewage: sewage(facts),
    }
}

const fn sewage(facts: &Facts) -> Sewage {
    if facts.sewage {
        Sewage::Present
    } else {
        Sewage::NotSaid
    }
}

fn elevation(facts: &Facts) -> Elevation {
    match (
        facts.altitude_m.and_then(|m| Altitude::from_metres(m).ok()),
        facts.height,
    ) {
        (Some(altitude), _) => Elevation::Measured(altitude),
        (None, Some(_)) => Elevation::High,
        (None, None) => Elevation::Unknown,
    }
}
