//! Reports of a checked rack: for a terminal, paper, a workbook and programs.

mod csv;
mod html;
mod json;
mod text;
mod whole;
pub(super) mod workbook;

use std::cell::{Cell, RefCell};
use std::io;
use std::ops::ControlFlow;
use std::path::Path;

pub use html::{fragment, html, table_fragment};
pub use json::SCHEMA;
pub use text::text;

use super::batch::{Checked, Row};
use super::heading::OURS;
use crate::error::{Error, ErrorKind};
use crate::mounting::{Outcome, cautions};
use crate::tables;
pub(crate) use whole::write_whole;

/// Most mountings that a report goes through one by one.
pub const MOST_LISTED: usize = 1000;

/// Writes a report, in the format that the ending of `path` names: `.html` to
/// print, `.txt`, `.xlsx` and `.csv` with the rows as they came and their verdicts
/// before them, `.json` for programs (see [`SCHEMA`]).
///
/// The file is written whole or not at all: it is written beside its place
/// under another name and then renamed. `each` is told the share that is done
/// and may stop the work.
///
/// # Errors
///
/// [`ErrorKind::UnknownWord`] for another ending, [`ErrorKind::File`] when it
/// can't be written, [`ErrorKind::Stopped`]; an older report is left as it was.
pub fn write(
    checked: &Checked,
    path: &Path,
    each: &mut dyn FnMut(f64) -> ControlFlow<()>,
) -> Result<(), Error> {
    let ending = ending(path)?;
    if checked.file.is_some() && checked.file == path.canonicalize().ok() {
        return Err(ErrorKind::File {
            path: path.display().to_string(),
            action: "written",
            why: "it is the rack itself".into(),
            hint: "give the report a name of its own",
        }
        .into());
    }
    let rows = Told::new(checked.len(), each);
    let written = match ending {
        Ending::Html => {
            let page = html(checked)?;
            write_whole(path, |out| out.write_all(page.as_bytes()))
        }
        Ending::Text => write_whole(path, |out| out.write_all(text(checked).as_bytes())),
        Ending::Csv => write_whole(path, |out| csv::write(checked, out, &rows)),
        Ending::Json => write_whole(path, |out| json::write(checked, out, &rows)),
        Ending::Workbook => write_whole(path, |out| workbook::write(checked, out, &rows)),
    };
    if rows.stopped.get() {
        return Err(ErrorKind::Stopped { rows: rows.done.get() }.into());
    }
    written
}

/// What a report is, by the ending of its name.
pub(crate) enum Ending {
    Html,
    Text,
    Workbook,
    Csv,
    Json,
}

/// What a report of this name would be.
///
/// # Errors
///
/// [`ErrorKind::UnknownWord`] for an ending that names none.
pub(crate) fn ending(path: &Path) -> Result<Ending, Error> {
    let ending = path.extension().map(|ending| ending.to_string_lossy().to_lowercase());
    match ending.as_deref() {
        Some("html" | "htm") => Ok(Ending::Html),
        Some("txt") => Ok(Ending::Text),
        Some("xlsx") => Ok(Ending::Workbook),
        Some("csv") => Ok(Ending::Csv),
        Some("json") => Ok(Ending::Json),
        _ => Err(ErrorKind::UnknownWord {
            argument: "report".into(),
            text: path.display().to_string(),
            allowed: ".html, .xlsx, .csv, .json, .txt".into(),
            hint: "name the report with one of these endings, like \"rack.html\"".into(),
        }
        .into()),
    }
}

/// Rows of a report as they are written, told to whoever waits.
struct Told<'a> {
    all: usize,
    each: RefCell<&'a mut dyn FnMut(f64) -> ControlFlow<()>>,
    done: Cell<usize>,
    stopped: Cell<bool>,
}

impl<'a> Told<'a> {
    fn new(all: usize, each: &'a mut dyn FnMut(f64) -> ControlFlow<()>) -> Self {
        Self {
            all: all.max(1),
            each: RefCell::new(each),
            done: Cell::new(0),
            stopped: Cell::new(false),
        }
    }

    /// Counts one more row.
    fn one(&self) -> io::Result<()> {
        let done = self.done.get() + 1;
        self.done.set(done);
        if done.is_multiple_of(1024) {
            let share = done as f64 / self.all as f64;
            self.stopped.set((self.each.borrow_mut())(share).is_break());
        }
        if self.stopped.get() { Err(io::Error::other("stopped")) } else { Ok(()) }
    }
}

/// What reports put before a row of the user's, each word after [`OURS`].
const ADDED: [&str; 5] = ["row", "mounting", "verdict", "because", "advice"];
/// What they put after it.
const LAST: &str = "judged by";

/// The headings of a report: ours, those of the table as they came, ours.
fn headings(checked: &Checked) -> impl Iterator<Item = (bool, String)> {
    let ours = |word: &str| (true, format!("{OURS}{word}"));
    let theirs = checked.headings().iter().map(|heading| (false, heading.clone()));
    ADDED.into_iter().map(ours).chain(theirs).chain(std::iter::once(ours(LAST)))
}

/// What a report puts before one row, after its number.
fn added(row: &Row) -> [String; 4] {
    let word = row.worst.map_or("unreadable", Outcome::printed).to_owned();
    let (because, advice) = match &row.verdict {
        Ok(verdict) => {
            let first = verdict.findings.first().filter(|first| first.outcome < Outcome::Pass);
            (verdict.headline(), first.map_or("", |first| first.advice).to_owned())
        }
        Err(error) => two_lines(error),
    };
    [row.name.clone(), word, because, advice]
}

/// What is wrong, and how to put it right.
fn two_lines(error: &Error) -> (String, String) {
    let text = error.to_string();
    let (wrong, hint) = text.split_once("\nhint: ").unwrap_or((&text, ""));
    (wrong.to_owned(), hint.to_owned())
}

/// Program, tables, laws and rules left out, in one line.
fn judged_by(checked: &Checked) -> String {
    let mut line = made_by();
    for terms in cautions::terms_lines(&checked.terms) {
        line = format!("{line} {terms}");
    }
    line
}

/// Program and tables.
fn made_by() -> String {
    format!("hubwright {}, tables {:016x}.", env!("CARGO_PKG_VERSION"), tables::fingerprint())
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

/// How the table was read, for the top of a report.
fn reading_notes(checked: &Checked) -> Vec<String> {
    let unread = unread(checked);
    let columns = (!unread.is_empty()).then(|| format!("Columns not read: {}.", unread.join(", ")));
    columns.into_iter().chain(checked.notes.iter().cloned()).collect()
}
