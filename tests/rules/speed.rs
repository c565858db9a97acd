//! The spindle against the marking.

use hubwright::mounting::{Datum, Mounting, Outcome, check};
use hubwright::tables::laws;

use crate::{Row, Table, finding, mm, rim, row, rpm, sound, terms};

const TURNS: &str = "the spindle can turn {found}, the wheel is marked {demanded}";
const RIM: &str = "the rim can run {found}, the wheel is marked {demanded}";
const TURNS_HELD: &str = "the spindle turns at most {found}, the wheel is marked {demanded}";
const RIM_HELD: &str = "the rim runs at most {found}, the wheel is marked {demanded}";

const CONTRADICT: &str = "the marked turns would run the rim at {found}, the marked rim speed is {demanded}: the lower governs";
const ROUNDED: &str = "the marked turns come to {found} at the rim, the marked rim speed is {demanded}: one was rounded from the other";
const AGREE: &str =
    "the marked turns come to {found} at the rim, the marked rim speed is {demanded}";

pub fn tables() -> Vec<Table> {
    vec![over_speed(), markings_disagree()]
}

/// A wheel marked in turns alone.
fn turns_alone(m: &mut Mounting) {
    m.wheel.marked_rim_speed = Datum::NotAsked;
}

/// A wheel marked at the rim alone.
fn rim_alone(m: &mut Mounting) {
    m.wheel.marked_speed = Datum::NotAsked;
}

/// A 250 mm wheel whose two markings were rounded from each other:
/// π · 0.25 m · 3820 / 60 s = 50.003683 m/s.
fn rounded(m: &mut Mounting) {
    m.wheel.diameter = mm(250.0);
    m.wheel.marked_speed = rpm(3820.0);
    m.wheel.marked_rim_speed = rim(50.0);
}

fn over_speed() -> Table {
    let law = laws::MARKED_SPEED;
    let over = |name: &str, change: fn(&mut Mounting)| -> Row { row(name, change) };
    Table::of("over-speed")
        .row(
            over("one turn over the marking", |m| {
                turns_alone(m);
                m.spindle.greatest_speed = rpm(3341.0);
            })
            .refuse(law, TURNS)
            .figures(3341.0, 3340.0, -1.0)
            .saying("3341 rpm"),
        )
        .row(
            over("on the marking", |m| {
                turns_alone(m);
                m.spindle.greatest_speed = rpm(3340.0);
            })
            .pass(law, TURNS_HELD)
            .figures(3340.0, 3340.0, 0.0),
        )
        .row(
            // π · 0.2 m · 3343 / 60 s = 35.007814 m/s.
            over("over the marking at the rim", |m| {
                rim_alone(m);
                m.spindle.greatest_speed = rpm(3343.0);
            })
            .refuse(law, RIM)
            .figures(35.007814, 35.0, -0.007814)
            .saying("35.008 m/s"),
        )
        .row(
            // π · 0.2 m · 2850 / 60 s = 29.84513 m/s.
            over("under the marking at the rim", rim_alone).pass(law, RIM_HELD).figures(
                29.84513,
                35.0,
                35.0 - 29.84513,
            ),
        )
        .row(
            // The markings contradict each other by more than 0.5 %: each must hold.
            // π · 0.25 m · 3900 / 60 s = 51.050881 m/s.
            over("within the marked turns, but over a rim speed far below them", |m| {
                rounded(m);
                m.wheel.marked_speed = rpm(3900.0);
                m.spindle.greatest_speed = rpm(3900.0);
            })
            .refuse(law, RIM)
            .figures(51.050881, 50.0, -1.050881),
        )
        .row(
            over("250 mm at 3820 rpm, marked 3820 rpm and 50 m/s", |m| {
                rounded(m);
                m.spindle.greatest_speed = rpm(3820.0);
            })
            .pass(law, TURNS_HELD)
            .figures(3820.0, 3820.0, 0.0),
        )
        .row(
            over("one turn over that", |m| {
                rounded(m);
                m.spindle.greatest_speed = rpm(3821.0);
            })
            .refuse(law, TURNS),
        )
        .row(
            // A breach of what is known stands.
            over("over the marked turns, with a blank diameter", |m| {
                m.spindle.greatest_speed = rpm(3400.0);
                m.wheel.diameter = Datum::Unknown;
            })
            .refuse(law, TURNS),
        )
        .row(
            over("under the marked turns alone, with a blank diameter", |m| {
                turns_alone(m);
                m.wheel.diameter = Datum::Unknown;
            })
            .pass(law, TURNS_HELD),
        )
        .blank("spindle greatest speed", |m| m.spindle.greatest_speed = Datum::Unknown)
        .blank("wheel marked speed", |m| m.wheel.marked_speed = Datum::Unknown)
        .blank("wheel marked rim speed", |m| m.wheel.marked_rim_speed = Datum::Unknown)
        .blank("wheel diameter", |m| m.wheel.diameter = Datum::Unknown)
        .unasked("spindle greatest speed", |m| m.spindle.greatest_speed = Datum::NotAsked)
        .unasked("wheel marked speed, wheel marked rim speed", |m| {
            turns_alone(m);
            rim_alone(m);
        })
        .unasked("wheel diameter", |m| m.wheel.diameter = Datum::NotAsked)
}

fn markings_disagree() -> Table {
    let law = laws::MARKED_SPEED;
    Table::of("markings-disagree")
        .row(
            row("rounded, and the spindle reaches the marked turns", |m| {
                rounded(m);
                m.spindle.greatest_speed = rpm(3820.0);
            })
            .caution(law, ROUNDED)
            .figures(50.003683, 50.0, -0.003683)
            .saying("50.004 m/s"),
        )
        .row(
            // A slow spindle does not make the markings agree.
            row("rounded, and the spindle stays below both", |m| {
                rounded(m);
                m.spindle.greatest_speed = rpm(3800.0);
            })
            .caution(law, ROUNDED),
        )
        .row(
            row("rounded, and nobody asks how fast the spindle is", |m| {
                rounded(m);
                m.spindle.greatest_speed = Datum::NotAsked;
            })
            .caution(law, ROUNDED),
        )
        .row(
            // 0.5 % over 50 m/s is 50.25; 3838 rpm come to 50.239303 and 3839 to 50.252392 m/s.
            row("half a percent apart, less a little", |m| {
                rounded(m);
                m.wheel.marked_speed = rpm(3838.0);
                m.spindle.greatest_speed = rpm(3838.0);
            })
            .caution(law, ROUNDED)
            .figures(50.239303, 50.0, -0.239303),
        )
        .row(
            row("half a percent apart, and a little more", |m| {
                rounded(m);
                m.wheel.marked_speed = rpm(3839.0);
            })
            .caution(law, CONTRADICT)
            .figures(50.252392, 50.0, -0.252392),
        )
        .row(
            // π · 0.2 m · 3340 / 60 s = 34.976398 m/s.
            row("the marked turns come to a little less", |_| {}).pass(law, AGREE).figures(
                34.976398,
                35.0,
                35.0 - 34.976398,
            ),
        )
        .blank("wheel marked speed", |m| m.wheel.marked_speed = Datum::Unknown)
        .blank("wheel marked rim speed", |m| m.wheel.marked_rim_speed = Datum::Unknown)
        .blank("wheel diameter", |m| m.wheel.diameter = Datum::Unknown)
        .unasked("wheel marked speed", rim_alone)
        .unasked("wheel marked rim speed", turns_alone)
        .unasked("wheel diameter", |m| m.wheel.diameter = Datum::NotAsked)
}

#[test]
fn no_spindle_may_outrun_the_marking_in_turns_or_at_the_rim() {
    over_speed().holds();
}

#[test]
fn markings_that_disagree_are_shown_and_the_lower_governs() {
    markings_disagree().holds();
}

#[test]
fn a_wheel_marked_50_m_s_and_3820_rpm_may_run_at_3820_rpm_with_a_caution() {
    let mut mounting = sound();
    rounded(&mut mounting);
    mounting.spindle.greatest_speed = rpm(3820.0);
    let of = |slug| finding(slug, &mounting, &terms()).outcome;
    assert_eq!(of("over-speed"), Outcome::Pass);
    assert_eq!(of("markings-disagree"), Outcome::Caution);
}

#[test]
fn a_faster_spindle_never_fares_better() {
    // On every mix of markings, by the worst of the two rules and by each of them.
    let markings: [fn(&mut Mounting); 6] = [
        |_| {},
        turns_alone,
        rim_alone,
        rounded,
        |m| m.wheel.diameter = Datum::Unknown,
        |m| m.wheel.marked_speed = Datum::Unknown,
    ];
    for (at, change) in markings.into_iter().enumerate() {
        let mut mounting = sound();
        change(&mut mounting);
        for slug in ["over-speed", "markings-disagree"] {
            let mut before = Outcome::NotChecked;
            for turns in (2000..4500).step_by(5) {
                mounting.spindle.greatest_speed = rpm(f64::from(turns));
                let now = finding(slug, &mounting, &terms()).outcome;
                assert!(now <= before, "{slug} at {turns} rpm, markings {at}");
                before = now;
            }
        }
    }
}

#[test]
fn a_blank_speed_or_marking_is_never_clear() {
    let blanks: [fn(&mut Mounting); 4] = [
        |m| m.spindle.greatest_speed = Datum::Unknown,
        |m| m.wheel.marked_speed = Datum::Unknown,
        |m| m.wheel.marked_rim_speed = Datum::Unknown,
        |m| m.wheel.diameter = Datum::Unknown,
    ];
    for blank in blanks {
        let mut mounting = sound();
        blank(&mut mounting);
        let verdict = check(&mounting, &terms()).expect("a mounting with a blank");
        assert!(!verdict.clear(), "{verdict}");
    }
}
