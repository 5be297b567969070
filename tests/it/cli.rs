//! The command line as scripts and people meet it.

use std::io::Write;
use std::process::{Command, Output, Stdio};

use serde_json::Value;

pub(crate) fn run(arguments: &[&str], input: &[u8]) -> Output {
    let home = std::env::temp_dir().join(format!("matone-cli-{}", std::process::id()));
    let mut child = Command::new(env!("CARGO_BIN_EXE_matone"))
        .args(arguments)
        .env("HOME", &home)
        .env("XDG_DATA_HOME", home.join("data"))
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .expect("the program starts");
    // A program that fails early does not read its input.
    let _ = child.stdin.take().expect("its input").write_all(input);
    child.wait_with_output().expect("it ends")
}

pub(crate) fn text(bytes: &[u8]) -> &str {
    std::str::from_utf8(bytes).expect("UTF-8")
}

fn lines(output: &Output) -> Vec<Value> {
    text(&output.stdout)
        .lines()
        .map(|line| serde_json::from_str(line).expect("a JSON line"))
        .collect()
}

#[test]
fn ask_answers_on_standard_output() {
    let output = run(&["ask", "2", "gallons", "cloudy", "1%", "bleach"], b"");
    assert_eq!(output.status.code(), Some(0));
    assert!(
        text(&output.stdout).contains("8 mL"),
        "{}",
        text(&output.stdout)
    );
    assert_eq!(text(&output.stderr), "");
}

#[test]
fn what_is_not_understood_still_gets_a_reply() {
    let output = run(&["ask", "flim", "flam"], b"");
    assert_eq!(output.status.code(), Some(0));
    assert!(text(&output.stdout).contains("HELP"));
}

#[test]
fn the_contracts_example_comes_out_as_printed() {
    let line = br#"{"from": "p1", "text": "2 gallons cloudy 1% bleach", "lang": "en", "at": "2026-03-01T08:00:00Z"}"#;
    let output = run(&["ask", "--jsonl"], line);
    let answer = &lines(&output)[0];
    assert_eq!(answer["from"], "p1");
    assert_eq!(answer["lang"], "en");
    assert_eq!(
        answer["request"],
        serde_json::json!({"topic": "dose", "product": "bleach", "strength_percent": 1.0,
            "volume_l": 7.570_823_568, "clarity": "cloudy"})
    );
    assert_eq!(answer["missing"], serde_json::json!([]));
    let dose = &answer["answer"];
    assert_eq!(dose["dose_ml"], 8.0);
    assert_eq!(dose["drops"], 160);
    assert_eq!(dose["dose_mg_per_l"], 10.567);
    assert_eq!(dose["wait_min"], 60);
    for absent in ["grams", "tablets"] {
        assert!(
            dose[absent].is_null() && dose.as_object().expect("an object").contains_key(absent)
        );
    }
    assert_eq!(
        dose["covers"],
        serde_json::json!({"bacteria": "yes", "viruses": "yes", "giardia": "partly", "cryptosporidium": "no"})
    );
    assert_eq!(dose["cautions"][0], "strain-first");
    assert_eq!(dose["cautions"][1], "unscented-only");
    assert_eq!(dose["sources"][0], "epa-816-f-15-003");
    assert_eq!(answer["encoding"], "gsm7");
    assert_eq!(answer["parts"][0], answer["reply"]);
}

#[test]
fn a_bad_line_costs_only_itself() {
    let input = b"{\"text\": \"bleach 5% 20 L\"}\nnot json\n{\"txt\": 1}\n\n\xff\xfe\n{\"text\": \"\", \"lang\": \"!\"}\n{\"text\": \"help\", \"at\": \"noon\"}\n{\"text\": \"help\"}";
    let output = run(&["ask", "--jsonl"], input);
    assert_eq!(output.status.code(), Some(0));
    assert_eq!(text(&output.stderr), "");
    let lines = lines(&output);
    let errors: Vec<bool> = lines.iter().map(|line| line["error"].is_string()).collect();
    assert_eq!(errors, [false, true, true, true, true, true, false]);
    // The line's number helps whoever made it.
    assert!(
        lines[1]["error"]
            .as_str()
            .expect("an error")
            .starts_with("line 2:")
    );
    assert_eq!(lines[6]["request"]["topic"], "help");
}

#[test]
fn lines_without_a_name_do_not_know_each_other_and_named_ones_do() {
    let input = br#"{"text": "how much bleach for 20 L"}
{"text": "5%"}
{"from": "a", "text": "how much bleach for 20 L"}
{"from": "b", "text": "5%"}
{"from": "a", "text": "5%"}"#;
    let lines = lines(&run(&["ask", "--jsonl"], input));
    assert_eq!(lines[0]["missing"], serde_json::json!(["strength_percent"]));
    assert!(lines[1]["answer"].is_null());
    assert!(lines[3]["answer"].is_null());
    assert_eq!(lines[4]["answer"]["drops"], 40);
}

#[test]
fn what_memory_added_is_said() {
    let input = br#"{"from": "a", "text": "my bleach is 5%"}
{"from": "a", "text": "20 litres"}"#;
    let lines = lines(&run(&["ask", "--jsonl"], input));
    assert_eq!(
        lines[1]["remembered"],
        serde_json::json!(["product", "strength_percent"])
    );
    assert_eq!(
        lines[1]["request"],
        serde_json::json!({"topic": "dose", "volume_l": 20.0})
    );
    assert_eq!(lines[1]["answer"]["drops"], 40);
}

#[test]
fn the_store_keeps_people_between_runs() {
    let file = std::env::temp_dir().join(format!("matone-ask-{}.db", std::process::id()));
    let store = file.to_str().expect("a path");
    run(
        &["ask", "--store", store, "--from", "ada", "my bleach is 4%"],
        b"",
    );
    let output = run(&["ask", "--store", store, "--from", "ada", "20 L"], b"");
    assert!(
        text(&output.stdout).contains("your bleach 4%"),
        "{}",
        text(&output.stdout)
    );
    let output = run(&["ask", "--store", store, "--from", "bo", "20 L"], b"");
    assert!(
        text(&output.stdout).contains("Which product"),
        "{}",
        text(&output.stdout)
    );
    for suffix in ["", "-wal", "-shm"] {
        let _ = std::fs::remove_file(format!("{store}{suffix}"));
    }
}

#[test]
fn mistakes_get_one_line_and_the_right_code() {
    for (arguments, code) in [
        (vec!["ask"], 2),
        (vec!["ask", "--jsonl", "text"], 2),
        (vec!["ask", "--lang", "!!", "help"], 2),
        (vec!["brew"], 2),
        (vec!["ask", "--from"], 2),
        (vec!["ask", "--store", "/dev/null/x/matone.db", "help"], 1),
    ] {
        let output = run(&arguments, b"");
        assert_eq!(output.status.code(), Some(code), "{arguments:?}");
        let stderr = text(&output.stderr);
        assert_eq!(stderr.lines().count(), 1, "{arguments:?}: {stderr}");
        assert!(stderr.starts_with("matone: "), "{stderr}");
        assert_eq!(text(&output.stdout), "", "{arguments:?}");
    }
}

#[test]
fn every_command_has_help() {
    for arguments in [
        vec!["--help"],
        vec!["ask", "--help"],
        vec!["chart", "--help"],
    ] {
        let output = run(&arguments, b"");
        assert_eq!(output.status.code(), Some(0));
        assert!(text(&output.stdout).contains("Usage"));
        assert_eq!(text(&output.stderr), "");
    }
}

/// Without a terminal the conversation reads lines: greeting of two lines, then a reply a line.
#[test]
fn the_conversation_greets_in_two_lines_and_answers() {
    let output = run(&[], b"bleach 5% 20 L\n\nhow much bleach for 10 L\n5\n");
    assert_eq!(output.status.code(), Some(0));
    let stdout = text(&output.stdout);
    let lines: Vec<&str> = stdout.lines().collect();
    assert_eq!(lines.len(), 5, "{stdout}");
    assert!(lines[1].contains("Try"));
    assert!(lines[2].contains("40 drops"));
    assert!(lines[3].contains('%'));
    assert!(lines[4].contains("20 drops"));
}
