//! The SMSC's end of a connection, octet by octet.

use std::io::{ErrorKind, Read, Write};
use std::net::{TcpListener, TcpStream};

use super::program::{PATIENCE, until};

pub(crate) const BIND_TRANSCEIVER: u32 = 0x09;
pub(crate) const DELIVER_SM: u32 = 0x05;
pub(crate) const SUBMIT_SM: u32 = 0x04;
pub(crate) const UNBIND: u32 = 0x06;
pub(crate) const ENQUIRE_LINK: u32 = 0x15;
pub(crate) const GENERIC_NACK: u32 = 0x8000_0000;
pub(crate) const RESPONSE: u32 = 0x8000_0000;

#[derive(Debug, PartialEq, Eq)]
pub(crate) struct Heard {
    pub(crate) id: u32,
    pub(crate) status: u32,
    pub(crate) sequence: u32,
    pub(crate) body: Vec<u8>,
}

/// A PDU in octets.
pub(crate) fn pdu(id: u32, status: u32, sequence: u32, body: &[u8]) -> Vec<u8> {
    let length = u32::try_from(16 + body.len()).expect("a length");
    let mut octets = Vec::new();
    for number in [length, id, status, sequence] {
        octets.extend(number.to_be_bytes());
    }
    octets.extend(body);
    octets
}

/// A `deliver_sm` body with data coding 0.
pub(crate) fn delivery(from: &str, text: &str, tlvs: &[u8]) -> Vec<u8> {
    let mut body = vec![0, 1, 1];
    body.extend(from.as_bytes());
    body.extend(b"\0\x01\x014321\0");
    body.extend([0, 0, 0, 0, 0, 0, 0, 0, 0]);
    body.push(u8::try_from(text.len()).expect("a short text"));
    body.extend(text.as_bytes());
    body.extend(tlvs);
    body
}

/// An optional parameter.
pub(crate) fn tlv(tag: u16, value: &[u8]) -> Vec<u8> {
    let length = u16::try_from(value.len()).expect("a length");
    [&tag.to_be_bytes(), &length.to_be_bytes(), value].concat()
}

pub(crate) struct Socket(TcpListener);

impl Socket {
    pub(crate) fn listen() -> Self {
        let listener = TcpListener::bind("127.0.0.1:0").expect("a port");
        listener.set_nonblocking(true).expect("it polls");
        Self(listener)
    }

    pub(crate) fn port(&self) -> u16 {
        self.0.local_addr().expect("its address").port()
    }

    /// The next connection, before the bind.
    pub(crate) fn accept(&self) -> Wire {
        until("a connection", || match self.0.accept() {
            Ok((stream, _)) => {
                stream.set_nonblocking(false).expect("it blocks");
                stream.set_read_timeout(Some(PATIENCE)).expect("a limit");
                stream.set_write_timeout(Some(PATIENCE)).expect("a limit");
                stream.set_nodelay(true).expect("no delay");
                Some(Wire(stream))
            }
            Err(error) if error.kind() == ErrorKind::WouldBlock => None,
            Err(error) => panic!("{error}"),
        })
    }

    /// The next connection, bound.
    pub(crate) fn bound(&self) -> Wire {
        let mut wire = self.accept();
        let bind = wire.hear();
        assert_eq!(bind.id, BIND_TRANSCEIVER);
        wire.say(&pdu(
            BIND_TRANSCEIVER | RESPONSE,
            0,
            bind.sequence,
            b"smsc\0",
        ));
        wire
    }
}

pub(crate) struct Wire(TcpStream);

impl Wire {
    pub(crate) fn say(&mut self, octets: &[u8]) {
        self.0.write_all(octets).expect("it is heard");
    }

    /// The next PDU; nothing where the connection ended.
    pub(crate) fn hear_or_end(&mut self) -> Option<Heard> {
        let mut header = [0; 16];
        match self.0.read_exact(&mut header) {
            Ok(()) => {}
            Err(error)
                if matches!(
                    error.kind(),
                    ErrorKind::UnexpectedEof | ErrorKind::ConnectionReset
                ) =>
            {
                return None;
            }
            Err(error) => panic!("{error}"),
        }
        let number = |at: usize| u32::from_be_bytes(header[at..at + 4].try_into().unwrap());
        let mut body = vec![0; number(0) as usize - 16];
        self.0.read_exact(&mut body).expect("a body");
        Some(Heard {
            id: number(4),
            status: number(8),
            sequence: number(12),
            body,
        })
    }

    pub(crate) fn hear(&mut self) -> Heard {
        self.hear_or_end().expect("a PDU")
    }

    /// The next PDU of a kind.
    pub(crate) fn hear_a(&mut self, id: u32) -> Heard {
        loop {
            let heard = self.hear();
            if heard.id == id {
                return heard;
            }
        }
    }

    /// Brings a body and waits for its answer.
    pub(crate) fn bring(&mut self, sequence: u32, body: &[u8]) -> Heard {
        self.say(&pdu(DELIVER_SM, 0, sequence, body));
        self.hear_a(DELIVER_SM | RESPONSE)
    }

    /// Accepts the next `submit_sm`.
    pub(crate) fn accept(&mut self) -> Heard {
        let submit = self.hear_a(SUBMIT_SM);
        self.say(&pdu(SUBMIT_SM | RESPONSE, 0, submit.sequence, b"name\0"));
        submit
    }

    pub(crate) fn hear_the_end(&mut self) {
        while self.hear_or_end().is_some() {}
    }
}
