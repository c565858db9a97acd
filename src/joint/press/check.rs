//! Which figures of a press fit make sense.

use super::{PressFit, Smoothing};
use crate::error::{Error, ErrorKind};
use crate::units::{
    finite, kelvin, megapascal, micrometer, per_kelvin, positive, positive_length, shown_mm,
    within, zero_or_more,
};

impl PressFit {
    /// Passes figures that make sense.
    pub(super) fn check(&self) -> Result<(), Error> {
        self.shaft.check("shaft")?;
        self.hub.check("hub")?;
        positive_length("diameter", self.diameter)?;
        let d = shown_mm(self.diameter);
        zero_or_more("shaft_bore", shown_mm(self.shaft_bore), "mm", "0 mm")?;
        if self.shaft_bore >= self.diameter {
            let bore = shown_mm(self.shaft_bore);
            let hint = "give the bore of the shaft, \"0 mm\" for a solid one";
            return Err(misplaced("shaft_bore", bore, format!("not below the joint's {d}"), hint));
        }
        positive_length("hub_diameter", self.hub_diameter)?;
        if self.hub_diameter <= self.diameter {
            let outside = shown_mm(self.hub_diameter);
            let hint = "give the outside diameter of the hub, which is around the joint";
            return Err(misplaced(
                "hub_diameter",
                outside,
                format!("not above the joint's {d}"),
                hint,
            ));
        }
        let micrometres = [self.least_interference, self.greatest_interference]
            .map(|interference| shown_mm(interference) * 1e3);
        for (name, given) in ["least_interference", "greatest_interference"].iter().zip(micrometres)
        {
            finite(name, given, "20 um")?;
            within(name, given, [0.0, d * 100.0], "um", "20 um").map_err(|mut error| {
                error.set_hint(
                    "interference is how much larger the shaft is than the bore, on diameter; give 0 \
                     where the fit can also be a clearance"
                        .into(),
                );
                error
            })?;
        }
        if micrometres[0] > micrometres[1] {
            let hint = "give the least interference first: smallest shaft in the largest bore";
            let range = format!("above the greatest, {} um", micrometres[1]);
            return Err(ErrorKind::OutOfRange {
                argument: "least_interference".into(),
                given: micrometres[0],
                range,
                unit: "um",
                authority: String::new(),
                hint: hint.into(),
            }
            .into());
        }
        if let Some(Smoothing { factor, shaft_roughness, hub_roughness }) = self.smoothing {
            within("smoothing", factor, [0.0, 2.0], "", "0.8")?;
            for (name, roughness) in
                [("shaft_roughness", shaft_roughness), ("hub_roughness", hub_roughness)]
            {
                zero_or_more(name, roughness.get::<micrometer>(), "um", "6.3 um")?;
            }
        }
        if let Some((length, friction)) = self.grip {
            positive_length("length", length)?;
            within("friction", friction, [0.0, 2.0], "", "0.12")?;
        }
        for (name, stress) in [("shaft_yield", self.shaft_yield), ("hub_yield", self.hub_yield)] {
            if let Some(stress) = stress {
                positive(name, stress.get::<megapascal>(), "MPa", "300 MPa")?;
            }
        }
        if let Some(clearance) = self.clearance {
            zero_or_more("clearance", clearance.get::<micrometer>(), "um", "30 um")?;
            match self.hub.expansion {
                Some(expansion) => {
                    positive(
                        "hub.expansion",
                        expansion.get::<per_kelvin>() * 1e6,
                        "um/m/K",
                        "11.5 um/m/K",
                    )?;
                }
                None => return Err(missing("hub.expansion", "heating the hub is asked about")),
            }
        }
        if let Some(contraction) = self.cold_contraction {
            positive(
                "cold_contraction",
                contraction.get::<per_kelvin>() * 1e6,
                "um/m/K",
                "8.5 um/m/K",
            )?;
        }
        for (name, rise, part) in
            [("shaft", self.shaft_rise, &self.shaft), ("hub", self.hub_rise, &self.hub)]
        {
            let kelvins = rise.get::<kelvin>();
            finite(&format!("{name}_rise"), kelvins, "15 K")?;
            if kelvins != 0.0 && part.expansion.is_none() {
                return Err(missing(&format!("{name}.expansion"), "the part gets warmer"));
            }
        }
        Ok(())
    }
}

pub(super) fn missing(argument: &str, why: &str) -> Error {
    ErrorKind::Missing {
        argument: argument.into(),
        why: why.into(),
        hint: "give the material its thermal expansion, like \"11.5 um/m/K\"".into(),
    }
    .into()
}

pub(super) fn misplaced(argument: &str, given: f64, range: String, hint: &str) -> Error {
    let (argument, hint) = (argument.into(), hint.into());
    let (unit, authority) = ("mm", String::new());
    ErrorKind::OutOfRange { argument, given, range, unit, authority, hint }.into()
}
