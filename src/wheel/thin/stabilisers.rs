//! Stabilisers: discs larger than the flanges that hold a thin wheel further out.

use std::f64::consts::PI;

use super::{THIN, ratio_of};
use crate::error::{Error, ErrorKind};
use crate::solid::disc::{CLAMPED, THIN_DISCS};
use crate::solid::plate::{Bent, stiffness, stocky};
use crate::solid::{ClampedDisc, clamped_disc};
use crate::tables::laws::ARITHMETIC;
use crate::units::{
    Force, Length, Pressure, below, figure, gigapascal, meter, millimeter, newton, pascal,
    positive, positive_length, shown_mm, within, zero_or_more,
};
use crate::working::{Step, Working};

/// Greatest thickness over span for which the sag with shear was fitted.
const STOCKIEST: f64 = 0.6;

/// Stabilisers for a thin wheel: what they gain, and what depth of cut they leave.
///
/// The gain is the stiffness against a side load on one point of the rim, over that between
/// the flanges alone; it depends on the diameters and on Poisson's ratio only, `k(b flange / a) / k(b / a)`
/// (see [`clamped_disc`]). What they leave to cut with is `(D − Ds) / 2` less the clearance kept to work,
/// vice and magnet. **They add nothing to the bursting speed.**
///
/// They have to bear at their rims alone: see [`StabiliserDisc`].
///
/// # Errors
///
/// [`ErrorKind::OutOfRange`] or [`ErrorKind::NotFinite`] as for [`ThinWheel`](super::ThinWheel); also for stabilisers
/// smaller than the flanges, and a gain that no stabiliser on this wheel reaches.
///
/// # Source
///
/// Timoshenko and Woinowsky-Krieger, *Theory of Plates and Shells*; geometry.
///
/// # Example
///
/// A disc of 125 × 1 mm between stabilisers of 80 mm instead of flanges of 50 mm stands side loads more than three times
/// as stiffly, and with 2 mm of clearance cuts 20.5 mm deep.
///
/// ```
/// use hubwright::units::{Length, millimeter};
/// use hubwright::wheel::Stabilisers;
///
/// let mm = Length::new::<millimeter>;
/// let found = Stabilisers::new(mm(125.0), mm(50.0), mm(1.0), 0.2, mm(2.0)).of(mm(80.0))?;
/// assert!((found.gain - 3.3).abs() < 0.05);
/// assert!((found.depth.get::<millimeter>() - 20.5).abs() < 1e-9);
/// # Ok::<(), hubwright::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Stabilisers {
    /// Outside diameter of the wheel.
    pub diameter: Length,
    /// Diameter of the flanges.
    pub flange: Length,
    /// Thickness of the wheel.
    pub thickness: Length,
    /// Poisson's ratio of the wheel.
    pub poisson: f64,
    /// Clearance kept between stabiliser and work, vice or magnet.
    pub clearance: Length,
    /// The disc they are made of.
    pub disc: Option<StabiliserDisc>,
}

/// One stabiliser as a plate: pressed by its flange, resting on its land at the rim.
///
/// The force presses on a circle; inside it the disc is relieved and dishes towards the wheel. The relief has to be deeper
/// than its hole sinks, or it bears there too and holds the wheel no further out than the flange would. Sag
/// of a thin ring plate, times `1 + 0.25 (h / s)²` for the shear in a disc of thickness `h` over a span `s`
/// from the circle to the middle of the land (fitted to finite elements up to `h / s = 0.6`).
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct StabiliserDisc {
    /// Thickness at the relief.
    pub thickness: Length,
    /// Hole.
    pub hole: Length,
    /// Modulus of elasticity.
    pub modulus: Pressure,
    /// Poisson's ratio.
    pub poisson: f64,
    /// Width of the land at the rim, on one side.
    pub land: Length,
    /// Diameter of the circle on which the flange presses: its rim as the disc dishes away.
    pub pressed_at: Length,
    /// Force of the nut.
    pub nut_force: Force,
    /// Depth of the relief.
    pub relief: Option<Length>,
}

impl StabiliserDisc {
    /// A disc under the force of the nut.
    pub fn new(
        thickness: Length,
        hole: Length,
        modulus: Pressure,
        poisson: f64,
        land: Length,
        pressed_at: Length,
        nut_force: Force,
    ) -> Self {
        let relief = None;
        Self { thickness, hole, modulus, poisson, land, pressed_at, nut_force, relief }
    }

    /// With the depth of its relief.
    #[must_use]
    pub fn with_relief(mut self, relief: Length) -> Self {
        self.relief = Some(relief);
        self
    }

    fn check(&self, outside: Length, flange: Length) -> Result<(), Error> {
        positive_length("disc_thickness", self.thickness)?;
        positive_length("disc_hole", self.hole)?;
        positive_length("land", self.land)?;
        positive_length("pressed_at", self.pressed_at)?;
        below("disc_modulus", self.modulus.get::<gigapascal>(), 2000.0, "GPa", "206 GPa")?;
        below("disc_poisson", self.poisson, 0.5, "", "0.3")?;
        positive("nut_force", self.nut_force.get::<newton>(), "N", "6 kN")?;
        if let Some(relief) = self.relief {
            zero_or_more("relief", relief.get::<millimeter>(), "mm", "0.3 mm")?;
        }
        let error = |argument: &str, given: Length, range, hint: &str| {
            let (argument, given) = (argument.into(), shown_mm(given));
            let (authority, hint) = (String::new(), hint.into());
            Err(ErrorKind::OutOfRange { argument, given, range, unit: "mm", authority, hint }
                .into())
        };
        if self.hole >= self.pressed_at {
            let range = format!("not above the disc's hole of {}", shown_mm(self.hole));
            let hint = "give the diameter of the circle on which the flange presses on the disc";
            return error("pressed_at", self.pressed_at, range, hint);
        }
        if self.pressed_at > flange {
            let range = format!("above the flange's {}", shown_mm(flange));
            let hint = "a flange presses no further out than its rim";
            return error("pressed_at", self.pressed_at, range, hint);
        }
        let inside = outside - self.land * 2.0;
        if inside <= self.pressed_at {
            let range = format!(
                "so wide that nothing is left between it and the circle of {} mm where the flange presses",
                shown_mm(self.pressed_at)
            );
            let hint =
                "a stabiliser bears outside its flange: make the land narrower or the disc larger";
            return error("land", self.land, range, hint);
        }
        let span = (outside - self.land - self.pressed_at) / 2.0;
        if self.thickness > span * STOCKIEST * (1.0 + 1e-9) {
            let most = figure(shown_mm(span * STOCKIEST), 3);
            let range =
                format!("above 0.6 of the span from the flange's circle to the land, {most}");
            let hint = "so stocky a disc hardly sags; what is computed was fitted to thinner ones";
            return error("disc_thickness", self.thickness, range, hint);
        }
        Ok(())
    }

    fn solve(&self, outside: Length, flange: Length) -> Result<StabiliserDiscFound, Error> {
        self.check(outside, flange)?;
        let radius = |diameter: Length| diameter.get::<meter>() / 2.0;
        let (h, rim) = (self.thickness.get::<meter>(), radius(outside));
        let land = self.land.get::<meter>();
        let (pressed, held) = (radius(self.pressed_at), rim - land / 2.0);
        let force = self.nut_force.get::<newton>();
        let d = stiffness(self.modulus.get::<pascal>(), h, self.poisson);
        let bent = Bent::of([radius(self.hole), pressed, held, rim], force / d, self.poisson);
        let sag = Length::new::<meter>(bent.sag_at_hole() * stocky(h, held - pressed));
        let inside = rim - land;
        let area = PI * (rim - inside) * (rim + inside);
        Ok(StabiliserDiscFound {
            sag,
            land_pressure: Pressure::new::<pascal>(force / area),
            bears_at_rim: self.relief.map(|relief| relief > sag),
        })
    }
}

/// What a stabiliser's disc does under the nut.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct StabiliserDiscFound {
    /// How far its hole sinks below its land: the relief has to be deeper.
    pub sag: Length,
    /// Pressure on its land.
    pub land_pressure: Pressure,
    /// Whether the relief given is deeper than that, so that only the rim bears.
    pub bears_at_rim: Option<bool>,
}

/// What [`Stabilisers::of`] and [`Stabilisers::for_gain`] found.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct StabilisersFound {
    /// What was asked.
    pub of: Stabilisers,
    /// Diameter of the stabilisers.
    pub diameter: Length,
    /// Stiffness against a side load on one point of the rim, over that between the flanges.
    pub gain: f64,
    /// The same for a load spread evenly round the rim.
    pub ring_gain: f64,
    /// Side load on one point that breaks the wheel, over that between the flanges.
    pub load_gain: f64,
    /// Greatest depth of cut; zero or less where nothing is left.
    pub depth: Length,
    /// Greatest depth of cut between the flanges alone.
    pub flange_depth: Length,
    /// The disc under the nut, when it was given.
    pub disc: Option<StabiliserDiscFound>,
}

impl Stabilisers {
    /// Stabilisers for a wheel between flanges.
    pub fn new(
        diameter: Length,
        flange: Length,
        thickness: Length,
        poisson: f64,
        clearance: Length,
    ) -> Self {
        Self { diameter, flange, thickness, poisson, clearance, disc: None }
    }

    /// With the disc they are made of.
    #[must_use]
    pub fn with_disc(mut self, disc: StabiliserDisc) -> Self {
        self.disc = Some(disc);
        self
    }

    fn at_flange(&self) -> Result<ClampedDisc, Error> {
        let ratio = ratio_of(self.diameter, ("flange", self.flange), self.thickness)?;
        below("poisson", self.poisson, 0.5, "", "0.2")?;
        zero_or_more("clearance", self.clearance.get::<millimeter>(), "mm", "2 mm")?;
        clamped_disc(ratio, self.poisson)
    }

    /// Gain and depth of cut of stabilisers of a diameter.
    ///
    /// # Errors
    ///
    /// See [`Stabilisers`].
    pub fn of(self, stabiliser: Length) -> Result<StabilisersFound, Error> {
        let bare = self.at_flange()?;
        let ratio = ratio_of(self.diameter, ("stabiliser", stabiliser), self.thickness)?;
        if stabiliser < self.flange {
            return Err(ErrorKind::OutOfRange {
                argument: "stabiliser".into(),
                given: shown_mm(stabiliser),
                range: format!("below the flange's {}", shown_mm(self.flange)),
                unit: "mm",
                authority: String::new(),
                hint: "stabilisers reach further out than the flanges that press them".into(),
            }
            .into());
        }
        let held = clamped_disc(ratio, self.poisson)?;
        let out = |inner: Length| (self.diameter - inner) / 2.0 - self.clearance;
        Ok(StabilisersFound {
            of: self,
            diameter: stabiliser,
            gain: bare.point_deflection / held.point_deflection,
            ring_gain: bare.ring_deflection / held.ring_deflection,
            load_gain: bare.point_moment / held.point_moment,
            depth: out(stabiliser),
            flange_depth: out(self.flange),
            disc: self.disc.map(|disc| disc.solve(stabiliser, self.flange)).transpose()?,
        })
    }

    /// The smallest stabilisers with a gain in stiffness, found by halving.
    ///
    /// # Errors
    ///
    /// See [`Stabilisers`].
    pub fn for_gain(self, gain: f64) -> Result<StabilisersFound, Error> {
        let bare = self.at_flange()?;
        let a = self.diameter.get::<meter>() / 2.0;
        let thin = 1.0 - self.thickness.get::<meter>() / (THIN * a);
        let (mut low, mut high) = (self.flange / self.diameter, CLAMPED[1].min(thin).into());
        let gain_at = |ratio: crate::units::Ratio| {
            let held = clamped_disc(ratio.get::<crate::units::ratio>(), self.poisson)?;
            Ok::<f64, Error>(bare.point_deflection / held.point_deflection)
        };
        // Down, so that the range printed is inside what can be had.
        let most = (gain_at(high)? * 1e3).floor() / 1e3;
        within("gain", gain, [1.0, most], "", "3")?;
        for _ in 0..60 {
            let middle = (low + high) / 2.0;
            if gain_at(middle)? < gain { low = middle } else { high = middle }
        }
        self.of(self.diameter * high)
    }
}

impl StabilisersFound {
    /// The steps, recomputed; the last one's result is `depth` in mm.
    pub fn working(&self) -> Working {
        let Ok(again) = self.of.of(self.diameter) else { return Working::default() };
        let of = again.of;
        let mm = |length: Length| figure(shown_mm(length), 4);
        let mut steps = vec![Step {
            symbol: "gain",
            relation: "k(flange / D) / k(Ds / D)",
            numbers: format!(
                "k({} / {}) / k({} / {}), ν {}",
                mm(of.flange),
                mm(of.diameter),
                mm(again.diameter),
                mm(of.diameter),
                figure(of.poisson, 4)
            ),
            result: again.gain,
            unit: "",
            source: THIN_DISCS,
        }];
        if let (Some(disc), Some(found)) = (of.disc, again.disc) {
            steps.push(Step {
                symbol: "sag",
                relation: "w(hole) of a ring plate",
                numbers: format!(
                    "{} N on {} mm, disc {} × {} mm, hole {} mm, land {} mm",
                    figure(disc.nut_force.get::<newton>(), 3),
                    mm(disc.pressed_at),
                    mm(again.diameter),
                    mm(disc.thickness),
                    mm(disc.hole),
                    mm(disc.land)
                ),
                result: found.sag.get::<millimeter>(),
                unit: "mm",
                source: THIN_DISCS,
            });
        }
        steps.push(Step {
            symbol: "depth",
            relation: "(D − Ds) / 2 − clearance",
            numbers: format!(
                "({} − {}) / 2 − {} mm",
                mm(of.diameter),
                mm(again.diameter),
                mm(of.clearance)
            ),
            result: again.depth.get::<millimeter>(),
            unit: "mm",
            source: ARITHMETIC,
        });
        Working { steps }
    }
}
