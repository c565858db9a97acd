//! All rules over a million mountings, and seats, beside the same in NumPy.
//!
//! One command, `cargo bench --bench peers`, times both in one run on one
//! thread, compares every outcome and prints the ratio; with `-- seat` it times seats alone. `PYTHON` chooses an
//! interpreter with NumPy; the one of the tests is taken where it is there.

use std::fs;
use std::ops::ControlFlow;
use std::path::{Path, PathBuf};
use std::process::{Command, exit};
use std::time::{Duration, Instant};

use hubwright::mounting::{RULES, Terms, judge_columns};
use hubwright::units::Date;

mod rack;
mod seat;

const ROWS: usize = 1_000_000;

fn main() {
    let root = Path::new(env!("CARGO_MANIFEST_DIR"));
    let folder = root.join("target/peers");
    fs::create_dir_all(&folder).expect("a folder for the columns");
    let ours = root.join("target/python-env/bin/python");
    let python = std::env::var_os("PYTHON").map(PathBuf::from);
    let python = python.unwrap_or_else(|| if ours.exists() { ours } else { "python3".into() });
    let code = seat::compare(root, &folder, &python);
    if code != 0 || std::env::args().any(|word| word == "seat") {
        exit(code);
    }
    let today = Date::read("2026-11-25").expect("a day");
    let terms = Terms::default().with_today(today);

    let columns = rack::columns(ROWS);
    let mut best = Duration::MAX;
    for _ in 0..5 {
        let start = Instant::now();
        let worst = judge_columns(&columns, &terms, None, |_| ControlFlow::Continue(()));
        best = best.min(start.elapsed());
        assert_eq!(worst.map(|worst| worst.len()), Ok(ROWS));
    }

    if std::env::args().any(|word| word == "each") {
        each(&columns, &terms);
        return;
    }

    // What no judging can go below: every number of the rack read once.
    let numbers = rack::numbers(ROWS);
    let mut read = Duration::MAX;
    for _ in 0..5 {
        let start = Instant::now();
        let given: usize =
            numbers.iter().map(|(_, column)| column.iter().filter(|n| !n.is_nan()).count()).sum();
        read = read.min(start.elapsed());
        assert!(given > 0);
    }
    println!("reading the {} columns once: {:.3} s", numbers.len(), read.as_secs_f64());

    let mut cells = vec![0_u8; ROWS * RULES.len()];
    let mut keep = |rule: usize, first: usize, outcomes: &[hubwright::mounting::Outcome]| {
        for (at, outcome) in outcomes.iter().enumerate() {
            cells[rule * ROWS + first + at] = *outcome as u8;
        }
    };
    judge_columns(&columns, &terms, Some(&mut keep), |_| ControlFlow::Continue(()))
        .expect("judged");
    fs::write(folder.join("cells.u8"), &cells).expect("room for the outcomes");
    let slugs: Vec<_> = RULES.iter().map(|rule| rule.slug).collect();
    fs::write(folder.join("rules.txt"), slugs.join("\n")).expect("room for the names");
    for (field, column) in numbers {
        let bytes: Vec<u8> = column.iter().flat_map(|number| number.to_le_bytes()).collect();
        fs::write(folder.join(format!("{}.{}.f64", field.place, field.name)), bytes)
            .expect("room for a column");
    }

    let status = Command::new(python)
        .arg(root.join("benches/peers/rules.py"))
        .args([
            folder.as_os_str(),
            best.as_secs_f64().to_string().as_ref(),
            today.days().to_string().as_ref(),
        ])
        .status()
        .expect("a Python with NumPy");
    exit(status.code().unwrap_or(2));
}

/// What each rule takes by itself, slowest first, beyond what all share.
fn each(columns: &hubwright::mounting::Columns, terms: &Terms) {
    let slugs: Vec<_> = RULES.iter().map(|rule| rule.slug).collect();
    let time = |left_out: Vec<&str>| {
        let terms = left_out
            .into_iter()
            .fold(*terms, |terms, slug| terms.without(slug).expect("a known rule"));
        let mut best = Duration::MAX;
        for _ in 0..3 {
            let start = Instant::now();
            judge_columns(columns, &terms, None, |_| ControlFlow::Continue(())).expect("judged");
            best = best.min(start.elapsed());
        }
        best
    };
    let shared = time(slugs.clone());
    let mut taken: Vec<_> = slugs
        .iter()
        .map(|one| {
            let others = slugs.iter().filter(|slug| *slug != one).copied().collect();
            (time(others).saturating_sub(shared), *one)
        })
        .collect();
    taken.sort_unstable();
    println!("shared by all: {} ms", shared.as_millis());
    for (took, slug) in taken.iter().rev() {
        println!("{:6} ms  {slug}", took.as_millis());
    }
}
