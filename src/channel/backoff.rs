//! Waits between attempts at a link: one second, doubling to a minute, spread.
//!
//! Pure: the random fraction comes in as an argument.

use std::time::Duration;

const FIRST: Duration = Duration::from_secs(1);
const LONGEST: Duration = Duration::from_secs(60);

/// How long the next wait is.
#[derive(Debug)]
pub(super) struct Backoff {
    next: Duration,
}

impl Default for Backoff {
    fn default() -> Self {
        Self { next: FIRST }
    }
}

impl Backoff {
    /// The wait before the next attempt: up to a quarter less, so that many programs that lost
    /// one service do not come back to it at once.
    pub(super) fn wait(&mut self, random: u16) -> Duration {
        let wait = self.next;
        self.next = wait.saturating_mul(2).min(LONGEST);
        wait - wait.mul_f64(f64::from(random) / f64::from(u16::MAX) / 4.0)
    }

    /// It works again.
    pub(super) fn reset(&mut self) {
        *self = Self::default();
    }
}

/// Without random bytes waits are not spread; that is all.
pub(super) fn random() -> u16 {
    let mut bytes = [0; 2];
    match getrandom::fill(&mut bytes) {
        Ok(()) => u16::from_le_bytes(bytes),
        Err(_) => 0,
    }
}

#[cfg(test)]
mod tests {
    use super::{Backoff, Duration};

    #[test]
    fn waits_double_up_to_a_minute_and_begin_anew() {
        let mut backoff = Backoff::default();
        let waits: Vec<u64> = (0..8).map(|_| backoff.wait(0).as_secs()).collect();
        assert_eq!(waits, [1, 2, 4, 8, 16, 32, 60, 60]);
        backoff.reset();
        assert_eq!(backoff.wait(u16::MAX), Duration::from_millis(750));
    }
}
