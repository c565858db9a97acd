//! Every datum of a mounting, declared once.
//!
//! `with_parts!` holds the declaration. The typed parts, the facts that
//! rules read, the Python classes and [`FIELDS`] are made from it, so that a
//! heading, its unit, its allowed words and its documentation can't drift
//! apart.

use std::sync::LazyLock;

use super::marking::MarkingSays;
use super::sort::{FieldType, Sort};
use super::words::{Material, Rotation, ThreadHand, YesNo};
use crate::error::{Error, ErrorKind};
use crate::joint::KeyFit;
use crate::units::{
    Angle, AngularVelocity, BalanceGrade, Date, Decimal, Force, Length, Mass, MassDensity,
    Pressure, Ratio, Shop, TemperatureCoefficient, TemperatureInterval, Time, Torque, Unbalance,
    Velocity,
};
use crate::wheel::{Abrasive, Bond, Fastening, FlangeKind, MachineKind, Shape};

/// What the word `none` in a cell says.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NoneMeans {
    /// Nothing: a mounting always has one.
    Refused,
    /// That the size is zero.
    Zero,
    /// That this mounting has no such thing, as if the heading were not there.
    Absent,
}

/// A half, as the fact of a ratio.
const HALF: f64 = 0.5e9;

/// 200 kg/m³, as a fact.
const LEAST_DENSITY: f64 = 200e3;

/// Which values a field takes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Takes {
    /// Any value, negative ones too.
    Any,
    /// Values above zero.
    Positive,
    /// Zero and above.
    ZeroOrMore,
    /// Ratios above zero and below a half.
    UnderHalf,
    /// Ratios from one up.
    OneOrMore,
    /// Ratios above zero and up to one.
    UpToOne,
    /// Densities that a wheel can have: less is a number in another unit.
    Dense,
}

pub(crate) use super::declared::with_parts;

/// One datum of a mounting: what a sheet calls it, how it is read, what it means.
#[derive(Clone, Copy)]
pub struct Field {
    /// Place it belongs to: the attribute of [`Mounting`](super::Mounting), such as `fixed_flange`.
    pub place: &'static str,
    /// Its attribute of that part, such as `diameter`.
    pub name: &'static str,
    /// Words of the place, such as `fixed flange`.
    pub place_words: &'static str,
    /// Other words for the place.
    pub place_also: &'static [&'static str],
    /// Its own words, which follow those of the place in a heading.
    pub words: &'static str,
    /// Other words for it.
    pub also: &'static [&'static str],
    /// What it is.
    pub doc: &'static str,
    /// How it is read, shown and bounded.
    pub sort: Sort,
    /// Which values it takes.
    pub takes: Takes,
    /// What the word `none` says.
    pub none: NoneMeans,
}

impl Field {
    /// Its heading in a sheet, without a unit: `fixed flange diameter`.
    pub fn heading(&self) -> String {
        format!("{} {}", self.place_words, self.words)
    }

    /// Reads a cell. Blank cells are not for it.
    ///
    /// `unit` is what the heading states.
    ///
    /// # Errors
    ///
    /// What is wrong with the cell, under the field's heading.
    pub fn read(&self, text: &str, unit: Option<&str>, decimal: Decimal) -> Result<f64, Error> {
        if text.trim().eq_ignore_ascii_case("none") && (self.sort.words)().is_empty() {
            match self.none {
                NoneMeans::Zero => return Ok(0.0),
                NoneMeans::Absent => return Ok(super::facts::NOT_ASKED),
                NoneMeans::Refused => {}
            }
        }
        let absent_word =
            self.none == NoneMeans::Absent && text.trim().eq_ignore_ascii_case("none");
        if absent_word && (self.sort.read)(text, unit, decimal).is_err() {
            return Ok(super::facts::NOT_ASKED);
        }
        let fact = (self.sort.read)(text, unit, decimal)
            .map_err(|error| self.explained(error, text, unit).named(&self.heading()))?;
        self.admit(fact).map_err(|error| error.named(&self.heading()))
    }

    /// An error of a cell with a hint that knows the sheet.
    fn explained(&self, mut error: Error, text: &str, unit: Option<&str>) -> Error {
        let none = text.trim().eq_ignore_ascii_case("none");
        let advice = match error.kind() {
            _ if matches!(
                text.trim(),
                "-" | "–" | "?" | "n/a" | "N/A" | "n.a." | "tbd" | "TBD"
            ) =>
            {
                "leave it blank where it is not known; write none where there is no such thing"
                    .into()
            }
            _ if none => {
                format!("a mounting always has a {}: give it, or leave it blank", self.heading())
            }
            ErrorKind::NoUnit { .. } if unit.is_none() => format!(
                "state the unit in the heading, like \"{} [{}]\", or in the cell",
                self.heading(),
                (self.sort.units)().first().unwrap_or(&"")
            ),
            _ => return error,
        };
        error.set_hint(advice);
        error
    }

    /// Passes a value that the field takes.
    ///
    /// # Errors
    ///
    /// [`ErrorKind::NotFinite`] or [`ErrorKind::OutOfRange`], under the field's name.
    pub fn admit(&self, fact: f64) -> Result<f64, Error> {
        let argument = || self.name.to_owned();
        if !fact.is_finite() {
            return Err(ErrorKind::NotFinite {
                argument: argument(),
                given: fact,
                example: self.sort.example,
            }
            .into());
        }
        let low = match self.takes {
            Takes::Any => fact >= -self.sort.most,
            Takes::Positive => fact > 0.0,
            Takes::ZeroOrMore => fact >= 0.0,
            Takes::UnderHalf => fact > 0.0 && fact < HALF,
            Takes::OneOrMore => fact >= 2.0 * HALF,
            Takes::UpToOne => fact > 0.0 && fact <= 2.0 * HALF,
            Takes::Dense => fact >= LEAST_DENSITY,
        };
        if low && fact <= self.sort.most {
            return Ok(fact);
        }
        let units = (self.sort.units)();
        let shown = self.show(fact, Shop::Metric);
        let (given, unit) = shown.split_once(' ').unwrap_or((&shown, ""));
        let most = self.show(self.sort.most, Shop::Metric);
        let most = most.split_once(' ').map_or(most.as_str(), |(number, _)| number).to_owned();
        let range = match self.takes {
            Takes::Any => format!("outside -{most} to {most}"),
            Takes::Positive => format!("not above 0 and up to {most}"),
            Takes::ZeroOrMore => format!("outside 0 to {most}"),
            Takes::UnderHalf => "not between 0 and 0.5".into(),
            Takes::OneOrMore => format!("outside 1 to {most}"),
            Takes::UpToOne => "not above 0 and up to 1".into(),
            Takes::Dense => format!("outside 200 to {most}"),
        };
        Err(ErrorKind::OutOfRange {
            argument: argument(),
            given: given.trim_end_matches('°').parse().unwrap_or(fact),
            range: range.replace('°', ""),
            unit: units
                .iter()
                .find(|known| **known == unit)
                .or(units.first())
                .copied()
                .unwrap_or(""),
            authority: String::new(),
            hint: format!(
                "check the number and its unit; it is written like \"{}\"",
                self.sort.example
            ),
        }
        .into())
    }

    /// Prints a fact of this field.
    pub fn show(&self, fact: f64, shop: Shop) -> String {
        (self.sort.show)(fact, shop)
    }
}

macro_rules! define_fields {
    (
        parts {$(
            $(#[doc = $part_doc:literal])+
            $part:ident {$(
                $(#[doc = $doc:literal])+
                $field:ident: $kind:ty = $words:literal [$($also:literal),*], $takes:ident, $none:ident;
            )+}
        )+}
        places {$($place:ident: $of:ident = $place_words:literal [$($place_also:literal),*];)+}
    ) => {
        $(
            impl super::$part {
                /// The fields of this part, in order; their places are still to be named.
                pub(crate) const FIELDS: &'static [Field] = &[$(Field {
                    place: "",
                    name: stringify!($field),
                    place_words: "",
                    place_also: &[],
                    words: $words,
                    also: &[$($also),*],
                    doc: concat!($($doc),+),
                    sort: <$kind as FieldType>::SORT,
                    takes: Takes::$takes,
                    none: NoneMeans::$none,
                }),+];
            }
        )+

        /// How many fields a mounting has.
        pub const COUNT: usize = 0 $(+ super::$of::FIELDS.len())+;

        /// Every field of a mounting, in the order of facts and columns.
        pub static FIELDS: LazyLock<Vec<Field>> = LazyLock::new(|| {
            let mut fields = Vec::with_capacity(COUNT);
            $(fields.extend(super::$of::FIELDS.iter().map(|field| Field {
                place: stringify!($place),
                place_words: $place_words,
                place_also: &[$($place_also),*],
                ..*field
            }));)+
            fields
        });
    };
}
with_parts!(define_fields);
