//! Blotters: 29 CFR 1910.215(c)(6), (d)(5); WAC 296-806-40524.

use hubwright::mounting::{Datum, Law, Mounting, Outcome, YesNo};
use hubwright::tables::laws;
use hubwright::wheel::{Abrasive, Bond, Fastening, MachineKind, Shape};

use crate::{Row, Table, finding, mm, row, sound, terms};

pub fn tables() -> Vec<Table> {
    vec![blotter_missing(), blotter_too_small(), blotter_reused()]
}

fn without(m: &mut Mounting) {
    m.fixed_blotter.present = YesNo::No.into();
    m.loose_blotter.present = YesNo::No.into();
}

/// A mounting without blotters, and one more thing.
fn bare(name: &str, change: impl Fn(&mut Mounting)) -> Row {
    row(name, |m| {
        without(m);
        change(m);
    })
}

fn blotter_missing() -> Table {
    const MISSING: &str = "a side has no blotter";
    const ASK: &str = "a side has no blotter; wheels of this sort are exempt in part";
    const FITTED: &str = "there is a blotter on each side";
    const EXEMPT: &str = "this wheel needs none";
    let law = laws::BLOTTERS;
    let diamond = |bond: Bond| {
        move |m: &mut Mounting| {
            m.wheel.abrasive = Abrasive::Diamond.into();
            m.wheel.bond = bond.into();
        }
    };
    let mut table = Table::of("blotter-missing")
        .row(bare("none on a vitrified wheel", |_| {}).refuse(law, MISSING))
        .row(
            row("none on one side", |m| m.loose_blotter.present = YesNo::No.into())
                .refuse(law, MISSING),
        )
        .row(row("one on each side", |_| {}).pass(law, FITTED))
        // (c)(6)(ii): diamond wheels are exempt, but for certain vitrified ones.
        .row(bare("resin diamond", diamond(Bond::Resin)).aside(law, EXEMPT))
        .row(bare("metal diamond", diamond(Bond::Metal)).aside(law, EXEMPT))
        .row(bare("vitrified diamond", diamond(Bond::Vitrified)).caution(law, ASK))
        .row(
            bare("CBN is not in the list", |m| m.wheel.abrasive = Abrasive::Cbn.into())
                .refuse(law, MISSING),
        )
        // Exempt on their flat side only: the tapered one needs a blotter.
        .row(bare("terrazzo", |m| m.wheel.shape = Shape::Type6Terrazzo.into()).caution(law, ASK))
        // A shape that is exempt is so in any bond.
        .row(
            bare("vitrified diamond of type 27", |m| {
                m.wheel.shape = Shape::Type27.into();
                m.wheel.abrasive = Abrasive::Diamond.into();
            })
            .aside(law, EXEMPT),
        )
        // "Certain" cutting-off and internal wheels.
        .row(
            bare("cutting-off", |m| m.wheel.shape = Shape::Type1CuttingOff.into())
                .caution(law, ASK),
        )
        .row(bare("type 27A", |m| m.wheel.shape = Shape::Type27A.into()).caution(law, ASK))
        .row(bare("internal", |m| m.machine.kind = MachineKind::Internal.into()).caution(law, ASK))
        .row(
            bare("a shape that nobody asks for is held to the rule", |m| {
                m.wheel.shape = Datum::NotAsked;
            })
            .refuse(law, MISSING),
        )
        .row(bare("the bond is blank", |m| m.wheel.bond = Datum::Unknown).unknown("wheel bond"))
        .row(
            row("a threaded wheel has one flange and one blotter", |m| {
                m.wheel.fastening = Fastening::ThreadedInsert.into();
                m.loose_blotter.present = Datum::NotAsked;
            })
            .pass(law, FITTED),
        )
        .blank("fixed blotter present", |m| m.fixed_blotter.present = Datum::Unknown)
        .blank("loose blotter present", |m| m.loose_blotter.present = Datum::Unknown)
        .unasked("fixed blotter present", |m| m.fixed_blotter.present = Datum::NotAsked)
        .unasked("loose blotter present", |m| m.loose_blotter.present = Datum::NotAsked);
    for shape in [Shape::Type4, Shape::Type27, Shape::Type28, Shape::Disc] {
        let change = move |m: &mut Mounting| m.wheel.shape = shape.into();
        table = table.row(bare(&shape.to_string(), change).aside(law, EXEMPT));
    }
    for fastening in [Fastening::Chuck, Fastening::Plate, Fastening::Mandrel] {
        let change = move |m: &mut Mounting| m.wheel.fastening = fastening.into();
        table = table.row(bare(&fastening.to_string(), change).aside(law, EXEMPT));
    }
    table
}

/// The sound mounting's flanges are 80 mm with lands of 10 mm: 60 mm inside.
fn blotter_too_small() -> Table {
    const OUTSIDE: &str = "a blotter is {found}, its flange {demanded}";
    const INSIDE: &str = "the hole of a blotter is {found}, the land begins at {demanded}";
    const COVERS: &str = "the blotters are {found} and more, the flange {demanded}";
    const NONE: &str = "there is no blotter";
    let law = laws::BLOTTER_COVERS;
    let mut table = Table::of("blotter-too-small")
        .row(
            row("smaller than the flange", |m| m.loose_blotter.diameter = mm(79.999))
                .refuse(law, OUTSIDE)
                .figures(79.999, 80.0, -0.001),
        )
        .row(
            row("as large as the flange, to the land", |m| {
                for blotter in [&mut m.fixed_blotter, &mut m.loose_blotter] {
                    blotter.diameter = mm(80.0);
                    blotter.hole = mm(60.0);
                }
            })
            .pass(law, COVERS)
            .figures(80.0, 80.0, 0.0),
        )
        .row(
            row("open inside the land", |m| m.fixed_blotter.hole = mm(60.001))
                .refuse(law, INSIDE)
                .figures(60.001, 60.0, -0.001),
        )
        .row(bare("no blotter", |_| {}).aside(law, NONE))
        .row(
            row("whether there is one is blank", |m| m.fixed_blotter.present = Datum::Unknown)
                .unknown("fixed blotter present"),
        )
        .blank("fixed blotter diameter", |m| m.fixed_blotter.diameter = Datum::Unknown)
        .blank("loose blotter diameter", |m| m.loose_blotter.diameter = Datum::Unknown)
        .blank("fixed blotter hole", |m| m.fixed_blotter.hole = Datum::Unknown)
        .blank("loose blotter hole", |m| m.loose_blotter.hole = Datum::Unknown)
        .blank("fixed flange diameter", |m| m.fixed_flange.diameter = Datum::Unknown)
        .blank("loose flange diameter", |m| m.loose_flange.diameter = Datum::Unknown)
        .blank("fixed flange land", |m| m.fixed_flange.land = Datum::Unknown)
        .blank("loose flange land", |m| m.loose_flange.land = Datum::Unknown);
    // One side that covers does not speak for a side that nobody asks about.
    table = table
        .unasked("loose blotter diameter", |m| m.loose_blotter.diameter = Datum::NotAsked)
        .unasked("fixed blotter hole", |m| m.fixed_blotter.hole = Datum::NotAsked);
    table
}

fn blotter_reused() -> Table {
    const BY_LAW: &str = "a blotter was used before";
    const REUSED: &str = "a blotter was used before; Washington demands a new one";
    const NEW: &str = "the blotters are new or fixed by the maker";
    const NONE: &str = "there is no blotter";
    let law = laws::NEW_BLOTTERS_WA;
    let used = |m: &mut Mounting| m.loose_blotter.used_before = YesNo::Yes.into();
    Table::of("blotter-reused")
        .row(row("used before", used).caution(law, REUSED))
        .row(
            row("used before, in Washington", used)
                .under(&[Law::Us, Law::UsWa])
                .refuse(law, BY_LAW),
        )
        .row(
            row("fixed by the maker", |m| {
                used(m);
                m.loose_blotter.fixed_by_maker = YesNo::Yes.into();
            })
            .pass(law, NEW),
        )
        .row(row("new", |_| {}).pass(law, NEW))
        .row(bare("none", |_| {}).aside(law, NONE))
        .row(
            row("used, and whether the maker fixed it is blank", |m| {
                used(m);
                m.loose_blotter.fixed_by_maker = Datum::Unknown;
            })
            .unknown("loose blotter fixed by maker"),
        )
        .blank("fixed blotter used before", |m| m.fixed_blotter.used_before = Datum::Unknown)
        .blank("loose blotter used before", |m| m.loose_blotter.used_before = Datum::Unknown)
        .unasked("fixed blotter used before", |m| m.fixed_blotter.used_before = Datum::NotAsked)
}

#[test]
fn a_blotter_is_on_each_side_that_needs_one() {
    blotter_missing().holds();
}

#[test]
fn blotters_cover_the_bearing_surface() {
    blotter_too_small().holds();
}

#[test]
fn blotters_are_new_at_every_mounting() {
    blotter_reused().holds();
}

#[test]
fn a_side_that_passes_does_not_speak_for_one_that_nobody_asks_about() {
    let mut mounting = sound();
    mounting.loose_blotter.used_before = Datum::NotAsked;
    assert_eq!(finding("blotter-reused", &mounting, &terms()).outcome, Outcome::NotChecked);
}
