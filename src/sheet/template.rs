//! An empty rack to fill in: every heading, explained, with one example row.

use std::path::Path;

use rust_xlsxwriter::{
    DataValidation, DataValidationErrorStyle, Format, FormatAlign, Formula, Note, Workbook,
    Worksheet, XlsxError,
};

use super::demo;
use super::heading::{self, Column, MARKINGS};
use super::report::workbook::{failed, heading_style, height, paper, text};
use super::report::write_whole;
use crate::error::{Error, ErrorKind};
use crate::mounting::sort::INCH_UNITS;
use crate::mounting::{FIELDS, Field, NoneMeans};
use crate::units::{Decimal, Shop, number};

/// Rows that have lists to choose from.
const ROWS: u32 = 1000;
/// What the example is called, so that nobody takes it for a mounting of theirs.
const EXAMPLE: &str = "example: write over me";

/// Writes a workbook to fill in, in the units of a shop.
///
/// # Errors
///
/// [`ErrorKind::UnknownWord`] for another ending than `.xlsx`,
/// [`ErrorKind::File`] when it can't be written, or is there already.
pub fn write(path: &Path, shop: Shop) -> Result<(), Error> {
    let ending = path.extension().map(|ending| ending.to_string_lossy().to_lowercase());
    if ending.as_deref() != Some("xlsx") {
        return Err(ErrorKind::UnknownWord {
            argument: "template".into(),
            text: path.display().to_string(),
            allowed: ".xlsx".into(),
            hint: "name the workbook like \"rack.xlsx\"".into(),
        }
        .into());
    }
    if path.exists() {
        return Err(ErrorKind::File {
            path: path.display().to_string(),
            action: "written",
            why: "it is there already, and may hold a rack".into(),
            hint: "name a new file",
        }
        .into());
    }
    write_whole(path, |out| {
        let mut workbook = Workbook::new();
        let words = words_by_field();
        rack(workbook.add_worksheet(), shop, &words).map_err(failed)?;
        headings(workbook.add_worksheet(), shop).map_err(failed)?;
        lists(workbook.add_worksheet(), &words).map_err(failed)?;
        out.write_all(&workbook.save_to_buffer().map_err(failed)?)
    })
}

/// What the column `wheel marking` is for.
const MARKING: &str = "What is written on the wheel, like 40A 60 K 7 V A1 35 m/s. It fills what the row leaves blank: shape, diameter, thickness, nominal hole, abrasive, bond and speeds. Of two speeds the lower counts. \"none\" where there is none.";

/// The lists of words, each once, with the fields that choose from it.
type Lists = Vec<(Vec<&'static str>, Vec<usize>)>;

fn words_by_field() -> Lists {
    let mut lists: Lists = Vec::new();
    for (at, field) in FIELDS.iter().enumerate() {
        let mut words = (field.sort.words)();
        if words.is_empty() {
            continue;
        }
        // Of yes and no, `none` is no.
        if field.none == NoneMeans::Absent && field.sort.name != "yes or no" {
            words.push("none");
        }
        match lists.iter_mut().find(|(known, _)| *known == words) {
            Some((_, fields)) => fields.push(at),
            None => lists.push((words, vec![at])),
        }
    }
    lists
}

/// The unit of a field in a shop; nothing for words and dates.
fn unit(field: &Field, shop: Shop) -> Option<&'static str> {
    let units = (field.sort.units)();
    let inch = units.iter().find(|unit| INCH_UNITS.contains(*unit));
    match shop {
        Shop::Inch => inch.or(units.first()).copied(),
        Shop::Metric => units.first().copied(),
    }
}

fn full_heading(field: &Field, shop: Shop) -> String {
    match unit(field, shop) {
        Some(unit) => format!("{} [{unit}]", field.heading()),
        None => field.heading(),
    }
}

/// What the example says of each field: the first mounting of the demo rack,
/// and of what that leaves out, that there is none.
fn example(shop: Shop) -> Vec<String> {
    let rack = match shop {
        Shop::Metric => demo::POINT,
        Shop::Inch => demo::INCH,
    };
    let mut reader = csv::Reader::from_reader(rack.as_bytes());
    let headings = reader.headers().cloned().unwrap_or_default();
    let row = reader.records().flatten().next().unwrap_or_default();
    let mut given = vec![None; FIELDS.len()];
    for (heading, cell) in headings.iter().zip(&row) {
        if let Ok(Column::Datum { fields, .. }) = heading::read(heading) {
            for field in fields {
                given[field] = Some(cell.to_owned());
            }
        }
    }
    let of_the_other = |field: &Field| {
        let other = field.place.replace("loose_", "fixed_");
        let is = |at: &usize| FIELDS[*at].place == other && FIELDS[*at].name == field.name;
        (0..FIELDS.len()).find(is).and_then(|at| given[at].clone())
    };
    let said = |(at, field): (usize, &Field)| {
        given[at].clone().or_else(|| of_the_other(field)).unwrap_or_else(|| match field.none {
            NoneMeans::Zero => "0".into(),
            NoneMeans::Absent if field.sort.name == "yes or no" => "no".into(),
            NoneMeans::Absent => "none".into(),
            NoneMeans::Refused => field.sort.example.into(),
        })
    };
    FIELDS.iter().enumerate().map(said).collect()
}

/// What `none` says under a heading, where it may stand.
fn none_says(field: &Field) -> &'static str {
    match field.none {
        _ if field.sort.name == "yes or no" => "",
        NoneMeans::Zero => " \"none\" is 0.",
        NoneMeans::Absent => " \"none\" where there is none.",
        NoneMeans::Refused => "",
    }
}

fn takes(field: &Field, shop: Shop) -> String {
    let words = (field.sort.words)();
    match unit(field, shop) {
        Some(unit) => format!("{} in {unit}, or with a unit of its own", field.sort.name),
        None if words.is_empty() => format!("{} like {}", field.sort.name, field.sort.example),
        None => format!("one of: {}", words.join(", ")),
    }
}

fn rack(sheet: &mut Worksheet, shop: Shop, lists: &Lists) -> Result<(), XlsxError> {
    sheet.set_name("rack")?;
    paper(sheet, shop);
    sheet.set_landscape().set_repeat_rows(0, 0)?.set_repeat_columns(0, 0)?;
    sheet.set_print_gridlines(true).set_freeze_panes(1, 1)?;
    sheet.set_row_height(0, 62)?;
    sheet.set_column_width(0, 24)?;
    let (heading, plain) = (heading_style(), Format::new().set_align(FormatAlign::Left));
    text(sheet, 0, 0, "mounting", &heading)?;
    note(sheet, 0, "What the shop calls it: one wheel on one hub on one spindle.")?;
    text(sheet, 1, 0, EXAMPLE, &plain)?;
    sheet.set_column_width(1, 24)?;
    text(sheet, 0, 1, MARKINGS[0], &heading)?;
    note(sheet, 1, MARKING)?;
    text(sheet, 1, 1, "none", &plain)?;
    for (at, (field, said)) in FIELDS.iter().zip(example(shop)).enumerate() {
        let column = at as u16 + 2;
        sheet.set_column_width(column, 12.5)?;
        text(sheet, 0, column, &full_heading(field, shop), &heading)?;
        note(
            sheet,
            column,
            &format!("{} Takes {}.{}", field.doc.trim(), takes(field, shop), none_says(field)),
        )?;
        match number(&said, Decimal::Point) {
            Ok(value) if unit(field, shop).is_some() => {
                sheet.write_number_with_format(1, column, value, &plain)?;
            }
            _ => text(sheet, 1, column, &said, &plain)?,
        }
    }
    for (list, (words, fields)) in lists.iter().enumerate() {
        let name = super::intake::letters(list);
        let range = format!("=words!${name}$2:${name}${}", words.len() + 1);
        for field in fields {
            let choice = DataValidation::new()
                .allow_list_formula(Formula::new(&range))
                .set_error_style(DataValidationErrorStyle::Warning)
                .set_error_title("Not in the list")?
                .set_error_message("hubwright reads the words of the list.")?;
            let column = *field as u16 + 2;
            sheet.add_data_validation(1, column, ROWS, column, &choice)?;
        }
    }
    Ok(())
}

fn note(sheet: &mut Worksheet, column: u16, said: &str) -> Result<(), XlsxError> {
    let said = said.split_whitespace().collect::<Vec<_>>().join(" ");
    let lines = said.chars().count().div_ceil(38) as u32 + 1;
    let note = Note::new(said)
        .add_author_prefix(false)
        .set_width(260)
        .set_height((lines * 17).clamp(40, 400));
    sheet.insert_note(0, column, &note)?;
    Ok(())
}

fn headings(sheet: &mut Worksheet, shop: Shop) -> Result<(), XlsxError> {
    const HEADING: f64 = 32.0;
    const TAKES: f64 = 40.0;
    const IS: f64 = 60.0;
    sheet.set_name("headings")?;
    paper(sheet, shop);
    sheet.set_landscape().set_print_fit_to_pages(1, 0).set_repeat_rows(6, 6)?;
    let wrapped = Format::new().set_text_wrap().set_align(FormatAlign::Top);
    let head = [
        "How to fill in the sheet \"rack\"",
        "One mounting a row: one wheel on one hub on one spindle. Write over the example.",
        "A heading asks: where a cell below it is blank, the rules that need it can't tell. Delete the columns that nobody here asks for, or keep them to be told what is missing.",
        "A cell may have a unit of its own, like 7 in or 1-1/4 in. The column's unit is in its heading; change it there for all cells.",
        "Columns of your own are welcome; they are given back as they came.",
    ];
    for (line, said) in head.into_iter().enumerate() {
        let format = if line == 0 { heading_style() } else { wrapped.clone() };
        sheet.merge_range(line as u32, 0, line as u32, 2, said, &format)?;
        sheet.set_row_height(line as u32, height(&[(said, HEADING + TAKES + IS)]))?;
    }
    let columns = [("heading", HEADING), ("takes", TAKES), ("what it is", IS)];
    for (column, (heading, width)) in columns.into_iter().enumerate() {
        sheet.set_column_width(column as u16, width)?;
        text(sheet, 6, column as u16, heading, &heading_style())?;
    }
    let marking = [MARKINGS[0], "what is written on the wheel", MARKING];
    sheet.set_row_height(7, height(&[(marking[1], TAKES), (marking[2], IS)]))?;
    for (column, said) in marking.into_iter().enumerate() {
        text(sheet, 7, column as u16, said, &wrapped)?;
    }
    for (at, field) in FIELDS.iter().enumerate() {
        let line = at as u32 + 8;
        let doc = field.doc.split_whitespace().collect::<Vec<_>>().join(" ");
        let said =
            [full_heading(field, shop), takes(field, shop), format!("{doc}{}", none_says(field))];
        let [heading, takes, is] = &said;
        sheet.set_row_height(line, height(&[(heading, HEADING), (takes, TAKES), (is, IS)]))?;
        for (column, said) in said.iter().enumerate() {
            text(sheet, line, column as u16, said, &wrapped)?;
        }
    }
    Ok(())
}

fn lists(sheet: &mut Worksheet, lists: &Lists) -> Result<(), XlsxError> {
    sheet.set_name("words")?;
    sheet.set_landscape().set_print_fit_to_pages(1, 0);
    for (column, (words, fields)) in lists.iter().enumerate() {
        let column = column as u16;
        sheet.set_column_width(column, 22)?;
        // Not the name of a heading alone: this sheet is no rack.
        let list = format!("words: {}", FIELDS[fields[0]].sort.name);
        text(sheet, 0, column, &list, &heading_style())?;
        for (line, word) in words.iter().enumerate() {
            text(sheet, line as u32 + 1, column, word, &Format::new())?;
        }
    }
    Ok(())
}
