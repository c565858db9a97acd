//! Spanners: a hand on a lever, and pins in the nut's holes.

use std::f64::consts::PI;

use crate::error::{Error, ErrorKind};
use crate::units::{
    Exact, Force, Length, Pressure, Torque, below, figure, meter, newton, newton_meter, pascal,
    positive, positive_length, shown_mm,
};

/// Torque of a hand on a spanner, `T = F L`, with the force square to the lever.
///
/// # Errors
///
/// [`ErrorKind::NotFinite`] and [`ErrorKind::OutOfRange`] for a force or length that is not
/// above zero.
///
/// # Source
///
/// Statics; no standard is involved.
///
/// # Example
///
/// 200 N on a spanner of 180 mm is 36 N m.
///
/// ```
/// use hubwright::joint::spanner_torque;
/// use hubwright::units::{Force, Length, millimeter, newton, newton_meter};
///
/// let torque = spanner_torque(Force::new::<newton>(200.0), Length::new::<millimeter>(180.0))?;
/// assert!((torque.get::<newton_meter>() - 36.0).abs() < 1e-12);
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn spanner_torque(force: Force, length: Length) -> Result<Torque, Error> {
    positive("force", force.get::<newton>(), "N", "200 N")?;
    let lever = positive_length("length", length)?;
    Ok(Torque::new::<newton_meter>(force.get::<newton>() * lever))
}

/// Force of the hand that a torque takes, `F = T / L`.
///
/// # Errors
///
/// [`ErrorKind::NotFinite`] and [`ErrorKind::OutOfRange`] for a torque or length that is not
/// above zero.
///
/// # Source
///
/// Statics; no standard is involved.
///
/// # Example
///
/// ```
/// use hubwright::joint::hand_force;
/// use hubwright::units::{Length, Torque, millimeter, newton, newton_meter};
///
/// let force = hand_force(Torque::new::<newton_meter>(36.0), Length::new::<millimeter>(180.0))?;
/// assert!((force.get::<newton>() - 200.0).abs() < 1e-9);
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn hand_force(torque: Torque, length: Length) -> Result<Force, Error> {
    positive("torque", torque.get::<newton_meter>(), "N m", "40 N m")?;
    let lever = positive_length("length", length)?;
    Ok(Force::new::<newton>(torque.get::<newton_meter>() / lever))
}

/// A spanner whose pins stand in holes of the nut.
///
/// Each pin carries `T / (n R)`, with `n` pins on a circle of radius `R`; shear is that over
/// `π p² / 4`, bearing over `p t`, with `p` the pin's diameter and `t` how deep it stands in the
/// hole. The metal left outside is `(outside − circle − hole) / 2`, inside `(circle − hole − inside) / 2`.
/// Bending of a pin between spanner and nut is not in it: keep the spanner on the face.
///
/// # Errors
///
/// [`ErrorKind::NotFinite`] and [`ErrorKind::OutOfRange`] for figures not above zero, pins outside 1 to 12, a pin
/// as large as its circle, pins or holes that run into one another, a hole smaller than its pin, and a nut with its inside beyond its outside.
///
/// # Source
///
/// Statics; no standard is involved.
///
/// # Example
///
/// Two pins of 4 mm on a circle of 30 mm carry 2 kN each at 60 N m.
///
/// ```
/// use hubwright::joint::PinSpanner;
/// use hubwright::units::{Length, Torque, millimeter, newton, newton_meter};
///
/// let mm = Length::new::<millimeter>;
/// let found = PinSpanner::new(Torque::new::<newton_meter>(60.0), 2, mm(30.0), mm(4.0), mm(5.0))
///     .with_nut(mm(4.2), mm(20.0), mm(40.0))
///     .solve()?;
/// assert!((found.pin_load.get::<newton>() - 2000.0).abs() < 1e-9);
/// assert!((found.outer_edge.unwrap_or_default().get::<millimeter>() - 2.9).abs() < 1e-9);
/// # Ok::<(), hubwright::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct PinSpanner {
    /// Torque.
    pub torque: Torque,
    /// Pins that carry.
    pub pins: u32,
    /// Diameter of the circle of holes.
    pub circle: Length,
    /// Diameter of a pin.
    pub pin: Length,
    /// How deep a pin stands in its hole.
    pub depth: Length,
    /// Holes, and inside and outside diameter of the nut.
    pub nut: Option<[Length; 3]>,
}

/// What [`PinSpanner::solve`] found.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct PinSpannerFound {
    /// The spanner.
    pub spanner: PinSpanner,
    /// Force on each pin.
    pub pin_load: Force,
    /// Shear stress of a pin.
    pub shear: Pressure,
    /// Pressure between pin and hole.
    pub bearing: Pressure,
    /// Metal between hole and the outside of the nut; below zero where the hole breaks out.
    pub outer_edge: Option<Length>,
    /// Metal between hole and the inside of the nut.
    pub inner_edge: Option<Length>,
    /// Whether a hole breaks out of the nut.
    pub breaks_out: Option<bool>,
}

impl PinSpanner {
    /// A spanner from the torque, its pins, their circle, and diameter and depth of a pin.
    pub const fn new(
        torque: Torque,
        pins: u32,
        circle: Length,
        pin: Length,
        depth: Length,
    ) -> Self {
        Self { torque, pins, circle, pin, depth, nut: None }
    }

    /// With the nut: diameter of the holes, inside and outside diameter.
    #[must_use]
    pub const fn with_nut(self, hole: Length, inside: Length, outside: Length) -> Self {
        Self { nut: Some([hole, inside, outside]), ..self }
    }

    /// Loads, stresses and what metal is left.
    ///
    /// # Errors
    ///
    /// As described on the type.
    pub fn solve(self) -> Result<PinSpannerFound, Error> {
        let torque = self.torque.get::<newton_meter>();
        positive("torque", torque, "N m", "40 N m")?;
        if !(1..=12).contains(&self.pins) {
            return Err(ErrorKind::OutOfRange {
                argument: "pins".into(),
                given: f64::from(self.pins),
                range: "outside 1 to 12".into(),
                unit: "",
                authority: String::new(),
                hint: "count the pins that carry: 1 of a hook spanner, 2 of a face spanner".into(),
            }
            .into());
        }
        let circle = positive_length("circle", self.circle)?;
        below("pin", shown_mm(self.pin), shown_mm(self.circle), "mm", "4 mm")?;
        let pin = self.pin.get::<meter>();
        let depth = positive_length("depth", self.depth)?;
        self.apart()?;
        let load = torque / (f64::from(self.pins) * circle / 2.0);
        let edges = self.edges()?;
        Ok(PinSpannerFound {
            spanner: self,
            pin_load: Force::new::<newton>(load),
            shear: Pressure::new::<pascal>(load / (PI / 4.0 * pin * pin)),
            bearing: Pressure::new::<pascal>(load / (pin * depth)),
            outer_edge: edges.map(|[outer, _]| outer),
            inner_edge: edges.map(|[_, inner]| inner),
            breaks_out: edges.map(|edges| edges.iter().any(|edge| edge.exact() <= 0.0)),
        })
    }

    /// Pins and holes evenly round the circle must not run into one another.
    fn apart(&self) -> Result<(), Error> {
        if self.pins < 2 {
            return Ok(());
        }
        let (argument, size) = match self.nut {
            Some([hole, ..]) if hole > self.pin => ("hole", hole),
            _ => ("pin", self.pin),
        };
        let chord = self.circle * (PI / f64::from(self.pins)).sin();
        if size < chord {
            return Ok(());
        }
        let (pins, apart) = (self.pins, figure(shown_mm(chord), 3));
        Err(ErrorKind::OutOfRange {
            argument: argument.into(),
            given: shown_mm(size),
            range: format!("not below {apart}, how far {pins} of them stand apart on their circle"),
            unit: "mm",
            authority: String::new(),
            hint: "take fewer pins, thinner ones, or a larger circle".into(),
        }
        .into())
    }

    fn edges(&self) -> Result<Option<[Length; 2]>, Error> {
        let Some([hole, inside, outside]) = self.nut else { return Ok(None) };
        positive_length("outside", outside)?;
        below("inside", shown_mm(inside), shown_mm(outside), "mm", "20 mm")?;
        positive_length("hole", hole)?;
        if hole.exact() < self.pin.exact() {
            return Err(ErrorKind::OutOfRange {
                argument: "hole".into(),
                given: shown_mm(hole),
                range: format!("below the pin of {}", shown_mm(self.pin)),
                unit: "mm",
                authority: String::new(),
                hint: "the pin does not go into such a hole".into(),
            }
            .into());
        }
        Ok(Some([(outside - self.circle - hole) / 2.0, (self.circle - hole - inside) / 2.0]))
    }
}
