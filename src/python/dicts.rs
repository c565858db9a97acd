//! Lists of dicts as tables.

use std::collections::HashSet;

use pyo3::prelude::*;
use pyo3::types::{PyBool, PyDate, PyDateAccess, PyDict, PyFloat, PyInt, PyList, PyString};

use crate::error::{Error, ErrorKind};
use crate::sheet::intake::{Cell, Intake};
use crate::units::{Date, Decimal, figure};

/// A table that is none.
pub(super) fn table_error(why: &str) -> Error {
    ErrorKind::BadTable {
        name: "table".into(),
        why: why.into(),
        hint: "give a DataFrame, an Arrow table, or a list of dicts".into(),
    }
    .into()
}

/// A Python object held long enough to be a cell.
enum Held {
    Blank,
    Text(String),
    Number(f64),
    Truth(bool),
    Day(i64),
}

impl Held {
    fn of(object: &Bound<'_, PyAny>) -> PyResult<Self> {
        if object.is_none() {
            return Ok(Self::Blank);
        }
        if let Ok(truth) = object.cast::<PyBool>() {
            return Ok(Self::Truth(truth.is_true()));
        }
        if object.is_instance_of::<PyFloat>() || object.is_instance_of::<PyInt>() {
            return Ok(object.extract().map_or(Self::Number(f64::INFINITY), Self::Number));
        }
        if let Ok(text) = object.cast::<PyString>() {
            return Ok(Self::Text(text.to_string_lossy().into_owned()));
        }
        if let Ok(date) = object.cast::<PyDate>() {
            let date = Date::new(date.get_year(), date.get_month(), date.get_day());
            return Ok(date.map_or(Self::Blank, |date| Self::Day(date.days())));
        }
        // NumPy's numbers are no floats of Python's, but turn into them.
        if let Ok(number) = object.extract::<f64>() {
            return Ok(Self::Number(number));
        }
        if let (Ok(magnitude), Ok(unit)) = (object.getattr("magnitude"), object.getattr("units"))
            && let Ok(value) = magnitude.extract::<f64>()
        {
            let unit = unit.call_method1("__format__", ("~C",))?;
            return Ok(Self::Text(format!("{} {unit}", figure(value, 12))));
        }
        Ok(Self::Text(object.str()?.to_string_lossy().into_owned()))
    }

    fn cell(&self) -> Cell<'_> {
        match self {
            Self::Blank => Cell::Blank,
            Self::Text(text) => Cell::Text(text),
            Self::Number(number) => Cell::Number(*number),
            Self::Truth(truth) => Cell::Truth(*truth),
            Self::Day(day) => Cell::Day(*day),
        }
    }
}

/// Takes in a list of dicts: a key a heading, a dict a row.
pub(super) fn from_dicts(table: &Bound<'_, PyAny>, units: &[(String, String)]) -> PyResult<Intake> {
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
    let mut intake = Intake::new("table", &headings, units, Decimal::Point)?;
    for (at, row) in dicts.iter().enumerate() {
        let row = row.bind(table.py());
        let held: Vec<Held> = headings
            .iter()
            .map(|heading| row.get_item(heading)?.map_or(Ok(Held::Blank), |value| Held::of(&value)))
            .collect::<PyResult<_>>()?;
        intake.row(at + 1, held.iter().map(Held::cell), false)?;
    }
    Ok(intake)
}
