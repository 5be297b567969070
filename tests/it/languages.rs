//! What is said in every language: the same figures, in the budget, in an order that can be read.

use std::collections::BTreeSet;
use std::sync::LazyLock;

use matone::dialogue::Say;
use matone::locale::{Direction, Locale};
use matone::reply::{Encoding, Segments, next_words, render, segment};
use serde_json::Value;

use crate::desk::{Office, json, locales, noon};
use crate::reply::{grid, service_messages};

/// A message, answered once for all tests.
struct Case {
    message: String,
    say: Say,
    line: Value,
    kind: Kind,
}

#[derive(Clone, Copy, PartialEq, Eq)]
enum Kind {
    /// A dose with more to say than a plain one.
    Long,
    /// No dose.
    Other,
    /// A dose of liquid or tablets for litres of water.
    Plain,
}

static CASES: LazyLock<Vec<Case>> = LazyLock::new(|| {
    let case = |message: String, kind: Kind| {
        let answered = Office::once(&message);
        Case {
            line: json(&answered.line(None)),
            say: answered.step.say,
            message,
            kind,
        }
    };
    let doses = grid().into_iter().map(|message| {
        let mut case = case(message, Kind::Plain);
        if is_long(&case) {
            case.kind = Kind::Long;
        }
        case
    });
    let others = service_messages()
        .into_iter()
        .map(|message| case(message, Kind::Other));
    doses.chain(others).collect()
});

/// Iodine, and one tablet for very little water, come with a caution that cannot wait; powder has
/// two steps; gallons are named with their country; and tablets for water that is both cloudy and
/// cold have most to say.
fn is_long(case: &Case) -> bool {
    let said = |word: &str| case.message.contains(word);
    let too_strong = case.line["answer"]["cautions"]
        .as_array()
        .is_some_and(|all| all.iter().any(|caution| caution == "tablet-too-strong"));
    ["iodine", "hypochlorite", "powder", "gallon"]
        .iter()
        .any(|word| said(word))
        || too_strong
        || (said("tablets") && said("cloudy, cold"))
}

fn doses() -> impl Iterator<Item = &'static Case> {
    CASES.iter().filter(|case| case.kind != Kind::Other)
}

fn said(say: &Say, locale: &Locale) -> String {
    render(say, locale).unwrap_or_else(|error| panic!("{}: {error}", locale.lexicon.tag()))
}

/// What an answer says in all: the first message, and what `MORE` adds.
fn whole(say: &Say, locale: &Locale) -> String {
    let first = said(say, locale);
    match say {
        Say::Answer(answer) => format!("{first} {}", said(&Say::MoreOf(answer.clone()), locale)),
        _ => first,
    }
}

/// The numbers of a text, as they are written.
fn numbers_as_written(text: &str) -> Vec<String> {
    static PATTERN: LazyLock<regex::Regex> =
        LazyLock::new(|| regex::Regex::new(r"\d+/\d+|\d+(?:[.,]\d+)?").expect("a pattern"));
    PATTERN
        .find_iter(text)
        .map(|found| found.as_str().to_owned())
        .collect()
}

/// The numbers of a text, with a point before decimals.
fn numbers(text: &str) -> BTreeSet<String> {
    let written = numbers_as_written(text);
    written
        .iter()
        .map(|number| number.replace(',', "."))
        .collect()
}

/// Fails with all that went wrong, not only the first.
fn report(wrong: &[String]) {
    assert!(
        wrong.is_empty(),
        "{} wrong\n{}",
        wrong.len(),
        wrong.join("\n")
    );
}

/// A plain dose answer travels in one segment in every language; one with more to say in two at
/// most in Latin script, in three at most in others.
#[test]
fn every_plain_dose_answer_fits_one_segment_in_every_language() {
    let mut wrong = Vec::new();
    for case in doses() {
        for (tag, locale) in locales().all() {
            let text = said(&case.say, locale);
            let Segments { encoding, parts } = segment(&text);
            let most = match (case.kind, encoding) {
                (Kind::Plain | Kind::Other, _) => 1,
                (Kind::Long, Encoding::Gsm7) => 2,
                (Kind::Long, Encoding::Ucs2) => 3,
            };
            if parts.len() > most {
                let message = &case.message;
                wrong.push(format!("{tag} {message:?}: {}: {text}", parts.len()));
            }
        }
    }
    report(&wrong);
}

/// No stray letter makes a Latin message twice as dear.
#[test]
fn latin_scripts_stay_in_the_gsm_alphabet() {
    let is_latin = |locale: &Locale| locale.lexicon.name().chars().all(|c| c < '\u{0250}');
    let mut wrong = Vec::new();
    for case in CASES.iter() {
        for (tag, locale) in locales().all().filter(|(_, locale)| is_latin(locale)) {
            let text = whole(&case.say, locale);
            if segment(&text).encoding != Encoding::Gsm7 {
                wrong.push(format!("{tag} {:?}: {text}", case.message));
            }
        }
    }
    report(&wrong);
}

/// Every number that English says, each language says, and no other.
#[test]
fn every_number_stands_in_every_language() {
    let (_, english) = locales().get("en").expect("English");
    let mut wrong = Vec::new();
    let answers = CASES.iter().filter(|case| {
        // The others hold examples of what to type, which are the language's own.
        matches!(
            case.say,
            Say::Answer(_)
                | Say::Adjusted(..)
                | Say::FirstAid(_)
                | Say::LastResort(..)
                | Say::WhyOf(_)
        )
    });
    for case in answers {
        let expected = numbers(&whole(&case.say, english));
        for (tag, locale) in locales().all() {
            let text = whole(&case.say, locale);
            let found = numbers(&text);
            if found != expected {
                let lost: Vec<&String> = expected.difference(&found).collect();
                let added: Vec<&String> = found.difference(&expected).collect();
                let message = &case.message;
                wrong.push(format!(
                    "{tag} {message:?}: lost {lost:?}, added {added:?}: {text}"
                ));
            }
        }
    }
    report(&wrong);
}

/// The first segment alone has dose and wait.
#[test]
fn the_first_segment_has_dose_and_wait() {
    let mut wrong = Vec::new();
    for case in doses().filter(|case| case.kind == Kind::Plain) {
        let answer = &case.line["answer"];
        let dose = ["dose_ml", "tablets"]
            .iter()
            .find_map(|key| answer[key].as_f64())
            .expect("a dose");
        let minutes = answer["wait_min"].as_f64().expect("a wait");
        for (tag, locale) in locales().all() {
            let text = said(&case.say, locale);
            let first = segment(&text).parts.first().cloned().unwrap_or_default();
            let numbers = numbers(&first);
            let shown =
                |value: f64| numbers.contains(&((value * 100.0).round() / 100.0).to_string());
            let drops = answer["drops"].as_f64();
            let has_dose = shown(dose) || shown(dose / 1000.0) || drops.is_some_and(shown);
            let has_wait = shown(minutes) || shown(minutes / 60.0) || shown(minutes / 1440.0);
            if !has_dose || !has_wait {
                wrong.push(format!("{tag} {:?}: {first}", case.message));
            }
        }
    }
    report(&wrong);
}

/// Everything else that can be said travels in one segment in Latin script, and in at most four in
/// a script that takes two octets a letter.
#[test]
fn every_reply_keeps_its_budget() {
    let mut wrong = Vec::new();
    for case in CASES.iter().filter(|case| case.kind == Kind::Other) {
        for (tag, locale) in locales().all() {
            let text = said(&case.say, locale);
            let Segments { encoding, parts } = segment(&text);
            let most = match encoding {
                Encoding::Gsm7 => 1,
                Encoding::Ucs2 => 4,
            };
            if parts.len() > most {
                let length = encoding.length(&text);
                wrong.push(format!("{tag} {:?}: {length}: {text}", case.message));
            }
        }
    }
    report(&wrong);
}

/// On a phone that knows the bidirectional algorithm, figures stay whole and, read from the right,
/// come in the order in which they were written; a sign stays on its figure's side.
#[test]
fn right_to_left_text_shows_figures_in_their_order() {
    let mut wrong = Vec::new();
    let rtl = || {
        locales()
            .all()
            .filter(|(_, locale)| locale.direction() == Direction::RightToLeft)
    };
    assert!(rtl().count() > 0, "no language is written from the right");
    for case in CASES.iter() {
        for (tag, locale) in rtl() {
            let text = whole(&case.say, locale);
            let shown = displayed(&text);
            let mut order = numbers_as_written(&shown);
            order.reverse();
            if order != numbers_as_written(&text) {
                wrong.push(format!(
                    "{tag} {:?}: {text} is shown as {shown}",
                    case.message
                ));
            }
        }
    }
    report(&wrong);
}

/// The characters of a text from left to right, as a display shows them.
fn displayed(text: &str) -> String {
    let info = unicode_bidi::BidiInfo::new(text, None);
    info.paragraphs
        .iter()
        .map(|paragraph| info.reorder_line(paragraph, paragraph.range.clone()))
        .collect()
}

/// The middle and the 95th percentile of some counts, by the nearest rank.
fn median_and_p95(mut counts: Vec<usize>) -> String {
    counts.sort_unstable();
    let rank = |percent: usize| (counts.len() * percent).div_ceil(100).saturating_sub(1);
    format!("{}, {}", counts[rank(50)], counts[rank(95)])
}

/// The README's table of segments is measured here: a row a language.
#[test]
fn the_readme_tells_how_many_segments_an_answer_takes() {
    let mut table = String::from(
        "| language | characters a segment | plain dose: median, p95 | other doses: median, p95 | all other replies: median, p95 | longest |\n\
         | --- | --- | --- | --- | --- | --- |\n",
    );
    for (tag, locale) in locales().all() {
        let counts = |kind: Kind| -> Vec<usize> {
            CASES
                .iter()
                .filter(|case| case.kind == kind)
                .map(|case| segment(&said(&case.say, locale)).parts.len())
                .collect()
        };
        let (plain, long, other) = (counts(Kind::Plain), counts(Kind::Long), counts(Kind::Other));
        let longest = plain.iter().chain(&long).chain(&other).max();
        let longest = longest.copied().unwrap_or_default();
        let letters = match segment(&said(&CASES[0].say, locale)).encoding {
            Encoding::Gsm7 => 160,
            Encoding::Ucs2 => 70,
        };
        table.push_str(&format!(
            "| {} ({tag}) | {letters} | {} | {} | {} | {longest} |\n",
            locale.lexicon.name(),
            median_and_p95(plain),
            median_and_p95(long),
            median_and_p95(other),
        ));
    }
    let path = format!("{}/README.md", env!("CARGO_MANIFEST_DIR"));
    let readme = std::fs::read_to_string(&path).expect("a README");
    let old: String = readme
        .lines()
        .skip_while(|line| !line.starts_with("| language |"))
        .take_while(|line| line.starts_with('|'))
        .map(|line| format!("{line}\n"))
        .collect();
    if std::env::var_os("MATONE_BLESS").is_some() {
        std::fs::write(&path, readme.replace(&old, &table)).expect("written");
        return;
    }
    assert_eq!(
        old, table,
        "the README's table; if the new figures are right, MATONE_BLESS=1"
    );
}

/// The words that are shown as buttons are words that are understood.
#[test]
fn words_to_send_next_are_read_as_what_they_say() {
    for (tag, locale) in locales().all() {
        let say = Office::of(Some(tag))
            .hear("p", "20 L bleach 5%", noon())
            .step
            .say;
        let words = next_words(&say, locale).expect("every word can be formed");
        let topics = words.iter().map(|word| {
            let mut office = Office::of(Some(tag));
            office.hear("p", "20 L bleach 5%", noon());
            office.hear_json(word)["request"]["topic"].clone()
        });
        let topics: Vec<Value> = topics.collect();
        assert_eq!(
            topics,
            ["more", "why", "remind", "help"],
            "{tag}: {words:?}"
        );

        let mut office = Office::of(Some(tag));
        let say = office.hear("p", "20 L 5%", noon()).step.say;
        let words = next_words(&say, locale).expect("every word can be formed");
        let products = words.iter().map(|word| {
            let read = Office::of(Some(tag)).hear_json(word);
            read["request"]["product"].clone()
        });
        let products: Vec<Value> = products.collect();
        let wanted = ["bleach", "nadcc", "calcium_hypochlorite", "iodine_tincture"];
        assert_eq!(products, wanted, "{tag}: {words:?}");
    }
}
