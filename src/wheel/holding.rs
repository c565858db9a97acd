//! What holds a wheel on: preload, the friction that drives it, and whether anything turns the nut back.

mod compare;
mod dish;
mod says;
mod spin;
mod unscrew;

pub use compare::{Compared, NutLock, Piece};
pub use dish::{Dish, Recess};
pub use spin::{SpinningRing, SpinningWheel};
pub use unscrew::{Answer, Running, Unscrewing, running};

use crate::error::{Error, ErrorKind};
use crate::solid::Screw;
use crate::solid::screw::{Face, SCREWS, share};
use crate::source::{Source, Status};
use crate::units::{
    Angle, Force, Length, Pressure, Torque, meter, newton, newton_meter, pascal, positive, within,
    zero_or_more,
};

/// The path of torque through flanges, blotters and nut.
pub const TORQUE_PATH: Source = Source::new(
    "torque-path",
    "statics of friction faces in a row and side by side (Shigley, disc clutches and power screws)",
    "",
    "",
    Status::Computed,
);

/// A flat ring that rubs, with the least and greatest friction on it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Rubbing {
    /// Inside diameter.
    pub inside: Length,
    /// Outside diameter.
    pub outside: Length,
    /// Least and greatest friction.
    pub friction: [f64; 2],
}

/// The thread of the nut, as statics sees it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct NutThread {
    /// Pitch diameter.
    pub pitch_diameter: Length,
    /// Lead: the pitch of a thread with one start.
    pub lead: Length,
    /// Half of the angle between its flanks.
    pub half_angle: Angle,
    /// Least and greatest friction on them.
    pub friction: [f64; 2],
}

/// How tight the nut is.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Tightness {
    /// The torque it was tightened with.
    Torque(Torque),
    /// Least and greatest force it clamps with.
    Preload([Force; 2]),
}

/// What grinding, starting and stopping ask of the clamping.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Demand {
    /// Greatest torque of cutting.
    pub cutting: Torque,
    /// Torque of running up.
    pub run_up: Torque,
    /// Torque of braking.
    pub braking: Torque,
}

/// A wheel between two flanges under a nut.
///
/// The nut clamps with `F = T / (d2/2 tan(φ + ρ') + μf r)`. Each blotter carries `μ F r` by friction, `r` the
/// friction radius of the land. Torque goes from the fixed flange through its blotter into the
/// wheel and, side by side with it, through the other blotter into the loose flange and from there
/// into a key, or else through the face of the nut into its thread: `2 Tb` keyed, `Tb + min(Tb, μf F r)` where the
/// torque tightens the nut, and no more than the thread holds, `F d2/2 tan(ρ' − φ)`, where it loosens it.
/// Who designs on an unkeyed flange counts one face only.
///
/// Frictions are ranges and so is all that follows: a result holds for every pairing of them. Friction
/// scatter decides more than anything else here. Not in it: the loose flange's own inertia, embedding, creep of the
/// blotters, vibration, and a flange that walks under a turning load; statics is one mechanism of three.
///
/// # Errors
///
/// [`ErrorKind::NotFinite`] or [`ErrorKind::OutOfRange`] for frictions not above 0 and up to 1 or the wrong
/// way round, faces that are no rings, torques below zero, a preload not above zero, a share outside 0 to
/// 1 and a factor below 1.
///
/// # Source
///
/// Shigley, power screws and disc clutches.
///
/// # Example
///
/// 9 kN on blotters with friction 0.15, land 60 to 76 mm: each face carries 46.1 N m. Unkeyed, where the torque tightens the nut, the two
/// sides carry 57.45 N m together.
///
/// ```
/// use hubwright::units::{Angle, Force, Length, Torque, degree, millimeter, newton, newton_meter};
/// use hubwright::wheel::holding::{Demand, Holding, NutThread, Rubbing, Tightness};
///
/// let mm = Length::new::<millimeter>;
/// let nm = Torque::new::<newton_meter>;
/// let thread = NutThread { pitch_diameter: mm(14.701), lead: mm(2.0), half_angle: Angle::new::<degree>(30.0), friction: [0.14; 2] };
/// let face = Rubbing { inside: mm(17.0), outside: mm(25.0), friction: [0.12; 2] };
/// let land = Rubbing { inside: mm(60.0), outside: mm(76.0), friction: [0.15; 2] };
/// let tight = Tightness::Preload([Force::new::<newton>(9000.0); 2]);
/// let demand = Demand { cutting: nm(14.0), run_up: nm(0.0), braking: nm(4.438) };
/// let found = Holding::new(thread, face, land, tight, demand).solve()?;
/// assert!((found.carries_tightening[0].get::<newton_meter>() - 57.452).abs() < 1e-3);
/// assert!((found.carries_loosening[0].get::<newton_meter>() - 53.887).abs() < 1e-3);
/// # Ok::<(), hubwright::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Holding {
    /// Thread of the nut.
    pub thread: NutThread,
    /// Face between nut and loose flange, or washer and loose flange where a washer turns with the nut.
    pub face: Rubbing,
    /// Lands of the flanges, with the friction through a blotter.
    pub land: Rubbing,
    /// How tight the nut is.
    pub tightness: Tightness,
    /// What is asked of it.
    pub demand: Demand,
    /// Least and greatest share of the torque that goes through the loose flange: a half where both sides are alike, all of it
    /// where the other side has slipped.
    pub loose_share: [f64; 2],
    /// Whether running tightens or loosens the nut; without it both are told.
    pub running: Option<Running>,
    /// Factor against slipping asked for.
    pub factor: Option<f64>,
    /// Greatest pressure allowed on the land.
    pub pressure_limit: Option<Pressure>,
    /// The loose flange as a plate, when its dishing is asked for.
    pub recess: Option<Recess>,
    /// Torque of the nut's own inertia, for a keyed flange or washer.
    pub nut_spin: Option<Torque>,
    /// Whether run-up, and braking, are not known: what is asked can only be more.
    pub not_known: [bool; 2],
}

/// What [`Holding::solve`] found. Pairs are least and greatest.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct HoldingFound {
    /// What was asked.
    pub of: Holding,
    /// Force of the nut.
    pub preload: [Force; 2],
    /// Pressure on the land.
    pub land_pressure: [Pressure; 2],
    /// Torque that one land carries by friction.
    pub carries_face: [Torque; 2],
    /// Torque at which the loose flange slips under the nut.
    pub nut_slips: [Torque; 2],
    /// Torque that turns the nut back once its face turns with it; below zero it runs back by itself.
    pub release: [Torque; 2],
    /// Arm of the friction under the nut, `μf r`.
    pub face_arm: [Length; 2],
    /// Arm of the thread that holds, `d2/2 tan(ρ' − φ)`.
    pub thread_arm: [Length; 2],
    /// Torque that both flanges carry where the loose one is keyed.
    pub carries_keyed: [Torque; 2],
    /// Unkeyed, where the torque tightens the nut.
    pub carries_tightening: [Torque; 2],
    /// Unkeyed, where it loosens it.
    pub carries_loosening: [Torque; 2],
    /// Greatest torque asked: cutting with run-up or braking, whichever is more.
    pub asked: Torque,
    /// `carries_keyed` over what is asked.
    pub factor_keyed: [f64; 2],
    /// One face over what is asked: how an unkeyed flange is designed.
    pub factor_unkeyed: [f64; 2],
    /// Preload that the factor asks for at the least friction, keyed and unkeyed.
    pub preload_asked: Option<[Force; 2]>,
    /// Pressure on the land at those preloads: below it the wheel slips.
    pub pressure_asked: Option<[Pressure; 2]>,
    /// Whether the loose flange, when it slips on the wheel, takes the nut along whatever the torque.
    pub takes_along: Answer,
    /// The unkeyed nut where running tightens it, and where running loosens it.
    pub unscrewing: [Unscrewing; 2],
    /// How the loose flange bends.
    pub dish: Option<Dish>,
    /// What holds a keyed nut over what its own inertia asks, at the least friction.
    pub keyed_margin: Option<f64>,
}

impl Holding {
    /// A wheel between flanges, with what clamps it and what is asked.
    pub fn new(
        thread: NutThread,
        face: Rubbing,
        land: Rubbing,
        tightness: Tightness,
        demand: Demand,
    ) -> Self {
        Self {
            thread,
            face,
            land,
            tightness,
            demand,
            loose_share: [0.5, 1.0],
            running: None,
            factor: None,
            pressure_limit: None,
            recess: None,
            nut_spin: None,
            not_known: [false; 2],
        }
    }

    /// With the least and greatest share of the torque that goes through the loose flange.
    #[must_use]
    pub fn with_loose_share(mut self, share: [f64; 2]) -> Self {
        self.loose_share = share;
        self
    }

    /// With what running does to the nut.
    #[must_use]
    pub fn with_running(mut self, running: Running) -> Self {
        self.running = Some(running);
        self
    }

    /// With a factor against slipping.
    #[must_use]
    pub fn with_factor(mut self, factor: f64) -> Self {
        self.factor = Some(factor);
        self
    }

    /// With the greatest pressure allowed on the land, by the wheel's maker.
    #[must_use]
    pub fn with_pressure_limit(mut self, limit: Pressure) -> Self {
        self.pressure_limit = Some(limit);
        self
    }

    /// With the loose flange as a plate.
    #[must_use]
    pub fn with_recess(mut self, recess: Recess) -> Self {
        self.recess = Some(recess);
        self
    }

    /// With the torque of the nut's own inertia: see [`SpinningRing`].
    #[must_use]
    pub fn with_nut_spin(mut self, torque: Torque) -> Self {
        self.nut_spin = Some(torque);
        self
    }

    /// Without what run-up, and braking, ask: then nothing is told to hold against it.
    #[must_use]
    pub fn with_not_known(mut self, run_up: bool, braking: bool) -> Self {
        self.not_known = [run_up, braking];
        self
    }

    fn check(&self) -> Result<(), Error> {
        range("thread_friction", self.thread.friction)?;
        range("face_friction", self.face.friction)?;
        range("blotter_friction", self.land.friction)?;
        let nm = |torque: Torque| torque.get::<newton_meter>();
        match self.tightness {
            Tightness::Torque(torque) => positive("torque", nm(torque), "N m", "40 N m")?,
            Tightness::Preload([least, greatest]) => {
                positive("preload", least.get::<newton>(), "N", "8 kN")?;
                positive("preload", greatest.get::<newton>(), "N", "8 kN")?;
                ordered("preload", [least, greatest].map(|f| f.get::<newton>()), "N")?;
            }
        }
        let of = self.demand;
        for (argument, torque) in
            [("cutting_torque", of.cutting), ("run_up", of.run_up), ("braking", of.braking)]
        {
            zero_or_more(argument, nm(torque), "N m", "14 N m")?;
        }
        positive("cutting_torque", nm(of.cutting + of.run_up + of.braking), "N m", "14 N m")?;
        for share in self.loose_share {
            within("loose_share", share, [0.0, 1.0], "", "0.5")?;
        }
        ordered("loose_share", self.loose_share, "")?;
        if let Some(factor) = self.factor {
            within("factor", factor, [1.0, 1e3], "", "1.5")?;
        }
        if let Some(limit) = self.pressure_limit {
            positive("pressure_limit", limit.get::<pascal>() / 1e6, "MPa", "8 MPa")?;
        }
        self.nut_spin.map_or(Ok(()), |spin| positive("nut_spin", nm(spin), "N m", "0.01 N m"))
    }

    /// Screws at the least and at the greatest friction.
    fn screws(&self) -> Result<[Screw; 2], Error> {
        let NutThread { pitch_diameter, lead, half_angle, friction } = self.thread;
        let at = |friction| Screw::new(pitch_diameter, lead, half_angle, friction);
        Ok([at(friction[0])?, at(friction[1])?])
    }

    /// Everything that follows.
    ///
    /// # Errors
    ///
    /// As described on the type.
    pub fn solve(self) -> Result<HoldingFound, Error> {
        self.check()?;
        let screws = self.screws()?;
        let face = Face::new(self.face.inside, self.face.outside)
            .map_err(|error| error.named("face_inside"))?;
        let land = Face::new(self.land.inside, self.land.outside)
            .map_err(|error| error.named("land_inside"))?;
        let (under_nut, on_land) =
            (face.worn_radius().get::<meter>(), land.even_radius().get::<meter>());
        let face_arm = self.face.friction.map(|friction| friction * under_nut);
        let land_arm = self.land.friction.map(|friction| friction * on_land);
        let thread_arm = screws.map(|screw| screw.loosening_arm());
        let preload = match self.tightness {
            Tightness::Preload(both) => both.map(|force| force.get::<newton>()),
            Tightness::Torque(torque) => [1, 0].map(|at: usize| {
                torque.get::<newton_meter>() / (screws[at].tightening_arm() + face_arm[at])
            }),
        };
        let times = |arm: [f64; 2]| [preload[0] * arm[0], preload[1] * arm[1]];
        let (carries, nut_slips) = (times(land_arm), times(face_arm));
        // Where the thread runs back by itself, more force makes it worse.
        let release = [0, 1].map(|at: usize| {
            let worse = if thread_arm[at] < 0.0 { 1 - at } else { at };
            preload[worse] * thread_arm[at]
        });
        let held = release.map(|torque| torque.max(0.0));
        let side = |at: usize, most: f64| carries[at] + carries[at].min(most);
        let tightening = [0, 1].map(|at: usize| side(at, nut_slips[at]));
        let loosening = [0, 1].map(|at: usize| side(at, nut_slips[at].min(held[at])));
        let of = self.demand;
        let asked = of.cutting + if of.run_up > of.braking { of.run_up } else { of.braking };
        let nm = asked.get::<newton_meter>();
        let needs = |faces: f64, factor: f64| factor * nm / (faces * land_arm[0]);
        let preload_asked = self
            .factor
            .map(|factor| [2.0, 1.0].map(|faces| Force::new::<newton>(needs(faces, factor))));
        let path = unscrew::Path { preload, face_arm, land_arm, thread_arm };
        let unscrewing = [Running::Tightens, Running::Loosens]
            .map(|running| path.unscrewing(of, running, self.loose_share, self.not_known));
        let force = preload.map(Force::new::<newton>);
        let dish = self.recess.map(|recess| recess.under(&self, force[1])).transpose()?;
        Ok(HoldingFound {
            of: self,
            preload: force,
            land_pressure: force.map(|force| land.pressure(force)),
            carries_face: torques(carries),
            nut_slips: torques(nut_slips),
            release: torques(release),
            face_arm: face_arm.map(Length::new::<meter>),
            thread_arm: thread_arm.map(Length::new::<meter>),
            carries_keyed: torques(carries.map(|torque| 2.0 * torque)),
            carries_tightening: torques(tightening),
            carries_loosening: torques(loosening),
            asked,
            factor_keyed: carries.map(|torque| 2.0 * torque / nm),
            factor_unkeyed: carries.map(|torque| torque / nm),
            preload_asked,
            pressure_asked: preload_asked.map(|both| both.map(|force| land.pressure(force))),
            takes_along: path.takes_along(),
            unscrewing,
            dish,
            keyed_margin: self
                .nut_spin
                .map(|spin| (nut_slips[0] + release[0]) / spin.get::<newton_meter>()),
        })
    }
}

fn torques(both: [f64; 2]) -> [Torque; 2] {
    both.map(Torque::new::<newton_meter>)
}

/// A friction's least and greatest.
fn range(argument: &str, both: [f64; 2]) -> Result<(), Error> {
    share(argument, both[0])?;
    share(argument, both[1])?;
    ordered(argument, both, "")
}

/// The least first.
fn ordered(argument: &str, [least, greatest]: [f64; 2], unit: &'static str) -> Result<(), Error> {
    if greatest >= least {
        return Ok(());
    }
    Err(ErrorKind::OutOfRange {
        argument: argument.into(),
        given: greatest,
        range: format!("below the least of {least}"),
        unit,
        authority: String::new(),
        hint: "give the least first, the greatest second".into(),
    }
    .into())
}

impl HoldingFound {
    /// The unkeyed nut as running takes it: both where that was not said.
    pub fn asked_unscrewing(&self) -> impl Iterator<Item = &Unscrewing> {
        let running = self.of.running;
        self.unscrewing.iter().filter(move |one| running.is_none_or(|is| is == one.running))
    }

    /// Whether the greatest pressure on the land stays within the limit given.
    pub fn within_pressure(&self) -> Option<bool> {
        self.of.pressure_limit.map(|limit| self.land_pressure[1] <= limit)
    }
}

/// Source of the statics of the nut.
pub(super) const NUT_STATICS: Source = SCREWS;
