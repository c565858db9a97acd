//! `hubwright.wheel.thin_wheel` and `stabilisers`.

use pyo3::prelude::*;

use super::nut::missing;
use super::quantity::{Out, Plain, Q};
use super::rings::found;
use super::strength::{alone, both};
use super::wheel::Working;
use crate::error::{Error, ErrorKind};
use crate::mounting::sort::show;
use crate::units::{
    AngularVelocity, Force, Frequency, Length, MassDensity, Pressure, SideStiffness, figure,
    newton_per_millimeter,
};
use crate::wheel::{self, thin};

/// The lowest speeds at which a wave stands still in a thin wheel.
#[pyclass(frozen, module = "hubwright._core")]
pub struct CriticalSpeed(wheel::CriticalSpeed);

found! {
    CriticalSpeed(wheel::CriticalSpeed) {
        /// With the stresses of a wheel that is free at its own hole.
        speed: Out<AngularVelocity> = |of| Out(of.speed);
        /// Nodal diameters of its wave.
        nodes: usize = |of| of.nodes;
        /// Least of three conditions: free at the hole, free at the flange, held by the flange.
        least: Out<AngularVelocity> = |of| Out(of.least);
        /// Greatest of the three.
        greatest: Out<AngularVelocity> = |of| Out(of.greatest);
        /// Whether the speed given reaches the least of them; None without a speed.
        reached: Option<bool> = |of| of.reached;
        /// What to think of it: it is computed without damping.
        note: &'static str = |_| thin::DAMPED;
    }

    fn __repr__(&self) -> String {
        format!(
            "<CriticalSpeed {}, {} to {}, undamped>",
            show(self.0.speed),
            show(self.0.least),
            show(self.0.greatest)
        )
    }
}

/// What `thin_wheel` found.
#[pyclass(frozen, module = "hubwright._core")]
pub struct ThinWheel(wheel::ThinWheelFound);

found! {
    ThinWheel(wheel::ThinWheelFound) {
        /// Side load on one point of the rim over its deflection there, in N/mm.
        stiffness: Out<SideStiffness> = |of| Out(of.stiffness);
        /// Side load spread evenly round the rim over its deflection, in N/mm.
        ring_stiffness: Out<SideStiffness> = |of| Out(of.ring_stiffness);
        /// Bending moment per length at the flange in line with a load on one point, over that load.
        clamp_moment: f64 = |of| of.clamp_moment;
        /// The same for a load spread evenly.
        ring_clamp_moment: f64 = |of| of.ring_clamp_moment;
        /// Side load on one point of the rim that the strength allows, in N; None without a strength.
        allowed_side_load: Option<Out<Force>> = |of| of.allowed_side_load.map(Out);
        /// How far that load pushes the rim aside, in mm.
        deflection: Option<Out<Length>> = |of| of.deflection.map(Out);
        /// Whether that is less than half of the thickness, as the theory wants; otherwise the rim gives less.
        small: Option<bool> = |of| of.small;
        /// Frequencies at rest with 0 to 3 nodal diameters, in Hz; None without density and hole.
        frequencies: Option<[Out<Frequency>; 4]> = |of| of.frequencies.map(|all| all.map(Out));
        /// The same at the speed given, felt on the turning wheel.
        turning_frequencies: Option<[Out<Frequency>; 4]> = |of| of.turning_frequencies.map(|all| all.map(Out));
        /// Speed at which a wave stands; None without density and hole, or where none ever does.
        critical: Option<CriticalSpeed> = |of| of.critical.map(CriticalSpeed);
    }

    /// The steps, recomputed.
    fn working(&self) -> Working {
        Working(self.0.working())
    }

    fn __repr__(&self) -> String {
        let load = self.0.allowed_side_load;
        let load = load.map_or(String::new(), |load| format!(", {} N allowed", figure((load.get::<crate::units::newton>() * 1e3).floor() / 1e3, 3)));
        let stiffness = self.0.stiffness.get::<newton_per_millimeter>();
        format!("<ThinWheel {} N/mm{load}>", figure(stiffness, 3))
    }
}

/// How stiff a thin wheel is against a side load, what it allows, and where it vibrates.
///
/// A thin plate, clamped at the flanges and free at the rim. For a wheel between stabilisers give
/// their diameter as `flange`.
///
/// Args:
///     diameter: Outside diameter, above zero.
///     flange: Diameter over which flanges or stabilisers hold it, 0.05 to 0.98 of the wheel.
///     thickness: Thickness, at most a tenth of what stands out of the flange.
///     modulus: Modulus of elasticity in bending, above zero.
///     poisson: Poisson's ratio, above 0 and below 0.5.
///     density: Density, for frequencies and critical speed, with
///     hole: the hole, not above the flange; "0 mm" for a wheel without one.
///     flexural_strength: Flexural strength of the bond, with
///     strength_factor: the factor asked for, 1 or more.
///     speed: Rotational speed, with density and hole.
///
/// Returns:
///     ThinWheel: `.stiffness`, `.clamp_moment`; with a strength `.allowed_side_load`; with density and hole
///     `.frequencies` and `.critical`, which is computed without damping and so a warning, no limit.
///
/// Raises:
///     MissingError: One of two arguments that belong together, or a speed without density and hole.
///     OutOfRangeError: A flange as large as the wheel, a wheel too thick, or a number that makes no sense.
///     UnitError, TextError: As for `rim_speed`.
///
/// Source: Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells; Leissa, NASA SP-160.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> found = hw.wheel.thin_wheel(
///     ...     diameter="230 mm", flange="76 mm", thickness="1.6 mm", modulus="12 GPa", poisson=0.2,
///     ...     density="2400 kg/m3", hole="22.2 mm", flexural_strength="25 MPa", strength_factor=1,
///     ... )
///     >>> print(f"{found.stiffness:.2f~P}, {found.allowed_side_load:.2f~P}")
///     2.94 N/mm, 9.43 N
///     >>> found.critical.nodes
///     3
#[pyfunction]
#[pyo3(signature = (*, diameter, flange, thickness, modulus, poisson, density = None, hole = None, flexural_strength = None, strength_factor = None, speed = None))]
#[allow(clippy::too_many_arguments, reason = "one keyword a figure")]
pub fn thin_wheel(
    diameter: Q<Length>,
    flange: Q<Length>,
    thickness: Q<Length>,
    modulus: Q<Pressure>,
    poisson: Plain,
    density: Option<Q<MassDensity>>,
    hole: Option<Q<Length>>,
    flexural_strength: Option<Q<Pressure>>,
    strength_factor: Option<Plain>,
    speed: Option<Q<AngularVelocity>>,
) -> PyResult<ThinWheel> {
    let mut of = wheel::ThinWheel::new(
        diameter.named("diameter")?,
        flange.named("flange")?,
        thickness.named("thickness")?,
        modulus.named("modulus")?,
        poisson.named("poisson")?,
    );
    if let Some((density, hole)) = both(("density", density), ("hole", hole))? {
        of = of.with_turning(density.named("density")?, hole.named("hole")?);
    }
    let strength =
        both(("flexural_strength", flexural_strength), ("strength_factor", strength_factor))?;
    if let Some((flexural, factor)) = strength {
        let flexural = flexural.named("flexural_strength")?;
        of = of.with_strength(flexural, factor.named("strength_factor")?);
    }
    if let Some(speed) = speed {
        of = of.with_speed(speed.named("speed")?);
    }
    Ok(ThinWheel(of.solve()?))
}

/// A stabiliser's disc under the nut.
#[pyclass(frozen, module = "hubwright._core")]
pub struct StabiliserDisc(wheel::StabiliserDiscFound);

found! {
    StabiliserDisc(wheel::StabiliserDiscFound) {
        /// How far its hole sinks below its land, in mm: the relief has to be deeper.
        sag: Out<Length> = |of| Out(of.sag);
        /// Pressure on its land, in MPa.
        land_pressure: Out<Pressure> = |of| Out(of.land_pressure);
        /// Whether the relief given is deeper than that, so that only the rim bears; None without a relief.
        bears_at_rim: Option<bool> = |of| of.bears_at_rim;
    }

    fn __repr__(&self) -> String {
        format!("<StabiliserDisc sags {}>", show(self.0.sag))
    }
}

/// What `stabilisers` found.
#[pyclass(frozen, module = "hubwright._core")]
pub struct Stabilisers(wheel::StabilisersFound);

found! {
    Stabilisers(wheel::StabilisersFound) {
        /// Diameter of the stabilisers, in mm.
        diameter: Out<Length> = |of| Out(of.diameter);
        /// Stiffness against a side load on one point of the rim, over that between the flanges.
        gain: f64 = |of| of.gain;
        /// The same for a load spread evenly round the rim.
        ring_gain: f64 = |of| of.ring_gain;
        /// Side load on one point that breaks the wheel, over that between the flanges.
        load_gain: f64 = |of| of.load_gain;
        /// Greatest depth of cut, in mm; zero or less where nothing is left.
        depth: Out<Length> = |of| Out(of.depth);
        /// Greatest depth of cut between the flanges alone, in mm.
        flange_depth: Out<Length> = |of| Out(of.flange_depth);
        /// The disc under the nut; None when it was not given.
        disc: Option<StabiliserDisc> = |of| of.disc.map(StabiliserDisc);
        /// What stabilisers do and what they don't.
        note: &'static str = |_| thin::SIDE_ONLY;
    }

    /// The steps, recomputed.
    fn working(&self) -> Working {
        Working(self.0.working())
    }

    fn __repr__(&self) -> String {
        let (gain, depth) = (figure(self.0.gain, 2), show(self.0.depth));
        let depth = if self.0.depth > Length::default() { format!("{depth} deep") } else { "NOTHING LEFT TO CUT WITH".into() };
        format!("<Stabilisers {}: {gain} times as stiff, {depth}>", show(self.0.diameter))
    }
}

/// What stabilisers add to the side stiffness of a thin wheel, and the depth of cut they leave.
///
/// They raise the stiffness against side load, not the bursting speed; the speed marked on the wheel stays the limit.
///
/// Args:
///     diameter: Outside diameter of the wheel, above zero.
///     flange: Diameter of the flanges, 0.05 to 0.98 of the wheel.
///     thickness: Thickness of the wheel, at most a tenth of what stands out of the stabilisers.
///     poisson: Poisson's ratio of the wheel, above 0 and below 0.5.
///     clearance: Clearance kept between stabiliser and work, vice or magnet, zero or more.
///     stabiliser: Diameter of the stabilisers, at least the flanges'; or instead
///     gain: the stiffness asked for over that between the flanges, 1 or more: the smallest diameter is found.
///     disc_thickness: Thickness of a stabiliser at its relief, with
///     disc_hole: its hole,
///     disc_modulus: its modulus of elasticity,
///     disc_poisson: its Poisson's ratio,
///     land: width of the land at its rim, on one side,
///     pressed_at: diameter of the circle on which the flange presses, and
///     nut_force: force of the nut.
///     relief: Depth of its relief, with all of these.
///
/// Returns:
///     Stabilisers: `.diameter`, `.gain`, `.depth`, and with a disc `.disc.sag`, which its relief has to exceed so that
///     only the rim bears.
///
/// Raises:
///     MissingError: Neither stabiliser nor gain, or part of a disc.
///     TextError, UnitError: As for `rim_speed`.
///     OutOfRangeError: Stabilisers smaller than the flanges or as large as the wheel, a wheel too thick, a gain
///         that no stabiliser reaches, a land that leaves nothing to dish.
///
/// Source: Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells; geometry.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> found = hw.wheel.stabilisers(
///     ...     diameter="125 mm", flange="50 mm", thickness="1 mm", poisson=0.2, clearance="2 mm", stabiliser="80 mm",
///     ... )
///     >>> print(f"{found.gain:.1f} times as stiff, {found.depth:.1f~P} deep")
///     3.3 times as stiff, 20.5 mm deep
#[pyfunction]
#[pyo3(signature = (*, diameter, flange, thickness, poisson, clearance, stabiliser = None, gain = None, disc_thickness = None, disc_hole = None, disc_modulus = None, disc_poisson = None, land = None, pressed_at = None, nut_force = None, relief = None))]
#[allow(clippy::too_many_arguments, reason = "one keyword a figure")]
pub fn stabilisers(
    diameter: Q<Length>,
    flange: Q<Length>,
    thickness: Q<Length>,
    poisson: Plain,
    clearance: Q<Length>,
    stabiliser: Option<Q<Length>>,
    gain: Option<Plain>,
    disc_thickness: Option<Q<Length>>,
    disc_hole: Option<Q<Length>>,
    disc_modulus: Option<Q<Pressure>>,
    disc_poisson: Option<Plain>,
    land: Option<Q<Length>>,
    pressed_at: Option<Q<Length>>,
    nut_force: Option<Q<Force>>,
    relief: Option<Q<Length>>,
) -> PyResult<Stabilisers> {
    let mut of = wheel::Stabilisers::new(
        diameter.named("diameter")?,
        flange.named("flange")?,
        thickness.named("thickness")?,
        poisson.named("poisson")?,
        clearance.named("clearance")?,
    );
    let parts = [
        ("disc_thickness", disc_thickness.is_some()),
        ("disc_hole", disc_hole.is_some()),
        ("disc_modulus", disc_modulus.is_some()),
        ("disc_poisson", disc_poisson.is_some()),
        ("land", land.is_some()),
        ("pressed_at", pressed_at.is_some()),
        ("nut_force", nut_force.is_some()),
    ];
    let given = parts.iter().find(|(_, given)| *given).map(|(name, _)| *name);
    let given = given.or(relief.is_some().then_some("relief"));
    let lacking = parts.iter().find(|(_, given)| !given).map(|(name, _)| *name);
    if let (Some(given), Some(lacking)) = (given, lacking) {
        return Err(alone(lacking, given).into());
    }
    if let (
        Some(thickness),
        Some(hole),
        Some(modulus),
        Some(poisson),
        Some(land),
        Some(pressed),
        Some(force),
    ) = (disc_thickness, disc_hole, disc_modulus, disc_poisson, land, pressed_at, nut_force)
    {
        let mut disc = wheel::StabiliserDisc::new(
            thickness.named("disc_thickness")?,
            hole.named("disc_hole")?,
            modulus.named("disc_modulus")?,
            poisson.named("disc_poisson")?,
            land.named("land")?,
            pressed.named("pressed_at")?,
            force.named("nut_force")?,
        );
        if let Some(relief) = relief {
            disc = disc.with_relief(relief.named("relief")?);
        }
        of = of.with_disc(disc);
    }
    let found = match (stabiliser, gain) {
        (Some(diameter), None) => of.of(diameter.named("stabiliser")?)?,
        (None, Some(gain)) => of.for_gain(gain.named("gain")?)?,
        (None, None) => {
            let why = "without it, or a gain, nothing follows";
            let hint = "give stabiliser=\"80 mm\" or gain=3";
            return Err(missing("stabiliser", why, hint));
        }
        (Some(_), Some(gain)) => {
            return Err(Error::from(ErrorKind::WrongUnit {
                argument: "gain".into(),
                given: figure(gain.named("gain")?, 4),
                kind: "thing to give beside `stabiliser`",
                why: "each follows from the other",
                hint: "leave one of the two out".into(),
            })
            .into());
        }
    };
    Ok(Stabilisers(found))
}
