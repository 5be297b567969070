//! What the program's listener answers a gateway: messages and receipts.
//!
//! In: requests.
//! Out: arrivals and receipts into the intake; an answer to each request.
//! Promises 200 only after the commit, and that no answer repeats what a request said.

use std::sync::Arc;
use std::sync::atomic::{AtomicU64, Ordering};
use std::time::Duration;

use axum::Router;
use axum::body::Bytes;
use axum::extract::{DefaultBodyLimit, FromRequest, Request, State};
use axum::http::{HeaderMap, HeaderValue, StatusCode, header};
use axum::response::{IntoResponse, Response};
use axum::routing::post;
use jiff::Timestamp;

use crate::config::BodyFormat;
use crate::message::{Address, Arrival, DeliveryKey, Receipt};
use crate::post::{Aside, Intake, IntakeError};

use super::body::{Body, BodyError};
use super::proof::{Proof, Unproven};
use super::settings::{Fields, Receipts};

/// A text message is far shorter, whatever a gateway puts around it.
const BODY_BYTES_MAX: usize = 64 * 1024;
/// A body that is not here by then does not come.
const BODY_WITHIN: Duration = Duration::from_secs(10);
/// The store waits for another program for five seconds; who asks waits longer.
const COMMIT_WITHIN: Duration = Duration::from_secs(20);
/// A sender is a telephone number, or a gateway's name for one.
const FROM_BYTES_MAX: usize = 64;
const NAME_BYTES_MAX: usize = 1024;
/// When a gateway should come again, in seconds.
const AGAIN_WHEN_FULL: HeaderValue = HeaderValue::from_static("10");
const AGAIN_WHEN_BROKEN: HeaderValue = HeaderValue::from_static("30");

/// What answers for one channel.
#[derive(Debug)]
pub(super) struct Inbound {
    pub(super) format: BodyFormat,
    pub(super) fields: Fields,
    pub(super) receipts: Option<Receipts>,
    pub(super) proof: Arc<Proof>,
}

/// An inbound with its way into the inbox.
#[derive(Debug, Clone)]
struct Counter {
    channel: Arc<str>,
    inbound: Arc<Inbound>,
    intake: Intake,
    unproven: Arc<AtomicU64>,
}

/// Why a request is not taken.
#[derive(Debug, thiserror::Error)]
enum Refusal {
    #[error("{0}")]
    Body(#[from] BodyError),
    #[error("the body could not be read")]
    Broken,
    #[error("{0}")]
    Intake(#[from] IntakeError),
    #[error("the body is longer than 64 kB")]
    TooLong,
    #[error("the body did not come in time")]
    TooSlow,
    #[error("the store did not write in time")]
    Unkept,
    #[error("{0}")]
    Unproven(#[from] Unproven),
}

/// What was done with a request.
#[derive(Debug, Clone, Copy)]
struct Taken;

/// The routes of a channel.
pub(super) fn routes(name: &str, inbound: Arc<Inbound>, intake: Intake) -> Router {
    let takes_receipts = inbound.receipts.is_some();
    let mut routes = Router::new().route(&format!("/in/{name}"), post(message));
    if takes_receipts {
        routes = routes.route(&format!("/in/{name}/receipt"), post(receipt));
    }
    routes
        .layer(DefaultBodyLimit::max(BODY_BYTES_MAX))
        .with_state(Counter {
            channel: name.into(),
            inbound,
            intake,
            unproven: Arc::default(),
        })
}

async fn message(State(counter): State<Counter>, request: Request) -> Result<Taken, Refusal> {
    let body = counter.proved(request).await?;
    let fields = &counter.inbound.fields;
    let id = body.word(&fields.id, NAME_BYTES_MAX)?;
    let from = Address::phone(&body.word(&fields.from, FROM_BYTES_MAX)?);
    let text = body.text(&fields.text)?;
    // A name in letters may be the gateway's own for a person.
    if from.is_short_code() {
        counter.intake.set_aside(Aside::Machine);
        return Ok(Taken);
    }
    let arrival = Arrival {
        from,
        text,
        part: None,
        delivery: DeliveryKey::Named(id),
        at: Timestamp::now(),
    };
    counter.kept(counter.intake.deliver(arrival)).await?;
    Ok(Taken)
}

async fn receipt(State(counter): State<Counter>, request: Request) -> Result<Taken, Refusal> {
    let body = counter.proved(request).await?;
    // The route is there only where receipts are taken.
    let Some(receipts) = &counter.inbound.receipts else {
        return Ok(Taken);
    };
    let id = body.word(&receipts.id, NAME_BYTES_MAX)?;
    let status = body.word(&receipts.status, NAME_BYTES_MAX)?;
    if let Some(receipt) = receipts.meaning(&status) {
        counter.kept(counter.intake.receipt(&id, receipt)).await?;
    }
    Ok(Taken)
}

impl Counter {
    /// The body of a request that proves itself.
    async fn proved(&self, request: Request) -> Result<Body, Refusal> {
        let headers: HeaderMap = request.headers().clone();
        let octets = tokio::time::timeout(BODY_WITHIN, Bytes::from_request(request, &()))
            .await
            .map_err(|_| Refusal::TooSlow)?
            .map_err(|rejection| match rejection.status() {
                StatusCode::PAYLOAD_TOO_LARGE => Refusal::TooLong,
                _ => Refusal::Broken,
            })?;
        let proof = &self.inbound.proof;
        proof
            .verify(&headers, &octets, Timestamp::now())
            .map_err(|unproven| self.refuse(unproven))?;
        let body = Body::read(self.inbound.format, &octets)?;
        proof
            .verify_field(&body)
            .map_err(|unproven| self.refuse(unproven))?;
        Ok(body)
    }

    /// Notes a request that does not prove itself, ever more seldom: an operator sees a secret
    /// that is not the gateway's, and nobody fills the log.
    fn refuse(&self, unproven: Unproven) -> Unproven {
        let count = self.unproven.fetch_add(1, Ordering::Relaxed) + 1;
        if count.is_power_of_two() {
            tracing::warn!(channel = %self.channel, count, reason = %unproven, "refused");
        }
        unproven
    }

    /// Waits for the store, within limits. What is committed behind our back comes again under
    /// the same name, and is known then.
    async fn kept<T>(
        &self,
        kept: impl Future<Output = Result<T, IntakeError>>,
    ) -> Result<T, Refusal> {
        let kept = match tokio::time::timeout(COMMIT_WITHIN, kept).await {
            Ok(kept) => kept.map_err(Refusal::from),
            Err(_) => Err(Refusal::Unkept),
        };
        kept.inspect_err(|refusal| {
            let reason = refusal.to_string();
            tracing::warn!(channel = %self.channel, reason, "the gateway is to come again");
        })
    }
}

impl Receipts {
    /// What a gateway's word for a message's state means; nothing while it is under way.
    fn meaning(&self, status: &str) -> Option<Receipt> {
        let says = |words: &[String]| words.iter().any(|word| word.eq_ignore_ascii_case(status));
        if says(&self.delivered) {
            Some(Receipt::Delivered)
        } else if says(&self.undelivered) {
            Some(Receipt::Undelivered)
        } else {
            None
        }
    }
}

impl IntoResponse for Taken {
    fn into_response(self) -> Response {
        "ok\n".into_response()
    }
}

impl IntoResponse for Refusal {
    fn into_response(self) -> Response {
        let (status, again) = match &self {
            Self::Body(_) | Self::Broken => (StatusCode::BAD_REQUEST, None),
            Self::Intake(IntakeError::Full) => {
                (StatusCode::TOO_MANY_REQUESTS, Some(AGAIN_WHEN_FULL))
            }
            Self::Intake(IntakeError::Keeper(_) | IntakeError::Seal(_)) | Self::Unkept => {
                (StatusCode::SERVICE_UNAVAILABLE, Some(AGAIN_WHEN_BROKEN))
            }
            Self::TooLong => (StatusCode::PAYLOAD_TOO_LARGE, None),
            Self::TooSlow => (StatusCode::REQUEST_TIMEOUT, None),
            Self::Unproven(_) => (StatusCode::UNAUTHORIZED, None),
        };
        // What failed inside is for the operator's log, not for whoever asks.
        let reason = match &self {
            Self::Intake(_) | Self::Unkept => "not now".to_owned(),
            Self::Body(_) | Self::Broken | Self::TooLong | Self::TooSlow | Self::Unproven(_) => {
                self.to_string()
            }
        };
        let mut response = (status, format!("{reason}\n")).into_response();
        if let Some(seconds) = again {
            response.headers_mut().insert(header::RETRY_AFTER, seconds);
        }
        response
    }
}
