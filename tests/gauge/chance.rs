//! Distributions, budgets and decisions.

use hubwright::gauge::{GuardBand, Influence, Limits, Ruling, Spread, budget, chances, decide};
use hubwright::solid::chance::{coverage, normal, normal_quantile};
use hubwright::units::{Length, meter, micrometer, millimeter};
use proptest::prelude::*;

use crate::{deg, ends_in, mm, near, told, um};

#[test]
fn the_normal_distribution_is_the_tabulated_one() {
    // Abramowitz and Stegun, table 26.1, from memory; SciPy holds the rest in the Python tests.
    for (z, share) in [
        (0.0, 0.5),
        (0.5, 0.691_462_461_274_013),
        (1.0, 0.841_344_746_068_543),
        (1.96, 0.975_002_104_851_780),
        (3.0, 0.998_650_101_968_370),
        (-4.0, 3.167_124_183_311_99e-5),
        (-6.0, 9.865_876_450_376_98e-10),
    ] {
        near(normal(z), share, 1e-13);
    }
    near(normal_quantile(0.95), 1.644_853_626_951_472, 1e-14);
    near(normal_quantile(0.975), 1.959_963_984_540_054, 1e-14);
    assert!(normal(f64::NAN).is_nan() && normal_quantile(1.0).is_nan());
    assert_eq!([normal(-40.0), normal(40.0)], [0.0, 1.0]);
}

#[test]
fn coverage_factors_are_those_of_the_guide() {
    // JCGM 100, table G.2, the column of 95.45 %, from memory, printed to two decimals.
    for (dof, factor) in [
        (1.0, 13.97),
        (2.0, 4.53),
        (3.0, 3.31),
        (4.0, 2.87),
        (5.0, 2.65),
        (7.0, 2.43),
        (10.0, 2.28),
        (20.0, 2.13),
        (50.0, 2.05),
        (100.0, 2.025),
    ] {
        assert!((coverage(2.0, dof) - factor).abs() < 0.0051, "{dof}: {}", coverage(2.0, dof));
    }
    // And of 99.73 %.
    for (dof, factor) in [(1.0, 235.80), (2.0, 19.21), (4.0, 6.62), (10.0, 3.96), (50.0, 3.16)] {
        assert!((coverage(3.0, dof) - factor).abs() < 0.0051, "{dof}: {}", coverage(3.0, dof));
    }
    assert_eq!(coverage(2.0, f64::INFINITY), 2.0);
}

#[test]
fn a_budget_of_a_diameter_comes_out() {
    // 0.1 m of steel, 1.15e-5/K, within 1 K: a half width of 1.15 um. Five repeats of 0.6 um.
    let found = budget(&[
        Influence::new("repeat", Spread::Normal, um(0.6 / 5.0_f64.sqrt())).with_dof(4.0),
        Influence::new("gauge", Spread::Normal, um(0.4)),
        Influence::new("temperature", Spread::Uniform, um(1.15)),
        Influence::new("resolution", Spread::Uniform, um(0.5)),
    ])
    .expect("a budget");
    // Root sum of squares and Welch-Satterthwaite, worked out apart.
    let parts = [0.268_328_157_3, 0.4, 0.663_952_809_6, 0.288_675_134_6];
    for (influence, part) in found.influences.iter().zip(parts) {
        near(influence.standard().get::<micrometer>(), part, 1e-9);
    }
    near(found.standard.get::<micrometer>(), 0.869_578_441_9, 1e-9);
    near(found.dof, 441.194_465_9, 1e-9);
    near(2.0 * found.standard.get::<micrometer>(), 1.739_156_884, 1e-9);
    // Student's distribution asks for a little more than 2.
    assert!(found.coverage > 2.004 && found.coverage < 2.007, "{}", found.coverage);
    ends_in(&found.working(), found.expanded.get::<micrometer>());
    near(
        Influence::new("", Spread::Triangular, um(6.0_f64.sqrt())).standard().get::<micrometer>(),
        1.0,
        1e-14,
    );
    near(
        Influence::new("", Spread::UShaped, um(2.0_f64.sqrt())).standard().get::<micrometer>(),
        1.0,
        1e-14,
    );
    told(budget(&[]), "missing", &["`influences`"]);
    told(
        budget(&[Influence::new("", Spread::Normal, um(-1.0))]),
        "out-of-range",
        &["`size`", "below 0"],
    );
    told(
        budget(&[Influence::new("", Spread::Normal, um(1.0)).with_dof(0.0)]),
        "out-of-range",
        &["`dof`"],
    );
}

fn limits() -> Limits<Length> {
    Limits::new(Some(mm(25.0)), Some(mm(25.013)))
}

#[test]
fn zones_are_those_of_both_guard_bands() {
    let found = decide(mm(25.0118), um(0.9), limits(), GuardBand::OneSided).expect("a decision");
    near(found.factor, 1.644_853_627, 1e-9);
    let metres = |limit: Option<Length>| limit.expect("a limit").get::<meter>();
    near(metres(found.accept.low), 0.025_001_480_37, 1e-9);
    near(metres(found.accept.high), 0.025_011_519_63, 1e-9);
    near(metres(found.reject.high), 0.025_014_480_37, 1e-9);
    near(metres(found.reject.low), 0.024_998_519_63, 1e-9);
    near(found.chance_within, 0.908_788_780_3, 1e-9);
    assert_eq!(found.ruling, Ruling::CantTell);
    ends_in(&found.working(), found.chance_within);
    let full = decide(mm(25.0118), um(0.9), limits(), GuardBand::Full).expect("a decision");
    near(metres(full.accept.high), 0.025_011_2, 1e-12);
    assert_eq!(full.ruling, Ruling::CantTell);
    // On the edge of the zone is within, a nanometre further is not.
    let at =
        |size| decide(mm(size), um(0.9), limits(), GuardBand::Full).expect("a decision").ruling;
    assert_eq!(at(25.0112), Ruling::Within);
    assert_eq!(at(25.011_201), Ruling::CantTell);
    assert_eq!(at(25.0018), Ruling::Within);
    assert_eq!(at(25.001_799), Ruling::CantTell);
    assert_eq!(at(25.014_8), Ruling::CantTell);
    assert_eq!(at(25.014_801), Ruling::Outside);
    assert_eq!(at(24.998_199), Ruling::Outside);
}

#[test]
fn close_limits_have_a_zone_where_both_sides_count_or_none() {
    // 4.2 u apart: at the middle 96.4 % lie within, so that there is a zone, a narrow one.
    let close = Limits::new(Some(um(0.0)), Some(um(4.2)));
    let found = decide(um(2.1), um(1.0), close, GuardBand::OneSided).expect("a decision");
    assert_eq!(found.ruling, Ruling::Within);
    let edge = found.accept.low.expect("a zone").get::<micrometer>();
    // Simple one-sided guard bands would begin at 1.645.
    assert!(edge > 1.66 && edge < 2.1, "{edge}");
    near(normal(4.2 - edge) - normal(-edge), 0.95, 1e-9);
    let closer = Limits::new(Some(um(0.0)), Some(um(3.9)));
    let found = decide(um(1.95), um(1.0), closer, GuardBand::OneSided).expect("a decision");
    assert_eq!((found.ruling, found.accept.low), (Ruling::CantTell, None));
    let found = decide(um(1.95), um(1.0), closer, GuardBand::Full).expect("a decision");
    assert_eq!((found.ruling, found.accept.low), (Ruling::CantTell, None));
}

#[test]
fn angles_are_judged_as_well_and_one_limit_will_do() {
    let limits = Limits::new(None, Some(deg(0.05)));
    let at =
        |angle| decide(deg(angle), deg(0.005), limits, GuardBand::Full).expect("a decision").ruling;
    assert_eq!(
        [at(0.0399), at(0.0401), at(0.0599), at(0.0601)],
        [Ruling::Within, Ruling::CantTell, Ruling::CantTell, Ruling::Outside]
    );
    told(
        decide(deg(0.0), deg(0.1), Limits::new(None, None), GuardBand::Full),
        "missing",
        &["`low`"],
    );
    told(
        decide(deg(0.0), deg(0.0), limits, GuardBand::Full),
        "out-of-range",
        &["`u`", "not above 0"],
    );
    let backwards = Limits::new(Some(mm(2.0)), Some(mm(1.0)));
    told(
        decide(mm(0.0), um(1.0), backwards, GuardBand::Full),
        "out-of-range",
        &["`high`", "not above low"],
    );
}

#[test]
fn false_verdicts_are_as_frequent_as_a_joint_normal_distribution_says() {
    // By quadrature of the joint distribution elsewhere, and by 4 million draws within 2e-4.
    let found =
        chances([mm(25.0065), um(3.2)], um(0.9), limits(), GuardBand::OneSided).expect("chances");
    near(found.false_accept, 0.000_485_931_359_6, 1e-5);
    near(found.false_reject, 0.089_287_498_51, 1e-5);
    near(found.accepted, 0.868_968_792_2, 1e-5);
    let none = Limits::new(Some(um(0.0)), Some(um(2.0)));
    let found = chances([um(1.0), um(1.0)], um(1.0), none, GuardBand::OneSided).expect("chances");
    assert_eq!((found.false_accept, found.accepted), (0.0, 0.0));
    near(found.false_reject, normal(1.0) - normal(-1.0), 1e-12);
    told(
        chances([um(1.0), um(0.0)], um(1.0), none, GuardBand::Full),
        "out-of-range",
        &["`process_spread`"],
    );
}

proptest! {
    #![proptest_config(crate::config())]

    #[test]
    fn quantile_and_distribution_undo_each_other(z in -8.0..8.0_f64) {
        // Near 1 a share holds few digits of z.
        let back = normal_quantile(normal(-z.abs()));
        prop_assert!((back + z.abs()).abs() < 1e-10, "{z}: {back}");
    }

    #[test]
    fn a_value_that_is_within_stays_so_when_it_is_measured_better(
        at in 0.0..10.0_f64, u in 0.05..3.0_f64, better in 0.1..1.0_f64, full in any::<bool>(),
    ) {
        let guard = if full { GuardBand::Full } else { GuardBand::OneSided };
        let limits = Limits::new(Some(mm(0.0)), Some(mm(10.0)));
        let of = |u| decide(mm(at), mm(u), limits, guard).expect("a decision").ruling;
        if of(u) == Ruling::Within {
            prop_assert_eq!(of(u * better), Ruling::Within);
        }
        let found = decide(mm(at), mm(u), limits, guard).expect("a decision");
        prop_assert!(found.measured.get::<millimeter>() >= 0.0);
        if guard == GuardBand::OneSided && found.ruling == Ruling::Within {
            prop_assert!(found.chance_within >= 0.95 - 1e-6);
        }
    }
}
