//! OpenDocument spreadsheets (ISO/IEC 26300), cell by cell.
//!
//! Rows and cells are written once with how often they are repeated: a
//! billion blank ones take no time here, and filled ones count against the caps.

use std::collections::HashSet;
use std::num::IntErrorKind;
use std::ops::ControlFlow;

use quick_xml::events::{BytesStart, Event};

use super::package::{MOST_PARTS, Package, Xml, add_reference, attribute};
use super::strings::{LONGEST_TEXT, shorten};
use super::xlsx::DIALECT;
use super::{Sheet, choose, no_cells, not_a_workbook, sheet_notes};
use crate::error::{Error, ErrorKind};
use crate::sheet::cell::{Cell, Held};
use crate::sheet::intake::{Intake, MOST_COLUMNS};
use crate::sheet::layout::Feed;
use crate::sheet::row::RowSoFar;
use crate::units::Date;

const PART: &str = "content.xml";

/// Reads the sheet asked for, or the one whose headings are known.
pub(super) fn take(
    mut package: Package<'_>,
    each: &mut dyn FnMut(f64) -> ControlFlow<()>,
) -> Result<Intake, Error> {
    let (name, options) = (package.source.name, package.source.options);
    if locked(&mut package)? {
        return Err(not_a_workbook(
            name,
            "is locked with a password",
            "save it without a password",
        ));
    }
    let mut sheets = list(&mut package)?;
    let probing = |_| Some(Feed::new(name, options, DIALECT).probing());
    let on = &mut |_| ControlFlow::Continue(());
    go_through(&mut package, &probing, on, &mut |at, feed| {
        if let Some(sheet) = sheets.get_mut(at) {
            sheet.score = Some(feed.score());
        }
        ControlFlow::Continue(())
    })?;
    let chosen = choose(name, options, &sheets)?;
    let reading = |at| (at == chosen).then(|| Feed::new(name, options, DIALECT));
    let mut read = None;
    go_through(&mut package, &reading, each, &mut |_, feed| {
        read = Some(feed);
        ControlFlow::Break(())
    })?;
    let Some(feed) = read else { return Err(no_cells(name, &sheets[chosen].name)) };
    let mut intake = feed.end()?;
    intake.notes.splice(0..0, sheet_notes(&sheets, chosen));
    Ok(intake)
}

/// Whether its parts are encrypted.
fn locked(package: &mut Package<'_>) -> Result<bool, Error> {
    const MANIFEST: &str = "meta-inf/manifest.xml";
    if !package.has(MANIFEST) {
        return Ok(false);
    }
    let mut xml = package.xml(MANIFEST)?;
    let mut buffer = Vec::new();
    loop {
        match xml.next(&mut buffer)? {
            Event::Start(tag) if tag.local_name().as_ref() == "encryption-data" => return Ok(true),
            Event::Eof => return Ok(false),
            _ => {}
        }
    }
}

/// The sheets, none of them looked at.
fn list(package: &mut Package<'_>) -> Result<Vec<Sheet>, Error> {
    let mut xml = package.xml(PART)?;
    let (mut sheets, mut hidden_styles) = (Vec::new(), HashSet::new());
    let (mut depth, mut style) = (0_usize, String::new());
    let mut buffer = Vec::new();
    loop {
        match xml.next(&mut buffer)? {
            Event::Start(tag) => match tag.local_name().as_ref() {
                "style" => style = attribute(&tag, "name").unwrap_or_default(),
                "table-properties" if attribute(&tag, "display").as_deref() == Some("false") => {
                    hidden_styles.insert(std::mem::take(&mut style));
                }
                "table" => {
                    if depth == 0 {
                        let hidden = attribute(&tag, "style-name")
                            .is_some_and(|style| hidden_styles.contains(&style));
                        let name = attribute(&tag, "name").unwrap_or_default();
                        sheets.push(Sheet { name, hidden, score: None });
                    }
                    if sheets.len() > MOST_PARTS {
                        return Err(xml.too_large("more sheets", MOST_PARTS));
                    }
                    depth += 1;
                }
                _ => {}
            },
            Event::End(tag) if tag.local_name().as_ref() == "table" => {
                depth = depth.saturating_sub(1);
            }
            Event::Eof => return Ok(sheets),
            _ => {}
        }
    }
}

/// How often a row or cell comes, or over how many a merged one reaches.
fn times(tag: &BytesStart<'_>, attribute_name: &str) -> usize {
    let Some(text) = attribute(tag, attribute_name) else { return 1 };
    match text.parse::<usize>() {
        Ok(times) => times.max(1),
        Err(error) if *error.kind() == IntErrorKind::PosOverflow => usize::MAX,
        // What is no number is taken for one: a cell that is there must not vanish.
        Err(_) => 1,
    }
}

/// The rows of one sheet on their way to its feed.
struct Rows<'f> {
    feed: Feed<'f>,
    row: RowSoFar,
    /// How often the row comes.
    repeated: usize,
    /// Columns that were declared.
    columns: usize,
}

impl Rows<'_> {
    fn start_row(&mut self, tag: &BytesStart<'_>) {
        let number = self.row.number.saturating_add(1);
        self.row = RowSoFar { number, ..RowSoFar::default() };
        self.repeated = times(tag, "number-rows-repeated");
        let visibility = attribute(tag, "visibility");
        self.row.facts.hidden = visibility.is_some_and(|word| word != "visible");
    }

    fn column(&mut self, tag: &BytesStart<'_>) {
        let end = self.columns.saturating_add(times(tag, "number-columns-repeated"));
        if attribute(tag, "visibility").is_some_and(|word| word != "visible") {
            (self.columns..end.min(MOST_COLUMNS)).for_each(|column| self.feed.hide_column(column));
        }
        self.columns = end;
    }

    fn cell(&mut self, tag: &BytesStart<'_>, mut cell: Held) -> Result<(), Error> {
        if tag.local_name().as_ref() == "covered-table-cell" {
            // Nobody sees what is under a merged neighbour.
            cell = Held::Blank;
        }
        let first = self.row.next_column;
        let again = times(tag, "number-columns-repeated");
        self.row.next_column = first.saturating_add(again);
        if cell == Held::Blank {
            return Ok(());
        }
        self.feed.count(again, &cell)?;
        let over = times(tag, "number-rows-spanned");
        if over > 1 && first < MOST_COLUMNS {
            let last_row = self.row.number.saturating_add(over - 1);
            self.feed.merge((self.row.number, first), (last_row, first), cell.cell());
        }
        for column in (first.min(MOST_COLUMNS)..self.row.next_column).take(MOST_COLUMNS + 1) {
            self.row.put(column, cell.clone());
        }
        Ok(())
    }

    fn end_row(&mut self) -> Result<(), Error> {
        let row = &self.row;
        let cells: Vec<Cell<'_>> = row.cells.iter().map(Held::cell).collect();
        let filled = cells.iter().any(|cell| !cell.is_blank());
        if filled {
            self.feed.repeat(self.repeated)?;
            row.cells.iter().try_for_each(|cell| self.feed.count(self.repeated - 1, cell))?;
        }
        for again in 0..if filled { self.repeated } else { 1 } {
            if self.feed.has_enough() {
                break;
            }
            self.feed.row(row.number.saturating_add(again), &cells, row.facts.clone())?;
        }
        self.row.number = row.number.saturating_add(self.repeated - 1);
        Ok(())
    }
}

/// Goes through the part that holds all sheets, once: each sheet for which there is a
/// feed is read into it and handed on.
fn go_through<'f>(
    package: &mut Package<'_>,
    feed_for: &dyn Fn(usize) -> Option<Feed<'f>>,
    each: &mut dyn FnMut(f64) -> ControlFlow<()>,
    ended: &mut dyn FnMut(usize, Feed<'f>) -> ControlFlow<()>,
) -> Result<(), Error> {
    let name = package.source.name;
    let size = package.size(PART).max(1) as f64;
    let mut xml = package.xml(PART)?;
    let mut buffer = Vec::new();
    let (mut place, mut depth, mut rows) = (0, 0_usize, 0_usize);
    let mut sheet: Option<Rows<'f>> = None;
    loop {
        match (xml.next(&mut buffer)?, &mut sheet) {
            (Event::Start(tag), here) => match (tag.local_name().as_ref(), here) {
                ("table", _) => {
                    depth += 1;
                    if depth == 1 {
                        sheet = feed_for(place).map(|feed| Rows {
                            feed,
                            row: RowSoFar::default(),
                            repeated: 1,
                            columns: 0,
                        });
                    }
                }
                ("table-column", Some(sheet)) if depth == 1 => sheet.column(&tag),
                ("table-row", Some(sheet)) if depth == 1 => sheet.start_row(&tag),
                ("table-cell" | "covered-table-cell", Some(sheet)) if depth == 1 => {
                    let tag = tag.into_owned();
                    let cell = read_cell(&mut xml, &tag)?;
                    sheet.cell(&tag, cell)?;
                }
                _ => {}
            },
            (Event::End(tag), here) => match (tag.local_name().as_ref(), here) {
                ("table", _) => {
                    depth = depth.saturating_sub(1);
                    if depth == 0 {
                        if let Some(sheet) = sheet.take()
                            && ended(place, sheet.feed).is_break()
                        {
                            return Ok(());
                        }
                        place += 1;
                    }
                }
                ("table-row", Some(sheet)) if depth == 1 => {
                    rows += 1;
                    if rows.is_multiple_of(1024)
                        && each((xml.position() as f64 / size).min(1.0)).is_break()
                    {
                        return Err(ErrorKind::Stopped { rows }.into());
                    }
                    sheet.end_row()?;
                }
                _ => {}
            },
            (Event::Eof, Some(_)) => {
                return Err(not_a_workbook(
                    name,
                    "ends in the middle of a sheet",
                    "open it in an office program and save it again",
                ));
            }
            (Event::Eof, None) => return Ok(()),
            _ => {}
        }
    }
}

/// Reads one cell to its end.
fn read_cell(xml: &mut Xml<'_>, tag: &BytesStart<'_>) -> Result<Held, Error> {
    let (mut kind, mut value, mut formula, mut error) = (None, None, false, false);
    for attribute in tag.attributes().flatten() {
        let text = attribute.value.as_ref();
        match attribute.key.local_name().as_ref() {
            // LibreOffice says in a namespace of its own that a value is an error.
            "value-type" if text == "error" => error = true,
            "value-type" if kind.is_none() => kind = Some(text.to_owned()),
            "value" | "date-value" | "boolean-value" => value = Some(text.to_owned()),
            "formula" => formula = true,
            _ => {}
        }
    }
    let end = tag.local_name().as_ref().to_owned();
    let mut text = shown(xml, &end)?;
    if text.is_empty() && kind.as_deref() == Some("string") {
        text = attribute(tag, "string-value").unwrap_or_default();
    }
    let day = |value: &str| value.get(..10).and_then(|day| Date::read(day).ok());
    Ok(match (kind.as_deref(), value) {
        _ if error => Held::Fault(format!("the error {}", text.trim()).into()),
        (Some("float" | "currency" | "percentage"), Some(value)) => match value.parse::<f64>() {
            Ok(number) if number.is_finite() => Held::Number(number),
            _ => Held::Text(value.into()),
        },
        (Some("date"), Some(value)) => {
            day(&value).map_or_else(|| Held::Text(value.into()), |day| Held::Day(day.days()))
        }
        (Some("boolean"), Some(value)) => Held::Truth(value == "true"),
        (None, _) if formula && text.is_empty() => {
            Held::Fault("a formula that nobody has worked out yet".into())
        }
        _ if text.is_empty() => Held::Blank,
        _ => Held::Text(text.into()),
    })
}

/// The text that a cell shows: its paragraphs, without notes and drawings.
fn shown(xml: &mut Xml<'_>, end: &str) -> Result<String, Error> {
    let (mut text, mut buffer) = (String::new(), Vec::new());
    let (mut aside, mut depth, mut paragraphs) = (0_usize, 0_usize, 0);
    loop {
        match xml.next(&mut buffer)? {
            Event::Start(tag) => {
                depth += 1;
                match tag.local_name().as_ref() {
                    _ if aside > 0 => aside += 1,
                    // Notes, drawings, and how to pronounce a word.
                    "annotation" | "frame" | "g" | "custom-shape" | "table" | "control"
                    | "ruby-text" => aside = 1,
                    "p" => {
                        if paragraphs > 0 {
                            text.push('\n');
                        }
                        paragraphs += 1;
                    }
                    "s" => {
                        let room = LONGEST_TEXT.saturating_sub(text.len());
                        text.extend(std::iter::repeat_n(' ', times(&tag, "c").min(room)));
                    }
                    "tab" => text.push('\t'),
                    "line-break" => text.push('\n'),
                    _ => {}
                }
            }
            Event::End(tag) => {
                if depth == 0 && tag.local_name().as_ref() == end {
                    return Ok(text);
                }
                depth = depth.saturating_sub(1);
                aside = aside.saturating_sub(1);
            }
            // Between paragraphs there is only what lays the file out.
            Event::Text(part) if aside == 0 && depth > 0 => text.push_str(&part.xml10_content()),
            Event::CData(part) if aside == 0 && depth > 0 => text.push_str(&part.xml10_content()),
            Event::GeneralRef(part) if aside == 0 && depth > 0 => add_reference(&part, &mut text),
            Event::Eof => return Err(xml.cut_off()),
            _ => {}
        }
        shorten(&mut text);
    }
}
