//! Looking a wheel up in the flange tables, in whole nm and without words:
//! what kernels, rules and block loops share.

use super::flange::FlangeKind;
use crate::source::Source;
use crate::tables::flanges::{
    Adaptor, LISTED_WITHIN, O4, O5, O6, O7, O8, Relieved, TABLE_O4, TABLE_O5, TABLE_O6, TABLE_O7,
    TABLE_O8,
};

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

    /// Who demands it.
    pub(super) fn source(&self) -> Source {
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
