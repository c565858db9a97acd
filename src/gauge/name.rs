//! Which standard tapers a measured cone can be.

use super::check::angle_uncertainty;
use super::cone::MeasuredCone;
use super::setting::arc_minutes;
use crate::error::Error;
use crate::joint::Taper;
use crate::solid::chance::coverage;
use crate::tables::tapers::STANDARD;
use crate::tables::tapers::machine::{MACHINE, Machine};
use crate::units::{
    Angle, Exact, Length, degree, figure, inch, millimeter, positive_length, radian, words,
};

/// A taper is taken for one when it is no further off than so many standard uncertainties
/// beyond what it may be made wrong by: 99.7 % of a normal distribution.
const SURE: f64 = 3.0;
/// How far past the ends of a numbered taper a part of it may be measured, as a share of the
/// end's diameter. Common practice, no source.
const PAST_END: f64 = 0.02;
/// The least diameter that a gauge diameter alone speaks for, as a share of it. Common
/// practice, no source.
const OF_GAUGE: f64 = 0.4;
/// Half angles nearer than this are one taper under two names, in rad.
const SAME: f64 = 1e-7;

words! {
    /// What naming a taper came to.
    NamingOutcome, "outcome" {
        /// One taper fits, maybe under several names.
        One = "one taper" [];
        /// Several tapers fit, or one only if it is made worse than allowed: what was measured
        /// can't tell.
        CantTell = "can't tell" [];
        /// None fits: copy it.
        None = "none fits: copy it" [];
    }
}

/// A measured cone that wants a name.
///
/// A standard taper fits when its half angle is no further from the measured one than
/// `made_within + 3 u` (3 by Student's distribution where the uncertainty was found from few
/// readings). Numbered tapers must fit by diameter too. One taper is named only where it is no
/// further off than `made_within`; beyond that it may as well be none.
///
/// # Errors
///
/// [`OutOfRange`](crate::ErrorKind::OutOfRange) or [`NotFinite`](crate::ErrorKind::NotFinite) for an allowance below zero or a gauge diameter that
/// is not above it.
///
/// # Source
///
/// The tables of [`tapers`](crate::tables::tapers); what share of a numbered taper counts as
/// its size is common practice, no source.
///
/// # Example
///
/// 31 and 38.5 mm over 30 mm, each within 2 µm: 3 in/ft.
///
/// ```
/// use hubwright::gauge::{NameTaper, NamingOutcome, TwoDiameters};
/// use hubwright::units::{Angle, Length, degree, micrometer, millimeter};
///
/// let (mm, um) = (Length::new::<millimeter>, Length::new::<micrometer>);
/// let nose = TwoDiameters::new([mm(31.0), mm(38.5)], mm(30.0))
///     .with_uncertainties(um(2.0), um(5.0))
///     .solve()?;
/// let naming = NameTaper::new(nose.cone, Angle::new::<degree>(0.01)).solve()?;
/// assert_eq!(naming.outcome, NamingOutcome::One);
/// assert!(naming.candidates.iter().any(|candidate| candidate.name() == "3 in/ft"));
/// # Ok::<(), hubwright::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct NameTaper {
    /// The cone as measured.
    pub cone: MeasuredCone,
    /// How far the half angle of a standard taper may be made wrong.
    pub made_within: Angle,
    /// Diameter that a gauge for it has at its plane, when one is known.
    pub gauge_diameter: Option<Length>,
}

/// A standard taper that the cone can be.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Candidate {
    name: &'static str,
    /// The taper.
    pub taper: Taper,
    /// Measured half angle less that of the taper.
    pub off: Angle,
    /// Diameter at the gauge plane, where the taper is numbered.
    pub gauge_diameter: Option<Length>,
    /// Position of the gauge plane, in the positions of the readings.
    pub gauge_plane: Option<Length>,
}

/// What [`NameTaper::solve`] found.
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub struct Naming {
    /// What was asked.
    pub asked: NameTaper,
    /// One, not to be told, or none.
    pub outcome: NamingOutcome,
    /// The tapers that fit, nearest first.
    pub candidates: Vec<Candidate>,
    /// The nearest of all, whether it fits or not.
    pub nearest: Candidate,
    /// How far off a taper may be to fit.
    pub allowed: Angle,
    /// Position at which the cone has the gauge diameter asked for.
    pub gauge_plane: Option<Length>,
    /// Its standard uncertainty.
    pub u_gauge_plane: Option<Length>,
}

impl Candidate {
    fn of(name: &'static str, taper: Taper, cone: &MeasuredCone) -> Self {
        let gauge_diameter = taper.machine.map(|machine| Length::new::<inch>(machine.large));
        Self {
            name,
            taper,
            off: cone.half_angle - taper.half_angle,
            gauge_diameter,
            gauge_plane: gauge_diameter.map(|diameter| cone.position_of(diameter)),
        }
    }

    /// Its name, such as `1:5` or `Morse 3`.
    pub fn name(&self) -> String {
        match self.taper.machine {
            Some(machine) => format!("{} {}", machine.series, machine.number),
            None => self.name.to_owned(),
        }
    }
}

/// Whether what was measured lies on a numbered taper of this size.
fn has_size(machine: &Machine, cone: &MeasuredCone) -> bool {
    let inches = |length: Length| length.get::<inch>();
    let ends = cone.span.map(|position| inches(cone.diameter_at(position)));
    let [small, large] = [ends[0].min(ends[1]), ends[0].max(ends[1])];
    let least = machine.small.map_or(OF_GAUGE * machine.large, |small| small * (1.0 - PAST_END));
    small >= least && large <= machine.large * (1.0 + PAST_END)
}

/// Whether some tapers are one under several names.
fn one_angle(candidates: &[Candidate]) -> bool {
    let angles = || candidates.iter().map(|candidate| candidate.taper.half_angle.get::<radian>());
    angles().fold(f64::NEG_INFINITY, f64::max) - angles().fold(f64::INFINITY, f64::min) <= SAME
}

impl NameTaper {
    /// Naming a cone; `made_within` is how far the half angle of a standard taper may be made
    /// wrong.
    pub fn new(cone: MeasuredCone, made_within: Angle) -> Self {
        Self { cone, made_within, gauge_diameter: None }
    }

    /// With the diameter of a gauge plane that is looked for.
    #[must_use]
    pub fn with_gauge_diameter(mut self, diameter: Length) -> Self {
        self.gauge_diameter = Some(diameter);
        self
    }

    /// The tapers that fit.
    ///
    /// # Errors
    ///
    /// See [`NameTaper`].
    pub fn solve(self) -> Result<Naming, Error> {
        angle_uncertainty("made_within", self.made_within)?;
        if let Some(diameter) = self.gauge_diameter {
            positive_length("gauge_diameter", diameter)?;
        }
        let cone = &self.cone;
        let sure = coverage(SURE, cone.dof);
        let allowed = self.made_within + sure * cone.u_half_angle;
        let plain = STANDARD
            .iter()
            .map(|standard| Candidate::of(standard.name, Taper::from(standard), cone));
        let numbered = MACHINE
            .iter()
            .filter(|machine| has_size(machine, cone))
            .map(|machine| Candidate::of("", Taper::from(machine), cone));
        // Numbered ones first: they fit by size as well, and the order stays where two are as near.
        let mut all: Vec<_> = numbered.chain(plain).collect();
        all.sort_by(|a, b| a.off.abs().exact().total_cmp(&b.off.abs().exact()));
        let fits = |candidate: &&Candidate| candidate.off.abs().exact() <= allowed.exact();
        let candidates: Vec<_> = all.iter().filter(fits).copied().collect();
        let first = || Candidate::of(STANDARD[0].name, Taper::from(&STANDARD[0]), cone);
        let nearest = all.first().copied().unwrap_or_else(first);
        let outcome = match candidates.len() {
            0 => NamingOutcome::None,
            // Further off than it may be made, it could be none as well.
            _ if one_angle(&candidates)
                && nearest.off.abs().exact() <= self.made_within.exact() =>
            {
                NamingOutcome::One
            }
            _ => NamingOutcome::CantTell,
        };
        let gauge_plane = self.gauge_diameter.map(|diameter| cone.position_of(diameter));
        let u_gauge_plane =
            gauge_plane.map(|plane| cone.u_diameter_at(plane) / (2.0 * cone.per_side()));
        Ok(Naming {
            asked: self,
            outcome,
            candidates,
            nearest,
            allowed,
            gauge_plane,
            u_gauge_plane,
        })
    }
}

impl Naming {
    /// What came of it, in words: the names, or the numbers to copy.
    pub fn says(&self) -> String {
        let cone = &self.asked.cone;
        let names: Vec<_> = self.candidates.iter().map(Candidate::name).collect();
        let off = |candidate: &Candidate| {
            format!(
                "{} off, {} allowed",
                arc_minutes(candidate.off.abs()),
                arc_minutes(self.allowed)
            )
        };
        match (self.outcome, self.candidates.first()) {
            (NamingOutcome::One, Some(first)) => {
                format!("it can be {} ({})", names.join(" or "), off(first))
            }
            (NamingOutcome::CantTell, Some(first)) if one_angle(&self.candidates) => format!(
                "it may be {}, or none of the standard ones ({}): measure better, or copy it",
                names.join(" or "),
                off(first)
            ),
            (NamingOutcome::CantTell, Some(_)) => format!(
                "what was measured can't tell between {}: measure better, or copy it",
                names.join(", ")
            ),
            _ => format!(
                "no standard taper fits (the nearest is {}, {}): copy it, half angle {}° ± {}, taper on diameter {} over 1, {} mm on diameter half way along",
                self.nearest.name(),
                off(&self.nearest),
                figure(cone.half_angle.get::<degree>(), 4),
                arc_minutes(cone.expanded_half_angle()),
                figure(2.0 * cone.per_side(), 6),
                figure(cone.diameter.get::<millimeter>(), 4),
            ),
        }
    }
}
