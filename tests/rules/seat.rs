//! The taper seat: what is left when the nut has drawn the hub up.

use hubwright::gauge::GEOMETRY;
use hubwright::mounting::{Datum, Outcome};

use crate::{Table, mm, row};

pub fn tables() -> Vec<Table> {
    vec![seat_touches_shoulder()]
}

/// The sound hub stands off by 0.08 mm, is drawn up by 0.05 mm and has to keep 0.02 mm.
fn seat_touches_shoulder() -> Table {
    const TOUCHES: &str =
        "the hub stands off its shoulder by {found} by hand, the nut draws it up by {demanded}";
    const MEETS: &str = "the hub stands off its shoulder by {found} by hand, and the nut draws it up by all of {demanded}";
    const CLOSE: &str =
        "drawn up, {found} is left between the hub and its shoulder, {demanded} was asked for";
    let by = GEOMETRY;
    Table::of("seat-touches-shoulder")
        .row(
            row("a little less than it is drawn up", |m| m.hub.stand_off = mm(0.049_999))
                .refuse(by, TOUCHES)
                .figures(0.049_999, 0.05, -0.000_001),
        )
        .row(
            row("as much as it is drawn up", |m| m.hub.stand_off = mm(0.05))
                .caution(by, MEETS)
                .figures(0.05, 0.05, 0.0),
        )
        .row(
            row("less left than is asked for", |m| m.hub.stand_off = mm(0.069_999))
                .caution(by, CLOSE)
                .figures(0.019_999, 0.02, -0.000_001),
        )
        .row(
            row("as much left as is asked for", |m| m.hub.stand_off = mm(0.07))
                .pass(by, TOUCHES)
                .figures(0.07, 0.05, 0.02),
        )
        .row(row("with room", |_| {}).pass(by, TOUCHES).figures(0.08, 0.05, 0.03))
        .row(
            row("no least gap asked for", |m| {
                m.hub.stand_off = mm(0.051);
                m.hub.least_gap = Datum::NotAsked;
            })
            .pass(by, TOUCHES)
            .figures(0.051, 0.05, 0.001),
        )
        .row(
            row("a breach stands where the least gap is blank", |m| {
                m.hub.stand_off = mm(0.0);
                m.hub.least_gap = Datum::Unknown;
            })
            .refuse(by, TOUCHES),
        )
        .row(
            row("a hub that is not drawn up", |m| {
                m.hub.stand_off = mm(0.01);
                m.hub.draw_up = mm(0.0);
                m.hub.least_gap = Datum::NotAsked;
            })
            .pass(by, TOUCHES),
        )
        .blank("hub stand-off", |m| m.hub.stand_off = Datum::Unknown)
        .blank("hub draw-up", |m| m.hub.draw_up = Datum::Unknown)
        .blank("hub least gap", |m| m.hub.least_gap = Datum::Unknown)
        .unasked("hub stand-off", |m| m.hub.stand_off = Datum::NotAsked)
        .unasked("hub draw-up", |m| m.hub.draw_up = Datum::NotAsked)
        .row(
            row("neither asked for", |m| {
                m.hub.stand_off = Datum::NotAsked;
                m.hub.draw_up = Datum::NotAsked;
            })
            .missing(Outcome::NotChecked, "nobody asks for: hub stand-off, hub draw-up".into()),
        )
}
