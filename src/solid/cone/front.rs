//! How far contact has come from the end that carries.

use super::contact::Path;
use super::{End, Segment};

/// Places of the front, as shares of the length, and the forces that bring it there.
#[derive(Clone, Debug)]
pub(crate) struct Front {
    places: Vec<f64>,
    forces: Vec<f64>,
}

impl Front {
    /// Segments close one after another from the end that carries; the front stands in the middle of
    /// the one that just touches.
    pub fn of(path: &Path, segments: &[Segment], length: f64) -> Self {
        let count = segments.len();
        let (mut places, mut forces, mut most) = (vec![0.0], vec![0.0], 0.0_f64);
        // The first one touches without any force, like the end itself.
        for at in 1..count {
            let segment = match path.end {
                End::Small => at,
                End::Large => count - 1 - at,
            };
            let Some(force) = path.touches(segment) else { continue };
            let middle = segments[segment].middle() / length;
            most = most.max(force);
            places.push(if path.end == End::Small { middle } else { 1.0 - middle });
            forces.push(most);
        }
        Self { places, forces }
    }

    /// Share of the length up to the front; the root of the force is what it goes with.
    pub fn share(&self, force: f64) -> f64 {
        let after = self.forces.partition_point(|known| *known <= force);
        match (after.checked_sub(1), self.forces.get(after)) {
            (Some(before), Some(&beyond)) => {
                let (low, high) = (self.forces[before].sqrt(), beyond.sqrt());
                let within = (force.sqrt() - low) / (high - low);
                self.places[before] + within * (self.places[after] - self.places[before])
            }
            (Some(last), None) => self.places[last],
            (None, _) => 0.0,
        }
    }

    /// Force that brings the front to a share of the length; `None` when none does.
    pub fn force(&self, share: f64) -> Option<f64> {
        let after = self.places.partition_point(|place| *place < share);
        let before = after.checked_sub(1)?;
        let (low, high) = (self.places[before], *self.places.get(after)?);
        let (from, to) = (self.forces[before], self.forces[after]);
        Some(from + (to - from) * (share - low) / (high - low))
    }
}
