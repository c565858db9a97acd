//! Headings as people write them: under titles, in two rows, in other words, misspelt, mapped.

use hubwright::sheet::{Cell, Options};

use crate::make::{
    HEADINGS, SHEET, check_with, checked, heading_row, labels, ods, ods_row, refused, row, rows,
    sheet, slow, typed, xlsx,
};

/// Every way to write one heading says the same as the plain one: together they are one too many.
#[track_caller]
fn says_the_same(plain: &str, other: &str) {
    let error = refused(xlsx(&rows(&[&[plain, other], &["1", "1"]])).zip());
    assert_eq!(error.code(), "bad-heading", "{other:?}: {error}");
    assert!(error.to_string().contains("says the same"), "{other:?}: {error}");
}

#[test]
fn titles_above_the_headings_are_passed_over_and_rows_keep_their_numbers() {
    let above = [
        row(1, &[Cell::Text("Rack of the tool room, wheel diameter in mm")]),
        row(2, &[Cell::Text("Checked by"), Cell::Text("Karl"), Cell::Blank, Cell::Day(20_000)]),
        row(7, &HEADINGS.map(Cell::Text)),
        slow(8),
        slow(20),
    ];
    assert_eq!(
        labels(&checked(xlsx(&above.concat()).zip())),
        [(8, "slow 8".to_owned()), (20, "slow 20".to_owned())]
    );
}

#[test]
fn a_row_of_groups_above_the_headings_belongs_to_them() {
    // Hole and wheel of row 3 can't be: so both were read, each under its group.
    let groups = ["", "wheel", "", "fixed flange", "", "loose flange", "", "spindle"];
    let own = [
        "name",
        "diameter [mm]",
        "hole [mm]",
        "diameter [mm]",
        "land [mm]",
        "diameter [mm]",
        "land [mm]",
        "greatest speed [rpm]",
    ];
    let sound = ["a", "200", "31.75", "80", "8", "80", "8", "2850"];
    let hole = ["b", "200", "250", "80", "8", "80", "8", "2850"];
    let flange = ["c", "200", "31.75", "80", "8", "250", "8", "2850"];
    let table: [&[&str]; 5] = [&groups, &own, &sound, &hole, &flange];
    let cells =
        |texts: &&[&str]| ods_row(&texts.iter().map(|text| typed(text)).collect::<Vec<_>>());
    let in_ods: String = table.iter().map(cells).collect();
    // As office programs merge them, and with the name merged down over both rows.
    let merged = sheet(&rows(&table)).replace(
        "</sheetData>",
        r#"</sheetData><mergeCells><mergeCell ref="A1:A2"/><mergeCell ref="B1:C1"/><mergeCell ref="D1:E1"/><mergeCell ref="F1:G1"/></mergeCells>"#,
    );
    for contents in [
        xlsx(&rows(&table)).zip(),
        ods(&in_ods).zip(),
        xlsx("").with(SHEET, merged).zip(),
        table.map(|texts| texts.join(";")).join("\n").into_bytes(),
    ] {
        let checked = checked(contents);
        assert_eq!(checked.unread, []);
        let numbers: Vec<_> = checked.problems().iter().map(|problem| problem.number).collect();
        assert_eq!(numbers, [4, 5]);
        assert_eq!(checked.headings()[3], "fixed flange diameter [mm]");
        assert!(!checked.notes.iter().any(|note| note.contains("merged")), "{:?}", checked.notes);
    }
}

#[test]
fn a_heading_may_be_written_in_any_case_spacing_and_unit() {
    for other in [
        "Wheel Diameter (mm)",
        "WHEEL DIAMETER [MM]",
        "wheel_diameter_mm",
        "wheel  diameter, mm",
        " wheel diameter mm ",
        "Wheel\ndiameter\n[mm]",
        "wheel-diameter [in]",
        "wheel OD (in)",
        "wheel diameter",
        "Wheel dia. [mm]",
        "wheel\u{a0}diameter\u{a0}[mm]",
    ] {
        says_the_same("wheel diameter [mm]", other);
    }
    let error = refused(xlsx(&rows(&[&["wheel diameter [kg]"], &["200"]])).zip());
    assert!(error.to_string().contains("no unit of length"), "{error}");
}

#[test]
fn trade_words_for_the_same_part_are_known() {
    for (plain, others) in [
        (
            "hub spigot [mm]",
            &["adapter spigot [mm]", "Sleeve pilot [mm]", "arbor pilot diameter [mm]"][..],
        ),
        ("fixed flange diameter [mm]", &["inner flange dia [mm]", "Back flange OD (mm)"]),
        ("loose flange diameter [mm]", &["outer flange dia [mm]", "Front flange diameter in"]),
        ("wheel hole [mm]", &["wheel bore [mm]", "Wheel bore diameter (in)"]),
        ("spindle greatest speed [rpm]", &["spindle max speed [rpm]", "Spindle top speed (1/min)"]),
    ] {
        for other in others {
            says_the_same(plain, other);
        }
    }
}

#[test]
fn unknown_headings_are_kept_and_told_with_the_nearest_known() {
    let table: [&[&str]; 2] =
        [&["name", "shelf", "whel diameter [mm]", "wheel hole [mm]"], &["a", "A7", "200", "250"]];
    let checked = checked(xlsx(&rows(&table)).zip());
    assert_eq!(checked.headings(), table[0]);
    let cells: Vec<_> = checked.cells(0).collect();
    assert_eq!(
        cells,
        [Cell::Text("a"), Cell::Text("A7"), Cell::Number(200.0), Cell::Number(250.0)]
    );
    let told = [
        ("shelf".to_owned(), None),
        ("whel diameter [mm]".to_owned(), Some("wheel diameter".to_owned())),
    ];
    assert_eq!(checked.unread, told);
    // It is not read, so that hole and wheel contradict each other nowhere.
    assert_eq!(checked.counts.unreadable, 0);
}

#[test]
fn a_mapping_says_what_a_heading_means() {
    let table: [&[&str]; 2] =
        [&["No.", "D (mm)", "wheel hole [mm]", "old"], &["a", "200", "250", "x"]];
    let contents = xlsx(&rows(&table)).zip();
    let mapped = |theirs: &str, ours: &str| Options::default().with_mapping(theirs, ours);
    // The unit is that of their heading; hole and wheel now contradict each other.
    let options = mapped("D (mm)", "wheel diameter").with_mapping("No.", "name");
    let checked = check_with(&contents, &options).expect("a table");
    assert_eq!((checked.counts.unreadable, checked.label(0)), (1, Some((2, "a"))));
    assert_eq!(checked.headings(), table[0], "the table's own headings stay");
    // To nothing: left out, and no longer told as unread.
    let left_out = check_with(&contents, &options.with_mapping("old", "")).expect("a table");
    assert_eq!(left_out.unread, []);
    let error = check_with(&contents, &mapped("D (mm)", "whel diameter")).expect_err("no field");
    assert_eq!(error.code(), "bad-heading");
    assert!(error.to_string().contains("did you mean \"wheel diameter\"?"), "{error}");
    let error =
        check_with(&contents, &mapped("diameter", "wheel diameter")).expect_err("not there");
    assert!(error.to_string().contains("not a heading of the table"), "{error}");
    // A known heading can be left out too, and one of two that say the same.
    let twice: [&[&str]; 2] =
        [&["wheel diameter [mm]", "wheel OD [in]", "wheel hole [mm]"], &["200", "2", "31"]];
    let twice = xlsx(&rows(&twice)).zip();
    let checked = check_with(twice, &mapped("wheel OD [in]", "")).expect("a table");
    assert_eq!(checked.counts.unreadable, 0);
}

#[test]
fn cells_beyond_the_headings_are_told_and_harmless() {
    let mut wide = HEADINGS.map(Cell::Text).to_vec();
    wide.extend([Cell::Blank, Cell::Text("remark")]);
    let cells = [
        Cell::Text("a"),
        Cell::Number(2800.0),
        Cell::Number(2850.0),
        Cell::Text("new"),
        Cell::Blank,
        Cell::Blank,
        Cell::Number(7.0),
    ];
    let checked = checked(xlsx(&(row(1, &wide) + &row(2, &cells) + &slow(3))).zip());
    assert_eq!((checked.len(), checked.counts.unreadable), (2, 0));
    assert_eq!(checked.notes, ["Cells without a heading were not read: columns D, G."]);
}

#[test]
fn blank_rows_inside_the_table_are_no_end_of_it() {
    let blank =
        r#"<row r="5"><c r="A5" s="1"/><c r="B5" t="inlineStr"><is><t>  </t></is></c></row>"#;
    let rows = [heading_row(), slow(3), blank.to_owned(), slow(900)].concat();
    let numbers: Vec<_> =
        labels(&checked(xlsx(&rows).zip())).into_iter().map(|(number, _)| number).collect();
    assert_eq!(numbers, [3, 900]);
}
