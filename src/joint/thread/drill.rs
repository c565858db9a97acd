//! The hole to drill before tapping.

use super::Thread;
use crate::error::{Error, ErrorKind};
use crate::source::{Source, Status};
use crate::units::{Exact, Length, figure, positive_length, shown_mm};

/// A drill of the diameter less the pitch.
pub const DRILL_RULE: Source = Source::new(
    "tap-drill",
    "common practice, no source",
    "",
    "tap drill = diameter − pitch; 100 % thread = 1.299 P",
    Status::Practice,
);

/// Twice the depth at which a thread counts as full, over the pitch: `3/2 H`.
const FULL: f64 = 1.299_038_105_676_658;

/// A hole before tapping: what [`Thread::tap_drill`] found.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct TapDrill {
    /// The thread to be tapped.
    pub thread: Thread,
    /// Diameter of the hole.
    pub drill: Length,
    /// Height of the thread it leaves, of a full one, in %: `(d − hole) / (1.299 P)`.
    pub percent: f64,
    /// Whether the hole lies between the limits of the minor diameter; `None` when the
    /// designation names no class of nuts.
    pub within: Option<bool>,
}

impl Thread {
    /// The hole to drill before tapping, and how much thread it leaves.
    ///
    /// Without a drill it is the diameter less the pitch, which leaves 77 %. A cutting
    /// drill makes a hole that is larger than itself; state the hole where it was measured.
    ///
    /// # Errors
    ///
    /// [`ErrorKind::NotFinite`] and [`ErrorKind::OutOfRange`] for a drill that is not above
    /// zero, leaves no thread, or more than a whole one.
    ///
    /// # Source
    ///
    /// Common practice; no standard is involved.
    ///
    /// # Example
    ///
    /// For 1/4-20 UNC the rule asks for 5.08 mm (0.2 in); a 5.1 mm drill leaves 76 % of a thread.
    ///
    /// ```
    /// use hubwright::joint::thread;
    /// use hubwright::units::{Length, millimeter};
    ///
    /// let nut = thread("1/4-20 UNC-2B")?;
    /// assert!((nut.tap_drill(None)?.drill.get::<millimeter>() - 5.08).abs() < 1e-9);
    /// let found = nut.tap_drill(Some(Length::new::<millimeter>(5.1)))?;
    /// assert_eq!((found.percent.round(), found.within), (76.0, Some(true)));
    /// # Ok::<(), hubwright::Error>(())
    /// ```
    pub fn tap_drill(&self, drill: Option<Length>) -> Result<TapDrill, Error> {
        let drill = drill.unwrap_or(self.diameter - self.pitch);
        positive_length("drill", drill)?;
        let (hole, diameter) = (drill.exact(), self.diameter.exact());
        if hole >= diameter {
            return Err(ErrorKind::OutOfRange {
                argument: "drill".into(),
                given: shown_mm(drill),
                range: format!("not below the thread's {}", figure(shown_mm(self.diameter), 4)),
                unit: "mm",
                authority: String::new(),
                hint: "such a hole leaves no thread; check the drill and the thread".into(),
            }
            .into());
        }
        let percent = ((self.diameter - drill) / self.pitch).value / FULL * 100.0;
        if percent > 100.0 {
            let full = self.diameter - self.pitch * FULL;
            return Err(ErrorKind::OutOfRange {
                argument: "drill".into(),
                given: shown_mm(drill),
                range: format!("below {}, the hole of a whole thread", figure(shown_mm(full), 4)),
                unit: "mm",
                authority: String::new(),
                hint: "a tap breaks in such a hole; the diameter less the pitch is usual".into(),
            }
            .into());
        }
        let within = self.limits.and_then(|limits| {
            let (least, greatest) = (limits.minor_least?, limits.minor_greatest?);
            Some(least.exact() <= hole && hole <= greatest.exact())
        });
        Ok(TapDrill { thread: *self, drill, percent, within })
    }
}
