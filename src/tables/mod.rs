//! Printed numbers, one file a standard.

pub mod flanges;
pub mod friction;
pub mod laws;
pub mod materials;
