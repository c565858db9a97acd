//! Which figures of a seat make sense.

use super::{GREATEST_MISMATCH, Seat};
use crate::error::{Error, ErrorKind};
use crate::units::{
    Angle, Force, Length, Pressure, below, degree, finite, megapascal, newton, positive,
    positive_length, shown_mm, within, zero_or_more,
};

/// Least wall over radius: below it a body gives like a shell, and goes out of round.
const LEAST_WALL: f64 = 0.05;

impl Seat {
    /// Passes figures that make sense.
    pub(super) fn check(&self) -> Result<(), Error> {
        self.hub.check("hub")?;
        self.spindle.check("spindle")?;
        positive_length("small_diameter", self.small_diameter)?;
        within("taper", self.taper, [0.001, 1.0], "", "0.2")?;
        positive_length("length", self.length)?;
        let (small, length) = (shown_mm(self.small_diameter), shown_mm(self.length));
        let span = [0.1 * small, 20.0 * small];
        if !(span[0]..=span[1]).contains(&length) {
            let range = format!("outside 0.1 to 20 times the small diameter of {small}");
            return Err(misplaced(
                "length",
                length,
                range,
                "give the length over which hub and taper engage",
            ));
        }
        let large = shown_mm(self.large_diameter());
        let hub = "give the outside diameter of the hub, which is around the seat";
        self.wall("hub_diameter", self.hub_diameter, large, hub)?;
        positive_length("nut_diameter", self.nut_diameter)?;
        let (nut, face) = (shown_mm(self.nut_diameter), shown_mm(self.hub_diameter));
        if nut <= small * (1.0 + LEAST_WALL / 5.0) || nut > face {
            let range = format!("not on the hub's face, from {small} to {face}");
            let hint =
                "give the outside diameter of the face by which nut or washer bears on the hub";
            return Err(misplaced("nut_diameter", nut, range, hint));
        }
        self.check_steps(large)?;
        zero_or_more("spindle_bore", shown_mm(self.spindle_bore), "mm", "0 mm")?;
        let (bore, most) = (shown_mm(self.spindle_bore), small * (1.0 - LEAST_WALL));
        if bore > most {
            let range = format!("leaves a shell: not up to {most}, small end {small}");
            return Err(misplaced(
                "spindle_bore",
                bore,
                range,
                "give the bore of the spindle, \"0 mm\" for a solid one",
            ));
        }
        for (name, overhang) in ["overhang_small", "overhang_large"].into_iter().zip(self.overhangs)
        {
            zero_or_more(name, shown_mm(overhang), "mm", "15 mm")?;
        }
        for (name, stress) in [("hub_yield", self.hub_yield), ("spindle_yield", self.spindle_yield)]
        {
            stress.map_or(Ok(()), |stress: Pressure| {
                positive(name, stress.get::<megapascal>(), "MPa", "350 MPa")
            })?;
        }
        Ok(())
    }

    fn wall(&self, name: &str, outside: Length, bore: f64, hint: &str) -> Result<(), Error> {
        positive_length(name, outside)?;
        let (given, least) = (shown_mm(outside), bore * (1.0 + LEAST_WALL));
        if given >= least {
            return Ok(());
        }
        let range = format!("thinner than a shell: not from {least}, bore {bore} at the large end");
        Err(misplaced(name, given, range, hint))
    }

    fn check_steps(&self, large: f64) -> Result<(), Error> {
        let (length, mut from) = (shown_mm(self.length), 0.0);
        for (at, step) in self.steps.iter().enumerate() {
            let name = format!("steps[{at}].from");
            let given = shown_mm(step.from);
            finite(&name, given, "12 mm")?;
            let least = length / 20.0;
            if given < from + least || given > length - least {
                let range = format!("not from {} to {}", from + least, length - least);
                let hint = "give steps in order from the small end, none shorter than a twentieth of the length";
                return Err(misplaced(&name, given, range, hint));
            }
            from = given;
            let hint = "give the outside diameter of the hub from this step on";
            self.wall(&format!("steps[{at}].diameter"), step.diameter, large, hint)?;
        }
        Ok(())
    }
}

/// A friction above zero and up to one.
pub(super) fn friction(given: f64) -> Result<(), Error> {
    crate::solid::screw::share("friction", given)
}

/// A force above zero.
pub(super) fn force(argument: &str, force: Force) -> Result<f64, Error> {
    let given = force.get::<newton>();
    positive(argument, given, "N", "8 kN").map(|()| given)
}

/// A mismatch that counts as small.
pub(super) fn mismatch(given: Angle) -> Result<(), Error> {
    let degrees = given.get::<degree>();
    within("mismatch", degrees, [-GREATEST_MISMATCH, GREATEST_MISMATCH], "deg", "0.02 deg")
}

/// A share of the length, above zero and up to one.
pub(super) fn share(given: f64) -> Result<(), Error> {
    positive("share", given, "", "0.75")?;
    within("share", given, [0.0, 1.0], "", "0.75")
}

/// A film of marking paste.
pub(super) fn film(given: Length) -> Result<(), Error> {
    let micrometres = shown_mm(given) * 1e3;
    below("film", micrometres, 100.0, "um", "2 um")
}

pub(super) fn misplaced(argument: &str, given: f64, range: String, hint: &str) -> Error {
    let (argument, hint) = (argument.into(), hint.into());
    ErrorKind::OutOfRange { argument, given, range, unit: "mm", authority: String::new(), hint }
        .into()
}
