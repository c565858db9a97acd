//! A whole rack judged: what [`check_file`] gives back.

use std::ops::ControlFlow;
use std::path::{Path, PathBuf};

use super::cell::Cell;
use super::intake::{Intake, Taken};
use super::kept::Kept;
use super::read::{self, Options};
use crate::error::Error;
use crate::mounting::{Columns, Counts, Facts, Outcome, Terms, Verdict, judge_columns};
use crate::units::Shop;

/// A rack of mountings, judged.
///
/// It keeps the data and the worst outcome of every row; the findings of a
/// row are worked out again when somebody looks at it.
#[derive(Debug)]
pub struct Checked {
    /// File name, or `table`.
    pub name: String,
    /// The file it was read from, when it was read from one.
    pub(crate) file: Option<PathBuf>,
    /// The terms it was judged under.
    pub terms: Terms,
    /// How many rows came out which way.
    pub counts: Counts,
    /// Headings that nothing reads, each with the known heading most like it.
    pub unread: Vec<(String, Option<String>)>,
    /// What is worth knowing about how the table was read: which sheet, hidden rows, decimal commas.
    pub notes: Vec<String>,
    taken: Vec<Taken>,
    columns: Columns,
    kept: Kept,
    /// For every row, its place among the readable ones.
    readable: Vec<Option<u32>>,
    worst: Vec<Outcome>,
}

/// One row of a rack.
#[derive(Clone, Debug)]
pub struct Row {
    /// Its number in the table, as the program that holds it counts.
    pub number: usize,
    /// What the shop calls the mounting.
    pub name: String,
    /// The worst outcome; `None` when the row could not be read.
    pub worst: Option<Outcome>,
    /// What was found, or why the row could not be read.
    pub verdict: Result<Verdict, Error>,
}

/// A row that could not be read.
#[derive(Clone, Debug)]
pub struct Problem {
    /// Its number in the table.
    pub number: usize,
    /// What the shop calls the mounting.
    pub name: String,
    /// What is wrong with it.
    pub error: Error,
}

impl Checked {
    /// Judges what was taken in. `shop` follows the table where the terms leave it.
    pub(crate) fn of(
        name: String,
        intake: Intake,
        terms: &Terms,
        shop: Option<Shop>,
        each: &mut dyn FnMut(f64) -> ControlFlow<()>,
    ) -> Result<Self, Error> {
        let terms = terms.with_shop(shop.unwrap_or_else(|| intake.shop()));
        let Intake { columns, taken, unread, notes, kept, .. } = intake;
        let all = columns.rows().max(1) as f64;
        let worst = judge_columns(&columns, &terms, None, |rows| each(rows as f64 / all))?;
        let mut counts = Counts::default();
        let mut place = 0;
        let readable = taken
            .iter()
            .map(|row| {
                if row.problem.is_some() {
                    counts.unreadable += 1;
                    return None;
                }
                place += 1;
                Some(place - 1)
            })
            .collect();
        worst.iter().for_each(|worst| counts.add(*worst));
        Ok(Self {
            name,
            file: None,
            terms,
            counts,
            unread,
            notes,
            taken,
            columns,
            kept,
            readable,
            worst,
        })
    }

    /// How many rows there are, unreadable ones included.
    pub fn len(&self) -> usize {
        self.taken.len()
    }

    /// Whether there is no row.
    pub fn is_empty(&self) -> bool {
        self.taken.is_empty()
    }

    /// The worst outcome of a row; `None` when it could not be read or is not there.
    pub fn worst(&self, row: usize) -> Option<Outcome> {
        let place = (*self.readable.get(row)?)?;
        self.worst.get(place as usize).copied()
    }

    /// A row with its findings; `None` beyond the last.
    pub fn row(&self, row: usize) -> Option<Row> {
        let taken = self.taken.get(row)?;
        let verdict = match (&taken.problem, self.readable[row]) {
            (None, Some(place)) => {
                Ok(self.columns.verdict(place as usize, &taken.name, &self.terms))
            }
            (problem, _) => Err(problem
                .clone()
                .unwrap_or_else(|| super::intake::bad_row("is not there", "check it again"))),
        };
        Some(Row {
            number: taken.number,
            name: taken.name.clone(),
            worst: self.worst(row),
            verdict,
        })
    }

    /// Every row in the order of the table.
    pub fn rows(&self) -> impl Iterator<Item = Row> {
        (0..self.len()).filter_map(|row| self.row(row))
    }

    /// The places of the rows, worst first: refused, unreadable, unknown, cautioned, passed.
    pub fn worst_first(&self) -> Vec<usize> {
        let mut places: Vec<usize> = (0..self.len()).collect();
        places.sort_by_key(|row| match self.worst(*row) {
            Some(Outcome::Refuse) => 0,
            None => 1,
            Some(Outcome::Unknown) => 2,
            Some(Outcome::Caution) => 3,
            Some(_) => 4,
        });
        places
    }

    /// The rows that could not be read, and why.
    pub fn problems(&self) -> Vec<Problem> {
        let problem = |row: &Taken| {
            row.problem.clone().map(|error| Problem {
                number: row.number,
                name: row.name.clone(),
                error,
            })
        };
        self.taken.iter().filter_map(problem).collect()
    }

    /// The headings of the table as they came.
    pub fn headings(&self) -> &[String] {
        self.kept.headings()
    }

    /// The cells of a row as they came, one a heading; none beyond the last.
    pub fn cells(&self, row: usize) -> impl Iterator<Item = Cell<'_>> {
        self.kept.row(row)
    }

    /// The facts of a row, for drawing it; `None` when it could not be read.
    pub(crate) fn facts(&self, row: usize) -> Option<Facts> {
        let place = (*self.readable.get(row)?)?;
        Some(self.columns.facts(place as usize))
    }

    /// Number and name of a row, without judging it again.
    pub fn label(&self, row: usize) -> Option<(usize, &str)> {
        self.taken.get(row).map(|row| (row.number, row.name.as_str()))
    }
}

/// Checks a rack kept in a file: a workbook (.xlsx, .ods) or CSV.
///
/// What it is, the sheet that holds mountings, the row of headings under
/// titles, separator and decimal marks are found out from the file; what was
/// found out is in [`Checked::notes`]. Without a `shop`, findings are worded in what most
/// of its headings are written in, millimetres or inches. `each` is told the
/// share that is done and may stop the work.
///
/// # Errors
///
/// When the file can't be read as a table of mountings at all. A bad row
/// spoils only itself.
///
/// # Example
///
/// ```
/// use std::ops::ControlFlow;
/// use hubwright::mounting::Terms;
/// use hubwright::sheet::{Options, check_file};
///
/// let path = std::env::temp_dir().join("hubwright-doc-rack.csv");
/// std::fs::write(&path, "name,spindle greatest speed [rpm],wheel marked speed [rpm]\nsurface,3400,2850\n").expect("a temporary file");
/// let checked = check_file(&path, &Terms::default(), None, &Options::default(), &mut |_| ControlFlow::Continue(()))?;
/// assert_eq!(checked.counts.refused, 1);
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn check_file(
    path: &Path,
    terms: &Terms,
    shop: Option<Shop>,
    options: &Options,
    each: &mut dyn FnMut(f64) -> ControlFlow<()>,
) -> Result<Checked, Error> {
    let intake = read::take(path, options, &mut |share| each(share * 0.8))?;
    let name = path
        .file_name()
        .map_or_else(|| path.display().to_string(), |name| name.to_string_lossy().into_owned());
    let checked = Checked::of(name, intake, terms, shop, &mut |share| each(0.8 + share * 0.2))?;
    Ok(Checked { file: path.canonicalize().ok(), ..checked })
}
