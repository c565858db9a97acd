//! The flange as a plate: 29 CFR 1910.215(c)(5), Tables O-4 to O-8, and the
//! states on its material.

use hubwright::mounting::{Datum, Flange, Law, Material, Mounting, Outcome, YesNo};
use hubwright::tables::{flanges, laws};
use hubwright::wheel::{Fastening, FlangeKind, Shape};

use crate::{Row, Table, finding, inches, mm, row, sound, terms};

pub fn tables() -> Vec<Table> {
    vec![flange_relief(), land_width(), flange_too_thin(), flange_material()]
}

/// Changes both flanges.
fn both(m: &mut Mounting, change: impl FnMut(&mut Flange)) {
    [&mut m.fixed_flange, &mut m.loose_flange].into_iter().for_each(change);
}

/// The sound mounting with both flanges of a kind.
fn of_kind(kind: FlangeKind, change: impl Fn(&mut Mounting)) -> Row {
    row(kind.to_string(), |m| {
        both(m, |flange| flange.kind = kind.into());
        change(m);
    })
}

fn flange_relief() -> Table {
    const SHALLOW: &str = "a flange is recessed by {found}, {demanded} is the least";
    const FLAT: &str = "a flange has no recess";
    const UNDERCUT: &str =
        "an adaptor or sleeve flange is undercut by {found} at the hole, {demanded} is the least";
    const FORBIDDEN: &str = "a flange is recessed where this wheel must have a flat one";
    const RECESSED: &str = "the recess or undercut is {found}, {demanded} is the least";
    const RIGHT: &str = "the flange is flat, as this wheel must have it";
    const SMALL: &str = "wheels under 2 in may have flat flanges";
    const OTHER: &str = "not asked of this shape or fastening";
    let law = laws::FLANGE_RECESS;
    let flat_law = laws::FLANGE_THIRD;
    let small = |m: &mut Mounting, wheel: f64| {
        m.wheel.diameter = inches(wheel);
        m.wheel.hole = mm(10.0);
        both(m, |flange| flange.diameter = mm(20.0));
    };
    let flat = |m: &mut Mounting| {
        both(m, |flange| {
            flange.kind = FlangeKind::Unrelieved.into();
            flange.recess = mm(0.0);
        });
    };
    Table::of("flange-relief")
        // (c)(5)(i): 1/16 in = 1.5875 mm.
        .row(
            row("too shallow", |m| m.loose_flange.recess = mm(1.5874))
                .refuse(law, SHALLOW)
                .figures(1.5874, 1.5875, -0.0001),
        )
        .row(
            row("deep enough", |m| both(m, |f| f.recess = mm(1.5875)))
                .pass(law, RECESSED)
                .figures(1.5875, 1.5875, 0.0),
        )
        .row(row("flat", flat).refuse(law, FLAT))
        // (c)(5)(ii): 1/8 in = 3.175 mm.
        .row(
            of_kind(FlangeKind::Sleeve, |m| {
                both(m, |flange| flange.undercut = mm(3.174));
            })
            .refuse(law, UNDERCUT)
            .figures(3.174, 3.175, -0.001),
        )
        .row(
            of_kind(FlangeKind::Adaptor, |m| {
                both(m, |flange| flange.undercut = mm(3.175));
            })
            .pass(law, RECESSED),
        )
        .row(
            of_kind(FlangeKind::AdaptorHeavy, |m| {
                both(m, |flange| flange.undercut = Datum::Unknown);
            })
            .unknown("fixed flange undercut, loose flange undercut"),
        )
        // (c)(1)(iii): flat, not relieved.
        .row(
            row("type 27A, recessed", |m| m.wheel.shape = Shape::Type27A.into())
                .refuse(flat_law, FORBIDDEN),
        )
        .row(
            row("type 27A, flat", |m| {
                flat(m);
                m.wheel.shape = Shape::Type27A.into();
            })
            .pass(flat_law, RIGHT),
        )
        .row(
            row("a threaded wheel, recessed", |m| {
                m.wheel.fastening = Fastening::ThreadedInsert.into();
            })
            .refuse(flat_law, FORBIDDEN),
        )
        .row(
            row("a wheel with a stud, flat", |m| {
                flat(m);
                m.wheel.fastening = Fastening::Stud.into();
            })
            .pass(flat_law, RIGHT),
        )
        // Table O-6, note.
        .row(
            row("a wheel under 2 in", |m| {
                flat(m);
                small(m, 1.999);
            })
            .aside(flanges::O6, SMALL),
        )
        .row(
            row("a wheel of 2 in", |m| {
                flat(m);
                small(m, 2.0);
            })
            .refuse(law, FLAT),
        )
        .row(row("type 27", |m| m.wheel.shape = Shape::Type27.into()).aside(law, OTHER))
        .row(
            row("the kind is blank", |m| m.fixed_flange.kind = Datum::Unknown)
                .unknown("fixed flange kind"),
        )
        .blank("wheel diameter", |m| m.wheel.diameter = Datum::Unknown)
        .blank("fixed flange recess", |m| m.fixed_flange.recess = Datum::Unknown)
        .blank("loose flange recess", |m| m.loose_flange.recess = Datum::Unknown)
        .unasked("loose flange recess", |m| m.loose_flange.recess = Datum::NotAsked)
}

/// Table O-6 around the sound 200 mm wheel: 7 in asks for lands of 1/4 to 1/2 in, and so does 8 in.
fn land_width() -> Table {
    const NARROW: &str = "a land is {found} wide, {demanded} is the least";
    const WIDE: &str = "a land is {found} wide, {demanded} is the most";
    const WIDE_US: &str =
        "a land is {found} wide, {demanded} is the most under federal law of the United States";
    const RIGHT: &str = "the lands are up to {found} wide, {demanded} at most";
    const NONE: &str = "no table gives this flange a width";
    let law = flanges::O6;
    let wide = |m: &mut Mounting| m.loose_flange.land = mm(12.701);
    Table::of("land-width")
        .row(
            row("narrow", |m| m.fixed_flange.land = mm(6.349))
                .refuse(law, NARROW)
                .figures(6.349, 6.35, -0.001),
        )
        .row(row("wide", wide).refuse(law, WIDE).figures(12.701, 12.7, -0.001))
        .row(row("wide, elsewhere", wide).under(&[Law::Jp]).caution(law, WIDE_US))
        .row(
            row("as wide as may be", |m| both(m, |f| f.land = mm(12.7)))
                .pass(law, RIGHT)
                .figures(12.7, 12.7, 0.0),
        )
        // Between 8 in (1/2) and 10 in (5/8) the wider row is what nobody is refused by wrongly.
        .row(
            row("between two rows", |m| {
                m.wheel.diameter = mm(230.0);
                both(m, |flange| flange.land = mm(15.875));
            })
            .pass(law, RIGHT)
            .figures(15.875, 15.875, 0.0),
        )
        .row(
            of_kind(FlangeKind::Sleeve, |m| {
                m.wheel.diameter = inches(20.0);
                m.wheel.hole = inches(8.0);
            })
            .aside(law, NONE),
        )
        .row(row("type 28", |m| m.wheel.shape = Shape::Type28.into()).aside(law, NONE))
        .blank("wheel shape", |m| m.wheel.shape = Datum::Unknown)
        .blank("wheel diameter", |m| m.wheel.diameter = Datum::Unknown)
        .blank("fixed flange kind", |m| m.fixed_flange.kind = Datum::Unknown)
        .blank("loose flange kind", |m| m.loose_flange.kind = Datum::Unknown)
        .blank("fixed flange land", |m| m.fixed_flange.land = Datum::Unknown)
        .blank("loose flange land", |m| m.loose_flange.land = Datum::Unknown)
        .unasked("loose flange land", |m| m.loose_flange.land = Datum::NotAsked)
}

/// Table O-6, 7 in: 3/8 in (9.525 mm) at the hole, 3/16 in (4.7625 mm) at the edge.
fn flange_too_thin() -> Table {
    const HOLE: &str = "a flange is {found} thick at the hole, {demanded} is the least";
    const EDGE: &str =
        "a flange is {found} thick at the edge of the recess, {demanded} is the least";
    const ADAPTOR_HOLE: &str =
        "an adaptor flange is {found} thick at the hole, {demanded} is the least";
    const ADAPTOR_EDGE: &str =
        "an adaptor flange is {found} thick at the edge of the undercut, {demanded} is the least";
    const THICK: &str =
        "the thinner flange is {found} thick where it matters most, {demanded} is the least";
    const NONE: &str = "no table gives this flange a thickness";
    let law = laws::FLANGE_TABLES;
    // Table O-5, 14 in wheel, 5 in hole: 7/8 in (22.225 mm) and 3/8 in (9.525 mm).
    let adaptor = |hole: f64, edge: f64| {
        of_kind(FlangeKind::Adaptor, move |m| {
            m.wheel.diameter = inches(14.0);
            m.wheel.hole = inches(5.0);
            both(m, |flange| {
                flange.thickness_at_hole = mm(hole);
                flange.thickness_at_edge = mm(edge);
            });
        })
    };
    Table::of("flange-too-thin")
        .row(
            row("thin at the hole", |m| m.loose_flange.thickness_at_hole = mm(9.524))
                .refuse(law, HOLE)
                .figures(9.524, 9.525, -0.001),
        )
        .row(
            row("thin at the edge", |m| m.fixed_flange.thickness_at_edge = mm(4.762))
                .refuse(law, EDGE)
                .figures(4.762, 4.7625, -0.0005),
        )
        .row(
            row("as thin as may be", |m| m.loose_flange.thickness_at_edge = mm(4.7625))
                .pass(law, THICK)
                .figures(4.7625, 4.7625, 0.0),
        )
        .row(adaptor(22.224, 10.0).caution(laws::ADAPTOR_TABLES, ADAPTOR_HOLE))
        .row(adaptor(22.225, 9.524).caution(laws::ADAPTOR_TABLES, ADAPTOR_EDGE))
        .row(adaptor(22.225, 9.525).pass(law, THICK))
        // Table O-4, 5 in: 1/4 in all over; a wheel with its own thread has one flange.
        .row(
            of_kind(FlangeKind::Unrelieved, |m| {
                m.wheel.fastening = Fastening::ThreadedInsert.into();
                m.wheel.diameter = inches(5.0);
                m.fixed_flange.thickness_at_hole = mm(6.349);
                m.fixed_flange.thickness_at_edge = Datum::NotAsked;
            })
            .refuse(law, HOLE)
            .figures(6.349, 6.35, -0.001),
        )
        .row(row("type 27", |m| m.wheel.shape = Shape::Type27.into()).aside(law, NONE))
        .blank("wheel shape", |m| m.wheel.shape = Datum::Unknown)
        .blank("wheel diameter", |m| m.wheel.diameter = Datum::Unknown)
        .blank("fixed flange kind", |m| m.fixed_flange.kind = Datum::Unknown)
        .blank("loose flange kind", |m| m.loose_flange.kind = Datum::Unknown)
        .blank("fixed flange thickness at hole", |m| {
            m.fixed_flange.thickness_at_hole = Datum::Unknown;
        })
        .blank("loose flange thickness at hole", |m| {
            m.loose_flange.thickness_at_hole = Datum::Unknown;
        })
        .blank("fixed flange thickness at edge", |m| {
            m.fixed_flange.thickness_at_edge = Datum::Unknown;
        })
        .blank("loose flange thickness at edge", |m| {
            m.loose_flange.thickness_at_edge = Datum::Unknown;
        })
        .unasked("fixed flange thickness at edge", |m| {
            m.fixed_flange.thickness_at_edge = Datum::NotAsked;
        })
}

fn flange_material() -> Table {
    const BY_LAW: &str = "a flange is neither steel nor cast iron, and nobody has shown that it is as strong and stiff";
    const SOFT: &str = "a flange is neither steel nor cast iron; Michigan and Washington demand equal strength and stiffness";
    const STIFF: &str =
        "the flanges are of steel, cast iron or something shown to be as strong and stiff";
    const OTHER: &str = "the wheel is not held by flanges";
    let law = laws::FLANGE_MATERIAL_STATES;
    let soft = |m: &mut Mounting| m.loose_flange.material = Material::Aluminium.into();
    Table::of("flange-material")
        .row(row("aluminium", soft).caution(law, SOFT))
        .row(row("aluminium in Michigan", soft).under(&[Law::UsMi]).refuse(law, BY_LAW))
        .row(row("aluminium in Washington", soft).under(&[Law::UsWa]).refuse(law, BY_LAW))
        .row(
            row("cast iron", |m| m.fixed_flange.material = Material::CastIron.into())
                .pass(law, STIFF),
        )
        .row(row("in a chuck", |m| m.wheel.fastening = Fastening::Chuck.into()).aside(law, OTHER))
        .row(
            row("aluminium that was shown to be stiff, in Michigan", |m| {
                soft(m);
                m.loose_flange.shown_stiff = YesNo::Yes.into();
            })
            .under(&[Law::UsMi])
            .pass(law, STIFF),
        )
        .row(
            row("whether it was shown is blank", |m| {
                soft(m);
                m.loose_flange.shown_stiff = Datum::Unknown;
            })
            .unknown("loose flange shown stiff"),
        )
        .blank("fixed flange material", |m| m.fixed_flange.material = Datum::Unknown)
        .blank("loose flange material", |m| m.loose_flange.material = Datum::Unknown)
        .unasked("loose flange material", |m| m.loose_flange.material = Datum::NotAsked)
}

#[test]
fn flanges_are_recessed_or_flat_as_their_wheel_asks() {
    flange_relief().holds();
}

#[test]
fn lands_are_as_wide_as_the_table_allows() {
    land_width().holds();
}

#[test]
fn plates_are_as_thick_as_the_table_asks() {
    flange_too_thin().holds();
}

#[test]
fn flanges_are_of_steel_or_cast_iron() {
    flange_material().holds();
}

#[test]
fn a_flange_that_breaks_a_rule_is_refused_though_the_other_is_blank() {
    let mut mounting = sound();
    mounting.fixed_flange.recess = mm(0.5);
    mounting.loose_flange.recess = Datum::Unknown;
    assert_eq!(finding("flange-relief", &mounting, &terms()).outcome, Outcome::Refuse);
}
