//! Outlines of the parts of a mounting, in half section.
//!
//! Corners are given as `(x, r)` in mm of the page: along the axis from the
//! land of the fixed flange towards the nut, and out from the axis.

use super::scene::{Fill, Mark, Point, Stroke};

/// Where the section lies on the page.
#[derive(Clone, Copy, Debug)]
pub(super) struct Place {
    /// The land of the fixed flange, from the left edge.
    pub zero: f64,
    /// The axis, from the upper edge.
    pub axis: f64,
}

impl Place {
    pub(super) fn point(self, x: f64, r: f64) -> Point {
        Point::new(self.zero + x, self.axis - r)
    }
}

/// How an edge of an outline is drawn.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Edge {
    /// As an edge that is given.
    Known,
    /// Dashed: there is an edge, where exactly isn't given.
    Guessed,
    /// As a break: the part goes on.
    Broken,
    /// Not at all, because another part's edge lies there.
    Hidden,
}

/// A corner, and the edge from it to the next one.
pub(super) type Corner = (f64, f64, Edge);

/// An outline around an area; the last corner's edge leads back to the first.
pub(super) fn outlined(place: Place, corners: &[Corner], fill: Fill) -> Vec<Mark> {
    let mut around = Vec::new();
    let mut edges: Vec<(Edge, Vec<Point>)> = Vec::new();
    for (at, &(x, r, edge)) in corners.iter().enumerate() {
        let (next_x, next_r, _) = corners[(at + 1) % corners.len()];
        let (from, to) = (place.point(x, r), place.point(next_x, next_r));
        let points = if edge == Edge::Broken { wave(from, to) } else { vec![from, to] };
        around.extend(&points[..points.len() - 1]);
        match edges.last_mut() {
            Some((last, line)) if *last == edge => line.extend(&points[1..]),
            _ => edges.push((edge, points)),
        }
    }
    let mut marks = Vec::new();
    if fill != Fill::Empty {
        marks.push(Mark::Area { points: around, fill, stroke: None });
    }
    marks.extend(edges.into_iter().filter_map(|(edge, points)| {
        let stroke = match edge {
            Edge::Known => Stroke::Outline,
            Edge::Guessed => Stroke::Dashed,
            Edge::Broken => Stroke::Thin,
            Edge::Hidden => return None,
        };
        Some(Mark::Line { points, stroke })
    }));
    marks
}

/// A break: a freehand line, here a wave.
fn wave(from: Point, to: Point) -> Vec<Point> {
    const LENGTH: f64 = 3.5;
    const STEPS: usize = 10;
    let (dx, dy) = (to.x - from.x, to.y - from.y);
    let length = dx.hypot(dy);
    let waves = (length / LENGTH).round().clamp(1.0, 100.0);
    let height = 0.35_f64.min(length / 10.0);
    let steps = STEPS * waves as usize;
    let point = |step: usize| {
        let share = step as f64 / steps as f64;
        let off = height * (share * waves * std::f64::consts::TAU).sin() / length.max(1e-9);
        Point::new(from.x + share * dx - off * dy, from.y + share * dy + off * dx)
    };
    (0..=steps).map(point).collect()
}

/// A flange in mm of the page; `None` for what isn't given.
#[derive(Clone, Copy, Debug)]
pub(super) struct Flange {
    /// Outside radius.
    pub radius: f64,
    /// Radius where its land ends and its recess or undercut begins.
    pub land_ends: Option<f64>,
    /// Depth of the recess; zero for a flat flange.
    pub recess: Option<f64>,
    /// From its land to its back, at the hole.
    pub at_hole: Option<f64>,
    /// From the bottom of its recess to its back, at the edge of the recess.
    pub at_edge: Option<f64>,
}

/// Drawn thickness of a flange of which no thickness is given, up to the break.
const BROKEN_OFF: f64 = 4.0;
/// Drawn depth of a recess of which no depth is given.
const SOME_DEPTH: f64 = 1.2;

impl Flange {
    fn flat(&self) -> bool {
        self.recess == Some(0.0)
    }

    /// Depth of the recess as drawn.
    fn depth(&self) -> f64 {
        let least = self.at_hole.map_or(SOME_DEPTH, |thickness| thickness / 2.0);
        self.recess.unwrap_or(SOME_DEPTH.min(least))
    }

    /// From its land to where the nut bears, when that is given.
    pub(super) fn nut_face(&self) -> Option<f64> {
        self.at_hole.or(self.at_edge.filter(|_| self.flat()))
    }

    /// From its land to its back at the rim, as drawn.
    fn back_at_rim(&self) -> f64 {
        match (self.at_edge, self.at_hole) {
            (Some(plate), _) if !self.flat() => self.depth() + plate,
            (Some(plate), None) => plate,
            (_, Some(plate)) => plate,
            (None, None) => BROKEN_OFF,
        }
    }

    /// From its land to the furthest point of its back, as drawn.
    pub(super) fn back(&self) -> f64 {
        self.back_at_rim().max(self.at_hole.unwrap_or(0.0))
    }

    /// Its outline from the bore at its face, over the rim, to `foot` at its
    /// back, as if its land lay at zero and its back to the right. Between the
    /// edge of the recess and the seat of the nut the back is drawn straight.
    pub(super) fn corners(&self, bore: f64, seat: f64) -> Vec<Corner> {
        use Edge::{Broken, Guessed, Known};
        let (rim, depth) = (self.radius, self.depth());
        let flat = self.flat();
        let ends = self.land_ends.map_or(rim - 0.3 * (rim - bore), |ends| ends.min(rim).max(bore));
        let seat = seat.min(ends).max(bore);
        let sure = self.land_ends.is_some() && self.recess.is_some();
        let inside = if sure { Known } else { Guessed };
        let mut all = match (self.land_ends, self.recess) {
            _ if flat => vec![(0.0, bore, Known)],
            // Whether there is a recess isn't known either: dashed, so that nobody takes it for flat.
            (land, _) => {
                let land = if land.is_some() { Known } else { Guessed };
                vec![(depth, bore, inside), (depth, ends, inside), (0.0, ends, land)]
            }
        };
        let back = self.back_at_rim();
        match (self.at_hole, self.at_edge) {
            (None, None) => {
                all.extend([(0.0, rim, Known), (back, rim, Broken), (back, bore, Broken)])
            }
            _ if flat => all.extend([(0.0, rim, Known), (back, rim, Known), (back, bore, Broken)]),
            (Some(hole), Some(_)) => all.extend([
                (0.0, rim, inside),
                (back, rim, inside),
                (back, ends, inside),
                (hole, seat, Known),
                (hole, bore, Broken),
            ]),
            (Some(hole), None) => all.extend([
                (0.0, rim, Guessed),
                (back, rim, Guessed),
                (hole, seat, Known),
                (hole, bore, Broken),
            ]),
            (None, Some(_)) => all.extend([
                (0.0, rim, inside),
                (back, rim, inside),
                (back, ends, Guessed),
                (back, bore, Broken),
            ]),
        }
        all
    }
}
