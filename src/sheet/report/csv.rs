//! The report as CSV: the rows as they came, with their verdicts before them.

use std::io::{self, Write};

use super::super::batch::Checked;
use super::super::cell::Cell;
use super::{Told, added, headings, judged_by};
use crate::units::{Date, Decimal, number};

/// Writes it with a byte order mark, for office programs, and by RFC 4180.
pub(super) fn write(checked: &Checked, out: &mut dyn Write, told: &Told<'_>) -> io::Result<()> {
    out.write_all("\u{feff}".as_bytes())?;
    let mut csv = csv::WriterBuilder::new().terminator(csv::Terminator::CRLF).from_writer(out);
    csv.write_record(headings(checked).map(|(_, heading)| plain(&heading)))?;
    let judged_by = judged_by(checked);
    for (at, row) in checked.rows().enumerate() {
        told.one()?;
        csv.write_field(row.number.to_string())?;
        for text in added(&row) {
            csv.write_field(plain(&text))?;
        }
        for cell in checked.cells(at) {
            csv.write_field(match cell {
                Cell::Blank => String::new(),
                Cell::Text(text) => plain(text),
                Cell::Number(number) => number.to_string(),
                Cell::Truth(truth) => if truth { "TRUE" } else { "FALSE" }.into(),
                Cell::Day(day) => Date::from_days(day).to_string(),
                Cell::Fault(fault) => plain(fault),
            })?;
        }
        csv.write_field(&judged_by)?;
        csv.write_record(None::<&[u8]>)?;
    }
    csv.flush()
}

/// Text that no office program takes for a formula.
fn plain(text: &str) -> String {
    let formula =
        text.trim_start().starts_with(['=', '+', '-', '@']) || text.starts_with(['\t', '\r']);
    let a_number =
        || [Decimal::Point, Decimal::Comma].iter().any(|mark| number(text, *mark).is_ok());
    if formula && !a_number() { format!("'{text}") } else { text.to_owned() }
}
