//! Mechanics with no shop words: what joints and wheels are computed with.

pub mod chance;
pub mod rings;

pub use rings::{Compound, Held, Interface, Point, Ring, RingFound, compound};
