//! Replies: figures, budget, what the first SMS must hold.

use std::collections::BTreeSet;

use matone::reply::Encoding;
use serde_json::Value;

use crate::desk::{Office, noon};

/// All numbers of a JSON value, in every unit that a reply may show them in.
fn numbers(value: &Value, out: &mut BTreeSet<String>) {
    match value {
        Value::Number(number) => {
            let value = number.as_f64().expect("a number");
            let per_gallon = [1.0, 3.785_411_784, 3.785_411_784 / 4.0, 4.546_09];
            let shown = [
                value,
                value / 60.0,
                value / 1440.0,
                // mL in litres, grams in kilograms.
                value / 1000.0,
                value.round(),
                value.floor(),
            ]
            .into_iter()
            .chain(per_gallon.iter().map(|unit| value / unit));
            for shown in shown {
                for decimals in 0..4 {
                    let text = format!("{shown:.decimals$}");
                    let text = if text.contains('.') {
                        text.trim_end_matches('0').trim_end_matches('.').to_owned()
                    } else {
                        text
                    };
                    // Rounding is for show, never to another figure.
                    if text
                        .parse::<f64>()
                        .is_ok_and(|t| (t - shown).abs() <= 0.006 * shown.abs())
                    {
                        out.insert(text);
                    }
                }
            }
            // 1 3/4 spoons
            let quarters = (value.fract() * 4.0).round();
            if (value * 4.0).fract() == 0.0 && value < 20.0 {
                for part in [(1.0, "1/4"), (2.0, "1/2"), (3.0, "3/4")] {
                    if part.0 == quarters {
                        out.insert(part.1.to_owned());
                    }
                }
            }
        }
        Value::Array(all) => all.iter().for_each(|value| numbers(value, out)),
        Value::Object(all) => all.values().for_each(|value| numbers(value, out)),
        Value::Bool(_) | Value::Null | Value::String(_) => {}
    }
}

fn figures_in(text: &str) -> Vec<String> {
    let pattern = regex::Regex::new(r"\d+/\d+|\d+(?:\.\d+)?").expect("a pattern");
    pattern
        .find_iter(text)
        .map(|found| found.as_str().to_owned())
        .collect()
}

fn check_figures(message: &str) {
    let mut office = Office::new();
    let answered = office.hear("p", message, noon());
    let json = crate::desk::json(&answered.line(None));
    if json["answer"].is_null() {
        return;
    }
    // "In each litre", "for each 1000 L": units of reference.
    let mut known = BTreeSet::from(["1".to_owned(), "1000".to_owned()]);
    numbers(&json["request"], &mut known);
    numbers(&json["answer"], &mut known);
    let mut said = vec![answered.reply];
    let alone =
        ["exposure", "stock"].contains(&json["request"]["topic"].as_str().unwrap_or_default());
    if !alone {
        said.push(office.hear("p", "more", noon()).reply);
    }
    for text in said {
        // A date is told as it stands in the answer.
        let opened = json["answer"]["bottles"][0]["opened"].as_str();
        let text = opened.map_or(text.clone(), |date| text.replace(date, ""));
        for figure in figures_in(&text) {
            assert!(
                known.contains(&figure),
                "{message:?}: {figure} in {text:?} is not in {json}"
            );
        }
    }
}

#[test]
fn a_reply_has_no_figure_that_the_answer_has_not() {
    for message in [
        "2 gallons cloudy 1% bleach",
        "20 L bleach 5%",
        "1000 L tank, bleach 3.5%, water 12 C, pH 7.2",
        "povidone iodine 10%, 5 L",
        "iodine tincture 2%, 2 quarts, cloudy",
        "chlorine tablets 67 mg, 40 L",
        "bleaching powder 33%, 100 L",
        "calcium hypochlorite 65%, 5000 L tank",
        "chlorine dioxide tablets 20 L",
        "how long to boil at 2400 m",
        "how long must I boil water",
        "sun, how long",
        "sunny, 1.5 L bottle in the sun",
        "0.2 micron filter",
        "which is best, fire or bleach",
        "I drank bleach",
        "3 imperial gallons, bleach 5%",
        "well 1.5 m wide, 3 m of water, bleach 5%",
        "muddy well 5 ft 6 in across, 8 ft of water, calcium hypochlorite 65%, pH 8",
        "0.05% hand wash, 20 L, bleach 5%",
        "0.5% floor solution 10 L from bleach 3.5%",
        "2% solution 15 L for vomit spills from calcium hypochlorite 70%",
        "0.5% floor solution 10 L with chlorine tablets 8.68 g",
        "1% stock solution, 2 L, bleaching powder 30%",
        "residual 0.1 after 30 min",
        "residual 0.3",
        "residual 4.5",
        "residual 6",
        "residual 0.2 after 10 minutes",
        "residual 0.3 at home the next day",
        "residual 0 tank 500 L bleach 5% how much to add",
        "residual 0.2 tank 5000 L calcium hypochlorite 65% how much to add",
        "no test kit, is there enough chlorine?",
        "no smell of chlorine after 30 min",
        "it smells faintly of chlorine",
        "tried 1 2 3 4 mL in 4 buckets of 20 L, after 30 min 0 0.1 0.4 0.8",
        "tried 1 2 3 4 mL in 4 buckets of 20 L, after 30 min 0 0.1 0.4 0.8, tank 5000 L",
        "jar test 20 L: 1 ml 0, 2 ml 0.1, 3 ml 0.2",
        "how much water does 1 L of bleach 5% treat",
        "400 chlorine tablets 67 mg for 50 people, how many days",
        "how many people can 500 ml bleach 5% serve for 7 days",
        "how much bleach 5% to order for 300 people for 30 days",
        "how many tablets of chlorine 67 mg to order for 60 people for 10 days",
        "2 kg calcium hypochlorite 65% for 200 people, how long will it last",
        "how should I keep treated water",
        "where do I keep my bleach",
        "how should we store chlorine tablets",
        "remember bleach 5%, 1 L",
        "remember bleach 5%, 1 L, opened 1 March 2024",
        "20 L bleach 5% how much? text me when it is ready",
        "children have diarrhoea",
    ] {
        check_figures(message);
    }
}

/// Strengths, volumes and conditions as they are met.
pub(crate) fn grid() -> Vec<String> {
    let products = [
        "bleach 0.5%",
        "bleach 1%",
        "bleach 2.6%",
        "bleach 3.5%",
        "bleach 5.25%",
        "bleach 8.25%",
        "bleach 12.5%",
        "chlorine tablets 33 mg",
        "chlorine tablets 67 mg",
        "povidone iodine 10%",
        "iodine tincture 2%",
        "iodine tablets 8 mg",
        "calcium hypochlorite 65%",
        "bleaching powder 30%",
    ];
    let volumes = [
        "1 L",
        "1.5 L",
        "10 L",
        "20 L",
        "55 gallons",
        "5 imperial gallons",
        "200 L",
        "1000 L",
    ];
    let conditions = [
        "",
        "clear",
        "cloudy",
        "cold",
        "cloudy, cold",
        "water 8 C",
        "clear, 20 C, pH 7.5",
    ];
    let mut all = Vec::new();
    for product in products {
        for volume in volumes {
            for condition in conditions {
                all.push(format!("{product}, {volume}, {condition}"));
            }
        }
    }
    all
}

/// A plain dose answer fits one SMS, and its head alone is safe to act on.
#[test]
fn every_plain_dose_answer_fits_one_sms() {
    for message in grid() {
        let answered = Office::once(&message);
        let json = crate::desk::json(&answered.line(None));
        assert!(
            !json["answer"].is_null(),
            "{message:?} was not answered: {}",
            answered.reply
        );
        assert_eq!(
            answered.segments.parts.len(),
            1,
            "{message:?}: {}",
            answered.reply
        );
        assert_eq!(answered.segments.encoding, Encoding::Gsm7, "{message:?}");
        assert!(answered.reply.contains("wait"), "{}", answered.reply);
        if message.contains("cloudy") {
            assert!(answered.reply.contains("strain"), "{}", answered.reply);
        }
        let iodine = message.contains("iodine");
        assert_eq!(
            iodine,
            answered.reply.contains("pregnancy"),
            "{}",
            answered.reply
        );
    }
}

/// What does not fit is not lost: head, first tail and `more` together say every caution.
#[test]
fn more_says_what_the_first_sms_had_no_room_for() {
    let mut office = Office::new();
    let first = office.hear("p", "20 L bleach 5%", noon()).reply;
    assert!(first.ends_with("MORE"), "{first}");
    let more = office.hear("p", "MORE", noon()).reply;
    for said in ["Cryptosporidium", "smell", "Giardia", "health office"] {
        assert!(
            first.contains(said) || more.contains(said),
            "{said}: {first} / {more}"
        );
    }
}

/// Messages that are answered with a question, a refusal, another answer than a dose, or a
/// service reply.
pub(crate) fn service_messages() -> Vec<String> {
    [
        "",
        "hello",
        "help",
        "stop",
        "start",
        "forget me",
        "remember bleach 5%",
        "why",
        "more",
        "bleach",
        "bleach 20 L",
        "chlorine 20 L",
        "iodine 5 L",
        "pool chlorine 20 L",
        "powder 20 L",
        "scented bleach 5% 20 L",
        "tablets 67 mg 20 L",
        "bleach and iodine 20 L",
        "bleach 5% or 3%, 20 L",
        "bleach 50% 20 L",
        "diluted bleach 5% 20 L",
        "bleach 5 ppm 20 L",
        "bleach no label 20 L",
        "bleach no label no fire 20 L",
        "bleach 5%",
        "bleach 5% bucket",
        "bleach 5% 0 L",
        "bleach 5% 20 L and 200 L",
        "bleach 5% 1.000 L",
        "chlorine tablets 20 L",
        "I drank bleach",
        "calcium hypochlorite in my eye",
        "three people vomiting",
        "petrol in the water",
        "iodine tincture 2% 5 L pregnant",
        "bleach and vinegar",
        "bleach for the aquarium",
        "use imperial gallons",
        "answer in French",
        "well 1 m wide",
        "well 1.5 m wide, bleach 5%",
        "well 10 m deep, 1.5 m wide, bleach 5%",
        "well 0 m wide, 2 m of water, bleach 5%",
        "well 1 m wide, 2 m of water, chlorine tablets 67 mg",
        "well 1.5 m wide, 3 m of water, bleach 5%",
        "well 1.2 m wide, 4 m of water, calcium hypochlorite 70%",
        "0.05% hand wash, 20 L, bleach 5%",
        "0.05% hand wash, 20 L, calcium hypochlorite 70%",
        "0.5% floor solution, bleach 5%",
        "0.5% floor solution, 10 L",
        "0.5% floor solution, 10 L, bleach 5%",
        "floor solution 10 L, bleach 5%",
        "6% floor solution 10 L from 5% bleach",
        "1% stock solution 2 L, calcium hypochlorite 70%",
        "residual",
        "residual 0.1 after 30 min",
        "residual 0.3",
        "residual 0.8",
        "residual 4.5",
        "residual 6",
        "residual 0.2 after 10 minutes",
        "residual 0.5 after 2 days",
        "residual 0.1, 1000 L, bleach 5%, how much to add",
        "residual 0.1, 1000 L, calcium hypochlorite 65%, how much to add",
        "residual 0.1, how much to add",
        "no test kit, is there enough chlorine?",
        "no smell of chlorine after 30 min",
        "it smells faintly of chlorine",
        "tried 1 2 3 4 mL in 4 buckets of 20 L, after 30 min 0 0.1 0.4 0.8",
        "tried 1 2 3 4 mL in buckets, after 30 min 0 0.1 0.4 0.8",
        "tried 1 2 3 4 mL in 4 buckets of 20 L, after 30 min 0 0.1 0.4 0.8, tank 5000 L",
        "tried 1 2 3 4 mL in 4 buckets of 20 L, after 30 min 0 0.1 0.2 0.3",
        "tried 1 2 3 4 mL in 4 buckets of 20 L, after 30 min 0.6 0.7 0.8 0.9",
        "tried 1 2 3 4 mL in 4 buckets of 20 L, after 30 min 0.6 0.1 0.8 0.2",
        "how much water does 1 L of bleach 5% treat",
        "how long will bleach 5% last 50 people",
        "how many people will bleach 5% serve for 10 days",
        "400 chlorine tablets 67 mg for 50 people, how many days",
        "how much bleach 5% for 300 people for 30 days",
        "how much calcium hypochlorite 70% for 300 people for 30 days",
        "how much bleach 5% for 0 people for 30 days",
        "how should I keep treated water",
        "where do I keep my bleach",
        "how long does bleaching powder keep",
        "remember bleach 5%, 1 L",
        "remember bleach 5%, opened 1 March 2030",
        "opened 1 March 2026",
        "how much is left",
        "did not make it",
        "remind me",
    ]
    .map(str::to_owned)
    .to_vec()
}

#[test]
fn every_question_and_service_reply_fits_one_sms() {
    for message in service_messages() {
        let answered = Office::once(&message);
        let parts = &answered.segments.parts;
        assert_eq!(parts.len(), 1, "{message:?}: {}", answered.reply);
        assert_eq!(
            answered.segments.encoding,
            Encoding::Gsm7,
            "{message:?}: {}",
            answered.reply
        );
    }
}
