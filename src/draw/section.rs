//! Half section through a mounting, to scale.

use std::fmt;

use super::profile::{Corner, Edge, Place, outlined};
use super::scene::{
    Anchor, Dimension, Direction, Fill, Mark, OVERRUN, Point, Reach, Scene, Stroke, TYPE_SIZE,
    Text, text_length,
};
use super::sizes::{Blotter, Sizes, heading, is_straight};
use crate::mounting::{FIELDS, Facts};
use crate::units::{Shop, inches, millimetres};
use crate::wheel::Fastening;

/// Width of the page, and the room on it beside the parts, for dimensions.
const WIDTH: f64 = 90.0;
const ROOM_LEFT: f64 = 15.0;
const ROOM_RIGHT: f64 = 9.0;
/// Greatest radius on the page.
const GREATEST_RADIUS: f64 = 75.0;
/// From the parts to the first dimension line on the left and on the right, and to the second.
const FIRST: f64 = 3.0;
const FIRST_RIGHT: f64 = 6.0;
const SECOND: f64 = 9.0;
/// From the rim of the wheel to the dimension line above it.
const ABOVE: f64 = 4.5;
/// From that line to its text, and a little more.
const TEXT_ABOVE: f64 = 1.0;
/// Margin of the page.
const EDGE: f64 = 1.5;

/// A scale of reduction or enlargement.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Scale {
    /// As printed: `1:2`.
    pub text: &'static str,
    /// Length on the page for each length of the part.
    pub ratio: f64,
}

/// The scales in use, largest first: 1, 2 and 5 with powers of ten, as ISO 5455 has them (from
/// memory, unverified).
pub const SCALES: [Scale; 13] = [
    Scale { text: "5:1", ratio: 5.0 },
    Scale { text: "2:1", ratio: 2.0 },
    Scale { text: "1:1", ratio: 1.0 },
    Scale { text: "1:2", ratio: 0.5 },
    Scale { text: "1:5", ratio: 0.2 },
    Scale { text: "1:10", ratio: 0.1 },
    Scale { text: "1:20", ratio: 0.05 },
    Scale { text: "1:50", ratio: 0.02 },
    Scale { text: "1:100", ratio: 0.01 },
    Scale { text: "1:200", ratio: 0.005 },
    Scale { text: "1:500", ratio: 0.002 },
    Scale { text: "1:1000", ratio: 0.001 },
    Scale { text: "1:2000", ratio: 0.0005 },
];

/// A section and what there is to know about it.
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub struct Section {
    /// The drawing.
    pub scene: Scene,
    /// Its scale.
    pub scale: Scale,
    /// Headings of data that are missing: what they describe is dashed, broken off or left out.
    pub left_out: Vec<String>,
}

/// Why a mounting can't be drawn.
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub enum NoSection {
    /// These data are missing; the headings that ask for them.
    Missing(Vec<String>),
    /// The wheel is not held by flanges.
    HeldBy(Fastening),
}

impl fmt::Display for NoSection {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Missing(headings) => write!(f, "not given: {}", headings.join(", ")),
            Self::HeldBy(fastening) => {
                write!(f, "the wheel is held by {fastening}, not by flanges")
            }
        }
    }
}

/// Draws a mounting in half section, its axis level and its nut to the right.
///
/// The page is 90 mm wide and as high as the drawing needs, 115 mm at most;
/// the scale is the largest of [`SCALES`] that fits. What isn't given is
/// dashed, broken off or left out, and [`Section::left_out`] names it. Only
/// straight wheels are drawn in section: of any other shape the facts hold no
/// more than its greatest sizes, so that it is a dashed outline, and what lies
/// against its far side is left out.
///
/// Thicknesses at the hole count from the land, as the rules on the nut count
/// them; thicknesses at the edge count from the bottom of the recess.
///
/// # Errors
///
/// [`NoSection::Missing`] unless diameter, thickness and hole of the wheel and
/// the diameters of both flanges are given; [`NoSection::HeldBy`] for a wheel
/// that is not held by flanges.
///
/// # Example
///
/// A wheel of which nobody has measured the hole can't be drawn.
///
/// ```
/// use hubwright::draw::section;
/// use hubwright::mounting::Mounting;
/// use hubwright::units::{Length, Shop, millimeter};
///
/// let mm = |size| Length::new::<millimeter>(size).into();
/// let mut mounting = Mounting::default();
/// mounting.wheel.diameter = mm(200.0);
/// mounting.wheel.thickness = mm(20.0);
/// mounting.fixed_flange.diameter = mm(80.0);
/// mounting.loose_flange.diameter = mm(80.0);
///
/// let no = section("surface grinder", &mounting.facts()?, Shop::Metric).unwrap_err();
/// assert_eq!(no.to_string(), "not given: wheel hole");
///
/// mounting.wheel.hole = mm(31.75);
/// let drawn = section("surface grinder", &mounting.facts()?, Shop::Metric).expect("all it needs");
/// assert_eq!(drawn.scale.text, "1:2");
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn section(name: &str, facts: &Facts, shop: Shop) -> Result<Section, NoSection> {
    let f = facts;
    if f.wheel.fastening.blank() {
        return Err(NoSection::Missing(vec![heading("wheel", "fastening")]));
    }
    if let Some(fastening) = f.wheel.fastening.get().filter(|held| *held != Fastening::Flanges) {
        return Err(NoSection::HeldBy(fastening));
    }
    let needed = [
        ("wheel", "diameter", f.wheel.diameter),
        ("wheel", "thickness", f.wheel.thickness),
        ("wheel", "hole", f.wheel.hole),
        ("fixed_flange", "diameter", f.fixed_flange.diameter),
        ("loose_flange", "diameter", f.loose_flange.diameter),
    ];
    let missing: Vec<_> = needed
        .iter()
        // Columns may hold anything.
        .filter(|(.., fact)| !(fact.0 > 0.0 && fact.0.is_finite()))
        .map(|(place, name, _)| heading(place, name))
        .collect();
    if !missing.is_empty() {
        return Err(NoSection::Missing(missing));
    }
    let fits = |scale: &&Scale| {
        let sizes = Sizes::of(f, scale.ratio);
        sizes.wheel <= GREATEST_RADIUS && sizes.width() <= WIDTH - ROOM_LEFT - ROOM_RIGHT
    };
    let scale = *SCALES.iter().find(fits).unwrap_or(&SCALES[SCALES.len() - 1]);
    let sizes = Sizes::of(f, scale.ratio);
    let show = |diameter: f64| match shop {
        Shop::Metric => millimetres(diameter),
        Shop::Inch => inches(diameter),
    };
    let scene = sizes.drawn(name, scale, needed.map(|(.., fact)| show(fact.0)));
    let mut left_out = sizes.left_out;
    left_out.sort_by_key(|heading| FIELDS.iter().position(|field| field.heading() == *heading));
    Ok(Section { scene, scale, left_out })
}

impl Sizes {
    /// The drawing. `shown` are the sizes of wheel, thickness, hole and both flanges as printed.
    fn drawn(&self, name: &str, scale: Scale, shown: [String; 5]) -> Scene {
        let [wheel, thickness, hole, fixed, loose] = shown;
        let across = |size: &str| format!("Ø{size}");
        let turned = [&wheel, &fixed, &loose];
        let longest = turned.iter().map(|size| text_length(&across(size), TYPE_SIZE));
        let up = longest.fold(self.wheel, f64::max);
        let label = match self.shape {
            Some(shape) if is_straight(shape) => None,
            Some(shape) => Some(format!("{shape}: outline only")),
            None => Some("shape not given: outline only".to_owned()),
        };
        let line = 1.25 * TYPE_SIZE;
        let top = EDGE + if label.is_some() { line } else { 0.0 };
        let spare = (WIDTH - ROOM_LEFT - ROOM_RIGHT - self.width()).max(0.0);
        let place = Place {
            zero: ROOM_LEFT + spare / 2.0 + self.fixed.back(),
            axis: top + line + TEXT_ABOVE + ABOVE + up,
        };
        let title = if name.trim().is_empty() { "a mounting" } else { name };
        let mut scene = Scene::new(format!("Section through {title}"), WIDTH, 0.0);
        let key = self.parts(place, &mut scene.marks);

        let (left, right) = (-self.fixed.back(), self.right());
        let middle = f64::midpoint(self.wheel_from(), self.wheel_to());
        let half = |x: f64, r: f64, offset: f64, reach, text: String| {
            let (from, to) = (place.point(x, 0.0), place.point(x, r));
            Mark::Dimension(Dimension {
                from,
                to,
                offset,
                direction: Direction::Plumb,
                reach,
                text,
            })
        };
        scene.marks.push(half(left, self.fixed.radius, -FIRST, Reach::Half, across(&fixed)));
        let from_wheel = left - SECOND - self.wheel_from();
        scene.marks.push(half(
            self.wheel_from(),
            self.wheel,
            from_wheel,
            Reach::Half,
            across(&wheel),
        ));
        if self.straight() {
            let back = self.loose_at() + self.loose.back();
            let offset = right + FIRST_RIGHT - back;
            scene.marks.push(half(back, self.loose.radius, offset, Reach::Half, across(&loose)));
        }
        let below = format!("hole {}", across(&hole));
        scene.marks.push(half(middle, self.hole, 0.0, Reach::HalfTextBelow, below));
        scene.marks.push(Mark::Dimension(Dimension {
            from: place.point(self.wheel_from(), self.wheel),
            to: place.point(self.wheel_to(), self.wheel),
            offset: self.wheel - up - ABOVE,
            direction: Direction::Level,
            reach: Reach::Whole,
            text: thickness,
        }));
        axis(place, left - 1.8, right + 1.8, &mut scene.marks);
        if let Some(label) = label {
            let room = text_length(&label, TYPE_SIZE) / 2.0 + EDGE;
            let x = place.point(middle, 0.0).x.min(WIDTH - room).max(room);
            let at = Point::new(x, EDGE + 0.78 * TYPE_SIZE);
            scene.marks.push(Mark::Text(Text::new(at, TYPE_SIZE, Anchor::Middle, label)));
        }
        scene.height = legend(&key, scale, place.axis + OVERRUN + 6.5, &mut scene.marks);
        scene
    }

    /// The parts, and the keys to them.
    fn parts(&self, place: Place, marks: &mut Vec<Mark>) -> Vec<Key> {
        use Edge::{Guessed, Hidden, Known};
        let straight = self.straight();
        let box_of = |from: (f64, f64), to: (f64, f64), edge| -> [Corner; 4] {
            let ((x, r), (to_x, to_r)) = (from, to);
            [(x, r, edge), (to_x, r, edge), (to_x, to_r, edge), (x, to_r, edge)]
        };
        let hub = self.hub_corners();
        if !straight {
            let dashed = |(x, r, edge)| (x, r, if edge == Known { Guessed } else { edge });
            let hub: Vec<Corner> = hub.into_iter().map(dashed).collect();
            marks.extend(outlined(place, &hub, Fill::Empty));
            let envelope = box_of((0.0, self.hole), (self.thickness, self.wheel), Guessed);
            marks.extend(outlined(place, &envelope, Fill::Empty));
            return vec![Key::Envelope];
        }
        let mut key = vec![Key::Hub, Key::Loose, Key::Wheel];
        let (from, to) = (self.wheel_from(), self.wheel_to());
        let wheel = box_of((from, self.hole), (to, self.wheel), Known);
        // A thin wheel between two thick lines would be one black stroke.
        let thin = self.thickness < 1.2;
        let [a, b] = [place.point(from, self.wheel), place.point(to, self.hole)];
        if thin {
            marks.push(Mark::rectangle(a, b, Fill::Tone, Some(Stroke::Thin)));
            key[2] = Key::ThinWheel;
        } else {
            marks.extend(outlined(place, &wheel, Fill::Pale));
        }
        marks.extend(outlined(place, &hub, Fill::HatchRising));
        if let Some(from) = self.thread_from {
            let (end, root) = (self.hub_end().0, 0.9 * self.spigot_drawn());
            let points = vec![place.point(from.min(end), root), place.point(end, root)];
            marks.push(Mark::Line { points, stroke: Stroke::Thin });
        }
        let at = self.loose_at();
        let loose: Vec<Corner> = self
            .loose
            .corners(self.loose_bore(), self.nut_radius())
            .into_iter()
            .map(|(u, r, edge)| (at + u, r, edge))
            .collect();
        let loose = hide_last(loose, Hidden);
        marks.extend(outlined(place, &loose, Fill::HatchFalling));

        let lies =
            [(from - Blotter::drawn_thickness(self.blotters[0]), from), (to, at - self.disc)];
        for ((blotter, (from, to)), flange) in
            self.blotters.into_iter().zip(lies).zip([self.fixed, self.loose])
        {
            let Some(blotter) = blotter else { continue };
            key.push(Key::Blotter);
            let outer = blotter.radius.unwrap_or(flange.radius);
            let inner = blotter.hole.unwrap_or(self.hole).min(outer);
            if blotter.thickness.is_none() || blotter.radius.is_none() {
                let dashed = box_of((from, inner), (to, outer), Guessed);
                marks.extend(outlined(place, &dashed, Fill::Empty));
                continue;
            }
            // Without its hole it is sure where the flange grips, and no further.
            let sure = if blotter.hole.is_some() { inner } else { f64::midpoint(inner, outer) };
            let [a, b] = [place.point(from, outer), place.point(to, sure)];
            marks.push(Mark::rectangle(a, b, Fill::Solid, Some(Stroke::Thin)));
            if sure > inner {
                let dashed = box_of((from, inner), (to, sure), Guessed);
                marks.extend(outlined(place, &dashed, Fill::Empty));
            }
        }
        if self.disc > 0.0 {
            for (x, radius) in [(0.0, self.fixed.radius), (at - self.disc, self.loose.radius)] {
                let disc = box_of((x, self.hole), (x + self.disc, radius), Guessed);
                marks.extend(outlined(place, &disc, Fill::Empty));
            }
        }
        if let Some((from, to)) = self.nut_place() {
            let (inner, outer) = (self.spigot_drawn(), self.nut_radius());
            let sure = self.loose.nut_face().is_some() && self.nut.flatten().is_some();
            let face = if sure { Known } else { Guessed };
            // How wide a nut is, no field says.
            let nut = [
                (from, inner, face),
                (from, outer, Guessed),
                (to, outer, face),
                (to, inner, Hidden),
            ];
            marks.extend(outlined(place, &nut, Fill::Empty));
            key.push(Key::Nut);
        }
        key.dedup();
        let dashed = |mark: &Mark| matches!(mark, Mark::Line { stroke: Stroke::Dashed, .. });
        if marks.iter().any(dashed) {
            key.push(Key::NotGiven);
        }
        key
    }

    /// The hub: fixed flange and spigot in one.
    fn hub_corners(&self) -> Vec<Corner> {
        let spigot = self.spigot_drawn();
        let inside = 0.5 * spigot;
        let flange = self.fixed.corners(spigot.min(self.fixed.radius), spigot);
        let back = flange.last().map_or(0.0, |(u, ..)| *u);
        let mut all: Vec<Corner> = flange.into_iter().map(|(u, r, edge)| (-u, r, edge)).collect();
        let (end, edge) = self.hub_end();
        let thread = self.thread_from.unwrap_or(self.loose_at()).min(end).max(0.0);
        let known = if self.spigot.is_some() { Edge::Known } else { Edge::Guessed };
        all.extend([
            (-back, inside, Edge::Broken),
            (end, inside, edge),
            (end, spigot, Edge::Guessed),
            (thread, spigot, known),
        ]);
        all
    }

    /// Bore of the loose flange as drawn; a spigot as large as the flange leaves none.
    fn loose_bore(&self) -> f64 {
        let (spigot, flange) = (self.spigot_drawn(), self.loose.radius);
        if spigot < 0.95 * flange { spigot } else { flange / 2.0 }
    }

    /// Outside radius of the nut as drawn.
    fn nut_radius(&self) -> f64 {
        let spigot = self.spigot_drawn();
        (1.4 * spigot).min(0.85 * self.loose.radius).max(spigot + 1.2)
    }
}

fn hide_last(mut corners: Vec<Corner>, edge: Edge) -> Vec<Corner> {
    if let Some(last) = corners.last_mut() {
        last.2 = edge;
    }
    corners
}

/// The axis, marked at both ends as one about which the other half is alike.
fn axis(place: Place, from: f64, to: f64, marks: &mut Vec<Mark>) {
    let points = vec![place.point(from, 0.0), place.point(to, 0.0)];
    marks.push(Mark::Line { points, stroke: Stroke::Axis });
    for x in [from + 0.4, from + 1.0, to - 1.0, to - 0.4] {
        let points = vec![place.point(x, -1.5), place.point(x, 1.5)];
        marks.push(Mark::Line { points, stroke: Stroke::Thin });
    }
}

/// What the legend explains.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Key {
    Hub,
    Loose,
    Wheel,
    ThinWheel,
    Blotter,
    Nut,
    NotGiven,
    Envelope,
}

/// Writes the legend and the scale, and says where they end.
fn legend(keys: &[Key], scale: Scale, top: f64, marks: &mut Vec<Mark>) -> f64 {
    const SIZE: f64 = 2.6;
    const SWATCH: (f64, f64) = (5.0, 2.6);
    const LINE: f64 = 4.4;
    let scale = Text::new(Point::new(0.0, 0.0), SIZE, Anchor::End, format!("scale {}", scale.text));
    let (mut x, mut y) = (EDGE + 1.0, top);
    let mut wrap = |x: &mut f64, length: f64| {
        if *x + length > WIDTH - EDGE {
            (*x, y) = (EDGE + 1.0, y + LINE);
        }
        y
    };
    for key in keys {
        let (name, fill, stroke) = match key {
            Key::Hub => ("hub, fixed flange", Fill::HatchRising, Stroke::Outline),
            Key::Loose => ("loose flange", Fill::HatchFalling, Stroke::Outline),
            Key::Wheel => ("wheel", Fill::Pale, Stroke::Outline),
            Key::ThinWheel => ("wheel", Fill::Tone, Stroke::Thin),
            Key::Blotter => ("blotter", Fill::Solid, Stroke::Thin),
            Key::Nut => ("nut", Fill::Empty, Stroke::Outline),
            Key::NotGiven => ("dashed: not given", Fill::Empty, Stroke::Dashed),
            Key::Envelope => (
                "dashed: greatest sizes; loose flange and nut not drawn",
                Fill::Empty,
                Stroke::Dashed,
            ),
        };
        let length = text_length(name, SIZE);
        let y = wrap(&mut x, SWATCH.0 + 1.2 + length);
        let (a, b) = (Point::new(x, y), Point::new(x + SWATCH.0, y + SWATCH.1));
        marks.push(Mark::rectangle(a, b, fill, Some(stroke)));
        let at = Point::new(x + SWATCH.0 + 1.2, y + SWATCH.1 - 0.4);
        marks.push(Mark::Text(Text::new(at, SIZE, Anchor::Start, name)));
        x += SWATCH.0 + 1.2 + length + 2.5;
    }
    let y = wrap(&mut x, scale.length());
    let at = Point::new(WIDTH - EDGE, y + SWATCH.1 - 0.4);
    marks.push(Mark::Text(Text { at, ..scale }));
    y + SWATCH.1 + EDGE
}
