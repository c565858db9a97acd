//! Reading the designation of a thread.

use super::{MM, Series, TEN_THOUSANDTH, ThreadClass, UM};
use crate::error::{Error, ErrorKind, cut};
use crate::tables::threads::{
    BY_PITCH, COARSE, COARSE_SIZES, GREATEST_MM, METRIC_SERIES, UNC, UNF, Unified,
};
use crate::units::{Decimal, figure, number};

/// A designation in parts.
#[derive(Clone, Copy)]
pub(super) struct Read {
    pub series: Series,
    pub size: &'static str,
    pub left_hand: bool,
    pub diameter_nm: i64,
    /// Whole for a metric thread; an inch need not divide evenly.
    pub pitch_nm: f64,
    pub class: Option<ThreadClass>,
}

pub(super) fn designation(text: &str) -> Result<Read, Error> {
    let trimmed = text.trim();
    let (body, left_hand) = hand(trimmed);
    let read = match body.strip_prefix(['M', 'm']) {
        Some(metric_size) => metric(metric_size, text)?,
        None => unified(body, text)?,
    };
    Ok(Read { left_hand, ..read })
}

/// Takes `LH` or `RH` off the end.
fn hand(text: &str) -> (&str, bool) {
    let end = text.len().saturating_sub(2);
    let tail = text.get(end..).unwrap_or_default();
    let left = tail.eq_ignore_ascii_case("LH");
    if left || tail.eq_ignore_ascii_case("RH") {
        let body = text.get(..end).unwrap_or_default();
        return (body.trim_end_matches([' ', '-']), left);
    }
    (text, false)
}

/// A class at the end, behind a hyphen or blanks.
fn class(text: &str) -> Result<Option<ThreadClass>, Error> {
    let text = text.trim_matches([' ', '-']);
    if text.is_empty() { Ok(None) } else { text.parse().map(Some) }
}

/// Reads what follows the `M`.
fn metric(rest: &str, whole: &str) -> Result<Read, Error> {
    let (diameter, rest) = leading_number(rest.trim_start(), whole)?;
    let rest = rest.trim_start();
    let (pitch, rest) = match rest.strip_prefix(['x', 'X', '×', '*']) {
        Some(after) => {
            let (pitch, rest) = leading_number(after.trim_start(), whole)?;
            (Some(pitch), rest)
        }
        None => (None, rest),
    };
    let class = class(rest)?;
    if !(1.0..=GREATEST_MM).contains(&diameter) {
        let range = format!("outside 1 to {GREATEST_MM}");
        let hint = "give a diameter of the metric series, like M20x1".to_owned();
        return Err(out_of_range("diameter", diameter, range, hint));
    }
    let pitch = match pitch {
        Some(pitch) => pitch,
        None => coarse(diameter).ok_or_else(|| no_coarse(diameter, whole))?,
    };
    let pitch_um = (pitch * 1e3).round() as i64;
    if !BY_PITCH.iter().any(|row| row.pitch == pitch_um && row.pitch as f64 / 1e3 == pitch) {
        return Err(no_such_pitch(whole));
    }
    let coarsest = coarsest(diameter);
    if pitch > coarsest {
        let range = format!("above {coarsest}, the coarsest at {} mm,", figure(diameter, 3));
        let hint = "give a pitch that the diameter allows, or check the diameter".to_owned();
        return Err(out_of_range("pitch", pitch, range, hint));
    }
    Ok(Read {
        series: Series::Metric,
        size: "",
        left_hand: false,
        diameter_nm: (diameter * MM as f64).round() as i64,
        pitch_nm: (pitch_um * UM) as f64,
        class,
    })
}

fn leading_number<'a>(text: &'a str, whole: &str) -> Result<(f64, &'a str), Error> {
    let end = text.find(|c: char| !c.is_ascii_digit() && c != '.').unwrap_or(text.len());
    let (digits, rest) = text.split_at(end);
    if rest.starts_with(',') {
        return Err(no_thread(whole, "it has a comma (a decimal comma, or thousands)"));
    }
    match digits.parse() {
        Ok(value) => Ok((value, rest)),
        Err(_) => Err(no_thread(whole, "a number is missing or can't be read")),
    }
}

fn coarse(diameter: f64) -> Option<f64> {
    COARSE[..COARSE_SIZES].iter().find(|(size, _)| *size == diameter).map(|(_, pitch)| *pitch)
}

/// The coarsest pitch that a diameter bears: that of the next size of the coarse series.
fn coarsest(diameter: f64) -> f64 {
    COARSE.iter().find(|(size, _)| *size >= diameter).map_or(8.0, |(_, pitch)| *pitch)
}

/// Reads `1/4-20 UNC-2B` and the like.
fn unified(body: &str, whole: &str) -> Result<Read, Error> {
    let upper = body.to_ascii_uppercase();
    let Some(at) = upper.find("UN") else {
        return Err(no_thread(whole, "it is neither metric (M…) nor unified (… UNC, … UNF)"));
    };
    let (front, back) = (body.get(..at).unwrap_or_default(), upper.get(at..).unwrap_or_default());
    let letters = back.find(|c: char| !c.is_ascii_alphabetic()).unwrap_or(back.len());
    let (name, rest) = back.split_at(letters);
    let (series, table): (_, &'static [Unified]) = match name {
        "UNC" => (Series::Unc, &UNC),
        "UNF" => (Series::Unf, &UNF),
        _ => {
            return Err(unknown(
                "series",
                name,
                "UNC, UNF",
                "only the coarse and the fine series are in the table",
            ));
        }
    };
    let class = class(rest)?;
    let front = front.trim().trim_end_matches('-').trim_end();
    // The threads an inch follow the last hyphen: "1-1/8-12".
    let threads = front.rsplit_once('-').and_then(|(size, threads)| {
        threads.trim().parse::<i64>().ok().map(|threads| (size, Some(threads)))
    });
    let (size, threads) = threads.unwrap_or((front, None));
    let row = find(table, size.trim()).ok_or_else(|| {
        let sizes: Vec<_> = table.iter().map(|row| row.size).collect();
        unknown("size", size.trim(), &sizes.join(", "), "write a size like 1/4 or #10")
    })?;
    if let Some(threads) = threads.filter(|threads| *threads != row.threads) {
        let real = format!("{}-{} {series}", row.size, row.threads);
        let given = format!("{}-{threads} {series}", row.size);
        return Err(unknown("thread", &given, &real, "check the threads an inch, or the series"));
    }
    Ok(Read {
        series,
        size: row.size,
        left_hand: false,
        diameter_nm: row.diameter * TEN_THOUSANDTH,
        pitch_nm: 25.4e6 / row.threads as f64,
        class,
    })
}

fn find(table: &'static [Unified], size: &str) -> Option<&'static Unified> {
    let lower = size.to_ascii_lowercase();
    let marked = lower.strip_prefix('#').or_else(|| lower.strip_prefix("no."));
    let bare = marked.or_else(|| lower.strip_prefix("no")).unwrap_or(&lower).trim();
    // From 4 on a whole number is that of a screw, with or without its mark.
    if let Some(row) = table.iter().find(|row| row.size.strip_prefix('#') == Some(bare)) {
        return Some(row);
    }
    if marked.is_some() {
        return None;
    }
    let inches = bare.trim_end_matches(['"', '″']).trim_end().trim_end_matches("in").trim_end();
    let wanted = number(inches, Decimal::Point).ok()?;
    table.iter().find(|row| (row.diameter as f64 / 1e4 - wanted).abs() < 6e-5)
}

#[cold]
fn no_thread(text: &str, why: &'static str) -> Error {
    ErrorKind::NotAQuantity {
        argument: "designation".into(),
        text: cut(text.trim()),
        kind: "thread",
        why,
        hint: "write it like \"M20x1-6H\", \"M8\", \"1/4-20 UNC-2B\" or \"#10-32 UNF LH\"".into(),
    }
    .into()
}

#[cold]
fn unknown(argument: &str, text: &str, allowed: &str, hint: &str) -> Error {
    ErrorKind::UnknownWord {
        argument: argument.into(),
        text: cut(text),
        allowed: allowed.into(),
        hint: hint.into(),
    }
    .into()
}

#[cold]
fn no_coarse(diameter: f64, text: &str) -> Error {
    let sizes = &COARSE[..COARSE_SIZES];
    let below = sizes.iter().rev().find(|(size, _)| *size < diameter);
    let above = sizes.iter().find(|(size, _)| *size > diameter);
    let near: Vec<_> =
        [below, above].into_iter().flatten().map(|(size, _)| format!("M{size}")).collect();
    let hint = "write the pitch of a thread that is not of the coarse series, like M13x1";
    unknown(
        "thread",
        text.trim(),
        &format!("{} (the nearest coarse threads)", near.join(", ")),
        hint,
    )
}

#[cold]
fn no_such_pitch(text: &str) -> Error {
    let all: Vec<_> = BY_PITCH.iter().map(|row| figure(row.pitch as f64 / 1e3, 2)).collect();
    let hint = format!("take one of the pitches of {METRIC_SERIES}");
    unknown("pitch", text.trim(), &all.join(", "), &hint)
}

#[cold]
fn out_of_range(argument: &str, given: f64, range: String, hint: String) -> Error {
    ErrorKind::OutOfRange {
        argument: argument.into(),
        given,
        range,
        unit: "mm",
        authority: METRIC_SERIES.to_string(),
        hint,
    }
    .into()
}
