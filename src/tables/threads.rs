//! Screw threads: ISO metric and unified, and round nuts.
//!
//! Figures read as printed: micrometres for metric threads, ten-thousandths of
//! an inch for unified ones.

use crate::source::{Source, Status};

/// Tolerances of metric threads, of which every figure was read.
pub const METRIC: Source = Source::new(
    "iso965-1",
    "ISO 965-1",
    "",
    "thread tolerances, as in the M profile of ASME B1.13M",
    Status::Reprint,
);
/// Tolerances of metric threads that rest on a recalled figure.
pub const METRIC_RECALLED: Source =
    Source::new("iso965-1-recalled", "ISO 965-1", "", "thread tolerances", Status::Memory);
/// Diameters and pitches of metric threads.
pub const METRIC_SERIES: Source =
    Source::new("iso261", "ISO 261", "", "diameters and pitches", Status::Memory);
/// The basic profile, the same for metric and unified threads.
pub const PROFILE: Source =
    Source::new("iso68-1", "ISO 68-1", "", "basic profile, 60°", Status::Computed);
/// Stress area of a metric thread.
pub const METRIC_STRESS: Source = Source::new(
    "iso898-1-stress-area",
    "ISO 898-1",
    "",
    "nominal stress area, (d2 + d3) / 2 as diameter",
    Status::Memory,
);
/// Limits of unified threads, class 2A, and 2B of fine threads.
pub const UNIFIED_RECALLED: Source =
    Source::new("asme-b1.1-recalled", "ASME B1.1", "", "limits of size", Status::Memory);
/// Limits of coarse unified threads, class 2B.
pub const UNIFIED_COARSE_2B: Source =
    Source::new("asme-b1.1-unc-2b", "ASME B1.1", "", "limits of size, UNC 2B", Status::Reprint);
/// Stress area of a unified thread.
pub const UNIFIED_STRESS: Source =
    Source::new("asme-b1.1-stress-area", "ASME B1.1", "", "tensile stress area", Status::Memory);
/// Slotted round nuts.
pub const DIN546: Source = Source::new(
    "din546",
    "DIN 546",
    "",
    "slotted round nuts, a fastener supplier's page",
    Status::Reprint,
);

/// Coarse series: diameter and pitch, in mm.
#[rustfmt::skip]
pub const COARSE: [(f64, f64); 42] = [
    (1.0, 0.25), (1.1, 0.25), (1.2, 0.25), (1.4, 0.3), (1.6, 0.35), (1.8, 0.35), (2.0, 0.4),
    (2.2, 0.45), (2.5, 0.45), (3.0, 0.5), (3.5, 0.6), (4.0, 0.7), (4.5, 0.75), (5.0, 0.8),
    (6.0, 1.0), (7.0, 1.0), (8.0, 1.25), (9.0, 1.25), (10.0, 1.5), (11.0, 1.5), (12.0, 1.75),
    (14.0, 2.0), (16.0, 2.0), (18.0, 2.5), (20.0, 2.5), (22.0, 2.5), (24.0, 3.0), (27.0, 3.0),
    (30.0, 3.5), (33.0, 3.5), (36.0, 4.0), (39.0, 4.0), (42.0, 4.5), (45.0, 4.5), (48.0, 5.0),
    (52.0, 5.0), (56.0, 5.5), (60.0, 5.5), (64.0, 6.0), (68.0, 6.0), (125.0, 6.0), (300.0, 8.0),
];
/// How many of [`COARSE`] are coarse threads; the last two rows say which pitches larger diameters bear.
pub const COARSE_SIZES: usize = 40;
/// Greatest diameter of the series, in mm.
pub const GREATEST_MM: f64 = 300.0;

/// What belongs to a pitch, in µm. `0` is a figure that the print lacks.
pub struct ByPitch {
    /// Pitch, in µm.
    pub pitch: i64,
    /// Deviation es of e and of g, as printed, below zero; EI of G is the latter with the other sign.
    pub es: [i64; 2],
    /// Td, tolerance of the external thread's major diameter, grades 4 and 6.
    pub major: [i64; 2],
    /// TD1, tolerance of the internal thread's minor diameter, grades 4, 5, 6 and 7.
    pub minor: [i64; 4],
    /// Whether es of g and Td grade 6 were read; the other grades are recalled.
    pub external_read: bool,
    /// Whether TD1 grade 6 was read.
    pub internal_read: bool,
}

const fn by_pitch(
    pitch: i64,
    es: [i64; 2],
    major: [i64; 2],
    minor: [i64; 4],
    [external_read, internal_read]: [bool; 2],
) -> ByPitch {
    ByPitch { pitch, es, major, minor, external_read, internal_read }
}

const BOTH: [bool; 2] = [true, true];
const EXTERNAL: [bool; 2] = [true, false];
const INTERNAL: [bool; 2] = [false, true];
const NEITHER: [bool; 2] = [false, false];

/// Deviations and tolerances that go by the pitch alone.
#[rustfmt::skip]
pub const BY_PITCH: [ByPitch; 25] = [
    by_pitch( 200, [   0,  -17], [ 36,  56], [ 38,   0,   0,    0], NEITHER),
    by_pitch( 250, [   0,  -18], [ 42,  67], [ 45,  56,   0,    0], NEITHER),
    by_pitch( 300, [   0,  -18], [ 48,  75], [ 53,  67,  85,    0], NEITHER),
    by_pitch( 350, [   0,  -19], [ 53,  85], [ 63,  80, 100,    0], EXTERNAL),
    by_pitch( 400, [   0,  -19], [ 60,  95], [ 71,  90, 112,    0], EXTERNAL),
    by_pitch( 450, [   0,  -20], [ 63, 100], [ 80, 100, 125,    0], EXTERNAL),
    by_pitch( 500, [ -50,  -20], [ 67, 106], [ 90, 112, 140,  180], EXTERNAL),
    by_pitch( 600, [ -53,  -21], [ 80, 125], [100, 125, 160,  200], EXTERNAL),
    by_pitch( 700, [ -56,  -22], [ 90, 140], [112, 140, 180,  224], EXTERNAL),
    by_pitch( 750, [ -56,  -22], [ 90, 140], [118, 150, 190,  236], BOTH),
    by_pitch( 800, [ -60,  -24], [ 95, 150], [125, 160, 200,  250], EXTERNAL),
    by_pitch(1000, [ -60,  -26], [112, 180], [150, 190, 236,  300], BOTH),
    by_pitch(1250, [ -63,  -28], [132, 212], [170, 212, 265,  335], BOTH),
    by_pitch(1500, [ -67,  -32], [150, 236], [190, 236, 300,  375], BOTH),
    by_pitch(1750, [ -71,  -34], [170, 265], [212, 265, 335,  425], INTERNAL),
    by_pitch(2000, [ -71,  -38], [180, 280], [236, 300, 375,  475], BOTH),
    by_pitch(2500, [ -80,  -42], [212, 335], [280, 355, 450,  560], NEITHER),
    by_pitch(3000, [ -85,  -48], [236, 375], [315, 400, 500,  630], NEITHER),
    by_pitch(3500, [ -90,  -53], [265, 425], [355, 450, 560,  710], NEITHER),
    by_pitch(4000, [ -95,  -60], [300, 475], [375, 475, 600,  750], NEITHER),
    by_pitch(4500, [-100,  -63], [315, 500], [425, 530, 670,  850], NEITHER),
    by_pitch(5000, [-106,  -71], [335, 530], [450, 560, 710,  900], NEITHER),
    by_pitch(5500, [-112,  -75], [355, 560], [475, 600, 750,  950], NEITHER),
    by_pitch(6000, [-118,  -80], [375, 600], [500, 630, 800, 1000], EXTERNAL),
    by_pitch(8000, [-140, -100], [450, 710], [630, 800, 1000, 1250], NEITHER),
];

/// Tolerances of the pitch diameter for a range of diameters and a pitch, in µm. `0` is a figure
/// that the print lacks.
pub struct ByDiameter {
    /// Diameters above this, in µm.
    pub over: i64,
    /// Up to and including this, in µm.
    pub up_to: i64,
    /// Pitch, in µm.
    pub pitch: i64,
    /// Td2, external threads, grades 4 and 6.
    pub external: [i64; 2],
    /// TD2, internal threads, grades 4, 5, 6 and 7.
    pub internal: [i64; 4],
    /// Whether Td2 grade 6 was read; the other grades are recalled.
    pub external_read: bool,
    /// Whether TD2 grade 6 was read.
    pub internal_read: bool,
}

const fn by_diameter(
    [over, up_to]: [i64; 2],
    pitch: i64,
    external: [i64; 2],
    internal: [i64; 4],
    [external_read, internal_read]: [bool; 2],
) -> ByDiameter {
    ByDiameter { over, up_to, pitch, external, internal, external_read, internal_read }
}

const D1: [i64; 2] = [990, 1_400];
const D2: [i64; 2] = [1_400, 2_800];
const D3: [i64; 2] = [2_800, 5_600];
const D4: [i64; 2] = [5_600, 11_200];
const D5: [i64; 2] = [11_200, 22_400];
const D6: [i64; 2] = [22_400, 45_000];
const D7: [i64; 2] = [45_000, 90_000];
const D8: [i64; 2] = [90_000, 180_000];
const D9: [i64; 2] = [180_000, 355_000];

/// Tolerances of the pitch diameter. M12×0.75 is from the row read for its internal thread.
#[rustfmt::skip]
pub const BY_DIAMETER: [ByDiameter; 48] = [
    by_diameter(D1,  200, [ 30,  48], [ 40,   0,   0,   0], NEITHER),
    by_diameter(D1,  250, [ 34,  53], [ 45,  56,   0,   0], NEITHER),
    by_diameter(D1,  300, [ 36,  56], [ 48,  60,  75,   0], NEITHER),
    by_diameter(D2,  200, [ 32,  50], [ 42,   0,   0,   0], NEITHER),
    by_diameter(D2,  250, [ 36,  56], [ 48,  60,   0,   0], NEITHER),
    by_diameter(D2,  350, [ 40,  63], [ 53,  67,  85,   0], EXTERNAL),
    by_diameter(D2,  400, [ 42,  67], [ 56,  71,  90,   0], EXTERNAL),
    by_diameter(D2,  450, [ 45,  71], [ 60,  75,  95,   0], EXTERNAL),
    by_diameter(D3,  350, [ 42,  67], [ 56,  71,  90,   0], NEITHER),
    by_diameter(D3,  500, [ 48,  75], [ 63,  80, 100, 125], EXTERNAL),
    by_diameter(D3,  600, [ 53,  85], [ 71,  90, 112, 140], EXTERNAL),
    by_diameter(D3,  700, [ 56,  90], [ 75,  95, 118, 150], BOTH),
    by_diameter(D3,  750, [ 56,  90], [ 75,  95, 118, 150], NEITHER),
    by_diameter(D3,  800, [ 60,  95], [ 80, 100, 125, 160], BOTH),
    by_diameter(D4,  750, [ 63, 100], [ 85, 106, 132, 170], BOTH),
    by_diameter(D4, 1000, [ 71, 112], [ 95, 118, 150, 190], BOTH),
    by_diameter(D4, 1250, [ 75, 118], [100, 125, 160, 200], BOTH),
    by_diameter(D4, 1500, [ 85, 132], [112, 140, 180, 224], BOTH),
    by_diameter(D5,  750, [ 67, 106], [ 90, 112, 140, 180], INTERNAL),
    by_diameter(D5, 1000, [ 75, 118], [100, 125, 160, 200], BOTH),
    by_diameter(D5, 1250, [ 85, 132], [112, 140, 180, 224], BOTH),
    by_diameter(D5, 1500, [ 90, 140], [118, 150, 190, 236], INTERNAL),
    by_diameter(D5, 1750, [ 95, 150], [125, 160, 200, 250], INTERNAL),
    by_diameter(D5, 2000, [100, 160], [132, 170, 212, 265], INTERNAL),
    by_diameter(D5, 2500, [106, 170], [140, 180, 224, 280], NEITHER),
    by_diameter(D6, 1000, [ 80, 125], [106, 132, 170, 212], NEITHER),
    by_diameter(D6, 1500, [ 95, 150], [125, 160, 200, 250], NEITHER),
    by_diameter(D6, 2000, [106, 170], [140, 180, 224, 280], NEITHER),
    by_diameter(D6, 3000, [125, 200], [170, 212, 265, 335], NEITHER),
    by_diameter(D6, 3500, [132, 212], [180, 224, 280, 355], NEITHER),
    by_diameter(D6, 4000, [140, 224], [190, 236, 300, 375], NEITHER),
    by_diameter(D6, 4500, [150, 236], [200, 250, 315, 400], NEITHER),
    by_diameter(D7, 1500, [100, 160], [132, 170, 212, 265], EXTERNAL),
    by_diameter(D7, 2000, [112, 180], [150, 190, 236, 300], EXTERNAL),
    by_diameter(D7, 3000, [132, 212], [180, 224, 280, 355], NEITHER),
    by_diameter(D7, 4000, [150, 236], [200, 250, 315, 400], NEITHER),
    by_diameter(D7, 5000, [160, 250], [212, 265, 335, 425], NEITHER),
    by_diameter(D7, 5500, [170, 265], [224, 280, 355, 450], NEITHER),
    by_diameter(D7, 6000, [180, 280], [236, 300, 375, 475], EXTERNAL),
    by_diameter(D8, 2000, [118, 190], [160, 200, 250, 315], EXTERNAL),
    by_diameter(D8, 3000, [140, 224], [190, 236, 300, 375], NEITHER),
    by_diameter(D8, 4000, [160, 250], [212, 265, 335, 425], NEITHER),
    by_diameter(D8, 6000, [190, 300], [250, 315, 400, 500], NEITHER),
    by_diameter(D8, 8000, [212, 335], [280, 355, 450, 560], NEITHER),
    by_diameter(D9, 3000, [160, 250], [212, 265, 335, 425], NEITHER),
    by_diameter(D9, 4000, [180, 280], [236, 300, 375, 475], NEITHER),
    by_diameter(D9, 6000, [200, 315], [265, 335, 425, 530], NEITHER),
    by_diameter(D9, 8000, [224, 355], [300, 375, 475, 600], NEITHER),
];

/// A unified thread, in ten-thousandths of an inch.
pub struct Unified {
    /// Size as it is written: a number for screws below ¼ in, or inches.
    pub size: &'static str,
    /// Major diameter.
    pub diameter: i64,
    /// Threads an inch.
    pub threads: i64,
    /// Allowance of class 2A, taken off every diameter.
    pub allowance: i64,
    /// Tolerance of the major diameter, 2A.
    pub major: i64,
    /// Tolerance of the pitch diameter, 2A.
    pub external: i64,
    /// Tolerance of the pitch diameter, 2B.
    pub internal: i64,
    /// Least and greatest minor diameter, 2B.
    pub minor: [i64; 2],
}

const fn unified(
    size: &'static str,
    [diameter, threads]: [i64; 2],
    [allowance, major, external, internal]: [i64; 4],
    minor: [i64; 2],
) -> Unified {
    Unified { size, diameter, threads, allowance, major, external, internal, minor }
}

/// Coarse unified threads, UNC.
#[rustfmt::skip]
pub const UNC: [Unified; 20] = [
    unified("#4",    [ 1120, 40], [ 8,  51, 25,  33], [  849,   939]),
    unified("#5",    [ 1250, 40], [ 8,  51, 26,  33], [  979,  1062]),
    unified("#6",    [ 1380, 32], [ 8,  60, 28,  37], [ 1040,  1140]),
    unified("#8",    [ 1640, 32], [ 9,  60, 29,  38], [ 1300,  1390]),
    unified("#10",   [ 1900, 24], [10,  72, 33,  43], [ 1450,  1560]),
    unified("#12",   [ 2160, 24], [10,  72, 34,  44], [ 1710,  1810]),
    unified("1/4",   [ 2500, 20], [11,  81, 37,  49], [ 1960,  2070]),
    unified("5/16",  [ 3125, 18], [12,  87, 40,  53], [ 2520,  2650]),
    unified("3/8",   [ 3750, 16], [13,  94, 44,  57], [ 3070,  3210]),
    unified("7/16",  [ 4375, 14], [14, 103, 47,  61], [ 3600,  3760]),
    unified("1/2",   [ 5000, 13], [15, 109, 50,  65], [ 4170,  4340]),
    unified("9/16",  [ 5625, 12], [16, 114, 52,  68], [ 4720,  4900]),
    unified("5/8",   [ 6250, 11], [16, 121, 55,  72], [ 5270,  5460]),
    unified("3/4",   [ 7500, 10], [18, 129, 59,  77], [ 6420,  6630]),
    unified("7/8",   [ 8750,  9], [19, 139, 63,  82], [ 7550,  7780]),
    unified("1",     [10000,  8], [20, 150, 68,  88], [ 8650,  8900]),
    unified("1-1/8", [11250,  7], [22, 164, 72,  94], [ 9700,  9980]),
    unified("1-1/4", [12500,  7], [22, 164, 74,  96], [10950, 11230]),
    unified("1-3/8", [13750,  6], [24, 182, 80, 104], [11950, 12250]),
    unified("1-1/2", [15000,  6], [24, 182, 81, 105], [13200, 13500]),
];

/// Fine unified threads, UNF.
#[rustfmt::skip]
pub const UNF: [Unified; 20] = [
    unified("#4",    [ 1120, 48], [ 7,  45, 24,  31], [  894,   968]),
    unified("#5",    [ 1250, 44], [ 7,  48, 25,  32], [ 1004,  1079]),
    unified("#6",    [ 1380, 40], [ 8,  51, 26,  34], [ 1110,  1190]),
    unified("#8",    [ 1640, 36], [ 8,  55, 28,  36], [ 1340,  1420]),
    unified("#10",   [ 1900, 32], [ 9,  60, 30,  39], [ 1560,  1640]),
    unified("#12",   [ 2160, 28], [10,  65, 32,  42], [ 1770,  1860]),
    unified("1/4",   [ 2500, 28], [10,  65, 33,  43], [ 2110,  2200]),
    unified("5/16",  [ 3125, 24], [11,  72, 37,  48], [ 2670,  2770]),
    unified("3/8",   [ 3750, 24], [11,  72, 38,  49], [ 3300,  3400]),
    unified("7/16",  [ 4375, 20], [13,  81, 42,  54], [ 3830,  3950]),
    unified("1/2",   [ 5000, 20], [13,  81, 43,  56], [ 4460,  4570]),
    unified("9/16",  [ 5625, 18], [14,  87, 45,  59], [ 5020,  5150]),
    unified("5/8",   [ 6250, 18], [14,  87, 47,  60], [ 5650,  5780]),
    unified("3/4",   [ 7500, 16], [15,  94, 50,  65], [ 6820,  6960]),
    unified("7/8",   [ 8750, 14], [16, 103, 54,  70], [ 7980,  8140]),
    unified("1",     [10000, 12], [18, 114, 59,  76], [ 9100,  9280]),
    unified("1-1/8", [11250, 12], [18, 114, 60,  78], [10350, 10530]),
    unified("1-1/4", [12500, 12], [18, 114, 62,  80], [11600, 11780]),
    unified("1-3/8", [13750, 12], [19, 114, 63,  82], [12850, 13030]),
    unified("1-1/2", [15000, 12], [19, 114, 64,  83], [14100, 14280]),
];

/// A slotted round nut, in mm.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RoundNut {
    /// Diameter of its thread.
    pub diameter: f64,
    /// Pitch of its thread.
    pub pitch: f64,
    /// Greatest outside diameter.
    pub outside: f64,
    /// Greatest thickness.
    pub thickness: f64,
}

const fn round_nut(diameter: f64, pitch: f64, outside: f64, thickness: f64) -> RoundNut {
    RoundNut { diameter, pitch, outside, thickness }
}

/// Slotted round nuts of [`DIN546`].
pub const ROUND_NUTS: [RoundNut; 7] = [
    round_nut(8.0, 1.25, 14.0, 6.5),
    round_nut(10.0, 1.5, 18.0, 8.0),
    round_nut(12.0, 1.75, 21.0, 10.0),
    round_nut(14.0, 2.0, 24.0, 11.0),
    round_nut(16.0, 2.0, 26.0, 12.0),
    round_nut(18.0, 2.5, 29.0, 13.0),
    round_nut(20.0, 2.5, 32.0, 14.0),
];

/// What 6g with 6H, and 2A with 2B, leave at least of the basic shear areas of engaged threads with
/// pitches from 0.5 mm on: the least of all rows of the tables, rounded down.
pub const LEAST_SHEAR_SHARE: f64 = 0.65;
