//! Thin wheels: how stiff against a side load, how they vibrate, and what stabilisers add.

mod stabilisers;

use crate::error::{Error, ErrorKind};
use crate::solid::disc::{CLAMPED, THIN_DISCS, VIBRATING_DISCS};
use crate::solid::plate::stiffness;
use crate::solid::{InPlane, clamped_disc, critical_disc_speed, disc_frequency};
use crate::units::{
    AngularVelocity, Force, Frequency, Length, MassDensity, Pressure, SideStiffness, below, figure,
    gigapascal, hertz, kilogram_per_cubic_meter, megapascal, meter, millimeter, newton,
    newton_per_meter, newton_per_millimeter, pascal, positive_length, radian_per_second,
    revolution_per_minute, shown_mm, within, zero_or_more,
};
use crate::working::{Step, Working};

pub use stabilisers::{StabiliserDisc, StabiliserDiscFound, Stabilisers, StabilisersFound};

/// Greatest thickness over the width that stands out of the flanges for which a wheel is a thin plate.
pub(crate) const THIN: f64 = 0.1;

/// Densities of wheels, in kg/m³: less is a number in another unit.
const DENSITIES: [f64; 2] = [200.0, 3e4];

/// Said of every critical speed.
pub const DAMPED: &str = "computed without damping: a resin bond damps it strongly, so that it is a warning and no limit";

/// Said of stabilisers.
pub const SIDE_ONLY: &str = "stabilisers raise the stiffness against side load, not the bursting speed; the speed marked on the wheel stays the limit";

/// A thin wheel between flanges, and what pushes it aside.
///
/// A plate of bending stiffness `D = E h³ / 12(1 − ν²)`, clamped at the flanges' radius `b`,
/// free at the rim's `a`. A side load on one point of the rim meets the
/// stiffness `D / (k a²)` and bends the wheel at the flange by `m P` per length; with the
/// flexural strength `S` of the bond and a factor `j` the allowed side load is `S h² / (6 m j)`. See
/// [`clamped_disc`] for `k` and `m`.
///
/// With density and hole: frequencies at rest, and the lowest speed at which a wave stands in the wheel. That
/// speed depends on what the flanges do in the wheel's own plane; it is given for a wheel that
/// slides under them as it grows (stresses from its own hole), with the least and greatest of
/// three conditions. **Resin wheels are strongly damped: it is a warning, no limit.**
///
/// It holds for wheels thinner than a tenth of what stands out of the flanges, of one material: layers of
/// glass fabric make a wheel stiffer in its plane than in bending. The stress right under the load is not
/// in it, and a hot rim lowers the frequencies.
///
/// # Errors
///
/// [`ErrorKind::OutOfRange`] or [`ErrorKind::NotFinite`] for a flange as large as the wheel, a hole as large as
/// the flange, a wheel too thick to be a thin plate, a flange outside 0.05 to 0.98 of the wheel,
/// and moduli, densities, strengths and speeds that make no sense.
///
/// # Source
///
/// Timoshenko and Woinowsky-Krieger, *Theory of Plates and Shells*; Leissa, NASA SP-160, for the vibration.
///
/// # Example
///
/// A disc of 230 × 1.6 mm between flanges of 76 mm: 2.9 N at its rim push it aside by a millimetre, and with 25 MPa of
/// flexural strength and no factor 9.4 N break it.
///
/// ```
/// use hubwright::units::{Length, Pressure, gigapascal, megapascal, millimeter, newton, newton_per_millimeter};
/// use hubwright::wheel::ThinWheel;
///
/// let mm = Length::new::<millimeter>;
/// let found = ThinWheel::new(mm(230.0), mm(76.0), mm(1.6), Pressure::new::<gigapascal>(12.0), 0.2)
///     .with_strength(Pressure::new::<megapascal>(25.0), 1.0)
///     .solve()?;
/// assert!((found.stiffness.get::<newton_per_millimeter>() - 2.9375).abs() < 1e-3);
/// let load = found.allowed_side_load.expect("a strength is given");
/// assert!((load.get::<newton>() - 9.433).abs() < 3e-3);
/// # Ok::<(), hubwright::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct ThinWheel {
    /// Outside diameter.
    pub diameter: Length,
    /// Diameter over which flanges or stabilisers hold it.
    pub flange: Length,
    /// Thickness.
    pub thickness: Length,
    /// Modulus of elasticity, in bending.
    pub modulus: Pressure,
    /// Poisson's ratio.
    pub poisson: f64,
    /// Density and hole; zero for a wheel without one.
    pub turning: Option<(MassDensity, Length)>,
    /// Flexural strength of the bond, and the factor asked for.
    pub strength: Option<(Pressure, f64)>,
    /// Rotational speed.
    pub speed: Option<AngularVelocity>,
}

/// The lowest speeds at which a wave stands still in a wheel.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct CriticalSpeed {
    /// With the stresses of a wheel that is free at its own hole.
    pub speed: AngularVelocity,
    /// Nodal diameters of its wave.
    pub nodes: usize,
    /// Least of three conditions: free at the hole, free at the flange, held by the flange.
    pub least: AngularVelocity,
    /// Greatest of the three.
    pub greatest: AngularVelocity,
    /// Whether the speed given reaches the least of them.
    pub reached: Option<bool>,
}

/// What [`ThinWheel::solve`] found.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct ThinWheelFound {
    /// What was asked.
    pub of: ThinWheel,
    /// Side load on one point of the rim over its deflection there.
    pub stiffness: SideStiffness,
    /// Side load spread evenly round the rim over its deflection.
    pub ring_stiffness: SideStiffness,
    /// Bending moment per length at the flange in line with a load on one point, over that load.
    pub clamp_moment: f64,
    /// The same for a load spread evenly.
    pub ring_clamp_moment: f64,
    /// Side load on one point of the rim that the strength allows; `None` without a strength.
    pub allowed_side_load: Option<Force>,
    /// How far that load pushes the rim aside.
    pub deflection: Option<Length>,
    /// Whether that is less than half of the thickness, as the theory wants; otherwise the rim gives less.
    pub small: Option<bool>,
    /// Frequencies at rest with 0 to 3 nodal diameters; `None` without density and hole.
    pub frequencies: Option<[Frequency; 4]>,
    /// The same at the speed given, felt on the turning wheel.
    pub turning_frequencies: Option<[Frequency; 4]>,
    /// Speed at which a wave stands; `None` too where none ever does.
    pub critical: Option<CriticalSpeed>,
}

/// Flange over wheel, when the three sizes make a thin plate.
pub(super) fn ratio_of(
    diameter: Length,
    (name, support): (&str, Length),
    thickness: Length,
) -> Result<f64, Error> {
    let a = positive_length("diameter", diameter)? / 2.0;
    let b = positive_length(name, support)? / 2.0;
    let h = positive_length("thickness", thickness)?;
    let [least, most] = CLAMPED;
    let ratio = b / a;
    let error = |argument: &str, given, range, hint: &str| {
        let (argument, authority, hint) = (argument.into(), String::new(), hint.into());
        Err(ErrorKind::OutOfRange { argument, given, range, unit: "mm", authority, hint }.into())
    };
    if ratio >= 1.0 {
        let range = format!("not below the wheel's {}", shown_mm(diameter));
        let hint = "measure both again; one of the two is mistyped";
        return error(name, shown_mm(support), range, hint);
    }
    if !(least..=most).contains(&ratio) {
        let share = |share: f64| figure(share * shown_mm(diameter), 3);
        let range = format!("outside {} to {} on this wheel", share(least), share(most));
        let hint = "only flanges of 0.05 to 0.98 of the wheel are computed";
        return error(name, shown_mm(support), range, hint);
    }
    if h > THIN * (a - b) * (1.0 + 1e-9) {
        let tenth = figure(shown_mm(diameter - support) / 20.0, 3);
        let range = format!("above a tenth of what stands out of `{name}`, {tenth}");
        let hint = "a wheel this thick is no thin plate: it is stiffer by far, and this theory is not for it";
        return error("thickness", shown_mm(thickness), range, hint);
    }
    Ok(ratio)
}

/// Bending stress by a moment per length `m P` in a wheel of a thickness.
#[inline(always)]
pub(crate) fn bending_stress(moment: f64, load: f64, thickness: f64) -> f64 {
    6.0 * moment * load / (thickness * thickness)
}

/// `√(D / ρh) / a²`: the unit of a wheel's frequencies and speeds.
#[inline(always)]
pub(crate) fn pace(modulus: f64, poisson: f64, density: f64, thickness: f64, radius: f64) -> f64 {
    (stiffness(modulus, thickness, poisson) / (density * thickness)).sqrt() / (radius * radius)
}

/// Speed, nodal diameters, least and greatest of the three conditions, in that unit.
pub(crate) fn standing(
    ratio: f64,
    poisson: f64,
    bore: f64,
) -> Result<Option<(f64, usize, f64, f64)>, Error> {
    let of = |in_plane| critical_disc_speed(ratio, poisson, in_plane);
    let Some((speed, nodes)) = of(InPlane::FreeAtBore(bore))? else { return Ok(None) };
    let (mut least, mut greatest) = (speed, speed);
    for (other, _) in [of(InPlane::FreeAtClamp)?, of(InPlane::Held)?].into_iter().flatten() {
        (least, greatest) = (least.min(other), greatest.max(other));
    }
    Ok(Some((speed, nodes, least, greatest)))
}

impl ThinWheel {
    /// A wheel between flanges of one diameter.
    pub fn new(
        diameter: Length,
        flange: Length,
        thickness: Length,
        modulus: Pressure,
        poisson: f64,
    ) -> Self {
        let (turning, strength, speed) = (None, None, None);
        Self { diameter, flange, thickness, modulus, poisson, turning, strength, speed }
    }

    /// With its density and hole, for frequencies and the critical speed.
    #[must_use]
    pub fn with_turning(mut self, density: MassDensity, hole: Length) -> Self {
        self.turning = Some((density, hole));
        self
    }

    /// With the flexural strength of its bond and the factor asked for.
    #[must_use]
    pub fn with_strength(mut self, flexural: Pressure, factor: f64) -> Self {
        self.strength = Some((flexural, factor));
        self
    }

    /// With a rotational speed.
    #[must_use]
    pub fn with_speed(mut self, speed: AngularVelocity) -> Self {
        self.speed = Some(speed);
        self
    }

    fn check(&self) -> Result<f64, Error> {
        let ratio = ratio_of(self.diameter, ("flange", self.flange), self.thickness)?;
        let modulus = self.modulus.get::<gigapascal>();
        within("modulus", modulus, [0.1, 2000.0], "GPa", "12 GPa")?;
        below("poisson", self.poisson, 0.5, "", "0.2")?;
        if let Some((density, hole)) = self.turning {
            let density = density.get::<kilogram_per_cubic_meter>();
            within("density", density, DENSITIES, "kg/m3", "2400 kg/m3")?;
            zero_or_more("hole", hole.get::<millimeter>(), "mm", "22.23 mm")?;
            if hole > self.flange {
                return Err(ErrorKind::OutOfRange {
                    argument: "hole".into(),
                    given: shown_mm(hole),
                    range: format!("above the flange's {}", shown_mm(self.flange)),
                    unit: "mm",
                    authority: String::new(),
                    hint: "measure both again; a flange covers the hole".into(),
                }
                .into());
            }
        }
        if let Some((flexural, factor)) = self.strength {
            let flexural = flexural.get::<megapascal>();
            below("flexural_strength", flexural, 1e3, "MPa", "25 MPa")?;
            within("strength_factor", factor, [1.0, 1e3], "", "3")?;
        }
        if let Some(speed) = self.speed {
            let speed = speed.get::<revolution_per_minute>();
            below("speed", speed, 1e6, "rpm", "6000 rpm")?;
            if self.turning.is_none() {
                return Err(ErrorKind::Missing {
                    argument: "density".into(),
                    why: "what a wheel does at its speed depends on it".into(),
                    hint: "give `density` and `hole` too, or leave out `speed`".into(),
                }
                .into());
            }
        }
        Ok(ratio)
    }

    fn rigidity(&self) -> f64 {
        stiffness(self.modulus.get::<pascal>(), self.thickness.get::<meter>(), self.poisson)
    }

    /// `√(D / ρh) / a²` in 1/s, and the hole over the wheel.
    fn pace(&self) -> Option<(f64, f64)> {
        let (density, hole) = self.turning?;
        let density = density.get::<kilogram_per_cubic_meter>();
        let (modulus, h) = (self.modulus.get::<pascal>(), self.thickness.get::<meter>());
        let a = self.diameter.get::<meter>() / 2.0;
        Some((pace(modulus, self.poisson, density, h, a), hole.get::<meter>() / 2.0 / a))
    }

    /// Stiffness, moment, side load, frequencies and critical speed.
    ///
    /// # Errors
    ///
    /// See [`ThinWheel`].
    pub fn solve(self) -> Result<ThinWheelFound, Error> {
        let ratio = self.check()?;
        let of = clamped_disc(ratio, self.poisson)?;
        let (a, h) = (self.diameter.get::<meter>() / 2.0, self.thickness.get::<meter>());
        let per_unit = self.rigidity() / (a * a);
        let stiffness = per_unit / of.point_deflection;
        let load = self.strength.map(|(flexural, factor)| {
            flexural.get::<pascal>() / factor / bending_stress(of.point_moment, 1.0, h)
        });
        let deflection = load.map(|load| load / stiffness);
        let (mut frequencies, mut turning_frequencies, mut critical) = (None, None, None);
        if let Some((pace, bore)) = self.pace() {
            let bore = bore.min(ratio);
            let at_hole = InPlane::FreeAtBore(bore);
            let at = |turning: f64| -> Result<[Frequency; 4], Error> {
                let mut all = [Frequency::default(); 4];
                for (nodes, frequency) in all.iter_mut().enumerate() {
                    let of = disc_frequency(ratio, self.poisson, nodes, turning / pace, at_hole)
                        .map_err(|error| error.named("speed over the wheel's own pace"))?;
                    *frequency = Frequency::new::<hertz>(of * pace / std::f64::consts::TAU);
                }
                Ok(all)
            };
            frequencies = Some(at(0.0)?);
            if let Some(speed) = self.speed {
                turning_frequencies = Some(at(speed.get::<radian_per_second>())?);
            }
            critical = self.critical(ratio, pace, bore)?;
        }
        Ok(ThinWheelFound {
            of: self,
            stiffness: SideStiffness::new::<newton_per_meter>(stiffness),
            ring_stiffness: SideStiffness::new::<newton_per_meter>(per_unit / of.ring_deflection),
            clamp_moment: of.point_moment,
            ring_clamp_moment: of.ring_moment,
            allowed_side_load: load.map(Force::new::<newton>),
            deflection: deflection.map(Length::new::<meter>),
            small: deflection.map(|deflection| deflection < h / 2.0),
            frequencies,
            turning_frequencies,
            critical,
        })
    }

    fn critical(&self, ratio: f64, pace: f64, bore: f64) -> Result<Option<CriticalSpeed>, Error> {
        let turns = |speed: f64| AngularVelocity::new::<radian_per_second>(speed * pace);
        Ok(standing(ratio, self.poisson, bore)?.map(|(speed, nodes, least, greatest)| {
            CriticalSpeed {
                speed: turns(speed),
                nodes,
                least: turns(least),
                greatest: turns(greatest),
                reached: self.speed.map(|spindle| spindle >= turns(least)),
            }
        }))
    }
}

impl ThinWheelFound {
    /// The steps, recomputed. The last one's result is `allowed_side_load` in N where there is a
    /// strength, else the critical speed in rev/min where there is one, else `stiffness` in N/mm.
    pub fn working(&self) -> Working {
        let Ok(again) = self.of.solve() else { return Working::default() };
        let of = again.of;
        let mm = |length: Length| figure(shown_mm(length), 4);
        let rigidity = of.rigidity();
        let numbers = format!(
            "{} GPa · ({} mm)³ / 12(1 − {}²)",
            figure(of.modulus.get::<gigapascal>(), 4),
            mm(of.thickness),
            figure(of.poisson, 4)
        );
        let step = |symbol, relation, numbers, result, unit, source| Step {
            symbol,
            relation,
            numbers,
            result,
            unit,
            source,
        };
        let relation = "E h³ / 12(1 − ν²)";
        let stiff = again.stiffness.get::<newton_per_millimeter>();
        let a2 = (of.diameter.get::<meter>() / 2.0).powi(2);
        let by = rigidity / (a2 * again.stiffness.get::<newton_per_meter>());
        let wheel = format!(
            "{} N m / ({} · ({} mm / 2)²), k for {} mm in {} mm",
            figure(rigidity, 6),
            figure(by, 7),
            mm(of.diameter),
            mm(of.flange),
            mm(of.diameter)
        );
        let mut steps = vec![
            step("D", relation, numbers, rigidity, "N m", THIN_DISCS),
            step("c", "D / (k a²)", wheel, stiff, "N/mm", THIN_DISCS),
        ];
        if let (Some(critical), Some((pace, _))) = (again.critical, of.pace()) {
            let speed = critical.speed.get::<revolution_per_minute>();
            let numbers = format!(
                "{} · {} rad/s, {} nodal diameters",
                figure(critical.speed.get::<radian_per_second>() / pace, 6),
                figure(pace, 5),
                critical.nodes
            );
            let relation = "least Ω with ωn(Ω) = n Ω, in units of √(D / ρh) / a²";
            steps.push(step("n stand", relation, numbers, speed, "rev/min", VIBRATING_DISCS));
        }
        if let (Some((flexural, factor)), Some(load)) = (of.strength, again.allowed_side_load) {
            let numbers = format!(
                "{} MPa · ({} mm)² / (6 · {} · {})",
                figure(flexural.get::<megapascal>(), 4),
                mm(of.thickness),
                figure(again.clamp_moment, 6),
                figure(factor, 4)
            );
            let load = load.get::<newton>();
            steps.push(step("P", "S h² / (6 m j)", numbers, load, "N", THIN_DISCS));
        }
        Working { steps }
    }
}
