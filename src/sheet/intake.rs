//! Rows in: one way for files, tables of other programs and lists of dicts.

use std::collections::{BTreeSet, HashMap};

use super::cell::Cell;
use super::given::Given;
use super::heading::{self, Column};
use super::kept::Kept;
use super::marks::Mark;
use crate::error::{Error, ErrorKind, cut};
use crate::mounting::facts::{BLANK, NOT_ASKED, contradiction};
use crate::mounting::{Columns, FIELDS, Field, marking};
use crate::units::{Decimal, Shop};
use crate::wheel::read_marking;

/// Most columns of a table.
pub const MOST_COLUMNS: usize = 1024;
/// Most rows of a table.
pub const MOST_ROWS: usize = 1_048_576;
/// Most characters of a cell.
pub const MOST_CHARACTERS: usize = 32_767;
/// Most cells of one field that are not read again: racks repeat a few.
const MOST_KNOWN: usize = 4096;
/// Most bytes of text that are kept of a table, unless an option raises it.
pub const MOST_BYTES: u64 = 256 << 20;

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
    table: String,
    pub(crate) plan: Vec<Column>,
    /// Fields that a misspelt heading asks for: blank in every row.
    misspelt: Vec<usize>,
    pub(crate) headings: Vec<String>,
    /// The texts of the row that they come from.
    pub(crate) came: Vec<String>,
    pub(crate) marks: Vec<Mark>,
    /// Whether cells have addresses, so that one beyond the headings has shifted nothing.
    addressed: bool,
    /// Most bytes of text that are kept.
    most_bytes: u64,
    pub(crate) columns: Columns,
    pub(crate) taken: Vec<Taken>,
    pub(crate) kept: Kept,
    /// Headings that nothing reads, each with the known heading most like it.
    pub(crate) unread: Vec<(String, Option<String>)>,
    /// What is worth knowing about how the table was read.
    pub(crate) notes: Vec<String>,
    /// Whether there are cells beyond the last column that a table may have.
    pub(crate) beyond: bool,
    /// Columns (from 0) with cells and no heading that names them.
    nameless: BTreeSet<usize>,
    /// How many markings have parts that were not read, and the first with its row.
    unread_markings: usize,
    unread_marking: Option<(usize, String)>,
    /// The numbers of one row before it is known to be sound.
    numbers: Vec<(usize, f64)>,
    /// The codes of its cells, by column.
    codes: Vec<u32>,
    /// What was read already, by field and by the code of the cell.
    known: Vec<HashMap<u32, f64>>,
}

impl Intake {
    /// For a table with these headings.
    ///
    /// # Errors
    ///
    /// [`ErrorKind::TooLarge`] over 1,024 columns, [`ErrorKind::BadHeading`]
    /// for a heading that comes twice or has a wrong unit, and for a unit or a
    /// mapping of a heading that is not there; [`ErrorKind::BadTable`] when no
    /// heading is known.
    pub fn new(table: &str, headings: &[String], given: Given<'_>) -> Result<Self, Error> {
        if headings.len() > MOST_COLUMNS {
            return Err(ErrorKind::TooLarge {
                name: table.into(),
                what: format!("{} columns", headings.len()),
                cap: MOST_COLUMNS as u64,
                hint: "keep the columns that hubwright reads; `hubwright headings` lists them"
                    .into(),
            }
            .into());
        }
        given.must_be_headings(headings)?;
        let mut plan: Vec<Column> = Vec::with_capacity(headings.len());
        let names = |heading: &&String| given.column(heading) == Ok(Column::Name);
        let named = headings.iter().filter(names).count() > 1;
        let (mut unread, mut misspelt) = (Vec::new(), Vec::new());
        for (at, heading) in headings.iter().enumerate() {
            let mut column = given.column(heading)?;
            // A number of the shop's own beside a name.
            if column == Column::Name && heading.trim().eq_ignore_ascii_case("id") && named {
                column = Column::Unknown;
            }
            if let Some(first) = plan.iter().position(|other| column.says_the_same(other)) {
                return Err(ErrorKind::BadHeading {
                    heading: cut(heading),
                    why: format!(
                        "(column {}) says the same as {:?} (column {})",
                        at + 1,
                        cut(&headings[first]),
                        first + 1
                    ),
                    hint: format!(
                        "keep one of the two columns, or leave one out by mapping it to nothing: \"{}=\"",
                        cut(heading)
                    ),
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
        if !plan.iter().any(|column| matches!(column, Column::Datum { .. } | Column::Marking)) {
            return Err(no_heading(table));
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
        let kept = plan.iter().zip(headings).filter(|(column, _)| **column != Column::Ours);
        let kept = Kept::new(kept.map(|(_, heading)| heading.trim().to_owned()).collect());
        let point = Mark { decimal: Decimal::Point, unsettled: false };
        Ok(Self {
            table: table.into(),
            misspelt,
            marks: vec![point; plan.len()],
            plan,
            headings: headings.to_vec(),
            came: Vec::new(),
            addressed: false,
            most_bytes: MOST_BYTES,
            columns: Columns::new(),
            taken: Vec::new(),
            kept,
            unread,
            notes: Vec::new(),
            beyond: false,
            nameless: BTreeSet::new(),
            unread_markings: 0,
            unread_marking: None,
            numbers: Vec::new(),
            codes: Vec::new(),
            known: vec![HashMap::new(); FIELDS.len()],
        })
    }

    /// For a table whose cells have addresses, and with another cap on the text that is kept.
    pub(crate) fn set(&mut self, addressed: bool, most_bytes: u64) {
        (self.addressed, self.most_bytes) = (addressed, most_bytes);
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

    /// Takes a row; a row without any cell filled is passed over.
    ///
    /// # Errors
    ///
    /// [`ErrorKind::TooLarge`] over 1,048,576 rows, or over the cap on text.
    /// What is wrong with the row itself is kept with it and spoils nothing else.
    pub fn row(&mut self, number: usize, cells: &[Cell<'_>]) -> Result<(), Error> {
        if cells.iter().all(Cell::is_blank) {
            return Ok(());
        }
        self.keep(cells)?;
        let mut name = String::new();
        let (mut problem, mut marking) = (None, None);
        self.numbers.clear();
        self.numbers.extend(self.misspelt.iter().map(|field| (*field, BLANK)));
        for (at, (column, heading)) in self.plan.iter().zip(&self.headings).enumerate() {
            let cell = cells.get(at).copied().unwrap_or(Cell::Blank);
            let blank = cell.is_blank();
            match column {
                Column::Name if !blank => name = cell.spoken(),
                Column::Marking => {
                    marking = Some(match cell {
                        Cell::Text(text) => text.to_owned(),
                        cell => cell.spoken(),
                    });
                }
                Column::Datum { fields, unit } => {
                    for &field in fields {
                        // What was read once under this heading need not be read again.
                        let known = &mut self.known[field];
                        let before = known.get(&self.codes[at]).copied();
                        let fact = match before {
                            _ if blank => Ok(BLANK),
                            Some(fact) => Ok(fact),
                            None => {
                                read_cell(&FIELDS[field], &cell, unit.as_deref(), self.marks[at])
                            }
                        };
                        match fact {
                            Ok(fact) => {
                                if before.is_none() && known.len() < MOST_KNOWN {
                                    known.insert(self.codes[at], fact);
                                }
                                self.numbers.push((field, fact));
                            }
                            Err(error) => problem = problem.or(Some(error.named(heading.trim()))),
                        }
                    }
                }
                Column::Unknown if !blank && heading.trim().is_empty() => {
                    self.nameless.insert(at);
                }
                _ => {}
            }
        }
        let beyond = cells.iter().enumerate().skip(self.plan.len());
        let mut beyond = beyond.filter(|(_, cell)| !cell.is_blank()).map(|(at, _)| at);
        if self.addressed {
            self.nameless.extend(beyond);
        } else if beyond.next().is_some() {
            problem = Some(more_cells());
        }
        if let (None, Some(text)) = (&problem, marking) {
            problem = self.marking(number, &text).err();
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
        if name.is_empty() {
            name = format!("row {number}");
        }
        if let Some(problem) = &problem {
            self.kept.weigh(problem);
        }
        self.taken.push(Taken { number, name, problem });
        Ok(())
    }

    /// Fills what the row leaves blank with what is written on its wheel.
    fn marking(&mut self, number: usize, text: &str) -> Result<(), Error> {
        let text = text.trim();
        if text.eq_ignore_ascii_case("none") {
            return Ok(());
        }
        let marking = match text {
            "" => None,
            text => Some(read_marking(text).map_err(|error| error.named("wheel marking"))?),
        };
        let numbers = &self.numbers;
        let place = |name: &str| {
            FIELDS.iter().position(|field| field.place == "wheel" && field.name == name)
        };
        let known = |name: &str| {
            let known = place(name).and_then(|at| numbers.iter().find(|(field, _)| *field == at));
            known.map_or(NOT_ASKED, |(_, fact)| *fact)
        };
        let (filled, says) = marking::fill(marking.as_ref(), known);
        for (name, fact) in filled.into_iter().chain([("marking_says", says)]) {
            let Some(at) = place(name) else { continue };
            let fact = if fact.is_nan() { fact } else { FIELDS[at].admit(fact)? };
            match self.numbers.iter_mut().find(|(field, _)| *field == at) {
                Some((_, number)) => *number = fact,
                None => self.numbers.push((at, fact)),
            }
        }
        if let Some(part) = marking.as_ref().and_then(|marking| marking.unread.first()) {
            self.unread_markings += 1;
            self.unread_marking.get_or_insert_with(|| (number, cut(&part.text)));
        }
        Ok(())
    }

    /// Takes a row that can't be read, whatever its cells say.
    pub(crate) fn spoiled(
        &mut self,
        number: usize,
        cells: &[Cell<'_>],
        error: Error,
    ) -> Result<(), Error> {
        let name = self.plan.iter().position(|column| *column == Column::Name);
        let name = name.and_then(|at| cells.get(at)).map(Cell::spoken).unwrap_or_default();
        let name = if name.is_empty() { format!("row {number}") } else { name };
        self.keep(cells)?;
        self.kept.weigh(&error);
        self.taken.push(Taken { number, name, problem: Some(error) });
        Ok(())
    }

    /// Keeps the cells of a row as they came, and the code of each for reading it.
    fn keep(&mut self, cells: &[Cell<'_>]) -> Result<(), Error> {
        let too_large = |what, cap, hint: &str| -> Error {
            ErrorKind::TooLarge { name: self.table.clone(), what, cap, hint: hint.into() }.into()
        };
        if self.taken.len() >= MOST_ROWS {
            return Err(too_many_rows(&self.table));
        }
        let ours = |at: usize| self.plan.get(at) == Some(&Column::Ours);
        let theirs = cells.iter().enumerate().filter(|(at, _)| !ours(*at)).map(|(_, cell)| *cell);
        let mut codes = self.kept.push(theirs).iter().copied();
        self.codes.clear();
        for column in &self.plan {
            let code = if *column == Column::Ours { 0 } else { codes.next().unwrap_or(0) };
            self.codes.push(code);
        }
        if self.kept.bytes() > self.most_bytes {
            return Err(too_large(
                "more bytes to keep".into(),
                self.most_bytes,
                "leave columns out, split the table, or raise the cap (--most-megabytes)",
            ));
        }
        Ok(())
    }

    /// Takes the last row back.
    pub(crate) fn take_back(&mut self) {
        if self.taken.pop().is_some_and(|row| row.problem.is_none()) {
            self.columns.pop();
        }
        self.kept.pop();
    }

    /// Says of which columns no heading tells what they hold.
    pub(crate) fn finish(&mut self) {
        let mut names: Vec<String> = self.nameless.iter().map(|at| letters(*at)).collect();
        if self.beyond {
            names.push(format!("those beyond {}", letters(MOST_COLUMNS - 1)));
        }
        if let Some((row, part)) = &self.unread_marking {
            let more = match self.unread_markings {
                1 => String::new(),
                count => format!(", and parts of {} more", count - 1),
            };
            self.notes
                .push(format!("In the wheel marking of row {row}, {part:?} was not read{more}."));
        }
        if !names.is_empty() {
            self.notes.push(format!(
                "Cells without a heading were not read: column{} {}.",
                if names.len() == 1 { "" } else { "s" },
                some(&names)
            ));
        }
    }
}

/// The first few of a list, and how many more there are.
pub(crate) fn some<T: AsRef<str>>(names: &[T]) -> String {
    const MOST: usize = 10;
    let shown: Vec<&str> = names.iter().take(MOST).map(AsRef::as_ref).collect();
    let more = names.len().saturating_sub(MOST);
    let more = if more > 0 { format!(" and {more} more") } else { String::new() };
    format!("{}{more}", shown.join(", "))
}

/// A column as sheets name it: A for the first, AA for the twenty-seventh.
pub(crate) fn letters(column: usize) -> String {
    let (mut left, mut name) = (column + 1, Vec::new());
    while left > 0 {
        left -= 1;
        name.push(b'A' + (left % 26) as u8);
        left /= 26;
    }
    name.iter().rev().map(|letter| char::from(*letter)).collect()
}

/// A table in which no heading is known.
pub(crate) fn no_heading(table: &str) -> Error {
    ErrorKind::BadTable {
        name: table.into(),
        why: "has no heading that hubwright knows".into(),
        hint: "one of its first 50 rows has to hold headings like \"wheel diameter [mm]\" and \"spindle greatest speed [rpm]\"".into(),
    }
    .into()
}

/// A table of more rows than a sheet can have.
pub(crate) fn too_many_rows(table: &str) -> Error {
    ErrorKind::TooLarge {
        name: table.into(),
        what: format!("more than {MOST_ROWS} rows"),
        cap: MOST_ROWS as u64,
        hint: "split it into several tables".into(),
    }
    .into()
}

/// A table with nothing in it.
pub(crate) fn empty(table: &str) -> Error {
    ErrorKind::BadTable {
        name: table.into(),
        why: "is empty".into(),
        hint: "one row holds headings, each row below it one mounting".into(),
    }
    .into()
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

/// A row that a separator inside a cell has shifted.
pub(crate) fn more_cells() -> Error {
    bad_row(
        "has more cells than there are headings",
        "look for a separator inside a cell; put such a cell in quotes",
    )
}

/// A problem of one row.
pub(crate) fn bad_row(why: &str, hint: &str) -> Error {
    ErrorKind::BadRow { why: why.into(), hint: hint.into() }.into()
}

fn read_cell(field: &Field, cell: &Cell<'_>, unit: Option<&str>, mark: Mark) -> Result<f64, Error> {
    let is_date = field.sort.name == "date";
    match cell {
        Cell::Blank => Ok(NOT_ASKED),
        Cell::Text(text) if text.len() > MOST_CHARACTERS && text.chars().count() > MOST_CHARACTERS => {
            Err(bad_row(
                &format!("has a cell of more than {MOST_CHARACTERS} characters"),
                "shorten it",
            ))
        }
        Cell::Text(text) if mark.unsettled && may_group(text) => Err(bad_row(
            "has a number like 4,500 or 4.500 that could be thousands",
            "write it without a mark for thousands, or say which it is: --decimal point or --decimal comma",
        )),
        Cell::Text(text) => field.read(text, unit, mark.decimal),
        Cell::Fault(fault) => Err(bad_row(
            &format!("has {} under {:?}", cut(fault), field.heading()),
            "put the value itself there, or open the file in an office program, mend the formula and save it",
        )),
        Cell::Day(day) if is_date => field.admit(*day as f64),
        Cell::Number(number) => match unit {
            // The shortest text that reads back as this number is what was meant.
            Some(_) => field.read(&number.to_string(), unit, Decimal::Point),
            // Words and days have no unit; what is wrong is told of the text.
            None if (field.sort.units)().is_empty() => {
                field.read(&number.to_string(), None, Decimal::Point)
            }
            None => Err(ErrorKind::NoUnit {
                argument: field.heading(),
                given: number.to_string(),
                kind: field.sort.name,
                hint: format!(
                    "state the unit in the heading, like \"{} [{}]\"",
                    field.heading(),
                    (field.sort.units)().first().unwrap_or(&"")
                ),
            }
            .into()),
        },
        Cell::Day(_) => field.read(&cell.spoken(), unit, mark.decimal).map_err(|mut error| {
            error.set_hint(
                "office programs turn what looks like a date into one, 5/16 too; make the cell a text and write it again".into(),
            );
            error
        }),
        Cell::Truth(_) => field.read(&cell.spoken(), unit, mark.decimal),
    }
}
