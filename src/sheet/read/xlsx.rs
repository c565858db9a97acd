//! Office Open XML workbooks (ECMA-376, part 1, SpreadsheetML), cell by cell.
//!
//! A row that makes no sense, such as one with a cell at no place, is spoiled
//! and no other.

use std::collections::HashMap;
use std::ops::ControlFlow;

use quick_xml::events::{BytesStart, Event};

use super::package::{MOST_PARTS, Package, Xml, attribute};
use super::strings::{Strings, text_until};
use super::{Sheet, choose, no_cells, not_a_workbook, sheet_notes};
use crate::error::{Error, ErrorKind, cut};
use crate::sheet::cell::{Cell, Held};
use crate::sheet::intake::{Intake, MOST_COLUMNS};
use crate::sheet::layout::{Dialect, Feed};
use crate::sheet::report::workbook::DAY_1970;
use crate::sheet::row::RowSoFar;
use crate::units::{Date, Decimal};

/// Columns of the widest sheet that an office program can hold: XFD.
const WIDEST: usize = 16_384;
/// Rows of the longest one.
const LONGEST: usize = 1_048_576;
/// Most areas of a sheet that are merged downwards.
const MOST_MERGED: usize = 100_000;
/// Most formats of numbers; an office program allows a few hundred.
const MOST_FORMATS: usize = 10_000;
/// Most styles of cells; an office program allows 65,490.
const MOST_STYLES: usize = 1 << 16;
/// Most bytes of a unit that a format shows.
const LONGEST_UNIT: usize = 20;

/// Cells of a workbook have addresses, and its numbers are numbers: marks matter in texts only.
pub(super) const DIALECT: Dialect =
    Dialect { points_group: true, assumed: Decimal::Point, addressed: true };

/// A sheet as the workbook lists it.
struct Listed {
    name: String,
    hidden: bool,
    /// Its part, when it is a sheet of cells and there.
    part: Option<String>,
}

/// What the whole workbook has for its cells.
#[derive(Default)]
struct Book {
    sheets: Vec<Listed>,
    strings: Strings,
    /// For every style of a cell, how it shows a number.
    shown: Vec<Shown>,
    /// Whether days count from 1904.
    from_1904: bool,
}

/// Reads the sheet asked for, or the one whose headings are known.
pub(super) fn take(
    mut package: Package<'_>,
    workbook: &str,
    each: &mut dyn FnMut(f64) -> ControlFlow<()>,
) -> Result<Intake, Error> {
    let (name, options) = (package.source.name, package.source.options);
    let book = Book::read(&mut package, workbook)?;
    let mut sheets = Vec::with_capacity(book.sheets.len());
    // Names without end for one part are one sheet.
    let mut scores: HashMap<&str, usize> = HashMap::new();
    for sheet in &book.sheets {
        let score = match &sheet.part {
            Some(part) if !scores.contains_key(part.as_str()) => {
                let mut feed = Feed::new(name, options, DIALECT).probing();
                let on = &mut |_| ControlFlow::Continue(());
                read_sheet(&mut package, part, &book, &mut feed, on)?;
                scores.insert(part, feed.score());
                Some(feed.score())
            }
            Some(_) => Some(0),
            None => None,
        };
        sheets.push(Sheet { name: sheet.name.clone(), hidden: sheet.hidden, score });
    }
    let at = choose(name, options, &sheets)?;
    let Some(part) = &book.sheets[at].part else { return Err(no_cells(name, &sheets[at].name)) };
    let mut feed = Feed::new(name, options, DIALECT);
    read_sheet(&mut package, part, &book, &mut feed, each)?;
    let mut intake = feed.end()?;
    intake.notes.splice(0..0, sheet_notes(&sheets, at));
    Ok(intake)
}

impl Book {
    fn read(package: &mut Package<'_>, workbook: &str) -> Result<Self, Error> {
        let mut book = Self::default();
        let relations = package.relations(workbook)?;
        let mut xml = package.xml(workbook)?;
        let mut buffer = Vec::new();
        loop {
            match xml.next(&mut buffer)? {
                Event::Start(tag) if tag.local_name().as_ref() == "sheet" => {
                    let relation = attribute(&tag, "id").and_then(|id| relations.get(&id));
                    let cells = relation.filter(|relation| relation.kind.ends_with("/worksheet"));
                    book.sheets.push(Listed {
                        name: attribute(&tag, "name").unwrap_or_default(),
                        hidden: attribute(&tag, "state").is_some_and(|state| state != "visible"),
                        part: cells.map(|relation| relation.target.clone()),
                    });
                    if book.sheets.len() > MOST_PARTS {
                        return Err(xml.too_large("more sheets", MOST_PARTS));
                    }
                }
                Event::Start(tag) if tag.local_name().as_ref() == "workbookPr" => {
                    book.from_1904 |= is_true(attribute(&tag, "date1904"));
                }
                Event::Eof => break,
                _ => {}
            }
        }
        drop(xml);
        for sheet in &mut book.sheets {
            sheet.part = sheet.part.take().filter(|part| package.has(part));
        }
        let part = |kind: &str| {
            let part = relations.values().find(|relation| relation.kind.ends_with(kind));
            part.map(|relation| relation.target.clone())
        };
        if let Some(part) = part("/sharedStrings").filter(|part| package.has(part)) {
            book.strings = Strings::read(package, &part)?;
        }
        if let Some(part) = part("/styles").filter(|part| package.has(part)) {
            book.shown = read_styles(package, &part)?;
        }
        Ok(book)
    }
}

/// How a style shows a number.
#[derive(Clone, Debug, Default)]
struct Shown {
    /// As a day.
    day: bool,
    /// With letters behind it, such as a unit.
    unit: Option<String>,
}

/// For every style of a cell, how it shows a number.
fn read_styles(package: &mut Package<'_>, part: &str) -> Result<Vec<Shown>, Error> {
    let mut xml = package.xml(part)?;
    let (mut formats, mut styles) = (HashMap::new(), Vec::new());
    let mut inside = false;
    let mut buffer = Vec::new();
    loop {
        match xml.next(&mut buffer)? {
            Event::Start(tag) => match tag.local_name().as_ref() {
                "numFmt" => {
                    if let (Some(id), Some(code)) =
                        (attribute(&tag, "numFmtId"), attribute(&tag, "formatCode"))
                    {
                        let day = shows_days(&code);
                        let unit = if day { None } else { shows_unit(&code) };
                        formats.insert(id, Shown { day, unit });
                    }
                    if formats.len() > MOST_FORMATS {
                        return Err(xml.too_large("more formats of numbers", MOST_FORMATS));
                    }
                }
                "cellXfs" => inside = true,
                "xf" if inside => {
                    let id = attribute(&tag, "numFmtId").unwrap_or_default();
                    // The built-in formats of days (ECMA-376, part 1, 18.8.30).
                    let built_in =
                        matches!(id.parse(), Ok(14..=17 | 22 | 27..=31 | 36 | 50..=54 | 57 | 58));
                    let built_in = Shown { day: built_in, unit: None };
                    styles.push(formats.get(&id).cloned().unwrap_or(built_in));
                    if styles.len() > MOST_STYLES {
                        return Err(xml.too_large("more styles of cells", MOST_STYLES));
                    }
                }
                _ => {}
            },
            Event::End(tag) if tag.local_name().as_ref() == "cellXfs" => inside = false,
            Event::Eof => return Ok(styles),
            _ => {}
        }
    }
}

/// Whether a format of numbers shows a year or a day.
fn shows_days(code: &str) -> bool {
    let mut characters = code.chars();
    while let Some(character) = characters.next() {
        match character {
            '"' => {
                characters.by_ref().find(|c| *c == '"');
            }
            '[' => {
                characters.by_ref().find(|c| *c == ']');
            }
            '\\' | '_' | '*' => {
                characters.next();
            }
            'y' | 'Y' | 'd' | 'D' => return true,
            _ => {}
        }
    }
    false
}

/// The letters that a format puts behind a number: the unit of `0.00" in"` or `0.00\ \m\m`,
/// and not the sign before it in `"Ø "0.0`.
fn shows_unit(code: &str) -> Option<String> {
    let (mut number, mut quoted, mut unit) = (false, false, String::new());
    let mut characters = code.chars();
    while let Some(character) = characters.next() {
        match character {
            '"' => quoted = !quoted,
            // What follows is for numbers below zero.
            ';' if !quoted => break,
            '0' | '#' | '?' if !quoted => number = true,
            '\\' if !quoted => unit.extend(characters.next().filter(|_| number)),
            _ if quoted && number => unit.push(character),
            _ => {}
        }
    }
    let unit = unit.trim();
    (unit.chars().any(char::is_alphabetic) && unit.len() <= LONGEST_UNIT).then(|| unit.to_owned())
}

fn is_true(attribute: Option<String>) -> bool {
    matches!(attribute.as_deref(), Some("1" | "true" | "on"))
}

/// Row (from 1) and column (from 0) of a cell.
type Place = (usize, usize);

/// The last cell of every merged area, by its first.
fn read_merged(package: &mut Package<'_>, part: &str) -> Result<HashMap<Place, Place>, Error> {
    let mut merged = HashMap::new();
    let mut xml = package.xml(part)?;
    let mut buffer = Vec::new();
    loop {
        match xml.next(&mut buffer)? {
            Event::Start(tag) if tag.local_name().as_ref() == "mergeCell" => {
                let area = attribute(&tag, "ref").unwrap_or_default();
                let corners = area.split_once(':').and_then(|(first, last)| {
                    Some((place(first.as_bytes())?, place(last.as_bytes())?))
                });
                merged.extend(corners);
                if merged.len() > MOST_MERGED {
                    return Err(xml.too_large("more merged cells", MOST_MERGED));
                }
            }
            Event::Eof => return Ok(merged),
            _ => {}
        }
    }
}

/// Row (from 1) and column (from 0) of a reference such as `B7`.
fn place(reference: &[u8]) -> Option<Place> {
    let split = reference.iter().position(u8::is_ascii_digit)?;
    let (letters, digits) = reference.split_at(split);
    if letters.is_empty() || letters.len() > 3 || digits.len() > 7 {
        return None;
    }
    let mut column = 0;
    for letter in letters {
        if !letter.is_ascii_alphabetic() {
            return None;
        }
        column = column * 26 + usize::from(letter.to_ascii_uppercase() - b'A') + 1;
    }
    let row = std::str::from_utf8(digits).ok()?.parse().ok()?;
    ((1..=LONGEST).contains(&row) && column <= WIDEST).then_some((row, column - 1))
}

fn read_sheet(
    package: &mut Package<'_>,
    part: &str,
    book: &Book,
    feed: &mut Feed<'_>,
    each: &mut dyn FnMut(f64) -> ControlFlow<()>,
) -> Result<(), Error> {
    let name = package.source.name;
    let merged = if package.merges(part) { read_merged(package, part)? } else { HashMap::new() };
    let size = package.size(part).max(1) as f64;
    let mut xml = package.xml(part)?;
    let (mut buffer, mut inner) = (Vec::new(), Vec::new());
    let (mut row, mut rows, mut inside) = (RowSoFar::default(), 0, false);
    // The number of the last row that had a sound one, and columns looked at for hidden ones.
    let (mut before, mut hidden) = (0, 0);
    loop {
        match xml.next(&mut buffer)? {
            Event::Start(tag) => match tag.local_name().as_ref() {
                "sheetData" => inside = true,
                "col" if is_true(attribute(&tag, "hidden")) => {
                    let bound = |name| attribute(&tag, name)?.parse::<usize>().ok()?.checked_sub(1);
                    let (first, last) = (bound("min").unwrap_or(0), bound("max").unwrap_or(0));
                    // They come in order; what comes again hides nothing more.
                    let fresh = first.max(hidden)..(last + 1).min(MOST_COLUMNS);
                    hidden = hidden.max(fresh.end);
                    fresh.for_each(|column| feed.hide_column(column));
                }
                "row" if inside => {
                    let number = attribute(&tag, "r").map(|r| r.parse::<usize>());
                    row = RowSoFar { number: before + 1, ..RowSoFar::default() };
                    row.facts.hidden = is_true(attribute(&tag, "hidden"));
                    match number {
                        None => before += 1,
                        Some(Ok(number)) if number > before && number <= LONGEST => {
                            (row.number, before) = (number, number);
                        }
                        _ => row.spoil(
                            "has a number that is none, or not above that of the row before it",
                        ),
                    }
                }
                "c" if inside => {
                    let tag = tag.into_owned();
                    let cell = read_cell(&mut xml, &tag, book, &mut row, &mut inner)?;
                    feed.count(1, &cell)?;
                    row.put(row.next_column - 1, cell);
                }
                _ => {}
            },
            Event::End(tag) if inside => match tag.local_name().as_ref() {
                "row" => {
                    let borrowed: Vec<Cell<'_>> = row.cells.iter().map(Held::cell).collect();
                    if !merged.is_empty() {
                        for (column, cell) in borrowed.iter().enumerate() {
                            if let Some(last) = merged.get(&(row.number, column)) {
                                feed.merge((row.number, column), *last, *cell);
                            }
                        }
                    }
                    feed.row(row.number, &borrowed, std::mem::take(&mut row.facts))?;
                    if feed.has_enough() {
                        return Ok(());
                    }
                    rows += 1;
                    if rows % 1024 == 0 && each((xml.position() as f64 / size).min(1.0)).is_break()
                    {
                        return Err(ErrorKind::Stopped { rows }.into());
                    }
                }
                "sheetData" => return Ok(()),
                _ => {}
            },
            Event::Eof if inside => {
                return Err(not_a_workbook(
                    name,
                    "ends in the middle of a sheet",
                    "open it in an office program and save it again",
                ));
            }
            Event::Eof => return Ok(()),
            _ => {}
        }
    }
}

/// Reads one cell to its end, and moves its row on to the next.
fn read_cell(
    xml: &mut Xml<'_>,
    tag: &BytesStart<'_>,
    book: &Book,
    row: &mut RowSoFar,
    buffer: &mut Vec<u8>,
) -> Result<Held, Error> {
    let mut column = row.next_column;
    let (mut kind, mut style) = (None, None);
    for attribute in tag.attributes() {
        // What can't be read may have said where the cell is, or what it is.
        let Ok(attribute) = attribute else {
            row.spoil("has a cell with attributes that can't be taken apart");
            continue;
        };
        let value = attribute.value.as_ref();
        match attribute.key.local_name().as_ref() {
            "r" => match place(value.as_bytes()) {
                Some((number, at)) if number == row.number && at >= row.next_column => column = at,
                _ => row.spoil(&format!("has a cell at {:?}, out of place", cut(value))),
            },
            "t" => kind = Some(value.to_owned()),
            "s" => style = value.parse::<usize>().ok(),
            _ => {}
        }
    }
    row.next_column = column + 1;
    let (mut value, mut formula, mut text) = (None, false, None);
    loop {
        match xml.next(buffer)? {
            Event::Start(inner) => match inner.local_name().as_ref() {
                "v" => value = Some(text_until(xml, "v")?),
                "f" => formula = true,
                "is" => text = Some(text_until(xml, "is")?),
                _ => {}
            },
            Event::End(inner) if inner.local_name().as_ref() == "c" => break,
            Event::Eof => return Err(xml.cut_off()),
            _ => {}
        }
    }
    Ok(match (text, value.filter(|value| !value.is_empty())) {
        (Some(text), _) => Held::Text(text.into()),
        (None, None) if formula && kind.as_deref() != Some("str") => {
            Held::Fault("a formula that nobody has worked out yet".into())
        }
        (None, None) => Held::Blank,
        (None, Some(value)) => book.value(kind.as_deref(), style, value),
    })
}

impl Book {
    /// What the text of a cell's value means.
    fn value(&self, kind: Option<&str>, style: Option<usize>, value: String) -> Held {
        match kind {
            Some("s") => match value.trim().parse().ok().and_then(|at| self.strings.get(at)) {
                Some(text) => Held::Text(text.into()),
                None => {
                    Held::Fault(format!("the shared text {value:?}, which is not there").into())
                }
            },
            Some("str" | "inlineStr") => Held::Text(value.into()),
            Some("b") => Held::Truth(matches!(value.trim(), "1" | "true")),
            Some("e") => Held::Fault(format!("the error {}", value.trim()).into()),
            Some("d") => {
                let day = value.get(..10).and_then(|day| Date::read(day).ok());
                day.map_or_else(|| Held::Text(value.into()), |day| Held::Day(day.days()))
            }
            Some("n") | None => match value.trim().parse::<f64>() {
                Ok(number) if number.is_finite() => self.number(number, style),
                _ => Held::Text(value.into()),
            },
            Some(other) => {
                Held::Fault(format!("a value of the unknown kind {:?}", cut(other)).into())
            }
        }
    }

    /// A number, or the day that its style shows it as.
    fn number(&self, number: f64, style: Option<usize>) -> Held {
        let shown = style.and_then(|style| self.shown.get(style)).cloned().unwrap_or_default();
        if let Some(unit) = shown.unit {
            // What everybody sees has a unit of its own.
            return Held::Text(format!("{number} {unit}").into());
        }
        if !shown.day || !(0.0..3e6).contains(&number) {
            return Held::Number(number);
        }
        // 1970-01-01 is day 24,107 where days count from 1904.
        // The first has a day too many, 29 February 1900, which never was.
        let serial = number.floor() as i64;
        Held::Day(match (self.from_1904, serial) {
            (true, _) => serial - 24_107,
            (false, ..60) => serial - DAY_1970 + 1,
            (false, _) => serial - DAY_1970,
        })
    }
}
