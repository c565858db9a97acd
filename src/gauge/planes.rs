//! A cone from two diameters and the distance of their planes.

use super::check::{root_sum, ruled_out, step, uncertainty};
use super::cone::{LargeEnd, MeasuredCone};
use super::uncertainty::Sensitivity;
use super::{GEOMETRY, GUM};
use crate::error::Error;
use crate::units::{Angle, Length, degree, figure, meter, positive_length, radian};
use crate::working::Working;

/// Two diameters of a cone, the small one first, and how far apart their planes are.
///
/// `tan α = (D − d) / (2 L)`. Two planes can't show an error of form: see
/// [`ConeFit`](super::ConeFit).
///
/// # Errors
///
/// [`OutOfRange`](crate::ErrorKind::OutOfRange) for the wrong end first, a cylinder or a plate.
///
/// # Source
///
/// Geometry; uncertainties add up by JCGM 100.
///
/// # Example
///
/// 0.620 and 0.745 in an inch apart: 3.576°, 1.5 in/ft.
///
/// ```
/// use hubwright::gauge::TwoDiameters;
/// use hubwright::units::{Length, degree, inch};
///
/// let inches = Length::new::<inch>;
/// let found = TwoDiameters::new([inches(0.62), inches(0.745)], inches(1.0)).solve()?;
/// assert!((found.cone.half_angle.get::<degree>() - 3.5763).abs() < 1e-4);
/// # Ok::<(), hubwright::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct TwoDiameters {
    /// The small and the large diameter.
    pub diameters: [Length; 2],
    /// Distance of their planes along the axis.
    pub apart: Length,
    /// Standard uncertainty of a diameter.
    pub u_diameter: Length,
    /// Standard uncertainty of the distance.
    pub u_apart: Length,
}

/// What [`TwoDiameters::solve`] found.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct TwoDiametersFound {
    /// What was read.
    pub readings: TwoDiameters,
    /// The cone; positions are counted from the small diameter's plane.
    pub cone: MeasuredCone,
    /// What each reading does to the half angle.
    pub sensitivities: [Sensitivity; 3],
}

impl TwoDiameters {
    /// Readings taken for exact.
    pub fn new(diameters: [Length; 2], apart: Length) -> Self {
        Self { diameters, apart, u_diameter: Length::default(), u_apart: Length::default() }
    }

    /// With standard uncertainties of a diameter and of the distance.
    #[must_use]
    pub fn with_uncertainties(mut self, diameter: Length, apart: Length) -> Self {
        (self.u_diameter, self.u_apart) = (diameter, apart);
        self
    }

    /// The cone.
    ///
    /// # Errors
    ///
    /// See [`TwoDiameters`].
    pub fn solve(self) -> Result<TwoDiametersFound, Error> {
        let [small, large] = self.diameters;
        positive_length("small_diameter", small)?;
        positive_length("large_diameter", large)?;
        positive_length("apart", self.apart)?;
        uncertainty("u_diameter", self.u_diameter)?;
        uncertainty("u_apart", self.u_apart)?;
        if large < small {
            let hint = "the wrong end is named: swap the two diameters";
            return Err(ruled_out("large_diameter", large, "below small_diameter", small, hint));
        }
        let cone = MeasuredCone {
            half_angle: Angle::new::<radian>(self.angle()),
            u_half_angle: Angle::new::<radian>(root_sum(self.sensitivities().map(|s| s.share()))),
            dof: f64::INFINITY,
            diameter: (small + large) / 2.0,
            u_diameter: 0.5_f64.sqrt() * self.u_diameter,
            plane: self.apart / 2.0,
            span: [Length::default(), self.apart],
            large_end: LargeEnd::High,
        };
        let sensitivities = self.sensitivities();
        Ok(TwoDiametersFound { readings: self, cone: cone.checked()?, sensitivities })
    }

    fn angle(&self) -> f64 {
        let [small, large] = self.diameters;
        ((large - small).get::<meter>() / (2.0 * self.apart.get::<meter>())).atan()
    }

    fn sensitivities(&self) -> [Sensitivity; 3] {
        let (alpha, apart) = (self.angle(), self.apart.get::<meter>());
        let square = alpha.cos().powi(2);
        let of = |of, value, u| Sensitivity { of, value, u };
        [
            of("small_diameter", -square / (2.0 * apart), self.u_diameter),
            of("large_diameter", square / (2.0 * apart), self.u_diameter),
            of("apart", -square * alpha.tan() / apart, self.u_apart),
        ]
    }
}

impl TwoDiametersFound {
    /// The steps, recomputed; the last one's result is the half angle in degrees.
    pub fn working(&self) -> Working {
        let of = &self.readings;
        let metres = |length: Length| figure(length.get::<meter>() * 1e3, 5);
        let u = root_sum(of.sensitivities().map(|s| s.share()));
        let [small, large] = of.diameters.map(metres);
        Working {
            steps: vec![
                step(
                    "u(α)",
                    "√Σ (cᵢ uᵢ)²",
                    "diameters and distance".into(),
                    (u.to_degrees(), "°"),
                    GUM,
                ),
                step(
                    "α",
                    "arctan (D − d) / (2 L)",
                    format!("arctan ({large} − {small}) / (2 · {})", metres(of.apart)),
                    (Angle::new::<radian>(of.angle()).get::<degree>(), "°"),
                    GEOMETRY,
                ),
            ],
        }
    }
}
