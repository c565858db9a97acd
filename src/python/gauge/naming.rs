//! Naming tapers, and tapers by two disks.

use pyo3::prelude::*;

use super::{ConeIn, MeasuredCone, shown};
use crate::gauge::{self, NamingOutcome};
use crate::python::quantity::{Out, Q};
use crate::python::rings::found;
use crate::python::taper::{Taper, TaperIn};
use crate::python::words::WordOut;
use crate::units::{Angle, Length};

/// A standard taper that a measured cone can be.
#[pyclass(frozen, module = "hubwright._core")]
pub struct TaperCandidate(gauge::Candidate);

found! {
    TaperCandidate(gauge::Candidate) {
        /// Its name.
        name: String = |of| of.name();
        /// The taper.
        taper: Taper = |of| Taper(of.taper);
        /// Measured half angle less that of the taper, in degrees.
        off: Out<Angle> = |of| Out(of.off);
        /// Diameter at the gauge plane, in mm; None where the taper has no number.
        gauge_diameter: Option<Out<Length>> = |of| of.gauge_diameter.map(Out);
        /// Position of the gauge plane in those of the readings, in mm.
        gauge_plane: Option<Out<Length>> = |of| of.gauge_plane.map(Out);
    }

    fn __repr__(&self) -> String {
        format!("<TaperCandidate {}, {} off>", self.0.name(), shown(self.0.off))
    }
}

/// What `name_taper` found.
#[pyclass(frozen, module = "hubwright._core")]
pub struct TaperNaming(gauge::Naming);

found! {
    TaperNaming(gauge::Naming) {
        /// One taper, not to be told, or none.
        outcome: WordOut<NamingOutcome> = |of| WordOut(of.outcome);
        /// The tapers that fit, nearest first.
        candidates: Vec<TaperCandidate> = |of| of.candidates.iter().copied().map(TaperCandidate).collect();
        /// The nearest of all, whether it fits or not.
        nearest: TaperCandidate = |of| TaperCandidate(of.nearest);
        /// How far off a taper's half angle may be to fit, in degrees.
        allowed: Out<Angle> = |of| Out(of.allowed);
        /// Position at which the cone has the gauge diameter asked for, in mm.
        gauge_plane: Option<Out<Length>> = |of| of.gauge_plane.map(Out);
        /// Its standard uncertainty, in mm.
        u_gauge_plane: Option<Out<Length>> = |of| of.u_gauge_plane.map(Out);
        /// The cone as measured: the numbers to copy.
        cone: MeasuredCone = |of| MeasuredCone(of.asked.cone);
        /// The names, or the numbers to copy, in words.
        says: String = |of| of.says();
    }

    fn __str__(&self) -> String {
        self.0.says()
    }

    fn __repr__(&self) -> String {
        let names: Vec<_> = self.0.candidates.iter().map(gauge::Candidate::name).collect();
        let colon = if names.is_empty() { "" } else { ": " };
        format!("<TaperNaming {}{colon}{}>", self.0.outcome, names.join(", "))
    }
}

/// Which standard tapers a measured cone can be, nearest first; or that none fits, with the numbers to copy.
///
/// A taper fits when its half angle is no further off than `made_within` and three standard uncertainties.
/// One is named only where it is no further off than `made_within`. Numbered tapers must fit by size too.
///
/// Args:
///     measured: What `over_rollers`, `two_balls`, `two_diameters` or `cone_fit` gave.
///     made_within: How far the half angle of a standard taper may be made wrong.
///     gauge_diameter: Diameter of a gauge plane that is looked for.
///
/// Returns:
///     TaperNaming: `.outcome`, `.candidates`, `.says`, `.gauge_plane`.
///
/// Raises:
///     UnitError: Nothing that was measured.
///     OutOfRangeError: An allowance below zero, or a gauge diameter that is not above it.
///
/// Source: the tables of standard tapers; what share of a numbered taper counts as its size is common practice,
/// no source.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> nose = hw.gauge.two_diameters(
///     ...     small_diameter="31 mm", large_diameter="38.5 mm", apart="30 mm", u_diameter="2 um", u_apart="5 um",
///     ... )
///     >>> hw.gauge.name_taper(nose, made_within="0.01 deg")
///     <TaperNaming one taper: 1:4, 3 in/ft>
///     >>> own = hw.gauge.two_diameters(
///     ...     small_diameter="31 mm", large_diameter="37.8 mm", apart="30 mm", u_diameter="2 um", u_apart="5 um",
///     ... )
///     >>> hw.gauge.name_taper(own, made_within="0.01 deg")
///     <TaperNaming none fits: copy it>
#[pyfunction]
#[pyo3(signature = (measured, *, made_within, gauge_diameter = None))]
pub fn name_taper(
    measured: ConeIn,
    made_within: Q<Angle>,
    gauge_diameter: Option<Q<Length>>,
) -> PyResult<TaperNaming> {
    let mut asked =
        gauge::NameTaper::new(measured.named("measured")?, made_within.named("made_within")?);
    if let Some(diameter) = gauge_diameter {
        asked = asked.with_gauge_diameter(diameter.named("gauge_diameter")?);
    }
    Ok(TaperNaming(asked.solve()?))
}

/// The taper of the two straightedges that touch two disks, sin α = (D − d) / (2 C).
///
/// Args:
///     small: Diameter of the small disk.
///     large: Diameter of the large disk.
///     centres_apart: Distance of their centres.
///
/// Returns:
///     Taper: `.slant_of_one_side` is the slant where one side is square to something.
///
/// Raises:
///     UnitError, TextError, OutOfRangeError: No lengths, disks of one size, or one inside the other.
///
/// Source: Machinery's Handbook, 31st edition, p. 701.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> print(f"{hw.gauge.disk_taper('1 in', '1-1/2 in', '5 in').in_per_ft:.4f} in/ft")
///     1.2015 in/ft
#[pyfunction]
pub fn disk_taper(small: Q<Length>, large: Q<Length>, centres_apart: Q<Length>) -> PyResult<Taper> {
    let (small, large) = (small.named("small")?, large.named("large")?);
    Ok(Taper(gauge::disk_taper(small, large, centres_apart.named("centres_apart")?)?))
}

/// How far apart the centres of two disks must be for straightedges on both to make a taper.
///
/// Args:
///     taper: The taper, as text or what `hubwright.joint.taper` gave.
///     small: Diameter of the small disk.
///     large: Diameter of the large disk.
///
/// Returns:
///     The distance, a length.
///
/// Raises:
///     UnitError, TextError, OutOfRangeError: No taper, no lengths, or disks of one size.
///
/// Source: Machinery's Handbook, 31st edition, p. 701.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> print(f"{hw.gauge.disk_distance('3/4 in/ft', '1-1/4 in', '1-1/2 in').m_as('in'):.3f} in")
///     4.002 in
#[pyfunction]
pub fn disk_distance(taper: TaperIn, small: Q<Length>, large: Q<Length>) -> PyResult<Out<Length>> {
    let (small, large) = (small.named("small")?, large.named("large")?);
    Ok(Out(gauge::disk_distance(&taper.named("taper")?, small, large)?))
}
