//! How the values of each type of field are read, shown and bounded.

use super::marking::MarkingSays;
use super::words::{Material, Rotation, ThreadHand, YesNo};
use crate::error::{Error, ErrorKind, cut};
use crate::joint::KeyFit;
use crate::units::{
    Angle, AngularVelocity, BalanceGrade, Date, Decimal, Exact, FRACTION, Force, Kind, Length,
    Mass, MassDensity, Pressure, Ratio, Shop, TemperatureCoefficient, TemperatureInterval, Time,
    Torque, Unbalance, Velocity, Words, degree, figure, foot_per_minute, inches, kelvin,
    millimetres, number, per_kelvin, read, takes_fractions,
};
use crate::wheel::{Abrasive, Bond, Fastening, FlangeKind, MachineKind, Shape};

/// A type that a field can have: one number in [`Facts`](super::Facts).
pub trait FieldType: Copy {
    /// How it is read, shown and bounded.
    const SORT: Sort;
    /// As the number that rules compare: whole steps, a code, or days.
    fn to_fact(self) -> f64;
    /// Back from that number; `None` for a code that is no word.
    fn from_fact(fact: f64) -> Option<Self>;
}

/// How the values of a field are read, shown and bounded.
#[derive(Clone, Copy)]
pub struct Sort {
    /// Name in messages.
    pub name: &'static str,
    /// How to write one.
    pub example: &'static str,
    /// Spellings of its units; empty for words, dates and plain ratios.
    pub units: fn() -> Vec<&'static str>,
    /// Its allowed words; empty for quantities and dates.
    pub words: fn() -> Vec<&'static str>,
    /// Greatest size either way, as a fact; beyond it somebody mistyped.
    pub most: f64,
    pub(super) read: fn(&str, Option<&str>, Decimal) -> Result<f64, Error>,
    pub(super) show: fn(f64, Shop) -> String,
}

/// Prints a value of some kind of quantity for a shop.
pub(crate) trait Shown: Sized {
    fn shown(fact: f64, shop: Shop) -> String;
}

macro_rules! shown {
    ($($kind:ty: |$fact:ident, $shop:ident| $text:expr, most $most:expr;)+) => {$(
        impl Shown for $kind {
            fn shown($fact: f64, $shop: Shop) -> String { $text }
        }
        impl FieldType for $kind {
            const SORT: Sort = Sort {
                name: <$kind as Kind>::NAME,
                example: <$kind as Kind>::EXAMPLE,
                units: || <$kind as Kind>::SPELLINGS.iter().map(|spelling| spelling.text).collect(),
                words: Vec::new,
                most: $most,
                read: read_quantity::<$kind>,
                show: <$kind as Shown>::shown,
            };
            #[inline]
            fn to_fact(self) -> f64 { self.exact() }
            #[inline]
            fn from_fact(fact: f64) -> Option<Self> { Some(Self::from_exact(fact)) }
        }
    )+};
}

/// A fact in one of the units of its kind.
fn in_unit<K: Kind + Exact>(fact: f64, unit: &'static str, digits: usize) -> String {
    // A thousand of them, since one is rounded to whole steps.
    let of = K::spelling(unit).map_or(f64::NAN, |spelling| (spelling.build)(1e3).exact() / 1e3);
    format!("{} {unit}", figure(fact / of, digits))
}

/// The units that a shop measures in by the inch, the metric ones being the first of each kind.
#[cfg(feature = "sheets")]
pub(crate) const INCH_UNITS: [&str; 7] = ["in", "sfpm", "lbf ft", "lbf", "psi", "lb/ft3", "lb"];

shown! {
    Length: |nm, shop| match shop {
        Shop::Metric => millimetres(nm),
        Shop::Inch => inches(nm),
    }, most 10e9;
    Time: |t, _shop| format!("{} s", figure(t / 1e6, 3)), most 1e11;
    Torque: |t, shop| match shop {
        Shop::Metric => format!("{} N m", figure(t / 1e6, 4)),
        Shop::Inch => in_unit::<Self>(t, "lbf ft", 4),
    }, most 1e15;
    Force: |n, shop| match shop {
        Shop::Metric => format!("{} kN", figure(n / 1e6, 3)),
        Shop::Inch => in_unit::<Self>(n, "lbf", 1),
    }, most 1e15;
    Velocity: |v, shop| match shop {
        Shop::Metric => format!("{} m/s", figure(v / 1e6, 3)),
        Shop::Inch => format!("{} sfpm", figure(Self::from_exact(v).get::<foot_per_minute>(), 1)),
    }, most 1000e6;
    AngularVelocity: |n, _shop| format!("{} rpm", figure(n / 1e6, 2)), most 1e12;
    Angle: |a, _shop| format!("{}°", figure(Self::from_exact(a).get::<degree>(), 4)), most 6.283_185_308e9;
    TemperatureInterval: |t, _shop| format!("{} K", figure(Self::from_exact(t).get::<kelvin>(), 1)), most 1e6;
    TemperatureCoefficient: |c, _shop| {
        format!("{} um/m/K", figure(Self::from_exact(c).get::<per_kelvin>() * 1e6, 2))
    }, most 1e9;
    Pressure: |p, shop| match shop {
        Shop::Metric => format!("{} MPa", figure(p / 1e9, 4)),
        Shop::Inch => in_unit::<Self>(p, "psi", 1),
    }, most 1e15;
    MassDensity: |d, shop| match shop {
        Shop::Metric => format!("{} kg/m3", figure(d / 1e3, 2)),
        Shop::Inch => in_unit::<Self>(d, "lb/ft3", 3),
    }, most 30e6;
    Mass: |m, shop| match shop {
        Shop::Metric => format!("{} kg", figure(m / 1e9, 6)),
        Shop::Inch => in_unit::<Self>(m, "lb", 5),
    }, most 1e13;
    Unbalance: |u, _shop| format!("{} g mm", figure(u / 1e6, 3)), most 1e14;
    BalanceGrade: |g, _shop| format!("{} mm/s", figure(g / 1e6, 4)), most 1e10;
}

impl FieldType for Ratio {
    const SORT: Sort = Sort {
        name: "plain number",
        example: "0.25",
        units: Vec::new,
        words: Vec::new,
        most: 1e12,
        read: |text, _, decimal| match number(text, decimal) {
            Ok(value) => Ok(Self::from(value).exact()),
            Err(why) => Err(ErrorKind::NotAQuantity {
                argument: "value".into(),
                text: cut(text),
                kind: "plain number",
                why,
                hint: "write a number without a unit, like \"0.25\"".into(),
            }
            .into()),
        },
        show: |fact, _| figure(fact / 1e9, 4),
    };
    #[inline]
    fn to_fact(self) -> f64 {
        self.exact()
    }
    #[inline]
    fn from_fact(fact: f64) -> Option<Self> {
        Some(Self::from_exact(fact))
    }
}

fn read_quantity<K: Kind + Exact>(
    text: &str,
    unit: Option<&str>,
    decimal: Decimal,
) -> Result<f64, Error> {
    let Some(unit) = unit.and_then(K::spelling) else { return read::<K>(text).map(Exact::exact) };
    let fraction = text.contains('/') && !takes_fractions(unit.text);
    let value = if fraction { Err(FRACTION) } else { number(text, decimal) };
    match value {
        Ok(value) => Ok((unit.build)(value).exact()),
        // A cell that carries a unit of its own says what it means.
        Err(why) => read::<K>(text).map(Exact::exact).map_err(|_| {
            let mark = match decimal {
                Decimal::Point => "point",
                Decimal::Comma => "comma",
            };
            ErrorKind::NotAQuantity {
                argument: "value".into(),
                text: cut(text),
                kind: K::NAME,
                why,
                hint: format!(
                    "write a number with a {mark}; the column's unit is \"{}\"",
                    unit.text
                ),
            }
            .into()
        }),
    }
}

impl FieldType for Date {
    const SORT: Sort = Sort {
        name: "date",
        example: "2027-03-01",
        units: Vec::new,
        words: Vec::new,
        most: 1e7,
        read: |text, _, _| Ok(Self::read(text)?.days() as f64),
        show: |days, _| Self::from_days(days as i64).to_string(),
    };
    fn to_fact(self) -> f64 {
        self.days() as f64
    }
    fn from_fact(fact: f64) -> Option<Self> {
        Some(Self::from_days(fact as i64))
    }
}

macro_rules! word_fields {
    ($($kind:ty),+) => {$(
        impl FieldType for $kind {
            const SORT: Sort = Sort {
                name: <$kind as Words>::NAME,
                example: <$kind as Words>::LIST[0].1,
                units: Vec::new,
                words: || <$kind as Words>::LIST.iter().map(|(_, word, _)| *word).collect(),
                most: 255.0,
                read: |text, _, _| <$kind as Words>::read_word(text).map(FieldType::to_fact),
                show: |code, _| Self::from_fact(code).map_or_else(String::new, |word| word.to_string()),
            };
            #[inline]
            fn to_fact(self) -> f64 { f64::from(self as u8) }
            #[inline(always)]
            fn from_fact(fact: f64) -> Option<Self> {
                <$kind as Words>::ALL.get(fact as usize).copied()
            }
        }
    )+};
}
word_fields!(
    YesNo,
    Rotation,
    ThreadHand,
    Material,
    Shape,
    Fastening,
    Abrasive,
    Bond,
    MachineKind,
    FlangeKind,
    KeyFit,
    MarkingSays
);

/// Prints a value as findings do in a millimetre shop.
#[cfg(feature = "python")]
pub(crate) fn show<K: FieldType>(value: K) -> String {
    (K::SORT.show)(value.to_fact(), Shop::Metric)
}
