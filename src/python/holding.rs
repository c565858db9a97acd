//! Holding a wheel on: part of `hubwright.wheel`.

use pyo3::prelude::*;

use super::nut::{Span, missing};
use super::quantity::{Out, Plain, Q};
use super::rings::found;
use super::strength::both;
use super::thread::ThreadIn;
use super::wheel::Working;
use super::words::{W, WordOut};
use crate::draw::{svg, torque_path};
use crate::error::{Error, ErrorKind};
use crate::joint::Rotation;
use crate::units::{
    Angle, AngularVelocity, Force, Length, Mass, MassDensity, Pressure, Time, Torque, Words,
    figure, meter, newton_meter,
};
use crate::wheel::holding as hold;
use crate::wheel::holding::{
    Answer, Demand, NutThread, Recess, Rubbing, Running, SpinningRing, SpinningWheel, Tightness,
    running,
};

/// Least and greatest of something.
pub(super) type Pair<K> = (Out<K>, Out<K>);

pub(super) fn pair<K>([least, greatest]: [K; 2]) -> Pair<K> {
    (Out(least), Out(greatest))
}

/// An unkeyed nut in one direction of running. Ranges are pairs, least and greatest.
#[pyclass(frozen, module = "hubwright._core")]
pub struct Unscrewing(hold::Unscrewing);

found! {
    Unscrewing(hold::Unscrewing) {
        /// What running does to the nut.
        running: WordOut<Running> = |of| WordOut(of.running);
        /// Torque on the wheel in the hand that loosens: braking, or cutting with run-up; in N m.
        demand: Out<Torque> = |of| Out(of.demand);
        /// What of it reaches the nut, in N m.
        at_nut: Pair<Torque> = |of| pair(of.at_nut);
        /// Torque that its thread holds, in N m.
        holds: Pair<Torque> = |of| pair(of.holds);
        /// Whether start, stop and cutting torque turn it back; `no` is not to say that it will not come loose.
        turns: WordOut<Answer> = |of| WordOut(of.turns);
    }

    fn __repr__(&self) -> String {
        format!("<Unscrewing where running {}: {}>", self.0.running.word(), self.0.turns.word())
    }
}

/// How the loose flange bends under the greatest preload.
#[pyclass(frozen, module = "hubwright._core")]
pub struct Dish(hold::Dish);

found! {
    Dish(hold::Dish) {
        /// Sag at the hole, of a thin plate, in mm.
        thin_sag: Out<Length> = |of| Out(of.sag.at_hole);
        /// Sag at the hole with what shear adds, in mm: times 1 + 0.25 (h / span)², a fit to finite elements.
        sag: Out<Length> = |of| Out(of.sag.with_shear);
        /// Slope of the land, which opens outwards.
        slope: Out<Angle> = |of| Out(of.sag.slope);
        /// How far the rim lifts off, in mm.
        rim_lift: Out<Length> = |of| Out(of.sag.rim_lift);
        /// Depth of the recess less `sag`; below zero the flange touches the wheel at its hole.
        room: Out<Length> = |of| Out(of.room);
        /// What the slope makes over the width of the land, in mm: the blotter has to give it.
        land_tilt: Out<Length> = |of| Out(of.land_tilt);
    }

    fn __repr__(&self) -> String {
        let mm = |length: Length| figure(length.get::<meter>() * 1e3, 4);
        format!("<Dish {} mm, room {} mm>", mm(self.0.sag.with_shear), mm(self.0.room))
    }
}

/// What `holding` found. Ranges are pairs, least and greatest.
#[pyclass(frozen, module = "hubwright._core")]
pub struct Held(pub(super) hold::HoldingFound);

found! {
    Held(hold::HoldingFound) {
        /// Force of the nut, in N.
        preload: Pair<Force> = |of| pair(of.preload);
        /// Pressure on the land, in MPa.
        land_pressure: Pair<Pressure> = |of| pair(of.land_pressure);
        /// Whether it stays within `pressure_limit`; None without one.
        within_pressure: Option<bool> = |of| of.within_pressure();
        /// Torque that one blotter carries by friction, in N m.
        carries_face: Pair<Torque> = |of| pair(of.carries_face);
        /// Torque at which the loose flange slips under the nut, in N m.
        nut_slips: Pair<Torque> = |of| pair(of.nut_slips);
        /// Torque that the thread holds against loosening, in N m; below zero it runs back by itself.
        release: Pair<Torque> = |of| pair(of.release);
        /// Torque that both flanges carry with the loose one keyed, in N m.
        carries_keyed: Pair<Torque> = |of| pair(of.carries_keyed);
        /// Unkeyed, where the torque tightens the nut.
        carries_tightening: Pair<Torque> = |of| pair(of.carries_tightening);
        /// Unkeyed, where it loosens it.
        carries_loosening: Pair<Torque> = |of| pair(of.carries_loosening);
        /// Greatest torque asked: cutting with run-up or braking, in N m.
        asked: Out<Torque> = |of| Out(of.asked);
        /// Torque of running the wheel up, and of braking it.
        inertia: Pair<Torque> = |of| (Out(of.of.demand.run_up), Out(of.of.demand.braking));
        /// `carries_keyed` over `asked`.
        factor_keyed: (f64, f64) = |of| (of.factor_keyed[0], of.factor_keyed[1]);
        /// One face over `asked`: how an unkeyed flange is designed.
        factor_unkeyed: (f64, f64) = |of| (of.factor_unkeyed[0], of.factor_unkeyed[1]);
        /// Preload that `factor` asks for, keyed and unkeyed, in N; None without one.
        preload_asked: Option<Pair<Force>> = |of| of.preload_asked.map(pair);
        /// Pressure on the land below which the wheel slips at `factor`, keyed and unkeyed, in MPa.
        pressure_asked: Option<Pair<Pressure>> = |of| of.pressure_asked.map(pair);
        /// Whether a slipping loose flange takes the nut along whatever the torque.
        takes_along: WordOut<Answer> = |of| WordOut(of.takes_along);
        /// The unkeyed nut: as running takes it, or both ways where that was not said.
        unscrewing: Vec<Unscrewing> = |of| of.asked_unscrewing().copied().map(Unscrewing).collect();
        /// How the loose flange bends; None unless asked for.
        dish: Option<Dish> = |of| of.dish.map(Dish);
        /// What holds a keyed nut over what its own inertia asks; None without its mass.
        keyed_margin: Option<f64> = |of| of.keyed_margin;
        /// What was found, a sentence each.
        says: Vec<String> = |of| of.says();
    }

    /// The steps at the least frictions; the last one's result is the least of `carries_loosening` in N m.
    fn working(&self) -> Working {
        Working(self.0.working())
    }

    /// The path of torque as SVG text.
    fn svg(&self) -> String {
        svg(&torque_path(&self.0))
    }

    fn __repr__(&self) -> String {
        let [least, most] = self.0.carries_face.map(|torque| figure(torque.get::<newton_meter>(), 2));
        let turns: Vec<_> = self.0.asked_unscrewing().map(|one| one.turns.word()).collect();
        format!("<Held {least} to {most} N m a face; nut turned back: {}>", turns.join(" or "))
    }
}

fn span(range: Span, argument: &str) -> Result<[f64; 2], Error> {
    range.named(argument)
}

/// What holds a wheel on between two flanges: preload, pressure on the land, friction that drives the wheel, how the loose
/// flange dishes, and whether anything turns the nut back. Frictions are ranges, and so is what follows.
///
/// A pass says that start, stop and cutting torque do not turn the nut, never that it will not come loose: a loose flange can
/// walk under a turning load, and vibration and creep of the blotters eat preload. Key it.
///
/// Args:
///     thread: Thread of the nut, like `"M16x2"`; its hand counts with `rotation`.
///     thread_friction: Friction in it, above 0 and up to 1: a number, or (least, greatest).
///     face_friction: Friction between nut, or the washer that turns with it, and loose flange.
///     face_inside: Inside diameter of that face.
///     face_outside: Outside diameter of that face.
///     land_inside: Inside diameter of the flanges' lands; of two unlike ones give the narrower.
///     land_outside: Outside diameter of them.
///     blotter_friction: Friction of flange and wheel through a blotter.
///     cutting_torque: Greatest torque of cutting, zero or above.
///     torque: Torque on the nut, above zero; or instead
///     preload: force that it clamps with, taken as exact: give the least you are sure of.
///     diameter: Diameter of the wheel, with
///     thickness: its thickness,
///     density: its density,
///     speed: its speed, and
///     hole: its hole ("0 mm" unless given), for the torque of its inertia.
///     run_up_time: Time from rest to speed, with the wheel; without it run-up is not in what is asked, and an unkeyed nut
///         that it would loosen is not told to hold.
///     stop_time: Time from speed to rest, likewise.
///     rotation: Which way the spindle runs, seen from the nut; without it, or with `both`, both ways are told.
///     loose_share: Share of the torque through the loose flange, 0 to 1; 0.5 (both sides alike) to 1 (the other has
///         slipped) unless given.
///     factor: Factor against slipping asked for, 1 or more.
///     pressure_limit: Greatest pressure allowed on the land.
///     flange_hole: Hole of the loose flange, with
///     flange_thickness: thickness of its plate behind the recess,
///     flange_modulus: modulus of elasticity,
///     flange_poisson: Poisson's ratio, and
///     recess: depth of the recess, for how far it dishes.
///     nut_mass: Mass of the nut, with the wheel, `speed` and one of the times, for a keyed flange.
///     nut_outside: Outside diameter of the nut, with `nut_mass`; its inside is the thread's pitch diameter.
///
/// Returns:
///     Held: `.preload`, `.land_pressure`, `.factor_keyed`, `.factor_unkeyed`, `.takes_along`, `.unscrewing`, `.dish`,
///     `.says`, `.svg()` and more.
///
/// Raises:
///     MissingError: Neither torque nor preload, or one of several arguments that belong together.
///     UnitError, TextError: Not a quantity of its kind, or torque and preload both.
///     OutOfRangeError: A friction, size, time or torque that makes no sense.
///
/// Source: Shigley, power screws and disc clutches; Timoshenko and Woinowsky-Krieger for the flange.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> found = hw.wheel.holding(
///     ...     thread="M16x2", thread_friction=0.14, face_friction=0.12, face_inside="17 mm", face_outside="25 mm",
///     ...     land_inside="60 mm", land_outside="76 mm", blotter_friction=(0.15, 0.3), cutting_torque="14 N m",
///     ...     preload="9 kN", diameter="200 mm", hole="32 mm", thickness="20 mm", density="2250 kg/m3",
///     ...     speed="3000 rpm", stop_time="0.5 s", rotation="anticlockwise",
///     ... )
///     >>> found
///     <Held 46.11 to 92.22 N m a face; nut turned back: no>
///     >>> found.says[0]
///     'If the loose flange slips, it takes the nut along whatever the torque: 0.12 × 10.5 = 1.3 mm at the face beats 0.9 mm at the thread.'
#[pyfunction]
#[pyo3(signature = (*, thread, thread_friction, face_friction, face_inside, face_outside, land_inside, land_outside, blotter_friction, cutting_torque, torque = None, preload = None, diameter = None, thickness = None, density = None, speed = None, hole = None, run_up_time = None, stop_time = None, rotation = None, loose_share = None, factor = None, pressure_limit = None, flange_hole = None, flange_thickness = None, flange_modulus = None, flange_poisson = None, recess = None, nut_mass = None, nut_outside = None))]
#[allow(clippy::too_many_arguments, reason = "one keyword a figure")]
#[allow(clippy::too_many_lines, reason = "one argument after the other")]
pub fn holding(
    thread: ThreadIn,
    thread_friction: Span,
    face_friction: Span,
    face_inside: Q<Length>,
    face_outside: Q<Length>,
    land_inside: Q<Length>,
    land_outside: Q<Length>,
    blotter_friction: Span,
    cutting_torque: Q<Torque>,
    torque: Option<Q<Torque>>,
    preload: Option<Q<Force>>,
    diameter: Option<Q<Length>>,
    thickness: Option<Q<Length>>,
    density: Option<Q<MassDensity>>,
    speed: Option<Q<AngularVelocity>>,
    hole: Option<Q<Length>>,
    run_up_time: Option<Q<Time>>,
    stop_time: Option<Q<Time>>,
    rotation: Option<W<Rotation>>,
    loose_share: Option<Span>,
    factor: Option<Plain>,
    pressure_limit: Option<Q<Pressure>>,
    flange_hole: Option<Q<Length>>,
    flange_thickness: Option<Q<Length>>,
    flange_modulus: Option<Q<Pressure>>,
    flange_poisson: Option<Plain>,
    recess: Option<Q<Length>>,
    nut_mass: Option<Q<Mass>>,
    nut_outside: Option<Q<Length>>,
) -> PyResult<Held> {
    let thread = thread.named("thread")?;
    let rubbing = |inside: Q<Length>, outside: Q<Length>, friction: Span, name: &str| {
        Ok::<_, Error>(Rubbing {
            inside: inside.named(&format!("{name}_inside"))?,
            outside: outside.named(&format!("{name}_outside"))?,
            friction: span(
                friction,
                &format!("{}_friction", if name == "land" { "blotter" } else { name }),
            )?,
        })
    };
    let nut = NutThread {
        pitch_diameter: thread.pitch_diameter,
        lead: thread.pitch,
        half_angle: thread.half_angle(),
        friction: span(thread_friction, "thread_friction")?,
    };
    let face = rubbing(face_inside, face_outside, face_friction, "face")?;
    let land = rubbing(land_inside, land_outside, blotter_friction, "land")?;
    let tight = match (torque, preload) {
        (Some(torque), None) => Tightness::Torque(torque.named("torque")?),
        (None, Some(force)) => Tightness::Preload([force.named("preload")?; 2]),
        (None, None) => {
            let why = "without it, or a preload, nothing follows";
            return Err(missing("torque", why, "give torque=\"40 N m\" or preload=\"8 kN\""));
        }
        (Some(_), Some(_)) => {
            return Err(Error::from(ErrorKind::WrongUnit {
                argument: "preload".into(),
                given: "a force".into(),
                kind: "thing to give beside `torque`",
                why: "each follows from the other",
                hint: "leave one of the two out".into(),
            })
            .into());
        }
    };
    let speed = speed.map(|speed| speed.named("speed")).transpose()?;
    let times = [("run_up_time", run_up_time), ("stop_time", stop_time)];
    let [run_up, stop] = times.map(|(name, time)| time.map(|time| time.named(name)).transpose());
    let (run_up, stop) = (run_up?, stop?);
    let speed_for = |given: &str| {
        speed.ok_or_else(|| {
            let why = format!("`{given}` is given, and inertia takes a speed");
            missing("speed", &why, "give the greatest speed of the spindle, like \"2850 rpm\"")
        })
    };
    let wheel = match (diameter, thickness, density) {
        (Some(diameter), Some(thickness), Some(density)) => Some(SpinningWheel {
            diameter: diameter.named("diameter")?,
            hole: hole.map_or(Ok(Length::default()), |hole| hole.named("hole"))?,
            thickness: thickness.named("thickness")?,
            density: density.named("density")?,
        }),
        (None, None, None) if hole.is_none() => None,
        (diameter, thickness, _) => {
            let argument = match (&diameter, &thickness) {
                (None, _) => "diameter",
                (_, None) => "thickness",
                _ => "density",
            };
            let hint = "give diameter, thickness and density, or none of them";
            return Err(missing(argument, "a wheel's inertia takes all three", hint));
        }
    };
    let asks = |time: Option<Time>, name: &str| match (time, wheel) {
        (None, _) => Ok(Torque::default()),
        (Some(_), None) => {
            let why = format!("`{name}` is given, and inertia takes the wheel");
            Err(missing("diameter", &why, "give diameter, thickness and density"))
        }
        (Some(time), Some(wheel)) => wheel.torque(speed_for(name)?, time).map_err(|error| {
            if error.argument() == Some("time") { error.named(name) } else { error }.into()
        }),
    };
    let demand = Demand {
        cutting: cutting_torque.named("cutting_torque")?,
        run_up: asks(run_up, "run_up_time")?,
        braking: asks(stop, "stop_time")?,
    };
    let mut of = hold::Holding::new(nut, face, land, tight, demand)
        .with_not_known(run_up.is_none(), stop.is_none());
    if let Some(rotation) = rotation {
        match rotation.named("rotation")? {
            Rotation::Both => {}
            one => of = of.with_running(running(thread.left_hand, one == Rotation::Clockwise)),
        }
    }
    if let Some(share) = loose_share {
        of = of.with_loose_share(span(share, "loose_share")?);
    }
    if let Some(factor) = factor {
        of = of.with_factor(factor.named("factor")?);
    }
    if let Some(limit) = pressure_limit {
        of = of.with_pressure_limit(limit.named("pressure_limit")?);
    }
    match (flange_hole, flange_thickness, flange_modulus, flange_poisson, recess) {
        (Some(hole), Some(thickness), Some(modulus), Some(poisson), Some(depth)) => {
            of = of.with_recess(Recess {
                hole: hole.named("flange_hole")?,
                thickness: thickness.named("flange_thickness")?,
                modulus: modulus.named("flange_modulus")?,
                poisson: poisson.named("flange_poisson")?,
                depth: depth.named("recess")?,
            });
        }
        (None, None, None, None, None) => {}
        (hole, thickness, modulus, poisson, _) => {
            let argument = match (&hole, &thickness, &modulus, &poisson) {
                (None, ..) => "flange_hole",
                (_, None, ..) => "flange_thickness",
                (_, _, None, _) => "flange_modulus",
                (.., None) => "flange_poisson",
                _ => "recess",
            };
            let hint = "give flange_hole, flange_thickness, flange_modulus, flange_poisson and recess, or none of them";
            return Err(missing(argument, "how a flange dishes takes all five", hint));
        }
    }
    if let Some((mass, outside)) = both(("nut_mass", nut_mass), ("nut_outside", nut_outside))? {
        // The harder of the two.
        let shorter = match (stop, run_up) {
            (Some(stop), Some(run_up)) => Some(if run_up < stop { run_up } else { stop }),
            (stop, run_up) => stop.or(run_up),
        };
        let Some(time) = shorter else {
            let why = "`nut_mass` is given, and its inertia takes a time";
            return Err(missing(
                "stop_time",
                why,
                "give the time from speed to rest, like \"3 s\"",
            ));
        };
        let ring = SpinningRing {
            mass: mass.named("nut_mass")?,
            inside: thread.pitch_diameter,
            outside: outside.named("nut_outside")?,
        };
        of = of.with_nut_spin(ring.torque(speed_for("nut_mass")?, time)?);
    }
    Ok(Held(of.solve()?))
}
