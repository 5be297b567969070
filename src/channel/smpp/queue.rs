//! Letters on their way out: which segment goes next, and what its answer means.
//!
//! In: letters in their order, answers, the time.
//! Out: segments to submit, and how sending each letter ended.
//! Promises that never more segments are in flight than the window has places, that the segments
//! of a letter go one behind the other, that what is throttled goes again before what came after
//! it, and that no letter is held for longer than it is lent.
//! Pure: the clock's time comes in as an argument.

use std::collections::{BTreeMap, BTreeSet, HashMap};
use std::time::{Duration, Instant};

use rusmpp::CommandStatus;
use rusmpp::pdus::SubmitSm;

use crate::message::Sending;
use crate::post::LEASE;

use super::status::{self, Verdict, verdict};

/// Who is asked something and says nothing for so long will not.
pub const ANSWER_WAIT: Duration = Duration::from_secs(30);
/// A segment is not submitted when its answer could come after the letter's lease: somebody else
/// would be sending it then.
const HELD_MAX: Duration = LEASE
    .saturating_sub(ANSWER_WAIT)
    .saturating_sub(Duration::from_secs(10));

/// The pause after the SMSC said that it is too much; it doubles while it goes on saying so.
const PAUSE_FIRST: Duration = Duration::from_secs(1);
const PAUSE_LONGEST: Duration = Duration::from_secs(16);
/// So often a letter is refused for a full queue before it makes way for others: it may be that of
/// one telephone that is switched off.
const QUEUE_FULL_MAX: u32 = 3;

/// A letter's place in the order.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct Place(u64);

/// What is to be done for a letter.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Outcome {
    /// It is done with.
    Ended(Place, Sending),
    /// So many of its segments are accepted, which is to be noted before the next is submitted.
    Part(Place, u32),
}

/// What goes out over one link.
#[derive(Debug)]
pub struct Queue {
    window: usize,
    /// How much of the window is used: little after a pause, then more with each acceptance.
    allowed: usize,
    letters: BTreeMap<Place, Job>,
    /// Those whose next segment can go.
    ready: BTreeSet<Place>,
    in_flight: HashMap<u32, InFlight>,
    next_place: u64,
    paused_until: Option<Instant>,
    pause: Duration,
}

#[derive(Debug)]
struct Job {
    segments: Vec<SubmitSm>,
    accepted: usize,
    names: Vec<String>,
    held_until: Instant,
    queue_full: u32,
}

#[derive(Debug)]
struct InFlight {
    place: Place,
    since: Instant,
}

impl Queue {
    /// With so many places for segments in flight.
    #[must_use]
    pub fn new(window: usize) -> Self {
        Self {
            window,
            allowed: window,
            letters: BTreeMap::new(),
            ready: BTreeSet::new(),
            in_flight: HashMap::new(),
            next_place: 0,
            paused_until: None,
            pause: PAUSE_FIRST,
        }
    }

    /// Takes a letter's segments, of which the first so many are accepted already.
    pub fn push(&mut self, segments: Vec<SubmitSm>, accepted: usize, now: Instant) -> Place {
        let place = Place(self.next_place);
        self.next_place += 1;
        let job = Job {
            segments,
            accepted,
            names: Vec::new(),
            held_until: now + HELD_MAX,
            queue_full: 0,
        };
        self.letters.insert(place, job);
        self.ready.insert(place);
        place
    }

    /// Whether a segment can go now.
    #[must_use]
    pub fn can_submit(&self, now: Instant) -> bool {
        let is_paused = self.paused_until.is_some_and(|until| now < until);
        !is_paused && !self.ready.is_empty() && self.in_flight.len() < self.allowed
    }

    /// The next segment, if one can go now; its answer will carry this sequence number.
    pub fn submit(&mut self, sequence: u32, now: Instant) -> Option<SubmitSm> {
        if !self.can_submit(now) {
            return None;
        }
        let place = self.ready.pop_first()?;
        let job = self.letters.get(&place)?;
        let segment = job.segments.get(job.accepted)?.clone();
        let since = now;
        self.in_flight.insert(sequence, InFlight { place, since });
        Some(segment)
    }

    /// How many segments are in flight.
    #[must_use]
    pub fn in_flight(&self) -> usize {
        self.in_flight.len()
    }

    /// An answer; nothing where nobody waits for it any more, or where the segment goes again.
    pub fn answered(
        &mut self,
        sequence: u32,
        status: CommandStatus,
        name: Option<String>,
        now: Instant,
    ) -> Option<Outcome> {
        let InFlight { place, since } = self.in_flight.remove(&sequence)?;
        match verdict(status) {
            Verdict::Accepted => self.accepted(place, name),
            Verdict::Never(reason) => self.end(place, Sending::Failed(reason)),
            Verdict::NotNow(reason) => self.end(place, again(reason)),
            Verdict::QueueFull => {
                self.slow_down(since, now);
                let job = self.letters.get_mut(&place)?;
                job.queue_full += 1;
                if job.queue_full >= QUEUE_FULL_MAX {
                    return self.end(place, again(status::name(status)));
                }
                self.ready.insert(place);
                None
            }
            Verdict::Throttled => {
                self.slow_down(since, now);
                self.ready.insert(place);
                None
            }
        }
    }

    fn accepted(&mut self, place: Place, name: Option<String>) -> Option<Outcome> {
        self.pause = PAUSE_FIRST;
        self.allowed = self.window.min(self.allowed + 1);
        let job = self.letters.get_mut(&place)?;
        job.accepted += 1;
        job.names.extend(name);
        if job.accepted < job.segments.len() {
            let accepted = u32::try_from(job.accepted).unwrap_or(u32::MAX);
            return Some(Outcome::Part(place, accepted));
        }
        let names = std::mem::take(&mut job.names);
        self.end(place, Sending::Accepted(names))
    }

    /// Several in flight may be refused at once: only what was submitted after the last pause began
    /// makes the next one longer.
    fn slow_down(&mut self, submitted: Instant, now: Instant) {
        let is_known = self.paused_until.is_some_and(|until| submitted < until);
        if is_known {
            return;
        }
        self.paused_until = Some(now + self.pause);
        self.pause = self.pause.saturating_mul(2).min(PAUSE_LONGEST);
        self.allowed = self.allowed.div_ceil(2).max(1);
    }

    /// An accepted part is noted: the next can go.
    pub fn noted(&mut self, place: Place) {
        if self.letters.contains_key(&place) {
            self.ready.insert(place);
        }
    }

    /// Ends what has waited too long, for an answer or for its turn.
    pub fn expire(&mut self, now: Instant) -> Vec<Outcome> {
        let mut outcomes = Vec::new();
        let silent: Vec<u32> = self
            .in_flight
            .iter()
            .filter(|(_, in_flight)| now >= in_flight.since + ANSWER_WAIT)
            .map(|(sequence, _)| *sequence)
            .collect();
        for sequence in silent {
            if let Some(InFlight { place, .. }) = self.in_flight.remove(&sequence) {
                let reason = "submit_sm was not answered; it may have been taken".to_owned();
                outcomes.extend(self.end(place, again(reason)));
            }
        }
        // Those that came first have been held for longest.
        while let Some(place) = self.ready.first().copied()
            && self.held_until(place).is_none_or(|until| now >= until)
        {
            self.ready.remove(&place);
            let reason = "its turn did not come".to_owned();
            outcomes.extend(self.end(place, again(reason)));
        }
        outcomes
    }

    /// The link broke: what was in flight may have been taken or not.
    pub fn broken(&mut self) -> Vec<Outcome> {
        let mut places: Vec<Place> = self.in_flight.drain().map(|(_, it)| it.place).collect();
        places.sort_unstable();
        self.paused_until = None;
        let reason = "the link broke before submit_sm was answered; it may have been taken";
        places
            .into_iter()
            .filter_map(|place| self.end(place, again(reason.to_owned())))
            .collect()
    }

    /// The program is ending: what is not in flight is given back.
    pub fn give_back(&mut self) -> Vec<Outcome> {
        let ready = std::mem::take(&mut self.ready);
        ready
            .into_iter()
            .filter_map(|place| {
                let sending = Sending::TryAgain {
                    reason: "the program is ending".to_owned(),
                    after: Some(Duration::ZERO),
                };
                self.end(place, sending)
            })
            .collect()
    }

    /// When something is to be done at the latest.
    #[must_use]
    pub fn wake_at(&self, now: Instant) -> Option<Instant> {
        let answers = self.in_flight.values().map(|it| it.since + ANSWER_WAIT);
        let turns = self.ready.first().and_then(|place| self.held_until(*place));
        let pause = self.paused_until.filter(|until| *until > now);
        answers.chain(turns).chain(pause).min()
    }

    fn held_until(&self, place: Place) -> Option<Instant> {
        self.letters.get(&place).map(|job| job.held_until)
    }

    fn end(&mut self, place: Place, sending: Sending) -> Option<Outcome> {
        self.ready.remove(&place);
        self.letters
            .remove(&place)
            .map(|_| Outcome::Ended(place, sending))
    }
}

const fn again(reason: String) -> Sending {
    Sending::TryAgain {
        reason,
        after: None,
    }
}
