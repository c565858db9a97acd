//! The texts of a workbook, most of which its cells share.

use quick_xml::events::Event;

use super::package::{Package, Xml};
use crate::error::{Error, ErrorKind};
use crate::sheet::intake::MOST_CHARACTERS;

/// Bytes that are too many for any cell, whatever its characters.
pub(super) const LONGEST_TEXT: usize = 4 * MOST_CHARACTERS + 4;
/// Most texts that cells can share.
const MOST_STRINGS: usize = 1_000_000;

/// Texts in one block of memory.
#[derive(Debug, Default)]
pub(super) struct Strings {
    text: String,
    ends: Vec<usize>,
}

impl Strings {
    pub(super) fn read(package: &mut Package<'_>, part: &str) -> Result<Self, Error> {
        let name = package.source.name;
        // They stay in memory while the sheet is read, so that they get a share of the cap only.
        let most = package.source.options.most_bytes / 4;
        let too_large = |what: &str, cap| -> Error {
            ErrorKind::TooLarge {
                name: name.into(),
                what: what.into(),
                cap,
                hint: "save the sheet alone in a new workbook, or raise the cap (--most-megabytes)"
                    .into(),
            }
            .into()
        };
        let mut strings = Self::default();
        let mut xml = package.xml(part)?;
        let mut buffer = Vec::new();
        loop {
            match xml.next(&mut buffer)? {
                Event::Start(tag) if tag.local_name().as_ref() == "si" => {
                    strings.text.push_str(&text_until(&mut xml, "si")?);
                    strings.ends.push(strings.text.len());
                    if strings.ends.len() > MOST_STRINGS {
                        return Err(too_large("more shared texts", MOST_STRINGS as u64));
                    }
                    if strings.text.len() as u64 > most {
                        return Err(too_large("more bytes of shared text", most));
                    }
                }
                Event::Eof => return Ok(strings),
                _ => {}
            }
        }
    }

    /// The text at a place.
    pub(super) fn get(&self, at: usize) -> Option<&str> {
        let start = match at.checked_sub(1) {
            Some(before) => *self.ends.get(before)?,
            None => 0,
        };
        self.text.get(start..*self.ends.get(at)?)
    }
}

/// The text inside a tag, formatting left out: of a value all of it, of a rich
/// text what its runs hold and not how to pronounce it.
pub(super) fn text_until(xml: &mut Xml<'_>, end: &str) -> Result<String, Error> {
    let (mut text, mut buffer) = (String::new(), Vec::new());
    let (mut phonetic, mut inside) = (false, end == "v");
    loop {
        match xml.next(&mut buffer)? {
            Event::Text(part) if inside => text.push_str(&part.xml10_content()),
            Event::CData(part) if inside => text.push_str(&part.xml10_content()),
            Event::GeneralRef(part) if inside => super::package::add_reference(&part, &mut text),
            Event::Start(tag) => match tag.local_name().as_ref() {
                "rPh" => phonetic = true,
                "t" => inside = !phonetic,
                _ => {}
            },
            Event::End(tag) => match tag.local_name().as_ref() {
                "rPh" => phonetic = false,
                "t" => inside = false,
                found if found == end => return Ok(unescaped(text)),
                _ => {}
            },
            Event::Eof => return Err(xml.cut_off()),
            _ => {}
        }
        shorten(&mut text);
    }
}

/// Keeps a text from filling the memory: many short pieces can add up to more than
/// any one. It stays longer than a cell may be, and spoils its row.
pub(super) fn shorten(text: &mut String) {
    if text.len() > 2 * LONGEST_TEXT {
        let end = (0..=LONGEST_TEXT).rev().find(|at| text.is_char_boundary(*at));
        text.truncate(end.unwrap_or(0));
    }
}

/// A text with the signs that workbooks write as `_x000D_`, because XML can't
/// hold them all (ECMA-376, part 1, 22.9.2.19).
fn unescaped(text: String) -> String {
    if !text.contains("_x") {
        return text;
    }
    let (mut out, mut rest) = (String::with_capacity(text.len()), text.as_str());
    while let Some(at) = rest.find("_x") {
        out.push_str(&rest[..at]);
        rest = &rest[at..];
        let digits = rest.get(2..7).and_then(|five| five.strip_suffix('_'));
        let digits = digits.filter(|four| four.bytes().all(|digit| digit.is_ascii_hexdigit()));
        let sign = digits.and_then(|four| char::from_u32(u32::from_str_radix(four, 16).ok()?));
        // An underscore that stands for itself is written `_x005F_`.
        out.push(sign.unwrap_or('_'));
        rest = &rest[if sign.is_some() { 7 } else { 1 }..];
    }
    out + rest
}
