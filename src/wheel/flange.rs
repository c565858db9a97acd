//! The least flange that may hold a wheel.

use std::fmt;

use super::demands::{Demands, RELIEF_FROM};
use super::shape::Shape;
use crate::error::{Error, ErrorKind};
use crate::source::Source;
use crate::tables::laws;
use crate::units::{Exact, Length, figure, millimeter, positive_length, words};
use crate::working::{Step, Working};

words! {
    /// Kind of flange.
    FlangeKind, "flange kind" {
        /// Straight, flat over its whole face.
        Unrelieved = "unrelieved" ["flat", "straight unrelieved"];
        /// Straight, recessed so that only its land bears.
        Relieved = "relieved" ["recessed", "straight relieved"];
        /// Adaptor, for wheels with large holes.
        Adaptor = "adaptor" ["adapter"];
        /// Adaptor for heavy duty.
        AdaptorHeavy = "adaptor-heavy" ["adapter heavy", "heavy adaptor"];
        /// Of a wheel sleeve, for precision grinding.
        Sleeve = "sleeve" ["wheel sleeve"];
    }
}

impl FlangeKind {
    /// Whether it holds a wheel with a large hole and is undercut at the hole.
    pub const fn undercut(self) -> bool {
        matches!(self, Self::Adaptor | Self::AdaptorHeavy | Self::Sleeve)
    }
}

/// Least depth of the recess of a relieved flange, 1/16 in, in nm.
pub(crate) const LEAST_RECESS: f64 = 25.4e6 / 16.0;
/// Least undercut of an adaptor or sleeve flange at the hole, 1/8 in, in nm.
pub(crate) const LEAST_UNDERCUT: f64 = 25.4e6 / 8.0;

/// What made a limit what it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Governs {
    /// A share of the wheel's diameter.
    Ratio,
    /// A row of a table.
    Table,
    /// A clause that gives one figure for all.
    Clause,
}

impl fmt::Display for Governs {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Ratio => "ratio",
            Self::Table => "table",
            Self::Clause => "clause",
        })
    }
}

/// A least or greatest size, and who says so.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Limit {
    /// The size.
    pub value: Length,
    /// Where it comes from.
    pub source: Source,
    /// Whether a ratio, a table or a clause gives it.
    pub governs: Governs,
}

impl Limit {
    pub(super) fn new(nm: f64, source: Source, governs: Governs) -> Option<Self> {
        (!nm.is_nan()).then(|| Self { value: Length::from_exact(nm), source, governs })
    }
}

/// What [`flange_limits`] found; `None` where nothing is demanded.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct FlangeLimits {
    /// Shape of the wheel asked about.
    pub shape: Shape,
    /// Diameter of the new wheel.
    pub diameter: Length,
    /// Kind of flange.
    pub kind: FlangeKind,
    /// Hole of the wheel, when it was given.
    pub hole: Option<Length>,
    /// Least diameter of the flange: the larger of ratio and table.
    pub least_diameter: Option<Limit>,
    /// For a wheel between two listed sizes, the diameter that the next row asks for.
    pub next_row_diameter: Option<Limit>,
    /// Least width of the land that bears on the wheel.
    pub least_land: Option<Limit>,
    /// Greatest width of the land.
    pub greatest_land: Option<Limit>,
    /// Least depth of the recess of a relieved flange.
    pub least_recess: Option<Limit>,
    /// Least width of the undercut at the hole of an adaptor or sleeve flange.
    pub least_undercut: Option<Limit>,
    /// Least thickness at the hole; in O-5 and O-7 it includes the pilot.
    pub least_thickness_at_hole: Option<Limit>,
    /// Least thickness at the edge of the recess or undercut.
    pub least_thickness_at_edge: Option<Limit>,
}

/// How many times a flange's diameter must reach the wheel's; `None` where no ratio is asked.
pub(crate) const fn ratio(shape: Shape) -> Option<f64> {
    if shape.special_flanges() || matches!(shape, Shape::Disc) {
        None
    } else if shape.cuts_off() {
        Some(4.0)
    } else {
        Some(3.0)
    }
}

/// Whether the flange tables are about wheels of this shape.
pub(crate) const fn has_table(shape: Shape) -> bool {
    !shape.special_flanges() && !matches!(shape, Shape::Disc | Shape::Type27A)
}

/// Least dimensions of a flange for a wheel.
///
/// The diameter is the larger of a third of the new wheel (a quarter for
/// cutting-off wheels) and the row of the flange's table at or below the
/// wheel. A wheel within 0.5 mm of a listed size is judged by its own row
/// alone; for one between two sizes, `next_row_diameter` is what the next row
/// asks for. The diameters of the tables are not applied to cutting-off
/// wheels, and nothing but the recess to types 27 and 28, discs and the
/// modified types for terrazzo. Table O-4 (unrelieved) is for wheels with
/// threaded inserts or projecting studs only, up to 6 in. Sleeves with wheels
/// or holes outside Table O-8 are judged by O-6.
///
/// # Errors
///
/// [`ErrorKind::OutOfRange`] when a length is zero or negative,
/// [`ErrorKind::NotFinite`] when it is NaN or infinite,
/// [`ErrorKind::Missing`] when an adaptor or sleeve comes without the hole.
///
/// # Source
///
/// 29 CFR 1910.215(c)(1), (c)(5) and Tables O-4 to O-8, read once in a reprint;
/// the captions of O-5 and O-7 are recalled.
///
/// # Example
///
/// For a 14 in wheel the table asks for 4½ in, but a third of it governs.
///
/// ```
/// use hubwright::units::{Length, inch};
/// use hubwright::wheel::{FlangeKind, Governs, Shape, flange_limits};
///
/// let wheel = Length::new::<inch>(14.0);
/// let limits = flange_limits(Shape::Type1, wheel, FlangeKind::Relieved, None)?;
/// let least = limits.least_diameter.expect("a type 1 wheel has a ratio");
/// assert_eq!(least.governs, Governs::Ratio);
/// assert!((least.value.get::<inch>() - 14.0 / 3.0).abs() < 1e-7);
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn flange_limits(
    shape: Shape,
    diameter: Length,
    kind: FlangeKind,
    hole: Option<Length>,
) -> Result<FlangeLimits, Error> {
    positive_length("diameter", diameter)?;
    if let Some(hole) = hole {
        positive_length("hole", hole)?;
    }
    let wheel = diameter.exact();
    let tabled = has_table(shape);
    let hole_nm = match (hole, kind.undercut() && tabled) {
        (Some(hole), _) => hole.exact(),
        (None, false) => f64::NAN,
        (None, true) => {
            return Err(ErrorKind::Missing {
                argument: "hole".into(),
                why: format!("the table for {kind} flanges goes by the wheel's hole"),
                hint: "give the wheel's hole, like hole=\"127 mm\"".into(),
            }
            .into());
        }
    };
    let demands = if tabled { Demands::of(kind, wheel, hole_nm) } else { Demands::NONE };
    let source = demands.source();
    let table = |nm| Limit::new(nm, source, Governs::Table);
    let clause = |nm| Limit::new(nm, laws::FLANGE_RECESS, Governs::Clause);
    let by_table = if shape.cuts_off() { None } else { table(demands.diameter) };
    // The wheel is not cut to a rounded third: the ratio keeps its own digits.
    let by_ratio = ratio(shape).map(|times| Limit {
        value: diameter / times,
        source: laws::FLANGE_THIRD,
        governs: Governs::Ratio,
    });
    let reliefs = wheel >= RELIEF_FROM && shape != Shape::Type27A;
    let least_recess = (reliefs && kind == FlangeKind::Relieved).then_some(LEAST_RECESS);
    Ok(FlangeLimits {
        shape,
        diameter,
        kind,
        hole,
        least_diameter: larger(by_ratio, by_table),
        next_row_diameter: if shape.cuts_off() { None } else { table(demands.next) },
        least_land: table(demands.least_land),
        greatest_land: table(demands.greatest_land),
        least_recess: least_recess.and_then(clause),
        least_undercut: kind.undercut().then_some(LEAST_UNDERCUT).and_then(clause),
        least_thickness_at_hole: table(demands.at_hole),
        least_thickness_at_edge: table(demands.at_edge),
    })
}

/// The larger limit; the ratio where both say the same.
fn larger(ratio: Option<Limit>, table: Option<Limit>) -> Option<Limit> {
    match (ratio, table) {
        (Some(ratio), Some(table)) if table.value.exact() > ratio.value.exact() => Some(table),
        (None, table) => table,
        (ratio, _) => ratio,
    }
}

impl FlangeLimits {
    /// How the least diameter came about; the last step's result is
    /// `least_diameter` in mm. Empty when no diameter is demanded.
    pub fn working(&self) -> Working {
        let Some(least) = self.least_diameter else { return Working::default() };
        let wheel = self.diameter.get::<millimeter>();
        let mut steps = Vec::new();
        let mut sizes = Vec::new();
        if let Some(times) = ratio(self.shape) {
            let result = (self.diameter / times).get::<millimeter>();
            sizes.push(figure(result, 4));
            steps.push(Step {
                symbol: "least by ratio",
                relation: if times == 3.0 { "D / 3" } else { "D / 4" },
                numbers: format!("{} mm / {times}", figure(wheel, 4)),
                result,
                unit: "mm",
                source: laws::FLANGE_THIRD,
            });
        }
        let hole = self.hole.map_or(f64::NAN, |hole| hole.exact());
        let demands = Demands::of(self.kind, self.diameter.exact(), hole);
        if has_table(self.shape) && !self.shape.cuts_off() && !demands.diameter.is_nan() {
            let result = Length::from_exact(demands.diameter).get::<millimeter>();
            sizes.push(figure(result, 4));
            steps.push(Step {
                symbol: "least by table",
                relation: "row at or below the wheel",
                numbers: format!("{} in", figure(demands.diameter / 25.4e6, 4)),
                result,
                unit: "mm",
                source: demands.source(),
            });
        }
        steps.push(Step {
            symbol: "least diameter",
            relation: "the larger",
            numbers: format!("max({})", sizes.join(", ")),
            result: least.value.get::<millimeter>(),
            unit: "mm",
            source: least.source,
        });
        Working { steps }
    }
}
