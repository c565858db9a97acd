//! The taper that the hub sits on.
//!
//! Two of these rules need a solve, which is no matter of a few comparisons: they look at what is
//! missing first, and then ask [`seats`](crate::mounting::seats), which solves each geometry once.

use super::rule;
use crate::joint::Pushed;
use crate::joint::seat::{CONE_CONTACT, CONE_STATICS, PRINTS};
use crate::mounting::facts::{Facts, is_blank};
use crate::mounting::seats::{Sizes, pushed};
use crate::mounting::words::YesNo;
use crate::units::{Exact, Pressure, Ratio, pascal};

/// Share of the length that is to carry where nobody asks for another, as a fact.
const USUAL_SHARE: f64 = 0.75e9;

/// What a solve needs, in an order that messages follow.
#[inline(always)]
fn needed(f: &Facts) -> [f64; 12] {
    let s = &f.seat;
    [
        s.length.0,
        s.small_diameter.0,
        s.taper.0,
        s.mismatch.0,
        s.friction.0,
        s.nut_force.0,
        s.nut_diameter.0,
        s.hub_diameter.0,
        s.hub_modulus.0,
        s.hub_poisson.0,
        s.spindle_modulus.0,
        s.spindle_poisson.0,
    ]
}

/// The seat under its nut; every figure that a solve needs has to be given.
#[inline(always)]
fn solved(f: &Facts) -> Option<Pushed> {
    let s = &f.seat;
    let of = Sizes {
        length: s.length.0,
        small_diameter: s.small_diameter.0,
        taper: s.taper.0,
        friction: s.friction.0,
        nut_diameter: s.nut_diameter.0,
        hub_diameter: s.hub_diameter.0,
        step_from: s.step_from.0,
        step_diameter: s.step_diameter.0,
        spindle_bore: s.spindle_bore.0,
        overhangs: [s.overhang_small.0, s.overhang_large.0],
        hub: [s.hub_modulus.0, s.hub_poisson.0],
        spindle: [s.spindle_modulus.0, s.spindle_poisson.0],
    };
    pushed(of, s.nut_force.0, s.mismatch.0)
}

/// Whether one of the sizes that may be left out is asked for and blank.
#[inline(always)]
fn blank_beside(f: &Facts) -> bool {
    let s = &f.seat;
    let sizes = [
        s.step_from.0,
        s.step_diameter.0,
        s.spindle_bore.0,
        s.overhang_small.0,
        s.overhang_large.0,
    ];
    sizes.iter().fold(false, |any, size| any | is_blank(*size))
}

/// A step with one size alone can't be solved with.
#[inline(always)]
fn half_a_step(f: &Facts) -> bool {
    f.seat.step_from.given() != f.seat.step_diameter.given()
}

rule! {
    /// A hub whose angle is more open than the spindle's hangs by its small end:
    /// it rocks and frets, however hard it is drawn up. One that is more closed carries at its
    /// large end, and at the nut's force over the share of its length that the contact
    /// of hub and spindle comes to, by finite elements of both. Less than the share
    /// asked for, ¾ where none is asked for (common practice), cautions. A nut cannot cure an angle. For
    /// smooth, round cones pushed on once; sizes that nobody gives are taken for none.
    SEAT_FIT = "seat-fit", essential false;
    asks "does the small end of the taper carry, or too little of its length at the nut's force?";
    needs seat.mismatch, seat.nut_force, seat.length, seat.small_diameter, seat.taper, seat.friction,
        seat.nut_diameter, seat.hub_diameter, seat.hub_modulus, seat.hub_poisson, seat.spindle_modulus,
        seat.spindle_poisson;
    uses seat.share, seat.step_from, seat.step_diameter, seat.spindle_bore, seat.overhang_small,
        seat.overhang_large;
    cases {
        SmallEnd: Caution, Angle Most, CONE_CONTACT,
            "the hub is more open than the spindle by {found} of half angle, {demanded} is the most: the small end carries, it rocks and frets";
        TooLittle: Caution, Factor Least, CONE_CONTACT,
            "at the nut's force {found} of the length carries, {demanded} is asked for";
        UnderUsual: Caution, Factor Least, PRINTS,
            "at the nut's force {found} of the length carries, {demanded} is usual";
        NotCovered: Unknown, Nothing Most, CONE_CONTACT,
            "these figures make no seat that can be solved: walls, steps, nut and mismatch have to be within its bounds";
        Carries: Pass, Factor Least, CONE_CONTACT,
            "at the nut's force {found} of the length carries, {demanded} is asked for";
        CarriesUsual: Pass, Factor Least, PRINTS,
            "at the nut's force {found} of the length carries, {demanded} is usual";
    }
    advice "Bring the hub's angle to the spindle's, never more open; a nut can't pull an angle shut.";
    adds |f, _t| {
        let known = !needed(f).iter().any(|fact| fact.is_nan()) && !half_a_step(f);
        if known { solved(f).map(|pushed| pushed.to_string()) } else { None }
    };
    judge |f, _t| {
        // Known to be too open is enough, whatever else is blank.
        if f.seat.mismatch.0 > 0.0 {
            return It::SmallEnd.with(f.seat.mismatch.0, 0.0);
        }
        if blank_beside(f) | f.seat.share.blank() {
            return CANT_TELL;
        }
        if let Some(missing) = missing(needed(f)) {
            return missing;
        }
        if half_a_step(f) {
            return NOBODY_ASKS;
        }
        let Some(pushed) = solved(f) else { return It::NotCovered.bare() };
        let found = Ratio::from(pushed.contact).exact();
        if f.seat.share.given() {
            let asked = f.seat.share.0;
            let case = if found < asked { It::TooLittle } else { It::Carries };
            return case.with(found, asked);
        }
        let case = if found < USUAL_SHARE { It::UnderUsual } else { It::CarriesUsual };
        case.with(found, USUAL_SHARE)
    }
}

rule! {
    /// The greatest pressure of a fortieth of the seat's length, and the greatest hoop
    /// stress in the hub's bore, must stay within the yield stress over the factor asked for: the
    /// pressure within that of hub and spindle, the hoop stress within that of the hub. The edge
    /// itself presses harder until it beds in. Beyond yield the computed contact is wrong,
    /// and the hub grows and sits deeper each time it is drawn up.
    SEAT_OVERLOADED = "seat-overloaded", essential false;
    asks "is the seat's pressure or the hub's hoop stress above yield over the factor asked for?";
    needs seat.hub_yield, seat.yield_factor, seat.mismatch, seat.nut_force, seat.length, seat.small_diameter,
        seat.taper, seat.friction, seat.nut_diameter, seat.hub_diameter, seat.hub_modulus, seat.hub_poisson,
        seat.spindle_modulus, seat.spindle_poisson;
    uses seat.spindle_yield, seat.step_from, seat.step_diameter, seat.spindle_bore, seat.overhang_small,
        seat.overhang_large;
    cases {
        Pressed: Refuse, Stress Most, CONE_CONTACT,
            "the seat is pressed with {found}, {demanded} is yield over the factor";
        Stretched: Refuse, Stress Most, CONE_CONTACT,
            "the hub's bore is stretched with {found}, {demanded} is yield over the factor";
        NotCovered: Unknown, Nothing Most, CONE_CONTACT,
            "these figures make no seat that can be solved: walls, steps, nut and mismatch have to be within its bounds";
        Holds: Pass, Stress Most, CONE_CONTACT,
            "hub and seat are stressed with {found}, {demanded} is yield over the factor";
    }
    advice "Draw the hub up with less force, give it a thicker wall or a stronger steel, or bring its angle to the spindle's.";
    judge |f, _t| {
        if blank_beside(f) {
            return CANT_TELL;
        }
        if let Some(missing) = missing(needed(f)) {
            return missing;
        }
        if half_a_step(f) {
            return NOBODY_ASKS;
        }
        let Some(pushed) = solved(f) else { return It::NotCovered.bare() };
        let steps = |stress: Pressure| (stress.get::<pascal>() * 1e3).ceil();
        let (pressed, stretched) = (steps(pushed.peak_pressure), steps(pushed.hub_hoop));
        let allowed = |limit: f64| (limit * 1e9 / f.seat.yield_factor.0).floor();
        let (hub, spindle) = (allowed(f.seat.hub_yield.0), allowed(f.seat.spindle_yield.0));
        let least = hub.min(spindle);
        if pressed > least {
            return It::Pressed.with(pressed, least);
        }
        if stretched > hub {
            return It::Stretched.with(stretched, hub);
        }
        if f.seat.spindle_yield.blank() {
            return CANT_TELL;
        }
        if let Some(missing) = missing([f.seat.hub_yield.0, f.seat.yield_factor.0]) {
            return missing;
        }
        if least - pressed < hub - stretched {
            It::Holds.with(pressed, least)
        } else {
            It::Holds.with(stretched, hub)
        }
    }
}

rule! {
    /// A taper whose half angle has a tangent below the friction holds itself: once
    /// the nut is off it takes `F (μ − tan α) / (μ + tan α)` to push the hub off, `F` the
    /// nut's force. Without a jacking thread or a puller people use a hammer, which ruins spindle and
    /// bearings. Friction varies: a taper near the limit may stick or let go.
    TAPER_STICKS = "taper-sticks", essential false;
    asks "does the taper hold itself without a puller, or with too weak a one?";
    needs seat.taper, seat.friction, seat.puller;
    uses seat.nut_force, seat.puller_force;
    cases {
        Sticks: Caution, Factor Most, CONE_STATICS,
            "the taper holds itself: the friction of {found} is above the tangent of its half angle, {demanded}, and there is no puller";
        TooWeak: Caution, Force Least, CONE_STATICS,
            "the puller gives {found}, the taper holds with {demanded}";
        LetsGo: Pass, Factor Most, CONE_STATICS,
            "the taper lets go: the friction of {found} is not above the tangent of its half angle, {demanded}";
        Pulled: Pass, Force Least, CONE_STATICS,
            "the puller gives {found}, the taper holds with {demanded}";
        HasPuller: Pass, Nothing Most, CONE_STATICS,
            "the taper holds itself, and there is a puller";
    }
    advice "Give the hub a jacking thread, or use a puller that is strong enough; never a hammer on the spindle.";
    judge |f, _t| {
        let s = &f.seat;
        let (friction, slope) = (s.friction.0, s.taper.0 / 2.0);
        if friction <= slope {
            return It::LetsGo.with(friction, slope);
        }
        if (friction > slope) & s.puller.is(YesNo::No) {
            return It::Sticks.with(friction, slope);
        }
        // A puller that gives nothing to compare with is a puller all the same.
        let holds = (s.nut_force.0 * (friction - slope) / (friction + slope)).ceil();
        let gives = s.puller_force.0;
        if gives < holds {
            return It::TooWeak.with(gives, holds);
        }
        if is_blank(s.nut_force.0) | is_blank(gives) {
            return CANT_TELL;
        }
        if let Some(missing) = missing([s.taper.0, s.friction.0, s.puller.0]) {
            return missing;
        }
        if gives >= holds {
            return It::Pulled.with(gives, holds);
        }
        It::HasPuller.bare()
    }
}
