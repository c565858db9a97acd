"""Threads, nuts and spanners as a Python user meets them."""

import math
import pickle
from collections.abc import Callable
from typing import Any

import numpy as np
import pint
import pytest

import hubwright as hw
from hubwright import joint

ureg = pint.get_application_registry()


# ---- limits


@pytest.mark.parametrize(
    ("name", "pitch", "major", "minor"),
    [
        # ASME B1.13M, external and internal tables.
        ("M10x1-6g", (9.212, 9.324), (9.794, 9.974), None),
        ("M8x1.25-6g", (7.042, 7.160), (7.760, 7.972), None),
        ("M12x1.5-6H", (11.026, 11.216), (12.0, None), (10.376, 10.676)),
        # Machinery's Handbook, 27th edition, p. 1802.
        ("M80x2-6g", (78.483, 78.663), (79.682, 79.962), None),
    ],
)
def test_published_limits_come_out(
    name: str, pitch: tuple[float, float], major: tuple[float, float | None], minor: tuple[float, float] | None
) -> None:
    limits = joint.thread(name).limits
    assert limits is not None
    assert (limits.pitch_least.m_as("mm"), limits.pitch_greatest.m_as("mm")) == pytest.approx(pitch, abs=1e-9)
    assert limits.major_least.m_as("mm") == pytest.approx(major[0], abs=1e-9)
    if major[1] is not None:
        assert limits.major_greatest is not None
        assert limits.major_greatest.m_as("mm") == pytest.approx(major[1], abs=1e-9)
    if minor is None:
        assert limits.minor_least is None
        assert limits.minor_greatest is None
    else:
        assert limits.minor_least is not None
        assert limits.minor_greatest is not None
        assert (limits.minor_least.m_as("mm"), limits.minor_greatest.m_as("mm")) == pytest.approx(minor, abs=1e-9)
    assert limits.source.status == "read in a reprint"
    assert limits.class_ == name[-2:]


def test_a_unified_thread_has_its_limits_in_inches() -> None:
    nut = joint.thread("1/4-20 UNC-2B")
    assert nut.limits is not None
    assert nut.limits.pitch_greatest.m_as("inch") == pytest.approx(0.2224, abs=1e-12)
    assert nut.limits.minor_greatest is not None
    assert nut.limits.minor_greatest.m_as("inch") == pytest.approx(0.207, abs=1e-12)
    assert (nut.series, nut.threads_per_inch) == ("UNC", pytest.approx(20))
    # Shops know the stress area of 1/4-20 as 0.0318 square inches.
    assert nut.stress_area.m_as("inch**2") == pytest.approx(0.0318, abs=0.00005)
    assert joint.thread("#10-32 UNF LH").designation == "#10-32 UNF-LH"
    assert joint.thread("#10-32 UNF LH").left_hand


def test_the_profile_follows_from_the_sharp_triangle() -> None:
    # H of a triangle of 60 degrees; pitch line, nut's crest and screw's root lie 3/8, 5/8 and 17/24 of it down.
    for d, p in [(20, 1.5), (8, 1.25), (36, 4)]:
        height = p * math.sin(math.radians(60))
        found = joint.thread(f"M{d}x{p}")
        assert found.pitch_diameter.m_as("mm") == pytest.approx(d - 2 * 3 / 8 * height, rel=1e-12)
        assert found.minor_diameter.m_as("mm") == pytest.approx(d - 2 * 5 / 8 * height, rel=1e-12)
        assert found.root_diameter.m_as("mm") == pytest.approx(d - 2 * 17 / 24 * height, rel=1e-12)
        between = (d - 2 * 3 / 8 * height + d - 2 * 17 / 24 * height) / 2
        assert found.stress_area.m_as("mm**2") == pytest.approx(math.pi / 4 * between**2, rel=1e-12)
        assert found.working().steps[-1].result == found.stress_area.m_as("mm**2")


def test_a_thread_is_a_value() -> None:
    assert joint.thread("M8") == joint.thread("m8 x 1.25")
    assert joint.thread("M8") != joint.thread("M8x1")
    assert str(joint.thread("M8").in_class("6g")) == "M8x1.25-6g"
    with pytest.raises(AttributeError):
        joint.thread("M8").pitch = 1  # type: ignore[misc]
    assert joint.round_nuts()[0].outside.m_as("mm") == pytest.approx(14)
    assert {"iso965-1", "vdi2230", "din546", "screw-statics"} <= {source.key for source in hw.sources()}


# ---- three wires


def bottom(a: float, b: float, height: Callable[[float], float]) -> float:
    """Least of a function with one valley between a and b, by golden section."""
    golden = (math.sqrt(5) - 1) / 2
    c, d = b - golden * (b - a), a + golden * (b - a)
    left, right = height(c), height(d)
    for _ in range(24):
        if left < right:
            b, d, right = d, c, left
            c = b - golden * (b - a)
            left = height(c)
        else:
            a, c, left = c, d, right
            d = a + golden * (b - a)
            right = height(d)
    return min(left, right)


def wire_in_groove(d2: float, pitch: float, wire: float) -> float:
    """Size over wires, in mm, from a straight wire laid into a helical groove.

    A flank is the screw surface z = p θ / 2π + P/4 + (r - d2/2) tan 30°. The wire is a cylinder whose axis
    passes the thread's axis at R and is tilted as it likes about R: it lies deepest at some tilt. At each tilt
    the flank pushes its axis out to the greatest R at which any point of the flank touches the cylinder.
    """
    theta = np.linspace(-0.5, 0.5, 241)[:, None] * math.sqrt(2 * wire / d2)
    half = math.tan(math.radians(30))

    def pushed_out(tilt: float) -> float:
        r = np.linspace(d2 / 2 - 0.5 * pitch, d2 / 2 + 0.5 * pitch, 481)[None, :]
        x, y = r * np.cos(theta), r * np.sin(theta)
        z = pitch * theta / (2 * math.pi) + pitch / 4 + (r - d2 / 2) * half
        # Square to the wire: x, and the distance from its axis in the plane of y and z.
        across = z * math.cos(tilt) - y * math.sin(tilt)
        reach = (wire / 2) ** 2 - across**2
        touched = np.where(reach >= 0, x + np.sqrt(np.maximum(reach, 0)), -np.inf)
        row, column = (int(at) for at in np.unravel_index(np.argmax(touched), touched.shape))
        # Once more, finely, about the point found.
        fine_t = np.linspace(theta[max(row - 1, 0), 0], theta[min(row + 1, 240), 0], 161)[:, None]
        fine_r = np.linspace(r[0, max(column - 1, 0)], r[0, min(column + 1, 480)], 161)[None, :]
        x, y = fine_r * np.cos(fine_t), fine_r * np.sin(fine_t)
        z = pitch * fine_t / (2 * math.pi) + pitch / 4 + (fine_r - d2 / 2) * half
        across = z * math.cos(tilt) - y * math.sin(tilt)
        reach = (wire / 2) ** 2 - across**2
        return float(np.max(np.where(reach >= 0, x + np.sqrt(np.maximum(reach, 0)), -np.inf)))

    rise = math.atan(pitch / (math.pi * d2))
    return 2 * bottom(0.5 * rise, 1.5 * rise, pushed_out) + wire


@pytest.mark.parametrize("name", ["M6", "M10x1.5", "M20x1.5", "M36x4", "1/4-20 UNC"])
@pytest.mark.parametrize("share", [0.54, 1 / math.sqrt(3), 0.8])
def test_the_size_over_wires_is_where_a_wire_lies_in_the_groove(name: str, share: float) -> None:
    thread = joint.thread(name)
    d2, pitch = thread.pitch_diameter.m_as("mm"), thread.pitch.m_as("mm")
    wires = thread.three_wires(share * pitch * ureg.mm)
    laid = wire_in_groove(d2, pitch, share * pitch)
    # The formula of the handbooks leaves out terms of higher order: less than a third of what the rise does.
    plane = d2 + 3 * share * pitch - pitch * math.sqrt(3) / 2
    assert laid > plane + 3e-4
    assert wires.basic.m_as("mm") == pytest.approx(laid, abs=0.3 * (laid - plane))
    assert wires.best_wire.m_as("mm") == pytest.approx(pitch / 2 / math.cos(math.radians(30)), rel=1e-12)
    assert wires.pitch_diameter(wires.basic).m_as("mm") == pytest.approx(d2, abs=1e-9)


def test_the_limits_over_wires_lie_as_far_apart_as_those_of_the_pitch_diameter() -> None:
    thread = joint.thread("M20x1.5-6g")
    wires = thread.three_wires()
    assert thread.limits is not None
    assert wires.greatest is not None
    assert wires.least is not None
    apart = (thread.limits.pitch_greatest - thread.limits.pitch_least).m_as("mm")
    assert (wires.greatest - wires.least).m_as("mm") == pytest.approx(apart, abs=1e-5)
    assert joint.thread("M20x1.5-6H").three_wires().greatest is None


# ---- nuts


def tightened(**more: Any) -> joint.Tightened:
    usual: dict[str, Any] = {
        "thread": "M20x1.5", "thread_friction": 0.12, "face_friction": 0.12,
        "face_inside": "21 mm", "face_outside": "30 mm",
    }  # fmt: skip
    return joint.nut(**(usual | more))


def test_a_nut_obeys_statics() -> None:
    # An inclined plane once round: 1.5 mm up on a circumference of π d2.
    d2 = 20 - 1.5 * 0.6495190528
    plane, rub = math.atan(1.5 / (math.pi * d2)), math.atan(0.12 / math.cos(math.radians(30)))
    arm, back = d2 / 2 * math.tan(plane + rub), d2 / 2 * math.tan(rub - plane)
    face = 0.12 * 25.5 / 2
    found = tightened(torque="60 N m")
    force = 60e3 / (arm + face)
    assert [one.m_as("N") for one in found.preload] == pytest.approx([force, force], rel=1e-9)
    assert found.loosening_torque[0].m_as("N*m") == pytest.approx(force * (back + face) / 1e3, rel=1e-9)
    assert found.thread_release[0].m_as("N*m") == pytest.approx(force * back / 1e3, rel=1e-9)
    again = tightened(preload=force * ureg.N)
    assert again.torque[0].m_as("N*m") == pytest.approx(60, rel=1e-9)
    assert found.holds_itself
    assert not tightened(thread_friction=0.01, torque="1 N m").holds_itself
    assert tightened(thread_friction=0.01, torque="1 N m").thread_release[0].m_as("N*m") < 0
    assert found.working().steps[-1].result == found.preload[1].m_as("N")


def test_a_range_goes_in_and_ranges_come_out() -> None:
    found = tightened(thread_friction=(0.1, 0.16), face_friction=("0.08", 0.2), torque="60 N m")
    slick = tightened(thread_friction=0.1, face_friction=0.08, torque="60 N m")
    rough = tightened(thread_friction=0.16, face_friction=0.2, torque="60 N m")
    assert found.preload == (rough.preload[0], slick.preload[0])
    assert found.torque[0].m_as("N*m") == pytest.approx(60, rel=1e-12)
    assert found.loosening_torque[0] < slick.loosening_torque[0] < rough.loosening_torque[0] < found.loosening_torque[1]


@pytest.mark.parametrize(
    ("thread", "friction", "proof", "face", "preload", "torque"),
    [
        # VDI 2230's table of fine threads: M20x1.5 8.8, M16x1.5 10.9, M24x2 12.9.
        ("M20x1.5", 0.12, 660, 25.1, 148, 454),
        ("M16x1.5", 0.14, 940, 20.0, 125.5, 359),
        ("M24x2", 0.10, 1100, 29.8, 355, 1110),
    ],
)
def test_published_preloads_come_out(
    thread: str, friction: float, proof: float, face: float, preload: float, torque: float
) -> None:
    found = tightened(
        thread=thread, thread_friction=friction, face_friction=friction, torque="1 N m",
        face_inside=(face - 2) * ureg.mm, face_outside=(face + 2) * ureg.mm,
        proof_stress=proof * ureg.MPa, utilisation=0.9,
    )  # fmt: skip
    assert found.greatest_preload is not None
    assert found.greatest_torque is not None
    assert found.greatest_preload[1].m_as("kN") == pytest.approx(preload, rel=0.004, abs=0.5)
    assert found.greatest_torque.m_as("N*m") == pytest.approx(torque, rel=0.004, abs=0.5)


def test_stress_and_stripping_are_judged_against_proof() -> None:
    whole: dict[str, Any] = {
        "proof_stress": "640 MPa", "utilisation": 0.9, "nut_proof_stress": "400 MPa",
        "engagement": "12 mm", "screw_class": "6g", "nut_class": "6H",
    }  # fmt: skip
    fine = tightened(torque="60 N m", **whole)
    assert fine.overloaded is False
    assert fine.proof_share == pytest.approx(fine.stress.m_as("MPa") / 640)
    assert tightened(torque="900 N m", **whole).overloaded is True
    assert "OVERLOADED" in repr(tightened(torque="900 N m", **whole))
    assert tightened(torque="60 N m").overloaded is None
    slotted = tightened(torque="60 N m", slot_width="5 mm", slot_depth="2.5 mm", **whole)
    assert slotted.net_area < fine.net_area
    assert slotted.stress > fine.stress
    assert fine.screw_shear is not None
    assert slotted.screw_shear is not None
    assert slotted.screw_shear > fine.screw_shear
    bored = tightened(torque="60 N m", bore="8 mm")
    assert (fine.net_area - bored.net_area).m_as("mm**2") == pytest.approx(math.pi * 16)


def test_which_way_it_loosens_is_a_sentence() -> None:
    assert "left-hand thread comes off clockwise" in joint.loosening("M20x1.5-LH")
    says = tightened(torque="60 N m").loosens(hw.Rotation.CLOCKWISE)
    assert "drag and run-up loosen it, so it takes a left-hand thread" in says
    assert "braking reverses the torque" in joint.loosening(joint.thread("M20"), "anticlockwise")


# ---- spanners and the jacking screw


def test_pins_holes_and_levers() -> None:
    assert joint.spanner_torque("200 N", "180 mm").m_as("N*m") == pytest.approx(36)
    assert joint.hand_force(36 * ureg.N * ureg.m, "180 mm").m_as("N") == pytest.approx(200)
    found = joint.pin_spanner(
        torque="60 N m", pins=2, circle="30 mm", pin="4 mm", depth="5 mm",
        hole="4.2 mm", nut_inside="20 mm", nut_outside="34 mm",
    )  # fmt: skip
    assert found.pin_load.m_as("N") == pytest.approx(2000)
    assert found.outer_edge is not None
    assert found.outer_edge.m_as("mm") == pytest.approx(-0.1)
    assert found.breaks_out is True
    five = joint.hole_circle(5, "50 mm", "90 deg")
    points = [complex(hole.x.m_as("mm"), hole.y.m_as("mm")) for hole in five.holes]
    roots = [25j * complex(math.cos(2 * math.pi * k / 5), math.sin(2 * math.pi * k / 5)) for k in range(5)]
    assert points == pytest.approx(roots)
    assert five.chord.m_as("mm") == pytest.approx(abs(roots[1] - roots[0]))
    for way in joint.dividing(7, 40, [21, 49]):
        assert way.turns + way.holes / way.circle == pytest.approx(40 / 7)


def test_a_jacking_screw_has_to_let_the_draw_screw_through() -> None:
    usual: dict[str, Any] = {
        "thread": "M20x1.5", "torque": "50 N m", "thread_friction": 0.15, "tip_friction": 0.15, "tip": "12 mm",
    }  # fmt: skip
    assert joint.jacking_screw(**usual).clears is None
    assert joint.jacking_screw(**usual, draw_screw="M12").clears is True
    stuck = joint.jacking_screw(**usual, draw_screw="M20x2.5-6g")
    assert stuck.clears is False
    assert stuck.clearance is not None
    assert stuck.clearance.m_as("mm") == pytest.approx(20 - 1.5 * 1.0825317547 - 19.958, abs=1e-6)


# ---- what is no thread and no nut


@pytest.mark.parametrize(
    ("call", "error", "code", "says"),
    [
        (lambda: joint.thread("M13"), hw.TextError, "unknown-word", "M12, M14"),
        (lambda: joint.thread("M20x3"), hw.OutOfRangeError, "out-of-range", "the coarsest at 20 mm"),
        (lambda: joint.thread("M20x0.5-6H"), hw.OutOfRangeError, "out-of-range", "not one of 0.75, 1, 1.25"),
        (lambda: joint.thread("M20-6K"), hw.TextError, "unknown-word", "4g, 6e, 6g, 6h"),
        (lambda: joint.thread("1-14 UNF"), hw.TextError, "unknown-word", "1-12 UNF"),
        (lambda: joint.thread(8), hw.UnitError, "wrong-unit", "it is no text"),  # type: ignore[arg-type]
        (lambda: tightened(thread=8, torque="1 N m"), hw.UnitError, "wrong-unit", "`thread` is 8, not a thread"),
        (lambda: tightened(thread="8", torque="1 N m"), hw.TextError, "not-a-quantity", "`thread` is"),
        (lambda: tightened(thread_friction=0, torque="1 N m"), hw.OutOfRangeError, "out-of-range", "not above 0"),
        (lambda: tightened(face_friction=-0.1, torque="1 N m"), hw.OutOfRangeError, "out-of-range", "not above 0"),
        (lambda: tightened(thread_friction=(0.2, 0.1), torque="1 N m"), hw.OutOfRangeError, "out-of-range", "below the least"),
        (lambda: tightened(thread_friction="much", torque="1 N m"), hw.TextError, "not-a-quantity", "`thread_friction`"),
        (lambda: tightened(), hw.MissingError, "missing", "`torque` is missing"),
        (lambda: tightened(torque="1 N m", preload="1 N"), hw.UnitError, "wrong-unit", "each follows from the other"),
        (lambda: tightened(torque="1 N m", proof_stress="600 MPa"), hw.MissingError, "missing", "`utilisation`"),
        (lambda: tightened(torque="1 N m", slot_width="4 mm"), hw.MissingError, "missing", "`slot_depth`"),
        (lambda: tightened(torque="1 N m", engagement="4 mm"), hw.MissingError, "missing", "`screw_class`"),
        (lambda: tightened(torque="40"), hw.UnitError, "no-unit", "`torque`"),
        (lambda: joint.spanner_torque("200 N", "0 mm"), hw.OutOfRangeError, "out-of-range", "`length` is 0 mm, not above 0"),
        (lambda: joint.hole_circle(2.5, "60 mm"), hw.UnitError, "wrong-unit", "no whole number"),  # type: ignore[arg-type]
        (lambda: joint.hole_circle(True, "60 mm"), hw.UnitError, "wrong-unit", "no whole number"),
        (lambda: joint.hole_circle(0, "60 mm"), hw.OutOfRangeError, "out-of-range", "`holes` is 0, outside 1 to 1000"),
        (lambda: joint.dividing(6, -40), hw.UnitError, "wrong-unit", "`ratio`"),
    ],
)  # fmt: skip
def test_what_is_wrong_is_said_with_a_hint(
    call: Callable[[], object], error: type[hw.HubwrightError], code: str, says: str
) -> None:
    with pytest.raises(error) as caught:
        call()
    assert says in str(caught.value)
    assert "\nhint: " in str(caught.value)
    assert caught.value.code == code
    assert str(pickle.loads(pickle.dumps(caught.value))) == str(caught.value)


# ---- the rule


def test_a_mounting_is_refused_for_a_torque_that_its_thread_cannot_bear() -> None:
    def judged(torque: str) -> hw.Finding:
        mounting = hw.Mounting(
            "surface grinder",
            hub=hw.Hub(thread_bore="22 mm", thread_proof_stress="400 MPa"),
            nut=hw.Nut(
                length="12 mm", thread_diameter="40 mm", thread_pitch="1.5 mm", tightening_torque=torque,
                thread_friction=0.12, face_friction=0.1, face_diameter="60 mm", face_hole="42 mm",
                proof_stress="300 MPa",
            ),
        )  # fmt: skip
        return next(one for one in hw.check(mounting).findings if one.rule.slug == "nut-overloaded")

    # The same nut by `joint.nut`.
    found = joint.nut(
        thread="M40x1.5", thread_friction=0.12, face_friction=0.1, face_inside="42 mm", face_outside="60 mm",
        bore="22 mm", torque="50 N m",
    )  # fmt: skip
    assert judged("50 N m").outcome is hw.Outcome.PASS
    stress = judged("50 N m").found
    assert isinstance(stress, pint.Quantity)
    assert stress.m_as("MPa") == pytest.approx(found.stress.m_as("MPa"), rel=1e-9)
    assert judged("50 N m").unit == "MPa"
    assert judged("1000 N m").outcome is hw.Outcome.REFUSE


def test_the_greatest_torque_is_not_too_much_and_strips_nothing() -> None:
    for friction in (0.09, 0.1, 0.113, 0.127, 0.15, 0.183):
        given: dict[str, Any] = {
            "thread": "M20x1.5", "thread_friction": friction, "face_friction": friction, "face_inside": "21 mm",
            "face_outside": "30 mm", "proof_stress": "580 MPa", "utilisation": 0.9, "nut_proof_stress": "100 MPa",
            "engagement": "6 mm", "screw_class": "6g", "nut_class": "6H",
        }  # fmt: skip
        greatest = joint.nut(torque="10 N m", **given).greatest_torque
        assert greatest is not None
        assert joint.nut(torque=greatest, **given).overloaded is False
        assert joint.nut(torque=1.001 * greatest, **given).overloaded is True


def test_a_face_inside_the_thread_is_no_face() -> None:
    with pytest.raises(hw.errors.OutOfRangeError, match="face_outside"):
        joint.nut(thread="M20x1.5", torque="40 N m", thread_friction=0.12, face_friction=0.12, face_inside="5 mm", face_outside="8 mm")
