//! Where the movable weights of a ring go.

use std::f64::consts::PI;

use super::mass_in_kg;
use crate::error::{Error, ErrorKind};
use crate::solid::UnbalanceVector;
use crate::solid::rotor::{ROTOR, spread, turned};
use crate::units::{
    Angle, Length, Mass, Unbalance, degree, figure, finite, gram, gram_millimeter, kilogram_meter,
    millimeter, positive_length, radian, zero_or_more,
};
use crate::working::{Step, Working};

/// Two or three equal weights that are moved round a ring, one of them stuck if need be.
///
/// With `w = m r` a weight: two lie at `φ + π ± acos(U / 2 w)` and reach `2 w`; three lie at `φ + π` and
/// `φ + π ± acos((U / w − 1) / 2)` and reach `3 w`. Without an unbalance they lie 180° or 120° apart.
/// A stuck weight is added to the unbalance as a vector, and the others balance both. Angles
/// are counted from the ring's mark, always the same way round.
///
/// # Errors
///
/// [`ErrorKind::OutOfRange`] or [`ErrorKind::NotFinite`] for weights and radii not above zero, an
/// unbalance below zero, angles that are none, and another count than two or three.
/// An unbalance that the weights can't balance is no error: the result says what could be reached.
///
/// # Source
///
/// Statics: a closed polygon of vectors.
///
/// # Example
///
/// 450 g mm at 40°, two weights of 10 g at a radius of 54 mm.
///
/// ```
/// use hubwright::solid::UnbalanceVector;
/// use hubwright::units::{Angle, Length, Mass, Unbalance, degree, gram, gram_millimeter, millimeter};
/// use hubwright::wheel::BalanceWeights;
///
/// let heavy = UnbalanceVector::new(
///     Unbalance::new::<gram_millimeter>(450.0),
///     Angle::new::<degree>(40.0),
/// );
/// let found = BalanceWeights::new(heavy, 2, Mass::new::<gram>(10.0), Length::new::<millimeter>(54.0))
///     .solve()?;
/// assert!(found.reached);
/// let at: Vec<_> = found.positions.iter().map(|angle| angle.get::<degree>().round()).collect();
/// assert_eq!(at, [155.0, 285.0]);
/// # Ok::<(), hubwright::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct BalanceWeights {
    /// Unbalance without any weight, and where it is heavy.
    pub heavy: UnbalanceVector,
    /// How many weights: two or three.
    pub count: usize,
    /// Mass of one.
    pub weight: Mass,
    /// Radius of its centre of mass.
    pub radius: Length,
    /// Where one of them is stuck.
    pub stuck_at: Option<Angle>,
}

/// What [`BalanceWeights::solve`] found.
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub struct WeightsFound {
    /// What was asked.
    pub asked: BalanceWeights,
    /// Where the weights that move go, smallest angle first; the nearest to it where it is out of reach.
    pub positions: Vec<Angle>,
    /// What they have to balance: the unbalance and the stuck weight.
    pub to_balance: UnbalanceVector,
    /// What one weight pulls with.
    pub one: Unbalance,
    /// The most that those that move can balance.
    pub reach: Unbalance,
    /// What is left over once they are there.
    pub residual: Unbalance,
    /// Whether they balance it.
    pub reached: bool,
    /// The least mass of each weight with which it would be in reach; `None` where it is, and
    /// where one weight alone moves.
    pub least_weight: Option<Mass>,
}

impl BalanceWeights {
    /// An unbalance, how many weights, the mass of one, and the radius of the ring.
    pub fn new(heavy: UnbalanceVector, count: usize, weight: Mass, radius: Length) -> Self {
        Self { heavy, count, weight, radius, stuck_at: None }
    }

    /// With one of the weights stuck.
    #[must_use]
    pub fn with_stuck(self, angle: Angle) -> Self {
        Self { stuck_at: Some(angle), ..self }
    }

    /// What one weight pulls with, in kg m.
    fn one(&self) -> f64 {
        self.weight.get::<gram>() / 1e3 * (self.radius.get::<millimeter>() / 1e3)
    }

    /// Where they go.
    ///
    /// # Errors
    ///
    /// As described on the type.
    pub fn solve(self) -> Result<WeightsFound, Error> {
        let gmm = self.heavy.amount.get::<gram_millimeter>();
        zero_or_more("unbalance", gmm, "g mm", "450 g mm")?;
        finite("angle", self.heavy.angle.get::<degree>(), "40 deg")?;
        mass_in_kg("weight", self.weight)?;
        positive_length("radius", self.radius)?;
        if !matches!(self.count, 2 | 3) {
            return Err(ErrorKind::OutOfRange {
                argument: "count".into(),
                given: self.count as f64,
                range: "not 2 or 3".into(),
                unit: "",
                authority: String::new(),
                hint: "leave further weights opposite each other, where they do nothing".into(),
            }
            .into());
        }
        let one = self.one();
        let amount = Unbalance::new::<kilogram_meter>;
        let (free, to_balance) = match self.stuck_at {
            Some(angle) => {
                finite("stuck_at", angle.get::<degree>(), "90 deg")?;
                let stuck = UnbalanceVector::new(amount(one), angle);
                (self.count - 1, self.heavy.with(stuck))
            }
            None => (self.count, self.heavy),
        };
        let load = to_balance.amount.get::<kilogram_meter>();
        let light = to_balance.angle.get::<radian>() + PI;
        let (offsets, left) = spread(free, load, one);
        let mut angles: Vec<f64> = offsets.iter().map(|offset| turned(light + offset)).collect();
        angles.sort_by(f64::total_cmp);
        // Below a millionth of a weight's pull nobody can tell it from nothing.
        let reached = left <= one * 1e-6;
        Ok(WeightsFound {
            asked: self,
            positions: angles.into_iter().map(Angle::new::<radian>).collect(),
            to_balance,
            one: amount(one),
            reach: amount(one * free as f64),
            residual: amount(if reached { 0.0 } else { left }),
            reached,
            least_weight: (!reached && free > 1).then(|| self.least_weight(free)),
        })
    }

    /// The least weight that brings it into reach: `|U + m s| = free · m` with `s` along the stuck one.
    fn least_weight(&self, free: usize) -> Mass {
        let (n, u) = (free as f64, self.heavy.amount.get::<kilogram_meter>());
        let along = match self.stuck_at {
            // U² + 2 U w cos + w² = n² w².
            Some(angle) => {
                let cos = (angle.get::<radian>() - self.heavy.angle.get::<radian>()).cos();
                let square = n * n - 1.0;
                u * (cos + (cos * cos + square).sqrt()) / square
            }
            None => u / n,
        };
        Mass::new::<gram>(along / (self.radius.get::<millimeter>() / 1e3) * 1e3)
    }
}

impl WeightsFound {
    /// In words: where the weights go, and what is left when they can't reach.
    pub fn says(&self) -> String {
        let gmm = |amount: Unbalance| figure(amount.get::<gram_millimeter>(), 1);
        let at: Vec<_> =
            self.positions.iter().map(|at| format!("{}°", figure(at.get::<degree>(), 1))).collect();
        let at = at.join(", ");
        if self.reached {
            return format!("move the weights to {at}");
        }
        let load = gmm(self.to_balance.amount);
        let needs = self.least_weight.map_or_else(
            || format!("free the stuck weight: one that moves alone pulls with {} g mm, no more and no less", gmm(self.one)),
            |least| {
                let grams = (least.get::<gram>() * 100.0).ceil() / 100.0;
                format!("weights of {} g each would reach", figure(grams, 2))
            },
        );
        format!(
            "out of reach: {load} g mm to balance, the weights reach {} g mm; at {at} {} g mm are left; {needs}",
            gmm(self.reach),
            gmm(self.residual)
        )
    }

    /// The steps, recomputed; the last one's result is `residual` in g mm.
    pub fn working(&self) -> Working {
        let Ok(again) = self.asked.solve() else { return Working::default() };
        let BalanceWeights { weight, radius, heavy, stuck_at, .. } = again.asked;
        let (u, w) = (again.to_balance.amount, again.one);
        let gmm = |amount: Unbalance| amount.get::<gram_millimeter>();
        let shown = |amount: Unbalance| figure(gmm(amount), 4);
        let step = |symbol, relation, numbers, result, unit| Step {
            symbol,
            relation,
            numbers,
            result,
            unit,
            source: ROTOR,
        };
        let pull = format!(
            "{} g · {} mm",
            figure(weight.get::<gram>(), 4),
            figure(radius.get::<millimeter>(), 4)
        );
        let mut steps = vec![step("w", "m r", pull, gmm(w), "g mm")];
        if let Some(stuck) = stuck_at {
            let numbers = format!(
                "{} at {}° + {} at {}°",
                shown(heavy.amount),
                figure(heavy.angle.get::<degree>(), 2),
                shown(w),
                figure(stuck.get::<degree>(), 2)
            );
            steps.push(step("to balance", "U + stuck, as vectors", numbers, gmm(u), "g mm"));
        }
        let light = again.to_balance.opposite().angle;
        let numbers = format!("{}° + 180°", figure(again.to_balance.angle.get::<degree>(), 4));
        steps.push(step("light side", "φ + 180°", numbers, light.get::<degree>(), "°"));
        let relation = match again.positions.len() {
            3 => "φ + 180°, φ + 180° ± acos((U / w − 1) / 2)",
            2 => "φ + 180° ± acos(U / 2 w)",
            _ => "φ + 180°",
        };
        for at in &again.positions {
            let numbers = format!("U = {}, w = {} g mm", shown(u), shown(w));
            steps.push(step("a weight", relation, numbers, at.get::<degree>(), "°"));
        }
        let numbers = format!("{} against a reach of {}", shown(u), shown(again.reach));
        steps.push(step(
            "left over",
            "what the polygon lacks to close",
            numbers,
            gmm(again.residual),
            "g mm",
        ));
        Working { steps }
    }
}
