//! The kernels of `hubwright.wheel`.

use pyo3::prelude::*;

use super::quantity::{Out, Q};
use super::verdict::Source;
use super::words::{W, WordOut};
use crate::units::{AngularVelocity, Length, Velocity};
use crate::wheel::{self, Abrasive, BlotterNeed, Bond, FlangeKind, MachineKind, Shape};
use crate::working;

/// One step of a working.
///
/// Attributes are text but `result`, the number in `unit`.
#[pyclass(frozen, get_all, module = "hubwright._core")]
pub struct Step {
    symbol: &'static str,
    relation: &'static str,
    numbers: String,
    result: f64,
    unit: &'static str,
    source: Source,
}

/// How a result came about, step by step; the last step is the result.
///
/// It prints as numbered lines.
#[pyclass(frozen, module = "hubwright._core")]
pub struct Working(pub(super) working::Working);

#[pymethods]
impl Working {
    /// The steps in order.
    #[getter]
    fn steps(&self) -> Vec<Step> {
        let step = |step: &working::Step| Step {
            symbol: step.symbol,
            relation: step.relation,
            numbers: step.numbers.clone(),
            result: step.result,
            unit: step.unit,
            source: Source(step.source),
        };
        self.0.steps.iter().map(step).collect()
    }

    fn __str__(&self) -> String {
        self.0.to_string()
    }

    fn __repr__(&self) -> String {
        self.0.to_string()
    }
}

macro_rules! bind {
    ($($(#[$meta:meta])* fn $name:ident($($arg:ident: $kind:ty),+) -> $out:ty = $kernel:path;)+) => {$(
        $(#[$meta])*
        #[pyfunction]
        pub fn $name($($arg: Q<$kind>),+) -> PyResult<Out<$out>> {
            Ok(Out($kernel($($arg.named(stringify!($arg))?),+)?))
        }
    )+};
}

bind! {
    /// Speed of the rim of a turning wheel, v = ω · d / 2.
    ///
    /// Args:
    ///     diameter: Outside diameter, above zero.
    ///     speed: Rotational speed; its sign is kept.
    ///
    /// Returns:
    ///     Rim speed, in m/s.
    ///
    /// Raises:
    ///     UnitError: No unit, or one of another kind; `Hz` and `1/s` name no turn or angle.
    ///     TextError: Text that is not one number and one unit.
    ///     OutOfRangeError: A diameter that is not above zero, or no finite number.
    ///
    /// Source: kinematics of rigid rotation.
    ///
    /// Examples:
    ///     >>> import hubwright as hw
    ///     >>> print(f"{hw.wheel.rim_speed('200 mm', '3000 rpm'):.1f~P}")
    ///     31.4 m/s
    fn rim_speed(diameter: Length, speed: AngularVelocity) -> Velocity = wheel::rim_speed;

    /// Largest wheel that a spindle may turn without passing a rim speed, d = v / (π · n).
    ///
    /// Args:
    ///     speed: Greatest speed of the spindle, above zero.
    ///     rim_speed: Rim speed marked on the wheel, above zero.
    ///
    /// Returns:
    ///     Diameter, in mm.
    ///
    /// Raises:
    ///     UnitError, TextError, OutOfRangeError: As for `rim_speed`.
    ///
    /// Source: kinematics of rigid rotation.
    ///
    /// Examples:
    ///     >>> import hubwright as hw
    ///     >>> print(f"{hw.wheel.largest_diameter('2850 rpm', '35 m/s'):.1f~P}")
    ///     234.5 mm
    fn largest_diameter(speed: AngularVelocity, rim_speed: Velocity) -> Length = wheel::largest_diameter;
}

/// What `speed_for_rim` found.
#[pyclass(frozen, module = "hubwright._core")]
pub struct SpeedForRim(wheel::SpeedForRim);

#[pymethods]
impl SpeedForRim {
    /// Outside diameter asked about.
    #[getter]
    fn diameter(&self) -> Out<Length> {
        Out(self.0.diameter)
    }

    /// Rim speed asked for.
    #[getter]
    fn rim_speed(&self) -> Out<Velocity> {
        Out(self.0.rim_speed)
    }

    /// Rotational speed marked on the wheel; None when it was not given.
    #[getter]
    fn marked_speed(&self) -> Option<Out<AngularVelocity>> {
        self.0.marked_speed.map(Out)
    }

    /// The rotational speed to set, never above the marked one.
    #[getter]
    fn speed(&self) -> Out<AngularVelocity> {
        Out(self.0.speed)
    }

    /// Whether the marked speed held it down, so that the rim runs slower than asked.
    #[getter]
    fn capped(&self) -> bool {
        self.0.capped
    }

    /// The steps, recomputed.
    fn working(&self) -> Working {
        Working(self.0.working())
    }

    fn __repr__(&self) -> String {
        let speed = crate::mounting::sort::show(self.0.speed);
        let capped = if self.0.capped { ", capped at the marked speed" } else { "" };
        format!("<SpeedForRim {speed}{capped}>")
    }
}

/// Rotational speed at which the rim reaches a speed, capped at the marked one.
///
/// Args:
///     diameter: Outside diameter of the wheel as it is now, above zero.
///     rim_speed: Rim speed wanted, above zero.
///     marked_speed: Rotational speed marked on the wheel: a ceiling however small the wheel has worn.
///
/// Returns:
///     SpeedForRim: `.speed`, and `.capped` when the marked speed held it down.
///
/// Raises:
///     UnitError, TextError, OutOfRangeError: As for `rim_speed`.
///
/// Source: kinematics; the cap is 29 CFR 1910.215(d)(1).
///
/// Examples:
///     >>> import hubwright as hw
///     >>> hw.wheel.speed_for_rim("280 mm", "35 m/s", marked_speed="1910 rpm")
///     <SpeedForRim 1910 rpm, capped at the marked speed>
#[pyfunction]
#[pyo3(signature = (diameter, rim_speed, *, marked_speed = None))]
pub fn speed_for_rim(
    diameter: Q<Length>,
    rim_speed: Q<Velocity>,
    marked_speed: Option<Q<AngularVelocity>>,
) -> PyResult<SpeedForRim> {
    let marked = marked_speed.map(|marked| marked.named("marked_speed")).transpose()?;
    Ok(SpeedForRim(wheel::speed_for_rim(
        diameter.named("diameter")?,
        rim_speed.named("rim_speed")?,
        marked,
    )?))
}

/// A least or greatest size, and who says so.
#[pyclass(frozen, module = "hubwright._core")]
pub struct Limit(wheel::Limit);

#[pymethods]
impl Limit {
    /// The size, in mm.
    #[getter]
    fn value(&self) -> Out<Length> {
        Out(self.0.value)
    }

    /// Where it comes from.
    #[getter]
    fn source(&self) -> Source {
        Source(self.0.source)
    }

    /// What gives it: `ratio`, `table` or `clause`.
    #[getter]
    fn governs(&self) -> String {
        self.0.governs.to_string()
    }

    fn __repr__(&self) -> String {
        format!(
            "<Limit {} by {}: {}>",
            crate::mounting::sort::show(self.0.value),
            self.0.governs,
            self.0.source
        )
    }
}

macro_rules! limits {
    ($class:ident { $($(#[doc = $doc:literal])+ $name:ident;)+ } $($more:tt)*) => {
        #[pymethods]
        impl $class {
            $($more)*

            $(
                $(#[doc = $doc])+
                #[getter]
                fn $name(&self) -> Option<Limit> {
                    Option::<wheel::Limit>::from(self.0.$name).map(Limit)
                }
            )+

            fn __repr__(&self) -> String {
                let mut lines = vec![stringify!($class).to_owned()];
                $(
                    if let Some(limit) = Option::<wheel::Limit>::from(self.0.$name) {
                        let size = crate::mounting::sort::show(limit.value);
                        lines.push(format!("  {:24} {size}  ({}, {})", stringify!($name), limit.governs, limit.source));
                    }
                )+
                lines.join("\n")
            }
        }
    };
}

/// What `flange_limits` found; None where nothing is demanded.
#[pyclass(frozen, module = "hubwright._core")]
pub struct FlangeLimits(wheel::FlangeLimits);

limits! {
    FlangeLimits {
        /// Least diameter of the flange: the larger of ratio and table.
        least_diameter;
        /// For a wheel between two listed sizes, the diameter that the next row asks for.
        next_row_diameter;
        /// Least width of the land that bears on the wheel.
        least_land;
        /// Greatest width of the land.
        greatest_land;
        /// Least depth of the recess of a relieved flange.
        least_recess;
        /// Least width of the undercut at the hole of an adaptor or sleeve flange.
        least_undercut;
        /// Least thickness at the hole; in Tables O-5 and O-7 it includes the pilot.
        least_thickness_at_hole;
        /// Least thickness at the edge of the recess or undercut.
        least_thickness_at_edge;
    }

    /// How the least diameter came about.
    fn working(&self) -> Working {
        Working(self.0.working())
    }
}

/// Least dimensions of a flange for a wheel.
///
/// The diameter is the larger of a third of the new wheel (a quarter for cutting-off wheels) and
/// the row of the flange's table at or below the wheel.
///
/// Args:
///     shape: Shape of the wheel, such as `"type-1"` or `Shape.TYPE_1`.
///     diameter: Diameter of the new wheel, above zero.
///     kind: Kind of flange: `unrelieved`, `relieved`, `adaptor`, `adaptor-heavy` or `sleeve`.
///     hole: Hole of the wheel; needed for adaptors and sleeves.
///
/// Returns:
///     FlangeLimits: Each limit a `Limit` with value, source and what governs it, or None.
///
/// Raises:
///     MissingError: An adaptor or sleeve without the hole.
///     UnitError, TextError, OutOfRangeError: As for `rim_speed`.
///
/// Source: 29 CFR 1910.215(c)(1), (c)(5) and Tables O-4 to O-8.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> limits = hw.wheel.flange_limits("type-1", "14 in", "relieved")
///     >>> print(f"{limits.least_diameter.value.to('in'):.3f~P}", limits.least_diameter.governs)
///     4.667 in ratio
#[pyfunction]
#[pyo3(signature = (shape, diameter, kind, *, hole = None))]
pub fn flange_limits(
    shape: W<Shape>,
    diameter: Q<Length>,
    kind: W<FlangeKind>,
    hole: Option<Q<Length>>,
) -> PyResult<FlangeLimits> {
    let hole = hole.map(|hole| hole.named("hole")).transpose()?;
    let (shape, kind) = (shape.named("shape")?, kind.named("kind")?);
    Ok(FlangeLimits(wheel::flange_limits(shape, diameter.named("diameter")?, kind, hole)?))
}

/// What `hole_limits` found.
#[pyclass(frozen, module = "hubwright._core")]
pub struct HoleLimits(wheel::HoleLimits);

limits! {
    HoleLimits {
        /// Greatest hole; None where the law gives none for the shape.
        greatest_hole;
    }

    /// Whether the law says "shall" (cutting-off wheels) or "should" (type 1).
    #[getter]
    fn binding(&self) -> bool {
        self.0.binding
    }
}

/// Greatest hole of a wheel.
///
/// Args:
///     shape: Shape of the wheel.
///     diameter: Diameter of the new wheel, above zero.
///     machine_kind: Kind of machine; surface and cylindrical grinders may have two thirds.
///
/// Returns:
///     HoleLimits: `.greatest_hole` and `.binding`.
///
/// Raises:
///     UnitError, TextError, OutOfRangeError: As for `rim_speed`.
///
/// Source: 29 CFR 1910.211(b)(1) and (b)(13).
///
/// Examples:
///     >>> import hubwright as hw
///     >>> hw.wheel.hole_limits("type-1-cutting-off", "180 mm").greatest_hole
///     <Limit 45 mm by ratio: 29 CFR 1910.211(b)(13) (read in a reprint)>
#[pyfunction]
#[pyo3(signature = (shape, diameter, *, machine_kind = None))]
pub fn hole_limits(
    shape: W<Shape>,
    diameter: Q<Length>,
    machine_kind: Option<W<MachineKind>>,
) -> PyResult<HoleLimits> {
    let machine = machine_kind.map(|kind| kind.named("machine_kind")).transpose()?;
    Ok(HoleLimits(wheel::hole_limits(shape.named("shape")?, diameter.named("diameter")?, machine)?))
}

/// What `blotter_limits` found.
#[pyclass(frozen, module = "hubwright._core")]
pub struct BlotterLimits(wheel::BlotterLimits);

limits! {
    BlotterLimits {
        /// Least outside diameter: that of the flange.
        least_diameter;
        /// Greatest hole that leaves the land covered; None without a land.
        greatest_hole;
    }

    /// Whether the wheel needs blotters.
    #[getter]
    fn need(&self) -> WordOut<BlotterNeed> {
        WordOut(self.0.need)
    }
}

/// Whether a wheel needs blotters, and the sizes that cover a flange.
///
/// Args:
///     shape: Shape of the wheel.
///     flange_diameter: Diameter of the flange, above zero.
///     land: Width of its land, at most half of the flange.
///     abrasive: Abrasive of the wheel; one that is not given is taken for one that needs blotters.
///     bond: Bond of the wheel, likewise.
///
/// Returns:
///     BlotterLimits: `.need`, `.least_diameter`, `.greatest_hole`.
///
/// Raises:
///     UnitError, TextError, OutOfRangeError: As for `rim_speed`.
///
/// Source: 29 CFR 1910.215(c)(6) and (d)(5).
///
/// Examples:
///     >>> import hubwright as hw
///     >>> limits = hw.wheel.blotter_limits("type-1", "80 mm", land="8 mm")
///     >>> limits.need
///     <BlotterNeed.NEEDED: 'needed'>
///     >>> print(limits.greatest_hole.value)
///     64.0 millimeter
#[pyfunction]
#[pyo3(signature = (shape, flange_diameter, *, land = None, abrasive = None, bond = None))]
pub fn blotter_limits(
    shape: W<Shape>,
    flange_diameter: Q<Length>,
    land: Option<Q<Length>>,
    abrasive: Option<W<Abrasive>>,
    bond: Option<W<Bond>>,
) -> PyResult<BlotterLimits> {
    let land = land.map(|land| land.named("land")).transpose()?;
    let abrasive = abrasive.map(|abrasive| abrasive.named("abrasive")).transpose()?;
    let bond = bond.map(|bond| bond.named("bond")).transpose()?;
    let flange = flange_diameter.named("flange_diameter")?;
    Ok(BlotterLimits(wheel::blotter_limits(shape.named("shape")?, flange, land, abrasive, bond)?))
}
