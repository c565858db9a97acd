//! Printed numbers, one file a standard.

pub mod expansion;
pub mod flanges;
pub mod iso286;
pub mod laws;
pub mod threads;
