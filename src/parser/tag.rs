//! Tokens with their meaning in one language.
//!
//! In: tokens and a vocabulary.
//! Out: items, each a figure, a concept, a sign or a word that is not known.
//! Promises that glued and misspelt words are mended only into one known reading, and that a word
//! of another language is read only where the message's own language does not know it.

use std::ops::Range;

use strsim::osa_distance;

use super::concept::Concept;
use super::lexicon::{Found, Lexicon, Meaning, RepeatedNumber};
use super::number::{Certainty, DecimalSign, Figure, ForeignDecimals, Shape, read_figure};
use super::token::{Token, TokenKind};
use super::vocabulary::Vocabulary;

/// What an item is.
#[derive(Debug, Clone, PartialEq)]
pub(super) enum Tag {
    Concept(Concept),
    Date(String),
    Figure(Figure),
    Fraction(f64),
    Language(String),
    Number(f64),
    /// A phone number, a clock time and the like.
    Other,
    /// A known word without a meaning here.
    Plain,
    Scale(f64),
    Sign(char),
    Unknown,
    /// A figure or a word that cannot be read.
    Unreadable,
}

/// A tagged run of tokens.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Item {
    pub(super) tag: Tag,
    /// Bytes of the text as typed.
    pub(super) span: Range<usize>,
    pub(super) glued: bool,
    /// How many letters it is written with; none for signs and figures.
    pub(super) letters: usize,
    pub(super) negative: bool,
    /// Whether one of its words denies: a phrase such as "no mud".
    pub(super) denies: bool,
    /// Whether it says no by itself, and not only "not".
    pub(super) says_no: bool,
    /// Whether one of its words tells how much: too, very.
    pub(super) grades: bool,
    /// Whether a container's word speaks of one or of several.
    pub(super) number: GrammaticalNumber,
    /// The word's month, if it names one.
    pub(super) month: Option<u8>,
    /// The day of a month that the word names, if it does.
    pub(super) ordinal: Option<u8>,
}

/// One or several.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum GrammaticalNumber {
    Plural,
    Singular,
}

impl Item {
    /// The concept, in its wider sense where it has one.
    pub(super) fn concept(&self) -> Option<Concept> {
        if let Tag::Concept(concept) = self.tag {
            Some(concept.wider().unwrap_or(concept))
        } else {
            None
        }
    }

    /// Whether it says a concept, narrow or wide.
    pub(super) fn is(&self, concept: Concept) -> bool {
        self.tag == Tag::Concept(concept) || self.concept() == Some(concept)
    }

    pub(super) fn is_sign(&self, signs: &[char]) -> bool {
        matches!(&self.tag, Tag::Sign(sign) if signs.contains(sign))
    }

    /// A word that may stand between two others without parting them.
    pub(super) fn is_filler(&self) -> bool {
        matches!(
            self.tag,
            Tag::Plain
                | Tag::Unknown
                | Tag::Concept(Concept::Determiner | Concept::FromWord | Concept::Possessive)
        )
    }

    /// Ends a sentence.
    pub(super) fn ends_sentence(&self) -> bool {
        self.is_sign(&['.', '?', '!', ';', '\n'])
    }
}

/// One word or sign to look up; anything else bars a phrase.
struct Piece {
    text: String,
    token: usize,
    /// The last token it covers.
    last: usize,
    /// Not the first half of a glued word.
    continues: Continues,
    /// What it means in another language than the message's own.
    borrowed: Option<Meaning>,
}

#[derive(PartialEq, Eq, Clone, Copy)]
enum Continues {
    No,
    Yes,
}

const BARRIER: &str = "\0";

/// Tags the tokens.
pub(super) fn tag(tokens: &[Token], vocabulary: &Vocabulary<'_>) -> Vec<Item> {
    let lexicon = vocabulary.own;
    let figures = tokens.iter().filter_map(|token| match &token.kind {
        TokenKind::Figure(text) => Some(text.as_str()),
        TokenKind::Date(_)
        | TokenKind::Other
        | TokenKind::Sign(_)
        | TokenKind::Unreadable
        | TokenKind::Word(_) => None,
    });
    let sign = lexicon.grammar().decimal_sign;
    let foreign = ForeignDecimals::among(figures, sign);
    let pieces = pieces(tokens, vocabulary);
    let words: Vec<&str> = pieces.iter().map(|piece| piece.text.as_str()).collect();

    let mut items = Vec::with_capacity(pieces.len());
    let mut at = 0;
    while let (Some(piece), Some(rest)) = (pieces.get(at), words.get(at..)) {
        let Some(token) = tokens.get(piece.token) else {
            break;
        };
        let mut taken = 1;
        let tag = match &token.kind {
            TokenKind::Date(text) => Tag::Date(text.clone()),
            TokenKind::Figure(text) => Tag::Figure(read_figure(text, sign, foreign)),
            TokenKind::Other => Tag::Other,
            TokenKind::Unreadable => Tag::Unreadable,
            TokenKind::Sign(_) | TokenKind::Word(_) => {
                let own = lexicon.find(rest).map(|found| {
                    taken = found.words;
                    found.meaning
                });
                // A sign that a list of plain words happens to hold is a sign.
                let own = own.filter(|meaning| {
                    let parts = matches!(token.kind, TokenKind::Sign('.' | ',' | ';' | '?' | '!'));
                    *meaning != Meaning::Plain || !parts
                });
                // Outside its phrases a word may be another language's.
                let own = match (own, &piece.borrowed) {
                    (Some(Meaning::Plain), Some(borrowed)) if taken == 1 => Some(borrowed.clone()),
                    (own, _) => own,
                };
                match (own.or_else(|| piece.borrowed.clone()), &token.kind) {
                    (Some(meaning), _) => meaning.into(),
                    (None, TokenKind::Sign(sign)) => Tag::Sign(*sign),
                    (None, _) => Tag::Unknown,
                }
            }
        };
        let last = pieces
            .get(at + taken - 1)
            .and_then(|piece| tokens.get(piece.last));
        let end = last.map_or(token.span.end, |last| last.span.end);
        let covered = rest.get(..taken).unwrap_or_default();
        items.push(Item {
            tag,
            span: token.span.start..end,
            glued: token.glued || piece.continues == Continues::Yes,
            letters: piece.text.chars().filter(|c| c.is_alphabetic()).count(),
            negative: token.negative,
            denies: covered.iter().any(|word| lexicon.denies(word)),
            says_no: lexicon.says_no(&piece.text),
            grades: covered.iter().any(|word| lexicon.grades(word)),
            number: GrammaticalNumber::Singular,
            month: lexicon.month(&piece.text),
            ordinal: lexicon.ordinal(&piece.text),
        });
        at += taken;
    }
    if lexicon.grammar().decimal_sign == DecimalSign::Comma {
        join_thousands(&mut items);
    }
    match lexicon.grammar().repeated_number {
        // "Bees bees litre": twenty each.
        RepeatedNumber::Each => items.dedup_by(|next, before| {
            matches!((&next.tag, &before.tag), (Tag::Number(a), Tag::Number(b)) if a == b)
        }),
        RepeatedNumber::Two => {}
    }
    settle_of(&mut items);
    settle_halves(&mut items);
    settle_drops(&mut items);
    settle_containers(&mut items);
    items
}

impl From<Meaning> for Tag {
    fn from(meaning: Meaning) -> Self {
        match meaning {
            Meaning::Concept(concept) => Self::Concept(concept),
            Meaning::Fraction(value) => Self::Fraction(value),
            Meaning::Language(tag) => Self::Language(tag),
            Meaning::Number(value) => Self::Number(value),
            Meaning::Plain => Self::Plain,
            Meaning::Scale(value) => Self::Scale(value),
        }
    }
}

/// "2 500 litres", "1 800 m": the space parts thousands where the comma parts decimals.
fn join_thousands(items: &mut Vec<Item>) {
    let joined = |items: &[Item], at: usize| {
        let [thousands, rest, unit] = items.get(at..at + 3)? else {
            return None;
        };
        let (Tag::Figure(thousands), Tag::Figure(units)) = (&thousands.tag, &rest.tag) else {
            return None;
        };
        let whole =
            |figure: &Figure| figure.shape == Shape::Whole && figure.certainty == Certainty::Plain;
        let grouped = whole(thousands)
            && whole(units)
            && (1.0..1000.0).contains(&thousands.value)
            && rest.span.len() == 3
            && !rest.glued
            && (unit.is(Concept::Litre) || unit.is(Concept::Metre));
        grouped.then_some(thousands.value * 1000.0 + units.value)
    };
    let mut at = 0;
    while at < items.len() {
        if let Some(value) = joined(items, at) {
            let rest = items.remove(at + 1);
            if let Some(item) = items.get_mut(at) {
                item.tag = Tag::Figure(Figure::plain(value, Shape::Whole));
                item.span.end = rest.span.end;
            }
        }
        at += 1;
    }
}

/// "Bidon de 20 lit", where "de" is a two as well: nobody counts the cans behind their word.
fn settle_of(items: &mut [Item]) {
    for i in 1..items.len() {
        let of_size = i
            .checked_sub(1)
            .and_then(|before| items.get(before))
            .is_some_and(|before| before.is(Concept::Container))
            && items
                .get(i + 1)
                .is_some_and(|next| matches!(next.tag, Tag::Figure(_)) && !next.glued);
        if let Some(item) = items
            .get_mut(i)
            .filter(|item| of_size && item.tag == Tag::Number(2.0) && item.letters == 2)
        {
            item.tag = Tag::Concept(Concept::Of);
        }
    }
}

/// "One litre and half of water": a half more, and not "half of that".
fn settle_halves(items: &mut [Item]) {
    for i in 2..items.len() {
        let [first, joint, half] = [i - 2, i - 1, i].map(|at| items.get(at));
        let adds = half.is_some_and(|half| half.is(Concept::HalfThat))
            && joint.is_some_and(|joint| joint.is(Concept::And))
            && first.is_some_and(|first| {
                matches!(first.tag, Tag::Figure(_) | Tag::Number(_))
                    || first.concept().is_some_and(super::amount::is_unit)
            });
        if let Some(half) = items.get_mut(i).filter(|_| adds) {
            half.tag = Tag::Fraction(0.5);
        }
    }
}

/// In Arabic script a drop and "its width" are one word: so many metres are no drops.
fn settle_drops(items: &mut [Item]) {
    for i in 0..items.len() {
        let metres = |at: usize| items.get(at).is_some_and(|item| item.is(Concept::Metre));
        let figure = items
            .get(i + 1)
            .is_some_and(|item| matches!(item.tag, Tag::Figure(_) | Tag::Number(_)));
        let wide = metres(i + 1) || (figure && metres(i + 2));
        if let Some(item) = items
            .get_mut(i)
            .filter(|item| wide && item.is(Concept::Drop))
        {
            item.tag = Tag::Concept(Concept::Wide);
        }
    }
}

/// "A 20 L can", "my can", but not "you can": a thing has something before it that counts or
/// points.
fn settle_containers(items: &mut [Item]) {
    for item in items.iter_mut().filter(|item| item.is(Concept::Containers)) {
        item.tag = Tag::Concept(Concept::Container);
        item.number = GrammaticalNumber::Plural;
    }
    for i in 0..items.len() {
        if !items
            .get(i)
            .is_some_and(|item| item.is(Concept::ContainerOrVerb))
        {
            continue;
        }
        let is_thing = i
            .checked_sub(1)
            .and_then(|before| items.get(before))
            .is_some_and(|before| {
                matches!(
                    before.tag,
                    Tag::Figure(_)
                        | Tag::Fraction(_)
                        | Tag::Number(_)
                        | Tag::Concept(
                            Concept::Article
                                | Concept::Bleach
                                | Concept::Cloudy
                                | Concept::Determiner
                                | Concept::Gallon
                                | Concept::Litre
                                | Concept::Of
                                | Concept::Per
                                | Concept::Possessive
                        )
                )
            });
        if let Some(item) = items.get_mut(i) {
            item.tag = if is_thing {
                Tag::Concept(Concept::Container)
            } else {
                Tag::Plain
            };
        }
    }
}

/// Words as they are looked up: possessives trimmed, slips mended, glued words parted.
fn pieces(tokens: &[Token], vocabulary: &Vocabulary<'_>) -> Vec<Piece> {
    let raw: Vec<&str> = tokens
        .iter()
        .map(|token| match &token.kind {
            TokenKind::Word(word) => word.as_str(),
            TokenKind::Date(_)
            | TokenKind::Figure(_)
            | TokenKind::Other
            | TokenKind::Sign(_)
            | TokenKind::Unreadable => BARRIER,
        })
        .collect();
    let mut pieces = Vec::with_capacity(tokens.len());
    let mut i = 0;
    while let Some(token) = tokens.get(i) {
        let mut last = i;
        let mut push = |text: String, continues, last, borrowed| {
            pieces.push(Piece {
                text,
                token: i,
                last,
                continues,
                borrowed,
            })
        };
        match &token.kind {
            TokenKind::Word(word) => {
                let follows_figure = token.glued
                    && i.checked_sub(1)
                        .and_then(|j| tokens.get(j))
                        .is_some_and(|before| matches!(before.kind, TokenKind::Figure(_)));
                let rest = raw.get(i..).unwrap_or_default();
                match look_up(word, rest, follows_figure, vocabulary) {
                    Looked::Own(parts) => {
                        let mut continues = Continues::No;
                        for part in parts {
                            push(part, continues, i, None);
                            continues = Continues::Yes;
                        }
                    }
                    Looked::InAPhrase(word, elsewhere) => {
                        push(word, Continues::No, i, elsewhere);
                    }
                    Looked::Borrowed(found) => {
                        last = i + found.words - 1;
                        push(word.clone(), Continues::No, last, Some(found.meaning));
                    }
                }
            }
            // A hyphen parts words, and a figure from its unit, as a space does.
            TokenKind::Sign('-') if joins_words(tokens, i) => {}
            TokenKind::Sign(sign) => push(sign.to_string(), Continues::No, i, None),
            TokenKind::Date(_)
            | TokenKind::Figure(_)
            | TokenKind::Other
            | TokenKind::Unreadable => push(BARRIER.to_owned(), Continues::No, i, None),
        }
        i = last + 1;
    }
    pieces
}

fn joins_words(tokens: &[Token], hyphen: usize) -> bool {
    let is_word = |token: &Token| matches!(token.kind, TokenKind::Word(_));
    let is_figure = |token: &Token| matches!(token.kind, TokenKind::Figure(_));
    let before = hyphen.checked_sub(1).and_then(|i| tokens.get(i));
    let after = tokens.get(hyphen + 1);
    tokens.get(hyphen).is_some_and(|token| token.glued)
        && before.is_some_and(|token| is_word(token) || is_figure(token))
        && after.is_some_and(|token| is_word(token) && token.glued)
}

/// How a word was found.
enum Looked {
    /// Only in phrases of the message's own language, and perhaps by itself in another.
    InAPhrase(String, Option<Meaning>),
    /// In the message's own language, as one word or several; not known, it stays as it is.
    Own(Vec<String>),
    /// In another language.
    Borrowed(Found),
}

fn look_up(word: &str, rest: &[&str], follows_figure: bool, vocabulary: &Vocabulary<'_>) -> Looked {
    let lexicon = vocabulary.own;
    if let Some(meant) = lexicon.slip(word) {
        return Looked::Own(meant.split(' ').map(str::to_owned).collect());
    }
    let word = lexicon.without_article(word);
    // Nobody finds "strip" of "test strip" in Swahili while the message is in English.
    let is_common = vocabulary.common.is_none();
    if lexicon.has_alone(word) || (is_common && lexicon.knows(word)) {
        return Looked::Own(vec![word.to_owned()]);
    }
    if lexicon.knows(word) {
        let elsewhere = vocabulary
            .common(&[word])
            .or_else(|| vocabulary.others(&[word]))
            .map(|found| found.meaning);
        return Looked::InAPhrase(word.to_owned(), elsewhere);
    }
    if let Some(stem) = word.strip_suffix("'s").or_else(|| word.strip_suffix('\''))
        && lexicon.knows(stem)
    {
        return Looked::Own(vec![stem.to_owned()]);
    }
    if let Some((little, stem)) = lexicon.cut_prefix(word) {
        let little = little
            .filter(|little| lexicon.joins(little))
            .map(str::to_owned);
        return Looked::Own(little.into_iter().chain([stem]).collect());
    }
    if let Some(found) = vocabulary.common(rest) {
        return Looked::Borrowed(found);
    }
    if let Some(parts) = part_glued(word, follows_figure, lexicon) {
        return Looked::Own(parts);
    }
    let mended = lexicon.mend(word);
    let near = |mended: &&str| osa_distance(word, mended) <= 1;
    if let Some(mended) = mended.filter(near) {
        return Looked::Own(vec![mended.to_owned()]);
    }
    // Another language's word as it is written is likelier than two slips.
    if let Some(found) = vocabulary.others(rest) {
        return Looked::Borrowed(found);
    }
    match (mended, vocabulary.common_mended(word)) {
        (Some(mended), _) => Looked::Own(vec![mended.to_owned()]),
        (None, Some(found)) => Looked::Borrowed(found),
        (None, None) => Looked::Own(vec![word.to_owned()]),
    }
}

/// `litrebucket`, or `lbucket` after a figure, in two or three words that each carry a meaning.
fn part_glued(word: &str, follows_figure: bool, lexicon: &Lexicon) -> Option<Vec<String>> {
    let means = |text: &str| lexicon.means(text);
    let shortest_head = if follows_figure { 1 } else { 4 };
    let cuts: Vec<usize> = word.char_indices().map(|(at, _)| at).skip(1).collect();
    // The longest head first: `litrebucket` is a litre, not an l.
    for cut in cuts.into_iter().rev() {
        let (Some(head), Some(tail)) = (word.get(..cut), word.get(cut..)) else {
            continue;
        };
        if head.chars().count() < shortest_head || !means(head) {
            continue;
        }
        let long_enough = tail.chars().count() >= 4 || (follows_figure && tail == "x");
        if long_enough && means(tail) {
            return Some(vec![head.to_owned(), tail.to_owned()]);
        }
        if let Some(mut parts) = (tail.chars().count() >= 8)
            .then(|| part_glued(tail, false, lexicon))
            .flatten()
        {
            parts.insert(0, head.to_owned());
            return Some(parts);
        }
    }
    None
}
