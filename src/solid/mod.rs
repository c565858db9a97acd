//! Mechanics without the words of a shop.

pub mod screw;

pub use screw::{Face, Screw};
