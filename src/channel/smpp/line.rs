//! A link's life: connected, bound, broken, connected again.
//!
//! The part with sockets and clock. It moves octets and waits; what they mean is for the session
//! to say, and what becomes of messages for the traffic.

use std::future::Future;
use std::time::{Duration, Instant};

use jiff::Timestamp;
use rusmpp::{Command, CommandStatus};
use tokio::io::{AsyncReadExt, AsyncWriteExt, ReadHalf, WriteHalf};
use tokio_util::bytes::BytesMut;
use tokio_util::sync::CancellationToken;

use crate::message::ChannelName;
use crate::post::{Link, LinkState, Port};

use super::Terms;
use super::back_off::BackOff;
use super::connect::Wire;
use super::frame::{Frames, command, write};
use super::session::{Event, Over, Reaction, Session, delivered, unframed};
use super::traffic::Traffic;

/// Octets that wait to be sent; while there are more, nothing is read that would be answered.
const OUT_OCTETS_MAX: usize = 64 * 1024;
/// While too many deliveries are on their way to the disk nothing is read for so long; then more
/// of them are refused, and answers to our own messages are heard again.
const STANDSTILL_MAX: Duration = Duration::from_secs(5);
/// What is under way when the program is ending has so long.
const WIND_UP: Duration = Duration::from_secs(3);
/// The last words have so long.
const LAST_WORDS: Duration = Duration::from_secs(1);

/// Runs until the program is ending.
pub(super) async fn run(channel: ChannelName, terms: Terms, port: Port) {
    let Port {
        intake,
        outlet,
        state,
        ending,
    } = port;
    let mut traffic = Traffic::new(channel, &terms, intake, outlet);
    let mut back_off = BackOff::default();
    while !ending.is_cancelled() {
        let connecting = terms.host.connect();
        let Some(connected) = meanwhile(&mut traffic, &ending, connecting).await else {
            break;
        };
        let (held, reason) = match connected {
            Ok(wire) => {
                let line = Line::begin(&terms, wire);
                let (held, over) = line.carry(&mut traffic, &state, &ending).await;
                (held, over.to_string())
            }
            Err(error) => (
                Duration::ZERO,
                format!("it cannot be connected to: {error}"),
            ),
        };
        let broken = traffic.queue.broken();
        traffic.carry_out(broken);
        if ending.is_cancelled() {
            break;
        }
        state.set(Link::Retrying(reason));
        let wait = tokio::time::sleep(back_off.after(held, random()));
        if meanwhile(&mut traffic, &ending, wait).await.is_none() {
            break;
        }
    }
    traffic.stop();
    let winding_up = async {
        while !traffic.is_idle() {
            traffic.next().await;
        }
    };
    // What is not noted by then is noted as sent again after the next start.
    let _ = tokio::time::timeout(LAST_WORDS, winding_up).await;
}

/// Waits for something while letters are taken and given back; nothing when the program is ending.
async fn meanwhile<T>(
    traffic: &mut Traffic,
    ending: &CancellationToken,
    something: impl Future<Output = T>,
) -> Option<T> {
    let mut something = std::pin::pin!(something);
    loop {
        tokio::select! {
            done = &mut something => return Some(done),
            // Answers to deliveries of a session that is gone go nowhere.
            _ = traffic.next() => {}
            () = ending.cancelled() => return None,
        }
    }
}

/// A connection and the session on it.
struct Line {
    reader: ReadHalf<Box<dyn Wire>>,
    writer: WriteHalf<Box<dyn Wire>>,
    frames: Frames,
    out: BytesMut,
    /// Whether what was written may still wait in the encryption's own buffer.
    unflushed: bool,
    session: Session,
    /// When the session began, in milliseconds since 1970: it tells deliveries of one from those
    /// of another.
    begun: i64,
    bound_at: Option<Instant>,
    /// Since when no delivery has had room.
    full_since: Option<Instant>,
    /// When what is under way is left to itself: the program is ending.
    wind_up_by: Option<Instant>,
    unbinding: bool,
}

impl Line {
    fn begin(terms: &Terms, wire: Box<dyn Wire>) -> Self {
        let (reader, writer) = tokio::io::split(wire);
        let now = Instant::now();
        let (session, bind) = Session::begin(&terms.credentials, terms.enquire_every, now);
        let mut out = BytesMut::new();
        write(&bind, &mut out);
        Self {
            reader,
            writer,
            frames: Frames::default(),
            out,
            unflushed: false,
            session,
            begun: Timestamp::now().as_millisecond(),
            bound_at: None,
            full_since: None,
            wind_up_by: None,
            unbinding: false,
        }
    }

    /// Carries messages until the session is over; how long it was bound, and why it ended.
    async fn carry(
        mut self,
        traffic: &mut Traffic,
        state: &LinkState,
        ending: &CancellationToken,
    ) -> (Duration, Over) {
        let over = loop {
            match self.step(traffic, state, ending).await {
                Ok(()) => {}
                Err(over) => break over,
            }
        };
        let last_words = async {
            self.writer.write_all_buf(&mut self.out).await?;
            self.writer.shutdown().await
        };
        // Who has gone hears nothing.
        let _ = tokio::time::timeout(LAST_WORDS, last_words).await;
        let held = self.bound_at.map_or(Duration::ZERO, |at| at.elapsed());
        (held, over)
    }

    /// Does all that can be done at once, then waits for more.
    async fn step(
        &mut self,
        traffic: &mut Traffic,
        state: &LinkState,
        ending: &CancellationToken,
    ) -> Result<(), Over> {
        let now = Instant::now();
        let wants_more = self.hear_all(traffic, state, now)?;
        traffic.begin_notes();
        self.submit(traffic, now);
        if let Some(by) = self.wind_up_by
            && !self.unbinding
            && (traffic.is_idle() || now >= by || !self.session.is_bound())
        {
            self.unbinding = true;
            let unbind = self.session.unbind(now);
            write(&unbind, &mut self.out);
        }
        let reaction = self.session.tick(now);
        self.react(reaction, traffic, state, now)?;
        let wake_at = self.wake_at(now);
        tokio::select! {
            () = ending.cancelled(), if self.wind_up_by.is_none() => {
                self.wind_up_by = Some(Instant::now() + WIND_UP);
                traffic.stop();
            }
            taken = traffic.next() => {
                if let Some(taken) = taken
                    && taken.session == self.begun
                {
                    self.send(&delivered(taken.sequence, taken.status));
                }
            }
            read = self.reader.read_buf(self.frames.space()), if wants_more => match read {
                Ok(0) => return Err(Over::Closed),
                Ok(_) => {}
                Err(error) => return Err(Over::Io(error.kind())),
            },
            passed = pass_on(&mut self.writer, &mut self.out),
                if !self.out.is_empty() || self.unflushed =>
            {
                match passed {
                    Ok(Passed::All) => self.unflushed = false,
                    Ok(Passed::Some) => self.unflushed = true,
                    Err(error) => return Err(Over::Io(error.kind())),
                }
            }
            () = tokio::time::sleep_until(wake_at.into()) => {}
        }
        Ok(())
    }

    fn wake_at(&self, now: Instant) -> Instant {
        let mut wake_at = self.session.wake_at();
        if let Some(until) = self.full_since.map(|since| since + STANDSTILL_MAX)
            && until > now
        {
            wake_at = wake_at.min(until);
        }
        match self.wind_up_by {
            Some(by) if !self.unbinding => wake_at.min(by),
            Some(_) | None => wake_at,
        }
    }

    /// Hears what has come, as far as there is room for what follows from it; whether more octets
    /// are wanted.
    fn hear_all(
        &mut self,
        traffic: &mut Traffic,
        state: &LinkState,
        now: Instant,
    ) -> Result<bool, Over> {
        while self.out.len() < OUT_OCTETS_MAX && self.is_open(traffic, now) {
            match self.frames.next() {
                Ok(Some(pdu)) => {
                    let reaction = self.session.heard(&pdu, now);
                    self.react(reaction, traffic, state, now)?;
                }
                Ok(None) => return Ok(true),
                Err(error) => {
                    self.send(&unframed());
                    return Err(error.into());
                }
            }
        }
        Ok(false)
    }

    /// Whether PDUs are heard: there is room for deliveries, or there has been none for too long.
    fn is_open(&mut self, traffic: &Traffic, now: Instant) -> bool {
        if traffic.has_room() {
            self.full_since = None;
            return true;
        }
        let since = *self.full_since.get_or_insert(now);
        now >= since + STANDSTILL_MAX
    }

    fn submit(&mut self, traffic: &mut Traffic, now: Instant) {
        if !self.session.is_bound() || self.wind_up_by.is_some() {
            return;
        }
        while self.out.len() < OUT_OCTETS_MAX && traffic.queue.can_submit(now) {
            let sequence = self.session.sequence();
            if let Some(segment) = traffic.queue.submit(sequence, now) {
                self.send(&command(CommandStatus::EsmeRok, sequence, segment));
            }
        }
    }

    fn react(
        &mut self,
        reaction: Reaction,
        traffic: &mut Traffic,
        state: &LinkState,
        now: Instant,
    ) -> Result<(), Over> {
        if let Some(command) = &reaction.send {
            self.send(command);
        }
        match reaction.event {
            Some(Event::Answered {
                sequence,
                status,
                name,
            }) => {
                let outcome = traffic.queue.answered(sequence, status, name, now);
                traffic.carry_out(outcome);
                if status == CommandStatus::EsmeRinvbndsts {
                    return Err(Over::NotBound);
                }
            }
            Some(Event::Bound) => {
                self.bound_at = Some(now);
                state.set(Link::Up);
            }
            // What is not answered is brought again in the next session.
            Some(Event::Delivered { .. }) if self.wind_up_by.is_some() => {}
            Some(Event::Delivered { sequence, delivery }) => {
                if let Some(status) = traffic.deliver(self.begun, sequence, delivery.as_deref()) {
                    self.send(&delivered(sequence, status));
                }
            }
            Some(Event::Over(over)) => return Err(over),
            None => {}
        }
        Ok(())
    }

    fn send(&mut self, command: &Command) {
        write(command, &mut self.out);
    }
}

/// How far octets got.
enum Passed {
    /// Out of our hands.
    All,
    /// Some of them, or into a buffer.
    Some,
}

/// Passes octets on; given up in the middle, none is lost.
async fn pass_on(
    writer: &mut WriteHalf<Box<dyn Wire>>,
    out: &mut BytesMut,
) -> std::io::Result<Passed> {
    if out.is_empty() {
        writer.flush().await?;
        return Ok(Passed::All);
    }
    match writer.write_buf(out).await? {
        0 => Err(std::io::ErrorKind::WriteZero.into()),
        _ => Ok(Passed::Some),
    }
}

/// Without random bytes attempts are not spread; that is all.
fn random() -> u16 {
    let mut bytes = [0; 2];
    match getrandom::fill(&mut bytes) {
        Ok(()) => u16::from_le_bytes(bytes),
        Err(_) => 0,
    }
}
