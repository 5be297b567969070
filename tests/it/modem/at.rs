//! Octets into lines, lines into meanings.

use matone::channel::modem::at::{Splitter, Token};
use matone::channel::modem::refusal::{Prospect, Refusal};
use matone::channel::modem::said::{Domain, Heading, Kept, Memory, PinState, Registration, Said};
use proptest::prelude::*;

fn tokens(pieces: &[&[u8]]) -> Vec<Token> {
    let mut splitter = Splitter::default();
    pieces
        .iter()
        .flat_map(|piece| splitter.feed(piece))
        .collect()
}

fn line(text: &str) -> Token {
    Token::Line(text.to_owned())
}

#[test]
fn lines_come_out_whatever_ends_them() {
    for octets in [
        &b"\r\nOK\r\n"[..],
        b"OK\r",
        b"\n\nOK\n",
        b"\r\r\n OK \r\r\n",
    ] {
        assert!(tokens(&[octets]) == [line("OK")], "{octets:?}");
    }
}

#[test]
fn pieces_of_any_size_make_a_line() {
    let pieces: [&[u8]; 5] = [b"\r", b"\n+CM", b"TI: \"SM\"", b",3\r", b"\n"];
    assert!(tokens(&pieces) == [line("+CMTI: \"SM\",3")]);
}

#[test]
fn a_prompt_needs_no_end_of_line_and_stands_at_its_beginning() {
    assert!(tokens(&[b"AT+CMGS=20\r\r\n> "]) == [line("AT+CMGS=20"), Token::Prompt]);
    assert!(tokens(&[b"a>b\r"]) == [line("a>b")]);
}

#[test]
fn noise_and_noughts_are_no_part_of_a_line() {
    assert!(tokens(&[b"\0\0\xff\xfe\r\nO\0K\r\n"]) == [line("OK")]);
}

#[test]
fn a_line_that_does_not_end_takes_no_memory_and_hides_no_other() {
    let mut endless = vec![b'A'; 1 << 20];
    endless.extend(b"\r\nOK\r\n");
    assert!(tokens(&[&endless]) == [line("OK")]);
}

#[test]
fn lines_say_what_the_standards_say() {
    let kept = |index, kind, length| {
        Said::Heading(Heading::Kept {
            index,
            kind,
            length,
        })
    };
    let registration = |registration| Said::Registration(Domain::Circuit, registration);
    let cases = [
        ("OK", Said::Done),
        ("ERROR", Said::Refused(Refusal::Plain)),
        (
            "+CME ERROR: 10",
            Said::Refused(Refusal::Equipment(Some(10))),
        ),
        (
            "+CME ERROR: SIM not inserted",
            Said::Refused(Refusal::Equipment(None)),
        ),
        (
            "+CMS ERROR: 331",
            Said::Refused(Refusal::Message(Some(331))),
        ),
        ("+CMTI: \"SM\",3", Said::Announced(Some(Memory::Card))),
        ("+CMTI: \"ME\", 3", Said::Announced(Some(Memory::Equipment))),
        ("+CMTI: \"XX\",3", Said::Announced(None)),
        ("+CDSI: \"SR\",1", Said::Announced(Some(Memory::Receipts))),
        ("+CMGL: 3,1,,24", kept(3, Kept::Received, 24)),
        ("+CMGL: 3,0,\"a, b\",24", kept(3, Kept::Received, 24)),
        ("+CMGL: 4,2,24", kept(4, Kept::Outgoing, 24)),
        ("+CMGL: 4", Said::Nothing),
        ("+CMT: ,30", Said::Heading(Heading::Straight { length: 30 })),
        ("+CDS: 25", Said::Heading(Heading::Straight { length: 25 })),
        ("+CMGS: 7", Said::Sent(7)),
        ("+CMGS: 7,\"00\"", Said::Sent(7)),
        ("+CMGS: 777", Said::Nothing),
        ("+CPIN: READY", Said::Pin(PinState::Ready)),
        ("+CPIN: SIM PIN", Said::Pin(PinState::Pin)),
        ("+CPIN: SIM PUK", Said::Pin(PinState::Puk)),
        ("+CPIN: NOT READY", Said::Pin(PinState::Absent)),
        ("+CPIN: PH-NET PIN", Said::Pin(PinState::Other)),
        ("+CPINR: SIM PIN,2,3", Said::PinTries(2)),
        ("+CREG: 0,1", registration(Registration::Registered)),
        (
            "+CREG: 2,5,\"00C3\",\"0001\"",
            registration(Registration::Registered),
        ),
        ("+CREG: 2", registration(Registration::Searching)),
        (
            "+CREG: 1,\"00C3\",\"0001\"",
            registration(Registration::Registered),
        ),
        ("+CREG: 0,3", registration(Registration::Denied)),
        ("+CREG: 0,8", registration(Registration::Unregistered)),
        (
            "+CEREG: 0,1",
            Said::Registration(Domain::Packet, Registration::Registered),
        ),
        ("+CSQ: 17,99", Said::Signal(Some(17))),
        ("+CSQ: 99,99", Said::Signal(None)),
        ("RDY", Said::Restarted),
        ("RING", Said::Nothing),
        ("^BOOT:12,3", Said::Nothing),
        ("+CPMS: 1,20,1,20,1,20", Said::Nothing),
        (
            "+CPMS: (\"SM\",\"ME\",\"BM\"),(\"SM\")",
            Said::Memories([Memory::Card, Memory::Equipment].into()),
        ),
    ];
    for (line, said) in cases {
        assert_eq!(Said::read(line), said, "{line}");
    }
}

#[test]
fn what_is_about_the_message_or_its_receiver_is_for_good() {
    for code in [1, 28, 30, 69, 95, 96, 128, 144, 176, 195, 198] {
        assert_eq!(
            Refusal::Message(Some(code)).prospect(),
            Prospect::Never,
            "{code}"
        );
    }
    for code in [
        8, 10, 21, 27, 38, 41, 42, 47, 50, 192, 208, 255, 300, 304, 331, 332, 500, 512,
    ] {
        assert_eq!(
            Refusal::Message(Some(code)).prospect(),
            Prospect::Later,
            "{code}"
        );
    }
    assert_eq!(Refusal::Plain.prospect(), Prospect::Later);
}

proptest! {
    #[test]
    fn no_octets_and_no_line_make_it_panic(octets in proptest::collection::vec(any::<u8>(), 0..400)) {
        for token in tokens(&[&octets]) {
            if let Token::Line(line) = token {
                let _ = Said::read(&line);
            }
        }
    }

    #[test]
    fn no_parameters_make_it_panic(
        word in prop::sample::select(vec![
            "+CMTI", "+CMT", "+CDS", "+CMGL", "+CPMS", "+CREG", "+CPINR", "+CSQ", "+CMGS",
        ]),
        rest in "[ ,\"()0-9A-F]{0,40}",
    ) {
        let _ = Said::read(&format!("{word}:{rest}"));
    }
}
