//! Markings of wheels: the standards' order, examples as printed, oddities, and what is generated.

use hubwright::mounting::{Datum, MarkingSays, Wheel};
use hubwright::tables::grits::{F_GRITS, SUPERABRASIVE};
use hubwright::units::{
    AngularVelocity, Length, Velocity, meter_per_second, micrometer, millimeter,
    revolution_per_minute,
};
use hubwright::wheel::{Abrasive, Bond, Marking, Restriction, Shape, read_marking};
use proptest::prelude::*;

#[track_caller]
fn read(text: &str) -> Marking {
    read_marking(text).unwrap_or_else(|error| panic!("{text:?}: {error}"))
}

fn unread(marking: &Marking) -> Vec<&str> {
    marking.unread.iter().map(|part| part.text.as_str()).collect()
}

fn mm(size: Option<Length>) -> f64 {
    size.map_or(f64::NAN, |size| size.get::<millimeter>())
}

// --- Tables, typed a second time ---------------------------------------------

fn rows(file: &str) -> Vec<Vec<&str>> {
    let lines = file.lines().filter(|line| !line.starts_with('#') && !line.trim().is_empty());
    lines.skip(1).map(|line| line.split(',').collect()).collect()
}

#[test]
fn grain_sizes_are_those_of_the_tables() {
    let printed: Vec<(u16, u32)> = rows(include_str!("reference/grits_f.csv"))
        .iter()
        .map(|row| {
            let tenths = (row[1].parse::<f64>().expect("a size") * 10.0).round();
            (row[0].parse().expect("a number"), tenths as u32)
        })
        .collect();
    assert_eq!(printed, F_GRITS);
    let printed: Vec<_> = rows(include_str!("reference/grits_superabrasive.csv"))
        .iter()
        .map(|row| {
            let number = |at: usize| row[at].parse::<u16>().expect("a number");
            (number(0), number(1), number(2), row[3] == "read")
        })
        .collect();
    let ours = SUPERABRASIVE.map(|row| (row.number, row.upper, row.lower, row.read));
    assert_eq!(printed, ours);
}

/// FEPA 61, as stated: the number of a close size is its upper sieve and one.
#[test]
fn the_number_of_a_close_size_is_its_upper_sieve_and_one() {
    for row in &SUPERABRASIVE[..20] {
        assert!((row.number - row.upper).abs_diff(1) == 0, "{row:?}");
    }
}

// --- As printed --------------------------------------------------------------

/// ISO 525 as set out in a reprint: its own example, part by part.
#[test]
fn the_standards_example_is_read_part_by_part() {
    let marking = read("40A 60 K 7 V A1");
    assert_eq!(marking.prefix.as_deref(), Some("40"));
    assert_eq!(marking.abrasive, Some(Abrasive::AluminiumOxide));
    let grain = marking.grain.expect("a grain");
    assert_eq!(grain.number, 60);
    assert!((grain.least.get::<micrometer>() - 260.0).abs() < 1e-9);
    assert_eq!((marking.grade, marking.structure), (Some('K'), Some(7)));
    assert_eq!(marking.bond, Some(Bond::Vitrified));
    assert_eq!(marking.suffix.as_deref(), Some("A1"));
    // JIS structure numbers: 7 is 48 % abrasive.
    assert!((marking.abrasive_share().expect("a share") - 0.48).abs() < 1e-12);
}

/// A rack holds the order of other standards too: the Indian one (common practice) and GOST 21963.
#[test]
fn printed_markings_of_other_orders_are_read() {
    let marking = read("300 x 30 x 42 W A 46 L 4 V 17");
    assert_eq!(marking.to_string(), "300 x 30 x 42 mm WA 46 L 4 V 17");
    let marking = read("type 41 400 x 4.0 x 32 14A 80-H 41-43 BF 80 m/s unbalance class 2");
    assert_eq!(marking.to_string(), "type 41 400 x 4 x 32 mm 14A 80 H BF 80 m/s");
    // The sound index stands where a structure would, and is none.
    assert_eq!(unread(&marking), ["41", "43", "unbalance", "class", "2"]);
}

/// A concentration of 100 is a quarter of the rim, 4.4 carats a cm³ (read).
#[test]
fn concentrations_are_shares_of_the_rim() {
    for (number, share) in
        [(25, 6.25), (50, 12.5), (75, 18.75), (100, 25.0), (150, 37.5), (200, 50.0)]
    {
        let marking = read(&format!("1A1 D126 C{number} B"));
        let found = marking.superabrasive_share().expect("a share") * 100.0;
        assert!((found - share).abs() < 1e-12, "{number}: {found}");
    }
}

// --- Oddities ----------------------------------------------------------------

/// What is read of it, printed; what is left; how many doubts are told.
const ODD: [(&str, &str, &[&str], usize); 34] = [
    ("A36-L5-V", "A 36 L 5 V", &[], 0),
    ("a60k7v 35m/s", "A 60 K 7 V 35 m/s", &[], 0),
    ("A60KV17", "A 60 K V 17", &[], 0),
    ("A24RBF", "A 24 R BF", &[], 0),
    ("A24BF RE1", "A 24 BF RE1", &[], 0),
    ("A24R5BF15", "A 24 R 5 BF 15", &[], 1),
    ("A60V", "A 60 V", &[], 1),
    ("A60K", "A 60 K", &[], 0),
    ("A 60 K 18 V", "A 60 K 18 V", &[], 0),
    ("A 60 K 44 V", "A 60 K V", &["44"], 0),
    ("38A602-K8VBE", "38A 60 K 8 V BE", &[], 1),
    ("WA 46 K 8 V", "WA 46 K 8 V", &[], 0),
    ("GC-120-H-8-V", "GC 120 H 8 V", &[], 0),
    ("A16 R 5 B S4 wheel 610 x 80 x 254", "610 x 80 x 254 mm A 16 R 5 B S4", &["wheel"], 0),
    ("125×1×22,23 A60S4BF 80 m/s", "125 x 1 x 22.23 mm A 60 S 4 BF 80 m/s", &[], 0),
    ("8\" x 1\" x 1-1/4\" A60K8V", "203.2 x 25.4 x 31.75 mm A 60 K 8 V", &[], 0),
    ("7 x 1/2 x 1-1/4 A60K8V", "177.8 x 12.7 x 31.75 mm A 60 K 8 V", &[], 1),
    ("7 x 1 x 1 A60K8V", "A 60 K 8 V", &["7 x 1 x 1"], 0),
    ("300/150 x 20/10 x 32 mm A46J8V", "300 x 20 x 32 mm A 46 J 8 V", &[], 0),
    ("12 250 rpm A60K5V", "A 60 K 5 V", &["12 250 rpm"], 0),
    ("A60K5V 3.820 rpm", "A 60 K 5 V", &["3.820 rpm"], 0),
    ("A60K5V max. 3820 min⁻¹ 50 m/s", "A 60 K 5 V 50 m/s 3820 rpm", &[], 0),
    ("A60K5V n = 3820/min", "A 60 K 5 V 3820 rpm", &[], 0),
    ("A46 H 8 V 40 m/s 35 m/s", "A 46 H 8 V 35 m/s", &[], 1),
    ("A24R5BF T41 RE 2 RE5", "type 41 A 24 R 5 BF RE2", &["RE5"], 0),
    ("1A1 200-20-5-31.75 D126 C100 B", "1A1 200 x 20 x 31.75 mm D126 C100 B", &[], 0),
    ("11V9 B151 V C150", "11V9 B151 C150 V", &[], 0),
    ("1A1R 150 x 1 x 20 mm D91 R100 B", "1A1R 150 x 1 x 20 mm D91 R C100 B", &[], 1),
    ("D120-N100B", "D N C100 B", &["120"], 1),
    ("B54V240", "B54", &["V240"], 0),
    ("A 24 R B 54", "A 24 R B 54", &[], 0),
    ("Ä60K8V", "", &["Ä60K8V"], 0),
    ("ABC xyz", "", &["ABC", "xyz"], 0),
    ("do not drop", "", &["do", "not", "drop"], 0),
];

#[test]
fn odd_markings_leave_what_they_should() {
    for (text, printed, left, doubts) in ODD {
        let marking = read(text);
        assert_eq!(marking.to_string(), printed, "{text:?}");
        assert_eq!(unread(&marking), left, "{text:?}");
        assert_eq!(marking.doubts.len(), doubts, "{text:?}: {:?}", marking.doubts);
    }
}

#[test]
fn nothing_and_too_much_are_refused() {
    for text in ["", "  ", &"A".repeat(201)] {
        let error = read_marking(text).expect_err("no marking");
        assert_eq!(error.code(), "not-a-quantity");
        assert!(error.to_string().contains("`text`") && error.to_string().contains("hint: "));
    }
}

#[test]
fn no_text_makes_it_panic() {
    let odd = [
        "1",
        "x",
        "-",
        "1 x",
        "1x1",
        "A",
        "C9",
        "D",
        "B ",
        "RE",
        "TYPE",
        "T",
        "9/",
        "1/2",
        "1-1/2 x",
        "\"",
        "ß60",
        "A60é",
        "60 x 60 x",
        "1A",
        "1A11",
        "m/s",
        "0 m/s",
        "9,9,9 m/s",
        "A99999K",
        "١٢ m/s",
    ];
    for a in odd {
        for b in odd {
            let _ = read_marking(&format!("{a}{b}"));
            let _ = read_marking(&format!("{a} {b}"));
        }
    }
}

// --- Generated ---------------------------------------------------------------

fn pick<T: Copy + std::fmt::Debug + 'static>(all: &'static [T]) -> impl Strategy<Value = T> {
    (0..all.len()).prop_map(|at| all[at])
}

prop_compose! {
    /// Prefix, abrasive, grain, grade, structure, bond, suffix, speed, restriction.
    fn bonded()(
        prefix in pick(&["", "9", "38", "40", "W", "G", "EK"]),
        abrasive in pick(&["A", "C"]),
        grain in pick(&F_GRITS),
        grade in proptest::char::range('A', 'Z'),
        structure in proptest::option::of(0_u8..=14),
        bond in pick(&["V", "B", "BF", "R", "RF", "E", "S", "O", "M", "MG", "PL"]),
        suffix in pick(&["", "17", "A1", "XY", "G5"]),
        speed in pick(&["", "35 m/s", "2850 rpm", "63 m/s 4812 rpm"]),
        restriction in pick(&["", "RE1", "RE2 RE3"]),
    ) -> Vec<String> {
        let mut parts = vec![format!("{prefix}{abrasive}"), grain.0.to_string(), grade.to_string()];
        parts.extend(structure.map(|number| number.to_string()));
        parts.extend([bond, suffix, speed, restriction].map(String::from));
        parts.retain(|part| !part.is_empty());
        parts
    }
}

prop_compose! {
    fn hard()(
        shape in pick(&["1A1", "1A1R", "6A2", "11V9", "12A2", "14F1"]),
        abrasive in pick(&["D", "B"]),
        grain in pick(&[46_u16, 54, 64, 76, 91, 107, 126, 151, 181, 213, 251, 301, 427, 602]),
        concentration in proptest::option::of(pick(&[50_u16, 75, 100, 125, 150])),
        bond in pick(&["B", "V", "M", "G"]),
        speed in pick(&["", "35 m/s"]),
    ) -> Vec<String> {
        let mut parts = vec![shape.to_owned(), format!("{abrasive}{grain}")];
        parts.extend(concentration.map(|number| format!("C{number}")));
        parts.extend([bond, speed].map(String::from));
        parts.retain(|part| !part.is_empty());
        parts
    }
}

fn cases() -> ProptestConfig {
    ProptestConfig { cases: 5000, failure_persistence: None, ..ProptestConfig::default() }
}

proptest! {
    #![proptest_config(cases())]

    /// Ten thousand of them, half bonded and half not.
    #[test]
    fn a_bonded_marking_prints_as_it_was_read(parts in bonded()) {
        let spaced = parts.join(" ");
        let marking = read(&spaced);
        prop_assert_eq!(marking.to_string(), spaced.clone());
        prop_assert!(marking.unread.is_empty(), "{:?}", marking);
        // Hyphens between the parts of the order say the same.
        let hyphens = format!("{}-{}-{} {}", parts[0], parts[1], parts[2], parts[3..].join(" "));
        prop_assert_eq!(read(&hyphens).to_string(), spaced);
    }

    #[test]
    fn a_diamond_marking_prints_as_it_was_read(parts in hard()) {
        let spaced = parts.join(" ");
        let marking = read(&spaced);
        prop_assert_eq!(marking.to_string(), spaced);
        prop_assert!(marking.unread.is_empty(), "{:?}", marking);
        prop_assert!(marking.doubts.is_empty(), "{:?}", marking);
    }

    /// Nothing that is typed makes it panic, and what is read reads the same again.
    #[test]
    fn what_was_read_reads_the_same_again(text in "[0-9A-Za-z ./,\"x-]{1,40}") {
        if let Ok(marking) = read_marking(&text) {
            let printed = marking.to_string();
            if !printed.is_empty() && marking.doubts.is_empty() && marking.unread.is_empty() {
                prop_assert_eq!(read(&printed).to_string(), printed);
            }
        }
    }
}

// --- Beside the mounting -----------------------------------------------------

#[test]
fn a_marking_fills_blanks_and_never_raises_a_limit() {
    let marking = read("type 41 125 x 1 x 22.23 A60S4BF 80 m/s 12250 rpm");
    let wheel = Wheel::default().with_marking(&marking);
    assert_eq!(wheel.shape, Datum::Given(Shape::Type1CuttingOff));
    assert_eq!(wheel.bond, Datum::Given(Bond::ReinforcedResin));
    assert_eq!(wheel.nominal_hole, Datum::Given(Length::new::<millimeter>(22.23)));
    // What fits a spigot has to be measured.
    assert_eq!(wheel.hole, Datum::NotAsked);
    assert_eq!(wheel.marking_says, Datum::Given(MarkingSays::Same));
    for (row, kept) in [(50.0, 50.0), (100.0, 80.0)] {
        let speed = Velocity::new::<meter_per_second>(row);
        let slower = Wheel { marked_rim_speed: speed.into(), ..Wheel::default() };
        let wheel = slower.with_marking(&marking);
        assert_eq!(wheel.marked_rim_speed, Datum::Given(Velocity::new::<meter_per_second>(kept)));
        assert_eq!(wheel.marking_says, Datum::Given(MarkingSays::OtherSpeed));
    }
    let turns = AngularVelocity::new::<revolution_per_minute>(12250.0);
    assert_eq!(wheel.marked_speed, Datum::Given(turns));
}

#[test]
fn a_marking_that_says_otherwise_is_told_and_changes_nothing() {
    let marking = read("200 x 20 x 31.75 A60K7V");
    let mut wheel = Wheel {
        bond: Bond::Resin.into(),
        diameter: Length::new::<millimeter>(203.2).into(),
        ..Wheel::default()
    };
    let filled = wheel.with_marking(&marking);
    // 8 in sold as 200 mm is the same wheel; a resin wheel is not a vitrified one.
    assert_eq!(filled.marking_says, Datum::Given(MarkingSays::OtherBond));
    assert_eq!((filled.bond, filled.diameter), (wheel.bond, wheel.diameter));
    wheel.diameter = Length::new::<millimeter>(180.0).into();
    wheel.bond = Datum::Unknown;
    assert_eq!(wheel.with_marking(&marking).marking_says, Datum::Given(MarkingSays::OtherSize));
    assert_eq!(wheel.with_marking(&read("a wheel")).marking_says, Datum::Unknown);
}

#[test]
fn words_say_what_is_marked_and_how_sure_it_is() {
    let marking = read("125 x 1 x 22.23 A60S4BF 80 m/s RE1");
    let words = marking.in_words().join("\n");
    for said in [
        "grain 60: 260 µm",
        "from memory",
        "reinforced resin bond",
        "one red stripe",
        "RE1: not for hand-held grinding",
        "hole 22.23 mm",
    ] {
        assert!(words.contains(said), "{said}: {words}");
    }
    assert_eq!(marking.restrictions, [Restriction::NotHandHeld]);
    assert!((mm(marking.thickness) - 1.0).abs() < 1e-12);
}

/// 35 m/s is 6889.76 sfpm, which a list rounds up to 6890: no contradiction, but the lower is the limit.
#[test]
fn two_speeds_that_rounding_tells_apart_are_one() {
    let marking = read("A 60 K 7 V 35 m/s");
    let speed = Velocity::new::<meter_per_second>(6890.0 * 0.3048 / 60.0);
    let wheel = Wheel { marked_rim_speed: speed.into(), ..Wheel::default() };
    let wheel = wheel.with_marking(&marking);
    assert_eq!(wheel.marking_says, Datum::Given(MarkingSays::Same));
    assert_eq!(wheel.marked_rim_speed, Datum::Given(Velocity::new::<meter_per_second>(35.0)));
    // Rounded down it stays.
    let speed = Velocity::new::<meter_per_second>(34.9);
    let wheel = Wheel { marked_rim_speed: speed.into(), ..Wheel::default() };
    let wheel = wheel.with_marking(&marking);
    assert_eq!(wheel.marking_says, Datum::Given(MarkingSays::Same));
    assert_eq!(wheel.marked_rim_speed, Datum::Given(Velocity::new::<meter_per_second>(34.9)));
}
