//! Tolerance grades of cone angles AT1 to AT12, from memory.

use crate::source::{Source, Status};

/// Where the grades come from.
pub const GRADES: Source = Source::new(
    "iso1947",
    "ISO 1947, tolerance grades of cone angles AT1 to AT12",
    "",
    "",
    Status::Memory,
);

/// Upper ends of the steps of length in mm; the first begins over 6 mm.
pub const STEPS: [f64; 10] = [10.0, 16.0, 25.0, 40.0, 63.0, 100.0, 160.0, 250.0, 400.0, 630.0];
/// Lengths have grades from above this, in mm.
pub const OVER: f64 = 6.0;

/// AT12 of the first step and then always the next smaller, in µrad: each step of length goes
/// one place on, each finer grade two.
const TOLERANCES: [f64; 32] = [
    8000.0, 6300.0, 5000.0, 4000.0, 3150.0, 2500.0, 2000.0, 1600.0, 1250.0, 1000.0, 800.0, 630.0,
    500.0, 400.0, 315.0, 250.0, 200.0, 160.0, 125.0, 100.0, 80.0, 63.0, 50.0, 40.0, 31.5, 25.0,
    20.0, 16.0, 12.5, 10.0, 8.0, 6.3,
];

/// Tolerance of the cone's whole angle in µrad, of a grade from 1 to 12 and a step of [`STEPS`].
pub fn tolerance(grade: usize, step: usize) -> Option<f64> {
    let coarser = 12_usize.checked_sub(grade).filter(|_| grade > 0)?;
    TOLERANCES.get(2 * coarser + step).copied().filter(|_| step < STEPS.len())
}
