//! Lists of dicts as tables.

use std::collections::HashSet;

use pyo3::prelude::*;
use pyo3::types::{PyBool, PyDate, PyDateAccess, PyDict, PyFloat, PyInt, PyList, PyString};

use crate::error::{Error, ErrorKind};
use crate::sheet::{Cell, Given, Held, Intake};
use crate::units::{Date, figure};

/// A table that is none.
pub(super) fn table_error(why: &str) -> Error {
    ErrorKind::BadTable {
        name: "table".into(),
        why: why.into(),
        hint: "give a DataFrame, an Arrow table, or a list of dicts".into(),
    }
    .into()
}

/// A Python object as a cell that holds its own text.
fn held(object: &Bound<'_, PyAny>) -> PyResult<Held> {
    if object.is_none() {
        return Ok(Held::Blank);
    }
    if let Ok(truth) = object.cast::<PyBool>() {
        return Ok(Held::Truth(truth.is_true()));
    }
    if object.is_instance_of::<PyFloat>() || object.is_instance_of::<PyInt>() {
        return Ok(object.extract().map_or(Held::Number(f64::INFINITY), Held::Number));
    }
    if let Ok(text) = object.cast::<PyString>() {
        return Ok(Held::Text(text.to_string_lossy().into()));
    }
    if let Ok(date) = object.cast::<PyDate>() {
        let date = Date::new(date.get_year(), date.get_month(), date.get_day());
        return Ok(date.map_or(Held::Blank, |date| Held::Day(date.days())));
    }
    // NumPy's numbers are no floats of Python's, but turn into them.
    if let Ok(number) = object.extract::<f64>() {
        return Ok(Held::Number(number));
    }
    if let (Ok(magnitude), Ok(unit)) = (object.getattr("magnitude"), object.getattr("units"))
        && let Ok(value) = magnitude.extract::<f64>()
    {
        let unit = unit.call_method1("__format__", ("~C",))?;
        return Ok(Held::Text(format!("{} {unit}", figure(value, 12)).into()));
    }
    Ok(Held::Text(object.str()?.to_string_lossy().into()))
}

/// Takes in a list of dicts: a key a heading, a dict a row.
pub(super) fn from_dicts(table: &Bound<'_, PyAny>, given: Given<'_>) -> PyResult<Intake> {
    let rows = table
        .cast::<PyList>()
        .map_err(|_| table_error("is neither an Arrow table nor a list of dicts"))?;
    let dict = |row: &Bound<'_, PyAny>| -> PyResult<Py<PyDict>> {
        Ok(row
            .cast::<PyDict>()
            .map_err(|_| table_error("holds a row that is no dict"))?
            .clone()
            .unbind())
    };
    let mut headings: Vec<String> = Vec::new();
    let mut known = HashSet::new();
    let dicts: Vec<Py<PyDict>> = rows.iter().map(|row| dict(&row)).collect::<PyResult<_>>()?;
    for row in &dicts {
        for key in row.bind(table.py()).keys() {
            let key: String = key.str()?.to_string_lossy().into_owned();
            if known.insert(key.clone()) {
                headings.push(key);
            }
        }
    }
    if headings.is_empty() {
        return Err(table_error("is empty").into());
    }
    let mut intake = Intake::new("table", &headings, given)?;
    for (at, row) in dicts.iter().enumerate() {
        let row = row.bind(table.py());
        let cells: Vec<Held> = headings
            .iter()
            .map(|heading| row.get_item(heading)?.map_or(Ok(Held::Blank), |value| held(&value)))
            .collect::<PyResult<_>>()?;
        let cells: Vec<Cell<'_>> = cells.iter().map(Held::cell).collect();
        intake.row(at + 1, &cells)?;
    }
    Ok(intake)
}
