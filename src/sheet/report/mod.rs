//! Reports of a checked rack: text for a terminal, HTML for paper and screen.

mod html;
mod text;

use std::fs;
use std::io::{self, Write as _};
use std::path::{Path, PathBuf};

pub use html::{fragment, html, table_fragment};
pub use text::text;

use super::batch::Checked;
use crate::error::{Error, ErrorKind};

/// Most mountings that a report goes through one by one.
pub const MOST_LISTED: usize = 1000;

/// Writes a report, in the format that the ending of `path` names.
///
/// The file is written whole or not at all: it is written beside its place
/// under another name and then renamed.
///
/// # Errors
///
/// [`ErrorKind::UnknownWord`] for an ending other than `.html` or `.txt`,
/// [`ErrorKind::File`] when it can't be written; an older report is left as it was.
pub fn write(checked: &Checked, path: &Path) -> Result<(), Error> {
    let ending = path.extension().map(|ending| ending.to_string_lossy().to_lowercase());
    let contents = match ending.as_deref() {
        Some("html" | "htm") => html(checked)?,
        Some("txt") => text(checked),
        _ => {
            return Err(ErrorKind::UnknownWord {
                argument: "report".into(),
                text: path.display().to_string(),
                allowed: ".html, .txt".into(),
                hint: "name the report with one of these endings, like \"rack.html\"".into(),
            }
            .into());
        }
    };
    write_whole(path, contents.as_bytes())
}

/// Writes a file under a passing name beside its place, then renames it.
pub(crate) fn write_whole(path: &Path, contents: &[u8]) -> Result<(), Error> {
    let name = path.file_name().unwrap_or_default().to_string_lossy();
    let passing: PathBuf = path.with_file_name(format!(".{name}.{}.part", std::process::id()));
    let attempt = || -> io::Result<()> {
        let mut file = fs::File::create(&passing)?;
        file.write_all(contents)?;
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

/// The whole rack in one line.
pub fn summary(checked: &Checked) -> String {
    let rows = checked.len();
    format!(
        "{}: {rows} mounting{}: {}",
        checked.name,
        if rows == 1 { "" } else { "s" },
        counted(checked)
    )
}

/// `3 DO NOT RUN, 1 unreadable, 8 OK`: what there is, worst first.
fn counted(checked: &Checked) -> String {
    let counts = &checked.counts;
    let parts = [
        (counts.refused, "DO NOT RUN"),
        (counts.unreadable, "unreadable"),
        (counts.unknown, "CAN'T TELL"),
        (counts.cautioned, "WATCH"),
        (counts.passed, "OK"),
    ];
    let parts: Vec<_> = parts
        .iter()
        .filter(|(count, _)| *count > 0)
        .map(|(count, word)| format!("{count} {word}"))
        .collect();
    parts.join(", ")
}

/// One line for each heading that nothing reads.
fn unread(checked: &Checked) -> Vec<String> {
    let line = |(heading, nearest): &(String, Option<String>)| match nearest {
        Some(nearest) => format!("{heading} (did you mean: {nearest}?)"),
        None => heading.clone(),
    };
    checked.unread.iter().map(line).collect()
}
