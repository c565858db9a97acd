//! The steps of a push.

use super::{CONE_CONTACT, CONE_STATICS, Pushed, SeatFound};
use crate::units::{degree, figure, meter, newton, newton_meter, pascal};
use crate::working::{Step, Working};

impl SeatFound {
    /// The steps of a push, recomputed. The last one's result is the slip torque in N m.
    pub fn working(&self, of: &Pushed) -> Working {
        let Ok(again) = self.push(of.force, of.mismatch) else { return Working::default() };
        let mut steps = Vec::new();
        let mut step = |symbol, relation, numbers, result, unit, source| {
            steps.push(Step { symbol, relation, numbers, result, unit, source });
        };
        let (mu, slope) = (self.friction(), self.seat().taper / 2.0);
        let force = figure(again.force.get::<newton>(), 1);
        let minutes = figure(again.mismatch.get::<degree>() * 60.0, 3);
        let given = format!("{force} N, {minutes} arcmin, friction {}", figure(mu, 4));
        let ends = format!("{given}, {} carries", again.carries);
        step(
            "W",
            "F / (sin α + μ cos α)",
            given.clone(),
            again.normal_force.get::<newton>(),
            "N",
            CONE_STATICS,
        );
        step(
            "F release",
            "F (μ − tan α) / (μ + tan α)",
            format!("{force} N · ({0} − {1}) / ({0} + {1})", figure(mu, 4), figure(slope, 5)),
            again.release_force.get::<newton>(),
            "N",
            CONE_STATICS,
        );
        step(
            "l / L",
            "front of contact, by segments closing in turn",
            ends,
            again.contact,
            "",
            CONE_CONTACT,
        );
        if let Some(closing) = again.force_for_95 {
            let relation = "force over tan Δ at 0.95 L, times tan Δ";
            step(
                "F 95",
                relation,
                format!("{minutes} arcmin"),
                closing.get::<newton>(),
                "N",
                CONE_CONTACT,
            );
        }
        let micrometres = again.draw_up.get::<meter>() * 1e6;
        step(
            "D",
            "from g0 − D sin α + C p = 0 where it touches",
            given.clone(),
            micrometres,
            "um",
            CONE_CONTACT,
        );
        let peak = again.peak_pressure.get::<pascal>() / 1e6;
        step("p peak", "greatest pressure of a segment", given, peak, "MPa", CONE_CONTACT);
        let segments = format!("{} · Σ over {} segments", figure(mu, 4), self.segments().len());
        let torque = again.slip_torque.get::<newton_meter>();
        step("T", "μ Σ p ∫R dA", segments, torque, "N m", CONE_STATICS);
        Working { steps }
    }
}
