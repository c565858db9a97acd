//! Measuring: what a taper is, how to set the lathe for it, and whether it came out.

mod balls;
mod blocks;
mod bore;
mod check;
mod cone;
pub mod correct;
mod decide;
mod disks;
mod fit;
mod name;
mod planes;
mod rollers;
pub mod setting;
mod stand_off;
pub mod tool;
mod uncertainty;

pub use balls::{TwoBalls, TwoBallsFound};
pub use blocks::{BlockStack, block_stack};
pub use bore::{Boring, BoringFound, DrillStep};
pub use cone::{LargeEnd, MeasuredCone};
pub use correct::{SlideCorrection, SlideCorrectionFound, TaperPart, Toward};
pub use decide::{Chances, Decision, GuardBand, Limits, Ruling, chances, decide};
pub use disks::{disk_distance, disk_taper};
pub use fit::{ConeFit, ConeFitFound, FlankBow};
pub use name::{Candidate, NameTaper, Naming, NamingOutcome};
pub use planes::{TwoDiameters, TwoDiametersFound};
pub use rollers::{OverRollers, OverRollersFound};
pub use setting::{
    Along, RunOut, SetAngle, SineBar, SlideSetting, Tailstock, run_out, sine_bar, slide_setting,
    tailstock,
};
pub use stand_off::{StandOff, StandOffFound};
pub use tool::{ToolHeight, ToolHeightFound};
pub use uncertainty::{Budget, Influence, Sensitivity, Spread, budget};

use crate::source::{Source, Status};

/// Geometry of measuring and setting.
pub const GEOMETRY: Source = Source::new(
    "taper-metrology",
    "geometry of taper measuring, as in textbooks of workshop metrology",
    "",
    "",
    Status::Computed,
);
/// How uncertainties add up.
pub const GUM: Source = Source::new(
    "jcgm100",
    "JCGM 100, Guide to the expression of uncertainty in measurement",
    "",
    "",
    Status::Memory,
);
/// Least squares.
pub const LEAST_SQUARES: Source =
    Source::new("least-squares", "least-squares line", "", "", Status::Computed);
/// Deciding with an uncertainty.
pub const ZONES: Source = Source::new(
    "iso14253-1",
    "ISO 14253-1 and JCGM 106, zones of acceptance and rejection",
    "",
    "",
    Status::Memory,
);
/// Tapers by two disks.
pub const DISKS: Source =
    Source::new("mh31-disks", "Machinery's Handbook", "31", "p. 701", Status::Read);
/// How true an original has to run to be copied.
pub const RUN_OUT: Source = Source::new(
    "copy-run-out",
    "common practice, no source",
    "",
    "run-out of an original that is copied",
    Status::Practice,
);

/// Every source that this module cites.
pub const SOURCES: &[Source] = &[GEOMETRY, GUM, LEAST_SQUARES, ZONES, DISKS, RUN_OUT];
