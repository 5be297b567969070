//! Whose figures a verdict on free chlorine rests on.
//!
//! In: the order, its verdict, and the bound that the reading was held against.
//! Out: sources, the one whose figure decided first.
//! Promises none that has no part in the verdict.
//! Does not know the figures.

use super::condition;
use super::order::ResidualOrder;
use super::outcome::ResidualVerdict;
use super::residual::{Against, is_outbreak};
use super::rule;
use super::source::Source;

/// The sources of a verdict.
pub(super) fn sources(
    order: &ResidualOrder,
    verdict: ResidualVerdict,
    against: Against,
) -> Vec<Source> {
    match verdict {
        ResidualVerdict::High => vec![Source::EpaMrdl, Source::WhoGdwq1996],
        ResidualVerdict::TooHigh => vec![Source::WhoGdwq1996, Source::EpaMrdl],
        // The earlier sheet repeats the dose where there is no smell. It waits 15 min more, a
        // county sheet 30; DECISIONS takes the longer.
        ResidualVerdict::AlreadyDosed
        | ResidualVerdict::NoKit
        | ResidualVerdict::NoSmell
        | ResidualVerdict::Smells
        | ResidualVerdict::StillNoSmell => {
            vec![rule::CHLORINE_SOURCE, Source::EpaStrengthBands]
        }
        ResidualVerdict::Stale => vec![Source::PathResidual],
        ResidualVerdict::WellNotReady | ResidualVerdict::WellReady => vec![Source::WhoTn1],
        ResidualVerdict::TooEarly => after_wait(order),
        ResidualVerdict::EnoughAtUse => at_use_first(order),
        ResidualVerdict::Enough => match against {
            Against::Aim | Against::Either => after_wait(order),
            Against::AtUse => vec![Source::PathResidual],
        },
        ResidualVerdict::Low => match against {
            Against::Aim => after_wait(order),
            // Found by the one, and lifted to the other.
            Against::AtUse | Against::Either => at_use_first(order),
        },
    }
}

fn at_use_first(order: &ResidualOrder) -> Vec<Source> {
    let mut sources = vec![Source::PathResidual];
    sources.extend(after_wait(order));
    sources
}

/// Those of the aim after the wait.
fn after_wait(order: &ResidualOrder) -> Vec<Source> {
    let mut sources = Vec::new();
    if condition::is_alkaline(order.ph) {
        sources.push(Source::MsfCholA16);
    }
    if is_outbreak(order.outbreak) {
        sources.push(Source::Sphere2004);
    }
    sources.push(Source::WhoGdwq1996);
    sources
}
