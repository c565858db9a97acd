//! What a force does to a seat, and which force or angle a seat needs.

use std::fmt;

use super::{SeatFound, check, mismatched};
use crate::error::Error;
use crate::solid::cone::{End, Pressed};
use crate::units::{
    Angle, Force, Length, Pressure, Torque, degree, figure, meter, newton, newton_meter, pascal,
    radian, words,
};

words! {
    /// The end of a seat that carries.
    Carries, "end that carries" {
        /// The small end: the hub is too open.
        Small = "small end" ["small"];
        /// The large end: the hub is too closed.
        Large = "large end" ["large"];
        /// Both, because the angles agree.
        Both = "both ends" ["both"];
    }
}

/// A seat under a force: what [`SeatFound::push`] found.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Pushed {
    /// Force of the nut.
    pub force: Force,
    /// Half angle of the hub less that of the spindle.
    pub mismatch: Angle,
    /// The end that carries.
    pub carries: Carries,
    /// Share of the length in contact, from the end that carries to where contact ends.
    pub contact: f64,
    /// Share of the length of the segments that touch; it goes in steps of a segment.
    pub touching: f64,
    /// Force that closes 95 % of the length; `None` when none does.
    pub force_for_95: Option<Force>,
    /// Force that closes all of it; `None` when none does.
    pub force_to_close: Option<Force>,
    /// Where it never closes, from and to, seen from the small end: the first such segment.
    pub never_closes: Option<[Length; 2]>,
    /// Whether it closes so barely that the force for it hangs on the mesh.
    pub barely_closes: bool,
    /// How far the hub moves from the first touch on, its shortening and the spindle's stretch included.
    pub draw_up: Length,
    /// Torque at which it slips while the nut stays on.
    pub slip_torque: Torque,
    /// Sum of all pressure.
    pub normal_force: Force,
    /// Push that takes the hub off once the nut is off; below zero it comes off by itself.
    pub release_force: Force,
    /// Whether the taper holds itself: its friction is above the tangent of its half angle.
    pub holds_itself: bool,
    /// Mean pressure on the tenth of the length at the end that carries; of two, the more pressed.
    pub end_pressure: Pressure,
    /// Greatest pressure of a segment; the edge itself presses harder, until it beds in.
    pub peak_pressure: Pressure,
    /// Greatest hoop stress in the hub's bore.
    pub hub_hoop: Pressure,
    /// Stress at which the hub yields over the greater of hoop stress and pressure; below 1 it yields.
    pub hub_factor: Option<f64>,
    /// Stress at which the spindle yields over the pressure.
    pub spindle_factor: Option<f64>,
}

impl Pushed {
    /// Whether every part whose yield stress is given stays elastic; `None` when none is given.
    pub fn stays_elastic(&self) -> Option<bool> {
        let factors = [self.hub_factor, self.spindle_factor];
        factors.into_iter().flatten().map(|factor| factor >= 1.0).reduce(|a, b| a && b)
    }
}

impl fmt::Display for Pushed {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let kn = |force: Force| figure(force.get::<newton>() / 1e3, 2);
        let percent = |share: f64| figure(share * 100.0, 0);
        let (pushed, torque) = (kn(self.force), figure(self.slip_torque.get::<newton_meter>(), 1));
        match self.carries {
            Carries::Both => {
                write!(f, "{pushed} kN press on {} % of the seat", percent(self.contact))?
            }
            end => write!(
                f,
                "the {end} carries: {pushed} kN close {} % of the seat",
                percent(self.contact)
            )?,
        }
        write!(f, ", which slips at {torque} N m")?;
        if self.contact < 0.95 {
            match self.force_for_95 {
                Some(force) => {
                    write!(
                        f,
                        "; it would take {} kN to close 95 %: a nut cannot cure an angle",
                        kn(force)
                    )?;
                }
                None => write!(f, "; no force closes 95 %")?,
            }
        }
        if let Some([from, to]) = self.never_closes {
            let mm = |length: Length| figure(length.get::<meter>() * 1e3, 1);
            write!(f, "; it never closes from {} to {} mm off the small end", mm(from), mm(to))?;
        }
        Ok(())
    }
}

/// Pressure on one segment.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Along {
    /// Distance of its middle from the small end.
    pub place: Length,
    /// Its length.
    pub length: Length,
    /// Mean pressure on it.
    pub pressure: Pressure,
    /// Hoop stress in the hub's bore.
    pub hub_hoop: Pressure,
    /// Whether it touches.
    pub touching: bool,
}

/// How much the half angles may differ: what [`SeatFound::angle_tolerance`] found.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct AngleTolerance {
    /// Force of the nut.
    pub force: Force,
    /// Share of the length that is to be in contact.
    pub share: f64,
    /// The hub may be this much more closed than the spindle, never more open; `None` when no angle
    /// but none at all will do.
    pub closed_by: Option<Angle>,
    /// What a hub too open would have to keep to. It is no tolerance: such a hub hangs by its small end,
    /// rocks and frets.
    pub open_by: Option<Angle>,
}

impl SeatFound {
    /// What a force does.
    ///
    /// # Errors
    ///
    /// [`OutOfRange`](crate::ErrorKind::OutOfRange) or [`NotFinite`](crate::ErrorKind::NotFinite) for a force
    /// not above zero and a mismatch beyond 0.5°.
    pub fn push(&self, force: Force, mismatch: Angle) -> Result<Pushed, Error> {
        let newtons = check::force("force", force)?;
        check::mismatch(mismatch)?;
        let (end, tangent) = mismatched(mismatch);
        let (path, front) = self.side(end);
        let state = self.state(newtons, mismatch);
        let segments = &self.compliance.segments;
        let (cone, length) = (self.cone(), self.cone().length);
        let [sine, cosine] = cone.sine_cosine();
        let (mut touching, mut moment, mut peak) = (0.0, 0.0, 0.0_f64);
        for ((segment, &pressure), &on) in segments.iter().zip(&state.pressure).zip(&state.touching)
        {
            touching += if on { segment.length() } else { 0.0 };
            moment += pressure * segment.moment;
            peak = peak.max(pressure);
        }
        let touching = if state.touching.iter().all(|on| *on) { 1.0 } else { touching / length };
        let hoop = self.hoop(&state.pressure).into_iter().fold(f64::MIN, f64::max);
        let never = path.never();
        let open = |at: &usize| segments[*at].ends.map(Length::new::<meter>);
        let n = |force: f64| Force::new::<newton>(force * tangent);
        let contact = match mismatch.get::<radian>() == 0.0 {
            true => touching,
            false if path.closes().is_some_and(|closes| newtons >= closes * tangent) => 1.0,
            false => front.share(newtons / tangent),
        };
        let strips = match carries(mismatch) {
            Carries::Small => [Some(End::Small), None],
            Carries::Large => [None, Some(End::Large)],
            Carries::Both => [Some(End::Small), Some(End::Large)],
        };
        let strip = strips.into_iter().flatten().map(|end| self.strip(end, &state.pressure));
        let (mu, t) = (self.friction, cone.slope);
        let factor = |stress: Option<Pressure>, most: f64| {
            stress.map(|stress| stress.get::<pascal>() / most)
        };
        Ok(Pushed {
            force,
            mismatch,
            carries: carries(mismatch),
            contact,
            touching,
            force_for_95: match tangent > 0.0 {
                true => front.force(0.95).map(n),
                false => (touching >= 0.95).then(Force::default),
            },
            force_to_close: path.closes().map(n),
            never_closes: never.first().map(open),
            barely_closes: never.is_empty() && path.weakest() < 0.1,
            draw_up: Length::new::<meter>(state.advance / sine),
            slip_torque: Torque::new::<newton_meter>(mu * moment),
            normal_force: Force::new::<newton>(newtons / (sine + mu * cosine)),
            release_force: Force::new::<newton>(newtons * (mu - t) / (mu + t)),
            holds_itself: mu > t,
            end_pressure: Pressure::new::<pascal>(strip.fold(0.0, f64::max)),
            peak_pressure: Pressure::new::<pascal>(peak),
            hub_hoop: Pressure::new::<pascal>(hoop),
            hub_factor: factor(self.seat().hub_yield, hoop.max(peak)),
            spindle_factor: factor(self.seat().spindle_yield, peak),
        })
    }

    /// Pressure and hoop stress along the seat, from the small end.
    ///
    /// # Errors
    ///
    /// As for [`push`](Self::push).
    pub fn along(&self, force: Force, mismatch: Angle) -> Result<Vec<Along>, Error> {
        let newtons = check::force("force", force)?;
        check::mismatch(mismatch)?;
        let state = self.state(newtons, mismatch);
        let hoop = self.hoop(&state.pressure);
        let each = self.compliance.segments.iter().enumerate().map(|(at, segment)| Along {
            place: Length::new::<meter>(segment.middle()),
            length: Length::new::<meter>(segment.length()),
            pressure: Pressure::new::<pascal>(state.pressure[at]),
            hub_hoop: Pressure::new::<pascal>(hoop[at]),
            touching: state.touching[at],
        });
        Ok(each.collect())
    }

    /// Force that closes a share of the length against a mismatch; `None` when none does.
    ///
    /// # Errors
    ///
    /// As for [`push`](Self::push); a share not above 0 and up to 1.
    pub fn force_for(&self, share: f64, mismatch: Angle) -> Result<Option<Force>, Error> {
        check::share(share)?;
        check::mismatch(mismatch)?;
        let (end, tangent) = mismatched(mismatch);
        Ok(self.closing(end, share).map(|force| Force::new::<newton>(force * tangent)))
    }

    /// How much the half angles may differ, so that a force keeps a share of the length in contact.
    ///
    /// The tolerance lies on one side: the hub is never more open than the spindle, so that the
    /// large end carries.
    ///
    /// # Errors
    ///
    /// [`OutOfRange`](crate::ErrorKind::OutOfRange) or [`NotFinite`](crate::ErrorKind::NotFinite) for a force
    /// not above zero and a share not above 0 and up to 1.
    pub fn angle_tolerance(&self, force: Force, share: f64) -> Result<AngleTolerance, Error> {
        let newtons = check::force("force", force)?;
        check::share(share)?;
        let most = Angle::new::<degree>(super::GREATEST_MISMATCH);
        let by = |end| {
            let tangent = newtons / self.closing(end, share)?;
            Some(Angle::new::<radian>(tangent.atan()).min(most))
        };
        Ok(AngleTolerance { force, share, closed_by: by(End::Large), open_by: by(End::Small) })
    }

    /// Force over the tangent of the mismatch that closes a share of the length. Beyond the
    /// middle of the last segment it is the force that closes all.
    fn closing(&self, end: End, share: f64) -> Option<f64> {
        let (path, front) = self.side(end);
        if share < 1.0 { front.force(share).or(path.closes()) } else { path.closes() }
    }

    /// Pressures, draw-up along the normal and what touches.
    pub(super) fn state(&self, force: f64, mismatch: Angle) -> Pressed {
        let (end, tangent) = mismatched(mismatch);
        let path = &self.side(end).0;
        if tangent == 0.0 {
            return path.matched(force);
        }
        let mut state = path.at(force / tangent);
        state.pressure.iter_mut().for_each(|pressure| *pressure *= tangent);
        state.advance *= tangent;
        state
    }

    /// Hoop stress in the hub's bore, the stress along the axis left out.
    fn hoop(&self, pressure: &[f64]) -> Vec<f64> {
        let (cone, segments) = (self.cone(), &self.compliance.segments);
        let rows = self.outwards.chunks_exact(segments.len());
        let of = |((segment, row), own): ((&_, &[f64]), &f64)| {
            let segment: &crate::solid::cone::Segment = segment;
            let outwards: f64 = row.iter().zip(pressure).map(|(c, p)| c * p).sum();
            cone.hub.modulus * outwards / cone.radius(segment.middle()) - cone.hub.poisson * own
        };
        segments.iter().zip(rows).zip(pressure).map(of).collect()
    }

    /// Mean pressure on the tenth of the length at an end.
    fn strip(&self, end: End, pressure: &[f64]) -> f64 {
        let cone = self.cone();
        let [low, high] = match end {
            End::Small => [0.0, 0.1 * cone.length],
            End::Large => [0.9 * cone.length, cone.length],
        };
        let (mut sum, mut whole) = (0.0, 0.0);
        for (segment, pressure) in self.compliance.segments.iter().zip(pressure) {
            let [from, to] = [segment.ends[0].max(low), segment.ends[1].min(high)];
            if to > from {
                let share = (to - from) * cone.radius((from + to) / 2.0);
                sum += share * pressure;
                whole += share;
            }
        }
        sum / whole
    }
}

fn carries(mismatch: Angle) -> Carries {
    match mismatch.get::<radian>() {
        0.0 => Carries::Both,
        open if open > 0.0 => Carries::Small,
        _ => Carries::Large,
    }
}
