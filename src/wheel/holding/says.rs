//! What was found about holding a wheel, in sentences and in steps.

use super::{Answer, HoldingFound, NUT_STATICS, Running, TORQUE_PATH, Tightness};
use crate::solid::plate::RING_PLATE;
use crate::units::{Length, Torque, figure, meter, micrometer, newton, newton_meter};
use crate::working::{Step, Working};

fn mm(length: Length) -> f64 {
    length.get::<meter>() * 1e3
}

/// Arms as `1.4`, or as `1.2 to 1.6`, in mm with one decimal.
fn arms(both: [Length; 2]) -> String {
    let [least, greatest] = both.map(|arm| format!("{:.1}", mm(arm)));
    if least == greatest { least } else { format!("{least} to {greatest}") }
}

/// A range as `1.4`, or as `1.2 to 1.6`.
fn range(both: [f64; 2], places: usize) -> String {
    let [least, greatest] = both.map(|one| figure(one, places));
    if least == greatest { least } else { format!("{least} to {greatest}") }
}

fn nm(both: [Torque; 2]) -> String {
    range(both.map(|torque| torque.get::<newton_meter>()), 2)
}

impl HoldingFound {
    /// Whether a slipping loose flange takes the nut along, with the figures that decide it.
    pub fn takes_along_says(&self) -> String {
        let radius = mm(self.of.face.inside + self.of.face.outside) / 4.0;
        let face = format!(
            "{} × {} = {} mm at the face",
            range(self.of.face.friction, 3),
            figure(radius, 2),
            arms(self.face_arm)
        );
        let thread = format!("{} mm at the thread", arms(self.thread_arm));
        match self.takes_along {
            Answer::Yes => format!(
                "If the loose flange slips, it takes the nut along whatever the torque: {face} beats {thread}."
            ),
            Answer::Perhaps => format!(
                "If the loose flange slips, it may take the nut along whatever the torque: {face} against {thread}, by the frictions that happen to be there."
            ),
            Answer::No => format!(
                "If the loose flange slips, it slips on the nut too and does not turn it: {face} stays below {thread}."
            ),
        }
    }

    /// What was found, a sentence each.
    pub fn says(&self) -> Vec<String> {
        let mut all = vec![self.takes_along_says()];
        for one in self.asked_unscrewing() {
            let (runs, source) = match one.running {
                Running::Tightens => ("Where running tightens the nut", "braking"),
                Running::Loosens => ("Where running loosens the nut", "cutting and run-up"),
            };
            let end = match one.turns {
                Answer::No => "start, stop and cutting torque do not turn it",
                Answer::Perhaps if !one.all_known => "what was not given may turn it back",
                Answer::Perhaps => "at some of these frictions it is turned back",
                Answer::Yes => "it is turned back",
            };
            let left_out = match one.running {
                _ if one.all_known => "",
                Running::Tightens => " (how hard it is braked was not given)",
                Running::Loosens => " (how fast it is run up was not given)",
            };
            all.push(format!(
                "{runs}, {source} of {} N m loosens it{left_out}: {} N m of that reach the nut, its thread holds {} N m; {end}.",
                figure(one.demand.get::<newton_meter>(), 2),
                nm(one.at_nut),
                nm(one.holds)
            ));
        }
        all.push("Why unkeyed nuts come loose nevertheless: the loose flange walks a little under every turning load, and each creep goes by the torques above at their weakest; vibration and creep of the blotters eat preload. A keyed flange or washer lets none of that reach the nut (that keyed ones have not come loose is common practice, no source).".into());
        if let Some(dish) = &self.dish {
            let sag = dish.sag.with_shear.get::<micrometer>();
            let touches = if mm(dish.room) < 0.0 {
                "it touches the wheel there"
            } else {
                "the land bears alone"
            };
            all.push(format!(
                "The loose flange sags {} µm at its hole: {touches}. Its land tilts by {} µm over its width, which the blotter has to give.",
                figure(sag, 1),
                figure(dish.land_tilt.get::<micrometer>(), 1)
            ));
        }
        all.push("The wheel's own marking, the machine's manual, local law and a competent person come first.".into());
        all
    }

    /// The steps at the least frictions, recomputed; the last one's result is the least of `carries_loosening` in N m.
    pub fn working(&self) -> Working {
        let Ok(again) = self.of.solve() else { return Working::default() };
        let of = again.of;
        let mut steps = Vec::new();
        let mut step = |symbol, relation, numbers, result, unit, source| {
            steps.push(Step { symbol, relation, numbers, result, unit, source });
        };
        let force = again.preload[0].get::<newton>();
        let (relation, numbers) = match of.tightness {
            Tightness::Torque(torque) => (
                "T / (d2/2 tan(φ + ρ') + μf r)",
                format!(
                    "{} N m over both arms at the greatest frictions",
                    figure(torque.get::<newton_meter>(), 4)
                ),
            ),
            Tightness::Preload(_) => ("as stated", format!("{} N", figure(force, 3))),
        };
        step("least F", relation, numbers, force, "N", NUT_STATICS);
        let land = again.carries_face[0].get::<newton_meter>();
        let numbers = format!(
            "{} · {} N · friction radius of {} to {} mm",
            of.land.friction[0],
            figure(force, 3),
            figure(mm(of.land.inside), 4),
            figure(mm(of.land.outside), 4)
        );
        step("Tb", "μ F 2/3 (ro³ - ri³) / (ro² - ri²)", numbers, land, "N m", TORQUE_PATH);
        let slips = again.nut_slips[0].get::<newton_meter>();
        let numbers = format!("{} mm · {} N", figure(mm(again.face_arm[0]), 4), figure(force, 3));
        step("Tn", "μf r F", numbers, slips, "N m", TORQUE_PATH);
        let release = again.release[0].get::<newton_meter>();
        let numbers = format!("{} mm · {} N", figure(mm(again.thread_arm[0]), 4), figure(force, 3));
        step("Tr", "F d2/2 tan(ρ' - φ)", numbers, release, "N m", NUT_STATICS);
        if let Some(dish) = &again.dish {
            let plate = dish.sag.plate;
            let numbers = format!(
                "pressed on {} mm, held on {} mm, {} mm thick, {} N",
                figure(mm(plate.circles[0]), 4),
                figure(mm(plate.circles[1]), 4),
                figure(mm(plate.thickness), 4),
                figure(again.preload[1].get::<newton>(), 3)
            );
            step(
                "sag",
                "ring plate · (1 + 0.25 (h / span)²)",
                numbers,
                dish.sag.with_shear.get::<micrometer>(),
                "µm",
                RING_PLATE,
            );
        }
        let least = again.carries_loosening[0].get::<newton_meter>();
        let numbers = format!(
            "{} + min({}, {}, {})",
            figure(land, 4),
            figure(land, 4),
            figure(slips, 4),
            figure(release.max(0.0), 4)
        );
        step("T", "Tb + min(Tb, Tn, Tr)", numbers, least, "N m", TORQUE_PATH);
        Working { steps }
    }
}
