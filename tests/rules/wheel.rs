//! The wheel itself: hole, thickness, age, bushing.

use hubwright::mounting::{Datum, MarkingSays, Mounting, Outcome, Terms, YesNo};
use hubwright::tables::laws;
use hubwright::wheel::{Bond, MachineKind, Shape};

use crate::{Table, day, density, inches, mm, mpa, row, rpm};

pub fn tables() -> Vec<Table> {
    vec![
        marking_disagrees(),
        burst_margin(),
        hole_large_for_wheel(),
        cutting_off_too_thick(),
        wheel_too_old(),
        bushing(),
    ]
}

fn marking_disagrees() -> Table {
    let practice = laws::PRACTICE;
    let says = |m: &mut Mounting, says: MarkingSays| m.wheel.marking_says = says.into();
    Table::of("marking-disagrees")
        .row(
            row("the same", |m| says(m, MarkingSays::Same))
                .pass(practice, "the marking on the wheel says the same, as far as it was read"),
        )
        .row(row("the lower speed was taken", |m| says(m, MarkingSays::OtherSpeed)).caution(
            practice,
            "the marking on the wheel names another speed: the lower of the two is the limit",
        ))
        .row(row("another size", |m| says(m, MarkingSays::OtherSize)).is(
            Outcome::Unknown,
            practice,
            "the marking on the wheel names another size",
        ))
        .row(row("another shape", |m| says(m, MarkingSays::OtherShape)).is(
            Outcome::Unknown,
            practice,
            "the marking on the wheel names another shape",
        ))
        .row(row("another abrasive", |m| says(m, MarkingSays::OtherAbrasive)).is(
            Outcome::Unknown,
            practice,
            "the marking on the wheel names another abrasive",
        ))
        .row(row("another bond", |m| says(m, MarkingSays::OtherBond)).is(
            Outcome::Unknown,
            practice,
            "the marking on the wheel names another bond",
        ))
        .blank("wheel marking says", |m| m.wheel.marking_says = Datum::Unknown)
        .row(
            row("nobody asks", |m| m.wheel.marking_says = Datum::NotAsked)
                .not_checked("wheel marking says"),
        )
}

/// A 200 mm wheel with a hole of 31.75 mm, 2250 kg/m³, ν 0.22, at 3000 rev/min: the hoop stress
/// at the hole is 1.798545102 MPa by finite elements (case A01 of tests/reference/rotating_wheel.csv).
fn burst_margin() -> Table {
    const BURSTS: &str = "by the strength given the wheel bursts below the spindle's greatest speed: strength over stress is {found}";
    const NEAR: &str =
        "strength over stress is {found} at the spindle's greatest speed, {demanded} was asked for";
    const FAR: &str = "strength over stress is {found} at the spindle's greatest speed, {demanded} was asked for; the marked speed stays the limit";
    const OTHER: &str = "the theory is for flat wheels (type 1)";
    let theory = laws::BURSTING;
    let wheel = |m: &mut Mounting, strength: f64| {
        m.wheel.hole = mm(31.75);
        m.wheel.nominal_hole = mm(31.75);
        m.spindle.greatest_speed = rpm(3000.0);
        m.wheel.tensile_strength = mpa(strength);
    };
    Table::of("burst-margin")
        .row(
            // 20 MPa over 1.798545102 MPa, and 3000 rev/min times its root.
            row("strong enough", |m| wheel(m, 20.0))
                .pass(theory, FAR)
                .figures(11.120_099_2, 3.0, 8.120_099_2)
                .saying("computed to burst at 10004 rpm"),
        )
        .row(row("just what was asked for", |m| wheel(m, 3.0 * 1.798_545_11)).pass(theory, FAR))
        .row(
            row("a shade less than was asked for", |m| wheel(m, 3.0 * 1.798_545_09))
                .refuse(theory, NEAR)
                .saying("3 was asked for"),
        )
        .row(
            row("half a factor short", |m| wheel(m, 2.5 * 1.798_545_102))
                .refuse(theory, NEAR)
                .saying("strength over stress is 2.5 at"),
        )
        .row(
            row("weaker than its own rotation", |m| wheel(m, 0.9 * 1.798_545_102))
                .refuse(theory, BURSTS)
                .saying("stress is 0.9; computed to burst at 2846 rpm"),
        )
        .row(
            row("weaker than its own rotation, whatever is asked for", |m| {
                wheel(m, 1.0);
                m.wheel.burst_factor = Datum::NotAsked;
            })
            .refuse(theory, BURSTS),
        )
        .row(
            row("weaker than its own rotation, the factor blank", |m| {
                wheel(m, 1.0);
                m.wheel.burst_factor = Datum::Unknown;
            })
            .refuse(theory, BURSTS),
        )
        .row(
            // A larger hole is stressed more: (1 - ν) a² grows.
            row("the largest hole counts", |m| {
                wheel(m, 3.0 * 1.798_545_11);
                m.wheel.largest_hole = mm(40.0);
            })
            .refuse(theory, NEAR),
        )
        .row(
            row("a heavier wheel", |m| {
                wheel(m, 3.0 * 1.798_545_11);
                m.wheel.density = density(2251.0);
            })
            .refuse(theory, NEAR),
        )
        .row(
            row("a cutting-off wheel is flat too", |m| {
                wheel(m, 20.0);
                m.wheel.shape = Shape::Type1CuttingOff.into();
            })
            .pass(theory, FAR),
        )
        .row(
            row("a cup", |m| {
                wheel(m, 1.0);
                m.wheel.shape = Shape::Type6.into();
            })
            .aside(theory, OTHER),
        )
        .row(
            row("too weak, of a shape that is blank", |m| {
                wheel(m, 1.0);
                m.wheel.shape = Datum::Unknown;
            })
            .unknown("wheel shape"),
        )
        .blank("wheel tensile strength", |m| m.wheel.tensile_strength = Datum::Unknown)
        .blank("wheel burst factor", |m| m.wheel.burst_factor = Datum::Unknown)
        .blank("wheel density", |m| m.wheel.density = Datum::Unknown)
        .blank("wheel poisson ratio", |m| m.wheel.poisson_ratio = Datum::Unknown)
        .blank("wheel shape", |m| m.wheel.shape = Datum::Unknown)
        .blank("wheel diameter", |m| m.wheel.diameter = Datum::Unknown)
        .blank("wheel hole", |m| m.wheel.hole = Datum::Unknown)
        .blank("wheel largest hole", |m| m.wheel.largest_hole = Datum::Unknown)
        .blank("spindle greatest speed", |m| m.spindle.greatest_speed = Datum::Unknown)
        .unasked("wheel tensile strength", |m| m.wheel.tensile_strength = Datum::NotAsked)
        .unasked("wheel burst factor", |m| m.wheel.burst_factor = Datum::NotAsked)
        .unasked("wheel shape", |m| m.wheel.shape = Datum::NotAsked)
}

/// 29 CFR 1910.211(b)(1) and (b)(13)(ii): a quarter for cutting off, two thirds
/// for precision work, half for all else.
fn hole_large_for_wheel() -> Table {
    const QUARTER: &str =
        "the hole of a cutting-off wheel is {found}, a quarter of its diameter {demanded}";
    const SHOULD: &str = "the hole is {found}; on this machine it should be {demanded} at most";
    const SMALL: &str = "the hole is {found}, {demanded} at most";
    const NONE: &str = "the law gives no greatest hole for this shape";
    let straight = laws::WHEEL_SHAPES;
    Table::of("hole-large-for-wheel")
        .row(
            // 180 / 4 = 45.
            row("a cutting-off wheel with more than a quarter", |m| {
                m.wheel.shape = Shape::Type1CuttingOff.into();
                m.wheel.diameter = mm(180.0);
                m.wheel.hole = mm(45.001);
            })
            .refuse(laws::CUTTING_OFF_WHEELS, QUARTER)
            .figures(45.001, 45.0, -0.001),
        )
        .row(
            row("type 27A with more than a quarter", |m| {
                m.wheel.shape = Shape::Type27A.into();
                m.wheel.hole = mm(50.001);
            })
            .refuse(laws::CUTTING_OFF_WHEELS, QUARTER),
        )
        .row(
            row("a cutting-off wheel with a quarter", |m| {
                m.wheel.shape = Shape::Type1CuttingOff.into();
                m.wheel.diameter = mm(180.0);
                m.wheel.hole = mm(45.0);
            })
            .pass(straight, SMALL)
            .figures(45.0, 45.0, 0.0),
        )
        .row(
            // A half of 200 is 100; the law says "should".
            row("more than half on a bench grinder", |m| {
                m.machine.kind = MachineKind::Bench.into();
                m.wheel.hole = mm(100.001);
            })
            .caution(straight, SHOULD)
            .figures(100.001, 100.0, -0.001)
            .saying("100.001 mm"),
        )
        .row(
            row("half on a bench grinder", |m| {
                m.machine.kind = MachineKind::Bench.into();
                m.wheel.hole = mm(100.0);
            })
            .pass(straight, SMALL),
        )
        .row(
            // Two thirds of 210 are 140.
            row("two thirds on a surface grinder", |m| {
                m.wheel.diameter = mm(210.0);
                m.wheel.hole = mm(140.0);
            })
            .pass(straight, SMALL)
            .figures(140.0, 140.0, 0.0),
        )
        .row(
            row("more than two thirds on a cylindrical grinder", |m| {
                m.machine.kind = MachineKind::Cylindrical.into();
                m.wheel.diameter = mm(210.0);
                m.wheel.hole = mm(140.001);
            })
            .caution(straight, SHOULD)
            .figures(140.001, 140.0, -0.001),
        )
        .row(
            row("nobody asks for the machine: half", |m| {
                m.machine.kind = Datum::NotAsked;
                m.wheel.hole = mm(101.0);
            })
            .caution(straight, SHOULD),
        )
        .row(
            row("too much on any machine, with a blank one", |m| {
                m.machine.kind = Datum::Unknown;
                m.wheel.hole = mm(134.0);
            })
            .caution(straight, SHOULD),
        )
        .row(row("a cup", |m| m.wheel.shape = Shape::Type6.into()).aside(straight, NONE))
        .blank("machine kind", |m| {
            m.machine.kind = Datum::Unknown;
            m.wheel.hole = mm(101.0);
        })
        .blank("wheel shape", |m| m.wheel.shape = Datum::Unknown)
        .blank("wheel hole", |m| m.wheel.hole = Datum::Unknown)
        .blank("wheel diameter", |m| m.wheel.diameter = Datum::Unknown)
        .unasked("wheel shape", |m| m.wheel.shape = Datum::NotAsked)
        .unasked("wheel hole", |m| m.wheel.hole = Datum::NotAsked)
        .unasked("wheel diameter", |m| m.wheel.diameter = Datum::NotAsked)
}

/// 29 CFR 1910.211(b)(13)(i): 3/16 in up to 6 in, 1/4 up to 12, 3/8 up to 23, 1/2 above.
fn cutting_off_too_thick() -> Table {
    const THICK: &str =
        "it is {found} thick; a cutting-off wheel of its diameter is {demanded} at most";
    const THIN: &str = "it is {found} thick, {demanded} at most";
    let law = laws::CUTTING_OFF_WHEELS;
    let cutting_off = |m: &mut Mounting| m.wheel.shape = Shape::Type1CuttingOff.into();
    let mut table = Table::of("cutting-off-too-thick");
    let rows = [
        (6.0, 3.0 / 16.0),
        (6.1, 1.0 / 4.0),
        (12.0, 1.0 / 4.0),
        (12.1, 3.0 / 8.0),
        (23.0, 3.0 / 8.0),
        (23.1, 1.0 / 2.0),
    ];
    for (diameter, most) in rows {
        let most_mm = most * 25.4;
        let sized = |thickness| {
            row(format!("{diameter} in, {thickness} in thick"), |m| {
                cutting_off(m);
                m.wheel.diameter = inches(diameter);
                m.wheel.thickness = inches(thickness);
            })
        };
        let above = most + 0.01;
        table = table
            .row(sized(most).pass(law, THIN).figures(most_mm, most_mm, 0.0))
            .row(sized(above).caution(law, THICK).figures(above * 25.4, most_mm, -0.254));
    }
    table
        .row(
            row("type 27A", |m| {
                m.wheel.shape = Shape::Type27A.into();
                m.wheel.thickness = mm(3.0);
            })
            // 200 mm is over 6 in and under 12: 1/4 in.
            .pass(law, THIN)
            .figures(3.0, 6.35, 3.35),
        )
        .row(row("a straight wheel", |_| {}).aside(law, "it is no cutting-off wheel"))
        .blank("wheel shape", |m| m.wheel.shape = Datum::Unknown)
        .blank("wheel thickness", |m| {
            cutting_off(m);
            m.wheel.thickness = Datum::Unknown;
        })
        .blank("wheel diameter", |m| {
            cutting_off(m);
            m.wheel.diameter = Datum::Unknown;
        })
        .unasked("wheel thickness", |m| {
            cutting_off(m);
            m.wheel.thickness = Datum::NotAsked;
        })
        .unasked("wheel shape", |m| m.wheel.shape = Datum::NotAsked)
}

/// EN 12413 from memory: use-before date, or three years for hand-held resin discs.
fn wheel_too_old() -> Table {
    const PAST: &str = "today is {found}, it was to be used before {demanded}";
    const OLD: &str =
        "today is {found}; a hand-held resin disc of its date is given until {demanded}";
    const FRESH: &str = "today is {found}, it may be used until {demanded}";
    const NO_LIMIT: &str = "it carries no use-before date, and is no hand-held resin disc";
    let law = laws::USE_BEFORE;
    let hand_held = |m: &mut Mounting, made: &str| {
        m.machine.kind = MachineKind::Portable.into();
        m.wheel.bond = Bond::ReinforcedResin.into();
        m.wheel.use_before = Datum::NotAsked;
        m.wheel.made = day(made).into();
    };
    Table::of("wheel-too-old")
        .row(
            // Days are counted since 1970-01-01; one day apart is a margin of one day.
            row("a day past its date", |m| m.wheel.use_before = day("2026-11-24").into())
                .caution(law, PAST)
                .figures(20_782.0, 20_781.0, -1.0)
                .saying("2026-11-24"),
        )
        .row(
            row("on its date", |m| m.wheel.use_before = day("2026-11-25").into())
                .pass(law, FRESH)
                .figures(20_782.0, 20_782.0, 0.0),
        )
        .row(
            row("a hand-held resin disc, three years and a day old", |m| {
                hand_held(m, "2023-11-24")
            })
            .caution(law, OLD)
            .saying("until 2026-11-24"),
        )
        .row(
            row("a hand-held resin disc, three years old", |m| hand_held(m, "2023-11-25"))
                .pass(law, FRESH),
        )
        .row(
            row("an old vitrified wheel without a date", |m| {
                hand_held(m, "2010-01-01");
                m.wheel.bond = Bond::Vitrified.into();
            })
            .aside(law, NO_LIMIT),
        )
        .row(
            row("an old resin wheel without a date on a surface grinder", |m| {
                hand_held(m, "2010-01-01");
                m.machine.kind = MachineKind::Surface.into();
            })
            .aside(law, NO_LIMIT),
        )
        .row(
            row("nobody says what day it is", |_| {})
                .on_terms(|_| Terms::default())
                .aside(law, "today's date was not given"),
        )
        .blank("wheel use before", |m| m.wheel.use_before = Datum::Unknown)
        .blank("wheel made", |m| {
            hand_held(m, "2010-01-01");
            m.wheel.made = Datum::Unknown;
        })
        .blank("machine kind", |m| {
            hand_held(m, "2010-01-01");
            m.machine.kind = Datum::Unknown;
        })
        .blank("wheel bond", |m| {
            hand_held(m, "2010-01-01");
            m.wheel.bond = Datum::Unknown;
        })
        .unasked("wheel use before", |m| {
            hand_held(m, "2010-01-01");
            m.wheel.made = Datum::NotAsked;
        })
}

/// 29 CFR 1910.215(d)(4): not wider than the wheel, and clear of the flanges.
/// Half of the thickness at least is practice.
fn bushing() -> Table {
    const WIDE: &str = "the bushing is {found} wide, the wheel {demanded}";
    const SHORT: &str =
        "the bushing is {found} wide, less than half of the wheel's thickness, {demanded}";
    let law = laws::BUSHINGS;
    // A sound bushing in the 20 mm wheel.
    let fitted = |m: &mut Mounting| {
        m.wheel.bushing_width = mm(19.0);
        m.wheel.bushing_touches_flange = YesNo::No.into();
        m.wheel.bushing_nested = YesNo::No.into();
    };
    Table::of("bushing")
        .row(row("narrower than the wheel", fitted).pass(law, WIDE).figures(19.0, 20.0, 1.0))
        .row(
            row("wider than the wheel", |m| {
                fitted(m);
                m.wheel.bushing_width = mm(20.1);
            })
            .refuse(law, WIDE)
            .figures(20.1, 20.0, -0.1)
            .saying("20.1 mm wide"),
        )
        .row(
            row("touching a flange", |m| {
                fitted(m);
                m.wheel.bushing_touches_flange = YesNo::Yes.into();
            })
            .refuse(law, "the bushing touches a flange"),
        )
        .row(
            // A breach of what is known stands.
            row("touching a flange, with a blank width", |m| {
                fitted(m);
                m.wheel.bushing_touches_flange = YesNo::Yes.into();
                m.wheel.bushing_width = Datum::Unknown;
            })
            .refuse(law, "the bushing touches a flange"),
        )
        .row(
            row("one in another", |m| {
                fitted(m);
                m.wheel.bushing_nested = YesNo::Yes.into();
            })
            .caution(laws::PRACTICE, "one bushing sits in another"),
        )
        .row(
            // Half of 20 mm is 10 mm.
            row("shorter than half of the wheel", |m| {
                fitted(m);
                m.wheel.bushing_width = mm(9.9);
            })
            .caution(laws::PRACTICE, SHORT)
            .figures(9.9, 10.0, -0.1),
        )
        .row(
            row("half as long as the wheel", |m| {
                fitted(m);
                m.wheel.bushing_width = mm(10.0);
            })
            .pass(law, WIDE),
        )
        .blank("wheel bushing width", |m| {
            fitted(m);
            m.wheel.bushing_width = Datum::Unknown;
        })
        .blank("wheel bushing touches flange", |m| {
            fitted(m);
            m.wheel.bushing_touches_flange = Datum::Unknown;
        })
        .blank("wheel bushing nested", |m| {
            fitted(m);
            m.wheel.bushing_nested = Datum::Unknown;
        })
        .blank("wheel thickness", |m| {
            fitted(m);
            m.wheel.thickness = Datum::Unknown;
        })
        .unasked("wheel bushing width", |m| {
            fitted(m);
            m.wheel.bushing_width = Datum::NotAsked;
        })
        .unasked("wheel bushing width, wheel bushing touches flange, wheel bushing nested", |_| {})
}

#[test]
fn a_large_hole_is_refused_for_cutting_off_and_a_caution_elsewhere() {
    hole_large_for_wheel().holds();
}

#[test]
fn a_thick_cutting_off_wheel_is_none() {
    cutting_off_too_thick().holds();
}

#[test]
fn a_wheel_past_its_date_brings_a_caution() {
    wheel_too_old().holds();
}

#[test]
fn a_bushing_stays_inside_the_wheel() {
    bushing().holds();
}
