//! A thin disc, clamped inside and free at its rim: how it bends, how it vibrates.
//!
//! Everything here is a plain number: radii over the rim's radius `a`, stiffness over `D / a²`, turning
//! over `√(D / ρh) / a²`, with `D = E h³ / 12(1 − ν²)` and the thickness `h`.

mod series;
mod vibration;

use crate::error::Error;
use crate::source::{Source, Status};
use crate::units::{below, within};

/// Bending of thin discs.
pub const THIN_DISCS: Source = Source::new(
    "thin-plates",
    "theory of thin plates (Timoshenko and Woinowsky-Krieger), exact series",
    "",
    "",
    Status::Computed,
);

/// Vibration of thin discs that turn.
pub const VIBRATING_DISCS: Source = Source::new(
    "vibrating-plates",
    "vibration of thin plates (Leissa) with the stresses of rotation, finite elements",
    "",
    "",
    Status::Computed,
);

/// Least and greatest clamped radius over rim radius that is computed.
pub const CLAMPED: [f64; 2] = [0.05, 0.98];

fn check(ratio: f64, poisson: f64) -> Result<(), Error> {
    within("ratio", ratio, CLAMPED, "", "0.4")?;
    below("poisson", poisson, 0.5, "", "0.2")
}

/// How a clamped disc takes a side load on its rim.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct ClampedDisc {
    /// Deflection under a load at one point, over `P a² / D`.
    pub point_deflection: f64,
    /// Deflection of the rim under a load spread evenly over it, over `P a² / D`.
    pub ring_deflection: f64,
    /// Bending moment per length at the clamp, in line with a load at one point, over that load.
    pub point_moment: f64,
    /// Bending moment per length at the clamp by a load spread evenly, over that load.
    pub ring_moment: f64,
}

/// Stiffness of a thin disc against a side load on its rim, and the moment at its clamp.
///
/// The deflection is `w = k P a² / D`, the moment per length `M = m P`. The load is taken apart
/// into waves round the rim, `w = Σ Wₙ(r) cos nθ`; each `Wₙ` is exact (powers of `r`, for `n` up to
/// 1 a logarithm too) and four equations hold it: no deflection and no slope at `r = ratio`, no moment and the
/// load's share of shear at the rim. Terms up to `n = max(24, 10 / (1 − ratio))`, and for
/// the deflection the rest by its `n⁻³`, leave 0.01 % of the deflection and 0.03 % of the moment.
///
/// Thin plates, small deflection, a rigid clamp. The stress right under a load on one point is not in it.
///
/// # Errors
///
/// [`ErrorKind::OutOfRange`](crate::ErrorKind::OutOfRange) or
/// [`ErrorKind::NotFinite`](crate::ErrorKind::NotFinite) for a ratio outside 0.05 to 0.98, or a
/// Poisson's ratio not between 0 and 0.5.
///
/// # Source
///
/// Timoshenko and Woinowsky-Krieger, *Theory of Plates and Shells*.
///
/// # Example
///
/// Clamped at a third of its radius, loaded evenly round its rim: the books give a
/// deflection of 0.209 P a² / (E h³), which is 0.0191 P a² / D.
///
/// ```
/// use hubwright::solid::clamped_disc;
///
/// let found = clamped_disc(1.0 / 3.0, 0.3)?;
/// assert!((found.ring_deflection * 12.0 * (1.0 - 0.09) - 0.209).abs() < 1e-3);
/// assert!(found.point_deflection > 5.0 * found.ring_deflection);
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn clamped_disc(ratio: f64, poisson: f64) -> Result<ClampedDisc, Error> {
    check(ratio, poisson)?;
    Ok(series::sum(ratio, poisson))
}

/// What the inside of a disc does in its own plane as it turns: it decides the stresses of rotation.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum InPlane {
    /// No radial stress at the clamp, as if the disc ended there.
    FreeAtClamp,
    /// No radial stress at a bore of so much of the rim's radius; the clamp does not hold in the plane.
    /// Zero for a disc without a bore.
    FreeAtBore(f64),
    /// The clamp lets nothing move outwards.
    Held,
}

impl InPlane {
    fn check(self, ratio: f64) -> Result<(), Error> {
        match self {
            Self::FreeAtBore(bore) => within("bore", bore, [0.0, ratio], "", "0.1"),
            _ => Ok(()),
        }
    }
}

/// Natural frequency of a thin disc with `nodes` nodal diameters and no nodal circle, as seen
/// turning with the disc: `λ` in `ω = λ √(D / ρh) / a²`.
///
/// `spin` is the rotational speed in the same unit, zero at a standstill; rotation
/// stiffens the disc by its stresses. Eight cubic elements of lengths in geometric
/// progression leave at most 0.02 %.
///
/// # Errors
///
/// As [`clamped_disc`]; also for a bore larger than the clamp, more than 200 nodal
/// diameters and a spin outside 0 to 10,000.
///
/// # Source
///
/// Leissa, *Vibration of Plates* (NASA SP-160), for the disc at rest.
///
/// # Example
///
/// Clamped at half of its radius and at rest, Leissa's table has 13.0 for the umbrella mode.
///
/// ```
/// use hubwright::solid::{InPlane, disc_frequency};
///
/// let umbrella = disc_frequency(0.5, 0.3, 0, 0.0, InPlane::FreeAtClamp)?;
/// assert!((umbrella - 13.02).abs() < 0.01);
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn disc_frequency(
    ratio: f64,
    poisson: f64,
    nodes: usize,
    spin: f64,
    in_plane: InPlane,
) -> Result<f64, Error> {
    check(ratio, poisson)?;
    in_plane.check(ratio)?;
    within("nodes", nodes as f64, [0.0, 200.0], "", "3")?;
    within("spin", spin, [0.0, 1e4], "", "5")?;
    Ok(vibration::frequency(ratio, poisson, nodes, spin, in_plane))
}

/// Lowest rotational speed at which a wave of a thin disc stands still in space, over `√(D / ρh) / a²`, and
/// its number of nodal diameters; `None` where no wave up to `max(24, 4 / (1 − ratio))` ever does.
///
/// It is the least `Ω` with `ωₙ(Ω) = n Ω`, `n` from 2 up: a fixed side load then
/// meets no resistance but damping. Waves with one nodal diameter never stand.
///
/// # Errors
///
/// As [`disc_frequency`].
///
/// # Source
///
/// Mote and co-workers on circular saws, for the condition; the figures are computed.
///
/// # Example
///
/// Clamped at 0.4 of its radius, the wave with three nodal diameters stands first.
///
/// ```
/// use hubwright::solid::{InPlane, critical_disc_speed};
///
/// let (speed, nodes) = critical_disc_speed(0.4, 0.3, InPlane::FreeAtClamp)?.expect("it stands");
/// assert_eq!(nodes, 3);
/// assert!((speed - 8.053).abs() < 2e-3);
/// # Ok::<(), hubwright::Error>(())
/// ```
pub fn critical_disc_speed(
    ratio: f64,
    poisson: f64,
    in_plane: InPlane,
) -> Result<Option<(f64, usize)>, Error> {
    check(ratio, poisson)?;
    in_plane.check(ratio)?;
    Ok(vibration::critical(ratio, poisson, in_plane))
}
