//! Grinding: removal, chips, power and feeds; part of `hubwright.wheel`.

use pyo3::prelude::*;

use super::quantity::{Out, Plain, Q};
use super::rings::{Published, found};
use super::strength::alone;
use super::wheel::Working;
use super::words::{W, WordOut};
use crate::mounting::sort::show;
use crate::tables::grinding::RANGES;
use crate::units::{
    Angle, AngularVelocity, Force, GrainDensity, Length, Power, RemovalRate, SpecificEnergy,
    Torque, Velocity, Volume, WidthRemovalRate, cubic_millimeter_per_second, figure, watt,
};
use crate::wheel::{self, GrindKind};

/// What `grind` found.
#[pyclass(frozen, module = "hubwright._core")]
pub struct Ground(wheel::GrindFound);

found! {
    Ground(wheel::GrindFound) {
        /// How wheel and work meet.
        kind: WordOut<GrindKind> = |of| WordOut(of.cut.kind);
        /// Speed of the wheel's rim.
        rim_speed: Out<Velocity> = |of| Out(of.rim_speed);
        /// Rim speed over work speed.
        speed_ratio: f64 = |of| of.speed_ratio;
        /// Volume ground away in a time, in mm³/s.
        removal_rate: Out<RemovalRate> = |of| Out(of.removal_rate);
        /// The same of each millimetre of width, in mm²/s, which is mm³/(mm s).
        width_removal_rate: Out<WidthRemovalRate> = |of| Out(of.width_removal_rate);
        /// Equivalent chip thickness, in mm.
        equivalent_chip_thickness: Out<Length> = |of| Out(of.equivalent_chip_thickness);
        /// Diameter of the wheel that would touch flat work over the same length, in mm.
        equivalent_diameter: Out<Length> = |of| Out(of.equivalent_diameter);
        /// Length of contact by geometry, in mm; the real one is 1.5 to 2 times as long or more.
        contact_length: Out<Length> = |of| Out(of.contact_length);
        /// Work speed over rim speed, times the root of depth over equivalent diameter.
        aggressiveness: f64 = |of| of.aggressiveness;
        /// Chips in a second; None without the density of cutting points.
        chips_per_second: Option<f64> = |of| of.chips_per_second;
        /// Mean volume of a chip, in mm³.
        chip_volume: Option<Out<Volume>> = |of| of.chip_volume.map(Out);
        /// Greatest thickness of a chip, in mm; None without cutting points and chip width ratio.
        chip_thickness: Option<Out<Length>> = |of| of.chip_thickness.map(Out);
        /// Power that grinding takes, in W; None without a specific energy.
        power: Option<Out<Power>> = |of| of.power.map(Out);
        /// Force along the rim, in N.
        force: Option<Out<Force>> = |of| of.force.map(Out);
        /// Torque on the spindle, in N m.
        torque: Option<Out<Torque>> = |of| of.torque.map(Out);
        /// Power over what reaches the wheel; None without both.
        power_share: Option<f64> = |of| of.power_share;
        /// Torque over what the spindle has; None without both.
        torque_share: Option<f64> = |of| of.torque_share;
        /// Whether the spindle has the power and the torque; None while neither can be compared.
        spindle_carries: Option<bool> = |of| of.spindle_carries;
        /// Whether the wheel turns faster than it is marked for.
        above_marked: bool = |of| of.above_marked;
    }

    /// The steps, recomputed; the last one's result is `torque` in N m, or `contact_length` in mm without a specific energy.
    fn working(&self) -> Working {
        Working(self.0.working())
    }

    fn __repr__(&self) -> String {
        let rate = figure(self.0.removal_rate.get::<cubic_millimeter_per_second>(), 2);
        let power = self.0.power.map_or_else(String::new, |power| {
            format!(", {} W", figure(power.get::<watt>(), 0))
        });
        let short = if self.0.spindle_carries == Some(false) { ", MORE THAN THE SPINDLE HAS" } else { "" };
        let above = if self.0.above_marked { ", ABOVE THE MARKED SPEED" } else { "" };
        format!("<Ground {rate} mm3/s{power}{short}{above}>")
    }
}

/// What a cut removes, how thick its chips are, and what it asks of the spindle.
///
/// Q = a b vw, h_eq = a vw / vs, l = √(a d_e) with d_e = ds dw / (dw ± ds), h = √(4 / (C r) · vw / vs · √(a / d_e)),
/// P = u Q, F = P / vs, T = P / ω. Specific energy, cutting points and chip shape are shop data; published
/// ranges are wide: see `grinding_ranges`.
///
/// Args:
///     kind: `surface`, `external` or `internal`.
///     wheel_diameter: Diameter of the wheel as it is now.
///     speed: Rotational speed of the wheel.
///     depth: Depth of cut, below the wheel's radius.
///     width: Width of cut.
///     work_speed: Speed of the work past the wheel.
///     work_diameter: Diameter of round work; of a bore, above the wheel's.
///     specific_energy: Energy to grind away a volume, like `"40 J/mm3"`; yours, for this work on this machine.
///     spindle_power: Power of the spindle, to be compared with.
///     efficiency: The share of it that reaches the wheel, above 0 and up to 1; needed with `spindle_power`, 1 where that is measured at the wheel.
///     spindle_torque: Torque that the spindle has at this speed, to be compared with.
///     grains: Cutting points in an area of the wheel's face, like `"2 1/mm2"`.
///     chip_width_ratio: Width of a chip over its thickness.
///     marked_speed: Rotational speed marked on the wheel.
///
/// Returns:
///     Ground: `.removal_rate`, `.equivalent_chip_thickness`, `.contact_length`, `.power`, `.torque`, `.spindle_carries` and more.
///
/// Raises:
///     MissingError: Round work without its diameter, or one of power and efficiency.
///     UnitError, TextError: No quantities of these kinds, or another kind of grinding.
///     OutOfRangeError: A figure not above zero, a cut as deep as the wheel's radius, a bore no larger than its wheel.
///
/// Source: kinematics; Malkin and Guo; Rowe; recalled, and checked against Groover's problems.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> found = hw.wheel.grind(
///     ...     kind="surface", wheel_diameter="200 mm", speed="2900 rpm", depth="15 um", width="15 mm",
///     ...     work_speed="0.25 m/s", specific_energy="35 J/mm3", spindle_power="2.2 kW", efficiency=0.85,
///     ... )
///     >>> found
///     <Ground 56.25 mm3/s, 1969 W, MORE THAN THE SPINDLE HAS>
///     >>> print(f"{found.equivalent_chip_thickness.m_as('um'):.3f} um, contact {found.contact_length:.2f~P}")
///     0.123 um, contact 1.73 mm
#[pyfunction]
#[pyo3(signature = (*, kind, wheel_diameter, speed, depth, width, work_speed, work_diameter = None, specific_energy = None, spindle_power = None, efficiency = None, spindle_torque = None, grains = None, chip_width_ratio = None, marked_speed = None))]
#[allow(clippy::too_many_arguments, reason = "one keyword a figure")]
pub fn grind(
    kind: W<GrindKind>,
    wheel_diameter: Q<Length>,
    speed: Q<AngularVelocity>,
    depth: Q<Length>,
    width: Q<Length>,
    work_speed: Q<Velocity>,
    work_diameter: Option<Q<Length>>,
    specific_energy: Option<Q<SpecificEnergy>>,
    spindle_power: Option<Q<Power>>,
    efficiency: Option<Plain>,
    spindle_torque: Option<Q<Torque>>,
    grains: Option<Q<GrainDensity>>,
    chip_width_ratio: Option<Plain>,
    marked_speed: Option<Q<AngularVelocity>>,
) -> PyResult<Ground> {
    let diameter = wheel_diameter.named("wheel_diameter")?;
    let mut cut = wheel::Grind::new(kind.named("kind")?, diameter, speed.named("speed")?).with_cut(
        depth.named("depth")?,
        width.named("width")?,
        work_speed.named("work_speed")?,
    );
    if let Some(diameter) = work_diameter {
        cut = cut.with_work_diameter(diameter.named("work_diameter")?);
    }
    let energy_needed_by = if specific_energy.is_some() {
        None
    } else if spindle_power.is_some() {
        Some("spindle_power")
    } else {
        spindle_torque.is_some().then_some("spindle_torque")
    };
    if let Some(energy) = specific_energy {
        cut = cut.with_specific_energy(energy.named("specific_energy")?);
    }
    match (spindle_power, efficiency) {
        (Some(power), Some(share)) => {
            cut = cut.with_spindle_power(power.named("spindle_power")?, share.named("efficiency")?);
        }
        (None, None) => {}
        (Some(_), None) => return Err(alone("efficiency", "spindle_power").into()),
        (None, Some(_)) => return Err(alone("spindle_power", "efficiency").into()),
    }
    if let Some(given) = energy_needed_by {
        return Err(alone("specific_energy", given).into());
    }
    if let Some(torque) = spindle_torque {
        cut = cut.with_spindle_torque(torque.named("spindle_torque")?);
    }
    if let Some(grains) = grains {
        cut = cut.with_grains(grains.named("grains")?);
    }
    if let Some(ratio) = chip_width_ratio {
        cut = cut.with_chip_width_ratio(ratio.named("chip_width_ratio")?);
    }
    if let Some(marked) = marked_speed {
        cut = cut.with_marked_speed(marked.named("marked_speed")?);
    }
    Ok(Ground(cut.solve()?))
}

/// Specific energy of a job from the force along the rim: u = F v / Q.
///
/// Args:
///     force: Force along the rim.
///     rim_speed: Speed of the rim.
///     removal_rate: Volume ground away in a time, like `"1050 mm3/min"`.
///
/// Returns:
///     The energy, in J/mm³.
///
/// Raises:
///     UnitError, TextError, OutOfRangeError: No quantities of these kinds, or not above zero.
///
/// Source: statics; Groover, problem 25.4.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> u = hw.wheel.specific_energy(force="25 N", rim_speed="1508 m/min", removal_rate="1050 mm3/min")
///     >>> print(f"{u.m_as('J/mm^3'):.1f} J/mm3")
///     35.9 J/mm3
#[pyfunction]
#[pyo3(signature = (*, force, rim_speed, removal_rate))]
pub fn specific_energy(
    force: Q<Force>,
    rim_speed: Q<Velocity>,
    removal_rate: Q<RemovalRate>,
) -> PyResult<Out<SpecificEnergy>> {
    let (force, rim_speed) = (force.named("force")?, rim_speed.named("rim_speed")?);
    Ok(Out(wheel::specific_energy(force, rim_speed, removal_rate.named("removal_rate")?)?))
}

/// Published ranges of grinding practice, each with its source. They are wide: your own tests come first.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> hw.wheel.grinding_ranges()[7]
///     <Published grinding ratio: 95 to 125 [Groover, Fundamentals of Modern Manufacturing:4th edition, chapter 25, grinding (read)]>
#[pyfunction]
pub fn grinding_ranges() -> Vec<Published> {
    RANGES.into_iter().map(Published).collect()
}

/// How fast work is fed through a centreless grinder: v = π d n sin α.
///
/// Args:
///     diameter: Diameter of the regulating wheel.
///     speed: Its rotational speed.
///     angle: Its inclination, below 90 degrees.
///
/// Returns:
///     The feed, without slip.
///
/// Raises:
///     UnitError, TextError, OutOfRangeError: No quantities of these kinds, or not above zero.
///
/// Source: Groover, problems 25.7 and 25.9.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> feed = hw.wheel.through_feed(diameter="125 mm", speed="200 rpm", angle="2.5 deg")
///     >>> print(f"{feed.m_as('mm/min'):.0f} mm/min")
///     3426 mm/min
#[pyfunction]
#[pyo3(signature = (*, diameter, speed, angle))]
pub fn through_feed(
    diameter: Q<Length>,
    speed: Q<AngularVelocity>,
    angle: Q<Angle>,
) -> PyResult<Out<Velocity>> {
    let (diameter, speed) = (diameter.named("diameter")?, speed.named("speed")?);
    Ok(Out(wheel::through_feed(diameter, speed, angle.named("angle")?)?))
}

/// The inclination of the regulating wheel that feeds work through at a speed.
///
/// Args:
///     diameter: Diameter of the regulating wheel.
///     speed: Its rotational speed.
///     feed: The feed, below its rim speed.
///
/// Returns:
///     The angle.
///
/// Raises:
///     UnitError, TextError, OutOfRangeError: No quantities of these kinds, or a feed not below the rim speed.
///
/// Source: Groover, problem 25.8.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> angle = hw.wheel.through_feed_angle(diameter="150 mm", speed="500 rpm", feed="7 m/min")
///     >>> print(f"{angle.m_as('deg'):.1f} deg")
///     1.7 deg
#[pyfunction]
#[pyo3(signature = (*, diameter, speed, feed))]
pub fn through_feed_angle(
    diameter: Q<Length>,
    speed: Q<AngularVelocity>,
    feed: Q<Velocity>,
) -> PyResult<Out<Angle>> {
    let (diameter, speed) = (diameter.named("diameter")?, speed.named("speed")?);
    Ok(Out(wheel::through_feed_angle(diameter, speed, feed.named("feed")?)?))
}

/// How far the table goes in a creep feed pass: L + √(a (D - a)).
///
/// Args:
///     wheel_diameter: Diameter of the wheel.
///     depth: Depth of cut, below the wheel's radius.
///     length: Length of the work.
///
/// Returns:
///     The travel.
///
/// Raises:
///     UnitError, TextError, OutOfRangeError: No lengths, or not above zero.
///
/// Source: Groover, problem 25.10.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> print(f"{hw.wheel.creep_stroke(wheel_diameter='250 mm', depth='25 mm', length='200 mm'):.0f~P}")
///     275 mm
#[pyfunction]
#[pyo3(signature = (*, wheel_diameter, depth, length))]
pub fn creep_stroke(
    wheel_diameter: Q<Length>,
    depth: Q<Length>,
    length: Q<Length>,
) -> PyResult<Out<Length>> {
    let (diameter, depth) = (wheel_diameter.named("wheel_diameter")?, depth.named("depth")?);
    Ok(Out(wheel::creep_stroke(diameter, depth, length.named("length")?)?))
}

/// Roughness by a law fitted to your own tests: Ra = R1 (h_eq / h1)^x. It predicts nothing outside them.
///
/// Args:
///     tested_roughness: Roughness found in a test.
///     tested_thickness: Equivalent chip thickness of that test.
///     exponent: Exponent fitted to two tests or more, 0 to 2; 0.15 to 0.6 are recalled.
///     chip_thickness: Equivalent chip thickness asked about.
///
/// Returns:
///     The roughness that the curve passes through.
///
/// Raises:
///     UnitError, TextError, OutOfRangeError: No lengths, or an exponent outside 0 to 2.
///
/// Source: a fitted form; its figures are yours.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> ra = hw.wheel.fitted_roughness(
///     ...     tested_roughness="0.9 um", tested_thickness="1 um", exponent=0.35, chip_thickness="0.12 um",
///     ... )
///     >>> print(f"{ra.m_as('um'):.3f} um")
///     0.429 um
#[pyfunction]
#[pyo3(signature = (*, tested_roughness, tested_thickness, exponent, chip_thickness))]
pub fn fitted_roughness(
    tested_roughness: Q<Length>,
    tested_thickness: Q<Length>,
    exponent: Plain,
    chip_thickness: Q<Length>,
) -> PyResult<Out<Length>> {
    Ok(Out(wheel::fitted_roughness(
        tested_roughness.named("tested_roughness")?,
        tested_thickness.named("tested_thickness")?,
        exponent.named("exponent")?,
        chip_thickness.named("chip_thickness")?,
    )?))
}

/// What `wear` found.
#[pyclass(frozen, module = "hubwright._core")]
pub struct Wear(wheel::WearFound);

found! {
    Wear(wheel::WearFound) {
        /// Volume worn off the wheel, in mm³.
        worn: Out<Volume> = |of| Out(of.worn);
        /// Wear on radius, in mm.
        radial: Out<Length> = |of| Out(of.radial);
        /// Diameter of the wheel after, in mm.
        diameter_left: Out<Length> = |of| Out(of.diameter_left);
    }

    /// The steps, recomputed; the last one's result is `radial` in µm.
    fn working(&self) -> Working {
        Working(self.0.working())
    }

    fn __repr__(&self) -> String {
        format!("<Wear {} on radius, {} left>", show(self.0.radial), show(self.0.diameter_left))
    }
}

/// How much a wheel wears by grinding a volume away, at the grinding ratio of the job.
///
/// Args:
///     ground: Volume ground away.
///     ratio: Grinding ratio of the job; yours, see `grinding_ratio`.
///     diameter: Diameter of the wheel before.
///     width: Width of the wheel that grinds.
///
/// Returns:
///     Wear: `.radial`, `.worn`, `.diameter_left`.
///
/// Raises:
///     UnitError, TextError, OutOfRangeError: No quantities of these kinds, or more wear than there is wheel.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> hw.wheel.wear(ground="3000 mm3", ratio=18, diameter="200 mm", width="20 mm")
///     <Wear 0.0133 mm on radius, 199.9735 mm left>
#[pyfunction]
#[pyo3(signature = (*, ground, ratio, diameter, width))]
pub fn wear(
    ground: Q<Volume>,
    ratio: Plain,
    diameter: Q<Length>,
    width: Q<Length>,
) -> PyResult<Wear> {
    let (ground, ratio) = (ground.named("ground")?, ratio.named("ratio")?);
    Ok(Wear(wheel::wear(ground, ratio, diameter.named("diameter")?, width.named("width")?)?))
}

/// Grinding ratio: volume ground away over volume of the wheel worn off.
///
/// Args:
///     ground: Volume ground away; of a bore or a shaft by `ring_volume`.
///     worn: Volume worn off the wheel, likewise.
///
/// Returns:
///     The ratio.
///
/// Raises:
///     UnitError, TextError, OutOfRangeError: No volumes, or not above zero.
///
/// Source: definition; Groover, problem 25.3.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> bore = hw.wheel.ring_volume(outside="252.5 mm", inside="250 mm", length="125 mm")
///     >>> rim = hw.wheel.ring_volume(outside="150 mm", inside="149.75 mm", length="20 mm")
///     >>> print(f"{hw.wheel.grinding_ratio(ground=bore, worn=rim):.1f}")
///     104.8
#[pyfunction]
#[pyo3(signature = (*, ground, worn))]
pub fn grinding_ratio(ground: Q<Volume>, worn: Q<Volume>) -> PyResult<f64> {
    Ok(wheel::grinding_ratio(ground.named("ground")?, worn.named("worn")?)?)
}

/// Volume between two diameters over a length: ground off a bore or a shaft, or worn off a wheel.
///
/// Args:
///     outside: Larger diameter.
///     inside: Smaller diameter, zero or above.
///     length: Length or width.
///
/// Returns:
///     The volume, in mm³.
///
/// Raises:
///     UnitError, TextError, OutOfRangeError: No lengths, or an inside not below the outside.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> print(f"{hw.wheel.ring_volume(outside='150 mm', inside='149.75 mm', length='20 mm'):.1f~P}")
///     1177.1 mm³
#[pyfunction]
#[pyo3(signature = (*, outside, inside, length))]
pub fn ring_volume(
    outside: Q<Length>,
    inside: Q<Length>,
    length: Q<Length>,
) -> PyResult<Out<Volume>> {
    let (outside, inside) = (outside.named("outside")?, inside.named("inside")?);
    Ok(Out(wheel::ring_volume(outside, inside, length.named("length")?)?))
}
