//! A mounting as typed parts, for programs.

use super::facts::{BLANK, Facts, NOT_ASKED};
use super::fields::with_parts;
use super::marking::MarkingSays;
use super::sort::FieldType;
use super::words::{Material, Rotation, ThreadHand, YesNo};
use crate::error::Error;
use crate::joint::KeyFit;
use crate::units::{
    Angle, AngularVelocity, BalanceGrade, Date, Force, Length, Mass, MassDensity, Pressure, Ratio,
    TemperatureCoefficient, TemperatureInterval, Time, Torque, Unbalance, Velocity,
};
use crate::wheel::{Abrasive, Bond, Fastening, FlangeKind, MachineKind, Shape};

/// A datum that may be missing.
#[derive(Clone, Copy, Debug, PartialEq, Default)]
pub enum Datum<T> {
    /// It is known.
    Given(T),
    /// It should be known and isn't: every rule that needs it can't tell.
    Unknown,
    /// Nobody asks for it: rules that need it are not checked, unless every
    /// mounting must pass them.
    #[default]
    NotAsked,
}

impl<T> From<T> for Datum<T> {
    fn from(value: T) -> Self {
        Self::Given(value)
    }
}

impl<T: FieldType> Datum<T> {
    /// As the number that rules read.
    pub(crate) fn to_fact(self) -> f64 {
        match self {
            Self::Given(value) => value.to_fact(),
            Self::Unknown => BLANK,
            Self::NotAsked => NOT_ASKED,
        }
    }
}

macro_rules! define_parts {
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
            $(#[doc = $part_doc])+
            ///
            /// Every datum starts as [`Datum::NotAsked`].
            #[derive(Clone, Copy, Debug, PartialEq, Default)]
            pub struct $part {
                $($(#[doc = $doc])+ pub $field: Datum<$kind>,)+
            }

            impl $part {
                /// Writes its facts, each checked against what its field takes.
                fn write_facts(&self, out: &mut Vec<f64>) -> Result<(), Error> {
                    let facts = [$(self.$field.to_fact()),+];
                    for (field, fact) in Self::FIELDS.iter().zip(facts) {
                        // A NaN quantity must not pass for a blank.
                        let missing = fact.to_bits() == BLANK.to_bits() || fact.to_bits() == NOT_ASKED.to_bits();
                        out.push(if missing { fact } else { field.admit(fact)? });
                    }
                    Ok(())
                }
            }
        )+

        /// One wheel on one hub on one spindle.
        ///
        /// # Example
        ///
        /// Only what is known is given; the rest is not asked.
        ///
        /// ```
        /// use hubwright::mounting::{Mounting, Outcome, Terms, Wheel, check};
        /// use hubwright::units::{AngularVelocity, Length, millimeter, revolution_per_minute};
        ///
        /// let mut mounting = Mounting { name: "surface grinder".into(), ..Mounting::default() };
        /// mounting.wheel.diameter = Length::new::<millimeter>(200.0).into();
        /// mounting.wheel.marked_speed = AngularVelocity::new::<revolution_per_minute>(2850.0).into();
        /// mounting.spindle.greatest_speed = AngularVelocity::new::<revolution_per_minute>(3400.0).into();
        ///
        /// let verdict = check(&mounting, &Terms::default())?;
        /// assert_eq!(verdict.worst, Outcome::Refuse);
        /// assert_eq!(verdict.findings[0].rule.slug, "over-speed");
        /// # Ok::<(), hubwright::Error>(())
        /// ```
        #[derive(Clone, Debug, PartialEq, Default)]
        pub struct Mounting {
            /// What the shop calls it.
            pub name: String,
            $(#[doc = concat!("The ", $place_words, ".")] pub $place: $of,)+
        }

        impl Mounting {
            /// The facts that rules read.
            ///
            /// # Errors
            ///
            /// The first datum that its field does not take.
            pub fn facts(&self) -> Result<Facts, Error> {
                let mut facts = Vec::with_capacity(super::fields::COUNT);
                $(self.$place.write_facts(&mut facts).map_err(|error| {
                    let argument = error.argument().map(|name| format!("{}.{name}", stringify!($place)));
                    match argument { Some(argument) => error.named(&argument), None => error }
                })?;)+
                let number = |at: usize| facts.get(at).copied().unwrap_or(NOT_ASKED);
                super::facts::contradiction(number)?;
                Ok(Facts::of(&facts))
            }
        }
    };
}
with_parts!(define_parts);
