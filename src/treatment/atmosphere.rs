//! The boiling point of water at an altitude.
//!
//! In: metres. Out: hPa and °C.
//! Promises the standard atmosphere's pressure up to its tropopause and the saturation
//! temperature to a hundredth of a degree. Does not know the weather: a deep low lowers the
//! boiling point by about a degree.

use crate::quantity::Altitude;

/// ICAO standard atmosphere, Doc 7488: pressure and temperature at sea level, lapse rate,
/// gravity, gas constant of dry air. Recalled; checked against a printed table of
/// pressure-altitude pairs.
const SEA_LEVEL_HPA: f64 = 1013.25;
const SEA_LEVEL_K: f64 = 288.15;
const LAPSE_K_PER_M: f64 = 0.006_5;
const GRAVITY_M_PER_S2: f64 = 9.806_65;
const GAS_J_PER_KG_K: f64 = 287.052_87;

/// Standard pressure at an altitude, in hPa.
#[must_use]
pub fn standard_pressure(altitude: Altitude) -> f64 {
    let ratio = 1.0 - LAPSE_K_PER_M * altitude.metres() / SEA_LEVEL_K;
    SEA_LEVEL_HPA * ratio.powf(GRAVITY_M_PER_S2 / (GAS_J_PER_KG_K * LAPSE_K_PER_M))
}

/// Coefficients of the saturation equation, IAPWS R7-97(2012), table 34. Recalled; checked
/// against the release's own verification values and against two other programs.
const N1: f64 = 0.116_705_214_527_67e4;
const N2: f64 = -0.724_213_167_032_06e6;
const N3: f64 = -0.170_738_469_400_92e2;
const N4: f64 = 0.120_208_247_024_70e5;
const N5: f64 = -0.323_255_503_223_33e7;
const N6: f64 = 0.149_151_086_135_30e2;
const N7: f64 = -0.482_326_573_615_91e4;
const N8: f64 = 0.405_113_405_420_57e6;
const N9: f64 = -0.238_555_575_678_49;
const N10: f64 = 0.650_175_348_447_98e3;

const KELVIN_AT_0_CELSIUS: f64 = 273.15;
const HPA_PER_MPA: f64 = 10_000.0;

/// Temperature at which water boils under a pressure in hPa, in °C: the backward equation 31 of
/// IAPWS R7-97, valid from 6.1 hPa up to the critical point.
#[must_use]
pub fn saturation_temperature(hpa: f64) -> f64 {
    let beta = (hpa / HPA_PER_MPA).powf(0.25);
    let e = beta * beta + N3 * beta + N6;
    let f = N1 * beta * beta + N4 * beta + N7;
    let g = N2 * beta * beta + N5 * beta + N8;
    let d = 2.0 * g / (-f - (f * f - 4.0 * e * g).sqrt());
    let sum = N10 + d;
    (sum - (sum * sum - 4.0 * (N9 + N10 * d)).sqrt()) / 2.0 - KELVIN_AT_0_CELSIUS
}

/// The boiling point at an altitude, in °C.
#[must_use]
pub fn boiling_point(altitude: Altitude) -> f64 {
    saturation_temperature(standard_pressure(altitude))
}
