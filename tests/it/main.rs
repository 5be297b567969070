//! All integration tests, one module a room.

mod cli;
mod corpus;
mod desk;
mod golden;
mod locale;
mod parser;
mod published;
mod published_boiling;
mod published_chlorine;
mod published_contact_time;
mod published_methods;
mod published_tables;
mod reply;
mod store;
mod treatment;
mod treatment_adjust;
mod treatment_choose;
mod treatment_laws;
mod treatment_methods;
mod treatment_purity;
