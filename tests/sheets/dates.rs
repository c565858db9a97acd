//! Dates: numbers that a style shows as days, from 1900 or 1904, and what is no date.

use hubwright::sheet::{Cell, Checked};
use hubwright::units::Date;

use crate::make::{BOOK, STYLES, book, checked, ods, ods_row, row, styles, xlsx};

fn day(text: &str) -> Cell<'static> {
    Cell::Day(Date::read(text).expect("a date").days())
}

/// A workbook with one cell under a heading of a date.
fn dated(cell: &str) -> crate::make::Parts {
    let headings = row(1, &["name", "wheel use before", "wheel diameter [mm]"].map(Cell::Text));
    xlsx(&format!(
        r#"{headings}<row r="2"><c r="A2" t="inlineStr"><is><t>a</t></is></c><c r="B2" {cell}</c><c r="C2"><v>200</v></c></row>"#
    ))
}

/// The cell of [`dated`] as it was read.
fn second(checked: &Checked) -> Cell<'_> {
    checked.cells(0).nth(1).expect("a cell")
}

#[test]
fn days_count_from_1900_with_a_day_that_never_was_or_from_1904() {
    // Microsoft, "Differences between the 1900 and the 1904 date system": the same day differs by 1,462.
    for (text, from_1900) in [
        ("1900-01-01", 1.0),
        ("1900-02-28", 59.0),
        ("1900-03-01", 61.0),
        ("2000-01-01", 36_526.0),
        ("2000-01-01", 36_526.75),
        ("2027-09-01", 46_631.0),
    ] {
        let in_1900 = dated(&format!(r#"s="1"><v>{from_1900}</v>"#));
        assert_eq!(second(&checked(in_1900.zip())), day(text), "{from_1900}");
        if from_1900 >= 1462.0 {
            let in_1904 = dated(&format!(r#"s="1"><v>{}</v>"#, from_1900 - 1462.0));
            let list = book(&[("Rack", "rId1", "")])
                .replace("<sheets>", r#"<workbookPr date1904="1"/><sheets>"#);
            assert_eq!(second(&checked(in_1904.with(BOOK, list).zip())), day(text), "{from_1900}");
        }
    }
}

#[test]
fn a_number_is_a_day_where_its_style_shows_one() {
    for format in [
        "14",
        "15",
        "16",
        "17",
        "22",
        "dd/mm/yyyy",
        r"yyyy\-mm\-dd",
        "[$-407]d. mmmm yyyy",
        "d-mmm;@",
        "yy",
        r#""use by "DD.MM.YYYY"#,
    ] {
        let package = dated(r#"s="1"><v>36526</v>"#).with(STYLES, styles(&[format]));
        let checked = checked(package.zip());
        assert_eq!(
            (second(&checked), checked.counts.unreadable),
            (day("2000-01-01"), 0),
            "{format}"
        );
    }
    for format in [
        "0", "2", "9", "18", "20", "45", "46", "49", "0.00", "[h]:mm", "h:mm:ss", "0.00E+00",
        "[Red]0", "_d0", "* 0", "General",
    ] {
        let package = dated(r#"s="1"><v>36526</v>"#).with(STYLES, styles(&[format]));
        let checked = checked(package.zip());
        // A number that is no day is no date: nobody guesses what it counts.
        assert_eq!(
            (second(&checked), checked.counts.unreadable),
            (Cell::Number(36_526.0), 1),
            "{format}"
        );
        assert!(checked.problems()[0].error.to_string().contains("hint: "));
    }
    // Letters that everybody sees behind a number are part of what is said.
    let package = dated(r#"s="1"><v>36526</v>"#).with(STYLES, styles(&[r#"0.0" days""#]));
    let checked = checked(package.zip());
    assert_eq!((second(&checked), checked.counts.unreadable), (Cell::Text("36526 days"), 1));
}

#[test]
fn dates_may_be_written_out() {
    for cell in [r#"t="d"><v>2027-09-01</v>"#, r#"t="d"><v>2027-09-01T00:00:00.000</v>"#] {
        assert_eq!(second(&checked(dated(cell).zip())), day("2027-09-01"), "{cell}");
    }
    let text = checked(dated(r#"t="inlineStr"><is><t>2027-09-01</t></is>"#).zip());
    assert_eq!(text.counts.unreadable, 0);
    for bad in [
        r#"t="d"><v>1 September</v>"#,
        r#"t="d"><v>2027-02-30</v>"#,
        r#"t="inlineStr"><is><t>01/09/27</t></is>"#,
    ] {
        assert_eq!(checked(dated(bad).zip()).counts.unreadable, 1, "{bad}");
    }
    for value in ["2027-09-01", "2027-09-01T10:30:00"] {
        let headings =
            ods_row(&["name", "wheel use before", "wheel diameter [mm]"].map(Cell::Text));
        let cells = ods_row(&[Cell::Text("a"), day("2027-09-01"), Cell::Number(200.0)]);
        let cells =
            cells.replace(r#"date-value="2027-09-01""#, &format!(r#"date-value="{value}""#));
        let checked = checked(ods(&(headings + &cells)).zip());
        assert_eq!((second(&checked), checked.counts.unreadable), (day("2027-09-01"), 0));
    }
}

#[test]
fn a_fraction_that_became_a_date_is_told() {
    // 5/16 typed into an office program is the 5th of some month, or the 16th of May.
    let headings = ["name", "wheel thickness [in]"].map(Cell::Text);
    let cells = [Cell::Text("a"), day("2016-05-01")];
    for contents in [
        xlsx(&(row(1, &headings) + &row(2, &cells))).zip(),
        ods(&(ods_row(&headings) + &ods_row(&cells))).zip(),
    ] {
        let checked = checked(contents);
        assert_eq!(checked.counts.unreadable, 1);
        let text = checked.problems()[0].error.to_string();
        assert!(text.contains("`wheel thickness [in]`") && text.contains("2016-05-01"), "{text}");
        assert!(text.contains("hint: office programs turn") && text.contains("5/16"), "{text}");
    }
}

#[test]
fn letters_that_a_format_shows_behind_a_number_are_its_unit() {
    // 7 in of wheel around 180 mm of hole can't be; 7 mm around 180 mm can be no more.
    let headings = row(1, &["name", "wheel diameter [mm]", "wheel hole [mm]"].map(Cell::Text));
    let table = |format: &str, wheel: &str, hole: &str| {
        let cells = format!(
            r#"<row r="2"><c r="B2" s="1"><v>{wheel}</v></c><c r="C2"><v>{hole}</v></c></row>"#
        );
        checked(xlsx(&(headings.clone() + &cells)).with(STYLES, styles(&[format])).zip())
    };
    for (format, wheel, hole, sound) in [
        (r#"0.00" in""#, "7", "175", true),
        (r#"0.00" in""#, "7", "180", false),
        (r"0.00\ \i\n", "7", "175", true),
        (r#"0.00"mm""#, "180", "175", true),
        (r#"0.00"mm";-0.00"in""#, "180", "175", true),
        // A sign before the number, colours and spaces are none.
        (r#""Ø "0.0"#, "180", "175", true),
        (r"\M0", "180", "175", true),
        ("[Red]0.0_m", "180", "175", true),
    ] {
        assert_eq!(
            table(format, wheel, hole).counts.unreadable,
            usize::from(!sound),
            "{format} {wheel} {hole}"
        );
    }
    let days = dated(r#"s="1"><v>36526</v>"#).with(STYLES, styles(&[r#"0" days""#]));
    assert_eq!(second(&checked(days.zip())), Cell::Text("36526 days"));
}
