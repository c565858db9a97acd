//! Thin wheels: figures of series and radial elements that were computed apart from hubwright; geometry.

use hubwright::mounting::{Datum, Mounting};
use hubwright::solid::disc::{THIN_DISCS, VIBRATING_DISCS};
use hubwright::tables::laws::ARITHMETIC;

use crate::{Table, density, gpa, kn, mm, mpa, plain, row, rpm};

pub fn tables() -> Vec<Table> {
    vec![thin_wheel(), cut_too_deep()]
}

const BENDS: &str = "the side load bends the wheel with {found} at the edge of what holds it, {demanded} is allowed";
const STANDS: &str = "the spindle reaches {found}, and from {demanded} on a wave may stand in the wheel; damping, which is strong in resin, is not in it";
const HOLDS: &str = "the side load bends the wheel with {found} at the edge of what holds it, {demanded} is allowed; no wave stands in it as fast as the spindle turns";
const NO_PLATE: &str = "the wheel is no flat disc, too thick for a thin plate, or held outside 0.05 to 0.98 of its diameter";

/// A disc of 230 × 1.6 mm, 12 GPa, ν 0.2, between flanges of 76 mm: 9.432764505 N bend it with 25 MPa, and the least
/// standing wave, held at the flange, is at 492.501276 rad/s, 4703.04 rev/min.
fn disc(m: &mut Mounting) {
    m.wheel.diameter = mm(230.0);
    m.wheel.thickness = mm(1.6);
    m.wheel.hole = mm(22.2);
    m.wheel.modulus = gpa(12.0);
    m.wheel.poisson_ratio = plain(0.2);
    m.wheel.density = density(2400.0);
    m.wheel.allowed_bending = mpa(25.0);
    m.machine.side_load = kn(9.4e-3);
    m.fixed_flange.diameter = mm(76.0);
    m.loose_flange.diameter = mm(76.0);
    m.spindle.greatest_speed = rpm(4650.0);
}

fn with(change: impl FnOnce(&mut Mounting)) -> impl FnOnce(&mut Mounting) {
    |m| {
        disc(m);
        change(m);
    }
}

fn thin_wheel() -> Table {
    let (bent, waves) = (THIN_DISCS, VIBRATING_DISCS);
    Table::of("thin-wheel")
        .row(
            row("bent a little more than allowed", with(|m| m.machine.side_load = kn(9.44e-3)))
                .caution(bent, BENDS),
        )
        .row(row("bent almost as far as allowed", with(|_| {})).pass(bent, HOLDS))
        .row(
            row("a smaller flange holds", with(|m| m.loose_flange.diameter = mm(60.0)))
                .caution(bent, BENDS),
        )
        .row(
            // 13.374 N between stabilisers of 125 mm.
            row(
                "stabilisers take more",
                with(|m| {
                    m.hub.stabiliser_diameter = mm(125.0);
                    m.machine.side_load = kn(13.36e-3);
                }),
            )
            .pass(bent, HOLDS),
        )
        .row(
            row(
                "but not everything",
                with(|m| {
                    m.hub.stabiliser_diameter = mm(125.0);
                    m.machine.side_load = kn(13.39e-3);
                }),
            )
            .caution(bent, BENDS),
        )
        .row(
            row("fast enough for a wave", with(|m| m.spindle.greatest_speed = rpm(4712.0)))
                .caution(waves, STANDS)
                .saying("from 47"),
        )
        .row(
            row(
                "not quite, with little load",
                with(|m| {
                    m.spindle.greatest_speed = rpm(4695.0);
                    m.machine.side_load = kn(1e-3);
                }),
            )
            .pass(bent, HOLDS),
        )
        .row(row("a thick wheel", |_| {}).aside(bent, NO_PLATE))
        .row(
            // A tenth of (108 - 76) / 2 is 1.6 mm.
            row(
                "just thin enough",
                with(|m| {
                    m.wheel.diameter = mm(108.0);
                    m.machine.side_load = kn(30e-3);
                }),
            )
            .caution(bent, BENDS),
        )
        .row(row("just too thick", with(|m| m.wheel.diameter = mm(107.99))).aside(bent, NO_PLATE))
        .row(
            row("a cup", with(|m| m.wheel.shape = hubwright::wheel::Shape::Type11.into()))
                .aside(bent, NO_PLATE),
        )
        .row(
            row("held by almost nothing", with(|m| m.hub.stabiliser_diameter = mm(11.0)))
                .aside(bent, NO_PLATE),
        )
        .row(
            row("a thick wheel, whatever is blank", |m| m.machine.side_load = Datum::Unknown)
                .aside(bent, NO_PLATE),
        )
        .row(
            row(
                "stabilisers of unknown size",
                with(|m| m.hub.stabiliser_diameter = Datum::Unknown),
            )
            .unknown("hub stabiliser diameter"),
        )
        .row(
            row(
                "stabilisers make flanges unimportant",
                with(|m| {
                    m.hub.stabiliser_diameter = mm(125.0);
                    m.loose_flange.diameter = Datum::Unknown;
                }),
            )
            .pass(bent, HOLDS),
        )
        .row(
            row(
                "what can't be told is not clear",
                with(|m| {
                    m.machine.side_load = kn(20e-3);
                    m.wheel.density = Datum::Unknown;
                }),
            )
            .unknown("wheel density"),
        )
        .row(
            row("a load does not speak for a wave", with(|m| m.wheel.modulus = Datum::NotAsked))
                .not_checked("wheel modulus"),
        )
        .row(
            row("nor one flange for two", with(|m| m.loose_flange.diameter = Datum::NotAsked))
                .not_checked("loose flange diameter"),
        )
        .unasked("machine side load", with(|m| m.machine.side_load = Datum::NotAsked))
        .blank("machine side load", with(|m| m.machine.side_load = Datum::Unknown))
        .blank("wheel allowed bending stress", with(|m| m.wheel.allowed_bending = Datum::Unknown))
        .blank("wheel density", with(|m| m.wheel.density = Datum::Unknown))
        .blank("wheel modulus", with(|m| m.wheel.modulus = Datum::Unknown))
        .blank("wheel poisson ratio", with(|m| m.wheel.poisson_ratio = Datum::Unknown))
        .blank("wheel diameter", with(|m| m.wheel.diameter = Datum::Unknown))
        .blank("wheel thickness", with(|m| m.wheel.thickness = Datum::Unknown))
        .blank("wheel hole", with(|m| m.wheel.hole = Datum::Unknown))
        .blank("fixed flange diameter", with(|m| m.fixed_flange.diameter = Datum::Unknown))
        .blank("loose flange diameter", with(|m| m.loose_flange.diameter = Datum::Unknown))
        .blank("spindle greatest speed", with(|m| m.spindle.greatest_speed = Datum::Unknown))
}

/// The sound wheel of 200 mm stands 60 mm out of flanges of 80 mm; 3 mm are kept clear.
fn cut_too_deep() -> Table {
    const SAYS: &str = "the cut is {found} deep, {demanded} of the wheel is left to cut with";
    let by = ARITHMETIC;
    Table::of("cut-too-deep")
        .row(row("shallow", |_| {}).pass(by, SAYS).figures(2.0, 57.0, 55.0))
        .row(
            row("as deep as can be", |m| m.machine.depth_of_cut = mm(57.0))
                .pass(by, SAYS)
                .figures(57.0, 57.0, 0.0),
        )
        .row(
            row("a little deeper", |m| m.machine.depth_of_cut = mm(57.001))
                .refuse(by, SAYS)
                .figures(57.001, 57.0, -0.001),
        )
        .row(
            row("the larger flange touches first", |m| {
                m.loose_flange.diameter = mm(90.0);
                m.machine.depth_of_cut = mm(53.0);
            })
            .refuse(by, SAYS)
            .figures(53.0, 52.0, -1.0),
        )
        .row(
            // Common practice, no source: a disc of 125 mm between stabilisers of 80 mm has 22.5 mm less clearance.
            row("stabilisers touch before the flanges", |m| {
                m.wheel.diameter = mm(125.0);
                m.fixed_flange.diameter = mm(50.0);
                m.loose_flange.diameter = mm(50.0);
                m.hub.stabiliser_diameter = mm(80.0);
                m.machine.depth_of_cut = mm(20.0);
            })
            .refuse(by, SAYS)
            .figures(20.0, 19.5, -0.5),
        )
        .row(
            row("no clearance kept", |m| {
                m.machine.work_clearance = mm(0.0);
                m.machine.depth_of_cut = mm(60.0);
            })
            .pass(by, SAYS)
            .figures(60.0, 60.0, 0.0),
        )
        .row(
            row("too deep, whatever is kept clear", |m| {
                m.machine.work_clearance = Datum::Unknown;
                m.machine.depth_of_cut = mm(60.1);
            })
            .refuse(by, SAYS)
            .figures(60.1, 60.0, -0.1),
        )
        .row(
            row("too deep for the flange that is known", |m| {
                m.loose_flange.diameter = Datum::Unknown;
                m.machine.depth_of_cut = mm(58.0);
            })
            .refuse(by, SAYS),
        )
        .row(
            row("stabilisers of unknown size", |m| m.hub.stabiliser_diameter = Datum::Unknown)
                .unknown("hub stabiliser diameter"),
        )
        .row(
            row("stabilisers whose diameter nobody gives", |m| m.hub.stabilisers = mm(14.0))
                .not_checked("hub stabiliser diameter"),
        )
        .row(
            row("too deep, stabilisers or not", |m| {
                m.hub.stabilisers = mm(14.0);
                m.machine.depth_of_cut = mm(60.1);
                m.machine.work_clearance = mm(0.0);
            })
            .refuse(by, SAYS)
            .figures(60.1, 60.0, -0.1),
        )
        .row(
            row("blank stabilisers", |m| m.hub.stabilisers = Datum::Unknown)
                .unknown("hub stabilisers"),
        )
        .row(
            row("a diameter is enough", |m| {
                m.hub.stabilisers = Datum::Unknown;
                m.hub.stabiliser_diameter = mm(100.0);
            })
            .pass(by, SAYS),
        )
        .blank("machine depth of cut", |m| m.machine.depth_of_cut = Datum::Unknown)
        .blank("machine work clearance", |m| m.machine.work_clearance = Datum::Unknown)
        .blank("wheel diameter", |m| m.wheel.diameter = Datum::Unknown)
        .blank("fixed flange diameter", |m| m.fixed_flange.diameter = Datum::Unknown)
        .blank("loose flange diameter", |m| m.loose_flange.diameter = Datum::Unknown)
        .unasked("machine depth of cut", |m| m.machine.depth_of_cut = Datum::NotAsked)
        .unasked("machine work clearance", |m| m.machine.work_clearance = Datum::NotAsked)
}

#[test]
fn a_thin_wheel_stands_its_side_load() {
    thin_wheel().holds();
}

#[test]
fn the_wheel_reaches_as_deep_as_it_cuts() {
    cut_too_deep().holds();
}
