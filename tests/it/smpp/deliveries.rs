//! What a `deliver_sm` means, and the names in receipts.

use jiff::Timestamp;
use matone::channel::smpp::address::{Sender, sender};
use matone::channel::smpp::arrival::{Meaning, Writing, meaning};
use matone::channel::smpp::delivery::Delivery;
use matone::channel::smpp::receipt::Names;
use matone::config::Alphabet;
use matone::message::{Address, Arrival, DeliveryKey, PartOf, Receipt};
use matone::post::Aside;

use super::socket::{delivery, tlv};

const PERSON: &str = "255700000001";

fn read(body: &[u8]) -> Delivery {
    Delivery::read(body).expect("a delivery")
}

fn means(delivery: &Delivery) -> Meaning {
    let writing = Writing {
        default_alphabet: Alphabet::Gsm7,
        country_code: None,
    };
    meaning(delivery, &writing, 1000, Timestamp::UNIX_EPOCH)
}

fn message(delivery: &Delivery) -> Arrival {
    match means(delivery) {
        Meaning::Message(arrival) => arrival,
        other => panic!("{other:?}"),
    }
}

fn part(reference: u16, total: u8, number: u8) -> Option<PartOf> {
    Some(PartOf {
        reference,
        total,
        number,
    })
}

#[test]
fn a_message_is_a_message() {
    let arrival = message(&read(&delivery(PERSON, "hello", &[])));
    assert_eq!(arrival.from, Address::phone("+255700000001"));
    assert_eq!(arrival.text, "hello");
    assert_eq!(arrival.part, None);
    assert!(matches!(
        arrival.delivery,
        DeliveryKey::Alike { session: 1000, .. }
    ));
}

#[test]
fn parts_are_told_by_headers_and_by_fields() {
    let mut headed = read(&delivery(PERSON, "\x05\x00\x03\x07\x02\x01hello", &[]));
    headed.esm_class = 0x40;
    let arrival = message(&headed);
    assert_eq!(
        (arrival.text.as_str(), arrival.part),
        ("hello", part(7, 2, 1))
    );
    let fields = [tlv(0x020c, &[1, 2]), tlv(0x020e, &[3]), tlv(0x020f, &[3])].concat();
    let arrival = message(&read(&delivery(PERSON, "hello", &fields)));
    assert_eq!(arrival.part, part(258, 3, 3));
    for (total, number) in [(1, 1), (2, 0), (2, 3), (0, 0)] {
        let fields = [
            tlv(0x020c, &[1, 2]),
            tlv(0x020e, &[total]),
            tlv(0x020f, &[number]),
        ]
        .concat();
        let arrival = message(&read(&delivery(PERSON, "hello", &fields)));
        assert_eq!(arrival.part, None);
    }
}

#[test]
fn a_payload_stands_for_an_empty_message_only() {
    let payload = tlv(0x0424, b"payload");
    assert_eq!(
        message(&read(&delivery(PERSON, "", &payload))).text,
        "payload"
    );
    assert_eq!(
        message(&read(&delivery(PERSON, "short", &payload))).text,
        "short"
    );
    let endless = tlv(0x0424, &[b'a'; 60_000]);
    let kept = message(&read(&delivery(PERSON, "", &endless))).text.len();
    assert!(kept < 20_000, "{kept}");
}

/// How a delivery is known again.
fn likeness(body: &[u8]) -> String {
    match message(&read(body)).delivery {
        DeliveryKey::Alike { likeness, .. } => likeness,
        DeliveryKey::Named(_) => panic!("it has no name"),
    }
}

#[test]
fn deliveries_are_alike_when_all_is() {
    let one = likeness(&delivery(PERSON, "hello", &[]));
    assert_eq!(one, likeness(&delivery(PERSON, "hello", &[])));
    let others = [
        delivery("255700000002", "hello", &[]),
        delivery(PERSON, "hello!", &[]),
        delivery(PERSON, "hello", &tlv(0x0204, &[0, 1])),
        delivery(
            PERSON,
            "hello",
            &[tlv(0x020c, &[1]), tlv(0x020e, &[2]), tlv(0x020f, &[1])].concat(),
        ),
    ];
    for other in &others {
        assert_ne!(one, likeness(other));
    }
    // A field that says nothing of the message changes nothing.
    assert_eq!(
        one,
        likeness(&delivery(PERSON, "hello", &tlv(0x1501, b"7")))
    );
}

fn receipt(text: &str, tlvs: &[u8]) -> Meaning {
    let mut delivery = read(&delivery(PERSON, text, tlvs));
    delivery.esm_class = 0x04;
    means(&delivery)
}

#[track_caller]
fn check_receipt(text: &str, tlvs: &[u8], name: &str, fate: Option<Receipt>) {
    match receipt(text, tlvs) {
        Meaning::Receipt(said) => {
            assert_eq!((said.name.as_str(), said.fate), (name, fate));
        }
        other => panic!("{other:?}"),
    }
}

#[test]
fn receipts_tell_of_which_message_and_what() {
    let (delivered, not) = (Some(Receipt::Delivered), Some(Receipt::Undelivered));
    check_receipt(
        "id:00A1 sub:001 stat:DELIVRD err:000",
        &[],
        "00A1",
        delivered,
    );
    check_receipt("ID:7 STAT:UNDELIV", &[], "7", not);
    check_receipt("id:7 stat:EXPIRED", &[], "7", not);
    check_receipt("id:7 stat:REJECTD", &[], "7", not);
    check_receipt("id:7 stat:ENROUTE", &[], "7", None);
    check_receipt("id:7 stat:ACCEPTD", &[], "7", None);
    check_receipt("id:7", &[], "7", None);
    let name = tlv(0x001e, b"f00\0");
    check_receipt("id:7 stat:DELIVRD", &name, "f00", delivered);
    let fields = [name.clone(), tlv(0x0427, &[8])].concat();
    check_receipt("", &fields, "f00", not);
    // Fields go before the text.
    let fields = [name, tlv(0x0427, &[2])].concat();
    check_receipt("id:7 stat:UNDELIV", &fields, "f00", delivered);
    assert_eq!(receipt("thank you", &[]), Meaning::Aside(Aside::Unreadable));
    assert_eq!(receipt("", &[]), Meaning::Aside(Aside::Unreadable));
}

#[test]
fn what_is_between_or_from_a_telephone_itself_is_nothing() {
    for esm_class in [0x08, 0x10, 0x18, 0x20] {
        let mut delivery = read(&delivery(PERSON, "id:1 stat:ENROUTE", &[]));
        delivery.esm_class = esm_class;
        assert_eq!(means(&delivery), Meaning::Nothing);
    }
}

#[test]
fn names_in_receipts_are_known_whatever_their_writing() {
    let mut names = Names::default();
    let kept = names.given("0000ABC1");
    assert_eq!(kept, "abc1");
    for written in ["0000ABC1", "abc1", "ABC1", "0abc1", "43969"] {
        assert_eq!(names.meant(written), kept, "{written}");
    }
    let kept = names.given("4294967295");
    for written in ["4294967295", "004294967295", "FFFFFFFF", "0ffffffff"] {
        assert_eq!(names.meant(written), kept, "{written}");
    }
    // A name of nothing but noughts is one.
    let kept = names.given("000");
    assert_eq!(names.meant("000"), kept);
    // Not known, and no number: as it is.
    assert_eq!(names.meant("3f9a-Zx"), "3f9a-zx");
}

#[test]
fn a_links_own_writing_goes_before_what_another_would_mean() {
    let mut names = Names::default();
    // Hexadecimal in answers, decimal in receipts: learned where it cannot be anything else.
    for number in 0xaa..0xaf_u32 {
        let kept = names.given(&format!("{number:x}"));
        assert_eq!(names.meant(&number.to_string()), kept);
    }
    let (sixteen, ten) = (names.given("10"), names.given("a"));
    assert_eq!(names.meant("16"), sixteen);
    assert_eq!(names.meant("10"), ten);
    // A link that writes both the same way is not led astray.
    let mut names = Names::default();
    let all: Vec<String> = (1..400)
        .map(|number: u32| names.given(&number.to_string()))
        .collect();
    for kept in all {
        assert_eq!(names.meant(&kept), kept);
    }
}

#[test]
fn names_do_not_grow_for_ever() {
    let mut names = Names::default();
    for number in 0..50_000_u32 {
        names.given(&format!("x{number}"));
    }
    let shown = format!("{names:?}");
    assert!(!shown.contains("\"x1\"") && shown.contains("\"x49999\""));
}

#[test]
fn senders_by_type_and_number() {
    let person = |number: &str| Sender::Person(Address::phone(number));
    assert_eq!(sender(1, PERSON, None), person(PERSON));
    assert_eq!(sender(0, "+255 700 000 001", None), person(PERSON));
    assert_eq!(sender(5, "WATER", None), Sender::Machine);
    assert_eq!(sender(5, PERSON, None), Sender::Machine);
    assert_eq!(sender(6, "15400", None), Sender::Machine);
    assert_eq!(sender(0, "", None), Sender::Machine);
    // National numbers: as they are, or with the country's code before them.
    assert_eq!(sender(2, "0700000001", None), person("0700000001"));
    assert_eq!(sender(2, "0700000001", Some("255")), person(PERSON));
    assert_eq!(sender(2, "700000001", Some("255")), person(PERSON));
    assert_eq!(sender(0, "0700000001", Some("255")), person(PERSON));
    assert_eq!(sender(1, PERSON, Some("255")), person(PERSON));
    assert_eq!(sender(0, "00255700000001", Some("255")), person(PERSON));
}
