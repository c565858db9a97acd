//! The wheel: how fast it may turn, and what may hold it.

pub mod balance;
pub mod blotter;
pub(crate) mod demands;
pub mod flange;
pub mod grind;
pub mod holding;
pub mod hole;
pub mod marking;
pub mod shape;
pub mod speed;
pub mod strength;
pub mod thin;

pub use balance::{
    Balance, BalanceFound, BalanceWeights, HeavySpot, Influence, InfluenceFound, RunsOn,
    SharedBalance, SuperabrasiveLimits, TrialRun, TrialRuns, Truing, TruingFound, UnbalanceSum,
    WeightsFound, influence_coefficient, shared_balance, superabrasive_limits, trial_runs,
    unbalance,
};
pub use blotter::{BlotterLimits, BlotterNeed, blotter_limits};
pub use flange::{FlangeKind, FlangeLimits, Governs, Limit, flange_limits};
pub use grind::{
    Dress, DressFeed, DressFound, Grind, GrindFound, GrindKind, Stub, StubFound, WearFound,
    WornSpeed, WornSpeedFound, creep_stroke, fitted_roughness, grinding_ratio, ring_volume,
    specific_energy, through_feed, through_feed_angle, wear,
};
pub use holding::{Holding, HoldingFound};
pub use hole::{HoleLimits, hole_limits};
pub use marking::{Grain, Marking, Restriction, ShapeMark, Unread, read_marking};
pub use shape::{Abrasive, Bond, Fastening, MachineKind, Shape};
pub use speed::{SpeedForRim, largest_diameter, rim_speed, rim_speed_column, speed_for_rim};
pub use strength::{Fragment, Strength, StrengthFound, WheelRings, rings};
pub use thin::{
    CriticalSpeed, StabiliserDisc, StabiliserDiscFound, Stabilisers, StabilisersFound, ThinWheel,
    ThinWheelFound,
};
