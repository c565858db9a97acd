//! What is written on a wheel: part of `hubwright.wheel`.

use pyo3::prelude::*;

use super::joint::Text;
use super::parts::Wheel;
use super::quantity::Out;
use super::rings::found;
use super::verdict::Source;
use super::words::WordOut;
use crate::units::{AngularVelocity, Length, Velocity};
use crate::wheel::{self, Abrasive, Bond, Restriction};

/// The grain in a marking.
#[pyclass(frozen, module = "hubwright._core")]
pub struct Grain(wheel::Grain);

found! {
    Grain(wheel::Grain) {
        /// Its number.
        number: u16 = |of| of.number;
        /// Mean size of a bonded wheel's grain; of diamond and CBN the sieve it stays on. In mm.
        least: Out<Length> = |of| Out(of.least);
        /// The same mean size; of diamond and CBN the sieve it passes. In mm.
        greatest: Out<Length> = |of| Out(of.greatest);
        /// Where the size is from.
        source: Source = |of| Source(of.source);
    }

    fn __repr__(&self) -> String {
        format!("<Grain {}>", self.0.number)
    }
}

/// A marking, read: what `read_marking` found. What a marking does not say is `None`.
#[pyclass(frozen, eq, module = "hubwright._core")]
#[derive(Clone, PartialEq)]
pub struct Marking(wheel::Marking);

found! {
    Marking(wheel::Marking) {
        /// Shape as it is marked, such as `"type 41"` or `"1A1"`.
        shape: Option<String> = |of| of.shape.as_ref().map(ToString::to_string);
        /// Nominal diameter, in mm.
        diameter: Option<Out<Length>> = |of| of.diameter.map(Out);
        /// Nominal thickness, in mm.
        thickness: Option<Out<Length>> = |of| of.thickness.map(Out);
        /// Nominal hole, in mm.
        hole: Option<Out<Length>> = |of| of.hole.map(Out);
        /// What the maker writes before the abrasive.
        prefix: Option<String> = |of| of.prefix.clone();
        /// Abrasive.
        abrasive: Option<WordOut<Abrasive>> = |of| of.abrasive.map(WordOut);
        /// Grain.
        grain: Option<Grain> = |of| of.grain.map(Grain);
        /// Grade, A the softest and Z the hardest.
        grade: Option<char> = |of| of.grade;
        /// Structure, 0 the densest.
        structure: Option<u8> = |of| of.structure;
        /// Share of the wheel that is abrasive, by its structure.
        abrasive_share: Option<f64> = wheel::Marking::abrasive_share;
        /// Concentration of diamond or CBN; 100 is a quarter of the rim.
        concentration: Option<u16> = |of| of.concentration;
        /// Bond.
        bond: Option<WordOut<Bond>> = |of| of.bond.map(WordOut);
        /// What the maker writes after the bond.
        suffix: Option<String> = |of| of.suffix.clone();
        /// Rim speed, in m/s: a limit.
        rim_speed: Option<Out<Velocity>> = |of| of.rim_speed.map(Out);
        /// Rotational speed, in rpm: a limit.
        speed: Option<Out<AngularVelocity>> = |of| of.speed.map(Out);
        /// The stripe to look for on a wheel of this rim speed; from memory, and no permission.
        stripe: Option<&'static str> = wheel::Marking::stripe;
        /// Restrictions of use, each its mark and what it says.
        restrictions: Vec<(WordOut<Restriction>, &'static str)> =
            |of| of.restrictions.iter().map(|mark| (WordOut(*mark), mark.says())).collect();
        /// Parts that were not read, each with the reason.
        unread: Vec<(String, &'static str)> =
            |of| of.unread.iter().map(|part| (part.text.clone(), part.why)).collect();
        /// Parts that could be meant otherwise than they were read.
        doubts: Vec<String> = |of| of.doubts.clone();
        /// The marking in words, a part a line, with how sure each figure is.
        in_words: Vec<String> = wheel::Marking::in_words;
    }

    /// A wheel with what the marking says where nothing was known.
    ///
    /// Of two speeds the lower counts; what else differs stays as it was, and the rule
    /// `marking-disagrees` then tells of it.
    ///
    /// Args:
    ///     wheel: What is known of the wheel; nothing when left out.
    ///
    /// Examples:
    ///     >>> import hubwright as hw
    ///     >>> marking = hw.wheel.read_marking("A 60 K 7 V 35 m/s")
    ///     >>> wheel = marking.fill(hw.Wheel(diameter="200 mm"))
    ///     >>> wheel.bond, str(wheel.marked_rim_speed)
    ///     (<Bond.VITRIFIED: 'vitrified'>, '35.0 meter / second')
    #[pyo3(signature = (wheel = None))]
    fn fill(&self, wheel: Option<Wheel>) -> Wheel {
        Wheel(wheel.map(|wheel| wheel.0).unwrap_or_default().with_marking(&self.0))
    }

    fn __str__(&self) -> String {
        self.0.to_string()
    }

    fn __repr__(&self) -> String {
        format!("<Marking {}>", self.0)
    }
}

/// Reads what is written on a wheel.
///
/// Bonded wheels by the order of ISO 525: maker's prefix, abrasive (A, C), grain (FEPA F), grade, structure,
/// bond, maker's suffix. Diamond and CBN by the shape codes of ISO 6104, the grain (D126, B151), concentration
/// (C100) and bond. Sizes, type, speeds and restrictions may stand anywhere; blanks and hyphens don't matter.
/// Nothing is guessed: see `.unread` and `.doubts`.
///
/// Args:
///     text: The marking, up to 200 characters.
///
/// Raises:
///     TextError: An empty or longer text.
///
/// Source: ISO 525 as set out in a reprint; ISO 6104, EN 12413 and most FEPA sizes from memory.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> marking = hw.wheel.read_marking("38A60-K8VBE max. 3820 rpm")
///     >>> marking
///     <Marking 38A 60 K 8 V BE 3820 rpm>
///     >>> for line in marking.in_words[:3]:
///     ...     print(line)
///     aluminium oxide
///     grain 60: 260 µm on average [FEPA 42-1 and ISO 8486-1, mean sizes (from memory, unverified)]
///     grade K, on a scale from A, soft, to Z, hard
#[pyfunction]
pub fn read_marking(text: Text) -> PyResult<Marking> {
    let text = text.named("text", "marking of a wheel", "40A 60 K 7 V A1 35 m/s")?;
    Ok(Marking(wheel::read_marking(&text)?))
}
