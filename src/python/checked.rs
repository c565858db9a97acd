//! Racks: files and tables in, verdicts out.

use std::ops::ControlFlow;
use std::path::PathBuf;
use std::sync::Arc;

use arrow_array::{ArrayRef, RecordBatchReader, StringArray, UInt32Array};
use pyo3::prelude::*;
use pyo3::types::PyDict;

use super::arrow::{self, ArrowTable};
use super::dicts::{from_dicts, table_error};
use super::quantity::Q;
use super::verdict::{Asked, Verdict, outcome_member, shop};
use super::words::{Laws, Slugs};
use crate::error::{Error, ErrorKind, cut};
use crate::mounting::{self, Outcome, RULES};
use crate::sheet::batch::{self, Row as SheetRow};
use crate::sheet::{self, Cell, Given, Intake, Options, demo, report, template};
use crate::units::{Decimal, Length, Words};

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
pub struct Checked(batch::Checked);

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
        match telling.raised {
            Some(raised) => Err(raised),
            None => Ok(written?),
        }
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

/// The items of a dict of texts.
fn pairs(dict: Option<&Bound<'_, PyDict>>) -> PyResult<Vec<(String, String)>> {
    let Some(dict) = dict else { return Ok(Vec::new()) };
    dict.iter().map(|(key, value)| Ok((key.extract()?, value.extract()?))).collect()
}

/// Tells `progress` the share that is done; an exception in it stops the work.
struct Telling {
    progress: Option<Py<PyAny>>,
    raised: Option<PyErr>,
}

impl Telling {
    fn tell(&mut self, share: f64) -> ControlFlow<()> {
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

/// Checks a rack kept in a workbook (.xlsx, .ods) or a CSV file.
///
/// What kind of file it is, the sheet that holds mountings, the row of headings under titles,
/// separator and decimal marks are found out from the file; `Checked.notes` says what was found.
///
/// Args:
///     path: The file.
///     sheet: Name of the sheet; the first with headings that are known when left out.
///     mapping: Headings of the file, each with the heading of ours that it stands for, such as
///         `{"Scheibe": "wheel diameter [mm]"}`; with `""` its column is left out.
///     decimal: `"point"` or `"comma"` for numbers held as text; found out column by column when left out.
///     most_megabytes: Most that a workbook may unpack to, and that is kept of any table (256).
///     laws: As for `check`.
///     without: As for `check`.
///     today: As for `check`.
///     flange_tolerance: As for `check`.
///     measured_within: As for `check`.
///     show: `"mm"` or `"in"`; what most headings are written in when left out.
///     progress: Called with the share that is done, from 0 to 1; an exception in it stops the work.
///
/// Returns:
///     Checked: Rows, counts and problems.
///
/// Raises:
///     FileError: The file can't be read.
///     TableError: It is no table of mountings. A bad row spoils only itself.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> hw.check_file("no-such-rack.csv")
///     Traceback (most recent call last):
///     ...
///     hubwright.errors.FileError: "no-such-rack.csv" could not be read: No such file or directory (os error 2)
///     hint: check the path, and that it is an .xlsx, .ods or CSV file
#[pyfunction]
#[pyo3(signature = (path, *, sheet = None, mapping: "dict[str, str] | None" = None, decimal = None, most_megabytes = 256, laws = None, without = None, today = None, flange_tolerance = None, measured_within = None, show = None, progress = None))]
#[allow(clippy::too_many_arguments, reason = "keywords of one call")]
pub fn check_file(
    py: Python<'_>,
    path: PathBuf,
    sheet: Option<String>,
    mapping: Option<&Bound<'_, PyDict>>,
    decimal: Option<&str>,
    most_megabytes: u32,
    laws: Option<Laws>,
    without: Option<Slugs>,
    today: Option<&Bound<'_, PyAny>>,
    flange_tolerance: Option<Q<Length>>,
    measured_within: Option<Q<Length>>,
    show: Option<&str>,
    progress: Option<Py<PyAny>>,
) -> PyResult<Checked> {
    let asked = Asked { laws, without, today, flange_tolerance, measured_within, show };
    let (terms, units_shown) = asked.terms(py)?;
    let decimal = match decimal {
        None => None,
        Some("point") => Some(Decimal::Point),
        Some("comma") => Some(Decimal::Comma),
        Some(other) => {
            return Err(Error::from(ErrorKind::UnknownWord {
                argument: "decimal".into(),
                text: cut(other),
                allowed: "point, comma".into(),
                hint: "leave it out to have it found out from the file".into(),
            })
            .into());
        }
    };
    let mut telling = Telling { progress, raised: None };
    let mut options = Options::default();
    (options.sheet, options.mapping, options.decimal) = (sheet, pairs(mapping)?, decimal);
    options.most_bytes = u64::from(most_megabytes) << 20;
    let checked = py.detach(|| {
        sheet::check_file(&path, &terms, units_shown, &options, &mut |share| telling.tell(share))
    });
    match (checked, telling.raised) {
        (_, Some(raised)) => Err(raised),
        (checked, None) => Ok(Checked(checked?)),
    }
}

/// Checks a rack held in a table.
///
/// Args:
///     table: Anything with an Arrow stream (a pandas or polars DataFrame, a pyarrow Table), or a
///         list of dicts. Its column names are headings such as `wheel diameter [mm]`.
///     units: Units of columns whose names state none, such as `{"wheel diameter": "mm"}`.
///     mapping: As for `check_file`.
///     laws: As for `check`.
///     without: As for `check`.
///     today: As for `check`.
///     flange_tolerance: As for `check`.
///     measured_within: As for `check`.
///     show: As for `check_file`.
///     progress: As for `check_file`.
///
/// Returns:
///     Checked: Rows, counts and problems; rows count from 1.
///
/// Raises:
///     TableError: It is no table of mountings. A bad row spoils only itself.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> rack = hw.check_rows([
///     ...     {"name": "surface", "spindle greatest speed [rpm]": 3400, "wheel marked speed [rpm]": 2850},
///     ... ])
///     >>> rack.counts.refused
///     1
#[pyfunction]
#[pyo3(signature = (table, *, units: "dict[str, str] | None" = None, mapping: "dict[str, str] | None" = None, laws = None, without = None, today = None, flange_tolerance = None, measured_within = None, show = None, progress = None))]
#[allow(clippy::too_many_arguments, reason = "keywords of one call")]
pub fn check_rows(
    py: Python<'_>,
    table: &Bound<'_, PyAny>,
    units: Option<&Bound<'_, PyDict>>,
    mapping: Option<&Bound<'_, PyDict>>,
    laws: Option<Laws>,
    without: Option<Slugs>,
    today: Option<&Bound<'_, PyAny>>,
    flange_tolerance: Option<Q<Length>>,
    measured_within: Option<Q<Length>>,
    show: Option<&str>,
    progress: Option<Py<PyAny>>,
) -> PyResult<Checked> {
    let asked = Asked { laws, without, today, flange_tolerance, measured_within, show };
    let (terms, units_shown) = asked.terms(py)?;
    let (units, mapping) = (pairs(units)?, pairs(mapping)?);
    let given = Given { units: &units, mapping: &mapping };
    let mut telling = Telling { progress, raised: None };
    let intake = match arrow::stream(table)? {
        Some(stream) => {
            let schema = stream.schema();
            // A column of a type that no field has is passed over like one of no known name.
            let kept: Vec<bool> =
                schema.fields().iter().map(|field| arrow::readable(field.data_type())).collect();
            let names: Vec<String> = arrow::names(&stream)
                .into_iter()
                .zip(&kept)
                .filter_map(|(name, kept)| kept.then_some(name))
                .collect();
            let mut intake = Intake::new("table", &names, given)?;
            let mut number = 0;
            for batch in stream {
                let batch = batch.map_err(|error| {
                    table_error(&format!("could not be read as Arrow: {error}"))
                })?;
                let columns: Vec<&ArrayRef> = batch
                    .columns()
                    .iter()
                    .zip(&kept)
                    .filter_map(|(column, kept)| kept.then_some(column))
                    .collect();
                for row in 0..batch.num_rows() {
                    number += 1;
                    let cells: Vec<Cell<'_>> = columns
                        .iter()
                        .map(|column| arrow::cell(column.as_ref(), row))
                        .collect::<Result<_, _>>()?;
                    intake.row(number, &cells)?;
                }
            }
            intake
        }
        None => from_dicts(table, given)?,
    };
    let checked = py.detach(|| {
        batch::Checked::of("table".into(), intake, &terms, units_shown, &mut |share| {
            telling.tell(share)
        })
    });
    match (checked, telling.raised) {
        (_, Some(raised)) => Err(raised),
        (checked, None) => Ok(Checked(checked?)),
    }
}

/// Writes an empty rack to fill in: every heading with its unit, words to choose from, a note and an example.
///
/// Args:
///     path: Where to: a new `.xlsx` file.
///     show: `"mm"` or `"in"`.
///
/// Raises:
///     TextError: Another ending or other units.
///     FileError: The file can't be written, or is there already.
#[pyfunction]
#[pyo3(signature = (path, *, show = "mm"))]
pub fn write_template(path: PathBuf, show: &str) -> PyResult<()> {
    Ok(template::write(&path, shop(show)?)?)
}

/// The JSON Schema of reports that end in `.json`.
#[pyfunction]
pub fn report_schema() -> &'static str {
    report::SCHEMA
}

/// Writes the demo rack, in three dialects, into a folder.
///
/// Args:
///     folder: Where to; it is made where it is missing.
///
/// Returns:
///     The files written, and the date the demo is judged on.
#[pyfunction]
pub fn write_demo(folder: PathBuf) -> PyResult<(Vec<PathBuf>, &'static str)> {
    Ok((demo::write(&folder)?, demo::TODAY))
}
