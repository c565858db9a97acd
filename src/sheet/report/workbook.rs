//! The report as a workbook: the rows as they came with their verdicts before
//! them, and every finding on a sheet of its own.

use std::io::{self, Write};
use std::panic::{AssertUnwindSafe, catch_unwind};

use rust_xlsxwriter::{Color, Format, FormatAlign, FormatBorder, Workbook, Worksheet, XlsxError};

use super::super::batch::{Checked, Row};
use super::super::cell::Cell;
use super::super::intake::{MOST_CHARACTERS, MOST_ROWS};
use super::{ADDED, Told, added, headings, judged_by, made_by, reading_notes, summary, two_lines};
use crate::mounting::verdict::Figure;
use crate::mounting::{Finding, Outcome, cautions};
use crate::units::Shop;

/// Days from the beginning of a workbook's calendar to 1970-01-01.
pub(in crate::sheet) const DAY_1970: i64 = 25_569;

/// Cells from which on the rows go through a passing file, so that they don't fill the memory.
const MANY_CELLS: usize = 200_000;

/// Writes it.
pub(super) fn write(checked: &Checked, out: &mut dyn Write, told: &Told<'_>) -> io::Result<()> {
    let many = checked.len() * (checked.headings().len() + ADDED.len()) > MANY_CELLS;
    // The library panics where there is no room for its passing files. Any panic
    // is caught here, and said to be what it is: a report that was not written.
    let made = catch_unwind(AssertUnwindSafe(|| make(checked, told, many)));
    let contents = made.map_err(|_| io::Error::other("no room for passing files"))??;
    out.write_all(&contents)
}

fn make(checked: &Checked, told: &Told<'_>, many: bool) -> io::Result<Vec<u8>> {
    let mut workbook = Workbook::new();
    let styles = Styles::new();
    about(workbook.add_worksheet(), checked, &styles).map_err(failed)?;
    rack(sheet(&mut workbook, many)?, checked, &styles, told)?;
    findings(sheet(&mut workbook, many)?, checked, &styles).map_err(failed)?;
    workbook.save_to_buffer().map_err(failed)
}

fn sheet(workbook: &mut Workbook, many: bool) -> io::Result<&mut Worksheet> {
    if many {
        workbook.add_worksheet_with_constant_memory().map_err(failed)
    } else {
        Ok(workbook.add_worksheet())
    }
}

pub(in crate::sheet) fn failed(error: XlsxError) -> io::Error {
    io::Error::other(error)
}

/// How cells look. Every outcome has its word, so that the colours are no more than a help.
struct Styles {
    heading: Format,
    ours: Format,
    day: Format,
    wrapped: Format,
    refuse: Format,
    unknown: Format,
    caution: Format,
    pass: Format,
}

/// The format of a row of headings.
pub(in crate::sheet) fn heading_style() -> Format {
    Format::new()
        .set_bold()
        .set_text_wrap()
        .set_align(FormatAlign::Top)
        .set_border_bottom(FormatBorder::Thin)
        .set_background_color(Color::RGB(0x00EC_EAE3))
}

impl Styles {
    fn new() -> Self {
        let word = |back: u32, ink: u32| {
            Format::new()
                .set_bold()
                .set_align(FormatAlign::Top)
                .set_background_color(Color::RGB(back))
                .set_font_color(Color::RGB(ink))
        };
        Self {
            heading: heading_style(),
            ours: heading_style().set_background_color(Color::RGB(0x00D9_DEE4)),
            day: Format::new().set_num_format("yyyy-mm-dd").set_align(FormatAlign::Top),
            wrapped: Format::new().set_text_wrap().set_align(FormatAlign::Top),
            refuse: word(0x00F6_D5D3, 0x0080_1216),
            unknown: word(0x00E6_DAF2, 0x004F_2C78),
            caution: word(0x00FB_E9C4, 0x0068_4400),
            pass: word(0x00DC_EEDF, 0x001A_5430),
        }
    }

    fn of(&self, outcome: Option<Outcome>) -> &Format {
        match outcome {
            Some(Outcome::Refuse) | None => &self.refuse,
            Some(Outcome::Unknown) => &self.unknown,
            Some(Outcome::Caution) => &self.caution,
            Some(Outcome::Pass | Outcome::NotChecked) => &self.pass,
        }
    }
}

/// Text in a cell: always text, never a formula, and never longer than a cell takes.
pub(in crate::sheet) fn text(
    sheet: &mut Worksheet,
    row: u32,
    column: u16,
    text: &str,
    format: &Format,
) -> Result<(), XlsxError> {
    if text.chars().count() <= MOST_CHARACTERS {
        sheet.write_string_with_format(row, column, text, format)?;
    } else {
        let cut: String = text.chars().take(MOST_CHARACTERS - 1).chain(['…']).collect();
        sheet.write_string_with_format(row, column, cut, format)?;
    }
    Ok(())
}

/// A4 or Letter, by their numbers in the file format, with pages numbered.
pub(in crate::sheet) fn paper(sheet: &mut Worksheet, shop: Shop) {
    sheet.set_paper_size(if shop == Shop::Inch { 1 } else { 9 });
    sheet.set_footer("&L&A&RPage &P of &N");
}

/// The height of a row of wrapped texts in columns of so many characters: not
/// every office program works it out.
pub(in crate::sheet) fn height(texts: &[(&str, f64)]) -> f64 {
    let lines = |(text, width): &(&str, f64)| (1.15 * text.chars().count() as f64 / width).ceil();
    let lines = texts.iter().map(lines).fold(1.0, f64::max);
    // 409 points are the most that a row can have.
    (2.0 + 13.5 * lines).min(409.0)
}

/// The last row of the longest sheet, from 0.
const LAST_ROW: usize = MOST_ROWS - 1;

fn rack(
    sheet: &mut Worksheet,
    checked: &Checked,
    styles: &Styles,
    told: &Told<'_>,
) -> io::Result<()> {
    let plain = Format::new().set_align(FormatAlign::Top);
    let lay_out = |sheet: &mut Worksheet| -> Result<(), XlsxError> {
        sheet.set_name("rack")?;
        paper(sheet, checked.terms.shop);
        sheet.set_landscape().set_repeat_rows(0, 0)?.set_repeat_columns(0, 2)?;
        sheet.set_freeze_panes(1, 3)?.set_row_height(0, 48)?;
        for (column, (ours, heading)) in headings(checked).enumerate() {
            let width = match column {
                0 => 10.0,
                1 => 22.0,
                2 => 13.0,
                3 | 4 => 40.0,
                // A long list of names spreads over its own column only.
                _ => heading.chars().count().clamp(10, 14) as f64,
            };
            sheet.set_column_width(column as u16, width)?;
            let style = if ours { &styles.ours } else { &styles.heading };
            text(sheet, 0, column as u16, &heading, style)?;
        }
        Ok(())
    };
    lay_out(sheet).map_err(failed)?;
    let judged_by = judged_by(checked);
    for (at, row) in checked.rows().enumerate().take(LAST_ROW) {
        told.one()?;
        let line = at as u32 + 1;
        let put = |sheet: &mut Worksheet| -> Result<(), XlsxError> {
            sheet.write_number_with_format(line, 0, row.number as f64, &plain)?;
            let [name, word, because, advice] = added(&row);
            sheet.set_row_height(
                line,
                height(&[(&because, 40.0), (&advice, 40.0), (&name, 22.0)]),
            )?;
            text(sheet, line, 1, &name, &styles.wrapped)?;
            text(sheet, line, 2, &word, styles.of(row.worst))?;
            text(sheet, line, 3, &because, &styles.wrapped)?;
            text(sheet, line, 4, &advice, &styles.wrapped)?;
            for (at, cell) in checked.cells(at).enumerate() {
                let column = (at + ADDED.len()) as u16;
                match cell {
                    Cell::Blank => {}
                    Cell::Text(said) | Cell::Fault(said) => {
                        text(sheet, line, column, said, &plain)?
                    }
                    Cell::Number(number) if number.is_finite() => {
                        sheet.write_number_with_format(line, column, number, &plain)?;
                    }
                    Cell::Number(number) => text(sheet, line, column, &number.to_string(), &plain)?,
                    Cell::Truth(truth) => {
                        sheet.write_boolean_with_format(line, column, truth, &plain)?;
                    }
                    Cell::Day(day) => {
                        let serial = (day + DAY_1970) as f64;
                        sheet.write_number_with_format(line, column, serial, &styles.day)?;
                    }
                }
            }
            let last = (checked.headings().len() + ADDED.len()) as u16;
            text(sheet, line, last, &judged_by, &plain)
        };
        put(sheet).map_err(failed)?;
    }
    Ok(())
}

/// Widths of the columns whose texts may need several lines.
const NAME: f64 = 18.0;
const SAYS: f64 = 40.0;
const SOURCE: f64 = 24.0;
const ADVICE: f64 = 34.0;

const FINDING: [(&str, f64); 11] = [
    ("row", 5.0),
    ("mounting", NAME),
    ("outcome", 12.0),
    ("rule", 20.0),
    ("says", SAYS),
    ("found", 9.0),
    ("demanded", 9.0),
    ("margin", 9.0),
    ("unit", 5.0),
    ("source", SOURCE),
    ("advice", ADVICE),
];

fn findings(sheet: &mut Worksheet, checked: &Checked, styles: &Styles) -> Result<(), XlsxError> {
    sheet.set_name("findings")?;
    paper(sheet, checked.terms.shop);
    sheet.set_landscape().set_print_fit_to_pages(1, 0).set_repeat_rows(0, 0)?;
    sheet.set_freeze_panes(1, 2)?;
    for (column, (heading, width)) in FINDING.into_iter().enumerate() {
        sheet.set_column_width(column as u16, width)?;
        text(sheet, 0, column as u16, heading, &styles.heading)?;
    }
    let mut line = 1;
    for place in checked.worst_first() {
        let Some(row) = checked.row(place) else { continue };
        let said = row.verdict.as_ref().map_or(1, |verdict| {
            verdict.findings.iter().filter(|finding| finding.outcome < Outcome::Pass).count()
        });
        if line as usize + said > LAST_ROW {
            return text(
                sheet,
                line,
                4,
                "There is no room for more; the other findings are in the other reports.",
                &styles.wrapped,
            );
        }
        match &row.verdict {
            Ok(verdict) => {
                let worth =
                    verdict.findings.iter().filter(|finding| finding.outcome < Outcome::Pass);
                for finding in worth {
                    one(sheet, line, &row, finding, styles)?;
                    line += 1;
                }
            }
            Err(error) => {
                let (wrong, hint) = two_lines(error);
                sheet.set_row_height(
                    line,
                    height(&[(&wrong, SAYS), (&hint, ADVICE), (&row.name, NAME)]),
                )?;
                start(sheet, line, &row, None, styles)?;
                text(sheet, line, 4, &wrong, &styles.wrapped)?;
                text(sheet, line, 10, &hint, &styles.wrapped)?;
                line += 1;
            }
        }
    }
    sheet.autofilter(0, 0, line.max(2) - 1, FINDING.len() as u16 - 1)?;
    Ok(())
}

fn start(
    sheet: &mut Worksheet,
    line: u32,
    row: &Row,
    outcome: Option<Outcome>,
    styles: &Styles,
) -> Result<(), XlsxError> {
    sheet.write_number_with_format(line, 0, row.number as f64, &styles.wrapped)?;
    text(sheet, line, 1, &row.name, &styles.wrapped)?;
    text(sheet, line, 2, outcome.map_or("unreadable", Outcome::printed), styles.of(outcome))
}

fn one(
    sheet: &mut Worksheet,
    line: u32,
    row: &Row,
    finding: &Finding,
    styles: &Styles,
) -> Result<(), XlsxError> {
    let source = finding.source.map(|source| source.to_string()).unwrap_or_default();
    let texts =
        [(&*finding.says, SAYS), (&*source, SOURCE), (finding.advice, ADVICE), (&*row.name, NAME)];
    sheet.set_row_height(line, height(&texts))?;
    start(sheet, line, row, Some(finding.outcome), styles)?;
    text(sheet, line, 3, finding.rule.slug, &styles.wrapped)?;
    text(sheet, line, 4, &finding.says, &styles.wrapped)?;
    for (column, figure) in [(5, finding.found), (6, finding.demanded)] {
        match figure {
            None => {}
            Some(Figure::Day(day)) => text(sheet, line, column, &day.to_string(), &styles.wrapped)?,
            Some(figure) => {
                sheet.write_number_with_format(line, column, figure.number(), &styles.wrapped)?;
            }
        }
    }
    if let Some(margin) = finding.margin {
        sheet.write_number_with_format(line, 7, margin, &styles.wrapped)?;
    }
    text(sheet, line, 8, finding.unit, &styles.wrapped)?;
    text(sheet, line, 9, &source, &styles.wrapped)?;
    text(sheet, line, 10, finding.advice, &styles.wrapped)
}

fn about(sheet: &mut Worksheet, checked: &Checked, styles: &Styles) -> Result<(), XlsxError> {
    const WIDTH: f64 = 78.0;
    sheet.set_name("read first")?;
    paper(sheet, checked.terms.shop);
    sheet.set_column_width(0, WIDTH)?;
    let today = checked.terms.today.map(|today| format!("Judged on {today}."));
    let lines = [summary(checked), made_by()]
        .into_iter()
        .chain(today)
        .chain(cautions::terms_lines(&checked.terms))
        .chain(reading_notes(checked))
        .chain([cautions::FIRST.to_owned(), String::new(), "Before you start it:".to_owned()])
        .chain(cautions::BEFORE_YOU_START.iter().map(|line| format!("• {line}")));
    for (line, said) in lines.enumerate() {
        let style = if line == 0 { &styles.heading } else { &styles.wrapped };
        sheet.set_row_height(line as u32, height(&[(&said, WIDTH)]))?;
        text(sheet, line as u32, 0, &said, style)?;
    }
    Ok(())
}
