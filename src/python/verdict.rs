//! Rules, findings and verdicts.

use pyo3::prelude::*;
use pyo3::types::PyDate;

use super::parts::{FieldCrossing, Mounting};
use super::quantity::{Out, Q};
use super::words::{Laws, Slugs, WordOut, member};
use crate::error::{Error, ErrorKind, cut};
use crate::joint::press::SMOOTHING;
use crate::mounting::verdict::Figure;
use crate::mounting::{self, Outcome, RULES, Terms};
use crate::solid::rings::ROTATING_RINGS;
use crate::source;
use crate::tables::{flanges, friction, grinding, laws, materials};
use crate::units::{Date, Length, Shop, Words};

/// A citation: where a number or a rule comes from.
#[pyclass(frozen, eq, hash, from_py_object, module = "hubwright._core")]
#[derive(Clone, Copy, PartialEq, Eq, Hash)]
pub struct Source(pub(super) source::Source);

#[pymethods]
impl Source {
    /// Short key, stable between versions.
    #[getter]
    fn key(&self) -> &'static str {
        self.0.key
    }

    /// Title of the work.
    #[getter]
    fn title(&self) -> &'static str {
        self.0.title
    }

    /// Edition; empty when the work has none.
    #[getter]
    fn edition(&self) -> &'static str {
        self.0.edition
    }

    /// Clause, table or page.
    #[getter]
    fn locator(&self) -> &'static str {
        self.0.locator
    }

    /// How it was obtained.
    #[getter]
    fn status(&self) -> &'static str {
        self.0.status.word()
    }

    fn __str__(&self) -> String {
        self.0.to_string()
    }

    fn __repr__(&self) -> String {
        format!("<Source {}>", self.0)
    }
}

/// A rule of a mounting.
#[pyclass(frozen, eq, module = "hubwright._core")]
#[derive(PartialEq)]
pub struct Rule(&'static mounting::Rule);

#[pymethods]
impl Rule {
    /// Its name, stable between versions.
    #[getter]
    fn slug(&self) -> &'static str {
        self.0.slug
    }

    /// What it asks.
    #[getter]
    fn asks(&self) -> &'static str {
        self.0.asks
    }

    /// Whether every mounting must pass it, so that missing data are never passed over.
    #[getter]
    fn essential(&self) -> bool {
        self.0.essential
    }

    /// Why it is there and how it judges.
    #[getter]
    fn manual(&self) -> &'static str {
        self.0.manual
    }

    /// How to put it right.
    #[getter]
    fn advice(&self) -> &'static str {
        self.0.advice
    }

    /// Every outcome it can reach, worst first.
    #[getter]
    fn reaches(&self) -> Vec<WordOut<Outcome>> {
        self.0.reaches().into_iter().map(WordOut).collect()
    }

    /// The sources it cites.
    #[getter]
    fn sources(&self) -> Vec<Source> {
        self.0.sources().into_iter().map(Source).collect()
    }

    /// Headings of the data it can't judge without.
    #[getter]
    fn needs(&self) -> Vec<String> {
        self.0.needs().map(mounting::Field::heading).collect()
    }

    /// Headings of the data it reads besides.
    #[getter]
    fn uses(&self) -> Vec<String> {
        self.0.uses().map(mounting::Field::heading).collect()
    }

    fn __repr__(&self) -> String {
        format!("<Rule {}: {}>", self.0.slug, self.0.asks)
    }
}

/// Every rule, in the order in which a mounting is gone over.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> hw.rules()[0].slug
///     'over-speed'
#[pyfunction]
pub fn rules() -> Vec<Rule> {
    RULES.iter().map(|rule| Rule(rule)).collect()
}

/// Every source that rules, tables and kernels cite.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> [str(source) for source in hw.sources() if source.locator == "Table O-6"]
///     ['29 CFR 1910.215, Table O-6 (read in a reprint)']
#[pyfunction]
pub fn sources() -> Vec<Source> {
    let tables = [flanges::O4, flanges::O5, flanges::O6, flanges::O7, flanges::O8];
    let mut by_name: Vec<source::Source> = Vec::new();
    for published in friction::FITS.iter().chain(&materials::WHEEL_RANGES) {
        if !by_name.contains(&published.source) && !laws::ALL.contains(&published.source) {
            by_name.push(published.source);
        }
    }
    laws::ALL
        .iter()
        .copied()
        .chain(tables)
        .chain(crate::joint::SOURCES.iter().copied())
        .chain(crate::joint::KEY_SOURCES.iter().copied())
        .chain(crate::joint::SEAT_SOURCES.iter().copied())
        .chain(crate::joint::TAPER_SOURCES.iter().copied())
        .chain(crate::gauge::SOURCES.iter().copied())
        .chain(crate::wheel::balance::SOURCES.iter().copied())
        .chain(crate::wheel::grind::SOURCES.iter().copied())
        .chain(grinding::SOURCES)
        .chain([crate::wheel::speed::KINEMATICS, ROTATING_RINGS, SMOOTHING])
        .chain([materials::STATED, materials::METALS, materials::COLD_STEEL.source])
        .chain(by_name)
        .map(Source)
        .collect()
}

/// A figure on its way out: a pint quantity, a date, or a float for a plain factor.
fn figure(py: Python<'_>, figure: Option<Figure>) -> PyResult<Option<Bound<'_, PyAny>>> {
    figure
        .map(|figure| match figure {
            Figure::Turns(n) => Out(n).into_pyobject(py),
            Figure::Rim(v) => Out(v).into_pyobject(py),
            Figure::Size(d) => Out(d).into_pyobject(py),
            Figure::Angle(a) => Out(a).into_pyobject(py),
            Figure::Stress(p) => Out(p).into_pyobject(py),
            Figure::Torque(t) => Out(t).into_pyobject(py),
            Figure::Unbalance(u) => Out(u).into_pyobject(py),
            Figure::Force(f) => Out(f).into_pyobject(py),
            Figure::Day(day) => day.to_python(py),
            Figure::Factor(factor) => factor.to_python(py),
        })
        .transpose()
}

/// What one rule found about one mounting.
#[pyclass(frozen, module = "hubwright._core")]
#[derive(Clone)]
pub struct Finding(pub(super) mounting::Finding);

#[pymethods]
impl Finding {
    /// The rule.
    #[getter]
    fn rule(&self) -> Rule {
        Rule(self.0.rule)
    }

    /// How the mounting fares.
    #[getter]
    fn outcome(&self) -> WordOut<Outcome> {
        WordOut(self.0.outcome)
    }

    /// What was found, in a sentence.
    #[getter]
    fn says(&self) -> &str {
        &self.0.says
    }

    /// The figure found: a pint quantity, a date, or None.
    #[getter]
    fn found<'py>(&self, py: Python<'py>) -> PyResult<Option<Bound<'py, PyAny>>> {
        figure(py, self.0.found)
    }

    /// The figure demanded: a pint quantity, a date, or None.
    #[getter]
    fn demanded<'py>(&self, py: Python<'py>) -> PyResult<Option<Bound<'py, PyAny>>> {
        figure(py, self.0.demanded)
    }

    /// Room to the demand in `unit`; negative when it is missed, None without figures.
    #[getter]
    fn margin(&self) -> Option<f64> {
        self.0.margin
    }

    /// Margin as a share of the demand, by which findings are ranked.
    #[getter]
    fn share(&self) -> Option<f64> {
        self.0.share
    }

    /// Unit of `margin`: `mm`, `m/s`, `rpm`, `deg`, `MPa`, `g mm`, `days`, or empty.
    #[getter]
    fn unit(&self) -> &'static str {
        self.0.unit
    }

    /// Who demands it; None when nothing could be judged.
    #[getter]
    fn source(&self) -> Option<Source> {
        self.0.source.map(Source)
    }

    /// How to put it right; empty when nothing is wrong.
    #[getter]
    fn advice(&self) -> &'static str {
        self.0.advice
    }

    /// Headings of the data that are missing.
    #[getter]
    fn missing(&self) -> Vec<String> {
        self.0.missing.clone()
    }

    fn __str__(&self) -> String {
        self.0.to_string()
    }

    fn __repr__(&self) -> String {
        format!("<Finding {}>", self.0)
    }
}

/// Everything found about one mounting, worst first.
#[pyclass(frozen, module = "hubwright._core")]
#[derive(Clone)]
pub struct Verdict(pub(super) mounting::Verdict);

#[pymethods]
impl Verdict {
    /// What the shop calls the mounting.
    #[getter]
    fn name(&self) -> &str {
        &self.0.name
    }

    /// One finding a rule, worst first, and among equals the one with the least room.
    #[getter]
    fn findings(&self) -> Vec<Finding> {
        self.0.findings.iter().cloned().map(Finding).collect()
    }

    /// The worst outcome.
    #[getter]
    fn worst(&self) -> WordOut<Outcome> {
        WordOut(self.0.worst)
    }

    /// Whether nothing is refused or unknown.
    #[getter]
    fn clear(&self) -> bool {
        self.0.clear()
    }

    /// The laws it was judged under.
    #[getter]
    fn laws(&self) -> Vec<&'static str> {
        self.0.terms.laws().map(Words::word).collect()
    }

    /// The rules that were left out at the user's word.
    #[getter]
    fn left_out(&self) -> Vec<&'static str> {
        self.0.terms.left_out().map(|rule| rule.slug).collect()
    }

    /// What is worst, in one line.
    #[getter]
    fn headline(&self) -> String {
        self.0.headline()
    }

    /// The finding of one rule; None when it was left out.
    ///
    /// Raises:
    ///     TextError: There is no such rule.
    fn finding(&self, slug: &str) -> PyResult<Option<Finding>> {
        if mounting::find_rule(slug).is_none() {
            let slugs: Vec<_> = RULES.iter().map(|rule| rule.slug).collect();
            return Err(Error::from(crate::error::ErrorKind::UnknownWord {
                argument: "slug".into(),
                text: crate::error::cut(slug),
                allowed: slugs.join(", "),
                hint: "give the slug of a rule as `hubwright.rules()` lists it".into(),
            })
            .into());
        }
        Ok(self.0.findings.iter().find(|finding| finding.rule.slug == slug).cloned().map(Finding))
    }

    fn __bool__(&self) -> PyResult<bool> {
        Err(pyo3::exceptions::PyTypeError::new_err(
            "a verdict is not true or false\nhint: ask for `.clear` or `.worst`",
        ))
    }

    fn __str__(&self) -> String {
        self.0.to_string()
    }

    fn __repr__(&self) -> String {
        self.0.to_string()
    }

    fn _repr_html_(&self) -> PyResult<String> {
        Ok(crate::sheet::report::fragment(&self.0)?)
    }
}

/// Terms from keyword arguments.
pub(super) struct Asked<'a, 'py> {
    pub laws: Option<Laws>,
    pub without: Option<Slugs>,
    pub today: Option<&'a Bound<'py, PyAny>>,
    pub flange_tolerance: Option<Q<Length>>,
    pub measured_within: Option<Q<Length>>,
    pub show: Option<&'a str>,
}

impl Asked<'_, '_> {
    /// The terms, with today's date where none was given, and the units to show.
    pub(super) fn terms(self, py: Python<'_>) -> PyResult<(Terms, Option<Shop>)> {
        let mut terms = Terms::default();
        if let Some(Laws(laws)) = self.laws {
            terms = terms.with_laws(&laws);
        }
        let today = match self.today {
            Some(today) => Date::from_python(today).map_err(|error| error.named("today"))?,
            // Rules never read a clock; who calls from Python means today.
            None => Date::from_python(&py.get_type::<PyDate>().call_method0("today")?)?,
        };
        terms = terms.with_today(today);
        if let Some(tolerance) = self.flange_tolerance {
            terms = terms.with_flange_tolerance(tolerance.named("flange_tolerance")?)?;
        }
        if let Some(within) = self.measured_within {
            terms = terms.with_measured_within(within.named("measured_within")?)?;
        }
        for slug in self.without.map_or_else(Vec::new, |Slugs(slugs)| slugs) {
            terms = terms.without(&slug)?;
        }
        let shop = self.show.map(shop).transpose()?;
        Ok((terms.with_shop(shop.unwrap_or_default()), shop))
    }
}

/// The shop that reads millimetres or inches.
pub(super) fn shop(show: &str) -> Result<Shop, Error> {
    match show {
        "mm" => Ok(Shop::Metric),
        "in" => Ok(Shop::Inch),
        other => Err(ErrorKind::UnknownWord {
            argument: "show".into(),
            text: cut(other),
            allowed: "mm, in".into(),
            hint: "give show=\"mm\" or show=\"in\"".into(),
        }
        .into()),
    }
}

/// Judges a mounting by every rule.
///
/// Args:
///     mounting: One wheel on one hub on one spindle.
///     laws: Laws you work under, a list or one text with commas: `us` (when none is given), `us-mi`,
///         `us-wa`, `us-ca`, `jp`.
///     without: Slugs of rules to leave out, likewise; the verdict says so.
///     today: The date that use-before dates are compared with; the computer's when left out.
///     flange_tolerance: How much two flanges may differ; 0.5 mm (common practice) when left out.
///     measured_within: How well hole and spigot are measured; 0.005 mm (common practice) when left out.
///     show: `"mm"` or `"in"`: units in which findings are worded.
///
/// Returns:
///     Verdict: All findings, worst first.
///
/// Raises:
///     TextError: An unknown law, rule or unit.
///     UnitError, OutOfRangeError: A tolerance that is no length above zero.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> verdict = hw.check(hw.Mounting(
///     ...     spindle=hw.Spindle(greatest_speed="3400 rpm"), wheel=hw.Wheel(marked_speed="2850 rpm")))
///     >>> verdict.finding("over-speed").says
///     'the spindle can turn 3400 rpm, the wheel is marked 2850 rpm'
#[pyfunction]
#[pyo3(signature = (mounting, *, laws = None, without = None, today = None, flange_tolerance = None, measured_within = None, show = None))]
#[allow(clippy::too_many_arguments, reason = "keywords of one call")]
pub fn check(
    py: Python<'_>,
    mounting: &Mounting,
    laws: Option<Laws>,
    without: Option<Slugs>,
    today: Option<&Bound<'_, PyAny>>,
    flange_tolerance: Option<Q<Length>>,
    measured_within: Option<Q<Length>>,
    show: Option<&str>,
) -> PyResult<Verdict> {
    let asked = Asked { laws, without, today, flange_tolerance, measured_within, show };
    let (terms, _) = asked.terms(py)?;
    Ok(Verdict(mounting::check(&mounting.0, &terms)?))
}

/// Members are made by name; a missing class would only show at run time.
pub(super) fn outcome_member<'py>(
    py: Python<'py>,
    outcome: Option<Outcome>,
) -> PyResult<Option<Bound<'py, PyAny>>> {
    outcome.map(|outcome| member(py, outcome)).transpose()
}
