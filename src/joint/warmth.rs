//! Sizes measured warm or cold, brought to 20 °C.

use crate::error::{Error, ErrorKind};
use crate::source::{Source, Status};
use crate::tables::expansion::{
    ALUMINIUM, BRASS, DUCTILE_IRON, EXPANSIONS, GREY_IRON, Range, STEEL,
};
use crate::units::{
    Length, TemperatureCoefficient, ThermodynamicTemperature, degree_celsius, figure, meter,
    millimeter, per_kelvin, words,
};
use crate::working::{Step, Working};

/// Sizes hold at 20 °C.
pub const REFERENCE: Source =
    Source::new("iso1", "ISO 1", "", "reference temperature 20 °C", Status::Memory);
/// Free linear expansion.
pub const LINEAR: Source =
    Source::new("linear-expansion", "linear thermal expansion", "", "", Status::Computed);

/// How far a coefficient for room temperature is trusted, in °C: common practice, no source.
const TEMPERATURES: (f64, f64) = (-20.0, 60.0);
/// Expansions outside of this are slips of the pen, in µm/m/K; plastics reach some 200.
const EXPANSIONS_TAKEN: (f64, f64) = (0.0, 500.0);

words! {
    /// Metals whose expansion is published.
    Metal, "metal" {
        /// Plain carbon and low alloy steel.
        Steel = "steel" [];
        /// Grey cast iron.
        GreyIron = "grey cast iron" ["cast iron", "gray cast iron", "grey iron", "gray iron"];
        /// Ductile cast iron.
        DuctileIron = "ductile cast iron" ["ductile iron", "nodular cast iron", "nodular iron"];
        /// Aluminium alloy.
        Aluminium = "aluminium" ["aluminum"];
        /// Brass.
        Brass = "brass" [];
    }
}

/// Published expansion of a metal; which figure of the range to take is the user's choice.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Expansion {
    /// The metal.
    pub metal: Metal,
    /// Least of the published figures.
    pub least: TemperatureCoefficient,
    /// Greatest of the published figures.
    pub most: TemperatureCoefficient,
    /// Where they stand.
    pub source: Source,
}

/// Published range of a metal's expansion at room temperature.
///
/// # Source
///
/// Callister and Rethwisch, 3rd edition, Table B.6: steels 11.3 to 12.3 µm/m/K, grey
/// irons 11.4, ductile irons 10.6 to 11.2, aluminium alloys 21.5 to 23.6, brasses
/// 19.9 to 20.5.
///
/// # Example
///
/// ```
/// use hubwright::joint::{Metal, published_expansion};
/// use hubwright::units::per_kelvin;
///
/// let steel = published_expansion(Metal::Steel);
/// assert!((steel.least.get::<per_kelvin>() - 11.3e-6).abs() < 1e-18);
/// assert!((steel.most.get::<per_kelvin>() - 12.3e-6).abs() < 1e-18);
/// ```
pub fn published_expansion(metal: Metal) -> Expansion {
    let (least, most): Range = match metal {
        Metal::Steel => STEEL,
        Metal::GreyIron => GREY_IRON,
        Metal::DuctileIron => DUCTILE_IRON,
        Metal::Aluminium => ALUMINIUM,
        Metal::Brass => BRASS,
    };
    let of = |um: f64| TemperatureCoefficient::new::<per_kelvin>(um / 1e6);
    Expansion { metal, least: of(least), most: of(most), source: EXPANSIONS }
}

/// What [`at_20_c`] found.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct At20 {
    /// Size as measured.
    pub measured: Length,
    /// Temperature of the part.
    pub temperature: ThermodynamicTemperature,
    /// Expansion of the part.
    pub expansion: TemperatureCoefficient,
    /// Expansion of the instrument, where it was as warm as the part.
    pub instrument_expansion: Option<TemperatureCoefficient>,
    /// Size at 20 °C.
    pub size: Length,
}

/// The size that a part has at 20 °C, at which limits hold.
///
/// `L₂₀ = L · (1 + αᵢ (t − 20 °C)) / (1 + α (t − 20 °C))`, with `L` the reading, `t`
/// the temperature of the part and `α` its expansion. With `instrument_expansion`,
/// `αᵢ`, the instrument was as warm as the part and reads right at 20 °C: steel
/// measured with steel then needs no correction. Without it the reading is taken
/// for the true size at `t`, as from an instrument that is at 20 °C or corrects itself.
///
/// Range: −20 to 60 °C, where a coefficient for room temperature serves (common
/// practice, no source).
///
/// # Errors
///
/// [`ErrorKind::NotFinite`] for NaN and infinite arguments, [`ErrorKind::OutOfRange`] for
/// a size that is not above zero, a temperature outside −20 to 60 °C or an
/// expansion outside 0 to 500 µm/m/K.
///
/// # Source
///
/// ISO 1 for 20 °C (from memory); linear thermal expansion.
///
/// # Example
///
/// An aluminium hub that measures 40.010 mm at 28 °C is 2.4 µm above 40 mm at
/// 20 °C, by 23.6 µm/m/K.
///
/// ```
/// use hubwright::joint::at_20_c;
/// use hubwright::units::{
///     Length, TemperatureCoefficient, ThermodynamicTemperature, degree_celsius, millimeter, per_kelvin,
/// };
///
/// let found = at_20_c(
///     Length::new::<millimeter>(40.010),
///     ThermodynamicTemperature::new::<degree_celsius>(28.0),
///     TemperatureCoefficient::new::<per_kelvin>(23.6e-6),
///     None,
/// )?;
/// assert!((found.size.get::<millimeter>() - 40.00245).abs() < 1e-5);
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn at_20_c(
    measured: Length,
    temperature: ThermodynamicTemperature,
    expansion: TemperatureCoefficient,
    instrument_expansion: Option<TemperatureCoefficient>,
) -> Result<At20, Error> {
    let metres = measured.get::<meter>();
    finite("measured", metres, "20 mm")?;
    if metres <= 0.0 {
        let range = "not above 0".into();
        return Err(outside("measured", metres * 1e3, range, "mm", "give a size like \"20 mm\""));
    }
    let celsius = temperature.get::<degree_celsius>();
    finite("temperature", celsius, "23.5 °C")?;
    let (least, most) = TEMPERATURES;
    if celsius < least || celsius > most {
        let range = format!("outside {least} to {most}");
        let hint = "give what the thermometer shows, like \"23.5 °C\", not a difference";
        return Err(outside("temperature", celsius, range, "°C", hint));
    }
    sensible("expansion", expansion)?;
    if let Some(instrument) = instrument_expansion {
        sensible("instrument_expansion", instrument)?;
    }
    let size = corrected(measured, temperature, expansion, instrument_expansion);
    Ok(At20 { measured, temperature, expansion, instrument_expansion, size })
}

/// How much warmer than 20 °C, in K; nothing at all for a reading of `20 °C`.
fn warmer(temperature: ThermodynamicTemperature) -> f64 {
    let reference = ThermodynamicTemperature::new::<degree_celsius>(20.0);
    temperature.value - reference.value
}

/// `1 + α (t − 20 °C)`.
fn growth(expansion: TemperatureCoefficient, temperature: ThermodynamicTemperature) -> f64 {
    1.0 + expansion.get::<per_kelvin>() * warmer(temperature)
}

fn corrected(
    measured: Length,
    temperature: ThermodynamicTemperature,
    expansion: TemperatureCoefficient,
    instrument: Option<TemperatureCoefficient>,
) -> Length {
    let instrument = instrument.map_or(1.0, |instrument| growth(instrument, temperature));
    measured * (instrument / growth(expansion, temperature))
}

impl At20 {
    /// The steps, recomputed; the last one's result is `size` in mm.
    pub fn working(&self) -> Working {
        let Self { measured, temperature, expansion, instrument_expansion, .. } = *self;
        let t = temperature.get::<degree_celsius>();
        let mut steps = vec![Step {
            symbol: "Δt",
            relation: "t − 20 °C",
            numbers: format!("{} °C − 20 °C", figure(t, 3)),
            result: warmer(temperature),
            unit: "K",
            source: REFERENCE,
        }];
        let grows = |symbol, relation, expansion: TemperatureCoefficient| Step {
            symbol,
            relation,
            numbers: format!(
                "1 + {} µm/m/K · {} K",
                figure(expansion.get::<per_kelvin>() * 1e6, 4),
                figure(warmer(temperature), 3)
            ),
            result: growth(expansion, temperature),
            unit: "",
            source: LINEAR,
        };
        steps.push(grows("growth of the part", "1 + α Δt", expansion));
        let mut relation = "L / growth of the part";
        if let Some(instrument) = instrument_expansion {
            steps.push(grows("growth of the instrument", "1 + αᵢ Δt", instrument));
            relation = "L · growth of the instrument / growth of the part";
        }
        let size = corrected(measured, temperature, expansion, instrument_expansion);
        let factors: Vec<_> = steps[1..].iter().rev().map(|step| figure(step.result, 9)).collect();
        steps.push(Step {
            symbol: "L₂₀",
            relation,
            numbers: match instrument_expansion {
                Some(_) => format!("{} mm · {}", millimetres(measured), factors.join(" / ")),
                None => format!("{} mm / {}", millimetres(measured), factors.join(" / ")),
            },
            result: size.get::<millimeter>(),
            unit: "mm",
            source: LINEAR,
        });
        Working { steps }
    }
}

fn millimetres(size: Length) -> String {
    figure(size.get::<millimeter>(), 6)
}

fn finite(argument: &str, given: f64, example: &'static str) -> Result<(), Error> {
    if given.is_finite() {
        return Ok(());
    }
    Err(ErrorKind::NotFinite { argument: argument.into(), given, example }.into())
}

fn sensible(argument: &str, expansion: TemperatureCoefficient) -> Result<(), Error> {
    let given = expansion.get::<per_kelvin>() * 1e6;
    finite(argument, given, "11.5 um/m/K")?;
    let (least, most) = EXPANSIONS_TAKEN;
    if given >= least && given <= most {
        return Ok(());
    }
    let range = format!("outside {least} to {most}");
    Err(outside(argument, given, range, "um/m/K", "steel has some \"11.5 um/m/K\""))
}

fn outside(argument: &str, given: f64, range: String, unit: &'static str, hint: &str) -> Error {
    let (argument, hint) = (argument.into(), hint.into());
    ErrorKind::OutOfRange { argument, given, range, unit, authority: String::new(), hint }.into()
}
