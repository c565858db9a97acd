//! Friction of press and shrink fits, by pairing and way of joining.
//!
//! Offered, never taken: friction is an input of every kernel.

use super::materials::Published;
use crate::source::{Source, Status};

/// Recalled values of the standard for interference fits.
pub const DIN7190: Source =
    Source::new("din7190-1", "DIN 7190-1", "", "friction of interference fits", Status::Memory);
const CLASS_RULE: Source = Source::new("iacs-k3", "IACS UR K3", "", "", Status::Memory);
const MARINE: Source =
    Source::new("marine-encyclopaedia", "a marine encyclopaedia", "", "", Status::Read);
const LECTURE: Source =
    Source::new("lecture-shrink", "lecture slides on shrink fits", "", "", Status::Read);

const fn friction(name: &'static str, least: f64, greatest: f64, source: Source) -> Published {
    Published { name, least, greatest, unit: "", source }
}

/// Friction of press and shrink fits.
///
/// Of a pressed-in pair the greater figure is where it lets go, the smaller
/// one while it slips.
#[rustfmt::skip]
pub const FITS: [Published; 16] = [
    friction("steel on steel, oil pressure, mineral oil", 0.12, 0.12, DIN7190),
    friction("steel on steel, oil pressure, degreased, glycerine", 0.18, 0.18, DIN7190),
    friction("steel on steel, shrunk, not degreased, up to 300 C", 0.14, 0.14, DIN7190),
    friction("steel on steel, shrunk, degreased, up to 300 C", 0.20, 0.20, DIN7190),
    friction("steel on cast iron, oil pressure, mineral oil", 0.10, 0.10, DIN7190),
    friction("steel on cast iron, shrunk, degreased", 0.16, 0.16, DIN7190),
    friction("steel on Al-Mg, shrunk, dry", 0.10, 0.15, DIN7190),
    friction("steel on CuZn, shrunk, dry", 0.17, 0.25, DIN7190),
    friction("steel E335, pressed in, dry", 0.08, 0.11, DIN7190),
    friction("steel E335, pressed in, oiled", 0.07, 0.08, DIN7190),
    friction("steel S235, pressed in, dry", 0.09, 0.10, DIN7190),
    friction("steel S235, pressed in, oiled", 0.06, 0.07, DIN7190),
    friction("cast iron EN-GJL-250, pressed in, dry", 0.11, 0.12, DIN7190),
    friction("while oil is injected (less than)", 0.02, 0.02, MARINE),
    friction("steel or bronze on steel, oil injected, in service", 0.13, 0.13, CLASS_RULE),
    friction("shrunk, rule of thumb", 0.15, 0.20, LECTURE),
];
