//! What the chat service's errors mean.
//!
//! In: errors of the library.
//! Out: how the link stands, and what becomes of a reply.
//! Promises that no reason holds the token, which stands in every address of the service, nor what
//! the service repeats of a message. Pure.

use std::time::Duration;

use serde_json::Value;
use teloxide::{ApiError, RequestError};

use crate::channel::calling;
use crate::message::Sending;
use crate::post::Link;

/// What an error means.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) enum Trouble {
    /// The conversation is over: nothing is ever sent there.
    Gone(&'static str),
    /// The group has another number now.
    Moved(i64),
    /// Its answer is none of the service's.
    Nonsense,
    /// Somebody else takes this bot's messages.
    OtherPoller(&'static str),
    /// The service says no, for a reason that may pass.
    Rejected,
    /// The token is not, or no longer, one.
    TokenRefused,
    /// There is no way to the service.
    Unreachable(String),
    /// The service asks for time.
    Wait(Duration),
}

impl Trouble {
    /// What an error means.
    pub(super) fn of(error: &RequestError) -> Self {
        match error {
            RequestError::Api(error) => Self::of_api(error),
            RequestError::MigrateToChatId(chat) => Self::Moved(chat.0),
            RequestError::RetryAfter(seconds) => Self::Wait(seconds.duration()),
            RequestError::Network(error) => {
                Self::Unreachable(calling::reason("the service", error))
            }
            RequestError::InvalidJson { .. } => Self::Nonsense,
            RequestError::Io(_) => Self::Unreachable("the request cannot be made".to_owned()),
        }
    }

    #[allow(
        clippy::wildcard_enum_match_arm,
        reason = "the library's list of the service's errors is open, and most are of other uses"
    )]
    fn of_api(error: &ApiError) -> Self {
        if let Some(reason) = gone(error) {
            return Self::Gone(reason);
        }
        match error {
            ApiError::InvalidToken => Self::TokenRefused,
            ApiError::TerminatedByOtherGetUpdates => {
                Self::OtherPoller("another program takes this bot's messages")
            }
            ApiError::CantGetUpdates => Self::OtherPoller(WEBHOOK),
            ApiError::Unknown(said) if said.starts_with("Conflict") => {
                if said.contains("webhook") {
                    Self::OtherPoller(WEBHOOK)
                } else {
                    Self::OtherPoller("another program takes this bot's messages")
                }
            }
            ApiError::Unknown(said) if said.starts_with("Unauthorized") => Self::TokenRefused,
            _ => Self::Rejected,
        }
    }

    /// In words, for operators.
    pub(super) fn reason(&self) -> String {
        match self {
            Self::Gone(reason) | Self::OtherPoller(reason) => (*reason).to_owned(),
            Self::Moved(_) => "the group has another number".to_owned(),
            Self::Nonsense => "the answer is none of the service's; is api_url right?".to_owned(),
            Self::Rejected => "the service says no".to_owned(),
            Self::TokenRefused => "the token is refused".to_owned(),
            Self::Unreachable(reason) => reason.clone(),
            Self::Wait(_) => "the service asks for time".to_owned(),
        }
    }

    /// How the link stands when asking for messages ended so.
    pub(super) fn link(&self) -> Link {
        match self {
            Self::TokenRefused => Link::Down(self.reason()),
            Self::Gone(_)
            | Self::Moved(_)
            | Self::Nonsense
            | Self::OtherPoller(_)
            | Self::Rejected
            | Self::Unreachable(_)
            | Self::Wait(_) => Link::Retrying(self.reason()),
        }
    }

    /// What becomes of a reply whose sending ended so.
    pub(super) fn sending(&self) -> Sending {
        let reason = self.reason();
        match self {
            Self::Gone(_) => Sending::Failed(reason),
            Self::Wait(after) => Sending::TryAgain {
                reason,
                after: Some(*after),
            },
            Self::Moved(_)
            | Self::Nonsense
            | Self::OtherPoller(_)
            | Self::Rejected
            | Self::TokenRefused
            | Self::Unreachable(_) => Sending::TryAgain {
                reason,
                after: None,
            },
        }
    }
}

const WEBHOOK: &str = "the bot's messages go to a webhook; delete it (deleteWebhook)";

/// Why nothing is ever sent to a conversation, if that is what an error says.
#[allow(
    clippy::wildcard_enum_match_arm,
    reason = "the library's list of the service's errors is open, and most may pass"
)]
fn gone(error: &ApiError) -> Option<&'static str> {
    match error {
        ApiError::BotBlocked => Some("the person has blocked the bot"),
        ApiError::ChatNotFound | ApiError::UserNotFound => Some("there is no such conversation"),
        ApiError::UserDeactivated | ApiError::GroupDeactivated => {
            Some("the person or the group is there no more")
        }
        ApiError::BotKicked
        | ApiError::BotKickedFromSupergroup
        | ApiError::BotKickedFromChannel => Some("the bot was put out of the group"),
        ApiError::CantInitiateConversation => Some("the person has not written to the bot"),
        ApiError::CantTalkWithBots => Some("it is a bot's conversation"),
        ApiError::MessageTextIsEmpty => Some("there is no text"),
        // The service's words for the group differ with its kind and over the years.
        ApiError::Unknown(said)
            if said.starts_with("Forbidden: bot was kicked")
                || said.starts_with("Forbidden: bot was blocked")
                || said.starts_with("Forbidden: the group chat was deleted")
                || said.starts_with("Forbidden: bot can't initiate conversation")
                || said.starts_with("Forbidden: bot can't send messages to bots") =>
        {
            Some("the conversation is over")
        }
        _ => None,
    }
}

/// Whether the service took what was sent, though the library could not read its answer: to send
/// it again would send it twice.
pub(super) fn was_taken(error: &RequestError) -> bool {
    let RequestError::InvalidJson { raw, .. } = error else {
        return false;
    };
    serde_json::from_str::<Value>(raw)
        .is_ok_and(|answer| answer.get("ok").and_then(Value::as_bool) == Some(true))
}

#[cfg(test)]
mod tests {
    use super::{Duration, Link, RequestError, Trouble, was_taken};
    use std::sync::Arc;
    use teloxide::ApiError;
    use teloxide::types::Seconds;

    fn said(description: &str) -> Trouble {
        let error: ApiError = serde_json::from_value(description.into()).expect("an error");
        Trouble::of(&RequestError::Api(error))
    }

    fn unread(raw: &str) -> RequestError {
        let source = serde_json::from_str::<u8>("x").expect_err("no number");
        RequestError::InvalidJson {
            source: Arc::new(source),
            raw: raw.into(),
        }
    }

    #[test]
    fn conversations_that_are_over() {
        for description in [
            "Forbidden: bot was blocked by the user",
            "Forbidden: user is deactivated",
            "Forbidden: bot was kicked from the group chat",
            "Forbidden: bot was kicked from the supergroup chat",
            "Forbidden: the group chat was deleted",
            "Forbidden: bot can't initiate conversation with a user",
            "Forbidden: bot can't send messages to bots",
            "Bad Request: chat not found",
            "Bad Request: group is deactivated",
        ] {
            let trouble = said(description);
            assert!(
                matches!(trouble, Trouble::Gone(_)),
                "{description}: {trouble:?}"
            );
        }
    }

    #[test]
    fn what_may_pass() {
        for description in [
            "Bad Request: not enough rights to send text messages to the chat",
            "Forbidden: something of the future",
            "Internal Server Error",
        ] {
            assert_eq!(said(description), Trouble::Rejected, "{description}");
        }
        let wait = RequestError::RetryAfter(Seconds::from_seconds(7));
        assert_eq!(Trouble::of(&wait), Trouble::Wait(Duration::from_secs(7)));
    }

    #[test]
    fn how_the_link_stands() {
        let down = Link::Down("the token is refused".to_owned());
        assert_eq!(said("Unauthorized").link(), down);
        for description in [
            "Conflict: terminated by other getUpdates request; make sure that only one bot \
             instance is running",
            "Conflict: can't use getUpdates method while webhook is active; use deleteWebhook",
            "Conflict: of the future",
        ] {
            let trouble = said(description);
            assert!(matches!(trouble, Trouble::OtherPoller(_)), "{description}");
            assert!(matches!(trouble.link(), Link::Retrying(_)), "{description}");
        }
    }

    #[test]
    fn an_answer_that_cannot_be_read_may_still_say_yes() {
        assert!(was_taken(&unread(r#"{"ok": true, "result": {}}"#)));
        for raw in [
            "",
            "<html>",
            "{}",
            r#"{"ok": false}"#,
            r#"{"ok": "true"}"#,
            "true",
        ] {
            assert!(!was_taken(&unread(raw)), "{raw}");
        }
    }
}
