//! Why something could not be computed.
//!
//! An error says that there is no answer: bad input, or a question outside
//! a table. A part that breaks a rule is never an error: that is a
//! [`Finding`](crate::mounting::Finding).

use std::fmt;

/// What a [`Result`] of this crate holds when there is no answer.
///
/// It prints as the argument, the value, the range and the source, and on a
/// line of its own a `hint:` that says how to put it right.
#[derive(Clone, PartialEq)]
pub struct Error(Box<ErrorKind>);

/// The kinds of failure.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum ErrorKind {
    /// A number is NaN or infinite.
    #[error("`{argument}` is {given}, not a finite number\nhint: give a number such as {example}")]
    NotFinite {
        /// Argument name, as the caller spelt it.
        argument: String,
        /// The value given.
        given: f64,
        /// A value that would do.
        example: &'static str,
    },
    /// A number is outside the range that a formula or table covers.
    #[error(
        "`{argument}` is {given}{}, {range}{}{}\nhint: {hint}",
        after_space(unit),
        after_space(unit),
        in_brackets(authority)
    )]
    OutOfRange {
        /// Argument name.
        argument: String,
        /// The value given, in `unit`.
        given: f64,
        /// The range in words, such as `outside 25.4 to 1828.8` or `not above 0`.
        range: String,
        /// Unit of the numbers; empty for a plain number.
        unit: &'static str,
        /// Who says so; empty when it is plain physics.
        authority: String,
        /// How to put it right.
        hint: String,
    },
    /// A text is not a number with a unit of the wanted kind.
    #[error("`{argument}` is {text:?}, not {} {kind}: {why}\nhint: {hint}", article(kind))]
    NotAQuantity {
        /// Argument name.
        argument: String,
        /// The text given, cut at 60 characters.
        text: String,
        /// Kind wanted, such as `length`.
        kind: &'static str,
        /// What is wrong with it.
        why: &'static str,
        /// How to put it right.
        hint: String,
    },
    /// A number came without a unit.
    #[error("`{argument}` is {given} without a unit, not {} {kind}\nhint: {hint}", article(kind))]
    NoUnit {
        /// Argument name.
        argument: String,
        /// The value given.
        given: String,
        /// Kind wanted.
        kind: &'static str,
        /// How to put it right.
        hint: String,
    },
    /// A quantity has a unit of another kind.
    #[error("`{argument}` is {given}, not {} {kind}: {why}\nhint: {hint}", article(kind))]
    WrongUnit {
        /// Argument name.
        argument: String,
        /// The value given.
        given: String,
        /// Kind wanted.
        kind: &'static str,
        /// What is wrong with it.
        why: &'static str,
        /// How to put it right.
        hint: String,
    },
    /// A word is not among the words allowed.
    #[error("`{argument}` is {text:?}, not one of: {allowed}\nhint: {hint}")]
    UnknownWord {
        /// Argument name.
        argument: String,
        /// The text given, cut at 60 characters.
        text: String,
        /// The words allowed, separated by commas.
        allowed: String,
        /// How to put it right.
        hint: String,
    },
    /// Something that is needed was not given.
    #[error("`{argument}` is missing: {why}\nhint: {hint}")]
    Missing {
        /// Argument name.
        argument: String,
        /// Why it is needed.
        why: String,
        /// How to put it right.
        hint: String,
    },
    /// The columns of one call differ in length, or an output does not fit.
    #[error("`{argument}` has {given} rows, not {wanted}\nhint: give columns of one length")]
    UnlikeLengths {
        /// Argument name.
        argument: String,
        /// Rows it has.
        given: usize,
        /// Rows the first column has.
        wanted: usize,
    },
    /// A table's headings can't be used.
    #[error("heading {heading:?} {why}\nhint: {hint}")]
    BadHeading {
        /// The heading as it stands, cut at 60 characters.
        heading: String,
        /// What is wrong with it.
        why: String,
        /// How to put it right.
        hint: String,
    },
    /// One row of a table can't be used; the others can.
    #[error("the row {why}\nhint: {hint}")]
    BadRow {
        /// What is wrong with it.
        why: String,
        /// How to put it right.
        hint: String,
    },
    /// A file or table can't be used at all.
    #[error("{name:?} {why}\nhint: {hint}")]
    BadTable {
        /// File name, or `table`.
        name: String,
        /// What is wrong with it.
        why: String,
        /// How to put it right.
        hint: String,
    },
    /// A file or table is over a cap that protects memory.
    #[error("{name:?} has {what}, over the cap of {cap}\nhint: {hint}")]
    TooLarge {
        /// File name, or `table`.
        name: String,
        /// What there is too much of.
        what: String,
        /// The cap.
        cap: u64,
        /// How to put it right.
        hint: String,
    },
    /// Reading or writing failed.
    #[error("{path:?} could not be {action}: {why}\nhint: {hint}")]
    File {
        /// Path as given.
        path: String,
        /// `read` or `written`.
        action: &'static str,
        /// What the system said.
        why: String,
        /// How to put it right.
        hint: &'static str,
    },
    /// The caller stopped the work.
    #[error("stopped by the caller after {rows} rows\nhint: call again to start over")]
    Stopped {
        /// Rows judged until then.
        rows: usize,
    },
}

/// Every code that [`Error::code`] can give, with what it means.
pub const CODES: &[(&str, &str)] = &[
    ("not-finite", "a number is NaN or infinite"),
    ("out-of-range", "a number is outside what a formula or table covers"),
    ("not-a-quantity", "a text is not a number with a unit of the wanted kind"),
    ("no-unit", "a number came without a unit"),
    ("wrong-unit", "a quantity has a unit of another kind"),
    ("unknown-word", "a word is not among the words allowed"),
    ("missing", "something that is needed was not given"),
    ("unlike-lengths", "the columns of one call differ in length"),
    ("bad-heading", "a heading can't be used"),
    ("bad-row", "one row of a table can't be used"),
    ("bad-table", "a file or table can't be used at all"),
    ("too-large", "a file or table is over a cap that protects memory"),
    ("file", "reading or writing failed"),
    ("stopped", "the caller stopped the work"),
];

impl Error {
    /// What went wrong, with its figures.
    pub fn kind(&self) -> &ErrorKind {
        &self.0
    }

    /// A code that stays the same between versions: one of [`CODES`].
    pub fn code(&self) -> &'static str {
        match self.kind() {
            ErrorKind::NotFinite { .. } => "not-finite",
            ErrorKind::OutOfRange { .. } => "out-of-range",
            ErrorKind::NotAQuantity { .. } => "not-a-quantity",
            ErrorKind::NoUnit { .. } => "no-unit",
            ErrorKind::WrongUnit { .. } => "wrong-unit",
            ErrorKind::UnknownWord { .. } => "unknown-word",
            ErrorKind::Missing { .. } => "missing",
            ErrorKind::UnlikeLengths { .. } => "unlike-lengths",
            ErrorKind::BadHeading { .. } => "bad-heading",
            ErrorKind::BadRow { .. } => "bad-row",
            ErrorKind::BadTable { .. } => "bad-table",
            ErrorKind::TooLarge { .. } => "too-large",
            ErrorKind::File { .. } => "file",
            ErrorKind::Stopped { .. } => "stopped",
        }
    }

    /// The argument or heading that it is about, when it is about one.
    pub fn argument(&self) -> Option<&str> {
        match self.kind() {
            ErrorKind::NotFinite { argument, .. }
            | ErrorKind::OutOfRange { argument, .. }
            | ErrorKind::NotAQuantity { argument, .. }
            | ErrorKind::NoUnit { argument, .. }
            | ErrorKind::WrongUnit { argument, .. }
            | ErrorKind::UnknownWord { argument, .. }
            | ErrorKind::Missing { argument, .. }
            | ErrorKind::UnlikeLengths { argument, .. } => Some(argument),
            _ => None,
        }
    }

    /// The same error with another way to put it right.
    pub(crate) fn set_hint(&mut self, text: String) {
        match self.0.as_mut() {
            ErrorKind::OutOfRange { hint, .. }
            | ErrorKind::NotAQuantity { hint, .. }
            | ErrorKind::NoUnit { hint, .. }
            | ErrorKind::UnknownWord { hint, .. } => *hint = text,
            _ => {}
        }
    }

    /// The same error under the name that the caller knows the argument by.
    #[must_use]
    pub fn named(mut self, name: &str) -> Self {
        match self.0.as_mut() {
            ErrorKind::NotFinite { argument, .. }
            | ErrorKind::OutOfRange { argument, .. }
            | ErrorKind::NotAQuantity { argument, .. }
            | ErrorKind::NoUnit { argument, .. }
            | ErrorKind::WrongUnit { argument, .. }
            | ErrorKind::UnknownWord { argument, .. }
            | ErrorKind::Missing { argument, .. }
            | ErrorKind::UnlikeLengths { argument, .. } => name.clone_into(argument),
            _ => {}
        }
        self
    }
}

impl From<ErrorKind> for Error {
    fn from(kind: ErrorKind) -> Self {
        Self(Box::new(kind))
    }
}

impl fmt::Display for Error {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.0.fmt(f)
    }
}

impl fmt::Debug for Error {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.0.fmt(f)
    }
}

impl std::error::Error for Error {}

/// Somebody's text, cut so that a message stays readable.
pub(crate) fn cut(text: &str) -> String {
    const MOST: usize = 60;
    if text.chars().count() <= MOST {
        return text.to_owned();
    }
    text.chars().take(MOST).chain(['…']).collect()
}

/// A unit behind its number; nothing behind a plain one.
fn after_space(unit: &str) -> String {
    if unit.is_empty() { String::new() } else { format!(" {unit}") }
}

fn in_brackets(source: &str) -> String {
    if source.is_empty() { String::new() } else { format!(" ({source})") }
}

/// The article before a kind: "an angle", "a length".
fn article(kind: &str) -> &'static str {
    if kind.starts_with(['a', 'e', 'i', 'o', 'u']) { "an" } else { "a" }
}
