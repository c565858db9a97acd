//! What seats answer with: part of `hubwright.joint`.

use std::sync::Arc;

use pyo3::prelude::*;

use super::quantity::Out;
use super::rings::found;
use super::wheel::Working;
use super::words::WordOut;
use crate::joint::{self, Carries, Print};
use crate::units::{Angle, Force, Length, Pressure, Torque};

/// Place, length, pressure, hoop stress, and whether it touches.
type AlongRow = (Out<Length>, Out<Length>, Out<Pressure>, Out<Pressure>, bool);

/// From and to along the seat, seen from the small end.
pub(super) type Span = (Out<Length>, Out<Length>);

pub(super) fn span([from, to]: [Length; 2]) -> Span {
    (Out(from), Out(to))
}

/// A seat under a force: what `SeatFound.push` found.
#[pyclass(frozen, module = "hubwright._core")]
pub struct Pushed(pub(super) joint::Pushed, pub(super) Arc<joint::SeatFound>);

found! {
    Pushed(joint::Pushed) {
        /// Force of the nut, in N.
        force: Out<Force> = |of| Out(of.force);
        /// Half angle of the hub less that of the spindle.
        mismatch: Out<Angle> = |of| Out(of.mismatch);
        /// The end that carries.
        carries: WordOut<Carries> = |of| WordOut(of.carries);
        /// Share of the length in contact, from the end that carries to where contact ends.
        contact: f64 = |of| of.contact;
        /// Share of the length of the segments that touch; it goes in steps of a segment.
        touching: f64 = |of| of.touching;
        /// Force that closes 95 % of the length, in N; None when none does.
        force_for_95: Option<Out<Force>> = |of| of.force_for_95.map(Out);
        /// Force that closes all of it, in N; None when none does.
        force_to_close: Option<Out<Force>> = |of| of.force_to_close.map(Out);
        /// The first segment that never closes, from and to, seen from the small end; None when there is none.
        never_closes: Option<Span> = |of| of.never_closes.map(span);
        /// Whether it closes so barely that the force for it hangs on the mesh.
        barely_closes: bool = |of| of.barely_closes;
        /// How far the hub moves from the first touch on, shortening and stretch included.
        draw_up: Out<Length> = |of| Out(of.draw_up);
        /// Torque at which it slips while the nut stays on, in N m.
        slip_torque: Out<Torque> = |of| Out(of.slip_torque);
        /// Sum of all pressure, in N.
        normal_force: Out<Force> = |of| Out(of.normal_force);
        /// Push that takes the hub off once the nut is off, in N; below zero it comes off by itself.
        release_force: Out<Force> = |of| Out(of.release_force);
        /// Whether the taper holds itself.
        holds_itself: bool = |of| of.holds_itself;
        /// Mean pressure on the tenth of the length at the end that carries, in MPa.
        end_pressure: Out<Pressure> = |of| Out(of.end_pressure);
        /// Greatest pressure of a segment, in MPa; the edge itself presses harder, until it beds in.
        peak_pressure: Out<Pressure> = |of| Out(of.peak_pressure);
        /// Greatest hoop stress in the hub's bore, in MPa.
        hub_hoop: Out<Pressure> = |of| Out(of.hub_hoop);
        /// Yield stress of the hub over the greater of hoop stress and pressure; below 1 it yields.
        hub_factor: Option<f64> = |of| of.hub_factor;
        /// Yield stress of the spindle over the pressure.
        spindle_factor: Option<f64> = |of| of.spindle_factor;
        /// Whether every part whose yield stress is given stays elastic; None when none is given.
        stays_elastic: Option<bool> = |of| of.stays_elastic();
    }

    /// Pressure on each segment: rows of place (distance of its middle from the small end), length,
    /// pressure, hoop stress in the hub's bore, and whether it touches.
    fn along(&self) -> PyResult<Vec<AlongRow>> {
        let along = self.1.along(self.0.force, self.0.mismatch)?;
        let row = |at: joint::Along| {
            (Out(at.place), Out(at.length), Out(at.pressure), Out(at.hub_hoop), at.touching)
        };
        Ok(along.into_iter().map(row).collect())
    }

    /// The steps, recomputed.
    fn working(&self) -> Working {
        Working(self.1.working(&self.0))
    }

    fn __str__(&self) -> String {
        self.0.to_string()
    }

    fn __repr__(&self) -> String {
        format!("<Pushed: {}>", self.0)
    }
}

/// How much the half angles may differ: what `SeatFound.angle_tolerance` found.
#[pyclass(frozen, module = "hubwright._core")]
pub struct AngleTolerance(pub(super) joint::AngleTolerance);

found! {
    AngleTolerance(joint::AngleTolerance) {
        /// Force of the nut, in N.
        force: Out<Force> = |of| Out(of.force);
        /// Share of the length that is to be in contact.
        share: f64 = |of| of.share;
        /// The hub may be this much more closed than the spindle, never more open; None when no angle will do.
        closed_by: Option<Out<Angle>> = |of| of.closed_by.map(Out);
        /// What a hub too open would have to keep to. It is no tolerance: such a hub hangs by its small
        /// end, rocks and frets.
        open_by: Option<Out<Angle>> = |of| of.open_by.map(Out);
    }

    fn __repr__(&self) -> String {
        match self.0.closed_by {
            Some(angle) => format!("<AngleTolerance hub more closed by 0 to {:.2} arcmin>", angle.get::<crate::units::degree>() * 60.0),
            None => "<AngleTolerance none>".into(),
        }
    }
}

/// What a print says: what `SeatFound.mismatch_from_print` found.
#[pyclass(frozen, module = "hubwright._core")]
pub struct PrintRead(pub(super) joint::PrintRead);

found! {
    PrintRead(joint::PrintRead) {
        /// The print.
        print: WordOut<Print> = |of| WordOut(of.print);
        /// Half angle of the hub less that of the spindle; None unless the print is a ring from one end.
        mismatch: Option<Out<Angle>> = |of| of.mismatch.map(Out);
        /// Between which the mismatch lies, for a print over the whole length.
        bounds: Option<(Out<Angle>, Out<Angle>)> = |of| of.bounds.map(|[least, most]| (Out(least), Out(most)));
        /// Part of the ring that the force alone pressed together.
        elastic_length: Option<Out<Length>> = |of| of.elastic_length.map(Out);
        /// What it means, with its figures.
        says: String = |of| of.says();
    }

    fn __repr__(&self) -> String {
        format!("<PrintRead: {}>", self.0.says())
    }
}

/// The print to expect: what `SeatFound.expected_print` found.
#[pyclass(frozen, module = "hubwright._core")]
pub struct PrintExpected(pub(super) joint::PrintExpected);

found! {
    PrintExpected(joint::PrintExpected) {
        /// The end it begins at.
        begins_at: WordOut<Carries> = |of| WordOut(of.from);
        /// How long it is, along the surface.
        length: Out<Length> = |of| Out(of.length);
        /// Its share of the surface's length.
        share: f64 = |of| of.share;
    }

    fn __repr__(&self) -> String {
        format!("<PrintExpected {:.0} % from {}>", self.0.share * 100.0, self.0.from)
    }
}

/// Run-out of a wheel on a tilted seat: what `tilt_run_out` found.
#[pyclass(frozen, module = "hubwright._core")]
pub struct TiltRunOut(pub(super) joint::TiltRunOut);

found! {
    TiltRunOut(joint::TiltRunOut) {
        /// Angle between the axes of hub and spindle.
        tilt: Out<Angle> = |of| Out(of.tilt);
        /// Total reading of an indicator on the side of the wheel, at its rim.
        axial: Out<Length> = |of| Out(of.axial);
        /// Total reading on the rim.
        radial: Out<Length> = |of| Out(of.radial);
    }
}

/// A quick estimate of a seat under a force: what `SeatFound.ring_slices` found.
#[pyclass(frozen, module = "hubwright._core")]
pub struct RingSlices(pub(super) joint::RingSlices);

found! {
    RingSlices(joint::RingSlices) {
        /// Share of the length in contact: always more than it is.
        contact: f64 = |of| of.contact;
        /// The same less 0.27 of the radius at the end that carries, while it is not the whole length.
        contact_corrected: f64 = |of| of.contact_corrected;
        /// Force that closes all of it, in N.
        force_to_close: Out<Force> = |of| Out(of.force_to_close);
        /// How far the hub moves from the first touch on.
        draw_up: Out<Length> = |of| Out(of.draw_up);
        /// Torque at which it slips while the nut stays on, in N m.
        slip_torque: Out<Torque> = |of| Out(of.slip_torque);
        /// Push that takes the hub off once the nut is off, in N.
        release_force: Out<Force> = |of| Out(of.release_force);
        /// Pressure at the small and at the large end, in MPa.
        pressures: (Out<Pressure>, Out<Pressure>) = |of| (Out(of.pressures[0]), Out(of.pressures[1]));
        /// Hoop stress in the hub's bore at the small and at the large end, in MPa.
        hoops: (Out<Pressure>, Out<Pressure>) = |of| (Out(of.hoops[0]), Out(of.hoops[1]));
        /// How far it can be off.
        how_far_off: &'static str = |of| of.how_far_off();
    }
}
