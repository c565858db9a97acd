//! Many mountings at once: columns of facts, judged block by block.

use std::ops::ControlFlow;

use super::facts::{Facts, NOT_ASKED, NOTHING};
use super::fields::{COUNT, FIELDS};
use super::rules::RULES;
use super::terms::Terms;
use super::verdict::{Outcome, Verdict};
use crate::error::{Error, ErrorKind};
use crate::wheel::demands::{DemandColumns, Demands};

/// Rows judged in one go: their facts stay in the processor's cache.
pub(crate) const BLOCK: usize = 1024;

/// The facts of many mountings, one column a field; `None` where no heading asks.
#[derive(Clone, Debug, Default)]
pub struct Columns {
    rows: usize,
    columns: Vec<Option<Vec<f64>>>,
}

impl Columns {
    /// No rows yet, and no headings.
    pub fn new() -> Self {
        Self { rows: 0, columns: vec![None; COUNT] }
    }

    /// How many rows there are.
    pub fn rows(&self) -> usize {
        self.rows
    }

    /// Adds a row: one number for each field asked for, by its place in [`FIELDS`].
    ///
    /// Fields that nobody gave so far are not asked in the rows before.
    pub fn push(&mut self, numbers: impl IntoIterator<Item = (usize, f64)>) {
        for (field, number) in numbers {
            if let Some(column) = self.columns.get_mut(field) {
                let column = column.get_or_insert_default();
                column.resize(self.rows, NOT_ASKED);
                column.push(number);
            }
        }
        self.rows += 1;
    }

    /// Takes the last row back.
    #[cfg(feature = "sheets")]
    pub(crate) fn pop(&mut self) {
        self.rows = self.rows.saturating_sub(1);
        for column in self.columns.iter_mut().flatten() {
            column.truncate(self.rows);
        }
    }

    /// Puts a whole column in place of a field.
    ///
    /// # Errors
    ///
    /// [`ErrorKind::UnlikeLengths`] when another column has other rows,
    /// [`ErrorKind::Missing`] when there is no such field.
    pub fn set(&mut self, place: &str, name: &str, column: Vec<f64>) -> Result<(), Error> {
        let Some(at) = FIELDS.iter().position(|field| field.place == place && field.name == name)
        else {
            return Err(ErrorKind::Missing {
                argument: format!("{place}.{name}"),
                why: "a mounting has no such field".into(),
                hint: "see hubwright::mounting::FIELDS".into(),
            }
            .into());
        };
        let first = self.columns.iter().all(Option::is_none);
        if !first && column.len() != self.rows {
            let (given, wanted) = (column.len(), self.rows);
            return Err(ErrorKind::UnlikeLengths {
                argument: format!("{place}.{name}"),
                given,
                wanted,
            }
            .into());
        }
        self.rows = column.len();
        self.columns[at] = Some(column);
        Ok(())
    }

    /// The facts of one row; nothing asked beyond the last.
    pub fn facts(&self, row: usize) -> Facts {
        let mut numbers = NOTHING;
        for (number, column) in numbers.iter_mut().zip(&self.columns) {
            *number =
                column.as_ref().and_then(|column| column.get(row)).copied().unwrap_or(NOT_ASKED);
        }
        Facts::of(&numbers)
    }

    /// Everything found about one row.
    pub fn verdict(&self, row: usize, name: &str, terms: &Terms) -> Verdict {
        Verdict::of(name, &self.facts(row), terms)
    }
}

/// How many mountings came out which way; they add up to the rows.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub struct Counts {
    /// Nothing to say.
    pub passed: usize,
    /// Something to know or put right.
    pub cautioned: usize,
    /// A rule is broken.
    pub refused: usize,
    /// An essential datum is missing.
    pub unknown: usize,
    /// The row could not be read.
    pub unreadable: usize,
}

impl Counts {
    /// Counts one more mounting.
    pub fn add(&mut self, worst: Outcome) {
        match worst {
            Outcome::Refuse => self.refused += 1,
            Outcome::Unknown => self.unknown += 1,
            Outcome::Caution => self.cautioned += 1,
            Outcome::Pass | Outcome::NotChecked => self.passed += 1,
        }
    }

    /// All rows.
    pub fn rows(&self) -> usize {
        self.passed + self.cautioned + self.refused + self.unknown + self.unreadable
    }

    /// Whether nothing is refused, unknown or unreadable.
    pub fn clear(&self) -> bool {
        self.refused + self.unknown + self.unreadable == 0
    }
}

/// The facts of up to 1,024 rows.
pub struct Block<'a> {
    columns: [&'a [f64; BLOCK]; COUNT],
    fixed: &'a DemandColumns<BLOCK>,
    loose: &'a DemandColumns<BLOCK>,
}

impl Block<'_> {
    /// The facts of one row. Once inlined into a rule's loop, only what the
    /// rule reads is left of it.
    #[inline(always)]
    pub(crate) fn row(&self, row: usize) -> Facts {
        Facts::gather(|field| self.columns[field][row], self.fixed.row(row), self.loose.row(row))
    }
}

/// Makes the block loop of a rule: a copy for AVX2 where the processor has it,
/// and one for every other.
macro_rules! fastest {
    ($block:ident) => {{
        #[cfg(target_arch = "x86_64")]
        #[target_feature(enable = "avx2")]
        fn with_avx2(
            block: &crate::mounting::rack::Block<'_>,
            terms: &crate::mounting::terms::Terms,
            out: &mut [crate::mounting::verdict::Outcome; crate::mounting::rack::BLOCK],
        ) {
            $block(block, terms, out);
        }
        |block, terms, out| {
            #[cfg(target_arch = "x86_64")]
            if std::arch::is_x86_feature_detected!("avx2") {
                // SAFETY: the processor was just asked and has AVX2, the one
                // feature that the function needs beyond the baseline.
                return unsafe { with_avx2(block, terms, out) };
            }
            $block(block, terms, out);
        }
    }};
}
pub(crate) use fastest;

/// Is told the outcomes of one rule for a block of rows: the rule's place in
/// [`RULES`], the first row, the outcomes.
pub type Cells<'a> = &'a mut dyn FnMut(usize, usize, &[Outcome]);

/// Judges every row; `each` is told after every block how many rows are done
/// and may stop the work.
///
/// The answer is the worst outcome of each row. `cells`, when given, is told
/// the outcome of every rule besides.
///
/// # Errors
///
/// [`ErrorKind::Stopped`] when `each` stops it.
pub fn judge_columns(
    columns: &Columns,
    terms: &Terms,
    mut cells: Option<Cells<'_>>,
    mut each: impl FnMut(usize) -> ControlFlow<()>,
) -> Result<Vec<Outcome>, Error> {
    static ALL_NOT_ASKED: [f64; BLOCK] = [NOT_ASKED; BLOCK];
    let rows = columns.rows();
    let mut worst = Vec::with_capacity(rows);
    let mut last = vec![[NOT_ASKED; BLOCK]; COUNT];
    let mut fixed = Box::new(DemandColumns::NONE);
    let mut loose = Box::new(DemandColumns::NONE);
    let mut outcomes = [Outcome::NotChecked; BLOCK];
    let mut first = 0;
    while first < rows {
        let here = BLOCK.min(rows - first);
        for (copy, column) in last.iter_mut().zip(&columns.columns) {
            if let (Some(column), true) = (column, here < BLOCK) {
                let tail = column.get(first..).unwrap_or_default();
                let tail = &tail[..tail.len().min(here)];
                copy[..tail.len()].copy_from_slice(tail);
                copy[tail.len()..].fill(NOT_ASKED);
            }
        }
        let slices = std::array::from_fn(|field| match &columns.columns[field] {
            None => &ALL_NOT_ASKED,
            Some(column) => {
                column.get(first..).and_then(|rows| rows.first_chunk()).unwrap_or(&last[field])
            }
        });
        #[allow(clippy::needless_range_loop, reason = "a row of every column, not of one")]
        for row in 0..here {
            let bare = Facts::gather(|field| slices[field][row], Demands::NONE, Demands::NONE);
            let demands = bare.demands();
            fixed.put(row, demands[0]);
            loose.put(row, demands[1]);
        }
        let block = Block { columns: slices, fixed: &fixed, loose: &loose };
        let mut worst_here = [Outcome::NotChecked; BLOCK];
        for (at, rule) in RULES.iter().enumerate() {
            if !terms.judges(at) {
                continue;
            }
            rule.judge_block(&block, terms, &mut outcomes);
            for (worst, outcome) in worst_here.iter_mut().zip(&outcomes) {
                *worst = (*worst).min(*outcome);
            }
            if let Some(cells) = cells.as_mut() {
                cells(at, first, &outcomes[..here]);
            }
        }
        worst.extend_from_slice(&worst_here[..here]);
        first += here;
        if each(first).is_break() {
            return Err(ErrorKind::Stopped { rows: first }.into());
        }
    }
    Ok(worst)
}
