//! A modem that is none on a pseudo-terminal: it can be pulled out and put in again.

use std::fs::File;
use std::io::{ErrorKind, Read, Write};
use std::os::fd::OwnedFd;
use std::os::unix::ffi::OsStrExt;
use std::os::unix::fs::symlink;
use std::path::{Path, PathBuf};
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::{Arc, Mutex, MutexGuard};
use std::thread::JoinHandle;
use std::time::Duration;

use rustix::event::{PollFd, PollFlags, Timespec, poll};
use rustix::pty::{OpenptFlags, grantpt, openpt, ptsname, unlockpt};
use rustix::termios::{OptionalActions, tcgetattr, tcsetattr};

use super::board::Board;

/// Octets come in pieces of this size.
const PIECE: usize = 7;

pub(crate) struct Stick {
    /// Where it is found while it is plugged in.
    device: PathBuf,
    board: Arc<Mutex<Board>>,
    plugged: Option<Plugged>,
}

struct Plugged {
    master: Arc<OwnedFd>,
    /// Keeps the terminal as it is while nobody has it open.
    _terminal: File,
    pulled: Arc<AtomicBool>,
    thread: JoinHandle<()>,
}

impl Stick {
    /// Plugged in.
    pub(crate) fn new(folder: &Path, board: Board) -> Self {
        let mut stick = Self {
            device: folder.join("stick"),
            board: Arc::new(Mutex::new(board)),
            plugged: None,
        };
        stick.plug();
        stick
    }

    pub(crate) fn plug(&mut self) {
        let master = openpt(OpenptFlags::RDWR | OpenptFlags::NOCTTY).unwrap();
        grantpt(&master).unwrap();
        unlockpt(&master).unwrap();
        let name = ptsname(&master, Vec::new()).unwrap();
        let path = Path::new(std::ffi::OsStr::from_bytes(name.as_bytes())).to_owned();
        let terminal = File::options().read(true).write(true).open(&path).unwrap();
        // Nothing that we say comes back to us.
        let mut attributes = tcgetattr(&terminal).unwrap();
        attributes.make_raw();
        tcsetattr(&terminal, OptionalActions::Now, &attributes).unwrap();
        self.board().restart();
        let master = Arc::new(master);
        let pulled = Arc::new(AtomicBool::new(false));
        let thread = std::thread::spawn({
            let (master, board, pulled) = (
                Arc::clone(&master),
                Arc::clone(&self.board),
                Arc::clone(&pulled),
            );
            move || answer(&master, &board, &pulled)
        });
        symlink(&path, &self.device).unwrap();
        self.plugged = Some(Plugged {
            master,
            _terminal: terminal,
            pulled,
            thread,
        });
    }

    /// Pulls it out.
    pub(crate) fn pull(&mut self) {
        if let Some(plugged) = self.plugged.take() {
            let _ = std::fs::remove_file(&self.device);
            plugged.pulled.store(true, Ordering::Relaxed);
            plugged.thread.join().unwrap();
            assert_eq!(Arc::strong_count(&plugged.master), 1);
        }
    }

    pub(crate) fn board(&self) -> MutexGuard<'_, Board> {
        self.board.lock().unwrap()
    }

    /// A message comes from the network.
    pub(crate) fn receive(&self, line: &str) {
        let said = self.board().receive(line);
        self.say(&said);
    }

    /// Says something unasked.
    pub(crate) fn say(&self, said: &str) {
        write(&self.plugged.as_ref().unwrap().master, said.as_bytes());
    }
}

impl Drop for Stick {
    fn drop(&mut self) {
        self.pull();
    }
}

fn answer(master: &OwnedFd, board: &Mutex<Board>, pulled: &AtomicBool) {
    let mut file = File::from(master.try_clone().unwrap());
    let moment = Timespec::try_from(Duration::from_millis(20)).unwrap();
    let mut octets = [0; 256];
    while !pulled.load(Ordering::Relaxed) {
        let mut ready = [PollFd::new(master, PollFlags::IN)];
        if poll(&mut ready, Some(&moment)).unwrap_or(0) == 0 {
            continue;
        }
        let read = match file.read(&mut octets) {
            Ok(read) => read,
            Err(error) if error.kind() == ErrorKind::Interrupted => continue,
            Err(_) => {
                std::thread::sleep(Duration::from_millis(5));
                continue;
            }
        };
        for octet in &octets[..read] {
            let said = board.lock().unwrap().feed(*octet);
            write(master, said.as_bytes());
        }
    }
}

fn write(master: &OwnedFd, said: &[u8]) {
    let mut file = File::from(master.try_clone().unwrap());
    for piece in said.chunks(PIECE) {
        // Who reads no longer has pulled it out.
        let _ = file.write_all(piece);
    }
}
