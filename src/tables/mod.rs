//! Printed numbers, one file a standard.

pub mod flanges;
pub mod laws;
