//! What a Python user sees: installs the package into an environment of its
//! own and runs pytest there, notebooks included.
//!
//! `PYTHON` chooses the interpreter. Nothing here starts Python inside Rust.
#![cfg(feature = "python")]

use std::env;
use std::path::{Path, PathBuf};
use std::process::Command;

fn root() -> &'static Path {
    Path::new(env!("CARGO_MANIFEST_DIR"))
}

/// Runs a command with its output on the screen, and says what failed.
fn run(command: &mut Command, what: &str) {
    let status = command.current_dir(root()).status();
    let status = status.unwrap_or_else(|error| panic!("could not {what}: {error}"));
    assert!(status.success(), "could not {what}: {status}");
}

/// The interpreter to build with, or the one line that says what is missing.
fn interpreter() -> PathBuf {
    let wanted = env::var_os("PYTHON").map(PathBuf::from);
    let tried: Vec<PathBuf> =
        wanted.map_or_else(|| vec!["python3".into(), "python".into()], |one| vec![one]);
    let recent = "import sys; sys.exit(sys.version_info < (3, 11))";
    let works = |python: &PathBuf| {
        Command::new(python).args(["-c", recent]).status().is_ok_and(|s| s.success())
    };
    tried.iter().find(|python| works(python)).cloned().unwrap_or_else(|| {
        panic!(
            "Python 3.11 or later is needed and none of {tried:?} is one; set PYTHON to its path"
        )
    })
}

#[test]
fn the_package_installs_and_passes_its_tests() {
    let environment = root().join("target").join("python-env");
    let bin = if cfg!(windows) { "Scripts/python.exe" } else { "bin/python" };
    let python = environment.join(bin);
    if !python.exists() {
        run(
            Command::new(interpreter()).args(["-m", "venv"]).arg(&environment),
            "make a virtual environment",
        );
    }
    let quietly = ["-m", "pip", "install", "--quiet", "--disable-pip-version-check"];
    // maturin keeps its work under target/ like everything else here.
    run(
        Command::new(&python).args(quietly).arg(".[test]"),
        "install the package with its test extras",
    );
    // Not from the checkout: what is tested is what was installed.
    run(
        Command::new(&python).args(["-P", "-m", "pytest", "-p", "no:cacheprovider"]),
        "pass the Python tests",
    );
}
