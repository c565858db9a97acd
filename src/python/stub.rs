//! Dressing, and a wheel as it wears: part of `hubwright.wheel`.

use pyo3::prelude::*;

use super::quantity::{Out, Plain, Q};
use super::rings::found;
use super::wheel::Working;
use crate::error::{Error, ErrorKind};
use crate::mounting::sort::show;
use crate::units::{AngularVelocity, Length, Velocity, figure};
use crate::wheel::{self, DressFeed};

/// What `dress` found.
#[pyclass(frozen, module = "hubwright._core")]
pub struct Dressing(wheel::DressFound);

found! {
    Dressing(wheel::DressFound) {
        /// Travel in a turn of the wheel, in mm.
        lead: Out<Length> = |of| Out(of.lead);
        /// Speed of the dresser along the face.
        traverse: Out<Velocity> = |of| Out(of.traverse);
        /// Width of the dresser, in mm; None while it is not given and can't be had from tip and depth.
        dresser_width: Option<Out<Length>> = |of| of.width.map(Out);
        /// How many times each point is passed; None without a width.
        overlap: Option<f64> = |of| of.overlap;
        /// Whether the overlap is below 1, so that part of the face is never touched.
        skips: bool = |of| of.skips;
        /// Height of the thread left on the wheel as a parabola, in mm; None without a tip.
        thread_height: Option<Out<Length>> = |of| of.thread_height.map(Out);
        /// The same of the round tip, in mm.
        exact_thread_height: Option<Out<Length>> = |of| of.exact_thread_height.map(Out);
        /// Mean deviation of the parabola, in mm; of the wheel, not of the work.
        thread_mean: Option<Out<Length>> = |of| of.thread_mean.map(Out);
    }

    /// The steps, recomputed; the last one's result is `overlap`, or `traverse` in mm/s without a width.
    fn working(&self) -> Working {
        Working(self.0.working())
    }

    fn __repr__(&self) -> String {
        let overlap = self.0.overlap.map_or_else(String::new, |overlap| format!(", overlap {}", figure(overlap, 2)));
        let skips = if self.0.skips { ", LEAVES PART UNTOUCHED" } else { "" };
        format!("<Dressing lead {}{overlap}{skips}>", show(self.0.lead))
    }
}

/// Lead, overlap and thread of a dressing pass: s = v / n, U = b / s, s² / (8 r).
///
/// Args:
///     speed: Rotational speed of the wheel while it is dressed.
///     lead: Travel in a turn of the wheel, or
///     traverse: speed of the dresser, or
///     overlap: how many times each point is to be passed.
///     dresser_width: Width of the dresser where it cuts; without it that of a round tip at `depth`.
///     tip_radius: Radius of the diamond's tip.
///     depth: Depth of dressing, below that radius.
///
/// Returns:
///     Dressing: `.lead`, `.traverse`, `.overlap`, `.thread_height` and more.
///
/// Raises:
///     MissingError: None of lead, traverse and overlap, or an overlap without a width.
///     UnitError, TextError: No quantities of these kinds, or more than one of the three.
///     OutOfRangeError: A figure not above zero, or a lead that a tip of this radius leaves ridges in.
///
/// Source: geometry.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> hw.wheel.dress(speed="2900 rpm", lead="0.12 mm", dresser_width="0.8 mm", tip_radius="0.25 mm")
///     <Dressing lead 0.12 mm, overlap 6.67>
///     >>> found = hw.wheel.dress(speed="1410 rpm", overlap=2, dresser_width="0.273 mm")
///     >>> print(f"{found.traverse.m_as('mm/min'):.1f} mm/min")
///     192.5 mm/min
#[pyfunction]
#[pyo3(signature = (*, speed, lead = None, traverse = None, overlap = None, dresser_width = None, tip_radius = None, depth = None))]
pub fn dress(
    speed: Q<AngularVelocity>,
    lead: Option<Q<Length>>,
    traverse: Option<Q<Velocity>>,
    overlap: Option<Plain>,
    dresser_width: Option<Q<Length>>,
    tip_radius: Option<Q<Length>>,
    depth: Option<Q<Length>>,
) -> PyResult<Dressing> {
    let feed = match (lead, traverse, overlap) {
        (Some(lead), None, None) => DressFeed::Lead(lead.named("lead")?),
        (None, Some(traverse), None) => DressFeed::Traverse(traverse.named("traverse")?),
        (None, None, Some(overlap)) => DressFeed::Overlap(overlap.named("overlap")?),
        (None, None, None) => {
            return Err(Error::from(ErrorKind::Missing {
                argument: "lead".into(),
                why: "without lead, traverse or overlap nobody knows how the dresser travels"
                    .into(),
                hint: "give one of them, like lead=\"0.1 mm\"".into(),
            })
            .into());
        }
        (lead, ..) => {
            let argument = if lead.is_some() { "lead" } else { "traverse" };
            return Err(Error::from(ErrorKind::WrongUnit {
                argument: argument.into(),
                given: "not alone".into(),
                kind: "thing to give beside another of lead, traverse and overlap",
                why: "each follows from the others",
                hint: "leave all but one of the three out".into(),
            })
            .into());
        }
    };
    let mut asked = wheel::Dress::new(speed.named("speed")?, feed);
    if let Some(width) = dresser_width {
        asked = asked.with_width(width.named("dresser_width")?);
    }
    if let Some(radius) = tip_radius {
        asked = asked.with_tip_radius(radius.named("tip_radius")?);
    }
    if let Some(depth) = depth {
        asked = asked.with_depth(depth.named("depth")?);
    }
    Ok(Dressing(asked.solve()?))
}

/// What `worn_speed` found.
#[pyclass(frozen, module = "hubwright._core")]
pub struct WornSpeed(wheel::WornSpeedFound);

found! {
    WornSpeed(wheel::WornSpeedFound) {
        /// Speed to set with the new wheel, never above a marking.
        new_speed: Out<AngularVelocity> = |of| Out(of.new_speed);
        /// Speed that the worn wheel would need, whatever is marked.
        free_speed: Out<AngularVelocity> = |of| Out(of.free_speed);
        /// Speed to set with the worn wheel, never above a marking.
        speed: Out<AngularVelocity> = |of| Out(of.speed);
        /// Whether a marking holds that down.
        capped: bool = |of| of.capped;
        /// Speed at which the worn wheel's rim would reach the marked rim speed; the marking in turns still caps.
        rim_limit_speed: Option<Out<AngularVelocity>> = |of| of.rim_limit_speed.map(Out);
        /// Rim speed of the worn wheel at the speed to set.
        worn_rim_speed: Out<Velocity> = |of| Out(of.worn_rim_speed);
        /// Rim speed of the worn wheel where the speed of the new one is kept.
        rim_speed_if_kept: Out<Velocity> = |of| Out(of.rim_speed_if_kept);
    }

    /// The steps, recomputed; the last one's result is `speed` in rev/min.
    fn working(&self) -> Working {
        Working(self.0.working())
    }

    fn __repr__(&self) -> String {
        let capped = if self.0.capped { ", held down by the marking" } else { "" };
        format!("<WornSpeed {} new, {} worn{capped}>", show(self.0.new_speed), show(self.0.speed))
    }
}

/// The speed to set as a wheel wears, to keep its rim going, capped at what is marked on it.
///
/// Args:
///     diameter: Diameter of the new wheel.
///     worn_diameter: Diameter it has worn to, or will: that of its stub, for one.
///     rim_speed: Rim speed to keep.
///     marked_speed: Rotational speed marked on the wheel: a ceiling however small it has worn.
///     marked_rim_speed: Rim speed marked on the wheel.
///
/// Returns:
///     WornSpeed: `.speed`, `.new_speed`, `.capped`, `.rim_speed_if_kept`.
///
/// Raises:
///     UnitError, TextError, OutOfRangeError: No quantities of these kinds, or a worn diameter not below the new one.
///
/// Source: kinematics; the cap is 29 CFR 1910.215(d)(1).
///
/// Examples:
///     >>> import hubwright as hw
///     >>> hw.wheel.worn_speed(diameter="200 mm", worn_diameter="155 mm", rim_speed="30 m/s", marked_speed="3340 rpm")
///     <WornSpeed 2864.79 rpm new, 3340 rpm worn, held down by the marking>
#[pyfunction]
#[pyo3(signature = (*, diameter, worn_diameter, rim_speed, marked_speed = None, marked_rim_speed = None))]
pub fn worn_speed(
    diameter: Q<Length>,
    worn_diameter: Q<Length>,
    rim_speed: Q<Velocity>,
    marked_speed: Option<Q<AngularVelocity>>,
    marked_rim_speed: Option<Q<Velocity>>,
) -> PyResult<WornSpeed> {
    let (diameter, worn) = (diameter.named("diameter")?, worn_diameter.named("worn_diameter")?);
    let mut asked = wheel::WornSpeed::new(diameter, worn, rim_speed.named("rim_speed")?);
    if let Some(marked) = marked_speed {
        asked = asked.with_marked_speed(marked.named("marked_speed")?);
    }
    if let Some(marked) = marked_rim_speed {
        asked = asked.with_marked_rim_speed(marked.named("marked_rim_speed")?);
    }
    Ok(WornSpeed(asked.solve()?))
}

/// What `stub` found.
#[pyclass(frozen, module = "hubwright._core")]
pub struct Stub(wheel::StubFound);

found! {
    Stub(wheel::StubFound) {
        /// Diameter at which the wheel is used up, in mm.
        stub_diameter: Out<Length> = |of| Out(of.stub_diameter);
        /// What can be used of the new wheel, on radius, in mm.
        usable: Out<Length> = |of| Out(of.usable);
        /// What is left of it now, on radius, in mm; None without a worn diameter.
        left: Option<Out<Length>> = |of| of.left.map(Out);
        /// What is left now as a share of the volume that can be used.
        left_share: Option<f64> = |of| of.left_share;
        /// What the larger flange takes away, on radius, in mm; None without one.
        lost: Option<Out<Length>> = |of| of.lost.map(Out);
        /// What it takes away as a share of the volume that can be used.
        lost_share: Option<f64> = |of| of.lost_share;
    }

    /// The steps, recomputed; the last one's result is `usable` in mm.
    fn working(&self) -> Working {
        Working(self.0.working())
    }

    fn __repr__(&self) -> String {
        format!("<Stub {}, usable {} on radius>", show(self.0.stub_diameter), show(self.0.usable))
    }
}

/// What flange or stabiliser leave of a wheel, and what a larger flange would cost.
///
/// Args:
///     diameter: Diameter of the new wheel.
///     flange: Diameter of the flanges.
///     clearance: Clearance that flange or stabiliser need from the work, on radius; zero or above.
///     stabiliser: Diameter of the stabilisers.
///     worn_diameter: Diameter that the wheel has worn to.
///     larger_flange: Diameter of flanges that might replace these.
///
/// Returns:
///     Stub: `.stub_diameter`, `.usable`, `.left`, `.lost`, `.lost_share`.
///
/// Raises:
///     UnitError, TextError: No lengths.
///     OutOfRangeError: A flange that covers the wheel, or a wheel worn below its stub.
///
/// Source: geometry.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> found = hw.wheel.stub(diameter="200 mm", flange="80 mm", clearance="2 mm", larger_flange="100 mm")
///     >>> found
///     <Stub 84 mm, usable 58 mm on radius>
///     >>> print(f"{found.lost:.0f~P} or {found.lost_share:.0%} lost by the larger flange")
///     10 mm or 11% lost by the larger flange
#[pyfunction]
#[pyo3(signature = (*, diameter, flange, clearance, stabiliser = None, worn_diameter = None, larger_flange = None))]
pub fn stub(
    diameter: Q<Length>,
    flange: Q<Length>,
    clearance: Q<Length>,
    stabiliser: Option<Q<Length>>,
    worn_diameter: Option<Q<Length>>,
    larger_flange: Option<Q<Length>>,
) -> PyResult<Stub> {
    let (diameter, flange) = (diameter.named("diameter")?, flange.named("flange")?);
    let mut asked = wheel::Stub::new(diameter, flange, clearance.named("clearance")?);
    if let Some(stabiliser) = stabiliser {
        asked = asked.with_stabiliser(stabiliser.named("stabiliser")?);
    }
    if let Some(worn) = worn_diameter {
        asked = asked.with_worn_diameter(worn.named("worn_diameter")?);
    }
    if let Some(larger) = larger_flange {
        asked = asked.with_larger_flange(larger.named("larger_flange")?);
    }
    Ok(Stub(asked.solve()?))
}
