//! Octets, PDUs and alphabets.

use matone::channel::smpp::coding::{decode, encode_default};
use matone::channel::smpp::delivery::Delivery;
use matone::channel::smpp::frame::{FrameError, Frames, Pdu, command, write};
use matone::config::Alphabet;
use proptest::prelude::*;
use rusmpp::{CommandId, CommandStatus, Pdu as Body};
use tokio_util::bytes::BytesMut;

use super::socket;

/// The PDUs of a stream that comes in such pieces.
fn framed(octets: &[u8], piece: usize) -> (Vec<Pdu>, Option<FrameError>) {
    let mut frames = Frames::default();
    let mut pdus = Vec::new();
    for piece in octets.chunks(piece.max(1)) {
        frames.space().extend_from_slice(piece);
        loop {
            match frames.next() {
                Ok(Some(pdu)) => pdus.push(pdu),
                Ok(None) => break,
                Err(error) => return (pdus, Some(error)),
            }
        }
    }
    (pdus, None)
}

#[test]
fn what_is_written_is_read() {
    let mut octets = BytesMut::new();
    write(
        &command(CommandStatus::EsmeRinvcmdid, 7, Body::GenericNack),
        &mut octets,
    );
    write(
        &command(CommandStatus::EsmeRok, 8, Body::EnquireLink),
        &mut octets,
    );
    let (pdus, error) = framed(&octets, 5);
    assert_eq!(error, None);
    let [nack, link] = pdus.as_slice() else {
        panic!("{pdus:?}");
    };
    assert_eq!(
        (nack.id, nack.status, nack.sequence),
        (CommandId::GenericNack, CommandStatus::EsmeRinvcmdid, 7)
    );
    assert_eq!((link.id, link.sequence), (CommandId::EnquireLink, 8));
}

#[test]
fn lengths_that_cannot_be_are_found_at_once() {
    for (length, error) in [
        (0, FrameError::TooShort(0)),
        (15, FrameError::TooShort(15)),
        (1 << 20, FrameError::TooLong(1 << 20)),
        (u32::MAX, FrameError::TooLong(u32::MAX)),
    ] {
        assert_eq!(framed(&length.to_be_bytes(), 4), (Vec::new(), Some(error)));
    }
}

proptest! {
    #[test]
    fn pieces_of_any_size_make_the_same_pdus(octets: Vec<u8>, piece in 1..50_usize) {
        prop_assert_eq!(framed(&octets, piece), framed(&octets, octets.len()));
    }

    #[test]
    fn good_pdus_are_found_whatever_their_bodies(bodies: Vec<Vec<u8>>, piece in 1..50_usize) {
        let stream: Vec<u8> = (1..)
            .zip(&bodies)
            .flat_map(|(sequence, body)| socket::pdu(0x05, 0, sequence, body))
            .collect();
        let (pdus, error) = framed(&stream, piece);
        prop_assert_eq!(error, None);
        let found: Vec<Vec<u8>> = pdus.iter().map(|pdu| pdu.body.to_vec()).collect();
        prop_assert_eq!(found, bodies);
    }

    #[test]
    fn any_octets_are_read_or_not(octets: Vec<u8>, data_coding: u8) {
        let _ = Delivery::read(&octets);
        for alphabet in [Alphabet::Ascii, Alphabet::Gsm7, Alphabet::Latin1] {
            let _ = decode(data_coding, alphabet, &octets);
        }
    }

    #[test]
    fn a_delivery_with_any_octet_changed_is_read_or_not(at: prop::sample::Index, octet: u8) {
        let tlvs = [
            socket::tlv(0x020c, &[1, 2]),
            socket::tlv(0x001e, b"name\0"),
            socket::tlv(0x0424, b"payload"),
        ]
        .concat();
        let mut body = socket::delivery("255700000001", "text", &tlvs);
        let at = at.index(body.len());
        body[at] = octet;
        let _ = Delivery::read(&body);
    }

    #[test]
    fn what_an_alphabet_carries_comes_back(text: String) {
        for alphabet in [Alphabet::Ascii, Alphabet::Gsm7, Alphabet::Latin1] {
            let Some(octets) = encode_default(alphabet, &text) else { continue };
            // Latin-1's upper half may look like UTF-8 only where it is said to be ASCII or GSM.
            prop_assert_eq!(decode(0, alphabet, &octets), Some(text.clone()));
        }
    }
}

#[track_caller]
fn check(data_coding: u8, alphabet: Alphabet, octets: &[u8], text: &str) {
    assert_eq!(decode(data_coding, alphabet, octets).as_deref(), Some(text));
}

#[test]
fn data_coding_0_is_what_the_link_says() {
    check(0, Alphabet::Gsm7, b"a\x00\x1b\x65\x1b\x3c\x05", "a@€[é");
    check(0, Alphabet::Latin1, b"a@[\xe9\xa4", "a@[é¤");
    check(0, Alphabet::Ascii, b"a@[{", "a@[{");
}

#[test]
fn an_eighth_bit_is_no_septet() {
    check(0, Alphabet::Gsm7, b"caf\xe9", "café");
    check(0, Alphabet::Gsm7, "café ماء".as_bytes(), "café ماء");
    check(0, Alphabet::Ascii, b"caf\xe9", "café");
}

#[test]
fn data_codings_1_3_and_8() {
    check(1, Alphabet::Gsm7, b"a@[{$_", "a@[{$_");
    // GSM 7-bit under the name of ASCII: it has escapes and letters among the control codes.
    check(1, Alphabet::Gsm7, b"a\x00\x1b\x65\x05", "a@€é");
    check(1, Alphabet::Gsm7, b"two\r\nlines", "two\r\nlines");
    check(3, Alphabet::Gsm7, b"caf\xe9", "café");
    check(
        8,
        Alphabet::Gsm7,
        &[0x06, 0x45, 0xd8, 0x3d, 0xdc, 0xa7],
        "م💧",
    );
    check(8, Alphabet::Gsm7, &[0xfe, 0xff, 0x06, 0x45], "م");
    check(8, Alphabet::Gsm7, &[0xff, 0xfe, 0x45, 0x06], "م");
    // An octet too many is left out.
    check(8, Alphabet::Gsm7, &[0x06, 0x45, 0x06], "م");
}

#[test]
fn binary_is_no_text() {
    for data_coding in [2, 4, 9, 0xf4] {
        assert_eq!(decode(data_coding, Alphabet::Gsm7, b"text"), None);
    }
}
