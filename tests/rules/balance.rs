//! Unbalance against the grade asked for: 9549.3 G m / n as the catalogues have it, where the rule
//! goes by angular velocity, and the pull of a wheel off centre added up by hand.

use std::f64::consts::PI;

use hubwright::mounting::{Datum, Mounting};
use hubwright::tables::balance::GRADE;
use hubwright::wheel::Fastening;

use crate::{Row, Table, gmm, kg, mm, rim, row, sound};

pub fn tables() -> Vec<Table> {
    vec![unbalance()]
}

const LEFT: &str = "the residual unbalance is {found}; the grade allows {demanded} at the spindle's greatest speed";
const BUILT: &str = "clearance, run-out and the bare hub can come to {found}; the grade allows {demanded} at the spindle's greatest speed";
const MADE: &str = "clearance, run-out and the bare hub come to {found} at most; the grade allows {demanded} at the spindle's greatest speed";

/// G2.5, 3 kg at 2850 rev/min, in g mm.
fn allowed() -> f64 {
    let whole = 60_000.0 / (2.0 * PI) * 2.5 * 3.0 / 2850.0;
    (whole * 1e6).floor() / 1e6
}

/// The sound mounting before anybody has measured its unbalance.
fn unmeasured(name: &str, change: impl FnOnce(&mut Mounting)) -> Row {
    row(name, |m| {
        m.hub.residual_unbalance = Datum::NotAsked;
        change(m);
    })
}

fn unbalance() -> Table {
    let most = allowed();
    // 1.3 kg off by 0.05 / 2 mm, 3 kg off by 0.004 / 2 mm, and 8 g mm of the hub.
    let built = 1300.0 * 0.025 + 3000.0 * 0.002 + 8.0;
    Table::of("unbalance")
        .row(
            row("the sound mounting", |_| {})
                .pass(GRADE, LEFT)
                .figures(12.0, most, most - 12.0)
                .saying("it turns with a force of 1.1 N"),
        )
        .row(
            row("as much as is allowed", |m| m.hub.residual_unbalance = gmm(most))
                .pass(GRADE, LEFT),
        )
        .row(
            row("a little more", |m| m.hub.residual_unbalance = gmm(most + 1e-6))
                .caution(GRADE, LEFT)
                .figures(most + 1e-6, most, -1e-6),
        )
        .row(
            row("a spindle twice as fast", |m| {
                m.spindle.greatest_speed = crate::rpm(5700.0);
                m.wheel.marked_rim_speed = rim(80.0);
            })
            .pass(GRADE, LEFT),
        )
        .row(row("a finer grade", |m| m.hub.balance_grade = crate::grade(1.0)).caution(GRADE, LEFT))
        .row(unmeasured("a wheel in its clearance", |_| {}).caution(GRADE, BUILT).figures(
            built,
            most,
            most - built,
        ))
        .row(unmeasured("a close fit", |m| m.wheel.hole = mm(50.78)).pass(GRADE, MADE).figures(
            20.5,
            most,
            most - 20.5,
        ))
        .row(
            unmeasured("a close fit with its limits", |m| {
                m.wheel.hole = mm(50.78);
                m.wheel.largest_hole = mm(50.79);
                m.hub.smallest_spigot = mm(50.76);
            })
            .caution(GRADE, BUILT)
            .figures(33.5, most, most - 33.5),
        )
        // A breach of what is known stands.
        .row(
            unmeasured("a wheel in its clearance, nothing known of the hub", |m| {
                m.hub.bare_unbalance = Datum::NotAsked;
            })
            .caution(GRADE, BUILT)
            .figures(38.5, most, most - 38.5),
        )
        .row(
            unmeasured("a hub that is bad enough by itself", |m| {
                m.hub.bare_unbalance = gmm(40.0);
                m.wheel.mass = Datum::NotAsked;
            })
            .caution(GRADE, BUILT)
            .figures(46.0, most, most - 46.0),
        )
        .row(
            unmeasured("a close fit, nothing known of the hub", |m| {
                m.wheel.hole = mm(50.78);
                m.hub.bare_unbalance = Datum::NotAsked;
                m.wheel.largest_hole = mm(50.78);
                m.hub.smallest_spigot = mm(50.77);
                m.wheel.fastening = Fastening::Flanges.into();
            })
            .not_checked("hub residual unbalance, hub bare unbalance"),
        )
        .row(
            unmeasured("a wheel with a thread of its own", |m| {
                m.wheel.fastening = Fastening::ThreadedInsert.into();
            })
            .aside(GRADE, "the wheel sits on no spigot, and no residual unbalance is given"),
        )
        .row(
            row("a blank residual unbalance", |m| m.hub.residual_unbalance = Datum::Unknown)
                .unknown("hub residual unbalance"),
        )
        .row(
            unmeasured("a wheel of blank mass", |m| m.wheel.mass = Datum::Unknown)
                .unknown("wheel mass"),
        )
        .row(
            unmeasured("a blank clearance", |m| m.wheel.hole = Datum::Unknown)
                .unknown("wheel hole"),
        )
        .row(
            unmeasured("a hub of blank unbalance", |m| m.hub.bare_unbalance = Datum::Unknown)
                .unknown("hub bare unbalance"),
        )
        .row(
            unmeasured("a blank run-out", |m| m.hub.spigot_run_out = Datum::Unknown)
                .unknown("hub spigot run-out"),
        )
        .row(
            unmeasured("a blank fastening", |m| m.wheel.fastening = Datum::Unknown)
                .unknown("wheel fastening"),
        )
        .blank("spindle greatest speed", |m| m.spindle.greatest_speed = Datum::Unknown)
        .blank("hub balance grade", |m| m.hub.balance_grade = Datum::Unknown)
        .blank("hub rotor mass", |m| m.hub.rotor_mass = Datum::Unknown)
        .unasked("hub balance grade", |m| m.hub.balance_grade = Datum::NotAsked)
        .unasked("hub rotor mass", |m| m.hub.rotor_mass = Datum::NotAsked)
}

#[test]
fn unbalance_is_held_to_the_grade_at_the_greatest_speed() {
    unbalance().holds();
}

/// What can't be is told before any rule is asked.
#[test]
fn a_wheel_heavier_than_all_that_turns_is_no_mounting() {
    let mut mounting = sound();
    mounting.wheel.mass = kg(3.1);
    let error = mounting.facts().expect_err("a slip").to_string();
    assert!(error.contains("a wheel mass of 3.1 kg in a hub rotor mass of 3 kg"), "{error}");
}
