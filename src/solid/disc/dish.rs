//! A ring plate that dishes: pressed on one circle, held on another, free elsewhere.

use std::f64::consts::PI;

/// Bending stiffness of a plate per width, `E h³ / 12(1 − ν²)`.
#[inline(always)]
pub(crate) fn bending(modulus: f64, thickness: f64, poisson: f64) -> f64 {
    modulus * thickness.powi(3) / (12.0 * (1.0 - poisson * poisson))
}

/// A ring plate, its radii growing from the hole to the rim, in SI units.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Dish {
    pub hole: f64,
    /// Circle on which the force presses.
    pub pressed: f64,
    /// Circle that it rests on.
    pub held: f64,
    pub rim: f64,
    pub poisson: f64,
    /// `E h³ / 12(1 − ν²)`.
    pub stiffness: f64,
}

impl Dish {
    /// How far the hole sinks below the circle that the plate rests on.
    ///
    /// Between both circles the shear is `F / (2 π r)`, inside and outside of them nothing. The slope is that
    /// of a plate at rest inside the pressed circle, and of one that bends evenly, `B r + C / r`, so
    /// that hole and rim carry no moment.
    pub fn sag(&self, force: f64) -> f64 {
        let Self { hole, pressed: p, held: h, rim, poisson: nu, stiffness } = *self;
        let unit = force / (2.0 * PI * stiffness);
        let log = (h / p).ln();
        // Slope of the part that the force bends, at its end and beyond; there r·slope grows evenly.
        let end = unit * (h / 2.0 * log - (h - p * p / h) / 4.0);
        let beyond = (h * end + unit * log * (rim * rim - h * h) / 2.0) / rim;
        let steepens = unit * log - beyond / rim;
        let moment = steepens + nu * beyond / rim;
        let odd = -moment / ((1.0 - nu) * (1.0 / (hole * hole) - 1.0 / (rim * rim)));
        let even = (1.0 - nu) / (1.0 + nu) * odd / (hole * hole);
        let bent = unit * ((h * h + p * p) / 4.0 * log - (h * h - p * p) / 4.0);
        let free = even * (h * h - hole * hole) / 2.0 + odd * (h / hole).ln();
        (bent + free).abs()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Against finite elements of Hermite's kind, which agree with the exact plate to 8e-9.
    #[test]
    fn a_relieved_flange_sags_as_elements_say() {
        let dish = Dish {
            hole: 0.01,
            pressed: 0.0135,
            held: 0.034,
            rim: 0.038,
            poisson: 0.3,
            stiffness: bending(206e9, 0.008, 0.3),
        };
        assert!((dish.sag(9000.0) / 5.677_597_306e-5 - 1.0).abs() < 1e-8, "{}", dish.sag(9000.0));
    }
}
