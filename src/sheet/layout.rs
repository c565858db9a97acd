//! Where the headings of a table are, and what its rows say.
//!
//! Every reader hands its rows to a [`Feed`]. It holds the first of them back
//! until it has found the row of headings under whatever titles there are, and
//! seen which decimal mark each column uses; then it passes rows on.

use std::collections::{BTreeMap, BTreeSet};

use super::cell::{Cell, Held};
use super::find::{self, Found, MOST_TITLES, SURE};
use super::given::Given;
use super::heading::{self, Column};
use super::intake::{
    Intake, MOST_COLUMNS, MOST_ROWS, bad_row, empty, letters, no_heading, some, too_many_rows,
};
use super::marks::{self, Mark};
use super::read::Options;
use super::row::{LONG_TEXT, RowFacts, Waiting, length};
use crate::error::{Error, ErrorKind};
use crate::mounting::FIELDS;
use crate::units::Decimal;

/// Rows that are held back, unless their text gets too long.
const SAMPLE_ROWS: usize = 1000;
/// Bytes of text that are held back, about.
const SAMPLE_BYTES: usize = 1 << 20;
/// Most cells of a sheet.
const MOST_CELLS: usize = 8_000_000;
/// Most rows that a note may name.
const MOST_NOTED: usize = 1000;

/// What a kind of file says about its cells before any is read.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Dialect {
    /// Whether a point may group thousands; where commas separate cells it never does.
    pub points_group: bool,
    /// The mark where no cell shows one.
    pub assumed: Decimal,
    /// Whether cells have addresses, so that one beyond the headings shifts nothing.
    pub addressed: bool,
}

/// An area whose first cell stands for those below it, and hides all others.
#[derive(Debug)]
struct Merged {
    first_row: usize,
    last_row: usize,
    last_column: usize,
    cell: Held,
}

/// Takes rows from a reader, finds the headings among them and passes the rest on.
pub(crate) struct Feed<'a> {
    table: &'a str,
    options: &'a Options,
    dialect: Dialect,
    waiting: Vec<Waiting>,
    weight: usize,
    intake: Option<Intake>,
    /// Cells so far, long ones counted several times.
    cells: usize,
    probing: bool,
    /// Rows of the headings.
    headings: (usize, usize),
    /// The row of other headings further down, below which nothing can be read.
    others: Option<usize>,
    /// Fewest cells of a row whose cells have one line each.
    narrowest: usize,
    /// Areas merged, by their first column (from 0).
    merged: BTreeMap<usize, Merged>,
    filled_down: Vec<(usize, String)>,
    hidden: Vec<String>,
    hidden_columns: BTreeSet<usize>,
    latin: Vec<String>,
    repeated: Vec<String>,
    short: Vec<String>,
}

impl<'a> Feed<'a> {
    pub(crate) fn new(table: &'a str, options: &'a Options, dialect: Dialect) -> Self {
        Self {
            table,
            options,
            dialect,
            waiting: Vec::new(),
            weight: 0,
            intake: None,
            cells: 0,
            probing: false,
            headings: (0, 0),
            others: None,
            narrowest: usize::MAX,
            merged: BTreeMap::new(),
            filled_down: Vec::new(),
            hidden: Vec::new(),
            hidden_columns: BTreeSet::new(),
            latin: Vec::new(),
            repeated: Vec::new(),
            short: Vec::new(),
        }
    }

    fn given(&self) -> Given<'a> {
        Given { units: &[], mapping: &self.options.mapping }
    }

    /// Counts a cell so many times.
    pub(crate) fn count(&mut self, times: usize, cell: &Held) -> Result<(), Error> {
        if self.probing {
            return Ok(());
        }
        let one = 1 + length(cell) / LONG_TEXT;
        self.cells = self.cells.saturating_add(times.saturating_mul(one));
        if self.cells <= MOST_CELLS {
            return Ok(());
        }
        Err(ErrorKind::TooLarge {
            name: self.table.into(),
            what: "a sheet of more cells, long ones counted several times".into(),
            cap: MOST_CELLS as u64,
            hint: "keep the columns and rows of the rack; clear what is only formatted".into(),
        }
        .into())
    }

    /// Says that a filled row comes so many times.
    pub(crate) fn repeat(&self, times: usize) -> Result<(), Error> {
        let too_many = times > MOST_ROWS && !self.probing;
        if too_many { Err(too_many_rows(self.table)) } else { Ok(()) }
    }

    /// Says that an area of the sheet is merged, whose first row is the one that comes next.
    pub(crate) fn merge(&mut self, first: (usize, usize), last: (usize, usize), cell: Cell<'_>) {
        let ((first_row, column), (last_row, last_column)) = (first, last);
        self.merged.insert(column, Merged { first_row, last_row, last_column, cell: cell.held() });
    }

    /// Says that a column (from 0) is hidden.
    pub(crate) fn hide_column(&mut self, column: usize) {
        self.hidden_columns.insert(column);
    }

    /// Takes the next row of the table.
    pub(crate) fn row(
        &mut self,
        number: usize,
        cells: &[Cell<'_>],
        facts: RowFacts,
    ) -> Result<(), Error> {
        if self.has_enough() {
            return Ok(());
        }
        let blank = cells.iter().all(Cell::is_blank);
        if blank && facts.error.is_none() && !facts.beyond {
            return Ok(());
        }
        if facts.latin && self.latin.len() < MOST_NOTED {
            self.latin.push(number.to_string());
        }
        if facts.swallowed == 0 {
            self.narrowest = self.narrowest.min(cells.len());
        }
        self.merged.retain(|_, area| area.last_row >= number);
        if self.merged.is_empty() && self.intake.is_some() {
            return self.pass(number, cells, facts);
        }
        let mut cells: Vec<Held> = cells.iter().map(Cell::held).collect();
        let mut down = 0;
        for (&column, area) in &self.merged {
            for hidden in column + 1..(area.last_column + 1).min(cells.len()) {
                cells[hidden] = Held::Blank;
                down += 1;
            }
            if number > area.first_row && !area.cell.cell().is_blank() {
                cells.resize(cells.len().max(column + 1), Held::Blank);
                cells[column] = area.cell.clone();
                down += 1 + length(&area.cell) / LONG_TEXT;
                if self.filled_down.len() < MOST_NOTED {
                    self.filled_down.push((number, format!("{}{number}", letters(column))));
                }
            }
        }
        self.count(down, &Held::Blank)?;
        if self.intake.is_some() {
            let cells: Vec<Cell<'_>> = cells.iter().map(Held::cell).collect();
            return self.pass(number, &cells, facts);
        }
        self.weight += cells.iter().map(|cell| length(cell) + 32).sum::<usize>();
        self.waiting.push(Waiting { number, cells, facts });
        let full = self.waiting.len() >= SAMPLE_ROWS || self.weight >= SAMPLE_BYTES;
        if full && !self.probing {
            self.settle()?;
        }
        Ok(())
    }

    /// Looks at the first rows only, to tell what the headings are worth.
    pub(crate) fn probing(mut self) -> Self {
        self.probing = true;
        self
    }

    /// Whether a feed that only probes has seen enough.
    pub(crate) fn has_enough(&self) -> bool {
        self.probing && (self.waiting.len() > MOST_TITLES || self.weight >= SAMPLE_BYTES)
    }

    fn pass(&mut self, number: usize, cells: &[Cell<'_>], facts: RowFacts) -> Result<(), Error> {
        let Some(intake) = &mut self.intake else { return Ok(()) };
        if facts.hidden && self.hidden.len() < MOST_NOTED {
            self.hidden.push(number.to_string());
        }
        intake.beyond |= facts.beyond;
        if let Some(others) = self.others {
            return intake.spoiled(number, cells, below_others(others));
        }
        if facts.swallowed > 0 && facts.swallowed + 1 >= intake.plan.len().min(self.narrowest) {
            return intake.spoiled(number, cells, open_quote());
        }
        if let Some(error) = facts.error {
            return intake.spoiled(number, cells, error);
        }
        let short = !self.dialect.addressed && cells.len() < intake.plan.len();
        if short && self.short.len() < MOST_NOTED {
            self.short.push(number.to_string());
        }
        intake.row(number, cells)?;
        let unreadable = intake.taken.last().is_some_and(|row| row.problem.is_some());
        let given = Given { units: &[], mapping: &self.options.mapping };
        if unreadable && find::score(cells, given) >= SURE {
            let texts = find::trimmed(cells.iter().map(|cell| find::text(*cell)).collect());
            intake.take_back();
            if texts == intake.came {
                // A long table repeats its headings on every page.
                self.repeated.push(number.to_string());
            } else {
                intake.spoiled(number, cells, below_others(number))?;
                self.others = Some(number);
            }
        }
        Ok(())
    }

    /// Finds the headings and the decimal marks, and passes on what was held back.
    fn settle(&mut self) -> Result<(), Error> {
        let waiting = std::mem::take(&mut self.waiting);
        let given = self.given();
        let swallows = |row: &&Waiting| {
            row.facts.swallowed > 1 || row.facts.error.as_ref() == Some(&open_quote())
        };
        let Some(Found { first, last, mut headings, above, .. }) = find::find(&waiting, given)
        else {
            if let Some(row) = waiting.iter().take(MOST_TITLES).find(swallows) {
                return Err(open_quote_above(self.table, row.number));
            }
            // A mapping that misses its heading is the nearer reason.
            let texts = waiting.iter().take(MOST_TITLES).flat_map(|row| &row.cells);
            given.must_be_headings(&texts.map(|cell| cell.cell().spoken()).collect::<Vec<_>>())?;
            return Err(no_heading(self.table));
        };
        if let Some(row) = waiting[..=last].iter().find(swallows) {
            return Err(open_quote_above(self.table, row.number));
        }
        for row in &waiting[..=last] {
            // Else columns have the wrong names, or rows are inside a title.
            if let Some(ErrorKind::BadRow { why, hint }) = row.facts.error.as_ref().map(Error::kind)
            {
                return Err(ErrorKind::BadTable {
                    name: self.table.into(),
                    why: format!("can't be read from row {} on, which {why}", row.number),
                    hint: hint.clone(),
                }
                .into());
            }
        }
        if let Some(above) = above {
            return Err(ErrorKind::BadTable {
                name: self.table.into(),
                why: format!(
                    "has headings in row {above} and more of them in row {}",
                    waiting[first].number
                ),
                hint: "put each table on a sheet or in a file of its own".into(),
            }
            .into());
        }
        if waiting[last].facts.beyond {
            return Err(ErrorKind::TooLarge {
                name: self.table.into(),
                what: "more columns".into(),
                cap: MOST_COLUMNS as u64,
                hint: "keep the columns that hubwright reads; `hubwright headings` lists them"
                    .into(),
            }
            .into());
        }
        let mut start = last + 1;
        let came = waiting[last].cells.iter().map(|cell| find::text(cell.cell()));
        let came = find::trimmed(came.collect());
        if let Some(units) = waiting.get(start).and_then(|row| units_row(row, &headings, given)) {
            headings = units;
            start += 1;
        }
        let mut intake = Intake::new(self.table, &headings, given)?;
        intake.set(self.dialect.addressed, self.options.most_bytes);
        intake.came = came;
        self.headings = (waiting[first].number, waiting[start - 1].number);
        if first > 0 {
            let (from, to) = self.headings;
            let rows =
                if from == to { format!("row {from}") } else { format!("rows {from} to {to}") };
            intake
                .notes
                .push(format!("The headings are in {rows}; what is above them was passed over."));
        }
        let rows = &waiting[start..];
        intake.marks = match self.options.decimal {
            Some(decimal) => vec![Mark { decimal, unsettled: false }; intake.plan.len()],
            None => marks::find(self.table, self.dialect, &intake, rows)?,
        };
        let told = marks::told(&intake, &intake.marks);
        intake.notes.extend(told);
        self.intake = Some(intake);
        for row in waiting.into_iter().skip(start) {
            let cells: Vec<Cell<'_>> = row.cells.iter().map(Held::cell).collect();
            self.pass(row.number, &cells, row.facts)?;
        }
        Ok(())
    }

    /// What the headings of a feed that only probes are worth; nothing where none is known.
    pub(crate) fn score(&self) -> usize {
        find::find(&self.waiting, self.given()).map_or(0, |found| found.score)
    }

    /// What was taken in.
    pub(crate) fn end(mut self) -> Result<Intake, Error> {
        if self.intake.is_none() {
            if self.waiting.is_empty() {
                return Err(empty(self.table));
            }
            self.settle()?;
        }
        let Some(mut intake) = self.intake else { return Err(empty(self.table)) };
        if intake.taken.is_empty() {
            return Err(ErrorKind::BadTable {
                name: self.table.into(),
                why: "has headings and no row".into(),
                hint: "write one mounting a row below the headings".into(),
            }
            .into());
        }
        let filled = self.filled_down.into_iter().filter(|(row, _)| *row > self.headings.1);
        let read = |at: &usize| {
            matches!(
                intake.plan.get(*at),
                Some(Column::Datum { .. } | Column::Marking | Column::Name)
            )
        };
        let columns = self.hidden_columns.into_iter().filter(read).map(letters);
        // Where every row leaves its last cells out, nothing is odd about one.
        let odd = self.short.len() < intake.taken.len();
        let notes = [
            (self.latin, "Text that is not UTF-8 was read as Latin-1, a byte a letter, in rows:"),
            (self.repeated, "The headings come again and were passed over in rows:"),
            (self.hidden, "Hidden rows are judged too:"),
            (columns.collect(), "Hidden columns are read too:"),
            (
                filled.map(|(_, cell)| cell).collect(),
                "Cells merged downwards count for each of their rows:",
            ),
            (
                if odd { self.short } else { Vec::new() },
                "Rows with fewer cells than headings; a decimal comma may have parted a number:",
            ),
        ];
        for (places, before) in notes.into_iter().filter(|(places, _)| !places.is_empty()) {
            intake.notes.push(format!("{before} {}.", some(&places)));
        }
        intake.finish();
        Ok(intake)
    }
}

/// The headings with the units of a row below them, when that is all it holds.
fn units_row(row: &Waiting, headings: &[String], given: Given<'_>) -> Option<Vec<String>> {
    let mut units = 0;
    let mut with = headings.to_vec();
    for (at, cell) in row.cells.iter().enumerate() {
        if cell.cell().is_blank() {
            continue;
        }
        let text = find::text(cell.cell());
        let unit = text.trim_matches(['[', ']', '(', ')', ' ']);
        match given.column(headings.get(at)?) {
            Ok(Column::Datum { fields, unit: None })
                if (FIELDS[fields[0]].sort.units)().contains(&unit) =>
            {
                with[at] = format!("{} [{unit}]", headings[at]);
                units += 1;
            }
            Ok(Column::Datum { unit: Some(_), .. })
                if heading::unit_of(&headings[at]) == Some(unit) => {}
            Ok(_) if matches!(unit, "-" | "–" | "text") => {}
            _ => return None,
        }
    }
    (units > 0).then_some(with)
}

/// A quote that is opened and not closed.
pub(crate) fn open_quote() -> Error {
    bad_row(
        "has a cell that holds what looks like the rows below it",
        "look for a quote that is opened and not closed",
    )
}

/// The same above or among the headings, where no row alone is spoiled by it.
fn open_quote_above(table: &str, row: usize) -> Error {
    ErrorKind::BadTable {
        name: table.into(),
        why: format!("has a cell in row {row} that holds what looks like the rows below it"),
        hint: "look for a quote that is opened and not closed".into(),
    }
    .into()
}

fn below_others(row: usize) -> Error {
    bad_row(
        &format!("stands below other headings, in row {row}"),
        "put each table on a sheet or in a file of its own",
    )
}
