//! How far a hub stands off its shoulder by hand, and what is left when it is drawn up.

use super::check::{root_sum, step, uncertainty};
use super::{GEOMETRY, GUM};
use crate::error::Error;
use crate::joint::Taper;
use crate::units::{Exact, Length, figure, finite, meter, millimeter, positive_length};
use crate::working::Working;

/// A taper hub on a spindle with a shoulder behind its large end.
///
/// With `C` the taper on diameter, the spindle's diameter `D` where its cone meets the plane of
/// the shoulder and the bore's diameter `d` at the hub's face, the hub stands off by
/// `(D − d) / C` when it touches by hand. Drawn up for an interference `δ` on diameter it
/// travels `δ / C`. What is left must be more than nothing, or the face seats and the taper
/// doesn't.
///
/// Both cones are taken for straight and of one angle; see
/// [`SlideCorrection`](super::SlideCorrection) for what is left of that.
///
/// # Errors
///
/// [`OutOfRange`](crate::ErrorKind::OutOfRange) or [`NotFinite`](crate::ErrorKind::NotFinite) for lengths that make no sense. A hub that touches
/// its shoulder is no error: see [`StandOffFound::gap`].
///
/// # Source
///
/// Geometry; uncertainties add up by JCGM 100.
///
/// # Example
///
/// A 1:4 bore that is 0.02 mm smaller than the spindle stands off by 0.08 mm.
///
/// ```
/// use hubwright::gauge::StandOff;
/// use hubwright::joint::taper;
/// use hubwright::units::{Length, micrometer, millimeter};
///
/// let mm = Length::new::<millimeter>;
/// let found = StandOff::new(taper("1:4")?, mm(40.0), mm(39.98))
///     .with_interference(Length::new::<micrometer>(12.5))
///     .solve()?;
/// assert!((found.stand_off.get::<millimeter>() - 0.08).abs() < 1e-9);
/// assert!((found.draw_up.get::<millimeter>() - 0.05).abs() < 1e-9);
/// assert!((found.gap.get::<millimeter>() - 0.03).abs() < 1e-9);
/// # Ok::<(), hubwright::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct StandOff {
    /// The taper of both.
    pub taper: Taper,
    /// Diameter of the spindle's cone in the plane of its shoulder.
    pub spindle: Length,
    /// Diameter of the hub's bore in the plane of its face.
    pub hub: Length,
    /// Interference on diameter to draw it up to; zero by hand.
    pub interference: Length,
    /// Gap to leave between face and shoulder when drawn up, beyond the uncertainty.
    pub least_gap: Length,
    /// Standard uncertainties of the diameters of spindle and hub.
    pub u: [Length; 2],
}

/// What [`StandOff::solve`] found.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct StandOffFound {
    /// What was asked.
    pub seat: StandOff,
    /// Gap between face and shoulder by hand; below zero the face meets the shoulder first.
    pub stand_off: Length,
    /// How far the hub travels as it is drawn up.
    pub draw_up: Length,
    /// Gap that is left then.
    pub gap: Length,
    /// Expanded uncertainty of stand-off and gap, 95 %.
    pub expanded: Length,
    /// Stand-off to make by hand, so that the least gap is left for certain.
    pub stand_off_to_make: Length,
    /// Diameter of the bore at its face that makes it.
    pub bore_to_make: Length,
    /// Whether the gap that is left is the least one or more, uncertainty taken off.
    pub clears: bool,
}

impl StandOff {
    /// A hub put on by hand.
    pub fn new(taper: Taper, spindle: Length, hub: Length) -> Self {
        let none = Length::default();
        Self { taper, spindle, hub, interference: none, least_gap: none, u: [none; 2] }
    }

    /// Drawn up to an interference on diameter.
    #[must_use]
    pub fn with_interference(mut self, interference: Length) -> Self {
        self.interference = interference;
        self
    }

    /// With a gap to leave in any case.
    #[must_use]
    pub fn with_least_gap(mut self, gap: Length) -> Self {
        self.least_gap = gap;
        self
    }

    /// With standard uncertainties of the diameters.
    #[must_use]
    pub fn with_uncertainties(mut self, spindle: Length, hub: Length) -> Self {
        self.u = [spindle, hub];
        self
    }

    /// Stand-off, draw-up and gap.
    ///
    /// # Errors
    ///
    /// See [`StandOff`].
    pub fn solve(self) -> Result<StandOffFound, Error> {
        positive_length("spindle_diameter", self.spindle)?;
        positive_length("hub_diameter", self.hub)?;
        uncertainty("interference", self.interference)?;
        uncertainty("least_gap", self.least_gap)?;
        uncertainty("u_spindle", self.u[0])?;
        uncertainty("u_hub", self.u[1])?;
        finite("taper", self.taper.per_side, "1:5")?;
        let [stand_off, draw_up, expanded] = self.lengths();
        let gap = stand_off - draw_up;
        let sure = (gap - expanded).exact();
        let to_make = draw_up + self.least_gap + expanded;
        Ok(StandOffFound {
            seat: self,
            stand_off,
            draw_up,
            gap,
            expanded,
            stand_off_to_make: to_make,
            bore_to_make: self.spindle - self.taper.on_diameter() * to_make,
            clears: sure > 0.0 && sure >= self.least_gap.exact(),
        })
    }

    fn lengths(&self) -> [Length; 3] {
        let taper = self.taper.on_diameter();
        let u = root_sum(self.u.map(|u| u.get::<meter>()));
        let expanded = Length::new::<meter>(2.0 * u / taper);
        [(self.spindle - self.hub) / taper, self.interference / taper, expanded]
    }
}

impl StandOffFound {
    /// The steps, recomputed; the last one's result is `gap` in mm.
    pub fn working(&self) -> Working {
        let of = &self.seat;
        let [stand_off, draw_up, expanded] = of.lengths();
        let mm = |length: Length| figure(length.get::<millimeter>(), 6);
        let taper = figure(of.taper.on_diameter(), 9);
        let result = |length: Length| (length.get::<millimeter>(), "mm");
        Working {
            steps: vec![
                step(
                    "stand-off",
                    "(D − d) / C",
                    format!("({} − {}) / {taper}", mm(of.spindle), mm(of.hub)),
                    result(stand_off),
                    GEOMETRY,
                ),
                step(
                    "draw-up",
                    "δ / C",
                    format!("{} / {taper}", mm(of.interference)),
                    result(draw_up),
                    GEOMETRY,
                ),
                step(
                    "U",
                    "2 √(u² + u²) / C",
                    format!("2 √({}² + {}²) / {taper}", mm(of.u[0]), mm(of.u[1])),
                    result(expanded),
                    GUM,
                ),
                step(
                    "gap",
                    "stand-off − draw-up",
                    format!("{} − {}", mm(stand_off), mm(draw_up)),
                    result(stand_off - draw_up),
                    GEOMETRY,
                ),
            ],
        }
    }
}
