//! Whole numbers for comparing: a size on its limit stays on its limit.

use super::{
    Angle, AngularVelocity, BalanceGrade, Force, Length, Mass, MassDensity, Pressure, Ratio,
    TemperatureCoefficient, TemperatureInterval, Time, Torque, Unbalance, Velocity, grade_number,
    gram_millimeter, kelvin, kilogram, kilogram_per_cubic_meter, meter, meter_per_second, newton,
    newton_meter, pascal, per_kelvin, radian, ratio, revolution_per_minute, second,
};

/// A length as a whole number of nanometres, for comparing with a limit.
///
/// Metres as `f64` cannot hold most tolerance limits, so that a size on its
/// limit falls on either side of it. Make both sides this type first.
///
/// ```
/// use hubwright::units::{Length, Nanometres, micrometer, millimeter};
///
/// let limit = Length::new::<millimeter>(18.0) + Length::new::<micrometer>(43.0);
/// let measured = Length::new::<millimeter>(18.043);
/// assert_ne!(measured, limit); // the same size, yet not the same metres
/// assert_eq!(Nanometres::from(measured), Nanometres::from(limit));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Nanometres(pub i64);

impl From<Length> for Nanometres {
    /// Rounds half to even; lengths beyond ±9.2 million kilometres end there.
    fn from(length: Length) -> Self {
        Self(length.exact() as i64)
    }
}

impl From<Nanometres> for Length {
    fn from(whole: Nanometres) -> Self {
        Length::new::<meter>(whole.0 as f64 / 1e9)
    }
}

/// A kind of quantity that is compared as a whole number of a small step.
pub trait Exact: Copy {
    /// Whole steps, half to even: nanometres, micrometres a second, millionths
    /// of a turn a minute, nanoradians, thousandths of a kelvin, millipascals,
    /// grams a cubic metre, thousand millionths of a ratio, millionths of a newton metre or of a second, of a gram
    /// millimetre and of a grade, micrograms.
    fn exact(self) -> f64;
    /// The quantity that so many steps make.
    fn from_exact(steps: f64) -> Self;
}

macro_rules! exact {
    ($($kind:ty: $unit:ty, $steps:literal;)+) => {$(
        impl Exact for $kind {
            #[inline]
            fn exact(self) -> f64 {
                (self.get::<$unit>() * $steps).round_ties_even()
            }
            #[inline]
            fn from_exact(steps: f64) -> Self {
                Self::new::<$unit>(steps / $steps)
            }
        }
    )+};
}

exact! {
    Length: meter, 1e9;
    Torque: newton_meter, 1e6;
    Time: second, 1e6;
    Force: newton, 1e3;
    Velocity: meter_per_second, 1e6;
    AngularVelocity: revolution_per_minute, 1e6;
    Angle: radian, 1e9;
    TemperatureInterval: kelvin, 1e3;
    TemperatureCoefficient: per_kelvin, 1e12;
    Pressure: pascal, 1e3;
    MassDensity: kilogram_per_cubic_meter, 1e3;
    Ratio: ratio, 1e9;
    Mass: kilogram, 1e9;
    Unbalance: gram_millimeter, 1e6;
    BalanceGrade: grade_number, 1e6;
}
