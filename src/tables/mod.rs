//! Printed numbers, one file a standard.

pub mod brazing;
pub mod expansion;
pub mod flanges;
pub mod friction;
pub mod grits;
pub mod iso286;
pub mod keys;
pub mod laws;
pub mod materials;
pub mod tapers;
pub mod threads;

/// A number that changes with any figure in the tables that rules judge by, so
/// that a report can say by which it was judged.
///
/// It is the FNV-1a hash, 64 bits, of the rows as Rust's debug format prints them.
pub fn fingerprint() -> u64 {
    use flanges::{TABLE_O4, TABLE_O5, TABLE_O6, TABLE_O7, TABLE_O8};
    use iso286::{deviations, grades};
    let flanges = format!("{TABLE_O4:?}{TABLE_O5:?}{TABLE_O6:?}{TABLE_O7:?}{TABLE_O8:?}");
    let widths = format!("{:?}{:?}{:?}", keys::PARALLEL, grades::TOLERANCES, deviations::MAIN);
    flanges.bytes().chain(widths.bytes()).fold(0xcbf2_9ce4_8422_2325, |hash, byte| {
        (hash ^ u64::from(byte)).wrapping_mul(0x0000_0100_0000_01b3)
    })
}
