//! A day of the calendar, as stamped on wheels and typed into sheets.

use std::fmt;

use crate::error::{Error, ErrorKind, cut};

/// A day of the Gregorian calendar, from the year 1 to 9999.
///
/// ```
/// use hubwright::units::Date;
///
/// let made = Date::read("2024-02-29")?;
/// assert_eq!(made.years_later(3).to_string(), "2027-03-01");
/// assert!(Date::read("2023-02-29").is_err());
/// # Ok::<(), hubwright::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Date {
    year: i32,
    month: u8,
    day: u8,
}

impl Date {
    /// A day; `None` when the calendar has no such day.
    pub fn new(year: i32, month: u8, day: u8) -> Option<Self> {
        let in_range = (1..=9999).contains(&year) && (1..=12).contains(&month);
        (in_range && day >= 1 && day <= days_in(year, month)).then_some(Self { year, month, day })
    }

    /// Reads `2027-03-01`, the one form that every country reads the same way.
    ///
    /// # Errors
    ///
    /// [`ErrorKind::NotAQuantity`] for any other form or a day that does not exist.
    pub fn read(text: &str) -> Result<Self, Error> {
        let parts = || {
            let mut parts = text.trim().splitn(3, '-');
            let mut next = |digits: usize| {
                let part = parts.next()?;
                let plain = part.len() == digits && part.bytes().all(|b| b.is_ascii_digit());
                plain.then(|| part.parse::<u16>().ok()).flatten()
            };
            Self::new(next(4)?.into(), next(2)? as u8, next(2)? as u8)
        };
        parts().ok_or_else(|| {
            ErrorKind::NotAQuantity {
                argument: "date".into(),
                text: cut(text),
                kind: "date",
                why: "a date is year, month, day",
                hint: "write it like 2027-03-01".into(),
            }
            .into()
        })
    }

    /// Year, month and day.
    pub fn parts(self) -> (i32, u8, u8) {
        (self.year, self.month, self.day)
    }

    /// Days since 1970-01-01.
    pub fn days(self) -> i64 {
        // Years start in March here, so that the odd day is the last of the year.
        let (year, month) = if self.month > 2 {
            (i64::from(self.year), i64::from(self.month) - 3)
        } else {
            (i64::from(self.year) - 1, i64::from(self.month) + 9)
        };
        let day_of_year = (153 * month + 2) / 5 + i64::from(self.day) - 1;
        365 * year + year / 4 - year / 100 + year / 400 + day_of_year - 719_468
    }

    /// The day so many days after 1970-01-01, kept inside the years 1 to 9999.
    pub fn from_days(days: i64) -> Self {
        let (mut low, mut high) = (1, 9999);
        let starts = |year| Self { year, month: 1, day: 1 }.days();
        while low < high {
            let middle = (low + high + 1) / 2;
            if starts(middle) <= days { low = middle } else { high = middle - 1 }
        }
        let mut left = (days - starts(low)).clamp(0, 365);
        let mut month = 1;
        while month < 12 && left >= i64::from(days_in(low, month)) {
            left -= i64::from(days_in(low, month));
            month += 1;
        }
        let day = (left as u8 + 1).min(days_in(low, month));
        Self { year: low, month, day }
    }

    /// The same day so many years on; 29 February becomes 1 March.
    #[must_use]
    pub fn years_later(self, years: u8) -> Self {
        let year = (self.year + i32::from(years)).min(9999);
        Self::new(year, self.month, self.day).unwrap_or(Self { year, month: 3, day: 1 })
    }
}

impl fmt::Display for Date {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{:04}-{:02}-{:02}", self.year, self.month, self.day)
    }
}

fn days_in(year: i32, month: u8) -> u8 {
    match month {
        2 if year % 4 == 0 && (year % 100 != 0 || year % 400 == 0) => 29,
        2 => 28,
        4 | 6 | 9 | 11 => 30,
        _ => 31,
    }
}

#[cfg(test)]
mod tests {
    use super::Date;

    #[test]
    fn days_count_from_1970_and_back() {
        // Facts of the calendar: the epoch, a leap day, a century that is none.
        for (text, days) in [("1970-01-01", 0), ("2000-02-29", 11_016), ("1900-03-01", -25_508)] {
            let date = Date::read(text).expect("a day of the calendar");
            assert_eq!(date.days(), days, "{text}");
            assert_eq!(Date::from_days(days), date, "{text}");
        }
        for days in (-700_000..2_900_000).step_by(101) {
            assert_eq!(Date::from_days(days).days(), days);
        }
    }
}
