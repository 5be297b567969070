//! One message on its way to the network.

use std::time::Instant;

use super::super::command::{CTRL_Z, Command, ESCAPE, sending_max};
use super::super::pdu::Submit;
use super::super::refusal::Prospect;
use super::{Action, Answer, Session};

/// A message on its way.
#[derive(Debug)]
pub(super) struct Outgoing {
    submit: Submit,
    stage: Stage,
    /// The modem's number of it, once the network has it.
    pub(super) reference: Option<u8>,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Stage {
    /// The modem has all of it.
    Given,
    /// The modem does not have it.
    Ours,
}

/// Why a message was not sent.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum NotSent {
    /// It may be later.
    Later(String),
    /// It never will be.
    Never(String),
}

impl Outgoing {
    pub(super) const fn new(submit: Submit) -> Self {
        Self {
            submit,
            stage: Stage::Ours,
            reference: None,
        }
    }

    pub(super) fn line(&self) -> String {
        format!("AT+CMGS={}", self.submit.length())
    }
}

impl Session {
    /// Whether the modem holds a message of which the network has not said that it has it.
    #[must_use]
    pub fn is_sending(&self) -> bool {
        self.outgoing
            .as_ref()
            .is_some_and(|outgoing| outgoing.stage == Stage::Given)
    }

    /// Whether the modem was told of a message and does not have it yet.
    #[must_use]
    pub fn awaits_prompt(&self) -> bool {
        !self.is_sending()
            && self
                .asked
                .is_some_and(|asked| asked.command == Command::Send)
    }

    pub(super) fn is_taken(&self) -> bool {
        self.outgoing
            .as_ref()
            .is_some_and(|outgoing| outgoing.reference.is_some())
    }

    /// The modem waits for the message.
    pub(super) fn prompted(&mut self, now: Instant) {
        if let Some(asked) = &mut self.asked
            && asked.command == Command::Send
            && let Some(outgoing) = &mut self.outgoing
            && outgoing.stage == Stage::Ours
        {
            outgoing.stage = Stage::Given;
            asked.until = now + sending_max();
            let line = outgoing.submit.line() + &CTRL_Z.to_string();
            self.actions.push(Action::Write(line.as_str().into()));
        }
    }

    pub(super) fn sent(&mut self, answer: Answer, now: Instant) {
        let refusal = match answer {
            Answer::Done => return self.give_up_sending(""),
            Answer::Refused(refusal) => refusal,
        };
        self.outgoing = None;
        let reason = refusal.to_string();
        let not_sent = match refusal.prospect() {
            Prospect::Later => NotSent::Later(reason),
            Prospect::Never => NotSent::Never(reason),
        };
        self.actions.push(Action::Sent(Err(not_sent)));
        if refusal.is_of_card() {
            self.greet_card(now);
        } else {
            // The network may be lost.
            self.check_at = now;
        }
    }

    /// The modem has said nothing for long.
    pub(super) fn unanswered(&mut self) {
        if !self.is_sending() {
            self.actions.push(Action::Write(ESCAPE.into()));
        }
        self.give_up_sending("the modem did not answer");
    }

    /// Ends what was begun: well, if the network has it.
    pub(super) fn give_up_sending(&mut self, why: &str) {
        if let Some(outgoing) = self.outgoing.take() {
            let sent = outgoing
                .reference
                .ok_or_else(|| NotSent::Later(why.to_owned()));
            self.actions.push(Action::Sent(sent));
        }
    }
}
