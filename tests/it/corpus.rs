//! Messages, traps and conversations with the reading that a careful expert gives
//! (`tests/data/corpus/README.md`).

use serde_json::{Map, Value};

use crate::desk::{Office, json, json_lines};

/// The contract lets numbers differ by so much.
const TOLERANCE: f64 = 0.002;

fn same(one: &Value, other: &Value) -> bool {
    match (one, other) {
        (Value::Number(a), Value::Number(b)) => {
            let (a, b) = (
                a.as_f64().unwrap_or(f64::NAN),
                b.as_f64().unwrap_or(f64::NAN),
            );
            (a - b).abs() <= TOLERANCE * a.abs().max(b.abs())
        }
        (Value::Array(a), Value::Array(b)) => {
            a.len() == b.len() && a.iter().all(|item| b.iter().any(|other| same(item, other)))
        }
        _ => one == other,
    }
}

fn strings(value: &Value) -> Vec<&str> {
    value
        .as_array()
        .map(|all| all.iter().filter_map(Value::as_str).collect())
        .unwrap_or_default()
}

fn text(case: &Value) -> &str {
    case["text"].as_str().expect("a text")
}

fn object<'a>(value: &'a Value, what: &str) -> &'a Map<String, Value> {
    value
        .as_object()
        .unwrap_or_else(|| panic!("{what} is no object"))
}

/// Fails with all that went wrong, not only the first.
fn report(file: &str, wrong: &[String]) {
    assert!(
        wrong.is_empty(),
        "{file}: {} wrong\n{}",
        wrong.len(),
        wrong.join("\n")
    );
}

fn has_dose(answer: &Value) -> bool {
    ["dose_ml", "drops", "grams", "tablets"]
        .iter()
        .any(|key| !answer[key].is_null())
}

/// The language that has to be given with a message too short to tell.
fn case_language(case: &Value) -> Option<&str> {
    case["lang"].as_str().filter(|_| case["say_lang"] == true)
}

fn check_messages(file: &str) {
    let mut wrong = Vec::new();
    for case in json_lines(file) {
        let got = Office::of(case_language(&case)).hear_json(text(&case));
        let expected = object(&case["expect"], "expect");
        let request = object(&got["request"], "request");
        let exact = request.len() == expected.len()
            && expected
                .iter()
                .all(|(key, value)| request.get(key).is_some_and(|ours| same(ours, value)));
        if !exact {
            wrong.push(format!(
                "{:?}\n  want {expected:?}\n  got  {request:?}",
                text(&case)
            ));
        }
        let wanted = strings(&case["missing"]);
        let asked = strings(&got["missing"]);
        let asks_right = if wanted.is_empty() {
            // An iodine tablet's figure, or a refusal, may call for more than the list says.
            asked.is_empty() || got["request"]["product"] == "iodine_tablet"
        } else {
            asked.first().is_some_and(|first| wanted.contains(first))
        };
        if !asks_right {
            wrong.push(format!(
                "{:?}\n  want asked {wanted:?}, asked {asked:?}",
                text(&case)
            ));
        }
    }
    report(file, &wrong);
}

fn check_traps(file: &str) {
    let mut wrong = Vec::new();
    for case in json_lines(file) {
        let got = Office::of(case_language(&case)).hear_json(text(&case));
        let answer = &got["answer"];
        let mut complain = |what: String| {
            wrong.push(format!(
                "{:?} ({})\n  {what}\n  {}",
                text(&case),
                case["why"],
                got["reply"]
            ));
        };
        if case["no_dose"] == true && has_dose(answer) {
            complain("a dose was given".to_owned());
        }
        let asked = strings(&got["missing"]);
        if case["ask_ok"] == true && !asked.is_empty() {
            continue;
        }
        for key in ["dose_ml", "grams", "tablets"] {
            let Some([low, high]) = case[key].as_array().map(Vec::as_slice) else {
                continue;
            };
            let value = answer[key].as_f64();
            // A single drop may be well over (`DECISIONS.md`, rounding).
            let drop = if key == "dose_ml" { 0.05 } else { 0.0 };
            let inside = value.is_some_and(|value| {
                value >= low.as_f64().unwrap_or(f64::NAN) - 1e-9
                    && value <= high.as_f64().unwrap_or(f64::NAN) + drop
            });
            if !inside {
                complain(format!("{key} is {value:?}, not in {low} to {high}"));
            }
        }
        for (key, value) in object(&case["expect"], "expect") {
            if !got["request"]
                .get(key)
                .is_some_and(|ours| same(ours, value))
            {
                complain(format!("{key} is {}, not {value}", got["request"][key]));
            }
        }
        let wanted = strings(&case["missing"]);
        if !wanted.is_empty() && !asked.iter().any(|field| wanted.contains(field)) {
            complain(format!("asked {asked:?}, not one of {wanted:?}"));
        }
        if case["refused"].is_string() && got["refused"] != case["refused"] {
            complain(format!(
                "refused is {}, not {}",
                got["refused"], case["refused"]
            ));
        }
    }
    report(file, &wrong);
}

fn check_talks(file: &str, waiting: &[(&str, usize)]) {
    let mut wrong = Vec::new();
    for talk in json_lines(file) {
        let id = talk["id"].as_str().expect("an id");
        let mut office = Office::new();
        for (n, turn) in talk["turns"].as_array().expect("turns").iter().enumerate() {
            let at = turn["at"]
                .as_str()
                .and_then(|at| at.parse().ok())
                .expect("a time");
            let from = turn["from"].as_str().expect("a person");
            if let Some(language) = turn["lang"].as_str() {
                office.set_language(from, language);
            }
            let got = json(&office.hear(from, text(turn), at).line(None));
            let want = &turn["want"];
            let answer = &got["answer"];
            let mut errors = Vec::new();
            for key in ["dose_ml", "grams", "tablets", "wait_min"] {
                let Some([low, high]) = want[key].as_array().map(Vec::as_slice) else {
                    continue;
                };
                let inside = answer[key].as_f64().is_some_and(|value| {
                    value >= low.as_f64().unwrap_or(f64::NAN)
                        && value <= high.as_f64().unwrap_or(f64::NAN)
                });
                if !inside {
                    errors.push(format!("{key} is {}, not in {low} to {high}", answer[key]));
                }
            }
            let asked = strings(&got["missing"]);
            let wanted = strings(&want["asks"]);
            if !wanted.is_empty() && !asked.iter().any(|field| wanted.contains(field)) {
                errors.push(format!("asked {asked:?}, not {wanted:?}"));
            }
            if want["no_dose"] == true && has_dose(answer) {
                errors.push("a dose was given".to_owned());
            }
            if want["topic"].is_string() && got["request"]["topic"] != want["topic"] {
                errors.push(format!("topic is {}", got["request"]["topic"]));
            }
            let matches = |pattern: &str, text: &str| {
                regex::RegexBuilder::new(pattern)
                    .case_insensitive(true)
                    .build()
                    .expect("a pattern")
                    .is_match(text)
            };
            for pattern in strings(&want["says"]) {
                if !matches(pattern, got["reply"].as_str().unwrap_or_default()) {
                    errors.push(format!("does not say {pattern}"));
                }
            }
            for pattern in strings(&want["caution"]) {
                if !strings(&answer["cautions"])
                    .iter()
                    .any(|code| matches(pattern, code))
                {
                    errors.push(format!("no caution like {pattern}"));
                }
            }
            if waiting.contains(&(id, n)) {
                assert!(
                    !errors.is_empty(),
                    "{id} turn {n} works now: take it off the list"
                );
                continue;
            }
            if !errors.is_empty() {
                wrong.push(format!(
                    "{id} turn {n} {:?}: {errors:?}\n  {}",
                    text(turn),
                    got["reply"]
                ));
            }
        }
    }
    report(file, &wrong);
}

#[test]
fn messages_are_read_as_an_expert_reads_them() {
    check_messages("corpus/messages.jsonl");
    check_messages("corpus/own-messages.jsonl");
}

#[test]
fn traps_get_no_wrong_dose_and_their_twins_an_answer() {
    check_traps("corpus/traps.jsonl");
    check_traps("corpus/own-traps.jsonl");
}

#[test]
fn conversations_go_as_they_should() {
    check_talks("corpus/talks.jsonl", &[]);
    check_talks("corpus/own-talks.jsonl", &[]);
}

/// Lists and pairs in many wordings, interpolated to the residual aimed at.
#[test]
fn jar_tests_point_to_the_dose_for_the_tank() {
    let mut wrong = Vec::new();
    for case in json_lines("corpus/own-jars.jsonl") {
        let got = Office::once_json(text(&case));
        let finding = &got["answer"]["jar_test"];
        let each = finding["ml_per_1000_l"].as_f64();
        let right = match case["dose_ml_per_1000_l"].as_f64() {
            // A drop a jar is the finest step.
            Some(exact) => each.is_some_and(|ml| ml >= exact - 0.01 && ml <= exact * 1.02 + 2.6),
            None => !finding.is_null() && each.is_none(),
        };
        let tank = case["tank_l"].as_f64().zip(each);
        let dosed = tank.is_none_or(|(tank, each)| {
            let exact = each * tank / 1000.0;
            got["answer"]["dose_ml"]
                .as_f64()
                .is_some_and(|ml| ml >= exact - 0.01 && ml <= exact * 1.25)
        });
        if !(right && dosed) {
            wrong.push(format!(
                "{:?}\n  {finding}\n  {}",
                text(&case),
                got["reply"]
            ));
        }
    }
    report("own-jars.jsonl", &wrong);
}

/// What we read otherwise, we read safely: no dose, or the right one.
#[test]
fn knowing_differences_are_still_what_we_say_they_are() {
    for case in json_lines("corpus/differences.jsonl") {
        let got = Office::once_json(text(&case));
        assert!(
            !has_dose(&got["answer"]),
            "{:?} is answered now: {}",
            text(&case),
            got["reply"]
        );
        assert_eq!(
            got["request"]["topic"],
            case["today"]["topic"],
            "{:?}",
            text(&case)
        );
        let today = strings(&case["today"]["missing"]);
        assert_eq!(strings(&got["missing"]), today, "{:?}", text(&case));
    }
}

/// Every language but English, which has its files a folder higher.
const LANGUAGES: [&str; 7] = ["ar", "es", "fr", "hi", "ht", "pt", "sw"];

#[test]
fn messages_of_every_language_are_read_as_an_expert_reads_them() {
    for tag in LANGUAGES {
        check_messages(&format!("corpus/{tag}/messages.jsonl"));
        check_messages(&format!("corpus/{tag}/own-messages.jsonl"));
    }
}

#[test]
fn traps_of_every_language_get_no_wrong_dose() {
    for tag in LANGUAGES {
        check_traps(&format!("corpus/{tag}/traps.jsonl"));
        check_traps(&format!("corpus/{tag}/own-traps.jsonl"));
    }
}

#[test]
fn conversations_of_every_language_go_as_they_should() {
    for tag in LANGUAGES {
        check_talks(&format!("corpus/{tag}/talks.jsonl"), &[]);
        check_talks(&format!("corpus/{tag}/own-talks.jsonl"), &[]);
    }
}

/// What we read otherwise in other languages gets no dose, and each language has few of it.
#[test]
fn knowing_differences_of_every_language_are_safe() {
    for case in json_lines("corpus/differences-of-languages.jsonl") {
        let got = Office::of(case_language(&case)).hear_json(text(&case));
        let same_facts = object(&case["expect"], "expect")
            .iter()
            .filter(|(key, _)| {
                ["product", "strength_percent", "volume_l", "tablet_mg"].contains(&key.as_str())
            })
            .all(|(key, value)| {
                got["request"]
                    .get(key)
                    .is_some_and(|ours| same(ours, value))
            });
        let safe =
            !has_dose(&got["answer"]) || (same_facts && got["request"]["clarity"] != "clear");
        assert!(safe, "{:?} is answered: {}", text(&case), got["reply"]);
    }
}

/// A message in a language is answered in it, by somebody who was not known before.
#[test]
fn the_language_of_a_message_is_recognised() {
    let mut wrong = Vec::new();
    let mut all = 0;
    for tag in LANGUAGES {
        for case in json_lines(&format!("corpus/{tag}/messages.jsonl")) {
            if case["say_lang"] == true || case["expect"]["set_lang"].is_string() {
                continue;
            }
            all += 1;
            let answered = Office::once(text(&case));
            if answered.language != tag {
                wrong.push(format!("{tag} as {}: {:?}", answered.language, text(&case)));
            }
        }
    }
    // A word or two that two languages share is no evidence.
    assert!(
        wrong.len() * 50 <= all,
        "{} of {all}\n{}",
        wrong.len(),
        wrong.join("\n")
    );
}
