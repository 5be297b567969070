//! The publications that answers rest on.
//!
//! In: `tables/sources.csv`, embedded.
//! Out: [`Source`], a cheap code, and its [`SourceRecord`] with title, publisher, number and year.
//! Promises one record for every code (a test holds it to that).
//! Does not know what a publication says: its figures are in the other tables.

use std::sync::LazyLock;

use serde::Deserialize;

use super::table;

/// A publication, by its code. The codes are part of the contract's output.
#[derive(
    Debug,
    Clone,
    Copy,
    PartialEq,
    Eq,
    Hash,
    PartialOrd,
    Ord,
    strum::EnumString,
    strum::IntoStaticStr,
    strum::VariantArray,
)]
#[strum(serialize_all = "kebab-case")]
pub enum Source {
    /// Well disinfection, a ground-water trust.
    Agwt,
    /// Label of calcium hypochlorite granules: first aid.
    CalciumHypochloriteLabel,
    /// US CDC, cleaning solutions of chlorine.
    CdcAppendixE,
    /// US CDC, backcountry guide.
    CdcBackcountry,
    /// US CDC, emergency page on boiling.
    CdcEmergencyWater,
    /// US CDC, emergency bleach charts; from memory.
    #[strum(serialize = "cdc-emergency-water-2021")]
    CdcEmergencyWater2021,
    /// US CDC, bleach flyer.
    CdcMakeWaterSafe,
    /// US CDC, solar disinfection.
    #[strum(serialize = "cdc-sodis-2011")]
    CdcSodis2011,
    /// US CDC, what to do after swallowing a chemical.
    CdcGetOff,
    /// US CDC, household filters.
    CdcTechnologies,
    /// US CDC, iodine cautions for travellers.
    CdcYellowBook,
    /// US CDC, dug wells after a flood.
    #[strum(serialize = "cdc-well-2004")]
    CdcWell2004,
    /// The CT tables for *Giardia* as law.
    #[strum(serialize = "cfr-40-141-74")]
    Cfr4014174,
    /// A state's law on wells.
    Comar,
    /// Half-lives of bleach in a handbook of the trade; from memory.
    ChlorinationHandbook,
    /// What everybody does and nobody published.
    CommonPractice,
    /// Method summary of solar disinfection.
    #[strum(serialize = "eawag-sodis-2007")]
    EawagSodis2007,
    /// Review of how long iodine may be drunk.
    #[strum(serialize = "ehp-108-679")]
    Ehp108679,
    /// Five agencies' boiling rules compared.
    #[strum(serialize = "eid-31-8")]
    Eid318,
    /// US EPA manual that reprints the CT tables.
    #[strum(serialize = "epa-815-r-20-003")]
    Epa815R20003,
    /// US EPA emergency disinfection sheet.
    #[strum(serialize = "epa-816-f-15-003")]
    Epa816F15003,
    /// US EPA rule for tincture of iodine.
    EpaEmergencyIodine,
    /// US EPA limits for chlorine left in water.
    EpaMrdl,
    /// US EPA earlier bleach table by band of strength.
    EpaStrengthBands,
    /// 1% stock solution of the cholera manual.
    #[strum(serialize = "gtfcc-appendix-14")]
    GtfccAppendix14,
    /// Chlorine solutions by use in the cholera manual.
    #[strum(serialize = "gtfcc-appendix-9")]
    GtfccAppendix9,
    /// Data bank on hazardous substances: how bleach loses strength.
    Hsdb,
    /// Standard atmosphere.
    #[strum(serialize = "icao-1964")]
    Icao1964,
    /// Saturation line of water and steam.
    #[strum(serialize = "iapws-r7-97")]
    IapwsR797,
    /// Relief catalogue, chlorine tablets.
    IcrcCatalogue,
    /// Safety card for iodine.
    #[strum(serialize = "icsc-0167")]
    Icsc0167,
    /// Safety card for sodium hypochlorite.
    #[strum(serialize = "icsc-0482")]
    Icsc0482,
    /// An extension service's text on wells.
    IlExt,
    /// Relief engineers on wells.
    #[strum(serialize = "kp-5209")]
    Kp5209,
    /// Volunteers' manual, disinfectants.
    #[strum(serialize = "ifrc-action-39")]
    IfrcAction39,
    /// Directions on chlorine dioxide tablets; from memory.
    LabelDirections,
    /// Size and motility of *Leptospira*.
    LeptospiraSize,
    /// Relief catalogue, chlorine tablets.
    MsfCatalogue,
    /// Batch chlorination of the cholera guideline.
    #[strum(serialize = "msf-chol-a16")]
    MsfCholA16,
    /// Design guideline that quotes what households are to keep.
    PathResidual,
    /// Relief standards, 2004.
    #[strum(serialize = "sphere-2004")]
    Sphere2004,
    /// Cholera guideline, chlorine solutions.
    #[strum(serialize = "msf-cholera-appendix-15")]
    MsfCholeraAppendix15,
    /// Guideline on residual disinfection, which quotes the US CDC.
    /// Water for a person and day.
    #[strum(serialize = "sphere-2011")]
    Sphere2011,
    /// Tank doses of a health department.
    TasmaniaTank,
    /// US aid field guide, water for a person and day.
    UsaidFieldOperationsGuide,
    /// Field study of solar disinfection.
    #[strum(serialize = "water-research-37-47")]
    WaterResearch3747,
    /// WHO brief on boiling.
    #[strum(serialize = "who-fwc-wsh-15-02")]
    WhoFwcWsh1502,
    /// WHO guidelines for drinking water, 1996.
    #[strum(serialize = "who-gdwq-1996")]
    WhoGdwq1996,
    /// WHO on tanks and tankers; amounts from memory.
    #[strum(serialize = "who-tn3")]
    WhoTn3,
    /// WHO travel table.
    #[strum(serialize = "who-ith-2012")]
    WhoIth2012,
    /// WHO note on wells.
    #[strum(serialize = "who-tn1")]
    WhoTn1,
    /// WHO note on measuring chlorine.
    #[strum(serialize = "who-tn11")]
    WhoTn11,
    /// Disinfecting a well after pollution.
    #[strum(serialize = "who-unhcr-1997")]
    WhoUnhcr1997,
    /// Wilderness society guideline, 2024.
    #[strum(serialize = "wms-2024")]
    Wms2024,
    /// Wilderness society handbook, contact times.
    #[strum(serialize = "wms-practice-2e")]
    WmsPractice2e,
}

/// How surely a publication was read.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Deserialize, strum::IntoStaticStr)]
#[serde(rename_all = "kebab-case")]
#[strum(serialize_all = "kebab-case")]
pub enum Status {
    /// No publication stands behind it.
    CommonPractice,
    /// Worked out from other figures.
    Computed,
    /// Recalled; the publication itself was not seen.
    Memory,
    /// Read, or read in a quotation.
    Verified,
}

/// What is known of a publication.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
pub struct SourceRecord {
    /// Its code.
    #[serde(deserialize_with = "table::source")]
    pub code: Source,
    /// Its title, in its own language.
    pub title: String,
    /// Who issued it.
    pub publisher: String,
    /// Its number, where one is known.
    pub number: Option<String>,
    /// Its year, where known.
    pub year: Option<u16>,
    /// How surely it was read.
    pub status: Status,
}

static RECORDS: LazyLock<Vec<SourceRecord>> =
    LazyLock::new(|| table::rows(include_str!("tables/sources.csv")));

impl Source {
    /// Its code in the contract.
    #[must_use]
    pub fn code(self) -> &'static str {
        self.into()
    }

    /// What is known of it. Every code has a record.
    #[must_use]
    pub fn record(self) -> Option<&'static SourceRecord> {
        RECORDS.iter().find(|record| record.code == self)
    }
}
