//! Normal and Student's distribution, as far as measuring needs them.

use std::f64::consts::PI;

/// Height of the standard normal distribution at `z`.
pub fn density(z: f64) -> f64 {
    (-0.5 * z * z).exp() / (2.0 * PI).sqrt()
}

/// Share of the standard normal distribution below `z`.
///
/// Near the middle by the series `½ + φ(z) (z + z³/3 + z⁵/15 + …)`, in the tails by the
/// continued fraction `φ(z) / (z + 1 / (z + 2 / (z + …)))`; good to fourteen digits.
///
/// # Source
///
/// Abramowitz and Stegun, *Handbook of Mathematical Functions*, 26.2.11 and 26.2.14, from memory.
pub fn normal(z: f64) -> f64 {
    if z.is_nan() {
        return f64::NAN;
    }
    let x = z.abs();
    if x > 38.0 {
        return if z < 0.0 { 0.0 } else { 1.0 };
    }
    if x < 4.0 {
        let (mut term, mut sum, mut k) = (x, x, 1.0);
        while term > 1e-17 * sum {
            k += 2.0;
            term *= x * x / k;
            sum += term;
        }
        let half = density(x) * sum;
        return if z < 0.0 { 0.5 - half } else { 0.5 + half };
    }
    let fraction = (1..=120).rev().fold(x, |below, k| x + f64::from(k) / below);
    let tail = density(x) / fraction;
    if z < 0.0 { tail } else { 1.0 - tail }
}

/// The `z` below which a share of the standard normal distribution lies; NaN outside 0 to 1.
pub fn normal_quantile(share: f64) -> f64 {
    if !(share > 0.0 && share < 1.0) {
        return f64::NAN;
    }
    // The lower half keeps small shares exact.
    if share > 0.5 {
        return -normal_quantile(1.0 - share);
    }
    halving([-38.0, 0.0], |z| normal(z) < share)
}

/// Where a condition that holds at the low end stops holding.
fn halving([mut low, mut high]: [f64; 2], holds: impl Fn(f64) -> bool) -> f64 {
    for _ in 0..200 {
        let middle = (low + high) / 2.0;
        if middle <= low || middle >= high {
            break;
        }
        if holds(middle) { low = middle } else { high = middle }
    }
    (low + high) / 2.0
}

/// The coverage factor that encloses, with so many degrees of freedom, the share that `k`
/// encloses of a normal distribution; `k` itself for infinitely many.
///
/// # Source
///
/// JCGM 100, annex G, from memory: Student's distribution.
pub fn coverage(k: f64, dof: f64) -> f64 {
    // Beyond this the two differ by less than a millionth.
    if dof.is_nan() || dof >= 1e7 {
        return k;
    }
    let outside = 2.0 * normal(-k);
    halving([0.0, 1e9], |t| student_outside(t, dof) > outside)
}

/// Share of Student's distribution outside of ±t.
fn student_outside(t: f64, dof: f64) -> f64 {
    beta_share(dof / (dof + t * t), dof / 2.0, 0.5)
}

/// The incomplete beta function as a share of the whole one, by its continued fraction.
fn beta_share(x: f64, a: f64, b: f64) -> f64 {
    if x <= 0.0 {
        return 0.0;
    }
    if x >= 1.0 {
        return 1.0;
    }
    // The fraction converges fast on one side only.
    if x > (a + 1.0) / (a + b + 2.0) {
        return 1.0 - beta_share(1.0 - x, b, a);
    }
    let front =
        (ln_gamma(a + b) - ln_gamma(a) - ln_gamma(b) + a * x.ln() + b * (1.0 - x).ln()).exp() / a;
    let away = |v: f64| if v.abs() < 1e-300 { 1e-300 } else { v };
    let (mut c, mut d) = (1.0, 1.0 / away(1.0 - (a + b) * x / (a + 1.0)));
    let mut fraction = d;
    for m in 1..=500 {
        let m = f64::from(m);
        for term in [
            m * (b - m) * x / ((a + 2.0 * m - 1.0) * (a + 2.0 * m)),
            -(a + m) * (a + b + m) * x / ((a + 2.0 * m) * (a + 2.0 * m + 1.0)),
        ] {
            d = 1.0 / away(1.0 + term * d);
            c = away(1.0 + term / c);
            fraction *= c * d;
        }
        if (c * d - 1.0).abs() < 1e-16 {
            break;
        }
    }
    front * fraction
}

/// Logarithm of the gamma function above zero, by Stirling's series.
fn ln_gamma(x: f64) -> f64 {
    // The series is good from about 10 on.
    let (mut x, mut product) = (x, 1.0);
    while x < 12.0 {
        product *= x;
        x += 1.0;
    }
    let r = 1.0 / (x * x);
    let series =
        (1.0 / 12.0 - r * (1.0 / 360.0 - r * (1.0 / 1260.0 - r * (1.0 / 1680.0 - r / 1188.0)))) / x;
    (x - 0.5) * x.ln() - x + 0.5 * (2.0 * PI).ln() + series - product.ln()
}
