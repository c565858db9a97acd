//! Reading a CSV file row by row, in whatever dialect it was saved.

use std::fs::File;
use std::io::{self, BufReader, Read, Seek, SeekFrom};
use std::ops::ControlFlow;
use std::path::Path;
use std::sync::Arc;
use std::sync::atomic::{AtomicU64, Ordering};

use super::heading::{self, Column};
use super::intake::{Cell, Intake, MOST_CHARACTERS, MOST_COLUMNS, bad_row, may_group};
use crate::error::{Error, ErrorKind, cut};
use crate::units::{Decimal, number};

/// How much of a file is looked at to learn its dialect.
const SAMPLE: u64 = 256 * 1024;
/// Most bytes of one row: every column at its longest.
const MOST_BYTES: u64 = (MOST_COLUMNS * MOST_CHARACTERS) as u64;

/// How a file is read.
#[derive(Clone, Debug, Default)]
pub struct Options {
    /// The decimal mark; found out from the file when it is not given.
    pub decimal: Option<Decimal>,
}

/// Reads a CSV file. `each` is told the share of the file that is done and
/// may stop the work.
pub(crate) fn csv_file(
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
    let size = file.metadata().map_err(failed)?.len().max(1);
    let mut sample = Vec::new();
    file.by_ref().take(SAMPLE).read_to_end(&mut sample).map_err(failed)?;
    let separator = dialect(&name, &sample)?;
    let found = match options.decimal {
        Some(decimal) => Some(decimal),
        None => find_decimal(&name, &sample, separator)?,
    };
    // Where commas separate cells, a point is what is left for decimals.
    let unsettled = found.is_none() && separator != b',';
    let decimal = found.unwrap_or(if separator == b';' { Decimal::Comma } else { Decimal::Point });
    file.seek(SeekFrom::Start(0)).map_err(failed)?;

    let count = Arc::new(AtomicU64::new(0));
    let counted = Counted {
        inner: BufReader::with_capacity(1 << 16, file),
        count: Arc::clone(&count),
        row: 0,
    };
    let mut reader = csv::ReaderBuilder::new()
        .delimiter(separator)
        .has_headers(false)
        .flexible(true)
        .from_reader(counted);
    let mut record = csv::ByteRecord::new();
    if !next(&mut reader, &mut record).map_err(failed)? {
        return Err(empty(&name));
    }
    let headings: Vec<String> = record
        .iter()
        .map(|cell| std::str::from_utf8(cell).map(str::to_owned))
        .collect::<Result<_, _>>()
        .map_err(|_| not_utf8(&name))?;
    let width = headings.len();
    let mut intake = Intake::new(&name, &headings, &[], decimal)?;
    if unsettled {
        intake.unsettle();
    }
    let mut rows = 0_u64;
    // Rows as a spreadsheet program counts them: a line break inside a cell
    // starts no row, and a line feed after a carriage return is seen late.
    let late = usize::from(first_line_ends_in_return(&sample));
    let breaks =
        |record: &csv::ByteRecord| record.as_slice().iter().filter(|byte| **byte == b'\n').count();
    let mut inside = breaks(&record);
    while next(&mut reader, &mut record).map_err(failed)? {
        let line = record.position().map_or(0, |position| position.line()) as usize;
        let line = (line + late).saturating_sub(inside);
        inside += breaks(&record);
        let extra = record.iter().skip(width).any(|cell| !cell.trim_ascii().is_empty());
        let cells: Result<Vec<Cell<'_>>, _> = record
            .iter()
            .take(width)
            .map(|cell| std::str::from_utf8(cell).map(Cell::Text))
            .collect();
        let end = reader.position().byte();
        let start = record.position().map_or(end, csv::Position::byte);
        if swallows_rows(&record, separator, width)
            || (breaks(&record) > 0 && quotes_are_odd(path, start, end).map_err(failed)?)
        {
            intake.spoiled(
                line,
                bad_row(
                    "has a cell that holds what looks like the rows below it",
                    "look for a quote that is opened and not closed",
                ),
            );
            continue;
        }
        match cells {
            Ok(cells) => intake.row(line, cells.into_iter(), extra)?,
            Err(_) => intake
                .spoiled(line, bad_row("holds text that is not UTF-8", "save the file as UTF-8")),
        }
        rows += 1;
        if rows.is_multiple_of(4096)
            && each((count.load(Ordering::Relaxed) as f64 / size as f64).min(1.0)).is_break()
        {
            return Err(ErrorKind::Stopped { rows: rows as usize }.into());
        }
    }
    if intake.taken.is_empty() {
        return Err(ErrorKind::BadTable {
            name,
            why: "has headings and no row".into(),
            hint: "write one mounting a row below the headings".into(),
        }
        .into());
    }
    Ok(intake)
}

fn next(
    reader: &mut csv::Reader<Counted>,
    record: &mut csv::ByteRecord,
) -> Result<bool, io::Error> {
    reader.get_mut().row = 0;
    reader.read_byte_record(record).map_err(|error| match error.into_kind() {
        csv::ErrorKind::Io(error) => error,
        other => io::Error::other(format!("{other:?}")),
    })
}

/// Whether a cell runs over into lines that have as many separators as a row:
/// a quote that is never closed swallows rows, and with them what they would be told.
fn swallows_rows(record: &csv::ByteRecord, separator: u8, width: usize) -> bool {
    record.iter().any(|cell| {
        let later_lines = cell.split(|byte| *byte == b'\n').skip(1);
        later_lines
            .map(|line| line.iter().filter(|byte| **byte == separator).count())
            .any(|found| found + 1 >= width)
    })
}

/// Whether the bytes of a row hold an odd number of quotes, so that one of them is never closed.
fn quotes_are_odd(path: &Path, start: u64, end: u64) -> io::Result<bool> {
    let mut file = File::open(path)?;
    file.seek(SeekFrom::Start(start))?;
    let row = BufReader::new(file.take(end.saturating_sub(start)));
    let mut quotes = 0_usize;
    for byte in row.bytes() {
        quotes += usize::from(byte? == b'"');
    }
    Ok(!quotes.is_multiple_of(2))
}

/// Counts bytes, and ends a row that would fill the memory.
struct Counted {
    inner: BufReader<File>,
    count: Arc<AtomicU64>,
    row: u64,
}

impl Read for Counted {
    fn read(&mut self, buffer: &mut [u8]) -> io::Result<usize> {
        let read = self.inner.read(buffer)?;
        self.count.fetch_add(read as u64, Ordering::Relaxed);
        self.row += read as u64;
        if self.row > MOST_BYTES {
            return Err(io::Error::other("a row never ends; look for a quote that is not closed"));
        }
        Ok(read)
    }
}

fn could_not_read(name: &str, error: &io::Error) -> Error {
    ErrorKind::File {
        path: name.into(),
        action: "read",
        why: error.to_string(),
        hint: "check the path and that the file is a table saved as CSV",
    }
    .into()
}

fn empty(name: &str) -> Error {
    ErrorKind::BadTable {
        name: name.into(),
        why: "is empty".into(),
        hint: "the first row holds headings, each row below it one mounting".into(),
    }
    .into()
}

fn not_utf8(name: &str) -> Error {
    ErrorKind::BadTable {
        name: name.into(),
        why: "has headings that are not UTF-8 text".into(),
        hint: "save it as \"CSV UTF-8\"".into(),
    }
    .into()
}

fn first_line_ends_in_return(sample: &[u8]) -> bool {
    let end = sample.iter().position(|byte| *byte == b'\n');
    end.is_some_and(|end| end > 0 && sample[end - 1] == b'\r')
}

/// The separator: the one that splits the first line that holds any into most cells.
fn dialect(name: &str, sample: &[u8]) -> Result<u8, Error> {
    if sample.iter().all(u8::is_ascii_whitespace) {
        return Err(empty(name));
    }
    if sample.starts_with(b"\xff\xfe") || sample.starts_with(b"\xfe\xff") {
        return Err(not_utf8(name));
    }
    if sample.starts_with(b"PK\x03\x04") || sample.contains(&0) {
        return Err(ErrorKind::BadTable {
            name: name.into(),
            why: "is not a text file".into(),
            hint: "save the sheet as CSV and check that file".into(),
        }
        .into());
    }
    let mut quoted = false;
    let mut counts = [(b',', 0), (b';', 0), (b'\t', 0)];
    for byte in sample {
        match byte {
            b'"' => quoted = !quoted,
            b'\n' if !quoted && counts.iter().any(|(_, count)| *count > 0) => break,
            _ if !quoted => {
                for (separator, count) in &mut counts {
                    *count += usize::from(separator == byte);
                }
            }
            _ => {}
        }
    }
    let best = counts.iter().rev().max_by_key(|(_, count)| *count);
    Ok(best.map_or(b',', |(separator, _)| *separator))
}

/// The decimal mark that the numbers of a sample show.
///
/// `12,7` shows a comma and `12.7` a point; `1,250` could be either and shows
/// nothing. Signs of both, or only such cells, are the user's to settle; `None`
/// where no number has a mark.
fn find_decimal(name: &str, sample: &[u8], separator: u8) -> Result<Option<Decimal>, Error> {
    let mut reader = csv::ReaderBuilder::new()
        .delimiter(separator)
        .has_headers(false)
        .flexible(true)
        .from_reader(sample);
    let mut records = reader.byte_records().flatten();
    let measured: Vec<bool> = records.next().map_or_else(Vec::new, |headings| {
        let holds_numbers = |cell: &[u8]| {
            let column = std::str::from_utf8(cell).ok().and_then(|text| heading::read(text).ok());
            matches!(column, Some(Column::Datum { unit: Some(_), .. }))
        };
        headings.iter().map(holds_numbers).collect()
    });
    let (mut points, mut commas, mut unclear) = (Vec::new(), Vec::new(), Vec::new());
    let mut row = 1;
    // Where commas are free to group thousands, points are the decimal mark; elsewhere either may.
    let points_group = separator != b',';
    for record in records {
        row += 1;
        for (cell, _) in record.iter().zip(&measured).filter(|(_, measured)| **measured) {
            let Ok(text) = std::str::from_utf8(cell) else { continue };
            let by_point = text.contains('.') && number(text, Decimal::Point).is_ok();
            let by_comma = text.contains(',') && number(text, Decimal::Comma).is_ok();
            let thousands = may_group(text);
            match (by_point, by_comma) {
                (true, _) if thousands && points_group => unclear.push((row, cut(text.trim()))),
                (true, _) => points.push((row, cut(text.trim()))),
                (_, true) if thousands => unclear.push((row, cut(text.trim()))),
                (_, true) => commas.push((row, cut(text.trim()))),
                _ => {}
            }
        }
    }
    let unsettled = |why: String| -> Error {
        ErrorKind::BadTable {
            name: name.into(),
            why,
            hint: "say which it is: --decimal point or --decimal comma".into(),
        }
        .into()
    };
    match (points.first(), commas.first(), unclear.first()) {
        (Some((row, point)), Some((other, comma)), _) => Err(unsettled(format!(
            "has numbers with a decimal point ({point:?} in row {row}) and others with a decimal comma ({comma:?} in row {other})"
        ))),
        (None, None, Some((row, text))) => Err(unsettled(format!(
            "has {text:?} in row {row}, which could be a thousand and more or one and a bit"
        ))),
        (None, Some(_), _) => Ok(Some(Decimal::Comma)),
        (Some(_), None, _) => Ok(Some(Decimal::Point)),
        (None, None, None) => Ok(None),
    }
}
