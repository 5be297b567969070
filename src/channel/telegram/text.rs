//! Texts as the chat service writes and carries them.
//!
//! In: what a person wrote, or a reply.
//! Out: words without the service's signs; a reply in messages that the service takes.
//! Pure.

use unicode_segmentation::UnicodeSegmentation;

/// The service counts characters; counted in UTF-16 a text is never shorter.
const UNITS_MAX: usize = 4096;

/// A text as written, and whom it is for where it says so.
#[derive(Debug, PartialEq, Eq)]
pub(super) struct Written<'a> {
    pub(super) text: String,
    /// The bot that a command is for: in groups, `/help@name`.
    pub(super) addressee: Option<&'a str>,
}

/// Reads a text: a command is its word, without the sign and the bot's name.
pub(super) fn written(text: &str) -> Written<'_> {
    let text = text.trim();
    let plain = || Written {
        text: text.to_owned(),
        addressee: None,
    };
    let Some(command) = text.strip_prefix('/') else {
        return plain();
    };
    let (word, rest) = match command.split_once(char::is_whitespace) {
        Some((word, rest)) => (word, rest.trim_start()),
        None => (command, ""),
    };
    let (word, addressee) = match word.split_once('@') {
        Some((word, name)) => (word, Some(name)),
        None => (word, None),
    };
    // "/2 litres" and "//" are no commands.
    if !word.starts_with(|c: char| c.is_alphabetic()) {
        return plain();
    }
    Written {
        text: format!("{word} {rest}").trim_end().to_owned(),
        addressee,
    }
}

/// A reply in messages, cut between paragraphs, else between lines, else between words.
pub(super) fn messages(text: &str) -> Vec<&str> {
    let mut messages = Vec::new();
    let mut rest = text.trim();
    while let Some((room, _)) = rest
        .split_at_checked(room(rest))
        .filter(|(_, over)| !over.is_empty())
    {
        let end = ["\n\n", "\n", " "]
            .iter()
            .find_map(|sign| room.rfind(sign).filter(|at| *at > 0))
            .unwrap_or(room.len());
        let Some((message, behind)) = rest.split_at_checked(end) else {
            break;
        };
        messages.push(message.trim_end());
        rest = behind.trim_start();
    }
    if !rest.is_empty() {
        messages.push(rest);
    }
    messages
}

/// Bytes of a text that one message holds; no letter is parted from its marks.
fn room(text: &str) -> usize {
    let mut units = 0;
    let mut bytes = 0;
    for letter in text.graphemes(true) {
        units += letter.encode_utf16().count();
        if units > UNITS_MAX {
            // A letter with marks without end is cut all the same.
            return if bytes > 0 { bytes } else { hard_room(text) };
        }
        bytes += letter.len();
    }
    bytes
}

fn hard_room(text: &str) -> usize {
    let mut units = 0;
    text.chars()
        .take_while(|c| {
            units += c.len_utf16();
            units <= UNITS_MAX
        })
        .map(char::len_utf8)
        .sum()
}

#[cfg(test)]
mod tests {
    use super::{UNITS_MAX, Written, messages, written};

    #[test]
    fn commands_are_words() {
        let cases = [
            ("/start", "start", None),
            ("/help@water_bot", "help", Some("water_bot")),
            (
                "/dose@water_bot  20 litres ",
                "dose 20 litres",
                Some("water_bot"),
            ),
            ("/dose\n20 litres", "dose 20 litres", None),
            ("20 litres", "20 litres", None),
            ("  /stop ", "stop", None),
            ("/مساعدة", "مساعدة", None),
            ("/", "/", None),
            ("//", "//", None),
            ("/ 5", "/ 5", None),
            ("/5 litres", "/5 litres", None),
            ("/@water_bot", "/@water_bot", None),
            ("1/2 litre", "1/2 litre", None),
            ("", "", None),
        ];
        for (text, expected, addressee) in cases {
            let expected = Written {
                text: expected.to_owned(),
                addressee,
            };
            assert_eq!(written(text), expected, "{text}");
        }
    }

    fn check(text: &str, lengths: &[usize]) {
        let cut = messages(text);
        let counted: Vec<usize> = cut.iter().map(|m| m.encode_utf16().count()).collect();
        assert_eq!(counted, lengths);
    }

    #[test]
    fn replies_are_cut_where_it_hurts_least() {
        let line = "a".repeat(2000);
        check("", &[]);
        check(" \n ", &[]);
        check(&line, &[2000]);
        check(&"a".repeat(UNITS_MAX), &[UNITS_MAX]);
        check(&"a".repeat(UNITS_MAX + 1), &[UNITS_MAX, 1]);
        // Between paragraphs, though a line would hold more.
        check(&format!("{line}\n\nb\n{line}\n{line}"), &[2000, 4002 + 1]);
        check(&format!("{line}\n{line}\n{line}"), &[4001, 2000]);
        check(&format!("{line} {line} {line}"), &[4001, 2000]);
        check(&"💧".repeat(3000), &[4096, 1904]);
        check(&format!("e{}", "\u{301}".repeat(5000)), &[4096, 905]);
    }

    #[test]
    fn nothing_but_white_space_is_lost() {
        let text = "Strain it first.\n\nدع الماء نصف ساعة.\n".repeat(400);
        let cut = messages(&text).concat();
        let solid = |text: &str| text.split_whitespace().collect::<String>();
        assert_eq!(solid(&cut), solid(&text));
    }
}
