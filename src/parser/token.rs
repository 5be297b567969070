//! Plain text cut into words, figures and signs.
//!
//! In: plain characters.
//! Out: tokens with the bytes they came from. Words and figures part even without a space
//! (`2gal1%bleach`).
//! Promises that phone numbers, dates, clock times and text-speak (`l8r`) are not figures.

use std::ops::Range;
use std::sync::LazyLock;

use regex::Regex;

use super::normalize::{Plain, UNREADABLE};

/// What a token is.
#[derive(Debug, Clone, PartialEq)]
pub(super) enum TokenKind {
    /// A calendar date, as written.
    Date(String),
    /// Digits with separators, an exponent or a fraction stroke.
    Figure(String),
    /// Something that is no figure for us: a phone number, a clock time, an ordinal, text-speak.
    Other,
    /// A sign.
    Sign(char),
    /// Cannot be read.
    Unreadable,
    /// Letters.
    Word(String),
}

/// A token and where it stands.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Token {
    pub(super) kind: TokenKind,
    /// Bytes of the text as typed.
    pub(super) span: Range<usize>,
    /// Nothing, not even a space, lies between this and the token before.
    pub(super) glued: bool,
    /// A minus stands directly before the figure.
    pub(super) negative: bool,
}

static SHAPES: LazyLock<Regex> = LazyLock::new(|| {
    // The alternatives are tried in this order; each is anchored where the last token ended.
    let pattern = concat!(
        r"(?P<quoted>(?:^|\n)>[^\n]*)",
        r"|(?P<phone>\+\d[\d \-]{6,}\d|\b0\d{2,}(?:[ \-]\d{2,}){2,}|\b0\d{6,}\b)",
        r"|(?P<date>\b\d{4}-\d{1,2}-\d{1,2}\b|\b\d{1,2}[/.\-]\d{1,2}[/.\-]\d{2,4}\b)",
        r"|(?P<clock>\b\d{1,2}:\d{2}(?::\d{2})?(?:\s?[ap]\.?m\b)?|\b\d{1,2}\s?(?:am|pm)\b|\b\d{1,2} ?o'clock)",
        r"|(?P<ordinal>\b\d{1,2}(?:st|nd|rd|th)\b)",
        r"|(?P<figure>\d+(?:[.,']+\d+)*(?:e\+?\d+\b|(?:/\d+)?))",
        r"|(?P<cubic>(?:(?:c|d)?m|م)3\b)",
        r"|(?P<word>[\p{L}\p{M}]+(?:'[\p{L}\p{M}]+)*)",
        r"|(?P<sign>[^\s])",
    );
    Regex::new(pattern).unwrap_or_else(|error| unreachable!("the pattern is a constant: {error}"))
});

/// Cuts the text.
pub(super) fn tokenize(plain: &[Plain], text_len: usize) -> Vec<Token> {
    let line: String = plain.iter().map(|plain| plain.char).collect();
    // Byte of the plain line → byte of the text as typed.
    let mut origin: Vec<usize> = Vec::with_capacity(line.len() + 1);
    for plain in plain {
        origin.extend(std::iter::repeat_n(plain.at, plain.char.len_utf8()));
    }
    origin.push(text_len);
    let at = |byte: usize| origin.get(byte).copied().unwrap_or(text_len);

    let mut tokens: Vec<Token> = Vec::new();
    let mut last_end = usize::MAX;
    for found in SHAPES.captures_iter(&line) {
        let Some(whole) = found.get(0) else { continue };
        let text = whole.as_str();
        let has = |name: &str| found.name(name).is_some();
        let glued = whole.start() == last_end;
        let kind = if has("quoted") || has("phone") || has("clock") || has("ordinal") {
            TokenKind::Other
        } else if has("date") {
            TokenKind::Date(text.to_owned())
        } else if has("figure") {
            TokenKind::Figure(text.to_owned())
        } else if has("word") || has("cubic") {
            TokenKind::Word(text.to_owned())
        } else if text.starts_with(UNREADABLE) {
            TokenKind::Unreadable
        } else {
            TokenKind::Sign(text.chars().next().unwrap_or(' '))
        };
        last_end = whole.end();
        let span = at(whole.start())..at(whole.end());
        tokens.push(Token {
            kind,
            span,
            glued,
            negative: false,
        });
    }
    mark_escaped(&mut tokens);
    read_leading_points(&mut tokens);
    mark_negatives(&mut tokens);
    mark_text_speak(&mut tokens);
    mark_garbled(&mut tokens);
    tokens
}

/// `bleach%205%25`: escaped for a web address; its figures are not what they seem.
fn mark_escaped(tokens: &mut [Token]) {
    let escaped = tokens.windows(3).any(|run| match run {
        [word, sign, figure] => {
            matches!(word.kind, TokenKind::Word(_))
                && sign.kind == TokenKind::Sign('%')
                && sign.glued
                && figure.glued
                && matches!(figure.kind, TokenKind::Figure(_))
        }
        _ => false,
    });
    if escaped {
        for token in tokens {
            if matches!(token.kind, TokenKind::Figure(_)) {
                token.kind = TokenKind::Unreadable;
            }
        }
    }
}

/// `.5` is a half; `water.5` may be a sentence's end and five, or a half.
fn read_leading_points(tokens: &mut [Token]) {
    for i in 1..tokens.len() {
        let behind_text = i >= 2
            && tokens.get(i - 2).is_some_and(|before| {
                matches!(
                    before.kind,
                    TokenKind::Figure(_) | TokenKind::Word(_) | TokenKind::Sign('.' | ',' | '%')
                )
            });
        let Some([sign, figure]) = tokens.get_mut(i - 1..=i) else {
            continue;
        };
        let TokenKind::Figure(digits) = &figure.kind else {
            continue;
        };
        if !figure.glued {
            continue;
        }
        let whole = digits.chars().all(|c| c.is_ascii_digit());
        let begins = !(sign.glued && behind_text);
        match sign.kind {
            TokenKind::Sign('.') if begins && whole => {
                figure.kind = TokenKind::Figure(format!("0.{digits}"));
                sign.kind = TokenKind::Other;
            }
            TokenKind::Sign('.') => figure.kind = TokenKind::Unreadable,
            TokenKind::Sign(',') if begins => figure.kind = TokenKind::Unreadable,
            _ => {}
        }
    }
}

/// A minus glued to a figure and not glued to what stands before it: `-5 L`, but not `5-6%`.
fn mark_negatives(tokens: &mut [Token]) {
    for i in 1..tokens.len() {
        if let Some([minus, figure]) = tokens.get_mut(i - 1..=i)
            && minus.kind == TokenKind::Sign('-')
            && !minus.glued
            && figure.glued
            && matches!(figure.kind, TokenKind::Figure(_))
        {
            figure.negative = true;
        }
    }
}

/// `l8r`, `b4`, `gr8`: letters, glued digits, and no figure glued before the letters.
fn mark_text_speak(tokens: &mut [Token]) {
    for i in 0..tokens.len() {
        let starts_word = tokens.get(i).is_some_and(|word| {
            matches!(&word.kind, TokenKind::Word(text) if text.len() <= 3) && !word.glued
        });
        let digit_inside = tokens.get(i + 1).is_some_and(|figure| {
            matches!(&figure.kind, TokenKind::Figure(text) if text.len() == 1) && figure.glued
        });
        let word_after = tokens
            .get(i + 2)
            .is_some_and(|word| matches!(&word.kind, TokenKind::Word(_)) && word.glued);
        if starts_word && digit_inside && word_after {
            for token in tokens.iter_mut().skip(i).take(3) {
                token.kind = TokenKind::Other;
            }
        }
    }
}

/// Digits next to something unreadable are not a figure, nor are digits next to a letter that
/// passes for one (`2O L`, `l0 L`).
fn mark_garbled(tokens: &mut [Token]) {
    let passes_for_digit = |text: &str| text.chars().all(|c| matches!(c, 'o' | 'i' | 'l'));
    for i in 0..tokens.len() {
        let is_figure = |token: &Token| matches!(token.kind, TokenKind::Figure(_));
        if !tokens.get(i).is_some_and(is_figure) {
            continue;
        }
        let glued_here = tokens.get(i).is_some_and(|token| token.glued);
        let before = i.checked_sub(1).and_then(|j| tokens.get(j));
        let before_is_bad = glued_here
            && before.is_some_and(|token| match &token.kind {
                TokenKind::Unreadable => true,
                TokenKind::Word(text) => passes_for_digit(text) && !token.glued,
                TokenKind::Date(_)
                | TokenKind::Figure(_)
                | TokenKind::Other
                | TokenKind::Sign(_) => false,
            });
        let after_is_bad = tokens.get(i + 1).is_some_and(|token| {
            token.glued
                && match &token.kind {
                    TokenKind::Unreadable => true,
                    TokenKind::Word(text) => passes_for_digit(text) && text != "l",
                    TokenKind::Date(_)
                    | TokenKind::Figure(_)
                    | TokenKind::Other
                    | TokenKind::Sign(_) => false,
                }
        });
        if (before_is_bad || after_is_bad)
            && let Some(token) = tokens.get_mut(i)
        {
            token.kind = TokenKind::Unreadable;
        }
    }
}
