//! A fake SMS gateway: takes replies, and answers as a test plans.

use std::collections::VecDeque;
use std::sync::{Arc, Mutex};
use std::time::Duration;

use axum::Router;
use axum::body::Bytes;
use axum::extract::State;
use axum::http::{HeaderMap, HeaderName, StatusCode, Uri};
use axum::response::{IntoResponse, Response};

use super::served::eventually;

/// A request that came.
#[derive(Debug, Clone)]
pub(crate) struct Taken {
    pub(crate) path: String,
    pub(crate) headers: HeaderMap,
    pub(crate) body: Bytes,
}

impl Taken {
    pub(crate) fn header(&self, name: &str) -> &str {
        let value = self.headers.get(name).unwrap_or_else(|| panic!("{name}"));
        value.to_str().expect("a text")
    }

    /// A field of a JSON body.
    pub(crate) fn json(&self, pointer: &str) -> String {
        let body: serde_json::Value = serde_json::from_slice(&self.body).expect("JSON");
        let field = body.pointer(pointer).unwrap_or_else(|| panic!("{pointer}"));
        field.as_str().expect("a text").to_owned()
    }

    /// A field of a form.
    pub(crate) fn form(&self, name: &str) -> String {
        let mut fields = form_urlencoded::parse(&self.body);
        let found = fields.find(|(key, _)| key == name);
        found.unwrap_or_else(|| panic!("{name}")).1.into_owned()
    }
}

/// How it answers.
#[derive(Debug, Clone, Default)]
pub(crate) struct Plan {
    pub(crate) status: u16,
    pub(crate) headers: Vec<(&'static str, String)>,
    pub(crate) body: &'static str,
    pub(crate) delay: Duration,
}

impl Plan {
    pub(crate) fn status(status: u16) -> Self {
        Self {
            status,
            ..Self::default()
        }
    }

    pub(crate) fn with(mut self, name: &'static str, value: &str) -> Self {
        self.headers.push((name, value.to_owned()));
        self
    }
}

#[derive(Debug, Default)]
struct Book {
    taken: Vec<Taken>,
    plans: VecDeque<Plan>,
}

/// The gateway. It answers 200 where nothing else is planned.
#[derive(Clone)]
pub(crate) struct FakeGateway {
    book: Arc<Mutex<Book>>,
    port: u16,
}

impl FakeGateway {
    pub(crate) async fn start() -> Self {
        let listener = tokio::net::TcpListener::bind("127.0.0.1:0").await;
        let listener = listener.expect("a port");
        let port = listener.local_addr().expect("its address").port();
        let gateway = Self {
            book: Arc::default(),
            port,
        };
        let routes = Router::new().fallback(answer).with_state(gateway.clone());
        tokio::spawn(async move { axum::serve(listener, routes).await });
        gateway
    }

    pub(crate) fn url(&self) -> String {
        format!("http://127.0.0.1:{}/send", self.port)
    }

    /// Answers the next request so.
    pub(crate) fn plan(&self, plan: Plan) {
        self.book.lock().expect("the book").plans.push_back(plan);
    }

    pub(crate) fn taken(&self) -> Vec<Taken> {
        self.book.lock().expect("the book").taken.clone()
    }

    /// The request of that place, the first being 0, once it is there.
    pub(crate) async fn request(&self, place: usize) -> Taken {
        eventually("a request to the gateway", async || {
            self.taken().get(place).cloned()
        })
        .await
    }
}

async fn answer(
    State(gateway): State<FakeGateway>,
    uri: Uri,
    headers: HeaderMap,
    body: Bytes,
) -> Response {
    let plan = {
        let mut book = gateway.book.lock().expect("the book");
        book.taken.push(Taken {
            path: uri.path().to_owned(),
            headers,
            body,
        });
        book.plans.pop_front()
    };
    let Some(plan) = plan else {
        return StatusCode::OK.into_response();
    };
    tokio::time::sleep(plan.delay).await;
    let status = StatusCode::from_u16(plan.status).expect("a status");
    let mut response = (status, plan.body).into_response();
    for (name, value) in plan.headers {
        let name = HeaderName::from_static(name);
        response
            .headers_mut()
            .insert(name, value.parse().expect("a value"));
    }
    response
}
