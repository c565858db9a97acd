//! Every datum of a mounting, declared once.
//!
//! [`with_parts!`] holds the declaration. The typed parts, the facts that
//! rules read, the Python classes and [`FIELDS`] are made from it, so that a
//! heading, its unit, its allowed words and its documentation can't drift
//! apart.

use std::sync::LazyLock;

use crate::error::{Error, ErrorKind, cut};
use crate::units::{
    Angle, AngularVelocity, Date, Decimal, Exact, Kind, Length, Shop, TemperatureCoefficient,
    TemperatureInterval, Velocity, Words, degree, figure, foot_per_minute, inches, kelvin,
    millimetres, number, per_kelvin, read, words,
};
use crate::wheel::{Abrasive, Bond, Fastening, FlangeKind, MachineKind, Shape};

words! {
    /// Yes or no.
    YesNo, "yes or no" {
        /// Yes.
        Yes = "yes" ["y", "true", "1", "x"];
        /// No.
        No = "no" ["n", "false", "0", "none"];
    }
}

words! {
    /// Which way the spindle turns, seen from the nut.
    Rotation, "rotation" {
        /// As the hands of a clock.
        Clockwise = "clockwise" ["cw"];
        /// Against the hands of a clock.
        Anticlockwise = "anticlockwise" ["ccw", "counterclockwise"];
        /// Both ways: the spindle is reversed in use.
        Both = "both" ["either", "reversing"];
    }
}

words! {
    /// Hand of the thread that holds the wheel.
    ThreadHand, "thread hand" {
        /// Right-hand.
        Right = "right" ["rh", "right-hand"];
        /// Left-hand.
        Left = "left" ["lh", "left-hand"];
        /// No central nut: the flange is held by its own screws.
        NoNut = "no nut" ["screws"];
    }
}

words! {
    /// What a flange or hub is made of.
    Material, "material" {
        /// Steel.
        Steel = "steel" ["hardened steel", "mild steel"];
        /// Cast iron.
        CastIron = "cast iron" ["iron"];
        /// Aluminium alloy.
        Aluminium = "aluminium" ["aluminum", "alu"];
        /// Brass or bronze.
        Brass = "brass" ["bronze"];
        /// Anything else.
        Other = "other" ["plastic", "zinc"];
    }
}

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

/// Which values a field takes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Takes {
    /// Any value, negative ones too.
    Any,
    /// Values above zero.
    Positive,
    /// Zero and above.
    ZeroOrMore,
}

/// Hands the declaration of every part, place and field to the macro `$then`.
///
/// A field reads: doc comment, `name: Type = "heading words" ["other words"], Takes, NoneMeans;`.
/// Its heading in a sheet is the words of its place and then its own.
macro_rules! with_parts {
    ($then:ident) => {
        $then! {
            parts {
                /// The machine that the spindle belongs to.
                Machine {
                    /// Kind of machine, which decides how far its guard may be open.
                    kind: MachineKind = "kind" ["type"], Any, Refused;
                    /// Angle over which the guard leaves the wheel open.
                    guard_exposure: Angle = "guard exposure" ["guard opening"], ZeroOrMore, Refused;
                    /// Where the opening starts, above the horizontal through the spindle; negative below it.
                    guard_start: Angle = "guard start" [], Any, Absent;
                    /// Whether the work has to touch the wheel below the height of the spindle.
                    work_below_spindle: YesNo = "work below spindle" [], Any, Absent;
                }
                /// The spindle.
                Spindle {
                    /// Greatest speed that the spindle can reach, belts and inverter at their fastest.
                    greatest_speed: AngularVelocity = "greatest speed" ["max speed", "maximum speed", "top speed", "speed"], Positive, Refused;
                    /// Which way it turns, seen from the nut.
                    rotation: Rotation = "rotation" ["direction"], Any, Refused;
                }
                /// The wheel, as it was when new.
                Wheel {
                    /// Shape, by its type number.
                    shape: Shape = "shape" ["type"], Any, Refused;
                    /// Outside diameter of the new wheel.
                    diameter: Length = "diameter" ["dia", "od", "outside diameter"], Positive, Refused;
                    /// Size the diameter is sold by, when the wheel is of a listed inch size.
                    nominal_diameter: Length = "nominal diameter" ["nominal size"], Positive, Absent;
                    /// Thickness.
                    thickness: Length = "thickness" ["width"], Positive, Refused;
                    /// Hole, as measured.
                    hole: Length = "hole" ["bore", "hole diameter", "bore diameter"], Positive, Refused;
                    /// Size the hole is sold by; nominal size of the spigot too.
                    nominal_hole: Length = "nominal hole" ["nominal bore"], Positive, Absent;
                    /// Smallest hole found in several directions.
                    smallest_hole: Length = "smallest hole" ["smallest bore"], Positive, Absent;
                    /// Largest hole found in several directions.
                    largest_hole: Length = "largest hole" ["largest bore"], Positive, Absent;
                    /// Rotational speed marked on the wheel.
                    marked_speed: AngularVelocity = "marked speed" ["marked rpm", "max rpm", "maximum rpm"], Positive, Absent;
                    /// Rim speed marked on the wheel.
                    marked_rim_speed: Velocity = "marked rim speed" ["marked peripheral speed", "max rim speed"], Positive, Absent;
                    /// How it is held; taken for flanges when nobody asks.
                    fastening: Fastening = "fastening" ["held by"], Any, Refused;
                    /// Abrasive.
                    abrasive: Abrasive = "abrasive" [], Any, Absent;
                    /// Bond.
                    bond: Bond = "bond" [], Any, Absent;
                    /// Use-before date on the wheel.
                    use_before: Date = "use before" ["use by", "expiry", "expires"], Any, Absent;
                    /// Date of manufacture.
                    made: Date = "made" ["manufactured", "date of manufacture"], Any, Absent;
                    /// Width of the reducing bushing in the hole.
                    bushing_width: Length = "bushing width" ["bushing length", "bush width"], Positive, Absent;
                    /// Whether the bushing touches a flange.
                    bushing_touches_flange: YesNo = "bushing touches flange" [], Any, Absent;
                    /// Whether one bushing sits in another.
                    bushing_nested: YesNo = "bushing nested" ["bushings nested"], Any, Absent;
                    /// How much warmer than when measured the wheel gets at its hole.
                    warmer_by: TemperatureInterval = "warmer by" [], ZeroOrMore, Zero;
                    /// Thermal expansion of the wheel.
                    expansion: TemperatureCoefficient = "expansion" [], ZeroOrMore, Absent;
                }
                /// A flange: the fixed one of the hub or the loose one.
                Flange {
                    /// Kind, which decides the table it is judged by.
                    kind: FlangeKind = "kind" ["type"], Any, Refused;
                    /// Outside diameter of the face that bears on the wheel.
                    diameter: Length = "diameter" ["dia", "od"], Positive, Refused;
                    /// Width of the land that bears on the wheel, on one side.
                    land: Length = "land" ["land width", "bearing width"], Positive, Refused;
                    /// Depth of the recess inside the land.
                    recess: Length = "recess" ["recess depth", "relief", "relief depth"], ZeroOrMore, Zero;
                    /// Width of the undercut at the hole, on one side.
                    undercut: Length = "undercut" [], ZeroOrMore, Zero;
                    /// Thickness of the plate at the hole.
                    thickness_at_hole: Length = "thickness at hole" ["thickness", "thickness at bore"], Positive, Refused;
                    /// Thickness of the plate at the edge of the recess.
                    thickness_at_edge: Length = "thickness at edge" ["edge thickness"], Positive, Refused;
                    /// What it is made of.
                    material: Material = "material" [], Any, Refused;
                    /// Run-out of its face on the running spindle, total reading.
                    run_out: Length = "run-out" ["face run-out", "runout"], ZeroOrMore, Zero;
                    /// Whether it is keyed to the hub, so that it can't turn the nut.
                    keyed: YesNo = "keyed" [], Any, Absent;
                }
                /// The blotter between the wheel and one flange.
                Blotter {
                    /// Whether there is one.
                    present: YesNo = "present" ["fitted"], Any, Refused;
                    /// Outside diameter.
                    diameter: Length = "diameter" ["dia", "od"], Positive, Absent;
                    /// Hole.
                    hole: Length = "hole" ["bore"], Positive, Absent;
                    /// Thickness.
                    thickness: Length = "thickness" [], ZeroOrMore, Zero;
                    /// Whether it was clamped before.
                    used_before: YesNo = "used before" ["reused", "used"], Any, Absent;
                    /// Whether the wheel's maker fixed it to the wheel.
                    fixed_by_maker: YesNo = "fixed by maker" ["factory fixed"], Any, Absent;
                }
                /// The hub.
                Hub {
                    /// Diameter of the spigot that the wheel sits on.
                    spigot: Length = "spigot" ["spigot diameter", "pilot", "pilot diameter"], Positive, Refused;
                    /// Smallest spigot found in several directions.
                    smallest_spigot: Length = "smallest spigot" ["smallest pilot"], Positive, Absent;
                    /// Largest spigot found in several directions.
                    largest_spigot: Length = "largest spigot" ["largest pilot"], Positive, Absent;
                    /// Run-out of the spigot on the running spindle, total reading.
                    spigot_run_out: Length = "spigot run-out" ["pilot run-out", "spigot runout"], ZeroOrMore, Zero;
                    /// Run-out asked for, of spigot and flange face.
                    run_out_limit: Length = "run-out limit" ["runout limit"], Positive, Absent;
                    /// Greatest clearance asked for between hole and spigot, on diameter.
                    clearance_limit: Length = "clearance limit" [], Positive, Absent;
                    /// What the spigot is made of.
                    material: Material = "material" [], Any, Absent;
                    /// How much warmer than when measured the spigot gets.
                    warmer_by: TemperatureInterval = "warmer by" [], ZeroOrMore, Zero;
                    /// Thermal expansion of the spigot.
                    expansion: TemperatureCoefficient = "expansion" [], ZeroOrMore, Absent;
                    /// From the fixed flange's land to the first full thread.
                    thread_from: Length = "thread from" ["thread starts"], ZeroOrMore, Absent;
                    /// From the fixed flange's land to the end of the thread.
                    thread_to: Length = "thread to" ["thread ends"], Positive, Absent;
                    /// From the fixed flange's land to the shoulder that would stop the loose flange.
                    flange_stop: Length = "flange stop" ["shoulder"], ZeroOrMore, Zero;
                    /// Thickness of both stabiliser discs together.
                    stabilisers: Length = "stabilisers" ["stabilizers", "stabiliser thickness"], ZeroOrMore, Zero;
                }
                /// The nut.
                Nut {
                    /// Hand of its thread.
                    thread_hand: ThreadHand = "thread hand" ["thread", "hand"], Any, Refused;
                    /// Length of thread in it.
                    length: Length = "length" ["thread length"], Positive, Absent;
                }
            }
            places {
                machine: Machine = "machine" ["grinder"];
                spindle: Spindle = "spindle" [];
                wheel: Wheel = "wheel" [];
                fixed_flange: Flange = "fixed flange" ["inner flange", "back flange", "hub flange"];
                loose_flange: Flange = "loose flange" ["outer flange", "front flange"];
                fixed_blotter: Blotter = "fixed blotter" ["inner blotter", "back blotter"];
                loose_blotter: Blotter = "loose blotter" ["outer blotter", "front blotter"];
                hub: Hub = "hub" ["adapter", "adaptor", "sleeve", "arbor", "arbour"];
                nut: Nut = "nut" [];
            }
        }
    };
}
pub(crate) use with_parts;

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
    /// Spellings of its units; empty for words and dates.
    pub units: fn() -> Vec<&'static str>,
    /// Its allowed words; empty for quantities and dates.
    pub words: fn() -> Vec<&'static str>,
    /// Greatest size either way, as a fact; beyond it somebody mistyped.
    pub most: f64,
    read: fn(&str, Option<&str>, Decimal) -> Result<f64, Error>,
    show: fn(f64, Shop) -> String,
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

shown! {
    Length: |nm, shop| match shop {
        Shop::Metric => millimetres(nm),
        Shop::Inch => inches(nm),
    }, most 10e9;
    Velocity: |v, shop| match shop {
        Shop::Metric => format!("{} m/s", figure(v / 1e6, 3)),
        Shop::Inch => format!("{} sfpm", figure(Self::from_exact(v).get::<foot_per_minute>(), 1)),
    }, most 1000e6;
    AngularVelocity: |n, _shop| format!("{} rpm", figure(n / 1e6, 2)), most 1e12;
    Angle: |a, _shop| format!("{}°", figure(Self::from_exact(a).get::<degree>(), 2)), most 6.283_185_308e9;
    TemperatureInterval: |t, _shop| format!("{} K", figure(Self::from_exact(t).get::<kelvin>(), 1)), most 1e6;
    TemperatureCoefficient: |c, _shop| {
        format!("{} um/m/K", figure(Self::from_exact(c).get::<per_kelvin>() * 1e6, 2))
    }, most 1e9;
}

fn read_quantity<K: Kind + Exact>(
    text: &str,
    unit: Option<&str>,
    decimal: Decimal,
) -> Result<f64, Error> {
    let Some(unit) = unit.and_then(K::spelling) else { return read::<K>(text).map(Exact::exact) };
    match number(text, decimal) {
        Ok(value) => Ok((unit.build)(value).exact()),
        // A cell that carries a unit of its own says what it means.
        Err(why) => read::<K>(text).map(Exact::exact).map_err(|_| {
            ErrorKind::NotAQuantity {
                argument: "value".into(),
                text: cut(text),
                kind: K::NAME,
                why,
                hint: match decimal {
                    Decimal::Point => format!("write a number with a point, in {}", unit.text),
                    Decimal::Comma => format!("write a number with a comma, in {}", unit.text),
                },
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
    FlangeKind
);

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
        let fact =
            (self.sort.read)(text, unit, decimal).map_err(|error| error.named(&self.heading()))?;
        self.admit(fact).map_err(|error| error.named(&self.heading()))
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
        };
        if low && fact <= self.sort.most {
            return Ok(fact);
        }
        let shown = self.show(fact, Shop::Metric);
        let (given, unit) = shown.split_once(' ').unwrap_or((&shown, ""));
        let most = self.show(self.sort.most, Shop::Metric);
        let most = most.split_once(' ').map_or(most.as_str(), |(number, _)| number).to_owned();
        let range = match self.takes {
            Takes::Any => format!("outside -{most} to {most}"),
            Takes::Positive => format!("not above 0 and up to {most}"),
            Takes::ZeroOrMore => format!("outside 0 to {most}"),
        };
        Err(ErrorKind::OutOfRange {
            argument: argument(),
            given: given.trim_end_matches('°').parse().unwrap_or(fact),
            range: range.replace('°', ""),
            unit: (self.sort.units)().into_iter().find(|known| *known == unit).unwrap_or("deg"),
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

/// Prints a value as findings do in a millimetre shop.
#[cfg(feature = "python")]
pub(crate) fn show<K: FieldType>(value: K) -> String {
    (K::SORT.show)(value.to_fact(), Shop::Metric)
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
