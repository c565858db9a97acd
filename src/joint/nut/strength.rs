//! What is left of a screw to carry: area, torsion and the threads themselves.

use std::f64::consts::PI;

use super::Nut;
use crate::error::{Error, ErrorKind};
use crate::units::{Area, Length, meter, shown_mm, square_meter};

/// Part of a circle that a slot of a width takes away, its bottom at a height above the centre.
fn slot_area(radius: f64, width: f64, bottom: f64) -> f64 {
    let chord = (radius * radius - bottom * bottom).max(0.0).sqrt();
    let half = (width / 2.0).min(chord);
    let under =
        half * (radius * radius - half * half).sqrt() + radius * radius * (half / radius).asin();
    if bottom < radius { under - 2.0 * bottom * half } else { 0.0 }
}

/// What carries, in metres.
pub(super) struct Section {
    pub net_area: f64,
    /// Plastic section modulus against torsion.
    modulus: f64,
    /// Shear areas of the screw's and of the nut's threads.
    pub shear_areas: Option<[f64; 2]>,
}

impl Section {
    pub(super) fn of(nut: &Nut) -> Result<Self, Error> {
        let round = nut.thread.stress_diameter();
        let bore = nut.bore.get::<meter>();
        let mut area = PI / 4.0 * (round * round - bore * bore);
        let mut clear = round;
        if let Some([width, depth]) = nut.slot {
            let bottom = nut.thread.diameter.get::<meter>() / 2.0 - depth.get::<meter>();
            area -= slot_area(round / 2.0, width.get::<meter>(), bottom);
            // Beside a bore the circle stays about the axis, else it may lie off it.
            clear = if bore > 0.0 { 2.0 * bottom } else { round / 2.0 + bottom }.min(round);
            if clear <= bore {
                return Err(ErrorKind::OutOfRange {
                    argument: "slot_depth".into(),
                    given: shown_mm(depth),
                    range: format!(
                        "not below {}",
                        shown_mm((nut.thread.diameter - nut.bore) / 2.0)
                    ),
                    unit: "mm",
                    authority: "wall between thread and bore".into(),
                    hint: "a slot into the bore leaves an open ring: reckon it by other means"
                        .into(),
                }
                .into());
            }
        }
        let modulus = PI / 12.0 * (clear.powi(3) - bore.powi(3));
        Ok(Self { net_area: area, modulus, shear_areas: shear_areas(nut) })
    }

    pub(super) fn area(&self) -> Area {
        Area::new::<square_meter>(self.net_area)
    }

    /// Tension and torsion together, over the force, at an arm of the thread's torque.
    pub(super) fn stress_per_force(&self, arm: f64) -> f64 {
        let (tension, torsion) = (1.0 / self.net_area, arm / self.modulus);
        (tension * tension + 3.0 * torsion * torsion).sqrt()
    }
}

/// Shear areas of the screw's and of the nut's threads at the limits that take most away.
fn shear_areas(nut: &Nut) -> Option<[f64; 2]> {
    let (length, screw, internal) = nut.engagement?;
    let m = |length: Length| length.get::<meter>();
    let pitch = m(nut.thread.pitch);
    let (minor, major) = (m(internal.minor_greatest?), m(screw.major_least));
    let turns = m(length) / pitch;
    let root = 3.0_f64.sqrt();
    let width = nut.slot.map_or(0.0, |[width, _]| m(width));
    let whole = |diameter: f64| 1.0 - (width / diameter).min(1.0).asin() / PI;
    let of = |diameter: f64, flank: f64| {
        PI * diameter * turns * (pitch / 2.0 + flank / root) * whole(diameter)
    };
    let of_screw = of(minor, m(screw.pitch_least) - minor);
    let of_nut = of(major, major - m(internal.pitch_greatest));
    Some([of_screw, of_nut])
}
