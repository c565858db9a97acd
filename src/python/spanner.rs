//! Spanners, circles of holes and jacking screws: part of `hubwright.joint`.

use pyo3::prelude::*;
use pyo3::types::PyBool;

#[cfg(feature = "stubs")]
use pyo3::{inspect::PyStaticExpr, type_hint_identifier};

use super::joint::mm;
use super::nut::{Pair, Span, missing, pair};
use super::quantity::{Out, Q};
use super::rings::found;
use super::thread::ThreadIn;
use crate::error::{Error, ErrorKind, cut};
use crate::joint::{self, DIVIDING_CIRCLES};
use crate::mounting::sort::show;
use crate::units::{Angle, Force, Length, Pressure, Torque, degree, figure, newton};

/// A whole number of things.
pub(super) struct Count(Result<u32, Error>);

impl Count {
    pub(super) fn named(self, argument: &str) -> Result<u32, Error> {
        self.0.map_err(|error| error.named(argument))
    }
}

impl<'py> FromPyObject<'_, 'py> for Count {
    type Error = PyErr;
    #[cfg(feature = "stubs")]
    const INPUT_TYPE: PyStaticExpr = type_hint_identifier!("builtins", "int");

    fn extract(object: Borrowed<'_, 'py, PyAny>) -> PyResult<Self> {
        let whole = object.extract::<u32>().ok().filter(|_| !object.is_instance_of::<PyBool>());
        Ok(Self(whole.ok_or_else(|| {
            let given = object.repr().map_or_else(|_| "an object".into(), |r| cut(&r.to_string()));
            let why = "it is no whole number from zero up";
            let (argument, hint) = ("value".into(), "give a whole number, like 6".into());
            ErrorKind::WrongUnit { argument, given, kind: "count", why, hint }.into()
        })))
    }
}

/// Torque of a hand on a spanner, T = F L.
///
/// Args:
///     force: Force of the hand, square to the spanner, above zero.
///     length: From the nut's axis to the hand, above zero.
///
/// Returns:
///     Torque, in N m.
///
/// Raises:
///     UnitError, TextError, OutOfRangeError: Not quantities of their kind, or not above zero.
///
/// Source: statics.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> print(f"{hw.joint.spanner_torque('200 N', '180 mm').m_as('N*m'):.0f} N m")
///     36 N m
#[pyfunction]
pub fn spanner_torque(force: Q<Force>, length: Q<Length>) -> PyResult<Out<Torque>> {
    Ok(Out(joint::spanner_torque(force.named("force")?, length.named("length")?)?))
}

/// Force of the hand that a torque takes, F = T / L.
///
/// Args:
///     torque: The torque, above zero.
///     length: From the nut's axis to the hand, above zero.
///
/// Returns:
///     Force, in N.
///
/// Raises:
///     UnitError, TextError, OutOfRangeError: Not quantities of their kind, or not above zero.
///
/// Source: statics.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> print(f"{hw.joint.hand_force('36 N m', '180 mm'):.0f~P}")
///     200 N
#[pyfunction]
pub fn hand_force(torque: Q<Torque>, length: Q<Length>) -> PyResult<Out<Force>> {
    Ok(Out(joint::hand_force(torque.named("torque")?, length.named("length")?)?))
}

/// Pins of a spanner in their holes: what `pin_spanner` found.
#[pyclass(frozen, module = "hubwright._core")]
pub struct PinSpanner(joint::PinSpannerFound);

found! {
    PinSpanner(joint::PinSpannerFound) {
        /// Force on each pin, in N.
        pin_load: Out<Force> = |of| Out(of.pin_load);
        /// Shear stress of a pin, in MPa.
        shear: Out<Pressure> = |of| Out(of.shear);
        /// Pressure between pin and hole, in MPa.
        bearing: Out<Pressure> = |of| Out(of.bearing);
        /// Metal between hole and the outside of the nut, in mm; below zero where the hole breaks out.
        outer_edge: Option<Out<Length>> = |of| of.outer_edge.map(Out);
        /// Metal between hole and the inside of the nut, in mm.
        inner_edge: Option<Out<Length>> = |of| of.inner_edge.map(Out);
        /// Whether a hole breaks out of the nut; None without the nut.
        breaks_out: Option<bool> = |of| of.breaks_out;
    }

    fn __repr__(&self) -> String {
        let of = &self.0;
        let out = if of.breaks_out == Some(true) { ", A HOLE BREAKS OUT" } else { "" };
        let load = figure(of.pin_load.get::<newton>(), 1);
        format!("<PinSpanner {load} N a pin, shear {}, bearing {}{out}>", show(of.shear), show(of.bearing))
    }
}

/// Load of a pin spanner's pins, and what metal their holes leave.
///
/// Each pin carries T / (n R); shear is that over π p² / 4, bearing over p t. Bending of a pin between spanner
/// and nut is not in it: keep the spanner on the face.
///
/// Args:
///     torque: Torque, above zero.
///     pins: Pins that carry, 1 to 12: 1 of a hook spanner, 2 of a face spanner.
///     circle: Diameter of the circle of holes; twice the reach of a hook spanner's pin.
///     pin: Diameter of a pin, below the circle.
///     depth: How deep a pin stands in its hole, above zero.
///     hole: Diameter of the holes, no smaller than the pin, with
///     nut_inside: inside diameter of the nut, and
///     nut_outside: its outside diameter.
///
/// Returns:
///     PinSpanner: `.pin_load`, `.shear`, `.bearing`, `.outer_edge`, `.inner_edge`, `.breaks_out`.
///
/// Raises:
///     MissingError: One or two of hole, inside and outside.
///     UnitError, TextError, OutOfRangeError: Not quantities of their kind, or outside the ranges above.
///
/// Source: statics.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> hw.joint.pin_spanner(
///     ...     torque="60 N m", pins=2, circle="30 mm", pin="4 mm", depth="5 mm",
///     ...     hole="4.2 mm", nut_inside="20 mm", nut_outside="40 mm",
///     ... )
///     <PinSpanner 2000 N a pin, shear 159.1549 MPa, bearing 100 MPa>
#[pyfunction]
#[pyo3(signature = (*, torque, pins, circle, pin, depth, hole = None, nut_inside = None, nut_outside = None))]
#[allow(clippy::too_many_arguments, reason = "one keyword a figure")]
pub fn pin_spanner(
    torque: Q<Torque>,
    pins: Count,
    circle: Q<Length>,
    pin: Q<Length>,
    depth: Q<Length>,
    hole: Option<Q<Length>>,
    nut_inside: Option<Q<Length>>,
    nut_outside: Option<Q<Length>>,
) -> PyResult<PinSpanner> {
    let mut spanner = joint::PinSpanner::new(
        torque.named("torque")?,
        pins.named("pins")?,
        circle.named("circle")?,
        pin.named("pin")?,
        depth.named("depth")?,
    );
    match (hole, nut_inside, nut_outside) {
        (Some(hole), Some(inside), Some(outside)) => {
            let (inside, outside) = (inside.named("nut_inside")?, outside.named("nut_outside")?);
            spanner = spanner.with_nut(hole.named("hole")?, inside, outside);
        }
        (None, None, None) => {}
        (hole, inside, _) => {
            let argument = match (&hole, &inside) {
                (None, _) => "hole",
                (_, None) => "nut_inside",
                _ => "nut_outside",
            };
            let why = "the metal left takes hole, inside and outside of the nut";
            return Err(missing(argument, why, "give all three, or none"));
        }
    }
    let found = spanner.solve().map_err(|error| match error.argument() {
        Some("inside") => error.named("nut_inside"),
        Some("outside") => error.named("nut_outside"),
        _ => error,
    });
    Ok(PinSpanner(found?))
}

/// One hole of a circle.
#[pyclass(frozen, module = "hubwright._core")]
pub struct Hole(joint::Hole);

found! {
    Hole(joint::Hole) {
        /// Angle from the x axis, anticlockwise, in degrees.
        angle: Out<Angle> = |of| Out(of.angle);
        /// Place along x, from the centre, in mm.
        x: Out<Length> = |of| Out(of.x);
        /// Place along y, in mm.
        y: Out<Length> = |of| Out(of.y);
    }

    fn __repr__(&self) -> String {
        let (x, y) = (mm(self.0.x), mm(self.0.y));
        format!("<Hole {}° {x}, {y}>", figure(self.0.angle.get::<degree>(), 4))
    }
}

/// Holes evenly on a circle.
#[pyclass(frozen, module = "hubwright._core")]
pub struct HoleCircle(joint::HoleCircle);

found! {
    HoleCircle(joint::HoleCircle) {
        /// Diameter of the circle, in mm.
        diameter: Out<Length> = |of| Out(of.diameter);
        /// Angle between neighbours, in degrees.
        spacing: Out<Angle> = |of| Out(of.spacing);
        /// Straight distance between the centres of neighbours, in mm.
        chord: Out<Length> = |of| Out(of.chord);
        /// The holes in order.
        holes: Vec<Hole> = |of| of.holes.iter().copied().map(Hole).collect();
    }

    fn __repr__(&self) -> String {
        let chord = mm(self.0.chord);
        let diameter = mm(self.0.diameter);
        format!("<HoleCircle {} holes on {diameter}, {chord} apart>", self.0.holes.len())
    }
}

/// Coordinates of holes that lie evenly on a circle.
///
/// Args:
///     holes: How many, 1 to 1000.
///     diameter: Diameter of the circle, above zero.
///     start: Angle of the first hole from the x axis, anticlockwise; zero unless given.
///
/// Returns:
///     HoleCircle: `.holes`, each with `.angle`, `.x` and `.y`; `.chord` and `.spacing`.
///
/// Raises:
///     UnitError, TextError, OutOfRangeError: Not quantities of their kind, or outside the ranges above.
///
/// Source: geometry.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> six = hw.joint.hole_circle(6, "60 mm")
///     >>> six
///     <HoleCircle 6 holes on 60 mm, 30 mm apart>
///     >>> six.holes[1]
///     <Hole 60° 15 mm, 25.980762 mm>
#[pyfunction]
#[pyo3(signature = (holes, diameter, start = None))]
pub fn hole_circle(
    holes: Count,
    diameter: Q<Length>,
    start: Option<Q<Angle>>,
) -> PyResult<HoleCircle> {
    let start = start.map(|start| start.named("start")).transpose()?.unwrap_or_default();
    Ok(HoleCircle(joint::hole_circle(holes.named("holes")?, diameter.named("diameter")?, start)?))
}

/// One way to set a dividing head.
#[pyclass(frozen, module = "hubwright._core")]
pub struct Division(joint::Division);

found! {
    Division(joint::Division) {
        /// Whole turns of the crank.
        turns: u32 = |of| of.turns;
        /// Holes to go on besides.
        holes: u32 = |of| of.holes;
        /// In this circle of holes; zero where whole turns do.
        circle: u32 = |of| of.circle;
    }

    fn __repr__(&self) -> String {
        let joint::Division { turns, holes, circle, .. } = self.0;
        if circle == 0 {
            format!("<Division {turns} turns>")
        } else {
            format!("<Division {turns} turns and {holes} holes in the circle of {circle}>")
        }
    }
}

/// Turns of a dividing head's crank from one division to the next.
///
/// Args:
///     divisions: How many, 1 to 1000.
///     ratio: Turns of the crank for one of the work, 1 to 1000; 40 on most heads.
///     circles: Holes of the plates' circles; without them 15 to 49, as on three common plates, from memory.
///
/// Returns:
///     Every circle that divides exactly; none when none does.
///
/// Raises:
///     UnitError, OutOfRangeError: Not whole numbers, or outside the ranges above.
///
/// Source: arithmetic.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> hw.joint.dividing(6, 40)[0]
///     <Division 6 turns and 10 holes in the circle of 15>
#[pyfunction]
#[pyo3(signature = (divisions, ratio, circles = None))]
pub fn dividing(
    divisions: Count,
    ratio: Count,
    circles: Option<Vec<Count>>,
) -> PyResult<Vec<Division>> {
    let circles = match circles {
        None => DIVIDING_CIRCLES.to_vec(),
        Some(all) => all.into_iter().map(|one| one.named("circles")).collect::<Result<_, _>>()?,
    };
    let ways = joint::dividing(divisions.named("divisions")?, ratio.named("ratio")?, &circles)?;
    Ok(ways.into_iter().map(Division).collect())
}

/// A jacking screw at work: what `jacking_screw` found.
#[pyclass(frozen, module = "hubwright._core")]
pub struct Jacked(joint::Jacked);

found! {
    Jacked(joint::Jacked) {
        /// Force that it pushes with, least and greatest, in N.
        force: Pair<Force> = |of| pair(of.force);
        /// Least clearance, on diameter, of the draw screw in the jacking thread, in mm; below zero where it
        /// does not pass.
        clearance: Option<Out<Length>> = |of| of.clearance.map(Out);
        /// Whether the draw screw passes; None without one.
        clears: Option<bool> = |of| of.clears;
    }

    fn __repr__(&self) -> String {
        let kn = |force: Force| figure(force.get::<newton>() / 1e3, 2);
        let passes = if self.0.clears == Some(false) { ", THE DRAW SCREW DOES NOT PASS" } else { "" };
        format!("<Jacked {} to {} kN{passes}>", kn(self.0.force.least), kn(self.0.force.greatest))
    }
}

/// Force of a jacking screw that pushes a hub off its taper, and whether the draw screw passes its thread.
///
/// Args:
///     thread: Jacking thread in the hub: a thread or its designation.
///     torque: Torque on the screw, above zero.
///     thread_friction: Friction in the thread, above 0 and up to 1: a number, or (least, greatest).
///     tip_friction: Friction under the tip, likewise.
///     tip: Diameter of the flat tip, above zero.
///     draw_screw: The screw that draws the hub on, through the jacking thread.
///
/// Returns:
///     Jacked: `.force`, `.clearance` and `.clears`.
///
/// Raises:
///     UnitError, TextError, OutOfRangeError: Not quantities of their kind, or outside the ranges above.
///
/// Source: Shigley, power screws.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> hw.joint.jacking_screw(
///     ...     thread="M20x1.5", torque="50 N m", thread_friction=(0.12, 0.18), tip_friction=(0.12, 0.18),
///     ...     tip="12 mm", draw_screw="M12",
///     ... )
///     <Jacked 16.96 to 26.01 kN>
#[pyfunction]
#[pyo3(signature = (*, thread, torque, thread_friction, tip_friction, tip, draw_screw = None))]
pub fn jacking_screw(
    thread: ThreadIn,
    torque: Q<Torque>,
    thread_friction: Span,
    tip_friction: Span,
    tip: Q<Length>,
    draw_screw: Option<ThreadIn>,
) -> PyResult<Jacked> {
    let mut screw = joint::JackingScrew::new(
        thread.named("thread")?,
        thread_friction.named("thread_friction")?,
        tip_friction.named("tip_friction")?,
        tip.named("tip")?,
    );
    if let Some(draw) = draw_screw {
        screw = screw.with_draw_screw(draw.named("draw_screw")?);
    }
    Ok(Jacked(screw.push(torque.named("torque")?)?))
}
