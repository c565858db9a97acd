//! The wheel itself: hole, thickness, age, bushing.

use std::f64::consts::PI;

use super::rule;
use crate::mounting::facts::{Facts, is_blank};
use crate::mounting::marking::MarkingSays;
use crate::mounting::sort::FieldType;
use crate::mounting::words::YesNo;
use crate::solid::rings::hoop_at_bore;
use crate::tables::laws;
use crate::units::{Date, figure};
use crate::wheel::{Bond, MachineKind, Shape, hole};

/// (Bursting speed / the spindle's greatest speed)², rounded down in whole steps of a ratio.
///
/// NaN while anything is missing.
#[inline(always)]
fn burst_factor(f: &Facts) -> f64 {
    let hole = f.wheel.hole.greatest_with(f.wheel.largest_hole).0;
    let (a, b) = (hole / 2e9, f.wheel.diameter.0 / 2e9);
    let w = f.spindle.greatest_speed.0 / 1e6 * (PI / 30.0);
    let (nu, rho) = (f.wheel.poisson_ratio.0 / 1e9, f.wheel.density.0 / 1e3);
    let hoop = hoop_at_bore(a, b, nu, rho, w * w);
    (f.wheel.tensile_strength.0 / 1e3 / hoop * 1e9).floor()
}

rule! {
    /// What is written on a wheel comes before what a sheet says of it. Where the marking
    /// names another speed the lower of the two is taken, which is a caution; where it
    /// names another size (3 % of a diameter or hole, 10 % of a thickness), shape, abrasive
    /// or bond, nobody can tell from here whose mounting is judged.
    MARKING_DISAGREES = "marking-disagrees", essential false;
    asks "does the wheel's own marking say otherwise than the mounting does?";
    needs wheel.marking_says;
    cases {
        Speed: Caution, Nothing Most, laws::PRACTICE,
            "the marking on the wheel names another speed: the lower of the two is the limit";
        Size: Unknown, Nothing Most, laws::PRACTICE, "the marking on the wheel names another size";
        Form: Unknown, Nothing Most, laws::PRACTICE, "the marking on the wheel names another shape";
        Abrasive: Unknown, Nothing Most, laws::PRACTICE, "the marking on the wheel names another abrasive";
        Bond: Unknown, Nothing Most, laws::PRACTICE, "the marking on the wheel names another bond";
        Same: Pass, Nothing Most, laws::PRACTICE,
            "the marking on the wheel says the same, as far as it was read";
    }
    advice "Read the wheel again and put the row right: the wheel's own marking counts.";
    judge |f, _t| {
        let says = f.wheel.marking_says;
        if says.is(MarkingSays::OtherSpeed) {
            It::Speed.bare()
        } else if says.is(MarkingSays::OtherSize) {
            It::Size.bare()
        } else if says.is(MarkingSays::OtherShape) {
            It::Form.bare()
        } else if says.is(MarkingSays::OtherAbrasive) {
            It::Abrasive.bare()
        } else if says.is(MarkingSays::OtherBond) {
            It::Bond.bare()
        } else if let Some(missing) = missing([says.0]) {
            missing
        } else {
            It::Same.bare()
        }
    }
}

rule! {
    /// A wheel is torn by its own rotation, first at the hole. With its tensile
    /// strength given, the bursting speed follows from the theory of rotating
    /// discs for flat wheels of one material (type 1): the square of bursting speed over the
    /// spindle's greatest speed is strength over stress. It is compared with
    /// the factor asked for, which EN 12413 is recalled to define that way.
    /// A factor below one is refused whatever was asked for. Fabric,
    /// recesses, cracks and clamping are not in it, and it never raises the
    /// speed marked on the wheel.
    BURST_MARGIN = "burst-margin", essential false;
    asks "by the tensile strength given, does the wheel burst too near to the spindle's greatest speed?";
    needs wheel.tensile_strength, wheel.burst_factor, wheel.density, wheel.poisson_ratio, wheel.shape,
        wheel.diameter, wheel.hole, spindle.greatest_speed;
    uses wheel.largest_hole;
    cases {
        Bursts: Refuse, Factor Least, laws::BURSTING,
            "by the strength given the wheel bursts below the spindle's greatest speed: strength over stress is {found}";
        Near: Refuse, Factor Least, laws::BURSTING,
            "strength over stress is {found} at the spindle's greatest speed, {demanded} was asked for";
        Far: Pass, Factor Least, laws::BURSTING,
            "strength over stress is {found} at the spindle's greatest speed, {demanded} was asked for; the marked speed stays the limit";
        NotFlat: NotChecked, Nothing Least, laws::BURSTING,
            "the theory is for flat wheels (type 1)";
    }
    advice "Never run it. Slow the spindle so that it can't go faster, or fit a stronger wheel; check the strength with its maker.";
    adds |f, _t| {
        let burst = f.spindle.greatest_speed.0 / 1e6 * (burst_factor(f) / 1e9).sqrt();
        (burst > 0.0).then(|| format!("computed to burst at {} rpm", figure(burst, 0)))
    };
    judge |f, _t| {
        let (shape, asked) = (f.wheel.shape, f.wheel.burst_factor.0);
        let flat = shape.is(Shape::Type1) | shape.is(Shape::Type1CuttingOff);
        if shape.given() & !flat {
            return It::NotFlat.bare();
        }
        let found = burst_factor(f);
        // A breach of what is known stands, whatever factor was asked for.
        if flat & (found < 1e9) {
            return It::Bursts.with(found, 1e9);
        }
        if flat & (found < asked) {
            return It::Near.with(found, asked);
        }
        let hole = f.wheel.hole.greatest_with(f.wheel.largest_hole).0;
        let (strength, nu) = (f.wheel.tensile_strength.0, f.wheel.poisson_ratio.0);
        let (d, n, rho) = (f.wheel.diameter.0, f.spindle.greatest_speed.0, f.wheel.density.0);
        if let Some(missing) = missing([strength, asked, rho, nu, shape.0, d, hole, n]) {
            return missing;
        }
        It::Far.with(found, asked)
    }
}

rule! {
    /// A large hole leaves a thin ring to carry the wheel's own weight in
    /// turning. Cutting-off wheels may have a hole of a quarter of their
    /// diameter. For straight wheels (type 1) the law says "should": two
    /// thirds on surface, cylindrical and centreless grinders, half on others.
    HOLE_LARGE_FOR_WHEEL = "hole-large-for-wheel", essential false;
    asks "is the hole large for the wheel's diameter?";
    needs wheel.shape, wheel.hole, wheel.diameter;
    uses machine.kind;
    cases {
        CuttingOff: Refuse, Size Most, laws::CUTTING_OFF_WHEELS,
            "the hole of a cutting-off wheel is {found}, a quarter of its diameter {demanded}";
        Straight: Caution, Size Most, laws::WHEEL_SHAPES,
            "the hole is {found}; on this machine it should be {demanded} at most";
        Small: Pass, Size Most, laws::WHEEL_SHAPES,
            "the hole is {found}, {demanded} at most";
        NoShare: NotChecked, Nothing Most, laws::WHEEL_SHAPES,
            "the law gives no greatest hole for this shape";
    }
    advice "Ask the wheel's maker whether the wheel is made for this; fit one with a smaller hole.";
    judge |f, _t| {
        let (hole, d, kind) = (f.wheel.hole.0, f.wheel.diameter.0, f.machine.kind);
        let shape = f.wheel.shape;
        let (cuts_off, straight) = (shape.is_one(Shape::cuts_off), shape.is(Shape::Type1));
        if shape.given() & !(cuts_off | straight) {
            return It::NoShare.bare();
        }
        if let Some(missing) = missing([f.wheel.shape.0, hole, d]) {
            return missing;
        }
        // Whole numbers compare exactly; the rounded share is for reading.
        let share = |shape, kind| hole::share(shape, kind).unwrap_or((0.0, 1.0));
        let precision = kind.is_one(|kind| share(Shape::Type1, Some(kind)) == (2.0, 3.0));
        let (top, bottom) = if cuts_off {
            share(Shape::Type1CuttingOff, None)
        } else if precision {
            share(Shape::Type1, Some(MachineKind::Surface))
        } else {
            share(Shape::Type1, None)
        };
        let most = (d * top / bottom).floor();
        if hole * bottom <= d * top {
            return It::Small.with(hole, most);
        }
        if cuts_off {
            return It::CuttingOff.with(hole, most);
        }
        // Two thirds is too much on any machine.
        if kind.blank() & (hole * 3.0 <= d * 2.0) {
            CANT_TELL
        } else {
            It::Straight.with(hole, most)
        }
    }
}

/// Greatest thickness of a cutting-off wheel, in nm.
fn greatest_cutting_off_thickness(diameter: f64) -> f64 {
    let inches = if diameter <= 6.0 * 25.4e6 {
        3.0 / 16.0
    } else if diameter <= 12.0 * 25.4e6 {
        1.0 / 4.0
    } else if diameter <= 23.0 * 25.4e6 {
        3.0 / 8.0
    } else {
        1.0 / 2.0
    };
    inches * 25.4e6
}

rule! {
    /// The quarter that cutting-off wheels are allowed for their flanges is
    /// meant for thin wheels: 3/16 in up to 6 in diameter, 1/4 in up to 12,
    /// 3/8 in up to 23, 1/2 in above. A thicker one is no cutting-off wheel.
    CUTTING_OFF_TOO_THICK = "cutting-off-too-thick", essential false;
    asks "is a cutting-off wheel thicker than its diameter allows?";
    needs wheel.shape, wheel.thickness, wheel.diameter;
    cases {
        Thick: Caution, Size Most, laws::CUTTING_OFF_WHEELS,
            "it is {found} thick; a cutting-off wheel of its diameter is {demanded} at most";
        Thin: Pass, Size Most, laws::CUTTING_OFF_WHEELS,
            "it is {found} thick, {demanded} at most";
        Other: NotChecked, Nothing Most, laws::CUTTING_OFF_WHEELS,
            "it is no cutting-off wheel";
    }
    advice "Mount it as a type 1 wheel, between flanges of a third of its diameter.";
    judge |f, _t| {
        let (thickness, d) = (f.wheel.thickness.0, f.wheel.diameter.0);
        if f.wheel.shape.is_one(|shape| !shape.cuts_off()) {
            return It::Other.bare();
        }
        if let Some(missing) = missing([f.wheel.shape.0, thickness, d]) {
            return missing;
        }
        let most = greatest_cutting_off_thickness(d);
        if thickness > most { It::Thick.with(thickness, most) } else { It::Thin.with(thickness, most) }
    }
}

rule! {
    /// Organic bonds age. A wheel past the use-before date on it is not
    /// started; a hand-held resin disc that carries none is given three years
    /// from its manufacture. Both figures are recalled, so this cautions.
    WHEEL_TOO_OLD = "wheel-too-old", essential false;
    asks "is today past the use-before date, or a hand-held resin disc over three years old?";
    needs wheel.use_before;
    uses wheel.made, wheel.bond, machine.kind;
    cases {
        Past: Caution, Day Most, laws::USE_BEFORE,
            "today is {found}, it was to be used before {demanded}";
        Old: Caution, Day Most, laws::USE_BEFORE,
            "today is {found}; a hand-held resin disc of its date is given until {demanded}";
        Fresh: Pass, Day Most, laws::USE_BEFORE,
            "today is {found}, it may be used until {demanded}";
        NoToday: NotChecked, Nothing Most, laws::USE_BEFORE,
            "today's date was not given";
        NoLimit: NotChecked, Nothing Most, laws::USE_BEFORE,
            "it carries no use-before date, and is no hand-held resin disc";
    }
    advice "Don't start it; ask the maker, or scrap it.";
    judge |f, t| {
        let (limit, made) = (f.wheel.use_before.0, f.wheel.made.0);
        if is_blank(limit) {
            return CANT_TELL;
        }
        let Some(today) = t.today.map(FieldType::to_fact) else { return It::NoToday.bare() };
        if !limit.is_nan() {
            return if today > limit { It::Past.with(today, limit) } else { It::Fresh.with(today, limit) };
        }
        let (kind, bond) = (f.machine.kind, f.wheel.bond);
        let known_other = kind.is_one(|kind| kind != MachineKind::Portable)
            | bond.is_one(|bond: Bond| !bond.resin());
        if known_other {
            return It::NoLimit.bare();
        }
        if let Some(missing) = missing([made, kind.0, bond.0]) {
            return missing;
        }
        let limit = Date::from_days(made as i64).years_later(3).to_fact();
        if today > limit { It::Old.with(today, limit) } else { It::Fresh.with(today, limit) }
    }
}

rule! {
    /// A reducing bushing must not be wider than the wheel and must not touch
    /// the flanges, or they clamp the bushing instead of the wheel. One bushing
    /// in another, and one shorter than half of the wheel's thickness, guide
    /// the wheel badly.
    BUSHING = "bushing", essential false;
    asks "is a reducing bushing too wide, touching a flange, nested, or too short?";
    needs wheel.bushing_width, wheel.bushing_touches_flange, wheel.bushing_nested;
    uses wheel.thickness;
    cases {
        Wide: Refuse, Size Most, laws::BUSHINGS,
            "the bushing is {found} wide, the wheel {demanded}";
        Touches: Refuse, Nothing Most, laws::BUSHINGS,
            "the bushing touches a flange";
        Nested: Caution, Nothing Most, laws::PRACTICE,
            "one bushing sits in another";
        Short: Caution, Size Least, laws::PRACTICE,
            "the bushing is {found} wide, less than half of the wheel's thickness, {demanded}";
        Sound: Pass, Size Most, laws::BUSHINGS,
            "the bushing is {found} wide, the wheel {demanded}";
    }
    advice "Fit one bushing, narrower than the wheel and at least half as wide, or a wheel with the right hole.";
    judge |f, _t| {
        let (width, thickness) = (f.wheel.bushing_width.0, f.wheel.thickness.0);
        let (touches, nested) = (f.wheel.bushing_touches_flange, f.wheel.bushing_nested);
        if width > thickness {
            return It::Wide.with(width, thickness);
        }
        if touches.is(YesNo::Yes) {
            return It::Touches.bare();
        }
        // What could still be a refusal is no mere caution.
        let hidden = is_blank(width) | touches.blank() | (!width.is_nan() & is_blank(thickness));
        if hidden {
            return CANT_TELL;
        }
        if nested.is(YesNo::Yes) {
            return It::Nested.bare();
        }
        if let Some(missing) = missing([width, touches.0, nested.0]) {
            return missing;
        }
        if let Some(missing) = missing([thickness]) {
            return missing;
        }
        if 2.0 * width < thickness {
            return It::Short.with(width, (thickness / 2.0).ceil());
        }
        It::Sound.with(width, thickness)
    }
}
