//! Which decimal mark each column of a table uses: told by the texts in it.

use super::cell::Held;
use super::heading::Column;
use super::intake::{Intake, Mark, may_group, some};
use super::layout::{Dialect, Waiting};
use super::read::Options;
use crate::error::{Error, ErrorKind, cut};
use crate::units::{Decimal, number};

/// The decimal mark of each column, by what its texts show.
pub(super) fn marks(
    table: &str,
    options: &Options,
    dialect: Dialect,
    intake: &Intake,
    rows: &[Waiting],
) -> Result<Vec<Mark>, Error> {
    let width = intake.plan.len();
    if let Some(decimal) = options.decimal {
        return Ok(vec![Mark { decimal, unsettled: false }; width]);
    }
    let seen: Vec<Seen> = (0..width).map(|at| seen(dialect, &intake.plan[at], at, rows)).collect();
    let commas = seen.iter().any(|seen| seen.comma.is_some());
    let points = seen.iter().any(|seen| seen.point.is_some());
    // What all columns that show a mark agree on holds for the others.
    let agreed = match (points, commas) {
        (true, false) => Some(Decimal::Point),
        (false, true) => Some(Decimal::Comma),
        _ => None,
    };
    seen.into_iter().zip(&intake.headings).map(|(seen, heading)| {
            let heading = cut(heading.trim());
            let decimal = match (seen.point, seen.comma, seen.unclear) {
                (Some((row, point)), Some((other, comma)), _) => {
                    return Err(ask(table, format!(
                        "has numbers with a decimal point ({point:?} in row {row}) and others with a decimal comma ({comma:?} in row {other}) under {heading:?}"
                    )));
                }
                (Some(_), None, _) => Some(Decimal::Point),
                (None, Some(_), _) => Some(Decimal::Comma),
                (None, None, Some((row, text))) if agreed.is_none() => {
                    return Err(ask(table, format!(
                        "has {text:?} in row {row} under {heading:?}, which could be a thousand and more or one and a bit"
                    )));
                }
                (None, None, _) => agreed,
            };
            Ok(Mark {
                decimal: decimal.unwrap_or(dialect.assumed),
                // Where commas separate cells, a point is what is left for decimals.
                unsettled: decimal.is_none() && dialect.points_group,
            })
        }).collect()
}

fn ask(table: &str, why: String) -> Error {
    ErrorKind::BadTable {
        name: table.into(),
        why,
        hint: "say which it is: --decimal point or --decimal comma".into(),
    }
    .into()
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

/// The first cell of a column that shows each mark, with its row.
#[derive(Default)]
struct Seen {
    point: Option<(usize, String)>,
    comma: Option<(usize, String)>,
    unclear: Option<(usize, String)>,
}

/// What was found out about decimal marks, where there is a comma.
pub(super) fn told(intake: &Intake, marks: &[Mark]) -> Option<String> {
    let measured = |column: &Column| matches!(column, Column::Datum { unit: Some(_), .. });
    let columns = intake.plan.iter().zip(marks).zip(&intake.headings);
    let measured: Vec<(&Mark, &String)> = columns
        .filter(|((column, _), _)| measured(column))
        .map(|((_, mark), heading)| (mark, heading))
        .collect();
    let comma: Vec<String> = measured
        .iter()
        .filter(|(mark, _)| mark.decimal == Decimal::Comma)
        .map(|(_, heading)| cut(heading.trim()))
        .collect();
    if comma.is_empty() {
        None
    } else if comma.len() == measured.len() {
        Some("Numbers are read with a decimal comma.".into())
    } else {
        Some(format!("Numbers are read with a decimal comma under: {}.", some(&comma)))
    }
}
