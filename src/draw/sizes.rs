//! What a section shows, in mm of the page, and where it lies along the axis.

use super::profile::{Edge, Flange};
use crate::mounting::facts::of;
use crate::mounting::{FIELDS, Facts, Field, ThreadHand, YesNo};
use crate::wheel::{FlangeKind, Shape};

/// Drawn length of a nut of unknown length, and of a hub beyond the last part.
const SOME_NUT: f64 = 5.0;
const STUB: f64 = 3.0;
/// Drawn thickness of a blotter of unknown thickness.
const SOME_BLOTTER: f64 = 0.8;

/// Heading of a field by its place and name.
pub(super) fn heading(place: &str, name: &str) -> String {
    let field = FIELDS.iter().find(|field| field.place == place && field.name == name);
    field.map_or_else(|| format!("{place} {name}"), Field::heading)
}

/// A blotter in mm of the page; `None` for what isn't given.
#[derive(Clone, Copy, Debug)]
pub(super) struct Blotter {
    pub(super) radius: Option<f64>,
    pub(super) hole: Option<f64>,
    pub(super) thickness: Option<f64>,
}

impl Blotter {
    pub(super) fn drawn_thickness(blotter: Option<Self>) -> f64 {
        blotter.map_or(0.0, |blotter| blotter.thickness.unwrap_or(SOME_BLOTTER))
    }
}

/// Everything drawn, in mm of the page; `None` for what isn't given.
#[derive(Clone, Debug)]
pub(super) struct Sizes {
    pub(super) shape: Option<Shape>,
    pub(super) wheel: f64,
    pub(super) hole: f64,
    pub(super) thickness: f64,
    pub(super) fixed: Flange,
    pub(super) loose: Flange,
    pub(super) blotters: [Option<Blotter>; 2],
    /// Thickness of one of two stabiliser discs.
    pub(super) disc: f64,
    pub(super) spigot: Option<f64>,
    /// A nut, and its length.
    pub(super) nut: Option<Option<f64>>,
    pub(super) thread_from: Option<f64>,
    pub(super) thread_to: Option<f64>,
    pub(super) left_out: Vec<String>,
}

impl Sizes {
    pub(super) fn of(f: &Facts, ratio: f64) -> Self {
        let mut left_out = Vec::new();
        let size = |nm: f64| Some(nm / 1e6 * ratio).filter(|size| !size.is_nan());
        // A size that the drawing would like to have.
        let mut wanted = |place, name, nm: f64| {
            if nm.is_nan() {
                left_out.push(heading(place, name));
            }
            size(nm)
        };
        let hole = f.wheel.hole.0 / 1e6 * ratio / 2.0;
        let straight = f.wheel.shape.is_one(is_straight);
        let mut flange = |place, flange: &of::Flange| {
            let radius = flange.diameter.0 / 1e6 * ratio / 2.0;
            let undercut = size(flange.undercut.0).filter(|undercut| *undercut > 0.0);
            let may_be = flange.kind.is_one(FlangeKind::undercut) && flange.undercut.0.is_nan();
            if may_be {
                wanted(place, "undercut", f64::NAN);
            }
            let adaptor = may_be || undercut.is_some();
            let flat = flange.kind.is(FlangeKind::Unrelieved) && flange.recess.0.is_nan();
            let recess = match size(flange.recess.0) {
                _ if flat => Some(0.0),
                // How deep an undercut is, no field says.
                Some(0.0) if adaptor => None,
                recess if adaptor => recess,
                _ => wanted(place, "recess", flange.recess.0),
            };
            let land_ends = match (size(flange.land.0), undercut) {
                (Some(land), _) => Some(radius - land),
                (None, Some(undercut)) => Some(hole + undercut),
                (None, None) if recess == Some(0.0) || may_be => None,
                (None, None) => wanted(place, "land", flange.land.0),
            };
            let at_hole = wanted(place, "thickness_at_hole", flange.thickness_at_hole.0);
            let at_edge = match recess == Some(0.0) && at_hole.is_some() {
                true => size(flange.thickness_at_edge.0),
                false => wanted(place, "thickness_at_edge", flange.thickness_at_edge.0),
            };
            Flange { radius, land_ends, recess, at_hole, at_edge }
        };
        let fixed = flange("fixed_flange", &f.fixed_flange);
        let loose = flange("loose_flange", &f.loose_flange);
        let mut blotter = |place, blotter: &of::Blotter| {
            let told = blotter.diameter.given() || blotter.thickness.given();
            if blotter.present.is(YesNo::No) || blotter.thickness.0 == 0.0 {
                return None;
            }
            if blotter.present.blank() || !(blotter.present.given() || told) {
                wanted(place, "present", f64::NAN);
                return None;
            }
            Some(Blotter {
                radius: wanted(place, "diameter", blotter.diameter.0).map(|d| d / 2.0),
                hole: wanted(place, "hole", blotter.hole.0).map(|d| d / 2.0),
                thickness: wanted(place, "thickness", blotter.thickness.0),
            })
        };
        let blotters = [
            blotter("fixed_blotter", &f.fixed_blotter),
            blotter("loose_blotter", &f.loose_blotter),
        ];
        if f.hub.stabilisers.blank() {
            wanted("hub", "stabilisers", f64::NAN);
        }
        let no_nut = f.nut.thread_hand.is(ThreadHand::NoNut);
        let nut = (!no_nut).then(|| wanted("nut", "length", f.nut.length.0));
        let mut thread = |name, nm: f64| if no_nut { None } else { wanted("hub", name, nm) };
        let thread_from = thread("thread_from", f.hub.thread_from.0);
        let thread_to = thread("thread_to", f.hub.thread_to.0);
        let spigot = wanted("hub", "spigot", f.hub.spigot.0).map(|d| d / 2.0);
        if !straight && !f.wheel.shape.given() {
            wanted("wheel", "shape", f64::NAN);
        }
        Self {
            shape: f.wheel.shape.get(),
            wheel: f.wheel.diameter.0 / 1e6 * ratio / 2.0,
            hole,
            thickness: f.wheel.thickness.0 / 1e6 * ratio,
            fixed,
            loose,
            blotters,
            disc: size(f.hub.stabilisers.0).unwrap_or(0.0) / 2.0,
            spigot,
            nut,
            thread_from,
            thread_to,
            left_out,
        }
    }

    pub(super) fn straight(&self) -> bool {
        self.shape.is_some_and(is_straight)
    }

    /// Where the wheel begins and ends.
    pub(super) fn wheel_from(&self) -> f64 {
        if self.straight() { self.disc + Blotter::drawn_thickness(self.blotters[0]) } else { 0.0 }
    }

    pub(super) fn wheel_to(&self) -> f64 {
        self.wheel_from() + self.thickness
    }

    /// Where the land of the loose flange lies.
    pub(super) fn loose_at(&self) -> f64 {
        self.wheel_to() + Blotter::drawn_thickness(self.blotters[1]) + self.disc
    }

    /// Where the nut begins and ends, as drawn.
    pub(super) fn nut_place(&self) -> Option<(f64, f64)> {
        let from = self.loose_at() + self.loose.nut_face().unwrap_or(self.loose.back());
        self.nut.map(|length| (from, from + length.unwrap_or(SOME_NUT)))
    }

    /// Where the hub ends, as drawn, and whether it is known to end there.
    pub(super) fn hub_end(&self) -> (f64, Edge) {
        let last = self.nut_place().map_or(self.loose_at() + self.loose.back(), |(_, to)| to);
        match self.thread_to {
            _ if !self.straight() => (self.thickness.min(6.0), Edge::Broken),
            Some(to) => (to, Edge::Known),
            None => (last + STUB, Edge::Broken),
        }
    }

    /// How far the parts reach to the right.
    pub(super) fn right(&self) -> f64 {
        if !self.straight() {
            return self.wheel_to();
        }
        let nut = self.nut_place().map_or(0.0, |(_, to)| to);
        (self.loose_at() + self.loose.back()).max(nut).max(self.hub_end().0)
    }

    /// How much of the axis the parts take.
    pub(super) fn width(&self) -> f64 {
        self.fixed.back() + self.right()
    }

    /// Radius of the spigot as drawn: where it isn't given, that of the hole.
    pub(super) fn spigot_drawn(&self) -> f64 {
        self.spigot.unwrap_or(self.hole)
    }
}

/// Whether a rectangle is the whole section of a wheel.
pub(super) fn is_straight(shape: Shape) -> bool {
    matches!(shape, Shape::Type1 | Shape::Type1CuttingOff)
}
