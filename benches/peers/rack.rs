//! An invented rack of any size, the same in every run: mostly sound
//! mountings of every size, some with a fault, some with a blank cell.

use hubwright::mounting::facts::BLANK;
use hubwright::mounting::{Columns, FIELDS, Field};

/// One cell in so many is blank.
const BLANK_IN: f64 = 50.0;

/// The rack as columns of facts.
pub fn columns(rows: usize) -> Columns {
    let mut columns = Columns::new();
    for (field, column) in numbers(rows) {
        columns.set(field.place, field.name, column).expect("a field of a mounting");
    }
    columns
}

/// The rack as numbers, a column a field.
pub fn numbers(rows: usize) -> Vec<(&'static Field, Vec<f64>)> {
    let mut state = 1_u64;
    let mut random = move || {
        // splitmix64 (Steele, Lea and Flood 2014): any even spread will do here.
        state = state.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = state;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        (z ^ (z >> 31)) as f64 / u64::MAX as f64
    };
    let wheels: Vec<f64> = (0..rows).map(|_| 40e6 + 460e6 * random()).collect();
    let mut columns = Vec::new();
    for field in FIELDS.iter() {
        let words = (field.sort.words)().len();
        let column = wheels.iter().map(|wheel| {
            let spread = random();
            // A seat or thin wheel without a modulus is not solved: a solve is no comparison of columns, and is
            // timed apart; a thin wheel in `benches/thin.py`.
            let unsolved =
                [("seat", "hub_modulus"), ("wheel", "modulus"), ("wheel", "allowed_bending")]
                    .contains(&(field.place, field.name));
            if random() < 1.0 / BLANK_IN || unsolved {
                BLANK
            } else if words > 0 {
                word(field, words, spread, random())
            } else {
                size(field, *wheel, spread).round()
            }
        });
        columns.push((field, column.collect()));
    }
    columns
}

/// The word of a sound mounting four times in five, any word otherwise.
fn word(field: &Field, words: usize, spread: f64, any: f64) -> f64 {
    let sound = match (field.place, field.name) {
        (_, "kind") if field.place.ends_with("flange") => 1.0,
        ("machine", "kind") => 2.0,
        ("machine", _) => 1.0,
        ("spindle", "rotation") => 1.0,
        // A normal fit.
        ("key", _) => 1.0,
        (_, "used_before" | "bushing_touches_flange" | "bushing_nested") => 1.0,
        _ => 0.0,
    };
    if spread < 0.8 { sound } else { (any * words as f64).floor().min(words as f64 - 1.0) }
}

/// A size about as large as it is on a wheel of this diameter (nm), or a
/// speed, angle or date about as a shop has it.
fn size(field: &Field, wheel: f64, spread: f64) -> f64 {
    let from = |low: f64, high: f64| low + (high - low) * spread;
    match (field.place, field.name) {
        ("wheel", "diameter") => wheel,
        ("wheel", "nominal_diameter") => wheel * from(0.995, 1.005),
        ("wheel", "thickness") => from(1e6, 50e6),
        ("wheel", name) if name.contains("hole") => wheel * 0.15 + from(0.0, 60e3),
        ("wheel", "marked_speed") => 35e9 / wheel * 19.1e6 * from(0.95, 1.2),
        ("wheel", "marked_rim_speed") => from(30e6, 50e6),
        ("wheel", "bushing_width") => from(5e6, 30e6),
        (_, "guard_start") => from(-0.6e9, 1.2e9),
        (_, "guard_exposure") => from(1e9, 3.2e9),
        // 3 to 40 MPa in mPa, kg/m³ in g/m³, and thousand millionths.
        (_, "tensile_strength") => from(3e9, 40e9),
        (_, "density") => from(2e6, 2.6e6),
        (_, "poisson_ratio") => from(0.18e9, 0.3e9),
        (_, "burst_factor") => from(1e9, 4e9),
        (_, "warmer_by") => from(0.0, 30e3),
        (_, "expansion") => from(5e6, 24e6),
        (_, "use_before" | "made") => from(19_000.0, 22_000.0),
        (place, "diameter") if place.ends_with("flange") => {
            wheel * from(0.3, 0.301).max(0.42 * (spread * 50.0).fract())
        }
        (place, "diameter") if place.ends_with("blotter") => wheel * from(0.4, 0.45),
        (place, "hole") if place.ends_with("blotter") => wheel * from(0.2, 0.3),
        (_, "land") => wheel * 0.05 * from(0.6, 1.2),
        (_, "recess" | "undercut") => from(1e6, 5e6),
        (_, "run_out" | "spigot_run_out" | "run_out_limit") => from(0.0, 15e3),
        ("hub", name) if name.contains("spigot") => wheel * 0.15 - from(-5e3, 60e3),
        ("hub", "clearance_limit") => from(20e3, 100e3),
        ("hub", "slip_factor") => from(1e9, 3e9),
        ("hub", "loose_share") => from(0.3e9, 1e9),
        ("hub", "thread_bore") => from(0.0, 14e6),
        ("hub", "thread_slot_width" | "thread_slot_depth") => from(0.0, 3e6),
        (_, "thread_proof_stress" | "proof_stress") => from(150e9, 600e9),
        // 1 to 3 kg of 4 to 8 in micrograms, G1 to G6.3, and up to 60 g mm.
        ("wheel", "mass") => from(1e9, 3e9),
        ("hub", "rotor_mass") => from(4e9, 8e9),
        ("hub", "balance_grade") => from(1e6, 6.3e6),
        ("hub", "residual_unbalance" | "bare_unbalance") => from(0.0, 60e6),
        ("hub", "stabiliser_diameter") => wheel * from(0.42, 0.7),
        ("machine", "side_load") => from(1e3, 20e3),
        ("machine", "depth_of_cut") => wheel * from(0.0, 0.2),
        ("hub", "thread_from") => from(2e6, 30e6),
        ("hub", "thread_to") => from(40e6, 90e6),
        ("hub", _) => from(0.0, 5e6),
        // M20 to M30, 20 to 200 N m in µN m, and friction in thousand millionths.
        ("nut", "thread_diameter") => from(20e6, 30e6),
        ("nut", "thread_pitch") => from(1e6, 3e6),
        ("nut", "tightening_torque") => from(20e6, 200e6),
        // Light wheels, soft cuts and quick stops, so that every outcome of holding is met.
        ("spindle", "cutting_torque") => from(0.5e6, 30e6),
        ("spindle", "run_up_time" | "stop_time") => from(0.2e6, 5e6),
        ("spindle", _) => 35e9 / wheel * 19.1e6 * from(0.5, 1.02),
        ("wheel", "land_pressure") => from(3e9, 30e9),
        (place, "hole") if place.ends_with("flange") => from(20e6, 32e6),
        (place, "modulus") if place.ends_with("flange") => from(60e12, 210e12),
        (place, "friction") if place.ends_with("blotter") => from(0.12e9, 0.3e9),
        ("nut", "greatest_thread_friction" | "greatest_face_friction") => from(0.12e9, 0.25e9),
        ("nut", "thread_friction" | "face_friction") => from(0.08e9, 0.2e9),
        ("nut", "face_hole") => from(30e6, 32e6),
        ("nut", "face_diameter") => from(38e6, 50e6),
        ("nut", _) => from(8e6, 15e6),
        ("key", "nominal_width" | "height") => 6e6,
        ("key", "width" | "shaft_keyway") => from(5.969e6, 6.001e6),
        ("key", "hub_keyway") => from(5.984e6, 6.016e6),
        ("key", "shaft_diameter") => from(17e6, 22e6),
        ("key", "bearing_height") => from(2e6, 3.5e6),
        ("key", "torque") => from(5e6, 40e6),
        ("key", "allowed_shear") => from(40e9, 80e9),
        ("key", "allowed_bearing") => from(80e9, 150e9),
        ("key", _) => from(10e6, 30e6),
        // Newtons in thousandths, and angles in thousand millionths of a radian.
        ("seat", "taper") => from(0.05e9, 0.3e9),
        ("seat", "friction") => from(0.08e9, 0.2e9),
        ("seat", "nut_force") => from(1e6, 20e6),
        ("seat", "puller_force") => from(0.1e6, 10e6),
        ("seat", "mismatch") => from(-1e6, 0.3e6),
        (place, "thickness") if place.ends_with("blotter") => from(0.2e6, 1e6),
        _ => from(3e6, 25e6),
    }
}
