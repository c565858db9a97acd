//! Feeds that geometry gives: through a centreless grinder, and along the work in creep feed.

use crate::error::Error;
use crate::units::{
    Angle, AngularVelocity, Length, Velocity, below, degree, meter, meter_per_second, positive,
    positive_length, radian, radian_per_second, revolution_per_minute, shown_mm,
};
use crate::wheel::rim_speed;

/// How fast work is fed through a centreless grinder: `v = π d n sin α`.
///
/// `d` and `n` are those of the regulating wheel, `α` its inclination; without slip.
///
/// # Errors
///
/// [`OutOfRange`](crate::ErrorKind::OutOfRange) or [`NotFinite`](crate::ErrorKind::NotFinite) for values not above
/// zero and an angle not below 90°.
///
/// # Source
///
/// Groover, problems 25.7 and 25.9.
///
/// # Example
///
/// ```
/// use hubwright::units::{Angle, AngularVelocity, Length, degree, meter_per_second, millimeter, revolution_per_minute};
/// use hubwright::wheel::through_feed;
///
/// let feed = through_feed(
///     Length::new::<millimeter>(125.0),
///     AngularVelocity::new::<revolution_per_minute>(200.0),
///     Angle::new::<degree>(2.5),
/// )?;
/// assert!((feed.get::<meter_per_second>() * 60e3 - 3426.0).abs() < 0.5);
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn through_feed(
    diameter: Length,
    speed: AngularVelocity,
    angle: Angle,
) -> Result<Velocity, Error> {
    positive("speed", speed.get::<revolution_per_minute>(), "rpm", "200 rpm")?;
    below("angle", angle.get::<degree>(), 90.0, "deg", "2.5 deg")?;
    Ok(rim_speed(diameter, speed)? * angle.get::<radian>().sin())
}

/// The inclination of the regulating wheel that feeds work through at a speed.
///
/// # Errors
///
/// As for [`through_feed`], and for a feed not below the rim speed.
///
/// # Source
///
/// Groover, problem 25.8.
///
/// # Example
///
/// ```
/// use hubwright::units::{AngularVelocity, Length, Velocity, degree, meter_per_second, millimeter, revolution_per_minute};
/// use hubwright::wheel::through_feed_angle;
///
/// let angle = through_feed_angle(
///     Length::new::<millimeter>(150.0),
///     AngularVelocity::new::<revolution_per_minute>(500.0),
///     Velocity::new::<meter_per_second>(7.0 / 60.0),
/// )?;
/// assert!((angle.get::<degree>() - 1.7).abs() < 0.01);
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn through_feed_angle(
    diameter: Length,
    speed: AngularVelocity,
    feed: Velocity,
) -> Result<Angle, Error> {
    let radius = positive_length("diameter", diameter)? / 2.0;
    positive("speed", speed.get::<revolution_per_minute>(), "rpm", "500 rpm")?;
    let rim = radius * speed.get::<radian_per_second>();
    let given = feed.get::<meter_per_second>();
    below("feed", given, rim, "m/s", "0.1 m/s")?;
    Ok(Angle::new::<radian>((given / rim).asin()))
}

/// How far the table goes in a creep feed pass: `L + √(a (D − a))`, the work and the wheel's run-in.
///
/// # Errors
///
/// [`OutOfRange`](crate::ErrorKind::OutOfRange) or [`NotFinite`](crate::ErrorKind::NotFinite) for lengths not above
/// zero and a depth not below the wheel's radius.
///
/// # Source
///
/// Groover, problem 25.10.
///
/// # Example
///
/// 25 mm deep over 200 mm with a wheel of 250 mm: 275 mm.
///
/// ```
/// use hubwright::units::{Length, millimeter};
/// use hubwright::wheel::creep_stroke;
///
/// let mm = Length::new::<millimeter>;
/// let stroke = creep_stroke(mm(250.0), mm(25.0), mm(200.0))?;
/// assert!((stroke.get::<millimeter>() - 275.0).abs() < 1e-9);
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn creep_stroke(
    wheel_diameter: Length,
    depth: Length,
    length: Length,
) -> Result<Length, Error> {
    let d = positive_length("wheel_diameter", wheel_diameter)?;
    below("depth", shown_mm(depth), shown_mm(wheel_diameter) / 2.0, "mm", "2 mm")?;
    let (a, l) = (depth.get::<meter>(), positive_length("length", length)?);
    Ok(Length::new::<meter>(l + (a * (d - a)).sqrt()))
}
