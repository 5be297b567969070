//! Every locale is whole: words for every concept, a message for everything that can be said.

use matone::dialogue::Waited;
use std::collections::BTreeSet;
use std::path::{Path, PathBuf};
use std::sync::Arc;

use matone::desk::Desk;
use matone::dialogue::Person;
use matone::locale::{FALLBACK, Locales};
use matone::parser::{Doubt, Lexicon, LexiconError, Overlay};
use matone::quantity::UnitSystem;
use matone::reply::Catalog;
use matone::request::{Field, Product, Refusal};
use matone::treatment::{Caution, Reason, ResidualVerdict};
use strum::VariantArray;

use crate::desk::locales;
use crate::folder::Folder;

const FILE: &str = include_str!("../../locales/en/lexicon.toml");

fn keys_of_everything_that_can_be_said() -> Vec<String> {
    let mut keys: Vec<String> = Vec::new();
    let code = |value: &'static str| value.to_owned();
    keys.extend(
        Caution::VARIANTS
            .iter()
            .map(|c| format!("caution-{}", code(c.into()))),
    );
    keys.extend(
        Refusal::VARIANTS
            .iter()
            .map(|r| format!("refused-{}", code(r.into()))),
    );
    keys.extend(
        Product::VARIANTS
            .iter()
            .map(|p| format!("product-{}", code(p.into()))),
    );
    keys.extend(
        matone::chart::CAUTIONS
            .iter()
            .map(|c| format!("chart-caution-{}", code(c.into()))),
    );
    keys.extend(
        Reason::VARIANTS
            .iter()
            .map(|r| format!("reason-{}", code(r.into()))),
    );
    keys.extend(
        ResidualVerdict::VARIANTS
            .iter()
            .map(|v| format!("residual-{}", code(v.into()))),
    );
    keys.extend(
        Waited::VARIANTS
            .iter()
            .map(|w| format!("reminder-{}", code(w.into()))),
    );
    for doubt in Doubt::VARIANTS {
        let name: &'static str = doubt.into();
        keys.push(match doubt.field() {
            Field::Product => format!("ask-product-{name}"),
            // A missing label has a question of its own.
            Field::StrengthPercent if *doubt == Doubt::Unlabelled => "ask-strength-no-label".into(),
            Field::StrengthPercent if *doubt == Doubt::Degrees => "ask-strength-degrees".into(),
            _ => format!("ask-{name}"),
        });
    }
    keys
}

#[test]
fn each_locale_has_a_message_for_everything_that_can_be_said() {
    for (tag, locale) in locales().all() {
        for key in keys_of_everything_that_can_be_said() {
            assert!(
                locale.catalog.has(&key),
                "locales/{tag}/reply.ftl lacks {key}"
            );
        }
    }
}

/// A figure in a message would be a figure that the core did not work out. Only examples of what
/// to type may hold one.
#[test]
fn no_message_holds_a_figure_of_its_own() {
    let examples = [
        "ask-strength-unreadable",
        "ask-volume-unreadable",
        "bottles-none",
        "greeting",
        "help",
        "kept-future",
        "not-kept",
        "not-understood",
        "nothing-before",
        "started",
        "terminal-examples",
    ];
    for (tag, locale) in locales().all() {
        for (key, wording) in locale.catalog.wordings() {
            let has_figure = wording.text.chars().any(char::is_numeric);
            assert_eq!(has_figure, examples.contains(&key.as_str()), "{tag}: {key}");
        }
    }
}

/// Each message was translated back into English by somebody who had not seen the English: the
/// same figures stand in it, and what denies, forbids or limits still does.
#[test]
fn the_back_translations_keep_every_figure_and_every_not() {
    let denies = regex::RegexBuilder::new(
        r"\b(no|not|never|nobody|none|nothing|only|just|without|cannot|can't|don't|nor|neither|until|unless|instead|before|forbidden|stop|avoid|un[a-z]+|insufficient)\b",
    )
    .case_insensitive(true)
    .build()
    .expect("a pattern");
    let warnings: Vec<&str> = include_str!("../../locales/en/checks.toml")
        .lines()
        .filter_map(|line| line.split_once(" = ").map(|(key, _)| key))
        .collect();
    assert!(warnings.len() > 100);
    let mut wrong = Vec::new();
    for (tag, locale) in locales().all().filter(|(tag, _)| *tag != "en") {
        let path = format!("{}/locales/{tag}/back.ftl", env!("CARGO_MANIFEST_DIR"));
        let text = std::fs::read_to_string(&path).unwrap_or_else(|error| panic!("{path}: {error}"));
        let back = Catalog::parse("en", &text).unwrap_or_else(|error| panic!("{path}: {error}"));
        let back = back.wordings();
        let own = locale.catalog.wordings();
        for (key, wording) in &own {
            let Some(back) = back.get(key) else {
                wrong.push(format!("{tag}: {key} is not translated back"));
                continue;
            };
            let figures = |variables: &BTreeSet<String>| -> BTreeSet<String> {
                let shown = variables.iter().filter(|name| !name.ends_with("-n"));
                shown.cloned().collect()
            };
            if figures(&back.variables) != figures(&wording.variables) {
                wrong.push(format!("{tag}: {key} has other figures: {}", back.text));
            }
        }
        for key in &warnings {
            let text = back.get(*key).map_or("", |wording| wording.text.as_str());
            if !denies.is_match(text) {
                wrong.push(format!("{tag}: {key} denies nothing: {text}"));
            }
        }
    }
    assert!(
        wrong.is_empty(),
        "{} wrong\n{}",
        wrong.len(),
        wrong.join("\n")
    );
}

/// Messages that no code asks for would be read by translators for nothing.
#[test]
fn no_message_is_idle() {
    let code: String = [
        "answer.rs",
        "ask.rs",
        "bottle.rs",
        "chart.rs",
        "mod.rs",
        "next.rs",
        "phrase.rs",
        "work.rs",
    ]
    .iter()
    .map(|file| {
        let path = format!("{}/src/reply/{file}", env!("CARGO_MANIFEST_DIR"));
        std::fs::read_to_string(path).expect("a source file of the reply room")
    })
    .collect();
    let said = keys_of_everything_that_can_be_said();
    // Keys that the code puts together from a code word.
    let families = [
        "head-",
        "cover-",
        "clarity-",
        "method-",
        "extra-",
        "illness-",
        "set-units-",
        "topic-",
    ];
    for line in include_str!("../../locales/en/reply.ftl").lines() {
        let Some((key, _)) = line.split_once(" =") else {
            continue;
        };
        if key.starts_with(['#', ' ', '-', '[', '*']) {
            continue;
        }
        let used = code.contains(&format!("\"{key}\""))
            || said.iter().any(|said| said == key)
            || families.iter().any(|family| key.starts_with(family));
        assert!(used, "nothing says {key}");
    }
}

#[test]
fn each_locale_says_who_has_reviewed_it() {
    for (tag, locale) in locales().all() {
        assert!(!locale.lexicon.review().is_empty());
        assert_eq!(locale.lexicon.tag(), tag);
    }
}

fn wrong_in(lexicon: &str) -> Vec<LexiconError> {
    Lexicon::parse(lexicon, "", &[]).err().unwrap_or_default()
}

#[test]
fn a_lexicon_that_contradicts_itself_is_refused_by_name() {
    let twice = FILE.replace("cold = [", "cold = [\"muddy\", ");
    match wrong_in(&twice).as_slice() {
        [LexiconError::TwoMeanings { phrase, .. }] => assert_eq!(phrase, "muddy"),
        other => panic!("{other:?}"),
    }
    let unknown = FILE.replace("\nbleach = [", "\nbleech-word = [");
    // The words are under a name that is none, and the concept has none.
    assert!(matches!(
        wrong_in(&unknown).as_slice(),
        [LexiconError::UnknownConcept(name), LexiconError::MissingConcept("bleach")]
            if name == "bleech-word"
    ));
    let lacking = FILE.replace("\ncold = [", "\n# cold = [");
    assert!(matches!(
        wrong_in(&lacking).as_slice(),
        [LexiconError::MissingConcept("cold")]
    ));
}

fn dose_with(locales: Locales, text: &str) -> serde_json::Value {
    let desk = Desk::new(Arc::new(locales), UnitSystem::Metric, FALLBACK);
    let answered = desk
        .answer(&Person::default(), text, crate::desk::noon())
        .expect("an answer");
    crate::desk::json(&answered.line(None))
}

/// A district's word for a can and a dialect's for muddy are read where they are configured.
#[test]
fn local_words_are_read_where_they_are_configured() {
    let folder = Folder::new("words");
    let words = folder.write(
        "district.toml",
        "language = \"en\"\nplain = \"obe\"\n[words]\ncontainer = [\"kolombo\"]\ncloudy = [\"zuruku\"]\n[slips]\nklmbo = \"kolombo\"\n",
    );
    let message = "zuruku water, half full klmbo of 20 L, bleach 5%";
    let locales = Locales::load(None, &[words]).unwrap_or_else(|errors| panic!("{errors}"));
    let line = dose_with(locales, message);
    assert_eq!(line["request"]["clarity"], "cloudy");
    assert_eq!(line["request"]["volume_l"], 10.0);
    let without = dose_with(Locales::load(None, &[]).expect("sound"), message);
    assert_eq!(without["request"]["clarity"], serde_json::Value::Null);
}

/// What is wrong is told with its file and key, all of it at once.
#[test]
fn what_is_wrong_is_told_by_file_and_key() {
    let folder = Folder::new("wrong");
    let words = folder.write(
        "district.toml",
        "language = \"en\"\n[words]\nclear = [\"muddy\"]\nmurk = [\"x\"]\n",
    );
    let other = folder.write("other.toml", "language = \"tlh\"\n");
    let typo = folder.write("typo.toml", "language = \"en\"\n[wrods]\n");
    let gone = folder.as_ref().join("gone.toml");
    let own = FILES;
    let reply = own
        .reply
        .replace("\nstopped = ", "\nstoped = ")
        .replace("add { $measure }, stir", "add { $mesure }, stir")
        .replace("do NOT make vomit", "make vomit");
    folder.write(
        "own/en/lexicon.toml",
        &own.lexicon.replace("\ncold = [", "\n# cold = ["),
    );
    folder.write("own/en/plain.txt", "");
    folder.write("own/en/reply.ftl", own.reply);
    folder.write("own/en/checks.toml", own.checks);
    folder.write(
        "own/xh/lexicon.toml",
        &own.lexicon.replace("tag = \"en\"", "tag = \"xh\""),
    );
    folder.write("own/xh/plain.txt", "");
    folder.write("own/xh/reply.ftl", &reply);
    folder.write("own/xh/checks.toml", own.checks);
    folder.write("own/zu/lexicon.toml", own.lexicon);
    let told = |folder: Option<&Path>, words: &[PathBuf]| {
        Locales::load(folder, words).expect_err("wrong").to_string()
    };
    let all = told(None, &[words, other, typo, gone]);
    for part in [
        "district.toml`: it can mean only one",
        "murk of ",
        "other.toml: there is no language `tlh`",
        "typo.toml: ",
        "`wrods`",
        "gone.toml: ",
    ] {
        assert!(all.contains(part), "{part} is not in\n{all}");
    }
    let own = folder.as_ref().join("own");
    // A file that is not there ends the reading of the folder.
    let all = told(Some(&own), &[]);
    assert!(all.contains("zu/plain.txt cannot be read"), "{all}");
    std::fs::remove_dir_all(own.join("zu")).expect("removed");
    let all = told(Some(&own), &[]);
    assert!(
        all.contains("en/lexicon.toml: [words] has no words for `cold`"),
        "{all}"
    );
    std::fs::write(own.join("en/lexicon.toml"), FILES.lexicon).expect("written");
    let all = told(Some(&own), &[]);
    for part in [
        "xh/reply.ftl: no message `stopped`",
        "xh/reply.ftl: `stoped` is no message",
        "uses $mesure, which the program does not give",
        "`head-liquid` does not say $measure",
        "xh/checks.toml: `first-aid` must hold",
    ] {
        assert!(all.contains(part), "{part} is not in\n{all}");
    }
}

/// A language without a plural form that it needs, or with a mark that nobody sees.
#[test]
fn plural_forms_and_invisible_marks_are_looked_at() {
    let folder = Folder::new("forms");
    let own = FILES;
    let reply = own
        .reply
        .replace(
            "   *[other] { $drops } drops",
            "   *[others] { $drops } drops",
        )
        .replace(
            "caution-not-in-rain = Not",
            "caution-not-in-rain = \u{200F}Not",
        );
    folder.write(
        "pl/lexicon.toml",
        &own.lexicon.replace("tag = \"en\"", "tag = \"pl\""),
    );
    folder.write("pl/plain.txt", "");
    folder.write("pl/reply.ftl", &reply);
    folder.write("pl/checks.toml", own.checks);
    let all = Locales::load(Some(folder.as_ref()), &[])
        .expect_err("wrong")
        .to_string();
    for part in [
        "`drops` lacks the plural form [few]",
        "`drops` lacks the plural form [many]",
        "`caution-not-in-rain` has the invisible character U+200F",
    ] {
        assert!(all.contains(part), "{part} is not in\n{all}");
    }
}

/// English, as a translator copies it.
const FILES: Files = Files {
    lexicon: FILE,
    reply: include_str!("../../locales/en/reply.ftl"),
    checks: include_str!("../../locales/en/checks.toml"),
};

struct Files {
    lexicon: &'static str,
    reply: &'static str,
    checks: &'static str,
}

#[test]
fn figures_carry_no_idle_zeros_and_no_grouping() {
    let (_, locale) = locales().get("en").expect("English");
    for (value, decimals, written) in [
        (5.0, 3, "5"),
        (5.25, 3, "5.25"),
        (1000.0, 2, "1000"),
        (0.05, 2, "0.05"),
        (2.0, 0, "2"),
        (100_000.0, 0, "100000"),
    ] {
        assert_eq!(locale.figure(value, decimals), written);
    }
}

/// Words added to the tables that the program was built with are read as if they had stood beside
/// the files, and are refused for the same reasons.
#[test]
fn overlays_mean_the_same_on_tables_and_on_files() {
    let plain = include_str!("../../locales/en/plain.txt");
    let tables: &'static [u8] = Vec::leak(Lexicon::tables(FILE, plain).expect("sound"));
    let overlay = |text: &str| vec![Overlay::parse("district.toml", text).expect("an overlay")];
    let both = |overlays: &[Overlay]| {
        let of = |read: Result<Lexicon, Vec<LexiconError>>| match read {
            Ok(lexicon) => format!("{lexicon:?}"),
            Err(errors) => format!("{errors:?}"),
        };
        (
            of(Lexicon::parse(FILE, plain, overlays)),
            of(Lexicon::built(tables, overlays)),
        )
    };
    for text in [
        "language = \"en\"\n",
        // Plain words, of which one is a concept's here and one stands in a phrase only.
        "language = \"en\"\nplain = \"obe muddy zuruku\"\n[words]\ncloudy = [\"zuruku\", \"about obe\"]\ncontainer = [\"about\"]\n[slips]\nklmbo = \"zuruku\"\nu = \"obe\"\n[numbers]\nmoja = 1\n",
        "language = \"en\"\n[words]\nclear = [\"muddy\"]\nmurk = [\"x\"]\n[slips]\nxq = \"qxqx\"\n[numbers]\nlitre = 2\n",
        "language = \"en\"\n[numbers]\nseven = 7\nhalf = 2\nhundred = 2\n[words]\nclear = [\"spanish\"]\n",
    ] {
        let (files, built) = both(&overlay(text));
        assert!(files == built, "{text}");
    }
}

/// What is not a lexicon's tables is refused and not read as something else.
#[test]
fn tables_of_another_shape_are_refused() {
    for bytes in [
        b"".as_slice(),
        b"\x00",
        b"\x01",
        b"\x01\x02\x65\x6e",
        b"[locale]",
    ] {
        let errors = Lexicon::built(bytes, &[]).expect_err("no tables");
        assert!(
            matches!(errors.as_slice(), [LexiconError::Tables(_)]),
            "{errors:?}"
        );
    }
}
