//! A screw in the hub's thread that pushes it off its taper.

use super::{Between, force_range, range};
use crate::error::Error;
use crate::joint::thread::Thread;
use crate::solid::{Face, Screw};
use crate::units::{Exact, Force, Length, Torque, below, meter, newton_meter, positive, shown_mm};

/// A jacking screw that presses with its tip on the end of the spindle.
///
/// `F = T / [d2/2 tan(φ + ρ') + μ r]`, with `r` the friction radius of the tip: a third of its
/// diameter under even pressure, a quarter once it has worn in. Both are in the range, as are the
/// frictions. The screw that draws the hub on passes through the jacking thread, so its
/// greatest major diameter must be below the least minor diameter of that thread, which is the basic one.
///
/// # Errors
///
/// [`OutOfRange`](crate::ErrorKind::OutOfRange) and [`NotFinite`](crate::ErrorKind::NotFinite) for frictions
/// not above 0 and up to 1 or the wrong way round, a tip not between zero and the thread's minor diameter, a torque
/// not above zero.
///
/// # Source
///
/// Shigley, power screws.
///
/// # Example
///
/// An M20×1.5 jacking screw with a 12 mm tip pushes with 17 to 26 kN at 50 N m; an M12 draw screw
/// goes through it.
///
/// ```
/// use hubwright::joint::{JackingScrew, thread};
/// use hubwright::units::{Length, Torque, millimeter, newton, newton_meter};
///
/// let tip = Length::new::<millimeter>(12.0);
/// let screw = JackingScrew::new(thread("M20x1.5")?, [0.12, 0.18], [0.12, 0.18], tip)
///     .with_draw_screw(thread("M12")?);
/// let found = screw.push(Torque::new::<newton_meter>(50.0))?;
/// assert!((found.force.least.get::<newton>() - 16_963.0).abs() < 5.0);
/// assert!((found.force.greatest.get::<newton>() - 26_011.0).abs() < 5.0);
/// assert_eq!(found.clears, Some(true));
/// # Ok::<(), hubwright::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct JackingScrew {
    /// Thread in the hub.
    pub thread: Thread,
    /// Least and greatest friction in it.
    pub thread_friction: [f64; 2],
    /// Least and greatest friction under the tip.
    pub tip_friction: [f64; 2],
    /// Diameter of the flat tip.
    pub tip: Length,
    /// The screw that draws the hub on.
    pub draw_screw: Option<Thread>,
}

/// What [`JackingScrew::push`] found.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Jacked {
    /// The screw.
    pub screw: JackingScrew,
    /// Torque on it.
    pub torque: Torque,
    /// Force that it pushes with.
    pub force: Between<Force>,
    /// Least clearance, on diameter, of the draw screw in the jacking thread; below zero where it does not pass.
    pub clearance: Option<Length>,
    /// Whether the draw screw passes.
    pub clears: Option<bool>,
}

impl JackingScrew {
    /// A jacking screw from its thread, both frictions (least, greatest) and its tip.
    pub const fn new(
        thread: Thread,
        thread_friction: [f64; 2],
        tip_friction: [f64; 2],
        tip: Length,
    ) -> Self {
        Self { thread, thread_friction, tip_friction, tip, draw_screw: None }
    }

    /// With the screw that draws the hub on its taper.
    #[must_use]
    pub const fn with_draw_screw(self, screw: Thread) -> Self {
        Self { draw_screw: Some(screw), ..self }
    }

    /// What it does at a torque.
    ///
    /// # Errors
    ///
    /// As described on the type.
    pub fn push(self, torque: Torque) -> Result<Jacked, Error> {
        let given = torque.get::<newton_meter>();
        positive("torque", given, "N m", "40 N m")?;
        range("thread_friction", self.thread_friction)?;
        range("tip_friction", self.tip_friction)?;
        let root = shown_mm(self.thread.minor_diameter);
        below("tip", shown_mm(self.tip), root, "mm", "12 mm")?;
        let tip = Face::new(Length::default(), self.tip)?;
        let arm = |thread_friction: f64, tip_friction: f64, radius: Length| {
            let of = &self.thread;
            let screw = Screw::new(of.pitch_diameter, of.pitch, of.half_angle(), thread_friction)?;
            Ok(screw.tightening_arm() + tip_friction * radius.get::<meter>())
        };
        let ([least, greatest], [slick, rough]) = (self.thread_friction, self.tip_friction);
        let longest: Result<f64, Error> = arm(greatest, rough, tip.even_radius());
        let shortest: Result<f64, Error> = arm(least, slick, tip.worn_radius());
        let force = force_range([given / longest?, given / shortest?]);
        let clearance = self.draw_screw.map(|draw| {
            let major = draw.limits.and_then(|limits| limits.major_greatest);
            self.thread.minor_diameter - major.unwrap_or(draw.diameter)
        });
        let clears = clearance.map(|clearance| clearance.exact() > 0.0);
        Ok(Jacked { screw: self, torque, force, clearance, clears })
    }
}
