//! Which rows of a table hold its headings, under whatever titles there are.

use super::cell::{Cell, Held};
use super::given::Given;
use super::heading::{self, Column};
use super::row::Waiting;

/// Most filled rows that are searched for headings.
pub(crate) const MOST_TITLES: usize = 50;
/// What a heading that is known counts for, and one that names the mounting:
/// so that one datum alone outweighs a column of names.
const DATUM: usize = 2;
const NAME: usize = 1;
/// Most bytes of a word that several headings have in common.
const LONGEST_GROUP: usize = 100;
/// From which count on a row is one of headings and not of texts that happen to be words of ours.
pub(crate) const SURE: usize = DATUM + NAME;

/// Headings and where they are.
#[derive(Debug)]
pub(crate) struct Found {
    /// Places of the first and the last of their rows; two where the upper one is shared.
    pub first: usize,
    pub last: usize,
    pub headings: Vec<String>,
    pub score: usize,
    /// Number of a row above them that heads another table.
    pub above: Option<usize>,
}

/// The rows with most headings that are known: one alone, or two of which the
/// upper says what several of the lower have in common.
///
/// A row above them that would be headings by itself is told apart: it heads
/// another table, whose rows must not vanish as titles.
pub(crate) fn find(rows: &[Waiting], given: Given<'_>) -> Option<Found> {
    let mut best: Option<Found> = None;
    let mut offer = |first, last, headings: Vec<String>| {
        let score = headings.iter().map(|text| count(text, given)).sum();
        if score >= DATUM && best.as_ref().is_none_or(|best| score > best.score) {
            best = Some(Found { first, last, headings, score, above: None });
        }
    };
    for (at, row) in rows.iter().enumerate().take(MOST_TITLES) {
        offer(at, at, trimmed(row.cells.iter().map(|cell| text(cell.cell())).collect()));
        if let Some(below) = rows.get(at + 1)
            && below.number == row.number + 1
        {
            offer(at, at + 1, joined(row, below, given));
        }
    }
    let mut best = best?;
    let heads = |row: &&Waiting| {
        let cells: Vec<Cell<'_>> = row.cells.iter().map(Held::cell).collect();
        score(&cells, given) >= SURE
    };
    best.above = rows[..best.first].iter().find(heads).map(|row| row.number);
    Some(best)
}

/// What the cells of a row would count for as headings, as far as it matters.
pub(crate) fn score(cells: &[Cell<'_>], given: Given<'_>) -> usize {
    let begins = |text: &str| text.trim_start().starts_with(char::is_alphabetic);
    let mut score = 0;
    for cell in cells {
        // Most cells of most rows are numbers, which are no headings.
        if matches!(cell, Cell::Text(text) if begins(text)) {
            score += count(&text(*cell), given);
        }
        if score >= SURE {
            break;
        }
    }
    score
}

/// The text of a cell that may be a heading.
pub(crate) fn text(cell: Cell<'_>) -> String {
    match cell {
        Cell::Text(text) => text.split_whitespace().collect::<Vec<_>>().join(" "),
        cell => cell.spoken(),
    }
}

fn count(text: &str, given: Given<'_>) -> usize {
    match given.column(text) {
        Ok(Column::Datum { .. } | Column::Marking) | Err(_) => DATUM,
        Ok(Column::Name) => NAME,
        _ => 0,
    }
}

/// Without the blanks behind the last heading, which are no columns.
pub(crate) fn trimmed(mut texts: Vec<String>) -> Vec<String> {
    while texts.last().is_some_and(String::is_empty) {
        texts.pop();
    }
    texts
}

/// The headings of two rows.
fn joined(above: &Waiting, below: &Waiting, given: Given<'_>) -> Vec<String> {
    let words = |row: &Waiting, at: usize| row.cells.get(at).map(|cell| text(cell.cell()));
    let filled = above.cells.iter().filter(|cell| !cell.cell().is_blank()).count();
    let mut shared = String::new();
    let headings = (0..above.cells.len().max(below.cells.len())).map(|at| {
        let upper = words(above, at).unwrap_or_default();
        let own = words(below, at).unwrap_or_default();
        // A cell that stands alone in its row is a title, not a word for all below it.
        // Neither is a whole sentence.
        if !upper.is_empty() && filled > 1 && upper.len() <= LONGEST_GROUP {
            shared.clone_from(&upper);
        }
        let both = format!("{shared} {own}");
        if own.is_empty() {
            // Merged over both rows.
            upper
        } else if shared.is_empty() || own == upper || heading::names_a_place(&own) {
            own
        } else if count(&both, given) > 0 || heading::is_place(&shared) {
            // Under `spindle` a speed is the spindle's, or unknown: never the wheel's.
            both
        } else {
            own
        }
    });
    trimmed(headings.collect())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn row(number: usize, texts: &[&str]) -> Waiting {
        let cells = texts.iter().map(|text| Held::Text((*text).into())).collect();
        Waiting { number, cells, ..Waiting::default() }
    }

    fn headings(rows: &[Waiting]) -> (usize, Vec<String>) {
        let found = find(rows, Given::default()).expect("headings");
        (found.last, found.headings)
    }

    #[test]
    fn headings_are_found_under_titles_and_joined_with_the_words_above_them() {
        let rows = [
            row(1, &["Rack of the tool room"]),
            row(3, &["", "wheel", "", "fixed flange", ""]),
            row(4, &["name", "diameter [mm]", "bore [mm]", "diameter [mm]", "land [mm]"]),
            row(5, &["a", "200", "31.75", "80", "8"]),
        ];
        let wanted = [
            "name",
            "wheel diameter [mm]",
            "wheel bore [mm]",
            "fixed flange diameter [mm]",
            "fixed flange land [mm]",
        ];
        assert_eq!(headings(&rows), (2, wanted.map(str::to_owned).to_vec()));
    }

    #[test]
    fn headings_over_two_rows_count_beside_shared_ones() {
        let rows = [
            row(1, &["name", "wheel diameter [mm]", "wheel", "", "wheel use before"]),
            row(2, &["", "", "marked speed [rpm]", "bore [mm]", ""]),
            row(3, &["a", "200", "3340", "31.75", "2030-01-01"]),
        ];
        let wanted = [
            "name",
            "wheel diameter [mm]",
            "wheel marked speed [rpm]",
            "wheel bore [mm]",
            "wheel use before",
        ];
        assert_eq!(headings(&rows), (1, wanted.map(str::to_owned).to_vec()));
    }

    #[test]
    fn the_word_above_is_never_passed_over_for_another_place() {
        let rows = [
            row(1, &["", "wheel", "spindle"]),
            row(2, &["name", "max speed [rpm]", "max rpm"]),
            row(3, &["a", "3340", "6000"]),
        ];
        let (_, found) = headings(&[&rows[..], &[row(4, &["wheel diameter [mm]"])]].concat());
        assert!(!found.iter().any(|heading| heading == "max rpm"), "{found:?}");
    }

    #[test]
    fn headings_of_another_table_above_are_told() {
        let rows = [
            row(1, &["name", "wheel bore [mm]"]),
            row(2, &["a", "31.75"]),
            row(4, &["name", "wheel bore [mm]", "wheel diameter [mm]"]),
            row(5, &["b", "31.75", "200"]),
        ];
        let found = find(&rows, Given::default()).expect("headings");
        assert_eq!((found.first, found.above), (2, Some(1)));
    }

    #[test]
    fn a_row_of_data_joins_no_headings() {
        let rows =
            [row(1, &["name", "wheel diameter [mm]", "wheel bore [mm]"]), row(2, &["a", "", ""])];
        assert_eq!(headings(&rows).0, 0);
    }
}
