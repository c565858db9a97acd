//! One cell of a table, borrowed while it is read or held until it is.

use crate::error::cut;
use crate::units::{Date, figure};

/// One cell of a table.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Cell<'a> {
    /// Nothing.
    Blank,
    /// Text as typed.
    Text(&'a str),
    /// A number, in the unit of the heading.
    Number(f64),
    /// Yes or no.
    Truth(bool),
    /// A day, counted from 1970-01-01.
    Day(i64),
    /// Something that stands for no value: `#DIV/0!`, or a formula that nobody worked out.
    Fault(&'a str),
}

impl Cell<'_> {
    /// Whether nothing is in it; NaN is how some programs say so.
    pub fn is_blank(&self) -> bool {
        match self {
            Cell::Blank => true,
            Cell::Text(text) => text.trim().is_empty(),
            Cell::Number(number) => number.is_nan(),
            _ => false,
        }
    }

    /// As the text of a name or a heading.
    pub(crate) fn spoken(&self) -> String {
        match self {
            Cell::Blank => String::new(),
            Cell::Text(text) => cut(text.trim()),
            Cell::Number(number) => figure(*number, 6),
            Cell::Truth(truth) => if *truth { "yes" } else { "no" }.into(),
            Cell::Day(day) => Date::from_days(*day).to_string(),
            Cell::Fault(fault) => cut(fault),
        }
    }

    /// The same, held for longer than the row it is in.
    pub(crate) fn held(&self) -> Held {
        match *self {
            Cell::Blank => Held::Blank,
            Cell::Text(text) => Held::Text(text.into()),
            Cell::Number(number) => Held::Number(number),
            Cell::Truth(truth) => Held::Truth(truth),
            Cell::Day(day) => Held::Day(day),
            Cell::Fault(fault) => Held::Fault(fault.into()),
        }
    }
}

/// A cell that holds its own text.
#[derive(Clone, Debug, Default, PartialEq)]
pub(crate) enum Held {
    #[default]
    Blank,
    Text(Box<str>),
    Number(f64),
    Truth(bool),
    Day(i64),
    Fault(Box<str>),
}

impl Held {
    pub(crate) fn cell(&self) -> Cell<'_> {
        match self {
            Self::Blank => Cell::Blank,
            Self::Text(text) => Cell::Text(text),
            Self::Number(number) => Cell::Number(*number),
            Self::Truth(truth) => Cell::Truth(*truth),
            Self::Day(day) => Cell::Day(*day),
            Self::Fault(fault) => Cell::Fault(fault),
        }
    }
}
