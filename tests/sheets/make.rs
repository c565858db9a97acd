//! Files as the tests need them: packages part by part, cells from one list in every format.

use std::fmt::Write as _;
use std::io::{Cursor, Write as _};
use std::ops::ControlFlow;
use std::path::{Path, PathBuf};
use std::sync::atomic::{AtomicU32, Ordering};

use hubwright::Error;
use hubwright::mounting::Terms;
use hubwright::sheet::{Cell, Checked, Options, check_file};
use hubwright::units::Date;
use zip::write::SimpleFileOptions;

/// Headings that most of these files have.
pub const HEADINGS: [&str; 3] =
    ["name", "spindle greatest speed [rpm]", "wheel marked speed [rpm]"];

/// A folder for the files of one test, gone when it goes out of scope.
pub struct Folder(PathBuf);

impl Folder {
    pub fn new() -> Self {
        static NEXT: AtomicU32 = AtomicU32::new(0);
        let (process, next) = (std::process::id(), NEXT.fetch_add(1, Ordering::Relaxed));
        let folder = std::env::temp_dir().join(format!("hubwright-sheets-{process}-{next}"));
        std::fs::create_dir_all(&folder).expect("a temporary folder");
        Self(folder)
    }

    pub fn path(&self) -> &Path {
        &self.0
    }

    pub fn write(&self, name: &str, contents: impl AsRef<[u8]>) -> PathBuf {
        let path = self.0.join(name);
        std::fs::write(&path, contents).expect("a temporary file");
        path
    }
}

impl Drop for Folder {
    fn drop(&mut self) {
        // The system clears what can't be removed now.
        let _ = std::fs::remove_dir_all(&self.0);
    }
}

/// Checks a file with these contents, in this process.
pub fn check_with(contents: impl AsRef<[u8]>, options: &Options) -> Result<Checked, Error> {
    let folder = Folder::new();
    let path = folder.write("rack", contents);
    check_file(&path, &Terms::default(), None, options, &mut |_| ControlFlow::Continue(()))
}

#[track_caller]
pub fn checked(contents: impl AsRef<[u8]>) -> Checked {
    check_with(contents, &Options::default()).unwrap_or_else(|error| panic!("{error}"))
}

#[track_caller]
pub fn refused(contents: impl AsRef<[u8]>) -> Error {
    match check_with(contents, &Options::default()) {
        Err(error) => error,
        Ok(checked) => panic!("it was read: {:?} {:?}", checked.counts, checked.notes),
    }
}

/// Number and name of every row.
pub fn labels(checked: &Checked) -> Vec<(usize, String)> {
    let label = |row| checked.label(row).map(|(number, name)| (number, name.to_owned()));
    (0..checked.len()).filter_map(label).collect()
}

/// A package, part by part.
#[derive(Clone, Default)]
pub struct Parts(Vec<(String, Vec<u8>)>);

impl Parts {
    /// With a part, in place of one of the same name.
    pub fn with(self, name: &str, contents: impl Into<Vec<u8>>) -> Self {
        let mut parts = self.without(name);
        parts.0.push((name.to_owned(), contents.into()));
        parts
    }

    pub fn without(mut self, name: &str) -> Self {
        self.0.retain(|(part, _)| part != name);
        self
    }

    /// Name and contents of every part.
    pub fn parts(&self) -> &[(String, Vec<u8>)] {
        &self.0
    }

    pub fn zip(&self) -> Vec<u8> {
        let mut zip = zip::ZipWriter::new(Cursor::new(Vec::new()));
        let options = SimpleFileOptions::default()
            .compression_method(zip::CompressionMethod::Deflated)
            .compression_level(Some(1));
        for (name, contents) in &self.0 {
            zip.start_file(name.as_str(), options).expect("a part");
            zip.write_all(contents).expect("its contents");
        }
        zip.finish().expect("a package").into_inner()
    }
}

pub const SHEET: &str = "xl/worksheets/sheet1.xml";
pub const BOOK: &str = "xl/workbook.xml";
pub const BOOK_RELATIONS: &str = "xl/_rels/workbook.xml.rels";
pub const STRINGS: &str = "xl/sharedStrings.xml";
pub const STYLES: &str = "xl/styles.xml";
pub const CONTENT: &str = "content.xml";

const MAIN: &str = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const OFFICE: &str = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

/// The relations of a part; each has its name, what it is and where.
pub fn relations(all: &[(&str, &str, &str)]) -> String {
    let mut xml = String::from(
        r#"<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">"#,
    );
    for (id, kind, target) in all {
        write!(xml, r#"<Relationship Id="{id}" Type="{OFFICE}/{kind}" Target="{target}"/>"#)
            .expect("text");
    }
    xml + "</Relationships>"
}

/// The list of sheets; each has its name, its relation and what else its tag says.
pub fn book(sheets: &[(&str, &str, &str)]) -> String {
    let mut xml = format!(r#"<workbook xmlns="{MAIN}" xmlns:r="{OFFICE}"><sheets>"#);
    for (at, (name, relation, more)) in sheets.iter().enumerate() {
        write!(xml, r#"<sheet name="{name}" sheetId="{}" r:id="{relation}" {more}/>"#, at + 1)
            .expect("text");
    }
    xml + "</sheets></workbook>"
}

/// A sheet whose `sheetData` holds these rows.
pub fn sheet(rows: &str) -> String {
    format!(r#"<worksheet xmlns="{MAIN}"><sheetData>{rows}</sheetData></worksheet>"#)
}

/// Styles: 0 is plain, and each of these number formats follows.
pub fn styles(formats: &[&str]) -> String {
    let (mut codes, mut cells) = (String::new(), String::from(r#"<xf numFmtId="0"/>"#));
    for (at, code) in formats.iter().enumerate() {
        let id = code.parse().unwrap_or(164 + at);
        if code.parse::<usize>().is_err() {
            let code = code.replace('"', "&quot;");
            write!(codes, r#"<numFmt numFmtId="{id}" formatCode="{code}"/>"#).expect("text");
        }
        write!(cells, r#"<xf numFmtId="{id}"/>"#).expect("text");
    }
    format!(
        r#"<styleSheet xmlns="{MAIN}"><numFmts>{codes}</numFmts><cellStyleXfs><xf numFmtId="14"/></cellStyleXfs><cellXfs>{cells}</cellXfs></styleSheet>"#
    )
}

/// A workbook with one sheet, whose `sheetData` holds these rows. Style 1 is a day.
pub fn xlsx(rows: &str) -> Parts {
    Parts::default()
        .with("_rels/.rels", relations(&[("rId1", "officeDocument", BOOK)]))
        .with(BOOK, book(&[("Rack", "rId1", "")]))
        .with(
            BOOK_RELATIONS,
            relations(&[
                ("rId1", "worksheet", "worksheets/sheet1.xml"),
                ("rId2", "styles", "styles.xml"),
                ("rId3", "sharedStrings", "sharedStrings.xml"),
            ]),
        )
        .with(STYLES, styles(&["14"]))
        .with(SHEET, sheet(rows))
}

/// The shared texts of a workbook.
pub fn strings(items: &str) -> String {
    format!(r#"<sst xmlns="{MAIN}">{items}</sst>"#)
}

/// Text as XML holds it.
pub fn escaped(text: &str) -> String {
    text.replace('&', "&amp;").replace('<', "&lt;").replace('>', "&gt;")
}

/// A column as sheets name it.
pub fn letters(column: usize) -> String {
    let letter = char::from(b'A' + (column % 26) as u8).to_string();
    if column < 26 { letter } else { letters(column / 26 - 1) + &letter }
}

/// A row of a sheet in a workbook.
pub fn row(number: usize, cells: &[Cell<'_>]) -> String {
    let mut xml = format!(r#"<row r="{number}">"#);
    for (column, cell) in cells.iter().enumerate() {
        let at = format!(r#"r="{}{number}""#, letters(column));
        match cell {
            Cell::Blank => {}
            Cell::Text(text) => write!(
                xml,
                r#"<c {at} t="inlineStr"><is><t xml:space="preserve">{}</t></is></c>"#,
                escaped(text)
            )
            .expect("text"),
            Cell::Number(number) => write!(xml, "<c {at}><v>{number}</v></c>").expect("text"),
            Cell::Truth(truth) => {
                write!(xml, r#"<c {at} t="b"><v>{}</v></c>"#, u8::from(*truth)).expect("text");
            }
            // ECMA-376, part 1, 18.17.4.1: 1970-01-01 is day 25,569.
            Cell::Day(day) => {
                write!(xml, r#"<c {at} s="1"><v>{}</v></c>"#, day + 25_569).expect("text");
            }
            Cell::Fault(fault) => {
                write!(xml, r#"<c {at} t="e"><v>{fault}</v></c>"#).expect("text");
            }
        }
    }
    xml + "</row>"
}

/// Rows of texts, one below the other from the first.
pub fn rows(rows: &[&[&str]]) -> String {
    let numbered = rows.iter().enumerate();
    numbered
        .map(|(at, texts)| row(at + 1, &texts.iter().map(|text| typed(text)).collect::<Vec<_>>()))
        .collect()
}

/// A cell from what somebody types: a number when it is one.
pub fn typed(text: &str) -> Cell<'_> {
    match text.parse() {
        _ if text.is_empty() => Cell::Blank,
        Ok(number) => Cell::Number(number),
        Err(_) => Cell::Text(text),
    }
}

/// The row of [`HEADINGS`].
pub fn heading_row() -> String {
    row(1, &HEADINGS.map(Cell::Text))
}

/// A sound row: its spindle is slower than the wheel is marked for.
pub fn slow(number: usize) -> String {
    row(
        number,
        &[Cell::Text(&format!("slow {number}")), Cell::Number(2800.0), Cell::Number(2850.0)],
    )
}

/// An OpenDocument workbook; `tables` are whole.
pub fn ods_of(tables: &str) -> Parts {
    let names = "urn:oasis:names:tc:opendocument:xmlns";
    Parts::default()
        .with("mimetype", "application/vnd.oasis.opendocument.spreadsheet")
        .with(
            CONTENT,
            format!(
                r#"<?xml version="1.0" encoding="UTF-8"?><office:document-content xmlns:office="{names}:office:1.0" xmlns:table="{names}:table:1.0" xmlns:text="{names}:text:1.0" xmlns:style="{names}:style:1.0" xmlns:calcext="urn:org:documentfoundation:names:experimental:calc:xmlns:calcext:1.0"><office:automatic-styles><style:style style:name="ta2" style:family="table"><style:table-properties table:display="false"/></style:style></office:automatic-styles><office:body><office:spreadsheet>{tables}</office:spreadsheet></office:body></office:document-content>"#
            ),
        )
}

/// An OpenDocument workbook with one sheet of these rows.
pub fn ods(rows: &str) -> Parts {
    ods_of(&format!(r#"<table:table table:name="Rack">{rows}</table:table>"#))
}

/// A row of a sheet in an OpenDocument workbook.
pub fn ods_row(cells: &[Cell<'_>]) -> String {
    let cells: String = cells.iter().map(ods_cell).collect();
    format!("<table:table-row>{cells}</table:table-row>")
}

pub fn ods_cell(cell: &Cell<'_>) -> String {
    let of = |kind: &str, value: &str, shown: &str| {
        format!(
            r#"<table:table-cell office:value-type="{kind}"{value}><text:p>{}</text:p></table:table-cell>"#,
            escaped(shown)
        )
    };
    match cell {
        Cell::Blank => "<table:table-cell/>".into(),
        Cell::Text(text) => of("string", "", text),
        Cell::Number(number) => {
            of("float", &format!(r#" office:value="{number}""#), &number.to_string())
        }
        Cell::Truth(truth) => {
            of("boolean", &format!(r#" office:boolean-value="{truth}""#), &truth.to_string())
        }
        Cell::Day(day) => {
            let day = Date::from_days(*day).to_string();
            of("date", &format!(r#" office:date-value="{day}""#), &day)
        }
        Cell::Fault(fault) => of("string", r#" calcext:value-type="error""#, fault),
    }
}

/// [`HEADINGS`] as the first row of an OpenDocument sheet.
pub fn ods_headings() -> String {
    ods_row(&HEADINGS.map(Cell::Text))
}

/// A sound row of an OpenDocument sheet.
pub fn ods_slow() -> String {
    ods_row(&[Cell::Text("slow"), Cell::Number(2800.0), Cell::Number(2850.0)])
}
