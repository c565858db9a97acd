//! Limits of size: what a nominal size and a tolerance class allow.

use super::class::{Class, Wanted, size_and_class};
use super::lookup::{find, nothing_left};
use crate::error::{Error, ErrorKind};
use crate::source::Source;
use crate::units::{Exact, Length, millimeter, words};
use crate::working::Working;

words! {
    /// How a measured size fares between its limits.
    SizeOutcome, "outcome" {
        /// On the limits or between them.
        Within = "within" [];
        /// Above the largest size.
        TooLarge = "too large" [];
        /// Below the smallest size.
        TooSmall = "too small" [];
    }
}

/// What [`limits`] found.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Limits {
    /// Nominal size, the zero of both deviations.
    pub nominal: Length,
    /// Tolerance class.
    pub class: Class,
    /// Upper deviation, ES or es, in nm.
    pub upper_nm: i64,
    /// Lower deviation, EI or ei, in nm.
    pub lower_nm: i64,
    /// Nominal size and upper deviation.
    pub largest: Length,
    /// Nominal size and lower deviation.
    pub smallest: Length,
    /// Where they come from, with the weakest status among the figures used.
    pub source: Source,
}

/// A measured size judged by [`Limits::judge`].
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Judgement {
    /// The limits it was judged by.
    pub limits: Limits,
    /// The size judged.
    pub measured: Length,
    /// How it fares.
    pub outcome: SizeOutcome,
    /// By how much, in nm: past the limit, or within it from the nearer one.
    pub amount_nm: i64,
}

/// Limits of size of a hole or shaft from its nominal size and tolerance class.
///
/// Hole A to H: `EI` is the printed deviation, `ES = EI + IT`; hole J to ZC:
/// `ES` is the printed deviation plus Δ where the standard adds it, `EI = ES − IT`.
/// Shaft a to h: `es` is printed, `ei = es − IT`; shaft j to zc: `ei` is
/// printed, `es = ei + IT`. JS and js lie half of `IT` on either side. The size is
/// written with its class, like `20 H7`, `20H7`, `Ø31.75 js6` or
/// `1-1/4 in H7`; without a unit it is in millimetres. An inch size is converted
/// exactly and looked up by its millimetres, rounded to a whole nanometre.
///
/// Range: above 0 to 3150 mm; what the tables leave out is an error.
///
/// # Errors
///
/// [`ErrorKind::NotAQuantity`] for a text that is no size with a class,
/// [`ErrorKind::UnknownWord`] for a class that the standard lacks,
/// [`ErrorKind::OutOfRange`] for a size at which its table gives nothing.
///
/// # Source
///
/// ISO 286-1, in reprints, and BS 4500 for holes J to N. Recalled: IT01, IT0,
/// IT15 to IT18, IT12 and IT14 over 315 mm, and over 500 mm all but IT5 to
/// IT11; the result's source says so.
///
/// # Example
///
/// A 20 mm H7 hole may measure 20.000 to 20.021 mm.
///
/// ```
/// use hubwright::joint::limits;
/// use hubwright::units::Nanometres;
///
/// let hole = limits("20 H7")?;
/// assert_eq!((hole.upper_um(), hole.lower_um()), (21.0, 0.0));
/// assert_eq!(Nanometres::from(hole.largest), Nanometres(20_021_000));
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn limits(size: &str) -> Result<Limits, Error> {
    const WANTED: Wanted = Wanted {
        argument: "size",
        kind: "size with a tolerance class",
        hint: "write nominal size and class, like \"20 H7\" or \"1-1/4 in g6\"",
    };
    let (nominal, class) = size_and_class(size, WANTED)?;
    Limits::of(nominal, class)
}

impl Limits {
    /// Limits of a nominal size that is a quantity already.
    ///
    /// # Errors
    ///
    /// [`ErrorKind::NotFinite`] and [`ErrorKind::OutOfRange`] as for [`limits`].
    pub fn of(nominal: Length, class: Class) -> Result<Self, Error> {
        let nm = nominal_nm(nominal)?;
        let found = find(nm, class)?;
        let (upper_nm, lower_nm) = (found.upper(), found.lower());
        if nm + lower_nm <= 0 {
            return Err(nothing_left(nm, class, nm + lower_nm));
        }
        let size = |deviation: i64| Length::from_exact((nm + deviation) as f64);
        let (largest, smallest) = (size(upper_nm), size(lower_nm));
        Ok(Self { nominal, class, upper_nm, lower_nm, largest, smallest, source: found.source() })
    }

    /// Upper deviation in µm.
    pub fn upper_um(&self) -> f64 {
        um(self.upper_nm)
    }

    /// Lower deviation in µm.
    pub fn lower_um(&self) -> f64 {
        um(self.lower_nm)
    }

    /// Width of the tolerance, upper less lower deviation, in µm.
    pub fn tolerance_um(&self) -> f64 {
        um(self.upper_nm - self.lower_nm)
    }

    /// Judges a measured size on whole nanometres: a size on a limit is within.
    ///
    /// The size is taken as it is, at 20 °C and without the uncertainty of measuring.
    ///
    /// # Errors
    ///
    /// [`ErrorKind::NotFinite`] and [`ErrorKind::OutOfRange`] for a size that
    /// is no finite number above zero.
    ///
    /// ```
    /// use hubwright::joint::{SizeOutcome, limits};
    /// use hubwright::units::{Length, millimeter};
    ///
    /// let judged = limits("20 H7")?.judge(Length::new::<millimeter>(20.0243))?;
    /// assert_eq!((judged.outcome, judged.amount_nm), (SizeOutcome::TooLarge, 3300));
    /// # Ok::<(), hubwright::Error>(())
    /// ```
    pub fn judge(&self, measured: Length) -> Result<Judgement, Error> {
        positive("measured", measured)?;
        let size = measured.exact() as i64;
        let over = size - self.largest.exact() as i64;
        let under = self.smallest.exact() as i64 - size;
        let (outcome, amount_nm) = if over > 0 {
            (SizeOutcome::TooLarge, over)
        } else if under > 0 {
            (SizeOutcome::TooSmall, under)
        } else {
            (SizeOutcome::Within, -over.max(under))
        };
        Ok(Judgement { limits: *self, measured, outcome, amount_nm })
    }

    /// How the limits came about, recomputed; the last step's result is `largest` in mm.
    pub fn working(&self) -> Working {
        let nm = self.nominal.exact() as i64;
        find(nm, self.class)
            .map_or_else(|_| Working::default(), |found| found.working(nm, self.class))
    }
}

pub(super) fn um(nm: i64) -> f64 {
    nm as f64 / 1000.0
}

/// A nominal size in whole nm, above zero.
pub(super) fn nominal_nm(nominal: Length) -> Result<i64, Error> {
    positive("nominal", nominal)?;
    Ok(nominal.exact() as i64)
}

/// That a length is a finite number above zero.
fn positive(argument: &str, length: Length) -> Result<(), Error> {
    let given = length.get::<millimeter>();
    if !given.is_finite() {
        let (argument, example) = (argument.into(), "20 mm");
        return Err(ErrorKind::NotFinite { argument, given, example }.into());
    }
    if length.exact() < 1.0 {
        return Err(ErrorKind::OutOfRange {
            argument: argument.into(),
            given,
            range: "not above 0".into(),
            unit: "mm",
            authority: String::new(),
            hint: "give a size above zero, like \"20 mm\"".into(),
        }
        .into());
    }
    Ok(())
}
