//! Standard tolerances IT01 to IT18.

use super::{GRADES, GRADES_RECALLED, NONE, row};
use crate::source::Source;

/// Grades in the order of their columns.
pub const NAMES: [&str; 20] = [
    "01", "0", "1", "2", "3", "4", "5", "6", "7", "8", "9", "10", "11", "12", "13", "14", "15",
    "16", "17", "18",
];

/// The column of a grade with a number: IT1 is the third.
pub const fn column(number: usize) -> usize {
    number + 1
}

/// Tolerances in nm: a row for every step of [`STEPS`](super::STEPS), IT01 to IT18.
pub static TOLERANCES: [[i32; 20]; 21] = [
    row("0.3 0.5 0.8 1.2 2 3 4 6 10 14 25 40 60 100 140 250 400 600 1000 1400"),
    row("0.4 0.6 1 1.5 2.5 4 5 8 12 18 30 48 75 120 180 300 480 750 1200 1800"),
    row("0.4 0.6 1 1.5 2.5 4 6 9 15 22 36 58 90 150 220 360 580 900 1500 2200"),
    row("0.5 0.8 1.2 2 3 5 8 11 18 27 43 70 110 180 270 430 700 1100 1800 2700"),
    row("0.6 1 1.5 2.5 4 6 9 13 21 33 52 84 130 210 330 520 840 1300 2100 3300"),
    row("0.6 1 1.5 2.5 4 7 11 16 25 39 62 100 160 250 390 620 1000 1600 2500 3900"),
    row("0.8 1.2 2 3 5 8 13 19 30 46 74 120 190 300 460 740 1200 1900 3000 4600"),
    row("1 1.5 2.5 4 6 10 15 22 35 54 87 140 220 350 540 870 1400 2200 3500 5400"),
    row("1.2 2 3.5 5 8 12 18 25 40 63 100 160 250 400 630 1000 1600 2500 4000 6300"),
    row("2 3 4.5 7 10 14 20 29 46 72 115 185 290 460 720 1150 1850 2900 4600 7200"),
    row("2.5 4 6 8 12 16 23 32 52 81 130 210 320 520 810 1300 2100 3200 5200 8100"),
    row("3 5 7 9 13 18 25 36 57 89 140 230 360 570 890 1400 2300 3600 5700 8900"),
    row("4 6 8 10 15 20 27 40 63 97 155 250 400 630 970 1550 2500 4000 6300 9700"),
    row("/ / 9 11 16 22 32 44 70 110 175 280 440 700 1100 1750 2800 4400 7000 11000"),
    row("/ / 10 13 18 25 36 50 80 125 200 320 500 800 1250 2000 3200 5000 8000 12500"),
    row("/ / 11 15 21 28 40 56 90 140 230 360 560 900 1400 2300 3600 5600 9000 14000"),
    row("/ / 13 18 24 33 47 66 105 165 260 420 660 1050 1650 2600 4200 6600 10500 16500"),
    row("/ / 15 21 29 39 55 78 125 195 310 500 780 1250 1950 3100 5000 7800 12500 19500"),
    row("/ / 18 25 35 46 65 92 150 230 370 600 920 1500 2300 3700 6000 9200 15000 23000"),
    row("/ / 22 30 41 55 78 110 175 280 440 700 1100 1750 2800 4400 7000 11000 17500 28000"),
    row("/ / 26 36 50 68 96 135 210 330 540 860 1350 2100 3300 5400 8600 13500 21000 33000"),
];

/// The tolerance of a grade in a main step, in nm.
pub fn tolerance(step: usize, column: usize) -> Option<i64> {
    let nm = *TOLERANCES.get(step)?.get(column)?;
    (nm != NONE).then_some(i64::from(nm))
}

/// Where that figure comes from.
///
/// IT01, IT0 and IT15 to IT18 are recalled; so are IT12 and IT14 over 315 mm,
/// and over 500 mm everything but IT5 to IT11. IT13 over 315 mm stands among
/// the bores of a handbook on grinding wheels.
pub const fn source(step: usize, grade: usize) -> Source {
    let read = match step {
        0..=10 => column(1) <= grade && grade <= column(14),
        11 | 12 => (column(1) <= grade && grade <= column(11)) || grade == column(13),
        _ => column(5) <= grade && grade <= column(11),
    };
    if read { GRADES } else { GRADES_RECALLED }
}
