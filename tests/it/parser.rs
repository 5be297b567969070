//! Reading: laws, and the texts that broke it or might.

use matone::contract::RequestJson;
use matone::locale::Locales;
use matone::parser::{Reading, Vocabulary, read};
use matone::quantity::UnitSystem;
use proptest::prelude::*;

use crate::desk::Office;

fn reading(text: &str) -> Reading {
    let locales = Locales::embedded().unwrap_or_else(|error| panic!("{error}"));
    let (_, english) = locales.get("en").expect("English");
    read(text, &Vocabulary::of(&english.lexicon), UnitSystem::Metric)
}

fn check_volume(text: &str, litres: f64) {
    let read = reading(text).stated.volume_l;
    let right = read.is_some_and(|read| (read - litres).abs() <= litres * 1e-9);
    assert!(right, "{text:?}: {read:?} instead of {litres}");
}

fn check_no_volume(text: &str) {
    let read = reading(text).stated.volume_l;
    assert_eq!(read, None, "{text:?}");
}

fn check_strength(text: &str, percent: f64) {
    let read = reading(text).stated.strength_percent;
    let right = read.is_some_and(|read| (read - percent).abs() <= percent * 1e-9);
    assert!(right, "{text:?}: {read:?} instead of {percent}");
}

fn check_no_strength(text: &str) {
    let read = reading(text).stated.strength_percent;
    assert_eq!(read, None, "{text:?}");
}

const GALLON: f64 = 3.785_411_784;

#[test]
fn volumes_are_read_in_every_shape() {
    check_volume("20 L", 20.0);
    check_volume("20L", 20.0);
    check_volume("20 litre jerrycan", 20.0);
    check_volume("20-litre jerrycan", 20.0);
    check_volume("1 1/2 gallons", 1.5 * GALLON);
    check_volume("1½ gal", 1.5 * GALLON);
    check_volume("a gallon and a half", 1.5 * GALLON);
    check_volume("2 US gallons", 2.0 * GALLON);
    check_volume("2 imperial gallons", 9.092_18);
    check_volume("3 quarts", 0.75 * GALLON);
    check_volume("4 pints", 0.5 * GALLON);
    check_volume("16 cups", GALLON);
    check_volume("2 m³", 2000.0);
    check_volume("1.5 m3", 1500.0);
    check_volume("750 ml", 0.75);
    check_volume(".5 L", 0.5);
    check_volume("0,5 L", 0.5);
    check_volume("1,000 L", 1000.0);
    check_volume("1,00,000 L", 100_000.0);
    check_volume("10 000 L", 10_000.0);
    check_volume("two hundred and fifty litres", 250.0);
    check_volume("fifteen hundred litres", 1500.0);
    check_volume("two point five litres", 2.5);
    check_volume("half a litre", 0.5);
    check_volume("three quarters of a litre", 0.75);
    check_volume("3 x 20L", 60.0);
    check_volume("20 L x 3", 60.0);
    check_volume("three jerrycans of 20 L", 60.0);
    check_volume("two 20 L jerrycans", 40.0);
    check_volume("a dozen 1.5 L bottles", 18.0);
    check_volume("20 L cans, 3 of them", 60.0);
    check_volume("3 jerrycans, each holds 20 L", 60.0);
    check_volume("two buckets 20L each and one jerrycan 10L", 50.0);
    check_volume("half-full 20 L jerrycan", 10.0);
    check_volume("the 200 L drum is three quarters full", 150.0);
    check_volume("٢٠ L", 20.0);
    check_volume("२० L", 20.0);
    check_volume("２０ Ｌ", 20.0);
    check_volume("2\u{200B}0 L", 20.0);
    check_volume("20 (twenty) litres", 20.0);
    check_volume("5 gallons (19 L)", 5.0 * GALLON);
    check_volume("gallon jug of 5 litres", 5.0);
    check_volume("1000 L tank, quarter left", 250.0);
    check_volume("bleach 5%, about 20 L", 20.0);
}

#[test]
fn what_is_no_volume_of_water_is_not_read_as_one() {
    for text in [
        "2 drops per litre",
        "8 drops a gallon",
        "how many drops for each litre",
        "tap gives 20 L per minute",
        "room 20 L",
        "see you at 5 l",
        "call 0700 20 20 20 l8r",
        "bleach bottle is 5 L",
        "20 L of 5% bleach",
        "1.000 L",
        "2..5 L",
        "10² L",
        "2O L",
        "l0 L",
        "-5 L",
        "0 L",
        "1e9 L",
        "100 ml",
        "20 L or 200 L",
        "bucket",
        "yesterday I did 20 L",
        "\u{202E}L 02\u{202C}",
        "on 20/10/2026 we met",
        "4 25 L jerrycan",
        "1000 L tank, a quarter of it is gone",
        "20 L jerrycans",
        "20 L twice",
    ] {
        check_no_volume(&format!("bleach 5%, {text}"));
    }
}

#[test]
fn strengths_are_read_in_every_shape() {
    check_strength("bleach 5%", 5.0);
    check_strength("bleach 5 %", 5.0);
    check_strength("bleach5%20L", 5.0);
    check_strength("bleach 3,5%", 3.5);
    check_strength("five and a quarter percent bleach", 5.25);
    check_strength("bleach 5.250%", 5.25);
    check_strength("bleach 50,000 ppm", 5.0);
    check_strength("bleach 50 g/L", 5.0);
    check_strength("bleach 5‰", 0.5);
    check_strength("bleach 12° chl", 12.0 * 0.317);
    check_strength("bleach 5-6%", 5.0);
    check_strength("bleach 5% to 6%", 5.0);
    check_strength("bleach 3%, sorry, 5%", 5.0);
    check_strength("not 4%, it is bleach 5%", 5.0);
    check_strength("bleach 5% about 20 L", 5.0);
    check_strength("my friend says 3%, mine is bleach 5%", 5.0);
    check_strength("the label says \"bleach 5%\"", 5.0);
}

#[test]
fn what_is_no_strength_is_not_read_as_one() {
    for text in [
        "less than 5%",
        "maybe 3%",
        "about 5%",
        "3-5%",
        "5% and 3%",
        "not 5%",
        "50%",
        "0%",
        "150%",
        "5 ppm",
        "12°",
        "S%",
        "5²%",
        "5.2.5%",
        "4.,2%",
        "diluted, was 5%",
        "kills 99.9% of germs",
        "I am 100% sure",
        "discount 5% today",
        "battery 5%",
        "my friend says 5%",
        "yesterday it was 5%",
    ] {
        check_no_strength(&format!("bleach, {text}, 20 L"));
    }
}

/// A slip is mended, but never into another meaning.
#[test]
fn slips_are_mended_only_within_one_meaning() {
    use matone::request::Clarity;
    for (text, clarity) in [
        ("claer water", Some(Clarity::Clear)),
        ("clodyu water", None),
        ("cloduy water", Some(Clarity::Cloudy)),
        ("muddyy water", Some(Clarity::Cloudy)),
        ("unclear water", Some(Clarity::Cloudy)),
        ("not clear", Some(Clarity::Cloudy)),
        ("does not look clean", Some(Clarity::Cloudy)),
        ("not muddy", Some(Clarity::Clear)),
        ("cloudy sky", None),
    ] {
        assert_eq!(reading(text).stated.clarity, clarity, "{text:?}");
    }
    for text in [
        "in a sack",
        "I checked the label",
        "happy birthday",
        "a bitter taste of life",
    ] {
        let topic = reading(text).request.topic;
        let hurt = matches!(
            topic,
            matone::request::Topic::Exposure | matone::request::Topic::Illness
        );
        assert!(!hurt, "{text:?} is {topic:?}");
    }
}

#[test]
fn words_that_are_not_known_are_handed_on() {
    let text = "bleach 5% for 20 L flimflam";
    let unread: Vec<&str> = reading(text)
        .unread
        .into_iter()
        .filter_map(|span| text.get(span))
        .collect();
    assert_eq!(unread, ["flimflam"]);
}

fn naughty() -> impl Strategy<Value = String> {
    let pieces = prop::sample::select(vec![
        "bleach",
        "5%",
        "20 L",
        "%",
        "%%",
        "°",
        "5",
        "20",
        ".",
        ",",
        "1/0",
        "1/2",
        "x",
        "-",
        "½",
        "²",
        "\u{202E}",
        "\u{202C}",
        "\u{200B}",
        "\0",
        "😀",
        "e9",
        "1e999",
        "NaN",
        "gallon",
        "and",
        "a",
        "half",
        "of",
        "to",
        "no",
        "not",
        "per",
        "each",
        "full",
        "jerrycan",
        "\"",
        ">",
        "\n",
        "pH",
        "C",
        "m3",
        "०",
        "٢",
        "৪",
        "lakh",
        "hundred",
        "point",
        "thousand",
        "mg",
        "mg/l",
        "sorry",
        "yesterday",
        "(",
        ")",
        "opened 31/02/2026",
        "0700123456",
        "tablets",
        "iodine",
    ]);
    prop::collection::vec((pieces, any::<bool>()), 0..24).prop_map(|pieces| {
        pieces
            .into_iter()
            .map(|(piece, glued)| {
                if glued {
                    piece.to_owned()
                } else {
                    format!("{piece} ")
                }
            })
            .collect()
    })
}

/// Facts said in any order.
fn facts() -> impl Strategy<Value = (Vec<String>, f64, f64, f64)> {
    (1_u32..=14, 1_u32..=900, 1_u32..=35).prop_flat_map(|(percent, litres, celsius)| {
        let parts = vec![
            format!("bleach {percent}%"),
            format!("{litres} L"),
            "cloudy".to_owned(),
            format!("water {celsius} C"),
            "pH 7.5".to_owned(),
            "my wife is pregnant".to_owned(),
            "sewage in it".to_owned(),
        ];
        (
            Just(parts).prop_shuffle(),
            Just(f64::from(percent)),
            Just(f64::from(litres)),
            Just(f64::from(celsius)),
        )
    })
}

proptest! {
    #[test]
    fn no_text_makes_it_panic(text in "\\PC{0,300}") {
        let _ = reading(&text);
    }

    #[test]
    fn no_mixture_of_its_own_words_makes_it_panic(text in naughty()) {
        let read = reading(&text);
        // And nothing that it states lies outside what is believed.
        prop_assert!(read.stated.volume_l.is_none_or(|litres| (0.25..=1e6).contains(&litres)));
        prop_assert!(read.stated.strength_percent.is_none_or(|percent| percent > 0.0 && percent <= 100.0));
        for span in read.unread {
            prop_assert!(text.get(span).is_some(), "a span that is no piece of the text");
        }
    }

    /// Nothing understood is dropped: every fact said, in whatever order, is in the request.
    #[test]
    fn every_fact_said_is_in_the_request((parts, percent, litres, celsius) in facts()) {
        let text = parts.join(", ");
        let read = reading(&text);
        let request = RequestJson::from(&read.request);
        prop_assert_eq!(request.topic, "dose", "{}", &text);
        prop_assert_eq!(request.product, Some("bleach"), "{}", &text);
        prop_assert_eq!(request.strength_percent, Some(percent), "{}", &text);
        prop_assert_eq!(request.volume_l, Some(litres), "{}", &text);
        prop_assert_eq!(request.clarity, Some("cloudy"), "{}", &text);
        prop_assert_eq!(request.temperature_c, Some(celsius), "{}", &text);
        prop_assert_eq!(request.ph, Some(7.5), "{}", &text);
        prop_assert_eq!(request.sewage, Some(true), "{}", &text);
        prop_assert_eq!(request.person, vec!["pregnant"], "{}", &text);
        prop_assert!(read.doubts.is_empty(), "{:?} {}", read.doubts, &text);
    }
}

#[test]
fn long_texts_are_not_read_and_do_not_take_long() {
    for text in [
        "%".repeat(10_000),
        "bleach 5% 20 L ".repeat(5_000),
        "x".repeat(200_000),
    ] {
        assert_eq!(
            reading(&text).request.topic,
            matone::request::Topic::Unclear
        );
    }
}

/// "1 per 20 L" is what the label says of one tablet; "how many per 20 L" is not.
#[test]
fn a_tablets_label_litres_are_read() {
    let read = reading("chlorine tablet 67 mg, label says 1 per 20 L, 40 L").stated;
    assert_eq!((read.label_litres, read.volume_l), (Some(20.0), Some(40.0)));
    let read = reading("67 mg chlorine tablets, one tablet per 10 L, I have 40 L").stated;
    assert_eq!((read.label_litres, read.volume_l), (Some(10.0), Some(40.0)));
    let read = reading("how many 67 mg chlorine tablets per 20 L").stated;
    assert_eq!((read.label_litres, read.volume_l), (None, None));
}

fn check_well(text: &str, diameter: Option<f64>, depth: Option<f64>) {
    let stated = reading(text).stated;
    let same = |read: Option<f64>, wanted: Option<f64>| match (read, wanted) {
        (Some(read), Some(wanted)) => (read - wanted).abs() <= 1e-6,
        (read, wanted) => read == wanted,
    };
    assert!(
        same(stated.diameter_m, diameter) && same(stated.water_depth_m, depth),
        "{text:?}: {:?} {:?}",
        stated.diameter_m,
        stated.water_depth_m
    );
}

#[test]
fn a_wells_sizes_are_told_apart() {
    check_well("well 1.2 m wide, 4 m of water", Some(1.2), Some(4.0));
    check_well(
        "well 5 ft 6 in across, water 8 ft",
        Some(1.6764),
        Some(2.4384),
    );
    check_well(
        "well 5 ft 6 wide, 8 ft of water",
        Some(1.6764),
        Some(2.4384),
    );
    check_well(
        "the well is 1 m 20 cm wide with 3 m of water",
        Some(1.2),
        Some(3.0),
    );
    check_well("well radius 75 cm, 4 m of water", Some(1.5), Some(4.0));
    check_well(
        "well, circumference 3.141592653589793 m, 2 m of water",
        Some(1.0),
        Some(2.0),
    );
    // The depth of the well is not that of its water; with the dry part it is.
    check_well("well 10 m deep, 1 m wide", Some(1.0), None);
    check_well(
        "well 10 m deep, water is 7 m down, diameter 1 m",
        Some(1.0),
        Some(3.0),
    );
    check_well(
        "well 5 m deep, water is 7 m down, diameter 1 m",
        Some(1.0),
        None,
    );
    check_well("well 0 m wide, 3 m of water", None, Some(3.0));
    // Words and figures take turns, whichever comes first.
    for text in [
        "well 2 m diameter 15 m deep 3 m water",
        "well diameter 2 m depth 15 m water 3 m",
        "well diameter 2 m 15 m deep water 3 m",
        "well 3 m water 15 m deep 2 m diameter",
        "well 2 m wide water 3 m",
        "treat the water of a well 2 m wide and 3 m of water",
    ] {
        check_well(text, Some(2.0), Some(3.0));
    }
    check_well("well 2 m diameter 15 m deep", Some(2.0), None);
    check_well(
        "well depth 8 m and water level is at 5 m, wide 1 m",
        Some(1.0),
        None,
    );
}

#[test]
fn jars_are_paired_only_where_each_has_a_reading() {
    let jars = |text: &str| -> Vec<(f64, f64)> {
        reading(text)
            .stated
            .jars
            .iter()
            .map(|jar| (jar.ml, jar.mg_per_l))
            .collect()
    };
    let four = [(1.0, 0.0), (2.0, 0.1), (3.0, 0.4), (4.0, 0.8)];
    assert_eq!(
        jars("tried 1 2 3 4 mL in 4 buckets of 20 L, after 30 min 0 0.1 0.4 0.8"),
        four
    );
    assert_eq!(
        jars("jar test 20 L: 1 ml 0, 2 ml 0.1, 3 ml 0.4, 4 ml 0.8"),
        four
    );
    assert_eq!(
        jars("jar test: 1, 2, 3 and 4 ml in 20 L gave 0, 0.1, 0.4 and 0.8 mg/L"),
        four
    );
    // One reading too few, and a dose without a jar.
    assert_eq!(jars("jar test 1 2 3 4 ml in 20 L, 0 0.1 0.4"), []);
    assert_eq!(jars("I gave 2 ml to 20 L and it reads 0.3"), []);
    assert_eq!(jars("20 L bleach 5%"), []);
}

#[test]
fn a_solutions_target_is_not_the_bottles_strength() {
    let figures = |text: &str| {
        let stated = reading(text).stated;
        (stated.target_percent, stated.strength_percent)
    };
    let both = (Some(0.5), Some(5.0));
    assert_eq!(figures("0.5% floor solution from 5% bleach, 10 L"), both);
    assert_eq!(figures("from bleach 5% make 10 L of 0.5% solution"), both);
    assert_eq!(
        figures("500 ppm hand rinse from bleach 5%, 20 L").0,
        Some(0.05)
    );
    assert_eq!(figures("10 L hand wash from 5% bleach"), (None, Some(5.0)));
    assert_eq!(
        figures("10 L of 0.5% chlorine solution for floors"),
        (Some(0.5), None)
    );
    // The wrong way round is asked about, not turned round.
    assert_eq!(
        figures("make 10 L of 6% solution for the floor from 5% bleach"),
        (Some(6.0), Some(5.0))
    );
}

#[test]
fn people_are_counted_and_families_only_with_their_size() {
    let people = |text: &str| reading(text).stated.people;
    assert_eq!(people("bleach 5% for 300 people for 30 days"), Some(300.0));
    assert_eq!(people("bleach for 40 families of 5, ten days"), Some(200.0));
    assert_eq!(people("bleach for a family of seven, 10 days"), Some(7.0));
    assert_eq!(people("bleach for 40 families, 10 days"), None);
    assert_eq!(people("bleach for 0 people, 10 days"), None);
}

/// "Not too cloudy" is no word for clear.
#[test]
fn water_that_is_not_too_cloudy_is_not_taken_as_clear() {
    for text in [
        "20 L not too cloudy bleach 5%",
        "20 L bleach 5% water not that dirty",
        "eau pas trop trouble 20 L javel 5%",
        "20 L javel 5% l'eau n'est pas tres sale",
        "agua no muy turbia 20 L cloro 5%",
        "20 L cloro 5% el agua no esta tan sucia",
        "agua não muito turva 20 L lixívia 5%",
        "20 L lixivia 5% agua nao está assim tão suja",
        "maji si machafu sana lita 20 bleach 5%",
        "dlo a pa twò sal 20 lit klowòks 5%",
        "20 litre paani zyada ganda nahi bleach 5%",
        "20 लीटर पानी ज्यादा गंदा नहीं है ब्लीच 5%",
        "المي مش عكرة كتير 20 لتر كلور 5%",
        "الماء مش عكر جدا 20 لتر كلور 5%",
    ] {
        let answer = Office::once_json(text);
        assert_eq!(answer["request"]["volume_l"], 20.0, "{text}: {answer}");
        let clarity = answer["request"]["clarity"].as_str();
        assert_ne!(clarity, Some("clear"), "{text}: {answer}");
    }
    for text in [
        "20 L bleach 5% water is not cloudy at all",
        "that is not cloudy, 20 L bleach 5%",
        "eau pas du tout trouble 20 L javel 5%",
        "20 लीटर पानी गंदा नहीं है ब्लीच 5%",
    ] {
        let answer = Office::once_json(text);
        assert_eq!(answer["request"]["clarity"], "clear", "{text}: {answer}");
    }
}

/// Each of these drew a dose for a part of the water, or for a thinned product.
#[test]
fn a_count_or_a_denial_that_hangs_in_the_air_is_asked_about() {
    for (text, field) in [
        ("20 litres, no 200 litres, bleach 5%", "volume_l"),
        ("lita 20, hapana lita 200, blichi 5%", "volume_l"),
        ("20 litros, no 200 litros, cloro 5%", "volume_l"),
        ("bleach 5% no 3.5%, 20 L", "strength_percent"),
        ("jerrycan of 20 L is not full, bleach 5%", "volume_l"),
        ("2 nice red bucket 20 L bleach 5%", "volume_l"),
        ("2 جركانة اليوم 20 لتر كلور 5%", "volume_l"),
        ("20 L, two jerrycans, bleach 5%", "volume_l"),
        (
            "deux bidons de vingt litres et un de dix, javel 5%",
            "volume_l",
        ),
        (
            "i already mixed the 5% bleach with water, how much of that for 25 litres",
            "strength_percent",
        ),
        (
            "já misturei a lixívia de 5% com água, ponho quanto dessa em 25 litros?",
            "strength_percent",
        ),
    ] {
        let answer = Office::once_json(text);
        assert_eq!(answer["missing"][0], field, "{text}: {answer}");
    }
}

/// What is supposed only, or neither one nor the other, is not said.
#[test]
fn water_that_is_perhaps_clear_is_not_taken_as_clear() {
    for text in [
        "maybe the water is clear 20 L bleach 5%",
        "el agua no está ni sucia ni limpia, 20 L cloro 5%",
    ] {
        let answer = Office::once_json(text);
        let clarity = answer["request"]["clarity"].as_str();
        assert_ne!(clarity, Some("clear"), "{text}: {answer}");
    }
}

/// The bottle of today, and of the label that is read now.
#[test]
fn what_was_before_does_not_stand_beside_what_is_now() {
    for (text, percent) in [
        ("before it was 2.6%, now bleach 4%, 20 L clear", 4.0),
        (
            "avant j'avais 2,6 %, maintenant c'est javel 4 %, 20 L d'eau claire",
            4.0,
        ),
        (
            "anvan m te gen 2.6%, kounye a se javèl 4%, 20 lit dlo klè",
            4.0,
        ),
    ] {
        let answer = Office::once_json(text);
        assert_eq!(
            answer["request"]["strength_percent"], percent,
            "{text}: {answer}"
        );
    }
}

/// Words that English has too, and one that it lacks: the language that has them all is meant.
#[test]
fn a_message_of_borrowed_words_is_in_the_language_that_has_them_all() {
    let answer = Office::once_json("do drum 200 litre ke bleach 5%");
    assert_eq!(answer["lang"], "hi", "{answer}");
    assert_eq!(answer["request"]["volume_l"], 400.0, "{answer}");
    assert_eq!(Office::once_json("chlore 40 litres")["lang"], "fr");
}
