//! Rollers, balls, planes and fits: worked examples, tangency, simulation, bad readings.

use hubwright::gauge::{
    ConeFit, FlankBow, LargeEnd, MeasuredCone, NameTaper, NamingOutcome, OverRollers, TwoBalls,
    TwoDiameters, disk_distance, disk_taper,
};
use hubwright::joint::taper;
use hubwright::units::{Angle, Length, degree, inch, meter, millimeter, radian};
use proptest::prelude::*;

use crate::{Chance, deg, ends_in, mm, near, rad, spread, told, um};

// --- Worked examples -----------------------------------------------------------

#[test]
fn disks_of_the_handbook_come_out() {
    // Machinery's Handbook, 31st edition, p. 701, as printed.
    let inches = Length::new::<inch>;
    let found = disk_taper(inches(1.0), inches(1.5), inches(5.0)).expect("two disks");
    assert_eq!(format!("{:.4}", found.in_per_ft()), "1.2015");
    let apart = |name: &str, small, large| {
        let taper = taper(name).expect(name);
        disk_distance(&taper, inches(small), inches(large)).expect("disks").get::<inch>()
    };
    assert_eq!(format!("{:.3}", apart("0.75 in/ft", 1.25, 1.5)), "4.002");
    assert_eq!(format!("{:.3}", apart("20 deg included", 1.0, 3.0)), "5.759");
    // With one side square, the other one slants by the whole angle.
    let square = disk_taper(inches(2.0), inches(3.0), inches(5.0)).expect("two disks");
    assert_eq!(format!("{:.4}", 12.0 * square.slant_of_one_side()), "2.4367");
    // 6.9 in/ft from one side: the printed answer is cut off, the formula is not.
    let slant = (6.9_f64 / 12.0).atan().to_degrees();
    assert_eq!(format!("{:.4}", apart(&format!("{slant} deg included"), 2.0, 5.0)), "5.8147");
    told(
        disk_taper(inches(1.5), inches(1.0), inches(5.0)),
        "out-of-range",
        &["`large`", "not above small"],
    );
    told(disk_taper(inches(1.0), inches(3.0), inches(0.5)), "out-of-range", &["inside the other"]);
}

#[test]
fn two_rollers_give_the_cone_and_its_uncertainty() {
    // By the formula and, for the uncertainty, by 2e-3 of a simulation elsewhere.
    let found = OverRollers::new([mm(61.2345), mm(67.23)], [mm(10.0), mm(40.0)], mm(10.0))
        .with_uncertainties(um(0.8), um(0.3), um(0.0))
        .solve()
        .expect("a cone");
    near(rad(found.cone.half_angle), 0.099_594_394_51, 1e-8);
    near(0.5 / found.cone.per_side(), 5.003_752_815, 1e-8);
    near(found.diameters[0].get::<meter>(), 0.041_184_698_98, 1e-8);
    near(found.diameters[1].get::<meter>(), 0.047_180_198_98, 1e-8);
    near(rad(found.cone.u_half_angle), 1.872_211_97e-5, 1e-6);
    assert_eq!(found.cone.large_end, LargeEnd::High);
    ends_in(&found.working(), found.cone.half_angle.get::<degree>());
}

#[test]
fn plugs_on_slip_gauges_come_out() {
    // Plugs laid out by hand: taper, end on the plate, rollers, readings.
    for (over, slip, roller, half, end, large_end) in [
        ([60.5125, 65.5125], 50.0, 10.0, 2.86241, 40.0, LargeEnd::High),
        ([35.9643, 38.9757], 60.0, 8.0, 1.43754, 19.761, LargeEnd::High),
        ([37.7967, 44.0467], 25.0, 6.0, 7.12502, 25.0, LargeEnd::High),
        ([51.2967, 45.0467], 25.0, 6.0, 7.12502, 40.0, LargeEnd::Low),
    ] {
        let found = OverRollers::new(over.map(mm), [mm(0.0), mm(slip)], mm(roller))
            .with_large_end(large_end)
            .solve()
            .expect("a cone");
        assert!((found.cone.half_angle.get::<degree>() - half).abs() < 1e-5);
        let on_plate = found.cone.diameter_at(mm(0.0)).get::<millimeter>();
        assert!((on_plate - end).abs() < 1.5e-4, "{on_plate} is not {end}");
    }
}

#[test]
fn two_balls_give_the_bore() {
    // An examination question: balls of 40 and 32 mm, 8 mm proud and 76 mm down.
    let found = TwoBalls::new([mm(40.0), mm(32.0)], [mm(-8.0), mm(76.0)]).solve().expect("a bore");
    near(found.centres_apart.get::<meter>(), 0.08, 1e-12);
    near(rad(found.cone.half_angle), 0.050_020_856_81, 1e-9);
    near(found.diameters[0].get::<meter>(), 0.040_050_093_95, 1e-9);
    ends_in(&found.working(), found.cone.half_angle.get::<degree>());
    // Sockets laid out by hand.
    for (balls, depths, half, face) in [
        ([26.0, 20.0], [2.19065, 29.37742], 7.125_016, 30.0),
        ([30.0, 27.0], [4.62523, 36.16271], 2.862_405, 32.0),
    ] {
        let found = TwoBalls::new(balls.map(mm), depths.map(mm)).solve().expect("a bore");
        assert!((found.cone.half_angle.get::<degree>() - half).abs() < 1e-5);
        let at_face = found.cone.diameter_at(mm(0.0)).get::<millimeter>();
        assert!((at_face - face).abs() < 1e-4, "{at_face} is not {face}");
        assert_eq!(found.cone.large_end, LargeEnd::Low);
    }
}

#[test]
fn a_taper_on_one_two_three_blocks_comes_out() {
    // Common practice, no source: 0.620 and 0.745 in an inch apart.
    let inches = Length::new::<inch>;
    let found =
        TwoDiameters::new([inches(0.62), inches(0.745)], inches(1.0)).solve().expect("a cone");
    assert!((found.cone.half_angle.get::<degree>() - 3.5763).abs() < 5e-5);
    ends_in(&found.working(), found.cone.half_angle.get::<degree>());
}

const Z: [f64; 9] = [2.0, 7.0, 12.0, 17.0, 22.0, 27.0, 32.0, 37.0, 42.0];
const D: [f64; 9] =
    [30.2004, 30.6993, 31.2002, 31.7009, 32.1995, 32.6997, 33.2006, 33.6998, 34.1996];

#[test]
fn nine_sections_give_the_cone_of_least_squares() {
    // By a line fit elsewhere.
    let (z, d) = (Z.map(mm), D.map(mm));
    let found = ConeFit::new(&z, &d).solve().expect("a cone");
    near(rad(found.cone.half_angle), 0.049_954_904_45, 1e-6);
    near(found.cone.slope(), 0.099_993, 1e-6);
    near(found.cone.diameter.get::<meter>(), 0.0322, 1e-6);
    near(found.cone.plane.get::<meter>(), 0.022, 1e-6);
    near(found.scatter.get::<meter>(), 5.765_042_436e-7, 1e-4);
    near(rad(found.cone.u_half_angle), 7.424_080_179e-6, 1e-4);
    near(found.cone.u_diameter.get::<meter>(), 1.921_680_812e-7, 1e-4);
    near(found.cone.diameter_at(mm(0.0)).get::<meter>(), 0.030_000_154, 1e-6);
    near(found.cone.u_diameter_at(mm(0.0)).get::<meter>(), 3.796_961_191e-7, 1e-2);
    near(found.form.get::<meter>(), 1.67e-6, 1e-4);
    near(found.straightness.get::<meter>(), 1.67e-6 / 2.0 * 0.049_954_9_f64.cos(), 1e-4);
    assert_eq!(found.cone.dof, 7.0);
    assert_eq!(found.bow, FlankBow::NotSeen);
    assert!(
        found.straightness_says().contains("no bend seen; one under"),
        "{}",
        found.straightness_says()
    );
    ends_in(&found.working(), found.cone.half_angle.get::<degree>());
    // What is stated counts where it is more than the scatter.
    let stated =
        ConeFit::new(&z, &d).with_uncertainties(um(2.0), um(0.0), um(1.0)).solve().expect("a cone");
    near(rad(stated.cone.u_half_angle), 7.424_080_179e-6 * 2.0 / 0.576_504_243_6, 1e-4);
    assert_eq!(stated.cone.dof, f64::INFINITY);
    near(stated.cone.u_diameter.get::<meter>(), (4e-12_f64 / 9.0 + 1e-12).sqrt(), 1e-9);
}

#[test]
fn a_bent_flank_is_seen_and_a_straight_one_is_not() {
    let z = Z.map(mm);
    let bent = |sag_um: f64| {
        // 1:10 with a parabola that is so much too large half way between the ends.
        let d = Z.map(|z| mm(30.0 + z / 10.0 + sag_um / 1e3 * (1.0 - ((z - 22.0) / 20.0).powi(2))));
        ConeFit::new(&z, &d).with_uncertainties(um(0.5), um(0.0), um(0.0)).solve().expect("a cone")
    };
    for (sag, bow) in [
        (5.0, FlankBow::LargeInTheMiddle),
        (-5.0, FlankBow::SmallInTheMiddle),
        (0.0, FlankBow::NotSeen),
        (0.3, FlankBow::NotSeen),
    ] {
        let found = bent(sag);
        assert_eq!(found.bow, bow, "{sag}");
        assert!((found.bow_on_diameter - um(sag)).get::<meter>().abs() < 1e-12);
    }
    assert!(bent(5.0).straightness_says().contains("large in the middle by 5 µm"));
    // With 0.5 um a reading: what would show has the size it should, seen from σ of the bend.
    let least = bent(0.0).least_bow.expect("it could be seen").get::<meter>();
    assert!(least > 0.4e-6 && least < 2e-6, "{least}");
    let three = ConeFit::new(&z[..3], &[30.2, 30.7, 31.2].map(mm)).solve().expect("a cone");
    assert_eq!(three.bow, FlankBow::CantTell);
    assert!(three.straightness_says().contains("can't show"));
}

#[test]
fn what_a_fit_can_see_of_a_bend_it_sees_nineteen_times_out_of_twenty() {
    // A straight flank is called bent in some 4.6 % of all cases, not more.
    let mut chance = Chance(11);
    let z = Z.map(mm);
    let mut seen = 0;
    for _ in 0..4000 {
        let d = Z.map(|z| mm(30.0 + z / 10.0 + chance.normal(0.0008)));
        let found = ConeFit::new(&z, &d).solve().expect("a cone");
        seen += usize::from(found.bow != FlankBow::NotSeen);
    }
    assert!((130..240).contains(&seen), "{seen} of 4000");
}

// --- Uncertainties against simulation ----------------------------------------

/// A measured cone against what many draws of its readings make of it.
fn simulated(cone: &MeasuredCone, at: Length, mut draw: impl FnMut() -> MeasuredCone) {
    let (mut angles, mut diameters) = (Vec::new(), Vec::new());
    for _ in 0..20_000 {
        let drawn = draw();
        angles.push(rad(drawn.half_angle));
        diameters.push(drawn.diameter_at(at).get::<meter>());
    }
    // The deviation of a deviation of 20,000 draws is half a per cent.
    let (mean, u) = spread(&angles);
    near(rad(cone.u_half_angle), u, 0.02);
    near(rad(cone.half_angle), mean, 1e-3);
    let (_, u) = spread(&diameters);
    near(cone.u_diameter_at(at).get::<meter>(), u, 0.02);
}

#[test]
fn uncertainties_of_rollers_balls_and_planes_are_those_of_a_simulation() {
    for (at, large_end) in [(0.0, LargeEnd::High), (60.0, LargeEnd::High), (25.0, LargeEnd::Low)] {
        let over = if large_end == LargeEnd::High { [61.2345, 67.23] } else { [67.23, 61.2345] };
        let of = |over: [f64; 2], heights: [f64; 2], roller: f64| {
            OverRollers::new(over.map(mm), heights.map(mm), mm(roller))
                .with_uncertainties(um(0.8), um(0.5), um(0.6))
                .solve()
                .expect("a cone")
                .cone
        };
        let mut chance = Chance(1);
        simulated(&of(over, [10.0, 40.0], 10.0), mm(at), || {
            let over = over.map(|m| m + chance.normal(0.0008));
            let heights = [10.0, 40.0].map(|h| h + chance.normal(0.0005));
            of(over, heights, 10.0 + chance.normal(0.0006))
        });
    }
    for at in [0.0, 30.0] {
        let of = |balls: [f64; 2], depths: [f64; 2]| {
            TwoBalls::new(balls.map(mm), depths.map(mm))
                .with_uncertainties(um(0.5), um(3.0))
                .solve()
                .expect("a bore")
                .cone
        };
        let mut chance = Chance(2);
        simulated(&of([26.0, 20.0], [2.19065, 29.37742]), mm(at), || {
            let balls = [26.0, 20.0].map(|d| d + chance.normal(0.0005));
            of(balls, [2.19065, 29.37742].map(|t| t + chance.normal(0.003)))
        });
    }
    let of = |d: [f64; 2], apart: f64| {
        TwoDiameters::new(d.map(mm), mm(apart))
            .with_uncertainties(um(2.0), um(20.0))
            .solve()
            .expect("a cone")
            .cone
    };
    let mut chance = Chance(3);
    let (mut angles, cone) = (Vec::new(), of([31.0, 38.5], 30.0));
    for _ in 0..20_000 {
        let d = [31.0, 38.5].map(|d| d + chance.normal(0.002));
        angles.push(rad(of(d, 30.0 + chance.normal(0.02)).half_angle));
    }
    near(rad(cone.u_half_angle), spread(&angles).1, 0.02);
}

#[test]
fn uncertainties_of_a_fit_are_those_of_a_simulation_and_cover_what_they_should() {
    let z = Z.map(mm);
    let (mut angles, mut at_zero, mut covered) = (Vec::new(), Vec::new(), 0_u32);
    let truth = 0.05_f64.atan();
    let mut chance = Chance(4);
    let draws = 20_000_u32;
    for _ in 0..draws {
        // Positions are off too: 10 um of them are a micrometre of diameter.
        let d = Z.map(|z| mm(30.0 + (z + chance.normal(0.01)) / 10.0 + chance.normal(0.002)));
        let found = ConeFit::new(&z, &d).solve().expect("a cone").cone;
        angles.push(rad(found.half_angle));
        at_zero.push(found.diameter_at(mm(0.0)).get::<meter>());
        covered +=
            u32::from((rad(found.half_angle) - truth).abs() <= rad(found.expanded_half_angle()));
    }
    let exact = Z.map(|z| mm(30.0 + z / 10.0));
    let stated = ConeFit::new(&z, &exact)
        .with_uncertainties(um(2.0), um(10.0), um(0.0))
        .solve()
        .expect("a cone")
        .cone;
    near(rad(stated.u_half_angle), spread(&angles).1, 0.02);
    near(stated.u_diameter_at(mm(0.0)).get::<meter>(), spread(&at_zero).1, 0.02);
    // Student's distribution over seven degrees of freedom: 95.45 % are covered.
    let share = f64::from(covered) / f64::from(draws);
    assert!((share - 0.9545).abs() < 0.005, "{share}");
}

// --- Naming -------------------------------------------------------------------

fn nose(d: [f64; 2], apart: f64, u: f64) -> MeasuredCone {
    TwoDiameters::new(d.map(mm), mm(apart))
        .with_uncertainties(um(u), um(5.0))
        .solve()
        .expect("a cone")
        .cone
}

#[test]
fn a_nose_is_named_left_open_or_copied() {
    let named = NameTaper::new(nose([31.0, 38.5], 30.0, 2.0), deg(0.01)).solve().expect("a name");
    assert_eq!(named.outcome, NamingOutcome::One);
    let names: Vec<_> = named.candidates.iter().map(|candidate| candidate.name()).collect();
    assert_eq!(names, ["1:4", "3 in/ft"]);
    assert!(named.says().contains("it can be 1:4 or 3 in/ft"), "{}", named.says());
    // Morse 3 begins at 0.938 in: 0.0502 of 40 mm from 20 mm on is neither Jarno nor Morse for certain.
    let d = 20.0 + 40.0 * 0.6024 / 12.0;
    let open = NameTaper::new(nose([20.0, d], 40.0, 5.0), deg(0.01)).solve().expect("no name");
    assert_eq!(open.outcome, NamingOutcome::CantTell);
    assert!(open.candidates.iter().any(|candidate| candidate.name() == "Morse 3"));
    assert!(open.says().contains("can't tell"), "{}", open.says());
    // With better readings it is Morse 3, and the gauge plane is 0.938 in wide.
    let morse = NameTaper::new(nose([20.0, d], 40.0, 0.3), deg(0.001))
        .with_gauge_diameter(Length::new::<inch>(0.938))
        .solve()
        .expect("a name");
    assert_eq!(morse.candidates[0].name(), "Morse 3", "{}", morse.says());
    let plane = morse.candidates[0].gauge_plane.expect("a numbered taper").get::<millimeter>();
    // (23.8252 - 20) / 0.0502 from the small end.
    assert!((plane - (0.938 * 25.4 - 20.0) / 0.0502).abs() < 1e-3, "{plane}");
    let asked = morse.gauge_plane.expect("a diameter was asked for").get::<millimeter>();
    assert!((asked - plane).abs() < 1e-6);
    assert!(morse.u_gauge_plane.expect("with it").get::<millimeter>() > 0.0);
    let strange = NameTaper::new(nose([31.0, 37.8], 30.0, 2.0), deg(0.01)).solve().expect("none");
    assert_eq!(strange.outcome, NamingOutcome::None);
    assert!(strange.candidates.is_empty());
    let says = strange.says();
    assert!(
        says.contains("copy it, half angle 6.465") && says.contains("34.4 mm on diameter"),
        "{says}"
    );
    told(
        NameTaper::new(nose([31.0, 38.5], 30.0, 2.0), deg(-0.01)).solve(),
        "out-of-range",
        &["`made_within`"],
    );
}

#[test]
fn few_readings_allow_more() {
    // Three readings that scatter by 1 um have one degree of freedom: 3 becomes 236.
    let z = [0.0, 15.0, 30.0].map(mm);
    let d = [31.0, 34.751, 38.5].map(mm);
    let cone = ConeFit::new(&z, &d).solve().expect("a cone").cone;
    let naming = NameTaper::new(cone, deg(0.0)).solve().expect("a name");
    let wanted = 235.8 * rad(cone.u_half_angle);
    near(rad(naming.allowed), wanted, 1e-3);
}

// --- Bad readings -------------------------------------------------------------

#[test]
fn bad_readings_are_told_by_name() {
    let rollers = |over: [f64; 2], heights: [f64; 2]| {
        OverRollers::new(over.map(mm), heights.map(mm), mm(10.0))
    };
    told(
        rollers([60.0, 60.0], [0.0, 50.0]).solve(),
        "out-of-range",
        &["`half_angle`", "a cylinder"],
    );
    told(
        rollers([60.0, 65.0], [50.0, 50.0]).solve(),
        "out-of-range",
        &["`height_high`", "50 mm, not above height_low 50 mm", "one height", "gauge blocks"],
    );
    told(
        rollers([60.0, 65.0], [50.0, 0.0]).solve(),
        "out-of-range",
        &["`height_high`", "out of order"],
    );
    told(rollers([60.0, 360.0], [0.0, 50.0]).solve(), "out-of-range", &["a plate"]);
    told(
        rollers([60.0, 65.0], [0.0, 50.0]).with_large_end(LargeEnd::Low).solve(),
        "out-of-range",
        &["`over_high`", "the large end is said to be low", "swap"],
    );
    told(
        rollers([19.0, 24.0], [0.0, 50.0]).solve(),
        "out-of-range",
        &["`over_low`", "take up by themselves"],
    );
    told(
        rollers([60.0, 60.008], [0.0, 50.0]).with_uncertainties(um(5.0), um(0.0), um(0.0)).solve(),
        "out-of-range",
        &["can't be told from a cylinder"],
    );
    told(rollers([f64::NAN, 60.0], [0.0, 50.0]).solve(), "not-finite", &["`over_low`"]);
    let balls = |balls: [f64; 2], depths: [f64; 2]| TwoBalls::new(balls.map(mm), depths.map(mm));
    told(
        balls([32.0, 40.0], [-8.0, 76.0]).solve(),
        "out-of-range",
        &["`ball_small`", "not below ball_large"],
    );
    told(
        balls([40.0, 32.0], [8.0, 12.0]).solve(),
        "out-of-range",
        &["`depth_to_small`", "don't fit"],
    );
    told(
        balls([40.0, 32.0], [-24.0, 76.0]).solve(),
        "out-of-range",
        &["`depth_to_large`", "over the mouth"],
    );
    told(
        balls([40.0, 32.0], [-8.0, 76.0]).with_length(mm(80.0)).solve(),
        "out-of-range",
        &["past the bore's 80 mm", "`depth_to_small` is 76 mm"],
    );
    told(
        TwoDiameters::new([mm(38.0), mm(31.0)], mm(30.0)).solve(),
        "out-of-range",
        &["`large_diameter`", "wrong end"],
    );
    told(TwoDiameters::new([mm(31.0); 2], mm(30.0)).solve(), "out-of-range", &["a cylinder"]);
    told(TwoDiameters::new([mm(31.0), mm(38.0)], mm(0.0)).solve(), "out-of-range", &["`apart`"]);
    let fit = |z: &[f64], d: &[f64]| {
        let of = |all: &[f64]| all.iter().copied().map(mm).collect::<Vec<_>>();
        ConeFit::new(&of(z), &of(d)).with_large_end(LargeEnd::High).solve()
    };
    told(
        fit(&[0.0, 10.0], &[30.0, 31.0]),
        "missing",
        &["`positions`", "2 given", "three readings"],
    );
    told(fit(&[0.0, 10.0, 20.0], &[30.0, 31.0]), "unlike-lengths", &["`diameters`"]);
    told(
        fit(&[0.0, 20.0, 10.0], &[30.0, 32.0, 31.0]),
        "out-of-range",
        &["`positions`", "the one before, 20 mm", "order"],
    );
    told(fit(&[0.0, 10.0, 10.0], &[30.0, 31.0, 31.0]), "out-of-range", &["`positions`"]);
    told(fit(&[0.0, 10.0, 20.0], &[30.0, 30.0, 30.0]), "out-of-range", &["a cylinder"]);
    told(fit(&[0.0, 10.0, 20.0], &[30.0, 90.0, 150.0]), "out-of-range", &["a plate"]);
    told(
        fit(&[0.0, 10.0, 20.0], &[32.0, 31.0, 30.0]),
        "out-of-range",
        &["the large end is said to be high"],
    );
    told(fit(&[0.0, 10.0, 20.0], &[30.0, 0.0, 32.0]), "out-of-range", &["`diameters`"]);
}

// --- Properties ---------------------------------------------------------------

/// Distance of a point from the flank of a cone that has a radius at height 0, square to it.
fn from_flank(radius: f64, alpha: f64, [x, z]: [f64; 2]) -> f64 {
    (x - radius) * alpha.cos() - z * alpha.sin()
}

proptest! {
    #![proptest_config(crate::config())]

    #[test]
    fn rollers_touch_the_cone_that_is_found(
        half in 0.1..20.0_f64, end in 20.0..80.0_f64, roller in 4.0..15.0_f64,
        low in 0.0..20.0_f64, more in 10.0..60.0_f64,
    ) {
        // Lay the rollers against a cone, read over them, and find the cone again.
        let alpha = half.to_radians();
        let over = |height: f64| {
            let z = height + roller / 2.0;
            // The axis that is a roller's radius away from the flank.
            let x = end / 2.0 + (roller / 2.0 + z * alpha.sin()) / alpha.cos();
            assert!((from_flank(end / 2.0, alpha, [x, z]) - roller / 2.0).abs() < 1e-9);
            2.0 * (x + roller / 2.0)
        };
        let found = OverRollers::new([over(low), over(low + more)].map(mm), [mm(low), mm(low + more)], mm(roller))
            .solve().expect("a cone");
        prop_assert!((found.cone.half_angle.get::<degree>() - half).abs() < 1e-9);
        prop_assert!((found.cone.diameter_at(mm(0.0)).get::<millimeter>() - end).abs() < 1e-8);
    }

    #[test]
    fn balls_touch_the_bore_that_is_found(
        half in 0.5..20.0_f64, face in 30.0..80.0_f64, at in 0.02..0.3_f64, more in 0.2..0.6_f64,
    ) {
        // Balls that touch a bore of this mouth at two depths.
        let alpha = half.to_radians();
        let apex = face / 2.0 / alpha.tan();
        let ball = |share: f64| {
            // It touches where the bore has this radius.
            let depth = share * apex;
            let r = (apex - depth) * alpha.tan() / alpha.cos();
            let centre = depth - r * alpha.sin();
            (2.0 * r, centre - r)
        };
        let (large, small) = (ball(at), ball(at + more));
        let found = TwoBalls::new([mm(large.0), mm(small.0)], [mm(large.1), mm(small.1)]).solve().expect("a bore");
        prop_assert!((found.cone.half_angle.get::<degree>() - half).abs() < 1e-8);
        prop_assert!((found.cone.diameter_at(mm(0.0)).get::<millimeter>() - face).abs() < 1e-7);
        prop_assert!((found.touch[0].get::<millimeter>() - at * apex).abs() < 1e-7);
    }

    #[test]
    fn readings_on_a_cone_give_it_back_whichever_end_comes_first(
        half in 0.1..40.0_f64, d in 20.0..60.0_f64, n in 3_usize..20, falls in any::<bool>(),
    ) {
        let slope = 2.0 * half.to_radians().tan() * if falls { -0.1 } else { 1.0 };
        let z: Vec<_> = (0..n).map(|at| mm(at as f64 * 1.7)).collect();
        let diameters: Vec<_> = z.iter().map(|z| mm(100.0 + d) + slope * *z).collect();
        let found = ConeFit::new(&z, &diameters).solve().expect("a cone");
        let wanted = Angle::new::<radian>((slope.abs() / 2.0).atan());
        prop_assert!((found.cone.half_angle - wanted).get::<radian>().abs() < 1e-9);
        let end = if falls { LargeEnd::Low } else { LargeEnd::High };
        prop_assert_eq!(found.cone.large_end, end);
        let there = found.cone.position_of(diameters[1]);
        prop_assert!((there - z[1]).get::<meter>().abs() < 1e-9);
    }
}
