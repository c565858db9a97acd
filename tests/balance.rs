//! Balance against cases worked out with another program's quadrature and linear algebra (F01 to F09),
//! catalogue figures, sums of vectors, and readings made from a known unbalance.

use std::f64::consts::{PI, TAU};

use hubwright::Error;
use hubwright::solid::UnbalanceVector;
use hubwright::source::Status;
use hubwright::tables::balance::{GRADES, SUPERABRASIVE_MASS, SUPERABRASIVE_RUN_OUT};
use hubwright::units::{
    Angle, AngularVelocity, BalanceGrade, Length, Mass, MassDensity, Unbalance, degree,
    grade_number, gram, gram_millimeter, kilogram, kilogram_meter, kilogram_per_cubic_meter, meter,
    micrometer, millimeter, newton, radian, read, revolution_per_minute,
};
use hubwright::wheel::{
    Balance, BalanceWeights, HeavySpot, RunsOn, TrialRun, Truing, WeightsFound,
    influence_coefficient, shared_balance, superabrasive_limits, trial_runs, unbalance,
};
use proptest::prelude::*;
use proptest::test_runner::FileFailurePersistence;

fn cases(cases: u32) -> ProptestConfig {
    let regressions = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/balance.proptest-regressions");
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

fn mm(size: f64) -> Length {
    Length::new::<millimeter>(size)
}

fn kg(mass: f64) -> Mass {
    Mass::new::<kilogram>(mass)
}

fn rpm(turns: f64) -> AngularVelocity {
    AngularVelocity::new::<revolution_per_minute>(turns)
}

fn g(number: f64) -> BalanceGrade {
    BalanceGrade::new::<grade_number>(number)
}

fn gmm(amount: f64) -> Unbalance {
    Unbalance::new::<gram_millimeter>(amount)
}

fn deg(angle: f64) -> Angle {
    Angle::new::<degree>(angle)
}

fn rad(angle: f64) -> Angle {
    Angle::new::<radian>(angle)
}

fn density(rho: f64) -> MassDensity {
    MassDensity::new::<kilogram_per_cubic_meter>(rho)
}

fn kgm(amount: Unbalance) -> f64 {
    amount.get::<kilogram_meter>()
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

// --- Grades ----------------------------------------------------------------

/// Case F01: a wheel hangs to one side of its clearance.
#[test]
fn a_wheel_in_its_clearance_reaches_g_4_7() {
    let spot = HeavySpot::clearance(kg(1.35), mm(0.03)).expect("a clearance");
    near(kgm(spot.unbalance), 2.025e-5, 1e-9);
    let found = Balance::new(kg(1.35), rpm(3000.0))
        .with_grade(g(2.5))
        .with_unbalance(spot.unbalance)
        .with_radius(mm(60.0))
        .solve()
        .expect("a rotor");
    let of = |length: Option<Length>| length.expect("given").get::<meter>();
    near(of(found.eccentricity), 1.5e-5, 1e-9);
    near(found.force.expect("a force").get::<newton>(), 1.998594891, 1e-9);
    near(found.reached.expect("a grade").get::<grade_number>(), 4.71238898, 1e-9);
    near(of(found.permissible_eccentricity), 7.957747155e-6, 1e-9);
    near(kgm(found.permissible.expect("a grade")), 1.074295866e-5, 1e-9);
    // U / r by hand.
    near(found.mass_at_radius.expect("a ring").get::<gram>(), 20.25 / 60.0, 1e-12);
    near(found.permissible_mass.expect("a ring").get::<gram>(), 10.74295866 / 60.0, 1e-9);
    assert_eq!(found.within, Some(false));
}

/// Case F02.
#[test]
fn twelve_kilograms_at_1450_rpm_may_keep_498_g_mm() {
    let found = Balance::new(kg(12.0), rpm(1450.0)).with_grade(g(6.3)).solve().expect("a rotor");
    near(found.permissible.expect("a grade").get::<gram_millimeter>(), 497.8805668, 1e-9);
    assert_eq!(found.within, None);
}

#[test]
fn catalogue_figures_come_out_as_printed() {
    for row in rows(include_str!("reference/balance_examples.csv")) {
        let [grade, mass, n, printed, off] = [1, 2, 3, 4, 5].map(|at| number(row[at]));
        let found = Balance::new(kg(mass), rpm(n)).with_grade(g(grade)).solve().expect(row[0]);
        near(found.permissible.expect("a grade").get::<gram_millimeter>(), printed, off);
    }
    // EX80: the last of them as a mass at 200 mm.
    let ring = Balance::new(kg(20.0), rpm(1500.0)).with_grade(g(1.0)).with_radius(mm(200.0));
    let found = ring.solve().expect("a rotor").permissible_mass.expect("a ring");
    near(found.get::<gram>() * 200.0, 127.32, 1e-4);
}

#[test]
fn what_a_grade_allows_is_within_it_and_a_little_more_is_not() {
    let asked = Balance::new(kg(3.0), rpm(2850.0)).with_grade(g(2.5));
    let allowed = asked.solve().expect("a rotor").permissible.expect("a grade");
    let within = |amount| asked.with_unbalance(amount).solve().expect("a rotor").within;
    assert_eq!(within(allowed), Some(true));
    assert_eq!(within(gmm(allowed.get::<gram_millimeter>() + 2e-6)), Some(false));
}

#[test]
fn of_two_machines_the_one_that_allows_less_governs() {
    let on = |machine: &str, n, grade| RunsOn {
        machine: machine.into(),
        speed: rpm(n),
        grade: g(grade),
    };
    // 2.5 / 2850 = 8.77e-4; 6.3 / 8000 = 7.88e-4.
    let machines = [on("surface", 2850.0, 2.5), on("tool", 8000.0, 6.3)];
    let found = shared_balance(kg(2.0), &machines, Some(gmm(15.5)), None).expect("two machines");
    assert_eq!(found.governs, 1);
    near(found.permissible.get::<gram_millimeter>(), 60_000.0 / TAU * 6.3 * 2.0 / 8000.0, 1e-12);
    let within: Vec<_> = found.machines.iter().map(|(_, found)| found.within).collect();
    assert_eq!(within, [Some(true), Some(false)]);
    told(shared_balance(kg(2.0), &[], None, None), "missing", &["`machines`", "speed and grade"]);
}

#[test]
fn grades_are_offered_with_their_status_and_step_by_two_and_a_half() {
    assert!(GRADES.iter().all(|grade| !grade.source.status.may_refuse()));
    for pair in GRADES.windows(2) {
        let step = pair[1].number / pair[0].number;
        assert!((2.4..2.7).contains(&step), "{pair:?}");
    }
}

#[test]
fn a_grade_is_read_with_its_letter_or_its_unit_and_strictly() {
    let as_read = |text| read::<BalanceGrade>(text).map(|grade| grade.get::<grade_number>());
    for text in ["G2.5", "g2.5", " G 2.5 ", "2.5 mm/s"] {
        near(as_read(text).expect(text), 2.5, 1e-15);
    }
    for text in ["G2,5", "G", "G-", "2.5 m/s", "H2.5", "G2.5 mm/s", "G1e999"] {
        told(as_read(text), "not-a-quantity", &["balance grade"]);
    }
    told(as_read("2.5"), "no-unit", &["G2.5"]);
    let amount = |text| read::<Unbalance>(text).expect(text).get::<gram_millimeter>();
    near(amount("120 g mm"), 120.0, 1e-12);
    near(amount("0.5 kg mm"), 500.0, 1e-12);
    // An ounce is 28.349523125 g, an inch 25.4 mm.
    near(amount("1 oz in"), 28.349523125 * 25.4, 1e-12);
}

#[test]
fn superabrasive_limits_are_what_was_typed_a_second_time() {
    let table = rows(include_str!("reference/superabrasive_limits.csv"));
    assert_eq!(table.len(), SUPERABRASIVE_MASS.len() + 2 * SUPERABRASIVE_RUN_OUT.len());
    for row in table {
        let [over, to, value] = [1, 2, 3].map(|at| number(row[at]));
        for diameter in [over + 1e-6, f64::midpoint(over, to), to] {
            let found = superabrasive_limits(mm(diameter)).expect(row[0]);
            let found = match row[0] {
                "mass" => found.mass.expect("in the table").get::<gram>(),
                "standard" => found.side_run_out.get::<micrometer>(),
                _ => found.high_speed_run_out.get::<micrometer>(),
            };
            near(found, value, 1e-9);
        }
    }
    let small = superabrasive_limits(mm(75.0)).expect("a small wheel");
    assert_eq!(small.mass, None);
    assert_eq!(small.run_out_source.status, Status::Read);
    told(superabrasive_limits(mm(751.0)), "out-of-range", &["`diameter`", "751", "above 750"]);
}

// --- Causes ----------------------------------------------------------------

/// First moment of what a slot takes away, by strips: from the round surface to the flat bottom.
fn by_strips(radius: f64, width: f64, bottom: f64) -> f64 {
    let strips = 20_000;
    let step = width / f64::from(strips);
    let strip = |at: i32| {
        let x = -width / 2.0 + (f64::from(at) + 0.5) * step;
        let round = (radius * radius - x * x).sqrt();
        (bottom * bottom - round * round) / 2.0 * step
    };
    (0..strips).map(strip).sum::<f64>().abs()
}

#[test]
fn slots_take_away_what_strips_add_up_to() {
    for (round, b, t, l) in
        [(22.0, 6.0, 2.8, 18.0), (22.0, 4.0, 1.8, 20.0), (60.0, 18.0, 7.0, 50.0)]
    {
        let r = round / 2.0;
        let [in_bore, in_shaft] = [
            HeavySpot::hub_slot(mm(round), mm(b), mm(t), mm(l), density(7850.0)),
            HeavySpot::shaft_slot(mm(round), mm(b), mm(t), mm(l), density(7850.0)),
        ]
        .map(|slot| slot.expect("a slot").unbalance.get::<gram_millimeter>());
        near(in_bore, by_strips(r, b, r + t) * l * 7.85e-3, 1e-7);
        near(in_shaft, by_strips(r, b, r - t) * l * 7.85e-3, 1e-7);
    }
}

#[test]
fn keys_holes_and_lumps_weigh_what_they_weigh_where_they_are() {
    let amount =
        |spot: Result<HeavySpot, Error>| spot.expect("a cause").unbalance.get::<gram_millimeter>();
    // 6 × 6 × 20 mm of steel is 5.652 g; on a slot 2.8 deep in a 22 bore its middle is at 10.8.
    let sizes = [6.0, 6.0, 20.0].map(mm);
    near(amount(HeavySpot::key(mm(22.0), mm(2.8), sizes, density(7850.0))), 5.652 * 10.8, 1e-12);
    // A hole of 5 mm, 8 deep, on a circle of 40: π 25 8 / 4 mm³ at 20.
    let hole = HeavySpot::hole(mm(5.0), mm(8.0), mm(20.0), density(7850.0));
    near(amount(hole), PI * 50.0 * 7.85e-3 * 20.0, 1e-12);
    near(amount(HeavySpot::lump(Mass::new::<gram>(1.5), mm(30.0))), 45.0, 1e-12);
    near(amount(HeavySpot::run_out(kg(2.0), mm(0.01))), 10.0, 1e-12);
}

#[test]
fn what_is_missing_makes_the_other_side_heavy() {
    let hole = HeavySpot::hole(mm(5.0), mm(8.0), mm(20.0), density(7850.0)).expect("a hole");
    let heavy = hole.at(deg(30.0)).expect("an angle").angle.expect("it was given");
    near(heavy.get::<degree>(), 210.0, 1e-12);
    let lump = HeavySpot::lump(Mass::new::<gram>(1.0), mm(30.0)).expect("a lump");
    let heavy = lump.at(deg(-30.0)).expect("an angle").angle.expect("it was given");
    near(heavy.get::<degree>(), 330.0, 1e-12);
}

#[test]
fn holes_spread_round_a_circle_balance_each_other() {
    let hole = |at| HeavySpot::hole(mm(5.0), mm(8.0), mm(20.0), density(7850.0))?.at(deg(at));
    let holes: Vec<_> = [0.0, 90.0, 180.0, 270.0].map(|at| hole(at).expect("a hole")).into();
    let found = unbalance(&holes).expect("four");
    assert!(found.greatest.get::<gram_millimeter>() < 1e-9);
}

proptest! {
    #![proptest_config(cases(200))]

    #[test]
    fn causes_of_unknown_angle_stay_between_least_and_greatest(
        amounts in prop::collection::vec(0.1..100.0_f64, 1..5),
        angles in prop::collection::vec(0.0..360.0_f64, 5),
        known in prop::option::of((0.0..360.0_f64, 0.1..100.0_f64)),
    ) {
        let lump = |amount: f64| HeavySpot::lump(Mass::new::<gram>(amount), mm(1.0)).expect("a lump");
        let mut spots: Vec<_> = amounts.iter().map(|amount| lump(*amount)).collect();
        let mut sum = [0.0; 2];
        let mut add = |amount: f64, angle: f64| {
            let (sin, cos) = angle.to_radians().sin_cos();
            sum = [sum[0] + amount * cos, sum[1] + amount * sin];
        };
        if let Some((angle, amount)) = known {
            spots.push(lump(amount).at(deg(angle)).expect("an angle"));
            add(amount, angle);
        }
        for (amount, angle) in amounts.iter().zip(angles) {
            add(*amount, angle);
        }
        let found = unbalance(&spots).expect("causes");
        let total = sum[0].hypot(sum[1]);
        let [least, greatest] = [found.least, found.greatest].map(|amount| amount.get::<gram_millimeter>());
        prop_assert!(least - 1e-9 <= total && total <= greatest + 1e-9, "{least} {total} {greatest}");
        let all = amounts.iter().sum::<f64>() + known.map_or(0.0, |(_, amount)| amount);
        prop_assert!((greatest - all).abs() < 1e-9 * all);
    }
}

/// Case F09, by quadrature.
#[test]
fn truing_the_rim_leaves_the_hole_off_centre() {
    let wheel = Truing::new(mm(200.0), mm(32.0), mm(20.0), density(2250.0), mm(0.06));
    let found = wheel.solve().expect("a wheel");
    near(kgm(found.before), 8.26515328e-5, 1e-6);
    near(kgm(found.after), 2.171468842e-6, 1e-6);
    near(found.stock.get::<meter>(), 1.2e-4, 1e-9);
    near(found.rim_run_out.get::<meter>(), 1.2e-4, 1e-9);
    near(found.trued_diameter.get::<millimeter>(), 199.88, 1e-12);
}

// --- Weights ---------------------------------------------------------------

fn weights(amount: f64, angle: f64, count: usize, one: f64) -> WeightsFound {
    // One weight of so many kg m: its mass at a radius of 54 mm.
    let heavy = UnbalanceVector::new(Unbalance::new::<kilogram_meter>(amount), rad(angle));
    BalanceWeights::new(heavy, count, kg(one / 0.054), mm(54.0)).solve().expect("weights")
}

/// Cases F03, F04 and F05.
#[test]
fn two_and_three_weights_go_where_the_polygon_closes() {
    let check = |found: WeightsFound, wanted: &[f64], capacity: f64| {
        assert!(found.reached && found.residual == Unbalance::default());
        near(kgm(found.reach), capacity, 1e-9);
        assert_eq!(found.positions.len(), wanted.len());
        for (found, wanted) in found.positions.iter().zip(wanted) {
            near(found.get::<radian>(), *wanted, 1e-9);
        }
    };
    check(weights(4.5e-4, 0.6981317008, 2, 5.4e-4), &[2.698703459, 4.98074525], 1.08e-3);
    let three = [1.221730476, 2.87595689, 5.85068937];
    check(weights(4.5e-4, 4.36332313, 3, 5.4e-4), &three, 1.62e-3);
    let three = [1.306367366, 3.316125579, 5.325883791];
    check(weights(6e-5, 0.1745329252, 3, 4e-4), &three, 1.2e-3);
}

#[test]
fn without_unbalance_weights_lie_apart_evenly() {
    for (count, apart) in [(2, 180.0), (3, 120.0)] {
        let found = weights(0.0, 0.0, count, 5e-4);
        for pair in found.positions.windows(2) {
            near(pair[1].get::<degree>() - pair[0].get::<degree>(), apart, 1e-9);
        }
    }
}

/// What is left of an unbalance and weights at some angles, in kg m.
fn left(heavy: UnbalanceVector, one: f64, angles: &[f64]) -> f64 {
    let amount = kgm(heavy.amount);
    let (sin, cos) = heavy.angle.get::<radian>().sin_cos();
    let mut sum = [amount * cos, amount * sin];
    for angle in angles {
        sum = [sum[0] + one * angle.cos(), sum[1] + one * angle.sin()];
    }
    sum[0].hypot(sum[1])
}

proptest! {
    #![proptest_config(cases(300))]

    #[test]
    fn weights_leave_what_is_said_and_nowhere_less(
        amount in 0.0..2e-3_f64,
        angle in 0.0..TAU,
        count in 2..=3_usize,
        one in 1e-4..8e-4_f64,
        stuck in prop::option::of(0.0..TAU),
        elsewhere in prop::collection::vec(0.0..TAU, 3),
    ) {
        let heavy = UnbalanceVector::new(Unbalance::new::<kilogram_meter>(amount), rad(angle));
        let mut asked = BalanceWeights::new(heavy, count, kg(one / 0.054), mm(54.0));
        if let Some(stuck) = stuck {
            asked = asked.with_stuck(rad(stuck));
        }
        let found = asked.solve().expect("weights");
        let mut angles: Vec<f64> = found.positions.iter().map(|at| at.get::<radian>()).collect();
        prop_assert!(angles.iter().all(|angle| (0.0..TAU).contains(angle)));
        angles.extend(stuck);
        prop_assert_eq!(angles.len(), count);
        let total = left(heavy, one, &angles);
        prop_assert!((total - kgm(found.residual)).abs() < 1e-6 * one, "{total} {found:?}");
        // Anywhere else it is no better.
        let mut other: Vec<f64> = elsewhere[..found.positions.len()].to_vec();
        other.extend(stuck);
        prop_assert!(left(heavy, one, &other) >= kgm(found.residual) - 1e-9 * one);
        if found.reached {
            prop_assert!(found.least_weight.is_none() && found.says().starts_with("move the weights to "));
        } else {
            prop_assert!(found.says().contains("out of reach"), "{}", found.says());
        }
        if let Some(least) = found.least_weight {
            let with = |share: f64| {
                let mut heavier = asked;
                heavier.weight = least * share;
                heavier.solve().expect("weights").reached
            };
            prop_assert!(with(1.0 + 1e-6) && !with(1.0 - 1e-4));
        }
    }
}

#[test]
fn weights_too_light_say_what_could_be_reached() {
    let heavy = UnbalanceVector::new(gmm(500.0), deg(40.0));
    let found =
        BalanceWeights::new(heavy, 2, Mass::new::<gram>(4.0), mm(54.0)).solve().expect("weights");
    assert!(!found.reached);
    assert_eq!(
        found.says(),
        "out of reach: 500 g mm to balance, the weights reach 432 g mm; at 220°, 220° 68 g mm are left; \
         weights of 4.63 g each would reach"
    );
}

// --- Trial runs ------------------------------------------------------------

/// Case F06.
#[test]
fn one_trial_with_phase_is_enough() {
    let trial = UnbalanceVector::new(Unbalance::new::<kilogram_meter>(2e-4), rad(PI / 6.0));
    let found = influence_coefficient((4.2, rad(1.099557429)), (5.1, rad(2.059488517)), trial)
        .expect("readings");
    near(kgm(found.correction.amount), 1.923149424e-4, 1e-9);
    near(found.correction.angle.get::<radian>(), 1.798232847, 1e-9);
    near(kgm(found.original.amount), 1.923149424e-4, 1e-9);
    // The case has metres a second and kg m; here mm/s and g mm: 1000 / 1e6.
    near(found.influence.size * 1e3, 21.83917665, 1e-9);
    assert!(!found.weak);
    // The coefficient alone does it the next time.
    let again = found.influence.correction(4.2, rad(1.099557429)).expect("a reading");
    near(kgm(again.amount), 1.923149424e-4, 1e-9);
}

/// Case F07, the readings of a published example.
#[test]
fn three_trials_without_phase_give_an_answer_and_how_badly_they_agree() {
    let run = |reading, angle| TrialRun { reading, angle: rad(angle) };
    let runs = [run(7.0, 0.0), run(12.0, 2.094395102), run(18.0, 4.188790205)];
    let found = trial_runs(10.0, &runs, gmm(50.0)).expect("readings");
    near(found.candidates[0].amount.get::<gram_millimeter>(), 58.78963513, 1e-9);
    near(found.candidates[0].angle.get::<radian>(), 3.841786211, 1e-9);
    near(found.corrections[0].angle.get::<radian>(), 0.7001935578, 1e-9);
    near(found.quality.expect("three"), -0.05184308466, 1e-8);
    assert!(found.doubtful);
}

/// Case F08: two trials leave two answers.
#[test]
fn two_trials_leave_two_answers() {
    let run = |reading, angle| TrialRun { reading, angle: rad(angle) };
    let runs = [run(1.447728757e-3, 0.0), run(1.714226519e-3, 2.094395102)];
    let trial = Unbalance::new::<kilogram_meter>(1e-4);
    let found = trial_runs(1.04e-3, &runs, trial).expect("readings");
    let wanted = [(5.713862146e-5, 4.059928359), (1.3e-4, 1.343903524)];
    assert_eq!(found.candidates.len(), 2);
    for (found, (amount, angle)) in found.candidates.iter().zip(wanted) {
        near(kgm(found.amount), amount, 1e-8);
        near(found.angle.get::<radian>(), angle, 1e-8);
    }
    assert_eq!((found.quality, found.fitted, found.doubtful), (None, None, false));
}

/// Reading of a rotor with an unbalance and a trial weight, so many for each kg m.
fn reading(sensitivity: f64, heavy: (f64, f64), trial: f64, angle: f64) -> f64 {
    let x = heavy.0 * heavy.1.cos() + trial * angle.cos();
    let y = heavy.0 * heavy.1.sin() + trial * angle.sin();
    sensitivity * x.hypot(y)
}

proptest! {
    #![proptest_config(cases(300))]

    #[test]
    fn trial_runs_find_the_unbalance_that_made_the_readings(
        amount in 0.2..5.0_f64,
        angle in 0.0..TAU,
        trial in 0.3..3.0_f64,
        sensitivity in 0.01..1e4_f64,
        first in 0.0..TAU,
        count in 2..7_usize,
    ) {
        let heavy = (amount * 1e-4, angle);
        let trial = trial * 1e-4;
        let base = reading(sensitivity, heavy, 0.0, 0.0);
        let runs: Vec<_> = (0..count)
            .map(|at| first + at as f64 * TAU / if count == 2 { 3.0 } else { count as f64 })
            .map(|angle| TrialRun { reading: reading(sensitivity, heavy, trial, angle), angle: rad(angle) })
            .collect();
        let found = trial_runs(base, &runs, Unbalance::new::<kilogram_meter>(trial)).expect("readings");
        let off = |vector: UnbalanceVector| {
            let (sin, cos) = vector.angle.get::<radian>().sin_cos();
            let [x, y] = [cos, sin].map(|part| part * kgm(vector.amount));
            (x - heavy.0 * heavy.1.cos()).hypot(y - heavy.0 * heavy.1.sin()) / heavy.0
        };
        let best = found.candidates.iter().map(|heavy| off(*heavy)).fold(f64::INFINITY, f64::min);
        // Where the two answers meet, the root of a tiny number costs half of the figures.
        prop_assert!(best < if count == 2 { 1e-5 } else { 1e-8 }, "{best} {found:?}");
        if count > 2 {
            prop_assert!(off(found.fitted.expect("fitted")) < 1e-7, "{found:?}");
            prop_assert!(found.quality.expect("checked").abs() < 1e-8 && !found.doubtful);
        }
        for (heavy, light) in found.candidates.iter().zip(&found.corrections) {
            prop_assert!(kgm(heavy.with(*light).amount) < 1e-12 * kgm(heavy.amount));
        }
    }

    #[test]
    fn one_trial_with_phase_finds_it_too(
        heavy in (0.2..5.0_f64, 0.0..TAU),
        trial in (0.3..3.0_f64, 0.0..TAU),
        influence in (0.01..100.0_f64, 0.0..TAU),
    ) {
        let seen = |x: f64, y: f64| {
            (influence.0 * x.hypot(y), rad(y.atan2(x) + influence.1))
        };
        let part = |(size, angle): (f64, f64)| [size * angle.cos(), size * angle.sin()];
        let ([a, b], [c, d]) = (part(heavy), part(trial));
        let vector = UnbalanceVector::new(gmm(trial.0), rad(trial.1));
        let found = influence_coefficient(seen(a, b), seen(a + c, b + d), vector).expect("readings");
        let left = found.correction.with(UnbalanceVector::new(gmm(heavy.0), rad(heavy.1)));
        prop_assert!(left.amount.get::<gram_millimeter>() < 1e-9 * heavy.0, "{found:?}");
        prop_assert!((found.influence.size / influence.0 - 1.0).abs() < 1e-9);
        prop_assert_eq!(found.weak, trial.0 < 0.25 * heavy.0);
    }
}

// --- Bad input and workings ------------------------------------------------

#[test]
fn what_makes_no_sense_is_told() {
    let rotor = Balance::new(kg(2.0), rpm(2850.0));
    told(Balance::new(kg(0.0), rpm(2850.0)).solve(), "out-of-range", &["`mass`", "0 kg"]);
    told(Balance::new(kg(2.0), rpm(-1.0)).solve(), "out-of-range", &["`speed`", "-1 rpm"]);
    told(rotor.with_grade(g(0.0)).solve(), "out-of-range", &["`grade`", "G2.5"]);
    told(rotor.with_unbalance(gmm(-1.0)).solve(), "out-of-range", &["`unbalance`", "-1 g mm"]);
    told(rotor.with_unbalance(gmm(f64::NAN)).solve(), "not-finite", &["`unbalance`"]);
    told(rotor.with_radius(mm(0.0)).solve(), "out-of-range", &["`radius`"]);

    told(unbalance(&[]), "missing", &["`spots`", "nothing to add up"]);
    told(HeavySpot::clearance(kg(1.0), mm(-0.1)), "out-of-range", &["`clearance`", "-0.1 mm"]);
    let steel = density(7850.0);
    let wide = HeavySpot::hub_slot(mm(22.0), mm(22.0), mm(2.0), mm(20.0), steel);
    told(wide, "out-of-range", &["`width`", "22"]);
    let shallow = HeavySpot::shaft_slot(mm(22.0), mm(8.0), mm(0.5), mm(20.0), steel);
    told(shallow, "out-of-range", &["`depth`", "0.5 mm", "not above 0.753 mm"]);
    let light = HeavySpot::hole(mm(5.0), mm(8.0), mm(20.0), density(0.0));
    told(light, "out-of-range", &["`density`"]);

    let truing =
        |hole, e| Truing::new(mm(200.0), mm(hole), mm(20.0), density(2250.0), mm(e)).solve();
    told(truing(200.0, 0.05), "out-of-range", &["`hole`", "200 mm"]);
    told(truing(32.0, 42.0), "out-of-range", &["`eccentricity`", "42 mm"]);
    told(truing(32.0, -0.1), "out-of-range", &["`eccentricity`", "-0.1 mm"]);
    assert!(truing(32.0, 0.0).is_ok());

    let heavy = UnbalanceVector::new(gmm(100.0), deg(0.0));
    let ring = |count, grams| BalanceWeights::new(heavy, count, Mass::new::<gram>(grams), mm(54.0));
    told(ring(4, 5.0).solve(), "out-of-range", &["`count`", "is 4", "not 2 or 3"]);
    told(ring(2, 0.0).solve(), "out-of-range", &["`weight`"]);
    told(ring(2, 5.0).with_stuck(deg(f64::NAN)).solve(), "not-finite", &["`stuck_at`"]);
}

#[test]
fn readings_that_no_unbalance_gives_are_told() {
    let run = |reading, at| TrialRun { reading, angle: deg(at) };
    let trial = gmm(50.0);
    let three = |a, b, c| trial_runs(10.0, &[run(a, 0.0), run(b, 120.0), run(c, 240.0)], trial);
    told(trial_runs(0.0, &[], trial), "out-of-range", &["`baseline`", "not above 0"]);
    told(three(0.0, 0.0, 0.0), "out-of-range", &["`trials`", "zero in every run"]);
    told(three(-1.0, 2.0, 3.0), "out-of-range", &["`trials`", "-1"]);
    // Less vibration with the weight wherever it is.
    told(three(9.0, 9.5, 8.0), "out-of-range", &["`trials`", "contradict", "baseline"]);
    told(three(12.0, 12.0, 12.0), "out-of-range", &["`trials`", "contradict", "alike"]);
    told(trial_runs(10.0, &[run(7.0, 0.0)], trial), "out-of-range", &["`trials`", "fewer than 2"]);
    let near = [run(7.0, 0.0), run(12.0, 0.0), run(18.0, 0.0)];
    told(trial_runs(10.0, &near, trial), "out-of-range", &["`trials`", "too near"]);
    told(trial_runs(10.0, &near[..2], trial), "out-of-range", &["`trials`", "too near"]);
    let far = [run(40.0, 0.0), run(1.0, 120.0)];
    told(trial_runs(10.0, &far, trial), "out-of-range", &["`trials`", "contradict"]);
    told(
        three(7.0, 12.0, 18.0).and(trial_runs(10.0, &near, gmm(0.0))),
        "out-of-range",
        &["`trial`"],
    );

    let one = UnbalanceVector::new(trial, deg(0.0));
    let same = influence_coefficient((4.0, deg(10.0)), (4.0, deg(10.0)), one);
    told(same, "out-of-range", &["`with_trial`", "did nothing"]);
    let zero = influence_coefficient((0.0, deg(10.0)), (4.0, deg(10.0)), one);
    told(zero, "out-of-range", &["`baseline`", "not above 0"]);
}

#[test]
fn a_working_ends_with_the_result_bit_for_bit() {
    let last = |working: hubwright::working::Working| working.steps.last().expect("steps").result;
    let rotor = Balance::new(kg(3.0), rpm(2850.0)).with_unbalance(gmm(30.0));
    let found = rotor.with_grade(g(2.5)).solve().expect("a rotor");
    let allowed = found.permissible.expect("a grade");
    assert_eq!(last(found.working()), allowed.get::<gram_millimeter>());
    let found = rotor.solve().expect("a rotor");
    assert_eq!(last(found.working()), found.reached.expect("it has some").get::<grade_number>());
    let empty = Balance::new(kg(3.0), rpm(2850.0)).solve().expect("a rotor");
    assert!(empty.working().steps.is_empty());

    let slot = HeavySpot::hub_slot(mm(22.0), mm(4.0), mm(1.8), mm(18.0), density(7850.0));
    let slot = slot.expect("a slot").at(deg(10.0)).expect("an angle");
    let loose = HeavySpot::clearance(kg(1.0), mm(0.02)).expect("a clearance");
    let found = unbalance(&[slot, loose]).expect("two");
    assert_eq!(last(found.working()), found.greatest.get::<gram_millimeter>());
    assert_eq!(found.working().steps.len(), 4);

    let wheel = Truing::new(mm(200.0), mm(32.0), mm(20.0), density(2250.0), mm(0.06));
    let found = wheel.solve().expect("a wheel");
    assert_eq!(last(found.working()), found.after.get::<gram_millimeter>());

    let heavy = UnbalanceVector::new(gmm(900.0), deg(40.0));
    let ring = BalanceWeights::new(heavy, 3, Mass::new::<gram>(5.0), mm(54.0));
    for asked in [ring, ring.with_stuck(deg(12.0))] {
        let found = asked.solve().expect("weights");
        assert_eq!(last(found.working()), found.residual.get::<gram_millimeter>());
    }

    let one = UnbalanceVector::new(gmm(50.0), deg(0.0));
    let found = influence_coefficient((4.0, deg(10.0)), (4.4, deg(50.0)), one).expect("readings");
    assert_eq!(last(found.working()), found.correction.amount.get::<gram_millimeter>());
    let run = |reading, at| TrialRun { reading, angle: deg(at) };
    let runs = [run(7.0, 0.0), run(12.0, 120.0), run(18.0, 240.0)];
    for runs in [&runs[..2], &runs[..]] {
        let found = trial_runs(10.0, runs, gmm(50.0)).expect("readings");
        let amount = found.candidates.last().expect("one").amount;
        assert_eq!(last(found.working()), amount.get::<gram_millimeter>());
    }
}
