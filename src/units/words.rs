//! Closed lists of words: shapes, kinds, yes and no.

use crate::error::{Error, ErrorKind, cut};

/// A quantity whose values are words from a closed list.
pub trait Words: Copy + PartialEq + 'static {
    /// What the list is of, in messages.
    const NAME: &'static str;
    /// Every value, in the order of their codes.
    const ALL: &'static [Self];
    /// Every value, with the word it is written as and others that mean it.
    const LIST: &'static [(Self, &'static str, &'static [&'static str])];

    /// The word it is written as.
    fn word(self) -> &'static str {
        Self::LIST.iter().find(|(value, ..)| *value == self).map_or("", |(_, word, _)| word)
    }

    /// Reads a word, whatever its case and with spaces or hyphens.
    ///
    /// # Errors
    ///
    /// [`ErrorKind::UnknownWord`] with the whole list.
    fn read_word(text: &str) -> Result<Self, Error> {
        let wanted = plain(text);
        let means = |(_, word, also): &&(Self, &str, &[&str])| {
            plain(word) == wanted || also.iter().any(|other| plain(other) == wanted)
        };
        Self::LIST.iter().find(means).map(|(value, ..)| *value).ok_or_else(|| {
            let words: Vec<_> = Self::LIST.iter().map(|(_, word, _)| *word).collect();
            ErrorKind::UnknownWord {
                argument: Self::NAME.into(),
                text: cut(text),
                allowed: words.join(", "),
                hint: format!("write one of these words, like \"{}\"", words[0]),
            }
            .into()
        })
    }
}

/// Lower case, without what people use to join words.
pub(crate) fn plain(text: &str) -> String {
    text.chars()
        .filter(|c| !c.is_whitespace() && !matches!(c, '-' | '_' | '.'))
        .flat_map(char::to_lowercase)
        .collect()
}

/// Declares an enum of words.
macro_rules! words {
    ($(#[$meta:meta])* $name:ident, $title:literal {
        $($(#[$doc:meta])* $variant:ident = $word:literal $([$($also:literal),*])?;)+
    }) => {
        $(#[$meta])*
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
        #[repr(u8)]
        #[non_exhaustive]
        pub enum $name {
            $($(#[$doc])* $variant),+
        }

        impl $crate::units::Words for $name {
            const NAME: &'static str = $title;
            const ALL: &'static [Self] = &[$(Self::$variant),+];
            const LIST: &'static [(Self, &'static str, &'static [&'static str])] =
                &[$((Self::$variant, $word, &[$($($also),*)?])),+];
        }

        impl ::std::fmt::Display for $name {
            fn fmt(&self, f: &mut ::std::fmt::Formatter<'_>) -> ::std::fmt::Result {
                f.write_str($crate::units::Words::word(*self))
            }
        }

        impl ::std::str::FromStr for $name {
            type Err = $crate::Error;
            fn from_str(text: &str) -> Result<Self, $crate::Error> {
                $crate::units::Words::read_word(text)
            }
        }
    };
}
pub(crate) use words;
