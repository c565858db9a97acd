//! The bar of a finding: how much room there is, or how much lacks.

use super::scene::{Fill, Mark, Point, Scene, Stroke};
use crate::mounting::Finding;
use crate::units::figure;

const WIDTH: f64 = 60.0;
const HEIGHT: f64 = 6.0;
/// Ends of the track; its middle is the demand.
const LEFT: f64 = 3.0;
const RIGHT: f64 = WIDTH - LEFT;
const MIDDLE: f64 = WIDTH / 2.0;
/// Upper and lower edge of the bar.
const TOP: f64 = 1.4;
const BOTTOM: f64 = HEIGHT - TOP;

/// The margin of a finding as a bar, 60 × 6 mm.
///
/// The track runs from nothing to twice the demand. A heavy mark in its
/// middle is the demand, the outlined bar is what was found. Between the two
/// lies the margin: a pale tone for room, hatching for what lacks or is too
/// much. Half of the track is 100 %, with a tick at each 50 %; what lies
/// beyond the track ends in an arrow.
///
/// `None` when the finding has no share, and for dates, which have no zero.
///
/// # Example
///
/// A spindle at 3400 rpm with a wheel marked 2850 rpm is 19 % too fast.
///
/// ```
/// use hubwright::draw::{margin_bar, svg};
/// use hubwright::mounting::{Mounting, Terms, check};
/// use hubwright::units::{AngularVelocity, revolution_per_minute};
///
/// let mut mounting = Mounting::default();
/// mounting.wheel.marked_speed = AngularVelocity::new::<revolution_per_minute>(2850.0).into();
/// mounting.spindle.greatest_speed = AngularVelocity::new::<revolution_per_minute>(3400.0).into();
///
/// let verdict = check(&mounting, &Terms::default())?;
/// let bar = margin_bar(&verdict.findings[0]).expect("it has a share");
/// assert!(svg(&bar).contains("19 % missed"));
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn margin_bar(finding: &Finding) -> Option<Scene> {
    let share = finding.share.filter(|_| finding.unit != "days")?;
    let (found, demanded) = finding.found.zip(finding.demanded)?;
    let beyond = (found.number() - demanded.number()) / demanded.number().abs();
    if !beyond.is_finite() {
        return None;
    }
    let at = MIDDLE + beyond.clamp(-1.0, 1.0) * (MIDDLE - LEFT);
    let percent = share.abs() * 100.0;
    let percent = figure(percent, if percent < 10.0 { 1 } else { 0 });
    let words = if share < 0.0 { "missed" } else { "of room" };
    let title = format!("{}: {percent} % {words}", finding.rule.slug);
    let mut scene = Scene::new(title, WIDTH, HEIGHT);
    let mut line = |from: Point, to: Point, stroke| {
        scene.marks.push(Mark::Line { points: vec![from, to], stroke });
    };
    let down = |x: f64, top: f64, bottom: f64| (Point::new(x, top), Point::new(x, bottom));
    let middle = HEIGHT / 2.0;
    line(Point::new(LEFT, middle), Point::new(RIGHT, middle), Stroke::Thin);
    for tick in [LEFT, f64::midpoint(LEFT, MIDDLE), f64::midpoint(MIDDLE, RIGHT), RIGHT] {
        let (from, to) = down(tick, TOP, BOTTOM);
        line(from, to, Stroke::Thin);
    }
    let mut bar = |from: f64, to: f64, fill, stroke| {
        let (from, to) = (from.min(to), from.max(to));
        scene.marks.push(Mark::rectangle(
            Point::new(from, TOP),
            Point::new(to, BOTTOM),
            fill,
            stroke,
        ));
    };
    bar(LEFT, at.min(MIDDLE), Fill::Tone, None);
    if share < 0.0 {
        bar(at, MIDDLE, Fill::HatchFalling, Some(Stroke::Dashed));
    } else {
        bar(at, MIDDLE, Fill::Pale, None);
    }
    bar(LEFT, at, Fill::Empty, Some(Stroke::Outline));
    if beyond.abs() > 1.0 {
        let ahead = beyond.signum();
        let tip = at + ahead * (LEFT - 0.5);
        let points = vec![Point::new(tip, middle), Point::new(at, TOP), Point::new(at, BOTTOM)];
        scene.marks.push(Mark::Area { points, fill: Fill::Solid, stroke: None });
    }
    scene.marks.push(Mark::rectangle(
        Point::new(MIDDLE - 0.4, 0.2),
        Point::new(MIDDLE + 0.4, HEIGHT - 0.2),
        Fill::Solid,
        None,
    ));
    Some(scene)
}
