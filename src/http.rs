//! The program's listener: its health, its figures, and what channels and the supervisors' page
//! answer under it.

use std::sync::Arc;
use std::time::Duration;

use axum::Router;
use axum::extract::State;
use axum::http::{StatusCode, header};
use axum::response::{IntoResponse, Response};
use axum::routing::get;
use jiff::Timestamp;

use crate::post::{Keeper, Link, Links, Metrics};
use crate::store::Change;

/// A store that does not write within this time is not writing.
const STORE_ANSWERS_WITHIN: Duration = Duration::from_secs(3);
/// The format that Prometheus asks for by default.
const OPENMETRICS: &str = "application/openmetrics-text; version=1.0.0; charset=utf-8";

/// What the listener shows of the program.
#[derive(Debug, Clone)]
pub struct Vitals {
    /// The writer.
    pub keeper: Keeper,
    /// The links.
    pub links: Links,
    /// The figures.
    pub metrics: Arc<Metrics>,
}

/// `/healthz` and `/metrics`.
pub fn routes(vitals: Vitals) -> Router {
    Router::new()
        .route("/healthz", get(health))
        .route("/metrics", get(figures))
        .with_state(vitals)
}

async fn health(State(vitals): State<Vitals>) -> Response {
    match ill(&vitals).await {
        None => "ok".into_response(),
        Some(reasons) => (StatusCode::SERVICE_UNAVAILABLE, reasons).into_response(),
    }
}

/// What is wrong, a line each.
async fn ill(vitals: &Vitals) -> Option<String> {
    let mut reasons = Vec::new();
    let beat = vitals.keeper.change(Change::Heartbeat(Timestamp::now()));
    match tokio::time::timeout(STORE_ANSWERS_WITHIN, beat).await {
        Ok(Ok(_)) => {}
        Ok(Err(error)) => reasons.push(format!("store: {error}")),
        Err(_) => reasons.push("store: it does not write".to_owned()),
    }
    for (channel, link) in vitals.links.all() {
        match link {
            Link::Down(reason) => reasons.push(format!("channel {channel}: {reason}")),
            Link::Retrying(_) | Link::Starting | Link::Up => {}
        }
    }
    (!reasons.is_empty()).then(|| reasons.join("\n"))
}

async fn figures(State(vitals): State<Vitals>) -> Response {
    match vitals.metrics.page(&vitals.links) {
        Ok(page) => ([(header::CONTENT_TYPE, OPENMETRICS)], page).into_response(),
        Err(error) => (StatusCode::INTERNAL_SERVER_ERROR, error.to_string()).into_response(),
    }
}
