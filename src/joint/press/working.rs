//! The steps of a press fit.

use super::{PressFitFound, SMOOTHING, Smoothing};
use crate::solid::rings::ROTATING_RINGS;
use crate::units::{
    Length, Pressure, figure, gigapascal, kelvin, megapascal, meter, micrometer, millimeter,
    newton_meter, pascal, radian_per_second,
};
use crate::working::{Step, Working};

impl PressFitFound {
    /// The steps, recomputed. The last one's result is `torque` in N m; without length and
    /// friction it is the pressure at the greatest interference, in MPa.
    pub fn working(&self) -> Working {
        let Ok(again) = self.fit.solve() else { return Working::default() };
        let fit = again.fit;
        let mut steps = Vec::new();
        let mut step = |symbol, relation, numbers, result, unit, source| {
            steps.push(Step { symbol, relation, numbers, result, unit, source });
        };
        let um = |length: Length| length.get::<micrometer>();
        let mm = |length: Length| figure(length.get::<millimeter>(), 4);
        if let Some(Smoothing { factor, shaft_roughness, hub_roughness }) = fit.smoothing {
            let ends = [
                ("U least", fit.least_interference, again.least),
                ("U greatest", fit.greatest_interference, again.greatest),
            ];
            for (symbol, measured, found) in ends {
                let numbers = format!(
                    "{} um - {} · ({} + {}) um",
                    figure(um(measured), 4),
                    figure(factor, 4),
                    figure(um(shaft_roughness), 3),
                    figure(um(hub_roughness), 3)
                );
                let relation = "U measured - c (Rz shaft + Rz hub)";
                step(symbol, relation, numbers, um(found.interference), "um", SMOOTHING);
            }
        }
        let give = |modulus: Pressure, [inside, outside]: [Length; 2], poisson: f64| {
            let [a, b, r] = [inside, outside, fit.diameter].map(|d| d.get::<meter>() / 2.0);
            let ratio = (b * b + a * a) / ((b - a) * (b + a));
            r / modulus.get::<pascal>() * (ratio + poisson) * 1e12
        };
        for (symbol, relation, part, span, poisson) in [
            (
                "cs",
                "R / E [(R² + a²) / (R² - a²) - ν]",
                fit.shaft,
                [fit.shaft_bore, fit.diameter],
                -fit.shaft.poisson,
            ),
            (
                "ch",
                "R / E [(b² + R²) / (b² - R²) + ν]",
                fit.hub,
                [fit.diameter, fit.hub_diameter],
                fit.hub.poisson,
            ),
        ] {
            let numbers = format!(
                "on diameter {} mm, from {} to {} mm, E {} GPa, ν {}",
                mm(fit.diameter),
                mm(span[0]),
                mm(span[1]),
                figure(part.modulus.get::<gigapascal>(), 3),
                figure(part.poisson, 4)
            );
            step(
                symbol,
                relation,
                numbers,
                give(part.modulus, span, poisson),
                "um/MPa",
                ROTATING_RINGS,
            );
        }
        for (symbol, found) in [("p least", again.least), ("p greatest", again.greatest)] {
            let numbers = format!(
                "U {} um, {} rad/s, warmer by {} and {} K",
                figure(um(found.interference), 4),
                figure(fit.speed.get::<radian_per_second>(), 4),
                figure(fit.shaft_rise.get::<kelvin>(), 2),
                figure(fit.hub_rise.get::<kelvin>(), 2)
            );
            let relation = "max(0, [U/2 - (uh - us) - R (αh ΔTh - αs ΔTs)] / (cs + ch))";
            let pressure = found.pressure.get::<megapascal>();
            step(symbol, relation, numbers, pressure, "MPa", ROTATING_RINGS);
        }
        if let (Some((length, friction)), Some(torque)) = (fit.grip, again.torque) {
            let held = again.least.pressure.min(again.least_at_rest.pressure);
            let numbers = format!(
                "2 π · ({} mm / 2)² · {} mm · {} · {} MPa",
                mm(fit.diameter),
                mm(length),
                figure(friction, 4),
                figure(held.get::<megapascal>(), 4)
            );
            let torque = torque.get::<newton_meter>();
            step("T", "2 π R² L μ p", numbers, torque, "N m", ROTATING_RINGS);
        }
        Working { steps }
    }
}
