//! Drawings: a scene of shapes in mm, and one writer that makes SVG of it.
//!
//! A drawing is made in two steps. [`section()`], [`seat_drawing`], [`margin_bar`] and the
//! pictures of balance answer with
//! a [`Scene`], which can be measured; [`svg()`] writes any scene. Nothing
//! here judges: a drawing shows what was given, to scale, and shows what was
//! not given dashed or not at all.

pub mod margin;
pub mod path;
pub mod polar;
mod profile;
pub mod scene;
pub mod seat;
pub mod section;
mod sizes;
pub mod svg;

pub use margin::margin_bar;
pub use path::torque_path;
pub use polar::{trials_picture, unbalance_picture, weights_picture};
pub use scene::{
    Anchor, Bounds, Dimension, Direction, Fill, Mark, Point, Reach, Scene, Stroke, Text,
};
pub use seat::{SeatDrawn, seat_drawing};
pub use section::{NoSection, Scale, Section, section};
pub use svg::svg;
