//! `hubwright.wheel.strength`.

use pyo3::prelude::*;

use super::quantity::{Out, Plain, Q};
use super::rings::found;
use super::wheel::Working;
use crate::error::{Error, ErrorKind};
use crate::mounting::sort::show;
use crate::units::{Angle, AngularVelocity, Energy, Length, Mass, MassDensity, Pressure, Velocity};
use crate::wheel;

/// One of two arguments that belong together came alone.
pub(super) fn alone(missing: &str, given: &str) -> Error {
    ErrorKind::Missing {
        argument: missing.into(),
        why: format!("`{given}` is given, and the two belong together"),
        hint: format!("give `{missing}` too, or leave out `{given}`"),
    }
    .into()
}

/// Two arguments that belong together: both, or none.
pub(super) fn both<A, B>(
    (first, a): (&str, Option<A>),
    (second, b): (&str, Option<B>),
) -> Result<Option<(A, B)>, Error> {
    match (a, b) {
        (Some(a), Some(b)) => Ok(Some((a, b))),
        (None, None) => Ok(None),
        (Some(_), None) => Err(alone(second, first)),
        (None, Some(_)) => Err(alone(first, second)),
    }
}

/// A sector of a wheel that flies off.
#[pyclass(frozen, module = "hubwright._core")]
pub struct Fragment(wheel::Fragment);

found! {
    Fragment(wheel::Fragment) {
        /// Its mass, in kg.
        mass: Out<Mass> = |of| Out(of.mass);
        /// Distance of its centre of mass from the axis.
        centre: Out<Length> = |of| Out(of.centre);
        /// Speed of its centre of mass.
        speed: Out<Velocity> = |of| Out(of.speed);
        /// Its energy, flight and spin together, in J.
        energy: Out<Energy> = |of| Out(of.energy);
        /// The part of it that is flight, in J.
        flight: Out<Energy> = |of| Out(of.flight);
    }
}

/// What `strength` found.
#[pyclass(frozen, module = "hubwright._core")]
pub struct Strength(wheel::StrengthFound);

found! {
    Strength(wheel::StrengthFound) {
        /// Hoop stress at the hole, the greatest in the wheel, in MPa.
        hoop: Out<Pressure> = |of| Out(of.hoop);
        /// Greatest radial stress, in MPa.
        radial: Out<Pressure> = |of| Out(of.radial);
        /// Diameter at which it is.
        radial_at: Out<Length> = |of| Out(of.radial_at);
        /// Hoop stress at the rim, in MPa.
        rim_hoop: Out<Pressure> = |of| Out(of.rim_hoop);
        /// Speed of the rim.
        rim_speed: Out<Velocity> = |of| Out(of.rim_speed);
        /// Strength over hoop stress; None without a strength.
        stress_factor: Option<f64> = |of| of.stress_factor;
        /// Bursting speed over speed; None without a strength.
        speed_factor: Option<f64> = |of| of.speed_factor;
        /// Speed at which the hoop stress reaches the strength given. No wheel may be run near it.
        bursting_speed: Option<Out<AngularVelocity>> = |of| of.bursting_speed.map(Out);
        /// Greatest speed that keeps the factor asked for, never above the marked one; None without
        /// a strength, a factor or a marking.
        greatest_speed: Option<Out<AngularVelocity>> = |of| of.greatest_speed.map(Out);
        /// Whether the marked speed holds it down.
        capped: bool = |of| of.capped;
        /// Whether the speed asked about is above the marked one.
        above_marked: bool = |of| of.above_marked;
        /// The fragment asked about, at the speed asked about.
        fragment: Option<Fragment> = |of| of.fragment.map(Fragment);
    }

    /// The steps, recomputed.
    fn working(&self) -> Working {
        Working(self.0.working())
    }

    fn __repr__(&self) -> String {
        let factor = self.0.stress_factor;
        let factor = factor.map_or(String::new(), |factor| format!(", factor on stress {factor:.3}"));
        let above = if self.0.above_marked { ", ABOVE THE MARKED SPEED" } else { "" };
        format!("<Strength hoop {}{factor}{above}>", show(self.0.hoop))
    }
}

/// What a plain wheel of one material carries as it turns, and when it would burst.
///
/// The speed marked on the wheel is the limit, whatever is computed here.
///
/// Args:
///     diameter: Outside diameter, above zero.
///     hole: Hole, below the diameter; "0 mm" for a wheel without one.
///     density: Density, above zero.
///     poisson: Poisson's ratio, above 0 and below 0.5.
///     speed: Rotational speed, above zero.
///     tensile_strength: Tensile strength that the wheel's maker gives.
///     burst_factor: Factor on stress asked for, (bursting speed / speed) squared, 1 or more.
///     marked_speed: Rotational speed marked on the wheel.
///     thickness: Thickness, for the fragment.
///     fragment_angle: Included angle of a fragment, up to 360 degrees.
///
/// Returns:
///     Strength: `.hoop`, and with a strength `.stress_factor`, `.bursting_speed`; with a factor and a
///     marking `.greatest_speed`; with thickness and angle `.fragment`.
///
/// Raises:
///     MissingError: Thickness without an angle, or the other way round.
///     UnitError, TextError, OutOfRangeError: As for `rim_speed`.
///
/// Flat wheels of one material and thickness; no fabric, recess, crack, side load or clamping.
///
/// Source: Timoshenko and Goodier, Theory of Elasticity; the cap is 29 CFR 1910.215(d)(1).
///
/// Examples:
///     >>> import hubwright as hw
///     >>> found = hw.wheel.strength(
///     ...     diameter="200 mm", hole="31.75 mm", density="2250 kg/m3", poisson=0.22,
///     ...     speed="3000 rpm", tensile_strength="20 MPa", burst_factor=3, marked_speed="3340 rpm",
///     ... )
///     >>> found
///     <Strength hoop 1.7985 MPa, factor on stress 11.120>
///     >>> print(f"{found.greatest_speed:.0f~P}", found.capped)
///     3340 rpm True
#[pyfunction]
#[pyo3(signature = (*, diameter, hole, density, poisson, speed, tensile_strength = None, burst_factor = None, marked_speed = None, thickness = None, fragment_angle = None))]
#[allow(clippy::too_many_arguments, reason = "one keyword a figure")]
pub fn strength(
    diameter: Q<Length>,
    hole: Q<Length>,
    density: Q<MassDensity>,
    poisson: Plain,
    speed: Q<AngularVelocity>,
    tensile_strength: Option<Q<Pressure>>,
    burst_factor: Option<Plain>,
    marked_speed: Option<Q<AngularVelocity>>,
    thickness: Option<Q<Length>>,
    fragment_angle: Option<Q<Angle>>,
) -> PyResult<Strength> {
    let mut wheel = wheel::Strength::new(
        diameter.named("diameter")?,
        hole.named("hole")?,
        density.named("density")?,
        poisson.named("poisson")?,
        speed.named("speed")?,
    );
    if let Some(strength) = tensile_strength {
        wheel = wheel.with_tensile_strength(strength.named("tensile_strength")?);
    }
    if let Some(factor) = burst_factor {
        wheel = wheel.with_burst_factor(factor.named("burst_factor")?);
    }
    if let Some(marked) = marked_speed {
        wheel = wheel.with_marked_speed(marked.named("marked_speed")?);
    }
    let fragment = both(("thickness", thickness), ("fragment_angle", fragment_angle))?;
    if let Some((thickness, angle)) = fragment {
        wheel = wheel.with_fragment(thickness.named("thickness")?, angle.named("fragment_angle")?);
    }
    Ok(Strength(wheel.solve()?))
}
