//! Setting the lathe: the slide by indicator, the sine bar, the tailstock.

use super::check::{step, uncertainty};
use super::{GEOMETRY, RUN_OUT};
use crate::error::Error;
use crate::joint::Taper;
use crate::source::Source;
use crate::units::{
    Angle, Exact, Length, below, degree, figure, meter, micrometer, millimeter, positive_length,
    radian, words,
};
use crate::working::Working;

words! {
    /// What an indicator travels along.
    Along, "travel" {
        /// The flank: the top slide moves it.
        Flank = "flank" ["slide", "top slide"];
        /// The axis: the saddle moves it.
        Axis = "axis" ["bed", "saddle", "carriage"];
    }
}

words! {
    /// Which angle something is set to.
    SetAngle, "angle" {
        /// Half of the included angle.
        Half = "half" [];
        /// The included angle.
        Included = "included" ["cone", "whole"];
    }
}

/// A rise of radius over a travel, for a half angle in radians.
pub(super) fn rise(alpha: f64, travel: f64, along: Along) -> f64 {
    travel * if along == Along::Flank { alpha.sin() } else { alpha.tan() }
}

/// The half angle in radians from a rise.
pub(super) fn angle_of_rise(rise: f64, travel: f64, along: Along) -> f64 {
    let share = rise / travel;
    if along == Along::Flank { share.asin() } else { share.atan() }
}

/// How much the half angle changes for a change of rise, in rad per m.
pub(super) fn per_rise(alpha: f64, travel: f64, along: Along) -> f64 {
    match along {
        Along::Flank => 1.0 / (travel * alpha.cos()),
        Along::Axis => alpha.cos().powi(2) / travel,
    }
}

/// An angle in minutes of arc as a maker reads it.
pub(super) fn arc_minutes(angle: Angle) -> String {
    format!("{}'", figure(angle.get::<degree>() * 60.0, 2))
}

/// What [`slide_setting`] found.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct SlideSetting {
    /// The taper wanted.
    pub taper: Taper,
    /// How far the indicator travels.
    pub travel: Length,
    /// Along what.
    pub along: Along,
    /// What the slide's scale has to show, to begin with.
    pub half_angle: Angle,
    /// What the indicator has to show over the travel, on one side.
    pub rise: Length,
    /// What a minute of arc changes of that.
    pub rise_per_minute: Length,
}

/// How to set the top slide: the angle to begin with, and the rise to set it by.
///
/// `travel · sin α` along the flank, `travel · tan α` along the axis. Over 40 mm a minute of
/// arc is 12 µm a side: no scale of a slide is that good, an indicator is.
///
/// # Errors
///
/// [`OutOfRange`](crate::ErrorKind::OutOfRange) or [`NotFinite`](crate::ErrorKind::NotFinite) for a travel that is not above zero.
///
/// # Source
///
/// Geometry.
///
/// # Example
///
/// 3 in/ft: 7.125°, and 3.1009 mm of rise over 25 mm along the flank.
///
/// ```
/// use hubwright::gauge::{Along, slide_setting};
/// use hubwright::joint::taper;
/// use hubwright::units::{Length, millimeter};
///
/// let found = slide_setting(&taper("3 in/ft")?, Length::new::<millimeter>(25.0), Along::Flank)?;
/// assert!((found.rise.get::<millimeter>() - 3.1009).abs() < 5e-5);
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn slide_setting(taper: &Taper, travel: Length, along: Along) -> Result<SlideSetting, Error> {
    let metres = positive_length("travel", travel)?;
    let alpha = taper.half_angle.get::<radian>();
    let minute = Angle::new::<degree>(1.0 / 60.0).get::<radian>();
    Ok(SlideSetting {
        taper: *taper,
        travel,
        along,
        half_angle: taper.half_angle,
        rise: Length::new::<meter>(rise(alpha, metres, along)),
        rise_per_minute: Length::new::<meter>(minute / per_rise(alpha, metres, along)),
    })
}

impl SlideSetting {
    /// The steps, recomputed; the last one's result is `rise` in mm.
    pub fn working(&self) -> Working {
        let (mm, alpha) = (self.travel.get::<meter>(), self.half_angle);
        let found = Length::new::<meter>(rise(alpha.get::<radian>(), mm, self.along));
        let (relation, of) = match self.along {
            Along::Flank => ("travel · sin α", "sin"),
            Along::Axis => ("travel · tan α", "tan"),
        };
        let numbers =
            format!("{} · {of} {}°", figure(mm * 1e3, 4), figure(alpha.get::<degree>(), 6));
        Working {
            steps: vec![step(
                "rise",
                relation,
                numbers,
                (found.get::<millimeter>(), "mm"),
                GEOMETRY,
            )],
        }
    }
}

/// What [`sine_bar`] found.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct SineBar {
    /// Distance of the bar's rollers.
    pub centres: Length,
    /// The angle it makes.
    pub angle: Angle,
    /// Height of the blocks under one roller.
    pub stack: Length,
    /// What a minute of arc changes of that.
    pub stack_per_minute: Length,
}

/// The stack under a sine bar that makes the half or the included angle of a taper.
///
/// `h = L sin φ`. With the included angle, the upper flank of a cone that lies on the bar
/// comes out level.
///
/// # Errors
///
/// [`OutOfRange`](crate::ErrorKind::OutOfRange) for a bar that has no length, or a cone of 90° and more.
///
/// # Source
///
/// Geometry.
///
/// # Example
///
/// Morse 2 on a bar of 100 mm: 4.9919 mm for the included angle.
///
/// ```
/// use hubwright::gauge::{SetAngle, sine_bar};
/// use hubwright::joint::taper;
/// use hubwright::units::{Length, millimeter};
///
/// let found = sine_bar(&taper("Morse 2")?, Length::new::<millimeter>(100.0), SetAngle::Included)?;
/// assert!((found.stack.get::<millimeter>() - 4.9919).abs() < 5e-5);
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn sine_bar(taper: &Taper, centres: Length, set: SetAngle) -> Result<SineBar, Error> {
    let metres = positive_length("centres", centres)?;
    let angle = match set {
        SetAngle::Half => taper.half_angle,
        SetAngle::Included => taper.cone_angle(),
    };
    below("angle", angle.get::<degree>(), 89.999, "°", "14.25 deg")?;
    let minute = Angle::new::<degree>(1.0 / 60.0).get::<radian>();
    let phi = angle.get::<radian>();
    Ok(SineBar {
        centres,
        angle,
        stack: Length::new::<meter>(metres * phi.sin()),
        stack_per_minute: Length::new::<meter>(metres * phi.cos() * minute),
    })
}

impl SineBar {
    /// The angle that a stack of another height makes less the one wanted.
    pub fn angle_error(&self, stack: Length) -> Angle {
        let share = stack.get::<meter>() / self.centres.get::<meter>();
        Angle::new::<radian>(share.asin() - self.angle.get::<radian>())
    }

    /// The steps, recomputed; the last one's result is `stack` in mm.
    pub fn working(&self) -> Working {
        let (length, phi) = (self.centres.get::<meter>(), self.angle);
        let stack = Length::new::<meter>(length * phi.get::<radian>().sin());
        let numbers =
            format!("{} · sin {}°", figure(length * 1e3, 4), figure(phi.get::<degree>(), 6));
        Working {
            steps: vec![step("h", "L sin φ", numbers, (stack.get::<millimeter>(), "mm"), GEOMETRY)],
        }
    }
}

/// What [`tailstock`] found.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Tailstock {
    /// The taper wanted.
    pub taper: Taper,
    /// Distance of the centres in the part.
    pub between_centres: Length,
    /// How far to move the tailstock.
    pub offset: Length,
    /// What the usual rule says, `L (D − d) / (2 l)`: a little more.
    pub by_rule: Length,
}

/// How far to move the tailstock across for a taper between centres.
///
/// `L sin α` with `L` the distance of the part's centres; the usual rule takes the tangent.
/// Ball centres are taken for granted: plain ones bear on their edge and wear.
///
/// # Errors
///
/// [`OutOfRange`](crate::ErrorKind::OutOfRange) for a length that is not above zero.
///
/// # Source
///
/// Geometry.
///
/// # Example
///
/// 30 to 26 mm over 80 mm (1:20), 200 mm between centres: 5 mm.
///
/// ```
/// use hubwright::gauge::tailstock;
/// use hubwright::joint::taper;
/// use hubwright::units::{Length, millimeter};
///
/// let found = tailstock(&taper("1:20")?, Length::new::<millimeter>(200.0))?;
/// assert!((found.by_rule.get::<millimeter>() - 5.0).abs() < 1e-9);
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn tailstock(taper: &Taper, between_centres: Length) -> Result<Tailstock, Error> {
    positive_length("between_centres", between_centres)?;
    let alpha = taper.half_angle.get::<radian>();
    let (offset, by_rule) = (between_centres * alpha.sin(), between_centres * taper.per_side);
    Ok(Tailstock { taper: *taper, between_centres, offset, by_rule })
}

impl Tailstock {
    /// The steps, recomputed; the last one's result is `offset` in mm.
    pub fn working(&self) -> Working {
        let (length, alpha) = (self.between_centres, self.taper.half_angle);
        let found = length * alpha.get::<radian>().sin();
        let numbers = format!(
            "{} · sin {}°",
            figure(length.get::<millimeter>(), 4),
            figure(alpha.get::<degree>(), 6)
        );
        Working {
            steps: vec![step(
                "offset",
                "L sin α",
                numbers,
                (found.get::<millimeter>(), "mm"),
                GEOMETRY,
            )],
        }
    }
}

/// What [`run_out`] found.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct RunOut {
    /// Run-out of the original where it is indicated, total reading.
    pub run_out: Length,
    /// Travel of the indicator.
    pub travel: Length,
    /// Greatest error of the half angle when one end runs out and the other is true.
    pub one_end: Angle,
    /// The same when both ends run out to opposite sides: the worst there is.
    pub both_ends: Angle,
    /// Who says that 0.01 mm will do.
    pub source: Source,
}

impl RunOut {
    /// Run-out up to which an original is copied without more ado: 0.01 mm, common practice,
    /// no source.
    pub fn usual() -> Length {
        Length::new::<micrometer>(10.0)
    }

    /// Whether the original runs no worse than is usual.
    pub fn is_usual(&self) -> bool {
        self.run_out.exact() <= Self::usual().exact()
    }
}

/// The angle error that run-out of an indicated original can cause.
///
/// A flank that runs out by `e`, total reading, stands `e / 2` off at the worst place. With one
/// end true the slide is set wrong by `arctan(e / 2 / travel)`, with the ends out to opposite
/// sides by twice that. Indicating again with the spindle turned by half a turn, and taking
/// the mean, leaves none of it.
///
/// # Errors
///
/// [`OutOfRange`](crate::ErrorKind::OutOfRange) for a run-out below zero or a travel that is not above it.
///
/// # Source
///
/// Geometry. That 0.01 mm is good enough is common practice, no source.
///
/// # Example
///
/// 0.01 mm over 40 mm can cost 0.43' at one end, 0.86' at both.
///
/// ```
/// use hubwright::gauge::run_out;
/// use hubwright::units::{Length, degree, millimeter};
///
/// let mm = Length::new::<millimeter>;
/// let found = run_out(mm(0.01), mm(40.0))?;
/// assert!((found.one_end.get::<degree>() * 60.0 - 0.43).abs() < 0.005);
/// assert!((found.both_ends.get::<degree>() * 60.0 - 0.86).abs() < 0.005);
/// assert!(found.is_usual());
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn run_out(run_out: Length, travel: Length) -> Result<RunOut, Error> {
    uncertainty("run_out", run_out)?;
    let metres = positive_length("travel", travel)?;
    let e = run_out.get::<meter>();
    let of = |rise: f64| Angle::new::<radian>((rise / metres).atan());
    Ok(RunOut { run_out, travel, one_end: of(e / 2.0), both_ends: of(e), source: RUN_OUT })
}
