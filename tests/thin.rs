//! Thin discs, thin wheels and stabilisers against series, elements and books of others.

use hubwright::solid::{InPlane, clamped_disc, critical_disc_speed, disc_frequency};

/// Whether two numbers agree within a share of the second.
#[track_caller]
fn close(found: f64, wanted: f64, share: f64, what: &str) {
    assert!((found - wanted).abs() <= share * wanted.abs(), "{what}: {found}, not {wanted}");
}

fn rows(text: &str) -> Vec<Vec<f64>> {
    text.lines()
        .filter(|line| !line.starts_with(['#', 'n']))
        .map(|line| line.split(',').map(|cell| cell.parse().expect("a number")).collect())
        .collect()
}

/// Slope of `ω²` over `Ω²` at rest: two quotients, and their trend taken out.
fn stiffening(ratio: f64, nu: f64, nodes: usize, in_plane: InPlane) -> f64 {
    let square =
        |spin: f64| disc_frequency(ratio, nu, nodes, spin, in_plane).expect("in range").powi(2);
    let still = square(0.0);
    let step = 0.003 * still;
    let quotient = |by: f64| (square((by * step).sqrt()) - still) / (by * step);
    2.0 * quotient(1.0) - quotient(2.0)
}

#[test]
fn the_table_of_coefficients() {
    let table = rows(include_str!("reference/thin_discs.csv"));
    assert_eq!(table.len(), 18);
    for row in table {
        let (nu, ratio) = (row[0], row[1]);
        let name = |what: &str| format!("{what} at b/a {ratio}, nu {nu}");
        let found = clamped_disc(ratio, nu).expect("in range");
        close(found.point_deflection, row[2], 1e-4, &name("kw point"));
        close(found.ring_deflection, row[3], 1e-9, &name("kw ring"));
        close(found.point_moment, row[4], 2e-4, &name("km point"));
        close(found.ring_moment, row[5], 1e-9, &name("km ring"));
        for nodes in 0..4 {
            let at_rest = disc_frequency(ratio, nu, nodes, 0.0, InPlane::FreeAtClamp);
            let what = name(&format!("frequency {nodes}"));
            close(at_rest.expect("in range"), row[6 + nodes], 1e-4, &what);
            let what = name(&format!("stiffening {nodes}"));
            let free = stiffening(ratio, nu, nodes, InPlane::FreeAtClamp);
            close(free, row[10 + nodes], 1e-3, &what);
            let held = stiffening(ratio, nu, nodes, InPlane::Held);
            close(held, row[14 + nodes], 1e-3, &what);
        }
        let critical = critical_disc_speed(ratio, nu, InPlane::FreeAtClamp).expect("in range");
        let (speed, nodes) = critical.expect("a wave stands");
        close(speed, row[18], 2e-4, &name("critical speed"));
        assert_eq!(nodes as f64, row[19], "{}", name("nodes"));
    }
}

/// Timoshenko and Woinowsky-Krieger, plates with a hole clamped inside and loaded on the rim,
/// three figures, recalled: deflection `k1 P a² / (E h³)` and stress `k P / h²`, ν = 0.3.
#[test]
fn a_load_round_the_rim_by_the_book() {
    for (a_over_b, k1, k) in [(1.5, 0.0249, 0.428), (3.0, 0.209, 1.205), (5.0, 0.350, 1.745)] {
        let found = clamped_disc(1.0 / a_over_b, 0.3).expect("in range");
        close(found.ring_deflection * 12.0 * (1.0 - 0.09), k1, 0.003, "deflection");
        close(found.ring_moment * 6.0, k, 0.0015, "stress");
    }
}

/// Leissa, NASA SP-160, and Vogel and Skinner, three figures, recalled; clamped inside, free outside, ν = 0.3.
#[test]
fn frequencies_by_the_book() {
    for (ratio, printed) in [(0.3, [6.66, f64::NAN, 7.96, 13.27]), (0.5, [13.0, 13.3, 14.7, 18.5])]
    {
        for (nodes, printed) in printed.into_iter().enumerate().filter(|(_, p)| !p.is_nan()) {
            let found = disc_frequency(ratio, 0.3, nodes, 0.0, InPlane::FreeAtClamp);
            close(found.expect("in range"), printed, 0.0042, "frequency");
        }
    }
}

/// The narrow ring is an endless strip: Jaramillo's 0.168 and 0.509 (1950, recalled) for ν = 0.3. The
/// figures on the way were computed with 160 and 400 waves.
#[test]
fn a_narrow_ring_nears_a_strip() {
    let mut last = (f64::INFINITY, f64::INFINITY);
    for (ratio, kw, km) in [
        (0.9, 0.176_499_7, 0.555_425_3),
        (0.95, 0.171_428_6, 0.531_110_8),
        (0.98, 0.168_475_9, 0.517_456_9),
    ] {
        let found = clamped_disc(ratio, 0.3).expect("in range");
        // P c² / D, with c the width of the strip.
        let strip = found.point_deflection / (1.0 - ratio).powi(2);
        close(strip, kw, 2e-4, "deflection");
        close(found.point_moment, km, 5e-4, "moment");
        assert!(strip < last.0 && found.point_moment < last.1);
        last = (strip, found.point_moment);
    }
    // What is left of the way to no width, a straight line through the last two.
    let at = |ratio: f64| clamped_disc(ratio, 0.3).expect("in range");
    let limit = |of: &dyn Fn(f64) -> f64| (5.0 * of(0.98) - 2.0 * of(0.95)) / 3.0;
    close(
        limit(&|r| at(r).point_deflection / (1.0 - r).powi(2)),
        0.168,
        0.01,
        "the strip's deflection",
    );
    close(limit(&|r| at(r).point_moment), 0.509, 0.01, "the strip's moment");
}

/// Morley elements (scikit-fem, two meshes, extrapolated) of a disc that turns at Ω = 12 in its unit.
#[test]
fn a_turning_disc_against_other_elements() {
    let morley = [14.505_566_86, 17.002_782_31, 23.282_609_6, 31.953_706_79, 42.574_329_45];
    for (nodes, wanted) in morley.into_iter().enumerate() {
        let found = disc_frequency(0.4, 0.3, nodes, 12.0, InPlane::FreeAtClamp).expect("in range");
        close(found, wanted, 3e-4, "turning");
    }
}

/// Morley elements again: a point load and a load all round, at four ratios.
#[test]
fn a_side_load_against_other_elements() {
    for (nu, ratio, point, ring) in [
        (0.3, 0.2, 0.179_295_637_6, 0.032_075_022_81),
        (0.3, 0.5, 0.056_327_061_13, 0.008_030_121_21),
        (0.2, 0.3, 0.122_903_440_2, 0.023_217_241_93),
        (0.2, 0.7, 0.017_182_187_78, 0.001_681_271_998),
    ] {
        let found = clamped_disc(ratio, nu).expect("in range");
        close(found.point_deflection, point, 1.5e-3, "point load");
        close(found.ring_deflection, ring, 1e-5, "load all round");
    }
}
