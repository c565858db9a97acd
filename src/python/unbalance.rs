//! Causes of unbalance and truing: part of `hubwright.wheel`.

use pyo3::prelude::*;

use super::quantity::{Out, Q};
use super::rings::found;
use super::wheel::Working;
use crate::draw::{svg, unbalance_picture};
use crate::error::Error;
use crate::mounting::sort::show;
use crate::solid;
use crate::units::{Angle, Length, Mass, MassDensity, Unbalance, degree, figure, gram_millimeter};
use crate::wheel::{self, HeavySpot as Spot};

/// An unbalance with the angle at which it makes the rotor heavy.
#[pyclass(frozen, eq, module = "hubwright._core")]
#[derive(PartialEq)]
pub struct UnbalanceVector(pub(super) solid::UnbalanceVector);

found! {
    UnbalanceVector(solid::UnbalanceVector) {
        /// How much, in g mm.
        amount: Out<Unbalance> = |of| Out(of.amount);
        /// Where, in degrees from the mark.
        angle: Out<Angle> = |of| Out(of.angle);
    }

    fn __repr__(&self) -> String {
        let angle = figure(self.0.angle.get::<degree>(), 2);
        format!("<UnbalanceVector {} at {angle}°>", show(self.0.amount))
    }
}

/// One cause of unbalance. Make it with one of its methods; each takes an angle from a mark, where it is known.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> hw.wheel.HeavySpot.clearance(mass="1.35 kg", clearance="0.03 mm")
///     <HeavySpot clearance: 20.25 g mm, anywhere>
#[pyclass(frozen, eq, from_py_object, module = "hubwright._core")]
#[derive(Clone, PartialEq)]
pub struct HeavySpot(Spot);

/// A spot at its angle, when that is given.
fn placed(spot: Result<Spot, Error>, angle: Option<Q<Angle>>) -> PyResult<HeavySpot> {
    let spot = spot?;
    let Some(angle) = angle else { return Ok(HeavySpot(spot)) };
    Ok(HeavySpot(spot.at(angle.named("angle")?)?))
}

found! {
    HeavySpot(Spot) {
        /// What it is.
        name: &'static str = |of| of.name;
        /// How much, in g mm.
        unbalance: Out<Unbalance> = |of| Out(of.unbalance);
        /// Where it makes the rotor heavy, opposite of a slot or hole; None where it may be anywhere.
        angle: Option<Out<Angle>> = |of| of.angle.map(Out);
    }

    /// A wheel that hangs to one side of its clearance.
    ///
    /// Args:
    ///     mass: Mass of the wheel.
    ///     clearance: Clearance between hole and spigot, on diameter.
    ///     angle: Where it hangs to.
    #[staticmethod]
    #[pyo3(signature = (*, mass, clearance, angle = None))]
    fn clearance(mass: Q<Mass>, clearance: Q<Length>, angle: Option<Q<Angle>>) -> PyResult<Self> {
        placed(Spot::clearance(mass.named("mass")?, clearance.named("clearance")?), angle)
    }

    /// A mass on a seat that runs out.
    ///
    /// Args:
    ///     mass: Mass on that seat.
    ///     run_out: Run-out, total reading.
    ///     angle: Where the reading is greatest.
    #[staticmethod]
    #[pyo3(signature = (*, mass, run_out, angle = None))]
    fn run_out(mass: Q<Mass>, run_out: Q<Length>, angle: Option<Q<Angle>>) -> PyResult<Self> {
        placed(Spot::run_out(mass.named("mass")?, run_out.named("run_out")?), angle)
    }

    /// A key slot in the hub's bore, as it stands empty.
    ///
    /// Args:
    ///     bore: Diameter of the bore.
    ///     width: Width of the slot.
    ///     depth: Its depth at the middle.
    ///     length: Its length.
    ///     density: Density of the hub.
    ///     angle: Where the slot is.
    #[staticmethod]
    #[pyo3(signature = (*, bore, width, depth, length, density, angle = None))]
    fn hub_slot(
        bore: Q<Length>,
        width: Q<Length>,
        depth: Q<Length>,
        length: Q<Length>,
        density: Q<MassDensity>,
        angle: Option<Q<Angle>>,
    ) -> PyResult<Self> {
        let (bore, width, depth) = (bore.named("bore")?, width.named("width")?, depth.named("depth")?);
        let (length, density) = (length.named("length")?, density.named("density")?);
        placed(Spot::hub_slot(bore, width, depth, length, density), angle)
    }

    /// A key slot in a shaft or taper, as it stands empty.
    ///
    /// Args:
    ///     diameter: Diameter of the shaft.
    ///     width: Width of the slot.
    ///     depth: Its depth at the middle.
    ///     length: Its length.
    ///     density: Density of the shaft.
    ///     angle: Where the slot is.
    #[staticmethod]
    #[pyo3(signature = (*, diameter, width, depth, length, density, angle = None))]
    fn shaft_slot(
        diameter: Q<Length>,
        width: Q<Length>,
        depth: Q<Length>,
        length: Q<Length>,
        density: Q<MassDensity>,
        angle: Option<Q<Angle>>,
    ) -> PyResult<Self> {
        let (diameter, width) = (diameter.named("diameter")?, width.named("width")?);
        let (depth, length) = (depth.named("depth")?, length.named("length")?);
        placed(Spot::shaft_slot(diameter, width, depth, length, density.named("density")?), angle)
    }

    /// A key on the bottom of its slot in the bore.
    ///
    /// Args:
    ///     bore: Diameter of the bore.
    ///     depth: Depth of the slot at the middle.
    ///     width: Width of the key.
    ///     height: Height of the key.
    ///     length: Length of the key.
    ///     density: Density of the key.
    ///     angle: Where the key is.
    #[staticmethod]
    #[pyo3(signature = (*, bore, depth, width, height, length, density, angle = None))]
    fn key(
        bore: Q<Length>,
        depth: Q<Length>,
        width: Q<Length>,
        height: Q<Length>,
        length: Q<Length>,
        density: Q<MassDensity>,
        angle: Option<Q<Angle>>,
    ) -> PyResult<Self> {
        let sizes = [width.named("width")?, height.named("height")?, length.named("length")?];
        let (bore, depth) = (bore.named("bore")?, depth.named("depth")?);
        placed(Spot::key(bore, depth, sizes, density.named("density")?), angle)
    }

    /// A round hole along the axis, such as one for a pin spanner.
    ///
    /// Args:
    ///     diameter: Diameter of the hole.
    ///     depth: Its depth.
    ///     radius: Radius of the circle that it lies on.
    ///     density: Density of the hub.
    ///     angle: Where the hole is.
    #[staticmethod]
    #[pyo3(signature = (*, diameter, depth, radius, density, angle = None))]
    fn hole(
        diameter: Q<Length>,
        depth: Q<Length>,
        radius: Q<Length>,
        density: Q<MassDensity>,
        angle: Option<Q<Angle>>,
    ) -> PyResult<Self> {
        let (diameter, depth) = (diameter.named("diameter")?, depth.named("depth")?);
        placed(Spot::hole(diameter, depth, radius.named("radius")?, density.named("density")?), angle)
    }

    /// A lump, such as filler left from brazing.
    ///
    /// Args:
    ///     mass: Its mass.
    ///     radius: Its distance from the axis.
    ///     angle: Where it is.
    #[staticmethod]
    #[pyo3(signature = (*, mass, radius, angle = None))]
    fn lump(mass: Q<Mass>, radius: Q<Length>, angle: Option<Q<Angle>>) -> PyResult<Self> {
        placed(Spot::lump(mass.named("mass")?, radius.named("radius")?), angle)
    }

    fn __repr__(&self) -> String {
        let angle = self.0.angle.map_or_else(
            || "anywhere".to_owned(),
            |angle| format!("heavy at {}°", figure(angle.get::<degree>(), 2)),
        );
        format!("<HeavySpot {}: {}, {angle}>", self.0.name, show(self.0.unbalance))
    }
}

/// What `unbalance` found.
#[pyclass(frozen, module = "hubwright._core")]
pub struct UnbalanceSum(wheel::UnbalanceSum);

found! {
    UnbalanceSum(wheel::UnbalanceSum) {
        /// The causes.
        spots: Vec<HeavySpot> = |of| of.spots.iter().cloned().map(HeavySpot).collect();
        /// Those whose angle is known, together.
        known: UnbalanceVector = |of| UnbalanceVector(of.known);
        /// Those that may lie anywhere, as if all lay at one angle, in g mm.
        anywhere: Out<Unbalance> = |of| Out(of.anywhere);
        /// The most that it can come to, in g mm.
        greatest: Out<Unbalance> = |of| Out(of.greatest);
        /// The least that it can come to, in g mm.
        least: Out<Unbalance> = |of| Out(of.least);
    }

    /// One step a cause, then their sum; the last one's result is `greatest` in g mm.
    fn working(&self) -> Working {
        Working(self.0.working())
    }

    /// A polar picture as SVG text: arrows to scale, and a circle for what may lie anywhere.
    fn svg(&self) -> String {
        svg(&unbalance_picture(&self.0))
    }

    fn __repr__(&self) -> String {
        let least = figure(self.0.least.get::<gram_millimeter>(), 3);
        format!("<UnbalanceSum {least} to {}>", show(self.0.greatest))
    }
}

/// What several causes of unbalance come to: those of known angle as vectors, the others at worst.
///
/// Args:
///     spots: The causes, made with `HeavySpot.clearance`, `.run_out`, `.hub_slot`, `.shaft_slot`, `.key`, `.hole`, `.lump`.
///
/// Returns:
///     UnbalanceSum: `.known`, `.greatest`, `.least`, `.svg()`.
///
/// Raises:
///     MissingError: No cause.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> Spot = hw.wheel.HeavySpot
///     >>> found = hw.wheel.unbalance([
///     ...     Spot.hub_slot(bore="22 mm", width="4 mm", depth="1.8 mm", length="18 mm", density="7850 kg/m3", angle="0 deg"),
///     ...     Spot.key(bore="22 mm", depth="1.8 mm", width="4 mm", height="4 mm", length="18 mm", density="7850 kg/m3", angle="0 deg"),
///     ...     Spot.clearance(mass="1.35 kg", clearance="0.03 mm"),
///     ... ])
///     >>> found
///     <UnbalanceSum 8.317 to 32.183 g mm>
#[pyfunction]
pub fn unbalance(spots: Vec<HeavySpot>) -> PyResult<UnbalanceSum> {
    let spots: Vec<_> = spots.into_iter().map(|spot| spot.0).collect();
    Ok(UnbalanceSum(wheel::unbalance(&spots)?))
}

/// What `truing` found.
#[pyclass(frozen, module = "hubwright._core")]
pub struct Truing(wheel::TruingFound);

found! {
    Truing(wheel::TruingFound) {
        /// Unbalance before truing, in g mm, heavy on the side the wheel sits off to.
        before: Out<Unbalance> = |of| Out(of.before);
        /// Unbalance after truing, in g mm, heavy on the other side.
        after: Out<Unbalance> = |of| Out(of.after);
        /// Run-out of the rim before truing, total reading, in mm.
        rim_run_out: Out<Length> = |of| Out(of.rim_run_out);
        /// The most that truing takes off, on radius, in mm.
        stock: Out<Length> = |of| Out(of.stock);
        /// Diameter after truing, in mm.
        trued_diameter: Out<Length> = |of| Out(of.trued_diameter);
    }

    /// The steps, recomputed; the last one's result is `after` in g mm.
    fn working(&self) -> Working {
        Working(self.0.working())
    }

    fn __repr__(&self) -> String {
        format!("<Truing {} before, {} after>", show(self.0.before), show(self.0.after))
    }
}

/// What truing its rim on the hub does to the balance of a wheel that sits off centre.
///
/// Args:
///     diameter: Outside diameter before truing.
///     hole: Hole, below the diameter.
///     thickness: Thickness.
///     density: Density.
///     eccentricity: How far the wheel sits off the axis: half of the clearance that it hangs in.
///
/// Returns:
///     Truing: `.before`, `.after`, `.stock`, `.rim_run_out`, `.trued_diameter`.
///
/// Raises:
///     UnitError, TextError, OutOfRangeError: No quantities of these kinds, or a wheel that truing would use up.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> hw.wheel.truing(
///     ...     diameter="200 mm", hole="32 mm", thickness="20 mm", density="2250 kg/m3", eccentricity="0.06 mm",
///     ... )
///     <Truing 82.652 g mm before, 2.171 g mm after>
#[pyfunction]
#[pyo3(signature = (*, diameter, hole, thickness, density, eccentricity))]
pub fn truing(
    diameter: Q<Length>,
    hole: Q<Length>,
    thickness: Q<Length>,
    density: Q<MassDensity>,
    eccentricity: Q<Length>,
) -> PyResult<Truing> {
    let asked = wheel::Truing::new(
        diameter.named("diameter")?,
        hole.named("hole")?,
        thickness.named("thickness")?,
        density.named("density")?,
        eccentricity.named("eccentricity")?,
    );
    Ok(Truing(asked.solve()?))
}
