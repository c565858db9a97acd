//! The seat: a hub on the taper of a spindle whose angles differ a little.

mod check;
mod column;
mod print;
mod pushed;
mod slices;
mod tilt;
mod working;

pub use self::print::{Print, PrintExpected, PrintRead};
pub use self::pushed::{Along, AngleTolerance, Carries, Pushed};
pub use self::slices::{RingSlices, SeatByRule, seat_by_rule};
pub use self::tilt::{TiltRunOut, seat_rocking, tilt_run_out};

use std::sync::Arc;

use crate::error::{Error, ErrorKind};
use crate::solid::cone::{Compliance, Cone, End, FINE, Front, Path, Stuff, USUAL};
use crate::source::{Source, Status};
use crate::tables::materials::Elastic;
use crate::units::{Angle, Length, Pressure, meter, pascal, radian};

/// Contact of a hub on a cone.
pub const CONE_CONTACT: Source = Source::new(
    "cone-contact",
    "elastic contact of two bodies round an axis, by finite elements (Johnson, Contact Mechanics; Kikuchi and Oden)",
    "",
    "",
    Status::Computed,
);
/// Statics of a cone with friction.
pub const CONE_STATICS: Source =
    Source::new("cone-statics", "statics of a cone with friction", "", "", Status::Computed);
/// Rings that give on their own, after Lamé.
pub const RING_SLICES: Source = Source::new(
    "ring-slices",
    "Lamé's rings, each on its own (Timoshenko and Goodier, Theory of Elasticity)",
    "",
    "",
    Status::Computed,
);
/// How prints of marking paste are read.
pub const PRINTS: Source =
    Source::new("practice", "common practice, no source", "", "", Status::Practice);

/// Greatest mismatch of half angles that counts as small, in degrees.
const GREATEST_MISMATCH: f64 = 0.5;

/// From a place on, seen from the small end, the hub has another outside diameter.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct HubStep {
    /// Distance from the small end of the seat.
    pub from: Length,
    /// Outside diameter from there on.
    pub diameter: Length,
}

/// A hub that a nut pushes onto the taper of a spindle.
///
/// Both half angles differ by the mismatch, hub less spindle: above zero the hub is too open and the
/// small end carries, below zero the large end does. The nut's force spreads contact from
/// there. Hub and spindle are elastic bodies round one axis, cut into 9-node elements and
/// condensed on 40 segments of the seat; friction resists the push on every segment. On the segments
///
/// `g = g0 − D sin α + C p ≥ 0`, `p ≥ 0`, `p g = 0`, `Σ A p (sin α + μ cos α) = F`,
///
/// with `g0` the gap that the mismatch leaves, `D` the draw-up, `C` the compliances, `p` the
/// pressures, `A` the areas, `F` the force, `α` the half angle, `μ` the friction. Then
///
/// `T = μ Σ p ∫R dA` is the torque at which it slips while the nut stays on, and
/// `F (μ − tan α) / (μ + tan α)` the force that lets it go once the nut is off: below zero it
/// comes off by itself.
///
/// It holds for smooth, round, elastic cones that are pushed on once, with one friction all over, up to
/// a mismatch of 0.5°. Against a mesh of four times the elements the length in contact is
/// within 0.003 of the seat and the force for 95 % within 1 %; where the edge of the hub lifts, so that
/// the last few per cent hardly close, meshes differ by 5 % in that force. Pressures at the very
/// edge grow with a finer mesh. No experiment is behind it. The radius at which
/// the nut bears is the input that matters most, because a push beside the seat rolls the hub.
///
/// # Errors
///
/// [`OutOfRange`](ErrorKind::OutOfRange) or [`NotFinite`](ErrorKind::NotFinite) for lengths not above zero,
/// a wall of hub or spindle thinner than a twentieth of its radius, a nut that bears outside of
/// the hub's face, steps that are not in order or nearer than a twentieth of the length, a taper outside
/// 0.001 to 1, a friction not above 0 and up to 1. Yielding is no error: see
/// [`Pushed::hub_factor`].
///
/// # Source
///
/// Finite elements of our own; Johnson, *Contact Mechanics*; Kikuchi and Oden on one-sided contact.
///
/// # Example
///
/// A steel hub of 40 mm on a taper 1:5 from 25 mm, 25 mm long, three minutes of arc too open: 8 kN leave it
/// open over half of its length, and it would take 21 kN to close 95 % of it.
///
/// ```
/// use hubwright::joint::Seat;
/// use hubwright::tables::materials::{Elastic, Metal};
/// use hubwright::units::{Angle, Force, Length, degree, millimeter, newton};
///
/// let mm = Length::new::<millimeter>;
/// let steel = Elastic::from(Metal::Steel);
/// let seat = Seat::new(steel, steel, mm(25.0), 0.2, mm(25.0), mm(40.0), mm(40.0))
///     .with_overhangs(mm(15.0), mm(30.0))
///     .solve(0.12)?;
/// let pushed = seat.push(Force::new::<newton>(8000.0), Angle::new::<degree>(0.05))?;
/// assert!((pushed.contact - 0.49).abs() < 0.01);
/// let closing = pushed.force_for_95.unwrap_or_default().get::<newton>();
/// assert!((closing - 21_300.0).abs() < 100.0);
/// # Ok::<(), hubwright::Error>(())
/// ```
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub struct Seat {
    /// Material of the hub.
    pub hub: Elastic,
    /// Material of the spindle.
    pub spindle: Elastic,
    /// Diameter at the small end.
    pub small_diameter: Length,
    /// Change of diameter over length: 0.2 for a taper of 1:5.
    pub taper: f64,
    /// Engaged length.
    pub length: Length,
    /// Outside diameter of the hub at the small end.
    pub hub_diameter: Length,
    /// Outside diameter of the face by which nut or washer bears on the hub; it begins at the seat.
    pub nut_diameter: Length,
    /// Where the hub's outside diameter changes, from the small end.
    pub steps: Vec<HubStep>,
    /// Bore of the spindle; zero for a solid one.
    pub spindle_bore: Length,
    /// How far the spindle reaches beyond the small and the large end.
    pub overhangs: [Length; 2],
    /// Stress at which the hub yields.
    pub hub_yield: Option<Pressure>,
    /// Stress at which the spindle yields.
    pub spindle_yield: Option<Pressure>,
    /// Whether the finer mesh is used.
    pub fine: bool,
}

impl Seat {
    /// A plain hub on a solid spindle that ends with the seat.
    pub fn new(
        hub: Elastic,
        spindle: Elastic,
        small_diameter: Length,
        taper: f64,
        length: Length,
        hub_diameter: Length,
        nut_diameter: Length,
    ) -> Self {
        Self {
            hub,
            spindle,
            small_diameter,
            taper,
            length,
            hub_diameter,
            nut_diameter,
            steps: Vec::new(),
            spindle_bore: Length::default(),
            overhangs: [Length::default(); 2],
            hub_yield: None,
            spindle_yield: None,
            fine: false,
        }
    }

    /// With another outside diameter of the hub from a place on, seen from the small end.
    #[must_use]
    pub fn with_step(mut self, from: Length, diameter: Length) -> Self {
        self.steps.push(HubStep { from, diameter });
        self
    }

    /// With a bore through the spindle.
    #[must_use]
    pub fn with_spindle_bore(mut self, bore: Length) -> Self {
        self.spindle_bore = bore;
        self
    }

    /// With a spindle that reaches beyond the small and the large end.
    #[must_use]
    pub fn with_overhangs(mut self, small: Length, large: Length) -> Self {
        self.overhangs = [small, large];
        self
    }

    /// With the stress at which the hub yields.
    #[must_use]
    pub fn with_hub_yield(mut self, stress: Pressure) -> Self {
        self.hub_yield = Some(stress);
        self
    }

    /// With the stress at which the spindle yields.
    #[must_use]
    pub fn with_spindle_yield(mut self, stress: Pressure) -> Self {
        self.spindle_yield = Some(stress);
        self
    }

    /// On a mesh of 64 segments, to see what the mesh does; it takes ten times as long.
    #[must_use]
    pub fn with_fine_mesh(mut self) -> Self {
        self.fine = true;
        self
    }

    /// The seat with a friction, ready for any number of forces and mismatches.
    ///
    /// # Errors
    ///
    /// As described on the type.
    pub fn solve(self, friction: f64) -> Result<SeatFound, Error> {
        self.check()?;
        check::friction(friction)?;
        let cone = self.cone();
        let compliance = Arc::new(cone.compliance(if self.fine { FINE } else { USUAL }));
        SeatFound::of(Arc::new((self, cone)), compliance, friction)
    }

    /// The bodies in bare numbers.
    fn cone(&self) -> Cone {
        let radius = |diameter: Length| diameter.get::<meter>() / 2.0;
        let stuff =
            |of: &Elastic| Stuff { modulus: of.modulus.get::<pascal>(), poisson: of.poisson };
        let ends = self.steps.iter().map(|step| step.from).chain([self.length]);
        let diameters =
            [self.hub_diameter].into_iter().chain(self.steps.iter().map(|s| s.diameter));
        Cone {
            length: self.length.get::<meter>(),
            small: radius(self.small_diameter),
            slope: self.taper / 2.0,
            steps: ends.zip(diameters).map(|(to, d)| (to.get::<meter>(), radius(d))).collect(),
            bore: radius(self.spindle_bore),
            overhangs: self.overhangs.map(|length| length.get::<meter>()),
            nut: radius(self.nut_diameter),
            hub: stuff(&self.hub),
            spindle: stuff(&self.spindle),
        }
    }

    /// Half angle of the taper.
    pub fn half_angle(&self) -> Angle {
        Angle::new::<radian>((self.taper / 2.0).atan())
    }

    /// Diameter at the large end.
    pub fn large_diameter(&self) -> Length {
        self.small_diameter + self.length * self.taper
    }
}

/// A seat whose compliance is known: what [`Seat::solve`] found.
#[derive(Clone, Debug)]
pub struct SeatFound {
    of: Arc<(Seat, Cone)>,
    compliance: Arc<Compliance>,
    friction: f64,
    /// How contact spreads from the small and from the large end.
    sides: [(Path, Front); 2],
    /// Displacement of the hub's bore outwards for a unit of pressure, row by row.
    outwards: Vec<f64>,
}

impl SeatFound {
    fn of(
        of: Arc<(Seat, Cone)>,
        compliance: Arc<Compliance>,
        friction: f64,
    ) -> Result<Self, Error> {
        let cone = &of.1;
        let Some(paths) = cone.paths(&compliance, friction) else {
            return Err(ErrorKind::OutOfRange {
                argument: "friction".into(),
                given: friction,
                range: "so high that this seat jams instead of closing".into(),
                unit: "",
                authority: String::new(),
                hint: "give the friction of the seat, such as 0.12".into(),
            }
            .into());
        };
        let side = |path: Path| {
            let front = Front::of(&path, &compliance.segments, cone.length);
            (path, front)
        };
        let both = compliance.outwards.iter().zip(&compliance.outwards_along);
        let outwards = both.map(|(normal, along)| normal - friction * along).collect();
        Ok(Self { sides: paths.map(side), outwards, friction, compliance, of })
    }

    /// The seat.
    pub fn seat(&self) -> &Seat {
        &self.of.0
    }

    /// Friction in it.
    pub fn friction(&self) -> f64 {
        self.friction
    }

    /// The same seat with another friction; the bodies are not solved again.
    ///
    /// # Errors
    ///
    /// As described on [`Seat`].
    pub fn with_friction(&self, friction: f64) -> Result<Self, Error> {
        check::friction(friction)?;
        Self::of(self.of.clone(), self.compliance.clone(), friction)
    }

    /// Ends of the segments along the seat, from the small end.
    pub fn segments(&self) -> Vec<[Length; 2]> {
        let ends = |x: f64| Length::new::<meter>(x);
        self.compliance.segments.iter().map(|segment| segment.ends.map(ends)).collect()
    }

    /// Gap that a pressure of 1 Pa on one segment (column) opens on another (row), in metres, once for
    /// pressure and once for pull along the seat toward the large end: what this
    /// seat can be solved from by other means.
    pub fn compliances(&self) -> [Vec<Vec<f64>>; 2] {
        let rows =
            |of: &[f64]| of.chunks(self.compliance.segments.len()).map(<[f64]>::to_vec).collect();
        [rows(&self.compliance.normal), rows(&self.compliance.along)]
    }

    fn cone(&self) -> &Cone {
        &self.of.1
    }

    /// The side of a mismatch; one of zero is nobody's, and either will do.
    fn side(&self, end: End) -> &(Path, Front) {
        &self.sides[end as usize]
    }
}

/// End that carries, and tangent of a mismatch.
fn mismatched(mismatch: Angle) -> (End, f64) {
    let tangent = mismatch.get::<radian>().tan();
    (if tangent < 0.0 { End::Large } else { End::Small }, tangent.abs())
}
