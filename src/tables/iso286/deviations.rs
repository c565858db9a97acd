//! Fundamental deviations of shafts, and what those of holes differ by.
//!
//! A hole's deviation is a shaft's with the sign turned, plus Δ where the
//! standard adds it; J has figures of its own.

use super::{NONE, STEPS, SUBSTEPS, row, step};

/// Letters of shafts from the loosest to the tightest; holes have them in capitals.
pub const LETTERS: [&str; 28] = [
    "a", "b", "c", "cd", "d", "e", "ef", "f", "fg", "g", "h", "js", "j", "k", "m", "n", "p", "r",
    "s", "t", "u", "v", "x", "y", "z", "za", "zb", "zc",
];

/// Where a letter's figures stand.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Place {
    /// A column of [`MAIN`].
    Main(usize),
    /// A column of [`SPLIT`].
    Split(usize),
    /// Nowhere: js is half of the grade.
    Nowhere,
}

/// Where the figures of each of [`LETTERS`] stand; j and k in their first columns.
pub const PLACES: [Place; 28] = [
    Place::Split(0),
    Place::Split(1),
    Place::Split(2),
    Place::Main(0),
    Place::Main(1),
    Place::Main(2),
    Place::Main(3),
    Place::Main(4),
    Place::Main(5),
    Place::Main(6),
    Place::Main(7),
    Place::Nowhere,
    Place::Main(J5_J6),
    Place::Main(K4_K7),
    Place::Main(11),
    Place::Main(12),
    Place::Main(13),
    Place::Split(3),
    Place::Split(4),
    Place::Split(5),
    Place::Split(6),
    Place::Split(7),
    Place::Split(8),
    Place::Split(9),
    Place::Split(10),
    Place::Split(11),
    Place::Split(12),
    Place::Split(13),
];

/// Column of j5 and j6 in [`MAIN`].
pub const J5_J6: usize = 8;
/// Column of j7 in [`MAIN`].
pub const J7: usize = 9;
/// Column of k4 to k7 in [`MAIN`]; other grades of k have zero.
pub const K4_K7: usize = 10;

/// In nm, a row for every step of [`STEPS`]: upper deviations of
/// cd d e ef f fg g h, then lower ones of j5-j6 j7 k4-k7 m n p.
pub static MAIN: [[i32; 14]; 21] = [
    row("-34 -20 -14 -10 -6 -4 -2 0 -2 -4 0 2 4 6"),
    row("-46 -30 -20 -14 -10 -6 -4 0 -2 -4 1 4 8 12"),
    row("-56 -40 -25 -18 -13 -8 -5 0 -2 -5 1 6 10 15"),
    row("/ -50 -32 / -16 / -6 0 -3 -6 1 7 12 18"),
    row("/ -65 -40 / -20 / -7 0 -4 -8 2 8 15 22"),
    row("/ -80 -50 / -25 / -9 0 -5 -10 2 9 17 26"),
    row("/ -100 -60 / -30 / -10 0 -7 -12 2 11 20 32"),
    row("/ -120 -72 / -36 / -12 0 -9 -15 3 13 23 37"),
    row("/ -145 -85 / -43 / -14 0 -11 -18 3 15 27 43"),
    row("/ -170 -100 / -50 / -15 0 -13 -21 4 17 31 50"),
    row("/ -190 -110 / -56 / -17 0 -16 -26 4 20 34 56"),
    row("/ -210 -125 / -62 / -18 0 -18 -28 4 21 37 62"),
    row("/ -230 -135 / -68 / -20 0 -20 -32 5 23 40 68"),
    row("/ -260 -145 / -76 / -22 0 / / 0 26 44 78"),
    row("/ -290 -160 / -80 / -24 0 / / 0 30 50 88"),
    row("/ -320 -170 / -86 / -26 0 / / 0 34 56 100"),
    row("/ -350 -195 / -98 / -28 0 / / 0 40 66 120"),
    row("/ -390 -220 / -110 / -30 0 / / 0 48 78 140"),
    row("/ -430 -240 / -120 / -32 0 / / 0 58 92 170"),
    row("/ -480 -260 / -130 / -34 0 / / 0 68 110 195"),
    row("/ -520 -290 / -145 / -38 0 / / 0 76 135 240"),
];

/// In nm, a row for every step of [`SUBSTEPS`]: upper deviations of
/// a b c, then lower ones of r s t u v x y z za zb zc.
pub static SPLIT: [[i32; 14]; 41] = [
    row("-270 -140 -60 10 14 / 18 / 20 / 26 32 40 60"),
    row("-270 -140 -70 15 19 / 23 / 28 / 35 42 50 80"),
    row("-280 -150 -80 19 23 / 28 / 34 / 42 52 67 97"),
    row("-290 -150 -95 23 28 / 33 / 40 / 50 64 90 130"),
    row("-290 -150 -95 23 28 / 33 39 45 / 60 77 108 150"),
    row("-300 -160 -110 28 35 / 41 47 54 63 73 98 136 188"),
    row("-300 -160 -110 28 35 41 48 55 64 75 88 118 160 218"),
    row("-310 -170 -120 34 43 48 60 68 80 94 112 148 200 274"),
    row("-320 -180 -130 34 43 54 70 81 97 114 136 180 242 325"),
    row("-340 -190 -140 41 53 66 87 102 122 144 172 226 300 405"),
    row("-360 -200 -150 43 59 75 102 120 146 174 210 274 360 480"),
    row("-380 -220 -170 51 71 91 124 146 178 214 258 335 445 585"),
    row("-410 -240 -180 54 79 104 144 172 210 254 310 400 525 690"),
    row("-460 -260 -200 63 92 122 170 202 248 300 365 470 620 800"),
    row("-520 -280 -210 65 100 134 190 228 280 340 415 535 700 900"),
    row("-580 -310 -230 68 108 146 210 252 310 380 465 600 780 1000"),
    row("-660 -340 -240 77 122 166 236 284 350 425 520 670 880 1150"),
    row("-740 -380 -260 80 130 180 258 310 385 470 575 740 960 1250"),
    row("-820 -420 -280 84 140 196 284 340 425 520 640 820 1050 1350"),
    row("-920 -480 -300 94 158 218 315 385 475 580 710 920 1200 1550"),
    row("-1050 -540 -330 98 170 240 350 425 525 650 790 1000 1300 1700"),
    row("-1200 -600 -360 108 190 268 390 475 590 730 900 1150 1500 1900"),
    row("-1350 -680 -400 114 208 294 435 530 660 820 1000 1300 1650 2100"),
    row("-1500 -760 -440 126 232 330 490 595 740 920 1100 1450 1850 2400"),
    row("-1650 -840 -480 132 252 360 540 660 820 1000 1250 1600 2100 2600"),
    row("/ / / 150 280 400 600 / / / / / / /"),
    row("/ / / 155 310 450 660 / / / / / / /"),
    row("/ / / 175 340 500 740 / / / / / / /"),
    row("/ / / 185 380 560 840 / / / / / / /"),
    row("/ / / 210 430 620 940 / / / / / / /"),
    row("/ / / 220 470 680 1050 / / / / / / /"),
    row("/ / / 250 520 780 1150 / / / / / / /"),
    row("/ / / 260 580 840 1300 / / / / / / /"),
    row("/ / / 300 640 960 1450 / / / / / / /"),
    row("/ / / 330 720 1050 1600 / / / / / / /"),
    row("/ / / 370 820 1200 1850 / / / / / / /"),
    row("/ / / 400 920 1350 2000 / / / / / / /"),
    row("/ / / 440 1000 1500 2300 / / / / / / /"),
    row("/ / / 460 1100 1650 2500 / / / / / / /"),
    row("/ / / 550 1250 1900 2900 / / / / / / /"),
    row("/ / / 580 1400 2100 3200 / / / / / / /"),
];

/// In nm, a row for every step up to 500 mm: upper deviations of J6 J7 J8.
pub static J: [[i32; 3]; 13] = [
    row("2 4 6"),
    row("5 6 10"),
    row("5 8 12"),
    row("6 10 15"),
    row("8 12 20"),
    row("10 14 24"),
    row("13 18 28"),
    row("16 22 34"),
    row("18 26 41"),
    row("22 30 47"),
    row("25 36 55"),
    row("29 39 60"),
    row("33 43 66"),
];

/// Δ in nm, a row for every step up to 500 mm: IT3 to IT8.
pub static DELTA: [[i32; 6]; 13] = [
    row("0 0 0 0 0 0"),
    row("1 1.5 1 3 4 6"),
    row("1 1.5 2 3 6 7"),
    row("1 2 3 3 7 9"),
    row("1.5 2 3 4 8 12"),
    row("1.5 3 4 5 9 14"),
    row("2 3 5 6 11 16"),
    row("2 4 5 7 13 19"),
    row("3 4 6 7 15 23"),
    row("3 4 6 9 17 26"),
    row("4 4 7 9 20 29"),
    row("4 5 7 11 21 32"),
    row("5 5 7 13 23 34"),
];

/// M6 over 250 up to 315 mm: −9 µm stands in the print where the rule would give −11.
pub const M6_250_TO_315: i64 = -9000;

/// The figure of a place at a nominal size, both in nm.
pub fn figure(place: Place, nominal: i64) -> Option<i64> {
    let nm = match place {
        Place::Main(column) => *MAIN.get(step(&STEPS, nominal))?.get(column)?,
        Place::Split(column) => *SPLIT.get(step(&SUBSTEPS, nominal))?.get(column)?,
        Place::Nowhere => return None,
    };
    (nm != NONE).then_some(i64::from(nm))
}
