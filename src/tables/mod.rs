//! Printed numbers, one file a standard.

pub mod brazing;
pub mod expansion;
pub mod flanges;
pub mod iso286;
pub mod keys;
pub mod laws;
