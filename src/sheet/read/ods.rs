//! OpenDocument spreadsheets (ISO/IEC 26300), cell by cell.
//!
//! Rows and cells are written once with how often they are repeated: a
//! billion blank ones take no time here, and filled ones count against the caps.

use std::ops::ControlFlow;

use quick_xml::events::{BytesStart, Event};

use super::package::{Package, Xml, add_reference, attribute, damaged};
use super::xlsx::{DIALECT, MOST_CELLS, too_many_cells};
use super::{Sheet, choose, not_a_workbook, sheet_notes};
use crate::error::{Error, ErrorKind};
use crate::sheet::cell::{Cell, Held};
use crate::sheet::intake::{Intake, MOST_CHARACTERS, MOST_COLUMNS};
use crate::sheet::layout::{Feed, RowSoFar};
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
    for (at, sheet) in sheets.iter_mut().enumerate() {
        let mut feed = Feed::new(name, options, DIALECT).probing();
        read_sheet(&mut package, at, &mut feed, &mut |_| ControlFlow::Continue(()))?;
        sheet.score = Some(feed.score());
    }
    let at = choose(name, options, &sheets)?;
    let mut feed = Feed::new(name, options, DIALECT);
    read_sheet(&mut package, at, &mut feed, each)?;
    let mut intake = feed.end()?;
    intake.notes.splice(0..0, sheet_notes(&sheets, at));
    Ok(intake)
}

/// Whether its parts are encrypted.
fn locked(package: &mut Package<'_>) -> Result<bool, Error> {
    const MANIFEST: &str = "META-INF/manifest.xml";
    if !package.has(MANIFEST) {
        return Ok(false);
    }
    let name = package.source.name;
    let mut xml = package.xml(MANIFEST)?;
    let mut buffer = Vec::new();
    loop {
        match next(&mut xml, &mut buffer, name)? {
            Event::Start(tag) if tag.local_name().as_ref() == "encryption-data" => return Ok(true),
            Event::Eof => return Ok(false),
            _ => {}
        }
    }
}

/// The sheets, none of them looked at.
fn list(package: &mut Package<'_>) -> Result<Vec<Sheet>, Error> {
    let name = package.source.name;
    let mut xml = package.xml(PART)?;
    let (mut sheets, mut hidden_styles) = (Vec::new(), Vec::new());
    let (mut depth, mut style) = (0_usize, String::new());
    let mut buffer = Vec::new();
    loop {
        match next(&mut xml, &mut buffer, name)? {
            Event::Start(tag) => match tag.local_name().as_ref() {
                "style" => style = attribute(&tag, "name").unwrap_or_default(),
                "table-properties" if attribute(&tag, "display").as_deref() == Some("false") => {
                    hidden_styles.push(style.clone());
                }
                "table" => {
                    if depth == 0 {
                        let hidden = attribute(&tag, "style-name")
                            .is_some_and(|style| hidden_styles.contains(&style));
                        let name = attribute(&tag, "name").unwrap_or_default();
                        sheets.push(Sheet { name, hidden, score: None });
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

fn next<'b>(xml: &mut Xml<'_>, buffer: &'b mut Vec<u8>, name: &str) -> Result<Event<'b>, Error> {
    buffer.clear();
    xml.read_event_into(buffer).map_err(|error| damaged(name, &error))
}

/// How often a row or cell comes, or over how many a merged one reaches.
fn times(tag: &BytesStart<'_>, attribute_name: &str) -> usize {
    // What is no number is taken for one: a cell that is there must not vanish.
    attribute(tag, attribute_name).and_then(|text| text.parse().ok()).unwrap_or(1).max(1)
}

fn read_sheet(
    package: &mut Package<'_>,
    wanted: usize,
    feed: &mut Feed<'_>,
    each: &mut dyn FnMut(f64) -> ControlFlow<()>,
) -> Result<(), Error> {
    let name = package.source.name;
    let size = package.size(PART).max(1) as f64;
    let mut xml = package.xml(PART)?;
    let mut buffer = Vec::new();
    let (mut sheet, mut depth, mut columns) = (0, 0_usize, 0_usize);
    let (mut row, mut repeated, mut cells, mut rows) = (RowSoFar::default(), 1, 0_usize, 0_usize);
    loop {
        let here = depth == 1 && sheet == wanted + 1;
        match next(&mut xml, &mut buffer, name)? {
            Event::Start(tag) => match tag.local_name().as_ref() {
                "table" => {
                    sheet += usize::from(depth == 0);
                    depth += 1;
                }
                "table-column" if here => {
                    let again = times(&tag, "number-columns-repeated");
                    if attribute(&tag, "visibility").is_some_and(|word| word != "visible") {
                        let end = columns.saturating_add(again).min(MOST_COLUMNS);
                        (columns..end).for_each(|column| feed.hide_column(column));
                    }
                    columns = columns.saturating_add(again);
                }
                "table-row" if here => {
                    row = RowSoFar { number: row.number.saturating_add(1), ..RowSoFar::default() };
                    repeated = times(&tag, "number-rows-repeated");
                    let visibility = attribute(&tag, "visibility");
                    row.facts.hidden = visibility.is_some_and(|word| word != "visible");
                }
                "table-cell" | "covered-table-cell" if here => {
                    let tag = tag.into_owned();
                    let (mut cell, end) = (read_cell(&mut xml, &tag, name)?, row.next_column);
                    if tag.local_name().as_ref() == "covered-table-cell" {
                        // Nobody sees what is under a merged neighbour.
                        cell = Held::Blank;
                    }
                    let again = times(&tag, "number-columns-repeated");
                    row.next_column = end.saturating_add(again);
                    if cell != Held::Blank {
                        let over = times(&tag, "number-rows-spanned");
                        if over > 1 && end < MOST_COLUMNS {
                            let last = (row.number.saturating_add(over - 1), end);
                            feed.merge((row.number, end), last, cell.cell());
                        }
                        for column in (end..row.next_column).take(MOST_COLUMNS + 1) {
                            row.put(column, cell.clone());
                        }
                        cells = cells.saturating_add(again);
                    }
                    if cells > MOST_CELLS {
                        return Err(too_many_cells(name));
                    }
                }
                _ => {}
            },
            Event::End(tag) => match tag.local_name().as_ref() {
                "table" => {
                    depth = depth.saturating_sub(1);
                    if depth == 0 && sheet == wanted + 1 {
                        return Ok(());
                    }
                }
                "table-row" if here => {
                    let borrowed: Vec<Cell<'_>> = row.cells.iter().map(Held::cell).collect();
                    let filled = borrowed.iter().any(|cell| !cell.is_blank());
                    let first = row.number;
                    for again in 0..if filled { repeated } else { 1 } {
                        feed.row(first.saturating_add(again), &borrowed, row.facts.clone())?;
                        cells = cells.saturating_add(if again > 0 { borrowed.len() } else { 0 });
                        if cells > MOST_CELLS {
                            return Err(too_many_cells(name));
                        }
                    }
                    drop(borrowed);
                    if feed.has_enough() {
                        return Ok(());
                    }
                    row.number = first.saturating_add(repeated - 1);
                    rows += 1;
                    if rows.is_multiple_of(1024)
                        && each((xml.buffer_position() as f64 / size).min(1.0)).is_break()
                    {
                        return Err(ErrorKind::Stopped { rows }.into());
                    }
                }
                _ => {}
            },
            Event::Eof => {
                return Err(not_a_workbook(
                    name,
                    "ends in the middle of a sheet",
                    "open it in an office program and save it again",
                ));
            }
            _ => {}
        }
    }
}

/// Reads one cell to its end.
fn read_cell(xml: &mut Xml<'_>, tag: &BytesStart<'_>, name: &str) -> Result<Held, Error> {
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
    let text = shown(xml, &end, name)?;
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
fn shown(xml: &mut Xml<'_>, end: &str, name: &str) -> Result<String, Error> {
    let (mut text, mut buffer) = (String::new(), Vec::new());
    let (mut aside, mut depth, mut paragraphs) = (0_usize, 0_usize, 0);
    loop {
        match next(xml, &mut buffer, name)? {
            Event::Start(tag) => {
                depth += 1;
                match tag.local_name().as_ref() {
                    _ if aside > 0 => aside += 1,
                    "annotation" | "frame" | "g" | "custom-shape" | "table" | "control" => {
                        aside = 1
                    }
                    "p" => {
                        if paragraphs > 0 {
                            text.push('\n');
                        }
                        paragraphs += 1;
                    }
                    "s" => {
                        let spaces = times(&tag, "c").min(MOST_CHARACTERS);
                        text.extend(std::iter::repeat_n(' ', spaces));
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
            Event::Eof => return Err(damaged(name, &"a cell without an end")),
            _ => {}
        }
        // Many small pieces can add up to more than any one. What is left is still
        // too long for a cell, so that its row is told to be.
        if text.len() > 16 * MOST_CHARACTERS {
            let end = (0..=5 * MOST_CHARACTERS).rev().find(|at| text.is_char_boundary(*at));
            text.truncate(end.unwrap_or(0));
        }
    }
}
