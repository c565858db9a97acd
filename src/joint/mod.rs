//! The joint between hub, spindle and wheel: what fits into what.

pub mod class;
pub mod fits;
pub mod formula;
pub mod limits;
pub mod warmth;

pub use class::{Class, Feature};
pub use fits::{Fit, FitBasis, FitKind, RankedFit, fit, fits_for};
pub use formula::{deviation_by_formula, grade_by_formula, tolerance_factor};
pub use limits::{Judgement, Limits, SizeOutcome, limits};
pub use warmth::{At20, Expansion, Metal, at_20_c, published_expansion};
