//! The serial line: octets and time between the device and its session.
//!
//! In: a device that may be pulled out at any moment, orders, what became of what was found.
//! Out: what the session finds, how orders ended, how the link stands.
//! Promises to open the device again for as long as the program runs.

use std::collections::VecDeque;
use std::io;
use std::path::PathBuf;
use std::time::{Duration, Instant};

use jiff::Timestamp;
use serial2_tokio::SerialPort;
use tokio::sync::{mpsc, oneshot};
use tokio_util::sync::CancellationToken;

use crate::message::ChannelName;
use crate::post::{Link, LinkState};

use super::at::Splitter;
use super::command::ESCAPE;
use super::inbox::{FoundIn, SettledIn};
use super::outbox::Order;
use super::pin::Note;
use super::session::{Action, Event, Found, Key, NotSent, Session, Signal, Taken};

/// A modem that takes no octets for so long is none.
const WRITE_MAX: Duration = Duration::from_secs(5);
/// What the network is being given when the program ends may take so long.
const FINISH_WITHIN: Duration = Duration::from_secs(4);
const READ_BYTES: usize = 1024;
/// Nothing read, again and again: the device is gone. (A line that is merely quiet does not say
/// that there is something to read.)
const EMPTY_READS_MAX: u32 = 8;
const AFTER_EMPTY_READ: Duration = Duration::from_millis(20);
const FIRST_WAIT: Duration = Duration::from_secs(1);
/// The wait while the device is there and no use.
const LONGEST_WAIT: Duration = Duration::from_secs(60);
/// The wait while it is not there: to look costs nothing, and somebody stands beside it.
const LONGEST_WAIT_FOR_DEVICE: Duration = Duration::from_secs(5);

/// A message that has waited for the line for so long is given back: it may be too old by now.
const ORDER_AGE_MAX: Duration = Duration::from_secs(120);

/// What there is for the SIM card.
#[derive(Debug)]
pub(super) struct Card {
    pub(super) key: Key,
    /// Where it is noted that the card refused the PIN.
    pub(super) note: Option<Note>,
}

/// The line.
#[derive(Debug)]
pub(super) struct Line {
    pub(super) name: ChannelName,
    pub(super) device: PathBuf,
    pub(super) baud: u32,
    pub(super) card: Card,
    pub(super) state: LinkState,
    pub(super) ending: CancellationToken,
    pub(super) orders: mpsc::Receiver<Order>,
    pub(super) found: mpsc::Sender<FoundIn>,
    pub(super) settled: mpsc::Receiver<SettledIn>,
}

/// One opening of the device.
struct Opened {
    port: SerialPort,
    session: Session,
    number: u64,
    began: Timestamp,
    splitter: Splitter,
    /// Who waits for the message that is being sent.
    sender: Option<oneshot::Sender<Result<u8, NotSent>>>,
    signal: Option<Signal>,
    empty_reads: u32,
    /// Nothing more is begun, and everything is over by then.
    finish_by: Option<Instant>,
}

/// Why the device is closed.
enum Closed {
    /// The program is ending.
    Ending,
    /// It is of no use.
    Lost(String),
}

/// How the device went before it was lost.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Went {
    Badly,
    Well,
}

impl Line {
    /// Opens the device, again and again, until the program is ending.
    pub(super) async fn keep_open(mut self) {
        let mut wait = FIRST_WAIT;
        for number in 0.. {
            let longest = match SerialPort::open(&self.device, self.baud) {
                Ok(port) => {
                    let (closed, went) = self.serve(port, number).await;
                    match closed {
                        Closed::Ending => return,
                        Closed::Lost(reason) => self.state.set(Link::Retrying(reason)),
                    }
                    if went == Went::Well {
                        wait = FIRST_WAIT;
                    }
                    LONGEST_WAIT
                }
                Err(error) => {
                    let device = self.device.display();
                    self.state.set(Link::Retrying(format!(
                        "{device} cannot be opened: {error}"
                    )));
                    if error.kind() == io::ErrorKind::NotFound {
                        LONGEST_WAIT_FOR_DEVICE
                    } else {
                        LONGEST_WAIT
                    }
                }
            };
            wait = wait.min(longest);
            tokio::select! {
                () = tokio::time::sleep(spread(wait)) => {}
                () = self.ending.cancelled() => return,
            }
            wait = wait.saturating_mul(2);
        }
    }

    async fn serve(&mut self, port: SerialPort, number: u64) -> (Closed, Went) {
        let now = Instant::now();
        let mut opened = Opened {
            port,
            session: Session::new(self.card.key.clone(), now),
            number,
            began: Timestamp::now(),
            splitter: Splitter::default(),
            sender: None,
            signal: None,
            empty_reads: 0,
            finish_by: None,
        };
        let mut went = Went::Badly;
        let closed = loop {
            match self.step(&mut opened).await {
                Ok(()) => {}
                Err(closed) => break closed,
            }
            if opened.session.can_send() {
                went = Went::Well;
            }
        };
        (closed, went)
    }

    /// Waits for one thing to happen and does what follows.
    async fn step(&mut self, opened: &mut Opened) -> Result<(), Closed> {
        let now = Instant::now();
        if let Some(finish_by) = opened.finish_by
            && (finish_by <= now || !opened.session.is_sending())
        {
            return Err(Closed::Ending);
        }
        let wake_at = opened.session.wake_at(now);
        let wake_at = opened.finish_by.map_or(wake_at, |end| end.min(wake_at));
        let takes_orders = opened.finish_by.is_none() && opened.session.can_send();
        let mut octets = [0; READ_BYTES];
        let mut events = VecDeque::new();
        tokio::select! {
            read = opened.port.read(&mut octets) => {
                let read = opened.read(read).await?;
                let tokens = opened.splitter.feed(octets.get(..read).unwrap_or_default());
                events.extend(tokens.into_iter().map(Event::Heard));
            }
            Some(order) = self.orders.recv(), if takes_orders => {
                events.extend(opened.take(order));
            }
            Some(settled) = self.settled.recv() => {
                // What an earlier session found is found again.
                if settled.session == opened.number {
                    events.push_back(Event::Kept(settled.ticket, settled.taken));
                }
            }
            () = tokio::time::sleep_until(wake_at.into()) => events.push_back(Event::Tick),
            () = self.ending.cancelled(), if opened.finish_by.is_none() => {
                if opened.session.awaits_prompt() {
                    self.write(opened, ESCAPE.as_bytes()).await?;
                }
                opened.finish_by = Some(Instant::now() + FINISH_WITHIN);
            }
        }
        while let Some(event) = events.pop_front() {
            for action in opened.session.handle(event, Instant::now()) {
                events.extend(self.act(action, opened).await?);
            }
        }
        Ok(())
    }

    /// Does something; what that leads to.
    async fn act(&mut self, action: Action, opened: &mut Opened) -> Result<Option<Event>, Closed> {
        match action {
            Action::Close(reason) => return Err(Closed::Lost(reason)),
            Action::Found(found) => return Ok(self.hand_on(found, opened)),
            Action::Link(link) => self.state.set(link),
            Action::PinRefused => self.note_refusal(),
            Action::Sent(sent) => {
                if let Some(sender) = opened.sender.take() {
                    // Who no longer waits does not need to know.
                    let _ = sender.send(sent);
                }
            }
            Action::Signal(signal) => {
                if opened.signal.replace(signal) != Some(signal) {
                    let signal: &str = signal.into();
                    tracing::info!(channel = %self.name, signal, "how the network is heard");
                }
            }
            Action::Write(octets) => self.write(opened, &octets).await?,
        }
        Ok(None)
    }

    async fn write(&self, opened: &Opened, octets: &[u8]) -> Result<(), Closed> {
        let write = opened.port.write_all(octets);
        match tokio::time::timeout(WRITE_MAX, write).await {
            Ok(written) => written.map_err(broke),
            Err(_) => Err(Closed::Lost("the device takes no octets".to_owned())),
        }
    }

    fn hand_on(&self, found: Found, opened: &Opened) -> Option<Event> {
        let ticket = found.ticket;
        let found_in = FoundIn {
            session: opened.number,
            began: opened.began,
            found,
        };
        self.found.try_send(found_in).err()?;
        if ticket.is_none() {
            tracing::error!(
                channel = %self.name,
                "a message is lost: the modem does not keep it and the inbox takes no more"
            );
        }
        ticket.map(|ticket| Event::Kept(ticket, Taken::No))
    }

    fn note_refusal(&mut self) {
        let Key::Untried(pin) = std::mem::replace(&mut self.card.key, Key::Refused) else {
            return;
        };
        let Some(note) = &self.card.note else {
            return;
        };
        match note.write(&pin) {
            Ok(()) => tracing::error!(
                channel = %self.name,
                note = %note.0.display(),
                "that the SIM refused the PIN is noted; for another SIM with the same PIN remove \
                 the note"
            ),
            Err(error) => tracing::error!(
                channel = %self.name,
                %error,
                "that the SIM refused the PIN cannot be noted: do not start the program again \
                 before the PIN is right"
            ),
        }
    }
}

impl Opened {
    /// How much was read; nothing over and over is the end.
    async fn read(&mut self, read: io::Result<usize>) -> Result<usize, Closed> {
        let read = read.map_err(broke)?;
        if read > 0 {
            self.empty_reads = 0;
            return Ok(read);
        }
        self.empty_reads += 1;
        if self.empty_reads >= EMPTY_READS_MAX {
            return Err(Closed::Lost("the device is gone".to_owned()));
        }
        tokio::time::sleep(AFTER_EMPTY_READ).await;
        Ok(0)
    }

    fn take(&mut self, order: Order) -> Option<Event> {
        if order.made.elapsed() > ORDER_AGE_MAX {
            return None;
        }
        self.sender = Some(order.done);
        Some(Event::Send(order.submit))
    }
}

fn broke(error: io::Error) -> Closed {
    Closed::Lost(format!("the line broke: {error}"))
}

/// Up to a quarter longer, so that two modems that lost their hub do not come in step.
fn spread(wait: Duration) -> Duration {
    let mut bytes = [0; 2];
    // Without random octets nothing is spread; that is all.
    let random = match getrandom::fill(&mut bytes) {
        Ok(()) => f64::from(u16::from_le_bytes(bytes)) / 65_536.0,
        Err(_) => 0.0,
    };
    wait + wait.mul_f64(random / 4.0)
}
