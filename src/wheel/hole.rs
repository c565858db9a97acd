//! How large the hole of a wheel may be.

use super::flange::{Governs, Limit};
use super::shape::{MachineKind, Shape};
use crate::error::Error;
use crate::tables::laws;
use crate::units::{Exact, Length, positive_length};

/// What [`hole_limits`] found.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct HoleLimits {
    /// Shape asked about.
    pub shape: Shape,
    /// Diameter of the new wheel.
    pub diameter: Length,
    /// Kind of machine, when it was given.
    pub machine_kind: Option<MachineKind>,
    /// Greatest hole; `None` where the law gives none for the shape.
    pub greatest_hole: Option<Limit>,
    /// Whether the law says "shall" (cutting-off wheels) or "should" (type 1).
    pub binding: bool,
}

/// Greatest hole as a share `top / bottom` of the diameter; whole numbers, so that the
/// comparison is exact. Machines for precision work may have two thirds.
pub(crate) const fn share(shape: Shape, machine: Option<MachineKind>) -> Option<(f64, f64)> {
    let precision = matches!(machine, Some(MachineKind::Surface | MachineKind::Cylindrical));
    match shape {
        Shape::Type1CuttingOff | Shape::Type27A => Some((1.0, 4.0)),
        Shape::Type1 if precision => Some((2.0, 3.0)),
        Shape::Type1 => Some((1.0, 2.0)),
        _ => None,
    }
}

/// Greatest hole of a wheel.
///
/// A quarter of the diameter for cutting-off wheels. For type 1 the law says
/// "should": two thirds on surface, cylindrical and centreless grinders, half
/// on any other machine, and half when the machine is not given.
///
/// # Errors
///
/// [`OutOfRange`](crate::error::ErrorKind::OutOfRange) when the diameter is
/// zero or negative, [`NotFinite`](crate::error::ErrorKind::NotFinite) when it
/// is NaN or infinite.
///
/// # Source
///
/// 29 CFR 1910.211(b)(1) and (b)(13).
///
/// # Example
///
/// A 180 mm cutting-off wheel may have a hole of 45 mm.
///
/// ```
/// use hubwright::units::{Length, millimeter};
/// use hubwright::wheel::{Shape, hole_limits};
///
/// let limits = hole_limits(Shape::Type1CuttingOff, Length::new::<millimeter>(180.0), None)?;
/// assert_eq!(limits.greatest_hole.map(|hole| hole.value.get::<millimeter>()), Some(45.0));
/// assert!(limits.binding);
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn hole_limits(
    shape: Shape,
    diameter: Length,
    machine_kind: Option<MachineKind>,
) -> Result<HoleLimits, Error> {
    positive_length("diameter", diameter)?;
    let source = if shape.cuts_off() { laws::CUTTING_OFF_WHEELS } else { laws::WHEEL_SHAPES };
    let greatest_hole = share(shape, machine_kind).and_then(|(top, bottom)| {
        Limit::new((diameter.exact() * top / bottom).floor(), source, Governs::Ratio)
    });
    Ok(HoleLimits { shape, diameter, machine_kind, greatest_hole, binding: shape.cuts_off() })
}
