//! What is written on a wheel, put beside what is said of its mounting.

#[cfg(feature = "sheets")]
use super::facts::{BLANK, NOT_ASKED};
use super::parts::{Datum, Wheel};
use super::sort::FieldType;
use crate::units::words;
use crate::wheel::Marking;

/// How far a nominal size on the wheel may be from the measured one, as a share of
/// it: of diameter and hole, and of a thickness. Common practice, no source.
const SIZES_WITHIN: f64 = 0.03;
const THICKNESS_WITHIN: f64 = 0.10;
/// How far two speeds may be apart because one was rounded, as `markings-disagree` has it.
const ROUNDED_WITHIN: f64 = 0.005;

words! {
    /// How a wheel's marking compares with what is said of the wheel.
    MarkingSays, "what the marking says" {
        /// The same, as far as both say anything.
        Same = "the same" ["same", "agrees"];
        /// Another speed.
        OtherSpeed = "another speed" [];
        /// Another diameter, thickness or hole.
        OtherSize = "another size" [];
        /// Another shape.
        OtherShape = "another shape" [];
        /// Another abrasive.
        OtherAbrasive = "another abrasive" [];
        /// Another bond.
        OtherBond = "another bond" [];
    }
}

/// What a marking says of the fields of a wheel, by their names. Its hole is the nominal
/// one: what fits a spigot has to be measured.
pub(crate) fn said(marking: &Marking) -> [(&'static str, Option<f64>); 8] {
    [
        ("shape", marking.shape.as_ref().and_then(|mark| mark.shape()).map(FieldType::to_fact)),
        ("diameter", marking.diameter.map(FieldType::to_fact)),
        ("thickness", marking.thickness.map(FieldType::to_fact)),
        ("nominal_hole", marking.hole.map(FieldType::to_fact)),
        ("abrasive", marking.abrasive.map(FieldType::to_fact)),
        ("bond", marking.bond.map(FieldType::to_fact)),
        ("marked_speed", marking.speed.map(FieldType::to_fact)),
        ("marked_rim_speed", marking.rim_speed.map(FieldType::to_fact)),
    ]
}

/// What a field is to hold, by what is known and what the marking says: a blank is
/// filled, of two speeds the lower is taken, and else what is known stays. With it how they compare.
pub(crate) fn merge(name: &str, known: f64, said: f64) -> (f64, MarkingSays) {
    if known.is_nan() {
        return (said, MarkingSays::Same);
    }
    let off = |share: f64| (known - said).abs() > share * known;
    let (differs, says) = match name {
        "marked_speed" | "marked_rim_speed" => (off(ROUNDED_WITHIN), MarkingSays::OtherSpeed),
        "thickness" => (off(THICKNESS_WITHIN), MarkingSays::OtherSize),
        "diameter" | "nominal_hole" => (off(SIZES_WITHIN), MarkingSays::OtherSize),
        "shape" => (known != said, MarkingSays::OtherShape),
        "abrasive" => (known != said, MarkingSays::OtherAbrasive),
        _ => (known != said, MarkingSays::OtherBond),
    };
    let kept = if says == MarkingSays::OtherSpeed { known.min(said) } else { known };
    (kept, if differs { says } else { MarkingSays::Same })
}

/// The worse of two comparisons: another speed can be lived with at the lower one,
/// but of two bonds nobody can tell which is the wheel's.
pub(crate) fn worse(a: MarkingSays, b: MarkingSays) -> MarkingSays {
    a.max(b)
}

/// Whether a marking says nothing that a mounting could use.
pub(crate) fn says_nothing(marking: &Marking) -> bool {
    said(marking).iter().all(|(_, fact)| fact.is_none())
}

impl Wheel {
    /// This wheel with what its marking says where nothing was known.
    ///
    /// Of two speeds the lower counts; what else differs stays as it was, and
    /// `marking_says` then tells of it, which `marking-disagrees` judges. A marking of
    /// which nothing could be read leaves `marking_says` unknown.
    ///
    /// # Example
    ///
    /// ```
    /// use hubwright::mounting::{Datum, MarkingSays, Wheel};
    /// use hubwright::wheel::{Bond, read_marking};
    ///
    /// let wheel = Wheel::default().with_marking(&read_marking("A 60 K 7 V 35 m/s")?);
    /// assert_eq!(wheel.bond, Datum::Given(Bond::Vitrified));
    /// let other = wheel.with_marking(&read_marking("A 60 K 7 B 35 m/s")?);
    /// assert_eq!(other.marking_says, Datum::Given(MarkingSays::OtherBond));
    /// # Ok::<(), hubwright::Error>(())
    /// ```
    #[must_use]
    pub fn with_marking(mut self, marking: &Marking) -> Self {
        if says_nothing(marking) {
            self.marking_says = Datum::Unknown;
            return self;
        }
        let mut says = match self.marking_says {
            Datum::Given(says) => says,
            _ => MarkingSays::Same,
        };
        let said = said(marking);
        let of = |name: &str| said.iter().find(|(field, _)| *field == name).and_then(|(_, s)| *s);
        macro_rules! take {
            ($($field:ident),+) => {$(
                if let Some(said) = of(stringify!($field)) {
                    let (fact, other) = merge(stringify!($field), self.$field.to_fact(), said);
                    self.$field = FieldType::from_fact(fact).map_or(self.$field, Datum::Given);
                    says = worse(says, other);
                }
            )+};
        }
        take!(
            shape,
            diameter,
            thickness,
            nominal_hole,
            abrasive,
            bond,
            marked_speed,
            marked_rim_speed
        );
        self.marking_says = says.into();
        self
    }
}

#[cfg(feature = "sheets")]
/// How far a cell with a marking fills a row: the facts to set, and what the comparison comes to.
pub(crate) fn fill(
    marking: Option<&Marking>,
    known: impl Fn(&str) -> f64,
) -> (Vec<(&'static str, f64)>, f64) {
    let Some(marking) = marking.filter(|marking| !says_nothing(marking)) else {
        return (Vec::new(), BLANK);
    };
    let mut says = MarkingSays::Same;
    let filled = said(marking).into_iter().filter_map(|(name, said)| {
        let (fact, other) = merge(name, known(name), said?);
        says = worse(says, other);
        Some((name, fact))
    });
    let filled = filled.collect();
    // What the row says of the comparison itself counts too.
    let told = known("marking_says");
    let told = if told.is_nan() { NOT_ASKED } else { told };
    (filled, says.to_fact().max(told))
}
