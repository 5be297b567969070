//! The SMPP channel: its states without I/O, the real program against an SMSC of another make, and
//! against a socket that says whatever it likes.

mod back_off;
mod codec;
mod deliveries;
mod exchange;
mod hostile;
mod letters;
mod program;
mod queue;
mod session;
mod settings;
mod smsc;
mod socket;
mod upkeep;
