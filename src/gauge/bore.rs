//! Drilling before a taper is bored: which drill, how deep, what is left.

use super::check::{ruled_out, uncertainty};
use crate::error::{Error, ErrorKind};
use crate::joint::Taper;
use crate::units::{Exact, Length, positive_length};

/// A taper bore that is drilled first, from its large end.
///
/// The largest drill that leaves the stock at the small end goes through; a larger one may go
/// on, with its full diameter, to `(D − drill − 2 stock) / taper` below the large end, where it
/// leaves the stock.
///
/// # Errors
///
/// [`Missing`](crate::ErrorKind::Missing) for an empty list of drills; [`OutOfRange`](crate::ErrorKind::OutOfRange) when the smallest leaves too
/// little, and for lengths that are not above zero.
///
/// # Source
///
/// Geometry; the stock to leave is the user's.
///
/// # Example
///
/// 3 in/ft from 25 mm, 40 mm long, ½ mm a side to be left: 24 mm through, 28 mm 24 mm deep.
///
/// ```
/// use hubwright::gauge::Boring;
/// use hubwright::joint::taper;
/// use hubwright::units::{Length, millimeter};
///
/// let mm = Length::new::<millimeter>;
/// let drills = [24.0, 25.0, 28.0].map(mm);
/// let found = Boring::new(taper("3 in/ft")?, mm(25.0), mm(40.0), mm(0.5)).drills(&drills)?;
/// assert_eq!(found.through.drill, mm(24.0));
/// assert!((found.steps[1].depth.get::<millimeter>() - 24.0).abs() < 1e-9);
/// # Ok::<(), hubwright::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Boring {
    /// The taper.
    pub taper: Taper,
    /// Diameter of the bore's small end.
    pub small_diameter: Length,
    /// Length of the bore.
    pub length: Length,
    /// Least stock to leave on one side.
    pub stock: Length,
}

/// One drill, and how far it may go.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct DrillStep {
    /// Diameter of the drill.
    pub drill: Length,
    /// How deep its full diameter may go, from the large end.
    pub depth: Length,
    /// Stock left on one side at that depth, where it is least.
    pub stock_left: Length,
    /// Stock left on one side at the large end.
    pub stock_at_large_end: Length,
}

/// What [`Boring::drills`] found.
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub struct BoringFound {
    /// What was asked.
    pub boring: Boring,
    /// Diameter of the bore's large end.
    pub large_diameter: Length,
    /// The largest drill that may go through.
    pub through: DrillStep,
    /// Larger drills for the wide part of the bore, smallest first; they only save boring.
    pub steps: Vec<DrillStep>,
}

impl Boring {
    /// A bore from its small end's diameter.
    pub fn new(taper: Taper, small_diameter: Length, length: Length, stock: Length) -> Self {
        Self { taper, small_diameter, length, stock }
    }

    /// Which of some drills to take.
    ///
    /// # Errors
    ///
    /// See [`Boring`].
    pub fn drills(self, drills: &[Length]) -> Result<BoringFound, Error> {
        positive_length("small_diameter", self.small_diameter)?;
        positive_length("length", self.length)?;
        uncertainty("stock", self.stock)?;
        let mut sorted = drills.to_vec();
        for drill in &sorted {
            positive_length("drills", *drill)?;
        }
        sorted.sort_by(|a, b| a.exact().total_cmp(&b.exact()));
        let [smallest, ..] = sorted[..] else {
            return Err(ErrorKind::Missing {
                argument: "drills".into(),
                why: "there is none to choose from".into(),
                hint: "list the drills of the shop, like [\"20 mm\", \"22 mm\"]".into(),
            }
            .into());
        };
        let most = self.small_diameter - 2.0 * self.stock;
        let large = self.small_diameter + self.taper.on_diameter() * self.length;
        // Whole nanometres, so that a drill that leaves just the stock is taken.
        let fits = |drill: &Length, most: Length| drill.exact() <= most.exact();
        let Some(through) = sorted.iter().copied().rfind(|drill| fits(drill, most)) else {
            let range = "over what leaves the stock at the small end,";
            let hint = "take a smaller drill, or leave less stock";
            return Err(ruled_out("drills", smallest, range, most, hint));
        };
        let of = |drill: Length, depth: Length| DrillStep {
            drill,
            depth,
            stock_left: (large - self.taper.on_diameter() * depth - drill) / 2.0,
            stock_at_large_end: (large - drill) / 2.0,
        };
        let wider = sorted
            .iter()
            .copied()
            .filter(|drill| *drill > through && fits(drill, large - 2.0 * self.stock));
        let steps = wider
            .map(|drill| of(drill, (large - drill - 2.0 * self.stock) / self.taper.on_diameter()))
            .collect();
        let through = of(through, self.length);
        Ok(BoringFound { boring: self, large_diameter: large, through, steps })
    }
}
