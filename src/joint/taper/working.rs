//! How a taper comes to its angle.

use super::{TRIANGLE, Taper};
use crate::tables::tapers::Defined;
use crate::units::{degree, figure};
use crate::working::{Step, Working};

impl Taper {
    /// The steps, recomputed; the last one's result is the cone angle in degrees.
    pub fn working(&self) -> Working {
        let mut steps = Vec::new();
        let (relation, numbers) = match self.defined {
            Defined::Ratio(diameter, length) => (
                "change of diameter / (2 length)",
                format!("{} / (2 · {})", figure(diameter, 7), figure(length, 7)),
            ),
            Defined::Included(degrees) => {
                ("tan (cone angle / 2)", format!("tan ({}° / 2)", figure(degrees, 7)))
            }
        };
        let mut step = |symbol, relation, numbers, result, unit, source| {
            steps.push(Step { symbol, relation, numbers, result, unit, source });
        };
        let again = Self::new(self.defined, self.source);
        step("tan α", relation, numbers, again.per_side, "", self.source);
        step(
            "taper on diameter",
            "2 tan α",
            format!("2 · {}", figure(again.per_side, 9)),
            again.on_diameter(),
            "",
            TRIANGLE,
        );
        step(
            "taper per foot",
            "24 tan α",
            format!("24 · {}", figure(again.per_side, 9)),
            again.in_per_ft(),
            "in/ft",
            TRIANGLE,
        );
        step(
            "half angle α",
            "arctan tan α",
            format!("arctan {}", figure(again.per_side, 9)),
            again.half_angle.get::<degree>(),
            "°",
            TRIANGLE,
        );
        step(
            "cone angle",
            "2 α",
            format!("2 · {}°", figure(again.half_angle.get::<degree>(), 7)),
            again.cone_angle().get::<degree>(),
            "°",
            TRIANGLE,
        );
        Working { steps }
    }
}
