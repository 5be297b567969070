//! What a gateway's answer to a reply means.
//!
//! In: a status, headers, a body, the time.
//! Out: how sending ended, and how the link stands.
//! Pure: the time comes in as an argument.

use std::time::Duration;

use axum::http::{HeaderMap, StatusCode, header};
use jiff::Timestamp;
use jiff::fmt::rfc2822::DateTimeParser;

use crate::config::BodyFormat;
use crate::message::Sending;
use crate::post::Link;

use super::body::{Body, FieldName};

const NAME_BYTES_MAX: usize = 1024;

/// What a gateway's answer means.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) enum Answer {
    /// It has the reply.
    Accepted,
    /// It asks for time.
    Busy {
        reason: String,
        after: Option<Duration>,
    },
    /// It takes none until somebody mends something, here or there.
    Broken {
        reason: String,
        after: Option<Duration>,
    },
    /// It will never take this one.
    Refused(String),
}

impl Answer {
    /// Reads a status.
    pub(super) fn of(status: StatusCode, headers: &HeaderMap, now: Timestamp) -> Self {
        let reason = format!("the gateway answers {}", status.as_u16());
        let after = retry_after(headers, now);
        match status.as_u16() {
            200..=299 => Self::Accepted,
            // Too early, too many, or the same one under way (the key says that it is the same).
            408 | 409 | 425 | 429 => Self::Busy { reason, after },
            // A wrong secret, an address that is not there yet: not the reply's fault.
            401 | 403 | 404 | 407 => Self::Broken { reason, after },
            400..=499 => Self::Refused(reason),
            // With those that lead elsewhere: whoever sent the person's words there would not
            // know to whom.
            _ => Self::Broken { reason, after },
        }
    }

    /// No answer came.
    pub(super) const fn none(reason: String) -> Self {
        Self::Broken {
            reason,
            after: None,
        }
    }

    /// How the link stands with such an answer.
    pub(super) fn link(&self) -> Link {
        match self {
            Self::Accepted | Self::Busy { .. } | Self::Refused(_) => Link::Up,
            Self::Broken { reason, .. } => Link::Retrying(reason.clone()),
        }
    }

    /// How sending ended; the names are those of an accepted one.
    pub(super) fn sending(self, names: Vec<String>) -> Sending {
        match self {
            Self::Accepted => Sending::Accepted(names),
            Self::Busy { reason, after } | Self::Broken { reason, after } => {
                Sending::TryAgain { reason, after }
            }
            Self::Refused(reason) => Sending::Failed(reason),
        }
    }
}

/// How long a gateway wants to be left alone: seconds, or until a date (RFC 9110, 10.2.3).
fn retry_after(headers: &HeaderMap, now: Timestamp) -> Option<Duration> {
    let value = headers.get(header::RETRY_AFTER)?.to_str().ok()?.trim();
    if value.bytes().all(|b| b.is_ascii_digit()) {
        return value.parse().map(Duration::from_secs).ok();
    }
    let then = DateTimeParser::new().parse_timestamp(value).ok()?;
    Some(Duration::try_from(then.duration_since(now)).unwrap_or(Duration::ZERO))
}

/// The gateway's own name for a reply, in its answer.
pub(super) fn name_in(format: BodyFormat, octets: &[u8], field: &FieldName) -> Option<String> {
    let word = |format| {
        let body = Body::read(format, octets).ok()?;
        body.word(field, NAME_BYTES_MAX).ok()
    };
    match format {
        BodyFormat::Json => word(BodyFormat::Json),
        // Many take forms and answer in JSON.
        BodyFormat::Form => word(BodyFormat::Json).or_else(|| word(BodyFormat::Form)),
    }
}

#[cfg(test)]
mod tests {
    use super::{Answer, BodyFormat, Duration, HeaderMap, StatusCode, Timestamp, header, name_in};

    fn retry_after(value: &str) -> Option<Duration> {
        let mut headers = HeaderMap::new();
        headers.insert(header::RETRY_AFTER, value.parse().expect("a value"));
        // Wed, 21 Oct 2026 07:28:00 GMT.
        let now = Timestamp::from_second(1_792_567_680).expect("a time");
        super::retry_after(&headers, now)
    }

    #[test]
    fn seconds_and_dates() {
        let seconds = |seconds| Some(Duration::from_secs(seconds));
        assert_eq!(retry_after("7"), seconds(7));
        assert_eq!(retry_after("Wed, 21 Oct 2026 07:29:30 GMT"), seconds(90));
        assert_eq!(retry_after("Wed, 21 Oct 2020 07:28:00 GMT"), seconds(0));
        for nonsense in ["", "-1", "1.5", "soon", "99999999999999999999999"] {
            assert_eq!(retry_after(nonsense), None, "{nonsense}");
        }
    }

    #[test]
    fn every_status_has_a_meaning() {
        let now = Timestamp::UNIX_EPOCH;
        for code in 100..=999 {
            let status = StatusCode::from_u16(code).expect("a status");
            let said = match Answer::of(status, &HeaderMap::new(), now) {
                Answer::Accepted => "accepted",
                Answer::Busy { .. } => "busy",
                Answer::Broken { .. } => "broken",
                Answer::Refused(_) => "refused",
            };
            let expected = match code {
                200..=299 => "accepted",
                408 | 409 | 425 | 429 => "busy",
                401 | 403 | 404 | 407 => "broken",
                400..=499 => "refused",
                _ => "broken",
            };
            assert_eq!(said, expected, "{code}");
        }
    }

    #[test]
    fn names_in_answers() {
        let field = "sms.id".into();
        let json = br#"{"sms": {"id": 12}}"#;
        assert_eq!(
            name_in(BodyFormat::Json, json, &field).as_deref(),
            Some("12")
        );
        assert_eq!(
            name_in(BodyFormat::Form, json, &field).as_deref(),
            Some("12")
        );
        let form = b"sms.id=12";
        assert_eq!(name_in(BodyFormat::Json, form, &field), None);
        assert_eq!(
            name_in(BodyFormat::Form, form, &field).as_deref(),
            Some("12")
        );
        assert_eq!(name_in(BodyFormat::Form, b"OK", &field), None);
    }
}
