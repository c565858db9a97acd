//! The kernels of `hubwright.joint`.

use pyo3::prelude::*;
use pyo3::types::PyString;

#[cfg(feature = "stubs")]
use pyo3::{inspect::PyStaticExpr, type_hint_identifier};

use super::quantity::{Out, Q};
use super::verdict::Source;
use super::wheel::Working;
use super::words::WordOut;
use crate::error::{Error, ErrorKind, cut};
use crate::joint::{self, Feature, FitBasis, FitKind, SizeOutcome};
use crate::units::{Exact, Length, figure};

/// A text, or what was given in its place.
pub(super) struct Text(Result<String, String>);

impl Text {
    /// The text, or an exception that names the argument and shows how to write it.
    pub(super) fn named(
        self,
        argument: &str,
        kind: &'static str,
        example: &str,
    ) -> Result<String, Error> {
        self.0.map_err(|given| {
            let hint = format!("give text like \"{example}\"");
            let (argument, why) = (argument.into(), "it is no text");
            ErrorKind::WrongUnit { argument, given, kind, why, hint }.into()
        })
    }
}

impl<'py> FromPyObject<'_, 'py> for Text {
    type Error = PyErr;
    #[cfg(feature = "stubs")]
    const INPUT_TYPE: PyStaticExpr = type_hint_identifier!("builtins", "str");

    fn extract(object: Borrowed<'_, 'py, PyAny>) -> PyResult<Self> {
        let text = object.cast::<PyString>().ok().and_then(|text| text.extract().ok());
        let given = || object.repr().map_or_else(|_| "an object".into(), |r| cut(&r.to_string()));
        Ok(Self(text.ok_or_else(given)))
    }
}

/// Whole nm as text in mm, to the last nanometre that counts.
pub(super) fn mm(length: Length) -> String {
    format!("{} mm", figure(length.exact() / 1e6, 6))
}

/// A deviation as drawings write it: `+21`, `-7`, `0`.
fn signed(um: f64) -> String {
    if um == 0.0 {
        "0".into()
    } else {
        format!("{}{}", if um > 0.0 { "+" } else { "" }, figure(um, 2))
    }
}

/// Limits of size of a hole or shaft: what `limits` found.
#[pyclass(frozen, module = "hubwright._core")]
pub struct Limits(joint::Limits);

#[pymethods]
impl Limits {
    /// Nominal size, in mm.
    #[getter]
    fn nominal(&self) -> Out<Length> {
        Out(self.0.nominal)
    }

    /// Tolerance class, such as `H7`.
    #[getter]
    fn class_(&self) -> String {
        self.0.class.to_string()
    }

    /// Whether it is a hole or a shaft.
    #[getter]
    fn feature(&self) -> WordOut<Feature> {
        WordOut(self.0.class.feature())
    }

    /// Upper deviation in whole nm.
    #[getter]
    fn upper_nm(&self) -> i64 {
        self.0.upper_nm
    }

    /// Lower deviation in whole nm.
    #[getter]
    fn lower_nm(&self) -> i64 {
        self.0.lower_nm
    }

    /// Upper deviation in µm.
    #[getter]
    fn upper_um(&self) -> f64 {
        self.0.upper_um()
    }

    /// Lower deviation in µm.
    #[getter]
    fn lower_um(&self) -> f64 {
        self.0.lower_um()
    }

    /// Width of the tolerance in µm.
    #[getter]
    fn tolerance_um(&self) -> f64 {
        self.0.tolerance_um()
    }

    /// Largest size allowed, in mm.
    #[getter]
    fn largest(&self) -> Out<Length> {
        Out(self.0.largest)
    }

    /// Smallest size allowed, in mm.
    #[getter]
    fn smallest(&self) -> Out<Length> {
        Out(self.0.smallest)
    }

    /// Where the limits come from, with the weakest status among the figures used.
    #[getter]
    fn source(&self) -> Source {
        Source(self.0.source)
    }

    /// Judges a measured size on whole nanometres: a size on a limit is within.
    ///
    /// Args:
    ///     measured: The size, at 20 °C and without the uncertainty of measuring.
    ///
    /// Returns:
    ///     Judgement: `.outcome` and `.amount_nm`.
    ///
    /// Raises:
    ///     UnitError, TextError: No length.
    ///     OutOfRangeError: A size that is not above zero, or no finite number.
    ///
    /// Examples:
    ///     >>> import hubwright as hw
    ///     >>> hw.joint.limits("20 H7").judge("20.0243 mm")
    ///     <Judgement too large by 3.3 µm>
    fn judge(&self, measured: Q<Length>) -> PyResult<Judgement> {
        Ok(Judgement(self.0.judge(measured.named("measured")?)?))
    }

    /// How the limits came about; the last step's result is `largest` in mm.
    fn working(&self) -> Working {
        Working(self.0.working())
    }

    fn __repr__(&self) -> String {
        format!(
            "<Limits {} {} {} {} µm>",
            mm(self.0.nominal),
            self.0.class,
            signed(self.0.upper_um()),
            signed(self.0.lower_um())
        )
    }
}

/// A measured size between its limits, or past one.
#[pyclass(frozen, module = "hubwright._core")]
pub struct Judgement(joint::Judgement);

#[pymethods]
impl Judgement {
    /// The limits it was judged by.
    #[getter]
    fn limits(&self) -> Limits {
        Limits(self.0.limits)
    }

    /// The size judged, in mm.
    #[getter]
    fn measured(&self) -> Out<Length> {
        Out(self.0.measured)
    }

    /// How it fares: `within`, `too large` or `too small`.
    #[getter]
    fn outcome(&self) -> WordOut<SizeOutcome> {
        WordOut(self.0.outcome)
    }

    /// By how much, in nm: past the limit, or within it from the nearer one.
    #[getter]
    fn amount_nm(&self) -> i64 {
        self.0.amount_nm
    }

    fn __repr__(&self) -> String {
        let amount = figure(self.0.amount_nm as f64 / 1000.0, 3);
        format!("<Judgement {} by {amount} µm>", self.0.outcome)
    }
}

/// Limits of size of a hole or shaft from its nominal size and tolerance class.
///
/// Holes have capitals, shafts small letters. Without a unit the nominal size is in mm. The
/// printed tables decide, also where the formulas behind them say otherwise.
///
/// Args:
///     size: Nominal size and class, like `"20 H7"`, `"20H7"`, `"Ø31.75 js6"` or `"1-1/4 in H7"`;
///         above 0 to 3150 mm.
///
/// Returns:
///     Limits: `.upper_um`, `.lower_um`, `.largest`, `.smallest`, `.source` and more.
///
/// Raises:
///     UnitError: No text.
///     TextError: Text that is no size with a class, or a class that the standard lacks.
///     OutOfRangeError: A size at which the table of this class gives nothing.
///
/// Source: ISO 286-1, in reprints; the status in `.source` says where a figure is recalled.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> hole = hw.joint.limits("20 H7")
///     >>> hole
///     <Limits 20 mm H7 +21 0 µm>
///     >>> hole.upper_um, hole.lower_um
///     (21.0, 0.0)
///     >>> print(hole.source)
///     ISO 286-1, tolerances and deviations (read in a reprint)
#[pyfunction]
pub fn limits(size: Text) -> PyResult<Limits> {
    let size = size.named("size", "size with a tolerance class", "20 H7")?;
    Ok(Limits(joint::limits(&size)?))
}

/// A hole and a shaft of one nominal size: what `fit` found. Clearances are on diameter.
#[pyclass(frozen, module = "hubwright._core")]
pub struct Fit(joint::Fit);

#[pymethods]
impl Fit {
    /// Nominal size, in mm.
    #[getter]
    fn nominal(&self) -> Out<Length> {
        Out(self.0.nominal())
    }

    /// Both classes, such as `H7/g6`.
    #[getter]
    fn classes(&self) -> String {
        classes(&self.0)
    }

    /// Limits of the hole.
    #[getter]
    fn hole(&self) -> Limits {
        Limits(self.0.hole)
    }

    /// Limits of the shaft.
    #[getter]
    fn shaft(&self) -> Limits {
        Limits(self.0.shaft)
    }

    /// Clearance, transition or interference.
    #[getter]
    fn kind(&self) -> WordOut<FitKind> {
        WordOut(self.0.kind)
    }

    /// Which part is made to nominal size.
    #[getter]
    fn basis(&self) -> WordOut<FitBasis> {
        WordOut(self.0.basis())
    }

    /// Most clearance in whole nm.
    #[getter]
    fn most_clearance_nm(&self) -> i64 {
        self.0.most_clearance_nm
    }

    /// Least clearance in whole nm; negative is interference.
    #[getter]
    fn least_clearance_nm(&self) -> i64 {
        self.0.least_clearance_nm
    }

    /// Most clearance in µm.
    #[getter]
    fn most_clearance_um(&self) -> f64 {
        self.0.most_clearance_um()
    }

    /// Least clearance in µm; negative is interference.
    #[getter]
    fn least_clearance_um(&self) -> f64 {
        self.0.least_clearance_um()
    }

    /// How the clearances came about; the last step's result is `most_clearance_um`.
    fn working(&self) -> Working {
        Working(self.0.working())
    }

    fn __repr__(&self) -> String {
        format!("<Fit {}>", described(&self.0))
    }
}

fn classes(fit: &joint::Fit) -> String {
    format!("{}/{}", fit.hole.class, fit.shaft.class)
}

fn described(fit: &joint::Fit) -> String {
    format!(
        "{} {}, {}: {} to {} µm",
        mm(fit.nominal()),
        classes(fit),
        fit.kind,
        figure(fit.least_clearance_um(), 2),
        figure(fit.most_clearance_um(), 2)
    )
}

/// Limits of hole and shaft, and the clearance between them.
///
/// Args:
///     fit: Nominal size, hole and shaft, like `"20 H7/g6"` or `"1-1/4 in H7/g6"`.
///
/// Returns:
///     Fit: `.kind`, `.most_clearance_um`, `.least_clearance_um` (negative is interference),
///     `.hole` and `.shaft`.
///
/// Raises:
///     TextError, OutOfRangeError: As for `limits`.
///
/// Source: ISO 286-1 as for `limits`; the rest is arithmetic.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> hw.joint.fit("20 H7/g6")
///     <Fit 20 mm H7/g6, clearance: 7 to 41 µm>
#[pyfunction]
pub fn fit(fit: Text) -> PyResult<Fit> {
    Ok(Fit(joint::fit(&fit.named("fit", "size with a fit", "20 H7/g6")?)?))
}

/// A preferred fit that lies inside the window asked for.
#[pyclass(frozen, module = "hubwright._core")]
pub struct RankedFit(joint::RankedFit);

#[pymethods]
impl RankedFit {
    /// The fit.
    #[getter]
    fn fit(&self) -> Fit {
        Fit(self.0.fit)
    }

    /// Share of the window that it uses, up to 1.
    #[getter]
    fn share(&self) -> f64 {
        self.0.share
    }

    /// The list of preferred fits that it stands in.
    #[getter]
    fn source(&self) -> Source {
        Source(self.0.source)
    }

    fn __repr__(&self) -> String {
        let share = figure(self.0.share * 100.0, 0);
        format!("<RankedFit {}, {share} % of the window>", described(&self.0.fit))
    }
}

/// Preferred fits whose clearance always lies inside a window, best first.
///
/// The best uses the largest share of the window: its tolerances are the widest that still serve,
/// so it costs least to make. Equal shares come in the order of the lists, first choice before the
/// rest, H holes before h shafts.
///
/// Args:
///     nominal: Nominal size, above 0 to 3150 mm.
///     least_clearance: Least clearance on diameter that will do; negative is interference.
///     most_clearance: Most clearance on diameter that will do, above the least.
///
/// Returns:
///     list[RankedFit]: Empty where no preferred fit lies inside.
///
/// Raises:
///     UnitError, TextError: No lengths.
///     OutOfRangeError: A nominal size outside the standard, or a window that is none.
///
/// Source: ANSI B4.2-1978, ten preferred fits of each basis, and ISO 286-1:2010, fits with H
/// holes, both read once in a reprint; each result names its list.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> for found in hw.joint.fits_for("25 mm", "5 um", "45 um")[:2]:
///     ...     print(found)
///     <RankedFit 25 mm H7/g6, clearance: 7 to 41 µm, 85 % of the window>
///     <RankedFit 25 mm G7/h6, clearance: 7 to 41 µm, 85 % of the window>
#[pyfunction]
pub fn fits_for(
    nominal: Q<Length>,
    least_clearance: Q<Length>,
    most_clearance: Q<Length>,
) -> PyResult<Vec<RankedFit>> {
    let found = joint::fits_for(
        nominal.named("nominal")?,
        least_clearance.named("least_clearance")?,
        most_clearance.named("most_clearance")?,
    )?;
    Ok(found.into_iter().map(RankedFit).collect())
}

/// Standard tolerance factor, i = 0.45 ∛D + 0.001 D in µm with D in mm.
///
/// Args:
///     size: D, above 0 to 500 mm.
///
/// Returns:
///     The factor, a length.
///
/// Raises:
///     UnitError, TextError, OutOfRangeError: No length, or outside the range.
///
/// Source: ISO 286-1, as reprinted in Machine Drawing (Narayana), Table 15.4.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> print(f"{hw.joint.tolerance_factor('125 mm').to('um'):.3f~P}")
///     2.375 µm
#[pyfunction]
pub fn tolerance_factor(size: Q<Length>) -> PyResult<Out<Length>> {
    Ok(Out(joint::tolerance_factor(size.named("size")?)?))
}

/// Standard tolerance as the formula gives it; the printed table wins where they differ.
///
/// Args:
///     nominal: Nominal size, above 0 to 500 mm.
///     grade: `IT01`, `IT0`, `IT1` or `IT5` to `IT11`.
///
/// Returns:
///     The tolerance, a length.
///
/// Raises:
///     UnitError, TextError, OutOfRangeError: No length, outside the range, or another grade.
///
/// Source: ISO 286-1, as reprinted in Machine Drawing (Narayana), Table 15.4.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> print(f"{hw.joint.grade_by_formula('20 mm', 'IT6').to('um'):.0f~P}")
///     13 µm
#[pyfunction]
pub fn grade_by_formula(nominal: Q<Length>, grade: Text) -> PyResult<Out<Length>> {
    let grade = grade.named("grade", "grade", "IT7")?;
    Ok(Out(joint::grade_by_formula(nominal.named("nominal")?, &grade)?))
}

/// Fundamental deviation of a shaft as the formula gives it; the printed table wins where they differ.
///
/// Args:
///     nominal: Nominal size, above 0 to 500 mm.
///     letter: Letter of a shaft that has a formula at this size.
///
/// Returns:
///     The deviation, a length in whole µm.
///
/// Raises:
///     UnitError, TextError, OutOfRangeError: No length, outside the range, or another letter.
///
/// Source: ISO 286-1, as reprinted in Machine Drawing (Narayana), Table 15.4.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> print(f"{hw.joint.deviation_by_formula('2 mm', 'f').to('um'):.0f~P}")
///     -7 µm
#[pyfunction]
pub fn deviation_by_formula(nominal: Q<Length>, letter: Text) -> PyResult<Out<Length>> {
    let letter = letter.named("letter", "letter of a shaft", "f")?;
    Ok(Out(joint::deviation_by_formula(nominal.named("nominal")?, &letter)?))
}
