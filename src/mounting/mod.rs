//! A wheel on a hub on a spindle, and the rules it must keep.

pub mod cautions;
mod declared;
mod discs;
pub mod facts;
pub mod fields;
pub mod marking;
pub mod parts;
pub mod rack;
pub mod rules;
mod seats;
pub mod sort;
pub mod terms;
pub mod verdict;
pub mod words;

pub use facts::Facts;
pub use fields::{FIELDS, Field, NoneMeans, Takes};
pub use marking::MarkingSays;
pub use parts::{Blotter, Datum, Flange, Hub, Key, Machine, Mounting, Nut, Seat, Spindle, Wheel};
pub use rack::{Columns, Counts, judge_columns};
pub use rules::{RULES, Rule, find_rule};
pub use terms::{Law, Terms};
pub use verdict::{Finding, Outcome, Verdict, check};
pub use words::{Material, Rotation, ThreadHand, YesNo};
