//! Thermal expansion of the metals that hubs, spindles and flanges are made of.

use crate::source::{Source, Status};

/// Mean coefficients at room temperature.
pub const EXPANSIONS: Source = Source::new(
    "callister-b6",
    "Callister and Rethwisch, Fundamentals of Materials Science and Engineering",
    "3rd edition",
    "Table B.6",
    Status::Read,
);

/// Least and greatest of the table's entries for a metal, in µm/m/K.
pub type Range = (f64, f64);

/// Plain carbon and low alloy steels: A36, 1020, 1040, 4140, 4340.
pub const STEEL: Range = (11.3, 12.3);
/// Grey irons: G1800, G3000, G4000, all the same.
pub const GREY_IRON: Range = (11.4, 11.4);
/// Ductile irons: 80-55-06, 60-40-18.
pub const DUCTILE_IRON: Range = (10.6, 11.2);
/// Aluminium alloys: 356.0, 2024, 7075, 1100, 6061.
pub const ALUMINIUM: Range = (21.5, 23.6);
/// Cartridge brass C26000 and free-cutting brass C36000.
pub const BRASS: Range = (19.9, 20.5);
