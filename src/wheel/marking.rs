//! What is written on a wheel: ISO 525 for bonded ones, ISO 6104 for diamond and CBN.

mod order;
mod scan;

use std::fmt;

use super::shape::{Abrasive, Bond, Shape};
use crate::error::{Error, ErrorKind, cut};
use crate::source::{Source, Status};
use crate::tables::grits::{
    F_GRITS, F_SETTLED, F_SIEVED, FINEST_SIEVED, SUPERABRASIVE, SUPERABRASIVE_READ,
    SUPERABRASIVE_RECALLED,
};
use crate::units::{
    AngularVelocity, Length, Velocity, figure, meter_per_second, micrometer, millimeter,
    revolution_per_minute, words,
};

/// Order of a bonded wheel's marking.
pub const ISO525: Source = Source::new("iso525", "ISO 525", "", "as set out", Status::Reprint);
/// What of ISO 525 is recalled: structure 0 to 14 and more, some letters.
pub const ISO525_RECALLED: Source =
    Source::new("iso525-recalled", "ISO 525", "", "", Status::Memory);
/// Codes of shapes of diamond and CBN wheels.
pub const ISO6104: Source = Source::new("iso6104", "ISO 6104", "", "", Status::Memory);
/// Restrictions of use and colour stripes.
pub const EN12413: Source = Source::new("en12413", "EN 12413", "", "", Status::Memory);
/// Structure numbers and the share of abrasive that they stand for.
pub const STRUCTURES: Source = Source::new(
    "jis-structure",
    "JIS structure numbers as a tool reference reports them",
    "",
    "",
    Status::Reprint,
);

/// Longest marking that is read, in characters.
pub const LONGEST: usize = 200;

words! {
    /// What a wheel must not be used for, by the mark on it.
    Restriction, "restriction of use" {
        /// Not hand-held.
        NotHandHeld = "RE1" [];
        /// No cutting-off by hand.
        NoHandCuttingOff = "RE2" [];
        /// Not wet.
        NotWet = "RE3" [];
        /// Only where the working area is closed all round.
        OnlyEnclosed = "RE4" [];
        /// Not with its face.
        NotFaceGrinding = "RE6" [];
    }
}

impl Restriction {
    /// What it says.
    pub const fn says(self) -> &'static str {
        match self {
            Self::NotHandHeld => "not for hand-held grinding",
            Self::NoHandCuttingOff => "not for hand-held cutting-off",
            Self::NotWet => "not for wet grinding",
            Self::OnlyEnclosed => "only in a working area that is closed all round",
            Self::NotFaceGrinding => "not for face grinding",
        }
    }

    /// Who says so: the first two are common practice, the others from memory.
    pub const fn source(self) -> Source {
        match self {
            Self::NotHandHeld | Self::NoHandCuttingOff => crate::tables::laws::PRACTICE,
            _ => EN12413,
        }
    }
}

/// The shape in a marking.
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub enum ShapeMark {
    /// A type number, such as 41 or 27A.
    Type(String),
    /// A code of ISO 6104, such as 1A1R: core, section of the rim, its place, and what is done to the core.
    Code(String),
}

impl ShapeMark {
    /// The shape that rules know it by; `None` where the numbers of the two standards part.
    pub fn shape(&self) -> Option<Shape> {
        match self {
            Self::Type(number) => format!("type-{number}").parse().ok(),
            Self::Code(code) => match code.find(|c: char| c.is_ascii_alphabetic()) {
                Some(at) if code.starts_with("1A1R") && at == 1 => Some(Shape::Type1CuttingOff),
                Some(at) => match &code[..at] {
                    "1" => Some(Shape::Type1),
                    "2" => Some(Shape::Type2),
                    "6" => Some(Shape::Type6),
                    "11" => Some(Shape::Type11),
                    "12" => Some(Shape::Type12),
                    _ => None,
                },
                None => None,
            },
        }
    }
}

impl fmt::Display for ShapeMark {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Type(number) => write!(f, "type {number}"),
            Self::Code(code) => f.write_str(code),
        }
    }
}

/// The grain in a marking.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Grain {
    /// Its number.
    pub number: u16,
    /// Mean size of a grain with an F number; of diamond and CBN the sieve it stays on.
    pub least: Length,
    /// The same mean size; of diamond and CBN the sieve it passes.
    pub greatest: Length,
    /// Where the size is from.
    pub source: Source,
}

impl Grain {
    fn bonded(number: u16) -> Option<Self> {
        let (_, tenths) = F_GRITS.iter().find(|(known, _)| *known == number)?;
        let size = Length::new::<micrometer>(f64::from(*tenths) / 10.0);
        let source = if number <= FINEST_SIEVED { F_SIEVED } else { F_SETTLED };
        Some(Self { number, least: size, greatest: size, source })
    }

    fn superabrasive(number: u16) -> Option<Self> {
        let row = SUPERABRASIVE.iter().find(|row| row.number == number)?;
        let size = |um: u16| Length::new::<micrometer>(f64::from(um));
        let source = if row.read { SUPERABRASIVE_READ } else { SUPERABRASIVE_RECALLED };
        Some(Self { number, least: size(row.lower), greatest: size(row.upper), source })
    }
}

/// A part of a marking that was not read.
#[derive(Clone, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub struct Unread {
    /// As it stands in the marking.
    pub text: String,
    /// Why not.
    pub why: &'static str,
}

/// A marking, read.
#[derive(Clone, Debug, PartialEq, Default)]
#[non_exhaustive]
pub struct Marking {
    /// Shape.
    pub shape: Option<ShapeMark>,
    /// Nominal diameter.
    pub diameter: Option<Length>,
    /// Nominal thickness.
    pub thickness: Option<Length>,
    /// Nominal hole.
    pub hole: Option<Length>,
    /// What the maker writes before the abrasive.
    pub prefix: Option<String>,
    /// Abrasive.
    pub abrasive: Option<Abrasive>,
    /// Grain.
    pub grain: Option<Grain>,
    /// Grade, A the softest and Z the hardest.
    pub grade: Option<char>,
    /// Structure, 0 the densest.
    pub structure: Option<u8>,
    /// Concentration of diamond or CBN; 100 is a quarter of the rim.
    pub concentration: Option<u16>,
    /// Bond.
    pub bond: Option<Bond>,
    /// What the maker writes after the bond.
    pub suffix: Option<String>,
    /// Rim speed: a limit. Of two the lower.
    pub rim_speed: Option<Velocity>,
    /// Rotational speed: a limit. Of two the lower.
    pub speed: Option<AngularVelocity>,
    /// What the wheel must not be used for.
    pub restrictions: Vec<Restriction>,
    /// Parts that were not read, in order.
    pub unread: Vec<Unread>,
    /// Parts that could be meant otherwise than they were read.
    pub doubts: Vec<String>,
}

/// Reads what is written on a wheel.
///
/// Bonded wheels by the order of ISO 525: maker's prefix, abrasive (A, C), grain
/// (FEPA F), grade, structure, bond, maker's suffix. Diamond and CBN by the shape
/// codes of ISO 6104, the grain (D126, B151), concentration (C100) and bond. Sizes,
/// type, speeds and restrictions may stand anywhere; blanks and hyphens don't matter.
/// A part that can't be read stays in `unread`, one that could be meant otherwise is
/// told in `doubts`: nothing is guessed. Numbers of a speed that may be thousands are
/// not read, and sizes without a unit only where they can't be inches.
///
/// Range: up to 200 characters.
///
/// # Errors
///
/// [`ErrorKind::NotAQuantity`] for an empty or longer text.
///
/// # Source
///
/// ISO 525 as set out in a reprint (order, most letters); ISO 6104, EN 12413 and
/// the FEPA sizes from memory but for the sieves of D46 to D301.
///
/// # Example
///
/// An alumina wheel of grain 60, grade K, structure 7, vitrified, for 35 m/s.
///
/// ```
/// use hubwright::wheel::{Abrasive, Bond, read_marking};
///
/// let marking = read_marking("40A 60 K 7 V A1 35 m/s")?;
/// assert_eq!(marking.prefix.as_deref(), Some("40"));
/// assert_eq!((marking.abrasive, marking.bond), (Some(Abrasive::AluminiumOxide), Some(Bond::Vitrified)));
/// assert_eq!((marking.grade, marking.structure), (Some('K'), Some(7)));
/// assert_eq!(marking.to_string(), "40A 60 K 7 V A1 35 m/s");
/// assert!(marking.unread.is_empty());
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn read_marking(text: &str) -> Result<Marking, Error> {
    let refuse = |why| -> Error {
        ErrorKind::NotAQuantity {
            argument: "text".into(),
            text: cut(text.trim()),
            kind: "marking of a wheel",
            why,
            hint: "write what stands on the wheel, like \"40A 60 K 7 V A1 35 m/s\" or \"1A1 D126 C100 B\""
                .into(),
        }
        .into()
    };
    if text.trim().is_empty() {
        return Err(refuse("there is nothing"));
    }
    if text.len() > 4 * LONGEST || text.chars().count() > LONGEST {
        return Err(refuse("it is longer than 200 characters"));
    }
    let mut scan = scan::Scan::new(text);
    let mut marking = Marking::default();
    scan.speeds(&mut marking);
    scan.type_number(&mut marking);
    scan.restrictions(&mut marking);
    scan.sizes(&mut marking);
    scan.shape_code(&mut marking);
    scan.dashed_sizes(&mut marking);
    order::read(&mut scan, &mut marking);
    scan.leave(&mut marking);
    Ok(marking)
}

impl Marking {
    /// Share of the wheel that is abrasive, by its structure (0 to 14): 62 % less 2 % a number.
    ///
    /// Source: [`STRUCTURES`].
    pub fn abrasive_share(&self) -> Option<f64> {
        let number = self.structure.filter(|number| *number <= 14)?;
        Some(0.62 - 0.02 * f64::from(number))
    }

    /// Share of the rim that is diamond or CBN, by its concentration: a quarter at 100.
    pub fn superabrasive_share(&self) -> Option<f64> {
        self.concentration.map(|number| f64::from(number) / 400.0)
    }

    /// The stripe that a wheel of this rim speed wears, from 50 to 125 m/s; from memory ([`EN12413`]).
    ///
    /// It says what to look for, never that a wheel may run so fast.
    pub fn stripe(&self) -> Option<&'static str> {
        let speed = self.rim_speed?.get::<meter_per_second>();
        STRIPES.iter().find(|(step, _)| (step - speed).abs() < 1e-9).map(|(_, stripe)| *stripe)
    }

    /// The marking in words, a part a line, with how sure each figure is.
    pub fn in_words(&self) -> Vec<String> {
        let mut all = Vec::new();
        let mm = |size: Length| figure(size.get::<millimeter>(), 3);
        if let Some(shape) = &self.shape {
            let known = shape.shape().map_or(String::new(), |known| format!(": {known}"));
            all.push(format!("{shape}{known}"));
        }
        let sizes =
            [("diameter", self.diameter), ("thickness", self.thickness), ("hole", self.hole)];
        all.extend(
            sizes.iter().filter_map(|(name, size)| Some(format!("{name} {} mm", mm((*size)?)))),
        );
        if let Some(abrasive) = self.abrasive {
            all.push(abrasive.to_string());
        }
        if let Some(grain) = self.grain {
            let um = |size: Length| figure(size.get::<micrometer>(), 1);
            let size = if grain.least == grain.greatest {
                format!("{} µm on average", um(grain.least))
            } else {
                format!("between sieves of {} and {} µm", um(grain.least), um(grain.greatest))
            };
            all.push(format!("grain {}: {size} [{}]", grain.number, grain.source));
        }
        if let Some(grade) = self.grade {
            all.push(format!("grade {grade}, on a scale from A, soft, to Z, hard"));
        }
        if let Some(structure) = self.structure {
            let share = self.abrasive_share().map_or(String::new(), |share| {
                format!(": about {} % abrasive [{STRUCTURES}]", figure(share * 100.0, 0))
            });
            all.push(format!("structure {structure}{share}"));
        }
        if let (Some(number), Some(share)) = (self.concentration, self.superabrasive_share()) {
            all.push(format!("concentration {number}: {} % of the rim", figure(share * 100.0, 2)));
        }
        if let Some(bond) = self.bond {
            all.push(format!("{bond} bond"));
        }
        if let Some(speed) = self.rim_speed {
            let stripe = self.stripe().map_or(String::new(), |stripe| {
                format!("; a wheel for this speed wears {stripe} [{EN12413}]")
            });
            let speed = figure(speed.get::<meter_per_second>(), 3);
            all.push(format!("never faster than {speed} m/s at the rim{stripe}"));
        }
        if let Some(speed) = self.speed {
            let speed = figure(speed.get::<revolution_per_minute>(), 3);
            all.push(format!("never faster than {speed} rpm, however worn"));
        }
        all.extend(
            self.restrictions.iter().map(|of| format!("{of}: {} [{}]", of.says(), of.source())),
        );
        all
    }
}

/// Rim speeds in m/s and their stripes.
const STRIPES: [(f64, &str); 5] = [
    (50.0, "one blue stripe"),
    (63.0, "one yellow stripe"),
    (80.0, "one red stripe"),
    (100.0, "one green stripe"),
    (125.0, "a blue and a yellow stripe"),
];

/// The letters of a bonded wheel's bond.
const BONDED: [(&str, Bond); 11] = [
    ("BF", Bond::ReinforcedResin),
    ("RF", Bond::ReinforcedRubber),
    ("MG", Bond::Magnesite),
    ("PL", Bond::Plastic),
    ("V", Bond::Vitrified),
    ("B", Bond::Resin),
    ("R", Bond::Rubber),
    ("E", Bond::Shellac),
    ("S", Bond::Silicate),
    ("O", Bond::Oxychloride),
    ("M", Bond::Metal),
];
/// The letters of the bond of diamond and CBN.
const SUPERBONDS: [(&str, Bond); 4] =
    [("B", Bond::Resin), ("V", Bond::Vitrified), ("M", Bond::Metal), ("G", Bond::Electroplated)];

/// In the order of the standards, a blank between the parts; what was not read is left out.
impl fmt::Display for Marking {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let mut parts: Vec<String> = Vec::new();
        parts.extend(self.shape.as_ref().map(ToString::to_string));
        let sizes = [self.diameter, self.thickness, self.hole];
        let sizes: Vec<_> =
            sizes.iter().flatten().map(|size| figure(size.get::<millimeter>(), 4)).collect();
        if !sizes.is_empty() {
            parts.push(format!("{} mm", sizes.join(" x ")));
        }
        let letter = |abrasive| match abrasive {
            Abrasive::AluminiumOxide => 'A',
            Abrasive::SiliconCarbide => 'C',
            Abrasive::Diamond => 'D',
            Abrasive::Cbn => 'B',
        };
        let grain = self.grain.map(|grain| grain.number.to_string());
        let superabrasive = matches!(self.abrasive, Some(Abrasive::Diamond | Abrasive::Cbn));
        match self.abrasive.map(letter) {
            Some(letter) if superabrasive => {
                parts.push(format!("{letter}{}", grain.unwrap_or_default()));
            }
            Some(letter) => {
                parts.push(format!("{}{letter}", self.prefix.as_deref().unwrap_or_default()));
                parts.extend(grain);
            }
            None => {}
        }
        parts.extend(self.grade.map(String::from));
        parts.extend(self.structure.map(|number| number.to_string()));
        parts.extend(self.concentration.map(|number| format!("C{number}")));
        let letters: &[(&str, Bond)] = if superabrasive { &SUPERBONDS } else { &BONDED };
        let bond = letters.iter().find(|(_, bond)| Some(*bond) == self.bond);
        parts.extend(bond.map(|(letters, _)| (*letters).to_owned()));
        parts.extend(self.suffix.clone());
        let rim = self.rim_speed.map(|v| format!("{} m/s", figure(v.get::<meter_per_second>(), 6)));
        let turns =
            self.speed.map(|n| format!("{} rpm", figure(n.get::<revolution_per_minute>(), 6)));
        parts.extend(rim);
        parts.extend(turns);
        parts.extend(self.restrictions.iter().map(ToString::to_string));
        f.write_str(&parts.join(" "))
    }
}
