//! Nuts: part of `hubwright.joint`.

use pyo3::prelude::*;

#[cfg(feature = "stubs")]
use pyo3::{inspect::PyStaticExpr, type_hint_identifier};

use super::joint::Text;
use super::quantity::{Out, Plain, Q, plain};
use super::rings::found;
use super::thread::{Thread, ThreadIn};
use super::wheel::Working;
use super::words::W;
use crate::error::{Error, ErrorKind};
use crate::joint::{self, Between, Rotation, ThreadClass};
use crate::units::{Area, Force, Length, Pressure, Torque, figure, newton, newton_meter};

/// Least and greatest of something.
pub(super) type Pair<K> = (Out<K>, Out<K>);

pub(super) fn pair<K>(of: Between<K>) -> Pair<K> {
    (Out(of.least), Out(of.greatest))
}

/// One plain number, or the least and the greatest of a range.
pub(super) struct Span(Result<[f64; 2], Error>);

impl Span {
    pub(super) fn named(self, argument: &str) -> Result<[f64; 2], Error> {
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

/// A tightened nut: what `nut` found. Ranges are pairs, least and greatest.
#[pyclass(frozen, module = "hubwright._core")]
pub struct Tightened(joint::Tightened);

found! {
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
pub(super) fn missing(argument: &str, why: &str, hint: &str) -> PyErr {
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
