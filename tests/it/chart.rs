//! The printed chart: its figures are the core's, its words the locale's, and it needs nothing
//! beside itself.

use std::collections::BTreeSet;

use jiff::civil::{Date, date};
use matone::chart::{CAUTIONS, Chart, ChartError, Paper, Strengths, volumes};
use matone::locale::{Folder, Locale, Locales};
use matone::quantity::{UnitSystem, Volume, limit, litres_in};
use matone::reply::CatalogError;
use matone::request::Person;
use matone::treatment::{Agent, Caution, DoseOrder, LiquidMeasure, Spoon, Warmth, Water};
use regex::Regex;

use super::cli::{run, text};
use super::published::{CLOUDY, PLAIN, answer, liquid, percent};
use super::published_chlorine::{agency_rows, is_cloudy, row_ml};

const DAY: Date = date(2026, 3, 9);
const COLD: Water = Water {
    warmth: Warmth::Cold,
    ..PLAIN
};
const COLD_AND_CLOUDY: Water = Water {
    warmth: Warmth::Cold,
    ..CLOUDY
};
const SYSTEMS: [UnitSystem; 3] = [UnitSystem::Imperial, UnitSystem::Metric, UnitSystem::Us];
/// The ends, the rows' own strengths and one of each band.
const STRENGTHS: [f64; 9] = [0.1, 0.5, 1.0, 3.5, 5.25, 6.0, 8.25, 12.0, 15.0];

fn english() -> &'static Locale {
    let locales = Locales::embedded().expect("the embedded locales are sound");
    locales.get("en").expect("English").1
}

fn chart(percents: &[f64], units: UnitSystem) -> Chart {
    Chart {
        strengths: Strengths::from_percents(percents).expect("strengths of bleach"),
        units,
        paper: Paper::A4,
        day: DAY,
    }
}

fn page(percents: &[f64], units: UnitSystem) -> String {
    chart(percents, units)
        .page("en", english())
        .expect("a chart")
}

fn pattern(text: &str) -> Regex {
    Regex::new(text).expect("a pattern")
}

/// What stands in each cell of a part of the table, row by row.
fn cells(page: &str, part: &str) -> Vec<Vec<String>> {
    let part = pattern(&format!("(?s)<{part}>(.*)</{part}>"))
        .captures(page)
        .expect("a part of the table")[1]
        .to_owned();
    let tags = pattern("<[^>]*>");
    pattern("(?s)<tr>(.*?)</tr>")
        .captures_iter(&part)
        .map(|row| {
            pattern("(?s)<t[hd][^>]*>(.*?)</t[hd]>")
                .captures_iter(&row[1])
                .map(|cell| tags.replace_all(&cell[1], "").into_owned())
                .collect()
        })
        .collect()
}

fn order(strength: f64, volume: Volume, system: UnitSystem, water: Water) -> DoseOrder {
    DoseOrder {
        agent: Agent::Bleach(percent(strength)),
        volume,
        system,
        water,
        people: Vec::new(),
    }
}

/// A measure as the chart is to write it, built anew from the core's figures.
fn written(liquid: LiquidMeasure) -> String {
    let mut ways = Vec::new();
    match liquid.drops {
        1 => ways.push("1 drop".to_owned()),
        drops if drops <= 40 => ways.push(format!("{drops} drops")),
        _ => {}
    }
    ways.push(format!("{} mL", liquid.ml));
    if let Some(measure) = liquid.spoon {
        let name = match measure.spoon {
            Spoon::Tablespoon => "tbsp",
            Spoon::Teaspoon => "tsp",
        };
        let part = match measure.count.fract() {
            0.25 => "1/4",
            0.5 => "1/2",
            0.75 => "3/4",
            _ => "",
        };
        let whole = match measure.count.trunc() {
            0.0 => String::new(),
            whole => whole.to_string(),
        };
        ways.push(format!("{} {name}", format!("{whole} {part}").trim()));
    }
    ways.join(" or ")
}

#[test]
fn every_amount_is_what_the_core_answers() {
    let mut checked = 0;
    for units in SYSTEMS {
        for three in STRENGTHS.chunks(3) {
            let page = page(three, units);
            let rows = cells(&page, "tbody");
            let volumes = volumes(units).expect("volumes");
            assert_eq!(rows.len(), volumes.len());
            for (row, volume) in rows.iter().zip(volumes) {
                assert_eq!(row.len(), 1 + 2 * three.len());
                for (strength, pair) in three.iter().zip(row[1..].chunks(2)) {
                    let of =
                        |water| written(liquid(&answer(&order(*strength, volume, units, water))));
                    assert_eq!(pair[0], of(PLAIN), "{strength}% {row:?}");
                    for water in [CLOUDY, COLD, COLD_AND_CLOUDY] {
                        assert_eq!(pair[1], of(water), "{strength}% {row:?}");
                    }
                    checked += 2;
                }
            }
        }
    }
    assert_eq!(checked, 3 * 9 * 9 * 2);
}

#[test]
fn every_wait_is_what_the_core_answers_for_every_row() {
    for units in SYSTEMS {
        for strength in STRENGTHS {
            let waits = cells(&page(&[strength], units), "tfoot").remove(0);
            assert_eq!(waits, ["Then wait", "30 min", "60 min cold: 2 h"]);
            for volume in volumes(units).expect("volumes") {
                let minutes = |water| {
                    let outcome = answer(&order(strength, volume, units, water));
                    outcome.wait.expect("a wait").as_secs() / 60
                };
                // The cold one is for the cold, cloudy or not.
                assert_eq!(
                    [PLAIN, CLOUDY, COLD, COLD_AND_CLOUDY].map(minutes),
                    [30, 60, 120, 120]
                );
            }
        }
    }
}

#[test]
fn rows_are_named_in_the_units_asked_for() {
    let names = |units| -> Vec<String> {
        let rows = cells(&page(&[5.0], units), "tbody");
        rows.into_iter().map(|mut row| row.remove(0)).collect()
    };
    assert_eq!(
        names(UnitSystem::Metric),
        [
            "1 L", "2 L", "5 L", "10 L", "20 L", "50 L", "100 L", "200 L", "500 L"
        ]
    );
    assert_eq!(names(UnitSystem::Us)[..2], ["1 US qt", "1 US gal"]);
    assert_eq!(names(UnitSystem::Us)[8], "55 US gal");
    assert_eq!(names(UnitSystem::Imperial)[..2], ["1 imp qt", "1 imp gal"]);
}

/// The agencies' rows by drops, mL and spoons, for the strengths that they name: on the chart
/// stands no less, and where it counts drops as they do, the same or (for a row that another
/// agency's row beats) more.
#[test]
fn published_rows_are_on_the_chart() {
    let ml = pattern(r"([0-9.]+) mL");
    let mut checked = 0;
    let mut as_printed = 0;
    for row in agency_rows() {
        let (low, high) = (
            row.number("naocl_percent_min"),
            row.number("naocl_percent_max"),
        );
        // 5, 5.5 and 6 for a band of 5-6; 1, 6 and 8.25 have rows of their own.
        let ends = BTreeSet::from([low, (low + high) / 2.0, high].map(f64::to_bits));
        for strength in ends.into_iter().map(f64::from_bits) {
            let wanted = match row.text("volume_unit") {
                "quart_or_litre" => vec![
                    (UnitSystem::Metric, 1.0),
                    (UnitSystem::Us, litres_in::US_QUART),
                ],
                _ => vec![(
                    UnitSystem::Us,
                    row.number("volume_value") * litres_in::US_GALLON,
                )],
            };
            // A row for exactly the strength beats a band's.
            if low < high && [1.0, 6.0, 8.25].contains(&strength) {
                continue;
            }
            for (units, litres) in wanted {
                let at = volumes(units)
                    .expect("volumes")
                    .iter()
                    .position(|volume| (volume.litres() - litres).abs() < 1e-9)
                    .unwrap_or_else(|| panic!("no row for {litres} L: {}", row.shown()));
                let cell = &cells(&page(&[strength], units), "tbody")[at]
                    [1 + usize::from(is_cloudy(&row))];
                let shown: f64 = ml.captures(cell).expect("mL")[1].parse().expect("a figure");
                // Thirds of a teaspoon are printed to four digits.
                assert!(
                    shown >= row_ml(&row) * (1.0 - 2e-4),
                    "{cell}: {}",
                    row.shown()
                );
                checked += 1;
                let drops = row.text("drops");
                as_printed += usize::from(cell.starts_with(&format!("{drops} drops")));
            }
        }
    }
    assert!(checked > 50, "{checked}");
    assert!(as_printed > 30, "{as_printed}");
}

/// The figures that people know by heart.
#[test]
fn well_known_rows_read_as_printed() {
    let gallons = cells(&page(&[6.0, 8.25], UnitSystem::Us), "tbody");
    let starts = |row: usize, column: usize, with: &str| {
        let cell = &gallons[row][column];
        assert!(cell.starts_with(with), "{cell}");
    };
    for (row, six, eight) in [
        (0, "2 drops", "2 drops"),
        (1, "8 drops", "6 drops"),
        (2, "16 drops", "12 drops"),
    ] {
        starts(row, 1, six);
        starts(row, 3, eight);
    }
    starts(1, 2, "16 drops");
    starts(1, 4, "12 drops");
    let litres = cells(&page(&[1.0, 5.0, 6.0], UnitSystem::Metric), "tbody");
    assert_eq!(litres[0][1], "10 drops or 0.5 mL");
    assert_eq!(litres[0][2], "20 drops or 1 mL or 1/4 tsp");
    assert_eq!(litres[0][3], "2 drops or 0.1 mL");
    assert_eq!(litres[0][5], "2 drops or 0.1 mL");
    assert_eq!(litres[0][6], "4 drops or 0.2 mL");
}

#[test]
fn the_page_needs_nothing_beside_itself() {
    for paper in [Paper::A4, Paper::A5] {
        let chart = Chart {
            paper,
            ..chart(&[1.0, 5.0, 8.25], UnitSystem::Metric)
        };
        let page = chart.page("en", english()).expect("a chart");
        for outside in [
            "http", "src=", "href", "<script", "@import", "url(", "<link", "<img", "//",
        ] {
            assert!(!page.contains(outside), "{outside}");
        }
        let size = match paper {
            Paper::A4 => "@page { size: A4",
            Paper::A5 => "@page { size: A5",
        };
        assert!(page.contains(size));
    }
}

#[test]
fn nothing_is_told_by_colour() {
    let page = page(&[5.0], UnitSystem::Metric);
    let colours: BTreeSet<String> = pattern(r"#[0-9a-fA-F]{3,8}\b|rgba?\(|hsla?\(")
        .find_iter(&page)
        .map(|found| found.as_str().to_owned())
        .collect();
    assert_eq!(colours, BTreeSet::from(["#000", "#fff"].map(str::to_owned)));
}

#[test]
fn the_table_can_be_followed_without_seeing_it() {
    let page = page(&[1.0, 5.0], UnitSystem::Metric);
    for (what, times) in [
        ("<!DOCTYPE html>", 1),
        ("<html lang=\"en\" dir=\"ltr\">", 1),
        ("<title>How much bleach makes water safe</title>", 1),
        ("<caption>", 1),
        ("scope=\"col\"", 5),
        ("scope=\"colgroup\"", 2),
        ("scope=\"row\"", 10),
        ("Bleach 1%", 1),
        ("Bleach 5%", 1),
    ] {
        assert_eq!(page.matches(what).count(), times, "{what}");
    }
}

#[test]
fn the_cautions_sources_and_day_are_on_it() {
    let page = page(&[5.0], UnitSystem::Metric);
    for said in [
        "Bleach does not kill Cryptosporidium. Giardia may survive.",
        "read print through",
        "babies and people with weak immunity",
        "no scent",
        "directions for drinking water",
        "less than a year old",
        "Never mix",
        "children",
        "let it settle, then strain it",
        "smell faintly",
        "Your health office's rules come first.",
        "Emergency Disinfection of Drinking Water (US Environmental Protection Agency, 2017)",
        "(World Health Organization, 2012)",
        "Printed 2026-03-09.",
    ] {
        assert!(page.contains(said), "{said}");
    }
}

/// Whatever the core warns of when it answers for a cell, the chart says somewhere.
#[test]
fn no_caution_of_the_core_is_left_out() {
    for water in [PLAIN, CLOUDY, COLD, COLD_AND_CLOUDY] {
        let order = DoseOrder {
            people: vec![Person::Infant, Person::WeakImmunity],
            ..order(
                5.0,
                volumes(UnitSystem::Metric).unwrap()[0],
                UnitSystem::Metric,
                water,
            )
        };
        for caution in answer(&order).cautions {
            let said = CAUTIONS.contains(&caution)
                || [
                    // The steps.
                    Caution::StrainFirst,
                    Caution::SmellCheck,
                    // The last row.
                    Caution::ColdTakesLonger,
                    // The box, from what the answers cover.
                    Caution::CryptosporidiumSurvives,
                    Caution::GiardiaPartly,
                ]
                .contains(&caution);
            assert!(said, "{caution:?}");
        }
    }
}

#[test]
fn every_language_has_its_chart() {
    let locales = Locales::embedded().expect("the embedded locales are sound");
    for tag in locales.tags() {
        let (_, locale) = locales.get(tag).expect("a tag of the list");
        for units in SYSTEMS {
            let page = chart(&[0.1, 5.0, 15.0], units)
                .page(tag, locale)
                .unwrap_or_else(|error| panic!("{tag}: {error}"));
            assert!(page.contains(&format!("<html lang=\"{tag}\" dir=\"")));
        }
    }
}

const LEXICON: &str = include_str!("../../locales/en/lexicon.toml");
const MESSAGES: &str = include_str!("../../locales/en/reply.ftl");

/// Takes one message after the other out of the file: a chart that can do without it would have
/// translators work for nothing.
#[test]
fn the_chart_asks_for_each_of_its_messages() {
    let keys: Vec<&str> = MESSAGES
        .lines()
        .filter_map(|line| line.split_once(" =").map(|(key, _)| key))
        .filter(|key| key.starts_with("chart-"))
        .collect();
    assert!(keys.len() > 25, "{keys:?}");
    for key in keys {
        let without: Vec<&str> = MESSAGES
            .lines()
            .filter(|line| !line.starts_with(&format!("{key} =")))
            .collect();
        let locale = locale("en", LEXICON, &without.join("\n"));
        // A quart is imperial, and spoons of both sizes come with a weak bleach.
        let missed = chart(&[1.0], UnitSystem::Imperial).page("en", &locale);
        assert!(
            matches!(&missed, Err(ChartError::Words(CatalogError::Missing(missing))) if missing == key),
            "{key}: {missed:?}"
        );
    }
}

fn locale(tag: &str, lexicon: &str, reply: &str) -> Locale {
    let folder = Folder {
        tag: tag.to_owned(),
        lexicon: lexicon.to_owned(),
        reply: reply.to_owned(),
        ..Folder::default()
    };
    Locale::parse(&folder, &[]).unwrap_or_else(|errors| panic!("{errors:?}"))
}

#[test]
fn a_language_written_from_the_right_has_its_page_so() {
    let lexicon = LEXICON.replace("tag = \"en\"", "tag = \"fa\"");
    let locale = locale("fa", &lexicon, MESSAGES);
    let page = chart(&[5.0], UnitSystem::Metric)
        .page("fa", &locale)
        .expect("a chart");
    assert!(page.contains("<html lang=\"fa\" dir=\"rtl\">"));
    // The digits are those of labels and phones.
    assert!(page.contains(">4</span>"));
    assert!(page.contains("-03-09."));
}

#[test]
fn strengths_are_checked_sorted_and_counted_once() {
    let strengths = |percents: &[f64]| Strengths::from_percents(percents);
    assert_eq!(
        strengths(&[5.0, 1.0, 5.0]).expect("two"),
        strengths(&[1.0, 5.0]).expect("two")
    );
    assert!(matches!(strengths(&[]), Err(ChartError::NoStrength)));
    assert!(matches!(
        strengths(&[1.0, 2.0, 3.0, 4.0]),
        Err(ChartError::TooMany(4))
    ));
    for ends in [limit::BLEACH.min, limit::BLEACH.max] {
        assert!(strengths(&[ends]).is_ok());
    }
    for outside in [0.0, 0.09, 15.1, -1.0, f64::NAN, f64::INFINITY] {
        assert!(
            matches!(strengths(&[outside]), Err(ChartError::Strength(_))),
            "{outside}"
        );
    }
}

#[test]
fn the_command_prints_the_page() {
    let output = run(
        &[
            "chart",
            "--lang",
            "en",
            "--strength",
            "1",
            "--strength",
            "5.25%",
            "--units",
            "us",
            "--paper",
            "a5",
        ],
        b"",
    );
    assert_eq!(output.status.code(), Some(0));
    assert_eq!(text(&output.stderr), "");
    let page = text(&output.stdout);
    assert!(page.starts_with("<!DOCTYPE html>"));
    for said in ["size: A5", "Bleach 5.25%", "55 US gal"] {
        assert!(page.contains(said), "{said}");
    }
}

#[test]
fn a_mistaken_chart_gets_one_line_that_says_what_to_do() {
    for (arguments, says) in [
        (vec![], "--strength"),
        (vec!["--lang", "tlh", "--strength", "5"], "there is ar, en"),
        (vec!["--lang", "!!", "--strength", "5"], "there is ar, en"),
        (vec!["--strength", "0.05"], "printed on the bleach label"),
        (vec!["--strength", "50"], "0.1 to 15"),
        (vec!["--strength", "-5"], "0.1 to 15"),
        (vec!["--strength", "NaN"], "printed on the bleach label"),
        (vec!["--strength", "strong"], "like 5.25"),
        (
            vec![
                "--strength",
                "1",
                "--strength",
                "2",
                "--strength",
                "3",
                "--strength",
                "4",
            ],
            "up to 3",
        ),
        (
            vec!["--strength", "5", "--units", "pints"],
            "imperial, metric, us",
        ),
        (vec!["--strength", "5", "--paper", "a3"], "a4, a5"),
        (vec!["--strength"], "--strength"),
    ] {
        let arguments: Vec<&str> = std::iter::once("chart").chain(arguments).collect();
        let output = run(&arguments, b"");
        assert_eq!(output.status.code(), Some(2), "{arguments:?}");
        let stderr = text(&output.stderr);
        assert_eq!(stderr.lines().count(), 1, "{arguments:?}: {stderr}");
        assert!(stderr.starts_with("matone: "), "{stderr}");
        assert!(stderr.contains(says), "{arguments:?}: {stderr}");
        assert_eq!(text(&output.stdout), "", "{arguments:?}");
    }
}
