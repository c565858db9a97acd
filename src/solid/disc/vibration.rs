//! Natural frequencies and standing waves by elements along the radius.
//!
//! Every question here is the same: the least `x` above zero at which `K − x A` stops being positive
//! definite, with `K` the stiffness. It is found by halving, each time by the signs in `D` of
//! `L D Lᵀ`, which count exactly: no start is guessed and nothing can fail to converge.

use super::InPlane;

const ELEMENTS: usize = 8;
/// Deflection and slope at every node but the clamped one.
const SIZE: usize = 2 * ELEMENTS;
/// Entries of a row from the diagonal to its left.
const BAND: usize = 4;
/// Gauss points and weights on 0 to 1, exact for polynomials of the eleventh degree.
const GAUSS: [[f64; 2]; 6] = [
    [0.033_765_242_898_423_99, 0.085_662_246_189_585_17],
    [0.169_395_306_766_867_74, 0.180_380_786_524_069_3],
    [0.380_690_406_958_401_55, 0.233_956_967_286_345_52],
    [0.619_309_593_041_598_5, 0.233_956_967_286_345_52],
    [0.830_604_693_233_132_2, 0.180_380_786_524_069_3],
    [0.966_234_757_101_576, 0.085_662_246_189_585_17],
];

/// Lower band of a symmetric matrix: `row[BAND − 1]` is on the diagonal.
type Band = [[f64; BAND]; SIZE];

/// Stiffness by bending, stiffness by a rotation of one, and mass.
struct Matrices {
    bending: Band,
    turning: Band,
    mass: Band,
}

/// Radial and hoop stress at `r` in units of `ρ Ω² a²`, the rim being free.
fn stress(r: f64, ratio: f64, nu: f64, in_plane: InPlane) -> [f64; 2] {
    let (k, hoop) = ((3.0 + nu) / 8.0, (1.0 + 3.0 * nu) / 8.0);
    // σr = even + odd / r² − k r² and σθ = even − odd / r² − hoop r², with even + odd = k.
    let odd = match in_plane {
        InPlane::FreeAtClamp => -k * ratio * ratio,
        InPlane::FreeAtBore(bore) => -k * bore * bore,
        InPlane::Held => {
            let b2 = ratio * ratio;
            let even =
                ((1.0 - nu * nu) * b2 / 8.0 + k * (1.0 + nu) / b2) / ((1.0 - nu) + (1.0 + nu) / b2);
            k - even
        }
    };
    let (even, swing) = (k - odd, odd / (r * r));
    [even + swing - k * r * r, even - swing - hoop * r * r]
}

fn assemble(ratio: f64, nu: f64, nodes: usize, in_plane: InPlane) -> Matrices {
    let n = nodes as f64;
    let zero = [[0.0; BAND]; SIZE];
    let mut all = Matrices { bending: zero, turning: zero, mass: zero };
    let radius = |at: usize| ratio.powf(1.0 - at as f64 / ELEMENTS as f64);
    for element in 0..ELEMENTS {
        let (from, long) = (radius(element), radius(element + 1) - radius(element));
        for [s, weight] in GAUSS {
            let r = from + s * long;
            let value = [
                1.0 + s * s * (2.0 * s - 3.0),
                long * s * (1.0 - s) * (1.0 - s),
                s * s * (3.0 - 2.0 * s),
                long * s * s * (s - 1.0),
            ];
            let slope = [
                6.0 * s * (s - 1.0) / long,
                1.0 + s * (3.0 * s - 4.0),
                6.0 * s * (1.0 - s) / long,
                s * (3.0 * s - 2.0),
            ];
            let bend = [
                (12.0 * s - 6.0) / (long * long),
                (6.0 * s - 4.0) / long,
                (6.0 - 12.0 * s) / (long * long),
                (6.0 * s - 2.0) / long,
            ];
            let around: [f64; 4] =
                std::array::from_fn(|i| slope[i] / r - n * n * value[i] / (r * r));
            let twist: [f64; 4] = std::array::from_fn(|i| n * (slope[i] / r - value[i] / (r * r)));
            let [radial, hoop] = stress(r, ratio, nu, in_plane);
            let area = weight * long * r;
            // The first node is clamped: its two rows are left out.
            let skip = if element == 0 { 2 } else { 0 };
            for i in skip..4 {
                let row = 2 * element + i - 2;
                for j in skip..=i {
                    let at = BAND - 1 - (i - j);
                    let bending = bend[i] * bend[j]
                        + around[i] * around[j]
                        + nu * (bend[i] * around[j] + around[i] * bend[j])
                        + 2.0 * (1.0 - nu) * twist[i] * twist[j];
                    let turning =
                        radial * slope[i] * slope[j] + hoop * n * n * value[i] * value[j] / (r * r);
                    all.bending[row][at] += area * bending;
                    all.turning[row][at] += area * turning;
                    all.mass[row][at] += area * value[i] * value[j];
                }
            }
        }
    }
    all
}

/// `a + by · b`.
fn plus(a: &Band, by: f64, b: &Band) -> Band {
    std::array::from_fn(|row| std::array::from_fn(|at| a[row][at] + by * b[row][at]))
}

/// Whether all of `D` in `L D Lᵀ` is above zero.
fn positive_definite(mut band: Band) -> bool {
    for k in 0..SIZE {
        let pivot = band[k][BAND - 1];
        // Also what is no number is no stiffness.
        if pivot <= 0.0 || pivot.is_nan() {
            return false;
        }
        for i in k + 1..SIZE.min(k + BAND) {
            let by = band[i][BAND - 1 - (i - k)] / pivot;
            for j in k + 1..=i {
                band[i][BAND - 1 - (i - j)] -= by * band[j][BAND - 1 - (j - k)];
            }
        }
    }
    true
}

/// Least `x` in `(0, most]` at which `stiffness − x · against` stops being positive definite.
fn lowest(stiffness: &Band, against: &Band, most: f64) -> Option<f64> {
    let holds = |x: f64| positive_definite(plus(stiffness, -x, against));
    if holds(most) {
        return None;
    }
    let (mut low, mut high) = (most, most);
    // What breaks at `x` stays broken above it, so that steps down find where it still holds.
    while !holds(low) {
        high = low;
        low /= 16.0;
        if low < f64::MIN_POSITIVE {
            return None;
        }
    }
    while high - low > 1e-13 * high {
        let middle = 0.5 * (low + high);
        if middle <= low || middle >= high {
            break;
        }
        if holds(middle) { low = middle } else { high = middle }
    }
    Some(0.5 * (low + high))
}

pub(super) fn frequency(ratio: f64, nu: f64, nodes: usize, spin: f64, in_plane: InPlane) -> f64 {
    let Matrices { bending, turning, mass } = assemble(ratio, nu, nodes, in_plane);
    let stiffness = plus(&bending, spin * spin, &turning);
    // The mass is positive definite, so that it always breaks somewhere: one vector's quotient is above it.
    let rim = SIZE - 2;
    let most = stiffness[rim][BAND - 1] / mass[rim][BAND - 1];
    lowest(&stiffness, &mass, most).map_or(f64::NAN, f64::sqrt)
}

pub(super) fn critical(ratio: f64, nu: f64, in_plane: InPlane) -> Option<(f64, usize)> {
    let last = 24.0_f64.max((4.0 / (1.0 - ratio)).ceil()) as usize;
    let mut best: Option<(f64, usize)> = None;
    // Any speed above the best one so far is of no interest; a million times the clamp's own scale is past all.
    let mut most = 1e6 / (1.0 - ratio).powi(4);
    for nodes in 2..=last {
        let Matrices { bending, turning, mass } = assemble(ratio, nu, nodes, in_plane);
        // ωₙ² = n² Ω² where (K + Ω² G) v = n² Ω² M v: K against n² M − G.
        let against = plus(&turning, -((nodes * nodes) as f64), &mass);
        let against = against.map(|row| row.map(|entry| -entry));
        if let Some(found) = lowest(&bending, &against, most) {
            best = Some((found.sqrt(), nodes));
            most = found;
        }
    }
    best
}
