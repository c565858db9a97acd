//! The rings in bare SI numbers, and the equations of the pressures between them.

use super::{Held, Point, Ring};
use crate::error::{Error, ErrorKind};
use crate::units::{
    Length, Pressure, finite, gigapascal, kelvin, kilogram_per_cubic_meter, meter, pascal,
    per_kelvin, positive_length, shown_mm,
};

/// A ring in SI units.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Body {
    a: f64,
    b: f64,
    modulus: f64,
    poisson: f64,
    density: f64,
    /// `α ΔT`.
    strain: f64,
}

/// What acts on a ring: `ω²` and the pressures on both sides.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Load {
    pub(super) spin: f64,
    pub(super) inside: f64,
    pub(super) outside: f64,
}

/// Hoop stress at the bore of a free ring that turns, `ρ ω² / 4 [(3 + ν) b² + (1 - ν) a²]`; at
/// the centre of a solid disc half of what a pin-hole would have.
#[inline(always)]
pub(crate) fn hoop_at_bore(a: f64, b: f64, poisson: f64, density: f64, spin: f64) -> f64 {
    let ring = density * spin / 4.0 * ((3.0 + poisson) * b * b + (1.0 - poisson) * a * a);
    if a == 0.0 { ring / 2.0 } else { ring }
}

impl Body {
    pub(super) fn of(ring: &Ring, inside: Length, name: &str, wanted: &str) -> Result<Self, Error> {
        ring.material.check(name)?;
        let diameter = format!("{name}.diameter");
        let b = positive_length(&diameter, ring.diameter)? / 2.0;
        let a = inside.get::<meter>() / 2.0;
        if b <= a || b > 1e3 {
            let (above, given) = (shown_mm(inside), shown_mm(ring.diameter));
            return Err(ErrorKind::OutOfRange {
                argument: diameter,
                given,
                range: if b > a { "above 2000000".into() } else { format!("not above {above}") },
                unit: "mm",
                authority: String::new(),
                hint: format!("each ring is larger than what is inside it, here {wanted}"),
            }
            .into());
        }
        let rise = ring.rise.get::<kelvin>();
        finite(&format!("{name}.rise"), rise, "25 K")?;
        let strain = match ring.material.expansion {
            Some(expansion) => expansion.get::<per_kelvin>() * rise,
            None if rise == 0.0 => 0.0,
            None => {
                return Err(ErrorKind::Missing {
                    argument: format!("{name}.expansion"),
                    why: "the ring gets warmer by an unknown expansion".into(),
                    hint: "give the material its thermal expansion, like \"11.5 um/m/K\"".into(),
                }
                .into());
            }
        };
        Ok(Self {
            a,
            b,
            modulus: ring.material.modulus.get::<gigapascal>() * 1e9,
            poisson: ring.material.poisson,
            density: ring.material.density.get::<kilogram_per_cubic_meter>(),
            strain,
        })
    }

    /// `b² - a²`, without losing the digits of a thin ring.
    fn squares(&self) -> f64 {
        (self.b - self.a) * (self.b + self.a)
    }

    /// Radial and hoop stress at a radius.
    fn stress(&self, r: f64, load: Load) -> [f64; 2] {
        let Self { a, b, poisson: nu, .. } = *self;
        let k = (3.0 + nu) / 8.0 * self.density * load.spin;
        let tail = (1.0 + 3.0 * nu) / (3.0 + nu) * r * r;
        if a == 0.0 {
            // A solid disc: nothing presses from inside, and nothing is divided by r.
            return [k * (b * b - r * r) - load.outside, k * (b * b - tail) - load.outside];
        }
        let even = (load.inside * a * a - load.outside * b * b) / self.squares();
        let odd = (load.inside - load.outside) * (a * b) * (a * b) / self.squares();
        let (mean, swing) = (k * (a * a + b * b), k * (a * b / r) * (a * b / r));
        [
            even - odd / (r * r) + mean - swing - k * r * r,
            even + odd / (r * r) + mean + swing - k * tail,
        ]
    }

    pub(super) fn point(&self, diameter: Length, load: Load) -> Point {
        let r = diameter.get::<meter>() / 2.0;
        let [radial, hoop] = self.stress(r, load);
        let outwards = r / self.modulus * (hoop - self.poisson * radial) + r * self.strain;
        Point {
            diameter,
            radial: Pressure::new::<pascal>(radial),
            hoop: Pressure::new::<pascal>(hoop),
            outwards: Length::new::<meter>(outwards),
        }
    }

    /// Displacement of bore and outside by a rotation of `ω² = 1`.
    fn spun(&self) -> [f64; 2] {
        let Self { a, b, modulus, poisson: nu, density, .. } = *self;
        let at_rim = density / 4.0 * ((1.0 - nu) * b * b + (3.0 + nu) * a * a);
        [a / modulus * hoop_at_bore(a, b, nu, density, 1.0), b / modulus * at_rim]
    }

    /// Inward give of bore and outside under a pressure of 1 on them.
    fn gives(&self) -> [f64; 2] {
        let Self { a, b, modulus, poisson: nu, .. } = *self;
        let ratio = (b * b + a * a) / self.squares();
        [a / modulus * (ratio + nu), b / modulus * (ratio - nu)]
    }

    /// How far a pressure of 1 on one surface moves the other: the bore by one outside, and the
    /// outside by one inside.
    fn across(&self) -> [f64; 2] {
        let Self { a, b, modulus, .. } = *self;
        [2.0 * a * b * b / (modulus * self.squares()), 2.0 * a * a * b / (modulus * self.squares())]
    }
}

/// The equations of the interfaces: tridiagonal, off the diagonal never above zero.
pub(super) struct Joints {
    bonded: Vec<bool>,
    below: Vec<f64>,
    diagonal: Vec<f64>,
    above: Vec<f64>,
    /// What is to be made good at a standstill: interference and warmth.
    still: Vec<f64>,
    /// The same by a rotation of `ω² = 1`.
    spin: Vec<f64>,
    /// Below this a fall of the right-hand side by rotation is rounding.
    dust: Vec<f64>,
}

impl Joints {
    pub(super) fn of(bodies: &[Body], rings: &[Ring]) -> Self {
        let count = bodies.len() - 1;
        let empty = || Vec::with_capacity(count);
        let mut all = Self {
            bonded: Vec::with_capacity(count),
            below: empty(),
            diagonal: empty(),
            above: empty(),
            still: empty(),
            spin: empty(),
            dust: empty(),
        };
        for at in 0..count {
            let (inner, outer) = (&bodies[at], &bodies[at + 1]);
            let misfit = match rings[at + 1].held {
                Held::Shrunk(interference) => interference.get::<meter>() / 2.0,
                _ => 0.0,
            };
            let ([_, inner_spun], [outer_spun, _]) = (inner.spun(), outer.spun());
            all.bonded.push(rings[at + 1].held == Held::Bonded);
            all.below.push(-inner.across()[1]);
            all.diagonal.push(inner.gives()[1] + outer.gives()[0]);
            all.above.push(-outer.across()[0]);
            all.still.push(misfit - inner.b * (outer.strain - inner.strain));
            all.spin.push(inner_spun - outer_spun);
            all.dust.push(1e-13 * (inner_spun + outer_spun));
        }
        all
    }

    pub(super) fn len(&self) -> usize {
        self.bonded.len()
    }

    /// Pressures that make good `right` where rings touch; none where they don't.
    fn solve(&self, right: &[f64], closed: &[bool]) -> Vec<f64> {
        let count = self.len();
        let (mut factor, mut pressure) = (vec![0.0; count], vec![0.0; count]);
        for at in 0..count {
            if !closed[at] {
                // Its row says that the pressure is zero.
                continue;
            }
            let (before, carried) =
                if at == 0 { (0.0, 0.0) } else { (factor[at - 1], pressure[at - 1]) };
            let below = if at == 0 { 0.0 } else { self.below[at] };
            let pivot = self.diagonal[at] - below * before;
            factor[at] = self.above[at] / pivot;
            pressure[at] = (right[at] - below * carried) / pivot;
        }
        for at in (0..count.saturating_sub(1)).rev() {
            if closed[at] {
                pressure[at] -= factor[at] * pressure[at + 1];
            }
        }
        pressure
    }

    fn right(&self, spin: f64) -> Vec<f64> {
        self.still.iter().zip(&self.spin).map(|(still, by)| still + by * spin).collect()
    }

    /// Clearance on radius at an interface by these pressures; negative where rings overlap.
    pub(super) fn gap(&self, at: usize, spin: f64, pressure: &[f64]) -> f64 {
        self.residual(at, self.still[at] + self.spin[at] * spin, pressure)
    }

    fn residual(&self, at: usize, right: f64, pressure: &[f64]) -> f64 {
        let before = if at == 0 { 0.0 } else { self.below[at] * pressure[at - 1] };
        let after = pressure.get(at + 1).map_or(0.0, |p| self.above[at] * p);
        before + self.diagonal[at] * pressure[at] + after - right
    }

    /// The pressures at `ω² = spin`, and where rings touch.
    ///
    /// A pressure anywhere only ever closes the joints beside it, so that one
    /// goes from open to touching and never back: as many rounds as there are joints.
    pub(super) fn touching(&self, spin: f64) -> (Vec<f64>, Vec<bool>) {
        let right = self.right(spin);
        let mut closed = self.bonded.clone();
        loop {
            let mut pressure = self.solve(&right, &closed);
            let mut more = false;
            for at in 0..self.len() {
                let overlaps = !closed[at] && self.residual(at, right[at], &pressure) < 0.0;
                closed[at] |= overlaps;
                more |= overlaps;
            }
            if !more {
                for (at, pressure) in pressure.iter_mut().enumerate() {
                    if !self.bonded[at] {
                        *pressure = pressure.max(0.0);
                    }
                }
                return (pressure, closed);
            }
        }
    }

    /// `ω²` from which on each shrunk joint is open; `None` where it never opens.
    pub(super) fn loosening(&self) -> Vec<Option<f64>> {
        let count = self.len();
        let (_, mut closed) = self.touching(0.0);
        let mut found: Vec<_> = closed.iter().map(|closed| (!closed).then_some(0.0)).collect();
        let (mut spin, mut last) = (0.0, usize::MAX);
        // Between two events every pressure and gap is a straight line in ω².
        for _ in 0..4 * count {
            let (still, by) = (self.solve(&self.still, &closed), self.solve(&self.spin, &closed));
            let mut next: Option<(f64, usize)> = None;
            for at in (0..count).filter(|at| !self.bonded[*at] && *at != last) {
                let (now, change, dust) = if closed[at] {
                    (still[at], by[at], self.dust[at] / self.diagonal[at])
                } else {
                    let gap = |right: &[f64], p: &[f64]| self.residual(at, right[at], p);
                    (gap(&self.still, &still), gap(&self.spin, &by), self.dust[at])
                };
                let when = (-now / change).max(spin);
                if change < -dust && next.is_none_or(|(first, _)| when < first) {
                    next = Some((when, at));
                }
            }
            let Some((when, at)) = next else { break };
            if closed[at] && found[at].is_none() {
                found[at] = Some(when);
            }
            closed[at] = !closed[at];
            (spin, last) = (when, at);
        }
        found
    }
}
