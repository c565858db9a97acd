//! The least flange that may hold a wheel.

use std::fmt;

use super::shape::Shape;
use super::speed::positive_length;
use crate::error::{Error, ErrorKind};
use crate::source::Source;
use crate::tables::flanges::{
    Adaptor, LISTED_WITHIN, O4, O5, O6, O7, O8, Relieved, TABLE_O4, TABLE_O5, TABLE_O6, TABLE_O7,
    TABLE_O8,
};
use crate::tables::laws;
use crate::units::{Exact, Length, figure, millimeter, words};
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
/// Wheels under 2 in may have unrelieved flanges (Table O-6, note), in nm.
pub(crate) const RELIEF_FROM: f64 = 50.8e6;

/// A table of flanges.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[repr(u8)]
pub(crate) enum Table {
    None,
    O4,
    O5,
    O6,
    O7,
    O8,
}

/// Whether a table can be asked about a flange.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[repr(u8)]
pub(crate) enum Ready {
    /// It can.
    Yes,
    /// There is none for this wheel and flange.
    NoTable,
    /// Something that decides it is blank.
    Blank,
    /// Nobody asks for something that decides it.
    NotAsked,
}

macro_rules! demands {
    ($($(#[doc = $doc:literal])+ $field:ident,)+) => {
        /// What a table demands of one flange: whole nm, NaN where it demands nothing.
        #[derive(Clone, Copy, Debug)]
        pub(crate) struct Demands {
            $($(#[doc = $doc])+ pub $field: f64,)+
        }

        /// The demands on the flanges of a block of mountings, a column a field.
        #[derive(Clone, Debug)]
        pub(crate) struct DemandColumns<const ROWS: usize> {
            $($field: [f64; ROWS],)+
        }

        impl<const ROWS: usize> DemandColumns<ROWS> {
            pub(crate) const NONE: Self = Self { $($field: [Demands::NONE.$field; ROWS],)+ };

            #[inline(always)]
            pub(crate) fn row(&self, row: usize) -> Demands {
                Demands { $($field: self.$field[row],)+ }
            }

            #[inline(always)]
            pub(crate) fn put(&mut self, row: usize, demands: Demands) {
                $(self.$field[row] = demands.$field;)+
            }
        }
    };
}

demands! {
    /// A [`Ready`], as a number so that a block loop compares it like the rest.
    ready,
    /// A [`Table`], likewise.
    table,
    /// Least diameter.
    diameter,
    /// Diameter that the next row asks for, for a wheel between two sizes.
    next,
    /// Least width of the land.
    least_land,
    /// Greatest width of the land.
    greatest_land,
    /// Least thickness at the hole.
    at_hole,
    /// Least thickness at the edge of the recess.
    at_edge,
}

impl Demands {
    pub(crate) const NONE: Self = Self {
        ready: Ready::Yes as u8 as f64,
        table: Table::None as u8 as f64,
        diameter: f64::NAN,
        next: f64::NAN,
        least_land: f64::NAN,
        greatest_land: f64::NAN,
        at_hole: f64::NAN,
        at_edge: f64::NAN,
    };

    /// Nothing, because the table can't be asked.
    pub(crate) const fn not(ready: Ready) -> Self {
        Self { ready: ready as u8 as f64, ..Self::NONE }
    }

    /// Whether this is how far the table can be asked.
    #[inline(always)]
    pub(crate) fn ready_is(&self, ready: Ready) -> bool {
        self.ready == ready as u8 as f64
    }

    /// Whether this is the table.
    #[inline(always)]
    pub(crate) fn table_is(&self, table: Table) -> bool {
        self.table == table as u8 as f64
    }

    fn source(&self) -> Source {
        let tables = [(Table::O4, O4), (Table::O5, O5), (Table::O7, O7), (Table::O8, O8)];
        tables.iter().find(|(table, _)| self.table_is(*table)).map_or(O6, |(_, source)| *source)
    }

    /// What the table of a kind of flange demands for a wheel and its hole,
    /// both in whole nm. The hole matters to adaptors and sleeves only.
    pub(crate) fn of(kind: FlangeKind, wheel: f64, hole: f64) -> Self {
        match kind {
            FlangeKind::Relieved => Self::relieved(wheel),
            FlangeKind::Unrelieved => Self::unrelieved(wheel),
            FlangeKind::Adaptor => Self::adaptor(Table::O5, &TABLE_O5, wheel, hole),
            FlangeKind::AdaptorHeavy => Self::adaptor(Table::O7, &TABLE_O7, wheel, hole),
            FlangeKind::Sleeve => {
                // O-8 starts at 12 in wheels and lists large holes; the rest is O-6.
                let found = Self::adaptor(Table::O8, &TABLE_O8, wheel, hole);
                if found.diameter.is_nan() { Self::relieved(wheel) } else { found }
            }
        }
    }

    fn relieved(wheel: f64) -> Self {
        let found = locate(wheel, O6_WHEELS.len(), |row| O6_WHEELS[row]);
        let next: Option<&Relieved> = found.next.map(|row| &TABLE_O6[row]);
        let next_diameter = next.map_or(f64::NAN, |row| row.diameter);
        let Some(row) = found.row.map(|row| &TABLE_O6[row]) else {
            return Self { table: Table::O6 as u8 as f64, next: next_diameter, ..Self::NONE };
        };
        Self {
            ready: Ready::Yes as u8 as f64,
            table: Table::O6 as u8 as f64,
            diameter: row.diameter,
            next: next_diameter,
            least_land: row.least_land,
            // Between two sizes the law gives no width: the wider one refuses nobody wrongly.
            greatest_land: next.map_or(row.greatest_land, |row| row.greatest_land),
            at_hole: row.thickness_at_hole,
            at_edge: row.thickness_at_edge,
        }
    }

    fn unrelieved(wheel: f64) -> Self {
        // Wheels with a thread of their own keep no third: the last row must not pass for larger ones.
        if wheel > TABLE_O4[TABLE_O4.len() - 1].wheel + LISTED_WITHIN {
            return Self::NONE;
        }
        let found = locate(wheel, TABLE_O4.len(), |row| TABLE_O4[row].wheel);
        let next = found.next.map_or(f64::NAN, |row| TABLE_O4[row].diameter);
        let Some(row) = found.row.map(|row| &TABLE_O4[row]) else {
            return Self { table: Table::O4 as u8 as f64, next, ..Self::NONE };
        };
        Self {
            table: Table::O4 as u8 as f64,
            diameter: row.diameter,
            next,
            at_hole: row.thickness,
            at_edge: row.thickness,
            ..Self::NONE
        }
    }

    fn adaptor(table: Table, rows: &[Adaptor], wheel: f64, hole: f64) -> Self {
        let holds = |row: &Adaptor| {
            let lower = if row.from {
                wheel >= row.over - LISTED_WITHIN
            } else {
                wheel > row.over + LISTED_WITHIN
            };
            lower && wheel <= row.up_to + LISTED_WITHIN
        };
        // O-7 lists single sizes: a wheel between two of them falls to the lower.
        let below =
            rows.iter().map(|row| row.up_to).filter(|up_to| *up_to <= wheel).fold(0.0, f64::max);
        let band = match rows.iter().position(holds) {
            Some(first) => first..first + rows[first..].iter().take_while(|row| holds(row)).count(),
            None if table == Table::O7 => {
                let first = rows.iter().position(|row| row.up_to == below).unwrap_or(rows.len());
                first..first + rows[first..].iter().take_while(|row| row.up_to == below).count()
            }
            None => return Self::NONE,
        };
        let band = &rows[band];
        if band.is_empty() {
            return Self::NONE;
        }
        if band.last().is_some_and(|last| hole > last.hole + LISTED_WITHIN) {
            return Self::NONE;
        }
        let found = locate(hole, band.len(), |row| band[row].hole);
        let next = found.next.map_or(f64::NAN, |row| band[row].diameter);
        let Some(row) = found.row.map(|row| &band[row]) else {
            return Self { table: table as u8 as f64, next, ..Self::NONE };
        };
        Self {
            table: table as u8 as f64,
            diameter: row.diameter,
            next,
            at_hole: row.thickness_at_hole,
            at_edge: row.thickness_at_edge,
            ..Self::NONE
        }
    }
}

/// The wheels of Table O-6 side by side, for looking along them.
static O6_WHEELS: [f64; TABLE_O6.len()] = {
    let mut wheels = [0.0; TABLE_O6.len()];
    let mut row = 0;
    while row < wheels.len() {
        wheels[row] = TABLE_O6[row].wheel;
        row += 1;
    }
    wheels
};

/// Where a size stands among listed ones: its row, or the rows around it.
struct Located {
    row: Option<usize>,
    next: Option<usize>,
}

#[inline(always)]
fn locate(size: f64, rows: usize, listed: impl Fn(usize) -> f64) -> Located {
    // Counted without a branch: over a million wheels, guessing where to stop costs more.
    let below: usize = (0..rows).map(|row| usize::from(listed(row) <= size + LISTED_WITHIN)).sum();
    let row = below.checked_sub(1);
    let is_listed = row.is_some_and(|row| size - listed(row) <= LISTED_WITHIN);
    Located { row, next: (!is_listed && below < rows).then_some(below) }
}

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
/// threaded inserts or projecting studs only. Sleeves with holes smaller than
/// Table O-8 lists are judged by O-6.
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
