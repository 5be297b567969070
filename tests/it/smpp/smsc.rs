//! An SMSC of another make: npm's `smpp` behind a script that speaks lines of JSON.

use std::io::{BufRead, BufReader, Write};
use std::path::PathBuf;
use std::process::{Child, ChildStdin, Command, Stdio};
use std::sync::mpsc::{Receiver, RecvTimeoutError, channel};

use serde_json::{Value, json};

use super::program::{PATIENCE, Program};
use crate::cli;

pub(crate) const PERSON: &str = "255700000001";
pub(crate) const QUESTION: &str = "2 gallons cloudy 1% bleach";

/// What the command line answers: the parts that an SMS channel has to carry, and their encoding.
pub(crate) fn expected(text: &str) -> (Vec<String>, String) {
    let line = json!({"from": "somebody", "text": text}).to_string();
    let output = cli::run(&["ask", "--jsonl"], line.as_bytes());
    let answer: Value = serde_json::from_slice(&output.stdout).expect("a line");
    let parts = answer["parts"].as_array().expect("parts");
    let words = |part: &Value| part.as_str().expect("text").to_owned();
    (
        parts.iter().map(words).collect(),
        words(&answer["encoding"]),
    )
}

pub(crate) fn started(smsc: &mut Smsc, channel: &str) -> Program {
    let program = Program::start(smsc.port, channel, "");
    smsc.event("bound");
    program
}

pub(crate) struct Smsc {
    child: Child,
    commands: ChildStdin,
    events: Receiver<Value>,
    /// Events that came while another was waited for.
    passed: Vec<Value>,
    pub(crate) port: u16,
}

/// Where npm's packages are, if `smpp` is among them.
fn node_modules() -> Option<PathBuf> {
    let folder = match std::env::var_os("MATONE_NODE_MODULES") {
        Some(folder) => PathBuf::from(folder),
        None => PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("target/node_modules"),
    };
    folder.join("smpp/package.json").exists().then_some(folder)
}

impl Smsc {
    /// Starts it; nothing where it is not installed, which is said.
    pub(crate) fn start(test: &str) -> Option<Self> {
        Self::start_with(test, &[])
    }

    pub(crate) fn start_with(test: &str, environment: &[(&str, &str)]) -> Option<Self> {
        let skipped = |why: &str| {
            let _ = writeln!(std::io::stderr(), "skipped: smpp::{test}, because {why}");
        };
        let Some(modules) = node_modules() else {
            skipped(
                "npm's smpp is neither in the folder of MATONE_NODE_MODULES nor in \
                 target/node_modules (npm install --prefix target smpp@0.5.1)",
            );
            return None;
        };
        let script = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/data/wire/smpp/smsc.js");
        let child = Command::new("node")
            .arg(script)
            .env("NODE_PATH", modules)
            .envs(environment.iter().copied())
            .stdin(Stdio::piped())
            .stdout(Stdio::piped())
            .stderr(Stdio::inherit())
            .spawn();
        let Ok(mut child) = child else {
            skipped("node cannot be started");
            return None;
        };
        let (event, events) = channel();
        let lines = BufReader::new(child.stdout.take().expect("its output")).lines();
        std::thread::spawn(move || {
            for line in lines.map_while(Result::ok) {
                let read = serde_json::from_str(&line).expect("an event");
                if event.send(read).is_err() {
                    return;
                }
            }
        });
        let commands = child.stdin.take().expect("its input");
        let mut smsc = Self {
            child,
            commands,
            events,
            passed: Vec::new(),
            port: 0,
        };
        let port = smsc.event("listening")["port"].as_u64().expect("a port");
        smsc.port = u16::try_from(port).expect("a port");
        Some(smsc)
    }

    /// Has it do something, and waits until it has.
    pub(crate) fn tell(&mut self, command: &Value) {
        writeln!(self.commands, "{command}").expect("it listens");
        let did = command["do"].clone();
        self.event_where("done", |event| event["did"] == did);
    }

    /// The next event of a kind.
    pub(crate) fn event(&mut self, kind: &str) -> Value {
        self.event_where(kind, |_| true)
    }

    pub(crate) fn event_where(&mut self, kind: &str, wanted: impl Fn(&Value) -> bool) -> Value {
        let is_it = |event: &Value| event["event"] == kind && wanted(event);
        if let Some(place) = self.passed.iter().position(is_it) {
            return self.passed.remove(place);
        }
        loop {
            match self.events.recv_timeout(PATIENCE) {
                Ok(event) if is_it(&event) => return event,
                Ok(event) => self.passed.push(event),
                Err(error) => panic!("no {kind}: {error}; before: {:?}", self.passed),
            }
        }
    }

    /// All events of a kind so far.
    pub(crate) fn all(&mut self, kind: &str) -> Vec<Value> {
        while let Ok(event) = self.events.try_recv() {
            self.passed.push(event);
        }
        let (found, passed) = std::mem::take(&mut self.passed)
            .into_iter()
            .partition(|event| event["event"] == kind);
        self.passed = passed;
        found
    }

    /// Nothing of a kind comes within that time.
    pub(crate) fn none_within(&mut self, kind: &str, time: std::time::Duration) {
        let until = std::time::Instant::now() + time;
        loop {
            let left = until.saturating_duration_since(std::time::Instant::now());
            match self.events.recv_timeout(left) {
                Ok(event) => self.passed.push(event),
                Err(RecvTimeoutError::Timeout) => break,
                Err(error) => panic!("{error}"),
            }
        }
        let found: Vec<&Value> = self
            .passed
            .iter()
            .filter(|event| event["event"] == kind)
            .collect();
        assert!(found.is_empty(), "{found:?}");
    }

    /// Brings a message in the default alphabet and waits until it is taken.
    pub(crate) fn bring(&mut self, from: &str, text: &str) {
        self.tell(&json!({"do": "deliver", "tag": text, "text": text, "fields": person(from)}));
        self.taken(text);
    }

    /// Waits until a delivery is acknowledged.
    pub(crate) fn taken(&mut self, tag: &str) {
        let answer = self.event_where("deliver_sm_resp", |event| event["tag"] == tag);
        assert_eq!(answer["status"], 0, "{answer}");
    }

    /// The next `submit_sm`.
    pub(crate) fn submitted(&mut self) -> Submitted {
        Submitted::of(&self.event("submit_sm"))
    }
}

/// A person's number as a network writes it, with data coding 0.
pub(crate) fn person(from: &str) -> Value {
    json!({
        "source_addr_ton": 1,
        "source_addr_npi": 1,
        "source_addr": from,
        "destination_addr": "4321",
        "data_coding": 0,
    })
}

/// A `submit_sm` as the SMSC read it.
#[derive(Debug)]
pub(crate) struct Submitted {
    pub(crate) event: Value,
    pub(crate) text: String,
    pub(crate) name: String,
    /// `short_message` as it was on the wire.
    pub(crate) octets: Vec<u8>,
}

impl Submitted {
    fn of(event: &Value) -> Self {
        let word = |key: &str| event[key].as_str().unwrap_or_default().to_owned();
        let raw: Vec<u8> = word("raw")
            .as_bytes()
            .chunks(2)
            .map(|digits| {
                let digits = std::str::from_utf8(digits).expect("digits");
                u8::from_str_radix(digits, 16).expect("an octet")
            })
            .collect();
        // Behind the strings stand their fixed number of octets, and the message is last.
        let octets = short_message(&raw);
        Self {
            event: event.clone(),
            text: word("text"),
            name: word("name"),
            octets,
        }
    }

    /// Reference, number of parts, and which this is.
    pub(crate) fn part(&self) -> Option<[u8; 3]> {
        match self.octets.as_slice() {
            [5, 0, 3, reference, total, number, ..] if self.event["esm_class"] == 0x40 => {
                Some([*reference, *total, *number])
            }
            _ => None,
        }
    }
}

fn short_message(raw: &[u8]) -> Vec<u8> {
    let mut rest = &raw[16..];
    let mut skip_string = |fixed: usize| {
        let end = rest.iter().position(|octet| *octet == 0).expect("a zero");
        rest = &rest[end + 1 + fixed..];
    };
    skip_string(2); // service_type; source TON and NPI
    skip_string(2); // source; destination TON and NPI
    skip_string(3); // destination; esm_class, protocol_id, priority_flag
    skip_string(0); // schedule_delivery_time
    skip_string(4); // validity_period; registered_delivery, replace, data_coding, default id
    rest[1..1 + usize::from(rest[0])].to_vec()
}

impl Drop for Smsc {
    fn drop(&mut self) {
        // It may have ended.
        let _ = self.child.kill();
        let _ = self.child.wait();
    }
}
