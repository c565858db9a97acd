//! Printing quantities for millimetre and for inch shops.

use std::fmt::Write;

/// Which units a shop reads.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Default)]
pub enum Shop {
    /// Millimetres, metres a second.
    #[default]
    Metric,
    /// Inches, surface feet a minute.
    Inch,
}

/// A number with at most `places` decimals, no trailing zeros and no `-0`.
///
/// ```
/// use hubwright::units::figure;
///
/// assert_eq!(figure(63.5, 3), "63.5");
/// assert_eq!(figure(-0.0001, 3), "0");
/// ```
pub fn figure(value: f64, places: usize) -> String {
    let mut text = String::new();
    // Writing to a string cannot fail.
    let _ = write!(text, "{value:.places$}");
    if text.contains('.') {
        text.truncate(text.trim_end_matches('0').trim_end_matches('.').len());
    }
    if text == "-0" { "0".into() } else { text }
}

/// Whole nanometres as `63.5 mm`, to the micrometre or finer where it matters.
pub fn millimetres(nm: f64) -> String {
    let places = if (nm / 1000.0).fract() == 0.0 { 3 } else { 4 };
    format!("{} mm", figure(nm / 1e6, places))
}

/// Whole nanometres as `2.5 in`, to a ten-thousandth.
pub fn inches(nm: f64) -> String {
    format!("{} in", figure(nm / 25.4e6, 4))
}
