//! How strong a turning wheel is: stress, bursting speed, fragments, bonded rims.

use crate::error::{Error, ErrorKind};
use crate::solid::rings::{ROTATING_RINGS, hoop_at_bore};
use crate::solid::{Compound, Held, Ring, compound};
use crate::tables::laws;
use crate::units::{
    Angle, AngularVelocity, Energy, Length, Mass, MassDensity, Pressure, Velocity, below, degree,
    figure, joule, kilogram, kilogram_per_cubic_meter, megapascal, meter, meter_per_second,
    millimeter, pascal, positive, positive_length, radian, radian_per_second,
    revolution_per_minute, shown_mm, within, zero_or_more,
};
use crate::working::{Step, Working};

/// What a plain wheel of one material carries as it turns.
///
/// `σt = ρ ω² / 4 [(3 + ν) b² + (1 - ν) a²]` at the hole, the greatest stress, with hole and
/// outside radius `a` and `b`; half of the first term at the centre of a wheel without a
/// hole. All stresses grow with `ω²`, so that with a tensile strength `S` the
/// bursting speed is `ω √(S / σt)`, the factor on stress `S / σt` and the
/// factor on speed its root.
///
/// **The speed marked on the wheel is the limit**, whatever the bursting speed computed
/// here: [`StrengthFound::greatest_speed`] never exceeds it, and there is none without it.
///
/// It holds for flat wheels of one material and thickness: no recess, no
/// fabric, no inserts, no cracks, no side load, no clamping.
///
/// # Errors
///
/// [`ErrorKind::OutOfRange`] or [`ErrorKind::NotFinite`] for a number that
/// makes no sense: a hole as large as the wheel, Poisson's ratio outside 0 to 0.5.
///
/// # Source
///
/// Timoshenko and Goodier, *Theory of Elasticity* (rotating discs); the cap is
/// 29 CFR 1910.215(d)(1).
///
/// # Example
///
/// A vitrified wheel of 200 mm with a hole of 31.75 mm, which its maker gives
/// 20 MPa, at 3000 rev/min: it bursts at 3.33 times that speed.
///
/// ```
/// use hubwright::units::{AngularVelocity, Length, MassDensity, Pressure, kilogram_per_cubic_meter, megapascal, millimeter, revolution_per_minute};
/// use hubwright::wheel::Strength;
///
/// let found = Strength::new(
///     Length::new::<millimeter>(200.0),
///     Length::new::<millimeter>(31.75),
///     MassDensity::new::<kilogram_per_cubic_meter>(2250.0),
///     0.22,
///     AngularVelocity::new::<revolution_per_minute>(3000.0),
/// )
/// .with_tensile_strength(Pressure::new::<megapascal>(20.0))
/// .solve()?;
/// assert!((found.speed_factor.expect("a strength is given") - 3.3347).abs() < 1e-4);
/// assert_eq!(found.greatest_speed, None); // no marking was given
/// # Ok::<(), hubwright::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Strength {
    /// Outside diameter.
    pub diameter: Length,
    /// Hole; zero for a wheel without one.
    pub hole: Length,
    /// Density.
    pub density: MassDensity,
    /// Poisson's ratio.
    pub poisson: f64,
    /// Rotational speed.
    pub speed: AngularVelocity,
    /// Tensile strength, by the wheel's maker.
    pub tensile_strength: Option<Pressure>,
    /// Factor on stress asked for, (bursting speed / speed)².
    pub burst_factor: Option<f64>,
    /// Rotational speed marked on the wheel.
    pub marked_speed: Option<AngularVelocity>,
    /// Thickness and included angle of a fragment.
    pub fragment: Option<(Length, Angle)>,
}

/// A sector of a wheel that flies off.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Fragment {
    /// Its mass.
    pub mass: Mass,
    /// Distance of its centre of mass from the axis.
    pub centre: Length,
    /// Speed of its centre of mass.
    pub speed: Velocity,
    /// Its energy, flight and spin together.
    pub energy: Energy,
    /// The part of it that is flight.
    pub flight: Energy,
}

/// What [`Strength::solve`] found.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct StrengthFound {
    /// What was asked.
    pub of: Strength,
    /// Hoop stress at the hole (at the centre without one), the greatest in the wheel.
    pub hoop: Pressure,
    /// Greatest radial stress.
    pub radial: Pressure,
    /// Diameter at which it is.
    pub radial_at: Length,
    /// Hoop stress at the rim.
    pub rim_hoop: Pressure,
    /// Speed of the rim.
    pub rim_speed: Velocity,
    /// Strength over hoop stress.
    pub stress_factor: Option<f64>,
    /// Bursting speed over speed.
    pub speed_factor: Option<f64>,
    /// Speed at which the hoop stress reaches the strength given. No wheel may be
    /// run near it.
    pub bursting_speed: Option<AngularVelocity>,
    /// Greatest speed that keeps the factor asked for, and never above the marked one; `None` without
    /// a strength, a factor or a marking.
    pub greatest_speed: Option<AngularVelocity>,
    /// Whether the marked speed holds it down.
    pub capped: bool,
    /// Whether the speed asked about is above the marked one.
    pub above_marked: bool,
    /// The fragment asked about, at the speed asked about.
    pub fragment: Option<Fragment>,
}

impl Strength {
    /// A wheel that turns.
    pub fn new(
        diameter: Length,
        hole: Length,
        density: MassDensity,
        poisson: f64,
        speed: AngularVelocity,
    ) -> Self {
        Self {
            diameter,
            hole,
            density,
            poisson,
            speed,
            tensile_strength: None,
            burst_factor: None,
            marked_speed: None,
            fragment: None,
        }
    }

    /// With the tensile strength that the wheel's maker gives.
    #[must_use]
    pub fn with_tensile_strength(mut self, strength: Pressure) -> Self {
        self.tensile_strength = Some(strength);
        self
    }

    /// With the factor on stress that is asked for, (bursting speed / speed)².
    #[must_use]
    pub fn with_burst_factor(mut self, factor: f64) -> Self {
        self.burst_factor = Some(factor);
        self
    }

    /// With the rotational speed marked on the wheel.
    #[must_use]
    pub fn with_marked_speed(mut self, speed: AngularVelocity) -> Self {
        self.marked_speed = Some(speed);
        self
    }

    /// With a fragment: a sector of the wheel's thickness and this included angle.
    #[must_use]
    pub fn with_fragment(mut self, thickness: Length, angle: Angle) -> Self {
        self.fragment = Some((thickness, angle));
        self
    }

    /// Stresses, speeds and the fragment.
    ///
    /// # Errors
    ///
    /// See [`Strength`].
    pub fn solve(self) -> Result<StrengthFound, Error> {
        self.check()?;
        let (a, b) = (self.hole.get::<meter>() / 2.0, self.diameter.get::<meter>() / 2.0);
        let (rho, nu) = (self.density.get::<kilogram_per_cubic_meter>(), self.poisson);
        let w = self.speed.get::<radian_per_second>();
        let hoop = hoop_at_bore(a, b, nu, rho, w * w);
        let k = (3.0 + nu) / 8.0 * rho * w * w;
        let rim = rho * w * w / 4.0 * ((1.0 - nu) * b * b + (3.0 + nu) * a * a);
        let strength = self.tensile_strength.map(|strength| strength.get::<pascal>());
        let stress_factor = strength.map(|strength| strength / hoop);
        let speed_factor = stress_factor.map(f64::sqrt);
        let bursting_speed = speed_factor.map(|factor| self.speed * factor);
        let by_factor = bursting_speed.zip(self.burst_factor).map(|(n, asked)| n / asked.sqrt());
        let greatest = by_factor.zip(self.marked_speed);
        let capped = greatest.is_some_and(|(free, marked)| free > marked);
        Ok(StrengthFound {
            of: self,
            hoop: Pressure::new::<pascal>(hoop),
            radial: Pressure::new::<pascal>(k * (b - a) * (b - a)),
            radial_at: Length::new::<meter>(2.0 * (a * b).sqrt()),
            rim_hoop: Pressure::new::<pascal>(rim),
            rim_speed: Velocity::new::<meter_per_second>(w * b),
            stress_factor,
            speed_factor,
            bursting_speed,
            greatest_speed: greatest.map(|(free, marked)| if capped { marked } else { free }),
            capped,
            above_marked: self.marked_speed.is_some_and(|marked| self.speed > marked),
            fragment: self.fragment.map(|(thickness, angle)| self.sector(thickness, angle)),
        })
    }

    fn sector(&self, thickness: Length, angle: Angle) -> Fragment {
        let (a, b) = (self.hole.get::<meter>() / 2.0, self.diameter.get::<meter>() / 2.0);
        let (h, t) = (thickness.get::<meter>(), angle.get::<radian>());
        let rho = self.density.get::<kilogram_per_cubic_meter>();
        let w = self.speed.get::<radian_per_second>();
        let mass = rho * h * t / 2.0 * (b * b - a * a);
        let sine = (t / 2.0).sin();
        let centre = 4.0 * sine / (3.0 * t) * (b.powi(3) - a.powi(3)) / (b * b - a * a);
        let speed = w * centre;
        Fragment {
            mass: Mass::new::<kilogram>(mass),
            centre: Length::new::<meter>(centre),
            speed: Velocity::new::<meter_per_second>(speed),
            energy: Energy::new::<joule>(rho * h * t * w * w / 8.0 * (b.powi(4) - a.powi(4))),
            flight: Energy::new::<joule>(mass / 2.0 * speed * speed),
        }
    }

    fn check(&self) -> Result<(), Error> {
        positive_length("diameter", self.diameter)?;
        zero_or_more("hole", self.hole.get::<millimeter>(), "mm", "31.75 mm")?;
        if self.hole >= self.diameter {
            return Err(ErrorKind::OutOfRange {
                argument: "hole".into(),
                given: shown_mm(self.hole),
                range: format!("not below the wheel's {}", shown_mm(self.diameter)),
                unit: "mm",
                authority: String::new(),
                hint: "measure hole and diameter again; one of the two is mistyped".into(),
            }
            .into());
        }
        let density = self.density.get::<kilogram_per_cubic_meter>();
        below("density", density, 3e4, "kg/m3", "2250 kg/m3")?;
        below("poisson", self.poisson, 0.5, "", "0.22")?;
        let rpm = |speed: AngularVelocity| speed.get::<revolution_per_minute>();
        below("speed", rpm(self.speed), 1e7, "rpm", "2850 rpm")?;
        if let Some(strength) = self.tensile_strength {
            below("tensile_strength", strength.get::<megapascal>(), 1e5, "MPa", "20 MPa")?;
        }
        if let Some(factor) = self.burst_factor {
            within("burst_factor", factor, [1.0, 1e3], "", "3")?;
        }
        if let Some(marked) = self.marked_speed {
            positive("marked_speed", rpm(marked), "rpm", "2850 rpm")?;
        }
        if let Some((thickness, angle)) = self.fragment {
            positive_length("thickness", thickness)?;
            let degrees = (angle.get::<degree>() * 1e9).round() / 1e9;
            positive("fragment_angle", degrees, "deg", "180 deg")?;
            within("fragment_angle", degrees, [0.0, 360.0], "deg", "180 deg")?;
        }
        Ok(())
    }
}

impl StrengthFound {
    /// The steps, recomputed. The last one's result is `greatest_speed` in rev/min where there is
    /// one, else `bursting_speed`, else `hoop` in MPa.
    pub fn working(&self) -> Working {
        let Ok(again) = self.of.solve() else { return Working::default() };
        let of = again.of;
        let mut steps = Vec::new();
        let mut step = |symbol, relation, numbers, result, unit, source| {
            steps.push(Step { symbol, relation, numbers, result, unit, source });
        };
        let rpm = |speed: AngularVelocity| speed.get::<revolution_per_minute>();
        let solid = of.hole == Length::default();
        let numbers = format!(
            "ρ {} kg/m3, ν {}, ω {} rad/s, from {} to {} mm",
            figure(of.density.get::<kilogram_per_cubic_meter>(), 2),
            figure(of.poisson, 4),
            figure(of.speed.get::<radian_per_second>(), 4),
            figure(of.hole.get::<millimeter>(), 4),
            figure(of.diameter.get::<millimeter>(), 4)
        );
        let relation = if solid {
            "(3 + ν) ρ ω² b² / 8"
        } else {
            "ρ ω² / 4 [(3 + ν) b² + (1 - ν) a²]"
        };
        let hoop = again.hoop.get::<megapascal>();
        step("σt", relation, numbers, hoop, "MPa", ROTATING_RINGS);
        if let (Some(strength), Some(burst)) = (of.tensile_strength, again.bursting_speed) {
            let strength = figure(strength.get::<megapascal>(), 4);
            let numbers = format!(
                "{} rev/min · √({strength} MPa / {} MPa)",
                figure(rpm(of.speed), 3),
                figure(hoop, 6)
            );
            step("n burst", "n √(S / σt)", numbers, rpm(burst), "rev/min", ROTATING_RINGS);
            if let (Some(asked), Some(marked), Some(greatest)) =
                (of.burst_factor, of.marked_speed, again.greatest_speed)
            {
                let numbers = format!(
                    "min({} / √{}, {}) rev/min",
                    figure(rpm(burst), 3),
                    figure(asked, 4),
                    figure(rpm(marked), 3)
                );
                let relation = "min(n burst / √factor, n marked)";
                step("n", relation, numbers, rpm(greatest), "rev/min", laws::MARKED_SPEED);
            }
        }
        Working { steps }
    }
}

/// What [`rings`] found.
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub struct WheelRings {
    /// Every ring and every joint between them, from the inside outwards.
    pub compound: Compound,
    /// Greatest tension of a bond; zero where all are under pressure or nothing is bonded.
    pub bond_tension: Pressure,
    /// Strength of the bond, when it was given.
    pub bond_strength: Option<Pressure>,
    /// Strength of the bond over its tension; `None` without a strength or a tension.
    pub bond_factor: Option<f64>,
}

/// A wheel of several rings: a core with a bonded rim, or more.
///
/// See [`compound`] for the equations. The rim of a superabrasive
/// wheel may grow more than its core as it turns, or warm up less: then
/// the bond is in tension, which is compared with `bond_strength`.
///
/// # Errors
///
/// As [`compound`]; also [`ErrorKind::OutOfRange`] for a bond strength that
/// is not above zero, or an interference below zero.
///
/// # Source
///
/// Timoshenko and Goodier, *Theory of Elasticity* (thick cylinders, rotating discs).
///
/// # Example
///
/// An aluminium core of 340 mm with a rim of 350 mm at 120 m/s: the bond is pulled with 1 MPa,
/// a tenth of what this one carries.
///
/// ```
/// use hubwright::solid::Ring;
/// use hubwright::tables::materials::Elastic;
/// use hubwright::units::{AngularVelocity, Length, MassDensity, Pressure, gigapascal, kilogram_per_cubic_meter, megapascal, millimeter, radian_per_second};
/// use hubwright::wheel::rings;
///
/// let mm = Length::new::<millimeter>;
/// let of = |modulus, poisson, density| {
///     Elastic::new(Pressure::new::<gigapascal>(modulus), poisson, MassDensity::new::<kilogram_per_cubic_meter>(density))
/// };
/// let wheel = [Ring::innermost(mm(340.0), of(71.0, 0.33, 2750.0)), Ring::bonded(mm(350.0), of(45.0, 0.22, 2900.0))];
/// let speed = AngularVelocity::new::<radian_per_second>(120.0 / 0.175);
/// let found = rings(mm(127.0), &wheel, speed, Some(Pressure::new::<megapascal>(10.0)))?;
/// assert!((found.bond_tension.get::<megapascal>() - 0.978).abs() < 0.001);
/// assert!(found.bond_factor.is_some_and(|factor| factor > 10.0));
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn rings(
    bore: Length,
    rings: &[Ring],
    speed: AngularVelocity,
    bond_strength: Option<Pressure>,
) -> Result<WheelRings, Error> {
    for (at, ring) in rings.iter().enumerate() {
        if let Held::Shrunk(interference) = ring.held {
            let given = interference.get::<millimeter>();
            zero_or_more(&format!("rings[{at}].interference"), given, "mm", "0.02 mm")?;
        }
    }
    if let Some(strength) = bond_strength {
        positive("bond_strength", strength.get::<megapascal>(), "MPa", "10 MPa")?;
    }
    let compound = compound(bore, rings, speed)?;
    let bonds = compound.interfaces.iter().filter(|joint| joint.bonded);
    let bond_tension = bonds.fold(Pressure::default(), |most, bond| most.max(bond.tension()));
    let pull = bond_tension.get::<pascal>();
    let bond_factor = bond_strength.filter(|_| pull > 0.0).map(|s| s.get::<pascal>() / pull);
    Ok(WheelRings { compound, bond_tension, bond_strength, bond_factor })
}
