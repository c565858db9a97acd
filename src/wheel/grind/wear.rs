//! What grinding wears off the wheel, and the fitted form of roughness.

use std::f64::consts::PI;

use super::{GRINDING, ring};
use crate::error::{Error, ErrorKind};
use crate::units::{
    Length, Volume, cubic_meter, cubic_millimeter, figure, finite, meter, micrometer, positive,
    positive_length, shown_mm, within, zero_or_more,
};
use crate::working::{Step, Working};

/// Volume between two diameters over a length: ground off a bore or a shaft, or worn off a wheel.
///
/// # Errors
///
/// [`ErrorKind::OutOfRange`] or [`ErrorKind::NotFinite`] for lengths not above zero, an inside not below the outside.
///
/// # Source
///
/// Geometry.
///
/// # Example
///
/// A bore of 250 mm is ground to 252.5 mm over 125 mm (Groover, problem 25.3).
///
/// ```
/// use hubwright::units::{Length, cubic_millimeter, millimeter};
/// use hubwright::wheel::ring_volume;
///
/// let mm = Length::new::<millimeter>;
/// let volume = ring_volume(mm(252.5), mm(250.0), mm(125.0))?;
/// assert!((volume.get::<cubic_millimeter>() - 123_332.06).abs() < 0.01);
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn ring_volume(outside: Length, inside: Length, length: Length) -> Result<Volume, Error> {
    let d = positive_length("outside", outside)?;
    zero_or_more("inside", shown_mm(inside), "mm", "250 mm")?;
    let l = positive_length("length", length)?;
    let inner = inside.get::<meter>();
    if inner >= d {
        return Err(ErrorKind::OutOfRange {
            argument: "inside".into(),
            given: shown_mm(inside),
            range: format!("not below the outside of {}", shown_mm(outside)),
            unit: "mm",
            authority: String::new(),
            hint: "give the larger diameter as outside".into(),
        }
        .into());
    }
    Ok(Volume::new::<cubic_meter>(ring(d, inner) * l))
}

/// Grinding ratio: volume ground away over volume of the wheel worn off.
///
/// # Errors
///
/// [`ErrorKind::OutOfRange`] or [`ErrorKind::NotFinite`] for volumes not above zero.
///
/// # Source
///
/// Definition; Groover, problem 25.3.
///
/// # Example
///
/// ```
/// use hubwright::units::{Volume, cubic_millimeter};
/// use hubwright::wheel::grinding_ratio;
///
/// let mm3 = Volume::new::<cubic_millimeter>;
/// assert!((grinding_ratio(mm3(123_332.0), mm3(1_177.0))? - 104.8).abs() < 0.1);
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn grinding_ratio(ground: Volume, worn: Volume) -> Result<f64, Error> {
    let [ground_mm3, worn_mm3] = [ground, worn].map(|volume| volume.get::<cubic_millimeter>());
    positive("ground", ground_mm3, "mm3", "3000 mm3")?;
    positive("worn", worn_mm3, "mm3", "30 mm3")?;
    Ok(ground_mm3 / worn_mm3)
}

/// What [`wear`] found.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct WearFound {
    /// Volume ground away.
    pub ground: Volume,
    /// Grinding ratio of the job.
    pub ratio: f64,
    /// Diameter of the wheel before.
    pub diameter: Length,
    /// Width of the wheel that grinds.
    pub width: Length,
    /// Volume worn off the wheel.
    pub worn: Volume,
    /// Wear on radius.
    pub radial: Length,
    /// Diameter of the wheel after.
    pub diameter_left: Length,
}

/// How much a wheel wears by grinding a volume away, at the grinding ratio of the job.
///
/// `V_s = V_w / G` comes off the rim, evenly over the width: `R − √(R² − V_s / (π b))` on radius.
///
/// # Errors
///
/// [`ErrorKind::OutOfRange`] or [`ErrorKind::NotFinite`] for values not above zero, and for more
/// wear than there is wheel.
///
/// # Source
///
/// Definition of the grinding ratio; geometry.
///
/// # Example
///
/// 3000 mm³ at a ratio of 18 take 13 µm off the radius of a 200 × 20 mm wheel.
///
/// ```
/// use hubwright::units::{Length, Volume, cubic_millimeter, micrometer, millimeter};
/// use hubwright::wheel::wear;
///
/// let mm = Length::new::<millimeter>;
/// let found = wear(Volume::new::<cubic_millimeter>(3000.0), 18.0, mm(200.0), mm(20.0))?;
/// assert!((found.radial.get::<micrometer>() - 13.264).abs() < 1e-3);
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn wear(
    ground: Volume,
    ratio: f64,
    diameter: Length,
    width: Length,
) -> Result<WearFound, Error> {
    positive("ground", ground.get::<cubic_millimeter>(), "mm3", "3000 mm3")?;
    positive("ratio", ratio, "", "18")?;
    let radius = positive_length("diameter", diameter)? / 2.0;
    let b = positive_length("width", width)?;
    let worn = ground.get::<cubic_meter>() / ratio;
    let (square, taken) = (radius * radius, worn / (PI * b));
    if taken >= square {
        return Err(ErrorKind::OutOfRange {
            argument: "ground".into(),
            given: ground.get::<cubic_millimeter>(),
            range: format!("not below {}", figure(square * PI * b * ratio * 1e9, 1)),
            unit: "mm3",
            authority: "it wears off more than the whole wheel".into(),
            hint: "check the volume, the ratio and the wheel's size".into(),
        }
        .into());
    }
    // The difference of two nearly equal roots, without losing figures.
    let radial = taken / (radius + (square - taken).sqrt());
    Ok(WearFound {
        ground,
        ratio,
        diameter,
        width,
        worn: Volume::new::<cubic_meter>(worn),
        radial: Length::new::<meter>(radial),
        diameter_left: Length::new::<meter>(2.0 * (radius - radial)),
    })
}

impl WearFound {
    /// The steps, recomputed; the last one's result is `radial` in µm.
    pub fn working(&self) -> Working {
        let Ok(again) = wear(self.ground, self.ratio, self.diameter, self.width) else {
            return Working::default();
        };
        let volume = |volume: Volume| figure(volume.get::<cubic_millimeter>(), 4);
        let (r, b) = (figure(shown_mm(self.diameter) / 2.0, 4), figure(shown_mm(self.width), 4));
        Working {
            steps: vec![
                Step {
                    symbol: "V s",
                    relation: "V w / G",
                    numbers: format!("{} mm³ / {}", volume(self.ground), figure(self.ratio, 4)),
                    result: again.worn.get::<cubic_millimeter>(),
                    unit: "mm³",
                    source: GRINDING,
                },
                Step {
                    symbol: "on radius",
                    relation: "R − √(R² − V s / (π b))",
                    numbers: format!("{r} − √({r}² − {} / (π · {b}))", volume(again.worn)),
                    result: again.radial.get::<micrometer>(),
                    unit: "µm",
                    source: GRINDING,
                },
            ],
        }
    }
}

/// Roughness by a law fitted to a shop's own tests: `Ra = R₁ (h_eq / h₁)^x`.
///
/// No physics and no prediction: it draws a curve through two tests or more of one wheel, dressing and
/// work, and is worth nothing outside them. Exponents of 0.15 to 0.6 are recalled.
///
/// # Errors
///
/// [`ErrorKind::OutOfRange`] or [`ErrorKind::NotFinite`] for lengths not above zero and an exponent outside 0 to 2.
///
/// # Source
///
/// A fitted form; its figures are the user's.
///
/// # Example
///
/// ```
/// use hubwright::units::{Length, micrometer};
/// use hubwright::wheel::fitted_roughness;
///
/// let um = Length::new::<micrometer>;
/// let ra = fitted_roughness(um(0.9), um(1.0), 0.35, um(0.12))?;
/// assert!((ra.get::<micrometer>() - 0.4285).abs() < 1e-4);
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn fitted_roughness(
    tested_roughness: Length,
    tested_thickness: Length,
    exponent: f64,
    chip_thickness: Length,
) -> Result<Length, Error> {
    let ra = positive_length("tested_roughness", tested_roughness)?;
    let tested = positive_length("tested_thickness", tested_thickness)?;
    let now = positive_length("chip_thickness", chip_thickness)?;
    finite("exponent", exponent, "0.35")?;
    within("exponent", exponent, [0.0, 2.0], "", "0.35")?;
    Ok(Length::new::<meter>(ra * (now / tested).powf(exponent)))
}
