//! Workbooks are zip packages of XML parts. Nothing that a package says of
//! itself is believed: it is unpacked once into nothing, counted, and only
//! then read, piece by piece, with a cap on every piece.

use std::collections::HashMap;
use std::fs::File;
use std::io::{self, BufReader, Read, Seek, SeekFrom};
use std::ops::ControlFlow;

use memchr::memmem;
use quick_xml::XmlVersion;
use quick_xml::events::{BytesRef, BytesStart, Event};
use zip::ZipArchive;
use zip::read::ZipFile;

use super::{Source, could_not_read, not_a_workbook, ods, xlsx};
use crate::error::{Error, ErrorKind, cut};
use crate::sheet::intake::{Intake, MOST_CHARACTERS};

/// Most parts of a package, or sheets of a workbook: it has a few parts for each sheet and picture.
pub(super) const MOST_PARTS: usize = 10_000;
/// Longest text, tag or comment: the longest cell with each of its characters
/// written out as a reference.
const LONGEST_PIECE: usize = 32 * MOST_CHARACTERS;
/// Deepest nesting of tags; no office program comes near it.
const DEEPEST: usize = 1000;

/// A package that was looked through.
pub(super) struct Package<'a> {
    pub source: Source<'a>,
    zip: ZipArchive<BufReader<File>>,
    /// What each part looked like, by its path.
    parts: HashMap<String, Looked>,
}

/// What was seen of a part when it was unpacked into nothing.
struct Looked {
    /// Its place in the package.
    at: usize,
    size: u64,
    /// Whether it has merged cells.
    merges: bool,
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
        None if package.has("xl/workbook.bin") => Err(not_a_workbook(
            package.source.name,
            "is a binary workbook (.xlsb)",
            "save it as .xlsx, .ods or CSV",
        )),
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
        // As many parts as the mark of a header is in it, or fewer.
        let (_, parts) = count(&mut file, b"PK\x01\x02", u64::MAX).map_err(failed)?;
        if parts > MOST_PARTS {
            return Err(too_large(format!("{parts} parts"), MOST_PARTS as u64));
        }
        file.seek(SeekFrom::Start(0)).map_err(failed)?;
        let mut zip =
            ZipArchive::new(BufReader::new(file)).map_err(|error| damaged(name, &error))?;
        let (mut left, mut parts) = (cap, HashMap::new());
        for at in 0..zip.len() {
            let mut part = zip.by_index(at).map_err(|error| damaged(name, &error))?;
            let path = path("", &part.name().map_err(|error| damaged(name, &error))?);
            let (size, merges) =
                count(&mut part, b"mergeCell", left).map_err(|error| damaged(name, &error))?;
            if size > left {
                return Err(too_large("more bytes when it is unpacked".into(), cap));
            }
            left -= size;
            parts.insert(path, Looked { at, size, merges: merges > 0 });
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
        self.parts.get(part).is_some_and(|part| part.merges)
    }

    /// A part as XML.
    pub(super) fn xml(&mut self, part: &str) -> Result<Xml<'_>, Error> {
        let name = self.source.name;
        // A part that is not there is at no place.
        let at = self.parts.get(part).map_or(usize::MAX, |looked| looked.at);
        let file = self.zip.by_index(at).map_err(|error| damaged(name, &error))?;
        let piece = BufReader::new(Piece { file, bytes: 0 });
        let mut reader = quick_xml::Reader::from_reader(piece);
        let config = reader.config_mut();
        config.expand_empty_elements = true;
        config.allow_dangling_amp = true;
        Ok(Xml { reader, name, part: cut(part), depth: 0 })
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
        let list = path(folder, &format!("_rels/{file}.rels"));
        let mut relations = HashMap::new();
        if !self.has(&list) {
            return Ok(relations);
        }
        let mut xml = self.xml(&list)?;
        let mut buffer = Vec::new();
        loop {
            match xml.next(&mut buffer)? {
                Event::Start(tag) if tag.local_name().as_ref() == "Relationship" => {
                    if let Some(id) = attribute(&tag, "Id") {
                        let kind = attribute(&tag, "Type").unwrap_or_default();
                        let target = path(folder, &attribute(&tag, "Target").unwrap_or_default());
                        relations.insert(id, Relation { kind, target });
                    }
                    if relations.len() > MOST_PARTS {
                        return Err(xml.too_large("more relations", MOST_PARTS));
                    }
                }
                Event::Eof => return Ok(relations),
                _ => {}
            }
        }
    }
}

/// A part as XML, piece by piece.
pub(super) struct Xml<'a> {
    reader: quick_xml::Reader<BufReader<Piece<ZipFile<'a, BufReader<File>>>>>,
    name: &'a str,
    part: String,
    depth: usize,
}

impl Xml<'_> {
    /// The next piece: a tag, the end of one, a text. `buffer` is cleared first.
    pub(super) fn next<'b>(&mut self, buffer: &'b mut Vec<u8>) -> Result<Event<'b>, Error> {
        buffer.clear();
        self.reader.get_mut().get_mut().bytes = 0;
        let event = match self.reader.read_event_into(buffer) {
            Ok(event) => event,
            Err(_) if self.reader.get_ref().get_ref().bytes > LONGEST_PIECE => {
                return Err(self.too_large("a longer text", LONGEST_PIECE));
            }
            Err(error) => return Err(damaged(self.name, &error)),
        };
        match &event {
            Event::Start(_) => self.depth += 1,
            Event::End(_) => self.depth -= 1,
            Event::DocType(text) if text.contains("<!ENTITY") => {
                return Err(not_a_workbook(
                    self.name,
                    "declares entities of its own, which no office program does",
                    "open it in an office program and save it again",
                ));
            }
            _ => {}
        }
        if self.depth > DEEPEST {
            return Err(self.too_large("tags nested deeper", DEEPEST));
        }
        Ok(event)
    }

    /// How many bytes were read.
    pub(super) fn position(&self) -> u64 {
        self.reader.buffer_position()
    }

    /// The part ends where more has to come.
    pub(super) fn cut_off(&self) -> Error {
        damaged(self.name, &"it is cut off")
    }

    pub(super) fn too_large(&self, what: &str, cap: usize) -> Error {
        ErrorKind::TooLarge {
            name: self.name.into(),
            what: format!("{what} in {:?}", self.part),
            cap: cap as u64,
            hint: "save the sheet alone in a new workbook".into(),
        }
        .into()
    }
}

/// Counts the bytes of one piece, and ends one that would fill the memory.
struct Piece<R> {
    file: R,
    bytes: usize,
}

impl<R: Read> Read for Piece<R> {
    fn read(&mut self, buffer: &mut [u8]) -> io::Result<usize> {
        if self.bytes > LONGEST_PIECE {
            return Err(io::Error::other("a piece never ends"));
        }
        let read = self.file.read(buffer)?;
        self.bytes += read;
        Ok(read)
    }
}

/// The path of a part as another in `folder` names it. Parts are called the
/// same in capitals and in small letters (ECMA-376, part 2, 6.2.2.3).
fn path(folder: &str, target: &str) -> String {
    let folder = if target.starts_with(['/', '\\']) { "" } else { folder };
    let mut steps = Vec::new();
    for step in folder.split('/').chain(target.split(['/', '\\'])) {
        match step {
            "" | "." => {}
            ".." => {
                steps.pop();
            }
            step => steps.push(step.to_ascii_lowercase()),
        }
    }
    steps.join("/")
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

/// How many bytes there are to the end, and how often a mark is among them;
/// it stops where there are more than `most`.
fn count(bytes: &mut impl Read, mark: &[u8], most: u64) -> io::Result<(u64, usize)> {
    let finder = memmem::Finder::new(mark);
    let mut chunk = vec![0; 1 << 16];
    let (mut kept, mut size, mut found) = (0, 0, 0);
    loop {
        let read = bytes.read(&mut chunk[kept..])?;
        size += read as u64;
        if read == 0 || size > most {
            return Ok((size, found));
        }
        let end = kept + read;
        found += finder.find_iter(&chunk[..end]).count();
        // A mark may lie across two readings; a byte less than it can't hold one.
        kept = end.min(mark.len() - 1);
        chunk.copy_within(end - kept..end, 0);
    }
}
