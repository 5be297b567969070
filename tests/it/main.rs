//! All integration tests, one module a room.

// A test that panics fails, as it should.
#![allow(clippy::indexing_slicing, clippy::unwrap_used)]
// A JSON value has kinds that a comparison passes over.
#![allow(clippy::wildcard_enum_match_arm)]

mod chart;
mod cli;
mod corpus;
mod desk;
mod dialogue;
mod folder;
mod gateway;
mod golden;
mod languages;
mod locale;
mod modem;
mod parser;
mod post;
mod published;
mod published_boiling;
mod published_bulk;
mod published_chlorine;
mod published_contact_time;
mod published_methods;
mod published_solutions;
mod published_tables;
mod reply;
mod segments;
mod smpp;
mod store;
mod treatment;
mod treatment_adjust;
mod treatment_ageing;
mod treatment_choose;
mod treatment_dilute;
mod treatment_jar_test;
mod treatment_laws;
mod treatment_methods;
mod treatment_purity;
mod treatment_residual;
mod treatment_supply;
mod treatment_tank;
mod treatment_well;
