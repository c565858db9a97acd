//! A key brazed into a hub: gap when hot, filler, and what the joint carries.

use super::key::{inside_hub, narrower, outside};
use super::key_stock::chamfer_fits;
use super::keyway::chord;
use super::warmth::LINEAR;
use crate::error::Error;
use crate::source::{Source, Status};
use crate::tables::brazing::{
    CAPILLARY, COPPER, COPPER_PHOSPHORUS, Gap, NICKEL, SILVER_ATMOSPHERE, SILVER_FLUX, SILVER_MAKER,
};
use crate::tables::laws::ARITHMETIC;
use crate::units::{
    Area, Exact, Length, Pressure, TemperatureCoefficient, TemperatureInterval, Torque, Volume,
    cubic_millimeter, figure, finite, kelvin, megapascal, meter, micrometer, millimeter,
    newton_meter, pascal, per_kelvin, positive, positive_length, square_millimeter, within, words,
};
use crate::working::{Step, Working};

/// Why a key is brazed before the hub is finished.
pub const BEFORE_FINISHING: &str = "Braze before the last facing and finish boring: the heat leaves \
    oxide on every face, lets go of stresses so that bore and faces move, and softens or \
    hardens the steel. Leave stock for both, and face and bore when the hub is cold.";

/// What the shear stress takes for granted.
pub const ASSUMES: &str = "The brazed bottom of the slot alone takes the force 2 T / d in even shear. \
    Its sides, and the wall that the key leans against, are not counted.";

/// Order of work around a brazed joint.
pub const ORDER_OF_WORK: Source = Source::new(
    "braze-first",
    "common practice, no source",
    "",
    "braze before the last facing and finish boring",
    Status::Practice,
);

words! {
    /// A brazing filler, and how it is used.
    Filler, "filler" {
        /// Silver with flux.
        SilverFlux = "silver, flux" ["silver", "BAg"];
        /// Silver with flux, as a maker of fillers has it.
        SilverMaker = "silver, maker's note" ["silver, maker"];
        /// Silver in a controlled atmosphere.
        SilverAtmosphere = "silver, atmosphere" [];
        /// Copper in a furnace.
        Copper = "copper" ["BCu"];
        /// Nickel.
        Nickel = "nickel" ["BNi"];
        /// Copper-phosphorus, which is not for steel.
        CopperPhosphorus = "copper-phosphorus" ["BCuP"];
        /// Any filler that is drawn in by the gap.
        Any = "any" ["general"];
    }
}

words! {
    /// How a gap compares with the published range.
    GapOutcome, "gap outcome" {
        /// Narrower than the range: filler may not get in.
        TooNarrow = "too narrow" [];
        /// On the range's ends or between them.
        Within = "within" [];
        /// Wider than the range: the filler may not hold in it.
        TooWide = "too wide" [];
    }
}

/// Published gap of a filler, on one side of the part.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct PublishedGap {
    /// The filler.
    pub filler: Filler,
    /// Least gap.
    pub least: Length,
    /// Greatest gap.
    pub most: Length,
    /// Who says so.
    pub source: Source,
}

/// Published gap of a filler, at brazing temperature and on one side of the part.
///
/// # Source
///
/// Each range has its own: the AWS Brazing Handbook from memory or quoted, a filler maker's note,
/// an encyclopaedia.
///
/// # Example
///
/// ```
/// use hubwright::joint::{Filler, published_gap};
/// use hubwright::units::Nanometres;
///
/// let gap = published_gap(Filler::SilverFlux);
/// assert_eq!(Nanometres::from(gap.most), Nanometres(130_000));
/// assert!(gap.source.to_string().contains("from memory"));
/// ```
pub fn published_gap(filler: Filler) -> PublishedGap {
    let ([least, most], source): Gap = match filler {
        Filler::SilverFlux => SILVER_FLUX,
        Filler::SilverMaker => SILVER_MAKER,
        Filler::SilverAtmosphere => SILVER_ATMOSPHERE,
        Filler::Copper => COPPER,
        Filler::Nickel => NICKEL,
        Filler::CopperPhosphorus => COPPER_PHOSPHORUS,
        Filler::Any => CAPILLARY,
    };
    let [least, most] = [least, most].map(|um| Length::from_exact(f64::from(um) * 1e3));
    PublishedGap { filler, least, most, source }
}

/// A torque on a brazed key.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct BrazeLoad {
    /// The torque.
    pub torque: Torque,
    /// Share of the bottom that is sound, above 0 to 1.
    pub sound_share: f64,
    /// Allowed shear stress of the joint.
    pub allowed_shear: Option<Pressure>,
}

/// A key brazed into the slot of a hub's bore.
///
/// Gap on one side: cold `(W − w) / 2`, hot `(W (1 + α_h ΔT) − w (1 + α_k ΔT)) / 2`, with
/// `W` the slot, `w` the key, `ΔT` how much hotter than when they were measured, and `α` mean
/// expansions over that rise. A negative gap binds. The brazed area is the bottom
/// `(w − 2 c) L` and the two walls `2 (t + y − c) L`; the filler fills the hot gap over
/// all of it, the bottom's taken like a side's, and the two channels of the chamfers, `c² L`.
///
/// With a torque: `τ = 2 T / (d · (w − 2 c) L · share)`. The bottom alone is counted, in even
/// shear; the sides and the wall that the key leans against come on top.
///
/// Braze before the last facing and finish boring: [`BEFORE_FINISHING`].
///
/// # Errors
///
/// [`OutOfRange`](crate::ErrorKind::OutOfRange) for a size that is not above zero, a slot as wide as the
/// bore, a key longer than its hub, a chamfer that leaves no bottom or no wall, a rise of more than
/// 1500 K, an expansion outside 0 to 500 µm/m/K, a share outside 0 to 1;
/// [`NotFinite`](crate::ErrorKind::NotFinite) for NaN and infinite ones.
///
/// # Source
///
/// Linear thermal expansion; geometry; statics.
///
/// # Example
///
/// A steel key of 4.00 mm in a slot of 4.06 mm in brass, 630 K hotter: the gap of 0.030 mm a side
/// opens to 0.040 mm.
///
/// ```
/// use hubwright::joint::BrazedKey;
/// use hubwright::units::{Length, TemperatureCoefficient, TemperatureInterval, kelvin, millimeter, per_kelvin};
///
/// let mm = Length::new::<millimeter>;
/// let expansion = TemperatureCoefficient::new::<per_kelvin>;
/// let found = BrazedKey::new(mm(22.0), mm(4.06), mm(1.8), mm(4.0), mm(18.0))
///     .with_heat(TemperatureInterval::new::<kelvin>(630.0), expansion(20e-6), expansion(12e-6))
///     .solve()?;
/// assert!((found.hot_gap.get::<millimeter>() - 0.040_458).abs() < 1e-6);
/// # Ok::<(), hubwright::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct BrazedKey {
    /// Diameter of the bore.
    pub bore: Length,
    /// Width of the slot.
    pub slot_width: Length,
    /// Depth of the slot at the middle, t2.
    pub depth: Length,
    /// Width of the key.
    pub key_width: Length,
    /// Length that is brazed.
    pub length: Length,
    /// How much hotter than when measured the joint is brazed.
    pub rise: TemperatureInterval,
    /// Mean expansion of the hub over the rise.
    pub hub_expansion: TemperatureCoefficient,
    /// Mean expansion of the key over the rise.
    pub key_expansion: TemperatureCoefficient,
    /// Chamfer of the key's bottom edges.
    pub chamfer: Length,
    /// The filler whose published gap it is compared with.
    pub filler: Option<Filler>,
    /// The torque on it.
    pub load: Option<BrazeLoad>,
    /// Length of the hub.
    pub hub_length: Option<Length>,
}

/// What [`BrazedKey::solve`] found.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct BrazedKeyFound {
    /// What was asked.
    pub key: BrazedKey,
    /// Gap on one side when cold; negative binds.
    pub cold_gap: Length,
    /// Gap on one side when hot; negative binds.
    pub hot_gap: Length,
    /// Published gap of the filler.
    pub published: Option<PublishedGap>,
    /// How the hot gap compares with it.
    pub gap_outcome: Option<GapOutcome>,
    /// Bottom of the key, which alone is counted for the torque.
    pub bottom: Area,
    /// Bottom and both walls.
    pub area: Area,
    /// Filler that hot gap and channels take; nothing is added for what runs off.
    pub filler_volume: Volume,
    /// Shear stress of the bottom; `None` without a torque.
    pub shear: Option<Pressure>,
    /// Whether it keeps to what is allowed; `None` without a torque and an allowed stress.
    pub carries: Option<bool>,
}

impl BrazedKey {
    /// A key with sharp edges, brazed without heat or load.
    pub fn new(
        bore: Length,
        slot_width: Length,
        depth: Length,
        key_width: Length,
        length: Length,
    ) -> Self {
        Self {
            bore,
            slot_width,
            depth,
            key_width,
            length,
            rise: TemperatureInterval::default(),
            hub_expansion: TemperatureCoefficient::default(),
            key_expansion: TemperatureCoefficient::default(),
            chamfer: Length::default(),
            filler: None,
            load: None,
            hub_length: None,
        }
    }

    /// With how much hotter it is brazed, and how hub and key expand over that.
    #[must_use]
    pub fn with_heat(
        mut self,
        rise: TemperatureInterval,
        hub_expansion: TemperatureCoefficient,
        key_expansion: TemperatureCoefficient,
    ) -> Self {
        (self.rise, self.hub_expansion, self.key_expansion) = (rise, hub_expansion, key_expansion);
        self
    }

    /// With chamfers along the key's bottom edges.
    #[must_use]
    pub fn with_chamfer(mut self, chamfer: Length) -> Self {
        self.chamfer = chamfer;
        self
    }

    /// With the filler whose published gap it is compared with.
    #[must_use]
    pub fn with_filler(mut self, filler: Filler) -> Self {
        self.filler = Some(filler);
        self
    }

    /// With a torque, the share of the bottom that is sound, and the shear stress allowed.
    #[must_use]
    pub fn with_torque(
        mut self,
        torque: Torque,
        sound_share: f64,
        allowed_shear: Option<Pressure>,
    ) -> Self {
        self.load = Some(BrazeLoad { torque, sound_share, allowed_shear });
        self
    }

    /// With the length of the hub, which the key may not pass.
    #[must_use]
    pub fn with_hub_length(mut self, length: Length) -> Self {
        self.hub_length = Some(length);
        self
    }

    /// Height of the slot's walls.
    fn wall(&self) -> Length {
        self.depth + chord(self.bore, self.slot_width)
    }

    fn check(&self) -> Result<(), Error> {
        positive_length("bore", self.bore)?;
        narrower("slot_width", self.slot_width, "bore", self.bore)?;
        positive_length("depth", self.depth)?;
        positive_length("key_width", self.key_width)?;
        positive_length("length", self.length)?;
        inside_hub(self.length, self.hub_length)?;
        within("rise", self.rise.get::<kelvin>(), [0.0, 1500.0], "K", "630 K")?;
        for (name, expansion) in
            [("hub_expansion", self.hub_expansion), ("key_expansion", self.key_expansion)]
        {
            let given = expansion.get::<per_kelvin>() * 1e6;
            within(name, given, [0.0, 500.0], "um/m/K", "11.5 um/m/K")?;
        }
        chamfer_fits(self.chamfer, self.key_width, self.wall())?;
        let Some(load) = self.load else { return Ok(()) };
        positive("torque", load.torque.get::<newton_meter>(), "N m", "40 N m")?;
        if let Some(allowed) = load.allowed_shear {
            positive("allowed_shear", allowed.get::<megapascal>(), "MPa", "25 MPa")?;
        }
        finite("sound_share", load.sound_share, "0.7")?;
        if load.sound_share > 0.0 && load.sound_share <= 1.0 {
            return Ok(());
        }
        let hint = "give the share of the bottom that filler has wetted, like 0.7; 1 is all of it";
        let range = "not above 0 and up to 1".into();
        Err(outside("sound_share", load.sound_share, range, "", String::new(), hint.into()))
    }

    /// Gap, area, filler and stress.
    ///
    /// # Errors
    ///
    /// See [`BrazedKey`].
    pub fn solve(self) -> Result<BrazedKeyFound, Error> {
        self.check()?;
        let grown = |size: Length, expansion: TemperatureCoefficient| {
            size * (1.0 + expansion.get::<per_kelvin>() * self.rise.get::<kelvin>())
        };
        let cold_gap = (self.slot_width - self.key_width) / 2.0;
        let hot_gap = (grown(self.slot_width, self.hub_expansion)
            - grown(self.key_width, self.key_expansion))
            / 2.0;
        let (c, length) = (self.chamfer, self.length);
        let bottom = (self.key_width - 2.0 * c) * length;
        let area = bottom + 2.0 * (self.wall() - c) * length;
        let open = if hot_gap > Length::default() { hot_gap } else { Length::default() };
        let published = self.filler.map(published_gap);
        let brazed = match published {
            Some(range) => {
                hot_gap.exact() >= range.least.exact() && hot_gap.exact() <= range.most.exact()
            }
            None => hot_gap > Length::default(),
        };
        let shear = self.load.map(|load| {
            load.torque.get::<newton_meter>() * 2.0
                / self.bore.get::<meter>()
                / (bottom.get::<square_millimeter>() * 1e-6 * load.sound_share)
        });
        let whole = |pa: f64| (pa * 1e3).round_ties_even();
        let allowed = self.load.and_then(|load| load.allowed_shear);
        Ok(BrazedKeyFound {
            key: self,
            cold_gap,
            hot_gap,
            published,
            gap_outcome: published.map(|published| {
                let gap = hot_gap.exact();
                if gap < published.least.exact() {
                    GapOutcome::TooNarrow
                } else if gap > published.most.exact() {
                    GapOutcome::TooWide
                } else {
                    GapOutcome::Within
                }
            }),
            bottom,
            area,
            filler_volume: area * open + c * c * length,
            shear: shear.map(Pressure::new::<pascal>),
            // Without a gap that filler fills there is no joint to carry anything.
            carries: shear
                .zip(allowed)
                .map(|(shear, allowed)| brazed && whole(shear) <= whole(allowed.get::<pascal>())),
        })
    }
}

impl BrazedKeyFound {
    /// The steps, recomputed; the last one's result is `filler_volume` in mm³, or `shear` in
    /// MPa where a torque is given.
    pub fn working(&self) -> Working {
        let Ok(again) = self.key.solve() else { return Working::default() };
        let mm = |length: Length| figure(length.get::<millimeter>(), 4);
        let um = |expansion: TemperatureCoefficient| figure(expansion.get::<per_kelvin>() * 1e6, 3);
        let key = self.key;
        let area = |area: Area| figure(area.get::<square_millimeter>(), 3);
        let step = |symbol, relation, numbers, result, unit, source| Step {
            symbol,
            relation,
            numbers,
            result,
            unit,
            source,
        };
        let mut steps = vec![
            step(
                "cold gap",
                "(W − w) / 2",
                format!("({} − {}) / 2", mm(key.slot_width), mm(key.key_width)),
                again.cold_gap.get::<micrometer>(),
                "µm",
                ARITHMETIC,
            ),
            step(
                "hot gap",
                "(W (1 + αh ΔT) − w (1 + αk ΔT)) / 2",
                format!(
                    "({0} (1 + {1}e-6 · {4}) − {2} (1 + {3}e-6 · {4})) / 2",
                    mm(key.slot_width),
                    um(key.hub_expansion),
                    mm(key.key_width),
                    um(key.key_expansion),
                    figure(key.rise.get::<kelvin>(), 1)
                ),
                again.hot_gap.get::<micrometer>(),
                "µm",
                LINEAR,
            ),
            step(
                "bottom",
                "(w − 2 c) L",
                format!("({} − 2 · {}) {}", mm(key.key_width), mm(key.chamfer), mm(key.length)),
                again.bottom.get::<square_millimeter>(),
                "mm2",
                ARITHMETIC,
            ),
            step(
                "area",
                "bottom + 2 (t + y − c) L",
                format!(
                    "{} + 2 ({} − {}) {}",
                    area(again.bottom),
                    mm(key.wall()),
                    mm(key.chamfer),
                    mm(key.length)
                ),
                again.area.get::<square_millimeter>(),
                "mm2",
                ARITHMETIC,
            ),
            step(
                "filler",
                "area · hot gap + c² L",
                format!(
                    "{} · {} + {}² · {}",
                    area(again.area),
                    mm(again.hot_gap),
                    mm(key.chamfer),
                    mm(key.length)
                ),
                again.filler_volume.get::<cubic_millimeter>(),
                "mm3",
                ARITHMETIC,
            ),
        ];
        if let (Some(load), Some(shear)) = (key.load, again.shear) {
            steps.push(step(
                "shear",
                "2 T / (d · bottom · share)",
                format!(
                    "2 · {} N m / ({} mm · {} mm² · {})",
                    figure(load.torque.get::<newton_meter>(), 4),
                    mm(key.bore),
                    area(again.bottom),
                    figure(load.sound_share, 3)
                ),
                shear.get::<megapascal>(),
                "MPa",
                super::key_strength::KEY_STATICS,
            ));
        }
        Working { steps }
    }
}
