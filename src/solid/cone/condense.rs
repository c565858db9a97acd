//! What two elastic bodies do to the gap between them, condensed on the segments of their seat.

use std::f64::consts::PI;

use super::band::Banded;
use super::element::{GAUSS, Lame, shape, stiffness};
use super::mesh::{Fineness, Mesh, seat_edges};
use super::{Cone, Segment};

/// Compliances of a seat: gap along the normal, averaged over a segment, for one unit of
/// pressure on another. It depends on nothing but the two bodies.
#[derive(Clone, Debug)]
pub(crate) struct Compliance {
    /// The segments, from the small end.
    pub segments: Vec<Segment>,
    /// For normal pressure, row by row.
    pub normal: Vec<f64>,
    /// For pull along the generator toward the large end.
    pub along: Vec<f64>,
    /// Displacement of the hub's bore outwards, for normal pressure.
    pub outwards: Vec<f64>,
    /// The same for pull along the generator.
    pub outwards_along: Vec<f64>,
}

/// One body that is held by the mean displacement of a face at its small end.
struct Body<'a> {
    mesh: &'a Mesh,
    of: Lame,
    /// Level of the nodes on the seat; they are in every line of it.
    level: usize,
    /// Loaded part of the face, from and to a radius.
    face: [f64; 2],
}

/// Pulls on nodes of a line of three, for a unit of pressure on the surface between them.
pub(super) fn on_segment(x: [f64; 2], radius: impl Fn(f64) -> f64, cosine: f64) -> [f64; 3] {
    let mut all = [0.0; 3];
    for (at, weight) in GAUSS {
        let place = (x[0] + x[1]) / 2.0 + at * (x[1] - x[0]) / 2.0;
        let area = 2.0 * PI * radius(place) * weight * (x[1] - x[0]).abs() / 2.0 / cosine;
        for (sum, share) in all.iter_mut().zip(shape(at)) {
            *sum += area * share;
        }
    }
    all
}

/// Stiffness of a body, some of its displacements held at zero.
pub(super) fn assembled(
    mesh: &Mesh,
    of: Lame,
    held: impl Fn(usize) -> bool,
    together: &[usize],
) -> Banded {
    let size = 2 * mesh.nodes();
    let mut coupled: Vec<_> = (0..size).collect();
    let elements = || {
        let of_column = |column: usize| (0..mesh.layers[column]).map(move |layer| (column, layer));
        (0..mesh.layers.len()).flat_map(of_column)
    };
    for (column, layer) in elements() {
        let nodes = mesh.element(column, layer);
        for node in nodes {
            for one in [2 * node, 2 * node + 1] {
                coupled[one] = coupled[one].max(2 * nodes[8] + 1);
            }
        }
    }
    if let Some(&furthest) = together.last() {
        for &one in together {
            coupled[one] = coupled[one].max(furthest);
        }
    }
    let mut matrix = Banded::zeros(coupled);
    for (column, layer) in elements() {
        let nodes = mesh.element(column, layer);
        let stiff = stiffness(mesh.corners(column, layer), of);
        for (i, row) in stiff.iter().enumerate() {
            for (j, value) in row.iter().enumerate() {
                let [row, column] = [i, j].map(|at| 2 * nodes[at / 2] + at % 2);
                if !held(row) && !held(column) {
                    matrix.add(row, column, *value);
                }
            }
        }
    }
    for at in (0..size).filter(|&at| held(at)) {
        matrix.add(at, at, 1.0);
    }
    matrix
}

impl Body<'_> {
    /// Pull of a unit of pressure on the loaded part of the face, by displacement.
    fn on_face(&self) -> Vec<(usize, f64)> {
        let line = self.mesh.x.len() - 1;
        let radii = &self.mesh.radii[line];
        let mut all = vec![0.0; radii.len()];
        for layer in 0..self.mesh.layers[self.mesh.layers.len() - 1] {
            let [low, high] = [radii[2 * layer], radii[2 * layer + 2]];
            let [from, to] = [low.max(self.face[0]), high.min(self.face[1])];
            if to <= from {
                continue;
            }
            for (at, weight) in GAUSS {
                let radius = (from + to) / 2.0 + at * (to - from) / 2.0;
                let area = 2.0 * PI * radius * weight * (to - from) / 2.0;
                let within = (2.0 * radius - low - high) / (high - low);
                for (node, share) in shape(within).into_iter().enumerate() {
                    all[2 * layer + node] += area * share;
                }
            }
        }
        let dof = |level: usize| 2 * self.mesh.node(line, level);
        all.into_iter()
            .enumerate()
            .filter(|one| one.1 != 0.0)
            .map(|(level, pull)| (dof(level), pull))
            .collect()
    }

    /// `Fᵀ K⁻¹ F` for the normal and the tangential load of each segment, from the large end.
    fn gram(&self, cone: &Cone, segments: usize) -> Vec<f64> {
        let [sine, cosine] = cone.sine_cosine();
        let (face, mesh) = (self.on_face(), self.mesh);
        let whole: f64 = face.iter().map(|one| one.1).sum();
        let dofs: Vec<_> = face.iter().map(|one| one.0).collect();
        let on_axis: Vec<_> = mesh.radii.iter().flatten().map(|radius| *radius == 0.0).collect();
        let held = |at: usize| at % 2 == 1 && on_axis[at / 2];
        let mut matrix = assembled(mesh, self.of, held, &dofs);
        // Any stiffness above zero holds the face; this one is of the order of its neighbours.
        let stiffest = (0..matrix.size()).map(|at| matrix.diagonal(at)).fold(0.0, f64::max);
        let square: f64 = face.iter().map(|one| one.1 * one.1).sum();
        for (row, a) in &face {
            for (column, b) in &face {
                matrix.add(*row, *column, stiffest / square * a * b);
            }
        }
        let count = 2 * segments;
        let mut loads = vec![0.0; matrix.size() * count];
        let mut starts = vec![0; segments];
        for (segment, start) in starts.iter_mut().enumerate() {
            let line = 2 * (mesh.before + segment);
            let ends = [mesh.x[line + 2], mesh.x[line]];
            let mut pulls = on_segment(ends, |x| cone.radius(x), cosine);
            pulls.reverse();
            let nodes: [_; 3] = std::array::from_fn(|at| mesh.node(line + at, self.level));
            *start = 2 * nodes[0];
            for (kind, way) in [[-sine, cosine], [cosine, sine]].into_iter().enumerate() {
                let load = 2 * segment + kind;
                for (node, pull) in nodes.into_iter().zip(pulls) {
                    loads[2 * node * count + load] += pull * way[0];
                    loads[(2 * node + 1) * count + load] += pull * way[1];
                }
                // A uniform pressure on the face bears what the load pushes along the axis.
                let along = pulls.iter().sum::<f64>() * way[0] / whole;
                for (dof, pull) in &face {
                    loads[dof * count + load] -= along * pull;
                }
            }
        }
        let reach: Vec<_> = (0..matrix.size())
            .map(|row| 2 * starts.iter().take_while(|start| **start <= row).count())
            .collect();
        matrix.factored().gram(&mut loads, count, &reach)
    }
}

/// The compliances of a seat.
pub(super) fn condensed(cone: &Cone, fine: Fineness) -> Compliance {
    let edges = seat_edges(cone, fine.columns);
    let count = fine.columns;
    let [sine, cosine] = cone.sine_cosine();
    let segments: Vec<_> =
        edges.windows(2).map(|ends| Segment::of(cone, ends[0], ends[1])).collect();
    let hub = Mesh::hub(cone, &edges, fine);
    let spindle = Mesh::spindle(cone, &edges, fine);
    let of_hub = Body {
        mesh: &hub,
        of: Lame::of(cone.hub.modulus, cone.hub.poisson),
        level: 0,
        face: [cone.radius(0.0), cone.nut],
    };
    let of_spindle = Body {
        mesh: &spindle,
        of: Lame::of(cone.spindle.modulus, cone.spindle.poisson),
        level: 2 * fine.spindle,
        face: [cone.bore, cone.radius(0.0)],
    };
    let [h, s] = [of_hub, of_spindle].map(|body| body.gram(cone, count));
    // The bodies' loads run from the large end, the segments from the small one.
    let entry = |gram: &[f64], (i, a): (usize, usize), (j, b): (usize, usize)| {
        gram[(2 * (count - 1 - i) + a) * 2 * count + 2 * (count - 1 - j) + b]
    };
    let each = |value: &dyn Fn(usize, usize) -> f64| {
        let pairs = (0..count).flat_map(|i| (0..count).map(move |j| (i, j)));
        pairs.map(|(i, j)| value(i, j) / segments[i].area).collect::<Vec<_>>()
    };
    let both = |i, j, b| entry(&h, (i, 0), (j, b)) + entry(&s, (i, 0), (j, b));
    let out = |i, j, b| cosine * entry(&h, (i, 0), (j, b)) + sine * entry(&h, (i, 1), (j, b));
    Compliance {
        normal: each(&|i, j| both(i, j, 0)),
        along: each(&|i, j| both(i, j, 1)),
        outwards: each(&|i, j| out(i, j, 0)),
        outwards_along: each(&|i, j| out(i, j, 1)),
        segments,
    }
}
