//! A keyway: how deep it is by the ways it is measured, and what it takes to cut it.

use super::key::{narrower, outside};
use crate::error::Error;
use crate::tables::laws::{ARITHMETIC, PRACTICE};
use crate::units::{
    Exact, Length, figure, finite, meter, millimeter, positive, positive_length, shown_mm, words,
    zero_or_more,
};
use crate::working::{Step, Working};

words! {
    /// Which part the keyway is cut in.
    CutIn, "part" {
        /// In the bore of a hub.
        Hub = "hub" ["bore"];
        /// In a shaft.
        Shaft = "shaft" ["spindle"];
    }
}

/// Height of the circle over the chord, `d/2 − √(d²/4 − b²/4)`, without the loss of
/// figures that taking two near numbers from each other brings.
pub(crate) fn chord(diameter: Length, width: Length) -> Length {
    let (r, half) = (diameter.get::<meter>() / 2.0, width.get::<meter>() / 2.0);
    Length::new::<meter>(half * half / (r + ((r - half) * (r + half)).sqrt()))
}

/// Height of a circle over its chord: what a slot of some width takes off a shaft, or
/// leaves under the crown of a bore, before its corners are in the metal.
///
/// `y = (d − √(d² − b²)) / 2`.
///
/// # Errors
///
/// [`OutOfRange`](crate::ErrorKind::OutOfRange) for a size that is not above zero or a slot as
/// wide as the circle, [`NotFinite`](crate::ErrorKind::NotFinite) for NaN and infinite ones.
///
/// # Source
///
/// Geometry of the circle.
///
/// # Example
///
/// A 6 mm slot in a 20 mm bore: 0.4606 mm.
///
/// ```
/// use hubwright::joint::chord_height;
/// use hubwright::units::{Length, millimeter};
///
/// let mm = Length::new::<millimeter>;
/// let y = chord_height(mm(20.0), mm(6.0))?;
/// assert!((y.get::<millimeter>() - 0.460_608).abs() < 1e-6);
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn chord_height(diameter: Length, width: Length) -> Result<Length, Error> {
    positive_length("diameter", diameter)?;
    narrower("width", width, "circle", diameter)?;
    Ok(chord(diameter, width))
}

/// A keyway in a hub or shaft, and how it is cut.
///
/// With `y` the chord height and `t` the depth at the middle: in a hub the wall
/// is `t + y` high and the keyway measures `d + t` across the bore; in a shaft
/// it is `t − y` and `d − t`. The depth may be more by the tolerance, never less.
///
/// A flat tool touches a bore first with its two corners and a shaft first at the crown, so
/// that the feed from first touch to depth is `t + y` in a hub and `t` in a shaft.
/// Strokes are the feed by the infeed, rounded up; the last one takes what
/// is left. About 0.02 mm a stroke is what a shaper fed by hand takes (common practice, no source).
/// Strokes that only take out spring are not counted.
///
/// # Errors
///
/// [`OutOfRange`](crate::ErrorKind::OutOfRange) for a figure that is not above zero, a slot as
/// wide as the bore or shaft, a keyway in a shaft so shallow that it has no walls or so deep that it
/// passes the middle; [`NotFinite`](crate::ErrorKind::NotFinite) for NaN and infinite ones.
///
/// # Source
///
/// Geometry of the circle.
///
/// # Example
///
/// A keyway 4 mm wide and 1.8 mm deep in a 22 mm bore: from first touch the tool goes
/// 1.983 mm, 100 strokes of 0.02 mm, two minutes at 50 a minute.
///
/// ```
/// use hubwright::joint::{CutIn, Keyway};
/// use hubwright::units::{Length, millimeter};
///
/// let mm = Length::new::<millimeter>;
/// let found = Keyway::new(CutIn::Hub, mm(22.0), mm(4.0), mm(1.8))
///     .with_infeed(mm(0.02))
///     .with_strokes_per_minute(50.0)
///     .solve()?;
/// assert!((found.feed.get::<millimeter>() - 1.983_346).abs() < 1e-6);
/// assert_eq!((found.strokes, found.minutes), (Some(100), Some(2.0)));
/// # Ok::<(), hubwright::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Keyway {
    /// Which part it is in.
    pub cut_in: CutIn,
    /// Diameter of bore or shaft.
    pub diameter: Length,
    /// Width.
    pub width: Length,
    /// Depth at the middle, from where the circle would be: t1 or t2.
    pub depth: Length,
    /// How much deeper it may be.
    pub depth_tolerance: Option<Length>,
    /// Feed at each stroke.
    pub infeed: Option<Length>,
    /// Strokes in a minute.
    pub strokes_per_minute: Option<f64>,
}

/// What [`Keyway::solve`] found.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct KeywayFound {
    /// What was asked.
    pub keyway: Keyway,
    /// From the chord across the mouth to the circle, y.
    pub chord_height: Length,
    /// Least height of the walls.
    pub wall: Length,
    /// From the bottom to the far side of bore or shaft at the given depth.
    pub across: Length,
    /// The same at the greatest depth; `None` without a tolerance.
    pub across_deepest: Option<Length>,
    /// Feed of a flat tool from first touch to the given depth.
    pub feed: Length,
    /// Strokes to depth; `None` without an infeed.
    pub strokes: Option<u64>,
    /// Feed at the last stroke, which takes what is left.
    pub last_infeed: Option<Length>,
    /// Minutes to depth; `None` without infeed and strokes a minute.
    pub minutes: Option<f64>,
}

impl Keyway {
    /// A keyway without a tolerance, and nothing about how it is cut.
    pub fn new(cut_in: CutIn, diameter: Length, width: Length, depth: Length) -> Self {
        Self {
            cut_in,
            diameter,
            width,
            depth,
            depth_tolerance: None,
            infeed: None,
            strokes_per_minute: None,
        }
    }

    /// With how much deeper it may be.
    #[must_use]
    pub fn with_depth_tolerance(mut self, tolerance: Length) -> Self {
        self.depth_tolerance = Some(tolerance);
        self
    }

    /// With the feed at each stroke.
    #[must_use]
    pub fn with_infeed(mut self, infeed: Length) -> Self {
        self.infeed = Some(infeed);
        self
    }

    /// With the strokes that the machine makes in a minute.
    #[must_use]
    pub fn with_strokes_per_minute(mut self, strokes: f64) -> Self {
        self.strokes_per_minute = Some(strokes);
        self
    }

    fn check(&self) -> Result<(), Error> {
        positive_length("diameter", self.diameter)?;
        let of = if self.cut_in == CutIn::Hub { "bore" } else { "shaft" };
        narrower("width", self.width, of, self.diameter)?;
        positive_length("depth", self.depth)?;
        if let Some(tolerance) = self.depth_tolerance {
            zero_or_more("depth_tolerance", tolerance.get::<millimeter>(), "mm", "0.1 mm")?;
        }
        if let Some(infeed) = self.infeed {
            let given = infeed.get::<millimeter>();
            finite("infeed", given, "0.02 mm")?;
            // Strokes are counted on whole nanometres.
            if infeed.exact() < 1.0 {
                positive("infeed", given.min(0.0), "mm", "0.02 mm")?;
            }
        }
        if let Some(strokes) = self.strokes_per_minute {
            positive("strokes_per_minute", strokes, "1/min", "60")?;
        }
        if self.cut_in == CutIn::Hub {
            return Ok(());
        }
        let y = chord(self.diameter, self.width);
        let radius = self.diameter / 2.0;
        if self.depth > y && self.depth + self.depth_tolerance.unwrap_or_default() < radius {
            return Ok(());
        }
        let shown = |length: Length| figure(length.get::<millimeter>(), 4);
        let range = format!("not between {} and {}", shown(y), shown(radius));
        let hint = "a keyway in a shaft has walls from the chord height on, and never reaches the \
                    middle; the depth is measured from where the crown of the shaft was";
        let given = shown_mm(self.depth);
        Err(outside("depth", given, range, "mm", String::new(), hint.into()))
    }

    /// Depths, feed, strokes and time.
    ///
    /// # Errors
    ///
    /// See [`Keyway`].
    pub fn solve(self) -> Result<KeywayFound, Error> {
        self.check()?;
        let Self { diameter: d, depth: t, .. } = self;
        let hub = self.cut_in == CutIn::Hub;
        let y = chord(d, self.width);
        let across = |depth: Length| {
            let (d, depth) = (d.exact(), depth.exact());
            Length::from_exact(if hub { d + depth } else { d - depth })
        };
        let (wall, feed) = if hub { (t + y, t + y) } else { (t - y, t) };
        let cuts = self.infeed.map(|infeed| {
            let (feed, infeed) = (feed.exact(), infeed.exact());
            let strokes = (feed / infeed).ceil();
            (strokes as u64, Length::from_exact(feed - (strokes - 1.0) * infeed))
        });
        let strokes = cuts.map(|(strokes, _)| strokes);
        Ok(KeywayFound {
            keyway: self,
            chord_height: y,
            wall,
            across: across(t),
            across_deepest: self.depth_tolerance.map(|more| across(t + more)),
            feed,
            strokes,
            last_infeed: cuts.map(|(_, last)| last),
            minutes: strokes
                .zip(self.strokes_per_minute)
                .map(|(strokes, rate)| strokes as f64 / rate),
        })
    }
}

impl KeywayFound {
    /// The steps, recomputed; the last one's result is `feed` in mm, or `strokes` where
    /// an infeed is given.
    pub fn working(&self) -> Working {
        let Ok(again) = self.keyway.solve() else { return Working::default() };
        let Keyway { diameter, width, depth, infeed, cut_in, .. } = self.keyway;
        let hub = cut_in == CutIn::Hub;
        let mm = |length: Length| figure(length.get::<millimeter>(), 4);
        let step = |symbol, relation, numbers, length: Length| Step {
            symbol,
            relation,
            numbers,
            result: length.get::<millimeter>(),
            unit: "mm",
            source: ARITHMETIC,
        };
        let (y, sign) = (again.chord_height, if hub { "+" } else { "−" });
        let mut steps = vec![
            step(
                "y",
                "(d − √(d² − b²)) / 2",
                format!("({0} − √({0}² − {1}²)) / 2", mm(diameter), mm(width)),
                y,
            ),
            step(
                "wall",
                if hub { "t + y" } else { "t − y" },
                format!("{} {sign} {}", mm(depth), mm(y)),
                again.wall,
            ),
            step(
                "across",
                if hub { "d + t" } else { "d − t" },
                format!("{} {sign} {}", mm(diameter), mm(depth)),
                again.across,
            ),
            step(
                "feed",
                if hub { "t + y" } else { "t" },
                if hub { format!("{} + {}", mm(depth), mm(y)) } else { mm(depth) },
                again.feed,
            ),
        ];
        if let (Some(strokes), Some(infeed)) = (again.strokes, infeed) {
            steps.push(Step {
                symbol: "strokes",
                relation: "feed / infeed, rounded up",
                numbers: format!("{} / {}", mm(again.feed), mm(infeed)),
                result: strokes as f64,
                unit: "strokes",
                source: PRACTICE,
            });
        }
        Working { steps }
    }
}
