//! Tapers set with two disks that both flanks touch.

use super::check::ruled_out;
use crate::error::Error;
use crate::joint::Taper;
use crate::units::{Angle, Length, meter, positive_length, radian};

/// The taper of the two straightedges that touch two disks.
///
/// `sin α = (D − d) / (2 C)` with `C` the distance of the centres. Where one side is to be
/// square to something and the other one slants, [`Taper::slant_of_one_side`] is the slant.
///
/// # Errors
///
/// [`OutOfRange`](crate::ErrorKind::OutOfRange) for disks of one size, in the wrong order or one inside the other.
///
/// # Source
///
/// Machinery's Handbook, 31st edition, p. 701.
///
/// # Example
///
/// Disks of 1 and 1½ in, 5 in apart: 1.2015 in/ft.
///
/// ```
/// use hubwright::gauge::disk_taper;
/// use hubwright::units::{Length, inch};
///
/// let inches = Length::new::<inch>;
/// let found = disk_taper(inches(1.0), inches(1.5), inches(5.0))?;
/// assert!((found.in_per_ft() - 1.2015).abs() < 5e-5);
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn disk_taper(small: Length, large: Length, centres_apart: Length) -> Result<Taper, Error> {
    let differ = radii_differ(small, large)?;
    positive_length("centres_apart", centres_apart)?;
    if centres_apart <= differ {
        let range = "not above the difference of the radii,";
        let hint = "one disk would lie inside the other: set them further apart";
        return Err(ruled_out("centres_apart", centres_apart, range, differ, hint));
    }
    let half = (differ.get::<meter>() / centres_apart.get::<meter>()).asin();
    Taper::of_included(Angle::new::<radian>(2.0 * half))
}

/// How far apart the centres of two disks must be for straightedges on both to make a taper.
///
/// `C = (D − d) / (2 sin α)`.
///
/// # Errors
///
/// [`OutOfRange`](crate::ErrorKind::OutOfRange) for disks of one size or in the wrong order.
///
/// # Source
///
/// Machinery's Handbook, 31st edition, p. 701.
///
/// # Example
///
/// ¾ in/ft with disks of 1¼ and 1½ in: 4.002 in.
///
/// ```
/// use hubwright::gauge::disk_distance;
/// use hubwright::joint::taper;
/// use hubwright::units::{Length, inch};
///
/// let inches = Length::new::<inch>;
/// let found = disk_distance(&taper("3/4 in/ft")?, inches(1.25), inches(1.5))?;
/// assert!((found.get::<inch>() - 4.002).abs() < 5e-4);
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn disk_distance(taper: &Taper, small: Length, large: Length) -> Result<Length, Error> {
    Ok(radii_differ(small, large)? / taper.half_angle.get::<radian>().sin())
}

fn radii_differ(small: Length, large: Length) -> Result<Length, Error> {
    positive_length("small", small)?;
    positive_length("large", large)?;
    if large <= small {
        let hint = "two disks of different sizes are needed, the small one first";
        return Err(ruled_out("large", large, "not above small", small, hint));
    }
    Ok((large - small) / 2.0)
}
