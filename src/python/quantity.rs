//! Quantities on their way across: text or pint in, pint out.
//!
//! pint is imported only when a quantity goes out; the registry is the
//! application's.

use pyo3::prelude::*;
use pyo3::sync::PyOnceLock;
use pyo3::types::{PyBool, PyDict, PyString};

#[cfg(feature = "stubs")]
use pyo3::{inspect::PyStaticExpr, type_hint_identifier};

use crate::error::{Error, ErrorKind, cut};
use crate::units::{
    Angle, AngularVelocity, Area, BalanceGrade, Decimal, Energy, Force, Frequency, GrainDensity,
    Kind, Length, Mass, MassDensity, Power, Pressure, RemovalRate, SideStiffness, SpecificEnergy,
    TemperatureCoefficient, TemperatureInterval, ThermodynamicTemperature, Time, Torque, Unbalance,
    Velocity, Volume, WidthRemovalRate, cubic_meter_per_second, cubic_millimeter,
    cubic_millimeter_per_second, cubic_millimeter_per_second_millimeter, degree, degree_celsius,
    grade_number, gram_millimeter, hertz, joule, joule_per_cubic_meter, joule_per_cubic_millimeter,
    kelvin, kilogram, kilogram_meter, kilogram_per_cubic_meter, megapascal, meter,
    meter_per_second, millimeter, newton, newton_meter, newton_per_meter, newton_per_millimeter,
    number, pascal, per_kelvin, per_square_meter, per_square_millimeter, radian, radian_per_second,
    read, revolution_per_minute, second, square_meter_per_second, square_millimeter, watt,
};

/// A kind of quantity that crosses.
pub(super) trait Crossing: Kind {
    /// The unit that carries it in, as pint spells it.
    const WIRE: &'static str;
    /// Words of which the unit must hold one; none means any unit will do.
    const MUST_NAME: &'static [&'static str];
    /// The unit it comes out in, as pint spells it.
    const OUT: &'static str;
    /// Whether its units need not start at one zero, as those of temperatures.
    const SHIFTED: bool = false;
    fn from_wire(value: f64) -> Self;
    fn to_out(self) -> f64;
}

macro_rules! crossing {
    ($($kind:ty: $wire:literal as $unit:ty, out $out:literal as $out_unit:ty, naming $words:expr;)+) => {$(
        impl Crossing for $kind {
            const WIRE: &'static str = $wire;
            const MUST_NAME: &'static [&'static str] = &$words;
            const OUT: &'static str = $out;
            fn from_wire(value: f64) -> Self { Self::new::<$unit>(value) }
            fn to_out(self) -> f64 { self.get::<$out_unit>() }
        }
    )+};
}

crossing! {
    Length: "meter" as meter, out "millimeter" as millimeter, naming [];
    Area: "millimeter ** 2" as square_millimeter, out "millimeter ** 2" as square_millimeter, naming [];
    Volume: "millimeter ** 3" as cubic_millimeter, out "millimeter ** 3" as cubic_millimeter, naming [];
    Velocity: "meter / second" as meter_per_second, out "meter / second" as meter_per_second, naming [];
    // pint reads 1 Hz and 1/min as radians; a wheel's plate means turns.
    AngularVelocity: "radian / second" as radian_per_second, out "revolutions_per_minute" as revolution_per_minute,
        naming ["radian", "degree", "turn", "revolution"];
    Angle: "radian" as radian, out "degree" as degree, naming ["radian", "degree", "turn", "revolution", "arc"];
    TemperatureInterval: "kelvin" as kelvin, out "kelvin" as kelvin, naming [];
    TemperatureCoefficient: "1 / kelvin" as per_kelvin, out "1 / kelvin" as per_kelvin, naming [];
    Pressure: "pascal" as pascal, out "megapascal" as megapascal, naming [];
    MassDensity: "kilogram / meter ** 3" as kilogram_per_cubic_meter,
        out "kilogram / meter ** 3" as kilogram_per_cubic_meter, naming [];
    Mass: "kilogram" as kilogram, out "kilogram" as kilogram, naming [];
    Force: "newton" as newton, out "newton" as newton, naming [];
    // pint does not tell a torque from an energy.
    Torque: "newton * meter" as newton_meter, out "newton * meter" as newton_meter, naming [];
    Time: "second" as second, out "second" as second, naming [];
    Energy: "joule" as joule, out "joule" as joule, naming [];
    SideStiffness: "newton / meter" as newton_per_meter, out "newton / millimeter" as newton_per_millimeter, naming [];
    Frequency: "hertz" as hertz, out "hertz" as hertz, naming [];
    Power: "watt" as watt, out "watt" as watt, naming [];
    Unbalance: "kilogram * meter" as kilogram_meter, out "gram * millimeter" as gram_millimeter, naming [];
    BalanceGrade: "millimeter / second" as grade_number, out "millimeter / second" as grade_number, naming [];
    // pint takes a pressure for it: 1 GPa is 1 J/mm³.
    SpecificEnergy: "joule / meter ** 3" as joule_per_cubic_meter,
        out "joule / millimeter ** 3" as joule_per_cubic_millimeter, naming ["joule", "watt", "pound", "horsepower"];
    RemovalRate: "meter ** 3 / second" as cubic_meter_per_second,
        out "millimeter ** 3 / second" as cubic_millimeter_per_second, naming [];
    WidthRemovalRate: "meter ** 2 / second" as square_meter_per_second,
        out "millimeter ** 2 / second" as cubic_millimeter_per_second_millimeter, naming [];
    GrainDensity: "1 / meter ** 2" as per_square_meter, out "1 / millimeter ** 2" as per_square_millimeter, naming [];
}

impl Crossing for ThermodynamicTemperature {
    const WIRE: &'static str = "degree_Celsius";
    const MUST_NAME: &'static [&'static str] = &[];
    const OUT: &'static str = "degree_Celsius";
    const SHIFTED: bool = true;
    fn from_wire(value: f64) -> Self {
        Self::new::<degree_celsius>(value)
    }
    fn to_out(self) -> f64 {
        self.get::<degree_celsius>()
    }
}

/// One quantity: read, or why it could not be. The name of its argument is
/// put in by the function that takes it.
pub(super) struct Q<K>(pub Result<K, Error>);

impl<K> Q<K> {
    /// The quantity, or an exception that names the argument.
    pub(super) fn named(self, argument: &str) -> Result<K, Error> {
        self.0.map_err(|error| error.named(argument))
    }
}

fn hint<K: Kind>() -> String {
    format!("give text like \"{0}\", or a pint quantity", K::EXAMPLE)
}

fn refused<K: Kind>(given: &Bound<'_, PyAny>, why: &'static str) -> Error {
    let given = given.repr().map_or_else(|_| "an object".to_owned(), |repr| cut(&repr.to_string()));
    ErrorKind::WrongUnit { argument: "value".into(), given, kind: K::NAME, why, hint: hint::<K>() }
        .into()
}

/// What one of a pint quantity's unit is in [`Crossing::WIRE`], remembered by unit.
pub(super) fn factor<K: Crossing>(quantity: &Bound<'_, PyAny>) -> Result<f64, Error> {
    static KNOWN: PyOnceLock<Py<PyDict>> = PyOnceLock::new();
    let py = quantity.py();
    let wrong = |why| refused::<K>(quantity, why);
    let Ok(units) = quantity.getattr("units") else { return Err(wrong("it has no unit")) };
    let known = KNOWN.get_or_init(py, || PyDict::new(py).unbind()).bind(py);
    let key = (K::WIRE, &units);
    if let Ok(Some(factor)) = known.get_item(key)
        && let Ok(factor) = factor.extract()
    {
        return Ok(factor);
    }
    let names = || -> PyResult<Vec<String>> {
        let items = quantity.call_method0("unit_items")?;
        items
            .try_iter()?
            .map(|item| item?.extract::<(String, f64)>().map(|(name, _)| name))
            .collect()
    };
    let named = names().map_err(|_| wrong("it has no unit"))?;
    let names_one = |word: &&str| named.iter().any(|name| name.contains(*word));
    if !K::MUST_NAME.is_empty() && !K::MUST_NAME.iter().any(names_one) {
        return Err(wrong("its unit names no turn or angle"));
    }
    let of = |value: f64| -> PyResult<f64> {
        quantity.get_type().call1((value, &units))?.call_method1("m_as", (K::WIRE,))?.extract()
    };
    let one = of(1.0).map_err(|_| wrong("its unit is of another kind"))?;
    if of(0.0).is_ok_and(|zero| zero != 0.0) {
        return Err(wrong("its unit does not start at zero"));
    }
    // Forgetting a factor costs time, nothing else.
    let _ = known.set_item(key, one);
    Ok(one)
}

/// Whether an object is a pint quantity, without importing pint.
pub(super) fn is_quantity(object: &Bound<'_, PyAny>) -> bool {
    object.hasattr("m_as").unwrap_or(false)
}

/// Reads one quantity from text or pint.
pub(super) fn scalar<K: Crossing>(object: &Bound<'_, PyAny>) -> Result<K, Error> {
    if let Ok(text) = object.cast::<PyString>() {
        return match text.to_str() {
            Ok(text) => read(text),
            Err(_) => Err(refused::<K>(object, "it is no plain text")),
        };
    }
    if is_quantity(object) && K::SHIFTED {
        let wire = object.call_method1("m_as", (K::WIRE,));
        let wire = wire.map_err(|_| refused::<K>(object, "its unit is of another kind"))?;
        let value = wire.extract().map_err(|_| refused::<K>(object, "it is not one number"))?;
        return Ok(K::from_wire(value));
    }
    if is_quantity(object) {
        let factor = factor::<K>(object)?;
        let magnitude =
            object.getattr("magnitude").and_then(|magnitude| magnitude.extract::<f64>());
        return match magnitude {
            Ok(value) => Ok(K::from_wire(value * factor)),
            Err(_) => Err(refused::<K>(object, "it is not one number")),
        };
    }
    if object.extract::<f64>().is_ok() {
        let given =
            object.repr().map_or_else(|_| "a number".to_owned(), |repr| cut(&repr.to_string()));
        return Err(ErrorKind::NoUnit {
            argument: "value".into(),
            given,
            kind: K::NAME,
            hint: hint::<K>(),
        }
        .into());
    }
    Err(refused::<K>(object, "it is neither text nor a quantity"))
}

impl<'py, K: Crossing> FromPyObject<'_, 'py> for Q<K> {
    type Error = PyErr;
    #[cfg(feature = "stubs")]
    const INPUT_TYPE: PyStaticExpr = type_hint_identifier!("hubwright._typing", "QuantityLike");

    fn extract(object: Borrowed<'_, 'py, PyAny>) -> PyResult<Self> {
        Ok(Self(scalar(&object)))
    }
}

/// pint's quantities, from the application's registry.
pub(super) fn pint_quantity<'py>(
    py: Python<'py>,
    value: impl IntoPyObject<'py>,
    unit: &str,
) -> PyResult<Bound<'py, PyAny>> {
    static REGISTRY: PyOnceLock<Py<PyAny>> = PyOnceLock::new();
    let registry = REGISTRY.import(py, "pint", "get_application_registry")?.call0()?;
    registry.getattr("Quantity")?.call1((value, unit))
}

/// A quantity on its way out.
pub(super) struct Out<K>(pub K);

impl<'py, K: Crossing> IntoPyObject<'py> for Out<K> {
    type Target = PyAny;
    type Output = Bound<'py, PyAny>;
    type Error = PyErr;
    #[cfg(feature = "stubs")]
    const OUTPUT_TYPE: PyStaticExpr = type_hint_identifier!("hubwright._typing", "Scalar");

    fn into_pyobject(self, py: Python<'py>) -> PyResult<Self::Output> {
        pint_quantity(py, self.0.to_out(), K::OUT)
    }
}

/// A plain number such as a friction or a factor: a float, text without a unit, or a
/// dimensionless quantity.
pub(super) struct Plain(pub Result<f64, Error>);

impl Plain {
    /// The number, or an exception that names the argument.
    pub(super) fn named(self, argument: &str) -> Result<f64, Error> {
        self.0.map_err(|error| error.named(argument))
    }
}

/// Reads a plain number.
pub(super) fn plain(object: &Bound<'_, PyAny>) -> Result<f64, Error> {
    const KIND: &str = "plain number";
    let hint = || "give a number without a unit, like 0.25".to_owned();
    let argument = || "value".to_owned();
    if let Ok(text) = object.extract::<String>() {
        return number(&text, Decimal::Point).map_err(|why| {
            let text = cut(&text);
            ErrorKind::NotAQuantity { argument: argument(), text, kind: KIND, why, hint: hint() }
                .into()
        });
    }
    let value = if is_quantity(object) {
        let magnitude = object.call_method1("m_as", ("dimensionless",));
        magnitude.and_then(|value| value.extract::<f64>()).ok()
    } else if object.is_instance_of::<PyBool>() {
        None
    } else {
        object.extract::<f64>().ok()
    };
    value.ok_or_else(|| {
        let given =
            object.repr().map_or_else(|_| "an object".to_owned(), |repr| cut(&repr.to_string()));
        let why = "it is no number, or has a unit";
        ErrorKind::WrongUnit { argument: argument(), given, kind: KIND, why, hint: hint() }.into()
    })
}

impl<'py> FromPyObject<'_, 'py> for Plain {
    type Error = PyErr;
    #[cfg(feature = "stubs")]
    const INPUT_TYPE: PyStaticExpr = type_hint_identifier!("hubwright._typing", "PlainLike");

    fn extract(object: Borrowed<'_, 'py, PyAny>) -> PyResult<Self> {
        Ok(Self(plain(&object)))
    }
}
