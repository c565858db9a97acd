//! The seats of mountings, solved once for every geometry.
//!
//! A rule on a seat needs a solve of some milliseconds, and the rules are asked three times about each
//! mounting and a thousand times about a rack of one machine. So each thread keeps the last
//! seats it solved.

use std::cell::RefCell;
use std::collections::VecDeque;

use crate::joint::{self, Pushed, SeatFound};
use crate::tables::materials::Elastic;
use crate::units::{Angle, Exact, Force, Length, MassDensity, Pressure, kilogram_per_cubic_meter};

/// Seats kept by each thread, some 50 kB each.
const KEPT: usize = 64;

/// What decides a solve, in the units of facts.
///
/// It is handed over by itself: a block loop that handed over its facts would have to
/// gather every one of them for every row.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Sizes {
    pub length: f64,
    pub small_diameter: f64,
    pub taper: f64,
    pub friction: f64,
    pub nut_diameter: f64,
    pub hub_diameter: f64,
    /// NaN without a step, like the next.
    pub step_from: f64,
    pub step_diameter: f64,
    /// NaN where nobody gives it, like the overhangs.
    pub spindle_bore: f64,
    pub overhangs: [f64; 2],
    /// Modulus and Poisson's ratio.
    pub hub: [f64; 2],
    pub spindle: [f64; 2],
}

type Key = [u64; 15];

thread_local! {
    static KNOWN: RefCell<VecDeque<(Key, Option<SeatFound>)>> =
        const { RefCell::new(VecDeque::new()) };
}

/// Zero where nobody gives it.
fn or_none(length: f64) -> f64 {
    if length.is_nan() { 0.0 } else { length }
}

impl Sizes {
    fn key(&self) -> Key {
        let bits = |value: f64| or_none(value).to_bits();
        [
            bits(self.length),
            bits(self.small_diameter),
            bits(self.taper),
            bits(self.friction),
            bits(self.nut_diameter),
            bits(self.hub_diameter),
            bits(self.step_from),
            bits(self.step_diameter),
            bits(self.spindle_bore),
            bits(self.overhangs[0]),
            bits(self.overhangs[1]),
            bits(self.hub[0]),
            bits(self.hub[1]),
            bits(self.spindle[0]),
            bits(self.spindle[1]),
        ]
    }

    fn solve(&self) -> Option<SeatFound> {
        let length = |nm: f64| Length::from_exact(nm);
        let stuff = |[modulus, poisson]: [f64; 2]| {
            // Nothing here depends on it.
            let density = MassDensity::new::<kilogram_per_cubic_meter>(1000.0);
            Elastic::new(Pressure::from_exact(modulus), poisson / 1e9, density)
        };
        let [small, large] = self.overhangs.map(|overhang| length(or_none(overhang)));
        let mut of = joint::Seat::new(
            stuff(self.hub),
            stuff(self.spindle),
            length(self.small_diameter),
            self.taper / 1e9,
            length(self.length),
            length(self.hub_diameter),
            length(self.nut_diameter),
        )
        .with_spindle_bore(length(or_none(self.spindle_bore)))
        .with_overhangs(small, large);
        if !self.step_from.is_nan() {
            of = of.with_step(length(self.step_from), length(self.step_diameter));
        }
        of.solve(self.friction / 1e9).ok()
    }
}

/// A seat under its nut, by sizes, force and mismatch as facts; `None` where they make no seat that
/// can be solved.
///
/// Everything that it needs has to be given; it looks at that no more.
#[inline(never)]
pub(crate) fn pushed(of: Sizes, force: f64, mismatch: f64) -> Option<Pushed> {
    let key = of.key();
    let (force, mismatch) = (Force::from_exact(force), Angle::from_exact(mismatch));
    KNOWN.with_borrow_mut(|known| {
        let found = match known.iter().position(|(of, _)| *of == key) {
            Some(at) => known.swap_remove_front(at)?,
            None => (key, of.solve()),
        };
        let pushed = found.1.as_ref().and_then(|seat| seat.push(force, mismatch).ok());
        known.push_front(found);
        known.truncate(KEPT);
        pushed
    })
}
