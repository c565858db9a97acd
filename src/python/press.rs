//! Press and shrink fits: part of `hubwright.joint`.

use pyo3::prelude::*;

use super::quantity::{Out, Plain, Q};
use super::rings::{Of, Point, Published, found};
use super::strength::{alone, both};
use super::wheel::Working;
use crate::joint;
use crate::mounting::sort::show;
use crate::tables::friction::FITS;
use crate::units::{
    AngularVelocity, Force, Length, Pressure, TemperatureCoefficient, TemperatureInterval, Torque,
};

/// A press fit at one interference, speed and warmth.
#[pyclass(frozen, module = "hubwright._core")]
pub struct Pressed(joint::Pressed);

found! {
    Pressed(joint::Pressed) {
        /// Effective interference on diameter; below zero where smoothing takes it all.
        interference: Out<Length> = |of| Out(of.interference);
        /// Pressure in the joint, in MPa; zero when it is open.
        pressure: Out<Pressure> = |of| Out(of.pressure);
        /// Whether the hub is loose.
        open: bool = |of| of.open;
        /// Clearance on diameter when it is.
        gap: Out<Length> = |of| Out(of.gap);
        /// The speed from which on the hub is loose at this warmth, zero when it is so at a
        /// standstill; None when it never comes loose.
        loosening_speed: Option<Out<AngularVelocity>> = |of| of.loosening_speed.map(Out);
        /// At the bore of the shaft, or its centre.
        shaft_inside: Point = |of| Point(of.shaft_inside);
        /// At the surface of the shaft, in the joint.
        shaft_surface: Point = |of| Point(of.shaft_surface);
        /// At the bore of the hub, in the joint.
        hub_bore: Point = |of| Point(of.hub_bore);
        /// At the outside of the hub.
        hub_outside: Point = |of| Point(of.hub_outside);
        /// Greatest von Mises stress of the shaft, in MPa.
        shaft_von_mises: Out<Pressure> = |of| Out(of.shaft_von_mises);
        /// Greatest von Mises stress of the hub, in MPa.
        hub_von_mises: Out<Pressure> = |of| Out(of.hub_von_mises);
    }

    fn __repr__(&self) -> String {
        if self.0.open {
            format!("<Pressed open by {}>", show(self.0.gap))
        } else {
            format!("<Pressed {}>", show(self.0.pressure))
        }
    }
}

/// What `press_fit` found.
#[pyclass(frozen, module = "hubwright._core")]
pub struct PressFit(joint::PressFitFound);

found! {
    PressFit(joint::PressFitFound) {
        /// At the least interference, running and warm as given.
        least: Pressed = |of| Pressed(of.least);
        /// At the greatest interference, running and warm as given.
        greatest: Pressed = |of| Pressed(of.greatest);
        /// At the least interference, standing still and not warmed.
        least_at_rest: Pressed = |of| Pressed(of.least_at_rest);
        /// At the greatest interference, standing still and not warmed.
        greatest_at_rest: Pressed = |of| Pressed(of.greatest_at_rest);
        /// Torque that friction holds at the least interference, running or at rest, whichever is less;
        /// None without length and friction.
        torque: Option<Out<Torque>> = |of| of.torque.map(Out);
        /// Force along the shaft that friction holds, likewise.
        push_off: Option<Out<Force>> = |of| of.push_off.map(Out);
        /// Yield stress of the shaft over its greatest von Mises stress, running or at rest, at the
        /// greatest interference; below 1 it yields.
        shaft_factor: Option<f64> = |of| of.shaft_factor;
        /// The same for the hub.
        hub_factor: Option<f64> = |of| of.hub_factor;
        /// Whether every part whose yield stress is given stays elastic; None when none is given.
        stays_elastic: Option<bool> = |of| of.stays_elastic();
        /// How much warmer than the shaft the hub has to be, to go on with the clearance wanted.
        heat_hub_by: Option<Out<TemperatureInterval>> = |of| of.heat_hub_by.map(Out);
        /// How much colder than the hub the shaft has to be instead.
        cool_shaft_by: Option<Out<TemperatureInterval>> = |of| of.cool_shaft_by.map(Out);
        /// Material of the shaft: its constants, and whether they were stated or recalled.
        shaft: super::rings::Elastic = |of| super::rings::Elastic(of.fit.shaft);
        /// Material of the hub.
        hub: super::rings::Elastic = |of| super::rings::Elastic(of.fit.hub);
    }

    /// The steps, recomputed.
    fn working(&self) -> Working {
        Working(self.0.working())
    }

    fn __repr__(&self) -> String {
        let pressure = |at: &joint::Pressed| show(at.pressure);
        let yields = if self.0.stays_elastic() == Some(false) { ", IT YIELDS" } else { "" };
        let (least, greatest) = (pressure(&self.0.least), pressure(&self.0.greatest));
        format!("<PressFit {least} to {greatest}{yields}>")
    }
}

/// A hub pressed or shrunk on a shaft: pressure, stresses, torque, loosening speed, heating.
///
/// Args:
///     shaft: Material of the shaft: an `Elastic`, or the name of a metal (`metals()`).
///     hub: Material of the hub, likewise.
///     diameter: Diameter of the joint.
///     shaft_bore: Bore of the shaft; "0 mm" for a solid one.
///     hub_diameter: Outside diameter of the hub.
///     least_interference: Least interference on diameter, zero or above.
///     greatest_interference: Greatest interference on diameter.
///     smoothing: Factor c: joining flattens c times the sum of both roughnesses. Without it the interferences
///         are effective ones. DIN 7190 is recalled to have 0.8 in its 2001 edition and said to have 0.4 now.
///     shaft_roughness: Rz of the shaft, with `smoothing`.
///     hub_roughness: Rz of the bore, with `smoothing`.
///     speed: Rotational speed; a standstill unless given.
///     shaft_rise: How much warmer the shaft is than when it was measured.
///     hub_rise: How much warmer the hub is.
///     length: Length of the joint, for torque and push-off force.
///     friction: Friction in the joint, from 0 to 2; `friction_ranges()` lists published values.
///     shaft_yield: Stress at which the shaft yields.
///     hub_yield: Stress at which the hub yields.
///     clearance: Clearance on diameter wanted while joining, for heating and cooling.
///     cold_contraction: Mean contraction of the shaft when it is cooled (steel about 8.5 um/m/K, from memory).
///
/// Returns:
///     PressFit: `.least` and `.greatest` hold pressure and stresses at both interferences, `.torque` and
///     `.push_off` what friction holds, `.hub_factor` and `.shaft_factor` yield over stress.
///
/// Raises:
///     MissingError: One of several arguments that belong together, or heat without an expansion.
///     UnitError, TextError, OutOfRangeError: As for `hubwright.wheel.rim_speed`; yielding is no error.
///
/// Lamé's elastic rings of equal length. At the ends of a hub on a longer shaft the pressure peaks: the torque
/// is 1 to 12 % more, and fretting starts there.
///
/// Source: Lamé; Timoshenko and Goodier, Theory of Elasticity.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> fit = hw.joint.press_fit(
///     ...     shaft="steel", hub="steel", diameter="25 mm", shaft_bore="0 mm", hub_diameter="45 mm",
///     ...     least_interference="18 um", greatest_interference="30 um",
///     ...     length="20 mm", friction=0.12, hub_yield="300 MPa",
///     ... )
///     >>> fit
///     <PressFit 51.2711 MPa to 85.4519 MPa>
///     >>> print(f"{fit.torque.m_as('N*m'):.1f} N m, {fit.hub_factor:.2f}")
///     120.8 N m, 1.38
#[pyfunction]
#[pyo3(signature = (*, shaft, hub, diameter, shaft_bore, hub_diameter, least_interference, greatest_interference, smoothing = None, shaft_roughness = None, hub_roughness = None, speed = None, shaft_rise = None, hub_rise = None, length = None, friction = None, shaft_yield = None, hub_yield = None, clearance = None, cold_contraction = None))]
#[allow(clippy::too_many_arguments, reason = "one keyword a figure")]
pub fn press_fit(
    shaft: Of,
    hub: Of,
    diameter: Q<Length>,
    shaft_bore: Q<Length>,
    hub_diameter: Q<Length>,
    least_interference: Q<Length>,
    greatest_interference: Q<Length>,
    smoothing: Option<Plain>,
    shaft_roughness: Option<Q<Length>>,
    hub_roughness: Option<Q<Length>>,
    speed: Option<Q<AngularVelocity>>,
    shaft_rise: Option<Q<TemperatureInterval>>,
    hub_rise: Option<Q<TemperatureInterval>>,
    length: Option<Q<Length>>,
    friction: Option<Plain>,
    shaft_yield: Option<Q<Pressure>>,
    hub_yield: Option<Q<Pressure>>,
    clearance: Option<Q<Length>>,
    cold_contraction: Option<Q<TemperatureCoefficient>>,
) -> PyResult<PressFit> {
    let mut fit = joint::PressFit::new(
        shaft.named("shaft")?,
        hub.named("hub")?,
        diameter.named("diameter")?,
        shaft_bore.named("shaft_bore")?,
        hub_diameter.named("hub_diameter")?,
        least_interference.named("least_interference")?,
        greatest_interference.named("greatest_interference")?,
    );
    let rough = both(("shaft_roughness", shaft_roughness), ("hub_roughness", hub_roughness))?;
    match (smoothing, rough) {
        (Some(factor), Some((shaft, hub))) => {
            let (shaft, hub) = (shaft.named("shaft_roughness")?, hub.named("hub_roughness")?);
            fit = fit.with_smoothing(factor.named("smoothing")?, shaft, hub);
        }
        (None, None) => {}
        (Some(_), None) => return Err(alone("shaft_roughness", "smoothing").into()),
        (None, Some(_)) => return Err(alone("smoothing", "shaft_roughness").into()),
    }
    if let Some(speed) = speed {
        fit = fit.with_speed(speed.named("speed")?);
    }
    let shaft_rise = shaft_rise.map(|rise| rise.named("shaft_rise")).transpose()?;
    let hub_rise = hub_rise.map(|rise| rise.named("hub_rise")).transpose()?;
    fit = fit.with_rises(shaft_rise.unwrap_or_default(), hub_rise.unwrap_or_default());
    if let Some((length, friction)) = both(("length", length), ("friction", friction))? {
        fit = fit.with_grip(length.named("length")?, friction.named("friction")?);
    }
    if let Some(stress) = shaft_yield {
        fit = fit.with_shaft_yield(stress.named("shaft_yield")?);
    }
    if let Some(stress) = hub_yield {
        fit = fit.with_hub_yield(stress.named("hub_yield")?);
    }
    if let Some(clearance) = clearance {
        fit = fit.with_clearance(clearance.named("clearance")?);
    }
    if let Some(contraction) = cold_contraction {
        fit = fit.with_cold_contraction(contraction.named("cold_contraction")?);
    }
    Ok(PressFit(fit.solve()?))
}

/// Greatest pressure in the bore of a hub that stays elastic, by two criteria.
#[pyclass(frozen, module = "hubwright._core")]
pub struct ElasticLimit(joint::ElasticLimit);

found! {
    ElasticLimit(joint::ElasticLimit) {
        /// After von Mises, for ductile hubs, in MPa.
        von_mises: Out<Pressure> = |of| Out(of.von_mises);
        /// By the greatest shear stress, which is more cautious, in MPa.
        greatest_shear: Out<Pressure> = |of| Out(of.greatest_shear);
    }

    fn __repr__(&self) -> String {
        let (von_mises, shear) = (show(self.0.von_mises), show(self.0.greatest_shear));
        format!("<ElasticLimit {von_mises} after von Mises, {shear} by shear>")
    }
}

/// Pressure in its bore that a hub at rest carries without yielding.
///
/// Args:
///     diameter: Diameter of the joint, above zero.
///     hub_diameter: Outside diameter of the hub, above that of the joint.
///     hub_yield: Stress at which the hub yields, above zero.
///
/// Returns:
///     ElasticLimit: `.von_mises` and `.greatest_shear`.
///
/// Raises:
///     UnitError, TextError, OutOfRangeError: As for `hubwright.wheel.rim_speed`.
///
/// Source: Lamé; Timoshenko and Goodier, Theory of Elasticity.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> hw.joint.elastic_limit("25 mm", "45 mm", "300 MPa")
///     <ElasticLimit 117.8897 MPa after von Mises, 103.7037 MPa by shear>
#[pyfunction]
pub fn elastic_limit(
    diameter: Q<Length>,
    hub_diameter: Q<Length>,
    hub_yield: Q<Pressure>,
) -> PyResult<ElasticLimit> {
    let (diameter, outside) = (diameter.named("diameter")?, hub_diameter.named("hub_diameter")?);
    Ok(ElasticLimit(joint::elastic_limit(diameter, outside, hub_yield.named("hub_yield")?)?))
}

/// Published friction of press and shrink fits, by pairing and way of joining.
///
/// Of a pressed-in pair the greater figure is where it lets go, the smaller one while it slips.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> hw.joint.friction_ranges()[0]
///     <Published steel on steel, oil pressure, mineral oil: 0.12 [DIN 7190-1, friction of interference fits (from memory, unverified)]>
#[pyfunction]
pub fn friction_ranges() -> Vec<Published> {
    FITS.into_iter().map(Published).collect()
}
