//! Workbooks are zip packages of XML parts. Nothing that a package says of
//! itself is believed: it is unpacked once into nothing, counted, and only
//! then read.

use std::collections::HashMap;
use std::fs::File;
use std::io::{BufReader, Read, Seek, SeekFrom};
use std::ops::ControlFlow;

use memchr::memmem;
use quick_xml::XmlVersion;
use quick_xml::events::{BytesRef, BytesStart};
use zip::ZipArchive;
use zip::read::ZipFile;

use super::{Source, could_not_read, not_a_workbook, ods, xlsx};
use crate::error::{Error, ErrorKind, cut};
use crate::sheet::intake::{Intake, MOST_CHARACTERS};

/// Most parts of a package: a workbook has a few for each sheet and picture.
const MOST_PARTS: usize = 10_000;
/// Longest run of bytes without a tag: the longest cell with each of its
/// characters written out as a reference.
const LONGEST_TEXT: u64 = 32 * MOST_CHARACTERS as u64;
/// Deepest nesting of tags, with room for what looks like tags and isn't.
const DEEPEST: u64 = 10_000;

pub(super) type Xml<'a> = quick_xml::Reader<BufReader<ZipFile<'a, BufReader<File>>>>;

/// A package that was looked through.
pub(super) struct Package<'a> {
    pub source: Source<'a>,
    zip: ZipArchive<BufReader<File>>,
    /// What each part looked like, by name.
    parts: HashMap<String, Looked>,
}

/// Reads the table of a workbook.
pub(super) fn take(
    source: Source<'_>,
    each: &mut dyn FnMut(f64) -> ControlFlow<()>,
) -> Result<Intake, Error> {
    let mut package = Package::open(source)?;
    if package.has("content.xml") {
        return ods::take(package, each);
    }
    match package.office_part()? {
        Some(workbook) => xlsx::take(package, &workbook, each),
        None => Err(not_a_workbook(
            package.source.name,
            "is a zip file and no workbook",
            "unpack it first, or save the sheet as .xlsx, .ods or CSV",
        )),
    }
}

impl<'a> Package<'a> {
    fn open(source: Source<'a>) -> Result<Self, Error> {
        let name = source.name;
        let cap = source.options.most_bytes;
        let too_large = |what: String, cap: u64| -> Error {
            ErrorKind::TooLarge {
                name: name.into(),
                what,
                cap,
                hint: "save the sheet alone in a new workbook, or raise the cap (--most-megabytes)"
                    .into(),
            }
            .into()
        };
        let failed = |error| could_not_read(name, &error);
        let mut file = source.file.try_clone().map_err(failed)?;
        let size = file.metadata().map_err(failed)?.len();
        if size > cap {
            return Err(too_large(format!("{size} bytes"), cap));
        }
        let parts = count_headers(&mut file).map_err(failed)?;
        if parts > MOST_PARTS {
            return Err(too_large(format!("{parts} parts"), MOST_PARTS as u64));
        }
        file.seek(SeekFrom::Start(0)).map_err(failed)?;
        let mut zip =
            ZipArchive::new(BufReader::new(file)).map_err(|error| damaged(name, &error))?;
        let (mut left, mut parts) = (cap, HashMap::new());
        let mut chunk = vec![0; 1 << 16];
        for at in 0..zip.len() {
            let mut part = zip.by_index(at).map_err(|error| damaged(name, &error))?;
            let part_name = part.name().map_err(|error| damaged(name, &error))?.into_owned();
            let mut looked = Looked::default();
            loop {
                let read = part.read(&mut chunk).map_err(|error| damaged(name, &error))?;
                if read == 0 {
                    break;
                }
                if read as u64 > left {
                    return Err(too_large("more bytes when it is unpacked".into(), cap));
                }
                left -= read as u64;
                looked.at(&chunk[..read]);
            }
            parts.insert(part_name, looked);
        }
        Ok(Self { source, zip, parts })
    }

    /// Whether there is a part of this name.
    pub(super) fn has(&self, part: &str) -> bool {
        self.parts.contains_key(part)
    }

    /// What a part unpacks to.
    pub(super) fn size(&self, part: &str) -> u64 {
        self.parts.get(part).map_or(0, |part| part.size)
    }

    /// Whether a sheet has merged cells.
    pub(super) fn merges(&self, part: &str) -> bool {
        self.parts.get(part).is_some_and(|part| part.merge.found)
    }

    /// A part as XML.
    pub(super) fn xml(&mut self, part: &str) -> Result<Xml<'_>, Error> {
        let name = self.source.name;
        if let Some(looked) = self.parts.get(part) {
            looked.must_be_plain(name, part)?;
        }
        let part = self.zip.by_name(part).map_err(|error| damaged(name, &error))?;
        let mut reader = quick_xml::Reader::from_reader(BufReader::new(part));
        let config = reader.config_mut();
        config.expand_empty_elements = true;
        config.allow_dangling_amp = true;
        Ok(reader)
    }

    /// The part that holds the workbook, when the package has relations that name one.
    fn office_part(&mut self) -> Result<Option<String>, Error> {
        if !self.has("_rels/.rels") {
            return Ok(None);
        }
        let relations = self.relations("")?;
        let workbook = relations.into_values().find(|relation| {
            relation.kind.ends_with("/officeDocument") && relation.target.ends_with(".xml")
        });
        Ok(workbook.map(|relation| relation.target).filter(|target| self.has(target)))
    }

    /// What a part is related to, by the names that it uses; `""` for the package itself.
    pub(super) fn relations(&mut self, part: &str) -> Result<HashMap<String, Relation>, Error> {
        let (folder, file) = part.rsplit_once('/').unwrap_or(("", part));
        let within = |target: &str| match target.strip_prefix('/') {
            Some(whole) => whole.to_owned(),
            None if folder.is_empty() => target.to_owned(),
            None => format!("{folder}/{target}"),
        };
        let path = within(&format!("_rels/{file}.rels"));
        let mut relations = HashMap::new();
        if !self.has(&path) {
            return Ok(relations);
        }
        let name = self.source.name;
        let mut xml = self.xml(&path)?;
        let mut buffer = Vec::new();
        loop {
            use quick_xml::events::Event;
            match xml.read_event_into(&mut buffer).map_err(|error| damaged(name, &error))? {
                Event::Start(tag) if tag.local_name().as_ref() == "Relationship" => {
                    if let Some(id) = attribute(&tag, "Id") {
                        relations.insert(
                            id,
                            Relation {
                                kind: attribute(&tag, "Type").unwrap_or_default(),
                                target: within(&attribute(&tag, "Target").unwrap_or_default()),
                            },
                        );
                    }
                }
                Event::Eof => return Ok(relations),
                _ => {}
            }
            buffer.clear();
        }
    }
}

/// What one part is to another.
pub(super) struct Relation {
    pub kind: String,
    pub target: String,
}

/// An attribute of a tag by its local name.
pub(super) fn attribute(tag: &BytesStart<'_>, name: &str) -> Option<String> {
    let found =
        tag.attributes().flatten().find(|attribute| attribute.key.local_name().as_ref() == name)?;
    // A value that can't be taken apart is as good as none.
    found.normalized_value(XmlVersion::Implicit1_0).ok().map(std::borrow::Cow::into_owned)
}

/// Adds the character that a reference such as `&amp;` or `&#64;` stands for.
pub(super) fn add_reference(reference: &BytesRef<'_>, out: &mut String) {
    match reference.resolve_char_ref() {
        Ok(Some(character)) => out.push(character),
        _ => match quick_xml::escape::resolve_predefined_entity(reference.as_ref()) {
            Some(text) => out.push_str(text),
            None => out.push('\u{fffd}'),
        },
    }
}

/// A package that can't be read to its end. What a library says about it is of no
/// use to whoever holds the file.
pub(super) fn damaged(name: &str, error: &dyn std::fmt::Display) -> Error {
    if error.to_string().to_lowercase().contains("password") {
        let why = "is locked with a password";
        return not_a_workbook(name, why, "save it without a password");
    }
    not_a_workbook(name, "is cut off or damaged", "open it in an office program and save it again")
}

/// How many headers of parts a package holds at most: as often as the mark of one is in it.
fn count_headers(file: &mut File) -> std::io::Result<usize> {
    const MARK: &[u8] = b"PK\x01\x02";
    let finder = memmem::Finder::new(MARK);
    let mut chunk = vec![0; 1 << 16];
    let (mut kept, mut count) = (0, 0);
    loop {
        let read = file.read(&mut chunk[kept..])?;
        if read == 0 {
            return Ok(count);
        }
        let end = kept + read;
        count += finder.find_iter(&chunk[..end]).count();
        // A mark may lie across two readings; three bytes can't hold one.
        kept = end.min(MARK.len() - 1);
        chunk.copy_within(end - kept..end, 0);
    }
}

/// What the bytes of a part look like, without taking them apart.
#[derive(Default)]
struct Looked {
    size: u64,
    /// Longest run without a tag's beginning.
    longest: u64,
    run: u64,
    deepest: u64,
    depth: u64,
    last: u8,
    entity: Spotter,
    merge: Spotter,
}

/// Finds a word whose first letter comes once in it, whatever readings it lies across.
#[derive(Default)]
struct Spotter {
    matched: usize,
    found: bool,
}

impl Spotter {
    fn at(&mut self, byte: u8, word: &[u8]) {
        self.matched = match () {
            () if byte == word[self.matched] => self.matched + 1,
            () => usize::from(byte == word[0]),
        };
        if self.matched == word.len() {
            (self.found, self.matched) = (true, 0);
        }
    }
}

impl Looked {
    fn at(&mut self, bytes: &[u8]) {
        self.size += bytes.len() as u64;
        for &byte in bytes {
            match (self.last, byte) {
                (b'<', b'/') | (b'/', b'>') => self.depth = self.depth.saturating_sub(1),
                (b'<', b'!' | b'?') => {}
                (b'<', _) => self.depth += 1,
                _ => {}
            }
            self.entity.at(byte, b"<!ENTITY");
            self.merge.at(byte, b"mergeCell");
            self.run = if byte == b'<' { 0 } else { self.run + 1 };
            self.longest = self.longest.max(self.run);
            self.deepest = self.deepest.max(self.depth);
            self.last = byte;
        }
    }

    /// Whether it can be read as XML without filling the memory.
    fn must_be_plain(&self, name: &str, part: &str) -> Result<(), Error> {
        let too_large = |what: &str, cap| -> Error {
            ErrorKind::TooLarge {
                name: name.into(),
                what: format!("{what} in {:?}", cut(part)),
                cap,
                hint: "save the sheet alone in a new workbook".into(),
            }
            .into()
        };
        if self.longest > LONGEST_TEXT {
            return Err(too_large("a longer text", LONGEST_TEXT));
        }
        if self.deepest > DEEPEST {
            return Err(too_large("tags nested deeper", DEEPEST));
        }
        if self.entity.found {
            return Err(not_a_workbook(
                name,
                "declares entities of its own, which no office program does",
                "open it in an office program and save it again",
            ));
        }
        Ok(())
    }
}
