//! Drilling before a taper is bored, and seating the hub.

use pyo3::prelude::*;

use super::{Lengths, mm};
use crate::error::Error;
use crate::gauge;
use crate::python::quantity::{Out, Q};
use crate::python::rings::found;
use crate::python::taper::TaperIn;
use crate::python::wheel::Working;
use crate::units::Length;

/// One drill, and how far it may go.
#[pyclass(frozen, module = "hubwright._core")]
pub struct DrillStep(gauge::DrillStep);

found! {
    DrillStep(gauge::DrillStep) {
        /// Diameter of the drill, in mm.
        drill: Out<Length> = |of| Out(of.drill);
        /// How deep its full diameter may go from the large end, in mm.
        depth: Out<Length> = |of| Out(of.depth);
        /// Stock left on one side at that depth, in mm.
        stock_left: Out<Length> = |of| Out(of.stock_left);
        /// Stock left on one side at the large end, in mm.
        stock_at_large_end: Out<Length> = |of| Out(of.stock_at_large_end);
    }

    fn __repr__(&self) -> String {
        format!("<DrillStep {}, {} deep, {} left>", mm(self.0.drill), mm(self.0.depth), mm(self.0.stock_left))
    }
}

/// What `boring` found.
#[pyclass(frozen, module = "hubwright._core")]
pub struct Boring(gauge::BoringFound);

found! {
    Boring(gauge::BoringFound) {
        /// Diameter of the bore's large end, in mm.
        large_diameter: Out<Length> = |of| Out(of.large_diameter);
        /// The largest drill that may go through.
        through: DrillStep = |of| DrillStep(of.through);
        /// Larger drills for the wide part of the bore, smallest first; they only save boring.
        steps: Vec<DrillStep> = |of| of.steps.iter().copied().map(DrillStep).collect();
    }

    fn __repr__(&self) -> String {
        format!("<Boring {} through, {} larger>", mm(self.0.through.drill), self.0.steps.len())
    }
}

/// Drilling before a taper is bored: which drill, how deep, what is left on each side.
///
/// Args:
///     taper: The taper, as text or what `hubwright.joint.taper` gave.
///     small_diameter: Diameter of the bore's small end.
///     length: Length of the bore.
///     stock: Least stock to leave on one side, zero or above.
///     drills: The drills of the shop: a list of lengths, or an array with a unit.
///
/// Returns:
///     Boring: `.through`, `.steps`, `.large_diameter`.
///
/// Raises:
///     UnitError, TextError: No taper or no lengths.
///     MissingError: No drills.
///     OutOfRangeError: The smallest drill leaves too little.
///
/// Source: geometry; the stock to leave is yours.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> found = hw.gauge.boring(
///     ...     "3 in/ft", small_diameter="25 mm", length="40 mm", stock="0.5 mm", drills=["22 mm", "24 mm", "28 mm"],
///     ... )
///     >>> found
///     <Boring 24 mm through, 1 larger>
///     >>> found.steps[0]
///     <DrillStep 28 mm, 24 mm deep, 0.5 mm left>
#[pyfunction]
#[pyo3(signature = (taper, *, small_diameter, length, stock, drills))]
pub fn boring(
    taper: TaperIn,
    small_diameter: Q<Length>,
    length: Q<Length>,
    stock: Q<Length>,
    drills: Lengths,
) -> PyResult<Boring> {
    let (small, length) = (small_diameter.named("small_diameter")?, length.named("length")?);
    let bore = gauge::Boring::new(taper.named("taper")?, small, length, stock.named("stock")?);
    Ok(Boring(bore.drills(&drills.named("drills")?)?))
}

/// What `stand_off` found.
#[pyclass(frozen, module = "hubwright._core")]
pub struct StandOff(gauge::StandOffFound);

found! {
    StandOff(gauge::StandOffFound) {
        /// Gap between the hub's face and the shoulder by hand, in mm; below zero the faces meet first.
        stand_off: Out<Length> = |of| Out(of.stand_off);
        /// How far the hub travels as it is drawn up, in mm.
        draw_up: Out<Length> = |of| Out(of.draw_up);
        /// Gap that is left then, in mm.
        gap: Out<Length> = |of| Out(of.gap);
        /// Expanded uncertainty of stand-off and gap, 95 %, in mm.
        expanded: Out<Length> = |of| Out(of.expanded);
        /// Stand-off to make by hand, so that the least gap is left for certain, in mm.
        stand_off_to_make: Out<Length> = |of| Out(of.stand_off_to_make);
        /// Diameter of the bore at its face that makes it, in mm.
        bore_to_make: Out<Length> = |of| Out(of.bore_to_make);
        /// Whether the gap that is left is the least one or more, uncertainty taken off.
        clears: bool = |of| of.clears;
    }

    /// The steps, recomputed; the last one's result is `gap` in mm.
    fn working(&self) -> Working {
        Working(self.0.working())
    }

    fn __repr__(&self) -> String {
        let touches = if self.0.clears { "" } else { ", NOT CLEAR" };
        format!("<StandOff {} by hand, {} left{touches}>", mm(self.0.stand_off), mm(self.0.gap))
    }
}

/// How far a taper hub stands off its shoulder by hand, and what is left when it is drawn up.
///
/// Stand-off (D − d) / C, draw-up δ / C, with C the taper on diameter. Both cones are taken for straight and of
/// one angle.
///
/// Args:
///     taper: The taper of both, as text or what `hubwright.joint.taper` gave.
///     spindle_diameter: Diameter of the spindle's cone in the plane of its shoulder.
///     hub_diameter: Diameter of the hub's bore in the plane of its face.
///     interference: Interference on diameter to draw it up to; nothing by hand.
///     least_gap: Gap to leave in any case, beyond the uncertainty.
///     u_spindle: Standard uncertainty of the spindle's diameter; exact unless given.
///     u_hub: Standard uncertainty of the bore's diameter; exact unless given.
///
/// Returns:
///     StandOff: `.stand_off`, `.draw_up`, `.gap`, `.clears`, `.stand_off_to_make`, `.bore_to_make`.
///
/// Raises:
///     UnitError, TextError, OutOfRangeError: No taper or no lengths. A hub that touches is no error.
///
/// Source: geometry; uncertainties by JCGM 100, from memory.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> hw.gauge.stand_off(
///     ...     "1:4", spindle_diameter="40 mm", hub_diameter="39.98 mm", interference="12.5 um", least_gap="0.02 mm",
///     ... )
///     <StandOff 0.08 mm by hand, 0.03 mm left>
#[pyfunction]
#[pyo3(signature = (taper, *, spindle_diameter, hub_diameter, interference = None, least_gap = None, u_spindle = None, u_hub = None))]
pub fn stand_off(
    taper: TaperIn,
    spindle_diameter: Q<Length>,
    hub_diameter: Q<Length>,
    interference: Option<Q<Length>>,
    least_gap: Option<Q<Length>>,
    u_spindle: Option<Q<Length>>,
    u_hub: Option<Q<Length>>,
) -> PyResult<StandOff> {
    let (spindle, hub) =
        (spindle_diameter.named("spindle_diameter")?, hub_diameter.named("hub_diameter")?);
    let or_none = |given: Option<Q<Length>>, name: &str| -> Result<Length, Error> {
        Ok(given.map(|length| length.named(name)).transpose()?.unwrap_or_default())
    };
    let seat = gauge::StandOff::new(taper.named("taper")?, spindle, hub)
        .with_interference(or_none(interference, "interference")?)
        .with_least_gap(or_none(least_gap, "least_gap")?)
        .with_uncertainties(or_none(u_spindle, "u_spindle")?, or_none(u_hub, "u_hub")?);
    Ok(StandOff(seat.solve()?))
}
