//! The bytes of a modem, cut into lines and prompts.
//!
//! In: bytes as they come, in pieces of any size.
//! Out: lines without their ends, prompts.
//! Promises that no line is longer than its limit, that what no terminal shows (noughts after a
//! reset, noise) is no part of a line, and that CR, LF and both end one. Knows no command.
//! Follows 3GPP TS 27.005 and ITU-T V.250.

/// The longest line that says something is a message of 176 octets in hexadecimal digits.
const LINE_BYTES_MAX: usize = 1024;

/// What came.
#[derive(Clone, PartialEq, Eq)]
pub enum Token {
    /// A line that is not empty.
    Line(String),
    /// The modem waits for a message's octets.
    Prompt,
}

/// Cuts what comes.
#[derive(Default)]
pub struct Splitter {
    line: String,
    overlong: Overlong,
}

/// Whether the line that is being read has passed its limit.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
enum Overlong {
    #[default]
    No,
    /// The rest of it is passed over.
    Yes,
}

impl Splitter {
    /// What these bytes complete.
    pub fn feed(&mut self, bytes: &[u8]) -> Vec<Token> {
        bytes.iter().filter_map(|byte| self.next(*byte)).collect()
    }

    fn next(&mut self, byte: u8) -> Option<Token> {
        match byte {
            b'\r' | b'\n' => self.end(),
            // A prompt has no end of line behind it.
            b'>' if self.line.is_empty() && self.overlong == Overlong::No => Some(Token::Prompt),
            b' ' if self.line.is_empty() => None,
            b' '..=b'~' => {
                if self.line.len() < LINE_BYTES_MAX {
                    self.line.push(char::from(byte));
                } else {
                    self.overlong = Overlong::Yes;
                }
                None
            }
            _ => None,
        }
    }

    fn end(&mut self) -> Option<Token> {
        let line = std::mem::take(&mut self.line);
        match std::mem::take(&mut self.overlong) {
            Overlong::Yes => None,
            Overlong::No if line.is_empty() => None,
            Overlong::No => Some(Token::Line(line.trim_end().to_owned())),
        }
    }
}

impl std::fmt::Debug for Splitter {
    /// What it holds may be a message.
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str("Splitter(…)")
    }
}

impl std::fmt::Debug for Token {
    /// A line may hold a message.
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        match self {
            Self::Line(_) => f.write_str("Line(…)"),
            Self::Prompt => f.write_str("Prompt"),
        }
    }
}
