//! matone answers, by SMS or chat, how to make the water at hand safe to drink.
//!
//! The rooms, in the order a message walks through them:
//!
//! - [`message`]: what comes in and what goes out, whatever carries it.
//! - [`channel`]: one network each.
//! - [`sms`]: what SMS carries: alphabets, and long messages in parts.
//! - [`service`]: the channels, the desk and the store, joined and run.
//! - [`post`]: the inbox and the outbox that all channels share.
//! - [`http`]: health, figures, and what others answer under the program's listener.
//! - [`privacy`]: what keeps people unrecognisable in the store.
//! - [`cli`]: the command line; one file a command.
//! - [`desk`]: joins the rooms of the core for one message.
//! - [`parser`]: text and a lexicon in, a request and its doubts out.
//! - [`request`], [`quantity`]: what the parser and the core agree on.
//! - [`dialogue`]: what is missing, what was asked, what a message hangs on.
//! - [`treatment`]: published tables, doses, waits, refusals.
//! - [`reply`]: words and segments.
//! - [`chart`]: doses for a clinic's wall, as a page.
//! - [`contract`]: the JSON twins.
//! - [`store`]: what is remembered.
//! - [`locale`]: the languages, which are data.

pub mod channel;
pub mod chart;
pub mod cli;
pub mod config;
pub mod contract;
pub mod desk;
pub mod dialogue;
pub mod http;
pub mod locale;
pub mod message;
pub mod parser;
pub mod post;
pub mod privacy;
pub mod quantity;
pub mod reply;
pub mod request;
pub mod service;
pub mod sms;
pub mod store;
pub mod treatment;
