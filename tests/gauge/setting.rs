//! Setting the lathe and correcting it: worked examples, and geometry done another way.

use hubwright::gauge::{
    Along, Boring, RunOut, SetAngle, SlideCorrection, StandOff, TaperPart, ToolHeight, Toward,
    TwoDiameters, block_stack, run_out, sine_bar, slide_setting, tailstock,
};
use hubwright::joint::{Taper, taper};
use hubwright::source::Status;
use hubwright::units::{Exact, Length, degree, meter, micrometer, millimeter};
use proptest::prelude::*;

use crate::{Chance, deg, ends_in, mm, near, rad, told, um};

fn named(name: &str) -> Taper {
    taper(name).expect(name)
}

// --- Setting ------------------------------------------------------------------

#[test]
fn the_slide_the_sine_bar_and_the_tailstock_are_set_as_worked_out_by_hand() {
    let rise = |along| slide_setting(&named("3 in/ft"), mm(25.0), along).expect("a setting");
    let (flank, axis) = (rise(Along::Flank), rise(Along::Axis));
    assert_eq!(format!("{:.4}", flank.rise.get::<millimeter>()), "3.1009");
    assert_eq!(format!("{:.4}", axis.rise.get::<millimeter>()), "3.1250");
    assert_eq!(format!("{:.3}", flank.half_angle.get::<degree>()), "7.125");
    ends_in(&flank.working(), flank.rise.get::<millimeter>());
    ends_in(&axis.working(), axis.rise.get::<millimeter>());
    // A minute more, by the same sines and tangents.
    let minute = (7.125_016_35_f64 + 1.0 / 60.0).to_radians();
    near(
        flank.rise_per_minute.get::<millimeter>(),
        25.0 * minute.sin() - flank.rise.get::<millimeter>(),
        1e-3,
    );
    near(
        axis.rise_per_minute.get::<millimeter>(),
        25.0 * minute.tan() - axis.rise.get::<millimeter>(),
        1e-3,
    );
    let bar = |name, set| sine_bar(&named(name), mm(100.0), set).expect("a stack");
    assert_eq!(
        format!("{:.4}", bar("Morse 2", SetAngle::Included).stack.get::<millimeter>()),
        "4.9919"
    );
    let included = bar("3 in/ft", SetAngle::Included);
    assert_eq!(format!("{:.4}", included.stack.get::<millimeter>()), "24.6154");
    ends_in(&included.working(), included.stack.get::<millimeter>());
    // A stack that is 1 um off on 100 mm: 1e-5 rad over the cosine.
    near(
        rad(included.angle_error(included.stack + um(1.0))),
        1e-5 / 14.250_032_7_f64.to_radians().cos(),
        1e-3,
    );
    let half = sine_bar(&named("1:5"), mm(200.0), SetAngle::Half).expect("a stack");
    near(half.stack.get::<meter>(), 0.019_900_743_8, 1e-8);
    let moved = tailstock(&named("1:20"), mm(200.0)).expect("an offset");
    near(moved.by_rule.get::<millimeter>(), 5.0, 1e-12);
    near(moved.offset.get::<millimeter>(), 200.0 * 0.025_f64.atan().sin(), 1e-12);
    ends_in(&moved.working(), moved.offset.get::<millimeter>());
    told(slide_setting(&named("1:5"), mm(0.0), Along::Flank), "out-of-range", &["`travel`"]);
    told(
        sine_bar(&named("110 deg included"), mm(100.0), SetAngle::Included),
        "out-of-range",
        &["`angle`"],
    );
    told(tailstock(&named("1:5"), mm(-1.0)), "out-of-range", &["`between_centres`"]);
}

#[test]
fn run_out_of_an_original_costs_what_right_triangles_say_and_is_no_source() {
    let found = run_out(mm(0.01), mm(40.0)).expect("run-out");
    // 5 um and 10 um over 40 mm.
    near(rad(found.one_end), 1.25e-4, 1e-6);
    near(rad(found.both_ends), 2.5e-4, 1e-6);
    assert!(found.is_usual() && !run_out(mm(0.010_001), mm(40.0)).expect("more").is_usual());
    assert_eq!(RunOut::usual().exact(), 10_000.0);
    assert_eq!(found.source.status, Status::Practice);
    assert_eq!(found.source.title, "common practice, no source");
    told(run_out(mm(-0.01), mm(40.0)), "out-of-range", &["`run_out`"]);
}

// --- Correcting ----------------------------------------------------------------

#[test]
fn an_angle_error_becomes_a_tap() {
    // 6 um on diameter too much over 35 mm of 1:5, tapped at 180 mm, by differentiating tan.
    let found = SlideCorrection::from_diameters(
        [mm(30.0), mm(37.006)],
        mm(35.0),
        [um(0.0); 2],
        &named("1:5"),
    )
    .expect("two diameters")
    .with_pivot_radius(mm(180.0))
    .solve()
    .expect("a correction");
    near(rad(found.error), 8.486_490_9e-5, 1e-6);
    near(found.tap.expect("a tap").get::<meter>(), 1.527_568_362e-5, 1e-6);
    near(found.per_side.get::<micrometer>(), 3.0, 1e-9);
    assert_eq!(found.toward, Toward::Smaller);
    ends_in(&found.working(), found.error.get::<degree>());
}

#[test]
fn advice_is_a_sentence_that_says_how_far_and_to_which_side() {
    // A bore 12 um a side too open over 40 mm: 24 um on diameter.
    let want = named("1:8");
    let hub = TwoDiameters::new([mm(30.0), mm(35.024)], mm(40.0))
        .with_uncertainties(um(2.1), um(0.0))
        .solve()
        .expect("a bore");
    let correction =
        SlideCorrection::from_cone(&hub.cone, &want, mm(40.0)).with_pivot_radius(mm(120.0));
    let found = correction.with_part(TaperPart::Hub).solve().expect("a correction");
    assert_eq!(
        found.advice(),
        "hub too open by 12 µm per side over 40 mm (± 3); move the slide toward the smaller angle; \
         tap 35.9 µm (± 8.9) at 120 mm from the pivot"
    );
    // The other way round, the other part, and no pivot.
    let nose = TwoDiameters::new([mm(30.0), mm(34.976)], mm(40.0)).solve().expect("a nose");
    let found = SlideCorrection::from_cone(&nose.cone, &want, mm(40.0))
        .with_part(TaperPart::Spindle)
        .solve()
        .expect("a correction");
    assert_eq!(
        found.advice(),
        "spindle too slender by 12 µm per side over 40 mm (± 0); move the slide toward the larger angle by 1.03'"
    );
    // No more than the uncertainty is no reason to move anything.
    let near_enough = TwoDiameters::new([mm(30.0), mm(35.004)], mm(40.0))
        .with_uncertainties(um(2.1), um(0.0))
        .solve()
        .expect("a bore");
    let found = SlideCorrection::from_cone(&near_enough.cone, &want, mm(40.0))
        .with_part(TaperPart::Hub)
        .solve()
        .expect("a correction");
    assert_eq!(found.toward, Toward::Stay);
    assert!(found.advice().contains("leave the slide"), "{}", found.advice());
    for (part, open, close) in
        [(Some(TaperPart::Spindle), "too steep", "too slender"), (None, "too large", "too small")]
    {
        for (have, says) in [("1:7", open), ("1:10", close)] {
            let have = named(have);
            let mut asked = SlideCorrection::from_cone(&hub.cone, &want, mm(40.0));
            (asked.have, asked.u_have, asked.part) = (have.half_angle, deg(0.0), part);
            assert!(asked.solve().expect("a correction").advice().contains(says), "{says}");
        }
    }
}

#[test]
fn rises_become_the_angles_that_make_them() {
    // 3.1009 mm of rise along 25 mm of flank is 3 in/ft; 20 um more are too much.
    for along in [Along::Flank, Along::Axis] {
        let wanted = slide_setting(&named("3 in/ft"), mm(25.0), along).expect("a setting").rise;
        let read = wanted + um(20.0);
        let found = SlideCorrection::from_rises([read, wanted], mm(25.0), along, um(1.0))
            .expect("rises")
            .with_length(mm(40.0))
            .solve()
            .expect("a correction");
        let angle = |rise: Length| {
            let share = rise.get::<millimeter>() / 25.0;
            if along == Along::Flank { share.asin() } else { share.atan() }
        };
        near(rad(found.error), angle(read) - angle(wanted), 1e-9);
        assert_eq!(found.toward, Toward::Smaller);
        // One sigma of the reading, by a difference of angles.
        near(rad(found.u_error), angle(read + um(0.5)) - angle(read - um(0.5)), 1e-6);
        near(
            found.per_side.get::<millimeter>(),
            40.0 * (angle(read).tan() - angle(wanted).tan()),
            1e-9,
        );
    }
    told(
        SlideCorrection::from_rises([mm(26.0), mm(3.0)], mm(25.0), Along::Flank, um(1.0)),
        "out-of-range",
        &["`rise_read`", "not below the travel, 25 mm"],
    );
    told(
        SlideCorrection::from_rises([mm(3.0), mm(-3.0)], mm(25.0), Along::Axis, um(1.0)),
        "out-of-range",
        &["`rise_wanted`"],
    );
    let flat = SlideCorrection::from_rises([mm(0.0001), mm(3.0)], mm(25.0), Along::Axis, um(1.0))
        .expect("rises");
    told(flat.solve(), "out-of-range", &["a cylinder"]);
}

#[test]
fn two_measured_cones_have_both_uncertainties() {
    let cone = |d: f64, u: f64| {
        TwoDiameters::new([mm(30.0), mm(d)], mm(40.0))
            .with_uncertainties(um(u), um(0.0))
            .solve()
            .expect("a cone")
            .cone
    };
    let found = SlideCorrection::from_cones(&cone(35.01, 3.0), &cone(35.0, 4.0), mm(40.0))
        .solve()
        .expect("a correction");
    let one = |u: f64| u * 1e-6 * 2.0_f64.sqrt() / 0.08 * 0.0625_f64.atan().cos().powi(2);
    near(rad(found.u_error), one(5.0), 1e-3);
    near(rad(found.expanded_error), 2.0 * one(5.0), 1e-3);
}

// --- The tool -----------------------------------------------------------------

/// Radii that a tool off the axis cuts, by turning its tip into a meridian plane.
fn cut(start: f64, t: f64, length: f64, h: f64) -> Vec<[f64; 2]> {
    let x0 = (start * start - h * h).sqrt();
    (0..=2000)
        .map(|at| {
            let z = length * f64::from(at) / 2000.0;
            let x = x0 + t * z;
            // Turn the point (x, h) about the axis until it lies in the plane.
            let turn = (h / x).atan();
            [z, x * turn.cos() + h * turn.sin()]
        })
        .collect()
}

#[test]
fn a_tool_off_centre_makes_a_smaller_angle_and_a_waist() {
    for (name, small, length, off) in [
        ("1:5", 20.0, 35.0, 1.0),
        ("1:5", 20.0, 35.0, -0.5),
        ("3 in/ft", 25.0, 40.0, 0.2),
        ("1:20", 18.0, 60.0, 2.0),
    ] {
        let asked = named(name);
        let found = ToolHeight::new(asked, mm(small), mm(length), mm(off)).solve().expect("a cut");
        let points = cut(small / 2.0, asked.per_side, length, off);
        let [first, last] = [points[0], points[2000]];
        let chord = (last[1] - first[1]) / length;
        near(found.half_angle.get::<degree>(), chord.atan().to_degrees(), 1e-9);
        let lowest = points.iter().map(|[z, r]| first[1] + chord * z - r).fold(0.0, f64::max);
        assert!((found.bow.get::<millimeter>() - lowest).abs() < 1e-8, "{name}: {lowest}");
        let at = points
            .iter()
            .max_by(|a, b| (chord * a[0] - a[1]).total_cmp(&(chord * b[0] - b[1])))
            .expect("points")[0];
        assert!((found.bow_at.get::<millimeter>() - at).abs() < length / 500.0);
        assert!(found.angle_error < deg(0.0) && found.per_side < mm(0.0));
        ends_in(&found.working(), found.half_angle.get::<degree>());
    }
    // About 1.4' for 1 mm at 10 mm of radius, a quarter of it for half a millimetre.
    let minutes = |off: f64| {
        let tool =
            ToolHeight::new(named("1:5"), mm(20.0), mm(22.0), mm(off)).solve().expect("a cut");
        -tool.angle_error.get::<degree>() * 60.0
    };
    assert!(
        (minutes(1.0) - 1.4).abs() < 0.05 && (minutes(0.5) - 0.35).abs() < 0.02,
        "{}",
        minutes(1.0)
    );
    let centred =
        ToolHeight::new(named("1:5"), mm(20.0), mm(35.0), mm(0.0)).solve().expect("a cut");
    assert!(rad(centred.angle_error).abs() < 1e-15);
    assert_eq!(centred.bow, mm(0.0));
    told(
        ToolHeight::new(named("1:5"), mm(20.0), mm(35.0), mm(10.0)).solve(),
        "out-of-range",
        &["`off`", "radius, 10 mm"],
    );
}

// --- Drilling -------------------------------------------------------------------

#[test]
fn drills_leave_the_stock_that_is_asked_for() {
    // 3 in/ft from 25 mm, 40 mm long: 35 mm wide.
    let drills = [22.0, 24.0, 24.001, 30.0, 34.0, 34.001].map(mm);
    let found = Boring::new(named("3 in/ft"), mm(25.0), mm(40.0), mm(0.5))
        .drills(&drills)
        .expect("a drill");
    near(found.large_diameter.get::<millimeter>(), 35.0, 1e-12);
    assert_eq!(found.through.drill, mm(24.0));
    near(found.through.stock_left.get::<millimeter>(), 0.5, 1e-9);
    near(found.through.stock_at_large_end.get::<millimeter>(), 5.5, 1e-12);
    // (35 - 30 - 1) / 0.25 = 16 mm; 34 mm leaves just the stock at the mouth.
    let depths: Vec<_> = found
        .steps
        .iter()
        .map(|step| (step.drill.get::<millimeter>(), step.depth.get::<millimeter>()))
        .collect();
    assert_eq!(depths.len(), 3, "{depths:?}");
    near(depths[1].1, 16.0, 1e-9);
    assert!(depths[2].1.abs() < 1e-9 && (depths[0].1 - (35.0 - 24.001 - 1.0) / 0.25).abs() < 1e-9);
    for step in &found.steps {
        assert!((step.stock_left.get::<millimeter>() - 0.5).abs() < 1e-9);
    }
    told(
        Boring::new(named("1:5"), mm(25.0), mm(40.0), mm(0.5)).drills(&[]),
        "missing",
        &["`drills`"],
    );
    told(
        Boring::new(named("1:5"), mm(25.0), mm(40.0), mm(2.0)).drills(&drills),
        "out-of-range",
        &["`drills`", "21 mm"],
    );
}

// --- Stand-off -------------------------------------------------------------------

#[test]
fn stand_off_draw_up_and_gap_are_arithmetic() {
    // dz = dD / C: 0.02 mm are 0.08 mm on 1:4.
    let found = StandOff::new(named("1:4"), mm(40.0), mm(39.98))
        .with_interference(um(12.5))
        .with_least_gap(mm(0.02))
        .with_uncertainties(um(0.3), um(0.4))
        .solve()
        .expect("a seat");
    let of = |length: Length| length.get::<millimeter>();
    near(of(found.stand_off), 0.08, 1e-9);
    near(of(found.draw_up), 0.05, 1e-12);
    near(of(found.gap), 0.03, 1e-9);
    // 2 · 0.5 um on 1:4.
    near(of(found.expanded), 0.004, 1e-9);
    near(of(found.stand_off_to_make), 0.05 + 0.02 + 0.004, 1e-9);
    near(of(found.bore_to_make), 40.0 - 0.074 / 4.0, 1e-12);
    assert!(found.clears);
    ends_in(&found.working(), of(found.gap));
    let seat = |hub: f64, u: f64| {
        StandOff::new(named("1:4"), mm(40.0), mm(hub))
            .with_interference(um(12.5))
            .with_uncertainties(um(u), um(0.0))
            .solve()
            .expect("a seat")
    };
    assert!(!seat(39.9875, 0.0).clears, "it just touches");
    assert!(!seat(39.99, 0.0).clears && seat(39.99, 0.0).gap < mm(0.0));
    assert!(seat(39.98, 3.0).clears && !seat(39.98, 4.0).clears, "2 · 4 um on 1:4 are 0.032 mm");
    told(
        StandOff::new(named("1:4"), mm(40.0), mm(0.0)).solve(),
        "out-of-range",
        &["`hub_diameter`"],
    );
}

// --- Blocks -----------------------------------------------------------------------

/// The metric set of 88 as it is usually sold, common practice, no source.
fn set() -> Vec<Length> {
    let steps = |from: f64, by: f64, n: usize| (0..n).map(move |at| mm(from + by * at as f64));
    let mut all: Vec<_> = std::iter::once(mm(1.0005)).collect();
    all.extend(steps(1.001, 0.001, 9));
    all.extend(steps(1.01, 0.01, 49));
    all.extend(steps(0.5, 0.5, 19));
    all.extend(steps(10.0, 10.0, 10));
    all
}

#[test]
fn a_sine_bar_stack_is_wrung_from_a_usual_set() {
    let set = set();
    assert_eq!(set.len(), 88);
    let stack = sine_bar(&named("3 in/ft"), mm(100.0), SetAngle::Included).expect("a stack");
    let found = block_stack(stack.stack, &set, um(0.5)).expect("blocks");
    // 24.615 384 mm: 20 + 3.0 + ... within half a micrometre, no fewer than it takes.
    assert!((found.sum - found.height).abs() <= um(0.5) && found.blocks.len() <= 4, "{found:?}");
    assert_eq!(found.blocks.iter().map(|b| b.exact()).sum::<f64>(), found.sum.exact());
    assert!(rad(stack.angle_error(found.sum)).abs() < 6e-6);
    assert!(found.blocks.windows(2).all(|pair| pair[0] >= pair[1]));
    told(
        block_stack(mm(800.0), &set, um(0.5)),
        "out-of-range",
        &["`height`", "out of reach", "400 mm"],
    );
    told(block_stack(mm(8.0), &[], um(0.5)), "missing", &["`blocks`"]);
    told(
        block_stack(mm(8.0), &vec![mm(1.0); 201], um(0.5)),
        "out-of-range",
        &["201", "more than 200"],
    );
    told(block_stack(mm(8.0), &[mm(-1.0)], um(0.5)), "out-of-range", &["`blocks`"]);
    told(block_stack(mm(8.0), &set, um(-0.5)), "out-of-range", &["`within`"]);
}

#[test]
fn blocks_are_the_fewest_and_the_nearest_that_trying_all_finds() {
    let mut chance = Chance(5);
    for _ in 0..200 {
        let n = 3 + (chance.share() * 9.0) as usize;
        let sizes: Vec<i64> =
            (0..n).map(|_| (chance.between(500.0, 20_000.0)) as i64 * 1000).collect();
        let target = chance.between(1_000.0, 60_000.0) as i64 * 1000;
        let within = chance.one_of(&[0, 1_000, 20_000, 400_000]);
        // Every choice, by the bits of a number.
        let all = (1_u32..1 << n).filter(|bits| bits.count_ones() <= 5).map(|bits| {
            let sum: i64 = (0..n).filter(|at| bits >> at & 1 == 1).map(|at| sizes[at]).sum();
            (bits.count_ones() as usize, (sum - target).abs())
        });
        let best = all.filter(|(_, off)| *off <= within).min();
        let nm = |nm: i64| Length::from_exact(nm as f64);
        let set: Vec<_> = sizes.iter().copied().map(nm).collect();
        let found = block_stack(nm(target), &set, nm(within));
        match (best, found) {
            (Some((count, off)), Ok(found)) => {
                assert_eq!((found.blocks.len(), found.off.exact().abs() as i64), (count, off));
                let mut left = sizes.clone();
                for block in &found.blocks {
                    let at = left.iter().position(|size| *size == block.exact() as i64);
                    left.remove(at.expect("a block of the set, used once"));
                }
            }
            (None, Err(error)) => assert!(error.to_string().contains("out of reach"), "{error}"),
            (best, found) => panic!("{best:?} is not {found:?} for {target} of {sizes:?}"),
        }
    }
}

proptest! {
    #![proptest_config(crate::config())]

    #[test]
    fn a_correction_that_is_made_leaves_nothing(x in 2.0..30.0_f64, off in -0.2..0.2_f64, pivot in 50.0..300.0_f64) {
        let want = Taper::of_ratio(1.0, x).expect("a taper");
        let have = Taper::of_included(want.cone_angle() + deg(2.0 * off)).expect("a taper");
        let rise = |taper: &Taper| slide_setting(taper, mm(30.0), Along::Flank).expect("a setting").rise;
        let found = SlideCorrection::from_rises([rise(&have), rise(&want)], mm(30.0), Along::Flank, um(0.0))
            .expect("rises").with_pivot_radius(mm(pivot)).solve().expect("a correction");
        let turned = found.tap.expect("a tap").get::<meter>() / mm(pivot).get::<meter>();
        let sign = match found.toward { Toward::Smaller => -1.0, Toward::Larger => 1.0, _ => 0.0 };
        prop_assert!((rad(have.half_angle) + sign * turned - rad(want.half_angle)).abs() < 1e-9);
    }
}
