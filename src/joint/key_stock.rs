//! Key steel to make: its width by a fit, what is left on it, its chamfers.

use super::class::{Class, Feature};
use super::key::inside_hub;
use super::limits::{Limits, um};
use crate::error::{Error, ErrorKind, cut};
use crate::source::{Source, Status};
use crate::tables::laws::ARITHMETIC;
use crate::units::{
    Exact, Length, Volume, cubic_millimeter, figure, meter, millimeter, positive_length,
    zero_or_more,
};
use crate::working::{Step, Working};

/// What a push with no shake is taken for.
pub const PUSH: Source = Source::new(
    "push-fit",
    "common practice, no source",
    "",
    "a push with no shake, for a key to be brazed, taken for h6",
    Status::Practice,
);

/// Reads the fit of a key: `push`, or a class for shafts such as `h9`.
///
/// # Errors
///
/// [`ErrorKind::UnknownWord`] for anything else, a class for holes included.
pub fn key_class(fit: &str) -> Result<(Class, Source), Error> {
    let word = fit.trim();
    let push = word.eq_ignore_ascii_case("push");
    let class: Option<Class> = if push { "h6" } else { word }.parse().ok();
    match class.filter(|class| class.feature() == Feature::Shaft) {
        Some(class) if push => Ok((class, PUSH)),
        Some(class) => Ok((class, ARITHMETIC)),
        None => Err(ErrorKind::UnknownWord {
            argument: "fit".into(),
            text: cut(fit),
            allowed: "push, or a tolerance class for shafts".into(),
            hint: "write \"push\" for a key to be brazed, or a class in small letters like \"h9\""
                .into(),
        }
        .into()),
    }
}

/// Key steel for a slot that is there already.
///
/// The width is the slot's, as measured, with the limits of the class: `push` is h6, so that
/// the key is never wider than the slot and no looser than IT6. Height and length are those of the
/// finished key; what is left proud and long comes off when the hub is finished. Two chamfers `c`
/// along the bottom edges make channels for the filler, `c² L` of it together, and clear the
/// slot's corners when they are at least as large as the radius there.
///
/// # Errors
///
/// [`ErrorKind::OutOfRange`] for a size that is not above zero (zero or more for what is left), a finished
/// key longer than its hub, or chamfers that leave no bottom or no side; what
/// [`limits`](super::limits()) says about the class; [`ErrorKind::NotFinite`] for NaN and infinite ones.
///
/// # Source
///
/// ISO 286-1 for the limits. That a key to be brazed is a push with no shake is common
/// practice, no source.
///
/// # Example
///
/// A slot of 4.02 mm takes a pushed key of 4.012 to 4.020 mm; of a finished height of 4 mm and length
/// of 18 mm, 0.3 mm proud and 1 mm long, it is cut 4.3 mm high and 19 mm long.
///
/// ```
/// use hubwright::joint::{KeyStock, key_class};
/// use hubwright::units::{Length, millimeter};
///
/// let mm = Length::new::<millimeter>;
/// let (push, _) = key_class("push")?;
/// let stock = KeyStock::new(mm(4.02), push, mm(4.0), mm(18.0))
///     .with_proud(mm(0.3))
///     .with_long(mm(1.0))
///     .solve()?;
/// assert_eq!((stock.width.upper_nm, stock.width.lower_nm), (0, -8_000));
/// assert!((stock.height.get::<millimeter>() - 4.3).abs() < 1e-12);
/// assert!((stock.length.get::<millimeter>() - 19.0).abs() < 1e-12);
/// # Ok::<(), hubwright::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct KeyStock {
    /// Width of the slot, as measured.
    pub slot_width: Length,
    /// Class of the key's width.
    pub class: Class,
    /// Height of the finished key.
    pub height: Length,
    /// Length of the finished key.
    pub length: Length,
    /// Height left on, to come off when the hub is finished.
    pub proud: Length,
    /// Length left on, likewise.
    pub long: Length,
    /// Chamfer of the bottom edges, for the filler.
    pub chamfer: Length,
    /// Radius in the corners of the slot.
    pub corner_radius: Option<Length>,
    /// Length of the finished hub.
    pub hub_length: Option<Length>,
}

/// What [`KeyStock::solve`] found.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct KeyStockFound {
    /// What was asked.
    pub stock: KeyStock,
    /// Limits of the width.
    pub width: Limits,
    /// Least clearance in the slot, both sides together, in nm; negative is interference.
    pub least_clearance_nm: i64,
    /// Most clearance in the slot, both sides together, in nm.
    pub most_clearance_nm: i64,
    /// Height to cut it to.
    pub height: Length,
    /// Length to cut it to.
    pub length: Length,
    /// Filler that the two channels hold along the whole stock.
    pub channels: Volume,
    /// Whether the chamfers clear the corners of the slot; `None` without their radius.
    pub clears_corners: Option<bool>,
}

impl KeyStock {
    /// A key with nothing left on it and sharp edges.
    pub fn new(slot_width: Length, class: Class, height: Length, length: Length) -> Self {
        let none = Length::default();
        Self {
            slot_width,
            class,
            height,
            length,
            proud: none,
            long: none,
            chamfer: none,
            corner_radius: None,
            hub_length: None,
        }
    }

    /// With height left on.
    #[must_use]
    pub fn with_proud(mut self, proud: Length) -> Self {
        self.proud = proud;
        self
    }

    /// With length left on.
    #[must_use]
    pub fn with_long(mut self, long: Length) -> Self {
        self.long = long;
        self
    }

    /// With chamfers along the bottom edges.
    #[must_use]
    pub fn with_chamfer(mut self, chamfer: Length) -> Self {
        self.chamfer = chamfer;
        self
    }

    /// With the radius in the corners of the slot.
    #[must_use]
    pub fn with_corner_radius(mut self, radius: Length) -> Self {
        self.corner_radius = Some(radius);
        self
    }

    /// With the length of the finished hub, which the finished key may not pass.
    #[must_use]
    pub fn with_hub_length(mut self, length: Length) -> Self {
        self.hub_length = Some(length);
        self
    }

    fn check(&self) -> Result<(), Error> {
        positive_length("slot_width", self.slot_width)?;
        positive_length("height", self.height)?;
        positive_length("length", self.length)?;
        inside_hub(self.length, self.hub_length)?;
        for (name, left) in [("proud", self.proud), ("long", self.long)] {
            zero_or_more(name, left.get::<millimeter>(), "mm", "0.3 mm")?;
        }
        if let Some(radius) = self.corner_radius {
            zero_or_more("corner_radius", radius.get::<millimeter>(), "mm", "0.2 mm")?;
        }
        chamfer_fits(self.chamfer, self.slot_width, self.height)
    }

    /// What to make.
    ///
    /// # Errors
    ///
    /// See [`KeyStock`].
    pub fn solve(self) -> Result<KeyStockFound, Error> {
        self.check()?;
        let width = Limits::of(self.slot_width, self.class)?;
        let length = self.length + self.long;
        let (c, l) = (self.chamfer.get::<millimeter>(), length.get::<millimeter>());
        Ok(KeyStockFound {
            stock: self,
            width,
            least_clearance_nm: -width.upper_nm,
            most_clearance_nm: -width.lower_nm,
            height: self.height + self.proud,
            length,
            channels: Volume::new::<cubic_millimeter>(c * c * l),
            clears_corners: self.corner_radius.map(|radius| self.chamfer.exact() >= radius.exact()),
        })
    }
}

/// A chamfer that leaves something of the bottom and the sides of a key.
pub(super) fn chamfer_fits(chamfer: Length, width: Length, height: Length) -> Result<(), Error> {
    let given = chamfer.get::<millimeter>();
    zero_or_more("chamfer", given, "mm", "0.3 mm")?;
    let most = (width.get::<meter>() / 2.0).min(height.get::<meter>());
    if chamfer.get::<meter>() < most {
        return Ok(());
    }
    let range = format!("not below {}", figure(most * 1e3, 4));
    let hint = "two chamfers leave nothing of the key's bottom or side: take smaller ones";
    Err(super::key::outside("chamfer", given, range, "mm", String::new(), hint.into()))
}

impl KeyStockFound {
    /// Least clearance in µm, both sides together; negative is interference.
    pub fn least_clearance_um(&self) -> f64 {
        um(self.least_clearance_nm)
    }

    /// Most clearance in µm, both sides together.
    pub fn most_clearance_um(&self) -> f64 {
        um(self.most_clearance_nm)
    }

    /// The steps, recomputed; the last one's result is `length` in mm.
    pub fn working(&self) -> Working {
        let Ok(again) = self.stock.solve() else { return Working::default() };
        let mm = |length: Length| figure(length.get::<millimeter>(), 4);
        let step = |symbol, relation, numbers, result, unit| Step {
            symbol,
            relation,
            numbers,
            result,
            unit,
            source: ARITHMETIC,
        };
        let KeyStock { height, length, proud, long, chamfer, .. } = self.stock;
        let mut steps = again.width.working().steps;
        steps.extend([
            step(
                "channels",
                "c² L",
                format!("{}² · {}", mm(chamfer), mm(again.length)),
                again.channels.get::<cubic_millimeter>(),
                "mm3",
            ),
            step(
                "height of the stock",
                "height + proud",
                format!("{} + {}", mm(height), mm(proud)),
                again.height.get::<millimeter>(),
                "mm",
            ),
            step(
                "length of the stock",
                "length + long",
                format!("{} + {}", mm(length), mm(long)),
                again.length.get::<millimeter>(),
                "mm",
            ),
        ]);
        Working { steps }
    }
}
