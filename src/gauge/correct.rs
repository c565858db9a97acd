//! How far and to which side the slide has to go.

use std::fmt;

use super::check::{angle_uncertainty, ruled_out, step, uncertainty};
use super::cone::{MeasuredCone, mm, um};
use super::planes::TwoDiameters;
use super::setting::{Along, angle_of_rise, arc_minutes, per_rise};
use super::{GEOMETRY, GUM};
use crate::error::Error;
use crate::joint::Taper;
use crate::joint::taper::a_taper;
use crate::solid::chance::coverage;
use crate::units::{
    Angle, Length, degree, figure, meter, micrometer, positive_length, radian, words,
};
use crate::working::Working;

words! {
    /// What is being turned.
    TaperPart, "part" {
        /// A taper bore.
        Hub = "hub" ["bore", "socket"];
        /// A taper nose or plug.
        Spindle = "spindle" ["nose", "plug"];
    }
}

words! {
    /// To which side the slide has to move.
    Toward, "direction" {
        /// The slide's angle has to become smaller.
        Smaller = "smaller" ["smaller angle"];
        /// The slide's angle has to become larger.
        Larger = "larger" ["larger angle"];
        /// The error is no more than its uncertainty: there is nothing to go by.
        Stay = "stay" [];
    }
}

/// The half angle that a slide cuts, the one wanted, and what is known of both.
///
/// The error is `have − want`. Over a length `L` it is `L (tan have − tan want)` on one side; a
/// slide is moved by `pivot radius · error` where it is tapped. Errors no greater than their
/// expanded uncertainty are no reason to move anything.
///
/// # Errors
///
/// [`OutOfRange`](crate::ErrorKind::OutOfRange) or [`NotFinite`](crate::ErrorKind::NotFinite) for angles of no taper and lengths that are not
/// above zero.
///
/// # Source
///
/// Geometry; uncertainties add up by JCGM 100.
///
/// # Example
///
/// A bore that should be 1:5 grows by 7.006 mm on diameter over 35 mm: tap 15 µm at 180 mm.
///
/// ```
/// use hubwright::gauge::{SlideCorrection, Toward};
/// use hubwright::joint::taper;
/// use hubwright::units::{Length, micrometer, millimeter};
///
/// let mm = Length::new::<millimeter>;
/// let exact = Length::default();
/// let found = SlideCorrection::from_diameters([mm(30.0), mm(37.006)], mm(35.0), [exact; 2], &taper("1:5")?)?
///     .with_pivot_radius(mm(180.0))
///     .solve()?;
/// assert_eq!(found.toward, Toward::Smaller);
/// let tap = found.tap.expect("the pivot radius is given");
/// assert!((tap.get::<micrometer>() - 15.276).abs() < 1e-3);
/// # Ok::<(), hubwright::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct SlideCorrection {
    /// Half angle that was cut.
    pub have: Angle,
    /// Its standard uncertainty.
    pub u_have: Angle,
    /// Half angle wanted.
    pub want: Angle,
    /// Its standard uncertainty; zero for a taper that is stated.
    pub u_want: Angle,
    /// Degrees of freedom of the two together.
    pub dof: f64,
    /// Length over which the error is told.
    pub length: Length,
    /// From the slide's pivot to where it is tapped.
    pub pivot_radius: Option<Length>,
    /// What is being turned, for the words.
    pub part: Option<TaperPart>,
}

/// What [`SlideCorrection::solve`] found.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct SlideCorrectionFound {
    /// What was asked.
    pub correction: SlideCorrection,
    /// Half angle cut less half angle wanted.
    pub error: Angle,
    /// Its standard uncertainty.
    pub u_error: Angle,
    /// Its expanded uncertainty, 95 %.
    pub expanded_error: Angle,
    /// The error as a rise on one side over the length; below zero where the angle is too small.
    pub per_side: Length,
    /// Its expanded uncertainty.
    pub expanded_per_side: Length,
    /// To which side to move the slide.
    pub toward: Toward,
    /// How far to move it at the pivot radius.
    pub tap: Option<Length>,
    /// Its expanded uncertainty.
    pub expanded_tap: Option<Length>,
}

impl SlideCorrection {
    /// From two half angles in radians.
    fn of(have: f64, u_have: f64, want: f64, u_want: f64, length: Length) -> Self {
        let angle = Angle::new::<radian>;
        Self {
            have: angle(have),
            u_have: angle(u_have),
            want: angle(want),
            u_want: angle(u_want),
            dof: f64::INFINITY,
            length,
            pivot_radius: None,
            part: None,
        }
    }

    /// From the rise that an indicator shows over a travel and the rise wanted.
    ///
    /// `u_rise` is the standard uncertainty of the difference of the two.
    ///
    /// # Errors
    ///
    /// As for [`SlideCorrection`], and for a rise that is no less than its travel along the flank.
    pub fn from_rises(
        [read, wanted]: [Length; 2],
        travel: Length,
        along: Along,
        u_rise: Length,
    ) -> Result<Self, Error> {
        let metres = positive_length("travel", travel)?;
        for (argument, rise) in [("rise_read", read), ("rise_wanted", wanted)] {
            positive_length(argument, rise)?;
            if along == Along::Flank && rise >= travel {
                let hint = "a rise along the flank is less than the travel";
                return Err(ruled_out(argument, rise, "not below the travel,", travel, hint));
            }
        }
        uncertainty("u_rise", u_rise)?;
        let angle = |rise: Length| angle_of_rise(rise.get::<meter>(), metres, along);
        let (have, want) = (angle(read), angle(wanted));
        let u_have = per_rise(have, metres, along) * u_rise.get::<meter>();
        Ok(Self::of(have, u_have, want, 0.0, travel))
    }

    /// From two diameters of what was cut, small end first, and the distance of their planes;
    /// `u` are standard uncertainties of a diameter and of the distance.
    ///
    /// # Errors
    ///
    /// As for [`TwoDiameters`].
    pub fn from_diameters(
        diameters: [Length; 2],
        apart: Length,
        u: [Length; 2],
        want: &Taper,
    ) -> Result<Self, Error> {
        let found = TwoDiameters::new(diameters, apart).with_uncertainties(u[0], u[1]).solve()?;
        Ok(Self::from_cone(&found.cone, want, apart))
    }

    /// From a cone as measured and the taper wanted, told over a length.
    pub fn from_cone(have: &MeasuredCone, want: &Taper, length: Length) -> Self {
        let rad = |angle: Angle| angle.get::<radian>();
        let found = Self::of(
            rad(have.half_angle),
            rad(have.u_half_angle),
            rad(want.half_angle),
            0.0,
            length,
        );
        Self { dof: have.dof, ..found }
    }

    /// From two cones as measured: the hub, say, and the spindle that it has to fit.
    pub fn from_cones(have: &MeasuredCone, want: &MeasuredCone, length: Length) -> Self {
        let rad = |angle: Angle| angle.get::<radian>();
        let (u, v) = (rad(have.u_half_angle), rad(want.u_half_angle));
        let found = Self::of(rad(have.half_angle), u, rad(want.half_angle), v, length);
        // Welch and Satterthwaite.
        let weak = u.powi(4) / have.dof + v.powi(4) / want.dof;
        let dof = if weak > 0.0 { (u * u + v * v).powi(2) / weak } else { f64::INFINITY };
        Self { dof, ..found }
    }

    /// With another length over which the error is told, such as that of the seat.
    #[must_use]
    pub fn with_length(mut self, length: Length) -> Self {
        self.length = length;
        self
    }

    /// With the distance from the slide's pivot to where it is tapped and indicated.
    #[must_use]
    pub fn with_pivot_radius(mut self, radius: Length) -> Self {
        self.pivot_radius = Some(radius);
        self
    }

    /// With what is being turned.
    #[must_use]
    pub fn with_part(mut self, part: TaperPart) -> Self {
        self.part = Some(part);
        self
    }

    /// The correction.
    ///
    /// # Errors
    ///
    /// See [`SlideCorrection`].
    pub fn solve(self) -> Result<SlideCorrectionFound, Error> {
        let [have, want] = [self.have, self.want].map(|angle| angle.get::<radian>());
        a_taper(have)?;
        a_taper(want)?;
        angle_uncertainty("u_have", self.u_have)?;
        angle_uncertainty("u_want", self.u_want)?;
        positive_length("length", self.length)?;
        if let Some(radius) = self.pivot_radius {
            positive_length("pivot_radius", radius)?;
        }
        let (error, u_error) = self.error();
        let expanded = coverage(2.0, self.dof) * u_error;
        let toward = match error.abs() <= expanded {
            true => Toward::Stay,
            false if error > 0.0 => Toward::Smaller,
            false => Toward::Larger,
        };
        let length = self.length.get::<meter>();
        let (angle, metres) = (Angle::new::<radian>, Length::new::<meter>);
        Ok(SlideCorrectionFound {
            correction: self,
            error: angle(error),
            u_error: angle(u_error),
            expanded_error: angle(expanded),
            per_side: metres(length * (have.tan() - want.tan())),
            expanded_per_side: metres(length * expanded / want.cos().powi(2)),
            toward,
            tap: self.pivot_radius.map(|radius| radius * error.abs()),
            expanded_tap: self.pivot_radius.map(|radius| radius * expanded),
        })
    }

    /// The error and its standard uncertainty, in radians.
    fn error(&self) -> (f64, f64) {
        let [u, v] = [self.u_have, self.u_want].map(|angle| angle.get::<radian>());
        ((self.have - self.want).get::<radian>(), u.hypot(v))
    }
}

impl SlideCorrectionFound {
    /// What to do, in a sentence.
    pub fn advice(&self) -> String {
        self.to_string()
    }

    /// The steps, recomputed; the last one's result is the error in degrees.
    pub fn working(&self) -> Working {
        let of = &self.correction;
        let (error, u) = of.error();
        let degrees = |angle: Angle| figure(angle.get::<degree>(), 6);
        let mut steps = vec![step(
            "u",
            "√(u² + u²)",
            format!("√({}² + {}²)", degrees(of.u_have), degrees(of.u_want)),
            (u.to_degrees(), "°"),
            GUM,
        )];
        if let Some(radius) = of.pivot_radius {
            steps.push(step(
                "tap",
                "pivot radius · |error|",
                format!("{} · {}", mm(radius), figure(error.abs(), 9)),
                ((radius * error.abs()).get::<micrometer>(), "µm"),
                GEOMETRY,
            ));
        }
        steps.push(step(
            "error",
            "α have − α want",
            format!("{}° − {}°", degrees(of.have), degrees(of.want)),
            (Angle::new::<radian>(error).get::<degree>(), "°"),
            GEOMETRY,
        ));
        Working { steps }
    }
}

impl fmt::Display for SlideCorrectionFound {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let of = &self.correction;
        let large = self.error > Angle::default();
        let (who, how) = match (of.part, large) {
            (Some(TaperPart::Hub), true) => ("hub", "too open"),
            (Some(TaperPart::Hub), false) => ("hub", "too close"),
            (Some(TaperPart::Spindle), true) => ("spindle", "too steep"),
            (Some(TaperPart::Spindle), false) => ("spindle", "too slender"),
            (None, true) => ("half angle", "too large"),
            (None, false) => ("half angle", "too small"),
        };
        let um_bare = |length: Length| figure(length.get::<micrometer>().abs(), 1);
        let by = format!(
            "{} per side over {} (± {})",
            um(self.per_side.abs()),
            mm(of.length),
            um_bare(self.expanded_per_side)
        );
        if self.toward == Toward::Stay {
            return write!(
                f,
                "{who} {how} by {by}: no more than the uncertainty of {}, so leave the slide or measure better",
                arc_minutes(self.expanded_error)
            );
        }
        write!(f, "{who} {how} by {by}; move the slide toward the {} angle", self.toward)?;
        match (self.tap, self.expanded_tap, of.pivot_radius) {
            (Some(tap), Some(expanded), Some(radius)) => {
                write!(
                    f,
                    "; tap {} (± {}) at {} from the pivot",
                    um(tap),
                    um_bare(expanded),
                    mm(radius)
                )
            }
            _ => write!(f, " by {}", arc_minutes(self.error.abs())),
        }
    }
}
