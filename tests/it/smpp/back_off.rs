//! The wait before a link is tried again.

use std::time::Duration;

use matone::channel::smpp::back_off::BackOff;

const SECOND: Duration = Duration::from_secs(1);

#[test]
fn it_doubles_up_to_a_minute_and_begins_anew_after_a_good_link() {
    let mut back_off = BackOff::default();
    let waits: Vec<u64> = (0..8)
        .map(|_| back_off.after(Duration::ZERO, 0).as_secs())
        .collect();
    assert_eq!(waits, [1, 2, 4, 8, 16, 32, 60, 60]);
    // A link that is ended as soon as it is bound is no good one.
    assert_eq!(back_off.after(5 * SECOND, 0), 60 * SECOND);
    assert_eq!(back_off.after(60 * SECOND, 0), SECOND);
}

#[test]
fn it_is_spread_by_a_quarter_at_most() {
    for random in [0, 1, 30_000, u16::MAX] {
        let wait = BackOff::default().after(Duration::ZERO, random);
        assert!(wait >= SECOND && wait < SECOND.mul_f64(1.25), "{wait:?}");
    }
}
