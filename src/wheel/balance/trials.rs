//! Finding an unbalance by trial runs: with phase, or by the size of the readings alone.

use crate::error::{Error, ErrorKind};
use crate::solid::UnbalanceVector;
use crate::solid::rotor::{ROTOR, fitted, from_readings, from_two, polar, size, turned};
use crate::units::{
    Angle, Unbalance, degree, figure, finite, gram_millimeter, kilogram_meter, positive, radian,
    zero_or_more,
};
use crate::working::{Step, Working};

/// A trial weight that moves the reading by less than this share of it is too light. Common practice, no source.
pub const WEAK: f64 = 0.25;
/// Readings whose two ways to the answer differ by more than this share are doubtful. Common practice, no source.
pub const DOUBTFUL: f64 = 0.05;

/// A trial weight that moves no reading by more than this share of it did nothing. Common practice, no source.
const NOTHING: f64 = 0.002;

/// A reading so many times the baseline was mistyped, or the trial weight was dangerous.
const MOST: f64 = 1e6;

fn trial_weight(trial: Unbalance) -> Result<(), Error> {
    positive("trial", trial.get::<gram_millimeter>(), "g mm", "200 g mm")
}

/// Readings that no unbalance gives.
fn contradict(given: f64, range: String) -> Error {
    ErrorKind::OutOfRange {
        argument: "trials".into(),
        given,
        range,
        unit: "",
        authority: "the readings contradict one another".into(),
        hint: "run them again: one speed, everything tight, the same trial weight at its angles and off for the baseline".into(),
    }
    .into()
}

/// Readings that the trial weight left as they were.
fn did_nothing() -> Error {
    ErrorKind::OutOfRange {
        argument: "trials".into(),
        given: 0.0,
        range: "the change that the trial weight made to the readings".into(),
        unit: "",
        authority: String::new(),
        hint: "the trial weight did nothing that shows: take a heavier one, within what the wheel and its guard can take, or spread the runs".into(),
    }
    .into()
}

/// One baseline and one trial run, both with phase.
///
/// `α = (V1 − V0) / U_t` is what a unit of unbalance does to the reading, and `U_c = −V0 / α` balances.
/// Linear, one plane, one speed. Readings are those of the meter, both in one unit; all
/// angles, those of the phase too, run the same way round from one mark.
///
/// # Errors
///
/// [`ErrorKind::OutOfRange`] or [`ErrorKind::NotFinite`] for readings below zero, a baseline of zero, a
/// trial weight not above zero, and two readings that are the same: the trial did nothing.
///
/// # Source
///
/// Statics of a rigid rotor.
///
/// # Example
///
/// 4.2 at 63° alone, 5.1 at 118° with 200 g mm at 30°: a weight of 192 g mm goes to 103°.
///
/// ```
/// use hubwright::solid::UnbalanceVector;
/// use hubwright::units::{Angle, Unbalance, degree, gram_millimeter};
/// use hubwright::wheel::influence_coefficient;
///
/// let deg = Angle::new::<degree>;
/// let trial = UnbalanceVector::new(Unbalance::new::<gram_millimeter>(200.0), deg(30.0));
/// let found = influence_coefficient((4.2, deg(63.0)), (5.1, deg(118.0)), trial)?;
/// assert!((found.correction.amount.get::<gram_millimeter>() - 192.3).abs() < 0.1);
/// assert!((found.correction.angle.get::<degree>() - 103.0).abs() < 0.1);
/// assert!(!found.weak);
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn influence_coefficient(
    baseline: (f64, Angle),
    with_trial: (f64, Angle),
    trial: UnbalanceVector,
) -> Result<InfluenceFound, Error> {
    let readings = [("baseline", baseline), ("with_trial", with_trial)];
    for (name, (reading, phase)) in readings {
        zero_or_more(name, reading, "", "4.2")?;
        finite(&format!("{name}_phase"), phase.get::<degree>(), "63 deg")?;
    }
    positive("baseline", baseline.0, "", "4.2")?;
    trial_weight(trial.amount)?;
    finite("trial_angle", trial.angle.get::<degree>(), "30 deg")?;
    let [v0, v1] =
        [baseline, with_trial].map(|(reading, phase)| polar(reading, phase.get::<radian>()));
    let change = [v1[0] - v0[0], v1[1] - v0[1]];
    if size(change) < 1e-9 * baseline.0 {
        return Err(ErrorKind::OutOfRange {
            argument: "with_trial".into(),
            given: with_trial.0,
            range: "the same as the baseline".into(),
            unit: "",
            authority: "the trial weight did nothing".into(),
            hint: "take a heavier trial weight, and check that it was on".into(),
        }
        .into());
    }
    let influence = Influence {
        size: size(change) / trial.amount.get::<gram_millimeter>(),
        angle: Angle::new::<radian>(turned(
            change[1].atan2(change[0]) - trial.angle.get::<radian>(),
        )),
    };
    let correction = influence.correction(baseline.0, baseline.1)?;
    Ok(InfluenceFound {
        baseline,
        with_trial,
        trial,
        influence,
        correction,
        original: correction.opposite(),
        weak: size(change) < WEAK * baseline.0,
    })
}

/// What a unit of unbalance does to the reading of one machine at one speed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Influence {
    /// Reading for each g mm.
    pub size: f64,
    /// How far the phase runs ahead of the unbalance.
    pub angle: Angle,
}

impl Influence {
    /// The weight that balances a reading, without another trial run.
    ///
    /// # Errors
    ///
    /// As for [`influence_coefficient`].
    pub fn correction(self, reading: f64, phase: Angle) -> Result<UnbalanceVector, Error> {
        zero_or_more("reading", reading, "", "4.2")?;
        finite("phase", phase.get::<degree>(), "63 deg")?;
        positive("influence", self.size, "", "0.02")?;
        let heavy = turned(phase.get::<radian>() - self.angle.get::<radian>());
        let amount = Unbalance::new::<gram_millimeter>(reading / self.size);
        Ok(UnbalanceVector::new(amount, Angle::new::<radian>(heavy)).opposite())
    }
}

/// What [`influence_coefficient`] found.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct InfluenceFound {
    /// Reading and phase without the trial weight.
    pub baseline: (f64, Angle),
    /// Reading and phase with it.
    pub with_trial: (f64, Angle),
    /// The trial weight.
    pub trial: UnbalanceVector,
    /// What a unit of unbalance does; keep it for the next wheel on this machine at this speed.
    pub influence: Influence,
    /// The weight that balances, once the trial weight is off again.
    pub correction: UnbalanceVector,
    /// The unbalance that was there.
    pub original: UnbalanceVector,
    /// Whether the trial weight moved the reading by less than a quarter of it.
    pub weak: bool,
}

impl InfluenceFound {
    /// The steps, recomputed; the last one's result is the amount of `correction` in g mm.
    pub fn working(&self) -> Working {
        let Ok(again) = influence_coefficient(self.baseline, self.with_trial, self.trial) else {
            return Working::default();
        };
        let deg = |angle: Angle| figure(angle.get::<degree>(), 3);
        let vector =
            |(reading, phase): (f64, Angle)| format!("{} at {}°", figure(reading, 6), deg(phase));
        let trial = format!(
            "{} g mm at {}°",
            figure(again.trial.amount.get::<gram_millimeter>(), 4),
            deg(again.trial.angle)
        );
        let alpha =
            format!("{} at {}°", figure(again.influence.size, 8), deg(again.influence.angle));
        let step = |symbol, relation, numbers, result, unit| Step {
            symbol,
            relation,
            numbers,
            result,
            unit,
            source: ROTOR,
        };
        Working {
            steps: vec![
                step(
                    "α",
                    "(V1 − V0) / U t",
                    format!(
                        "({} − {}) / {trial}",
                        vector(again.with_trial),
                        vector(again.baseline)
                    ),
                    again.influence.size,
                    "per g mm",
                ),
                step(
                    "angle",
                    "angle of −V0 / α",
                    format!("−{} / {alpha}", vector(again.baseline)),
                    again.correction.angle.get::<degree>(),
                    "°",
                ),
                step(
                    "U c",
                    "−V0 / α",
                    format!("−{} / {alpha}", vector(again.baseline)),
                    again.correction.amount.get::<gram_millimeter>(),
                    "g mm",
                ),
            ],
        }
    }
}

/// One run with the trial weight: the reading, and where the weight was.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TrialRun {
    /// Reading of the meter, in the unit of the baseline.
    pub reading: f64,
    /// Angle of the trial weight from the mark.
    pub angle: Angle,
}

/// What [`trial_runs`] found.
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub struct TrialRuns {
    /// Reading without the trial weight.
    pub baseline: f64,
    /// The trial runs.
    pub runs: Vec<TrialRun>,
    /// The trial weight.
    pub trial: Unbalance,
    /// What the unbalance may be, smallest first: one answer from three runs or more, two from two.
    pub candidates: Vec<UnbalanceVector>,
    /// The weight that balances each of them, in the same order.
    pub corrections: Vec<UnbalanceVector>,
    /// The answer that fits all readings best, the baseline among them; `None` from two runs.
    pub fitted: Option<UnbalanceVector>,
    /// Root of the mean square of what the readings are off that answer, in their unit.
    pub scatter: Option<f64>,
    /// How far the two ways to the trial weight's effect are apart, as a share: zero for readings that
    /// agree. `None` from two runs, which leave nothing over to check by.
    pub quality: Option<f64>,
    /// Whether that is more than 5 %: common practice, no source.
    pub doubtful: bool,
    /// Whether, by any of the answers, the trial weight is less than a quarter of the unbalance: readings that are a
    /// little off then move the answer far. Common practice, no source.
    pub weak: bool,
}

/// Unbalance from the size of the readings alone: a baseline, and the same trial weight at several angles.
///
/// `A_i² − A0² = T² + 2 A0 T cos(θ_i − φ)`, with `T` what the trial weight does to the reading, and
/// `U = U_t A0 / T` at `φ`. Three runs or more give `T` twice, from the mean and
/// from the differences: their ratio less one is the quality figure. From the first guess all readings are
/// fitted by least squares. Two runs leave two answers, and a third run or a check run chooses.
///
/// # Errors
///
/// [`ErrorKind::OutOfRange`] or [`ErrorKind::NotFinite`] for readings not above zero (baseline) or below
/// zero, fewer than two runs, runs at angles too near to one another, and readings that contradict one another so far that no unbalance
/// gives them.
///
/// # Source
///
/// Statics of a rigid rotor.
///
/// # Example
///
/// A published example: 10 alone, then 7, 12 and 18 with 50 g at 0°, 120° and 240°.
///
/// ```
/// use hubwright::units::{Angle, Unbalance, degree, gram_millimeter};
/// use hubwright::wheel::{TrialRun, trial_runs};
///
/// let run = |reading, at| TrialRun { reading, angle: Angle::new::<degree>(at) };
/// let runs = [run(7.0, 0.0), run(12.0, 120.0), run(18.0, 240.0)];
/// let found = trial_runs(10.0, &runs, Unbalance::new::<gram_millimeter>(50.0))?;
/// assert!((found.candidates[0].amount.get::<gram_millimeter>() - 58.79).abs() < 0.01);
/// assert!((found.corrections[0].angle.get::<degree>() - 40.12).abs() < 0.01);
/// assert!(found.doubtful);
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn trial_runs(baseline: f64, runs: &[TrialRun], trial: Unbalance) -> Result<TrialRuns, Error> {
    positive("baseline", baseline, "", "10")?;
    trial_weight(trial)?;
    for run in runs {
        zero_or_more("trials", run.reading, "", "12")?;
        finite("trials", run.angle.get::<degree>(), "120 deg")?;
    }
    if runs.iter().all(|run| run.reading == 0.0) {
        return Err(contradict(0.0, "zero in every run".into()));
    }
    // Readings over the baseline, so that no unit of a meter is too large or too small to square.
    let pairs: Vec<_> =
        runs.iter().map(|run| [run.reading / baseline, run.angle.get::<radian>()]).collect();
    if let Some([share, _]) = pairs.iter().find(|[share, _]| *share > MOST) {
        return Err(contradict(*share, format!("above {MOST} times the baseline")));
    }
    let weight = trial.get::<kilogram_meter>();
    let found = |response: [f64; 2], base: f64| {
        let angle = turned(response[1].atan2(response[0]));
        let amount = Unbalance::new::<kilogram_meter>(weight * base / size(response));
        UnbalanceVector::new(amount, Angle::new::<radian>(angle))
    };
    let answer = |mut candidates: Vec<UnbalanceVector>| {
        candidates.sort_by(|a, b| {
            a.amount.get::<kilogram_meter>().total_cmp(&b.amount.get::<kilogram_meter>())
        });
        TrialRuns {
            baseline,
            runs: runs.to_vec(),
            trial,
            corrections: candidates.iter().map(|heavy| heavy.opposite()).collect(),
            weak: candidates
                .iter()
                .any(|heavy| weight < WEAK * heavy.amount.get::<kilogram_meter>()),
            candidates,
            fitted: None,
            scatter: None,
            quality: None,
            doubtful: false,
        }
    };
    let too_near = || ErrorKind::OutOfRange {
        argument: "trials".into(),
        given: runs.len() as f64,
        range: "runs at angles too near to one another".into(),
        unit: "",
        authority: String::new(),
        hint: "spread the runs round the circle, like 0, 120 and 240 deg".into(),
    };
    match *pairs.as_slice() {
        [] | [_] => Err(ErrorKind::OutOfRange {
            argument: "trials".into(),
            given: pairs.len() as f64,
            range: "fewer than 2 runs".into(),
            unit: "",
            authority: String::new(),
            hint: "give three runs, like 0, 120 and 240 deg, or one with phase to the influence coefficient".into(),
        }
        .into()),
        [first, second] => {
            let responses = from_two(1.0, [first, second]).ok_or_else(too_near)?;
            // An effect of nothing is the likelier answer than one that happens to leave the readings as they are.
            if responses.iter().any(|response| size(*response) < NOTHING) {
                return Err(did_nothing());
            }
            if responses.is_empty() {
                return Err(contradict(2.0, "runs that no unbalance gives".into()));
            }
            Ok(answer(responses.into_iter().map(|response| found(response, 1.0)).collect()))
        }
        _ => {
            let (square, vector) = from_readings(1.0, &pairs).ok_or_else(too_near)?;
            let by_vector = size(vector);
            if pairs.iter().all(|[share, _]| (share - 1.0).abs() < NOTHING) {
                return Err(did_nothing());
            }
            if square <= 0.0 {
                let said = "not above 0 as the square of what the trial weight adds, over that of the baseline";
                return Err(contradict(square, said.into()));
            }
            if by_vector <= 1e-9 {
                return Err(contradict(runs.len() as f64, "runs with readings all alike".into()));
            }
            // The mean gives the size, the differences the direction.
            let by_mean = square.sqrt();
            let response = [0, 1].map(|at| vector[at] / by_vector * by_mean);
            let quality = by_vector / by_mean - 1.0;
            let (base, best, scatter) = fitted(1.0, &pairs, response);
            Ok(TrialRuns {
                fitted: (size(best) > 0.0 && base > 0.0).then(|| found(best, base)),
                scatter: Some(scatter * baseline),
                quality: Some(quality),
                doubtful: quality.abs() > DOUBTFUL,
                ..answer(vec![found(response, 1.0)])
            })
        }
    }
}

impl TrialRuns {
    /// The steps, recomputed; the last one's result is the amount of the last of `candidates` in g mm.
    pub fn working(&self) -> Working {
        let Ok(again) = trial_runs(self.baseline, &self.runs, self.trial) else {
            return Working::default();
        };
        let (base, u) = (figure(again.baseline, 6), again.trial.get::<gram_millimeter>());
        let mut steps = Vec::new();
        let mut step = |symbol, relation, numbers, result, unit| {
            steps.push(Step { symbol, relation, numbers, result, unit, source: ROTOR });
        };
        for run in &again.runs {
            let numbers = format!(
                "{}² − {base}² (at {}°)",
                figure(run.reading, 6),
                figure(run.angle.get::<degree>(), 3)
            );
            let result = run.reading * run.reading - again.baseline * again.baseline;
            step("A² − A0²", "T² + 2 A0 T cos(θ − φ)", numbers, result, "(reading)²");
        }
        if let Some(quality) = again.quality {
            let numbers = "solved for T², 2 A0 T cos φ, 2 A0 T sin φ".into();
            step("quality", "T by differences / T by mean − 1", numbers, quality, "");
        }
        for heavy in &again.candidates {
            let amount = heavy.amount.get::<gram_millimeter>();
            let numbers = format!("solved: T = {}", figure(u * again.baseline / amount, 6));
            step("φ", "angle of the heavy side", numbers, heavy.angle.get::<degree>(), "°");
            let numbers = format!(
                "{} g mm · {base} / {}",
                figure(u, 4),
                figure(u * again.baseline / amount, 6)
            );
            step("U", "U t A0 / T", numbers, amount, "g mm");
        }
        Working { steps }
    }
}
