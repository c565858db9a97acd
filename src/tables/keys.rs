//! Parallel keys: the key that goes with a shaft, how deep it sits, how long it is.
//!
//! Rows read as printed. The metric tables give the depths in tenths of a
//! millimetre, the inch table gives its sizes in 32nds of an inch.

use crate::source::{Source, Status};

/// Parallel keys of the usual form.
pub const DIN_6885_1: Source = Source::new(
    "din6885-1",
    "DIN 6885-1 (ISO 773)",
    "",
    "as printed by makers of couplings and standard parts",
    Status::Reprint,
);
/// Parallel keys that sit deeper in the shaft, for machine tools.
pub const DIN_6885_2: Source = Source::new(
    "din6885-2",
    "DIN 6885-2",
    "",
    "as printed by a maker of standard parts",
    Status::Reprint,
);
/// Inch keys by shaft diameter.
pub const B17_1: Source =
    Source::new("ansi-b17.1-1", "ANSI B17.1", "1967", "Table 1", Status::Reprint);
/// How inch keyseats are measured across shaft and bore.
pub const B17_1_DEPTHS: Source =
    Source::new("ansi-b17.1-2", "ANSI B17.1", "1967", "depth control, Table 2", Status::Reprint);
/// Lengths, chamfers and corner radii.
pub const LENGTHS_RECALLED: Source =
    Source::new("din6885-1-lengths", "DIN 6885-1 (ISO 773)", "", "lengths", Status::Memory);
/// Which tolerance classes make which fit, and h9 for the key's own width.
pub const FITS_RECALLED: Source = Source::new(
    "din6885-1-fits",
    "DIN 6885-1 (ISO 773), classes of free, normal and close keys",
    "",
    "",
    Status::Memory,
);

/// A step of shafts and the key that goes with it, in whole nm.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Metric {
    /// Shafts over this diameter; in the machine tool form, from it.
    pub over: i64,
    /// Shafts up to and including this diameter.
    pub up_to: i64,
    /// Width, b.
    pub width: i64,
    /// Height, h.
    pub height: i64,
    /// Depth in the shaft from its crown, t1.
    pub shaft_depth: i64,
    /// Depth in the hub from the top of its bore, t2.
    pub hub_depth: i64,
    /// How much deeper either may be; `None` where it was not read.
    pub depth_tolerance: Option<i64>,
}

const fn row(steps: [i64; 2], key: [i64; 2], tenths: [i64; 2], tolerance: Option<i64>) -> Metric {
    const MM: i64 = 1_000_000;
    let [over, up_to] = [steps[0] * MM, steps[1] * MM];
    let [width, height] = [key[0] * MM, key[1] * MM];
    let [shaft_depth, hub_depth] = [tenths[0] * MM / 10, tenths[1] * MM / 10];
    let depth_tolerance = match tolerance {
        Some(tenths) => Some(tenths * MM / 10),
        None => None,
    };
    Metric { over, up_to, width, height, shaft_depth, hub_depth, depth_tolerance }
}

/// DIN 6885-1: shafts over and up to, `b h`, `t1 t2` and their tolerance.
#[rustfmt::skip]
pub const PARALLEL: [Metric; 26] = [
    row([  6,   8], [  2,  2], [ 12,  10], Some(1)),
    row([  8,  10], [  3,  3], [ 18,  14], Some(1)),
    row([ 10,  12], [  4,  4], [ 25,  18], Some(1)),
    row([ 12,  17], [  5,  5], [ 30,  23], Some(1)),
    row([ 17,  22], [  6,  6], [ 35,  28], Some(1)),
    row([ 22,  30], [  8,  7], [ 40,  33], Some(2)),
    row([ 30,  38], [ 10,  8], [ 50,  33], Some(2)),
    row([ 38,  44], [ 12,  8], [ 50,  33], Some(2)),
    row([ 44,  50], [ 14,  9], [ 55,  38], Some(2)),
    row([ 50,  58], [ 16, 10], [ 60,  43], Some(2)),
    row([ 58,  65], [ 18, 11], [ 70,  44], Some(2)),
    row([ 65,  75], [ 20, 12], [ 75,  49], Some(2)),
    row([ 75,  85], [ 22, 14], [ 90,  54], Some(2)),
    row([ 85,  95], [ 25, 14], [ 90,  54], Some(2)),
    row([ 95, 110], [ 28, 16], [100,  64], Some(2)),
    row([110, 130], [ 32, 18], [110,  74], Some(2)),
    row([130, 150], [ 36, 20], [120,  84], Some(3)),
    row([150, 170], [ 40, 22], [130,  94], Some(3)),
    row([170, 200], [ 45, 25], [150, 104], Some(3)),
    row([200, 230], [ 50, 28], [170, 114], Some(3)),
    row([230, 260], [ 56, 32], [200, 124], Some(3)),
    row([260, 290], [ 63, 32], [200, 124], Some(3)),
    row([290, 330], [ 70, 36], [220, 144], Some(3)),
    row([330, 380], [ 80, 40], [250, 154], Some(3)),
    row([380, 440], [ 90, 45], [280, 174], Some(3)),
    row([440, 500], [100, 50], [310, 194], Some(3)),
];

/// DIN 6885-2: first and last shaft listed for a key, `b h`, `t1 t2`. The print
/// lists single shafts, and between two keys it leaves a gap.
#[rustfmt::skip]
pub const MACHINE_TOOL: [Metric; 7] = [
    row([12, 12], [ 4, 4], [30, 11], None),
    row([13, 17], [ 5, 5], [38, 13], None),
    row([18, 22], [ 6, 6], [44, 17], None),
    row([24, 30], [ 8, 7], [54, 17], None),
    row([32, 38], [10, 8], [60, 21], None),
    row([40, 44], [12, 8], [60, 21], None),
    row([45, 50], [14, 9], [65, 26], None),
];

/// A step of inch shafts, in whole nm.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Inch {
    /// Shafts over this diameter.
    pub over: i64,
    /// Shafts up to and including this diameter.
    pub up_to: i64,
    /// Width of the key, and height of a square one.
    pub width: i64,
    /// Height of a rectangular key; `None` where there is none.
    pub flat: Option<i64>,
}

const fn inch(over: i64, up_to: i64, width: i64, flat: Option<i64>) -> Inch {
    const STEP: i64 = 25_400_000 / 32;
    let flat = match flat {
        Some(flat) => Some(flat * STEP),
        None => None,
    };
    Inch { over: over * STEP, up_to: up_to * STEP, width: width * STEP, flat }
}

/// ANSI B17.1: shafts over and up to, width, height of the rectangular key, in 32nds.
#[rustfmt::skip]
pub const INCH: [Inch; 13] = [
    inch( 10,  14,  3, None),
    inch( 14,  18,  4, Some( 3)),
    inch( 18,  28,  6, Some( 4)),
    inch( 28,  40,  8, Some( 6)),
    inch( 40,  44, 10, Some( 8)),
    inch( 44,  56, 12, Some( 8)),
    inch( 56,  72, 16, Some(12)),
    inch( 72,  88, 20, Some(14)),
    inch( 88, 104, 24, Some(16)),
    inch(104, 120, 28, Some(20)),
    inch(120, 144, 32, Some(24)),
    inch(144, 176, 40, Some(28)),
    inch(176, 208, 48, Some(32)),
];

/// Clearance over an inch parallel key that the depth in the bore allows for: 0.005 in, in nm.
pub const B17_1_OVER_KEY: i64 = 127_000;

/// Lengths, chamfer and corner radius of a key of one width, in µm.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Trim {
    /// Width, in mm.
    pub width: i64,
    /// Least and greatest length, in mm.
    pub length: [i64; 2],
    /// Least and greatest chamfer of the key, in µm.
    pub chamfer: [i64; 2],
    /// Least and greatest radius in the corners of the keyway, in µm.
    pub radius: [i64; 2],
}

const fn trim(width: i64, length: [i64; 2], chamfer: [i64; 2], radius: [i64; 2]) -> Trim {
    Trim { width, length, chamfer, radius }
}

/// Width, lengths in mm, chamfer and radius in µm; all recalled.
#[rustfmt::skip]
pub const TRIMS: [Trim; 20] = [
    trim( 2, [  6,  20], [ 160,  250], [ 80,  160]),
    trim( 3, [  6,  36], [ 160,  250], [ 80,  160]),
    trim( 4, [  8,  45], [ 160,  250], [ 80,  160]),
    trim( 5, [ 10,  56], [ 250,  400], [160,  250]),
    trim( 6, [ 14,  70], [ 250,  400], [160,  250]),
    trim( 8, [ 18,  90], [ 250,  400], [160,  250]),
    trim(10, [ 22, 110], [ 400,  600], [250,  400]),
    trim(12, [ 28, 140], [ 400,  600], [250,  400]),
    trim(14, [ 36, 160], [ 400,  600], [250,  400]),
    trim(16, [ 45, 180], [ 400,  600], [250,  400]),
    trim(18, [ 50, 200], [ 400,  600], [250,  400]),
    trim(20, [ 56, 220], [ 600,  800], [400,  600]),
    trim(22, [ 63, 250], [ 600,  800], [400,  600]),
    trim(25, [ 70, 280], [ 600,  800], [400,  600]),
    trim(28, [ 80, 320], [ 600,  800], [400,  600]),
    trim(32, [ 90, 360], [ 600,  800], [400,  600]),
    trim(36, [100, 400], [1000, 1200], [700, 1000]),
    trim(40, [100, 400], [1000, 1200], [700, 1000]),
    trim(45, [110, 450], [1000, 1200], [700, 1000]),
    trim(50, [125, 500], [1000, 1200], [700, 1000]),
];

/// Lengths that keys are sold in, in mm; recalled.
pub const STANDARD_LENGTHS: [i64; 34] = [
    6, 8, 10, 12, 14, 16, 18, 20, 22, 25, 28, 32, 36, 40, 45, 50, 56, 63, 70, 80, 90, 100, 110,
    125, 140, 160, 180, 200, 220, 250, 280, 320, 360, 400,
];
