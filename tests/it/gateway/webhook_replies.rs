//! A webhook channel: replies on their way out, and what a gateway says of them.

use std::time::Duration;

use serde_json::json;
use tokio::io::AsyncWriteExt as _;

use super::fake_gateway::{FakeGateway, Plan, Taken};
use super::served::{eventually, free_port};
use super::webhook::{hand_in, serve, showing, signed, signing};

const PERSON: &str = "+255700000001";
const QUESTION: &str = "2 gallons cloudy 1% bleach";

/// Whether two requests are the same reply.
fn is_same(one: &Taken, other: &Taken) -> bool {
    one.header("idempotency-key") == other.header("idempotency-key")
        && one.json("/text") == other.json("/text")
}

/// The gateway answers so at first, then takes the reply.
async fn sent_again_after(name: &str, plan: Plan) {
    let gateway = FakeGateway::start().await;
    gateway.plan(plan);
    let served = serve(name, &signing(&gateway, "")).await;
    hand_in(&served, "m-1", PERSON, QUESTION).await;
    let first = gateway.request(0).await;
    let (status, reasons) = served.page("/healthz").await;
    assert_eq!((status, reasons.as_str()), (200, "ok"));
    let second = gateway.request(1).await;
    assert!(is_same(&first, &second), "{first:?} {second:?}");
    served
        .figure("matone_replies_sent_total{channel=\"gateway\"} 1")
        .await;
    served
        .figure("matone_channel_up{channel=\"gateway\"} 1")
        .await;
    let again = "matone_replies_unsent_total{channel=\"gateway\",reason=\"again\"} 1";
    served.figure(again).await;
    assert_eq!(gateway.taken().len(), 2);
}

#[tokio::test]
async fn after_an_error_of_the_gateways() {
    sent_again_after("r-500", Plan::status(500)).await;
}

#[tokio::test]
async fn after_the_time_that_the_gateway_asks_for() {
    sent_again_after("r-429", Plan::status(429).with("retry-after", "1")).await;
    sent_again_after("r-503", Plan::status(503).with("retry-after", "1")).await;
}

#[tokio::test]
async fn after_a_mistake_that_an_operator_mends() {
    sent_again_after("r-404", Plan::status(404)).await;
    sent_again_after("r-401", Plan::status(401)).await;
}

#[tokio::test]
async fn a_reply_follows_nobody_elsewhere() {
    let elsewhere = FakeGateway::start().await;
    sent_again_after(
        "r-307",
        Plan::status(307).with("location", &elsewhere.url()),
    )
    .await;
    assert!(elsewhere.taken().is_empty());
}

#[tokio::test]
async fn a_gateway_that_is_not_there_yet() {
    let gateway = FakeGateway::start().await;
    let nobody = format!("http://127.0.0.1:{}/send?key=hush", free_port());
    let settings = signing(&gateway, "").replace(&gateway.url(), &nobody);
    let served = serve("r-nobody", &settings).await;
    hand_in(&served, "m-1", PERSON, QUESTION).await;
    served
        .figure("matone_channel_up{channel=\"gateway\"} 0")
        .await;
    assert_eq!(served.page("/healthz").await, (200, "ok".to_owned()));
    assert!(served.log().contains("the gateway cannot be reached"));
    served.tells_none_of(&["hush", "255700000001"]).await;
}

#[tokio::test]
async fn a_reply_that_is_refused_is_given_up() {
    let gateway = FakeGateway::start().await;
    gateway.plan(Plan::status(422));
    let served = serve("r-422", &signing(&gateway, "")).await;
    hand_in(&served, "m-1", PERSON, QUESTION).await;
    let given_up = "matone_replies_unsent_total{channel=\"gateway\",reason=\"given_up\"} 1";
    served.figure(given_up).await;
    hand_in(&served, "m-2", PERSON, "4 gallons cloudy 1% bleach").await;
    let next = gateway.request(1).await;
    assert!(next.json("/text").contains("16 mL"), "{next:?}");
}

#[tokio::test]
async fn replies_to_one_person_keep_their_order() {
    let gateway = FakeGateway::start().await;
    gateway.plan(Plan {
        status: 200,
        delay: Duration::from_millis(300),
        ..Plan::default()
    });
    let served = serve("r-order", &signing(&gateway, "")).await;
    for (id, gallons) in [("m-1", 2), ("m-2", 4), ("m-3", 8)] {
        hand_in(
            &served,
            id,
            PERSON,
            &format!("{gallons} gallons cloudy 1% bleach"),
        )
        .await;
    }
    gateway.request(2).await;
    let replies = gateway.taken();
    for (reply, dose) in replies.iter().zip(["8 mL", "16 mL", "32 mL"]) {
        assert!(reply.json("/text").contains(dose), "{replies:?}");
    }
}

#[tokio::test]
async fn an_end_in_the_middle_of_a_reply_loses_nothing() {
    let gateway = FakeGateway::start().await;
    gateway.plan(Plan {
        status: 200,
        delay: Duration::from_secs(20),
        ..Plan::default()
    });
    let served = serve("r-end", &signing(&gateway, "")).await;
    hand_in(&served, "m-1", PERSON, QUESTION).await;
    let first = gateway.request(0).await;
    // Somebody else has not said yet what they want.
    let mut idle = tokio::net::TcpStream::connect(served.address())
        .await
        .expect("a connection");
    idle.write_all(b"POST /in/gateway HTTP/1.1\r\nHost:")
        .await
        .expect("a beginning");
    let (status, deployment) = served.end().await;
    drop(idle);
    assert!(status.success());
    let served = deployment.serve().await;
    let second = gateway.request(1).await;
    assert!(is_same(&first, &second), "{first:?} {second:?}");
    served
        .figure("matone_replies_sent_total{channel=\"gateway\"} 1")
        .await;
}

#[tokio::test]
async fn receipts_are_counted() {
    let gateway = FakeGateway::start().await;
    for body in [r#"{"ref": 71}"#, r#"{"ref": "72"}"#] {
        gateway.plan(Plan {
            status: 202,
            body,
            ..Plan::default()
        });
    }
    let settings =
        "reply_id_field = \"ref\"\nreceipt_fields = { id = \"ref\", status = \"state\" }";
    let served = serve("r-receipt", &signing(&gateway, settings)).await;
    hand_in(&served, "m-1", PERSON, QUESTION).await;
    hand_in(&served, "m-2", PERSON, "4 gallons cloudy 1% bleach").await;
    served
        .figure("matone_replies_sent_total{channel=\"gateway\"} 2")
        .await;
    let receipt = async |body: serde_json::Value| {
        signed(&served, "/in/gateway/receipt", body.to_string().as_bytes()).await
    };
    let ok = (200, "ok\n".to_owned());
    assert_eq!(receipt(json!({"ref": "71", "state": "QUEUED"})).await, ok);
    assert_eq!(
        receipt(json!({"ref": "71", "state": "DELIVERED"})).await,
        ok
    );
    assert_eq!(receipt(json!({"ref": 72, "state": "expired"})).await, ok);
    assert_eq!(
        receipt(json!({"ref": "another's", "state": "delivered"}))
            .await
            .0,
        200
    );
    assert_eq!(receipt(json!({"ref": "71"})).await.0, 400);
    let unsigned = reqwest::Client::new().post(served.url("/in/gateway/receipt"));
    let unsigned = unsigned.body("{}").send().await.expect("an answer");
    assert_eq!(unsigned.status(), 401);
    // Delivered, and not.
    eventually("both states", async || {
        (served.replies() == [3, 4]).then_some(())
    })
    .await;
}

#[tokio::test]
async fn receipts_name_our_own_number_where_the_gateway_has_none() {
    let gateway = FakeGateway::start().await;
    let settings = "receipt_fields = {}\nformat = \"form\"";
    let served = serve("r-own", &showing(&gateway, settings)).await;
    let client = reqwest::Client::new();
    let post = async |path: &str, body: String| {
        let request = client.post(served.url(path)).body(body);
        let request = request.header("X-Secret", super::webhook::SECRET);
        request.send().await.expect("an answer").status().as_u16()
    };
    let question = "id=1&from=255700000001&text=STOP".to_owned();
    assert_eq!(post("/in/gateway", question).await, 200);
    let name = gateway.request(0).await.form("id");
    served
        .figure("matone_replies_sent_total{channel=\"gateway\"} 1")
        .await;
    let receipt = format!("id={name}&status=delivered");
    assert_eq!(post("/in/gateway/receipt", receipt).await, 200);
    served
        .figure("matone_replies_delivered_total{channel=\"gateway\"} 1")
        .await;
}
