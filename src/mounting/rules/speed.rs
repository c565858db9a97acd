//! Speed: the spindle against the marking on the wheel.

use super::rule;
use crate::mounting::facts::{Facts, is_blank};
use crate::tables::laws;
use crate::wheel::speed::rim_exact;

/// Whether the marked turns would run the rim past the marked rim speed, but
/// by so little (0.5 %) that one marking was rounded from the other.
#[inline(always)]
fn rounded(f: &Facts) -> bool {
    let at_marked_turns = rim_exact(f.wheel.diameter.0, f.wheel.marked_speed.0);
    at_marked_turns * 1000.0 <= f.wheel.marked_rim_speed.0 * 1005.0
}

rule! {
    /// A wheel over its marked speed can burst. The spindle's greatest speed
    /// counts, with its fastest belt and its inverter at the end of its range,
    /// and the diameter of the new wheel. A wheel is marked in turns, in rim
    /// speed or in both; each marking given must hold. Where the two disagree
    /// by rounding alone, the turns decide and `markings-disagree` says so.
    OVER_SPEED = "over-speed", essential true;
    asks "can the spindle turn faster, in turns or at the rim, than the wheel is marked for?";
    needs spindle.greatest_speed;
    uses wheel.marked_speed, wheel.marked_rim_speed, wheel.diameter;
    cases {
        Turns: Refuse, Turns Most, laws::MARKED_SPEED,
            "the spindle can turn {found}, the wheel is marked {demanded}";
        Rim: Refuse, Rim Most, laws::MARKED_SPEED,
            "the rim can run {found}, the wheel is marked {demanded}";
        TurnsHeld: Pass, Turns Most, laws::MARKED_SPEED,
            "the spindle turns at most {found}, the wheel is marked {demanded}";
        RimHeld: Pass, Rim Most, laws::MARKED_SPEED,
            "the rim runs at most {found}, the wheel is marked {demanded}";
    }
    advice "Never run it. Slow the spindle so that it can't go faster, or fit a wheel marked for this speed.";
    judge |f, _t| {
        let (n, d) = (f.spindle.greatest_speed.0, f.wheel.diameter.0);
        let (turns, rim) = (f.wheel.marked_speed.0, f.wheel.marked_rim_speed.0);
        let found = rim_exact(d, n);
        // A breach of what is known stands, whatever else is blank.
        if n > turns {
            return It::Turns.with(n, turns);
        }
        if found > rim && !rounded(f) {
            return It::Rim.with(found, rim);
        }
        if is_blank(n) || is_blank(turns) || is_blank(rim) || (!rim.is_nan() && is_blank(d)) {
            return CANT_TELL;
        }
        if n.is_nan() || (turns.is_nan() && rim.is_nan()) || (!rim.is_nan() && d.is_nan()) {
            return NOBODY_ASKS;
        }
        let turns_are_closer = rim.is_nan() || n * rim > found * turns;
        if turns_are_closer || found > rim { It::TurnsHeld.with(n, turns) } else { It::RimHeld.with(found, rim) }
    }
}

rule! {
    /// Wheels are often marked in turns and in rim speed, each rounded from
    /// the other, so that one says a little less: 250 mm at 3820 rpm is
    /// 50.004 m/s. Where the marked turns would run the rim past the marked rim
    /// speed by no more than 0.5 %, that is a caution and the turns decide.
    /// Markings further apart than that contradict each other: the diameter, or
    /// one of them, was probably misread, and the lower speed governs.
    MARKINGS_DISAGREE = "markings-disagree", essential false;
    asks "do the speeds marked in turns and at the rim disagree?";
    needs wheel.marked_speed, wheel.marked_rim_speed, wheel.diameter;
    cases {
        Contradict: Caution, Rim Most, laws::MARKED_SPEED,
            "the marked turns would run the rim at {found}, the marked rim speed is {demanded}: the lower governs";
        Rounded: Caution, Rim Most, laws::MARKED_SPEED,
            "the marked turns come to {found} at the rim, the marked rim speed is {demanded}: one was rounded from the other";
        Agree: Pass, Rim Most, laws::MARKED_SPEED,
            "the marked turns come to {found} at the rim, the marked rim speed is {demanded}";
    }
    advice "Read both markings and the diameter again; ask the maker which speed holds.";
    judge |f, _t| {
        let (turns, rim) = (f.wheel.marked_speed.0, f.wheel.marked_rim_speed.0);
        let d = f.wheel.diameter.0;
        if let Some(missing) = missing([turns, rim, d]) {
            return missing;
        }
        let marked = rim_exact(d, turns);
        if marked > rim && !rounded(f) {
            return It::Contradict.with(marked, rim);
        }
        if marked > rim { It::Rounded.with(marked, rim) } else { It::Agree.with(marked, rim) }
    }
}
