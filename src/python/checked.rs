//! Racks: files and tables in, verdicts out.

use std::ops::ControlFlow;
use std::path::PathBuf;
use std::sync::Arc;

use arrow_array::{ArrayRef, StringArray, UInt32Array};
use pyo3::prelude::*;

use super::arrow::ArrowTable;
use super::verdict::{Verdict, outcome_member};
use crate::error::Error;
use crate::mounting::{self, Outcome, RULES};
use crate::sheet::batch::{self, Row as SheetRow};
use crate::sheet::report;
use crate::units::Words;

/// A row that could not be read.
#[pyclass(frozen, get_all, module = "hubwright._core")]
#[derive(Clone)]
pub struct Problem {
    /// Its number in the table.
    number: usize,
    /// What the shop calls the mounting.
    name: String,
    /// What is wrong with it, and how to put it right.
    message: String,
    /// Code of the error.
    code: &'static str,
}

#[pymethods]
impl Problem {
    fn __repr__(&self) -> String {
        format!("<Problem row {}: {}>", self.number, self.message)
    }
}

/// One row of a rack.
#[pyclass(frozen, module = "hubwright._core")]
pub struct Row(SheetRow);

#[pymethods]
impl Row {
    /// Its number in the table, as the program that holds it counts.
    #[getter]
    fn number(&self) -> usize {
        self.0.number
    }

    /// What the shop calls the mounting.
    #[getter]
    fn name(&self) -> &str {
        &self.0.name
    }

    /// The worst outcome; None when the row could not be read.
    #[getter]
    fn worst<'py>(&self, py: Python<'py>) -> PyResult<Option<Bound<'py, PyAny>>> {
        outcome_member(py, self.0.worst)
    }

    /// What was found; None when the row could not be read.
    #[getter]
    fn verdict(&self) -> Option<Verdict> {
        self.0.verdict.as_ref().ok().cloned().map(Verdict)
    }

    /// Why the row could not be read; None when it could.
    #[getter]
    fn problem(&self) -> Option<Problem> {
        self.0.verdict.as_ref().err().map(|error| problem(self.0.number, &self.0.name, error))
    }

    fn __repr__(&self) -> String {
        let word = self.0.worst.map_or("unreadable", Outcome::printed);
        format!("<Row {} {}: {word}>", self.0.number, self.0.name)
    }
}

fn problem(number: usize, name: &str, error: &Error) -> Problem {
    Problem { number, name: name.to_owned(), message: error.to_string(), code: error.code() }
}

/// How many mountings came out which way; they add up to the rows.
#[pyclass(frozen, eq, get_all, module = "hubwright._core")]
#[derive(PartialEq)]
pub struct Counts {
    /// Nothing to say.
    passed: usize,
    /// Something to know or put right.
    cautioned: usize,
    /// A rule is broken.
    refused: usize,
    /// An essential datum is missing.
    unknown: usize,
    /// The row could not be read.
    unreadable: usize,
}

#[pymethods]
impl Counts {
    fn __repr__(&self) -> String {
        let Self { passed, cautioned, refused, unknown, unreadable } = self;
        format!(
            "Counts(passed={passed}, cautioned={cautioned}, refused={refused}, unknown={unknown}, unreadable={unreadable})"
        )
    }
}

/// The rows of a rack, one after the other.
#[pyclass(module = "hubwright._core")]
pub struct Rows {
    rack: Py<Checked>,
    next: usize,
}

#[pymethods]
impl Rows {
    fn __iter__(slf: Py<Self>) -> Py<Self> {
        slf
    }

    fn __next__(&mut self) -> Option<Row> {
        self.next += 1;
        self.rack.get().0.row(self.next - 1).map(Row)
    }
}

/// A rack of mountings, judged: iterate over it for its rows.
///
/// Attributes:
///     counts: How many rows passed, cautioned, were refused, unknown and unreadable; they add up.
///     problems: The rows that could not be read, and why.
///     clear: Whether nothing is refused, unknown or unreadable.
///     unread: Headings that nothing reads, each with the known heading most like it.
///     notes: How the table was read: which sheet, hidden rows, decimal commas.
#[pyclass(frozen, module = "hubwright._core")]
pub struct Checked(pub(super) batch::Checked);

#[pymethods]
impl Checked {
    /// File name, or `table`.
    #[getter]
    fn name(&self) -> &str {
        &self.0.name
    }

    /// How many rows came out which way.
    #[getter]
    fn counts(&self) -> Counts {
        let mounting::Counts { passed, cautioned, refused, unknown, unreadable } = self.0.counts;
        Counts { passed, cautioned, refused, unknown, unreadable }
    }

    /// Whether nothing is refused, unknown or unreadable.
    #[getter]
    fn clear(&self) -> bool {
        self.0.counts.clear()
    }

    /// The rows that could not be read, and why.
    #[getter]
    fn problems(&self) -> Vec<Problem> {
        self.0.problems().iter().map(|row| problem(row.number, &row.name, &row.error)).collect()
    }

    /// Headings that nothing reads, each with the known heading most like it.
    #[getter]
    fn unread(&self) -> Vec<(String, Option<String>)> {
        self.0.unread.clone()
    }

    /// How the table was read: which sheet, hidden rows, decimal commas.
    #[getter]
    fn notes(&self) -> Vec<String> {
        self.0.notes.clone()
    }

    fn __len__(&self) -> usize {
        self.0.len()
    }

    fn __iter__(slf: Py<Self>) -> Rows {
        Rows { rack: slf, next: 0 }
    }

    fn __getitem__(&self, at: isize) -> PyResult<Row> {
        let place = if at < 0 { at + self.0.len() as isize } else { at };
        let row = usize::try_from(place).ok().and_then(|place| self.0.row(place));
        row.map(Row).ok_or_else(|| {
            pyo3::exceptions::PyIndexError::new_err(format!(
                "there is no row {at}; the rack has {}",
                self.0.len()
            ))
        })
    }

    fn __bool__(&self) -> PyResult<bool> {
        Err(pyo3::exceptions::PyTypeError::new_err(
            "a rack is not true or false\nhint: ask for `.clear` or `.counts`",
        ))
    }

    /// The verdicts as an Arrow table: row, mounting, verdict, because, and a column of outcomes for each rule.
    fn to_arrow(&self, py: Python<'_>) -> PyResult<ArrowTable> {
        let table = py.detach(|| {
            let rows = self.0.len();
            let mut numbers = Vec::with_capacity(rows);
            let (mut names, mut words, mut because) = (Vec::new(), Vec::new(), Vec::new());
            let mut cells: Vec<Vec<Option<&str>>> = vec![Vec::with_capacity(rows); RULES.len()];
            for row in self.0.rows() {
                numbers.push(row.number as u32);
                names.push(row.name);
                words.push(row.worst.map_or("unreadable", Words::word));
                let verdict = row.verdict.as_ref();
                because.push(
                    verdict.map_or_else(|error| error.to_string(), |verdict| verdict.headline()),
                );
                for (column, rule) in cells.iter_mut().zip(RULES) {
                    let finding = verdict
                        .ok()
                        .and_then(|verdict| verdict.findings.iter().find(|f| f.rule == rule));
                    column.push(finding.map(|finding| finding.outcome.word()));
                }
            }
            let mut columns: Vec<(String, ArrayRef)> = vec![
                ("row".into(), Arc::new(UInt32Array::from(numbers))),
                ("mounting".into(), Arc::new(StringArray::from(names))),
                ("verdict".into(), Arc::new(StringArray::from(words))),
                ("because".into(), Arc::new(StringArray::from(because))),
            ];
            for (rule, column) in RULES.iter().zip(cells) {
                columns.push((rule.slug.into(), Arc::new(StringArray::from(column))));
            }
            ArrowTable::new(columns)
        })?;
        Ok(table)
    }

    /// Writes a report, whole or not at all.
    ///
    /// Args:
    ///     path: Where to; its ending says what: `.html` to print, `.txt`, `.xlsx` and `.csv` with the
    ///         rows as they came and their verdicts before them, `.json` for programs.
    ///     progress: As for `check_file`.
    ///
    /// Raises:
    ///     TextError: Another ending.
    ///     FileError: The file can't be written; an older one is as it was.
    #[pyo3(signature = (path, *, progress = None))]
    fn report(&self, py: Python<'_>, path: PathBuf, progress: Option<Py<PyAny>>) -> PyResult<()> {
        let mut telling = Telling { progress, raised: None };
        let written = py.detach(|| report::write(&self.0, &path, &mut |share| telling.tell(share)));
        telling.end(written)
    }

    fn __str__(&self) -> String {
        report::text(&self.0)
    }

    fn __repr__(&self) -> String {
        report::summary(&self.0)
    }

    fn _repr_html_(&self) -> PyResult<String> {
        Ok(report::table_fragment(&self.0)?)
    }
}

/// Tells `progress` the share that is done; an exception in it stops the work.
pub(super) struct Telling {
    pub progress: Option<Py<PyAny>>,
    pub raised: Option<PyErr>,
}

impl Telling {
    /// What the work came to, or what the caller raised in it.
    pub(super) fn end<T>(self, result: Result<T, Error>) -> PyResult<T> {
        match self.raised {
            Some(raised) => Err(raised),
            None => Ok(result?),
        }
    }

    pub(super) fn tell(&mut self, share: f64) -> ControlFlow<()> {
        let told = Python::attach(|py| {
            py.check_signals()?;
            match &self.progress {
                Some(progress) => progress.call1(py, (share,)).map(|_| ()),
                None => Ok(()),
            }
        });
        match told {
            Ok(()) => ControlFlow::Continue(()),
            Err(raised) => {
                self.raised = Some(raised);
                ControlFlow::Break(())
            }
        }
    }
}
