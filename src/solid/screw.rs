//! Screws and the faces they press on: torque, and force along the axis.

use std::f64::consts::PI;

use crate::error::{Error, ErrorKind};
use crate::source::{Source, Status};
use crate::units::{
    Angle, Force, Length, Pressure, Torque, degree, meter, newton, newton_meter, pascal, positive,
    positive_length, radian, shown_mm, within,
};

/// Screws with friction on their flanks, and friction of flat rings.
pub const SCREWS: Source = Source::new(
    "screw-statics",
    "statics of screws and friction faces (Shigley, power screws and disc clutches)",
    "",
    "",
    Status::Computed,
);

/// `tan φ = L / (π d2)`, with `L` the lead and `d2` the pitch diameter.
#[inline(always)]
pub(crate) fn slope(pitch_diameter: f64, lead: f64) -> f64 {
    lead / (PI * pitch_diameter)
}

/// Torque over force of a screw driven against the force, `d2/2 · tan(φ + ρ')`.
#[inline(always)]
pub(crate) fn tightening_arm(pitch_diameter: f64, lead: f64, rub: f64) -> f64 {
    let slope = slope(pitch_diameter, lead);
    pitch_diameter / 2.0 * (slope + rub) / (1.0 - slope * rub)
}

/// Torque over force of a screw driven with the force, `d2/2 · tan(ρ' − φ)`; below zero where it
/// runs back by itself.
#[inline(always)]
pub(crate) fn loosening_arm(pitch_diameter: f64, lead: f64, rub: f64) -> f64 {
    let slope = slope(pitch_diameter, lead);
    pitch_diameter / 2.0 * (rub - slope) / (1.0 + slope * rub)
}

/// A screw under a force along its axis.
///
/// `T = F d2/2 tan(φ + ρ')` drives it against the force, `T = F d2/2 tan(ρ' − φ)`
/// lets it go, with `tan φ = L / (π d2)` and `tan ρ' = μ / cos α`: `d2` the pitch
/// diameter, `L` the lead (the pitch of a thread with one start), `α` half
/// of the angle between the flanks, `μ` the friction on them. It holds by itself
/// while `ρ' > φ`.
///
/// The flank angle is taken in the plane of the axis; the exact angle, square to
/// the thread, changes the torque of a fastening thread by about 0.02 %.
///
/// # Errors
///
/// [`ErrorKind::NotFinite`] or [`ErrorKind::OutOfRange`] for lengths not above
/// zero, half angles outside 0 to 60°, friction not above 0 and up to 1, and a lead so
/// steep that no torque drives the screw.
///
/// # Source
///
/// Shigley, power screws.
///
/// # Example
///
/// A force of 12 kN on a thread M16×2 with friction 0.14 takes 18.2 N m in the thread.
///
/// ```
/// use hubwright::solid::Screw;
/// use hubwright::units::{Angle, Force, Length, degree, millimeter, newton, newton_meter};
///
/// let mm = Length::new::<millimeter>;
/// let screw = Screw::new(mm(14.701), mm(2.0), Angle::new::<degree>(30.0), 0.14)?;
/// let torque = screw.torque(Force::new::<newton>(12_000.0));
/// assert!((torque.get::<newton_meter>() - 18.206).abs() < 1e-3);
/// assert!(screw.holds_itself());
/// # Ok::<(), hubwright::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Screw {
    pitch_diameter: f64,
    lead: f64,
    /// tan ρ'.
    rub: f64,
}

impl Screw {
    /// A screw; its lead is the pitch times the number of starts.
    ///
    /// # Errors
    ///
    /// As described on the type.
    pub fn new(
        pitch_diameter: Length,
        lead: Length,
        half_angle: Angle,
        friction: f64,
    ) -> Result<Self, Error> {
        let diameter = positive_length("pitch_diameter", pitch_diameter)?;
        let lead_m = positive_length("lead", lead)?;
        within("half_angle", half_angle.get::<degree>(), [0.0, 60.0], "deg", "30 deg")?;
        share("friction", friction)?;
        let rub = friction / half_angle.get::<radian>().cos();
        if slope(diameter, lead_m) * rub >= 1.0 {
            return Err(ErrorKind::OutOfRange {
                argument: "lead".into(),
                given: shown_mm(lead),
                range: format!("not below {}", PI * diameter / rub * 1e3),
                unit: "mm",
                authority: "no torque drives so steep a screw".into(),
                hint: "check lead, pitch diameter and friction".into(),
            }
            .into());
        }
        Ok(Self { pitch_diameter: diameter, lead: lead_m, rub })
    }

    /// Angle of the thread's rise, φ.
    pub fn lead_angle(&self) -> Angle {
        Angle::new::<radian>(slope(self.pitch_diameter, self.lead).atan())
    }

    /// Angle of friction on the inclined flanks, ρ'.
    pub fn friction_angle(&self) -> Angle {
        Angle::new::<radian>(self.rub.atan())
    }

    /// Whether it stays where it is without a torque: ρ' > φ.
    pub fn holds_itself(&self) -> bool {
        self.rub > slope(self.pitch_diameter, self.lead)
    }

    /// Torque over force, driven against the force, in metres.
    pub(crate) fn tightening_arm(&self) -> f64 {
        tightening_arm(self.pitch_diameter, self.lead, self.rub)
    }

    /// Torque over force, driven with the force, in metres.
    pub(crate) fn loosening_arm(&self) -> f64 {
        loosening_arm(self.pitch_diameter, self.lead, self.rub)
    }

    /// Torque that drives it against a force.
    pub fn torque(&self, force: Force) -> Torque {
        Torque::new::<newton_meter>(force.get::<newton>() * self.tightening_arm())
    }

    /// Torque that drives it with a force; below zero it has to be held back.
    pub fn loosening_torque(&self, force: Force) -> Torque {
        Torque::new::<newton_meter>(force.get::<newton>() * self.loosening_arm())
    }

    /// Force that a torque drives it against.
    pub fn force(&self, torque: Torque) -> Force {
        Force::new::<newton>(torque.get::<newton_meter>() / self.tightening_arm())
    }
}

/// A flat ring that rubs under a force along its axis.
///
/// `T = μ F r`, where `r = 2/3 (ro³ − ri³) / (ro² − ri²)` under an even pressure
/// and `(ro + ri) / 2` once the face has worn in.
///
/// # Errors
///
/// [`ErrorKind::NotFinite`] or [`ErrorKind::OutOfRange`] for diameters that make no ring.
///
/// # Source
///
/// Shigley, disc clutches.
///
/// # Example
///
/// A land 60 to 76 mm across has a friction radius of 34.16 mm, worn in 34 mm.
///
/// ```
/// use hubwright::solid::Face;
/// use hubwright::units::{Length, millimeter};
///
/// let mm = Length::new::<millimeter>;
/// let land = Face::new(mm(60.0), mm(76.0))?;
/// assert!((land.even_radius().get::<millimeter>() - 34.157).abs() < 1e-3);
/// assert!((land.worn_radius().get::<millimeter>() - 34.0).abs() < 1e-9);
/// # Ok::<(), hubwright::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Face {
    inside: f64,
    outside: f64,
}

impl Face {
    /// A ring from its inside and outside diameter; inside zero is a full disc.
    ///
    /// # Errors
    ///
    /// As described on the type.
    pub fn new(inside: Length, outside: Length) -> Result<Self, Error> {
        let outer = positive_length("outside", outside)?;
        let inner = inside.get::<meter>();
        crate::units::zero_or_more("inside", inner * 1e3, "mm", "20 mm")?;
        if inner >= outer {
            return Err(ErrorKind::OutOfRange {
                argument: "inside".into(),
                given: shown_mm(inside),
                range: format!("not below the outside of {}", shown_mm(outside)),
                unit: "mm",
                authority: String::new(),
                hint: "give the inside diameter of the face first, the outside second".into(),
            }
            .into());
        }
        Ok(Self { inside: inner / 2.0, outside: outer / 2.0 })
    }

    /// Friction radius under an even pressure.
    pub fn even_radius(&self) -> Length {
        let (a, b) = (self.inside, self.outside);
        Length::new::<meter>(2.0 / 3.0 * (a * a + a * b + b * b) / (a + b))
    }

    /// Friction radius of a face that has worn in; the mean radius, which fastening rules use.
    pub fn worn_radius(&self) -> Length {
        Length::new::<meter>(f64::midpoint(self.inside, self.outside))
    }

    /// Mean pressure on it.
    pub fn pressure(&self, force: Force) -> Pressure {
        let area = PI * (self.outside * self.outside - self.inside * self.inside);
        Pressure::new::<pascal>(force.get::<newton>() / area)
    }

    /// Torque that it holds by friction, under an even pressure and worn in.
    ///
    /// # Errors
    ///
    /// As described on the type, for friction not above 0 and up to 1.
    pub fn torque(&self, force: Force, friction: f64) -> Result<[Torque; 2], Error> {
        share("friction", friction)?;
        let grip = force.get::<newton>() * friction;
        let torque = |radius: Length| Torque::new::<newton_meter>(grip * radius.get::<meter>());
        Ok([torque(self.even_radius()), torque(self.worn_radius())])
    }
}

/// A friction: above zero, up to one.
pub(crate) fn share(argument: &str, given: f64) -> Result<(), Error> {
    positive(argument, given, "", "0.12")?;
    within(argument, given, [0.0, 1.0], "", "0.12")
}
