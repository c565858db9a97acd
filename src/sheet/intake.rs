//! Rows in: one way for files, tables of other programs and lists of dicts.

use super::heading::{self, Column};
use crate::error::{Error, ErrorKind, cut};
use crate::mounting::facts::{BLANK, NOT_ASKED, contradiction};
use crate::mounting::{Columns, FIELDS, Field};
use crate::units::{Decimal, Shop, figure};

/// Most columns of a table.
pub const MOST_COLUMNS: usize = 1024;
/// Most rows of a table.
pub const MOST_ROWS: usize = 1_048_576;
/// Most characters of a cell.
pub const MOST_CHARACTERS: usize = 32_767;

/// One cell of a table.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Cell<'a> {
    /// Nothing.
    Blank,
    /// Text as typed.
    Text(&'a str),
    /// A number, in the unit of the heading.
    Number(f64),
    /// Yes or no.
    Truth(bool),
    /// A day, counted from 1970-01-01.
    Day(i64),
}

impl Cell<'_> {
    /// Whether nothing is in it; NaN is how some programs say so.
    fn blank(&self) -> bool {
        match self {
            Cell::Blank => true,
            Cell::Text(text) => text.trim().is_empty(),
            Cell::Number(number) => number.is_nan(),
            _ => false,
        }
    }
}

/// A row that was read, or why it could not be.
#[derive(Clone, Debug)]
pub(crate) struct Taken {
    /// Its number in the table, as the program that holds it counts.
    pub number: usize,
    /// What the shop calls the mounting.
    pub name: String,
    /// Why it could not be read.
    pub problem: Option<Error>,
}

/// Takes the rows of one table.
#[derive(Debug)]
pub struct Intake {
    plan: Vec<Column>,
    /// Fields that a misspelt heading asks for: blank in every row.
    misspelt: Vec<usize>,
    headings: Vec<String>,
    decimal: Decimal,
    /// Whether nothing showed what separates whole from broken parts.
    unsettled: bool,
    pub(crate) columns: Columns,
    pub(crate) taken: Vec<Taken>,
    /// Headings that nothing reads, each with the known heading most like it.
    pub(crate) unread: Vec<(String, Option<String>)>,
    /// The numbers of one row before it is known to be sound.
    numbers: Vec<(usize, f64)>,
}

impl Intake {
    /// For a table with these headings. `units` gives a column its unit where
    /// the heading states none.
    ///
    /// # Errors
    ///
    /// [`ErrorKind::TooLarge`] over 1,024 columns, [`ErrorKind::BadHeading`]
    /// for a heading that comes twice or has a wrong unit,
    /// [`ErrorKind::BadTable`] when no heading is known.
    pub fn new(
        table: &str,
        headings: &[String],
        units: &[(String, String)],
        decimal: Decimal,
    ) -> Result<Self, Error> {
        if headings.len() > MOST_COLUMNS {
            return Err(ErrorKind::TooLarge {
                name: table.into(),
                what: format!("{} columns", headings.len()),
                cap: MOST_COLUMNS,
                hint: "keep the columns that hubwright reads; it lists them with `template`".into(),
            }
            .into());
        }
        for (heading, unit) in units {
            if !headings.contains(heading) {
                return Err(ErrorKind::BadHeading {
                    heading: cut(heading),
                    why: format!("is given the unit {unit:?} but is not a heading of the table"),
                    hint: "name the heading exactly as the table has it".into(),
                }
                .into());
            }
        }
        let mut plan = Vec::with_capacity(headings.len());
        let (mut unread, mut misspelt) = (Vec::new(), Vec::new());
        for (at, heading) in headings.iter().enumerate() {
            let given =
                units.iter().find(|(name, _)| name == heading).map(|(_, unit)| unit.as_str());
            let column = match given {
                Some(unit) => heading::read(&format!("{heading} [{unit}]"))?,
                None => heading::read(heading)?,
            };
            let same = |other: &Column| match (&column, other) {
                (Column::Name, Column::Name) => true,
                (Column::Datum { fields, .. }, Column::Datum { fields: others, .. }) => {
                    fields.iter().any(|field| others.contains(field))
                }
                _ => false,
            };
            if let Some(first) = plan.iter().position(same) {
                return Err(ErrorKind::BadHeading {
                    heading: cut(heading),
                    why: format!(
                        "(column {}) says the same as {:?} (column {})",
                        at + 1,
                        headings[first],
                        first + 1
                    ),
                    hint: "keep one of the two columns".into(),
                }
                .into());
            }
            if column == Column::Unknown && !heading.trim().is_empty() {
                let guess = heading::guess(heading);
                unread.push((cut(heading.trim()), guess.nearest));
                misspelt.extend(guess.asks);
            }
            plan.push(column);
        }
        if !plan.iter().any(|column| matches!(column, Column::Datum { .. })) {
            return Err(ErrorKind::BadTable {
                name: table.into(),
                why: "has no heading that hubwright knows in its first row".into(),
                hint: "the first row holds headings like \"wheel diameter [mm]\" and \"spindle greatest speed [rpm]\"".into(),
            }
            .into());
        }
        // A heading that is nearly a known one asks for that datum, and nobody
        // can read its cells: they count as blank.
        let read = |field: &usize| {
            plan.iter().any(
                |column| matches!(column, Column::Datum { fields, .. } if fields.contains(field)),
            )
        };
        misspelt.retain(|field| !read(field));
        misspelt.sort_unstable();
        misspelt.dedup();
        Ok(Self {
            misspelt,
            plan,
            headings: headings.to_vec(),
            decimal,
            unsettled: false,
            columns: Columns::new(),
            taken: Vec::new(),
            unread,
            numbers: Vec::new(),
        })
    }

    /// Makes a number like `4,500` or `4.500` spoil its row: nothing in the table showed
    /// whether it is four thousand and a half or four and a half.
    pub(crate) fn unsettle(&mut self) {
        self.unsettled = true;
    }

    /// What most lengths of the table are written in.
    pub fn shop(&self) -> Shop {
        let (mut inches, mut lengths) = (0, 0);
        for column in &self.plan {
            if let Column::Datum { unit: Some(unit), fields } = column
                && FIELDS[fields[0]].sort.name == "length"
            {
                lengths += 1;
                inches += usize::from(matches!(
                    unit.as_str(),
                    "in" | "inch" | "inches" | "\"" | "″" | "ft" | "thou"
                ));
            }
        }
        if 2 * inches > lengths { Shop::Inch } else { Shop::Metric }
    }

    /// Takes a row; a row without any cell filled is passed over. `extra` is
    /// whether filled cells lie beyond the last heading.
    ///
    /// # Errors
    ///
    /// [`ErrorKind::TooLarge`] over 1,048,576 rows. What is wrong with the row
    /// itself is kept with it and spoils nothing else.
    pub fn row<'a>(
        &mut self,
        number: usize,
        cells: impl Iterator<Item = Cell<'a>>,
        extra: bool,
    ) -> Result<(), Error> {
        let mut name = String::new();
        let mut problem = None;
        let mut filled = extra;
        self.numbers.clear();
        self.numbers.extend(self.misspelt.iter().map(|field| (*field, BLANK)));
        let mut cells = cells;
        for (column, heading) in self.plan.iter().zip(&self.headings) {
            let cell = cells.next().unwrap_or(Cell::Blank);
            let blank = cell.blank();
            filled |= !blank;
            match column {
                Column::Name if !blank => name = spoken(&cell),
                Column::Datum { fields, unit } => {
                    for &field in fields {
                        let fact = if blank {
                            Ok(BLANK)
                        } else if self.unsettled
                            && matches!(cell, Cell::Text(text) if may_group(text))
                        {
                            Err(bad_row(
                                "has a number like 4,500 or 4.500 that could be thousands",
                                "say which it is: --decimal point or --decimal comma",
                            ))
                        } else {
                            read_cell(&FIELDS[field], &cell, unit.as_deref(), self.decimal)
                        };
                        match fact {
                            Ok(fact) => self.numbers.push((field, fact)),
                            Err(error) => problem = problem.or(Some(error.named(heading.trim()))),
                        }
                    }
                }
                _ => {}
            }
        }
        if !filled {
            return Ok(());
        }
        if self.taken.len() >= MOST_ROWS {
            return Err(ErrorKind::TooLarge {
                name: "table".into(),
                what: format!("more than {MOST_ROWS} rows"),
                cap: MOST_ROWS,
                hint: "split it into several tables".into(),
            }
            .into());
        }
        if name.is_empty() {
            name = format!("row {number}");
        }
        if extra {
            problem = Some(bad_row(
                "has more cells than there are headings",
                "look for a separator inside a cell; put such a cell in quotes",
            ));
        }
        if problem.is_none() {
            let numbers = &self.numbers;
            let number =
                |at| numbers.iter().find(|(field, _)| *field == at).map_or(NOT_ASKED, |(_, n)| *n);
            problem = contradiction(number).err();
        }
        if problem.is_none() {
            self.columns.push(self.numbers.iter().copied());
        }
        self.taken.push(Taken { number, name, problem });
        Ok(())
    }

    /// Takes a row that could not even be split into cells.
    pub(crate) fn spoiled(&mut self, number: usize, error: Error) {
        self.taken.push(Taken { number, name: format!("row {number}"), problem: Some(error) });
    }
}

/// Whether a number has three digits after its only mark, as thousands have when they are grouped.
pub(crate) fn may_group(text: &str) -> bool {
    text.trim().rsplit_once([',', '.']).is_some_and(|(whole, rest)| {
        let digits =
            |part: &str| !part.is_empty() && part.bytes().all(|byte| byte.is_ascii_digit());
        let whole = whole.trim_start_matches('-');
        rest.len() == 3
            && digits(rest)
            && digits(whole)
            && !whole.trim_start_matches('0').is_empty()
    })
}

/// A problem of one row.
pub(crate) fn bad_row(why: &str, hint: &str) -> Error {
    ErrorKind::BadRow { why: why.into(), hint: hint.into() }.into()
}

/// A cell as the text of a name.
fn spoken(cell: &Cell<'_>) -> String {
    match cell {
        Cell::Blank => String::new(),
        Cell::Text(text) => cut(text.trim()),
        Cell::Number(number) => figure(*number, 6),
        Cell::Truth(truth) => if *truth { "yes" } else { "no" }.into(),
        Cell::Day(day) => crate::units::Date::from_days(*day).to_string(),
    }
}

fn read_cell(
    field: &Field,
    cell: &Cell<'_>,
    unit: Option<&str>,
    decimal: Decimal,
) -> Result<f64, Error> {
    let is_date = field.sort.name == "date";
    match cell {
        Cell::Blank => Ok(NOT_ASKED),
        Cell::Text(text) if text.chars().count() > MOST_CHARACTERS => Err(bad_row(
            &format!("has a cell of more than {MOST_CHARACTERS} characters"),
            "shorten it",
        )),
        Cell::Text(text) => field.read(text, unit, decimal),
        Cell::Day(day) if is_date => field.admit(*day as f64),
        Cell::Number(number) => match unit {
            // The shortest text that reads back as this number is what was meant.
            Some(_) => field.read(&number.to_string(), unit, Decimal::Point),
            None if (field.sort.units)().is_empty() && !is_date => {
                field.read(&number.to_string(), None, Decimal::Point)
            }
            None => Err(ErrorKind::NoUnit {
                argument: field.heading(),
                given: number.to_string(),
                kind: field.sort.name,
                hint: match (field.sort.units)().first() {
                    Some(unit) => format!(
                        "state the unit in the heading, like \"{} [{unit}]\"",
                        field.heading()
                    ),
                    None => format!("write it like \"{}\"", field.sort.example),
                },
            }
            .into()),
        },
        Cell::Truth(_) | Cell::Day(_) => field.read(&spoken(cell), unit, decimal),
    }
}
