//! OpenDocument sheets: rows and cells that are repeated, nested tables, endless blanks.

use hubwright::sheet::Cell;

use crate::child::check;
use crate::make::{Folder, checked, labels, ods, ods_cell, ods_headings, ods_row, ods_slow};

/// A row that is repeated so often.
fn repeated(times: &str, row: &str) -> String {
    row.replacen(
        "<table:table-row",
        &format!(r#"<table:table-row table:number-rows-repeated="{times}""#),
        1,
    )
}

/// A cell that is repeated so often.
fn again(times: &str, cell: &Cell<'_>) -> String {
    ods_cell(cell).replacen(
        "<table:table-cell",
        &format!(r#"<table:table-cell table:number-columns-repeated="{times}""#),
        1,
    )
}

#[test]
fn a_billion_blank_rows_and_cells_lose_nothing_after_them() {
    let blank = "<table:table-row><table:table-cell/></table:table-row>";
    let wide = format!("<table:table-row>{}</table:table-row>", again("1000000000", &Cell::Blank));
    let rows = [
        repeated("1000000000", blank),
        ods_headings(),
        repeated("1000000000", &wide),
        ods_slow(),
        repeated("99999999999999999999999", blank),
        ods_slow(),
    ]
    .concat();
    let folder = Folder::new();
    let told = check(&folder.write("blank.ods", ods(&rows).zip()));
    told.read(2, 0);
    assert_eq!(told.numbers[0], 2_000_000_002);
}

#[test]
fn a_cell_after_more_blanks_than_can_be_counted_is_in_no_column() {
    // Read in the second column, it would be the speed of the spindle.
    let row = format!(
        "<table:table-row>{}{}{}</table:table-row>",
        ods_cell(&Cell::Text("far")),
        again("99999999999999999999999", &Cell::Blank),
        ods_cell(&Cell::Number(7.0))
    );
    let checked = checked(ods(&(ods_headings() + &row)).zip());
    let cells: Vec<_> = checked.cells(0).collect();
    assert_eq!(cells, [Cell::Text("far"), Cell::Blank, Cell::Blank]);
    assert!(checked.notes[0].contains("beyond AMJ"), "{:?}", checked.notes);
}

#[test]
fn filled_rows_and_cells_that_are_repeated_end_at_the_caps() {
    let folder = Folder::new();
    let rows = ods_headings() + &repeated("1000000000", &ods_slow());
    check(&folder.write("rows.ods", ods(&rows).zip())).refused("too-large", &["rows", "1048576"]);
    let wide = format!("<table:table-row>{}</table:table-row>", again("1000", &Cell::Number(7.0)));
    let rows = ods_headings() + &ods_slow() + &repeated("1000000000", &wide);
    check(&folder.write("both.ods", ods(&rows).zip())).refused("too-large", &["rows", "1048576"]);
    let cells =
        format!("<table:table-row>{}</table:table-row>", again("1000000000", &Cell::Number(7.0)));
    check(&folder.write("cells.ods", ods(&(ods_headings() + &ods_slow() + &cells)).zip()))
        .refused("too-large", &["cells"]);
    // A long text that is repeated, and merged down.
    let long = "a".repeat(32_000);
    let texts = format!("<table:table-row>{}</table:table-row>", again("1000", &Cell::Text(&long)));
    let rows = ods_headings() + &ods_slow() + &repeated("7000", &texts);
    check(&folder.write("texts.ods", ods(&rows).zip())).refused("too-large", &["cells"]);
    let wide: String = "\u{1f600}".repeat(32_000);
    let texts = format!("<table:table-row>{}</table:table-row>", again("1024", &Cell::Text(&wide)));
    let rows = ods_headings() + &ods_slow() + &texts + &ods_slow();
    let told = check(&folder.write("wide.ods", ods(&rows).zip()));
    told.read(3, 1);
    assert_eq!(told.problems[0].0, 3, "{told:?}");
}

#[test]
fn ten_thousand_columns_are_over_the_cap() {
    let more: String = (3..10_000).map(|_| ods_cell(&Cell::Text("h"))).collect();
    let wide = ods_headings().replace("</table:table-row>", &(more + "</table:table-row>"));
    let folder = Folder::new();
    check(&folder.write("wide.ods", ods(&(wide + &ods_slow())).zip()))
        .refused("too-large", &["columns", "1024"]);
}

#[test]
fn counts_that_are_no_numbers_count_once() {
    for times in ["0", "-1", "x", "", "1.5", " 2"] {
        let row = format!(
            "<table:table-row>{}{}{}</table:table-row>",
            again(times, &Cell::Text("a")),
            again(times, &Cell::Number(2800.0)),
            again(times, &Cell::Number(2850.0))
        );
        let checked = checked(ods(&(ods_headings() + &repeated(times, &row))).zip());
        assert_eq!(labels(&checked), [(2, "a".to_owned())], "{times:?}");
        assert_eq!(checked.counts.unreadable, 0, "{times:?}");
    }
}

#[test]
fn a_table_inside_a_cell_is_no_row_of_the_sheet() {
    let inner = format!(
        r#"<table:table-row><table:table-cell office:value-type="string"><text:p>outer</text:p><table:table table:name="inner">{}</table:table></table:table-cell>{}{}</table:table-row>"#,
        ods_slow(),
        ods_cell(&Cell::Number(2800.0)),
        ods_cell(&Cell::Number(2850.0))
    );
    let checked = checked(ods(&(ods_headings() + &inner + &ods_slow())).zip());
    assert_eq!(labels(&checked), [(2, "outer".to_owned()), (3, "slow".to_owned())]);
}

#[test]
fn a_billion_blanks_in_a_text_spoil_its_row_alone() {
    let spaces = r#"<table:table-cell office:value-type="string"><text:p>7<text:s text:c="1000000000"/>mm</text:p></table:table-cell>"#;
    let row = format!("<table:table-row>{}{spaces}</table:table-row>", ods_cell(&Cell::Text("a")));
    let folder = Folder::new();
    let told = check(&folder.write("s.ods", ods(&(ods_headings() + &row + &ods_slow())).zip()));
    told.read(2, 1);
    assert_eq!(told.problems[0].0, 2);
    // A great many of them add up no further.
    let spaces =
        spaces.replace("</text:p>", &(r#"<text:s text:c="32000"/>"#.repeat(100_000) + "</text:p>"));
    let row = format!("<table:table-row>{}{spaces}</table:table-row>", ods_cell(&Cell::Text("a")));
    check(&folder.write("t.ods", ods(&(ods_headings() + &row + &ods_slow())).zip())).read(2, 1);
}

#[test]
fn merged_cells_that_reach_a_billion_rows_end_with_the_sheet() {
    let merged = ods_row(&[Cell::Text("all"), Cell::Number(2800.0), Cell::Number(2850.0)])
        .replacen(
            "<table:table-cell",
            r#"<table:table-cell table:number-rows-spanned="1000000000""#,
            1,
        );
    let covered = "<table:table-row><table:covered-table-cell/><table:table-cell office:value-type=\"float\" office:value=\"2800\"><text:p>2800</text:p></table:table-cell></table:table-row>";
    let folder = Folder::new();
    let rows = ods_headings() + &merged + covered + covered;
    let told = check(&folder.write("merged.ods", ods(&rows).zip()));
    told.read(3, 0);
    assert!(told.notes.iter().any(|note| note.contains("A3, A4")), "{:?}", told.notes);
}
