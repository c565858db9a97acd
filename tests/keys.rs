//! Keys, keyways, centring, key steel and brazing against printed tables,
//! printed examples and the geometry of the circle.

use std::collections::HashMap;

use hubwright::joint::braze::BEFORE_FINISHING;
use hubwright::joint::key_strength::KEY_STATICS;
use hubwright::joint::{
    BrazedKey, CutIn, Filler, GapOutcome, KeyFit, KeyStandard, KeyStock, KeyStrength, Keyway,
    Limits, MoveTool, SlotMarks, chord_height, key_class, key_for, published_gap,
};
use hubwright::source::Status;
use hubwright::tables::keys::{INCH, MACHINE_TOOL, PARALLEL, TRIMS};
use hubwright::units::{
    Exact, Length, Nanometres, Pressure, TemperatureCoefficient, TemperatureInterval, Torque,
    Words, cubic_millimeter, degree, inch, kelvin, megapascal, millimeter, newton, newton_meter,
    per_kelvin, read, square_millimeter,
};
use hubwright::{Error, ErrorKind};
use proptest::prelude::*;

fn mm(size: f64) -> Length {
    Length::new::<millimeter>(size)
}

fn inches(size: f64) -> Length {
    Length::new::<inch>(size)
}

fn mpa(stress: f64) -> Pressure {
    Pressure::new::<megapascal>(stress)
}

fn nm_torque(torque: f64) -> Torque {
    Torque::new::<newton_meter>(torque)
}

fn whole(length: Length) -> i64 {
    Nanometres::from(length).0
}

/// Rows of a reference file by the names of its columns.
fn rows(file: &str) -> Vec<HashMap<String, String>> {
    let mut lines = file.lines().filter(|line| !line.starts_with('#') && !line.trim().is_empty());
    let names = cells(lines.next().expect("a heading row"));
    let row = |line: &str| {
        let cells = cells(line);
        assert_eq!(cells.len(), names.len(), "{line}");
        names.iter().cloned().zip(cells).collect()
    };
    let rows: Vec<_> = lines.map(row).collect();
    assert!(!rows.is_empty(), "a reference file without rows compares nothing");
    rows
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

fn number(row: &HashMap<String, String>, name: &str) -> f64 {
    row[name].parse().unwrap_or_else(|_| panic!("{name} of {row:?}"))
}

/// Printed millimetres in whole nm.
fn nm(row: &HashMap<String, String>, name: &str) -> i64 {
    (number(row, name) * 1e6).round() as i64
}

/// Printed µm in whole nm.
fn um(row: &HashMap<String, String>, name: &str) -> i64 {
    (number(row, name) * 1e3).round() as i64
}

#[track_caller]
fn assert_told(error: &Error, code: &str, parts: &[&str]) {
    let text = error.to_string();
    assert_eq!(error.code(), code, "{text}");
    for part in parts {
        assert!(text.contains(part), "{part:?} is not in {text:?}");
    }
    assert!(text.contains("\nhint: "), "{text}");
}

// --- Tables ------------------------------------------------------------------

#[test]
fn din_6885_1_is_what_was_read() {
    let printed = rows(include_str!("reference/keys_parallel.csv"));
    assert_eq!(printed.len(), PARALLEL.len());
    for (ours, row) in PARALLEL.iter().zip(&printed) {
        let sizes =
            [ours.over, ours.up_to, ours.width, ours.height, ours.shaft_depth, ours.hub_depth];
        assert_eq!(
            sizes,
            ["over", "to", "b", "h", "t1", "t2"].map(|name| nm(row, name)),
            "{row:?}"
        );
        assert_eq!(ours.depth_tolerance, Some(nm(row, "tol")), "{row:?}");
    }
}

#[test]
fn a_shaft_takes_the_key_of_its_step_up_to_and_including_the_upper_end() {
    for row in rows(include_str!("reference/keys_parallel.csv")) {
        let [over, to] = ["over", "to"].map(|name| number(&row, name));
        for shaft in [over + 0.000_001, (over + to) / 2.0, to] {
            let key = key_for(mm(shaft), KeyStandard::Din6885Part1).expect("inside the table");
            assert_eq!([key.width, key.height].map(whole), ["b", "h"].map(|name| nm(&row, name)));
            assert_eq!(whole(key.across_shaft), whole(mm(shaft)) - nm(&row, "t1"), "{shaft}");
            assert_eq!(whole(key.across_hub), whole(mm(shaft)) + nm(&row, "t2"), "{shaft}");
            assert_eq!(key.depth_tolerance.map(whole), Some(nm(&row, "tol")));
        }
    }
}

#[test]
fn keyway_widths_through_limits_are_those_that_were_read() {
    for row in rows(include_str!("reference/keys_parallel.csv")) {
        let key = key_for(mm(number(&row, "to")), KeyStandard::Din6885Part1).expect("in the table");
        let pair = |limits: Limits| [limits.upper_nm, limits.lower_nm];
        let printed =
            |class: &str| [um(&row, &format!("{class}u")), um(&row, &format!("{class}l"))];
        for (fit, shaft, hub) in [
            (KeyFit::Free, "H9", "D10"),
            (KeyFit::Normal, "N9", "JS9"),
            (KeyFit::Close, "P9", "P9"),
        ] {
            let widths = key.widths(fit).expect("a metric key");
            assert_eq!(pair(widths.in_shaft.hole), printed(shaft), "{fit} {row:?}");
            assert_eq!(pair(widths.in_hub.hole), printed(hub), "{fit} {row:?}");
            // h9 is H9 upside down.
            let [h9, _] = printed("H9");
            assert_eq!(pair(widths.in_hub.shaft), [0, -h9], "{row:?}");
            assert_eq!(widths.in_hub.most_clearance_nm, printed(hub)[0] + h9);
            assert_eq!(widths.source.status, Status::Memory);
        }
    }
}

#[test]
fn din_6885_2_is_what_was_read() {
    let printed = rows(include_str!("reference/keys_machine_tool.csv"));
    for row in &printed {
        let shaft = mm(number(row, "d"));
        let key = key_for(shaft, KeyStandard::Din6885Part2).expect("listed");
        let ours = [
            key.width,
            key.height,
            key.shaft_depth,
            key.hub_depth,
            key.across_hub,
            key.across_shaft,
        ];
        let names = ["b", "h", "t1", "t2", "across_hub", "across_shaft"];
        assert_eq!(ours.map(whole), names.map(|name| nm(row, name)), "{row:?}");
        assert_eq!(key.depth_tolerance, None, "the tolerance was not read");
    }
    // No row reaches beyond the shafts that are printed.
    let listed = |size: i64| printed.iter().any(|row| nm(row, "d") == size);
    for row in MACHINE_TOOL {
        assert!(listed(row.over) && listed(row.up_to), "{row:?}");
    }
}

/// Geometry worked out apart: the key stands `h − (t1 − y)` in the hub and `t1 − y` in the shaft, and its chamfer bears on nothing.
#[test]
fn the_height_that_bears_is_the_lesser_of_hub_and_shaft() {
    use KeyStandard::{B17Square, Din6885Part1, Din6885Part2};
    let y = |d: f64, b: f64| d / 2.0 - ((d / 2.0).powi(2) - (b / 2.0).powi(2)).sqrt();
    for (d, standard, wanted) in [
        // 6 × 6, t1 3.5, chamfer up to 0.4: the hub bears less.
        (22.0, Din6885Part1, 6.0 - (3.5 - y(22.0, 6.0)) - 0.4),
        // 8 × 7, t1 5.4.
        (24.0, Din6885Part2, 7.0 - (5.4 - y(24.0, 8.0)) - 0.4),
        // 8 × 7, t1 4: the shaft bears less.
        (30.0, Din6885Part1, 4.0 - y(30.0, 8.0) - 0.4),
        // A square inch key bears half of its height in both: 1/4 in on 1 in.
        (25.4, B17Square, 3.175),
    ] {
        let key = key_for(mm(d), standard).expect("listed");
        assert!((key.bearing_height.get::<millimeter>() - wanted).abs() < 1e-9, "{d}");
        assert!(key.bearing_height <= key.height / 2.0, "{d}");
    }
}

/// A printed inch size such as `1 1/4` in whole nm.
fn fraction(text: &str) -> i64 {
    whole(read(&format!("{text} in")).expect("an inch size"))
}

#[test]
fn the_inch_keys_are_what_was_read() {
    let printed = rows(include_str!("reference/keys_inch.csv"));
    assert_eq!(printed.len(), INCH.len());
    for (ours, row) in INCH.iter().zip(&printed) {
        let sizes = [ours.over, ours.up_to, ours.width];
        assert_eq!(sizes, ["over", "to", "width"].map(|name| fraction(&row[name])), "{row:?}");
        assert_eq!(row["width"], row["square"], "a square key is as high as wide");
        let flat = (!row["rectangular"].is_empty()).then(|| fraction(&row["rectangular"]));
        assert_eq!(ours.flat, flat, "{row:?}");
    }
}

#[test]
fn keyseat_depths_are_those_of_the_31_printed_rows_to_a_thousandth() {
    let printed = rows(include_str!("reference/keyseats_inch.csv"));
    assert_eq!(printed.len(), 31);
    let mut compared = 0;
    for row in &printed {
        let shaft = inches(number(row, "shaft"));
        for (standard, name) in
            [(KeyStandard::B17Square, "square"), (KeyStandard::B17Rectangular, "rectangular")]
        {
            let key = key_for(shaft, standard).expect("in the table");
            assert_eq!(whole(key.width), whole(inches(number(row, "width"))), "{row:?}");
            assert_eq!(whole(key.height), whole(inches(number(row, name))), "{row:?}");
            for (ours, letter) in [(key.across_shaft, "s"), (key.across_hub, "t")] {
                let column = format!("{letter}_{name}");
                if row[&column].is_empty() {
                    continue;
                }
                // Rounded to a thousandth in print: half of one either way.
                let off = (ours.get::<inch>() - number(row, &column)).abs();
                assert!(off < 0.000_51, "{column} of {row:?} is off by {off} in");
                compared += 1;
            }
        }
    }
    assert_eq!(compared, 123, "31 rows of four depths, one not legible");
}

#[test]
fn din_bore_gauges_and_walls_are_those_of_the_worked_rows() {
    // d, d + t2, d - t1 as read in print; y and both walls computed there to four decimals.
    for (d, hub, shaft, y, hub_wall, shaft_wall) in [
        (20.0, 22.8, 16.5, 0.4606, 3.2606, 3.0394),
        (25.0, 28.3, 21.0, 0.6573, 3.9573, 3.3427),
        (30.0, 33.3, 26.0, 0.5432, 3.8432, 3.4568),
        (38.0, 41.3, 33.0, 0.6697, 3.9697, 4.3303),
        (50.0, 53.8, 44.5, 1.0, 4.8, 4.5),
        (60.0, 64.4, 53.0, 1.3818, 5.7818, 5.6182),
    ] {
        let key = key_for(mm(d), KeyStandard::Din6885Part1).expect("in the table");
        assert_eq!(whole(key.across_hub), whole(mm(hub)), "{d}");
        assert_eq!(whole(key.across_shaft), whole(mm(shaft)), "{d}");
        for (ours, theirs) in
            [(key.chord_height, y), (key.hub_wall, hub_wall), (key.shaft_wall, shaft_wall)]
        {
            assert!((ours.get::<millimeter>() - theirs).abs() < 5.1e-5, "{d}: {ours:?} {theirs}");
        }
    }
}

#[test]
fn lengths_and_edges_are_what_was_recalled_and_say_so() {
    let printed = rows(include_str!("reference/keys_trim.csv"));
    assert_eq!(printed.len(), TRIMS.len());
    for row in &printed {
        let width = nm(row, "b");
        let step = PARALLEL.iter().find(|step| step.width == width).expect("a listed width");
        let key = key_for(Length::from_exact(step.up_to as f64), KeyStandard::Din6885Part1);
        let trim = key.expect("in the table").trim.expect("recalled");
        let ours = [
            trim.least_length,
            trim.most_length,
            trim.chamfer[0],
            trim.chamfer[1],
            trim.corner_radius[0],
            trim.corner_radius[1],
        ];
        let names = [
            "length_least",
            "length_most",
            "chamfer_least",
            "chamfer_most",
            "radius_least",
            "radius_most",
        ];
        assert_eq!(ours.map(whole), names.map(|name| nm(row, name)), "{row:?}");
        assert_eq!(trim.source.status, Status::Memory);
        // Every chamfer clears every corner radius, or the key would not sit on its bottom.
        assert!(trim.chamfer[0] >= trim.corner_radius[1], "{row:?}");
        let lengths: Vec<_> = trim.lengths().map(whole).collect();
        assert!(lengths.contains(&nm(row, "length_least")), "{row:?}");
        assert!(lengths.iter().all(|length| *length <= nm(row, "length_most")), "{row:?}");
        assert!(lengths.is_sorted());
    }
}

#[test]
fn brazing_gaps_are_what_was_read_and_recalled() {
    let printed = rows(include_str!("reference/brazing_gaps.csv"));
    assert_eq!(printed.len(), Filler::ALL.len());
    for row in &printed {
        let filler = Filler::read_word(&row["filler"]).expect("a filler");
        let gap = published_gap(filler);
        assert_eq!(
            [gap.least, gap.most].map(whole),
            ["least", "most"].map(|n| nm(row, n)),
            "{row:?}"
        );
        assert_eq!(format!("{:?}", gap.source.status).to_lowercase(), row["status"], "{row:?}");
    }
}

#[test]
fn a_shaft_outside_the_table_is_told_how_far_it_reaches() {
    let told = |shaft: Length, standard| key_for(shaft, standard).expect_err("outside");
    let part1 = KeyStandard::Din6885Part1;
    for shaft in [6.0, 5.0, 500.001] {
        let error = told(mm(shaft), part1);
        assert_told(
            &error,
            "out-of-range",
            &["`shaft_diameter`", "over 6 up to 500 mm", "DIN 6885-1"],
        );
    }
    let part2 = KeyStandard::Din6885Part2;
    for shaft in [11.9, 50.1] {
        assert_told(
            &told(mm(shaft), part2),
            "out-of-range",
            &["outside 12 to 50 mm", "DIN 6885-2"],
        );
    }
    assert_told(&told(mm(23.0), part2), "out-of-range", &["is 23 mm, between 22 and 24 mm"]);
    let square = told(inches(0.3125), KeyStandard::B17Square);
    assert_told(&square, "out-of-range", &["is 0.3125 in", "over 0.3125 up to 6.5 in", "B17.1"]);
    let flat = told(inches(0.4), KeyStandard::B17Rectangular);
    assert_told(&flat, "out-of-range", &["over 0.4375 up to 6.5 in"]);
    assert!(key_for(inches(0.4), KeyStandard::B17Square).is_ok());
    assert_told(&told(mm(0.0), part1), "out-of-range", &["not above 0"]);
    assert_told(&told(mm(f64::NAN), part1), "not-finite", &["`shaft_diameter`"]);
    assert_eq!(
        key_for(inches(1.0), KeyStandard::B17Square).expect("listed").widths(KeyFit::Free),
        None
    );
}

#[test]
fn standards_and_fits_are_read_by_their_other_names() {
    for (text, standard) in [
        ("ISO 773", KeyStandard::Din6885Part1),
        ("din 6885-1", KeyStandard::Din6885Part1),
        ("DIN 6885-2", KeyStandard::Din6885Part2),
        ("B17.1 square", KeyStandard::B17Square),
        ("ansi b17.1 flat", KeyStandard::B17Rectangular),
    ] {
        assert_eq!(KeyStandard::read_word(text), Ok(standard), "{text}");
    }
    let error = KeyStandard::read_word("DIN 6886").expect_err("taper keys");
    assert_told(&error, "unknown-word", &["DIN 6885-1", "ANSI B17.1 rectangular"]);
}

// --- Strength ----------------------------------------------------------------

#[test]
fn published_examples_of_key_length_come_out() {
    for row in rows(include_str!("reference/key_examples.csv")) {
        let size = |name: &str| read(&format!("{} {}", row[name], row["unit"])).expect("a size");
        let torque = read(&format!("{} {}", row["torque"], row["torque_unit"])).expect("a torque");
        let allowed: Pressure =
            read(&format!("{} {}", row["allowed"], row["stress_unit"])).expect("a stress");
        let key =
            KeyStrength::new(torque, size("shaft"), size("width"), size("height"), size("length"));
        let shears = row["asks"] == "shear";
        let key = if shears {
            key.with_allowed_shear(allowed)
        } else {
            key.with_allowed_bearing(allowed)
        };
        let found = key.solve().expect("a key");
        let length = if shears { found.shear_length } else { found.bearing_length };
        let length = length.expect("an allowed stress was given");
        let ours =
            if row["unit"] == "in" { length.get::<inch>() } else { length.get::<millimeter>() };
        let off = (ours - number(&row, "length")).abs();
        assert!(off <= number(&row, "within"), "{}: {ours}", row["name"]);
    }
}

/// 13.2 N m on 22 mm are 1200 N.
fn strength() -> KeyStrength {
    KeyStrength::new(nm_torque(13.2), mm(22.0), mm(6.0), mm(6.0), mm(20.0))
}

#[test]
fn a_key_on_its_limit_carries_and_one_step_below_it_does_not() {
    let found = strength().with_allowed_shear(mpa(10.0)).with_allowed_bearing(mpa(20.0)).solve();
    let found = found.expect("a key");
    assert!((found.force.get::<newton>() - 1200.0).abs() < 1e-9);
    assert_eq!(found.carries, Some(true));
    // Lengths at the limit are the key's own.
    for length in [found.shear_length, found.bearing_length] {
        assert_eq!(length.map(whole), Some(20_000_000));
    }
    let carries = |key: KeyStrength| key.solve().expect("a key").carries;
    assert_eq!(carries(strength().with_allowed_shear(mpa(9.999))), Some(false));
    assert_eq!(carries(strength().with_allowed_bearing(mpa(19.999))), Some(false));
    assert_eq!(
        carries(strength().with_allowed_bearing(mpa(30.0)).with_bearing_height(mm(2.0))),
        Some(true)
    );
    assert_eq!(
        carries(strength().with_allowed_bearing(mpa(29.9)).with_bearing_height(mm(2.0))),
        Some(false)
    );
    assert_eq!(carries(strength()), None, "nothing allowed was given");
}

#[test]
fn a_key_that_makes_no_sense_is_told() {
    let told = |key: KeyStrength| key.solve().expect_err("no sense");
    let long = told(strength().with_hub_length(mm(18.0)));
    assert_told(&long, "out-of-range", &["`length` is 20 mm, above the hub's 18 mm"]);
    assert!(strength().with_hub_length(mm(20.0)).solve().is_ok());
    let mut wide = strength();
    wide.width = mm(22.0);
    assert_told(
        &told(wide),
        "out-of-range",
        &["`width` is 22 mm, not between 0 and 22 mm", "shaft"],
    );
    assert_told(
        &told(strength().with_bearing_height(mm(3.1))),
        "out-of-range",
        &["`bearing_height`", "3 mm"],
    );
    for stress in [0.0, -1.0] {
        assert_told(
            &told(strength().with_allowed_shear(mpa(stress))),
            "out-of-range",
            &["`allowed_shear`"],
        );
        assert_told(
            &told(strength().with_allowed_bearing(mpa(stress))),
            "out-of-range",
            &["`allowed_bearing`"],
        );
    }
    type Field = (&'static str, fn(&mut KeyStrength, f64));
    let fields: [Field; 5] = [
        ("torque", |key, value| key.torque = nm_torque(value)),
        ("shaft_diameter", |key, value| key.shaft_diameter = mm(value)),
        ("width", |key, value| key.width = mm(value)),
        ("height", |key, value| key.height = mm(value)),
        ("length", |key, value| key.length = mm(value)),
    ];
    for (name, set) in fields {
        for (value, code) in [
            (0.0, "out-of-range"),
            (-1.0, "out-of-range"),
            (f64::NAN, "not-finite"),
            (f64::INFINITY, "not-finite"),
        ] {
            let mut key = strength();
            set(&mut key, value);
            assert_told(&told(key), code, &[&format!("`{name}`")]);
        }
    }
}

// --- Keyways -----------------------------------------------------------------

#[test]
fn a_4_mm_keyway_in_a_22_mm_bore_takes_100_strokes() {
    // y = 11 - sqrt(121 - 4) = 11 - 10.816653826 = 0.183346174; t + y = 1.983346174.
    let keyway = Keyway::new(CutIn::Hub, mm(22.0), mm(4.0), mm(1.8))
        .with_depth_tolerance(mm(0.1))
        .with_infeed(mm(0.02))
        .with_strokes_per_minute(50.0);
    let found = keyway.solve().expect("a keyway");
    assert!((found.chord_height.get::<millimeter>() - 0.183_346_174).abs() < 1e-9);
    assert!((found.feed.get::<millimeter>() - 1.983_346_174).abs() < 1e-9);
    assert_eq!(found.wall, found.feed);
    assert_eq!(
        [found.across, found.across_deepest.expect("a tolerance")].map(whole),
        [23_800_000, 23_900_000]
    );
    // 99 strokes take 1.98 mm and leave 0.003346 mm to the last.
    assert_eq!(found.strokes, Some(100));
    assert_eq!(found.last_infeed.map(whole), Some(3_346));
    assert_eq!(found.minutes, Some(2.0));
}

#[test]
fn a_feed_that_the_infeed_divides_takes_no_stroke_more() {
    // A shaft is touched at its crown: the feed is the depth. 2.5 / 0.02 = 125, which floats make 125.00000000000001.
    let keyway = Keyway::new(CutIn::Shaft, mm(12.0), mm(4.0), mm(2.5)).with_infeed(mm(0.02));
    let found = keyway.solve().expect("a keyway");
    assert_eq!(found.strokes, Some(125));
    assert_eq!(found.last_infeed.map(whole), Some(20_000));
    assert_eq!(whole(found.across), 9_500_000);
    // t1 - y with y = 6 - sqrt(36 - 4) = 0.343145751.
    assert!((found.wall.get::<millimeter>() - 2.156_854_249).abs() < 1e-9);
    assert_eq!(found.minutes, None);
}

#[test]
fn a_keyway_that_makes_no_sense_is_told() {
    let hub = |width, depth| Keyway::new(CutIn::Hub, mm(22.0), mm(width), mm(depth));
    let told = |keyway: Keyway| keyway.solve().expect_err("no sense");
    for width in [22.0, 23.0] {
        let given = format!("`width` is {width} mm, not between 0 and 22 mm");
        assert_told(&told(hub(width, 1.8)), "out-of-range", &[&given, "bore"]);
    }
    assert_told(&told(hub(4.0, 0.0)), "out-of-range", &["`depth`"]);
    assert_told(&told(hub(4.0, f64::NAN)), "not-finite", &["`depth`"]);
    for infeed in [0.0, -0.02, 1e-7] {
        assert_told(&told(hub(4.0, 1.8).with_infeed(mm(infeed))), "out-of-range", &["`infeed`"]);
    }
    for rate in [0.0, -50.0] {
        let error = told(hub(4.0, 1.8).with_strokes_per_minute(rate));
        assert_told(&error, "out-of-range", &["`strokes_per_minute`"]);
    }
    let error = told(hub(4.0, 1.8).with_depth_tolerance(mm(-0.1)));
    assert_told(&error, "out-of-range", &["`depth_tolerance`"]);
    let shaft = |depth| Keyway::new(CutIn::Shaft, mm(12.0), mm(4.0), mm(depth));
    // The walls begin at the chord height of 0.3431 mm, and the middle is at 6 mm.
    for depth in [0.343, 6.0] {
        assert_told(&told(shaft(depth)), "out-of-range", &["`depth`", "0.3431", "6 mm"]);
    }
    assert!(shaft(0.344).solve().is_ok());
    for (d, b) in [(0.0, 4.0), (22.0, 0.0), (22.0, 22.0), (-22.0, 4.0)] {
        assert_eq!(
            chord_height(mm(d), mm(b)).expect_err("no chord").code(),
            "out-of-range",
            "{d} {b}"
        );
    }
}

// --- Centring ----------------------------------------------------------------

fn marks(left: f64, right: f64) -> SlotMarks {
    SlotMarks::new(mm(22.0), mm(4.0), mm(left), mm(right))
}

#[test]
fn equal_marks_mean_a_centred_tool() {
    let found = marks(0.5, 0.5).solve().expect("two marks");
    assert_eq!((found.move_tool, whole(found.offset)), (MoveTool::Stay, 0));
    assert_eq!((whole(found.wall_difference), found.lean.get::<degree>()), (0, 0.0));
    assert_eq!(found.left_over, None);
}

#[test]
fn the_tool_goes_toward_the_narrow_mark() {
    let found = marks(0.60, 0.36).solve().expect("two marks");
    assert_eq!((found.move_tool, whole(found.offset)), (MoveTool::Right, 120_000));
    let found = marks(0.36, 0.60).solve().expect("two marks");
    assert_eq!((found.move_tool, whole(found.offset)), (MoveTool::Left, 120_000));
    // The edge is at sqrt(121 - 1.52²) = 10.894476, the bore over the corner at 2.12 mm at 10.793776 and over
    // that at 1.88 mm at 10.838155.
    assert!((found.cut.get::<millimeter>() - 0.100_700).abs() < 1e-6, "{:?}", found.cut);
    assert!((found.wall_difference.get::<millimeter>() - 0.044_379).abs() < 1e-6);
    // asin(0.12 / 11) in degrees.
    assert!((found.lean.get::<degree>() - 0.625_06).abs() < 1e-5);
}

#[test]
fn what_is_not_measured_is_not_moved_for_and_what_the_fixture_adds_is_left() {
    let found = marks(0.50, 0.47).with_measured_within(mm(0.02)).solve().expect("two marks");
    assert_eq!((found.move_tool, whole(found.offset)), (MoveTool::Stay, 15_000));
    let found = marks(0.60, 0.36)
        .with_measured_within(mm(0.02))
        .with_repeatability(mm(0.01))
        .with_depth(mm(1.8))
        .solve()
        .expect("two marks");
    assert_eq!(found.left_over.map(whole), Some(30_000));
    assert!(found.left_over_lean.expect("given").get::<degree>() < found.lean.get::<degree>());
    // 11 + 1.8 - 10.894476.
    let left = found.feed_left.expect("a depth").get::<millimeter>();
    assert!((left - 1.905_524).abs() < 1e-6, "{left}");
}

#[test]
fn marks_that_tell_nothing_are_told() {
    let told = |marks: SlotMarks| marks.solve().expect_err("no sense");
    assert_told(&told(marks(0.0, 0.5)), "out-of-range", &["`left_mark`", "one mark alone"]);
    assert_told(&told(marks(0.5, 0.0)), "out-of-range", &["`right_mark`", "one mark alone"]);
    assert_told(&told(marks(f64::NAN, 0.5)), "not-finite", &["`left_mark`"]);
    assert_told(&told(marks(1.5, 2.5)), "out-of-range", &["`right_mark` is 2.5 mm, not below 4"]);
    let wide = SlotMarks::new(mm(22.0), mm(22.0), mm(0.5), mm(0.5));
    assert_told(&told(wide), "out-of-range", &["`tool_width`", "bore"]);
    let beyond = SlotMarks::new(mm(22.0), mm(21.0), mm(3.0), mm(0.5));
    assert_told(&told(beyond), "out-of-range", &["corner of the tool", "11.75 mm", "11 mm"]);
    assert_told(
        &told(marks(0.5, 0.4).with_repeatability(mm(-0.01))),
        "out-of-range",
        &["`repeatability`"],
    );
    assert_told(
        &told(marks(0.5, 0.4).with_measured_within(mm(-0.01))),
        "out-of-range",
        &["`measured_within`"],
    );
    assert_told(&told(marks(0.5, 0.4).with_depth(mm(0.0))), "out-of-range", &["`depth`"]);
}

proptest! {
    /// A tool put somewhere and fed somewhere leaves marks by the circle alone; they tell where it was.
    #[test]
    fn marks_cut_by_a_made_up_tool_tell_where_it_stood(
        bore in 10.0..200.0_f64, share in 0.05..0.6_f64, off in -0.3..0.3_f64, deep in 0.01..0.99_f64,
    ) {
        let (r, b) = (bore / 2.0, bore * share);
        // Off centre to the right by less than lets one corner go without a mark.
        let e = off * b / 2.0;
        let bore_at = |x: f64| (r * r - x * x).sqrt();
        // Fed to where both corners have touched, and not to where the marks meet.
        let near = b / 2.0 - e.abs();
        let edge = bore_at(near * (1.0 - deep));
        let inner = (r * r - edge * edge).sqrt();
        let (left, right) = (b / 2.0 - e - inner, b / 2.0 + e - inner);
        prop_assume!(left > 1e-4 && right > 1e-4 && inner > 1e-4);
        let found = SlotMarks::new(mm(bore), mm(b), mm(left), mm(right)).with_depth(mm(1.0)).solve()?;
        let way = if e < 0.0 { MoveTool::Right } else { MoveTool::Left };
        prop_assert!(whole(found.offset) == 0 || found.move_tool == way);
        prop_assert!((found.offset.get::<millimeter>() - e.abs()).abs() < 1e-9);
        let left_to_go = found.feed_left.expect("a depth").get::<millimeter>();
        prop_assert!((left_to_go - (r + 1.0 - edge)).abs() < 1e-8);
        let touched = bore_at(b / 2.0 + e.abs());
        prop_assert!((found.cut.get::<millimeter>() - (edge - touched)).abs() < 1e-8);
    }

    /// Pythagoras: the middle of the chord is the radius less y from the centre.
    #[test]
    fn a_chord_lies_on_its_circle(d in 1.0..1000.0_f64, share in 0.001..0.999_f64) {
        let b = d * share;
        let y = chord_height(mm(d), mm(b))?.get::<millimeter>();
        let from_centre = d / 2.0 - y;
        prop_assert!((from_centre.hypot(b / 2.0) - d / 2.0).abs() < 1e-12 * d);
        prop_assert!(y > 0.0 && y < d / 2.0);
    }

    /// However the strokes fall, all but the last take the infeed and together they make the feed.
    #[test]
    fn strokes_add_up_to_the_feed(d in 8.0..300.0_f64, share in 0.05..0.5_f64, t in 0.2..20.0_f64, infeed in 0.001..0.5_f64) {
        let keyway = Keyway::new(CutIn::Hub, mm(d), mm(d * share), mm(t)).with_infeed(mm(infeed));
        let found = keyway.solve()?;
        let (strokes, last) = (found.strokes.expect("an infeed"), found.last_infeed.expect("an infeed"));
        let step = whole(mm(infeed));
        prop_assert_eq!((strokes as i64 - 1) * step + whole(last), whole(found.feed));
        prop_assert!(whole(last) > 0 && whole(last) <= step);
    }
}

// --- Key steel -----------------------------------------------------------------

#[test]
fn key_steel_is_made_to_its_fit_with_what_is_left_on_it() {
    let (push, source) = key_class("push").expect("a fit");
    assert_eq!(source.status, Status::Practice);
    let stock = KeyStock::new(mm(4.02), push, mm(4.0), mm(18.0))
        .with_proud(mm(0.3))
        .with_long(mm(1.0))
        .with_chamfer(mm(0.3))
        .with_corner_radius(mm(0.3))
        .with_hub_length(mm(18.0));
    let found = stock.solve().expect("a key");
    // 4.02 h6: 0 and -8 µm. A push: never tighter than the slot.
    assert_eq!((found.least_clearance_nm, found.most_clearance_nm), (0, 8_000));
    assert_eq!([found.width.smallest, found.width.largest].map(whole), [4_012_000, 4_020_000]);
    assert_eq!([found.height, found.length].map(whole), [4_300_000, 19_000_000]);
    // Two triangles of 0.3 mm along 19 mm: 0.09 · 19 = 1.71 mm³.
    assert!((found.channels.get::<cubic_millimeter>() - 1.71).abs() < 1e-12);
    assert_eq!(found.clears_corners, Some(true));
    let sharp = stock.with_chamfer(mm(0.299)).solve().expect("a key");
    assert_eq!(sharp.clears_corners, Some(false));
}

#[test]
fn key_steel_that_makes_no_sense_is_told() {
    let (h9, _) = key_class("h9").expect("a class");
    let stock = KeyStock::new(mm(4.0), h9, mm(4.0), mm(18.0));
    let told = |stock: KeyStock| stock.solve().expect_err("no sense");
    assert_told(
        &told(stock.with_hub_length(mm(17.0))),
        "out-of-range",
        &["`length`", "the hub's 17 mm"],
    );
    assert_told(
        &told(stock.with_chamfer(mm(2.0))),
        "out-of-range",
        &["`chamfer`", "not below 2 mm"],
    );
    assert_told(&told(stock.with_chamfer(mm(-0.1))), "out-of-range", &["`chamfer`"]);
    assert_told(&told(stock.with_proud(mm(-0.1))), "out-of-range", &["`proud`"]);
    assert_told(&told(stock.with_long(mm(-0.1))), "out-of-range", &["`long`"]);
    assert_told(&told(stock.with_corner_radius(mm(-0.1))), "out-of-range", &["`corner_radius`"]);
    assert_told(
        &told(KeyStock::new(mm(0.0), h9, mm(4.0), mm(18.0))),
        "out-of-range",
        &["`slot_width`"],
    );
    for text in ["H9", "shove", "", "9"] {
        assert_told(&key_class(text).expect_err("no fit"), "unknown-word", &["`fit`", "push"]);
    }
}

// --- Brazing -------------------------------------------------------------------

fn expansion(per_million: f64) -> TemperatureCoefficient {
    TemperatureCoefficient::new::<per_kelvin>(per_million / 1e6)
}

fn hotter(by: f64) -> TemperatureInterval {
    TemperatureInterval::new::<kelvin>(by)
}

fn brazed() -> BrazedKey {
    BrazedKey::new(mm(22.0), mm(4.06), mm(1.8), mm(4.0), mm(18.0))
}

#[test]
fn a_steel_plug_in_brass_opens_as_the_worked_example_has_it() {
    // A 20 mm steel plug in brass, 0.04 mm loose: 0.1408 mm on diameter 630 K hotter. The example lets the
    // clearance itself grow with nothing, which leaves out 0.04 · 20e-6 · 630 = 0.0005 mm.
    let plug = BrazedKey::new(mm(40.0), mm(20.04), mm(5.0), mm(20.0), mm(18.0));
    let found =
        plug.with_heat(hotter(630.0), expansion(20.0), expansion(12.0)).solve().expect("hot");
    let gap = 2.0 * found.hot_gap.get::<millimeter>();
    assert!((gap - 0.1408 - 0.000_504).abs() < 1e-9, "{gap}");
    assert!((2.0 * found.cold_gap.get::<millimeter>() - 0.04).abs() < 1e-12);
}

#[test]
fn unlike_metals_can_close_the_gap() {
    // A brass key in steel: 4.06 (1 + 12e-6 · 630) - 4 (1 + 20e-6 · 630) = 0.0402936 mm, 0.020147 a side.
    let heat = |key: BrazedKey| key.with_heat(hotter(630.0), expansion(12.0), expansion(20.0));
    let found = heat(brazed()).solve().expect("hot");
    assert!((found.hot_gap.get::<millimeter>() - 0.020_146_8).abs() < 1e-9);
    // A pushed one binds, and takes no filler but in its chamfers.
    let mut pushed = heat(brazed()).with_chamfer(mm(0.3)).with_filler(Filler::Any);
    pushed.slot_width = mm(4.0);
    let found = pushed.solve().expect("hot");
    assert!(found.hot_gap < mm(0.0));
    assert_eq!(found.gap_outcome, Some(GapOutcome::TooNarrow));
    assert!((found.filler_volume.get::<cubic_millimeter>() - 0.09 * 18.0).abs() < 1e-12);
}

#[test]
fn a_gap_on_the_end_of_its_published_range_is_within() {
    // Encyclopaedia: 0.03 to 0.08 mm.
    let outcome = |slot: f64| {
        let mut key = brazed().with_filler(Filler::Any);
        key.slot_width = mm(slot);
        key.solve().expect("a gap").gap_outcome
    };
    assert_eq!(outcome(4.06), Some(GapOutcome::Within));
    assert_eq!(outcome(4.16), Some(GapOutcome::Within));
    assert_eq!(outcome(4.0599), Some(GapOutcome::TooNarrow));
    assert_eq!(outcome(4.1601), Some(GapOutcome::TooWide));
}

#[test]
fn the_bottom_alone_carries_the_torque() {
    let load = |share, allowed| {
        let key = brazed().with_chamfer(mm(0.3)).with_torque(nm_torque(4.0), share, allowed);
        key.solve().expect("a load")
    };
    // (4 - 0.6) · 18 = 61.2 mm²; 2 · 4 N m / 22 mm = 363.636 N; over half of it 11.8835 MPa.
    let found = load(0.5, Some(mpa(11.9)));
    assert!((found.bottom.get::<square_millimeter>() - 61.2).abs() < 1e-9);
    assert!((found.shear.expect("a load").get::<megapascal>() - 11.883_54).abs() < 1e-5);
    assert_eq!(found.carries, Some(true));
    assert_eq!(load(0.5, Some(mpa(11.88))).carries, Some(false));
    assert_eq!(load(0.5, None).carries, None);
    // y = 11 - sqrt(121 - 2.03²) = 0.188935; walls 2 (1.8 + 0.188935 - 0.3) 18 = 60.80166 mm².
    assert!((found.area.get::<square_millimeter>() - 61.2 - 60.801_66).abs() < 1e-4);
    // Cold: 0.03 mm over all of it and 0.09 · 18 in the channels.
    let filler = found.filler_volume.get::<cubic_millimeter>();
    assert!((filler - (122.001_66 * 0.03 + 1.62)).abs() < 1e-5, "{filler}");
    assert!(BEFORE_FINISHING.contains("oxide") && BEFORE_FINISHING.contains("finish boring"));
}

#[test]
fn a_brazed_key_that_makes_no_sense_is_told() {
    let told = |key: BrazedKey| key.solve().expect_err("no sense");
    let with = |change: fn(&mut BrazedKey)| {
        let mut key = brazed();
        change(&mut key);
        told(key)
    };
    assert_told(&told(brazed().with_hub_length(mm(17.0))), "out-of-range", &["`length`", "17 mm"]);
    assert_told(&with(|key| key.slot_width = mm(22.0)), "out-of-range", &["`slot_width`", "bore"]);
    assert_told(&with(|key| key.depth = mm(0.0)), "out-of-range", &["`depth`"]);
    assert_told(&with(|key| key.key_width = mm(-4.0)), "out-of-range", &["`key_width`"]);
    assert_told(&with(|key| key.bore = mm(f64::NAN)), "not-finite", &["`bore`"]);
    assert_told(&with(|key| key.chamfer = mm(2.0)), "out-of-range", &["`chamfer`"]);
    let heat =
        |rise, hub, key| told(brazed().with_heat(hotter(rise), expansion(hub), expansion(key)));
    assert_told(&heat(1600.0, 20.0, 12.0), "out-of-range", &["`rise`", "1500 K"]);
    assert_told(&heat(-1.0, 20.0, 12.0), "out-of-range", &["`rise`"]);
    assert_told(&heat(630.0, 20e3, 12.0), "out-of-range", &["`hub_expansion`"]);
    assert_told(&heat(630.0, 20.0, -12.0), "out-of-range", &["`key_expansion`"]);
    for share in [0.0, -0.5, 1.001] {
        let error = told(brazed().with_torque(nm_torque(4.0), share, None));
        assert_told(&error, "out-of-range", &["`sound_share`", "up to 1"]);
        assert!(matches!(error.kind(), ErrorKind::OutOfRange { unit: "", .. }));
    }
    assert_told(
        &told(brazed().with_torque(nm_torque(0.0), 0.7, None)),
        "out-of-range",
        &["`torque`"],
    );
    let error = told(brazed().with_torque(nm_torque(4.0), 0.7, Some(mpa(0.0))));
    assert_told(&error, "out-of-range", &["`allowed_shear`"]);
}

// --- Workings ------------------------------------------------------------------

#[test]
fn every_working_ends_in_its_result_bit_for_bit() {
    let last = |working: hubwright::working::Working| {
        assert!(working.steps.iter().all(|step| step.result.is_finite()), "{working}");
        working.steps.last().expect("steps").result
    };
    for (shaft, standard) in [
        (mm(22.0), KeyStandard::Din6885Part1),
        (mm(22.0), KeyStandard::Din6885Part2),
        (inches(1.1875), KeyStandard::B17Square),
        (inches(2.3125), KeyStandard::B17Rectangular),
    ] {
        let key = key_for(shaft, standard).expect("in the table");
        assert_eq!(last(key.working()), key.across_hub.get::<millimeter>());
    }
    let strength = strength().solve().expect("a key");
    assert_eq!(last(strength.working()), strength.bearing.get::<megapascal>());
    assert_eq!(strength.working().steps[0].source, KEY_STATICS);
    let keyway = Keyway::new(CutIn::Hub, mm(22.0), mm(4.0), mm(1.8));
    let found = keyway.solve().expect("a keyway");
    assert_eq!(last(found.working()), found.feed.get::<millimeter>());
    let found = keyway.with_infeed(mm(0.02)).solve().expect("a keyway");
    assert_eq!(last(found.working()), 100.0);
    let found = marks(0.60, 0.36).solve().expect("two marks");
    assert_eq!(last(found.working()), found.lean.get::<degree>());
    let (push, _) = key_class("push").expect("a fit");
    let found = KeyStock::new(mm(4.02), push, mm(4.0), mm(18.0)).with_long(mm(1.0)).solve();
    let found = found.expect("a key");
    assert_eq!(last(found.working()), found.length.get::<millimeter>());
    let found = brazed().solve().expect("a key");
    assert_eq!(last(found.working()), found.filler_volume.get::<cubic_millimeter>());
    let found = brazed().with_torque(nm_torque(4.0), 0.7, None).solve().expect("a key");
    assert_eq!(last(found.working()), found.shear.expect("a load").get::<megapascal>());
}
