//! The guard: how far it leaves the wheel open.

use super::rule;
use crate::mounting::facts::Fact;
use crate::mounting::terms::Law;
use crate::mounting::words::YesNo;
use crate::source::Source;
use crate::tables::laws;
use crate::units::{Angle, Exact, degree};
use crate::wheel::MachineKind;

/// Whole degrees as a fact.
#[inline(always)]
fn degrees(angle: f64) -> f64 {
    Angle::new::<degree>(angle).exact()
}

/// Greatest exposure, and the highest point at which it may start, in degrees;
/// NaN where none is given.
#[inline(always)]
fn allowed(kind: Fact<MachineKind>, work_below: bool) -> (f64, f64) {
    use MachineKind::{Bench, CuttingOff, Cylindrical, Internal, Surface, Top};
    let bench = kind.is(Bench);
    let flat = kind.is(Surface) | kind.is(CuttingOff);
    let most = if bench {
        if work_below { 125.0 } else { 90.0 }
    } else if flat {
        150.0
    } else if kind.is(Top) {
        60.0
    } else if kind.is(Internal) {
        f64::NAN
    } else {
        180.0
    };
    let highest = if bench | kind.is(Cylindrical) {
        65.0
    } else if flat {
        -15.0
    } else {
        f64::NAN
    };
    (most, highest)
}

const FEDERAL: Source = laws::GUARD_ANGLES;

rule! {
    /// The guard catches the pieces. How far it may be open, and where the
    /// opening may start, depends on the machine: bench and floor stands 90° (125° when the
    /// work must touch the wheel below the spindle) from 65° above the horizontal,
    /// cylindrical 180° from 65°, surface and cutting-off 150° from 15° below,
    /// swing frames, automatic snagging and portable grinders 180°, top
    /// grinding 60°. Tool grinders have no federal angle; Michigan gives them
    /// 180°. Internal grinding is covered by the work.
    GUARD_OPEN = "guard-open", essential false;
    asks "is the guard open further than this machine allows, or does the opening start too high?";
    needs machine.kind, machine.guard_exposure;
    uses machine.guard_start, machine.work_below_spindle;
    cases {
        OpenByLaw: Refuse, Angle Most, FEDERAL, "the guard is open by {found}, {demanded} is the most";
        Open: Caution, Angle Most, FEDERAL,
            "the guard is open by {found}, {demanded} is the most under federal law of the United States";
        PortableByLaw: Refuse, Angle Most, laws::GUARD_PORTABLE, "the guard is open by {found}, {demanded} is the most";
        ToolByLaw: Refuse, Angle Most, laws::GUARD_TOOL_MI, "the guard is open by {found}, {demanded} is the most";
        Tool: Caution, Angle Most, laws::GUARD_TOOL_MI,
            "the guard is open by {found}, {demanded} is the most in Michigan; federal law gives none";
        HighByLaw: Refuse, Angle Most, FEDERAL,
            "the opening starts {found} above the horizontal, {demanded} is the most";
        High: Caution, Angle Most, FEDERAL,
            "the opening starts {found} above the horizontal, {demanded} is the most under federal law of the United States";
        Within: Pass, Angle Most, FEDERAL, "the guard is open by {found}, {demanded} is the most";
        WithinPortable: Pass, Angle Most, laws::GUARD_PORTABLE,
            "the guard is open by {found}, {demanded} is the most";
        WithinTool: Pass, Angle Most, laws::GUARD_TOOL_MI,
            "the guard is open by {found}, {demanded} is the most in Michigan; federal law gives none";
        NoAngle: NotChecked, Nothing Most, FEDERAL, "no angle is given for this machine";
    }
    advice "Close the guard to the angle allowed before the wheel is started.";
    judge |f, t| {
        let (exposure, start, below) = (f.machine.guard_exposure.0, f.machine.guard_start, f.machine.work_below_spindle);
        if let Some(missing) = missing([f.machine.kind.0]) {
            return missing;
        }
        let kind = f.machine.kind;
        let (most, highest) = allowed(kind, below.is(YesNo::Yes));
        if most.is_nan() {
            return It::NoAngle.bare();
        }
        let (most, highest) = (degrees(most), degrees(highest));
        let maybe_more = kind.is(MachineKind::Bench) & below.blank();
        let federal = t.has(Law::Us);
        if exposure > most && !(maybe_more && exposure <= degrees(125.0)) {
            let case = if kind.is(MachineKind::Tool) {
                if t.has(Law::UsMi) { It::ToolByLaw } else { It::Tool }
            } else if !federal {
                It::Open
            } else if kind.is(MachineKind::Portable) {
                It::PortableByLaw
            } else {
                It::OpenByLaw
            };
            return case.with(exposure, most);
        }
        if start.0 > highest {
            let case = if federal { It::HighByLaw } else { It::High };
            return case.with(start.0, highest);
        }
        if maybe_more && exposure > most {
            return CANT_TELL;
        }
        // Where a start is given for the machine, an exposure alone is half of the answer.
        let start = if highest.is_nan() { 0.0 } else { start.0 };
        if let Some(missing) = missing([exposure, start]) {
            missing
        } else if kind.is(MachineKind::Tool) {
            It::WithinTool.with(exposure, most)
        } else if kind.is(MachineKind::Portable) {
            It::WithinPortable.with(exposure, most)
        } else {
            It::Within.with(exposure, most)
        }
    }
}
