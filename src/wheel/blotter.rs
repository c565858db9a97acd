//! The blotters between wheel and flanges.

use super::flange::{Governs, Limit};
use super::shape::{Abrasive, Bond, Shape};
use crate::error::{Error, ErrorKind};
use crate::tables::laws;
use crate::units::{Exact, Length, figure, millimeter, positive, positive_length, words};

words! {
    /// Whether a wheel needs blotters.
    BlotterNeed, "blotter need" {
        /// It does.
        Needed = "needed" [];
        /// The law exempts "certain" wheels of this sort without saying which.
        AskTheMaker = "ask the maker" [];
        /// It does not.
        NotNeeded = "not needed" [];
    }
}

/// What [`blotter_limits`] found.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct BlotterLimits {
    /// Diameter of the flange asked about.
    pub flange_diameter: Length,
    /// Width of its land, when it was given.
    pub land: Option<Length>,
    /// Whether the wheel needs blotters.
    pub need: BlotterNeed,
    /// Least outside diameter: that of the flange.
    pub least_diameter: Limit,
    /// Greatest hole that leaves the land covered; `None` without a land.
    pub greatest_hole: Option<Limit>,
}

/// Whether a wheel between flanges needs blotters.
///
/// An abrasive or bond that is not given is taken for one that needs them.
pub(crate) const fn need(
    shape: Option<Shape>,
    abrasive: Option<Abrasive>,
    bond: Option<Bond>,
) -> BlotterNeed {
    if matches!(shape, Some(Shape::Type4 | Shape::Type27 | Shape::Type28 | Shape::Disc)) {
        return BlotterNeed::NotNeeded;
    }
    match (abrasive, bond) {
        (Some(Abrasive::Diamond), Some(Bond::Vitrified)) => return BlotterNeed::AskTheMaker,
        (Some(Abrasive::Diamond), Some(_)) => return BlotterNeed::NotNeeded,
        _ => {}
    }
    match shape {
        // The terrazzo types are exempt on their flat side only.
        Some(shape) if shape.special_flanges() || shape.cuts_off() => BlotterNeed::AskTheMaker,
        _ => BlotterNeed::Needed,
    }
}

/// Whether a wheel needs blotters, and the sizes that cover a flange.
///
/// Modified types 6 and 11 for terrazzo are exempt on their flat side only, so
/// that the answer for them is to ask the maker.
///
/// # Errors
///
/// [`ErrorKind::OutOfRange`] when a length is zero or negative, or the land is
/// wider than half of the flange; [`ErrorKind::NotFinite`] when one is NaN or
/// infinite.
///
/// # Source
///
/// 29 CFR 1910.215(c)(6) and (d)(5).
///
/// # Example
///
/// A flange of 80 mm with a land of 8 mm takes a blotter of at least 80 mm
/// whose hole is at most 64 mm.
///
/// ```
/// use hubwright::units::{Length, millimeter};
/// use hubwright::wheel::{BlotterNeed, Shape, blotter_limits};
///
/// let mm = Length::new::<millimeter>;
/// let limits = blotter_limits(Shape::Type1, mm(80.0), Some(mm(8.0)), None, None)?;
/// assert_eq!(limits.need, BlotterNeed::Needed);
/// assert_eq!(limits.greatest_hole.map(|hole| hole.value.get::<millimeter>()), Some(64.0));
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn blotter_limits(
    shape: Shape,
    flange_diameter: Length,
    land: Option<Length>,
    abrasive: Option<Abrasive>,
    bond: Option<Bond>,
) -> Result<BlotterLimits, Error> {
    positive_length("flange_diameter", flange_diameter)?;
    let flange = flange_diameter.exact();
    let mut hole = f64::NAN;
    if let Some(land) = land {
        let mm = land.get::<millimeter>();
        positive("land", mm, "mm", "8 mm")?;
        hole = flange - 2.0 * land.exact();
        if hole < 0.0 {
            let most = figure(flange / 2e6, 4);
            return Err(ErrorKind::OutOfRange {
                argument: "land".into(),
                given: mm,
                range: format!("outside 0 to {most}"),
                unit: "mm",
                authority: String::new(),
                hint: "a land is at most half of the flange: give its width on one side".into(),
            }
            .into());
        }
    }
    let covers = |nm| Limit::new(nm, laws::BLOTTER_COVERS, Governs::Clause);
    Ok(BlotterLimits {
        flange_diameter,
        land,
        need: need(Some(shape), abrasive, bond),
        least_diameter: Limit {
            value: flange_diameter,
            source: laws::BLOTTER_COVERS,
            governs: Governs::Clause,
        },
        greatest_hole: covers(hole),
    })
}
