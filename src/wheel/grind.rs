//! Grinding: what a cut removes, how thick its chips are, what it asks of the spindle, and what it does to the wheel.

mod dress;
mod feed;
mod stub;
mod wear;

pub use dress::{Dress, DressFeed, DressFound};
pub use feed::{creep_stroke, through_feed, through_feed_angle};
pub use stub::{Stub, StubFound, WornSpeed, WornSpeedFound};
pub use wear::{WearFound, fitted_roughness, grinding_ratio, ring_volume, wear};

use std::f64::consts::PI;

use super::speed::{KINEMATICS, rim_speed};
use crate::error::{Error, ErrorKind};
use crate::source::{Source, Status};
use crate::units::{
    AngularVelocity, Force, GrainDensity, Length, Power, RemovalRate, SpecificEnergy, Torque,
    Velocity, Volume, WidthRemovalRate, below, cubic_meter, cubic_meter_per_second,
    cubic_millimeter_per_second, figure, joule_per_cubic_meter, joule_per_cubic_millimeter, meter,
    meter_per_second, micrometer, newton, newton_meter, per_square_meter, per_square_millimeter,
    positive, positive_length, radian_per_second, revolution_per_minute, shown_mm,
    square_meter_per_second, watt, within, words,
};
use crate::working::{Step, Working};

/// Kinematics of grinding.
pub const GRINDING: Source = Source::new(
    "grinding-kinematics",
    "kinematics of grinding (Malkin and Guo, Grinding Technology; Rowe, Modern Grinding Technology)",
    "",
    "",
    Status::Memory,
);

/// Every source that grinding cites beside published ranges.
pub const SOURCES: &[Source] = &[GRINDING];

words! {
    /// How wheel and work meet.
    GrindKind, "kind of grinding" {
        /// Flat work under the wheel's rim.
        Surface = "surface" ["flat"];
        /// Round work from outside.
        External = "external" ["cylindrical", "outside"];
        /// A bore from inside.
        Internal = "internal" ["inside", "bore"];
    }
}

/// A cut: wheel, work, depth and width.
///
/// `Q = a b v_w` is the removal rate, `h_eq = a v_w / v_s` the equivalent chip thickness, and
/// `l = √(a d_e)` the length of contact with `d_e = d_s d_w / (d_w ± d_s)`, plus outside, minus inside,
/// `d_s` for flat work. Wheel and work give way, so that the real contact is 1.5 to 2 times as long or
/// more (from memory). With the density of cutting points `C` and the width of a chip
/// over its thickness `r`, `h_m = √(4 / (C r) · v_w / v_s · √(a / d_e))`. With the specific energy `u` of the job,
/// `P = u Q`, `F_t = P / v_s` and `T = P / ω`. Energy, cutting points and chip shape are shop data:
/// [published ranges](crate::tables::grinding::RANGES) are wide.
///
/// # Errors
///
/// [`ErrorKind::OutOfRange`] or [`ErrorKind::NotFinite`] for values not above zero, a cut as deep as the wheel's
/// radius, an efficiency above 1, and internal work no larger than its wheel;
/// [`ErrorKind::Missing`] for round work without its diameter.
///
/// # Source
///
/// Kinematics; Malkin and Guo; Rowe; recalled, and checked against Groover's worked problems.
///
/// # Example
///
/// 15 µm deep and 15 mm wide at 0.25 m/s under a 200 mm wheel at 2900 rev/min.
///
/// ```
/// use hubwright::units::{AngularVelocity, Length, SpecificEnergy, Velocity, joule_per_cubic_millimeter, meter_per_second, millimeter, revolution_per_minute, watt};
/// use hubwright::wheel::{Grind, GrindKind};
///
/// let mm = Length::new::<millimeter>;
/// let speed = AngularVelocity::new::<revolution_per_minute>(2900.0);
/// let found = Grind::new(GrindKind::Surface, mm(200.0), speed)
///     .with_cut(mm(0.015), mm(15.0), Velocity::new::<meter_per_second>(0.25))
///     .with_specific_energy(SpecificEnergy::new::<joule_per_cubic_millimeter>(35.0))
///     .solve()?;
/// assert!((found.contact_length.get::<millimeter>() - 1.732).abs() < 1e-3);
/// assert!((found.power.expect("from the energy").get::<watt>() - 1968.75).abs() < 1e-6);
/// # Ok::<(), hubwright::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Grind {
    /// How wheel and work meet.
    pub kind: GrindKind,
    /// Diameter of the wheel as it is now.
    pub wheel_diameter: Length,
    /// Rotational speed of the wheel.
    pub speed: AngularVelocity,
    /// Depth of cut.
    pub depth: Length,
    /// Width of cut.
    pub width: Length,
    /// Speed of the work past the wheel.
    pub work_speed: Velocity,
    /// Diameter of round work.
    pub work_diameter: Option<Length>,
    /// Energy to grind away a volume of this work on this machine.
    pub specific_energy: Option<SpecificEnergy>,
    /// Power of the spindle, and the share of it that reaches the wheel.
    pub spindle_power: Option<(Power, f64)>,
    /// Torque that the spindle has at this speed.
    pub spindle_torque: Option<Torque>,
    /// Cutting points in an area of the wheel's face.
    pub grains: Option<GrainDensity>,
    /// Width of a chip over its thickness.
    pub chip_width_ratio: Option<f64>,
    /// Rotational speed marked on the wheel.
    pub marked_speed: Option<AngularVelocity>,
}

/// What [`Grind::solve`] found.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct GrindFound {
    /// What was asked.
    pub cut: Grind,
    /// Speed of the wheel's rim.
    pub rim_speed: Velocity,
    /// Rim speed over work speed.
    pub speed_ratio: f64,
    /// Volume ground away in a time.
    pub removal_rate: RemovalRate,
    /// The same of each millimetre of width.
    pub width_removal_rate: WidthRemovalRate,
    /// Equivalent chip thickness.
    pub equivalent_chip_thickness: Length,
    /// Equivalent diameter: of the wheel that would touch flat work over the same length.
    pub equivalent_diameter: Length,
    /// Length of contact by geometry.
    pub contact_length: Length,
    /// `v_w / v_s · √(a / d_e)`.
    pub aggressiveness: f64,
    /// Chips in a second; `None` without the density of cutting points.
    pub chips_per_second: Option<f64>,
    /// Mean volume of a chip.
    pub chip_volume: Option<Volume>,
    /// Greatest thickness of a chip; `None` without its width over thickness too.
    pub chip_thickness: Option<Length>,
    /// Power that grinding takes; `None` without a specific energy.
    pub power: Option<Power>,
    /// Force along the rim.
    pub force: Option<Force>,
    /// Torque on the spindle.
    pub torque: Option<Torque>,
    /// Power over what reaches the wheel.
    pub power_share: Option<f64>,
    /// Torque over what the spindle has.
    pub torque_share: Option<f64>,
    /// Whether the spindle has the power and the torque; `None` while neither can be compared.
    pub spindle_carries: Option<bool>,
    /// Whether the wheel turns faster than it is marked for.
    pub above_marked: bool,
}

impl Grind {
    /// A wheel; its cut is still to be given.
    pub fn new(kind: GrindKind, wheel_diameter: Length, speed: AngularVelocity) -> Self {
        Self {
            kind,
            wheel_diameter,
            speed,
            depth: Length::default(),
            width: Length::default(),
            work_speed: Velocity::default(),
            work_diameter: None,
            specific_energy: None,
            spindle_power: None,
            spindle_torque: None,
            grains: None,
            chip_width_ratio: None,
            marked_speed: None,
        }
    }

    /// With depth, width and the speed of the work.
    #[must_use]
    pub fn with_cut(self, depth: Length, width: Length, work_speed: Velocity) -> Self {
        Self { depth, width, work_speed, ..self }
    }

    /// With the diameter of round work.
    #[must_use]
    pub fn with_work_diameter(self, diameter: Length) -> Self {
        Self { work_diameter: Some(diameter), ..self }
    }

    /// With the specific energy of the job.
    #[must_use]
    pub fn with_specific_energy(self, energy: SpecificEnergy) -> Self {
        Self { specific_energy: Some(energy), ..self }
    }

    /// With the spindle's power and the share of it that reaches the wheel; 1 where it is measured there.
    #[must_use]
    pub fn with_spindle_power(self, power: Power, efficiency: f64) -> Self {
        Self { spindle_power: Some((power, efficiency)), ..self }
    }

    /// With the torque that the spindle has at this speed.
    #[must_use]
    pub fn with_spindle_torque(self, torque: Torque) -> Self {
        Self { spindle_torque: Some(torque), ..self }
    }

    /// With the density of cutting points.
    #[must_use]
    pub fn with_grains(self, density: GrainDensity) -> Self {
        Self { grains: Some(density), ..self }
    }

    /// With the width of a chip over its thickness.
    #[must_use]
    pub fn with_chip_width_ratio(self, ratio: f64) -> Self {
        Self { chip_width_ratio: Some(ratio), ..self }
    }

    /// With the speed marked on the wheel.
    #[must_use]
    pub fn with_marked_speed(self, speed: AngularVelocity) -> Self {
        Self { marked_speed: Some(speed), ..self }
    }

    fn check(&self) -> Result<(), Error> {
        positive_length("wheel_diameter", self.wheel_diameter)?;
        positive("speed", self.speed.get::<revolution_per_minute>(), "rpm", "2850 rpm")?;
        positive_length("width", self.width)?;
        positive("work_speed", self.work_speed.get::<meter_per_second>(), "m/s", "0.25 m/s")?;
        below(
            "depth",
            shown_mm(self.depth),
            shown_mm(self.wheel_diameter) / 2.0,
            "mm",
            "0.015 mm",
        )?;
        if let Some(energy) = self.specific_energy {
            let energy = energy.get::<joule_per_cubic_millimeter>();
            positive("specific_energy", energy, "J/mm3", "40 J/mm3")?;
        }
        if let Some((power, efficiency)) = self.spindle_power {
            positive("spindle_power", power.get::<watt>() / 1e3, "kW", "1.5 kW")?;
            positive("efficiency", efficiency, "", "0.85")?;
            within("efficiency", efficiency, [0.0, 1.0], "", "0.85")?;
        }
        if let Some(torque) = self.spindle_torque {
            positive("spindle_torque", torque.get::<newton_meter>(), "N m", "8 N m")?;
        }
        if let Some(grains) = self.grains {
            positive("grains", grains.get::<per_square_millimeter>(), "1/mm2", "2 1/mm2")?;
        }
        if let Some(ratio) = self.chip_width_ratio {
            positive("chip_width_ratio", ratio, "", "12")?;
        }
        if let Some(marked) = self.marked_speed {
            positive("marked_speed", marked.get::<revolution_per_minute>(), "rpm", "3340 rpm")?;
        }
        Ok(())
    }

    fn equivalent_diameter(&self) -> Result<f64, Error> {
        let wheel = self.wheel_diameter.get::<meter>();
        if self.kind == GrindKind::Surface {
            return Ok(wheel);
        }
        let Some(work) = self.work_diameter else {
            return Err(ErrorKind::Missing {
                argument: "work_diameter".into(),
                why: "the contact of round work hangs on it".into(),
                hint: "give it, like work_diameter=\"50 mm\"; flat work is kind=\"surface\"".into(),
            }
            .into());
        };
        let work_m = positive_length("work_diameter", work)?;
        if self.kind == GrindKind::External {
            if self.depth * 2.0 >= work {
                return Err(ErrorKind::OutOfRange {
                    argument: "depth".into(),
                    given: shown_mm(self.depth),
                    range: format!("not below half of the work, {}", shown_mm(work) / 2.0),
                    unit: "mm",
                    authority: String::new(),
                    hint: "give the depth of one cut; the work has no more than its radius".into(),
                }
                .into());
            }
            return Ok(wheel * work_m / (work_m + wheel));
        }
        if work_m <= wheel {
            return Err(ErrorKind::OutOfRange {
                argument: "work_diameter".into(),
                given: shown_mm(work),
                range: format!("not above the wheel's {}", shown_mm(self.wheel_diameter)),
                unit: "mm",
                authority: "the wheel has to go into the bore".into(),
                hint: "give the bore that is ground; outside work is kind=\"external\"".into(),
            }
            .into());
        }
        Ok(wheel * work_m / (work_m - wheel))
    }

    /// What the cut does and takes.
    ///
    /// # Errors
    ///
    /// As described on the type.
    pub fn solve(self) -> Result<GrindFound, Error> {
        self.check()?;
        let de = self.equivalent_diameter()?;
        let rim = rim_speed(self.wheel_diameter, self.speed)?;
        let (vs, vw) = (rim.get::<meter_per_second>(), self.work_speed.get::<meter_per_second>());
        let (a, b) = (self.depth.get::<meter>(), self.width.get::<meter>());
        let w = self.speed.get::<radian_per_second>();
        let rate = a * b * vw;
        let grains = self.grains.map(|grains| grains.get::<per_square_meter>());
        let chips = grains.map(|density| vs * b * density);
        let thickness = grains.zip(self.chip_width_ratio);
        let power = self.specific_energy.map(|energy| energy.get::<joule_per_cubic_meter>() * rate);
        let reaches = self.spindle_power.map(|(power, share)| power.get::<watt>() * share);
        let torque = power.map(|power| power / w);
        let has = self.spindle_torque.map(|torque| torque.get::<newton_meter>());
        let power_share = power.zip(reaches).map(|(takes, has)| takes / has);
        let torque_share = torque.zip(has).map(|(takes, has)| takes / has);
        let shares: Vec<f64> = [power_share, torque_share].into_iter().flatten().collect();
        Ok(GrindFound {
            cut: self,
            rim_speed: rim,
            speed_ratio: vs / vw,
            removal_rate: RemovalRate::new::<cubic_meter_per_second>(rate),
            width_removal_rate: WidthRemovalRate::new::<square_meter_per_second>(a * vw),
            equivalent_chip_thickness: Length::new::<meter>(a * vw / vs),
            equivalent_diameter: Length::new::<meter>(de),
            contact_length: Length::new::<meter>((a * de).sqrt()),
            aggressiveness: vw / vs * (a / de).sqrt(),
            chips_per_second: chips,
            chip_volume: chips.map(|chips| Volume::new::<cubic_meter>(rate / chips)),
            chip_thickness: thickness.map(|(density, ratio)| {
                let square = 4.0 / (density * ratio) * (vw / vs) * (a / de).sqrt();
                Length::new::<meter>(square.sqrt())
            }),
            power: power.map(Power::new::<watt>),
            force: power.map(|power| Force::new::<newton>(power / vs)),
            torque: torque.map(Torque::new::<newton_meter>),
            power_share,
            torque_share,
            spindle_carries: (!shares.is_empty()).then(|| shares.iter().all(|share| *share <= 1.0)),
            above_marked: self.marked_speed.is_some_and(|marked| self.speed > marked),
        })
    }
}

impl GrindFound {
    /// The steps, recomputed; the last one's result is `torque` in N m, or `contact_length` in mm
    /// where no specific energy was given.
    pub fn working(&self) -> Working {
        let Ok(again) = self.cut.solve() else { return Working::default() };
        let cut = again.cut;
        let mm = |length: Length| figure(shown_mm(length), 6);
        let [vs, vw] = [again.rim_speed, cut.work_speed]
            .map(|speed| figure(speed.get::<meter_per_second>(), 4));
        let (a, b) = (mm(cut.depth), mm(cut.width));
        let step = |symbol, relation, numbers, result, unit, source| Step {
            symbol,
            relation,
            numbers,
            result,
            unit,
            source,
        };
        let rate = again.removal_rate.get::<cubic_millimeter_per_second>();
        let turns = figure(cut.speed.get::<revolution_per_minute>(), 3);
        let mut steps = vec![
            step(
                "vs",
                "π d n / 60",
                format!("π · {} mm · {turns} / 60", mm(cut.wheel_diameter)),
                again.rim_speed.get::<meter_per_second>(),
                "m/s",
                KINEMATICS,
            ),
            step("Q", "a b vw", format!("{a} mm · {b} mm · {vw} m/s"), rate, "mm³/s", GRINDING),
            step(
                "h eq",
                "a vw / vs",
                format!("{a} mm · {vw} / {vs}"),
                again.equivalent_chip_thickness.get::<micrometer>(),
                "µm",
                GRINDING,
            ),
        ];
        let (ds, de) = (mm(cut.wheel_diameter), again.equivalent_diameter.get::<meter>() * 1e3);
        let dw = cut.work_diameter.map_or_else(String::new, mm);
        match cut.kind {
            GrindKind::Surface => {}
            GrindKind::External => {
                let numbers = format!("{ds} · {dw} / ({dw} + {ds})");
                steps.push(step("de", "ds dw / (dw + ds)", numbers, de, "mm", GRINDING));
            }
            GrindKind::Internal => {
                let numbers = format!("{ds} · {dw} / ({dw} − {ds})");
                steps.push(step("de", "ds dw / (dw − ds)", numbers, de, "mm", GRINDING));
            }
        }
        if let (Some(grains), Some(ratio), Some(thickness)) =
            (cut.grains, cut.chip_width_ratio, again.chip_thickness)
        {
            let density = figure(grains.get::<per_square_millimeter>(), 4);
            let numbers = format!(
                "√(4 / ({density} /mm² · {}) · {vw} / {vs} · √({a} / {}))",
                figure(ratio, 3),
                figure(de, 4)
            );
            let um = thickness.get::<micrometer>();
            steps.push(step(
                "h m",
                "√(4 / (C r) · vw / vs · √(a / de))",
                numbers,
                um,
                "µm",
                GRINDING,
            ));
        }
        steps.push(step(
            "l c",
            "√(a de)",
            format!("√({a} mm · {} mm)", figure(de, 4)),
            again.contact_length.get::<meter>() * 1e3,
            "mm",
            GRINDING,
        ));
        if let (Some(energy), Some(torque), Some(power)) =
            (cut.specific_energy, again.torque, again.power)
        {
            let u = figure(energy.get::<joule_per_cubic_millimeter>(), 4);
            let watts = power.get::<watt>();
            let numbers = format!("{u} J/mm³ · {} mm³/s", figure(rate, 4));
            steps.push(step("P", "u Q", numbers, watts, "W", GRINDING));
            let numbers = format!("{} W / (2 π · {turns} / 60)", figure(watts, 3));
            steps.push(step("T", "P / ω", numbers, torque.get::<newton_meter>(), "N m", GRINDING));
        }
        Working { steps }
    }
}

/// Specific energy of a job from the force along the rim: `u = F v / Q`.
///
/// # Errors
///
/// [`ErrorKind::OutOfRange`] or [`ErrorKind::NotFinite`] for values not above zero.
///
/// # Source
///
/// Statics; Groover, problem 25.4.
///
/// # Example
///
/// 25 N at 1508 m/min while 1050 mm³ go in a minute: 35.9 J/mm³.
///
/// ```
/// use hubwright::units::{Force, RemovalRate, Velocity, cubic_millimeter_per_second, joule_per_cubic_millimeter, meter_per_second, newton};
/// use hubwright::wheel::specific_energy;
///
/// let u = specific_energy(
///     Force::new::<newton>(25.0),
///     Velocity::new::<meter_per_second>(1508.0 / 60.0),
///     RemovalRate::new::<cubic_millimeter_per_second>(1050.0 / 60.0),
/// )?;
/// assert!((u.get::<joule_per_cubic_millimeter>() - 35.9).abs() < 0.01);
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn specific_energy(
    force: Force,
    rim_speed: Velocity,
    removal_rate: RemovalRate,
) -> Result<SpecificEnergy, Error> {
    let (f, v) = (force.get::<newton>(), rim_speed.get::<meter_per_second>());
    positive("force", f, "N", "25 N")?;
    positive("rim_speed", v, "m/s", "25 m/s")?;
    let rate = removal_rate.get::<cubic_millimeter_per_second>();
    positive("removal_rate", rate, "mm3/s", "17.5 mm3/s")?;
    Ok(SpecificEnergy::new::<joule_per_cubic_millimeter>(f * v / rate))
}

/// Volume of a ring, per length.
fn ring(outside: f64, inside: f64) -> f64 {
    PI / 4.0 * (outside * outside - inside * inside)
}
