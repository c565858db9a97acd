//! Dimensions, tolerances and safety checks for grinding-wheel hubs and the
//! wheels mounted on them.
//!
//! A *mounting* is one wheel on one hub on one spindle. [`mounting::check`]
//! judges one; with the feature `sheets`, [`sheet::check_file`] judges a rack
//! of them. The kernels behind the rules are in [`wheel`].
//!
//! The wheel's own marking, the machine's manual, local law and a competent
//! person come before anything that this crate says.

#![warn(missing_docs)]
// No panic reaches a user.
#![warn(clippy::unwrap_used, clippy::expect_used, clippy::panic, clippy::todo)]

pub mod draw;
pub mod error;
pub mod gauge;
pub mod joint;
pub mod mounting;
#[cfg(feature = "python")]
mod python;
#[cfg(feature = "sheets")]
pub mod sheet;
pub mod solid;
pub mod source;
pub mod tables;
pub mod units;
pub mod wheel;
pub mod working;

pub use error::{Error, ErrorKind};
