//! Reading a CSV file row by row, in whatever dialect it was saved.

use std::borrow::Cow;
use std::fs::File;
use std::io::{self, BufReader, Read, Seek, SeekFrom};
use std::ops::ControlFlow;
use std::path::Path;
use std::sync::Arc;
use std::sync::atomic::{AtomicU64, Ordering};

use super::Source;
use crate::error::{Error, ErrorKind};
use crate::sheet::cell::Cell;
use crate::sheet::find::MOST_TITLES;
use crate::sheet::given::Given;
use crate::sheet::heading::Column;
use crate::sheet::intake::{Intake, empty, more_cells};
use crate::sheet::layout::{Dialect, Feed, open_quote};
use crate::sheet::row::{MOST_ROW_BYTES, RowFacts};
use crate::units::Decimal;

/// How much of a file is looked at to learn its dialect.
const SAMPLE: u64 = 256 * 1024;
/// Most cells of a row that are looked at; tables have far fewer columns.
const WIDEST: usize = 1 << 16;

/// Reads a CSV file.
pub(super) fn take(
    source: Source<'_>,
    each: &mut dyn FnMut(f64) -> ControlFlow<()>,
) -> Result<Intake, Error> {
    let Source { path, name, mut file, options } = source;
    let failed = |error: io::Error| super::could_not_read(name, &error);
    if let Some(sheet) = &options.sheet {
        return Err(super::no_sheet(name, sheet, &[]));
    }
    let size = file.metadata().map_err(failed)?.len().max(1);
    let mut sample = Vec::new();
    file.by_ref().take(SAMPLE).read_to_end(&mut sample).map_err(failed)?;
    let separator = separator(name, &sample, Given { units: &[], mapping: &options.mapping })?;
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
    let dialect = Dialect {
        points_group: separator != b',',
        assumed: if separator == b';' { Decimal::Comma } else { Decimal::Point },
        addressed: false,
    };
    let mut feed = Feed::new(name, options, dialect);
    let mut rows = 0_u64;
    // Rows as a spreadsheet program counts them: a line break inside a cell
    // starts no row, and a line feed after a carriage return is seen late.
    let late = usize::from(first_line_ends_in_return(&sample));
    // Old files part their lines by returns alone, which the reader doesn't count.
    let returns = !sample.contains(&b'\n');
    let breaks =
        |record: &csv::ByteRecord| record.as_slice().iter().filter(|byte| **byte == b'\n').count();
    let mut inside = 0;
    while next(&mut reader, &mut record).map_err(failed)? {
        let line = record.position().map_or(0, |position| position.line()) as usize;
        // The first record has no line feed before it.
        let late = if rows == 0 { 0 } else { late };
        let line = (line + late).saturating_sub(inside);
        let line = if returns { rows as usize + 1 } else { line };
        inside += breaks(&record);
        let end = reader.position().byte();
        let start = record.position().map_or(end, csv::Position::byte);
        let mut facts =
            RowFacts { swallowed: swallowed(&record, separator), ..RowFacts::default() };
        if breaks(&record) > 0 && quotes_are_odd(path, start, end).map_err(failed)? {
            facts.error = Some(open_quote());
        }
        if record.iter().skip(WIDEST).any(|cell| !cell.trim_ascii().is_empty()) {
            facts.error.get_or_insert_with(more_cells);
        }
        let texts: Vec<Cow<'_, str>> = record.iter().take(WIDEST).map(text).collect();
        facts.latin = texts.iter().any(|text| matches!(text, Cow::Owned(_)));
        let cells: Vec<Cell<'_>> = texts.iter().map(|text| Cell::Text(text)).collect();
        feed.row(line, &cells, facts)?;
        rows += 1;
        if rows.is_multiple_of(4096)
            && each((count.load(Ordering::Relaxed) as f64 / size as f64).min(1.0)).is_break()
        {
            return Err(ErrorKind::Stopped { rows: rows as usize }.into());
        }
    }
    feed.end()
}

/// A cell's text. What is no UTF-8 was saved by a program that writes a byte a
/// letter; figures and units come out the same in any such code.
fn text(cell: &[u8]) -> Cow<'_, str> {
    match std::str::from_utf8(cell) {
        Ok(text) => Cow::Borrowed(text),
        Err(_) => Cow::Owned(cell.iter().map(|byte| char::from(*byte)).collect()),
    }
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

/// Most separators in a line of a cell below its first: as many as a row has
/// tell of a quote that is never closed.
fn swallowed(record: &csv::ByteRecord, separator: u8) -> usize {
    let later = record.iter().flat_map(|cell| cell.split(|byte| *byte == b'\n').skip(1));
    let count = |line: &[u8]| line.iter().filter(|byte| **byte == separator).count();
    later.map(count).max().unwrap_or(0)
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
        if self.row > MOST_ROW_BYTES as u64 {
            return Err(io::Error::other("a row never ends; look for a quote that is not closed"));
        }
        Ok(read)
    }
}

fn first_line_ends_in_return(sample: &[u8]) -> bool {
    let end = sample.iter().position(|byte| *byte == b'\n');
    end.is_some_and(|end| end > 0 && sample[end - 1] == b'\r')
}

/// The separator: the one by which a row among the first comes apart into most
/// headings that are known, or else into most cells.
fn separator(name: &str, sample: &[u8], given: Given<'_>) -> Result<u8, Error> {
    if sample.iter().all(u8::is_ascii_whitespace) {
        return Err(empty(name));
    }
    let not_a_table = |why: &str, hint: &str| -> Error {
        ErrorKind::BadTable { name: name.into(), why: why.into(), hint: hint.into() }.into()
    };
    if sample.starts_with(b"\xff\xfe") || sample.starts_with(b"\xfe\xff") {
        return Err(not_a_table("is text in UTF-16", "save it as \"CSV UTF-8\", or as .xlsx"));
    }
    if sample.contains(&0) {
        return Err(not_a_table(
            "is neither a text file nor a workbook",
            "save the sheet as .xlsx, .ods or CSV and check that file",
        ));
    }
    let mark = sample.strip_prefix(b"\xef\xbb\xbf").unwrap_or(sample);
    if mark.trim_ascii_start().starts_with(b"<") {
        return Err(not_a_table(
            "is a page of HTML or XML, whatever its name says",
            "open it in an office program and save it as .xlsx, .ods or CSV",
        ));
    }
    let score = |separator: u8| {
        let reader = csv::ReaderBuilder::new()
            .delimiter(separator)
            .has_headers(false)
            .flexible(true)
            .from_reader(sample);
        let rows = reader.into_byte_records().flatten().take(MOST_TITLES);
        let known = |cell: &[u8]| {
            matches!(
                given.column(&text(cell)),
                Ok(Column::Datum { .. } | Column::Marking | Column::Name) | Err(_)
            )
        };
        let score =
            |row: csv::ByteRecord| (row.iter().filter(|cell| known(cell)).count(), row.len());
        rows.map(score).max().unwrap_or_default()
    };
    // Of equals the last wins, which is the comma.
    Ok([b'\t', b';', b','].into_iter().max_by_key(|separator| score(*separator)).unwrap_or(b','))
}
