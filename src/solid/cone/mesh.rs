//! Quadrilaterals of nine nodes on columns that hub and spindle share.

use super::Cone;

/// How finely the two bodies are cut up.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Fineness {
    /// Columns along the seat, each a segment of it.
    pub columns: usize,
    /// Layers from the bore to the smallest outside radius of the hub.
    pub hub: usize,
    /// Layers of each further step of the hub.
    pub step: usize,
    /// Layers of the spindle.
    pub spindle: usize,
    /// Columns of each overhang of the spindle.
    pub overhang: usize,
}

/// The nodes of one body: lines across it, one at every edge and one in the middle of every column.
///
/// Columns run from the large end to the small one, because the face that is pushed or pulled is
/// at the small end: what is coupled to every load is then eliminated last.
pub(super) struct Mesh {
    /// Place of each line along the axis.
    pub x: Vec<f64>,
    /// Radii of the nodes of each line, from the inside.
    pub radii: Vec<Vec<f64>>,
    /// Number of each line's first node.
    first: Vec<usize>,
    /// Layers of each column.
    pub layers: Vec<usize>,
    /// Columns before the seat's first one.
    pub before: usize,
}

impl Mesh {
    /// A body from the edges of its columns, their layers, and the radii of nodes at each edge.
    fn new(edges: &[f64], layers: Vec<usize>, corner: Vec<Vec<f64>>, before: usize) -> Self {
        let (mut x, mut radii) = (Vec::new(), Vec::new());
        for (at, (&edge, nodes)) in edges.iter().zip(&corner).enumerate() {
            x.push(edge);
            radii.push(nodes.clone());
            if let (Some(&next), Some(after)) = (edges.get(at + 1), corner.get(at + 1)) {
                x.push((edge + next) / 2.0);
                let both = nodes.iter().zip(after).take(2 * layers[at] + 1);
                radii.push(both.map(|(a, b)| (a + b) / 2.0).collect());
            }
        }
        let first = radii.iter().scan(0, |total, nodes: &Vec<f64>| {
            let start = *total;
            *total += nodes.len();
            Some(start)
        });
        Self { first: first.collect(), x, radii, layers, before }
    }

    pub fn nodes(&self) -> usize {
        self.radii.iter().map(Vec::len).sum()
    }

    pub fn node(&self, line: usize, level: usize) -> usize {
        self.first[line] + level
    }

    /// Nodes of an element, three lines of three.
    pub fn element(&self, column: usize, layer: usize) -> [usize; 9] {
        std::array::from_fn(|at| self.node(2 * column + at / 3, 2 * layer + at % 3))
    }

    /// Place and radius of an element's four corners, in the order of its lines.
    pub fn corners(&self, column: usize, layer: usize) -> [[f64; 2]; 4] {
        std::array::from_fn(|at| {
            let line = 2 * column + at / 2 * 2;
            [self.x[line], self.radii[line][2 * layer + at % 2 * 2]]
        })
    }

    /// The hub: equal layers up to the smallest outside radius, more on the columns of each step.
    pub fn hub(cone: &Cone, seat: &[f64], fine: Fineness) -> Self {
        let levels = cone.levels();
        let lowest = levels.first().copied().unwrap_or_default();
        let layers: Vec<_> = seat
            .windows(2)
            .rev()
            .map(|ends| {
                let outside = cone.outside((ends[0] + ends[1]) / 2.0);
                let more = levels.iter().filter(|&&level| level > lowest && level <= outside);
                fine.hub + fine.step * more.count()
            })
            .collect();
        let edges: Vec<_> = seat.iter().rev().copied().collect();
        let corner = edges.iter().enumerate().map(|(at, &x)| {
            let next_to = [at.checked_sub(1), Some(at)].into_iter().flatten();
            let most = next_to.filter_map(|column| layers.get(column)).max();
            let seat = cone.radius(x);
            let node = |node: usize| {
                let Some(above) = node.checked_sub(2 * fine.hub + 1) else {
                    return seat + (lowest - seat) * node as f64 / (2 * fine.hub) as f64;
                };
                let level = above / (2 * fine.step);
                let (low, high) = (levels[level], levels[level + 1]);
                let within = above % (2 * fine.step) + 1;
                low + (high - low) * within as f64 / (2 * fine.step) as f64
            };
            (0..=2 * most.copied().unwrap_or(fine.hub)).map(node).collect()
        });
        let corner = corner.collect();
        Self::new(&edges, layers, corner, 0)
    }

    /// The spindle with its overhangs: layers that get thinner toward the seat.
    pub fn spindle(cone: &Cone, seat: &[f64], fine: Fineness) -> Self {
        let (last, small) = (seat.len() - 1, overhang(cone.overhangs[0], seat[1] - seat[0], fine));
        let large = overhang(cone.overhangs[1], seat[last] - seat[last - 1], fine);
        let mut edges: Vec<_> = large.iter().rev().map(|out| seat[last] + out).collect();
        edges.extend(seat.iter().rev());
        edges.extend(small.iter().map(|out| seat[0] - out));
        let corner = edges.iter().map(|&x| {
            let (inside, outside) = (cone.bore, cone.radius(x.clamp(0.0, cone.length)));
            let at = |layer: usize| {
                let z = layer as f64 / fine.spindle as f64;
                inside + (outside - inside) * (1.0 - (1.0 - z) * (1.0 - z).sqrt())
            };
            let node = |node: usize| (at(node / 2) + at(node.div_ceil(2))) / 2.0;
            (0..=2 * fine.spindle).map(node).collect()
        });
        let (columns, corner) = (edges.len() - 1, corner.collect());
        Self::new(&edges, vec![fine.spindle; columns], corner, large.len())
    }
}

/// Distances of an overhang's edges from the seat: first one as wide as the neighbour in the
/// seat, then a geometric series; a short one is divided equally.
fn overhang(length: f64, neighbour: f64, fine: Fineness) -> Vec<f64> {
    let count = fine.overhang;
    if length <= 0.0 {
        return Vec::new();
    }
    let sum =
        |ratio: f64| (0..count).fold((0.0, 1.0), |(sum, width), _| (sum + width, width * ratio)).0;
    let (mut low, mut high) = (1.0, 1.0);
    if sum(1.0) * neighbour < length {
        high = 1.0 + length / neighbour;
        for _ in 0..100 {
            let middle = (low + high) / 2.0;
            if sum(middle) * neighbour < length { low = middle } else { high = middle }
        }
    }
    let scale = length / sum(high);
    let widths = (0..count).scan((0.0, scale), |(place, width), _| {
        (*place, *width) = (*place + *width, *width * high);
        Some(*place)
    });
    widths.collect()
}

/// Edges of the seat's columns from the small end: closer together at both ends, and one on every
/// step of the hub.
pub(super) fn seat_edges(cone: &Cone, columns: usize) -> Vec<f64> {
    let count = columns as f64;
    let blend = |at: usize| {
        let share = at as f64 / count;
        cone.length * (share / 2.0 + (1.0 - (std::f64::consts::PI * share).cos()) / 4.0)
    };
    let mut edges: Vec<_> = (0..=columns).map(blend).collect();
    edges[columns] = cone.length;
    let mut from = 1;
    for place in cone.breaks() {
        let near =
            |&a: &usize, &b: &usize| (edges[a] - place).abs().total_cmp(&(edges[b] - place).abs());
        if let Some(nearest) = (from..columns).min_by(near) {
            edges[nearest] = place;
            from = nearest + 1;
        }
    }
    edges
}
