//! Citations held as data, printed wherever they matter.

use std::fmt;

/// How a figure was obtained. What a rule may do depends on it: practice and
/// memory can caution, never refuse.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Status {
    /// Read in the place named.
    Read,
    /// Read in a reprint of the place named.
    Reprint,
    /// Recalled and unverified.
    Memory,
    /// Common practice, no source.
    Practice,
    /// Follows from stated inputs by arithmetic, geometry or mechanics.
    Computed,
    /// Stated by the user, for instance by the marking on the wheel.
    Input,
}

impl Status {
    /// Every status.
    pub const ALL: [Self; 6] =
        [Self::Read, Self::Reprint, Self::Memory, Self::Practice, Self::Computed, Self::Input];

    /// The word that is printed.
    pub const fn word(self) -> &'static str {
        match self {
            Self::Read => "read",
            Self::Reprint => "read in a reprint",
            Self::Memory => "from memory, unverified",
            Self::Practice => "common practice, no source",
            Self::Computed => "computed",
            Self::Input => "as stated by the user",
        }
    }

    /// Whether a rule may refuse a mounting on a figure of this status.
    pub const fn may_refuse(self) -> bool {
        !matches!(self, Self::Memory | Self::Practice)
    }
}

/// Where a number or a rule comes from.
///
/// ```
/// use hubwright::source::{Source, Status};
///
/// const O6: Source = Source::new("29cfr1910.215-o6", "29 CFR 1910.215", "", "Table O-6", Status::Read);
/// assert_eq!(O6.to_string(), "29 CFR 1910.215, Table O-6 (read)");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Source {
    /// Short key, stable between versions.
    pub key: &'static str,
    /// Title of the work.
    pub title: &'static str,
    /// Edition; empty when the work has none.
    pub edition: &'static str,
    /// Clause, table or page; empty when the whole work is meant.
    pub locator: &'static str,
    /// How it was obtained.
    pub status: Status,
}

impl Source {
    /// A citation.
    pub const fn new(
        key: &'static str,
        title: &'static str,
        edition: &'static str,
        locator: &'static str,
        status: Status,
    ) -> Self {
        Self { key, title, edition, locator, status }
    }
}

impl fmt::Display for Source {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.title)?;
        if !self.edition.is_empty() {
            write!(f, ":{}", self.edition)?;
        }
        if !self.locator.is_empty() {
            let comma = if self.locator.starts_with('(') { "" } else { ", " };
            write!(f, "{comma}{}", self.locator)?;
        }
        // "common practice, no source (common practice, no source)" says nothing twice over.
        if self.title == self.status.word() {
            Ok(())
        } else {
            write!(f, " ({})", self.status.word())
        }
    }
}
