//! Which segments of a seat touch as the hub is pushed on, and how hard they press.
//!
//! The state depends on force over mismatch alone, so all of it is worked out for a mismatch whose
//! tangent is one: from the first touch on, the advance at which the next segment touches or
//! lets go follows from one small linear system, and between two such advances everything runs in a
//! straight line. What a force does is then read off that path.

use super::condense::Compliance;
use super::{End, Segment};

/// A straight piece of the path, and the change that begins it.
#[derive(Clone, Debug)]
struct Piece {
    /// Advance toward the seat at which it begins.
    from: f64,
    /// Force there.
    force: f64,
    /// Pressures there.
    pressure: Vec<f64>,
    /// Their rise per unit of advance.
    rise: Vec<f64>,
    /// Rise of the force.
    stiffness: f64,
    /// Which segments touch.
    touching: Vec<bool>,
    /// The segment that just began to touch, or let go.
    changed: usize,
}

/// All that pushing does, for a mismatch whose tangent is one.
#[derive(Clone, Debug)]
pub(crate) struct Path {
    /// The end that touches first.
    pub end: End,
    pieces: Vec<Piece>,
}

/// Pressures and advance at a force.
#[derive(Clone, Debug)]
pub(crate) struct Pressed {
    /// Pressure on each segment, from the small end.
    pub pressure: Vec<f64>,
    /// Advance toward the seat, along the normal.
    pub advance: f64,
    /// Which segments touch.
    pub touching: Vec<bool>,
}

/// A seat with its friction: what is solved over and over.
pub(super) struct Contact<'a> {
    segments: &'a [Segment],
    compliance: Vec<f64>,
    /// Axial force of a unit of pressure on each segment.
    weight: Vec<f64>,
}

/// The numbers of a straight piece: pressure and gap are `rise · advance + rest`.
struct Line {
    rise: Vec<f64>,
    rest: Vec<f64>,
    gap_rise: Vec<f64>,
    gap_rest: Vec<f64>,
}

impl<'a> Contact<'a> {
    pub fn new(of: &'a Compliance, friction: f64, [sine, cosine]: [f64; 2]) -> Self {
        let both = of.normal.iter().zip(&of.along);
        Self {
            segments: &of.segments,
            compliance: both.map(|(normal, along)| normal - friction * along).collect(),
            weight: of.segments.iter().map(|s| s.area * (sine + friction * cosine)).collect(),
        }
    }

    fn row(&self, at: usize) -> &[f64] {
        let count = self.segments.len();
        &self.compliance[at * count..(at + 1) * count]
    }

    fn force(&self, pressure: &[f64]) -> f64 {
        self.weight.iter().zip(pressure).map(|(w, p)| w * p).sum()
    }

    /// Pressures and gaps while just these segments touch; `None` when they can't.
    fn line(&self, touching: &[bool], gaps: &[f64]) -> Option<Line> {
        let count = touching.len();
        let on: Vec<_> = (0..count).filter(|&at| touching[at]).collect();
        let matrix = on.iter().flat_map(|&i| on.iter().map(move |&j| self.row(i)[j]));
        let right: Vec<_> = on.iter().map(|&i| [1.0, -gaps[i]]).collect();
        let solved = solve(matrix.collect(), right)?;
        let [mut rise, mut rest] = [vec![0.0; count], vec![0.0; count]];
        for (&at, [a, b]) in on.iter().zip(solved) {
            (rise[at], rest[at]) = (a, b);
        }
        let times =
            |of: &[f64], i: usize| self.row(i).iter().zip(of).map(|(c, p)| c * p).sum::<f64>();
        Some(Line {
            gap_rise: (0..count)
                .map(|i| if touching[i] { 0.0 } else { times(&rise, i) - 1.0 })
                .collect(),
            gap_rest: (0..count)
                .map(|i| if touching[i] { 0.0 } else { times(&rest, i) + gaps[i] })
                .collect(),
            rise,
            rest,
        })
    }

    /// The path of one sign of mismatch; `None` when more force does not follow from more advance.
    pub fn path(&self, end: End) -> Option<Path> {
        let gaps: Vec<_> = self.segments.iter().map(|s| s.gap(end)).collect();
        let count = gaps.len();
        let first = (0..count).min_by(|&a, &b| gaps[a].total_cmp(&gaps[b]))?;
        let (mut touching, mut from, mut changed) = (vec![false; count], gaps[first], first);
        touching[first] = true;
        let mut pieces = Vec::new();
        // Every segment touches once, few let go: many more changes would be a circle.
        for _ in 0..8 * count {
            let line = self.line(&touching, &gaps)?;
            let at = |advance: f64| {
                let both = line.rise.iter().zip(&line.rest);
                both.map(|(a, b)| (a * advance + b).max(0.0)).collect::<Vec<_>>()
            };
            let pressure = at(from);
            let stiffness = self.force(&line.rise);
            if stiffness.is_nan() || stiffness <= 0.0 {
                return None;
            }
            pieces.push(Piece {
                from,
                force: self.force(&pressure),
                pressure,
                stiffness,
                touching: touching.clone(),
                changed,
                rise: line.rise.clone(),
            });
            let falls = |i: usize| {
                let (slope, rest) = if touching[i] {
                    (line.rise[i], line.rest[i])
                } else {
                    (line.gap_rise[i], line.gap_rest[i])
                };
                (slope < 0.0 && i != changed).then(|| (i, (-rest / slope).max(from)))
            };
            let next = (0..count).filter_map(falls).min_by(|a, b| a.1.total_cmp(&b.1));
            let Some((segment, advance)) = next else {
                return Some(Path { end, pieces });
            };
            (changed, from) = (segment, advance);
            touching[segment] = !touching[segment];
        }
        None
    }
}

/// Solves a small system for two right sides, by elimination with exchanges of rows.
fn solve(mut matrix: Vec<f64>, mut right: Vec<[f64; 2]>) -> Option<Vec<[f64; 2]>> {
    let n = right.len();
    for k in 0..n {
        let larger =
            |&a: &usize, &b: &usize| matrix[a * n + k].abs().total_cmp(&matrix[b * n + k].abs());
        let pivot = (k..n).max_by(larger)?;
        if matrix[pivot * n + k].is_nan() || matrix[pivot * n + k] == 0.0 {
            return None;
        }
        if pivot != k {
            for at in k..n {
                matrix.swap(pivot * n + at, k * n + at);
            }
            right.swap(pivot, k);
        }
        let (above, below) = matrix.split_at_mut((k + 1) * n);
        let top = &above[k * n + k..];
        let taken = right[k];
        for (row, right) in below.chunks_exact_mut(n).zip(&mut right[k + 1..]) {
            let by = row[k] / top[0];
            for (entry, top) in row[k..].iter_mut().zip(top) {
                *entry -= by * top;
            }
            right.iter_mut().zip(taken).for_each(|(right, taken)| *right -= by * taken);
        }
    }
    for k in (0..n).rev() {
        let row = &matrix[k * n..(k + 1) * n];
        let mut both = right[k];
        for (entry, known) in row[k + 1..].iter().zip(&right[k + 1..]) {
            both[0] -= entry * known[0];
            both[1] -= entry * known[1];
        }
        right[k] = both.map(|value| value / row[k]);
    }
    Some(right)
}

impl Path {
    /// What a force does over the tangent of the mismatch; pressures are per that tangent too.
    pub fn at(&self, force: f64) -> Pressed {
        let after = self.pieces.partition_point(|piece| piece.force <= force);
        let piece = &self.pieces[after.saturating_sub(1)];
        let further = (force - piece.force) / piece.stiffness;
        let both = piece.pressure.iter().zip(&piece.rise);
        Pressed {
            pressure: both.map(|(p, rise)| (p + rise * further).max(0.0)).collect(),
            advance: piece.from + further,
            touching: piece.touching.clone(),
        }
    }

    /// What a force does without a mismatch.
    pub fn matched(&self, force: f64) -> Pressed {
        let last = &self.pieces[self.pieces.len() - 1];
        let advance = force / last.stiffness;
        Pressed {
            pressure: last.rise.iter().map(|rise| (rise * advance).max(0.0)).collect(),
            advance,
            touching: last.touching.clone(),
        }
    }

    /// Segments that no force closes, from the small end.
    pub fn never(&self) -> Vec<usize> {
        let last = &self.pieces[self.pieces.len() - 1];
        (0..last.touching.len()).filter(|&at| !last.touching[at]).collect()
    }

    /// Force at which the last segment closes for good; `None` when one never does.
    pub fn closes(&self) -> Option<f64> {
        self.never().is_empty().then(|| self.pieces[self.pieces.len() - 1].force)
    }

    /// Rise of the pressure of the segment that presses least of all, over the mean one.
    pub fn weakest(&self) -> f64 {
        let rise = &self.pieces[self.pieces.len() - 1].rise;
        let mean = rise.iter().sum::<f64>() / rise.len() as f64;
        rise.iter().copied().fold(f64::INFINITY, f64::min) / mean
    }

    /// Force at which a segment first touches; `None` when it never does.
    pub fn touches(&self, segment: usize) -> Option<f64> {
        self.pieces.iter().find(|piece| piece.changed == segment).map(|piece| piece.force)
    }
}
