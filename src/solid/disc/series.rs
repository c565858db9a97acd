//! Side loads on the rim: exact waves, four equations each.

use std::f64::consts::PI;

use super::ClampedDisc;

/// One of the four shapes of a wave, `scale · r^power`, or `r^power · ln r`.
#[derive(Clone, Copy)]
struct Shape {
    power: f64,
    scale: f64,
    log: bool,
}

impl Shape {
    /// Its value and its first three derivatives.
    fn at(self, r: f64) -> [f64; 4] {
        let p = self.power;
        let falling = [1.0, p, p * (p - 1.0), p * (p - 1.0) * (p - 2.0)];
        if !self.log {
            return std::array::from_fn(|k| self.scale * falling[k] * r.powf(p - k as f64));
        }
        // (r^p ln r)⁽ᵏ⁾ = r^(p−k) (cₖ ln r + dₖ), dₖ₊₁ = (p − k) dₖ + cₖ.
        let mut tail = 0.0;
        std::array::from_fn(|k| {
            let value = r.powf(p - k as f64) * (falling[k] * r.ln() + tail);
            tail = (p - k as f64) * tail + falling[k];
            value
        })
    }
}

fn shapes(n: usize, ratio: f64) -> [Shape; 4] {
    let plain = |power| Shape { power, scale: 1.0, log: false };
    let log = |power| Shape { power, scale: 1.0, log: true };
    // Scaled to one at the clamp, so that a high power of a small ratio overflows nothing.
    let inner = |power: f64| Shape { power, scale: ratio.powf(-power), log: false };
    let order = n as f64;
    match n {
        0 => [plain(0.0), plain(2.0), log(0.0), log(2.0)],
        1 => [plain(1.0), plain(3.0), plain(-1.0), log(1.0)],
        _ => [plain(order), plain(order + 2.0), inner(-order), inner(2.0 - order)],
    }
}

/// Solves four equations by elimination, each time with the largest of its column; rows are scaled first.
fn solve(mut rows: [[f64; 5]; 4]) -> [f64; 4] {
    for row in &mut rows {
        let most = row[..4].iter().fold(0.0_f64, |most, entry| most.max(entry.abs()));
        row.iter_mut().for_each(|entry| *entry /= most);
    }
    for k in 0..4 {
        let best = (k..4).max_by(|a, b| rows[*a][k].abs().total_cmp(&rows[*b][k].abs()));
        rows.swap(k, best.unwrap_or(k));
        let pivot = rows[k];
        for row in &mut rows[k + 1..] {
            let by = row[k] / pivot[k];
            row.iter_mut().zip(pivot).for_each(|(entry, above)| *entry -= by * above);
        }
    }
    let mut found = [0.0; 4];
    for k in (0..4).rev() {
        let rest: f64 = (k + 1..4).map(|j| rows[k][j] * found[j]).sum();
        found[k] = (rows[k][4] - rest) / rows[k][k];
    }
    found
}

/// Shear at the rim and moment at the clamp of the wave `n` whose deflection at the rim is one, both
/// positive, over `D`.
fn wave(n: usize, ratio: f64, nu: f64) -> [f64; 2] {
    let n2 = (n * n) as f64;
    let shapes = shapes(n, ratio);
    let (clamp, rim) = (shapes.map(|shape| shape.at(ratio)), shapes.map(|shape| shape.at(1.0)));
    let moment = |w: [f64; 4]| w[2] + nu * (w[1] - n2 * w[0]);
    let shear = |w: [f64; 4]| {
        let curl = w[3] + w[2] - w[1] - n2 * (w[1] - 2.0 * w[0]);
        curl - (1.0 - nu) * n2 * (w[1] - w[0])
    };
    let row = |of: &dyn Fn(usize) -> f64, right| [of(0), of(1), of(2), of(3), right];
    let found = solve([
        row(&|k| clamp[k][0], 0.0),
        row(&|k| clamp[k][1], 0.0),
        row(&|k| moment(rim[k]), 0.0),
        row(&|k| rim[k][0], 1.0),
    ]);
    let sum = |of: &dyn Fn(usize) -> f64| (0..4).map(|k| found[k] * of(k)).sum::<f64>();
    [sum(&|k| shear(rim[k])).abs(), sum(&|k| clamp[k][2]).abs()]
}

/// The series, its parameters checked.
pub(super) fn sum(ratio: f64, nu: f64) -> ClampedDisc {
    let last = 24.0_f64.max((10.0 / (1.0 - ratio)).ceil()) as usize;
    let [shear, moment] = wave(0, ratio, nu);
    let (ring_deflection, ring_moment) = (1.0 / (2.0 * PI * shear), moment / (2.0 * PI * shear));
    let (mut deflection, mut at_clamp, mut term) = (ring_deflection, ring_moment, 0.0);
    for n in 1..=last {
        let [shear, moment] = wave(n, ratio, nu);
        term = 1.0 / (PI * shear);
        deflection += term;
        at_clamp += moment * term;
    }
    // The terms fall as n⁻³; those of the moment die out much faster and need no more.
    deflection += term * (last as f64 - 1.0) / 2.0;
    ClampedDisc {
        point_deflection: deflection,
        ring_deflection,
        point_moment: at_clamp,
        ring_moment,
    }
}
