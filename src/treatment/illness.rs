//! Somebody is ill from water: what holds before anybody has seen them.
//!
//! Out: cautions; no figure and no diagnosis.

use super::outcome::{Caution, Detail, Outcome};
use super::source::Source;

/// Danger signs first, then rehydration, then help.
pub(super) fn treat() -> Outcome {
    Outcome {
        cautions: vec![
            Caution::DangerSigns,
            Caution::Rehydrate,
            Caution::MedicalHelp,
        ],
        sources: vec![Source::CommonPractice],
        ..Outcome::without_dose(Detail::Plain)
    }
}
