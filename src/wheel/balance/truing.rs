//! What truing the rim on its hub does to the balance of a wheel that sits off centre.

use std::f64::consts::PI;

use crate::error::Error;
use crate::solid::rotor::ROTOR;
use crate::units::{
    Length, MassDensity, Unbalance, below, figure, gram_millimeter, kilogram_meter,
    kilogram_per_cubic_meter, meter, positive, positive_length, shown_mm, zero_or_more,
};
use crate::working::{Step, Working};

/// A plain wheel that sits off centre on its hub, before and after its rim is trued there.
///
/// Before, the whole wheel is off by `e`: `U = ρ h π (R² − r²) e`. Truing puts the rim on the axis and
/// leaves the hole off it: `U = ρ h π r² e`, heavy on the other side. It takes up to `2 e` off the
/// radius, and the rim ends with the radius `R − e`.
///
/// The material at the hole is all taken to be missing: a spigot that fills it turns true.
///
/// # Errors
///
/// [`OutOfRange`](crate::ErrorKind::OutOfRange) or [`NotFinite`](crate::ErrorKind::NotFinite) for sizes and densities not
/// above zero, a hole not smaller than the wheel, an eccentricity below zero or so large that truing
/// reaches the hole.
///
/// # Source
///
/// First moments of discs.
///
/// # Example
///
/// A wheel of 200 × 20 × 32 mm that sits 0.06 mm off: 82.7 g mm before truing, 2.2 g mm after it.
///
/// ```
/// use hubwright::units::{Length, MassDensity, gram_millimeter, kilogram_per_cubic_meter, millimeter};
/// use hubwright::wheel::Truing;
///
/// let mm = Length::new::<millimeter>;
/// let density = MassDensity::new::<kilogram_per_cubic_meter>(2250.0);
/// let found = Truing::new(mm(200.0), mm(32.0), mm(20.0), density, mm(0.06)).solve()?;
/// assert!((found.before.get::<gram_millimeter>() - 82.65).abs() < 0.01);
/// assert!((found.after.get::<gram_millimeter>() - 2.17).abs() < 0.01);
/// # Ok::<(), hubwright::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Truing {
    /// Outside diameter before truing.
    pub diameter: Length,
    /// Hole.
    pub hole: Length,
    /// Thickness.
    pub thickness: Length,
    /// Density.
    pub density: MassDensity,
    /// How far the wheel sits off the axis: half of the clearance it hangs in.
    pub eccentricity: Length,
}

/// What [`Truing::solve`] found.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct TruingFound {
    /// What was asked.
    pub wheel: Truing,
    /// Unbalance before truing, heavy on the side it sits off to.
    pub before: Unbalance,
    /// Unbalance after truing, heavy on the other side.
    pub after: Unbalance,
    /// Run-out of the rim before truing, total reading.
    pub rim_run_out: Length,
    /// The most that truing takes off, on radius.
    pub stock: Length,
    /// Diameter after truing.
    pub trued_diameter: Length,
}

impl Truing {
    /// A wheel, and how far it sits off the axis.
    pub fn new(
        diameter: Length,
        hole: Length,
        thickness: Length,
        density: MassDensity,
        eccentricity: Length,
    ) -> Self {
        Self { diameter, hole, thickness, density, eccentricity }
    }

    /// What truing does.
    ///
    /// # Errors
    ///
    /// As described on the type.
    pub fn solve(self) -> Result<TruingFound, Error> {
        let outer = positive_length("diameter", self.diameter)? / 2.0;
        below("hole", shown_mm(self.hole), shown_mm(self.diameter), "mm", "32 mm")?;
        let h = positive_length("thickness", self.thickness)?;
        let density = self.density.get::<kilogram_per_cubic_meter>();
        positive("density", density, "kg/m3", "2250 kg/m3")?;
        zero_or_more("eccentricity", shown_mm(self.eccentricity), "mm", "0.05 mm")?;
        let inner = self.hole.get::<meter>() / 2.0;
        if self.eccentricity.get::<meter>() > 0.0 {
            let wall = (shown_mm(self.diameter) - shown_mm(self.hole)) / 4.0;
            below("eccentricity", shown_mm(self.eccentricity), wall, "mm", "0.05 mm")?;
        }
        let e = self.eccentricity.get::<meter>();
        let amount = |area: f64| Unbalance::new::<kilogram_meter>(density * h * PI * area * e);
        Ok(TruingFound {
            wheel: self,
            before: amount(outer * outer - inner * inner),
            after: amount(inner * inner),
            rim_run_out: self.eccentricity * 2.0,
            stock: self.eccentricity * 2.0,
            trued_diameter: self.diameter - self.eccentricity * 2.0,
        })
    }
}

impl TruingFound {
    /// The steps, recomputed; the last one's result is `after` in g mm.
    pub fn working(&self) -> Working {
        let Ok(again) = self.wheel.solve() else { return Working::default() };
        let Truing { diameter, hole, thickness, density, eccentricity } = self.wheel;
        let mm = |length: Length| figure(shown_mm(length), 4);
        let half = |length: Length| figure(shown_mm(length) / 2.0, 4);
        let rho = figure(density.get::<kilogram_per_cubic_meter>(), 2);
        let (h, e) = (mm(thickness), mm(eccentricity));
        let step = |symbol, relation, numbers, amount: Unbalance| Step {
            symbol,
            relation,
            numbers,
            result: amount.get::<gram_millimeter>(),
            unit: "g mm",
            source: ROTOR,
        };
        Working {
            steps: vec![
                step(
                    "U before",
                    "ρ h π (R² − r²) e",
                    format!(
                        "{rho} kg/m³ · {h} · π ({}² − {}²) · {e} mm",
                        half(diameter),
                        half(hole)
                    ),
                    again.before,
                ),
                step(
                    "U after",
                    "ρ h π r² e",
                    format!("{rho} kg/m³ · {h} · π {}² · {e} mm", half(hole)),
                    again.after,
                ),
            ],
        }
    }
}
