//! What parts and wheels are made of: constants by name, each with its range and source.
//!
//! No kernel takes one of these by itself. A user states the constants, or
//! names a material, and the result keeps which it was.

use std::fmt;

use super::expansion;
use crate::error::Error;
use crate::source::{Source, Status};
use crate::units::{
    MassDensity, Pressure, TemperatureCoefficient, below, figure, gigapascal,
    kilogram_per_cubic_meter, per_kelvin, within, words,
};

/// Constants that the user stated.
pub const STATED: Source =
    Source::new("stated", "the constants given with the part", "", "", Status::Input);
/// Constants of common metals, recalled.
pub const METALS: Source =
    Source::new("metals", "elastic constants of common metals", "", "", Status::Memory);

words! {
    /// A metal whose constants are offered by name.
    Metal, "metal" {
        /// Steel.
        Steel = "steel" [];
        /// Grey cast iron.
        CastIron = "cast iron" ["iron", "grey iron", "gray iron"];
        /// Aluminium alloy.
        Aluminium = "aluminium" ["aluminum", "alu"];
        /// Brass.
        Brass = "brass" [];
    }
}

/// A constant as it is usually taken, and the range it lies in.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Usual {
    /// Least of the range.
    pub least: f64,
    /// What is usually taken.
    pub usual: f64,
    /// Greatest of the range.
    pub greatest: f64,
}

const fn usual([least, usual, greatest]: [f64; 3]) -> Usual {
    Usual { least, usual, greatest }
}

/// The constants of one metal.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct MetalRow {
    /// The metal.
    pub metal: Metal,
    /// Modulus of elasticity, GPa.
    pub modulus: Usual,
    /// Poisson's ratio.
    pub poisson: Usual,
    /// Density, kg/m³.
    pub density: Usual,
    /// Thermal expansion, µm/m/K.
    pub expansion: Usual,
}

const fn row(
    metal: Metal,
    [modulus, poisson, density]: [[f64; 3]; 3],
    taken: f64,
    (least, greatest): expansion::Range,
) -> MetalRow {
    MetalRow {
        metal,
        modulus: usual(modulus),
        poisson: usual(poisson),
        density: usual(density),
        expansion: usual([least, taken, greatest]),
    }
}

/// Constants of common metals at room temperature, from memory ([`METALS`]) but for the
/// ranges of expansion, which were read.
#[rustfmt::skip]
pub const METAL_ROWS: [MetalRow; 4] = [
    row(Metal::Steel,     [[200.0, 206.0, 210.0], [0.27, 0.30, 0.30], [7800.0, 7850.0, 7900.0]], 11.5, expansion::STEEL),
    row(Metal::CastIron,  [[ 80.0, 100.0, 130.0], [0.23, 0.25, 0.27], [7100.0, 7200.0, 7300.0]], 11.4, expansion::GREY_IRON),
    row(Metal::Aluminium, [[ 69.0,  71.0,  73.0], [0.33, 0.33, 0.34], [2650.0, 2750.0, 2850.0]], 23.0, expansion::ALUMINIUM),
    row(Metal::Brass,     [[ 95.0, 100.0, 110.0], [0.33, 0.35, 0.37], [8400.0, 8450.0, 8700.0]], 20.0, expansion::BRASS),
];

/// Mean contraction of steel that is cooled far below room temperature, µm/m/K.
///
/// It is less than the expansion above room temperature, so that a shaft has
/// to be made colder than that figure says.
pub const COLD_STEEL: Published = Published {
    name: "mean contraction of steel cooled far below room temperature",
    least: 8.5,
    greatest: 8.5,
    unit: "um/m/K",
    source: Source::new("cold-steel", "contraction of cooled steel", "", "", Status::Memory),
};

/// A published figure or range, offered by name and never taken silently.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Published {
    /// What it is of.
    pub name: &'static str,
    /// Least of the range, or the one figure.
    pub least: f64,
    /// Greatest of the range; the same where there is one figure.
    pub greatest: f64,
    /// Unit of both; empty for plain numbers.
    pub unit: &'static str,
    /// Who says so.
    pub source: Source,
}

impl fmt::Display for Published {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}: {}", self.name, figure(self.least, 4))?;
        if self.greatest != self.least {
            write!(f, " to {}", figure(self.greatest, 4))?;
        }
        let space = if self.unit.is_empty() { "" } else { " " };
        write!(f, "{space}{} [{}]", self.unit, self.source)
    }
}

/// A wheel maker's safety page, which gives 24 to 140 kgf/cm².
const MAKER: Source =
    Source::new("maker-safety", "a wheel maker's safety page", "", "", Status::Read);
const FOUNDRYMAN: Source =
    Source::new("foundryman-1918", "Canadian Foundryman", "1918", "", Status::Read);
const CUSTOM: Source =
    Source::new("practice", "common practice, no source", "", "", Status::Practice);
const RECALLED: Source =
    Source::new("wheel-constants", "constants of bonded abrasives", "", "", Status::Memory);

const fn wheel(name: &'static str, range: [f64; 2], unit: &'static str, by: Source) -> Published {
    Published { name, least: range[0], greatest: range[1], unit, source: by }
}

/// What bonded abrasive wheels are like. The spread is wide: ask the maker.
pub const WHEEL_RANGES: [Published; 9] = [
    wheel("modulus, soft resinoid to hard vitrified", [15.0, 70.0], "GPa", CUSTOM),
    wheel("tensile strength, vitrified", [2.35, 13.7], "MPa", MAKER),
    wheel("stress at bursting, vitrified, grade J", [1600.0, 1700.0], "psi", FOUNDRYMAN),
    wheel("stress at bursting, vitrified, grade K", [1750.0, 1750.0], "psi", FOUNDRYMAN),
    wheel("stress at bursting, vitrified, grade M", [1790.0, 1880.0], "psi", FOUNDRYMAN),
    wheel("density, vitrified", [2000.0, 2500.0], "kg/m3", RECALLED),
    wheel("density, reinforced resinoid", [2300.0, 2700.0], "kg/m3", RECALLED),
    wheel("Poisson's ratio, vitrified", [0.18, 0.25], "", RECALLED),
    wheel("Poisson's ratio, resinoid", [0.20, 0.30], "", RECALLED),
];

/// An elastic material.
///
/// # Example
///
/// Steel by its name, and an aluminium alloy by the figures of its data sheet.
///
/// ```
/// use hubwright::tables::materials::{Elastic, Metal};
/// use hubwright::units::{MassDensity, Pressure, gigapascal, kilogram_per_cubic_meter};
///
/// let steel = Elastic::from(Metal::Steel);
/// assert!(steel.to_string().ends_with("(from memory, unverified)"));
/// let alloy = Elastic::new(
///     Pressure::new::<gigapascal>(71.0),
///     0.33,
///     MassDensity::new::<kilogram_per_cubic_meter>(2780.0),
/// );
/// assert!(alloy.to_string().ends_with("(as stated by the user)"));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Elastic {
    /// Modulus of elasticity.
    pub modulus: Pressure,
    /// Poisson's ratio.
    pub poisson: f64,
    /// Density.
    pub density: MassDensity,
    /// Thermal expansion, where heat is asked about.
    pub expansion: Option<TemperatureCoefficient>,
    /// Name, when the constants were taken by name.
    pub named: Option<Metal>,
    /// Where the constants come from.
    pub source: Source,
}

impl Elastic {
    /// A material by its own constants.
    pub const fn new(modulus: Pressure, poisson: f64, density: MassDensity) -> Self {
        Self { modulus, poisson, density, expansion: None, named: None, source: STATED }
    }

    /// With its thermal expansion.
    #[must_use]
    pub const fn with_expansion(mut self, expansion: TemperatureCoefficient) -> Self {
        self.expansion = Some(expansion);
        self
    }

    /// Passes constants that make sense; `part` stands before their names in errors.
    ///
    /// # Errors
    ///
    /// [`OutOfRange`](crate::ErrorKind::OutOfRange) or [`NotFinite`](crate::ErrorKind::NotFinite)
    /// for a modulus outside 0 to 10,000 GPa, Poisson's ratio outside 0 to 0.5,
    /// a density outside 0 to 30,000 kg/m³ or an expansion of over 1000 µm/m/K.
    pub fn check(&self, part: &str) -> Result<(), Error> {
        let checks = [
            below("modulus", self.modulus.get::<gigapascal>(), 1e4, "GPa", "206 GPa"),
            below("poisson", self.poisson, 0.5, "", "0.3"),
            below(
                "density",
                self.density.get::<kilogram_per_cubic_meter>(),
                3e4,
                "kg/m3",
                "7850 kg/m3",
            ),
            self.expansion.map_or(Ok(()), |expansion| {
                let given = expansion.get::<per_kelvin>() * 1e6;
                within("expansion", given, [-1e3, 1e3], "um/m/K", "11.5 um/m/K")
            }),
        ];
        let named = |error: Error| match error.argument() {
            Some(name) if !part.is_empty() => {
                let name = format!("{part}.{name}");
                error.named(&name)
            }
            _ => error,
        };
        checks.into_iter().collect::<Result<(), Error>>().map_err(named)
    }
}

impl From<Metal> for Elastic {
    /// The usual constants of a metal, from memory.
    fn from(metal: Metal) -> Self {
        let row = METAL_ROWS[metal as usize];
        Self {
            modulus: Pressure::new::<gigapascal>(row.modulus.usual),
            poisson: row.poisson.usual,
            density: MassDensity::new::<kilogram_per_cubic_meter>(row.density.usual),
            expansion: Some(TemperatureCoefficient::new::<per_kelvin>(row.expansion.usual / 1e6)),
            named: Some(metal),
            source: METALS,
        }
    }
}

impl fmt::Display for Elastic {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        if let Some(metal) = self.named {
            write!(f, "{metal}, ")?;
        }
        write!(
            f,
            "E {} GPa, Poisson's ratio {}, {} kg/m3",
            figure(self.modulus.get::<gigapascal>(), 3),
            figure(self.poisson, 4),
            figure(self.density.get::<kilogram_per_cubic_meter>(), 1)
        )?;
        if let Some(expansion) = self.expansion {
            write!(f, ", {} um/m/K", figure(expansion.get::<per_kelvin>() * 1e6, 2))?;
        }
        write!(f, " ({})", self.source.status.word())
    }
}
