//! Setting the lathe.

use pyo3::prelude::*;

use super::{Lengths, mm, shown};
use crate::gauge::{self, Along, SetAngle};
use crate::python::quantity::{Out, Q};
use crate::python::rings::found;
use crate::python::taper::{Taper, TaperIn};
use crate::python::verdict::Source;
use crate::python::wheel::Working;
use crate::python::words::{W, WordOut};
use crate::units::{Angle, Length, figure, micrometer};

/// What `slide_setting` found.
#[pyclass(frozen, module = "hubwright._core")]
pub struct SlideSetting(gauge::SlideSetting);

found! {
    SlideSetting(gauge::SlideSetting) {
        /// The taper wanted.
        taper: Taper = |of| Taper(of.taper);
        /// How far the indicator travels, in mm.
        travel: Out<Length> = |of| Out(of.travel);
        /// Along what.
        along: WordOut<Along> = |of| WordOut(of.along);
        /// What the slide's scale has to show, to begin with, in degrees.
        half_angle: Out<Angle> = |of| Out(of.half_angle);
        /// What the indicator has to show over the travel, on one side, in mm.
        rise: Out<Length> = |of| Out(of.rise);
        /// What a minute of arc changes of that, in mm.
        rise_per_minute: Out<Length> = |of| Out(of.rise_per_minute);
    }

    /// The steps, recomputed; the last one's result is `rise` in mm.
    fn working(&self) -> Working {
        Working(self.0.working())
    }

    fn __repr__(&self) -> String {
        let of = &self.0;
        let minute = figure(of.rise_per_minute.get::<micrometer>(), 2);
        format!(
            "<SlideSetting {} over {} along the {}, {minute} µm a minute of arc>",
            mm(of.rise), mm(of.travel), of.along
        )
    }
}

/// How to set the top slide: the angle to begin with, and the indicator's rise to set it by.
///
/// Args:
///     taper: The taper, as text or what `hubwright.joint.taper` gave.
///     travel: How far the indicator travels, above zero.
///     along: `"flank"` (the top slide moves) or `"axis"` (the saddle moves).
///
/// Returns:
///     SlideSetting: `.rise`, `.rise_per_minute`, `.half_angle`.
///
/// Raises:
///     UnitError, TextError, OutOfRangeError: No taper, no length, or another word.
///
/// Source: geometry; travel · sin α along the flank, travel · tan α along the axis.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> hw.gauge.slide_setting("3 in/ft", travel="25 mm", along="flank")
///     <SlideSetting 3.1009 mm over 25 mm along the flank, 7.22 µm a minute of arc>
#[pyfunction]
#[pyo3(signature = (taper, *, travel, along))]
pub fn slide_setting(taper: TaperIn, travel: Q<Length>, along: W<Along>) -> PyResult<SlideSetting> {
    let (taper, travel) = (taper.named("taper")?, travel.named("travel")?);
    Ok(SlideSetting(gauge::slide_setting(&taper, travel, along.named("along")?)?))
}

/// What `sine_bar` found.
#[pyclass(frozen, module = "hubwright._core")]
pub struct SineBar(gauge::SineBar);

found! {
    SineBar(gauge::SineBar) {
        /// Distance of the bar's rollers, in mm.
        centres: Out<Length> = |of| Out(of.centres);
        /// The angle it makes, in degrees.
        angle: Out<Angle> = |of| Out(of.angle);
        /// Height of the blocks under one roller, in mm.
        stack: Out<Length> = |of| Out(of.stack);
        /// What a minute of arc changes of that, in mm.
        stack_per_minute: Out<Length> = |of| Out(of.stack_per_minute);
    }

    /// The angle that a stack of another height makes less the one wanted.
    ///
    /// Args:
    ///     stack: Height that was wrung.
    ///
    /// Returns:
    ///     The error, an angle.
    ///
    /// Raises:
    ///     UnitError, TextError: No length.
    fn angle_error(&self, stack: Q<Length>) -> PyResult<Out<Angle>> {
        Ok(Out(self.0.angle_error(stack.named("stack")?)))
    }

    /// The steps, recomputed; the last one's result is `stack` in mm.
    fn working(&self) -> Working {
        Working(self.0.working())
    }

    fn __repr__(&self) -> String {
        format!("<SineBar {} for {}>", mm(self.0.stack), shown(self.0.angle))
    }
}

/// The stack under a sine bar that makes the half or the included angle of a taper, h = L sin φ.
///
/// Args:
///     taper: The taper, as text or what `hubwright.joint.taper` gave.
///     centres: Distance of the bar's rollers, above zero.
///     set: `"half"` or `"included"`; with the included angle a cone on the bar has its upper flank level.
///
/// Returns:
///     SineBar: `.stack`; `block_stack(bar.stack, ...)` says what to wring.
///
/// Raises:
///     UnitError, TextError, OutOfRangeError: No taper, no length, another word, or 90° and more.
///
/// Source: geometry.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> hw.gauge.sine_bar("Morse 2", centres="100 mm", set="included")
///     <SineBar 4.9919 mm for 2.86133°>
#[pyfunction]
#[pyo3(signature = (taper, *, centres, set))]
pub fn sine_bar(taper: TaperIn, centres: Q<Length>, set: W<SetAngle>) -> PyResult<SineBar> {
    let (taper, centres) = (taper.named("taper")?, centres.named("centres")?);
    Ok(SineBar(gauge::sine_bar(&taper, centres, set.named("set")?)?))
}

/// What `block_stack` found.
#[pyclass(frozen, module = "hubwright._core")]
pub struct BlockStack(gauge::BlockStack);

found! {
    BlockStack(gauge::BlockStack) {
        /// The height wanted, in mm.
        height: Out<Length> = |of| Out(of.height);
        /// The blocks in mm, largest first.
        blocks: Vec<Out<Length>> = |of| of.blocks.iter().copied().map(Out).collect();
        /// What they come to, in mm.
        sum: Out<Length> = |of| Out(of.sum);
        /// That less the height wanted, in µm.
        off_um: f64 = |of| of.off.get::<micrometer>();
    }

    fn __repr__(&self) -> String {
        let blocks: Vec<_> = self.0.blocks.iter().copied().map(mm).collect();
        format!("<BlockStack {}, {} µm off>", blocks.join(" + "), figure(self.0.off.get::<micrometer>(), 3))
    }
}

/// The fewest blocks of a set that make a height to within so much; of as many, the nearest.
///
/// Args:
///     height: The height wanted, above zero.
///     blocks: The blocks of your set, each once: a list of lengths, or an array with a unit; 200 at most.
///     within: How far off the stack may be.
///
/// Returns:
///     BlockStack: `.blocks`, `.sum`, `.off_um`.
///
/// Raises:
///     UnitError, TextError: No lengths.
///     MissingError: No blocks.
///     OutOfRangeError: No five blocks come near enough; the message says how near.
///
/// Source: every choice of up to five is tried. That no more than five are wrung is common practice, no source.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> hw.gauge.block_stack("24.615 mm", ["1.005 mm", "1.11 mm", "1.5 mm", "20 mm", "21 mm"], within="0.5 um")
///     <BlockStack 21 mm + 1.5 mm + 1.11 mm + 1.005 mm, 0 µm off>
#[pyfunction]
#[pyo3(signature = (height, blocks, *, within))]
pub fn block_stack(height: Q<Length>, blocks: Lengths, within: Q<Length>) -> PyResult<BlockStack> {
    let (height, blocks) = (height.named("height")?, blocks.named("blocks")?);
    Ok(BlockStack(gauge::block_stack(height, &blocks, within.named("within")?)?))
}

/// What `tailstock` found.
#[pyclass(frozen, module = "hubwright._core")]
pub struct Tailstock(gauge::Tailstock);

found! {
    Tailstock(gauge::Tailstock) {
        /// The taper wanted.
        taper: Taper = |of| Taper(of.taper);
        /// Distance of the part's centres, in mm.
        between_centres: Out<Length> = |of| Out(of.between_centres);
        /// How far to move the tailstock across, in mm.
        offset: Out<Length> = |of| Out(of.offset);
        /// What the usual rule says, in mm: a little more.
        by_rule: Out<Length> = |of| Out(of.by_rule);
    }

    /// The steps, recomputed; the last one's result is `offset` in mm.
    fn working(&self) -> Working {
        Working(self.0.working())
    }

    fn __repr__(&self) -> String {
        format!("<Tailstock {}, by rule {}>", mm(self.0.offset), mm(self.0.by_rule))
    }
}

/// How far to move the tailstock across for a taper between centres, L sin α.
///
/// Args:
///     taper: The taper, as text or what `hubwright.joint.taper` gave.
///     between_centres: Distance of the part's centres, above zero.
///
/// Returns:
///     Tailstock: `.offset`, and `.by_rule`, L (D − d) / (2 l).
///
/// Raises:
///     UnitError, TextError, OutOfRangeError: No taper or no length.
///
/// Source: geometry; ball centres are taken for granted.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> hw.gauge.tailstock("1:20", between_centres="200 mm")
///     <Tailstock 4.9984 mm, by rule 5 mm>
#[pyfunction]
#[pyo3(signature = (taper, *, between_centres))]
pub fn tailstock(taper: TaperIn, between_centres: Q<Length>) -> PyResult<Tailstock> {
    let between_centres = between_centres.named("between_centres")?;
    Ok(Tailstock(gauge::tailstock(&taper.named("taper")?, between_centres)?))
}

/// What `run_out` found.
#[pyclass(frozen, module = "hubwright._core")]
pub struct RunOut(gauge::RunOut);

found! {
    RunOut(gauge::RunOut) {
        /// Run-out of the original, total reading, in mm.
        run_out: Out<Length> = |of| Out(of.run_out);
        /// Travel of the indicator, in mm.
        travel: Out<Length> = |of| Out(of.travel);
        /// Greatest error of the half angle with one end true, in degrees.
        one_end: Out<Angle> = |of| Out(of.one_end);
        /// The same with the ends out to opposite sides, in degrees: the worst there is.
        both_ends: Out<Angle> = |of| Out(of.both_ends);
        /// Whether it is no more than the 0.01 mm that is usually taken for good enough.
        is_usual: bool = |of| of.is_usual();
        /// Who says so: common practice, no source.
        source: Source = |of| Source(of.source);
    }

    fn __repr__(&self) -> String {
        format!("<RunOut up to {} at one end, {} at both>", shown(self.0.one_end), shown(self.0.both_ends))
    }
}

/// The angle error that run-out of an indicated original can cause.
///
/// Indicating again with the spindle turned by half a turn, and taking the mean, leaves none of it.
///
/// Args:
///     run_out: Run-out of the original where it is indicated, total reading, zero or above.
///     travel: Travel of the indicator, above zero.
///
/// Returns:
///     RunOut: `.one_end`, `.both_ends`, `.is_usual`.
///
/// Raises:
///     UnitError, TextError, OutOfRangeError: No lengths.
///
/// Source: geometry. That 0.01 mm is good enough to copy from is common practice, no source.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> hw.gauge.run_out("0.01 mm", travel="40 mm")
///     <RunOut up to 0.00716° at one end, 0.01432° at both>
#[pyfunction]
#[pyo3(signature = (run_out, *, travel))]
pub fn run_out(run_out: Q<Length>, travel: Q<Length>) -> PyResult<RunOut> {
    Ok(RunOut(gauge::run_out(run_out.named("run_out")?, travel.named("travel")?)?))
}

/// What `tool_height` found.
#[pyclass(frozen, module = "hubwright._core")]
pub struct ToolHeight(gauge::ToolHeightFound);

found! {
    ToolHeight(gauge::ToolHeightFound) {
        /// Half angle from end to end, in degrees.
        half_angle: Out<Angle> = |of| Out(of.half_angle);
        /// That less the half angle set, in degrees: zero or below.
        angle_error: Out<Angle> = |of| Out(of.angle_error);
        /// The error as a rise on one side over the length, in mm: zero or below.
        per_side: Out<Length> = |of| Out(of.per_side);
        /// How much smaller than the chord the flank is at the worst, on one side, in mm.
        bow: Out<Length> = |of| Out(of.bow);
        /// Where that is, from the small end, in mm.
        bow_at: Out<Length> = |of| Out(of.bow_at);
    }

    /// The steps, recomputed; the last one's result is `half_angle` in degrees.
    fn working(&self) -> Working {
        Working(self.0.working())
    }

    fn __repr__(&self) -> String {
        let of = &self.0;
        let um = |length: Length| figure(length.get::<micrometer>(), 2);
        format!("<ToolHeight {} off, {} µm per side, {} µm bow>", shown(of.angle_error), um(of.per_side), um(of.bow))
    }
}

/// What a tool above or below the axis does to a taper: no cone but a hyperboloid.
///
/// Args:
///     taper: What the slide is set to, as text or what `hubwright.joint.taper` gave.
///     small_diameter: Diameter that is cut at the small end.
///     length: Length of the taper.
///     off: How far off the axis the tool is, either way; less than the small end's radius.
///
/// Returns:
///     ToolHeight: `.angle_error`, `.per_side`, `.bow`: a nose gets a waist, a bore bulges inward.
///
/// Raises:
///     UnitError, TextError, OutOfRangeError: No taper, no lengths, or a tool too far off.
///
/// Source: geometry.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> hw.gauge.tool_height("1:5", small_diameter="20 mm", length="35 mm", off="0.5 mm")
///     <ToolHeight -0.00526° off, -3.24 µm per side, 0.24 µm bow>
#[pyfunction]
#[pyo3(signature = (taper, *, small_diameter, length, off))]
pub fn tool_height(
    taper: TaperIn,
    small_diameter: Q<Length>,
    length: Q<Length>,
    off: Q<Length>,
) -> PyResult<ToolHeight> {
    let (small, length) = (small_diameter.named("small_diameter")?, length.named("length")?);
    let tool = gauge::ToolHeight::new(taper.named("taper")?, small, length, off.named("off")?);
    Ok(ToolHeight(tool.solve()?))
}
