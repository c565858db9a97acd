//! How the loose flange dishes under its nut.

use super::Holding;
use crate::error::Error;
use crate::solid::plate::{RingPlate, Sag};
use crate::units::{Force, Length, Pressure, meter, radian, shown_mm, zero_or_more};

/// The loose flange inside its land, as a plate.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Recess {
    /// Hole of the flange.
    pub hole: Length,
    /// Thickness of the plate behind the recess.
    pub thickness: Length,
    /// Modulus of elasticity.
    pub modulus: Pressure,
    /// Poisson's ratio.
    pub poisson: f64,
    /// Depth of the recess.
    pub depth: Length,
}

/// How far it bends, at the greatest preload.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Dish {
    /// Sags, slope and lift of the plate.
    pub sag: Sag,
    /// Depth of the recess less the sag at the hole with shear; below zero the flange touches the wheel there.
    pub room: Length,
    /// What the slope makes of the width of the land: the blotter has to give that much.
    pub land_tilt: Length,
}

impl Recess {
    /// What a preload does to it: the nut presses at the middle of its face, the land holds at its own.
    pub(super) fn under(self, of: &Holding, force: Force) -> Result<Dish, Error> {
        zero_or_more("recess", shown_mm(self.depth), "mm", "2 mm")?;
        let middle = |inside: Length, outside: Length| (inside + outside) / 2.0;
        let load = middle(of.face.inside, of.face.outside);
        let land = middle(of.land.inside, of.land.outside);
        let plate = RingPlate::new(
            [self.hole, of.land.outside],
            [load, land],
            self.thickness,
            self.modulus,
            self.poisson,
        )
        .map_err(|error| match error.argument() {
            Some("hole") => error.named("flange_hole"),
            Some("thickness") => error.named("flange_thickness"),
            Some("load") => error.named("face_outside"),
            _ => error,
        })?;
        let sag = plate.bend(force)?;
        let width = (of.land.outside - of.land.inside).get::<meter>() / 2.0;
        Ok(Dish {
            sag,
            room: self.depth - sag.with_shear,
            land_tilt: Length::new::<meter>(sag.slope.get::<radian>() * width),
        })
    }
}
