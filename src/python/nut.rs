//! Nuts, spanners and jacking screws: part of `hubwright.joint`.

use pyo3::prelude::*;
use pyo3::types::PyBool;

#[cfg(feature = "stubs")]
use pyo3::{inspect::PyStaticExpr, type_hint_identifier};

use super::joint::Text;
use super::quantity::{Out, Plain, Q, plain};
use super::thread::{Thread, ThreadIn, got};
use super::wheel::Working;
use super::words::W;
use crate::error::{Error, ErrorKind, cut};
use crate::joint::{self, Between, DIVIDING_CIRCLES, Rotation, ThreadClass};
use crate::mounting::sort::show;
use crate::units::{
    Angle, Area, Force, Length, Pressure, Torque, degree, figure, newton, newton_meter,
};

/// Least and greatest of something.
type Pair<K> = (Out<K>, Out<K>);

fn pair<K>(of: Between<K>) -> Pair<K> {
    (Out(of.least), Out(of.greatest))
}

/// One plain number, or the least and the greatest of a range.
pub(super) struct Span(Result<[f64; 2], Error>);

impl Span {
    fn named(self, argument: &str) -> Result<[f64; 2], Error> {
        self.0.map_err(|error| error.named(argument))
    }
}

impl<'py> FromPyObject<'_, 'py> for Span {
    type Error = PyErr;
    #[cfg(feature = "stubs")]
    const INPUT_TYPE: PyStaticExpr = type_hint_identifier!("hubwright._typing", "SpanLike");

    fn extract(object: Borrowed<'_, 'py, PyAny>) -> PyResult<Self> {
        if let Ok((least, greatest)) = object.extract::<(Bound<'py, PyAny>, Bound<'py, PyAny>)>() {
            let both = plain(&least).and_then(|least| Ok([least, plain(&greatest)?]));
            return Ok(Self(both));
        }
        Ok(Self(plain(&object).map(|one| [one, one])))
    }
}

/// A whole number of things.
pub(super) struct Count(Result<u32, Error>);

impl Count {
    fn named(self, argument: &str) -> Result<u32, Error> {
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

/// A tightened nut: what `nut` found. Ranges are pairs, least and greatest.
#[pyclass(frozen, module = "hubwright._core")]
pub struct Tightened(joint::Tightened);

got! {
    Tightened(joint::Tightened) {
        /// Its thread.
        thread: Thread = |of| Thread(of.nut.thread);
        /// Tightening torque, in N m.
        torque: Pair<Torque> = |of| pair(of.torque);
        /// Force between nut and what it clamps, in N.
        preload: Pair<Force> = |of| pair(of.preload);
        /// Torque to loosen it, in N m.
        loosening_torque: Pair<Torque> = |of| pair(of.loosening_torque);
        /// The part of it that the thread alone holds; below zero where the thread runs back by itself.
        thread_release: Pair<Torque> = |of| pair(of.thread_release);
        /// Whether the thread holds itself at its least friction, without the face.
        holds_itself: bool = |of| of.holds_itself;
        /// Area of the screw that carries, less bore and slot, in mm².
        net_area: Out<Area> = |of| Out(of.net_area);
        /// Tension in that area, in MPa.
        tension: Pair<Pressure> = |of| pair(of.tension);
        /// Greatest of tension and torsion together, in MPa.
        stress: Out<Pressure> = |of| Out(of.stress);
        /// `stress` over the proof stress of the screw; None without one.
        proof_share: Option<f64> = |of| of.proof_share;
        /// Greatest shear stress of the screw's threads, in MPa; None without an engagement.
        screw_shear: Option<Out<Pressure>> = |of| of.screw_shear.map(Out);
        /// Greatest shear stress of the nut's threads, in MPa.
        nut_shear: Option<Out<Pressure>> = |of| of.nut_shear.map(Out);
        /// Whether screw or threads are stressed beyond `utilisation` of proof; None while that can't be told.
        overloaded: Option<bool> = |of| of.overloaded;
        /// The torque at which, whatever the friction, the screw stays within `utilisation` of its proof stress.
        greatest_torque: Option<Out<Torque>> = |of| of.greatest_torque.map(Out);
        /// Preload at that torque, in N.
        greatest_preload: Option<Pair<Force>> = |of| of.greatest_preload.map(pair);
    }

    /// Which way it comes off, and whether running or braking takes it there.
    ///
    /// Args:
    ///     rotation: Which way the spindle runs, seen from the nut: `clockwise`, `anticlockwise` or `both`.
    ///
    /// Returns:
    ///     A sentence or two.
    ///
    /// Raises:
    ///     TextError: Another word.
    #[pyo3(signature = (rotation = None))]
    fn loosens(&self, rotation: Option<W<Rotation>>) -> PyResult<String> {
        let rotation = rotation.map(|rotation| rotation.named("rotation")).transpose()?;
        Ok(joint::loosening(self.0.nut.thread.left_hand, rotation))
    }

    /// The steps at the least friction; the last one's result is the greatest preload in N.
    fn working(&self) -> Working {
        Working(self.0.working())
    }

    fn __repr__(&self) -> String {
        let of = &self.0;
        let range = |least: f64, greatest: f64, unit| {
            let (least, greatest) = (figure(least, 2), figure(greatest, 2));
            if least == greatest { format!("{least} {unit}") } else { format!("{least} to {greatest} {unit}") }
        };
        let nm = |torque: Torque| torque.get::<newton_meter>();
        let kn = |force: Force| force.get::<newton>() / 1e3;
        let torque = range(nm(of.torque.least), nm(of.torque.greatest), "N m");
        let preload = range(kn(of.preload.least), kn(of.preload.greatest), "kN");
        let over = if of.overloaded == Some(true) { ", OVERLOADED" } else { "" };
        format!("<Tightened {} {torque}, {preload}{over}>", of.nut.thread)
    }
}

/// Something that is needed was left out.
fn missing(argument: &str, why: &str, hint: &str) -> PyErr {
    let (argument, why, hint) = (argument.into(), why.into(), hint.into());
    Error::from(ErrorKind::Missing { argument, why, hint }).into()
}

/// A class of threads from its text.
fn class(text: Text, argument: &str) -> Result<ThreadClass, Error> {
    text.named(argument, "class of threads", "6H")?.parse().map_err(|e: Error| e.named(argument))
}

/// A nut tightened by a torque, or to a preload: what each does, and what the thread carries.
///
/// T = F [d2/2 tan(φ + ρ') + μ r] tightens and F [d2/2 tan(ρ' - φ) + μ r] loosens, with r the mean radius of
/// the face that turns. Frictions are ranges, and so is what follows. The screw carries tension and torsion
/// together on its stress area less bore and key slot; the peak of stress at a slot and the bending it brings
/// are not in it.
///
/// Args:
///     thread: A thread or its designation, like `"M20x1.5-LH"`.
///     thread_friction: Friction in the thread, above 0 and up to 1: a number, or (least, greatest).
///     face_friction: Friction under the face that turns, likewise.
///     face_inside: Inside diameter of that face.
///     face_outside: Outside diameter of that face.
///     torque: Tightening torque, above zero; or instead
///     preload: Force to clamp with, above zero.
///     bore: Bore through the screw.
///     slot_width: Width of a key slot through the thread, with
///     slot_depth: its depth from the crests.
///     proof_stress: Proof stress of the screw, with
///     utilisation: the share of it that may be used, above 0 and up to 1; VDI 2230 tabulates 0.9.
///     nut_proof_stress: Proof stress of the nut.
///     engagement: Length over which screw and nut engage, with
///     screw_class: class of the screw, such as `"6g"`, and
///     nut_class: class of the nut, such as `"6H"`.
///
/// Returns:
///     Tightened: `.preload`, `.torque`, `.loosening_torque`, `.stress`, `.overloaded`, `.greatest_torque` and more.
///
/// Raises:
///     MissingError: Neither torque nor preload, or one of several arguments that belong together.
///     UnitError, TextError: Not a quantity of its kind, or torque and preload both.
///     OutOfRangeError: Friction, length, torque or stress not above zero, or no room for bore or slot.
///
/// Source: Shigley, power screws; VDI 2230 for stresses; shear areas of FED-STD-H28, from memory.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> found = hw.joint.nut(
///     ...     thread="M20x1.5", thread_friction=(0.12, 0.16), face_friction=(0.12, 0.16),
///     ...     face_inside="21 mm", face_outside="30 mm", torque="60 N m",
///     ... )
///     >>> found
///     <Tightened M20x1.5 60 N m, 14.83 to 19.4 kN>
///     >>> least, greatest = found.loosening_torque
///     >>> print(f"{least.m_as('N*m'):.1f} to {greatest.m_as('N*m'):.1f} N m")
///     38.6 to 68.9 N m
///     >>> found.loosens("anticlockwise")
///     'Seen from the nut, a right-hand thread comes off anticlockwise. The spindle runs anticlockwise: drag and run-up tighten it; braking reverses the torque and tends to loosen it.'
#[pyfunction]
#[pyo3(signature = (*, thread, thread_friction, face_friction, face_inside, face_outside, torque = None, preload = None, bore = None, slot_width = None, slot_depth = None, proof_stress = None, utilisation = None, nut_proof_stress = None, engagement = None, screw_class = None, nut_class = None))]
#[allow(clippy::too_many_arguments, reason = "one keyword a figure")]
pub fn nut(
    thread: ThreadIn,
    thread_friction: Span,
    face_friction: Span,
    face_inside: Q<Length>,
    face_outside: Q<Length>,
    torque: Option<Q<Torque>>,
    preload: Option<Q<Force>>,
    bore: Option<Q<Length>>,
    slot_width: Option<Q<Length>>,
    slot_depth: Option<Q<Length>>,
    proof_stress: Option<Q<Pressure>>,
    utilisation: Option<Plain>,
    nut_proof_stress: Option<Q<Pressure>>,
    engagement: Option<Q<Length>>,
    screw_class: Option<Text>,
    nut_class: Option<Text>,
) -> PyResult<Tightened> {
    let mut nut = joint::Nut::new(
        thread.named("thread")?,
        thread_friction.named("thread_friction")?,
        face_friction.named("face_friction")?,
        face_inside.named("face_inside")?,
        face_outside.named("face_outside")?,
    )?;
    if let Some(bore) = bore {
        nut = nut.with_bore(bore.named("bore")?)?;
    }
    match (slot_width, slot_depth) {
        (Some(width), Some(depth)) => {
            nut = nut.with_slot(width.named("slot_width")?, depth.named("slot_depth")?)?;
        }
        (None, None) => {}
        (Some(_), None) => {
            return Err(missing("slot_depth", "a slot has a depth too", "give both, or neither"));
        }
        (None, Some(_)) => {
            return Err(missing("slot_width", "a slot has a width too", "give both, or neither"));
        }
    }
    match (proof_stress, utilisation) {
        (Some(stress), Some(share)) => {
            nut = nut.with_proof(stress.named("proof_stress")?, share.named("utilisation")?)?;
        }
        (None, None) => {}
        (Some(_), None) => {
            let why = "it says how much of the proof stress may be used";
            return Err(missing(
                "utilisation",
                why,
                "give a share, like 0.9, which VDI 2230 tabulates",
            ));
        }
        (None, Some(_)) => {
            let why = "`utilisation` is a share of it";
            return Err(missing(
                "proof_stress",
                why,
                "give the screw's proof stress, like \"580 MPa\"",
            ));
        }
    }
    if let Some(stress) = nut_proof_stress {
        nut = nut.with_nut_proof(stress.named("nut_proof_stress")?)?;
    }
    match (engagement, screw_class, nut_class) {
        (Some(length), Some(screw), Some(internal)) => {
            let (screw, internal) = (class(screw, "screw_class")?, class(internal, "nut_class")?);
            nut = nut.with_engagement(length.named("engagement")?, screw, internal)?;
        }
        (None, None, None) => {}
        (engagement, screw, _) => {
            let argument = match (&engagement, &screw) {
                (None, _) => "engagement",
                (_, None) => "screw_class",
                _ => "nut_class",
            };
            let why = "the threads' shear area takes length and both classes";
            let hint =
                "give all three, like engagement=\"12 mm\", screw_class=\"6g\", nut_class=\"6H\"";
            return Err(missing(argument, why, hint));
        }
    }
    let found = match (torque, preload) {
        (Some(torque), None) => nut.tighten(torque.named("torque")?)?,
        (None, Some(force)) => nut.preload(force.named("preload")?)?,
        (None, None) => {
            let why = "without it, or a preload, nothing follows";
            return Err(missing("torque", why, "give torque=\"40 N m\" or preload=\"8 kN\""));
        }
        (Some(_), Some(force)) => {
            let force = force.named("preload")?;
            return Err(Error::from(ErrorKind::WrongUnit {
                argument: "preload".into(),
                given: format!("{} N", figure(force.get::<newton>(), 3)),
                kind: "thing to give beside `torque`",
                why: "each follows from the other",
                hint: "leave one of the two out".into(),
            })
            .into());
        }
    };
    Ok(Tightened(found))
}

/// Which way a nut comes off, and whether running or braking takes it there, in a sentence or two.
///
/// Args:
///     thread: A thread or its designation.
///     rotation: Which way the spindle runs, seen from the nut: `clockwise`, `anticlockwise` or `both`.
///
/// Returns:
///     The sentence.
///
/// Raises:
///     UnitError, TextError, OutOfRangeError: No thread, or another word.
///
/// Source: statics; Mich. Admin. Code R 408.10115.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> hw.joint.loosening("M20x1.5-LH")
///     'Seen from the nut, a left-hand thread comes off clockwise.'
#[pyfunction]
#[pyo3(signature = (thread, rotation = None))]
pub fn loosening(thread: ThreadIn, rotation: Option<W<Rotation>>) -> PyResult<String> {
    let rotation = rotation.map(|rotation| rotation.named("rotation")).transpose()?;
    Ok(joint::loosening(thread.named("thread")?.left_hand, rotation))
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

got! {
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

got! {
    Hole(joint::Hole) {
        /// Angle from the x axis, anticlockwise, in degrees.
        angle: Out<Angle> = |of| Out(of.angle);
        /// Place along x, from the centre, in mm.
        x: Out<Length> = |of| Out(of.x);
        /// Place along y, in mm.
        y: Out<Length> = |of| Out(of.y);
    }

    fn __repr__(&self) -> String {
        let (x, y) = (super::joint::mm(self.0.x), super::joint::mm(self.0.y));
        format!("<Hole {}° {x}, {y}>", figure(self.0.angle.get::<degree>(), 4))
    }
}

/// Holes evenly on a circle.
#[pyclass(frozen, module = "hubwright._core")]
pub struct HoleCircle(joint::HoleCircle);

got! {
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
        let chord = super::joint::mm(self.0.chord);
        let diameter = super::joint::mm(self.0.diameter);
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

got! {
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

got! {
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
