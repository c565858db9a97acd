//! Measuring and naming tapers: `hubwright.gauge`.

pub(super) mod correct;
pub(super) mod decide;
pub(super) mod naming;
pub(super) mod seat;
pub(super) mod setting;

use pyo3::prelude::*;
use pyo3::types::PyString;

#[cfg(feature = "stubs")]
use pyo3::{inspect::PyStaticExpr, type_hint_identifier};

use super::quantity::{Out, Q, scalar};
use super::rings::found;
use super::wheel::Working;
use super::words::{W, WordOut};
use crate::error::{Error, ErrorKind, cut};
use crate::gauge::{self, FlankBow, LargeEnd, Sensitivity};
use crate::units::{Angle, Length, degree, figure, micrometer, millimeter};

/// An angle in degrees as a `repr` shows it.
fn shown(angle: Angle) -> String {
    format!("{}°", figure(angle.get::<degree>(), 5))
}

/// Several lengths on their way in: a list of texts or quantities, or one array of them.
pub(super) struct Lengths(Result<Vec<Length>, Error>);

impl Lengths {
    pub(super) fn named(self, argument: &str) -> Result<Vec<Length>, Error> {
        self.0.map_err(|error| error.named(argument))
    }
}

impl<'py> FromPyObject<'_, 'py> for Lengths {
    type Error = PyErr;
    #[cfg(feature = "stubs")]
    const INPUT_TYPE: PyStaticExpr = type_hint_identifier!("hubwright._typing", "QuantitiesLike");

    fn extract(object: Borrowed<'_, 'py, PyAny>) -> PyResult<Self> {
        let items = if object.is_instance_of::<PyString>() { None } else { object.try_iter().ok() };
        let Some(items) = items else {
            let given = object.repr().map_or_else(|_| "an object".into(), |r| cut(&r.to_string()));
            return Ok(Self(Err(ErrorKind::WrongUnit {
                argument: "value".into(),
                given,
                kind: "list of lengths",
                why: "it is one thing, not several",
                hint: "give a list like [\"2 mm\", \"7 mm\"], or an array with a unit".into(),
            }
            .into())));
        };
        let mut all = Vec::new();
        for item in items {
            match scalar::<Length>(&item?) {
                Ok(length) => all.push(length),
                Err(error) => return Ok(Self(Err(error))),
            }
        }
        Ok(Self(Ok(all)))
    }
}

/// A cone as measured, whichever way: its angle, a diameter, and how well both are known.
///
/// Positions are those of the readings: heights over the plate, depths below the face, or wherever they were
/// counted from.
#[pyclass(frozen, from_py_object, module = "hubwright._core")]
#[derive(Clone, Copy)]
pub struct MeasuredCone(pub(super) gauge::MeasuredCone);

found! {
    MeasuredCone(gauge::MeasuredCone) {
        /// Half of the included angle, in degrees.
        half_angle: Out<Angle> = |of| Out(of.half_angle);
        /// Its standard uncertainty, in degrees.
        u_half_angle: Out<Angle> = |of| Out(of.u_half_angle);
        /// Its expanded uncertainty, 95 %, in degrees.
        expanded_half_angle: Out<Angle> = |of| Out(of.expanded_half_angle());
        /// Degrees of freedom; infinite where the uncertainties were stated.
        dof: f64 = |of| of.dof;
        /// Change of radius over length.
        per_side: f64 = |of| of.per_side();
        /// Change of diameter over position: below zero where the large end lies low.
        slope: f64 = |of| of.slope();
        /// Diameter at `plane`, in mm.
        diameter: Out<Length> = |of| Out(of.diameter);
        /// Its standard uncertainty, in mm.
        u_diameter: Out<Length> = |of| Out(of.u_diameter);
        /// Position where diameter and angle have errors of their own, in mm.
        plane: Out<Length> = |of| Out(of.plane);
        /// Least and greatest position that was measured, in mm.
        span: (Out<Length>, Out<Length>) = |of| (Out(of.span[0]), Out(of.span[1]));
        /// Where the large end lies: `high` at the greater positions, `low` at the smaller ones.
        large_end: WordOut<LargeEnd> = |of| WordOut(of.large_end);
    }

    /// Diameter at a position.
    ///
    /// Args:
    ///     position: In the positions of the readings.
    ///
    /// Returns:
    ///     The diameter, a length.
    ///
    /// Raises:
    ///     UnitError, TextError: No length.
    fn diameter_at(&self, position: Q<Length>) -> PyResult<Out<Length>> {
        Ok(Out(self.0.diameter_at(position.named("position")?)))
    }

    /// Standard uncertainty of the diameter at a position.
    ///
    /// Args:
    ///     position: In the positions of the readings.
    ///
    /// Returns:
    ///     The uncertainty, a length.
    ///
    /// Raises:
    ///     UnitError, TextError: No length.
    fn u_diameter_at(&self, position: Q<Length>) -> PyResult<Out<Length>> {
        Ok(Out(self.0.u_diameter_at(position.named("position")?)))
    }

    /// Position at which the cone has a diameter: where a gauge plane lies.
    ///
    /// Args:
    ///     diameter: The diameter looked for.
    ///
    /// Returns:
    ///     The position, a length.
    ///
    /// Raises:
    ///     UnitError, TextError: No length.
    fn position_of(&self, diameter: Q<Length>) -> PyResult<Out<Length>> {
        Ok(Out(self.0.position_of(diameter.named("diameter")?)))
    }

    fn __repr__(&self) -> String {
        let (half, expanded) = (shown(self.0.half_angle), shown(self.0.expanded_half_angle()));
        format!("<MeasuredCone half angle {half} ± {expanded}>")
    }
}

/// A cone on its way in: a measured one, or a result that holds one.
pub(super) struct ConeIn(Result<gauge::MeasuredCone, Error>);

impl ConeIn {
    pub(super) fn named(self, argument: &str) -> Result<gauge::MeasuredCone, Error> {
        self.0.map_err(|error| error.named(argument))
    }
}

impl<'py> FromPyObject<'_, 'py> for ConeIn {
    type Error = PyErr;
    #[cfg(feature = "stubs")]
    const INPUT_TYPE: PyStaticExpr = type_hint_identifier!("hubwright._typing", "MeasuredLike");

    fn extract(object: Borrowed<'_, 'py, PyAny>) -> PyResult<Self> {
        let held = object.getattr("cone").ok().and_then(|cone| cone.extract::<MeasuredCone>().ok());
        if let Some(cone) = object.extract::<MeasuredCone>().ok().or(held) {
            return Ok(Self(Ok(cone.0)));
        }
        let given = object.repr().map_or_else(|_| "an object".into(), |r| cut(&r.to_string()));
        Ok(Self(Err(ErrorKind::WrongUnit {
            argument: "value".into(),
            given,
            kind: "measured cone",
            why: "nothing measured it",
            hint: "give what `over_rollers`, `two_balls`, `two_diameters` or `cone_fit` gave"
                .into(),
        }
        .into())))
    }
}

/// Name, sensitivity (degrees per mm) and standard uncertainty of each reading.
type Sensitivities = Vec<(&'static str, f64, Out<Length>)>;

fn sensitivities(all: &[Sensitivity]) -> Sensitivities {
    all.iter().map(|one| (one.of, (one.value / 1e3).to_degrees(), Out(one.u))).collect()
}

/// What `over_rollers` found.
#[pyclass(frozen, module = "hubwright._core")]
pub struct OverRollers(gauge::OverRollersFound);

found! {
    OverRollers(gauge::OverRollersFound) {
        /// The cone; positions are heights over the plate.
        cone: MeasuredCone = |of| MeasuredCone(of.cone);
        /// Diameters at the heights of the rollers' axes, lower and upper, in mm.
        diameters: (Out<Length>, Out<Length>) = |of| (Out(of.diameters[0]), Out(of.diameters[1]));
        /// Name, sensitivity (degrees per mm) and standard uncertainty of each reading.
        sensitivities: Sensitivities = |of| sensitivities(&of.sensitivities);
    }

    /// The steps, recomputed; the last one's result is the half angle in degrees.
    fn working(&self) -> Working {
        Working(self.0.working())
    }

    fn __repr__(&self) -> String {
        let cone = &self.0.cone;
        format!("<OverRollers half angle {} ± {}>", shown(cone.half_angle), shown(cone.expanded_half_angle()))
    }
}

/// A plug or spindle nose on a plate, measured over two equal rollers at two heights.
///
/// tan α = (M₂ − M₁) / (2 (h₂ − h₁)), D = M − d (1 + sec α) at the height of the rollers' axes.
///
/// Args:
///     over_low: Reading over the lower rollers.
///     over_high: Reading over the upper rollers.
///     height_low: Blocks under the lower rollers; "0 mm" on the plate.
///     height_high: Blocks under the upper rollers, above `height_low`.
///     roller: Diameter of a roller.
///     u_over: Standard uncertainty of a reading; zero is your word that it is exact.
///     u_height: Standard uncertainty of a height.
///     u_roller: Standard uncertainty of the rollers' diameter.
///     large_end: `"high"` or `"low"` where it is known, to be held against the readings.
///
/// Returns:
///     OverRollers: `.cone`, `.diameters`, `.sensitivities`.
///
/// Raises:
///     UnitError, TextError: No lengths, or another word.
///     OutOfRangeError: Rollers at one height or out of order, a cylinder, a plate, the wrong end named, rollers
///         that leave no room for a cone.
///
/// Source: geometry; uncertainties by JCGM 100, from memory. Two heights can't show an error of form.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> nose = hw.gauge.over_rollers(
///     ...     over_low="60.5125 mm", over_high="65.5125 mm", height_low="0 mm", height_high="50 mm",
///     ...     roller="10 mm", u_over="1 um", u_height="0.3 um", u_roller="0.5 um",
///     ... )
///     >>> nose
///     <OverRollers half angle 2.86241° ± 0.00162°>
///     >>> print(f"{nose.cone.diameter_at('0 mm'):.3f~P}")
///     40.000 mm
#[pyfunction]
#[pyo3(signature = (*, over_low, over_high, height_low, height_high, roller, u_over, u_height, u_roller, large_end = None))]
#[allow(clippy::too_many_arguments, reason = "one keyword a figure")]
pub fn over_rollers(
    over_low: Q<Length>,
    over_high: Q<Length>,
    height_low: Q<Length>,
    height_high: Q<Length>,
    roller: Q<Length>,
    u_over: Q<Length>,
    u_height: Q<Length>,
    u_roller: Q<Length>,
    large_end: Option<W<LargeEnd>>,
) -> PyResult<OverRollers> {
    let over = [over_low.named("over_low")?, over_high.named("over_high")?];
    let heights = [height_low.named("height_low")?, height_high.named("height_high")?];
    let mut readings = gauge::OverRollers::new(over, heights, roller.named("roller")?)
        .with_uncertainties(
            u_over.named("u_over")?,
            u_height.named("u_height")?,
            u_roller.named("u_roller")?,
        );
    if let Some(end) = large_end {
        readings = readings.with_large_end(end.named("large_end")?);
    }
    Ok(OverRollers(readings.solve()?))
}

/// What `two_balls` found.
#[pyclass(frozen, module = "hubwright._core")]
pub struct TwoBalls(gauge::TwoBallsFound);

found! {
    TwoBalls(gauge::TwoBallsFound) {
        /// The cone; positions are depths below the face.
        cone: MeasuredCone = |of| MeasuredCone(of.cone);
        /// Distance of the balls' centres, in mm.
        centres_apart: Out<Length> = |of| Out(of.centres_apart);
        /// Diameters of the bore at the depths of the centres, large and small ball, in mm.
        diameters: (Out<Length>, Out<Length>) = |of| (Out(of.diameters[0]), Out(of.diameters[1]));
        /// Depths at which the balls touch the bore, in mm.
        touch: (Out<Length>, Out<Length>) = |of| (Out(of.touch[0]), Out(of.touch[1]));
        /// Name, sensitivity (degrees per mm) and standard uncertainty of each reading.
        sensitivities: Sensitivities = |of| sensitivities(&of.sensitivities);
    }

    /// The steps, recomputed; the last one's result is the half angle in degrees.
    fn working(&self) -> Working {
        Working(self.0.working())
    }

    fn __repr__(&self) -> String {
        let cone = &self.0.cone;
        format!("<TwoBalls half angle {} ± {}>", shown(cone.half_angle), shown(cone.expanded_half_angle()))
    }
}

/// A taper bore, its large end up, in which a large and then a small ball come to rest.
///
/// sin α = (R₁ − R₂) / c, with c the distance of the centres.
///
/// Args:
///     ball_large: Diameter of the large ball.
///     ball_small: Diameter of the small ball.
///     depth_to_large: From the face down to the top of the large ball; negative where it stands proud.
///     depth_to_small: From the face down to the top of the small ball.
///     u_ball: Standard uncertainty of a ball's diameter; zero is your word that it is exact.
///     u_depth: Standard uncertainty of a depth.
///     length: Length of the bore, past which the small ball can't rest.
///
/// Returns:
///     TwoBalls: `.cone`, `.centres_apart`, `.diameters`, `.touch`, `.sensitivities`.
///
/// Raises:
///     UnitError, TextError: No lengths.
///     OutOfRangeError: Balls that don't fit, a cylinder or a plate.
///
/// Source: geometry; uncertainties by JCGM 100, from memory. Two balls can't show an error of form.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> hw.gauge.two_balls(
///     ...     ball_large="40 mm", ball_small="32 mm", depth_to_large="-8 mm", depth_to_small="76 mm",
///     ...     u_ball="0.5 um", u_depth="5 um",
///     ... )
///     <TwoBalls half angle 2.86598° ± 0.00074°>
#[pyfunction]
#[pyo3(signature = (*, ball_large, ball_small, depth_to_large, depth_to_small, u_ball, u_depth, length = None))]
pub fn two_balls(
    ball_large: Q<Length>,
    ball_small: Q<Length>,
    depth_to_large: Q<Length>,
    depth_to_small: Q<Length>,
    u_ball: Q<Length>,
    u_depth: Q<Length>,
    length: Option<Q<Length>>,
) -> PyResult<TwoBalls> {
    let balls = [ball_large.named("ball_large")?, ball_small.named("ball_small")?];
    let depths = [depth_to_large.named("depth_to_large")?, depth_to_small.named("depth_to_small")?];
    let mut readings = gauge::TwoBalls::new(balls, depths)
        .with_uncertainties(u_ball.named("u_ball")?, u_depth.named("u_depth")?);
    if let Some(length) = length {
        readings = readings.with_length(length.named("length")?);
    }
    Ok(TwoBalls(readings.solve()?))
}

/// What `two_diameters` found.
#[pyclass(frozen, module = "hubwright._core")]
pub struct TwoDiameters(gauge::TwoDiametersFound);

found! {
    TwoDiameters(gauge::TwoDiametersFound) {
        /// The cone; positions are counted from the small diameter's plane.
        cone: MeasuredCone = |of| MeasuredCone(of.cone);
        /// Name, sensitivity (degrees per mm) and standard uncertainty of each reading.
        sensitivities: Sensitivities = |of| sensitivities(&of.sensitivities);
    }

    /// The steps, recomputed; the last one's result is the half angle in degrees.
    fn working(&self) -> Working {
        Working(self.0.working())
    }

    fn __repr__(&self) -> String {
        let cone = &self.0.cone;
        format!("<TwoDiameters half angle {} ± {}>", shown(cone.half_angle), shown(cone.expanded_half_angle()))
    }
}

/// A cone from two diameters and the distance of their planes, tan α = (D − d) / (2 L).
///
/// Args:
///     small_diameter: The small diameter.
///     large_diameter: The large diameter.
///     apart: Distance of their planes along the axis.
///     u_diameter: Standard uncertainty of a diameter; zero is your word that it is exact.
///     u_apart: Standard uncertainty of the distance.
///
/// Returns:
///     TwoDiameters: `.cone`, `.sensitivities`.
///
/// Raises:
///     UnitError, TextError: No lengths.
///     OutOfRangeError: The wrong end named, a cylinder or a plate.
///
/// Source: geometry; uncertainties by JCGM 100, from memory. Two planes can't show an error of form.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> hw.gauge.two_diameters(
///     ...     small_diameter="31 mm", large_diameter="38.5 mm", apart="30 mm", u_diameter="2 um", u_apart="5 um",
///     ... )
///     <TwoDiameters half angle 7.12502° ± 0.00582°>
#[pyfunction]
#[pyo3(signature = (*, small_diameter, large_diameter, apart, u_diameter, u_apart))]
pub fn two_diameters(
    small_diameter: Q<Length>,
    large_diameter: Q<Length>,
    apart: Q<Length>,
    u_diameter: Q<Length>,
    u_apart: Q<Length>,
) -> PyResult<TwoDiameters> {
    let diameters =
        [small_diameter.named("small_diameter")?, large_diameter.named("large_diameter")?];
    let readings = gauge::TwoDiameters::new(diameters, apart.named("apart")?)
        .with_uncertainties(u_diameter.named("u_diameter")?, u_apart.named("u_apart")?);
    Ok(TwoDiameters(readings.solve()?))
}

/// What `cone_fit` found.
#[pyclass(frozen, module = "hubwright._core")]
pub struct ConeFit(gauge::ConeFitFound);

found! {
    ConeFit(gauge::ConeFitFound) {
        /// The cone; its plane is the mean position.
        cone: MeasuredCone = |of| MeasuredCone(of.cone);
        /// Measured less fitted diameter in µm, in the order of the readings.
        residuals_um: Vec<f64> = |of| of.residuals.iter().map(|one| one.get::<micrometer>()).collect();
        /// Standard deviation of the readings about the cone, in mm.
        scatter: Out<Length> = |of| Out(of.scatter);
        /// What the uncertainties were reckoned with: the scatter, or more where more was stated; in mm.
        u_reading: Out<Length> = |of| Out(of.u_reading);
        /// From the lowest residual to the highest on diameter, in mm.
        form: Out<Length> = |of| Out(of.form);
        /// The same on one side and square to the flank, in mm.
        straightness: Out<Length> = |of| Out(of.straightness);
        /// Whether a bend was seen.
        bow: WordOut<FlankBow> = |of| WordOut(of.bow);
        /// How much larger than the chord the middle is on diameter, in mm.
        bow_on_diameter: Out<Length> = |of| Out(of.bow_on_diameter);
        /// The smallest bend on diameter that would have been seen, in mm; None where none would.
        least_bow: Option<Out<Length>> = |of| of.least_bow.map(Out);
        /// What was seen of the flank's straightness, in words.
        straightness_says: String = |of| of.straightness_says();
    }

    /// The steps, recomputed; the last one's result is the half angle in degrees.
    fn working(&self) -> Working {
        Working(self.0.working())
    }

    fn __repr__(&self) -> String {
        let cone = &self.0.cone;
        let (half, expanded) = (shown(cone.half_angle), shown(cone.expanded_half_angle()));
        format!("<ConeFit half angle {half} ± {expanded}, bend {}>", self.0.bow)
    }
}

/// The cone of least squares through diameters at three or more planes, and whether its flank is straight.
///
/// Args:
///     positions: Positions along the axis, increasing: a list of lengths, or an array with a unit.
///     diameters: The diameter at each.
///     u_diameter: Standard uncertainty of a diameter, each for itself. Where the readings scatter more, their
///         scatter counts.
///     u_position: Standard uncertainty of a position, each for itself.
///     u_shared: Standard uncertainty that all diameters share, as of the instrument's setting.
///     large_end: `"high"` (last) or `"low"` (first) where it is known, to be held against the readings.
///
/// Returns:
///     ConeFit: `.cone`, `.form`, `.bow`, `.straightness_says` and more.
///
/// Raises:
///     UnitError, TextError: No lengths, or another word.
///     MissingError: Fewer than three readings.
///     ColumnError, OutOfRangeError: Positions without diameters, or out of order; a cylinder, a plate, the wrong
///         end named.
///
/// Source: least squares; JCGM 100, from memory.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> fit = hw.gauge.cone_fit(
///     ...     positions=["2 mm", "12 mm", "22 mm", "32 mm", "42 mm"],
///     ...     diameters=["30.2004 mm", "31.2002 mm", "32.1995 mm", "33.2006 mm", "34.1996 mm"],
///     ... )
///     >>> fit
///     <ConeFit half angle 2.86206° ± 0.00155°, bend not seen>
#[pyfunction]
#[pyo3(signature = (*, positions, diameters, u_diameter = None, u_position = None, u_shared = None, large_end = None))]
pub fn cone_fit(
    positions: Lengths,
    diameters: Lengths,
    u_diameter: Option<Q<Length>>,
    u_position: Option<Q<Length>>,
    u_shared: Option<Q<Length>>,
    large_end: Option<W<LargeEnd>>,
) -> PyResult<ConeFit> {
    let (positions, diameters) = (positions.named("positions")?, diameters.named("diameters")?);
    let u = |given: Option<Q<Length>>, name: &str| -> Result<Length, Error> {
        Ok(given.map(|u| u.named(name)).transpose()?.unwrap_or_default())
    };
    let mut fit = gauge::ConeFit::new(&positions, &diameters).with_uncertainties(
        u(u_diameter, "u_diameter")?,
        u(u_position, "u_position")?,
        u(u_shared, "u_shared")?,
    );
    if let Some(end) = large_end {
        fit = fit.with_large_end(end.named("large_end")?);
    }
    Ok(ConeFit(fit.solve()?))
}

/// A length in mm, to a tenth of a micrometre.
fn mm(length: Length) -> String {
    format!("{} mm", figure(length.get::<millimeter>(), 4))
}
