//! Screw threads: what their designation stands for.

mod class;
mod drill;
mod read;
mod wires;

pub use class::{ThreadClass, ThreadLimits};
pub use drill::{DRILL_RULE, TapDrill};
pub use wires::{THREE_WIRES, ThreeWires};

use std::f64::consts::PI;
use std::fmt;

use crate::error::Error;
use crate::source::Source;
use crate::tables::threads::{METRIC_STRESS, PROFILE, UNIFIED_STRESS};
use crate::units::{
    Angle, Area, Exact, Length, degree, figure, meter, millimeter, radian, square_meter,
    square_millimeter,
};
use crate::working::{Step, Working};

/// Whole nanometres in a micrometre, a millimetre, a ten-thousandth of an inch and an inch.
pub(super) const UM: i64 = 1000;
pub(super) const MM: i64 = 1_000_000;
pub(super) const TEN_THOUSANDTH: i64 = 2540;
const INCH: f64 = 25.4e6;

/// Half of the angle between the flanks, in degrees.
pub(super) const HALF_ANGLE: f64 = 30.0;

/// A series of threads.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Series {
    /// ISO metric, M.
    Metric,
    /// Unified coarse, UNC.
    Unc,
    /// Unified fine, UNF.
    Unf,
}

impl fmt::Display for Series {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Metric => "M",
            Self::Unc => "UNC",
            Self::Unf => "UNF",
        })
    }
}

/// A thread with one start and flanks at 60°: what [`thread`] found.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Thread {
    /// Series that it belongs to.
    pub series: Series,
    /// Size as a unified thread is written, such as `1/4` or `#10`; empty for a metric one.
    pub size: &'static str,
    /// Whether its hand is left.
    pub left_hand: bool,
    /// Nominal diameter, the major diameter `d` of the basic profile.
    pub diameter: Length,
    /// Pitch `P`; with one start it is the lead too.
    pub pitch: Length,
    /// Basic pitch diameter, `d2 = d − 3/4 H` with `H = √3/2 P`.
    pub pitch_diameter: Length,
    /// Basic minor diameter, `D1 = d − 5/4 H`.
    pub minor_diameter: Length,
    /// Diameter at the root of a screw, `d3 = d − 17/12 H`.
    pub root_diameter: Length,
    /// Nominal stress area of a screw.
    pub stress_area: Area,
    /// Limits of size, when the designation names a class.
    pub limits: Option<ThreadLimits>,
}

/// What a thread's designation stands for: profile, stress area and limits.
///
/// `d2 = d − 3/4 H`, `D1 = d − 5/4 H`, `d3 = d − 17/12 H`, with `H = √3/2 P`. The stress area
/// is `π/4 ((d2 + d3) / 2)²` for metric and `π/4 (d − 0.9743 P)²` for unified threads. Metric
/// threads are written like `M20`, `M20x1.5`, `M20x1-6H`, `M20x1-6g-LH`; unified ones like
/// `1/4-20 UNC-2B`, `#10-32 UNF`, `1-1/8-12 UNF-2A LH`. Without a pitch a metric thread is the
/// coarse one. The limits are those of the table, in whole µm from diameters
/// rounded to a µm, and in ten-thousandths of an inch.
///
/// Range: metric diameters 1 to 300 mm with the pitches of ISO 261, no coarser than the coarse series;
/// limits for 4g 6e 6g 6h 4H 5H 6H 7H as far as the table of ISO 965-1 goes. Unified: UNC and UNF from no. 4 to
/// 1½ in, limits for 2A and 2B.
///
/// # Errors
///
/// [`NotAQuantity`](crate::ErrorKind::NotAQuantity) for a text that is no thread,
/// [`UnknownWord`](crate::ErrorKind::UnknownWord) for a thread or class that there is not,
/// [`OutOfRange`](crate::ErrorKind::OutOfRange) for a pitch that the diameter does not allow and
/// for a class at which the table gives nothing.
///
/// # Source
///
/// ISO 68-1, ISO 261, ISO 965-1, ISO 898-1, ASME B1.1; the status of the limits is in their source.
///
/// # Example
///
/// The pitch diameter of an M10×1-6g screw may measure 9.212 to 9.324 mm.
///
/// ```
/// use hubwright::joint::thread;
/// use hubwright::units::Nanometres;
///
/// let screw = thread("M10x1-6g")?;
/// let limits = screw.limits.expect("a class was named");
/// assert_eq!(Nanometres::from(limits.pitch_greatest), Nanometres(9_324_000));
/// assert_eq!(Nanometres::from(limits.pitch_least), Nanometres(9_212_000));
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn thread(designation: &str) -> Result<Thread, Error> {
    let read = read::designation(designation)?;
    let class = read.class;
    let thread = Thread::basic(read);
    match class {
        None => Ok(thread),
        Some(class) => Ok(Thread { limits: Some(ThreadLimits::of(&thread, class)?), ..thread }),
    }
}

impl Thread {
    fn basic(read: read::Read) -> Self {
        let (d, p) = (read.diameter_nm as f64 / 1e9, read.pitch_nm / 1e9);
        let m = Length::new::<meter>;
        let height = 3.0_f64.sqrt() / 2.0 * p;
        let (pitch_diameter, root) = (d - 0.75 * height, d - 17.0 / 12.0 * height);
        let stress_diameter = match read.series {
            Series::Metric => f64::midpoint(pitch_diameter, root),
            Series::Unc | Series::Unf => d - 0.9743 * p,
        };
        Self {
            series: read.series,
            size: read.size,
            left_hand: read.left_hand,
            diameter: m(d),
            pitch: m(p),
            pitch_diameter: m(pitch_diameter),
            minor_diameter: m(d - 1.25 * height),
            root_diameter: m(root),
            stress_area: Area::new::<square_meter>(PI / 4.0 * stress_diameter * stress_diameter),
            limits: None,
        }
    }

    /// The same thread in another class, to compare screw and nut.
    ///
    /// # Errors
    ///
    /// As for [`thread`].
    pub fn in_class(self, class: ThreadClass) -> Result<Self, Error> {
        Ok(Self { limits: Some(ThreadLimits::of(&self, class)?), ..self })
    }

    /// Angle at which it rises at its pitch diameter: `tan φ = P / (π d2)`.
    pub fn lead_angle(&self) -> Angle {
        let rise = self.pitch.get::<meter>() / (PI * self.pitch_diameter.get::<meter>());
        Angle::new::<radian>(rise.atan())
    }

    /// Half of the angle between its flanks: 30°.
    pub fn half_angle(&self) -> Angle {
        Angle::new::<degree>(HALF_ANGLE)
    }

    /// Threads an inch.
    pub fn threads_per_inch(&self) -> f64 {
        INCH / 1e9 / self.pitch.get::<meter>()
    }

    /// Diameter of a bar as strong as the screw: that of its stress area, in metres.
    pub(super) fn stress_diameter(&self) -> f64 {
        (self.stress_area.get::<square_meter>() * 4.0 / PI).sqrt()
    }

    /// Where its profile and stress area come from.
    pub fn source(&self) -> Source {
        match self.series {
            Series::Metric => METRIC_STRESS,
            Series::Unc | Series::Unf => UNIFIED_STRESS,
        }
    }

    /// The steps of the profile, recomputed; the last one's result is `stress_area` in mm².
    pub fn working(&self) -> Working {
        let (d, p) = (self.diameter.get::<millimeter>(), self.pitch.get::<millimeter>());
        let of = |symbol, relation, result: Length| Step {
            symbol,
            relation,
            numbers: format!("d = {} mm, P = {} mm", figure(d, 6), figure(p, 6)),
            result: result.get::<millimeter>(),
            unit: "mm",
            source: PROFILE,
        };
        let (relation, numbers) = match self.series {
            Series::Metric => (
                "π/4 ((d2 + d3) / 2)²",
                format!(
                    "π/4 (({} + {}) / 2)²",
                    figure(self.pitch_diameter.get::<millimeter>(), 4),
                    figure(self.root_diameter.get::<millimeter>(), 4)
                ),
            ),
            Series::Unc | Series::Unf => (
                "π/4 (d − 0.9743 P)²",
                format!("π/4 ({} − 0.9743 · {})²", figure(d, 6), figure(p, 6)),
            ),
        };
        let stress = Step {
            symbol: "As",
            relation,
            numbers,
            result: self.stress_area.get::<square_millimeter>(),
            unit: "mm²",
            source: self.source(),
        };
        Working {
            steps: vec![
                of("d2", "d − 3/4 · √3/2 P", self.pitch_diameter),
                of("D1", "d − 5/4 · √3/2 P", self.minor_diameter),
                of("d3", "d − 17/12 · √3/2 P", self.root_diameter),
                stress,
            ],
        }
    }
}

impl fmt::Display for Thread {
    /// As it is written on a drawing: `M20x1-6H`, `1/4-20 UNC-2B-LH`.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self.series {
            Series::Metric => {
                let mm = |length: Length| figure(length.exact() / 1e6, 3);
                write!(f, "M{}x{}", mm(self.diameter), mm(self.pitch))?;
            }
            series => {
                write!(f, "{}-{} {series}", self.size, figure(self.threads_per_inch(), 0))?;
            }
        }
        if let Some(limits) = self.limits {
            write!(f, "-{}", limits.class)?;
        }
        if self.left_hand { f.write_str("-LH") } else { Ok(()) }
    }
}
