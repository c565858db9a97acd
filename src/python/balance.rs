//! Balance: what grades allow; part of `hubwright.wheel`.

use pyo3::prelude::*;

use super::nut::missing;
use super::quantity::{Out, Q};
use super::rings::{Published, found};
use super::verdict::Source;
use super::wheel::Working;
use crate::error::Error;
use crate::mounting::sort::show;
use crate::tables::balance::GRADES;
use crate::tables::materials;
use crate::units::{AngularVelocity, BalanceGrade, Force, Length, Mass, Unbalance};
use crate::wheel::{self, RunsOn};

/// What `balance` found.
#[pyclass(frozen, module = "hubwright._core")]
pub struct Balance(wheel::BalanceFound);

found! {
    Balance(wheel::BalanceFound) {
        /// Unbalance that the grade allows, in g mm; None without a grade.
        permissible: Option<Out<Unbalance>> = |of| of.permissible.map(Out);
        /// Distance of the centre of mass from the axis that the grade allows, in mm.
        permissible_eccentricity: Option<Out<Length>> = |of| of.permissible_eccentricity.map(Out);
        /// The same as a mass at the radius of the weights, in kg; None without a radius.
        permissible_mass: Option<Out<Mass>> = |of| of.permissible_mass.map(Out);
        /// Distance of the centre of mass from the axis, in mm; None without an unbalance.
        eccentricity: Option<Out<Length>> = |of| of.eccentricity.map(Out);
        /// Grade that the unbalance comes to at this speed: the number behind the G, in mm/s.
        reached: Option<Out<BalanceGrade>> = |of| of.reached.map(Out);
        /// Mass at the radius of the weights that would balance it, in kg.
        mass_at_radius: Option<Out<Mass>> = |of| of.mass_at_radius.map(Out);
        /// Force that turns with the unbalance, in N.
        force: Option<Out<Force>> = |of| of.force.map(Out);
        /// Whether it keeps to the grade; None without a grade or without an unbalance.
        within: Option<bool> = |of| of.within;
    }

    /// The steps, recomputed; the last one's result is `permissible` in g mm, or `reached` in mm/s without a grade.
    fn working(&self) -> Working {
        Working(self.0.working())
    }

    fn __repr__(&self) -> String {
        let of = &self.0;
        let allowed = of.permissible.map(|amount| format!(" {} allowed", show(amount)));
        let has = of.asked.unbalance.zip(of.reached);
        let has = has.map(|(amount, grade)| format!(" {} is G{}", show(amount), show(grade).trim_end_matches(" mm/s")));
        let over = if of.within == Some(false) { ", ABOVE THE GRADE" } else { "" };
        let parts: Vec<_> = [allowed, has].into_iter().flatten().collect();
        format!("<Balance{}{over}>", parts.join(","))
    }
}

/// What a balance grade allows a rotor at a speed, and what its unbalance comes to.
///
/// U = m e, G = e ω, so that a grade allows U = m G / ω; F = U ω² turns with it. One rigid rotor in one
/// plane, without resonance.
///
/// Args:
///     mass: Mass of all that turns: wheel, hub, flanges, nut.
///     speed: Rotational speed, above zero.
///     grade: Grade asked for, like `"G2.5"` or `"2.5 mm/s"`.
///     unbalance: Unbalance that it has, zero or above, like `"120 g mm"`.
///     radius: Radius of the ring that weights sit on, for masses.
///
/// Returns:
///     Balance: `.permissible`, `.permissible_mass`, `.reached`, `.force`, `.within` and more.
///
/// Raises:
///     UnitError, TextError: No quantities of these kinds.
///     OutOfRangeError: A figure that is not above zero.
///
/// Source: ISO 21940-11, from memory.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> found = hw.wheel.balance(mass="12 kg", speed="1450 rpm", grade="G6.3", radius="80 mm")
///     >>> print(f"{found.permissible:.1f~P}, {found.permissible_mass.m_as('g'):.2f} g at the ring")
///     497.9 g·mm, 6.22 g at the ring
///     >>> hw.wheel.balance(mass="3 kg", speed="2850 rpm", grade="G2.5", unbalance="30 g mm")
///     <Balance 25.13 g mm allowed, 30 g mm is G2.9845, ABOVE THE GRADE>
#[pyfunction]
#[pyo3(signature = (*, mass, speed, grade = None, unbalance = None, radius = None))]
pub fn balance(
    mass: Q<Mass>,
    speed: Q<AngularVelocity>,
    grade: Option<Q<BalanceGrade>>,
    unbalance: Option<Q<Unbalance>>,
    radius: Option<Q<Length>>,
) -> PyResult<Balance> {
    let nothing = grade.is_none() && unbalance.is_none();
    let mut asked = wheel::Balance::new(mass.named("mass")?, speed.named("speed")?);
    if let Some(grade) = grade {
        asked = asked.with_grade(grade.named("grade")?);
    }
    if let Some(unbalance) = unbalance {
        asked = asked.with_unbalance(unbalance.named("unbalance")?);
    }
    if let Some(radius) = radius {
        asked = asked.with_radius(radius.named("radius")?);
    }
    let found = asked.solve()?;
    if nothing {
        let why = "without it, or an unbalance, nothing follows";
        return Err(missing("grade", why, "give grade=\"G2.5\", unbalance=\"30 g mm\", or both"));
    }
    Ok(Balance(found))
}

/// What `shared_balance` found.
#[pyclass(frozen, module = "hubwright._core")]
pub struct SharedBalance(wheel::SharedBalance);

found! {
    SharedBalance(wheel::SharedBalance) {
        /// Each machine by name, with what its grade allows there.
        machines: Vec<(String, Balance)> = |of| {
            of.machines.iter().map(|(on, found)| (on.machine.clone(), Balance(*found))).collect()
        };
        /// Name of the machine that allows least.
        governs: String = |of| of.machines.get(of.governs).map_or_else(String::new, |(on, _)| on.machine.clone());
        /// What it allows, in g mm.
        permissible: Out<Unbalance> = |of| Out(of.permissible);
    }

    fn __repr__(&self) -> String {
        let governs = self.0.machines.get(self.0.governs).map_or("", |(on, _)| on.machine.as_str());
        format!("<SharedBalance {} allowed by {governs}>", show(self.0.permissible))
    }
}

/// What may be left in one hub that serves several machines: the least of what they allow.
///
/// Args:
///     mass: Mass of all that turns.
///     machines: For each machine its name, greatest speed and grade.
///     unbalance: Unbalance that it has, to be judged on each.
///     radius: Radius of the ring that weights sit on.
///
/// Returns:
///     SharedBalance: `.machines`, `.governs`, `.permissible`.
///
/// Raises:
///     MissingError: No machine.
///     UnitError, TextError, OutOfRangeError: As for `balance`.
///
/// Source: ISO 21940-11, from memory.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> hw.wheel.shared_balance(
///     ...     mass="2 kg", machines=[("surface", "2850 rpm", "G2.5"), ("tool", "8000 rpm", "G6.3")],
///     ... )
///     <SharedBalance 15.04 g mm allowed by tool>
#[pyfunction]
#[pyo3(signature = (*, mass, machines, unbalance = None, radius = None))]
pub fn shared_balance(
    mass: Q<Mass>,
    machines: Vec<(String, Q<AngularVelocity>, Q<BalanceGrade>)>,
    unbalance: Option<Q<Unbalance>>,
    radius: Option<Q<Length>>,
) -> PyResult<SharedBalance> {
    let machines: Vec<RunsOn> = machines
        .into_iter()
        .map(|(machine, speed, grade)| {
            Ok(RunsOn { machine, speed: speed.named("speed")?, grade: grade.named("grade")? })
        })
        .collect::<Result<_, Error>>()?;
    let unbalance = unbalance.map(|unbalance| unbalance.named("unbalance")).transpose()?;
    let radius = radius.map(|radius| radius.named("radius")).transpose()?;
    Ok(SharedBalance(wheel::shared_balance(mass.named("mass")?, &machines, unbalance, radius)?))
}

/// Balance grades with what they are used for, each with its source. Finest first.
///
/// Returns:
///     One `Published` a grade, in mm/s.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> hw.wheel.balance_grades()[2]
///     <Published machine tools: 2.5 mm/s [common practice, no source]>
#[pyfunction]
pub fn balance_grades() -> Vec<Published> {
    let row = |grade: &crate::tables::balance::Grade| {
        let name = if grade.used_for.is_empty() { "a step of the series" } else { grade.used_for };
        let (least, greatest) = (grade.number, grade.number);
        Published(materials::Published {
            name,
            least,
            greatest,
            unit: "mm/s",
            source: grade.source,
        })
    };
    GRADES.iter().map(row).collect()
}

/// What the tables ask of a superabrasive wheel, by its diameter.
#[pyclass(frozen, module = "hubwright._core")]
pub struct SuperabrasiveLimits(wheel::SuperabrasiveLimits);

found! {
    SuperabrasiveLimits(wheel::SuperabrasiveLimits) {
        /// Greatest mass out of balance, in kg, taken for the rim; None outside 75 to 750 mm.
        mass: Option<Out<Mass>> = |of| of.mass.map(Out);
        /// Greatest side run-out of a standard wheel, in mm.
        side_run_out: Out<Length> = |of| Out(of.side_run_out);
        /// The same of a CBN wheel for high speed, in mm.
        high_speed_run_out: Out<Length> = |of| Out(of.high_speed_run_out);
        /// Who gives the mass.
        mass_source: Source = |of| Source(of.mass_source);
        /// Who gives the run-outs.
        run_out_source: Source = |of| Source(of.run_out_source);
    }

    fn __repr__(&self) -> String {
        let mass = self.0.mass.map_or_else(|| "no mass".to_owned(), show);
        format!("<SuperabrasiveLimits {mass}, side run-out {}>", show(self.0.side_run_out))
    }
}

/// How much a superabrasive wheel may be out of balance and run out at its sides.
///
/// Args:
///     diameter: Outside diameter, up to 750 mm.
///
/// Returns:
///     SuperabrasiveLimits: `.mass`, `.side_run_out`, `.high_speed_run_out`.
///
/// Raises:
///     UnitError, TextError, OutOfRangeError: No length, or one outside the table.
///
/// Source: Marinescu et al., Tables 4.4 and 4.5 (JIS B 4131).
///
/// Examples:
///     >>> import hubwright as hw
///     >>> hw.wheel.superabrasive_limits("200 mm")
///     <SuperabrasiveLimits 0.001 kg, side run-out 0.02 mm>
#[pyfunction]
pub fn superabrasive_limits(diameter: Q<Length>) -> PyResult<SuperabrasiveLimits> {
    Ok(SuperabrasiveLimits(wheel::superabrasive_limits(diameter.named("diameter")?)?))
}
