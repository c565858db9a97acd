//! Balance: what a grade allows, what a wheel on its hub has, and where weights put it right.

mod spots;
mod trials;
mod truing;
mod weights;

pub use spots::{HeavySpot, UnbalanceSum, unbalance};
pub use trials::{
    DOUBTFUL, Influence, InfluenceFound, TrialRun, TrialRuns, WEAK, influence_coefficient,
    trial_runs,
};
pub use truing::{Truing, TruingFound};
pub use weights::{BalanceWeights, WeightsFound};

use crate::error::{Error, ErrorKind};
use crate::solid::rotor::{ROTOR, permissible, turning_force};
use crate::source::Source;
use crate::tables::balance::{
    GRADE, JIS_B4131, SIDE_RUN_OUT, SUPERABRASIVE_MASS, SUPERABRASIVE_RUN_OUT,
};
use crate::units::{
    AngularVelocity, BalanceGrade, Exact, Force, Length, Mass, Unbalance, figure, grade_number,
    gram, gram_millimeter, kilogram, kilogram_meter, meter, micrometer, newton, positive,
    positive_length, radian_per_second, revolution_per_minute, shown_mm, zero_or_more,
};
use crate::working::{Step, Working};

/// Every source that balancing cites.
pub const SOURCES: &[Source] = &[GRADE, ROTOR, JIS_B4131, SIDE_RUN_OUT];

fn mass_in_kg(argument: &str, mass: Mass) -> Result<f64, Error> {
    let kg = mass.get::<kilogram>();
    positive(argument, kg, "kg", "2.4 kg")?;
    Ok(kg)
}

/// What a grade allows a rotor of some mass at some speed, or the grade it reaches.
///
/// `U = m e` is the unbalance of a mass whose centre lies `e` off the axis, and `G = e ω`
/// the grade: `U_per = m G / ω` is what a grade allows. At a radius `r` it is as much as
/// `U / r` grams; it pulls with `U ω²`. `9549 G m / n` of the catalogues is the same in g mm, mm/s,
/// kg and rev/min.
///
/// One rigid rotor in one plane: a wheel not much wider than 0.2 of its diameter, far from resonance.
///
/// # Errors
///
/// [`ErrorKind::OutOfRange`] or [`ErrorKind::NotFinite`] for a mass, speed, grade or radius not above
/// zero, or an unbalance below zero.
///
/// # Source
///
/// ISO 21940-11, the identity from memory.
///
/// # Example
///
/// A rotor of 12 kg at 1450 rev/min may keep 498 g mm in G6.3.
///
/// ```
/// use hubwright::units::{AngularVelocity, BalanceGrade, Mass, grade_number, gram_millimeter, kilogram, revolution_per_minute};
/// use hubwright::wheel::Balance;
///
/// let speed = AngularVelocity::new::<revolution_per_minute>(1450.0);
/// let found = Balance::new(Mass::new::<kilogram>(12.0), speed)
///     .with_grade(BalanceGrade::new::<grade_number>(6.3))
///     .solve()?;
/// let allowed = found.permissible.expect("a grade was given");
/// assert!((allowed.get::<gram_millimeter>() - 497.88).abs() < 0.01);
/// # Ok::<(), hubwright::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Balance {
    /// Mass of all that turns: wheel, hub, flanges, nut.
    pub mass: Mass,
    /// Rotational speed.
    pub speed: AngularVelocity,
    /// Grade asked for.
    pub grade: Option<BalanceGrade>,
    /// Unbalance that it has.
    pub unbalance: Option<Unbalance>,
    /// Radius of the ring that weights sit on.
    pub radius: Option<Length>,
}

/// What [`Balance::solve`] found.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct BalanceFound {
    /// What was asked.
    pub asked: Balance,
    /// Unbalance that the grade allows.
    pub permissible: Option<Unbalance>,
    /// Distance of the centre of mass from the axis that the grade allows.
    pub permissible_eccentricity: Option<Length>,
    /// The same as a mass at the radius of the weights.
    pub permissible_mass: Option<Mass>,
    /// Distance of the centre of mass from the axis.
    pub eccentricity: Option<Length>,
    /// Grade that the unbalance comes to at this speed.
    pub reached: Option<BalanceGrade>,
    /// Mass at the radius of the weights that would balance it.
    pub mass_at_radius: Option<Mass>,
    /// Force that turns with it.
    pub force: Option<Force>,
    /// Whether it keeps to the grade; `None` without a grade or without an unbalance.
    pub within: Option<bool>,
}

impl Balance {
    /// All that turns, and how fast.
    pub fn new(mass: Mass, speed: AngularVelocity) -> Self {
        Self { mass, speed, grade: None, unbalance: None, radius: None }
    }

    /// With the grade asked for.
    #[must_use]
    pub fn with_grade(self, grade: BalanceGrade) -> Self {
        Self { grade: Some(grade), ..self }
    }

    /// With the unbalance it has.
    #[must_use]
    pub fn with_unbalance(self, unbalance: Unbalance) -> Self {
        Self { unbalance: Some(unbalance), ..self }
    }

    /// With the radius that weights sit at.
    #[must_use]
    pub fn with_radius(self, radius: Length) -> Self {
        Self { radius: Some(radius), ..self }
    }

    /// What follows.
    ///
    /// # Errors
    ///
    /// As described on the type.
    pub fn solve(self) -> Result<BalanceFound, Error> {
        let mass = mass_in_kg("mass", self.mass)?;
        positive("speed", self.speed.get::<revolution_per_minute>(), "rpm", "2850 rpm")?;
        let w = self.speed.get::<radian_per_second>();
        if let Some(asked) = self.grade {
            positive("grade", asked.get::<grade_number>(), "mm/s", "G2.5")?;
        }
        if let Some(has) = self.unbalance {
            zero_or_more("unbalance", has.get::<gram_millimeter>(), "g mm", "120 g mm")?;
        }
        if let Some(radius) = self.radius {
            positive_length("radius", radius)?;
        }
        let allowed =
            self.grade.map(|asked| permissible(mass, asked.get::<grade_number>() / 1e3, w));
        let has = self.unbalance.map(|has| has.get::<kilogram_meter>());
        let at_radius = |amount: f64| {
            self.radius.map(|radius| Mass::new::<kilogram>(amount / radius.get::<meter>()))
        };
        let whole = |amount: f64| Unbalance::new::<kilogram_meter>(amount).exact();
        Ok(BalanceFound {
            asked: self,
            permissible: allowed.map(Unbalance::new::<kilogram_meter>),
            permissible_eccentricity: allowed.map(|amount| Length::new::<meter>(amount / mass)),
            permissible_mass: allowed.and_then(at_radius),
            eccentricity: has.map(|amount| Length::new::<meter>(amount / mass)),
            reached: has.map(|amount| BalanceGrade::new::<grade_number>(amount / mass * w * 1e3)),
            mass_at_radius: has.and_then(at_radius),
            force: self.unbalance.map(|has| turning_force(has, self.speed)),
            within: has.zip(allowed).map(|(has, allowed)| whole(has) <= whole(allowed)),
        })
    }
}

impl BalanceFound {
    /// The steps, recomputed; the last one's result is `permissible` in g mm, or without a grade
    /// `reached` in mm/s. Empty where neither was asked.
    pub fn working(&self) -> Working {
        let Balance { mass, speed, grade: asked, unbalance, .. } = self.asked;
        let (kg, n) = (figure(mass.get::<kilogram>(), 4), speed.get::<revolution_per_minute>());
        let w = speed.get::<radian_per_second>();
        let mut steps = vec![Step {
            symbol: "ω",
            relation: "2 π n / 60",
            numbers: format!("2 π · {} / 60", figure(n, 3)),
            result: w,
            unit: "rad/s",
            source: ROTOR,
        }];
        let mut step = |symbol, relation, numbers, result, unit, source| {
            steps.push(Step { symbol, relation, numbers, result, unit, source });
        };
        let Ok(again) = self.asked.solve() else { return Working::default() };
        if let (Some(has), Some(e), Some(force), Some(reached)) =
            (unbalance, again.eccentricity, again.force, again.reached)
        {
            let u = figure(has.get::<gram_millimeter>(), 4);
            let (um, turns) = (e.get::<micrometer>(), figure(w, 3));
            step("e", "U / m", format!("{u} g mm / {kg} kg"), um, "µm", ROTOR);
            let newtons = force.get::<newton>();
            step("F", "U ω²", format!("{u}e-6 · {turns}²"), newtons, "N", ROTOR);
            let numbers = format!("{}e-3 · {turns}", figure(um, 4));
            step("G", "e ω", numbers, reached.get::<grade_number>(), "mm/s", GRADE);
        }
        if let (Some(asked), Some(allowed)) = (asked, again.permissible) {
            let numbers = format!(
                "{kg} kg · {} mm/s / {} rad/s",
                figure(asked.get::<grade_number>(), 3),
                figure(w, 3)
            );
            step("U per", "m G / ω", numbers, allowed.get::<gram_millimeter>(), "g mm", GRADE);
        } else if unbalance.is_none() {
            return Working::default();
        }
        Working { steps }
    }
}

/// A machine that a hub runs on.
#[derive(Clone, Debug, PartialEq)]
pub struct RunsOn {
    /// What the shop calls it.
    pub machine: String,
    /// Greatest speed there.
    pub speed: AngularVelocity,
    /// Grade asked for there.
    pub grade: BalanceGrade,
}

/// What [`shared_balance`] found.
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub struct SharedBalance {
    /// Every machine with what its grade allows there, in the order given.
    pub machines: Vec<(RunsOn, BalanceFound)>,
    /// The machine that allows least, by its place in that list.
    pub governs: usize,
    /// What it allows.
    pub permissible: Unbalance,
}

/// What may be left in one rotor that runs on several machines: the least of what they allow.
///
/// # Errors
///
/// As for [`Balance`], and [`ErrorKind::Missing`] without a machine.
///
/// # Source
///
/// ISO 21940-11, the identity from memory.
///
/// # Example
///
/// The same hub on a surface grinder in G2.5 and, twice as fast, on a tool grinder in G6.3: the
/// surface grinder asks for more.
///
/// ```
/// use hubwright::units::{AngularVelocity, BalanceGrade, Mass, grade_number, kilogram, revolution_per_minute};
/// use hubwright::wheel::{RunsOn, shared_balance};
///
/// let on = |machine: &str, rpm, g| RunsOn {
///     machine: machine.into(),
///     speed: AngularVelocity::new::<revolution_per_minute>(rpm),
///     grade: BalanceGrade::new::<grade_number>(g),
/// };
/// let machines = [on("surface", 2850.0, 2.5), on("tool", 5700.0, 6.3)];
/// let shared = shared_balance(Mass::new::<kilogram>(2.0), &machines, None, None)?;
/// assert_eq!(shared.machines[shared.governs].0.machine, "surface");
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn shared_balance(
    mass: Mass,
    machines: &[RunsOn],
    unbalance: Option<Unbalance>,
    radius: Option<Length>,
) -> Result<SharedBalance, Error> {
    let mut all = Vec::with_capacity(machines.len());
    let mut least: Option<(usize, Unbalance)> = None;
    for (at, on) in machines.iter().enumerate() {
        let mut asked = Balance::new(mass, on.speed).with_grade(on.grade);
        (asked.unbalance, asked.radius) = (unbalance, radius);
        let found = asked.solve()?;
        if let Some(allowed) = found.permissible
            && least.is_none_or(|(_, least)| allowed < least)
        {
            least = Some((at, allowed));
        }
        all.push((on.clone(), found));
    }
    let Some((governs, permissible)) = least else {
        return Err(ErrorKind::Missing {
            argument: "machines".into(),
            why: "without a machine there is no speed".into(),
            hint: "give each machine's speed and grade".into(),
        }
        .into());
    };
    Ok(SharedBalance { machines: all, governs, permissible })
}

/// What the tables ask of a superabrasive wheel, by its diameter.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct SuperabrasiveLimits {
    /// Greatest mass out of balance, `None` outside the table of 75 to 750 mm. The table is read
    /// without saying at which radius; it is taken for the rim.
    pub mass: Option<Mass>,
    /// Greatest run-out of its sides, of a standard wheel.
    pub side_run_out: Length,
    /// The same of a CBN wheel for high speed.
    pub high_speed_run_out: Length,
    /// Who gives the mass.
    pub mass_source: Source,
    /// Who gives the run-outs.
    pub run_out_source: Source,
}

/// How much a superabrasive wheel may be out of balance and run out.
///
/// # Errors
///
/// [`ErrorKind::OutOfRange`] or [`ErrorKind::NotFinite`] for a diameter not above 0 and up to 750 mm.
///
/// # Source
///
/// Marinescu et al., Tables 4.4 and 4.5; the latter is that of JIS B 4131.
///
/// # Example
///
/// ```
/// use hubwright::units::{Length, gram, micrometer, millimeter};
/// use hubwright::wheel::superabrasive_limits;
///
/// let limits = superabrasive_limits(Length::new::<millimeter>(200.0))?;
/// assert!((limits.mass.expect("in the table").get::<gram>() - 1.0).abs() < 1e-12);
/// assert!((limits.side_run_out.get::<micrometer>() - 20.0).abs() < 1e-9);
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn superabrasive_limits(diameter: Length) -> Result<SuperabrasiveLimits, Error> {
    positive_length("diameter", diameter)?;
    let nm = diameter.exact();
    let holds = |over: u16, to: u16| nm > f64::from(over) * 1e6 && nm <= f64::from(to) * 1e6;
    let Some((.., standard, fast)) =
        SUPERABRASIVE_RUN_OUT.into_iter().find(|(over, to, ..)| holds(*over, *to))
    else {
        return Err(ErrorKind::OutOfRange {
            argument: "diameter".into(),
            given: shown_mm(diameter),
            range: "above 750".into(),
            unit: "mm",
            authority: SIDE_RUN_OUT.to_string(),
            hint: "ask the wheel's maker".into(),
        }
        .into());
    };
    let mass = SUPERABRASIVE_MASS.into_iter().find(|(over, to, _)| holds(*over, *to));
    let um = |run_out: u16| Length::from_exact(f64::from(run_out) * 1e3);
    Ok(SuperabrasiveLimits {
        mass: mass.map(|(.., grams)| Mass::new::<gram>(grams)),
        side_run_out: um(standard),
        high_speed_run_out: um(fast),
        mass_source: JIS_B4131,
        run_out_source: SIDE_RUN_OUT,
    })
}
