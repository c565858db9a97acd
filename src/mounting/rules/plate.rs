//! The flange as a plate: recess, land, thickness, material.

use super::flange::{can_not_place, on_flanges, tabled};
use super::rule;
use crate::mounting::facts::is_blank;
use crate::mounting::terms::Law;
use crate::mounting::words::{Material, YesNo};
use crate::tables::{flanges, laws};
use crate::wheel::demands::{RELIEF_FROM, Table};
use crate::wheel::flange::{LEAST_RECESS, LEAST_UNDERCUT};
use crate::wheel::{Fastening, FlangeKind, Shape};

rule! {
    /// A flange bears on its land alone when it is recessed inside it by at
    /// least 1/16 in; a flat one grips at the hole, where the wheel is weakest.
    /// Adaptor and sleeve flanges are undercut 1/8 in at the hole instead.
    /// Wheels under 2 in may have flat flanges. Wheels with threaded inserts or
    /// studs, and type 27A, must have them.
    FLANGE_RELIEF = "flange-relief", essential false;
    asks "is a flange's recess too shallow or missing, or there where it is forbidden?";
    needs wheel.diameter, fixed_flange.recess, loose_flange.recess;
    uses wheel.shape, wheel.fastening, fixed_flange.kind, loose_flange.kind, fixed_flange.undercut, loose_flange.undercut;
    cases {
        Shallow: Refuse, Size Least, laws::FLANGE_RECESS,
            "a flange is recessed by {found}, {demanded} is the least";
        Flat: Refuse, Nothing Least, laws::FLANGE_RECESS,
            "a flange has no recess";
        Undercut: Refuse, Size Least, laws::FLANGE_RECESS,
            "an adaptor or sleeve flange is undercut by {found} at the hole, {demanded} is the least";
        Forbidden: Refuse, Nothing Least, laws::FLANGE_THIRD,
            "a flange is recessed where this wheel must have a flat one";
        Recessed: Pass, Size Least, laws::FLANGE_RECESS,
            "the recess or undercut is {found}, {demanded} is the least";
        RightlyFlat: Pass, Nothing Least, laws::FLANGE_THIRD,
            "the flange is flat, as this wheel must have it";
        SmallWheel: NotChecked, Nothing Least, flanges::O6,
            "wheels under 2 in may have flat flanges";
        Other: NotChecked, Nothing Least, laws::FLANGE_RECESS,
            "not asked of this shape or fastening";
    }
    advice "Recess the flange 1/16 in (1.6 mm) inside its land, or fit the kind this wheel must have.";
    judge |f, _t| {
        let shape = f.wheel.shape;
        let threaded = f.fastening().is_one(Fastening::threaded);
        let held_otherwise = f.without_flanges() & !threaded;
        let other = held_otherwise
            | shape.is_one(|shape| shape.special_flanges() || shape == Shape::Disc);
        let unplaced = can_not_place(f);
        let flat = threaded | shape.is(Shape::Type27A);
        let small = !flat & (f.wheel.diameter.0 < RELIEF_FROM);
        let size = if flat { 0.0 } else { f.wheel.diameter.0 };
        let lacking = missing([size]);
        let judged = on_flanges(f, both, |flange, _| {
            let (kind, recess) = (flange.kind, flange.recess.0);
            let unrelieved = kind.is(FlangeKind::Unrelieved);
            let undercut = kind.is_one(FlangeKind::undercut);
            let least = if undercut { LEAST_UNDERCUT } else { LEAST_RECESS };
            let found = if undercut { flange.undercut.0 } else { recess };
            let forbidden = flat & ((recess > 0.0) | kind.is(FlangeKind::Relieved));
            let missing_recess = !flat & unrelieved;
            let asked_for = if flat { recess } else { found };
            let blank = kind.blank() | is_blank(asked_for);
            // An adaptor's undercut is no flat face.
            let rightly_flat = flat & (unrelieved | (recess == 0.0));
            let unasked = flat | found.is_nan();
            let enough = found >= least;
            if forbidden {
                It::Forbidden.bare()
            } else if missing_recess {
                It::Flat.bare()
            } else if blank {
                CANT_TELL
            } else if rightly_flat {
                It::RightlyFlat.bare()
            } else if unasked {
                NOBODY_ASKS
            } else if enough {
                It::Recessed.with(found, least)
            } else if undercut {
                It::Undercut.with(found, least)
            } else {
                It::Shallow.with(found, least)
            }
        });
        if other {
            It::Other.bare()
        } else if unplaced {
            CANT_TELL
        } else if let Some(lacking) = lacking {
            lacking
        } else if small {
            It::SmallWheel.bare()
        } else {
            judged
        }
    }
}

rule! {
    /// A land under the table's least presses too hard on the wheel. One over
    /// its greatest moves the grip toward the hole: refused under federal law,
    /// a caution elsewhere. Between two listed sizes the least is that of the
    /// row below the wheel and the greatest that of the row above, so that
    /// nobody is refused by a row that is not his. Table O-6, relieved flanges.
    LAND_WIDTH = "land-width", essential false;
    asks "is the land that bears on the wheel narrower or wider than the table allows?";
    needs wheel.shape, wheel.diameter, fixed_flange.kind, fixed_flange.land, loose_flange.kind, loose_flange.land;
    uses wheel.nominal_diameter, wheel.hole, wheel.fastening, fixed_flange.recess, loose_flange.recess;
    cases {
        Narrow: Refuse, Size Least, flanges::O6,
            "a land is {found} wide, {demanded} is the least";
        WideUs: Refuse, Size Most, flanges::O6,
            "a land is {found} wide, {demanded} is the most";
        Wide: Caution, Size Most, flanges::O6,
            "a land is {found} wide, {demanded} is the most under federal law of the United States";
        Right: Pass, Size Most, flanges::O6,
            "the lands are up to {found} wide, {demanded} at most";
        NoRow: NotChecked, Nothing Most, flanges::O6,
            "no table gives this flange a width";
    }
    advice "Turn the land to the width that the table gives, on both flanges alike.";
    judge |f, t| {
        on_flanges(f, both, |flange, demands| {
            if let Some(answer) = tabled(demands, It::NoRow.bare()) {
                return answer;
            }
            let land = flange.land.0;
            if demands.least_land.is_nan() {
                return It::NoRow.bare();
            }
            if let Some(missing) = missing([land]) {
                return missing;
            }
            if land < demands.least_land {
                It::Narrow.with(land, demands.least_land)
            } else if land <= demands.greatest_land {
                It::Right.with(land, demands.greatest_land)
            } else if t.has(Law::Us) {
                It::WideUs.with(land, demands.greatest_land)
            } else {
                It::Wide.with(land, demands.greatest_land)
            }
        })
    }
}

rule! {
    /// A thin flange bends under the nut and bears at the hole. The tables give
    /// the least thickness at the hole and at the edge of the recess. In O-5
    /// and O-7 the thickness at the hole includes the pilot; for which wheels
    /// these two are meant is recalled, so that they caution only.
    FLANGE_TOO_THIN = "flange-too-thin", essential false;
    asks "is a flange's plate thinner than the table at the hole or at the edge of the recess?";
    needs wheel.shape, wheel.diameter, fixed_flange.kind, fixed_flange.thickness_at_hole, fixed_flange.thickness_at_edge,
        loose_flange.kind, loose_flange.thickness_at_hole, loose_flange.thickness_at_edge;
    uses wheel.nominal_diameter, wheel.hole, wheel.fastening, fixed_flange.recess, loose_flange.recess;
    cases {
        AtHole: Refuse, Size Least, laws::FLANGE_TABLES,
            "a flange is {found} thick at the hole, {demanded} is the least";
        AtEdge: Refuse, Size Least, laws::FLANGE_TABLES,
            "a flange is {found} thick at the edge of the recess, {demanded} is the least";
        AdaptorAtHole: Caution, Size Least, laws::ADAPTOR_TABLES,
            "an adaptor flange is {found} thick at the hole, {demanded} is the least";
        AdaptorAtEdge: Caution, Size Least, laws::ADAPTOR_TABLES,
            "an adaptor flange is {found} thick at the edge of the undercut, {demanded} is the least";
        Thick: Pass, Size Least, laws::FLANGE_TABLES,
            "the thinner flange is {found} thick where it matters most, {demanded} is the least";
        NoRow: NotChecked, Nothing Least, laws::FLANGE_TABLES,
            "no table gives this flange a thickness";
    }
    advice "Make a thicker flange; do not turn this one down any further.";
    judge |f, _t| {
        on_flanges(f, both, |flange, demands| {
            if let Some(answer) = tabled(demands, It::NoRow.bare()) {
                return answer;
            }
            if demands.at_hole.is_nan() {
                return It::NoRow.bare();
            }
            let adaptor = demands.table_is(Table::O5) | demands.table_is(Table::O7);
            let (hole, edge) = (flange.thickness_at_hole.0, flange.thickness_at_edge.0);
            if hole < demands.at_hole {
                let case = if adaptor { It::AdaptorAtHole } else { It::AtHole };
                return case.with(hole, demands.at_hole);
            }
            // A flat flange has one thickness.
            let flat = demands.table_is(Table::O4) | demands.at_edge.is_nan();
            let edge = if flat { hole } else { edge };
            if edge < demands.at_edge {
                let case = if adaptor { It::AdaptorAtEdge } else { It::AtEdge };
                return case.with(edge, demands.at_edge);
            }
            missing([hole, edge]).unwrap_or_else(|| {
                let hole_is_closer = flat | (hole * demands.at_edge <= edge * demands.at_hole);
                if hole_is_closer { It::Thick.with(hole, demands.at_hole) } else { It::Thick.with(edge, demands.at_edge) }
            })
        })
    }
}

rule! {
    /// Flanges are of steel, cast iron or something as strong and stiff.
    /// Aluminium bends about three times as far: a flange of it needs 1.43
    /// times the thickness to be as stiff. Michigan and Washington demand the
    /// equal stiffness in so many words.
    FLANGE_MATERIAL = "flange-material", essential false;
    asks "is a flange of something weaker or softer than steel or cast iron?";
    needs fixed_flange.material, loose_flange.material;
    uses fixed_flange.shown_stiff, loose_flange.shown_stiff, wheel.fastening;
    cases {
        SoftByLaw: Refuse, Nothing Least, laws::FLANGE_MATERIAL_STATES,
            "a flange is neither steel nor cast iron, and nobody has shown that it is as strong and stiff";
        Soft: Caution, Nothing Least, laws::FLANGE_MATERIAL_STATES,
            "a flange is neither steel nor cast iron; Michigan and Washington demand equal strength and stiffness";
        Stiff: Pass, Nothing Least, laws::FLANGE_MATERIAL_STATES,
            "the flanges are of steel, cast iron or something shown to be as strong and stiff";
        Other: NotChecked, Nothing Least, laws::FLANGE_MATERIAL_STATES,
            "the wheel is not held by flanges";
    }
    advice "Make the flanges of steel or cast iron; aluminium ones need about 1.43 times the thickness.";
    judge |f, t| {
        let threaded = f.fastening().is_one(Fastening::threaded);
        if f.without_flanges() && !threaded {
            return It::Other.bare();
        }
        let by_law = t.has(Law::UsMi) || t.has(Law::UsWa);
        on_flanges(f, both, |flange, _| {
            let stiff = |material| matches!(material, Material::Steel | Material::CastIron);
            if let Some(missing) = missing([flange.material.0]) {
                return missing;
            }
            let shown = flange.shown_stiff;
            if flange.material.is_one(stiff) | shown.is(YesNo::Yes) {
                It::Stiff.bare()
            } else if shown.blank() {
                CANT_TELL
            } else if by_law {
                It::SoftByLaw.bare()
            } else {
                It::Soft.bare()
            }
        })
    }
}
