//! What a nut's torque does to the threads.

use std::f64::consts::PI;

use super::rule;
use super::thread::no_nut;
use crate::joint::nut::TIGHTENED;
use crate::mounting::facts::Facts;
use crate::mounting::sort::Shown;
use crate::mounting::words::YesNo;
use crate::solid::screw::tightening_arm;
use crate::tables::threads::LEAST_SHEAR_SHARE;
use crate::units::Force;

/// √3/2: height of a sharp thread over its pitch.
pub(super) const HEIGHT: f64 = 0.866_025_403_784_438_6;
const ROOT_3: f64 = 2.0 * HEIGHT;
/// A stress that no metal bears, for a thread of which nothing is left, in whole steps.
pub(super) const NOTHING_LEFT: f64 = 1e15;
/// Share of the proof stress that may be used, by VDI 2230.
const SHARE: f64 = 0.9;

/// Least pitch, in nm, for which [`LEAST_SHEAR_SHARE`] was worked out.
const LEAST_PITCH: f64 = 500_000.0;

/// Preload in N, and the arms of thread and of all, in metres; NaN while anything is missing.
#[inline(always)]
pub(super) fn preload(f: &Facts) -> [f64; 2] {
    let pitch = f.nut.thread_pitch.0 / 1e9;
    let middle = f.nut.thread_diameter.0 / 1e9 - 0.75 * HEIGHT * pitch;
    let rub = f.nut.thread_friction.0 / 1e9 / HEIGHT;
    let thread = tightening_arm(middle, pitch, rub);
    let radius = (f.nut.face_diameter.0 + f.nut.face_hole.0) / 4e9;
    let arm = thread + f.nut.face_friction.0 / 1e9 * radius;
    let force = f.nut.tightening_torque.0 / 1e6 / arm;
    // So steep a pitch, or so rough a thread, that no torque turns it.
    [if thread <= 0.0 { f64::INFINITY } else { force }, thread]
}

/// Zero where nobody gives it: what is left out of bore and slot makes a thread no weaker.
#[inline(always)]
fn or_none(size: f64) -> f64 {
    if size.is_nan() { 0.0 } else { size / 1e9 }
}

/// Tension and torsion together, in whole steps of a stress, rounded up.
#[inline(always)]
fn stress(f: &Facts, [force, arm]: [f64; 2]) -> f64 {
    let (major, pitch) = (f.nut.thread_diameter.0 / 1e9, f.nut.thread_pitch.0 / 1e9);
    // (d2 + d3) / 2, with d2 = d − 3/4 H and d3 = d − 17/12 H.
    let round = major - 13.0 / 12.0 * HEIGHT * pitch;
    let bore = or_none(f.hub.thread_bore.0);
    let (width, depth) = (or_none(f.hub.thread_slot_width.0), or_none(f.hub.thread_slot_depth.0));
    let bottom = major / 2.0 - depth;
    let slotted = (width > 0.0) & (depth > 0.0);
    let circle = round / 2.0;
    // Width times depth, which is a little more than the slot takes of the circle.
    let chord = 2.0 * (circle * circle - bottom * bottom).max(0.0).sqrt();
    let reach = if slotted & (bottom < circle) { circle - bottom } else { 0.0 };
    let lost = reach * if width < chord { width } else { chord };
    let beside = if bore > 0.0 { 2.0 * bottom } else { circle + bottom };
    let clear = if slotted & (beside < round) { beside } else { round };
    let area = PI / 4.0 * (round * round - bore * bore) - lost;
    let modulus = PI / 12.0 * (clear * clear * clear - bore * bore * bore);
    let (tension, torsion) = (force / area, force * arm / modulus);
    let both = (tension * tension + 3.0 * torsion * torsion).sqrt();
    let carries = (area > 0.0) & (modulus > 0.0);
    steps(if carries | force.is_nan() { both } else { f64::INFINITY })
}

/// A stress in whole steps, rounded up and never infinite; NaN stays.
#[inline(always)]
fn steps(stress: f64) -> f64 {
    let steps = (stress * 1e3).ceil();
    if steps > NOTHING_LEFT { NOTHING_LEFT } else { steps }
}

/// Length of the hub's thread in nm, not below zero; NaN where it is not known.
#[inline(always)]
fn reach(f: &Facts) -> f64 {
    let reach = f.hub.thread_to.0 - f.hub.thread_from.0;
    if reach < 0.0 { 0.0 } else { reach }
}

/// Shear of the hub's and of the nut's threads, likewise.
#[inline(always)]
fn shear(f: &Facts, force: f64) -> [f64; 2] {
    let major = f.nut.thread_diameter.0 / 1e9;
    // No more of the nut counts than there is thread under it.
    let length = f.nut.length.0.min(reach(f)) / 1e9;
    let minor = major - 1.25 * HEIGHT * f.nut.thread_pitch.0 / 1e9;
    // An arc is no longer than π/2 times its chord: no more than this share of the girth is cut.
    let width = or_none(f.hub.thread_slot_width.0) / minor;
    let cut = if width < 1.0 { width / 2.0 } else { 0.5 };
    let whole = (1.0 - cut) * LEAST_SHEAR_SHARE * PI * length;
    let sheared = |girth: f64| force / (girth * whole);
    let none_left = (minor <= 0.0) & !force.is_nan();
    [sheared(0.75 * minor), sheared(0.875 * major)]
        .map(|stress| steps(if none_left { f64::INFINITY } else { stress }))
}

rule! {
    /// The torque on the nut, with the least friction of thread and face, pulls the
    /// thread with `F = T / (d2/2 tan(φ + ρ') + μ r)`, `r` the mean radius of the face, and
    /// twists it. Tension and torsion together must stay within 0.9 of the proof stress of
    /// the hub's thread, on the stress area less the bore and a key slot, width times its depth in that area. The
    /// threads of hub and nut must not shear: their stress stays within 0.9 of the proof stress over
    /// √3, on the least areas that 6g and 6H (2A and 2B) leave, 0.65 of the basic ones, over the length of the nut, or that of the
    /// hub's thread where it is the shorter.
    /// For 60° threads with one start and a pitch from 0.5 mm. Not in it: the peak of stress and the bending that a slot brings,
    /// what cutting adds, and a face so large that a rough thread twists it more than a smooth one.
    /// A slot that nobody gives is taken for none, unless the loose flange is keyed: its key runs in one.
    NUT_OVERLOADED = "nut-overloaded", essential false;
    asks "does the nut's torque stress the thread beyond 0.9 of its proof stress, or strip it?";
    needs nut.tightening_torque, nut.thread_diameter, nut.thread_pitch, nut.thread_friction, nut.face_friction,
        nut.face_diameter, nut.face_hole, nut.proof_stress, nut.length, hub.thread_proof_stress, hub.thread_bore;
    uses hub.thread_from, hub.thread_to, hub.thread_slot_width, hub.thread_slot_depth, loose_flange.keyed, nut.thread_hand, wheel.fastening;
    cases {
        Overloaded: Refuse, Stress Most, TIGHTENED,
            "the torque stresses the hub's thread to {found}; 0.9 of its proof stress is {demanded}";
        HubStrips: Refuse, Stress Most, TIGHTENED,
            "the torque shears the hub's thread with {found}; 0.9 of its proof stress over √3 is {demanded}";
        NutStrips: Refuse, Stress Most, TIGHTENED,
            "the torque shears the nut's thread with {found}; 0.9 of its proof stress over √3 is {demanded}";
        Holds: Pass, Stress Most, TIGHTENED,
            "the torque stresses the hub's thread to {found}; 0.9 of its proof stress is {demanded}";
        Fine: NotChecked, Size Least, TIGHTENED,
            "the pitch is {found}; the least areas of the threads are known from {demanded} on";
        NoNut: NotChecked, Nothing Most, TIGHTENED,
            "there is no central nut";
    }
    advice "Tighten with less torque, only enough that the wheel can't slip, or fit a longer or stronger nut.";
    adds |f, t| {
        let [force, _] = preload(f);
        (force > 0.0 && force < f64::INFINITY)
            .then(|| format!("the nut pulls with up to {}", Force::shown(force * 1e3, t.shop)))
    };
    judge |f, _t| {
        if let Some(answer) = no_nut(f, It::NoNut.bare()) {
            return answer;
        }
        let pulls = preload(f);
        let (hub, nut) = (f.hub.thread_proof_stress.0, f.nut.proof_stress.0);
        let (found, allowed) = (stress(f, pulls), (hub * SHARE).floor());
        let [hub_shear, nut_shear] = shear(f, pulls[0]);
        let [hub_allowed, nut_allowed] = [hub, nut].map(|proof| (proof * SHARE / ROOT_3).floor());
        // A breach of what is known stands, whatever else is blank.
        if found > allowed {
            return It::Overloaded.with(found, allowed);
        }
        if hub_shear > hub_allowed {
            return It::HubStrips.with(hub_shear, hub_allowed);
        }
        if nut_shear > nut_allowed {
            return It::NutStrips.with(nut_shear, nut_allowed);
        }
        let (width, depth) = (f.hub.thread_slot_width, f.hub.thread_slot_depth);
        if width.blank() | depth.blank() | f.hub.thread_from.blank() | f.hub.thread_to.blank() {
            return CANT_TELL;
        }
        let n = &f.nut;
        let needed = [
            n.tightening_torque.0, n.thread_diameter.0, n.thread_pitch.0, n.thread_friction.0, n.face_friction.0,
            n.face_diameter.0, n.face_hole.0, nut, n.length.0, hub, f.hub.thread_bore.0,
        ];
        if let Some(missing) = missing(needed) {
            return missing;
        }
        if n.thread_pitch.0 < LEAST_PITCH {
            return It::Fine.with(n.thread_pitch.0, LEAST_PITCH);
        }
        // A slot with one size alone is no slot that can be judged, nor is the one that a key must have.
        let keyed = f.loose_flange.keyed.is(YesNo::Yes) & !width.given();
        if (width.given() != depth.given()) | keyed {
            return NOBODY_ASKS;
        }
        It::Holds.with(found, allowed)
    }
}
