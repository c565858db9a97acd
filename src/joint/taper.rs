//! Tapers: from their name to the angle, and diameters along them.

mod grade;
mod reading;
mod working;

pub use grade::{AngleGrade, finest_grade, taper_grade};
pub use reading::taper;

use crate::error::{Error, ErrorKind};
use crate::source::{Source, Status};
use crate::tables::tapers::machine::Machine;
use crate::tables::tapers::{Cone, Defined, STANDARD};
use crate::units::{
    Angle, Length, figure, finite, meter, millimeter, positive, positive_length, radian,
};

/// Right triangles.
pub const TRIANGLE: Source =
    Source::new("taper-geometry", "geometry of the cone", "", "", Status::Computed);
/// A taper as somebody stated it.
pub const STATED: Source = Source::new("taper-stated", "taper asked for", "", "", Status::Input);

/// Half angles that are tapers, in degrees: less is a cylinder, more is nearly a plate.
const HALF_ANGLES: [f64; 2] = [0.0028, 60.01];

/// A cone: how steep it is, and its sizes where it is one of a series.
///
/// With `α` the half angle, `tan α` is the change of radius over length; the taper 1:X has
/// `tan α = 1 / (2 X)`, so many inches per foot have `tan α = n / 24`.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Taper {
    /// How it is defined.
    pub defined: Defined,
    /// Change of radius over length, the tangent of the half angle.
    pub per_side: f64,
    /// Half of the included angle: what the top slide is set to.
    pub half_angle: Angle,
    /// The numbered taper that it is, when it was asked for by number.
    pub machine: Option<&'static Machine>,
    /// Where it comes from.
    pub source: Source,
}

impl Taper {
    /// The cone of so much on diameter over so much length.
    ///
    /// # Errors
    ///
    /// [`ErrorKind::OutOfRange`] or [`ErrorKind::NotFinite`] for a cylinder, a plate or no number.
    pub fn of_ratio(diameter: f64, length: f64) -> Result<Self, Error> {
        positive("taper", diameter, "", "1:5")?;
        positive("taper", length, "", "1:5")?;
        Self::checked(Defined::Ratio(diameter, length), STATED)
    }

    /// The cone of an included angle.
    ///
    /// # Errors
    ///
    /// As for [`of_ratio`](Self::of_ratio).
    pub fn of_included(angle: Angle) -> Result<Self, Error> {
        let degrees = angle.get::<radian>().to_degrees();
        finite("taper", degrees, "8 deg included")?;
        positive("taper", degrees, "°", "8 deg included")?;
        Self::checked(Defined::Included(degrees), STATED)
    }

    fn checked(defined: Defined, source: Source) -> Result<Self, Error> {
        if let Defined::Included(degrees) = defined {
            // The tangent comes round again past 180°.
            a_taper((degrees / 2.0).to_radians())?;
        }
        let found = Self::new(defined, source);
        a_taper(found.half_angle.get::<radian>())?;
        Ok(found)
    }

    fn new(defined: Defined, source: Source) -> Self {
        let per_side = defined.per_side();
        let half_angle = match defined {
            Defined::Ratio(..) => per_side.atan(),
            Defined::Included(degrees) => (degrees / 2.0).to_radians(),
        };
        let half_angle = Angle::new::<radian>(half_angle);
        Self { defined, per_side, half_angle, machine: None, source }
    }

    /// Every standard cone without a size of its own, with its name.
    pub fn standard() -> impl Iterator<Item = (&'static str, Self)> {
        STANDARD.iter().map(|cone| (cone.name, Self::from(cone)))
    }

    /// The whole angle of the cone, from flank to flank.
    pub fn cone_angle(&self) -> Angle {
        2.0 * self.half_angle
    }

    /// Change of diameter over length.
    pub fn on_diameter(&self) -> f64 {
        2.0 * self.per_side
    }

    /// X of the taper 1:X: the length over which the diameter changes by one.
    pub fn one_in(&self) -> f64 {
        1.0 / self.on_diameter()
    }

    /// Change of diameter in inches over a foot.
    pub fn in_per_ft(&self) -> f64 {
        12.0 * self.on_diameter()
    }

    /// Taper of a flank against the other one, as of a wedge lying on one side: `tan 2 α`.
    ///
    /// It is what two disks make with a straightedge when one side of them is square to
    /// what it is measured from.
    pub fn slant_of_one_side(&self) -> f64 {
        self.cone_angle().get::<radian>().tan()
    }

    /// Diameter at a plane a distance toward the large end from one where it is known; below
    /// zero is toward the small end.
    ///
    /// # Errors
    ///
    /// [`ErrorKind::OutOfRange`] for a diameter that is not above zero, there or here.
    pub fn diameter_at(&self, diameter: Length, distance: Length) -> Result<Length, Error> {
        positive_length("diameter", diameter)?;
        finite("distance", distance.get::<meter>(), "35 mm")?;
        let found = diameter + self.on_diameter() * distance;
        if found > Length::default() {
            return Ok(found);
        }
        let apex = -diameter.get::<millimeter>() / self.on_diameter();
        Err(ErrorKind::OutOfRange {
            argument: "distance".into(),
            given: distance.get::<millimeter>(),
            range: format!("not on this side of the cone's apex, {}", figure(apex, 4)),
            unit: "mm",
            authority: String::new(),
            hint: "distances toward the small end are negative; give a shorter one".into(),
        }
        .into())
    }

    /// How far two cones of this taper move along the axis for a change of diameter.
    ///
    /// # Errors
    ///
    /// [`ErrorKind::NotFinite`] for a change that is no number.
    pub fn axial_shift(&self, diameter_change: Length) -> Result<Length, Error> {
        finite("diameter_change", diameter_change.get::<meter>(), "0.02 mm")?;
        Ok(diameter_change / self.on_diameter())
    }
}

impl From<&Cone> for Taper {
    fn from(cone: &Cone) -> Self {
        Self::new(cone.defined, cone.source)
    }
}

impl From<&'static Machine> for Taper {
    fn from(machine: &'static Machine) -> Self {
        let taper = Self::new(Defined::Ratio(machine.per_foot, 12.0), machine.source);
        Self { machine: Some(machine), ..taper }
    }
}

/// That a half angle in radians is one of a taper.
pub(crate) fn a_taper(half: f64) -> Result<(), Error> {
    let degrees = half.to_degrees();
    let [least, most] = HALF_ANGLES;
    let (range, what) = if degrees < least {
        (format!("under {least}"), "a cylinder")
    } else if degrees > most {
        ("over 60".to_owned(), "nearer to a plate than to a taper")
    } else if degrees.is_nan() {
        ("not between 0 and 60".to_owned(), "no angle")
    } else {
        return Ok(());
    };
    Err(ErrorKind::OutOfRange {
        argument: "half_angle".into(),
        given: figure(degrees, 5).parse().unwrap_or(degrees),
        range,
        unit: "°",
        authority: String::new(),
        hint: format!("that is {what}; check the figures and units: 1:5 has 5.71° a side"),
    }
    .into())
}

/// An angle in degrees, minutes and tenths of a second.
///
/// ```
/// use hubwright::joint::degrees_minutes_seconds;
/// use hubwright::units::{Angle, degree};
///
/// assert_eq!(degrees_minutes_seconds(Angle::new::<degree>(11.421_186_27)), "11° 25' 16.3\"");
/// ```
pub fn degrees_minutes_seconds(angle: Angle) -> String {
    let tenths = (angle.get::<radian>().to_degrees() * 36_000.0).round();
    let sign = if tenths < 0.0 { "-" } else { "" };
    let tenths = tenths.abs();
    let (degrees, minutes) = ((tenths / 36_000.0).floor(), (tenths % 36_000.0 / 600.0).floor());
    format!("{sign}{degrees}° {minutes}' {:.1}\"", tenths % 600.0 / 10.0)
}
