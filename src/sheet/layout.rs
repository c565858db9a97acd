//! Where the headings of a table are, and how its numbers are written.
//!
//! Every reader hands its rows to a [`Feed`]. It holds the first of them back
//! until it has found the row of headings under whatever titles there are, and
//! seen which decimal mark each column uses; then it passes rows on.

use std::collections::HashMap;

use super::cell::{Cell, Held};
use super::heading::Column;
use super::intake::{
    Given, Intake, MOST_COLUMNS, Mark, bad_row, empty, may_group, no_heading, some,
};
use super::read::Options;
use crate::error::{Error, ErrorKind, cut};
use crate::units::{Decimal, number};

/// Most rows, filled ones, that are searched for headings.
pub(crate) const MOST_TITLES: usize = 50;
/// Rows that are held back, unless their text gets too long.
const SAMPLE_ROWS: usize = 1000;
/// Bytes of text that are held back, about.
const SAMPLE_BYTES: usize = 1 << 20;

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

/// A row on its way in.
#[derive(Clone, Debug, Default)]
struct Waiting {
    number: usize,
    cells: Vec<Held>,
    facts: RowFacts,
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
        self.cells.resize(self.cells.len().max(column + 1), Held::Blank);
        self.cells[column] = cell;
    }

    /// Says that the row can't be read.
    pub(crate) fn spoil(&mut self, why: &str) {
        let hint = "open the file in an office program and save it again";
        self.facts.error.get_or_insert_with(|| bad_row(why, hint));
    }
}

/// A cell that stands for those below it too.
#[derive(Debug)]
struct Span {
    last_row: usize,
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
    /// Cells merged downwards, by column (from 0).
    spans: HashMap<usize, Span>,
    filled_down: Vec<String>,
    hidden: Vec<String>,
    latin: Vec<String>,
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
            spans: HashMap::new(),
            filled_down: Vec::new(),
            hidden: Vec::new(),
            latin: Vec::new(),
        }
    }

    /// Says that a cell of the row that comes next is merged with those below it.
    pub(crate) fn merged(&mut self, column: usize, last_row: usize, cell: Cell<'_>) {
        self.spans.insert(column, Span { last_row, cell: cell.held() });
    }

    /// Takes the next row of the table.
    pub(crate) fn row(
        &mut self,
        number: usize,
        cells: &[Cell<'_>],
        facts: RowFacts,
    ) -> Result<(), Error> {
        let blank = cells.iter().all(Cell::is_blank);
        if blank && facts.error.is_none() && !facts.beyond {
            return Ok(());
        }
        if facts.latin && self.latin.len() < 1000 {
            self.latin.push(number.to_string());
        }
        self.spans.retain(|_, span| span.last_row >= number);
        if self.spans.is_empty() && self.intake.is_some() {
            return self.pass(number, cells, facts);
        }
        let mut cells: Vec<Held> = cells.iter().map(Cell::held).collect();
        for (column, span) in &self.spans {
            if cells.get(*column).is_none_or(|cell| cell.cell().is_blank())
                && !span.cell.cell().is_blank()
            {
                cells.resize(cells.len().max(column + 1), Held::Blank);
                cells[*column] = span.cell.clone();
                self.filled_down.push(format!("{}{number}", super::intake::letters(*column)));
            }
        }
        self.filled_down.truncate(1000);
        if self.intake.is_some() {
            let cells: Vec<Cell<'_>> = cells.iter().map(Held::cell).collect();
            return self.pass(number, &cells, facts);
        }
        self.weight += cells
            .iter()
            .map(|cell| match cell {
                Held::Text(text) => text.len() + 32,
                _ => 32,
            })
            .sum::<usize>();
        self.waiting.push(Waiting { number, cells, facts });
        if self.waiting.len() >= SAMPLE_ROWS || self.weight >= SAMPLE_BYTES {
            self.settle()?;
        }
        Ok(())
    }

    fn pass(&mut self, number: usize, cells: &[Cell<'_>], facts: RowFacts) -> Result<(), Error> {
        let Some(intake) = &mut self.intake else { return Ok(()) };
        if facts.hidden && self.hidden.len() < 1000 {
            self.hidden.push(number.to_string());
        }
        intake.beyond |= facts.beyond;
        let swallowed = facts.swallowed > 0 && facts.swallowed + 1 >= intake.plan.len();
        match facts.error {
            Some(error) => intake.spoiled(number, cells, error),
            None if swallowed => intake.spoiled(number, cells, open_quote()),
            None => intake.row(number, cells),
        }
    }

    /// Finds the headings and the decimal marks, and passes on what was held back.
    fn settle(&mut self) -> Result<(), Error> {
        let waiting = std::mem::take(&mut self.waiting);
        let given = Given { units: &[], mapping: &self.options.mapping };
        let Some((at, headings)) = find_headings(&waiting, given) else {
            // A mapping that misses its heading is the nearer reason.
            let texts = waiting.iter().take(MOST_TITLES).flat_map(|row| &row.cells);
            given.must_be_headings(&texts.map(|cell| cell.cell().spoken()).collect::<Vec<_>>())?;
            return Err(no_heading(self.table));
        };
        if waiting[at].facts.beyond {
            return Err(ErrorKind::TooLarge {
                name: self.table.into(),
                what: "more columns".into(),
                cap: MOST_COLUMNS as u64,
                hint: "keep the columns that hubwright reads; `hubwright headings` lists them"
                    .into(),
            }
            .into());
        }
        let mut intake = Intake::new(self.table, &headings, given)?;
        intake.set(self.dialect.addressed, self.options.most_bytes);
        let rows = &waiting[at + 1..];
        let marks = self.marks(&intake, rows)?;
        if let Some(note) = told(&intake, &marks) {
            intake.notes.push(note);
        }
        intake.marks = marks;
        self.intake = Some(intake);
        for row in waiting.into_iter().skip(at + 1) {
            let cells: Vec<Cell<'_>> = row.cells.iter().map(Held::cell).collect();
            self.pass(row.number, &cells, row.facts)?;
        }
        Ok(())
    }

    /// Whether the headings were found, or can still be.
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
        if !self.latin.is_empty() {
            intake.notes.push(format!(
                "Text that is not UTF-8 was read as Latin-1, a byte a letter, in row{} {}.",
                if self.latin.len() == 1 { "" } else { "s" },
                some(&self.latin)
            ));
        }
        if !self.hidden.is_empty() {
            intake.notes.push(format!("Hidden rows are judged too: {}.", some(&self.hidden)));
        }
        if !self.filled_down.is_empty() {
            intake.notes.push(format!(
                "Cells merged downwards count for each of their rows: {}.",
                some(&self.filled_down)
            ));
        }
        intake.finish();
        Ok(intake)
    }

    /// The decimal mark of each column, by what its texts show.
    fn marks(&self, intake: &Intake, rows: &[Waiting]) -> Result<Vec<Mark>, Error> {
        let width = intake.plan.len();
        if let Some(decimal) = self.options.decimal {
            return Ok(vec![Mark { decimal, unsettled: false }; width]);
        }
        let seen: Vec<Seen> = (0..width).map(|at| self.seen(&intake.plan[at], at, rows)).collect();
        let commas = seen.iter().any(|seen| seen.comma.is_some());
        let points = seen.iter().any(|seen| seen.point.is_some());
        // What all columns that show a mark agree on holds for the others.
        let agreed = match (points, commas) {
            (true, false) => Some(Decimal::Point),
            (false, true) => Some(Decimal::Comma),
            _ => None,
        };
        seen.into_iter().zip(&intake.headings).map(|(seen, heading)| {
            let heading = cut(heading.trim());
            let decimal = match (seen.point, seen.comma, seen.unclear) {
                (Some((row, point)), Some((other, comma)), _) => {
                    return Err(self.ask(format!(
                        "has numbers with a decimal point ({point:?} in row {row}) and others with a decimal comma ({comma:?} in row {other}) under {heading:?}"
                    )));
                }
                (Some(_), None, _) => Some(Decimal::Point),
                (None, Some(_), _) => Some(Decimal::Comma),
                (None, None, Some((row, text))) if agreed.is_none() => {
                    return Err(self.ask(format!(
                        "has {text:?} in row {row} under {heading:?}, which could be a thousand and more or one and a bit"
                    )));
                }
                (None, None, _) => agreed,
            };
            Ok(Mark {
                decimal: decimal.unwrap_or(self.dialect.assumed),
                // Where commas separate cells, a point is what is left for decimals.
                unsettled: decimal.is_none() && self.dialect.points_group,
            })
        }).collect()
    }

    fn ask(&self, why: String) -> Error {
        ErrorKind::BadTable {
            name: self.table.into(),
            why,
            hint: "say which it is: --decimal point or --decimal comma".into(),
        }
        .into()
    }

    /// The marks that the texts of a column show. `12,7` shows a comma and `12.7`
    /// a point; `1,250` could be either and shows nothing.
    fn seen(&self, column: &Column, at: usize, rows: &[Waiting]) -> Seen {
        let mut seen = Seen::default();
        let Column::Datum { unit: Some(_), .. } = column else { return seen };
        for row in rows {
            let Some(Held::Text(text)) = row.cells.get(at) else { continue };
            let by_point = text.contains('.') && number(text, Decimal::Point).is_ok();
            let by_comma = text.contains(',') && number(text, Decimal::Comma).is_ok();
            let thousands = may_group(text);
            let place = match (by_point, by_comma) {
                (true, _) if thousands && self.dialect.points_group => &mut seen.unclear,
                (true, _) => &mut seen.point,
                (_, true) if thousands => &mut seen.unclear,
                (_, true) => &mut seen.comma,
                _ => continue,
            };
            place.get_or_insert_with(|| (row.number, cut(text.trim())));
        }
        seen
    }
}

/// The first cell of a column that shows each mark, with its row.
#[derive(Default)]
struct Seen {
    point: Option<(usize, String)>,
    comma: Option<(usize, String)>,
    unclear: Option<(usize, String)>,
}

/// What was found out about decimal marks, where there is a comma.
fn told(intake: &Intake, marks: &[Mark]) -> Option<String> {
    let measured = |column: &Column| matches!(column, Column::Datum { unit: Some(_), .. });
    let columns = intake.plan.iter().zip(marks).zip(&intake.headings);
    let measured: Vec<(&Mark, &String)> = columns
        .filter(|((column, _), _)| measured(column))
        .map(|((_, mark), heading)| (mark, heading))
        .collect();
    let comma: Vec<String> = measured
        .iter()
        .filter(|(mark, _)| mark.decimal == Decimal::Comma && !mark.unsettled)
        .map(|(_, heading)| cut(heading.trim()))
        .collect();
    if comma.is_empty() {
        None
    } else if comma.len() == measured.len() {
        Some("Numbers are read with a decimal comma.".into())
    } else {
        Some(format!("Numbers are read with a decimal comma under: {}.", some(&comma)))
    }
}

/// The first row that holds headings, and what it says.
fn find_headings(rows: &[Waiting], given: Given<'_>) -> Option<(usize, Vec<String>)> {
    let known = |text: &str| match given.column(text) {
        Ok(Column::Datum { .. }) | Err(_) => 2,
        Ok(Column::Name) => 1,
        _ => 0,
    };
    let mut best = None;
    for (at, row) in rows.iter().enumerate().take(MOST_TITLES) {
        // A row above says what several headings have in common.
        let above = at.checked_sub(1).map(|above| &rows[above]);
        let above = above.filter(|above| above.number + 1 == row.number);
        let texts = with_above(row, above, &known);
        let score: usize = texts.iter().map(|text| known(text)).sum();
        if score >= 3 {
            return Some((at, texts));
        }
        if score >= 2 && best.is_none() {
            best = Some((at, texts));
        }
    }
    best
}

/// The headings of a row, each with the word above it where only both together say something.
fn with_above(
    row: &Waiting,
    above: Option<&Waiting>,
    known: &impl Fn(&str) -> usize,
) -> Vec<String> {
    let text = |cell: &Held| match cell {
        Held::Text(text) => text.trim().to_owned(),
        cell => cell.cell().spoken(),
    };
    let words = above.map(|above| {
        let mut last = String::new();
        let words = (0..row.cells.len()).map(|at| {
            match above.cells.get(at) {
                Some(cell) if !cell.cell().is_blank() => last = text(cell),
                _ => {}
            }
            last.clone()
        });
        words.collect::<Vec<_>>()
    });
    // One cell alone is the table's title.
    let shared = above
        .is_some_and(|above| above.cells.iter().filter(|cell| !cell.cell().is_blank()).count() > 1);
    let mut texts: Vec<String> = row.cells.iter().map(text).collect();
    // Blank cells behind the last heading are no columns.
    while texts.last().is_some_and(String::is_empty) {
        texts.pop();
    }
    if let (Some(words), true) = (words, shared && texts.len() <= MOST_COLUMNS) {
        for (own, above) in texts.iter_mut().zip(words) {
            let both = format!("{above} {own}");
            if !own.is_empty() && !above.is_empty() && known(own) == 0 && known(&both) > 0 {
                *own = both;
            }
        }
    }
    texts
}

/// A quote that is opened and not closed.
pub(crate) fn open_quote() -> Error {
    bad_row(
        "has a cell that holds what looks like the rows below it",
        "look for a quote that is opened and not closed",
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    fn row(number: usize, texts: &[&str]) -> Waiting {
        let cells = texts.iter().map(|text| Held::Text((*text).into())).collect();
        Waiting { number, cells, ..Waiting::default() }
    }

    #[test]
    fn headings_are_found_under_titles_and_joined_with_the_words_above_them() {
        let rows = [
            row(1, &["Rack of the tool room"]),
            row(3, &["", "wheel", "", "fixed flange", ""]),
            row(4, &["name", "diameter [mm]", "bore [mm]", "diameter [mm]", "land [mm]"]),
            row(5, &["a", "200", "31.75", "80", "8"]),
        ];
        let (at, headings) = find_headings(&rows, Given::default()).expect("headings");
        assert_eq!(at, 2);
        let wanted = [
            "name",
            "wheel diameter [mm]",
            "wheel bore [mm]",
            "fixed flange diameter [mm]",
            "fixed flange land [mm]",
        ];
        assert_eq!(headings, wanted);
    }
}
