//! What a column holds, by its heading.

use std::collections::HashMap;
use std::sync::LazyLock;

use crate::error::{Error, ErrorKind, cut};
use crate::mounting::{FIELDS, Field};
use crate::units::plain;

/// Headings that name the mounting itself.
const NAMES: &[&str] = &["mounting", "name", "mounting name", "id"];
/// Words that give both places of a pair the same value.
const PAIRS: &[(&str, [&str; 2], &[&str])] = &[
    ("both flanges", ["fixed_flange", "loose_flange"], &["flanges"]),
    ("both blotters", ["fixed_blotter", "loose_blotter"], &["blotters"]),
];

/// What a column holds.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Column {
    /// The mounting's name.
    Name,
    /// A datum: the places of its fields in [`FIELDS`] (two for both flanges), and its unit.
    Datum {
        /// Places in [`FIELDS`].
        fields: Vec<usize>,
        /// Unit that the heading states.
        unit: Option<String>,
    },
    /// Nothing that hubwright knows.
    Unknown,
}

/// Reads a heading such as `wheel diameter [mm]`, `Outer flange dia (in)` or
/// `wheel_diameter_mm`.
///
/// # Errors
///
/// [`ErrorKind::BadHeading`] when the column is known and its unit is of
/// another kind.
///
/// # Example
///
/// ```
/// use hubwright::mounting::FIELDS;
/// use hubwright::sheet::heading::{Column, read};
///
/// let Column::Datum { fields, unit } = read("Outer flange dia (in)")? else { panic!("known") };
/// assert_eq!(FIELDS[fields[0]].heading(), "loose flange diameter");
/// assert_eq!(unit.as_deref(), Some("in"));
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn read(heading: &str) -> Result<Column, Error> {
    let text = heading.trim();
    if NAMES.iter().any(|name| plain(name) == plain(text)) {
        return Ok(Column::Name);
    }
    let (words, unit) = split_unit(text);
    let known = |words: &str| KNOWN.get(&plain(words)).cloned();
    let (fields, unit) = match (known(words), known(text)) {
        (Some(fields), _) => (fields, unit),
        // `max rpm` is a name that holds its unit.
        (None, Some(fields)) => (fields, unit),
        (None, None) => return Ok(Column::Unknown),
    };
    let field = &FIELDS[fields[0]];
    let units = (field.sort.units)();
    let spelled = unit.map(|unit| {
        let is =
            |known: &&&str| **known == unit || known.eq_ignore_ascii_case(unit) && unit.len() > 1;
        units.iter().find(is).map(|known| (*known).to_owned()).ok_or(unit)
    });
    match spelled {
        Some(Err(unit)) if !unit.is_empty() => Err(ErrorKind::BadHeading {
            heading: cut(heading),
            why: format!("has the unit {unit:?}, which is no unit of {}", field.sort.name),
            hint: if units.is_empty() {
                let takes =
                    if (field.sort.words)().is_empty() { "no unit" } else { "words, not numbers" };
                format!("leave the unit out: {} takes {takes}", field.heading())
            } else {
                format!("state one of: {}", units.join(", "))
            },
        }
        .into()),
        Some(Ok(unit)) => Ok(Column::Datum { fields, unit: Some(unit) }),
        _ => Ok(Column::Datum { fields, unit: None }),
    }
}

/// A heading and the unit that ends it, in brackets, in parentheses or plain.
fn split_unit(text: &str) -> (&str, Option<&str>) {
    for (open, close) in [('[', ']'), ('(', ')')] {
        if let Some((words, rest)) = text.rsplit_once(open)
            && let Some(unit) = rest.trim_end().strip_suffix(close)
        {
            return (words.trim_end(), Some(unit.trim()));
        }
    }
    if let Some((words, unit)) = text.rsplit_once([' ', '_', ','])
        && UNITS.contains(&unit)
    {
        return (words.trim_end_matches([' ', '_', ',']), Some(unit));
    }
    (text, None)
}

/// Every spelling of a unit that some field has.
static UNITS: LazyLock<Vec<&'static str>> = LazyLock::new(|| {
    let mut units: Vec<_> = FIELDS.iter().flat_map(|field| (field.sort.units)()).collect();
    units.sort_unstable();
    units.dedup();
    units
});

/// Every accepted heading without its unit, and the fields it stands for.
static KNOWN: LazyLock<HashMap<String, Vec<usize>>> = LazyLock::new(|| {
    let mut known: HashMap<String, Vec<usize>> = HashMap::new();
    let mut alone: HashMap<String, Vec<usize>> = HashMap::new();
    for (at, field) in FIELDS.iter().enumerate() {
        for words in own_words(field) {
            for place in std::iter::once(&field.place_words).chain(field.place_also) {
                known.insert(plain(&format!("{place} {words}")), vec![at]);
            }
            for (pair, places, also) in PAIRS {
                if places.contains(&field.place) {
                    for pair in std::iter::once(pair).chain(*also) {
                        let fields = known.entry(plain(&format!("{pair} {words}"))).or_default();
                        if !fields.contains(&at) {
                            fields.push(at);
                        }
                    }
                }
            }
            alone.entry(plain(words)).or_default().push(at);
        }
    }
    // `bond` can only be the wheel's; `diameter` could be anything's.
    for (words, fields) in alone {
        if fields.len() == 1 && words.len() > 3 {
            known.entry(words).or_insert(fields);
        }
    }
    known
});

fn own_words(field: &Field) -> impl Iterator<Item = &&'static str> {
    std::iter::once(&field.words).chain(field.also)
}

/// From which likeness on a heading is taken for a known one with a slip in it.
const SLIP: f64 = 0.84;
/// From which likeness on a heading is worth naming.
const LIKE: f64 = 0.7;

/// What an unknown heading may mean.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Guess {
    /// The known heading most like it, when one is like it.
    pub nearest: Option<String>,
    /// Fields that it asks for all the same: it is a known heading but for a slip.
    pub asks: Vec<usize>,
}

/// Guesses what an unknown heading means.
///
/// # Example
///
/// ```
/// use hubwright::sheet::heading::guess;
///
/// let guess = guess("gaurd exposure [deg]");
/// assert_eq!(guess.nearest.as_deref(), Some("machine guard exposure"));
/// assert_eq!(guess.asks.len(), 1);
/// ```
pub fn guess(heading: &str) -> Guess {
    let words = plain(split_unit(heading.trim()).0);
    let length = words.chars().count() as f64;
    let alike = |known: &str| {
        let known_length = known.chars().count() as f64;
        // Lengths alone can rule a likeness out, and much faster.
        if (length - known_length).abs() > (1.0 - LIKE) * length.max(known_length) {
            return 0.0;
        }
        strsim::normalized_damerau_levenshtein(&words, known)
    };
    let best = KNOWN.iter().map(|(known, fields)| (alike(known), fields));
    // Ties go to the field that comes first, so that every run says the same.
    let best = best.max_by(|a, b| a.0.total_cmp(&b.0).then(b.1.cmp(a.1)));
    match best {
        Some((score, fields)) if score >= LIKE => Guess {
            nearest: Some(FIELDS[fields[0]].heading()),
            asks: if score >= SLIP { fields.clone() } else { Vec::new() },
        },
        _ => Guess::default(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_heading_names_one_field_and_reads_back() {
        for (at, field) in FIELDS.iter().enumerate() {
            let Ok(Column::Datum { fields, .. }) = read(&field.heading()) else {
                panic!("{} is not known", field.heading())
            };
            assert_eq!(fields, [at], "{}", field.heading());
        }
    }
}
