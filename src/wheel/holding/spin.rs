//! Torque that starting and stopping ask of a wheel and of its nut.

use std::f64::consts::PI;

use crate::error::{Error, ErrorKind};
use crate::units::{
    AngularVelocity, Length, Mass, MassDensity, Time, Torque, kilogram, kilogram_per_cubic_meter,
    meter, newton_meter, positive, positive_length, radian_per_second, second, shown_mm, within,
    zero_or_more,
};

/// A flat wheel that is run up or braked.
///
/// `T = I ω / t` with `I = π ρ h (R⁴ − r⁴) / 2`, evenly from standstill to full speed or back.
///
/// # Errors
///
/// [`ErrorKind::NotFinite`] or [`ErrorKind::OutOfRange`] for sizes, density, speed and time not above
/// zero, and a hole as large as the wheel.
///
/// # Source
///
/// Kinetics of rigid rotation.
///
/// # Example
///
/// A 200 mm wheel, 20 mm thick, from 3000 rev/min to rest in half a second: 4.44 N m.
///
/// ```
/// use hubwright::units::{AngularVelocity, Length, MassDensity, Time, kilogram_per_cubic_meter, millimeter, newton_meter, revolution_per_minute, second};
/// use hubwright::wheel::holding::SpinningWheel;
///
/// let mm = Length::new::<millimeter>;
/// let wheel = SpinningWheel {
///     diameter: mm(200.0),
///     hole: mm(32.0),
///     thickness: mm(20.0),
///     density: MassDensity::new::<kilogram_per_cubic_meter>(2250.0),
/// };
/// let torque = wheel.torque(AngularVelocity::new::<revolution_per_minute>(3000.0), Time::new::<second>(0.5))?;
/// assert!((torque.get::<newton_meter>() - 4.4384).abs() < 1e-4);
/// # Ok::<(), hubwright::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SpinningWheel {
    /// Outside diameter.
    pub diameter: Length,
    /// Hole; zero for none.
    pub hole: Length,
    /// Thickness.
    pub thickness: Length,
    /// Density.
    pub density: MassDensity,
}

/// A nut as a ring of a mass: `J = m (ro² + ri²) / 2`.
///
/// # Errors
///
/// As [`SpinningWheel`].
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SpinningRing {
    /// Mass.
    pub mass: Mass,
    /// Inside diameter.
    pub inside: Length,
    /// Outside diameter.
    pub outside: Length,
}

/// Angular acceleration of an even run-up or stop, in rad/s².
fn acceleration(speed: AngularVelocity, time: Time) -> Result<f64, Error> {
    positive("speed", speed.get::<radian_per_second>(), "rad/s", "2850 rpm")?;
    positive("time", time.get::<second>(), "s", "3 s")?;
    Ok(speed.get::<radian_per_second>() / time.get::<second>())
}

/// An inside below an outside.
fn ring(name: &str, inside: Length, outside: Length) -> Result<[f64; 2], Error> {
    zero_or_more(name, shown_mm(inside), "mm", "32 mm")?;
    if inside < outside {
        return Ok([inside.get::<meter>() / 2.0, outside.get::<meter>() / 2.0]);
    }
    Err(ErrorKind::OutOfRange {
        argument: name.into(),
        given: shown_mm(inside),
        range: format!("not below the outside of {}", shown_mm(outside)),
        unit: "mm",
        authority: String::new(),
        hint: "measure both again; one of the two is mistyped".into(),
    }
    .into())
}

impl SpinningWheel {
    /// Torque of running it up to a speed, or down from it, in a time.
    ///
    /// # Errors
    ///
    /// As described on the type.
    pub fn torque(self, speed: AngularVelocity, time: Time) -> Result<Torque, Error> {
        positive_length("diameter", self.diameter)?;
        let h = positive_length("thickness", self.thickness)?;
        let density = self.density.get::<kilogram_per_cubic_meter>();
        // Less is a number in another unit.
        within("density", density, [200.0, 3e4], "kg/m3", "2250 kg/m3")?;
        let [inner, outer] = ring("hole", self.hole, self.diameter)?;
        let inertia = PI / 2.0 * density * h * (outer.powi(4) - inner.powi(4));
        Ok(Torque::new::<newton_meter>(inertia * acceleration(speed, time)?))
    }
}

impl SpinningRing {
    /// Torque of running it up to a speed, or down from it, in a time.
    ///
    /// # Errors
    ///
    /// As described on the type.
    pub fn torque(self, speed: AngularVelocity, time: Time) -> Result<Torque, Error> {
        let mass = self.mass.get::<kilogram>();
        positive("nut_mass", mass, "kg", "0.05 kg")?;
        positive_length("nut_outside", self.outside)?;
        if self.outside <= self.inside {
            return Err(ErrorKind::OutOfRange {
                argument: "nut_outside".into(),
                given: shown_mm(self.outside),
                range: format!("not above the nut's inside of {}", shown_mm(self.inside)),
                unit: "mm",
                authority: String::new(),
                hint: "give the outside diameter of the nut; its inside is that of its thread"
                    .into(),
            }
            .into());
        }
        let [inner, outer] = ring("nut_inside", self.inside, self.outside)?;
        let inertia = mass / 2.0 * (outer * outer + inner * inner);
        Ok(Torque::new::<newton_meter>(inertia * acceleration(speed, time)?))
    }
}
