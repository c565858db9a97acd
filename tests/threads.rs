//! Threads, nuts and spanners against printed tables typed a second time, published
//! preloads, and statics worked out another way.
//!
//! Nothing expected here was read off the program: the CSV files name where they were
//! read, and other figures name it where they stand.

use std::collections::BTreeSet;
use std::f64::consts::PI;

use hubwright::joint::{
    JackingScrew, Nut, PinSpanner, Rotation, Series, Thread, ThreadClass, dividing, hand_force,
    hole_circle, loosening, spanner_torque, thread,
};
use hubwright::solid::{Face, Screw};
use hubwright::source::Status;
use hubwright::tables::threads::{
    BY_DIAMETER, BY_PITCH, COARSE, COARSE_SIZES, LEAST_SHEAR_SHARE, ROUND_NUTS, UNC, UNF, Unified,
};
use hubwright::units::{
    Angle, Exact, Force, Length, Pressure, Torque, degree, inch, megapascal, meter, millimeter,
    newton, newton_meter, pascal, radian, square_millimeter,
};
use hubwright::{Error, ErrorKind};
use proptest::prelude::*;
use proptest::test_runner::FileFailurePersistence;

fn rows(file: &'static str) -> Vec<Vec<&'static str>> {
    let lines = file.lines().filter(|line| !line.starts_with('#') && !line.trim().is_empty());
    lines.skip(1).map(|line| line.split(',').collect()).collect()
}

fn number(text: &str) -> f64 {
    text.parse().unwrap_or_else(|_| panic!("a number: {text:?}"))
}

/// Millimetres as printed, in whole nm.
fn nm(printed: &str) -> i64 {
    (number(printed) * 1e6).round() as i64
}

/// Millimetres as printed, in whole µm.
fn um(printed: &str) -> i64 {
    (number(printed) * 1e3).round() as i64
}

fn whole(length: Length) -> i64 {
    length.exact() as i64
}

fn mm(size: f64) -> Length {
    Length::new::<millimeter>(size)
}

fn nm_torque(torque: f64) -> Torque {
    Torque::new::<newton_meter>(torque)
}

fn newtons(force: f64) -> Force {
    Force::new::<newton>(force)
}

fn mpa(stress: f64) -> Pressure {
    Pressure::new::<megapascal>(stress)
}

fn near(found: f64, wanted: f64, share: f64) {
    assert!((found - wanted).abs() <= share * wanted.abs(), "{found} is not {wanted}");
}

fn class(name: &str) -> ThreadClass {
    name.parse().unwrap_or_else(|_| panic!("a class: {name}"))
}

const LIMITS: &str = include_str!("reference/thread_limits.csv");
const PITCHES: &str = include_str!("reference/iso965_by_pitch.csv");
const DIAMETERS: &str = include_str!("reference/iso965_by_diameter.csv");
const EXCEPTIONS: &str = include_str!("reference/iso965_formula_exceptions.csv");
const AREAS: &str = include_str!("reference/thread_stress_area.csv");
const PRELOADS: &str = include_str!("reference/bolt_preload_vdi2230.csv");
const NUTS: &str = include_str!("reference/round_nuts_din546.csv");
const UNC_2B: &str = include_str!("reference/unc_2b.csv");
const UNF_2B: &str = include_str!("reference/unf_2b.csv");

// ---- profile and limits

#[test]
fn limits_that_were_read_come_out_to_the_micrometre() {
    let all = rows(LIMITS);
    assert_eq!(all.len(), 32);
    for row in all {
        let [name, class, ref printed @ ..] = row[..] else { panic!("{row:?}") };
        let found = thread(&format!("{name}-{class}")).expect(name);
        let limits = found.limits.expect(name);
        assert_eq!(limits.class.to_string(), class);
        let got = [
            limits.major_greatest,
            Some(limits.major_least),
            Some(limits.pitch_greatest),
            Some(limits.pitch_least),
            limits.minor_least,
            limits.minor_greatest,
        ];
        for (got, printed) in got.into_iter().zip(printed) {
            let wanted = (!printed.is_empty()).then(|| nm(printed));
            assert_eq!(got.map(whole), wanted, "{name} {class}");
        }
    }
}

#[test]
fn tolerances_of_metric_threads_match_the_second_reading() {
    let read = |text: &str| text == "read";
    for row in rows(PITCHES) {
        let at = BY_PITCH.iter().find(|known| known.pitch == um(row[0])).expect(row[0]);
        let got = [at.es[1], at.major[1], at.minor[2]];
        assert_eq!(
            got,
            [1, 2, 3].map(|at| row[at].parse::<i64>().expect("whole")),
            "pitch {}",
            row[0]
        );
        assert_eq!(at.external_read, read(row[4]), "pitch {}", row[0]);
        assert_eq!(at.internal_read, read(row[5]), "pitch {}", row[0]);
    }
    for row in rows(DIAMETERS) {
        let at = BY_DIAMETER
            .iter()
            .find(|known| {
                [known.over, known.up_to, known.pitch] == [um(row[0]), um(row[1]), um(row[2])]
            })
            .unwrap_or_else(|| panic!("{row:?}"));
        let got = [at.external[1], at.internal[2]];
        assert_eq!(got, [3, 4].map(|at| row[at].parse::<i64>().expect("whole")), "{row:?}");
        assert_eq!([at.external_read, at.internal_read], [read(row[5]), read(row[6])], "{row:?}");
    }
}

/// The R40 series as ISO 965-1 writes it, in µm.
fn r40() -> Vec<i64> {
    const BELOW_100: [i64; 31] = [
        17, 18, 19, 20, 21, 22, 24, 25, 26, 28, 30, 32, 34, 36, 38, 40, 42, 45, 48, 50, 53, 56, 60,
        63, 67, 71, 75, 80, 85, 90, 95,
    ];
    const FROM_100: [i64; 40] = [
        100, 106, 112, 118, 125, 132, 140, 150, 160, 170, 180, 190, 200, 212, 224, 236, 250, 265,
        280, 300, 315, 335, 355, 375, 400, 425, 450, 475, 500, 530, 560, 600, 630, 670, 710, 750,
        800, 850, 900, 950,
    ];
    let thousands = FROM_100.iter().map(|size| size * 10);
    BELOW_100.into_iter().chain(FROM_100).chain(thousands).collect()
}

#[test]
fn grades_follow_one_another_by_steps_of_the_r40_series() {
    let series = r40();
    let place = |size: i64| series.iter().position(|known| *known == size).expect("in the series");
    for row in &BY_PITCH {
        assert_eq!(place(row.major[1]) - place(row.major[0]), 8, "Td at {}", row.pitch);
        for pair in row.minor.windows(2).filter(|pair| pair[1] != 0) {
            assert_eq!(place(pair[1]) - place(pair[0]), 4, "TD1 at {}", row.pitch);
        }
    }
    for row in &BY_DIAMETER {
        let sixth = place(row.external[1]) as i64;
        assert_eq!(place(row.external[0]) as i64, sixth - 8, "Td2 at {} {}", row.over, row.pitch);
        // Five steps above Td2(6) lies TD2(6), in every row.
        for (size, steps) in row.internal.into_iter().zip([-3, 1, 5, 9]) {
            if size != 0 {
                assert_eq!(place(size) as i64, sixth + steps, "TD2 at {} {}", row.over, row.pitch);
            }
        }
    }
}

#[test]
fn where_the_table_departs_from_its_formulas_is_known_exactly() {
    let series = r40();
    let rounded = |size: f64| {
        let apart = |known: &&i64| (**known as f64 - size).abs();
        *series.iter().min_by(|a, b| apart(a).total_cmp(&apart(b))).expect("a series")
    };
    let shown = |um: i64| format!("{}", um as f64 / 1e3);
    let mut found = BTreeSet::new();
    let mut note = |what: &str, over: String, pitch: i64, formula: f64, printed: i64| {
        if printed != 0 && rounded(formula) != printed {
            found.insert(format!("{what},{over},{},{},{printed}", shown(pitch), rounded(formula)));
        }
    };
    for row in &BY_PITCH {
        let p = row.pitch as f64 / 1e3;
        note("es_e", String::new(), row.pitch, 50.0 + 11.0 * p, -row.es[0]);
        note("es_g", String::new(), row.pitch, 15.0 + 11.0 * p, -row.es[1]);
        let td = 180.0 * p.powf(2.0 / 3.0) - 3.15 / p.sqrt();
        note("td", String::new(), row.pitch, td, row.major[1]);
        let coarse = p > 0.8;
        let td1 = if coarse { 230.0 * p.powf(0.7) } else { 433.0 * p - 190.0 * p.powf(1.22) };
        note("td1", String::new(), row.pitch, td1, row.minor[2]);
    }
    for row in &BY_DIAMETER {
        let d = (row.over as f64 * row.up_to as f64).sqrt() / 1e3;
        let td2 = 90.0 * (row.pitch as f64 / 1e3).powf(0.4) * d.powf(0.1);
        note("td2", shown(row.over), row.pitch, td2, row.external[1]);
    }
    let wanted: BTreeSet<_> = rows(EXCEPTIONS).iter().map(|row| row.join(",")).collect();
    assert_eq!(found, wanted);
}

#[test]
fn profiles_and_stress_areas_match_those_computed_elsewhere() {
    for row in rows(AREAS) {
        let found = thread(&format!("M{}x{}", row[0], row[1])).expect("a thread");
        let at = |length: Length| length.get::<millimeter>();
        for (got, printed) in [
            (at(found.pitch_diameter), row[2]),
            (at(found.root_diameter), row[3]),
            (at(found.minor_diameter), row[4]),
        ] {
            assert!((got - number(printed)).abs() <= 0.5001e-4, "{row:?}: {got}");
        }
        let area = found.stress_area.get::<square_millimeter>();
        assert!((area - number(row[5])).abs() <= 0.00501, "{row:?}: {area}");
        if !row[6].is_empty() {
            // Three digits are printed.
            let digit = if area < 100.0 {
                0.1
            } else if area < 1000.0 {
                1.0
            } else {
                10.0
            };
            assert!((area - number(row[6])).abs() <= digit / 2.0 + 1e-9, "{row:?}: {area}");
        }
    }
    // Rounded areas of unified threads that examples elsewhere use: 3/4-16 and 1/2-13.
    for (name, area) in [("3/4-16 UNF", 0.373), ("1/2-13 UNC", 0.1419)] {
        let found = thread(name).expect(name).stress_area.get::<square_millimeter>();
        near(found / 645.16, area, 0.0015);
    }
}

#[test]
fn a_coarse_thread_needs_no_pitch() {
    for (size, pitch) in &COARSE[..COARSE_SIZES] {
        let (short, long) = (thread(&format!("M{size}")), thread(&format!("M{size}x{pitch}")));
        assert_eq!(short, long);
    }
    assert_eq!(thread("M20").expect("coarse").pitch, mm(2.5));
}

/// A diameter of a unified thread in ten-thousandths of an inch.
fn tenths(length: Option<Length>) -> Option<i64> {
    length.map(|length| {
        let tenths = length.exact() / 2540.0;
        assert!((tenths - tenths.round()).abs() < 1e-9, "{tenths} is no whole ten-thousandth");
        tenths.round() as i64
    })
}

#[test]
fn coarse_unified_nuts_match_a_reprint() {
    let mut misprints = 0;
    for row in rows(UNC_2B) {
        let found = thread(&format!("{}-{} UNC-2B", row[0], row[1])).expect(row[0]);
        let limits = found.limits.expect("a class");
        let got = [
            Some(limits.pitch_greatest),
            Some(limits.pitch_least),
            limits.minor_greatest,
            limits.minor_least,
        ];
        for (got, printed) in got.map(tenths).into_iter().zip(&row[2..]) {
            match printed.strip_prefix('!') {
                Some(_) => misprints += 1,
                None => assert_eq!(got, Some((number(printed) * 1e4).round() as i64), "{row:?}"),
            }
        }
        assert_eq!(limits.source.status, Status::Reprint);
    }
    assert_eq!(misprints, 3);
}

#[test]
fn fine_unified_nuts_match_a_tap_makers_table() {
    for row in rows(UNF_2B) {
        let found = thread(&format!("{}-{} UNF-2B", row[0], row[1])).expect(row[0]);
        let limits = found.limits.expect("a class");
        for (got, printed) in [(limits.pitch_least, row[2]), (limits.pitch_greatest, row[3])] {
            // A ten-thousandth of an inch is 2.54 µm, and either side is rounded.
            let apart = (whole(got) - nm(printed)).abs();
            assert!(apart <= 1270 + 500, "{row:?}: {apart} nm apart");
        }
    }
}

#[test]
fn unified_limits_follow_their_formulas_but_for_three_figures() {
    // Formulas of ASME B1.1, from memory: Td2 = 0.0015 D^1/3 + 0.0015 D^1/2 + 0.015 P^2/3,
    // allowance 0.3 Td2, TD2 = 1.3 Td2, Td = 0.06 P^2/3.
    let to = |size: f64, digits: i32| (size * 10_f64.powi(digits) + 0.5 + 1e-9).floor() as i64;
    let mut off = Vec::new();
    for row in UNC.iter().chain(&UNF) {
        let (d, p) = (row.diameter as f64 / 1e4, 1.0 / row.threads as f64);
        let td2 = 0.0015 * d.cbrt() + 0.0015 * d.sqrt() + 0.015 * p.powf(2.0 / 3.0);
        let minor = d - 1.082_531_75 * p;
        let small = 0.05 * p.powf(2.0 / 3.0) + 0.03 * p / d - 0.002;
        let large = 0.25 * p - 0.4 * p * p;
        let td1 = if d < 0.25 { small.max(large).min(0.394 * p) } else { large };
        // From no. 6 on minor diameters are printed to a thousandth.
        let round = |tenths: i64| if d < 0.138 { tenths } else { (tenths + 5) / 10 * 10 };
        let least = to(minor, 4);
        let formula = [
            ("allowance", to(0.3 * td2, 4), row.allowance),
            ("major", to(0.06 * p.powf(2.0 / 3.0), 4), row.major),
            ("2A", to(td2, 4), row.external),
            ("2B", to(1.3 * td2, 4), row.internal),
            ("least minor", round(least), row.minor[0]),
            ("greatest minor", round(least + to(td1, 4)), row.minor[1]),
        ];
        for (what, formula, printed) in formula {
            if formula != printed {
                off.push(format!("{}-{} {what} {formula} {printed}", row.size, row.threads));
            }
        }
    }
    assert_eq!(off, ["1/4-20 2B 48 49", "5/8-11 allowance 17 16", "1-1/8-7 2A 73 72"]);
}

#[test]
fn a_screw_of_class_2a_has_the_limits_of_the_handbook() {
    // 1/4-20 and 1/2-13 UNC-2A in every handbook's table: recalled.
    for (name, all) in [("1/4-20", [2489, 2408, 2164, 2127]), ("1/2-13", [4985, 4876, 4485, 4435])]
    {
        let limits = thread(&format!("{name} UNC-2A")).expect(name).limits.expect("a class");
        let got = [
            limits.major_greatest,
            Some(limits.major_least),
            Some(limits.pitch_greatest),
            Some(limits.pitch_least),
        ];
        assert_eq!(got.map(tenths), all.map(Some));
        assert_eq!(limits.source.status, Status::Memory);
    }
}

#[test]
fn only_figures_that_were_read_say_so() {
    let status = |name| thread(name).expect(name).limits.expect("a class").source.status;
    assert_eq!(status("M10x1-6g"), Status::Reprint);
    assert_eq!(status("M10x1-6H"), Status::Reprint);
    for name in ["M10x1-5H", "M10x1-4g", "M10x1-6e", "M20x2.5-6H", "M30x1.5-6g", "M20x1.5-6g"] {
        assert_eq!(status(name), Status::Memory, "{name}");
    }
}

#[test]
fn a_designation_is_read_however_it_is_spaced_and_printed_one_way() {
    for (text, shown) in [
        ("M20x1-6H", "M20x1-6H"),
        ("m20 × 1 6H", "M20x1-6H"),
        ("M8", "M8x1.25"),
        ("M8x1", "M8x1"),
        (" M8X1.0-6g-LH ", "M8x1-6g-LH"),
        ("M8LH", "M8x1.25-LH"),
        ("M8-6h RH", "M8x1.25-6h"),
        ("1/4-20 UNC-2B", "1/4-20 UNC-2B"),
        ("1/4-20UNC 2B LH", "1/4-20 UNC-2B-LH"),
        ("#10-32 UNF", "#10-32 UNF"),
        ("10-32 unf-2A", "#10-32 UNF-2A"),
        ("No. 10-24 UNC", "#10-24 UNC"),
        ("1-8 UNC", "1-8 UNC"),
        ("1-1/4-7 UNC", "1-1/4-7 UNC"),
        ("1 1/4-12 UNF", "1-1/4-12 UNF"),
        ("1-1/4 UNC", "1-1/4-7 UNC"),
        ("0.25-28 UNF", "1/4-28 UNF"),
        ("5/8\"-11 UNC", "5/8-11 UNC"),
    ] {
        let found = thread(text).unwrap_or_else(|error| panic!("{text}: {error}"));
        assert_eq!(found.to_string(), shown, "{text}");
        assert_eq!(thread(shown), Ok(found));
        assert_eq!(found.left_hand, shown.ends_with("LH"));
    }
}

fn told(error: Error, code: &str, words: &[&str]) {
    let text = error.to_string();
    assert_eq!(error.code(), code, "{text}");
    for word in words {
        assert!(text.contains(word), "{word:?} is not in: {text}");
    }
    assert!(text.contains("\nhint: "), "no hint: {text}");
}

#[test]
fn a_thread_that_there_is_not_is_answered_with_what_there_is() {
    for (text, code, words) in [
        ("", "not-a-quantity", &["thread", "neither metric"][..]),
        ("20x1", "not-a-quantity", &["neither metric"]),
        ("M", "not-a-quantity", &["a number is missing"]),
        ("M20x", "not-a-quantity", &["a number is missing"]),
        ("M20,5x1", "not-a-quantity", &["comma"]),
        ("M20x1.5.2", "not-a-quantity", &["can't be read"]),
        ("M13", "unknown-word", &["M13", "M12, M14", "M13x1"]),
        ("M20x0.9", "unknown-word", &["pitch", "0.8, 1, 1.25"]),
        ("M20x3", "out-of-range", &["`pitch` is 3 mm, above 2.5, the coarsest at 20 mm, mm"]),
        ("M4x4", "out-of-range", &["`pitch` is 4 mm"]),
        ("M0.5", "out-of-range", &["`diameter` is 0.5 mm, outside 1 to 300 mm"]),
        ("M400x6", "out-of-range", &["`diameter` is 400 mm"]),
        ("M20x1-6K", "unknown-word", &["class", "6K", "4g, 6e, 6g, 6h, 4H, 5H, 6H, 7H"]),
        ("M20x1-6G", "unknown-word", &["capitals are for nuts"]),
        ("M20x1-6H/6g", "unknown-word", &["name one class"]),
        ("M20x1-2B", "unknown-word", &["2B", "4g, 6e"]),
        ("1/4-20 UNC-6H", "unknown-word", &["6H", "2A, 2B"]),
        (
            "M20x0.5-6H",
            "out-of-range",
            &["not one of 0.75, 1, 1.25, 1.5, 1.75, 2, 2.5 mm", "11.2 up to 22.4"],
        ),
        ("M2-6e", "out-of-range", &["`pitch` is 0.4 mm, below 0.5 mm", "6e"]),
        ("M2-7H", "out-of-range", &["below 0.5 mm", "7H"]),
        ("1/4-22 UNC", "unknown-word", &["1/4-22 UNC", "1/4-20 UNC"]),
        ("1-14 UNF", "unknown-word", &["1-12 UNF"]),
        ("#3-48 UNC", "unknown-word", &["#4, #5"]),
        ("2-4 UNC", "unknown-word", &["1-1/2"]),
        ("1/4-32 UNEF", "unknown-word", &["UNEF", "UNC, UNF"]),
        ("G1/2", "not-a-quantity", &["neither metric"]),
    ] {
        match thread(text) {
            Ok(found) => panic!("{text:?} was read as {found}"),
            Err(error) => told(error, code, words),
        }
    }
}

// ---- tap drills and wires

#[test]
fn tap_drills_are_those_of_the_trade() {
    // Trade's charts: M8 6.8 mm, M10 8.5 mm; 1/4-20 no. 7 = 0.201 in leaves 75 %.
    let m10 = thread("M10-6H").expect("a thread").tap_drill(None).expect("a drill");
    assert_eq!((whole(m10.drill), m10.within), (8_500_000, Some(true)));
    near(m10.percent, 77.0, 0.001);
    let inch_nut = thread("1/4-20 UNC-2B").expect("a thread");
    let no7 = inch_nut.tap_drill(Some(Length::new::<inch>(0.201))).expect("a drill");
    assert_eq!(no7.percent.round(), 75.0);
    assert_eq!(no7.within, Some(true));
    let m8 = thread("M8-6H").expect("a thread");
    assert_eq!(m8.tap_drill(Some(mm(6.8))).expect("a drill").within, Some(true));
    assert_eq!(m8.tap_drill(Some(mm(7.0))).expect("a drill").within, Some(false));
    assert_eq!(thread("M8").expect("a thread").tap_drill(None).expect("a drill").within, None);
    told(m8.tap_drill(Some(mm(8.0))).expect_err("no thread"), "out-of-range", &["`drill` is 8 mm"]);
    // 8 − 1.299 · 1.25 is 6.376.
    told(
        m8.tap_drill(Some(mm(6.37))).expect_err("too small"),
        "out-of-range",
        &["`drill` is 6.37 mm", "below 6.376"],
    );
    told(m8.tap_drill(Some(mm(0.0))).expect_err("zero"), "out-of-range", &["`drill`"]);
}

#[test]
fn wires_lie_where_plane_geometry_puts_them() {
    // In the plane of the axis a wire's centre lies w / (2 sin 30°) − P / (4 tan 30°) above the pitch
    // line; the lead angle lifts it by a few tenths of a micrometre.
    for name in ["M6", "M10", "M20x1.5", "M36", "1/4-20 UNC"] {
        let screw = thread(name).expect(name);
        let (d2, p) = (screw.pitch_diameter.get::<millimeter>(), screw.pitch.get::<millimeter>());
        for share in [0.52, 0.577_350_269, 0.7, 1.0] {
            let w = share * p;
            let plane = d2 + 2.0 * (w - p * 3.0_f64.sqrt() / 4.0) + w;
            let found = screw.three_wires(Some(mm(w))).expect("a wire");
            let lift = found.basic.get::<millimeter>() - plane;
            let rise = screw.lead_angle().get::<radian>().tan();
            let known = w * ((4.0 + 3.0 * rise * rise).sqrt() - 2.0);
            assert!((lift - known).abs() < 1e-9, "{name} {share}: lifted {lift}");
            let bare = found.basic + found.thread.diameter - found.thread.pitch_diameter;
            let error = found.pitch_diameter(bare + mm(0.01)).expect_err("no thread is cut");
            told(error, "out-of-range", &["`over_wires`", "where no thread is cut"]);
            let back = found.pitch_diameter(found.basic).expect("a size").get::<millimeter>();
            assert!((back - d2).abs() < 1e-9, "{name}: {back}");
        }
        let best = screw.three_wires(None).expect("wires");
        near(best.best_wire.get::<millimeter>(), p / 3.0_f64.sqrt(), 1e-12);
        for wrong in [0.5, 1.02, 0.0, -1.0] {
            let error = screw.three_wires(Some(mm(wrong * p))).expect_err("no such wire");
            told(error, "out-of-range", &["`wire`"]);
        }
    }
    let limits = thread("M20x1.5-6g").expect("a thread").three_wires(None).expect("wires");
    let (greatest, least) = (limits.greatest.expect("6g"), limits.least.expect("6g"));
    // The limits of the pitch diameter are 140 µm apart, those over the wires too.
    assert!(((greatest - least).get::<millimeter>() - 0.140).abs() < 1e-5);
    assert_eq!(
        thread("M20x1.5-6H").expect("a nut").three_wires(None).expect("wires").greatest,
        None
    );
}

// ---- screws and faces: reference cases E01 to E05

#[test]
fn screws_and_faces_match_the_reference_cases() {
    let half = Angle::new::<degree>(30.0);
    // E01: M16×2, 12 kN.
    let screw = Screw::new(mm(14.701), mm(2.0), half, 0.14).expect("a screw");
    near(screw.torque(newtons(12e3)).get::<newton_meter>(), 18.206_385_1, 1e-6);
    near(screw.lead_angle().get::<radian>(), 0.043_277_482_65, 1e-6);
    near(screw.friction_angle().get::<radian>(), 0.160_271_530_9, 1e-6);
    near(screw.loosening_torque(newtons(12e3)).get::<newton_meter>(), 10.366_919_68, 1e-6);
    assert!(screw.holds_itself());
    // E05: released by 7.775 N m at 9 kN.
    near(screw.loosening_torque(newtons(9e3)).get::<newton_meter>(), 7.775_189_757, 1e-6);
    // E03 and E04: faces.
    for (inside, outside, friction, pressure, even, even_torque, worn_torque) in [
        (60.0, 76.0, 0.15, 5_266_156.205, Some(0.034_156_862_75), 46.111_764_71, 45.9),
        (25.0, 76.0, 0.25, 2_224_646.846, Some(0.027_396_039_6), 61.641_089_11, 56.812_5),
    ] {
        let face = Face::new(mm(inside), mm(outside)).expect("a face");
        near(face.pressure(newtons(9e3)).get::<pascal>(), pressure, 1e-6);
        near(face.even_radius().get::<meter>(), even.unwrap_or_default(), 1e-6);
        let [by_even, worn] = face.torque(newtons(9e3), friction).expect("a torque");
        near(by_even.get::<newton_meter>(), even_torque, 1e-6);
        near(worn.get::<newton_meter>(), worn_torque, 1e-6);
    }
}

/// E01 and E02 as nuts; their pitch diameters are rounded to a micrometre, which moves a torque by 2e-5.
#[test]
fn nuts_match_the_reference_cases() {
    let nut = |name: &str, thread_friction, face_friction, radius: f64| {
        let thread = thread(name).expect(name);
        let (inside, outside) = (mm(2.0 * radius - 3.0), mm(2.0 * radius + 3.0));
        Nut::new(thread, [thread_friction; 2], [face_friction; 2], inside, outside).expect("a nut")
    };
    let found = nut("M16", 0.14, 0.12, 10.5).preload(newtons(12e3)).expect("E01");
    near(found.torque.least.get::<newton_meter>(), 33.326_385_1, 3e-5);
    assert_eq!(found.torque.least, found.torque.greatest);
    near(found.loosening_torque.least.get::<newton_meter>(), 25.486_919_68, 3e-5);
    near(found.thread_release.greatest.get::<newton_meter>(), 10.366_919_68, 3e-5);
    assert!(found.holds_itself);
    let found = nut("M12x1.25-LH", 0.12, 0.1, 8.3).tighten(nm_torque(40.0)).expect("E02");
    near(found.preload.greatest.get::<newton>(), 22_112.948_48, 3e-5);
    assert_eq!(found.preload.least, found.preload.greatest);
}

#[test]
fn preloads_and_torques_match_162_published_ones() {
    let all = rows(PRELOADS);
    assert_eq!(all.len(), 81);
    // Half of the last digit printed.
    let half = |printed: &str| match printed.split_once('.') {
        Some((_, decimals)) => 0.5 / 10_f64.powi(decimals.len() as i32),
        None => 0.5,
    };
    let mut worst: f64 = 0.0;
    for row in all {
        let [d, p, friction, rp, face] = [0, 1, 2, 4, 7].map(|at| number(row[at]));
        let screw = thread(&format!("M{d}x{p}")).expect("a thread");
        let nut = Nut::new(screw, [friction; 2], [friction; 2], mm(face - 2.0), mm(face + 2.0));
        let nut = nut.and_then(|nut| nut.with_proof(mpa(rp), 0.9)).expect("a nut");
        let found = nut.tighten(nm_torque(1.0)).expect("a torque");
        let (torque, preload) = (found.greatest_torque, found.greatest_preload);
        let preload = preload.expect("a proof stress").greatest.get::<newton>() / 1e3;
        let torque = torque.expect("a proof stress").get::<newton_meter>();
        for (got, printed) in [(preload, row[5]), (torque, row[6])] {
            let (apart, wanted) = ((got - number(printed)).abs(), number(printed));
            assert!(apart <= 0.004 * wanted + half(printed), "{row:?}: {got} for {printed}");
            worst = worst.max((apart - half(printed)).max(0.0) / wanted);
        }
    }
    println!("worst beyond half a digit: {:.2} %", worst * 100.0);
}

#[test]
fn a_range_of_friction_gives_the_ranges_of_its_corners() {
    let of = |t: [f64; 2], f: [f64; 2]| {
        Nut::new(thread("M20x1.5").expect("a thread"), t, f, mm(21.0), mm(30.0)).expect("a nut")
    };
    let wide = of([0.1, 0.16], [0.08, 0.2]).with_proof(mpa(640.0), 0.9).expect("a proof stress");
    let found = wide.tighten(nm_torque(60.0)).expect("a torque");
    let (mut forces, mut stresses, mut limits) = (Vec::new(), Vec::new(), Vec::new());
    // A hundred frictions within the ranges, each reckoned alone.
    for t in 0..10 {
        for f in 0..10 {
            let (t, f) = (0.1 + 0.06 * f64::from(t) / 9.0, 0.08 + 0.12 * f64::from(f) / 9.0);
            let one = of([t; 2], [f; 2]).with_proof(mpa(640.0), 0.9).expect("a proof stress");
            let one = one.tighten(nm_torque(60.0)).expect("a torque");
            forces.push(one.preload.least.get::<newton>());
            stresses.push(one.stress.get::<pascal>());
            limits.push(one.greatest_torque.expect("a limit").get::<newton_meter>());
            let loosening = one.loosening_torque.least;
            assert!(loosening >= found.loosening_torque.least * (1.0 - 1e-12));
            assert!(loosening <= found.loosening_torque.greatest * (1.0 + 1e-12));
        }
    }
    let least = |all: &[f64]| all.iter().copied().fold(f64::INFINITY, f64::min);
    let most = |all: &[f64]| all.iter().copied().fold(0.0, f64::max);
    near(found.preload.least.get::<newton>(), least(&forces), 1e-9);
    near(found.preload.greatest.get::<newton>(), most(&forces), 1e-9);
    near(found.stress.get::<pascal>(), most(&stresses), 1e-9);
    near(found.greatest_torque.expect("a limit").get::<newton_meter>(), least(&limits), 1e-9);
    // Torque and preload are the inverse of one another.
    let back = wide.preload(found.preload.greatest).expect("a preload");
    near(back.torque.least.get::<newton_meter>(), 60.0, 1e-9);
}

#[test]
fn a_key_slot_and_a_bore_take_their_part() {
    let thread = thread("M20x1.5").expect("a thread");
    let nut = Nut::new(thread, [0.12; 2], [0.12; 2], mm(21.0), mm(30.0)).expect("a nut");
    let solid = nut.tighten(nm_torque(60.0)).expect("a torque");
    let area = |nut: Nut| {
        nut.tighten(nm_torque(60.0)).expect("a torque").net_area.get::<square_millimeter>()
    };
    near(area(nut), 271.5, 1e-4);
    let bored = nut.with_bore(mm(8.0)).expect("a bore");
    near(area(nut) - area(bored), PI * 16.0, 1e-9);
    // The slot by counting: strips of a tenth of a micrometre across it.
    let radius = (271.497_f64 / PI).sqrt();
    for (width, depth) in [(5.0, 2.5), (4.0, 0.4), (19.0, 3.0), (3.0, 9.0)] {
        let bottom = 10.0 - depth;
        let strips = 200_000;
        let step = width / f64::from(strips);
        let lost: f64 = (0..strips)
            .map(|at| (f64::from(at) + 0.5) * step - width / 2.0)
            .map(|x: f64| ((radius * radius - x * x).max(0.0).sqrt() - bottom).max(0.0) * step)
            .sum();
        let slotted = nut.with_slot(mm(width), mm(depth)).expect("a slot");
        assert!((area(nut) - area(slotted) - lost).abs() < 2e-3, "{width} × {depth}: {lost}");
        let stress = slotted.tighten(nm_torque(60.0)).expect("a torque").stress;
        assert!(stress >= solid.stress);
        if lost > 0.1 {
            assert!(stress > solid.stress);
        }
    }
    for (width, depth) in [(0.0, 2.0), (4.0, 0.0), (21.0, 2.0), (4.0, 10.0), (f64::NAN, 2.0)] {
        assert!(nut.with_slot(mm(width), mm(depth)).is_err(), "{width} × {depth}");
    }
    let through = bored.with_slot(mm(4.0), mm(6.5)).expect("a slot").tighten(nm_torque(60.0));
    told(
        through.expect_err("an open ring"),
        "out-of-range",
        &["`slot_depth` is 6.5 mm, not below 6 mm"],
    );
    assert!(nut.with_bore(mm(18.5)).is_err());
}

/// Shear areas by adding up the width of the threads' section at the limits, which are read off the
/// table by hand: M20×1.5, 6g screw 18.854 to 18.994 and 19.732, 6H nut 19.026 to 19.216 and 18.676.
#[test]
fn threads_shear_where_their_section_is_cut() {
    let nut =
        Nut::new(thread("M20x1.5").expect("a thread"), [0.12; 2], [0.12; 2], mm(21.0), mm(30.0));
    let nut =
        nut.and_then(|nut| nut.with_engagement(mm(12.0), class("6g"), class("6H"))).expect("a nut");
    let found = nut.preload(newtons(20e3)).expect("a preload");
    // A screw's thread is P/2 wide at its pitch diameter, and wider inwards by 2 tan 30° of the depth.
    let width = |out: f64| 0.75 + out * 30.0_f64.to_radians().tan();
    let screw = PI * 18.676 * 8.0 * width(18.854 - 18.676);
    let inner = PI * 19.732 * 8.0 * width(19.732 - 19.216);
    near(found.screw_shear.expect("engaged").get::<megapascal>(), 20e3 / screw, 1e-9);
    near(found.nut_shear.expect("engaged").get::<megapascal>(), 20e3 / inner, 1e-9);
    // A slot of a third of the girth leaves two thirds of the thread.
    let third = 18.676 * (PI / 3.0).sin();
    let slotted = nut.with_slot(mm(third), mm(2.0)).expect("a slot").preload(newtons(20e3));
    let slotted = slotted.expect("a preload").screw_shear.expect("engaged").get::<megapascal>();
    near(slotted, 20e3 / screw * 1.5, 1e-9);
    told(
        nut.with_engagement(mm(12.0), class("6H"), class("6H")).expect_err("no screw"),
        "unknown-word",
        &["screw_class", "4g, 6e, 6g, 6h, 2A"],
    );
}

#[test]
fn no_pair_of_6g_and_6h_leaves_less_than_the_share_that_rules_reckon_with() {
    let mut least: f64 = 1.0;
    let mut judge = |thread: Thread, screw: &str, nut: &str| {
        let (d, p) = (thread.diameter.get::<millimeter>(), thread.pitch.get::<millimeter>());
        let made = Nut::new(thread, [0.1; 2], [0.1; 2], thread.diameter, thread.diameter * 2.0);
        let made = made.and_then(|nut_| nut_.with_engagement(mm(10.0), class(screw), class(nut)));
        let found = made.and_then(|nut| nut.preload(newtons(1e3))).expect("a preload");
        let d1 = d - 1.25 * 3.0_f64.sqrt() / 2.0 * p;
        let basic = [0.75 * PI * d1 * 10.0, 0.875 * PI * d * 10.0];
        let found = [found.screw_shear, found.nut_shear];
        for (found, basic) in found.into_iter().zip(basic) {
            least = least.min(1e3 / found.expect("engaged").get::<megapascal>() / basic);
        }
    };
    for row in BY_DIAMETER.iter().filter(|row| row.pitch >= 500) {
        let end = row.up_to.min(300_000);
        for diameter in [row.over + 1, (row.over + end) / 2, end] {
            let name = format!("M{}x{}", diameter as f64 / 1e3, row.pitch as f64 / 1e3);
            if let Ok(thread) = thread(&name) {
                judge(thread, "6g", "6H");
            }
        }
    }
    for (table, series) in [(&UNC, "UNC"), (&UNF, "UNF")] {
        let table: &[Unified] = table;
        for row in table {
            let name = format!("{}-{} {series}", row.size, row.threads);
            judge(thread(&name).expect("a thread"), "2A", "2B");
        }
    }
    assert!(least >= LEAST_SHEAR_SHARE, "{least}");
    assert!(least <= LEAST_SHEAR_SHARE + 0.02, "the share could be {least}");
}

#[test]
fn overloading_is_known_only_when_everything_is() {
    let nut =
        Nut::new(thread("M20x1.5").expect("a thread"), [0.12; 2], [0.12; 2], mm(21.0), mm(30.0));
    let nut = nut.expect("a nut");
    let judged = |nut: Nut, torque| nut.tighten(nm_torque(torque)).expect("a torque").overloaded;
    assert_eq!(judged(nut, 60.0), None);
    let proved = nut.with_proof(mpa(640.0), 0.9).expect("a proof stress");
    assert_eq!(judged(proved, 60.0), None);
    assert_eq!(judged(proved, 900.0), Some(true));
    let whole = proved
        .with_nut_proof(mpa(400.0))
        .and_then(|nut| nut.with_engagement(mm(12.0), class("6g"), class("6H")))
        .expect("a nut");
    assert_eq!(judged(whole, 60.0), Some(false));
    let soft = whole.with_nut_proof(mpa(20.0)).expect("a soft nut");
    assert_eq!(judged(soft, 60.0), Some(true));
}

#[test]
fn nonsense_about_a_nut_is_told() {
    let m20 = || thread("M20x1.5").expect("a thread");
    let nut = |t: [f64; 2], f: [f64; 2], inside: f64, outside: f64| {
        Nut::new(m20(), t, f, mm(inside), mm(outside))
    };
    for (made, words) in [
        (nut([0.0, 0.1], [0.1; 2], 21.0, 30.0), &["`thread_friction` is 0, not above 0"][..]),
        (nut([-0.1, 0.1], [0.1; 2], 21.0, 30.0), &["`thread_friction` is -0.1, not above 0"]),
        (nut([0.1; 2], [0.0; 2], 21.0, 30.0), &["`face_friction` is 0"]),
        (nut([0.1; 2], [14.0; 2], 21.0, 30.0), &["`face_friction` is 14, outside 0 to 1"]),
        (nut([0.16, 0.12], [0.1; 2], 21.0, 30.0), &["`thread_friction` is 0.12, below the least"]),
        (nut([0.1; 2], [0.1; 2], 30.0, 21.0), &["`face_inside` is 30 mm"]),
        (nut([0.1; 2], [0.1; 2], 0.0, 0.0), &["`face_outside` is 0 mm"]),
    ] {
        told(made.expect_err(words[0]), "out-of-range", words);
    }
    let nan = nut([f64::NAN, 0.1], [0.1; 2], 21.0, 30.0).expect_err("NaN");
    assert!(matches!(nan.kind(), ErrorKind::NotFinite { .. }));
    let sound = nut([0.1; 2], [0.1; 2], 21.0, 30.0).expect("a nut");
    told(sound.tighten(nm_torque(0.0)).expect_err("zero"), "out-of-range", &["`torque` is 0 N m"]);
    told(
        sound.preload(newtons(-1.0)).expect_err("negative"),
        "out-of-range",
        &["`preload` is -1 N"],
    );
    told(
        sound.with_proof(mpa(600.0), 1.2).expect_err("over one"),
        "out-of-range",
        &["`utilisation`"],
    );
    told(
        Screw::new(mm(1.0), mm(30.0), Angle::new::<degree>(30.0), 0.12).expect_err("too steep"),
        "out-of-range",
        &["`lead` is 30 mm, not below 22.6"],
    );
}

#[test]
fn the_last_step_of_a_working_is_the_result() {
    let nut =
        Nut::new(thread("M20x1.5").expect("a thread"), [0.1, 0.2], [0.1, 0.2], mm(21.0), mm(30.0));
    let found = nut.and_then(|nut| nut.tighten(nm_torque(60.0))).expect("a torque");
    let last = found.working().steps.pop().expect("steps");
    assert_eq!(last.result, found.preload.greatest.get::<newton>());
    for name in ["M20x1.5", "1/4-20 UNC"] {
        let thread = thread(name).expect(name);
        let last = thread.working().steps.pop().expect("steps");
        assert_eq!(last.result, thread.stress_area.get::<square_millimeter>());
    }
}

#[test]
fn the_sentence_says_which_way_a_nut_comes_off() {
    // Mich. Admin. Code R 408.10115: seen from the nut, anticlockwise takes a right-hand thread.
    let right = loosening(false, Some(Rotation::Anticlockwise));
    assert!(right.contains("right-hand thread comes off anticlockwise"));
    assert!(right.contains("run-up tighten it; braking reverses the torque"));
    let left = loosening(true, Some(Rotation::Clockwise));
    assert!(left.contains("left-hand thread comes off clockwise") && left.contains("tighten it"));
    for (hand, rotation, takes) in
        [(true, Rotation::Anticlockwise, "right-hand"), (false, Rotation::Clockwise, "left-hand")]
    {
        let says = loosening(hand, Some(rotation));
        assert!(says.contains("loosen it") && says.contains(&format!("takes a {takes} thread")));
    }
    assert!(loosening(false, Some(Rotation::Both)).contains("one of them loosens"));
    assert_eq!(loosening(true, None).matches('.').count(), 1);
}

// ---- spanners, holes, jacking

#[test]
fn spanners_are_levers() {
    let torque = spanner_torque(newtons(180.0), mm(250.0)).expect("a torque");
    near(torque.get::<newton_meter>(), 45.0, 1e-12);
    near(hand_force(torque, mm(250.0)).expect("a force").get::<newton>(), 180.0, 1e-12);
    told(
        spanner_torque(newtons(180.0), mm(0.0)).expect_err("no lever"),
        "out-of-range",
        &["`length` is 0 mm, not above 0 mm"],
    );
    told(hand_force(torque, mm(-1.0)).expect_err("no lever"), "out-of-range", &["`length`"]);
}

#[test]
fn pins_share_the_torque_and_leave_metal() {
    let spanner = PinSpanner::new(nm_torque(60.0), 2, mm(30.0), mm(4.0), mm(5.0));
    let found = spanner.with_nut(mm(4.2), mm(20.0), mm(40.0)).solve().expect("a spanner");
    // 60 N m over a couple 30 mm apart; π/4 · 4² = 12.566 mm², 4 · 5 = 20 mm².
    near(found.pin_load.get::<newton>(), 2000.0, 1e-12);
    near(found.shear.get::<megapascal>(), 2000.0 / (4.0 * PI), 1e-12);
    near(found.bearing.get::<megapascal>(), 100.0, 1e-12);
    near(found.outer_edge.expect("a nut").get::<millimeter>(), 2.9, 1e-9);
    near(found.inner_edge.expect("a nut").get::<millimeter>(), 2.9, 1e-9);
    assert_eq!(found.breaks_out, Some(false));
    let thin = spanner.with_nut(mm(4.2), mm(20.0), mm(34.0)).solve().expect("a spanner");
    assert_eq!(thin.breaks_out, Some(true));
    let hook = PinSpanner::new(nm_torque(60.0), 1, mm(40.0), mm(5.0), mm(4.0)).solve();
    near(hook.expect("a spanner").pin_load.get::<newton>(), 3000.0, 1e-12);
    for (wrong, word) in [
        (PinSpanner::new(nm_torque(60.0), 0, mm(30.0), mm(4.0), mm(5.0)), "`pins` is 0"),
        (PinSpanner::new(nm_torque(60.0), 2, mm(30.0), mm(40.0), mm(5.0)), "`pin` is 40 mm"),
        (PinSpanner::new(nm_torque(60.0), 2, mm(30.0), mm(4.0), mm(0.0)), "`depth`"),
        // Twelve on 30 mm stand 30 sin 15° = 7.76 mm apart.
        (PinSpanner::new(nm_torque(60.0), 12, mm(30.0), mm(7.8), mm(5.0)), "`pin` is 7.8 mm"),
        (spanner.with_nut(mm(3.9), mm(20.0), mm(40.0)), "`hole` is 3.9 mm, below the pin of 4"),
        (spanner.with_nut(mm(4.2), mm(40.0), mm(20.0)), "`inside` is 40 mm"),
    ] {
        told(wrong.solve().expect_err(word), "out-of-range", &[word]);
    }
}

#[test]
fn holes_lie_evenly_on_their_circle() {
    for n in [1_u32, 2, 3, 4, 6, 7, 12] {
        let found = hole_circle(n, mm(60.0), Angle::new::<degree>(15.0)).expect("holes");
        assert_eq!(found.holes.len(), n as usize);
        let apart = |a: usize, b: usize| {
            let (a, b) = (found.holes[a], found.holes[b]);
            ((a.x - b.x).get::<millimeter>()).hypot((a.y - b.y).get::<millimeter>())
        };
        for at in 0..n as usize {
            let hole = found.holes[at];
            let radius = hole.x.get::<millimeter>().hypot(hole.y.get::<millimeter>());
            near(radius, 30.0, 1e-12);
            let chord = found.chord.get::<millimeter>();
            assert!((apart(at, (at + 1) % n as usize) - chord).abs() < 1e-9, "{n} holes");
        }
        near(found.holes[0].angle.get::<degree>(), 15.0, 1e-12);
    }
    told(
        hole_circle(0, mm(60.0), Angle::default()).expect_err("no hole"),
        "out-of-range",
        &["`holes` is 0"],
    );
}

#[test]
fn a_dividing_head_comes_round_after_all_divisions() {
    // Machinery's Handbook's classic: 6 divisions are 6 turns and 10 holes in the circle of 15... of a worm of 40.
    let six = dividing(6, 40, &[15, 16, 18]).expect("ways");
    let ways: Vec<_> = six.iter().map(|way| (way.turns, way.holes, way.circle)).collect();
    assert_eq!(ways, [(6, 10, 15), (6, 12, 18)]);
    let eight = dividing(8, 40, &[15]).expect("ways");
    assert_eq!((eight[0].turns, eight[0].holes, eight[0].circle), (5, 0, 0));
    assert_eq!(dividing(51, 40, &[15, 16, 18]), Ok(vec![]));
    for divisions in 1..200 {
        for way in dividing(divisions, 40, &hubwright::joint::DIVIDING_CIRCLES).expect("ways") {
            let (circle, holes) = (way.circle.max(1), if way.circle == 0 { 0 } else { way.holes });
            assert_eq!((way.turns * circle + holes) * divisions, 40 * circle);
        }
    }
    assert!(dividing(0, 40, &[15]).is_err() && dividing(6, 40, &[0]).is_err());
}

#[test]
fn a_jacking_screw_pushes_and_lets_the_draw_screw_through() {
    let screw = JackingScrew::new(
        thread("M20x1.5").expect("a thread"),
        [0.12, 0.18],
        [0.12, 0.18],
        mm(12.0),
    );
    let found = screw.push(nm_torque(50.0)).expect("a push");
    // By hand: d2 = 19.0257, tan φ = 0.025096; tan ρ' = 0.138564 and 0.207846; radii 3 and 4 mm.
    let arm = |rub: f64| 19.0257 / 2.0 * (0.025_096 + rub) / (1.0 - 0.025_096 * rub);
    near(found.force.greatest.get::<newton>(), 50e3 / (arm(0.138_564) + 0.12 * 3.0), 1e-5);
    near(found.force.least.get::<newton>(), 50e3 / (arm(0.207_846) + 0.18 * 4.0), 1e-5);
    assert_eq!(found.clears, None);
    for (draw, clears) in
        [("M12", true), ("M18x1.5", true), ("M20x1.5", false), ("3/4-16 UNF", false)]
    {
        let with = screw.with_draw_screw(thread(draw).expect(draw)).push(nm_torque(50.0));
        assert_eq!(with.expect("a push").clears, Some(clears), "{draw}");
    }
    let mut tip = screw;
    tip.tip = mm(0.0);
    told(tip.push(nm_torque(50.0)).expect_err("no tip"), "out-of-range", &["`tip` is 0 mm"]);
    // The thread's minor diameter is 18.376 mm: no wider tip goes through it.
    tip.tip = mm(18.4);
    told(tip.push(nm_torque(50.0)).expect_err("too wide"), "out-of-range", &["`tip` is 18.4 mm"]);
}

#[test]
fn round_nuts_match_the_second_reading() {
    let typed: Vec<_> = ROUND_NUTS
        .iter()
        .map(|nut| [nut.diameter, nut.pitch, nut.outside, nut.thickness])
        .collect();
    let read: Vec<_> =
        rows(NUTS).iter().map(|row| [0, 1, 2, 3].map(|at| number(row[at]))).collect();
    assert_eq!(typed, read);
    for nut in ROUND_NUTS {
        let thread = thread(&format!("M{}", nut.diameter)).expect("a thread");
        assert_eq!(whole(thread.pitch), (nut.pitch * 1e6) as i64);
        assert_eq!(thread.series, Series::Metric);
    }
}

// ---- what must hold of every screw

fn settings() -> ProptestConfig {
    ProptestConfig {
        failure_persistence: Some(Box::new(FileFailurePersistence::WithSource("regressions"))),
        ..ProptestConfig::default()
    }
}

proptest! {
    #![proptest_config(settings())]

    /// Lowering takes less than raising, and the difference of both is the work of the lead: raising
    /// and lowering a frictionless screw once gives the force times the lead.
    #[test]
    fn a_turn_of_a_slippery_screw_does_the_work_of_its_lead(
        d in 2.0..200.0_f64, share in 0.01..0.2_f64, force in 1.0..1e6_f64,
    ) {
        let screw = Screw::new(mm(d), mm(d * share), Angle::default(), 1e-9).expect("a screw");
        let work = screw.torque(newtons(force)).get::<newton_meter>() * 2.0 * PI;
        let lifted = force * d * share / 1e3;
        prop_assert!((work - lifted).abs() <= 1e-6 * lifted);
        prop_assert!(!screw.holds_itself());
    }

    #[test]
    fn a_screw_that_holds_itself_takes_a_torque_to_loosen(
        d in 2.0..200.0_f64, share in 0.01..0.5_f64, friction in 0.005..0.4_f64,
    ) {
        let screw = Screw::new(mm(d), mm(d * share), Angle::new::<degree>(30.0), friction).expect("a screw");
        let (up, down) = (screw.torque(newtons(1e3)), screw.loosening_torque(newtons(1e3)));
        prop_assert_eq!(screw.holds_itself(), down.get::<newton_meter>() > 0.0);
        prop_assert_eq!(screw.holds_itself(), screw.friction_angle() > screw.lead_angle());
        prop_assert!(down < up);
        let back = screw.force(up).get::<newton>();
        prop_assert!((back - 1e3).abs() < 1e-9);
    }

    #[test]
    fn no_text_makes_reading_a_thread_panic(text in "\\PC{0,12}") {
        let _ = thread(&text);
        let _ = thread(&format!("M{text}"));
        let _ = thread(&format!("{text} UNC"));
    }
}
