//! Racks of mountings as people keep them: tables in, reports out.

pub mod batch;
mod cell;
pub mod demo;
pub mod heading;
pub mod intake;
mod kept;
mod layout;
pub mod read;
pub mod report;
pub mod template;

pub use batch::{Checked, Problem, Row, check_file};
pub use cell::Cell;
#[cfg(feature = "python")]
pub(crate) use cell::Held;
pub use intake::{Given, Intake};
pub use read::Options;
