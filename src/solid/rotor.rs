//! Rigid rotors in one plane: unbalance as a vector, what it pulls with, and how readings find it.

use std::f64::consts::{PI, TAU};

use crate::source::{Source, Status};
use crate::units::{
    Angle, AngularVelocity, Force, Unbalance, kilogram_meter, newton, radian, radian_per_second,
};

/// Mechanics of a rigid rotor.
pub const ROTOR: Source = Source::new(
    "rigid-rotor",
    "statics of a rigid rotor in one plane (texts on balancing)",
    "",
    "",
    Status::Computed,
);

/// Two numbers: along the mark that angles are counted from, and a quarter turn on.
pub(crate) type Pair = [f64; 2];

#[inline]
pub(crate) fn polar(size: f64, angle: f64) -> Pair {
    [size * angle.cos(), size * angle.sin()]
}

#[inline]
pub(crate) fn size([x, y]: Pair) -> f64 {
    x.hypot(y)
}

/// An angle from 0 up to, but not, a whole turn.
#[inline]
pub(crate) fn turned(angle: f64) -> f64 {
    let angle = angle.rem_euclid(TAU);
    // A tiny negative angle is rounded to a whole turn.
    if angle >= TAU { 0.0 } else { angle }
}

/// An unbalance with the angle it lies at, counted from a mark on the rotor, always the same way round.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct UnbalanceVector {
    /// How much.
    pub amount: Unbalance,
    /// Where it is heavy.
    pub angle: Angle,
}

impl UnbalanceVector {
    /// An unbalance at an angle.
    pub fn new(amount: Unbalance, angle: Angle) -> Self {
        Self { amount, angle }
    }

    pub(crate) fn of(pair: Pair) -> Self {
        let angle = if size(pair) > 0.0 { turned(pair[1].atan2(pair[0])) } else { 0.0 };
        Self {
            amount: Unbalance::new::<kilogram_meter>(size(pair)),
            angle: Angle::new::<radian>(angle),
        }
    }

    pub(crate) fn pair(self) -> Pair {
        polar(self.amount.get::<kilogram_meter>(), self.angle.get::<radian>())
    }

    /// Both together.
    #[must_use]
    pub fn with(self, other: Self) -> Self {
        let ([a, b], [c, d]) = (self.pair(), other.pair());
        Self::of([a + c, b + d])
    }

    /// As much on the other side: what balances it.
    #[must_use]
    pub fn opposite(self) -> Self {
        let angle = turned(self.angle.get::<radian>() + PI);
        Self { angle: Angle::new::<radian>(angle), ..self }
    }
}

/// Force that turns with an unbalance: `F = U ω²`. What resonance adds is not in it.
///
/// ```
/// use hubwright::solid::rotor::turning_force;
/// use hubwright::units::{AngularVelocity, Unbalance, gram_millimeter, newton, radian_per_second};
///
/// let force = turning_force(
///     Unbalance::new::<gram_millimeter>(100.0),
///     AngularVelocity::new::<radian_per_second>(300.0),
/// );
/// assert!((force.get::<newton>() - 9.0).abs() < 1e-12);
/// ```
pub fn turning_force(amount: Unbalance, speed: AngularVelocity) -> Force {
    let w = speed.get::<radian_per_second>();
    Force::new::<newton>(amount.get::<kilogram_meter>() * w * w)
}

/// `m G / ω`: the unbalance with which the centre of a mass goes round at `G`.
#[inline(always)]
pub(crate) fn permissible(mass: f64, grade: f64, speed: f64) -> f64 {
    mass * grade / speed
}

/// First moment about the axis of what a slot in a bore takes away, per length: everything from the
/// bore to a flat bottom, `b (2 R t + t²) / 2 + b³ / 24`, with `t` the depth at the middle.
#[inline]
pub(crate) fn bore_slot(radius: f64, width: f64, depth: f64) -> f64 {
    width * (2.0 * radius * depth + depth * depth) / 2.0 + width.powi(3) / 24.0
}

/// The same of a slot in a shaft: `b (2 R t − t²) / 2 − b³ / 24`.
#[inline]
pub(crate) fn shaft_slot(radius: f64, width: f64, depth: f64) -> f64 {
    width * (2.0 * radius * depth - depth * depth) / 2.0 - width.powi(3) / 24.0
}

/// Where equal weights balance an unbalance, as angles from its light side, and what is left over.
///
/// Two: `± acos(U / 2w)`. Three: one on the light side, two at `± acos((U / w − 1) / 2)`. One pulls
/// with `w` and nothing else.
pub(crate) fn spread(count: usize, unbalance: f64, weight: f64) -> (Vec<f64>, f64) {
    let share = unbalance / weight;
    match count {
        0 => (Vec::new(), unbalance),
        1 => (vec![0.0], (unbalance - weight).abs()),
        2 => {
            let half = (share / 2.0).min(1.0).acos();
            (vec![-half, half], (unbalance - 2.0 * weight).max(0.0))
        }
        _ => {
            let half = ((share - 1.0) / 2.0).clamp(-1.0, 1.0).acos();
            (vec![-half, 0.0, half], (unbalance - 3.0 * weight).max(0.0))
        }
    }
}

/// Solves three equations by elimination; `None` where they say less than three things.
fn three(mut a: [[f64; 4]; 3]) -> Option<[f64; 3]> {
    for at in 0..3 {
        let best = (at..3).max_by(|i, j| a[*i][at].abs().total_cmp(&a[*j][at].abs()))?;
        a.swap(at, best);
        let pivot = a[at];
        if pivot[at].abs() < 1e-9 {
            return None;
        }
        for row in a.iter_mut().skip(at + 1) {
            let share = row[at] / pivot[at];
            for (value, above) in row.iter_mut().zip(pivot) {
                *value -= share * above;
            }
        }
    }
    let z = a[2][3] / a[2][2];
    let y = (a[1][3] - a[1][2] * z) / a[1][1];
    Some([(a[0][3] - a[0][1] * y - a[0][2] * z) / a[0][0], y, z])
}

/// What the readings of trial runs say: response to the trial weight from the mean square, and as a
/// vector from their differences. `None` where the trial angles are too near to one another.
///
/// `A_i² − A0² = T² + 2 A0 T cos(θ_i − φ)`, linear in `T²`, `2 A0 T cos φ` and `2 A0 T sin φ`.
pub(crate) fn from_readings(base: f64, trials: &[Pair]) -> Option<(f64, Pair)> {
    let mut sums = [[0.0; 4]; 3];
    for [reading, angle] in trials {
        let row =
            [1.0, angle.cos(), angle.sin(), (reading * reading - base * base) / (base * base)];
        for (sum, left) in sums.iter_mut().zip(row) {
            for (value, right) in sum.iter_mut().zip(row) {
                *value += left * right;
            }
        }
    }
    let [square, x, y] = three(sums)?;
    Some((square * base * base, [x * base / 2.0, y * base / 2.0]))
}

/// Both answers that two trial runs leave: the response to the trial weight as a vector. `None` where
/// the trial angles are the same, empty where no unbalance gives such readings.
pub(crate) fn from_two(base: f64, [first, second]: [Pair; 2]) -> Option<Vec<Pair>> {
    let [c1, c2] = [first, second].map(|[reading, _]| reading * reading - base * base);
    let [a, b] = [first, second].map(|[_, angle]| polar(1.0, angle));
    let (apart, sum) = ([a[0] - b[0], a[1] - b[1]], [a[0] + b[0], a[1] + b[1]]);
    let length = size(apart);
    if length < 1e-4 {
        return None;
    }
    let along = [apart[0] / length, apart[1] / length];
    let across = [-along[1], along[0]];
    // Sum and difference of two unit vectors are square to each other.
    let known = (c1 - c2) / (2.0 * base * length);
    let lean = across[0] * sum[0] + across[1] * sum[1];
    let root = (base * lean / 2.0).powi(2) - known * known + f64::midpoint(c1, c2);
    // Where the two answers meet, rounding alone may bring it below zero.
    if root < -1e-12 * base * base {
        return Some(Vec::new());
    }
    let root = root.max(0.0);
    let answer = |sign: f64| {
        let free = -base * lean / 2.0 + sign * root.sqrt();
        [0, 1].map(|at| known * along[at] + free * across[at])
    };
    Some(vec![answer(1.0), answer(-1.0)])
}

/// The baseline and the response that fit all readings best, by least squares from a first guess, and
/// the root of the mean square of what is left of them.
pub(crate) fn fitted(base: f64, trials: &[Pair], guess: Pair) -> (f64, Pair, f64) {
    let left = |[a, p, q]: [f64; 3]| -> Vec<([f64; 3], f64)> {
        let mut rows = vec![([1.0, 0.0, 0.0], a - base)];
        rows.extend(trials.iter().map(|[reading, angle]| {
            let [c, s] = polar(1.0, *angle);
            let along = [a + p * c + q * s, p + a * c, q + a * s];
            // |a + response turned by the trial's angle|: its parts along and across that.
            let length = (a * a + p * p + q * q + 2.0 * a * (p * c + q * s)).max(0.0).sqrt();
            let slope = if length > 0.0 { along.map(|part| part / length) } else { [0.0; 3] };
            (slope, length - reading)
        }));
        rows
    };
    let squares = |rows: &[([f64; 3], f64)]| rows.iter().map(|(_, r)| r * r).sum::<f64>();
    let (mut at, mut damping) = ([base, guess[0], guess[1]], 1e-6);
    let mut rows = left(at);
    for _ in 0..200 {
        let mut normal = [[0.0; 4]; 3];
        for (slope, rest) in &rows {
            let row = [slope[0], slope[1], slope[2], -rest / base];
            for (sum, lefthand) in normal.iter_mut().zip(slope) {
                for (value, right) in sum.iter_mut().zip(row) {
                    *value += lefthand * right;
                }
            }
        }
        for (place, row) in normal.iter_mut().enumerate() {
            row[place] += damping;
        }
        let Some(step) = three(normal) else { break };
        let next = [0, 1, 2].map(|i| at[i] + step[i] * base);
        let tried = left(next);
        if squares(&tried) <= squares(&rows) {
            (at, rows, damping) = (next, tried, (damping / 10.0).max(1e-12));
            if step.iter().all(|part| part.abs() < 1e-14) {
                break;
            }
        } else {
            damping *= 10.0;
        }
    }
    let spread = (squares(&rows) / rows.len() as f64).sqrt();
    (at[0], [at[1], at[2]], spread)
}
