//! Text as typed, made plain: look-alikes become what they look like, invisible characters go.
//!
//! In: any text.
//! Out: plain lower-case characters, each with the byte it came from.
//! Promises that a figure which a reader would see differently from its bytes comes out as
//! [`UNREADABLE`] and never as a number.
//! Knows no language.

use unicode_normalization::UnicodeNormalization;

/// Stands for something that cannot be read with certainty.
pub(super) const UNREADABLE: char = '\u{FFFC}';

/// One plain character and where it began in the text as typed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Plain {
    pub(super) char: char,
    pub(super) at: usize,
}

/// The first digit of each run of ten decimal digits (Unicode general category Nd) that the
/// compatibility decomposition leaves as it is.
const ZEROS: &[u32] = &[
    0x0030, 0x0660, 0x06F0, 0x07C0, 0x0966, 0x09E6, 0x0A66, 0x0AE6, 0x0B66, 0x0BE6, 0x0C66, 0x0CE6,
    0x0D66, 0x0DE6, 0x0E50, 0x0ED0, 0x0F20, 0x1040, 0x1090, 0x17E0, 0x1810, 0x1946, 0x19D0, 0x1A80,
    0x1A90, 0x1B50, 0x1BB0, 0x1C40, 0x1C50, 0xA620, 0xA8D0, 0xA900, 0xA9D0, 0xA9F0, 0xAA50, 0xABF0,
    0x104A0, 0x11066, 0x11136, 0x111D0, 0x112F0, 0x11450, 0x114D0, 0x11650, 0x11730,
];

/// The digit's script (its run's zero) and value.
fn digit(c: char) -> Option<(u32, char)> {
    if !c.is_numeric() {
        return None;
    }
    let code = u32::from(c);
    ZEROS
        .iter()
        .find(|zero| (**zero..**zero + 10).contains(&code))
        .and_then(|zero| char::from_digit(code - zero, 10).map(|value| (*zero, value)))
}

/// Letters of other alphabets that pass for Latin ones on a screen.
fn lookalike(c: char) -> Option<char> {
    Some(match c {
        'а' | 'α' => 'a',
        'в' => 'b',
        'с' | 'ϲ' => 'c',
        'ԁ' => 'd',
        'е' => 'e',
        'һ' | 'н' => 'h',
        'і' | 'ι' | 'ı' => 'i',
        'ј' => 'j',
        'к' | 'κ' => 'k',
        'ӏ' | 'ⅼ' => 'l',
        'м' => 'm',
        'ո' => 'n',
        'о' | 'ο' | 'օ' => 'o',
        'р' | 'ρ' => 'p',
        'ԛ' => 'q',
        'ѕ' => 's',
        'т' | 'τ' => 't',
        'υ' => 'u',
        'ν' => 'v',
        'ԝ' => 'w',
        'х' | 'χ' => 'x',
        'у' | 'γ' => 'y',
        _ => return None,
    })
}

/// Punctuation that comes in many shapes, in one.
fn punctuation(c: char) -> Option<char> {
    Some(match c {
        '\u{2018}' | '\u{2019}' | '\u{02BC}' | '`' | '´' => '\'',
        '\u{201C}' | '\u{201D}' | '\u{201E}' | '«' | '»' => '"',
        '\u{2010}'..='\u{2015}' | '\u{2212}' => '-',
        '×' | '✕' | '✖' => 'x',
        '٪' | '؉' => '%',
        '،' => ',',
        '٫' => '.',
        '٬' => '\'',
        '؛' => ';',
        '؟' | '¿' => '?',
        '।' | '。' => '.',
        '¡' => '!',
        'º' | '˚' => '°',
        '\u{2044}' | '\u{2215}' => '/',
        '\t' | '\u{A0}' | '\u{2000}'..='\u{200A}' | '\u{202F}' | '\u{205F}' | '\u{3000}' => ' ',
        '\r' | '\u{2028}' | '\u{2029}' => '\n',
        _ => return None,
    })
}

/// Drawn as a fraction, one character.
fn vulgar_fraction(c: char) -> Option<&'static str> {
    Some(match c {
        '½' => "1/2",
        '⅓' => "1/3",
        '⅔' => "2/3",
        '¼' => "1/4",
        '¾' => "3/4",
        '⅕' => "1/5",
        '⅛' => "1/8",
        '⅜' => "3/8",
        '⅝' => "5/8",
        '⅞' => "7/8",
        _ => return None,
    })
}

const fn is_invisible(c: char) -> bool {
    matches!(c,
        '\u{00AD}' | '\u{034F}' | '\u{061C}' | '\u{180E}' | '\u{200B}'..='\u{200F}'
        | '\u{202A}'..='\u{202C}' | '\u{2060}'..='\u{2069}' | '\u{FE00}'..='\u{FE0F}'
        | '\u{20E3}' | '\u{FEFF}')
}

/// Emoji and other drawings part words and say nothing.
fn is_picture(c: char) -> bool {
    !(c.is_ascii()
        || c.is_alphanumeric()
        || matches!(c, '°' | '‰' | UNREADABLE | '\u{0300}'..='\u{0FFF}'))
}

/// Marks that typists leave out: Latin accents, Arabic vowel signs, the hamza on a letter and the
/// stretching bar, and the dot below a Devanagari letter.
/// Vowel signs of Indic scripts are letters and stay.
const fn is_optional_mark(c: char) -> bool {
    matches!(c,
        '\u{0300}'..='\u{036F}' | '\u{064B}'..='\u{0655}' | '\u{0670}' | '\u{0640}'
        | '\u{093C}')
}

/// Letters of one script that typists use for one another.
const fn variant(c: char) -> Option<char> {
    Some(match c {
        // Dotless and Persian forms of yeh and kaf, and the feminine ending.
        '\u{0649}' | '\u{06CC}' => '\u{064A}',
        '\u{06A9}' => '\u{0643}',
        '\u{0629}' => '\u{0647}',
        // A nasal vowel's moon and its dot.
        '\u{0901}' => '\u{0902}',
        _ => return None,
    })
}

/// Makes the text plain.
pub(super) fn normalize(text: &str) -> Vec<Plain> {
    let mut out: Vec<Plain> = Vec::with_capacity(text.len());
    let mut overridden = false;
    let mut digit_script = None;
    for (at, c) in text.char_indices() {
        let last = out.last().map(|plain| plain.char);
        let mut push = |char| out.push(Plain { char, at });
        // What an override shows is not what its bytes say: nothing in it is read.
        if overridden {
            overridden = !matches!(c, '\u{202C}' | '\n');
            continue;
        }
        if matches!(c, '\u{202D}' | '\u{202E}') {
            overridden = true;
            push(' ');
            push(UNREADABLE);
            push(' ');
            continue;
        }
        if is_invisible(c) {
            continue;
        }
        if let Some((script, value)) = digit(c) {
            // Digits of two scripts in one number: ৪ is a four that looks like an eight.
            if digit_script.is_some_and(|seen| seen != script) {
                push(UNREADABLE);
            }
            digit_script = Some(script);
            push(value);
            continue;
        }
        if !matches!(c, '.' | ',' | '\'' | '٫' | '٬') {
            digit_script = None;
        }
        match c {
            // m³ is a unit; any other raised or lowered digit is not a number to act on.
            '³' if matches!(last, Some('m' | 'م')) => {
                push('3');
                continue;
            }
            '\u{B2}' | '\u{B3}' | '\u{B9}' | '\u{2070}'..='\u{209F}' => {
                push(UNREADABLE);
                continue;
            }
            _ => {}
        }
        if let Some(fraction) = vulgar_fraction(c) {
            push(' ');
            for char in fraction.chars() {
                push(char);
            }
            push(' ');
            continue;
        }
        if let Some(plain) = punctuation(c) {
            push(plain);
            continue;
        }
        for part in std::iter::once(c).nfkd() {
            if is_optional_mark(part) || is_invisible(part) {
                continue;
            }
            for lower in part.to_lowercase() {
                let plain = punctuation(lower)
                    .or_else(|| lookalike(lower))
                    .or_else(|| variant(lower))
                    .unwrap_or(lower);
                push(if is_picture(plain) { ' ' } else { plain });
            }
        }
    }
    out
}

/// A word of a locale file, made plain in the same way.
pub(super) fn normalize_word(text: &str) -> String {
    // Most words of a locale file are plain already.
    let is_plain = |c: char| c.is_ascii_alphanumeric() || matches!(c, ' ' | '-' | '\'');
    if text.chars().all(is_plain) {
        return text.to_ascii_lowercase();
    }
    normalize(text)
        .into_iter()
        .map(|plain| plain.char)
        .collect()
}
