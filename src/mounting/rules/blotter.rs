//! The blotters: there, large enough, new.

use super::{Judged, rule};
use crate::mounting::facts::{Facts, of};
use crate::mounting::terms::Law;
use crate::mounting::words::YesNo;
use crate::tables::laws;
use crate::wheel::blotter::need;
use crate::wheel::{Abrasive, BlotterNeed, Fastening, MachineKind};

/// The answer on both sides; on the fixed one alone for a wheel that brings
/// its own thread and has no other flange.
#[inline(always)]
fn on_sides(
    f: &Facts,
    both: impl Fn(Judged, Judged) -> Judged,
    one: impl Fn(&of::Blotter, &of::Flange) -> Judged,
) -> Judged {
    let fixed = one(&f.fixed_blotter, &f.fixed_flange);
    if f.fastening().is_one(Fastening::threaded) {
        return fixed;
    }
    both(fixed, one(&f.loose_blotter, &f.loose_flange))
}

rule! {
    /// A blotter evens out the pressure of the flange and grips without
    /// slipping. One belongs on each side, but for wheels that the law
    /// exempts: mounted, plate-mounted and chuck-held ones, discs, types 4, 27
    /// and 28, and diamond wheels other than vitrified. It exempts the modified
    /// types for terrazzo on their flat side only, and "certain" vitrified
    /// diamond, cutting-off and internal wheels without saying which: there a
    /// missing blotter is a caution, and the maker knows.
    BLOTTER_MISSING = "blotter-missing", essential true;
    asks "is there no blotter on a side that needs one?";
    needs fixed_blotter.present, loose_blotter.present;
    uses wheel.shape, wheel.fastening, wheel.abrasive, wheel.bond, machine.kind;
    cases {
        Missing: Refuse, Nothing Least, laws::BLOTTERS,
            "a side has no blotter";
        AskTheMaker: Caution, Nothing Least, laws::BLOTTERS,
            "a side has no blotter; wheels of this sort are exempt in part";
        Fitted: Pass, Nothing Least, laws::BLOTTERS,
            "there is a blotter on each side";
        Exempt: NotChecked, Nothing Least, laws::BLOTTERS,
            "this wheel needs none";
    }
    advice "Fit a blotter on each side; where certain wheels are exempt, ask the wheel's maker.";
    judge |f, _t| {
        let wheel = &f.wheel;
        let threaded = f.fastening().is_one(Fastening::threaded);
        let needs = |answer| {
            let by_shape = wheel.shape.is_one(|shape| need(Some(shape), None, None) == answer);
            let diamond = wheel.abrasive.is(Abrasive::Diamond) & wheel.bond.given();
            let by_bond =
                wheel.bond.is_one(|bond| need(None, Some(Abrasive::Diamond), Some(bond)) == answer);
            // Shapes that are exempt are so in any bond.
            let exempt =
                wheel.shape.is_one(|shape| need(Some(shape), None, None) == BlotterNeed::NotNeeded);
            if diamond & !exempt { by_bond } else { by_shape }
        };
        if (f.without_flanges() && !threaded) || needs(BlotterNeed::NotNeeded) {
            return It::Exempt.bare();
        }
        let blank = wheel.shape.blank() || wheel.fastening.blank() || wheel.abrasive.blank() || wheel.bond.blank();
        let certain = needs(BlotterNeed::AskTheMaker) || f.machine.kind.is(MachineKind::Internal);
        on_sides(f, both, |blotter, _| {
            let (yes, no) = (blotter.present.is(YesNo::Yes), blotter.present.is(YesNo::No));
            if yes {
                It::Fitted.bare()
            } else if blotter.present.blank() | (no & blank) {
                CANT_TELL
            } else if no & certain {
                It::AskTheMaker.bare()
            } else if no {
                It::Missing.bare()
            } else {
                NOBODY_ASKS
            }
        })
    }
}

rule! {
    /// A blotter covers all of the surface on which the flange bears: it is at
    /// least as large as the flange, and its hole at most as large as the
    /// inside of the land.
    BLOTTER_TOO_SMALL = "blotter-too-small", essential false;
    asks "does a blotter leave part of the bearing surface uncovered?";
    needs fixed_blotter.diameter, fixed_blotter.hole, fixed_flange.diameter, fixed_flange.land,
        loose_blotter.diameter, loose_blotter.hole, loose_flange.diameter, loose_flange.land;
    uses fixed_blotter.present, loose_blotter.present, wheel.fastening;
    cases {
        Outside: Refuse, Size Least, laws::BLOTTER_COVERS,
            "a blotter is {found}, its flange {demanded}";
        Inside: Refuse, Size Most, laws::BLOTTER_COVERS,
            "the hole of a blotter is {found}, the land begins at {demanded}";
        Covers: Pass, Size Least, laws::BLOTTER_COVERS,
            "the blotters are {found} and more, the flange {demanded}";
        None: NotChecked, Nothing Least, laws::BLOTTER_COVERS,
            "there is no blotter";
    }
    advice "Fit a blotter that is as large as the flange and no larger in its hole than the land.";
    judge |f, _t| {
        on_sides(f, both, |blotter, flange| {
            let (outside, hole) = (blotter.diameter.0, blotter.hole.0);
            let (diameter, inside) = (flange.diameter.0, flange.diameter.0 - 2.0 * flange.land.0);
            if blotter.present.is(YesNo::No) {
                return It::None.bare();
            }
            if outside < diameter {
                return It::Outside.with(outside, diameter);
            }
            if hole > inside {
                return It::Inside.with(hole, inside);
            }
            if blotter.present.blank() {
                return CANT_TELL;
            }
            missing([outside, hole, diameter, flange.land.0]).unwrap_or_else(|| It::Covers.with(outside, diameter))
        })
    }
}

rule! {
    /// A blotter that was clamped once is crushed where the last flange sat. It
    /// is new at every mounting, unless the wheel's maker fixed it to the
    /// wheel. Washington demands it by law.
    BLOTTER_REUSED = "blotter-reused", essential false;
    asks "was a blotter used before that the maker did not fix to the wheel?";
    needs fixed_blotter.used_before, loose_blotter.used_before;
    uses fixed_blotter.fixed_by_maker, loose_blotter.fixed_by_maker, fixed_blotter.present, loose_blotter.present, wheel.fastening;
    cases {
        ReusedByLaw: Refuse, Nothing Least, laws::NEW_BLOTTERS_WA,
            "a blotter was used before";
        Reused: Caution, Nothing Least, laws::NEW_BLOTTERS_WA,
            "a blotter was used before; Washington demands a new one";
        New: Pass, Nothing Least, laws::NEW_BLOTTERS_WA,
            "the blotters are new or fixed by the maker";
        None: NotChecked, Nothing Least, laws::NEW_BLOTTERS_WA,
            "there is no blotter";
    }
    advice "Fit new blotters.";
    judge |f, t| {
        on_sides(f, both, |blotter, _| {
            if blotter.present.is(YesNo::No) {
                return It::None.bare();
            }
            let (used, fixed) = (blotter.used_before, blotter.fixed_by_maker);
            if let Some(missing) = missing([used.0]) {
                return missing;
            }
            if used.is(YesNo::No) || fixed.is(YesNo::Yes) {
                return if blotter.present.blank() { CANT_TELL } else { It::New.bare() };
            }
            if fixed.blank() {
                return CANT_TELL;
            }
            if t.has(Law::UsWa) { It::ReusedByLaw.bare() } else { It::Reused.bare() }
        })
    }
}
