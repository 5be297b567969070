//! When a message that was not accepted is sent again, and when no longer.
//!
//! In: how sending went, which attempt it was, when the message was written.
//! Out: what is recorded of it.
//! Pure: the clock's time and a random fraction come in as arguments.

use std::time::Duration;

use jiff::Timestamp;

use crate::message::Sending;
use crate::store::Fate;

/// An answer that comes later than this is about water that was drunk or poured away.
pub const GIVE_UP_AFTER: Duration = Duration::from_secs(6 * 60 * 60);
/// Who was handed a message and says nothing for so long no longer has it.
pub const LEASE: Duration = Duration::from_secs(120);

/// The wait before the second attempt; it doubles with each.
const FIRST_WAIT: Duration = Duration::from_secs(4);
const LONGEST_WAIT: Duration = Duration::from_secs(15 * 60);
/// A message that a network refuses this often has something wrong with it.
const MOST_ATTEMPTS: u32 = 40;

/// A fraction from 0 up to 1, to spread attempts.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Spread(f64);

impl Spread {
    /// From any random number.
    #[must_use]
    pub fn from_random(random: u16) -> Self {
        Self(f64::from(random) / 65_536.0)
    }
}

/// What is recorded of an attempt that ended so.
#[must_use]
pub fn fate(
    sending: &Sending,
    attempt: u32,
    made_at: Timestamp,
    now: Timestamp,
    spread: Spread,
) -> Fate {
    match sending {
        Sending::Accepted(carrier_ids) => Fate::Accepted(carrier_ids.clone()),
        Sending::Failed(_) => Fate::GivenUp,
        Sending::PartAccepted(parts) => Fate::PartAccepted(*parts),
        Sending::TryAgain { after, .. } => {
            let wait = after.unwrap_or_else(|| wait_after(attempt, spread));
            let due = now.saturating_add(wait).unwrap_or(Timestamp::MAX);
            if attempt >= MOST_ATTEMPTS || is_stale(made_at, due) {
                Fate::GivenUp
            } else {
                Fate::Again(due)
            }
        }
    }
}

/// Whether a message is too old to be sent at that time.
#[must_use]
pub fn is_stale(made_at: Timestamp, then: Timestamp) -> bool {
    let age = then.duration_since(made_at);
    age.unsigned_abs() > GIVE_UP_AFTER && age.is_positive()
}

/// Doubling from attempt to attempt, with up to a quarter added.
fn wait_after(attempt: u32, spread: Spread) -> Duration {
    let doublings = attempt.saturating_sub(1).min(16);
    let wait = FIRST_WAIT.saturating_mul(1 << doublings).min(LONGEST_WAIT);
    wait + wait.mul_f64(spread.0 / 4.0)
}
