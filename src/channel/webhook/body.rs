//! Bodies, as forms or as JSON, with the fields that a gateway calls by its own names.
//!
//! In: octets, or fields to send.
//! Out: the texts of fields, or octets.
//! Promises no panic on any octets, and that no error tells what a body says. Pure.

use serde_json::{Map, Value};

use crate::config::BodyFormat;

/// A gateway's name of a field. In JSON a dot leads into an object, or by a number into a list.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct FieldName(String);

impl From<&str> for FieldName {
    fn from(name: &str) -> Self {
        Self(name.to_owned())
    }
}

/// A body as it came.
#[derive(Debug)]
pub(super) enum Body {
    Form(Vec<(String, String)>),
    Json(Value),
}

/// Why a body is no message. Fields are named as the configuration names them.
#[derive(Debug, PartialEq, Eq, thiserror::Error)]
pub(super) enum BodyError {
    #[error("the field `{0}` is empty")]
    Empty(String),
    #[error("the field `{0}` is missing")]
    Missing(String),
    #[error("the body is not JSON")]
    NotJson,
    #[error("the body is not a JSON object")]
    NotObject,
    #[error("the field `{0}` is neither a text nor a number")]
    NotText(String),
    #[error("the field `{0}` is neither a text nor a whole number")]
    NotWhole(String),
    #[error("the field `{0}` is too long")]
    TooLong(String),
}

impl Body {
    /// Reads a body.
    pub(super) fn read(format: BodyFormat, octets: &[u8]) -> Result<Self, BodyError> {
        match format {
            BodyFormat::Form => Ok(Self::Form(
                form_urlencoded::parse(octets).into_owned().collect(),
            )),
            BodyFormat::Json => {
                let value: Value =
                    serde_json::from_slice(octets).map_err(|_| BodyError::NotJson)?;
                if value.is_object() {
                    Ok(Self::Json(value))
                } else {
                    Err(BodyError::NotObject)
                }
            }
        }
    }

    /// The text of a field, which may be empty.
    pub(super) fn text(&self, name: &FieldName) -> Result<String, BodyError> {
        let missing = || BodyError::Missing(name.0.clone());
        match self {
            Self::Form(fields) => fields
                .iter()
                .find(|(key, _)| *key == name.0)
                .map(|(_, text)| text.clone())
                .ok_or_else(missing),
            Self::Json(object) => match reach(object, &name.0).ok_or_else(missing)? {
                Value::Null => Err(missing()),
                Value::String(text) => Ok(text.clone()),
                Value::Number(number) => Ok(number.to_string()),
                Value::Bool(_) | Value::Array(_) | Value::Object(_) => {
                    Err(BodyError::NotText(name.0.clone()))
                }
            },
        }
    }

    /// The text of a field that names something, without the spaces around it.
    pub(super) fn word(&self, name: &FieldName, most: usize) -> Result<String, BodyError> {
        // Other numbers have lost digits on their way through a floating point number: two names
        // would become one.
        if let Self::Json(object) = self
            && let Some(Value::Number(number)) = reach(object, &name.0)
            && !(number.is_i64() || number.is_u64())
        {
            return Err(BodyError::NotWhole(name.0.clone()));
        }
        let text = self.text(name)?;
        let word = text.trim();
        if word.is_empty() {
            Err(BodyError::Empty(name.0.clone()))
        } else if word.len() > most {
            Err(BodyError::TooLong(name.0.clone()))
        } else {
            Ok(word.to_owned())
        }
    }
}

/// The value that a dotted name leads to; a field that has dots in its own name goes first.
fn reach<'a>(object: &'a Value, name: &str) -> Option<&'a Value> {
    object.get(name).or_else(|| {
        name.split('.').try_fold(object, |value, step| match value {
            Value::Array(list) => list.get(step.parse::<usize>().ok()?),
            Value::Object(_) => value.get(step),
            Value::Null | Value::Bool(_) | Value::Number(_) | Value::String(_) => None,
        })
    })
}

/// Two names of which one leads through the other.
#[derive(Debug, PartialEq, Eq, thiserror::Error)]
#[error("the field `{0}` has no place beside the others")]
pub(super) struct Crossed(String);

/// Writes a body.
pub(super) fn write<'a>(
    format: BodyFormat,
    fields: impl Iterator<Item = (&'a FieldName, &'a str)>,
) -> Result<Vec<u8>, Crossed> {
    match format {
        BodyFormat::Form => {
            let mut form = form_urlencoded::Serializer::new(String::new());
            for (name, text) in fields {
                form.append_pair(&name.0, text);
            }
            Ok(form.finish().into_bytes())
        }
        BodyFormat::Json => {
            let mut body = Map::new();
            for (name, text) in fields {
                place(&mut body, &name.0, text).ok_or_else(|| Crossed(name.0.clone()))?;
            }
            Ok(Value::Object(body).to_string().into_bytes())
        }
    }
}

fn place(object: &mut Map<String, Value>, name: &str, text: &str) -> Option<()> {
    let Some((step, rest)) = name.split_once('.') else {
        return match object.insert(name.to_owned(), text.into()) {
            None => Some(()),
            Some(_) => None,
        };
    };
    let inner = object
        .entry(step)
        .or_insert_with(|| Value::Object(Map::new()));
    place(inner.as_object_mut()?, rest, text)
}

/// What a body in that format is called in a header.
pub(super) const fn content_type(format: BodyFormat) -> &'static str {
    match format {
        BodyFormat::Form => "application/x-www-form-urlencoded",
        BodyFormat::Json => "application/json",
    }
}

#[cfg(test)]
mod tests {
    use super::{Body, BodyError, BodyFormat, Crossed, FieldName, write};

    fn json(text: &str, field: &str) -> Result<String, BodyError> {
        Body::read(BodyFormat::Json, text.as_bytes())?.word(&field.into(), 16)
    }

    fn form(text: &str, field: &str) -> Result<String, BodyError> {
        Body::read(BodyFormat::Form, text.as_bytes())?.word(&field.into(), 16)
    }

    #[test]
    fn json_fields() {
        let cases: [(&str, &str, Result<&str, BodyError>); 15] = [
            (r#"{"id": " 7 "}"#, "id", Ok("7")),
            (r#"{"id": 1234567890123456}"#, "id", Ok("1234567890123456")),
            (r#"{"id": -3}"#, "id", Ok("-3")),
            (r#"{"sms": {"to": [{"id": 5}]}}"#, "sms.to.0.id", Ok("5")),
            (r#"{"a.b": "x", "a": {"b": "y"}}"#, "a.b", Ok("x")),
            (
                r#"{"id": ""}"#,
                "id",
                Err(BodyError::Empty("id".to_owned())),
            ),
            (
                r#"{"id": null}"#,
                "id",
                Err(BodyError::Missing("id".to_owned())),
            ),
            (
                r#"{"a": "b"}"#,
                "a.b",
                Err(BodyError::Missing("a.b".to_owned())),
            ),
            (
                r#"{"a": []}"#,
                "a.0",
                Err(BodyError::Missing("a.0".to_owned())),
            ),
            (
                r#"{"id": 1.5}"#,
                "id",
                Err(BodyError::NotWhole("id".to_owned())),
            ),
            (
                r#"{"id": 123456789012345678901234}"#,
                "id",
                Err(BodyError::NotWhole("id".to_owned())),
            ),
            (
                r#"{"id": {}}"#,
                "id",
                Err(BodyError::NotText("id".to_owned())),
            ),
            (
                r#"{"id": "12345678901234567"}"#,
                "id",
                Err(BodyError::TooLong("id".to_owned())),
            ),
            (r#"["id"]"#, "id", Err(BodyError::NotObject)),
            (r#"{"id": "7""#, "id", Err(BodyError::NotJson)),
        ];
        for (text, field, expected) in cases {
            assert_eq!(json(text, field), expected.map(str::to_owned), "{text}");
        }
    }

    #[test]
    fn deep_json_is_no_message() {
        let deep = "[".repeat(60_000);
        assert_eq!(json(&deep, "id"), Err(BodyError::NotJson));
    }

    #[test]
    fn form_fields() {
        assert_eq!(form("a=%2B255&b=x+y", "a").as_deref(), Ok("+255"));
        assert_eq!(form("a=%2B255&b=x+y", "b").as_deref(), Ok("x y"));
        assert_eq!(form("a=1&a=2", "a").as_deref(), Ok("1"));
        assert_eq!(form("a=%FF", "a").as_deref(), Ok("\u{fffd}"));
        assert_eq!(form("", "a"), Err(BodyError::Missing("a".to_owned())));
        assert_eq!(form("a", "a"), Err(BodyError::Empty("a".to_owned())));
    }

    fn written(format: BodyFormat, fields: &[(&str, &str)]) -> Result<String, Crossed> {
        let fields: Vec<(FieldName, &str)> = fields
            .iter()
            .map(|(name, text)| (FieldName::from(*name), *text))
            .collect();
        let octets = write(format, fields.iter().map(|(name, text)| (name, *text)))?;
        Ok(String::from_utf8(octets).expect("UTF-8"))
    }

    #[test]
    fn bodies_are_written() {
        assert_eq!(
            written(BodyFormat::Form, &[("to", "+255"), ("text", "ماء & é")]).as_deref(),
            Ok("to=%2B255&text=%D9%85%D8%A7%D8%A1+%26+%C3%A9")
        );
        assert_eq!(
            written(
                BodyFormat::Json,
                &[("sms.to", "+255"), ("sms.text", "\"1\"")]
            )
            .as_deref(),
            Ok(r#"{"sms":{"text":"\"1\"","to":"+255"}}"#)
        );
        for names in [["to", "to"], ["to", "to.x"], ["to.x", "to"]] {
            let fields = names.map(|name| (name, "1"));
            assert!(written(BodyFormat::Json, &fields).is_err(), "{names:?}");
        }
    }
}
