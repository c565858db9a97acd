//! Brazed keys: part of `hubwright.joint`.

use pyo3::prelude::*;

use super::quantity::{Out, Plain, Q};
use super::rings::found;
use super::verdict::Source;
use super::wheel::Working;
use super::words::{W, WordOut};
use crate::error::{Error, ErrorKind};
use crate::joint::braze::{ASSUMES, BEFORE_FINISHING};
use crate::joint::{self, Filler, GapOutcome};
use crate::mounting::sort::show;
use crate::units::{
    Area, Length, Pressure, TemperatureCoefficient, TemperatureInterval, Torque, Volume, Words,
    cubic_millimeter, figure,
};

/// Published gap of a brazing filler, on one side of the part.
#[pyclass(frozen, module = "hubwright._core")]
pub struct PublishedGap(joint::PublishedGap);

found! {
    PublishedGap(joint::PublishedGap) {
        /// The filler.
        filler: WordOut<Filler> = |of| WordOut(of.filler);
        /// Least gap, in mm.
        least: Out<Length> = |of| Out(of.least);
        /// Greatest gap, in mm.
        most: Out<Length> = |of| Out(of.most);
        /// Who says so.
        source: Source = |of| Source(of.source);
    }

    fn __repr__(&self) -> String {
        let (least, most) = (show(self.0.least), show(self.0.most));
        format!("<PublishedGap {}: {least} to {most}: {}>", self.0.filler, self.0.source)
    }
}

/// Published gaps of brazing fillers, hot and on one side of the part, each with its source.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> hw.joint.published_gaps()[-1]
///     <PublishedGap any: 0.03 mm to 0.08 mm: an encyclopaedia's article on brazing (read)>
#[pyfunction]
pub fn published_gaps() -> Vec<PublishedGap> {
    Filler::ALL.iter().map(|filler| PublishedGap(joint::published_gap(*filler))).collect()
}

/// What `brazed_key` found.
#[pyclass(frozen, module = "hubwright._core")]
pub struct BrazedKey(joint::BrazedKeyFound);

found! {
    BrazedKey(joint::BrazedKeyFound) {
        /// Gap on one side when cold, in mm; negative binds.
        cold_gap: Out<Length> = |of| Out(of.cold_gap);
        /// Gap on one side when hot, in mm; negative binds.
        hot_gap: Out<Length> = |of| Out(of.hot_gap);
        /// Published gap of the filler; None without a filler.
        published: Option<PublishedGap> = |of| of.published.map(PublishedGap);
        /// How the hot gap compares with it: `too narrow`, `within`, `too wide`.
        gap_outcome: Option<WordOut<GapOutcome>> = |of| of.gap_outcome.map(WordOut);
        /// Bottom of the key, which alone is counted for the torque, in mm².
        bottom: Out<Area> = |of| Out(of.bottom);
        /// Bottom and both walls, in mm².
        area: Out<Area> = |of| Out(of.area);
        /// Filler that gap and channels take, in mm³; nothing is added for what runs off.
        filler_volume: Out<Volume> = |of| Out(of.filler_volume);
        /// Shear stress of the bottom, in MPa; None without a torque.
        shear: Option<Out<Pressure>> = |of| of.shear.map(Out);
        /// Whether it keeps to what is allowed; None without a torque and an allowed stress.
        carries: Option<bool> = |of| of.carries;
        /// What the shear stress takes for granted.
        assumes: &'static str = |_| ASSUMES;
        /// When to braze, and why; common practice, no source.
        advice: &'static str = |_| BEFORE_FINISHING;
    }

    /// The steps, recomputed; the last one's result is `filler_volume` in mm³, or `shear` in MPa.
    fn working(&self) -> Working {
        Working(self.0.working())
    }

    fn __repr__(&self) -> String {
        let volume = figure(self.0.filler_volume.get::<cubic_millimeter>(), 2);
        let shear = self.0.shear.map_or(String::new(), |shear| format!(", shear {}", show(shear)));
        let over = if self.0.carries == Some(false) { ", OVERLOADED" } else { "" };
        format!("<BrazedKey gap {} a side, filler {volume} mm³{shear}{over}>", show(self.0.hot_gap))
    }
}

/// All three of the figures on heat, or none.
fn together(given: bool, argument: &str) -> Result<(), Error> {
    if given {
        return Ok(());
    }
    Err(ErrorKind::Missing {
        argument: argument.into(),
        why: "it belongs with what was given".into(),
        hint: "give rise, hub_expansion and key_expansion together, and torque with sound_share"
            .into(),
    }
    .into())
}

/// A key brazed into a hub: gap when hot, filler, and the stress that a torque makes.
///
/// Args:
///     bore: Diameter of the bore.
///     slot_width: Width of the slot, below the bore.
///     depth: Depth of the slot at the middle, t2.
///     key_width: Width of the key.
///     length: Length that is brazed.
///     rise: How much hotter than when measured it is brazed, up to 1500 K; with both expansions.
///     hub_expansion: Mean expansion of the hub over the rise, more than at room temperature.
///     key_expansion: Mean expansion of the key over the rise.
///     chamfer: Chamfer of the key's bottom edges.
///     filler: A filler of `published_gaps()`, such as `"silver, flux"`.
///     torque: Torque on the key; with `sound_share`.
///     sound_share: Share of the bottom that the filler has wetted, above 0 to 1.
///     allowed_shear: Shear stress allowed of the joint.
///     hub_length: Length of the hub, which the key may not pass.
///
/// Returns:
///     BrazedKey: `.hot_gap`, `.gap_outcome`, `.filler_volume`, `.shear`, `.carries`, `.assumes`, `.advice`.
///
/// Raises:
///     MissingError: One of several arguments that belong together.
///     UnitError, TextError: No quantities of these kinds, or another filler.
///     OutOfRangeError: A slot as wide as the bore, a key longer than its hub, a share outside 0 to 1.
///
/// Conservative: the bottom alone takes the torque, in even shear; walls are not counted.
///
/// Source: linear thermal expansion; geometry; statics; each published gap has its own.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> found = hw.joint.brazed_key(
///     ...     bore="22 mm", slot_width="4.06 mm", depth="1.8 mm", key_width="4 mm", length="18 mm",
///     ...     rise="630 K", hub_expansion="20 um/m/K", key_expansion="12 um/m/K", filler="any",
///     ...     torque="4 N m", sound_share=0.7, allowed_shear="25 MPa",
///     ... )
///     >>> found
///     <BrazedKey gap 0.0405 mm a side, filler 5.81 mm³, shear 7.215 MPa>
///     >>> found.gap_outcome
///     <GapOutcome.WITHIN: 'within'>
///     >>> found.advice.split(":")[0]
///     'Braze before the last facing and finish boring'
#[pyfunction]
#[pyo3(signature = (*, bore, slot_width, depth, key_width, length, rise = None, hub_expansion = None, key_expansion = None, chamfer = None, filler = None, torque = None, sound_share = None, allowed_shear = None, hub_length = None))]
#[allow(clippy::too_many_arguments, reason = "one keyword a figure")]
pub fn brazed_key(
    bore: Q<Length>,
    slot_width: Q<Length>,
    depth: Q<Length>,
    key_width: Q<Length>,
    length: Q<Length>,
    rise: Option<Q<TemperatureInterval>>,
    hub_expansion: Option<Q<TemperatureCoefficient>>,
    key_expansion: Option<Q<TemperatureCoefficient>>,
    chamfer: Option<Q<Length>>,
    filler: Option<W<Filler>>,
    torque: Option<Q<Torque>>,
    sound_share: Option<Plain>,
    allowed_shear: Option<Q<Pressure>>,
    hub_length: Option<Q<Length>>,
) -> PyResult<BrazedKey> {
    let mut key = joint::BrazedKey::new(
        bore.named("bore")?,
        slot_width.named("slot_width")?,
        depth.named("depth")?,
        key_width.named("key_width")?,
        length.named("length")?,
    );
    match (rise, hub_expansion, key_expansion) {
        (Some(rise), Some(hub), Some(of_key)) => {
            let (hub, of_key) = (hub.named("hub_expansion")?, of_key.named("key_expansion")?);
            key = key.with_heat(rise.named("rise")?, hub, of_key);
        }
        (None, None, None) => {}
        (rise, hub, of_key) => {
            together(rise.is_some(), "rise")?;
            together(hub.is_some(), "hub_expansion")?;
            together(of_key.is_some(), "key_expansion")?;
        }
    }
    let allowed = allowed_shear.map(|stress| stress.named("allowed_shear")).transpose()?;
    match (torque, sound_share) {
        (Some(torque), Some(share)) => {
            let share = share.named("sound_share")?;
            key = key.with_torque(torque.named("torque")?, share, allowed);
        }
        (None, None) => together(allowed.is_none(), "torque")?,
        (torque, share) => {
            together(torque.is_some(), "torque")?;
            together(share.is_some(), "sound_share")?;
        }
    }
    if let Some(chamfer) = chamfer {
        key = key.with_chamfer(chamfer.named("chamfer")?);
    }
    if let Some(filler) = filler {
        key = key.with_filler(filler.named("filler")?);
    }
    if let Some(hub) = hub_length {
        key = key.with_hub_length(hub.named("hub_length")?);
    }
    Ok(BrazedKey(key.solve()?))
}
