//! Mechanics with no shop words: what joints and wheels are computed with.

pub mod chance;
pub mod cone;
pub mod disc;
pub mod plate;
pub mod rings;
pub mod rotor;
pub mod screw;

pub use disc::{ClampedDisc, InPlane, clamped_disc, critical_disc_speed, disc_frequency};
pub use plate::{RingPlate, Sag};
pub use rings::{Compound, Held, Interface, Point, Ring, RingFound, compound};
pub use rotor::UnbalanceVector;
pub use screw::{Face, Screw};
