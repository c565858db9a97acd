//! Joints between parts: what a shop asks about them.

pub mod press;

pub use press::{ElasticLimit, PressFit, PressFitFound, Pressed, Smoothing, elastic_limit};
