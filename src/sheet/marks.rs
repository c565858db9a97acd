//! What separates whole from broken parts in the numbers of each column.

use super::heading::Column;
use super::intake::{Intake, may_group, some};
use super::layout::Dialect;
use super::row::Waiting;
use crate::error::{Error, ErrorKind, cut};
use crate::sheet::cell::Held;
use crate::units::{Decimal, number};

/// How the numbers of one column are written.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Mark {
    pub decimal: Decimal,
    /// Whether nothing showed it: a number like `4,500` or `4.500` then spoils its row.
    pub unsettled: bool,
}

/// The first cell of a column that shows each mark, with its row.
#[derive(Default)]
struct Seen {
    point: Option<(usize, String)>,
    comma: Option<(usize, String)>,
    unclear: Option<(usize, String)>,
}

/// The decimal mark of each column, by what its texts show.
///
/// A column without any takes the mark that the others agree on. What could be
/// thousands is only settled by its own column, or by the user.
pub(crate) fn find(
    table: &str,
    dialect: Dialect,
    intake: &Intake,
    rows: &[Waiting],
) -> Result<Vec<Mark>, Error> {
    let seen: Vec<Seen> =
        intake.plan.iter().enumerate().map(|(at, plan)| seen(dialect, plan, at, rows)).collect();
    let commas = seen.iter().any(|seen| seen.comma.is_some());
    let points = seen.iter().any(|seen| seen.point.is_some());
    let agreed = match (points, commas) {
        (true, false) => Some(Decimal::Point),
        (false, true) => Some(Decimal::Comma),
        _ => None,
    };
    let ask = |why: String| -> Error {
        let hint = "say which it is: --decimal point or --decimal comma".to_owned();
        ErrorKind::BadTable { name: table.into(), why, hint }.into()
    };
    let mark = |(seen, heading): (Seen, &String)| {
        let heading = cut(heading.trim());
        let own = match (seen.point, seen.comma, seen.unclear) {
            (Some((row, point)), Some((other, comma)), _) => {
                return Err(ask(format!(
                    "has numbers with a decimal point ({point:?} in row {row}) and others with a decimal comma ({comma:?} in row {other}) under {heading:?}"
                )));
            }
            (Some(_), None, _) => Some(Decimal::Point),
            (None, Some(_), _) => Some(Decimal::Comma),
            (None, None, Some((row, text))) if agreed.is_none() => {
                return Err(ask(format!(
                    "has {text:?} in row {row} under {heading:?}, which could be a thousand and more or one and a bit"
                )));
            }
            (None, None, _) => None,
        };
        Ok(Mark {
            decimal: own.or(agreed).unwrap_or(dialect.assumed),
            // Where commas separate cells, a point is what is left for decimals.
            unsettled: own.is_none() && dialect.points_group,
        })
    };
    seen.into_iter().zip(&intake.headings).map(mark).collect()
}

/// The marks that the texts of a column show. `12,7` shows a comma and `12.7`
/// a point; `1,250` could be either and shows nothing.
fn seen(dialect: Dialect, column: &Column, at: usize, rows: &[Waiting]) -> Seen {
    let mut seen = Seen::default();
    let Column::Datum { unit: Some(_), .. } = column else { return seen };
    for row in rows {
        let Some(Held::Text(text)) = row.cells.get(at) else { continue };
        let by_point = text.contains('.') && number(text, Decimal::Point).is_ok();
        let by_comma = text.contains(',') && number(text, Decimal::Comma).is_ok();
        let thousands = may_group(text);
        let place = match (by_point, by_comma) {
            (true, _) if thousands && dialect.points_group => &mut seen.unclear,
            (true, _) => &mut seen.point,
            (_, true) if thousands => &mut seen.unclear,
            (_, true) => &mut seen.comma,
            _ => continue,
        };
        place.get_or_insert_with(|| (row.number, cut(text.trim())));
    }
    seen
}

/// What was found out about decimal marks, where cells show a comma.
pub(crate) fn told(intake: &Intake, marks: &[Mark]) -> Option<String> {
    let measured = |column: &Column| matches!(column, Column::Datum { unit: Some(_), .. });
    let columns = intake.plan.iter().zip(marks).zip(&intake.headings);
    let (mut comma, mut point) = (Vec::new(), 0);
    for ((column, mark), heading) in columns {
        match mark.decimal {
            Decimal::Comma if measured(column) && !mark.unsettled => {
                comma.push(cut(heading.trim()));
            }
            Decimal::Point if measured(column) => point += 1,
            _ => {}
        }
    }
    match (comma.is_empty(), point) {
        (true, _) => None,
        (false, 0) => Some("Numbers are read with a decimal comma.".into()),
        _ => Some(format!("Numbers are read with a decimal comma under: {}.", some(&comma))),
    }
}
