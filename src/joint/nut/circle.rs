//! Holes on a circle, and how to space them on a machine.

use std::f64::consts::PI;

use crate::error::{Error, ErrorKind};
use crate::source::{Source, Status};
use crate::units::{Angle, Length, degree, finite, positive_length, radian};

/// Hole circles of common index plates.
pub const DIVIDING_PLATES: Source =
    Source::new("dividing-plates", "index plates with 15 to 49 holes", "", "", Status::Memory);

/// Hole circles of the three index plates that many dividing heads come with.
pub const DIVIDING_CIRCLES: [u32; 18] =
    [15, 16, 17, 18, 19, 20, 21, 23, 27, 29, 31, 33, 37, 39, 41, 43, 47, 49];

/// Most holes on a circle, or divisions.
const MOST: u32 = 1000;

/// One hole of a circle.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Hole {
    /// Angle from the x axis, anticlockwise.
    pub angle: Angle,
    /// Place along x, from the centre.
    pub x: Length,
    /// Place along y.
    pub y: Length,
}

/// Holes evenly on a circle: what [`hole_circle`] found.
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub struct HoleCircle {
    /// Diameter of the circle.
    pub diameter: Length,
    /// Angle between neighbours.
    pub spacing: Angle,
    /// Straight distance between the centres of neighbours; zero for a single hole.
    pub chord: Length,
    /// The holes in order.
    pub holes: Vec<Hole>,
}

/// Coordinates of holes that lie evenly on a circle.
///
/// Hole `i` lies at the start angle plus `i · 360° / n`, at `x = R cos`, `y = R sin` from the centre;
/// the chord between neighbours is `2 R sin(180° / n)`.
///
/// # Errors
///
/// [`ErrorKind::NotFinite`] and [`ErrorKind::OutOfRange`] for a diameter not above zero and for
/// holes outside 1 to 1000.
///
/// # Source
///
/// Geometry; no standard is involved.
///
/// # Example
///
/// Six holes on a circle of 60 mm are 30 mm apart.
///
/// ```
/// use hubwright::joint::hole_circle;
/// use hubwright::units::{Angle, Length, millimeter};
///
/// let six = hole_circle(6, Length::new::<millimeter>(60.0), Angle::default())?;
/// assert!((six.chord.get::<millimeter>() - 30.0).abs() < 1e-9);
/// assert!((six.holes[1].y.get::<millimeter>() - 25.9808).abs() < 1e-4);
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn hole_circle(holes: u32, diameter: Length, start: Angle) -> Result<HoleCircle, Error> {
    positive_length("diameter", diameter)?;
    finite("start", start.get::<degree>(), "0 deg")?;
    count("holes", holes)?;
    let radius = diameter / 2.0;
    let spacing = 2.0 * PI / f64::from(holes);
    let hole = |at: u32| {
        let angle = start.get::<radian>() + f64::from(at) * spacing;
        Hole {
            angle: Angle::new::<radian>(angle),
            x: radius * angle.cos(),
            y: radius * angle.sin(),
        }
    };
    Ok(HoleCircle {
        diameter,
        spacing: Angle::new::<radian>(spacing),
        chord: if holes == 1 { Length::default() } else { diameter * (spacing / 2.0).sin() },
        holes: (0..holes).map(hole).collect(),
    })
}

/// One way to set a dividing head.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub struct Division {
    /// Whole turns of the crank.
    pub turns: u32,
    /// Holes to go on besides.
    pub holes: u32,
    /// In this circle of holes; zero where whole turns do.
    pub circle: u32,
}

/// Turns of a dividing head's crank from one division to the next: `ratio / n`.
///
/// Gives every circle of holes that divides exactly; none when none does.
///
/// # Errors
///
/// [`ErrorKind::OutOfRange`] for divisions or a ratio outside 1 to 1000 and a circle without holes.
///
/// # Source
///
/// Arithmetic; the circles of common plates, [`DIVIDING_CIRCLES`], are from memory.
///
/// # Example
///
/// Six divisions with a worm of 40:1 are 6 turns and 12 holes in the circle of 18.
///
/// ```
/// use hubwright::joint::{DIVIDING_CIRCLES, dividing};
///
/// let six = dividing(6, 40, &DIVIDING_CIRCLES)?;
/// assert!(six.iter().any(|way| (way.turns, way.holes, way.circle) == (6, 12, 18)));
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn dividing(divisions: u32, ratio: u32, circles: &[u32]) -> Result<Vec<Division>, Error> {
    count("divisions", divisions)?;
    count("ratio", ratio)?;
    let (turns, rest) = (ratio / divisions, ratio % divisions);
    if rest == 0 {
        return Ok(vec![Division { turns, holes: 0, circle: 0 }]);
    }
    let mut ways = Vec::new();
    for circle in circles {
        count("circles", *circle)?;
        if (rest * circle).is_multiple_of(divisions) {
            ways.push(Division { turns, holes: rest * circle / divisions, circle: *circle });
        }
    }
    Ok(ways)
}

fn count(argument: &str, given: u32) -> Result<(), Error> {
    if (1..=MOST).contains(&given) {
        return Ok(());
    }
    Err(ErrorKind::OutOfRange {
        argument: argument.into(),
        given: f64::from(given),
        range: format!("outside 1 to {MOST}"),
        unit: "",
        authority: String::new(),
        hint: "give a whole number, like 6".into(),
    }
    .into())
}
