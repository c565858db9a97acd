//! Arrow in and out by its C interface, without any Arrow package for Python.
//!
//! A capsule holds a C struct. Reading moves the struct out and leaves it
//! released, as the interface asks of a consumer.

use std::ffi::CStr;
use std::sync::Arc;

use arrow_array::cast::AsArray;
use arrow_array::ffi::{FFI_ArrowArray, FFI_ArrowSchema, from_ffi, to_ffi};
use arrow_array::ffi_stream::{ArrayStreamReader, FFI_ArrowArrayStream, RecordBatchStreamReader};
use arrow_array::types::{
    ArrowDictionaryKeyType, ArrowPrimitiveType, Date32Type, Date64Type, Float32Type, Float64Type,
    Int8Type, Int16Type, Int32Type, Int64Type, UInt8Type, UInt16Type, UInt32Type, UInt64Type,
};
use arrow_array::{
    Array, ArrayRef, Float64Array, RecordBatch, RecordBatchIterator, RecordBatchReader,
};
use arrow_schema::{ArrowError, DataType, Schema};
use pyo3::prelude::*;
use pyo3::types::{PyCapsule, PyCapsuleMethods};

use crate::error::{Error, ErrorKind};
use crate::sheet::Cell;

const ARRAY: &CStr = c"arrow_array";
const SCHEMA: &CStr = c"arrow_schema";
const STREAM: &CStr = c"arrow_array_stream";

/// What could not be read, as an error of the table.
fn bad_table(why: impl std::fmt::Display) -> Error {
    ErrorKind::BadTable {
        name: "table".into(),
        why: format!("could not be read as Arrow: {why}"),
        hint: "give a table whose columns are numbers, text, yes/no or dates".into(),
    }
    .into()
}

/// The struct that a capsule of the given name holds.
fn pointer<T>(capsule: &Bound<'_, PyAny>, name: &CStr) -> PyResult<*mut T> {
    let capsule = capsule.cast::<PyCapsule>()?;
    Ok(capsule.pointer_checked(Some(name))?.as_ptr().cast())
}

/// The stream of a table that offers one; `None` for anything else.
pub(super) fn stream(table: &Bound<'_, PyAny>) -> PyResult<Option<RecordBatchStreamReader>> {
    if !table.hasattr("__arrow_c_stream__")? {
        return Ok(None);
    }
    let capsule = table.call_method0("__arrow_c_stream__")?;
    let raw: *mut FFI_ArrowArrayStream = pointer(&capsule, STREAM)?;
    // SAFETY: the capsule's name was checked, so that it holds a stream; `from_raw`
    // moves it out and leaves an empty one behind that the capsule may release.
    let reader = unsafe { RecordBatchStreamReader::from_raw(raw) };
    Ok(Some(reader.map_err(bad_table)?))
}

/// The names of a stream's columns.
pub(super) fn names(reader: &RecordBatchStreamReader) -> Vec<String> {
    reader.schema().fields().iter().map(|field| field.name().clone()).collect()
}

/// The numbers of an Arrow column (NaN for null); `None` for anything that is no Arrow column.
pub(super) fn float_column(object: &Bound<'_, PyAny>) -> PyResult<Option<Vec<f64>>> {
    let arrays: Vec<ArrayRef> = if object.hasattr("__arrow_c_array__")? {
        let (schema, array): (Bound<'_, PyAny>, Bound<'_, PyAny>) =
            object.call_method0("__arrow_c_array__")?.extract()?;
        let schema: *mut FFI_ArrowSchema = pointer(&schema, SCHEMA)?;
        let array: *mut FFI_ArrowArray = pointer(&array, ARRAY)?;
        // SAFETY: both names were checked; `from_raw` moves the array out and leaves
        // an empty one behind, and the schema is only read while its capsule lives.
        let data = unsafe { from_ffi(FFI_ArrowArray::from_raw(array), &*schema) };
        vec![arrow_array::make_array(data.map_err(bad_table)?)]
    } else if object.hasattr("__arrow_c_stream__")? && !object.hasattr("columns")? {
        let Some(capsule) = object.call_method0("__arrow_c_stream__").ok() else { return Ok(None) };
        let raw: *mut FFI_ArrowArrayStream = pointer(&capsule, STREAM)?;
        // SAFETY: as in `stream`.
        let chunks = unsafe { ArrayStreamReader::from_raw(raw) };
        chunks.map_err(bad_table)?.collect::<Result<_, _>>().map_err(bad_table)?
    } else {
        return Ok(None);
    };
    let mut numbers = Vec::new();
    for array in &arrays {
        for row in 0..array.len() {
            numbers.push(match cell(array.as_ref(), row)? {
                Cell::Number(number) => number,
                Cell::Blank => f64::NAN,
                _ => return Err(bad_table("it is no column of numbers").into()),
            });
        }
    }
    Ok(Some(numbers))
}

fn number<T: ArrowPrimitiveType>(
    array: &dyn Array,
    row: usize,
    to: impl Fn(T::Native) -> f64,
) -> Cell<'_> {
    Cell::Number(to(array.as_primitive::<T>().value(row)))
}

fn through_keys<K: ArrowDictionaryKeyType>(
    array: &dyn Array,
    row: usize,
) -> Result<Cell<'_>, Error> {
    let dictionary = array.as_dictionary::<K>();
    match dictionary.key(row) {
        Some(key) => cell(dictionary.values().as_ref(), key),
        None => Ok(Cell::Blank),
    }
}

/// One cell of a column; null is blank.
pub(super) fn cell(array: &dyn Array, row: usize) -> Result<Cell<'_>, Error> {
    if array.is_null(row) {
        return Ok(Cell::Blank);
    }
    Ok(match array.data_type() {
        DataType::Null => Cell::Blank,
        DataType::Boolean => Cell::Truth(array.as_boolean().value(row)),
        DataType::Utf8 => Cell::Text(array.as_string::<i32>().value(row)),
        DataType::LargeUtf8 => Cell::Text(array.as_string::<i64>().value(row)),
        DataType::Utf8View => Cell::Text(array.as_string_view().value(row)),
        DataType::Float64 => number::<Float64Type>(array, row, |v| v),
        // The shortest decimal of the short float is what was meant: 0.1, not 0.10000000149.
        DataType::Float32 => {
            number::<Float32Type>(array, row, |v| v.to_string().parse().unwrap_or(f64::from(v)))
        }
        DataType::Int8 => number::<Int8Type>(array, row, f64::from),
        DataType::Int16 => number::<Int16Type>(array, row, f64::from),
        DataType::Int32 => number::<Int32Type>(array, row, f64::from),
        DataType::Int64 => number::<Int64Type>(array, row, |v| v as f64),
        DataType::UInt8 => number::<UInt8Type>(array, row, f64::from),
        DataType::UInt16 => number::<UInt16Type>(array, row, f64::from),
        DataType::UInt32 => number::<UInt32Type>(array, row, f64::from),
        DataType::UInt64 => number::<UInt64Type>(array, row, |v| v as f64),
        DataType::Date32 => Cell::Day(array.as_primitive::<Date32Type>().value(row).into()),
        DataType::Date64 => {
            Cell::Day(array.as_primitive::<Date64Type>().value(row).div_euclid(86_400_000))
        }
        DataType::Timestamp(unit, _) => Cell::Day(days(array, row, *unit)),
        DataType::Dictionary(key, _) => match key.as_ref() {
            DataType::Int8 => through_keys::<Int8Type>(array, row)?,
            DataType::Int16 => through_keys::<Int16Type>(array, row)?,
            DataType::Int32 => through_keys::<Int32Type>(array, row)?,
            DataType::Int64 => through_keys::<Int64Type>(array, row)?,
            DataType::UInt8 => through_keys::<UInt8Type>(array, row)?,
            DataType::UInt16 => through_keys::<UInt16Type>(array, row)?,
            DataType::UInt32 => through_keys::<UInt32Type>(array, row)?,
            _ => through_keys::<UInt64Type>(array, row)?,
        },
        other => return Err(bad_table(format!("a column of type {other}"))),
    })
}

/// The day of a moment, as its clock shows it.
fn days(array: &dyn Array, row: usize, unit: arrow_schema::TimeUnit) -> i64 {
    use arrow_array::types::{
        TimestampMicrosecondType, TimestampMillisecondType, TimestampNanosecondType,
        TimestampSecondType,
    };
    use arrow_schema::TimeUnit;
    match unit {
        TimeUnit::Second => {
            array.as_primitive::<TimestampSecondType>().value(row).div_euclid(86_400)
        }
        TimeUnit::Millisecond => {
            array.as_primitive::<TimestampMillisecondType>().value(row).div_euclid(86_400_000)
        }
        TimeUnit::Microsecond => {
            array.as_primitive::<TimestampMicrosecondType>().value(row).div_euclid(86_400_000_000)
        }
        TimeUnit::Nanosecond => array
            .as_primitive::<TimestampNanosecondType>()
            .value(row)
            .div_euclid(86_400_000_000_000),
    }
}

/// Whether a column can be read at all.
pub(super) fn readable(kind: &DataType) -> bool {
    use DataType::{
        Boolean, Date32, Date64, Dictionary, LargeUtf8, Null, Timestamp, Utf8, Utf8View,
    };
    let plain = |kind: &DataType| {
        (kind.is_numeric() && !matches!(kind, DataType::Float16) && !kind.is_decimal())
            || matches!(
                kind,
                Null | Boolean | Utf8 | LargeUtf8 | Utf8View | Date32 | Date64 | Timestamp(..)
            )
    };
    match kind {
        Dictionary(_, values) => plain(values),
        kind => plain(kind),
    }
}

/// A column of numbers that any Arrow program can take.
#[pyclass(frozen, module = "hubwright._core")]
pub struct ArrowColumn {
    name: &'static str,
    values: Float64Array,
}

impl ArrowColumn {
    pub(super) fn new(name: &'static str, values: Vec<f64>) -> Self {
        Self { name, values: values.into() }
    }
}

#[pymethods]
impl ArrowColumn {
    /// What it holds, with its unit.
    #[getter]
    fn name(&self) -> &'static str {
        self.name
    }

    fn __len__(&self) -> usize {
        self.values.len()
    }

    /// The column by Arrow's C interface: a schema and an array capsule.
    #[pyo3(signature = (requested_schema: "object" = None) -> "tuple[object, object]")]
    fn __arrow_c_array__<'py>(
        &self,
        py: Python<'py>,
        requested_schema: Option<&Bound<'py, PyAny>>,
    ) -> PyResult<(Bound<'py, PyCapsule>, Bound<'py, PyCapsule>)> {
        // The interface lets a producer ignore the type that is asked for.
        let _ = requested_schema;
        let (array, schema) = to_ffi(&self.values.to_data()).map_err(bad_table)?;
        Ok((
            PyCapsule::new_with_value(py, Sent(schema), SCHEMA)?,
            PyCapsule::new_with_value(py, Sent(array), ARRAY)?,
        ))
    }

    fn __repr__(&self) -> String {
        format!("<ArrowColumn {}: {} rows>", self.name, self.values.len())
    }
}

/// A C struct on its way out; dropping it releases what nobody took.
#[repr(transparent)]
struct Sent<T>(T);

// SAFETY: the structs are only touched by whoever holds the capsule, and what
// they point to is immutable and reference-counted.
unsafe impl<T> Send for Sent<T> {}

/// A table that any Arrow program can take.
#[pyclass(frozen, module = "hubwright._core")]
pub struct ArrowTable(RecordBatch);

impl ArrowTable {
    pub(super) fn new(columns: Vec<(String, ArrayRef)>) -> Result<Self, Error> {
        RecordBatch::try_from_iter_with_nullable(
            columns.into_iter().map(|(name, array)| (name, array, true)),
        )
        .map(Self)
        .map_err(bad_table)
    }
}

#[pymethods]
impl ArrowTable {
    /// The names of its columns.
    #[getter]
    fn column_names(&self) -> Vec<String> {
        self.0.schema().fields().iter().map(|field| field.name().clone()).collect()
    }

    fn __len__(&self) -> usize {
        self.0.num_rows()
    }

    /// The table by Arrow's C interface: a stream capsule.
    #[pyo3(signature = (requested_schema: "object" = None) -> "object")]
    fn __arrow_c_stream__<'py>(
        &self,
        py: Python<'py>,
        requested_schema: Option<&Bound<'py, PyAny>>,
    ) -> PyResult<Bound<'py, PyCapsule>> {
        let _ = requested_schema;
        let schema: Arc<Schema> = self.0.schema();
        let batches: Vec<Result<RecordBatch, ArrowError>> = vec![Ok(self.0.clone())];
        let stream = FFI_ArrowArrayStream::new(Box::new(RecordBatchIterator::new(batches, schema)));
        PyCapsule::new_with_value(py, Sent(stream), STREAM)
    }

    fn __repr__(&self) -> String {
        format!("<ArrowTable {} rows, {} columns>", self.0.num_rows(), self.0.num_columns())
    }
}
