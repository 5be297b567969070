//! The session against a modem that is none, in a time of their own.

use matone::channel::modem::at::Token;
use matone::channel::modem::session::{Action, Event, Key, NotSent, Signal, Taken};
use matone::post::Link;
use proptest::prelude::*;

use super::bench::{Bench, message, pin};
use super::board::{Board, Hung};
use super::octets::{report, sms, submitted};

const SENDER: &str = "+255700000001";

fn question(text: &str) -> String {
    sms(SENDER, text).line()
}

#[test]
fn a_modem_is_set_up_and_its_link_is_up() {
    let bench = Bench::working();
    let set_up = [
        "AT",
        "ATE0",
        "AT+CMEE=1",
        "AT+CPIN?",
        "AT+CMGF=0",
        "AT+CSCS=\"GSM\"",
        "AT+CSMS=0",
        "AT+CPMS=?",
        "AT+CPMS=\"SM\",\"SM\",\"SM\"",
        "AT+CNMI=2,1,0,1",
        "AT+CREG?",
        "AT+CSQ",
    ];
    assert_eq!(bench.board.commands[..set_up.len()], set_up);
    assert!(bench.asked("AT+CMGL=4") > 0);
    assert_eq!(
        bench.done,
        [Action::Link(Link::Up), Action::Signal(Signal::Good)]
    );
}

#[test]
fn a_modem_that_can_less_is_used_as_it_is() {
    let mut board = Board::new();
    board.lacks = vec![
        "AT+CSCS",
        "AT+CSMS",
        "AT+CPMS=?",
        "AT+CPMS=\"SM\"",
        "AT+CNMI=2,1,0,1",
        "AT+CREG",
        "AT+CEREG",
        "AT+CSQ",
        "AT+CMEE",
    ];
    board.kept_in = "ME";
    board.keep(1, &question("20 L"));
    let mut bench = Bench::new(board, Key::Missing);
    bench.pass(10);
    assert_eq!(bench.link(), Some(&Link::Up));
    assert_eq!(bench.asked("AT+CPMS=\"ME\",\"ME\",\"ME\""), 1);
    assert_eq!(bench.asked("AT+CNMI=2,1,0,2"), 1);
    assert_eq!(bench.texts(), ["20 L"]);
    assert!(bench.board.kept.is_empty());
}

#[test]
fn a_card_that_is_slow_to_be_ready_is_used_when_it_is() {
    let mut board = Board::new();
    board.busy_for = 2;
    board.keep(0, &question("20 L"));
    let mut bench = Bench::new(board, Key::Missing);
    bench.pass(20);
    assert_eq!(bench.link(), Some(&Link::Up));
    assert_eq!(bench.asked("AT+CPMS=\"ME\""), 0);
    assert_eq!(bench.texts(), ["20 L"]);
}

#[test]
fn a_card_that_is_taken_out_is_waited_for() {
    let mut bench = Bench::working();
    bench.board.refusals.push_back("+CMS ERROR: 310");
    bench.board.lacks = vec!["AT+CPIN?"];
    bench.happen(Event::Send(message()));
    bench.pass(20);
    assert!(matches!(
        bench.sent()[..],
        [Action::Sent(Err(NotSent::Later(_)))]
    ));
    assert!(matches!(bench.link(), Some(Link::Retrying(_))));
    assert!(!bench.session.can_send());
    bench.board.lacks.clear();
    bench.pass(20);
    assert_eq!(bench.link(), Some(&Link::Up));
}

#[test]
fn what_is_kept_is_deleted_when_it_was_taken_and_not_before() {
    let mut bench = Bench::working();
    bench.taken = None;
    bench.receive(&question("20 L"));
    bench.pass(120);
    assert_eq!(bench.texts(), ["20 L"], "found once while it is in hand");
    assert_eq!(bench.board.kept.len(), 1);
    let ticket = bench.found[0].0.unwrap();
    bench.happen(Event::Kept(ticket, Taken::No));
    bench.taken = Some(Taken::Yes);
    bench.pass(6);
    assert_eq!(bench.texts(), ["20 L", "20 L"], "found again soon");
    assert!(bench.board.kept.is_empty());
    bench.pass(120);
    assert_eq!(bench.asked("AT+CMGD"), 1);
}

#[test]
fn what_nobody_announced_is_found_all_the_same() {
    let mut bench = Bench::working();
    bench.board.keep(0, &question("20 L"));
    bench.pass(31);
    assert_eq!(bench.texts(), ["20 L"]);
    assert!(bench.board.kept.is_empty());
}

#[test]
fn what_others_stored_to_be_sent_is_left_alone() {
    let mut bench = Bench::working();
    bench.board.keep(2, &question("not ours"));
    bench.board.keep(3, &question("not ours"));
    bench.pass(120);
    assert!(bench.found.is_empty());
    assert_eq!(bench.board.kept.len(), 2);
}

#[test]
fn an_old_ticket_does_not_delete_what_is_there_now() {
    let mut bench = Bench::working();
    bench.taken = None;
    bench.receive(&question("the first"));
    bench.pass(1);
    let old = bench.found[0].0.unwrap();
    // The modem starts anew, and with another card.
    bench.board.restart();
    bench.board.kept.clear();
    bench.board.keep(0, &question("the second"));
    bench.say("\r\nRDY\r\n");
    bench.pass(20);
    assert_eq!(bench.texts(), ["the first", "the second"]);
    bench.happen(Event::Kept(old, Taken::Yes));
    bench.pass(60);
    assert_eq!(bench.board.kept.len(), 1, "nobody has taken the second");
}

#[test]
fn news_in_the_middle_of_a_listing_are_heard_and_harm_nothing() {
    let mut bench = Bench::working();
    bench.board.keep(0, &question("the first"));
    bench.board.keep(0, &question("the second"));
    let receipt = report(7, SENDER, 0x00);
    bench.board.interruption = format!(
        "+CREG: 1\r\n^RSSI: 17\r\n+CMTI: \"SM\",9\r\n+CDS: {}\r\n{receipt}",
        super::octets::length(&receipt)
    );
    bench.pass(31);
    // The receipt stands in a heading's place, so its message is read the next time.
    bench.board.interruption.clear();
    bench.pass(31);
    let mut found = bench.texts();
    found.sort_unstable();
    found.dedup();
    assert_eq!(found, ["Delivered", "the first", "the second"]);
    assert!(bench.board.kept.is_empty());
}

#[test]
fn a_memory_that_is_announced_is_looked_into() {
    let mut bench = Bench::working();
    bench.say("\r\n+CMTI: \"ME\",4\r\n");
    bench.pass(1);
    assert_eq!(bench.asked("AT+CPMS=\"ME\""), 1);
    bench.pass(31);
    let mut last = bench.board.commands.iter().rev();
    let selected = last.find(|line| line.starts_with("AT+CPMS=")).unwrap();
    assert_eq!(selected, "AT+CPMS=\"SM\"", "and then the other again");
}

#[test]
fn messages_and_receipts_that_are_kept_nowhere_are_found() {
    let mut bench = Bench::working();
    let said = bench.board.straight("CMT", &question("at once"));
    bench.say(&said);
    let said = bench.board.straight("CDS", &report(7, SENDER, 0x46));
    bench.say(&said);
    assert_eq!(bench.texts(), ["at once", "Failed"]);
    assert!(bench.found.iter().all(|(ticket, _)| ticket.is_none()));
}

#[test]
fn a_line_that_lost_a_character_is_read_again() {
    let mut bench = Bench::working();
    bench.board.noisy_listings = 2;
    bench.receive(&question("20 L"));
    bench.pass(30);
    assert_eq!(bench.texts(), ["20 L"]);
    assert!(bench.board.kept.is_empty());
}

#[test]
fn a_line_that_is_never_whole_is_given_up() {
    let mut bench = Bench::working();
    bench.board.noisy_listings = u32::MAX;
    bench.receive(&question("20 L"));
    bench.pass(60);
    assert_eq!(
        bench.board.kept.len(),
        1,
        "a cable may be loose for a minute"
    );
    bench.pass(60);
    assert_eq!(bench.texts(), ["the line is broken"]);
    assert!(bench.board.kept.is_empty());
}

#[test]
fn a_message_is_sent_and_has_a_number() {
    let mut bench = Bench::working();
    bench.happen(Event::Send(message()));
    bench.pass(1);
    let sent = &bench.board.sent;
    assert_eq!(sent.len(), 1);
    let sent = submitted(&sent[0]);
    assert_eq!(
        (sent.to.as_str(), sent.text.as_str()),
        (SENDER, "Add 8 mL.")
    );
    assert!(sent.wants_receipt);
    assert_eq!(bench.sent(), [&Action::Sent(Ok(1))]);
    assert!(bench.session.can_send());
}

#[test]
fn a_refusal_is_for_now_or_for_good() {
    let later = |code: &str| Action::Sent(Err(NotSent::Later(code.to_owned())));
    let never = |code: &str| Action::Sent(Err(NotSent::Never(code.to_owned())));
    let cases = [
        ("+CMS ERROR: 38", later("+CMS ERROR: 38")),
        ("+CMS ERROR: 28", never("+CMS ERROR: 28")),
        ("+CMS ERROR: unknown", later("+CMS ERROR")),
        ("+CME ERROR: 30", later("+CME ERROR: 30")),
        ("ERROR", later("ERROR")),
    ];
    for (refusal, sent) in cases {
        let mut bench = Bench::working();
        bench.board.refusals.push_back(refusal);
        bench.happen(Event::Send(message()));
        bench.pass(1);
        assert_eq!(bench.sent(), [&sent]);
        bench.happen(Event::Send(message()));
        bench.pass(1);
        assert_eq!(bench.sent().len(), 2);
        assert_eq!(bench.board.sent.len(), 1);
    }
}

#[test]
fn a_prompt_that_does_not_come_is_waited_for_no_longer() {
    let mut bench = Bench::working();
    bench.board.hung = Hung::Over("AT+CMGS");
    bench.happen(Event::Send(message()));
    bench.pass(20);
    assert!(matches!(
        bench.sent()[..],
        [Action::Sent(Err(NotSent::Later(_)))]
    ));
    bench.board.hung = Hung::No;
    bench.pass(10);
    assert!(bench.session.can_send(), "it was set up again");
}

#[test]
fn a_message_without_an_answer_is_given_back_and_a_late_answer_is_not_the_next_ones() {
    let mut bench = Bench::working();
    bench.board.hung = Hung::OverMessages;
    bench.happen(Event::Send(message()));
    bench.pass(60);
    assert!(bench.session.is_sending());
    assert!(bench.sent().is_empty(), "networks take their time");
    bench.pass(61);
    assert!(matches!(
        bench.sent()[..],
        [Action::Sent(Err(NotSent::Later(_)))]
    ));
    bench.say("\r\n+CMGS: 77\r\n\r\nOK\r\n");
    bench.board.hung = Hung::No;
    bench.pass(10);
    bench.happen(Event::Send(message()));
    bench.pass(1);
    assert_eq!(bench.sent()[1], &Action::Sent(Ok(1)));
}

#[test]
fn a_modem_that_says_nothing_any_more_is_reset() {
    let mut bench = Bench::working();
    bench.board.hung = Hung::UntilReset;
    bench.pass(90);
    assert!(bench.is_closed());
    assert_eq!(bench.board.resets, 1);
    assert!(matches!(bench.link(), Some(Link::Retrying(_))));
    assert!(!bench.session.can_send());
}

#[test]
fn a_modem_that_never_says_anything_is_reset_as_well() {
    let mut board = Board::new();
    board.hung = Hung::UntilReset;
    let mut bench = Bench::new(board, Key::Missing);
    bench.pass(30);
    assert!(matches!(bench.link(), Some(Link::Retrying(_))));
    assert_eq!(bench.board.resets, 0, "it may be starting");
    bench.pass(30);
    assert!(bench.is_closed());
    assert_eq!(bench.board.resets, 1);
}

#[test]
fn a_modem_that_fails_over_one_command_again_and_again_is_reset() {
    let mut bench = Bench::working();
    bench.board.hung = Hung::Over("AT+CMGL");
    bench.pass(180);
    assert!(bench.is_closed());
    assert!(bench.board.resets >= 1);
}

#[test]
fn a_card_gets_its_pin() {
    let mut board = Board::new();
    board.pin = Some("1234");
    let mut bench = Bench::new(board, pin("1234"));
    bench.pass(15);
    assert_eq!(bench.link(), Some(&Link::Up));
    assert_eq!(bench.board.pins_tried, ["1234"]);
    // What it accepted it gets again when it has started anew.
    bench.board.restart();
    bench.say("\r\nRDY\r\n\r\n+CPIN: SIM PIN\r\n");
    bench.pass(15);
    assert!(bench.session.can_send());
    assert_eq!(bench.board.pins_tried, ["1234", "1234"]);
}

#[test]
fn a_refused_pin_is_never_tried_again() {
    let mut board = Board::new();
    board.pin = Some("1234");
    let mut bench = Bench::new(board, pin("9999"));
    bench.pass(15);
    assert!(matches!(bench.link(), Some(Link::Down(_))));
    assert!(bench.done.contains(&Action::PinRefused));
    for _ in 0..5 {
        bench.board.restart();
        bench.say("\r\nRDY\r\n\r\n+CPIN: SIM PIN\r\n");
        bench.pass(1_000);
    }
    assert_eq!(bench.board.pins_tried, ["9999"]);
    // Somebody unlocks it.
    bench.board.unlocked = true;
    bench.pass(100);
    assert_eq!(bench.link(), Some(&Link::Up));
}

#[test]
fn a_pin_that_was_refused_before_is_not_tried() {
    for key in [Key::Refused, Key::Missing] {
        let mut board = Board::new();
        board.pin = Some("1234");
        let mut bench = Bench::new(board, key);
        bench.pass(1_000);
        assert!(matches!(bench.link(), Some(Link::Down(_))));
        assert!(bench.board.pins_tried.is_empty());
    }
}

#[test]
fn a_pin_without_an_answer_counts_as_tried() {
    let mut board = Board::new();
    board.pin = Some("1234");
    board.hung = Hung::Over("AT+CPIN=");
    let mut bench = Bench::new(board, pin("9999"));
    bench.pass(1_000);
    assert!(matches!(bench.link(), Some(Link::Down(_))));
    assert_eq!(bench.asked("AT+CPIN="), 1);
}

#[test]
fn the_last_try_is_not_ours() {
    let mut board = Board::new();
    board.pin = Some("1234");
    board.tries_left = 1;
    let mut bench = Bench::new(board, pin("1234"));
    bench.pass(1_000);
    assert!(matches!(bench.link(), Some(Link::Down(_))));
    assert!(bench.board.pins_tried.is_empty());
}

#[test]
fn a_card_that_is_busy_has_not_refused() {
    let mut board = Board::new();
    board.pin = Some("1234");
    board.pins_put_off.push_back("+CME ERROR: 14");
    let mut bench = Bench::new(board, pin("1234"));
    bench.pass(20);
    assert_eq!(bench.link(), Some(&Link::Up));
    assert_eq!(bench.board.pins_tried, ["1234"]);
}

#[test]
fn a_card_that_wants_the_carriers_code_is_left_alone() {
    let mut board = Board::new();
    board.pin = Some("1234");
    board.tries_left = 0;
    let mut bench = Bench::new(board, pin("1234"));
    bench.pass(1_000);
    assert!(matches!(bench.link(), Some(Link::Down(_))));
    assert!(bench.board.pins_tried.is_empty());
}

#[test]
fn without_a_network_nothing_is_sent_and_messages_are_read() {
    let mut bench = Bench::working();
    bench.board.registration = 2;
    bench.pass(61);
    assert!(matches!(bench.link(), Some(Link::Retrying(_))));
    assert!(!bench.session.can_send());
    bench.receive(&question("20 L"));
    bench.pass(1);
    assert_eq!(bench.texts(), ["20 L"]);
    bench.board.registration = 5;
    bench.pass(11);
    assert_eq!(bench.link(), Some(&Link::Up));
    assert!(bench.session.can_send());
}

#[test]
fn a_modem_that_finds_no_network_for_long_starts_anew() {
    let mut bench = Bench::working();
    bench.board.registration = 2;
    bench.pass(14 * 60);
    assert_eq!(bench.board.resets, 0);
    bench.pass(3 * 60);
    assert_eq!(bench.board.resets, 1);
    assert!(bench.is_closed());
}

#[test]
fn the_link_is_said_once() {
    let mut bench = Bench::working();
    bench.pass(3_600);
    let links = bench.done.iter();
    let links = links.filter(|action| matches!(action, Action::Link(_)));
    assert_eq!(links.count(), 1);
    // Every half minute, and once a minute.
    assert!((118..=122).contains(&bench.asked("AT+CMGL=4")));
    assert!((59..=62).contains(&bench.asked("AT+CSQ")));
}

#[test]
fn memories_that_are_announced_without_end_do_not_keep_messages_from_being_sent() {
    let mut bench = Bench::working();
    bench.board.interruption = "+CMTI: \"SM\",1".to_owned();
    bench.board.keep(2, &question("not ours"));
    bench.say("\r\n+CMTI: \"SM\",1\r\n");
    bench.pass(1);
    bench.happen(Event::Send(message()));
    bench.pass(1);
    assert_eq!(bench.board.sent.len(), 1);
}

fn noise() -> impl Strategy<Value = String> {
    let words = prop::sample::select(vec![
        "OK",
        "ERROR",
        "RDY",
        "+CPIN: SIM PIN",
        "+CPIN: READY",
        "+CMS ERROR: 311",
        "+CME ERROR: 14",
        "+CME ERROR: 16",
        "+CMGL: 1,1,,24",
        "+CMTI: \"ME\",1",
        "+CDSI: \"SR\",2",
        "+CMT: ,24",
        "+CMGS: 3",
        "+CREG: 0,2",
        "+CREG: 1",
        "00",
        "0791",
        "+CPMS: (\"ME\")",
        "> ",
        "+CPINR: SIM PIN,3,3",
    ]);
    prop_oneof![words.prop_map(str::to_owned), "[ -~]{0,40}"]
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(200))]

    #[test]
    fn whatever_is_said_a_refused_pin_is_given_once(
        said in proptest::collection::vec((noise(), 0_u64..20), 0..60),
    ) {
        let mut board = Board::new();
        board.pin = Some("1234");
        let mut bench = Bench::new(board, pin("9999"));
        let mut hear = |event, now| {
            for action in bench.session.handle(event, now) {
                if let Action::Write(octets) = action {
                    for octet in octets.iter().copied() {
                        bench.board.feed(octet);
                    }
                }
            }
        };
        for (line, seconds) in said {
            hear(Event::Heard(Token::Line(line)), bench.now);
            bench.now += std::time::Duration::from_secs(seconds);
            hear(Event::Tick, bench.now);
        }
        prop_assert!(bench.board.pins_tried.len() <= 1);
    }
}
