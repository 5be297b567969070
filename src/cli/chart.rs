//! `matone chart`: a dose chart for a wall, as a page of HTML.

use std::io::Write;

use clap::{Args, ValueEnum};
use jiff::Timestamp;
use jiff::tz::Offset;

use crate::chart::{Chart, Paper, Strengths};
use crate::locale::{FALLBACK, Locale, Locales};
use crate::quantity::UnitSystem;

use super::CliError;

#[derive(Debug, Args)]
pub(super) struct ChartArguments {
    /// The chart's language (BCP 47).
    #[arg(long, value_name = "L", default_value = FALLBACK)]
    lang: String,
    /// The % on the bleach label; for up to three bottles, once each.
    #[arg(long, value_name = "P", allow_hyphen_values = true)]
    strength: Vec<String>,
    /// Whose litres or gallons.
    #[arg(long, value_enum, default_value_t = Units::Metric)]
    units: Units,
    /// The sheet to print on.
    #[arg(long, value_enum, default_value_t = Sheet::A4)]
    paper: Sheet,
}

#[derive(Debug, Clone, Copy, ValueEnum)]
enum Units {
    Imperial,
    Metric,
    Us,
}

#[derive(Debug, Clone, Copy, ValueEnum)]
enum Sheet {
    A4,
    A5,
}

pub(super) fn run(arguments: &ChartArguments) -> Result<(), CliError> {
    let (tag, locale) = language(super::embedded()?, &arguments.lang)?;
    let percents = arguments
        .strength
        .iter()
        .map(|text| percent(text))
        .collect::<Result<Vec<_>, _>>()?;
    let chart = Chart {
        strengths: Strengths::from_percents(&percents)
            .map_err(|error| CliError::Usage(error.to_string()))?,
        units: match arguments.units {
            Units::Imperial => UnitSystem::Imperial,
            Units::Metric => UnitSystem::Metric,
            Units::Us => UnitSystem::Us,
        },
        paper: match arguments.paper {
            Sheet::A4 => Paper::A4,
            Sheet::A5 => Paper::A5,
        },
        day: Offset::UTC.to_datetime(Timestamp::now()).date(),
    };
    let page = chart.page(tag, locale)?;
    let mut out = std::io::stdout().lock();
    writeln!(out, "{page}")?;
    Ok(())
}

fn language<'a>(locales: &'a Locales, tag: &str) -> Result<(&'a str, &'a Locale), CliError> {
    locales.get(tag).ok_or_else(|| {
        let known: Vec<&str> = locales.tags().collect();
        CliError::Usage(format!(
            "`{tag}` is no language that charts are made in; there is {}",
            known.join(", ")
        ))
    })
}

/// The figure as the label prints it, with or without its sign.
fn percent(text: &str) -> Result<f64, CliError> {
    let figure = text.trim().trim_end_matches('%').trim_end();
    figure.parse().map_err(|_| {
        CliError::Usage(format!(
            "`{text}` is no percentage; write the figure on the bleach label, like 5.25"
        ))
    })
}
