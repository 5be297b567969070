//! The page: where on the sheet each phrase stands.
//!
//! In: the figures of a chart and the phrases of a language.
//! Out: HTML with its style inside.
//! Promises a table whose headings a screen reader can follow, and no script, no colour and no
//! address of another file.

use std::str::FromStr;

use maud::{DOCTYPE, Markup, PreEscaped, html};
use unic_langid::{CharacterDirection, LanguageIdentifier};

use crate::quantity::Strength;
use crate::reply::{CatalogError, ChartPhrases};
use crate::treatment::{Coverage, LiquidMeasure};

use super::{CAUTIONS, Chart, Figures, Paper, Waits};

const STYLE: &str = include_str!("style.css");
const A4: &str = include_str!("a4.css");
const A5: &str = include_str!("a5.css");

type Written<T> = Result<T, CatalogError>;

pub(super) fn write(
    chart: &Chart,
    figures: &Figures,
    tag: &str,
    phrases: ChartPhrases<'_>,
) -> Written<String> {
    let title = phrases.title()?;
    let paper = match chart.paper {
        Paper::A4 => A4,
        Paper::A5 => A5,
    };
    let strengths = &chart.strengths.0;
    let page = html! {
        (DOCTYPE)
        html lang=(tag) dir=(direction(tag)) {
            head {
                meta charset="utf-8";
                meta name="viewport" content="width=device-width";
                title { (title) }
                style { (PreEscaped(paper)) (PreEscaped(STYLE)) }
            }
            body class={ "bottles-" (strengths.len()) } {
                h1 { (title) }
                (steps(phrases)?)
                (table(chart, figures, phrases)?)
                p.legend { (phrases.legend()?) }
                (survivors(figures.covers.unwrap_or(Coverage::NOTHING), phrases)?)
                ul.cautions {
                    @for caution in CAUTIONS {
                        li { (phrases.caution(caution)?) }
                    }
                }
                p.defer { (phrases.defer()?) }
                footer {
                    (phrases.sources(&figures.sources)?) " " (phrases.printed(chart.day)?)
                }
            }
        }
    };
    Ok(page.into_string())
}

/// HTML has no name for lines from top to bottom; what is written so is also written across.
fn direction(tag: &str) -> &'static str {
    let direction = LanguageIdentifier::from_str(tag).map(|tag| tag.character_direction());
    match direction {
        Ok(CharacterDirection::RTL) => "rtl",
        Ok(CharacterDirection::LTR | CharacterDirection::TTB) | Err(_) => "ltr",
    }
}

/// The numbers are written out because a browser's own would be in its figures, not the
/// language's.
fn steps(phrases: ChartPhrases<'_>) -> Written<Markup> {
    let steps = phrases.steps()?;
    Ok(html! {
        ol.steps {
            @for (n, step) in steps.iter().enumerate() {
                li { span.number aria-hidden="true" { (phrases.number(n + 1)) } span { (step) } }
            }
        }
    })
}

fn table(chart: &Chart, figures: &Figures, phrases: ChartPhrases<'_>) -> Written<Markup> {
    let strengths = &chart.strengths.0;
    Ok(html! {
        table {
            caption { (phrases.caption()?) }
            colgroup { col.water; }
            @for _ in strengths {
                colgroup { col; col; }
            }
            thead { (headings(strengths, phrases)?) }
            tbody {
                @for row in &figures.rows {
                    tr {
                        th scope="row" { (phrases.volume(row.volume, chart.units)?) }
                        @for amounts in &row.amounts {
                            td.bottle { (amount(amounts.clear, phrases)?) }
                            td { (amount(amounts.cloudy_or_cold, phrases)?) }
                        }
                    }
                }
            }
            tfoot { (waits(&figures.waits, phrases)?) }
        }
    })
}

fn headings(strengths: &[Strength], phrases: ChartPhrases<'_>) -> Written<Markup> {
    Ok(html! {
        tr {
            th scope="col" rowspan="2" { (phrases.water()?) }
            @for strength in strengths {
                th.bottle scope="colgroup" colspan="2" { (phrases.bottle(*strength)?) }
            }
        }
        tr {
            @for _ in strengths {
                th.bottle scope="col" { (phrases.clear()?) }
                th scope="col" { (phrases.cloudy_or_cold()?) }
            }
        }
    })
}

/// The ways to measure one amount, the surest large.
fn amount(liquid: LiquidMeasure, phrases: ChartPhrases<'_>) -> Written<Markup> {
    let ways = phrases.amount(liquid)?;
    Ok(html! {
        @for (n, way) in ways.iter().enumerate() {
            @if n == 0 { strong { (way) } } @else { " " span { (phrases.or(way)?) } }
        }
    })
}

fn waits(waits: &[Waits], phrases: ChartPhrases<'_>) -> Written<Markup> {
    Ok(html! {
        tr {
            th scope="row" { (phrases.then_wait()?) }
            @for waits in waits {
                td.bottle { strong { (phrases.wait(waits.clear)?) } }
                td {
                    strong { (phrases.wait(waits.cloudy)?) }
                    " " span { (phrases.wait_if_cold(waits.cold)?) }
                }
            }
        }
    })
}

fn survivors(covers: Coverage, phrases: ChartPhrases<'_>) -> Written<Markup> {
    let sentences = phrases.survivors(covers)?;
    Ok(html! {
        p.survivors { (sentences.join(" ")) }
    })
}
