//! Tolerance classes such as H7 and g6, and sizes that carry one.

use std::fmt;
use std::str::FromStr;

use crate::error::{Error, ErrorKind, cut};
use crate::tables::iso286::deviations::LETTERS;
use crate::tables::iso286::grades;
use crate::units::{Decimal, FRACTION, Length, millimeter, number, read, words};

words! {
    /// What a tolerance class is for.
    Feature, "feature" {
        /// A hole: letters in capitals.
        Hole = "hole" ["bore"];
        /// A shaft: small letters.
        Shaft = "shaft" [];
    }
}

/// A tolerance class: a letter for where the tolerance lies, a grade for its width.
///
/// ```
/// use hubwright::joint::{Class, Feature};
///
/// let class: Class = "H7".parse()?;
/// assert_eq!(class.feature(), Feature::Hole);
/// assert_eq!(class.to_string(), "H7");
/// # Ok::<(), hubwright::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Class {
    feature: Feature,
    /// Place in [`LETTERS`].
    letter: u8,
    /// Column in [`grades::TOLERANCES`].
    column: u8,
}

impl Class {
    /// Whether it is for a hole or a shaft.
    pub const fn feature(self) -> Feature {
        self.feature
    }

    /// Its letter, in capitals for a hole.
    pub fn letter(self) -> String {
        spelt(self.feature, self.place())
    }

    /// Its grade, such as `IT7`.
    pub fn grade(self) -> String {
        format!("IT{}", self.grade_name())
    }

    /// Place of its letter in [`LETTERS`].
    pub(super) fn place(self) -> usize {
        usize::from(self.letter)
    }

    /// Column of its grade in [`grades::TOLERANCES`].
    pub(super) fn column(self) -> usize {
        usize::from(self.column)
    }

    fn grade_name(self) -> &'static str {
        grades::NAMES.get(self.column()).copied().unwrap_or_default()
    }
}

/// A letter as it is written for a hole or a shaft.
pub(super) fn spelt(feature: Feature, place: usize) -> String {
    let small = LETTERS.get(place).copied().unwrap_or_default();
    match feature {
        Feature::Hole => small.to_ascii_uppercase(),
        Feature::Shaft => small.to_owned(),
    }
}

impl fmt::Display for Class {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let small = LETTERS.get(self.place()).copied().unwrap_or_default();
        for letter in small.chars() {
            let letter =
                if self.feature == Feature::Hole { letter.to_ascii_uppercase() } else { letter };
            write!(f, "{letter}")?;
        }
        f.write_str(self.grade_name())
    }
}

impl FromStr for Class {
    type Err = Error;

    /// Reads a class; capitals are a hole, small letters a shaft.
    ///
    /// # Errors
    ///
    /// [`ErrorKind::UnknownWord`] for a letter or grade that the standard lacks.
    fn from_str(text: &str) -> Result<Self, Error> {
        class(text.trim()).ok_or_else(|| unknown(text.trim()))
    }
}

/// Letters packed into one number, so that a class is found in a few comparisons.
const fn packed(letters: &[u8]) -> u16 {
    match letters {
        [one] => *one as u16,
        [first, second] => (*first as u16) << 8 | *second as u16,
        _ => 0,
    }
}

const PACKED: [u16; LETTERS.len()] = {
    let mut all = [0; LETTERS.len()];
    let mut at = 0;
    while at < all.len() {
        all[at] = packed(LETTERS[at].as_bytes());
        at += 1;
    }
    all
};

fn class(text: &str) -> Option<Class> {
    let text = text.as_bytes();
    let (letters, grade) = text.split_at(text.iter().position(|b| !b.is_ascii_alphabetic())?);
    // Capitals are small letters with one bit less in each byte.
    const SMALL: u16 = 0x2020;
    let (feature, letters) = match letters {
        all if all.iter().all(u8::is_ascii_lowercase) => (Feature::Shaft, packed(all)),
        all @ [_] if all[0].is_ascii_uppercase() => (Feature::Hole, packed(all) | SMALL & 0xff),
        all if all.iter().all(u8::is_ascii_uppercase) => (Feature::Hole, packed(all) | SMALL),
        _ => return None,
    };
    let letter = PACKED.iter().position(|known| *known == letters)?;
    let column = match grade {
        b"01" => 0,
        [digit @ b'0'..=b'9'] => grades::column(usize::from(digit - b'0')),
        [b'1', digit @ b'0'..=b'8'] => grades::column(usize::from(digit - b'0') + 10),
        _ => return None,
    };
    Some(Class { feature, letter: letter as u8, column: column as u8 })
}

#[cold]
fn unknown(text: &str) -> Error {
    let letters = text.find(|c: char| !c.is_ascii_alphabetic()).unwrap_or(text.len());
    let letters = text.get(..letters).unwrap_or_default();
    let known = LETTERS.iter().any(|letter| letter.eq_ignore_ascii_case(letters));
    let alike = letters.bytes().all(|b| b.is_ascii_uppercase())
        || letters.bytes().all(|b| b.is_ascii_lowercase());
    let hint = if text.contains('/') {
        "a hole and a shaft together are a fit, which `fit` takes, like \"20 H7/g6\""
    } else if known && letters == text {
        "the grade is missing: write it after the letter, like H7"
    } else if known && !alike {
        "write the letters alike: capitals for a hole, small ones for a shaft"
    } else {
        "write a letter and a grade with nothing between them, like H7 for a hole or g6 for a shaft"
    };
    ErrorKind::UnknownWord {
        argument: "class".into(),
        text: cut(text),
        allowed: format!(
            "{} for a shaft or the same in capitals for a hole, then a grade 01 or 0 to 18",
            LETTERS.join(" ")
        ),
        hint: hint.into(),
    }
    .into()
}

/// What a text should have been, and how to write it.
#[derive(Clone, Copy)]
pub(super) struct Wanted {
    pub argument: &'static str,
    pub kind: &'static str,
    pub hint: &'static str,
}

impl Wanted {
    #[cold]
    pub(super) fn refuse(self, text: &str, why: &'static str) -> Error {
        ErrorKind::NotAQuantity {
            argument: self.argument.into(),
            text: cut(text),
            kind: self.kind,
            why,
            hint: self.hint.into(),
        }
        .into()
    }
}

/// Splits `20 H7` and the like into nominal size and class.
pub(super) fn size_and_class(text: &str, wanted: Wanted) -> Result<(Length, Class), Error> {
    let trimmed = text.trim();
    let size = trimmed.trim_start_matches(['Ø', 'ø', '⌀', 'Φ', 'φ']).trim_start();
    // The class is in the last word, from its first letter on: "20H7", "1-1/4\" H7".
    let word = size.rfind(char::is_whitespace).map_or(0, |blank| blank + 1);
    let last = size.get(word..).unwrap_or(size);
    let Some(letter) = last.find(|c: char| c.is_ascii_alphabetic()) else {
        return Err(wanted.refuse(trimmed, "it does not end in a tolerance class"));
    };
    let (front, tail) = size.split_at(size.len() - last.len() + letter);
    let front = front.trim_end();
    if front.is_empty() {
        return Err(wanted.refuse(trimmed, "there is no nominal size before the class"));
    }
    let class: Class = tail.parse()?;
    Ok((nominal(front, wanted)?, class))
}

/// Reads a nominal size: millimetres where no unit is written.
fn nominal(text: &str, wanted: Wanted) -> Result<Length, Error> {
    let bare = text.strip_suffix("mm").unwrap_or(text).trim_end();
    let plain = |c: char| c.is_ascii_digit() || c == '.';
    if bare.chars().all(plain)
        && let Ok(value) = bare.parse()
    {
        return Ok(Length::new::<millimeter>(value));
    }
    if !text.ends_with(|c: char| c.is_ascii_digit()) {
        return read(text).map_err(|error| error.named(wanted.argument));
    }
    if text.contains('/') {
        return Err(wanted.refuse(text, FRACTION));
    }
    let value = number(text, Decimal::Point).map_err(|why| wanted.refuse(text, why))?;
    Ok(Length::new::<millimeter>(value))
}
