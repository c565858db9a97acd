//! Seats on tapers against figures that were computed apart from hubwright, and what must hold for
//! all of them.

use std::f64::consts::PI;

use hubwright::draw::{Direction, Fill, Mark, Reach, Scene, SeatDrawn, seat_drawing, svg};
use hubwright::joint::{
    Carries, Print, Pushed, Seat, SeatFound, seat_by_rule, seat_rocking, tilt_run_out,
};
use hubwright::solid::Screw;
use hubwright::tables::materials::{Elastic, Metal};
use hubwright::units::{
    Angle, Force, Length, MassDensity, Pressure, Shop, Torque, degree, kilogram_per_cubic_meter,
    megapascal, meter, micrometer, millimeter, newton, newton_meter, pascal, radian,
};
use proptest::prelude::*;
use proptest::test_runner::FileFailurePersistence;

fn m(metres: f64) -> Length {
    Length::new::<meter>(metres)
}

fn mm(size: f64) -> Length {
    Length::new::<millimeter>(size)
}

fn n(force: f64) -> Force {
    Force::new::<newton>(force)
}

fn minutes(angle: f64) -> Angle {
    Angle::new::<degree>(angle / 60.0)
}

fn elastic(modulus: f64, poisson: f64) -> Elastic {
    let density = MassDensity::new::<kilogram_per_cubic_meter>(7850.0);
    Elastic::new(Pressure::new::<pascal>(modulus), poisson, density)
}

/// One row of a reference file: its geometry, and the figures after it.
struct Row {
    id: String,
    seat: Seat,
    friction: f64,
    mismatch: f64,
    force: Force,
    rest: Vec<String>,
}

impl Row {
    fn wanted(&self, at: usize) -> f64 {
        self.rest[at]
            .parse()
            .unwrap_or_else(|_| panic!("{}: a number: {:?}", self.id, self.rest[at]))
    }

    fn missing(&self, at: usize) -> bool {
        self.rest[at].is_empty()
    }
}

fn rows(file: &str) -> Vec<Row> {
    let lines = file.lines().filter(|line| !line.starts_with('#') && !line.trim().is_empty());
    lines.skip(1).map(row).collect()
}

fn row(line: &str) -> Row {
    let cells: Vec<_> = line.split(',').collect();
    let number = |at: usize| -> f64 {
        if cells[at].is_empty() { 0.0 } else { cells[at].parse().expect("a number") }
    };
    let steps: Vec<(f64, f64)> = cells[4]
        .split(' ')
        .map(|step| step.split_once(':').expect("place and radius"))
        .map(|(to, radius)| (to.parse().expect("a place"), radius.parse().expect("a radius")))
        .collect();
    let face = m(2.0 * steps[0].1);
    let mut seat = Seat::new(
        elastic(number(8), number(9)),
        elastic(number(10), number(11)),
        m(2.0 * number(2)),
        2.0 * number(3),
        m(number(1)),
        face,
        face,
    )
    .with_spindle_bore(m(2.0 * number(5)))
    .with_overhangs(m(number(6)), m(number(7)));
    for (before, (_, radius)) in steps.iter().zip(&steps[1..]) {
        seat = seat.with_step(m(before.0), m(2.0 * radius));
    }
    Row {
        id: cells[0].into(),
        seat,
        friction: number(12),
        mismatch: number(13),
        force: n(number(14)),
        rest: cells[15..].iter().map(|cell| (*cell).to_owned()).collect(),
    }
}

/// Every case with its seat solved; rows that follow each other share a geometry.
fn solved(rows: Vec<Row>, fine: bool) -> Vec<(Row, SeatFound)> {
    let mut all: Vec<(Row, SeatFound)> = Vec::new();
    for row in rows {
        let seat = if fine { row.seat.clone().with_fine_mesh() } else { row.seat.clone() };
        let found = match all.last() {
            Some((_, before)) if *before.seat() == seat => before.with_friction(row.friction),
            _ => seat.solve(row.friction),
        };
        let found = found.unwrap_or_else(|error| panic!("{}: {error}", row.id));
        all.push((row, found));
    }
    all
}

fn grid() -> Vec<Row> {
    rows(include_str!("reference/seat_grid.csv"))
}

fn fresh() -> Vec<Row> {
    rows(include_str!("reference/seat_fresh.csv"))
}

fn slices() -> Vec<Row> {
    rows(include_str!("reference/seat_slices.csv"))
}

fn push(row: &Row, seat: &SeatFound) -> Pushed {
    seat.push(row.force, minutes(row.mismatch))
        .unwrap_or_else(|error| panic!("{}: {error}", row.id))
}

fn newtons(force: Option<Force>) -> Option<f64> {
    force.map(|force| force.get::<newton>())
}

/// The differences that are too large, all at once.
#[derive(Default)]
struct Wrong(Vec<String>);

impl Wrong {
    fn within(&mut self, what: &str, row: &Row, found: f64, wanted: f64, most: f64) {
        let near = (found - wanted).abs() <= most;
        if !near {
            self.0.push(format!("{} {what}: {found}, wanted {wanted} within {most}", row.id));
        }
    }

    fn share(&mut self, what: &str, row: &Row, found: f64, wanted: f64, most: f64) {
        self.within(what, row, found, wanted, most * wanted.abs());
    }

    #[track_caller]
    fn none(self) {
        assert!(self.0.is_empty(), "{}", self.0.join("\n"));
    }
}

#[test]
fn ten_fresh_seats_come_out_as_a_second_programme_has_them() {
    let mut wrong = Wrong::default();
    for (row, seat) in solved(fresh(), false) {
        let found = push(&row, &seat);
        let ninety_five = newtons(found.force_for_95).expect("95 % close");
        wrong.share("F95", &row, ninety_five, row.wanted(0), 0.015);
        wrong.within("front", &row, found.contact, row.wanted(2), 0.006);
        let torque = found.slip_torque.get::<newton_meter>();
        wrong.share("torque", &row, torque, row.wanted(3), 5e-4);
        let end = found.end_pressure.get::<pascal>();
        wrong.share("end pressure", &row, end, row.wanted(4), 0.02);
        // Where the fine model never closes, this one says so, and names a place at the small end.
        assert_eq!(found.force_to_close.is_none(), row.missing(1), "{}: {found}", row.id);
        assert_eq!(found.never_closes.is_some(), row.missing(1), "{}", row.id);
        if let Some([from, to]) = found.never_closes {
            assert!(from == m(0.0) && to < mm(2.0), "{}: {found}", row.id);
            assert!(found.to_string().contains("never closes from 0 to"), "{found}");
        }
        let carries = if row.mismatch > 0.0 { Carries::Small } else { Carries::Large };
        assert_eq!(found.carries, carries, "{}", row.id);
    }
    wrong.none();
}

#[test]
fn on_the_fine_mesh_the_fresh_seats_come_out_to_the_printed_digits() {
    let mut wrong = Wrong::default();
    for (row, seat) in solved(fresh(), true) {
        let found = push(&row, &seat);
        let ninety_five = newtons(found.force_for_95).expect("95 % close");
        // At X3− the segments do not close in turn, which the second programme takes them to do.
        let most = if row.id == "X3-" { 1.1e-3 * row.wanted(0) } else { 0.6 };
        wrong.within("F95", &row, ninety_five, row.wanted(0), most);
        wrong.within("front", &row, found.contact, row.wanted(2), 6e-5);
        let torque = found.slip_torque.get::<newton_meter>();
        wrong.within("torque", &row, torque, row.wanted(3), 6e-5);
        let end = found.end_pressure.get::<pascal>();
        wrong.share("end pressure", &row, end, row.wanted(4), 1e-4);
        match newtons(found.force_to_close) {
            Some(closes) => wrong.within("closes", &row, closes, row.wanted(1), 0.6),
            None => assert!(row.missing(1), "{} never closes", row.id),
        }
    }
    wrong.none();
}

#[test]
fn the_grid_comes_out_as_the_fine_model_has_it() {
    let mut wrong = Wrong::default();
    for ((row, seat), (_, fine)) in solved(grid(), false).into_iter().zip(solved(grid(), true)) {
        let found = push(&row, &seat);
        let better = push(&row, &fine);
        wrong.within("touching", &row, found.touching, row.wanted(0), 0.03);
        // The fine mesh is the grid's own, so that its segments touch as they do there.
        wrong.within("fine touching", &row, better.touching, row.wanted(0), 1e-6);
        wrong.within("front", &row, found.contact, better.contact, 0.006);
        if let (Some(usual), Some(better)) =
            (newtons(found.force_for_95), newtons(better.force_for_95))
        {
            wrong.share("F95", &row, usual, better, 0.015);
        }
        wrong.share("draw-up", &row, found.draw_up.get::<meter>(), row.wanted(1), 0.01);
        wrong.share("torque", &row, found.slip_torque.get::<newton_meter>(), row.wanted(2), 5e-4);
        wrong.share("release", &row, found.release_force.get::<newton>(), row.wanted(3), 1e-8);
        wrong.share("normal", &row, found.normal_force.get::<newton>(), row.wanted(4), 1e-8);
        wrong.share("hoop", &row, found.hub_hoop.get::<pascal>(), row.wanted(5), 0.15);
        wrong.share("fine hoop", &row, better.hub_hoop.get::<pascal>(), row.wanted(5), 0.01);
        let (end, better_end) = (found.end_pressure, better.end_pressure.get::<pascal>());
        wrong.share("end pressure", &row, end.get::<pascal>(), better_end, 0.02);
        let carries = found.carries.to_string();
        let wanted = row.rest[6].clone();
        assert_eq!(carries.split(' ').next(), Some(wanted.as_str()), "{}", row.id);
        if row.mismatch != 0.0 {
            let closes = newtons(found.force_to_close).expect("it closes");
            wrong.share("closes", &row, closes, row.wanted(7), 0.03);
            // The stored figures come from a search that stopped at 2e-4 to 1e-3 of the force.
            let closes = newtons(better.force_to_close).expect("it closes");
            wrong.share("fine closes", &row, closes, row.wanted(7), 0.006);
        }
    }
    wrong.none();
}

/// G1 to G6 at +3′ and −3′, in kN, on 64 columns: MECHANICS.md C.5.
const F95_AT_THREE_MINUTES: [[f64; 2]; 6] =
    [[21.3, 18.0], [41.4, 55.0], [15.2, 14.4], [63.0, 63.7], [13.9, 10.3], [57.8, 57.9]];

#[test]
fn the_force_for_95_percent_is_the_printed_one() {
    let matched: Vec<_> = grid().into_iter().filter(|row| row.mismatch == 0.0).collect();
    for ((row, seat), wanted) in solved(matched, false).into_iter().zip(F95_AT_THREE_MINUTES) {
        for (angle, wanted) in [3.0, -3.0].into_iter().zip(wanted) {
            let found = newtons(seat.force_for(0.95, minutes(angle)).expect("in range"));
            let found = found.expect("it closes") / 1e3;
            assert!((found - wanted).abs() < 0.05 + 0.015 * wanted, "{} {angle}: {found}", row.id);
        }
    }
}

#[test]
fn force_over_mismatch_is_all_that_counts() {
    let matched: Vec<_> = grid().into_iter().filter(|row| row.mismatch == 0.0).collect();
    for (row, seat) in solved(matched, false) {
        for way in [1.0, -1.0] {
            let closing = |angle: f64| {
                newtons(seat.force_for(1.0, minutes(way * angle)).expect("in range"))
                    .expect("it closes")
            };
            let ratio = closing(3.0) / closing(0.5);
            // Six, but for the tangents of the two angles.
            assert!((ratio - 6.0).abs() < 6e-6, "{}: {ratio}", row.id);
        }
    }
}

#[test]
fn ring_slices_are_what_quadrature_makes_of_them() {
    let mut wrong = Wrong::default();
    for row in slices() {
        let mismatch = Angle::new::<radian>(row.mismatch);
        let found = row.seat.ring_slices(row.friction, row.force, mismatch).expect("a seat");
        let figures = [
            found.draw_up.get::<meter>(),
            found.pressures[0].get::<pascal>(),
            found.pressures[1].get::<pascal>(),
            found.contact,
            found.normal_force.get::<newton>(),
            found.slip_torque.get::<newton_meter>(),
            found.release_force.get::<newton>(),
            found.hoops[0].get::<pascal>(),
            found.hoops[1].get::<pascal>(),
        ];
        for (at, figure) in figures.into_iter().enumerate() {
            wrong.within(
                &format!("figure {at}"),
                &row,
                figure,
                row.wanted(at),
                1e-5 * row.wanted(at).abs() + 1e-3,
            );
        }
        if !row.missing(9) {
            wrong.share("closes", &row, found.force_to_close.get::<newton>(), row.wanted(9), 1e-5);
        }
        assert!(found.how_far_off().contains("never the answer"));
    }
    wrong.none();
}

#[test]
fn ring_slices_are_off_as_far_as_they_say() {
    for (row, seat) in solved(grid().into_iter().chain(fresh()).collect(), false) {
        let found = push(&row, &seat);
        let quick = row.seat.ring_slices(row.friction, row.force, minutes(row.mismatch));
        let quick = quick.expect("a seat");
        let torque =
            quick.slip_torque.get::<newton_meter>() / found.slip_torque.get::<newton_meter>();
        assert!((torque - 1.0).abs() < 0.021, "{}: {torque}", row.id);
        if found.contact < 0.9 && quick.contact < 1.0 {
            let more = quick.contact - found.contact;
            assert!((0.02..0.31).contains(&more), "{}: {more}", row.id);
        }
    }
}

#[test]
fn a_taper_holds_itself_below_its_friction() {
    // C07: F release / F draw at a friction of 0.12, and whether it holds at 0.10 and at 0.15.
    let steel = Elastic::from(Metal::Steel);
    for (taper, ratio, holds) in [
        (1.0 / 5.0, 0.090_909_090_91, [false, true]),
        (1.0 / 10.0, 0.411_764_705_9, [true, true]),
        (1.0 / 20.0, 0.655_172_413_8, [true, true]),
        (7.0 / 24.0, -0.097_178_683_39, [false, true]),
        (1.0 / 16.0, 0.586_776_859_5, [true, true]),
        (1.0 / 20.02, 0.655_457_552_4, [true, true]),
    ] {
        let seat = Seat::new(steel, steel, mm(25.0), taper, mm(25.0), mm(45.0), mm(45.0));
        let seat = seat.solve(0.12).expect("a seat");
        let pushed = |friction| {
            seat.with_friction(friction).and_then(|s| s.push(n(1e3), minutes(0.0))).expect("a push")
        };
        let release = pushed(0.12).release_force.get::<newton>() / 1e3;
        assert!((release - ratio).abs() < 1e-9, "1:{}: {release}", 1.0 / taper);
        let found = [0.10, 0.15].map(|friction| pushed(friction).holds_itself);
        // At 1:5 the tangent is the friction of 0.10 itself, which does not hold.
        assert_eq!(found, holds, "1:{}", 1.0 / taper);
    }
}

#[test]
fn the_rule_of_thumb_is_the_printed_one() {
    // C10.
    let found = seat_by_rule(
        m(0.03),
        m(0.014),
        1.9e-13,
        [0.05, 0.12],
        Angle::new::<radian>(0.000_436_332_313),
        n(3_863.430_67),
    )
    .expect("in range");
    assert!((found.force_to_close.get::<newton>() / 15_453.722_68 - 1.0).abs() < 1e-9);
    assert!((found.contact - 0.5).abs() < 1e-9);
    assert!((found.end_pressure.get::<pascal>() / 34_447_287.87 - 1.0).abs() < 1e-9);
}

#[test]
fn two_jacking_screws_share_the_push() {
    // C08: 3.2 kN on two M6 screws, 0.14 in the thread and 0.12 under tips that rub at 1.8 mm.
    let half = Angle::new::<degree>(30.0);
    let screw = Screw::new(m(0.00535), m(0.001), half, 0.14).expect("a screw");
    let each = 3200.0 / 2.0;
    let torque = screw.torque(n(each)).get::<newton_meter>() + 0.12 * each * 0.0018;
    assert!((torque / 1.301_336_939 - 1.0).abs() < 1e-6, "{torque}");
}

#[test]
fn a_tilt_shows_at_the_rim() {
    // C09.
    let found = tilt_run_out(Angle::new::<radian>(2e-5), m(0.25), m(0.06)).expect("in range");
    assert!((found.axial.get::<meter>() / 5e-6 - 1.0).abs() < 1e-9);
    assert!((found.radial.get::<meter>() / 2.4e-6 - 1.0).abs() < 1e-9);
}

fn plain() -> Seat {
    let steel = Elastic::from(Metal::Steel);
    Seat::new(steel, steel, mm(28.0), 0.2, mm(35.0), mm(48.0), mm(48.0))
        .with_overhangs(mm(15.0), mm(30.0))
}

#[test]
fn half_of_the_contact_rocks_eight_times_as_easily() {
    // Of a uniform ring slice K = π R l³ / (12 c): MECHANICS.md C.6. A taper of 1:100 is nearly uniform.
    let steel = Elastic::from(Metal::Steel);
    let seat = Seat::new(steel, steel, mm(28.0), 0.01, mm(35.0), mm(48.0), mm(48.0));
    let seat = seat.solve(0.12).expect("a seat");
    let tilt = |mismatch: f64| {
        let moment = Torque::new::<newton_meter>(2.0);
        seat_rocking(&seat, n(4000.0), minutes(mismatch), moment).expect("in range").get::<radian>()
    };
    let half = seat.angle_tolerance(n(4000.0), 0.5).expect("in range").closed_by.expect("an angle");
    let ratio = tilt(-half.get::<degree>() * 60.0) / tilt(0.0);
    assert!((ratio - 8.0).abs() < 0.2, "{ratio}");
    let (r, b, e) = (14.0875e-3_f64, 24e-3_f64, 206e9);
    let c = r / e * ((b * b + r * r) / (b * b - r * r) + 1.0);
    let wanted = 2.0 / (PI * r * 35e-3_f64.powi(3) / (12.0 * c));
    assert!((tilt(0.0) / wanted - 1.0).abs() < 0.01, "{} {wanted}", tilt(0.0));
}

#[test]
fn a_print_at_no_force_is_the_film_over_the_tangent() {
    // I05: one minute of arc and 1.5 µm are 5.156620011 mm of 35.
    let seat = plain().solve(0.12).expect("a seat");
    let film = Length::new::<micrometer>(1.5);
    let mismatch = Angle::new::<radian>(0.000_290_888_208_7);
    for way in [1.0, -1.0] {
        let printed = seat.expected_print(mismatch * way, film, n(0.0)).expect("in range");
        assert!((printed.length.get::<meter>() / 0.005_156_620_011 - 1.0).abs() < 1e-6);
        let kind = if way > 0.0 { Print::SmallEnd } else { Print::LargeEnd };
        let length = Some(m(0.005_156_620_011));
        let read = seat.mismatch_from_print(kind, length, film, n(0.0)).expect("a ring");
        let angle = read.mismatch.expect("an angle").get::<radian>() * way;
        assert!((angle / 0.000_290_888_216_9 - 1.0).abs() < 1e-6, "{angle}");
        assert_eq!(read.elastic_length.expect("of a ring").get::<meter>(), 0.0);
    }
}

#[test]
fn a_print_under_force_gives_back_the_angle_it_was_made_with() {
    let seat = plain().solve(0.12).expect("a seat");
    let film = Length::new::<micrometer>(2.0);
    for minutes_of_arc in [-6.0, -2.0, 0.9, 3.0, 12.0] {
        for force in [0.0, 50.0, 400.0, 1500.0] {
            let mismatch = minutes(minutes_of_arc);
            let printed = seat.expected_print(mismatch, film, n(force)).expect("in range");
            let kind = if minutes_of_arc > 0.0 { Print::SmallEnd } else { Print::LargeEnd };
            let read = seat.mismatch_from_print(kind, Some(printed.length), film, n(force));
            let read = read.expect("a ring").mismatch.expect("an angle");
            assert!(((read / mismatch).value - 1.0).abs() < 1e-9, "{minutes_of_arc} {force}");
            // What the force closes is part of the print, and never more than it.
            let light = seat.expected_print(mismatch, film, n(0.0)).expect("in range");
            assert!(printed.length >= light.length);
        }
    }
}

#[test]
fn a_print_over_the_whole_length_proves_bounds_and_no_more() {
    // A length of 35 mm and 1.5 µm: 8.84 seconds of arc of half angle, by e / L.
    let seat = plain().solve(0.12).expect("a seat");
    let read = |force| {
        let film = Length::new::<micrometer>(1.5);
        seat.mismatch_from_print(Print::Whole, None, film, n(force)).expect("a print")
    };
    let found = read(0.0);
    assert_eq!(found.mismatch, None);
    let [least, most] = found.bounds.expect("bounds").map(|angle| angle.get::<degree>() * 3600.0);
    let wanted = (1.5e-6 / (35e-3 * 1.01_f64.sqrt())).to_degrees() * 3600.0;
    assert!((most - wanted).abs() < 1e-6 && (least + wanted).abs() < 1e-6, "{least} {most}");
    assert!(found.says().contains("does not prove that they are equal"), "{}", found.says());
    // Under force the same print proves less.
    let [_, pressed] = read(2000.0).bounds.expect("bounds");
    assert!(pressed.get::<degree>() * 3600.0 > 2.0 * most);
}

#[test]
fn a_print_that_is_no_ring_from_one_end_tells_no_angle() {
    let seat = plain().solve(0.12).expect("a seat");
    for (print, word) in [
        (Print::ThreePatches, "jaws"),
        (Print::OnePatch, "dirt"),
        (Print::Middle, "full in the middle"),
        (Print::BothEnds, "hollow in the middle"),
    ] {
        let read = seat.mismatch_from_print(print, None, mm(0.002), n(100.0)).expect("an answer");
        assert_eq!((read.mismatch, read.bounds), (None, None));
        assert!(read.says().contains(word), "{}", read.says());
    }
}

#[test]
fn the_tolerance_keeps_the_share_and_not_more() {
    let seat = plain().solve(0.12).expect("a seat");
    let tolerance = seat.angle_tolerance(n(8000.0), 0.75).expect("in range");
    let closed = tolerance.closed_by.expect("an angle");
    let at = |mismatch: Angle| seat.push(n(8000.0), mismatch).expect("in range").contact;
    assert!((at(-closed) - 0.75).abs() < 0.01, "{}", at(-closed));
    assert!(at(-closed * 0.8) > 0.75 && at(-closed * 1.2) < 0.75);
    assert_eq!(seat.push(n(8000.0), -closed).expect("in range").carries, Carries::Large);
}

#[test]
fn the_force_that_a_mismatch_needs_closes_it() {
    let seat = plain().solve(0.12).expect("a seat");
    for angle in [-4.0, -0.5, 0.7, 5.0] {
        let whole = seat.force_for(1.0, minutes(angle)).expect("in range").expect("it closes");
        let at = |share: f64| seat.push(whole * share, minutes(angle)).expect("in range");
        assert_eq!((at(1.001).touching, at(1.001).contact), (1.0, 1.0));
        assert!(at(0.995).touching < 1.0);
        let found = at(0.3);
        assert!(found.to_string().ends_with("a nut cannot cure an angle"), "{found}");
    }
}

#[test]
fn the_nuts_radius_matters_as_much_as_was_measured() {
    // G4 under a nut that bears to 30 mm, and on the whole flange of 42 mm: kN that close it, on 64 columns.
    let row = grid().into_iter().find(|row| row.id == "CF28").expect("G4");
    for (radius, angle, wanted) in
        [(0.030, -2.0, 26.5), (0.030, 2.0, 45.36), (0.042, -2.0, 48.576), (0.042, 2.0, 46.447)]
    {
        let mut seat = row.seat.clone().with_fine_mesh();
        seat.nut_diameter = m(2.0 * radius);
        let found = seat.solve(row.friction).expect("a seat");
        let closes = found.force_for(1.0, minutes(angle)).expect("in range");
        let closes = newtons(closes).expect("it closes") / 1e3;
        // The stored figures come from a search that stopped at up to 6e-3 of the force.
        assert!((closes / wanted - 1.0).abs() < 6e-3, "{radius} {angle}: {closes}");
    }
}

#[test]
fn a_hub_that_rolls_under_its_nut_closes_from_both_ends() {
    // X5− with a nut that bears close to the seat: the flange rolls the small end shut before the middle
    // is. What closes last is neither end, and 95 % of the length needs that too.
    let row = fresh().into_iter().find(|row| row.id == "X5-").expect("X5-");
    let mut seat = row.seat.clone();
    seat.nut_diameter = mm(26.0);
    let found = seat.solve(row.friction).expect("a seat");
    let at = |share: f64| newtons(found.force_for(share, minutes(-3.0)).expect("in range"));
    let (most, all) = (at(0.95).expect("it closes"), at(1.0).expect("it closes"));
    assert!(most <= all && all < 0.2 * row.wanted(0), "{most} {all}");
    let along = found.along(n(0.95 * all), minutes(-3.0)).expect("in range");
    let open: Vec<_> =
        along.iter().filter(|at| !at.touching).map(|at| at.place / seat_length(&found)).collect();
    assert!(
        !open.is_empty() && open.iter().all(|at| at.value > 0.02 && at.value < 0.4),
        "{open:?}"
    );
}

fn seat_length(seat: &SeatFound) -> Length {
    seat.seat().length
}

#[test]
fn a_column_is_its_rows_bit_for_bit() {
    let seat = plain().solve(0.12).expect("a seat");
    let rows = 10_000;
    let forces: Vec<_> = (0..rows).map(|at| n(100.0 + f64::from(at))).collect();
    let angles: Vec<_> = (0..rows).map(|at| minutes(f64::from(at % 101) / 10.0 - 5.0)).collect();
    let column = seat.push_column(&forces, &angles).expect("of one length");
    assert_eq!(column.len(), forces.len());
    for ((force, angle), found) in forces.iter().zip(&angles).zip(column) {
        assert_eq!(found.expect("in range"), seat.push(*force, *angle).expect("in range"));
    }
    let error = seat.push_column(&forces, &angles[1..]).expect_err("unlike lengths");
    assert_eq!(error.code(), "unlike-lengths");
    let bad = seat.push_column(&[n(-1.0)], &[minutes(1.0)]).expect("of one length");
    assert!(bad[0].is_err());
}

#[test]
fn the_last_step_is_the_torque_bit_for_bit() {
    let seat = plain().solve(0.12).expect("a seat");
    for angle in [-3.0, 0.0, 3.0] {
        let found = seat.push(n(8000.0), minutes(angle)).expect("in range");
        let working = seat.working(&found);
        let last = working.steps.last().expect("steps");
        assert_eq!(last.result, found.slip_torque.get::<newton_meter>());
        assert!(working.to_string().contains("F (μ − tan α) / (μ + tan α)"), "{working}");
    }
}

#[test]
fn pressures_along_the_seat_carry_the_force() {
    let seat = plain().with_step(mm(12.0), mm(80.0)).solve(0.12).expect("a seat");
    for angle in [-3.0, 0.0, 3.0] {
        let along = seat.along(n(8000.0), minutes(angle)).expect("in range");
        let t: f64 = 0.1;
        let force: f64 = along
            .iter()
            .map(|at| {
                let r = 14e-3 + t * at.place.get::<meter>();
                2.0 * PI * r * at.length.get::<meter>() * at.pressure.get::<pascal>() * (t + 0.12)
            })
            .sum();
        assert!((force / 8000.0 - 1.0).abs() < 1e-9, "{force}");
        assert!(along.iter().any(|at| (at.place + at.length / 2.0 - mm(12.0)).abs() < mm(1e-9)));
    }
}

#[test]
fn a_seat_that_yields_is_told_and_no_error() {
    let mpa = Pressure::new::<megapascal>;
    let seat = plain().with_hub_yield(mpa(350.0)).with_spindle_yield(mpa(600.0));
    let seat = seat.solve(0.12).expect("a seat");
    let at = |force: f64| seat.push(n(force), minutes(-2.0)).expect("in range");
    assert_eq!(at(2000.0).stays_elastic(), Some(true));
    let yields = at(400_000.0);
    assert_eq!(yields.stays_elastic(), Some(false));
    let factor = yields.hub_factor.expect("a yield stress is given");
    let most = yields.hub_hoop.max(yields.peak_pressure).get::<megapascal>();
    assert!((factor * most / 350.0 - 1.0).abs() < 1e-12);
}

#[test]
fn figures_that_make_no_seat_are_told_by_name() {
    let sound = || plain().with_step(mm(12.0), mm(80.0));
    let solve = |seat: Seat| seat.solve(0.12).map(|_| ());
    let with = |change: fn(&mut Seat)| {
        let mut seat = sound();
        change(&mut seat);
        solve(seat)
    };
    let push =
        |force: f64, angle: f64| sound().solve(0.12)?.push(n(force), minutes(angle)).map(|_| ());
    let print = |kind, length: Option<f64>, film: f64, force: f64| {
        sound()
            .solve(0.12)?
            .mismatch_from_print(kind, length.map(mm), mm(film), n(force))
            .map(|_| ())
    };
    let cases = [
        (with(|s| s.length = mm(-25.0)), "`length`", "not above 0"),
        (with(|s| s.length = mm(1.0)), "`length`", "0.1 to 20 times"),
        (with(|s| s.small_diameter = mm(f64::NAN)), "`small_diameter`", "not a finite number"),
        (with(|s| s.taper = 5.0), "`taper`", "outside 0.001 to 1"),
        (with(|s| s.hub_diameter = mm(35.5)), "`hub_diameter`", "thinner than a shell"),
        (with(|s| s.steps[0].diameter = mm(30.0)), "`steps[0].diameter`", "thinner than a shell"),
        (with(|s| s.steps[0].from = mm(34.5)), "`steps[0].from`", "not from"),
        (with(|s| s.nut_diameter = mm(60.0)), "`nut_diameter`", "not on the hub's face"),
        (with(|s| s.nut_diameter = mm(28.0)), "`nut_diameter`", "not on the hub's face"),
        (with(|s| s.spindle_bore = mm(27.5)), "`spindle_bore`", "leaves a shell"),
        (with(|s| s.spindle_bore = mm(-1.0)), "`spindle_bore`", "below 0"),
        (with(|s| s.overhangs[0] = mm(-1.0)), "`overhang_small`", "below 0"),
        (with(|s| s.hub_yield = Some(Pressure::default())), "`hub_yield`", "not above 0"),
        (with(|s| s.hub.poisson = 0.6), "`hub.poisson`", "not between 0 and 0.5"),
        (sound().solve(0.0).map(|_| ()), "`friction`", "not above 0"),
        (sound().solve(1.5).map(|_| ()), "`friction`", "outside 0 to 1"),
        (push(0.0, 1.0), "`force`", "not above 0"),
        (push(f64::INFINITY, 1.0), "`force`", "not a finite number"),
        (push(1e3, 31.0), "`mismatch`", "outside -0.5 to 0.5"),
        (push(1e3, f64::NAN), "`mismatch`", "not a finite number"),
        (print(Print::SmallEnd, None, 0.002, 0.0), "`print_length`", "missing"),
        (
            print(Print::SmallEnd, Some(36.0), 0.002, 0.0),
            "`print_length`",
            "not below the seat's 35.17",
        ),
        (
            print(Print::SmallEnd, Some(0.1), 0.002, 0.0),
            "`print_length`",
            "shorter than a mismatch",
        ),
        (print(Print::Whole, None, 0.0, 0.0), "`film`", "not between 0 and 100"),
        (print(Print::Whole, None, 0.002, -1.0), "`force`", "below 0"),
        (
            sound().solve(0.12).and_then(|s| s.force_for(0.0, minutes(1.0))).map(|_| ()),
            "`share`",
            "not above 0",
        ),
        (tilt_run_out(minutes(40.0), mm(200.0), mm(50.0)).map(|_| ()), "`tilt`", "outside"),
    ];
    for (at, (found, argument, says)) in cases.into_iter().enumerate() {
        let error = found.expect_err(&format!("case {at}: {argument} {says}")).to_string();
        let lines: Vec<_> = error.lines().collect();
        assert!(lines[0].contains(argument) && lines[0].contains(says), "{error}");
        assert!(lines[1].starts_with("hint: ") && !lines[0].ends_with('.'), "{error}");
    }
}

#[test]
fn the_sources_are_cited() {
    for source in hubwright::joint::SEAT_SOURCES {
        assert!(!source.title.is_empty() && !source.key.is_empty());
    }
}

proptest! {
    #![proptest_config(ProptestConfig {
        cases: 24,
        failure_persistence: Some(Box::new(FileFailurePersistence::WithSource("regressions"))),
        ..ProptestConfig::default()
    })]

    #[test]
    fn any_sound_seat_solves_and_more_force_closes_more(
        small in 8.0..60.0_f64,
        taper in 0.03..0.3_f64,
        ratio in 0.6..3.0_f64,
        wall in 0.1..1.5_f64,
        flange in 0.0..1.5_f64,
        nut in 0.05..1.0_f64,
        bore in 0.0..0.9_f64,
        modulus in 60.0..210.0_f64,
        friction in 0.05..0.5_f64,
        angle in -8.0..8.0_f64,
    ) {
        let length = small * ratio;
        let large = small + taper * length;
        let hub = large * (1.0 + wall);
        let mut seat = Seat::new(
            elastic(modulus * 1e9, 0.3),
            Elastic::from(Metal::Steel),
            mm(small),
            taper,
            mm(length),
            mm(hub),
            mm(small + nut.max(0.1) * (hub - small)),
        )
        .with_spindle_bore(mm(bore * small))
        .with_overhangs(mm(small / 2.0), mm(small));
        if flange > 0.2 {
            seat = seat.with_step(mm(0.6 * length), mm(hub * (1.0 + flange)));
        }
        let seat = seat.solve(friction).map_err(|error| TestCaseError::fail(error.to_string()))?;
        let mut before = 0.0;
        for force in [10.0, 100.0, 1e3, 1e4, 1e5] {
            let found = seat.push(n(force), minutes(angle)).expect("in range");
            prop_assert!(found.contact >= before - 1e-12 && found.contact <= 1.0);
            prop_assert!(found.touching > 0.0 && found.touching <= 1.0);
            prop_assert!(found.draw_up.get::<meter>() > 0.0);
            // T lies between the friction of all of the force at either end.
            let torque = found.slip_torque.get::<newton_meter>();
            let arm = torque / (friction * found.normal_force.get::<newton>());
            prop_assert!(arm > small / 2e3 && arm < large / 2e3, "{arm}");
            before = found.contact;
        }
    }
}

// --- The drawing -----------------------------------------------------------

fn drawn(seat: &SeatFound, force: f64, angle: f64) -> SeatDrawn {
    let film = Length::new::<micrometer>(2.0);
    seat_drawing(seat, n(force), minutes(angle), film, Shop::Metric).expect("a seat")
}

/// Left and right edge of all areas of a fill, and the top of each.
fn areas(scene: &Scene, wanted: Fill) -> Vec<[f64; 4]> {
    let area = |mark: &Mark| match mark {
        Mark::Area { points, fill, .. } if *fill == wanted => {
            let x = points.iter().map(|p| p.x);
            let y = points.iter().map(|p| p.y);
            Some([
                x.clone().fold(f64::MAX, f64::min),
                x.fold(f64::MIN, f64::max),
                y.clone().fold(f64::MAX, f64::min),
                y.fold(f64::MIN, f64::max),
            ])
        }
        _ => None,
    };
    scene.marks.iter().filter_map(area).collect()
}

#[test]
fn the_drawing_of_a_seat_is_on_its_page_to_scale_and_its_texts_apart() {
    let steel = Elastic::from(Metal::Steel);
    let small = Seat::new(steel, steel, mm(6.0), 0.05, mm(8.0), mm(10.0), mm(9.0));
    let long = Seat::new(steel, steel, mm(40.0), 0.0625, mm(160.0), mm(80.0), mm(70.0))
        .with_spindle_bore(mm(20.0))
        .with_step(mm(100.0), mm(300.0));
    for seat in [plain(), plain().with_step(mm(12.0), mm(80.0)), small, long] {
        let seat = seat.solve(0.12).expect("a seat");
        for (force, angle) in [(8000.0, 3.0), (200.0, -25.0), (5000.0, 0.0)] {
            let drawn = drawn(&seat, force, angle);
            let scene = &drawn.scene;
            let bounds = scene.bounds().expect("marks");
            assert!(bounds.within(scene.page()), "{bounds:?} on {:?}", scene.page());
            let texts = scene.texts();
            for (at, text) in texts.iter().enumerate() {
                for other in &texts[at + 1..] {
                    assert!(!text.bounds().overlaps(other.bounds()), "{text:?} over {other:?}");
                }
            }
            for dimension in scene.dimensions() {
                let share = if dimension.reach == Reach::Whole { 1.0 } else { 2.0 };
                let size = dimension.length() * share / drawn.scale.ratio;
                let said = dimension.text.trim_start_matches('Ø').trim_end_matches(" mm");
                let said: f64 = said.parse().expect("a size in mm");
                assert!((size - said).abs() < 1e-3, "{} is {size}", dimension.text);
            }
            assert!(svg(scene).starts_with("<svg"));
        }
    }
}

#[test]
fn the_drawing_shows_pressure_and_print_where_they_are() {
    let seat = plain().solve(0.12).expect("a seat");
    for angle in [3.0, -3.0] {
        let drawn = drawn(&seat, 4000.0, angle);
        let level = drawn.scene.dimensions().find(|d| d.direction == Direction::Level);
        let [left, right] = level.map(|d| [d.from.x, d.to.x]).expect("the length");
        let tones = areas(&drawn.scene, Fill::Tone);
        // The lowest is the print, the others are the segments that touch.
        let print = tones.iter().copied().max_by(|a, b| a[3].total_cmp(&b[3])).expect("a print");
        let pressed: Vec<_> = tones.iter().filter(|area| area[3] < print[2]).collect();
        let along = seat.along(n(4000.0), minutes(angle)).expect("in range");
        assert_eq!(
            pressed.len(),
            along.iter().filter(|at| at.touching && at.pressure.value > 0.0).count()
        );
        let width = (print[1] - print[0]) / (right - left);
        // At no force the print is the film over the tangent: 2 µm over 3′ on 35.17 mm.
        let wanted = 2e-6 / (3.0_f64 / 60.0).to_radians().tan() / (35e-3 * 1.01_f64.sqrt());
        assert!((width / wanted - 1.0).abs() < 1e-9, "{width} {wanted}");
        let highest = pressed.iter().min_by(|a, b| a[2].total_cmp(&b[2])).expect("pressure");
        let near =
            if angle > 0.0 { (left, print[0], highest[0]) } else { (right, print[1], highest[1]) };
        assert!((near.0 - near.1).abs() < 1e-9 && (near.0 - near.2).abs() < 1e-9, "{near:?}");
        let said = if angle > 0.0 { "small end carries" } else { "large end carries" };
        assert!(drawn.scene.title.contains(said), "{}", drawn.scene.title);
    }
}
