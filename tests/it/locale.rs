//! Every locale is whole: words for every concept, a message for everything that can be said.

use matone::dialogue::Waited;
use std::sync::Arc;

use matone::locale::Locales;
use matone::parser::{Doubt, Lexicon, LexiconError};
use matone::request::{Field, Product, Refusal};
use matone::treatment::{Caution, Reason, ResidualVerdict};
use strum::VariantArray;

const FILE: &str = include_str!("../../locales/en/lexicon.toml");

fn locales() -> &'static Arc<Locales> {
    Locales::embedded().unwrap_or_else(|error| panic!("{error}"))
}

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
    for tag in locales().tags() {
        let (_, locale) = locales().get(tag).expect("a tag of the list");
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
    let text = include_str!("../../locales/en/reply.ftl");
    for line in text.lines().filter(|line| !line.starts_with('#')) {
        let Some((key, message)) = line.split_once('=') else {
            continue;
        };
        let mut depth = 0_i32;
        let said: String = message
            .chars()
            .filter(|c| {
                match c {
                    '{' => depth += 1,
                    '}' => depth -= 1,
                    _ => {}
                }
                depth == 0
            })
            .collect();
        let has_figure = said.chars().any(|c| c.is_ascii_digit());
        assert_eq!(has_figure, examples.contains(&key.trim()), "{line}");
    }
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
    for tag in locales().tags() {
        let (_, locale) = locales().get(tag).expect("a tag of the list");
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
