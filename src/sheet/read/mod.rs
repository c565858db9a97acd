//! Reading files: what kind one is, and its rows.
//!
//! What a file is called says nothing; its first bytes do.

mod csv;
mod ods;
mod package;
mod strings;
mod xlsx;

use std::fs::File;
use std::io::{self, Read, Seek, SeekFrom};
use std::ops::ControlFlow;
use std::path::Path;

use super::find::SURE;
use super::intake::{Intake, MOST_BYTES, some};
use crate::error::{Error, ErrorKind, cut};
use crate::units::Decimal;

/// How a file is read.
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub struct Options {
    /// The decimal mark of numbers held as text; found out column by column when it is not given.
    pub decimal: Option<Decimal>,
    /// The sheet of a workbook; the one with headings that are known when it is not given.
    pub sheet: Option<String>,
    /// Headings of the file, each with the heading of ours that it stands for;
    /// with nothing when its column is to be left out.
    pub mapping: Vec<(String, String)>,
    /// Most bytes that a workbook may unpack to, and most text that is kept of any
    /// table: 256 MB unless raised.
    pub most_bytes: u64,
}

impl Default for Options {
    fn default() -> Self {
        Self { decimal: None, sheet: None, mapping: Vec::new(), most_bytes: MOST_BYTES }
    }
}

impl Options {
    /// With this decimal mark for numbers held as text.
    #[must_use]
    pub fn with_decimal(mut self, decimal: Decimal) -> Self {
        self.decimal = Some(decimal);
        self
    }

    /// With this sheet of a workbook.
    #[must_use]
    pub fn with_sheet(mut self, sheet: &str) -> Self {
        self.sheet = Some(sheet.to_owned());
        self
    }

    /// With a heading of the file taken for one of ours; for none when `ours` is empty.
    #[must_use]
    pub fn with_mapping(mut self, theirs: &str, ours: &str) -> Self {
        self.mapping.push((theirs.to_owned(), ours.to_owned()));
        self
    }

    /// With another cap on what a workbook may unpack to and what is kept of a table.
    #[must_use]
    pub fn with_most_bytes(mut self, most_bytes: u64) -> Self {
        self.most_bytes = most_bytes;
        self
    }
}

/// A file on its way in.
struct Source<'a> {
    path: &'a Path,
    name: &'a str,
    file: File,
    options: &'a Options,
}

/// Reads a file. `each` is told the share of it that is done and may stop the work.
pub(crate) fn take(
    path: &Path,
    options: &Options,
    each: &mut dyn FnMut(f64) -> ControlFlow<()>,
) -> Result<Intake, Error> {
    let name = path.display().to_string();
    let failed = |error: io::Error| could_not_read(&name, &error);
    let mut file = File::open(path).map_err(failed)?;
    if file.metadata().map_err(failed)?.is_dir() {
        return Err(could_not_read(&name, &io::Error::other("it is a folder")));
    }
    let mut first = [0; 8];
    let mut filled = 0;
    while filled < first.len() {
        match file.read(&mut first[filled..]).map_err(failed)? {
            0 => break,
            read => filled += read,
        }
    }
    file.seek(SeekFrom::Start(0)).map_err(failed)?;
    let source = Source { path, name: &name, file, options };
    if first.starts_with(b"PK\x03\x04") || first.starts_with(b"PK\x05\x06") {
        return package::take(source, each);
    }
    if first == *b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1" {
        return Err(not_a_workbook(
            &name,
            "is a workbook of the old kind (.xls), or one locked with a password",
            "save it as .xlsx or .ods, without a password",
        ));
    }
    csv::take(source, each)
}

fn could_not_read(name: &str, error: &io::Error) -> Error {
    ErrorKind::File {
        path: name.into(),
        action: "read",
        why: error.to_string(),
        hint: "check the path, and that it is an .xlsx, .ods or CSV file",
    }
    .into()
}

fn not_a_workbook(name: &str, why: &str, hint: &str) -> Error {
    ErrorKind::BadTable { name: name.into(), why: why.into(), hint: hint.into() }.into()
}

/// There is no such sheet among those of the file.
fn no_sheet(name: &str, sheet: &str, sheets: &[&str]) -> Error {
    let hint = if sheets.is_empty() {
        "a CSV file holds one table: leave the sheet's name out".to_owned()
    } else {
        let sheets: Vec<String> = sheets.iter().map(|sheet| cut(sheet)).collect();
        format!("its sheets are: {}", some(&sheets))
    };
    ErrorKind::BadTable { name: name.into(), why: format!("has no sheet {:?}", cut(sheet)), hint }
        .into()
}

/// A sheet of a workbook, and what it may hold.
struct Sheet {
    name: String,
    hidden: bool,
    /// What its headings are worth; `None` where it has no cells to read.
    score: Option<usize>,
}

/// The place of the sheet to read: the one asked for, or the one that holds mountings.
fn choose(name: &str, options: &Options, sheets: &[Sheet]) -> Result<usize, Error> {
    if let Some(wanted) = &options.sheet {
        let names: Vec<&str> = sheets.iter().map(|sheet| sheet.name.as_str()).collect();
        let found = names.iter().position(|sheet| sheet.trim() == wanted.trim());
        return found.ok_or_else(|| no_sheet(name, wanted, &names));
    }
    let places = 0..sheets.len();
    let racks = |hidden: bool| {
        let sure = move |at: &usize| {
            let sheet = &sheets[*at];
            sheet.hidden == hidden && sheet.score.is_some_and(|score| score >= SURE)
        };
        places.clone().filter(sure).collect::<Vec<_>>()
    };
    let racks = Some(racks(false)).filter(|racks| !racks.is_empty()).unwrap_or_else(|| racks(true));
    match racks[..] {
        [one] => Ok(one),
        [] => {
            // One heading alone may be a rack's; of equals the first that is shown.
            let best = places.rev().max_by_key(|at| (sheets[*at].score, !sheets[*at].hidden));
            best.ok_or_else(|| not_a_workbook(name, "has no sheet", "save the rack in one"))
        }
        _ => {
            let names: Vec<String> =
                racks.iter().map(|at| format!("{:?}", cut(&sheets[*at].name))).collect();
            Err(not_a_workbook(
                name,
                &format!("holds mountings on several sheets: {}", some(&names)),
                "say which one to check: --sheet NAME; check each in turn",
            ))
        }
    }
}

/// A sheet without cells.
fn no_cells(name: &str, sheet: &str) -> Error {
    not_a_workbook(
        name,
        &format!("has no cells in the sheet {:?}", cut(sheet)),
        "name a sheet of cells",
    )
}

/// Which sheet was read, and which were not.
fn sheet_notes(sheets: &[Sheet], read: usize) -> Vec<String> {
    let name = |sheet: &Sheet| format!("{:?}", cut(&sheet.name));
    let others = |cells: bool| -> Vec<String> {
        let others = sheets.iter().enumerate().filter(|(at, _)| *at != read);
        others.filter(|(_, sheet)| sheet.score.is_some() == cells).map(|(_, s)| name(s)).collect()
    };
    let (unread, broken) = (others(true), others(false));
    let mut notes = Vec::new();
    if sheets[read].hidden {
        notes.push(format!("The sheet {} is hidden.", name(&sheets[read])));
    }
    if !unread.is_empty() {
        notes.push(format!("The sheet {} was read, not: {}.", name(&sheets[read]), some(&unread)));
    }
    if !broken.is_empty() {
        notes.push(format!("There are no cells to read in: {}.", some(&broken)));
    }
    notes
}
