//! Drawings: measured as scenes, and read back as XML.
//!
//! A drawing is right when it is to scale, says what the facts say, keeps its
//! labels apart and on the page, and shows nothing as known that isn't.

use hubwright::draw::section::SCALES;
use hubwright::draw::{
    Anchor, Bounds, Dimension, Direction, Fill, Mark, NoSection, Point, Reach, Scene, Section,
    Stroke, Text, margin_bar, section, svg,
};
use hubwright::mounting::facts::NOT_ASKED;
use hubwright::mounting::{
    Columns, Datum, FIELDS, Facts, Finding, Flange, Mounting, Outcome, Terms, ThreadHand, YesNo,
    check,
};
use hubwright::units::{
    AngularVelocity, Date, Exact, Length, Shop, Words, inch, millimeter, revolution_per_minute,
};
use hubwright::wheel::{Fastening, FlangeKind, Shape};
use proptest::prelude::*;
use proptest::test_runner::FileFailurePersistence;
use quick_xml::Reader;
use quick_xml::events::Event;

// --- Mountings -------------------------------------------------------------

fn mm(size: f64) -> Datum<Length> {
    Length::new::<millimeter>(size).into()
}

fn flange(diameter: f64) -> Flange {
    Flange {
        kind: FlangeKind::Relieved.into(),
        diameter: mm(diameter),
        land: mm(10.0),
        recess: mm(2.0),
        thickness_at_hole: mm(12.0),
        thickness_at_edge: mm(8.0),
        ..Flange::default()
    }
}

/// The least that can be drawn: a straight wheel of 200 × 20 × 32 mm, flanges of 80 mm.
fn bare() -> Mounting {
    let mut m = Mounting { name: "surface grinder 3".into(), ..Mounting::default() };
    m.wheel.shape = Shape::Type1.into();
    m.wheel.diameter = mm(200.0);
    m.wheel.thickness = mm(20.0);
    m.wheel.hole = mm(32.0);
    m.fixed_flange.diameter = mm(80.0);
    m.loose_flange.diameter = mm(80.0);
    m
}

/// The same with everything that a section can show; the flanges differ, to tell them apart.
fn whole() -> Mounting {
    let mut m = bare();
    m.fixed_flange = flange(84.0);
    m.loose_flange = flange(80.0);
    for (blotter, diameter) in [(&mut m.fixed_blotter, 90.0), (&mut m.loose_blotter, 86.0)] {
        blotter.present = YesNo::Yes.into();
        blotter.diameter = mm(diameter);
        blotter.hole = mm(33.0);
        blotter.thickness = mm(0.6);
    }
    m.hub.spigot = mm(31.0);
    m.hub.thread_from = mm(25.0);
    m.hub.thread_to = mm(52.0);
    m.nut.length = mm(15.0);
    m
}

/// A heading, and how its datum gets lost.
type Lost = (&'static str, fn(&mut Mounting));

fn drawn(mounting: &Mounting) -> Section {
    section(&mounting.name, &facts(mounting), Shop::Metric).expect("all that a section needs")
}

fn facts(mounting: &Mounting) -> Facts {
    mounting.facts().expect("facts")
}

// --- Measuring a scene -----------------------------------------------------

/// Where the axis lies, from the upper edge.
fn axis(scene: &Scene) -> f64 {
    let line = |mark: &Mark| match mark {
        Mark::Line { points, stroke: Stroke::Axis } => Some(points[0].y),
        _ => None,
    };
    scene.marks.iter().find_map(line).expect("an axis")
}

/// The boxes of all areas with a fill that lie above the axis, where the legend doesn't reach.
fn areas(scene: &Scene, wanted: Fill) -> Vec<Bounds> {
    let above = axis(scene);
    let area = |mark: &Mark| match mark {
        Mark::Area { points, fill, .. } if *fill == wanted => Some(around(points)),
        _ => None,
    };
    scene.marks.iter().filter_map(area).filter(|area| area.bottom < above).collect()
}

fn around(points: &[Point]) -> Bounds {
    let corner = |p: &Point| Bounds { left: p.x, right: p.x, top: p.y, bottom: p.y };
    points.iter().map(corner).reduce(Bounds::with).expect("points")
}

fn lines(scene: &Scene, wanted: Stroke) -> Vec<Vec<Point>> {
    let above = axis(scene);
    let line = |mark: &Mark| match mark {
        Mark::Line { points, stroke } if *stroke == wanted => Some(points.clone()),
        _ => None,
    };
    scene.marks.iter().filter_map(line).filter(|line| around(line).bottom < above).collect()
}

/// What a figure on the page says, without the words and signs before it.
fn value(dimension: &Dimension) -> &str {
    dimension.text.trim_start_matches("hole ").trim_start_matches('Ø')
}

/// The size that a dimension line stands for, in nm of the part.
fn size(dimension: &Dimension, ratio: f64) -> f64 {
    let share = if dimension.reach == Reach::Whole { 1.0 } else { 2.0 };
    dimension.length() * share / ratio * 1e6
}

fn close(a: f64, b: f64) -> bool {
    (a - b).abs() <= 1e-9 * a.abs().max(b.abs()).max(1.0)
}

#[track_caller]
fn assert_close(what: &str, found: f64, wanted: f64) {
    assert!(close(found, wanted), "{what}: {found}, should be {wanted}");
}

// --- Sections --------------------------------------------------------------

/// Sizes from the smallest wheels to those of a foundry, with or without everything else.
fn any_mounting() -> impl Strategy<Value = Mounting> {
    let sizes = (3.0..1500.0_f64, 0.002..1.2_f64, 0.05..0.7_f64, 0.1..1.0_f64, 0.1..1.0_f64);
    let parts = (0.001..0.3_f64, 0.0..0.1_f64, 0.005..0.2_f64, 0.005..0.2_f64, 0.0..0.02_f64);
    let shape = prop_oneof![3 => Just(0_usize), 1 => Just(1), 1 => 0..Shape::ALL.len()];
    (sizes, parts, shape, any::<u64>()).prop_map(|(sizes, parts, shape, given)| {
        let (d, thickness, hole, fixed, loose) = sizes;
        let (land, recess, at_hole, at_edge, blotter) = parts;
        // To the micrometre, as people measure.
        let of = |share: f64| mm((d * share * 1000.0).round().max(1.0) / 1000.0);
        let mut m = bare();
        m.wheel.shape = Shape::ALL[shape].into();
        m.wheel.diameter = of(1.0);
        m.wheel.thickness = of(thickness);
        m.wheel.hole = of(hole);
        m.fixed_flange.diameter = of(fixed);
        m.loose_flange.diameter = of(loose);
        let mut bits = given;
        let mut or = |size: Datum<Length>| {
            bits = bits.rotate_right(1);
            [size, Datum::NotAsked, size, Datum::Unknown][(bits % 4) as usize]
        };
        for flange in [&mut m.fixed_flange, &mut m.loose_flange] {
            flange.land = or(of(land));
            flange.recess = or(if recess < 0.03 { mm(0.0) } else { of(recess) });
            flange.thickness_at_hole = or(of(at_hole));
            flange.thickness_at_edge = or(of(at_edge));
            flange.undercut = or(of(recess));
        }
        for part in [&mut m.fixed_blotter, &mut m.loose_blotter] {
            part.diameter = or(of(loose * 1.02));
            part.thickness = or(of(blotter));
            part.hole = or(of(hole));
        }
        m.hub.spigot = or(of(hole * 0.999));
        m.hub.stabilisers = or(of(blotter));
        m.hub.thread_from = or(of(thickness));
        m.hub.thread_to = or(of(thickness + at_hole + 0.2));
        m.nut.length = or(of(0.1));
        m.fixed_flange.kind = FlangeKind::ALL[(given % 5) as usize].into();
        m
    })
}

fn cases(cases: u32) -> ProptestConfig {
    let regressions = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/draw.proptest-regressions");
    let mut config = ProptestConfig {
        failure_persistence: Some(Box::new(FileFailurePersistence::Direct(regressions))),
        ..ProptestConfig::default()
    };
    if std::env::var_os("PROPTEST_CASES").is_none() {
        config.cases = cases;
    }
    config
}

proptest! {
    #![proptest_config(cases(400))]

    #[test]
    fn a_section_is_on_its_page_to_scale_and_its_labels_apart(
        mounting in any_mounting(),
        shop in prop_oneof![Just(Shop::Metric), Just(Shop::Inch)],
    ) {
        // A hole as large as its wheel is no mounting.
        let Ok(f) = mounting.facts() else { return Ok(()) };
        let Section { scene, scale, .. } = section("any", &f, shop).expect("all that it needs");

        prop_assert!(scene.width == 90.0 && scene.height <= 115.0, "{}", scene.height);
        for mark in &scene.marks {
            let bounds = mark.bounds().expect("not empty");
            prop_assert!(bounds.within(scene.page()), "{mark:?} in {:?}", scene.page());
        }

        let texts = scene.texts();
        for (at, text) in texts.iter().enumerate() {
            for other in &texts[at + 1..] {
                let apart = !text.bounds().overlaps(other.bounds());
                prop_assert!(apart, "{:?} lies over {:?}", text.text, other.text);
            }
        }
        let printed = format!("scale {}", scale.text);
        prop_assert!(texts.iter().any(|text| text.text == printed));

        // Every size that is dimensioned has one dimension, of its length and with its figure.
        let straight = matches!(f.wheel.shape.get(), Some(Shape::Type1 | Shape::Type1CuttingOff));
        let mut sizes = vec![
            ("wheel", "diameter", f.wheel.diameter.0),
            ("wheel", "thickness", f.wheel.thickness.0),
            ("wheel", "hole", f.wheel.hole.0),
            ("fixed_flange", "diameter", f.fixed_flange.diameter.0),
        ];
        if straight {
            sizes.push(("loose_flange", "diameter", f.loose_flange.diameter.0));
        }
        prop_assert_eq!(scene.dimensions().count(), sizes.len());
        for (place, name, nm) in sizes {
            let is = |field: &&hubwright::mounting::Field| field.place == place && field.name == name;
            let shown = FIELDS.iter().find(is).expect("a field").show(nm, shop);
            let fits = |d: &Dimension| value(d) == shown && close(size(d, scale.ratio), nm);
            prop_assert!(scene.dimensions().any(fits), "{} {}: {}", place, name, shown);
        }

        // The largest scale that fits: at the next one the wheel alone or the stack is too large.
        let next = SCALES.iter().position(|other| *other == scale).and_then(|at| at.checked_sub(1));
        if let (Some(next), true) = (next, straight) {
            let (now, more) = (scale.ratio, SCALES[next].ratio);
            let left = around_parts(&scene).left;
            let wide = (around_parts(&scene).right - left) / now * more;
            let high = f.wheel.diameter.0 / 2e6 * more;
            // Parts of unknown size don't grow with the scale: at most flanges, nut, blotters, stub.
            prop_assert!(high > 75.0 || wide > 66.0 - 20.0, "{now} though {more} fits: {wide} × {high}");
        }
    }
}

/// The box around all solid edges of a section.
fn around_parts(scene: &Scene) -> Bounds {
    let all = lines(scene, Stroke::Outline).into_iter().chain(lines(scene, Stroke::Dashed));
    all.map(|line| around(&line)).reduce(Bounds::with).expect("edges")
}

#[test]
fn every_part_is_drawn_to_its_own_sizes() {
    let Section { scene, scale, left_out, .. } = drawn(&whole());
    assert_eq!((scale.text, left_out), ("1:2", vec![]));
    let axis = axis(&scene);
    let half = 0.5;
    let only = |fill| {
        let areas = areas(&scene, fill);
        assert_eq!(areas.len(), 1, "{fill:?}: {areas:?}");
        areas[0]
    };

    let wheel = only(Fill::Pale);
    assert_close("wheel thickness", wheel.right - wheel.left, 20.0 * half);
    assert_close("wheel radius", axis - wheel.top, 100.0 * half);
    assert_close("hole radius", axis - wheel.bottom, 16.0 * half);

    let loose = only(Fill::HatchFalling);
    // 12 mm at the hole is more than the recess of 2 mm and a plate of 8 mm.
    assert_close("loose flange thickness", loose.right - loose.left, 12.0 * half);
    assert_close("loose flange radius", axis - loose.top, 40.0 * half);
    assert_close("bore, on the spigot", axis - loose.bottom, 15.5 * half);
    assert_close("blotter between", loose.left - wheel.right, 0.6 * half);

    let hub = only(Fill::HatchRising);
    assert_close("fixed flange radius", axis - hub.top, 42.0 * half);
    let back = wheel.left - (12.0 + 0.6) * half;
    // The back is broken off below the flange, by a wave of less than half a mm.
    assert!((hub.left - back).abs() < 0.5, "{} {back}", hub.left);
    assert_close("end of the thread", hub.right - wheel.left, (52.0 - 0.6) * half);

    let mut blotters = areas(&scene, Fill::Solid);
    blotters.sort_by(|a, b| a.left.total_cmp(&b.left));
    assert_eq!(blotters.len(), 2, "{blotters:?}");
    for (blotter, radius) in blotters.iter().zip([45.0, 43.0]) {
        assert_close("blotter thickness", blotter.right - blotter.left, 0.6 * half);
        assert_close("blotter radius", axis - blotter.top, radius * half);
        assert_close("blotter hole", axis - blotter.bottom, 16.5 * half);
    }
    assert_close("fixed blotter", blotters[0].right, wheel.left);
    assert_close("loose blotter", blotters[1].left, wheel.right);

    // Recess and land of both flanges, seen from their lands.
    for (land, away, radius) in [(loose.left, 1.0, 40.0), (blotters[0].left, -1.0, 42.0)] {
        let corner = Point::new(land + away * 2.0 * half, axis - (radius - 10.0) * half);
        let there = |p: &Point| close(p.x, corner.x) && close(p.y, corner.y);
        let found = lines(&scene, Stroke::Outline).iter().flatten().any(there);
        assert!(found, "no corner of the recess at {corner:?}");
        // The plate at the edge of the recess: 2 mm of recess and 8 mm of metal.
        let back = Point::new(land + away * 10.0 * half, corner.y);
        let there = |p: &Point| close(p.x, back.x) && close(p.y, back.y);
        let found = lines(&scene, Stroke::Outline).iter().flatten().any(there);
        assert!(found, "no back of the plate at {back:?}");
    }

    // The nut: its faces are known, how wide it is isn't.
    let face = loose.right + 15.0 * half;
    let upright = |line: &Vec<Point>| line.iter().all(|p| close(p.x, face));
    assert!(lines(&scene, Stroke::Outline).iter().any(upright), "no face of the nut at {face}");
}

#[test]
fn scales_say_what_they_are() {
    for scale in SCALES {
        let (page, part) = scale.text.split_once(':').expect("a ratio");
        let number = |text: &str| text.parse::<f64>().expect("a number");
        assert_eq!(scale.ratio, number(page) / number(part), "{}", scale.text);
    }
    assert!(SCALES.windows(2).all(|pair| pair[0].ratio > pair[1].ratio));
}

#[test]
fn a_section_takes_the_largest_scale_that_fits() {
    for (diameter, scale) in [
        (20.0, "5:1"),
        (31.0, "2:1"),
        (125.0, "1:1"),
        (150.0, "1:1"),
        (151.0, "1:2"),
        (300.0, "1:2"),
        (355.6, "1:5"),
        (750.0, "1:5"),
        (900.0, "1:10"),
    ] {
        let mut m = bare();
        let of = |share: f64| mm(diameter * share);
        m.wheel.diameter = of(1.0);
        m.wheel.thickness = of(0.1);
        m.wheel.hole = of(0.2);
        m.fixed_flange.diameter = of(0.4);
        m.loose_flange.diameter = of(0.4);
        assert_eq!(drawn(&m).scale.text, scale, "{diameter} mm");
    }
}

#[test]
fn a_wheel_of_a_millimetre_is_still_seen() {
    for (diameter, thickness) in [(125.0, 1.0), (400.0, 1.0), (400.0, 3.2)] {
        let mut m = whole();
        m.wheel.shape = Shape::Type1CuttingOff.into();
        m.wheel.diameter = mm(diameter);
        m.wheel.thickness = mm(thickness);
        let Section { scene, scale, .. } = drawn(&m);
        let wheel = areas(&scene, Fill::Tone);
        assert_eq!(wheel.len(), 1, "{wheel:?}");
        assert_close("its thickness", wheel[0].right - wheel[0].left, thickness * scale.ratio);
        // Two thin lines and what lies between: no thinner than an outline.
        assert!(wheel[0].right - wheel[0].left + Stroke::Thin.width() > Stroke::Outline.width());
    }
}

#[test]
fn what_is_needed_and_missing_is_named() {
    let clear: [Lost; 5] = [
        ("wheel diameter", |m| m.wheel.diameter = Datum::Unknown),
        ("wheel thickness", |m| m.wheel.thickness = Datum::NotAsked),
        ("wheel hole", |m| m.wheel.hole = Datum::Unknown),
        ("fixed flange diameter", |m| m.fixed_flange.diameter = Datum::Unknown),
        ("loose flange diameter", |m| m.loose_flange.diameter = Datum::NotAsked),
    ];
    let mut all = whole();
    for (heading, clear) in clear {
        let mut m = whole();
        clear(&mut m);
        clear(&mut all);
        let no = section("", &facts(&m), Shop::Metric).expect_err(heading);
        assert_eq!(no, NoSection::Missing(vec![heading.to_owned()]));
        assert_eq!(no.to_string(), format!("not given: {heading}"));
    }
    let wanted = clear.map(|(heading, _)| heading.to_owned());
    let no = section("", &facts(&all), Shop::Metric).expect_err("nothing is given");
    assert_eq!(no, NoSection::Missing(wanted.to_vec()));
}

#[test]
fn a_wheel_that_no_flanges_hold_is_not_drawn_between_flanges() {
    let mut m = whole();
    m.wheel.fastening = Fastening::Chuck.into();
    let no = section("", &facts(&m), Shop::Metric).expect_err("held by a chuck");
    assert_eq!(no.to_string(), "the wheel is held by chuck, not by flanges");
    m.wheel.fastening = Datum::Unknown;
    let no = section("", &facts(&m), Shop::Metric).expect_err("held by who knows what");
    assert_eq!(no, NoSection::Missing(vec!["wheel fastening".into()]));
    m.wheel.fastening = Fastening::Flanges.into();
    section("", &facts(&m), Shop::Metric).expect("held by flanges");
}

#[test]
fn what_is_not_given_is_named_and_never_drawn_as_known() {
    let solid = |scene: &Scene| -> usize {
        lines(scene, Stroke::Outline).iter().map(|line| line.len() - 1).sum::<usize>()
            + areas(scene, Fill::Solid).len()
    };
    let clear: [Lost; 16] = [
        ("fixed flange land", |m| m.fixed_flange.land = Datum::Unknown),
        ("fixed flange recess", |m| m.fixed_flange.recess = Datum::Unknown),
        ("fixed flange thickness at hole", |m| m.fixed_flange.thickness_at_hole = Datum::Unknown),
        ("fixed flange thickness at edge", |m| m.fixed_flange.thickness_at_edge = Datum::Unknown),
        ("loose flange land", |m| m.loose_flange.land = Datum::NotAsked),
        ("loose flange recess", |m| m.loose_flange.recess = Datum::NotAsked),
        ("loose flange thickness at hole", |m| m.loose_flange.thickness_at_hole = Datum::NotAsked),
        ("loose flange thickness at edge", |m| m.loose_flange.thickness_at_edge = Datum::NotAsked),
        ("fixed blotter diameter", |m| m.fixed_blotter.diameter = Datum::Unknown),
        ("fixed blotter thickness", |m| m.fixed_blotter.thickness = Datum::NotAsked),
        ("loose blotter diameter", |m| m.loose_blotter.diameter = Datum::NotAsked),
        ("loose blotter thickness", |m| m.loose_blotter.thickness = Datum::Unknown),
        ("hub spigot", |m| m.hub.spigot = Datum::Unknown),
        ("hub thread to", |m| m.hub.thread_to = Datum::NotAsked),
        ("nut length", |m| m.nut.length = Datum::Unknown),
        ("wheel shape", |m| m.wheel.shape = Datum::Unknown),
    ];
    let known = solid(&drawn(&whole()).scene);
    for (heading, clear) in clear {
        let mut m = whole();
        clear(&mut m);
        let Section { scene, left_out, .. } = drawn(&m);
        assert_eq!(left_out, [heading]);
        let now = solid(&scene);
        assert!(now < known, "{heading}: {now} solid edges, {known} with everything known");
    }
    // Where the thread begins is a thin line, and so is the hole of a blotter the lower end of ink.
    let mut m = whole();
    m.hub.thread_from = Datum::Unknown;
    let (with, without) = (drawn(&whole()).scene, drawn(&m));
    assert_eq!(without.left_out, ["hub thread from"]);
    let thin = |scene: &Scene| lines(scene, Stroke::Thin).len();
    assert_eq!(thin(&without.scene) + 1, thin(&with));
    let mut m = whole();
    m.loose_blotter.hole = Datum::NotAsked;
    let without = drawn(&m);
    assert_eq!(without.left_out, ["loose blotter hole"]);
    let ink = |scene: &Scene| -> f64 {
        areas(scene, Fill::Solid).iter().map(|area| area.bottom - area.top).sum()
    };
    assert!(ink(&without.scene) < ink(&with));
}

#[test]
fn what_a_mounting_does_not_have_is_not_missing() {
    let mut m = whole();
    m.fixed_blotter = Default::default();
    m.fixed_blotter.present = YesNo::No.into();
    m.nut = Default::default();
    m.nut.thread_hand = ThreadHand::NoNut.into();
    m.hub.thread_from = Datum::NotAsked;
    m.hub.thread_to = Datum::NotAsked;
    m.loose_flange.recess = mm(0.0);
    m.loose_flange.kind = FlangeKind::Unrelieved.into();
    m.loose_flange.land = Datum::NotAsked;
    m.loose_flange.thickness_at_edge = Datum::NotAsked;
    let Section { scene, left_out, .. } = drawn(&m);
    assert_eq!(left_out, [""; 0]);
    assert_eq!(areas(&scene, Fill::Solid).len(), 1, "the loose blotter alone");
    let says = |word: &str| scene.texts().iter().any(|text| text.text == word);
    assert!(!says("nut") && says("blotter"));

    // An adaptor that may be undercut: by how much is what is missing, and its face is dashed.
    let mut m = whole();
    m.loose_flange.kind = FlangeKind::Adaptor.into();
    m.loose_flange.recess = mm(0.0);
    let (before, after) = (drawn(&whole()), drawn(&m));
    assert_eq!(after.left_out, ["loose flange undercut"]);
    let dashed = |section: &Section| lines(&section.scene, Stroke::Dashed).len();
    assert!(dashed(&after) > dashed(&before));
    m.loose_flange.undercut = mm(0.0);
    assert_eq!(drawn(&m).left_out, [""; 0]);

    // A blotter of which the sheet asks in vain whether it is there isn't drawn as if it were.
    let mut m = whole();
    m.fixed_blotter.present = Datum::Unknown;
    let Section { scene, left_out, .. } = drawn(&m);
    assert_eq!(left_out, ["fixed blotter present"]);
    assert_eq!(areas(&scene, Fill::Solid).len(), 1);

    // Nobody said whether there are blotters: none are drawn, and both are named.
    let Section { scene, left_out, .. } = drawn(&bare());
    assert!(areas(&scene, Fill::Solid).is_empty());
    for heading in ["fixed blotter present", "loose blotter present"] {
        assert!(left_out.iter().any(|named| named == heading), "{left_out:?}");
    }
}

#[test]
fn a_wheel_that_is_not_straight_is_a_dashed_outline() {
    for shape in Shape::ALL.iter().filter(|s| !matches!(s, Shape::Type1 | Shape::Type1CuttingOff)) {
        let mut m = whole();
        m.wheel.shape = (*shape).into();
        let Section { scene, scale, .. } = drawn(&m);
        let label = format!("{shape}: outline only");
        assert!(scene.texts().iter().any(|text| text.text == label), "{label}");
        for fill in [Fill::Pale, Fill::Tone, Fill::Solid, Fill::HatchRising, Fill::HatchFalling] {
            assert!(areas(&scene, fill).is_empty(), "{shape}: {fill:?}");
        }
        assert!(lines(&scene, Stroke::Outline).is_empty(), "{shape}");
        let dashed = lines(&scene, Stroke::Dashed);
        let wheel = dashed.iter().map(|line| around(line)).find(|area| {
            close(area.right - area.left, 20.0 * scale.ratio)
                && close(area.bottom - area.top, (100.0 - 16.0) * scale.ratio)
        });
        assert!(wheel.is_some(), "{shape}: no outline of 20 × 84 mm");
    }
}

#[test]
fn an_inch_shop_reads_inches() {
    let mut m = whole();
    let inches = |size: f64| Datum::from(Length::new::<inch>(size));
    m.wheel.diameter = inches(14.0);
    m.wheel.thickness = inches(1.5);
    m.wheel.hole = inches(1.25);
    m.fixed_flange.diameter = inches(5.0);
    m.loose_flange.diameter = inches(5.0);
    let drawn = section("", &facts(&m), Shop::Inch).expect("all it needs");
    let mut texts: Vec<_> = drawn.scene.dimensions().map(|d| d.text.as_str()).collect();
    texts.sort();
    assert_eq!(texts, ["1.5 in", "hole Ø1.25 in", "Ø14 in", "Ø5 in", "Ø5 in"]);
}

#[test]
fn sizes_that_contradict_each_other_are_drawn_and_not_a_panic() {
    let changes: [fn(&mut Mounting); 7] = [
        |m| m.hub.spigot = mm(90.0),
        |m| m.loose_flange.diameter = mm(10.0),
        |m| m.fixed_flange.diameter = mm(10.0),
        |m| m.fixed_flange.land = mm(500.0),
        |m| m.loose_flange.recess = mm(50.0),
        |m| m.hub.thread_from = mm(5000.0),
        |m| m.fixed_blotter.diameter = mm(1.0),
    ];
    for change in changes {
        let mut m = whole();
        change(&mut m);
        let scene = drawn(&m).scene;
        assert!(scene.bounds().expect("marks").within(scene.page()), "{:?}", scene.bounds());
        read_back(&svg(&scene));
    }
}

#[test]
fn columns_full_of_nonsense_are_drawn_or_refused_and_not_a_panic() {
    let nonsense = [0.0, -5e6, f64::INFINITY, f64::NEG_INFINITY, 1e300, f64::MIN_POSITIVE];
    let whole: Vec<f64> = whole_row();
    let (mut refused, mut drawn) = (0, 0);
    for at in 0..FIELDS.len() {
        for number in nonsense {
            let mut columns = Columns::new();
            let row = whole.iter().copied().enumerate();
            columns.push(row.map(|(field, fact)| (field, if field == at { number } else { fact })));
            match section("", &columns.facts(0), Shop::Metric) {
                Ok(drawn_one) => {
                    read_back(&svg(&drawn_one.scene));
                    drawn += 1;
                }
                Err(_) => refused += 1,
            }
        }
    }
    assert!(refused >= 5 * 4 && drawn > 100, "{refused} refused, {drawn} drawn");
}

/// The whole mounting as one number a field.
fn whole_row() -> Vec<f64> {
    let f = facts(&whole());
    let size = |place: &str, name: &str| match (place, name) {
        ("wheel", "shape") => Shape::Type1 as u8 as f64,
        ("wheel", "diameter") => f.wheel.diameter.0,
        ("wheel", "thickness") => f.wheel.thickness.0,
        ("wheel", "hole") => f.wheel.hole.0,
        ("fixed_flange" | "loose_flange", "diameter") => f.loose_flange.diameter.0,
        ("fixed_flange" | "loose_flange", "land") => f.loose_flange.land.0,
        ("fixed_flange" | "loose_flange", "recess") => f.loose_flange.recess.0,
        ("fixed_flange" | "loose_flange", "thickness_at_hole") => 12e6,
        ("fixed_flange" | "loose_flange", "thickness_at_edge") => 8e6,
        ("fixed_blotter" | "loose_blotter", "diameter") => 90e6,
        ("fixed_blotter" | "loose_blotter", "thickness") => 0.6e6,
        ("hub", "spigot") => 31e6,
        ("hub", "thread_from") => 25e6,
        ("hub", "thread_to") => 52e6,
        ("nut", "length") => 15e6,
        _ => NOT_ASKED,
    };
    FIELDS.iter().map(|field| size(field.place, field.name)).collect()
}

// --- Dimension lines -------------------------------------------------------

#[test]
fn arrowheads_stand_outside_where_there_is_no_room() {
    let arrows = |length: f64| -> Vec<Bounds> {
        let dimension = Mark::Dimension(Dimension {
            from: Point::new(20.0, 20.0),
            to: Point::new(20.0 + length, 20.0),
            offset: -5.0,
            direction: Direction::Level,
            reach: Reach::Whole,
            text: "x".into(),
        });
        let filled = |mark: Mark| match mark {
            Mark::Area { points, fill: Fill::Solid, .. } => Some(around(&points)),
            _ => None,
        };
        dimension.plain().into_iter().filter_map(filled).collect()
    };
    for (length, inside) in [(1.0, false), (4.0, false), (8.0, true), (40.0, true)] {
        let arrows = arrows(length);
        assert_eq!(arrows.len(), 2);
        for arrow in &arrows {
            assert_close(
                "an arrowhead lies on its line",
                f64::midpoint(arrow.top, arrow.bottom),
                15.0,
            );
            assert_eq!(arrow.left >= 20.0 && arrow.right <= 20.0 + length, inside, "{length}");
        }
        let tips = [20.0, 20.0 + length];
        let touches = |tip| arrows.iter().any(|a| close(a.left, tip) || close(a.right, tip));
        assert!(tips.into_iter().all(touches), "{length}: {arrows:?}");
    }
}

// --- SVG -------------------------------------------------------------------

/// What an SVG holds: its elements, their attributes, and its texts. Fails
/// unless it is well formed.
#[derive(Default)]
struct Read {
    elements: Vec<String>,
    attributes: Vec<(String, String)>,
    texts: Vec<String>,
}

#[track_caller]
fn read_back(text: &str) -> Read {
    let mut reader = Reader::from_str(text);
    reader.config_mut().check_end_names = true;
    let (mut read, mut open, mut words) = (Read::default(), 0, String::new());
    loop {
        match reader.read_event().unwrap_or_else(|why| panic!("{why}: {text}")) {
            Event::Start(tag) => {
                open += 1;
                take(&mut read, &tag);
            }
            Event::Empty(tag) => take(&mut read, &tag),
            Event::End(_) => {
                open -= 1;
                if !words.is_empty() {
                    read.texts.push(std::mem::take(&mut words));
                }
            }
            Event::Text(part) => words += &part,
            Event::GeneralRef(name) => {
                words += match &*name {
                    "amp" => "&",
                    "lt" => "<",
                    "gt" => ">",
                    "quot" => "\"",
                    "#39" => "'",
                    other => panic!("&{other};"),
                };
            }
            Event::Eof => break,
            other => panic!("{other:?}"),
        }
    }
    assert_eq!(open, 0, "{text}");
    assert_eq!(read.elements[0], "svg");
    read
}

fn take(read: &mut Read, tag: &quick_xml::events::BytesStart<'_>) {
    read.elements.push(tag.name().as_ref().to_owned());
    for attribute in tag.attributes() {
        let attribute = attribute.expect("a name and a value in quotes, none twice");
        read.attributes.push((attribute.key.as_ref().to_owned(), attribute.value.into_owned()));
    }
}

#[test]
fn the_svg_of_a_section_is_well_formed_and_brings_nothing_along() {
    for shop in [Shop::Metric, Shop::Inch] {
        let scene = section("a", &facts(&whole()), shop).expect("all it needs").scene;
        let text = svg(&scene);
        let read = read_back(&text);
        let allowed = ["svg", "title", "path", "text"];
        for element in &read.elements {
            assert!(allowed.contains(&element.as_str()), "{element}");
        }
        for (name, value) in &read.attributes {
            let harmless =
                !name.contains(':') && !name.starts_with("on") && name != "id" && name != "class";
            assert!(harmless, "{name}={value}");
            assert!(!value.contains("url(") && !value.contains('#'), "{name}={value}");
        }
        for word in ["<script", "href", " id=", "NaN", "inf"] {
            assert!(!text.contains(word), "{word}");
        }
        let has = |name: &str, value: &str| read.attributes.contains(&(name.into(), value.into()));
        assert!(has("role", "img") && has("width", "90mm") && has("stroke", "currentColor"));
        assert!(has("viewBox", &format!("0 0 90 {}", hubwright::units::figure(scene.height, 3))));
        assert_eq!(read.texts[0], "Section through a");
        let texts: Vec<_> = scene.texts().into_iter().map(|text| text.text).collect();
        assert_eq!(read.texts[1..], texts);
    }
}

#[test]
fn numbers_are_short_and_have_a_point() {
    let text = svg(&drawn(&whole()).scene);
    let read = read_back(&text);
    let mut seen = 0;
    for (name, value) in &read.attributes {
        if !["d", "x", "y", "viewBox", "stroke-width", "stroke-dasharray", "font-size"]
            .contains(&name.as_str())
        {
            continue;
        }
        for number in value.split(['M', 'L', 'Z', ' ']).filter(|part| !part.is_empty()) {
            seen += 1;
            assert!(number.parse::<f64>().is_ok(), "{name}: {number}");
            let plain = number.chars().all(|c| c.is_ascii_digit() || c == '.' || c == '-');
            let decimals = number.split_once('.').map_or(0, |(_, decimals)| decimals.len());
            assert!(plain && decimals <= 3, "{name}: {number}");
        }
    }
    assert!(seen > 500, "{seen}");
    let mut scene = Scene::new("", 10.0, 10.0);
    let points = vec![Point::new(1e-9, 1e20), Point::new(f64::NAN, f64::NEG_INFINITY)];
    scene.marks.push(Mark::Line { points, stroke: Stroke::Thin });
    assert!(svg(&scene).contains("M0 100000000000000000000L0 0\""));
}

#[test]
fn hostile_texts_stay_texts() {
    let hostile = "</title></text><script>alert(1)</script>&lt;&#x41;\"' onload='x\u{0}\u{7}\u{1b}\u{85}\u{202e}gnp\u{2066}\u{200f}\u{fffe}\n\tend";
    let plain = "</title></text><script>alert(1)</script>&lt;&#x41;\"' onload='xgnp  end";
    let mut m = whole();
    m.name = hostile.into();
    let mut scene = drawn(&m).scene;
    scene.marks.push(Mark::Text(Text::new(Point::new(1.0, 1.0), 3.0, Anchor::Start, hostile)));
    let mut dimension = scene.dimensions().next().expect("a dimension").clone();
    dimension.text = hostile.into();
    scene.marks.push(Mark::Dimension(dimension));
    let text = svg(&scene);
    let read = read_back(&text);
    assert!(!text.contains("<script") && !text.contains("onload='"), "{text}");
    assert_eq!(read.texts[0], format!("Section through {plain}"));
    assert_eq!(read.texts.iter().filter(|text| *text == plain).count(), 2);
    // Quotes too, should the text ever be put between some.
    assert!(text.contains("&amp;#x41;&quot;&#39; onload=&#39;x"), "{text}");
    let forbidden = |c: char| c.is_control() || ('\u{202a}'..='\u{202e}').contains(&c);
    assert!(!text.contains(forbidden));
    // Other scripts come through.
    scene.title = "Schleifscheibe Ø200 – 砂轮 – عجلة".into();
    assert_eq!(read_back(&svg(&scene)).texts[0], scene.title);
}

#[test]
fn hatching_covers_its_area_and_nothing_else() {
    // An L of 20 × 20 mm without its upper right quarter.
    let corners = [(5.0, 5.0), (15.0, 5.0), (15.0, 15.0), (25.0, 15.0), (25.0, 25.0), (5.0, 25.0)];
    let inside = |p: Point| {
        let within = |from: f64, to: f64, at: f64| at > from - 2e-3 && at < to + 2e-3;
        within(5.0, 25.0, p.x)
            && within(5.0, 25.0, p.y)
            && !(p.x > 15.0 + 2e-3 && p.y < 15.0 - 2e-3)
    };
    for (fill, spacing, rises) in [(Fill::HatchRising, 1.5, true), (Fill::HatchFalling, 1.1, false)]
    {
        let mut scene = Scene::new("", 30.0, 30.0);
        let points = corners.iter().map(|(x, y)| Point::new(*x, *y)).collect();
        scene.marks.push(Mark::Area { points, fill, stroke: None });
        let read = read_back(&svg(&scene));
        let (_, path) = read.attributes.iter().find(|(name, _)| name == "d").expect("hatching");
        let mut length = 0.0;
        for line in path.split('M').filter(|line| !line.is_empty()) {
            let numbers: Vec<f64> =
                line.split(['L', ' ']).map(|number| number.parse().expect("a number")).collect();
            let [a, b] = [Point::new(numbers[0], numbers[1]), Point::new(numbers[2], numbers[3])];
            let (dx, dy) = (b.x - a.x, b.y - a.y);
            assert!((dx.abs() - dy.abs()).abs() < 3e-3, "not at 45°: {line}");
            assert!(dx.abs() < 3e-3 || (dx * dy < 0.0) == rises, "wrong way: {line}");
            for share in [0.0, 0.25, 0.5, 0.75, 1.0] {
                let at = Point::new(a.x + share * dx, a.y + share * dy);
                assert!(inside(at), "{at:?} is outside");
            }
            length += dx.hypot(dy);
        }
        // Lines a spacing apart cover the area: 300 mm².
        assert!((length * spacing / 300.0 - 1.0).abs() < 0.05, "{fill:?}: {}", length * spacing);
    }
}

#[test]
fn long_texts_are_guessed_long_enough() {
    // Widths of Helvetica, from its published metrics (thousandths of the size).
    let helvetica: [(&str, f64); 4] = [
        ("200 mm", 3.0 * 556.0 + 278.0 + 2.0 * 833.0),
        ("scale 1:2", 500.0 * 2.0 + 556.0 * 2.0 + 222.0 + 278.0 + 556.0 + 278.0 + 556.0),
        ("wheel", 722.0 + 556.0 * 3.0 + 222.0),
        ("HUB", 722.0 + 722.0 + 667.0),
    ];
    for (text, width) in helvetica {
        let text = Text::new(Point::new(0.0, 0.0), 3.0, Anchor::Start, text);
        let least = width / 1000.0 * 3.0;
        assert!((least..1.35 * least).contains(&text.length()), "{}: {}", text.text, text.length());
    }
}

// --- Margin bars -----------------------------------------------------------

fn turning(at: f64, marked: f64) -> Mounting {
    let rpm = |n: f64| Datum::from(AngularVelocity::new::<revolution_per_minute>(n));
    let mut m = bare();
    m.spindle.greatest_speed = rpm(at);
    m.wheel.marked_speed = rpm(marked);
    m
}

fn finding(mounting: &Mounting, slug: &str) -> Finding {
    let terms = Terms::default().with_today(Date::read("2026-06-01").expect("a day"));
    let verdict = check(mounting, &terms).expect("a verdict");
    verdict.findings.into_iter().find(|finding| finding.rule.slug == slug).expect("a finding")
}

/// The outlined bar, the hatched piece and the pale one.
fn bar(scene: &Scene) -> (Bounds, Option<Bounds>, Option<Bounds>) {
    let piece = |wanted: &dyn Fn(Fill, Option<Stroke>) -> bool| {
        scene.marks.iter().find_map(|mark| match mark {
            Mark::Area { points, fill, stroke } if wanted(*fill, *stroke) => Some(around(points)),
            _ => None,
        })
    };
    let outlined = piece(&|_, stroke| stroke == Some(Stroke::Outline)).expect("a bar");
    let hatched = piece(&|fill, _| matches!(fill, Fill::HatchFalling | Fill::HatchRising));
    (outlined, hatched, piece(&|fill, _| fill == Fill::Pale))
}

proptest! {
    #![proptest_config(cases(200))]

    #[test]
    fn a_bar_is_as_long_as_what_was_found(at in 100.0..60_000.0_f64, marked in 100.0..60_000.0_f64) {
        let scene = margin_bar(&finding(&turning(at.round(), marked.round()), "over-speed")).expect("a bar");
        prop_assert!(scene.bounds().expect("marks").within(scene.page()));
        let (bar, hatched, pale) = bar(&scene);
        // The track is 54 mm for twice the demand.
        let wanted = (at.round() / marked.round() * 27.0).min(54.0);
        prop_assert!((bar.right - bar.left - wanted).abs() < 1e-6, "{bar:?} {wanted}");
        prop_assert_eq!(hatched.is_some(), at.round() > marked.round());
        prop_assert_eq!(pale.is_some(), at.round() <= marked.round());
        let margin = hatched.or(pale).expect("a margin");
        let share = ((at.round() - marked.round()).abs() / marked.round() * 27.0).min(27.0);
        prop_assert!((margin.right - margin.left - share).abs() < 1e-6, "{margin:?} {share}");
        // What lies beyond the track has an arrow; else only the mark at the demand is black.
        let black = scene.marks.iter().filter(|mark| {
            matches!(mark, Mark::Area { fill: Fill::Solid, .. })
        });
        prop_assert_eq!(black.count() == 2, at.round() > 2.0 * marked.round());
    }
}

#[test]
fn a_bar_tells_too_little_from_too_much() {
    // A flange of 50 mm for a third of 200 mm: the hatching lies before the mark in the middle.
    let mut m = whole();
    m.fixed_flange.diameter = mm(50.0);
    m.loose_flange.diameter = mm(50.0);
    let scene = margin_bar(&finding(&m, "flange-below-one-third")).expect("a bar");
    let (outlined, hatched, pale) = bar(&scene);
    let hatched = hatched.expect("it lacks something");
    assert_eq!(pale, None);
    assert!((outlined.right - (3.0 + 27.0 * 0.75)).abs() < 1e-3, "{outlined:?}");
    assert!(close(hatched.left, outlined.right) && close(hatched.right, 30.0), "{hatched:?}");
    assert_eq!(scene.title, "flange-below-one-third: 25 % missed");
    read_back(&svg(&scene));
}

#[test]
fn a_finding_without_a_share_has_no_bar() {
    let unknown = finding(&bare(), "over-speed");
    assert_eq!((unknown.outcome, unknown.share), (Outcome::Unknown, None));
    assert_eq!(margin_bar(&unknown), None);
    // A day has a share of the days since 1970, which says nothing.
    let mut m = bare();
    m.wheel.use_before = Date::read("2025-06-01").expect("a day").into();
    let old = finding(&m, "wheel-too-old");
    assert!(old.share.is_some() && old.unit == "days");
    assert_eq!(margin_bar(&old), None);
}

#[test]
fn lengths_reach_the_page_exactly() {
    // Whole nm to mm and back through the scale.
    let f = facts(&whole());
    assert_eq!(f.wheel.diameter.0, Length::new::<millimeter>(200.0).exact());
    let Section { scene, scale, .. } = drawn(&whole());
    let wheel = scene.dimensions().find(|d| d.text == "Ø200 mm").expect("the wheel");
    assert_close("wheel", size(wheel, scale.ratio), 200e6);
}
