//! Cells as people fill them: units, texts, formulas, errors, yes and no, hidden and merged.

use hubwright::sheet::{Cell, Checked};

use crate::make::{
    SHEET, STRINGS, checked, heading_row, labels, ods, ods_cell, ods_headings, ods_row, ods_slow,
    row, rows, sheet, slow, strings, typed, xlsx,
};

/// A row of [`HEADINGS`](crate::make::HEADINGS) whose second cell is this XML.
fn with_speed(number: usize, cell: &str) -> String {
    format!(
        r#"<row r="{number}"><c r="A{number}" t="inlineStr"><is><t>a</t></is></c><c r="B{number}" {cell}</c><c r="C{number}"><v>2850</v></c></row>"#
    )
}

/// That the only row is refused, as 3400 rpm are on a wheel for 2850.
#[track_caller]
fn too_fast(checked: &Checked) {
    assert_eq!((checked.len(), checked.counts.refused), (1, 1), "{:?}", checked.problems());
}

/// What is wrong with the only row.
#[track_caller]
fn problem(checked: &Checked) -> String {
    assert_eq!((checked.len(), checked.counts.unreadable), (1, 1), "{:?}", checked.counts);
    checked.problems().remove(0).error.to_string()
}

#[test]
fn a_cell_may_state_its_own_unit() {
    // 7 in of wheel around 180 mm of hole can't be; around 175 mm it can.
    for (wheel, hole, sound) in [
        ("7 in", "175", true),
        ("7 in", "180", false),
        ("1-1/4 in", "31.7", true),
        ("1-1/4 in", "31.8", false),
        ("1 1/4\"", "31.8", false),
        ("20 cm", "199", true),
        ("20 cm", "200", false),
    ] {
        let table: [&[&str]; 2] = [&["wheel diameter [mm]", "wheel hole [mm]"], &[wheel, hole]];
        let checked = checked(xlsx(&rows(&table)).zip());
        assert_eq!(checked.counts.unreadable, usize::from(!sound), "{wheel} {hole}");
    }
}

#[test]
fn numbers_held_as_text_may_have_a_mark_a_column() {
    let text = |name, wheel, hole| row(2, &[Cell::Text(name), Cell::Text(wheel), Cell::Text(hole)]);
    let headings = row(1, &["name", "wheel diameter [mm]", "wheel hole [mm]"].map(Cell::Text));
    let sound = checked(xlsx(&(headings.clone() + &text("a", "200,5", "31.75"))).zip());
    assert_eq!(sound.counts.unreadable, 0);
    assert_eq!(sound.notes, ["Numbers are read with a decimal comma under: wheel diameter [mm]."]);
    let contradiction = checked(xlsx(&(headings + &text("a", "200,5", "200.5"))).zip());
    assert_eq!(contradiction.counts.unreadable, 1);
}

#[test]
fn hidden_rows_are_judged_and_told() {
    let hidden = slow(3).replace(r#"<row r="3""#, r#"<row r="3" hidden="1""#);
    let sheet = [heading_row(), slow(2), hidden, slow(4)].concat();
    let workbook = checked(xlsx(&sheet).zip());
    assert_eq!(workbook.len(), 3);
    assert_eq!(workbook.notes, ["Hidden rows are judged too: 3."]);
    for word in ["collapse", "filter"] {
        let hidden =
            ods_slow().replace("table-row>", &format!(r#"table-row table:visibility="{word}">"#));
        let hidden = hidden.replacen(
            &format!(r#"</table:table-row table:visibility="{word}">"#),
            "</table:table-row>",
            1,
        );
        let in_ods = checked(ods(&(ods_headings() + &hidden + &ods_slow())).zip());
        assert_eq!(
            (in_ods.len(), &in_ods.notes[..]),
            (2, &["Hidden rows are judged too: 2.".to_owned()][..])
        );
    }
}

#[test]
fn cells_merged_downwards_count_for_each_row() {
    // Only the first row has a marking, merged over three; the last row has none.
    let table: [&[&str]; 5] = [
        &["name", "spindle greatest speed [rpm]", "wheel marked speed [rpm]"],
        &["a", "3400", "2850"],
        &["b", "3400"],
        &["c", "3400"],
        &["d", "3400"],
    ];
    let merged = sheet(&rows(&table)).replace(
        "</sheetData>",
        r#"</sheetData><mergeCells><mergeCell ref="C2:C4"/></mergeCells>"#,
    );
    let cells =
        |texts: &&[&str]| ods_row(&texts.iter().map(|text| typed(text)).collect::<Vec<_>>());
    let [first, second, third, fourth, fifth] = table.each_ref().map(cells);
    let top = ods_cell(&Cell::Number(2850.0));
    let spanned =
        top.replace("<table:table-cell", r#"<table:table-cell table:number-rows-spanned="3""#);
    let in_ods = [first, second.replace(&top, &spanned), third, fourth, fifth].concat();
    for contents in [xlsx("").with(SHEET, merged).zip(), ods(&in_ods).zip()] {
        let checked = checked(contents);
        assert_eq!((checked.len(), checked.counts.refused, checked.counts.unknown), (4, 3, 1));
        assert_eq!(checked.notes, ["Cells merged downwards count for each of their rows: C3, C4."]);
    }
}

#[test]
fn a_formula_counts_with_the_value_that_was_worked_out() {
    let table = |cell: &str| checked(xlsx(&(heading_row() + &with_speed(2, cell))).zip());
    too_fast(&table("><f>1700*2</f><v>3400</v>"));
    too_fast(&table(r#"t="str"><f>"34"&amp;"00"</f><v>3400</v>"#));
    let text = problem(&table("><f>1700*2</f>"));
    assert!(
        text.contains("worked out") && text.contains("hint: ") && text.contains("office program"),
        "{text}"
    );
    // A formula that gives an empty text leaves the cell blank.
    assert_eq!(table(r#"t="str"><f>""</f><v></v>"#).counts.unknown, 1);
    let in_ods = |cell: &str| {
        let row = format!(
            "<table:table-row>{}{cell}{}</table:table-row>",
            ods_cell(&Cell::Text("a")),
            ods_cell(&Cell::Number(2850.0))
        );
        checked(ods(&(ods_headings() + &row)).zip())
    };
    too_fast(&in_ods(
        r#"<table:table-cell table:formula="of:=1700*2" office:value-type="float" office:value="3400"><text:p>3400</text:p></table:table-cell>"#,
    ));
    assert!(
        problem(&in_ods(r#"<table:table-cell table:formula="of:=1700*2"/>"#))
            .contains("worked out")
    );
    // The text of a formula may be in an attribute alone.
    too_fast(&in_ods(
        r#"<table:table-cell table:formula="of:=X" office:value-type="string" office:string-value="3400"/>"#,
    ));
}

#[test]
fn a_cell_that_shows_an_error_spoils_its_row() {
    for fault in ["#DIV/0!", "#N/A", "#REF!", "#NAME?"] {
        let cells = [Cell::Text("a"), Cell::Fault(fault), Cell::Number(2850.0)];
        for contents in [
            xlsx(&(heading_row() + &row(2, &cells))).zip(),
            ods(&(ods_headings() + &ods_row(&cells))).zip(),
        ] {
            let text = problem(&checked(contents));
            assert!(text.contains(fault) && text.contains("mend the formula"), "{text}");
        }
    }
}

#[test]
fn yes_and_no_may_be_truths_or_words() {
    let headings = row(
        1,
        &["name", "fixed blotter present", "loose blotter present", "wheel diameter [mm]"]
            .map(Cell::Text),
    );
    for (first, second, sound) in [
        (Cell::Truth(true), Cell::Truth(false), true),
        (Cell::Text("yes"), Cell::Text("No"), true),
        (Cell::Text("YES"), Cell::Truth(false), true),
        (Cell::Text("maybe"), Cell::Truth(true), false),
    ] {
        let cells = [Cell::Text("a"), first, second, Cell::Number(200.0)];
        let checked = checked(xlsx(&(headings.clone() + &row(2, &cells))).zip());
        assert_eq!(checked.counts.unreadable, usize::from(!sound), "{first:?} {second:?}");
        assert_eq!(checked.cells(0).nth(1), Some(first));
    }
}

#[test]
fn texts_are_those_that_a_cell_shows() {
    let rich = r#"<si><r><rPr><b/></rPr><t>34</t></r><r><t xml:space="preserve">00 </t></r></si>"#;
    let spoken =
        "<si><t>3400</t><rPh sb=\"0\" eb=\"1\"><t>three</t></rPh><phoneticPr fontId=\"1\"/></si>";
    let escaped = "<si><t>_x0033_400_x000D_\n</t></si>";
    let plain = "<si><t>3400</t></si>";
    for (what, text) in [("rich", rich), ("spoken", spoken), ("escaped", escaped), ("plain", plain)]
    {
        let part = strings(text);
        let sheet = heading_row() + &with_speed(2, r#"t="s"><v>0</v>"#);
        let checked_file = checked(xlsx(&sheet).with(STRINGS, part).zip());
        assert_eq!(checked_file.counts.refused, 1, "{what}: {:?}", checked_file.problems());
        let inline = text.replace("<si>", "<is>").replace("</si>", "</is>");
        let sheet = heading_row() + &with_speed(2, &format!(r#"t="inlineStr">{inline}"#));
        assert_eq!(checked(xlsx(&sheet).zip()).counts.refused, 1, "{what}, inline");
    }
    // What is an underscore stays one, and a mark of nothing does too.
    for (held, shown) in [
        ("a_x005F_x0041_", "a_x0041_"),
        ("a_x00", "a_x00"),
        ("a_xyzzy_", "a_xyzzy_"),
        ("_x_", "_x_"),
    ] {
        let named = slow(2).replace("slow 2", held);
        assert_eq!(
            labels(&checked(xlsx(&(heading_row() + &named)).zip())),
            [(2, shown.to_owned())]
        );
    }
    let shown = r#"<table:table-cell office:value-type="string"><office:annotation><text:p>9</text:p></office:annotation><text:p>34<text:span>0</text:span><text:ruby><text:ruby-base>0</text:ruby-base><text:ruby-text>7</text:ruby-text></text:ruby></text:p></table:table-cell>"#;
    let in_ods = format!(
        "<table:table-row>{}{shown}{}</table:table-row>",
        ods_cell(&Cell::Text("a")),
        ods_cell(&Cell::Number(2850.0))
    );
    too_fast(&checked(ods(&(ods_headings() + &in_ods)).zip()));
}

#[test]
fn signs_that_xml_can_not_hold_spoil_their_row_alone() {
    for bad in ["_x0000_", "&#0;", "&#xFFFE;", "&#x110000;", "&nothing;", "&#;", "&"] {
        let rows = [
            heading_row(),
            with_speed(2, &format!(r#"t="inlineStr"><is><t>34{bad}00</t></is>"#)),
            slow(3),
        ]
        .concat();
        let checked = checked(xlsx(&rows).zip());
        assert_eq!((checked.len(), checked.counts.unreadable), (2, 1), "{bad}");
    }
}
