//! Whether a number that was passed in makes sense, and what to say when it doesn't.

use super::{Exact, Length, meter, millimeter};
use crate::error::{Error, ErrorKind};

/// A length in metres that is a number above zero.
pub(crate) fn positive_length(argument: &str, length: Length) -> Result<f64, Error> {
    let metres = length.get::<meter>();
    finite(argument, metres, "200 mm")?;
    if metres > 0.0 {
        return Ok(metres);
    }
    positive(argument, length.get::<millimeter>(), "mm", "200 mm").map(|()| metres)
}

/// A length in mm as a message shows it: whole nanometres, without the dust of metres.
pub(crate) fn shown_mm(length: Length) -> f64 {
    length.exact() / 1e6
}

/// Neither NaN nor infinite.
pub(crate) fn finite(argument: &str, given: f64, example: &'static str) -> Result<(), Error> {
    if given.is_finite() {
        return Ok(());
    }
    Err(ErrorKind::NotFinite { argument: argument.into(), given, example }.into())
}

/// A number above zero.
pub(crate) fn positive(
    argument: &str,
    given: f64,
    unit: &'static str,
    example: &'static str,
) -> Result<(), Error> {
    finite(argument, given, example)?;
    if given > 0.0 {
        return Ok(());
    }
    let hint = format!("give a value above zero, like \"{example}\"");
    outside(argument, given, "not above 0".into(), unit, hint)
}

/// Zero or a number above it.
pub(crate) fn zero_or_more(
    argument: &str,
    given: f64,
    unit: &'static str,
    example: &'static str,
) -> Result<(), Error> {
    finite(argument, given, example)?;
    if given >= 0.0 {
        return Ok(());
    }
    let hint = format!("give zero or a value above it, like \"{example}\"");
    outside(argument, given, "below 0".into(), unit, hint)
}

/// A number above zero and below `most`.
pub(crate) fn below(
    argument: &str,
    given: f64,
    most: f64,
    unit: &'static str,
    example: &'static str,
) -> Result<(), Error> {
    finite(argument, given, example)?;
    if given > 0.0 && given < most {
        return Ok(());
    }
    let hint = format!("check the number and its unit; it is written like \"{example}\"");
    outside(argument, given, format!("not between 0 and {most}"), unit, hint)
}

/// A number from `low` to `high`.
pub(crate) fn within(
    argument: &str,
    given: f64,
    [low, high]: [f64; 2],
    unit: &'static str,
    example: &'static str,
) -> Result<(), Error> {
    finite(argument, given, example)?;
    if (low..=high).contains(&given) {
        return Ok(());
    }
    let hint = format!("check the number and its unit; it is written like \"{example}\"");
    outside(argument, given, format!("outside {low} to {high}"), unit, hint)
}

fn outside(
    argument: &str,
    given: f64,
    range: String,
    unit: &'static str,
    hint: String,
) -> Result<(), Error> {
    let (argument, authority) = (argument.into(), String::new());
    Err(ErrorKind::OutOfRange { argument, given, range, unit, authority, hint }.into())
}
