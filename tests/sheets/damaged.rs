//! Files cut off, with bits turned, or called what they are not: every answer is clear.

use hubwright::sheet::Cell;

use crate::child::check_all;
use crate::make::{
    Folder, HEADINGS, Parts, STRINGS, heading_row, ods, ods_headings, ods_row, refused, relations,
    row, slow, strings, xlsx,
};

/// Rows of which every one counts: the last is too fast.
fn sound() -> Parts {
    let shared = r#"<row r="3"><c r="A3" t="s"><v>0</v></c><c r="B3"><f>B2</f><v>2800</v></c><c r="C3"><v>2850</v></c></row>"#;
    let last = row(4, &[Cell::Text("fast"), Cell::Number(3400.0), Cell::Number(2850.0)]);
    xlsx(&(heading_row() + &slow(2) + shared + &last))
        .with(STRINGS, strings("<si><t>shared</t></si><si><r><t>rich</t></r></si>"))
}

fn sound_ods() -> Parts {
    let row = |name| ods_row(&[Cell::Text(name), Cell::Number(2800.0), Cell::Number(2850.0)]);
    let last = ods_row(&[Cell::Text("fast"), Cell::Number(3400.0), Cell::Number(2850.0)]);
    ods(&(ods_headings() + &row("a") + &row("b") + &last))
}

/// Numbers without end that are the same in every run (Marsaglia's xorshift, 64 bits).
struct Dice(u64);

impl Dice {
    fn below(&mut self, most: usize) -> usize {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 7;
        self.0 ^= self.0 << 17;
        (self.0 % most as u64) as usize
    }
}

#[test]
fn a_package_cut_off_anywhere_is_said_to_be() {
    let folder = Folder::new();
    for (name, whole) in [("xlsx", sound().zip()), ("ods", sound_ods().zip())] {
        // From the first bytes on, which alone say what it is.
        for length in (4..whole.len()).step_by(7).chain([whole.len() - 1]) {
            folder.write(&format!("{length:05}.{name}"), &whole[..length]);
        }
    }
    for told in check_all(folder.path()) {
        told.refused("bad-table", &["damaged"]);
    }
}

#[test]
fn a_part_cut_off_anywhere_is_said_to_be_or_loses_no_row() {
    let (book, mut dice) = (sound(), Dice(0x5eed));
    let folder = Folder::new();
    for (at, (name, contents)) in book.parts().iter().enumerate() {
        for _ in 0..40 {
            let length = dice.below(contents.len());
            let cut = book.clone().with(name, &contents[..length]);
            folder.write(&format!("{at}-{length:05}.xlsx"), cut.zip());
        }
    }
    for told in check_all(folder.path()) {
        // Cut off behind what matters, in the styles or the list of sheets, nothing is missing.
        assert!(told.error.is_some() || told.rows == 3, "a row is lost: {told:?}");
    }
}

#[test]
fn a_bit_turned_in_a_package_is_found_or_harmless() {
    let folder = Folder::new();
    let mut dice = Dice(0xb175);
    for (name, whole) in [("xlsx", sound().zip()), ("ods", sound_ods().zip())] {
        for at in 0..400 {
            let mut bytes = whole.clone();
            let place = dice.below(bytes.len());
            bytes[place] ^= 1 << dice.below(8);
            folder.write(&format!("{at:03}.{name}"), bytes);
        }
    }
    for told in check_all(folder.path()) {
        // Every part has a sum that tells whether it is whole.
        assert!(told.error.is_some() || (told.rows, told.unreadable) == (3, 0), "{told:?}");
    }
}

#[test]
fn a_bit_turned_in_a_part_never_ends_in_a_panic() {
    let folder = Folder::new();
    let mut dice = Dice(0xf11b);
    for (name, package) in [("xlsx", sound()), ("ods", sound_ods())] {
        for at in 0..400 {
            let parts = package.parts();
            let (part, contents) = &parts[dice.below(parts.len())];
            let mut bytes = contents.clone();
            let place = dice.below(bytes.len());
            bytes[place] ^= 1 << dice.below(8);
            folder.write(&format!("{at:03}.{name}"), package.clone().with(part, bytes).zip());
        }
    }
    for told in check_all(folder.path()) {
        assert!(told.rows <= 4, "{told:?}");
    }
}

#[test]
fn what_a_file_is_called_says_nothing() {
    let csv = HEADINGS.join(";") + "\na;2800;2850\nb;2800;2850\nfast;3400;2850\n";
    let folder = Folder::new();
    for (name, contents) in [
        ("csv.xlsx", csv.as_bytes()),
        ("csv.ods", csv.as_bytes()),
        ("xlsx.csv", &sound().zip()),
        ("xlsx.xls", &sound().zip()),
        ("ods.xlsx", &sound_ods().zip()),
        ("ods", &sound_ods().zip()),
    ] {
        folder.write(name, contents);
    }
    let all = check_all(folder.path());
    assert_eq!(all.len(), 6);
    for told in all {
        told.read(3, 0);
    }
}

#[test]
fn what_is_no_table_is_told_what_it_is_taken_for() {
    let document = Parts::default()
        .with("_rels/.rels", relations(&[("rId1", "officeDocument", "word/document.xml")]))
        .with("word/document.xml", "<document><body><p>wheel diameter</p></body></document>");
    let slides = Parts::default().with("mimetype", "x").with("content.xml", "<presentation/>");
    let binary = Parts::default()
        .with("_rels/.rels", relations(&[("rId1", "officeDocument", "xl/workbook.bin")]))
        .with("xl/workbook.bin", vec![0x83, 1, 0]);
    let png = b"\x89PNG\r\n\x1a\n\0\0\0\rIHDR\0\0\0\x01\0\0\0\x01\x08\x06\0\0\0";
    for (what, contents, holds) in [
        ("an old workbook", b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1\0\0\0\0".to_vec(), ".xls)"),
        ("a picture", png.to_vec(), "neither a text file nor a workbook"),
        ("a page", b"%PDF-1.7\n1 0 obj\n<< /Type /Catalog >>\nendobj\n".to_vec(), "no heading"),
        ("HTML", b"\xef\xbb\xbf\n<html><table><tr><td>wheel diameter [mm]".to_vec(), "HTML"),
        ("XML", b"<?xml version=\"1.0\"?><Workbook/>".to_vec(), "XML"),
        ("a document", document.zip(), "no sheet"),
        ("slides", slides.zip(), "no sheet"),
        ("a binary workbook", binary.zip(), ".xlsb"),
        ("a package of pictures", Parts::default().with("a.png", png).zip(), "no workbook"),
        ("an empty package", Parts::default().zip(), "no workbook"),
        ("the first bytes of one", b"PK\x03\x04".to_vec(), "damaged"),
        ("two bytes", b"PK".to_vec(), "no heading"),
    ] {
        let error = refused(contents);
        assert_eq!(error.code(), "bad-table", "{what}: {error}");
        let text = error.to_string();
        assert!(text.contains(holds) && text.contains("\nhint: "), "{what}: {text}");
    }
}
