//! One row between its reader and the table.

use super::cell::Held;
use super::intake::{MOST_COLUMNS, bad_row};
use crate::error::Error;

/// Bytes of text for which a cell counts once more: a text that is shared or
/// repeated takes little room in a file and much time to copy.
pub(crate) const LONG_TEXT: usize = 64;
/// Most bytes of text in one row.
pub(crate) const MOST_ROW_BYTES: usize = 8 << 20;
/// A row on its way in.
#[derive(Clone, Debug, Default)]
pub(crate) struct Waiting {
    pub number: usize,
    pub cells: Vec<Held>,
    pub facts: RowFacts,
}

/// What a reader knows about a row besides its cells.
#[derive(Clone, Debug, Default)]
pub(crate) struct RowFacts {
    /// Whether the sheet hides it.
    pub hidden: bool,
    /// Most separators that a later line of one of its cells holds: a quote
    /// that is never closed swallows the rows below it.
    pub swallowed: usize,
    /// Whether it has texts that are not UTF-8.
    pub latin: bool,
    /// Whether it has cells beyond the last column that a table may have.
    pub beyond: bool,
    /// Why it can't be read, when its reader knows already.
    pub error: Option<Error>,
}

/// A row of a workbook while its cells are read.
#[derive(Default)]
pub(crate) struct RowSoFar {
    pub number: usize,
    pub cells: Vec<Held>,
    pub next_column: usize,
    pub facts: RowFacts,
    /// Bytes of text in it.
    pub bytes: usize,
}

impl RowSoFar {
    /// Puts a cell into its column (from 0).
    pub(crate) fn put(&mut self, column: usize, cell: Held) {
        if cell == Held::Blank {
            return;
        }
        if column >= MOST_COLUMNS {
            self.facts.beyond = true;
            return;
        }
        self.bytes += length(&cell);
        if self.bytes > MOST_ROW_BYTES {
            let why = format!("has more than {MOST_ROW_BYTES} bytes of text");
            self.facts.error.get_or_insert_with(|| bad_row(&why, "shorten its texts"));
            return;
        }
        self.cells.resize(self.cells.len().max(column + 1), Held::Blank);
        self.cells[column] = cell;
    }

    /// Says that the row can't be read.
    pub(crate) fn spoil(&mut self, why: &str) {
        let hint = "open the file in an office program and save it again";
        self.facts.error.get_or_insert_with(|| bad_row(why, hint));
    }
}

/// Bytes of a cell's text.
pub(crate) fn length(cell: &Held) -> usize {
    match cell {
        Held::Text(text) | Held::Fault(text) => text.len(),
        _ => 0,
    }
}
