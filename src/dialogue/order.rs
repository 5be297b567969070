//! From facts to an order that lacks nothing, or to the facts that it lacks.

use crate::parser::{Doubt, Note, strength_limit};
use crate::quantity::{
    Altitude, CleaningTabletMass, Days, Depth, Diameter, Headcount, OutOfLimit, Ph, Pore, Residual,
    StockGrams, StockMl, StockTablets, Strength, TabletMass, Temperature, Volume, limit,
};
use crate::request::{Facts, Field, Form, LabelFigure, Nose, Product, Purpose, Taken, Topic, Work};
use crate::treatment::{
    self, Agent, BoilOrder, BulkChlorine, ChooseOrder, CleaningChlorine, DiluteOrder, DoseOrder,
    Elevation, Evidence, FilterOrder, JarTestOrder, Order, Outbreak, ResidualOrder, Served, Sewage,
    Stock, StorageOrder, SunOrder, SupplyOrder, SupplyQuestion, TopUpChlorine, Warmth, Water,
    WellOrder,
};

use super::bottle::amount_told;

/// The fields that a dose lacks, most needed first.
pub(super) fn missing_for_dose(facts: &Facts) -> Vec<Field> {
    let mut missing = missing_of_label(facts);
    if facts.volume_l.is_none() {
        missing.push(Field::VolumeL);
    }
    missing
}

/// The fields that a question lacks, most needed first.
pub(super) fn missing(work: Work, facts: &Facts, notes: &[Note]) -> Vec<Field> {
    match work {
        Work::Dose => missing_for_dose(facts),
        Work::Well => {
            let mut missing = missing_of_label(facts);
            if facts.diameter_m.is_none() {
                missing.push(Field::DiameterM);
            }
            if facts.water_depth_m.is_none() {
                missing.push(Field::WaterDepthM);
            }
            missing
        }
        Work::Dilute if is_too_strong(facts) => vec![Field::TargetPercent],
        Work::Dilute => {
            let mut missing = missing_of_label(facts);
            if facts.volume_l.is_none() {
                missing.push(Field::VolumeL);
            }
            if target_percent(facts).is_none() {
                missing.push(Field::TargetPercent);
            }
            missing
        }
        Work::Residual => missing_for_residual(facts, notes),
        Work::Supply => missing_for_supply(facts, notes),
    }
}

/// A solution that is to be stronger than what it is made of.
fn is_too_strong(facts: &Facts) -> bool {
    let strength = facts.strength_percent.filter(|_| facts.product.is_some());
    target_percent(facts)
        .zip(strength)
        .is_some_and(|(target, strength)| target > strength)
}

/// Product, then its label's figure.
fn missing_of_label(facts: &Facts) -> Vec<Field> {
    let Some(product) = facts.product else {
        // What depends on the product is asked once it is known.
        return vec![Field::Product];
    };
    match product.label_figure() {
        LabelFigure::Strength if facts.strength_percent.is_none() => vec![Field::StrengthPercent],
        LabelFigure::TabletMass if facts.tablet_mg.is_none() => vec![Field::TabletMg],
        LabelFigure::Directions | LabelFigure::Strength | LabelFigure::TabletMass => Vec::new(),
    }
}

/// A reading by itself lacks nothing; how much to add needs the product and the water.
fn missing_for_residual(facts: &Facts, notes: &[Note]) -> Vec<Field> {
    if facts.asks_jar_method {
        return Vec::new();
    }
    if !facts.jars.is_empty() {
        return if facts.jar_l.is_none() {
            vec![Field::VolumeL]
        } else {
            Vec::new()
        };
    }
    if facts.residual_mg_per_l.is_none() {
        return if facts.nose.is_some() {
            Vec::new()
        } else {
            vec![Field::ResidualMgPerL]
        };
    }
    if !asks_top_up(facts, notes) {
        return Vec::new();
    }
    let mut missing = match (facts.product, facts.strength_percent) {
        // "10% hypochlorite", of which only the strength came through, is a liquid.
        (None, Some(percent)) if limit::BLEACH.check(percent).is_ok() => Vec::new(),
        // The label's figure tells a liquid from a powder.
        (None, None) => vec![Field::StrengthPercent],
        (None | Some(_), _) => missing_of_label(facts),
    };
    if facts.volume_l.is_none() {
        missing.push(Field::VolumeL);
    }
    missing
}

/// Enough at the point of use (DECISIONS, residual).
const AT_USE_MG_PER_L: f64 = 0.2;

/// How much to add is asked, or all that it needs is told.
fn asks_top_up(facts: &Facts, notes: &[Note]) -> bool {
    let fits = facts
        .product
        .is_some_and(|product| unfit(Work::Residual, product).is_none());
    // Where people drink, 0.2 is enough: a bucket is not topped up without being asked.
    let too_little = facts
        .residual_mg_per_l
        .is_some_and(|mg| mg < AT_USE_MG_PER_L)
        || facts.minutes.is_some()
        || facts.taken == Some(Taken::AtTap);
    notes.contains(&Note::AsksAmount)
        || (fits && too_little && facts.volume_l.is_some() && missing_of_label(facts).is_empty())
}

fn missing_for_supply(facts: &Facts, notes: &[Note]) -> Vec<Field> {
    let mut missing = missing_of_label(facts);
    let Some(product) = facts.product else {
        return missing;
    };
    let stock = match product.form() {
        Form::Liquid => Field::StockMl,
        Form::Powder => Field::StockG,
        Form::Tablets => Field::Tablets,
    };
    let asks_days = notes.contains(&Note::AsksDays);
    let asks_people = notes.contains(&Note::AsksPeople);
    match (amount_told(facts, product.form()), facts.people, facts.days) {
        // How long for how many, how many for how long: one of the two makes the other.
        (Some(_), None, None) if asks_people => missing.push(Field::Days),
        (Some(_), None, None) if asks_days => missing.push(Field::People),
        (None, Some(_), None) if asks_days => missing.push(stock),
        (None, None, Some(_)) if asks_people => missing.push(stock),
        (Some(_), _, _) | (None, Some(_), Some(_)) => {}
        (None, Some(_), None) => missing.push(Field::Days),
        (None, None, Some(_)) => missing.push(Field::People),
        (None, None, None) => missing.push(stock),
    }
    missing
}

/// The strength wanted; where only the use is told, the published strength for it.
pub(super) fn target_percent(facts: &Facts) -> Option<f64> {
    facts.target_percent.or(match facts.purpose {
        // For skin all sources agree (CDC, GTFCC, IFRC: 0.05%); a stock solution is 1% in all.
        Some(Purpose::Hands) => Some(treatment::HANDS_PERCENT),
        Some(Purpose::Stock) => Some(treatment::STOCK_PERCENT),
        // For surfaces and spills they print 0.1 to 2%, by the disease: the person decides.
        Some(Purpose::Spills | Purpose::Surfaces) | None => None,
    })
}

/// Why a product will not do for a kind of work.
pub(super) const fn unfit(work: Work, product: Product) -> Option<Doubt> {
    let by_bulk = matches!(
        product,
        Product::Bleach | Product::BleachingPowder | Product::CalciumHypochlorite
    );
    let chlorine = by_bulk || matches!(product, Product::Nadcc);
    let (fits, doubt) = match work {
        Work::Dose => return None,
        Work::Well => (by_bulk, Doubt::UnfitForWell),
        Work::Dilute => (chlorine, Doubt::UnfitForCleaning),
        Work::Residual => (chlorine, Doubt::UnfitForResidual),
        Work::Supply => (
            !matches!(product, Product::ChlorineDioxide),
            Doubt::UnfitForSupply,
        ),
    };
    if fits { None } else { Some(doubt) }
}

/// The complete order, or the fields that it lacks. A topic that is never worked out lacks
/// nothing that could be asked for.
pub(super) fn order(topic: Topic, facts: &Facts, notes: &[Note]) -> Result<Order, Vec<Field>> {
    if let Some(work) = topic.work() {
        return work_order(work, facts, notes);
    }
    match topic {
        Topic::Storage => Ok(Order::Storage(storage(facts, notes))),
        Topic::Illness => Ok(Order::Illness),
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
        | Topic::Dose
        | Topic::Exposure
        | Topic::Forget
        | Topic::Help
        | Topic::More
        | Topic::Remind
        | Topic::Residual
        | Topic::Settings
        | Topic::Start
        | Topic::Stock
        | Topic::Stop
        | Topic::Supply
        | Topic::Unclear
        | Topic::Well
        | Topic::Why => Err(Vec::new()),
    }
}

fn work_order(work: Work, facts: &Facts, notes: &[Note]) -> Result<Order, Vec<Field>> {
    let missing = missing(work, facts, notes);
    if !missing.is_empty() {
        return Err(missing);
    }
    match work {
        Work::Dose => dose(facts).map(Order::Dose),
        Work::Well => well(facts).map(Order::Well),
        Work::Dilute => dilute(facts).map(Order::Dilute),
        Work::Residual if !facts.jars.is_empty() || facts.asks_jar_method => {
            jar_test(facts).map(Order::JarTest)
        }
        Work::Residual => residual(facts, notes).map(Order::Residual),
        Work::Supply => supply(facts, notes).map(Order::Supply),
    }
}

fn bulk(facts: &Facts) -> Result<BulkChlorine, Vec<Field>> {
    let ask = || vec![Field::StrengthPercent];
    let product = facts.product.unwrap_or(Product::Bleach);
    let percent = facts.strength_percent.ok_or_else(ask)?;
    let strength = strength_limit(product)
        .check(percent)
        .and_then(Strength::from_percent)
        .map_err(|_: OutOfLimit| ask())?;
    match product.form() {
        Form::Liquid => Ok(BulkChlorine::Liquid(strength)),
        Form::Powder => Ok(BulkChlorine::Powder(strength)),
        Form::Tablets => Err(vec![Field::Product]),
    }
}

fn volume(litres: Option<f64>) -> Result<Volume, Vec<Field>> {
    litres
        .and_then(|litres| Volume::from_litres(litres).ok())
        .ok_or_else(|| vec![Field::VolumeL])
}

fn well(facts: &Facts) -> Result<WellOrder, Vec<Field>> {
    Ok(WellOrder {
        with: bulk(facts)?,
        diameter: facts
            .diameter_m
            .and_then(|metres| Diameter::from_metres(metres).ok())
            .ok_or_else(|| vec![Field::DiameterM])?,
        water_depth: facts
            .water_depth_m
            .and_then(|metres| Depth::from_metres(metres).ok())
            .ok_or_else(|| vec![Field::WaterDepthM])?,
        clarity: facts.clarity,
        ph: ph(facts),
    })
}

fn dilute(facts: &Facts) -> Result<DiluteOrder, Vec<Field>> {
    let from = match facts.product {
        Some(Product::Nadcc) => CleaningChlorine::Tablet(
            facts
                .tablet_mg
                .and_then(|mg| CleaningTabletMass::from_mg(mg).ok())
                .ok_or_else(|| vec![Field::TabletMg])?,
        ),
        Some(_) | None => CleaningChlorine::Bulk(bulk(facts)?),
    };
    let ask = || vec![Field::TargetPercent];
    let target = target_percent(facts).ok_or_else(ask)?;
    let too_strong = match from {
        CleaningChlorine::Bulk(BulkChlorine::Liquid(strength) | BulkChlorine::Powder(strength)) => {
            target > strength.percent()
        }
        CleaningChlorine::Tablet(_) => false,
    };
    if too_strong {
        return Err(ask());
    }
    Ok(DiluteOrder {
        from,
        target: limit::SOLUTION
            .check(target)
            .and_then(Strength::from_percent)
            .map_err(|_| ask())?,
        volume: volume(facts.volume_l)?,
    })
}

/// The jars that the guideline tells of (MSF cholera guideline, appendix 16).
pub(super) const JAR_LITRES: f64 = 20.0;

fn jar_test(facts: &Facts) -> Result<JarTestOrder, Vec<Field>> {
    Ok(JarTestOrder {
        jars: facts.jars.clone(),
        // How it is done is told for the jars of the guideline, 20 L each.
        jar: volume(facts.jar_l.or(facts.jars.is_empty().then_some(JAR_LITRES)))?,
        minutes: facts.minutes,
        ph: ph(facts),
        tank: facts
            .volume_l
            .and_then(|litres| Volume::from_litres(litres).ok()),
    })
}

fn residual(facts: &Facts, notes: &[Note]) -> Result<ResidualOrder, Vec<Field>> {
    let reading = facts
        .residual_mg_per_l
        .map(|mg| Residual::from_mg_per_litre(mg).map_err(|_| vec![Field::ResidualMgPerL]))
        .transpose()?;
    let evidence = match (reading, facts.nose) {
        (Some(reading), _) => Evidence::Measured(reading),
        (None, Some(Nose::NoSmell)) => Evidence::NoSmell,
        (None, Some(Nose::StillNoSmell)) => Evidence::StillNoSmell,
        (None, Some(Nose::AlreadyDosed)) => Evidence::AlreadyDosed,
        (None, Some(Nose::Smells)) => Evidence::Smells,
        (None, Some(Nose::NoKit) | None) => Evidence::NoKit,
    };
    let top_up = if asks_top_up(facts, notes) && reading.is_some() {
        let chlorine = match facts.product {
            Some(Product::Nadcc) => TopUpChlorine::Tablet(
                facts
                    .tablet_mg
                    .and_then(|mg| TabletMass::from_mg(mg).ok())
                    .ok_or_else(|| vec![Field::TabletMg])?,
            ),
            Some(_) | None => TopUpChlorine::Bulk(bulk(facts)?),
        };
        Some((chlorine, volume(facts.volume_l)?))
    } else {
        None
    };
    Ok(ResidualOrder {
        evidence,
        taken: facts.taken,
        minutes: facts.minutes,
        ph: ph(facts),
        outbreak: if facts.outbreak {
            Outbreak::Present
        } else {
            Outbreak::NotSaid
        },
        top_up,
    })
}

fn supply(facts: &Facts, notes: &[Note]) -> Result<SupplyOrder, Vec<Field>> {
    let product = facts.product.ok_or_else(|| vec![Field::Product])?;
    let form = product.form();
    let stock = amount_told(facts, form)
        .map(|amount| {
            match form {
                Form::Liquid => StockMl::from_ml(amount).map(Stock::Liquid),
                Form::Powder => StockGrams::from_grams(amount).map(Stock::Powder),
                Form::Tablets => StockTablets::from_count(amount).map(Stock::Tablets),
            }
            .map_err(|_| vec![Field::StockMl])
        })
        .transpose()?;
    let people = facts
        .people
        .map(|people| Headcount::from_people(people).map_err(|_| vec![Field::People]))
        .transpose()?;
    let days = facts
        .days
        .map(|days| Days::from_days(days).map_err(|_| vec![Field::Days]))
        .transpose()?;
    let question = match (stock, people, days) {
        (Some(stock), Some(people), _) => SupplyQuestion::Lasts(stock, people),
        (Some(stock), None, Some(days)) => SupplyQuestion::Serves(stock, days),
        (Some(stock), None, None) => SupplyQuestion::Treats(stock),
        (None, Some(people), Some(days)) => SupplyQuestion::Needs(people, days),
        (None, _, _) => return Err(missing_for_supply(facts, notes)),
    };
    Ok(SupplyOrder {
        agent: agent(product, facts)?,
        question,
        clarity: facts.clarity,
        served: match facts.litres_each.map(Volume::from_litres) {
            Some(Ok(each)) => Served::With(each),
            Some(Err(_)) | None if facts.patients => Served::Patients,
            Some(Err(_)) | None => Served::People,
        },
    })
}

fn storage(facts: &Facts, notes: &[Note]) -> StorageOrder {
    match facts.product {
        Some(product) if notes.contains(&Note::OfProduct) => StorageOrder::Product(product),
        // "How do I keep chlorine": of what kind was not said; powder keeps shortest.
        None if notes.contains(&Note::OfProduct) => StorageOrder::Product(Product::BleachingPowder),
        Some(_) | None => StorageOrder::Water,
    }
}

fn ph(facts: &Facts) -> Option<Ph> {
    facts.ph.and_then(|ph| Ph::from_ph(ph).ok())
}

/// A dose order, if the facts suffice.
pub(super) fn dose(facts: &Facts) -> Result<DoseOrder, Vec<Field>> {
    let missing = missing_for_dose(facts);
    let Some(product) = facts.product.filter(|_| missing.is_empty()) else {
        return Err(missing);
    };
    // A figure outside its limit never came this far unnoticed; should one, it is asked again.
    let volume = volume(facts.volume_l)?;
    let agent = agent(product, facts)?;
    Ok(DoseOrder {
        agent,
        volume,
        system: facts.volume_system.unwrap_or_default(),
        water: water(facts),
        people: facts.person.clone(),
    })
}

pub(super) fn agent(product: Product, facts: &Facts) -> Result<Agent, Vec<Field>> {
    let strength = || -> Result<Strength, Vec<Field>> {
        let ask = || vec![Field::StrengthPercent];
        let percent = facts.strength_percent.ok_or_else(ask)?;
        strength_limit(product)
            .check(percent)
            .and_then(Strength::from_percent)
            .map_err(|_: OutOfLimit| ask())
    };
    let tablet = || -> Result<TabletMass, Vec<Field>> {
        let ask = || vec![Field::TabletMg];
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
        ph: ph(facts),
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
