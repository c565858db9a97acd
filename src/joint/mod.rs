//! The joint between hub, spindle and wheel: what fits into what.

pub mod braze;
pub mod centring;
pub mod class;
pub mod fits;
pub mod formula;
pub mod key;
pub mod key_stock;
pub mod key_strength;
pub mod keyway;
pub mod limits;
mod lookup;
pub mod nut;
pub mod press;
pub mod seat;
pub mod taper;
pub mod thread;
pub mod warmth;

pub use braze::{BrazedKey, BrazedKeyFound, Filler, GapOutcome, PublishedGap, published_gap};
pub use centring::{Centring, MoveTool, SlotMarks};
pub use class::{Class, Feature};
pub use fits::{Fit, FitBasis, FitKind, RankedFit, fit, fits_for};
pub use formula::{deviation_by_formula, grade_by_formula, tolerance_factor};
pub use key::{KeyFit, KeySize, KeyStandard, KeyTrim, KeyWidths, key_for};
pub use key_stock::{KeyStock, KeyStockFound, key_class};
pub use key_strength::{KeyStrength, KeyStrengthFound};
pub use keyway::{CutIn, Keyway, KeywayFound, chord_height};
pub use limits::{Judgement, Limits, SizeOutcome, limits};
pub use nut::{
    Between, DIVIDING_CIRCLES, Division, Hole, HoleCircle, Jacked, JackingScrew, Nut, PinSpanner,
    PinSpannerFound, Rotation, Tightened, dividing, hand_force, hole_circle, loosening,
    spanner_torque,
};
pub use press::{ElasticLimit, PressFit, PressFitFound, Pressed, Smoothing, elastic_limit};
pub use seat::{
    Along, AngleTolerance, Carries, HubStep, Print, PrintExpected, PrintRead, Pushed, RingSlices,
    Seat, SeatByRule, SeatFound, TiltRunOut, seat_by_rule, seat_rocking, tilt_run_out,
};
pub use taper::{AngleGrade, Taper, degrees_minutes_seconds, finest_grade, taper, taper_grade};
pub use thread::{Series, TapDrill, Thread, ThreadClass, ThreadLimits, ThreeWires, thread};
pub use warmth::{At20, Expansion, Metal, at_20_c, published_expansion};

use crate::solid::screw::SCREWS;
use crate::source::Source;
use crate::tables::tapers::{self, machine};
use crate::tables::{brazing, expansion, iso286, keys, threads};

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

/// Every source that keys, keyways and brazing cite beside the arithmetic.
pub const KEY_SOURCES: &[Source] = &[
    keys::DIN_6885_1,
    keys::DIN_6885_2,
    keys::B17_1,
    keys::B17_1_DEPTHS,
    keys::LENGTHS_RECALLED,
    keys::FITS_RECALLED,
    key_strength::KEY_STATICS,
    centring::EQUAL_MARKS,
    key_stock::PUSH,
    braze::ORDER_OF_WORK,
    brazing::SILVER_FLUX.1,
    brazing::SILVER_MAKER.1,
    brazing::SILVER_ATMOSPHERE.1,
    brazing::COPPER.1,
    brazing::NICKEL.1,
    brazing::COPPER_PHOSPHORUS.1,
    brazing::CAPILLARY.1,
];

/// Every source that seats cite beside the arithmetic.
pub const SEAT_SOURCES: &[Source] =
    &[seat::CONE_CONTACT, seat::CONE_STATICS, seat::RING_SLICES, seat::PRINTS];
/// Every source that tapers cite.
pub const TAPER_SOURCES: &[Source] = &[
    tapers::CONES,
    tapers::STEEP,
    tapers::PIPE,
    tapers::NOSES,
    machine::MORSE,
    machine::BROWN_SHARPE,
    machine::JARNO,
    machine::JACOBS,
    machine::METRIC,
    machine::STEEP,
    tapers::grades::GRADES,
    taper::TRIANGLE,
];
