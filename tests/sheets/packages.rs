//! Packages that lie about themselves: bombs, overlaps, sizes, locks.

use std::io::{Cursor, Write as _};

use zip::write::SimpleFileOptions;

use crate::child::check;
use crate::make::{Folder, Parts, heading_row, labels, ods, ods_headings, ods_slow, slow, xlsx};
use crate::make::{checked, refused};

/// A sound workbook of one row.
fn sound() -> Parts {
    xlsx(&(heading_row() + &slow(2)))
}

/// A package with one more part of zeros, packed as it is made.
fn with_zeros(size: usize) -> Vec<u8> {
    let mut zip =
        zip::ZipWriter::new_append(Cursor::new(sound().zip())).expect("a package to add to");
    let options = SimpleFileOptions::default().compression_level(Some(6));
    zip.start_file("xl/media/image1.bin", options).expect("a part");
    let zeros = vec![0; 1 << 20];
    for _ in 0..size >> 20 {
        zip.write_all(&zeros).expect("zeros");
    }
    zip.finish().expect("a package").into_inner()
}

/// The places of a mark of four bytes.
fn places(bytes: &[u8], mark: &[u8; 4]) -> Vec<usize> {
    bytes.windows(4).enumerate().filter(|(_, four)| four == mark).map(|(at, _)| at).collect()
}

const LOCAL: &[u8; 4] = b"PK\x03\x04";
const CENTRAL: &[u8; 4] = b"PK\x01\x02";

/// A package whose last part is named so many times more in its directory.
fn named_again(package: &[u8], times: u32) -> Vec<u8> {
    let headers = places(package, CENTRAL);
    let end = package.len() - 22;
    let (first, last) = (headers[0], *headers.last().expect("a part"));
    let name = last + 46;
    let mut out = package[..end].to_vec();
    for time in 0..times {
        let mut header = package[last..end].to_vec();
        // Eight characters in place of the first of its name.
        header[46..54].copy_from_slice(format!("{time:08}").as_bytes());
        out.extend(header);
    }
    assert!(end - name >= 8, "a name long enough");
    let count = headers.len() as u32 + times;
    let size = (out.len() - first) as u32;
    let mut tail = package[end..].to_vec();
    // More than 65,535 parts don't fit here; the low half of the number is what a liar writes.
    tail[8..10].copy_from_slice(&(count as u16).to_le_bytes());
    tail[10..12].copy_from_slice(&(count as u16).to_le_bytes());
    tail[12..16].copy_from_slice(&size.to_le_bytes());
    out.extend(tail);
    out
}

#[test]
fn a_gigabyte_of_zeros_is_not_unpacked() {
    let folder = Folder::new();
    let package = with_zeros(1 << 30);
    assert!(package.len() < 2 << 20, "it is small: {}", package.len());
    check(&folder.write("bomb.xlsx", package)).refused("too-large", &["unpacked", "268435456"]);
}

#[test]
fn parts_that_add_up_are_not_unpacked() {
    let folder = Folder::new();
    let mut parts = sound();
    for at in 0..300 {
        parts = parts.with(&format!("xl/media/image{at}.bin"), vec![0; 1 << 20]);
    }
    check(&folder.write("bomb.xlsx", parts.zip())).refused("too-large", &["unpacked"]);
}

#[test]
fn parts_that_lie_over_one_another_count_each_time() {
    let folder = Folder::new();
    let package = named_again(&with_zeros(16 << 20), 100);
    check(&folder.write("overlap.xlsx", package)).refused("too-large", &["unpacked"]);
}

#[test]
fn a_directory_of_hundreds_of_thousands_of_parts_is_refused_before_it_is_read() {
    let folder = Folder::new();
    let package = named_again(&sound().with("xl/media/image1.bin", "x").zip(), 300_000);
    check(&folder.write("many.xlsx", package)).refused("too-large", &["parts", "10000"]);
}

#[test]
fn a_package_in_a_package_is_left_shut() {
    let inner = with_zeros(64 << 20);
    let nested = Parts::default().with("inner.xlsx", inner.clone()).zip();
    let told = refused(nested).to_string();
    assert!(told.contains("zip file and no workbook"), "{told}");
    // A workbook may hold another one as a picture or an attachment.
    assert_eq!(checked(sound().with("xl/embeddings/inner.xlsx", inner).zip()).len(), 1);
}

#[test]
fn sizes_that_are_not_so_lose_nothing() {
    // In a local header the sizes stand at 18 and 22, in the directory at 20 and 24.
    for (which, local, central) in [("packed", 18, 20), ("unpacked", 22, 24)] {
        for claim in [0_u32, 7, 1 << 20, u32::MAX - 1] {
            let mut package = sound().zip();
            for (mark, field) in [(LOCAL, local), (CENTRAL, central)] {
                for place in places(&package, mark) {
                    package[place + field..place + field + 4].copy_from_slice(&claim.to_le_bytes());
                }
            }
            let folder = Folder::new();
            let told = check(&folder.write("sizes.xlsx", package));
            match &told.error {
                Some(_) => told.refused("bad-table", &["damaged"]),
                None => told.read(1, 0),
            }
            assert!(which == "unpacked" || claim > 7 || told.error.is_some(), "{claim}: {told:?}");
        }
    }
}

#[test]
fn locked_files_are_told_from_broken_ones() {
    let mut package = sound().zip();
    // Bit 0 of the flags: the part is encrypted.
    for (mark, field) in [(LOCAL, 6), (CENTRAL, 8)] {
        for place in places(&package, mark) {
            package[place + field] |= 1;
        }
    }
    let locked = ods(&(ods_headings() + &ods_slow())).with(
        "META-INF/manifest.xml",
        r#"<manifest:manifest xmlns:manifest="urn:oasis:names:tc:opendocument:xmlns:manifest:1.0"><manifest:file-entry manifest:full-path="content.xml" manifest:media-type="text/xml" manifest:size="9"><manifest:encryption-data manifest:checksum="x"><manifest:algorithm manifest:algorithm-name="http://www.w3.org/2001/04/xmlenc#aes256-cbc"/></manifest:encryption-data></manifest:file-entry></manifest:manifest>"#,
    );
    // Its content is no XML then.
    let scrambled = locked.clone().with("content.xml", vec![0x9f; 500]);
    for contents in [package, locked.zip(), scrambled.zip()] {
        let error = refused(contents);
        assert_eq!(error.code(), "bad-table");
        assert!(error.to_string().contains("password"), "{error}");
    }
}

#[test]
fn a_part_that_comes_twice_is_read_once() {
    let mut package = named_again(&sound().zip(), 1);
    // The last part is the sheet; both are called the same.
    let last = *places(&package, CENTRAL).last().expect("a part");
    package[last + 46..last + 54].copy_from_slice(b"xl/works");
    assert_eq!(labels(&checked(package)), [(2, "slow 2".to_owned())]);
}
