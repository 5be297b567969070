//! A webhook channel: what a gateway hands in, and what it hears.

use std::time::{SystemTime, UNIX_EPOCH};

use hmac::{Hmac, KeyInit, Mac};
use matone::privacy::hex;
use reqwest::{Method, Response};
use serde_json::json;
use sha2::Sha256;

use super::fake_gateway::FakeGateway;
use super::served::{Deployment, Locked, Served};

pub(super) const SECRET: &str = "open-under-water";
const PERSON: &str = "+255700000001";
const QUESTION: &str = "2 gallons cloudy 1% bleach";

/// A channel that signs, with these more settings.
pub(super) fn signing(gateway: &FakeGateway, more: &str) -> String {
    format!(
        "[[channel]]\nkind = \"webhook\"\nname = \"gateway\"\nsecret_env = \"T_SECRET\"\n\
         signature_header = \"X-Signature\"\nreply_url = \"{}\"\n{more}\n",
        gateway.url()
    )
}

/// A channel that shows its secret, with these more settings.
pub(super) fn showing(gateway: &FakeGateway, more: &str) -> String {
    signing(gateway, more).replace("signature_header = \"X-Signature\"\n", "")
}

pub(super) async fn serve(name: &str, channels: &str) -> Served {
    Deployment::new(name, channels)
        .with_secret("T_SECRET", SECRET)
        .telling_all()
        .serve()
        .await
}

/// HMAC-SHA-256 in hexadecimal digits.
pub(super) fn signature(octets: &[u8]) -> String {
    let mut mac = Hmac::<Sha256>::new_from_slice(SECRET.as_bytes()).expect("a key");
    mac.update(octets);
    hex(&mac.finalize().into_bytes())
}

pub(super) fn message(id: &str, from: &str, text: &str) -> Vec<u8> {
    json!({"id": id, "from": from, "text": text})
        .to_string()
        .into_bytes()
}

/// A request with these headers.
async fn post(served: &Served, path: &str, body: &[u8], headers: &[(&str, &str)]) -> Response {
    let client = reqwest::Client::new();
    let mut request = client.post(served.url(path)).body(body.to_vec());
    for (name, value) in headers {
        request = request.header(*name, *value);
    }
    request.send().await.expect("an answer")
}

/// A request that is signed.
pub(super) async fn signed(served: &Served, path: &str, body: &[u8]) -> (u16, String) {
    let response = post(served, path, body, &[("X-Signature", &signature(body))]).await;
    let status = response.status().as_u16();
    (status, response.text().await.expect("a text"))
}

/// Hands a message in, as the gateway does.
pub(super) async fn hand_in(served: &Served, id: &str, from: &str, text: &str) {
    let (status, said) = signed(served, "/in/gateway", &message(id, from, text)).await;
    assert_eq!((status, said.as_str()), (200, "ok\n"));
}

#[tokio::test]
async fn a_question_is_answered() {
    let gateway = FakeGateway::start().await;
    let served = serve("w-answer", &signing(&gateway, "")).await;
    hand_in(&served, "m-1", PERSON, QUESTION).await;
    let reply = gateway.request(0).await;
    assert_eq!(reply.path, "/send");
    assert_eq!(reply.json("/to"), PERSON);
    assert!(reply.json("/text").contains("8 mL"), "{reply:?}");
    assert!(!reply.json("/id").is_empty());
    assert_eq!(reply.header("content-type"), "application/json");
    assert_eq!(reply.header("idempotency-key"), reply.json("/id"));
    assert_eq!(reply.header("x-signature"), signature(&reply.body));

    let figure = "matone_messages_received_total{channel=\"gateway\"} 1";
    served.figure(figure).await;
    served
        .figure("matone_replies_sent_total{channel=\"gateway\"} 1")
        .await;
    served
        .figure("matone_channel_up{channel=\"gateway\"} 1")
        .await;
    assert_eq!(served.page("/healthz").await, (200, "ok".to_owned()));
    served
        .tells_none_of(&[
            "255700000001",
            "gallons",
            "8 mL",
            SECRET,
            &signature(&reply.body),
        ])
        .await;
    let (status, _) = served.end().await;
    assert!(status.success());
}

#[tokio::test]
async fn the_same_message_again_is_answered_once() {
    let gateway = FakeGateway::start().await;
    let served = serve("w-twice", &signing(&gateway, "")).await;
    // At once, one behind the other, and after a crash.
    let first = || hand_in(&served, "m-1", PERSON, QUESTION);
    tokio::join!(first(), first(), first());
    first().await;
    gateway.request(0).await;
    let served = served.kill().serve().await;
    hand_in(&served, "m-1", PERSON, QUESTION).await;
    hand_in(&served, "m-2", PERSON, "4 gallons cloudy 1% bleach").await;
    // The first one's reply may be under way when the program is killed.
    let replies = super::served::eventually("the second answer", async || {
        let taken = gateway.taken();
        let second = taken
            .iter()
            .any(|reply| reply.json("/text").contains("16 mL"));
        second.then_some(taken)
    })
    .await;
    let mut names: Vec<String> = replies.iter().map(|reply| reply.json("/id")).collect();
    names.dedup();
    assert_eq!(names.len(), 2, "{replies:?}");
}

#[tokio::test]
async fn only_signed_messages_are_taken() {
    let gateway = FakeGateway::start().await;
    let served = serve("w-signed", &signing(&gateway, "")).await;
    let body = message("m-1", PERSON, QUESTION);
    let right = signature(&body);
    let other = signature(b"something else");
    let wrong: [&[(&str, &str)]; 7] = [
        &[],
        &[("X-Signature", "")],
        &[("X-Signature", "not hexadecimal")],
        &[("X-Signature", &other)],
        &[("X-Signature", right.get(..62).expect("digits"))],
        &[("X-Signature", &right), ("X-Signature", &right)],
        &[("X-Secret", SECRET)],
    ];
    for headers in wrong {
        let response = post(&served, "/in/gateway", &body, headers).await;
        assert_eq!(response.status(), 401, "{headers:?}");
    }
    let ways: [fn(String) -> String; 3] = [
        |right| right,
        |right| right.to_uppercase(),
        |right| format!("sha256={right}"),
    ];
    for (place, way) in ways.into_iter().enumerate() {
        let body = message(&format!("n-{place}"), PERSON, QUESTION);
        let value = way(signature(&body));
        let response = post(&served, "/in/gateway", &body, &[("X-Signature", &value)]).await;
        assert_eq!(response.status(), 200, "{value}");
    }
    let figure = "matone_messages_received_total{channel=\"gateway\"} 3";
    served.figure(figure).await;
    assert!(served.log().contains("refused"));
}

#[tokio::test]
async fn a_message_from_long_ago_is_not_taken() {
    let gateway = FakeGateway::start().await;
    let settings = signing(
        &gateway,
        "timestamp_header = \"X-Time\"\nreplay_seconds = 60",
    );
    let served = serve("w-replay", &settings).await;
    let now = SystemTime::now()
        .duration_since(UNIX_EPOCH)
        .expect("a time");
    let body = message("m-1", PERSON, QUESTION);
    let ask = async |time: String, signed: Vec<u8>| {
        let signature = signature(&signed);
        let headers = [("X-Signature", signature.as_str()), ("X-Time", &time)];
        let response = post(&served, "/in/gateway", &body, &headers).await;
        response.status().as_u16()
    };
    let with = |time: &str| [time.as_bytes(), b".", &body].concat();
    for far in [now.as_secs() - 100, now.as_secs() + 100, 0] {
        let time = far.to_string();
        assert_eq!(ask(time.clone(), with(&time)).await, 401, "{time}");
    }
    let time = now.as_secs().to_string();
    assert_eq!(
        ask(time.clone(), body.clone()).await,
        401,
        "the time is not signed"
    );
    assert_eq!(ask(time.clone(), with(&time)).await, 200);
    // The same request, caught on the way and sent again, is the same message.
    assert_eq!(ask(time.clone(), with(&time)).await, 200);
    let reply = gateway.request(0).await;
    let signed = [reply.header("x-time").as_bytes(), b".", &reply.body].concat();
    assert_eq!(reply.header("x-signature"), signature(&signed));
    served
        .figure("matone_messages_received_total{channel=\"gateway\"} 1")
        .await;
}

#[tokio::test]
async fn forms_in_arabic() {
    let gateway = FakeGateway::start().await;
    let settings = "format = \"form\"\nfields = { id = \"MessageId\", from = \"msisdn\" }\n\
                    reply_fields = { to = \"recipient\", text = \"body\" }\n\
                    reply_extra = { sender = \"4321\" }";
    let served = serve("w-form", &showing(&gateway, settings)).await;
    let mut form = form_urlencoded::Serializer::new(String::new());
    form.append_pair("MessageId", "1")
        .append_pair("msisdn", "255 700 000 001")
        .append_pair("text", "١٠ لتر ماء عكر كلور ٥٪");
    let body = form.finish();
    let response = post(
        &served,
        "/in/gateway",
        body.as_bytes(),
        &[("X-Secret", "no")],
    )
    .await;
    assert_eq!(response.status(), 401);
    let response = post(
        &served,
        "/in/gateway",
        body.as_bytes(),
        &[("X-Secret", SECRET)],
    )
    .await;
    assert_eq!(response.status(), 200);
    let reply = gateway.request(0).await;
    assert_eq!(
        reply.header("content-type"),
        "application/x-www-form-urlencoded"
    );
    assert_eq!(reply.header("x-secret"), SECRET);
    assert_eq!(reply.form("recipient"), "255 700 000 001");
    assert!(
        reply.form("body").contains("2 مل"),
        "{}",
        reply.form("body")
    );
    assert_eq!(reply.form("sender"), "4321");
}

#[tokio::test]
async fn fields_within_fields_and_a_secret_among_them() {
    let gateway = FakeGateway::start().await;
    let settings = "secret_field = \"auth.key\"\n\
        fields = { id = \"sms.0.id\", from = \"sms.0.from\", text = \"sms.0.body\" }\n\
        reply_fields = { to = \"sms.to\", text = \"sms.body\", id = \"sms.ref\" }";
    let served = serve("w-nested", &showing(&gateway, settings)).await;
    let body = |key: &str| {
        let sms = json!({"id": 17, "from": 255_700_000_001_u64, "body": QUESTION});
        json!({"auth": {"key": key}, "sms": [sms]}).to_string()
    };
    let ask = async |body: String| post(&served, "/in/gateway", body.as_bytes(), &[]).await;
    assert_eq!(ask(body("no")).await.status(), 401);
    assert_eq!(ask("{}".to_owned()).await.status(), 401);
    assert_eq!(ask(body(SECRET)).await.status(), 200);
    let reply = gateway.request(0).await;
    assert_eq!(reply.json("/sms/to"), "255700000001");
    assert_eq!(reply.json("/auth/key"), SECRET);
    assert!(reply.json("/sms/body").contains("8 mL"));
    assert_eq!(reply.json("/sms/ref"), reply.header("idempotency-key"));
}

#[tokio::test]
async fn what_is_no_message_is_refused_with_a_reason() {
    let gateway = FakeGateway::start().await;
    let served = serve("w-bad", &signing(&gateway, "")).await;
    let cases: [(&[u8], u16, &str); 12] = [
        (b"", 400, "the body is not JSON\n"),
        (b"id=1&from=2&text=3", 400, "the body is not JSON\n"),
        (b"{\"id\": \"\xff\"}", 400, "the body is not JSON\n"),
        (b"[]", 400, "the body is not a JSON object\n"),
        (b"{}", 400, "the field `id` is missing\n"),
        (br#"{"id": "1"}"#, 400, "the field `from` is missing\n"),
        (
            br#"{"id": "1", "from": "+255700000001"}"#,
            400,
            "the field `text` is missing\n",
        ),
        (
            br#"{"id": "1", "from": "+255700000001", "text": null}"#,
            400,
            "the field `text` is missing\n",
        ),
        (
            br#"{"id": " ", "from": "+255700000001", "text": "x"}"#,
            400,
            "the field `id` is empty\n",
        ),
        (
            br#"{"id": 1e99, "from": "+255700000001", "text": "x"}"#,
            400,
            "the field `id` is neither a text nor a whole number\n",
        ),
        (
            br#"{"id": "1", "from": ["+255700000001"], "text": "x"}"#,
            400,
            "the field `from` is neither a text nor a number\n",
        ),
        // A short code reads no answer.
        (
            br#"{"id": "1", "from": "15400", "text": "You have won"}"#,
            200,
            "ok\n",
        ),
    ];
    for (body, status, reason) in cases {
        let said = signed(&served, "/in/gateway", body).await;
        assert_eq!(
            said,
            (status, reason.to_owned()),
            "{}",
            String::from_utf8_lossy(body)
        );
    }
    let long = message("2", PERSON, &"x".repeat(64 * 1024));
    assert_eq!(signed(&served, "/in/gateway", &long).await.0, 413);
    let just = message("3", PERSON, &"20 L ".repeat(13_000));
    assert_eq!(signed(&served, "/in/gateway", &just).await.0, 200);
    let body = message("4", PERSON, QUESTION);
    for path in [
        "/in/other",
        "/in/",
        "/in",
        "/in/gateway/receipt",
        "/in/gateway/",
    ] {
        assert_eq!(signed(&served, path, &body).await.0, 404, "{path}");
    }
    for method in [Method::GET, Method::PUT, Method::DELETE] {
        let client = reqwest::Client::new();
        let request = client.request(method.clone(), served.url("/in/gateway"));
        let response = request.send().await.expect("an answer");
        assert_eq!(response.status(), 405, "{method}");
    }
    let machines = "matone_messages_set_aside_total{channel=\"gateway\",reason=\"machine\"} 1";
    served.figure(machines).await;
    served
        .figure("matone_messages_received_total{channel=\"gateway\"} 1")
        .await;
}

/// Whatever the octets are, the gateway gets an answer, and the next message is answered.
#[tokio::test]
async fn any_octets_are_borne() {
    let gateway = FakeGateway::start().await;
    let served = serve("w-octets", &signing(&gateway, "")).await;
    let mut state = 0x2545_f491_4f6c_dd1d_u64;
    let mut next = || {
        state ^= state << 13;
        state ^= state >> 7;
        state ^= state << 17;
        state
    };
    let whole = message("x", PERSON, QUESTION);
    for round in 0..200 {
        let mut body = whole.clone();
        for _ in 0..=round % 7 {
            let at = usize::try_from(next()).unwrap_or(0) % body.len();
            body[at] = next().to_le_bytes()[0];
        }
        body.truncate(usize::try_from(next()).unwrap_or(0) % (2 * whole.len()));
        let (status, _) = signed(&served, "/in/gateway", &body).await;
        assert!(matches!(status, 200 | 400), "{status}");
    }
    hand_in(&served, "m-1", "+255700000002", QUESTION).await;
    super::served::eventually("an answer", async || {
        let taken = gateway.taken();
        let ours = |reply: &super::fake_gateway::Taken| reply.json("/to") == "+255700000002";
        taken.iter().any(ours).then_some(())
    })
    .await;
}

#[tokio::test]
async fn while_the_store_is_locked_the_gateway_is_to_come_again() {
    let gateway = FakeGateway::start().await;
    let served = serve("w-locked", &signing(&gateway, "")).await;
    let locked = Locked::store(&served.store());
    let body = message("m-1", PERSON, QUESTION);
    let headers = [("X-Signature", &*signature(&body))];
    let response = post(&served, "/in/gateway", &body, &headers).await;
    assert_eq!(response.status(), 503);
    assert!(response.headers().contains_key("retry-after"));
    assert_eq!(response.text().await.expect("a text"), "not now\n");
    let (status, reasons) = served.page("/healthz").await;
    assert_eq!(status, 503);
    assert!(reasons.starts_with("store: "), "{reasons}");
    locked.unlock();
    hand_in(&served, "m-1", PERSON, QUESTION).await;
    hand_in(&served, "m-1", PERSON, QUESTION).await;
    gateway.request(0).await;
    served
        .figure("matone_replies_sent_total{channel=\"gateway\"} 1")
        .await;
    served
        .figure("matone_messages_received_total{channel=\"gateway\"} 1")
        .await;
    assert_eq!(served.page("/healthz").await, (200, "ok".to_owned()));
    served.tells_none_of(&["255700000001", "gallons"]).await;
}

#[tokio::test]
async fn when_too_much_waits_the_gateway_is_to_come_again() {
    let gateway = FakeGateway::start().await;
    let channels = format!("[limits]\nqueue = 0\n\n{}", signing(&gateway, ""));
    let served = serve("w-full", &channels).await;
    let body = message("m-1", PERSON, QUESTION);
    let headers = [("X-Signature", &*signature(&body))];
    let response = post(&served, "/in/gateway", &body, &headers).await;
    assert_eq!(response.status(), 429);
    assert!(response.headers().contains_key("retry-after"));
}

#[tokio::test]
async fn a_number_is_an_answer() {
    let gateway = FakeGateway::start().await;
    let served = serve("w-number", &signing(&gateway, "")).await;
    hand_in(&served, "m-1", PERSON, "20 L cloudy, bleach").await;
    gateway.request(0).await;
    let body = json!({"id": 2, "from": PERSON, "text": 5.25}).to_string();
    assert_eq!(signed(&served, "/in/gateway", body.as_bytes()).await.0, 200);
    let answer = gateway.request(1).await;
    assert!(answer.json("/text").contains("bleach 5.25%"), "{answer:?}");
}

#[tokio::test]
async fn who_says_stop_is_still_answered() {
    let gateway = FakeGateway::start().await;
    let served = serve("w-stop", &signing(&gateway, "")).await;
    hand_in(&served, "m-1", PERSON, "STOP").await;
    assert!(
        gateway
            .request(0)
            .await
            .json("/text")
            .starts_with("Stopped")
    );
    hand_in(&served, "m-2", PERSON, QUESTION).await;
    assert!(gateway.request(1).await.json("/text").contains("8 mL"));
}
