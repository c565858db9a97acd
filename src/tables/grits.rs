//! Grain sizes: FEPA F of bonded wheels, and those of diamond and cubic boron nitride.
//!
//! FEPA P, of coated abrasives, is another scale: no P number is in here.

use crate::source::{Source, Status};

/// Mean sizes of F4 to F220, which are sieved.
pub const F_SIEVED: Source =
    Source::new("fepa42-1", "FEPA 42-1 and ISO 8486-1", "", "mean sizes", Status::Memory);
/// Median sizes of F230 to F2000, which are settled in a liquid.
pub const F_SETTLED: Source =
    Source::new("fepa42-2", "FEPA 42-2 and ISO 8486-2", "", "median sizes", Status::Memory);
/// Sieves of the usual sizes of diamond and CBN.
pub const SUPERABRASIVE_READ: Source = Source::new(
    "fepa61-maker",
    "FEPA sizes as a wheel maker lists them with ASTM E11 and ISO 6106",
    "",
    "",
    Status::Reprint,
);
/// Sieves of their coarse and of their wide sizes.
pub const SUPERABRASIVE_RECALLED: Source =
    Source::new("fepa61", "ISO 6106 and FEPA 61", "", "coarse and wide sizes", Status::Memory);

/// An F number: the number and the mean size in tenths of µm.
pub type Grit = (u16, u32);

/// F4 to F220 by mean size of the sieved grain, F230 and finer by the median of the settled one.
#[rustfmt::skip]
pub const F_GRITS: [Grit; 39] = [
    (4, 48900), (5, 41250), (6, 34600), (7, 29000), (8, 24600), (10, 20850), (12, 17650),
    (14, 14700), (16, 12300), (20, 10400), (22, 8850), (24, 7450), (30, 6250), (36, 5250),
    (40, 4380), (46, 3700), (54, 3100), (60, 2600), (70, 2180), (80, 1850), (90, 1540),
    (100, 1290), (120, 1090), (150, 820), (180, 690), (220, 580), (230, 530), (240, 445),
    (280, 365), (320, 292), (360, 228), (400, 173), (500, 128), (600, 93), (800, 65),
    (1000, 45), (1200, 30), (1500, 20), (2000, 12),
];

/// The finest F number that is sieved.
pub const FINEST_SIEVED: u16 = 220;

/// A size of diamond or CBN: its number, and the sieves in µm that it stays on and passes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct SieveRange {
    /// Number after D or B.
    pub number: u16,
    /// Sieve that it stays on, in µm.
    pub lower: u16,
    /// Sieve that it passes, in µm.
    pub upper: u16,
    /// Whether the row was read; the others are from memory.
    pub read: bool,
}

const fn sieves(number: u16, upper: u16, lower: u16, read: bool) -> SieveRange {
    SieveRange { number, lower, upper, read }
}

/// Sizes of diamond and CBN, the close ones first.
#[rustfmt::skip]
pub const SUPERABRASIVE: [SieveRange; 25] = [
    sieves(1181, 1180, 1000, false),
    sieves(1001, 1000, 850, false),
    sieves(851, 850, 710, false),
    sieves(711, 710, 600, false),
    sieves(601, 600, 500, false),
    sieves(501, 500, 425, false),
    sieves(426, 425, 355, false),
    sieves(356, 355, 300, false),
    sieves(301, 300, 250, true),
    sieves(251, 250, 212, true),
    sieves(213, 212, 180, true),
    sieves(181, 180, 150, true),
    sieves(151, 150, 125, true),
    sieves(126, 125, 106, true),
    sieves(107, 106, 90, true),
    sieves(91, 90, 75, true),
    sieves(76, 75, 63, true),
    sieves(64, 63, 53, true),
    sieves(54, 53, 45, true),
    sieves(46, 45, 38, true),
    sieves(1182, 1180, 850, false),
    sieves(852, 850, 600, false),
    sieves(602, 600, 425, false),
    sieves(427, 425, 300, false),
    sieves(252, 250, 180, false),
];
