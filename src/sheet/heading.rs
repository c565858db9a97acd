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
    /// What is written on the wheel.
    Marking,
    /// What an earlier report added to the table; it is left behind.
    Ours,
    /// Left out at the user's word.
    LeftOut,
    /// Nothing that hubwright knows.
    Unknown,
}

impl Column {
    /// Whether two columns would fill the same field.
    pub(crate) fn says_the_same(&self, other: &Self) -> bool {
        match (self, other) {
            (Self::Name, Self::Name) | (Self::Marking, Self::Marking) => true,
            (Self::Datum { fields, .. }, Self::Datum { fields: others, .. }) => {
                fields.iter().any(|field| others.contains(field))
            }
            _ => false,
        }
    }
}

/// Headings of what is written on the wheel.
pub(crate) const MARKINGS: [&str; 5] =
    ["wheel marking", "marking", "wheel specification", "specification", "wheel spec"];

/// What reports put before the headings of the columns they add.
pub(crate) const OURS: &str = "hubwright ";

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
    if text.len() > LONGEST {
        return Ok(Column::Unknown);
    }
    if NAMES.iter().any(|name| plain(name) == plain(text)) {
        return Ok(Column::Name);
    }
    if MARKINGS.iter().any(|name| plain(name) == plain(text)) {
        return Ok(Column::Marking);
    }
    if text.starts_with(OURS) {
        return Ok(Column::Ours);
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
        // `wheel made in` is about a country, not about inches.
        Some(Err(_)) if units.is_empty() && !text.ends_with([']', ')']) => Ok(Column::Unknown),
        Some(Err(unit)) if !unit.is_empty() => Err(ErrorKind::BadHeading {
            heading: cut(heading),
            why: format!("has the unit {:?}, which is no unit of {}", cut(unit), field.sort.name),
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

/// The unit that ends a heading, whatever the heading is.
pub(crate) fn unit_of(heading: &str) -> Option<&str> {
    split_unit(heading.trim()).1
}

/// A heading without the unit that ends it.
pub(crate) fn words_of(heading: &str) -> &str {
    split_unit(heading.trim()).0
}

/// Whether a text is a word for a part of the mounting, such as `inner flange`.
pub(crate) fn is_place(text: &str) -> bool {
    PLACES.contains(&plain(text))
}

/// Whether a heading begins with such a word.
pub(crate) fn names_a_place(heading: &str) -> bool {
    let words = plain(heading);
    PLACES.iter().any(|place| words.starts_with(place.as_str()))
}

/// Every word for a part of the mounting.
static PLACES: LazyLock<Vec<String>> = LazyLock::new(|| {
    let places =
        FIELDS.iter().flat_map(|field| std::iter::once(&field.place_words).chain(field.place_also));
    let pairs = PAIRS.iter().flat_map(|(pair, _, also)| std::iter::once(pair).chain(*also));
    let mut places: Vec<String> = places.chain(pairs).map(|place| plain(place)).collect();
    places.sort_unstable();
    places.dedup();
    places
});

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
        }
    }
    // `bond` can only be the wheel's; `diameter` could be anything's.
    for (words, fields) in ALONE.iter() {
        if fields.len() == 1 && !AMBIGUOUS.iter().any(|word| plain(word) == *words) {
            known.entry(words.clone()).or_insert(fields.clone());
        }
    }
    known
});

/// Words that the declaration gives to one field, and a shop may mean another by: in a
/// list of wheels `max speed` is the wheel's, in a list of machines the spindle's.
const AMBIGUOUS: &[&str] = &[
    "bore diameter",
    "dia",
    "direction",
    "greatest speed",
    "hand",
    "hole diameter",
    "length",
    "made",
    "max rim speed",
    "max rpm",
    "max speed",
    "maximum rpm",
    "maximum speed",
    "nominal size",
    "od",
    "outside diameter",
    "shoulder",
    "speed",
    "thread",
    "thread length",
    "top speed",
    "width",
];

/// The words of every field without those of its place, and the fields they may mean.
static ALONE: LazyLock<HashMap<String, Vec<usize>>> = LazyLock::new(|| {
    let mut alone: HashMap<String, Vec<usize>> = HashMap::new();
    for (at, field) in FIELDS.iter().enumerate() {
        for words in own_words(field) {
            alone.entry(plain(words)).or_default().push(at);
        }
    }
    alone
});

fn own_words(field: &Field) -> impl Iterator<Item = &&'static str> {
    std::iter::once(&field.words).chain(field.also)
}

/// Most bytes of a heading that is looked up; what is longer is no heading of ours.
const LONGEST: usize = 300;
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
    if heading.len() > LONGEST {
        return Guess::default();
    }
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
    let (score, like) = best.map_or((0.0, &[][..]), |(score, fields)| (score, &fields[..]));
    // A known heading with words behind it asks too, and a known word behind a
    // place; words that may mean several things ask for all of them.
    let longest = |found: Vec<(&String, &'static Vec<usize>)>| {
        found
            .into_iter()
            .max_by_key(|(known, _)| (known.len(), *known))
            .map(|(_, fields)| &fields[..])
    };
    let begins = longest(
        KNOWN
            .iter()
            .filter(|(known, _)| known.len() >= 8 && words.starts_with(known.as_str()))
            .collect(),
    );
    let ends = longest(
        ALONE
            .iter()
            .filter(|(known, _)| known.len() >= 4 && words.ends_with(known.as_str()))
            .collect(),
    );
    let ends = ends.filter(|_| names_a_place(heading));
    let alone = ALONE.get(&words).map(|fields| &fields[..]);
    let slip = Some(like).filter(|_| score >= SLIP);
    let nearest = alone.or(Some(like).filter(|_| score >= LIKE)).or(begins).or(ends);
    let mut asks: Vec<usize> = match (alone, slip, begins) {
        (None, None, None) => ends.unwrap_or_default().to_vec(),
        parts => [parts.0, parts.1, parts.2].into_iter().flatten().flatten().copied().collect(),
    };
    asks.sort_unstable();
    asks.dedup();
    Guess {
        nearest: nearest.and_then(|fields| Some(FIELDS.get(*fields.first()?)?.heading())),
        asks,
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
