//! Thin discs, thin wheels and stabilisers against series, elements and books of others.

use hubwright::solid::{InPlane, clamped_disc, critical_disc_speed, disc_frequency};
use hubwright::units::{
    AngularVelocity, Force, Length, MassDensity, Pressure, gigapascal, hertz,
    kilogram_per_cubic_meter, megapascal, micrometer, millimeter, newton, newton_per_millimeter,
    radian_per_second, revolution_per_minute,
};
use hubwright::wheel::thin::{DAMPED, SIDE_ONLY};
use hubwright::wheel::{StabiliserDisc, Stabilisers, ThinWheel};

/// Whether two numbers agree within a share of the second.
#[track_caller]
fn close(found: f64, wanted: f64, share: f64, what: &str) {
    assert!((found - wanted).abs() <= share * wanted.abs(), "{what}: {found}, not {wanted}");
}

fn rows(text: &str) -> Vec<Vec<f64>> {
    text.lines()
        .filter(|line| !line.starts_with(['#', 'n']))
        .map(|line| line.split(',').map(|cell| cell.parse().expect("a number")).collect())
        .collect()
}

/// Slope of `ω²` over `Ω²` at rest: two quotients, and their trend taken out.
fn stiffening(ratio: f64, nu: f64, nodes: usize, in_plane: InPlane) -> f64 {
    let square =
        |spin: f64| disc_frequency(ratio, nu, nodes, spin, in_plane).expect("in range").powi(2);
    let still = square(0.0);
    let step = 0.003 * still;
    let quotient = |by: f64| (square((by * step).sqrt()) - still) / (by * step);
    2.0 * quotient(1.0) - quotient(2.0)
}

#[test]
fn the_table_of_coefficients() {
    let table = rows(include_str!("reference/thin_discs.csv"));
    assert_eq!(table.len(), 18);
    for row in table {
        let (nu, ratio) = (row[0], row[1]);
        let name = |what: &str| format!("{what} at b/a {ratio}, nu {nu}");
        let found = clamped_disc(ratio, nu).expect("in range");
        close(found.point_deflection, row[2], 1e-4, &name("kw point"));
        close(found.ring_deflection, row[3], 1e-9, &name("kw ring"));
        close(found.point_moment, row[4], 2e-4, &name("km point"));
        close(found.ring_moment, row[5], 1e-9, &name("km ring"));
        for nodes in 0..4 {
            let at_rest = disc_frequency(ratio, nu, nodes, 0.0, InPlane::FreeAtClamp);
            let what = name(&format!("frequency {nodes}"));
            close(at_rest.expect("in range"), row[6 + nodes], 1e-4, &what);
            let what = name(&format!("stiffening {nodes}"));
            let free = stiffening(ratio, nu, nodes, InPlane::FreeAtClamp);
            close(free, row[10 + nodes], 1e-3, &what);
            let held = stiffening(ratio, nu, nodes, InPlane::Held);
            close(held, row[14 + nodes], 1e-3, &what);
        }
        let critical = critical_disc_speed(ratio, nu, InPlane::FreeAtClamp).expect("in range");
        let (speed, nodes) = critical.expect("a wave stands");
        close(speed, row[18], 2e-4, &name("critical speed"));
        assert_eq!(nodes as f64, row[19], "{}", name("nodes"));
    }
}

/// Timoshenko and Woinowsky-Krieger, plates with a hole clamped inside and loaded on the rim,
/// three figures, recalled: deflection `k1 P a² / (E h³)` and stress `k P / h²`, ν = 0.3.
#[test]
fn a_load_round_the_rim_by_the_book() {
    for (a_over_b, k1, k) in [(1.5, 0.0249, 0.428), (3.0, 0.209, 1.205), (5.0, 0.350, 1.745)] {
        let found = clamped_disc(1.0 / a_over_b, 0.3).expect("in range");
        close(found.ring_deflection * 12.0 * (1.0 - 0.09), k1, 0.003, "deflection");
        close(found.ring_moment * 6.0, k, 0.0015, "stress");
    }
}

/// Leissa, NASA SP-160, and Vogel and Skinner, three figures, recalled; clamped inside, free outside, ν = 0.3.
#[test]
fn frequencies_by_the_book() {
    for (ratio, printed) in [(0.3, [6.66, f64::NAN, 7.96, 13.27]), (0.5, [13.0, 13.3, 14.7, 18.5])]
    {
        for (nodes, printed) in printed.into_iter().enumerate().filter(|(_, p)| !p.is_nan()) {
            let found = disc_frequency(ratio, 0.3, nodes, 0.0, InPlane::FreeAtClamp);
            close(found.expect("in range"), printed, 0.0042, "frequency");
        }
    }
}

/// The narrow ring is an endless strip: Jaramillo's 0.168 and 0.509 (1950, recalled) for ν = 0.3. The
/// figures on the way were computed with 160 and 400 waves.
#[test]
fn a_narrow_ring_nears_a_strip() {
    let mut last = (f64::INFINITY, f64::INFINITY);
    for (ratio, kw, km) in [
        (0.9, 0.176_499_7, 0.555_425_3),
        (0.95, 0.171_428_6, 0.531_110_8),
        (0.98, 0.168_475_9, 0.517_456_9),
    ] {
        let found = clamped_disc(ratio, 0.3).expect("in range");
        // P c² / D, with c the width of the strip.
        let strip = found.point_deflection / (1.0 - ratio).powi(2);
        close(strip, kw, 2e-4, "deflection");
        close(found.point_moment, km, 5e-4, "moment");
        assert!(strip < last.0 && found.point_moment < last.1);
        last = (strip, found.point_moment);
    }
    // What is left of the way to no width, a straight line through the last two.
    let at = |ratio: f64| clamped_disc(ratio, 0.3).expect("in range");
    let limit = |of: &dyn Fn(f64) -> f64| (5.0 * of(0.98) - 2.0 * of(0.95)) / 3.0;
    close(
        limit(&|r| at(r).point_deflection / (1.0 - r).powi(2)),
        0.168,
        0.01,
        "the strip's deflection",
    );
    close(limit(&|r| at(r).point_moment), 0.509, 0.01, "the strip's moment");
}

/// Morley elements (scikit-fem, two meshes, extrapolated) of a disc that turns at Ω = 12 in its unit.
#[test]
fn a_turning_disc_against_other_elements() {
    let morley = [14.505_566_86, 17.002_782_31, 23.282_609_6, 31.953_706_79, 42.574_329_45];
    for (nodes, wanted) in morley.into_iter().enumerate() {
        let found = disc_frequency(0.4, 0.3, nodes, 12.0, InPlane::FreeAtClamp).expect("in range");
        close(found, wanted, 3e-4, "turning");
    }
}

/// Morley elements again: a point load and a load all round, at four ratios.
#[test]
fn a_side_load_against_other_elements() {
    for (nu, ratio, point, ring) in [
        (0.3, 0.2, 0.179_295_637_6, 0.032_075_022_81),
        (0.3, 0.5, 0.056_327_061_13, 0.008_030_121_21),
        (0.2, 0.3, 0.122_903_440_2, 0.023_217_241_93),
        (0.2, 0.7, 0.017_182_187_78, 0.001_681_271_998),
    ] {
        let found = clamped_disc(ratio, nu).expect("in range");
        close(found.point_deflection, point, 1.5e-3, "point load");
        close(found.ring_deflection, ring, 1e-5, "load all round");
    }
}

fn mm(length: f64) -> Length {
    Length::new::<millimeter>(length)
}

fn disc(diameter: f64, flange: f64) -> ThinWheel {
    ThinWheel::new(mm(diameter), mm(flange), mm(1.6), Pressure::new::<gigapascal>(12.0), 0.2)
        .with_strength(Pressure::new::<megapascal>(25.0), 1.0)
}

const DENSITY: f64 = 2400.0;

fn turning(diameter: f64, flange: f64, hole: f64) -> ThinWheel {
    disc(diameter, flange)
        .with_turning(MassDensity::new::<kilogram_per_cubic_meter>(DENSITY), mm(hole))
}

/// Cutting-off discs of 230 and 178 × 1.6 mm, E 12 GPa, ν 0.2, bond 25 MPa, between flanges and
/// between stabilisers: series up to 200 waves and radial elements, computed apart.
#[test]
fn two_cutting_off_discs() {
    let cases = [
        (
            230.0,
            76.0,
            2.937_519_758,
            15.833_675_59,
            1.130_810_237,
            9.432_764_505,
            [90.364_732_51, 91.217_919_77, 112.652_183_7, 181.106_311_3],
        ),
        (
            230.0,
            125.0,
            7.326_976_654,
            51.379_789_47,
            0.797_562_631_8,
            13.374_080_28,
            [195.919_402, 201.852_643_4, 225.138_429_5, 277.386_163_8],
        ),
        (
            178.0,
            40.0,
            3.364_118_225,
            17.370_666_44,
            1.460_485_198,
            7.303_508_916,
            [113.920_575_4, 109.644_872_9, 149.109_913_6, 281.974_767_5],
        ),
        (
            178.0,
            80.0,
            7.894_004_826,
            47.875_060_1,
            0.914_474_112_7,
            11.664_263_12,
            [223.199_050_1, 229.701_803_1, 265.889_082_8, 362.254_028_3],
        ),
    ];
    for (diameter, flange, point, ring, moment, load, hertz_by_nodes) in cases {
        let found = turning(diameter, flange, 20.0).solve().expect("a thin wheel");
        let what = format!("{diameter} in {flange}");
        close(found.stiffness.get::<newton_per_millimeter>(), point, 2e-4, &what);
        close(found.ring_stiffness.get::<newton_per_millimeter>(), ring, 2e-4, &what);
        close(found.clamp_moment, moment, 3e-4, &what);
        close(found.allowed_side_load.expect("given").get::<newton>(), load, 3e-4, &what);
        for (frequency, wanted) in found.frequencies.expect("given").iter().zip(hertz_by_nodes) {
            close(frequency.get::<hertz>(), wanted, 2e-4, &what);
        }
    }
    for (diameter, flange, stabiliser, point, ring) in [
        (230.0, 76.0, 125.0, 2.494_273_148, 3.244_969_192),
        (178.0, 40.0, 80.0, 2.346_530_145, 2.756_086_548),
    ] {
        let of = Stabilisers::new(mm(diameter), mm(flange), mm(1.6), 0.2, mm(0.0));
        let found = of.of(mm(stabiliser)).expect("a stabiliser");
        close(found.gain, point, 2e-4, "gain");
        close(found.ring_gain, ring, 2e-4, "gain round the rim");
        let back = of.for_gain(found.gain).expect("a gain in range");
        close(back.diameter.get::<millimeter>(), stabiliser, 1e-9, "there and back");
        assert!(back.gain >= found.gain * (1.0 - 1e-12));
    }
}

/// A disc of 230 × 1.6 mm between flanges of 76 mm with a hole of 22.2 mm: standing waves under three conditions in its
/// plane, and frequencies at 695.65 rad/s; radial elements with 2 to 24 nodal diameters, computed apart.
#[test]
fn the_critical_speed_depends_on_the_bore() {
    let speed = AngularVelocity::new::<radian_per_second>(695.652_173_9);
    let found = turning(230.0, 76.0, 22.2).with_speed(speed).solve().expect("a thin wheel");
    let critical = found.critical.expect("a wave stands");
    let radians = |speed: AngularVelocity| speed.get::<radian_per_second>();
    close(radians(critical.speed), 528.281_489_1, 1e-3, "free at its hole");
    close(radians(critical.greatest), 590.681_486_7, 1e-3, "free at the flange");
    close(radians(critical.least), 492.501_276, 1e-3, "held by the flange");
    assert_eq!((critical.nodes, critical.reached), (3, Some(true)));
    // With its hole as large as the flange it is free there.
    let found = turning(230.0, 76.0, 76.0).with_speed(speed).solve().expect("a thin wheel");
    let wanted = [135.252_249_8, 157.275_656_5, 218.377_760_1, 312.359_309_8];
    for (frequency, wanted) in found.turning_frequencies.expect("given").iter().zip(wanted) {
        close(frequency.get::<hertz>(), wanted, 2e-4, "turning");
    }
    close(radians(found.critical.expect("a wave stands").speed), 590.681_486_7, 1e-3, "free");
    let slow = AngularVelocity::new::<radian_per_second>(400.0);
    let found = turning(230.0, 76.0, 22.2).with_speed(slow).solve().expect("a thin wheel");
    assert_eq!(found.critical.and_then(|critical| critical.reached), Some(false));
}

/// Common practice, no source: a 125 × 1 mm disc without fabric drifts between flanges of 50 mm and cuts straight between
/// relieved stabilisers of 80 mm.
#[test]
fn a_thin_disc_between_stabilisers() {
    let of = Stabilisers::new(mm(125.0), mm(50.0), mm(1.0), 0.2, mm(0.0));
    let found = of.of(mm(80.0)).expect("a stabiliser");
    // (125 − 80) / 2.
    close(found.depth.get::<millimeter>(), 22.5, 1e-12, "depth");
    close(found.flange_depth.get::<millimeter>(), 37.5, 1e-12, "depth between flanges");
    // Between those of 75 and of 87.5 mm by the table: 0.083873 / 0.032565 and / 0.017164.
    assert!(found.gain > 2.5755 && found.gain < 4.8864, "{}", found.gain);
    let kept = Stabilisers::new(mm(125.0), mm(50.0), mm(1.0), 0.2, mm(2.0));
    close(kept.of(mm(80.0)).expect("a stabiliser").depth.get::<millimeter>(), 20.5, 1e-12, "kept");
    // None of the gain without a step out, and all of it one way.
    close(of.of(mm(50.0)).expect("a stabiliser").gain, 1.0, 1e-15, "no step");
    assert!(SIDE_ONLY.contains("not the bursting speed") && DAMPED.contains("no limit"));
}

/// The relieved flange of 76 mm, 8 mm thick, pressed with 9 kN on 27 mm, with a hole of 20 mm and a land of 8 mm: 56.776 µm by the
/// theory of thin plates (elements of Hermite's kind agree to 8e-9) and 58.961 µm by axisymmetric elements, which see the shear.
#[test]
fn a_stabiliser_sags_under_the_nut() {
    let steel = Pressure::new::<gigapascal>(206.0);
    let force = Force::new::<newton>(9000.0);
    let wheel = Stabilisers::new(mm(180.0), mm(40.0), mm(1.6), 0.2, mm(0.0));
    let of = |thickness: f64| {
        StabiliserDisc::new(mm(thickness), mm(20.0), steel, 0.3, mm(8.0), mm(27.0), force)
    };
    // The land's middle is on 68 mm of 76.
    for (thickness, elements) in [(4.0, 458.613), (8.0, 58.961_1), (12.0, 18.252_1)] {
        let found = wheel.with_disc(of(thickness)).of(mm(76.0)).expect("a stabiliser");
        let sag = found.disc.expect("given").sag;
        close(sag.get::<micrometer>(), elements, 0.01, "sag");
        let relieved = |relief: Length| {
            let disc = of(thickness).with_relief(relief);
            wheel.with_disc(disc).of(mm(76.0)).expect("a stabiliser").disc.expect("given")
        };
        assert_eq!(relieved(sag).bears_at_rim, Some(false));
        assert_eq!(relieved(sag * 1.001).bears_at_rim, Some(true));
        // 9 kN on π/4 (76² − 60²) mm².
        let pressure = relieved(sag).land_pressure.get::<megapascal>();
        close(pressure, 9000.0 / 1_709.026_4, 1e-6, "pressure on the land");
    }
}

#[test]
fn the_last_step_is_the_result() {
    let last = |working: hubwright::working::Working| working.steps.last().map(|step| step.result);
    let strong = turning(230.0, 76.0, 22.2).solve().expect("a thin wheel");
    let load = strong.allowed_side_load.map(|load| load.get::<newton>());
    assert_eq!(last(strong.working()), load);
    let modulus = Pressure::new::<gigapascal>(12.0);
    let bare = ThinWheel::new(mm(230.0), mm(76.0), mm(1.6), modulus, 0.2);
    let found = bare.solve().expect("a thin wheel");
    let stiffness = found.stiffness.get::<newton_per_millimeter>();
    assert_eq!(last(found.working()), Some(stiffness));
    let found = bare
        .with_turning(MassDensity::new::<kilogram_per_cubic_meter>(DENSITY), mm(22.2))
        .solve()
        .expect("a thin wheel");
    let speed = found.critical.map(|critical| critical.speed.get::<revolution_per_minute>());
    assert_eq!(last(found.working()), speed);
    let of = Stabilisers::new(mm(125.0), mm(50.0), mm(1.0), 0.2, mm(2.0));
    let found = of.of(mm(80.0)).expect("a stabiliser");
    assert_eq!(last(found.working()), Some(found.depth.get::<millimeter>()));
}

/// A wheel twice as thick is eight times as stiff and takes four times the load; loads grow with strength.
#[test]
fn stiffness_goes_by_the_cube() {
    let strength = Pressure::new::<megapascal>(25.0);
    let of = |thickness: f64, factor: f64| {
        ThinWheel::new(mm(230.0), mm(76.0), mm(thickness), Pressure::new::<gigapascal>(12.0), 0.2)
            .with_strength(strength, factor)
            .solve()
            .expect("a thin wheel")
    };
    let (one, two, safe) = (of(1.6, 1.0), of(3.2, 1.0), of(1.6, 3.0));
    let stiffness =
        |found: &hubwright::wheel::ThinWheelFound| found.stiffness.get::<newton_per_millimeter>();
    close(stiffness(&two), 8.0 * stiffness(&one), 1e-12, "stiffness");
    let load = |found: &hubwright::wheel::ThinWheelFound| {
        found.allowed_side_load.expect("given").get::<newton>()
    };
    close(load(&two), 4.0 * load(&one), 1e-12, "load");
    close(load(&safe), load(&one) / 3.0, 1e-12, "load with a factor");
    // 9.4 N over 2.9 N/mm are 3.2 mm, twice the thickness.
    assert_eq!(one.small, Some(false));
    close(one.deflection.expect("given").get::<millimeter>(), 3.211, 1e-3, "deflection");
}

#[track_caller]
fn refused<T: std::fmt::Debug>(found: Result<T, hubwright::Error>, argument: &str, says: &str) {
    let error = found.expect_err(says);
    assert_eq!(error.argument(), Some(argument), "{error}");
    let text = error.to_string();
    assert!(text.contains(says) && text.contains("\nhint: "), "{text}");
}

#[test]
fn what_makes_no_sense_is_refused() {
    refused(disc(76.0, 76.0).solve(), "flange", "not below the wheel's 76 mm");
    refused(
        disc(230.0, 240.0).solve(),
        "flange",
        "`flange` is 240 mm, not below the wheel's 230 mm",
    );
    refused(disc(230.0, 5.0).solve(), "flange", "outside 11.5 to 225.4 on this wheel");
    // A tenth of (104 − 76) / 2 is 1.4 mm.
    refused(
        disc(104.0, 76.0).solve(),
        "thickness",
        "above a tenth of what stands out of `flange`, 1.4 mm",
    );
    assert!(disc(108.0, 76.0).solve().is_ok(), "just thin enough");
    refused(turning(230.0, 76.0, 80.0).solve(), "hole", "above the flange's 76 mm");
    refused(turning(230.0, 76.0, -1.0).solve(), "hole", "below 0");
    let speed = AngularVelocity::new::<revolution_per_minute>(6000.0);
    refused(disc(230.0, 76.0).with_speed(speed).solve(), "density", "depends on it");
    let weak = disc(230.0, 76.0).with_strength(Pressure::new::<megapascal>(25.0), 0.5);
    refused(weak.solve(), "strength_factor", "outside 1 to 1000");
    refused(disc(f64::NAN, 76.0).solve(), "diameter", "NaN");

    let of = Stabilisers::new(mm(125.0), mm(50.0), mm(1.0), 0.2, mm(2.0));
    refused(of.of(mm(45.0)), "stabiliser", "below the flange's 50 mm");
    refused(of.of(mm(125.0)), "stabiliser", "not below the wheel's 125 mm");
    refused(of.of(mm(106.0)), "thickness", "stands out of `stabiliser`");
    refused(of.for_gain(0.9), "gain", "outside 1 to ");
    refused(of.for_gain(1e4), "gain", "outside 1 to ");
    refused(
        Stabilisers::new(mm(125.0), mm(50.0), mm(1.0), 0.2, mm(-1.0)).of(mm(80.0)),
        "clearance",
        "below 0",
    );
    let steel = Pressure::new::<gigapascal>(206.0);
    let disc = |land: f64, pressed: f64| {
        let force = Force::new::<newton>(6000.0);
        StabiliserDisc::new(mm(4.0), mm(22.0), steel, 0.3, mm(land), mm(pressed), force)
    };
    refused(of.with_disc(disc(5.0, 20.0)).of(mm(80.0)), "pressed_at", "not above the disc's hole");
    refused(of.with_disc(disc(16.0, 48.0)).of(mm(80.0)), "land", "nothing is left");
    refused(clamped_disc(0.99, 0.2), "ratio", "outside 0.05 to 0.98");
    refused(disc_frequency(0.4, 0.5, 0, 0.0, InPlane::Held), "poisson", "not between 0 and 0.5");
    refused(critical_disc_speed(0.4, 0.2, InPlane::FreeAtBore(0.5)), "bore", "outside 0 to 0.4");
}
