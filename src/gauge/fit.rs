//! The cone that fits many diameters best, and whether its flank is straight.

use super::check::{ruled_out, step, uncertainty};
use super::cone::{LargeEnd, MeasuredCone};
use super::{GUM, LEAST_SQUARES};
use crate::error::{Error, ErrorKind};
use crate::solid::chance::coverage;
use crate::units::{Angle, Length, degree, figure, finite, meter, positive_length, radian, words};
use crate::working::Working;

words! {
    /// Whether the flank of a cone was seen to be bent.
    FlankBow, "bow of the flank" {
        /// No bend was seen: there may be one that is less than the smallest that would show.
        NotSeen = "not seen" [];
        /// The middle is too large: a barrel, or a bore worn hollow.
        LargeInTheMiddle = "large in the middle" [];
        /// The middle is too small: a waist, or a bore that bulges inward.
        SmallInTheMiddle = "small in the middle" [];
        /// The readings can't show any.
        CantTell = "can't tell" [];
    }
}

/// Diameters of a cone at three or more planes.
///
/// The straight line `d(z)` of least squares: `tan α = slope / 2`,
/// `u(α) = cos² α · s / (2 √Σ (z − z̄)²)` with `s` what the readings scatter about it (`n − 2`
/// degrees of freedom), or what they are stated to scatter where that is more. A parabola
/// through them shows whether the flank is bent, as far as it stands out from the scatter.
///
/// # Errors
///
/// [`Missing`](crate::ErrorKind::Missing) for fewer than three readings, [`UnlikeLengths`](crate::ErrorKind::UnlikeLengths) for a position
/// without a diameter; [`OutOfRange`](crate::ErrorKind::OutOfRange) for positions out of order, a large end that is not
/// where it is said to be, a cylinder or a plate.
///
/// # Source
///
/// Least squares; JCGM 100 for the uncertainties.
///
/// # Example
///
/// Five diameters of a 1:10 nose, each within half a micrometre.
///
/// ```
/// use hubwright::gauge::{FlankBow, ConeFit};
/// use hubwright::units::{Length, degree, millimeter};
///
/// let all = |figures: [f64; 5]| figures.map(Length::new::<millimeter>);
/// let (positions, diameters) = (
///     all([2.0, 12.0, 22.0, 32.0, 42.0]),
///     all([30.2004, 31.2002, 32.1995, 33.2006, 34.1996]),
/// );
/// let found = ConeFit::new(&positions, &diameters).solve()?;
/// assert!((found.cone.half_angle.get::<degree>() - 2.8624).abs() < 1e-3);
/// assert_eq!(found.bow, FlankBow::NotSeen);
/// # Ok::<(), hubwright::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct ConeFit<'a> {
    /// Positions along the axis, increasing.
    pub positions: &'a [Length],
    /// The diameter at each.
    pub diameters: &'a [Length],
    /// Standard uncertainty of a diameter, each for itself.
    pub u_diameter: Length,
    /// Standard uncertainty of a position, each for itself.
    pub u_position: Length,
    /// Standard uncertainty that all diameters share, as of the instrument's setting.
    pub u_shared: Length,
    /// Where the large end is said to be, when somebody says so.
    pub large_end: Option<LargeEnd>,
}

/// What [`ConeFit::solve`] found.
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub struct ConeFitFound {
    /// Positions as given.
    pub positions: Vec<Length>,
    /// Diameters as given.
    pub diameters: Vec<Length>,
    /// The cone; its plane is the mean position.
    pub cone: MeasuredCone,
    /// Measured less fitted diameter, in the order of the readings.
    pub residuals: Vec<Length>,
    /// Their standard deviation, with two degrees of freedom less than readings.
    pub scatter: Length,
    /// What the uncertainty of the angle was reckoned with: the scatter, or more where more
    /// was stated.
    pub u_reading: Length,
    /// From the lowest residual to the highest, on diameter.
    pub form: Length,
    /// The same on one side and square to the flank.
    pub straightness: Length,
    /// Whether a bend was seen.
    pub bow: FlankBow,
    /// How much larger than the chord the middle is, on diameter, by a parabola.
    pub bow_on_diameter: Length,
    /// The smallest bend on diameter that would have been told from the scatter, 95 %;
    /// `None` where none would.
    pub least_bow: Option<Length>,
}

/// Sums that every figure comes from, in metres.
struct Line {
    mean: [f64; 2],
    spread: f64,
    slope: f64,
    residuals: Vec<f64>,
    scatter: f64,
}

impl<'a> ConeFit<'a> {
    /// Readings of which only the scatter is known.
    pub fn new(positions: &'a [Length], diameters: &'a [Length]) -> Self {
        let none = Length::default();
        Self {
            positions,
            diameters,
            u_diameter: none,
            u_position: none,
            u_shared: none,
            large_end: None,
        }
    }

    /// With standard uncertainties of a diameter and a position, each for itself, and of what
    /// all diameters share.
    #[must_use]
    pub fn with_uncertainties(
        mut self,
        diameter: Length,
        position: Length,
        shared: Length,
    ) -> Self {
        (self.u_diameter, self.u_position, self.u_shared) = (diameter, position, shared);
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
    /// See [`ConeFit`].
    pub fn solve(self) -> Result<ConeFitFound, Error> {
        self.check()?;
        let line = Line::of(self.positions, self.diameters);
        let n = self.positions.len() as f64;
        let alpha = (line.slope / 2.0).atan().abs();
        let large_end = if line.slope > 0.0 { LargeEnd::High } else { LargeEnd::Low };
        let stated =
            self.u_diameter.get::<meter>().hypot(line.slope * self.u_position.get::<meter>());
        let by_scatter = line.scatter > stated;
        let u_reading = line.scatter.max(stated);
        let dof = if by_scatter { n - 2.0 } else { f64::INFINITY };
        let u_half = alpha.cos().powi(2) * u_reading / (2.0 * line.spread.sqrt());
        let [z, d] = line.mean;
        let metres = Length::new::<meter>;
        let [first, .., last] = self.positions else { return Err(too_few(self.positions.len())) };
        let cone = MeasuredCone {
            half_angle: Angle::new::<radian>(alpha),
            u_half_angle: Angle::new::<radian>(u_half),
            dof,
            diameter: metres(d),
            u_diameter: metres((u_reading / n.sqrt()).hypot(self.u_shared.get::<meter>())),
            plane: metres(z),
            span: [*first, *last],
            large_end,
        }
        .checked()?;
        if let Some(said) = self.large_end
            && said != large_end
        {
            let range =
                if line.slope > 0.0 { "above the first one," } else { "below the first one," };
            let [from, .., to] = self.diameters else { return Err(too_few(self.diameters.len())) };
            let hint = format!(
                "the large end is said to be {said}: turn the readings round, or name the other end"
            );
            return Err(ruled_out("diameters", *to, range, *from, &hint));
        }
        let (bow_on_diameter, bow, least_bow) = self.bow(&line, stated);
        let low = line.residuals.iter().copied().fold(f64::INFINITY, f64::min);
        let high = line.residuals.iter().copied().fold(f64::NEG_INFINITY, f64::max);
        Ok(ConeFitFound {
            positions: self.positions.to_vec(),
            diameters: self.diameters.to_vec(),
            cone,
            residuals: line.residuals.iter().copied().map(metres).collect(),
            scatter: metres(line.scatter),
            u_reading: metres(u_reading),
            form: metres(high - low),
            straightness: metres((high - low) / 2.0 * alpha.cos()),
            bow,
            bow_on_diameter: metres(bow_on_diameter),
            least_bow: least_bow.map(metres),
        })
    }

    fn check(&self) -> Result<(), Error> {
        let (n, diameters) = (self.positions.len(), self.diameters.len());
        if n != diameters {
            return Err(ErrorKind::UnlikeLengths {
                argument: "diameters".into(),
                given: diameters,
                wanted: n,
            }
            .into());
        }
        if n < 3 {
            return Err(too_few(n));
        }
        for (position, diameter) in self.positions.iter().zip(self.diameters) {
            finite("positions", position.get::<meter>(), "12 mm")?;
            positive_length("diameters", *diameter)?;
        }
        for pair in self.positions.windows(2) {
            if let [before, after] = pair
                && after <= before
            {
                let hint = "give the readings in their order along the axis, one a position";
                return Err(ruled_out(
                    "positions",
                    *after,
                    "not above the one before,",
                    *before,
                    hint,
                ));
            }
        }
        uncertainty("u_diameter", self.u_diameter)?;
        uncertainty("u_position", self.u_position)?;
        uncertainty("u_shared", self.u_shared)
    }

    /// How much larger the middle is, whether that was seen, and what would have been.
    fn bow(&self, line: &Line, stated: f64) -> (f64, FlankBow, Option<f64>) {
        let n = self.positions.len() as f64;
        let z: Vec<f64> = self.positions.iter().map(|z| z.get::<meter>() - line.mean[0]).collect();
        let cubes: f64 = z.iter().map(|z| z.powi(3)).sum();
        // The part of z² that neither a constant nor a slope can follow.
        let bent: Vec<f64> =
            z.iter().map(|z| z * z - cubes / line.spread * z - line.spread / n).collect();
        let size: f64 = bent.iter().map(|q| q * q).sum();
        let product: f64 = bent.iter().zip(&line.residuals).map(|(q, r)| q * r).sum();
        let curve = product / size;
        let left: f64 = line.residuals.iter().map(|r| r * r).sum::<f64>() - product * curve;
        let scatter = if n > 3.0 { (left.max(0.0) / (n - 3.0)).sqrt() } else { 0.0 };
        let (u, dof) = if scatter > stated { (scatter, n - 3.0) } else { (stated, f64::INFINITY) };
        let span = z.last().unwrap_or(&0.0) - z.first().unwrap_or(&0.0);
        let sag = span * span / 4.0;
        let on_diameter = -curve * sag;
        if u <= 0.0 && n < 4.0 {
            return (on_diameter, FlankBow::CantTell, None);
        }
        let least = coverage(2.0, dof) * u / size.sqrt() * sag;
        // Readings that lie on a line to the last digit have a bend of rounding.
        let seen = on_diameter.abs() > least.max(1e-12);
        let bow = match (seen, on_diameter > 0.0) {
            (false, _) => FlankBow::NotSeen,
            (true, true) => FlankBow::LargeInTheMiddle,
            (true, false) => FlankBow::SmallInTheMiddle,
        };
        (on_diameter, bow, Some(least))
    }
}

fn too_few(given: usize) -> Error {
    ErrorKind::Missing {
        argument: "positions".into(),
        why: format!("{given} given, a cone is fitted to three readings or more"),
        hint: "measure more planes; two diameters and their distance make a cone without a fit"
            .into(),
    }
    .into()
}

impl Line {
    fn of(positions: &[Length], diameters: &[Length]) -> Self {
        let n = positions.len() as f64;
        let metres = |all: &[Length]| all.iter().map(|one| one.get::<meter>()).collect::<Vec<_>>();
        let (z, d) = (metres(positions), metres(diameters));
        let mean = [z.iter().sum::<f64>() / n, d.iter().sum::<f64>() / n];
        let spread: f64 = z.iter().map(|z| (z - mean[0]).powi(2)).sum();
        let product: f64 = z.iter().zip(&d).map(|(z, d)| (z - mean[0]) * (d - mean[1])).sum();
        let slope = product / spread;
        let residuals: Vec<f64> =
            z.iter().zip(&d).map(|(z, d)| (d - mean[1]) - slope * (z - mean[0])).collect();
        let squares: f64 = residuals.iter().map(|r| r * r).sum();
        let scatter = (squares / (n - 2.0)).sqrt();
        Self { mean, spread, slope, residuals, scatter }
    }
}

impl ConeFitFound {
    /// What was seen of the flank's straightness, in words.
    pub fn straightness_says(&self) -> String {
        let um = |length: Length| {
            format!("{} µm on diameter", figure(length.get::<meter>().abs() * 1e6, 2))
        };
        match (self.bow, self.least_bow) {
            (FlankBow::NotSeen, Some(least)) => {
                format!("no bend seen; one under {} would not show", um(least))
            }
            (FlankBow::LargeInTheMiddle | FlankBow::SmallInTheMiddle, Some(least)) => {
                format!(
                    "the flank is bent: {} by {} (seen from {})",
                    self.bow,
                    um(self.bow_on_diameter),
                    um(least)
                )
            }
            _ => "three readings without an uncertainty can't show a bend".into(),
        }
    }

    /// The steps, recomputed; the last one's result is the half angle in degrees.
    pub fn working(&self) -> Working {
        let line = Line::of(&self.positions, &self.diameters);
        let [z, d] = line.mean;
        let n = self.positions.len();
        let alpha = (line.slope / 2.0).atan().abs();
        let u = alpha.cos().powi(2) * self.u_reading.get::<meter>() / (2.0 * line.spread.sqrt());
        Working {
            steps: vec![
                step(
                    "slope",
                    "Σ (z − z̄)(d − d̄) / Σ (z − z̄)²",
                    format!(
                        "{n} readings about z̄ {} mm, d̄ {} mm",
                        figure(z * 1e3, 5),
                        figure(d * 1e3, 5)
                    ),
                    (line.slope, ""),
                    LEAST_SQUARES,
                ),
                step(
                    "s",
                    "√(Σ r² / (n − 2))",
                    format!("{n} readings"),
                    (line.scatter * 1e6, "µm"),
                    LEAST_SQUARES,
                ),
                step(
                    "u(α)",
                    "cos² α u / (2 √Σ (z − z̄)²)",
                    format!(
                        "cos² α · {} µm / (2 · {} mm)",
                        figure(self.u_reading.get::<meter>() * 1e6, 4),
                        figure(line.spread.sqrt() * 1e3, 4)
                    ),
                    (u.to_degrees(), "°"),
                    GUM,
                ),
                step(
                    "α",
                    "arctan (|slope| / 2)",
                    format!("arctan ({} / 2)", figure(line.slope.abs(), 9)),
                    (Angle::new::<radian>(alpha).get::<degree>(), "°"),
                    LEAST_SQUARES,
                ),
            ],
        }
    }
}
