use super::band::Banded;
use super::condense::{assembled, condensed};
use super::element::{Lame, shape};
use super::mesh::Mesh;
use super::*;

const STEEL: Stuff = Stuff { modulus: 206e9, poisson: 0.3 };
const ALUMINIUM: Stuff = Stuff { modulus: 71e9, poisson: 0.33 };

/// A hub 1:10 with a flange at its large end on a bored spindle.
fn flanged() -> Cone {
    Cone {
        length: 0.04,
        small: 0.015,
        slope: 0.05,
        steps: vec![(0.028, 0.024), (0.04, 0.045)],
        bore: 0.004,
        overhangs: [0.015, 0.03],
        nut: 0.022,
        hub: ALUMINIUM,
        spindle: STEEL,
    }
}

/// A narrow range of numbers that look random, the same every time.
fn numbers(count: usize) -> Vec<f64> {
    let mut state = 12345_u32;
    let mut next = || {
        state = state.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
        f64::from(state) / f64::from(u32::MAX) - 0.5
    };
    (0..count).map(|_| next()).collect()
}

/// Solves a full system by elimination: what the band is held against.
fn dense(mut matrix: Vec<Vec<f64>>, mut right: Vec<f64>) -> Vec<f64> {
    let n = right.len();
    for k in 0..n {
        let pivot = (k..n).max_by(|&a, &b| matrix[a][k].abs().total_cmp(&matrix[b][k].abs()));
        let pivot = pivot.expect("a row is left");
        matrix.swap(pivot, k);
        right.swap(pivot, k);
        let top = matrix[k].clone();
        for row in k + 1..n {
            let by = matrix[row][k] / top[k];
            for (entry, above) in matrix[row][k..].iter_mut().zip(&top[k..]) {
                *entry -= by * above;
            }
            right[row] -= by * right[k];
        }
    }
    for k in (0..n).rev() {
        let known: f64 = (k + 1..n).map(|column| matrix[k][column] * right[column]).sum();
        right[k] = (right[k] - known) / matrix[k][k];
    }
    right
}

#[test]
fn the_band_solves_like_a_full_matrix() {
    let size = 37;
    let reach = |column: usize| (column + 2 + column % 7).min(size - 1);
    let mut band = Banded::zeros((0..size).map(reach).collect());
    let mut full = vec![vec![0.0; size]; size];
    let random = numbers(size * size);
    for column in 0..size {
        for row in column..=reach(column) {
            let value = if row == column { 9.0 } else { random[row * size + column] };
            band.add(row, column, value);
            band.add(column, row, if row == column { 0.0 } else { value });
            (full[row][column], full[column][row]) = (value, value);
        }
    }
    let loads = 3;
    let begins = [4, 11, 30];
    let mut rows = vec![0.0; size * loads];
    for (load, &start) in begins.iter().enumerate() {
        for row in start..size {
            rows[row * loads + load] = random[row + 40 * load];
        }
    }
    let column = |load: usize| (0..size).map(|row| rows[row * loads + load]).collect::<Vec<_>>();
    let columns: Vec<_> = (0..loads).map(column).collect();
    let reach: Vec<_> =
        (0..size).map(|row| begins.iter().filter(|start| **start <= row).count()).collect();
    let gram = band.factored().gram(&mut rows, loads, &reach);
    for (load, right) in columns.iter().enumerate() {
        let solved = dense(full.clone(), right.clone());
        for (other, left) in columns.iter().enumerate() {
            let wanted: f64 = left.iter().zip(&solved).map(|(a, b)| a * b).sum();
            let got = gram[other * loads + load];
            assert!((got - wanted).abs() < 1e-13, "{other} {load}: {got}, {wanted}");
        }
    }
}

/// I0 and I1 by their series.
fn bessel(z: f64) -> [f64; 2] {
    let quarter = z * z / 4.0;
    let (mut zero, mut one, mut term) = (0.0, 0.0, 1.0);
    for k in 0..60 {
        let k = f64::from(k);
        zero += term;
        one += term / (k + 1.0);
        term *= quarter / ((k + 1.0) * (k + 1.0));
    }
    [zero, one * z / 2.0]
}

#[test]
fn a_cylinder_under_a_wave_of_pressure_gives_as_the_exact_solution_says() {
    // u E / (p a) = 2 (1 - ν²) I1² / [z² I0² - (z² + 2 (1 - ν)) I1²], z = β a.
    let nu = 0.3;
    for (z, printed) in [
        (0.5, 0.699_660_291_2),
        (1.0, 0.695_062_935_8),
        (2.0, 0.646_440_678),
        (4.0, 0.448_587_931_8),
        (8.0, 0.234_209_056),
    ] {
        let [i0, i1] = bessel(z);
        let exact = 2.0 * (1.0 - nu * nu) * i1 * i1
            / (z * z * i0 * i0 - (z * z + 2.0 * (1.0 - nu)) * i1 * i1);
        assert!((exact / printed - 1.0).abs() < 1e-9, "the formula at {z}");
        let (radius, beta) = (0.01, z / 0.01);
        let length = PI / beta;
        let cone = Cone {
            length,
            small: radius,
            slope: 0.0,
            steps: Vec::new(),
            bore: 0.0,
            overhangs: [0.0; 2],
            nut: 0.0,
            hub: STEEL,
            spindle: STEEL,
        };
        // Fine enough to tell the method from its mesh at the shortest wave.
        let fine = Fineness { columns: 32, hub: 1, step: 1, spindle: 16, overhang: 8 };
        let edges: Vec<_> = (0..=32).map(|at| length * f64::from(at) / 32.0).collect();
        let mesh = Mesh::spindle(&cone, &edges, fine);
        let per_line = 2 * fine.spindle + 1;
        let held = |dof: usize| {
            let (node, across) = (dof / 2, dof % 2 == 1);
            let (line, level) = (node / per_line, node % per_line);
            if across { level == 0 } else { line == 0 || line == 64 }
        };
        let matrix = assembled(&mesh, Lame::of(206e9, nu), held, &[]);
        let mut load = vec![0.0; matrix.size()];
        for column in 0..32 {
            let (from, to) = (mesh.x[2 * column], mesh.x[2 * column + 2]);
            for (at, weight) in GAUSS {
                let x = (from + to) / 2.0 + at * (to - from) / 2.0;
                let pull = (beta * x).cos() * 2.0 * PI * radius * weight * (from - to).abs() / 2.0;
                for (node, share) in shape(at).into_iter().enumerate() {
                    load[2 * mesh.node(2 * column + node, per_line - 1) + 1] += pull * share;
                }
            }
        }
        let size = matrix.size();
        let work = matrix.factored().gram(&mut load, 1, &vec![1; size])[0];
        // The pressure does this work on a displacement that is the same wave.
        let got = work / (PI * radius * length) * 206e9 / radius;
        assert!((got / exact - 1.0).abs() < 1e-4, "z {z}: {got}, exact {exact}");
    }
}

#[test]
fn what_one_segment_does_to_another_it_suffers_from_it() {
    let of = flanged().compliance(USUAL);
    let count = of.segments.len();
    let work = |i: usize, j: usize| of.segments[i].area * of.normal[i * count + j];
    for i in 0..count {
        for j in 0..i {
            let (a, b) = (work(i, j), work(j, i));
            assert!((a - b).abs() <= 1e-12 * work(i, i), "{i} {j}: {a} {b}");
        }
    }
}

#[test]
fn a_step_of_the_hub_lies_on_the_edge_of_a_segment() {
    let of = flanged().compliance(USUAL);
    assert!(of.segments.iter().any(|segment| segment.ends[1] == 0.028));
    let whole: f64 = of.segments.iter().map(Segment::length).sum();
    assert!((whole - 0.04).abs() < 1e-15);
}

#[test]
fn finer_meshes_come_to_one_answer() {
    let cone = Cone { bore: 0.0, ..flanged() };
    let mut found = Vec::new();
    for (columns, hub, spindle) in [(12, 1, 2), (24, 2, 3), (48, 4, 6)] {
        let fine = Fineness { columns, hub, step: 2 * hub, spindle, overhang: 8 };
        let of = condensed(&cone, fine);
        let [path, _] = cone.paths(&of, 0.12).expect("a path");
        let front = Front::of(&path, &of.segments, cone.length);
        found.push([front.share(3e7), front.force(0.95).expect("it closes")]);
    }
    let [coarse, middle, fine] = &found[..] else { panic!("three meshes") };
    for at in 0..2 {
        let (far, near) = ((coarse[at] - fine[at]).abs(), (middle[at] - fine[at]).abs());
        assert!(near < 0.5 * far, "{found:?}");
        assert!(near < 0.02 * fine[at], "{found:?}");
    }
}

/// The contact of one advance by trial and error: begin with every segment touching, drop those
/// that pull, take on those that would overlap.
fn trial(cone: &Cone, of: &Compliance, friction: f64, end: End, force: f64) -> Vec<f64> {
    let count = of.segments.len();
    let [sine, cosine] = cone.sine_cosine();
    let c = |i: usize, j: usize| of.normal[i * count + j] - friction * of.along[i * count + j];
    let mut on = vec![true; count];
    for _ in 0..100 {
        let active: Vec<_> = (0..count).filter(|&at| on[at]).collect();
        let mut matrix: Vec<Vec<f64>> = active
            .iter()
            .map(|&i| active.iter().map(|&j| c(i, j) * 1e12).chain([-1.0]).collect())
            .collect();
        // The advance goes in micrometres and the pressures in MPa, to balance the system.
        let weigh = |j: &usize| of.segments[*j].area * (sine + friction * cosine) * 1e6;
        matrix.push(active.iter().map(weigh).chain([0.0]).collect());
        let mut right: Vec<_> = active.iter().map(|&i| -of.segments[i].gap(end) * 1e6).collect();
        right.push(force);
        let solved = dense(matrix, right);
        let advance = solved[active.len()] / 1e6;
        let mut pressure = vec![0.0; count];
        for (&at, p) in active.iter().zip(&solved) {
            pressure[at] = p * 1e6;
        }
        let gap = |i: usize| {
            let gives: f64 = (0..count).map(|j| c(i, j) * pressure[j]).sum();
            of.segments[i].gap(end) - advance + gives
        };
        let next: Vec<_> =
            (0..count).map(|i| if on[i] { pressure[i] >= 0.0 } else { gap(i) < -1e-12 }).collect();
        if next == on {
            return pressure;
        }
        on = next;
    }
    panic!("no state holds")
}

#[test]
fn the_path_passes_through_every_state_that_trial_and_error_finds() {
    let short = Cone { length: 0.02, steps: vec![(0.02, 0.03)], nut: 0.03, ..flanged() };
    for (cone, friction) in [(flanged(), 0.14), (flanged(), 0.4), (short, 0.05)] {
        let of =
            condensed(&cone, Fineness { columns: 20, hub: 2, step: 2, spindle: 2, overhang: 4 });
        let paths = cone.paths(&of, friction).expect("a path");
        for path in paths {
            for share in [1e-3, 0.01, 0.05, 0.2, 0.6, 0.9, 1.3, 4.0] {
                let force = share * path.closes().unwrap_or(1e8);
                let found = path.at(force).pressure;
                let wanted = trial(&cone, &of, friction, path.end, force);
                let most = wanted.iter().copied().fold(0.0, f64::max);
                for (got, wanted) in found.iter().zip(&wanted) {
                    assert!((got - wanted).abs() < 1e-6 * most, "{share}: {got} {wanted}");
                }
            }
        }
    }
}
