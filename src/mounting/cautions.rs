//! What is said with every verdict, and what to do before a wheel is started.

use super::terms::Terms;
use crate::units::Words;

/// Who comes first.
pub const FIRST: &str =
    "The wheel's own marking, the machine's manual, local law and a competent person come first.";

/// What no verdict covers.
pub const NOT_COVERED: &str = "Machine-safety clauses of EN and ISO standards are not covered.";

/// What to do before a wheel is started: printed with every verdict, never judged.
pub const BEFORE_YOU_START: &[&str] = &[
    "Look the wheel over; a wheel that was dropped is scrap until somebody competent has inspected it.",
    "Ring it dry where a ring tells anything: not wheels of 4 in and smaller, plugs, cones, segments, mounted points, plate-mounted wheels or inserted nuts; rubber, resin and metal cores ring little or not at all, and a wheel on its hub can't be rung.",
    "New blotters, clean faces, no burrs; blotters that creep have to be tightened again.",
    "Tighten in steps and only until the wheel can't slip, never with a hammer. Bring a diamond wheel's rim and face true by indicator before the last tightening.",
    "Close the guard, keep everybody out of the wheel's plane and run it up before the first cut: a minute is common practice, some laws ask for one to three.",
    "True, balance, true again; tighten again after the first run.",
    "The marked speed is a ceiling in turns too, however small the wheel has worn.",
    "A thin unreinforced wheel takes no side load. Spin the coolant out before you stop.",
];

/// One line on the laws, one on rules left out, one on what is not covered.
pub fn terms_lines(terms: &Terms) -> Vec<String> {
    let laws: Vec<_> = terms.laws().map(Words::word).collect();
    let laws = if laws.is_empty() { "none named".to_owned() } else { laws.join(", ") };
    let mut lines = vec![format!("Judged under the laws: {laws}. {NOT_COVERED}")];
    lines.extend(left_out_line(terms));
    lines
}

/// The rules left out at the user's word, when there are any.
pub fn left_out_line(terms: &Terms) -> Option<String> {
    let left_out: Vec<_> = terms.left_out().map(|rule| rule.slug).collect();
    (!left_out.is_empty()).then(|| format!("LEFT OUT at your word: {}.", left_out.join(", ")))
}
