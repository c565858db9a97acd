//! The ISO system of limits and fits: standard tolerances, fundamental
//! deviations and the fits to prefer.
//!
//! Figures read as printed, in micrometres; the tables hold whole nanometres,
//! because JS halves an odd tolerance. The upper end of a step belongs to it.

pub mod deviations;
pub mod grades;
pub mod preferred;

use crate::source::{Source, Status};

const fn of(key: &'static str, locator: &'static str, status: Status) -> Source {
    Source::new(key, "ISO 286-1", "", locator, status)
}

/// Standard tolerances that a reprint was read for.
pub const GRADES: Source = of("iso286-1-it", "standard tolerance grades", Status::Reprint);
/// Standard tolerances that are recalled.
pub const GRADES_RECALLED: Source =
    of("iso286-1-it-recalled", "standard tolerance grades", Status::Memory);
/// Fundamental deviations of shafts.
pub const SHAFTS: Source =
    of("iso286-1-shafts", "fundamental deviations of shafts", Status::Reprint);
/// Deviation j7 up to 180 mm, for which no print was found.
pub const SHAFT_J7: Source =
    of("iso286-1-j7", "fundamental deviation j7 up to 180 mm", Status::Practice);
/// Fundamental deviations of holes, with Δ.
pub const HOLES: Source = of("iso286-1-holes", "fundamental deviations of holes", Status::Reprint);
/// JS and js: half of the tolerance on either side, the half micrometre kept.
pub const SYMMETRIC: Source = of("iso286-1-js", "JS and js, half of the grade", Status::Reprint);
/// What the standard keeps away from sizes of 1 mm and less.
pub const UP_TO_1_MM: Source =
    of("iso286-1-1mm", "classes not for sizes up to 1 mm", Status::Memory);
/// Limits of size of which every figure was read in a reprint.
pub const LIMITS: Source = of("iso286-1", "tolerances and deviations", Status::Reprint);
/// Limits of size that rest on a figure from memory.
pub const LIMITS_RECALLED: Source =
    of("iso286-1-recalled", "tolerances and deviations", Status::Memory);
/// Limits of size that rest on a figure of practice.
pub const LIMITS_PRACTICE: Source =
    of("iso286-1-practice", "tolerances and deviations", Status::Practice);
/// The formulas that the tables were rounded from.
pub const FORMULAS: Source = of(
    "iso286-1-formulas",
    "formulas behind the tables, in Machine Drawing (Narayana), Table 15.4",
    Status::Reprint,
);

/// A figure that the print leaves out.
pub const NONE: i32 = i32::MIN;

/// A printed row in micrometres, such as `0.8 1.2 2`, in nanometres; `/` is [`NONE`].
const fn row<const N: usize>(printed: &str) -> [i32; N] {
    let text = printed.as_bytes();
    let mut all = [NONE; N];
    let (mut at, mut column) = (0, 0);
    while at < text.len() {
        let (mut nm, mut sign, mut scale, mut given) = (0, 1, 1000, true);
        let mut below = false;
        while at < text.len() && text[at] != b' ' {
            match text[at] {
                b'/' => given = false,
                b'-' => sign = -1,
                b'.' => below = true,
                digit => {
                    nm = nm * 10 + (digit - b'0') as i32;
                    if below {
                        scale /= 10;
                    }
                }
            }
            at += 1;
        }
        if given {
            all[column] = sign * nm * scale;
        }
        column += 1;
        at += 1;
    }
    assert!(column == N, "a row of a table is short");
    all
}

/// Millimetres in whole nanometres.
const fn mm(size: i64) -> i64 {
    size * 1_000_000
}

/// Upper ends of the main steps of nominal size, in nm.
pub const STEPS: [i64; 21] = [
    mm(3),
    mm(6),
    mm(10),
    mm(18),
    mm(30),
    mm(50),
    mm(80),
    mm(120),
    mm(180),
    mm(250),
    mm(315),
    mm(400),
    mm(500),
    mm(630),
    mm(800),
    mm(1000),
    mm(1250),
    mm(1600),
    mm(2000),
    mm(2500),
    mm(3150),
];

/// Upper ends of the steps into which the main ones are split for a to c and r to zc, in nm.
pub const SUBSTEPS: [i64; 41] = [
    mm(3),
    mm(6),
    mm(10),
    mm(14),
    mm(18),
    mm(24),
    mm(30),
    mm(40),
    mm(50),
    mm(65),
    mm(80),
    mm(100),
    mm(120),
    mm(140),
    mm(160),
    mm(180),
    mm(200),
    mm(225),
    mm(250),
    mm(280),
    mm(315),
    mm(355),
    mm(400),
    mm(450),
    mm(500),
    mm(560),
    mm(630),
    mm(710),
    mm(800),
    mm(900),
    mm(1000),
    mm(1120),
    mm(1250),
    mm(1400),
    mm(1600),
    mm(1800),
    mm(2000),
    mm(2240),
    mm(2500),
    mm(2800),
    mm(3150),
];

/// The step that a nominal size in nm belongs to; the number of steps where it is beyond them.
pub fn step(steps: &[i64], nominal: i64) -> usize {
    steps.partition_point(|up_to| *up_to < nominal)
}

/// Lower and upper end of a step, in nm.
pub fn ends(steps: &[i64], step: usize) -> (i64, i64) {
    let end = |at: usize| steps.get(at).copied().unwrap_or(mm(3150));
    (step.checked_sub(1).map_or(0, end), end(step))
}
