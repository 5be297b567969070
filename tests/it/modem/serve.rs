//! `matone serve` with a modem and nothing else, in a folder of its own.

use std::fs::File;
use std::io::{Read, Write};
use std::net::{SocketAddr, TcpListener, TcpStream};
use std::path::{Path, PathBuf};
use std::process::{Child, Command, ExitStatus};
use std::time::{Duration, Instant};

use rustix::process::{Pid, Signal, kill_process};

use super::board::Board;
use super::stick::Stick;

/// Nothing that is waited for takes longer, even on a slow machine with much else to do.
const AT_MOST: Duration = Duration::from_secs(90);

pub(crate) struct Serve {
    pub(crate) stick: Stick,
    pub(crate) folder: Folder,
    address: SocketAddr,
    child: Child,
    pin: Option<&'static str>,
}

/// A folder that goes when it is no longer used.
pub(crate) struct Folder(pub(crate) PathBuf);

impl Folder {
    fn new(name: &str) -> Self {
        let path = std::env::temp_dir().join(format!("matone-{name}-{}", std::process::id()));
        let _ = std::fs::remove_dir_all(&path);
        std::fs::create_dir_all(&path).unwrap();
        Self(path)
    }
}

impl Drop for Folder {
    fn drop(&mut self) {
        let _ = std::fs::remove_dir_all(&self.0);
    }
}

impl Serve {
    /// With a modem.
    pub(crate) fn with(name: &str, board: Board) -> Self {
        Self::with_pin(name, board, None)
    }

    /// With a modem, and a PIN for its card.
    pub(crate) fn with_pin(name: &str, board: Board, pin: Option<&'static str>) -> Self {
        let folder = Folder::new(&format!("modem-{name}"));
        let stick = Stick::new(&folder.0, board);
        let address = free_address();
        let mut config = format!(
            "[store]\npath = \"matone.db\"\n\n[http]\nlisten = \"{address}\"\n\n[[channel]]\n\
             kind = \"modem\"\nname = \"stick\"\ndevice = \"{}\"\n",
            folder.0.join("stick").display()
        );
        if let Some(pin) = pin {
            std::fs::write(folder.0.join("pin"), format!("{pin}\n")).unwrap();
            config += "pin_file = \"pin\"\n";
        }
        std::fs::write(folder.0.join("matone.toml"), config).unwrap();
        let child = start(&folder.0);
        Self {
            stick,
            folder,
            address,
            child,
            pin,
        }
    }

    pub(crate) fn start_again(&mut self) {
        self.child = start(&self.folder.0);
    }

    /// As a power cut would.
    pub(crate) fn kill(&mut self) {
        self.child.kill().unwrap();
        self.child.wait().unwrap();
    }

    /// Asks it to end, and waits until it has.
    pub(crate) fn end(&mut self) -> ExitStatus {
        self.ask_to_end();
        self.ended()
    }

    pub(crate) fn ask_to_end(&self) {
        kill_process(Pid::from_child(&self.child), Signal::TERM).unwrap();
    }

    /// Waits until it has ended.
    pub(crate) fn ended(&mut self) -> ExitStatus {
        self.child.wait().unwrap()
    }

    /// Waits until something is so.
    pub(crate) fn until(&self, what: &str, is_so: impl Fn(&Self) -> bool) {
        let began = Instant::now();
        while !is_so(self) {
            assert!(
                began.elapsed() < AT_MOST,
                "{what}: not so\n{}\n{:?}",
                self.log(),
                self.stick.board().commands
            );
            std::thread::sleep(Duration::from_millis(20));
        }
    }

    pub(crate) fn until_sent(&self, count: usize) {
        self.until("sent", |serve| serve.stick.board().sent.len() >= count);
    }

    pub(crate) fn until_card_is_empty(&self) {
        self.until("the card is empty", |serve| {
            serve.stick.board().kept.is_empty()
        });
    }

    pub(crate) fn until_up(&self) {
        self.until("up", |serve| serve.figure("matone_channel_up") == Some(1));
    }

    pub(crate) fn until_down(&self) {
        self.until("down", |serve| serve.figure("matone_channel_up") == Some(0));
    }

    /// A figure of the channel's; with a reason, `matone_messages_set_aside_total reason`.
    pub(crate) fn figure(&self, name: &str) -> Option<u64> {
        let (name, reason) = name.split_once(' ').unwrap_or((name, ""));
        let page = self.get("/metrics").1;
        let line = page.lines().find(|line| {
            line.starts_with(&format!("{name}{{"))
                && line.contains("channel=\"stick\"")
                && line.contains(reason)
        })?;
        line.rsplit(' ').next()?.parse().ok()
    }

    /// Status and body.
    pub(crate) fn get(&self, path: &str) -> (u16, String) {
        let answer = TcpStream::connect(self.address).and_then(|mut stream| {
            stream.set_read_timeout(Some(Duration::from_secs(10)))?;
            write!(stream, "GET {path} HTTP/1.0\r\nHost: localhost\r\n\r\n")?;
            let mut answer = String::new();
            stream.read_to_string(&mut answer)?;
            Ok(answer)
        });
        let Ok(answer) = answer else {
            return (0, String::new());
        };
        let (head, body) = answer.split_once("\r\n\r\n").unwrap_or((&answer, ""));
        let status = head.split(' ').nth(1).and_then(|code| code.parse().ok());
        (status.unwrap_or(0), body.to_owned())
    }

    pub(crate) fn log(&self) -> String {
        std::fs::read_to_string(self.folder.0.join("log")).unwrap_or_default()
    }
}

impl Drop for Serve {
    fn drop(&mut self) {
        let _ = self.child.kill();
        let _ = self.child.wait();
        if std::thread::panicking() {
            return;
        }
        let log = self.log();
        let private = ["2557", "0700", "gallon", "bleach", "mL"];
        for word in private.into_iter().chain(self.pin) {
            let bare = without_times(&log);
            assert!(!bare.contains(word), "{word} in the log\n{bare}");
        }
    }
}

/// A log without its times, in which every number occurs sooner or later.
fn without_times(log: &str) -> String {
    log.lines()
        .map(|line| line.split_once(' ').map_or(line, |(_, rest)| rest))
        .collect::<Vec<_>>()
        .join("\n")
}

fn start(folder: &Path) -> Child {
    let log = File::options()
        .create(true)
        .append(true)
        .open(folder.join("log"))
        .unwrap();
    Command::new(env!("CARGO_BIN_EXE_matone"))
        .args(["serve", "--config"])
        .arg(folder.join("matone.toml"))
        .env("MATONE_LOG", "warn,matone=trace")
        .stdout(log.try_clone().unwrap())
        .stderr(log)
        .spawn()
        .unwrap()
}

fn free_address() -> SocketAddr {
    TcpListener::bind("127.0.0.1:0")
        .and_then(|listener| listener.local_addr())
        .unwrap()
}
