//! What goes out next, and what its answer means.

use std::time::{Duration, Instant};

use matone::channel::smpp::address::plan;
use matone::channel::smpp::queue::{ANSWER_WAIT, Outcome, Place, Queue};
use matone::channel::smpp::submission::{Numbering, submissions};
use matone::config::Alphabet;
use matone::message::{Address, Letter, OutboxId, Sending};
use matone::post::LEASE;
use rusmpp::CommandStatus;
use rusmpp::pdus::SubmitSm;

const SECOND: Duration = Duration::from_secs(1);

/// A letter of so many segments to a number.
fn segments(to: u32, count: usize) -> Vec<SubmitSm> {
    let letter = Letter {
        id: OutboxId(1),
        to: Address::phone(&format!("25570000{to:04}")),
        text: "a".repeat(if count == 1 { 10 } else { count * 153 }),
        next_words: Vec::new(),
        parts_accepted: 0,
        attempt: 1,
    };
    let numbering = Numbering {
        source: "4321".to_owned(),
        source_plan: plan("4321", None, None),
        dest_ton: None,
        dest_npi: None,
    };
    let segments = submissions(&letter, &numbering, Alphabet::Gsm7).expect("segments");
    assert_eq!(segments.len(), count);
    segments
}

/// A queue with its clock and sequence numbers.
struct Bench {
    queue: Queue,
    now: Instant,
    sequence: u32,
}

impl Bench {
    fn new(window: usize) -> Self {
        Self {
            queue: Queue::new(window),
            now: Instant::now(),
            sequence: 0,
        }
    }

    fn push(&mut self, to: u32, count: usize) -> Place {
        self.queue.push(segments(to, count), 0, self.now)
    }

    /// Submits all that can go; the numbers they go to.
    fn submit(&mut self) -> Vec<u32> {
        let mut to = Vec::new();
        while let Some(segment) = self.queue.submit(self.sequence + 1, self.now) {
            self.sequence += 1;
            let number = segment.destination_addr.as_str();
            to.push(number.strip_prefix("25570000").unwrap().parse().unwrap());
        }
        to
    }

    fn answer(&mut self, sequence: u32, status: CommandStatus) -> Option<Outcome> {
        let name = (status == CommandStatus::EsmeRok).then(|| format!("name{sequence}"));
        self.queue.answered(sequence, status, name, self.now)
    }
}

fn is_again(outcome: &Outcome) -> bool {
    matches!(outcome, Outcome::Ended(_, Sending::TryAgain { .. }))
}

#[test]
fn never_more_than_the_window_is_in_flight() {
    let mut bench = Bench::new(2);
    let places: Vec<Place> = (1..=3).map(|to| bench.push(to, 1)).collect();
    assert_eq!(bench.submit(), [1, 2]);
    assert!(bench.submit().is_empty());
    let accepted = bench.answer(1, CommandStatus::EsmeRok);
    let names = vec!["name1".to_owned()];
    assert_eq!(
        accepted,
        Some(Outcome::Ended(places[0], Sending::Accepted(names)))
    );
    assert_eq!(bench.submit(), [3]);
}

#[test]
fn segments_of_a_letter_go_one_behind_the_other() {
    let mut bench = Bench::new(8);
    let place = bench.push(1, 3);
    assert_eq!(bench.submit(), [1]);
    for (sequence, accepted) in [(1, 1), (2, 2)] {
        let outcome = bench.answer(sequence, CommandStatus::EsmeRok);
        assert_eq!(outcome, Some(Outcome::Part(place, accepted)));
        // Not before it is noted.
        assert!(bench.submit().is_empty());
        bench.queue.noted(place);
        assert_eq!(bench.submit(), [1]);
    }
    let names = ["name1", "name2", "name3"].map(str::to_owned).to_vec();
    assert_eq!(
        bench.answer(3, CommandStatus::EsmeRok),
        Some(Outcome::Ended(place, Sending::Accepted(names)))
    );
}

#[test]
fn a_letter_goes_on_where_it_was_broken_off() {
    let mut bench = Bench::new(8);
    let letter = segments(1, 3);
    let last = letter[2].clone();
    let place = bench.queue.push(letter, 2, bench.now);
    assert_eq!(bench.queue.submit(1, bench.now), Some(last));
    let outcome = bench.answer(1, CommandStatus::EsmeRok);
    assert!(matches!(outcome, Some(Outcome::Ended(ended, _)) if ended == place));
}

#[test]
fn what_is_throttled_waits_and_goes_before_the_others() {
    let mut bench = Bench::new(2);
    for to in 1..=4 {
        bench.push(to, 1);
    }
    assert_eq!(bench.submit(), [1, 2]);
    assert_eq!(bench.answer(2, CommandStatus::EsmeRthrottled), None);
    assert_eq!(bench.answer(1, CommandStatus::EsmeRthrottled), None);
    assert!(bench.submit().is_empty());
    assert_eq!(bench.queue.wake_at(bench.now), Some(bench.now + SECOND));
    bench.now += SECOND;
    // One at first, to see.
    assert_eq!(bench.submit(), [1]);
    assert!(bench.answer(3, CommandStatus::EsmeRok).is_some());
    assert_eq!(bench.submit(), [2, 3]);
}

#[test]
fn the_pause_doubles_while_it_goes_on_and_begins_anew_after_an_acceptance() {
    let mut bench = Bench::new(1);
    bench.push(1, 1);
    for seconds in [1, 2, 4, 8, 16, 16] {
        assert_eq!(bench.submit(), [1], "{seconds}");
        let sequence = bench.sequence;
        assert_eq!(bench.answer(sequence, CommandStatus::EsmeRthrottled), None);
        bench.now += seconds * SECOND - Duration::from_millis(1);
        assert!(bench.submit().is_empty());
        bench.now += Duration::from_millis(1);
    }
    assert_eq!(bench.submit(), [1]);
    assert!(
        bench
            .answer(bench.sequence, CommandStatus::EsmeRok)
            .is_some()
    );
    bench.push(2, 1);
    assert_eq!(bench.submit(), [2]);
    assert_eq!(
        bench.answer(bench.sequence, CommandStatus::EsmeRthrottled),
        None
    );
    bench.now += SECOND;
    assert_eq!(bench.submit(), [2]);
}

#[test]
fn several_refused_at_once_are_one_pause() {
    let mut bench = Bench::new(8);
    for to in 1..=8 {
        bench.push(to, 1);
    }
    assert_eq!(bench.submit().len(), 8);
    for sequence in 1..=8 {
        assert_eq!(bench.answer(sequence, CommandStatus::EsmeRthrottled), None);
        bench.now += Duration::from_millis(100);
    }
    bench.now += Duration::from_millis(200);
    assert_eq!(bench.submit(), [1, 2, 3, 4]);
}

#[test]
fn one_full_mailbox_does_not_hold_up_the_others_for_long() {
    let mut bench = Bench::new(1);
    let place = bench.push(1, 1);
    bench.push(2, 1);
    for _ in 0..2 {
        assert_eq!(bench.submit(), [1]);
        assert_eq!(
            bench.answer(bench.sequence, CommandStatus::EsmeRmsgqful),
            None
        );
        bench.now += 20 * SECOND;
    }
    assert_eq!(bench.submit(), [1]);
    let outcome = bench
        .answer(bench.sequence, CommandStatus::EsmeRmsgqful)
        .unwrap();
    assert!(is_again(&outcome) && matches!(outcome, Outcome::Ended(ended, _) if ended == place));
    bench.now += 20 * SECOND;
    assert_eq!(bench.submit(), [2]);
}

#[test]
fn refusals_are_for_good_or_for_now() {
    for (status, is_for_good) in [
        (CommandStatus::EsmeRinvdstadr, true),
        (CommandStatus::EsmeRinvdstton, true),
        (CommandStatus::EsmeRinvmsglen, true),
        (CommandStatus::EsmeRinvsrcadr, false),
        (CommandStatus::EsmeRsubmitfail, false),
        (CommandStatus::EsmeRsyserr, false),
        (CommandStatus::EsmeRinvbndsts, false),
        (CommandStatus::Other(0x0401), false),
    ] {
        let mut bench = Bench::new(1);
        bench.push(1, 1);
        bench.submit();
        let outcome = bench.answer(1, status).expect("an end");
        let is_failed = matches!(outcome, Outcome::Ended(_, Sending::Failed(_)));
        assert_eq!(is_failed, is_for_good, "{outcome:?}");
        assert_eq!(is_again(&outcome), !is_for_good, "{outcome:?}");
    }
}

#[test]
fn what_is_not_answered_is_given_back_and_a_late_answer_is_ignored() {
    let mut bench = Bench::new(1);
    bench.push(1, 1);
    bench.push(2, 1);
    bench.submit();
    assert_eq!(
        bench.queue.wake_at(bench.now),
        Some(bench.now + ANSWER_WAIT)
    );
    bench.now += ANSWER_WAIT - SECOND;
    assert_eq!(bench.queue.expire(bench.now), []);
    bench.now += SECOND;
    let outcomes = bench.queue.expire(bench.now);
    assert!(
        outcomes.len() == 1 && is_again(&outcomes[0]),
        "{outcomes:?}"
    );
    assert_eq!(bench.answer(1, CommandStatus::EsmeRok), None);
    assert_eq!(bench.submit(), [2]);
}

#[test]
fn no_letter_is_held_for_longer_than_it_is_lent() {
    let mut bench = Bench::new(1);
    let began = bench.now;
    bench.push(1, 1);
    while !bench.queue.expire(bench.now).iter().any(is_again) {
        bench.now = bench.queue.wake_at(bench.now).expect("an end");
    }
    // Had it been submitted just then, its answer could still have come in time.
    assert!(bench.now + ANSWER_WAIT < began + LEASE);
    assert!(bench.submit().is_empty());
    assert_eq!(bench.queue.wake_at(bench.now), None);
}

#[test]
fn what_was_in_flight_when_the_link_broke_is_given_back_and_the_rest_goes_next_time() {
    let mut bench = Bench::new(2);
    let places: Vec<Place> = (1..=3).map(|to| bench.push(to, 1)).collect();
    bench.submit();
    let outcomes = bench.queue.broken();
    assert!(outcomes.iter().all(is_again));
    let ended: Vec<Place> = outcomes
        .iter()
        .map(|outcome| match outcome {
            Outcome::Ended(place, _) | Outcome::Part(place, _) => *place,
        })
        .collect();
    assert_eq!(ended, places[..2]);
    assert_eq!(bench.submit(), [3]);
}

#[test]
fn what_is_not_in_flight_is_given_back_at_the_end() {
    let mut bench = Bench::new(1);
    bench.push(1, 1);
    bench.push(2, 1);
    bench.submit();
    assert_eq!(bench.queue.give_back().len(), 1);
    assert_eq!(bench.queue.in_flight(), 1);
    assert!(bench.answer(1, CommandStatus::EsmeRok).is_some());
    assert_eq!(bench.queue.in_flight(), 0);
}
