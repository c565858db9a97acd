//! The nut: hand of its thread, and the stack it has to hold.

use super::{Judged, rule};
use crate::mounting::facts::{Fact, Facts, is_blank};
use crate::mounting::terms::Law;
use crate::mounting::words::{Rotation, ThreadHand, YesNo};
use crate::tables::laws;
use crate::units::{Shop, inches, millimetres};
use crate::wheel::Fastening;

rule! {
    /// Drag and run-up turn the loose flange against the spindle, and the nut
    /// with it. Seen from the nut, a spindle that turns anticlockwise takes a
    /// right-hand thread and one that turns clockwise a left-hand one; the nut
    /// then tightens in use. A loose flange keyed to the hub can't turn the
    /// nut, so that a wrong hand is a caution there, except in Michigan. An
    /// unkeyed loose flange is always a caution: it can walk under a turning
    /// load, whatever the hand. A wheel with a thread of its own keeps the same
    /// rule, with nothing between. The hand of thread follows the running
    /// direction; hard braking is met by a key, a lock or a softer brake.
    THREAD_HAND = "thread-hand", essential true;
    asks "does the running direction loosen the nut?";
    needs spindle.rotation, nut.thread_hand;
    uses loose_flange.keyed, wheel.fastening;
    cases {
        Loosens: Refuse, Nothing Least, laws::THREAD_HAND_MI,
            "running loosens the nut: seen from the nut, anticlockwise takes a right-hand thread and clockwise a left-hand one";
        LoosensKeyed: Caution, Nothing Least, laws::THREAD_HAND_MI,
            "the hand of thread is against the rule; the keyed loose flange keeps the nut from turning";
        Unkeyed: Caution, Nothing Least, laws::PRACTICE,
            "running tightens the nut, but nothing keys the loose flange: it can walk and take the nut along";
        Tightens: Pass, Nothing Least, laws::THREAD_HAND_MI,
            "running tightens the nut, and the loose flange is keyed";
        WheelLoosens: Refuse, Nothing Least, laws::THREADED_WHEEL_MI,
            "running unscrews the wheel from its thread";
        WheelTightens: Pass, Nothing Least, laws::THREADED_WHEEL_MI,
            "running tightens the wheel on its thread";
        NoNut: NotChecked, Nothing Least, laws::THREAD_HAND_MI,
            "there is no central nut";
    }
    advice "Make nut and hub with the hand that the running direction asks for, and key the loose flange to the hub.";
    judge |f, t| {
        let (rotation, hand, keyed) = (f.spindle.rotation, f.nut.thread_hand, f.loose_flange.keyed);
        let threaded = f.fastening().is_one(Fastening::threaded);
        if (f.without_flanges() & !threaded) || hand.is(ThreadHand::NoNut) {
            return It::NoNut.bare();
        }
        if f.wheel.fastening.blank() {
            return CANT_TELL;
        }
        if let Some(missing) = missing([rotation.0, hand.0]) {
            return missing;
        }
        let tightens = (rotation.is(Rotation::Anticlockwise) && hand.is(ThreadHand::Right))
            || (rotation.is(Rotation::Clockwise) && hand.is(ThreadHand::Left));
        if threaded {
            return if tightens { It::WheelTightens.bare() } else { It::WheelLoosens.bare() };
        }
        if !tightens && t.has(Law::UsMi) {
            return It::Loosens.bare();
        }
        match (tightens, keyed.is(YesNo::Yes)) {
            _ if keyed.blank() => CANT_TELL,
            (true, true) => It::Tightens.bare(),
            (true, false) => It::Unkeyed.bare(),
            (false, true) => It::LoosensKeyed.bare(),
            (false, false) => It::Loosens.bare(),
        }
    }
}

/// Thickness of a blotter: nothing where there is none, blank where that is blank.
#[inline(always)]
fn blotter(present: Fact<YesNo>, thickness: f64) -> f64 {
    if present.is(YesNo::No) {
        0.0
    } else if present.blank() {
        present.0
    } else {
        thickness
    }
}

/// From the fixed flange's land to the inner face of the loose flange: the
/// wheel, its blotters and stabilisers. NaN where one of them is missing.
#[inline(always)]
fn clamped(f: &Facts) -> [f64; 4] {
    [
        f.wheel.thickness.0,
        blotter(f.fixed_blotter.present, f.fixed_blotter.thickness.0),
        blotter(f.loose_blotter.present, f.loose_blotter.thickness.0),
        f.hub.stabilisers.or(Fact::new(0.0)).0,
    ]
}

/// Whether nothing can turn a nut, or whether that can't be told.
#[inline(always)]
pub(super) fn no_nut(f: &Facts, none: Judged) -> Option<Judged> {
    if f.without_flanges() || f.nut.thread_hand.is(ThreadHand::NoNut) {
        return Some(none);
    }
    let blank = f.wheel.fastening.blank() || f.nut.thread_hand.blank();
    blank.then_some(Judged::CANT_TELL)
}

rule! {
    /// A nut that comes to the end of its thread is tight on the hub, not on
    /// the wheel. Sizes are counted from the land of the fixed flange. The
    /// stack of blotters, wheel, stabilisers and loose flange must reach
    /// the first full thread, and early enough that the thread fills the nut;
    /// and the loose flange must not stop on a shoulder before it grips.
    NUT_BOTTOMS = "nut-bottoms", essential false;
    asks "does nut or loose flange bottom before it grips, or does the thread not fill the nut?";
    needs hub.thread_from, hub.thread_to, nut.length, wheel.thickness, fixed_blotter.thickness, loose_blotter.thickness,
        loose_flange.thickness_at_hole;
    uses hub.stabilisers, hub.flange_stop, fixed_blotter.present, loose_blotter.present, nut.thread_hand, wheel.fastening;
    cases {
        Bottoms: Refuse, Size Least, laws::ARITHMETIC,
            "the stack is {found}, the first full thread lies at {demanded}: the nut stops before it grips";
        Stops: Refuse, Size Least, laws::ARITHMETIC,
            "the wheel with its blotters is {found}, the loose flange stops at {demanded} before it grips";
        NotFilled: Refuse, Size Most, laws::THREAD_FILLS_MI,
            "the stack is {found}; beyond {demanded} the thread does not fill the nut";
        Holds: Pass, Size Most, laws::ARITHMETIC,
            "the stack is {found}, {demanded} is the most the hub can hold";
        NoNut: NotChecked, Nothing Most, laws::ARITHMETIC,
            "there is no central nut";
    }
    advice "Fit a spacer ring of the flanges' diameter and land, a thicker wheel, or a hub made for this one.";
    adds |f, t| {
        let (least, most) = (f.hub.thread_from.0, f.hub.thread_to.0 - f.nut.length.0);
        let show = |nm| match t.shop {
            Shop::Metric => millimetres(nm),
            Shop::Inch => inches(nm),
        };
        (most >= least).then(|| format!("the hub holds stacks from {} to {}", show(least), show(most)))
    };
    judge |f, _t| {
        if let Some(answer) = no_nut(f, It::NoNut.bare()) {
            return answer;
        }
        let [wheel, fixed, loose, discs] = clamped(f);
        let flange = f.loose_flange.thickness_at_hole.0;
        let (from, most) = (f.hub.thread_from.0, f.hub.thread_to.0 - f.nut.length.0);
        let held = wheel + fixed + loose + discs;
        let stack = held + flange;
        let stop = f.hub.flange_stop;
        if stack < from {
            return It::Bottoms.with(stack, from);
        }
        if held < stop.0 {
            return It::Stops.with(held, stop.0);
        }
        if stack > most {
            return It::NotFilled.with(stack, most);
        }
        let needed = [wheel, fixed, loose, discs, flange, from, f.hub.thread_to.0, f.nut.length.0];
        if stop.blank() || needed.iter().any(|fact| is_blank(*fact)) {
            return CANT_TELL;
        }
        missing(needed).unwrap_or_else(|| It::Holds.with(stack, most))
    }
}

rule! {
    /// The thread must reach inside the loose flange, or the nut ends on its
    /// run-out; past half of the wheel's hole it takes away the spigot that
    /// carries the wheel. Sizes are counted from the land of the fixed flange.
    THREAD_REACH = "thread-reach", essential false;
    asks "does the thread fail to reach inside the flange, or run past half of the hole?";
    needs hub.thread_from, wheel.thickness, fixed_blotter.thickness, loose_blotter.thickness, loose_flange.thickness_at_hole;
    uses hub.stabilisers, fixed_blotter.present, loose_blotter.present, nut.thread_hand, wheel.fastening;
    cases {
        ShortByLaw: Refuse, Size Most, laws::THREAD_REACH_MI,
            "the first full thread lies at {found}, the loose flange ends at {demanded}";
        Short: Caution, Size Most, laws::THREAD_REACH_MI,
            "the first full thread lies at {found}, the loose flange ends at {demanded}; demanded in Michigan";
        DeepByLaw: Refuse, Size Least, laws::THREAD_REACH_MI,
            "the thread begins at {found}, half of the hole lies at {demanded}";
        Deep: Caution, Size Least, laws::THREAD_REACH_MI,
            "the thread begins at {found}, half of the hole lies at {demanded}; demanded in Michigan";
        Reaches: Pass, Size Least, laws::THREAD_REACH_MI,
            "the thread begins at {found}, half of the hole lies at {demanded}";
        NoNut: NotChecked, Nothing Least, laws::THREAD_REACH_MI,
            "there is no central nut";
    }
    advice "Make the thread begin inside the loose flange and before the spigot has to carry the wheel.";
    judge |f, t| {
        if let Some(answer) = no_nut(f, It::NoNut.bare()) {
            return answer;
        }
        let [wheel, fixed, loose, discs] = clamped(f);
        let flange = f.loose_flange.thickness_at_hole.0;
        let from = f.hub.thread_from.0;
        let end = wheel + fixed + loose + discs + flange;
        // A disc on each side: half of the discs lies under the wheel.
        let half = fixed + discs / 2.0 + wheel / 2.0;
        let by_law = t.has(Law::UsMi);
        if from >= end {
            let case = if by_law { It::ShortByLaw } else { It::Short };
            return case.with(from, end);
        }
        if from < half {
            let case = if by_law { It::DeepByLaw } else { It::Deep };
            return case.with(from, half);
        }
        missing([from, wheel, fixed, loose, discs, flange]).unwrap_or_else(|| It::Reaches.with(from, half))
    }
}
