//! What a torque does to a key: shear along the shaft's surface, bearing on its sides.

use super::key::{inside_hub, narrower, outside};
use crate::error::Error;
use crate::source::{Source, Status};
use crate::units::{
    Exact, Force, Length, Pressure, Torque, figure, megapascal, meter, millimeter, newton,
    newton_meter, pascal, positive, positive_length, shown_mm,
};
use crate::working::{Step, Working};

/// Statics of a key.
pub const KEY_STATICS: Source = Source::new(
    "key-statics",
    "statics of keys (Shigley; Mott; Machinery's Handbook)",
    "",
    "",
    Status::Computed,
);

/// Shear stress of a key in Pa, `2 T / (d b L)`; the formula that kernel and rule share.
#[inline(always)]
pub(crate) fn shear(torque: f64, shaft: f64, width: f64, length: f64) -> f64 {
    2.0 * torque / shaft / (width * length)
}

/// Bearing stress on the side of a key in Pa, `2 T / (d c L)`, with `c` the height that bears.
#[inline(always)]
pub(crate) fn bearing(torque: f64, shaft: f64, bears: f64, length: f64) -> f64 {
    2.0 * torque / shaft / (bears * length)
}

/// Shear and bearing stress of a parallel key.
///
/// The torque acts as `F = 2 T / d` at the surface of the shaft, spread evenly along the
/// key: `τ = F / (b L)`, `p = F / (c L)`. The height that bears, `c`, is
/// half of the key's unless [`with_bearing_height`](Self::with_bearing_height)
/// gives less; the other part cannot bear over more than the rest. In a shallow keyway it is much less, down to a
/// quarter in the hubs of DIN 6885-2: [`KeySize::bearing_height`](super::KeySize) has it. `L` is the
/// length that carries: of a key with round ends, without its ends.
///
/// Friction of a pressed hub is not counted, nor uneven load along the key, shock,
/// fatigue and what the keyway does to shaft and hub. Allowed stresses are the
/// user's, and so is the factor in them.
///
/// # Errors
///
/// [`OutOfRange`](crate::ErrorKind::OutOfRange) for a figure that is not above zero, a key as
/// wide as its shaft, a bearing height above half of the key, a key longer than its hub;
/// [`NotFinite`](crate::ErrorKind::NotFinite) for NaN and infinite ones.
///
/// # Source
///
/// Shigley; Mott; Machinery's Handbook.
///
/// # Example
///
/// 21,000 lbf·in on a 2 in shaft with a key of ½ × ½ in, 9000 psi allowed in
/// shear: the key has to be 4.67 in long (Mott, problem 11-1).
///
/// ```
/// use hubwright::joint::KeyStrength;
/// use hubwright::units::{Length, inch, read};
///
/// let inches = Length::new::<inch>;
/// let found = KeyStrength::new(
///     read("21000 lbf in")?, inches(2.0), inches(0.5), inches(0.5), inches(5.0),
/// )
/// .with_allowed_shear(read("9000 psi")?)
/// .solve()?;
/// let length = found.shear_length.expect("an allowed stress is given");
/// assert!((length.get::<inch>() - 4.667).abs() < 1e-3);
/// assert_eq!(found.carries, Some(true));
/// # Ok::<(), hubwright::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct KeyStrength {
    /// Torque that the key carries.
    pub torque: Torque,
    /// Diameter of the shaft.
    pub shaft_diameter: Length,
    /// Width of the key.
    pub width: Length,
    /// Height of the key.
    pub height: Length,
    /// Length that carries.
    pub length: Length,
    /// Allowed shear stress.
    pub allowed_shear: Option<Pressure>,
    /// Allowed bearing stress, of the weakest of key, shaft and hub.
    pub allowed_bearing: Option<Pressure>,
    /// Height over which the side bears, where it is less than half of the key's.
    pub bearing_height: Option<Length>,
    /// Length of the hub.
    pub hub_length: Option<Length>,
}

/// What [`KeyStrength::solve`] found.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct KeyStrengthFound {
    /// What was asked.
    pub key: KeyStrength,
    /// Force at the surface of the shaft.
    pub force: Force,
    /// Height over which the side bears.
    pub bearing_height: Length,
    /// Shear stress.
    pub shear: Pressure,
    /// Bearing stress.
    pub bearing: Pressure,
    /// Length at which the allowed shear stress is reached.
    pub shear_length: Option<Length>,
    /// Length at which the allowed bearing stress is reached.
    pub bearing_length: Option<Length>,
    /// Whether every stress whose allowed value is given keeps to it; `None` where none is.
    pub carries: Option<bool>,
}

impl KeyStrength {
    /// A key of which half the height bears.
    pub fn new(
        torque: Torque,
        shaft_diameter: Length,
        width: Length,
        height: Length,
        length: Length,
    ) -> Self {
        Self {
            torque,
            shaft_diameter,
            width,
            height,
            length,
            allowed_shear: None,
            allowed_bearing: None,
            bearing_height: None,
            hub_length: None,
        }
    }

    /// With the shear stress allowed.
    #[must_use]
    pub fn with_allowed_shear(mut self, stress: Pressure) -> Self {
        self.allowed_shear = Some(stress);
        self
    }

    /// With the bearing stress allowed.
    #[must_use]
    pub fn with_allowed_bearing(mut self, stress: Pressure) -> Self {
        self.allowed_bearing = Some(stress);
        self
    }

    /// With the height over which the side bears, for a shallow keyway or large chamfers.
    #[must_use]
    pub fn with_bearing_height(mut self, height: Length) -> Self {
        self.bearing_height = Some(height);
        self
    }

    /// With the length of the hub, which the key may not pass.
    #[must_use]
    pub fn with_hub_length(mut self, length: Length) -> Self {
        self.hub_length = Some(length);
        self
    }

    fn check(&self) -> Result<(), Error> {
        positive("torque", self.torque.get::<newton_meter>(), "N m", "40 N m")?;
        positive_length("shaft_diameter", self.shaft_diameter)?;
        narrower("width", self.width, "shaft", self.shaft_diameter)?;
        positive_length("height", self.height)?;
        positive_length("length", self.length)?;
        inside_hub(self.length, self.hub_length)?;
        for (name, stress) in
            [("allowed_shear", self.allowed_shear), ("allowed_bearing", self.allowed_bearing)]
        {
            if let Some(stress) = stress {
                positive(name, stress.get::<megapascal>(), "MPa", "60 MPa")?;
            }
        }
        let Some(bears) = self.bearing_height else { return Ok(()) };
        positive_length("bearing_height", bears)?;
        if 2.0 * bears.exact() <= self.height.exact() {
            return Ok(());
        }
        let half = figure(self.height.exact() / 2e6, 4);
        let hint = "what does not bear in the hub bears in the shaft: the lesser of the two counts";
        let range = format!("above half of the key, {half}");
        let given = shown_mm(bears);
        Err(outside("bearing_height", given, range, "mm", String::new(), hint.into()))
    }

    /// The stresses, and whether they keep to what is allowed.
    ///
    /// # Errors
    ///
    /// See [`KeyStrength`].
    pub fn solve(self) -> Result<KeyStrengthFound, Error> {
        self.check()?;
        let m = |length: Length| length.get::<meter>();
        let torque = self.torque.get::<newton_meter>();
        let (d, b, length) = (m(self.shaft_diameter), m(self.width), m(self.length));
        let bearing_height = self.bearing_height.unwrap_or(self.height / 2.0);
        let stress_shear = shear(torque, d, b, length);
        let stress_bearing = bearing(torque, d, m(bearing_height), length);
        let reached = |stress: f64, allowed: Option<Pressure>| {
            allowed.map(|allowed| self.length * (stress / allowed.get::<pascal>()))
        };
        let keeps = |stress: f64, allowed: Option<Pressure>| {
            // On whole mPa, as the rule has it.
            let whole = |pa: f64| (pa * 1e3).round_ties_even();
            allowed.map(|allowed| whole(stress) <= whole(allowed.get::<pascal>()))
        };
        let kept =
            [keeps(stress_shear, self.allowed_shear), keeps(stress_bearing, self.allowed_bearing)];
        Ok(KeyStrengthFound {
            key: self,
            force: Force::new::<newton>(2.0 * torque / d),
            bearing_height,
            shear: Pressure::new::<pascal>(stress_shear),
            bearing: Pressure::new::<pascal>(stress_bearing),
            shear_length: reached(stress_shear, self.allowed_shear),
            bearing_length: reached(stress_bearing, self.allowed_bearing),
            carries: kept.into_iter().flatten().reduce(|a, b| a && b),
        })
    }
}

impl KeyStrengthFound {
    /// The steps, recomputed; the last one's result is `bearing` in MPa.
    pub fn working(&self) -> Working {
        let Ok(again) = self.key.solve() else { return Working::default() };
        let mm = |length: Length| figure(length.get::<millimeter>(), 4);
        let key = self.key;
        let force = figure(again.force.get::<newton>(), 1);
        let step = |symbol, relation, numbers, result, unit| Step {
            symbol,
            relation,
            numbers,
            result,
            unit,
            source: KEY_STATICS,
        };
        let torque = figure(key.torque.get::<newton_meter>(), 4);
        Working {
            steps: vec![
                step(
                    "F",
                    "2 T / d",
                    format!("2 · {torque} N m / {} mm", mm(key.shaft_diameter)),
                    again.force.get::<newton>(),
                    "N",
                ),
                step(
                    "shear",
                    "F / (b L)",
                    format!("{force} N / ({} mm · {} mm)", mm(key.width), mm(key.length)),
                    again.shear.get::<megapascal>(),
                    "MPa",
                ),
                step(
                    "bearing",
                    "F / (c L)",
                    format!(
                        "{force} N / ({} mm · {} mm)",
                        mm(again.bearing_height),
                        mm(key.length)
                    ),
                    again.bearing.get::<megapascal>(),
                    "MPa",
                ),
            ],
        }
    }
}
