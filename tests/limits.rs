//! Limits and fits against printed tables, typed a second time, and against
//! what the standard says must hold between its own figures.
//!
//! Nothing expected here was read off the program: the CSV files name the print
//! they were read in, and other figures name it where they stand.

use std::collections::BTreeSet;

use hubwright::joint::{
    Class, Feature, Fit, FitBasis, FitKind, Limits, Metal, SizeOutcome, at_20_c,
    deviation_by_formula, fit, fits_for, grade_by_formula, limits, published_expansion,
    tolerance_factor,
};
use hubwright::source::Status;
use hubwright::tables::iso286::deviations::{self, LETTERS, PLACES, Place};
use hubwright::tables::iso286::{NONE, STEPS, SUBSTEPS, grades, step};
use hubwright::units::{
    Exact, Length, Nanometres, TemperatureCoefficient, ThermodynamicTemperature, degree_celsius,
    inch, micrometer, millimeter, per_kelvin,
};
use hubwright::{Error, ErrorKind};
use proptest::prelude::*;
use proptest::test_runner::FileFailurePersistence;

/// Data rows of a reference file, without comments and heading.
fn rows(file: &'static str) -> Vec<Vec<&'static str>> {
    let lines = file.lines().filter(|line| !line.starts_with('#') && !line.trim().is_empty());
    lines.skip(1).map(|line| line.split(',').collect()).collect()
}

/// Micrometres as printed, in whole nm.
fn nm(printed: &str) -> i64 {
    let um: f64 = printed.parse().unwrap_or_else(|_| panic!("a number: {printed:?}"));
    let nm = (um * 1000.0).round();
    assert!((um * 1000.0 - nm).abs() < 1e-6, "{printed} um is not whole in nm");
    nm as i64
}

fn whole(printed: &str) -> i64 {
    printed.parse().unwrap_or_else(|_| panic!("a whole number: {printed:?}"))
}

fn mm(size: f64) -> Length {
    Length::new::<millimeter>(size)
}

fn um(size: f64) -> Length {
    Length::new::<micrometer>(size)
}

const IT: &str = include_str!("reference/iso286_it.csv");
const SHAFTS: &str = include_str!("reference/iso286_shafts.csv");
const HOLES: &str = include_str!("reference/iso286_holes.csv");
const LIMITS: &str = include_str!("reference/iso286_limits.csv");
const FITS: &str = include_str!("reference/iso286_fits.csv");
const EXCEPTIONS: &str = include_str!("reference/iso286_formula_exceptions.csv");

/// Grades as classes spell them, IT01 to IT18.
const GRADES: [&str; 20] = [
    "01", "0", "1", "2", "3", "4", "5", "6", "7", "8", "9", "10", "11", "12", "13", "14", "15",
    "16", "17", "18",
];

/// The printed tolerances by the upper end of the step in mm, in nm, from the reference file.
fn printed_it() -> Vec<(f64, Vec<Option<i64>>)> {
    let cell = |cell: &&str| Some(cell.trim_end_matches('~')).filter(|c| !c.is_empty()).map(nm);
    let row = |row: Vec<&str>| (whole(row[1]) as f64, row[2..].iter().map(cell).collect());
    rows(IT).into_iter().map(row).collect()
}

// --- Double entry ------------------------------------------------------------

#[test]
fn tolerances_are_what_was_read_a_second_time_and_say_which_are_recalled() {
    let printed = rows(IT);
    assert_eq!(printed.len(), STEPS.len());
    let mut cells = 0;
    for (step, row) in printed.iter().enumerate() {
        assert_eq!(STEPS[step], whole(row[1]) * 1_000_000, "upper end of step {step}");
        for (grade, cell) in row[2..].iter().enumerate() {
            let ours = grades::tolerance(step, grade);
            let figure = cell.trim_end_matches('~');
            let theirs = (!figure.is_empty()).then(|| nm(figure));
            assert_eq!(ours, theirs, "IT{} up to {} mm", GRADES[grade], row[1]);
            if theirs.is_some() {
                cells += 1;
                let recalled = grades::source(step, grade).status == Status::Memory;
                assert_eq!(recalled, cell.ends_with('~'), "IT{} up to {}", GRADES[grade], row[1]);
            }
        }
    }
    assert_eq!(cells, 404, "figures in the reference");
}

/// Where a letter of the reference stands in `src/tables`.
fn place(letter: &str) -> Place {
    match letter {
        "j5_j6" => Place::Main(deviations::J5_J6),
        "j7" => Place::Main(deviations::J7),
        "k4_k7" => Place::Main(deviations::K4_K7),
        other => PLACES[LETTERS.iter().position(|l| *l == other).expect("a letter")],
    }
}

#[test]
fn deviations_of_shafts_are_what_was_read_a_second_time() {
    let mut compared = BTreeSet::new();
    let mut figures = 0;
    for row in rows(SHAFTS) {
        let [letter, which, all] = row[..] else { panic!("three columns: {row:?}") };
        let all: Vec<(i64, i64)> = all
            .split(' ')
            .map(|pair| pair.trim_end_matches('!').split_once('=').expect("step=um"))
            .map(|(to, figure)| (whole(to) * 1_000_000, nm(figure)))
            .collect();
        figures += all.len();
        if letter == "k_other" {
            assert!(all.iter().all(|(_, figure)| *figure == 0), "k of other grades");
            continue;
        }
        let upper = which == "es";
        let base = if letter == "k4_k7" || letter == "k" { "k" } else { &letter[..1] };
        assert_eq!(upper, base <= "h", "{letter}: which deviation the figure is");
        for (to, figure) in all {
            assert_eq!(deviations::figure(place(letter), to), Some(figure), "{letter} to {to} nm");
            if let Place::Main(_) = place(letter) {
                // The reference repeats a main step's figure in each of its parts.
                compared.insert((place_key(letter), step(&STEPS, to)));
            } else {
                compared.insert((place_key(letter), step(&SUBSTEPS, to)));
            }
        }
    }
    assert_eq!(figures, 644 + 136, "figures in the reference");
    // Nothing in our tables that the reference lacks.
    let ours = deviations::MAIN.iter().flatten().filter(|nm| **nm != NONE).count()
        + deviations::SPLIT.iter().flatten().filter(|nm| **nm != NONE).count();
    assert_eq!(ours, compared.len(), "figures in src/tables");
}

fn place_key(letter: &str) -> String {
    format!("{:?}", place(letter))
}

#[test]
fn what_holes_add_is_what_was_read_a_second_time() {
    let printed = rows(HOLES);
    assert_eq!((printed.len(), deviations::J.len(), deviations::DELTA.len()), (13, 13, 13));
    for (step, row) in printed.iter().enumerate() {
        assert_eq!(STEPS[step], whole(row[0]) * 1_000_000);
        for (column, cell) in row[1..4].iter().enumerate() {
            assert_eq!(i64::from(deviations::J[step][column]), nm(cell), "J up to {} mm", row[0]);
        }
        for (letter, cell) in ["k4_k7", "m", "n"].iter().zip(&row[4..7]) {
            let shaft = deviations::figure(place(letter), STEPS[step]).expect("up to 500 mm");
            assert_eq!(-shaft, nm(cell), "{letter} of holes up to {} mm", row[0]);
        }
        for (column, cell) in row[7..].iter().enumerate() {
            assert_eq!(i64::from(deviations::DELTA[step][column]), nm(cell), "Δ to {} mm", row[0]);
            // Δ is the grade less the next finer one, but for the first step.
            let it =
                |number| grades::tolerance(step, grades::column(number)).expect("up to 500 mm");
            let (finer, own) = (it(column + 2), it(column + 3));
            let own = if step == 0 { 0 } else { own - finer };
            assert_eq!(nm(cell), own, "Δ of IT{} up to {} mm", column + 3, row[0]);
        }
    }
}

#[test]
fn all_474_printed_limits_come_out() {
    let mut count = 0;
    for row in rows(LIMITS) {
        let [_, class, all] = row[..] else { panic!("three columns: {row:?}") };
        for entry in all.split(' ') {
            let (nominal, deviations) = entry.split_once('=').expect("nominal=upper/lower");
            let (upper, lower) = deviations.split_once('/').expect("upper/lower");
            let found = limits(&format!("{nominal} {class}")).expect("a printed class");
            let ours = (found.upper_nm, found.lower_nm);
            assert_eq!(ours, (nm(upper), nm(lower)), "{nominal} {class}, nm");
            assert_eq!(found.class.to_string(), class);
            count += 1;
        }
    }
    assert_eq!(count, 474);
}

#[test]
fn all_20_printed_fits_come_out() {
    let all = rows(FITS);
    assert_eq!(all.len(), 20);
    for row in all {
        let [nominal, name, hole_upper, hole_lower, upper, lower, most, least, kind] = row[..]
        else {
            panic!("nine columns: {row:?}")
        };
        let found = fit(&format!("{nominal} {name}")).expect("a printed fit");
        let hole = (found.hole.upper_nm, found.hole.lower_nm);
        let shaft = (found.shaft.upper_nm, found.shaft.lower_nm);
        assert_eq!(hole, (nm(hole_upper), nm(hole_lower)), "{nominal} {name}");
        assert_eq!(shaft, (nm(upper), nm(lower)), "{nominal} {name}");
        let clearance = (found.most_clearance_um(), found.least_clearance_um());
        let printed = (most.parse().expect("um"), least.parse().expect("um"));
        assert_eq!(clearance, printed, "{nominal} {name}");
        assert_eq!(found.kind.to_string(), kind, "{nominal} {name}");
    }
}

/// Shigley's Mechanical Engineering Design, 9th edition, examples 7-7; a mould-base
/// maker's technical reference, pp. 287 and 293; Machine Drawing, pp. 219 and 221.
#[test]
fn worked_examples_come_out() {
    let loose = fit("34 H11/c11").expect("example 7-7");
    let sizes = [loose.hole, loose.shaft]
        .map(|part| [part.largest, part.smallest].map(|size| Nanometres::from(size).0 / 1000));
    assert_eq!(sizes, [[34_160, 34_000], [33_880, 33_720]]);
    let deviations = |size: &str| {
        let found = limits(size).expect("a printed class");
        (found.upper_um(), found.lower_um())
    };
    assert_eq!(deviations("60 H7"), (30.0, 0.0));
    assert_eq!(deviations("60 k6"), (21.0, 2.0));
    assert_eq!(deviations("24 F6"), (33.0, 20.0));
    // P7 of 18 to 30 mm is -22 with Δ 8 added; M6 of 250 to 315 mm is an exception.
    assert_eq!(deviations("24 P7"), (-14.0, -35.0));
    assert_eq!(deviations("280 M6"), (-9.0, -41.0));
}

/// Misprints of single reprints that must not come back, and the traps.
#[test]
fn known_misprints_and_traps_are_kept_out() {
    let deviations = |size: &str| {
        let found = limits(size).expect("a printed class");
        (found.upper_um(), found.lower_um())
    };
    assert_eq!(deviations("2 f8"), (-6.0, -20.0)); // one print has -8
    assert_eq!(deviations("25 M5"), (-5.0, -14.0));
    assert_eq!(deviations("210 U8").0, -258.0);
    assert_eq!(deviations("8 g6"), (-5.0, -14.0));
    // N above IT8 begins at the nominal size, but not up to 3 mm.
    assert_eq!(deviations("20 N9"), (0.0, -52.0));
    assert_eq!(deviations("3 N9"), (-4.0, -29.0));
    // No Δ up to 3 mm.
    assert_eq!(deviations("3 K7"), (0.0, -10.0));
    assert_eq!(deviations("3 P7"), (-6.0, -16.0));
    assert_eq!(deviations("3 M7"), (-2.0, -12.0));
    // JS of an odd grade keeps its half micrometre.
    assert_eq!(deviations("20 JS7"), (10.5, -10.5));
    assert_eq!(deviations("31.75 js5"), (5.5, -5.5));
    assert_eq!(deviations("200 js1"), (2.25, -2.25));
    assert_eq!(deviations("2 js01"), (0.15, -0.15));
}

#[test]
fn the_upper_end_of_a_step_belongs_to_it() {
    for (to, (own, next)) in
        [("3", (10, 12)), ("18", (18, 21)), ("500", (63, 70)), ("3150", (210, 0))]
    {
        assert_eq!(limits(&format!("{to} H7")).expect("in the table").upper_nm, own * 1000);
        let above = limits(&format!("{to}.000001 H7"));
        match above {
            Ok(above) => assert_eq!(above.upper_nm, next * 1000, "just above {to} mm"),
            Err(error) => assert_eq!((to, error.code()), ("3150", "out-of-range")),
        }
    }
    // A part of a step, for letters that split it: s6 of 50 to 65 and of 65 to 80 mm.
    assert_eq!(limits("65 s6").expect("in the table").lower_nm, 53_000);
    assert_eq!(limits("65.000001 s6").expect("in the table").lower_nm, 59_000);
    // Half a nanometre above a step is that step still: sizes are whole nanometres.
    let just = Limits::of(mm(18.000_000_4), "H7".parse().expect("a class")).expect("in the table");
    assert_eq!(just.upper_nm, 18_000);
}

// --- The formulas --------------------------------------------------------------

#[test]
fn the_table_differs_from_the_formula_in_40_tolerances_and_nowhere_else() {
    let mut found = Vec::new();
    for (at, to) in STEPS.iter().enumerate().take(13) {
        let from = at.checked_sub(1).map_or(0, |before| STEPS[before] / 1_000_000);
        for (grade, name) in GRADES.iter().enumerate() {
            let Ok(formula) = grade_by_formula(mm(*to as f64 / 1e6), name) else {
                assert!(!(matches!(*name, "01" | "0" | "1") || (6..=12).contains(&grade)));
                continue;
            };
            let formula = formula.get::<micrometer>();
            let table = grades::tolerance(at, grade).expect("up to 500 mm") as f64 / 1000.0;
            // IT01 to IT1 were rounded onto a series: a tenth of a micrometre is alike.
            let alike = if grade < 3 { 0.1 } else { 0.5 };
            if (formula - table).abs() > alike {
                found.push(format!("IT{name},{from},{},{formula:.3},{table}", to / 1_000_000));
            }
        }
    }
    let mut printed: Vec<String> = rows(EXCEPTIONS)
        .into_iter()
        .filter(|row| row[0].starts_with("IT"))
        .map(|row| {
            let formula: f64 = row[3].parse().expect("um");
            format!("{},{},{},{formula:.3},{}", row[0], row[1], row[2], row[4])
        })
        .collect();
    assert_eq!(printed.len(), 40);
    printed.sort();
    found.sort();
    assert_eq!(found, printed);
}

#[test]
fn the_table_differs_from_the_formula_in_230_deviations_and_nowhere_else() {
    let mut found = BTreeSet::new();
    for (at, letter) in LETTERS.iter().enumerate() {
        let steps: &[i64] = match PLACES[at] {
            Place::Split(_) => &SUBSTEPS[..25],
            _ => &STEPS[..13],
        };
        for (step, to) in steps.iter().enumerate() {
            let Ok(formula) = deviation_by_formula(mm(*to as f64 / 1e6), letter) else { continue };
            let formula = formula.get::<micrometer>().round();
            let table = deviations::figure(PLACES[at], *to).expect("up to 500 mm") / 1000;
            let from = step.checked_sub(1).map_or(0, |before| steps[before] / 1_000_000);
            if formula as i64 != table {
                let name = if *letter == "k" { "k4_k7" } else { letter };
                found.insert(format!("{name},{from},{},{formula},{table}", to / 1_000_000));
            }
        }
    }
    let printed: BTreeSet<String> = rows(EXCEPTIONS)
        .into_iter()
        .filter(|row| !row[0].starts_with("IT"))
        .map(|row| row.join(","))
        .collect();
    assert_eq!(printed.len(), 230);
    let (extra, missing) = (found.difference(&printed), printed.difference(&found));
    assert_eq!(
        (extra.collect::<Vec<_>>(), missing.collect::<Vec<_>>()),
        (Vec::<&String>::new(), Vec::new()),
        "exceptions that the reference lacks, and that it has alone"
    );
}

#[test]
fn the_tolerance_factor_is_that_of_the_reference() {
    // Geometric means and factors as the reference lists them beside its exceptions.
    for (d, i) in [(1.7321, 0.54215), (38.7298, 1.56124), (447.2136, 3.88847)] {
        let ours = tolerance_factor(mm(d)).expect("in range").get::<micrometer>();
        assert!((ours - i).abs() < 1e-5, "{d} mm: {ours}");
    }
}

// --- What holds between the figures ----------------------------------------------

/// Every class at the middle and the end of every part step.
fn everywhere(mut see: impl FnMut(f64, Class, Result<Limits, Error>)) {
    let mut from = 0.0;
    for to in SUBSTEPS.map(|to| to as f64 / 1e6) {
        for size in [(from + to) / 2.0, to] {
            for letter in LETTERS.iter().flat_map(|l| [(*l).to_owned(), l.to_uppercase()]) {
                for grade in GRADES {
                    let class: Class = format!("{letter}{grade}").parse().expect("a class");
                    see(size, class, Limits::of(mm(size), class));
                }
            }
        }
        from = to;
    }
}

#[test]
fn upper_less_lower_is_the_printed_tolerance_and_the_sizes_follow() {
    let (mut found, mut refused) = (0, 0);
    let printed = printed_it();
    everywhere(|size, class, limits| match limits {
        Ok(limits) => {
            found += 1;
            let grade = GRADES.iter().position(|g| class.grade() == format!("IT{g}"));
            let (_, row) = printed.iter().find(|(to, _)| *to >= size).expect("a step");
            let width = row[grade.expect("a grade")];
            assert_eq!(Some(limits.upper_nm - limits.lower_nm), width, "{size} {class}");
            let whole = |length: Length| Nanometres::from(length).0;
            let nominal = whole(limits.nominal);
            assert_eq!(whole(limits.largest), nominal + limits.upper_nm, "{size} {class}");
            assert_eq!(whole(limits.smallest), nominal + limits.lower_nm, "{size} {class}");
            assert_eq!(limits.tolerance_um() * 1000.0, (limits.upper_nm - limits.lower_nm) as f64);
        }
        Err(error) => {
            refused += 1;
            assert_told(&error, &[]);
        }
    });
    assert!(found > 50_000 && refused > 5_000, "{found} found, {refused} refused");
}

#[test]
fn holes_mirror_shafts_where_no_delta_is_added() {
    let mut seen = 0;
    everywhere(|size, class, limits| {
        let (Ok(hole), Feature::Hole) = (limits, class.feature()) else { return };
        let letter = class.letter().to_lowercase();
        let grade: i64 = class.grade()[2..].parse().expect("a number");
        let fine = grade <= if "kmn".contains(&letter) { 8 } else { 7 };
        let tight = letter.as_str() > "h" && letter != "js";
        let delta = tight && size > 3.0 && size <= 500.0 && fine;
        let n_above_8 = letter == "n" && size > 3.0 && size <= 500.0 && !fine;
        // k and K have figures by grade of their own, j and J by column.
        if delta || n_above_8 || letter == "j" || letter == "k" {
            return;
        }
        let shaft = class.to_string().to_lowercase().parse().expect("a class");
        let Ok(shaft) = Limits::of(mm(size), shaft) else {
            // A coarse grade would take more than all of a small shaft.
            assert!(hole.upper_nm as f64 >= size * 1e6, "{size} {class}: there is a hole alone");
            return;
        };
        let mirrored = (-shaft.lower_nm, -shaft.upper_nm);
        assert_eq!((hole.upper_nm, hole.lower_nm), mirrored, "{size} {class}");
        seen += 1;
    });
    assert!(seen > 20_000, "only {seen} holes");
}

/// What Δ is for: a hole of grade n with an h shaft one grade finer fits as the H
/// hole of grade n with the mirrored shaft: P7/h6 as H7/p6.
#[test]
fn delta_makes_fits_of_both_bases_alike() {
    let mut seen = 0;
    let mut unlike = BTreeSet::new();
    for to in SUBSTEPS.iter().map(|to| *to as f64 / 1e6).filter(|to| *to > 3.0 && *to <= 500.0) {
        for letter in LETTERS.iter().filter(|letter| **letter > "j" && **letter != "js") {
            let most = if matches!(*letter, "k" | "m" | "n") { 8 } else { 7 };
            // k has its figure in the grades 4 to 7 alone.
            let least = if *letter == "k" { 5 } else { 3 };
            for grade in least..=most {
                let of = |hole: String, shaft: String| {
                    let (hole, shaft) = (hole.parse().expect("a class"), shaft.parse());
                    Fit::of(mm(to), hole, shaft.expect("a class")).ok()
                };
                let finer = grade - 1;
                let by_hole = of(format!("H{grade}"), format!("{letter}{finer}"));
                let by_shaft = of(format!("{}{grade}", letter.to_uppercase()), format!("h{finer}"));
                let clearances = |fit: Fit| (fit.least_clearance_nm, fit.most_clearance_nm);
                let (by_hole, by_shaft) = (by_hole.map(clearances), by_shaft.map(clearances));
                if by_hole != by_shaft {
                    unlike
                        .insert(format!("{} to {to}", letter.to_uppercase() + &grade.to_string()));
                }
                seen += usize::from(by_hole.is_some());
            }
        }
    }
    // The exception that Machine Drawing, p. 219, names; its step has two parts.
    assert_eq!(unlike.into_iter().collect::<Vec<_>>(), ["M6 to 280", "M6 to 315"]);
    assert!(seen > 1_000, "only {seen} fits");
}

#[test]
fn coarser_grades_are_wider_and_later_letters_tighter() {
    for (step, row) in grades::TOLERANCES.iter().enumerate() {
        let given: Vec<_> = row.iter().filter(|nm| **nm != NONE).collect();
        assert!(given.windows(2).all(|pair| pair[0] < pair[1]), "step {step}");
        if let Some(next) = grades::TOLERANCES.get(step + 1) {
            let pairs = row.iter().zip(next).filter(|(_, next)| **next != NONE);
            assert!(pairs.into_iter().all(|(own, next)| own <= next), "step {step} and the next");
        }
    }
    for to in SUBSTEPS {
        let ladder = |from: &str, up_to: &str| -> Vec<i64> {
            let there = |letter: &str| letter >= from && letter <= up_to;
            let letters = LETTERS.iter().enumerate().filter(|(_, letter)| there(letter));
            letters.filter_map(|(at, _)| deviations::figure(PLACES[at], to)).collect()
        };
        for (from, up_to) in [("a", "h"), ("k", "zc")] {
            let ladder = ladder(from, up_to);
            assert!(ladder.windows(2).all(|pair| pair[0] < pair[1]), "to {to} nm: {ladder:?}");
        }
    }
}

#[test]
fn deviations_move_away_from_nominal_as_sizes_grow() {
    // A slip of a digit in a long column would break the order.
    for (at, letter) in LETTERS.iter().enumerate().filter(|(at, _)| PLACES[*at] != Place::Nowhere) {
        let column: Vec<i64> =
            SUBSTEPS.iter().filter_map(|to| deviations::figure(PLACES[at], *to)).collect();
        let grows = |pair: &[i64]| pair[0].abs() <= pair[1].abs();
        // k falls to zero over 500 mm.
        let upto = if *letter == "k" { 25.min(column.len()) } else { column.len() };
        assert!(column[..upto].windows(2).all(grows), "{letter}: {column:?}");
    }
}

// --- Writing, judging, workings ---------------------------------------------------

#[test]
fn a_size_is_read_as_a_drawing_writes_it() {
    let wanted = limits("20 H7").expect("the plain way");
    for text in
        ["20H7", "20 mm H7", "20mm H7", "Ø20 H7", "ø 20H7", "⌀20 H7", " 20.0 H7 ", "2 cm H7"]
    {
        assert_eq!(limits(text).as_ref(), Ok(&wanted), "{text}");
    }
    let quarter = limits("31.75 js6").expect("in mm");
    for text in
        ["1-1/4 in js6", "1 1/4 in js6", "1-1/4\" js6", "1-1/4\"js6", "1.25 in js6", "1.25\" js6"]
    {
        let found = limits(text).unwrap_or_else(|error| panic!("{text}: {error}"));
        assert_eq!((found.upper_nm, found.lower_nm), (8000, -8000), "{text}");
        assert_eq!(Nanometres::from(found.largest), Nanometres(31_758_000), "{text}");
        assert_eq!(Nanometres::from(found.nominal), Nanometres::from(quarter.nominal), "{text}");
    }
    // `e` is a letter of classes, not an exponent.
    assert_eq!(limits("20e8").expect("a shaft").upper_um(), -40.0);
    assert_eq!(limits("20 m6").expect("a shaft").lower_um(), 8.0);
    assert_eq!(fit("1-1/4 in H7 / g6").expect("a fit").least_clearance_um(), 9.0);
    assert_eq!(fit("20H7/g6"), fit("Ø20 mm H7/g6"));
}

#[test]
fn a_measured_size_is_judged_on_whole_nanometres() {
    let hole = limits("18 E8").expect("in the table"); // +59 / +32
    let judged = |size: f64| {
        let judged = hole.judge(mm(size)).expect("a size");
        (judged.outcome, judged.amount_nm)
    };
    assert_eq!(judged(18.059), (SizeOutcome::Within, 0));
    assert_eq!(judged(18.032), (SizeOutcome::Within, 0));
    assert_eq!(judged(18.040), (SizeOutcome::Within, 8000));
    assert_eq!(judged(18.058), (SizeOutcome::Within, 1000));
    assert_eq!(judged(18.059_001), (SizeOutcome::TooLarge, 1));
    assert_eq!(judged(18.0595), (SizeOutcome::TooLarge, 500));
    assert_eq!(judged(18.030), (SizeOutcome::TooSmall, 2000));
    assert_eq!(judged(18.031_999), (SizeOutcome::TooSmall, 1));
    // The same size from inches, or with its last bit off, fares the same.
    let inches = Length::new::<inch>(18.059 / 25.4);
    assert_eq!(hole.judge(inches).expect("a size").outcome, SizeOutcome::Within);
    let half = limits("20 js7").expect("in the table");
    assert_eq!(half.judge(mm(20.0105)).expect("a size").outcome, SizeOutcome::Within);
    assert_eq!(half.judge(mm(20.010_501)).expect("a size").outcome, SizeOutcome::TooLarge);
}

#[test]
fn the_last_step_of_a_working_is_the_field_bit_for_bit() {
    everywhere(|size, class, limits| {
        let Ok(limits) = limits else { return };
        let steps = limits.working().steps;
        let last = steps.last().expect("steps");
        assert_eq!(last.result.to_bits(), limits.largest.get::<millimeter>().to_bits());
        let smallest = &steps[steps.len() - 2];
        assert_eq!(smallest.result.to_bits(), limits.smallest.get::<millimeter>().to_bits());
        let at = |symbol: &str| steps.iter().find(|step| step.symbol == symbol).map(|s| s.result);
        let [upper, lower] =
            if class.feature() == Feature::Hole { ["ES", "EI"] } else { ["es", "ei"] };
        assert_eq!(at(upper), Some(limits.upper_um()), "{size} {class}");
        assert_eq!(at(lower), Some(limits.lower_um()), "{size} {class}");
        assert_eq!(at("IT"), Some(limits.tolerance_um()), "{size} {class}");
    });
    for text in ["20 H7/g6", "40 P7/h6", "8 JS5/js5", "2 JS01/js0"] {
        let found = fit(text).expect("a fit");
        let steps = found.working().steps;
        let (last, before) = (&steps[steps.len() - 1], &steps[steps.len() - 2]);
        assert_eq!(last.result.to_bits(), found.most_clearance_um().to_bits(), "{text}");
        assert_eq!(before.result.to_bits(), found.least_clearance_um().to_bits(), "{text}");
    }
    let warm = at_20_c(mm(40.01), celsius(28.0), per(23.6), Some(per(11.5))).expect("in range");
    let steps = warm.working().steps;
    let last = steps.last().expect("steps").result;
    assert_eq!(last.to_bits(), warm.size.get::<millimeter>().to_bits());
    assert_eq!(steps.len(), 4);
    let text = limits("24 P7").expect("a class").working().to_string();
    let fine = limits("2 js01").expect("a class").working().to_string();
    assert!(fine.contains("IT / 2 = 0.3 / 2 = 0.15 µm"), "{fine}");
    for part in ["IT7, over 18 up to 30 mm", "-22 + 8 = -14 µm", "ES − IT = -14 − 21 = -35 µm"]
    {
        assert!(text.contains(part), "{part:?} is not in\n{text}");
    }
}

#[test]
fn recalled_figures_show_in_the_source() {
    let status = |size: &str| limits(size).expect("in the table").source.status;
    assert_eq!(status("20 H7"), Status::Reprint);
    assert_eq!(status("20 h15"), Status::Memory);
    assert_eq!(status("20 h01"), Status::Memory);
    assert_eq!(status("600 H4"), Status::Memory);
    assert_eq!(status("600 H7"), Status::Reprint);
    assert_eq!(status("20 j7"), Status::Practice);
    assert_eq!(status("200 j7"), Status::Reprint);
}

// --- Fits for a window ------------------------------------------------------------

fn named(fit: &Fit) -> String {
    format!("{}/{}", fit.hole.class, fit.shaft.class)
}

#[test]
fn fits_for_a_window_lie_inside_it_and_use_most_of_it_first() {
    // 20 mm H7/g6 leaves 7 to 41 um (reference fits); G7/h6 mirrors it.
    let exact = fits_for(mm(20.0), um(7.0), um(41.0)).expect("a window");
    let names: Vec<_> = exact.iter().map(|ranked| named(&ranked.fit)).collect();
    assert_eq!(names[..2], ["H7/g6", "G7/h6"]);
    assert_eq!((exact[0].share, exact[1].share), (1.0, 1.0));
    assert_eq!((exact[0].fit.basis(), exact[1].fit.basis()), (FitBasis::Hole, FitBasis::Shaft));
    assert_eq!(
        fits_for(mm(20.0), um(7.001), um(41.0))
            .expect("a window")
            .iter()
            .filter(|ranked| named(&ranked.fit) == "H7/g6")
            .count(),
        0,
        "a nanometre too narrow"
    );
    // An interference of 14 to 48 um: 20 mm H7/s6 (reference fits).
    let press = fits_for(mm(20.0), um(-48.0), um(-14.0)).expect("a window");
    assert_eq!(named(&press[0].fit), "H7/s6");
    assert!(press.iter().all(|ranked| ranked.fit.kind == FitKind::Interference));
    // Nothing fits a window of 1 um.
    assert_eq!(fits_for(mm(20.0), um(7.0), um(8.0)), Ok(Vec::new()));
}

#[test]
fn the_ten_first_choices_of_each_basis_are_ranked_with_their_list() {
    let wide = fits_for(mm(25.0), um(-1000.0), um(1000.0)).expect("a window");
    let first: BTreeSet<String> = wide
        .iter()
        .filter(|ranked| ranked.source.title == "ANSI B4.2")
        .map(|ranked| named(&ranked.fit))
        .collect();
    // The ten of ANSI B4.2-1978, hole basis and shaft basis; H7/h6 is in both.
    let holes = "H11/c11 H9/d9 H8/f7 H7/g6 H7/h6 H7/k6 H7/n6 H7/p6 H7/s6 H7/u6";
    let shafts = "C11/h11 D9/h9 F8/h7 G7/h6 H7/h6 K7/h6 N7/h6 P7/h6 S7/h6 U7/h6";
    let wanted: BTreeSet<String> =
        holes.split(' ').chain(shafts.split(' ')).map(str::to_owned).collect();
    assert_eq!(first, wanted);
    assert_eq!(wide.len(), 55);
    assert!(wide.windows(2).all(|pair| pair[0].share >= pair[1].share), "best first");
    let all: BTreeSet<String> = wide.iter().map(|ranked| named(&ranked.fit)).collect();
    assert_eq!(all.len(), wide.len(), "no fit twice");
    // t is not printed up to 24 mm: the fit is passed over there.
    let small = fits_for(mm(20.0), um(-1000.0), um(1000.0)).expect("a window");
    assert!(small.iter().all(|ranked| named(&ranked.fit) != "H7/t6"));
}

// --- Temperature --------------------------------------------------------------------

fn celsius(t: f64) -> ThermodynamicTemperature {
    ThermodynamicTemperature::new::<degree_celsius>(t)
}

fn per(um: f64) -> TemperatureCoefficient {
    TemperatureCoefficient::new::<per_kelvin>(um / 1e6)
}

#[test]
fn a_part_that_grew_shrinks_back() {
    // Forwards by the definition of expansion, in nm, then back by the kernel.
    for (size, t, alpha) in [(40.0, 28.0, 23.6), (250.0, -5.0, 11.4), (1000.0, 30.0, 11.5)] {
        let grown = size + size * alpha / 1e6 * (t - 20.0);
        let back = at_20_c(mm(grown), celsius(t), per(alpha), None).expect("in range").size;
        assert!((back.get::<millimeter>() - size).abs() < 1e-9, "{size} mm at {t} °C");
    }
    // A metre of steel grows 115 um from 20 to 30 °C.
    let metre = at_20_c(mm(1000.115), celsius(30.0), per(11.5), None).expect("in range").size;
    assert_eq!(Nanometres::from(metre), Nanometres(1_000_000_000));
    let exactly = at_20_c(mm(40.0123), celsius(20.0), per(23.6), None).expect("in range").size;
    assert_eq!(exactly, mm(40.0123), "nothing to correct at 20 °C");
    // Steel measured with steel as warm as itself needs no correction.
    let alike = at_20_c(mm(40.0), celsius(31.0), per(11.5), Some(per(11.5))).expect("in range");
    assert_eq!(alike.size, mm(40.0));
    // An aluminium part with a steel instrument is corrected by the difference, to first order.
    let part = at_20_c(mm(100.0), celsius(30.0), per(23.5), Some(per(11.5))).expect("in range");
    assert!((part.size.get::<millimeter>() - (100.0 - 100.0 * 12e-6 * 10.0)).abs() < 1e-5);
}

#[test]
fn published_expansions_are_the_least_and_greatest_of_the_book() {
    // Callister and Rethwisch, 3rd edition, Table B.6, pp. 815-816, in 1e-6 a kelvin.
    let book: [(Metal, &[f64]); 5] = [
        (Metal::Steel, &[11.7, 11.7, 11.3, 12.3, 12.3]), // A36, 1020, 1040, 4140, 4340
        (Metal::GreyIron, &[11.4, 11.4, 11.4]),          // G1800, G3000, G4000
        (Metal::DuctileIron, &[11.2, 10.6]),             // 60-40-18, 80-55-06
        (Metal::Aluminium, &[23.6, 22.9, 23.6, 23.4, 21.5]), // 1100, 2024, 6061, 7075, 356.0
        (Metal::Brass, &[19.9, 20.5]),                   // C26000, C36000
    ];
    for (metal, figures) in book {
        let found = published_expansion(metal);
        let least = figures.iter().copied().fold(f64::INFINITY, f64::min);
        let most = figures.iter().copied().fold(0.0, f64::max);
        assert_eq!((found.least.exact(), found.most.exact()), (least * 1e6, most * 1e6), "{metal}");
        assert_eq!(found.source.status, Status::Read);
    }
    assert_eq!("Aluminum".parse(), Ok(Metal::Aluminium));
}

// --- What can't be answered -----------------------------------------------------------

/// That a message is one line of what is wrong and one `hint:` line, and holds every part.
#[track_caller]
fn assert_told(error: &Error, holds: &[&str]) {
    let text = error.to_string();
    let lines: Vec<_> = text.lines().collect();
    let [wrong, hint] = lines[..] else { panic!("two lines: {text:?}") };
    assert!(hint.starts_with("hint: ") && hint.len() > 12, "{text:?}");
    assert!(wrong.starts_with('`') && !wrong.ends_with('.'), "{text:?}");
    assert!(!text.to_lowercase().contains("invalid"), "{text:?}");
    for part in holds {
        assert!(text.contains(part), "{part:?} is not in {text:?}");
    }
}

#[test]
fn bad_sizes_are_refused_with_value_range_and_hint() {
    for (text, code, holds) in [
        ("", "not-a-quantity", &["`size`", "\"\"", "tolerance class", "20 H7"][..]),
        ("20", "not-a-quantity", &["`size`", "\"20\"", "tolerance class"]),
        ("H7", "not-a-quantity", &["`size`", "no nominal size"]),
        ("H7 20", "not-a-quantity", &["`size`", "does not end in a tolerance class"]),
        ("20 H 7", "not-a-quantity", &["`size`", "does not end in a tolerance class"]),
        ("20,5 H7", "not-a-quantity", &["`size`", "\"20,5\"", "comma"]),
        ("5/16 H7", "not-a-quantity", &["`size`", "only inches"]),
        ("5/16 mm H7", "not-a-quantity", &["`size`", "only inches"]),
        ("NaN H7", "not-a-quantity", &["`size`", "no number"]),
        ("inf mm H7", "not-a-quantity", &["`size`", "no number"]),
        ("1e400 H7", "not-a-quantity", &["`size`", "beyond any number"]),
        ("20 kg H7", "not-a-quantity", &["`size`", "not a length"]),
        ("wide H7", "not-a-quantity", &["`size`", "no number"]),
        ("20 Q7", "unknown-word", &["`class`", "\"Q7\"", "a b c cd", "0 to 18", "hint"]),
        ("20 H", "unknown-word", &["`class`", "\"H\"", "grade is missing"]),
        ("20 H19", "unknown-word", &["`class`", "\"H19\"", "0 to 18"]),
        ("20 H07", "unknown-word", &["`class`", "\"H07\""]),
        ("20 Js6", "unknown-word", &["`class`", "\"Js6\"", "letters alike"]),
        ("20 mm", "unknown-word", &["`class`", "\"mm\""]),
        ("20mmH7", "unknown-word", &["`class`", "\"mmH7\""]),
        ("20 H7é", "unknown-word", &["`class`", "\"H7é\""]),
        ("20 H7/g6", "unknown-word", &["`class`", "\"H7/g6\"", "`fit`"]),
        ("20 j8", "unknown-word", &["`class`", "\"j8\"", "j5, j6, j7", "js"]),
        ("20 J9", "unknown-word", &["`class`", "J6, J7, J8", "JS"]),
        ("20 K9", "unknown-word", &["`class`", "\"K9\"", "K3 to K8"]),
        ("20 M2", "unknown-word", &["`class`", "\"M2\"", "IT3"]),
        ("-20 H7", "out-of-range", &["`nominal` is -20 mm", "not above 0 mm"]),
        ("0 H7", "out-of-range", &["`nominal` is 0 mm", "not above 0 mm"]),
        (
            "3150.1 H7",
            "out-of-range",
            &["`nominal` is 3150.1 mm", "outside 0 to 3150 mm", "ISO 286-1"],
        ),
        ("125 in H7", "out-of-range", &["`nominal` is 3175 mm", "outside 0 to 3150 mm"]),
        (
            "20 t6",
            "out-of-range",
            &["`nominal` is 20 mm", "not over 24 up to 3150 mm", "t in ISO 286-1", "s and u"],
        ),
        ("12 V6", "out-of-range", &["`nominal` is 12 mm", "not over 14 up to 500 mm", "U and X"]),
        // The lower end of the table's reach is not part of it.
        ("24 t6", "out-of-range", &["`nominal` is 24 mm, not over 24 up to 3150 mm"]),
        ("12 y6", "out-of-range", &["not over 18 up to 500 mm", "x and z"]),
        ("12 cd6", "out-of-range", &["not over 0 up to 10 mm", "c and d"]),
        ("600 a11", "out-of-range", &["`nominal` is 600 mm", "not over 0 up to 500 mm", "d"]),
        ("600 J7", "out-of-range", &["not over 0 up to 500 mm", "JS and K"]),
        (
            "600 f5",
            "out-of-range",
            &["`nominal` is 600 mm", "above 500 mm", "f6 to f16", "h or js"],
        ),
        ("600 h0", "out-of-range", &["above 500 mm", "IT0", "IT1"]),
        ("1 a9", "out-of-range", &["`nominal` is 1 mm", "not above 1 mm", "from memory"]),
        ("0.5 N9", "out-of-range", &["not above 1 mm", "N8"]),
        ("0.5 h14", "out-of-range", &["not above 1 mm", "IT13"]),
        ("1.2 a18", "out-of-range", &["`nominal` is 1.2 mm", "not above 1.67 mm", "a18"]),
    ] {
        let error = limits(text).expect_err(text);
        assert_eq!(error.code(), code, "{text}: {error}");
        assert_told(&error, holds);
    }
    assert!(limits("1.001 a9").is_ok() && limits("1 N8").is_ok() && limits("1 c13").is_ok());
}

#[test]
fn bad_fits_windows_and_temperatures_are_refused_with_value_range_and_hint() {
    for (text, code, holds) in [
        ("20 H7", "not-a-quantity", &["`fit`", "no /", "H7/g6"][..]),
        ("20 g6/H7", "not-a-quantity", &["`fit`", "capitals"]),
        ("20 H7/G6", "not-a-quantity", &["`fit`", "capitals"]),
        ("5/16 in H7", "not-a-quantity", &["`fit`", "no class follows"]),
        ("20 H7/", "not-a-quantity", &["`fit`", "no class follows"]),
        ("/g6", "not-a-quantity", &["`fit`"]),
        ("20 H7/q6", "unknown-word", &["`class`", "\"q6\""]),
        ("20 H7/t6", "out-of-range", &["`nominal` is 20 mm", "not over 24 up to 3150 mm"]),
        ("-5 H7/g6", "out-of-range", &["`nominal`", "not above 0"]),
    ] {
        let error = fit(text).expect_err(text);
        assert_eq!(error.code(), code, "{text}: {error}");
        assert_told(&error, holds);
    }
    let error = |result: Result<_, Error>| result.map(|_: Vec<_>| ()).expect_err("bad");
    let nan = f64::NAN;
    assert_told(&error(fits_for(mm(-1.0), um(0.0), um(9.0))), &["`nominal` is -1 mm"]);
    assert_told(&error(fits_for(mm(nan), um(0.0), um(9.0))), &["`nominal` is NaN"]);
    assert_told(&error(fits_for(mm(4000.0), um(0.0), um(9.0))), &["`nominal` is 4000 mm", "3150"]);
    assert_told(&error(fits_for(mm(20.0), um(nan), um(9.0))), &["`least_clearance` is NaN"]);
    assert_told(
        &error(fits_for(mm(20.0), um(9.0), um(7.5))),
        &["`most_clearance` is 7.5 um", "not above least_clearance 9 um"],
    );
    assert_told(
        &error(fits_for(mm(20.0), um(9.0), um(f64::INFINITY))),
        &["`most_clearance` is inf"],
    );
    let warm =
        |size, t, alpha, with| at_20_c(mm(size), celsius(t), per(alpha), with).expect_err("bad");
    assert_told(&warm(0.0, 20.0, 11.5, None), &["`measured` is 0 mm", "not above 0"]);
    assert_told(&warm(nan, 20.0, 11.5, None), &["`measured` is NaN"]);
    assert_told(&warm(20.0, 61.0, 11.5, None), &["`temperature` is 61", "outside -20 to 60 °C"]);
    assert_told(&warm(20.0, nan, 11.5, None), &["`temperature` is NaN"]);
    assert_told(&warm(20.0, 25.0, -1.0, None), &["`expansion` is -1 um/m/K", "outside 0 to 500"]);
    assert_told(&warm(20.0, 25.0, nan, None), &["`expansion` is NaN"]);
    assert_told(
        &warm(20.0, 25.0, 11.5, Some(per(600.0))),
        &["`instrument_expansion` is 6", "0 to 500"],
    );
    let hole = limits("20 H7").expect("a class");
    assert_told(&hole.judge(mm(nan)).expect_err("bad"), &["`measured` is NaN"]);
    assert_told(&hole.judge(mm(-20.0)).expect_err("bad"), &["`measured` is -20 mm", "not above 0"]);
    let formula = |result: Result<Length, Error>| result.expect_err("bad");
    assert_told(
        &formula(grade_by_formula(mm(20.0), "IT12")),
        &["`grade` is \"IT12\"", "IT5 to IT11"],
    );
    assert_told(&formula(grade_by_formula(mm(501.0), "IT7")), &["`nominal` is 501 mm", "0 to 500"]);
    assert_told(&formula(deviation_by_formula(mm(20.0), "t")), &["`letter` is \"t\"", "t over 24"]);
    assert_told(&formula(tolerance_factor(mm(0.0))), &["`size` is 0 mm", "not above 0"]);
    assert!(matches!(
        Limits::of(mm(f64::INFINITY), "H7".parse().expect("a class")).expect_err("bad").kind(),
        ErrorKind::NotFinite { .. }
    ));
}

fn cases(cases: u32) -> ProptestConfig {
    let regressions = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/limits.proptest-regressions");
    ProptestConfig {
        cases,
        failure_persistence: Some(Box::new(FileFailurePersistence::Direct(regressions))),
        ..ProptestConfig::default()
    }
}

proptest! {
    #![proptest_config(cases(2000))]

    #[test]
    fn whatever_is_typed_is_answered(
        text in "(Ø)?[0-9., /\"-]{0,8}( ?mm| in| µm)?[ ]?[A-Za-z]{0,3}[0-9]{0,2}(/[a-z]{1,2}[0-9]{1,2})?|\\PC{0,16}"
    ) {
        for error in [limits(&text).err(), fit(&text).err()].into_iter().flatten() {
            assert_told(&error, &[]);
        }
    }

    #[test]
    fn every_fit_found_for_a_window_lies_in_it(
        size in 1.0..3150.0_f64, least in -400.0..400.0_f64, width in 1.0..500.0_f64
    ) {
        let found = fits_for(mm(size), um(least), um(least + width)).expect("a window");
        let window = (um(least).exact(), um(least + width).exact());
        for ranked in &found {
            prop_assert!(ranked.fit.least_clearance_nm as f64 >= window.0);
            prop_assert!(ranked.fit.most_clearance_nm as f64 <= window.1);
            prop_assert!(ranked.share > 0.0 && ranked.share <= 1.0);
        }
        prop_assert!(found.windows(2).all(|pair| pair[0].share >= pair[1].share));
    }

    #[test]
    fn a_size_between_the_limits_is_within_and_one_outside_is_not(
        size in 1.1..500.0_f64, at in -1.0..2.0_f64
    ) {
        let hole = Limits::of(mm(size), "F7".parse().expect("a class")).expect("in the table");
        let (low, high) = (hole.smallest.exact(), hole.largest.exact());
        let measured = (low + at * (high - low)).round();
        let judged = hole.judge(Length::from_exact(measured)).expect("a size");
        let wanted = match measured {
            m if m > high => SizeOutcome::TooLarge,
            m if m < low => SizeOutcome::TooSmall,
            _ => SizeOutcome::Within,
        };
        prop_assert_eq!(judged.outcome, wanted);
        let nearest = (measured - low).abs().min((measured - high).abs());
        prop_assert_eq!(judged.amount_nm as f64, nearest);
    }
}
