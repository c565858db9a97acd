//! Classes of threads and the limits they set.

use std::fmt;
use std::str::FromStr;

use super::{MM, Series, TEN_THOUSANDTH, Thread, UM};
use crate::error::{Error, ErrorKind, cut};
use crate::source::Source;
use crate::tables::threads::{
    BY_DIAMETER, BY_PITCH, ByDiameter, METRIC, METRIC_RECALLED, UNC, UNF, UNIFIED_COARSE_2B,
    UNIFIED_RECALLED,
};
use crate::units::{Exact, Length, figure};

/// A class of threads: small letters and A for screws, capitals and B for nuts.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct ThreadClass(usize);

/// Name, whether for nuts, place of the grade in the tables, place of the deviation: 0 e, 1 g, 2 none.
const CLASSES: [(&str, bool, usize, usize); 10] = [
    ("4g", false, 0, 1),
    ("6e", false, 1, 0),
    ("6g", false, 1, 1),
    ("6h", false, 1, 2),
    ("4H", true, 0, 2),
    ("5H", true, 1, 2),
    ("6H", true, 2, 2),
    ("7H", true, 3, 2),
    ("2A", false, 0, 0),
    ("2B", true, 0, 0),
];
const FIRST_UNIFIED: usize = 8;

impl ThreadClass {
    /// Every class.
    pub fn all() -> impl Iterator<Item = Self> {
        (0..CLASSES.len()).map(Self)
    }

    /// Whether it is for internal threads.
    pub fn internal(self) -> bool {
        CLASSES[self.0].1
    }

    fn unified(self) -> bool {
        self.0 >= FIRST_UNIFIED
    }
}

impl fmt::Display for ThreadClass {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(CLASSES[self.0].0)
    }
}

impl FromStr for ThreadClass {
    type Err = Error;

    /// Reads a class; capitals and small letters differ.
    ///
    /// # Errors
    ///
    /// [`ErrorKind::UnknownWord`] for a class that is not in the table.
    fn from_str(text: &str) -> Result<Self, Error> {
        let text = text.trim();
        let found = CLASSES.iter().position(|(name, ..)| *name == text);
        found.map(Self).ok_or_else(|| {
            let other = CLASSES.iter().any(|(name, ..)| name.eq_ignore_ascii_case(text));
            let hint = if other {
                "capitals are for nuts, small letters for screws"
            } else if text.contains(['/', ' ']) {
                "name one class: that of the screw or that of the nut"
            } else {
                "take one of these, or leave the class out and state the limits on the drawing"
            };
            unknown_class(text, (0, CLASSES.len()), hint)
        })
    }
}

fn unknown_class(text: &str, (from, to): (usize, usize), hint: &str) -> Error {
    let names: Vec<_> = CLASSES[from..to].iter().map(|(name, ..)| *name).collect();
    ErrorKind::UnknownWord {
        argument: "class".into(),
        text: cut(text),
        allowed: names.join(", "),
        hint: hint.into(),
    }
    .into()
}

/// Limits of size of a thread.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct ThreadLimits {
    /// The class.
    pub class: ThreadClass,
    /// Greatest major diameter; `None` for a nut, whose root is open.
    pub major_greatest: Option<Length>,
    /// Least major diameter.
    pub major_least: Length,
    /// Greatest pitch diameter.
    pub pitch_greatest: Length,
    /// Least pitch diameter.
    pub pitch_least: Length,
    /// Greatest minor diameter; `None` for a screw, whose root is open.
    pub minor_greatest: Option<Length>,
    /// Least minor diameter; `None` for a screw.
    pub minor_least: Option<Length>,
    /// Where they come from, with the weakest status among the figures used.
    pub source: Source,
}

/// Deviations in nm: of all diameters, then tolerances of crest and pitch diameter.
struct Deviations {
    allowance: i64,
    crest: i64,
    pitch: i64,
    source: Source,
}

impl ThreadLimits {
    pub(super) fn of(thread: &Thread, class: ThreadClass) -> Result<Self, Error> {
        let metric = thread.series == Series::Metric;
        if metric == class.unified() {
            let span = if metric { (0, FIRST_UNIFIED) } else { (FIRST_UNIFIED, CLASSES.len()) };
            let hint = "metric and unified threads have classes of their own";
            return Err(unknown_class(&class.to_string(), span, hint));
        }
        if metric { Self::metric(thread, class) } else { Self::unified(thread, class) }
    }

    fn build(
        class: ThreadClass,
        [major, pitch, minor_least, minor_greatest]: [i64; 4],
        of: &Deviations,
    ) -> Self {
        let nm = |size: i64| Length::from_exact(size as f64);
        if class.internal() {
            return Self {
                class,
                major_greatest: None,
                major_least: nm(major),
                pitch_greatest: nm(pitch + of.pitch),
                pitch_least: nm(pitch),
                minor_greatest: Some(nm(minor_greatest)),
                minor_least: Some(nm(minor_least)),
                source: of.source,
            };
        }
        Self {
            class,
            major_greatest: Some(nm(major + of.allowance)),
            major_least: nm(major + of.allowance - of.crest),
            pitch_greatest: nm(pitch + of.allowance),
            pitch_least: nm(pitch + of.allowance - of.pitch),
            minor_greatest: None,
            minor_least: None,
            source: of.source,
        }
    }

    fn metric(thread: &Thread, class: ThreadClass) -> Result<Self, Error> {
        let of = metric(thread, class)?;
        // Basic diameters are printed to a micrometre, and the limits follow from those.
        let whole = |length: Length| (length.exact() / UM as f64).round() as i64 * UM;
        let major = thread.diameter.exact() as i64;
        let minor = whole(thread.minor_diameter);
        let all = [major, whole(thread.pitch_diameter), minor, minor + of.crest];
        Ok(Self::build(class, all, &of))
    }

    fn unified(thread: &Thread, class: ThreadClass) -> Result<Self, Error> {
        let (table, coarse) =
            if thread.series == Series::Unc { (&UNC, true) } else { (&UNF, false) };
        let Some(row) = table.iter().find(|row| row.size == thread.size) else {
            return Err(unknown_class(&class.to_string(), (FIRST_UNIFIED, CLASSES.len()), ""));
        };
        let source = match class.internal() && coarse {
            true => UNIFIED_COARSE_2B,
            false => UNIFIED_RECALLED,
        };
        let pitch = if class.internal() { row.internal } else { row.external };
        let of = Deviations {
            allowance: -row.allowance * TEN_THOUSANDTH,
            crest: row.major * TEN_THOUSANDTH,
            pitch: pitch * TEN_THOUSANDTH,
            source,
        };
        let step = TEN_THOUSANDTH as f64;
        let basic = (thread.pitch_diameter.exact() / step).round() as i64;
        let all = [row.diameter, basic, row.minor[0], row.minor[1]].map(|of| of * TEN_THOUSANDTH);
        Ok(Self::build(class, all, &of))
    }
}

/// What the metric table gives for a class.
fn metric(thread: &Thread, class: ThreadClass) -> Result<Deviations, Error> {
    let (_, internal, grade, position) = CLASSES[class.0];
    let um = |length: Length| (length.exact() / UM as f64).round() as i64;
    let (diameter, pitch) = (um(thread.diameter), um(thread.pitch));
    let by_pitch = BY_PITCH.iter().find(|row| row.pitch == pitch);
    let at = |row: &&ByDiameter| row.over < diameter && diameter <= row.up_to && row.pitch == pitch;
    let by_diameter = BY_DIAMETER.iter().find(at);
    let (Some(by_pitch), Some(by_diameter)) = (by_pitch, by_diameter) else {
        return Err(no_row(thread, class, diameter));
    };
    let (crest, width) = if internal {
        (by_pitch.minor[grade], by_diameter.internal[grade])
    } else {
        (by_pitch.major[grade], by_diameter.external[grade])
    };
    let es = by_pitch.es.get(position).copied();
    if crest == 0 || width == 0 || es == Some(0) {
        return Err(no_figure(thread, class));
    }
    let read = if internal {
        grade == 2 && by_pitch.internal_read && by_diameter.internal_read
    } else {
        grade == 1 && position != 0 && by_pitch.external_read && by_diameter.external_read
    };
    Ok(Deviations {
        allowance: es.unwrap_or(0) * UM,
        crest: crest * UM,
        pitch: width * UM,
        source: if read { METRIC } else { METRIC_RECALLED },
    })
}

/// How far the table goes at a diameter, or in all.
#[cold]
fn no_row(thread: &Thread, class: ThreadClass, diameter: i64) -> Error {
    let rows: Vec<_> =
        BY_DIAMETER.iter().filter(|row| row.over < diameter && diameter <= row.up_to).collect();
    let mm = |um: i64| figure(um as f64 / 1e3, 3);
    let pitches: Vec<_> = rows.iter().map(|row| mm(row.pitch)).collect();
    let pitches = pitches.join(", ");
    let (over, up_to) = rows.first().map_or((0, 0), |row| (row.over, row.up_to));
    ErrorKind::OutOfRange {
        argument: "pitch".into(),
        given: thread.pitch.exact() / MM as f64,
        range: format!("not one of {pitches}"),
        unit: "mm",
        authority: format!("{class} over {} up to {} mm in {METRIC_RECALLED}", mm(over), mm(up_to)),
        hint:
            "take one of these pitches, or leave the class out and state the limits on the drawing"
                .into(),
    }
    .into()
}

/// A row that has no figure of this grade or deviation.
#[cold]
fn no_figure(thread: &Thread, class: ThreadClass) -> Error {
    let least = BY_PITCH
        .iter()
        .find(|row| {
            let (_, internal, grade, position) = CLASSES[class.0];
            let crest = if internal { row.minor[grade] } else { row.major[grade] };
            crest != 0 && row.es.get(position) != Some(&0)
        })
        .map_or(0, |row| row.pitch);
    ErrorKind::OutOfRange {
        argument: "pitch".into(),
        given: thread.pitch.exact() / MM as f64,
        range: format!("below {}", figure(least as f64 / 1e3, 3)),
        unit: "mm",
        authority: format!("{class} in {METRIC_RECALLED}"),
        hint: "take a finer grade, or g or h, for so fine a thread".into(),
    }
    .into()
}
