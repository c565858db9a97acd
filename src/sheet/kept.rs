//! The rows of a table as they came, for reports that give them back.

use indexmap::{Equivalent, IndexSet};

use super::cell::Cell;
use crate::error::Error;

/// A value that cells share: racks repeat themselves, and each value is kept once.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
enum Value<Text> {
    Text(Text),
    Number(u64),
    Truth(bool),
    Day(i64),
    Fault(Text),
}

/// A value that is looked for; it hashes like the one that is kept.
type Sought<'a> = Value<&'a str>;

impl Equivalent<Value<Box<str>>> for Sought<'_> {
    fn equivalent(&self, kept: &Value<Box<str>>) -> bool {
        match (self, kept) {
            (Self::Text(text), Value::Text(kept)) | (Self::Fault(text), Value::Fault(kept)) => {
                **text == **kept
            }
            (Self::Number(bits), Value::Number(kept)) => bits == kept,
            (Self::Truth(truth), Value::Truth(kept)) => truth == kept,
            (Self::Day(day), Value::Day(kept)) => day == kept,
            _ => false,
        }
    }
}

/// Rows of cells, each a code of four bytes for one of the values.
#[derive(Debug)]
pub(crate) struct Kept {
    headings: Vec<String>,
    values: IndexSet<Value<Box<str>>>,
    codes: Vec<u32>,
    /// Bytes that the values and the problems of rows take.
    bytes: u64,
}

/// Bytes that keeping a value takes besides its text, about, while the set of them grows.
const VALUE_BYTES: u64 = 128;
/// Bytes that the problem of a row takes besides what it says, about.
const PROBLEM_BYTES: u64 = 350;

impl Kept {
    pub(crate) fn new(headings: Vec<String>) -> Self {
        Self { headings, values: IndexSet::new(), codes: Vec::new(), bytes: 0 }
    }

    pub(crate) fn headings(&self) -> &[String] {
        &self.headings
    }

    /// Bytes that are kept.
    pub(crate) fn bytes(&self) -> u64 {
        self.bytes + 4 * self.codes.len() as u64
    }

    /// Adds a row, filled up with blanks or cut to the number of headings, and
    /// gives the code of each of its cells. Equal cells have equal codes.
    pub(crate) fn push<'a>(&mut self, cells: impl Iterator<Item = Cell<'a>>) -> &[u32] {
        let row = self.codes.len();
        for cell in cells.take(self.headings.len()) {
            let code = self.code(cell);
            self.codes.push(code);
        }
        self.codes.resize(row + self.headings.len(), 0);
        &self.codes[row..]
    }

    /// Counts what a row that can't be read takes besides its cells.
    pub(crate) fn weigh(&mut self, problem: &Error) {
        self.bytes += PROBLEM_BYTES + problem.to_string().len() as u64;
    }

    /// Takes the last row back; its values stay.
    pub(crate) fn pop(&mut self) {
        self.codes.truncate(self.codes.len().saturating_sub(self.headings.len()));
    }

    fn code(&mut self, cell: Cell<'_>) -> u32 {
        let sought = match cell {
            Cell::Blank => return 0,
            Cell::Text(text) => Value::Text(text),
            Cell::Number(number) => Value::Number(number.to_bits()),
            Cell::Truth(truth) => Value::Truth(truth),
            Cell::Day(day) => Value::Day(day),
            Cell::Fault(fault) => Value::Fault(fault),
        };
        let at = self.values.get_index_of(&sought).unwrap_or_else(|| {
            let value = match sought {
                Value::Text(text) => Value::Text(text.into()),
                Value::Fault(fault) => Value::Fault(fault.into()),
                Value::Number(bits) => Value::Number(bits),
                Value::Truth(truth) => Value::Truth(truth),
                Value::Day(day) => Value::Day(day),
            };
            self.bytes += match &sought {
                // A short text is held in a piece of memory larger than it.
                Value::Text(text) | Value::Fault(text) => VALUE_BYTES + 32 + text.len() as u64,
                _ => VALUE_BYTES,
            };
            self.values.insert_full(value).0
        });
        // No table has so many cells: the caps of the intake come first.
        u32::try_from(at + 1).unwrap_or(0)
    }

    /// The cells of a row, one a heading; none beyond the last row.
    pub(crate) fn row(&self, row: usize) -> impl Iterator<Item = Cell<'_>> {
        let width = self.headings.len();
        let codes = self.codes.get(row * width..(row + 1) * width).unwrap_or_default();
        codes.iter().map(|code| {
            let place = (*code as usize).checked_sub(1);
            match place.and_then(|place| self.values.get_index(place)) {
                None => Cell::Blank,
                Some(Value::Text(text)) => Cell::Text(text),
                Some(Value::Number(bits)) => Cell::Number(f64::from_bits(*bits)),
                Some(Value::Truth(truth)) => Cell::Truth(*truth),
                Some(Value::Day(day)) => Cell::Day(*day),
                Some(Value::Fault(fault)) => Cell::Fault(fault),
            }
        })
    }
}
