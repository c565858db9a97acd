//! Files and tables of other programs in; the template and the demo out.

use std::path::PathBuf;

use arrow_array::{ArrayRef, RecordBatchReader};
use pyo3::prelude::*;
use pyo3::types::PyDict;

use super::arrow;
use super::checked::{Checked, Telling};
use super::dicts::{from_dicts, table_error};
use super::quantity::Q;
use super::verdict::{Asked, shop};
use super::words::{Laws, Slugs};
use crate::error::{Error, ErrorKind, cut};
use crate::sheet::{self, Cell, Given, Intake, Options, batch, demo, report, template};
use crate::units::{Decimal, Length};

/// The items of a dict of texts.
fn pairs(dict: Option<&Bound<'_, PyDict>>) -> PyResult<Vec<(String, String)>> {
    let Some(dict) = dict else { return Ok(Vec::new()) };
    dict.iter().map(|(key, value)| Ok((key.extract()?, value.extract()?))).collect()
}

/// Checks a rack kept in a workbook (.xlsx, .ods) or a CSV file.
///
/// What kind of file it is, the sheet that holds mountings, the row of headings under titles,
/// separator and decimal marks are found out from the file; `Checked.notes` says what was found.
///
/// Args:
///     path: The file.
///     sheet: Name of the sheet; the one with headings that are known when left out.
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
    telling.end(checked).map(Checked)
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
    telling.end(checked).map(Checked)
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

/// Raises a TextError unless a report can have this name.
#[pyfunction]
pub fn check_report_name(path: PathBuf) -> PyResult<()> {
    report::ending(&path)?;
    Ok(())
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
