//! The wheel: how fast it may turn, and what may hold it.

pub mod blotter;
pub(crate) mod demands;
pub mod flange;
pub mod hole;
pub mod marking;
pub mod shape;
pub mod speed;
pub mod strength;

pub use blotter::{BlotterLimits, BlotterNeed, blotter_limits};
pub use flange::{FlangeKind, FlangeLimits, Governs, Limit, flange_limits};
pub use hole::{HoleLimits, hole_limits};
pub use marking::{Grain, Marking, Restriction, ShapeMark, Unread, read_marking};
pub use shape::{Abrasive, Bond, Fastening, MachineKind, Shape};
pub use speed::{SpeedForRim, largest_diameter, rim_speed, rim_speed_column, speed_for_rim};
pub use strength::{Fragment, Strength, StrengthFound, WheelRings, rings};
