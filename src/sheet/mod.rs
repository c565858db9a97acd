//! Racks of mountings as people keep them: tables in, reports out.

pub mod batch;
mod cell;
pub mod demo;
mod find;
mod given;
pub mod heading;
pub mod intake;
mod kept;
mod layout;
mod marks;
pub mod read;
pub mod report;
mod row;
pub mod template;

pub use batch::{Checked, Problem, Row, check_file};
pub use cell::Cell;
#[cfg(feature = "python")]
pub(crate) use cell::Held;
pub use given::Given;
pub use intake::Intake;
pub use read::Options;
