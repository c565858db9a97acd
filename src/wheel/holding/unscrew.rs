//! Whether anything turns the nut back: both hands of thread, starting, stopping and cutting.

use super::Demand;
use crate::units::{Torque, newton_meter, words};

words! {
    /// What running does to the nut: drag and run-up act one way, braking the other.
    Running, "what running does to the nut" {
        /// Drag and run-up tighten it; braking loosens it.
        Tightens = "tightens" [];
        /// Drag and run-up loosen it; braking tightens it.
        Loosens = "loosens" [];
    }
}

words! {
    /// What can be told of something over whole ranges of friction.
    Answer, "answer" {
        /// It does not happen at any friction in its range.
        No = "no" [];
        /// It happens at some frictions and not at others.
        Perhaps = "perhaps" [];
        /// It happens at every friction in its range.
        Yes = "yes" [];
    }
}

impl Answer {
    fn of(sure: bool, possible: bool) -> Self {
        match (sure, possible) {
            (true, _) => Self::Yes,
            (false, true) => Self::Perhaps,
            (false, false) => Self::No,
        }
    }
}

/// What running does to a nut of this hand, seen from the nut: anticlockwise tightens a right-hand one.
///
/// ```
/// use hubwright::wheel::holding::{Running, running};
///
/// assert_eq!(running(false, false), Running::Tightens);
/// assert_eq!(running(true, false), Running::Loosens);
/// ```
pub fn running(left_hand: bool, clockwise: bool) -> Running {
    if left_hand == clockwise { Running::Tightens } else { Running::Loosens }
}

/// An unkeyed nut in one direction of running.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Unscrewing {
    /// What running does to it.
    pub running: Running,
    /// Torque on the wheel in the hand that loosens: braking, or cutting with run-up.
    pub demand: Torque,
    /// Least and greatest of it that reach the nut.
    pub at_nut: [Torque; 2],
    /// Least and greatest torque that its thread holds.
    pub holds: [Torque; 2],
    /// Whether start, stop and cutting torque turn it back.
    pub turns: Answer,
    /// Whether all of `demand` is known; where it is not, run-up or braking is not in it.
    pub all_known: bool,
}

/// Forces in N and arms in m along the path through the loose flange, least and greatest.
#[derive(Clone, Copy)]
pub(super) struct Path {
    pub preload: [f64; 2],
    pub face_arm: [f64; 2],
    pub land_arm: [f64; 2],
    pub thread_arm: [f64; 2],
}

impl Path {
    /// Whether friction under the nut beats the thread's, at any preload.
    pub(super) fn takes_along(&self) -> Answer {
        let [least, greatest] = self.thread_arm;
        Answer::of(self.face_arm[0] > greatest, self.face_arm[1] > least)
    }

    /// The unkeyed nut where running does this.
    pub(super) fn unscrewing(
        &self,
        of: Demand,
        running: Running,
        share: [f64; 2],
        not_known: [bool; 2],
    ) -> Unscrewing {
        let (demand, more) = match running {
            Running::Tightens => (of.braking, not_known[1]),
            Running::Loosens => (of.cutting + of.run_up, not_known[0]),
        };
        let through = share.map(|share| share * demand.get::<newton_meter>());
        let reaches = |at: usize| {
            through[at].min(self.preload[at] * self.face_arm[at].min(self.land_arm[at]))
        };
        let held = |force: f64, arm: f64| force * arm;
        let [low, high] = self.preload;
        let [slick, rough] = self.thread_arm;
        // Below zero the greater force makes it worse.
        let least = held(if slick < 0.0 { high } else { low }, slick);
        let greatest = held(if rough < 0.0 { low } else { high }, rough);
        // Friction of the faces and of the thread act under one and the same force.
        let turns = |at: usize, thread: usize| {
            let faces = self.face_arm[at].min(self.land_arm[at]);
            let force = self.preload[1 - at];
            let hold = self.thread_arm[thread];
            through[at] > force * hold && faces > hold
        };
        let pair = |both: [f64; 2]| both.map(Torque::new::<newton_meter>);
        Unscrewing {
            running,
            demand,
            at_nut: pair([reaches(0), reaches(1)]),
            holds: pair([least, greatest]),
            // Surely, with the least that acts and the most that holds; possibly, the other way round.
            turns: Answer::of(
                turns(0, 1),
                turns(1, 0) || slick <= 0.0 || (more && self.takes_along() != Answer::No),
            ),
            all_known: !more,
        }
    }
}
