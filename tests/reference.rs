//! Printed tables and printed examples, typed a second time.
//!
//! Nothing expected here was read off the program: the CSV files under
//! `tests/reference` were typed from the print apart from `src/tables`, and
//! every other figure names its source where it stands.

use hubwright::source::Source;
use hubwright::tables::flanges::{
    Adaptor, O4, O5, O6, O7, O8, TABLE_O4, TABLE_O5, TABLE_O6, TABLE_O7, TABLE_O8,
};
use hubwright::units::{
    AngularVelocity, Exact, Force, Length, Mass, Nanometres, Power, Pressure, Torque, Velocity,
    foot_per_minute, inch, kilogram, meter_per_second, millimeter, newton, newton_meter, pascal,
    read, revolution_per_minute, watt,
};
use hubwright::wheel::{
    FlangeKind, FlangeLimits, Governs, Limit, Shape, flange_limits, rim_speed, speed_for_rim,
};

/// Data rows of a reference file: comments and the heading row left out,
/// cells split at commas outside of quotes.
fn rows(file: &str) -> Vec<Vec<String>> {
    let lines = file.lines().filter(|line| !line.starts_with('#') && !line.trim().is_empty());
    lines.skip(1).map(cells).collect()
}

fn cells(line: &str) -> Vec<String> {
    let (mut all, mut quoted) = (vec![String::new()], false);
    for c in line.chars() {
        match c {
            '"' => quoted = !quoted,
            ',' if !quoted => all.push(String::new()),
            c => all.last_mut().expect("starts with one cell").push(c),
        }
    }
    all
}

/// A printed inch size such as `4 1/2` in whole nanometres, in whole numbers
/// throughout: an inch is 25,400,000 nm.
fn nm(printed: &str) -> i64 {
    const INCH: i64 = 25_400_000;
    let whole = |text: &str| text.parse::<i64>().unwrap_or_else(|_| panic!("a size: {printed:?}"));
    let (whole_part, fraction) = match (printed.split_once(' '), printed.contains('/')) {
        (Some((front, fraction)), _) => (whole(front), Some(fraction)),
        (None, true) => (0, Some(printed)),
        (None, false) => (whole(printed), None),
    };
    let part = fraction.map_or(0, |fraction| {
        let (top, bottom) = fraction.split_once('/').expect("a fraction has a slash");
        let (top, bottom) = (whole(top), whole(bottom));
        assert_eq!(INCH * top % bottom, 0, "{printed} is not a whole number of nanometres");
        INCH * top / bottom
    });
    INCH * whole_part + part
}

/// That a table and its second typing hold the same numbers in the same
/// places, and as many rows: a row left out of either side shows.
fn assert_same<const N: usize>(table: &str, typed: &[[i64; N]], printed: &[[i64; N]]) {
    for (at, (ours, theirs)) in typed.iter().zip(printed).enumerate() {
        for (column, (our, their)) in ours.iter().zip(theirs).enumerate() {
            assert_eq!(
                our,
                their,
                "{table}, row {}, column {}: nm in src/tables and in tests/reference",
                at + 1,
                column + 1
            );
        }
    }
    assert_eq!(typed.len(), printed.len(), "{table}: rows in src/tables and in tests/reference");
    assert!(!printed.is_empty(), "{table}: a reference file without rows compares nothing");
}

/// A size of a table as the whole number that it must be.
fn whole(size: f64) -> i64 {
    assert_eq!(size.fract(), 0.0, "{size} nm is not whole");
    size as i64
}

fn sizes<const N: usize>(file: &str) -> Vec<[i64; N]> {
    let row = |row: Vec<String>| {
        let sizes: Vec<_> = row.iter().map(|cell| nm(cell)).collect();
        sizes.try_into().unwrap_or_else(|_| panic!("{N} columns: {row:?}"))
    };
    rows(file).into_iter().map(row).collect()
}

/// `over, up to, from included (1 or 0), hole, B, D, E`.
fn bands(file: &str) -> Vec<[i64; 7]> {
    let row = |row: Vec<String>| {
        let [over, up_to, from, hole, diameter, at_hole, at_edge] = &row[..] else {
            panic!("seven columns: {row:?}")
        };
        let from = match from.as_str() {
            "yes" => 1,
            "no" => 0,
            other => panic!("yes or no: {other:?}"),
        };
        [nm(over), nm(up_to), from, nm(hole), nm(diameter), nm(at_hole), nm(at_edge)]
    };
    rows(file).into_iter().map(row).collect()
}

fn band(row: &Adaptor) -> [i64; 7] {
    let sizes = [row.over, row.up_to, 0.0, row.hole, row.diameter, row.thickness_at_hole];
    let [over, up_to, _, hole, diameter, at_hole] = sizes.map(whole);
    [over, up_to, row.from.into(), hole, diameter, at_hole, whole(row.thickness_at_edge)]
}

#[test]
fn table_o4_is_what_was_typed_a_second_time() {
    let ours = TABLE_O4.map(|row| [row.wheel, row.diameter, row.thickness].map(whole));
    assert_same("Table O-4", &ours, &sizes(include_str!("reference/flanges_o4.csv")));
}

#[test]
fn table_o5_is_what_was_typed_a_second_time() {
    let ours: Vec<_> = TABLE_O5.iter().map(band).collect();
    assert_same("Table O-5", &ours, &bands(include_str!("reference/flanges_o5.csv")));
}

#[test]
fn table_o6_is_what_was_typed_a_second_time() {
    let ours = TABLE_O6.map(|row| {
        let lands = [row.least_land, row.greatest_land];
        let [wheel, diameter, at_hole, at_edge] =
            [row.wheel, row.diameter, row.thickness_at_hole, row.thickness_at_edge].map(whole);
        let [least, greatest] = lands.map(whole);
        [wheel, diameter, least, greatest, at_hole, at_edge]
    });
    assert_same("Table O-6", &ours, &sizes(include_str!("reference/flanges_o6.csv")));
}

#[test]
fn table_o7_is_what_was_typed_a_second_time() {
    let ours: Vec<_> = TABLE_O7
        .iter()
        .map(|row| {
            // The print lists single wheel sizes, so that the band is one size.
            assert_eq!((row.over, row.from), (row.up_to, true), "{row:?}");
            let sizes = [row.up_to, row.hole, row.diameter, row.thickness_at_hole];
            let [wheel, hole, diameter, at_hole] = sizes.map(whole);
            [wheel, hole, diameter, at_hole, whole(row.thickness_at_edge)]
        })
        .collect();
    assert_same("Table O-7", &ours, &sizes(include_str!("reference/flanges_o7.csv")));
}

#[test]
fn table_o8_is_what_was_typed_a_second_time() {
    let ours: Vec<_> = TABLE_O8.iter().map(band).collect();
    assert_same("Table O-8", &ours, &bands(include_str!("reference/flanges_o8.csv")));
}

#[test]
fn a_second_typing_that_differs_in_one_cell_or_one_row_is_noticed() {
    let table = [[1, 2], [3, 4]];
    for other in [&[[1, 2], [3, 5]][..], &[[1, 2]], &[[1, 2], [3, 4], [5, 6]]] {
        let caught = std::panic::catch_unwind(|| assert_same("made up", &table, other));
        assert!(caught.is_err(), "{other:?} passed for {table:?}");
    }
}

fn rpm(speed: f64) -> AngularVelocity {
    AngularVelocity::new::<revolution_per_minute>(speed)
}

fn inches(size: f64) -> Length {
    Length::new::<inch>(size)
}

fn sfpm(diameter_in: f64, speed: f64) -> f64 {
    let v = rim_speed(inches(diameter_in), rpm(speed)).expect("a wheel that turns");
    v.get::<foot_per_minute>()
}

#[test]
fn the_rim_speeds_that_29_cfr_prints_differ_from_the_exact_ones_by_a_rounded_constant_alone() {
    // 29 CFR 1910.211(b)(8): "0.262 x diameter in inches x rpm"; 24 in and
    // 12 in at 1000 rpm are printed as 6288 and 3144. π/12 is 0.261799….
    for (diameter, printed, exact) in [(24.0, 6288.0, 6_283.185_307), (12.0, 3144.0, 3_141.592_654)]
    {
        assert_eq!(0.262 * diameter * 1000.0, printed, "the constant is rounded, not the product");
        let ours = sfpm(diameter, 1000.0);
        assert!((ours - exact).abs() < 1e-5, "{diameter} in at 1000 rpm: {ours} sfpm");
        let share = 0.262 / (std::f64::consts::PI / 12.0);
        assert!((ours * share - printed).abs() < 1e-6, "{ours} times {share}");
    }
}

#[test]
fn worked_speeds_come_out_as_published() {
    let examples = rows(include_str!("reference/speeds.csv"));
    assert_eq!(examples.len(), 16, "rows of tests/reference/speeds.csv");
    for row in examples {
        let [id, asks, first, second, expected, unit, tolerance, status, source] = &row[..] else {
            panic!("nine columns: {row:?}")
        };
        assert!(["read", "practice", "computed"].contains(&status.as_str()), "{id}: {status}");
        assert!(!source.is_empty(), "{id} names no source");
        let speed = |text: &str| read::<Velocity>(text).expect("a speed");
        let velocity = |v: Velocity| match unit.as_str() {
            "m/s" => v.get::<meter_per_second>(),
            "sfpm" => v.get::<foot_per_minute>(),
            "mm/min" => v.get::<meter_per_second>() * 60_000.0,
            other => panic!("{id}: unit {other}"),
        };
        let got = match asks.as_str() {
            "rim" => {
                let turns = read(second).expect("turns");
                velocity(rim_speed(read(first).expect("a length"), turns).expect("a rim speed"))
            }
            "text" => velocity(speed(first)),
            "turns" => {
                assert_eq!(unit, "rpm", "{id}");
                let set = speed_for_rim(read(first).expect("a length"), speed(second), None);
                set.expect("a speed").speed.get::<revolution_per_minute>()
            }
            other => panic!("{id} asks for {other}"),
        };
        let [expected, tolerance] =
            [expected, tolerance].map(|text| text.parse::<f64>().expect("a number"));
        // A tolerance of nothing still leaves the last bits of binary arithmetic.
        let room = expected * tolerance.max(1e-14);
        assert!(
            (got - expected).abs() <= room,
            "{id}: {got} {unit}, published {expected} ± {room}"
        );
    }
}

/// Limits of a straight wheel of whole nanometres.
fn limits(wheel_nm: i64, kind: FlangeKind, hole_nm: Option<i64>) -> FlangeLimits {
    limits_of(Shape::Type1, wheel_nm, kind, hole_nm)
}

fn limits_of(shape: Shape, wheel: i64, kind: FlangeKind, hole: Option<i64>) -> FlangeLimits {
    let length = |nm: i64| Length::from(Nanometres(nm));
    flange_limits(shape, length(wheel), kind, hole.map(length)).expect("sizes above zero")
}

fn size(limit: Option<Limit>) -> Option<i64> {
    limit.map(|limit| Nanometres::from(limit.value).0)
}

fn source(limit: Option<Limit>) -> Option<Source> {
    limit.map(|limit| limit.source)
}

/// The least diameter by the table alone, whichever governs: the step of the
/// working that names the table.
fn by_table(limits: &FlangeLimits) -> Option<(i64, Source)> {
    let working = limits.working();
    let step = working.steps.iter().find(|step| step.symbol == "least by table")?;
    Some((Nanometres::from(Length::new::<millimeter>(step.result)).0, step.source))
}

fn by_ratio(limits: &FlangeLimits) -> Option<f64> {
    let working = limits.working();
    let step = working.steps.iter().find(|step| step.symbol == "least by ratio")?;
    Some(Length::new::<millimeter>(step.result).get::<inch>())
}

#[test]
fn a_third_of_a_4_in_wheel_is_1_33_in() {
    // OSHA interpretation of 1992-03-01: 1/3 of 4 in, printed 1.33 in and 3.38 cm.
    let limits = limits(nm("4"), FlangeKind::Relieved, None);
    let third = by_ratio(&limits).expect("a straight wheel has a ratio");
    assert!((third - 1.33).abs() <= 0.005, "{third} in");
    assert!((third - 4.0 / 3.0).abs() < 1e-12, "{third} in");
    assert!((third * 2.54 - 3.38).abs() <= 0.01, "{third} in");
}

#[test]
fn the_larger_of_ratio_and_table_governs() {
    // 29 CFR 1910.215(c)(1) and Table O-6: in wheels of 14 and 26 in the table
    // (4 1/2 and 8 1/2 in) is below a third; at 16 in (5 1/2) it is above.
    for (wheel, governs, least) in [
        ("14", Governs::Ratio, 14.0 / 3.0),
        ("26", Governs::Ratio, 26.0 / 3.0),
        ("16", Governs::Table, 5.5),
        // A third of 12 in is the 4 in of the table: nothing to choose.
        ("12", Governs::Ratio, 4.0),
    ] {
        let limit = limits(nm(wheel), FlangeKind::Relieved, None).least_diameter.expect("a limit");
        assert_eq!(limit.governs, governs, "{wheel} in");
        let got = limit.value.get::<inch>();
        assert!((got - least).abs() < 1e-7, "{wheel} in: {got} in, not {least}");
    }
}

#[test]
fn a_16_in_cutting_off_wheel_needs_4_in() {
    // 29 CFR 1910.215(c)(1)(ii): a quarter, and no table of diameters.
    let cutting = Shape::Type1CuttingOff;
    let limits = limits_of(cutting, nm("16"), FlangeKind::Relieved, None);
    let least = limits.least_diameter.expect("a quarter");
    assert_eq!((size(Some(least)), least.governs), (Some(nm("4")), Governs::Ratio));
    assert_eq!(limits.next_row_diameter, None);
    assert_eq!(by_table(&limits), None);
}

#[test]
fn a_sleeve_under_a_third_is_held_to_the_third() {
    // Table O-8: 42 in with a 12 in hole asks for 13 1/2 in, a third is 14 in.
    let limits = limits(nm("42"), FlangeKind::Sleeve, Some(nm("12")));
    assert_eq!(by_table(&limits), Some((nm("13 1/2"), O8)));
    assert_eq!(size(limits.least_diameter), Some(nm("14")));
    assert_eq!(limits.least_diameter.map(|limit| limit.governs), Some(Governs::Ratio));
}

/// Least diameter, lands, thicknesses as the kernel gives them for one wheel.
fn looked_up(limits: &FlangeLimits) -> [Option<i64>; 5] {
    [
        by_table(limits).map(|(size, _)| size),
        size(limits.least_land),
        size(limits.greatest_land),
        size(limits.least_thickness_at_hole),
        size(limits.least_thickness_at_edge),
    ]
}

#[test]
fn every_row_of_o4_and_o6_is_found_by_its_wheel_and_within_half_a_millimetre_of_it() {
    let o6: Vec<[i64; 6]> = sizes(include_str!("reference/flanges_o6.csv"));
    let o4: Vec<[i64; 3]> = sizes(include_str!("reference/flanges_o4.csv"));
    for off in [0, 1, -1, 500_000, -500_000] {
        for [wheel, diameter, least, most, at_hole, at_edge] in &o6 {
            let limits = limits(wheel + off, FlangeKind::Relieved, None);
            let expected = [diameter, least, most, at_hole, at_edge].map(|size| Some(*size));
            assert_eq!(looked_up(&limits), expected, "O-6, {wheel} nm {off:+} nm");
            assert_eq!(limits.next_row_diameter, None, "a listed wheel has its own row alone");
            assert_eq!(source(limits.least_land), Some(O6));
        }
        for [wheel, diameter, thickness] in &o4 {
            let limits = limits(wheel + off, FlangeKind::Unrelieved, None);
            let expected = [Some(*diameter), None, None, Some(*thickness), Some(*thickness)];
            assert_eq!(looked_up(&limits), expected, "O-4, {wheel} nm {off:+} nm");
            assert_eq!(limits.next_row_diameter, None, "a listed wheel has its own row alone");
            assert_eq!(source(limits.least_thickness_at_hole), Some(O4));
        }
    }
}

#[test]
fn a_wheel_between_two_rows_goes_by_the_lower_and_names_the_next() {
    let o6: Vec<[i64; 6]> = sizes(include_str!("reference/flanges_o6.csv"));
    let o4: Vec<[i64; 3]> = sizes(include_str!("reference/flanges_o4.csv"));
    for pair in o6.windows(2) {
        let ([lower, diameter, ..], [upper, next, ..]) = (pair[0], pair[1]);
        // One nanometre beyond the half millimetre on either side, and the middle.
        for wheel in [lower + 500_001, (lower + upper) / 2, upper - 500_001] {
            let limits = limits(wheel, FlangeKind::Relieved, None);
            assert_eq!(by_table(&limits), Some((diameter, O6)), "{wheel} nm");
            assert_eq!(size(limits.next_row_diameter), Some(next), "{wheel} nm");
            assert_eq!(source(limits.next_row_diameter), Some(O6));
        }
    }
    for pair in o4.windows(2) {
        let ([lower, diameter, _], [upper, next, _]) = (pair[0], pair[1]);
        for wheel in [lower + 500_001, upper - 500_001] {
            let limits = limits(wheel, FlangeKind::Unrelieved, None);
            assert_eq!(by_table(&limits), Some((diameter, O4)), "{wheel} nm");
            assert_eq!(size(limits.next_row_diameter), Some(next), "{wheel} nm");
        }
    }
}

#[test]
fn a_wheel_below_the_first_row_has_no_row_and_one_above_the_last_has_the_last() {
    let below = limits(nm("1") - 500_001, FlangeKind::Relieved, None);
    assert_eq!((by_table(&below), size(below.next_row_diameter)), (None, Some(nm("3/8"))));
    let above = limits(nm("80"), FlangeKind::Relieved, None);
    assert_eq!((by_table(&above), size(above.next_row_diameter)), (Some((nm("24"), O6)), None));
}

#[test]
fn a_180_mm_wheel_is_between_7_and_8_in() {
    // 180 mm is 7.087 in: the 7 in row asks for 2 1/2 in, the 8 in row for 3 in;
    // a third, 60 mm, is less than 2 1/2 in (63.5 mm).
    let limits = limits(180_000_000, FlangeKind::Relieved, None);
    assert_eq!(size(limits.least_diameter), Some(63_500_000));
    assert_eq!(size(limits.next_row_diameter), Some(76_200_000));
}

/// Every row of a table of bands at both ends of its band, by its own hole.
fn assert_bands_found(file: &str, kind: FlangeKind, table: Source) {
    for [over, up_to, from, hole, diameter, at_hole, at_edge] in bands(file) {
        // A band "over 14" begins beyond 14 in and what still counts as 14 in.
        let lowest = if from == 1 { over - 500_000 } else { over + 500_001 };
        for wheel in [lowest, (lowest + up_to) / 2, up_to, up_to + 500_000] {
            for off in [0, 500_000, -500_000] {
                let limits = limits(wheel, kind, Some(hole + off));
                let what = format!("{table}: wheel {wheel} nm, hole {hole} {off:+} nm");
                assert_eq!(by_table(&limits), Some((diameter, table)), "{what}");
                assert_eq!(limits.next_row_diameter, None, "{what}");
                assert_eq!(size(limits.least_thickness_at_hole), Some(at_hole), "{what}");
                assert_eq!(size(limits.least_thickness_at_edge), Some(at_edge), "{what}");
                assert_eq!(size(limits.least_land), None, "{what}: only O-6 gives a land");
            }
        }
    }
}

#[test]
fn every_row_of_o5_and_o8_is_found_by_its_band_and_hole() {
    assert_bands_found(include_str!("reference/flanges_o5.csv"), FlangeKind::Adaptor, O5);
    assert_bands_found(include_str!("reference/flanges_o8.csv"), FlangeKind::Sleeve, O8);
}

#[test]
fn every_row_of_o7_is_found_by_its_wheel_and_hole() {
    let rows: Vec<[i64; 5]> = sizes(include_str!("reference/flanges_o7.csv"));
    for [wheel, hole, diameter, at_hole, at_edge] in rows {
        for off in [0, 500_000, -500_000] {
            let limits = limits(wheel + off, FlangeKind::AdaptorHeavy, Some(hole));
            assert_eq!(by_table(&limits), Some((diameter, O7)), "{wheel} nm {off:+} nm, {hole} nm");
            assert_eq!(size(limits.least_thickness_at_hole), Some(at_hole));
            assert_eq!(size(limits.least_thickness_at_edge), Some(at_edge));
        }
    }
    // Between the listed 20 and 24 in a wheel falls to the 20 in rows.
    let between = limits(nm("22"), FlangeKind::AdaptorHeavy, Some(nm("8")));
    assert_eq!(by_table(&between), Some((nm("10"), O7)));
    // Below the first size there is no row.
    let below = limits(nm("18"), FlangeKind::AdaptorHeavy, Some(nm("8")));
    assert_eq!(by_table(&below), None);
}

#[test]
fn a_hole_between_two_rows_goes_by_the_lower_and_names_the_next() {
    // O-5, over 14 to 18 in: holes of 4 in (6 in flange) and 5 in (7 in).
    let limits_5 = limits(nm("16"), FlangeKind::Adaptor, Some(nm("4 1/2")));
    assert_eq!(by_table(&limits_5), Some((nm("6"), O5)));
    assert_eq!(size(limits_5.next_row_diameter), Some(nm("7")));
    // O-8, over 20 to 30 in: holes of 12 in (13 1/2 in) and 16 in (17 1/2 in).
    let limits_8 = limits(nm("24"), FlangeKind::Sleeve, Some(nm("14")));
    assert_eq!(by_table(&limits_8), Some((nm("13 1/2"), O8)));
    assert_eq!(size(limits_8.next_row_diameter), Some(nm("17 1/2")));
}

#[test]
fn a_sleeve_with_a_hole_smaller_than_o8_lists_goes_to_o6() {
    // The smallest holes that O-8 lists: 5 in up to 20 in, then 8, 12 and 16 in.
    // What O-6 asks at these wheels: 4, 5 1/2, 8, 12 and 16 in.
    for (wheel, listed, by_o6) in [
        ("12", "5", "4"),
        ("16", "5", "5 1/2"),
        ("24", "8", "8"),
        ("36", "12", "12"),
        ("48", "16", "16"),
    ] {
        let smaller = limits(nm(wheel), FlangeKind::Sleeve, Some(nm(listed) - 500_001));
        assert_eq!(by_table(&smaller), Some((nm(by_o6), O6)), "{wheel} in, under {listed} in");
        assert!(smaller.least_land.is_some(), "O-6 gives a land too");
        let own = limits(nm(wheel), FlangeKind::Sleeve, Some(nm(listed)));
        assert_eq!(by_table(&own).map(|(_, source)| source), Some(O8), "{wheel} in, {listed} in");
    }
    // O-8 begins at 12 in and ends at 60 in.
    for wheel in ["10", "72"] {
        let outside = limits(nm(wheel), FlangeKind::Sleeve, Some(nm("5")));
        assert_eq!(by_table(&outside).map(|(_, source)| source), Some(O6), "{wheel} in");
    }
}

#[test]
fn recess_and_undercut_are_a_sixteenth_and_an_eighth() {
    // 29 CFR 1910.215(c)(5); Table O-6, note: flat flanges under 2 in.
    let relieved = limits(nm("8"), FlangeKind::Relieved, None);
    assert_eq!(size(relieved.least_recess), Some(nm("1/16")));
    assert_eq!(size(relieved.least_undercut), None);
    let sleeve = limits(nm("14"), FlangeKind::Sleeve, Some(nm("5")));
    assert_eq!(size(sleeve.least_undercut), Some(nm("1/8")));
    assert_eq!(size(sleeve.least_recess), None);
    assert_eq!(size(limits(nm("2") - 1, FlangeKind::Relieved, None).least_recess), None);
    assert_eq!(size(limits(nm("2"), FlangeKind::Relieved, None).least_recess), Some(nm("1/16")));
}

#[test]
fn the_types_with_special_flanges_have_no_third_and_no_table() {
    // 29 CFR 1910.215(c)(1)(i): types 27 and 28 and the modified types 6 and 11.
    for shape in [Shape::Type27, Shape::Type28, Shape::Type6Terrazzo, Shape::Type11Terrazzo] {
        let limits = limits_of(shape, nm("7"), FlangeKind::Relieved, None);
        assert_eq!(limits.least_diameter, None, "{shape}");
        assert_eq!(limits.working().steps.len(), 0, "{shape}");
    }
}

/// `got` and `exact` agree to the last two bits of a float.
#[track_caller]
fn assert_exact(what: &str, got: f64, exact: f64) {
    assert!((got / exact - 1.0).abs() <= 5e-16, "{what} is {got}, by definition {exact}");
}

#[test]
fn american_units_are_their_definitions() {
    // NIST SP 811, appendix B: the pound is 0.45359237 kg, standard gravity
    // 9.80665 m/s², the foot 0.3048 m; every other one follows, and the long
    // figures are the products written out.
    let kg = |text: &str| read::<Mass>(text).expect("a mass").get::<kilogram>();
    assert_exact("1 lb", kg("1 lb"), 0.453_592_37);
    assert_exact("16 oz", kg("16 oz"), 0.453_592_37);
    let lbf = 4.448_221_615_260_5; // 0.45359237 × 9.80665
    let force = read::<Force>("1 lbf").expect("a force").get::<newton>();
    assert_exact("1 lbf", force, lbf);
    let pa = |text: &str| read::<Pressure>(text).expect("a pressure").get::<pascal>();
    assert_exact("1 psi", pa("1 psi"), lbf / (0.0254 * 0.0254));
    assert_exact("1 psi", pa("1 psi"), 6_894.757_293_168_361);
    assert_exact("1 ksi", pa("1 ksi"), 6_894_757.293_168_361);
    let hp = read::<Power>("1 hp").expect("a power").get::<watt>();
    assert_exact("1 hp", hp, 550.0 * 0.3048 * lbf);
    assert_exact("1 hp", hp, 745.699_871_582_270_2);
    let v = |text: &str| read::<Velocity>(text).expect("a speed").get::<meter_per_second>();
    for sfpm in ["1 sfpm", "1 ft/min", "1 sfm", "1 fpm"] {
        assert_exact(sfpm, v(sfpm), 0.005_08); // 0.3048 / 60
    }
    assert_exact("1 ft/s", v("1 ft/s"), 0.3048);
    let torque = |text: &str| read::<Torque>(text).expect("a torque").get::<newton_meter>();
    assert_exact("1 lbf ft", torque("1 lbf ft"), 1.355_817_948_331_400_4);
    assert_exact("12 lbf in", torque("12 lbf in"), 1.355_817_948_331_400_4);
    let metres = |text: &str| read::<Length>(text).expect("a length").exact();
    assert_eq!([metres("1 in"), metres("1 ft"), metres("1 thou")], [25.4e6, 304.8e6, 25.4e3]);
}

#[test]
fn a_turn_is_two_pi_and_a_rotational_speed_names_turns_or_an_angle() {
    // 60 rpm, 1 rev/s, 360 deg/s and 2π rad/s are one and the same.
    for text in
        ["60 rpm", "60 rev/min", "60 1/min", "1 rev/s", "360 deg/s", "6.283185307179586 rad/s"]
    {
        let speed: AngularVelocity = read(text).unwrap_or_else(|error| panic!("{text}: {error}"));
        assert_eq!(speed.exact(), 60e6, "{text}");
    }
}
