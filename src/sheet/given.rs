//! What the caller says about the headings of a table.

use super::heading::{self, Column};
use crate::error::{Error, ErrorKind, cut};

/// What the caller says about headings.
#[derive(Clone, Copy, Debug, Default)]
pub struct Given<'a> {
    /// Units of headings that state none.
    pub units: &'a [(String, String)],
    /// Headings of the table, each with the heading of ours that it stands for;
    /// with nothing when its column is to be left out.
    pub mapping: &'a [(String, String)],
}

impl Given<'_> {
    /// Whether what is given is about headings that are there.
    pub(crate) fn must_be_headings(&self, headings: &[String]) -> Result<(), Error> {
        let there = |name: &str| headings.iter().any(|heading| heading.trim() == name.trim());
        let units =
            self.units.iter().map(|(name, unit)| (name, format!("is given the unit {unit:?}")));
        let mapped =
            self.mapping.iter().map(|(name, ours)| (name, format!("is mapped to {ours:?}")));
        match units.chain(mapped).find(|(name, _)| !there(name)) {
            Some((heading, what)) => Err(ErrorKind::BadHeading {
                heading: cut(heading),
                why: format!("{what} but is not a heading of the table"),
                hint: "name the heading exactly as the table has it".into(),
            }
            .into()),
            None => Ok(()),
        }
    }

    /// What a heading means.
    pub(crate) fn column(&self, heading: &str) -> Result<Column, Error> {
        let find = |list: &[(String, String)]| {
            let found = list.iter().find(|(name, _)| name.trim() == heading.trim());
            found.map(|(_, means)| means.trim().to_owned())
        };
        let unit = find(self.units);
        let stated = |words: &str| match &unit {
            Some(unit) => format!("{words} [{unit}]"),
            None => words.to_owned(),
        };
        let Some(ours) = find(self.mapping) else { return heading::read(&stated(heading)) };
        if ours.is_empty() {
            return Ok(Column::LeftOut);
        }
        match heading::read(&stated(&ours))? {
            Column::Unknown => Err(ErrorKind::BadHeading {
                heading: cut(heading),
                why: format!("is mapped to {:?}, which hubwright does not know", cut(&ours)),
                hint: heading::guess(&ours).nearest.map_or_else(
                    || "`hubwright headings` lists the headings it knows".into(),
                    |nearest| format!("did you mean {nearest:?}?"),
                ),
            }
            .into()),
            Column::Datum { unit: Some(unit), .. }
                if heading::unit_of(heading).is_some_and(|theirs| {
                    let said = heading::read(&format!("{} [{theirs}]", heading::words_of(&ours)));
                    matches!(said, Ok(Column::Datum { unit: Some(said), .. }) if said != unit)
                }) =>
            {
                Err(ErrorKind::BadHeading {
                    heading: cut(heading),
                    why: format!("is mapped to {:?}, in another unit", cut(&ours)),
                    hint: "leave the unit out of the mapping, or state the heading's own".into(),
                }
                .into())
            }
            // Their heading may state the unit that ours leaves open.
            Column::Datum { unit: None, fields } => Ok(match heading::unit_of(heading) {
                Some(unit) => heading::read(&format!("{ours} [{unit}]"))
                    .unwrap_or(Column::Datum { unit: None, fields }),
                None => Column::Datum { unit: None, fields },
            }),
            column => Ok(column),
        }
    }
}
