//! What rules read: one flat row of numbers a mounting.
//!
//! Lengths are whole nanometres, speeds whole micrometres a second and
//! millionths of a turn a minute, angles nanoradians, dates days, words their
//! codes. Missing data are two reserved NaNs, so that no comparison with
//! them holds.

use std::marker::PhantomData;
use std::sync::LazyLock;

use super::fields::{COUNT, FIELDS, Field, with_parts};
use super::marking::MarkingSays;
use super::sort::FieldType;
use super::words::{Material, Rotation, ThreadHand, YesNo};
use crate::error::{Error, ErrorKind};
use crate::joint::KeyFit;
use crate::units::{
    Angle, AngularVelocity, BalanceGrade, Date, Force, Length, Mass, MassDensity, Pressure, Ratio,
    Shop, TemperatureCoefficient, TemperatureInterval, Time, Torque, Unbalance, Velocity, Words,
};
use crate::wheel::demands::{Demands, RELIEF_FROM, Ready};
use crate::wheel::flange::has_table;
use crate::wheel::{Abrasive, Bond, Fastening, FlangeKind, MachineKind, Shape};

/// How far a nominal size may be from the measured one, as a share of it: 200 mm
/// are sold as 8 in (203.2 mm). Common practice, no source.
const NOMINAL_WITHIN: f64 = 0.03;

/// From the crests of a thread at 60° to the roots of both sides, over the pitch: 17/12 · √3.
const ROOT_DEPTH: f64 = 1.226_869_322;

/// Nobody asks for the datum.
pub const NOT_ASKED: f64 = f64::from_bits(0x7ff8_0000_0000_0001);
/// The datum is asked for and blank.
pub const BLANK: f64 = f64::from_bits(0x7ff8_0000_0000_0002);

/// Whether a number stands for a blank.
#[inline(always)]
pub(crate) fn is_blank(fact: f64) -> bool {
    fact.to_bits() == BLANK.to_bits()
}

/// One datum of kind `K`, given or missing.
#[derive(Clone, Copy, Debug)]
#[repr(transparent)]
pub struct Fact<K>(pub f64, PhantomData<K>);

impl<K: FieldType> Fact<K> {
    #[inline(always)]
    pub(crate) const fn new(fact: f64) -> Self {
        Self(fact, PhantomData)
    }

    /// Whether it is known.
    #[inline(always)]
    pub fn given(self) -> bool {
        !self.0.is_nan()
    }

    /// Whether it is asked for and blank.
    #[inline(always)]
    pub fn blank(self) -> bool {
        is_blank(self.0)
    }

    /// This, or another where nobody asks for this. A blank stays a blank.
    #[inline(always)]
    #[must_use]
    pub fn or(self, other: Self) -> Self {
        if self.given() || self.blank() { self } else { other }
    }

    /// The smaller of two readings of one thing, or the one that is asked for. A
    /// blank stays a blank, and a second reading never makes the first one better.
    #[inline(always)]
    #[must_use]
    pub fn least_with(self, other: Self) -> Self {
        self.extreme(other, self.0 <= other.0)
    }

    /// The larger of two readings of one thing, likewise.
    #[inline(always)]
    #[must_use]
    pub fn greatest_with(self, other: Self) -> Self {
        self.extreme(other, self.0 >= other.0)
    }

    #[inline(always)]
    fn extreme(self, other: Self, this: bool) -> Self {
        if self.blank() | other.blank() {
            Self::new(BLANK)
        } else if this | !other.given() {
            self
        } else {
            other
        }
    }

    /// Its value, when it is known.
    #[inline(always)]
    pub fn get(self) -> Option<K> {
        if self.given() { K::from_fact(self.0) } else { None }
    }

    /// Whether it is known to be this word.
    #[inline(always)]
    pub fn is(self, word: K) -> bool {
        self.0 == word.to_fact()
    }

    /// Whether it is known to be a word of which something is true.
    ///
    /// It comes down to comparing with the few words that pass the test, which
    /// a block loop does for four mountings at once.
    #[inline(always)]
    pub fn is_one(self, test: impl Fn(K) -> bool) -> bool
    where
        K: Words,
    {
        K::ALL.iter().fold(false, |any, word| any | (test(*word) & self.is(*word)))
    }
}

macro_rules! define_facts {
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
        /// The facts of each part.
        pub mod of {
            use super::*;
            $(
                $(#[doc = $part_doc])+
                #[derive(Clone, Copy, Debug)]
                pub struct $part {
                    $($(#[doc = $doc])+ pub $field: Fact<$kind>,)+
                }

                impl $part {
                    pub(super) fn numbers(&self, out: &mut Vec<f64>) {
                        out.extend([$(self.$field.0),+]);
                    }

                    #[inline(always)]
                    pub(super) fn gather(mut next: impl FnMut() -> f64) -> Self {
                        Self { $($field: Fact::new(next())),+ }
                    }
                }
            )+
        }

        /// Everything that rules read of one mounting.
        #[derive(Clone, Copy, Debug)]
        pub struct Facts {
            $(#[doc = concat!("The ", $place_words, ".")] pub $place: of::$of,)+
            /// What its table demands of the fixed flange.
            pub(crate) fixed_demands: Demands,
            /// What its table demands of the loose flange.
            pub(crate) loose_demands: Demands,
        }

        impl Facts {
            /// One number a field, in the order of [`FIELDS`](super::FIELDS).
            pub(crate) fn numbers(&self) -> Vec<f64> {
                let mut out = Vec::with_capacity(COUNT);
                $(self.$place.numbers(&mut out);)+
                out
            }

            /// The facts whose numbers `get` gives by the place of their field in
            /// [`FIELDS`](super::FIELDS), and the tables' demands.
            #[inline(always)]
            pub(crate) fn gather(get: impl Fn(usize) -> f64, fixed_demands: Demands, loose_demands: Demands) -> Self {
                let mut at = 0;
                let mut next = || { at += 1; get(at - 1) };
                Self {
                    $($place: of::$of::gather(&mut next),)+
                    fixed_demands,
                    loose_demands,
                }
            }
        }
    };
}
with_parts!(define_facts);

/// What contradicts itself in a row of numbers: a hole as large as its wheel, a
/// flange or stabiliser larger than it, a thread without room for its pitch, bore or slot, or
/// a wheel heavier than its rotor. Such a row was mistyped, and any verdict on it would
/// be about another mounting.
///
/// # Errors
///
/// [`ErrorKind::BadRow`] with the two sizes.
pub(crate) fn contradiction(number: impl Fn(usize) -> f64) -> Result<(), Error> {
    static PLACES: LazyLock<[usize; 7]> = LazyLock::new(|| {
        [
            ("wheel", "diameter"),
            ("wheel", "hole"),
            ("wheel", "smallest_hole"),
            ("wheel", "largest_hole"),
            ("fixed_flange", "diameter"),
            ("loose_flange", "diameter"),
            ("hub", "stabiliser_diameter"),
        ]
        .map(|(place, name)| {
            let is = |field: &Field| field.place == place && field.name == name;
            FIELDS.iter().position(is).unwrap_or(usize::MAX)
        })
    });
    let [wheel_at, parts @ ..] = &*PLACES;
    let wheel = number(*wheel_at);
    for part in parts {
        let size = number(*part);
        let (hole, field) = (FIELDS[*part].place == "wheel", &FIELDS[*part]);
        if size > wheel || (hole && size == wheel) {
            let show = |size| field.show(size, Shop::Metric);
            return Err(ErrorKind::BadRow {
                why: format!(
                    "has a {} of {} on a wheel of {}",
                    field.heading(),
                    show(size),
                    show(wheel)
                ),
                hint: "measure both again; one of the two is mistyped, or its unit is".into(),
            }
            .into());
        }
    }
    pair_contradiction(&number)?;
    mass_contradiction(number)
}

/// A wheel heavier than all that turns with it.
fn mass_contradiction(number: impl Fn(usize) -> f64) -> Result<(), Error> {
    static PLACES: LazyLock<[usize; 2]> = LazyLock::new(|| {
        [("wheel", "mass"), ("hub", "rotor_mass")].map(|(place, name)| {
            let is = |field: &Field| field.place == place && field.name == name;
            FIELDS.iter().position(is).unwrap_or(usize::MAX)
        })
    });
    let [wheel, rotor] = PLACES.map(&number);
    if wheel > rotor {
        let [wheel_field, rotor_field] = PLACES.map(|at| &FIELDS[at]);
        return Err(ErrorKind::BadRow {
            why: format!(
                "has a {} of {} in a {} of {}",
                wheel_field.heading(),
                wheel_field.show(wheel, Shop::Metric),
                rotor_field.heading(),
                rotor_field.show(rotor, Shop::Metric)
            ),
            hint: "the rotor is the wheel and all that turns with it; weigh both again".into(),
        }
        .into());
    }
    Ok(())
}

/// A pitch, bore, slot or face that the nut's thread has no room for.
fn pair_contradiction(number: impl Fn(usize) -> f64) -> Result<(), Error> {
    static PLACES: LazyLock<[usize; 13]> = LazyLock::new(|| {
        [
            ("nut", "thread_diameter"),
            ("nut", "thread_pitch"),
            ("hub", "thread_bore"),
            ("hub", "thread_slot_width"),
            ("hub", "thread_slot_depth"),
            ("nut", "face_hole"),
            ("nut", "face_diameter"),
            ("key", "width"),
            ("key", "shaft_diameter"),
            ("nut", "thread_friction"),
            ("nut", "greatest_thread_friction"),
            ("nut", "face_friction"),
            ("nut", "greatest_face_friction"),
        ]
        .map(|(place, name)| {
            let is = |field: &Field| field.place == place && field.name == name;
            FIELDS.iter().position(is).unwrap_or(usize::MAX)
        })
    });
    let [thread_at, pitch_at, bore_at, width_at, depth_at, hole_at, face_at, rest @ ..] = *PLACES;
    let [key_at, shaft_at, in_thread, in_thread_most, under_face, under_face_most] = rest;
    let [thread, pitch, bore, width, depth, hole, face, ..] = PLACES.map(&number);
    let above = |least: usize, most: usize| number(least) > number(most);
    // No thread is coarser than M1 × 0.25; the root lies 17/12 H below the crests.
    let root = thread - if pitch.is_nan() { 0.0 } else { ROOT_DEPTH * pitch };
    let wall = (thread - if bore.is_nan() { 0.0 } else { bore }) / 2.0;
    let clashes = [
        (pitch * 4.0 > thread, pitch_at, thread_at),
        (bore >= root, bore_at, thread_at),
        (width >= thread, width_at, thread_at),
        (depth >= wall, depth_at, thread_at),
        (face <= thread, face_at, thread_at),
        (hole >= face, hole_at, face_at),
        (number(key_at) >= number(shaft_at), key_at, shaft_at),
        (above(in_thread, in_thread_most), in_thread, in_thread_most),
        (above(under_face, under_face_most), under_face, under_face_most),
    ];
    let Some((_, part, whole)) = clashes.into_iter().find(|(clash, ..)| *clash) else {
        return Ok(());
    };
    let shown = |at: usize| {
        format!("{} of {}", FIELDS[at].heading(), FIELDS[at].show(number(at), Shop::Metric))
    };
    Err(ErrorKind::BadRow {
        why: format!("has a {} with a {}", shown(part), shown(whole)),
        hint: "measure both again; one of the two is mistyped, or its unit is".into(),
    }
    .into())
}

impl Facts {
    /// From one number a field; fields beyond the end of `numbers` are not asked.
    pub(crate) fn of(numbers: &[f64]) -> Self {
        let get = |at: usize| numbers.get(at).copied().unwrap_or(NOT_ASKED);
        let bare = Self::gather(get, Demands::NONE, Demands::NONE);
        let [fixed, loose] = bare.demands();
        Self::gather(get, fixed, loose)
    }

    /// What the tables demand of the fixed and of the loose flange.
    #[inline(always)]
    pub(crate) fn demands(&self) -> [Demands; 2] {
        let kinds =
            [&self.fixed_flange, &self.loose_flange].map(|flange| flange_kind(flange).0.to_bits());
        let fixed = self.demands_of(&self.fixed_flange);
        // The tables go by wheel and kind: two flanges of one kind are looked up once.
        if kinds[0] == kinds[1] {
            return [fixed; 2];
        }
        [fixed, self.demands_of(&self.loose_flange)]
    }

    /// What its table demands of a flange, or why it can't be asked.
    // Inlined, so that a block loop reads the few facts this needs and no others.
    #[inline(always)]
    fn demands_of(&self, flange: &of::Flange) -> Demands {
        let (shape, fastening) = (self.wheel.shape, self.fastening());
        let threaded = fastening.is_one(Fastening::threaded);
        if (self.without_flanges() && !threaded) || shape.is_one(|shape| !has_table(shape)) {
            return Demands::not(Ready::NoTable);
        }
        let kind = flange_kind(flange);
        let wheel = self.listed_by();
        let needs_hole = kind.is_one(FlangeKind::undercut);
        let hole = if needs_hole { self.wheel.hole } else { Fact::new(0.0) };
        if shape.blank() || fastening.blank() || kind.blank() || wheel.blank() || hole.blank() {
            return Demands::not(Ready::Blank);
        }
        let (Some(kind), true) = (kind.get(), shape.given() && wheel.given() && hole.given())
        else {
            return Demands::not(Ready::NotAsked);
        };
        match kind {
            // Table O-4 is about wheels with a thread of their own only.
            FlangeKind::Unrelieved if threaded => Demands::of(kind, wheel.0, hole.0),
            // The note to Table O-6 lets small wheels have flat flanges of its diameters.
            FlangeKind::Unrelieved if wheel.0 < RELIEF_FROM => Demands {
                least_land: f64::NAN,
                greatest_land: f64::NAN,
                // A flat flange has one thickness.
                at_edge: f64::NAN,
                ..Demands::of(FlangeKind::Relieved, wheel.0, hole.0)
            },
            FlangeKind::Unrelieved => Demands::not(Ready::NoTable),
            _ => Demands::of(kind, wheel.0, hole.0),
        }
    }

    /// The diameter that the tables go by: the nominal one where it is near the
    /// measured one, and otherwise the larger, so that a slip asks for no less.
    #[inline(always)]
    fn listed_by(&self) -> Fact<Length> {
        let (nominal, measured) = (self.wheel.nominal_diameter, self.wheel.diameter);
        let near = (nominal.0 - measured.0).abs() <= NOMINAL_WITHIN * measured.0;
        if near { nominal } else { nominal.greatest_with(measured) }
    }

    /// How the wheel is held: between flanges, unless somebody says otherwise.
    #[inline(always)]
    pub(crate) fn fastening(&self) -> Fact<Fastening> {
        self.wheel.fastening.or(Fact::new(Fastening::Flanges as u8 as f64))
    }

    /// Whether the wheel is known to be held by something else than two flanges.
    #[inline(always)]
    pub(crate) fn without_flanges(&self) -> bool {
        self.fastening().given()
            && !self.wheel.fastening.or(self.fastening()).is(Fastening::Flanges)
    }
}

/// Kind of a flange: a recess makes a relieved one where nobody gives the kind.
#[inline(always)]
pub(crate) fn flange_kind(flange: &of::Flange) -> Fact<FlangeKind> {
    let recess = flange.recess;
    let by_recess = if recess.0 > 0.0 { FlangeKind::Relieved.to_fact() } else { NOT_ASKED };
    flange.kind.or(Fact::new(if recess.blank() { BLANK } else { by_recess }))
}

/// A row of facts in which nobody asks for anything.
pub(crate) const NOTHING: [f64; COUNT] = [NOT_ASKED; COUNT];
