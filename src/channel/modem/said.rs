//! What a modem's line says.
//!
//! In: one line.
//! Out: a typed meaning; nothing for what is not spoken of here: echoes, noise, makers' own words.
//! Promises no panic on any line. The words on the wire are matched here and nowhere else.
//! Follows 3GPP TS 27.005 (messages) and TS 27.007 (everything else).

use std::collections::BTreeSet;

use super::refusal::Refusal;

/// A meaning.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Said {
    /// A message or a receipt was put into a memory; which, if we know it.
    Announced(Option<Memory>),
    /// A command is done.
    Done,
    /// The next line holds a message's octets.
    Heading(Heading),
    /// Memories that can be read.
    Memories(BTreeSet<Memory>),
    /// Nothing to us.
    Nothing,
    /// What the SIM waits for.
    Pin(PinState),
    /// How many more times the PIN may be tried.
    PinTries(u8),
    /// A command is refused.
    Refused(Refusal),
    /// Whether a network has us.
    Registration(Domain, Registration),
    /// The modem has just started.
    Restarted,
    /// The network has a message under this reference.
    Sent(u8),
    /// How well the network is heard, 0 to 31; nothing where the modem cannot tell.
    Signal(Option<u8>),
}

/// Where messages are kept.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, strum::EnumString, strum::IntoStaticStr,
)]
pub enum Memory {
    /// On the card.
    #[strum(serialize = "SM")]
    Card,
    /// In the modem.
    #[strum(serialize = "ME")]
    Equipment,
    /// Both of them as one.
    #[strum(serialize = "MT")]
    Joined,
    /// Receipts only.
    #[strum(serialize = "SR")]
    Receipts,
}

/// What stands before a message's octets.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Heading {
    /// It is kept in the memory that is being listed.
    Kept {
        /// Its place.
        index: u16,
        /// Whether it came in.
        kind: Kept,
        /// Octets without the service centre's.
        length: usize,
    },
    /// It is kept nowhere.
    Straight {
        /// Octets without the service centre's.
        length: usize,
    },
}

/// Which way a kept message goes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Kept {
    /// It came in.
    Received,
    /// Somebody stored it to be sent.
    Outgoing,
}

/// What the SIM waits for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PinState {
    /// It is not there or not ready yet.
    Absent,
    /// The PIN.
    Pin,
    /// The code that only the carrier has.
    Puk,
    /// Nothing.
    Ready,
    /// Another code, of the modem or the carrier.
    Other,
}

/// Which network registration is spoken of.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Domain {
    /// GSM and UMTS.
    Circuit,
    /// LTE.
    Packet,
}

/// Whether a network has us.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Registration {
    /// It does not want us.
    Denied,
    /// It does, at home or elsewhere.
    Registered,
    /// One is being looked for.
    Searching,
    /// None is, or the modem does not know.
    Unregistered,
}

impl Said {
    /// Reads a line.
    #[must_use]
    pub fn read(line: &str) -> Self {
        match line {
            "OK" => return Self::Done,
            "ERROR" => return Self::Refused(Refusal::Plain),
            "RDY" | "SYSSTART" | "^SYSSTART" | "START" => return Self::Restarted,
            _ => {}
        }
        let Some((word, rest)) = line.split_once(':') else {
            return Self::Nothing;
        };
        let rest = rest.trim();
        let fields = || fields(rest);
        let read = match word {
            "+CDS" | "+CMT" => straight(&fields()),
            "+CDSI" | "+CMTI" => fields().first().map(|name| Self::Announced(memory(name))),
            "+CEREG" => registration(&fields(), Domain::Packet),
            "+CME ERROR" => Some(Self::Refused(Refusal::Equipment(rest.parse().ok()))),
            "+CMGL" => kept(&fields()),
            "+CMGS" => number(&fields(), 0).map(Self::Sent),
            "+CMS ERROR" => Some(Self::Refused(Refusal::Message(rest.parse().ok()))),
            "+CPIN" => Some(Self::Pin(pin_state(rest))),
            "+CPINR" => number(&fields(), 1).map(Self::PinTries),
            "+CPMS" => memories(rest),
            "+CREG" => registration(&fields(), Domain::Circuit),
            // 99 is "not known".
            "+CSQ" => {
                number(&fields(), 0).map(|rssi| Self::Signal(Some(rssi).filter(|rssi| *rssi < 99)))
            }
            _ => None,
        };
        read.unwrap_or(Self::Nothing)
    }
}

/// Parted by commas, except within quotation marks, which are taken off.
fn fields(text: &str) -> Vec<&str> {
    let mut quoted = false;
    text.split(|c: char| {
        quoted ^= c == '"';
        c == ',' && !quoted
    })
    .map(|field| field.trim().trim_matches('"'))
    .collect()
}

fn number<N: std::str::FromStr>(fields: &[&str], place: usize) -> Option<N> {
    fields.get(place)?.parse().ok()
}

fn memory(name: &str) -> Option<Memory> {
    name.parse().ok()
}

/// `+CMGL: 3,1,,24`, with or without the field for a name.
fn kept(fields: &[&str]) -> Option<Said> {
    let kind = match number(fields, 1)? {
        0_u8 | 1 => Kept::Received,
        _ => Kept::Outgoing,
    };
    Some(Said::Heading(Heading::Kept {
        index: number(fields, 0)?,
        kind,
        length: fields.last()?.parse().ok()?,
    }))
}

/// `+CMT: ,24`, `+CMT: 24`, `+CDS: 24`.
fn straight(fields: &[&str]) -> Option<Said> {
    let length = fields.last()?.parse().ok()?;
    Some(Said::Heading(Heading::Straight { length }))
}

/// `+CPMS: ("SM","ME"),("SM","ME"),("SM")`: the first are those that can be read. The same word
/// before figures tells how full they are.
fn memories(rest: &str) -> Option<Said> {
    let (first, _) = rest.strip_prefix('(')?.split_once(')')?;
    Some(Said::Memories(
        fields(first).into_iter().filter_map(memory).collect(),
    ))
}

fn pin_state(rest: &str) -> PinState {
    match rest {
        "READY" | "SIM PIN2" | "SIM PUK2" => PinState::Ready,
        "SIM PIN" => PinState::Pin,
        "SIM PUK" => PinState::Puk,
        _ if rest.starts_with("NOT ") => PinState::Absent,
        _ => PinState::Other,
    }
}

/// Asked for, `+CREG: 0,1` or `+CREG: 2,1,"00C3","0001"`; unasked, `+CREG: 1` or
/// `+CREG: 1,"00C3","0001"`.
fn registration(fields: &[&str], domain: Domain) -> Option<Said> {
    let asked = fields.get(1).filter(|field| field.len() <= 2);
    let status: u8 = match asked {
        Some(status) => status.parse().ok()?,
        None => number(fields, 0)?,
    };
    let registration = match status {
        // Home, roaming, and both again for messages only and for calls by another way.
        1 | 5 | 6 | 7 | 9 | 10 => Registration::Registered,
        2 => Registration::Searching,
        3 => Registration::Denied,
        _ => Registration::Unregistered,
    };
    Some(Said::Registration(domain, registration))
}
