//! The thin wheels of mountings, solved once for every geometry.
//!
//! A rule on a thin wheel needs a series or some thousand eliminations. As with
//! [`seats`](super::seats), each thread keeps the last geometries it solved; what
//! depends on load, modulus and density is multiplied in afterwards.

use std::cell::RefCell;
use std::collections::VecDeque;

use crate::solid::clamped_disc;
use crate::wheel::thin::standing;

/// Geometries kept by each thread.
const KEPT: usize = 64;

type Known<const N: usize> = RefCell<VecDeque<([u64; N], Option<f64>)>>;

thread_local! {
    static MOMENTS: Known<2> = const { RefCell::new(VecDeque::new()) };
    static STANDING: Known<3> = const { RefCell::new(VecDeque::new()) };
}

fn kept<const N: usize>(
    known: &Known<N>,
    of: [f64; N],
    solve: impl FnOnce() -> Option<f64>,
) -> Option<f64> {
    let key = of.map(f64::to_bits);
    let mut known = known.borrow_mut();
    let at = known.iter().position(|(of, _)| *of == key);
    let found = at.and_then(|at| known.swap_remove_front(at)).unwrap_or_else(|| (key, solve()));
    known.push_front(found);
    known.truncate(KEPT);
    found.1
}

/// Bending moment per length at the edge of the support over a load on one point of the rim.
#[inline(never)]
pub(crate) fn moment(ratio: f64, poisson: f64) -> Option<f64> {
    let solve = || clamped_disc(ratio, poisson).ok().map(|found| found.point_moment);
    MOMENTS.with(|known| kept(known, [ratio, poisson], solve))
}

/// Least speed at which a wave may stand, in the wheel's own unit.
#[inline(never)]
pub(crate) fn least_standing(ratio: f64, poisson: f64, bore: f64) -> Option<f64> {
    let solve = || standing(ratio, poisson, bore).ok().flatten().map(|(_, _, least, _)| least);
    STANDING.with(|known| kept(known, [ratio, poisson, bore], solve))
}
