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

/// A folder with a configuration, gone afterwards.
struct Deployment(std::path::PathBuf);

impl Deployment {
    fn new(name: &str, config: &str) -> Self {
        let path = std::env::temp_dir().join(format!("matone-{name}-{}", std::process::id()));
        let _ = std::fs::remove_dir_all(&path);
        std::fs::create_dir_all(&path).expect("a folder");
        let deployment = Self(path);
        deployment.write("matone.toml", config);
        deployment
    }

    fn write(&self, name: &str, text: &str) {
        std::fs::write(self.0.join(name), text).expect("written");
    }

    fn config(&self) -> String {
        self.0.join("matone.toml").display().to_string()
    }
}

impl Drop for Deployment {
    fn drop(&mut self) {
        let _ = std::fs::remove_dir_all(&self.0);
    }
}

#[test]
fn check_lists_each_language_with_its_review() {
    let output = run(&["check"], b"");
    assert_eq!(output.status.code(), Some(0));
    assert_eq!(text(&output.stderr), "");
    let stdout = text(&output.stdout);
    for tag in ["ar", "es", "fr", "hi", "ht", "pt", "sw"] {
        let line = stdout
            .lines()
            .find(|line| line.starts_with(&format!("{tag}: ")))
            .unwrap_or_else(|| panic!("{tag} is not in {stdout}"));
        assert!(line.ends_with(", machine-drafted"), "{line}");
    }
}

#[test]
fn check_says_what_is_wrong_and_where() {
    let deployment = Deployment::new("wrong", "[answers]\nwords = [\"district.toml\"]\n");
    deployment.write(
        "district.toml",
        "language = \"en\"\n[words]\nclear = [\"muddy\"]\n",
    );
    let output = run(&["check", "--config", &deployment.config()], b"");
    assert_eq!(output.status.code(), Some(1));
    let stdout = text(&output.stdout);
    assert!(
        stdout.contains("`muddy` stands under `cloudy` and under `clear of "),
        "{stdout}"
    );
    assert_eq!(text(&output.stderr), "matone: 1 found wrong\n");

    for (config, says) in [
        ("[answers]\ncolour = 1\n", "line 2: unknown field `colour`"),
        (
            "[[channel]]\nkind = \"pigeon\"\nname = \"x\"\n",
            "unknown variant `pigeon`",
        ),
        (
            "[answers]\nlanguage = \"tlh\"\n",
            "there is no language `tlh`",
        ),
        (
            "[answers]\nregime = \"household\"\n",
            "`household` is not answered yet",
        ),
        (
            "[answers]\nlocales = \"nowhere\"\n",
            "nowhere cannot be read",
        ),
        ("[answers]\nwords = [\"none.toml\"]\n", "none.toml: "),
        (
            "[[channel]]\nkind = \"telegram\"\nname = \"x\"\ntoken_env = \"MATONE_NOT_SET\"\n",
            "[[channel]] x: the environment variable MATONE_NOT_SET is not set",
        ),
        (
            "[[channel]]\nkind = \"modem\"\nname = \"x\"\ndevice = \"/dev/none-such\"\n",
            "there is no device /dev/none-such",
        ),
        (
            "[[channel]]\nkind = \"webhook\"\nname = \"x\"\nsecret_file = \"matone.toml\"\n\
             reply_url = \"http://127.0.0.1:9/send\"\n",
            "[[channel]] x: a webhook needs [http] listen",
        ),
    ] {
        deployment.write("matone.toml", config);
        let output = run(&["check", "--config", &deployment.config()], b"");
        let stdout = text(&output.stdout);
        assert_eq!(output.status.code(), Some(1), "{config}: {stdout}");
        assert!(stdout.contains(says), "{config}: {stdout}");
    }

    deployment.write("matone.toml", "[store]\npath = \"kept.db\"\n");
    let output = run(&["check", "--config", &deployment.config()], b"");
    assert_eq!(
        output.status.code(),
        Some(0),
        "a store that is not there yet"
    );
    deployment.write("kept.db", "no database");
    let output = run(&["check", "--config", &deployment.config()], b"");
    assert_eq!(output.status.code(), Some(1));
    assert!(text(&output.stdout).contains("kept.db cannot be used as a store"));
    std::fs::remove_file(deployment.0.join("kept.db")).expect("removed");
    let store = deployment.0.join("kept.db").display().to_string();
    run(&["ask", "--store", &store, "my bleach is 4%"], b"");
    let output = run(&["check", "--config", &deployment.config()], b"");
    assert_eq!(output.status.code(), Some(0), "{}", text(&output.stdout));
}

#[test]
fn ask_answers_as_a_configuration_says() {
    let config =
        "[answers]\nwords = [\"district.toml\"]\nlanguage = \"sw\"\nunits = \"imperial\"\n";
    let deployment = Deployment::new("ask", config);
    deployment.write(
        "district.toml",
        "language = \"sw\"\n[words]\ncontainer = [\"kolombo\"]\n",
    );
    let input = br#"{"text": "kolombo la lita 20, nusu tu imejaa, bleach 5%"}
{"text": "galoni 1 blichi 5%"}
{"text": "5% 20 L"}"#;
    let lines = lines(&run(
        &["ask", "--jsonl", "--config", &deployment.config()],
        input,
    ));
    assert_eq!(lines[0]["lang"], "sw");
    assert_eq!(lines[1]["request"]["volume_l"], 4.54609);
    assert_eq!(
        lines[2]["lang"], "sw",
        "too short to tell: the deployment's language"
    );
}

#[test]
fn every_command_has_help() {
    for arguments in [
        vec!["--help"],
        vec!["ask", "--help"],
        vec!["chart", "--help"],
        vec!["check", "--help"],
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

/// Before a start: a port that is taken, a key file that others can read, two of one name.
#[test]
fn check_says_what_a_start_would_stumble_over() {
    use std::os::unix::fs::PermissionsExt;
    let taken = std::net::TcpListener::bind("127.0.0.1:0").expect("a port");
    let address = taken.local_addr().expect("its address");
    let modem = "[[channel]]\nkind = \"modem\"\nname = \"x\"\ndevice = \"/dev/null\"\n";
    let config = format!("[http]\nlisten = \"{address}\"\n{modem}{modem}");
    let deployment = Deployment::new("stumble", &config);
    deployment.write("matone.key", &"00".repeat(32));
    let key = deployment.0.join("matone.key");
    std::fs::set_permissions(&key, std::fs::Permissions::from_mode(0o644)).expect("set");
    let output = run(&["check", "--config", &deployment.config()], b"");
    assert_eq!(output.status.code(), Some(1));
    let stdout = text(&output.stdout);
    for says in [
        &format!("[http] listen: {address} cannot be listened on"),
        "matone.key can be read by others; run: chmod 600",
        "two channels are called `x`",
    ] {
        assert!(stdout.contains(says), "{says}: {stdout}");
    }
    // Nothing was started and nothing made.
    assert!(!deployment.0.join("matone.db").exists());
    // A start says the first of it, in a line.
    let output = run(&["serve", "--config", &deployment.config()], b"");
    assert_eq!(output.status.code(), Some(1));
    assert_eq!(
        text(&output.stderr),
        "matone: [[channel]] name: two channels are called `x`\n"
    );
}

#[test]
fn the_number_to_call_stands_before_first_aid_and_nowhere_else() {
    let deployment = Deployment::new("help-line", "[answers]\nhelp_line = \"+000\"\n");
    let ask = |message: &str| {
        let output = run(&["ask", "--config", &deployment.config(), message], b"");
        text(&output.stdout).to_owned()
    };
    let aid = ask("my child drank bleach");
    assert!(aid.starts_with("Call +000. GET MEDICAL HELP NOW."), "{aid}");
    assert!(ask("mtoto amekunywa blichi").starts_with("Piga +000. "));
    assert!(!ask("20 L bleach 5%").contains("+000"));
}
