//! Seats by the same method in NumPy and LAPACK, compared answer by answer.

use std::fmt::Write;
use std::fs;
use std::hint::black_box;
use std::path::Path;
use std::process::Command;
use std::time::Instant;

use hubwright::joint::{Seat, SeatFound};
use hubwright::tables::materials::{Elastic, Metal};
use hubwright::units::{Angle, Force, Length, degree, meter, millimeter, newton, pascal, radian};

/// Name, small radius, slope, length, bore (mm), friction, steps of the hub (up to, radius), its metal.
type Case = (&'static str, f64, f64, f64, f64, f64, &'static [(f64, f64)], Metal);

const CASES: [Case; 3] = [
    ("plain 1:5", 12.5, 0.1, 25.0, 0.0, 0.12, &[(25.0, 20.0)], Metal::Steel),
    ("flanged 1:10", 15.0, 0.05, 40.0, 0.0, 0.12, &[(28.0, 24.0), (40.0, 45.0)], Metal::Steel),
    (
        "bored, two steps 1:16",
        18.0,
        0.031_25,
        45.0,
        6.0,
        0.1,
        &[(15.0, 26.0), (30.0, 50.0), (45.0, 26.0)],
        Metal::Aluminium,
    ),
];
const STATES: [(f64, f64); 6] =
    [(500.0, 2.0), (4e3, 0.5), (20e3, 3.0), (500.0, -2.0), (4e3, -0.5), (20e3, -3.0)];

fn seat(case: &Case) -> Seat {
    let (_, small, slope, length, bore, _, steps, metal) = *case;
    let mm = Length::new::<millimeter>;
    let (hub, steel) = (Elastic::from(metal), Elastic::from(Metal::Steel));
    let face = mm(2.0 * steps[0].1);
    let seat = Seat::new(hub, steel, mm(2.0 * small), 2.0 * slope, mm(length), face, face)
        .with_spindle_bore(mm(2.0 * bore))
        .with_overhangs(mm(15.0), mm(30.0));
    let more = steps.iter().zip(&steps[1..]);
    more.fold(seat, |seat, (before, step)| seat.with_step(mm(before.0), mm(2.0 * step.1)))
}

/// The least of a few runs, in seconds.
fn best<T>(runs: usize, each: usize, mut work: impl FnMut() -> T) -> f64 {
    let run = |work: &mut dyn FnMut() -> T| {
        let start = Instant::now();
        for _ in 0..each {
            black_box(work());
        }
        start.elapsed().as_secs_f64() / each as f64
    };
    (0..runs).map(|_| run(&mut work)).fold(f64::INFINITY, f64::min)
}

fn angle(minutes: f64) -> Angle {
    Angle::new::<degree>(minutes / 60.0)
}

/// How far the usual mesh is from the fine one, in words.
fn against_fine(usual: &SeatFound, fine: &SeatFound) -> String {
    let [mut front, mut force] = [0.0_f64; 2];
    for (newtons, minutes) in STATES {
        let [a, b] = [usual, fine].map(|seat| {
            seat.push(Force::new::<newton>(newtons), angle(minutes)).expect("in range")
        });
        front = front.max((a.contact - b.contact).abs());
        if let (Some(a), Some(b)) = (a.force_for_95, b.force_for_95) {
            force = force.max((a.get::<newton>() / b.get::<newton>() - 1.0).abs());
        }
    }
    format!("front within {front:.4} of the length, force for 95 % within {:.2} %", force * 100.0)
}

/// Times, compares and prints; the exit code of the Python side.
pub fn compare(root: &Path, folder: &Path, python: &Path) -> i32 {
    let mut text = String::from(
        "{\"fine\": {\"columns\": 40, \"hub\": 3, \"step\": 3, \"spindle\": 4, \"overhang\": 8}, \"cases\": [",
    );
    for (at, case) in CASES.iter().enumerate() {
        let (name, small, slope, length, bore, friction, steps, metal) = *case;
        let of = seat(case);
        let found = of.clone().solve(friction).expect("a seat");
        let fine = of.clone().with_fine_mesh();
        // The geometry is what solving takes beyond what another friction takes.
        let whole = best(20, 5, || of.clone().solve(friction));
        let path = best(20, 5, || found.with_friction(friction));
        let push_seconds =
            best(20, 1000, || found.push(Force::new::<newton>(black_box(4e3)), angle(-1.0)));
        let fine_seconds = best(3, 1, || fine.clone().solve(friction));
        let words = against_fine(&found, &fine.solve(friction).expect("a seat"));
        let stuff = |metal: Metal| {
            let of = Elastic::from(metal);
            format!("[{:e}, {}]", of.modulus.get::<pascal>(), of.poisson)
        };
        let in_metres: Vec<_> = steps
            .iter()
            .map(|(to, radius)| format!("[{:e}, {:e}]", to / 1e3, radius / 1e3))
            .collect();
        let states = STATES.map(|(newtons, minutes)| {
            let along =
                found.along(Force::new::<newton>(newtons), angle(minutes)).expect("in range");
            let pressures: Vec<_> =
                along.iter().map(|at| format!("{:e}", at.pressure.get::<pascal>())).collect();
            let mismatch = angle(minutes).get::<radian>();
            format!(
                "{{\"force\": {newtons:e}, \"mismatch\": {mismatch:e}, \"pressures\": [{}]}}",
                pressures.join(", ")
            )
        });
        let comma = if at == 0 { "" } else { ", " };
        let geometry = whole - path;
        let [small, length, bore] =
            [small, length, bore].map(|size| Length::new::<millimeter>(size).get::<meter>());
        write!(
            text,
            "{comma}{{\"name\": \"{name}\", \"small\": {small:e}, \"slope\": {slope}, \"length\": {length:e}, \"bore\": {bore:e}, \
             \"friction\": {friction}, \"steps\": [{}], \"hub\": {}, \"spindle\": {}, \"overhangs\": [0.015, 0.03], \
             \"seconds\": {geometry:e}, \"path_seconds\": {path:e}, \"push_seconds\": {push_seconds:e}, \
             \"fine_seconds\": {fine_seconds:e}, \"against_fine\": \"{words}\", \"states\": [{}]}}",
            in_metres.join(", "),
            stuff(metal),
            stuff(Metal::Steel),
            states.join(", ")
        )
        .expect("a text grows");
    }
    text.push_str("]}");
    let file = folder.join("seat.json");
    fs::write(&file, text).expect("room for the seats");
    let script = root.join("benches/peers/seat.py");
    let mut command = Command::new(python);
    // One thread on either side.
    for name in ["OMP_NUM_THREADS", "OPENBLAS_NUM_THREADS", "MKL_NUM_THREADS"] {
        command.env(name, "1");
    }
    let status = command.arg(script).arg(file).status().expect("a Python with NumPy and SciPy");
    status.code().unwrap_or(2)
}
