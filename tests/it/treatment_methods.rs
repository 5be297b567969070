//! What was settled about boiling, sun and filters (reference DECISIONS), one case each.

use matone::quantity::Pore;
use matone::request::{Clarity, Sky};
use matone::treatment::{
    BoilOrder, Caution, Cover, Elevation, FilterOrder, Order, Sewage, SunOrder, treat,
};

use super::published::{litres, metres};

#[test]
fn boiling_covers_everything_but_spores_and_chemicals() {
    let boil = |elevation, clarity| {
        treat(&Order::Boil(BoilOrder { elevation, clarity })).expect("boiling is never refused")
    };
    let plain = boil(Elevation::Unknown, None);
    let covers = plain.covers.expect("covers");
    for cover in [
        covers.bacteria,
        covers.viruses,
        covers.giardia,
        covers.cryptosporidium,
    ] {
        assert_eq!(cover, Cover::Yes);
    }
    assert!(plain.cautions.contains(&Caution::HigherBoilLonger));
    assert!(plain.cautions.contains(&Caution::SporesSurvive));
    assert!(plain.cautions.contains(&Caution::ChemicalsStay));
    assert_eq!(plain.boiling_point_c, None);
    let low = boil(Elevation::Measured(metres(10.0)), Some(Clarity::Cloudy));
    assert_eq!(low.cautions.first(), Some(&Caution::StrainFirst));
    assert!(!low.cautions.contains(&Caution::HigherBoilLonger));
}

#[test]
fn the_sun_needs_a_bright_day_or_two_days_and_no_rain() {
    let sun = |sky, bottle: Option<f64>| {
        let order = SunOrder {
            sky,
            bottle: bottle.map(litres),
            clarity: None,
        };
        treat(&Order::Sun(order)).expect("the sun is never refused")
    };
    let bright = sun(Some(Sky::Sunny), Some(2.0));
    assert_eq!(bright.covers.expect("covers").bacteria, Cover::Yes);
    assert_eq!(bright.covers.expect("covers").viruses, Cover::Partly);
    assert!(!bright.cautions.contains(&Caution::TwoDays));
    assert_eq!(bright.cautions.first(), Some(&Caution::PrintTest));
    assert!(sun(None, None).cautions.contains(&Caution::TwoDays));
    let rain = sun(Some(Sky::Rain), None);
    assert_eq!(
        (rain.wait, rain.covers.expect("covers").bacteria),
        (None, Cover::No)
    );
    assert_eq!(rain.cautions.first(), Some(&Caution::NotInRain));
    assert_eq!(
        sun(Some(Sky::Sunny), Some(5.0)).cautions.first(),
        Some(&Caution::BottleSize)
    );
}

#[test]
fn a_filter_of_unknown_rating_is_not_trusted() {
    let order = FilterOrder {
        pore: None,
        sewage: Sewage::Present,
    };
    let outcome = treat(&Order::Filter(order)).expect("filters are never refused");
    assert!(outcome.cautions.starts_with(&[
        Caution::SecondMethod,
        Caution::Sewage,
        Caution::PoreUnknown,
        Caution::VirusesPass
    ]));
    let covers = outcome.covers.expect("covers");
    assert_eq!(
        (covers.viruses, covers.bacteria),
        (Cover::No, Cover::Partly)
    );
    assert_eq!(
        (covers.giardia, covers.cryptosporidium),
        (Cover::Partly, Cover::Partly)
    );
}

/// A 0.2 to 0.3 µm filter lets *Leptospira* and viruses through.
#[test]
fn a_fine_filter_still_passes_leptospira_and_viruses() {
    for um in [0.2, 0.3] {
        let pore = Pore::from_micrometres(um).expect("a pore");
        let outcome = treat(&Order::Filter(FilterOrder {
            pore: Some(pore),
            sewage: Sewage::NotSaid,
        }))
        .expect("filters are never refused");
        assert!(
            outcome.cautions.contains(&Caution::LeptospiraPasses),
            "{um}"
        );
        assert!(outcome.cautions.contains(&Caution::VirusesPass), "{um}");
        assert!(outcome.cautions.contains(&Caution::AbsolutePore), "{um}");
    }
}
