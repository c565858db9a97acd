//! Keys and what they carry: part of `hubwright.joint`.

use pyo3::prelude::*;

use super::quantity::{Out, Q};
use super::rings::found;
use super::verdict::Source;
use super::wheel::Working;
use super::words::{W, WordOut};
use crate::joint::{self, KeyFit, KeyStandard};
use crate::mounting::sort::show;
use crate::units::{Force, Length, Pressure, Torque};

/// Two lengths, the smaller first.
pub(super) type Pair = (Out<Length>, Out<Length>);

/// Lengths and edges of a key, all from memory.
#[pyclass(frozen, module = "hubwright._core")]
pub struct KeyTrim(joint::KeyTrim);

found! {
    KeyTrim(joint::KeyTrim) {
        /// Standard lengths of this key, in mm, shortest first.
        lengths: Vec<Out<Length>> = |of| of.lengths().map(Out).collect();
        /// Shortest length of this key, in mm.
        least_length: Out<Length> = |of| Out(of.least_length);
        /// Longest length of this key, in mm.
        most_length: Out<Length> = |of| Out(of.most_length);
        /// Least and greatest chamfer of its edges, in mm.
        chamfer: Pair = |of| (Out(of.chamfer[0]), Out(of.chamfer[1]));
        /// Least and greatest radius in the corners of its keyway, in mm.
        corner_radius: Pair = |of| (Out(of.corner_radius[0]), Out(of.corner_radius[1]));
        /// Where they come from.
        source: Source = |of| Source(of.source);
    }

    fn __repr__(&self) -> String {
        format!("<KeyTrim {} to {} long>", show(self.0.least_length), show(self.0.most_length))
    }
}

/// Widths of key and keyways that make a fit. Every pair has the smaller figure first.
#[pyclass(frozen, module = "hubwright._core")]
pub struct KeyWidths(joint::KeyWidths);

fn sizes(limits: &joint::Limits) -> Pair {
    (Out(limits.smallest), Out(limits.largest))
}

fn clearance(fit: &joint::Fit) -> (f64, f64) {
    (fit.least_clearance_um(), fit.most_clearance_um())
}

found! {
    KeyWidths(joint::KeyWidths) {
        /// The fit asked for.
        fit: WordOut<KeyFit> = |of| WordOut(of.fit);
        /// Classes of the keyways in shaft and hub.
        classes: (String, String) = |of| (of.in_shaft.hole.class.to_string(), of.in_hub.hole.class.to_string());
        /// Least and greatest width of the key, in mm.
        key: Pair = |of| sizes(&of.in_hub.shaft);
        /// Least and greatest width of the keyway in the shaft, in mm.
        shaft_keyway: Pair = |of| sizes(&of.in_shaft.hole);
        /// Least and greatest width of the keyway in the hub, in mm.
        hub_keyway: Pair = |of| sizes(&of.in_hub.hole);
        /// Least and most clearance in the shaft in µm; negative is interference.
        in_shaft_um: (f64, f64) = |of| clearance(&of.in_shaft);
        /// Least and most clearance in the hub in µm; negative is interference.
        in_hub_um: (f64, f64) = |of| clearance(&of.in_hub);
        /// Which classes make the fit.
        source: Source = |of| Source(of.source);
    }

    fn __repr__(&self) -> String {
        let [shaft, hub] = [self.0.in_shaft.hole.class, self.0.in_hub.hole.class];
        format!("<KeyWidths {}: {shaft} in the shaft, {hub} in the hub>", self.0.fit)
    }
}

/// What `key_for` found. Depths are at the middle of the keyway.
#[pyclass(frozen, module = "hubwright._core")]
pub struct KeySize(joint::KeySize);

found! {
    KeySize(joint::KeySize) {
        /// Diameter of the shaft, in mm.
        shaft: Out<Length> = |of| Out(of.shaft);
        /// The standard asked.
        standard: WordOut<KeyStandard> = |of| WordOut(of.standard);
        /// Width b, in mm.
        width: Out<Length> = |of| Out(of.width);
        /// Height h, in mm.
        height: Out<Length> = |of| Out(of.height);
        /// Depth in the shaft t1, in mm.
        shaft_depth: Out<Length> = |of| Out(of.shaft_depth);
        /// Depth in the hub t2, in mm.
        hub_depth: Out<Length> = |of| Out(of.hub_depth);
        /// How much deeper than that either may be, never shallower; None where it was not read.
        depth_tolerance: Option<Out<Length>> = |of| of.depth_tolerance.map(Out);
        /// Height of the circle over the mouth of the keyway y, in mm.
        chord_height: Out<Length> = |of| Out(of.chord_height);
        /// Height of the keyway's wall in the shaft, t1 − y, in mm.
        shaft_wall: Out<Length> = |of| Out(of.shaft_wall);
        /// Height of the keyway's wall in the hub, t2 + y, in mm.
        hub_wall: Out<Length> = |of| Out(of.hub_wall);
        /// Height over which the key's side bears, for `key_strength`: the lesser of `t1 − y` and `h − t1 + y`, less the
        /// greatest chamfer where `trim` has one; in mm.
        bearing_height: Out<Length> = |of| Out(of.bearing_height);
        /// From the bottom of the shaft's keyway to the far side, d − t1, in mm.
        across_shaft: Out<Length> = |of| Out(of.across_shaft);
        /// From the bottom of the hub's keyway to the far side of the bore, d + t2, in mm.
        across_hub: Out<Length> = |of| Out(of.across_hub);
        /// Lengths, chamfer and corner radius; None where they are not known.
        trim: Option<KeyTrim> = |of| of.trim.map(KeyTrim);
        /// Where width, height and depths come from.
        source: Source = |of| Source(of.source);
    }

    /// Width limits of key and keyways.
    ///
    /// Args:
    ///     fit: `free`, `normal` or `close`.
    ///
    /// Returns:
    ///     KeyWidths: None for inch keys, whose tolerances were not read.
    ///
    /// Raises:
    ///     TextError: Another word.
    ///
    /// Source: ISO 286-1 for the limits; which classes make which fit is from memory.
    ///
    /// Examples:
    ///     >>> import hubwright as hw
    ///     >>> widths = hw.joint.key_for("12 mm", "DIN 6885-1").widths("normal")
    ///     >>> widths
    ///     <KeyWidths normal: N9 in the shaft, JS9 in the hub>
    ///     >>> widths.in_hub_um
    ///     (-15.0, 45.0)
    fn widths(&self, fit: W<KeyFit>) -> PyResult<Option<KeyWidths>> {
        Ok(self.0.widths(fit.named("fit")?).map(KeyWidths))
    }

    /// The steps, recomputed; the last one's result is `across_hub` in mm.
    fn working(&self) -> Working {
        Working(self.0.working())
    }

    fn __repr__(&self) -> String {
        let [width, height] = [self.0.width, self.0.height].map(show);
        format!("<KeySize {width} x {height}, {}>", self.0.standard)
    }
}

/// The key that goes with a shaft, and how deep it sits.
///
/// Args:
///     shaft_diameter: Over 6 to 500 mm (DIN 6885-1), 12 to 50 mm as listed (DIN 6885-2), over 5/16 to
///         6-1/2 in (ANSI B17.1; rectangular over 7/16 in). A step includes its upper end.
///     standard: `"DIN 6885-1"` (or `"ISO 773"`), `"DIN 6885-2"` for machine tools, `"ANSI B17.1 square"` or
///         `"ANSI B17.1 rectangular"`.
///
/// Returns:
///     KeySize: `.width`, `.height`, `.shaft_depth`, `.hub_depth`, `.across_shaft`, `.across_hub`, `.widths(fit)`.
///
/// Raises:
///     UnitError, TextError: No length, or another standard.
///     OutOfRangeError: A shaft outside the table; the message says how far it reaches.
///
/// Source: DIN 6885-1 and -2, ANSI B17.1-1967, all in reprints; `.trim` is from memory.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> key = hw.joint.key_for("22 mm", "DIN 6885-1")
///     >>> key
///     <KeySize 6 mm x 6 mm, DIN 6885-1>
///     >>> print(f"{key.across_shaft:.1f~P}, {key.across_hub:.1f~P}")
///     18.5 mm, 24.8 mm
///     >>> inch = hw.joint.key_for("1 in", "ANSI B17.1 square")
///     >>> print(f"S {inch.across_shaft.m_as('in'):.3f} in, T {inch.across_hub.m_as('in'):.3f} in")
///     S 0.859 in, T 1.114 in
#[pyfunction]
pub fn key_for(shaft_diameter: Q<Length>, standard: W<KeyStandard>) -> PyResult<KeySize> {
    let shaft = shaft_diameter.named("shaft_diameter")?;
    Ok(KeySize(joint::key_for(shaft, standard.named("standard")?)?))
}

/// What `key_strength` found.
#[pyclass(frozen, module = "hubwright._core")]
pub struct KeyStrength(joint::KeyStrengthFound);

found! {
    KeyStrength(joint::KeyStrengthFound) {
        /// Force at the surface of the shaft, in N.
        force: Out<Force> = |of| Out(of.force);
        /// Height over which the side bears, in mm.
        bearing_height: Out<Length> = |of| Out(of.bearing_height);
        /// Shear stress, in MPa.
        shear: Out<Pressure> = |of| Out(of.shear);
        /// Bearing stress, in MPa.
        bearing: Out<Pressure> = |of| Out(of.bearing);
        /// Length at which the allowed shear stress is reached, in mm; None without one.
        shear_length: Option<Out<Length>> = |of| of.shear_length.map(Out);
        /// Length at which the allowed bearing stress is reached, in mm; None without one.
        bearing_length: Option<Out<Length>> = |of| of.bearing_length.map(Out);
        /// Whether every stress whose allowed value is given keeps to it; None when none is.
        carries: Option<bool> = |of| of.carries;
    }

    /// The steps, recomputed; the last one's result is `bearing` in MPa.
    fn working(&self) -> Working {
        Working(self.0.working())
    }

    fn __repr__(&self) -> String {
        let over = if self.0.carries == Some(false) { ", OVERLOADED" } else { "" };
        let [shear, bearing] = [self.0.shear, self.0.bearing].map(show);
        format!("<KeyStrength shear {shear}, bearing {bearing} over {}{over}>", show(self.0.bearing_height))
    }
}

/// Shear and bearing stress of a key from a torque, τ = 2 T / (d b L) and p = 2 T / (d c L).
///
/// Args:
///     torque: Torque that the key carries, above zero.
///     shaft_diameter: Diameter of the shaft.
///     width: Width of the key, below the shaft's diameter.
///     height: Height of the key; half of it bears unless `bearing_height` is given.
///     length: Length that carries: inside the hub, without round ends.
///     allowed_shear: Shear stress allowed; your figure, with your factor in it.
///     allowed_bearing: Bearing stress allowed, of the weakest of key, shaft and hub.
///     bearing_height: Height over which the side bears, half of the key's at most: `key_for(...).bearing_height`. Half
///         is too much in a shallow keyway; in the hubs of DIN 6885-2 a quarter bears.
///     hub_length: Length of the hub, which the key may not pass.
///
/// Returns:
///     KeyStrength: `.shear`, `.bearing`, `.shear_length`, `.bearing_length`, `.carries`.
///
/// Raises:
///     UnitError, TextError: No quantities of these kinds.
///     OutOfRangeError: A figure that is not above zero, a key longer than its hub, as wide as its shaft.
///
/// Even load along the key; no friction, shock or fatigue.
///
/// Source: statics of keys (Shigley; Mott; Machinery's Handbook).
///
/// Examples:
///     >>> import hubwright as hw
///     >>> found = hw.joint.key_strength(
///     ...     torque="13.2 N m", shaft_diameter="22 mm", width="6 mm", height="6 mm", length="20 mm",
///     ...     allowed_shear="60 MPa", allowed_bearing="90 MPa",
///     ... )
///     >>> found
///     <KeyStrength shear 10 MPa, bearing 20 MPa over 3 mm>
///     >>> print(found.carries, f"{found.bearing_length:.2f~P}")
///     True 4.44 mm
#[pyfunction]
#[pyo3(signature = (*, torque, shaft_diameter, width, height, length, allowed_shear = None, allowed_bearing = None, bearing_height = None, hub_length = None))]
#[allow(clippy::too_many_arguments, reason = "one keyword a figure")]
pub fn key_strength(
    torque: Q<Torque>,
    shaft_diameter: Q<Length>,
    width: Q<Length>,
    height: Q<Length>,
    length: Q<Length>,
    allowed_shear: Option<Q<Pressure>>,
    allowed_bearing: Option<Q<Pressure>>,
    bearing_height: Option<Q<Length>>,
    hub_length: Option<Q<Length>>,
) -> PyResult<KeyStrength> {
    let mut key = joint::KeyStrength::new(
        torque.named("torque")?,
        shaft_diameter.named("shaft_diameter")?,
        width.named("width")?,
        height.named("height")?,
        length.named("length")?,
    );
    if let Some(stress) = allowed_shear {
        key = key.with_allowed_shear(stress.named("allowed_shear")?);
    }
    if let Some(stress) = allowed_bearing {
        key = key.with_allowed_bearing(stress.named("allowed_bearing")?);
    }
    if let Some(height) = bearing_height {
        key = key.with_bearing_height(height.named("bearing_height")?);
    }
    if let Some(hub) = hub_length {
        key = key.with_hub_length(hub.named("hub_length")?);
    }
    Ok(KeyStrength(key.solve()?))
}
