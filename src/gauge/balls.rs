//! A taper bore measured with two balls, one after the other.

use super::check::{root_sum, ruled_out, step, uncertainty};
use super::cone::{LargeEnd, MeasuredCone, mm};
use super::uncertainty::Sensitivity;
use super::{GEOMETRY, GUM};
use crate::error::Error;
use crate::units::{Angle, Length, degree, figure, finite, meter, positive_length, radian};
use crate::working::Working;

/// A taper bore, its large end up, in which a large and then a small ball come to rest.
///
/// With `R` the radii and `t` the depths of the balls' tops below the face (negative where a
/// ball stands proud), the centres are `c = (t₂ + R₂) − (t₁ + R₁)` apart and
/// `sin α = (R₁ − R₂) / c`; at the depth of a centre the bore has `2 R / cos α`.
///
/// Two balls can't show an error of form.
///
/// # Errors
///
/// [`OutOfRange`](crate::ErrorKind::OutOfRange) for balls that don't fit (one no larger than the other, centres too near,
/// resting on the mouth or past the end of the bore), a cylinder or a plate.
///
/// # Source
///
/// Geometry; uncertainties add up by JCGM 100.
///
/// # Example
///
/// Balls of 40 and 32 mm, one 8 mm proud and one 76 mm down: the centres are 80 mm apart, half
/// angle 2.866°.
///
/// ```
/// use hubwright::gauge::TwoBalls;
/// use hubwright::units::{Length, degree, millimeter};
///
/// let mm = Length::new::<millimeter>;
/// let found = TwoBalls::new([mm(40.0), mm(32.0)], [mm(-8.0), mm(76.0)]).solve()?;
/// assert!((found.cone.half_angle.get::<degree>() - 2.866).abs() < 5e-4);
/// assert!((found.centres_apart.get::<millimeter>() - 80.0).abs() < 1e-9);
/// # Ok::<(), hubwright::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct TwoBalls {
    /// Diameters of the large and the small ball.
    pub balls: [Length; 2],
    /// Depths of their tops below the face; negative where a ball stands proud.
    pub depths: [Length; 2],
    /// Standard uncertainty of a ball's diameter.
    pub u_ball: Length,
    /// Standard uncertainty of a depth.
    pub u_depth: Length,
    /// Length of the bore, when it is known.
    pub length: Option<Length>,
}

/// What [`TwoBalls::solve`] found.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct TwoBallsFound {
    /// What was read.
    pub readings: TwoBalls,
    /// The cone; positions are depths below the face.
    pub cone: MeasuredCone,
    /// Distance of the balls' centres.
    pub centres_apart: Length,
    /// Diameters of the bore at the depths of the centres, large and small ball.
    pub diameters: [Length; 2],
    /// Depths at which the balls touch the bore.
    pub touch: [Length; 2],
    /// What each reading does to the half angle.
    pub sensitivities: [Sensitivity; 4],
}

impl TwoBalls {
    /// Readings taken for exact: large ball first.
    pub fn new(balls: [Length; 2], depths: [Length; 2]) -> Self {
        let (u_ball, u_depth) = (Length::default(), Length::default());
        Self { balls, depths, u_ball, u_depth, length: None }
    }

    /// With standard uncertainties of a ball's diameter and of a depth.
    #[must_use]
    pub fn with_uncertainties(mut self, ball: Length, depth: Length) -> Self {
        (self.u_ball, self.u_depth) = (ball, depth);
        self
    }

    /// With the length of the bore, past which the small ball can't rest.
    #[must_use]
    pub fn with_length(mut self, length: Length) -> Self {
        self.length = Some(length);
        self
    }

    /// The cone.
    ///
    /// # Errors
    ///
    /// See [`TwoBalls`].
    pub fn solve(self) -> Result<TwoBallsFound, Error> {
        positive_length("ball_large", self.balls[0])?;
        positive_length("ball_small", self.balls[1])?;
        finite("depth_to_large", self.depths[0].get::<meter>(), "-8 mm")?;
        finite("depth_to_small", self.depths[1].get::<meter>(), "76 mm")?;
        uncertainty("u_ball", self.u_ball)?;
        uncertainty("u_depth", self.u_depth)?;
        let [large, small] = self.balls;
        if small >= large {
            let hint = "two balls of different sizes are needed, the large one first";
            return Err(ruled_out("ball_small", small, "not below ball_large", large, hint));
        }
        let apart = self.apart();
        let differ = (large - small) / 2.0;
        if apart <= differ {
            // There the small ball's centre would be as near as the radii differ.
            let least = self.depths[0] + large - small;
            let hint = "the balls don't fit this bore, or a depth or its sign is wrong: a ball that \
                        stands proud has a negative depth";
            return Err(ruled_out("depth_to_small", self.depths[1], "not above", least, hint));
        }
        let sine = self.sine();
        let alpha = sine.asin();
        let centres = self.centres();
        let touch = [0, 1].map(|at| centres[at] + sine * self.balls[at] / 2.0);
        if touch[0] < Length::default() {
            let range = "where it would touch the bore at";
            let hint = "that is over the mouth, on whose edge the ball rests: take a smaller one";
            return Err(ruled_out("depth_to_large", self.depths[0], range, touch[0], hint));
        }
        if let Some(length) = self.length {
            positive_length("length", length)?;
            if touch[1] > length {
                let range = "where it would touch the bore at";
                let hint = format!("that is past the bore's {}: take a larger ball", mm(length));
                return Err(ruled_out("depth_to_small", self.depths[1], range, touch[1], &hint));
            }
        }
        let diameters = self.balls.map(|ball| ball / alpha.cos());
        let cone = MeasuredCone {
            half_angle: Angle::new::<radian>(alpha),
            u_half_angle: Angle::new::<radian>(self.u_angle()),
            dof: f64::INFINITY,
            // Where the balls touch, half way between: there diameter and angle are independent.
            diameter: alpha.cos() * (large + small) / 2.0,
            u_diameter: self.u_diameter(alpha),
            plane: (touch[0] + touch[1]) / 2.0,
            span: centres,
            large_end: LargeEnd::Low,
        };
        let sensitivities = self.sensitivities();
        Ok(TwoBallsFound {
            readings: self,
            cone: cone.checked()?,
            centres_apart: apart,
            diameters,
            touch,
            sensitivities,
        })
    }

    fn centres(&self) -> [Length; 2] {
        [0, 1].map(|at| self.depths[at] + self.balls[at] / 2.0)
    }

    fn apart(&self) -> Length {
        let [large, small] = self.centres();
        small - large
    }

    fn sine(&self) -> f64 {
        ((self.balls[0] - self.balls[1]) / 2.0).get::<meter>() / self.apart().get::<meter>()
    }

    fn sensitivities(&self) -> [Sensitivity; 4] {
        let (sine, apart) = (self.sine(), self.apart().get::<meter>());
        let cosine = (1.0 - sine * sine).sqrt();
        let (ball, depth) = ((1.0 + sine) / (2.0 * apart * cosine), sine / (apart * cosine));
        let of = |of, value, u| Sensitivity { of, value, u };
        [
            of("ball_large", ball, self.u_ball),
            of("ball_small", -ball, self.u_ball),
            of("depth_to_large", depth, self.u_depth),
            of("depth_to_small", -depth, self.u_depth),
        ]
    }

    fn u_angle(&self) -> f64 {
        root_sum(self.sensitivities().map(|s| s.share()))
    }

    /// Of the diameter where the balls touch, half way between.
    fn u_diameter(&self, alpha: f64) -> Length {
        let (half, t) = (0.5_f64.sqrt(), alpha.tan());
        Length::new::<meter>(root_sum([
            // A larger ball raises the diameter at its centre, and its centre as well.
            half * (1.0 / alpha.cos() + t) * self.u_ball.get::<meter>(),
            half * 2.0 * t * self.u_depth.get::<meter>(),
        ]))
    }
}

impl TwoBallsFound {
    /// The steps, recomputed; the last one's result is the half angle in degrees.
    pub fn working(&self) -> Working {
        let of = &self.readings;
        let metres = |length: Length| figure(length.get::<meter>() * 1e3, 5);
        let apart = of.apart();
        let differ = (of.balls[0] - of.balls[1]) / 2.0;
        let [first, second] = of.centres().map(metres);
        Working {
            steps: vec![
                step(
                    "c",
                    "(t₂ + R₂) − (t₁ + R₁)",
                    format!("{second} − {first}"),
                    (apart.get::<meter>() * 1e3, "mm"),
                    GEOMETRY,
                ),
                step(
                    "u(α)",
                    "√Σ (cᵢ uᵢ)²",
                    "balls and depths".into(),
                    (of.u_angle().to_degrees(), "°"),
                    GUM,
                ),
                step(
                    "α",
                    "arcsin (R₁ − R₂) / c",
                    format!("arcsin {} / {}", metres(differ), metres(apart)),
                    (Angle::new::<radian>(of.sine().asin()).get::<degree>(), "°"),
                    GEOMETRY,
                ),
            ],
        }
    }
}
