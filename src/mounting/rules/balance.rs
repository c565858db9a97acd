//! How much the mounting is out of balance.

use std::f64::consts::PI;

use super::fit::widest;
use super::rule;
use crate::mounting::facts::{Facts, is_blank};
use crate::solid::rotor::permissible;
use crate::tables::balance::GRADE;
use crate::units::figure;

/// Turning speed in rad/s.
#[inline(always)]
fn turning(f: &Facts) -> f64 {
    f.spindle.greatest_speed.0 / 1e6 * (PI / 30.0)
}

/// What is there of something that nobody asks for.
#[inline(always)]
fn or_none(amount: f64) -> f64 {
    if amount.is_nan() { 0.0 } else { amount }
}

/// What a wheel that hangs to one side and an unbalanced hub come to at worst, as far as it is known.
#[inline(always)]
fn built(f: &Facts) -> f64 {
    let (hole, spigot) = widest(f);
    let clearance = or_none(hole - spigot).max(0.0);
    // Half of each is off centre; 1 nm of 1 µg is a millionth of a step. A spigot that runs out may be the whole hub that
    // sits crooked, and the wheel with it.
    let (wheel, all) = (f.wheel.mass.0, f.hub.rotor_mass.0);
    let off = or_none(clearance / 2.0 * wheel) + or_none(f.hub.spigot_run_out.0 / 2.0 * all);
    (off / 1e6 + or_none(f.hub.bare_unbalance.0)).ceil()
}

rule! {
    /// The grade asked for allows `m G / ω` at the spindle's greatest speed, `m` being all
    /// that turns with the hub. The residual unbalance is judged where it was measured. Without a
    /// measurement, what the mounting can come to is judged: the wheel off centre by
    /// half of its clearance, all that turns by half of the spigot's run-out, and the bare hub's own unbalance of key slot, key, holes and
    /// filler, all on one side. Balancing takes that away; truing alone moves the rim and not the hole.
    /// The grade is from memory, so that this only cautions.
    UNBALANCE = "unbalance", essential false;
    asks "is the residual unbalance, or what clearance and bare hub can come to, above the grade asked for?";
    needs spindle.greatest_speed, hub.balance_grade, hub.rotor_mass;
    uses hub.residual_unbalance, wheel.mass, wheel.hole, hub.spigot, hub.spigot_run_out, hub.bare_unbalance,
        wheel.largest_hole, hub.smallest_spigot, wheel.fastening;
    cases {
        LeftOver: Caution, Unbalance Most, GRADE,
            "the residual unbalance is {found}; the grade allows {demanded} at the spindle's greatest speed";
        BuiltIn: Caution, Unbalance Most, GRADE,
            "clearance, run-out and the bare hub can come to {found}; the grade allows {demanded} at the spindle's greatest speed";
        Balanced: Pass, Unbalance Most, GRADE,
            "the residual unbalance is {found}; the grade allows {demanded} at the spindle's greatest speed";
        WellMade: Pass, Unbalance Most, GRADE,
            "clearance, run-out and the bare hub come to {found} at most; the grade allows {demanded} at the spindle's greatest speed";
        NoSpigot: NotChecked, Nothing Most, GRADE,
            "the wheel sits on no spigot, and no residual unbalance is given";
    }
    advice "Balance the wheel on its hub, true it, and balance it again; where the weights can't reach, look at clearance and seat.";
    adds |f, _t| {
        let residual = f.hub.residual_unbalance;
        let amount = if residual.given() { residual.0 } else { built(f) };
        let force = amount / 1e12 * turning(f).powi(2);
        (force > 0.0 && force.is_finite()).then(|| format!("it turns with a force of {} N", figure(force, 1)))
    };
    judge |f, _t| {
        let (mass, grade, w) = (f.hub.rotor_mass.0, f.hub.balance_grade.0, turning(f));
        if let Some(missing) = missing([f.spindle.greatest_speed.0, grade, mass]) {
            return missing;
        }
        // µg and nm/s, to millionths of a gram millimetre.
        let allowed = (permissible(mass, grade, w) / 1e6).floor();
        let residual = f.hub.residual_unbalance;
        if residual.blank() {
            return CANT_TELL;
        }
        if residual.0 > allowed {
            return It::LeftOver.with(residual.0, allowed);
        }
        if residual.given() {
            return It::Balanced.with(residual.0, allowed);
        }
        if f.without_flanges() {
            return It::NoSpigot.bare();
        }
        let (hole, spigot) = widest(f);
        let parts = [f.wheel.mass.0, hole, spigot, f.hub.spigot_run_out.0, f.hub.bare_unbalance.0];
        let blank = parts.iter().fold(f.wheel.fastening.blank(), |any, part| any | is_blank(*part));
        if blank {
            return CANT_TELL;
        }
        let found = built(f);
        if found > allowed {
            return It::BuiltIn.with(found, allowed);
        }
        if let Some(missing) = missing(parts) {
            return missing;
        }
        It::WellMade.with(found, allowed)
    }
}
