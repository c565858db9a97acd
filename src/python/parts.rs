//! The typed parts of a mounting as Python classes, made from the declaration of fields.

use pyo3::prelude::*;
use pyo3::types::{PyDate, PyDateAccess};

#[cfg(feature = "stubs")]
use pyo3::{inspect::PyStaticExpr, type_hint_identifier, type_hint_union};

use super::quantity::{Out, plain, scalar};
#[cfg(feature = "stubs")]
use super::words::Named;
use super::words::{member, word};
use crate::error::{Error, ErrorKind, cut};
use crate::joint::KeyFit;
use crate::mounting::fields::with_parts;
use crate::mounting::sort::FieldType;
use crate::mounting::{self, Datum, FIELDS, MarkingSays, Material, Rotation, ThreadHand, YesNo};
use crate::units::{
    Angle, AngularVelocity, BalanceGrade, Date, Force, Length, Mass, MassDensity, Pressure, Ratio,
    Shop, TemperatureCoefficient, TemperatureInterval, Time, Torque, Unbalance, Velocity, ratio,
};
use crate::wheel::{Abrasive, Bond, Fastening, FlangeKind, MachineKind, Shape};

/// Type of `hubwright.UNKNOWN`: a datum that should be known and isn't.
///
/// Every rule that needs it says CAN'T TELL. A datum that is left out is not
/// asked for, which is another thing.
#[pyclass(frozen, module = "hubwright._core")]
pub struct Unknown;

#[pymethods]
impl Unknown {
    #[new]
    fn new() -> Self {
        Self
    }

    fn __repr__(&self) -> &'static str {
        "UNKNOWN"
    }

    fn __eq__(&self, other: &Bound<'_, PyAny>) -> bool {
        other.is_instance_of::<Self>()
    }

    fn __hash__(&self) -> u64 {
        0
    }

    fn __reduce__(&self, py: Python<'_>) -> PyResult<(Py<PyAny>, ())> {
        Ok((py.get_type::<Self>().into_any().unbind(), ()))
    }
}

/// A type of field that crosses.
pub(super) trait FieldCrossing: FieldType {
    #[cfg(feature = "stubs")]
    const IN: PyStaticExpr;
    #[cfg(feature = "stubs")]
    const OUT: PyStaticExpr;
    fn from_python(object: &Bound<'_, PyAny>) -> Result<Self, Error>;
    fn to_python(self, py: Python<'_>) -> PyResult<Bound<'_, PyAny>>;
}

macro_rules! quantity_fields {
    ($($kind:ty),+) => {$(
        impl FieldCrossing for $kind {
            #[cfg(feature = "stubs")]
            const IN: PyStaticExpr = type_hint_identifier!("hubwright._typing", "QuantityLike");
            #[cfg(feature = "stubs")]
            const OUT: PyStaticExpr = type_hint_identifier!("hubwright._typing", "Scalar");
            fn from_python(object: &Bound<'_, PyAny>) -> Result<Self, Error> { scalar(object) }
            fn to_python(self, py: Python<'_>) -> PyResult<Bound<'_, PyAny>> { Out(self).into_pyobject(py) }
        }
    )+};
}
quantity_fields!(
    Length,
    Velocity,
    AngularVelocity,
    Angle,
    TemperatureInterval,
    TemperatureCoefficient,
    Pressure,
    MassDensity,
    Torque,
    Time,
    Mass,
    Unbalance,
    BalanceGrade,
    Force
);

impl FieldCrossing for Ratio {
    #[cfg(feature = "stubs")]
    const IN: PyStaticExpr = type_hint_identifier!("hubwright._typing", "PlainLike");
    #[cfg(feature = "stubs")]
    const OUT: PyStaticExpr = type_hint_identifier!("builtins", "float");

    fn from_python(object: &Bound<'_, PyAny>) -> Result<Self, Error> {
        plain(object).map(Self::from)
    }

    fn to_python(self, py: Python<'_>) -> PyResult<Bound<'_, PyAny>> {
        Ok(self.get::<ratio>().into_pyobject(py)?.into_any())
    }
}

macro_rules! word_fields {
    ($($kind:ty),+) => {$(
        impl FieldCrossing for $kind {
            #[cfg(feature = "stubs")]
            const IN: PyStaticExpr = type_hint_identifier!("builtins", "str");
            #[cfg(feature = "stubs")]
            const OUT: PyStaticExpr = type_hint_identifier!("hubwright.words", <$kind as Named>::CLASS);
            fn from_python(object: &Bound<'_, PyAny>) -> Result<Self, Error> { word(object) }
            fn to_python(self, py: Python<'_>) -> PyResult<Bound<'_, PyAny>> { member(py, self) }
        }
    )+};
}
word_fields!(
    Rotation,
    ThreadHand,
    Material,
    Shape,
    Fastening,
    Abrasive,
    Bond,
    MachineKind,
    FlangeKind,
    KeyFit,
    MarkingSays
);

impl FieldCrossing for YesNo {
    #[cfg(feature = "stubs")]
    const IN: PyStaticExpr = type_hint_union!(
        type_hint_identifier!("builtins", "bool"),
        type_hint_identifier!("builtins", "str")
    );
    #[cfg(feature = "stubs")]
    const OUT: PyStaticExpr = type_hint_identifier!("builtins", "bool");

    fn from_python(object: &Bound<'_, PyAny>) -> Result<Self, Error> {
        word(object)
    }

    fn to_python(self, py: Python<'_>) -> PyResult<Bound<'_, PyAny>> {
        Ok((self == Self::Yes).into_pyobject(py)?.to_owned().into_any())
    }
}

impl FieldCrossing for Date {
    #[cfg(feature = "stubs")]
    const IN: PyStaticExpr = type_hint_union!(
        type_hint_identifier!("datetime", "date"),
        type_hint_identifier!("builtins", "str")
    );
    #[cfg(feature = "stubs")]
    const OUT: PyStaticExpr = type_hint_identifier!("datetime", "date");

    fn from_python(object: &Bound<'_, PyAny>) -> Result<Self, Error> {
        let refuse = || {
            Error::from(ErrorKind::NotAQuantity {
                argument: "value".into(),
                text: object
                    .repr()
                    .map_or_else(|_| "an object".to_owned(), |repr| cut(&repr.to_string())),
                kind: "date",
                why: "it is neither a date nor text",
                hint: "give a datetime.date, or text like \"2027-03-01\"".into(),
            })
        };
        if let Ok(text) = object.extract::<String>() {
            return Self::read(&text);
        }
        let date = object.cast::<PyDate>().map_err(|_| refuse())?;
        Self::new(date.get_year(), date.get_month(), date.get_day()).ok_or_else(refuse)
    }

    fn to_python(self, py: Python<'_>) -> PyResult<Bound<'_, PyAny>> {
        let (year, month, day) = self.parts();
        Ok(PyDate::new(py, year, month, day)?.into_any())
    }
}

/// A datum on its way in: given, `UNKNOWN`, or left out.
pub(super) struct In<K>(Result<Datum<K>, Error>);

impl<'py, K: FieldCrossing> FromPyObject<'_, 'py> for In<K> {
    type Error = PyErr;
    #[cfg(feature = "stubs")]
    const INPUT_TYPE: PyStaticExpr =
        type_hint_union!(K::IN, <Unknown as pyo3::PyTypeInfo>::TYPE_HINT);

    fn extract(object: Borrowed<'_, 'py, PyAny>) -> PyResult<Self> {
        if object.is_instance_of::<Unknown>() {
            return Ok(Self(Ok(Datum::Unknown)));
        }
        Ok(Self(K::from_python(&object).map(Datum::Given)))
    }
}

/// A datum on its way out: given, `UNKNOWN`, or `None`.
pub(super) struct DatumOut<K>(Datum<K>);

impl<'py, K: FieldCrossing> IntoPyObject<'py> for DatumOut<K> {
    type Target = PyAny;
    type Output = Bound<'py, PyAny>;
    type Error = PyErr;
    #[cfg(feature = "stubs")]
    const OUTPUT_TYPE: PyStaticExpr = type_hint_union!(
        K::OUT,
        <Unknown as pyo3::PyTypeInfo>::TYPE_HINT,
        type_hint_identifier!("builtins", "None")
    );

    fn into_pyobject(self, py: Python<'py>) -> PyResult<Self::Output> {
        match self.0 {
            Datum::Given(value) => value.to_python(py),
            Datum::Unknown => Ok(Bound::new(py, Unknown)?.into_any()),
            Datum::NotAsked => Ok(py.None().into_bound(py)),
        }
    }
}

/// Every field of a mounting, as rows of place, attribute, heading, kind, units, words, what `none` says, and doc.
#[pyfunction]
#[allow(clippy::type_complexity, reason = "a table of eight columns")]
pub fn field_list() -> Vec<(
    &'static str,
    &'static str,
    String,
    &'static str,
    Vec<&'static str>,
    Vec<&'static str>,
    String,
    &'static str,
)> {
    let row = |field: &mounting::Field| {
        let sort = &field.sort;
        let none = format!("{:?}", field.none).to_lowercase();
        (
            field.place,
            field.name,
            field.heading(),
            sort.name,
            (sort.units)(),
            (sort.words)(),
            none,
            field.doc.trim(),
        )
    };
    FIELDS.iter().map(row).collect()
}

macro_rules! define_python_parts {
    (
        parts {$(
            $(#[doc = $part_doc:literal])+
            $part:ident {$(
                $(#[doc = $doc:literal])+
                $field:ident: $kind:ty = $words:literal [$($also:literal),*], $takes:ident, $none:ident;
            )+}
        )+}
        places {$($place:ident: $of:ident = $place_words:literal [$($place_also:literal),*];)+}
    ) => {
        $(
            $(#[doc = $part_doc])+
            ///
            /// Every datum may be given, `hubwright.UNKNOWN` (asked for and not known) or left
            /// out (not asked for). Quantities are text such as `"125 mm"` or pint quantities.
            ///
            /// Args:
            $(#[doc = concat!("    ", stringify!($field), ":", $($doc),+)])+
            #[pyclass(frozen, eq, from_py_object, module = "hubwright._core")]
            #[derive(Clone, Copy, PartialEq)]
            pub struct $part(pub(super) mounting::$part);

            #[pymethods]
            impl $part {
                #[new]
                #[pyo3(signature = (*, $($field = None),+))]
                #[allow(clippy::too_many_arguments, reason = "one keyword a field")]
                fn new($($field: Option<In<$kind>>),+) -> PyResult<Self> {
                    let mut part = mounting::$part::default();
                    $(
                        if let Some(In(datum)) = $field {
                            let datum = datum.map_err(|error| error.named(stringify!($field)))?;
                            if let Datum::Given(value) = datum {
                                let field = mounting::$part::FIELDS.iter().find(|field| field.name == stringify!($field));
                                if let Some(field) = field { field.admit(value.to_fact())?; }
                            }
                            part.$field = datum;
                        }
                    )+
                    Ok(Self(part))
                }

                $(
                    $(#[doc = $doc])+
                    #[getter]
                    fn $field(&self) -> DatumOut<$kind> {
                        DatumOut(self.0.$field)
                    }
                )+

                fn __repr__(&self) -> String {
                    let mut said: Vec<String> = Vec::new();
                    let mut fields = mounting::$part::FIELDS.iter();
                    $(
                        if let Some(field) = fields.next() {
                            match self.0.$field {
                                Datum::Given(value) => said.push(format!(
                                    "{}='{}'", field.name, field.show(value.to_fact(), Shop::Metric)
                                )),
                                Datum::Unknown => said.push(format!("{}=UNKNOWN", field.name)),
                                Datum::NotAsked => {}
                            }
                        }
                    )+
                    format!("{}({})", stringify!($part), said.join(", "))
                }
            }
        )+

        /// One wheel on one hub on one spindle.
        ///
        /// Args:
        ///     name: What the shop calls it.
        $(#[doc = concat!("    ", stringify!($place), ": The ", $place_words, ".")])+
        ///
        /// Examples:
        ///     >>> import hubwright as hw
        ///     >>> mounting = hw.Mounting(
        ///     ...     name="surface grinder",
        ///     ...     spindle=hw.Spindle(greatest_speed="3400 rpm"),
        ///     ...     wheel=hw.Wheel(diameter="200 mm", marked_speed="2850 rpm"),
        ///     ... )
        ///     >>> hw.check(mounting).worst
        ///     <Outcome.REFUSE: 'refuse'>
        #[pyclass(frozen, eq, from_py_object, module = "hubwright._core")]
        #[derive(Clone, PartialEq)]
        pub struct Mounting(pub(super) mounting::Mounting);

        #[pymethods]
        impl Mounting {
            #[new]
            #[pyo3(signature = (name = "", *, $($place = None),+))]
            #[allow(clippy::too_many_arguments, reason = "one keyword a part")]
            fn new(name: &str, $($place: Option<$of>),+) -> Self {
                Self(mounting::Mounting {
                    name: name.to_owned(),
                    $($place: $place.map(|part| part.0).unwrap_or_default(),)+
                })
            }

            /// What the shop calls it.
            #[getter]
            fn name(&self) -> &str {
                &self.0.name
            }

            $(
                #[doc = concat!("The ", $place_words, ".")]
                #[getter]
                fn $place(&self) -> $of {
                    $of(self.0.$place)
                }
            )+

            fn __repr__(&self) -> String {
                let mut said = vec![format!("{:?}", self.0.name)];
                $(
                    let part = $of(self.0.$place);
                    if part.0 != Default::default() {
                        said.push(format!("{}={}", stringify!($place), part.__repr__()));
                    }
                )+
                format!("Mounting({})", said.join(", "))
            }
        }
    };
}
with_parts!(define_python_parts);
