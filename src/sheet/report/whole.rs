//! Files written whole or not at all.

use std::fs;
use std::io::{self, BufWriter, Write};
use std::path::{Path, PathBuf};

use crate::error::{Error, ErrorKind};

/// Writes a file under a passing name beside its place, then renames it.
pub(crate) fn write_whole(
    path: &Path,
    fill: impl FnOnce(&mut dyn Write) -> io::Result<()>,
) -> Result<(), Error> {
    let name = path.file_name().unwrap_or_default().to_string_lossy();
    let passing: PathBuf = path.with_file_name(format!(".{name}.{}.part", std::process::id()));
    let attempt = || -> io::Result<()> {
        let mut file = BufWriter::new(fs::File::create(&passing)?);
        fill(&mut file)?;
        let file = file.into_inner().map_err(io::IntoInnerError::into_error)?;
        file.sync_all()?;
        fs::rename(&passing, path)
    };
    attempt().map_err(|error| {
        // Nothing more can be done about a leftover than to try.
        let _ = fs::remove_file(&passing);
        ErrorKind::File {
            path: path.display().to_string(),
            action: "written",
            why: error.to_string(),
            hint: "check that the folder is there, can be written to and has room; an older file is as it was",
        }
        .into()
    })
}
