//! How long to wait before a link is tried again.
//!
//! Pure: how long the last one held and a random number come in as arguments.

use std::time::Duration;

const FIRST: Duration = Duration::from_secs(1);
const LONGEST: Duration = Duration::from_secs(60);
/// A link that held so long was no bad one.
const GOOD: Duration = Duration::from_secs(60);

/// The wait, doubling from one failure to the next.
#[derive(Debug, Clone, Copy)]
pub struct BackOff {
    next: Duration,
}

impl Default for BackOff {
    fn default() -> Self {
        Self { next: FIRST }
    }
}

impl BackOff {
    /// The wait after a link that held so long; `random` spreads it by up to a quarter, so that
    /// not all come back at once.
    #[must_use]
    pub fn after(&mut self, held: Duration, random: u16) -> Duration {
        if held >= GOOD {
            self.next = FIRST;
        }
        let wait = self.next;
        self.next = wait.saturating_mul(2).min(LONGEST);
        wait + wait.mul_f64(f64::from(random) / 65_536.0 / 4.0)
    }
}
