//! A cone as measured, whichever way.

use super::check::{root_sum, ruled_out};
use crate::error::{Error, ErrorKind};
use crate::joint::taper::a_taper;
use crate::solid::chance::coverage;
use crate::units::{Angle, Length, degree, figure, meter, millimeter, radian, words};

words! {
    /// Where the large end of a cone lies, by the positions of its readings.
    LargeEnd, "large end" {
        /// At the greater positions: the last reading, the upper roller.
        High = "high" ["up", "last"];
        /// At the smaller positions: the first reading, the mouth of a bore.
        Low = "low" ["down", "first"];
    }
}

/// A cone as measured: its angle, a diameter, and how well both are known.
///
/// Positions are those of the readings: heights over the plate, depths below the face, or
/// wherever they were counted from. The plane is where angle and diameter have errors of
/// their own, so that a diameter elsewhere adds both.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct MeasuredCone {
    /// Half of the included angle.
    pub half_angle: Angle,
    /// Its standard uncertainty.
    pub u_half_angle: Angle,
    /// Degrees of freedom of the uncertainties; infinite where they were stated.
    pub dof: f64,
    /// Diameter at the plane.
    pub diameter: Length,
    /// Its standard uncertainty.
    pub u_diameter: Length,
    /// Position of the plane.
    pub plane: Length,
    /// Least and greatest position that was measured.
    pub span: [Length; 2],
    /// Where the large end lies.
    pub large_end: LargeEnd,
}

impl MeasuredCone {
    /// Change of radius over length.
    pub fn per_side(&self) -> f64 {
        self.half_angle.get::<radian>().tan()
    }

    /// Change of diameter over position: below zero where the large end lies low.
    pub fn slope(&self) -> f64 {
        let sign = if self.large_end == LargeEnd::High { 1.0 } else { -1.0 };
        sign * 2.0 * self.per_side()
    }

    /// Factor of the expanded uncertainties: 2, or what Student's distribution makes of it.
    pub fn coverage(&self) -> f64 {
        coverage(2.0, self.dof)
    }

    /// Expanded uncertainty of the half angle, 95 %.
    pub fn expanded_half_angle(&self) -> Angle {
        self.coverage() * self.u_half_angle
    }

    /// Diameter at a position.
    pub fn diameter_at(&self, position: Length) -> Length {
        self.diameter + self.slope() * (position - self.plane)
    }

    /// Standard uncertainty of the diameter at a position.
    pub fn u_diameter_at(&self, position: Length) -> Length {
        let alpha = self.half_angle.get::<radian>();
        let away = (position - self.plane).get::<meter>();
        let by_angle = 2.0 * away / alpha.cos().powi(2) * self.u_half_angle.get::<radian>();
        Length::new::<meter>(root_sum([self.u_diameter.get::<meter>(), by_angle]))
    }

    /// Position at which the cone has a diameter: where a gauge plane lies.
    pub fn position_of(&self, diameter: Length) -> Length {
        self.plane + (diameter - self.diameter) / self.slope()
    }

    /// That it is a cone at all, and told from a cylinder by what it was measured with.
    pub(super) fn checked(self) -> Result<Self, Error> {
        a_taper(self.half_angle.get::<radian>())?;
        let expanded = self.expanded_half_angle();
        if self.half_angle <= expanded {
            let degrees = self.half_angle.get::<radian>().to_degrees();
            return Err(ErrorKind::OutOfRange {
                argument: "half_angle".into(),
                given: (degrees * 1e6).round() / 1e6,
                range: format!(
                    "not above its uncertainty, {}",
                    figure(expanded.get::<degree>(), 6)
                ),
                unit: "°",
                authority: String::new(),
                hint: "it can't be told from a cylinder: measure over a greater length, or better"
                    .into(),
            }
            .into());
        }
        for position in self.span {
            let found = self.diameter_at(position);
            if found <= Length::default() {
                let hint =
                    "the readings run past the cone's apex: one of them or its unit is wrong";
                return Err(ruled_out("diameter", found, "not above", Length::default(), hint));
            }
        }
        Ok(self)
    }
}

/// A length in mm to the last hundred nanometres that count.
pub(super) fn mm(length: Length) -> String {
    format!("{} mm", figure(length.get::<millimeter>(), 4))
}

/// A length in µm, to a tenth.
pub(super) fn um(length: Length) -> String {
    format!("{} µm", figure(length.get::<millimeter>() * 1e3, 1))
}
