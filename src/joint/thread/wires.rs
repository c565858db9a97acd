//! Measuring a screw's pitch diameter over three wires.

use std::f64::consts::PI;

use super::{HALF_ANGLE, Thread};
use crate::error::{Error, ErrorKind};
use crate::source::{Source, Status};
use crate::units::{Length, figure, meter, positive_length, shown_mm};

/// Size over three wires.
pub const THREE_WIRES: Source = Source::new(
    "three-wires",
    "wires between flanks, tilted by the lead angle (ASME B1.2; NBS Handbook H28)",
    "",
    "",
    Status::Memory,
);

/// Wires that touch the flanks below the crest and stand out above it, over the pitch.
const LEAST_WIRE: f64 = 0.506;
const GREATEST_WIRE: f64 = 1.01;

/// Size over three wires: what [`Thread::three_wires`] found.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct ThreeWires {
    /// The thread measured.
    pub thread: Thread,
    /// Best wire: it touches at the pitch diameter, where an error of the angle does least.
    pub best_wire: Length,
    /// The wires used.
    pub wire: Length,
    /// Size over the wires at the basic pitch diameter.
    pub basic: Length,
    /// At the greatest pitch diameter, when the designation names a class of screws.
    pub greatest: Option<Length>,
    /// At the least pitch diameter, likewise.
    pub least: Option<Length>,
}

impl Thread {
    /// Size over three wires of a screw or plug.
    ///
    /// `M = d2 + w (1 + √(1/sin² α + cot² α tan² φ)) − P/2 cot α`, with `w` the diameter of
    /// the wires, `α` 30° and `φ` the lead angle; the best wire is `P / (2 cos α)`. Without a
    /// wire the best one is taken. The measuring force presses wires and flanks
    /// together by some 1 to 2 µm, which is not in it.
    ///
    /// Range: wires from 0.506 to 1.01 pitches touch the flanks and stand out above the crests.
    ///
    /// # Errors
    ///
    /// [`ErrorKind::NotFinite`] and [`ErrorKind::OutOfRange`] for a wire outside that range.
    ///
    /// # Source
    ///
    /// ASME B1.2 and NBS Handbook H28, from memory; held against the geometry of a wire in a thread.
    ///
    /// # Example
    ///
    /// M10×1.5 over its best wires of 0.866 mm measures 10.3266 mm at the basic pitch diameter.
    ///
    /// ```
    /// use hubwright::joint::thread;
    /// use hubwright::units::millimeter;
    ///
    /// let found = thread("M10")?.three_wires(None)?;
    /// assert!((found.best_wire.get::<millimeter>() - 0.8660).abs() < 1e-4);
    /// assert!((found.basic.get::<millimeter>() - 10.3266).abs() < 1e-4);
    /// # Ok::<(), hubwright::Error>(())
    /// ```
    pub fn three_wires(&self, wire: Option<Length>) -> Result<ThreeWires, Error> {
        let best_wire = self.pitch / (2.0 * HALF_ANGLE.to_radians().cos());
        let wire = wire.unwrap_or(best_wire);
        let w = positive_length("wire", wire)?;
        let p = self.pitch.get::<meter>();
        if !(LEAST_WIRE * p..=GREATEST_WIRE * p).contains(&w) {
            let mm = |share: f64| figure(share * p * 1e3, 3);
            return Err(ErrorKind::OutOfRange {
                argument: "wire".into(),
                given: shown_mm(wire),
                range: format!("outside {} to {}", mm(LEAST_WIRE), mm(GREATEST_WIRE)),
                unit: "mm",
                authority: "wires that touch the flanks and stand out".into(),
                hint: format!("the best wire is {} mm", figure(shown_mm(best_wire), 4)),
            }
            .into());
        }
        let over = |pitch_diameter: Length| {
            Length::new::<meter>(over(pitch_diameter.get::<meter>(), p, w))
        };
        let screw = self.limits.filter(|limits| !limits.class.internal());
        Ok(ThreeWires {
            thread: *self,
            best_wire,
            wire,
            basic: over(self.pitch_diameter),
            greatest: screw.map(|limits| over(limits.pitch_greatest)),
            least: screw.map(|limits| over(limits.pitch_least)),
        })
    }
}

impl ThreeWires {
    /// Pitch diameter that a size over the wires stands for.
    ///
    /// # Errors
    ///
    /// [`ErrorKind::NotFinite`] and [`ErrorKind::OutOfRange`] for a size that no such thread has.
    pub fn pitch_diameter(&self, over_wires: Length) -> Result<Length, Error> {
        let m = positive_length("over_wires", over_wires)?;
        let (p, w) = (self.thread.pitch.get::<meter>(), self.wire.get::<meter>());
        let basic = self.thread.pitch_diameter.get::<meter>();
        if m < basic {
            return Err(ErrorKind::OutOfRange {
                argument: "over_wires".into(),
                given: shown_mm(over_wires),
                range: format!("below the pitch diameter of {}", figure(basic * 1e3, 4)),
                unit: "mm",
                authority: String::new(),
                hint: "give the size over the wires, not the pitch diameter".into(),
            }
            .into());
        }
        // Flanks that met at the crests would be a thread without any depth.
        let greatest = over(self.thread.diameter.get::<meter>(), p, w);
        if m > greatest {
            return Err(ErrorKind::OutOfRange {
                argument: "over_wires".into(),
                given: shown_mm(over_wires),
                range: format!("above {}, where no thread is cut", figure(greatest * 1e3, 4)),
                unit: "mm",
                authority: String::new(),
                hint: "check the size, the wires and the thread".into(),
            }
            .into());
        }
        // The lead angle hardly depends on the pitch diameter: each round gains three digits.
        let found = (0..6).fold(basic, |d2, _| m - (over(d2, p, w) - d2));
        Ok(Length::new::<meter>(found))
    }
}

/// Size over wires, all in metres.
fn over(pitch_diameter: f64, pitch: f64, wire: f64) -> f64 {
    let half = HALF_ANGLE.to_radians();
    let cot = 1.0 / half.tan();
    let rise = pitch / (PI * pitch_diameter);
    let spread = (1.0 / half.sin().powi(2) + cot * cot * rise * rise).sqrt();
    pitch_diameter + wire * (1.0 + spread) - pitch / 2.0 * cot
}
