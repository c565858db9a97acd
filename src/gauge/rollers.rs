//! A male taper on the plate, measured over two rollers at two heights.

use super::check::{root_sum, ruled_out, step, uncertainty};
use super::cone::{LargeEnd, MeasuredCone};
use super::uncertainty::Sensitivity;
use super::{GEOMETRY, GUM};
use crate::error::Error;
use crate::units::{Angle, Length, degree, figure, finite, meter, positive_length, radian};
use crate::working::Working;

/// A plug or spindle nose standing on a plate, two equal rollers against it, lying on the plate
/// or on gauge blocks.
///
/// With `M` the readings over the rollers and `h` the heights of the blocks under them,
/// `tan α = (M₂ − M₁) / (2 (h₂ − h₁))`; with `d` a roller's diameter the cone has
/// `D = M − d (1 + sec α)` at the height of the rollers' axes, `h + d/2`.
///
/// Two heights can't show an error of form: see [`ConeFit`](super::ConeFit).
///
/// # Errors
///
/// [`OutOfRange`](crate::ErrorKind::OutOfRange) for rollers at one height or in the wrong order, a cylinder, a plate, a
/// large end that is not where it is said to be, or rollers that don't leave room for a cone.
///
/// # Source
///
/// Geometry; uncertainties add up by JCGM 100.
///
/// # Example
///
/// A 1:10 plug, small end down, over 10 mm rollers on the plate and on 50 mm of blocks.
///
/// ```
/// use hubwright::gauge::OverRollers;
/// use hubwright::units::{Length, degree, micrometer, millimeter};
///
/// let (mm, um) = (Length::new::<millimeter>, Length::new::<micrometer>);
/// let found = OverRollers::new([mm(60.5125), mm(65.5125)], [mm(0.0), mm(50.0)], mm(10.0))
///     .with_uncertainties(um(0.8), um(0.3), um(0.5))
///     .solve()?;
/// assert!((found.cone.half_angle.get::<degree>() - 2.86241).abs() < 1e-5);
/// assert!((found.cone.diameter_at(mm(0.0)).get::<millimeter>() - 40.0).abs() < 1e-4);
/// # Ok::<(), hubwright::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct OverRollers {
    /// Readings over the rollers, lower and upper.
    pub over: [Length; 2],
    /// Heights of the blocks under them; zero on the plate.
    pub heights: [Length; 2],
    /// Diameter of a roller.
    pub roller: Length,
    /// Standard uncertainty of a reading.
    pub u_over: Length,
    /// Standard uncertainty of a height.
    pub u_height: Length,
    /// Standard uncertainty of the rollers' diameter.
    pub u_roller: Length,
    /// Where the large end is said to be, when somebody says so.
    pub large_end: Option<LargeEnd>,
}

/// What [`OverRollers::solve`] found.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct OverRollersFound {
    /// What was read.
    pub readings: OverRollers,
    /// The cone; positions are heights over the plate.
    pub cone: MeasuredCone,
    /// Diameters at the heights of the rollers' axes, lower and upper.
    pub diameters: [Length; 2],
    /// What each reading does to the half angle.
    pub sensitivities: [Sensitivity; 4],
}

impl OverRollers {
    /// Readings taken for exact.
    pub fn new(over: [Length; 2], heights: [Length; 2], roller: Length) -> Self {
        let exact = Length::default();
        let (u_over, u_height, u_roller) = (exact, exact, exact);
        Self { over, heights, roller, u_over, u_height, u_roller, large_end: None }
    }

    /// With standard uncertainties of a reading, a height and the rollers' diameter.
    #[must_use]
    pub fn with_uncertainties(mut self, over: Length, height: Length, roller: Length) -> Self {
        (self.u_over, self.u_height, self.u_roller) = (over, height, roller);
        self
    }

    /// With the end that is known to be the large one.
    #[must_use]
    pub fn with_large_end(mut self, end: LargeEnd) -> Self {
        self.large_end = Some(end);
        self
    }

    /// The cone.
    ///
    /// # Errors
    ///
    /// See [`OverRollers`].
    pub fn solve(self) -> Result<OverRollersFound, Error> {
        positive_length("over_low", self.over[0])?;
        positive_length("over_high", self.over[1])?;
        positive_length("roller", self.roller)?;
        uncertainty("height_low", self.heights[0])?;
        finite("height_high", self.heights[1].get::<meter>(), "50 mm")?;
        uncertainty("u_over", self.u_over)?;
        uncertainty("u_height", self.u_height)?;
        uncertainty("u_roller", self.u_roller)?;
        let [low, high] = self.heights;
        if high <= low {
            let hint = if high == low {
                "rollers at one height give a diameter and no angle: put gauge blocks under them"
            } else {
                "the readings are out of order: give the lower pair first"
            };
            return Err(ruled_out("height_high", high, "not above height_low", low, hint));
        }
        let alpha = self.angle();
        let rises = self.over[1] > self.over[0];
        let large_end = if rises { LargeEnd::High } else { LargeEnd::Low };
        if let Some(said) = self.large_end
            && said != large_end
            && self.over[0] != self.over[1]
        {
            let range = if rises { "above over_low" } else { "below over_low" };
            let hint = format!(
                "the large end is said to be {said}: swap the two readings, or name the other end"
            );
            return Err(ruled_out("over_high", self.over[1], range, self.over[0], &hint));
        }
        let diameters = self.diameters(alpha);
        let sign = if rises { 1.0 } else { -1.0 };
        let touch = sign * alpha.sin() * self.roller / 2.0;
        let cone = MeasuredCone {
            half_angle: Angle::new::<radian>(alpha),
            u_half_angle: Angle::new::<radian>(root_sum(self.sensitivities().map(|s| s.share()))),
            dof: f64::INFINITY,
            // Where the rollers touch, half way between: there diameter and angle are independent.
            diameter: (diameters[0] + diameters[1]) / 2.0 + alpha.sin() * alpha.tan() * self.roller,
            u_diameter: self.u_diameter(alpha),
            plane: (low + high) / 2.0 + self.roller / 2.0 + touch,
            span: [low + self.roller / 2.0, high + self.roller / 2.0],
            large_end,
        };
        for (reading, found) in self.over.into_iter().zip(diameters) {
            if found <= Length::default() {
                let hint = "check the rollers' diameter and the readings";
                let range = "not above what the rollers take up by themselves,";
                return Err(ruled_out("over_low", reading, range, reading - found, hint));
            }
        }
        Ok(OverRollersFound {
            readings: self,
            cone: cone.checked()?,
            diameters,
            sensitivities: self.sensitivities(),
        })
    }

    /// The half angle in radians.
    fn angle(&self) -> f64 {
        let apart = (self.heights[1] - self.heights[0]).get::<meter>();
        let more = (self.over[1] - self.over[0]).get::<meter>();
        (more / (2.0 * apart)).atan().abs()
    }

    fn diameters(&self, alpha: f64) -> [Length; 2] {
        self.over.map(|over| over - (1.0 + 1.0 / alpha.cos()) * self.roller)
    }

    fn sensitivities(&self) -> [Sensitivity; 4] {
        let apart = (self.heights[1] - self.heights[0]).get::<meter>();
        let more = (self.over[1] - self.over[0]).get::<meter>();
        let square = self.angle().cos().powi(2);
        let (over, height) = (square / (2.0 * apart), square * more.abs() / (2.0 * apart * apart));
        let of = |of, value, u| Sensitivity { of, value, u };
        [
            of("over_low", -over, self.u_over),
            of("over_high", over, self.u_over),
            of("height_low", height, self.u_height),
            of("height_high", -height, self.u_height),
        ]
    }

    /// Of the diameter where the rollers touch, half way between.
    fn u_diameter(&self, alpha: f64) -> Length {
        let half = 0.5_f64.sqrt();
        let rises = (self.over[1] - self.over[0]).get::<meter>().signum();
        Length::new::<meter>(root_sum([
            half * self.u_over.get::<meter>(),
            // A thicker roller raises its axis too.
            (1.0 + 1.0 / alpha.cos() + rises * alpha.tan()) * self.u_roller.get::<meter>(),
            half * 2.0 * alpha.tan() * self.u_height.get::<meter>(),
        ]))
    }
}

impl OverRollersFound {
    /// The steps, recomputed; the last one's result is the half angle in degrees.
    pub fn working(&self) -> Working {
        let of = &self.readings;
        let alpha = of.angle();
        let [low, high] = of.diameters(alpha);
        let metres = |length: Length| figure(length.get::<meter>() * 1e3, 5);
        let diameter = |symbol, over, found: Length| {
            let numbers = format!("{} − {} (1 + 1 / cos α)", metres(over), metres(of.roller));
            step(symbol, "M − d (1 + sec α)", numbers, (found.get::<meter>() * 1e3, "mm"), GEOMETRY)
        };
        let u = root_sum(of.sensitivities().map(|s| s.share()));
        let [first, second] = of.heights;
        Working {
            steps: vec![
                diameter("D low", of.over[0], low),
                diameter("D high", of.over[1], high),
                step(
                    "u(α)",
                    "√Σ (cᵢ uᵢ)²",
                    "readings and heights".into(),
                    (u.to_degrees(), "°"),
                    GUM,
                ),
                step(
                    "α",
                    "arctan |M₂ − M₁| / (2 (h₂ − h₁))",
                    format!(
                        "arctan |{} − {}| / (2 ({} − {}))",
                        metres(of.over[1]),
                        metres(of.over[0]),
                        metres(second),
                        metres(first)
                    ),
                    (Angle::new::<radian>(alpha).get::<degree>(), "°"),
                    GEOMETRY,
                ),
            ],
        }
    }
}
