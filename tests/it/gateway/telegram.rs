//! A chat channel.

use serde_json::{Value, json};

use super::fake_bot::{FakeBot, TOKEN, message};
use super::served::{Deployment, Locked, Served, eventually, free_port};

const QUESTION: &str = "2 gallons cloudy 1% bleach";
const PERSON: i64 = 880_000_001;

fn deployment(name: &str, bot: &FakeBot) -> Deployment {
    let channel = format!(
        "[[channel]]\nkind = \"telegram\"\nname = \"chat\"\ntoken_env = \"T_TOKEN\"\n\
         api_url = \"{}\"\n",
        bot.url()
    );
    Deployment::new(name, &channel).with_secret("T_TOKEN", TOKEN)
}

async fn serve(name: &str, bot: &FakeBot) -> Served {
    deployment(name, bot).serve().await
}

fn text(message: &Value) -> &str {
    message["text"].as_str().expect("a text")
}

/// An error of the service's.
fn error(code: u16, description: &str) -> String {
    json!({"ok": false, "error_code": code, "description": description}).to_string()
}

#[tokio::test]
async fn a_question_is_answered() {
    let bot = FakeBot::start().await;
    let served = deployment("t-answer", &bot).telling_all().serve().await;
    let update = bot.write(PERSON, QUESTION);
    let reply = bot.message(0).await;
    assert_eq!(reply["chat_id"], PERSON);
    assert!(text(&reply).contains("8 mL"), "{reply}");
    bot.confirmed(update).await;
    served
        .figure("matone_messages_received_total{channel=\"chat\"} 1")
        .await;
    served
        .figure("matone_replies_sent_total{channel=\"chat\"} 1")
        .await;
    served.figure("matone_channel_up{channel=\"chat\"} 1").await;
    assert_eq!(served.page("/healthz").await, (200, "ok".to_owned()));
    // Whatever is logged, and all that can be was.
    served
        .tells_none_of(&["hush-hush", "880000001", "gallons", "8 mL"])
        .await;
    assert!(bot.astray().is_empty(), "{:?}", bot.astray());
    // In the middle of a long poll.
    let (status, _) = served.end().await;
    assert!(status.success());
}

/// The words that are likely next, in the language of the question.
#[tokio::test]
async fn buttons_are_in_the_persons_language() {
    let bot = FakeBot::start().await;
    let _served = serve("t-buttons", &bot).await;
    bot.write(1, "20 لتر ماء عكر");
    let reply = bot.message(0).await;
    let markup = &reply["reply_markup"];
    let rows = markup["keyboard"]
        .as_array()
        .unwrap_or_else(|| panic!("{reply}"));
    let words: Vec<&str> = rows
        .iter()
        .flat_map(|row| row.as_array().expect("a row"))
        .map(|button| button["text"].as_str().expect("a word"))
        .collect();
    assert_eq!(words.len(), 4);
    assert!(words.contains(&"مبيض"), "{words:?}");
    assert!(
        rows.iter()
            .all(|row| row.as_array().is_some_and(|row| row.len() == 2))
    );
    assert_eq!(markup["resize_keyboard"], true);
    assert_eq!(markup["one_time_keyboard"], true);
    // A button is what the person would have written; then a figure is asked for, and no word.
    bot.write(1, "مبيض");
    let reply = bot.message(1).await;
    assert_eq!(
        reply["reply_markup"],
        json!({"remove_keyboard": true}),
        "{reply}"
    );
    bot.write(1, "5%");
    assert!(text(&bot.message(2).await).contains("مل"));
}

#[tokio::test]
async fn the_same_update_again_is_answered_once() {
    let bot = FakeBot::start().await;
    let served = serve("t-twice", &bot).await;
    let first = message(PERSON, &json!({"text": QUESTION}));
    let update = bot.update("message", &first);
    bot.message(0).await;
    bot.confirmed(update).await;
    // Accepted, and noted: killed before, it would send the reply again.
    eventually("it is noted", async || {
        (served.replies() == [2]).then_some(())
    })
    .await;
    let deployment = served.kill();
    // A service that had not heard that we have it.
    let again = json!({"update_id": update, "message": first});
    let again = json!({"ok": true, "result": [again]}).to_string();
    let polls = bot.polls();
    let served = deployment.serve().await;
    eventually("it asks", async || (bot.polls() > polls).then_some(())).await;
    bot.plan_poll(200, &again);
    let duplicate = "matone_messages_set_aside_total{channel=\"chat\",reason=\"duplicate\"} 1";
    served.figure(duplicate).await;
    bot.plan_poll(200, &again);
    bot.write(PERSON, "4 gallons cloudy 1% bleach");
    assert!(text(&bot.message(1).await).contains("16 mL"));
    assert_eq!(bot.sent().len(), 2);
}

#[tokio::test]
async fn what_is_no_question_is_passed_over() {
    let bot = FakeBot::start().await;
    bot.update("of_the_future", &json!({"deep": [1, 2, 3]}));
    bot.update("poll", &json!({"id": "?"}));
    bot.update(
        "edited_message",
        &message(PERSON, &json!({"text": QUESTION})),
    );
    let by_bot = json!({"id": 9, "is_bot": true, "first_name": "B"});
    bot.update(
        "message",
        &message(9, &json!({"text": QUESTION, "from": by_bot})),
    );
    bot.update(
        "message",
        &message(
            PERSON,
            &json!({"location": {"longitude": 1, "latitude": 2}}),
        ),
    );
    bot.update("message", &json!({"text": "nobody's"}));
    bot.update("message", &json!(null));
    let group = json!({"id": -5, "type": "group", "title": "G"});
    let other = json!({"text": "/help@other_bot", "chat": group});
    bot.update("message", &message(-5, &other));
    let ours = json!({"text": "/help@Water_Bot", "chat": group});
    let last = bot.update("message", &message(-5, &ours));
    let served = serve("t-others", &bot).await;
    let reply = bot.message(0).await;
    assert_eq!(reply["chat_id"], -5, "{reply}");
    bot.confirmed(last).await;
    served
        .figure("matone_messages_received_total{channel=\"chat\"} 1")
        .await;
    for (reason, count) in [("machine", 1), ("unreadable", 5)] {
        let label = format!("{{channel=\"chat\",reason=\"{reason}\"}}");
        served
            .figure(&format!("matone_messages_set_aside_total{label} {count}"))
            .await;
    }
    assert_eq!(bot.sent().len(), 1);
}

#[tokio::test]
async fn commands_and_captions_are_words() {
    let bot = FakeBot::start().await;
    let _served = serve("t-commands", &bot).await;
    bot.write(1, "/start");
    bot.message(0).await;
    bot.write(1, "/stop");
    assert!(text(&bot.message(1).await).starts_with("Stopped"));
    // Questions of who said stop are answered still.
    let photo = json!([{"file_id": "f", "file_unique_id": "u", "width": 1, "height": 1,
        "file_size": 1}]);
    bot.update(
        "message",
        &message(1, &json!({"photo": photo, "caption": QUESTION})),
    );
    assert!(text(&bot.message(2).await).contains("8 mL"));
}

#[tokio::test]
async fn a_service_that_talks_nonsense_is_asked_again() {
    let bot = FakeBot::start().await;
    for (status, body) in [
        (200, "<html>a page</html>"),
        (200, "{\"ok\": true, \"result\": [{\"update_id\": \"x\"}]}"),
        (200, "{\"ok\": true}"),
    ] {
        bot.plan_poll(status, body);
    }
    let served = serve("t-nonsense", &bot).await;
    eventually("the nonsense is noted", async || {
        served.log().contains("none of the service's").then_some(())
    })
    .await;
    assert_eq!(served.page("/healthz").await.0, 200);
    bot.write(PERSON, QUESTION);
    bot.message(0).await;
    served.figure("matone_channel_up{channel=\"chat\"} 1").await;
    served.tells_none_of(&["a page"]).await;
}

#[tokio::test]
async fn a_service_that_is_not_there_yet() {
    let bot = FakeBot::on(free_port());
    bot.write(PERSON, QUESTION);
    let served = deployment("t-nobody", &bot).telling_all().serve().await;
    eventually("it is retrying", async || {
        served
            .log()
            .contains("the service cannot be reached")
            .then_some(())
    })
    .await;
    assert_eq!(served.page("/healthz").await, (200, "ok".to_owned()));
    served.figure("matone_channel_up{channel=\"chat\"} 0").await;
    bot.come_up().await;
    bot.message(0).await;
    served.figure("matone_channel_up{channel=\"chat\"} 1").await;
    served.tells_none_of(&["hush-hush"]).await;
}

#[tokio::test]
async fn a_refused_token_is_told() {
    let bot = FakeBot::start().await;
    bot.plan_poll(401, &error(401, "Unauthorized"));
    let served = serve("t-token", &bot).await;
    let reasons = eventually("it is ill", async || {
        let (status, reasons) = served.page("/healthz").await;
        (status == 503).then_some(reasons)
    })
    .await;
    assert_eq!(reasons, "channel chat: the token is refused");
    let (status, _) = served.end().await;
    assert!(status.success());
}

#[tokio::test]
async fn another_program_on_the_same_bot_is_told() {
    let bot = FakeBot::start().await;
    let conflict = "Conflict: terminated by other getUpdates request; make sure that only one \
                    bot instance is running";
    bot.plan_poll(409, &error(409, conflict));
    let served = serve("t-conflict", &bot).await;
    eventually("it is retrying", async || {
        served
            .log()
            .contains("another program takes this bot's messages")
            .then_some(())
    })
    .await;
    assert_eq!(served.page("/healthz").await, (200, "ok".to_owned()));
    bot.write(PERSON, QUESTION);
    bot.message(0).await;
}

#[tokio::test]
async fn while_the_store_is_locked_nothing_is_confirmed() {
    let bot = FakeBot::start().await;
    let served = serve("t-locked", &bot).await;
    let first = bot.write(PERSON, QUESTION);
    bot.confirmed(first).await;
    bot.message(0).await;
    served
        .figure("matone_replies_sent_total{channel=\"chat\"} 1")
        .await;
    let locked = Locked::store(&served.store());
    let polls = bot.polls();
    let second = bot.write(PERSON, "4 gallons cloudy 1% bleach");
    eventually("it is asked for again", async || {
        (bot.polls() > polls).then_some(())
    })
    .await;
    assert_eq!(bot.offset(), Some(second));
    locked.unlock();
    bot.confirmed(second).await;
    assert!(text(&bot.message(1).await).contains("16 mL"));
    served
        .figure("matone_replies_sent_total{channel=\"chat\"} 2")
        .await;
    served
        .figure("matone_messages_received_total{channel=\"chat\"} 2")
        .await;
}

#[tokio::test]
async fn replies_are_sent_again() {
    let bot = FakeBot::start().await;
    let wait = json!({"ok": false, "error_code": 429, "description": "Too Many Requests",
        "parameters": {"retry_after": 1}});
    bot.plan_send(429, &wait.to_string());
    bot.plan_send(
        400,
        &error(400, "Bad Request: not enough rights to send text messages"),
    );
    let served = serve("t-again", &bot).await;
    bot.write(PERSON, QUESTION);
    let first = bot.message(0).await;
    assert_eq!(bot.message(1).await, first);
    assert_eq!(bot.message(2).await, first);
    served
        .figure("matone_replies_sent_total{channel=\"chat\"} 1")
        .await;
}

#[tokio::test]
async fn a_reply_is_sent_again_after_an_error_of_the_services() {
    let bot = FakeBot::start().await;
    bot.plan_send(500, &error(500, "Internal Server Error"));
    let served = serve("t-500", &bot).await;
    bot.write(PERSON, QUESTION);
    let first = bot.message(0).await;
    assert_eq!(bot.message(1).await, first);
    served
        .figure("matone_replies_sent_total{channel=\"chat\"} 1")
        .await;
}

#[tokio::test]
async fn a_reply_that_was_taken_is_sent_once_however_that_is_told() {
    let bot = FakeBot::start().await;
    bot.plan_send(200, "{\"ok\": true, \"result\": {\"of\": \"the future\"}}");
    let served = serve("t-taken", &bot).await;
    bot.write(PERSON, QUESTION);
    served
        .figure("matone_replies_sent_total{channel=\"chat\"} 1")
        .await;
    assert_eq!(bot.sent().len(), 1);
}

#[tokio::test]
async fn replies_that_nobody_takes_any_more_are_given_up() {
    let bot = FakeBot::start().await;
    bot.plan_send(403, &error(403, "Forbidden: bot was blocked by the user"));
    let served = serve("t-blocked", &bot).await;
    bot.write(PERSON, QUESTION);
    let given_up = "matone_replies_unsent_total{channel=\"chat\",reason=\"given_up\"} 1";
    served.figure(given_up).await;
    bot.write(PERSON, "4 gallons cloudy 1% bleach");
    assert!(text(&bot.message(1).await).contains("16 mL"));
}

#[tokio::test]
async fn a_group_that_moved_is_followed() {
    let bot = FakeBot::start().await;
    let moved = json!({"ok": false, "error_code": 400, "description": "Bad Request",
        "parameters": {"migrate_to_chat_id": -100_500}});
    bot.plan_send(400, &moved.to_string());
    let served = serve("t-moved", &bot).await;
    let group = json!({"id": -5, "type": "group", "title": "G"});
    bot.update(
        "message",
        &message(-5, &json!({"text": QUESTION, "chat": group})),
    );
    assert_eq!(bot.message(0).await["chat_id"], -5);
    assert_eq!(bot.message(1).await["chat_id"], -100_500);
    served
        .figure("matone_replies_sent_total{channel=\"chat\"} 1")
        .await;
}

#[tokio::test]
async fn replies_in_one_chat_keep_their_order_while_others_pass() {
    let bot = FakeBot::start().await;
    let wait = json!({"ok": false, "error_code": 429, "description": "Too Many Requests",
        "parameters": {"retry_after": 1}});
    bot.plan_send(429, &wait.to_string());
    for gallons in [2, 4, 8] {
        bot.write(1, &format!("{gallons} gallons cloudy 1% bleach"));
    }
    bot.write(2, "16 gallons cloudy 1% bleach");
    let served = serve("t-order", &bot).await;
    served
        .figure("matone_replies_sent_total{channel=\"chat\"} 4")
        .await;
    let sent = bot.sent();
    // Whichever was refused at first came again.
    assert_eq!(sent.len(), 5, "{sent:?}");
    let mut texts: Vec<&str> = sent
        .iter()
        .filter(|message| message["chat_id"] == 1)
        .map(text)
        .collect();
    texts.dedup();
    for (text, dose) in texts.iter().zip(["8 mL", "16 mL", "32 mL"]) {
        assert!(text.contains(dose), "{sent:?}");
    }
    assert_eq!(texts.len(), 3, "{sent:?}");
}

#[test]
fn settings_that_cannot_be() {
    let channel =
        |more: &str| format!("[[channel]]\nkind = \"telegram\"\nname = \"chat\"\n{more}\n");
    let check = |name: &str, more: &str, said: &str| {
        let deployment = Deployment::new(&format!("t-s-{name}"), &channel(more));
        let refused = deployment.with_secret("T_TOKEN", "two words").refused();
        assert!(refused.contains(said), "{said}: {refused}");
        assert!(!refused.contains("two words"), "{refused}");
    };
    check("none", "", "neither token_env nor token_file");
    check(
        "words",
        "token_env = \"T_TOKEN\"",
        "its token is empty, or is none",
    );
    let with_url = |url: &str| format!("token_env = \"T_TOKEN\"\napi_url = \"{url}\"");
    check("url", &with_url("chat.invalid"), "api_url is no address");
    check(
        "scheme",
        &with_url("ftp://chat.invalid"),
        "api_url begins with neither",
    );
    check(
        "query",
        &with_url("http://chat.invalid/?a=b"),
        "api_url has more behind its path",
    );
}
