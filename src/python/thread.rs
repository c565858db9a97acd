//! Screw threads: part of `hubwright.joint`.

use pyo3::prelude::*;

#[cfg(feature = "stubs")]
use pyo3::{inspect::PyStaticExpr, type_hint_identifier};

use super::joint::{Text, mm};
use super::quantity::{Out, Q};
use super::rings::found;
use super::verdict::Source;
use super::wheel::Working;
use crate::error::{Error, ErrorKind, cut};
use crate::joint;
use crate::tables::threads::{self, DIN546};
use crate::units::{Angle, Area, Length, figure, millimeter};

/// A screw thread: what `thread` found.
#[pyclass(frozen, eq, module = "hubwright._core")]
#[derive(Clone, Copy, PartialEq)]
pub struct Thread(pub(super) joint::Thread);

found! {
    Thread(joint::Thread) {
        /// As it is written on a drawing, such as `M20x1-6H`.
        designation: String = |of| of.to_string();
        /// Series: `M`, `UNC` or `UNF`.
        series: String = |of| of.series.to_string();
        /// Whether its hand is left.
        left_hand: bool = |of| of.left_hand;
        /// Nominal diameter, d, in mm.
        diameter: Out<Length> = |of| Out(of.diameter);
        /// Pitch, P, in mm; with one start it is the lead too.
        pitch: Out<Length> = |of| Out(of.pitch);
        /// Threads an inch.
        threads_per_inch: f64 = |of| of.threads_per_inch();
        /// Basic pitch diameter, d2, in mm.
        pitch_diameter: Out<Length> = |of| Out(of.pitch_diameter);
        /// Basic minor diameter, D1, in mm.
        minor_diameter: Out<Length> = |of| Out(of.minor_diameter);
        /// Diameter at the root of a screw, d3, in mm.
        root_diameter: Out<Length> = |of| Out(of.root_diameter);
        /// Nominal stress area of a screw, in mm².
        stress_area: Out<Area> = |of| Out(of.stress_area);
        /// Angle at which it rises at its pitch diameter, in degrees.
        lead_angle: Out<Angle> = |of| Out(of.lead_angle());
        /// Limits of size; None when the designation names no class.
        limits: Option<ThreadLimits> = |of| of.limits.map(ThreadLimits);
        /// Where profile and stress area come from.
        source: Source = |of| Source(of.source());
    }

    /// The hole to drill before tapping, and how much thread it leaves.
    ///
    /// Args:
    ///     drill: Diameter of the hole, above zero and below the thread; without it the diameter less the pitch.
    ///
    /// Returns:
    ///     TapDrill: `.drill`, `.percent` and `.within`.
    ///
    /// Raises:
    ///     UnitError, TextError: No length.
    ///     OutOfRangeError: A hole that leaves no thread.
    ///
    /// Source: common practice.
    ///
    /// Examples:
    ///     >>> import hubwright as hw
    ///     >>> hw.joint.thread("M8-6H").tap_drill("6.8 mm")
    ///     <TapDrill 6.8 mm, 73.9 % thread, within 6H>
    #[pyo3(signature = (drill = None))]
    fn tap_drill(&self, drill: Option<Q<Length>>) -> PyResult<TapDrill> {
        let drill = drill.map(|drill| drill.named("drill")).transpose()?;
        Ok(TapDrill(self.0.tap_drill(drill)?))
    }

    /// Size over three wires of a screw or plug.
    ///
    /// M = d2 + w (1 + √(1/sin² α + cot² α tan² φ)) - P/2 cot α, with w the wires, α 30°, φ the lead angle.
    ///
    /// Args:
    ///     wire: Diameter of the wires, 0.506 to 1.01 pitches; without it the best wire, P / (2 cos α).
    ///
    /// Returns:
    ///     ThreeWires: `.best_wire`, `.basic`, and `.greatest` and `.least` for a class of screws.
    ///
    /// Raises:
    ///     UnitError, TextError: No length.
    ///     OutOfRangeError: A wire that does not touch the flanks or does not stand out.
    ///
    /// Source: ASME B1.2 and NBS Handbook H28, from memory. The measuring force is not in it.
    ///
    /// Examples:
    ///     >>> import hubwright as hw
    ///     >>> hw.joint.thread("M20x1.5-6g").three_wires("0.895 mm")
    ///     <ThreeWires 20.2404 to 20.3804 mm over wires of 0.895 mm, best 0.866 mm>
    #[pyo3(signature = (wire = None))]
    fn three_wires(&self, wire: Option<Q<Length>>) -> PyResult<ThreeWires> {
        let wire = wire.map(|wire| wire.named("wire")).transpose()?;
        Ok(ThreeWires(self.0.three_wires(wire)?))
    }

    /// The same thread in another class.
    ///
    /// Args:
    ///     class_: 4g, 6e, 6g, 6h, 4H, 5H, 6H or 7H; 2A or 2B for a unified thread.
    ///
    /// Returns:
    ///     Thread: with the limits of that class.
    ///
    /// Raises:
    ///     UnitError, TextError: No text, or no such class.
    ///     OutOfRangeError: The table gives nothing for this thread.
    ///
    /// Examples:
    ///     >>> import hubwright as hw
    ///     >>> hw.joint.thread("M20x1").in_class("6H").limits.pitch_least
    ///     <Quantity(19.35, 'millimeter')>
    fn in_class(&self, class_: Text) -> PyResult<Thread> {
        let class = class_.named("class_", "class of threads", "6H")?;
        Ok(Thread(self.0.in_class(class.parse()?)?))
    }

    /// The steps of the profile; the last one's result is `stress_area` in mm².
    fn working(&self) -> Working {
        Working(self.0.working())
    }

    fn __repr__(&self) -> String {
        format!("<Thread {}>", self.0)
    }

    fn __str__(&self) -> String {
        self.0.to_string()
    }
}

/// Limits of size of a thread, in mm.
#[pyclass(frozen, module = "hubwright._core")]
pub struct ThreadLimits(joint::ThreadLimits);

found! {
    ThreadLimits(joint::ThreadLimits) {
        /// The class, such as `6H`.
        class_: String = |of| of.class.to_string();
        /// Whether it is for internal threads.
        internal: bool = |of| of.class.internal();
        /// Greatest major diameter; None for a nut.
        major_greatest: Option<Out<Length>> = |of| of.major_greatest.map(Out);
        /// Least major diameter.
        major_least: Out<Length> = |of| Out(of.major_least);
        /// Greatest pitch diameter.
        pitch_greatest: Out<Length> = |of| Out(of.pitch_greatest);
        /// Least pitch diameter.
        pitch_least: Out<Length> = |of| Out(of.pitch_least);
        /// Greatest minor diameter; None for a screw.
        minor_greatest: Option<Out<Length>> = |of| of.minor_greatest.map(Out);
        /// Least minor diameter; None for a screw.
        minor_least: Option<Out<Length>> = |of| of.minor_least.map(Out);
        /// Where they come from, with the weakest status among the figures used.
        source: Source = |of| Source(of.source);
    }

    fn __repr__(&self) -> String {
        let (least, greatest) = (mm(self.0.pitch_least), mm(self.0.pitch_greatest));
        format!("<ThreadLimits {} pitch diameter {least} to {greatest}>", self.0.class)
    }
}

/// A hole before tapping.
#[pyclass(frozen, module = "hubwright._core")]
pub struct TapDrill(joint::TapDrill);

found! {
    TapDrill(joint::TapDrill) {
        /// The thread to be tapped.
        thread: Thread = |of| Thread(of.thread);
        /// Diameter of the hole, in mm.
        drill: Out<Length> = |of| Out(of.drill);
        /// Height of the thread it leaves, in % of a full one: (d - hole) / (1.299 P).
        percent: f64 = |of| of.percent;
        /// Whether the hole lies within the limits of the minor diameter; None without a class of nuts.
        within: Option<bool> = |of| of.within;
    }

    fn __repr__(&self) -> String {
        let class = self.0.thread.limits.map_or_else(String::new, |limits| limits.class.to_string());
        let within = match self.0.within {
            Some(true) => format!(", within {class}"),
            Some(false) => format!(", NOT WITHIN {class}"),
            None => String::new(),
        };
        format!("<TapDrill {}, {} % thread{within}>", mm(self.0.drill), figure(self.0.percent, 1))
    }
}

/// Size over three wires.
#[pyclass(frozen, module = "hubwright._core")]
pub struct ThreeWires(joint::ThreeWires);

found! {
    ThreeWires(joint::ThreeWires) {
        /// The thread measured.
        thread: Thread = |of| Thread(of.thread);
        /// Best wire, in mm: it touches at the pitch diameter.
        best_wire: Out<Length> = |of| Out(of.best_wire);
        /// The wires used, in mm.
        wire: Out<Length> = |of| Out(of.wire);
        /// Size over the wires at the basic pitch diameter, in mm.
        basic: Out<Length> = |of| Out(of.basic);
        /// At the greatest pitch diameter; None without a class of screws.
        greatest: Option<Out<Length>> = |of| of.greatest.map(Out);
        /// At the least pitch diameter; None without a class of screws.
        least: Option<Out<Length>> = |of| of.least.map(Out);
    }

    /// Pitch diameter that a size over these wires stands for.
    ///
    /// Args:
    ///     over_wires: The size measured, above the pitch diameter.
    ///
    /// Returns:
    ///     Pitch diameter, in mm.
    ///
    /// Raises:
    ///     UnitError, TextError, OutOfRangeError: No length, or one below the pitch diameter.
    ///
    /// Examples:
    ///     >>> import hubwright as hw
    ///     >>> wires = hw.joint.thread("M20x1.5-6g").three_wires()
    ///     >>> print(f"{wires.pitch_diameter('20.220 mm'):.3f~P}")
    ///     18.921 mm
    fn pitch_diameter(&self, over_wires: Q<Length>) -> PyResult<Out<Length>> {
        Ok(Out(self.0.pitch_diameter(over_wires.named("over_wires")?)?))
    }

    fn __repr__(&self) -> String {
        let plain = |length: Length| figure(length.get::<millimeter>(), 4);
        let mm = |length: Length| format!("{} mm", plain(length));
        let sizes = match (self.0.least, self.0.greatest) {
            (Some(least), Some(greatest)) => format!("{} to {}", plain(least), mm(greatest)),
            _ => mm(self.0.basic),
        };
        let (wire, best) = (mm(self.0.wire), mm(self.0.best_wire));
        format!("<ThreeWires {sizes} over wires of {wire}, best {best}>")
    }
}

/// A thread, or the text that names one.
pub(super) struct ThreadIn(Result<joint::Thread, Error>);

impl ThreadIn {
    pub(super) fn named(self, argument: &str) -> Result<joint::Thread, Error> {
        self.0.map_err(|error| match error.argument() {
            // What is wrong inside a designation keeps its own name.
            Some("designation" | "value") => error.named(argument),
            _ => error,
        })
    }
}

impl<'py> FromPyObject<'_, 'py> for ThreadIn {
    type Error = PyErr;
    #[cfg(feature = "stubs")]
    const INPUT_TYPE: PyStaticExpr = type_hint_identifier!("hubwright._typing", "ThreadLike");

    fn extract(object: Borrowed<'_, 'py, PyAny>) -> PyResult<Self> {
        if let Ok(thread) = object.cast::<Thread>() {
            return Ok(Self(Ok(thread.get().0)));
        }
        if let Ok(text) = object.extract::<String>() {
            return Ok(Self(joint::thread(&text)));
        }
        let given = object.repr().map_or_else(|_| "an object".into(), |r| cut(&r.to_string()));
        Ok(Self(Err(ErrorKind::WrongUnit {
            argument: "value".into(),
            given,
            kind: "thread",
            why: "it is neither text nor a thread",
            hint: "give text like \"M20x1.5\", or what `thread` gave".into(),
        }
        .into())))
    }
}

/// What a thread's designation stands for: profile, stress area and limits.
///
/// Args:
///     designation: Like `"M20"`, `"M20x1.5"`, `"M20x1-6H"`, `"M20x1-6g-LH"`, `"1/4-20 UNC-2B"`,
///         `"#10-32 UNF"`, `"1-1/8-12 UNF-2A LH"`. Metric diameters 1 to 300 mm with the pitches of ISO 261,
///         classes 4g 6e 6g 6h 4H 5H 6H 7H as far as the table goes; UNC and UNF no. 4 to 1½ in, 2A and 2B.
///
/// Returns:
///     Thread: `.pitch_diameter`, `.stress_area`, `.limits`, `.tap_drill()`, `.three_wires()` and more.
///
/// Raises:
///     UnitError: No text.
///     TextError: Text that is no thread, or a thread or class that there is not.
///     OutOfRangeError: A pitch that the diameter does not allow, or a class at which the table gives nothing.
///
/// Source: ISO 68-1, ISO 261, ISO 965-1, ISO 898-1, ASME B1.1; `.limits.source` says what is recalled.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> nut = hw.joint.thread("M20x1-6H")
///     >>> nut.limits
///     <ThreadLimits 6H pitch diameter 19.35 mm to 19.51 mm>
///     >>> nut.tap_drill()
///     <TapDrill 19 mm, 77 % thread, within 6H>
///     >>> print(f"{hw.joint.thread('M8').stress_area:.1f~P}")
///     36.6 mm²
#[pyfunction]
pub fn thread(designation: Text) -> PyResult<Thread> {
    let text = designation.named("designation", "thread", "M20x1-6H")?;
    Ok(Thread(joint::thread(&text)?))
}

/// A slotted round nut.
#[pyclass(frozen, module = "hubwright._core")]
pub struct RoundNut(threads::RoundNut);

/// Millimetres as a length.
fn length(mm: f64) -> Out<Length> {
    Out(Length::new::<millimeter>(mm))
}

found! {
    RoundNut(threads::RoundNut) {
        /// Diameter of its thread, in mm.
        diameter: Out<Length> = |of| length(of.diameter);
        /// Pitch of its thread, in mm.
        pitch: Out<Length> = |of| length(of.pitch);
        /// Greatest outside diameter, in mm.
        outside: Out<Length> = |of| length(of.outside);
        /// Greatest thickness, in mm.
        thickness: Out<Length> = |of| length(of.thickness);
        /// Where it stands.
        source: Source = |_| Source(DIN546);
    }

    fn __repr__(&self) -> String {
        let of = &self.0;
        format!("<RoundNut M{}x{} outside {} mm, {} mm thick>", of.diameter, of.pitch, of.outside, of.thickness)
    }
}

/// Slotted round nuts of DIN 546, M8 to M20.
///
/// Examples:
///     >>> import hubwright as hw
///     >>> hw.joint.round_nuts()[-1]
///     <RoundNut M20x2.5 outside 32 mm, 14 mm thick>
#[pyfunction]
pub fn round_nuts() -> Vec<RoundNut> {
    threads::ROUND_NUTS.into_iter().map(RoundNut).collect()
}
