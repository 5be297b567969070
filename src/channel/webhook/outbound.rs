//! Replies, sent to the gateway.
//!
//! In: letters out of the outlet.
//! Out: requests; how each ended.
//! Promises one request at a time to one person, each with a name that stays the same however
//! often it is sent, and no redirect followed: a reply goes where the operator said.

use std::sync::Arc;
use std::time::Duration;

use axum::http::header;
use jiff::Timestamp;
use reqwest::{Client, ClientBuilder, Response, Url};

use crate::channel::calling;
use crate::channel::dispatch::{After, dispatch};
use crate::config::BodyFormat;
use crate::message::Letter;
use crate::post::{Lent, LinkState, Port};

use super::answer::{Answer, name_in};
use super::body::{FieldName, content_type, write};
use super::proof::Proof;
use super::settings::ReplyFields;

/// Requests under way at once.
pub(super) const PLACES: usize = 16;

const CONNECT_WITHIN: Duration = Duration::from_secs(10);
const ANSWER_WITHIN: Duration = Duration::from_secs(30);
/// A gateway's answer names the reply; nothing of it is needed that is longer.
const ANSWER_BYTES_MAX: usize = 64 * 1024;

/// What sends for one channel.
#[derive(Debug)]
pub(super) struct Outbound {
    pub(super) client: Client,
    pub(super) url: Url,
    pub(super) format: BodyFormat,
    pub(super) fields: ReplyFields,
    pub(super) proof: Arc<Proof>,
    /// The field of the gateway's own name for a reply, where it tells one.
    pub(super) name_field: Option<FieldName>,
    /// Whether receipts come that say which reply they are of.
    pub(super) receipts: ReceiptsFor,
}

/// Which replies receipts come for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum ReceiptsFor {
    All,
    None,
}

/// How a client for a gateway is made.
pub(super) fn client() -> ClientBuilder {
    Client::builder()
        .connect_timeout(CONNECT_WITHIN)
        .timeout(ANSWER_WITHIN)
        .user_agent(concat!("matone/", env!("CARGO_PKG_VERSION")))
}

/// Sends until the program is ending.
pub(super) async fn run(outbound: Arc<Outbound>, port: Port) {
    // Messages come in by the listener.
    let Port {
        outlet,
        state,
        ending,
        intake: _,
    } = port;
    let send = move |lent| Arc::clone(&outbound).send(lent, state.clone());
    dispatch(outlet, ending, send).await;
}

impl Outbound {
    async fn send(self: Arc<Self>, lent: Lent, state: LinkState) -> After {
        let letter = lent.letter();
        let name = self.name(letter);
        let (answer, theirs) = self.ask(letter, &name).await;
        state.set(answer.link());
        let after = match &answer {
            Answer::Busy { after, .. } | Answer::Broken { after, .. } => match after {
                Some(rest) => After::Rest(*rest),
                None => After::Back(None),
            },
            Answer::Accepted | Answer::Refused(_) => After::Go,
        };
        let names = match self.receipts {
            ReceiptsFor::All => vec![theirs.unwrap_or(name)],
            ReceiptsFor::None => Vec::new(),
        };
        lent.settle(answer.sending(names)).await;
        after
    }

    /// A name for a letter, the same however often it is sent. Its number alone would be another
    /// letter's too when a store begins anew.
    fn name(&self, letter: &Letter) -> String {
        let number = letter.id.0.to_string();
        let own = self
            .proof
            .name(&[&number, letter.to.number(), &letter.text]);
        format!("{number}-{own}")
    }

    /// The answer, and the gateway's own name for the letter.
    async fn ask(&self, letter: &Letter, name: &str) -> (Answer, Option<String>) {
        let fields = self
            .fields
            .with(letter.to.written(), &letter.text, name, &self.proof);
        let body = match write(self.format, fields) {
            Ok(body) => body,
            // Tried when the channel was opened.
            Err(crossed) => return (Answer::Refused(crossed.to_string()), None),
        };
        let now = Timestamp::now();
        let mut request = self
            .client
            .post(self.url.clone())
            .header(header::CONTENT_TYPE, content_type(self.format))
            .header("Idempotency-Key", name);
        for (header, value) in self.proof.headers(&body, now) {
            request = request.header(header, value);
        }
        let response = match request.body(body).send().await {
            Ok(response) => response,
            Err(error) => return (Answer::none(calling::reason("the gateway", &error)), None),
        };
        let answer = Answer::of(response.status(), response.headers(), now);
        match (&answer, &self.name_field) {
            (Answer::Accepted, Some(field)) => {
                let octets = beginning(response).await;
                (answer, name_in(self.format, &octets, field))
            }
            (Answer::Accepted, None)
            | (Answer::Busy { .. } | Answer::Broken { .. } | Answer::Refused(_), _) => {
                (answer, None)
            }
        }
    }
}

/// The beginning of a body. That the gateway has the reply is known already, whatever follows.
async fn beginning(mut response: Response) -> Vec<u8> {
    let mut octets = Vec::new();
    while let Ok(Some(chunk)) = response.chunk().await {
        octets.extend_from_slice(&chunk);
        if octets.len() > ANSWER_BYTES_MAX {
            break;
        }
    }
    octets
}
