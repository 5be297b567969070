//! What an update of the chat service brings.
//!
//! In: updates.
//! Out: what a person wrote, or why it is nothing to answer.
//! Pure.

use serde_json::Value;
use teloxide::types::{Message, MessageKind, Update, UpdateKind};

use super::text::written;

/// What an update brings.
#[derive(Debug, PartialEq, Eq)]
pub(super) enum Brought {
    /// A bot wrote.
    ByMachine,
    /// What a person wrote.
    Letter(Letter),
    /// A person sent something without words.
    NoText,
    /// Something that nobody wrote to us: who joined, what was pinned, an edited message.
    Other,
    /// Something that this program cannot read.
    Unknown,
}

/// What a person wrote.
#[derive(Debug, PartialEq, Eq)]
pub(super) struct Letter {
    /// The conversation.
    pub(super) chat: i64,
    /// Its number in the conversation.
    pub(super) number: i64,
    /// The words.
    pub(super) text: String,
    /// The bot that it is for, where it says so.
    pub(super) addressee: Option<String>,
}

/// Reads an update.
pub(super) fn read(update: &Update) -> Brought {
    if let UpdateKind::Message(message) = &update.kind {
        typed(message)
    } else if let UpdateKind::Error(value) = &update.kind {
        raw(value)
    } else {
        Brought::Other
    }
}

fn typed(message: &Message) -> Brought {
    let Some(from) = &message.from else {
        return Brought::Other;
    };
    if message.chat.is_channel() || !matches!(message.kind, MessageKind::Common(_)) {
        return Brought::Other;
    }
    let text = message.text().or_else(|| message.caption());
    letter(
        from.is_bot,
        message.chat.id.0,
        i64::from(message.id.0),
        text,
    )
}

/// A message that the library cannot read for some detail of it that is new to it: who wrote what
/// in which chat may still be plain.
fn raw(update: &Value) -> Brought {
    let Some(message) = update.get("message") else {
        return Brought::Unknown;
    };
    let chat = message.get("chat");
    let field = |of: Option<&Value>, name: &str| of?.get(name).cloned();
    let kind = field(chat, "type");
    let is_talk = kind
        .as_ref()
        .and_then(Value::as_str)
        .is_some_and(|kind| matches!(kind, "private" | "group" | "supergroup"));
    let by_bot = field(message.get("from"), "is_bot").and_then(|is_bot| is_bot.as_bool());
    let id = field(chat, "id").and_then(|id| id.as_i64());
    let number = message.get("message_id").and_then(Value::as_i64);
    let text = message.get("text").or_else(|| message.get("caption"));
    match (is_talk, by_bot, id, text.and_then(Value::as_str)) {
        (true, Some(by_bot), Some(chat), Some(text)) => {
            letter(by_bot, chat, number.unwrap_or_default(), Some(text))
        }
        _ => Brought::Unknown,
    }
}

fn letter(by_bot: bool, chat: i64, number: i64, text: Option<&str>) -> Brought {
    if by_bot {
        return Brought::ByMachine;
    }
    let Some(text) = text else {
        return Brought::NoText;
    };
    let written = written(text);
    if written.text.is_empty() {
        return Brought::NoText;
    }
    Brought::Letter(Letter {
        chat,
        number,
        addressee: written.addressee.map(str::to_owned),
        text: written.text,
    })
}

#[cfg(test)]
mod tests {
    use super::{Brought, Letter, Value, read};
    use serde_json::json;
    use teloxide::types::Update;

    fn brought(message: &Value) -> Brought {
        let update = json!({"update_id": 7, "message": message});
        let mut update = parsed(&update);
        // The library fills this in when it reads a whole answer.
        if let teloxide::types::UpdateKind::Error(value) = &mut update.kind {
            *value = json!({"update_id": 7, "message": message});
        }
        read(&update)
    }

    fn parsed(update: &Value) -> Update {
        serde_json::from_str(&update.to_string()).expect("an update")
    }

    fn message(more: &Value) -> Value {
        let mut message = json!({
            "message_id": 3,
            "date": 1_790_000_000,
            "chat": {"id": 41, "type": "private", "first_name": "A"},
            "from": {"id": 41, "is_bot": false, "first_name": "A"},
        });
        let fields = message.as_object_mut().expect("an object");
        fields.extend(more.as_object().expect("an object").clone());
        message
    }

    fn letter(chat: i64, text: &str) -> Brought {
        Brought::Letter(Letter {
            chat,
            number: 3,
            text: text.to_owned(),
            addressee: None,
        })
    }

    #[test]
    fn words_of_people_are_letters() {
        assert_eq!(
            brought(&message(&json!({"text": "20 L"}))),
            letter(41, "20 L")
        );
        let group = json!({"text": "/start", "chat": {"id": -9, "type": "group", "title": "G"}});
        assert_eq!(brought(&message(&group)), letter(-9, "start"));
        let photo = json!({
            "photo": [{"file_id": "f", "file_unique_id": "u", "width": 1, "height": 1,
                "file_size": 1}],
            "caption": "5% bleach",
        });
        assert_eq!(brought(&message(&photo)), letter(41, "5% bleach"));
    }

    #[test]
    fn what_the_library_cannot_read_is_read_for_its_words() {
        let new = json!({"text": "20 L", "from": {"id": 41, "is_bot": false}});
        assert_eq!(brought(&message(&new)), letter(41, "20 L"));
    }

    #[test]
    fn what_is_no_letter() {
        let bot = json!({"text": "20 L", "from": {"id": 9, "is_bot": true, "first_name": "B"}});
        assert_eq!(brought(&message(&bot)), Brought::ByMachine);
        let place = json!({"location": {"longitude": 1.0, "latitude": 2.0}});
        assert_eq!(brought(&message(&place)), Brought::NoText);
        let title =
            json!({"new_chat_title": "T", "chat": {"id": -9, "type": "group", "title": "T"}});
        assert_eq!(brought(&message(&title)), Brought::Other);
        assert_eq!(brought(&message(&json!({"text": "  "}))), Brought::NoText);
    }

    #[test]
    fn what_cannot_be_read() {
        for value in [
            json!({}),
            json!(null),
            json!("message"),
            json!({"chat": [], "from": 3, "text": {}}),
            message(&json!({"chat": {"id": "x", "type": "private"}, "text": "20 L"})),
            message(&json!({"chat": {"id": 1, "type": "of the future"}, "text": "20 L"})),
        ] {
            assert_eq!(brought(&value), Brought::Unknown, "{value}");
        }
    }

    #[test]
    fn edited_messages_and_others_are_passed_over() {
        let edited = json!({"update_id": 7, "edited_message": message(&json!({"text": "x"}))});
        assert_eq!(read(&parsed(&edited)), Brought::Other);
    }
}
