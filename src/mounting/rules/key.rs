//! The key between shaft and hub: what it carries, and how it sits.

use super::rule;
use crate::joint::KeyFit;
use crate::joint::key::DEVIATIONS;
use crate::joint::key_strength::{KEY_STATICS, bearing, shear};
use crate::mounting::facts::{Fact, is_blank};
use crate::tables::keys::{DIN_6885_2, FITS_RECALLED};
use crate::units::Length;

/// Least share of a key's height that stands in the hub by DIN 6885-2: `(h − t1) / h` of the 8 × 7 key, rounded down.
const SHALLOWEST: f64 = 0.22;

/// A stress in Pa as the whole mPa that facts have.
#[inline(always)]
fn whole(pascals: f64) -> f64 {
    (pascals * 1e3).round_ties_even()
}

rule! {
    /// The torque acts on the key at the surface of the shaft. It shears the key
    /// through its width and presses its side against both keyways, over the height
    /// given. Where none is given, more than half of the key's can't bear, and as little as in the shallowest
    /// keyways of DIN 6885-2 may. Both stresses are compared with what the user
    /// allows. Shock, fatigue and uneven load are in the allowed stresses or
    /// nowhere; friction of a pressed hub is not counted.
    KEY_OVERLOADED = "key-overloaded", essential false;
    asks "is the key sheared or pressed beyond the stresses allowed?";
    needs key.torque, key.shaft_diameter, key.width, key.height, key.length, key.allowed_shear, key.allowed_bearing;
    uses key.bearing_height;
    cases {
        Shears: Refuse, Stress Most, KEY_STATICS,
            "the torque shears the key with {found}, {demanded} is allowed";
        Crushes: Refuse, Stress Most, KEY_STATICS,
            "the torque presses the key's side with {found}, {demanded} is allowed";
        MayCrush: Caution, Stress Most, DIN_6885_2,
            "in a hub's keyway as shallow as DIN 6885-2's the torque presses the key's side with {found}, {demanded} is allowed";
        HoldsShear: Pass, Stress Most, KEY_STATICS,
            "the torque shears the key with {found}, {demanded} is allowed; its side has more room";
        HoldsBearing: Pass, Stress Most, KEY_STATICS,
            "the torque presses the key's side with {found}, {demanded} is allowed; in shear it has more room";
    }
    advice "Take a longer or larger key, two keys, or a stronger steel, or limit the torque; a longer key only helps inside the hub.";
    adds |f, _t| (!f.key.bearing_height.given()).then(|| {
        "the height over which the key's side bears was not given: half of the key's at most, 0.22 of it at least, was reckoned with".to_owned()
    });
    judge |f, _t| {
        let key = &f.key;
        let (torque, shaft, length) = (key.torque.0 / 1e6, key.shaft_diameter.0 / 1e9, key.length.0 / 1e9);
        let (may_shear, may_press) = (key.allowed_shear.0, key.allowed_bearing.0);
        // Half of the height is the most that both keyways can bear on: no slip makes it more.
        let bears = (key.height.0 / 2.0).min(key.bearing_height.0);
        let sheared = whole(shear(torque, shaft, key.width.0 / 1e9, length));
        let pressed = whole(bearing(torque, shaft, bears / 1e9, length));
        let least = if key.bearing_height.given() { bears } else { key.height.0 * SHALLOWEST };
        let shallow = whole(bearing(torque, shaft, least / 1e9, length));
        let by_shear = if sheared > may_shear {
            It::Shears.with(sheared, may_shear)
        } else if let Some(missing) = missing([key.torque.0, key.shaft_diameter.0, key.width.0, key.length.0, may_shear]) {
            missing
        } else {
            It::HoldsShear.with(sheared, may_shear)
        };
        let by_bearing = if pressed > may_press {
            It::Crushes.with(pressed, may_press)
        } else if is_blank(key.bearing_height.0) {
            CANT_TELL
        } else if let Some(missing) = missing([key.torque.0, key.shaft_diameter.0, key.height.0, key.length.0, may_press]) {
            missing
        } else if shallow > may_press {
            It::MayCrush.with(shallow, may_press)
        } else {
            It::HoldsBearing.with(pressed, may_press)
        };
        both(by_shear, by_bearing)
    }
}

rule! {
    /// A loose key rocks and hammers its keyway wide; one that is forced in bends a
    /// thin hub and shifts it. The widths of key and keyways are compared with the
    /// limits of the fit asked for: h9 for the key, and for the keyways in shaft and
    /// hub H9 and D10 (free), N9 and JS9 (normal), P9 and P9 (close). Which classes make
    /// which fit is from memory, so that this only cautions. Only widths that
    /// DIN 6885-1 lists are judged.
    KEY_FIT = "key-fit", essential false;
    asks "are the widths of key and keyways outside the limits of the fit asked for?";
    needs key.fit, key.nominal_width, key.width, key.shaft_keyway, key.hub_keyway;
    cases {
        KeyWide: Caution, Size Most, FITS_RECALLED, "the key is {found} wide, {demanded} is the most";
        KeyNarrow: Caution, Size Least, FITS_RECALLED, "the key is {found} wide, {demanded} is the least";
        ShaftWide: Caution, Size Most, FITS_RECALLED,
            "the keyway in the shaft is {found} wide, {demanded} is the most";
        ShaftNarrow: Caution, Size Least, FITS_RECALLED,
            "the keyway in the shaft is {found} wide, {demanded} is the least";
        HubWide: Caution, Size Most, FITS_RECALLED, "the keyway in the hub is {found} wide, {demanded} is the most";
        HubNarrow: Caution, Size Least, FITS_RECALLED,
            "the keyway in the hub is {found} wide, {demanded} is the least";
        Within: Pass, Nothing Most, FITS_RECALLED, "key and keyways are within the limits of their fit";
        Unlisted: NotChecked, Nothing Most, FITS_RECALLED, "DIN 6885-1 lists no key of this nominal width";
    }
    advice "Fit a key to a wide keyway, or ease a wide key; never file a keyway out of square.";
    judge |f, _t| {
        let (key, nominal) = (&f.key, f.key.nominal_width.0);
        // Without these two nothing can be known to be wrong.
        if let Some(missing) = missing([key.fit.0, nominal]) {
            return missing;
        }
        let Some(row) = DEVIATIONS.iter().find(|row| row.nominal == nominal) else {
            return It::Unlisted.bare();
        };
        let [free, normal, close] = &row.keyways;
        let keyways = if key.fit.is(KeyFit::Free) {
            free
        } else if key.fit.is(KeyFit::Close) {
            close
        } else {
            normal
        };
        let one = |width: Fact<Length>, [lower, upper]: [f64; 2], wide: It, narrow: It| {
            let (least, most) = (nominal + lower, nominal + upper);
            if width.0 > most {
                wide.with(width.0, most)
            } else if width.0 < least {
                narrow.with(width.0, least)
            } else if let Some(missing) = missing([width.0]) {
                missing
            } else {
                It::Within.bare()
            }
        };
        let in_shaft = one(key.shaft_keyway, keyways[0], It::ShaftWide, It::ShaftNarrow);
        let in_hub = one(key.hub_keyway, keyways[1], It::HubWide, It::HubNarrow);
        both(one(key.width, row.key, It::KeyWide, It::KeyNarrow), both(in_shaft, in_hub))
    }
}
