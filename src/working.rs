//! The steps behind a result, recomputed when somebody asks for them.

use std::fmt;

use crate::source::Source;

/// One line of a working.
#[derive(Clone, Debug, PartialEq)]
pub struct Step {
    /// What is computed, such as `least diameter`.
    pub symbol: &'static str,
    /// How, in symbols.
    pub relation: &'static str,
    /// The same with the numbers put in.
    pub numbers: String,
    /// The result, in `unit`.
    pub result: f64,
    /// Unit of the result.
    pub unit: &'static str,
    /// Who says so.
    pub source: Source,
}

/// Seven figures: more than a shop can measure, fewer than make a line hard to read.
fn shown(result: f64) -> f64 {
    format!("{result:.6e}").parse().unwrap_or(result)
}

/// How a result came about, step by step; the last step is the result.
///
/// It prints as lines of text, one a step, for a shop's records; the steps themselves keep every figure.
#[derive(Clone, Debug, PartialEq, Default)]
pub struct Working {
    /// The steps in order.
    pub steps: Vec<Step>,
}

impl fmt::Display for Working {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        for (number, step) in self.steps.iter().enumerate() {
            if number > 0 {
                writeln!(f)?;
            }
            let Step { symbol, relation, numbers, result, unit, source } = step;
            let shown = shown(*result);
            write!(
                f,
                "{}. {symbol} = {relation} = {numbers} = {shown} {unit}  [{source}]",
                number + 1
            )?;
        }
        Ok(())
    }
}
