//! Racks of mountings as people keep them: tables in, reports out.

pub mod batch;
pub mod demo;
pub mod heading;
pub mod intake;
pub mod read;
pub mod report;

pub use batch::{Checked, Problem, Row, check_file};
pub use intake::{Cell, Intake};
pub use read::Options;
