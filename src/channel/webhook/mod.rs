//! An SMS gateway that calls us when a message comes in, and that we call to send one.
//!
//! In: settings and the shared secret.
//! Out: a channel: routes under the program's listener, and requests to the gateway.
//! Promises that a message is committed before the gateway hears 200, and that the same message
//! twice is one.

mod answer;
mod body;
mod inbound;
mod outbound;
mod proof;
mod settings;

use std::future::Future;
use std::pin::Pin;
use std::sync::Arc;

use axum::Router;

use crate::config::WebhookSettings;
use crate::message::ChannelName;
use crate::post::{Intake, Link, Port};

use super::{Channel, ChannelError, calling};
use inbound::Inbound;
use outbound::{Outbound, PLACES, ReceiptsFor};
use settings::Wrong;

/// A webhook channel.
#[derive(Debug)]
pub(super) struct Webhook {
    name: ChannelName,
    inbound: Arc<Inbound>,
    outbound: Arc<Outbound>,
}

/// Makes a channel from its settings.
pub(super) fn open(settings: &WebhookSettings) -> Result<Webhook, ChannelError> {
    let wrong = Wrong::of(settings);
    wrong.check_name()?;
    let url = wrong.reply_url(settings)?;
    let proof = Arc::new(wrong.proof(settings)?);
    let fields = wrong.replies(settings, &proof)?;
    let receipts = wrong.receipts(settings)?;
    let client = wrong.client(&url)?;
    let outbound = Outbound {
        client,
        url,
        format: settings.format,
        fields,
        proof: Arc::clone(&proof),
        name_field: settings.reply_id_field.as_deref().map(Into::into),
        receipts: match receipts {
            Some(_) => ReceiptsFor::All,
            None => ReceiptsFor::None,
        },
    };
    let inbound = Inbound {
        format: settings.format,
        fields: wrong.inbound(settings)?,
        receipts,
        proof,
    };
    Ok(Webhook {
        name: settings.name.as_str().into(),
        inbound: Arc::new(inbound),
        outbound: Arc::new(outbound),
    })
}

impl Channel for Webhook {
    fn name(&self) -> &ChannelName {
        &self.name
    }

    fn places(&self) -> usize {
        PLACES
    }

    fn routes(&self, intake: &Intake) -> Option<Router> {
        let inbound = Arc::clone(&self.inbound);
        Some(inbound::routes(self.name.as_str(), inbound, intake.clone()))
    }

    fn run(self: Box<Self>, port: Port) -> Pin<Box<dyn Future<Output = ()> + Send>> {
        if calling::is_open_to_others(&self.outbound.url) {
            tracing::warn!(
                channel = %self.name,
                "replies go to the gateway unencrypted: reply_url begins with http://"
            );
        }
        port.state.set(Link::Up);
        Box::pin(outbound::run(self.outbound, port))
    }
}
