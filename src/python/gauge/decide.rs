//! Uncertainty budgets and decisions.

use pyo3::prelude::*;

#[cfg(feature = "stubs")]
use pyo3::{inspect::PyStaticExpr, type_hint_identifier};

use super::mm;
use crate::error::Error;
use crate::gauge::{self, GuardBand, Limits, Ruling, Spread};
use crate::python::quantity::{Out, Plain, Q, scalar};
use crate::python::rings::found;
use crate::python::verdict::Source;
use crate::python::wheel::Working;
use crate::python::words::{W, WordOut};
use crate::units::{Angle, Length, figure, micrometer};

/// One error that adds to the uncertainty of a length.
///
/// Args:
///     name: What it is.
///     spread: `"normal"` (the size is a standard uncertainty), `"uniform"`, `"triangular"` or `"u-shaped"` (the
///         size is a half width).
///     size: Its size on the result, zero or above.
///     dof: Degrees of freedom where it was found by repeating; infinite unless given.
///
/// Raises:
///     UnitError, TextError, OutOfRangeError: No length, another word, or no number.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> hw.gauge.Influence("resolution", spread="uniform", size="0.5 um")
///     <Influence resolution 0.2887 µm>
#[pyclass(frozen, from_py_object, module = "hubwright._core")]
#[derive(Clone)]
pub struct Influence(gauge::Influence);

found! {
    Influence(gauge::Influence) {
        /// What it is.
        name: String = |of| of.name.clone();
        /// How it is spread.
        spread: WordOut<Spread> = |of| WordOut(of.spread);
        /// Its size on the result, in mm.
        size: Out<Length> = |of| Out(of.size);
        /// Degrees of freedom.
        dof: f64 = |of| of.dof;
        /// Its standard uncertainty, in mm.
        standard: Out<Length> = |of| Out(of.standard());
    }

    #[new]
    #[pyo3(signature = (name, *, spread, size, dof = None))]
    fn new(name: String, spread: W<Spread>, size: Q<Length>, dof: Option<Plain>) -> PyResult<Self> {
        let influence = gauge::Influence::new(name, spread.named("spread")?, size.named("size")?);
        let influence = match dof {
            Some(dof) => influence.with_dof(dof.named("dof")?),
            None => influence,
        };
        gauge::budget(std::slice::from_ref(&influence))?;
        Ok(Self(influence))
    }

    fn __repr__(&self) -> String {
        let standard = figure(self.0.standard().get::<micrometer>(), 4);
        format!("<Influence {} {standard} µm>", self.0.name)
    }
}

/// What `budget` found.
#[pyclass(frozen, module = "hubwright._core")]
pub struct Budget(gauge::Budget);

found! {
    Budget(gauge::Budget) {
        /// The errors that went in.
        influences: Vec<Influence> = |of| of.influences.iter().cloned().map(Influence).collect();
        /// Combined standard uncertainty, in mm.
        standard: Out<Length> = |of| Out(of.standard);
        /// Effective degrees of freedom.
        dof: f64 = |of| of.dof;
        /// Coverage factor for 95 %: 2 for infinitely many degrees of freedom.
        coverage: f64 = |of| of.coverage;
        /// Coverage factor times standard uncertainty, in mm.
        expanded: Out<Length> = |of| Out(of.expanded);
    }

    /// The steps, recomputed; the last one's result is `expanded` in µm.
    fn working(&self) -> Working {
        Working(self.0.working())
    }

    fn __repr__(&self) -> String {
        format!("<Budget u {}, U {} (k {})>", mm(self.0.standard), mm(self.0.expanded), figure(self.0.coverage, 3))
    }
}

/// The uncertainty of a length from all that adds to it: root sum of squares, Welch-Satterthwaite, 95 %.
///
/// Args:
///     influences: A list of `Influence`, at least one.
///
/// Returns:
///     Budget: `.standard`, `.dof`, `.coverage`, `.expanded`.
///
/// Raises:
///     MissingError: An empty list.
///
/// Source: JCGM 100, from memory.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> hw.gauge.budget([
///     ...     hw.gauge.Influence("resolution", spread="uniform", size="0.5 um"),
///     ...     hw.gauge.Influence("gauge", spread="normal", size="0.4 um"),
///     ... ])
///     <Budget u 0.0005 mm, U 0.001 mm (k 2)>
#[pyfunction]
pub fn budget(influences: Vec<Influence>) -> PyResult<Budget> {
    let influences: Vec<_> = influences.into_iter().map(|one| one.0).collect();
    Ok(Budget(gauge::budget(&influences)?))
}

/// A length or an angle on its way in: which one the first of them says.
pub(in crate::python) struct Either(Result<Length, Error>, Result<Angle, Error>);

impl<'py> FromPyObject<'_, 'py> for Either {
    type Error = PyErr;
    #[cfg(feature = "stubs")]
    const INPUT_TYPE: PyStaticExpr = type_hint_identifier!("hubwright._typing", "QuantityLike");

    fn extract(object: Borrowed<'_, 'py, PyAny>) -> PyResult<Self> {
        Ok(Self(scalar(&object), scalar(&object)))
    }
}

/// A length or an angle on its way out.
pub(super) enum EitherOut {
    Length(Length),
    Angle(Angle),
}

impl<'py> IntoPyObject<'py> for EitherOut {
    type Target = PyAny;
    type Output = Bound<'py, PyAny>;
    type Error = PyErr;
    #[cfg(feature = "stubs")]
    const OUTPUT_TYPE: PyStaticExpr = type_hint_identifier!("hubwright._typing", "Scalar");

    fn into_pyobject(self, py: Python<'py>) -> PyResult<Self::Output> {
        match self {
            Self::Length(length) => Out(length).into_pyobject(py),
            Self::Angle(angle) => Out(angle).into_pyobject(py),
        }
    }
}

/// A decision about a length or an angle.
pub(super) enum Decided {
    Length(gauge::Decision<Length>),
    Angle(gauge::Decision<Angle>),
}

macro_rules! of {
    ($decided:expr, $of:ident => $get:expr) => {
        match $decided {
            Decided::Length($of) => $get,
            Decided::Angle($of) => $get,
        }
    };
}

impl Decided {
    fn out(
        &self,
        length: impl Fn(&gauge::Decision<Length>) -> Option<Length>,
        angle: impl Fn(&gauge::Decision<Angle>) -> Option<Angle>,
    ) -> Option<EitherOut> {
        match self {
            Self::Length(of) => length(of).map(EitherOut::Length),
            Self::Angle(of) => angle(of).map(EitherOut::Angle),
        }
    }
}

/// What `decide` found.
#[pyclass(frozen, module = "hubwright._core")]
pub struct Decision(Decided);

found! {
    Decision(Decided) {
        /// What can be said: `within`, `outside` or `can't tell`.
        ruling: WordOut<Ruling> = |of| WordOut(of!(of, one => one.ruling));
        /// The guard band chosen.
        guard_band: WordOut<GuardBand> = |of| WordOut(of!(of, one => one.guard));
        /// Width of the guard band in standard uncertainties.
        factor: f64 = |of| of!(of, one => one.factor);
        /// How likely the value itself lies within its limits.
        chance_within: f64 = |of| of!(of, one => one.chance_within);
        /// Lower end of what is accepted; None without a lower limit, or where nothing is.
        accept_low: Option<EitherOut> = |of| of.out(|of| of.accept.low, |of| of.accept.low);
        /// Upper end of what is accepted.
        accept_high: Option<EitherOut> = |of| of.out(|of| of.accept.high, |of| of.accept.high);
        /// Below this a value is certainly outside; None without a lower limit.
        reject_low: Option<EitherOut> = |of| of.out(|of| of.reject.low, |of| of.reject.low);
        /// Above this a value is certainly outside.
        reject_high: Option<EitherOut> = |of| of.out(|of| of.reject.high, |of| of.reject.high);
        /// Where the two guard bands come from: from memory.
        source: Source = |_| Source(gauge::ZONES);
    }

    /// The steps, recomputed; the last one's result is `chance_within`.
    fn working(&self) -> Working {
        Working(of!(&self.0, one => one.working()))
    }

    fn __repr__(&self) -> String {
        let (ruling, guard) = (self.ruling().0, self.guard_band().0);
        format!("<Decision {ruling}, {} % within, guard band {guard}>", figure(self.chance_within() * 100.0, 1))
    }
}

/// Judges a measured length or angle by its limits, with a guard band.
///
/// It is within when it stays the guard band inside of its limits, outside when it lies the guard band beyond one,
/// and otherwise can't be told.
///
/// Args:
///     measured: A length or an angle.
///     u: Its standard uncertainty, above zero.
///     low: Lower limit.
///     high: Upper limit.
///     guard_band: `"one-sided 95 %"` (1.645 u) or `"full"` (2 u). Which one an edition asks for is yours to know.
///
/// Returns:
///     Decision: `.ruling`, `.chance_within`, `.accept_low`, `.accept_high` and more.
///
/// Raises:
///     UnitError, TextError: Neither lengths nor angles, or not all of one kind.
///     MissingError: No limit.
///     OutOfRangeError: An uncertainty that is not above zero, or limits in the wrong order.
///
/// Source: ISO 14253-1 and JCGM 106, from memory.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> hw.gauge.decide("25.0118 mm", u="0.9 um", low="25 mm", high="25.013 mm", guard_band="one-sided 95 %")
///     <Decision can't tell, 90.9 % within, guard band one-sided 95 %>
///     >>> hw.gauge.decide("2.86 deg", u="0.001 deg", high="2.87 deg", guard_band="full").ruling
///     <Ruling.WITHIN: 'within'>
#[pyfunction]
#[pyo3(signature = (measured, *, u, guard_band, low = None, high = None))]
pub fn decide(
    measured: Either,
    u: Either,
    guard_band: W<GuardBand>,
    low: Option<Either>,
    high: Option<Either>,
) -> PyResult<Decision> {
    let guard = guard_band.named("guard_band")?;
    let name = |name: &'static str| move |error: Error| error.named(name);
    // What is no angle is told as no length, the commoner kind.
    if let (Err(_), Ok(angle)) = (&measured.0, &measured.1) {
        let of = |given: Option<Either>, argument| {
            given.map(|one| one.1.map_err(name(argument))).transpose()
        };
        let limits = Limits::new(of(low, "low")?, of(high, "high")?);
        return Ok(Decision(Decided::Angle(gauge::decide(
            *angle,
            u.1.map_err(name("u"))?,
            limits,
            guard,
        )?)));
    }
    let of = |given: Option<Either>, argument| {
        given.map(|one| one.0.map_err(name(argument))).transpose()
    };
    let limits = Limits::new(of(low, "low")?, of(high, "high")?);
    let measured = measured.0.map_err(name("measured"))?;
    Ok(Decision(Decided::Length(gauge::decide(measured, u.0.map_err(name("u"))?, limits, guard)?)))
}

/// How often a guard band lets bad parts pass and holds good ones back: shares of all parts.
#[pyclass(frozen, module = "hubwright._core")]
pub struct Chances(gauge::Chances);

found! {
    Chances(gauge::Chances) {
        /// Bad parts that are accepted.
        false_accept: f64 = |of| of.false_accept;
        /// Good parts that are not accepted.
        false_reject: f64 = |of| of.false_reject;
        /// Parts that are accepted.
        accepted: f64 = |of| of.accepted;
    }

    fn __repr__(&self) -> String {
        let share = |share: f64| figure(share * 100.0, 3);
        format!(
            "<Chances {} % bad and accepted, {} % good and held back>",
            share(self.0.false_accept), share(self.0.false_reject)
        )
    }
}

/// How often a guard band lets bad parts pass and holds good ones back.
///
/// Parts and errors of measuring are taken for normal.
///
/// Args:
///     process_mean: Mean size of the parts.
///     process_spread: Their standard deviation, above zero.
///     u: Standard uncertainty of a measurement, above zero.
///     low: Lower limit.
///     high: Upper limit.
///     guard_band: `"one-sided 95 %"` or `"full"`.
///
/// Returns:
///     Chances: `.false_accept`, `.false_reject`, `.accepted`.
///
/// Raises:
///     UnitError, TextError, MissingError, OutOfRangeError: As for `decide`.
///
/// Source: JCGM 106, from memory.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> hw.gauge.chances(
///     ...     process_mean="25.0065 mm", process_spread="3.2 um", u="0.9 um", low="25 mm", high="25.013 mm",
///     ...     guard_band="one-sided 95 %",
///     ... )
///     <Chances 0.049 % bad and accepted, 8.929 % good and held back>
#[pyfunction]
#[pyo3(signature = (*, process_mean, process_spread, u, guard_band, low = None, high = None))]
pub fn chances(
    process_mean: Q<Length>,
    process_spread: Q<Length>,
    u: Q<Length>,
    guard_band: W<GuardBand>,
    low: Option<Q<Length>>,
    high: Option<Q<Length>>,
) -> PyResult<Chances> {
    let of =
        |given: Option<Q<Length>>, argument: &str| given.map(|one| one.named(argument)).transpose();
    let limits = Limits::new(of(low, "low")?, of(high, "high")?);
    let process = [process_mean.named("process_mean")?, process_spread.named("process_spread")?];
    Ok(Chances(gauge::chances(process, u.named("u")?, limits, guard_band.named("guard_band")?)?))
}
