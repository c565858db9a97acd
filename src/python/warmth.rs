//! Sizes measured warm: the rest of `hubwright.joint`.

use pyo3::prelude::*;

use super::joint::mm;
use super::quantity::{Out, Q};
use super::verdict::Source;
use super::wheel::Working;
use super::words::{W, WordOut};
use crate::joint::{self, Metal};
use crate::units::{Length, TemperatureCoefficient, ThermodynamicTemperature, figure, per_kelvin};

/// A size measured warm or cold, brought to 20 °C: what `at_20_c` found.
#[pyclass(frozen, module = "hubwright._core")]
pub struct At20(joint::At20);

#[pymethods]
impl At20 {
    /// Size as measured, in mm.
    #[getter]
    fn measured(&self) -> Out<Length> {
        Out(self.0.measured)
    }

    /// Temperature of the part, in °C.
    #[getter]
    fn temperature(&self) -> Out<ThermodynamicTemperature> {
        Out(self.0.temperature)
    }

    /// Expansion of the part, in 1/K.
    #[getter]
    fn expansion(&self) -> Out<TemperatureCoefficient> {
        Out(self.0.expansion)
    }

    /// Expansion of the instrument, in 1/K; None where it was not given.
    #[getter]
    fn instrument_expansion(&self) -> Option<Out<TemperatureCoefficient>> {
        self.0.instrument_expansion.map(Out)
    }

    /// Size at 20 °C, in mm.
    #[getter]
    fn size(&self) -> Out<Length> {
        Out(self.0.size)
    }

    /// How the size came about; the last step's result is `size` in mm.
    fn working(&self) -> Working {
        Working(self.0.working())
    }

    fn __repr__(&self) -> String {
        format!("<At20 {}>", mm(self.0.size))
    }
}

/// The size that a part has at 20 °C, at which limits hold.
///
/// L₂₀ = L · (1 + αᵢ (t − 20 °C)) / (1 + α (t − 20 °C)).
///
/// Args:
///     measured: Size that the instrument shows, above zero.
///     temperature: Temperature of the part as a thermometer shows it, like `"23.5 °C"`; -20 to 60 °C.
///     expansion: Expansion of the part, like `"11.5 um/m/K"`; `published_expansion` has ranges.
///     instrument_expansion: Expansion of the instrument, where it was as warm as the part and reads
///         right at 20 °C. Without it the reading is taken for the true size at this temperature.
///
/// Returns:
///     At20: `.size`.
///
/// Raises:
///     UnitError, TextError, OutOfRangeError: As for `Limits.judge`, and outside the ranges above.
///
/// Source: ISO 1 for 20 °C (from memory); linear thermal expansion.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> hw.joint.at_20_c("40.010 mm", "28 °C", "23.6 um/m/K")
///     <At20 40.002448 mm>
///     >>> hw.joint.at_20_c("40.010 mm", "28 °C", "23.6 um/m/K", instrument_expansion="11.5 um/m/K")
///     <At20 40.006128 mm>
#[pyfunction]
#[pyo3(signature = (measured, temperature, expansion, *, instrument_expansion = None))]
pub fn at_20_c(
    measured: Q<Length>,
    temperature: Q<ThermodynamicTemperature>,
    expansion: Q<TemperatureCoefficient>,
    instrument_expansion: Option<Q<TemperatureCoefficient>>,
) -> PyResult<At20> {
    let instrument =
        instrument_expansion.map(|found| found.named("instrument_expansion")).transpose()?;
    Ok(At20(joint::at_20_c(
        measured.named("measured")?,
        temperature.named("temperature")?,
        expansion.named("expansion")?,
        instrument,
    )?))
}

/// Published expansion of a metal; which figure of the range to take is the user's choice.
#[pyclass(frozen, module = "hubwright._core")]
pub struct Expansion(joint::Expansion);

#[pymethods]
impl Expansion {
    /// The metal.
    #[getter]
    fn metal(&self) -> WordOut<Metal> {
        WordOut(self.0.metal)
    }

    /// Least of the published figures, in 1/K.
    #[getter]
    fn least(&self) -> Out<TemperatureCoefficient> {
        Out(self.0.least)
    }

    /// Greatest of the published figures, in 1/K.
    #[getter]
    fn most(&self) -> Out<TemperatureCoefficient> {
        Out(self.0.most)
    }

    /// Where they stand.
    #[getter]
    fn source(&self) -> Source {
        Source(self.0.source)
    }

    fn __repr__(&self) -> String {
        let um = |expansion: TemperatureCoefficient| figure(expansion.get::<per_kelvin>() * 1e6, 1);
        format!("<Expansion {} {} to {} µm/m/K>", self.0.metal, um(self.0.least), um(self.0.most))
    }
}

/// Published range of a metal's expansion at room temperature.
///
/// Args:
///     metal: `steel`, `grey cast iron`, `ductile cast iron`, `aluminium` or `brass`.
///
/// Returns:
///     Expansion: `.least`, `.most` and `.source`.
///
/// Raises:
///     TextError: Another metal.
///
/// Source: Callister and Rethwisch, Fundamentals of Materials Science and Engineering, 3rd edition,
/// Table B.6.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> hw.joint.published_expansion("aluminium")
///     <Expansion aluminium 21.5 to 23.6 µm/m/K>
#[pyfunction]
pub fn published_expansion(metal: W<Metal>) -> PyResult<Expansion> {
    Ok(Expansion(joint::published_expansion(metal.named("metal")?)))
}
