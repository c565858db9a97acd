//! The report as text.

use std::fmt::Write as _;

use super::super::batch::{Checked, Row};
use super::{MOST_LISTED, made_by, reading_notes, summary};
use crate::mounting::{Outcome, Verdict, cautions};

/// Width of a line.
const WIDTH: usize = 100;

/// The verdicts of a rack as text: one line a mounting, then what is not OK,
/// worst first, then what to do before a wheel is started.
pub fn text(checked: &Checked) -> String {
    let mut out = String::new();
    // Writing to a string cannot fail.
    let _ = lay_out(checked, &mut out);
    out
}

fn lay_out(checked: &Checked, out: &mut String) -> std::fmt::Result {
    let rows = checked.len();
    writeln!(out, "{}", summary(checked))?;
    // What was not looked at is said before anything that was.
    reading_notes(checked).iter().try_for_each(|line| wrapped(out, "", line))?;
    if let Some(line) = cautions::left_out_line(&checked.terms) {
        wrapped(out, "", &line)?;
    }
    writeln!(out)?;
    let order = checked.worst_first();
    let shown: Vec<Row> =
        order.iter().take(MOST_LISTED).filter_map(|row| checked.row(*row)).collect();
    let mut by_number: Vec<&Row> = shown.iter().collect();
    by_number.sort_by_key(|row| row.number);
    let widest = shown.iter().map(|row| row.name.chars().count()).max().unwrap_or(0).clamp(8, 32);
    writeln!(out, "{:>5}  {:widest$}  {:10}  because", "row", "mounting", "verdict")?;
    for row in by_number {
        let because = match &row.verdict {
            Ok(verdict) => verdict.headline(),
            Err(error) => error.to_string().lines().next().unwrap_or_default().to_owned(),
        };
        let lead =
            format!("{:>5}  {:widest$}  {:10}  ", row.number, cut_to(&row.name, widest), word(row));
        wrapped(out, &lead, &because)?;
    }
    if rows > shown.len() {
        writeln!(
            out,
            "   …  {} more, none of them worse than these; they are counted above",
            rows - shown.len()
        )?;
    }
    for row in &shown {
        match &row.verdict {
            Ok(verdict) if verdict.worst < Outcome::Pass => findings(out, row, verdict)?,
            Ok(_) => {}
            Err(error) => {
                writeln!(out, "\nrow {}, {}: unreadable", row.number, row.name)?;
                error.to_string().lines().try_for_each(|line| wrapped(out, "  ", line))?;
            }
        }
    }
    writeln!(out)?;
    wrapped(out, "", &made_by())?;
    cautions::terms_lines(&checked.terms).iter().try_for_each(|line| wrapped(out, "", line))?;
    writeln!(out, "\nBefore you start it:")?;
    cautions::BEFORE_YOU_START.iter().try_for_each(|line| wrapped(out, "  - ", line))?;
    writeln!(out, "\n{}", cautions::FIRST)
}

fn findings(out: &mut String, row: &Row, verdict: &Verdict) -> std::fmt::Result {
    writeln!(out, "\nrow {}, {}: {}", row.number, row.name, verdict.worst.printed())?;
    for finding in verdict.findings.iter().filter(|finding| finding.outcome < Outcome::Pass) {
        wrapped(
            out,
            &format!("  {:10}  {}: ", finding.outcome.printed(), finding.rule.slug),
            &finding.says,
        )?;
        if let Some(source) = finding.source {
            wrapped(out, "              source: ", &source.to_string())?;
        }
        if !finding.advice.is_empty() {
            wrapped(out, "              advice: ", finding.advice)?;
        }
    }
    let passed = verdict.with(Outcome::Pass).count();
    let rest: Vec<_> = verdict.with(Outcome::NotChecked).map(|finding| finding.rule.slug).collect();
    if rest.is_empty() {
        writeln!(out, "  {passed} rules passed")
    } else {
        wrapped(out, &format!("  {passed} rules passed, not checked: "), &rest.join(", "))
    }
}

fn word(row: &Row) -> &'static str {
    row.worst.map_or("unreadable", Outcome::printed)
}

fn cut_to(text: &str, width: usize) -> String {
    if text.chars().count() <= width {
        return text.to_owned();
    }
    text.chars().take(width.saturating_sub(1)).chain(['…']).collect()
}

/// Writes words in lines of [`WIDTH`], the later ones indented, without
/// letting a stray control character reach a terminal.
fn wrapped(out: &mut String, lead: &str, text: &str) -> std::fmt::Result {
    let indent = lead.chars().count().min(52);
    let (mut at, mut fresh) = (lead.chars().count(), true);
    let clean = |text: &str| {
        text.chars().map(|c| if c.is_control() { '\u{fffd}' } else { c }).collect::<String>()
    };
    write!(out, "{}", clean(lead))?;
    for word in clean(text).split_whitespace() {
        let length = word.chars().count();
        if !fresh && at + 1 + length > WIDTH {
            write!(out, "\n{:indent$}", "")?;
            (at, fresh) = (indent, true);
        }
        write!(out, "{}{word}", if fresh { "" } else { " " })?;
        at += length + usize::from(!fresh);
        fresh = false;
    }
    writeln!(out)
}
