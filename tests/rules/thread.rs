//! The nut: Mich. Admin. Code R 408.10115(1)-(3) and the geometry of the stack.

use hubwright::mounting::{Datum, Law, Mounting, Rotation, ThreadHand, YesNo};
use hubwright::tables::laws;
use hubwright::wheel::Fastening;

use crate::{Row, Table, mm, row};

pub fn tables() -> Vec<Table> {
    vec![thread_hand(), nut_bottoms(), thread_reach()]
}

fn turning(rotation: Rotation, hand: ThreadHand, keyed: YesNo) -> Row {
    row(format!("{rotation}, {hand}, keyed: {keyed}"), |m| {
        m.spindle.rotation = rotation.into();
        m.nut.thread_hand = hand.into();
        m.loose_flange.keyed = keyed.into();
    })
}

fn thread_hand() -> Table {
    const LOOSENS: &str = "running loosens the nut: seen from the nut, anticlockwise takes a right-hand thread and clockwise a left-hand one";
    const KEYED: &str =
        "the hand of thread is against the rule; the keyed loose flange keeps the nut from turning";
    const UNKEYED: &str = "running tightens the nut, but nothing keys the loose flange: it can walk and take the nut along";
    const TIGHTENS: &str = "running tightens the nut, and the loose flange is keyed";
    const NONE: &str = "there is no central nut";
    use Rotation::{Anticlockwise, Both, Clockwise};
    use ThreadHand::{Left, NoNut, Right};
    use YesNo::{No, Yes};
    let law = laws::THREAD_HAND_MI;
    let mut table = Table::of("thread-hand");
    // R 408.10115(1): the thread is opposite to the rotation.
    for (rotation, hand, tightens) in [
        (Anticlockwise, Right, true),
        (Clockwise, Left, true),
        (Anticlockwise, Left, false),
        (Clockwise, Right, false),
        // A spindle that is reversed in use loosens either hand.
        (Both, Right, false),
        (Both, Left, false),
    ] {
        let keyed = turning(rotation, hand, Yes);
        let unkeyed = turning(rotation, hand, No);
        let in_michigan = turning(rotation, hand, Yes).under(&[Law::Us, Law::UsMi]);
        table = if tightens {
            table
                .row(keyed.pass(law, TIGHTENS))
                .row(unkeyed.caution(laws::PRACTICE, UNKEYED))
                .row(in_michigan.pass(law, TIGHTENS))
        } else {
            table
                .row(keyed.caution(law, KEYED))
                .row(unkeyed.refuse(law, LOOSENS))
                .row(in_michigan.refuse(law, LOOSENS))
        };
    }
    table
        .row(
            row("nobody says whether the loose flange is keyed", |m| {
                m.loose_flange.keyed = Datum::NotAsked;
            })
            .caution(laws::PRACTICE, UNKEYED),
        )
        .row(
            row("whether it is keyed is blank", |m| m.loose_flange.keyed = Datum::Unknown)
                .unknown("loose flange keyed"),
        )
        .row(turning(Both, NoNut, No).aside(law, NONE))
        // R 408.10115(5): unscrewing is the running direction of a wheel with its own thread.
        .row(
            row("a threaded wheel", |m| m.wheel.fastening = Fastening::ThreadedInsert.into())
                .pass(laws::THREADED_WHEEL_MI, "running tightens the wheel on its thread"),
        )
        .row(
            row("a wheel with a stud, turned the other way", |m| {
                m.wheel.fastening = Fastening::Stud.into();
                m.spindle.rotation = Clockwise.into();
            })
            .refuse(laws::THREADED_WHEEL_MI, "running unscrews the wheel from its thread"),
        )
        .row(row("in a chuck", |m| m.wheel.fastening = Fastening::Chuck.into()).aside(law, NONE))
        .blank("spindle rotation", |m| m.spindle.rotation = Datum::Unknown)
        .blank("nut thread hand", |m| m.nut.thread_hand = Datum::Unknown)
        .unasked("spindle rotation", |m| m.spindle.rotation = Datum::NotAsked)
        .unasked("nut thread hand", |m| m.nut.thread_hand = Datum::NotAsked)
}

/// The sound mounting stacks 0.5 + 20 + 0.5 + 12 = 33 mm; its hub holds 24 to
/// 50 - 12 = 38 mm and stops the loose flange at 18 mm.
fn nut_bottoms() -> Table {
    const BOTTOMS: &str = "the stack is {found}, the first full thread lies at {demanded}: the nut stops before it grips";
    const STOPS: &str = "the wheel with its blotters is {found}, the loose flange stops at {demanded} before it grips";
    const FILLED: &str = "the stack is {found}; beyond {demanded} the thread does not fill the nut";
    const HOLDS: &str = "the stack is {found}, {demanded} is the most the hub can hold";
    const NONE: &str = "there is no central nut";
    let sum = laws::ARITHMETIC;
    Table::of("nut-bottoms")
        .row(
            row("a thin wheel", |m| m.wheel.thickness = mm(10.9))
                .refuse(sum, BOTTOMS)
                .figures(23.9, 24.0, -0.1)
                .saying("the hub holds stacks from 24 mm to 38 mm"),
        )
        .row(
            row("a thin wheel between stabilisers", |m| {
                m.wheel.thickness = mm(10.9);
                m.hub.flange_stop = mm(0.0);
                m.hub.stabilisers = mm(0.1);
            })
            .pass(sum, HOLDS),
        )
        .row(
            row("a wheel that the shoulder keeps from the flange", |m| {
                m.wheel.thickness = mm(16.9);
            })
            .refuse(sum, STOPS)
            .figures(17.9, 18.0, -0.1),
        )
        .row(
            row("a thick wheel", |m| m.wheel.thickness = mm(25.1))
                .refuse(laws::THREAD_FILLS_MI, FILLED)
                .figures(38.1, 38.0, -0.1),
        )
        .row(
            row("the thickest it can hold", |m| m.wheel.thickness = mm(25.0))
                .pass(sum, HOLDS)
                .figures(38.0, 38.0, 0.0),
        )
        .row(
            row("no blotters: they add nothing", |m| {
                m.fixed_blotter.present = YesNo::No.into();
                m.loose_blotter.present = YesNo::No.into();
                m.wheel.thickness = mm(26.0);
            })
            .pass(sum, HOLDS)
            .figures(38.0, 38.0, 0.0),
        )
        .row(
            row("whether there is a blotter is blank", |m| {
                m.fixed_blotter.present = Datum::Unknown;
            })
            .unknown("fixed blotter present"),
        )
        .row(
            row("held by screws", |m| m.nut.thread_hand = ThreadHand::NoNut.into())
                .aside(sum, NONE),
        )
        .row(
            row("the shoulder is blank", |m| m.hub.flange_stop = Datum::Unknown)
                .unknown("hub flange stop"),
        )
        .blank("hub thread from", |m| m.hub.thread_from = Datum::Unknown)
        .blank("hub thread to", |m| m.hub.thread_to = Datum::Unknown)
        .blank("nut length", |m| m.nut.length = Datum::Unknown)
        .blank("wheel thickness", |m| m.wheel.thickness = Datum::Unknown)
        .blank("fixed blotter thickness", |m| m.fixed_blotter.thickness = Datum::Unknown)
        .blank("loose blotter thickness", |m| m.loose_blotter.thickness = Datum::Unknown)
        .blank("loose flange thickness at hole", |m| {
            m.loose_flange.thickness_at_hole = Datum::Unknown;
        })
        .unasked("nut length", |m| m.nut.length = Datum::NotAsked)
}

/// The loose flange of the sound mounting ends at 33 mm; half of the hole lies
/// at 0.5 + 10 = 10.5 mm.
fn thread_reach() -> Table {
    const SHORT: &str =
        "the first full thread lies at {found}, the loose flange ends at {demanded}";
    const SHORT_MI: &str = "the first full thread lies at {found}, the loose flange ends at {demanded}; demanded in Michigan";
    const HALF: &str = "the thread begins at {found}, half of the hole lies at {demanded}";
    const HALF_MI: &str =
        "the thread begins at {found}, half of the hole lies at {demanded}; demanded in Michigan";
    const NONE: &str = "there is no central nut";
    let law = laws::THREAD_REACH_MI;
    let michigan = [Law::Us, Law::UsMi];
    let short = |m: &mut Mounting| m.hub.thread_from = mm(33.0);
    let deep = |m: &mut Mounting| m.hub.thread_from = mm(10.4);
    Table::of("thread-reach")
        .row(row("short of the flange", short).caution(law, SHORT_MI).figures(33.0, 33.0, 0.0))
        .row(row("short of the flange, in Michigan", short).under(&michigan).refuse(law, SHORT))
        .row(row("past half of the hole", deep).caution(law, HALF_MI).figures(10.4, 10.5, -0.1))
        .row(row("past half of the hole, in Michigan", deep).under(&michigan).refuse(law, HALF))
        .row(
            row("to half of the hole", |m| m.hub.thread_from = mm(10.5))
                .pass(law, HALF)
                .figures(10.5, 10.5, 0.0),
        )
        .row(
            row("held by screws", |m| m.nut.thread_hand = ThreadHand::NoNut.into())
                .aside(law, NONE),
        )
        .blank("hub thread from", |m| m.hub.thread_from = Datum::Unknown)
        .blank("wheel thickness", |m| m.wheel.thickness = Datum::Unknown)
        .blank("fixed blotter thickness", |m| m.fixed_blotter.thickness = Datum::Unknown)
        .blank("loose blotter thickness", |m| m.loose_blotter.thickness = Datum::Unknown)
        .blank("loose flange thickness at hole", |m| {
            m.loose_flange.thickness_at_hole = Datum::Unknown;
        })
        .unasked("hub thread from", |m| m.hub.thread_from = Datum::NotAsked)
}

#[test]
fn running_tightens_the_nut() {
    thread_hand().holds();
}

#[test]
fn the_nut_grips_the_wheel_and_not_the_hub() {
    nut_bottoms().holds();
}

#[test]
fn the_thread_reaches_inside_the_flange_and_not_past_half_of_the_hole() {
    thread_reach().holds();
}
