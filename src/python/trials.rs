//! Balance weights and trial runs: part of `hubwright.wheel`.

use pyo3::prelude::*;

use super::quantity::{Out, Plain, Q};
use super::rings::found;
use super::unbalance::UnbalanceVector;
use super::wheel::Working;
use crate::draw::{svg, trials_picture, weights_picture};
use crate::error::{Error, ErrorKind};
use crate::mounting::sort::show;
use crate::solid;
use crate::units::{
    Angle, Length, Mass, Unbalance, degree, figure, kilogram, kilogram_meter, meter, positive,
    positive_length,
};
use crate::wheel;

/// What `two_weights` or `three_weights` found.
#[pyclass(frozen, module = "hubwright._core")]
pub struct BalanceWeights(wheel::WeightsFound);

found! {
    BalanceWeights(wheel::WeightsFound) {
        /// Where the weights that move go, in degrees from the mark, smallest first; the nearest to it where it is out of reach.
        positions: Vec<Out<Angle>> = |of| of.positions.iter().copied().map(Out).collect();
        /// What they have to balance: the unbalance and the stuck weight.
        to_balance: UnbalanceVector = |of| UnbalanceVector(of.to_balance);
        /// The most that those that move can balance, in g mm.
        reach: Out<Unbalance> = |of| Out(of.reach);
        /// What is left over once they are there, in g mm.
        residual: Out<Unbalance> = |of| Out(of.residual);
        /// Whether they balance it.
        reached: bool = |of| of.reached;
        /// The least mass of each weight that would reach, in kg; None where it does, and where one weight alone moves.
        least_weight: Option<Out<Mass>> = |of| of.least_weight.map(Out);
        /// In words: where they go, or what could be reached and what is left.
        says: String = |of| of.says();
    }

    /// The steps, recomputed; the last one's result is `residual` in g mm.
    fn working(&self) -> Working {
        Working(self.0.working())
    }

    /// A polar picture as SVG text: the mark at the top, angles clockwise.
    fn svg(&self) -> String {
        svg(&weights_picture(&self.0))
    }

    fn __repr__(&self) -> String {
        format!("<BalanceWeights {}>", self.0.says())
    }
}

fn weights(
    count: usize,
    (unbalance, angle): (Q<Unbalance>, Q<Angle>),
    (weight, radius): (Q<Mass>, Q<Length>),
    stuck_at: Option<Q<Angle>>,
) -> PyResult<BalanceWeights> {
    let heavy = solid::UnbalanceVector::new(unbalance.named("unbalance")?, angle.named("angle")?);
    let mut asked =
        wheel::BalanceWeights::new(heavy, count, weight.named("weight")?, radius.named("radius")?);
    if let Some(stuck) = stuck_at {
        asked = asked.with_stuck(stuck.named("stuck_at")?);
    }
    Ok(BalanceWeights(asked.solve()?))
}

/// Where two equal weights go on their ring: φ + 180° ± acos(U / 2 m r).
///
/// An unbalance beyond their reach is no error: the result says what could be reached, and where.
///
/// Args:
///     unbalance: Unbalance without the weights, zero or above.
///     angle: Where the rotor is heavy, from the ring's mark.
///     weight: Mass of one weight.
///     radius: Radius of its centre of mass.
///     stuck_at: Where one of them is stuck.
///
/// Returns:
///     BalanceWeights: `.positions`, `.reached`, `.residual`, `.says`, `.svg()`.
///
/// Raises:
///     UnitError, TextError, OutOfRangeError: No quantities of these kinds, or a weight or radius not above zero.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> hw.wheel.two_weights(unbalance="450 g mm", angle="40 deg", weight="10 g", radius="54 mm")
///     <BalanceWeights move the weights to 154.6°, 285.4°>
///     >>> hw.wheel.two_weights(unbalance="500 g mm", angle="40 deg", weight="4 g", radius="54 mm").reached
///     False
#[pyfunction]
#[pyo3(signature = (*, unbalance, angle, weight, radius, stuck_at = None))]
pub fn two_weights(
    unbalance: Q<Unbalance>,
    angle: Q<Angle>,
    weight: Q<Mass>,
    radius: Q<Length>,
    stuck_at: Option<Q<Angle>>,
) -> PyResult<BalanceWeights> {
    weights(2, (unbalance, angle), (weight, radius), stuck_at)
}

/// Where three equal weights go: one at φ + 180°, two at φ + 180° ± acos((U / m r - 1) / 2).
///
/// With one stuck, the other two balance it as well.
///
/// Args:
///     unbalance: Unbalance without the weights, zero or above.
///     angle: Where the rotor is heavy, from the ring's mark.
///     weight: Mass of one weight.
///     radius: Radius of its centre of mass.
///     stuck_at: Where one of them is stuck.
///
/// Returns:
///     BalanceWeights: `.positions`, `.reached`, `.residual`, `.says`, `.svg()`.
///
/// Raises:
///     UnitError, TextError, OutOfRangeError: As for `two_weights`.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> hw.wheel.three_weights(unbalance="450 g mm", angle="250 deg", weight="10 g", radius="54 mm")
///     <BalanceWeights move the weights to 70°, 164.8°, 335.2°>
#[pyfunction]
#[pyo3(signature = (*, unbalance, angle, weight, radius, stuck_at = None))]
pub fn three_weights(
    unbalance: Q<Unbalance>,
    angle: Q<Angle>,
    weight: Q<Mass>,
    radius: Q<Length>,
    stuck_at: Option<Q<Angle>>,
) -> PyResult<BalanceWeights> {
    weights(3, (unbalance, angle), (weight, radius), stuck_at)
}

/// A trial weight: an unbalance, or a mass at a radius.
fn trial_weight(
    trial: Option<Q<Unbalance>>,
    mass: Option<Q<Mass>>,
    radius: Option<Q<Length>>,
) -> Result<Unbalance, Error> {
    if let (Some(trial), None, None) = (&trial, &mass, &radius) {
        return trial.0.clone().map_err(|error| error.named("trial"));
    }
    let (None, Some(mass), Some(radius)) = (trial, mass, radius) else {
        return Err(ErrorKind::Missing {
            argument: "trial".into(),
            why: "the trial weight is an unbalance, or a mass and a radius".into(),
            hint: "give trial=\"200 g mm\", or trial_mass=\"4 g\" and radius=\"50 mm\"".into(),
        }
        .into());
    };
    let kg = mass.named("trial_mass")?.get::<kilogram>();
    positive("trial_mass", kg, "kg", "4 g")?;
    let r = radius.named("radius")?;
    positive_length("radius", r)?;
    Ok(Unbalance::new::<kilogram_meter>(kg * r.get::<meter>()))
}

/// What a unit of unbalance does to the reading of one machine at one speed.
///
/// Keep it for the next wheel there.
#[pyclass(frozen, eq, module = "hubwright._core")]
#[derive(PartialEq)]
pub struct InfluenceCoefficient(wheel::InfluenceFound);

found! {
    InfluenceCoefficient(wheel::InfluenceFound) {
        /// Reading for each g mm.
        size: f64 = |of| of.influence.size;
        /// How far the phase runs ahead of the unbalance, in degrees.
        angle: Out<Angle> = |of| Out(of.influence.angle);
        /// The weight that balances, once the trial weight is off again.
        correction: UnbalanceVector = |of| UnbalanceVector(of.correction);
        /// The unbalance that was there.
        original: UnbalanceVector = |of| UnbalanceVector(of.original);
        /// Whether the trial weight moved the reading by less than a quarter of it: take a heavier one.
        weak: bool = |of| of.weak;
    }

    /// The weight that balances another reading of this machine at this speed, without a trial run.
    ///
    /// Args:
    ///     reading: Reading of the meter, in the unit of the trial.
    ///     phase: Its phase.
    ///
    /// Raises:
    ///     OutOfRangeError: A reading below zero.
    #[pyo3(signature = (*, reading, phase))]
    fn correct(&self, reading: Plain, phase: Q<Angle>) -> PyResult<UnbalanceVector> {
        let (reading, phase) = (reading.named("reading")?, phase.named("phase")?);
        Ok(UnbalanceVector(self.0.influence.correction(reading, phase)?))
    }

    /// The steps, recomputed; the last one's result is the amount of `correction` in g mm.
    fn working(&self) -> Working {
        Working(self.0.working())
    }

    fn __repr__(&self) -> String {
        let (of, weak) = (self.0.correction, if self.0.weak { ", TRIAL WEIGHT TOO LIGHT" } else { "" });
        let angle = figure(of.angle.get::<degree>(), 1);
        format!("<InfluenceCoefficient correct with {} at {angle}°{weak}>", show(of.amount))
    }
}

/// Unbalance from one trial run with phase: α = (V1 - V0) / U_t, and -V0 / α balances.
///
/// Args:
///     baseline: Reading without the trial weight, above zero, in any unit of the meter.
///     baseline_phase: Its phase.
///     with_trial: Reading with the trial weight, in the same unit.
///     with_trial_phase: Its phase.
///     trial_angle: Where the trial weight is, counted the same way round as the phases.
///     trial: The trial weight as an unbalance, or
///     trial_mass: its mass, with
///     radius: its radius.
///
/// Returns:
///     InfluenceCoefficient: `.correction`, `.original`, `.weak`, `.correct()`.
///
/// Raises:
///     MissingError: No trial weight.
///     UnitError, TextError, OutOfRangeError: A baseline of zero, or a trial weight that did nothing.
///
/// Source: statics of a rigid rotor.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> hw.wheel.influence_coefficient(
///     ...     baseline=4.2, baseline_phase="63 deg", with_trial=5.1, with_trial_phase="118 deg",
///     ...     trial="200 g mm", trial_angle="30 deg",
///     ... )
///     <InfluenceCoefficient correct with 192.315 g mm at 103°>
#[pyfunction]
#[pyo3(signature = (*, baseline, baseline_phase, with_trial, with_trial_phase, trial_angle, trial = None, trial_mass = None, radius = None))]
#[allow(clippy::too_many_arguments, reason = "one keyword a figure")]
pub fn influence_coefficient(
    baseline: Plain,
    baseline_phase: Q<Angle>,
    with_trial: Plain,
    with_trial_phase: Q<Angle>,
    trial_angle: Q<Angle>,
    trial: Option<Q<Unbalance>>,
    trial_mass: Option<Q<Mass>>,
    radius: Option<Q<Length>>,
) -> PyResult<InfluenceCoefficient> {
    let weight = trial_weight(trial, trial_mass, radius)?;
    let first = (baseline.named("baseline")?, baseline_phase.named("baseline_phase")?);
    let second = (with_trial.named("with_trial")?, with_trial_phase.named("with_trial_phase")?);
    let trial = solid::UnbalanceVector::new(weight, trial_angle.named("trial_angle")?);
    Ok(InfluenceCoefficient(wheel::influence_coefficient(first, second, trial)?))
}

/// What `trial_runs` found.
#[pyclass(frozen, module = "hubwright._core")]
pub struct TrialRuns(wheel::TrialRuns);

found! {
    TrialRuns(wheel::TrialRuns) {
        /// What the unbalance may be, smallest first: one answer from three runs or more, two from two.
        candidates: Vec<UnbalanceVector> = |of| of.candidates.iter().copied().map(UnbalanceVector).collect();
        /// The weight that balances each of them.
        corrections: Vec<UnbalanceVector> = |of| of.corrections.iter().copied().map(UnbalanceVector).collect();
        /// The answer that fits all readings best, by least squares; None from two runs.
        fitted: Option<UnbalanceVector> = |of| of.fitted.map(UnbalanceVector);
        /// Root of the mean square of what the readings are off that answer, in their unit.
        scatter: Option<f64> = |of| of.scatter;
        /// How far the two ways to the trial weight's effect are apart, as a share; None from two runs.
        quality: Option<f64> = |of| of.quality;
        /// Whether that is more than 5 %: run them again.
        doubtful: bool = |of| of.doubtful;
        /// Whether, by any of the answers, the trial weight is less than a quarter of the unbalance; common practice.
        weak: bool = |of| of.weak;
    }

    /// The steps, recomputed; the last one's result is the amount of the last of `candidates` in g mm.
    fn working(&self) -> Working {
        Working(self.0.working())
    }

    /// A polar picture as SVG text: the mark at the top, angles clockwise.
    fn svg(&self) -> String {
        svg(&trials_picture(&self.0))
    }

    fn __repr__(&self) -> String {
        let one = |of: &solid::UnbalanceVector| {
            format!("{} at {}°", show(of.amount), figure(of.angle.get::<degree>(), 1))
        };
        let all: Vec<_> = self.0.corrections.iter().map(one).collect();
        let doubtful = if self.0.doubtful { ", READINGS AGREE BADLY" } else { "" };
        let weak = if self.0.weak { ", TRIAL WEIGHT TOO LIGHT" } else { "" };
        format!("<TrialRuns correct with {}{doubtful}{weak}>", all.join(" or "))
    }
}

/// Unbalance from the size of the readings alone: a baseline, and the same trial weight at several angles.
///
/// A_i² - A0² = T² + 2 A0 T cos(θ_i - φ). Three runs or more give T twice, from the mean and from the
/// differences, and their ratio less one is `.quality`. Two leave two answers.
///
/// Args:
///     baseline: Reading without the trial weight, above zero, in any unit of the meter.
///     trials: For each run the reading and where the trial weight was, like `[(7, "0 deg"), (12, "120 deg")]`.
///     trial: The trial weight as an unbalance, or
///     trial_mass: its mass, with
///     radius: its radius.
///
/// Returns:
///     TrialRuns: `.candidates`, `.corrections`, `.fitted`, `.quality`, `.doubtful`, `.weak`, `.svg()`.
///
/// Raises:
///     MissingError: No trial weight.
///     UnitError, TextError, OutOfRangeError: Fewer than two runs, a baseline of zero, or readings that
///         contradict one another so far that no unbalance gives them.
///
/// Source: statics of a rigid rotor.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> hw.wheel.trial_runs(
///     ...     baseline=10, trials=[(7, "0 deg"), (12, "120 deg"), (18, "240 deg")], trial="50 g mm",
///     ... )
///     <TrialRuns correct with 58.79 g mm at 40.1°, READINGS AGREE BADLY>
#[pyfunction]
#[pyo3(signature = (*, baseline, trials, trial = None, trial_mass = None, radius = None))]
pub fn trial_runs(
    baseline: Plain,
    trials: Vec<(Plain, Q<Angle>)>,
    trial: Option<Q<Unbalance>>,
    trial_mass: Option<Q<Mass>>,
    radius: Option<Q<Length>>,
) -> PyResult<TrialRuns> {
    let weight = trial_weight(trial, trial_mass, radius)?;
    let runs: Vec<_> = trials
        .into_iter()
        .map(|(reading, angle)| {
            let (reading, angle) = (reading.named("trials")?, angle.named("trials")?);
            Ok(wheel::TrialRun { reading, angle })
        })
        .collect::<Result<_, Error>>()?;
    Ok(TrialRuns(wheel::trial_runs(baseline.named("baseline")?, &runs, weight)?))
}
