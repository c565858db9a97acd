//! Keyways, centring and key steel: part of `hubwright.joint`.

use pyo3::prelude::*;

#[cfg(feature = "stubs")]
use pyo3::{inspect::PyStaticExpr, type_hint_identifier};

use super::key::Pair;
use super::quantity::{Out, Plain, Q};
use super::rings::found;
use super::verdict::Source;
use super::wheel::Working;
use super::words::{W, WordOut};
use crate::error::{Error, cut};
use crate::joint::{self, Class, CutIn, MoveTool};
use crate::mounting::sort::show;
use crate::units::{Angle, Exact, Length, Volume, figure};

/// What `keyway` found.
#[pyclass(frozen, module = "hubwright._core")]
pub struct Keyway(joint::KeywayFound);

found! {
    Keyway(joint::KeywayFound) {
        /// Height of the circle over the mouth y, in mm.
        chord_height: Out<Length> = |of| Out(of.chord_height);
        /// Least height of the walls: t + y in a hub, t − y in a shaft, in mm.
        wall: Out<Length> = |of| Out(of.wall);
        /// From the bottom to the far side of bore or shaft at the given depth, in mm.
        across: Out<Length> = |of| Out(of.across);
        /// The same at the greatest depth; None without a tolerance.
        across_deepest: Option<Out<Length>> = |of| of.across_deepest.map(Out);
        /// Feed of a flat tool from first touch to the given depth, in mm.
        feed: Out<Length> = |of| Out(of.feed);
        /// Strokes to depth; None without an infeed.
        strokes: Option<u64> = |of| of.strokes;
        /// Feed at the last stroke, in mm; None without an infeed.
        last_infeed: Option<Out<Length>> = |of| of.last_infeed.map(Out);
        /// Minutes to depth; None without infeed and strokes a minute.
        minutes: Option<f64> = |of| of.minutes;
    }

    /// The steps, recomputed; the last one's result is `feed` in mm, or `strokes`.
    fn working(&self) -> Working {
        Working(self.0.working())
    }

    fn __repr__(&self) -> String {
        let strokes = self.0.strokes.map_or(String::new(), |strokes| format!(", {strokes} strokes"));
        format!("<Keyway across {}, feed {}{strokes}>", show(self.0.across), show(self.0.feed))
    }
}

/// A keyway: how deep it is by the ways it is measured, and the strokes it takes.
///
/// A flat tool touches a bore first with its two corners, so that it goes t + y from first touch; a shaft it
/// touches at the crown.
///
/// Args:
///     cut_in: `"hub"` or `"shaft"`.
///     diameter: Diameter of bore or shaft.
///     width: Width of the keyway, below the diameter.
///     depth: Depth at the middle, from where the circle would be: t2 of a hub, t1 of a shaft.
///     depth_tolerance: How much deeper it may be, zero or more.
///     infeed: Feed at each stroke; some 0.02 mm by hand on a shaper is common practice, no source.
///     strokes_per_minute: Strokes that the machine makes in a minute, a plain number above zero.
///
/// Returns:
///     Keyway: `.across`, `.wall`, `.feed`, `.strokes`, `.minutes`. Strokes that take out spring are not counted.
///
/// Raises:
///     UnitError, TextError: No lengths.
///     OutOfRangeError: A slot as wide as the bore, a keyway without walls, figures that are not above zero.
///
/// Source: geometry of the circle.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> found = hw.joint.keyway(
///     ...     cut_in="hub", diameter="22 mm", width="4 mm", depth="1.8 mm", depth_tolerance="0.1 mm",
///     ...     infeed="0.02 mm", strokes_per_minute=50,
///     ... )
///     >>> print(f"{found.feed:.3f~P}, {found.strokes} strokes, {found.minutes} min")
///     1.983 mm, 100 strokes, 2.0 min
///     >>> print(f"{found.across:.1f~P} to {found.across_deepest:.1f~P} across")
///     23.8 mm to 23.9 mm across
#[pyfunction]
#[pyo3(signature = (*, cut_in, diameter, width, depth, depth_tolerance = None, infeed = None, strokes_per_minute = None))]
pub fn keyway(
    cut_in: W<CutIn>,
    diameter: Q<Length>,
    width: Q<Length>,
    depth: Q<Length>,
    depth_tolerance: Option<Q<Length>>,
    infeed: Option<Q<Length>>,
    strokes_per_minute: Option<Plain>,
) -> PyResult<Keyway> {
    let mut keyway = joint::Keyway::new(
        cut_in.named("cut_in")?,
        diameter.named("diameter")?,
        width.named("width")?,
        depth.named("depth")?,
    );
    if let Some(tolerance) = depth_tolerance {
        keyway = keyway.with_depth_tolerance(tolerance.named("depth_tolerance")?);
    }
    if let Some(infeed) = infeed {
        keyway = keyway.with_infeed(infeed.named("infeed")?);
    }
    if let Some(strokes) = strokes_per_minute {
        keyway = keyway.with_strokes_per_minute(strokes.named("strokes_per_minute")?);
    }
    Ok(Keyway(keyway.solve()?))
}

/// Height of a circle over its chord, y = (d − √(d² − b²)) / 2.
///
/// Args:
///     diameter: Diameter of the circle, above zero.
///     width: Width of the slot, above zero and below the diameter.
///
/// Returns:
///     The height, in mm.
///
/// Raises:
///     UnitError, TextError, OutOfRangeError: As for `keyway`.
///
/// Source: geometry of the circle.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> print(f"{hw.joint.chord_height('20 mm', '6 mm'):.4f~P}")
///     0.4606 mm
#[pyfunction]
pub fn chord_height(diameter: Q<Length>, width: Q<Length>) -> PyResult<Out<Length>> {
    Ok(Out(joint::chord_height(diameter.named("diameter")?, width.named("width")?)?))
}

/// What `centre_slot` found.
#[pyclass(frozen, module = "hubwright._core")]
pub struct Centring(joint::Centring);

found! {
    Centring(joint::Centring) {
        /// How far the tool is off centre, and so how far to move it, in mm.
        offset: Out<Length> = |of| Out(of.offset);
        /// Which way to move the tool; the work goes the other way instead.
        move_tool: WordOut<MoveTool> = |of| WordOut(of.move_tool);
        /// How much higher one wall of the keyway would be than the other, if cut like this, in mm.
        wall_difference: Out<Length> = |of| Out(of.wall_difference);
        /// How much the keyway would lean against the key, in degrees.
        lean: Out<Angle> = |of| Out(of.lean);
        /// How deep the corner at the wide mark has cut since it touched, in mm.
        cut: Out<Length> = |of| Out(of.cut);
        /// Greatest offset that the move can leave, in mm; None where neither uncertainty is given.
        left_over: Option<Out<Length>> = |of| of.left_over.map(Out);
        /// How much the keyway then leans at most, in degrees.
        left_over_lean: Option<Out<Angle>> = |of| of.left_over_lean.map(Out);
        /// Feed from here to the depth given, in mm; None without one.
        feed_left: Option<Out<Length>> = |of| of.feed_left.map(Out);
    }

    /// The steps, recomputed; the last one's result is `lean` in degrees.
    fn working(&self) -> Working {
        Working(self.0.working())
    }

    fn __repr__(&self) -> String {
        match self.0.move_tool {
            MoveTool::Stay => "<Centring stay>".into(),
            way => format!("<Centring move the tool {way} by {}>", show(self.0.offset)),
        }
    }
}

/// Where a slotting tool stands in a bore, by the two marks that its corners leave.
///
/// Each corner cuts a flat from its side to where the bore passes the edge: the tool is off centre by half of
/// the difference of the marks, toward the wide one, and has to go toward the narrow one.
///
/// Args:
///     bore: Diameter of the bore.
///     tool_width: Width of the tool, below the bore.
///     left_mark: Width of the mark on the left, above zero.
///     right_mark: Width of the mark on the right, above zero.
///     measured_within: How well one mark is measured, either way; a smaller offset says `stay`.
///     repeatability: How far off the work can lie when the fixture takes it again, either way.
///     depth: Depth of the keyway at the middle, for the feed that is left.
///
/// Returns:
///     Centring: `.offset`, `.move_tool`, `.lean`, `.left_over`, `.feed_left`.
///
/// Raises:
///     UnitError, TextError: No lengths.
///     OutOfRangeError: A mark of no width, marks that meet, a tool as wide as the bore.
///
/// Source: geometry of the circle; that equal marks mean a centred tool is common practice, no source.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> found = hw.joint.centre_slot(
///     ...     bore="22 mm", tool_width="4 mm", left_mark="0.60 mm", right_mark="0.36 mm",
///     ...     measured_within="0.02 mm", repeatability="0.01 mm", depth="1.8 mm",
///     ... )
///     >>> found
///     <Centring move the tool right by 0.12 mm>
///     >>> print(f"{found.left_over:.2f~P} at most is left, {found.feed_left:.3f~P} to go")
///     0.03 mm at most is left, 1.906 mm to go
#[pyfunction]
#[pyo3(signature = (*, bore, tool_width, left_mark, right_mark, measured_within = None, repeatability = None, depth = None))]
pub fn centre_slot(
    bore: Q<Length>,
    tool_width: Q<Length>,
    left_mark: Q<Length>,
    right_mark: Q<Length>,
    measured_within: Option<Q<Length>>,
    repeatability: Option<Q<Length>>,
    depth: Option<Q<Length>>,
) -> PyResult<Centring> {
    let mut marks = joint::SlotMarks::new(
        bore.named("bore")?,
        tool_width.named("tool_width")?,
        left_mark.named("left_mark")?,
        right_mark.named("right_mark")?,
    );
    if let Some(within) = measured_within {
        marks = marks.with_measured_within(within.named("measured_within")?);
    }
    if let Some(repeatability) = repeatability {
        marks = marks.with_repeatability(repeatability.named("repeatability")?);
    }
    if let Some(depth) = depth {
        marks = marks.with_depth(depth.named("depth")?);
    }
    Ok(Centring(marks.solve()?))
}

/// The fit of a key: `push` or a class for shafts.
pub(super) struct KeyClass(Result<(Class, crate::source::Source), Error>);

impl<'py> FromPyObject<'_, 'py> for KeyClass {
    type Error = PyErr;
    #[cfg(feature = "stubs")]
    const INPUT_TYPE: PyStaticExpr = type_hint_identifier!("builtins", "str");

    fn extract(object: Borrowed<'_, 'py, PyAny>) -> PyResult<Self> {
        let text = object.extract::<String>();
        let text = text.or_else(|_| object.repr().map(|repr| cut(&repr.to_string())))?;
        Ok(Self(joint::key_class(&text)))
    }
}

/// What `key_stock` found.
#[pyclass(frozen, module = "hubwright._core")]
pub struct KeyStock(joint::KeyStockFound, crate::source::Source);

found! {
    KeyStock(joint::KeyStockFound) {
        /// Class of the width, such as `h6`.
        class_: String = |of| of.width.class.to_string();
        /// Least and greatest width, in mm.
        width: Pair = |of| (Out(of.width.smallest), Out(of.width.largest));
        /// Least clearance in the slot in µm, both sides together; negative is interference.
        least_clearance_um: f64 = |of| of.least_clearance_um();
        /// Most clearance in the slot in µm, both sides together.
        most_clearance_um: f64 = |of| of.most_clearance_um();
        /// Height to cut it to, in mm.
        height: Out<Length> = |of| Out(of.height);
        /// Length to cut it to, in mm.
        length: Out<Length> = |of| Out(of.length);
        /// Filler that the channels of the chamfers hold, in mm³.
        channels: Out<Volume> = |of| Out(of.channels);
        /// Whether the chamfers clear the corners of the slot; None without their radius.
        clears_corners: Option<bool> = |of| of.clears_corners;
    }

    /// Who says that the class makes this fit.
    #[getter]
    fn source(&self) -> Source {
        Source(self.1)
    }

    /// The steps, recomputed; the last one's result is `length` in mm.
    fn working(&self) -> Working {
        Working(self.0.working())
    }

    fn __repr__(&self) -> String {
        let mm = |length: Length| figure(length.exact() / 1e6, 4);
        let (least, most) = (mm(self.0.width.smallest), mm(self.0.width.largest));
        let (height, length) = (show(self.0.height), show(self.0.length));
        format!("<KeyStock {least} to {most} mm wide, {height} high, {length} long>")
    }
}

/// Key steel to make for a slot that is there already.
///
/// Args:
///     slot_width: Width of the slot, as measured.
///     fit: `"push"` (no shake, for a key to be brazed; taken for h6) or a class for shafts, like `"h9"`.
///     height: Height of the finished key.
///     length: Length of the finished key.
///     proud: Height left on, to come off when the hub is finished, zero or more.
///     long: Length left on, likewise.
///     chamfer: Chamfer of both bottom edges, which makes channels for the filler.
///     corner_radius: Radius in the corners of the slot.
///     hub_length: Length of the finished hub, which the finished key may not pass.
///
/// Returns:
///     KeyStock: `.width` (least, greatest), `.height`, `.length`, `.channels`, `.clears_corners`.
///
/// Raises:
///     UnitError, TextError: No lengths, or no class for shafts.
///     OutOfRangeError: A key longer than its hub, a chamfer that leaves no bottom, figures not above zero.
///
/// Source: ISO 286-1 for the limits; that a key to be brazed is a push with no shake is common practice, no source.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> hw.joint.key_stock(
///     ...     slot_width="4.02 mm", fit="push", height="4 mm", length="18 mm", proud="0.3 mm", long="1 mm",
///     ... )
///     <KeyStock 4.012 to 4.02 mm wide, 4.3 mm high, 19 mm long>
#[pyfunction]
#[pyo3(signature = (*, slot_width, fit, height, length, proud = None, long = None, chamfer = None, corner_radius = None, hub_length = None))]
#[allow(clippy::too_many_arguments, reason = "one keyword a figure")]
pub fn key_stock(
    slot_width: Q<Length>,
    fit: KeyClass,
    height: Q<Length>,
    length: Q<Length>,
    proud: Option<Q<Length>>,
    long: Option<Q<Length>>,
    chamfer: Option<Q<Length>>,
    corner_radius: Option<Q<Length>>,
    hub_length: Option<Q<Length>>,
) -> PyResult<KeyStock> {
    let slot = slot_width.named("slot_width")?;
    let (class, source) = fit.0?;
    let (height, length) = (height.named("height")?, length.named("length")?);
    let mut stock = joint::KeyStock::new(slot, class, height, length);
    if let Some(proud) = proud {
        stock = stock.with_proud(proud.named("proud")?);
    }
    if let Some(long) = long {
        stock = stock.with_long(long.named("long")?);
    }
    if let Some(chamfer) = chamfer {
        stock = stock.with_chamfer(chamfer.named("chamfer")?);
    }
    if let Some(radius) = corner_radius {
        stock = stock.with_corner_radius(radius.named("corner_radius")?);
    }
    if let Some(hub) = hub_length {
        stock = stock.with_hub_length(hub.named("hub_length")?);
    }
    Ok(KeyStock(stock.solve()?, source))
}
