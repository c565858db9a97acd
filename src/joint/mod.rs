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
pub use warmth::{At20, Expansion, Metal, at_20_c, published_expansion};
