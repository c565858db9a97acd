//! Rim speed, and the turns that give it.

use std::f64::consts::PI;

use crate::error::{Error, ErrorKind};
use crate::source::{Source, Status};
use crate::tables::laws;
use crate::units::{
    AngularVelocity, Length, Velocity, figure, finite, meter, meter_per_second, positive,
    positive_length, radian_per_second, revolution_per_minute,
};
use crate::working::{Step, Working};

/// Rigid rotation: no standard is involved.
pub const KINEMATICS: Source =
    Source::new("kinematics", "kinematics of rigid rotation", "", "", Status::Computed);

/// `v = ω · d / 2`, the one formula that scalars, columns and rules share.
#[inline(always)]
fn rim(diameter: f64, speed: f64) -> f64 {
    diameter / 2.0 * speed
}

/// Rim speed in whole µm/s from whole nm and whole millionths of rev/min.
#[inline(always)]
pub(crate) fn rim_exact(diameter: f64, speed: f64) -> f64 {
    (rim(diameter / 1e9, speed / 1e6 * (PI / 30.0)) * 1e6).round_ties_even()
}

/// Speed of the rim of a turning wheel.
///
/// `v = ω · d / 2`, with `ω` the rotational speed and `d` the outside
/// diameter. The sign follows `speed`.
///
/// # Errors
///
/// [`ErrorKind::NotFinite`] when either argument is NaN or infinite,
/// [`ErrorKind::OutOfRange`] when the diameter is zero or negative.
///
/// # Source
///
/// Kinematics of rigid rotation; no standard is involved.
///
/// # Example
///
/// A 24 in wheel at 1000 rev/min runs at 6283.19 ft/min. (29 CFR 1910.211(b)(8)
/// prints 6288, with a constant rounded to 0.262.)
///
/// ```
/// use hubwright::units::{AngularVelocity, Length, foot_per_minute, inch, revolution_per_minute};
/// use hubwright::wheel::rim_speed;
///
/// let v = rim_speed(
///     Length::new::<inch>(24.0),
///     AngularVelocity::new::<revolution_per_minute>(1000.0),
/// )?;
/// assert!((v.get::<foot_per_minute>() - 6283.185).abs() < 1e-3);
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn rim_speed(diameter: Length, speed: AngularVelocity) -> Result<Velocity, Error> {
    let d = positive_length("diameter", diameter)?;
    let w = speed.get::<radian_per_second>();
    finite("speed", w, "2850 rpm")?;
    Ok(Velocity::new::<meter_per_second>(rim(d, w)))
}

/// [`rim_speed`] of every row: metres and radians a second in, metres a second out.
///
/// Rows that the scalar would refuse come out as NaN. Every other row equals
/// the scalar bit for bit. Missing values may come in as NaN.
///
/// # Errors
///
/// [`ErrorKind::UnlikeLengths`] when the three columns differ in length.
///
/// # Example
///
/// ```
/// use hubwright::wheel::rim_speed_column;
///
/// let mut v = [0.0; 2];
/// rim_speed_column(&[0.25, -1.0], &[200.0, 200.0], &mut v)?;
/// assert_eq!(v[0], 25.0);
/// assert!(v[1].is_nan());
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn rim_speed_column(diameter: &[f64], speed: &[f64], out: &mut [f64]) -> Result<(), Error> {
    for (argument, given) in [("speed", speed.len()), ("out", out.len())] {
        if given != diameter.len() {
            let argument = argument.into();
            return Err(ErrorKind::UnlikeLengths { argument, given, wanted: diameter.len() }.into());
        }
    }
    for ((out, d), w) in out.iter_mut().zip(diameter).zip(speed) {
        let sound = *d > 0.0 && *d < f64::INFINITY && w.abs() < f64::INFINITY;
        *out = if sound { rim(*d, *w) } else { f64::NAN };
    }
    Ok(())
}

/// What [`speed_for_rim`] found.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct SpeedForRim {
    /// Outside diameter asked about.
    pub diameter: Length,
    /// Rim speed asked for.
    pub rim_speed: Velocity,
    /// Rotational speed marked on the wheel, when it was given.
    pub marked_speed: Option<AngularVelocity>,
    /// The rotational speed to set: never above the marked one.
    pub speed: AngularVelocity,
    /// Whether the marked speed held it down, so that the rim runs slower than asked.
    pub capped: bool,
}

impl SpeedForRim {
    /// The steps, recomputed; the last one's result is `speed` in rev/min.
    pub fn working(&self) -> Working {
        let d = self.diameter.get::<meter>();
        let v = self.rim_speed.get::<meter_per_second>();
        let free = free_speed(self.diameter, self.rim_speed).get::<revolution_per_minute>();
        let mut steps = vec![Step {
            symbol: "n",
            relation: "60 v / (π d)",
            numbers: format!("60 · {} m/s / (π · {} m)", figure(v, 6), figure(d, 9)),
            result: free,
            unit: "rev/min",
            source: KINEMATICS,
        }];
        if let Some(marked) = self.marked_speed {
            let marked = marked.get::<revolution_per_minute>();
            steps.push(Step {
                symbol: "n set",
                relation: "min(n, n marked)",
                numbers: format!("min({}, {})", figure(free, 3), figure(marked, 3)),
                result: if self.capped { marked } else { free },
                unit: "rev/min",
                source: laws::MARKED_SPEED,
            });
        }
        Working { steps }
    }
}

fn free_speed(diameter: Length, rim_speed: Velocity) -> AngularVelocity {
    let v = rim_speed.get::<meter_per_second>();
    AngularVelocity::new::<radian_per_second>(v * 2.0 / diameter.get::<meter>())
}

/// Rotational speed at which the rim reaches a speed, capped at the marked one.
///
/// `n = v / (π · d)`, with `v` the rim speed and `d` the outside diameter of
/// the wheel as it is now. A worn wheel would have to turn faster to keep its
/// rim speed; the rotational speed marked on it still is a ceiling.
///
/// # Errors
///
/// [`ErrorKind::OutOfRange`] when an argument is zero or negative,
/// [`ErrorKind::NotFinite`] when it is NaN or infinite.
///
/// # Source
///
/// Kinematics; the cap is 29 CFR 1910.215(d)(1).
///
/// # Example
///
/// A 350 mm wheel marked 1910 rev/min has worn to 280 mm. For 35 m/s at its
/// rim it would have to turn at 2387 rev/min, so it stays at 1910.
///
/// ```
/// use hubwright::units::{AngularVelocity, Length, Velocity, meter_per_second, millimeter, revolution_per_minute};
/// use hubwright::wheel::speed_for_rim;
///
/// let marked = AngularVelocity::new::<revolution_per_minute>(1910.0);
/// let set = speed_for_rim(
///     Length::new::<millimeter>(280.0),
///     Velocity::new::<meter_per_second>(35.0),
///     Some(marked),
/// )?;
/// assert!(set.capped);
/// assert_eq!(set.speed, marked);
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn speed_for_rim(
    diameter: Length,
    rim_speed: Velocity,
    marked_speed: Option<AngularVelocity>,
) -> Result<SpeedForRim, Error> {
    positive_length("diameter", diameter)?;
    positive("rim_speed", rim_speed.get::<meter_per_second>(), "m/s", "35 m/s")?;
    if let Some(marked) = marked_speed {
        positive("marked_speed", marked.get::<revolution_per_minute>(), "rpm", "2850 rpm")?;
    }
    let free = free_speed(diameter, rim_speed);
    let capped = marked_speed.is_some_and(|marked| free > marked);
    let speed = marked_speed.filter(|_| capped).unwrap_or(free);
    Ok(SpeedForRim { diameter, rim_speed, marked_speed, speed, capped })
}

/// Largest wheel that a spindle may turn without passing a rim speed.
///
/// `d = v / (π · n)`, with `v` the rim speed marked on the wheel and `n` the
/// greatest speed of the spindle.
///
/// # Errors
///
/// [`ErrorKind::OutOfRange`] when an argument is zero or negative,
/// [`ErrorKind::NotFinite`] when it is NaN or infinite.
///
/// # Source
///
/// Kinematics of rigid rotation; no standard is involved.
///
/// # Example
///
/// At 2850 rev/min and 35 m/s a wheel may be 234.5 mm at most.
///
/// ```
/// use hubwright::units::{AngularVelocity, Velocity, meter_per_second, millimeter, revolution_per_minute};
/// use hubwright::wheel::largest_diameter;
///
/// let d = largest_diameter(
///     AngularVelocity::new::<revolution_per_minute>(2850.0),
///     Velocity::new::<meter_per_second>(35.0),
/// )?;
/// assert!((d.get::<millimeter>() - 234.54).abs() < 0.01);
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn largest_diameter(speed: AngularVelocity, rim_speed: Velocity) -> Result<Length, Error> {
    positive("speed", speed.get::<revolution_per_minute>(), "rpm", "2850 rpm")?;
    positive("rim_speed", rim_speed.get::<meter_per_second>(), "m/s", "35 m/s")?;
    let w = speed.get::<radian_per_second>();
    Ok(Length::new::<meter>(rim_speed.get::<meter_per_second>() * 2.0 / w))
}
