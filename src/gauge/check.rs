//! Readings that contradict each other, and what is said about them.

use crate::error::{Error, ErrorKind};
use crate::source::Source;
use crate::units::{Angle, Length, figure, finite, meter, radian, shown_mm, zero_or_more};
use crate::working::Step;

/// A length that another one rules out: `range` and that one make the sentence.
pub(super) fn ruled_out(
    argument: &str,
    given: Length,
    range: &str,
    bound: Length,
    hint: &str,
) -> Error {
    ErrorKind::OutOfRange {
        argument: argument.into(),
        given: shown_mm(given),
        range: format!("{range} {}", figure(shown_mm(bound), 4)),
        unit: "mm",
        authority: String::new(),
        hint: hint.into(),
    }
    .into()
}

/// A standard uncertainty of a length: zero is the user's word that it is exact.
pub(super) fn uncertainty(argument: &str, given: Length) -> Result<(), Error> {
    finite(argument, given.get::<meter>(), "0.001 mm")?;
    zero_or_more(argument, shown_mm(given), "mm", "0.001 mm")
}

/// A standard uncertainty of an angle, likewise.
pub(super) fn angle_uncertainty(argument: &str, given: Angle) -> Result<(), Error> {
    zero_or_more(argument, given.get::<radian>().to_degrees(), "°", "0.002 deg")
}

/// Root of the sum of squares.
pub(super) fn root_sum<const N: usize>(parts: [f64; N]) -> f64 {
    parts.iter().map(|part| part * part).sum::<f64>().sqrt()
}

/// One line of a working.
pub(super) fn step(
    symbol: &'static str,
    relation: &'static str,
    numbers: String,
    (result, unit): (f64, &'static str),
    source: Source,
) -> Step {
    Step { symbol, relation, numbers, result, unit, source }
}
