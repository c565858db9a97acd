//! What holds the wheel on: statics with angles where the rules work with slopes, and a ring plate solved
//! by finite differences where the rule has a closed form.

use std::f64::consts::PI;

use hubwright::mounting::{Datum, Mounting, Rotation, ThreadHand, YesNo};
use hubwright::solid::plate::RING_PLATE;
use hubwright::tables::laws;
use hubwright::wheel::Fastening;
use hubwright::wheel::holding::TORQUE_PATH;

use crate::{Row, Table, mm, mpa, plain, row, seconds, torque};

pub fn tables() -> Vec<Table> {
    vec![dishes(), unscrews(), slips(), presses()]
}

/// M40×1.5 in metres: pitch diameter; and the middle radius of the nut's face of 42 to 60 mm, and of what of it rests
/// on a flange with a hole of 45 mm.
const D2: f64 = 0.04 - 0.649_519_052_838_329 * 0.0015;
const UNDER: f64 = 0.0255;
const RESTS: f64 = 0.02625;

/// Force in N at 50 N m with these frictions, and with this middle radius of the face.
fn force_on(radius: f64, thread: f64, face: f64) -> f64 {
    let angle = (0.0015 / (PI * D2)).atan() + (thread / (PI / 6.0).cos()).atan();
    50.0 / (D2 / 2.0 * angle.tan() + face * radius)
}

fn force(thread: f64, face: f64) -> f64 {
    force_on(UNDER, thread, face)
}

/// Torque in N m that the thread holds at 0.12 under the least force.
fn holds() -> f64 {
    let angle = (0.12 / (PI / 6.0).cos()).atan() - (0.0015 / (PI * D2)).atan();
    force_on(RESTS, 0.16, 0.14) * D2 / 2.0 * angle.tan()
}

/// Torque of braking the 200 mm wheel from 2850 rev/min in so many seconds.
fn braking(time: f64) -> f64 {
    let inertia = PI / 2.0 * 2250.0 * 0.02 * (0.1_f64.powi(4) - 0.025_41_f64.powi(4));
    inertia * 2850.0 * PI / 30.0 / time
}

/// Time in which braking asks this torque.
fn time_for(torque: f64) -> f64 {
    braking(1.0) / torque
}

/// What one land, 60 to 80 mm across, carries at friction 0.15.
fn side() -> f64 {
    let radius =
        2.0 / 3.0 * (0.04_f64.powi(3) - 0.03_f64.powi(3)) / (0.04_f64.powi(2) - 0.03_f64.powi(2));
    0.15 * force_on(RESTS, 0.16, 0.14) * radius
}

fn changed(name: &str, change: impl FnOnce(&mut Mounting)) -> Row {
    row(name, change)
}

/// Rounded to whole millionths, away from comfort.
fn up(torque: f64) -> f64 {
    (torque * 1e6).ceil() / 1e6
}

fn down(torque: f64) -> f64 {
    (torque * 1e6).floor() / 1e6
}

/// The mounting with its loose flange not keyed.
fn unkeyed(name: &str, change: impl FnOnce(&mut Mounting)) -> Row {
    row(name, |m| {
        m.loose_flange.keyed = YesNo::No.into();
        change(m);
    })
}

/// Sag in mm at a hole of 45 mm, pressed on 52.5 mm, held on 70 mm, 80 mm outside: the
/// equation of slopes solved by shooting from the hole, step by step.
fn sag(thickness: f64) -> f64 {
    let (hole, load, land, rim, nu) = (0.0225, 0.02625, 0.035, 0.04, 0.3);
    let d = 206e9 * thickness.powi(3) / (12.0 * (1.0 - nu * nu));
    let pull = force(0.12, 0.1) / (2.0 * PI * d);
    // θ'' + θ'/r − θ/r² = Q/D, Q between load and land only; the end is the bending at the rim and the sag.
    let shoot = |start: f64, pull: f64| {
        let steps = 40_000;
        let h = (rim - hole) / f64::from(steps);
        let slope = |r: f64, [theta, first]: [f64; 2]| {
            let q = if r > load && r < land { pull / r } else { 0.0 };
            [first, q - first / r + theta / (r * r)]
        };
        let (mut y, mut sunk) = ([start, -nu * start / hole], 0.0);
        for step in 0..steps {
            let r = hole + f64::from(step) * h;
            let k1 = slope(r, y);
            let half = [y[0] + h / 2.0 * k1[0], y[1] + h / 2.0 * k1[1]];
            let k2 = slope(r + h / 2.0, half);
            if r + h / 2.0 < land {
                sunk += half[0] * h;
            }
            y = [y[0] + h * k2[0], y[1] + h * k2[1]];
        }
        [y[1] + nu * y[0] / rim, -sunk]
    };
    let ([bent, sagged], [bent_by_slope, sagged_by_slope]) = (shoot(0.0, pull), shoot(1.0, 0.0));
    let start = -bent / bent_by_slope;
    let span = land - load;
    (sagged + start * sagged_by_slope) * (1.0 + 0.25 * (thickness / span).powi(2)) * 1e3
}

const DISHES: &str =
    "under the nut the loose flange sags by {found} at its hole; its recess is {demanded} deep";
const TOUCHES: &str = "under the nut the loose flange sags by {found} at its hole and touches the wheel: its recess is {demanded} deep";

fn dishes() -> Table {
    let thin = |m: &mut Mounting, recess: f64| {
        m.loose_flange.thickness_at_hole = mm(3.0 + recess);
        m.loose_flange.thickness_at_edge = mm(3.0);
        m.loose_flange.recess = mm(recess);
    };
    let sagged = sag(0.003);
    Table::of("flange-dishes")
        .row(changed("the sound mounting", |_| {}).pass(RING_PLATE, DISHES))
        .row(changed("a thin flange with a deep recess", |m| thin(m, sagged * 1.005)).pass(RING_PLATE, DISHES))
        .row(changed("a thin flange with a shallow recess", |m| thin(m, sagged * 0.995)).refuse(RING_PLATE, TOUCHES))
        .row(
            changed("thinner at its edge than behind its recess", |m| {
                m.loose_flange.thickness_at_edge = mm(0.5);
            })
            .refuse(RING_PLATE, TOUCHES),
        )
        .row(
            changed("a recess as deep as the plate is thick", |m| m.loose_flange.recess = mm(12.0))
                .refuse(RING_PLATE, TOUCHES),
        )
        .row(
            changed("a thread so steep and rough that no torque pulls with an end", |m| {
                m.nut.thread_pitch = mm(10.0);
                m.nut.thread_friction = plain(1.0);
                m.nut.greatest_thread_friction = plain(1.0);
                m.nut.thread_diameter = mm(40.0);
                m.hub.thread_bore = mm(0.0);
                m.loose_flange.thickness_at_edge = mm(0.1);
            })
            .refuse(RING_PLATE, TOUCHES),
        )
        .row(
            changed("no recess", |m| m.loose_flange.recess = mm(0.0))
                .aside(RING_PLATE, "the loose flange has no recess"),
        )
        .row(
            changed("a nut as large as the flange", |m| {
                m.nut.face_diameter = mm(80.0);
                m.nut.face_hole = mm(66.0);
            })
            .aside(RING_PLATE, "the nut presses over the land, not inside it"),
        )
        .row(
            changed("a hole that lets the nut through", |m| m.loose_flange.hole = mm(60.0))
                .caution(RING_PLATE, "the nut's face of {found} does not reach past the loose flange's hole of {demanded}: measure both again, or give the washer's")
                .figures(60.0, 60.0, 0.0),
        )
        .row(
            changed("flange screws", |m| m.nut.thread_hand = ThreadHand::NoNut.into())
                .aside(RING_PLATE, "there is no central nut"),
        )
        .row(
            changed("a blank edge", |m| m.loose_flange.thickness_at_edge = Datum::Unknown)
                .unknown("loose flange thickness at edge"),
        )
        .blank("loose flange diameter", |m| m.loose_flange.diameter = Datum::Unknown)
        .blank("loose flange land", |m| m.loose_flange.land = Datum::Unknown)
        .blank("loose flange recess", |m| m.loose_flange.recess = Datum::Unknown)
        .blank("loose flange hole", |m| m.loose_flange.hole = Datum::Unknown)
        .blank("loose flange thickness at hole", |m| m.loose_flange.thickness_at_hole = Datum::Unknown)
        .blank("loose flange modulus", |m| m.loose_flange.modulus = Datum::Unknown)
        .blank("loose flange poisson ratio", |m| m.loose_flange.poisson_ratio = Datum::Unknown)
        .blank("nut tightening torque", |m| m.nut.tightening_torque = Datum::Unknown)
        .blank("nut thread diameter", |m| m.nut.thread_diameter = Datum::Unknown)
        .blank("nut thread pitch", |m| m.nut.thread_pitch = Datum::Unknown)
        .blank("nut thread friction", |m| m.nut.thread_friction = Datum::Unknown)
        .blank("nut face friction", |m| m.nut.face_friction = Datum::Unknown)
        .blank("nut face diameter", |m| m.nut.face_diameter = Datum::Unknown)
        .blank("nut face hole", |m| m.nut.face_hole = Datum::Unknown)
        .unasked("loose flange modulus", |m| m.loose_flange.modulus = Datum::NotAsked)
}

const HELD: &str = "start, stop and cutting torque do not turn the nut: they ask {found}, the thread holds {demanded}";
const TURNS: &str = "start, stop or cutting turn the nut back: {found} goes through the loose flange, the thread holds {demanded}";
const HALF_TURNS: &str = "if half of it goes through the loose flange, start, stop or cutting turn the nut back: half is {found}, the thread holds {demanded}";
const MAY_TURN: &str = "once the fixed flange's side has slipped, start, stop or cutting turn the nut back: they ask {found}, the thread holds {demanded}";

type Change = fn(&mut Mounting);

fn unscrews() -> Table {
    let hold = holds();
    let mut table = Table::of("nut-unscrews")
        .row(
            changed("a keyed flange", |_| {})
                .pass(TORQUE_PATH, "start, stop and cutting torque do not turn the nut: the loose flange is keyed"),
        )
        .row(
            unkeyed("a soft stop", |_| {}).pass(TORQUE_PATH, HELD).figures(
                up(braking(3.0)),
                down(hold),
                down(hold) - up(braking(3.0)),
            ),
        )
        .row(
            unkeyed("a stop just soft enough", |m| m.spindle.stop_time = seconds(time_for(hold) * 1.001))
                .pass(TORQUE_PATH, HELD),
        )
        .row(
            unkeyed("a stop of which all would turn it", |m| {
                m.spindle.stop_time = seconds(time_for(hold) * 0.999);
            })
            .caution(TORQUE_PATH, MAY_TURN),
        )
        .row(
            unkeyed("a stop of which just less than half would", |m| {
                m.spindle.stop_time = seconds(time_for(2.0 * hold) * 1.001);
            })
            .caution(TORQUE_PATH, MAY_TURN),
        )
        .row(
            unkeyed("a hard stop", |m| m.spindle.stop_time = seconds(time_for(2.0 * hold) * 0.999))
                .caution(TORQUE_PATH, HALF_TURNS),
        )
        .row(
            unkeyed("a hard stop of the left hand", |m| {
                m.spindle.stop_time = seconds(time_for(2.0 * hold) * 0.999);
                m.spindle.rotation = Rotation::Clockwise.into();
                m.nut.thread_hand = ThreadHand::Left.into();
            })
            .caution(TORQUE_PATH, HALF_TURNS),
        )
        .row(
            unkeyed("a hard cut where running tightens", |m| m.spindle.cutting_torque = torque(200.0))
                .pass(TORQUE_PATH, HELD),
        )
        .row(
            unkeyed("a hard cut where running loosens", |m| {
                m.spindle.cutting_torque = torque(200.0);
                m.nut.thread_hand = ThreadHand::Left.into();
            })
            .caution(TORQUE_PATH, HALF_TURNS)
            .figures(
                up((200.0 + braking(3.0)) / 2.0),
                down(hold),
                down(hold) - up((200.0 + braking(3.0)) / 2.0),
            ),
        )
        .row(
            unkeyed("a hard stop where running loosens", |m| {
                m.spindle.stop_time = seconds(time_for(2.0 * hold) * 0.5);
                m.nut.thread_hand = ThreadHand::Left.into();
            })
            .pass(TORQUE_PATH, HELD),
        )
        .row(
            unkeyed("a hard stop of a spindle that runs both ways", |m| {
                m.spindle.stop_time = seconds(time_for(2.0 * hold) * 0.999);
                m.spindle.rotation = Rotation::Both.into();
            })
            .caution(TORQUE_PATH, HALF_TURNS),
        )
        .row(
            unkeyed("a slick, small face", |m| {
                m.spindle.stop_time = seconds(0.01);
                m.nut.face_friction = plain(0.02);
                m.nut.greatest_face_friction = plain(0.05);
            })
            .pass(TORQUE_PATH, "start, stop and cutting torque do not turn the nut: the loose flange slips under it first"),
        )
        .row(
            unkeyed("a thread that does not hold itself", |m| {
                m.nut.thread_pitch = mm(6.0);
                m.nut.thread_friction = plain(0.02);
            })
            .refuse(TORQUE_PATH, "at its least friction the thread does not hold itself: nothing but friction under its face keeps the nut from running back"),
        )
        .row(
            changed("a keyed flange under a nut that nothing holds", |m| {
                m.nut.thread_pitch = mm(8.0);
                m.nut.thread_friction = plain(0.02);
                m.nut.face_friction = plain(0.01);
            })
            .refuse(TORQUE_PATH, "at their least friction neither the thread nor the face of the nut holds it: it runs back without any torque"),
        )
        .row(
            unkeyed("a hard stop of which the share through the loose flange is given", |m| {
                m.spindle.stop_time = seconds(time_for(hold / 0.4) * 0.999);
                m.hub.loose_share = plain(0.4);
            })
            .refuse(TORQUE_PATH, TURNS),
        )
        .row(
            unkeyed("a stop of which that share is just less", |m| {
                m.spindle.stop_time = seconds(time_for(hold / 0.4) * 1.001);
                m.hub.loose_share = plain(0.4);
            })
            .caution(TORQUE_PATH, MAY_TURN),
        )
        .row(
            unkeyed("a hard stop with a blank share", |m| {
                m.spindle.stop_time = seconds(time_for(2.0 * hold) * 0.999);
                m.hub.loose_share = Datum::Unknown;
            })
            .unknown("hub loose flange share"),
        )
        .row(
            unkeyed("a blank hole of the loose flange", |m| m.loose_flange.hole = Datum::Unknown)
                .unknown("loose flange hole"),
        )
        .row(
            // The nut rests on the flange from 55 to 60 mm only: at a middle radius of 28.75 mm instead of 26.25.
            unkeyed("a wide hole of the loose flange", |m| {
                m.loose_flange.hole = mm(55.0);
                m.spindle.stop_time = seconds(time_for(hold) * 1.001);
            })
            .caution(TORQUE_PATH, MAY_TURN),
        )
        .row(
            unkeyed("flange screws", |m| m.nut.thread_hand = ThreadHand::NoNut.into())
                .aside(TORQUE_PATH, "there is no central nut"),
        )
        .row(
            unkeyed("a wheel with a thread of its own", |m| m.wheel.fastening = Fastening::ThreadedInsert.into())
                .aside(TORQUE_PATH, "there is no central nut"),
        )
        .row(
            changed("nobody says whether it is keyed", |m| m.loose_flange.keyed = Datum::NotAsked)
                .pass(TORQUE_PATH, HELD),
        )
        .row(
            changed("a blank key", |m| m.loose_flange.keyed = Datum::Unknown).unknown("loose flange keyed"),
        );
    let blanks: [(&str, Change); 18] = [
        ("spindle rotation", |m| m.spindle.rotation = Datum::Unknown),
        ("spindle greatest speed", |m| m.spindle.greatest_speed = Datum::Unknown),
        ("spindle cutting torque", |m| m.spindle.cutting_torque = Datum::Unknown),
        ("spindle run-up time", |m| m.spindle.run_up_time = Datum::Unknown),
        ("spindle stop time", |m| m.spindle.stop_time = Datum::Unknown),
        ("wheel diameter", |m| m.wheel.diameter = Datum::Unknown),
        ("wheel hole", |m| m.wheel.hole = Datum::Unknown),
        ("wheel thickness", |m| m.wheel.thickness = Datum::Unknown),
        ("wheel density", |m| m.wheel.density = Datum::Unknown),
        ("nut thread hand", |m| m.nut.thread_hand = Datum::Unknown),
        ("nut tightening torque", |m| m.nut.tightening_torque = Datum::Unknown),
        ("nut thread diameter", |m| m.nut.thread_diameter = Datum::Unknown),
        ("nut thread pitch", |m| m.nut.thread_pitch = Datum::Unknown),
        ("nut thread friction", |m| m.nut.thread_friction = Datum::Unknown),
        ("nut greatest thread friction", |m| m.nut.greatest_thread_friction = Datum::Unknown),
        ("nut greatest face friction", |m| m.nut.greatest_face_friction = Datum::Unknown),
        ("nut face diameter", |m| m.nut.face_diameter = Datum::Unknown),
        ("nut face hole", |m| m.nut.face_hole = Datum::Unknown),
    ];
    for (heading, blank) in blanks {
        table = table.blank(heading, |m| {
            m.loose_flange.keyed = YesNo::No.into();
            blank(m);
        });
    }
    table.unasked("spindle stop time", |m| {
        m.loose_flange.keyed = YesNo::No.into();
        m.spindle.stop_time = Datum::NotAsked;
    })
}

const SLIPS: &str =
    "the flanges carry {found} by friction, but cutting with run-up or braking asks {demanded}";
const COUNTED: &str = "the flanges carry {found} by friction, an unkeyed one not counted; {demanded} is asked with its factor";

fn slips() -> Table {
    let one = side();
    let spin = braking(3.0);
    let cut = |asked: f64| torque(asked - spin);
    // Beside the fixed side, the loose one carries the least of blotter, nut and thread.
    let beside = holds().min(0.1 * force_on(RESTS, 0.16, 0.14) * RESTS).min(one);
    let mut table = Table::of("wheel-slips-in-flanges")
        .row(changed("the sound mounting", |_| {}).pass(TORQUE_PATH, COUNTED).figures(
            down(2.0 * one),
            up(1.5 * (10.0 + spin)),
            down(2.0 * one) - up(1.5 * (10.0 + spin)),
        ))
        .row(
            changed("keyed, a cut that takes just all", |m| {
                m.spindle.cutting_torque = cut(2.0 * one * 0.999)
            })
            .caution(TORQUE_PATH, COUNTED),
        )
        .row(
            changed("keyed, a cut that takes more", |m| {
                m.spindle.cutting_torque = cut(2.0 * one * 1.001)
            })
            .refuse(TORQUE_PATH, SLIPS),
        )
        .row(
            changed("keyed, a cut at the factor", |m| {
                m.spindle.cutting_torque = cut(2.0 * one / 1.5 * 0.999);
            })
            .pass(TORQUE_PATH, COUNTED),
        )
        .row(
            unkeyed("a cut at the factor with one side counted", |m| {
                m.spindle.cutting_torque = cut(one / 1.5 * 0.999);
            })
            .pass(TORQUE_PATH, COUNTED),
        )
        .row(
            unkeyed("a cut over it", |m| m.spindle.cutting_torque = cut(one / 1.5 * 1.001))
                .caution(TORQUE_PATH, COUNTED),
        )
        .row(
            unkeyed("a cut that takes just all of both sides", |m| {
                m.spindle.cutting_torque = cut((one + beside) * 0.999);
            })
            .caution(TORQUE_PATH, COUNTED),
        )
        .row(
            unkeyed("a cut that takes more than both sides", |m| {
                m.spindle.cutting_torque = cut((one + beside) * 1.001);
            })
            .refuse(TORQUE_PATH, SLIPS),
        )
        .row(
            changed("a cut that takes more, of a flange with a blank key", |m| {
                m.spindle.cutting_torque = cut(2.0 * one * 1.001);
                m.loose_flange.keyed = Datum::Unknown;
            })
            .refuse(TORQUE_PATH, SLIPS),
        )
        .row(
            changed("a cut that takes more, with a blank factor", |m| {
                m.spindle.cutting_torque = cut(2.0 * one * 1.001);
                m.hub.slip_factor = Datum::Unknown;
            })
            .refuse(TORQUE_PATH, SLIPS),
        )
        .row(
            changed("a blank key", |m| m.loose_flange.keyed = Datum::Unknown)
                .unknown("loose flange keyed"),
        )
        .row(
            changed("a blank hole of the loose flange", |m| m.loose_flange.hole = Datum::Unknown)
                .unknown("loose flange hole"),
        )
        .row(
            changed("flange screws", |m| m.nut.thread_hand = ThreadHand::NoNut.into())
                .aside(TORQUE_PATH, "there is no central nut"),
        );
    let blanks: [(&str, Change); 24] = [
        ("spindle greatest speed", |m| m.spindle.greatest_speed = Datum::Unknown),
        ("spindle cutting torque", |m| m.spindle.cutting_torque = Datum::Unknown),
        ("spindle run-up time", |m| m.spindle.run_up_time = Datum::Unknown),
        ("spindle stop time", |m| m.spindle.stop_time = Datum::Unknown),
        ("wheel diameter", |m| m.wheel.diameter = Datum::Unknown),
        ("wheel hole", |m| m.wheel.hole = Datum::Unknown),
        ("wheel thickness", |m| m.wheel.thickness = Datum::Unknown),
        ("wheel density", |m| m.wheel.density = Datum::Unknown),
        ("fixed flange diameter", |m| m.fixed_flange.diameter = Datum::Unknown),
        ("fixed flange land", |m| m.fixed_flange.land = Datum::Unknown),
        ("loose flange diameter", |m| m.loose_flange.diameter = Datum::Unknown),
        ("loose flange land", |m| m.loose_flange.land = Datum::Unknown),
        ("fixed blotter friction", |m| m.fixed_blotter.friction = Datum::Unknown),
        ("loose blotter friction", |m| m.loose_blotter.friction = Datum::Unknown),
        ("nut tightening torque", |m| m.nut.tightening_torque = Datum::Unknown),
        ("nut thread diameter", |m| m.nut.thread_diameter = Datum::Unknown),
        ("nut thread pitch", |m| m.nut.thread_pitch = Datum::Unknown),
        ("nut thread friction", |m| m.nut.thread_friction = Datum::Unknown),
        ("nut greatest thread friction", |m| m.nut.greatest_thread_friction = Datum::Unknown),
        ("nut face friction", |m| m.nut.face_friction = Datum::Unknown),
        ("nut greatest face friction", |m| m.nut.greatest_face_friction = Datum::Unknown),
        ("nut face diameter", |m| m.nut.face_diameter = Datum::Unknown),
        ("nut face hole", |m| m.nut.face_hole = Datum::Unknown),
        ("hub slip factor", |m| m.hub.slip_factor = Datum::Unknown),
    ];
    for (heading, blank) in blanks {
        table = table.blank(heading, blank);
    }
    table.unasked("hub slip factor", |m| m.hub.slip_factor = Datum::NotAsked)
}

const BEARS: &str =
    "the nut presses the lands on the wheel with {found} at most, {demanded} is allowed";
const PRESSES: &str = "the nut presses a land on the wheel with {found}, {demanded} is allowed";

fn presses() -> Table {
    let pressure = force(0.12, 0.1) / (PI * (40.0 * 40.0 - 30.0 * 30.0));
    let mut table = Table::of("land-pressure")
        .row(
            changed("the sound mounting", |_| {})
                .pass(laws::ASKED, BEARS)
                .saying("the wheel slips"),
        )
        .row(
            changed("a soft wheel that bears it", |m| m.wheel.land_pressure = mpa(pressure + 1e-6))
                .pass(laws::ASKED, BEARS),
        )
        .row(
            changed("a softer wheel", |m| m.wheel.land_pressure = mpa(pressure - 1e-6))
                .caution(laws::ASKED, PRESSES),
        )
        .row(
            changed("one narrow land", |m| {
                m.wheel.land_pressure = mpa(pressure * 1.5);
                m.fixed_flange.land = mm(5.0);
            })
            .caution(laws::ASKED, PRESSES),
        )
        .row(
            changed("flange screws", |m| m.nut.thread_hand = ThreadHand::NoNut.into())
                .aside(laws::ASKED, "there is no central nut"),
        );
    let blanks: [(&str, Change); 12] = [
        ("wheel greatest land pressure", |m| m.wheel.land_pressure = Datum::Unknown),
        ("fixed flange diameter", |m| m.fixed_flange.diameter = Datum::Unknown),
        ("fixed flange land", |m| m.fixed_flange.land = Datum::Unknown),
        ("loose flange diameter", |m| m.loose_flange.diameter = Datum::Unknown),
        ("loose flange land", |m| m.loose_flange.land = Datum::Unknown),
        ("nut tightening torque", |m| m.nut.tightening_torque = Datum::Unknown),
        ("nut thread diameter", |m| m.nut.thread_diameter = Datum::Unknown),
        ("nut thread pitch", |m| m.nut.thread_pitch = Datum::Unknown),
        ("nut thread friction", |m| m.nut.thread_friction = Datum::Unknown),
        ("nut face friction", |m| m.nut.face_friction = Datum::Unknown),
        ("nut face diameter", |m| m.nut.face_diameter = Datum::Unknown),
        ("nut face hole", |m| m.nut.face_hole = Datum::Unknown),
    ];
    for (heading, blank) in blanks {
        table = table.blank(heading, blank);
    }
    table.unasked("wheel greatest land pressure", |m| m.wheel.land_pressure = Datum::NotAsked)
}

#[test]
fn a_flange_that_dishes_a_nut_that_turns_a_wheel_that_slips_and_a_land_that_presses() {
    for table in tables() {
        table.holds();
    }
}
