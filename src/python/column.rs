//! Columns of quantities: pint arrays, NumPy, buffers and Arrow.

use pyo3::buffer::PyBuffer;
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyString};

use super::arrow::{ArrowColumn, float_column};
use super::quantity::{Crossing, factor, is_quantity, pint_quantity};
use crate::error::{Error, ErrorKind, cut};
use crate::units::{AngularVelocity, Kind, Length, Velocity, meter, radian_per_second};
use crate::wheel;

/// A column of one kind of quantity, in the unit the kernel takes.
pub(super) struct ColumnIn {
    pub(super) values: Vec<f64>,
    arrow: bool,
}

fn no_unit<K: Kind>(argument: &str) -> Error {
    ErrorKind::NoUnit {
        argument: argument.into(),
        given: "a column".into(),
        kind: K::NAME,
        hint: format!("give a pint array, or units={{\"{argument}\": \"...\"}}"),
    }
    .into()
}

/// Reads a column from a pint array, an Arrow column or a buffer of floats.
pub(super) fn column<K: Crossing>(
    object: &Bound<'_, PyAny>,
    argument: &str,
    units: Option<&Bound<'_, PyDict>>,
    base: impl Fn(K) -> f64,
) -> PyResult<ColumnIn> {
    let wrong = |why| -> Error {
        let given = object.get_type().to_string();
        ErrorKind::WrongUnit {
            argument: argument.into(),
            given: cut(&given),
            kind: K::NAME,
            why,
            hint: "give a one-dimensional column of floats".into(),
        }
        .into()
    };
    if is_quantity(object) {
        let factor = factor::<K>(object).map_err(|error| error.named(argument))?;
        let magnitude = object.getattr("magnitude")?;
        let values =
            floats(&magnitude).ok_or_else(|| wrong("its numbers are no column of floats"))?;
        return Ok(ColumnIn {
            values: values.iter().map(|v| base(K::from_wire(v * factor))).collect(),
            arrow: false,
        });
    }
    let unit = units.map(|units| units.get_item(argument)).transpose()?.flatten();
    let unit: String =
        unit.ok_or_else(|| no_unit::<K>(argument))?.cast::<PyString>()?.to_str()?.to_owned();
    let Some(spelling) = K::spelling(&unit) else {
        let known: Vec<_> = K::SPELLINGS.iter().map(|spelling| spelling.text).collect();
        return Err(Error::from(ErrorKind::UnknownWord {
            argument: argument.into(),
            text: cut(&unit),
            allowed: known.join(", "),
            hint: format!("state a unit of {}", K::NAME),
        })
        .into());
    };
    let (values, arrow) = match float_column(object)? {
        Some(values) => (values, true),
        None => (floats(object).ok_or_else(|| wrong("it is no column of floats"))?, false),
    };
    Ok(ColumnIn { values: values.iter().map(|v| base((spelling.build)(*v))).collect(), arrow })
}

/// The numbers of a one-dimensional buffer of doubles, or of anything NumPy turns into one.
fn floats(object: &Bound<'_, PyAny>) -> Option<Vec<f64>> {
    let read = |object: &Bound<'_, PyAny>| {
        let buffer = PyBuffer::<f64>::get(object).ok()?;
        (buffer.dimensions() == 1).then(|| buffer.to_vec(object.py()).ok()).flatten()
    };
    read(object).or_else(|| {
        let numpy = object.py().import("numpy").ok()?;
        let array = numpy.call_method1("asarray", (object, "float64")).ok()?;
        read(&array)
    })
}

/// `rim_speed` of every row of two columns, bit for bit.
///
/// Rows that `rim_speed` would refuse come out as NaN.
///
/// Args:
///     diameter: Outside diameters: a pint array, or a NumPy array, buffer or Arrow column with its
///         unit in `units`.
///     speed: Rotational speeds, likewise.
///     units: Units of the columns that carry none, such as `{"diameter": "mm", "speed": "rpm"}`.
///     out: A writable NumPy array of floats to put the metres a second into.
///
/// Returns:
///     A pint array in m/s; an Arrow column (`ArrowColumn`, m/s) when both columns are Arrow's.
///
/// Raises:
///     UnitError: A column without a unit, or with one of another kind.
///     TableError: Columns of unlike length.
///
/// Source: kinematics of rigid rotation.
///
/// Examples:
///     >>> import numpy as np
///     >>> import hubwright as hw
///     >>> hw.wheel.rim_speed_column(
///     ...     np.array([200.0, 300.0]), np.array([3000.0, 2000.0]),
///     ...     units={"diameter": "mm", "speed": "rpm"},
///     ... ).magnitude.round(1)
///     array([31.4, 31.4])
#[pyfunction]
#[pyo3(signature = (diameter, speed, *, units: "dict[str, str] | None" = None, out = None))]
pub fn rim_speed_column<'py>(
    py: Python<'py>,
    diameter: &Bound<'py, PyAny>,
    speed: &Bound<'py, PyAny>,
    units: Option<&Bound<'py, PyDict>>,
    out: Option<&Bound<'py, PyAny>>,
) -> PyResult<Bound<'py, PyAny>> {
    let diameter = column::<Length>(diameter, "diameter", units, |d| d.get::<meter>())?;
    let speed = column::<AngularVelocity>(speed, "speed", units, |n| n.get::<radian_per_second>())?;
    let mut values = vec![0.0; diameter.values.len()];
    py.detach(|| wheel::rim_speed_column(&diameter.values, &speed.values, &mut values))?;
    if let Some(out) = out {
        let buffer = PyBuffer::<f64>::get(out)?;
        if buffer.item_count() != values.len() {
            let (given, wanted) = (buffer.item_count(), values.len());
            return Err(Error::from(ErrorKind::UnlikeLengths {
                argument: "out".into(),
                given,
                wanted,
            })
            .into());
        }
        buffer.copy_from_slice(py, &values)?;
        return pint_quantity(py, out, Velocity::OUT);
    }
    if diameter.arrow && speed.arrow {
        return Ok(Bound::new(py, ArrowColumn::new("rim speed [m/s]", values))?.into_any());
    }
    let array = py.import("numpy")?.call_method1("array", (values, "float64"))?;
    pint_quantity(py, array, Velocity::OUT)
}
