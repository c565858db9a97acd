//! Tolerance grades of cone angles: from memory, so that nothing may be refused by them.

use crate::error::{Error, ErrorKind};
use crate::source::Source;
use crate::tables::tapers::grades::{GRADES, OVER, STEPS, tolerance};
use crate::units::{Angle, Length, finite, meter, millimeter, radian, within};

/// A tolerance grade of a cone's angle at one length.
///
/// It is recalled: it may say that a cone is finer or coarser than usual, never that it is bad.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct AngleGrade {
    /// AT1 to AT12, as a number.
    pub grade: u8,
    /// Length of the cone along its axis.
    pub length: Length,
    /// Tolerance of the whole angle of the cone.
    pub cone_angle: Angle,
    /// The same as a difference of diameter over the length.
    pub on_diameter: Length,
    /// Where it comes from.
    pub source: Source,
}

impl AngleGrade {
    fn of(grade: u8, length: Length) -> Result<Self, Error> {
        let mm = length.get::<millimeter>();
        finite("length", mm, "35 mm")?;
        let step = STEPS.iter().position(|to| mm <= *to).filter(|_| mm > OVER);
        let found = step.and_then(|step| tolerance(usize::from(grade), step)).ok_or_else(|| {
            Error::from(ErrorKind::OutOfRange {
                argument: "length".into(),
                given: mm,
                range: format!("not over {OVER} up to {}", STEPS[STEPS.len() - 1]),
                unit: "mm",
                authority: GRADES.to_string(),
                hint: "give the length of the cone, like \"35 mm\"".into(),
            })
        })?;
        let on_diameter = Length::new::<meter>(found / 1e6 * length.get::<meter>());
        let cone_angle = Angle::new::<radian>(found / 1e6);
        Ok(Self { grade, length, cone_angle, on_diameter, source: GRADES })
    }
}

/// Tolerance of a cone's angle by its grade and length.
///
/// The tolerance on diameter is the angle in radians times the length. A grade has about 1.6
/// times the tolerance of the next finer one; a step of length includes its upper end.
///
/// Range: AT1 to AT12, lengths over 6 to 630 mm.
///
/// # Errors
///
/// [`ErrorKind::OutOfRange`] for another grade or length.
///
/// # Source
///
/// ISO 1947, from memory: it may caution, never refuse.
///
/// # Example
///
/// AT7 at 50 mm: 315 µrad, or 15.75 µm on diameter.
///
/// ```
/// use hubwright::joint::taper_grade;
/// use hubwright::units::{Length, micrometer, millimeter};
///
/// let found = taper_grade(7, Length::new::<millimeter>(50.0))?;
/// assert!((found.on_diameter.get::<micrometer>() - 15.75).abs() < 1e-9);
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn taper_grade(grade: u8, length: Length) -> Result<AngleGrade, Error> {
    within("grade", f64::from(grade), [1.0, 12.0], "", "7")?;
    AngleGrade::of(grade, length)
}

/// The finest grade whose tolerance holds an error of the cone's whole angle; `None` when even
/// AT12 is exceeded.
///
/// # Errors
///
/// As for [`taper_grade`], and [`ErrorKind::NotFinite`] for an error that is no number.
///
/// # Source
///
/// ISO 1947, from memory.
///
/// # Example
///
/// A cone angle that is 1' off over 40 mm keeps to AT7, where the grade lies to both sides.
///
/// ```
/// use hubwright::joint::finest_grade;
/// use hubwright::units::{Angle, Length, degree, millimeter};
///
/// let found = finest_grade(Angle::new::<degree>(1.0 / 60.0), Length::new::<millimeter>(40.0))?;
/// assert_eq!(found.map(|found| found.grade), Some(7));
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn finest_grade(cone_error: Angle, length: Length) -> Result<Option<AngleGrade>, Error> {
    let error = cone_error.get::<radian>().abs();
    finite("cone_error", error.to_degrees(), "0.01 deg")?;
    for grade in 1..=12 {
        let found = AngleGrade::of(grade, length)?;
        if error <= found.cone_angle.get::<radian>() {
            return Ok(Some(found));
        }
    }
    Ok(None)
}
