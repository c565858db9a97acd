//! Reading quantities that people typed, once and strictly.

use super::{
    Angle, AngularVelocity, Area, BalanceGrade, Energy, Force, Frequency, GrainDensity, Length,
    Mass, MassDensity, Power, Pressure, RemovalRate, SideStiffness, SpecificEnergy,
    TemperatureCoefficient, TemperatureInterval, ThermodynamicTemperature, Time, Torque, Unbalance,
    Velocity, Volume, WidthRemovalRate, cubic_millimeter, cubic_millimeter_per_second,
    cubic_millimeter_per_second_millimeter, degree, degree_celsius, degree_fahrenheit,
    degree_per_second, foot, foot_per_minute, grade_number, gram_millimeter, hertz, inch, joule,
    joule_per_cubic_meter, joule_per_cubic_millimeter, kelvin, kilogram, kilogram_meter,
    kilogram_per_cubic_meter, meter, meter_per_second, micrometer, millimeter,
    millimeter_per_second, minute, newton, newton_meter, newton_per_meter, newton_per_millimeter,
    pascal, per_kelvin, per_square_meter, per_square_millimeter, radian, radian_per_second,
    revolution_per_minute, revolution_per_second, second, square_meter_per_second,
    square_millimeter, watt,
};
use crate::error::{Error, ErrorKind, cut};

/// One accepted way to write a unit.
#[derive(Clone, Copy, Debug)]
pub struct Spelling<K> {
    /// The unit as written, such as `mm`.
    pub text: &'static str,
    /// The quantity that a number of this unit makes.
    pub build: fn(f64) -> K,
}

/// A kind of quantity that people write down.
pub trait Kind: Copy + 'static {
    /// Its name in messages.
    const NAME: &'static str;
    /// How to write one.
    const EXAMPLE: &'static str;
    /// Every accepted spelling of a unit; the first is the one shown.
    const SPELLINGS: &'static [Spelling<Self>];
    /// A letter before the number that says its kind and unit, as in `G2.5`.
    const LETTER: Option<char> = None;

    /// Whether it is a number that can be held.
    fn finite(self) -> bool;

    /// The spelling that `text` is, in lower case or in capitals.
    fn spelling(text: &str) -> Option<&'static Spelling<Self>> {
        let exactly = Self::SPELLINGS.iter().find(|s| s.text == text);
        // "MM" can only be mm; "mPa" must not become MPa.
        exactly.or_else(|| {
            if !text.contains(char::is_uppercase) {
                return None;
            }
            let small = |s: &&Spelling<Self>| !s.text.contains(|c: char| c.is_ascii_uppercase());
            Self::SPELLINGS.iter().filter(small).find(|s| s.text.to_uppercase() == text)
        })
    }
}

macro_rules! kinds {
    ($($kind:ty: $name:literal, $example:literal, $(letter $letter:literal,)? [$($text:literal => $build:expr),+ $(,)?];)+) => {$(
        impl Kind for $kind {
            const NAME: &'static str = $name;
            const EXAMPLE: &'static str = $example;
            $(const LETTER: Option<char> = Some($letter);)?
            const SPELLINGS: &'static [Spelling<Self>] =
                &[$(Spelling { text: $text, build: $build }),+];
            fn finite(self) -> bool {
                self.is_finite()
            }
        }
    )+};
}

// uom rounds the American units of force, mass, pressure, power and torque in
// the eighth digit, so these are their definitions: the pound is 0.45359237 kg,
// standard gravity 9.80665 m/s² (NIST SP 811, appendix B).
const POUND: f64 = 0.453_592_37;
const POUND_FORCE: f64 = POUND * 9.806_65;
const INCH: f64 = 0.025_4;
const FOOT: f64 = 0.304_8;
const ZERO_CELSIUS: f64 = 273.15;
const PSI: f64 = POUND_FORCE / (INCH * INCH);

kinds! {
    Length: "length", "125 mm", [
        "mm" => Self::new::<millimeter>, "in" => Self::new::<inch>, "m" => Self::new::<meter>,
        "cm" => |v| Self::new::<millimeter>(v * 10.0), "um" => Self::new::<micrometer>,
        "µm" => Self::new::<micrometer>, "μm" => Self::new::<micrometer>,
        "inch" => Self::new::<inch>, "inches" => Self::new::<inch>, "\"" => Self::new::<inch>,
        "″" => Self::new::<inch>, "ft" => Self::new::<foot>,
        "thou" => |v| Self::new::<inch>(v / 1000.0),
    ];
    Area: "area", "72 mm2", [
        "mm2" => Self::new::<square_millimeter>, "mm²" => Self::new::<square_millimeter>,
        "cm2" => |v| Self::new::<square_millimeter>(v * 100.0),
        "cm²" => |v| Self::new::<square_millimeter>(v * 100.0),
        "in2" => |v| Self::new::<square_millimeter>(v * 645.16),
        "in²" => |v| Self::new::<square_millimeter>(v * 645.16),
    ];
    Volume: "volume", "4.5 mm3", [
        "mm3" => Self::new::<cubic_millimeter>, "mm³" => Self::new::<cubic_millimeter>,
        "in3" => |v| Self::new::<cubic_millimeter>(v * 16_387.064),
    ];
    Angle: "angle", "90 deg", [
        "deg" => Self::new::<degree>, "°" => Self::new::<degree>, "degree" => Self::new::<degree>,
        "degrees" => Self::new::<degree>, "rad" => Self::new::<radian>,
        "arcmin" => |v| Self::new::<degree>(v / 60.0), "′" => |v| Self::new::<degree>(v / 60.0),
        "arcsec" => |v| Self::new::<degree>(v / 3600.0), "″" => |v| Self::new::<degree>(v / 3600.0),
    ];
    AngularVelocity: "rotational speed", "2850 rpm", [
        "rpm" => Self::new::<revolution_per_minute>, "rev/min" => Self::new::<revolution_per_minute>,
        "r/min" => Self::new::<revolution_per_minute>, "1/min" => Self::new::<revolution_per_minute>,
        "min-1" => Self::new::<revolution_per_minute>, "rev/s" => Self::new::<revolution_per_second>,
        "rad/s" => Self::new::<radian_per_second>, "deg/s" => Self::new::<degree_per_second>,
    ];
    Velocity: "speed", "35 m/s", [
        "m/s" => Self::new::<meter_per_second>, "ft/min" => Self::new::<foot_per_minute>,
        "sfpm" => Self::new::<foot_per_minute>, "sfm" => Self::new::<foot_per_minute>,
        "fpm" => Self::new::<foot_per_minute>, "m/min" => |v| Self::new::<meter_per_second>(v / 60.0),
        "mm/s" => Self::new::<millimeter_per_second>,
        "ft/s" => |v| Self::new::<meter_per_second>(v * FOOT),
    ];
    Mass: "mass", "2.4 kg", [
        "kg" => Self::new::<kilogram>, "g" => |v| Self::new::<kilogram>(v / 1000.0),
        "lb" => |v| Self::new::<kilogram>(v * POUND),
        "oz" => |v| Self::new::<kilogram>(v * POUND / 16.0),
    ];
    Force: "force", "8 kN", [
        "N" => Self::new::<newton>, "kN" => |v| Self::new::<newton>(v * 1000.0),
        "lbf" => |v| Self::new::<newton>(v * POUND_FORCE),
    ];
    Pressure: "pressure or stress", "210 MPa", [
        "MPa" => |v| Self::new::<pascal>(v * 1e6), "N/mm2" => |v| Self::new::<pascal>(v * 1e6),
        "N/mm²" => |v| Self::new::<pascal>(v * 1e6), "GPa" => |v| Self::new::<pascal>(v * 1e9),
        "kPa" => |v| Self::new::<pascal>(v * 1e3), "Pa" => Self::new::<pascal>,
        "bar" => |v| Self::new::<pascal>(v * 1e5), "psi" => |v| Self::new::<pascal>(v * PSI),
        "ksi" => |v| Self::new::<pascal>(v * PSI * 1000.0),
    ];
    Power: "power", "1.5 kW", [
        "kW" => |v| Self::new::<watt>(v * 1000.0), "W" => Self::new::<watt>,
        "hp" => |v| Self::new::<watt>(v * 550.0 * FOOT * POUND_FORCE),
    ];
    Time: "time", "3 s", [
        "s" => Self::new::<second>, "ms" => |v| Self::new::<second>(v / 1000.0),
        "min" => Self::new::<minute>,
    ];
    Torque: "torque", "40 N m", [
        "N m" => Self::new::<newton_meter>, "N·m" => Self::new::<newton_meter>,
        "Nm" => Self::new::<newton_meter>, "N.m" => Self::new::<newton_meter>,
        "lbf ft" => |v| Self::new::<newton_meter>(v * POUND_FORCE * FOOT),
        "lbf·ft" => |v| Self::new::<newton_meter>(v * POUND_FORCE * FOOT),
        "lbf in" => |v| Self::new::<newton_meter>(v * POUND_FORCE * INCH),
        "lbf·in" => |v| Self::new::<newton_meter>(v * POUND_FORCE * INCH),
    ];
    Energy: "energy", "240 J", [
        "J" => Self::new::<joule>, "kJ" => |v| Self::new::<joule>(v * 1000.0),
        "ft lbf" => |v| Self::new::<joule>(v * POUND_FORCE * FOOT),
    ];
    MassDensity: "density", "2250 kg/m3", [
        "kg/m3" => Self::new::<kilogram_per_cubic_meter>,
        "kg/m³" => Self::new::<kilogram_per_cubic_meter>,
        "kg/m^3" => Self::new::<kilogram_per_cubic_meter>,
        "g/cm3" => |v| Self::new::<kilogram_per_cubic_meter>(v * 1000.0),
        "g/cm³" => |v| Self::new::<kilogram_per_cubic_meter>(v * 1000.0),
        "lb/in3" => |v| Self::new::<kilogram_per_cubic_meter>(v * POUND / (INCH * INCH * INCH)),
        "lb/ft3" => |v| Self::new::<kilogram_per_cubic_meter>(v * POUND / (FOOT * FOOT * FOOT)),
    ];
    TemperatureInterval: "temperature difference", "15 K", [
        "K" => Self::new::<kelvin>, "°C" => Self::new::<kelvin>, "degC" => Self::new::<kelvin>,
        "°F" => Self::new::<degree_fahrenheit>, "degF" => Self::new::<degree_fahrenheit>,
    ];
    ThermodynamicTemperature: "temperature", "23.5 °C", [
        "°C" => Self::new::<degree_celsius>, "degC" => Self::new::<degree_celsius>,
        "°F" => |v| Self::new::<degree_celsius>((v - 32.0) / 1.8),
        "degF" => |v| Self::new::<degree_celsius>((v - 32.0) / 1.8),
        "K" => |v| Self::new::<degree_celsius>(v - ZERO_CELSIUS),
    ];
    TemperatureCoefficient: "thermal expansion", "11.5 um/m/K", [
        "um/m/K" => |v| Self::new::<per_kelvin>(v / 1e6),
        "µm/m/K" => |v| Self::new::<per_kelvin>(v / 1e6),
        "ppm/K" => |v| Self::new::<per_kelvin>(v / 1e6), "1/K" => Self::new::<per_kelvin>,
    ];
    Unbalance: "unbalance", "120 g mm", [
        "g mm" => Self::new::<gram_millimeter>, "g·mm" => Self::new::<gram_millimeter>,
        "gmm" => Self::new::<gram_millimeter>,
        "kg mm" => |v| Self::new::<gram_millimeter>(v * 1000.0),
        "kg m" => Self::new::<kilogram_meter>,
        "oz in" => |v| Self::new::<kilogram_meter>(v * POUND / 16.0 * INCH),
        "oz·in" => |v| Self::new::<kilogram_meter>(v * POUND / 16.0 * INCH),
    ];
    BalanceGrade: "balance grade", "G2.5", letter 'G', ["mm/s" => Self::new::<grade_number>];
    SpecificEnergy: "specific energy", "40 J/mm3", [
        "J/mm3" => Self::new::<joule_per_cubic_millimeter>,
        "J/mm³" => Self::new::<joule_per_cubic_millimeter>,
        "W s/mm3" => Self::new::<joule_per_cubic_millimeter>,
        "in lbf/in3" => |v| Self::new::<joule_per_cubic_meter>(v * POUND_FORCE / (INCH * INCH)),
        "hp min/in3" => |v| {
            Self::new::<joule_per_cubic_meter>(
                v * 550.0 * FOOT * POUND_FORCE * 60.0 / (INCH * INCH * INCH),
            )
        },
    ];
    RemovalRate: "removal rate", "80 mm3/s", [
        "mm3/s" => Self::new::<cubic_millimeter_per_second>,
        "mm³/s" => Self::new::<cubic_millimeter_per_second>,
        "mm3/min" => |v| Self::new::<cubic_millimeter_per_second>(v / 60.0),
        "cm3/min" => |v| Self::new::<cubic_millimeter_per_second>(v * 1000.0 / 60.0),
        "in3/min" => |v| Self::new::<cubic_millimeter_per_second>(v * 16_387.064 / 60.0),
    ];
    WidthRemovalRate: "removal rate of a width", "4 mm3/(mm s)", [
        "mm3/(mm s)" => Self::new::<cubic_millimeter_per_second_millimeter>,
        "mm3/mm/s" => Self::new::<cubic_millimeter_per_second_millimeter>,
        "mm2/s" => Self::new::<cubic_millimeter_per_second_millimeter>,
        "m2/s" => Self::new::<square_meter_per_second>,
    ];
    SideStiffness: "stiffness", "3 N/mm", [
        "N/mm" => Self::new::<newton_per_millimeter>, "N/m" => Self::new::<newton_per_meter>,
        "lbf/in" => |v| Self::new::<newton_per_meter>(v * POUND_FORCE / INCH),
    ];
    Frequency: "frequency", "90 Hz", [
        "Hz" => Self::new::<hertz>, "kHz" => |v| Self::new::<hertz>(v * 1000.0),
    ];
    GrainDensity: "density of cutting points", "2 1/mm2", [
        "1/mm2" => Self::new::<per_square_millimeter>, "/mm2" => Self::new::<per_square_millimeter>,
        "1/cm2" => |v| Self::new::<per_square_millimeter>(v / 100.0),
        "1/in2" => |v| Self::new::<per_square_meter>(v / (INCH * INCH)),
    ];
}

/// What separates whole from broken parts of a number.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Decimal {
    /// `31.75`
    Point,
    /// `31,75`
    Comma,
}

/// Reads a number alone: `31.75`, `-0.5`, `1e-3`, `5/16`, `1-1/4` or `1 1/4`.
///
/// Grouping of thousands, the other decimal mark, and words such as `nan` are
/// refused, with the reason.
///
/// # Errors
///
/// What is wrong, in a few words.
///
/// ```
/// use hubwright::units::{Decimal, number};
///
/// assert_eq!(number("1-1/4", Decimal::Point), Ok(1.25));
/// assert_eq!(number("31,75", Decimal::Comma), Ok(31.75));
/// assert!(number("31,75", Decimal::Point).is_err());
/// ```
pub fn number(text: &str, decimal: Decimal) -> Result<f64, &'static str> {
    let text = text.trim().replace('\u{2212}', "-");
    if text.is_empty() {
        return Err("there is no number");
    }
    let text = match decimal {
        Decimal::Point if text.contains(',') => return Err(COMMA),
        Decimal::Comma if text.contains('.') => return Err("it has a decimal point"),
        Decimal::Comma if text.matches(',').count() > 1 => return Err("it has two commas"),
        _ => text.replace(',', "."),
    };
    let value = if text.contains('/') { fraction(&text)? } else { plain(&text)? };
    if value.is_finite() { Ok(value) } else { Err("it is beyond any number that can be held") }
}

/// Said of a comma where a point is wanted.
const COMMA: &str = "it has a comma (a decimal comma, or thousands)";

/// Whether people write fractions of a unit: a quarter inch, never a quarter millimetre.
pub(crate) fn takes_fractions(unit: &str) -> bool {
    let unit = unit.to_lowercase();
    matches!(unit.as_str(), "in" | "inch" | "inches" | "\"" | "″" | "ft")
}

/// Said of a fraction of any other unit.
pub(crate) const FRACTION: &str = "only inches and feet are written in fractions";

fn plain(text: &str) -> Result<f64, &'static str> {
    // Keeps out `inf`, `nan`, `0x10` and the like, which Rust or C would read.
    let numeric = |c: char| c.is_ascii_digit() || matches!(c, '.' | '-' | '+' | 'e' | 'E');
    if !text.chars().all(numeric) || text.starts_with(['e', 'E']) {
        return Err("that is no number");
    }
    text.parse().map_err(|_| "that is no number")
}

fn fraction(text: &str) -> Result<f64, &'static str> {
    let whole_number = |part: &str| {
        let digits =
            !part.is_empty() && part.len() <= 9 && part.bytes().all(|b| b.is_ascii_digit());
        if digits {
            part.parse::<f64>().map_err(|_| "that is no fraction")
        } else {
            Err("that is no fraction")
        }
    };
    let (sign, text) = text.strip_prefix('-').map_or((1.0, text), |rest| (-1.0, rest));
    let (top, bottom) = text.split_once('/').ok_or("that is no fraction")?;
    let (whole, top) = match top.rsplit_once(['-', ' ']) {
        Some((whole, top)) => (whole_number(whole.trim())?, top),
        None => (0.0, top),
    };
    let (top, bottom) = (whole_number(top.trim())?, whole_number(bottom.trim())?);
    if bottom == 0.0 { Err("it divides by zero") } else { Ok(sign * (whole + top / bottom)) }
}

/// Reads one number and one unit, such as `125 mm`, `5/16 in` or `1-1/4"`.
///
/// # Errors
///
/// [`ErrorKind::NoUnit`] for a bare number; [`ErrorKind::NotAQuantity`] for
/// anything else that is not one number and one unit of the kind, decimal
/// commas and numbers too great to be held included.
///
/// # Example
///
/// An inch and a quarter is 31.75 mm.
///
/// ```
/// use hubwright::units::{Length, millimeter, read};
///
/// let length: Length = read("1-1/4 in")?;
/// assert_eq!(length.get::<millimeter>(), 31.75);
/// assert!(read::<Length>("2,5 mm").is_err());
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn read<K: Kind>(text: &str) -> Result<K, Error> {
    let trimmed = text.trim();
    // Only a refusal needs it.
    let hint = || {
        let units: Vec<_> = K::SPELLINGS.iter().map(|spelling| spelling.text).collect();
        format!(
            "write a number with a point and a unit, like \"{}\"; units are {}",
            K::EXAMPLE,
            units.join(", ")
        )
    };
    let refuse = |why| ErrorKind::NotAQuantity {
        argument: "value".into(),
        text: cut(text),
        kind: K::NAME,
        why,
        hint: hint(),
    };
    if let Some(letter) = K::LETTER
        && let Some(rest) = trimmed.strip_prefix([letter, letter.to_ascii_lowercase()])
        && let (Ok(value), Some(unit)) = (number(rest, Decimal::Point), K::SPELLINGS.first())
    {
        return Ok((unit.build)(value));
    }
    // The longest ending that is a unit and leaves a number: "3000 1/min" is
    // 3000 of 1/min, and "5/16 in" five sixteenths of an inch.
    let mut why = None;
    for (at, _) in trimmed.char_indices().skip(1) {
        let (front, unit) = trimmed.split_at(at);
        // "7 rpm" is no length of "7 rp".
        let cut = front.trim_end().ends_with(char::is_alphabetic);
        if let Some(spelling) = K::spelling(unit.trim()).filter(|_| !cut) {
            if front.contains('/') && !takes_fractions(spelling.text) {
                why = Some(FRACTION);
                continue;
            }
            match number(front, Decimal::Point) {
                Ok(value) => {
                    let quantity = (spelling.build)(value);
                    if quantity.finite() {
                        return Ok(quantity);
                    }
                    why = Some("it is beyond any number that can be held");
                }
                Err(reason) => why = why.or(Some(reason)),
            }
        }
    }
    if number(trimmed, Decimal::Point).is_ok() {
        return Err(ErrorKind::NoUnit {
            argument: "value".into(),
            given: cut(trimmed),
            kind: K::NAME,
            hint: hint(),
        }
        .into());
    }
    let reason = if trimmed.is_empty() {
        "there is nothing"
    } else if trimmed.chars().next().is_some_and(char::is_alphabetic) {
        "that is no number"
    } else if K::NAME == "rotational speed" && trimmed.ends_with(['z', 's']) {
        "its unit names no turn or angle, or is not one of its kind"
    } else {
        "the unit is not one of its kind"
    };
    Err(refuse(why.unwrap_or(reason)).into())
}
