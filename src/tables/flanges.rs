//! Least dimensions of flanges: 29 CFR 1910.215, Tables O-4 to O-8.
//!
//! The rows read as printed, in inches; the tables hold whole nanometres, in
//! which every one of these fractions is exact.

use crate::source::{Source, Status};

/// Straight unrelieved flanges for wheels with threaded inserts or projecting studs.
pub const O4: Source = table("29cfr1910.215-o4", "Table O-4");
/// Straight adaptor flanges, for organic wheels over 1¼ in thick.
pub const O5: Source = table("29cfr1910.215-o5", "Table O-5");
/// Straight relieved flanges.
pub const O6: Source = table("29cfr1910.215-o6", "Table O-6");
/// Straight flanges used as adaptors for heavy duty.
pub const O7: Source = table("29cfr1910.215-o7", "Table O-7");
/// Flanges of wheel sleeves, for precision grinding.
pub const O8: Source = table("29cfr1910.215-o8", "Table O-8");

const fn table(key: &'static str, locator: &'static str) -> Source {
    Source::new(key, "29 CFR 1910.215", "", locator, Status::Reprint)
}

/// How far a wheel or hole may be from a listed size and still be of that size.
pub const LISTED_WITHIN: f64 = 0.5e6;

/// A row of Table O-4.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Unrelieved {
    /// Wheel diameter.
    pub wheel: f64,
    /// Least flange diameter, B.
    pub diameter: f64,
    /// Least thickness, T.
    pub thickness: f64,
}

/// A row of Table O-6.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Relieved {
    /// Wheel diameter, A.
    pub wheel: f64,
    /// Least flange diameter, B.
    pub diameter: f64,
    /// Least width of the bearing surface, C.
    pub least_land: f64,
    /// Greatest width of the bearing surface, C.
    pub greatest_land: f64,
    /// Least thickness at the hole, D.
    pub thickness_at_hole: f64,
    /// Least thickness at the edge of the recess, E.
    pub thickness_at_edge: f64,
}

/// A row of Table O-5, O-7 or O-8: a band of wheels and one hole.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Adaptor {
    /// Wheels over this diameter, or from it where the band includes it.
    pub over: f64,
    /// Whether the band includes its lower end.
    pub from: bool,
    /// Wheels up to and including this diameter.
    pub up_to: f64,
    /// Wheel hole.
    pub hole: f64,
    /// Least flange diameter, B.
    pub diameter: f64,
    /// Least thickness at the hole, D; in O-5 and O-7 it includes the pilot.
    pub thickness_at_hole: f64,
    /// Least thickness at the edge of the undercut, E.
    pub thickness_at_edge: f64,
}

/// Inches as printed, such as `4 1/2`, in nanometres.
const fn inch(printed: &str) -> f64 {
    let text = printed.as_bytes();
    let (mut at, mut whole, mut top, mut bottom) = (0, 0.0, 0.0, 0.0);
    let mut below = false;
    while at < text.len() {
        match text[at] {
            b' ' => (whole, top) = (top, 0.0),
            b'/' => below = true,
            digit if below => bottom = bottom * 10.0 + (digit - b'0') as f64,
            digit => top = top * 10.0 + (digit - b'0') as f64,
        }
        at += 1;
    }
    if below { (whole + top / bottom) * 25.4e6 } else { top * 25.4e6 }
}

const fn unrelieved([wheel, diameter, thickness]: [&str; 3]) -> Unrelieved {
    Unrelieved { wheel: inch(wheel), diameter: inch(diameter), thickness: inch(thickness) }
}

const fn relieved([wheel, diameter, least, greatest, hole, edge]: [&str; 6]) -> Relieved {
    Relieved {
        wheel: inch(wheel),
        diameter: inch(diameter),
        least_land: inch(least),
        greatest_land: inch(greatest),
        thickness_at_hole: inch(hole),
        thickness_at_edge: inch(edge),
    }
}

const fn band(over: &str, from: bool, up_to: &str, row: [&str; 4]) -> Adaptor {
    let [hole, diameter, thickness, edge] = row;
    Adaptor {
        over: inch(over),
        from,
        up_to: inch(up_to),
        hole: inch(hole),
        diameter: inch(diameter),
        thickness_at_hole: inch(thickness),
        thickness_at_edge: inch(edge),
    }
}

const fn from(lower: &str, up_to: &str, row: [&str; 4]) -> Adaptor {
    band(lower, true, up_to, row)
}

const fn over(lower: &str, up_to: &str, row: [&str; 4]) -> Adaptor {
    band(lower, false, up_to, row)
}

/// Table O-4. Columns A (wheel), B, T.
pub const TABLE_O4: [Unrelieved; 6] = [
    unrelieved(["1", "5/8", "1/8"]),
    unrelieved(["2", "1", "1/8"]),
    unrelieved(["3", "1", "3/16"]),
    unrelieved(["4", "1 3/8", "3/16"]),
    unrelieved(["5", "1 3/4", "1/4"]),
    unrelieved(["6", "2", "3/8"]),
];

/// Table O-6. Columns A (wheel), B, C least, C greatest, D, E.
pub const TABLE_O6: [Relieved; 24] = [
    relieved(["1", "3/8", "1/16", "1/8", "1/16", "1/16"]),
    relieved(["2", "3/4", "1/8", "3/16", "1/8", "3/32"]),
    relieved(["3", "1", "1/8", "3/16", "3/16", "3/32"]),
    relieved(["4", "1 3/8", "1/8", "3/16", "3/16", "1/8"]),
    relieved(["5", "1 3/4", "3/16", "1/4", "1/4", "1/8"]),
    relieved(["6", "2", "1/4", "1/2", "3/8", "3/16"]),
    relieved(["7", "2 1/2", "1/4", "1/2", "3/8", "3/16"]),
    relieved(["8", "3", "1/4", "1/2", "3/8", "3/16"]),
    relieved(["10", "3 1/2", "5/16", "5/8", "3/8", "1/4"]),
    relieved(["12", "4", "5/16", "5/8", "1/2", "5/16"]),
    relieved(["14", "4 1/2", "3/8", "3/4", "1/2", "5/16"]),
    relieved(["16", "5 1/2", "1/2", "1", "1/2", "5/16"]),
    relieved(["18", "6", "1/2", "1", "5/8", "3/8"]),
    relieved(["20", "7", "5/8", "1 1/4", "5/8", "3/8"]),
    relieved(["22", "7 1/2", "5/8", "1 1/4", "5/8", "7/16"]),
    relieved(["24", "8", "3/4", "1 1/4", "5/8", "7/16"]),
    relieved(["26", "8 1/2", "3/4", "1 1/4", "5/8", "1/2"]),
    relieved(["28", "10", "7/8", "1 1/2", "3/4", "1/2"]),
    relieved(["30", "10", "7/8", "1 1/2", "3/4", "5/8"]),
    relieved(["36", "12", "1", "2", "7/8", "3/4"]),
    relieved(["42", "14", "1", "2", "7/8", "3/4"]),
    relieved(["48", "16", "1 1/4", "2", "1 1/8", "1"]),
    relieved(["60", "20", "1 1/4", "2", "1 1/4", "1 1/8"]),
    relieved(["72", "24", "1 1/2", "2 1/2", "1 3/8", "1 1/4"]),
];

/// Table O-5. Columns: wheel band, hole, B, D, E.
pub const TABLE_O5: [Adaptor; 15] = [
    from("12", "14", ["4", "6", "7/8", "3/8"]),
    from("12", "14", ["5", "7", "7/8", "3/8"]),
    from("12", "14", ["6", "8", "7/8", "3/8"]),
    over("14", "18", ["4", "6", "7/8", "3/8"]),
    over("14", "18", ["5", "7", "7/8", "3/8"]),
    over("14", "18", ["6", "8", "7/8", "3/8"]),
    over("14", "18", ["7", "9", "7/8", "3/8"]),
    over("14", "18", ["8", "10", "7/8", "3/8"]),
    over("18", "24", ["6", "8", "1", "1/2"]),
    over("18", "24", ["7", "9", "1", "1/2"]),
    over("18", "24", ["8", "10", "1", "1/2"]),
    over("18", "24", ["10", "12", "1", "1/2"]),
    over("18", "24", ["12", "14", "1", "1/2"]),
    over("24", "30", ["12", "15", "1", "1/2"]),
    over("30", "36", ["12", "15", "1 3/8", "7/8"]),
];

/// Table O-7, which lists single wheel sizes. Columns: wheel, hole, B, D, E.
pub const TABLE_O7: [Adaptor; 5] = [
    from("20", "20", ["6", "8", "1", "1/2"]),
    from("20", "20", ["8", "10", "1 1/2", "3/4"]),
    from("24", "24", ["12", "15", "2", "1"]),
    from("30", "30", ["12", "15", "2", "1"]),
    from("36", "36", ["12", "15", "2", "1"]),
];

/// Table O-8. Columns: wheel band, hole, B, D, E.
pub const TABLE_O8: [Adaptor; 17] = [
    from("12", "14", ["5", "7", "1/2", "7/16"]),
    over("14", "20", ["5", "7", "5/8", "7/16"]),
    over("14", "20", ["6", "8", "5/8", "7/16"]),
    over("14", "20", ["8", "10", "5/8", "7/16"]),
    over("14", "20", ["10", "11 1/2", "5/8", "7/16"]),
    over("14", "20", ["12", "13 1/2", "5/8", "7/16"]),
    over("20", "30", ["8", "10", "3/4", "1/2"]),
    over("20", "30", ["10", "11 1/2", "3/4", "1/2"]),
    over("20", "30", ["12", "13 1/2", "3/4", "1/2"]),
    over("20", "30", ["16", "17 1/2", "3/4", "1/2"]),
    over("30", "42", ["12", "13 1/2", "3/4", "1/2"]),
    over("30", "42", ["16", "17 1/2", "3/4", "1/2"]),
    over("30", "42", ["18", "19 1/2", "3/4", "1/2"]),
    over("30", "42", ["20", "21 1/2", "3/4", "1/2"]),
    over("42", "60", ["16", "20", "1", "3/4"]),
    over("42", "60", ["20", "24", "1", "3/4"]),
    over("42", "60", ["24", "29", "1 1/8", "7/8"]),
];
