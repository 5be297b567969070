//! Channels that speak HTTP, against fake services of our own on this machine, with the real
//! program in between.

mod fake_bot;
mod fake_gateway;
mod faults;
mod restore;
mod served;
mod telegram;
mod webhook;
mod webhook_replies;
mod webhook_settings;
