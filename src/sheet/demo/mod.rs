//! The demo rack: a mould-repair tool room of two people, three grinders and
//! a dozen wheels. All of it is invented.

use std::path::{Path, PathBuf};

use super::report::write_whole;
use crate::error::{Error, ErrorKind};

/// The rack in millimetres, with commas and decimal points.
pub const POINT: &str = include_str!("rack.csv");
/// The same rack as a spreadsheet program of another country saves it: byte
/// order mark, semicolons, decimal commas.
pub const COMMA: &str = include_str!("rack-comma.csv");
/// The same rack in inches.
pub const INCH: &str = include_str!("rack-inch.csv");
/// The day on which the demo is judged, so that it comes out the same every day.
pub const TODAY: &str = "2026-11-25";

/// Writes the demo rack into a folder, which is made where it is missing.
///
/// # Errors
///
/// [`ErrorKind::File`] when it can't be written.
pub fn write(folder: &Path) -> Result<Vec<PathBuf>, Error> {
    std::fs::create_dir_all(folder).map_err(|error| {
        Error::from(ErrorKind::File {
            path: folder.display().to_string(),
            action: "written",
            why: error.to_string(),
            hint: "name a folder that can be made, like --into demo-rack",
        })
    })?;
    [("rack.csv", POINT), ("rack-comma.csv", COMMA), ("rack-inch.csv", INCH)]
        .into_iter()
        .map(|(name, contents)| {
            let path = folder.join(name);
            write_whole(&path, |out| out.write_all(contents.as_bytes())).map(|()| path)
        })
        .collect()
}
