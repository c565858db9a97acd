//! Seats on tapers: part of `hubwright.joint`.

use std::sync::Arc;

use pyo3::prelude::*;
use pyo3::types::PyDict;

use super::column::column;
use super::pushed::{
    AngleTolerance, PrintExpected, PrintRead, Pushed, RingSlices, Span, TiltRunOut, span,
};
use super::quantity::{Crossing, Out, Plain, Q, pint_quantity};
use super::rings::Of;
use super::taper::RatioIn;
use super::words::W;
use crate::joint::{self, Print};
use crate::units::{Angle, Force, Length, Pressure, Shop, Torque, newton, radian};

/// A seat whose compliance is known: what `seat` found. Ask it as often as you like.
#[pyclass(frozen, module = "hubwright._core")]
pub struct SeatFound(Arc<joint::SeatFound>);

/// Shares, in the units that results come in.
fn array<'py>(py: Python<'py>, values: Vec<f64>) -> PyResult<Bound<'py, PyAny>> {
    py.import("numpy")?.call_method1("array", (values, "float64"))
}

#[pymethods]
impl SeatFound {
    /// Friction in it.
    #[getter]
    fn friction(&self) -> f64 {
        self.0.friction()
    }

    /// Half angle of the taper.
    #[getter]
    fn half_angle(&self) -> Out<Angle> {
        Out(self.0.seat().half_angle())
    }

    /// Diameter at the large end.
    #[getter]
    fn large_diameter(&self) -> Out<Length> {
        Out(self.0.seat().large_diameter())
    }

    /// Ends of the segments along the seat, from the small end.
    #[getter]
    fn segments(&self) -> Vec<Span> {
        self.0.segments().into_iter().map(span).collect()
    }

    /// What a force does: which end carries, how much of the length, and what it holds.
    ///
    /// Args:
    ///     force: Force of the nut, above zero.
    ///     mismatch: Half angle of the hub less that of the spindle, up to 0.5 deg either way: above zero
    ///         the hub is too open and the small end carries.
    ///
    /// Returns:
    ///     Pushed: `.carries`, `.contact`, `.force_for_95`, `.force_to_close`, `.draw_up`, `.slip_torque`,
    ///     `.release_force`, `.end_pressure`, `.hub_hoop`, and `.along()` for the pressure along the seat.
    ///
    /// Raises:
    ///     UnitError, TextError, OutOfRangeError: As for `hubwright.wheel.rim_speed`; yielding is no error.
    fn push(&self, force: Q<Force>, mismatch: Q<Angle>) -> PyResult<Pushed> {
        let (force, mismatch) = (force.named("force")?, mismatch.named("mismatch")?);
        Ok(Pushed(self.0.push(force, mismatch)?, self.0.clone()))
    }

    /// `push` of every row of two columns, bit for bit, on as many threads as the machine has.
    ///
    /// Rows that `push` would refuse come out as NaN and as an empty text.
    ///
    /// Args:
    ///     force: Forces: a pint array, or a NumPy array, buffer or Arrow column with its unit in `units`.
    ///     mismatch: Mismatches, likewise.
    ///     units: Units of the columns that carry none, such as `{"force": "kN", "mismatch": "arcmin"}`.
    ///
    /// Returns:
    ///     A dict of columns: `carries` (texts), `contact` and `touching` (arrays), and pint arrays
    ///     `force_for_95`, `force_to_close`, `draw_up`, `slip_torque`, `release_force`, `end_pressure`,
    ///     `peak_pressure`, `hub_hoop`. NaN stands where no force closes it, too.
    ///
    /// Raises:
    ///     UnitError: A column without a unit, or with one of another kind.
    ///     TableError: Columns of unlike length.
    #[pyo3(signature = (force, mismatch, *, units: "dict[str, str] | None" = None) -> "dict[str, Any]")]
    fn push_column<'py>(
        &self,
        py: Python<'py>,
        force: &Bound<'py, PyAny>,
        mismatch: &Bound<'py, PyAny>,
        units: Option<&Bound<'py, PyDict>>,
    ) -> PyResult<Bound<'py, PyDict>> {
        let forces = column::<Force>(force, "force", units, |f| f.get::<newton>())?;
        let angles = column::<Angle>(mismatch, "mismatch", units, |a| a.get::<radian>())?;
        let forces: Vec<_> = forces.values.into_iter().map(Force::new::<newton>).collect();
        let angles: Vec<_> = angles.values.into_iter().map(Angle::new::<radian>).collect();
        let rows = py.detach(|| self.0.push_column(&forces, &angles))?;
        let rows: Vec<_> = rows.into_iter().map(Result::ok).collect();
        let each = |of: fn(&joint::Pushed) -> Option<f64>| {
            let value = |row: &Option<joint::Pushed>| row.as_ref().and_then(of).unwrap_or(f64::NAN);
            rows.iter().map(value).collect::<Vec<_>>()
        };
        let all = PyDict::new(py);
        let carries =
            |row: &Option<joint::Pushed>| row.map_or(String::new(), |row| row.carries.to_string());
        all.set_item("carries", rows.iter().map(carries).collect::<Vec<_>>())?;
        all.set_item("contact", array(py, each(|row| Some(row.contact)))?)?;
        all.set_item("touching", array(py, each(|row| Some(row.touching)))?)?;
        let set = |name: &str, values: Vec<f64>, unit: &str| {
            all.set_item(name, pint_quantity(py, array(py, values)?, unit)?)
        };
        set("force_for_95", each(|row| row.force_for_95.map(Force::to_out)), Force::OUT)?;
        set("force_to_close", each(|row| row.force_to_close.map(Force::to_out)), Force::OUT)?;
        set("draw_up", each(|row| Some(row.draw_up.to_out())), Length::OUT)?;
        set("slip_torque", each(|row| Some(row.slip_torque.to_out())), Torque::OUT)?;
        set("release_force", each(|row| Some(row.release_force.to_out())), Force::OUT)?;
        set("end_pressure", each(|row| Some(row.end_pressure.to_out())), Pressure::OUT)?;
        set("peak_pressure", each(|row| Some(row.peak_pressure.to_out())), Pressure::OUT)?;
        set("hub_hoop", each(|row| Some(row.hub_hoop.to_out())), Pressure::OUT)?;
        Ok(all)
    }

    /// Force that closes a share of the length against a mismatch; None when none does.
    ///
    /// Args:
    ///     share: Share of the length, above 0 and up to 1.
    ///     mismatch: Half angle of the hub less that of the spindle.
    ///
    /// A nut cannot cure an angle: this says how much it would take.
    fn force_for(&self, share: Plain, mismatch: Q<Angle>) -> PyResult<Option<Out<Force>>> {
        let (share, mismatch) = (share.named("share")?, mismatch.named("mismatch")?);
        Ok(self.0.force_for(share, mismatch)?.map(Out))
    }

    /// How much the half angles may differ, so that a force keeps a share of the length in contact.
    ///
    /// Args:
    ///     force: Force of the nut, above zero.
    ///     share: Share of the length, above 0 and up to 1.
    ///
    /// Returns:
    ///     AngleTolerance: `.closed_by`; the hub is never more open than the spindle.
    fn angle_tolerance(&self, force: Q<Force>, share: Plain) -> PyResult<AngleTolerance> {
        let (force, share) = (force.named("force")?, share.named("share")?);
        Ok(AngleTolerance(self.0.angle_tolerance(force, share)?))
    }

    /// The mismatch that a print of marking paste shows.
    ///
    /// Args:
    ///     print: What it looks like: "small end" or "large end" for a full ring from there, "whole length",
    ///         "three patches", "one patch", "middle" or "both ends".
    ///     film: Thickness of the paste; 1 to 5 um is usual, and the mismatch goes with it.
    ///     print_length: Length of a ring, along the surface.
    ///     force: Force along the axis while it was printed; none unless given.
    ///
    /// Returns:
    ///     PrintRead: `.mismatch` of a ring from one end, `.bounds` of a print over the whole length, `.says` of any.
    ///
    /// Raises:
    ///     MissingError: A ring without a length.
    ///     OutOfRangeError: A ring longer than the seat, or shorter than film and force make it.
    ///
    /// Source: common practice, no source, for what prints mean; geometry and contact for the figures.
    #[pyo3(signature = (print, *, film, print_length = None, force = None))]
    fn mismatch_from_print(
        &self,
        print: W<Print>,
        film: Q<Length>,
        print_length: Option<Q<Length>>,
        force: Option<Q<Force>>,
    ) -> PyResult<PrintRead> {
        let length = print_length.map(|length| length.named("print_length")).transpose()?;
        let force = force.map(|force| force.named("force")).transpose()?.unwrap_or_default();
        let (print, film) = (print.named("print")?, film.named("film")?);
        Ok(PrintRead(self.0.mismatch_from_print(print, length, film, force)?))
    }

    /// The print to expect of a mismatch.
    ///
    /// Args:
    ///     mismatch: Half angle of the hub less that of the spindle.
    ///     film: Thickness of the paste, below 100 um.
    ///     force: Force along the axis while it is printed; none unless given.
    #[pyo3(signature = (mismatch, *, film, force = None))]
    fn expected_print(
        &self,
        mismatch: Q<Angle>,
        film: Q<Length>,
        force: Option<Q<Force>>,
    ) -> PyResult<PrintExpected> {
        let force = force.map(|force| force.named("force")).transpose()?.unwrap_or_default();
        let (mismatch, film) = (mismatch.named("mismatch")?, film.named("film")?);
        Ok(PrintExpected(self.0.expected_print(mismatch, film, force)?))
    }

    /// The same seat with another friction; the bodies are not solved again.
    fn with_friction(&self, friction: Plain) -> PyResult<Self> {
        Ok(Self(Arc::new(self.0.with_friction(friction.named("friction")?)?)))
    }

    /// A quick estimate by ring slices; `.how_far_off` says how wrong it can be.
    ///
    /// Args:
    ///     force: Force of the nut, above zero.
    ///     mismatch: Half angle of the hub less that of the spindle.
    fn ring_slices(&self, force: Q<Force>, mismatch: Q<Angle>) -> PyResult<RingSlices> {
        let (force, mismatch) = (force.named("force")?, mismatch.named("mismatch")?);
        Ok(RingSlices(self.0.seat().ring_slices(self.0.friction(), force, mismatch)?))
    }

    /// How far a moment tilts the hub on its seat: an order of magnitude, not verified by anything.
    ///
    /// Args:
    ///     force: Force of the nut, above zero.
    ///     mismatch: Half angle of the hub less that of the spindle.
    ///     moment: Moment across the axis, above zero.
    fn rocking(
        &self,
        force: Q<Force>,
        mismatch: Q<Angle>,
        moment: Q<Torque>,
    ) -> PyResult<Out<Angle>> {
        let (force, mismatch) = (force.named("force")?, mismatch.named("mismatch")?);
        let moment = moment.named("moment")?;
        Ok(Out(joint::seat_rocking(&self.0, force, mismatch, moment)?))
    }

    /// A drawing as SVG: hub and spindle in half section, the pressure along the seat, and the print to expect.
    ///
    /// Args:
    ///     force: Force of the nut, above zero.
    ///     mismatch: Half angle of the hub less that of the spindle.
    ///     film: Thickness of the marking paste of the print, below 100 um.
    fn drawing(&self, force: Q<Force>, mismatch: Q<Angle>, film: Q<Length>) -> PyResult<String> {
        let (force, mismatch) = (force.named("force")?, mismatch.named("mismatch")?);
        let film = film.named("film")?;
        let drawn = crate::draw::seat_drawing(&self.0, force, mismatch, film, Shop::Metric)?;
        Ok(crate::draw::svg(&drawn.scene))
    }

    /// Gap in metres that a pressure of 1 Pa on one segment (column) opens on another (row), once for
    /// pressure and once for pull along the seat toward the large end: what it can be solved from by
    /// other means.
    fn compliances(&self) -> (Vec<Vec<f64>>, Vec<Vec<f64>>) {
        let [normal, along] = self.0.compliances();
        (normal, along)
    }

    fn __repr__(&self) -> String {
        let seat = self.0.seat();
        let one_in = crate::units::figure(1.0 / seat.taper, 3);
        let small = crate::mounting::sort::show(seat.small_diameter);
        format!("<SeatFound 1:{one_in} from {small}, {} segments>", self.0.segments().len())
    }
}

/// A hub that a nut pushes onto the taper of a spindle, ready for any force and mismatch.
///
/// Args:
///     hub: Material of the hub: an `Elastic`, or the name of a metal (`metals()`).
///     spindle: Material of the spindle, likewise.
///     small_diameter: Diameter at the small end.
///     taper: A taper such as `"1:5"` or `"Morse 3"`, or its change of diameter over length, from 0.001 to 1.
///     length: Engaged length, 0.1 to 20 times the small diameter.
///     hub_diameter: Outside diameter of the hub at the small end.
///     nut_diameter: Outside diameter of the face by which nut or washer bears on the hub; it begins at the
///         seat. It matters most of all: a push beside the seat rolls the hub.
///     friction: Friction in the seat, above 0 and up to 1; `friction_ranges()` lists published values.
///     steps: Where the hub's outside diameter changes, as pairs of distance from the small end and diameter
///         from there on.
///     spindle_bore: Bore of the spindle; solid unless given.
///     overhang_small: How far the spindle reaches beyond the small end; it ends there unless given.
///     overhang_large: How far it reaches beyond the large end.
///     hub_yield: Stress at which the hub yields.
///     spindle_yield: Stress at which the spindle yields.
///     fine: On a mesh of 64 segments instead of 40, to see what the mesh does; it takes ten times as long.
///
/// Returns:
///     SeatFound: `.push(force, mismatch)`, `.force_for(share, mismatch)`, `.angle_tolerance(force, share)`,
///     `.mismatch_from_print(print, film=...)`.
///
/// Raises:
///     UnitError, TextError: As for `hubwright.wheel.rim_speed`.
///     OutOfRangeError: Figures that make no seat, such as a hub thinner than a shell.
///
/// Smooth, round, elastic cones, pushed on once, with one friction all over. Against a mesh of four times the elements
/// the length in contact is within 0.003 of the seat and the force for 95 % within 1 %. No experiment is behind it.
///
/// Source: finite elements; Johnson, Contact Mechanics; Kikuchi and Oden.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> seat = hw.joint.seat(
///     ...     hub="steel", spindle="steel", small_diameter="25 mm", taper="1:5", length="25 mm",
///     ...     hub_diameter="40 mm", nut_diameter="40 mm", friction=0.12,
///     ...     overhang_small="15 mm", overhang_large="30 mm",
///     ... )
///     >>> pushed = seat.push("8 kN", "3 arcmin")
///     >>> print(f"{pushed.carries}, {pushed.contact:.2f}, {pushed.slip_torque:.1f~P}")
///     small end, 0.48, 56.8 m·N
///     >>> print(f"{pushed.force_for_95.to('kN'):.1f~P}")
///     21.3 kN
#[pyfunction]
#[pyo3(signature = (*, hub, spindle, small_diameter, taper, length, hub_diameter, nut_diameter, friction, steps = None, spindle_bore = None, overhang_small = None, overhang_large = None, hub_yield = None, spindle_yield = None, fine = false))]
#[allow(clippy::too_many_arguments, reason = "one keyword a figure")]
pub fn seat(
    py: Python<'_>,
    hub: Of,
    spindle: Of,
    small_diameter: Q<Length>,
    taper: RatioIn,
    length: Q<Length>,
    hub_diameter: Q<Length>,
    nut_diameter: Q<Length>,
    friction: Plain,
    steps: Option<Vec<(Q<Length>, Q<Length>)>>,
    spindle_bore: Option<Q<Length>>,
    overhang_small: Option<Q<Length>>,
    overhang_large: Option<Q<Length>>,
    hub_yield: Option<Q<Pressure>>,
    spindle_yield: Option<Q<Pressure>>,
    fine: bool,
) -> PyResult<SeatFound> {
    let mut seat = joint::Seat::new(
        hub.named("hub")?,
        spindle.named("spindle")?,
        small_diameter.named("small_diameter")?,
        taper.named("taper")?,
        length.named("length")?,
        hub_diameter.named("hub_diameter")?,
        nut_diameter.named("nut_diameter")?,
    );
    for (at, (from, diameter)) in steps.into_iter().flatten().enumerate() {
        let from = from.named(&format!("steps[{at}].from"))?;
        seat = seat.with_step(from, diameter.named(&format!("steps[{at}].diameter"))?);
    }
    if let Some(bore) = spindle_bore {
        seat = seat.with_spindle_bore(bore.named("spindle_bore")?);
    }
    let small = overhang_small.map(|length| length.named("overhang_small")).transpose()?;
    let large = overhang_large.map(|length| length.named("overhang_large")).transpose()?;
    seat = seat.with_overhangs(small.unwrap_or_default(), large.unwrap_or_default());
    if let Some(stress) = hub_yield {
        seat = seat.with_hub_yield(stress.named("hub_yield")?);
    }
    if let Some(stress) = spindle_yield {
        seat = seat.with_spindle_yield(stress.named("spindle_yield")?);
    }
    if fine {
        seat = seat.with_fine_mesh();
    }
    let friction = friction.named("friction")?;
    Ok(SeatFound(Arc::new(py.detach(|| seat.solve(friction))?)))
}

/// Run-out at the rim of a wheel whose seat is tilted: axial `tilt * diameter`, radial twice `tilt * overhang`.
///
/// Args:
///     tilt: Angle between the axes of hub and spindle, 0 to 0.5 deg. `SeatFound.rocking` gives its order of magnitude
///         under a moment.
///     wheel_diameter: Diameter of the wheel.
///     overhang: Distance of the wheel's middle from that of the seat.
///
/// Raises:
///     UnitError, TextError, OutOfRangeError: As for `hubwright.wheel.rim_speed`.
///
/// Source: geometry.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> found = hw.joint.tilt_run_out("20e-6 rad", wheel_diameter="250 mm", overhang="60 mm")
///     >>> print(f"{found.axial.to('um'):.1f~P}, {found.radial.to('um'):.1f~P}")
///     5.0 µm, 2.4 µm
#[pyfunction]
#[pyo3(signature = (tilt, *, wheel_diameter, overhang))]
pub fn tilt_run_out(
    tilt: Q<Angle>,
    wheel_diameter: Q<Length>,
    overhang: Q<Length>,
) -> PyResult<TiltRunOut> {
    let (tilt, diameter) = (tilt.named("tilt")?, wheel_diameter.named("wheel_diameter")?);
    Ok(TiltRunOut(joint::tilt_run_out(tilt, diameter, overhang.named("overhang")?)?))
}
