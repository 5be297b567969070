//! Conversations over several topics: what hangs on what, and what is kept.

use jiff::{SignedDuration, Timestamp};
use serde_json::Value;

use crate::desk::{Office, json, noon};

/// One person, whose clock goes on between messages.
struct Talk {
    office: Office,
    now: Timestamp,
}

impl Talk {
    fn new() -> Self {
        Self {
            office: Office::new(),
            now: noon(),
        }
    }

    fn say(&mut self, text: &str) -> Value {
        self.now += SignedDuration::from_mins(1);
        json(&self.office.hear("p", text, self.now).line(None))
    }

    fn pause(&mut self, hours: i64) {
        self.now += SignedDuration::from_hours(hours);
    }
}

fn reply(line: &Value) -> &str {
    line["reply"].as_str().expect("a reply")
}

fn missing(line: &Value) -> Vec<&str> {
    line["missing"]
        .as_array()
        .expect("a list")
        .iter()
        .filter_map(Value::as_str)
        .collect()
}

#[test]
fn each_dose_lowers_what_is_left_and_a_change_takes_its_place() {
    let mut talk = Talk::new();
    let kept = talk.say("remember bleach 5%, 1 L");
    assert_eq!(kept["answer"]["bottles"][0]["left"]["treats_l"], 10_000.0);
    let left = |line: &Value| line["answer"]["left"]["ml"].as_f64().expect("left");
    assert_eq!(left(&talk.say("20 L")), 998.0);
    assert_eq!(
        left(&talk.say("same but cloudy")),
        996.0,
        "4 mL instead of 2"
    );
    assert_eq!(left(&talk.say("and for 40 L?")), 988.0, "8 mL more");
    assert_eq!(
        left(&talk.say("no, 20 L")),
        992.0,
        "4 mL instead of 8, cloudy as before"
    );
    assert_eq!(
        left(&talk.say("bleach 5%, 20 L")),
        990.0,
        "a question of its own"
    );
    let undone = talk.say("I did not make it");
    assert_eq!(undone["request"]["topic"], "stock");
    assert_eq!(undone["answer"]["bottles"][0]["left"]["ml"], 992.0);
    let again = talk.say("did not make it");
    assert!(again["answer"].is_null(), "only the last one: {again}");
    // A faster dose stands in for the one before it.
    talk.say("20 L clear, water at 15 C");
    assert_eq!(left(&talk.say("can it be faster?")), 988.0);
}

#[test]
fn under_a_week_at_ones_own_pace_is_warned_of_and_never_an_empty_bottle_refused() {
    let mut talk = Talk::new();
    talk.say("remember bleach 5%, 100 ml");
    let first = talk.say("100 L");
    assert!(first["answer"]["left"]["days"].is_null(), "no pace yet");
    let mut last = Value::Null;
    for _ in 0..6 {
        talk.pause(24);
        last = talk.say("100 L");
    }
    // 10 mL a day, 30 mL left.
    assert_eq!(last["answer"]["left"]["ml"], 30.0);
    assert_eq!(last["answer"]["left"]["days"], 2.0);
    for _ in 0..4 {
        talk.pause(24);
        last = talk.say("100 L");
    }
    assert_eq!(last["answer"]["left"]["ml"], 0.0);
    assert_eq!(last["answer"]["dose_ml"], 10.0, "the count may be wrong");
}

#[test]
fn age_warns_and_never_changes_a_dose() {
    let mut fresh = Talk::new();
    fresh.say("remember bleach 5% opened 1 February 2026");
    let fresh = fresh.say("20 L");
    let mut old = Talk::new();
    old.say("remember bleach 5% opened 1 March 2024");
    let old = old.say("20 L");
    assert_eq!(fresh["answer"]["dose_ml"], old["answer"]["dose_ml"]);
    assert_eq!(fresh["answer"]["wait_min"], old["answer"]["wait_min"]);
    assert!(reply(&old).contains("get fresh"), "{old}");
    let estimate = &old["answer"]["estimate"];
    assert!(
        estimate["percent_left"]
            .as_f64()
            .is_some_and(|share| share < 70.0)
    );
    assert!(fresh["answer"]["estimate"].is_null());
}

#[test]
fn a_date_to_come_is_asked_about() {
    let mut talk = Talk::new();
    let kept = talk.say("remember bleach 5%, opened 1 March 2027");
    assert!(reply(&kept).contains("2027-03-01"), "{kept}");
    assert!(kept["answer"]["bottles"][0]["opened"].is_null());
    let told = talk.say("opened 1 February 2026");
    assert_eq!(told["answer"]["bottles"][0]["opened"], "2026-02-01");
    assert_eq!(told["answer"]["bottles"][0]["strength_percent"], 5.0);
}

#[test]
fn bottles_are_told_apart_by_what_they_hold() {
    let mut talk = Talk::new();
    talk.say("remember bleach 5%");
    talk.say("remember chlorine tablets 67 mg");
    assert_eq!(talk.say("20 L")["answer"]["tablets"], 2);
    assert_eq!(talk.say("20 L with my bleach")["answer"]["dose_ml"], 2.0);
    assert_eq!(
        talk.say("40 L")["answer"]["dose_ml"],
        4.0,
        "the one used last"
    );
    assert_eq!(talk.say("20 L with my tablets")["answer"]["tablets"], 2);
    // Tablets are not for a well, the bleach is.
    let well = talk.say("our well is 1 m wide and has 2 m of water");
    assert_eq!(well["remembered"][0], "product");
    assert!(reply(&well).contains("bleach 5%"), "{well}");
}

#[test]
fn the_facts_of_a_well_may_come_one_by_one() {
    let mut talk = Talk::new();
    assert_eq!(
        missing(&talk.say("how do I disinfect our dug well?"))[0],
        "product"
    );
    assert_eq!(missing(&talk.say("bleach"))[0], "strength_percent");
    assert_eq!(missing(&talk.say("5"))[0], "diameter_m");
    assert_eq!(missing(&talk.say("1.2 m"))[0], "water_depth_m");
    let asked = talk.say("the well is 9 m deep");
    assert_eq!(missing(&asked), ["water_depth_m"]);
    assert!(reply(&asked).contains("WATER"), "{asked}");
    let answered = talk.say("4 m");
    assert_eq!(answered["answer"]["wait_min"], 720);
    assert_eq!(answered["answer"]["well"]["water_l"], 4524.0);
    let changed = talk.say("no, 1.5 m across");
    assert_eq!(changed["answer"]["well"]["water_l"], 7069.0);
}

#[test]
fn what_belongs_to_other_work_is_no_follow_up() {
    let mut talk = Talk::new();
    talk.say("well 1 m wide, 2 m of water, bleach 5%");
    let bucket = talk.say("and how much for a 20 L bucket to drink?");
    assert_eq!(bucket["answer"]["dose_ml"], 2.0);
    let solution = talk.say("10 L of 0.5% solution for floors from bleach 5%");
    assert_eq!(solution["answer"]["dose_ml"], 1000.0);
    assert_eq!(talk.say("and for 20 L?")["answer"]["dose_ml"], 2000.0);
    assert_eq!(talk.say("and if I want 0.1%?")["answer"]["dose_ml"], 400.0);
    assert_eq!(talk.say("no, 4%")["answer"]["dose_ml"], 500.0);
    let drink = talk.say("how much bleach 4% for 20 L clear drinking water");
    assert_eq!(drink["answer"]["dose_ml"], 2.5);
}

#[test]
fn a_low_reading_invites_the_amount() {
    let mut talk = Talk::new();
    let low = talk.say("chlorine test shows 0.1 mg/L after 30 min");
    assert_eq!(missing(&low), Vec::<&str>::new());
    assert!(low["answer"]["dose_ml"].is_null());
    let added = talk.say("1000 L, bleach 5%");
    assert_eq!(added["answer"]["dose_ml"], 8.0);
    assert_eq!(added["answer"]["residual"]["aim_mg_per_l"], 0.5);
    // Chit-chat does not bring an invitation back.
    let mut talk = Talk::new();
    talk.say("chlorine test shows 0.1 mg/L after 30 min");
    assert_eq!(missing(&talk.say("good morning")), Vec::<&str>::new());
}

#[test]
fn a_reading_between_is_settled_by_when_it_was_taken() {
    let mut talk = Talk::new();
    let depends = talk.say("residual 0.3");
    assert_eq!(depends["answer"]["residual"]["verdict"], "enough-at-use");
    let soon = talk.say("30 minutes after the dose");
    assert_eq!(soon["answer"]["residual"]["verdict"], "low", "{soon}");
    let mut talk = Talk::new();
    talk.say("residual 0.3");
    let home = talk.say("at home, from the clay pot");
    assert_eq!(home["answer"]["residual"]["verdict"], "enough", "{home}");
}

#[test]
fn follow_ups_survive_a_question_about_keeping() {
    let mut talk = Talk::new();
    talk.say("20 L bleach 5%");
    assert_eq!(
        talk.say("how do I keep the treated water?")["request"]["topic"],
        "storage"
    );
    assert!(
        reply(&talk.say("more")).contains("cup"),
        "of the last answer"
    );
    assert_eq!(talk.say("same but cloudy")["answer"]["dose_ml"], 4.0);
}

#[test]
fn two_questions_the_first_is_answered_and_the_other_seen() {
    let mut talk = Talk::new();
    let both = talk.say("how much bleach 5% for 20 L and how do I store it?");
    assert_eq!(both["answer"]["dose_ml"], 2.0);
    assert_eq!(both["answer"]["seen"][0], "storage");
    assert!(reply(&both).contains("storing"), "{both}");
    let promised = talk.say("20 L bleach 5% how much? text me when it is ready");
    assert_eq!(promised["answer"]["reminder"]["wait_min"], 30);
    assert!(reply(&promised).contains("30 min"));
    let one = talk.say("20 L bleach 5% how much?");
    assert!(one["answer"]["seen"].is_null());
}

#[test]
fn what_nobody_can_mean_gets_one_clear_question() {
    for (text, asks) in [
        ("well 0 m wide, 3 m of water, bleach 5%", "diameter_m"),
        ("well 1 m wide, 0 m of water, bleach 5%", "water_depth_m"),
        ("well 300 m wide, 3 m of water, bleach 5%", "diameter_m"),
        ("how much bleach 5% for 0 people for 30 days", "people"),
        (
            "how much bleach 5% to order for 300 people for 0 days",
            "days",
        ),
        ("how much water does 0 L of bleach 5% treat", "stock_ml"),
        (
            "make 10 L of 6% floor solution from 5% bleach",
            "target_percent",
        ),
        (
            "10 L of 60% floor solution from 70% calcium hypochlorite",
            "target_percent",
        ),
        ("well 1 m wide, 3 m of water, iodine tincture 2%", "product"),
        (
            "0.5% floor solution 10 L from povidone iodine 10%",
            "product",
        ),
        (
            "residual 0.1, 1000 L, iodine tincture 2%, how much to add",
            "product",
        ),
    ] {
        let line = Talk::new().say(text);
        assert_eq!(missing(&line).first(), Some(&asks), "{text:?}: {line}");
        assert!(line["answer"].is_null(), "{text:?}: {line}");
        assert_eq!(
            reply(&line).matches('?').count().min(1),
            1,
            "{text:?}: {line}"
        );
    }
}

/// Acceptance reads these fields: each topic fills `request`, `missing` and `answer`.
#[test]
fn every_topic_has_an_answer() {
    let mut talk = Talk::new();
    for (text, topic) in [
        ("20 L bleach 5%", "dose"),
        ("can it be faster", "adjust"),
        ("how long to boil", "boil"),
        ("clear bottles in the sun, sunny sky", "sun"),
        ("what does a 0.2 micron filter stop", "filter"),
        ("bleach or boiling, which is better", "choose"),
        ("residual 0.6 after 30 min", "residual"),
        ("well 1 m wide, 2 m of water, bleach 5%", "well"),
        ("0.05% hand wash, 20 L, bleach 5%", "dilute"),
        ("how much water does 1 L of bleach 5% treat", "supply"),
        ("how should I keep treated water", "storage"),
        ("remember bleach 5%", "stock"),
        ("answer in English", "settings"),
        ("my son swallowed bleach", "exposure"),
        ("three children have diarrhoea", "illness"),
        ("20 L bleach 5%", "dose"),
        ("why", "why"),
        ("more", "more"),
        ("remind me", "remind"),
        ("help", "help"),
        ("stop", "stop"),
        ("start", "start"),
        ("forget me", "forget"),
    ] {
        let line = talk.say(text);
        assert_eq!(line["request"]["topic"], topic, "{text:?}");
        assert!(
            line["missing"].as_array().is_some_and(Vec::is_empty),
            "{line}"
        );
        // "Faster" is refused where it gains nothing.
        assert!(
            !line["answer"].is_null() || topic == "adjust",
            "{text:?}: {line}"
        );
    }
}
