//! Workbooks of several sheets, and of programs that write the same thing in other ways.

use hubwright::sheet::{Cell, Options};
use rust_xlsxwriter::{Format, Formula, Workbook};

use crate::make::{
    BOOK, BOOK_RELATIONS, HEADINGS, SHEET, STRINGS, STYLES, book, check_with, checked, heading_row,
    labels, ods_headings, ods_of, ods_slow, refused, relations, row, sheet, slow, strings, xlsx,
};
use crate::make::{Parts, ods_row};

/// A workbook of these sheets: name, what its tag says more, rows.
fn workbook(sheets: &[(&str, &str, String)]) -> Parts {
    let ids: Vec<String> = (0..sheets.len()).map(|at| format!("r{at}")).collect();
    let targets: Vec<String> =
        (0..sheets.len()).map(|at| format!("worksheets/s{at}.xml")).collect();
    let listed: Vec<_> =
        sheets.iter().zip(&ids).map(|((name, more, _), id)| (*name, id.as_str(), *more)).collect();
    let related: Vec<_> = ids
        .iter()
        .zip(&targets)
        .map(|(id, target)| (id.as_str(), "worksheet", target.as_str()))
        .collect();
    let parts = xlsx("").with(BOOK, book(&listed)).with(BOOK_RELATIONS, relations(&related));
    sheets
        .iter()
        .zip(&targets)
        .fold(parts, |parts, ((.., rows), target)| parts.with(&format!("xl/{target}"), sheet(rows)))
}

/// A sheet of so many sound rows.
fn sound(count: usize) -> String {
    heading_row() + &(2..2 + count).map(slow).collect::<String>()
}

fn notes_of_machines() -> String {
    row(1, &[Cell::Text("machine"), Cell::Text("serviced")])
        + &row(2, &[Cell::Text("1"), Cell::Day(20_000)])
}

/// An OpenDocument table; one of style `ta2` is hidden.
fn table(name: &str, style: &str, count: usize) -> String {
    let rows = ods_slow().repeat(count);
    format!(
        r#"<table:table table:name="{name}" table:style-name="{style}">{}{rows}</table:table>"#,
        ods_headings()
    )
}

#[test]
fn the_sheet_that_holds_mountings_is_read_and_the_others_are_told() {
    let sheets = [
        ("Empty", "", String::new()),
        ("Machines", "", notes_of_machines()),
        ("Old rack", r#"state="hidden""#, sound(3)),
        ("Rack &amp; more", "", sound(1)),
    ];
    let all = checked(workbook(&sheets).zip());
    assert_eq!(all.len(), 1);
    assert_eq!(
        all.notes,
        [r#"The sheet "Rack & more" was read, not: "Empty", "Machines", "Old rack"."#]
    );
    let hidden = checked(workbook(&sheets[..3]).zip());
    assert_eq!((hidden.len(), hidden.notes[0].as_str()), (3, r#"The sheet "Old rack" is hidden."#));
    let none = refused(workbook(&sheets[..2]).zip());
    assert_eq!(none.code(), "bad-table", "{none}");

    let tables = [
        r#"<table:table table:name="Empty"><table:table-row><table:table-cell/></table:table-row></table:table>"#.to_owned(),
        format!(
            r#"<table:table table:name="Machines">{}</table:table>"#,
            ods_row(&[Cell::Text("machine")]).repeat(1200)
        ),
        table("Old rack", "ta2", 3),
        table("Rack", "ta1", 1),
    ];
    let all = checked(ods_of(&tables.concat()).zip());
    assert_eq!(all.len(), 1);
    assert_eq!(all.notes, [r#"The sheet "Rack" was read, not: "Empty", "Machines", "Old rack"."#]);
    let hidden = checked(ods_of(&tables[..3].concat()).zip());
    assert_eq!((hidden.len(), hidden.notes[0].as_str()), (3, r#"The sheet "Old rack" is hidden."#));
}

#[test]
fn of_several_sheets_with_mountings_none_is_chosen_unasked() {
    for state in ["", r#"state="hidden""#, r#"state="veryHidden""#] {
        let sheets = [("One", state, sound(1)), ("Two", state, sound(2))];
        let error = refused(workbook(&sheets).zip());
        assert!(error.to_string().contains(r#"several sheets: "One", "Two""#), "{error}");
        assert!(error.to_string().contains("--sheet"), "{error}");
    }
    let tables = table("One", "ta1", 1) + &table("Two", "ta1", 2);
    let error = refused(ods_of(&tables).zip());
    assert!(error.to_string().contains(r#"several sheets: "One", "Two""#), "{error}");
}

#[test]
fn a_list_of_very_many_sheets_stays_short() {
    let names: Vec<String> = (0..500).map(|at| format!("Sheet {at}")).collect();
    let sheets: Vec<_> = names.iter().map(|name| (name.as_str(), "", sound(1))).collect();
    let contents = workbook(&sheets).zip();
    let missing = check_with(&contents, &Options::default().with_sheet("Rack"));
    for error in [missing.expect_err("no such sheet"), refused(&contents)] {
        let text = error.to_string();
        assert!(
            text.contains("Sheet 9 and 490 more") || text.contains("\"Sheet 9\" and 490 more"),
            "{text}"
        );
    }
}

#[test]
fn the_sheet_asked_for_is_read_or_the_others_are_listed() {
    let sheets =
        [("One", "", sound(1)), ("Two", "", sound(2)), ("Three", r#"state="hidden""#, sound(3))];
    let in_ods =
        ["One", "Two", "Three"].iter().zip(1..).map(|(name, count)| table(name, "ta1", count));
    for contents in [workbook(&sheets).zip(), ods_of(&in_ods.collect::<String>()).zip()] {
        for (name, count) in [("Two", 2), ("Three", 3), (" One ", 1)] {
            let checked =
                check_with(&contents, &Options::default().with_sheet(name)).expect("it is there");
            assert_eq!(checked.len(), count, "{name}");
        }
        let error = check_with(&contents, &Options::default().with_sheet("Rack"))
            .expect_err("no such sheet");
        assert!(error.to_string().contains("no sheet \"Rack\""), "{error}");
        assert!(error.to_string().contains("hint: its sheets are: One, Two, Three"), "{error}");
    }
    let csv = HEADINGS.join(",") + "\na,1,2\n";
    let error =
        check_with(csv, &Options::default().with_sheet("One")).expect_err("CSV has no sheets");
    assert!(error.to_string().contains("one table"), "{error}");
}

#[test]
fn sheets_that_are_not_there_or_hold_no_cells_are_told() {
    let listed =
        book(&[("Chart", "r1", ""), ("Gone", "r2", ""), ("Nowhere", "r9", ""), ("Rack", "r3", "")]);
    let related = relations(&[
        ("r1", "chartsheet", "chartsheets/sheet1.xml"),
        ("r2", "worksheet", "worksheets/gone.xml"),
        ("r3", "worksheet", "worksheets/sheet1.xml"),
    ]);
    let package = xlsx(&sound(2))
        .with(BOOK, listed)
        .with(BOOK_RELATIONS, related)
        .with("xl/chartsheets/sheet1.xml", "<chartsheet/>");
    let all = checked(package.zip());
    assert_eq!(all.len(), 2);
    assert_eq!(all.notes, [r#"There are no cells to read in: "Chart", "Gone", "Nowhere"."#]);
    let asked =
        check_with(package.zip(), &Options::default().with_sheet("Chart")).expect_err("a chart");
    assert!(asked.to_string().contains("no cells in the sheet \"Chart\""), "{asked}");
    let error = refused(package.without(SHEET).zip());
    assert!(error.to_string().contains("no cells in the sheet"), "{error}");
}

#[test]
fn the_same_workbook_may_be_written_in_other_ways() {
    let shared = strings("<si><t>slow 2</t></si>");
    let with_shared = sound(1).replace(
        r#"t="inlineStr"><is><t xml:space="preserve">slow 2</t></is>"#,
        r#"t="s"><v>0</v>"#,
    );
    let plain = xlsx(&with_shared).with(STRINGS, shared.clone());
    let prefixed = |xml: &str| {
        xml.replace("</", "</\u{1}")
            .replace('<', "<x:")
            .replace("<x:/\u{1}", "</x:")
            .replace("xmlns=", "xmlns:x=")
    };
    let pretty = |xml: &str| xml.replace("><", ">\r\n\t  <");
    let strict = |xml: &str| {
        xml.replace(
            "http://schemas.openxmlformats.org/officeDocument/2006/relationships",
            "http://purl.oclc.org/ooxml/officeDocument/relationships",
        )
        .replace(
            "http://schemas.openxmlformats.org/spreadsheetml/2006/main",
            "http://purl.oclc.org/ooxml/spreadsheetml/main",
        )
    };
    let text = |(name, contents): &(String, Vec<u8>)| {
        (name.clone(), String::from_utf8(contents.clone()).expect("XML"))
    };
    let all: Vec<(String, String)> = plain.parts().iter().map(text).collect();
    let with = |change: &dyn Fn(&str) -> String, only: &str| {
        all.iter()
            .filter(|(name, _)| name.contains(only))
            .fold(plain.clone(), |parts, (name, xml)| parts.with(name, change(xml)))
    };
    let absolute = relations(&[
        ("rId1", "worksheet", "/xl/worksheets/sheet1.xml"),
        ("rId3", "sharedStrings", "/xl/sharedStrings.xml"),
    ]);
    let roundabout = relations(&[
        ("rId1", "worksheet", "./worksheets/../worksheets/sheet1.xml"),
        ("rId3", "sharedStrings", "../xl/sharedStrings.xml"),
    ]);
    let elsewhere = Parts::default()
        .with(
            "_rels/.rels",
            relations(&[
                ("a", "extended-properties", "docProps/app.xml"),
                ("b", "officeDocument", "/book/b.xml"),
            ]),
        )
        .with("book/b.xml", book(&[("Rack", "x", "")]))
        .with("book/_rels/b.xml.rels", relations(&[("x", "worksheet", "cells.xml")]))
        .with("book/cells.xml", sheet(&sound(1)));
    // Some programs write the names of parts in other letters, or with the other stroke.
    let letters = all.iter().fold(Parts::default(), |parts, (name, xml)| {
        parts.with(&name.replace("sharedStrings", "SharedStrings").replace('/', "\\"), xml.clone())
    });
    let no_references = sound(1)
        .replace(r#" r="2""#, "")
        .replace(r#"r="A2" "#, "")
        .replace(r#"r="B2""#, "")
        .replace(r#"r="C2""#, "");
    for (what, package) in [
        ("plain", plain.clone()),
        ("prefixes", with(&prefixed, "xl/")),
        ("prefixes in relations", with(&prefixed, "_rels")),
        ("pretty", with(&pretty, "")),
        ("strict", with(&strict, "")),
        ("absolute targets", plain.clone().with(BOOK_RELATIONS, absolute)),
        ("roundabout targets", plain.clone().with(BOOK_RELATIONS, roundabout)),
        ("other folders", elsewhere),
        ("other letters", letters),
        ("no references", xlsx(&no_references)),
        ("no styles", plain.clone().without(STYLES)),
        (
            "a declaration and a comment",
            with(
                &|xml| {
                    format!(
                        "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\r\n<!-- by hand -->{xml}"
                    )
                },
                "",
            ),
        ),
    ] {
        let checked = checked(package.zip());
        assert_eq!(labels(&checked), [(2, "slow 2".to_owned())], "{what}");
        assert_eq!((checked.counts.unreadable, checked.counts.refused), (0, 0), "{what}");
        assert_eq!(checked.cells(0).nth(1), Some(Cell::Number(2800.0)), "{what}");
    }
}

#[test]
fn a_workbook_by_another_hand_is_read_whole() {
    let mut book = Workbook::new();
    let write = |book: &mut Workbook| -> Result<(), rust_xlsxwriter::XlsxError> {
        book.add_worksheet().set_name("Cover")?.write(0, 0, "Wheels of the tool room")?;
        let sheet = book.add_worksheet().set_name("Rack")?;
        sheet.merge_range(0, 0, 0, 4, "Rack of 2026", &Format::new().set_bold())?;
        let headings =
            ["Name", "Spindle max speed (rpm)", "Wheel marked rpm", "Wheel use by", "Shelf"];
        for (column, heading) in (0..).zip(headings) {
            sheet.write(2, column, heading)?;
        }
        let date = Format::new().set_num_format("dd.mm.yyyy");
        for (at, name) in (3..).zip(["a", "b & <c>", " d "]) {
            sheet.write(at, 0, name)?;
            sheet.write_formula(at, 1, Formula::new("=1700*2").set_result("3400"))?;
            sheet.write(at, 2, 2850)?;
            sheet.write_with_format(at, 3, 46_631, &date)?;
        }
        let (bold, plain) = (Format::new().set_bold(), Format::new());
        sheet.write_rich_string(3, 4, &[(&bold, "A"), (&plain, "7")])?;
        sheet.set_row_hidden(4)?;
        sheet.set_freeze_panes(3, 0)?;
        sheet.autofilter(2, 0, 5, 4)?;
        sheet.insert_note(3, 0, &rust_xlsxwriter::Note::new("3 of them"))?;
        Ok(())
    };
    write(&mut book).expect("a workbook");
    let checked = checked(book.save_to_buffer().expect("a workbook"));
    assert_eq!(
        labels(&checked),
        [(4, "a".to_owned()), (5, "b & <c>".to_owned()), (6, "d".to_owned())]
    );
    assert_eq!(
        (checked.counts.refused, checked.counts.unreadable),
        (3, 0),
        "{:?}",
        checked.problems()
    );
    assert_eq!(checked.cells(0).nth(4), Some(Cell::Text("A7")));
    assert_eq!(
        checked.notes,
        [
            r#"The sheet "Rack" was read, not: "Cover"."#,
            "The headings are in row 3; what is above them was passed over.",
            "Hidden rows are judged too: 5."
        ]
    );
}

#[test]
fn nothing_that_is_no_cell_is_read_as_one() {
    // Rows beside the data of the sheet, as tables and views have them.
    let around = sheet(&sound(1))
        .replace(
            "<sheetData>",
            r#"<sheetViews><row r="1"><c r="A1"><v>1</v></c></row></sheetViews><sheetData>"#,
        )
        .replace(
            "</sheetData>",
            r#"</sheetData><extLst><row r="9"><c r="A9"><v>1</v></c></row></extLst>"#,
        );
    assert_eq!(checked(xlsx("").with(SHEET, around).zip()).len(), 1);
    let drawn = format!(
        r#"<table:shapes><draw:frame xmlns:draw="d"><table:table>{}</table:table></draw:frame></table:shapes>"#,
        ods_slow()
    );
    let grouped = format!(
        r#"<table:table table:name="Rack">{drawn}<table:table-column/><table:table-header-rows>{}</table:table-header-rows><text:soft-page-break/><table:table-row-group>{}<table:table-row-group>{}</table:table-row-group></table:table-row-group></table:table>"#,
        ods_headings(),
        ods_slow(),
        ods_slow()
    );
    let checked = checked(ods_of(&grouped).zip());
    assert_eq!(labels(&checked), [(2, "slow".to_owned()), (3, "slow".to_owned())]);
}
