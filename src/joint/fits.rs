//! Fits: what a hole and a shaft of one nominal size leave between them.

use std::cmp::Ordering;

use super::class::{Class, Feature, Wanted, size_and_class};
use super::limits::{Limits, nominal_nm, um};
use crate::error::{Error, ErrorKind};
use crate::source::Source;
use crate::tables::iso286::preferred::FITS;
use crate::tables::iso286::{GRADES, STEPS};
use crate::tables::laws::ARITHMETIC;
use crate::units::{Exact, Length, figure, micrometer, words};
use crate::working::{Step, Working};

words! {
    /// Whether a shaft is loose in its hole, tight, or either by chance.
    FitKind, "fit kind" {
        /// Never tight: the least clearance is zero or more.
        Clearance = "clearance" [];
        /// Loose or tight, as the two sizes fall out.
        Transition = "transition" [];
        /// Never loose: the most clearance is zero or less.
        Interference = "interference" [];
    }
}

words! {
    /// Which part of a fit is made to nominal size, the other being varied.
    FitBasis, "fit basis" {
        /// An H hole: one reamer, many shafts.
        Hole = "hole basis" [];
        /// An h shaft: one bar, many holes.
        Shaft = "shaft basis" [];
        /// H and h at once.
        Both = "both" [];
        /// Neither H nor h.
        Neither = "neither" [];
    }
}

/// What [`fit`] found. Clearances are on diameter; negative is interference.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Fit {
    /// Limits of the hole.
    pub hole: Limits,
    /// Limits of the shaft.
    pub shaft: Limits,
    /// Clearance, transition or interference.
    pub kind: FitKind,
    /// Largest hole less smallest shaft, in nm.
    pub most_clearance_nm: i64,
    /// Smallest hole less largest shaft, in nm.
    pub least_clearance_nm: i64,
}

/// Limits of hole and shaft, and the clearance between them.
///
/// `most = ES − ei`, `least = EI − es`, on diameter; negative is interference.
/// The fit is one of clearance where `least ≥ 0`, of interference where
/// `most ≤ 0`, of transition otherwise. It is written with the hole first,
/// like `20 H7/g6` or `1-1/4 in H7/g6`.
///
/// # Errors
///
/// [`ErrorKind::NotAQuantity`] for a text that is no size with two classes, and
/// what [`limits`](super::limits()) says about either class.
///
/// # Source
///
/// ISO 286-1 as for [`limits`](super::limits()); the rest is arithmetic.
///
/// # Example
///
/// A 20 mm H7/g6 leaves 7 to 41 µm.
///
/// ```
/// use hubwright::joint::{FitKind, fit};
///
/// let found = fit("20 H7/g6")?;
/// assert_eq!(found.kind, FitKind::Clearance);
/// assert_eq!((found.least_clearance_um(), found.most_clearance_um()), (7.0, 41.0));
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn fit(fit: &str) -> Result<Fit, Error> {
    const WANTED: Wanted = Wanted {
        argument: "fit",
        kind: "size with a fit",
        hint: "write nominal size, hole and shaft, like \"20 H7/g6\" or \"1-1/4 in H7/g6\"",
    };
    let refuse = |why| WANTED.refuse(fit.trim(), why);
    let (front, shaft) = fit.rsplit_once('/').ok_or_else(|| refuse("there is no / in it"))?;
    let shaft = shaft.trim();
    if !shaft.starts_with(|c: char| c.is_ascii_alphabetic()) {
        return Err(refuse("no class follows the /"));
    }
    let (nominal, hole) = size_and_class(front, WANTED)?;
    let shaft: Class = shaft.parse()?;
    if hole.feature() != Feature::Hole || shaft.feature() != Feature::Shaft {
        return Err(refuse("it is not a hole in capitals before a shaft in small letters"));
    }
    Fit::of(nominal, hole, shaft)
}

impl Fit {
    /// The fit of a nominal size and two classes that are read already.
    ///
    /// # Errors
    ///
    /// What [`Limits::of`] says about either class.
    pub fn of(nominal: Length, hole: Class, shaft: Class) -> Result<Self, Error> {
        let (hole, shaft) = (Limits::of(nominal, hole)?, Limits::of(nominal, shaft)?);
        let most_clearance_nm = hole.upper_nm - shaft.lower_nm;
        let least_clearance_nm = hole.lower_nm - shaft.upper_nm;
        let kind = if least_clearance_nm >= 0 {
            FitKind::Clearance
        } else if most_clearance_nm <= 0 {
            FitKind::Interference
        } else {
            FitKind::Transition
        };
        Ok(Self { hole, shaft, kind, most_clearance_nm, least_clearance_nm })
    }

    /// Nominal size of both.
    pub fn nominal(&self) -> Length {
        self.hole.nominal
    }

    /// Most clearance on diameter, in µm.
    pub fn most_clearance_um(&self) -> f64 {
        um(self.most_clearance_nm)
    }

    /// Least clearance on diameter, in µm; negative is interference.
    pub fn least_clearance_um(&self) -> f64 {
        um(self.least_clearance_nm)
    }

    /// Which part is made to nominal size.
    pub fn basis(&self) -> FitBasis {
        let made = |limits: &Limits| limits.class.letter().eq_ignore_ascii_case("h");
        match (made(&self.hole), made(&self.shaft)) {
            (true, true) => FitBasis::Both,
            (true, false) => FitBasis::Hole,
            (false, true) => FitBasis::Shaft,
            (false, false) => FitBasis::Neither,
        }
    }

    /// The steps, recomputed: those of hole and shaft, then the clearances. The
    /// last step's result is the most clearance in µm.
    pub fn working(&self) -> Working {
        let Ok(again) = Self::of(self.nominal(), self.hole.class, self.shaft.class) else {
            return Working::default();
        };
        let clearance = |symbol, relation, hole: f64, shaft: f64, nm: i64| Step {
            symbol,
            relation,
            numbers: format!("{} − ({})", figure(hole, 2), figure(shaft, 2)),
            result: um(nm),
            unit: "µm",
            source: ARITHMETIC,
        };
        let (hole, shaft) = (again.hole, again.shaft);
        let mut steps = hole.working().steps;
        steps.extend(shaft.working().steps);
        steps.extend([
            clearance(
                "least clearance",
                "EI − es",
                hole.lower_um(),
                shaft.upper_um(),
                again.least_clearance_nm,
            ),
            clearance(
                "most clearance",
                "ES − ei",
                hole.upper_um(),
                shaft.lower_um(),
                again.most_clearance_nm,
            ),
        ]);
        Working { steps }
    }
}

/// A fit to prefer that lies inside the window asked for.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct RankedFit {
    /// The fit.
    pub fit: Fit,
    /// Share of the window that it uses, up to 1.
    pub share: f64,
    /// The list of preferred fits that it stands in.
    pub source: Source,
}

/// Fits to prefer whose clearance always lies inside a window, best first.
///
/// The best uses the largest share of the window, `(most − least)` of the fit over
/// that of the window: its tolerances are the widest that still serve, so it costs
/// least to make. Equal shares come in the order of the lists: first choice
/// before the rest, H holes before h shafts. Clearances are on diameter, a negative
/// one being interference. Nothing is found where no preferred fit lies inside;
/// fits that the standard lacks at this size are passed over.
///
/// # Errors
///
/// [`ErrorKind::NotFinite`] for a length that is NaN or infinite,
/// [`ErrorKind::OutOfRange`] for a nominal size outside 0 to 3150 mm or a window
/// whose most clearance is not above its least.
///
/// # Source
///
/// ANSI B4.2-1978, ten preferred fits of each basis, and ISO 286-1:2010, fits with H
/// holes, both from memory; each result names its list.
///
/// # Example
///
/// A 25 mm spigot that shall have 5 to 45 µm of clearance: H7/g6 first.
///
/// ```
/// use hubwright::joint::fits_for;
/// use hubwright::units::{Length, micrometer, millimeter};
///
/// let um = Length::new::<micrometer>;
/// let fits = fits_for(Length::new::<millimeter>(25.0), um(5.0), um(45.0))?;
/// let best = fits[0].fit;
/// assert_eq!((best.hole.class.to_string(), best.shaft.class.to_string()), ("H7".into(), "g6".into()));
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn fits_for(
    nominal: Length,
    least_clearance: Length,
    most_clearance: Length,
) -> Result<Vec<RankedFit>, Error> {
    let nm = nominal_nm(nominal)?;
    let last = STEPS[STEPS.len() - 1];
    if nm > last {
        return Err(ErrorKind::OutOfRange {
            argument: "nominal".into(),
            given: nm as f64 / 1e6,
            range: "outside 0 to 3150".into(),
            unit: "mm",
            authority: GRADES.to_string(),
            hint: "above 3150 mm the standard has no fits: state both limits of each part".into(),
        }
        .into());
    }
    let window = [("least_clearance", least_clearance), ("most_clearance", most_clearance)];
    for (argument, length) in window {
        let given = length.get::<micrometer>();
        if !given.is_finite() {
            let (argument, example) = (argument.into(), "20 um");
            return Err(ErrorKind::NotFinite { argument, given, example }.into());
        }
    }
    let (least, most) = (least_clearance.exact(), most_clearance.exact());
    if most <= least {
        return Err(ErrorKind::OutOfRange {
            argument: "most_clearance".into(),
            given: most / 1000.0,
            range: format!("not above least_clearance {}", figure(least / 1000.0, 3)),
            unit: "um",
            authority: String::new(),
            hint: "give the least first; interference is negative, like \"-30 um\"".into(),
        }
        .into());
    }
    let ranked = |&(hole, shaft, source): &(&str, &str, Source)| {
        let fit = Fit::of(nominal, hole.parse().ok()?, shaft.parse().ok()?).ok()?;
        let (low, high) = (fit.least_clearance_nm as f64, fit.most_clearance_nm as f64);
        let inside = low >= least && high <= most;
        inside.then(|| RankedFit { fit, share: (high - low) / (most - least), source })
    };
    let mut all: Vec<RankedFit> = FITS.iter().filter_map(ranked).collect();
    // A stable sort: the order of the lists decides between equals.
    all.sort_by(|a, b| b.share.partial_cmp(&a.share).unwrap_or(Ordering::Equal));
    Ok(all)
}
