//! Thin wheels: side load, standing waves, and the depth that is left to cut with.
//!
//! The first rule needs a solve, which is no matter of a few comparisons: it looks at what is
//! missing first, and then asks [`discs`](crate::mounting::discs), which solves each geometry once.

use std::f64::consts::PI;

use super::{rule, worse};
use crate::mounting::discs::{least_standing, moment};
use crate::mounting::facts::is_blank;
use crate::solid::disc::{THIN_DISCS, VIBRATING_DISCS};
use crate::tables::laws;
use crate::wheel::Shape;
use crate::wheel::thin::{bending_stress, pace};

rule! {
    /// A thin wheel bends aside between its flanges, drifts and breaks. It is taken for a
    /// thin plate, clamped at the stabilisers, or without them at the smaller flange: the
    /// side load given bends it most at that edge, which is compared with the bending stress allowed.
    /// The spindle's greatest speed is compared with the lowest at which a wave
    /// may stand in the wheel, whatever the flanges do in its plane. That is computed without damping, and resin
    /// wheels are damped strongly: it is a warning and no limit. Stabilisers raise the side
    /// stiffness, not the bursting speed. Wheels thicker than a tenth of what
    /// stands out are left aside, and wheels held outside 0.05 to 0.98 of their diameter.
    THIN_WHEEL = "thin-wheel", essential false;
    asks "does the side load bend a thin wheel beyond what is allowed, or may a wave stand in it at the spindle's greatest speed?";
    needs machine.side_load, wheel.allowed_bending, wheel.modulus, wheel.poisson_ratio, wheel.density,
        wheel.diameter, wheel.thickness, wheel.hole, fixed_flange.diameter, loose_flange.diameter,
        spindle.greatest_speed;
    uses hub.stabiliser_diameter, wheel.shape;
    cases {
        Bends: Caution, Stress Most, THIN_DISCS,
            "the side load bends the wheel with {found} at the edge of what holds it, {demanded} is allowed";
        Stands: Caution, Turns Most, VIBRATING_DISCS,
            "the spindle reaches {found}, and from {demanded} on a wave may stand in the wheel; damping, which is strong in resin, is not in it";
        Holds: Pass, Stress Most, THIN_DISCS,
            "the side load bends the wheel with {found} at the edge of what holds it, {demanded} is allowed; no wave stands in it as fast as the spindle turns";
        NoPlate: NotChecked, Nothing Most, THIN_DISCS,
            "the wheel is no flat disc, too thick for a thin plate, or held outside 0.05 to 0.98 of its diameter";
    }
    advice "Fit relieved stabilisers that bear at their rims, a thicker wheel, or one with fabric; feed square to the rim, and clamp the work on both sides.";
    judge |f, _t| {
        let (d, h, nu) = (f.wheel.diameter.0, f.wheel.thickness.0, f.wheel.poisson_ratio.0);
        let flange = f.fixed_flange.diameter.least_with(f.loose_flange.diameter);
        let support = f.hub.stabiliser_diameter.or(flange).0;
        // A cup or cylinder is no plate.
        let flat = f.wheel.shape.is_one(|shape| matches!(shape, Shape::Type1 | Shape::Type27A) || shape.cuts_off());
        if f.wheel.shape.given() & !flat {
            return It::NoPlate.bare();
        }
        let thick = (h * 20.0 > d - support) | (support * 100.0 < d * 5.0) | (support * 100.0 > d * 98.0);
        if thick {
            return It::NoPlate.bare();
        }
        // The smaller of two flanges is not known while one is missing.
        let stabilised = f.hub.stabiliser_diameter.given();
        let either = |flange: f64| if stabilised { support } else { flange };
        let (fixed, loose) = (either(f.fixed_flange.diameter.0), either(f.loose_flange.diameter.0));
        if let Some(missing) = missing([d, h, nu, support, fixed, loose]) {
            return missing;
        }
        let (load, allowed) = (f.machine.side_load.0, f.wheel.allowed_bending.0);
        let (ratio, poisson) = (support / d, nu / 1e9);
        let by_load = if let Some(missing) = missing([load, allowed]) {
            missing
        } else if let Some(moment) = moment(ratio, poisson) {
            let found = (bending_stress(moment, load / 1e3, h / 1e9) * 1e3).ceil();
            if found > allowed { It::Bends.with(found, allowed) } else { It::Holds.with(found, allowed) }
        } else {
            It::NoPlate.bare()
        };
        let (modulus, density, hole) = (f.wheel.modulus.0, f.wheel.density.0, f.wheel.hole.0);
        let turns = f.spindle.greatest_speed.0;
        let by_speed = if let Some(missing) = missing([modulus, density, hole, turns]) {
            missing
        } else if let Some(least) = least_standing(ratio, poisson, (hole / d).min(ratio)) {
            let unit = pace(modulus / 1e3, poisson, density / 1e3, h / 1e9, d / 2e9);
            let least = (least * unit * (30.0 / PI) * 1e6).floor();
            if turns >= least {
                It::Stands.with(turns, least)
            } else {
                // A pass is the load's: a stress and a speed have no room to compare.
                return by_load;
            }
        } else {
            It::NoPlate.bare()
        };
        // Where both turn out alike, the load speaks.
        worse(by_load, by_speed)
    }
}

rule! {
    /// A wheel cuts no deeper than it stands out of its flanges and stabilisers, less
    /// the clearance kept from them to work, vice and magnet. A hub that touches the work
    /// lifts or breaks a thin wheel. The wheel's diameter is the new one's: a worn wheel cuts less deep.
    CUT_TOO_DEEP = "cut-too-deep", essential false;
    asks "is the cut deeper than the wheel stands out of flanges and stabilisers, less clearance?";
    needs machine.depth_of_cut, machine.work_clearance, wheel.diameter, fixed_flange.diameter, loose_flange.diameter;
    uses hub.stabiliser_diameter, hub.stabilisers;
    cases {
        Deep: Refuse, Size Most, laws::ARITHMETIC,
            "the cut is {found} deep, {demanded} of the wheel is left to cut with";
        Reaches: Pass, Size Most, laws::ARITHMETIC,
            "the cut is {found} deep, {demanded} of the wheel is left to cut with";
    }
    advice "Cut in several passes less deep, turn the work, or fit a larger wheel that the machine and its guard are made for; smaller flanges only as far as the law allows.";
    judge |f, _t| {
        let (depth, d, clearance) = (f.machine.depth_of_cut.0, f.wheel.diameter.0, f.machine.work_clearance.0);
        let (fixed, loose) = (f.fixed_flange.diameter.0, f.loose_flange.diameter.0);
        let stabiliser = f.hub.stabiliser_diameter.0;
        // The larger of what is known: a missing one can only leave less.
        let widest = fixed.max(loose).max(stabiliser);
        let kept = if clearance.is_nan() { 0.0 } else { clearance };
        let left = ((d - widest) / 2.0 - kept).floor();
        if depth > left {
            return It::Deep.with(depth, left);
        }
        if let Some(missing) = missing([depth, clearance, d, fixed, loose]) {
            return missing;
        }
        if is_blank(stabiliser) {
            return CANT_TELL;
        }
        // Stabilisers that are there reach further out than the flanges.
        let stabilisers = f.hub.stabilisers;
        if stabiliser.is_nan() & stabilisers.blank() {
            return CANT_TELL;
        }
        if stabiliser.is_nan() & (stabilisers.0 > 0.0) {
            return NOBODY_ASKS;
        }
        It::Reaches.with(depth, left)
    }
}
