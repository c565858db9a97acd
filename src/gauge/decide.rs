//! Whether a measured value keeps to its limits, its uncertainty taken into account.

use super::ZONES;
use super::check::step;
use crate::error::{Error, ErrorKind};
use crate::solid::chance::{density, normal, normal_quantile};
use crate::units::{Angle, Exact, Length, finite, meter, positive, radian, words};
use crate::working::Working;

words! {
    /// How far from a limit a measured value has to stay.
    GuardBand, "guard band" {
        /// 1.645 standard uncertainties: 95 % on the one side that matters.
        OneSided = "one-sided 95 %" ["one-sided", "1.645 u"];
        /// The whole expanded uncertainty, twice the standard one.
        Full = "full" ["2 u", "U"];
    }
}

words! {
    /// What can be said of a measured value.
    Ruling, "ruling" {
        /// It keeps to its limits.
        Within = "within" [];
        /// It does not.
        Outside = "outside" [];
        /// It is too near to a limit for what it was measured with.
        CantTell = "can't tell" [];
    }
}

/// A kind of quantity that is measured and judged.
pub trait Measurand: Exact + PartialOrd {
    /// Its base unit, for messages and workings.
    const UNIT: &'static str;
    /// How one is written.
    const EXAMPLE: &'static str;
    /// As a number of base units.
    fn base(self) -> f64;
    /// From a number of base units.
    fn of_base(value: f64) -> Self;
}

impl Measurand for Length {
    const UNIT: &'static str = "m";
    const EXAMPLE: &'static str = "0.001 mm";
    fn base(self) -> f64 {
        self.get::<meter>()
    }
    fn of_base(value: f64) -> Self {
        Self::new::<meter>(value)
    }
}

impl Measurand for Angle {
    const UNIT: &'static str = "rad";
    const EXAMPLE: &'static str = "0.002 deg";
    fn base(self) -> f64 {
        self.get::<radian>()
    }
    fn of_base(value: f64) -> Self {
        Self::new::<radian>(value)
    }
}

/// The limits that a value has to keep: either or both.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Limits<K> {
    /// Lower limit.
    pub low: Option<K>,
    /// Upper limit.
    pub high: Option<K>,
}

impl<K: Measurand> Limits<K> {
    /// A lower and an upper limit; `None` where there is none.
    pub fn new(low: Option<K>, high: Option<K>) -> Self {
        Self { low, high }
    }

    fn check(&self) -> Result<(), Error> {
        for (argument, limit) in [("low", self.low), ("high", self.high)] {
            if let Some(limit) = limit {
                finite(argument, limit.base(), K::EXAMPLE)?;
            }
        }
        match (self.low, self.high) {
            (None, None) => Err(ErrorKind::Missing {
                argument: "low".into(),
                why: "there is no limit to judge by".into(),
                hint: "give low, high or both".into(),
            }
            .into()),
            (Some(low), Some(high)) if high.base() <= low.base() => Err(ErrorKind::OutOfRange {
                argument: "high".into(),
                given: high.base(),
                range: format!("not above low, {}", low.base()),
                unit: K::UNIT,
                authority: String::new(),
                hint: "give the lower limit as low and the upper one as high".into(),
            }
            .into()),
            _ => Ok(()),
        }
    }

    /// The share of what a value may really be that lies within.
    fn conforms(&self, value: f64, u: f64) -> f64 {
        let below = self.high.map_or(1.0, |high| normal((high.base() - value) / u));
        let under = self.low.map_or(0.0, |low| normal((low.base() - value) / u));
        below - under
    }
}

/// What [`decide`] found.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Decision<K> {
    /// The value measured.
    pub measured: K,
    /// Its standard uncertainty.
    pub u: K,
    /// Its limits.
    pub limits: Limits<K>,
    /// The guard band chosen.
    pub guard: GuardBand,
    /// What can be said.
    pub ruling: Ruling,
    /// Width of the guard band in standard uncertainties.
    pub factor: f64,
    /// Limits of what is accepted; `None` where none was given, or where the limits are so
    /// close that nothing is.
    pub accept: Limits<K>,
    /// Limits beyond which a value is certainly outside.
    pub reject: Limits<K>,
    /// How likely the value itself lies within its limits.
    pub chance_within: f64,
}

/// Judges a measured value by its limits, with a guard band.
///
/// A value is *within* when it stays the guard band inside of its limits, *outside* when it lies
/// the guard band beyond one, and otherwise can't be told. The band is 1.645 u or, on limits so
/// close that both sides matter, as much as leaves 95 % between them; or 2 u.
///
/// # Errors
///
/// [`Missing`](crate::ErrorKind::Missing) without a limit; [`OutOfRange`](crate::ErrorKind::OutOfRange) or [`NotFinite`](crate::ErrorKind::NotFinite) for
/// an uncertainty that is not above zero and limits in the wrong order.
///
/// # Source
///
/// ISO 14253-1 and JCGM 106, from memory: which of the two bands an edition asks for is the
/// user's to know.
///
/// # Example
///
/// 25.0118 mm ± 0.9 µm against 25.013 mm: with 1.645 u, 25.01152 mm is the most.
///
/// ```
/// use hubwright::gauge::{GuardBand, Limits, Ruling, decide};
/// use hubwright::units::{Length, micrometer, millimeter};
///
/// let mm = Length::new::<millimeter>;
/// let limits = Limits::new(Some(mm(25.0)), Some(mm(25.013)));
/// let found = decide(mm(25.0118), Length::new::<micrometer>(0.9), limits, GuardBand::OneSided)?;
/// assert_eq!(found.ruling, Ruling::CantTell);
/// assert!((found.chance_within - 0.9088).abs() < 1e-4);
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn decide<K: Measurand>(
    measured: K,
    u: K,
    limits: Limits<K>,
    guard: GuardBand,
) -> Result<Decision<K>, Error> {
    finite("measured", measured.base(), K::EXAMPLE)?;
    positive("u", u.base(), K::UNIT, K::EXAMPLE)?;
    limits.check()?;
    let factor = factor(guard);
    let accept = accepted(&limits, u.base(), guard);
    let out = |limit: Option<K>, by: f64| limit.map(|limit| K::of_base(limit.base() + by));
    let reject = Limits {
        low: out(limits.low, -factor * u.base()),
        high: out(limits.high, factor * u.base()),
    };
    // Whole steps of the value, so that one on the edge of the zone is in it.
    let value = measured.exact();
    let edge = |limit: K| {
        let steps = K::of_base(1.0).exact();
        limit.base() * steps
    };
    let over = |limits: &Limits<K>| limits.high.is_some_and(|high| value > edge(high) + 0.5e-3);
    let under = |limits: &Limits<K>| limits.low.is_some_and(|low| value < edge(low) - 0.5e-3);
    let ruling = if over(&reject) || under(&reject) {
        Ruling::Outside
    } else if accept.is_some_and(|accept| !over(&accept) && !under(&accept)) {
        Ruling::Within
    } else {
        Ruling::CantTell
    };
    Ok(Decision {
        measured,
        u,
        limits,
        guard,
        ruling,
        factor,
        accept: accept.unwrap_or(Limits { low: None, high: None }),
        reject,
        chance_within: limits.conforms(measured.base(), u.base()),
    })
}

fn factor(guard: GuardBand) -> f64 {
    match guard {
        GuardBand::OneSided => normal_quantile(0.95),
        GuardBand::Full => 2.0,
    }
}

/// What is accepted; `None` where the limits leave nothing.
fn accepted<K: Measurand>(limits: &Limits<K>, u: f64, guard: GuardBand) -> Option<Limits<K>> {
    let band = factor(guard) * u;
    let of = |low: Option<f64>, high: Option<f64>| Limits {
        low: low.map(K::of_base),
        high: high.map(K::of_base),
    };
    match (limits.low.map(K::base), limits.high.map(K::base)) {
        (Some(low), Some(high)) => {
            let middle = (low + high) / 2.0;
            let mut inner = low + band;
            // Close limits: both sides count, and the zone is where 95 % lie between them.
            if guard == GuardBand::OneSided && (high - low) < 8.0 * u {
                if limits.conforms(middle, u) < 0.95 {
                    return None;
                }
                let (mut outside, mut inside) = (low, middle);
                for _ in 0..100 {
                    let at = (outside + inside) / 2.0;
                    if limits.conforms(at, u) < 0.95 { outside = at } else { inside = at }
                }
                inner = inside;
            }
            (inner <= middle).then(|| of(Some(inner), Some(low + high - inner)))
        }
        (low, high) => Some(of(low.map(|low| low + band), high.map(|high| high - band))),
    }
}

impl<K: Measurand> Decision<K> {
    /// The steps, recomputed; the last one's result is the chance of lying within.
    pub fn working(&self) -> Working {
        let (value, u) = (self.measured.base(), self.u.base());
        let band = factor(self.guard) * u;
        let shown =
            |limit: Option<K>| limit.map_or("none".into(), |limit| format!("{:e}", limit.base()));
        let limits =
            format!("{} to {} {}", shown(self.limits.low), shown(self.limits.high), K::UNIT);
        Working {
            steps: vec![
                step(
                    "guard band",
                    "factor · u",
                    format!("{} · {u:e}", factor(self.guard)),
                    (band, K::UNIT),
                    ZONES,
                ),
                step(
                    "chance within",
                    "Φ((high − x) / u) − Φ((low − x) / u)",
                    format!("x {value:e}, limits {limits}"),
                    (self.limits.conforms(value, u), ""),
                    ZONES,
                ),
            ],
        }
    }
}

/// What [`chances`] found: shares of all parts.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Chances {
    /// Bad parts that are accepted.
    pub false_accept: f64,
    /// Good parts that are not accepted.
    pub false_reject: f64,
    /// Parts that are accepted.
    pub accepted: f64,
}

/// How often a guard band lets bad parts pass and holds good ones back.
///
/// Parts and errors of measuring are taken for normal. By Simpson's rule, piece by piece
/// between the limits.
///
/// # Errors
///
/// As for [`decide`], and for a spread of the parts that is not above zero.
///
/// # Source
///
/// JCGM 106, from memory.
///
/// # Example
///
/// ```
/// use hubwright::gauge::{GuardBand, Limits, chances};
/// use hubwright::units::{Length, micrometer, millimeter};
///
/// let (mm, um) = (Length::new::<millimeter>, Length::new::<micrometer>);
/// let limits = Limits::new(Some(mm(25.0)), Some(mm(25.013)));
/// let found = chances([mm(25.0065), um(3.2)], um(0.9), limits, GuardBand::OneSided)?;
/// assert!((found.false_accept - 0.000486).abs() < 1e-6);
/// assert!((found.false_reject - 0.0893).abs() < 1e-4);
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn chances<K: Measurand>(
    [mean, spread]: [K; 2],
    u: K,
    limits: Limits<K>,
    guard: GuardBand,
) -> Result<Chances, Error> {
    finite("process_mean", mean.base(), K::EXAMPLE)?;
    positive("process_spread", spread.base(), K::UNIT, K::EXAMPLE)?;
    positive("u", u.base(), K::UNIT, K::EXAMPLE)?;
    limits.check()?;
    let (mean, spread, u) = (mean.base(), spread.base(), u.base());
    let Some(accept) = accepted(&limits, u, guard) else {
        let good = limits.conforms(mean, spread);
        return Ok(Chances { false_accept: 0.0, false_reject: good, accepted: 0.0 });
    };
    let taken = |x: f64| density((x - mean) / spread) / spread * accept.conforms(x, u);
    let held = |x: f64| density((x - mean) / spread) / spread * (1.0 - accept.conforms(x, u));
    let [start, end] = [mean - 9.0 * spread, mean + 9.0 * spread];
    let low = limits.low.map_or(start, |low| low.base().clamp(start, end));
    let high = limits.high.map_or(end, |high| high.base().clamp(start, end));
    let false_accept = simpson(&taken, start, low) + simpson(&taken, high, end);
    let right = simpson(&taken, low, high);
    Ok(Chances {
        false_accept,
        false_reject: simpson(&held, low, high),
        accepted: false_accept + right,
    })
}

fn simpson(f: &impl Fn(f64) -> f64, from: f64, to: f64) -> f64 {
    const PIECES: i32 = 2000;
    if to <= from {
        return 0.0;
    }
    let h = (to - from) / f64::from(PIECES);
    let inner: f64 = (1..PIECES)
        .map(|at| f(from + h * f64::from(at)) * if at % 2 == 1 { 4.0 } else { 2.0 })
        .sum();
    (f(from) + inner + f(to)) * h / 3.0
}
