//! Published figures of grinding practice.
//!
//! Offered by name, never taken: specific energy, density of cutting points and the like are shop data.

use super::materials::Published;
use crate::source::{Source, Status};

const GROOVER: Source = Source::new(
    "groover-grinding",
    "Groover, Fundamentals of Modern Manufacturing",
    "4th edition",
    "chapter 25, grinding",
    Status::Read,
);
const MARINESCU: Source = Source::new(
    "marinescu-19",
    "Marinescu et al., Handbook of Machining with Grinding Wheels",
    "",
    "chapter 19",
    Status::Read,
);
const CUSTOM: Source =
    Source::new("practice", "common practice, no source", "", "", Status::Practice);
const MALKIN: Source = Source::new(
    "malkin-energy",
    "Malkin, Grinding Technology",
    "",
    "chip formation",
    Status::Memory,
);
const RECALLED: Source =
    Source::new("grinding-recalled", "texts on grinding", "", "usual ranges", Status::Memory);

const fn range(name: &'static str, of: [f64; 2], unit: &'static str, by: Source) -> Published {
    Published { name, least: of[0], greatest: of[1], unit, source: by }
}

/// Every source of [`RANGES`].
pub const SOURCES: [Source; 4] = [GROOVER, MARINESCU, MALKIN, RECALLED];

/// Usual ranges.
#[rustfmt::skip]
pub const RANGES: [Published; 22] = [
    range("wheel speed, cylindrical from outside", [1200.0, 2000.0], "m/min", GROOVER),
    range("wheel speed, centreless", [1200.0, 1800.0], "m/min", GROOVER),
    range("work speed, cylindrical from outside", [18.0, 30.0], "m/min", GROOVER),
    range("work speed, internal", [20.0, 60.0], "m/min", GROOVER),
    range("infeed, traverse grinding", [0.0075, 0.075], "mm", GROOVER),
    range("depth of truing, at most", [0.025, 0.025], "mm", GROOVER),
    range("chip width over thickness", [10.0, 20.0], "", GROOVER),
    range("grinding ratio", [95.0, 125.0], "", GROOVER),
    range("specific energy, easy work to many finishing jobs", [10.0, 200.0], "J/mm3", MARINESCU),
    range("specific energy", [50.0, 50.0], "J/mm3", CUSTOM),
    range("specific energy of chip formation in steel", [13.8, 13.8], "J/mm3", MALKIN),
    range("work speed, tool post", [50.0, 90.0], "sfpm", CUSTOM),
    range("wheel speed over work speed", [60.0, 100.0], "", RECALLED),
    range("overlap of dressing, rough", [2.0, 3.0], "", RECALLED),
    range("overlap of dressing, finish", [6.0, 20.0], "", RECALLED),
    range("depth of dressing", [0.01, 0.03], "mm", RECALLED),
    range("lead of dressing", [0.05, 0.2], "mm", RECALLED),
    range("equivalent chip thickness, precision", [0.05, 0.5], "um", RECALLED),
    range("removal rate of a width", [0.1, 10.0], "mm3/(mm s)", RECALLED),
    range("removal rate of a width, deep and fast", [50.0, 2000.0], "mm3/(mm s)", RECALLED),
    range("depth of cut, creep feed", [1.0, 15.0], "mm", RECALLED),
    range("exponent of fitted roughness", [0.15, 0.6], "", RECALLED),
];
