//! The report as one HTML file, for the screen and for paper at the machine.

use askama::Template;

use super::super::batch::{Checked, Row};
use super::{MOST_LISTED, counted, made_by, reading_notes, summary};
use crate::draw::{margin_bar, section, svg};
use crate::error::{Error, ErrorKind};
use crate::mounting::{Facts, Finding, Outcome, Verdict, cautions};
use crate::units::Shop;

/// The page. Every text goes through the template's escaping.
#[derive(Template)]
#[template(path = "report.html", config = ".askama.toml")]
struct Page<'a> {
    name: &'a str,
    made_by: String,
    today: Option<String>,
    counted: String,
    mountings: usize,
    rows: Vec<Line>,
    more: usize,
    notes: Vec<String>,
    terms: Vec<String>,
    before: &'static [&'static str],
    first: &'static str,
}

/// One verdict, for a notebook.
#[derive(Template)]
#[template(path = "verdict.html", config = ".askama.toml")]
struct Fragment {
    row: Line,
    terms: Vec<String>,
    first: &'static str,
}

/// A rack, for a notebook.
#[derive(Template)]
#[template(path = "table.html", config = ".askama.toml")]
struct TableFragment {
    summary: String,
    rows: Vec<Line>,
    more: usize,
    first: &'static str,
}

/// A mounting on the page.
struct Line {
    number: usize,
    name: String,
    word: &'static str,
    class: &'static str,
    because: String,
    hint: String,
    findings: Vec<Said>,
    passed: Vec<Said>,
    not_checked: Vec<Said>,
    /// Its section as SVG; empty when it can't be drawn or need not be.
    section: String,
    /// What the section lacks, or why there is none.
    undrawn: String,
}

/// A finding on the page.
struct Said {
    slug: &'static str,
    word: &'static str,
    class: &'static str,
    says: String,
    source: String,
    advice: &'static str,
    /// The margin as SVG; empty when it has none.
    bar: String,
}

fn class(outcome: Option<Outcome>) -> &'static str {
    match outcome {
        Some(Outcome::Refuse) => "refuse",
        Some(Outcome::Unknown) => "unknown",
        Some(Outcome::Caution) => "caution",
        Some(Outcome::Pass | Outcome::NotChecked) => "pass",
        None => "unreadable",
    }
}

impl Said {
    fn of(finding: &Finding) -> Self {
        Self {
            slug: finding.rule.slug,
            word: finding.outcome.printed(),
            class: class(Some(finding.outcome)),
            says: finding.says.clone(),
            source: finding.source.map(|source| source.to_string()).unwrap_or_default(),
            advice: finding.advice,
            bar: margin_bar(finding).map(|bar| svg(&bar)).unwrap_or_default(),
        }
    }
}

impl Line {
    fn of(row: Row) -> Self {
        let word = row.worst.map_or("unreadable", Outcome::printed);
        let line = Self {
            number: row.number,
            name: row.name,
            word,
            class: class(row.worst),
            because: String::new(),
            hint: String::new(),
            findings: Vec::new(),
            passed: Vec::new(),
            not_checked: Vec::new(),
            section: String::new(),
            undrawn: String::new(),
        };
        match row.verdict {
            Ok(verdict) => Self {
                because: verdict.headline(),
                findings: verdict
                    .findings
                    .iter()
                    .filter(|f| f.outcome < Outcome::Pass)
                    .map(Said::of)
                    .collect(),
                passed: verdict.with(Outcome::Pass).map(Said::of).collect(),
                not_checked: verdict.with(Outcome::NotChecked).map(Said::of).collect(),
                ..line
            },
            Err(error) => {
                let error = error.to_string();
                let (because, hint) = error.split_once('\n').unwrap_or((&error, ""));
                Self { because: because.to_owned(), hint: hint.to_owned(), ..line }
            }
        }
    }
}

impl Line {
    /// With the mounting's section, as far as the data allow.
    fn drawn(mut self, facts: Option<Facts>, shop: Shop) -> Self {
        match facts.map(|facts| section(&self.name, &facts, shop)) {
            Some(Ok(drawn)) => {
                self.section = svg(&drawn.scene);
                if !drawn.left_out.is_empty() {
                    self.undrawn = format!("Not given: {}.", drawn.left_out.join(", "));
                }
            }
            Some(Err(why)) => self.undrawn = format!("No section: {why}."),
            None => {}
        }
        self
    }
}

/// Most mountings of which each is drawn; of more, those that are OK are not.
const MOST_DRAWN: usize = 100;

/// The verdicts of a rack as one HTML file without scripts or links to other files.
///
/// At most 1,000 mountings are listed, worst first; the page says how many are
/// not. Of a rack of more than 100, those that are OK are not drawn.
///
/// # Errors
///
/// [`ErrorKind::File`] when the page can't be put together.
pub fn html(checked: &Checked) -> Result<String, Error> {
    let order = checked.worst_first();
    let line = |row: &usize| {
        let mut line = Line::of(checked.row(*row)?);
        if checked.len() > MOST_DRAWN && line.class == "pass" {
            line.passed.iter_mut().for_each(|said| said.bar.clear());
            return Some(line);
        }
        Some(line.drawn(checked.facts(*row), checked.terms.shop))
    };
    let rows: Vec<Line> = order.iter().take(MOST_LISTED).filter_map(line).collect();
    let page = Page {
        name: &checked.name,
        made_by: made_by(),
        today: checked.terms.today.map(|today| today.to_string()),
        counted: counted(checked),
        mountings: checked.len(),
        more: checked.len() - rows.len(),
        rows,
        notes: reading_notes(checked),
        terms: cautions::terms_lines(&checked.terms),
        before: cautions::BEFORE_YOU_START,
        first: cautions::FIRST,
    };
    page.render().map_err(|error| not_put_together(&checked.name, &error))
}

fn not_put_together(name: &str, error: &askama::Error) -> Error {
    ErrorKind::File {
        path: name.into(),
        action: "written",
        why: error.to_string(),
        hint: "report this to the people who keep hubwright",
    }
    .into()
}

/// One verdict as a piece of HTML, for a notebook.
///
/// # Errors
///
/// As for [`html`].
pub fn fragment(verdict: &Verdict) -> Result<String, Error> {
    let row = Row {
        number: 0,
        name: verdict.name.clone(),
        worst: Some(verdict.worst),
        verdict: Ok(verdict.clone()),
    };
    let fragment = Fragment {
        row: Line::of(row),
        terms: cautions::terms_lines(&verdict.terms),
        first: cautions::FIRST,
    };
    fragment.render().map_err(|error| not_put_together(&verdict.name, &error))
}

/// The table of a rack's verdicts as a piece of HTML, for a notebook.
///
/// # Errors
///
/// As for [`html`].
pub fn table_fragment(checked: &Checked) -> Result<String, Error> {
    const MOST: usize = 60;
    let order = checked.worst_first();
    let rows: Vec<Line> =
        order.iter().take(MOST).filter_map(|row| checked.row(*row)).map(Line::of).collect();
    let more = checked.len() - rows.len();
    let fragment = TableFragment { summary: summary(checked), rows, more, first: cautions::FIRST };
    fragment.render().map_err(|error| not_put_together(&checked.name, &error))
}
