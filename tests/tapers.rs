//! Tapers by name and number against printed tables, typed a second time.
//!
//! Nothing expected here was read off the program: the CSV files name the print they were
//! read in, other figures are named where they stand.

use hubwright::joint::{Taper, degrees_minutes_seconds, finest_grade, taper, taper_grade};
use hubwright::source::Status;
use hubwright::tables::tapers::grades::STEPS;
use hubwright::tables::tapers::machine::MACHINE;
use hubwright::tables::tapers::{Defined, STANDARD};
use hubwright::units::{Angle, Exact, Length, degree, inch, micrometer, millimeter, radian};
use proptest::prelude::*;
use proptest::test_runner::FileFailurePersistence;

fn rows(file: &'static str) -> Vec<Vec<&'static str>> {
    let lines = file.lines().filter(|line| !line.starts_with('#') && !line.trim().is_empty());
    lines.skip(1).map(|line| line.split(',').collect()).collect()
}

fn figure(printed: &str) -> f64 {
    printed.parse().unwrap_or_else(|_| panic!("a number: {printed:?}"))
}

fn mm(size: f64) -> Length {
    Length::new::<millimeter>(size)
}

/// Degrees from degrees, minutes and seconds with spaces between.
fn sexagesimal(printed: &str) -> f64 {
    printed.split_whitespace().zip([1.0, 60.0, 3600.0]).map(|(part, of)| figure(part) / of).sum()
}

#[test]
fn cone_angles_are_those_of_the_table_to_a_ten_millionth_of_a_degree() {
    let printed = rows(include_str!("reference/tapers_cones.csv"));
    let mut of_the_table = 0;
    for row in &printed {
        let [name, degrees, dms, per_foot] = row[..] else { panic!("four columns: {row:?}") };
        let found = taper(name).expect(name);
        let cone = found.cone_angle().get::<degree>();
        assert!((cone - figure(degrees)).abs() <= 1e-7, "{name}: {cone}");
        assert!((found.half_angle.get::<degree>() - figure(degrees) / 2.0).abs() <= 1e-7, "{name}");
        // Seconds are printed to a ten thousandth.
        assert!((cone - sexagesimal(dms)).abs() * 3600.0 <= 0.51e-4, "{name}: {cone} is not {dms}");
        assert!((found.in_per_ft() / figure(per_foot) - 1.0).abs() < 1e-5, "{name}: {per_foot}");
        of_the_table += usize::from(found.source.key == "gost53440");
    }
    assert_eq!((printed.len(), of_the_table), (23, 21));
    assert_eq!(taper("7:24").expect("the steep taper").source.status, Status::Memory);
}

#[test]
fn tapers_per_foot_have_the_angles_of_their_table() {
    for row in rows(include_str!("reference/tapers_per_foot.csv")) {
        let [per_foot, included, half] = row[..] else { panic!("three columns: {row:?}") };
        let found = taper(&format!("{per_foot} in/ft")).expect(per_foot);
        // Some of the printed angles are up to three and a half seconds too small.
        let off =
            |found: Angle, printed| (found.get::<degree>() - sexagesimal(printed)).abs() * 3600.0;
        assert!(off(found.cone_angle(), included) < 3.5, "{per_foot}");
        assert!(off(found.half_angle, half) < 2.0, "{per_foot}");
    }
}

#[test]
fn numbered_tapers_are_what_was_read_a_second_time() {
    let printed = rows(include_str!("reference/tapers_machine.csv"));
    assert_eq!(printed.len(), MACHINE.len());
    let maybe = |cell: &str| (!cell.is_empty()).then(|| figure(cell));
    for (row, machine) in printed.iter().zip(&MACHINE) {
        let [series, number, large, small, length, per_foot, half] = row[..] else {
            panic!("{row:?}")
        };
        let name = format!("{series} {number}");
        assert_eq!(name, format!("{} {}", machine.series, machine.number));
        assert!((machine.large - figure(large)).abs() < 1e-5, "{name}");
        assert_eq!(machine.small, maybe(small), "{name}");
        assert_eq!(machine.length, maybe(length), "{name}");
        assert_eq!(machine.per_foot, figure(per_foot), "{name}");
        let found = taper(&name).expect(&name);
        assert_eq!(found.machine, Some(machine), "{name}");
        assert!((found.half_angle.get::<degree>() - figure(half)).abs() < 0.6e-5, "{name}");
        // The sizes make the taper, as far as they are rounded.
        if let (Some(small), Some(length)) = (machine.small, machine.length) {
            let by_sizes = 12.0 * (machine.large - small) / length;
            assert!((by_sizes - machine.per_foot).abs() < 0.0035, "{name}: {by_sizes}");
        }
    }
}

#[test]
fn grades_are_what_was_recalled_and_say_so() {
    let recalled = rows(include_str!("reference/cone_grades.csv"));
    assert_eq!(recalled.len(), 120);
    for row in recalled {
        let [grade, over, up_to, urad] = row[..] else { panic!("four columns: {row:?}") };
        assert!(STEPS.contains(&figure(up_to)));
        for length in [figure(over) + 0.001, figure(up_to)] {
            let found = taper_grade(figure(grade) as u8, mm(length)).expect("a grade");
            assert!(
                (found.cone_angle.get::<radian>() * 1e6 - figure(urad)).abs() < 1e-9,
                "{row:?}"
            );
            let on_diameter = figure(urad) * length / 1000.0;
            assert!((found.on_diameter.get::<micrometer>() - on_diameter).abs() < 1e-9);
            assert_eq!(found.source.status, Status::Memory);
            assert!(!found.source.status.may_refuse());
        }
    }
    // An error on the limit of AT7 has AT7, and a little more has AT8.
    let of = |urad: f64| {
        let found = finest_grade(Angle::new::<radian>(urad / 1e6), mm(50.0)).expect("a length");
        found.map(|found| found.grade)
    };
    assert_eq!([of(315.0), of(-315.0), of(315.1), of(0.0)], [Some(7), Some(7), Some(8), Some(1)]);
    assert_eq!(of(3151.0), None, "beyond AT12");
}

#[test]
fn a_taper_is_read_as_people_write_it() {
    let same = [
        (
            "1:5",
            vec![
                "1 : 5",
                "1/5",
                "2.4 in/ft",
                "2.4 in per ft",
                "20 %",
                "0.2 in/in",
                "0.2 mm/mm",
                "200 mm/m",
                "2-2/5 in/ft",
            ],
        ),
        (
            "7/24",
            vec![
                "7:24",
                "3.5 in/ft",
                "3-1/2 in per foot",
                "3.5 inches per foot",
                "steep 40",
                "ISO 40",
            ],
        ),
        (
            "90 deg included",
            vec!["1:0.5", "45 deg half", "45 ° per side", "1.5707963267948966 rad included"],
        ),
        (
            "8 deg 30 min included",
            vec!["8.5 deg included", "4.25 deg half angle", "4° 15' half", "8°30'0\" cone angle"],
        ),
        ("Morse 3", vec!["MT3", "mt 3", "Morse No. 3", "morse taper 3", "0.6024 in/ft"]),
        ("Morse 4-1/2", vec!["MT 4 1/2"]),
        ("Brown & Sharpe 9", vec!["B&S 9", "B&S9", "brown and sharpe 9"]),
        ("Jarno 8", vec!["jarno 8", "1:20", "metric 80", "0.6 in/ft"]),
        ("Jacobs 33", vec!["JT33"]),
        ("Jacobs 2 short", vec!["JT 2 short"]),
    ];
    for (name, others) in same {
        let found = taper(name).expect(name);
        for other in others {
            let also = taper(other).unwrap_or_else(|error| panic!("{other}: {error}"));
            let off = (also.half_angle - found.half_angle).get::<degree>().abs();
            assert!(off < 1e-12, "{other} is not {name}: {off}");
        }
    }
}

#[test]
fn what_is_no_taper_is_told_why() {
    for (text, code, holds) in [
        ("8.5 deg", "not-a-quantity", "included or the half angle"),
        ("8°30'", "not-a-quantity", "included or the half angle"),
        ("1,5:10", "not-a-quantity", "neither a ratio"),
        ("2,4 in/ft", "not-a-quantity", "comma"),
        ("1/4 mm/mm", "not-a-quantity", "fractions"),
        ("about three", "not-a-quantity", "neither"),
        ("", "not-a-quantity", "neither"),
        ("Morse", "not-a-quantity", "neither"),
        ("Morse 9", "unknown-word", "Morse 0, 1, 2"),
        ("B&S 21", "unknown-word", "Brown & Sharpe 1"),
        ("1:0", "out-of-range", "not above 0"),
        ("0:5", "out-of-range", "not above 0"),
        ("-1:5", "out-of-range", "not above 0"),
        ("1:100000", "out-of-range", "a cylinder"),
        ("0 deg included", "out-of-range", "not above 0"),
        ("150 deg included", "out-of-range", "a plate"),
        ("400 deg included", "out-of-range", "a plate"),
        ("10:1", "out-of-range", "a plate"),
        ("8 deg 75 min included", "not-a-quantity", "under 60"),
        ("8 deg 30 included", "not-a-quantity", "follows the angle"),
        ("8 included", "not-a-quantity", "no degrees"),
        ("3 mm/ft", "not-a-quantity", "neither"),
        ("NaN:5", "not-a-quantity", "neither"),
    ] {
        let error = taper(text).expect_err(text);
        assert_eq!(error.code(), code, "{text}: {error}");
        let told = error.to_string();
        assert!(told.contains(holds) && told.contains("\nhint: "), "{text}: {told}");
        assert!(
            !told.contains("invalid") && !told.lines().next().unwrap_or_default().ends_with('.')
        );
    }
}

#[test]
fn diameters_and_shifts_follow_the_taper() {
    // common arithmetic of the trade: 1:4 and 0.02 mm are 0.08 mm, 1:20 and 0.01 mm are 0.2 mm.
    let shift = |name: &str, change: f64| {
        taper(name).expect(name).axial_shift(mm(change)).expect("a number").get::<millimeter>()
    };
    assert!((shift("1:4", 0.02) - 0.08).abs() < 1e-12);
    assert!((shift("1:20", 0.01) - 0.2).abs() < 1e-12);
    let morse = taper("MT 2").expect("a number");
    let large =
        morse.diameter_at(Length::new::<inch>(0.572), Length::new::<inch>(2.56)).expect("a plane");
    assert!((large.get::<inch>() - 0.7).abs() < 2e-4);
    let error =
        taper("1:4").and_then(|t| t.diameter_at(mm(10.0), mm(-40.0))).expect_err("the apex");
    assert!(error.to_string().contains("apex"), "{error}");
    assert!(taper("1:4").and_then(|t| t.diameter_at(mm(0.0), mm(1.0))).is_err());
    assert!(taper("1:4").and_then(|t| t.axial_shift(mm(f64::NAN))).is_err());
}

#[test]
fn the_last_step_of_a_working_is_the_cone_angle() {
    for name in ["1:5", "120 deg included", "Morse 3", "3 in/ft"] {
        let found = taper(name).expect(name);
        let working = found.working();
        let last = working.steps.last().expect("steps");
        assert_eq!(last.result, found.cone_angle().get::<degree>(), "{name}");
        assert!(working.to_string().contains("in/ft"));
    }
}

#[test]
fn angles_are_printed_as_a_table_prints_them() {
    let of = |degrees: f64| degrees_minutes_seconds(Angle::new::<degree>(degrees));
    assert_eq!(of(14.250_032_7), "14° 15' 0.1\"");
    // No sixty seconds.
    assert_eq!(of(2.0 - 1e-9), "2° 0' 0.0\"");
    assert_eq!(of(-0.5), "-0° 30' 0.0\"");
}

#[test]
fn standard_tapers_are_listed_with_their_names() {
    let all: Vec<_> = Taper::standard().collect();
    assert_eq!(all.len(), STANDARD.len());
    for (name, standard) in all {
        let found = taper(name).expect(name);
        assert_eq!(found.half_angle, standard.half_angle, "{name}");
    }
}

fn config() -> ProptestConfig {
    ProptestConfig {
        failure_persistence: Some(Box::new(FileFailurePersistence::Direct(
            "tests/tapers.proptest-regressions",
        ))),
        ..ProptestConfig::default()
    }
}

proptest! {
    #![proptest_config(config())]

    #[test]
    fn every_way_to_say_how_steep_agrees(x in 0.5..2000.0_f64, d in 5.0..200.0_f64, away in 0.0..100.0_f64) {
        let found = Taper::of_ratio(1.0, x).expect("a taper");
        prop_assert!((found.one_in() / x - 1.0).abs() < 1e-12);
        prop_assert!((found.in_per_ft() - 12.0 / x).abs() < 1e-10);
        let again = Taper::of_included(found.cone_angle()).expect("a taper");
        prop_assert!((again.per_side / found.per_side - 1.0).abs() < 1e-12);
        prop_assert!(matches!(again.defined, Defined::Included(_)));
        // There and back.
        let there = found.diameter_at(mm(d), mm(away)).expect("a plane");
        let back = found.diameter_at(there, mm(-away)).expect("a plane");
        prop_assert_eq!(back.exact(), mm(d).exact());
        prop_assert_eq!(found.axial_shift(there - mm(d)).expect("a shift").exact(), mm(away).exact());
    }

    #[test]
    fn no_text_makes_it_stumble(text in "\\PC{0,24}") {
        let _ = taper(&text);
    }
}
