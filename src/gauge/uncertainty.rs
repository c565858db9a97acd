//! How single uncertainties come to one: root sum of squares, degrees of freedom, coverage.

use super::GUM;
use super::check::step;
use crate::error::{Error, ErrorKind};
use crate::solid::chance::coverage;
use crate::units::{Length, figure, meter, micrometer, positive, words, zero_or_more};
use crate::working::Working;

words! {
    /// How an error is spread, and what its size says.
    Spread, "spread" {
        /// Normally; the size is a standard uncertainty.
        Normal = "normal" ["standard", "gaussian"];
        /// Anything within plus or minus the size, as by a scale's resolution.
        Uniform = "uniform" ["rectangular"];
        /// Likelier in the middle, within plus or minus the size.
        Triangular = "triangular" [];
        /// Likelier at plus and minus the size, as of something that swings.
        UShaped = "u-shaped" ["arcsine"];
    }
}

impl Spread {
    /// What a size is divided by to make a standard uncertainty.
    pub fn divisor(self) -> f64 {
        match self {
            Self::Normal => 1.0,
            Self::Uniform => 3.0_f64.sqrt(),
            Self::Triangular => 6.0_f64.sqrt(),
            Self::UShaped => 2.0_f64.sqrt(),
        }
    }
}

/// What one reading does to a result.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Sensitivity {
    /// Which reading.
    pub of: &'static str,
    /// Change of the result for a change of the reading: rad per m for an angle, m per m for
    /// a length.
    pub value: f64,
    /// Standard uncertainty of the reading.
    pub u: Length,
}

impl Sensitivity {
    /// What it adds to the standard uncertainty of the result, in rad or m.
    pub fn share(&self) -> f64 {
        self.value.abs() * self.u.get::<meter>()
    }
}

/// One error that adds to the uncertainty of a length.
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub struct Influence {
    /// What it is.
    pub name: String,
    /// How it is spread.
    pub spread: Spread,
    /// Its size on the result: a standard uncertainty, or a half width.
    pub size: Length,
    /// Degrees of freedom; infinite where it was not found by repeating.
    pub dof: f64,
}

impl Influence {
    /// An error of which the size is known.
    pub fn new(name: impl Into<String>, spread: Spread, size: Length) -> Self {
        Self { name: name.into(), spread, size, dof: f64::INFINITY }
    }

    /// Found from so many repeated readings less one.
    #[must_use]
    pub fn with_dof(mut self, dof: f64) -> Self {
        self.dof = dof;
        self
    }

    /// Its standard uncertainty.
    pub fn standard(&self) -> Length {
        self.size / self.spread.divisor()
    }
}

/// What [`budget`] found.
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub struct Budget {
    /// The errors that went in.
    pub influences: Vec<Influence>,
    /// Combined standard uncertainty.
    pub standard: Length,
    /// Effective degrees of freedom.
    pub dof: f64,
    /// Coverage factor for 95 %: 2 for infinitely many degrees of freedom.
    pub coverage: f64,
    /// Coverage factor times standard uncertainty.
    pub expanded: Length,
}

/// The uncertainty of a length from all that adds to it.
///
/// `u² = Σ uᵢ²` with `uᵢ` the size over 1 (normal), √3 (uniform), √6 (triangular) or √2
/// (u-shaped); degrees of freedom after Welch and Satterthwaite, `u⁴ / Σ (uᵢ⁴ / νᵢ)`; the
/// expanded uncertainty covers 95 % (what 2 u covers of a normal distribution).
///
/// # Errors
///
/// [`ErrorKind::Missing`] for an empty list; [`ErrorKind::OutOfRange`] or
/// [`ErrorKind::NotFinite`] for a size below zero or degrees of freedom that are not above it.
///
/// # Source
///
/// JCGM 100, from memory.
///
/// # Example
///
/// Resolution ±0.5 µm and a gauge with 0.4 µm standard uncertainty: 0.49 µm.
///
/// ```
/// use hubwright::gauge::{Influence, Spread, budget};
/// use hubwright::units::{Length, micrometer};
///
/// let um = Length::new::<micrometer>;
/// let found = budget(&[
///     Influence::new("resolution", Spread::Uniform, um(0.5)),
///     Influence::new("gauge", Spread::Normal, um(0.4)),
/// ])?;
/// assert!((found.standard.get::<micrometer>() - 0.4933).abs() < 1e-4);
/// assert_eq!(found.coverage, 2.0);
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn budget(influences: &[Influence]) -> Result<Budget, Error> {
    if influences.is_empty() {
        return Err(ErrorKind::Missing {
            argument: "influences".into(),
            why: "nothing adds to the uncertainty".into(),
            hint: "give at least one, like the resolution of the instrument".into(),
        }
        .into());
    }
    for influence in influences {
        zero_or_more("size", influence.size.get::<micrometer>(), "um", "0.5 um")?;
        if influence.dof.is_nan() || influence.dof < f64::INFINITY {
            positive("dof", influence.dof, "", "4")?;
        }
    }
    let (standard, dof) = combined(influences);
    let factor = coverage(2.0, dof);
    Ok(Budget {
        influences: influences.to_vec(),
        standard,
        dof,
        coverage: factor,
        expanded: factor * standard,
    })
}

fn combined(influences: &[Influence]) -> (Length, f64) {
    let squares = influences.iter().map(|one| one.standard().get::<meter>().powi(2));
    let u = squares.sum::<f64>().sqrt();
    let weak: f64 =
        influences.iter().map(|one| one.standard().get::<meter>().powi(4) / one.dof).sum();
    let dof = if weak > 0.0 { u.powi(4) / weak } else { f64::INFINITY };
    (Length::new::<meter>(u), dof)
}

impl Budget {
    /// The steps, recomputed; the last one's result is `expanded` in µm.
    pub fn working(&self) -> Working {
        let parts: Vec<_> = self
            .influences
            .iter()
            .map(|one| format!("{}²", figure(one.standard().get::<micrometer>(), 4)))
            .collect();
        let (standard, dof) = combined(&self.influences);
        let factor = coverage(2.0, dof);
        let u = standard.get::<micrometer>();
        let by_dof = if dof.is_finite() { figure(dof, 1) } else { "infinite".into() };
        Working {
            steps: vec![
                step("u", "√Σ uᵢ²", format!("√({})", parts.join(" + ")), (u, "µm"), GUM),
                step(
                    "k",
                    "Student's distribution, 95 %",
                    format!("{by_dof} degrees of freedom"),
                    (factor, ""),
                    GUM,
                ),
                step(
                    "U",
                    "k u",
                    format!("{} · {} µm", figure(factor, 4), figure(u, 4)),
                    ((factor * standard).get::<micrometer>(), "µm"),
                    GUM,
                ),
            ],
        }
    }
}
