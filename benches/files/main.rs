//! A workbook of 100,000 mountings checked, beside pandas and openpyxl that only read it.
//!
//! One command, `cargo bench --bench files --features sheets`, runs both in one go, each in a
//! process of its own, and prints seconds, peak memory and their ratios.
//! `PYTHON` chooses an interpreter with pandas and openpyxl; the one of the
//! tests is taken where it is there.

use std::ops::ControlFlow;
use std::path::{Path, PathBuf};
use std::process::{Command, exit};
use std::time::Instant;

use hubwright::mounting::Terms;
use hubwright::sheet::{Options, check_file, demo};
use rust_xlsxwriter::Workbook;

const ROWS: u32 = 100_000;

fn main() {
    let arguments: Vec<String> = std::env::args().collect();
    if let [_, mode, file] = &arguments[..]
        && mode == "--check"
    {
        return check(Path::new(file));
    }
    let root = Path::new(env!("CARGO_MANIFEST_DIR"));
    let folder = root.join("target/peers");
    std::fs::create_dir_all(&folder).expect("a folder for the workbook");
    let file = folder.join("rack.xlsx");
    write(&file);
    let size = std::fs::metadata(&file).expect("a workbook").len();
    println!("{ROWS} mountings, {:.1} MB", size as f64 / 1e6);

    let myself = std::env::current_exe().expect("this program");
    let ours = measured(Command::new(myself).arg("--check").arg(&file), "hubwright checks it");
    let own = root.join("target/python-env/bin/python");
    let python = std::env::var_os("PYTHON").map(PathBuf::from);
    let python = python.unwrap_or_else(|| if own.exists() { own } else { "python3".into() });
    let script = root.join("benches/files/read.py");
    let theirs =
        measured(Command::new(python).arg(script).arg(&file), "pandas and openpyxl read it");
    println!("{:.1} times as fast, {:.2} of the memory", theirs.0 / ours.0, ours.1 / theirs.1);
}

/// The demo rack over and over, as an office program saves it: texts shared, numbers as numbers.
fn write(file: &Path) {
    let mut reader = csv::Reader::from_reader(demo::POINT.as_bytes());
    let headings: Vec<_> = reader.headers().expect("headings").iter().map(str::to_owned).collect();
    let rows: Vec<csv::StringRecord> = reader.records().map(|row| row.expect("a row")).collect();
    let mut workbook = Workbook::new();
    let sheet = workbook.add_worksheet();
    for (column, heading) in headings.iter().enumerate() {
        sheet.write_string(0, column as u16, heading).expect("room");
    }
    for line in 1..=ROWS {
        let row = &rows[line as usize % rows.len()];
        for (column, cell) in row.iter().enumerate() {
            let column = column as u16;
            match cell.parse::<f64>() {
                Ok(number) => sheet.write_number(line, column, number),
                Err(_) if column == 0 => sheet.write_string(line, column, format!("{cell} {line}")),
                Err(_) => sheet.write_string(line, column, cell),
            }
            .expect("room");
        }
    }
    workbook.save(file).expect("a workbook");
}

fn check(file: &Path) {
    let start = Instant::now();
    let each = &mut |_| ControlFlow::Continue(());
    let checked = check_file(file, &Terms::default(), None, &Options::default(), each);
    let seconds = start.elapsed().as_secs_f64();
    assert_eq!(checked.map(|checked| checked.len()), Ok(ROWS as usize));
    println!("{seconds} {}", peak());
}

/// Peak memory of this process in MB, where the system tells.
fn peak() -> f64 {
    let status = std::fs::read_to_string("/proc/self/status").unwrap_or_default();
    let line = status.lines().find_map(|line| line.strip_prefix("VmHWM:"));
    let kilobytes = line.and_then(|line| line.split_whitespace().next()?.parse::<f64>().ok());
    kilobytes.map_or(f64::NAN, |kilobytes| kilobytes / 1024.0)
}

/// Seconds and megabytes that a child tells.
fn measured(command: &mut Command, what: &str) -> (f64, f64) {
    let done = command.output().expect("a child process");
    let said = String::from_utf8_lossy(&done.stdout);
    let mut numbers = said.split_whitespace().map(|text| text.parse::<f64>().ok());
    let (Some(Some(seconds)), Some(Some(peak))) = (numbers.next(), numbers.next()) else {
        eprintln!("{}", String::from_utf8_lossy(&done.stderr));
        exit(2);
    };
    println!("{what}: {seconds:.2} s, {peak:.0} MB at most");
    (seconds, peak)
}
