//! A wheel on a hub on a spindle, and the rules it must keep.

pub mod cautions;
pub mod facts;
pub mod fields;
pub mod parts;
pub mod rack;
pub mod rules;
pub mod terms;
pub mod verdict;

pub use facts::Facts;
pub use fields::{FIELDS, Field, Material, NoneMeans, Rotation, Takes, ThreadHand, YesNo};
pub use parts::{Blotter, Datum, Flange, Hub, Machine, Mounting, Nut, Spindle, Wheel};
pub use rack::{Columns, Counts, judge_columns};
pub use rules::{RULES, Rule, find_rule};
pub use terms::{Law, Terms};
pub use verdict::{Finding, Outcome, Verdict, check};
