//! The taper seat between hub and spindle.

use super::rule;
use crate::gauge::GEOMETRY;
use crate::mounting::facts::is_blank;

rule! {
    /// A taper hub centres and holds by its taper alone. Where its face meets the
    /// spindle's shoulder first, the nut presses the face, the taper stays loose, and the
    /// hub runs out and frets. The gap between face and shoulder, with the hub put on by
    /// hand, must be more than the hub travels as the nut draws it up; the least gap, when
    /// one is asked for, is what must be left for wear and for what was measured wrong.
    SEAT_TOUCHES_SHOULDER = "seat-touches-shoulder", essential false;
    asks "drawn up, does the hub's face meet the spindle's shoulder before the taper seats?";
    needs hub.stand_off, hub.draw_up;
    uses hub.least_gap;
    cases {
        Touches: Refuse, Size Least, GEOMETRY,
            "the hub stands off its shoulder by {found} by hand, the nut draws it up by {demanded}";
        JustMeets: Caution, Size Least, GEOMETRY,
            "the hub stands off its shoulder by {found} by hand, and the nut draws it up by all of {demanded}";
        Close: Caution, Size Least, GEOMETRY,
            "drawn up, {found} is left between the hub and its shoulder, {demanded} was asked for";
        Clears: Pass, Size Least, GEOMETRY,
            "the hub stands off its shoulder by {found} by hand, the nut draws it up by {demanded}";
    }
    advice "Face the hub back, or bore its taper a little smaller: the taper has to seat before the faces meet.";
    judge |f, _t| {
        let (by_hand, drawn, least) = (f.hub.stand_off.0, f.hub.draw_up.0, f.hub.least_gap.0);
        let left = by_hand - drawn;
        if by_hand < drawn {
            It::Touches.with(by_hand, drawn)
        } else if let Some(missing) = missing([by_hand, drawn]) {
            missing
        } else if by_hand == drawn {
            It::JustMeets.with(by_hand, drawn)
        } else if is_blank(least) {
            CANT_TELL
        } else if left < least {
            It::Close.with(left, least)
        } else {
            It::Clears.with(by_hand, drawn)
        }
    }
}
