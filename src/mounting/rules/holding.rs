//! What holds the wheel on: whether the flange dishes, the wheel slips, or anything turns the nut back.

use std::f64::consts::PI;

use super::nut::{HEIGHT, NOTHING_LEFT, preload};
use super::rule;
use super::thread::no_nut;
use crate::mounting::facts::{Facts, is_blank, of};
use crate::mounting::sort::Shown;
use crate::mounting::words::{Rotation, ThreadHand, YesNo};
use crate::solid::plate::{Bent, RING_PLATE, stiffness, stocky};
use crate::solid::screw::{loosening_arm, tightening_arm};
use crate::tables::laws;
use crate::units::Pressure;
use crate::wheel::holding::TORQUE_PATH;

/// The smaller of two, or what is missing of the second.
#[inline(always)]
fn at_most(first: f64, second: f64) -> f64 {
    if second > first { first } else { second }
}

/// The larger of two, or what is missing of the second.
#[inline(always)]
fn at_least(first: f64, second: f64) -> f64 {
    if second < first { first } else { second }
}

/// Middle radius of the nut's face in metres: where it rests on the flange, outside of the larger of both holes.
#[inline(always)]
fn nut_radius(f: &Facts) -> f64 {
    // Nobody has to give the flange's hole for this.
    let inside = at_least(f.loose_flange.hole.0, f.nut.face_hole.0);
    (f.nut.face_diameter.0 + inside) / 4e9
}

/// Least force of the nut in N, and the arm of the thread that holds it back, in metres.
#[inline(always)]
fn least(f: &Facts) -> [f64; 2] {
    let nut = &f.nut;
    let pitch = nut.thread_pitch.0 / 1e9;
    let middle = nut.thread_diameter.0 / 1e9 - 0.75 * HEIGHT * pitch;
    let rough = at_least(nut.thread_friction.0, nut.greatest_thread_friction.0) / 1e9;
    let under = at_least(nut.face_friction.0, nut.greatest_face_friction.0) / 1e9;
    let thread = tightening_arm(middle, pitch, rough / HEIGHT);
    let force = nut.tightening_torque.0 / 1e6 / (thread + under * nut_radius(f));
    // Columns may have the two the wrong way round.
    let slick = at_most(nut.greatest_thread_friction.0, nut.thread_friction.0) / 1e9 / HEIGHT;
    // So steep a pitch that no torque pulls.
    [if thread <= 0.0 { 0.0 } else { force }, loosening_arm(middle, pitch, slick)]
}

/// Torques of cutting, run-up and braking, in N m.
#[inline(always)]
fn asked(f: &Facts) -> [f64; 3] {
    let (outer, inner) = (f.wheel.diameter.0 / 2e9, f.wheel.hole.0 / 2e9);
    let square = |r: f64| r * r;
    let fourth = square(square(outer)) - square(square(inner));
    let inertia = PI / 2.0 * (f.wheel.density.0 / 1e3) * (f.wheel.thickness.0 / 1e9) * fourth;
    let turning = f.spindle.greatest_speed.0 / 1e6 * (PI / 30.0);
    let torque = |time: f64| inertia * turning / (time / 1e6);
    let spindle = &f.spindle;
    [spindle.cutting_torque.0 / 1e6, torque(spindle.run_up_time.0), torque(spindle.stop_time.0)]
}

/// Everything that is asked together: cutting with run-up or braking.
#[inline(always)]
fn greatest([cutting, run_up, braking]: [f64; 3]) -> f64 {
    // Of a blank one nothing less can be asked than by the other.
    cutting + run_up.max(braking)
}

/// Outside radius of a land in metres, and its width; no wider than the flange has room for.
#[inline(always)]
fn land(flange: &of::Flange) -> [f64; 2] {
    let outer = flange.diameter.0 / 2e9;
    [outer, at_most(outer, flange.land.0 / 1e9)]
}

/// Friction radius of a land in metres.
#[inline(always)]
fn friction_radius(flange: &of::Flange) -> f64 {
    let [b, width] = land(flange);
    let a = b - width;
    2.0 / 3.0 * (a * a + a * b + b * b) / (a + b)
}

/// Torques that the lands of the fixed and of the loose flange carry, in N m.
#[inline(always)]
fn carried(f: &Facts, force: f64) -> [f64; 2] {
    [
        f.fixed_blotter.friction.0 / 1e9 * force * friction_radius(&f.fixed_flange),
        f.loose_blotter.friction.0 / 1e9 * force * friction_radius(&f.loose_flange),
    ]
}

/// Whole steps of a torque, no more than the step below.
#[inline(always)]
fn down(torque: f64) -> f64 {
    (torque * 1e6).floor()
}

/// Whole steps of a torque, no less than the step above.
#[inline(always)]
fn up(torque: f64) -> f64 {
    (torque * 1e6).ceil()
}

/// Sag of the loose flange in whole nm at the greatest preload, rounded up.
#[inline(always)]
fn sag(f: &Facts) -> f64 {
    let flange = &f.loose_flange;
    let [rim, width] = land(flange);
    let hole = flange.hole.0 / 2e9;
    let inside = at_least(flange.hole.0, f.nut.face_hole.0);
    let load = (f.nut.face_diameter.0 + inside) / 4e9;
    let held = rim - width / 2.0;
    // Behind the recess the plate has what is left of its thickness at the hole, or less.
    let behind = flange.thickness_at_hole.0 - flange.recess.0;
    let h = behind.min(flange.thickness_at_edge.0) / 1e9;
    let nu = flange.poisson_ratio.0 / 1e9;
    let [force, _] = preload(f);
    let d = stiffness(flange.modulus.0 / 1e3, h, nu);
    let bent = Bent::of([hole, load, held, rim], force / d, nu);
    let sag = (bent.sag_at_hole() * stocky(h, held - load) * 1e9).ceil();
    // A plate of no thickness, or a force without end, of which no sag comes out.
    if (h <= 0.0) | (sag > NOTHING_LEFT) | (force == f64::INFINITY) { NOTHING_LEFT } else { sag }
}

rule! {
    /// Under the nut a recessed flange dishes; where it touches the wheel at its hole it grips where the wheel
    /// is weakest. The loose flange is reckoned as a ring plate, pressed at the middle of
    /// the nut's face by the preload at the least frictions and held at the middle of its land, with what
    /// shear adds to a stocky plate. The sag at its hole must stay below the recess. The plate is as thick
    /// as what is left behind the recess, or as at its edge where that is less. A pass says nothing of the land: it tilts, and the
    /// blotter has to give.
    FLANGE_DISHES = "flange-dishes", essential false;
    asks "does the flange bend so far under the nut that its recess touches the wheel?";
    needs loose_flange.diameter, loose_flange.land, loose_flange.recess, loose_flange.hole, loose_flange.thickness_at_hole,
        loose_flange.modulus, loose_flange.poisson_ratio, nut.tightening_torque, nut.thread_diameter, nut.thread_pitch,
        nut.thread_friction, nut.face_friction, nut.face_diameter, nut.face_hole;
    uses loose_flange.thickness_at_edge, nut.thread_hand, wheel.fastening;
    cases {
        Touches: Refuse, Size Most, RING_PLATE,
            "under the nut the loose flange sags by {found} at its hole and touches the wheel: its recess is {demanded} deep";
        Clear: Pass, Size Most, RING_PLATE,
            "under the nut the loose flange sags by {found} at its hole; its recess is {demanded} deep";
        Flat: NotChecked, Nothing Most, RING_PLATE, "the loose flange has no recess";
        OnLand: NotChecked, Nothing Most, RING_PLATE, "the nut presses over the land, not inside it";
        Through: Caution, Size Least, RING_PLATE,
            "the nut's face of {found} does not reach past the loose flange's hole of {demanded}: measure both again, or give the washer's";
        NoNut: NotChecked, Nothing Most, RING_PLATE, "there is no central nut";
    }
    advice "Tighten with less torque, fit a thicker flange or a larger washer under the nut, or deepen the recess where the table leaves room.";
    judge |f, _t| {
        if let Some(answer) = no_nut(f, It::NoNut.bare()) {
            return answer;
        }
        let (flange, nut) = (&f.loose_flange, &f.nut);
        if flange.recess.0 == 0.0 {
            return It::Flat.bare();
        }
        let [face, hole] = [nut.face_diameter.0, flange.hole.0];
        if face <= hole {
            return It::Through.with(face, hole);
        }
        let inside = at_least(hole, nut.face_hole.0);
        if (face + inside) / 2.0 >= flange.diameter.0 - 2.0 * at_most(flange.diameter.0 / 2.0, flange.land.0) {
            return It::OnLand.bare();
        }
        let (found, recess) = (sag(f), flange.recess.0);
        if found > recess {
            return It::Touches.with(found, recess);
        }
        if flange.thickness_at_edge.blank() {
            return CANT_TELL;
        }
        let needed = [
            flange.diameter.0, flange.land.0, recess, hole, flange.thickness_at_hole.0, flange.modulus.0, flange.poisson_ratio.0,
            nut.tightening_torque.0, nut.thread_diameter.0, nut.thread_pitch.0, nut.thread_friction.0, nut.face_friction.0,
            face, nut.face_hole.0,
        ];
        missing(needed).unwrap_or_else(|| It::Clear.with(found, recess))
    }
}

rule! {
    /// The torque path: from the fixed flange through its blotter into the wheel, and beside it from the wheel through the
    /// other blotter and the loose flange to the face of the nut and its thread. What acts in the loosening hand is braking
    /// where running tightens the nut, and cutting with run-up where it loosens it. Of that the share given goes through the
    /// loose flange; where none is given half is reckoned with, as where both sides are alike, and nothing refused by it.
    /// Once the other side has slipped all of it goes there. It turns the nut where it beats the thread, `F d2/2 tan(ρ' − φ)` at the least preload and friction, and friction under the nut takes it along.
    /// Inertia of flange and nut are left out. A pass says that start, stop and
    /// cutting torque do not turn the nut, never that it will not come loose: a loose flange can walk under a turning load, and
    /// vibration and creep of the blotters eat preload.
    NUT_UNSCREWS = "nut-unscrews", essential false;
    asks "can start, stop or cutting torque turn the nut back?";
    needs spindle.rotation, spindle.greatest_speed, spindle.cutting_torque, spindle.run_up_time, spindle.stop_time,
        wheel.diameter, wheel.hole, wheel.thickness, wheel.density, nut.thread_hand, nut.tightening_torque,
        nut.thread_diameter, nut.thread_pitch, nut.thread_friction, nut.greatest_thread_friction,
        nut.greatest_face_friction, nut.face_diameter, nut.face_hole;
    uses loose_flange.keyed, loose_flange.hole, hub.loose_share, nut.face_friction, wheel.fastening;
    cases {
        RunsBack: Refuse, Nothing Most, TORQUE_PATH,
            "at their least friction neither the thread nor the face of the nut holds it: it runs back without any torque";
        Unlocked: Refuse, Nothing Most, TORQUE_PATH,
            "at its least friction the thread does not hold itself: nothing but friction under its face keeps the nut from running back";
        Turns: Refuse, Torque Most, TORQUE_PATH,
            "start, stop or cutting turn the nut back: {found} goes through the loose flange, the thread holds {demanded}";
        HalfTurns: Caution, Torque Most, TORQUE_PATH,
            "if half of it goes through the loose flange, start, stop or cutting turn the nut back: half is {found}, the thread holds {demanded}";
        MayTurn: Caution, Torque Most, TORQUE_PATH,
            "once the fixed flange's side has slipped, start, stop or cutting turn the nut back: they ask {found}, the thread holds {demanded}";
        SlipsFirst: Pass, Nothing Most, TORQUE_PATH,
            "start, stop and cutting torque do not turn the nut: the loose flange slips under it first";
        Holds: Pass, Torque Most, TORQUE_PATH,
            "start, stop and cutting torque do not turn the nut: they ask {found}, the thread holds {demanded}";
        Keyed: Pass, Nothing Most, TORQUE_PATH,
            "start, stop and cutting torque do not turn the nut: the loose flange is keyed";
        NoNut: NotChecked, Nothing Most, TORQUE_PATH, "there is no central nut";
    }
    advice "Key the loose flange or lock the nut, or brake softer; never reverse the hand of thread.";
    judge |f, _t| {
        if let Some(answer) = no_nut(f, It::NoNut.bare()) {
            return answer;
        }
        let (nut, spindle, wheel) = (&f.nut, &f.spindle, &f.wheel);
        if f.loose_flange.keyed.blank() {
            return CANT_TELL;
        }
        let [force, arm] = least(f);
        let least_under = at_most(nut.greatest_face_friction.0, nut.face_friction.0) / 1e9 * nut_radius(f);
        if arm + least_under <= 0.0 {
            return It::RunsBack.bare();
        }
        if f.loose_flange.keyed.is(YesNo::Yes) {
            return It::Keyed.bare();
        }
        if arm <= 0.0 {
            return It::Unlocked.bare();
        }
        if f.loose_flange.hole.blank() {
            return CANT_TELL;
        }
        let known = missing([
            spindle.rotation.0, spindle.greatest_speed.0, spindle.cutting_torque.0, spindle.run_up_time.0, spindle.stop_time.0,
            wheel.diameter.0, wheel.hole.0, wheel.thickness.0, wheel.density.0, nut.thread_hand.0, nut.tightening_torque.0,
            nut.thread_diameter.0, nut.thread_pitch.0, nut.thread_friction.0, nut.greatest_thread_friction.0,
            nut.greatest_face_friction.0, nut.face_diameter.0, nut.face_hole.0,
        ]);
        if let Some(missing) = known {
            return missing;
        }
        // The greatest friction under the face is what takes the nut along.
        let under = at_least(nut.face_friction.0, nut.greatest_face_friction.0) / 1e9 * nut_radius(f);
        if under <= arm {
            return It::SlipsFirst.bare();
        }
        let [cutting, run_up, braking] = asked(f);
        let anticlockwise = spindle.rotation.is(Rotation::Anticlockwise);
        let clockwise = spindle.rotation.is(Rotation::Clockwise);
        let right = nut.thread_hand.is(ThreadHand::Right);
        let tightens = (anticlockwise & right) | (clockwise & !right);
        let running = cutting + run_up;
        let both_ways = !anticlockwise & !clockwise;
        let worst = if both_ways { at_least(running, braking) } else { running };
        let demand = if tightens { braking } else { worst };
        let hold = down(force * arm);
        let share = f.hub.loose_share;
        let (through, half, all) = (up(demand * (share.0 / 1e9)), up(demand / 2.0), up(demand));
        if all <= hold {
            It::Holds.with(all, hold)
        } else if share.blank() {
            CANT_TELL
        } else if through > hold {
            It::Turns.with(through, hold)
        } else if !share.given() & (half > hold) {
            It::HalfTurns.with(half, hold)
        } else {
            It::MayTurn.with(all, hold)
        }
    }
}

rule! {
    /// Friction through the blotters drives the wheel: `μ F r` a side at the least preload and friction, `r` the friction
    /// radius of the land. A keyed loose flange carries as the fixed one does. An unkeyed one carries no more than friction under the
    /// nut, and no more than the thread holds; who designs counts one side only, and so does the factor asked for.
    /// Asked are cutting with run-up or braking, whichever is more.
    WHEEL_SLIPS_IN_FLANGES = "wheel-slips-in-flanges", essential false;
    asks "can the flanges carry cutting and inertia torque, times the factor asked for, by friction?";
    needs spindle.greatest_speed, spindle.cutting_torque, spindle.run_up_time, spindle.stop_time, wheel.diameter,
        wheel.hole, wheel.thickness, wheel.density, fixed_flange.diameter, fixed_flange.land, loose_flange.diameter,
        loose_flange.land, fixed_blotter.friction, loose_blotter.friction, nut.tightening_torque, nut.thread_diameter,
        nut.thread_pitch, nut.thread_friction, nut.greatest_thread_friction, nut.face_friction,
        nut.greatest_face_friction, nut.face_diameter, nut.face_hole, hub.slip_factor;
    uses loose_flange.keyed, loose_flange.hole, nut.thread_hand, wheel.fastening;
    cases {
        Slips: Refuse, Torque Least, TORQUE_PATH,
            "the flanges carry {found} by friction, but cutting with run-up or braking asks {demanded}";
        Short: Caution, Torque Least, TORQUE_PATH,
            "the flanges carry {found} by friction, an unkeyed one not counted; {demanded} is asked with its factor";
        Carries: Pass, Torque Least, TORQUE_PATH,
            "the flanges carry {found} by friction, an unkeyed one not counted; {demanded} is asked with its factor";
        NoNut: NotChecked, Nothing Least, TORQUE_PATH, "there is no central nut";
    }
    advice "Tighten more where thread, land and flange leave room, take new blotters, key the loose flange, or cut, start and stop softer.";
    judge |f, _t| {
        if let Some(answer) = no_nut(f, It::NoNut.bare()) {
            return answer;
        }
        let [force, arm] = least(f);
        let [fixed, loose] = carried(f, force);
        let nut_holds = f.nut.face_friction.0 / 1e9 * nut_radius(f) * force;
        let thread_holds = force * if arm < 0.0 { 0.0 } else { arm };
        let keyed = f.loose_flange.keyed;
        let free = keyed.is(YesNo::Yes) | keyed.blank();
        let unkeyed = fixed + loose.min(nut_holds).min(thread_holds);
        let carries = down(if free { fixed + loose } else { unkeyed });
        let demand = greatest(asked(f));
        if carries < up(demand) {
            return It::Slips.with(carries, up(demand));
        }
        if keyed.blank() | f.loose_flange.hole.blank() {
            return CANT_TELL;
        }
        let (spindle, wheel, nut) = (&f.spindle, &f.wheel, &f.nut);
        let known = missing([
            spindle.greatest_speed.0, spindle.cutting_torque.0, spindle.run_up_time.0, spindle.stop_time.0, wheel.diameter.0,
            wheel.hole.0, wheel.thickness.0, wheel.density.0, f.fixed_flange.diameter.0, f.fixed_flange.land.0,
            f.loose_flange.diameter.0, f.loose_flange.land.0, f.fixed_blotter.friction.0, f.loose_blotter.friction.0,
            nut.tightening_torque.0, nut.thread_diameter.0, nut.thread_pitch.0, nut.thread_friction.0,
            nut.greatest_thread_friction.0, nut.face_friction.0, nut.greatest_face_friction.0, nut.face_diameter.0,
            nut.face_hole.0, f.hub.slip_factor.0,
        ]);
        if let Some(missing) = known {
            return missing;
        }
        let counted = down(if free { fixed + loose } else { fixed });
        let wanted = up(demand * (f.hub.slip_factor.0 / 1e9));
        if counted < wanted { It::Short.with(counted, wanted) } else { It::Carries.with(counted, wanted) }
    }
}

/// Pressure on a land in whole steps at the greatest preload, rounded up.
#[inline(always)]
fn pressure(f: &Facts, flange: &of::Flange) -> f64 {
    let [force, _] = preload(f);
    let [outer, width] = land(flange);
    let steps = (force / (PI * width * (2.0 * outer - width)) * 1e3).ceil();
    if steps > NOTHING_LEFT { NOTHING_LEFT } else { steps }
}

rule! {
    /// The preload at the least frictions presses the wheel over the lands of the flanges. The
    /// pressure is compared with what the wheel's maker allows; it counts the whole land, which a flange that dishes
    /// does not use.
    LAND_PRESSURE = "land-pressure", essential false;
    asks "is the pressure on the land above the limit given?";
    needs wheel.land_pressure, fixed_flange.diameter, fixed_flange.land, loose_flange.diameter, loose_flange.land,
        nut.tightening_torque, nut.thread_diameter, nut.thread_pitch, nut.thread_friction, nut.face_friction,
        nut.face_diameter, nut.face_hole;
    uses nut.thread_hand, wheel.fastening;
    cases {
        Presses: Caution, Stress Most, laws::ASKED,
            "the nut presses a land on the wheel with {found}, {demanded} is allowed";
        Bears: Pass, Stress Most, laws::ASKED,
            "the nut presses the lands on the wheel with {found} at most, {demanded} is allowed";
        NoNut: NotChecked, Nothing Most, laws::ASKED, "there is no central nut";
    }
    advice "Tighten with less torque, only enough that the wheel can't slip, or fit flanges with a wider land.";
    adds |f, t| {
        let [fixed, loose] = carried(f, 1.0);
        let side = if f.loose_flange.keyed.is(YesNo::Yes) { fixed + loose } else { fixed };
        let force = greatest(asked(f)) / side;
        let [outer, width] = land(&f.loose_flange);
        let slips = force / (PI * width * (2.0 * outer - width)) * 1e3;
        (slips > 0.0 && slips < f64::INFINITY)
            .then(|| format!("below {} the wheel slips at what is asked of it", Pressure::shown(slips, t.shop)))
    };
    judge |f, _t| {
        if let Some(answer) = no_nut(f, It::NoNut.bare()) {
            return answer;
        }
        let (nut, allowed) = (&f.nut, f.wheel.land_pressure.0);
        let found = pressure(f, &f.fixed_flange).max(pressure(f, &f.loose_flange));
        let needed = [
            allowed, f.fixed_flange.diameter.0, f.fixed_flange.land.0, f.loose_flange.diameter.0, f.loose_flange.land.0,
            nut.tightening_torque.0, nut.thread_diameter.0, nut.thread_pitch.0, nut.thread_friction.0, nut.face_friction.0,
            nut.face_diameter.0, nut.face_hole.0,
        ];
        // A blank may hide something worse than what is only cautioned.
        if needed.iter().fold(false, |any, fact| any | is_blank(*fact)) {
            return CANT_TELL;
        }
        if found > allowed {
            return It::Presses.with(found, allowed);
        }
        missing(needed).unwrap_or_else(|| It::Bears.with(found, allowed))
    }
}
