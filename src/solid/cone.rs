//! A hub on a cone whose angles differ a little: elastic contact of two bodies that go round an axis.
//!
//! Metres, pascals and newtons throughout; `joint::seat` has the quantities.

mod band;
mod condense;
mod contact;
mod element;
mod front;
mod mesh;

use std::f64::consts::PI;

pub(crate) use self::condense::Compliance;
use self::contact::Contact;
pub(crate) use self::contact::{Path, Pressed};
pub(crate) use self::element::GAUSS;
pub(crate) use self::front::Front;
pub(crate) use self::mesh::Fineness;

/// An end of a cone.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum End {
    /// The small end.
    Small,
    /// The large end.
    Large,
}

/// Modulus and Poisson's ratio.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Stuff {
    pub modulus: f64,
    pub poisson: f64,
}

/// The two bodies.
#[derive(Clone, Debug)]
pub(crate) struct Cone {
    /// Engaged length.
    pub length: f64,
    /// Radius at the small end.
    pub small: f64,
    /// Tangent of the half angle.
    pub slope: f64,
    /// Outside radius of the hub up to a place along the seat, one step after another.
    pub steps: Vec<(f64, f64)>,
    /// Radius of the spindle's bore.
    pub bore: f64,
    /// How far the spindle reaches beyond the small and the large end.
    pub overhangs: [f64; 2],
    /// Outside radius at which the nut bears on the hub's face.
    pub nut: f64,
    /// What the hub is of.
    pub hub: Stuff,
    /// What the spindle is of.
    pub spindle: Stuff,
}

/// A ring of the seat.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Segment {
    /// From and to, along the axis from the small end.
    pub ends: [f64; 2],
    /// Its area.
    pub area: f64,
    /// Radius times area.
    pub moment: f64,
    /// Mean distance along the generator from the small and from the large end.
    reach: [f64; 2],
}

impl Segment {
    fn of(cone: &Cone, from: f64, to: f64) -> Self {
        let [_, cosine] = cone.sine_cosine();
        let [mut area, mut moment, mut reach] = [0.0; 3];
        for (at, weight) in GAUSS {
            let x = (from + to) / 2.0 + at * (to - from) / 2.0;
            let ring = 2.0 * PI * cone.radius(x) * weight * (to - from) / 2.0 / cosine;
            area += ring;
            moment += ring * cone.radius(x);
            reach += ring * x / cosine;
        }
        let reach = reach / area;
        Self { ends: [from, to], area, moment, reach: [reach, cone.length / cosine - reach] }
    }

    /// Half way along it.
    pub fn middle(&self) -> f64 {
        (self.ends[0] + self.ends[1]) / 2.0
    }

    /// Its length along the axis.
    pub fn length(&self) -> f64 {
        self.ends[1] - self.ends[0]
    }

    /// Gap over the tangent of the mismatch, when an end just touches.
    fn gap(&self, end: End) -> f64 {
        self.reach[end as usize]
    }
}

impl Cone {
    pub fn sine_cosine(&self) -> [f64; 2] {
        let hypotenuse = self.slope.hypot(1.0);
        [self.slope / hypotenuse, 1.0 / hypotenuse]
    }

    /// Radius of the seat.
    pub fn radius(&self, x: f64) -> f64 {
        self.small + x * self.slope
    }

    /// Outside radius of the hub.
    pub fn outside(&self, x: f64) -> f64 {
        let step = self.steps.iter().find(|step| x < step.0).or(self.steps.last());
        step.map_or(0.0, |step| step.1)
    }

    /// The outside radii that occur, each once, the smallest first.
    fn levels(&self) -> Vec<f64> {
        let mut all: Vec<_> = self.steps.iter().map(|step| step.1).collect();
        all.sort_by(f64::total_cmp);
        all.dedup();
        all
    }

    /// Where the outside radius changes.
    fn breaks(&self) -> impl Iterator<Item = f64> {
        self.steps.windows(2).filter(|two| two[0].1 != two[1].1).map(|two| two[0].0)
    }

    /// What the bodies do to the gap between them; all else follows from it.
    pub fn compliance(&self, fine: Fineness) -> Compliance {
        condense::condensed(self, fine)
    }

    /// What pushing does at a friction, for a hub too open and for one too closed.
    pub fn paths(&self, of: &Compliance, friction: f64) -> Option<[Path; 2]> {
        let contact = Contact::new(of, friction, self.sine_cosine());
        Some([contact.path(End::Small)?, contact.path(End::Large)?])
    }
}

/// The usual mesh: the front within 0.003 of the length and the force for 95 % within 1 % of those
/// of [`FINE`], on eleven geometries.
pub(crate) const USUAL: Fineness =
    Fineness { columns: 40, hub: 3, step: 3, spindle: 4, overhang: 8 };
/// A mesh to see what the mesh does, at ten times the time.
pub(crate) const FINE: Fineness =
    Fineness { columns: 64, hub: 7, step: 3, spindle: 9, overhang: 8 };

#[cfg(test)]
mod tests;
