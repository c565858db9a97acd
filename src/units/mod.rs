//! Quantities: numbers that know their unit.
//!
//! Everything that users pass in or get back is one of these types. The units
//! are re-exported by their names: `Length::new::<millimeter>(125.0)`.

mod bounds;
mod date;
mod exact;
mod own;
mod read;
mod show;
mod words;

pub(crate) use bounds::{below, finite, positive, positive_length, shown_mm, within, zero_or_more};
pub use date::Date;
pub use exact::{Exact, Nanometres};
pub use own::{
    BalanceGrade, Frequency, GrainDensity, RemovalRate, SideStiffness, SpecificEnergy, Unbalance,
    UnitOf, WidthRemovalRate, cubic_meter_per_second, cubic_millimeter_per_second,
    cubic_millimeter_per_second_millimeter, grade_number, gram_millimeter, hertz,
    joule_per_cubic_meter, joule_per_cubic_millimeter, kilogram_meter, newton_per_meter,
    newton_per_millimeter, per_square_meter, per_square_millimeter, square_meter_per_second,
};
pub use read::{Decimal, Kind, Spelling, number, read};
pub(crate) use read::{FRACTION, takes_fractions};
pub use show::{Shop, figure, inches, millimetres};
pub use words::Words;
#[cfg(feature = "sheets")]
pub(crate) use words::plain;
pub(crate) use words::words;

pub use uom::si::angle::{degree, radian};
pub use uom::si::angular_velocity::{
    degree_per_second, radian_per_second, revolution_per_minute, revolution_per_second,
};
pub use uom::si::area::{square_meter, square_millimeter};
pub use uom::si::energy::joule;
pub use uom::si::f64::{
    Angle, AngularVelocity, Area, Energy, Force, Length, Mass, MassDensity, Power, Pressure, Ratio,
    TemperatureCoefficient, TemperatureInterval, ThermodynamicTemperature, Time, Torque, Velocity,
    Volume,
};
pub use uom::si::force::newton;
pub use uom::si::length::{foot, inch, meter, micrometer, millimeter};
pub use uom::si::mass::{gram, kilogram};
pub use uom::si::mass_density::kilogram_per_cubic_meter;
pub use uom::si::power::watt;
pub use uom::si::pressure::{gigapascal, megapascal, pascal};
pub use uom::si::ratio::ratio;
pub use uom::si::temperature_coefficient::per_kelvin;
pub use uom::si::temperature_interval::{degree_fahrenheit, kelvin};
pub use uom::si::thermodynamic_temperature::degree_celsius;
pub use uom::si::time::{minute, second};
pub use uom::si::torque::newton_meter;
pub use uom::si::velocity::{foot_per_minute, meter_per_second, millimeter_per_second};
pub use uom::si::volume::{cubic_meter, cubic_millimeter};
