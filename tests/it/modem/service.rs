//! The whole service and a modem that is none.

use matone::message::PartOf;
use rusqlite::Connection;

use super::board::{Board, Hung};
use super::octets::{Sms, Submitted, binary, report, sms, submitted};
use super::serve::Serve;

const SENDER: &str = "+255700000001";
const QUESTION: &str = "2 gallons cloudy 1% bleach";
const MACHINE: &str = "matone_messages_set_aside_total machine";
const UNREADABLE: &str = "matone_messages_set_aside_total unreadable";
const DUPLICATE: &str = "matone_messages_set_aside_total duplicate";

fn sent(serve: &Serve) -> Vec<Submitted> {
    let board = serve.stick.board();
    board.sent.iter().map(|line| submitted(line)).collect()
}

fn question() -> String {
    sms(SENDER, QUESTION).line()
}

#[test]
fn a_question_is_answered_and_its_receipt_is_counted() {
    let serve = Serve::with("question", Board::new());
    serve.until_up();
    serve.stick.receive(&question());
    serve.until_sent(1);
    serve.until_card_is_empty();
    let answer = &sent(&serve)[0];
    assert_eq!(answer.to, SENDER);
    assert!(answer.text.contains("8 mL"), "{}", answer.text);
    assert!(answer.wants_receipt);
    serve.until("counted as sent", |serve| {
        serve.figure("matone_replies_sent_total") == Some(1)
    });
    let said = {
        let board = serve.stick.board();
        let reference = board.last_reference();
        // One is still being tried, one is there.
        board.straight("CDS", &report(reference, SENDER, 0x30))
            + &board.straight("CDS", &report(reference, SENDER, 0x00))
    };
    serve.stick.say(&said);
    serve.until("counted as delivered", |serve| {
        serve.figure("matone_replies_delivered_total") == Some(1)
    });
    let store = Connection::open(serve.folder.0.join("matone.db")).unwrap();
    let state: i64 = store
        .query_row("SELECT state FROM outbox", [], |row| row.get(0))
        .unwrap();
    assert_eq!(state, 3, "delivered");
}

/// The segments behind the first, which are one message, as its text.
fn long_answer(serve: &Serve, to: &str) -> String {
    serve.until("all parts are sent", |serve| {
        let sent = sent(serve);
        let last = sent.last().and_then(|last| last.part);
        last.is_some_and(|part| part.number == part.total)
    });
    let sent = sent(serve);
    let parts = &sent[1..];
    assert!(parts.len() > 2);
    let first = parts[0].part.unwrap();
    assert_eq!(parts.len(), usize::from(first.total));
    for (number, part) in (1..).zip(parts) {
        assert_eq!(part.to, to);
        assert_eq!(part.part, Some(PartOf { number, ..first }));
    }
    parts.iter().map(|part| part.text.as_str()).collect()
}

#[test]
fn arabic_comes_and_goes_in_parts() {
    let serve = Serve::with("arabic", Board::new());
    serve.until_up();
    let from = "+249100000001";
    serve
        .stick
        .receive(&sms(from, "20 لتر ماء عكر، كلور 5%").line());
    serve.until_sent(1);
    assert!(sent(&serve)[0].text.contains("4 مل"));
    serve.stick.receive(&sms(from, "المزيد").line());
    assert!(long_answer(&serve, from).contains("البكتيريا"));
    serve.until_card_is_empty();
}

#[test]
fn a_long_answer_goes_on_where_it_was_interrupted() {
    let mut board = Board::new();
    board.refusals.extend(["", "", "+CMS ERROR: 42"]);
    let serve = Serve::with("long", board);
    serve.until_up();
    serve.stick.receive(&question());
    serve.until_sent(1);
    serve.stick.receive(&sms(SENDER, "MORE").line());
    let text = long_answer(&serve, SENDER);
    assert!(text.contains("Boiling kills them all"), "{text}");
    assert!(serve.stick.board().refusals.is_empty());
}

#[test]
fn a_long_message_is_one_question_whatever_the_order_of_its_parts() {
    let mut board = Board::new();
    let part = |number, text| {
        let part = Some(PartOf {
            reference: 0x5a,
            total: 2,
            number,
        });
        Sms {
            from: SENDER,
            text,
            part,
            second: number,
        }
        .line()
    };
    board.keep(0, &part(2, "cloudy 1% bleach"));
    board.interruption = "+CREG: 5\r\n\r\n^RSSI: 12".to_owned();
    let serve = Serve::with("parts", board);
    serve.until_up();
    serve.until_card_is_empty();
    assert!(serve.stick.board().sent.is_empty());
    serve.stick.receive(&part(1, "how much for 2 gallons "));
    serve.until_sent(1);
    assert!(sent(&serve)[0].text.contains("8 mL"));
    serve.until_card_is_empty();
}

#[test]
fn a_message_stays_on_the_card_while_the_store_is_locked() {
    let serve = Serve::with("locked", Board::new());
    serve.until_up();
    let store = Connection::open(serve.folder.0.join("matone.db")).unwrap();
    store.execute_batch("BEGIN IMMEDIATE").unwrap();
    serve.stick.receive(&question());
    serve.until("it was not taken", |serve| {
        serve.log().contains("a message stays in the modem")
    });
    assert_eq!(serve.stick.board().kept.len(), 1);
    store.execute_batch("ROLLBACK").unwrap();
    serve.until_sent(1);
    serve.until_card_is_empty();
    assert_eq!(sent(&serve).len(), 1);
}

#[test]
fn a_crash_before_the_deletion_makes_no_second_answer() {
    let mut board = Board::new();
    board.lacks = vec!["AT+CMGD"];
    let mut serve = Serve::with("crash", board);
    serve.until_up();
    serve.stick.receive(&question());
    serve.until("counted as sent", |serve| {
        serve.figure("matone_replies_sent_total") == Some(1)
    });
    serve.kill();
    assert_eq!(serve.stick.board().kept.len(), 1);
    serve.stick.board().lacks.clear();
    serve.start_again();
    serve.until_card_is_empty();
    serve.until("known again", |serve| {
        serve.figure(DUPLICATE).is_some_and(|count| count >= 1)
    });
    serve.end();
    assert_eq!(sent(&serve).len(), 1);
}

#[test]
fn a_card_gets_its_pin_from_a_file() {
    let mut board = Board::new();
    board.pin = Some("4711");
    let serve = Serve::with_pin("pin", board, Some("4711"));
    serve.until_up();
    serve.stick.receive(&question());
    serve.until_sent(1);
    assert_eq!(serve.stick.board().pins_tried, ["4711"]);
}

#[test]
fn a_refused_pin_is_not_tried_again_even_by_the_next_start() {
    let mut board = Board::new();
    board.pin = Some("4711");
    let mut serve = Serve::with_pin("wrong-pin", board, Some("9365"));
    let ill = |serve: &Serve| {
        let (status, body) = serve.get("/healthz");
        status == 503 && body.contains("stick") && body.contains("PIN")
    };
    serve.until("it says what is wrong", ill);
    for _ in 0..2 {
        serve.kill();
        serve.stick.pull();
        serve.stick.plug();
        serve.start_again();
        serve.until("it says what is wrong", ill);
    }
    assert_eq!(serve.stick.board().pins_tried, ["9365"]);
    // Another PIN is another matter.
    std::fs::write(serve.folder.0.join("pin"), "4711").unwrap();
    serve.kill();
    serve.start_again();
    serve.until_up();
    assert_eq!(serve.stick.board().pins_tried, ["9365", "4711"]);
}

#[test]
fn what_the_network_refuses_for_now_is_sent_later_and_for_good_never() {
    let mut board = Board::new();
    board.refusals.extend(["+CMS ERROR: 38", "+CMS ERROR: 28"]);
    let serve = Serve::with("refusal", board);
    serve.until_up();
    serve.stick.receive(&question());
    serve.until("refused for now", |serve| {
        serve.stick.board().refusals.len() == 1
    });
    // Another takes the second refusal, before the first is tried again.
    serve.stick.receive(&sms("+255700000002", QUESTION).line());
    serve.until_sent(1);
    assert!(serve.stick.board().refusals.is_empty());
    serve.until("one of them was given up", |serve| {
        serve.figure("matone_replies_unsent_total given_up") == Some(1)
    });
    assert_eq!(sent(&serve).len(), 1);
}

#[test]
fn a_modem_that_hangs_is_reset_and_goes_on() {
    let serve = Serve::with("hang", Board::new());
    serve.until_up();
    serve.stick.board().hung = Hung::UntilReset;
    serve.stick.receive(&question());
    serve.until("reset", |serve| serve.stick.board().resets == 1);
    serve.until_sent(1);
    serve.until_card_is_empty();
    serve.until_up();
    assert!(serve.log().contains("is being reset"));
}

#[test]
fn a_modem_that_is_pulled_out_is_found_when_it_is_back() {
    let mut serve = Serve::with("plug", Board::new());
    serve.until_up();
    serve.stick.pull();
    serve.until_down();
    assert_eq!(serve.get("/healthz").0, 200, "it is being tried again");
    // What came while it was out is on the card.
    serve.stick.board().keep(0, &question());
    serve.stick.plug();
    serve.until_up();
    serve.until_sent(1);
    serve.until_card_is_empty();
    // The end is not waited for by what is not there.
    serve.stick.pull();
    serve.until_down();
    assert!(serve.end().success());
}

#[test]
fn machines_are_not_answered_and_leave_the_card() {
    let serve = Serve::with("machine", Board::new());
    serve.until_up();
    serve
        .stick
        .receive(&sms("MobiPay", "Your balance is 2 gallons").line());
    serve.stick.receive(&sms("15500", "Top up now").line());
    serve.stick.receive(&binary(SENDER));
    serve.until_card_is_empty();
    serve.until("set aside", |serve| {
        serve.figure(MACHINE) == Some(2) && serve.figure(UNREADABLE) == Some(1)
    });
    serve.stick.receive(&question());
    serve.until_sent(1);
    assert_eq!(sent(&serve).len(), 1);
}

#[test]
fn noise_on_the_line_and_other_ends_of_lines_are_borne() {
    for (name, end) in [("cr", "\r"), ("crcr", "\r\r\n")] {
        let mut board = Board::new();
        board.end = end;
        board.noisy_listings = 1;
        let serve = Serve::with(name, board);
        serve
            .stick
            .say("\0\0\u{1b}[2J~~\r\n\r\nRING\r\n>>>\r\nOK\r\n");
        serve.until_up();
        serve.stick.say(&"U".repeat(3_000));
        serve.stick.say("\r\n^MODE: 5,4\r\n");
        serve.stick.receive(&question());
        serve.until_sent(1);
        serve.until_card_is_empty();
    }
}

#[test]
fn a_message_that_the_modem_does_not_keep_is_answered() {
    let serve = Serve::with("straight", Board::new());
    serve.until_up();
    let said = serve.stick.board().straight("CMT", &question());
    serve.stick.say(&said);
    serve.until_sent(1);
    assert!(sent(&serve)[0].text.contains("8 mL"));
}

#[test]
fn an_answer_waits_for_the_network() {
    let mut board = Board::new();
    board.registration = 2;
    let serve = Serve::with("unregistered", board);
    serve.until("it says what it waits for", |serve| {
        serve.log().contains("looking for a network")
    });
    serve.stick.receive(&question());
    serve.until_card_is_empty();
    assert!(serve.stick.board().sent.is_empty());
    serve.stick.board().registration = 1;
    serve.until_sent(1);
    serve.until_up();
}

#[test]
fn what_the_network_is_being_given_is_finished_before_the_end() {
    let mut board = Board::new();
    board.hung = Hung::OverMessages;
    let mut serve = Serve::with("end", board);
    serve.until_up();
    serve.stick.receive(&question());
    serve.until("the modem has it", |serve| {
        serve.stick.board().unconfirmed.is_some()
    });
    serve.ask_to_end();
    serve.until("it was told to end", |serve| serve.log().contains("ending"));
    let said = serve.stick.board().confirm();
    serve.stick.say(&said);
    assert!(serve.ended().success());
    serve.stick.board().hung = Hung::No;
    serve.start_again();
    serve.until_up();
    serve.stick.receive(&sms("+255700000002", QUESTION).line());
    serve.until_sent(2);
    let to: Vec<String> = sent(&serve).into_iter().map(|sent| sent.to).collect();
    assert_eq!(to, [SENDER, "+255700000002"], "each has one answer");
}
