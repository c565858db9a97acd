//! What the tables say about one class at one size, and why they say nothing.

use super::class::{Class, Feature, spelt};
use super::limits::um;
use crate::error::{Error, ErrorKind};
use crate::source::{Source, Status};
use crate::tables::iso286::deviations::{self, LETTERS, PLACES, Place};
use crate::tables::iso286::{
    GRADES, HOLES, LIMITS, LIMITS_PRACTICE, LIMITS_RECALLED, SHAFT_J7, SHAFTS, STEPS, SUBSTEPS,
    SYMMETRIC, UP_TO_1_MM, ends, grades, step,
};
use crate::tables::laws::ARITHMETIC;
use crate::units::{Exact, Length, figure, millimeter};
use crate::working::{Step, Working};

/// Places in [`LETTERS`] where the rules change.
const B: usize = 1;
const H: usize = 10;
const JS: usize = 11;
const J: usize = 12;
const K: usize = 13;
const M: usize = 14;
const N: usize = 15;
const P: usize = 16;

/// Steps in [`STEPS`]: the first has no Δ, the one up to 500 mm is the last that has.
const UP_TO_3: usize = 0;
const OVER_250_UP_TO_315: usize = 10;
const UP_TO_500: usize = 12;

/// Whole nanometres in a millimetre.
const MM: i64 = 1_000_000;

/// Which deviation the table gives; the grade gives the other.
#[derive(Clone, Copy, PartialEq)]
enum Sits {
    Upper,
    Lower,
    Half,
}

/// What the tables say about one class at one size, in nm.
pub(super) struct Found {
    step: usize,
    tolerance: i64,
    tolerance_source: Source,
    sits: Sits,
    /// As printed, with the sign that the class has.
    printed: i64,
    delta: i64,
    deviation_source: Source,
}

/// What a letter's table gives: which deviation, its figure, Δ, and the source.
type Deviation = (Sits, i64, i64, Source);

pub(super) fn find(nominal: i64, class: Class) -> Result<Found, Error> {
    let step = step(&STEPS, nominal);
    if nominal <= 0 || step >= STEPS.len() {
        return Err(no_step(nominal));
    }
    let Some(tolerance) = grades::tolerance(step, class.column()) else {
        return Err(no_coarse_step(nominal, class));
    };
    if nominal <= MM && kept_from_1_mm(class) {
        return Err(not_up_to_1_mm(nominal, class));
    }
    let (sits, printed, delta, deviation_source) = match class.feature() {
        Feature::Shaft => shaft(nominal, step, class)?,
        Feature::Hole => hole(nominal, step, class)?,
    };
    let tolerance_source = grades::source(step, class.column());
    Ok(Found { step, tolerance, tolerance_source, sits, printed, delta, deviation_source })
}

fn shaft(nominal: i64, step: usize, class: Class) -> Result<Deviation, Error> {
    let grade = class.column();
    let place = match class.place() {
        JS => return Ok((Sits::Half, 0, 0, SYMMETRIC)),
        J if grade == grades::column(7) => Place::Main(deviations::J7),
        J if grade != grades::column(5) && grade != grades::column(6) => {
            return Err(no_grade(class, "j5, j6, j7", "take js, which has every grade"));
        }
        K if !(grades::column(4)..=grades::column(7)).contains(&grade) => {
            large_grades(nominal, step, class)?;
            return Ok((Sits::Lower, 0, 0, SHAFTS));
        }
        letter => PLACES[letter],
    };
    let printed = deviations::figure(place, nominal).ok_or_else(|| not_here(nominal, class))?;
    large_grades(nominal, step, class)?;
    let sits = if class.place() <= H { Sits::Upper } else { Sits::Lower };
    let recalled = place == Place::Main(deviations::J7) && step <= 8;
    Ok((sits, printed, 0, if recalled { SHAFT_J7 } else { SHAFTS }))
}

fn hole(nominal: i64, step: usize, class: Class) -> Result<Deviation, Error> {
    let (letter, grade) = (class.place(), class.column());
    let up_to = |number: usize| grade <= grades::column(number);
    if letter == JS {
        return Ok((Sits::Half, 0, 0, SYMMETRIC));
    }
    if letter == J {
        let Some(column) = grade.checked_sub(grades::column(6)).filter(|column| *column < 3) else {
            return Err(no_grade(class, "J6, J7, J8", "take JS, which has every grade"));
        };
        let row = deviations::J.get(step).ok_or_else(|| not_here(nominal, class))?;
        return Ok((Sits::Upper, i64::from(row[column]), 0, HOLES));
    }
    let of_shaft =
        deviations::figure(PLACES[letter], nominal).ok_or_else(|| not_here(nominal, class))?;
    large_grades(nominal, step, class)?;
    let (printed, sits) = (-of_shaft, if letter <= H { Sits::Lower } else { Sits::Upper });
    if letter <= H || step == UP_TO_3 || step > UP_TO_500 {
        return Ok((sits, printed, 0, HOLES));
    }
    if letter == K && !up_to(8) {
        return Err(no_grade(class, "K3 to K8", "take JS or M in this grade"));
    }
    if letter == N && !up_to(8) {
        return Ok((sits, 0, 0, HOLES));
    }
    if !up_to(if letter >= P { 7 } else { 8 }) {
        return Ok((sits, printed, 0, HOLES));
    }
    if letter == M && step == OVER_250_UP_TO_315 && grade == grades::column(6) {
        return Ok((sits, deviations::M6_250_TO_315, 0, HOLES));
    }
    let Some(column) = grade.checked_sub(grades::column(3)) else {
        let capital = class.letter();
        let allowed = format!("{capital}3 and coarser: Δ is printed from IT3 on");
        return Err(no_grade(class, &allowed, "take JS, which has every grade"));
    };
    Ok((sits, printed, i64::from(deviations::DELTA[step][column]), HOLES))
}

impl Found {
    pub(super) fn upper(&self) -> i64 {
        match self.sits {
            Sits::Upper => self.printed + self.delta,
            Sits::Lower => self.printed + self.delta + self.tolerance,
            Sits::Half => self.tolerance / 2,
        }
    }

    pub(super) fn lower(&self) -> i64 {
        self.upper() - self.tolerance
    }

    pub(super) fn source(&self) -> Source {
        if self.tolerance_source.status == Status::Memory {
            LIMITS_RECALLED
        } else if self.deviation_source.status == Status::Practice {
            LIMITS_PRACTICE
        } else {
            LIMITS
        }
    }

    /// The steps; the last one's result is the largest size in mm.
    pub(super) fn working(&self, nm: i64, class: Class) -> Working {
        let hole = class.feature() == Feature::Hole;
        let nominal = nm as f64 / 1e6;
        let (from, to) = ends(&STEPS, self.step);
        let text = |nm: i64| figure(um(nm), 2);
        let (upper, lower) = if hole { ("ES", "EI") } else { ("es", "ei") };
        let in_um = |symbol, relation, numbers, nm, source| Step {
            symbol,
            relation,
            numbers,
            result: um(nm),
            unit: "µm",
            source,
        };
        let half = format!("{} / 2", text(self.tolerance));
        let (first, relation, numbers) = match self.sits {
            Sits::Half => (upper, "IT / 2", half),
            sits => {
                let first = if sits == Sits::Upper { upper } else { lower };
                let place = format!("{} at {} mm", class.letter(), figure(nominal, 6));
                if self.delta == 0 {
                    (first, "printed deviation", place)
                } else {
                    let sum = format!("{place}: {} + {}", text(self.printed), text(self.delta));
                    (first, "printed deviation + Δ", sum)
                }
            }
        };
        let (second, second_relation, second_numbers) = match (self.sits, hole) {
            (Sits::Lower, true) => (upper, "EI + IT", self.sum(self.lower(), "+")),
            (Sits::Lower, false) => (upper, "ei + IT", self.sum(self.lower(), "+")),
            (_, true) => (lower, "ES − IT", self.sum(self.upper(), "−")),
            (_, false) => (lower, "es − IT", self.sum(self.upper(), "−")),
        };
        let (first_nm, second_nm) = match self.sits {
            Sits::Lower => (self.lower(), self.upper()),
            _ => (self.upper(), self.lower()),
        };
        let size = |symbol, relation, deviation: i64| Step {
            symbol,
            relation,
            numbers: format!("{} mm + {} µm", figure(nominal, 6), text(deviation)),
            result: Length::from_exact((nm + deviation) as f64).get::<millimeter>(),
            unit: "mm",
            source: ARITHMETIC,
        };
        let width = format!(
            "{}, over {} up to {} mm",
            class.grade(),
            figure(from as f64 / 1e6, 0),
            figure(to as f64 / 1e6, 0)
        );
        let printed = self.deviation_source;
        Working {
            steps: vec![
                in_um("IT", "printed grade", width, self.tolerance, self.tolerance_source),
                in_um(first, relation, numbers, first_nm, printed),
                in_um(second, second_relation, second_numbers, second_nm, ARITHMETIC),
                size("smallest", "nominal + lower deviation", self.lower()),
                size("largest", "nominal + upper deviation", self.upper()),
            ],
        }
    }

    fn sum(&self, from: i64, sign: &str) -> String {
        format!("{} {sign} {}", figure(um(from), 2), figure(um(self.tolerance), 2))
    }
}

fn kept_from_1_mm(class: Class) -> bool {
    let coarse = |number: usize| class.column() > grades::column(number);
    let hole = class.feature() == Feature::Hole;
    class.place() <= B || coarse(13) || (hole && class.place() == N && coarse(8))
}

/// What is wrong with a nominal size, in mm.
#[cold]
fn out_of_range(nominal: i64, range: String, authority: String, hint: String) -> Error {
    let given = nominal as f64 / 1e6;
    let argument = "nominal".into();
    ErrorKind::OutOfRange { argument, given, range, unit: "mm", authority, hint }.into()
}

#[cold]
fn no_step(nominal: i64) -> Error {
    let hint = "above 3150 mm the standard has no tolerances: state both limits on the drawing";
    out_of_range(nominal, "outside 0 to 3150".into(), GRADES.to_string(), hint.into())
}

#[cold]
fn no_coarse_step(nominal: i64, class: Class) -> Error {
    let authority = format!("{} in {GRADES}", class.grade());
    let hint = "over 500 mm the grades begin with IT1".into();
    out_of_range(nominal, "above 500".into(), authority, hint)
}

#[cold]
fn not_up_to_1_mm(nominal: i64, class: Class) -> Error {
    let hint = "up to 1 mm take grades to IT13, letters from c on, and N to N8".into();
    out_of_range(nominal, "not above 1".into(), format!("{class} in {UP_TO_1_MM}"), hint)
}

#[cold]
pub(super) fn nothing_left(nominal: i64, class: Class, smallest: i64) -> Error {
    let taken = figure((nominal - smallest) as f64 / 1e6, 4);
    let hint = "take a finer grade or a tighter letter".into();
    out_of_range(nominal, format!("not above {taken}"), format!("what {class} takes off"), hint)
}

#[cold]
fn no_grade(class: Class, allowed: &str, hint: &str) -> Error {
    ErrorKind::UnknownWord {
        argument: "class".into(),
        text: class.to_string(),
        allowed: allowed.to_owned(),
        hint: hint.to_owned(),
    }
    .into()
}

/// Over 500 mm the deviations are printed for IT6 to IT16; h and js need none.
fn large_grades(nominal: i64, step: usize, class: Class) -> Result<(), Error> {
    let printed = (grades::column(6)..=grades::column(16)).contains(&class.column());
    if step <= UP_TO_500 || class.place() == H || printed {
        return Ok(());
    }
    let letter = class.letter();
    let (h, js) = (spelt(class.feature(), H), spelt(class.feature(), JS));
    let hint = format!("over 500 mm take {letter}6 to {letter}16, {h} or {js}");
    Err(out_of_range(nominal, "above 500".into(), format!("{class} in {SHAFTS}"), hint))
}

/// How far the table of a letter reaches, and which letters there are at this size.
#[cold]
fn not_here(nominal: i64, class: Class) -> Error {
    let reach = |letter: usize| -> Vec<usize> {
        let at = |step: &usize| deviations::figure(PLACES[letter], SUBSTEPS[*step]).is_some();
        (0..SUBSTEPS.len()).filter(at).collect()
    };
    let steps = reach(class.place());
    let end = |nm: i64| figure(nm as f64 / 1e6, 0);
    let from = steps.first().map_or(0, |first| ends(&SUBSTEPS, *first).0);
    let to = steps.last().map_or(0, |last| SUBSTEPS[*last]);
    let there =
        |letter: &usize| *letter == JS || deviations::figure(PLACES[*letter], nominal).is_some();
    let looser = (0..class.place()).rev().find(there);
    let tighter = (class.place() + 1..LETTERS.len()).find(there);
    let near: Vec<_> =
        [looser, tighter].into_iter().flatten().map(|at| spelt(class.feature(), at)).collect();
    let table = if class.feature() == Feature::Hole { HOLES } else { SHAFTS };
    out_of_range(
        nominal,
        format!("not over {} up to {}", end(from), end(to)),
        format!("{} in {table}", class.letter()),
        format!("the nearest at this size: {}", near.join(" and ")),
    )
}
