//! The fit of the wheel on its spigot, and how true the hub runs.

use super::rule;
use crate::mounting::facts::{Fact, Facts, is_blank};
use crate::mounting::terms::{Law, Terms};
use crate::mounting::words::Material;
use crate::tables::laws;
use crate::units::{Length, Shop, figure, inches, millimetres};

/// Run-out that is good enough where no other is asked for: 0.01 mm, in nm.
const USUAL_RUN_OUT: f64 = 10e3;
/// How far below nominal a spigot may be: 0.002 in, in nm.
const SPIGOT_BELOW: f64 = 0.002 * 25.4e6;

fn size(nm: f64, terms: &Terms) -> String {
    match terms.shop {
        Shop::Metric => millimetres(nm),
        Shop::Inch => inches(nm),
    }
}

rule! {
    /// The wheel runs no truer than its hub. Run-out of the fixed flange's face
    /// tilts the wheel, and at the rim it grows with the radius. Where no limit
    /// is given, 0.01 mm is common practice.
    HUB_RUN_OUT = "hub-run-out", essential false;
    asks "is the run-out of flange face or spigot above the limit?";
    needs fixed_flange.run_out, hub.spigot_run_out;
    uses hub.run_out_limit;
    cases {
        OverAsked: Caution, Size Most, laws::ASKED,
            "flange face or spigot runs out by {found}, {demanded} was asked for";
        OverUsual: Caution, Size Most, laws::PRACTICE,
            "flange face or spigot runs out by {found}, {demanded} is usual";
        True: Pass, Size Most, laws::DRIVING_FLANGE,
            "flange face and spigot run out by {found} at most, {demanded} is the limit";
    }
    advice "Clean both tapers, seat the hub again and indicate it; then look for a burr or a bent flange.";
    adds |f, t| {
        let rim = f.fixed_flange.run_out.0 * f.wheel.diameter.0 / f.fixed_flange.diameter.0;
        (rim > 0.0).then(|| format!("the face tilts the rim by {}", size(rim.round(), t)))
    };
    judge |f, _t| {
        let asked = f.hub.run_out_limit;
        let limit = asked.or(Fact::new(USUAL_RUN_OUT)).0;
        let one = |reading: Fact<Length>| {
            if let Some(missing) = missing([reading.0, limit]) {
                return missing;
            }
            match (reading.0 <= limit, asked.given()) {
                (true, _) => It::True.with(reading.0, limit),
                (false, true) => It::OverAsked.with(reading.0, limit),
                (false, false) => It::OverUsual.with(reading.0, limit),
            }
        };
        both(one(f.fixed_flange.run_out), one(f.hub.spigot_run_out))
    }
}

/// The wheel's hole and the spigot where they are closest and where they are widest apart.
#[inline(always)]
fn tightest(f: &Facts) -> (f64, f64) {
    let hole = f.wheel.hole.least_with(f.wheel.smallest_hole);
    (hole.0, f.hub.spigot.greatest_with(f.hub.largest_spigot).0)
}

#[inline(always)]
pub(super) fn widest(f: &Facts) -> (f64, f64) {
    let hole = f.wheel.hole.greatest_with(f.wheel.largest_hole);
    (hole.0, f.hub.spigot.least_with(f.hub.smallest_spigot).0)
}

/// Thermal expansion from memory, in 1e-12 a kelvin.
#[inline(always)]
fn recalled_expansion(material: Fact<Material>) -> f64 {
    if material.is(Material::Steel) {
        11.5e6
    } else if material.is(Material::CastIron) {
        10.5e6
    } else if material.is(Material::Aluminium) {
        23.0e6
    } else if material.is(Material::Brass) {
        19.0e6
    } else {
        f64::NAN
    }
}

rule! {
    /// A wheel that has to be forced on, or that the spigot grows into when it
    /// warms up, cracks from the hole. The hole at its smallest must clear the
    /// spigot at its largest by more than both were measured to (5 µm unless
    /// another figure is given). With a temperature rise given, the same is
    /// asked of the warm hub. The wheel's own growth counts only when its rise
    /// and its expansion are given. A spigot's expansion that is recalled from
    /// its material (aluminium grows twice as much as steel) only cautions.
    WHEEL_BINDS = "wheel-binds", essential true;
    asks "can the hole at its smallest bind on the spigot at its largest, also when they are warm?";
    needs wheel.hole, hub.spigot;
    uses wheel.smallest_hole, hub.largest_spigot, hub.warmer_by, hub.expansion, hub.material, wheel.warmer_by,
        wheel.expansion, wheel.fastening;
    cases {
        Binds: Refuse, Size Least, laws::FREE_FIT,
            "the clearance is {found} on diameter: the wheel has to be forced on";
        BindsWarm: Refuse, Size Least, laws::FREE_FIT,
            "warm, the clearance is {found} on diameter: the spigot grows into the wheel";
        BindsWarmRecalled: Caution, Size Least, laws::EXPANSION,
            "warm, the clearance is {found} on diameter by a recalled expansion: the spigot may grow into the wheel";
        Close: Caution, Size Least, laws::FREE_FIT,
            "the clearance is {found} on diameter, no more than the {demanded} that it is measured to";
        Free: Pass, Size Least, laws::FREE_FIT,
            "the wheel clears the spigot by {found} on diameter, {demanded} is the least";
        Grows: Unknown, Nothing Least, laws::EXPANSION,
            "the spigot gets warmer, and nobody says how much its material expands";
        NoSpigot: NotChecked, Nothing Least, laws::FREE_FIT,
            "the wheel sits on no spigot";
    }
    advice "Never force a wheel on. Turn the spigot down to 0.002 in (0.05 mm) under nominal at most, or have the wheel's bushing opened by its maker.";
    adds |f, t| {
        let (hole, spigot) = tightest(f);
        (hole + spigot > 0.0).then(|| format!("hole {}, spigot {}", size(hole, t), size(spigot, t)))
    };
    judge |f, t| {
        let (hole, spigot) = tightest(f);
        let within = t.measured_within;
        let cold = hole - spigot;
        let rise = f.hub.warmer_by.or(Fact::new(0.0)).0;
        let expansion = f.hub.expansion;
        let stated = expansion.given();
        // What the hub is made of matters only to a hub that warms up.
        let recalled = recalled_expansion(f.hub.material);
        let grows = if stated | expansion.blank() { expansion.0 } else { recalled };
        let (wheel_rise, wheel_grows) = (f.wheel.warmer_by.0, f.wheel.expansion.0);
        let growth = |size: f64, rise: f64, expansion: f64| {
            let grown = size * (rise / 1e3) * (expansion / 1e12);
            if grown.is_nan() { 0.0 } else { grown }
        };
        let opens = growth(hole, wheel_rise, wheel_grows);
        let warm = (cold + opens - growth(spigot, rise, grows)).round_ties_even();
        let least = cold.min(warm);

        let no_spigot = f.without_flanges();
        let unplaced = f.wheel.fastening.blank();
        let lacking = missing([hole, spigot]);
        let unknown_growth = (rise > 0.0) & grows.is_nan();
        let blank = is_blank(rise)
            | is_blank(wheel_rise)
            | is_blank(wheel_grows)
            | (unknown_growth & (expansion.blank() | f.hub.material.blank()));
        let (binds, binds_warm) = (cold < -within, warm < -within);
        let (binds_as_stated, close) = (binds_warm & stated, least <= within);
        if no_spigot {
            It::NoSpigot.bare()
        } else if binds {
            It::Binds.with(cold, within)
        } else if unplaced {
            CANT_TELL
        } else if let Some(lacking) = lacking {
            lacking
        } else if blank {
            CANT_TELL
        } else if unknown_growth {
            It::Grows.bare()
        } else if binds_as_stated {
            It::BindsWarm.with(warm, within)
        } else if binds_warm {
            It::BindsWarmRecalled.with(warm, within)
        } else if close {
            It::Close.with(least, within)
        } else {
            It::Free.with(least, within)
        }
    }
}

rule! {
    /// The spigot is made to the nominal size of the hole, plus nothing, minus
    /// 0.002 in: wheels are bored over nominal to go on freely. Above nominal
    /// it is refused under federal law.
    SPIGOT_SIZE = "spigot-size", essential false;
    asks "is the spigot above its nominal size, or more than 0.002 in below?";
    needs wheel.nominal_hole, hub.spigot;
    uses hub.smallest_spigot, hub.largest_spigot, wheel.fastening;
    cases {
        AboveUs: Refuse, Size Most, laws::FREE_FIT,
            "the spigot is {found}, above its nominal {demanded}";
        Above: Caution, Size Most, laws::FREE_FIT,
            "the spigot is {found}, above its nominal {demanded}; federal law of the United States forbids it";
        Below: Caution, Size Least, laws::FREE_FIT,
            "the spigot is {found}, {demanded} is the least";
        Within: Pass, Size Least, laws::FREE_FIT,
            "the spigot is {found}, {demanded} is the least";
        NoSpigot: NotChecked, Nothing Least, laws::FREE_FIT,
            "the wheel sits on no spigot";
    }
    advice "Turn an oversize spigot down; an undersize one lets the wheel sit off centre, so true and balance with care or make another.";
    judge |f, t| {
        let nominal = f.wheel.nominal_hole.0;
        let largest = f.hub.spigot.greatest_with(f.hub.largest_spigot).0;
        let smallest = f.hub.spigot.least_with(f.hub.smallest_spigot).0;
        if f.without_flanges() {
            return It::NoSpigot.bare();
        }
        if f.wheel.fastening.blank() {
            return CANT_TELL;
        }
        if let Some(missing) = missing([nominal, largest, smallest]) {
            return missing;
        }
        if largest > nominal {
            let case = if t.has(Law::Us) { It::AboveUs } else { It::Above };
            return case.with(largest, nominal);
        }
        let least = nominal - SPIGOT_BELOW;
        if smallest < least { It::Below.with(smallest, least) } else { It::Within.with(smallest, least) }
    }
}

rule! {
    /// A loose wheel sits off centre by half of its clearance: it runs out at
    /// the rim by the whole of it and is out of balance until it is trued.
    /// Asked only when a greatest clearance is given.
    WHEEL_LOOSE = "wheel-loose", essential false;
    asks "is the clearance between hole and spigot more than was asked for?";
    needs hub.clearance_limit, wheel.hole, hub.spigot;
    uses wheel.largest_hole, hub.smallest_spigot, wheel.fastening;
    cases {
        Loose: Caution, Size Most, laws::ASKED,
            "the clearance is up to {found} on diameter, {demanded} was asked for";
        Close: Pass, Size Most, laws::ASKED,
            "the clearance is up to {found} on diameter, {demanded} was asked for";
        NoSpigot: NotChecked, Nothing Most, laws::ASKED,
            "the wheel sits on no spigot";
    }
    advice "Make a spigot to the hole, or centre the wheel by indicator and true it before use.";
    adds |f, t| {
        let (hole, spigot) = widest(f);
        let clearance = hole - spigot;
        (clearance > 0.0).then(|| {
            // 1 nm off centre is 1e-3 g·mm for each kilogram that turns.
            let unbalance = figure(clearance / 2.0 / 1e3, 0);
            format!(
                "the rim can run out by {} and the wheel be {unbalance} g·mm out of balance for each kilogram",
                size(clearance, t)
            )
        })
    };
    judge |f, _t| {
        let limit = f.hub.clearance_limit.0;
        let (hole, spigot) = widest(f);
        if f.without_flanges() {
            return It::NoSpigot.bare();
        }
        if f.wheel.fastening.blank() {
            return CANT_TELL;
        }
        if let Some(missing) = missing([limit, hole, spigot]) {
            return missing;
        }
        let clearance = hole - spigot;
        if clearance > limit { It::Loose.with(clearance, limit) } else { It::Close.with(clearance, limit) }
    }
}
