//! Tapers by name: part of `hubwright.joint`.

use pyo3::prelude::*;

#[cfg(feature = "stubs")]
use pyo3::{inspect::PyStaticExpr, type_hint_identifier};

use super::joint::{Text, mm};
use super::quantity::{Out, Q, plain};
use super::rings::found;
use super::spanner::Count;
use super::verdict::Source;
use super::wheel::Working;
use crate::error::{Error, ErrorKind, cut};
use crate::joint;
use crate::tables::tapers::machine::Machine;
use crate::units::{Angle, Length, degree, figure, inch};

/// A cone: what `taper` found.
#[pyclass(frozen, eq, module = "hubwright._core")]
#[derive(Clone, Copy, PartialEq)]
pub struct Taper(pub(super) joint::Taper);

fn size(of: &joint::Taper, get: fn(&Machine) -> Option<f64>) -> Option<Out<Length>> {
    of.machine.and_then(get).map(|inches| Out(Length::new::<inch>(inches)))
}

found! {
    Taper(joint::Taper) {
        /// Half of the included angle, in degrees: what the top slide is set to.
        half_angle: Out<Angle> = |of| Out(of.half_angle);
        /// The included angle, in degrees.
        cone_angle: Out<Angle> = |of| Out(of.cone_angle());
        /// The half angle in degrees, minutes and seconds.
        half_angle_text: String = |of| joint::degrees_minutes_seconds(of.half_angle);
        /// Change of radius over length.
        per_side: f64 = |of| of.per_side;
        /// Change of diameter over length.
        on_diameter: f64 = |of| of.on_diameter();
        /// X of the taper 1:X.
        one_in: f64 = |of| of.one_in();
        /// Inches on diameter a foot.
        in_per_ft: f64 = |of| of.in_per_ft();
        /// Slant of one flank where the other one is square to something: the tangent of the included angle.
        slant_of_one_side: f64 = |of| of.slant_of_one_side();
        /// Series and number; None where it was not asked for by number.
        machine: Option<String> = |of| of.machine.map(|machine| format!("{} {}", machine.series, machine.number));
        /// Diameter of the large end of a numbered taper, in mm: the gauge diameter of metric and steep ones.
        large_diameter: Option<Out<Length>> = |of| size(of, |machine| Some(machine.large));
        /// Diameter of its small end, in mm.
        small_diameter: Option<Out<Length>> = |of| size(of, |machine| machine.small);
        /// From one to the other, in mm.
        length: Option<Out<Length>> = |of| size(of, |machine| machine.length);
        /// Where it comes from.
        source: Source = |of| Source(of.source);
    }

    /// Diameter at a plane a distance toward the large end from one where it is known.
    ///
    /// Args:
    ///     diameter: Known diameter, above zero.
    ///     distance: How far toward the large end; negative toward the small end.
    ///
    /// Returns:
    ///     The diameter, a length.
    ///
    /// Raises:
    ///     UnitError, TextError, OutOfRangeError: No lengths, or a plane beyond the apex.
    ///
    /// Examples:
    ///     >>> import hubwright as hw
    ///     >>> print(f"{hw.joint.taper('1:5').diameter_at('30 mm', '35 mm'):.3f~P}")
    ///     37.000 mm
    fn diameter_at(&self, diameter: Q<Length>, distance: Q<Length>) -> PyResult<Out<Length>> {
        Ok(Out(self.0.diameter_at(diameter.named("diameter")?, distance.named("distance")?)?))
    }

    /// How far two cones of this taper move along the axis for a change of diameter.
    ///
    /// Args:
    ///     diameter_change: Change on diameter; its sign is kept.
    ///
    /// Returns:
    ///     The shift, a length.
    ///
    /// Raises:
    ///     UnitError, TextError, OutOfRangeError: No length.
    ///
    /// Examples:
    ///     >>> import hubwright as hw
    ///     >>> print(f"{hw.joint.taper('1:4').axial_shift('0.02 mm'):.2f~P}")
    ///     0.08 mm
    fn axial_shift(&self, diameter_change: Q<Length>) -> PyResult<Out<Length>> {
        Ok(Out(self.0.axial_shift(diameter_change.named("diameter_change")?)?))
    }

    /// The steps, recomputed; the last one's result is `cone_angle` in degrees.
    fn working(&self) -> Working {
        Working(self.0.working())
    }

    fn __repr__(&self) -> String {
        let half = figure(self.0.half_angle.get::<degree>(), 6);
        let name = self.machine().map_or(String::new(), |name| format!("{name}, "));
        format!("<Taper {name}1:{}, half angle {half}°>", figure(self.0.one_in(), 4))
    }
}

/// Change of diameter over length: a number, a taper, or the text that names one.
pub(super) struct RatioIn(Result<f64, Error>);

impl RatioIn {
    pub(super) fn named(self, argument: &str) -> Result<f64, Error> {
        self.0.map_err(|error| error.named(argument))
    }
}

impl<'py> FromPyObject<'_, 'py> for RatioIn {
    type Error = PyErr;
    #[cfg(feature = "stubs")]
    const INPUT_TYPE: PyStaticExpr = type_hint_identifier!("hubwright._typing", "RatioLike");

    fn extract(object: Borrowed<'_, 'py, PyAny>) -> PyResult<Self> {
        match plain(&object) {
            Ok(ratio) => Ok(Self(Ok(ratio))),
            Err(_) => {
                let taper: TaperIn = object.extract()?;
                Ok(Self(taper.named("taper").map(|taper| taper.on_diameter())))
            }
        }
    }
}

/// A taper, or the text that names one.
pub(super) struct TaperIn(pub(super) Result<joint::Taper, Error>);

impl TaperIn {
    pub(super) fn named(self, argument: &str) -> Result<joint::Taper, Error> {
        self.0.map_err(|error| match error.argument() {
            Some("taper" | "half_angle") => error.named(argument),
            _ => error,
        })
    }
}

impl<'py> FromPyObject<'_, 'py> for TaperIn {
    type Error = PyErr;
    #[cfg(feature = "stubs")]
    const INPUT_TYPE: PyStaticExpr = type_hint_identifier!("hubwright._typing", "TaperLike");

    fn extract(object: Borrowed<'_, 'py, PyAny>) -> PyResult<Self> {
        if let Ok(taper) = object.cast::<Taper>() {
            return Ok(Self(Ok(taper.get().0)));
        }
        if let Ok(text) = object.extract::<String>() {
            return Ok(Self(joint::taper(&text)));
        }
        let given = object.repr().map_or_else(|_| "an object".into(), |r| cut(&r.to_string()));
        Ok(Self(Err(ErrorKind::WrongUnit {
            argument: "taper".into(),
            given,
            kind: "taper",
            why: "it is neither text nor a taper",
            hint: "give text like \"1:5\" or \"3 in/ft\", or what `taper` gave".into(),
        }
        .into())))
    }
}

/// A taper from its name or number.
///
/// Args:
///     name: A ratio (`"1:5"`, `"7/24"`), a change of diameter over a length (`"3 in/ft"`, `"0.05 in/in"`,
///         `"5 %"`), an angle that says which it is (`"8 deg 30 min included"`, `"4.25 deg half"`), or a series
///         and number (`"Morse 3"`, `"B&S 9"`, `"Jarno 8"`, `"Jacobs 33"`, `"metric 80"`, `"steep 40"`).
///
/// Returns:
///     Taper: `.half_angle`, `.cone_angle`, `.in_per_ft`, `.per_side`, `.on_diameter`, `.diameter_at()`,
///     `.axial_shift()` and more.
///
/// Raises:
///     UnitError: No text.
///     TextError: Text that is no taper, an angle that doesn't say whether it is the included or the half one,
///         or a number that its series lacks.
///     OutOfRangeError: A cylinder (under 1:10000) or a plate (over 120° included).
///
/// Source: ISO 1119 as adopted in GOST R 53440-2009, Table 1; tables of standard tapers for the series. 7:24
/// and the gauge diameters of metric and steep tapers are from memory: `.source` says so.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> hw.joint.taper("1:5")
///     <Taper 1:5, half angle 5.710593°>
///     >>> hw.joint.taper("Morse 3")
///     <Taper Morse 3, 1:19.9203, half angle 1.437822°>
///     >>> hw.joint.taper("3 in/ft").half_angle_text
///     '7° 7\' 30.1"'
#[pyfunction]
pub fn taper(name: Text) -> PyResult<Taper> {
    Ok(Taper(joint::taper(&name.named("name", "taper", "1:5")?).map_err(|e| e.named("name"))?))
}

/// A tolerance grade of a cone's angle at one length, from memory: it may caution, never refuse.
#[pyclass(frozen, module = "hubwright._core")]
pub struct AngleGrade(joint::AngleGrade);

found! {
    AngleGrade(joint::AngleGrade) {
        /// AT1 to AT12, as a number.
        grade: u8 = |of| of.grade;
        /// Length of the cone, in mm.
        length: Out<Length> = |of| Out(of.length);
        /// Tolerance of the included angle, in degrees.
        cone_angle: Out<Angle> = |of| Out(of.cone_angle);
        /// The same as a difference of diameter over the length, in mm.
        on_diameter: Out<Length> = |of| Out(of.on_diameter);
        /// Where it comes from.
        source: Source = |of| Source(of.source);
    }

    fn __repr__(&self) -> String {
        let of = &self.0;
        format!("<AngleGrade AT{} over {}: {} on diameter>", of.grade, mm(of.length), mm(of.on_diameter))
    }
}

/// Tolerance of a cone's angle by its grade and length.
///
/// Args:
///     grade: 1 to 12, for AT1 to AT12.
///     length: Length of the cone, over 6 to 630 mm.
///
/// Returns:
///     AngleGrade: `.cone_angle` and `.on_diameter`.
///
/// Raises:
///     UnitError, TextError, OutOfRangeError: No length, or another grade or length.
///
/// Source: ISO 1947, from memory: it may caution, never refuse.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> hw.joint.taper_grade(7, "50 mm")
///     <AngleGrade AT7 over 50 mm: 0.01575 mm on diameter>
#[pyfunction]
pub fn taper_grade(grade: Count, length: Q<Length>) -> PyResult<AngleGrade> {
    let grade = u8::try_from(grade.named("grade")?).unwrap_or(u8::MAX);
    Ok(AngleGrade(joint::taper_grade(grade, length.named("length")?)?))
}

/// The finest grade whose tolerance holds an error of the cone's included angle.
///
/// Args:
///     cone_error: Error of the included angle: twice that of the half angle.
///     length: Length of the cone, over 6 to 630 mm.
///
/// Returns:
///     AngleGrade: None when even AT12 is exceeded.
///
/// Raises:
///     UnitError, TextError, OutOfRangeError: No angle, no length, or another length.
///
/// Source: ISO 1947, from memory: it may caution, never refuse.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> hw.joint.finest_grade("0.01 deg", "40 mm")
///     <AngleGrade AT6 over 40 mm: 0.01 mm on diameter>
#[pyfunction]
pub fn finest_grade(cone_error: Q<Angle>, length: Q<Length>) -> PyResult<Option<AngleGrade>> {
    let found = joint::finest_grade(cone_error.named("cone_error")?, length.named("length")?)?;
    Ok(found.map(AngleGrade))
}

/// Names of the standard cones without a size of their own, each as `taper` takes it.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> hw.joint.standard_tapers()[:3]
///     ['1:3', '1:4', '1:5']
#[pyfunction]
pub fn standard_tapers() -> Vec<&'static str> {
    joint::Taper::standard().map(|(name, _)| name).collect()
}
