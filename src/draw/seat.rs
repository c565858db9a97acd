//! A seat: section of the hub on its taper, the pressure along it, the print to expect.

use super::profile::{Corner, Edge, Place, outlined};
use super::scene::{
    Anchor, Dimension, Direction, Fill, Mark, OVERRUN, Point, Reach, Scene, Stroke, TYPE_SIZE, Text,
};
use super::section::{SCALES, Scale};
use crate::error::Error;
use crate::joint::{Along, Carries, PrintExpected, Pushed, SeatFound};
use crate::units::{
    Angle, Exact, Force, Length, Shop, figure, inches, meter, millimetres, newton, pascal,
};

/// Width of the page.
const WIDTH: f64 = 100.0;
/// Greatest length of the seat and greatest radius of the hub on the page.
const LONGEST: f64 = 46.0;
const WIDEST: f64 = 42.0;
/// How much of an overhang is drawn.
const STUB: f64 = 7.0;
/// Margin of the page.
const EDGE: f64 = 1.5;
/// From one line of text to the next.
const LINE: f64 = 4.2;
/// Height of the graph of pressure, and from it to the hub.
const GRAPH: f64 = 18.0;
const GAP: f64 = 4.0;
/// From the axis to the dimension of the length, to the print and the print's height.
const LENGTH_AT: f64 = 9.0;
const PRINT_AT: f64 = 13.0;
const PRINT: f64 = 5.0;

/// A drawing of a seat, and its scale.
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub struct SeatDrawn {
    /// The drawing.
    pub scene: Scene,
    /// Its scale; the graph of pressure has its own.
    pub scale: Scale,
    /// What the force does.
    pub pushed: Pushed,
    /// The print that is drawn.
    pub print: PrintExpected,
}

/// Draws a seat under a force: hub and spindle in half section with the small end to the left, the pressure
/// along the seat above it, and below it the print that a film of marking paste leaves when the
/// hub is put on without force.
///
/// The page is 100 mm wide; the scale is the largest of [`SCALES`] that fits. The
/// mismatch is far too small to be seen.
///
/// # Errors
///
/// As for [`SeatFound::push`] and [`SeatFound::expected_print`].
///
/// # Example
///
/// A hub three minutes of arc too open: the print begins at the small end.
///
/// ```
/// use hubwright::draw::{seat_drawing, svg};
/// use hubwright::joint::Seat;
/// use hubwright::tables::materials::{Elastic, Metal};
/// use hubwright::units::{Angle, Force, Length, Shop, degree, micrometer, millimeter, newton};
///
/// let mm = Length::new::<millimeter>;
/// let steel = Elastic::from(Metal::Steel);
/// let seat = Seat::new(steel, steel, mm(25.0), 0.2, mm(25.0), mm(40.0), mm(40.0)).solve(0.12)?;
/// let film = Length::new::<micrometer>(2.0);
/// let mismatch = Angle::new::<degree>(0.05);
/// let drawn = seat_drawing(&seat, Force::new::<newton>(8000.0), mismatch, film, Shop::Metric)?;
/// assert_eq!(drawn.scale.text, "1:1");
/// assert!(svg(&drawn.scene).contains("small end carries"));
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn seat_drawing(
    seat: &SeatFound,
    force: Force,
    mismatch: Angle,
    film: Length,
    shop: Shop,
) -> Result<SeatDrawn, Error> {
    let pushed = seat.push(force, mismatch)?;
    let along = seat.along(force, mismatch)?;
    let print = seat.expected_print(mismatch, film, Force::default())?;
    let of = seat.seat();
    let widest = of.steps.iter().map(|step| step.diameter).fold(of.hub_diameter, Length::max);
    let fits = |scale: &&Scale| {
        let on_page = |length: Length| length.get::<meter>() * 1e3 * scale.ratio;
        on_page(of.length) <= LONGEST && on_page(widest) / 2.0 <= WIDEST
    };
    let scale = *SCALES.iter().find(fits).unwrap_or(&SCALES[SCALES.len() - 1]);
    let page = Page { seat, ratio: scale.ratio, shop };
    let scene = page.drawn(&pushed, &along, print, film, widest);
    Ok(SeatDrawn { scene, scale, pushed, print })
}

struct Page<'a> {
    seat: &'a SeatFound,
    ratio: f64,
    shop: Shop,
}

impl Page<'_> {
    fn mm(&self, length: Length) -> f64 {
        length.get::<meter>() * 1e3 * self.ratio
    }

    fn shown(&self, length: Length) -> String {
        match self.shop {
            Shop::Metric => millimetres(length.exact()),
            Shop::Inch => inches(length.exact()),
        }
    }

    /// How much of each overhang is drawn, and whether that is all of it.
    fn stubs(&self) -> [(f64, bool); 2] {
        self.seat.seat().overhangs.map(|overhang| {
            let whole = self.mm(overhang);
            (whole.min(STUB), whole <= STUB)
        })
    }

    fn drawn(
        &self,
        pushed: &Pushed,
        along: &[Along],
        print: PrintExpected,
        film: Length,
        widest: Length,
    ) -> Scene {
        let of = self.seat.seat();
        let length = self.mm(of.length);
        let graph = EDGE + 2.0 * LINE + GRAPH;
        let place =
            Place { zero: (WIDTH - length) / 2.0, axis: graph + GAP + self.mm(widest) / 2.0 };
        let end = match pushed.carries {
            Carries::Both => "both ends carry".to_owned(),
            end => format!("{end} carries"),
        };
        let percent = |share: f64| figure(share * 100.0, 0);
        let kn = figure(pushed.force.get::<newton>() / 1e3, 2);
        let head = format!("{end}: {} % in contact at {kn} kN", percent(pushed.contact));
        let mut scene = Scene::new(format!("Seat: {head}"), WIDTH, 0.0);
        let marks = &mut scene.marks;
        let peak = figure(pushed.peak_pressure.get::<pascal>() / 1e6, 1);
        let lines = [head, format!("pressure along the seat, {peak} MPa at most")];
        for (at, text) in lines.into_iter().enumerate() {
            let y = EDGE + 0.78 * TYPE_SIZE + at as f64 * LINE;
            marks.push(Mark::Text(Text::new(Point::new(EDGE, y), TYPE_SIZE, Anchor::Start, text)));
        }
        self.pressure(place, graph, along, marks);
        self.bodies(place, marks);
        self.sizes(place, marks);
        self.print(place, print, film, marks);
        scene.height = place.axis + PRINT_AT + PRINT + 1.2 * LINE + EDGE;
        scene
    }

    /// The pressure of each segment, highest at the top of the graph.
    fn pressure(&self, place: Place, base: f64, along: &[Along], marks: &mut Vec<Mark>) {
        let most = along.iter().map(|at| at.pressure.get::<pascal>()).fold(0.0, f64::max);
        let x = |place_on: Length| place.zero + self.mm(place_on);
        for at in along.iter().filter(|at| at.pressure.get::<pascal>() > 0.0) {
            let half = at.length / 2.0;
            let top = base - GRAPH * at.pressure.get::<pascal>() / most;
            let (from, to) =
                (Point::new(x(at.place - half), top), Point::new(x(at.place + half), base));
            marks.push(Mark::rectangle(from, to, Fill::Tone, None));
        }
        let end = Point::new(x(self.seat.seat().length), base);
        marks.push(Mark::Line {
            points: vec![Point::new(place.zero, base), end],
            stroke: Stroke::Thin,
        });
    }

    /// Hub and spindle in half section.
    fn bodies(&self, place: Place, marks: &mut Vec<Mark>) {
        use Edge::{Broken, Hidden, Known};
        let of = self.seat.seat();
        let length = self.mm(of.length);
        let [small, large] = [of.small_diameter, of.large_diameter()].map(|d| self.mm(d) / 2.0);
        let bore = self.mm(of.spindle_bore) / 2.0;
        let [(left, left_whole), (right, right_whole)] = self.stubs();
        let end = |whole: bool| if whole { Known } else { Broken };
        let spindle: [Corner; 6] = [
            (-left, bore, end(left_whole)),
            (-left, small, Known),
            (0.0, small, Known),
            (length, large, Known),
            (length + right, large, end(right_whole)),
            (length + right, bore, if bore > 0.0 { Known } else { Hidden }),
        ];
        marks.extend(outlined(place, &spindle, Fill::Pale));
        let mut radius = self.mm(of.hub_diameter) / 2.0;
        let mut hub: Vec<Corner> = vec![(0.0, small, Known), (0.0, radius, Known)];
        for step in &of.steps {
            let at = self.mm(step.from);
            hub.push((at, radius, Known));
            radius = self.mm(step.diameter) / 2.0;
            hub.push((at, radius, Known));
        }
        hub.extend([(length, radius, Known), (length, large, Known)]);
        marks.extend(outlined(place, &hub, Fill::HatchRising));
        // The push of the nut.
        let middle = f64::midpoint(small, self.mm(of.nut_diameter) / 2.0);
        let tip = place.point(0.0, middle);
        let points =
            vec![tip, Point::new(tip.x - 2.4, tip.y - 0.8), Point::new(tip.x - 2.4, tip.y + 0.8)];
        marks.push(Mark::Area { points, fill: Fill::Solid, stroke: None });
        let axis = [-left - OVERRUN, length + right + OVERRUN].map(|x| place.point(x, 0.0));
        marks.push(Mark::Line { points: axis.into(), stroke: Stroke::Axis });
    }

    fn sizes(&self, place: Place, marks: &mut Vec<Mark>) {
        let of = self.seat.seat();
        let length = self.mm(of.length);
        let [(left, _), (right, _)] = self.stubs();
        let across = |x: f64, line: f64, diameter: Length, marks: &mut Vec<Mark>| {
            let (from, to) = (place.point(x, 0.0), place.point(x, self.mm(diameter) / 2.0));
            marks.push(Mark::Dimension(Dimension {
                from,
                to,
                offset: line - x,
                direction: Direction::Plumb,
                reach: Reach::Half,
                text: format!("Ø{}", self.shown(diameter)),
            }));
        };
        let outside = of.steps.last().map_or(of.hub_diameter, |step| step.diameter);
        across(-left, -left - 4.0, of.small_diameter, marks);
        across(0.0, -left - 10.0, of.nut_diameter, marks);
        across(length + right, length + right + 6.0, of.large_diameter(), marks);
        across(length, length + right + 12.0, outside, marks);
        marks.push(Mark::Dimension(Dimension {
            from: place.point(0.0, 0.0),
            to: place.point(length, 0.0),
            offset: LENGTH_AT,
            direction: Direction::Level,
            reach: Reach::Whole,
            text: self.shown(of.length),
        }));
    }

    /// The surface rolled out, blue where it touches the film.
    fn print(&self, place: Place, print: PrintExpected, film: Length, marks: &mut Vec<Mark>) {
        let length = self.mm(self.seat.seat().length);
        let (top, bottom) = (place.axis + PRINT_AT, place.axis + PRINT_AT + PRINT);
        let blue = length * print.share;
        let (from, to) = match print.from {
            Carries::Large => (length - blue, length),
            _ => (0.0, blue),
        };
        let [from, to] = [from, to].map(|x| place.zero + x);
        marks.push(Mark::rectangle(
            Point::new(from, top),
            Point::new(to, bottom),
            Fill::Tone,
            None,
        ));
        let corners = [Point::new(place.zero, top), Point::new(place.zero + length, bottom)];
        marks.push(Mark::rectangle(corners[0], corners[1], Fill::Empty, Some(Stroke::Outline)));
        let film = figure(film.get::<meter>() * 1e6, 1);
        let share = figure(print.share * 100.0, 0);
        let text = match print.from {
            Carries::Both => format!("print without force, film {film} µm: all over"),
            end => format!("print without force, film {film} µm: {share} % from the {end}"),
        };
        let at = Point::new(WIDTH / 2.0, bottom + LINE);
        marks.push(Mark::Text(Text::new(at, TYPE_SIZE, Anchor::Middle, text)));
    }
}
