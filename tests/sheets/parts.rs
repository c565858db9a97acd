//! Parts of a workbook that lie: entities, endless texts, depth without end, texts shared by all.

use crate::child::check;
use crate::make::{
    BOOK, BOOK_RELATIONS, CONTENT, Folder, Parts, SHEET, STRINGS, STYLES, book, checked,
    heading_row, ods, ods_headings, ods_of, ods_slow, refused, relations, sheet, slow, strings,
    xlsx,
};

/// A sound workbook whose sheet holds this before its last row.
fn around(hostile: &str) -> Parts {
    xlsx(&[heading_row(), slow(2), hostile.to_owned(), slow(9)].concat())
}

#[test]
fn entities_of_its_own_are_refused_wherever_they_are_declared() {
    let laughs = r#"<!DOCTYPE x [<!ENTITY a "ha"><!ENTITY b "&a;&a;&a;&a;&a;&a;&a;&a;&a;&a;"><!ENTITY c "&b;&b;&b;&b;&b;&b;&b;&b;&b;&b;">]>"#;
    let outside = r#"<!DOCTYPE x [<!ENTITY c SYSTEM "file:///etc/passwd">]>"#;
    let parameter = r#"<!DOCTYPE x [<!ENTITY % c SYSTEM "http://127.0.0.1/c.dtd"> %c;]>"#;
    let sound = rows_with("&c;");
    let in_ods = ods(&(ods_headings() + &ods_slow()));
    for declared in [laughs, outside, parameter] {
        let before = |part: &str| format!("{declared}{part}");
        for (what, package) in [
            ("the sheet", xlsx("").with(SHEET, before(&sheet(&sound)))),
            ("the texts", around("").with(STRINGS, before(&strings("<si><t>&c;</t></si>")))),
            ("the styles", around("").with(STYLES, before("<styleSheet/>"))),
            ("the book", around("").with(BOOK, before(&book(&[("&c;", "rId1", "")])))),
            ("the relations", around("").with(BOOK_RELATIONS, before(&relations(&[])))),
            ("OpenDocument", in_ods.clone().with(CONTENT, before("<x>&c;</x>"))),
        ] {
            let error = refused(package.zip());
            assert_eq!(error.code(), "bad-table", "{what}");
            assert!(error.to_string().contains("entities"), "{what}: {error}");
        }
    }
}

/// A table whose first name is this XML.
fn rows_with(name: &str) -> String {
    heading_row()
        + &format!(
            r#"<row r="2"><c r="A2" t="inlineStr"><is><t>{name}</t></is></c><c r="B2"><v>2800</v></c><c r="C2"><v>2850</v></c></row>"#
        )
}

#[test]
fn a_document_type_alone_harms_nobody() {
    let with_type = format!("<!DOCTYPE worksheet>{}", sheet(&rows_with("a")));
    assert_eq!(checked(xlsx("").with(SHEET, with_type).zip()).len(), 1);
    // Without a declaration an entity stands for nothing.
    let checked = checked(xlsx(&rows_with("a &amp; &#66; &c;")).zip());
    assert_eq!(checked.label(0), Some((2, "a & B \u{fffd}")));
}

#[test]
fn one_endless_piece_does_not_fill_the_memory() {
    const LONG: usize = 100 << 20;
    let plain = "x".repeat(LONG);
    // Signs that begin and end tags, so that looking for these alone is not enough.
    let tags = "<a/>".repeat(LONG / 4);
    let folder = Folder::new();
    for (what, piece) in [
        ("attribute", format!(r#"<row r="3" x="{plain}"/>"#)),
        ("attribute of tags", format!(r#"<row r="3" x="{tags}"/>"#)),
        ("comment", format!("<!--{plain}-->")),
        ("comment of tags", format!("<!--{tags}-->")),
        ("raw text of tags", format!("<![CDATA[{tags}]]>")),
        ("instruction of tags", format!("<?x {tags}?>")),
        ("name", format!("<{plain}/>")),
        ("text", plain.clone()),
        ("reference", format!("&{plain};")),
    ] {
        let path = folder.write(&format!("{what}.xlsx"), around(&piece).zip());
        check(&path).refused("too-large", &["longer", SHEET]);
        std::fs::remove_file(path).expect("room for the next");
    }
}

#[test]
fn a_million_tags_deep_is_no_sheet() {
    let folder = Folder::new();
    let deep = "<a>".repeat(1_000_000) + &"</a>".repeat(1_000_000);
    check(&folder.write("deep.xlsx", around(&deep).zip())).refused("too-large", &["deep"]);
    // Comments that look like ends of tags must not hide it.
    let step = "<a>".repeat(9_000) + "<!--" + &"</".repeat(9_000) + "-->";
    let hidden = step.repeat(200);
    check(&folder.write("hidden.xlsx", around(&hidden).zip())).refused("too-large", &["deep"]);
    let in_a_cell = ods(&(ods_headings() + "<table:table-row><table:table-cell>" + &deep));
    check(&folder.write("deep.ods", in_a_cell.zip())).refused("too-large", &["deep"]);
}

#[test]
fn two_million_shared_texts_are_too_many() {
    let folder = Folder::new();
    let package = around("").with(STRINGS, strings(&"<si><t>a</t></si>".repeat(2_000_000)));
    check(&folder.write("many.xlsx", package.zip()))
        .refused("too-large", &["shared texts", "1000000"]);
}

#[test]
fn a_shared_text_of_200_megabytes_is_too_long() {
    let folder = Folder::new();
    let one =
        around("").with(STRINGS, strings(&format!("<si><t>{}</t></si>", "a".repeat(200 << 20))));
    check(&folder.write("one.xlsx", one.zip()))
        .refused("too-large", &["longer", "xl/sharedstrings.xml"]);
    // The same in pieces, each short; and in a cell.
    let piece = format!("<r><t>{}</t></r>", "a".repeat(30_000));
    let pieces = piece.repeat(6_000);
    let package = around("").with(STRINGS, strings(&format!("<si>{pieces}</si>")));
    let told = check(&folder.write("pieces.xlsx", package.zip()));
    told.read(2, 0);
    let cell = format!(r#"<row r="3"><c r="B3" t="inlineStr"><is>{pieces}</is></c></row>"#);
    let told = check(&folder.write("cell.xlsx", around(&cell).zip()));
    told.read(3, 1);
    assert!(told.problems[0].1.contains("32767"), "{told:?}");
}

#[test]
fn what_shared_texts_claim_of_their_number_is_not_believed() {
    let claims = strings("<si><t>speedy</t></si>")
        .replace("<sst ", r#"<sst count="99999999999999" uniqueCount="99999999999999" "#);
    let rows = rows_with("a").replace(r#"t="inlineStr"><is><t>a</t></is>"#, r#"t="s"><v>0</v>"#);
    let folder = Folder::new();
    let path = folder.write("claims.xlsx", xlsx(&rows).with(STRINGS, claims.clone()).zip());
    check(&path).read(1, 0);
    // A number beyond the last, none at all, and no texts anywhere spoil the row alone.
    for at in ["1", "-1", "99999999999999999999", "x", "0.0"] {
        let speed = format!(
            r#"<row r="3"><c r="A3" t="s"><v>0</v></c><c r="B3" t="s"><v>{at}</v></c><c r="C3"><v>2850</v></c></row>"#
        );
        let checked = checked(around(&speed).with(STRINGS, claims.clone()).zip());
        assert_eq!((checked.len(), checked.counts.unreadable), (3, 1), "{at}");
        let problem = checked.problems().remove(0);
        assert_eq!(problem.number, 3);
        assert!(problem.error.to_string().contains("shared text"), "{}", problem.error);
    }
}

#[test]
fn a_long_text_shared_by_millions_of_cells_takes_no_time() {
    let text = strings(&format!("<si><t>{}</t></si>", "a".repeat(32_000)));
    let filled = r#"<c t="s"><v>0</v></c>"#.repeat(1000);
    let rows: String = (3..4000).map(|row| format!(r#"<row r="{row}">{filled}</row>"#)).collect();
    let folder = Folder::new();
    let package = xlsx(&(heading_row() + &slow(2) + &rows)).with(STRINGS, text);
    check(&folder.write("shared.xlsx", package.zip())).refused("too-large", &["cells"]);
}

#[test]
fn a_part_that_is_no_utf_8_is_said_to_be_broken() {
    let utf_16 = |text: &str| -> Vec<u8> {
        [0xfeff].into_iter().chain(text.encode_utf16()).flat_map(u16::to_le_bytes).collect()
    };
    let declared = r#"<?xml version="1.0" encoding="ISO-8859-1"?>"#;
    let latin: Vec<u8> = (declared.to_owned() + &sheet(&rows_with("Schlager")))
        .replace("lag", "l\u{1}g")
        .bytes()
        .map(|byte| if byte == 1 { 0xe4 } else { byte })
        .collect();
    for part in [utf_16(&sheet(&rows_with("a"))), latin, b"\xff\xfe\x00".to_vec(), Vec::new()] {
        let error = refused(xlsx("").with(SHEET, part).zip());
        assert_eq!(error.code(), "bad-table", "{error}");
    }
    // A mark of UTF-8 before it is no harm.
    let marked = format!("\u{feff}{}", sheet(&rows_with("a")));
    assert_eq!(checked(xlsx("").with(SHEET, marked).zip()).len(), 1);
}

#[test]
fn sheets_without_end_are_gone_through_once() {
    let names: Vec<String> = (0..100_000).map(|at| format!("S{at}")).collect();
    let listed: Vec<_> = names.iter().map(|name| (name.as_str(), "rId1", "")).collect();
    let package = xlsx(&"<row/>".repeat(20_000));
    let folder = Folder::new();
    let some = package.clone().with(BOOK, book(&listed[..9_000]));
    check(&folder.write("some.xlsx", some.zip())).refused("bad-table", &["empty"]);
    let all = package.with(BOOK, book(&listed));
    check(&folder.write("all.xlsx", all.zip())).refused("too-large", &["sheets", "10000"]);
    // In OpenDocument all sheets are in one part.
    let blank = r#"<table:table table:name="a"><table:table-row/></table:table>"#;
    let some = ods_of(&blank.repeat(9_000));
    check(&folder.write("some.ods", some.zip())).refused("bad-table", &["empty"]);
    let all = ods_of(&blank.repeat(50_000));
    check(&folder.write("all.ods", all.zip())).refused("too-large", &["sheets", "10000"]);
}
