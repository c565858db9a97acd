//! Ways of keeping the nut from being turned back, side by side: part of `hubwright.wheel`.

use pyo3::prelude::*;

use super::holding::{Held, Pair, pair};
use super::quantity::{Out, Q};
use super::rings::found;
use super::words::{W, WordOut};
use crate::units::{Angle, Length, Pressure, Torque, Words};
use crate::wheel::holding as hold;
use crate::wheel::holding::{Answer, NutLock};

/// Shear and bearing stress.
type Stresses = (Option<Out<Pressure>>, Option<Out<Pressure>>);

/// One way of keeping the nut from being turned back, with the sizes of its piece.
///
/// Args:
///     way: `keyed washer`, `flats`, `pin`, `tongue`, `other hand of thread` or `nothing`.
///     diameter: Diameter at which it takes the torque; as all sizes, above zero, and not for the last two ways.
///     width: Width of lug, tongue or flat; diameter of a pin.
///     thickness: Thickness along the axis; of a pin, how far it reaches into the hub.
///     depth: Depth over which the side of lug or tongue bears.
///     count: How many share the torque.
///     clearance: Play in the slot.
///     reach: From the fixed flange's land, where it can hold: (from, to).
///
/// Raises:
///     UnitError, TextError: Not a quantity of its kind, or another word.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> hw.wheel.Piece("tongue", diameter="17 mm", width="4 mm", thickness="2 mm", depth="1.5 mm")
///     <Piece tongue>
#[pyclass(frozen, from_py_object, module = "hubwright._core")]
#[derive(Clone, Copy)]
pub struct Piece(hold::Piece);

#[pymethods]
impl Piece {
    #[new]
    #[pyo3(signature = (way, *, diameter = None, width = None, thickness = None, depth = None, count = 1, clearance = None, reach = None))]
    #[allow(clippy::too_many_arguments, reason = "one keyword a figure")]
    fn new(
        way: W<NutLock>,
        diameter: Option<Q<Length>>,
        width: Option<Q<Length>>,
        thickness: Option<Q<Length>>,
        depth: Option<Q<Length>>,
        count: u32,
        clearance: Option<Q<Length>>,
        reach: Option<(Q<Length>, Q<Length>)>,
    ) -> PyResult<Self> {
        let none = |size: Option<Q<Length>>, name: &str| {
            size.map_or(Ok(Length::default()), |size| size.named(name))
        };
        let mut piece = hold::Piece::new(
            way.named("way")?,
            none(diameter, "diameter")?,
            none(width, "width")?,
            none(thickness, "thickness")?,
            none(depth, "depth")?,
        )
        .with_count(count)
        .with_clearance(none(clearance, "clearance")?);
        if let Some((from, to)) = reach {
            piece = piece.with_reach([from.named("reach")?, to.named("reach")?]);
        }
        Ok(Self(piece))
    }

    /// Shear and greatest bearing stress under a torque, in MPa; None where there is none.
    ///
    /// Args:
    ///     torque: The torque.
    ///
    /// Raises:
    ///     OutOfRangeError: A size that is not above zero.
    fn stress(&self, torque: Q<Torque>) -> PyResult<Stresses> {
        let [shear, bearing] = self.0.stress(torque.named("torque")?)?;
        Ok((shear.map(Out), bearing.map(Out)))
    }

    fn __repr__(&self) -> String {
        format!("<Piece {}>", self.0.way.word())
    }
}

/// How one way of holding the nut fares.
#[pyclass(frozen, module = "hubwright._core")]
pub struct HeldBy(hold::Compared);

found! {
    HeldBy(hold::Compared) {
        /// The way.
        way: WordOut<NutLock> = |of| WordOut(of.piece.way);
        /// Torque that reaches the nut, in N m; None for a piece while the nut's mass is not given.
        at_nut: Option<Pair<Torque>> = |of| of.at_nut.map(pair);
        /// Whether start, stop and cutting torque turn the nut back.
        turns: WordOut<Answer> = |of| WordOut(of.turns);
        /// Torque that the piece carries, in N m.
        carries: Option<Out<Torque>> = |of| of.carries.map(Out);
        /// Shear stress in it, in MPa.
        shear: Option<Out<Pressure>> = |of| of.shear.map(Out);
        /// Greatest bearing stress on it, in MPa.
        bearing: Option<Out<Pressure>> = |of| of.bearing.map(Out);
        /// How far the flange turns before the piece takes hold.
        backlash: Option<Out<Angle>> = |of| of.backlash.map(Out);
        /// Whether it holds over all the stacks; None while its reach or they are not given.
        over_all_stacks: Option<bool> = |of| of.over_all_stacks;
        /// In a sentence or two.
        says: String = |of| of.says();
    }

    fn __repr__(&self) -> String {
        format!("<HeldBy {}, nut turned back: {}>", self.0.piece.way.word(), self.0.turns.word())
    }
}

/// Ways of holding the nut side by side: what reaches it, stress in the piece, play, and the stacks it holds over.
///
/// Args:
///     held: What `holding` found.
///     pieces: The ways, each a `Piece`.
///     stacks: Least and greatest stack that the hub has to hold, as (least, greatest).
///
/// Returns:
///     list[HeldBy]: One for each piece, in their order.
///
/// Raises:
///     OutOfRangeError: A size not above zero, or a range that ends before it begins.
///
/// Source: statics; `12 T / (n b² t)` for flats is a pressure that grows with the distance from their middle.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> found = hw.wheel.holding(
///     ...     thread="M16x2", thread_friction=0.14, face_friction=0.12, face_inside="17 mm", face_outside="25 mm",
///     ...     land_inside="60 mm", land_outside="76 mm", blotter_friction=0.15, cutting_torque="14 N m",
///     ...     preload="9 kN",
///     ... )
///     >>> tongue = hw.wheel.Piece("tongue", diameter="17 mm", width="4 mm", thickness="2 mm", depth="1.5 mm")
///     >>> hw.wheel.compare_holding(found, [tongue, hw.wheel.Piece("nothing")])
///     [<HeldBy tongue, nut turned back: no>, <HeldBy nothing, nut turned back: perhaps>]
#[pyfunction]
#[pyo3(signature = (held, pieces, *, stacks = None))]
pub fn compare_holding(
    held: &Held,
    pieces: Vec<Piece>,
    stacks: Option<(Q<Length>, Q<Length>)>,
) -> PyResult<Vec<HeldBy>> {
    let stacks = match stacks {
        Some((least, greatest)) => Some([least.named("stacks")?, greatest.named("stacks")?]),
        None => None,
    };
    let pieces: Vec<_> = pieces.into_iter().map(|piece| piece.0).collect();
    Ok(held.0.compare(&pieces, stacks)?.into_iter().map(HeldBy).collect())
}
