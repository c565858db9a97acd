//! The nut: preload and torque, what they do to the thread, and which way it comes off.

mod circle;
mod hand;
mod jacking;
mod spanner;
mod strength;

pub use circle::{
    DIVIDING_CIRCLES, DIVIDING_PLATES, Division, Hole, HoleCircle, dividing, hole_circle,
};
pub use hand::{Rotation, loosening};
pub use jacking::{Jacked, JackingScrew};
pub use spanner::{PinSpanner, PinSpannerFound, hand_force, spanner_torque};

use super::thread::{Thread, ThreadClass, ThreadLimits};
use crate::error::{Error, ErrorKind};
use crate::solid::Screw;
use crate::solid::screw::{Face, SCREWS, share};
use crate::source::{Source, Status};
use crate::units::{
    Area, Force, Length, Pressure, Torque, below, figure, meter, newton, newton_meter, pascal,
    positive, positive_length, shown_mm, within, zero_or_more,
};
use crate::working::{Step, Working};
use strength::Section;

/// Stress of a tightened screw, tension and torsion together.
pub const TIGHTENED: Source = Source::new(
    "vdi2230",
    "VDI 2230",
    "2003",
    "assembly preload, as in a fastener catalogue's table",
    Status::Reprint,
);
/// Shear areas of engaged threads.
pub const STRIPPING: Source = Source::new(
    "thread-shear-areas",
    "shear areas of engaged threads (FED-STD-H28; ASME B1.1, appendix)",
    "",
    "",
    Status::Memory,
);

/// Least and greatest of what may be.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Between<K> {
    /// Least.
    pub least: K,
    /// Greatest.
    pub greatest: K,
}

/// A nut, or a screw with a head, tightened by a torque.
///
/// `T = F [d2/2 tan(φ + ρ') + μf r]` tightens it and `F [d2/2 tan(ρ' − φ) + μf r]` loosens it, with
/// `tan φ = P / (π d2)`, `tan ρ' = μt / cos 30°` and `r` the mean radius of the face that turns.
/// Both frictions are ranges, and so is what follows from them: between tightening and
/// loosening they may lie anywhere in their range.
///
/// The thread carries `σ = F / A` and `τ = F d2/2 tan(φ + ρ') / (π D³ / 12)`, together
/// `√(σ² + 3 τ²)`: `A` and `D` are those of the stress area, less bore and key slot. The bore is taken out of both;
/// the slot's part of the stress area out of `A`, and `D` is the largest circle that is clear of it. The stress that a slot
/// concentrates at its corners, and the bending it brings by lying on one side, are not in it.
/// The threads are sheared off where the crests of the other part reach, screw and nut with `F / (π D1 L/P [P/2 + (d2 − D1)/√3])` and
/// `F / (π d L/P [P/2 + (d − D2)/√3])`, at the limits that take most away; compare with the proof
/// stress over √3.
///
/// # Errors
///
/// [`OutOfRange`](ErrorKind::OutOfRange) and [`NotFinite`](ErrorKind::NotFinite) for frictions not above 0 and up to 1 or
/// the wrong way round, a face, bore or slot that the thread has no room for, lengths,
/// torques and stresses not above zero, and a share of the proof stress not above 0 and up to 1.
///
/// # Source
///
/// Shigley, power screws; VDI 2230 for stresses; shear areas of FED-STD-H28, from memory.
///
/// # Example
///
/// An M20×1.5 spindle nut, friction 0.12 to 0.16, tightened with 60 N m.
///
/// ```
/// use hubwright::joint::{Nut, thread};
/// use hubwright::units::{Length, Torque, millimeter, newton, newton_meter};
///
/// let mm = Length::new::<millimeter>;
/// let nut = Nut::new(thread("M20x1.5")?, [0.12, 0.16], [0.12, 0.16], mm(21.0), mm(30.0))?;
/// let found = nut.tighten(Torque::new::<newton_meter>(60.0))?;
/// assert!((found.preload.least.get::<newton>() - 14_831.0).abs() < 10.0);
/// assert!((found.preload.greatest.get::<newton>() - 19_403.0).abs() < 10.0);
/// # Ok::<(), hubwright::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Nut {
    /// Thread.
    pub thread: Thread,
    /// Least and greatest friction in the thread.
    pub thread_friction: [f64; 2],
    /// Least and greatest friction under the face that turns.
    pub face_friction: [f64; 2],
    /// Inside diameter of that face.
    pub face_inside: Length,
    /// Outside diameter of that face.
    pub face_outside: Length,
    /// Bore through the screw; zero for a solid one.
    pub bore: Length,
    /// Width and depth of the key slot through the thread, the depth from the crests.
    pub slot: Option<[Length; 2]>,
    /// Proof stress of the screw, and the share of it that may be used.
    pub proof: Option<(Pressure, f64)>,
    /// Proof stress of the nut.
    pub nut_proof: Option<Pressure>,
    /// Length of engaged thread, with the limits of screw and nut.
    pub engagement: Option<(Length, ThreadLimits, ThreadLimits)>,
}

/// A tightened nut: what [`Nut::tighten`] and [`Nut::preload`] found.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Tightened {
    /// The nut.
    pub nut: Nut,
    /// Tightening torque.
    pub torque: Between<Torque>,
    /// Force between nut and what it clamps.
    pub preload: Between<Force>,
    /// Torque to loosen it.
    pub loosening_torque: Between<Torque>,
    /// The part of it that the thread alone holds; below zero where the thread runs back by itself.
    pub thread_release: Between<Torque>,
    /// Whether the thread holds itself at its least friction, without the face.
    pub holds_itself: bool,
    /// Area of the screw that carries, less bore and slot.
    pub net_area: Area,
    /// Tension in that area.
    pub tension: Between<Pressure>,
    /// Greatest of tension and torsion together.
    pub stress: Pressure,
    /// `stress` over the proof stress of the screw.
    pub proof_share: Option<f64>,
    /// Greatest shear stress of the screw's threads.
    pub screw_shear: Option<Pressure>,
    /// Greatest shear stress of the nut's threads.
    pub nut_shear: Option<Pressure>,
    /// Whether screw or threads are stressed beyond the share of proof; `None` while the proof
    /// stress is not given, or one of nut and engagement is missing and the rest holds.
    pub overloaded: Option<bool>,
    /// The torque at which, whatever the friction, the screw stays within the share of its proof stress.
    pub greatest_torque: Option<Torque>,
    /// Preload at that torque.
    pub greatest_preload: Option<Between<Force>>,
}

impl Nut {
    /// A nut from its thread, both frictions (least, greatest), and the face that turns.
    ///
    /// # Errors
    ///
    /// As described on the type.
    pub fn new(
        thread: Thread,
        thread_friction: [f64; 2],
        face_friction: [f64; 2],
        face_inside: Length,
        face_outside: Length,
    ) -> Result<Self, Error> {
        range("thread_friction", thread_friction)?;
        range("face_friction", face_friction)?;
        Face::new(face_inside, face_outside).map_err(|error| {
            let name =
                if error.argument() == Some("inside") { "face_inside" } else { "face_outside" };
            error.named(name)
        })?;
        let major = thread.diameter;
        if face_outside <= major {
            return Err(ErrorKind::OutOfRange {
                argument: "face_outside".into(),
                given: shown_mm(face_outside),
                range: format!("not above the thread's {}", figure(shown_mm(major), 4)),
                unit: "mm",
                authority: String::new(),
                hint: "a nut bears outside of its thread: give the outside diameter of its face"
                    .into(),
            }
            .into());
        }
        Ok(Self {
            thread,
            thread_friction,
            face_friction,
            face_inside,
            face_outside,
            bore: Length::default(),
            slot: None,
            proof: None,
            nut_proof: None,
            engagement: None,
        })
    }

    /// With a bore through the screw.
    ///
    /// # Errors
    ///
    /// As described on the type.
    pub fn with_bore(self, bore: Length) -> Result<Self, Error> {
        zero_or_more("bore", shown_mm(bore), "mm", "12 mm")?;
        if bore.get::<meter>() > 0.0 {
            below("bore", shown_mm(bore), shown_mm(self.thread.root_diameter), "mm", "12 mm")?;
        }
        Ok(Self { bore, ..self })
    }

    /// With a key slot cut through the thread, its depth counted from the crests.
    ///
    /// # Errors
    ///
    /// As described on the type.
    pub fn with_slot(self, width: Length, depth: Length) -> Result<Self, Error> {
        let diameter = shown_mm(self.thread.diameter);
        below("slot_width", shown_mm(width), diameter, "mm", "4 mm")?;
        below("slot_depth", shown_mm(depth), diameter / 2.0, "mm", "2.5 mm")?;
        Ok(Self { slot: Some([width, depth]), ..self })
    }

    /// With the proof stress of the screw and the share of it that may be used.
    ///
    /// # Errors
    ///
    /// As described on the type.
    pub fn with_proof(self, stress: Pressure, utilisation: f64) -> Result<Self, Error> {
        positive("proof_stress", stress.get::<pascal>() / 1e6, "MPa", "580 MPa")?;
        positive("utilisation", utilisation, "", "0.9")?;
        within("utilisation", utilisation, [0.0, 1.0], "", "0.9")?;
        Ok(Self { proof: Some((stress, utilisation)), ..self })
    }

    /// With the proof stress of the nut.
    ///
    /// # Errors
    ///
    /// As described on the type.
    pub fn with_nut_proof(self, stress: Pressure) -> Result<Self, Error> {
        positive("nut_proof_stress", stress.get::<pascal>() / 1e6, "MPa", "580 MPa")?;
        Ok(Self { nut_proof: Some(stress), ..self })
    }

    /// With the length over which screw and nut engage, and their classes.
    ///
    /// # Errors
    ///
    /// As described on the type, and as for [`thread`](super::thread()) for classes.
    pub fn with_engagement(
        self,
        length: Length,
        screw: ThreadClass,
        nut: ThreadClass,
    ) -> Result<Self, Error> {
        positive_length("engagement", length)?;
        for (argument, class, internal) in [("screw_class", screw, false), ("nut_class", nut, true)]
        {
            if class.internal() != internal {
                let of_kind: Vec<_> = ThreadClass::all()
                    .filter(|class| class.internal() == internal)
                    .map(|class| class.to_string())
                    .collect();
                return Err(ErrorKind::UnknownWord {
                    argument: argument.into(),
                    text: class.to_string(),
                    allowed: of_kind.join(", "),
                    hint: "capitals and B are for nuts, small letters and A for screws".into(),
                }
                .into());
            }
        }
        let limits = |class| self.thread.in_class(class).map(|thread| thread.limits);
        let (Some(screw), Some(nut)) = (limits(screw)?, limits(nut)?) else { return Ok(self) };
        Ok(Self { engagement: Some((length, screw, nut)), ..self })
    }

    fn screw(&self, friction: f64) -> Result<Screw, Error> {
        let thread = &self.thread;
        Screw::new(thread.pitch_diameter, thread.pitch, thread.half_angle(), friction)
    }

    /// What a tightening torque does.
    ///
    /// # Errors
    ///
    /// As described on the type.
    pub fn tighten(self, torque: Torque) -> Result<Tightened, Error> {
        positive("torque", torque.get::<newton_meter>(), "N m", "40 N m")?;
        self.solve(|arm| torque.get::<newton_meter>() / arm)
    }

    /// What a preload takes and does.
    ///
    /// # Errors
    ///
    /// As described on the type.
    pub fn preload(self, force: Force) -> Result<Tightened, Error> {
        positive("preload", force.get::<newton>(), "N", "8 kN")?;
        self.solve(|_| force.get::<newton>())
    }

    /// Every pairing of frictions: the arm of the thread, and that of thread and face.
    fn arms(&self) -> Result<[[f64; 2]; 4], Error> {
        let face = Face::new(self.face_inside, self.face_outside)?;
        let radius = face.worn_radius().get::<meter>();
        let [low, high] = self.thread_friction;
        let [low, high] = [self.screw(low)?.tightening_arm(), self.screw(high)?.tightening_arm()];
        let [slick, rough] = self.face_friction.map(|friction| friction * radius);
        Ok([[low, low + slick], [low, low + rough], [high, high + slick], [high, high + rough]])
    }

    fn solve(self, force: impl Fn(f64) -> f64) -> Result<Tightened, Error> {
        let section = Section::of(&self)?;
        let arms = self.arms()?;
        let radius = (self.face_inside + self.face_outside).get::<meter>() / 4.0;
        let forces = arms.map(|[_, arm]| force(arm));
        let torques = [0, 1, 2, 3].map(|at| forces[at] * arms[at][1]);
        let [low, high] = self.thread_friction;
        let (loose, tight) = (self.screw(low)?, self.screw(high)?);
        let (f, t) = (spread(forces), spread(torques));
        let [slick, rough] = self.face_friction.map(|friction| friction * radius);
        // Below zero the greater force makes it worse.
        let release = |arm: f64, f: [f64; 2]| arm * if arm < 0.0 { f[1] } else { f[0] };
        let release_least = release(loose.loosening_arm(), f);
        let least_torque = release(loose.loosening_arm() + slick, f);
        let release_greatest = release(tight.loosening_arm(), [f[1], f[0]]);
        let greatest_torque = release(tight.loosening_arm() + rough, [f[1], f[0]]);
        let stresses = [0, 1, 2, 3].map(|at| forces[at] * section.stress_per_force(arms[at][0]));
        let stress = spread(stresses)[1];
        let shear = section.shear_areas.map(|areas| areas.map(|area| f[1] / area));
        let allowed = self.proof.map(|(proof, share)| {
            let limit = proof.get::<pascal>() * share;
            let torque = arms.map(|[thread, all]| limit / section.stress_per_force(thread) * all);
            // Nor may the threads shear, where their engagement is given.
            let strips = |area: f64, proof: Pressure| {
                let force = proof.get::<pascal>() * share / 3.0_f64.sqrt() * area;
                force * spread(arms.map(|[_, arm]| arm))[0]
            };
            let strips = section.shear_areas.map(|[screw, nut]| {
                let of_nut = self.nut_proof.map_or(f64::INFINITY, |proof| strips(nut, proof));
                strips(screw, proof).min(of_nut)
            });
            let torque = spread(torque)[0].min(strips.unwrap_or(f64::INFINITY));
            (torque, spread(arms.map(|[_, arm]| torque / arm)))
        });
        Ok(Tightened {
            nut: self,
            torque: torque_range(t),
            preload: force_range(f),
            loosening_torque: torque_range([least_torque, greatest_torque]),
            thread_release: torque_range([release_least, release_greatest]),
            holds_itself: loose.holds_itself(),
            net_area: section.area(),
            tension: Between {
                least: Pressure::new::<pascal>(f[0] / section.net_area),
                greatest: Pressure::new::<pascal>(f[1] / section.net_area),
            },
            stress: Pressure::new::<pascal>(stress),
            proof_share: self.proof.map(|(proof, _)| stress / proof.get::<pascal>()),
            screw_shear: shear.map(|[screw, _]| Pressure::new::<pascal>(screw)),
            nut_shear: shear.map(|[_, nut]| Pressure::new::<pascal>(nut)),
            overloaded: self.overloaded(stress, shear),
            greatest_torque: allowed.map(|(torque, _)| Torque::new::<newton_meter>(torque)),
            greatest_preload: allowed.map(|(_, force)| force_range(force)),
        })
    }

    /// Known to be overloaded, known not to be, or unknown.
    fn overloaded(&self, stress: f64, shear: Option<[f64; 2]>) -> Option<bool> {
        let (proof, share) = self.proof?;
        let proof = proof.get::<pascal>();
        // On whole mPa: a nut on its limit is not beyond it.
        let over = |stress: f64, most: f64| (stress * 1e3).round() > (most * 1e3).round();
        let sheared = |stress: f64, proof: f64| over(stress, proof * share / 3.0_f64.sqrt());
        let nut = self.nut_proof.map(|proof| proof.get::<pascal>());
        let screw_breaks = over(stress, proof * share);
        let screw_strips = shear.map(|[screw, _]| sheared(screw, proof));
        let nut_strips = shear.zip(nut).map(|([_, shear], proof)| sheared(shear, proof));
        let all = [Some(screw_breaks), screw_strips, nut_strips];
        if all.contains(&Some(true)) {
            return Some(true);
        }
        if all.contains(&None) { None } else { Some(false) }
    }
}

/// A friction's least and greatest.
fn range(argument: &str, [least, greatest]: [f64; 2]) -> Result<(), Error> {
    share(argument, least)?;
    share(argument, greatest)?;
    if greatest >= least {
        return Ok(());
    }
    Err(ErrorKind::OutOfRange {
        argument: argument.into(),
        given: greatest,
        range: format!("below the least friction of {least}"),
        unit: "",
        authority: String::new(),
        hint: "give the least friction first, the greatest second".into(),
    }
    .into())
}

/// Least and greatest of four.
fn spread(all: [f64; 4]) -> [f64; 2] {
    [
        all.iter().copied().fold(f64::INFINITY, f64::min),
        all.iter().copied().fold(f64::NEG_INFINITY, f64::max),
    ]
}

fn torque_range([least, greatest]: [f64; 2]) -> Between<Torque> {
    let of = Torque::new::<newton_meter>;
    Between { least: of(least), greatest: of(greatest) }
}

fn force_range([least, greatest]: [f64; 2]) -> Between<Force> {
    let of = Force::new::<newton>;
    Between { least: of(least), greatest: of(greatest) }
}

impl Tightened {
    /// The steps at the least frictions, recomputed; the last one's result is `preload.greatest` in N.
    pub fn working(&self) -> Working {
        let nut = &self.nut;
        let (Ok(screw), Ok(arms)) = (nut.screw(nut.thread_friction[0]), nut.arms()) else {
            return Working::default();
        };
        let mm = |length: Length| figure(length.get::<meter>() * 1e3, 4);
        let d2 = nut.thread.pitch_diameter;
        let radius = (nut.face_inside + nut.face_outside) / 4.0;
        let [thread, all] = arms[0];
        let torque = self.preload.greatest.get::<newton>() * all;
        let step = |symbol, relation, numbers, result, unit| Step {
            symbol,
            relation,
            numbers,
            result,
            unit,
            source: SCREWS,
        };
        Working {
            steps: vec![
                step(
                    "φ",
                    "atan(P / (π d2))",
                    format!("atan({} / (π · {}))", mm(nut.thread.pitch), mm(d2)),
                    screw.lead_angle().value,
                    "rad",
                ),
                step(
                    "ρ'",
                    "atan(μt / cos 30°)",
                    format!("atan({} / cos 30°)", nut.thread_friction[0]),
                    screw.friction_angle().value,
                    "rad",
                ),
                step(
                    "arm of the thread",
                    "d2/2 tan(φ + ρ')",
                    format!("{} / 2 · tan(φ + ρ')", mm(d2)),
                    thread * 1e3,
                    "mm",
                ),
                step(
                    "arm of thread and face",
                    "arm of the thread + μf r",
                    format!(
                        "{} + {} · {}",
                        figure(thread * 1e3, 4),
                        nut.face_friction[0],
                        mm(radius)
                    ),
                    all * 1e3,
                    "mm",
                ),
                step(
                    "greatest preload",
                    "T / arm",
                    format!("{} N m / {} mm", figure(torque, 4), figure(all * 1e3, 4)),
                    self.preload.greatest.get::<newton>(),
                    "N",
                ),
            ],
        }
    }
}
