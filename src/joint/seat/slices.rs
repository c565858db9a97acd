//! A quick estimate: rings that each give on their own.

use std::f64::consts::PI;

use super::{Seat, check, mismatched};
use crate::error::Error;
use crate::solid::cone::{Cone, End};
use crate::units::{
    Angle, Force, Length, Pressure, Torque, meter, newton, newton_meter, pascal, positive,
    positive_length,
};

/// How far ring slices can be off, measured against finite elements.
pub const HOW_FAR_OFF: &str = "an estimate, never the answer: the length in contact comes out longer by 2 to 30 % of the seat, \
     the force to close it 38 % low to 19 % high, the pressure at the end 54 % low to 24 % high; \
     slip torque and release force are right within 2 %";

/// A quick estimate of a seat under a force: what [`Seat::ring_slices`] found.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct RingSlices {
    /// Force of the nut.
    pub force: Force,
    /// Half angle of the hub less that of the spindle.
    pub mismatch: Angle,
    /// Share of the length in contact: always more than it is.
    pub contact: f64,
    /// The same less 0.27 of the radius at the end that carries, as long as it is not the whole length.
    pub contact_corrected: f64,
    /// Force that closes all of it.
    pub force_to_close: Force,
    /// How far the hub moves from the first touch on.
    pub draw_up: Length,
    /// Torque at which it slips while the nut stays on.
    pub slip_torque: Torque,
    /// Sum of all pressure.
    pub normal_force: Force,
    /// Push that takes the hub off once the nut is off.
    pub release_force: Force,
    /// Pressure at the small and at the large end.
    pub pressures: [Pressure; 2],
    /// Hoop stress in the hub's bore at the small and at the large end.
    pub hoops: [Pressure; 2],
}

impl RingSlices {
    /// How far it can be off.
    pub const fn how_far_off(&self) -> &'static str {
        HOW_FAR_OFF
    }
}

/// What rings of one radius and one compliance do: what [`seat_by_rule`] found.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct SeatByRule {
    /// Force that closes all of the length.
    pub force_to_close: Force,
    /// Share of the length in contact.
    pub contact: f64,
    /// Pressure at the end that carries.
    pub end_pressure: Pressure,
}

/// The rule of thumb behind ring slices, for one radius and one compliance all along.
///
/// `F = π R L² Δ (tan α + μ) / c` closes all of it, a smaller force the share `√(F / F close)` of the
/// length, with the pressure `Δ l / c` at the end. `c` is how much wider the gap gets for a unit of
/// pressure, in metres per pascal, `Δ` the mismatch. It is off as far as [`RingSlices::how_far_off`] says.
///
/// # Errors
///
/// [`OutOfRange`](crate::ErrorKind::OutOfRange) or [`NotFinite`](crate::ErrorKind::NotFinite) for
/// anything not above zero.
pub fn seat_by_rule(
    length: Length,
    radius: Length,
    compliance: f64,
    [slope, friction]: [f64; 2],
    mismatch: Angle,
    force: Force,
) -> Result<SeatByRule, Error> {
    let (l, r) = (positive_length("length", length)?, positive_length("radius", radius)?);
    positive("compliance", compliance, "m/Pa", "2e-13")?;
    positive("slope", slope, "", "0.05")?;
    check::friction(friction)?;
    check::mismatch(mismatch)?;
    let newtons = check::force("force", force)?;
    let by = mismatch.get::<crate::units::radian>().abs();
    let closing = PI * r * l * l * by * (slope + friction) / compliance;
    let contact = (newtons / closing).sqrt().min(1.0);
    let pressure = match contact < 1.0 {
        true => by * contact * l / compliance,
        // All closed: what is more spreads evenly.
        false => {
            by * l / compliance + (newtons - closing) / (2.0 * PI * r * l * (slope + friction))
        }
    };
    Ok(SeatByRule {
        force_to_close: Force::new::<newton>(closing),
        contact,
        end_pressure: Pressure::new::<pascal>(pressure),
    })
}

/// Ring slices of a seat, in bare numbers.
pub(super) struct Slices<'a> {
    pub cone: &'a Cone,
    friction: f64,
}

impl<'a> Slices<'a> {
    pub fn new(cone: &'a Cone, friction: f64) -> Self {
        Self { cone, friction }
    }

    /// Radial gap of hub and spindle per pressure.
    pub fn compliance(&self, x: f64) -> f64 {
        let cone = self.cone;
        let (r, outside, bore) = (cone.radius(x), cone.outside(x), cone.bore);
        let (r2, o2, i2) = (r * r, outside * outside, bore * bore);
        let hub = (o2 + r2) / (o2 - r2) + cone.hub.poisson;
        let spindle = (r2 + i2) / (r2 - i2) - cone.spindle.poisson;
        r * (hub / cone.hub.modulus + spindle / cone.spindle.modulus)
    }

    /// Integral along the seat, piece by piece between the steps of the hub.
    pub fn integral(&self, [from, to]: [f64; 2], of: impl Fn(f64) -> f64) -> f64 {
        let mut starts = vec![from];
        starts.extend(self.cone.steps.iter().map(|step| step.0).filter(|x| (from..to).contains(x)));
        starts.push(to);
        let mut sum = 0.0;
        for piece in starts.windows(2) {
            const PARTS: usize = 16;
            let width = (piece[1] - piece[0]) / PARTS as f64;
            for part in 0..PARTS {
                let middle = piece[0] + (part as f64 + 0.5) * width;
                for (at, weight) in crate::solid::cone::GAUSS {
                    sum += of(middle + at * width / 2.0) * weight * width / 2.0;
                }
            }
        }
        sum
    }

    /// Pressure at a place, at an advance along the normal.
    fn pressure(&self, end: End, tangent: f64, advance: f64, x: f64) -> f64 {
        let [_, cosine] = self.cone.sine_cosine();
        let from = if end == End::Small { x } else { self.cone.length - x };
        (advance - tangent * from / cosine).max(0.0) / self.compliance(x)
    }

    /// Where they touch, as a share of the length.
    fn contact(&self, tangent: f64, advance: f64) -> f64 {
        let [_, cosine] = self.cone.sine_cosine();
        let reach = advance * cosine / self.cone.length;
        if reach >= tangent { 1.0 } else { reach / tangent }
    }

    /// Area times pressure over where they touch, weighed.
    fn sum(&self, end: End, tangent: f64, advance: f64, weight: impl Fn(f64) -> f64) -> f64 {
        let length = self.cone.length;
        let reach = self.contact(tangent, advance) * length;
        let range = if end == End::Small { [0.0, reach] } else { [length - reach, length] };
        self.integral(range, |x| {
            2.0 * PI * self.cone.radius(x) * self.pressure(end, tangent, advance, x) * weight(x)
        })
    }

    fn force(&self, end: End, tangent: f64, advance: f64) -> f64 {
        (self.cone.slope + self.friction) * self.sum(end, tangent, advance, |_| 1.0)
    }
}

impl Seat {
    /// A quick estimate of what a force does: rings that each give on their own, after Lamé.
    ///
    /// `c p = D sin α − g0`, with `c` Lamé's compliance of hub and spindle at each place. It
    /// sees neither the ends of the hub, nor what the nut's radius does, and is off as far as
    /// [`RingSlices::how_far_off`] says: for a first look, never the answer.
    ///
    /// # Errors
    ///
    /// As for [`Seat`] and [`SeatFound::push`](super::SeatFound::push).
    ///
    /// # Source
    ///
    /// Lamé; Timoshenko and Goodier, *Theory of Elasticity*.
    pub fn ring_slices(
        &self,
        friction: f64,
        force: Force,
        mismatch: Angle,
    ) -> Result<RingSlices, Error> {
        self.check()?;
        check::friction(friction)?;
        check::mismatch(mismatch)?;
        let newtons = check::force("force", force)?;
        let (cone, (end, tangent)) = (self.cone(), mismatched(mismatch));
        let [sine, cosine] = cone.sine_cosine();
        let slices = Slices::new(&cone, friction);
        let at = |advance| slices.force(end, tangent, advance);
        let closes = tangent * cone.length / cosine;
        let (mut low, mut high) = (0.0, 1e-9 + closes);
        while at(high) < newtons {
            high *= 2.0;
        }
        for _ in 0..200 {
            let middle = f64::midpoint(low, high);
            if at(middle) < newtons { low = middle } else { high = middle }
        }
        let advance = f64::midpoint(low, high);
        let contact = slices.contact(tangent, advance);
        let carrying = cone.radius(if end == End::Small { 0.0 } else { cone.length });
        let less = 0.27 * carrying / cone.length;
        let pressures = [0.0, cone.length].map(|x| slices.pressure(end, tangent, advance, x));
        let hoop = |x: f64, pressure: f64| {
            let (r2, o2) = (cone.radius(x).powi(2), cone.outside(x).powi(2));
            pressure * (o2 + r2) / (o2 - r2)
        };
        let hoops = [hoop(0.0, pressures[0]), hoop(cone.length, pressures[1])];
        let torque = friction / cosine * slices.sum(end, tangent, advance, |x| cone.radius(x));
        let pa = Pressure::new::<pascal>;
        Ok(RingSlices {
            force,
            mismatch,
            contact,
            contact_corrected: if contact < 1.0 { (contact - less).max(0.0) } else { 1.0 },
            force_to_close: Force::new::<newton>(at(closes)),
            draw_up: Length::new::<meter>(advance / sine),
            slip_torque: Torque::new::<newton_meter>(torque),
            normal_force: Force::new::<newton>(newtons / (sine + friction * cosine)),
            release_force: Force::new::<newton>(
                newtons * (friction - cone.slope) / (friction + cone.slope),
            ),
            pressures: pressures.map(pa),
            hoops: hoops.map(pa),
        })
    }
}
