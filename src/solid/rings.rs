//! Concentric elastic rings that turn: stresses, displacement, and the pressure between them.

mod equations;

pub(crate) use self::equations::hoop_at_bore;
use self::equations::{Body, Joints, Load};
use crate::error::{Error, ErrorKind};
use crate::source::{Source, Status};
use crate::tables::materials::Elastic;
use crate::units::{
    AngularVelocity, Length, Pressure, TemperatureInterval, finite, kelvin, meter, millimeter,
    pascal, radian_per_second, shown_mm, within, zero_or_more,
};

/// Elasticity of rings that are thin against their diameter and free to widen: plane stress.
pub const ROTATING_RINGS: Source = Source::new(
    "rotating-rings",
    "Lamé's rings and rotating discs (Timoshenko and Goodier, Theory of Elasticity)",
    "",
    "",
    Status::Computed,
);

/// How a ring sits on the one inside it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Held {
    /// On none: it is the innermost.
    Innermost,
    /// Bonded: the joint carries tension too.
    Bonded,
    /// Shrunk or pressed on, with this interference on diameter (below zero a clearance): the
    /// joint opens rather than carry tension.
    Shrunk(Length),
}

/// One of several concentric rings, or a solid disc.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Ring {
    /// Outside diameter.
    pub diameter: Length,
    /// What it is made of.
    pub material: Elastic,
    /// How it sits on the ring inside it.
    pub held: Held,
    /// How much warmer it is than when it was measured.
    pub rise: TemperatureInterval,
}

impl Ring {
    /// The innermost ring.
    pub fn innermost(diameter: Length, material: Elastic) -> Self {
        let rise = TemperatureInterval::new::<kelvin>(0.0);
        Self { diameter, material, held: Held::Innermost, rise }
    }

    /// A ring bonded to the one inside it.
    pub fn bonded(diameter: Length, material: Elastic) -> Self {
        Self { held: Held::Bonded, ..Self::innermost(diameter, material) }
    }

    /// A ring shrunk or pressed on the one inside it, with an interference on diameter.
    pub fn shrunk(diameter: Length, material: Elastic, interference: Length) -> Self {
        Self { held: Held::Shrunk(interference), ..Self::innermost(diameter, material) }
    }

    /// Warmer than when it was measured.
    #[must_use]
    pub fn with_rise(mut self, rise: TemperatureInterval) -> Self {
        self.rise = rise;
        self
    }
}

/// Stress and displacement at one diameter.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Point {
    /// Where.
    pub diameter: Length,
    /// Radial stress; negative is pressure.
    pub radial: Pressure,
    /// Hoop stress; negative is compression.
    pub hoop: Pressure,
    /// How far it moves outwards, on radius.
    pub outwards: Length,
}

impl Point {
    /// The stress by which a ductile material yields, after von Mises.
    pub fn von_mises(&self) -> Pressure {
        let (r, t) = (self.radial.get::<pascal>(), self.hoop.get::<pascal>());
        Pressure::new::<pascal>((r * r - r * t + t * t).max(0.0).sqrt())
    }
}

/// A ring with what presses on it.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct RingFound {
    /// The ring.
    pub ring: Ring,
    /// At its bore; at the centre of a solid disc.
    pub inside: Point,
    /// At its outside diameter.
    pub outside: Point,
    body: Body,
    load: Load,
}

impl RingFound {
    /// Stress and displacement at any diameter of the ring.
    ///
    /// # Errors
    ///
    /// [`ErrorKind::OutOfRange`] outside of the ring.
    pub fn at(&self, diameter: Length) -> Result<Point, Error> {
        let (a, b) = (self.inside.diameter, self.outside.diameter);
        within("diameter", shown_mm(diameter), [shown_mm(a), shown_mm(b)], "mm", "50 mm")?;
        Ok(self.body.point(diameter, self.load))
    }

    /// The greatest von Mises stress of the ring: it is at one of the two surfaces.
    pub fn von_mises(&self) -> Pressure {
        // With x = r², half of sum and difference of the two principal stresses are A - m x and
        // B/x + c x; the square of either is convex in x > 0, so their sum is greatest at an end.
        let (inside, outside) = (self.inside.von_mises(), self.outside.von_mises());
        if inside > outside { inside } else { outside }
    }
}

/// Where two rings meet.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Interface {
    /// Nominal diameter.
    pub diameter: Length,
    /// Pressure. Negative is the tension of a bond; zero where a shrunk ring has opened.
    pub pressure: Pressure,
    /// Whether the rings are bonded.
    pub bonded: bool,
    /// Whether a shrunk ring has let go.
    pub open: bool,
    /// Clearance on diameter where it has; zero otherwise.
    pub gap: Length,
    /// The speed from which on a shrunk ring is loose: zero when it is so at a standstill, `None`
    /// when it never comes loose. Always `None` for a bond.
    pub loosening_speed: Option<AngularVelocity>,
}

impl Interface {
    /// Tension of the bond; zero under pressure.
    pub fn tension(&self) -> Pressure {
        let pull = -self.pressure.get::<pascal>();
        Pressure::new::<pascal>(if pull > 0.0 { pull } else { 0.0 })
    }
}

/// What [`compound`] found, from the inside outwards.
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub struct Compound {
    /// Bore of the innermost ring; zero for a solid disc.
    pub bore: Length,
    /// Rotational speed.
    pub speed: AngularVelocity,
    /// The rings.
    pub rings: Vec<RingFound>,
    /// Where they meet; one fewer than there are rings.
    pub interfaces: Vec<Interface>,
}

/// Concentric rings that turn together, each bonded to or shrunk on the one inside it.
///
/// Each ring carries the stresses of its own rotation and Lamé's stresses
/// of the pressures inside and outside. At every interface the outer ring
/// must end up outside the inner one by the interference:
///
/// `u(outer) - u(inner) = U / 2`, with
/// `u = r / E (σt - ν σr) + α ΔT r` the displacement outwards,
/// `U` the interference on diameter (zero for a bond), and per free ring, with
/// `k = (3 + ν) ρ ω² / 8` and bore and outside radius `a` and `b`,
/// `σr = k (a² + b² - a² b² / r² - r²)` and
/// `σt = k (a² + b² + a² b² / r² - (1 + 3ν) / (3 + ν) r²)`.
///
/// Each of these equations holds three neighbouring pressures at most, so that one sweep
/// solves them. A solid disc (bore zero)
/// is a case of its own: at its centre the stress is half that of a pin-hole.
/// A shrunk ring can't be pulled: where that would happen it is reported as
/// open, with no pressure and its gap. Pressures are straight lines in `ω²`
/// between one opening and the next, so loosening speeds are exact.
///
/// It holds for elastic rings of one width, thin against their diameter, with
/// no keyways or holes beside the bore (which double or treble the hoop stress).
///
/// # Errors
///
/// [`ErrorKind::OutOfRange`] or [`ErrorKind::NotFinite`] for a number that
/// makes no sense, named as `rings[1].diameter`; [`ErrorKind::Missing`]
/// without a ring, without a word on how a ring is held, or for a ring that gets warmer by
/// an unknown expansion.
///
/// # Source
///
/// Timoshenko and Goodier, *Theory of Elasticity* (thick cylinders, rotating discs).
///
/// # Example
///
/// A steel core of 180 mm with a bonded rim of 200 mm at 7640 rev/min: the
/// rim wants to grow more than the core, so that the bond is in tension.
///
/// ```
/// use hubwright::solid::{Ring, compound};
/// use hubwright::tables::materials::{Elastic, Metal};
/// use hubwright::units::{
///     AngularVelocity, Length, MassDensity, Pressure, gigapascal, kilogram_per_cubic_meter,
///     megapascal, millimeter, radian_per_second,
/// };
///
/// let mm = Length::new::<millimeter>;
/// let rim = Elastic::new(
///     Pressure::new::<gigapascal>(60.0),
///     0.25,
///     MassDensity::new::<kilogram_per_cubic_meter>(3300.0),
/// );
/// let rings = [Ring::innermost(mm(180.0), Metal::Steel.into()), Ring::bonded(mm(200.0), rim)];
/// let found = compound(mm(50.8), &rings, AngularVelocity::new::<radian_per_second>(800.0))?;
/// assert!((found.interfaces[0].tension().get::<megapascal>() - 1.746).abs() < 0.001);
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn compound(bore: Length, rings: &[Ring], speed: AngularVelocity) -> Result<Compound, Error> {
    let bodies = bodies(bore, rings)?;
    let w = speed.get::<radian_per_second>();
    within("speed", w, [-1e6, 1e6], "rad/s", "3000 rpm")?;
    let joints = Joints::of(&bodies, rings);
    let (pressure, closed) = joints.touching(w * w);
    let loosens = joints.loosening();

    let load = |at: usize| Load {
        spin: w * w,
        inside: if at == 0 { 0.0 } else { pressure[at - 1] },
        outside: pressure.get(at).copied().unwrap_or(0.0),
    };
    let found = |(at, (ring, body)): (usize, (&Ring, &Body))| {
        let (inside, outside) =
            (if at == 0 { bore } else { rings[at - 1].diameter }, ring.diameter);
        let (body, load) = (*body, load(at));
        let [inside, outside] = [inside, outside].map(|diameter| body.point(diameter, load));
        RingFound { ring: *ring, inside, outside, body, load }
    };
    let interface = |at: usize| {
        let bonded = rings[at + 1].held == Held::Bonded;
        let gap = if closed[at] { 0.0 } else { 2.0 * joints.gap(at, w * w, &pressure) };
        Interface {
            diameter: rings[at].diameter,
            pressure: Pressure::new::<pascal>(pressure[at]),
            bonded,
            open: !closed[at],
            gap: Length::new::<meter>(gap.max(0.0)),
            loosening_speed: loosens[at]
                .map(|spin| AngularVelocity::new::<radian_per_second>(spin.sqrt())),
        }
    };
    Ok(Compound {
        bore,
        speed,
        rings: rings.iter().zip(&bodies).enumerate().map(found).collect(),
        interfaces: (0..joints.len()).map(interface).collect(),
    })
}

/// The rings as bare numbers, once everything about them makes sense.
fn bodies(bore: Length, rings: &[Ring]) -> Result<Vec<Body>, Error> {
    zero_or_more("bore", shown_mm(bore), "mm", "0 mm")?;
    if rings.is_empty() {
        return Err(ErrorKind::Missing {
            argument: "rings".into(),
            why: "there is not one ring".into(),
            hint: "give the rings from the inside outwards".into(),
        }
        .into());
    }
    let mut all = Vec::with_capacity(rings.len());
    let (mut inside, mut wanted) = (bore, "the bore".to_owned());
    for (at, ring) in rings.iter().enumerate() {
        let body = Body::of(ring, inside, &format!("rings[{at}]"), &wanted)?;
        match (at, ring.held) {
            (0, Held::Innermost) => {}
            (0, _) => return Err(not_held(at, "it is the innermost and sits on nothing")),
            (_, Held::Innermost) => return Err(not_held(at, "it sits on another ring")),
            (_, Held::Bonded) => {}
            (_, Held::Shrunk(interference)) => {
                let given = interference.get::<millimeter>();
                finite(&format!("rings[{at}].interference"), given, "0.02 mm")?;
            }
        }
        all.push(body);
        (inside, wanted) = (ring.diameter, format!("rings[{at}].diameter"));
    }
    Ok(all)
}

fn not_held(at: usize, why: &str) -> Error {
    ErrorKind::Missing {
        argument: format!("rings[{at}].held"),
        why: why.into(),
        hint: "the first ring is the innermost; say of every other whether it is bonded, or its interference"
            .into(),
    }
    .into()
}
