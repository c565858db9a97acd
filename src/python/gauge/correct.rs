//! How far and to which side the slide has to go.

use pyo3::prelude::*;

#[cfg(feature = "stubs")]
use pyo3::{inspect::PyStaticExpr, type_hint_identifier};

use super::{ConeIn, shown};
use crate::error::{Error, ErrorKind};
use crate::gauge::{self, Along, TaperPart, Toward};
use crate::joint;
use crate::python::quantity::{Out, Q};
use crate::python::rings::found;
use crate::python::taper::TaperIn;
use crate::python::wheel::Working;
use crate::python::words::{W, WordOut};
use crate::units::{Angle, Length};

/// What `correct_slide` found.
#[pyclass(frozen, module = "hubwright._core")]
pub struct SlideCorrection(gauge::SlideCorrectionFound);

found! {
    SlideCorrection(gauge::SlideCorrectionFound) {
        /// Half angle cut less half angle wanted, in degrees.
        error: Out<Angle> = |of| Out(of.error);
        /// Its standard uncertainty, in degrees.
        u_error: Out<Angle> = |of| Out(of.u_error);
        /// Its expanded uncertainty, 95 %, in degrees.
        expanded_error: Out<Angle> = |of| Out(of.expanded_error);
        /// The error as a rise on one side over the length, in mm; below zero where the angle is too small.
        per_side: Out<Length> = |of| Out(of.per_side);
        /// Its expanded uncertainty, in mm.
        expanded_per_side: Out<Length> = |of| Out(of.expanded_per_side);
        /// To which side to move the slide: `smaller`, `larger`, or `stay` within the uncertainty.
        toward: WordOut<Toward> = |of| WordOut(of.toward);
        /// How far to move it at the pivot radius, in mm; None without one.
        tap: Option<Out<Length>> = |of| of.tap.map(Out);
        /// Its expanded uncertainty, in mm.
        expanded_tap: Option<Out<Length>> = |of| of.expanded_tap.map(Out);
        /// What to do, in a sentence.
        advice: String = |of| of.advice();
    }

    /// The steps, recomputed; the last one's result is `error` in degrees.
    fn working(&self) -> Working {
        Working(self.0.working())
    }

    fn __str__(&self) -> String {
        self.0.advice()
    }

    fn __repr__(&self) -> String {
        let of = &self.0;
        format!("<SlideCorrection {} ± {}, {}>", shown(of.error), shown(of.expanded_error), of.toward)
    }
}

/// What is wanted: a taper by name, or a cone that was measured.
pub(in crate::python) enum Wanted {
    Taper(joint::Taper),
    Cone(gauge::MeasuredCone),
}

/// That on its way in.
pub(in crate::python) struct WantedIn(Result<Wanted, Error>);

impl<'py> FromPyObject<'_, 'py> for WantedIn {
    type Error = PyErr;
    #[cfg(feature = "stubs")]
    const INPUT_TYPE: PyStaticExpr = type_hint_identifier!("hubwright._typing", "WantedLike");

    fn extract(object: Borrowed<'_, 'py, PyAny>) -> PyResult<Self> {
        if let Ok(cone) = object.extract::<ConeIn>()?.named("wanted") {
            return Ok(Self(Ok(Wanted::Cone(cone))));
        }
        Ok(Self(object.extract::<TaperIn>()?.named("wanted").map(Wanted::Taper)))
    }
}

fn missing(argument: &str, why: &str) -> Error {
    let (argument, why) = (argument.into(), why.into());
    let hint = "give rise_read, rise_wanted, travel, along and u_rise; or wanted with measured, or with \
                small_diameter, large_diameter, apart, u_diameter and u_apart";
    ErrorKind::Missing { argument, why, hint: hint.into() }.into()
}

/// An argument that goes with others.
fn needed<T>(given: Option<T>, argument: &str, with: &str) -> Result<T, Error> {
    given.ok_or_else(|| missing(argument, &format!("it belongs with {with}")))
}

/// From what a slide cuts and what is wanted to how far it has to go, and to which side.
///
/// What was cut is given in one of three ways: the rise of an indicator read and wanted over a travel; two
/// diameters of a test cut; or a measured cone. An error no greater than its expanded uncertainty is no reason to
/// move anything.
///
/// Args:
///     rise_read: Rise read over the travel.
///     rise_wanted: Rise wanted, as `slide_setting` has it or as read off an original.
///     travel: Travel of the indicator.
///     along: `"flank"` (the top slide moves) or `"axis"` (the saddle moves).
///     u_rise: Standard uncertainty of the difference of the two rises.
///     small_diameter: Small diameter of a test cut.
///     large_diameter: Its large diameter.
///     apart: Distance of their planes.
///     u_diameter: Standard uncertainty of a diameter.
///     u_apart: Standard uncertainty of the distance.
///     measured: A measured cone instead of the two diameters.
///     wanted: The taper wanted (text, or what `hubwright.joint.taper` gave), or the measured cone it has to fit.
///     length: Length over which the error is told, such as that of the seat; the travel, the distance of the
///         planes or the measured span unless given.
///     pivot_radius: From the slide's pivot to where it is tapped and indicated.
///     part: `"hub"` or `"spindle"`, for the words.
///
/// Returns:
///     SlideCorrection: `.error`, `.per_side`, `.toward`, `.tap`, `.advice`.
///
/// Raises:
///     UnitError, TextError, OutOfRangeError: No quantities of their kind, a cylinder, a plate, the wrong end named.
///     MissingError: Arguments that belong together and came alone.
///
/// Source: geometry; uncertainties by JCGM 100, from memory.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> found = hw.gauge.correct_slide(
///     ...     small_diameter="30 mm", large_diameter="35.024 mm", apart="40 mm", u_diameter="2.1 um",
///     ...     u_apart="0 mm", wanted="1:8", pivot_radius="120 mm", part="hub",
///     ... )
///     >>> print(found)
///     hub too open by 12 µm per side over 40 mm (± 3); move the slide toward the smaller angle; tap 35.9 µm (± 8.9) at 120 mm from the pivot
#[pyfunction]
#[pyo3(signature = (*, rise_read = None, rise_wanted = None, travel = None, along = None, u_rise = None, small_diameter = None, large_diameter = None, apart = None, u_diameter = None, u_apart = None, measured = None, wanted = None, length = None, pivot_radius = None, part = None))]
#[allow(clippy::too_many_arguments, reason = "one keyword a figure")]
pub fn correct_slide(
    rise_read: Option<Q<Length>>,
    rise_wanted: Option<Q<Length>>,
    travel: Option<Q<Length>>,
    along: Option<W<Along>>,
    u_rise: Option<Q<Length>>,
    small_diameter: Option<Q<Length>>,
    large_diameter: Option<Q<Length>>,
    apart: Option<Q<Length>>,
    u_diameter: Option<Q<Length>>,
    u_apart: Option<Q<Length>>,
    measured: Option<ConeIn>,
    wanted: Option<WantedIn>,
    length: Option<Q<Length>>,
    pivot_radius: Option<Q<Length>>,
    part: Option<W<TaperPart>>,
) -> PyResult<SlideCorrection> {
    let ways = [
        rise_read.is_some(),
        small_diameter.is_some() || large_diameter.is_some(),
        measured.is_some(),
    ];
    if ways.iter().filter(|way| **way).count() != 1 {
        return Err(missing(
            "rise_read",
            "what was cut is given in one way of three, not in none or several",
        )
        .into());
    }
    let mut correction = if let Some(read) = rise_read {
        let with = "rise_read";
        let rises = [
            read.named("rise_read")?,
            needed(rise_wanted, "rise_wanted", with)?.named("rise_wanted")?,
        ];
        let travel = needed(travel, "travel", with)?.named("travel")?;
        let along = needed(along, "along", with)?.named("along")?;
        let u_rise = needed(u_rise, "u_rise", with)?.named("u_rise")?;
        gauge::SlideCorrection::from_rises(rises, travel, along, u_rise)?
    } else {
        let cone = if let Some(measured) = measured {
            measured.named("measured")?
        } else {
            let with = "the other diameter";
            let small = needed(small_diameter, "small_diameter", with)?.named("small_diameter")?;
            let large = needed(large_diameter, "large_diameter", with)?.named("large_diameter")?;
            let with = "two diameters";
            let apart = needed(apart, "apart", with)?.named("apart")?;
            let u_diameter = needed(u_diameter, "u_diameter", with)?.named("u_diameter")?;
            let u_apart = needed(u_apart, "u_apart", with)?.named("u_apart")?;
            let readings = gauge::TwoDiameters::new([small, large], apart);
            readings.with_uncertainties(u_diameter, u_apart).solve()?.cone
        };
        let span = cone.span[1] - cone.span[0];
        match needed(wanted, "wanted", "what was cut")?.0? {
            Wanted::Taper(taper) => gauge::SlideCorrection::from_cone(&cone, &taper, span),
            Wanted::Cone(wanted) => gauge::SlideCorrection::from_cones(&cone, &wanted, span),
        }
    };
    if let Some(length) = length {
        correction = correction.with_length(length.named("length")?);
    }
    if let Some(radius) = pivot_radius {
        correction = correction.with_pivot_radius(radius.named("pivot_radius")?);
    }
    if let Some(part) = part {
        correction = correction.with_part(part.named("part")?);
    }
    Ok(SlideCorrection(correction.solve()?))
}
