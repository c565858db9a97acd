//! A wheel as it wears: the speed that keeps its rim going, and the stub that its flange leaves.

use super::{GRINDING, ring};
use crate::error::{Error, ErrorKind};
use crate::tables::laws;
use crate::units::{
    AngularVelocity, Exact, Length, Velocity, below, figure, meter, meter_per_second, positive,
    positive_length, revolution_per_minute, shown_mm, zero_or_more,
};
use crate::wheel::speed::{KINEMATICS, rim_speed, speed_for_rim};
use crate::working::{Step, Working};

/// The speed to set as a wheel wears from one diameter to another, to keep its rim going.
///
/// `n = v / (π d)` rises as the wheel gets smaller, and the speed marked on it in turns is a ceiling
/// however small it has worn. A marked rim speed caps the rim speed asked for.
///
/// # Errors
///
/// [`ErrorKind::OutOfRange`] or [`ErrorKind::NotFinite`] for values not above zero, and a worn diameter
/// that is no smaller than the new one.
///
/// # Source
///
/// Kinematics; the cap is 29 CFR 1910.215(d)(1).
///
/// # Example
///
/// A 200 mm wheel at 30 m/s, marked 3340 rev/min: worn to 155 mm it would take 3697 rev/min, and gets 3340.
///
/// ```
/// use hubwright::units::{AngularVelocity, Length, Velocity, meter_per_second, millimeter, revolution_per_minute};
/// use hubwright::wheel::WornSpeed;
///
/// let mm = Length::new::<millimeter>;
/// let found = WornSpeed::new(mm(200.0), mm(155.0), Velocity::new::<meter_per_second>(30.0))
///     .with_marked_speed(AngularVelocity::new::<revolution_per_minute>(3340.0))
///     .solve()?;
/// assert!((found.free_speed.get::<revolution_per_minute>() - 3696.5).abs() < 0.1);
/// assert!(found.capped && (found.speed.get::<revolution_per_minute>() - 3340.0).abs() < 1e-9);
/// # Ok::<(), hubwright::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct WornSpeed {
    /// Diameter of the new wheel.
    pub diameter: Length,
    /// Diameter it has worn to, or will: that of its stub, for one.
    pub worn_diameter: Length,
    /// Rim speed to keep.
    pub rim_speed: Velocity,
    /// Rotational speed marked on the wheel.
    pub marked_speed: Option<AngularVelocity>,
    /// Rim speed marked on the wheel.
    pub marked_rim_speed: Option<Velocity>,
}

/// What [`WornSpeed::solve`] found.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct WornSpeedFound {
    /// What was asked.
    pub wheel: WornSpeed,
    /// Speed to set with the new wheel, never above a marking.
    pub new_speed: AngularVelocity,
    /// Speed that the worn wheel would need for the rim speed asked for, whatever is marked.
    pub free_speed: AngularVelocity,
    /// Speed to set with the worn wheel, never above a marking.
    pub speed: AngularVelocity,
    /// Whether a marking holds that down.
    pub capped: bool,
    /// Speed at which the worn wheel's rim would reach the marked rim speed; the marking in turns still caps.
    pub rim_limit_speed: Option<AngularVelocity>,
    /// Rim speed of the worn wheel at the speed to set.
    pub worn_rim_speed: Velocity,
    /// Rim speed of the worn wheel where the speed of the new one is kept.
    pub rim_speed_if_kept: Velocity,
}

impl WornSpeed {
    /// A wheel new and worn, and the rim speed to keep.
    pub fn new(diameter: Length, worn_diameter: Length, rim_speed: Velocity) -> Self {
        Self { diameter, worn_diameter, rim_speed, marked_speed: None, marked_rim_speed: None }
    }

    /// With the rotational speed marked on the wheel.
    #[must_use]
    pub fn with_marked_speed(self, speed: AngularVelocity) -> Self {
        Self { marked_speed: Some(speed), ..self }
    }

    /// With the rim speed marked on the wheel.
    #[must_use]
    pub fn with_marked_rim_speed(self, speed: Velocity) -> Self {
        Self { marked_rim_speed: Some(speed), ..self }
    }

    /// Speeds new and worn.
    ///
    /// # Errors
    ///
    /// As described on the type.
    pub fn solve(self) -> Result<WornSpeedFound, Error> {
        positive_length("diameter", self.diameter)?;
        positive_length("worn_diameter", self.worn_diameter)?;
        if self.worn_diameter.exact() >= self.diameter.exact() {
            return Err(ErrorKind::OutOfRange {
                argument: "worn_diameter".into(),
                given: shown_mm(self.worn_diameter),
                range: format!("not below the new {}", shown_mm(self.diameter)),
                unit: "mm",
                authority: String::new(),
                hint: "give the diameter of the new wheel first, the worn one second".into(),
            }
            .into());
        }
        if let Some(marked) = self.marked_rim_speed {
            let marked = marked.get::<meter_per_second>();
            positive("marked_rim_speed", marked, "m/s", "35 m/s")?;
        }
        let asked = self.rim_speed;
        let may = self.marked_rim_speed.filter(|marked| *marked < asked).unwrap_or(asked);
        let new = speed_for_rim(self.diameter, may, self.marked_speed)?;
        let worn = speed_for_rim(self.worn_diameter, may, self.marked_speed)?;
        let by_rim = |rim| speed_for_rim(self.worn_diameter, rim, None).map(|found| found.speed);
        Ok(WornSpeedFound {
            wheel: self,
            new_speed: new.speed,
            free_speed: by_rim(asked)?,
            speed: worn.speed,
            capped: worn.capped || may < asked,
            rim_limit_speed: self.marked_rim_speed.map(by_rim).transpose()?,
            worn_rim_speed: rim_speed(self.worn_diameter, worn.speed)?,
            rim_speed_if_kept: rim_speed(self.worn_diameter, new.speed)?,
        })
    }
}

impl WornSpeedFound {
    /// The steps, recomputed; the last one's result is `speed` in rev/min.
    pub fn working(&self) -> Working {
        let Ok(again) = self.wheel.solve() else { return Working::default() };
        let rpm = |speed: AngularVelocity| speed.get::<revolution_per_minute>();
        let v = figure(self.wheel.rim_speed.get::<meter_per_second>(), 4);
        let d = figure(shown_mm(self.wheel.worn_diameter), 4);
        let step = |symbol, relation, numbers, result, source| Step {
            symbol,
            relation,
            numbers,
            result,
            unit: "rev/min",
            source,
        };
        let numbers = format!("60 · {v} m/s / (π · {d} mm)");
        let mut steps = vec![step("n", "60 v / (π d)", numbers, rpm(again.free_speed), KINEMATICS)];
        let mut ceilings = vec![figure(rpm(again.free_speed), 3)];
        if let Some(limit) = again.rim_limit_speed {
            let marked = self.wheel.marked_rim_speed.map_or(0.0, |v| v.get::<meter_per_second>());
            let numbers = format!("60 · {} m/s / (π · {d} mm)", figure(marked, 4));
            ceilings.push(figure(rpm(limit), 3));
            steps.push(step(
                "n by rim",
                "60 v marked / (π d)",
                numbers,
                rpm(limit),
                laws::MARKED_SPEED,
            ));
        }
        ceilings.extend(self.wheel.marked_speed.map(|marked| figure(rpm(marked), 3)));
        let numbers = format!("min({})", ceilings.join(", "));
        steps.push(step("n set", "the least", numbers, rpm(again.speed), laws::MARKED_SPEED));
        Working { steps }
    }
}

/// What flange or stabiliser leave of a wheel, and what a larger flange would cost.
///
/// A wheel is used down to a stub of the larger of flange and stabiliser, and the
/// clearance that they need from the work on either side. What is beyond can be ground with.
///
/// # Errors
///
/// [`ErrorKind::OutOfRange`] or [`ErrorKind::NotFinite`] for sizes not above zero (clearance: below zero), a flange or
/// stabiliser that covers the wheel, a larger flange that is not larger, and a wheel worn below its stub.
///
/// # Source
///
/// Geometry.
///
/// # Example
///
/// A 200 mm wheel in 80 mm flanges that need 2 mm of clearance, beside 100 mm ones: 10 mm of radius lost.
///
/// ```
/// use hubwright::units::{Length, millimeter};
/// use hubwright::wheel::Stub;
///
/// let mm = Length::new::<millimeter>;
/// let found = Stub::new(mm(200.0), mm(80.0), mm(2.0)).with_larger_flange(mm(100.0)).solve()?;
/// assert!((found.stub_diameter.get::<millimeter>() - 84.0).abs() < 1e-9);
/// assert!((found.usable.get::<millimeter>() - 58.0).abs() < 1e-9);
/// assert!((found.lost.expect("a larger flange").get::<millimeter>() - 10.0).abs() < 1e-9);
/// # Ok::<(), hubwright::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Stub {
    /// Diameter of the new wheel.
    pub diameter: Length,
    /// Diameter of the flanges.
    pub flange: Length,
    /// Clearance that flange or stabiliser need from the work, on radius.
    pub clearance: Length,
    /// Diameter of the stabilisers.
    pub stabiliser: Option<Length>,
    /// Diameter that the wheel has worn to.
    pub worn_diameter: Option<Length>,
    /// Diameter of flanges that might replace these.
    pub larger_flange: Option<Length>,
}

/// What [`Stub::solve`] found.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct StubFound {
    /// What was asked.
    pub wheel: Stub,
    /// Diameter at which the wheel is used up.
    pub stub_diameter: Length,
    /// What can be used of the new wheel, on radius.
    pub usable: Length,
    /// What is left of it now, on radius; `None` without a worn diameter.
    pub left: Option<Length>,
    /// What is left now as a share of the volume that can be used.
    pub left_share: Option<f64>,
    /// What the larger flange takes away, on radius; `None` without one.
    pub lost: Option<Length>,
    /// What it takes away as a share of the volume that can be used.
    pub lost_share: Option<f64>,
}

impl Stub {
    /// A wheel in its flanges, and the clearance they need on radius.
    pub fn new(diameter: Length, flange: Length, clearance: Length) -> Self {
        Self {
            diameter,
            flange,
            clearance,
            stabiliser: None,
            worn_diameter: None,
            larger_flange: None,
        }
    }

    /// With stabilisers.
    #[must_use]
    pub fn with_stabiliser(self, diameter: Length) -> Self {
        Self { stabiliser: Some(diameter), ..self }
    }

    /// With the diameter that the wheel has worn to.
    #[must_use]
    pub fn with_worn_diameter(self, diameter: Length) -> Self {
        Self { worn_diameter: Some(diameter), ..self }
    }

    /// With larger flanges to compare with.
    #[must_use]
    pub fn with_larger_flange(self, diameter: Length) -> Self {
        Self { larger_flange: Some(diameter), ..self }
    }

    /// The stub of flanges of some diameter, with the stabilisers there are.
    fn stub(&self, flange: Length) -> Length {
        let holder = self.stabiliser.filter(|disc| *disc > flange).unwrap_or(flange);
        holder + self.clearance * 2.0
    }

    /// What is left of the wheel.
    ///
    /// # Errors
    ///
    /// As described on the type.
    pub fn solve(self) -> Result<StubFound, Error> {
        positive_length("diameter", self.diameter)?;
        zero_or_more("clearance", shown_mm(self.clearance), "mm", "2 mm")?;
        let wheel = shown_mm(self.diameter);
        let room = wheel - 2.0 * shown_mm(self.clearance);
        let discs = [("stabiliser", self.stabiliser), ("larger_flange", self.larger_flange)];
        for (name, size) in [("flange", Some(self.flange))].into_iter().chain(discs) {
            if let Some(size) = size {
                below(name, shown_mm(size), room, "mm", "80 mm")?;
            }
        }
        let stub = self.stub(self.flange);
        if let Some(worn) = self.worn_diameter {
            positive_length("worn_diameter", worn)?;
            if worn.exact() < stub.exact() || worn.exact() > self.diameter.exact() {
                let (range, hint) = if worn.exact() < stub.exact() {
                    let said = format!("below the stub of {}", shown_mm(stub));
                    (said, "take the wheel off: flange or stabiliser would meet the work")
                } else {
                    (format!("above the new {wheel}"), "give the diameter that the wheel has now")
                };
                return Err(ErrorKind::OutOfRange {
                    argument: "worn_diameter".into(),
                    given: shown_mm(worn),
                    range,
                    unit: "mm",
                    authority: String::new(),
                    hint: hint.into(),
                }
                .into());
            }
        }
        if let Some(larger) =
            self.larger_flange.filter(|larger| larger.exact() <= self.flange.exact())
        {
            return Err(ErrorKind::OutOfRange {
                argument: "larger_flange".into(),
                given: shown_mm(larger),
                range: format!("not above the flange of {}", shown_mm(self.flange)),
                unit: "mm",
                authority: String::new(),
                hint: "give the smaller flange as flange".into(),
            }
            .into());
        }
        let area = |outside: Length| ring(outside.get::<meter>(), stub.get::<meter>());
        let whole = area(self.diameter);
        let larger = self.larger_flange.map(|flange| self.stub(flange));
        Ok(StubFound {
            wheel: self,
            stub_diameter: stub,
            usable: (self.diameter - stub) / 2.0,
            left: self.worn_diameter.map(|worn| (worn - stub) / 2.0),
            left_share: self.worn_diameter.map(|worn| area(worn) / whole),
            lost: larger.map(|larger| (larger - stub) / 2.0),
            lost_share: larger.map(|larger| area(larger) / whole),
        })
    }
}

impl StubFound {
    /// The steps, recomputed; the last one's result is `usable` in mm.
    pub fn working(&self) -> Working {
        let Ok(again) = self.wheel.solve() else { return Working::default() };
        let mm = |length: Length| figure(shown_mm(length), 4);
        let step = |symbol, relation, numbers, result: Length| Step {
            symbol,
            relation,
            numbers,
            result: result.get::<meter>() * 1e3,
            unit: "mm",
            source: GRINDING,
        };
        let holder = again.stub_diameter - self.wheel.clearance * 2.0;
        let numbers = format!("{} + 2 · {}", mm(holder), mm(self.wheel.clearance));
        let mut steps =
            vec![step("stub", "flange or stabiliser + 2 c", numbers, again.stub_diameter)];
        if let (Some(lost), Some(larger)) = (again.lost, self.wheel.larger_flange) {
            let numbers =
                format!("({} − {}) / 2", mm(self.wheel.stub(larger)), mm(again.stub_diameter));
            steps.push(step("lost", "(larger stub − stub) / 2", numbers, lost));
        }
        let numbers = format!("({} − {}) / 2", mm(self.wheel.diameter), mm(again.stub_diameter));
        steps.push(step("usable", "(D − stub) / 2", numbers, again.usable));
        Working { steps }
    }
}
