//! Where unbalance comes from: play, run-out, slots, keys, holes and lumps, and what they add up to.

use std::f64::consts::PI;

use super::mass_in_kg;
use crate::error::{Error, ErrorKind};
use crate::solid::UnbalanceVector;
use crate::solid::rotor::{ROTOR, bore_slot, shaft_slot};
use crate::units::{
    Angle, Length, Mass, MassDensity, Unbalance, below, degree, figure, finite, gram_millimeter,
    kilogram_meter, kilogram_per_cubic_meter, meter, positive, positive_length, radian, shown_mm,
    zero_or_more,
};
use crate::working::{Step, Working};

/// One cause of unbalance: how much, and where it makes the rotor heavy.
///
/// # Errors
///
/// [`ErrorKind::OutOfRange`] or [`ErrorKind::NotFinite`] for sizes, masses and densities not above
/// zero (clearance and run-out: below zero), and for a slot that its bore has no room for.
///
/// # Source
///
/// Statics and geometry.
///
/// # Example
///
/// A key slot of 4 × 1.8 mm, 18 mm long, in the 22 mm bore of a steel hub makes it heavy on the other
/// side by 12.5 g mm.
///
/// ```
/// use hubwright::units::{Angle, Length, MassDensity, degree, gram_millimeter, kilogram_per_cubic_meter, millimeter};
/// use hubwright::wheel::HeavySpot;
///
/// let mm = Length::new::<millimeter>;
/// let steel = MassDensity::new::<kilogram_per_cubic_meter>(7850.0);
/// let slot = HeavySpot::hub_slot(mm(22.0), mm(4.0), mm(1.8), mm(18.0), steel)?
///     .at(Angle::new::<degree>(90.0))?;
/// assert!((slot.unbalance.get::<gram_millimeter>() - 12.48).abs() < 0.01);
/// assert!((slot.angle.expect("given").get::<degree>() - 270.0).abs() < 1e-9);
/// # Ok::<(), hubwright::Error>(())
/// ```
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub struct HeavySpot {
    /// What it is.
    pub name: &'static str,
    /// How much.
    pub unbalance: Unbalance,
    /// Where it makes the rotor heavy; `None` where it may be anywhere.
    pub angle: Option<Angle>,
    /// Whether something is missing there, so that the rotor is heavy opposite.
    pub missing: bool,
    /// The sum that gave `unbalance`.
    numbers: String,
    /// In symbols.
    relation: &'static str,
}

fn kg(density: MassDensity) -> Result<f64, Error> {
    let density = density.get::<kilogram_per_cubic_meter>();
    positive("density", density, "kg/m3", "7850 kg/m3")?;
    Ok(density)
}

fn mm(length: Length) -> String {
    figure(shown_mm(length), 4)
}

impl HeavySpot {
    fn of(name: &'static str, kgm: f64, relation: &'static str, numbers: String) -> Self {
        let unbalance = Unbalance::new::<kilogram_meter>(kgm);
        Self { name, unbalance, angle: None, missing: false, numbers, relation }
    }

    /// A wheel that hangs to one side of its clearance, given on diameter: `m c / 2`.
    ///
    /// # Errors
    ///
    /// As described on the type.
    pub fn clearance(mass: Mass, clearance: Length) -> Result<Self, Error> {
        let kg = mass_in_kg("mass", mass)?;
        zero_or_more("clearance", shown_mm(clearance), "mm", "0.03 mm")?;
        let numbers = format!("{} kg · {} mm / 2", figure(kg, 4), mm(clearance));
        Ok(Self::of("clearance", kg * clearance.get::<meter>() / 2.0, "m c / 2", numbers))
    }

    /// A mass on a seat that runs out, total reading: `m t / 2`.
    ///
    /// # Errors
    ///
    /// As described on the type.
    pub fn run_out(mass: Mass, run_out: Length) -> Result<Self, Error> {
        let kg = mass_in_kg("mass", mass)?;
        zero_or_more("run_out", shown_mm(run_out), "mm", "0.01 mm")?;
        let numbers = format!("{} kg · {} mm / 2", figure(kg, 4), mm(run_out));
        Ok(Self::of("run-out", kg * run_out.get::<meter>() / 2.0, "m t / 2", numbers))
    }

    /// A key slot in a bore, with a flat bottom and its depth at the middle, as it stands empty.
    ///
    /// # Errors
    ///
    /// As described on the type.
    pub fn hub_slot(
        bore: Length,
        width: Length,
        depth: Length,
        length: Length,
        density: MassDensity,
    ) -> Result<Self, Error> {
        positive_length("bore", bore)?;
        Self::slot(
            "key slot in the bore",
            bore_slot,
            "ρ L [b (2 R t + t²) / 2 + b³ / 24]",
            bore,
            width,
            depth,
            length,
            density,
        )
    }

    /// A key slot in a shaft or taper, with a flat bottom and its depth at the middle, as it stands empty.
    ///
    /// # Errors
    ///
    /// As described on the type.
    pub fn shaft_slot(
        diameter: Length,
        width: Length,
        depth: Length,
        length: Length,
        density: MassDensity,
    ) -> Result<Self, Error> {
        positive_length("bore", diameter).map_err(|error| error.named("diameter"))?;
        let radius = shown_mm(diameter) / 2.0;
        below("depth", shown_mm(depth), radius, "mm", "2.5 mm")?;
        below("width", shown_mm(width), 2.0 * radius, "mm", "4 mm")?;
        let half = shown_mm(width) / 2.0;
        let chord = radius - (radius * radius - half * half).sqrt();
        if shown_mm(depth) <= chord {
            return Err(ErrorKind::OutOfRange {
                argument: "depth".into(),
                given: shown_mm(depth),
                range: format!("not above {}", figure(chord, 4)),
                unit: "mm",
                authority: "a flat bottom of this width lies so deep at the middle".into(),
                hint: "give the depth at the middle of the slot, from the round surface".into(),
            }
            .into());
        }
        Self::slot(
            "key slot in the shaft",
            shaft_slot,
            "ρ L [b (2 R t − t²) / 2 − b³ / 24]",
            diameter,
            width,
            depth,
            length,
            density,
        )
    }

    #[allow(clippy::too_many_arguments, reason = "the sizes of one slot")]
    fn slot(
        name: &'static str,
        moment: fn(f64, f64, f64) -> f64,
        relation: &'static str,
        round: Length,
        width: Length,
        depth: Length,
        length: Length,
        density: MassDensity,
    ) -> Result<Self, Error> {
        below("width", shown_mm(width), shown_mm(round), "mm", "4 mm")?;
        let [t, l] =
            [("depth", depth), ("length", length)].map(|(name, of)| positive_length(name, of));
        let (t, l, density) = (t?, l?, kg(density)?);
        let (r, b) = (round.get::<meter>() / 2.0, width.get::<meter>());
        let numbers = format!(
            "{} kg/m³, L {}, b {}, t {}, R {} mm",
            figure(density, 1),
            mm(length),
            mm(width),
            mm(depth),
            figure(r * 1e3, 4)
        );
        let amount = density * l * moment(r, b, t);
        Ok(Self { missing: true, ..Self::of(name, amount, relation, numbers) })
    }

    /// A key on the bottom of a slot in a bore: `ρ b h L (R + t − h / 2)`.
    ///
    /// # Errors
    ///
    /// As described on the type.
    pub fn key(
        bore: Length,
        depth: Length,
        [width, height, length]: [Length; 3],
        density: MassDensity,
    ) -> Result<Self, Error> {
        for (name, size) in [
            ("bore", bore),
            ("depth", depth),
            ("width", width),
            ("height", height),
            ("length", length),
        ] {
            positive_length(name, size)?;
        }
        let density = kg(density)?;
        let [r, t, b, h, l] =
            [bore / 2.0, depth, width, height, length].map(|size| size.get::<meter>());
        below("height", shown_mm(height), shown_mm(bore), "mm", "4 mm")?;
        let numbers = format!(
            "{} kg/m³ · {} · {} · {} ({} + {} − {} / 2) mm",
            figure(density, 1),
            mm(width),
            mm(height),
            mm(length),
            figure(r * 1e3, 4),
            mm(depth),
            mm(height)
        );
        Ok(Self::of(
            "key",
            density * b * h * l * (r + t - h / 2.0),
            "ρ b h L (R + t − h / 2)",
            numbers,
        ))
    }

    /// A round hole along the axis, such as one for a pin spanner: `ρ π d² L r / 4`, `r` the
    /// radius of the circle it lies on. Holes spread evenly round a circle balance each other.
    ///
    /// # Errors
    ///
    /// As described on the type.
    pub fn hole(
        diameter: Length,
        depth: Length,
        radius: Length,
        density: MassDensity,
    ) -> Result<Self, Error> {
        let d = positive_length("diameter", diameter)?;
        let l = positive_length("depth", depth)?;
        let r = positive_length("radius", radius)?;
        let density = kg(density)?;
        let numbers = format!(
            "{} kg/m³ · π · {}² · {} · {} mm / 4",
            figure(density, 1),
            mm(diameter),
            mm(depth),
            mm(radius)
        );
        let amount = density * PI * d * d * l * r / 4.0;
        Ok(Self { missing: true, ..Self::of("hole", amount, "ρ π d² L r / 4", numbers) })
    }

    /// A lump, such as filler left from brazing: `m r`.
    ///
    /// # Errors
    ///
    /// As described on the type.
    pub fn lump(mass: Mass, radius: Length) -> Result<Self, Error> {
        let kg = mass_in_kg("mass", mass)?;
        let r = positive_length("radius", radius)?;
        let numbers = format!("{} g · {} mm", figure(kg * 1e3, 4), mm(radius));
        Ok(Self::of("lump", kg * r, "m r", numbers))
    }

    /// At an angle from the mark: of a slot or hole, where it is, and not where the rotor is heavy.
    ///
    /// # Errors
    ///
    /// [`ErrorKind::NotFinite`] for an angle that is none.
    pub fn at(mut self, angle: Angle) -> Result<Self, Error> {
        finite("angle", angle.get::<degree>(), "90 deg")?;
        let spot = UnbalanceVector::new(self.unbalance, angle);
        // Turned twice, to lie within one turn.
        let heavy = if self.missing { spot.opposite() } else { spot.opposite().opposite() };
        self.angle = Some(heavy.angle);
        Ok(self)
    }
}

/// What [`unbalance`] found.
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub struct UnbalanceSum {
    /// The causes.
    pub spots: Vec<HeavySpot>,
    /// Those whose angle is known, together.
    pub known: UnbalanceVector,
    /// Those that may lie anywhere, as if all lay at one angle.
    pub anywhere: Unbalance,
    /// The most that it can come to.
    pub greatest: Unbalance,
    /// The least that it can come to.
    pub least: Unbalance,
}

/// What several causes of unbalance come to: those of known angle as vectors, the others at worst.
///
/// # Errors
///
/// [`ErrorKind::Missing`] without a cause.
///
/// # Source
///
/// Statics.
///
/// # Example
///
/// A slot and the key in it, less than the slot took away.
///
/// ```
/// use hubwright::units::{Angle, Length, MassDensity, degree, gram_millimeter, kilogram_per_cubic_meter, millimeter};
/// use hubwright::wheel::{HeavySpot, unbalance};
///
/// let (mm, mark) = (Length::new::<millimeter>, Angle::new::<degree>(0.0));
/// let steel = MassDensity::new::<kilogram_per_cubic_meter>(7850.0);
/// let slot = HeavySpot::hub_slot(mm(22.0), mm(4.0), mm(1.8), mm(18.0), steel)?.at(mark)?;
/// let key = HeavySpot::key(mm(22.0), mm(1.8), [mm(4.0), mm(4.0), mm(18.0)], steel)?.at(mark)?;
/// let found = unbalance(&[slot, key])?;
/// // The key sticks out into the bore, so that its side is heavy.
/// assert!((found.known.angle.get::<degree>() - 0.0).abs() < 1e-6);
/// assert!((found.greatest.get::<gram_millimeter>() - 11.93).abs() < 0.01);
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn unbalance(spots: &[HeavySpot]) -> Result<UnbalanceSum, Error> {
    if spots.is_empty() {
        return Err(ErrorKind::Missing {
            argument: "spots".into(),
            why: "there is nothing to add up".into(),
            hint: "give at least one cause, such as the clearance of the wheel".into(),
        }
        .into());
    }
    let mut known = UnbalanceVector::new(Unbalance::default(), Angle::default());
    let mut anywhere: Vec<f64> = Vec::new();
    for spot in spots {
        match spot.angle {
            Some(angle) => known = known.with(UnbalanceVector::new(spot.unbalance, angle)),
            None => anywhere.push(spot.unbalance.get::<kilogram_meter>()),
        }
    }
    let sure = known.amount.get::<kilogram_meter>();
    let free: f64 = anywhere.iter().sum();
    // Sides of a polygon close when the longest is no longer than the rest together.
    let longest = anywhere.iter().copied().fold(sure, f64::max);
    let least = (2.0 * longest - sure - free).max(0.0);
    let amount = Unbalance::new::<kilogram_meter>;
    Ok(UnbalanceSum {
        spots: spots.to_vec(),
        known,
        anywhere: amount(free),
        greatest: amount(sure + free),
        least: amount(least),
    })
}

impl UnbalanceSum {
    /// One step a cause, then their sum; the last one's result is `greatest` in g mm.
    pub fn working(&self) -> Working {
        let gmm = |amount: Unbalance| amount.get::<gram_millimeter>();
        let step = |symbol, relation, numbers, result| Step {
            symbol,
            relation,
            numbers,
            result,
            unit: "g mm",
            source: ROTOR,
        };
        let one = |spot: &HeavySpot| {
            step(spot.name, spot.relation, spot.numbers.clone(), gmm(spot.unbalance))
        };
        let mut steps: Vec<_> = self.spots.iter().map(one).collect();
        let place = |spot: &HeavySpot| {
            let angle = spot.angle?;
            Some(format!(
                "{} at {}°",
                figure(gmm(spot.unbalance), 3),
                figure(angle.get::<degree>(), 1)
            ))
        };
        let placed: Vec<_> = self.spots.iter().filter_map(place).collect();
        let Ok(again) = unbalance(&self.spots) else { return Working::default() };
        if !placed.is_empty() {
            let at = figure(again.known.angle.get::<radian>().to_degrees(), 2);
            steps.push(step(
                "of known angle",
                "sum as vectors",
                format!("{} (at {at}°)", placed.join(" + ")),
                gmm(again.known.amount),
            ));
        }
        let numbers =
            format!("{} + {}", figure(gmm(again.known.amount), 4), figure(gmm(again.anywhere), 4));
        steps.push(step(
            "greatest",
            "known + all others at one angle",
            numbers,
            gmm(again.greatest),
        ));
        Working { steps }
    }
}
