//! The guard: 29 CFR 1910.215(b)(3)-(8), 1910.243(c), Mich. R 408.10199.

use hubwright::mounting::{Datum, Law, Mounting, Outcome, YesNo};
use hubwright::tables::laws;
use hubwright::wheel::MachineKind;

use crate::{Row, Table, deg, finding, row, sound, terms};

pub fn tables() -> Vec<Table> {
    vec![guard_open()]
}

const MOST: &str = "the guard is open by {found}, {demanded} is the most";
const MOST_US: &str =
    "the guard is open by {found}, {demanded} is the most under federal law of the United States";
const MICHIGAN: &str =
    "the guard is open by {found}, {demanded} is the most in Michigan; federal law gives none";
const HIGH: &str = "the opening starts {found} above the horizontal, {demanded} is the most";
const HIGH_US: &str = "the opening starts {found} above the horizontal, {demanded} is the most under federal law of the United States";
const NONE: &str = "no angle is given for this machine";

fn machine(kind: MachineKind, exposure: f64, start: Option<f64>) -> impl Fn(&mut Mounting) {
    move |m| {
        m.machine.kind = kind.into();
        m.machine.guard_exposure = deg(exposure);
        m.machine.guard_start = start.map_or(Datum::NotAsked, deg);
    }
}

fn open(kind: MachineKind, exposure: f64, start: Option<f64>) -> Row {
    row(format!("{kind} open by {exposure}° from {start:?}"), machine(kind, exposure, start))
}

fn guard_open() -> Table {
    use MachineKind::{
        Bench, CuttingOff, Cylindrical, Internal, Portable, Snagging, Surface, SwingFrame, Tool,
        Top,
    };
    let federal = laws::GUARD_ANGLES;
    let work_below = |m: &mut Mounting| {
        machine(Bench, 125.0, Some(65.0))(m);
        m.machine.work_below_spindle = YesNo::Yes.into();
    };
    let mut table = Table::of("guard-open")
        // (b)(3): 90° from 65° above; 125° where the work must touch the wheel below the spindle.
        .row(open(Bench, 91.0, Some(60.0)).refuse(federal, MOST).figures(91.0, 90.0, -1.0))
        .row(open(Bench, 90.0, Some(65.0)).pass(federal, MOST).figures(90.0, 90.0, 0.0))
        .row(open(Bench, 90.0, Some(66.0)).refuse(federal, HIGH).figures(66.0, 65.0, -1.0))
        .row(open(Bench, 90.0, Some(66.0)).under(&[Law::Jp]).caution(federal, HIGH_US))
        .row(open(Bench, 91.0, Some(60.0)).under(&[]).caution(federal, MOST_US))
        .row(row("125° for work below the spindle", work_below).pass(federal, MOST))
        .row(
            row("125° when work below the spindle is blank", |m| {
                work_below(m);
                m.machine.work_below_spindle = Datum::Unknown;
            })
            .unknown("machine work below spindle"),
        )
        // (b)(6), (b)(7), 1910.243(c)(3)-(4).
        .row(open(Portable, 181.0, None).refuse(laws::GUARD_PORTABLE, MOST))
        // No federal angle; 180° in Michigan.
        .row(open(Tool, 181.0, None).caution(laws::GUARD_TOOL_MI, MICHIGAN))
        .row(
            open(Tool, 181.0, None)
                .under(&[Law::Us, Law::UsMi])
                .refuse(laws::GUARD_TOOL_MI, MOST)
                .figures(181.0, 180.0, -1.0),
        )
        .row(open(Internal, 360.0, None).aside(federal, NONE))
        .blank("machine kind", |m| m.machine.kind = Datum::Unknown)
        .blank("machine guard exposure", |m| m.machine.guard_exposure = Datum::Unknown)
        .blank("machine guard start", |m| m.machine.guard_start = Datum::Unknown)
        .unasked("machine kind", |m| m.machine.kind = Datum::NotAsked)
        .unasked("machine guard exposure", |m| m.machine.guard_exposure = Datum::NotAsked)
        .row(
            row("where the opening starts is half of the answer", |m| {
                m.machine.guard_start = Datum::NotAsked;
            })
            .not_checked("machine guard start, machine work below spindle"),
        );
    // Kind, most, and a start that is allowed.
    let angles = [
        (Cylindrical, 180.0, Some(65.0)),
        (Surface, 150.0, Some(-15.0)),
        (CuttingOff, 150.0, Some(-15.0)),
        (SwingFrame, 180.0, None),
        (Snagging, 180.0, None),
        (Portable, 180.0, None),
        (Tool, 180.0, None),
        (Top, 60.0, None),
    ];
    for (kind, most, start) in angles {
        let (law, says) = match kind {
            Portable => (laws::GUARD_PORTABLE, MOST),
            Tool => (laws::GUARD_TOOL_MI, MICHIGAN),
            _ => (federal, MOST),
        };
        table = table.row(open(kind, most, start).pass(law, says).figures(most, most, 0.0));
        if !matches!(kind, Portable | Tool) {
            table = table.row(open(kind, most + 0.5, start).refuse(federal, MOST));
        }
        if let Some(start) = start {
            table = table.row(open(kind, most, Some(start + 0.5)).refuse(federal, HIGH));
        }
    }
    table
}

#[test]
fn a_guard_is_open_no_further_than_its_machine_allows() {
    guard_open().holds();
}

#[test]
fn a_breach_stands_though_the_start_is_blank() {
    let mut mounting = sound();
    machine(MachineKind::Surface, 170.0, None)(&mut mounting);
    mounting.machine.guard_start = Datum::Unknown;
    assert_eq!(finding("guard-open", &mounting, &terms()).outcome, Outcome::Refuse);
}
