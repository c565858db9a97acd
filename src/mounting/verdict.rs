//! What was found about a mounting, in words.

use std::fmt;

use super::cautions;
use super::facts::{Facts, is_blank};
use super::fields::{FIELDS, Field};
use super::parts::Mounting;
use super::rules::{CANT_TELL, Case, Judged, Measure, RULES, Rule, Side};
use super::terms::Terms;
use crate::error::Error;
use crate::source::Source;
use crate::units::{
    Angle, AngularVelocity, Date, Exact, Force, Length, Pressure, Ratio, Shop, Torque, Unbalance,
    Velocity, degree, gram_millimeter, megapascal, meter_per_second, millimeter, newton,
    newton_meter, ratio, revolution_per_minute, words,
};

words! {
    /// How a mounting fares by a rule, worst first.
    Outcome, "outcome" {
        /// A rule is broken.
        Refuse = "refuse" [];
        /// A datum is missing that the row should have.
        Unknown = "unknown" [];
        /// Something to know or to put right.
        Caution = "caution" [];
        /// Judged and good.
        Pass = "pass" [];
        /// Nobody gave the data, or the rule does not apply.
        NotChecked = "not_checked" [];
    }
}

impl Outcome {
    /// The words printed for it.
    pub const fn printed(self) -> &'static str {
        match self {
            Self::Refuse => "DO NOT RUN",
            Self::Unknown => "CAN'T TELL",
            Self::Caution => "WATCH",
            Self::Pass => "OK",
            Self::NotChecked => "not checked",
        }
    }

    /// Whether a wheel may be started, as far as this goes.
    pub const fn clear(self) -> bool {
        !matches!(self, Self::Refuse | Self::Unknown)
    }
}

/// A figure of a finding, as a quantity.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Figure {
    /// Rotational speed.
    Turns(AngularVelocity),
    /// Rim speed.
    Rim(Velocity),
    /// Length.
    Size(Length),
    /// Angle.
    Angle(Angle),
    /// Stress.
    Stress(Pressure),
    /// Unbalance.
    Unbalance(Unbalance),
    /// Torque.
    Torque(Torque),
    /// Force.
    Force(Force),
    /// Day.
    Day(Date),
    /// Plain factor.
    Factor(Ratio),
}

impl Figure {
    fn of(measure: Measure, fact: f64) -> Option<Self> {
        if fact.is_nan() {
            return None;
        }
        match measure {
            Measure::Nothing => None,
            Measure::Turns => Some(Self::Turns(Exact::from_exact(fact))),
            Measure::Rim => Some(Self::Rim(Exact::from_exact(fact))),
            Measure::Size => Some(Self::Size(Exact::from_exact(fact))),
            Measure::Angle => Some(Self::Angle(Exact::from_exact(fact))),
            Measure::Stress => Some(Self::Stress(Exact::from_exact(fact))),
            Measure::Torque => Some(Self::Torque(Exact::from_exact(fact))),
            Measure::Unbalance => Some(Self::Unbalance(Exact::from_exact(fact))),
            Measure::Force => Some(Self::Force(Exact::from_exact(fact))),
            Measure::Day => Some(Self::Day(Date::from_days(fact as i64))),
            Measure::Factor => Some(Self::Factor(Exact::from_exact(fact))),
        }
    }

    /// As a number in [`Finding::unit`]; days since 1970 for a day.
    pub fn number(self) -> f64 {
        match self {
            Self::Turns(n) => n.get::<revolution_per_minute>(),
            Self::Rim(v) => v.get::<meter_per_second>(),
            Self::Size(d) => d.get::<millimeter>(),
            Self::Angle(a) => a.get::<degree>(),
            Self::Stress(p) => p.get::<megapascal>(),
            Self::Torque(t) => t.get::<newton_meter>(),
            Self::Unbalance(u) => u.get::<gram_millimeter>(),
            Self::Force(f) => f.get::<newton>(),
            Self::Day(day) => return day.days() as f64,
            Self::Factor(factor) => factor.get::<ratio>(),
        }
        .steps()
    }
}

trait Steps {
    /// Without the noise of converting: millionths are the steps that rules compare in.
    fn steps(self) -> f64;
}

impl Steps for f64 {
    fn steps(self) -> f64 {
        (self * 1e6).round() / 1e6
    }
}

/// Words for a fact of some measure.
fn shown(measure: Measure, fact: f64, shop: Shop) -> String {
    use super::sort::{FieldType, Shown};
    match measure {
        Measure::Nothing => String::new(),
        Measure::Turns => AngularVelocity::shown(fact, shop),
        Measure::Rim => Velocity::shown(fact, shop),
        Measure::Size => Length::shown(fact, shop),
        Measure::Angle => Angle::shown(fact, shop),
        Measure::Stress => Pressure::shown(fact, shop),
        Measure::Torque => Torque::shown(fact, shop),
        Measure::Unbalance => Unbalance::shown(fact, shop),
        Measure::Force => Force::shown(fact, shop),
        Measure::Day => Date::from_days(fact as i64).to_string(),
        Measure::Factor => (Ratio::SORT.show)(fact, shop),
    }
}

/// What one rule found about one mounting.
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub struct Finding {
    /// The rule.
    pub rule: &'static Rule,
    /// How the mounting fares.
    pub outcome: Outcome,
    /// What was found, in a sentence.
    pub says: String,
    /// The figure found.
    pub found: Option<Figure>,
    /// The figure demanded.
    pub demanded: Option<Figure>,
    /// Room to the demand in `unit` (days for a date); negative when it is missed.
    pub margin: Option<f64>,
    /// Margin as a share of the demand, for ranking.
    pub share: Option<f64>,
    /// Unit of `margin`: `mm`, `m/s`, `rpm`, `deg`, `MPa`, `g mm`, `N`, `days`, or empty for none and for a plain factor.
    pub unit: &'static str,
    /// Who demands it; `None` when nothing could be judged.
    pub source: Option<Source>,
    /// How to put it right; empty when nothing is wrong.
    pub advice: &'static str,
    /// Headings of the data that are missing.
    pub missing: Vec<String>,
}

impl Finding {
    fn of(rule: &'static Rule, facts: &Facts, terms: &Terms) -> Self {
        let judged = rule.judge(facts, terms);
        let outcome = rule.outcome(judged);
        let Some(case) = rule.case(judged) else {
            return Self::missing(rule, outcome, judged, facts);
        };
        let Case { measure, side, source, says, .. } = *case;
        let mut says = says
            .replace("{found}", &shown(measure, judged.found, terms.shop))
            .replace("{demanded}", &shown(measure, judged.demanded, terms.shop));
        if outcome != Outcome::NotChecked
            && let Some(more) = rule.adds(facts, terms)
        {
            says = format!("{says}; {more}");
        }
        let figure = |fact| Figure::of(measure, fact);
        let (found, demanded) = (figure(judged.found), figure(judged.demanded));
        let margin = found.zip(demanded).map(|(found, demanded)| match side {
            Side::Least => (found.number() - demanded.number()).steps(),
            Side::Most => (demanded.number() - found.number()).steps(),
        });
        let share = margin.zip(demanded).map(|(margin, demanded)| margin / demanded.number().abs());
        Self {
            rule,
            outcome,
            says,
            found,
            demanded,
            margin,
            share: share.filter(|share| share.is_finite()),
            unit: match measure {
                Measure::Nothing | Measure::Factor => "",
                Measure::Turns => "rpm",
                Measure::Rim => "m/s",
                Measure::Size => "mm",
                Measure::Angle => "deg",
                Measure::Stress => "MPa",
                Measure::Torque => "N m",
                Measure::Unbalance => "g mm",
                Measure::Force => "N",
                Measure::Day => "days",
            },
            source: Some(source),
            advice: if outcome > Outcome::Caution { "" } else { rule.advice },
            missing: Vec::new(),
        }
    }

    fn missing(rule: &'static Rule, outcome: Outcome, judged: Judged, facts: &Facts) -> Self {
        let blank_only = judged.case == CANT_TELL;
        let lacks = |field: &&Field| {
            let fact = facts.number(field);
            if blank_only { is_blank(fact) } else { fact.is_nan() }
        };
        let mut missing: Vec<String> = rule.needs().filter(lacks).map(Field::heading).collect();
        if missing.is_empty() {
            missing = rule.uses().filter(lacks).map(Field::heading).collect();
        }
        let what = missing.join(", ");
        let says = match (outcome, blank_only) {
            (_, true) if missing.is_empty() => "something it needs is blank".to_owned(),
            (_, true) => format!("blank: {what}"),
            (Outcome::Unknown, false) => format!("not given: {what}"),
            _ => format!("nobody asks for: {what}"),
        };
        Self {
            rule,
            outcome,
            says,
            found: None,
            demanded: None,
            margin: None,
            share: None,
            unit: "",
            source: None,
            advice: if outcome == Outcome::Unknown {
                "Find it out and fill it in; until then the wheel stays off."
            } else {
                ""
            },
            missing,
        }
    }
}

impl fmt::Display for Finding {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}  {}: {}", self.outcome.printed(), self.rule.slug, self.says)?;
        if let Some(source) = self.source {
            write!(f, "  [{source}]")?;
        }
        Ok(())
    }
}

/// Everything found about one mounting, worst first.
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub struct Verdict {
    /// What the shop calls the mounting.
    pub name: String,
    /// One finding a rule, worst first, and among equals the one with the least room.
    pub findings: Vec<Finding>,
    /// The worst outcome.
    pub worst: Outcome,
    /// The terms it was judged under.
    pub terms: Terms,
}

impl Verdict {
    /// Judges facts.
    pub(crate) fn of(name: &str, facts: &Facts, terms: &Terms) -> Self {
        let judged = RULES.iter().enumerate().filter(|(at, _)| terms.judges(*at));
        let mut findings: Vec<_> =
            judged.map(|(_, rule)| Finding::of(rule, facts, terms)).collect();
        findings.sort_by(|a, b| {
            let room = |finding: &Finding| finding.share.unwrap_or(f64::INFINITY);
            a.outcome.cmp(&b.outcome).then(room(a).total_cmp(&room(b)))
        });
        let worst = findings.first().map_or(Outcome::NotChecked, |finding| finding.outcome);
        Self { name: name.to_owned(), findings, worst, terms: *terms }
    }

    /// Whether nothing is refused or unknown.
    pub fn clear(&self) -> bool {
        self.worst.clear()
    }

    /// The findings with one outcome.
    pub fn with(&self, outcome: Outcome) -> impl Iterator<Item = &Finding> {
        self.findings.iter().filter(move |finding| finding.outcome == outcome)
    }

    /// The one line that a list of mountings shows: what is worst, and of what.
    pub fn headline(&self) -> String {
        let first = self.findings.first();
        match first.filter(|first| first.outcome < Outcome::Pass) {
            Some(first) => {
                let more = self.findings.iter().filter(|f| f.outcome == first.outcome).count() - 1;
                let more = if more > 0 { format!(" (and {more} more)") } else { String::new() };
                format!("{}: {}{more}", first.rule.slug, first.says)
            }
            None => format!("{} rules passed", self.with(Outcome::Pass).count()),
        }
    }
}

impl fmt::Display for Verdict {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        writeln!(f, "{}: {}", self.name, self.worst.printed())?;
        for finding in self.findings.iter().filter(|finding| finding.outcome < Outcome::Pass) {
            writeln!(f, "  {finding}")?;
            if !finding.advice.is_empty() {
                writeln!(f, "      {}", finding.advice)?;
            }
        }
        let count = |outcome| self.with(outcome).count();
        writeln!(
            f,
            "  {} rules passed, {} not checked",
            count(Outcome::Pass),
            count(Outcome::NotChecked)
        )?;
        for line in cautions::terms_lines(&self.terms) {
            writeln!(f, "  {line}")?;
        }
        write!(f, "  {}", cautions::FIRST)
    }
}

impl Facts {
    /// The number of one field.
    pub(crate) fn number(&self, field: &Field) -> f64 {
        let at =
            FIELDS.iter().position(|other| other.place == field.place && other.name == field.name);
        at.map_or(super::facts::NOT_ASKED, |at| self.numbers()[at])
    }
}

/// Judges a mounting by every rule.
///
/// # Errors
///
/// When a datum is no number or outside what its field takes; the error names
/// it, as `wheel.diameter`.
///
/// # Example
///
/// A wheel marked for fewer turns than its spindle can make: see
/// [`Mounting`].
pub fn check(mounting: &Mounting, terms: &Terms) -> Result<Verdict, Error> {
    Ok(Verdict::of(&mounting.name, &mounting.facts()?, terms))
}
