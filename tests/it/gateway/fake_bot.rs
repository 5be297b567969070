//! A fake chat service: hands updates out until they are confirmed, takes messages, and answers as
//! a test plans.

use std::collections::VecDeque;
use std::sync::{Arc, Mutex};
use std::time::Duration;

use axum::Router;
use axum::body::Bytes;
use axum::extract::State;
use axum::http::{StatusCode, Uri};
use axum::response::{IntoResponse, Response};
use serde_json::{Value, json};
use tokio::net::TcpListener;
use tokio::sync::Notify;

use super::served::eventually;

pub(crate) const TOKEN: &str = "4321:hush-hush";
/// In front of the methods, as where one server has several services.
const PREFIX: &str = "/bots/bot4321:hush-hush/";

/// How it answers.
type Plan = (u16, String);

#[derive(Debug, Default)]
struct Book {
    /// Those that are not confirmed.
    updates: Vec<Value>,
    next_update: i64,
    /// From where updates were asked for.
    offsets: Vec<Option<i64>>,
    sent: Vec<Value>,
    poll_plans: VecDeque<Plan>,
    send_plans: VecDeque<Plan>,
    astray: Vec<String>,
}

/// The service.
#[derive(Clone)]
pub(crate) struct FakeBot {
    book: Arc<Mutex<Book>>,
    news: Arc<Notify>,
    port: u16,
}

impl FakeBot {
    pub(crate) async fn start() -> Self {
        let listener = TcpListener::bind("127.0.0.1:0").await.expect("a port");
        let port = listener.local_addr().expect("its address").port();
        let bot = Self::on(port);
        bot.serve(listener);
        bot
    }

    /// One that does not answer yet.
    pub(crate) fn on(port: u16) -> Self {
        let bot = Self {
            book: Arc::default(),
            news: Arc::default(),
            port,
        };
        bot.book().next_update = 700;
        bot
    }

    pub(crate) async fn come_up(&self) {
        let listener = TcpListener::bind(("127.0.0.1", self.port)).await;
        self.serve(listener.expect("the port"));
    }

    fn serve(&self, listener: TcpListener) {
        let routes = Router::new().fallback(answer).with_state(self.clone());
        tokio::spawn(async move { axum::serve(listener, routes).await });
    }

    pub(crate) fn url(&self) -> String {
        format!("http://127.0.0.1:{}/bots/", self.port)
    }

    fn book(&self) -> std::sync::MutexGuard<'_, Book> {
        self.book.lock().expect("the book")
    }

    /// Has this to tell; the update's number.
    pub(crate) fn update(&self, kind: &str, content: &Value) -> i64 {
        let mut book = self.book();
        let id = book.next_update;
        book.next_update += 1;
        book.updates.push(json!({"update_id": id, kind: content}));
        drop(book);
        self.news.notify_waiters();
        id
    }

    /// A person writes; the update's number.
    pub(crate) fn write(&self, chat: i64, text: &str) -> i64 {
        self.update("message", &message(chat, &json!({"text": text})))
    }

    /// Answers so when updates are asked for the next time.
    pub(crate) fn plan_poll(&self, status: u16, body: &str) {
        self.book().poll_plans.push_back((status, body.to_owned()));
        self.news.notify_waiters();
    }

    /// Answers so to the next message.
    pub(crate) fn plan_send(&self, status: u16, body: &str) {
        self.book().send_plans.push_back((status, body.to_owned()));
    }

    pub(crate) fn sent(&self) -> Vec<Value> {
        self.book().sent.clone()
    }

    /// From where updates were asked for last.
    pub(crate) fn offset(&self) -> Option<i64> {
        self.book().offsets.last().copied().flatten()
    }

    pub(crate) fn polls(&self) -> usize {
        self.book().offsets.len()
    }

    /// Requests that are none of the service's.
    pub(crate) fn astray(&self) -> Vec<String> {
        self.book().astray.clone()
    }

    /// The message of that place, the first being 0, once it is there.
    pub(crate) async fn message(&self, place: usize) -> Value {
        eventually("a message", async || self.sent().get(place).cloned()).await
    }

    /// Waits until an update is confirmed.
    pub(crate) async fn confirmed(&self, update: i64) {
        eventually("an update is confirmed", async || {
            self.offset().filter(|offset| *offset > update)
        })
        .await;
    }

    async fn updates(&self, asked: &Value) -> Plan {
        let offset = asked["offset"].as_i64();
        let timeout = asked["timeout"].as_u64().unwrap_or(0);
        {
            let mut book = self.book();
            book.offsets.push(offset);
            let from = offset.unwrap_or(0);
            book.updates
                .retain(|update| update["update_id"].as_i64() >= Some(from));
        }
        let look = async {
            loop {
                let news = self.news.notified();
                {
                    let mut book = self.book();
                    if let Some(plan) = book.poll_plans.pop_front() {
                        return plan;
                    }
                    if !book.updates.is_empty() {
                        return ok(&Value::Array(book.updates.clone()));
                    }
                }
                news.await;
            }
        };
        tokio::time::timeout(Duration::from_secs(timeout), look)
            .await
            .unwrap_or_else(|_| ok(&json!([])))
    }

    fn take(&self, asked: Value) -> Plan {
        let mut book = self.book();
        let chat = asked["chat_id"].as_i64().expect("a chat");
        let sent = message(chat, &json!({"text": asked["text"]}));
        book.sent.push(asked);
        let plan = book.send_plans.pop_front();
        plan.unwrap_or_else(|| ok(&sent))
    }
}

/// A message as the service tells it.
pub(crate) fn message(chat: i64, more: &Value) -> Value {
    let mut message = json!({
        "message_id": 1,
        "date": 1_790_000_000,
        "chat": {"id": chat, "type": "private", "first_name": "A"},
        "from": {"id": chat, "is_bot": false, "first_name": "A"},
    });
    for (key, value) in more.as_object().expect("an object") {
        message[key] = value.clone();
    }
    message
}

fn ok(result: &Value) -> Plan {
    (200, json!({"ok": true, "result": result}).to_string())
}

async fn answer(State(bot): State<FakeBot>, uri: Uri, body: Bytes) -> Response {
    let asked = serde_json::from_slice(&body).unwrap_or(Value::Null);
    let (status, body) = match uri.path().strip_prefix(PREFIX) {
        Some("GetUpdates") => bot.updates(&asked).await,
        Some("SendMessage") => bot.take(asked),
        Some("GetMe") => ok(&json!({
            "id": 4321, "is_bot": true, "first_name": "Water", "username": "water_bot",
            "can_join_groups": true, "can_read_all_group_messages": false,
            "supports_inline_queries": false, "can_connect_to_business": false,
            "has_main_web_app": false,
        })),
        _ => {
            bot.book().astray.push(uri.path().to_owned());
            let description = json!({"ok": false, "error_code": 404, "description": "Not Found"});
            (404, description.to_string())
        }
    };
    let status = StatusCode::from_u16(status).expect("a status");
    (status, body).into_response()
}
