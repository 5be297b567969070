//! How strong solutions for hands, floors and spills are published to be.
//!
//! Out: constants, for the question how strong a solution must be. The person, or their health
//! office, chooses: the sources differ by disease.

/// Hands and skin, percent (GTFCC cholera manual, appendix 9; IFRC; the Ebola study of 2016).
pub const HANDS_PERCENT: f64 = 0.05;
/// Floors, beds, latrines, percent (GTFCC appendix 9; IFRC).
pub const FLOORS_PERCENT: f64 = 0.2;
/// Blood, bodies and surfaces in viral haemorrhagic fever, percent (IFRC; US CDC, appendix E).
pub const BLOOD_PERCENT: f64 = 0.5;
/// Vomit and stools in cholera, percent (GTFCC appendix 9; IFRC).
pub const STOOLS_PERCENT: f64 = 2.0;
/// A stock solution to dose water from, percent (GTFCC appendix 14; WHO technical note 11).
pub const STOCK_PERCENT: f64 = 1.0;
