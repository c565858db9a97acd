//! The joint between hub, spindle and wheel: what fits into what.

pub mod class;
pub mod fits;
pub mod formula;
pub mod limits;
mod lookup;
pub mod nut;
pub mod thread;
pub mod warmth;

pub use class::{Class, Feature};
pub use fits::{Fit, FitBasis, FitKind, RankedFit, fit, fits_for};
pub use formula::{deviation_by_formula, grade_by_formula, tolerance_factor};
pub use limits::{Judgement, Limits, SizeOutcome, limits};
pub use nut::{
    Between, DIVIDING_CIRCLES, Division, Hole, HoleCircle, Jacked, JackingScrew, Nut, PinSpanner,
    PinSpannerFound, Rotation, Tightened, dividing, hand_force, hole_circle, loosening,
    spanner_torque,
};
pub use thread::{Series, TapDrill, Thread, ThreadClass, ThreadLimits, ThreeWires, thread};
pub use warmth::{At20, Expansion, Metal, at_20_c, published_expansion};

use crate::solid::screw::SCREWS;
use crate::source::Source;
use crate::tables::{expansion, iso286, threads};

/// Every source that this module cites beside the arithmetic.
pub const SOURCES: &[Source] = &[
    iso286::GRADES,
    iso286::GRADES_RECALLED,
    iso286::SHAFTS,
    iso286::SHAFT_J7,
    iso286::HOLES,
    iso286::SYMMETRIC,
    iso286::UP_TO_1_MM,
    iso286::LIMITS,
    iso286::LIMITS_RECALLED,
    iso286::LIMITS_PRACTICE,
    iso286::FORMULAS,
    iso286::preferred::FIRST_CHOICE,
    iso286::preferred::HOLE_BASIS,
    expansion::EXPANSIONS,
    warmth::REFERENCE,
    warmth::LINEAR,
    threads::METRIC,
    threads::METRIC_RECALLED,
    threads::METRIC_SERIES,
    threads::PROFILE,
    threads::METRIC_STRESS,
    threads::UNIFIED_RECALLED,
    threads::UNIFIED_COARSE_2B,
    threads::UNIFIED_STRESS,
    threads::DIN546,
    thread::DRILL_RULE,
    thread::THREE_WIRES,
    nut::TIGHTENED,
    nut::STRIPPING,
    nut::DIVIDING_PLATES,
    SCREWS,
];
