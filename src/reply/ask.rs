//! Questions in words: one key for each field and doubt.
//!
//! In: a question of the dialogue.
//! Out: its text.

use crate::dialogue::Question;
use crate::parser::Doubt;
use crate::request::{Field, Work};
use crate::treatment;

use super::answer::Written;
use super::catalog::Args;
use super::phrase::Phrases;

impl Phrases<'_> {
    pub(super) fn ask(self, question: &Question) -> Written<String> {
        let product = match question.product {
            Some(product) => self.product(product)?,
            None => self.plain("product-any")?,
        };
        let key = key(question);
        let percent = |value| self.figure(value, 2);
        let args = Args::new()
            .text("product", product)
            .text("hands", percent(treatment::HANDS_PERCENT))
            .text("floors", percent(treatment::FLOORS_PERCENT))
            .text("blood", percent(treatment::BLOOD_PERCENT))
            .text("stools", percent(treatment::STOOLS_PERCENT));
        let mut text = capitalized(&self.message(&key, &args)?);
        if question.field == Field::VolumeL
            && let Some(parts) = question.parts_water
        {
            let parts = self.figure(parts, 2);
            let any = self.message("dilute-any-volume", &Args::new().text("parts", parts))?;
            text = format!("{text} {any}");
        }
        Ok(text)
    }
}

fn key(question: &Question) -> String {
    match (question.field, question.doubt) {
        (Field::Product, Some(doubt)) => format!("ask-product-{}", <&str>::from(doubt)),
        (Field::Product, None) => match question.work {
            Work::Dilute | Work::Residual | Work::Well => "ask-product-chlorine",
            Work::Dose | Work::Supply => "ask-product",
        }
        .to_owned(),
        (Field::StrengthPercent, _) if question.no_label => "ask-strength-no-label".to_owned(),
        (Field::StrengthPercent, Some(doubt)) => strength(doubt).to_owned(),
        (Field::StrengthPercent, None) => "ask-strength".to_owned(),
        (Field::TabletMg, Some(doubt)) => format!("ask-{}", <&str>::from(doubt)),
        (Field::TabletMg, None) => "ask-tablet".to_owned(),
        (Field::VolumeL, _) if question.jars => "ask-jar".to_owned(),
        (Field::VolumeL, Some(_)) if question.work == Work::Dilute => {
            "ask-volume-solution".to_owned()
        }
        (Field::VolumeL, Some(doubt)) => format!("ask-{}", <&str>::from(doubt)),
        (Field::VolumeL, None) => match question.work {
            Work::Dilute => "ask-volume-solution",
            Work::Residual => "ask-volume-tank",
            Work::Dose | Work::Supply | Work::Well => "ask-volume",
        }
        .to_owned(),
        (Field::ResidualMgPerL, _) => "ask-residual".to_owned(),
        (
            Field::Days
            | Field::DiameterM
            | Field::People
            | Field::StockG
            | Field::StockMl
            | Field::Tablets
            | Field::TargetPercent
            | Field::WaterDepthM,
            Some(doubt),
        ) => format!("ask-{}", <&str>::from(doubt)),
        (Field::Days, None) => "ask-days".to_owned(),
        (Field::DiameterM, None) => "ask-diameter".to_owned(),
        (Field::People, None) => "ask-people".to_owned(),
        (Field::TargetPercent, None) => "ask-target".to_owned(),
        (Field::WaterDepthM, None) => "ask-depth".to_owned(),
        (Field::StockG, None) => "ask-stock-powder".to_owned(),
        (Field::StockMl, None) => "ask-stock-liquid".to_owned(),
        (Field::Tablets, None) => "ask-stock-tablets".to_owned(),
    }
}

const fn strength(doubt: Doubt) -> &'static str {
    match doubt {
        Doubt::Degrees => "ask-strength-degrees",
        Doubt::StrengthBound => "ask-strength-bound",
        Doubt::StrengthDenied => "ask-strength-denied",
        Doubt::StrengthGuessed => "ask-strength-guessed",
        Doubt::StrengthIsSolution => "ask-strength-is-solution",
        Doubt::StrengthIsTarget => "ask-strength-is-target",
        Doubt::StrengthOutside => "ask-strength-outside",
        Doubt::StrengthThinned => "ask-strength-thinned",
        Doubt::StrengthTwo => "ask-strength-two",
        Doubt::StrengthUnreadable => "ask-strength-unreadable",
        Doubt::StrengthWide => "ask-strength-wide",
        Doubt::Unlabelled => "ask-strength-no-label",
        Doubt::BleachTablet
        | Doubt::ChlorineForm
        | Doubt::DaysOutside
        | Doubt::DiameterOutside
        | Doubt::IodineForm
        | Doubt::PeopleOutside
        | Doubt::Pool
        | Doubt::PowderForm
        | Doubt::Spoiled
        | Doubt::StockOutside
        | Doubt::TabletCompound
        | Doubt::TabletForm
        | Doubt::TabletOutside
        | Doubt::TabletTwo
        | Doubt::TargetOutside
        | Doubt::TargetTooStrong
        | Doubt::TwoProducts
        | Doubt::UnfitForCleaning
        | Doubt::UnfitForResidual
        | Doubt::UnfitForSupply
        | Doubt::UnfitForWell
        | Doubt::VolumeOutside
        | Doubt::VolumeTwo
        | Doubt::VolumeUncounted
        | Doubt::VolumeUnreadable
        | Doubt::VolumeUnsized
        | Doubt::WaterDepthOutside
        | Doubt::WellDepthOnly => "ask-strength",
    }
}

/// A sentence may begin with a product's name.
pub(super) fn capitalized(text: &str) -> String {
    let mut chars = text.chars();
    chars.next().map_or_else(String::new, |first| {
        first.to_uppercase().chain(chars).collect()
    })
}
