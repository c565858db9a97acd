//! The seats of mountings, solved once for every geometry.
//!
//! A rule on a seat needs a solve of some milliseconds, and the rules are asked three times about each
//! mounting and a thousand times about a rack of one machine. So each thread keeps the last
//! seats it solved.

use std::cell::RefCell;
use std::collections::VecDeque;

use super::facts::{Facts, of};
use crate::joint::{self, Pushed, SeatFound};
use crate::tables::materials::Elastic;
use crate::units::{Angle, Exact, Force, Length, MassDensity, Pressure, kilogram_per_cubic_meter};

/// Seats kept by each thread, some 50 kB each.
const KEPT: usize = 64;

type Key = [u64; 15];

thread_local! {
    static KNOWN: RefCell<VecDeque<(Key, Option<SeatFound>)>> = const { RefCell::new(VecDeque::new()) };
}

/// Zero where nobody gives it.
fn or_none(length: f64) -> f64 {
    if length.is_nan() { 0.0 } else { length }
}

/// What decides the solve: everything but force and mismatch.
fn key(seat: &of::Seat) -> Key {
    let s = seat;
    [
        s.length.0,
        s.small_diameter.0,
        s.taper.0,
        s.friction.0,
        s.nut_diameter.0,
        s.hub_diameter.0,
        s.step_from.0,
        s.step_diameter.0,
        or_none(s.spindle_bore.0),
        or_none(s.overhang_small.0),
        or_none(s.overhang_large.0),
        s.hub_modulus.0,
        s.hub_poisson.0,
        s.spindle_modulus.0,
        s.spindle_poisson.0,
    ]
    .map(f64::to_bits)
}

fn solve(seat: &of::Seat) -> Option<SeatFound> {
    let length = |nm: f64| Length::from_exact(nm);
    let stuff = |modulus: f64, poisson: f64| {
        // Nothing here depends on it.
        let density = MassDensity::new::<kilogram_per_cubic_meter>(1000.0);
        Elastic::new(Pressure::from_exact(modulus), poisson / 1e9, density)
    };
    let mut of = joint::Seat::new(
        stuff(seat.hub_modulus.0, seat.hub_poisson.0),
        stuff(seat.spindle_modulus.0, seat.spindle_poisson.0),
        length(seat.small_diameter.0),
        seat.taper.0 / 1e9,
        length(seat.length.0),
        length(seat.hub_diameter.0),
        length(seat.nut_diameter.0),
    )
    .with_spindle_bore(length(or_none(seat.spindle_bore.0)))
    .with_overhangs(length(or_none(seat.overhang_small.0)), length(or_none(seat.overhang_large.0)));
    if seat.step_from.given() {
        of = of.with_step(length(seat.step_from.0), length(seat.step_diameter.0));
    }
    of.solve(seat.friction.0 / 1e9).ok()
}

/// The seat of a mounting under its nut; `None` where its figures make no seat that can be solved.
///
/// Everything that it needs has to be given; it looks at that no more.
#[inline(never)]
pub(crate) fn pushed(f: &Facts) -> Option<Pushed> {
    let seat = &f.seat;
    let key = key(seat);
    let (force, mismatch) =
        (Force::from_exact(seat.nut_force.0), Angle::from_exact(seat.mismatch.0));
    KNOWN.with_borrow_mut(|known| {
        let found = match known.iter().position(|(of, _)| *of == key) {
            Some(at) => known.swap_remove_front(at)?,
            None => (key, solve(seat)),
        };
        let pushed = found.1.as_ref().and_then(|seat| seat.push(force, mismatch).ok());
        known.push_front(found);
        known.truncate(KEPT);
        pushed
    })
}
