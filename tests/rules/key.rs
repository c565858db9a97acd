//! Keys: statics, and the classes of DIN 6885-1 by the deviations of ISO 286-1.

use hubwright::joint::KeyFit;
use hubwright::joint::key_strength::KEY_STATICS;
use hubwright::mounting::Datum;
use hubwright::tables::keys::{DIN_6885_2, FITS_RECALLED};

use crate::{Table, mm, mpa, row};

pub fn tables() -> Vec<Table> {
    vec![key_overloaded(), key_fit()]
}

/// The sound key: 13.2 N m on 22 mm are 1200 N. Sheared over 6 mm · 20 mm they make 10 MPa,
/// pressed over 3 mm · 20 mm they make 20 MPa; 60 and 90 MPa are allowed.
fn key_overloaded() -> Table {
    const SHEARS: &str = "the torque shears the key with {found}, {demanded} is allowed";
    const CRUSHES: &str = "the torque presses the key's side with {found}, {demanded} is allowed";
    const MAY_CRUSH: &str = "in a hub's keyway as shallow as DIN 6885-2's the torque presses the key's side with {found}, {demanded} is allowed";
    const HOLDS_SHEAR: &str =
        "the torque shears the key with {found}, {demanded} is allowed; its side has more room";
    const HOLDS_BEARING: &str = "the torque presses the key's side with {found}, {demanded} is allowed; in shear it has more room";
    let by = KEY_STATICS;
    Table::of("key-overloaded")
        .row(
            row("sheared a little more than allowed", |m| m.key.allowed_shear = mpa(9.999))
                .refuse(by, SHEARS)
                .figures(10.0, 9.999, -0.001),
        )
        .row(
            row("sheared as much as allowed", |m| m.key.allowed_shear = mpa(10.0))
                .pass(by, HOLDS_SHEAR)
                .figures(10.0, 10.0, 0.0),
        )
        .row(
            row("pressed a little more than allowed", |m| m.key.allowed_bearing = mpa(19.999))
                .refuse(by, CRUSHES)
                .figures(20.0, 19.999, -0.001),
        )
        .row(
            row("pressed as much as allowed", |m| {
                m.key.bearing_height = mm(3.0);
                m.key.allowed_bearing = mpa(20.0);
            })
            .pass(by, HOLDS_BEARING)
            .figures(20.0, 20.0, 0.0),
        )
        .row(
            // The 8 x 7 key of DIN 6885-2 stands 1.6 mm in the hub, 0.2286 of its height; 0.22 · 6 mm · 20 mm bear 1200 N.
            row("in a keyway that may be shallow", |m| m.key.allowed_bearing = mpa(45.0))
                .caution(DIN_6885_2, MAY_CRUSH)
                .figures(1200.0 / 26.4, 45.0, 45.0 - 1200.0 / 26.4),
        )
        .row(
            row("with room in the shallowest keyway", |m| m.key.allowed_bearing = mpa(45.5))
                .pass(by, HOLDS_BEARING)
                .figures(20.0, 45.5, 25.5),
        )
        .row(row("with room", |_| {}).pass(by, HOLDS_SHEAR).figures(10.0, 60.0, 50.0))
        .row(
            // 1200 N on 2 mm · 20 mm.
            row("a shallow keyway", |m| {
                m.key.bearing_height = mm(2.0);
                m.key.allowed_bearing = mpa(29.0);
            })
            .refuse(by, CRUSHES)
            .figures(30.0, 29.0, -1.0),
        )
        .row(
            row("no more than half of the height ever bears", |m| {
                m.key.bearing_height = mm(5.0);
                m.key.allowed_bearing = mpa(19.0);
            })
            .refuse(by, CRUSHES)
            .figures(20.0, 19.0, -1.0),
        )
        .row(
            row("a breach stands where another stress is blank", |m| {
                m.key.allowed_shear = mpa(9.0);
                m.key.allowed_bearing = Datum::Unknown;
                m.key.height = Datum::Unknown;
            })
            .refuse(by, SHEARS),
        )
        .row(
            row("a breach stands where the height is blank", |m| {
                m.key.height = Datum::Unknown;
                m.key.bearing_height = mm(1.0);
                m.key.allowed_bearing = mpa(59.0);
            })
            .refuse(by, CRUSHES)
            .figures(60.0, 59.0, -1.0),
        )
        .row(
            row("the bearing height is blank", |m| m.key.bearing_height = Datum::Unknown)
                .unknown("key bearing height"),
        )
        .row(
            row("shear does not speak for bearing", |m| m.key.allowed_bearing = Datum::NotAsked)
                .not_checked("key allowed bearing stress"),
        )
        .blank("key torque", |m| m.key.torque = Datum::Unknown)
        .blank("key shaft diameter", |m| m.key.shaft_diameter = Datum::Unknown)
        .blank("key width", |m| m.key.width = Datum::Unknown)
        .blank("key height", |m| m.key.height = Datum::Unknown)
        .blank("key length", |m| m.key.length = Datum::Unknown)
        .blank("key allowed shear stress", |m| m.key.allowed_shear = Datum::Unknown)
        .blank("key allowed bearing stress", |m| m.key.allowed_bearing = Datum::Unknown)
        .unasked("key torque", |m| m.key.torque = Datum::NotAsked)
        .unasked("key height", |m| m.key.height = Datum::NotAsked)
}

/// 6 mm: IT9 is 30 µm, IT10 48 µm; P9 −12 −42, N9 0 −30, JS9 ±15, H9 +30 0, D10 +78 +30, h9 0 −30.
fn key_fit() -> Table {
    const KEY_MOST: &str = "the key is {found} wide, {demanded} is the most";
    const KEY_LEAST: &str = "the key is {found} wide, {demanded} is the least";
    const SHAFT_MOST: &str = "the keyway in the shaft is {found} wide, {demanded} is the most";
    const SHAFT_LEAST: &str = "the keyway in the shaft is {found} wide, {demanded} is the least";
    const HUB_MOST: &str = "the keyway in the hub is {found} wide, {demanded} is the most";
    const HUB_LEAST: &str = "the keyway in the hub is {found} wide, {demanded} is the least";
    const WITHIN: &str = "key and keyways are within the limits of their fit";
    let by = FITS_RECALLED;
    let widths = |fit: KeyFit, shaft: f64, hub: f64| {
        move |m: &mut hubwright::mounting::Mounting| {
            m.key.fit = fit.into();
            m.key.shaft_keyway = mm(shaft);
            m.key.hub_keyway = mm(hub);
        }
    };
    Table::of("key-fit")
        .row(
            row("a wide key", |m| m.key.width = mm(6.001))
                .caution(by, KEY_MOST)
                .figures(6.001, 6.0, -0.001),
        )
        .row(
            row("a narrow key", |m| m.key.width = mm(5.969))
                .caution(by, KEY_LEAST)
                .figures(5.969, 5.97, -0.001),
        )
        .row(row("a key at its narrowest", |m| m.key.width = mm(5.97)).pass(by, WITHIN))
        .row(
            row("a wide keyway in the shaft", |m| m.key.shaft_keyway = mm(6.0001))
                .caution(by, SHAFT_MOST)
                .figures(6.0001, 6.0, -0.0001),
        )
        .row(
            row("a narrow keyway in the shaft", |m| m.key.shaft_keyway = mm(5.96))
                .caution(by, SHAFT_LEAST)
                .figures(5.96, 5.97, -0.01),
        )
        .row(
            row("a wide keyway in the hub", |m| m.key.hub_keyway = mm(6.016))
                .caution(by, HUB_MOST)
                .figures(6.016, 6.015, -0.001),
        )
        .row(
            row("a narrow keyway in the hub", |m| m.key.hub_keyway = mm(5.984))
                .caution(by, HUB_LEAST)
                .figures(5.984, 5.985, -0.001),
        )
        .row(row("normal, at both ends", widths(KeyFit::Normal, 5.97, 6.015)).pass(by, WITHIN))
        .row(row("free, at both ends", widths(KeyFit::Free, 6.03, 6.078)).pass(by, WITHIN))
        .row(row("free, at the other ends", widths(KeyFit::Free, 6.0, 6.03)).pass(by, WITHIN))
        .row(row("close, at both ends", widths(KeyFit::Close, 5.988, 5.958)).pass(by, WITHIN))
        .row(
            row("a normal keyway is too wide for a close key", widths(KeyFit::Close, 5.97, 6.0))
                .caution(by, HUB_MOST)
                .figures(6.0, 5.988, -0.012),
        )
        .row(
            row("of two that are wrong, the one with less room", |m| {
                m.key.width = mm(6.001);
                m.key.hub_keyway = mm(6.1);
            })
            .caution(by, HUB_MOST),
        )
        .row(
            row("an inch key", |m| m.key.nominal_width = mm(6.35))
                .aside(by, "DIN 6885-1 lists no key of this nominal width"),
        )
        .row(
            row("what can't be told is not clear", |m| {
                m.key.width = mm(6.001);
                m.key.hub_keyway = Datum::Unknown;
            })
            .unknown("key hub keyway"),
        )
        .blank("key fit", |m| m.key.fit = Datum::Unknown)
        .blank("key nominal width", |m| m.key.nominal_width = Datum::Unknown)
        .blank("key width", |m| m.key.width = Datum::Unknown)
        .blank("key shaft keyway", |m| m.key.shaft_keyway = Datum::Unknown)
        .blank("key hub keyway", |m| m.key.hub_keyway = Datum::Unknown)
        .unasked("key fit", |m| m.key.fit = Datum::NotAsked)
        .unasked("key hub keyway", |m| m.key.hub_keyway = Datum::NotAsked)
}

#[test]
fn the_key_carries_its_torque() {
    key_overloaded().holds();
}

#[test]
fn key_and_keyways_have_the_widths_of_their_fit() {
    key_fit().holds();
}
