//! A taper as people write it.

use super::{STATED, Taper};
use crate::error::{Error, ErrorKind, cut};
use crate::tables::tapers::machine::{MACHINE, Machine, Series};
use crate::tables::tapers::{Defined, STANDARD};
use crate::units::{Angle, Decimal, Words, degree, number, takes_fractions};

/// What follows a number of inches on diameter over a length, and that length in inches.
const OVER: [(&str, f64); 13] = [
    ("in/ft", 12.0),
    ("inch/ft", 12.0),
    ("\"/ft", 12.0),
    ("in per ft", 12.0),
    ("in. per ft", 12.0),
    ("in per foot", 12.0),
    ("inch per foot", 12.0),
    ("inches per foot", 12.0),
    ("in/in", 1.0),
    ("in per in", 1.0),
    ("mm/mm", 1.0),
    ("mm/m", 1000.0),
    ("%", 100.0),
];

/// A taper from its name or number.
///
/// Taken are ratios (`1:5`, `7/24`), a change of diameter over a length (`3 in/ft`,
/// `0.05 in/in`, `5 %`), angles that say which they are (`8 deg 30 min included`,
/// `4.25 deg half`) and numbered tapers (`Morse 3`, `B&S 9`, `Jarno 8`, `Jacobs 33`,
/// `metric 80`, `steep 40`). The printed table wins: `1:0.2886751` is 120° exactly.
///
/// Range: half angles from 0.0028 (1:10 000) to 60°.
///
/// # Errors
///
/// [`ErrorKind::NotAQuantity`] for anything else, an angle that doesn't say whether it is the
/// included or the half angle among it; [`ErrorKind::UnknownWord`] for a number that its
/// series lacks; [`ErrorKind::OutOfRange`] for a cylinder or a plate.
///
/// # Source
///
/// ISO 1119 as adopted in GOST R 53440-2009, Table 1, for ratios; tables of standard tapers
/// for the series. 7:24 and gauge diameters of metric and steep tapers are from memory.
///
/// # Example
///
/// 1:5 includes 11.421186°; the slide is set to half of it.
///
/// ```
/// use hubwright::joint::taper;
/// use hubwright::units::degree;
///
/// let nose = taper("1:5")?;
/// assert!((nose.cone_angle().get::<degree>() - 11.421_186_27).abs() < 1e-7);
/// assert_eq!(taper("2.4 in/ft")?.half_angle, nose.half_angle);
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn taper(text: &str) -> Result<Taper, Error> {
    let plain = text.trim().to_lowercase();
    if let Some(found) = by_angle(&plain, text) {
        return found;
    }
    for (unit, length) in OVER {
        if let Some(front) = plain.strip_suffix(unit)
            && !front.trim().is_empty()
            && !front.trim_end().ends_with(|c: char| c.is_alphabetic() || c == '/')
        {
            // A fraction of a millimetre is no way of writing.
            let inches = takes_fractions(if unit.starts_with("in") || unit.starts_with('"') {
                "in"
            } else {
                unit
            });
            if front.contains('/') && !inches {
                return Err(refused(text, "only inches are written in fractions"));
            }
            let diameter = number(front, Decimal::Point).map_err(|why| refused(text, why))?;
            return known(diameter, length);
        }
    }
    let ratio = plain.split_once(':').or_else(|| plain.split_once('/'));
    if let Some((diameter, length)) = ratio
        && let (Ok(diameter), Ok(length)) =
            (number(diameter, Decimal::Point), number(length, Decimal::Point))
    {
        return known(diameter, length);
    }
    by_number(text)
}

/// The taper of a ratio, with its source when the table has it.
fn known(diameter: f64, length: f64) -> Result<Taper, Error> {
    let found = Taper::of_ratio(diameter, length)?;
    for (cone, standard) in STANDARD.iter().zip(STANDARD.iter().map(Taper::from)) {
        let by_angle = matches!(cone.defined, Defined::Included(_));
        // Ratios of cones that are defined by their angle are printed to seven decimals.
        let same = if by_angle {
            (found.one_in() - standard.one_in()).abs() < 0.6e-7
        } else {
            (found.per_side - standard.per_side).abs() < 1e-15
        };
        if same {
            return Ok(standard);
        }
    }
    Ok(found)
}

/// A numbered taper.
fn by_number(text: &str) -> Result<Taper, Error> {
    let series = |name: &str| Series::read_word(name.trim().trim_end_matches("no.").trim()).ok();
    // The longest front that is a series, so that the number is what is left.
    let name = text.trim().to_lowercase();
    let cuts: Vec<usize> = name.char_indices().map(|(at, _)| at).skip(1).collect();
    let found = cuts.into_iter().rev().find_map(|at| {
        let (front, number) = name.split_at(at);
        Some((series(front)?, number.trim().trim_start_matches("no.").trim().to_owned()))
    });
    let Some((series, number)) = found.filter(|(_, number)| !number.is_empty()) else {
        return Err(refused(
            text,
            "it is neither a ratio, nor so much over a length, nor a known number",
        ));
    };
    let of_series = || MACHINE.iter().filter(move |machine| machine.series == series);
    let wanted = number.replace(" 1/2", "-1/2");
    let same = |machine: &&Machine| machine.number == wanted;
    let machine = of_series().find(same).ok_or_else(|| {
        let numbers: Vec<_> = of_series().map(|machine| machine.number).collect();
        Error::from(ErrorKind::UnknownWord {
            argument: "taper".into(),
            text: cut(text),
            allowed: format!("{series} {}", numbers.join(", ")),
            hint: format!(
                "give one of these numbers, like \"{series} {}\"",
                numbers.first().unwrap_or(&"")
            ),
        })
    })?;
    Ok(Taper::from(machine))
}

/// A taper by an angle; `None` when the text is about no angle.
fn by_angle(plain: &str, text: &str) -> Option<Result<Taper, Error>> {
    const WHOLE: [&str; 5] = ["included angle", "cone angle", "whole angle", "included", "cone"];
    const HALF: [&str; 4] = ["half angle", "a side", "per side", "half"];
    let strip = |ends: &[&str]| ends.iter().find_map(|end| plain.strip_suffix(end)).map(str::trim);
    let is_angle = plain.contains('°') || plain.contains("deg") || plain.contains("rad");
    let (angle, times) = match (strip(&WHOLE), strip(&HALF)) {
        (Some(angle), _) => (angle, 1.0),
        (None, Some(angle)) => (angle, 2.0),
        (None, None) if is_angle => {
            return Some(Err(refused(
                text,
                "it doesn't say whether it is the included or the half angle",
            )));
        }
        (None, None) => return None,
    };
    Some(angle_of(angle).map_err(|why| refused(text, why)).and_then(|degrees| {
        let found = Taper::of_included(Angle::new::<degree>(degrees * times))?;
        let same = |standard: &Taper| {
            matches!(standard.defined, Defined::Included(_))
                && standard.half_angle == found.half_angle
        };
        Ok(STANDARD.iter().map(Taper::from).find(same).unwrap_or(Taper { source: STATED, ..found }))
    }))
}

/// Degrees from degrees, minutes and seconds in descending order, or from radians.
fn angle_of(text: &str) -> Result<f64, &'static str> {
    if let Some(radians) = text.strip_suffix("rad") {
        return number(radians, Decimal::Point).map(f64::to_degrees);
    }
    const UNITS: [(&[&str], f64); 3] = [
        (&["degrees", "degree", "deg", "°"], 1.0),
        (&["minutes", "minute", "min", "'", "′"], 60.0),
        (&["seconds", "second", "sec", "\"", "″", "s"], 3600.0),
    ];
    let (mut rest, mut degrees, mut any) = (text.trim(), 0.0, false);
    for (names, parts) in UNITS {
        let cut_at = names.iter().find_map(|name| {
            let at = rest.find(name)?;
            Some((&rest[..at], &rest[at + name.len()..]))
        });
        let Some((front, after)) = cut_at else { continue };
        let value = number(front, Decimal::Point)?;
        if value < 0.0 || (parts > 1.0 && value >= 60.0 && any) {
            return Err("minutes and seconds go from 0 to under 60");
        }
        degrees += value / parts;
        (rest, any) = (after.trim(), true);
    }
    match (any, rest) {
        (true, "") => Ok(degrees),
        (true, _) => Err("something follows the angle"),
        (false, _) => Err("it has no degrees, minutes or seconds"),
    }
}

fn refused(text: &str, why: &'static str) -> Error {
    ErrorKind::NotAQuantity {
        argument: "taper".into(),
        text: cut(text),
        kind: "taper",
        why,
        hint: "write it like \"1:5\", \"3 in/ft\", \"8 deg 30 min included\", \"4.25 deg half\" or \"Morse 3\"".into(),
    }
    .into()
}
