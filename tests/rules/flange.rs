//! The flanges' diameters: a third of the wheel, the tables, and both alike.

use hubwright::mounting::{Datum, Mounting, Outcome};
use hubwright::tables::{flanges, laws};
use hubwright::units::Length;
use hubwright::wheel::{Fastening, FlangeKind, MachineKind, Shape, flange_limits};

use crate::{Table, finding, inches, mm, row, sound, terms};

pub fn tables() -> Vec<Table> {
    vec![flange_below_one_third(), flange_below_table(), flanges_unlike()]
}

/// Both flanges of one diameter.
fn flanges_of(m: &mut Mounting, diameter: Datum<Length>) {
    m.fixed_flange.diameter = diameter;
    m.loose_flange.diameter = diameter;
}

/// Both flanges of one kind.
fn kind_of(m: &mut Mounting, kind: FlangeKind) {
    m.fixed_flange.kind = kind.into();
    m.loose_flange.kind = kind.into();
}

/// 29 CFR 1910.215(c)(1).
fn flange_below_one_third() -> Table {
    const BELOW: &str = "a flange is {found}, a third of the wheel {demanded}";
    const BELOW_QUARTER: &str =
        "a flange is {found}, a quarter of the cutting-off wheel {demanded}";
    const INTERNAL: &str =
        "a flange is {found}, a third of the wheel {demanded}; certain internal wheels are exempt";
    const HOLE: &str = "a flange is {found}, the wheel's hole {demanded}: it bears on nothing";
    const THIRD: &str = "the smaller flange is {found}, a third of the wheel {demanded}";
    const QUARTER: &str =
        "the smaller flange is {found}, a quarter of the cutting-off wheel {demanded}";
    const EXEMPT: &str = "this shape or fastening is exempt";
    let law = laws::FLANGE_THIRD;
    let mut table = Table::of("flange-below-one-third")
        .row(
            // 180 / 3 = 60.
            row("a third of 180 mm, to the micrometre", |m| {
                m.wheel.diameter = mm(180.0);
                flanges_of(m, mm(60.0));
            })
            .pass(law, THIRD)
            .figures(60.0, 60.0, 0.0),
        )
        .row(
            row("a micrometre less", |m| {
                m.wheel.diameter = mm(180.0);
                flanges_of(m, mm(59.999));
            })
            .refuse(law, BELOW)
            .figures(59.999, 60.0, -0.001)
            .saying("59.999 mm"),
        )
        .row(
            // 3 × 66.666666 mm = 199.999998 mm, below 200; the next nanometre reaches it.
            row("a nanometre less than a third of 200 mm", |m| flanges_of(m, mm(66.666_666)))
                .refuse(law, BELOW),
        )
        .row(
            row("a third of 200 mm, rounded up", |m| flanges_of(m, mm(66.666_667)))
                .pass(law, THIRD),
        )
        .row(
            // 16 in / 4 = 4 in.
            row("16 in for cutting off: a quarter is 4 in", |m| {
                m.wheel.shape = Shape::Type1CuttingOff.into();
                m.wheel.diameter = inches(16.0);
                flanges_of(m, inches(4.0));
            })
            .pass(law, QUARTER)
            .figures(101.6, 101.6, 0.0),
        )
        .row(
            row("16 in for cutting off, less than 4 in", |m| {
                m.wheel.shape = Shape::Type1CuttingOff.into();
                m.wheel.diameter = inches(16.0);
                flanges_of(m, mm(101.599));
            })
            .refuse(law, BELOW_QUARTER)
            .figures(101.599, 101.6, -0.001),
        )
        .row(
            row("type 27A has the quarter too", |m| {
                m.wheel.shape = Shape::Type27A.into();
                m.wheel.hole = mm(30.0);
                flanges_of(m, mm(50.0));
            })
            .pass(law, QUARTER),
        )
        .row(
            // A quarter is for cutting off alone.
            row("a quarter on a straight wheel", |m| flanges_of(m, mm(50.0))).refuse(law, BELOW),
        )
        .row(
            row("an internal grinder, of which certain wheels are exempt", |m| {
                m.machine.kind = MachineKind::Internal.into();
                m.wheel.hole = mm(30.0);
                flanges_of(m, mm(50.0));
            })
            .caution(law, INTERNAL),
        )
        .row(
            row("a blank machine is not taken for an internal grinder", |m| {
                m.machine.kind = Datum::Unknown;
                flanges_of(m, mm(50.0));
            })
            .refuse(law, BELOW),
        )
        .row(
            row("a shape that nobody asks for is held to the third", |m| {
                m.wheel.shape = Datum::NotAsked;
                flanges_of(m, mm(50.0));
            })
            .refuse(law, BELOW),
        )
        .row(
            // The sound flanges are 80 mm.
            row("a flange no larger than the hole", |m| m.wheel.hole = mm(80.0))
                .refuse(laws::ARITHMETIC, HOLE)
                .figures(80.0, 80.0, 0.0),
        )
        .row(
            row("a threaded wheel on a machine that is not portable", |m| {
                m.wheel.fastening = Fastening::ThreadedInsert.into();
                m.fixed_flange.diameter = mm(66.0);
                m.loose_flange.diameter = Datum::NotAsked;
            })
            .refuse(law, BELOW),
        )
        .row(
            row("a threaded wheel, and the machine is blank", |m| {
                m.wheel.fastening = Fastening::Stud.into();
                m.machine.kind = Datum::Unknown;
            })
            .unknown("machine kind"),
        )
        .row(
            row("the smaller of two flanges counts", |m| m.loose_flange.diameter = mm(66.0))
                .refuse(law, BELOW)
                .figures(66.0, 66.666_667, -0.666_667),
        )
        .blank("wheel diameter", |m| m.wheel.diameter = Datum::Unknown)
        .blank("wheel shape", |m| m.wheel.shape = Datum::Unknown)
        .blank("wheel fastening", |m| m.wheel.fastening = Datum::Unknown)
        .blank("fixed flange diameter", |m| m.fixed_flange.diameter = Datum::Unknown)
        .blank("loose flange diameter", |m| m.loose_flange.diameter = Datum::Unknown)
        .unasked("wheel diameter", |m| m.wheel.diameter = Datum::NotAsked)
        .unasked("fixed flange diameter", |m| m.fixed_flange.diameter = Datum::NotAsked)
        .unasked("loose flange diameter", |m| m.loose_flange.diameter = Datum::NotAsked);
    // (c)(1)(i): no third is asked of these.
    let shapes =
        [Shape::Type27, Shape::Type28, Shape::Type6Terrazzo, Shape::Type11Terrazzo, Shape::Disc];
    for shape in shapes {
        let exempt = row(format!("{shape}"), |m| {
            m.wheel.shape = shape.into();
            flanges_of(m, mm(20.0));
        });
        table = table.row(exempt.aside(law, EXEMPT));
    }
    let held = [Fastening::Plate, Fastening::Chuck, Fastening::Mandrel];
    for fastening in held {
        let exempt = row(format!("held by {fastening}"), |m| {
            m.wheel.fastening = fastening.into();
            flanges_of(m, mm(20.0));
        });
        table = table.row(exempt.aside(law, EXEMPT));
    }
    for fastening in [Fastening::ThreadedInsert, Fastening::Stud] {
        // "Portable wheels with threaded inserts or projecting studs".
        let exempt = row(format!("a portable wheel held by {fastening}"), |m| {
            m.machine.kind = MachineKind::Portable.into();
            m.wheel.fastening = fastening.into();
            flanges_of(m, mm(20.0));
        });
        table = table.row(exempt.aside(law, EXEMPT));
    }
    table
}

/// Tables O-4 to O-8.
fn flange_below_table() -> Table {
    const BELOW: &str = "a flange is {found}, the table asks for {demanded}";
    const ADAPTOR: &str = "an adaptor flange is {found}, the table asks for {demanded}";
    const NEXT: &str = "the wheel or its hole is between two listed sizes; a flange is {found}, the next row asks for {demanded}";
    const ENOUGH: &str = "the smaller flange is {found}, the table asks for {demanded}";
    const NO_ROW: &str = "no table is about this wheel and flange";
    let law = laws::FLANGE_TABLES;
    // A 180 mm wheel is 7.087 in: between 7 in (2 1/2 in flanges) and 8 in (3 in).
    let between = |m: &mut Mounting, diameter: f64| {
        m.wheel.diameter = mm(180.0);
        flanges_of(m, mm(diameter));
    };
    let adaptor = |m: &mut Mounting, kind: FlangeKind, wheel: f64, hole: f64, flange: f64| {
        kind_of(m, kind);
        m.wheel.diameter = inches(wheel);
        m.wheel.hole = inches(hole);
        flanges_of(m, inches(flange));
    };
    let threaded = |m: &mut Mounting, diameter: f64| {
        m.machine.kind = MachineKind::Portable.into();
        m.wheel.fastening = Fastening::ThreadedInsert.into();
        m.wheel.diameter = inches(4.0);
        kind_of(m, FlangeKind::Unrelieved);
        flanges_of(m, mm(diameter));
    };
    Table::of("flange-below-table")
        .row(
            row("180 mm under 63.499 mm", |m| between(m, 63.499))
                .refuse(flanges::O6, BELOW)
                .figures(63.499, 63.5, -0.001),
        )
        .row(
            row("180 mm under 63.5 mm, the row below", |m| between(m, 63.5))
                .caution(law, NEXT)
                .figures(63.5, 76.2, -12.7),
        )
        .row(
            row("180 mm under 76.2 mm, the row above", |m| between(m, 76.2))
                .pass(law, ENOUGH)
                .figures(76.2, 63.5, 12.7),
        )
        .row(
            row("180 mm sold as 7 in is judged by its own row", |m| {
                between(m, 63.5);
                m.wheel.nominal_diameter = inches(7.0);
            })
            .pass(law, ENOUGH),
        )
        .row(
            // 178.3 - 177.8 = 0.5 mm from 7 in.
            row("half a millimetre from a listed size is of that size", |m| {
                between(m, 63.5);
                m.wheel.diameter = mm(178.3);
            })
            .pass(law, ENOUGH),
        )
        .row(
            row("more than that is between two", |m| {
                between(m, 63.5);
                m.wheel.diameter = mm(178.301);
            })
            .caution(law, NEXT),
        )
        .row(
            // O-4: 4 in wants 1 3/8 in = 34.925 mm.
            row("a threaded insert under its row of O-4", |m| threaded(m, 34.924))
                .refuse(flanges::O4, BELOW)
                .figures(34.924, 34.925, -0.001),
        )
        .row(row("a threaded insert on its row of O-4", |m| threaded(m, 34.925)).pass(law, ENOUGH))
        .row(
            // O-8: over 14 to 20 in with a hole of 8 in wants 10 in.
            row("a sleeve under its row of O-8", |m| {
                adaptor(m, FlangeKind::Sleeve, 20.0, 8.0, 9.99);
            })
            .refuse(flanges::O8, BELOW)
            .figures(253.746, 254.0, -0.254),
        )
        .row(
            // O-8 lists no hole under 5 in: O-6 wants 5 1/2 in for 16 in.
            row("a sleeve with a smaller hole goes by O-6", |m| {
                adaptor(m, FlangeKind::Sleeve, 16.0, 3.0, 5.49);
            })
            .refuse(flanges::O6, BELOW)
            .figures(139.446, 139.7, -0.254),
        )
        .row(
            // O-5: from 12 to 14 in with a hole of 5 in wants 7 in.
            row("an adaptor under its row of O-5, whose wheels are recalled", |m| {
                adaptor(m, FlangeKind::Adaptor, 12.0, 5.0, 6.9);
            })
            .caution(laws::ADAPTOR_TABLES, ADAPTOR)
            .figures(175.26, 177.8, -2.54),
        )
        .row(
            // O-7: 24 in with a hole of 12 in wants 15 in.
            row("a heavy adaptor under its row of O-7", |m| {
                adaptor(m, FlangeKind::AdaptorHeavy, 24.0, 12.0, 14.9);
            })
            .caution(laws::ADAPTOR_TABLES, ADAPTOR)
            .figures(378.46, 381.0, -2.54),
        )
        .row(
            row("a recess makes a flange of no stated kind relieved", |m| {
                between(m, 63.499);
                m.fixed_flange.kind = Datum::NotAsked;
                m.loose_flange.kind = Datum::NotAsked;
            })
            .refuse(flanges::O6, BELOW),
        )
        .row(
            row("a cutting-off wheel has its quarter instead", |m| {
                m.wheel.shape = Shape::Type1CuttingOff.into();
                m.wheel.diameter = inches(16.0);
                flanges_of(m, inches(4.0));
            })
            .aside(law, NO_ROW),
        )
        .row(row("type 27", |m| m.wheel.shape = Shape::Type27.into()).aside(law, NO_ROW))
        .row(
            row("held in a chuck", |m| m.wheel.fastening = Fastening::Chuck.into())
                .aside(law, NO_ROW),
        )
        .row(
            // O-4 is for wheels with threaded inserts or studs only (RULES, Tables O-4 to O-8).
            row("flat flanges on a wheel without a thread are not judged by O-4", |m| {
                kind_of(m, FlangeKind::Unrelieved);
                m.wheel.diameter = mm(76.2);
                flanges_of(m, mm(26.0));
            })
            .aside(law, NO_ROW),
        )
        .row(
            // The note to O-6 lets wheels under 2 in have flat flanges of its diameters: 1 in, 3/8.
            row("flat flanges on a wheel under 2 in", |m| {
                kind_of(m, FlangeKind::Unrelieved);
                m.wheel.diameter = mm(25.4);
                m.wheel.hole = mm(6.0);
                flanges_of(m, mm(9.524));
            })
            .refuse(flanges::O6, BELOW)
            .figures(9.524, 9.525, -0.001),
        )
        .row(
            row("one side enough, the other not asked", |m| {
                m.loose_flange.diameter = Datum::NotAsked;
            })
            .not_checked("loose flange diameter"),
        )
        .blank("wheel shape", |m| m.wheel.shape = Datum::Unknown)
        .blank("wheel diameter", |m| m.wheel.diameter = Datum::Unknown)
        .blank("wheel nominal diameter", |m| m.wheel.nominal_diameter = Datum::Unknown)
        .blank("wheel fastening", |m| m.wheel.fastening = Datum::Unknown)
        .blank("wheel hole", |m| {
            adaptor(m, FlangeKind::Sleeve, 20.0, 8.0, 10.0);
            m.wheel.hole = Datum::Unknown;
        })
        .blank("fixed flange kind", |m| m.fixed_flange.kind = Datum::Unknown)
        .blank("loose flange kind", |m| m.loose_flange.kind = Datum::Unknown)
        .blank("fixed flange diameter", |m| m.fixed_flange.diameter = Datum::Unknown)
        .blank("loose flange diameter", |m| m.loose_flange.diameter = Datum::Unknown)
        .blank("fixed flange recess", |m| {
            // A recess would make it a relieved one, and that has a table.
            m.fixed_flange.kind = Datum::NotAsked;
            m.fixed_flange.recess = Datum::Unknown;
        })
        .unasked("wheel shape", |m| m.wheel.shape = Datum::NotAsked)
        .unasked("wheel diameter", |m| m.wheel.diameter = Datum::NotAsked)
        .unasked("fixed flange kind", |m| {
            m.fixed_flange.kind = Datum::NotAsked;
            m.fixed_flange.recess = Datum::NotAsked;
        })
}

/// 29 CFR 1910.215(c)(4); half a millimetre is practice.
fn flanges_unlike() -> Table {
    const DIAMETERS: &str = "the flanges differ by {found} in diameter, more than {demanded}";
    const LANDS: &str = "the flanges' lands differ by {found} in width, more than {demanded}";
    const ALIKE: &str = "the flanges differ by {found}, {demanded} at most";
    const EXEMPT: &str = "this shape or fastening is exempt";
    let law = laws::FLANGES_ALIKE;
    let tenth = Length::new::<hubwright::units::millimeter>(0.1);
    let within = move |terms: hubwright::mounting::Terms| {
        terms.with_flange_tolerance(tenth).expect("a tolerance in range")
    };
    let mut table = Table::of("flanges-unlike")
        .row(
            row("diameters half a millimetre apart", |m| m.loose_flange.diameter = mm(80.5))
                .pass(law, ALIKE)
                .figures(0.5, 0.5, 0.0),
        )
        .row(
            row("diameters a little further apart", |m| m.loose_flange.diameter = mm(79.499))
                .refuse(law, DIAMETERS)
                .figures(0.501, 0.5, -0.001),
        )
        .row(
            row("lands half a millimetre apart", |m| m.fixed_flange.land = mm(10.5))
                .pass(law, ALIKE),
        )
        .row(
            row("lands a little further apart", |m| m.fixed_flange.land = mm(10.501))
                .refuse(law, LANDS)
                .figures(0.501, 0.5, -0.001),
        )
        .row(
            row("half a millimetre under a tolerance of a tenth", |m| {
                m.loose_flange.diameter = mm(80.5);
            })
            .on_terms(within)
            .refuse(law, DIAMETERS)
            .figures(0.5, 0.1, -0.4),
        )
        .row(
            // A breach of what is known stands.
            row("unlike diameters, with a blank land", |m| {
                m.loose_flange.diameter = mm(70.0);
                m.fixed_flange.land = Datum::Unknown;
            })
            .refuse(law, DIAMETERS),
        )
        .row(
            row("held on a plate", |m| {
                m.wheel.fastening = Fastening::Plate.into();
                m.loose_flange.diameter = mm(70.0);
            })
            .aside(law, EXEMPT),
        )
        .blank("wheel shape", |m| m.wheel.shape = Datum::Unknown)
        .blank("wheel fastening", |m| m.wheel.fastening = Datum::Unknown)
        .blank("fixed flange diameter", |m| m.fixed_flange.diameter = Datum::Unknown)
        .blank("loose flange diameter", |m| m.loose_flange.diameter = Datum::Unknown)
        .blank("fixed flange land", |m| m.fixed_flange.land = Datum::Unknown)
        .blank("loose flange land", |m| m.loose_flange.land = Datum::Unknown)
        .unasked("loose flange diameter", |m| m.loose_flange.diameter = Datum::NotAsked)
        .unasked("fixed flange land", |m| m.fixed_flange.land = Datum::NotAsked);
    for shape in [Shape::Type27, Shape::Type28, Shape::Type6Terrazzo, Shape::Type11Terrazzo] {
        let exempt = row(format!("{shape}"), |m| {
            m.wheel.shape = shape.into();
            m.loose_flange.diameter = mm(40.0);
        });
        table = table.row(exempt.aside(law, EXEMPT));
    }
    table
}

#[test]
fn flanges_hold_a_third_of_the_wheel_or_a_quarter_for_cutting_off() {
    flange_below_one_third().holds();
}

#[test]
fn a_flange_reaches_the_row_of_its_table() {
    flange_below_table().holds();
}

#[test]
fn both_flanges_are_alike() {
    flanges_unlike().holds();
}

#[test]
fn a_third_governs_a_14_in_wheel_although_its_table_asks_for_less() {
    // O-6 asks for 4 1/2 in; a third is 4.667 in = 118.533 mm.
    let mut mounting = sound();
    mounting.wheel.diameter = inches(14.0);
    flanges_of(&mut mounting, inches(4.6));
    let of = |slug| finding(slug, &mounting, &terms()).outcome;
    assert_eq!(of("flange-below-table"), Outcome::Pass);
    assert_eq!(of("flange-below-one-third"), Outcome::Refuse);
    let wheel = Length::new::<hubwright::units::inch>(14.0);
    let limits = flange_limits(Shape::Type1, wheel, FlangeKind::Relieved, None);
    let least = limits.expect("a size in range").least_diameter.expect("a ratio");
    let least = least.value.get::<hubwright::units::millimeter>();
    assert!((least - 355.6 / 3.0).abs() < 1e-9, "{least}");
}
