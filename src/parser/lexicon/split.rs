//! A phrase's words, as they are looked up.
//!
//! In: a phrase of a file, and the articles that its language writes as one with the noun.
//! Out: its words, made plain.

use crate::parser::normalize::normalize_word;

/// Fewer letters than this are no word without its article.
pub(super) const STEM_LEAST: usize = 3;

/// A word without an article that is written as one with it.
pub(super) fn without_article<'w>(articles: &[String], word: &'w str) -> &'w str {
    let stem = articles
        .iter()
        .find_map(|article| word.strip_prefix(article.as_str()));
    stem.filter(|stem| stem.chars().count() >= STEM_LEAST)
        .unwrap_or(word)
}

/// A phrase's words, made plain; a hyphen parts words as a space does. Signs stand for
/// themselves.
pub(super) fn split(articles: &[String], phrase: &str) -> Vec<String> {
    let plain = normalize_word(phrase);
    let mut words: Vec<String> = Vec::new();
    let mut push = |word: String| words.push(without_article(articles, &word).to_owned());
    for part in plain.split([' ', '-']) {
        let mut word = String::new();
        for c in part.chars() {
            if is_letter(c) {
                word.push(c);
            } else {
                if !word.is_empty() {
                    push(std::mem::take(&mut word));
                }
                push(c.to_string());
            }
        }
        if !word.is_empty() {
            push(word);
        }
    }
    words
}

/// Letters, their vowel signs, digits and the apostrophe make words.
fn is_letter(c: char) -> bool {
    c.is_alphanumeric() || c == '\'' || unicode_normalization::char::is_combining_mark(c)
}
