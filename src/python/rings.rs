//! Materials and rings: `hubwright.wheel.rings` and what joints are made of.

use pyo3::prelude::*;

#[cfg(feature = "stubs")]
use pyo3::{inspect::PyStaticExpr, type_hint_identifier, type_hint_union};

use super::quantity::{Out, Plain, Q};
use super::verdict::Source;
use crate::error::{Error, ErrorKind, cut};
use crate::mounting::sort::show;
use crate::solid::{self, Held};
use crate::tables::materials::{self, METAL_ROWS, Metal, WHEEL_RANGES};
use crate::units::{
    AngularVelocity, Length, MassDensity, Pressure, TemperatureCoefficient, TemperatureInterval,
    Words,
};
use crate::wheel;

/// Writes a frozen class around a result: one getter a field, then whatever methods follow.
macro_rules! found {
    ($class:ident($inner:ty) {
        $($(#[doc = $doc:literal])+ $name:ident: $out:ty = $get:expr;)+
    } $($more:tt)*) => {
        #[pymethods]
        impl $class {
            $(
                $(#[doc = $doc])+
                #[getter]
                fn $name(&self) -> $out {
                    let get: fn(&$inner) -> $out = $get;
                    get(&self.0)
                }
            )+
            $($more)*
        }
    };
}
pub(super) use found;

/// An elastic material by its own constants.
///
/// Where a material is asked for, the name of a metal does too: see `hubwright.joint.metals`.
///
/// Args:
///     modulus: Modulus of elasticity, above zero.
///     poisson: Poisson's ratio, above 0 and below 0.5.
///     density: Density, above zero.
///     expansion: Thermal expansion, where heat is asked about.
///
/// Raises:
///     UnitError, TextError, OutOfRangeError: As for `hubwright.wheel.rim_speed`.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> hw.wheel.Elastic(modulus="60 GPa", poisson=0.25, density="3300 kg/m3")
///     <Elastic E 60 GPa, Poisson's ratio 0.25, 3300 kg/m3 (as stated by the user)>
#[pyclass(frozen, eq, from_py_object, module = "hubwright._core")]
#[derive(Clone, Copy, PartialEq)]
pub struct Elastic(pub(super) materials::Elastic);

found! {
    Elastic(materials::Elastic) {
        /// Modulus of elasticity, in MPa.
        modulus: Out<Pressure> = |of| Out(of.modulus);
        /// Poisson's ratio.
        poisson: f64 = |of| of.poisson;
        /// Density.
        density: Out<MassDensity> = |of| Out(of.density);
        /// Thermal expansion; None when it was not given.
        expansion: Option<Out<TemperatureCoefficient>> = |of| of.expansion.map(Out);
        /// Name of the metal when the constants were taken by name; None when they were stated.
        name: Option<&'static str> = |of| of.named.map(Words::word);
        /// Where the constants come from.
        source: Source = |of| Source(of.source);
    }

    #[new]
    #[pyo3(signature = (*, modulus, poisson, density, expansion = None))]
    fn new(
        modulus: Q<Pressure>,
        poisson: Plain,
        density: Q<MassDensity>,
        expansion: Option<Q<TemperatureCoefficient>>,
    ) -> PyResult<Self> {
        let (modulus, poisson) = (modulus.named("modulus")?, poisson.named("poisson")?);
        let material = materials::Elastic::new(modulus, poisson, density.named("density")?);
        let material = match expansion {
            Some(expansion) => material.with_expansion(expansion.named("expansion")?),
            None => material,
        };
        material.check("")?;
        Ok(Self(material))
    }

    fn __repr__(&self) -> String {
        format!("<Elastic {}>", self.0)
    }
}

/// A material on its way in: an `Elastic`, or the name of a metal.
pub(super) struct Of(Result<materials::Elastic, Error>);

impl Of {
    pub(super) fn named(self, argument: &str) -> Result<materials::Elastic, Error> {
        self.0.map_err(|error| error.named(argument))
    }
}

impl<'py> FromPyObject<'_, 'py> for Of {
    type Error = PyErr;
    #[cfg(feature = "stubs")]
    const INPUT_TYPE: PyStaticExpr = type_hint_union!(
        <Elastic as pyo3::PyTypeInfo>::TYPE_HINT,
        type_hint_identifier!("builtins", "str")
    );

    fn extract(object: Borrowed<'_, 'py, PyAny>) -> PyResult<Self> {
        if let Ok(material) = object.extract::<Elastic>() {
            return Ok(Self(Ok(material.0)));
        }
        if let Ok(name) = object.extract::<String>() {
            return Ok(Self(Metal::read_word(&name).map(materials::Elastic::from)));
        }
        let given =
            object.repr().map_or_else(|_| "an object".to_owned(), |repr| cut(&repr.to_string()));
        let names: Vec<_> = Metal::LIST.iter().map(|(_, word, _)| *word).collect();
        Ok(Self(Err(ErrorKind::UnknownWord {
            argument: "value".into(),
            text: given,
            allowed: names.join(", "),
            hint: "give one of these names, or an Elastic(modulus=..., poisson=..., density=...)"
                .into(),
        }
        .into())))
    }
}

/// Common metals with their usual constants, from memory; take them by name, as `"steel"`.
///
/// Returns:
///     One `Elastic` a metal.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> hw.joint.metals()[0]
///     <Elastic steel, E 206 GPa, Poisson's ratio 0.3, 7850 kg/m3, 11.5 um/m/K (from memory, unverified)>
#[pyfunction]
pub fn metals() -> Vec<Elastic> {
    METAL_ROWS.iter().map(|row| Elastic(row.metal.into())).collect()
}

/// A published figure or range, offered by name and never taken silently.
#[pyclass(frozen, module = "hubwright._core")]
pub struct Published(pub(super) materials::Published);

found! {
    Published(materials::Published) {
        /// What it is of.
        name: &'static str = |of| of.name;
        /// Least of the range, or the one figure, in `unit`.
        least: f64 = |of| of.least;
        /// Greatest of the range; the same where there is one figure.
        greatest: f64 = |of| of.greatest;
        /// Unit of both; empty for plain numbers.
        unit: &'static str = |of| of.unit;
        /// Who says so.
        source: Source = |of| Source(of.source);
    }

    fn __repr__(&self) -> String {
        format!("<Published {}>", self.0)
    }
}

/// Published ranges of what bonded abrasive wheels are like. They are wide: ask the wheel's maker.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> hw.wheel.material_ranges()[1]
///     <Published tensile strength, vitrified: 2.35 to 13.7 MPa [a wheel maker's safety page (read)]>
#[pyfunction]
pub fn material_ranges() -> Vec<Published> {
    WHEEL_RANGES.into_iter().map(Published).collect()
}

/// One of several concentric rings: the innermost, or one bonded or shrunk on the one inside it.
///
/// Args:
///     diameter: Outside diameter.
///     material: An `Elastic`, or the name of a metal.
///     bonded: Whether it is bonded to the ring inside it.
///     interference: Interference on diameter with the ring inside it, when it is shrunk or
///         pressed on; zero or above.
///     rise: How much warmer it is than when it was measured.
///
/// Raises:
///     TextError: Bonded and shrunk at once, or a name that is no metal's.
///     UnitError, TextError, OutOfRangeError: As for `hubwright.wheel.rim_speed`.
#[pyclass(frozen, eq, from_py_object, module = "hubwright._core")]
#[derive(Clone, Copy, PartialEq)]
pub struct Ring(solid::Ring);

found! {
    Ring(solid::Ring) {
        /// Outside diameter.
        diameter: Out<Length> = |of| Out(of.diameter);
        /// What it is made of.
        material: Elastic = |of| Elastic(of.material);
        /// Whether it is bonded to the ring inside it.
        bonded: bool = |of| of.held == Held::Bonded;
        /// Interference on diameter with the ring inside it; None unless it is shrunk on.
        interference: Option<Out<Length>> = |of| match of.held {
            Held::Shrunk(interference) => Some(Out(interference)),
            _ => None,
        };
        /// How much warmer it is than when it was measured.
        rise: Out<TemperatureInterval> = |of| Out(of.rise);
    }

    #[new]
    #[pyo3(signature = (*, diameter, material, bonded = false, interference = None, rise = None))]
    fn new(
        diameter: Q<Length>,
        material: Of,
        bonded: bool,
        interference: Option<Q<Length>>,
        rise: Option<Q<TemperatureInterval>>,
    ) -> PyResult<Self> {
        let (diameter, material) = (diameter.named("diameter")?, material.named("material")?);
        let interference = interference.map(|u| u.named("interference")).transpose()?;
        let ring = match (bonded, interference) {
            (false, None) => solid::Ring::innermost(diameter, material),
            (true, None) => solid::Ring::bonded(diameter, material),
            (false, Some(interference)) => solid::Ring::shrunk(diameter, material, interference),
            (true, Some(_)) => {
                return Err(Error::from(ErrorKind::UnknownWord {
                    argument: "bonded".into(),
                    text: "True".into(),
                    allowed: "False, where an interference is given".into(),
                    hint: "give bonded=True or an interference, not both".into(),
                })
                .into());
            }
        };
        let rise = rise.map(|rise| rise.named("rise")).transpose()?;
        Ok(Self(ring.with_rise(rise.unwrap_or_default())))
    }

    fn __repr__(&self) -> String {
        let held = match self.0.held {
            Held::Innermost => String::new(),
            Held::Bonded => ", bonded".into(),
            Held::Shrunk(interference) => format!(", shrunk on by {}", show(interference)),
        };
        format!("<Ring {}{held}: {}>", show(self.0.diameter), self.0.material)
    }
}

/// Stress and displacement at one diameter.
#[pyclass(frozen, eq, module = "hubwright._core")]
#[derive(PartialEq)]
pub struct Point(pub(super) solid::Point);

found! {
    Point(solid::Point) {
        /// Where.
        diameter: Out<Length> = |of| Out(of.diameter);
        /// Radial stress, in MPa; negative is pressure.
        radial: Out<Pressure> = |of| Out(of.radial);
        /// Hoop stress, in MPa; negative is compression.
        hoop: Out<Pressure> = |of| Out(of.hoop);
        /// How far it moves outwards, on radius, in mm.
        outwards: Out<Length> = |of| Out(of.outwards);
        /// The stress by which a ductile material yields, after von Mises, in MPa.
        von_mises: Out<Pressure> = |of| Out(of.von_mises());
    }

    fn __repr__(&self) -> String {
        format!(
            "<Point at {}: radial {}, hoop {}>",
            show(self.0.diameter),
            show(self.0.radial),
            show(self.0.hoop)
        )
    }
}

/// A ring with what presses on it.
#[pyclass(frozen, module = "hubwright._core")]
pub struct RingFound(solid::RingFound);

found! {
    RingFound(solid::RingFound) {
        /// The ring.
        ring: Ring = |of| Ring(of.ring);
        /// At its bore; at the centre of a solid disc.
        inside: Point = |of| Point(of.inside);
        /// At its outside diameter.
        outside: Point = |of| Point(of.outside);
        /// Its greatest von Mises stress, which is at one of the two surfaces.
        von_mises: Out<Pressure> = |of| Out(of.von_mises());
    }

    /// Stress and displacement at any diameter of the ring.
    ///
    /// Args:
    ///     diameter: From the ring's bore to its outside.
    ///
    /// Raises:
    ///     OutOfRangeError: A diameter outside of the ring.
    fn at(&self, diameter: Q<Length>) -> PyResult<Point> {
        Ok(Point(self.0.at(diameter.named("diameter")?)?))
    }

    fn __repr__(&self) -> String {
        format!("<RingFound {}, von Mises {}>", show(self.0.ring.diameter), show(self.0.von_mises()))
    }
}

/// Where two rings meet.
#[pyclass(frozen, module = "hubwright._core")]
pub struct Interface(solid::Interface);

found! {
    Interface(solid::Interface) {
        /// Nominal diameter.
        diameter: Out<Length> = |of| Out(of.diameter);
        /// Pressure, in MPa: negative is the tension of a bond, zero an open joint.
        pressure: Out<Pressure> = |of| Out(of.pressure);
        /// Tension of the bond, in MPa; zero under pressure.
        tension: Out<Pressure> = |of| Out(of.tension());
        /// Whether the rings are bonded.
        bonded: bool = |of| of.bonded;
        /// Whether a shrunk ring has let go.
        open: bool = |of| of.open;
        /// Clearance on diameter where it has.
        gap: Out<Length> = |of| Out(of.gap);
        /// The speed from which on a shrunk ring is loose, zero when it is so at a standstill;
        /// None when it never comes loose, and for a bond.
        loosening_speed: Option<Out<AngularVelocity>> = |of| of.loosening_speed.map(Out);
    }

    fn __repr__(&self) -> String {
        let said = if self.0.open {
            format!("open by {}", show(self.0.gap))
        } else if self.0.tension() > Pressure::default() {
            format!("bond pulled by {}", show(self.0.tension()))
        } else {
            format!("pressure {}", show(self.0.pressure))
        };
        format!("<Interface at {}: {said}>", show(self.0.diameter))
    }
}

/// What `rings` found, from the inside outwards.
#[pyclass(frozen, module = "hubwright._core")]
pub struct WheelRings(wheel::WheelRings);

found! {
    WheelRings(wheel::WheelRings) {
        /// Bore of the innermost ring; zero for a solid disc.
        bore: Out<Length> = |of| Out(of.compound.bore);
        /// Rotational speed.
        speed: Out<AngularVelocity> = |of| Out(of.compound.speed);
        /// The rings.
        rings: Vec<RingFound> = |of| of.compound.rings.iter().copied().map(RingFound).collect();
        /// Where they meet.
        interfaces: Vec<Interface> = |of| of.compound.interfaces.iter().copied().map(Interface).collect();
        /// Greatest tension of a bond, in MPa; zero where there is none.
        bond_tension: Out<Pressure> = |of| Out(of.bond_tension);
        /// Strength of the bond; None when it was not given.
        bond_strength: Option<Out<Pressure>> = |of| of.bond_strength.map(Out);
        /// Strength over tension; None without a strength or without tension.
        bond_factor: Option<f64> = |of| of.bond_factor;
    }

    fn __repr__(&self) -> String {
        let count = self.0.compound.rings.len();
        format!("<WheelRings {count} rings, greatest bond tension {}>", show(self.0.bond_tension))
    }
}

/// A wheel of several rings that turn together: a core with a bonded rim, or more.
///
/// Args:
///     rings: The rings from the inside outwards.
///     bore: Bore of the innermost ring; "0 mm" for a solid disc.
///     speed: Rotational speed.
///     bond_strength: Tension that the bond carries, above zero, to be compared with.
///
/// Returns:
///     WheelRings: `.rings` with stresses, `.interfaces` with pressures, `.bond_tension`, `.bond_factor`.
///
/// Raises:
///     MissingError: No ring, no word on how a ring is held, or heat without an expansion.
///     UnitError, TextError, OutOfRangeError: As for `rim_speed`.
///
/// Plane stress: rings of one width, thin against their diameter, elastic, without keyways or
/// holes. A shrunk ring that would be pulled is open.
///
/// Source: Timoshenko and Goodier, Theory of Elasticity.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> rim = hw.wheel.Elastic(modulus="60 GPa", poisson=0.25, density="3300 kg/m3")
///     >>> found = hw.wheel.rings(
///     ...     [hw.wheel.Ring(diameter="180 mm", material="steel"),
///     ...      hw.wheel.Ring(diameter="200 mm", material=rim, bonded=True)],
///     ...     bore="50.8 mm", speed="800 rad/s", bond_strength="10 MPa",
///     ... )
///     >>> print(f"{found.bond_tension:.3f~P}, {found.bond_factor:.2f}")
///     1.746 MPa, 5.73
#[pyfunction]
#[pyo3(signature = (rings, *, bore, speed, bond_strength = None))]
pub fn rings(
    rings: Vec<Ring>,
    bore: Q<Length>,
    speed: Q<AngularVelocity>,
    bond_strength: Option<Q<Pressure>>,
) -> PyResult<WheelRings> {
    let rings: Vec<_> = rings.into_iter().map(|ring| ring.0).collect();
    let (bore, speed) = (bore.named("bore")?, speed.named("speed")?);
    let bond = bond_strength.map(|strength| strength.named("bond_strength")).transpose()?;
    Ok(WheelRings(wheel::rings(bore, &rings, speed, bond)?))
}
