//! Filters: what a pore size stops.
//!
//! In: a rating, perhaps; whether sewage gets in.
//! Out: coverage by class of organism.
//! Promises nothing for a rating that is nominal: the caution says so. Does not know wear,
//! brands or clogging.

use super::condition;
use super::order::FilterOrder;
use super::outcome::{Caution, Cover, Coverage, Detail, Measure, Outcome, WaitBasis};
use super::source::Source;
use super::table::{self, OrganismClass};

/// What the filter stops.
pub(super) fn treat(order: &FilterOrder) -> Outcome {
    let pore = order.pore.map(|pore| pore.micrometres());
    let covers = match pore {
        Some(um) => by_size(um),
        // Household filters stop cysts and most bacteria, but nobody knows which one this is.
        None => Coverage {
            bacteria: Cover::Partly,
            viruses: Cover::No,
            giardia: Cover::Partly,
            cryptosporidium: Cover::Partly,
        },
    };
    let mut cautions = Vec::new();
    if condition::has_sewage(order.sewage) {
        cautions.extend([Caution::SecondMethod, Caution::Sewage]);
    }
    if pore.is_none() {
        cautions.push(Caution::PoreUnknown);
    }
    if covers.viruses < Cover::Yes {
        cautions.push(Caution::VirusesPass);
    }
    if pore.is_none_or(leptospira_passes) {
        cautions.push(Caution::LeptospiraPasses);
    }
    if pore.is_some() && covers.cryptosporidium < Cover::Yes {
        cautions.push(Caution::CryptosporidiumSurvives);
    }
    cautions.extend([Caution::AbsolutePore, Caution::ChemicalsStay]);
    Outcome {
        measure: Measure::Nothing,
        dose: None,
        wait: None,
        wait_basis: WaitBasis::Rule,
        covers: Some(covers),
        logs: None,
        cautions,
        sources: vec![
            Source::Wms2024,
            Source::CdcTechnologies,
            Source::LeptospiraSize,
        ],
        boiling_point_c: None,
        detail: Detail::Plain,
    }
}

fn by_size(um: f64) -> Coverage {
    let bacteria = cover(OrganismClass::Bacteria, um);
    Coverage {
        // Leptospira are bacteria: where they pass, bacteria are at most partly stopped.
        bacteria: if leptospira_passes(um) {
            bacteria.min(Cover::Partly)
        } else {
            bacteria
        },
        viruses: cover(OrganismClass::Viruses, um),
        giardia: cover(OrganismClass::Giardia, um),
        cryptosporidium: cover(OrganismClass::Cryptosporidium, um),
    }
}

fn cover(class: OrganismClass, um: f64) -> Cover {
    let Some(row) = table::FILTERS.iter().find(|row| row.class == class) else {
        return Cover::No;
    };
    if row.stops_um.is_some_and(|limit| um <= limit) {
        Cover::Yes
    } else if row.partly_um.is_some_and(|limit| um <= limit) {
        Cover::Partly
    } else {
        Cover::No
    }
}

fn leptospira_passes(um: f64) -> bool {
    table::FILTERS
        .iter()
        .filter(|row| row.class == OrganismClass::Leptospira)
        .any(|row| row.passes_um.is_none_or(|limit| um >= limit))
}
