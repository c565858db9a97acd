//! The flanges' diameters: a third of the wheel, the tables, and both alike.

use super::{Judged, rule};
use crate::mounting::facts::{Fact, Facts, is_blank, of};
use crate::tables::{flanges, laws};
use crate::units::Length;
use crate::wheel::demands::{Demands, Ready, Table};
use crate::wheel::flange::ratio;
use crate::wheel::{Fastening, MachineKind, Shape};

/// Whether shape or fastening is asked for and blank, so that no rule of
/// flanges can tell whether it applies.
#[inline(always)]
pub(super) fn can_not_place(f: &Facts) -> bool {
    f.wheel.shape.blank() || f.wheel.fastening.blank()
}

rule! {
    /// Flanges hold a wheel by a ring well away from its hole. Both must be at
    /// least a third of the diameter of the new wheel; for cutting-off wheels of
    /// types 1 and 27A a quarter will do. Exempt are mounted wheels, portable
    /// wheels with threaded inserts or studs, discs, plate-mounted and
    /// chuck-held wheels, types 27 and 28 and the modified types for terrazzo.
    /// A wheel with a thread of its own has one flange; it is exempt only where
    /// the machine is known to be portable. A flange no larger than the hole
    /// bears on nothing. The law exempts "certain" internal wheels without saying which: there a
    /// smaller flange is a caution. A shape that nobody asks for is held to
    /// the third.
    FLANGE_BELOW_ONE_THIRD = "flange-below-one-third", essential true;
    asks "is a flange smaller than a third of the new wheel (a quarter for cutting-off wheels)?";
    needs wheel.diameter, fixed_flange.diameter, loose_flange.diameter;
    uses wheel.shape, wheel.fastening, wheel.hole, machine.kind;
    cases {
        BelowHole: Refuse, Size Least, laws::ARITHMETIC,
            "a flange is {found}, the wheel's hole {demanded}: it bears on nothing";
        BelowThird: Refuse, Size Least, laws::FLANGE_THIRD,
            "a flange is {found}, a third of the wheel {demanded}";
        BelowQuarter: Refuse, Size Least, laws::FLANGE_THIRD,
            "a flange is {found}, a quarter of the cutting-off wheel {demanded}";
        Internal: Caution, Size Least, laws::FLANGE_THIRD,
            "a flange is {found}, a third of the wheel {demanded}; certain internal wheels are exempt";
        Third: Pass, Size Least, laws::FLANGE_THIRD,
            "the smaller flange is {found}, a third of the wheel {demanded}";
        Quarter: Pass, Size Least, laws::FLANGE_THIRD,
            "the smaller flange is {found}, a quarter of the cutting-off wheel {demanded}";
        Exempt: NotChecked, Nothing Least, laws::FLANGE_THIRD,
            "this shape or fastening is exempt";
    }
    advice "Fit flanges of the diameter demanded, both alike, or a smaller wheel.";
    judge |f, _t| {
        let threaded = f.fastening().is_one(Fastening::threaded);
        let portable = f.machine.kind.is(MachineKind::Portable);
        let held_otherwise = f.without_flanges() & (!threaded | portable);
        if held_otherwise | f.wheel.shape.is_one(|shape| ratio(shape).is_none()) {
            return It::Exempt.bare();
        }
        if can_not_place(f) || (threaded & f.machine.kind.blank()) || f.wheel.hole.blank() {
            return CANT_TELL;
        }
        let wheel = f.wheel.diameter.0;
        let quarter = f.wheel.shape.is_one(|shape| ratio(shape) == Some(4.0));
        let times = if quarter { 4.0 } else { 3.0 };
        let one = |flange: Fact<Length>| {
            if let Some(missing) = missing([wheel, flange.0]) {
                return missing;
            }
            // Whole multiples compare exactly; the rounded third is for reading.
            let (found, demanded) = (flange.0, (wheel / times).ceil());
            let internal = f.machine.kind.is(MachineKind::Internal);
            let on_nothing = found <= f.wheel.hole.0;
            if times * found < wheel && quarter {
                It::BelowQuarter.with(found, demanded)
            } else if times * found < wheel && !internal {
                It::BelowThird.with(found, demanded)
            } else if on_nothing {
                It::BelowHole.with(found, f.wheel.hole.0)
            } else if times * found < wheel {
                It::Internal.with(found, demanded)
            } else if quarter {
                It::Quarter.with(found, demanded)
            } else {
                It::Third.with(found, demanded)
            }
        };
        let fixed = one(f.fixed_flange.diameter);
        if threaded { fixed } else { both(fixed, one(f.loose_flange.diameter)) }
    }
}

/// What can be said of a flange by its table before its sizes are looked at:
/// data that are missing, or that there is no table.
#[inline(always)]
pub(super) fn tabled(demands: &Demands, no_table: Judged) -> Option<Judged> {
    if demands.ready_is(Ready::NoTable) {
        Some(no_table)
    } else if demands.ready_is(Ready::Blank) {
        Some(Judged::CANT_TELL)
    } else if demands.ready_is(Ready::NotAsked) {
        Some(Judged::NOBODY_ASKS)
    } else {
        None
    }
}

/// The answer on both flanges; on the fixed one alone for a wheel that brings
/// its own thread and has no other.
#[inline(always)]
pub(super) fn on_flanges(
    f: &Facts,
    both: impl Fn(Judged, Judged) -> Judged,
    one: impl Fn(&of::Flange, &Demands) -> Judged,
) -> Judged {
    let fixed = one(&f.fixed_flange, &f.fixed_demands);
    if f.fastening().is_one(Fastening::threaded) {
        return fixed;
    }
    both(fixed, one(&f.loose_flange, &f.loose_demands))
}

rule! {
    /// The tables give each size of wheel its least flange. A wheel within
    /// 0.5 mm of a listed size, or sold by one (nominal diameter), is judged by
    /// its own row. Between two sizes the law gives no interpolation: a flange
    /// under the row at or below the wheel is refused, one between that row and
    /// the next is a caution. Relieved flanges go by Table O-6, unrelieved ones
    /// by O-4 (only for wheels with threaded inserts or studs, up to 6 in) or, for
    /// wheels under 2 in, by O-6; sleeves by O-8 and, for wheels and holes
    /// outside it, by O-6. O-5 and O-7 are for
    /// adaptors; for which wheels is recalled, so that they caution only. A
    /// flange of no stated kind that has a recess counts as relieved. The
    /// tables' diameters are not applied to cutting-off wheels.
    FLANGE_BELOW_TABLE = "flange-below-table", essential false;
    asks "is a flange smaller than the row of its table for this wheel?";
    needs wheel.shape, wheel.diameter, fixed_flange.kind, fixed_flange.diameter, loose_flange.kind, loose_flange.diameter;
    uses wheel.nominal_diameter, wheel.hole, wheel.fastening, fixed_flange.recess, loose_flange.recess;
    cases {
        BelowO4: Refuse, Size Least, flanges::O4, "a flange is {found}, the table asks for {demanded}";
        BelowO6: Refuse, Size Least, flanges::O6, "a flange is {found}, the table asks for {demanded}";
        BelowO8: Refuse, Size Least, flanges::O8, "a flange is {found}, the table asks for {demanded}";
        BelowAdaptor: Caution, Size Least, laws::ADAPTOR_TABLES,
            "an adaptor flange is {found}, the table asks for {demanded}";
        BelowNext: Caution, Size Least, laws::FLANGE_TABLES,
            "the wheel or its hole is between two listed sizes; a flange is {found}, the next row asks for {demanded}";
        Enough: Pass, Size Least, laws::FLANGE_TABLES,
            "the smaller flange is {found}, the table asks for {demanded}";
        NoRow: NotChecked, Nothing Least, laws::FLANGE_TABLES,
            "no table is about this wheel and flange";
    }
    advice "Fit flanges of the diameter demanded, both alike.";
    judge |f, _t| {
        let cuts_off = f.wheel.shape.is_one(Shape::cuts_off);
        let judged = on_flanges(f, both, |flange, demands| {
            let (found, least) = (flange.diameter.0, demands.diameter);
            let small = found < least;
            let small_for = |table| small & demands.table_is(table);
            let (by_o4, by_o6, by_o8) =
                (small_for(Table::O4), small_for(Table::O6), small_for(Table::O8));
            let (below_next, no_row) = (found < demands.next, least.is_nan());
            let (lacking, early) = (missing([found]), tabled(demands, It::NoRow.bare()));
            if let Some(answer) = early.or(lacking) {
                answer
            } else if by_o6 {
                It::BelowO6.with(found, least)
            } else if by_o8 {
                It::BelowO8.with(found, least)
            } else if by_o4 {
                It::BelowO4.with(found, least)
            } else if small {
                It::BelowAdaptor.with(found, least)
            } else if below_next {
                It::BelowNext.with(found, demands.next)
            } else if no_row {
                It::NoRow.bare()
            } else {
                It::Enough.with(found, least)
            }
        });
        if cuts_off { It::NoRow.bare() } else { judged }
    }
}

rule! {
    /// Flanges of unlike diameter or land bend the wheel between them. Both
    /// must be alike within a tolerance (0.5 mm unless another is given).
    /// Exempt are types 27 and 28 with their adaptors and the modified types
    /// for terrazzo.
    FLANGES_UNLIKE = "flanges-unlike", essential true;
    asks "do the two flanges differ in diameter or in the width of their lands?";
    needs fixed_flange.diameter, loose_flange.diameter, fixed_flange.land, loose_flange.land;
    uses wheel.shape, wheel.fastening;
    cases {
        Diameters: Refuse, Size Most, laws::FLANGES_ALIKE,
            "the flanges differ by {found} in diameter, more than {demanded}";
        Lands: Refuse, Size Most, laws::FLANGES_ALIKE,
            "the flanges' lands differ by {found} in width, more than {demanded}";
        Alike: Pass, Size Most, laws::FLANGES_ALIKE,
            "the flanges differ by {found}, {demanded} at most";
        Exempt: NotChecked, Nothing Most, laws::FLANGES_ALIKE,
            "this shape or fastening is exempt";
    }
    advice "Turn or make the flanges alike: same diameter, same land.";
    judge |f, t| {
        if f.without_flanges() || f.wheel.shape.is_one(Shape::special_flanges) {
            return It::Exempt.bare();
        }
        if can_not_place(f) {
            return CANT_TELL;
        }
        let most = t.flange_tolerance;
        let diameters = (f.fixed_flange.diameter.0 - f.loose_flange.diameter.0).abs();
        let lands = (f.fixed_flange.land.0 - f.loose_flange.land.0).abs();
        if diameters > most {
            return It::Diameters.with(diameters, most);
        }
        if lands > most {
            return It::Lands.with(lands, most);
        }
        let needed = [&f.fixed_flange, &f.loose_flange].map(|flange| [flange.diameter.0, flange.land.0]);
        let [[a, b], [c, d]] = needed;
        if needed.as_flattened().iter().any(|fact| is_blank(*fact)) {
            return CANT_TELL;
        }
        missing([a, b, c, d]).unwrap_or_else(|| It::Alike.with(diameters.max(lands), most))
    }
}
