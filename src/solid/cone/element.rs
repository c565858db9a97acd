//! Stiffness of one quadrilateral of nine nodes that goes round the axis.

use std::f64::consts::PI;

/// A modulus and Poisson's ratio as Lamé's two constants.
#[derive(Clone, Copy)]
pub(super) struct Lame {
    lambda: f64,
    shear: f64,
}

impl Lame {
    pub fn of(modulus: f64, poisson: f64) -> Self {
        let shear = modulus / (2.0 * (1.0 + poisson));
        Self { lambda: 2.0 * shear * poisson / (1.0 - 2.0 * poisson), shear }
    }
}

/// Points and weights of Gauss's rule of three on -1 to 1.
pub(crate) const GAUSS: [(f64, f64); 3] =
    [(-0.774_596_669_241_483_4, 5.0 / 9.0), (0.0, 8.0 / 9.0), (0.774_596_669_241_483_4, 5.0 / 9.0)];

/// The three parabolas of a line's nodes at a point from -1 to 1.
pub(super) fn shape(at: f64) -> [f64; 3] {
    [at * (at - 1.0) / 2.0, 1.0 - at * at, at * (at + 1.0) / 2.0]
}

fn slope(at: f64) -> [f64; 3] {
    [at - 0.5, -2.0 * at, at + 0.5]
}

/// Stiffness between displacements along and across of every two nodes.
///
/// `corners` are place and radius at both ends of the first line, then of the last; the edges
/// between them are straight.
pub(super) fn stiffness(corners: [[f64; 2]; 4], of: Lame) -> [[f64; 18]; 18] {
    let (l, g) = (of.lambda, of.shear);
    let p = l + 2.0 * g;
    // Along-along, along-across, across-along, across-across, by pair of nodes.
    let mut sums = [[[0.0; 9]; 9]; 4];
    for (u, weight_u) in GAUSS {
        for (v, weight_v) in GAUSS {
            let ends = |at: f64| [(1.0 - at) / 2.0, (1.0 + at) / 2.0];
            let (along, up) = (ends(u), ends(v));
            let (mut jacobian, mut radius) = ([[0.0; 2]; 2], 0.0);
            for (corner, place) in corners.iter().enumerate() {
                let (a, b) = (corner / 2, corner % 2);
                let (sign_a, sign_b) = (a as f64 - 0.5, b as f64 - 0.5);
                for axis in 0..2 {
                    jacobian[0][axis] += sign_a * up[b] * place[axis];
                    jacobian[1][axis] += along[a] * sign_b * place[axis];
                }
                radius += along[a] * up[b] * place[1];
            }
            let [[xu, ru], [xv, rv]] = jacobian;
            let det = xu * rv - ru * xv;
            let weight = 2.0 * PI * radius * det.abs() * weight_u * weight_v;
            let (nu, nv, du, dv) = (shape(u), shape(v), slope(u), slope(v));
            let [mut x, mut r, mut h] = [[0.0; 9]; 3];
            for node in 0..9 {
                let (a, b) = (node / 3, node % 3);
                let (by_u, by_v) = (du[a] * nv[b], nu[a] * dv[b]);
                x[node] = (rv * by_u - ru * by_v) / det;
                r[node] = (xu * by_v - xv * by_u) / det;
                h[node] = nu[a] * nv[b] / radius;
            }
            for a in 0..9 {
                let [xa, ra, ha] = [x[a], r[a], h[a]].map(|value| value * weight);
                for b in 0..9 {
                    sums[0][a][b] += p * xa * x[b] + g * ra * r[b];
                    sums[1][a][b] += l * xa * (r[b] + h[b]) + g * ra * x[b];
                    sums[2][a][b] += l * (ra + ha) * x[b] + g * xa * r[b];
                    sums[3][a][b] +=
                        (p * ra + l * ha) * r[b] + (p * ha + l * ra) * h[b] + g * xa * x[b];
                }
            }
        }
    }
    std::array::from_fn(|i| std::array::from_fn(|j| sums[i % 2 * 2 + j % 2][i / 2][j / 2]))
}
