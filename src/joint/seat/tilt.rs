//! What a tilted seat does at the rim.

use std::f64::consts::PI;

use super::slices::Slices;
use super::{SeatFound, check};
use crate::error::Error;
use crate::units::{
    Angle, Force, Length, Torque, meter, newton_meter, positive, positive_length, radian, within,
};

/// Run-out of a wheel on a tilted seat: what [`tilt_run_out`] found.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct TiltRunOut {
    /// Angle between the axes of hub and spindle.
    pub tilt: Angle,
    /// Total reading of an indicator on the side of the wheel, at its rim.
    pub axial: Length,
    /// Total reading on the rim.
    pub radial: Length,
}

/// Run-out at the rim of a wheel whose seat is tilted.
///
/// Axial `θ D`, radial `2 θ a`: `θ` the tilt, `D` the diameter of the wheel, `a` the distance of its
/// middle from that of the seat.
///
/// # Errors
///
/// [`OutOfRange`](crate::ErrorKind::OutOfRange) or [`NotFinite`](crate::ErrorKind::NotFinite) for a tilt
/// outside 0 to 0.5° and lengths not above zero.
///
/// # Source
///
/// Geometry; no standard is involved.
///
/// # Example
///
/// A tilt of 20 µrad shows 5 µm at the side of a 250 mm wheel.
///
/// ```
/// use hubwright::joint::tilt_run_out;
/// use hubwright::units::{Angle, Length, micrometer, millimeter, radian};
///
/// let mm = Length::new::<millimeter>;
/// let found = tilt_run_out(Angle::new::<radian>(20e-6), mm(250.0), mm(60.0))?;
/// assert!((found.axial.get::<micrometer>() - 5.0).abs() < 1e-9);
/// assert!((found.radial.get::<micrometer>() - 2.4).abs() < 1e-9);
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn tilt_run_out(
    tilt: Angle,
    wheel_diameter: Length,
    overhang: Length,
) -> Result<TiltRunOut, Error> {
    let most = super::GREATEST_MISMATCH.to_radians();
    within("tilt", tilt.get::<radian>(), [0.0, most], "rad", "20e-6 rad")?;
    positive_length("wheel_diameter", wheel_diameter)?;
    positive_length("overhang", overhang)?;
    let theta = tilt.get::<radian>();
    Ok(TiltRunOut { tilt, axial: theta * wheel_diameter, radial: 2.0 * theta * overhang })
}

/// How far a moment tilts the hub on its seat: an order of magnitude, not verified by anything.
///
/// `K = π ∫ R (x − x0)² / c dx` over the length in contact, with ring slices of compliance `c` that each
/// give on their own: half of the contact means an eighth of the stiffness.
///
/// # Errors
///
/// As for [`SeatFound::push`]; a moment not above zero.
pub fn seat_rocking(
    seat: &SeatFound,
    force: Force,
    mismatch: Angle,
    moment: Torque,
) -> Result<Angle, Error> {
    check::force("force", force)?;
    positive("moment", moment.get::<newton_meter>(), "N m", "2 N m")?;
    let pushed = seat.push(force, mismatch)?;
    let length = seat.seat().length.get::<meter>();
    let reach = pushed.contact * length;
    let range = if mismatch < Angle::default() { [length - reach, length] } else { [0.0, reach] };
    let cone = seat.cone();
    let slices = Slices::new(cone, seat.friction());
    let of = |power: i32| {
        slices.integral(range, |x| PI * cone.radius(x) * x.powi(power) / slices.compliance(x))
    };
    let [whole, first, second] = [of(0), of(1), of(2)];
    let stiffness = second - first * first / whole;
    Ok(Angle::new::<radian>(moment.get::<newton_meter>() / stiffness))
}
