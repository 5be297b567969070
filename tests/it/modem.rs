//! The modem channel: its octets, its session, and the whole service against a modem that is none.

mod at;
mod bench;
mod board;
mod octets;
mod pdus;
mod serve;
mod service;
mod session;
mod stick;
