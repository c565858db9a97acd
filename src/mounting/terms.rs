//! The terms a mounting is judged under: laws, today's date, tolerances.

use super::rules::{RULES, Rule, find_rule};
use crate::error::{Error, ErrorKind, cut};
use crate::units::{Date, Exact, Length, Shop, Words, millimeter, words};

words! {
    /// A law that the user works under.
    Law, "law" {
        /// United States, federal: 29 CFR 1910.
        Us = "us" [];
        /// Michigan.
        UsMi = "us-mi" ["michigan"];
        /// Washington.
        UsWa = "us-wa" ["washington"];
        /// California.
        UsCa = "us-ca" ["california"];
        /// Japan.
        Jp = "jp" ["japan"];
    }
}

/// The terms a mounting is judged under.
///
/// ```
/// use hubwright::mounting::{Law, Terms};
/// use hubwright::units::Date;
///
/// let terms = Terms::default()
///     .with_laws(&[Law::Us, Law::UsMi])
///     .with_today(Date::read("2026-11-25")?)
///     .without("blotter-reused")?;
/// assert_eq!(terms.laws().collect::<Vec<_>>(), [Law::Us, Law::UsMi]);
/// # Ok::<(), hubwright::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Terms {
    laws: u8,
    left_out: u64,
    /// Today; without it no date on a wheel can be judged.
    pub today: Option<Date>,
    /// How much two flanges may differ in diameter or land, in nm.
    /// Common practice, no source: 0.5 mm.
    pub(crate) flange_tolerance: f64,
    /// How well hole and spigot are measured, in nm: a clearance smaller than
    /// this can't be told from none. Common practice, no source: 0.005 mm.
    pub(crate) measured_within: f64,
    /// Units in which findings are worded.
    pub shop: Shop,
}

impl Default for Terms {
    fn default() -> Self {
        Self {
            laws: 1 << Law::Us as u8,
            left_out: 0,
            today: None,
            flange_tolerance: 0.5e6,
            measured_within: 5e3,
            shop: Shop::Metric,
        }
    }
}

impl Terms {
    /// Under these laws instead of federal United States law.
    #[must_use]
    pub fn with_laws(mut self, laws: &[Law]) -> Self {
        self.laws = laws.iter().fold(0, |bits, law| bits | 1 << *law as u8);
        self
    }

    /// With today's date, which no rule ever reads from a clock.
    #[must_use]
    pub fn with_today(mut self, today: Date) -> Self {
        self.today = Some(today);
        self
    }

    /// In the units of a shop.
    #[must_use]
    pub fn with_shop(mut self, shop: Shop) -> Self {
        self.shop = shop;
        self
    }

    /// With another tolerance for two flanges to be alike.
    ///
    /// # Errors
    ///
    /// [`ErrorKind::OutOfRange`] or [`ErrorKind::NotFinite`] unless it is a length from 0 to 2 mm.
    pub fn with_flange_tolerance(mut self, tolerance: Length) -> Result<Self, Error> {
        self.flange_tolerance = from_zero("flange_tolerance", tolerance, 2.0)?;
        Ok(self)
    }

    /// With another figure for how well hole and spigot are measured.
    ///
    /// # Errors
    ///
    /// [`ErrorKind::OutOfRange`] or [`ErrorKind::NotFinite`] unless it is a length from 0 to 0.1 mm.
    pub fn with_measured_within(mut self, within: Length) -> Result<Self, Error> {
        self.measured_within = from_zero("measured_within", within, 0.1)?;
        Ok(self)
    }

    /// Leaves a rule out at the user's word; every verdict says so.
    ///
    /// # Errors
    ///
    /// [`ErrorKind::UnknownWord`] when there is no such rule.
    pub fn without(mut self, slug: &str) -> Result<Self, Error> {
        let Some(at) = RULES.iter().position(|rule| rule.slug == slug) else {
            let slugs: Vec<_> = RULES.iter().map(|rule| rule.slug).collect();
            return Err(ErrorKind::UnknownWord {
                argument: "without".into(),
                text: cut(slug),
                allowed: slugs.join(", "),
                hint: "give the slug of a rule as the list of rules prints it".into(),
            }
            .into());
        };
        self.left_out |= 1 << at;
        Ok(self)
    }

    /// The laws, in the order of [`Law`].
    pub fn laws(&self) -> impl Iterator<Item = Law> {
        let bits = self.laws;
        Law::LIST.iter().map(|(law, ..)| *law).filter(move |law| bits & (1 << *law as u8) != 0)
    }

    /// Whether a law is among them.
    #[inline(always)]
    pub fn has(&self, law: Law) -> bool {
        self.laws & (1 << law as u8) != 0
    }

    /// The rules left out.
    pub fn left_out(&self) -> impl Iterator<Item = &'static Rule> {
        let bits = self.left_out;
        RULES.iter().enumerate().filter(move |(at, _)| bits & (1 << at) != 0).map(|(_, rule)| *rule)
    }

    /// Whether the rule at this place of [`RULES`] is judged.
    #[inline(always)]
    pub(crate) fn judges(&self, at: usize) -> bool {
        self.left_out & (1 << at) == 0
    }

    /// Whether a rule is judged.
    pub fn judges_rule(&self, slug: &str) -> bool {
        find_rule(slug).is_some() && self.left_out().all(|rule| rule.slug != slug)
    }
}

/// A tolerance in whole nm, up to so many mm: a wide one would wave everything through.
fn from_zero(argument: &str, length: Length, most: f64) -> Result<f64, Error> {
    let given = length.get::<millimeter>();
    let argument = argument.to_owned();
    if !given.is_finite() {
        return Err(ErrorKind::NotFinite { argument, given, example: "0.5 mm" }.into());
    }
    if !(0.0..=most).contains(&given) {
        return Err(ErrorKind::OutOfRange {
            argument,
            given,
            range: format!("outside 0 to {most}"),
            unit: "mm",
            authority: String::new(),
            hint: format!("give a tolerance like \"{} mm\"", most / 4.0),
        }
        .into());
    }
    Ok(length.exact())
}
