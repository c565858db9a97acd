//! Gaps that brazing fillers are said to want, each on one side of the part.

use crate::source::{Source, Status};

const fn recalled(key: &'static str) -> Source {
    Source::new(key, "AWS Brazing Handbook", "", "joint clearance", Status::Memory)
}

/// Least and greatest gap in µm, and who says so.
pub type Gap = ([u16; 2], Source);

/// Silver with flux.
pub const SILVER_FLUX: Gap = ([50, 130], recalled("aws-brazing-bag-flux"));
/// Silver with flux, as a maker of fillers has it: 0.001 to 0.005 in, strongest near 0.0015 in.
pub const SILVER_MAKER: Gap = (
    [25, 127],
    Source::new("silver-maker", "a filler metal maker's note", "", "silver brazing", Status::Read),
);
/// Silver in a controlled atmosphere.
pub const SILVER_ATMOSPHERE: Gap = ([0, 50], recalled("aws-brazing-bag-atmosphere"));
/// Copper in a furnace.
pub const COPPER: Gap = (
    [0, 50],
    Source::new(
        "aws-brazing-bcu",
        "AWS Brazing Handbook",
        "4th edition",
        "press fit to 0.002 in, as quoted in a forum of the AWS",
        Status::Reprint,
    ),
);
/// Nickel.
pub const NICKEL: Gap = ([0, 130], recalled("aws-brazing-bni"));
/// Copper-phosphorus.
pub const COPPER_PHOSPHORUS: Gap = ([30, 130], recalled("aws-brazing-bcup"));
/// Any filler that is drawn in by the gap.
pub const CAPILLARY: Gap = (
    [30, 80],
    Source::new("capillary", "an encyclopaedia's article on brazing", "", "", Status::Read),
);
