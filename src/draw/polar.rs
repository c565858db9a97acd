//! Polar pictures of balance: where a rotor is heavy, and where its weights go.
//!
//! The mark is at the top and angles run clockwise, as on the ring seen from its weights. Arrows are to scale
//! with one another; what they are stands below the circle, by letter and number.

use std::f64::consts::TAU;

use super::scene::{Anchor, Fill, Mark, Point, Scene, Stroke, TYPE_SIZE, Text};
use crate::solid::UnbalanceVector;
use crate::units::{Angle, Unbalance, degree, figure, gram_millimeter, radian};
use crate::wheel::{TrialRuns, UnbalanceSum, WeightsFound};

/// Width of the page.
const WIDTH: f64 = 110.0;
const CENTRE: Point = Point::new(WIDTH / 2.0, 56.0);
/// Radius of the ring that weights sit on.
const RING: f64 = 30.0;
/// Length of the longest arrow.
const LONGEST: f64 = 24.0;
/// Radius of a weight.
const WEIGHT: f64 = 2.2;
/// How far out labels may go.
const FARTHEST: f64 = 50.0;
const FIRST_LINE: f64 = 2.0 * CENTRE.y + 4.0;
const LINE: f64 = 4.6;

/// A place at an angle and distance from the middle: the mark at the top, clockwise.
fn place(angle: f64, radius: f64) -> Point {
    Point::new(CENTRE.x + radius * angle.sin(), CENTRE.y - radius * angle.cos())
}

fn circle(centre: Point, radius: f64) -> Vec<Point> {
    let at = |step: i32| {
        let (sin, cos) = (f64::from(step) / 72.0 * TAU).sin_cos();
        Point::new(centre.x + radius * cos, centre.y + radius * sin)
    };
    (0..=72).map(at).collect()
}

/// A picture while it is drawn.
struct Polar {
    scene: Scene,
    texts: Vec<Text>,
    legend: Vec<String>,
    letters: u8,
    numbers: u8,
    /// Millimetres on the page for a g mm.
    scale: f64,
}

impl Polar {
    fn new(title: &str, greatest: Unbalance) -> Self {
        let greatest = greatest.get::<gram_millimeter>();
        let mut polar = Self {
            scene: Scene::new(title, WIDTH, FIRST_LINE),
            texts: Vec::new(),
            legend: Vec::new(),
            letters: 0,
            numbers: 0,
            scale: if greatest > 0.0 { LONGEST / greatest } else { 0.0 },
        };
        polar.line(circle(CENTRE, RING), Stroke::Thin);
        for (quarter, text) in ["0°", "90°", "180°", "270°"].into_iter().enumerate() {
            let angle = quarter as f64 * TAU / 4.0;
            polar.line(vec![place(angle, RING - 1.5), place(angle, RING + 1.5)], Stroke::Outline);
            polar.label(angle, RING + 5.0, text);
        }
        let cross = 1.5;
        polar.line(vec![place(0.0, cross), place(TAU / 2.0, cross)], Stroke::Thin);
        polar.line(vec![place(TAU / 4.0, cross), place(TAU * 0.75, cross)], Stroke::Thin);
        polar
    }

    fn line(&mut self, points: Vec<Point>, stroke: Stroke) {
        self.scene.marks.push(Mark::Line { points, stroke });
    }

    /// A text at an angle, moved outwards and then round until it is clear of the others.
    fn label(&mut self, angle: f64, radius: f64, text: &str) {
        let text_at = |angle: f64, radius: f64| {
            let Point { x, y } = place(angle, radius);
            Text::new(Point::new(x, y + 0.27 * TYPE_SIZE), TYPE_SIZE, Anchor::Middle, text)
        };
        let turns = (0..40).map(|turn| {
            let side = if turn % 2 == 0 { 1.0 } else { -1.0 };
            f64::from((turn + 1) / 2) * side * 0.12
        });
        let outwards = |turn: f64| {
            let steps = ((FARTHEST - radius) / 1.5).max(0.0) as u32;
            (0..=steps).map(move |step| (angle + turn, radius + 1.5 * f64::from(step)))
        };
        let clear = |text: &Text| {
            let bounds = text.bounds();
            self.texts.iter().all(|other| !bounds.overlaps(other.bounds()))
        };
        let found = turns.flat_map(outwards).map(|(a, r)| text_at(a, r)).find(clear);
        let text = found.unwrap_or_else(|| text_at(angle, radius));
        self.texts.push(text);
    }

    fn explain(&mut self, sign: &str, words: &str) {
        self.legend.push(format!("{sign}  {words}"));
    }

    /// An arrow from the middle, its letter, and what it is.
    fn arrow(&mut self, vector: UnbalanceVector, stroke: Stroke, words: &str) {
        let sign = char::from(b'A' + self.letters.min(25)).to_string();
        self.letters += 1;
        let (amount, angle) =
            (vector.amount.get::<gram_millimeter>(), vector.angle.get::<radian>());
        let length = amount * self.scale;
        if length > 0.0 {
            self.line(vec![CENTRE, place(angle, length)], stroke);
            let head = 2.4_f64.min(length);
            let (tip, base) = (place(angle, length), place(angle, length - head));
            let (dx, dy) = (0.17 * (tip.y - base.y), 0.17 * (base.x - tip.x));
            let points = vec![
                tip,
                Point::new(base.x + dx, base.y + dy),
                Point::new(base.x - dx, base.y - dy),
            ];
            self.scene.marks.push(Mark::Area { points, fill: Fill::Solid, stroke: None });
        }
        self.label(angle, length + 3.5, &sign);
        let (amount, degrees) = (figure(amount, 1), figure(vector.angle.get::<degree>(), 1));
        self.explain(&sign, &format!("{words}: {amount} g mm at {degrees}°"));
    }

    /// A weight on the ring, its number, and what it is.
    fn weight(&mut self, angle: Angle, fill: Fill, words: &str) {
        self.numbers += 1;
        let (sign, at) = (self.numbers.to_string(), angle.get::<radian>());
        let points = circle(place(at, RING), WEIGHT);
        self.scene.marks.push(Mark::Area { points, fill, stroke: Some(Stroke::Outline) });
        self.label(at, RING + WEIGHT + 3.0, &sign);
        self.explain(&sign, &format!("{words} at {}°", figure(angle.get::<degree>(), 1)));
    }

    fn done(mut self) -> Scene {
        self.legend.push("mark at the top, angles clockwise".into());
        self.scene.height += LINE * self.legend.len() as f64;
        self.scene.marks.extend(self.texts.drain(..).map(Mark::Text));
        for (at, words) in self.legend.iter().enumerate() {
            let at = Point::new(6.0, FIRST_LINE + LINE * at as f64);
            self.scene.marks.push(Mark::Text(Text::new(at, TYPE_SIZE, Anchor::Start, words)));
        }
        self.scene
    }
}

/// Where movable weights go: what they have to balance as an arrow, the weights on their ring, a stuck one hatched.
///
/// # Example
///
/// ```
/// use hubwright::draw::{svg, weights_picture};
/// use hubwright::solid::UnbalanceVector;
/// use hubwright::units::{Angle, Length, Mass, Unbalance, degree, gram, gram_millimeter, millimeter};
/// use hubwright::wheel::BalanceWeights;
///
/// let heavy = UnbalanceVector::new(
///     Unbalance::new::<gram_millimeter>(450.0),
///     Angle::new::<degree>(40.0),
/// );
/// let ring = Length::new::<millimeter>(54.0);
/// let found = BalanceWeights::new(heavy, 2, Mass::new::<gram>(10.0), ring).solve()?;
/// assert!(svg(&weights_picture(&found)).contains("1  weight at 154.6°"));
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn weights_picture(found: &WeightsFound) -> Scene {
    let greatest = larger(found.to_balance.amount, found.asked.heavy.amount);
    let mut polar = Polar::new("balance weights on their ring", larger(greatest, found.one));
    polar.arrow(found.asked.heavy, Stroke::Outline, "heavy side");
    if found.asked.stuck_at.is_some() {
        polar.arrow(found.to_balance, Stroke::Dashed, "heavy side with the stuck weight");
    }
    for angle in &found.positions {
        polar.weight(*angle, Fill::Tone, "weight");
    }
    if let Some(angle) = found.asked.stuck_at {
        polar.weight(angle, Fill::HatchRising, "stuck weight");
    }
    if !found.reached {
        let left = figure(found.residual.get::<gram_millimeter>(), 1);
        polar.legend.push(format!("out of reach: {left} g mm are left"));
    }
    polar.done()
}

/// What causes of unbalance come to: each of known angle as an arrow, their sum thick, and round its
/// tip the circle within which it lies with those that may be anywhere.
pub fn unbalance_picture(found: &UnbalanceSum) -> Scene {
    let spots = found.spots.iter().filter_map(|spot| {
        spot.angle.map(|angle| (UnbalanceVector::new(spot.unbalance, angle), spot))
    });
    let spots: Vec<_> = spots.collect();
    let longest = spots.iter().map(|(vector, _)| vector.amount).fold(found.greatest, larger);
    let mut polar = Polar::new("unbalance by its causes", longest);
    for (vector, spot) in spots {
        // A slot or hole is named where it is heavy: on the other side of it.
        let side = if spot.missing { ", heavy opposite" } else { "" };
        polar.arrow(vector, Stroke::Thin, &format!("{}{side}", spot.name));
    }
    polar.arrow(found.known, Stroke::Outline, "together");
    let radius = found.anywhere.get::<gram_millimeter>() * polar.scale;
    if radius > 0.0 {
        let length = found.known.amount.get::<gram_millimeter>() * polar.scale;
        let tip = place(found.known.angle.get::<radian>(), length);
        polar.line(circle(tip, radius), Stroke::Dashed);
        let around = figure(found.anywhere.get::<gram_millimeter>(), 1);
        polar.legend.push(format!("dashed: {around} g mm more that may lie anywhere"));
    }
    polar.done()
}

/// What trial runs found: what the unbalance may be as arrows, the weights that balance it on the ring.
pub fn trials_picture(found: &TrialRuns) -> Scene {
    let amounts = found.candidates.iter().map(|heavy| heavy.amount);
    let mut polar =
        Polar::new("unbalance by trial runs", amounts.fold(Unbalance::default(), larger));
    let one = found.candidates.len() == 1;
    let words = if one { "heavy side" } else { "heavy side, or" };
    for heavy in &found.candidates {
        polar.arrow(*heavy, if one { Stroke::Outline } else { Stroke::Dashed }, words);
    }
    for correction in &found.corrections {
        let amount = figure(correction.amount.get::<gram_millimeter>(), 1);
        polar.weight(correction.angle, Fill::Tone, &format!("{amount} g mm to balance it"));
    }
    if found.weak {
        polar.legend.push("the trial weight is too light".into());
    }
    if found.doubtful {
        polar.legend.push("the readings agree badly: run them again".into());
    }
    polar.done()
}

fn larger(a: Unbalance, b: Unbalance) -> Unbalance {
    if b > a { b } else { a }
}
