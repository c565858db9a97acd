//! Standard cones: ratios and included angles, and the machine tapers by number.

pub mod grades;
pub mod machine;

use crate::source::{Source, Status};

/// Ratios and angles of cones for general use.
pub const CONES: Source = Source::new(
    "gost53440",
    "ISO 1119, as adopted in GOST R 53440",
    "2009",
    "Table 1",
    Status::Reprint,
);
/// The steep taper 7:24.
pub const STEEP: Source =
    Source::new("iso1119-7-24", "ISO 1119", "", "special taper 7:24", Status::Memory);
/// Taper of pipe threads.
pub const PIPE: Source =
    Source::new("pipe-taper", "taper of pipe threads, 1:16", "", "", Status::Memory);
/// Tapers in inches per foot that shops use for the noses of grinding spindles.
pub const NOSES: Source = Source::new(
    "taper-noses",
    "common practice, no source",
    "",
    "tapers of grinding-spindle noses",
    Status::Practice,
);

/// How a cone is defined.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Defined {
    /// So much on diameter over so much length.
    Ratio(f64, f64),
    /// By its included angle in degrees.
    Included(f64),
}

impl Defined {
    /// Change of radius over length, the tangent of the half angle.
    pub fn per_side(self) -> f64 {
        match self {
            Self::Ratio(diameter, length) => diameter / length / 2.0,
            Self::Included(degrees) => (degrees / 2.0).to_radians().tan(),
        }
    }
}

/// A standard cone without a size of its own.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Cone {
    /// Its name as printed.
    pub name: &'static str,
    /// How it is defined.
    pub defined: Defined,
    /// Where it stands.
    pub source: Source,
}

const fn ratio(name: &'static str, diameter: f64, length: f64, source: Source) -> Cone {
    Cone { name, defined: Defined::Ratio(diameter, length), source }
}

const fn included(name: &'static str, degrees: f64) -> Cone {
    Cone { name, defined: Defined::Included(degrees), source: CONES }
}

/// Standard cones: those of the table first, then what is recalled or practice.
#[rustfmt::skip]
pub const STANDARD: [Cone; 25] = [
    ratio("1:3", 1.0, 3.0, CONES),
    ratio("1:4", 1.0, 4.0, CONES),
    ratio("1:5", 1.0, 5.0, CONES),
    ratio("1:6", 1.0, 6.0, CONES),
    ratio("1:7", 1.0, 7.0, CONES),
    ratio("1:8", 1.0, 8.0, CONES),
    ratio("1:10", 1.0, 10.0, CONES),
    ratio("1:12", 1.0, 12.0, CONES),
    ratio("1:15", 1.0, 15.0, CONES),
    ratio("1:20", 1.0, 20.0, CONES),
    ratio("1:30", 1.0, 30.0, CONES),
    ratio("1:50", 1.0, 50.0, CONES),
    ratio("1:100", 1.0, 100.0, CONES),
    ratio("1:200", 1.0, 200.0, CONES),
    ratio("1:500", 1.0, 500.0, CONES),
    // These are defined by their angle; the ratio of the name is rounded.
    included("1:0.2886751", 120.0),
    included("1:0.5000000", 90.0),
    included("1:0.6516127", 75.0),
    included("1:0.8660254", 60.0),
    included("1:1.2071068", 45.0),
    included("1:1.8660254", 30.0),
    ratio("7:24", 7.0, 24.0, STEEP),
    ratio("1:16", 1.0, 16.0, PIPE),
    ratio("3 in/ft", 3.0, 12.0, NOSES),
    ratio("1.5 in/ft", 1.5, 12.0, NOSES),
];
