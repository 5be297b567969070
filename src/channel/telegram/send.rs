//! Replies out: one message after the other in a chat, with the likely next words as buttons.
//!
//! In: letters.
//! Out: messages to the service; how each ended.

use std::sync::{Mutex, PoisonError};
use std::time::Duration;

use teloxide::Bot;
use teloxide::payloads::SendMessageSetters as _;
use teloxide::requests::Requester as _;
use teloxide::types::{ChatId, KeyboardButton, KeyboardMarkup, KeyboardRemove, ReplyMarkup};
use tokio::time::Instant;
use tokio_util::sync::CancellationToken;

use crate::channel::dispatch::After;
use crate::message::{Letter, Network, Sending};
use crate::post::Lent;

use super::pace::{Pace, Turn};
use super::text::messages;
use super::trouble::{Trouble, was_taken};

/// Letters in hand at once: as many as go in two seconds.
pub(super) const PLACES: usize = 64;
/// A wait that is waited here, so that what is behind in the chat stays behind.
const PATIENCE: Duration = Duration::from_secs(5);
const WAITS_MAX: u32 = 3;
/// What may not be sent to a chat yet comes again a little after what was to be sent before.
const BEHIND: Duration = Duration::from_millis(500);
/// Buttons side by side.
const ROW: usize = 2;

/// What sends for one channel.
pub(super) struct Sender {
    pub(super) bot: Bot,
    pub(super) pace: Mutex<Pace>,
    pub(super) ending: CancellationToken,
}

/// Why a message did not go.
enum Unsent {
    /// The program is ending.
    Ending,
    Trouble(Trouble),
}

impl Sender {
    /// Sends one letter.
    pub(super) async fn send(&self, lent: Lent) -> After {
        let (sending, after) = match self.messages(&lent).await {
            Ok(()) => (Sending::Accepted(Vec::new()), After::Go),
            Err(Unsent::Ending) => {
                let again = Sending::TryAgain {
                    reason: "the program is ending".to_owned(),
                    after: Some(Duration::ZERO),
                };
                (again, After::Go)
            }
            Err(Unsent::Trouble(trouble)) => {
                let after = match &trouble {
                    Trouble::Gone(_) => After::Go,
                    Trouble::Wait(wait) => After::Back(Some(*wait)),
                    Trouble::Moved(_)
                    | Trouble::Nonsense
                    | Trouble::OtherPoller(_)
                    | Trouble::Rejected
                    | Trouble::TokenRefused
                    | Trouble::Unreachable(_) => After::Back(None),
                };
                (trouble.sending(), after)
            }
        };
        lent.settle(sending).await;
        after
    }

    /// Sends the messages of a letter that an earlier attempt has not.
    async fn messages(&self, lent: &Lent) -> Result<(), Unsent> {
        let letter = lent.letter();
        let mut chat = chat(letter).map_err(Unsent::Trouble)?;
        let messages = messages(&letter.text);
        if messages.is_empty() {
            return Err(Unsent::Trouble(Trouble::Gone("there is no text")));
        }
        let last = messages.len();
        let sent = usize::try_from(letter.parts_accepted).unwrap_or(usize::MAX);
        for (number, text) in (1..).zip(messages).skip(sent) {
            let markup = (number == last).then(|| buttons(&letter.next_words));
            self.message(&mut chat, text, markup).await?;
            if number < last {
                let parts = u32::try_from(number).unwrap_or(u32::MAX);
                // Without the note, the letter's beginning is sent again if its end is.
                if let Err(error) = lent.part_accepted(parts).await {
                    tracing::error!(message = letter.id.0, %error, "a part could not be noted");
                }
            }
        }
        Ok(())
    }

    /// Sends one message when it is its turn; a group that has moved is followed once.
    async fn message(
        &self,
        chat: &mut i64,
        text: &str,
        markup: Option<ReplyMarkup>,
    ) -> Result<(), Unsent> {
        match self.attempt(*chat, text, markup.clone()).await {
            Err(Unsent::Trouble(Trouble::Moved(to))) => {
                *chat = to;
                self.attempt(*chat, text, markup).await
            }
            ended => ended,
        }
    }

    async fn attempt(
        &self,
        chat: i64,
        text: &str,
        markup: Option<ReplyMarkup>,
    ) -> Result<(), Unsent> {
        let mut waits = 0;
        loop {
            self.turn(chat).await?;
            let mut request = self.bot.send_message(ChatId(chat), text);
            if let Some(markup) = markup.clone() {
                request = request.reply_markup(markup);
            }
            let trouble = match request.await {
                Ok(_) => return Ok(()),
                Err(error) if was_taken(&error) => return Ok(()),
                Err(error) => Trouble::of(&error),
            };
            let Trouble::Wait(wait) = trouble else {
                return Err(Unsent::Trouble(trouble));
            };
            waits += 1;
            let until = Instant::now() + wait;
            if wait > PATIENCE || waits > WAITS_MAX {
                self.pace().hold(chat, until);
                return Err(Unsent::Trouble(trouble));
            }
            self.pace().defer(chat, until);
        }
    }

    /// Waits until it is a chat's turn.
    async fn turn(&self, chat: i64) -> Result<(), Unsent> {
        loop {
            let turn = self.pace().turn(chat, Instant::now());
            let wait = match turn {
                Turn::Now => return Ok(()),
                Turn::Held(wait) => return Err(Unsent::Trouble(Trouble::Wait(wait + BEHIND))),
                Turn::Wait(wait) => wait,
            };
            tokio::select! {
                () = tokio::time::sleep(wait) => {}
                () = self.ending.cancelled() => return Err(Unsent::Ending),
            }
        }
    }

    fn pace(&self) -> std::sync::MutexGuard<'_, Pace> {
        // Times of messages are whole whatever happened to who held them.
        self.pace.lock().unwrap_or_else(PoisonError::into_inner)
    }
}

fn chat(letter: &Letter) -> Result<i64, Trouble> {
    let number = match letter.to.network() {
        Network::Chat => letter.to.number().parse().ok(),
        Network::Phone => None,
    };
    number.ok_or(Trouble::Gone("it is no conversation of the service"))
}

/// The likely next words as buttons; without any, those of before go.
fn buttons(words: &[String]) -> ReplyMarkup {
    if words.is_empty() {
        return ReplyMarkup::KeyboardRemove(KeyboardRemove::new());
    }
    let rows = words
        .chunks(ROW)
        .map(|row| row.iter().map(KeyboardButton::new));
    let keyboard = KeyboardMarkup::new(rows)
        .resize_keyboard()
        .one_time_keyboard();
    ReplyMarkup::Keyboard(keyboard)
}
