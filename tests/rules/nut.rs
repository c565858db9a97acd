//! The nut's torque on its thread: statics and VDI 2230, worked out here with angles where the
//! rule works with slopes.

use std::f64::consts::PI;

use hubwright::joint::nut::TIGHTENED;
use hubwright::mounting::{Datum, Mounting, ThreadHand};
use hubwright::wheel::Fastening;

use crate::{Row, Table, mm, mpa, plain, row, sound, torque};

pub fn tables() -> Vec<Table> {
    vec![overloaded()]
}

const OVERLOADED: &str =
    "the torque stresses the hub's thread to {found}; 0.9 of its proof stress is {demanded}";
const HUB: &str = "the torque shears the hub's thread with {found}; 0.9 of its proof stress over √3 is {demanded}";
const NUT: &str = "the torque shears the nut's thread with {found}; 0.9 of its proof stress over √3 is {demanded}";

/// M40×1.5 in mm: pitch diameter, stress diameter and minor diameter.
const D2: f64 = 40.0 - 0.649_519_052_838_329 * 1.5;
const DS: f64 = 40.0 - 0.938_194_187_433_142 * 1.5;
const D1: f64 = 40.0 - 1.082_531_754_730_548 * 1.5;

/// Preload in N at 50 N m, and the torque in the thread in N mm.
fn pull() -> [f64; 2] {
    let (rise, rub) = ((1.5 / (PI * D2)).atan(), (0.12 / (PI / 6.0).cos()).atan());
    let arm = D2 / 2.0 * (rise + rub).tan();
    // Mean diameter of the face: 51 mm.
    let force = 50e3 / (arm + 0.1 * 51.0 / 2.0);
    [force, force * arm]
}

/// Tension and torsion together in MPa, on an area and with a circle clear of bore and slot.
fn stress(area: f64, clear: f64) -> f64 {
    let [force, twist] = pull();
    let torsion = twist / (PI / 12.0 * (clear.powi(3) - 22.0_f64.powi(3)));
    (force / area).hypot(3.0_f64.sqrt() * torsion)
}

fn ring() -> f64 {
    PI / 4.0 * (DS * DS - 22.0 * 22.0)
}

fn changed(name: &str, change: impl FnOnce(&mut Mounting)) -> Row {
    row(name, change)
}

fn overloaded() -> Table {
    let whole = stress(ring(), DS);
    let [force, _] = pull();
    // A slot 5 wide and 3 deep from the crests: 17 from the axis to its bottom.
    let lost = 5.0 * (DS / 2.0 - 17.0);
    let slotted = stress(ring() - lost, 34.0);
    let sheared = |section: f64| force / (PI * 0.65 * section);
    let mut table = Table::of("nut-overloaded")
        .row(
            changed("the sound mounting", |_| {})
                .pass(TIGHTENED, OVERLOADED)
                .figures(whole, 360.0, 360.0 - whole)
                .saying("the nut pulls with up to 11.0"),
        )
        .row(
            changed("a thread a little too weak", |m| {
                m.hub.thread_proof_stress = mpa(whole / 0.9 - 1e-5);
            })
            .refuse(TIGHTENED, OVERLOADED)
            .figures(whole, whole - 0.9e-5, -0.9e-5),
        )
        .row(
            changed("a thread just strong enough", |m| {
                m.hub.thread_proof_stress = mpa(whole / 0.9 + 1e-5);
                m.nut.length = mm(20.0);
            })
            .pass(TIGHTENED, OVERLOADED),
        )
        .row(
            changed("with a key slot", |m| {
                m.hub.thread_slot_width = mm(5.0);
                m.hub.thread_slot_depth = mm(3.0);
            })
            .pass(TIGHTENED, OVERLOADED)
            .figures(slotted, 360.0, 360.0 - slotted),
        )
        .row(
            changed("a key slot that makes it too weak", |m| {
                m.hub.thread_slot_width = mm(5.0);
                m.hub.thread_slot_depth = mm(3.0);
                m.hub.thread_proof_stress = mpa((whole + slotted) / 1.8);
            })
            .refuse(TIGHTENED, OVERLOADED),
        )
        .row(
            changed("too great a torque", |m| m.nut.tightening_torque = torque(1000.0))
                .refuse(TIGHTENED, OVERLOADED)
                .figures(whole * 20.0, 360.0, 360.0 - whole * 20.0),
        )
        .row(
            changed("less friction than it has", |m| {
                m.nut.tightening_torque = torque(600.0);
                m.nut.thread_friction = plain(0.03);
                m.nut.face_friction = plain(0.03);
            })
            .refuse(TIGHTENED, OVERLOADED),
        )
        .row(
            changed("a hub that strips in a short nut", |m| m.nut.length = mm(0.5))
                .on_proof(400.0, 400.0)
                .refuse(TIGHTENED, HUB)
                .figures(
                    sheared(0.75 * D1 * 0.5),
                    360.0 / 3.0_f64.sqrt(),
                    360.0 / 3.0_f64.sqrt() - sheared(0.75 * D1 * 0.5),
                ),
        )
        .row(
            changed("a soft nut that strips", |m| m.nut.length = mm(4.0))
                .on_proof(400.0, 20.0)
                .refuse(TIGHTENED, NUT)
                .figures(
                    sheared(0.875 * 40.0 * 4.0),
                    18.0 / 3.0_f64.sqrt(),
                    18.0 / 3.0_f64.sqrt() - sheared(0.875 * 40.0 * 4.0),
                ),
        )
        .row(
            changed("a soft nut on a hub's thread shorter than it", |m| {
                m.hub.thread_from = mm(24.0);
                m.hub.thread_to = mm(28.0);
            })
            .on_proof(400.0, 20.0)
            .refuse(TIGHTENED, NUT)
            .figures(
                sheared(0.875 * 40.0 * 4.0),
                18.0 / 3.0_f64.sqrt(),
                18.0 / 3.0_f64.sqrt() - sheared(0.875 * 40.0 * 4.0),
            ),
        )
        .row(
            changed("a pitch finer than the shares of the threads hold for", |m| {
                m.nut.thread_pitch = mm(0.4);
            })
            .aside(
                TIGHTENED,
                "the pitch is {found}; the least areas of the threads are known from {demanded} on",
            ),
        )
        // A breach of what is known stands.
        .row(
            changed("too great a torque with a blank bore", |m| {
                m.nut.tightening_torque = torque(4000.0);
                m.hub.thread_bore = Datum::Unknown;
            })
            .refuse(TIGHTENED, OVERLOADED),
        )
        .row(
            changed("too great a torque that nobody gave a slot to", |m| {
                m.nut.tightening_torque = torque(4000.0);
                m.hub.thread_slot_width = Datum::Unknown;
            })
            .refuse(TIGHTENED, OVERLOADED),
        )
        .row(
            changed("a slot of a width alone", |m| {
                m.hub.thread_slot_width = mm(5.0);
                m.wheel.fastening = Fastening::Flanges.into();
            })
            .not_checked("hub thread slot depth"),
        )
        .row(
            changed("flange screws", |m| m.nut.thread_hand = ThreadHand::NoNut.into())
                .aside(TIGHTENED, "there is no central nut"),
        )
        .row(
            changed("a wheel with a thread of its own", |m| {
                m.wheel.fastening = Fastening::ThreadedInsert.into();
            })
            .aside(TIGHTENED, "there is no central nut"),
        )
        .row(
            changed("a blank slot", |m| m.hub.thread_slot_depth = Datum::Unknown)
                .unknown("hub thread slot depth"),
        );
    table = table
        .blank("nut tightening torque", |m| m.nut.tightening_torque = Datum::Unknown)
        .blank("nut thread diameter", |m| m.nut.thread_diameter = Datum::Unknown)
        .blank("nut thread pitch", |m| m.nut.thread_pitch = Datum::Unknown)
        .blank("nut thread friction", |m| m.nut.thread_friction = Datum::Unknown)
        .blank("nut face friction", |m| m.nut.face_friction = Datum::Unknown)
        .blank("nut face diameter", |m| m.nut.face_diameter = Datum::Unknown)
        .blank("nut face hole", |m| m.nut.face_hole = Datum::Unknown)
        .blank("nut proof stress", |m| m.nut.proof_stress = Datum::Unknown)
        .blank("nut length", |m| m.nut.length = Datum::Unknown)
        .blank("hub thread proof stress", |m| m.hub.thread_proof_stress = Datum::Unknown)
        .blank("hub thread from", |m| m.hub.thread_from = Datum::Unknown)
        .blank("hub thread to", |m| m.hub.thread_to = Datum::Unknown)
        .blank("hub thread bore", |m| m.hub.thread_bore = Datum::Unknown)
        .unasked("nut tightening torque", |m| m.nut.tightening_torque = Datum::NotAsked)
        .unasked("hub thread bore", |m| m.hub.thread_bore = Datum::NotAsked);
    table
}

impl Row {
    fn on_proof(mut self, hub: f64, nut: f64) -> Self {
        self.mounting.hub.thread_proof_stress = mpa(hub);
        self.mounting.nut.proof_stress = mpa(nut);
        self
    }
}

/// What can't be is told before any rule is asked.
#[test]
fn a_thread_or_key_without_room_is_no_mounting() {
    type Clash = (&'static str, fn(&mut Mounting));
    let cases: [Clash; 7] = [
        ("a nut thread pitch of 11 mm with a nut thread diameter of 40 mm", |m| {
            m.nut.thread_pitch = mm(11.0);
        }),
        ("a hub thread bore of 38.2 mm with a nut thread diameter of 40 mm", |m| {
            m.hub.thread_bore = mm(38.2);
        }),
        ("a key width of 22 mm with a key shaft diameter of 22 mm", |m| {
            m.key.shaft_diameter = mm(22.0);
            m.key.width = mm(22.0);
        }),
        ("a hub thread slot width of 40 mm", |m| m.hub.thread_slot_width = mm(40.0)),
        ("a hub thread slot depth of 9 mm", |m| m.hub.thread_slot_depth = mm(9.0)),
        ("a nut face diameter of 39 mm with a nut thread diameter", |m| {
            m.nut.face_diameter = mm(39.0);
        }),
        ("a nut face hole of 60 mm with a nut face diameter of 60 mm", |m| {
            m.nut.face_hole = mm(60.0);
        }),
    ];
    for (says, change) in cases {
        let mut mounting = sound();
        change(&mut mounting);
        let error = mounting.facts().expect_err(says).to_string();
        assert!(error.contains(says), "{says}: {error}");
    }
}
