//! Balance quality grades, and what superabrasive wheels are held to.

use crate::source::{Source, Status};

/// The grade itself: how fast the centre of mass goes round.
pub const GRADE: Source = Source::new(
    "iso21940-11",
    "ISO 21940-11 (before: ISO 1940-1)",
    "",
    "G = e ω; the identity, from memory",
    Status::Memory,
);
/// Which grade is for what.
pub const GRADE_USES: Source =
    Source::new("practice", "common practice, no source", "", "", Status::Practice);
const SERIES: Source =
    Source::new("iso21940-11-series", "ISO 21940-11", "", "steps of the grades", Status::Memory);

/// A grade, in mm/s, with what it is used for.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Grade {
    /// The number behind the G.
    pub number: f64,
    /// What it is used for; empty where only the step is known.
    pub used_for: &'static str,
    /// Who says so.
    pub source: Source,
}

const fn used(number: f64, used_for: &'static str) -> Grade {
    Grade { number, used_for, source: GRADE_USES }
}

const fn step(number: f64) -> Grade {
    Grade { number, used_for: "", source: SERIES }
}

/// Grades, finest first.
pub const GRADES: [Grade; 6] = [
    used(0.4, "spindles, precision grinders, gyroscopes"),
    used(1.0, "grinding machine drives"),
    used(2.5, "machine tools"),
    used(6.3, "machines in general"),
    step(16.0),
    step(40.0),
];

/// What JIS B 4131 lets a superabrasive wheel be out of balance.
pub const JIS_B4131: Source = Source::new(
    "jis-b4131",
    "JIS B 4131, as printed in Marinescu et al., Handbook of Machining with Grinding Wheels",
    "",
    "Table 4.5",
    Status::Reprint,
);
/// How far the sides of a superabrasive wheel may run out.
pub const SIDE_RUN_OUT: Source = Source::new(
    "marinescu-4.4",
    "Marinescu et al., Handbook of Machining with Grinding Wheels",
    "",
    "Table 4.4",
    Status::Read,
);

/// Greatest mass out of balance of a superabrasive wheel: over and up to so many mm, in g.
pub const SUPERABRASIVE_MASS: [(u16, u16, f64); 8] = [
    (75, 150, 0.5),
    (150, 200, 1.0),
    (200, 300, 2.0),
    (300, 400, 3.0),
    (400, 500, 5.0),
    (500, 600, 8.0),
    (600, 700, 12.0),
    (700, 750, 15.0),
];

/// Side run-out of a superabrasive wheel: over and up to so many mm, standard and high-speed CBN in µm.
pub const SUPERABRASIVE_RUN_OUT: [(u16, u16, u16, u16); 4] =
    [(0, 250, 20, 5), (250, 400, 30, 10), (400, 600, 50, 15), (600, 750, 70, 20)];
