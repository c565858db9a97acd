//! The texts that the cells of a workbook share.

use quick_xml::events::Event;

use super::package::{Package, damaged};
use super::xlsx::text_until;
use crate::error::{Error, ErrorKind};

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
            buffer.clear();
            match xml.read_event_into(&mut buffer).map_err(|error| damaged(name, &error))? {
                Event::Start(tag) if tag.local_name().as_ref() == "si" => {
                    strings.text.push_str(&text_until(&mut xml, "si", name)?);
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
