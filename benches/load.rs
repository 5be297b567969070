//! Answers a second, durably, over SMPP: the real service with an SMSC of another make, and beside
//! it in the same run the same exchange without store and core (the bare echo).
//!
//! `npm install --prefix target smpp@0.5.1 && cargo bench --bench load`
//! MESSAGES and OUTSTANDING change how many messages there are, and how many wait at once.

// What a benchmark has to say, it prints; what goes wrong ends it.
#![allow(
    clippy::indexing_slicing,
    clippy::print_stdout,
    clippy::unwrap_used,
    missing_docs
)]

use std::io::{BufRead, BufReader, Read, Write};
use std::net::TcpStream;
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};
use std::time::{Duration, Instant};

use matone::channel::smpp::address::plan;
use matone::channel::smpp::bind::Credentials;
use matone::channel::smpp::frame::{Frames, command, write};
use matone::channel::smpp::session::{Event, Session, delivered};
use matone::channel::smpp::submission::{Numbering, submissions};
use matone::config::Alphabet;
use matone::message::{Address, Letter, OutboxId};
use rusmpp::CommandStatus;
use serde_json::Value;
use tokio_util::bytes::BytesMut;

const REPLY: &str = "20 L cloudy, bleach 5%: settle, strain, add 4 mL (1 tsp), stir, wait 60 min. \
Cold: wait 2 h. Plain bleach only. Cryptosporidium survives. MORE";

fn main() {
    let modules = match std::env::var_os("MATONE_NODE_MODULES") {
        Some(folder) => PathBuf::from(folder),
        None => Path::new(env!("CARGO_MANIFEST_DIR")).join("target/node_modules"),
    };
    if !modules.join("smpp").exists() {
        println!("skipped: no npm smpp (npm install --prefix target smpp@0.5.1)");
        return;
    }
    let setting = |name: &str, usual: usize| {
        std::env::var(name)
            .ok()
            .and_then(|value| value.parse().ok())
            .unwrap_or(usual)
    };
    let messages = setting("MESSAGES", 20_000);
    let outstanding = setting("OUTSTANDING", 256);
    let (echo, _) = run(&modules, messages, outstanding, |port| {
        std::thread::spawn(move || bare_echo(port));
        None
    });
    tell("bare echo", &echo);
    let folder = std::env::temp_dir().join(format!("matone-load-{}", std::process::id()));
    std::fs::create_dir_all(&folder).unwrap();
    let (served, memory) = run(&modules, messages, outstanding, |port| {
        Some(serve(&folder, port))
    });
    tell("matone, durable", &served);
    println!("memory of matone: {memory}");
    let ratio = served["per_second"].as_f64().unwrap() / echo["per_second"].as_f64().unwrap();
    println!("matone / bare echo: {ratio:.2}");
    std::fs::remove_dir_all(&folder).unwrap();
}

fn tell(name: &str, figures: &Value) {
    println!(
        "{name}: {:.0} answers/s, p50 {:.1} ms, p99 {:.1} ms ({} answers)",
        figures["per_second"].as_f64().unwrap(),
        figures["p50_ms"].as_f64().unwrap(),
        figures["p99_ms"].as_f64().unwrap(),
        figures["answered"],
    );
}

/// One run against an SMSC; the figures, and the memory of the process that answered.
fn run(
    modules: &Path,
    messages: usize,
    outstanding: usize,
    answer: impl FnOnce(u16) -> Option<Child>,
) -> (Value, String) {
    let script = concat!(env!("CARGO_MANIFEST_DIR"), "/benches/load/smsc.js");
    let mut smsc = Command::new("node")
        .arg(script)
        .args([messages.to_string(), outstanding.to_string()])
        .env("NODE_PATH", modules)
        .stdout(Stdio::piped())
        .spawn()
        .unwrap();
    let mut lines = BufReader::new(smsc.stdout.take().unwrap()).lines();
    let mut line = || -> Value { serde_json::from_str(&lines.next().unwrap().unwrap()).unwrap() };
    let port = u16::try_from(line()["port"].as_u64().unwrap()).unwrap();
    let mut child = answer(port);
    let figures = line();
    let mut memory = String::new();
    if let Some(child) = &mut child {
        let status = std::fs::read_to_string(format!("/proc/{}/status", child.id()));
        let of = |status: &str, key: &str| {
            let line = status.lines().find(|line| line.starts_with(key));
            line.map(|line| {
                line.split_whitespace()
                    .skip(1)
                    .collect::<Vec<_>>()
                    .join(" ")
            })
            .unwrap_or_default()
        };
        let status = status.unwrap_or_default();
        memory = format!(
            "{} now, {} at most",
            of(&status, "VmRSS"),
            of(&status, "VmHWM")
        );
        child.kill().unwrap();
        child.wait().unwrap();
    }
    smsc.wait().unwrap();
    (figures, memory)
}

fn serve(folder: &Path, port: u16) -> Child {
    let config = folder.join("matone.toml");
    let text = format!(
        "[limits]\nqueue = 100000\n[[channel]]\nkind = \"smpp\"\nname = \"load\"\n\
         host = \"127.0.0.1:{port}\"\nsystem_id = \"matone\"\n\
         password_env = \"MATONE_LOAD_PASSWORD\"\nsource = \"4321\"\nwindow = 128\n"
    );
    std::fs::write(&config, text).unwrap();
    Command::new(env!("CARGO_BIN_EXE_matone"))
        .args(["serve", "--config"])
        .arg(&config)
        .env("MATONE_LOAD_PASSWORD", "secret")
        .stdout(Stdio::null())
        .spawn()
        .unwrap()
}

/// Answers each message at once, through the same session, frames and submissions.
fn bare_echo(port: u16) {
    let mut socket = TcpStream::connect(("127.0.0.1", port)).unwrap();
    socket.set_nodelay(true).unwrap();
    let credentials = Credentials {
        system_id: "matone".to_owned(),
        password: "secret".to_owned().into(),
        system_type: String::new(),
    };
    let numbering = Numbering {
        source: "4321".to_owned(),
        source_plan: plan("4321", None, None),
        dest_ton: None,
        dest_npi: None,
    };
    let (mut session, bind) = Session::begin(&credentials, Duration::from_secs(30), Instant::now());
    let mut frames = Frames::default();
    let mut out = BytesMut::new();
    write(&bind, &mut out);
    let mut id = 0;
    loop {
        socket.write_all(&out).unwrap();
        out.clear();
        let mut piece = [0; 16 * 1024];
        // The SMSC closes when it has its figures.
        let Ok(read @ 1..) = socket.read(&mut piece) else {
            return;
        };
        frames.space().extend_from_slice(piece.get(..read).unwrap());
        while let Some(pdu) = frames.next().unwrap() {
            let reaction = session.heard(&pdu, Instant::now());
            if let Some(send) = &reaction.send {
                write(send, &mut out);
            }
            let Some(Event::Delivered {
                sequence,
                delivery: Some(delivery),
            }) = reaction.event
            else {
                continue;
            };
            write(&delivered(sequence, CommandStatus::EsmeRok), &mut out);
            id += 1;
            let source = delivery.source.clone();
            let letter = Letter {
                id: OutboxId(id),
                to: Address::phone(&source),
                text: REPLY.to_owned(),
                next_words: Vec::new(),
                parts_accepted: 0,
                attempt: 1,
            };
            for submission in submissions(&letter, &numbering, Alphabet::Gsm7).unwrap() {
                let sequence = session.sequence();
                write(
                    &command(CommandStatus::EsmeRok, sequence, submission),
                    &mut out,
                );
            }
        }
    }
}
