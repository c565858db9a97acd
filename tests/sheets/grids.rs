//! Sheets that are too large, and cells in no place: a bad row spoils only itself.

use hubwright::sheet::Cell;

use crate::child::check;
use crate::make::{
    BOOK_RELATIONS, Folder, SHEET, STRINGS, STYLES, checked, heading_row, labels, letters, refused,
    relations, row, sheet, slow, strings, styles, xlsx,
};

#[test]
fn two_cells_at_the_far_ends_of_a_sheet_take_no_memory() {
    let folder = Folder::new();
    let last = r#"<row r="1048576"><c r="XFD1048576"><v>1</v></c></row>"#;
    let first = row(1, &[Cell::Text("name")]);
    let path = folder.write("far.xlsx", xlsx(&(first + last)).zip());
    check(&path).refused("bad-table", &["no heading"]);
    let path = folder.write("headings.xlsx", xlsx(&(heading_row() + &slow(2) + last)).zip());
    let told = check(&path);
    told.read(1, 0);
    assert!(told.notes[0].contains("beyond AMJ"), "{:?}", told.notes);
    let dimension = sheet(&(heading_row() + &slow(2)))
        .replace("<sheetData>", r#"<dimension ref="A1:XFD1048576"/><sheetData>"#);
    check(&folder.write("dimension.xlsx", xlsx("").with(SHEET, dimension).zip())).read(1, 0);
}

#[test]
fn thirty_two_million_blank_cells_end_at_the_cap() {
    let blank = "<c/>".repeat(1000);
    let rows = format!("<row>{blank}</row>").repeat(32_000);
    let folder = Folder::new();
    let path = folder.write("blank.xlsx", xlsx(&(heading_row() + &slow(2) + &rows)).zip());
    check(&path).refused("too-large", &["cells", "8000000"]);
}

#[test]
fn nine_million_filled_cells_end_at_the_cap() {
    let folder = Folder::new();
    let cells = "<c><v>7</v></c>".repeat(1000);
    let rows = format!("<row>{cells}</row>").repeat(9_000);
    let path = folder.write("filled.xlsx", xlsx(&(heading_row() + &slow(2) + &rows)).zip());
    check(&path).refused("too-large", &["cells", "8000000"]);
}

#[test]
fn cells_that_all_differ_count_with_what_keeping_them_takes() {
    // Three million numbers, no two alike, under headings of which one is known.
    let headings: Vec<String> = (0..1000).map(|at| format!("q{at}")).collect();
    let mut first: Vec<Cell<'_>> = headings.iter().map(|heading| Cell::Text(heading)).collect();
    first[0] = Cell::Text("wheel diameter [mm]");
    let mut rows = row(1, &first);
    for at in 0..3_000 {
        rows.push_str("<row>");
        for column in 0..1000 {
            rows.push_str(&format!("<c><v>{}</v></c>", at * 1000 + column));
        }
        rows.push_str("</row>");
    }
    let folder = Folder::new();
    let path = folder.write("differ.xlsx", xlsx(&rows).zip());
    check(&path).refused("too-large", &["bytes to keep"]);
}

#[test]
fn references_that_make_no_sense_spoil_their_row_alone() {
    let sound = [heading_row(), slow(2), slow(3)].concat();
    let after = [slow(5), slow(6), slow(7)].concat();
    for reference in [
        "ZZZZ4",
        "A0",
        "4A",
        "A99999999999",
        "AAAAAAAAAA4",
        "A5",
        "A3",
        "",
        "A",
        "4",
        "A4B",
        "Ä4",
        "XFE4",
        "A1048577",
        "A-4",
        "$A$4",
        "R4C1",
        "A 4",
        "A4:B4",
        "B4",
    ] {
        let bad = format!(
            r#"<row r="4"><c r="B4"><v>5000</v></c><c r="{reference}"><v>2850</v></c></row>"#
        );
        let checked = checked(xlsx(&format!("{sound}{bad}{after}")).zip());
        assert_eq!(checked.counts.unreadable, 1, "{reference:?}");
        let numbers: Vec<_> = labels(&checked).iter().map(|(number, _)| *number).collect();
        assert_eq!(numbers, [2, 3, 4, 5, 6, 7], "{reference:?}");
        let problem = checked.problems().remove(0);
        assert_eq!((problem.number, problem.error.code()), (4, "bad-row"), "{reference:?}");
        assert!(problem.error.to_string().contains("out of place"), "{}", problem.error);
    }
}

#[test]
fn attributes_that_make_no_sense_spoil_their_row_alone() {
    let cell =
        |cell: &str| format!("{}{}<row r=\"3\">{cell}</row>{}", heading_row(), slow(2), slow(4));
    for bad in [
        // What t="s" says must not be lost on the way: 5 would be read as a number.
        r#"<c r="B3" r="C3" t="s"><v>5</v></c>"#,
        r#"<c r=B3 t="s"><v>5</v></c>"#,
        r#"<c r="B3" s= t="s"><v>5</v></c>"#,
        r#"<c r="B3" t="number"><v>5</v></c>"#,
        r#"<c r="B3" t=""><v>5</v></c>"#,
    ] {
        let checked = checked(xlsx(&cell(bad)).zip());
        assert_eq!((checked.len(), checked.counts.unreadable), (3, 1), "{bad}");
        assert_eq!(checked.problems()[0].number, 3, "{bad}");
    }
    // Numbers of styles and formulas that are shared stand for nothing here.
    for fine in [
        r#"<c r="B3" s="99999999999999999999"><v>2800</v></c>"#,
        r#"<c r="B3" s="4000000000"><v>2800</v></c>"#,
        r#"<c r="B3"><f t="shared" ref="A1:XFD1048576" si="4294967295"/><v>2800</v></c>"#,
        r#"<c r="B3" cm="99999999" vm="-1"><v>2800</v></c>"#,
    ] {
        let checked = checked(xlsx(&cell(fine)).zip());
        assert_eq!((checked.len(), checked.counts.unreadable), (3, 0), "{fine}");
    }
}

#[test]
fn row_numbers_that_make_no_sense_spoil_their_row_alone() {
    for (bad, number) in [
        ("2", 4),
        ("1", 4),
        ("0", 4),
        ("x", 4),
        ("", 4),
        ("1048577", 4),
        ("-3", 4),
        ("99999999999999999999", 4),
    ] {
        let spoiled = format!(r#"<row r="{bad}"><c><v>1</v></c></row>"#);
        let rows = [heading_row(), slow(2), slow(3), spoiled, slow(4), slow(5)].concat();
        let checked = checked(xlsx(&rows).zip());
        assert_eq!((checked.len(), checked.counts.unreadable), (5, 1), "{bad:?}");
        let problem = checked.problems().remove(0);
        assert_eq!(problem.number, number, "{bad:?}");
        assert!(problem.error.to_string().contains("number"), "{}", problem.error);
    }
}

#[test]
fn headings_out_of_place_are_not_believed() {
    // The second heading is nowhere: that of the third column would move to it.
    let lost = r#"<row r="1"><c r="A1" t="inlineStr"><is><t>name</t></is></c><c r="B0" t="inlineStr"><is><t>wheel marked speed [rpm]</t></is></c><c t="inlineStr"><is><t>spindle greatest speed [rpm]</t></is></c></row>"#;
    let error = refused(xlsx(&(lost.to_owned() + &slow(2))).zip());
    assert!(error.to_string().contains("out of place"), "{error}");
}

#[test]
fn ten_thousand_columns_are_over_the_cap() {
    let columns: String = (3..10_000)
        .map(|at| format!(r#"<c r="{}1" t="inlineStr"><is><t>h</t></is></c></row>"#, letters(at)))
        .collect();
    let rows =
        heading_row().replace("</row>", &columns.replace("</row>", "")) + "</row>" + &slow(2);
    let folder = Folder::new();
    check(&folder.write("wide.xlsx", xlsx(&rows).zip())).refused("too-large", &["columns", "1024"]);
}

#[test]
fn millions_of_merged_areas_end_at_a_cap() {
    let merged = |area: &str, times| {
        let rows = heading_row() + &slow(2);
        let areas = format!(r#"<mergeCell ref="{area}"/>"#).repeat(times);
        sheet(&rows)
            .replace("</sheetData>", &format!("</sheetData><mergeCells>{areas}</mergeCells>"))
    };
    let folder = Folder::new();
    let told =
        check(&folder.write("a.xlsx", xlsx("").with(SHEET, merged("A2:A3", 2_000_000)).zip()));
    told.read(1, 0);
    let many: String =
        (2..200_000).map(|row| format!(r#"<mergeCell ref="A{row}:A1048576"/>"#)).collect();
    let many = merged("A1", 1).replace("</mergeCells>", &(many + "</mergeCells>"));
    let told = check(&folder.write("b.xlsx", xlsx("").with(SHEET, many).zip()));
    told.refused("too-large", &["merged"]);
}

#[test]
fn cells_merged_down_a_whole_sheet_count_as_cells() {
    // A row of a thousand cells, each merged to the end, above a million rows of one.
    let areas: String = (1..1000)
        .map(|column| format!(r#"<mergeCell ref="{0}2:{0}1048576"/>"#, letters(column)))
        .collect();
    let first = row(2, &vec![Cell::Text("2800"); 1000]);
    let rows = heading_row() + &first + &"<row><c><v>1</v></c></row>".repeat(100_000);
    let part = sheet(&rows)
        .replace("</sheetData>", &format!("</sheetData><mergeCells>{areas}</mergeCells>"));
    let folder = Folder::new();
    check(&folder.write("down.xlsx", xlsx("").with(SHEET, part).zip()))
        .refused("too-large", &["cells"]);
}

#[test]
fn styles_and_relations_without_end_are_no_harm() {
    let folder = Folder::new();
    let sound = xlsx(&(heading_row() + &slow(2)));
    // Each style shows a unit of a megabyte.
    let many = format!(
        r#"<styleSheet><numFmts><numFmt numFmtId="200" formatCode="0&quot;{}&quot;"/></numFmts><cellXfs>{}</cellXfs></styleSheet>"#,
        "x".repeat(1_000_000),
        r#"<xf numFmtId="200"/>"#.repeat(1_000_000)
    );
    let package = sound.clone().with(STYLES, many);
    check(&folder.write("styles.xlsx", package.zip())).refused("too-large", &["styles", "65536"]);
    let columns = r#"<col min="1" max="16384" hidden="1"/>"#.repeat(1_000_000);
    let hidden = sheet(&(heading_row() + &slow(2)))
        .replace("<sheetData>", &format!("<cols>{columns}</cols><sheetData>"));
    let told = check(&folder.write("columns.xlsx", xlsx("").with(SHEET, hidden).zip()));
    told.read(1, 0);
    assert_eq!(told.notes, ["Hidden columns are read too: A, B, C."]);
    let many: Vec<String> = (0..20_000).map(|at| format!("d{at}")).collect();
    let formats: Vec<&str> = many.iter().map(String::as_str).collect();
    let package = sound.clone().with(STYLES, styles(&formats));
    check(&folder.write("formats.xlsx", package.zip())).refused("too-large", &["formats"]);
    let related: Vec<_> = formats.iter().map(|id| (*id, "worksheet", "a.xml")).collect();
    let package = sound.with(BOOK_RELATIONS, relations(&related));
    check(&folder.write("relations.xlsx", package.zip())).refused("too-large", &["relations"]);
}

#[test]
fn areas_merged_over_one_another_take_no_time() {
    // No real sheet has such: each of a thousand areas lies over all to its right.
    let areas: String = (0..1000)
        .map(|column| format!(r#"<mergeCell ref="{}2:XFD1048576"/>"#, letters(column)))
        .collect();
    let blank = "<c/>".repeat(1000);
    let last = format!("<row>{}<c><v>1</v></c></row>", "<c/>".repeat(1000));
    let rows = heading_row() + &format!("<row>{blank}<c><v>1</v></c></row>") + &last.repeat(7_000);
    let part = sheet(&rows)
        .replace("</sheetData>", &format!("</sheetData><mergeCells>{areas}</mergeCells>"));
    let folder = Folder::new();
    let told = check(&folder.write("over.xlsx", xlsx("").with(SHEET, part).zip()));
    told.refused("too-large", &["cells"]);
}

#[test]
fn looking_for_headings_holds_no_more_than_it_needs() {
    // Sixty rows of eight megabytes before any heading.
    let row = format!("<row>{}</row>", r#"<c t="s"><v>0</v></c>"#.repeat(1000));
    let text = strings(&format!("<si><t>{}</t></si>", "a".repeat(8_000)));
    let folder = Folder::new();
    let package = xlsx(&row.repeat(60)).with(STRINGS, text);
    check(&folder.write("long.xlsx", package.zip())).refused("bad-table", &["no heading"]);
}
