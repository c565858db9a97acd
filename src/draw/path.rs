//! The path of torque from the spindle through flanges, wheel and nut, with what each joint carries.

use super::scene::{Anchor, Fill, Mark, Point, Scene, Stroke, TYPE_SIZE, Text, text_length};
use crate::units::{Torque, figure, newton_meter};
use crate::wheel::HoldingFound;

/// Width of the page, and its margin.
const WIDTH: f64 = 180.0;
const EDGE: f64 = 4.0;
/// Sizes of a box, and the gap between two.
const BOX: f64 = 24.0;
const HIGH: f64 = 10.0;
const GAP: f64 = 13.0;
/// Upper edge of the boxes, and height of the way back to the spindle.
const TOP: f64 = 20.0;
const BACK: f64 = 8.0;
const LINE: f64 = 4.6;

const PARTS: [&str; 5] = ["fixed flange", "wheel", "loose flange", "nut", "spindle"];

fn left(at: usize) -> f64 {
    EDGE + at as f64 * (BOX + GAP)
}

fn line(points: &[(f64, f64)], stroke: Stroke) -> Mark {
    Mark::Line { points: points.iter().map(|(x, y)| Point::new(*x, *y)).collect(), stroke }
}

/// An arrowhead that points to the right, its tip here.
fn head(x: f64, y: f64) -> Mark {
    let points = vec![Point::new(x, y), Point::new(x - 2.4, y - 0.8), Point::new(x - 2.4, y + 0.8)];
    Mark::Area { points, fill: Fill::Solid, stroke: None }
}

/// A sentence in lines no longer than the page.
fn wrapped(text: &str) -> Vec<String> {
    let mut lines = vec![String::new()];
    for word in text.split(' ') {
        let last = lines.last().map_or("", String::as_str);
        let longer = if last.is_empty() { word.to_owned() } else { format!("{last} {word}") };
        if text_length(&longer, TYPE_SIZE) <= WIDTH - 2.0 * EDGE {
            lines.pop();
            lines.push(longer);
        } else {
            lines.push(word.to_owned());
        }
    }
    lines
}

fn range(both: [Torque; 2]) -> String {
    let [least, greatest] = both.map(|torque| figure(torque.get::<newton_meter>(), 2));
    if least == greatest { format!("{least} N m") } else { format!("{least} to {greatest} N m") }
}

/// Draws the path of torque: parts as boxes, joints by number, and below them what each carries and whether a slipping
/// loose flange takes the nut along.
///
/// A key leads past the nut: it is dashed.
///
/// # Example
///
/// ```
/// use hubwright::draw::torque_path;
/// use hubwright::units::{Angle, Force, Length, Torque, degree, millimeter, newton, newton_meter};
/// use hubwright::wheel::holding::{Demand, Holding, NutThread, Rubbing, Tightness};
///
/// let mm = Length::new::<millimeter>;
/// let nm = Torque::new::<newton_meter>;
/// let thread = NutThread { pitch_diameter: mm(14.701), lead: mm(2.0), half_angle: Angle::new::<degree>(30.0), friction: [0.14; 2] };
/// let face = Rubbing { inside: mm(17.0), outside: mm(25.0), friction: [0.12; 2] };
/// let land = Rubbing { inside: mm(60.0), outside: mm(76.0), friction: [0.15; 2] };
/// let tight = Tightness::Preload([Force::new::<newton>(9000.0); 2]);
/// let demand = Demand { cutting: nm(14.0), run_up: nm(0.0), braking: nm(4.438) };
/// let scene = torque_path(&Holding::new(thread, face, land, tight, demand).solve()?);
/// assert!(scene.texts().iter().any(|text| text.text.contains("slips at 11.34 N m")));
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn torque_path(found: &HoldingFound) -> Scene {
    let middle = TOP + HIGH / 2.0;
    let mut marks = Vec::new();
    let write = |x: f64, y: f64, anchor, text: &str| {
        Mark::Text(Text::new(Point::new(x, y), TYPE_SIZE, anchor, text))
    };
    for (at, part) in PARTS.iter().enumerate() {
        let x = left(at);
        let (from, to) = (Point::new(x, TOP), Point::new(x + BOX, TOP + HIGH));
        marks.push(Mark::rectangle(from, to, Fill::Empty, Some(Stroke::Outline)));
        marks.push(write(x + BOX / 2.0, middle + 1.0, Anchor::Middle, part));
        if at + 1 < PARTS.len() {
            marks.push(line(&[(x + BOX, middle), (x + BOX + GAP, middle)], Stroke::Outline));
            marks.push(head(x + BOX + GAP, middle));
            let number = (at + 1).to_string();
            marks.push(write(x + BOX + GAP / 2.0, middle - 1.4, Anchor::Middle, &number));
        }
    }
    // The spindle drives the fixed flange: the way back above the boxes closes the path.
    let (first, last) = (left(0) + BOX / 2.0, left(4) + BOX / 2.0);
    marks.push(line(&[(last, TOP), (last, BACK), (first, BACK), (first, TOP)], Stroke::Outline));
    let keyed = left(2) + BOX / 2.0;
    marks.push(line(&[(keyed, TOP), (keyed, BACK)], Stroke::Dashed));
    marks.push(write(
        keyed + 1.5,
        f64::midpoint(TOP, BACK) + 1.0,
        Anchor::Start,
        "a key leads here",
    ));
    marks.push(write(
        first + 1.5,
        BACK - 1.5,
        Anchor::Start,
        "the spindle drives the fixed flange",
    ));

    let mut lines = vec![
        format!("1  fixed blotter: carries {}", range(found.carries_face)),
        format!("2  loose blotter: carries {}", range(found.carries_face)),
        format!("3  face of the nut: slips at {}", range(found.nut_slips)),
        format!("4  thread: holds {} against loosening", range(found.release)),
        format!(
            "Asked: up to {} N m. Unkeyed, both sides carry {} where the torque tightens the nut, {} where it loosens it.",
            figure(found.asked.get::<newton_meter>(), 2),
            range(found.carries_tightening),
            range(found.carries_loosening)
        ),
    ];
    lines.push(found.takes_along_says());
    let mut y = TOP + HIGH + 2.0 * LINE;
    for text in lines.iter().flat_map(|text| wrapped(text)) {
        marks.push(write(EDGE, y, Anchor::Start, &text));
        y += LINE;
    }
    let mut scene =
        Scene::new("Path of torque from the spindle to the nut", WIDTH, y + EDGE - LINE + 1.0);
    scene.marks = marks;
    scene
}
