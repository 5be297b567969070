//! What is known of a single word, in one number.
//!
//! In: what a file says of it.
//! Out: the same, one question each.

/// What is known of a word; nothing, to begin with.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub(super) struct Marks(u64);

/// One thing that is known of a word.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[repr(u8)]
pub(super) enum Mark {
    /// It stands in a phrase, or is plain.
    Known,
    /// It stands by itself, and not only in a phrase.
    Alone,
    /// It is listed as meaning nothing by itself.
    Plain,
    /// It tells how much of a quality there is.
    Degree,
    /// It says no by itself.
    BareNo,
    /// A slip may mean it.
    Mendable,
    /// It names a month.
    Month,
    /// It names a day of a month.
    Ordinal,
}

/// Behind the marks: which month, and which day.
const MONTH_AT: u32 = 8;
const ORDINAL_AT: u32 = 16;

impl Marks {
    pub(super) const fn has(self, mark: Mark) -> bool {
        self.0 & (1 << mark as u8) != 0
    }

    pub(super) const fn set(&mut self, mark: Mark) {
        self.0 |= 1 << mark as u8;
    }

    pub(super) const fn clear(&mut self, mark: Mark) {
        self.0 &= !(1 << mark as u8);
    }

    /// The month that the word names.
    pub(super) fn month(self) -> Option<u8> {
        self.has(Mark::Month).then(|| self.byte(MONTH_AT))
    }

    pub(super) fn set_month(&mut self, month: u8) {
        self.set(Mark::Month);
        self.set_byte(MONTH_AT, month);
    }

    /// The day of a month that the word names.
    pub(super) fn ordinal(self) -> Option<u8> {
        self.has(Mark::Ordinal).then(|| self.byte(ORDINAL_AT))
    }

    pub(super) fn set_ordinal(&mut self, day: u8) {
        self.set(Mark::Ordinal);
        self.set_byte(ORDINAL_AT, day);
    }

    const fn byte(self, at: u32) -> u8 {
        ((self.0 >> at) & 0xFF) as u8
    }

    fn set_byte(&mut self, at: u32, value: u8) {
        self.0 = (self.0 & !(0xFF << at)) | (u64::from(value) << at);
    }
}

impl From<u64> for Marks {
    fn from(value: u64) -> Self {
        Self(value)
    }
}

impl From<Marks> for u64 {
    fn from(marks: Marks) -> Self {
        marks.0
    }
}
