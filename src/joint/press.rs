//! Press and shrink fits: a hub held on a shaft by its interference.

mod check;
mod working;

use std::f64::consts::PI;

use self::check::{misplaced, missing};
use crate::error::Error;
use crate::solid::{Point, Ring, compound};
use crate::source::{Source, Status};
use crate::tables::materials::Elastic;
use crate::units::{
    AngularVelocity, Force, Length, Pressure, TemperatureCoefficient, TemperatureInterval, Torque,
    kelvin, megapascal, meter, newton, newton_meter, pascal, per_kelvin, positive, positive_length,
    radian_per_second, shown_mm,
};

/// How roughness is flattened when parts are joined; the factor is the user's.
pub const SMOOTHING: Source = Source::new(
    "smoothing",
    "roughness flattened by joining: DIN 7190 has 0.8 in its 2001 edition, a newer edition is \
     said to have 0.4",
    "",
    "",
    Status::Memory,
);

/// Roughness of the two surfaces, and the share of it that joining flattens.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Smoothing {
    /// The interference lost is this times the sum of both roughnesses.
    pub factor: f64,
    /// Rz of the shaft.
    pub shaft_roughness: Length,
    /// Rz of the hub's bore.
    pub hub_roughness: Length,
}

/// A hub pressed or shrunk on a shaft.
///
/// Lamé's rings with rotation and warmth: with `R` the radius of the joint,
/// `U` the interference on diameter and `c = R / E [(b² + a²) / (b² - a²) ± ν]`
/// (plus for the hub, minus for the shaft),
///
/// `p = [U / 2 - (u hub - u shaft) - R (αh ΔTh - αs ΔTs)] / (ch + cs)`,
/// torque `2 π R² L μ p`, push-off force `2 π R L μ p`,
///
/// `u` being what rotation alone does to the free parts. Interferences are as
/// measured when [`with_smoothing`](Self::with_smoothing) is given, which
/// takes `c (Rz shaft + Rz hub)` off them; otherwise they are effective ones.
///
/// It holds for elastic parts of equal length. At the ends of a hub on a longer
/// shaft the pressure peaks, so that the torque is 1 to 12 % more than
/// this, and fretting starts there. Nothing is said about bending.
///
/// # Errors
///
/// [`OutOfRange`](crate::ErrorKind::OutOfRange) or [`NotFinite`](crate::ErrorKind::NotFinite) for a number that
/// makes no sense, [`Missing`](crate::ErrorKind::Missing) when heat is asked about and a
/// material's expansion is not given. Yielding is no error: see
/// [`PressFitFound::hub_factor`].
///
/// # Source
///
/// Lamé; Timoshenko and Goodier, *Theory of Elasticity*. The smoothing factor is
/// recalled from DIN 7190.
///
/// # Example
///
/// A steel hub of 45 mm on a 25 mm shaft, 18 µm on diameter, 20 mm long, friction 0.12:
/// 51 MPa, which hold 121 N m.
///
/// ```
/// use hubwright::joint::PressFit;
/// use hubwright::tables::materials::{Elastic, Metal};
/// use hubwright::units::{Length, megapascal, micrometer, millimeter, newton_meter};
///
/// let mm = Length::new::<millimeter>;
/// let interference = Length::new::<micrometer>(18.0);
/// let steel = Elastic::from(Metal::Steel);
/// let found = PressFit::new(steel, steel, mm(25.0), mm(0.0), mm(45.0), interference, interference)
///     .with_grip(mm(20.0), 0.12)
///     .solve()?;
/// assert!((found.least.pressure.get::<megapascal>() - 51.27).abs() < 0.01);
/// let torque = found.torque.expect("length and friction are given");
/// assert!((torque.get::<newton_meter>() - 120.8).abs() < 0.1);
/// # Ok::<(), hubwright::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct PressFit {
    /// Material of the shaft.
    pub shaft: Elastic,
    /// Material of the hub.
    pub hub: Elastic,
    /// Diameter of the joint.
    pub diameter: Length,
    /// Bore of the shaft; zero for a solid one.
    pub shaft_bore: Length,
    /// Outside diameter of the hub.
    pub hub_diameter: Length,
    /// Least interference on diameter.
    pub least_interference: Length,
    /// Greatest interference on diameter.
    pub greatest_interference: Length,
    /// What joining takes off both; `None` when they are effective already.
    pub smoothing: Option<Smoothing>,
    /// Rotational speed.
    pub speed: AngularVelocity,
    /// How much warmer the shaft is than when it was measured.
    pub shaft_rise: TemperatureInterval,
    /// How much warmer the hub is than when it was measured.
    pub hub_rise: TemperatureInterval,
    /// Length of the joint and friction in it, when torque is asked for.
    pub grip: Option<(Length, f64)>,
    /// Stress at which the shaft yields.
    pub shaft_yield: Option<Pressure>,
    /// Stress at which the hub yields.
    pub hub_yield: Option<Pressure>,
    /// Clearance on diameter wanted while joining, when heating or cooling is asked for.
    pub clearance: Option<Length>,
    /// Mean contraction of the shaft when it is cooled.
    pub cold_contraction: Option<TemperatureCoefficient>,
}

/// A press fit at one interference, speed and warmth.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Pressed {
    /// Effective interference on diameter; below zero where smoothing takes it all.
    pub interference: Length,
    /// Pressure in the joint; zero when it is open.
    pub pressure: Pressure,
    /// Whether the hub is loose.
    pub open: bool,
    /// Clearance on diameter when it is; zero otherwise.
    pub gap: Length,
    /// The speed from which on the hub is loose at this warmth: zero when it is so at a
    /// standstill, `None` when it never comes loose.
    pub loosening_speed: Option<AngularVelocity>,
    /// At the bore of the shaft, or its centre.
    pub shaft_inside: Point,
    /// At the surface of the shaft, in the joint.
    pub shaft_surface: Point,
    /// At the bore of the hub, in the joint.
    pub hub_bore: Point,
    /// At the outside of the hub.
    pub hub_outside: Point,
    /// Greatest von Mises stress of the shaft.
    pub shaft_von_mises: Pressure,
    /// Greatest von Mises stress of the hub.
    pub hub_von_mises: Pressure,
}

/// What [`PressFit::solve`] found.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct PressFitFound {
    /// What was asked.
    pub fit: PressFit,
    /// At the least interference, running and warm as given.
    pub least: Pressed,
    /// At the greatest interference, running and warm as given.
    pub greatest: Pressed,
    /// At the least interference, standing still and not warmed.
    pub least_at_rest: Pressed,
    /// At the greatest interference, standing still and not warmed.
    pub greatest_at_rest: Pressed,
    /// Torque that friction holds at the least interference, running or at rest, whichever
    /// is less.
    pub torque: Option<Torque>,
    /// Force along the shaft that friction holds, likewise.
    pub push_off: Option<Force>,
    /// Yield stress of the shaft over its greatest von Mises stress, running or at rest, at
    /// the greatest interference; below 1 it yields.
    pub shaft_factor: Option<f64>,
    /// The same for the hub.
    pub hub_factor: Option<f64>,
    /// How much warmer than the shaft the hub has to be, to go on with the clearance wanted at
    /// the greatest interference as measured.
    pub heat_hub_by: Option<TemperatureInterval>,
    /// How much colder than the hub the shaft has to be instead.
    pub cool_shaft_by: Option<TemperatureInterval>,
}

impl PressFit {
    /// A fit at a standstill, neither part warmed, its interferences effective.
    pub fn new(
        shaft: Elastic,
        hub: Elastic,
        diameter: Length,
        shaft_bore: Length,
        hub_diameter: Length,
        least_interference: Length,
        greatest_interference: Length,
    ) -> Self {
        let cold = TemperatureInterval::new::<kelvin>(0.0);
        Self {
            shaft,
            hub,
            diameter,
            shaft_bore,
            hub_diameter,
            least_interference,
            greatest_interference,
            smoothing: None,
            speed: AngularVelocity::new::<radian_per_second>(0.0),
            shaft_rise: cold,
            hub_rise: cold,
            grip: None,
            shaft_yield: None,
            hub_yield: None,
            clearance: None,
            cold_contraction: None,
        }
    }

    /// With interferences as measured, of which joining takes `factor` times both roughnesses.
    #[must_use]
    pub fn with_smoothing(
        mut self,
        factor: f64,
        shaft_roughness: Length,
        hub_roughness: Length,
    ) -> Self {
        self.smoothing = Some(Smoothing { factor, shaft_roughness, hub_roughness });
        self
    }

    /// Turning.
    #[must_use]
    pub fn with_speed(mut self, speed: AngularVelocity) -> Self {
        self.speed = speed;
        self
    }

    /// Warmer than when the parts were measured.
    #[must_use]
    pub fn with_rises(mut self, shaft: TemperatureInterval, hub: TemperatureInterval) -> Self {
        (self.shaft_rise, self.hub_rise) = (shaft, hub);
        self
    }

    /// With the length of the joint and the friction in it, for torque and push-off force.
    #[must_use]
    pub fn with_grip(mut self, length: Length, friction: f64) -> Self {
        self.grip = Some((length, friction));
        self
    }

    /// With the stress at which the shaft yields.
    #[must_use]
    pub fn with_shaft_yield(mut self, stress: Pressure) -> Self {
        self.shaft_yield = Some(stress);
        self
    }

    /// With the stress at which the hub yields.
    #[must_use]
    pub fn with_hub_yield(mut self, stress: Pressure) -> Self {
        self.hub_yield = Some(stress);
        self
    }

    /// With the clearance on diameter wanted while joining.
    #[must_use]
    pub fn with_clearance(mut self, clearance: Length) -> Self {
        self.clearance = Some(clearance);
        self
    }

    /// With the mean contraction of the shaft when it is cooled.
    #[must_use]
    pub fn with_cold_contraction(mut self, contraction: TemperatureCoefficient) -> Self {
        self.cold_contraction = Some(contraction);
        self
    }

    /// Everything about the fit.
    ///
    /// # Errors
    ///
    /// See [`PressFit`].
    pub fn solve(self) -> Result<PressFitFound, Error> {
        self.check()?;
        let [least, greatest] = self.effective();
        let at_rest = Self { speed: AngularVelocity::default(), ..self };
        let at_rest = at_rest.with_rises(<_>::default(), <_>::default());
        let (running, standing) = (
            [self.pressed(least)?, self.pressed(greatest)?],
            [at_rest.pressed(least)?, at_rest.pressed(greatest)?],
        );
        let held = running[0].pressure.min(standing[0].pressure);
        let [shaft, hub] = [
            running[1].shaft_von_mises.max(standing[1].shaft_von_mises),
            running[1].hub_von_mises.max(standing[1].hub_von_mises),
        ];
        let factor = |yields: Option<Pressure>, stress: Pressure| {
            yields.map(|yields| yields.get::<pascal>() / stress.get::<pascal>())
        };
        let by = |expansion: Option<TemperatureCoefficient>| {
            let gap = self.greatest_interference + self.clearance?;
            let d = self.diameter.get::<meter>();
            let kelvins = gap.get::<meter>() / (expansion?.get::<per_kelvin>() * d);
            Some(TemperatureInterval::new::<kelvin>(kelvins))
        };
        Ok(PressFitFound {
            fit: self,
            least: running[0],
            greatest: running[1],
            least_at_rest: standing[0],
            greatest_at_rest: standing[1],
            torque: self.grip.map(|grip| self.friction(grip, held).1),
            push_off: self.grip.map(|grip| self.friction(grip, held).0),
            shaft_factor: factor(self.shaft_yield, shaft),
            hub_factor: factor(self.hub_yield, hub),
            heat_hub_by: by(self.hub.expansion),
            cool_shaft_by: by(self.cold_contraction),
        })
    }

    /// Force and torque that friction holds at a pressure.
    fn friction(&self, (length, friction): (Length, f64), pressure: Pressure) -> (Force, Torque) {
        let r = self.diameter.get::<meter>() / 2.0;
        let force = 2.0 * PI * r * length.get::<meter>() * friction * pressure.get::<pascal>();
        (Force::new::<newton>(force), Torque::new::<newton_meter>(force * r))
    }

    /// Least and greatest interference once joining has smoothed the surfaces.
    fn effective(&self) -> [Length; 2] {
        let lost = self.smoothing.map_or(Length::default(), |smoothing| {
            smoothing.factor * (smoothing.shaft_roughness + smoothing.hub_roughness)
        });
        [self.least_interference - lost, self.greatest_interference - lost]
    }

    /// The fit at one effective interference; below zero it is a clearance.
    fn pressed(&self, interference: Length) -> Result<Pressed, Error> {
        let shaft = Ring::innermost(self.diameter, self.shaft).with_rise(self.shaft_rise);
        let hub = Ring::shrunk(self.hub_diameter, self.hub, interference).with_rise(self.hub_rise);
        let found = compound(self.shaft_bore, &[shaft, hub], self.speed)?;
        let ([shaft, hub], [joint]) = (&found.rings[..], &found.interfaces[..]) else {
            return Err(missing("hub", "it sits on nothing"));
        };
        Ok(Pressed {
            interference,
            pressure: joint.pressure,
            open: joint.open,
            gap: joint.gap,
            loosening_speed: joint.loosening_speed,
            shaft_inside: shaft.inside,
            shaft_surface: shaft.outside,
            hub_bore: hub.inside,
            hub_outside: hub.outside,
            shaft_von_mises: shaft.von_mises(),
            hub_von_mises: hub.von_mises(),
        })
    }
}

impl PressFitFound {
    /// Whether every part whose yield stress is given stays elastic; `None` when none is given.
    pub fn stays_elastic(&self) -> Option<bool> {
        let factors = [self.shaft_factor, self.hub_factor];
        let given = factors.iter().flatten().count() > 0;
        given.then(|| factors.iter().flatten().all(|factor| *factor >= 1.0))
    }
}

/// Greatest pressure in the bore of a hub that stays elastic, by two criteria.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct ElasticLimit {
    /// After von Mises, for ductile hubs.
    pub von_mises: Pressure,
    /// By the greatest shear stress, which is more cautious.
    pub greatest_shear: Pressure,
}

/// Pressure in its bore that a hub at rest carries without yielding.
///
/// With `Q = d / D`, the bore over the outside diameter, and the yield stress `Re`: by the
/// greatest shear `Re (1 - Q²) / 2`, after von Mises `Re (1 - Q²) / √(3 + Q⁴)`.
///
/// # Errors
///
/// [`OutOfRange`](crate::ErrorKind::OutOfRange) or [`NotFinite`](crate::ErrorKind::NotFinite) for a size or stress that is not
/// above zero, or a hub that is no larger than its bore.
///
/// # Source
///
/// Lamé; Timoshenko and Goodier, *Theory of Elasticity*.
///
/// # Example
///
/// A hub of 45 mm with a bore of 25 mm, yielding at 300 MPa: 118 MPa.
///
/// ```
/// use hubwright::joint::elastic_limit;
/// use hubwright::units::{Length, Pressure, megapascal, millimeter};
///
/// let mm = Length::new::<millimeter>;
/// let limit = elastic_limit(mm(25.0), mm(45.0), Pressure::new::<megapascal>(300.0))?;
/// assert!((limit.von_mises.get::<megapascal>() - 117.89).abs() < 0.01);
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn elastic_limit(
    diameter: Length,
    hub_diameter: Length,
    hub_yield: Pressure,
) -> Result<ElasticLimit, Error> {
    let (bore, outside) =
        (positive_length("diameter", diameter)?, positive_length("hub_diameter", hub_diameter)?);
    positive("hub_yield", hub_yield.get::<megapascal>(), "MPa", "300 MPa")?;
    if outside <= bore {
        let range = format!("not above the joint's {}", shown_mm(diameter));
        let hint = "give the outside diameter of the hub, which is around the joint";
        return Err(misplaced("hub_diameter", shown_mm(hub_diameter), range, hint));
    }
    let q = (bore / outside) * (bore / outside);
    let carried = hub_yield * (1.0 - q);
    let von_mises = carried / (3.0 + q * q).sqrt();
    Ok(ElasticLimit { von_mises, greatest_shear: carried / 2.0 })
}
