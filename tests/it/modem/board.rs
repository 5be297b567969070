//! A modem that is none: what it is told and what it says, octet by octet, without a line.

use std::collections::{BTreeMap, VecDeque};

use super::octets::length;

/// How long a command is unanswered.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub(crate) enum Hung {
    No,
    /// Nothing is answered until it is told to start anew.
    UntilReset,
    /// The messages that it is given are not confirmed.
    OverMessages,
    /// Commands that begin so are not answered.
    Over(&'static str),
}

/// A modem's memory and manners.
pub(crate) struct Board {
    /// The card's PIN, and whether it was given.
    pub(crate) pin: Option<&'static str>,
    pub(crate) unlocked: bool,
    pub(crate) tries_left: u8,
    pub(crate) pins_tried: Vec<String>,
    /// Status and line of what the card keeps.
    pub(crate) kept: BTreeMap<u16, (u8, String)>,
    /// Which memory that is; all others are empty.
    pub(crate) kept_in: &'static str,
    pub(crate) sent: Vec<String>,
    /// What is answered to the next messages; nothing to those that are sent.
    pub(crate) refusals: VecDeque<&'static str>,
    pub(crate) registration: u8,
    /// What it was given to send and has not confirmed.
    pub(crate) unconfirmed: Option<String>,
    pub(crate) hung: Hung,
    pub(crate) resets: u32,
    pub(crate) commands: Vec<String>,
    /// Commands that are refused.
    pub(crate) lacks: Vec<&'static str>,
    /// Answered to the next PINs, which are not looked at.
    pub(crate) pins_put_off: VecDeque<&'static str>,
    /// So many memories are asked for before the card is ready.
    pub(crate) busy_for: u32,
    /// Said between a heading and its octets, in each listing.
    pub(crate) interruption: String,
    /// So many listings lose a character of each line of octets.
    pub(crate) noisy_listings: u32,
    /// What ends a line.
    pub(crate) end: &'static str,
    selected: String,
    announces: bool,
    echo: bool,
    line: String,
    /// It waits for the octets of a message.
    waits: bool,
    reference: u8,
}

impl Board {
    pub(crate) fn new() -> Self {
        Self {
            pin: None,
            unlocked: false,
            tries_left: 3,
            pins_tried: Vec::new(),
            kept: BTreeMap::new(),
            kept_in: "SM",
            selected: String::new(),
            sent: Vec::new(),
            refusals: VecDeque::new(),
            registration: 1,
            unconfirmed: None,
            hung: Hung::No,
            resets: 0,
            commands: Vec::new(),
            lacks: Vec::new(),
            pins_put_off: VecDeque::new(),
            busy_for: 0,
            interruption: String::new(),
            noisy_listings: 0,
            end: "\r\n",
            announces: false,
            echo: true,
            line: String::new(),
            waits: false,
            reference: 0,
        }
    }

    /// Power off and on: what was set is forgotten, what is stored is not.
    pub(crate) fn restart(&mut self) {
        self.unlocked = false;
        self.announces = false;
        self.echo = true;
        self.waits = false;
        self.line.clear();
    }

    /// A message comes from the network; what the modem says of it.
    pub(crate) fn receive(&mut self, line: &str) -> String {
        let index = self.keep(0, line);
        if self.announces {
            self.lines(&[&format!("+CMTI: \"SM\",{index}")])
        } else {
            String::new()
        }
    }

    /// Puts something into the memory.
    pub(crate) fn keep(&mut self, status: u8, line: &str) -> u16 {
        let index = (1..).find(|index| !self.kept.contains_key(index)).unwrap();
        self.kept.insert(index, (status, line.to_owned()));
        index
    }

    /// A receipt that is not stored.
    pub(crate) fn straight(&self, word: &str, line: &str) -> String {
        self.lines(&[&format!("+{word}: {}", length(line)), line])
    }

    /// Confirms the message that hangs.
    pub(crate) fn confirm(&mut self) -> String {
        self.hung = Hung::No;
        let line = self.unconfirmed.take().unwrap();
        self.send(&line)
    }

    /// The number of the message that was sent last.
    pub(crate) fn last_reference(&self) -> u8 {
        self.reference
    }

    /// What it says to an octet.
    pub(crate) fn feed(&mut self, octet: u8) -> String {
        let mut said = String::new();
        if self.echo && self.hung != Hung::UntilReset {
            said.push(char::from(octet));
        }
        match octet {
            0x1b => {
                self.waits = false;
                self.line.clear();
            }
            0x1a if self.waits => {
                self.waits = false;
                let line = std::mem::take(&mut self.line);
                said += &self.send(&line);
            }
            b'\r' if !self.waits => {
                let line = std::mem::take(&mut self.line);
                said += &self.command(&line);
            }
            _ => self.line.push(char::from(octet)),
        }
        said
    }

    fn send(&mut self, line: &str) -> String {
        if matches!(self.hung, Hung::OverMessages | Hung::UntilReset) {
            self.unconfirmed = Some(line.to_owned());
            return String::new();
        }
        if let Some(refusal) = self.refusals.pop_front()
            && !refusal.is_empty()
        {
            return self.lines(&[refusal]);
        }
        self.sent.push(line.to_owned());
        self.reference = self.reference.wrapping_add(1);
        self.lines(&[&format!("+CMGS: {}", self.reference), "OK"])
    }

    fn command(&mut self, line: &str) -> String {
        if !line.is_empty() {
            self.commands.push(line.to_owned());
        }
        if line == "AT+CFUN=1,1" {
            self.resets += 1;
            self.hung = Hung::No;
            self.restart();
            return self.lines(&["OK"]);
        }
        match self.hung {
            Hung::UntilReset => return String::new(),
            Hung::Over(command) if line.starts_with(command) => return String::new(),
            Hung::No | Hung::OverMessages | Hung::Over(_) => {}
        }
        if self.lacks.iter().any(|lack| line.starts_with(lack)) {
            return self.lines(&["ERROR"]);
        }
        let locked = self.pin.is_some() && !self.unlocked;
        if let Some(pin) = line.strip_prefix("AT+CPIN=") {
            return self.enter(pin.trim_matches('"'));
        }
        match line {
            "" => String::new(),
            "AT" | "AT+CMEE=1" | "AT+CMGF=0" | "AT+CSCS=\"GSM\"" | "AT+CSMS=0" => {
                self.lines(&["OK"])
            }
            "ATE0" => {
                self.echo = false;
                self.lines(&["OK"])
            }
            "AT+CPIN?" if self.tries_left == 0 => self.lines(&["+CPIN: SIM PUK", "OK"]),
            "AT+CPIN?" if locked => self.lines(&["+CPIN: SIM PIN", "OK"]),
            "AT+CPIN?" => self.lines(&["+CPIN: READY", "OK"]),
            "AT+CPINR=\"SIM PIN\"" => {
                self.lines(&[&format!("+CPINR: SIM PIN,{},3", self.tries_left), "OK"])
            }
            _ if locked => self.lines(&["+CMS ERROR: 311"]),
            "AT+CREG?" => self.lines(&[&format!("+CREG: 0,{}", self.registration), "OK"]),
            "AT+CEREG?" => self.lines(&["+CEREG: 0,0", "OK"]),
            "AT+CSQ" => self.lines(&["+CSQ: 17,99", "OK"]),
            "AT+CPMS=?" => self.lines(&["+CPMS: (\"SM\",\"SR\"),(\"SM\"),(\"SM\")", "OK"]),
            "AT+CMGL=4" => self.list(),
            _ => self.parameters(line),
        }
    }

    fn parameters(&mut self, line: &str) -> String {
        if let Some(memories) = line.strip_prefix("AT+CPMS=") {
            if self.busy_for > 0 {
                self.busy_for -= 1;
                return self.lines(&["+CMS ERROR: 314"]);
            }
            let mut memories = memories.split(',');
            memories
                .next()
                .unwrap()
                .trim_matches('"')
                .clone_into(&mut self.selected);
            return self.lines(&["+CPMS: 0,20,0,20,0,20", "OK"]);
        }
        if line.starts_with("AT+CNMI=") {
            self.announces = line == "AT+CNMI=2,1,0,1";
            return self.lines(&["OK"]);
        }
        if line.starts_with("AT+CMGS=") {
            self.waits = true;
            return format!("{}> ", self.end);
        }
        if let Some(index) = line.strip_prefix("AT+CMGD=") {
            let removed = self.kept.remove(&index.parse().unwrap());
            return self.lines(&[if removed.is_some() {
                "OK"
            } else {
                "+CMS ERROR: 321"
            }]);
        }
        self.lines(&["ERROR"])
    }

    fn enter(&mut self, pin: &str) -> String {
        if let Some(put_off) = self.pins_put_off.pop_front() {
            return self.lines(&[put_off]);
        }
        self.pins_tried.push(pin.to_owned());
        if self.pin == Some(pin) {
            self.unlocked = true;
            self.tries_left = 3;
            return self.lines(&["OK"]);
        }
        self.tries_left -= 1;
        self.lines(&["+CME ERROR: 16"])
    }

    fn list(&mut self) -> String {
        let mut said = String::new();
        if self.selected != self.kept_in {
            return self.lines(&["OK"]);
        }
        let noisy = self.noisy_listings > 0;
        self.noisy_listings = self.noisy_listings.saturating_sub(1);
        for (index, (status, line)) in self.kept.clone() {
            said += &self.lines(&[&format!("+CMGL: {index},{status},,{}", length(&line))]);
            if !self.interruption.is_empty() {
                said += &self.lines(&[&self.interruption]);
            }
            let mut shown = line.clone();
            if noisy {
                shown.pop();
            }
            said += &self.lines(&[&shown]);
            if status == 0 {
                self.kept.insert(index, (1, line));
            }
        }
        said + &self.lines(&["OK"])
    }

    fn lines(&self, lines: &[&str]) -> String {
        let end = self.end;
        lines
            .iter()
            .map(|line| format!("{end}{line}{end}"))
            .collect()
    }
}
