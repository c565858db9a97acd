//! Fits to prefer, so that a shop gets by with few reamers and gauges.

use crate::source::{Source, Status};

/// The ten fits of each basis that are to be tried first.
pub const FIRST_CHOICE: Source =
    Source::new("ansi-b4.2-preferred", "ANSI B4.2", "1978", "preferred fits", Status::Memory);
/// The wider choice with an H hole; that for h shafts was not found in print.
pub const HOLE_BASIS: Source =
    Source::new("iso286-1-hole-basis", "ISO 286-1", "2010", "fits with H holes", Status::Memory);

/// Hole and shaft of a fit to prefer, and whose list it stands in.
pub type Preferred = (&'static str, &'static str, Source);

const fn first(hole: &'static str, shaft: &'static str) -> Preferred {
    (hole, shaft, FIRST_CHOICE)
}

const fn wider(hole: &'static str, shaft: &'static str) -> Preferred {
    (hole, shaft, HOLE_BASIS)
}

/// The fits, first choice first; H7/h6 serves both bases and stands once.
pub const FITS: [Preferred; 55] = [
    first("H11", "c11"),
    first("H9", "d9"),
    first("H8", "f7"),
    first("H7", "g6"),
    first("H7", "h6"),
    first("H7", "k6"),
    first("H7", "n6"),
    first("H7", "p6"),
    first("H7", "s6"),
    first("H7", "u6"),
    first("C11", "h11"),
    first("D9", "h9"),
    first("F8", "h7"),
    first("G7", "h6"),
    first("K7", "h6"),
    first("N7", "h6"),
    first("P7", "h6"),
    first("S7", "h6"),
    first("U7", "h6"),
    wider("H6", "g5"),
    wider("H6", "h5"),
    wider("H6", "js5"),
    wider("H6", "k5"),
    wider("H6", "m5"),
    wider("H6", "n5"),
    wider("H6", "p5"),
    wider("H7", "f6"),
    wider("H7", "js6"),
    wider("H7", "m6"),
    wider("H7", "r6"),
    wider("H7", "t6"),
    wider("H7", "x6"),
    wider("H8", "e7"),
    wider("H8", "h7"),
    wider("H8", "js7"),
    wider("H8", "k7"),
    wider("H8", "m7"),
    wider("H8", "s7"),
    wider("H8", "u7"),
    wider("H8", "d8"),
    wider("H8", "e8"),
    wider("H8", "f8"),
    wider("H8", "h8"),
    wider("H9", "d8"),
    wider("H9", "e8"),
    wider("H9", "f8"),
    wider("H9", "h8"),
    wider("H10", "b9"),
    wider("H10", "c9"),
    wider("H10", "d9"),
    wider("H10", "e9"),
    wider("H10", "h9"),
    wider("H11", "b11"),
    wider("H11", "d10"),
    wider("H11", "h10"),
];
