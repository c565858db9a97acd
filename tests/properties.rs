//! What must hold for every mounting, every speed and every sheet.
//!
//! Mountings are made from a few sound ones: each datum is kept, left out,
//! blanked, moved next to a limit, or replaced by anything that its field
//! takes. So one case often turns on a single datum, where mistakes hide.

use std::ops::ControlFlow;

use hubwright::mounting::facts::{BLANK, NOT_ASKED};
use hubwright::mounting::{
    Columns, Datum, FIELDS, Field, Law, Mounting, Outcome, RULES, Terms, check, judge_columns,
};
use hubwright::tables::flanges::{TABLE_O4, TABLE_O6, TABLE_O8};
use hubwright::units::{
    AngularVelocity, Date, Decimal, Exact, Force, Kind, Length, Mass, Nanometres, Power, Pressure,
    Shop, Time, Torque, Velocity, Words, meter, meter_per_second, millimeter, number,
    radian_per_second, read, revolution_per_minute,
};
use hubwright::wheel::{
    FlangeKind, Shape, flange_limits, largest_diameter, rim_speed, rim_speed_column, speed_for_rim,
};
use proptest::prelude::*;
use proptest::test_runner::FileFailurePersistence;

/// Failures are kept beside this file; the default would make a folder at the top level.
fn cases(cases: u32) -> ProptestConfig {
    let regressions = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/properties.proptest-regressions");
    let mut config = ProptestConfig {
        failure_persistence: Some(Box::new(FileFailurePersistence::Direct(regressions))),
        ..ProptestConfig::default()
    };
    // PROPTEST_CASES asks for more of everything.
    if std::env::var_os("PROPTEST_CASES").is_none() {
        config.cases = cases;
    }
    config
}

// --- Mountings -------------------------------------------------------------

/// One number a field, in the order of [`FIELDS`].
#[derive(Clone)]
struct Row(Vec<f64>);

impl std::ops::Deref for Row {
    type Target = [f64];
    fn deref(&self) -> &[f64] {
        &self.0
    }
}

impl std::ops::DerefMut for Row {
    fn deref_mut(&mut self) -> &mut [f64] {
        &mut self.0
    }
}

/// What a row holds, as a failure shows it: only what is given or blank.
impl std::fmt::Debug for Row {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        for (field, fact) in
            FIELDS.iter().zip(self.iter()).filter(|(_, fact)| !is(**fact, NOT_ASKED))
        {
            let text = if given(*fact) { field.show(*fact, Shop::Metric) } else { "blank".into() };
            write!(f, "{}: {text}; ", field.heading())?;
        }
        Ok(())
    }
}

fn at(place: &str, name: &str) -> usize {
    FIELDS
        .iter()
        .position(|field| field.place == place && field.name == name)
        .unwrap_or_else(|| panic!("no field {place}.{name}"))
}

/// Whether a row is impossible: a hole as large as its wheel, a flange or stabiliser larger, or a rotor lighter.
fn contradicts_itself(row: &Row) -> bool {
    let wheel = row[at("wheel", "diameter")];
    let holes = ["hole", "smallest_hole", "largest_hole"].map(|name| row[at("wheel", name)]);
    let flanges = ["fixed_flange", "loose_flange"].map(|place| row[at(place, "diameter")]);
    holes.iter().any(|hole| *hole >= wheel)
        || flanges.iter().any(|flange| *flange > wheel)
        || row[at("hub", "stabiliser_diameter")] > wheel
        || thread_contradicts_itself(row)
        || row[at("wheel", "mass")] > row[at("hub", "rotor_mass")]
}

/// Whether pitch, bore, slot or face have no room on the nut's thread, its friction is the wrong way round, or a key is as wide as
/// its shaft.
fn thread_contradicts_itself(row: &Row) -> bool {
    let of = |name| row[at("nut", name)];
    let (thread, pitch, bore) =
        (of("thread_diameter"), of("thread_pitch"), row[at("hub", "thread_bore")]);
    let none = |size: f64| if given(size) { size } else { 0.0 };
    // The root of a thread at 60° lies 17/24 of √3 pitches below its crest.
    let root = thread - 17.0 / 12.0 * 3.0_f64.sqrt() * none(pitch);
    pitch > thread / 4.0
        || bore >= root
        || row[at("hub", "thread_slot_width")] >= thread
        || row[at("hub", "thread_slot_depth")] >= (thread - none(bore)) / 2.0
        || of("face_diameter") <= thread
        || of("face_hole") >= of("face_diameter")
        || of("thread_friction") > of("greatest_thread_friction")
        || of("face_friction") > of("greatest_face_friction")
        || row[at("key", "width")] >= row[at("key", "shaft_diameter")]
}

fn is(fact: f64, missing: f64) -> bool {
    fact.to_bits() == missing.to_bits()
}

fn given(fact: f64) -> bool {
    !is(fact, BLANK) && !is(fact, NOT_ASKED)
}

/// A surface grinder with nothing to be said against it.
const SOUND: &[(&str, &str)] = &[
    ("machine kind", "surface"),
    ("machine guard exposure", "150 deg"),
    ("machine guard start", "-15 deg"),
    ("machine work below spindle", "no"),
    ("spindle greatest speed", "2850 rpm"),
    ("spindle rotation", "anticlockwise"),
    ("wheel shape", "type-1"),
    ("wheel diameter", "203.2 mm"),
    ("wheel nominal diameter", "8 in"),
    ("wheel thickness", "20 mm"),
    ("wheel hole", "31.78 mm"),
    ("wheel nominal hole", "31.75 mm"),
    ("wheel smallest hole", "31.77 mm"),
    ("wheel largest hole", "31.79 mm"),
    ("wheel marked speed", "3289 rpm"),
    ("wheel marked rim speed", "35 m/s"),
    ("wheel fastening", "flanges"),
    ("wheel abrasive", "aluminium oxide"),
    ("wheel bond", "vitrified"),
    ("wheel marking says", "the same"),
    ("wheel use before", "2028-05-01"),
    ("wheel made", "2025-05-01"),
    ("wheel bushing width", "15 mm"),
    ("wheel bushing touches flange", "no"),
    ("wheel bushing nested", "no"),
    ("wheel warmer by", "5 K"),
    ("wheel expansion", "5 um/m/K"),
    ("wheel tensile strength", "20 MPa"),
    ("wheel density", "2250 kg/m3"),
    ("wheel poisson ratio", "0.22"),
    ("wheel burst factor", "3"),
    ("wheel modulus", "12 GPa"),
    ("wheel allowed bending stress", "8 MPa"),
    ("machine side load", "3 N"),
    ("machine depth of cut", "0.02 mm"),
    ("machine work clearance", "2 mm"),
    ("fixed flange kind", "relieved"),
    ("fixed flange diameter", "80 mm"),
    ("fixed flange land", "8 mm"),
    ("fixed flange recess", "1.6 mm"),
    ("fixed flange undercut", "3.2 mm"),
    ("fixed flange thickness at hole", "10 mm"),
    ("fixed flange thickness at edge", "5 mm"),
    ("fixed flange material", "steel"),
    ("fixed flange run-out", "0.004 mm"),
    ("fixed flange keyed", "yes"),
    ("loose flange kind", "relieved"),
    ("loose flange diameter", "80 mm"),
    ("loose flange land", "8 mm"),
    ("loose flange recess", "1.6 mm"),
    ("loose flange undercut", "3.2 mm"),
    ("loose flange thickness at hole", "10 mm"),
    ("loose flange thickness at edge", "5 mm"),
    ("loose flange material", "steel"),
    ("loose flange run-out", "0.004 mm"),
    ("loose flange keyed", "yes"),
    ("fixed blotter present", "yes"),
    ("fixed blotter diameter", "82 mm"),
    ("fixed blotter hole", "60 mm"),
    ("fixed blotter thickness", "0.5 mm"),
    ("fixed blotter used before", "no"),
    ("fixed blotter fixed by maker", "no"),
    ("loose blotter present", "yes"),
    ("loose blotter diameter", "82 mm"),
    ("loose blotter hole", "60 mm"),
    ("loose blotter thickness", "0.5 mm"),
    ("loose blotter used before", "no"),
    ("loose blotter fixed by maker", "no"),
    ("hub spigot", "31.74 mm"),
    ("hub smallest spigot", "31.735 mm"),
    ("hub largest spigot", "31.745 mm"),
    ("hub spigot run-out", "0.003 mm"),
    ("hub run-out limit", "0.01 mm"),
    ("hub clearance limit", "0.1 mm"),
    ("hub material", "steel"),
    ("hub warmer by", "10 K"),
    ("hub expansion", "11.5 um/m/K"),
    ("hub thread from", "24 mm"),
    ("hub thread to", "50 mm"),
    ("hub flange stop", "18 mm"),
    ("hub stabilisers", "0 mm"),
    ("nut thread hand", "right"),
    ("nut length", "12 mm"),
    ("key shaft diameter", "22 mm"),
    ("key nominal width", "6 mm"),
    ("key width", "5.99 mm"),
    ("key height", "6 mm"),
    ("key length", "20 mm"),
    ("key bearing height", "2.5 mm"),
    ("key shaft keyway", "5.99 mm"),
    ("key hub keyway", "6 mm"),
    ("key fit", "normal"),
    ("key torque", "13.2 N m"),
    ("key allowed shear stress", "60 MPa"),
    ("key allowed bearing stress", "90 MPa"),
    ("hub thread bore", "16 mm"),
    ("hub thread slot width", "4 mm"),
    ("hub thread slot depth", "2 mm"),
    ("hub thread proof stress", "400 MPa"),
    ("nut thread diameter", "30 mm"),
    ("nut thread pitch", "1.5 mm"),
    ("nut tightening torque", "50 N m"),
    ("nut thread friction", "0.12"),
    ("nut face friction", "0.1"),
    ("nut face diameter", "45 mm"),
    ("nut face hole", "31 mm"),
    ("nut proof stress", "300 MPa"),
    ("nut greatest thread friction", "0.16"),
    ("nut greatest face friction", "0.14"),
    ("spindle cutting torque", "8 N m"),
    ("spindle run-up time", "3 s"),
    ("spindle stop time", "4 s"),
    ("wheel greatest land pressure", "8 MPa"),
    ("hub slip factor", "1.5"),
    ("hub loose flange share", "0.5"),
    ("fixed flange hole", "32 mm"),
    ("fixed flange modulus", "206000 MPa"),
    ("fixed flange poisson ratio", "0.3"),
    ("loose flange hole", "32 mm"),
    ("loose flange modulus", "206000 MPa"),
    ("loose flange poisson ratio", "0.3"),
    ("fixed blotter friction", "0.15"),
    ("loose blotter friction", "0.15"),
    ("wheel mass", "1.4 kg"),
    ("hub rotor mass", "3 kg"),
    ("hub balance grade", "G2.5"),
    ("hub residual unbalance", "10 g mm"),
    ("hub bare unbalance", "6 g mm"),
    ("seat length", "40 mm"),
    ("seat small diameter", "30 mm"),
    ("seat taper", "0.1"),
    ("seat mismatch", "-0.5 arcmin"),
    ("seat friction", "0.12"),
    ("seat nut force", "8 kN"),
    ("seat nut diameter", "46 mm"),
    ("seat hub diameter", "48 mm"),
    ("seat step from", "28 mm"),
    ("seat step diameter", "90 mm"),
    ("seat spindle bore", "6 mm"),
    ("seat overhang at small end", "15 mm"),
    ("seat overhang at large end", "30 mm"),
    ("seat hub modulus", "206 GPa"),
    ("seat hub poisson ratio", "0.3"),
    ("seat spindle modulus", "206 GPa"),
    ("seat spindle poisson ratio", "0.29"),
    ("seat share", "0.75"),
    ("seat hub yield", "300 MPa"),
    ("seat spindle yield", "600 MPa"),
    ("seat yield factor", "1.5"),
    ("seat puller", "yes"),
    ("seat puller force", "10 kN"),
];

/// What the other sound mountings have instead.
const OTHERS: &[&[(&str, &str)]] = &[
    &[],
    // A depressed-centre wheel on a portable grinder, exempt from much.
    &[
        ("machine kind", "portable"),
        ("wheel shape", "type-27"),
        ("wheel diameter", "125 mm"),
        ("wheel nominal diameter", "125 mm"),
        ("wheel marked speed", "12200 rpm"),
        ("wheel marked rim speed", "80 m/s"),
        ("wheel bond", "reinforced resin"),
    ],
    // A cutting-off wheel.
    &[
        ("machine kind", "cutting-off"),
        ("wheel shape", "type-1-cutting-off"),
        ("wheel thickness", "3 mm"),
        ("wheel bushing width", "2 mm"),
        ("hub stabilisers", "14 mm"),
        ("hub stabiliser diameter", "100 mm"),
        ("machine depth of cut", "40 mm"),
        ("fixed flange diameter", "52 mm"),
        ("loose flange diameter", "52 mm"),
        ("fixed blotter hole", "36 mm"),
        ("loose blotter hole", "36 mm"),
    ],
    // A wheel with a threaded insert of its own against a flat flange.
    &[
        ("machine kind", "portable"),
        ("wheel shape", "type-11"),
        ("wheel diameter", "101.6 mm"),
        ("wheel nominal diameter", "4 in"),
        ("wheel fastening", "threaded insert"),
        ("fixed flange kind", "unrelieved"),
        ("fixed flange recess", "0 mm"),
    ],
    // A wheel so small that its flanges may be flat.
    &[
        ("wheel diameter", "25.4 mm"),
        ("wheel nominal diameter", "1 in"),
        ("wheel hole", "6.01 mm"),
        ("wheel smallest hole", "6.01 mm"),
        ("wheel largest hole", "6.01 mm"),
        ("wheel nominal hole", "6 mm"),
        ("hub spigot", "5.99 mm"),
        ("hub smallest spigot", "5.99 mm"),
        ("hub largest spigot", "5.99 mm"),
        ("fixed flange diameter", "10 mm"),
        ("spindle cutting torque", "0.5 N m"),
        ("fixed flange hole", "6 mm"),
        ("loose flange hole", "6 mm"),
        ("loose flange diameter", "10 mm"),
        ("fixed flange land", "2 mm"),
        ("loose flange land", "2 mm"),
        ("fixed blotter hole", "5 mm"),
        ("loose blotter hole", "5 mm"),
    ],
    // A wheel sleeve.
    &[
        ("machine kind", "cylindrical"),
        ("spindle greatest speed", "1500 rpm"),
        ("wheel diameter", "14 in"),
        ("wheel nominal diameter", "14 in"),
        ("wheel marked speed", "1880 rpm"),
        ("wheel hole", "127.04 mm"),
        ("wheel smallest hole", "127.03 mm"),
        ("wheel largest hole", "127.05 mm"),
        ("wheel nominal hole", "127 mm"),
        ("hub spigot", "126.98 mm"),
        ("hub smallest spigot", "126.97 mm"),
        ("hub largest spigot", "126.985 mm"),
        ("fixed flange kind", "sleeve"),
        ("loose flange kind", "sleeve"),
        ("fixed flange diameter", "180 mm"),
        ("loose flange diameter", "180 mm"),
        ("fixed flange thickness at hole", "13 mm"),
        ("loose flange thickness at hole", "13 mm"),
        ("fixed flange thickness at edge", "12 mm"),
        ("loose flange thickness at edge", "12 mm"),
        ("fixed blotter diameter", "182 mm"),
        ("loose blotter diameter", "182 mm"),
        ("fixed blotter hole", "164 mm"),
        ("loose blotter hole", "164 mm"),
        ("hub clearance limit", "0.2 mm"),
    ],
    // A diamond wheel in a resin bond, which needs no blotters.
    &[
        ("wheel abrasive", "diamond"),
        ("wheel bond", "resin"),
        ("fixed blotter present", "no"),
        ("loose blotter present", "no"),
    ],
];

fn sound(which: usize) -> Row {
    let mut row = Row(vec![NOT_ASKED; FIELDS.len()]);
    for (heading, text) in SOUND.iter().chain(OTHERS[which]) {
        let place = FIELDS.iter().position(|field| field.heading() == *heading);
        let place = place.unwrap_or_else(|| panic!("no field {heading:?}"));
        let fact = FIELDS[place].read(text, None, Decimal::Point);
        row[place] = fact.unwrap_or_else(|error| panic!("{error}"));
    }
    row
}

/// Facts that some rule compares a fact of this field with, give or take one step.
fn near(field: &Field, row: &Row, choice: u32) -> f64 {
    let of = |kind: &str| -> Vec<f64> {
        let same = FIELDS
            .iter()
            .zip(row.iter())
            .filter(|(other, fact)| other.sort.name == kind && given(**fact));
        same.map(|(_, fact)| *fact).collect()
    };
    let (diameter, turns) = (row[at("wheel", "diameter")], row[at("spindle", "greatest_speed")]);
    let mut limits = match field.sort.name {
        "length" => {
            let mut all: Vec<f64> =
                of("length").iter().flat_map(|l| [*l, l / 2.0, l * 2.0]).collect();
            let tables = TABLE_O6.iter().flat_map(|row| {
                [row.wheel, row.diameter, row.least_land, row.greatest_land, row.thickness_at_hole]
            });
            all.extend(tables.chain(TABLE_O4.iter().flat_map(|row| [row.diameter, row.thickness])));
            all.extend(
                TABLE_O8.iter().flat_map(|row| [row.hole, row.diameter, row.thickness_at_edge]),
            );
            // The ones that decide most often, many times over.
            for _ in 0..20 {
                all.extend([diameter / 3.0, diameter / 4.0, diameter / 2.0, 25.4e6 / 16.0, 50.8e6]);
            }
            all
        }
        "rotational speed" => {
            let mut all = of("rotational speed");
            let rim = row[at("wheel", "marked_rim_speed")];
            // n = 60 v / (π d), also with the half per cent of two rounded markings.
            let by_rim = rim / 1e6 * 60.0 / (std::f64::consts::PI * diameter / 1e9) * 1e6;
            all.extend([by_rim, by_rim * 1.004, by_rim * 1.005, by_rim / 1.005]);
            all
        }
        "speed" => {
            let rim = std::f64::consts::PI * diameter / 1e9 * (turns / 1e6 / 60.0) * 1e6;
            [of("speed"), vec![rim, rim * 1.005, rim / 1.005]].concat()
        }
        "angle" => [90.0_f64, 125.0, 65.0, 150.0, -15.0, 180.0, 60.0]
            .map(|degrees| degrees.to_radians() * 1e9)
            .to_vec(),
        "date" => ["2026-11-25", "2023-11-25", "2023-11-24", "2020-02-29"]
            .map(|text| Date::read(text).expect("a day").days() as f64)
            .to_vec(),
        // On the verge by the factor asked for: strength = factor × stress at the hole.
        "pressure or stress" if field.place == "wheel" => {
            let of = |name| row[at("wheel", name)];
            let (a, b) = (of("hole") / 2e9, diameter / 2e9);
            let (nu, rho) = (of("poisson_ratio") / 1e9, of("density") / 1e3);
            let w = turns / 1e6 * std::f64::consts::PI / 30.0;
            let stress = rho * w * w / 4.0 * ((3.0 + nu) * b * b + (1.0 - nu) * a * a);
            // And of bending by 0.3 to 2.5 P · 6 / h².
            let bend = row[at("machine", "side_load")] * 6.0 / (of("thickness") / 1e9).powi(2);
            vec![stress * 1e3, stress * of("burst_factor") / 1e6, bend, bend / 2.0]
        }
        // On the verge: 2 T / (d b L) and 2 T / (d c L), in mPa of µN·m and nm.
        "torque" | "pressure or stress" if field.place == "key" => {
            let of = |name| row[at("key", name)];
            let (d, l) = (of("shaft_diameter") / 1e9, of("length") / 1e9);
            let sides = [of("width") / 1e9, of("height") / 2e9, of("bearing_height") / 1e9];
            let stress = |side: f64| 2.0 * of("torque") / 1e6 / (d * side * l) * 1e3;
            match field.name {
                "allowed_shear" => vec![stress(sides[0])],
                "allowed_bearing" => vec![stress(sides[1]), stress(sides[2])],
                _ => [("allowed_shear", sides[0]), ("allowed_bearing", sides[2])]
                    .map(|(allowed, side)| of(allowed) / 1e3 * d * side * l / 2.0 * 1e6)
                    .to_vec(),
            }
        }
        // On the verge by 0.9 of proof, without bore and slot.
        "pressure or stress" => {
            let nut = |name| row[at("nut", name)];
            let (d, p) = (nut("thread_diameter") / 1e6, nut("thread_pitch") / 1e6);
            let (middle, round) = (d - 0.649_519 * p, d - 0.938_194 * p);
            let rise = (p / (std::f64::consts::PI * middle)).atan();
            let rub = (nut("thread_friction") / 1e9 / 0.866_025).atan();
            let thread = middle / 2.0 * (rise + rub).tan();
            let face = nut("face_friction") / 1e9 * (nut("face_diameter") + nut("face_hole")) / 4e6;
            let force = nut("tightening_torque") / 1e3 / (thread + face);
            let tension = force * 4.0 / (std::f64::consts::PI * round * round);
            let torsion = force * thread * 12.0 / (std::f64::consts::PI * round.powi(3));
            vec![tension.hypot(3.0_f64.sqrt() * torsion) / 0.9 * 1e9]
        }
        // On the verge of the force that a self-holding taper needs.
        "force" => {
            let of = |name| row[at("seat", name)];
            let (friction, slope) = (of("friction"), of("taper") / 2.0);
            let holds = (friction - slope) / (friction + slope);
            let wheel = |name| row[at("wheel", name)];
            let bends = wheel("allowed_bending") * (wheel("thickness") / 1e9).powi(2) / 6.0;
            vec![
                of("nut_force") * holds,
                of("puller_force") / holds,
                of("nut_force"),
                bends,
                bends * 2.0,
            ]
        }
        "torque" => of("torque").iter().flat_map(|t| [*t, *t * 10.0, *t * 30.0]).collect(),
        "plain number" => vec![0.1e9, 0.12e9, 0.3e9],
        // On the verge by the grade: m G / ω, in millionths of a g mm of µg, nm/s and 1e-6 rev/min.
        "unbalance" => {
            let hub = |name| row[at("hub", name)];
            let w = turns / 1e6 / 60.0 * std::f64::consts::TAU;
            let allowed = hub("rotor_mass") * hub("balance_grade") / w / 1e6;
            let clearance = row[at("wheel", "largest_hole")] - row[at("hub", "smallest_spigot")];
            let off = (clearance * row[at("wheel", "mass")]
                + hub("spigot_run_out") * hub("rotor_mass"))
                / 2e6;
            vec![allowed, allowed - off]
        }
        "balance grade" => vec![0.4e6, 1e6, 2.5e6, 6.3e6],
        "mass" => of("mass"),
        _ => return anything(field, choice),
    };
    limits.retain(|limit| !limit.is_nan());
    let steps = [0.0, 1.0, -1.0, 5e3, -5e3, 5_001.0, 5e5, -5e5, 500_001.0, -500_001.0];
    let (limit, step) =
        (choice / 16, if field.sort.name == "length" { choice % 16 } else { choice % 3 });
    let Some(limit) = limits.get(limit as usize % limits.len().max(1)) else {
        return anything(field, choice);
    };
    // Steps beyond the list are no step at all: on the limit itself.
    (limit + steps.get(step as usize).unwrap_or(&0.0)).round()
}

/// Anything that a field takes, from sizes of a workshop.
fn anything(field: &Field, choice: u32) -> f64 {
    let words = (field.sort.words)().len();
    let share = f64::from(choice) / f64::from(u32::MAX);
    match field.sort.name {
        _ if words > 0 => f64::from(choice % words as u32),
        "length" => (1e3 * 10_f64.powf(share * 6.0)).round(),
        "rotational speed" => (1e6 * 10_f64.powf(1.0 + share * 4.0)).round(),
        "speed" => (1e6 * (1.0 + share * 150.0)).round(),
        "angle" => (share * 6.2e9).round(),
        "date" => (18_000.0 + share * 4_000.0).round(),
        "temperature difference" => (share * 80e3).round(),
        "thermal expansion" => (share * 25e6).round(),
        "pressure or stress" => (1e9 * 10_f64.powf(share * 2.0)).round(),
        "torque" => (1e6 * 10_f64.powf(share * 3.0)).round(),
        "time" => (1e5 * 10_f64.powf(share * 3.0)).round(),
        "mass" => (1e8 * 10_f64.powf(share * 3.0)).round(),
        "unbalance" => (1e6 * 10_f64.powf(share * 3.0)).round(),
        "balance grade" => (1e5 * 10_f64.powf(share * 3.0)).round(),
        "force" => (1e5 * 10_f64.powf(share * 3.0)).round(),
        "density" => (1e6 + share * 8e6).round(),
        "plain number" => (1e7 * 10_f64.powf(share * 3.0)).round(),
        other => panic!("a kind of field that this test does not know: {other}"),
    }
}

/// How many thousandths of the data stay, are not asked, are blank or next to a limit.
const TEMPERS: [[u16; 4]; 4] =
    [[900, 970, 970, 992], [650, 960, 965, 985], [600, 850, 880, 960], [150, 400, 550, 800]];

fn arb_row() -> impl Strategy<Value = Row> {
    let cell = (0_u16..1000, any::<u32>());
    let cells = prop::collection::vec(cell, FIELDS.len());
    (0..OTHERS.len(), 0..TEMPERS.len(), cells).prop_map(|(which, temper, cells)| {
        let mut row = sound(which);
        let [stay, not_asked, blank, limit] = TEMPERS[temper];
        for (place, (state, choice)) in cells.into_iter().enumerate() {
            let field = &FIELDS[place];
            let fact = match state {
                state if state < stay => continue,
                state if state < not_asked => NOT_ASKED,
                state if state < blank => BLANK,
                state if state < limit => near(field, &row, choice),
                _ => anything(field, choice),
            };
            if !given(fact) || field.admit(fact).is_ok() {
                row[place] = fact;
            }
        }
        row
    })
}

fn today() -> Date {
    Date::read("2026-11-25").expect("a day of the calendar")
}

fn arb_terms() -> impl Strategy<Value = Terms> {
    (0_usize..32, any::<bool>()).prop_map(|(bits, dated)| {
        // The federal law alone comes first, being the default.
        let bits = bits ^ 1;
        let laws: Vec<Law> = Law::LIST
            .iter()
            .enumerate()
            .filter(|(at, _)| bits & (1 << at) != 0)
            .map(|(_, (law, ..))| *law)
            .collect();
        let terms = Terms::default().with_laws(&laws);
        if dated { terms.with_today(today()) } else { terms }
    })
}

fn columns_of(rows: &[Row]) -> Columns {
    let mut columns = Columns::new();
    for (place, field) in FIELDS.iter().enumerate() {
        let column: Vec<f64> = rows.iter().map(|row| row[place]).collect();
        // A field that nobody asks for has no column, as in a sheet.
        if !column.iter().all(|fact| is(*fact, NOT_ASKED)) || place == 0 {
            columns.set(field.place, field.name, column).expect("columns of one length");
        }
    }
    columns
}

/// The outcome of every rule on every row, and the worst of each row, by the block rules.
fn judged(rows: &[Row], terms: &Terms) -> (Vec<Vec<Outcome>>, Vec<Outcome>) {
    let mut table = vec![vec![Outcome::NotChecked; RULES.len()]; rows.len()];
    let mut cells = |rule: usize, first: usize, outcomes: &[Outcome]| {
        for (row, outcome) in outcomes.iter().enumerate() {
            table[first + row][rule] = *outcome;
        }
    };
    let worst =
        judge_columns(&columns_of(rows), terms, Some(&mut cells), |_| ControlFlow::Continue(()))
            .expect("nobody stops it");
    (table, worst)
}

/// Most rows whose variants are judged together.
const TOGETHER: usize = 12;

#[test]
fn the_sound_mountings_are_sound() {
    // Else the properties below would start from mountings that are broken anyhow.
    let rows: Vec<Row> = (0..OTHERS.len()).map(sound).collect();
    let terms = Terms::default().with_today(today());
    let (table, worst) = judged(&rows, &terms);
    for (which, (row, worst)) in table.iter().zip(&worst).enumerate() {
        let bad: Vec<_> =
            RULES.iter().zip(row).filter(|(_, o)| !o.clear()).map(|(rule, _)| rule.slug).collect();
        assert!(worst.clear(), "sound mounting {which}: {bad:?}");
    }
}

#[test]
fn a_blank_recess_does_not_let_a_flange_slip_past_its_table() {
    // Nobody asks for the kind of the fixed flange, so that its recess makes
    // it a relieved one; and a wheel under 2 in needs no recess. The flange,
    // 9.2 mm, is over a third of 25.4 mm and under the 3/8 in of Table O-6.
    let mut row = sound(4);
    row[at("fixed_flange", "kind")] = NOT_ASKED;
    row[at("fixed_flange", "diameter")] = 9.2e6;
    row[at("loose_flange", "diameter")] = 9.6e6;
    let mut blanked = row.clone();
    blanked[at("fixed_flange", "recess")] = BLANK;
    let (_, worst) = judged(&[row, blanked], &Terms::default());
    assert_eq!(worst[0], Outcome::Refuse, "9.2 mm is less than 3/8 in");
    assert!(!worst[1].clear(), "the recess is asked for and blank: {:?}", worst[1]);
}

proptest! {
    #![proptest_config(cases(64))]

    #[test]
    fn raising_the_spindle_speed_never_improves_anything(
        rows in prop::collection::vec(arb_row(), 1..TOGETHER),
        terms in arb_terms(),
        factors in prop::collection::vec(1.0..3.0_f64, 4),
    ) {
        let (speed, marked) = (at("spindle", "greatest_speed"), at("wheel", "marked_speed"));
        let mut variants = Vec::new();
        for row in &rows {
            let mut row = row.clone();
            if !given(row[speed]) {
                row[speed] = sound(0)[speed];
            }
            let mut speeds = vec![row[speed], row[speed] + 1.0, row[speed] * 1.005, row[speed] * 20.0];
            speeds.extend(factors.iter().map(|factor| (row[speed] * factor).round()));
            speeds.extend([row[marked], row[marked] + 1.0].into_iter().filter(|n| *n > row[speed]));
            speeds.sort_by(f64::total_cmp);
            variants.push(speeds.into_iter().map(|n| { let mut row = row.clone(); row[speed] = n; row }).collect::<Vec<_>>());
        }
        let flat = variants.concat();
        let (table, worst) = judged(&flat, &terms);
        let mut first = 0;
        for variants in &variants {
            for slow in first..first + variants.len() - 1 {
                for (rule, (before, after)) in RULES.iter().zip(table[slow].iter().zip(&table[slow + 1])) {
                    prop_assert!(after <= before, "{}: {before} became {after} from {} to {} of 1e-6 rpm; {:?}",
                        rule.slug, flat[slow][speed], flat[slow + 1][speed], flat[slow]);
                }
                prop_assert!(worst[slow + 1] <= worst[slow], "the worst improved; {:?}", flat[slow]);
            }
            first += variants.len();
        }
    }

    #[test]
    fn shrinking_both_flanges_never_improves_third_or_table(
        rows in prop::collection::vec(arb_row(), 1..TOGETHER),
        terms in arb_terms(),
        shares in prop::collection::vec(0.05..1.0_f64, 4),
    ) {
        let flanges = [at("fixed_flange", "diameter"), at("loose_flange", "diameter")];
        let mut flat = Vec::new();
        for row in &rows {
            let mut smaller = vec![row.clone()];
            let mut shares = shares.clone();
            shares.sort_by(|a, b| b.total_cmp(a));
            // One nanometre first, for flanges on a limit.
            smaller.push(row.clone());
            for flange in flanges { smaller[1][flange] = (row[flange] - 1.0).max(1.0); }
            for share in shares {
                let last = smaller.last().expect("it has two").clone();
                let mut next = last.clone();
                for flange in flanges { next[flange] = (row[flange] * share).round().max(1.0).min(last[flange]); }
                smaller.push(next);
            }
            // What is missing stays missing: arithmetic on a reserved NaN is none.
            for next in &mut smaller {
                for flange in flanges { if !given(row[flange]) { next[flange] = row[flange]; } }
            }
            flat.extend(smaller);
        }
        let (table, _) = judged(&flat, &terms);
        for row in 0..flat.len() {
            if row % 6 == 5 { continue; }
            for slug in ["flange-below-one-third", "flange-below-table"] {
                let rule = RULES.iter().position(|rule| rule.slug == slug).expect("a rule");
                let (before, after) = (table[row][rule], table[row + 1][rule]);
                prop_assert!(after <= before, "{slug}: {before} became {after}; {:?}", flat[row]);
            }
        }
    }

    #[test]
    fn blanking_any_cell_never_makes_a_mounting_clear(
        rows in prop::collection::vec(arb_row(), 1..TOGETHER),
        terms in arb_terms(),
    ) {
        let mut flat = Vec::new();
        let mut whence = Vec::new();
        for row in &rows {
            let whole = flat.len();
            flat.push(row.clone());
            whence.push((whole, None));
            for place in (0..row.len()).filter(|place| given(row[*place])) {
                let mut blanked = row.clone();
                blanked[place] = BLANK;
                flat.push(blanked.clone());
                whence.push((whole, Some(place)));
                // A heading for both flanges or both blotters blanks a pair.
                let Some(kind) = FIELDS[place].place.strip_prefix("fixed_") else { continue };
                blanked[at(&format!("loose_{kind}"), FIELDS[place].name)] = BLANK;
                flat.push(blanked);
                whence.push((whole, Some(place)));
            }
        }
        let (table, worst) = judged(&flat, &terms);
        for (row, (whole, place)) in whence.iter().enumerate() {
            let Some(place) = place else { continue };
            if worst[row].clear() && !worst[*whole].clear() {
                let was: Vec<_> = RULES.iter().zip(&table[*whole]).filter(|(_, o)| !o.clear())
                    .map(|(rule, outcome)| format!("{}: {outcome}", rule.slug)).collect();
                prop_assert!(false, "blanking {} cleared {was:?}; {:?}", FIELDS[*place].heading(), flat[*whole]);
            }
        }
    }

    #[test]
    fn one_mounting_and_a_block_of_them_are_judged_alike(
        rows in prop::collection::vec(arb_row(), 1..40),
        terms in arb_terms(),
        without in prop::option::of(0..RULES.len()),
        length in 1_usize..1500,
    ) {
        let terms = match without {
            Some(rule) => terms.without(RULES[rule].slug).expect("a rule"),
            None => terms,
        };
        // Over and over, so that every row stands at several places of its block.
        let many: Vec<Row> = rows.iter().cycle().take(length.max(rows.len())).cloned().collect();
        let (table, worst) = judged(&many, &terms);
        let columns = columns_of(&rows);
        for (at, row) in rows.iter().enumerate() {
            let verdict = columns.verdict(at, "one", &terms);
            let mut alone = vec![Outcome::NotChecked; RULES.len()];
            for finding in &verdict.findings {
                let rule = RULES.iter().position(|rule| **rule == *finding.rule).expect("a rule");
                alone[rule] = finding.outcome;
            }
            prop_assert_eq!(verdict.findings.len(), RULES.len() - usize::from(without.is_some()));
            for same in (at..many.len()).step_by(rows.len()) {
                for (rule, (block, alone)) in RULES.iter().zip(table[same].iter().zip(&alone)) {
                    prop_assert_eq!(block, alone, "{}, row {} of the block; {:?}", rule.slug, same, row);
                }
                prop_assert_eq!(worst[same], verdict.worst, "row {}", same);
            }
        }
    }

    #[test]
    fn a_finding_says_what_its_rule_can_say_and_its_margin_has_the_right_sign(
        row in arb_row(),
        terms in arb_terms(),
    ) {
        let verdict = columns_of(std::slice::from_ref(&row)).verdict(0, "one", &terms);
        prop_assert!(verdict.findings.windows(2).all(|pair| pair[0].outcome <= pair[1].outcome), "worst first");
        prop_assert_eq!(verdict.worst, verdict.findings[0].outcome);
        for finding in &verdict.findings {
            let slug = finding.rule.slug;
            prop_assert!(finding.rule.reaches().contains(&finding.outcome), "{slug} reached {}", finding.outcome);
            prop_assert!(!["{", "NaN", "inf"].iter().any(|bad| finding.says.contains(bad)), "{slug}: {}", finding.says);
            if let Some(margin) = finding.margin {
                prop_assert!(finding.outcome != Outcome::Refuse || margin <= 0.0, "{slug} refuses with room: {margin}; {:?}", row);
                prop_assert!(finding.outcome != Outcome::Pass || margin >= 0.0, "{slug} passes short of {margin}; {:?}", row);
            }
            if finding.outcome == Outcome::Refuse {
                prop_assert!(finding.source.is_some_and(|source| source.status.may_refuse()), "{slug} refuses on {:?}", finding.source);
            }
        }
    }

    #[test]
    fn typed_parts_are_judged_as_their_columns_are(row in arb_row(), terms in arb_terms()) {
        fn datum<T>(fact: f64, of: impl Fn(f64) -> T) -> Datum<T> {
            if is(fact, BLANK) { Datum::Unknown } else if is(fact, NOT_ASKED) { Datum::NotAsked } else { Datum::Given(of(fact)) }
        }
        fn word<T: Words>(fact: f64) -> T { T::LIST[fact as usize].0 }
        let fact = |place, name| row[at(place, name)];
        let mut mounting = Mounting { name: "one".into(), ..Mounting::default() };
        let mut bare = Row(vec![NOT_ASKED; FIELDS.len()]);
        macro_rules! give {
            ($($place:ident.$name:ident by $of:expr;)+) => {$(
                mounting.$place.$name = datum(fact(stringify!($place), stringify!($name)), $of);
                bare[at(stringify!($place), stringify!($name))] = fact(stringify!($place), stringify!($name));
            )+};
        }
        give! {
            machine.kind by word;
            machine.guard_exposure by Exact::from_exact;
            spindle.greatest_speed by Exact::from_exact;
            spindle.rotation by word;
            wheel.shape by word;
            wheel.diameter by Exact::from_exact;
            wheel.hole by Exact::from_exact;
            wheel.marked_speed by Exact::from_exact;
            wheel.marked_rim_speed by Exact::from_exact;
            wheel.fastening by word;
            wheel.use_before by |fact| Date::from_days(fact as i64);
            wheel.warmer_by by Exact::from_exact;
            wheel.expansion by Exact::from_exact;
            fixed_flange.kind by word;
            fixed_flange.diameter by Exact::from_exact;
            fixed_flange.land by Exact::from_exact;
            fixed_flange.recess by Exact::from_exact;
            loose_flange.kind by word;
            loose_flange.diameter by Exact::from_exact;
            loose_flange.land by Exact::from_exact;
            loose_flange.keyed by word;
            fixed_blotter.present by word;
            loose_blotter.present by word;
            hub.spigot by Exact::from_exact;
            hub.warmer_by by Exact::from_exact;
            hub.expansion by Exact::from_exact;
            nut.thread_hand by word;
        }
        match check(&mounting, &terms) {
            Ok(verdict) => prop_assert_eq!(verdict, columns_of(&[bare]).verdict(0, "one", &terms)),
            Err(error) => {
                prop_assert_eq!(error.code(), "bad-row");
                prop_assert!(contradicts_itself(&bare), "{}", error);
            }
        }
    }
}

// --- Kernels ---------------------------------------------------------------

fn mm(size: f64) -> Length {
    Length::new::<millimeter>(size)
}

fn rpm(speed: f64) -> AngularVelocity {
    AngularVelocity::new::<revolution_per_minute>(speed)
}

fn mps(speed: f64) -> Velocity {
    Velocity::new::<meter_per_second>(speed)
}

/// Numbers of a workshop, and all others that a float can hold.
fn arb_float() -> impl Strategy<Value = f64> {
    prop_oneof![3 => 1e-3..1e3_f64, 1 => -1e3..1e3_f64, 2 => prop::num::f64::ANY]
}

proptest! {
    #![proptest_config(cases(1024))]

    #[test]
    fn a_column_of_rim_speeds_equals_its_rows_bit_for_bit(
        rows in prop::collection::vec((arb_float(), arb_float()), 0..40),
    ) {
        let (d, w): (Vec<f64>, Vec<f64>) = rows.into_iter().unzip();
        let mut column = vec![0.0; d.len()];
        rim_speed_column(&d, &w, &mut column).expect("columns of one length");
        for row in 0..d.len() {
            let one = rim_speed(Length::new::<meter>(d[row]), AngularVelocity::new::<radian_per_second>(w[row]));
            match one {
                Ok(v) => prop_assert_eq!(v.get::<meter_per_second>().to_bits(), column[row].to_bits(), "{} m, {} rad/s", d[row], w[row]),
                Err(error) => prop_assert!(column[row].is_nan(), "{} m, {} rad/s: {error}, the column says {}", d[row], w[row], column[row]),
            }
        }
    }

    #[test]
    fn rim_speed_doubles_with_diameter_and_with_turns(d in 1e-3..1e4_f64, n in -1e5..1e5_f64) {
        let at = |d, n| rim_speed(mm(d), rpm(n)).expect("finite").get::<meter_per_second>();
        let (once, wide, fast) = (at(d, n), at(2.0 * d, n), at(d, 2.0 * n));
        prop_assert!((wide - 2.0 * once).abs() <= 1e-14 * wide.abs());
        prop_assert!((fast - 2.0 * once).abs() <= 1e-14 * fast.abs());
    }

    #[test]
    fn the_speed_for_a_rim_never_passes_the_marked_one_nor_the_rim_speed(
        d in 1.0..2000.0_f64,
        v in 0.1..200.0_f64,
        marked in prop::option::of(1.0..1e5_f64),
    ) {
        let set = speed_for_rim(mm(d), mps(v), marked.map(rpm)).expect("above zero");
        if let Some(marked) = marked {
            prop_assert!(set.speed <= rpm(marked));
            prop_assert!(!set.capped || set.speed == rpm(marked));
        }
        let rim = rim_speed(mm(d), set.speed).expect("finite").get::<meter_per_second>();
        prop_assert!(rim <= v * (1.0 + 1e-14), "{rim} m/s for {v} m/s");
        prop_assert!(set.capped || rim >= v * (1.0 - 1e-14), "{rim} m/s for {v} m/s");
        let last = set.working().steps.last().expect("at least one step").clone();
        prop_assert_eq!(last.result.to_bits(), set.speed.get::<revolution_per_minute>().to_bits());
        // The largest wheel at that speed is this one, or a larger one when capped.
        let largest = largest_diameter(set.speed, mps(v)).expect("above zero").get::<millimeter>();
        prop_assert!(largest >= d * (1.0 - 1e-14), "{largest} mm for {d} mm");
    }

    #[test]
    fn the_working_of_a_flange_ends_in_its_least_diameter(
        shape in 0..Shape::LIST.len(),
        kind in 0..FlangeKind::LIST.len(),
        wheel in prop_oneof![1.0..2000.0_f64, (0..TABLE_O6.len(), -600_000_i32..600_000).prop_map(|(row, off)| (TABLE_O6[row].wheel + f64::from(off)) / 1e6)],
        hole in 1.0..700.0_f64,
    ) {
        let (shape, kind) = (Shape::LIST[shape].0, FlangeKind::LIST[kind].0);
        let limits = flange_limits(shape, mm(wheel), kind, Some(mm(hole))).expect("above zero");
        let working = limits.working();
        match limits.least_diameter {
            Some(least) => {
                let last = working.steps.last().expect("a limit has steps");
                prop_assert_eq!(last.result.to_bits(), least.value.get::<millimeter>().to_bits());
                prop_assert_eq!(last.source, least.source);
                // The larger one governs: no step before it says more, but for a
                // nanometre where a size lies halfway between two.
                for step in &working.steps {
                    prop_assert!(mm(step.result).exact() <= least.value.exact() + 1.0, "{}", working);
                }
                // The next row never asks for less than the row below the wheel.
                let by_table = working.steps.iter().find(|step| step.symbol == "least by table");
                if let (Some(next), Some(row)) = (limits.next_row_diameter, by_table) {
                    prop_assert!(next.value.exact() >= mm(row.result).exact(), "{}", working);
                }
            }
            None => prop_assert!(working.steps.is_empty()),
        }
    }

    #[test]
    fn a_number_that_is_printed_reads_back_bit_for_bit(value in prop::num::f64::NORMAL | prop::num::f64::ZERO) {
        // Rust prints the shortest text that reads back, which is the bound to keep.
        let text = value.to_string();
        prop_assert_eq!(number(&text, Decimal::Point).map(f64::to_bits), Ok(value.to_bits()), "{}", text);
        let exponent = format!("{value:e}");
        prop_assert_eq!(number(&exponent, Decimal::Point).map(f64::to_bits), Ok(value.to_bits()), "{}", exponent);
        let comma = text.replace('.', ",");
        prop_assert_eq!(number(&comma, Decimal::Comma).map(f64::to_bits), Ok(value.to_bits()), "{}", comma);
        if text.contains('.') {
            prop_assert!(number(&text, Decimal::Comma).is_err() && number(&comma, Decimal::Point).is_err(), "{}", text);
        }
    }

    #[test]
    fn inch_fractions_read_as_sixty_fourths(whole in 0_u32..80, top in 1_u32..64) {
        // 1/64 in is 396,875 nm exactly.
        let nm = i64::from(whole) * 25_400_000 + i64::from(top) * 396_875;
        let texts = [
            format!("{whole}-{top}/64 in"),
            format!("{whole} {top}/64\""),
            format!(" {whole} {top}/64 inches "),
            format!("{} in", f64::from(whole) + f64::from(top) / 64.0),
            format!("{}/64in", whole * 64 + top),
        ];
        for text in texts {
            let length = read::<Length>(&text).unwrap_or_else(|error| panic!("{error}"));
            prop_assert_eq!(Nanometres::from(length), Nanometres(nm), "{}", text);
        }
    }

    #[test]
    fn whole_nanometres_survive_text_and_metres(nm in -10_000_000_000_i64..10_000_000_000) {
        let exact = format!("{}{}.{:06} mm", if nm < 0 { "-" } else { "" }, nm.abs() / 1_000_000, nm.abs() % 1_000_000);
        prop_assert_eq!(Nanometres::from(read::<Length>(&exact).expect("a length")), Nanometres(nm), "{}", exact);
        prop_assert_eq!(Nanometres::from(Length::from(Nanometres(nm))), Nanometres(nm));
        prop_assert_eq!(Length::from_exact(nm as f64).exact(), nm as f64);
    }

    #[test]
    fn a_text_that_reads_is_a_finite_quantity(
        number in prop_oneof![prop::num::f64::ANY.prop_map(|value| format!("{value:e}")), "[0-9./ -]{1,6}", "[0-9]{1,3}e[0-9]{1,3}"],
        spelling in any::<prop::sample::Index>(),
    ) {
        fn finite<K: Kind + PartialOrd>(number: &str, spelling: prop::sample::Index, finite: fn(K) -> bool) -> Result<(), TestCaseError> {
            let text = format!("{number} {}", spelling.get(K::SPELLINGS).text);
            if let Ok(value) = read::<K>(&text) {
                prop_assert!(finite(value), "{text} reads as a {} beyond any number", K::NAME);
            }
            Ok(())
        }
        finite::<Length>(&number, spelling, |v| v.is_finite())?;
        finite::<Velocity>(&number, spelling, |v| v.is_finite())?;
        finite::<AngularVelocity>(&number, spelling, |v| v.is_finite())?;
        finite::<Mass>(&number, spelling, |v| v.is_finite())?;
        finite::<Force>(&number, spelling, |v| v.is_finite())?;
        finite::<Pressure>(&number, spelling, |v| v.is_finite())?;
        finite::<Power>(&number, spelling, |v| v.is_finite())?;
        finite::<Torque>(&number, spelling, |v| v.is_finite())?;
        finite::<Time>(&number, spelling, |v| v.is_finite())?;
    }

    #[test]
    fn reading_never_panics(text in "\\PC{0,24}") {
        let _ = read::<Length>(&text);
        let _ = read::<AngularVelocity>(&text);
        let _ = number(&text, Decimal::Point);
        let _ = number(&text, Decimal::Comma);
        let _ = Date::read(&text);
        for field in FIELDS.iter() {
            // A text that a field takes is a number or says that there is none.
            if let Ok(fact) = field.read(&text, None, Decimal::Point) {
                prop_assert!(fact.is_finite() || is(fact, NOT_ASKED), "{} reads {text:?} as {fact}", field.heading());
            }
        }
    }

    #[test]
    fn a_day_reads_back_and_days_follow_one_another(days in -719_162_i64..2_932_896) {
        // From 0001-01-01 to the day before 9999-12-31.
        let (day, next) = (Date::from_days(days), Date::from_days(days + 1));
        prop_assert_eq!(day.days(), days);
        prop_assert_eq!(Date::read(&day.to_string()).expect("a day"), day);
        prop_assert!(day < next, "{day} is not before {next}");
        let parts = |day: Date| -> Vec<u32> {
            day.to_string().split('-').map(|part| part.parse().expect("digits")).collect()
        };
        // The calendar: a day later, or the first of the next month, or the first of a year.
        let ([y, m, d], [ny, nm, nd]) = (parts(day).try_into().expect("three"), parts(next).try_into().expect("three"));
        let [y, m, d, ny, nm, nd]: [u32; 6] = [y, m, d, ny, nm, nd];
        let leap = y.is_multiple_of(4) && (!y.is_multiple_of(100) || y.is_multiple_of(400));
        let longest = [31, if leap { 29 } else { 28 }, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][m as usize - 1];
        let expected = if d < longest { [y, m, d + 1] } else if m < 12 { [y, m + 1, 1] } else { [y + 1, 1, 1] };
        prop_assert_eq!([ny, nm, nd], expected);
        prop_assert_eq!(Date::new(y as i32, m as u8, longest as u8 + 1), None);
    }

    #[test]
    fn years_later_is_the_same_day_but_for_a_leap_day(days in -719_162_i64..2_900_000, years in 0_u8..50) {
        let day = Date::from_days(days);
        let later = day.years_later(years);
        let (text, later_text) = (day.to_string(), later.to_string());
        let year: i32 = text[..4].parse().expect("a year");
        prop_assert_eq!(&later_text[..4], format!("{:04}", year + i32::from(years)));
        if text.ends_with("-02-29") {
            prop_assert!(["-02-29", "-03-01"].iter().any(|end| later_text.ends_with(end)), "{later_text}");
        } else {
            prop_assert_eq!(&later_text[4..], &text[4..]);
        }
    }
}

// --- Sheets ----------------------------------------------------------------

#[cfg(feature = "sheets")]
mod sheets {
    use std::path::PathBuf;
    use std::sync::atomic::{AtomicU32, Ordering};

    use hubwright::mounting::NoneMeans;
    use hubwright::sheet::{Checked, Options, check_file};

    use super::*;

    /// A step that is whole in nanometres, in 1/64 in and in 0.001 in: 1/8000 in.
    const GRID: f64 = 3_175.0;

    /// How a sheet is written.
    #[derive(Clone, Copy, PartialEq)]
    enum Style {
        Millimetres,
        Inches,
        /// Semicolons and decimal commas.
        Commas,
    }

    /// `units` thousandths of a thousandth, as a decimal.
    fn decimal(millionths: i128) -> String {
        let sign = if millionths < 0 { "-" } else { "" };
        let (whole, rest) = (millionths.abs() / 1_000_000, millionths.abs() % 1_000_000);
        let text = format!("{sign}{whole}.{rest:06}");
        text.trim_end_matches('0').trim_end_matches('.').to_owned()
    }

    fn unit(field: &Field, style: Style) -> Option<&'static str> {
        Some(match field.sort.name {
            "length" if style == Style::Inches => "in",
            "length" => "mm",
            "rotational speed" => "rpm",
            "speed" => "m/s",
            "angle" => "rad",
            "temperature difference" => "K",
            "thermal expansion" => "um/m/K",
            "pressure or stress" => "kPa",
            "density" => "g/cm3",
            "torque" => "N m",
            "time" => "s",
            // Facts are micrograms.
            "mass" => "g",
            "unbalance" => "g mm",
            "balance grade" => "mm/s",
            "force" => "kN",
            _ => return None,
        })
    }

    fn cell(field: &Field, fact: f64, style: Style) -> String {
        if is(fact, NOT_ASKED) && field.none == NoneMeans::Absent && (field.sort.words)().is_empty()
        {
            return "none".into();
        }
        if !given(fact) {
            return String::new();
        }
        let text = match (field.sort.name, (field.sort.words)().get(fact as usize)) {
            (_, Some(word)) if !(field.sort.words)().is_empty() => (*word).to_owned(),
            ("date", _) => Date::from_days(fact as i64).to_string(),
            // 1/8000 in is 125 millionths of an inch.
            ("length", _) if style == Style::Inches => decimal((fact / GRID) as i128 * 125),
            (
                "length" | "rotational speed" | "speed" | "thermal expansion" | "torque" | "time"
                | "force" | "pressure or stress" | "density" | "mass" | "unbalance"
                | "balance grade",
                _,
            ) => decimal(fact as i128),
            ("angle" | "temperature difference", _) => {
                let places = if field.sort.name == "angle" { 9 } else { 3 };
                format!("{:.places$}", fact / 10_f64.powi(places as i32))
            }
            ("plain number", _) => format!("{:.9}", fact / 1e9),
            (other, _) => panic!("a kind of field that this test does not know: {other}"),
        };
        if style == Style::Commas
            && (unit(field, style).is_some() || field.sort.name == "plain number")
        {
            text.replace('.', ",")
        } else {
            text
        }
    }

    /// A rack: which fields have a heading, and what each row holds there.
    #[derive(Clone, Debug)]
    struct Rack {
        asked: Vec<usize>,
        rows: Vec<Row>,
        /// Rows with a cell that nobody can read, by their place.
        spoiled: Vec<bool>,
    }

    impl Rack {
        fn write(&self, style: Style, columns: &[usize], rows: &[usize]) -> String {
            let separator = if style == Style::Commas { ";" } else { "," };
            let heading = |place: &usize| {
                let field = &FIELDS[*place];
                match unit(field, style) {
                    Some(unit) => format!("{} [{unit}]", field.heading()),
                    None => field.heading(),
                }
            };
            let mut lines =
                vec![[vec!["name".to_owned()], columns.iter().map(heading).collect()].concat()];
            for row in rows {
                let mut line = vec![format!("row {row}")];
                line.extend(
                    columns
                        .iter()
                        .map(|place| cell(&FIELDS[*place], self.rows[*row][*place], style)),
                );
                if self.spoiled[*row] {
                    let place = columns.iter().position(|place| *place == self.asked[0]);
                    line[place.expect("a heading that is asked") + 1] = "about so".into();
                }
                lines.push(line);
            }
            lines.iter().map(|line| line.join(separator) + "\n").collect()
        }
    }

    fn arb_rack() -> impl Strategy<Value = Rack> {
        let rows = prop::collection::vec((arb_row(), prop::bool::weighted(0.15)), 1..7);
        (rows, prop::collection::vec(0_u8..10, FIELDS.len())).prop_map(|(rows, chosen)| {
            let mut asked: Vec<usize> =
                (0..FIELDS.len()).filter(|place| chosen[*place] < 8).collect();
            if asked.is_empty() {
                asked.push(at("wheel", "diameter"));
            }
            let (rows, spoiled): (Vec<Row>, Vec<bool>) = rows.into_iter().unzip();
            let row = |row: Row| {
                let mut kept = Row(vec![NOT_ASKED; FIELDS.len()]);
                for &place in &asked {
                    let (field, mut fact) = (&FIELDS[place], row[place]);
                    if given(fact) && field.sort.name == "length" {
                        fact = (fact / GRID).round() * GRID;
                        if field.admit(fact).is_err() {
                            fact = GRID;
                        }
                    }
                    // Where `none` is no word for it, a heading makes a blank of what is not asked.
                    let absent = field.none == NoneMeans::Absent && (field.sort.words)().is_empty();
                    kept[place] = if is(fact, NOT_ASKED) && !absent { BLANK } else { fact };
                }
                kept
            };
            let rows = rows.into_iter().map(row).collect();
            Rack { asked, rows, spoiled }
        })
    }

    fn checked(text: &str, terms: &Terms, options: &Options) -> Checked {
        static NEXT: AtomicU32 = AtomicU32::new(0);
        let next = NEXT.fetch_add(1, Ordering::Relaxed);
        let path: PathBuf = std::env::temp_dir()
            .join(format!("hubwright-properties-{}-{next}.csv", std::process::id()));
        std::fs::write(&path, text).expect("a temporary file");
        let checked = check_file(&path, terms, None, options, &mut |_| ControlFlow::Continue(()));
        std::fs::remove_file(&path).expect("the temporary file goes away");
        checked.unwrap_or_else(|error| panic!("{error}\n{text}"))
    }

    /// The outcome of every rule on every row, by the row's name; none for an unreadable row.
    type Outcomes = Vec<(String, Option<Vec<(&'static str, Outcome)>>)>;

    fn outcomes(checked: &Checked) -> Outcomes {
        let mut all: Outcomes = checked
            .rows()
            .map(|row| {
                let findings = row.verdict.ok().map(|verdict| {
                    let mut all: Vec<_> =
                        verdict.findings.iter().map(|f| (f.rule.slug, f.outcome)).collect();
                    all.sort_unstable();
                    all
                });
                (row.name, findings)
            })
            .collect();
        all.sort();
        all
    }

    proptest! {
        #![proptest_config(cases(48))]

        #[test]
        fn a_sheet_says_the_same_however_it_is_laid_out(
            (rack, columns, rows) in arb_rack().prop_flat_map(|rack| {
                let columns = Just(rack.asked.clone()).prop_shuffle();
                let rows = Just((0..rack.rows.len()).collect::<Vec<_>>()).prop_shuffle();
                (Just(rack), columns, rows)
            }),
            terms in arb_terms(),
        ) {
            let in_order: Vec<usize> = (0..rack.rows.len()).collect();
            let point = Options::default().with_decimal(Decimal::Point);
            let comma = Options::default().with_decimal(Decimal::Comma);
            let plain = checked(&rack.write(Style::Millimetres, &rack.asked, &in_order), &terms, &point);
            let counts = plain.counts;
            prop_assert_eq!(plain.len(), rack.rows.len(), "rows in and rows out");
            prop_assert_eq!(
                counts.passed + counts.cautioned + counts.refused + counts.unknown + counts.unreadable,
                rack.rows.len()
            );
            let unreadable = |row: usize| rack.spoiled[row] || contradicts_itself(&rack.rows[row]);
            prop_assert_eq!(counts.unreadable, in_order.iter().filter(|row| unreadable(**row)).count());
            // What the sheet says is what the same numbers say as columns.
            let direct = columns_of(&rack.rows);
            for (row, checked) in plain.rows().enumerate() {
                let expected = (!unreadable(row)).then(|| direct.verdict(row, "", &terms).worst);
                prop_assert_eq!(checked.worst, expected, "{:?}", rack.rows[row]);
            }
            let expected = outcomes(&plain);
            for (what, style, columns, rows, options) in [
                ("other order of columns", Style::Millimetres, &columns, &in_order, &point),
                ("other order of rows", Style::Millimetres, &rack.asked, &rows, &point),
                ("inches", Style::Inches, &columns, &rows, &point),
                ("decimal commas", Style::Commas, &columns, &rows, &comma),
            ] {
                let text = rack.write(style, columns, rows);
                let other = checked(&text, &terms, options);
                prop_assert_eq!(other.counts, counts, "{}", what);
                prop_assert_eq!(&outcomes(&other), &expected, "{}\n{}", what, text);
            }
        }
    }
}
