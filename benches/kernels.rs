//! Kernels, and all rules over a million mountings.
//!
//! `cargo bench --bench kernels` measures the Rust side alone. `cargo bench
//! --bench peers` runs the same million mountings through the same rules in
//! NumPy, compares every cell and prints the ratio.

use std::hint::black_box;
use std::ops::ControlFlow;

use criterion::{Criterion, Throughput, criterion_group, criterion_main};
use hubwright::joint::{PressFit, Seat, fit, fits_for, limits};
use hubwright::mounting::{Mounting, Terms, check, judge_columns};
use hubwright::solid::{Ring, compound};
use hubwright::tables::materials::{Elastic, Metal};
use hubwright::units::{
    Angle, AngularVelocity, Force, Length, MassDensity, Pressure, degree, gigapascal,
    kilogram_per_cubic_meter, meter, micrometer, millimeter, newton, radian_per_second, read,
    revolution_per_minute,
};
use hubwright::wheel::{FlangeKind, Shape, ThinWheel, flange_limits, rim_speed, rim_speed_column};

#[path = "peers/rack.rs"]
mod rack;

fn kernels(criterion: &mut Criterion) {
    let diameter = Length::new::<millimeter>(200.0);
    let speed = AngularVelocity::new::<revolution_per_minute>(2850.0);
    criterion.bench_function("rim_speed", |b| {
        b.iter(|| rim_speed(black_box(diameter), black_box(speed)))
    });
    criterion.bench_function("flange_limits", |b| {
        b.iter(|| flange_limits(Shape::Type1, black_box(diameter), FlangeKind::Relieved, None));
    });
    criterion.bench_function("read a length", |b| b.iter(|| read::<Length>(black_box("1-1/4 in"))));
    let mut mounting = Mounting::default();
    mounting.wheel.diameter = diameter.into();
    criterion.bench_function("check one mounting", |b| {
        b.iter(|| check(black_box(&mounting), &Terms::default()))
    });

    let rows = 1_000_000;
    let d: Vec<f64> = (0..rows)
        .map(|row| Length::new::<millimeter>(50.0 + row as f64 / 2e3).get::<meter>())
        .collect();
    let w: Vec<f64> = vec![speed.get::<radian_per_second>(); rows];
    let mut out = vec![0.0; rows];
    let mut group = criterion.benchmark_group("columns");
    group.throughput(Throughput::Elements(rows as u64));
    group.bench_function("rim_speed_column, 1 M rows", |b| {
        b.iter(|| rim_speed_column(&d, &w, &mut out))
    });
    group.finish();
}

fn joints(criterion: &mut Criterion) {
    let mut group = criterion.benchmark_group("limits");
    for size in ["20 H7", "20 mm P7", "315 zc8", "1-1/4 in js6"] {
        group.bench_function(size, |b| b.iter(|| limits(black_box(size))));
    }
    group.bench_function("fit 20 H7/g6", |b| b.iter(|| fit(black_box("20 H7/g6"))));
    let um = |um: f64| Length::new::<millimeter>(um / 1000.0);
    let (nominal, least, most) = (Length::new::<millimeter>(25.0), um(5.0), um(45.0));
    group.bench_function("fits_for", |b| b.iter(|| fits_for(black_box(nominal), least, most)));
    group.finish();
}

fn mechanics(criterion: &mut Criterion) {
    let mm = Length::new::<millimeter>;
    let steel: Elastic = Metal::Steel.into();
    let interference = Length::new::<micrometer>(30.0);
    let rings = [
        Ring::innermost(mm(40.0), steel),
        Ring::shrunk(mm(180.0), Metal::Aluminium.into(), interference),
        Ring::bonded(mm(200.0), Metal::CastIron.into()),
    ];
    let speed = AngularVelocity::new::<revolution_per_minute>(2850.0);
    let fit = PressFit::new(steel, steel, mm(25.0), mm(0.0), mm(45.0), interference, interference)
        .with_speed(speed)
        .with_grip(mm(20.0), 0.12);
    let mut group = criterion.benchmark_group("mechanics");
    group.bench_function("three rings", |b| {
        b.iter(|| compound(black_box(mm(16.0)), black_box(&rings), black_box(speed)));
    });
    group.bench_function("a press fit", |b| b.iter(|| black_box(fit).solve()));
    let disc = ThinWheel::new(mm(230.0), mm(76.0), mm(1.6), Pressure::new::<gigapascal>(12.0), 0.2);
    let density = MassDensity::new::<kilogram_per_cubic_meter>(2400.0);
    group.bench_function("a thin wheel, side load", |b| b.iter(|| black_box(disc).solve()));
    group.bench_function("a thin wheel, critical speed", |b| {
        b.iter(|| black_box(disc.with_turning(density, mm(22.2))).solve());
    });
    let seat = Seat::new(steel, steel, mm(30.0), 0.1, mm(40.0), mm(48.0), mm(48.0))
        .with_step(mm(28.0), mm(90.0))
        .with_overhangs(mm(15.0), mm(30.0));
    group.bench_function("a seat", |b| b.iter(|| black_box(&seat).clone().solve(0.12)));
    let seat = seat.solve(0.12).expect("a seat");
    group.bench_function("a seat with another friction", |b| {
        b.iter(|| seat.with_friction(black_box(0.12)));
    });
    let (force, angle) = (Force::new::<newton>(8000.0), Angle::new::<degree>(-0.05));
    group.bench_function("a push", |b| b.iter(|| seat.push(black_box(force), angle)));
    let rows = 100_000;
    let forces: Vec<_> =
        (0..rows).map(|row| Force::new::<newton>(100.0 + f64::from(row))).collect();
    let angles = vec![angle; forces.len()];
    group.sample_size(10);
    group.bench_function("a push, 100,000 rows", |b| b.iter(|| seat.push_column(&forces, &angles)));
    group.finish();
}

fn rules(criterion: &mut Criterion) {
    let rows = 1_000_000;
    let columns = rack::columns(rows);
    let terms = Terms::default();
    let mut group = criterion.benchmark_group("rules");
    group.sample_size(10).throughput(Throughput::Elements(rows as u64));
    group.bench_function("all rules, 1 M mountings", |b| {
        b.iter(|| judge_columns(&columns, &terms, None, |_| ControlFlow::Continue(())));
    });
    group.finish();
}

criterion_group!(benches, kernels, joints, mechanics, rules);
criterion_main!(benches);
