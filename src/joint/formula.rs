//! The formulas behind the tables of ISO 286-1, for sizes up to 500 mm.
//!
//! The tables were rounded from them by hand, so that 40 tolerances and 230
//! deviations differ: [`limits`](super::limits()) never uses a formula.

use super::limits::nominal_nm;
use crate::error::{Error, ErrorKind};
use crate::tables::iso286::deviations::{LETTERS, PLACES, Place};
use crate::tables::iso286::{FORMULAS, STEPS, SUBSTEPS, ends, grades, step};
use crate::units::{Length, micrometer, millimeter};

/// The largest size that the formulas are for, in nm.
const MOST: i64 = 500_000_000;

/// Standard tolerance factor of a size, the `i` of which grades are multiples.
///
/// `i = 0.45 ∛D + 0.001 D` in µm, with `D` in mm. For a table `D` is the geometric
/// mean of a step's ends; here it is the size itself.
///
/// Range: above 0 to 500 mm.
///
/// # Errors
///
/// [`ErrorKind::NotFinite`] and [`ErrorKind::OutOfRange`] for a size outside the range.
///
/// # Source
///
/// ISO 286-1, as reprinted in Machine Drawing (Narayana), Table 15.4.
///
/// # Example
///
/// ```
/// use hubwright::joint::tolerance_factor;
/// use hubwright::units::{Length, micrometer, millimeter};
///
/// let i = tolerance_factor(Length::new::<millimeter>(1000.0 / 8.0))?;
/// assert!((i.get::<micrometer>() - 2.375).abs() < 1e-12); // 0.45 · 5 + 0.125
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn tolerance_factor(size: Length) -> Result<Length, Error> {
    up_to_500(size).map_err(|error| error.named("size"))?;
    Ok(Length::new::<micrometer>(factor(size.get::<millimeter>())))
}

/// Standard tolerance of a size and grade as the formula gives it.
///
/// With `D` the geometric mean of the step's ends in mm (the first step counts from
/// 1 mm) and `i` the tolerance factor: `IT01 = 0.3 + 0.008 D`, `IT0 = 0.5 + 0.012 D`,
/// `IT1 = 0.8 + 0.02 D` in µm, not rounded; IT5 to IT11 are 7, 10, 16, 25, 40, 64 and
/// 100 times `i`, rounded to 1 µm up to 100, 5 µm up to 200, 10 µm above.
///
/// Range: above 0 to 500 mm, and these grades.
///
/// # Errors
///
/// [`ErrorKind::NotFinite`] and [`ErrorKind::OutOfRange`] for a size outside the range,
/// [`ErrorKind::UnknownWord`] for a grade without a formula here.
///
/// # Source
///
/// ISO 286-1, as reprinted in Machine Drawing (Narayana), Table 15.4. The printed table
/// wins wherever they differ.
///
/// # Example
///
/// By the formula IT6 of 18 to 30 mm is 13 µm, as printed.
///
/// ```
/// use hubwright::joint::grade_by_formula;
/// use hubwright::units::{Length, micrometer, millimeter};
///
/// let it6 = grade_by_formula(Length::new::<millimeter>(20.0), "IT6")?;
/// assert!((it6.get::<micrometer>() - 13.0).abs() < 1e-9);
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn grade_by_formula(nominal: Length, grade: &str) -> Result<Length, Error> {
    let nm = up_to_500(nominal)?;
    let d = mean(&STEPS, nm);
    let times = |i: f64| rounded(i * factor(d));
    let um = match grade.trim().trim_start_matches("IT") {
        "01" => 0.3 + 0.008 * d,
        "0" => 0.5 + 0.012 * d,
        "1" => 0.8 + 0.02 * d,
        "5" => times(7.0),
        "6" => times(10.0),
        "7" => times(16.0),
        "8" => times(25.0),
        "9" => times(40.0),
        "10" => times(64.0),
        "11" => times(100.0),
        _ => {
            return Err(ErrorKind::UnknownWord {
                argument: "grade".into(),
                text: crate::error::cut(grade),
                allowed: "IT01, IT0, IT1, IT5 to IT11".into(),
                hint: "the table has the other grades: ask `limits`, like \"20 h12\"".into(),
            }
            .into());
        }
    };
    Ok(Length::new::<micrometer>(um))
}

/// Fundamental deviation of a shaft as the formula gives it, rounded to a whole µm.
///
/// With `D` the geometric mean of the ends of the letter's step in mm, in µm: a
/// `−(265 + 1.3 D)`, over 120 mm `−3.5 D`; b `−(140 + 0.85 D)`, over 160 mm `−1.8 D`;
/// c `−52 D^0.2`, over 40 mm `−(95 + 0.8 D)`; d `−16 D^0.44`; e `−11 D^0.41`;
/// f `−5.5 D^0.41`; g `−2.5 D^0.34`; h 0; k (k4 to k7) `0.6 ∛D`; m `IT7 − IT6`;
/// n `5 D^0.34`; t over 24 mm `IT7 + 0.63 D`; u `IT7 + D`;
/// v over 14 mm `IT7 + 1.25 D`; x `IT7 + 1.6 D`; y over 18 mm `IT7 + 2 D`; z `IT7 + 2.5 D`;
/// za `IT8 + 3.15 D`; zb `IT9 + 4 D`; zc `IT10 + 5 D`, with the tolerances as printed.
/// cd, ef, fg and r are means of their neighbours, p and s lie in a range: none here.
///
/// Range: above 0 to 500 mm.
///
/// # Errors
///
/// [`ErrorKind::NotFinite`] and [`ErrorKind::OutOfRange`] for a size outside the range,
/// [`ErrorKind::UnknownWord`] for a letter without a formula at this size.
///
/// # Source
///
/// ISO 286-1, as reprinted in Machine Drawing (Narayana), Table 15.4. The printed table
/// wins wherever they differ.
///
/// # Example
///
/// For f over 0 up to 3 mm the formula gives −7 µm where the table prints −6.
///
/// ```
/// use hubwright::joint::{deviation_by_formula, limits};
/// use hubwright::units::{Length, micrometer, millimeter};
///
/// let f = deviation_by_formula(Length::new::<millimeter>(2.0), "f")?;
/// assert!((f.get::<micrometer>() + 7.0).abs() < 1e-9);
/// assert_eq!(limits("2 f7")?.upper_um(), -6.0);
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn deviation_by_formula(nominal: Length, letter: &str) -> Result<Length, Error> {
    let nm = up_to_500(nominal)?;
    let refuse = || -> Error {
        ErrorKind::UnknownWord {
            argument: "letter".into(),
            text: crate::error::cut(letter),
            allowed: "a b c d e f g h k m n u x z za zb zc, t over 24 mm, v over 14, y over 18"
                .into(),
            hint: "the table has the other letters: ask `limits`, like \"20 r6\"".into(),
        }
        .into()
    };
    let place = LETTERS.iter().position(|known| *known == letter.trim()).ok_or_else(refuse)?;
    let d = match PLACES[place] {
        Place::Split(_) => mean(&SUBSTEPS, nm),
        _ => mean(&STEPS, nm),
    };
    let it = |number: usize| {
        let printed = grades::tolerance(step(&STEPS, nm), grades::column(number));
        printed.map_or(f64::NAN, |nm| nm as f64 / 1000.0)
    };
    let over = |size: i64| nm > size * 1_000_000;
    let um = match LETTERS[place] {
        "a" if over(120) => -3.5 * d,
        "a" => -(265.0 + 1.3 * d),
        "b" if over(160) => -1.8 * d,
        "b" => -(140.0 + 0.85 * d),
        "c" if over(40) => -(95.0 + 0.8 * d),
        "c" => -52.0 * d.powf(0.2),
        "d" => -16.0 * d.powf(0.44),
        "e" => -11.0 * d.powf(0.41),
        "f" => -5.5 * d.powf(0.41),
        "g" => -2.5 * d.powf(0.34),
        "h" => 0.0,
        "k" => 0.6 * d.cbrt(),
        "m" => it(7) - it(6),
        "n" => 5.0 * d.powf(0.34),
        "t" if over(24) => it(7) + 0.63 * d,
        "u" => it(7) + d,
        "v" if over(14) => it(7) + 1.25 * d,
        "x" => it(7) + 1.6 * d,
        "y" if over(18) => it(7) + 2.0 * d,
        "z" => it(7) + 2.5 * d,
        "za" => it(8) + 3.15 * d,
        "zb" => it(9) + 4.0 * d,
        "zc" => it(10) + 5.0 * d,
        _ => return Err(refuse()),
    };
    Ok(Length::new::<micrometer>(um.round()))
}

/// `0.45 ∛D + 0.001 D` in µm, `D` in mm.
fn factor(d: f64) -> f64 {
    0.45 * d.cbrt() + 0.001 * d
}

/// As the standard rounds tolerances of IT5 and coarser.
fn rounded(um: f64) -> f64 {
    let to = if um <= 100.0 {
        1.0
    } else if um <= 200.0 {
        5.0
    } else {
        10.0
    };
    (um / to).round() * to
}

/// Geometric mean of a step's ends in mm; the first step counts from 1 mm.
fn mean(steps: &[i64], nominal: i64) -> f64 {
    let (from, to) = ends(steps, step(steps, nominal));
    ((from as f64 / 1e6).max(1.0) * (to as f64 / 1e6)).sqrt()
}

fn up_to_500(nominal: Length) -> Result<i64, Error> {
    let nm = nominal_nm(nominal)?;
    if nm <= MOST {
        return Ok(nm);
    }
    Err(ErrorKind::OutOfRange {
        argument: "nominal".into(),
        given: nm as f64 / 1e6,
        range: "outside 0 to 500".into(),
        unit: "mm",
        authority: FORMULAS.to_string(),
        hint: "over 500 mm ask `limits`, which has the table to 3150 mm".into(),
    }
    .into())
}
