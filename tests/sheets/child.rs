//! Files checked in a process of its own, so that what one does to time and memory can be measured.

use std::ops::ControlFlow;
use std::path::Path;
use std::process::{Command, Stdio};
use std::time::{Duration, Instant};

use hubwright::mounting::Terms;
use hubwright::sheet::{Options, check_file};
use serde::{Deserialize, Serialize};

/// Names the file, or the folder of files, that the child is to check.
const FILE: &str = "HUBWRIGHT_TEST_FILE";
/// Marks the lines that the child answers with.
const MARK: &str = "told: ";
/// Most seconds that the processor may work on a file, or a folder of small ones. A build
/// for tests takes several times as long as one for use, and more on a busy machine.
const MOST_SECONDS: f64 = if cfg!(debug_assertions) { 30.0 } else { 10.0 };
/// Most memory of the whole process, in kB.
const MOST_MEMORY: u64 = 256 << 10;

/// What came of a file.
#[derive(Debug, Default, Serialize, Deserialize)]
pub struct Told {
    pub file: String,
    /// Code and text of the error, when the file was refused.
    pub error: Option<(String, String)>,
    pub rows: usize,
    pub unreadable: usize,
    /// Numbers of the first rows.
    pub numbers: Vec<usize>,
    /// Number, and text of the problem, of the first rows that can't be read.
    pub problems: Vec<(usize, String)>,
    pub notes: Vec<String>,
    seconds: f64,
    memory: u64,
}

impl Told {
    /// That the file was refused in these words, clearly.
    #[track_caller]
    pub fn refused(&self, code: &str, holds: &[&str]) {
        let Some((given, text)) = &self.error else { panic!("it was read: {self:?}") };
        assert_eq!(given, code, "{text}");
        for part in holds {
            assert!(text.contains(part), "{part:?} is not in {text:?}");
        }
    }

    /// That so many rows came out, and so many of them unreadable.
    #[track_caller]
    pub fn read(&self, rows: usize, unreadable: usize) {
        assert_eq!(
            (&self.error, self.rows, self.unreadable),
            (&None, rows, unreadable),
            "{self:?}"
        );
    }

    /// That an error is one line of what is wrong and one `hint:` line.
    #[track_caller]
    fn must_be_clear(&self) {
        let Some((_, text)) = &self.error else { return };
        let lines: Vec<_> = text.lines().collect();
        let [wrong, hint] = lines[..] else { panic!("two lines: {text:?}") };
        let hint = hint.strip_prefix("hint: ").unwrap_or_else(|| panic!("no hint: {text:?}"));
        assert!(hint.trim().len() > 5, "an empty hint: {text:?}");
        assert!(!wrong.ends_with('.') && !text.to_lowercase().contains("invalid"), "{text:?}");
        assert!(text.len() < 1000, "nobody reads so long a message: {text:?}");
    }
}

/// Checks a file in a process of its own, whose time and memory are limited.
#[track_caller]
pub fn check(path: &Path) -> Told {
    let mut all = check_all(path);
    assert_eq!(all.len(), 1, "one file");
    all.remove(0)
}

/// Checks every file of a folder in one process.
#[track_caller]
pub fn check_all(path: &Path) -> Vec<Told> {
    let mut child = Command::new(std::env::current_exe().expect("this test"))
        .args(["--exact", "child::answers_about_the_file_that_it_is_given", "--nocapture"])
        .env(FILE, path)
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .expect("a process");
    // What the child says may be longer than a pipe holds, so that it is read while it works.
    let mut said = child.stdout.take().expect("a pipe");
    let said = std::thread::spawn(move || std::io::read_to_string(&mut said).expect("text"));
    let start = Instant::now();
    let status = loop {
        if let Some(status) = child.try_wait().expect("a process") {
            break status;
        }
        // The machine may be busy with others; this only ends what hangs.
        if start.elapsed() > Duration::from_secs(120) {
            child.kill().expect("an end");
            panic!("it takes more than two minutes");
        }
        std::thread::sleep(Duration::from_millis(5));
    };
    let said = said.join().expect("what the child said");
    let complaint = std::io::read_to_string(child.stderr.take().expect("a pipe")).expect("text");
    assert!(status.success(), "{status}\n{complaint}\n{said}");
    assert!(!complaint.contains("panicked"), "{complaint}");
    let all: Vec<Told> = said
        .lines()
        .filter_map(|line| line.split_once(MARK))
        .map(|(_, line)| serde_json::from_str(line).expect("an answer"))
        .collect();
    for told in &all {
        told.must_be_clear();
    }
    let last = all.last().expect("an answer");
    println!("{:6.2} s {:4} MB  {}", last.seconds, last.memory >> 10, last.file);
    assert!(last.seconds < MOST_SECONDS, "{} s", last.seconds);
    assert!(last.memory < MOST_MEMORY, "{} MB", last.memory >> 10);
    all
}

#[test]
fn answers_about_the_file_that_it_is_given() {
    let Some(path) = std::env::var_os(FILE) else { return };
    let path = Path::new(&path);
    let mut paths = vec![path.to_owned()];
    if path.is_dir() {
        let files = std::fs::read_dir(path).expect("a folder");
        paths = files.map(|file| file.expect("a file").path()).collect();
        paths.sort();
    }
    let start = Instant::now();
    for path in paths {
        let mut told = about(&path);
        told.seconds = busy().unwrap_or(start.elapsed().as_secs_f64());
        told.memory = memory().unwrap_or(0);
        println!("\n{MARK}{}", serde_json::to_string(&told).expect("text"));
    }
}

fn about(path: &Path) -> Told {
    let each = &mut |_| ControlFlow::Continue(());
    let mut told = Told { file: path.display().to_string(), ..Told::default() };
    match check_file(path, &Terms::default(), None, &Options::default(), each) {
        Err(error) => told.error = Some((error.code().to_owned(), error.to_string())),
        Ok(checked) => {
            assert_eq!(checked.counts.rows(), checked.len(), "the counts add up");
            let label = |row| checked.label(row).map(|(number, _)| number);
            told.rows = checked.len();
            told.unreadable = checked.counts.unreadable;
            told.numbers = (0..checked.len().min(20)).filter_map(label).collect();
            if checked.counts.unreadable < 1000 {
                let problems = checked.problems().into_iter().take(20);
                told.problems =
                    problems.map(|problem| (problem.number, problem.error.to_string())).collect();
            }
            told.notes = checked.notes.clone();
        }
    }
    told
}

/// Seconds that the processor has worked for this process, where the system tells.
fn busy() -> Option<f64> {
    let stat = std::fs::read_to_string("/proc/self/stat").ok()?;
    // The name of the program, in parentheses, may hold blanks.
    let fields: Vec<&str> = stat.rsplit_once(')')?.1.split_whitespace().collect();
    let ticks = |at: usize| fields.get(at)?.parse::<f64>().ok();
    Some((ticks(11)? + ticks(12)?) / 100.0)
}

/// Most memory that this process has had, in kB, where the system tells.
fn memory() -> Option<u64> {
    let status = std::fs::read_to_string("/proc/self/status").ok()?;
    let line = status.lines().find_map(|line| line.strip_prefix("VmHWM:"))?;
    line.split_whitespace().next()?.parse().ok()
}
