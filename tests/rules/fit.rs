//! Fit and truth: 29 CFR 1910.215(c)(7), (d)(2).

use hubwright::mounting::{Datum, Law, Material, Mounting, Outcome};
use hubwright::tables::laws;
use hubwright::units::{
    Length, TemperatureCoefficient, TemperatureInterval, kelvin, millimeter, per_kelvin,
};
use hubwright::wheel::Fastening;

use crate::{Table, mm, row};

pub fn tables() -> Vec<Table> {
    vec![hub_run_out(), wheel_binds(), spigot_size(), wheel_loose()]
}

fn warmer(by: f64) -> Datum<TemperatureInterval> {
    TemperatureInterval::new::<kelvin>(by).into()
}

fn expansion(per_million: f64) -> Datum<TemperatureCoefficient> {
    TemperatureCoefficient::new::<per_kelvin>(per_million / 1e6).into()
}

fn hub_run_out() -> Table {
    const ASKED: &str = "flange face or spigot runs out by {found}, {demanded} was asked for";
    const USUAL: &str = "flange face or spigot runs out by {found}, {demanded} is usual";
    const TRUE: &str = "flange face and spigot run out by {found} at most, {demanded} is the limit";
    Table::of("hub-run-out")
        // Common practice, no source: 0.01 mm.
        .row(
            row("over what is usual", |m| m.hub.spigot_run_out = mm(0.011))
                .caution(laws::PRACTICE, USUAL)
                .figures(0.011, 0.01, -0.001),
        )
        .row(
            row("as much as is usual", |m| m.fixed_flange.run_out = mm(0.01))
                .pass(laws::DRIVING_FLANGE, TRUE)
                .figures(0.01, 0.01, 0.0)
                // 0.01 mm on an 80 mm flange is 0.025 mm on a 200 mm wheel.
                .saying("the face tilts the rim by 0.025 mm"),
        )
        .row(
            row("over what was asked for", |m| {
                m.hub.run_out_limit = mm(0.003);
                m.hub.spigot_run_out = mm(0.002);
            })
            .caution(laws::ASKED, ASKED)
            .figures(0.005, 0.003, -0.002),
        )
        .row(
            row("the limit is blank", |m| m.hub.run_out_limit = Datum::Unknown)
                .unknown("hub run-out limit"),
        )
        .blank("fixed flange run-out", |m| m.fixed_flange.run_out = Datum::Unknown)
        .blank("hub spigot run-out", |m| m.hub.spigot_run_out = Datum::Unknown)
        .unasked("fixed flange run-out", |m| m.fixed_flange.run_out = Datum::NotAsked)
        .unasked("hub spigot run-out", |m| m.hub.spigot_run_out = Datum::NotAsked)
}

/// The sound mounting: hole 50.82, spigot 50.77, measured to 0.005 mm.
fn wheel_binds() -> Table {
    const BINDS: &str = "the clearance is {found} on diameter: the wheel has to be forced on";
    const WARM: &str =
        "warm, the clearance is {found} on diameter: the spigot grows into the wheel";
    const RECALLED: &str = "warm, the clearance is {found} on diameter by a recalled expansion: the spigot may grow into the wheel";
    const CLOSE: &str =
        "the clearance is {found} on diameter, no more than the {demanded} that it is measured to";
    const FREE: &str =
        "the wheel clears the spigot by {found} on diameter, {demanded} is the least";
    const GROWS: &str = "the spigot gets warmer, and nobody says how much its material expands";
    const NONE: &str = "the wheel sits on no spigot";
    let law = laws::FREE_FIT;
    let hot = |m: &mut Mounting| m.hub.warmer_by = warmer(60.0);
    Table::of("wheel-binds")
        .row(
            row("larger than the hole", |m| m.hub.spigot = mm(50.826))
                .refuse(law, BINDS)
                .figures(-0.006, 0.005, -0.011),
        )
        .row(
            row("its largest is larger than the smallest hole", |m| {
                m.wheel.smallest_hole = mm(50.79);
                m.hub.largest_spigot = mm(50.8);
            })
            .refuse(law, BINDS)
            .figures(-0.01, 0.005, -0.015),
        )
        .row(
            row("a second reading never makes the first one better", |m| {
                m.hub.spigot = mm(50.83);
                m.wheel.smallest_hole = mm(50.9);
            })
            .refuse(law, BINDS),
        )
        // Two made parts are compared within what they are measured to.
        .row(
            row("larger by no more than can be measured", |m| m.hub.spigot = mm(50.825))
                .caution(law, CLOSE)
                .figures(-0.005, 0.005, -0.01),
        )
        .row(row("clear by what is measured", |m| m.hub.spigot = mm(50.815)).caution(law, CLOSE))
        .row(row("clear by more", |_| {}).pass(law, FREE).figures(0.05, 0.005, 0.045))
        .row(
            row("measured better", |m| m.hub.spigot = mm(50.815))
                .on_terms(|terms| {
                    terms
                        .with_measured_within(Length::new::<millimeter>(0.001))
                        .expect("a length from zero up")
                })
                .pass(law, FREE),
        )
        // 50.77 mm · 60 K · 23e-6 = 0.070063 mm, more than the 0.05 mm of clearance.
        .row(
            row("a warm aluminium spigot of stated expansion", |m| {
                hot(m);
                m.hub.expansion = expansion(23.0);
            })
            .refuse(law, WARM)
            .figures(-0.020063, 0.005, -0.025063),
        )
        .row(
            row("a warm aluminium spigot", |m| {
                hot(m);
                m.hub.material = Material::Aluminium.into();
            })
            .caution(laws::EXPANSION, RECALLED),
        )
        // 11.5e-6 gives 0.035031 mm: 0.014969 mm are left.
        .row(row("a warm steel spigot", hot).pass(law, FREE).figures(0.014969, 0.005, 0.009969))
        .row(
            // The hole grows by 50.82 · 60 · 7e-6 = 0.021344 mm: 0.001282 mm are left.
            row("a wheel that grows too", |m| {
                hot(m);
                m.hub.expansion = expansion(23.0);
                m.wheel.warmer_by = warmer(60.0);
                m.wheel.expansion = expansion(7.0);
            })
            .caution(law, CLOSE)
            .figures(0.001282, 0.005, -0.003718),
        )
        .row(
            row("a wheel that is warm, and nobody knows how it grows", |m| {
                hot(m);
                m.hub.expansion = expansion(23.0);
                m.wheel.warmer_by = warmer(60.0);
            })
            .refuse(law, WARM),
        )
        .row(
            row("warm, of a material without a recalled expansion", |m| {
                hot(m);
                m.hub.material = Material::Other.into();
            })
            .is(Outcome::Unknown, laws::EXPANSION, GROWS),
        )
        .row(
            row("how much warmer is blank", |m| m.hub.warmer_by = Datum::Unknown)
                .unknown("hub warmer by"),
        )
        .row(row("in a chuck", |m| m.wheel.fastening = Fastening::Chuck.into()).aside(law, NONE))
        .blank("wheel hole", |m| m.wheel.hole = Datum::Unknown)
        .blank("hub spigot", |m| m.hub.spigot = Datum::Unknown)
        .unasked("wheel hole", |m| m.wheel.hole = Datum::NotAsked)
        .unasked("hub spigot", |m| m.hub.spigot = Datum::NotAsked)
}

/// (d)(2): nominal, plus nothing, minus 0.002 in = 0.0508 mm. Nominal 50.8 mm.
fn spigot_size() -> Table {
    const ABOVE: &str = "the spigot is {found}, above its nominal {demanded}";
    const ABOVE_US: &str = "the spigot is {found}, above its nominal {demanded}; federal law of the United States forbids it";
    const LEAST: &str = "the spigot is {found}, {demanded} is the least";
    let law = laws::FREE_FIT;
    let over = |m: &mut Mounting| m.hub.largest_spigot = mm(50.801);
    Table::of("spigot-size")
        .row(row("above nominal", over).refuse(law, ABOVE).figures(50.801, 50.8, -0.001))
        .row(row("above nominal, elsewhere", over).under(&[Law::Jp]).caution(law, ABOVE_US))
        .row(
            row("too far below", |m| m.hub.smallest_spigot = mm(50.7491))
                .caution(law, LEAST)
                .figures(50.7491, 50.7492, -0.0001),
        )
        .row(
            row("0.002 in below", |m| m.hub.spigot = mm(50.7492))
                .pass(law, LEAST)
                .figures(50.7492, 50.7492, 0.0),
        )
        .row(row("nominal", |m| m.hub.spigot = mm(50.8)).pass(law, LEAST))
        .row(
            row("a second reading never makes the first one better", |m| {
                m.hub.spigot = mm(50.801);
                m.hub.largest_spigot = mm(50.77);
            })
            .refuse(law, ABOVE),
        )
        .row(
            row("on a plate", |m| m.wheel.fastening = Fastening::Plate.into())
                .aside(law, "the wheel sits on no spigot"),
        )
        .blank("wheel nominal hole", |m| m.wheel.nominal_hole = Datum::Unknown)
        .blank("hub spigot", |m| m.hub.spigot = Datum::Unknown)
        .unasked("wheel nominal hole", |m| m.wheel.nominal_hole = Datum::NotAsked)
        .unasked("hub spigot", |m| m.hub.spigot = Datum::NotAsked)
}

fn wheel_loose() -> Table {
    const CLEARANCE: &str = "the clearance is up to {found} on diameter, {demanded} was asked for";
    let asked = laws::ASKED;
    Table::of("wheel-loose")
        .row(
            // Half of 0.12 mm off centre is 60 g·mm a kilogram.
            row("looser than asked for", |m| m.wheel.largest_hole = mm(50.89))
                .caution(asked, CLEARANCE)
                .figures(0.12, 0.1, -0.02)
                .saying("the rim can run out by 0.12 mm and the wheel be 60 g·mm out of balance"),
        )
        .row(
            row("as loose as asked for", |m| m.hub.smallest_spigot = mm(50.72))
                .pass(asked, CLEARANCE)
                .figures(0.1, 0.1, 0.0),
        )
        .row(
            row("on a plate", |m| m.wheel.fastening = Fastening::Plate.into())
                .aside(asked, "the wheel sits on no spigot"),
        )
        .blank("hub clearance limit", |m| m.hub.clearance_limit = Datum::Unknown)
        .blank("wheel hole", |m| m.wheel.hole = Datum::Unknown)
        .blank("hub spigot", |m| m.hub.spigot = Datum::Unknown)
        .unasked("hub clearance limit", |m| m.hub.clearance_limit = Datum::NotAsked)
}

#[test]
fn the_hub_runs_true() {
    hub_run_out().holds();
}

#[test]
fn the_wheel_goes_on_freely_cold_and_warm() {
    wheel_binds().holds();
}

#[test]
fn the_spigot_is_nominal_plus_nothing_minus_two_thousandths() {
    spigot_size().holds();
}

#[test]
fn the_wheel_is_no_looser_than_asked_for() {
    wheel_loose().holds();
}
