//! The report as JSON, for programs.

use std::io::{self, Write};

use serde::Serialize;
use serde::ser::{Error as _, Serializer};

use super::super::batch::{Checked, Row};
use super::super::cell::Cell;
use super::Told;
use crate::mounting::verdict::Figure;
use crate::mounting::{Finding, Outcome, Verdict, cautions};
use crate::tables;
use crate::units::{Date, Words};

/// The report's JSON Schema (draft 2020-12).
pub const SCHEMA: &str = include_str!("report.schema.json");

/// Writes it row by row.
pub(super) fn write(checked: &Checked, out: &mut dyn Write, told: &Told<'_>) -> io::Result<()> {
    let counts = &checked.counts;
    let report = Report {
        hubwright: env!("CARGO_PKG_VERSION"),
        tables: format!("{:016x}", tables::fingerprint()),
        file: &checked.name,
        today: checked.terms.today.map(|today| today.to_string()),
        laws: checked.terms.laws().map(Words::word).collect(),
        left_out: checked.terms.left_out().map(|rule| rule.slug).collect(),
        clear: counts.clear(),
        counts: Counts {
            passed: counts.passed,
            cautioned: counts.cautioned,
            refused: counts.refused,
            unknown: counts.unknown,
            unreadable: counts.unreadable,
        },
        notes: &checked.notes,
        unread: checked
            .unread
            .iter()
            .map(|(heading, nearest)| Unread { heading, nearest: nearest.as_deref() })
            .collect(),
        cautions: [cautions::FIRST, cautions::NOT_COVERED]
            .into_iter()
            .chain(cautions::BEFORE_YOU_START.iter().copied())
            .collect(),
        headings: checked.headings(),
        rows: Rows { checked, told },
    };
    serde_json::to_writer(&mut *out, &report).map_err(io::Error::from)?;
    out.write_all(b"\n")
}

#[derive(Serialize)]
struct Report<'a, 'e> {
    hubwright: &'static str,
    tables: String,
    file: &'a str,
    today: Option<String>,
    laws: Vec<&'static str>,
    left_out: Vec<&'static str>,
    clear: bool,
    counts: Counts,
    notes: &'a [String],
    unread: Vec<Unread<'a>>,
    cautions: Vec<&'static str>,
    headings: &'a [String],
    rows: Rows<'a, 'e>,
}

#[derive(Serialize)]
struct Counts {
    passed: usize,
    cautioned: usize,
    refused: usize,
    unknown: usize,
    unreadable: usize,
}

#[derive(Serialize)]
struct Unread<'a> {
    heading: &'a str,
    nearest: Option<&'a str>,
}

/// The rows, each made when it is written.
struct Rows<'a, 'e> {
    checked: &'a Checked,
    told: &'a Told<'e>,
}

impl Serialize for Rows<'_, '_> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        use serde::ser::SerializeSeq;
        let mut rows = serializer.serialize_seq(Some(self.checked.len()))?;
        for (at, row) in self.checked.rows().enumerate() {
            self.told.one().map_err(S::Error::custom)?;
            rows.serialize_element(&One::of(self.checked, at, &row))?;
        }
        rows.end()
    }
}

#[derive(Serialize)]
struct One<'a> {
    row: usize,
    mounting: &'a str,
    outcome: &'static str,
    because: String,
    problem: Option<Problem>,
    cells: Vec<serde_json::Value>,
    findings: Vec<Found<'a>>,
}

#[derive(Serialize)]
struct Problem {
    code: &'static str,
    message: String,
    hint: String,
}

#[derive(Serialize)]
struct Found<'a> {
    rule: &'static str,
    outcome: &'static str,
    says: &'a str,
    found: Option<serde_json::Value>,
    demanded: Option<serde_json::Value>,
    margin: Option<f64>,
    unit: &'static str,
    source: Option<Cited>,
    advice: &'static str,
    missing: &'a [String],
}

#[derive(Serialize)]
struct Cited {
    key: &'static str,
    text: String,
    status: &'static str,
}

impl<'a> One<'a> {
    fn of(checked: &Checked, at: usize, row: &'a Row) -> Self {
        let cell = |cell: Cell<'_>| match cell {
            Cell::Blank => serde_json::Value::Null,
            Cell::Text(text) | Cell::Fault(text) => text.into(),
            Cell::Number(number) => number.into(),
            Cell::Truth(truth) => truth.into(),
            Cell::Day(day) => Date::from_days(day).to_string().into(),
        };
        let problem = row.verdict.as_ref().err().map(|error| {
            let (message, hint) = super::two_lines(error);
            Problem { code: error.code(), message, hint }
        });
        let findings = row.verdict.as_ref().map(|verdict| verdict.findings.as_slice());
        Self {
            row: row.number,
            mounting: &row.name,
            outcome: row.worst.map_or("unreadable", Outcome::word),
            because: row
                .verdict
                .as_ref()
                .map_or_else(|error| super::two_lines(error).0, Verdict::headline),
            problem,
            cells: checked.cells(at).map(cell).collect(),
            findings: findings.unwrap_or_default().iter().map(Found::of).collect(),
        }
    }
}

impl<'a> Found<'a> {
    fn of(finding: &'a Finding) -> Self {
        let figure = |figure: Figure| match figure {
            Figure::Day(day) => day.to_string().into(),
            figure => figure.number().into(),
        };
        Self {
            rule: finding.rule.slug,
            outcome: finding.outcome.word(),
            says: &finding.says,
            found: finding.found.map(figure),
            demanded: finding.demanded.map(figure),
            margin: finding.margin,
            unit: finding.unit,
            source: finding.source.map(|source| Cited {
                key: source.key,
                text: source.to_string(),
                status: source.status.word(),
            }),
            advice: finding.advice,
            missing: &finding.missing,
        }
    }
}
