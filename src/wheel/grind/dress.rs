//! Dressing: lead, overlap, and the thread that the diamond leaves.

use super::GRINDING;
use crate::error::{Error, ErrorKind};
use crate::units::{
    AngularVelocity, Length, Velocity, below, figure, meter, meter_per_second, micrometer,
    millimeter_per_second, positive, positive_length, revolution_per_minute, revolution_per_second,
    shown_mm,
};
use crate::working::{Step, Working};

/// How the dresser travels.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum DressFeed {
    /// So far in a turn of the wheel.
    Lead(Length),
    /// At this speed.
    Traverse(Velocity),
    /// So that every point is passed so many times.
    Overlap(f64),
}

/// A dressing pass along the wheel's face.
///
/// `s = v / n` is the lead in a turn, `U_d = b_d / s` the overlap with the width `b_d` of the dresser. A
/// diamond of tip radius `r` in a depth `a` is `b_d = 2 √(2 r a − a²)` wide, and leaves a thread
/// `s² / (8 r)` high, exactly `r − √(r² − s² / 4)`; the mean deviation of that parabola is `4 / (9 √3)` of
/// its height. It is the thread on the wheel, not the roughness of the work.
///
/// # Errors
///
/// [`ErrorKind::OutOfRange`] or [`ErrorKind::NotFinite`] for values not above zero, a depth not below the tip's
/// radius, and a lead not below twice that radius; [`ErrorKind::Missing`] for an
/// overlap without the dresser's width or its tip and depth.
///
/// # Source
///
/// Geometry.
///
/// # Example
///
/// A dresser 0.8 mm wide at 0.12 mm a turn passes every point 6.7 times.
///
/// ```
/// use hubwright::units::{AngularVelocity, Length, micrometer, millimeter, revolution_per_minute};
/// use hubwright::wheel::{Dress, DressFeed};
///
/// let mm = Length::new::<millimeter>;
/// let speed = AngularVelocity::new::<revolution_per_minute>(2900.0);
/// let found = Dress::new(speed, DressFeed::Lead(mm(0.12)))
///     .with_width(mm(0.8))
///     .with_tip_radius(mm(0.25))
///     .solve()?;
/// assert!((found.overlap.expect("the width is given") - 6.667).abs() < 1e-3);
/// assert!((found.thread_height.expect("the tip is given").get::<micrometer>() - 7.2).abs() < 1e-9);
/// # Ok::<(), hubwright::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Dress {
    /// Rotational speed of the wheel while it is dressed.
    pub speed: AngularVelocity,
    /// How the dresser travels.
    pub feed: DressFeed,
    /// Width of the dresser where it cuts.
    pub width: Option<Length>,
    /// Radius of the diamond's tip.
    pub tip_radius: Option<Length>,
    /// Depth of dressing.
    pub depth: Option<Length>,
}

/// What [`Dress::solve`] found.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct DressFound {
    /// What was asked.
    pub dress: Dress,
    /// Travel in a turn of the wheel.
    pub lead: Length,
    /// Speed of the dresser along the face.
    pub traverse: Velocity,
    /// Width of the dresser; `None` while it is not given and can't be had from tip and depth.
    pub width: Option<Length>,
    /// How many times each point is passed.
    pub overlap: Option<f64>,
    /// Whether it is below 1, so that part of the face is never touched.
    pub skips: bool,
    /// Height of the thread left on the wheel, as a parabola.
    pub thread_height: Option<Length>,
    /// The same of the round tip.
    pub exact_thread_height: Option<Length>,
    /// Mean deviation of the parabola.
    pub thread_mean: Option<Length>,
}

impl Dress {
    /// A pass at a speed of the wheel.
    pub fn new(speed: AngularVelocity, feed: DressFeed) -> Self {
        Self { speed, feed, width: None, tip_radius: None, depth: None }
    }

    /// With the width of the dresser.
    #[must_use]
    pub fn with_width(self, width: Length) -> Self {
        Self { width: Some(width), ..self }
    }

    /// With the radius of the diamond's tip.
    #[must_use]
    pub fn with_tip_radius(self, radius: Length) -> Self {
        Self { tip_radius: Some(radius), ..self }
    }

    /// With the depth, which gives the width of a round tip.
    #[must_use]
    pub fn with_depth(self, depth: Length) -> Self {
        Self { depth: Some(depth), ..self }
    }

    fn width(&self) -> Result<Option<f64>, Error> {
        if let Some(width) = self.width {
            return positive_length("dresser_width", width).map(Some);
        }
        let (Some(radius), Some(depth)) = (self.tip_radius, self.depth) else { return Ok(None) };
        let (r, a) = (radius.get::<meter>(), depth.get::<meter>());
        Ok(Some(2.0 * (2.0 * r * a - a * a).sqrt()))
    }

    /// Lead, overlap and thread.
    ///
    /// # Errors
    ///
    /// As described on the type.
    pub fn solve(self) -> Result<DressFound, Error> {
        positive("speed", self.speed.get::<revolution_per_minute>(), "rpm", "2850 rpm")?;
        let n = self.speed.get::<revolution_per_second>();
        if let Some(radius) = self.tip_radius {
            positive_length("tip_radius", radius)?;
        }
        if let Some(depth) = self.depth {
            let most = self.tip_radius.map_or(f64::MAX, shown_mm);
            below("depth", shown_mm(depth), most, "mm", "0.02 mm")?;
        }
        let width = self.width()?;
        let lead = match self.feed {
            DressFeed::Lead(lead) => positive_length("lead", lead)?,
            DressFeed::Traverse(speed) => {
                positive("traverse", speed.get::<millimeter_per_second>(), "mm/s", "6 mm/s")?;
                speed.get::<meter_per_second>() / n
            }
            DressFeed::Overlap(overlap) => {
                positive("overlap", overlap, "", "4")?;
                let Some(width) = width else {
                    return Err(ErrorKind::Missing {
                        argument: "dresser_width".into(),
                        why: "an overlap is the dresser's width over its lead".into(),
                        hint: "give it, or the tip's radius and the depth".into(),
                    }
                    .into());
                };
                width / overlap
            }
        };
        let heights = self.tip_radius.map(|radius| radius.get::<meter>());
        if let Some(r) = heights {
            // Beyond it two passes of the tip no longer meet.
            below("lead", lead * 1e3, 2.0 * r * 1e3, "mm", "0.12 mm")?;
        }
        let overlap = width.map(|width| width / lead);
        let parabola = heights.map(|r| lead * lead / (8.0 * r));
        Ok(DressFound {
            dress: self,
            lead: Length::new::<meter>(lead),
            traverse: Velocity::new::<meter_per_second>(lead * n),
            width: width.map(Length::new::<meter>),
            overlap,
            skips: overlap.is_some_and(|overlap| overlap < 1.0),
            thread_height: parabola.map(Length::new::<meter>),
            exact_thread_height: heights
                .map(|r| Length::new::<meter>(r - (r * r - lead * lead / 4.0).sqrt())),
            thread_mean: parabola
                .map(|height| Length::new::<meter>(height * 4.0 / (9.0 * 3.0_f64.sqrt()))),
        })
    }
}

impl DressFound {
    /// The steps, recomputed; the last one's result is `overlap`, or `traverse` in mm/s without a width.
    pub fn working(&self) -> Working {
        let Ok(again) = self.dress.solve() else { return Working::default() };
        let mm = |length: Length| figure(length.get::<meter>() * 1e3, 5);
        let lead = mm(again.lead);
        let step = |symbol, relation, numbers, result, unit| Step {
            symbol,
            relation,
            numbers,
            result,
            unit,
            source: GRINDING,
        };
        let mut steps = Vec::new();
        if let (Some(height), Some(radius)) = (again.thread_height, again.dress.tip_radius) {
            let numbers = format!("{lead}² / (8 · {} mm)", mm(radius));
            steps.push(step("thread", "s² / (8 r)", numbers, height.get::<micrometer>(), "µm"));
        }
        let turns = figure(again.dress.speed.get::<revolution_per_minute>(), 3);
        let traverse = again.traverse.get::<millimeter_per_second>();
        steps.push(step("v", "s n / 60", format!("{lead} mm · {turns} / 60"), traverse, "mm/s"));
        if let (Some(width), Some(overlap)) = (again.width, again.overlap) {
            let numbers = format!("{} mm / {lead} mm", mm(width));
            steps.push(step("U d", "b d / s", numbers, overlap, ""));
        }
        Working { steps }
    }
}
