//! Machine tapers by series and number, in inches as printed.

use crate::source::{Source, Status};
use crate::units::words;

/// Morse tapers in inches.
pub const MORSE: Source =
    Source::new("morse", "Morse tapers", "", "tables of standard tapers", Status::Reprint);
/// Brown and Sharpe tapers.
pub const BROWN_SHARPE: Source = Source::new(
    "brown-sharpe",
    "Brown and Sharpe tapers",
    "",
    "tables of standard tapers",
    Status::Reprint,
);
/// Jarno tapers follow a rule.
pub const JARNO: Source = Source::new(
    "jarno",
    "Jarno tapers",
    "",
    "large end No./8 in, small end No./10 in, length No./2 in, 0.600 in/ft",
    Status::Reprint,
);
/// Jacobs tapers.
pub const JACOBS: Source =
    Source::new("jacobs", "Jacobs tapers", "", "tables of standard tapers", Status::Reprint);
/// Metric tapers of 5 %: that there are such was read, the gauge diameters are recalled.
pub const METRIC: Source =
    Source::new("iso296-metric", "ISO 296", "", "metric tapers of 5 %", Status::Memory);
/// Steep tapers by number.
pub const STEEP: Source =
    Source::new("iso297", "ISO 297, gauge diameters of the tapers 7:24", "", "", Status::Memory);

words! {
    /// A series of machine tapers.
    Series, "series of tapers" {
        /// Morse.
        Morse = "Morse" ["MT", "Morse taper", "Morse No"];
        /// Brown and Sharpe.
        BrownSharpe = "Brown & Sharpe" ["B&S", "Brown and Sharpe", "BS"];
        /// Jarno.
        Jarno = "Jarno" ["Jarno taper", "Jarno No"];
        /// Jacobs.
        Jacobs = "Jacobs" ["JT", "Jacobs taper"];
        /// Metric, 5 %.
        Metric = "metric" ["metric 5 %", "ME"];
        /// Steep, 7:24.
        Steep = "steep" ["7/24 No", "7:24 No", "ISO"];
    }
}

/// One numbered taper.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Machine {
    /// Its series.
    pub series: Series,
    /// Its number as printed.
    pub number: &'static str,
    /// Diameter of the large end, in inches; the gauge diameter of metric and steep ones.
    pub large: f64,
    /// Diameter of the small end, in inches.
    pub small: Option<f64>,
    /// From one to the other, in inches.
    pub length: Option<f64>,
    /// Inches on diameter a foot.
    pub per_foot: f64,
    /// Where it stands.
    pub source: Source,
}

const fn row(
    series: Series,
    number: &'static str,
    sizes: [f64; 3],
    per_foot: f64,
    source: Source,
) -> Machine {
    let [large, small, length] = sizes;
    Machine { series, number, large, small: Some(small), length: Some(length), per_foot, source }
}

const fn morse(number: &'static str, sizes: [f64; 3], per_foot: f64) -> Machine {
    row(Series::Morse, number, sizes, per_foot, MORSE)
}

const fn brown_sharpe(number: &'static str, sizes: [f64; 3], per_foot: f64) -> Machine {
    row(Series::BrownSharpe, number, sizes, per_foot, BROWN_SHARPE)
}

const fn jacobs(number: &'static str, sizes: [f64; 3], per_foot: f64) -> Machine {
    row(Series::Jacobs, number, sizes, per_foot, JACOBS)
}

const fn jarno(number: &'static str, no: f64) -> Machine {
    row(Series::Jarno, number, [no / 8.0, no / 10.0, no / 2.0], 0.6, JARNO)
}

const fn metric(number: &'static str, mm: f64) -> Machine {
    let (series, source) = (Series::Metric, METRIC);
    Machine { series, number, large: mm / 25.4, small: None, length: None, per_foot: 0.6, source }
}

const fn steep(number: &'static str, large: f64) -> Machine {
    let (series, source) = (Series::Steep, STEEP);
    Machine { series, number, large, small: None, length: None, per_foot: 3.5, source }
}

/// Every numbered taper: large end, small end, length between them, inches a foot.
#[rustfmt::skip]
pub const MACHINE: [Machine; 64] = [
    morse("0",     [0.3561, 0.252, 2.0],  0.6246),
    morse("1",     [0.475,  0.369, 2.13], 0.5986),
    morse("2",     [0.7,    0.572, 2.56], 0.5994),
    morse("3",     [0.938,  0.778, 3.19], 0.6024),
    morse("4",     [1.231,  1.02,  4.06], 0.6233),
    morse("4-1/2", [1.5,    1.266, 4.5],  0.624),
    morse("5",     [1.748,  1.475, 5.19], 0.6315),
    morse("6",     [2.494,  2.116, 7.25], 0.6257),
    morse("7",     [3.27,   2.75,  10.0], 0.624),
    brown_sharpe("1",  [0.23922, 0.2,     0.9375], 0.502),
    brown_sharpe("2",  [0.29968, 0.25,    1.1875], 0.502),
    brown_sharpe("3",  [0.37525, 0.3125,  1.5],    0.502),
    brown_sharpe("4",  [0.40233, 0.35,    1.25],   0.5024),
    brown_sharpe("5",  [0.52315, 0.45,    1.75],   0.5016),
    brown_sharpe("6",  [0.59961, 0.5,     2.375],  0.5033),
    brown_sharpe("7",  [0.72537, 0.6,     3.0],    0.5015),
    brown_sharpe("8",  [0.89873, 0.75,    3.5625], 0.501),
    brown_sharpe("9",  [1.06705, 0.9001,  4.0],    0.5009),
    brown_sharpe("10", [1.28927, 1.04465, 5.6875], 0.5161),
    brown_sharpe("11", [1.53176, 1.24995, 6.75],   0.501),
    brown_sharpe("12", [1.79681, 1.5001,  7.125],  0.4997),
    brown_sharpe("13", [2.0731,  1.75005, 7.75],   0.5002),
    brown_sharpe("14", [2.34375, 2.0,     8.25],   0.5),
    brown_sharpe("15", [2.61458, 2.25,    8.75],   0.5),
    jarno("2", 2.0), jarno("3", 3.0), jarno("4", 4.0), jarno("5", 5.0), jarno("6", 6.0),
    jarno("7", 7.0), jarno("8", 8.0), jarno("9", 9.0), jarno("10", 10.0), jarno("11", 11.0),
    jarno("12", 12.0), jarno("13", 13.0), jarno("14", 14.0), jarno("15", 15.0), jarno("16", 16.0),
    jarno("17", 17.0), jarno("18", 18.0), jarno("19", 19.0), jarno("20", 20.0),
    jacobs("0",       [0.25,   0.22844, 0.4375],  0.5915),
    jacobs("1",       [0.384,  0.33341, 0.65625], 0.9251),
    jacobs("2",       [0.559,  0.48764, 0.875],   0.9786),
    jacobs("2 short", [0.5488, 0.48764, 0.75],    0.9786),
    jacobs("3",       [0.811,  0.7461,  1.21875], 0.639),
    jacobs("4",       [1.124,  1.0372,  1.65625], 0.6289),
    jacobs("5",       [1.413,  1.31611, 1.875],   0.6201),
    jacobs("6",       [0.676,  0.62409, 1.0],     0.6229),
    jacobs("33",      [0.624,  0.5605,  1.0],     0.7619),
    metric("4", 4.0), metric("6", 6.0), metric("80", 80.0), metric("100", 100.0),
    metric("120", 120.0), metric("160", 160.0), metric("200", 200.0),
    steep("30", 1.25), steep("40", 1.75), steep("45", 2.25), steep("50", 2.75), steep("60", 4.25),
];
