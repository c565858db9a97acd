//! Grinding against printed problems, cases worked out with another program (G01 to G06), and what
//! must hold whatever is ground.

use std::f64::consts::PI;

use hubwright::Error;
use hubwright::source::Status;
use hubwright::tables::grinding::RANGES;
use hubwright::units::{
    Angle, AngularVelocity, Exact, Force, GrainDensity, Kind, Length, Power, RemovalRate,
    SpecificEnergy, Torque, Velocity, Volume, cubic_meter, cubic_millimeter,
    cubic_millimeter_per_second, degree, joule_per_cubic_meter, meter, meter_per_second,
    micrometer, millimeter, millimeter_per_second, newton, newton_meter, per_square_meter, read,
    revolution_per_minute, square_meter_per_second, watt,
};
use hubwright::wheel::{
    Dress, DressFeed, Grind, GrindFound, GrindKind, Stub, WornSpeed, creep_stroke,
    fitted_roughness, grinding_ratio, ring_volume, specific_energy, through_feed,
    through_feed_angle, wear,
};
use proptest::prelude::*;
use proptest::test_runner::FileFailurePersistence;

fn cases(cases: u32) -> ProptestConfig {
    let regressions = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/grind.proptest-regressions");
    let mut config = ProptestConfig {
        failure_persistence: Some(Box::new(FileFailurePersistence::Direct(regressions))),
        ..ProptestConfig::default()
    };
    if std::env::var_os("PROPTEST_CASES").is_none() {
        config.cases = cases;
    }
    config
}

fn rows(file: &'static str) -> Vec<Vec<&'static str>> {
    let lines = file.lines().filter(|line| !line.starts_with('#') && !line.trim().is_empty());
    lines.skip(1).map(|line| line.split(',').collect()).collect()
}

fn number(text: &str) -> f64 {
    text.parse().unwrap_or_else(|_| panic!("a number: {text:?}"))
}

fn of<K: Kind>(text: &str) -> K {
    read(text).unwrap_or_else(|error| panic!("{error}"))
}

fn m(size: f64) -> Length {
    Length::new::<meter>(size)
}

fn mm(size: f64) -> Length {
    Length::new::<millimeter>(size)
}

fn rpm(turns: f64) -> AngularVelocity {
    AngularVelocity::new::<revolution_per_minute>(turns)
}

fn mps(speed: f64) -> Velocity {
    Velocity::new::<meter_per_second>(speed)
}

#[track_caller]
fn near(found: f64, wanted: f64, share: f64) {
    assert!((found - wanted).abs() <= share * wanted.abs(), "{found} is not {wanted}");
}

#[track_caller]
fn told<T: std::fmt::Debug>(result: Result<T, Error>, code: &str, holds: &[&str]) {
    let error = result.expect_err(code);
    let text = error.to_string();
    assert_eq!(error.code(), code, "{text}");
    for part in holds.iter().chain(&["\nhint: "]) {
        assert!(text.contains(part), "no {part:?} in {text}");
    }
}

/// A cut of flat work, whatever is not asked about.
fn flat(wheel: Length, depth: Length, width: Length, work: Velocity) -> Grind {
    Grind::new(GrindKind::Surface, wheel, rpm(2000.0)).with_cut(depth, width, work)
}

fn solved(cut: Grind) -> GrindFound {
    cut.solve().unwrap_or_else(|error| panic!("{error}"))
}

#[test]
fn printed_problems_come_out_as_printed() {
    let table = rows(include_str!("reference/grinding_examples.csv"));
    for row in &table {
        let [_, what, a, b, c, printed, off] = row.as_slice() else { panic!("{row:?}") };
        let off = number(off);
        let rate = |text| of::<RemovalRate>(text).get::<cubic_millimeter_per_second>();
        let length =
            |found: Length| near(found.get::<meter>(), of::<Length>(printed).get::<meter>(), off);
        let speed = |found: Velocity| {
            near(
                found.get::<meter_per_second>(),
                of::<Velocity>(printed).get::<meter_per_second>(),
                off,
            );
        };
        match *what {
            "contact" => length(solved(flat(of(a), of(b), mm(5.0), mps(0.1))).contact_length),
            "rate" => {
                let found = solved(flat(mm(200.0), of(c), of(b), of(a))).removal_rate;
                near(found.get::<cubic_millimeter_per_second>(), rate(printed), off);
            }
            "chips" => {
                // A wheel of a metre round, so that its rim runs a metre a turn.
                let speed = of::<Velocity>(a).get::<meter_per_second>() * 60.0;
                let cut = Grind::new(GrindKind::Surface, m(1.0 / PI), rpm(speed))
                    .with_cut(mm(0.05), of(b), mps(0.1))
                    .with_grains(of(c));
                let found = solved(cut).chips_per_second.expect("cutting points");
                near(found * 60.0, number(printed), off);
            }
            "energy" => {
                let found = specific_energy(of::<Force>(a), of(b), of(c)).expect("energy");
                let wanted = of::<SpecificEnergy>(printed).get::<joule_per_cubic_meter>();
                near(found.get::<joule_per_cubic_meter>(), wanted, off);
            }
            "ring" => {
                let found = ring_volume(of(a), of(b), of(c)).expect("a ring");
                let wanted = of::<Volume>(printed).get::<cubic_millimeter>();
                near(found.get::<cubic_millimeter>(), wanted, off);
            }
            "feed" => speed(through_feed(of(a), of(b), of(c)).expect("a feed")),
            "inclination" => {
                let found = through_feed_angle(of(a), of(b), of(c)).expect("an angle");
                near(found.get::<degree>(), of::<Angle>(printed).get::<degree>(), off);
            }
            "stroke" => length(creep_stroke(of(a), of(b), of(c)).expect("a stroke")),
            "dresser width" => {
                let dress = Dress::new(rpm(1410.0), DressFeed::Overlap(2.0));
                let dress = dress.with_tip_radius(of(a)).with_depth(of(b));
                length(dress.solve().expect("a pass").width.expect("of the tip"));
            }
            "traverse" => {
                let dress = Dress::new(of(b), DressFeed::Overlap(number(c))).with_width(of(a));
                speed(dress.solve().expect("a pass").traverse);
            }
            other => panic!("{other}"),
        }
    }
    assert_eq!(table.len(), 26);
}

/// Groover, problem 25.3: 104.8; and 25.4: the mean volume of a chip, 0.00031 mm³.
#[test]
fn the_grinding_ratio_is_104_8() {
    let work = ring_volume(mm(252.5), mm(250.0), mm(125.0)).expect("a bore");
    let wheel = ring_volume(mm(150.0), mm(149.75), mm(20.0)).expect("a wheel");
    let ratio = grinding_ratio(work, wheel).expect("a ratio");
    near(ratio, 104.8, 5e-4);
    // Back again: that much work at that ratio wears the wheel by an eighth of a millimetre.
    let found = wear(work, ratio, mm(150.0), mm(20.0)).expect("wear");
    near(found.diameter_left.get::<millimeter>(), 149.75, 1e-12);
    near(found.radial.get::<millimeter>(), 0.125, 1e-9);

    let cut = Grind::new(GrindKind::Surface, mm(200.0), rpm(2400.0))
        .with_cut(mm(0.05), mm(3.5), mps(0.1))
        .with_grains(of("64 1/cm2"));
    near(solved(cut).rim_speed.get::<meter_per_second>() * 60e3, 1_507_964.0, 1e-6);
    near(solved(cut).chip_volume.expect("chips").get::<cubic_millimeter>(), 0.00031, 5e-3);
}

/// Cases G01, G02 and G03: flat, from outside, inside.
#[test]
fn three_cuts_come_out_as_computed_elsewhere() {
    struct Case {
        kind: GrindKind,
        /// Wheel in m, rev/min, work in m/s, depth and width in m, work diameter in m, J/m³, 1/m², ratio, W.
        given: [f64; 10],
        /// m/s, m³/s, m²/s, heq, de, lc, hm in m, W, N, N m, share, aggressiveness.
        wanted: [f64; 12],
    }
    let all = [
        Case {
            kind: GrindKind::Surface,
            given: [0.2, 2900.0, 0.25, 1.5e-5, 0.015, 1.0, 3.5e10, 2.5e6, 12.0, 2200.0],
            wanted: [
                30.36872898,
                5.625e-8,
                3.75e-6,
                1.234822834e-7,
                0.2,
                0.001732050808,
                3.083126759e-6,
                1968.75,
                64.8281988,
                6.48281988,
                0.8948863636,
                7.129252958e-5,
            ],
        },
        Case {
            kind: GrindKind::External,
            given: [0.4, 1670.0, 0.35, 8e-6, 0.03, 0.05, 4.5e10, 4e6, 10.0, 7500.0],
            wanted: [
                34.97639821,
                8.4e-8,
                2.8e-6,
                8.005398335e-8,
                0.04444444444,
                0.000596284794,
                3.664077121e-6,
                3780.0,
                108.0728775,
                21.6145755,
                0.504,
                0.0001342546115,
            ],
        },
        Case {
            kind: GrindKind::Internal,
            given: [0.03, 28_000.0, 0.5, 4e-6, 0.012, 0.045, 5e10, 5e6, 10.0, 1500.0],
            wanted: [
                43.98229715,
                2.4e-8,
                2e-6,
                4.547284088e-8,
                0.09,
                0.0006,
                2.462325212e-6,
                1200.0,
                27.28370453,
                0.409255568,
                0.8,
                7.578806814e-5,
            ],
        },
    ];
    for Case { kind, given, wanted } in all {
        let [wheel, n, work, depth, width, round, energy, grains, ratio, power] = given;
        let cut = Grind::new(kind, m(wheel), rpm(n))
            .with_cut(m(depth), m(width), mps(work))
            .with_work_diameter(m(round))
            .with_specific_energy(SpecificEnergy::new::<joule_per_cubic_meter>(energy))
            .with_grains(GrainDensity::new::<per_square_meter>(grains))
            .with_chip_width_ratio(ratio)
            .with_spindle_power(Power::new::<watt>(power), 1.0)
            .with_spindle_torque(Torque::new::<newton_meter>(7.0));
        let of = solved(cut);
        let torque = of.torque.expect("energy").get::<newton_meter>();
        let found = [
            of.rim_speed.get::<meter_per_second>(),
            of.removal_rate.get::<cubic_millimeter_per_second>() / 1e9,
            of.width_removal_rate.get::<square_meter_per_second>(),
            of.equivalent_chip_thickness.get::<meter>(),
            of.equivalent_diameter.get::<meter>(),
            of.contact_length.get::<meter>(),
            of.chip_thickness.expect("grains").get::<meter>(),
            of.power.expect("energy").get::<watt>(),
            of.force.expect("energy").get::<newton>(),
            torque,
            of.power_share.expect("power"),
            of.aggressiveness,
        ];
        for (found, wanted) in found.into_iter().zip(wanted) {
            near(found, wanted, 1e-6);
        }
        near(of.torque_share.expect("torque"), torque / 7.0, 1e-12);
        // Only the second takes more torque than 7 N m.
        assert_eq!(of.spindle_carries, Some(kind != GrindKind::External));
    }
}

proptest! {
    #![proptest_config(cases(200))]

    /// Every chip as thick as `h_m` at its end, as long as the contact, half as thick on average.
    #[test]
    fn chips_carry_away_what_is_ground(
        (wheel, work, kind) in (20.0..600.0_f64, 1.05..20.0_f64, 0..3_usize),
        (n, speed, depth, width) in (300.0..30_000.0_f64, 0.01..2.0_f64, 1e-3..0.05_f64, 1.0..50.0_f64),
        (grains, ratio) in (1e5..1e7_f64, 5.0..20.0_f64),
    ) {
        let kind = [GrindKind::Surface, GrindKind::External, GrindKind::Internal][kind];
        let cut = Grind::new(kind, mm(wheel), rpm(n))
            .with_cut(mm(depth), mm(width), mps(speed))
            .with_work_diameter(mm(wheel * work))
            .with_grains(GrainDensity::new::<per_square_meter>(grains))
            .with_chip_width_ratio(ratio);
        let found = solved(cut);
        let thick = found.chip_thickness.expect("grains").get::<meter>();
        // A wedge: width r h / 2 on average and thickness h / 2, over the length of contact.
        let chip = ratio * thick / 2.0 * (thick / 2.0) * found.contact_length.get::<meter>();
        let mean = found.chip_volume.expect("grains").get::<cubic_millimeter>() / 1e9;
        prop_assert!((chip / mean - 1.0).abs() < 1e-9, "{chip} {mean}");
        prop_assert_eq!(found.power, None);
        prop_assert_eq!(found.spindle_carries, None);
    }

    #[test]
    fn no_worn_wheel_is_run_above_its_markings(
        diameter in 50.0..600.0_f64,
        share in 0.2..0.99_f64,
        rim in 5.0..80.0_f64,
        marked in prop::option::of(500.0..20_000.0_f64),
        marked_rim in prop::option::of(10.0..80.0_f64),
    ) {
        let mut wheel = WornSpeed::new(mm(diameter), mm(diameter * share), mps(rim));
        if let Some(marked) = marked {
            wheel = wheel.with_marked_speed(rpm(marked));
        }
        if let Some(marked) = marked_rim {
            wheel = wheel.with_marked_rim_speed(mps(marked));
        }
        let found = wheel.solve().expect("a wheel");
        let set = found.speed.get::<revolution_per_minute>();
        prop_assert!(marked.is_none_or(|marked| set <= marked * (1.0 + 1e-12)));
        let at_rim = PI * diameter * share / 1e3 * set / 60.0;
        prop_assert!(marked_rim.is_none_or(|marked| at_rim <= marked * (1.0 + 1e-12)));
        prop_assert!(at_rim <= rim * (1.0 + 1e-12));
        prop_assert_eq!(found.capped, at_rim < rim * (1.0 - 1e-9), "{:?}", found);
        prop_assert!(found.new_speed <= found.free_speed);
    }
}

/// Case G04, and the marking in turns that it lacks.
#[test]
fn a_worn_wheel_turns_faster_up_to_its_marking() {
    let turns = |speed: AngularVelocity| speed.get::<revolution_per_minute>();
    let wheel = WornSpeed::new(mm(200.0), mm(155.0), mps(30.0)).with_marked_rim_speed(mps(35.0));
    let found = wheel.solve().expect("a wheel");
    near(turns(found.new_speed), 2864.788976, 1e-9);
    near(turns(found.speed), 3696.501904, 1e-9);
    near(turns(found.rim_limit_speed.expect("a marking")), 4312.585555, 1e-9);
    near(found.rim_speed_if_kept.get::<meter_per_second>(), 23.25, 1e-9);
    assert!(!found.capped);
    let found = wheel.with_marked_speed(rpm(3340.0)).solve().expect("a wheel");
    assert!(found.capped);
    assert_eq!(turns(found.speed), 3340.0);
}

/// Case G05.
#[test]
fn a_dressing_pass_has_its_overlap_and_its_thread() {
    let um = |length: Option<Length>| length.expect("a tip").get::<meter>();
    for feed in [
        DressFeed::Lead(mm(0.12)),
        DressFeed::Traverse(mps(0.0058)),
        DressFeed::Overlap(0.8 / 0.12),
    ] {
        let pass = Dress::new(rpm(2900.0), feed).with_width(mm(0.8)).with_tip_radius(mm(0.25));
        let found = pass.solve().expect("a pass");
        near(found.overlap.expect("a width"), 6.666666667, 1e-9);
        near(found.traverse.get::<meter_per_second>(), 0.0058, 1e-9);
        near(um(found.thread_height), 7.2e-6, 1e-9);
        near(um(found.exact_thread_height), 7.30677801e-6, 1e-8);
        near(um(found.thread_mean), 1.84752e-6, 1e-5);
        assert!(!found.skips);
    }
    let pass = Dress::new(rpm(2900.0), DressFeed::Lead(mm(0.9))).with_width(mm(0.8));
    assert!(pass.solve().expect("a pass").skips);
}

/// Case G06.
#[test]
fn wear_and_the_fitted_roughness_are_what_they_were_elsewhere() {
    let ra = fitted_roughness(m(9e-7), m(1e-6), 0.35, m(1.2e-7)).expect("a fit");
    near(ra.get::<meter>(), 4.28505051e-7, 1e-9);
    let ground = Volume::new::<cubic_meter>(3e-6);
    let found = wear(ground, 18.0, mm(200.0), mm(20.0)).expect("wear");
    near(found.worn.get::<cubic_meter>(), 1.666666667e-7, 1e-9);
    near(found.radial.get::<meter>(), 1.326379157e-5, 1e-9);
}

#[test]
fn a_stub_is_left_and_a_larger_flange_costs_wheel() {
    let wheel = Stub::new(mm(200.0), mm(80.0), mm(2.0)).with_worn_diameter(mm(150.0));
    let found = wheel.with_larger_flange(mm(100.0)).solve().expect("a wheel");
    let size = |length: Option<Length>| length.expect("given").get::<millimeter>();
    near(size(Some(found.stub_diameter)), 84.0, 1e-12);
    near(size(found.left), 33.0, 1e-12);
    near(size(found.lost), 10.0, 1e-12);
    // (104² − 84²) / (200² − 84²), and (150² − 84²) over the same.
    near(found.lost_share.expect("given"), 3760.0 / 32_944.0, 1e-12);
    near(found.left_share.expect("given"), 15_444.0 / 32_944.0, 1e-12);
    // A stabiliser of 110 mm governs, and the larger flange costs nothing.
    let held = wheel.with_stabiliser(mm(110.0)).with_larger_flange(mm(100.0));
    let found = held.solve().expect("a wheel");
    near(size(Some(found.stub_diameter)), 114.0, 1e-12);
    assert!(size(found.lost).abs() < 1e-12);
    // A wheel on its stub is used up and no error.
    let wheel = Stub::new(mm(200.0), mm(80.0), mm(2.0));
    let used_up = wheel.with_worn_diameter(mm(84.0)).solve().expect("a stub");
    assert_eq!(used_up.left.expect("given").exact(), 0.0);
}

#[test]
fn published_ranges_are_what_was_typed_a_second_time() {
    let file = include_str!("reference/grinding_ranges.csv");
    let lines: Vec<_> = file.lines().filter(|line| line.starts_with('"')).collect();
    assert_eq!(lines.len(), RANGES.len());
    for (line, range) in lines.into_iter().zip(RANGES) {
        let (name, rest) = line[1..].split_once("\",").expect("a name in quotes");
        let cells: Vec<_> = rest.split(',').collect();
        assert_eq!((name, cells[2]), (range.name, range.unit));
        assert_eq!([number(cells[0]), number(cells[1])], [range.least, range.greatest], "{name}");
        let status = match cells[3] {
            "read" => Status::Read,
            "memory" => Status::Memory,
            _ => Status::Practice,
        };
        assert_eq!(status, range.source.status, "{name}");
    }
}

#[test]
fn what_makes_no_sense_is_told() {
    let cut = |kind| Grind::new(kind, mm(30.0), rpm(2000.0)).with_cut(mm(0.01), mm(5.0), mps(0.2));
    let surface = cut(GrindKind::Surface);
    told(cut(GrindKind::External).solve(), "missing", &["`work_diameter`", "surface"]);
    let tight = cut(GrindKind::Internal).with_work_diameter(mm(30.0));
    told(tight.solve(), "out-of-range", &["`work_diameter`", "30 mm", "wheel's 30", "external"]);
    told(
        surface.with_cut(mm(15.0), mm(5.0), mps(0.2)).solve(),
        "out-of-range",
        &["`depth`", "15 mm"],
    );
    told(surface.with_cut(mm(0.01), mm(0.0), mps(0.2)).solve(), "out-of-range", &["`width`"]);
    told(surface.with_cut(mm(0.01), mm(5.0), mps(0.0)).solve(), "out-of-range", &["`work_speed`"]);
    let power = Power::new::<watt>(1500.0);
    told(surface.with_spindle_power(power, 1.2).solve(), "out-of-range", &["`efficiency`", "1.2"]);
    told(surface.with_spindle_power(power, 0.0).solve(), "out-of-range", &["`efficiency`"]);
    let none = SpecificEnergy::new::<joule_per_cubic_meter>(0.0);
    told(
        surface.with_specific_energy(none).solve(),
        "out-of-range",
        &["`specific_energy`", "J/mm3"],
    );
    told(surface.with_chip_width_ratio(f64::NAN).solve(), "not-finite", &["`chip_width_ratio`"]);

    let stub = Stub::new(mm(200.0), mm(80.0), mm(2.0));
    let worn = stub.with_worn_diameter(mm(83.9));
    told(
        worn.solve(),
        "out-of-range",
        &["`worn_diameter`", "83.9 mm", "stub of 84", "take the wheel off"],
    );
    told(stub.with_worn_diameter(mm(201.0)).solve(), "out-of-range", &["above the new 200"]);
    told(stub.with_larger_flange(mm(80.0)).solve(), "out-of-range", &["`larger_flange`"]);
    told(stub.with_stabiliser(mm(196.0)).solve(), "out-of-range", &["`stabiliser`", "196"]);
    told(Stub::new(mm(200.0), mm(210.0), mm(0.0)).solve(), "out-of-range", &["`flange`", "200"]);
    let grown = WornSpeed::new(mm(200.0), mm(200.0), mps(30.0));
    told(grown.solve(), "out-of-range", &["`worn_diameter`", "not below the new 200"]);

    let dress = |feed| Dress::new(rpm(2000.0), feed);
    told(dress(DressFeed::Overlap(4.0)).solve(), "missing", &["`dresser_width`", "tip"]);
    let wide = dress(DressFeed::Lead(mm(0.6))).with_tip_radius(mm(0.25));
    told(wide.solve(), "out-of-range", &["`lead`", "0.6"]);
    let deep = dress(DressFeed::Lead(mm(0.1))).with_tip_radius(mm(0.25)).with_depth(mm(0.3));
    told(deep.solve(), "out-of-range", &["`depth`", "0.3"]);
    told(dress(DressFeed::Traverse(mps(0.0))).solve(), "out-of-range", &["`traverse`"]);

    let mm3 = Volume::new::<cubic_millimeter>;
    told(grinding_ratio(mm3(0.0), mm3(1.0)), "out-of-range", &["`ground`"]);
    told(wear(mm3(1e9), 1.0, mm(200.0), mm(20.0)), "out-of-range", &["`ground`", "whole wheel"]);
    told(ring_volume(mm(100.0), mm(100.0), mm(1.0)), "out-of-range", &["`inside`", "100"]);
    told(fitted_roughness(mm(1e-3), mm(1e-3), 3.0, mm(1e-3)), "out-of-range", &["`exponent`"]);
    told(
        through_feed(mm(125.0), rpm(200.0), Angle::new::<degree>(90.0)),
        "out-of-range",
        &["`angle`"],
    );
    told(through_feed_angle(mm(150.0), rpm(5.0), mps(1.0)), "out-of-range", &["`feed`", "1 m/s"]);
    told(creep_stroke(mm(250.0), mm(125.0), mm(200.0)), "out-of-range", &["`depth`", "125"]);
    let force = Force::new::<newton>(0.0);
    let rate = RemovalRate::new::<cubic_millimeter_per_second>(1.0);
    told(specific_energy(force, mps(25.0), rate), "out-of-range", &["`force`"]);
}

#[test]
fn a_wheel_above_its_marking_is_said_to_be() {
    let cut = flat(mm(200.0), mm(0.01), mm(10.0), mps(0.2));
    assert!(solved(cut.with_marked_speed(rpm(1999.0))).above_marked);
    assert!(!solved(cut.with_marked_speed(rpm(2000.0))).above_marked);
}

#[test]
fn a_working_ends_with_the_result_bit_for_bit() {
    let last = |working: hubwright::working::Working| working.steps.last().expect("steps").result;
    let cut = flat(mm(200.0), mm(0.01), mm(10.0), mps(0.2));
    let found = solved(cut);
    near(last(found.working()), found.contact_length.get::<millimeter>(), 1e-15);
    let energy = SpecificEnergy::new::<joule_per_cubic_meter>(4e10);
    let grains = GrainDensity::new::<per_square_meter>(3e6);
    let mut cut = cut;
    cut.kind = GrindKind::External;
    let cut = cut.with_work_diameter(mm(50.0)).with_grains(grains).with_chip_width_ratio(10.0);
    let found = solved(cut.with_specific_energy(energy));
    assert_eq!(last(found.working()), found.torque.expect("energy").get::<newton_meter>());
    assert_eq!(found.working().steps.len(), 8);

    let dress = Dress::new(rpm(2900.0), DressFeed::Lead(mm(0.12))).with_tip_radius(mm(0.25));
    let found = dress.solve().expect("a pass");
    assert_eq!(last(found.working()), found.traverse.get::<millimeter_per_second>());
    let found = dress.with_width(mm(0.8)).solve().expect("a pass");
    assert_eq!(last(found.working()), found.overlap.expect("a width"));

    let found =
        wear(Volume::new::<cubic_millimeter>(3000.0), 18.0, mm(200.0), mm(20.0)).expect("wear");
    assert_eq!(last(found.working()), found.radial.get::<micrometer>());
    let wheel = WornSpeed::new(mm(200.0), mm(155.0), mps(30.0)).with_marked_rim_speed(mps(35.0));
    for wheel in [wheel, wheel.with_marked_speed(rpm(3340.0))] {
        let found = wheel.solve().expect("a wheel");
        assert_eq!(last(found.working()), found.speed.get::<revolution_per_minute>());
    }
    let stub = Stub::new(mm(200.0), mm(80.0), mm(2.0)).with_larger_flange(mm(100.0));
    let found = stub.solve().expect("a wheel");
    near(last(found.working()), found.usable.get::<millimeter>(), 1e-15);
}
