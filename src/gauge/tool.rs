//! What a tool off centre height does to a taper.

use super::GEOMETRY;
use super::check::{ruled_out, step};
use crate::error::Error;
use crate::joint::Taper;
use crate::units::{Angle, Length, degree, figure, finite, meter, positive_length, radian};
use crate::working::Working;

/// A taper turned or bored with the tool above or below the axis.
///
/// A tool `h` off the axis that is led at the half angle `α` cuts `r = √(x² + h²)` where
/// `x = x₀ + z tan α`: no cone but a hyperboloid. Its angle from end to end is smaller than
/// `α`, and its middle is smaller than the chord: a nose gets a waist, a bore bulges inward.
///
/// # Errors
///
/// [`OutOfRange`](crate::ErrorKind::OutOfRange) for a tool further off than the small end's radius, and lengths that are
/// not above zero.
///
/// # Source
///
/// Geometry.
///
/// # Example
///
/// 1:5 from 20 mm on, 35 mm long, the tool 1 mm off: 1.27' too small, and bent.
///
/// ```
/// use hubwright::gauge::ToolHeight;
/// use hubwright::joint::taper;
/// use hubwright::units::{Length, degree, millimeter};
///
/// let mm = Length::new::<millimeter>;
/// let found = ToolHeight::new(taper("1:5")?, mm(20.0), mm(35.0), mm(1.0)).solve()?;
/// assert!((found.angle_error.get::<degree>() * 60.0 + 1.265).abs() < 0.005);
/// # Ok::<(), hubwright::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct ToolHeight {
    /// What the slide is set to.
    pub taper: Taper,
    /// Diameter that is cut at the small end.
    pub small_diameter: Length,
    /// Length of the taper.
    pub length: Length,
    /// How far off the axis the tool is, either way.
    pub off: Length,
}

/// What [`ToolHeight::solve`] found.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct ToolHeightFound {
    /// What was asked.
    pub tool: ToolHeight,
    /// Half angle from end to end.
    pub half_angle: Angle,
    /// That less the half angle set: zero or below.
    pub angle_error: Angle,
    /// The error as a rise on one side over the length: zero or below.
    pub per_side: Length,
    /// How much smaller than the chord the flank is where it is furthest from it, on one side.
    pub bow: Length,
    /// Where that is, from the small end.
    pub bow_at: Length,
}

impl ToolHeight {
    /// A taper from its small end on.
    pub fn new(taper: Taper, small_diameter: Length, length: Length, off: Length) -> Self {
        Self { taper, small_diameter, length, off }
    }

    /// What it comes to.
    ///
    /// # Errors
    ///
    /// See [`ToolHeight`].
    pub fn solve(self) -> Result<ToolHeightFound, Error> {
        positive_length("small_diameter", self.small_diameter)?;
        positive_length("length", self.length)?;
        finite("off", self.off.get::<meter>(), "0.2 mm")?;
        if self.off.abs() >= self.small_diameter / 2.0 {
            let hint = "give the height of the tool over or under the axis";
            let radius = self.small_diameter / 2.0;
            return Err(ruled_out(
                "off",
                self.off,
                "not within the small end's radius,",
                radius,
                hint,
            ));
        }
        let (t, h, length) =
            (self.taper.per_side, self.off.get::<meter>(), self.length.get::<meter>());
        let [x, r, end] = self.ends();
        let chord = (end - r) / length;
        // There the flank runs parallel to its chord.
        let share = chord / t;
        let at = if h == 0.0 {
            0.5 * length
        } else {
            (h.abs() * share / (1.0 - share * share).sqrt() - x) / t
        };
        let (angle, metres) = (Angle::new::<radian>, Length::new::<meter>);
        let alpha = self.taper.half_angle.get::<radian>();
        Ok(ToolHeightFound {
            tool: self,
            half_angle: angle(chord.atan()),
            angle_error: angle(chord.atan() - alpha),
            per_side: metres(end - r - length * t),
            bow: metres((r + chord * at - (x + t * at).hypot(h)).max(0.0)),
            bow_at: metres(at),
        })
    }

    /// Where the tool is across at the small end, and the radii of both ends.
    fn ends(&self) -> [f64; 3] {
        let (t, h) = (self.taper.per_side, self.off.get::<meter>());
        let r = self.small_diameter.get::<meter>() / 2.0;
        let x = ((r - h) * (r + h)).sqrt();
        [x, r, (x + t * self.length.get::<meter>()).hypot(h)]
    }
}

impl ToolHeightFound {
    /// The steps, recomputed; the last one's result is the half angle in degrees.
    pub fn working(&self) -> Working {
        let of = &self.tool;
        let [x, r, end] = of.ends();
        let (h, length) = (of.off.get::<meter>(), of.length.get::<meter>());
        let mm = |metres: f64| figure(metres * 1e3, 6);
        let half = Angle::new::<radian>(((end - r) / length).atan());
        Working {
            steps: vec![
                step(
                    "x₀",
                    "√(r² − h²)",
                    format!("√({}² − {}²)", mm(r), mm(h)),
                    (x * 1e3, "mm"),
                    GEOMETRY,
                ),
                step(
                    "r large",
                    "√((x₀ + L tan α)² + h²)",
                    format!(
                        "√(({} + {} · {})² + {}²)",
                        mm(x),
                        mm(length),
                        figure(of.taper.per_side, 9),
                        mm(h)
                    ),
                    (end * 1e3, "mm"),
                    GEOMETRY,
                ),
                step(
                    "α from end to end",
                    "arctan ((r large − r) / L)",
                    format!("arctan (({} − {}) / {})", mm(end), mm(r), mm(length)),
                    (half.get::<degree>(), "°"),
                    GEOMETRY,
                ),
            ],
        }
    }
}
