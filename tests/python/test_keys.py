"""Keys, keyways, centring and brazing as a Python user meets them; the circle by SymPy."""

import math
import random

import pint
import pytest
import sympy

import hubwright as hw
from hubwright import joint

ureg = pint.get_application_registry()


def chord(diameter: float, width: float, digits: int = 30) -> sympy.Float:
    """Height of the circle over its chord: where the line x = b/2 meets the circle, to many figures."""
    y = sympy.symbols("y", positive=True)
    r, half = sympy.Rational(str(diameter)) / 2, sympy.Rational(str(width)) / 2
    (meets,) = sympy.solve(half**2 + y**2 - r**2, y)
    return sympy.N(r - meets, digits)


@pytest.mark.parametrize(
    ("diameter", "width"),
    [(22, 4), (20, 6), (25, 8), (30, 8), (38, 10), (50, 14), (60, 18), (500, 100), (6.0001, 6), (1000, 0.001)],
)
def test_the_chord_height_is_that_of_the_circle(diameter: float, width: float) -> None:
    ours = joint.chord_height(f"{diameter} mm", f"{width} mm").m_as("mm")
    # Narrow slots too: what is left after taking near numbers from each other is not what is compared.
    assert ours == pytest.approx(float(chord(diameter, width)), rel=1e-12)


def test_chord_heights_of_made_up_slots_are_those_of_the_circle() -> None:
    made_up = random.Random(22)
    for _ in range(50):
        diameter = round(made_up.uniform(5, 500), 3)
        width = round(diameter * made_up.uniform(0.01, 0.99), 3)
        ours = joint.chord_height(f"{diameter} mm", f"{width} mm").m_as("mm")
        assert ours == pytest.approx(float(chord(diameter, width)), rel=1e-11), (diameter, width)


def test_offset_and_height_solve_the_two_equations_of_the_marks() -> None:
    """Both marks end where the bore passes the tool's edge: two equations, two unknowns."""
    e, x = sympy.symbols("e x", real=True)
    b, left, right, bore = (sympy.Rational(text) for text in ("4", "0.60", "0.36", "22"))
    solved = sympy.solve([b / 2 - e - x - left, b / 2 + e - x - right], [e, x])
    edge = sympy.sqrt((bore / 2) ** 2 - solved[x] ** 2)
    found = joint.centre_slot(**MARKS, depth="1.8 mm")
    # The tool stands to the left, where e is negative, and has to go right.
    assert solved[e] < 0
    assert found.move_tool is hw.MoveTool.RIGHT
    assert found.offset.m_as("mm") == pytest.approx(float(-solved[e]), abs=1e-12)
    assert found.feed_left.m_as("mm") == pytest.approx(float(bore / 2 + sympy.Rational("1.8") - edge), abs=1e-12)
    corner = sympy.sqrt((bore / 2) ** 2 - (b / 2 + abs(solved[e])) ** 2)
    assert found.cut.m_as("mm") == pytest.approx(float(edge - corner), abs=1e-12)
    assert found.lean.m_as("degree") == pytest.approx(math.degrees(math.asin(float(-solved[e]) / 11)), abs=1e-12)


def test_a_4_mm_keyway_in_a_22_mm_bore_from_the_first_touch_to_the_key() -> None:
    """Common practice, no source: 0.02 mm a stroke by hand, equal marks mean centred, a push with no shake."""
    cut = joint.keyway(
        cut_in="hub", diameter="22 mm", width="4 mm", depth="1.8 mm", depth_tolerance="0.1 mm",
        infeed="0.02 mm", strokes_per_minute=50,
    )  # fmt: skip
    feed = sympy.Rational("1.8") + chord(22, 4)
    assert cut.feed.m_as("mm") == pytest.approx(float(feed), abs=1e-12)
    assert cut.strokes == math.ceil(feed / sympy.Rational("0.02")) == 100
    assert cut.minutes == 2.0
    equal = joint.centre_slot(bore="22 mm", tool_width="4 mm", left_mark="0.5 mm", right_mark="0.5 mm")
    assert equal.move_tool is hw.MoveTool.STAY
    assert equal.offset.m_as("mm") == 0
    stock = joint.key_stock(slot_width="4 mm", fit="push", height="4 mm", length="18 mm", chamfer="0.3 mm")
    assert (stock.least_clearance_um, stock.most_clearance_um) == (0.0, 8.0)
    assert "common practice, no source" in str(stock.source)
    assert stock.class_ == "h6"


@pytest.mark.parametrize(
    ("shaft", "key", "t1", "t2"),
    [
        ("8 mm", (2, 2), 1.2, 1.0),
        ("22 mm", (6, 6), 3.5, 2.8),
        ("30 mm", (8, 7), 4.0, 3.3),
        ("500 mm", (100, 50), 31, 19.4),
    ],
)
def test_din_keys_and_depths_come_out(shaft: str, key: tuple[int, int], t1: float, t2: float) -> None:
    for standard in ("DIN 6885-1", "ISO 773", hw.KeyStandard.DIN_6885_1):
        found = joint.key_for(shaft, standard)
        assert (found.width.m_as("mm"), found.height.m_as("mm")) == pytest.approx(key)
        assert (found.shaft_depth.m_as("mm"), found.hub_depth.m_as("mm")) == pytest.approx((t1, t2))
        d, y = found.shaft.m_as("mm"), float(chord(ureg(shaft).m_as("mm"), key[0]))
        assert found.across_shaft.m_as("mm") == pytest.approx(d - t1)
        assert found.across_hub.m_as("mm") == pytest.approx(d + t2)
        assert found.hub_wall.m_as("mm") == pytest.approx(t2 + y)
        assert found.shaft_wall.m_as("mm") == pytest.approx(t1 - y)


def test_the_high_form_sits_deeper_in_the_shaft() -> None:
    usual, high = (joint.key_for("20 mm", standard) for standard in ("DIN 6885-1", "DIN 6885-2"))
    assert (usual.width, usual.height) == (high.width, high.height)
    assert high.shaft_depth > usual.shaft_depth
    assert high.hub_depth < usual.hub_depth
    assert high.depth_tolerance is None


@pytest.mark.parametrize(
    ("d", "s", "t"),
    [
        ("0.5 in", 0.430, 0.560),
        ("3/4 in", 0.644, 0.837),
        ("1 in", 0.859, 1.114),
        ("1-1/4 in", 1.112, 1.367),
        ("2 in", 1.718, 2.223),
    ],
)
def test_inch_keyseats_are_measured_as_printed(d: str, s: float, t: float) -> None:
    found = joint.key_for(d, "ANSI B17.1 square")
    assert round(found.across_shaft.m_as("in"), 3) == pytest.approx(s, abs=1e-9)
    assert round(found.across_hub.m_as("in"), 3) == pytest.approx(t, abs=1e-9)
    assert found.widths("free") is None


def test_widths_have_the_limits_of_iso_286() -> None:
    # 6 mm: P9 -12 -42, N9 0 -30, JS9 +15 -15, H9 +30 0, D10 +78 +30, h9 0 -30, as printed.
    key = joint.key_for("22 mm", "DIN 6885-1")
    wanted = {"free": ((0, 60), (30, 108)), "normal": ((-30, 30), (-15, 45)), "close": ((-42, 18), (-42, 18))}
    for fit, (in_shaft, in_hub) in wanted.items():
        widths = key.widths(fit)
        assert widths is not None
        assert widths.in_shaft_um == in_shaft
        assert widths.in_hub_um == in_hub
        assert [size.m_as("mm") for size in widths.key] == pytest.approx([5.97, 6.0])
    normal = key.widths(hw.KeyFit.NORMAL)
    assert normal is not None
    assert normal.classes == ("N9", "JS9")
    assert [size.m_as("mm") for size in normal.hub_keyway] == pytest.approx([5.985, 6.015])
    assert "from memory" in str(normal.source)


def test_mott_and_faires_come_out() -> None:
    mott = joint.key_strength(
        torque="21000 lbf in", shaft_diameter="2 in", width="1/2 in", height="1/2 in", length="3-3/4 in",
        allowed_shear="12.8333333 ksi",
    )  # fmt: skip
    assert mott.shear_length is not None
    assert mott.shear_length.m_as("in") == pytest.approx(3.27, abs=0.005)
    assert mott.carries
    faires = joint.key_strength(
        torque=87.65e3 * ureg.lbf * ureg.inch, shaft_diameter="2 in", width="0.5 in", height="0.5 in", length="5 in",
        allowed_shear="39.6 ksi", allowed_bearing="66 ksi",
    )  # fmt: skip
    assert faires.shear_length is not None and faires.bearing_length is not None
    assert faires.shear_length.m_as("in") == pytest.approx(4.43, abs=0.005)
    assert faires.bearing_length.m_as("in") == pytest.approx(5.32, abs=0.01)
    assert faires.carries is False, "5 in is shorter than 5.32 in"


def test_a_brazed_key_says_what_it_takes_for_granted() -> None:
    found = joint.brazed_key(
        bore="22 mm", slot_width="4.06 mm", depth="1.8 mm", key_width="4 mm", length="18 mm",
        rise="630 K", hub_expansion="20 um/m/K", key_expansion="12 um/m/K",
        filler="silver, maker's note", torque="4 N m", sound_share=0.7,
    )  # fmt: skip
    hot = (4.06 * (1 + 20e-6 * 630) - 4 * (1 + 12e-6 * 630)) / 2
    assert found.hot_gap.m_as("mm") == pytest.approx(hot, abs=1e-12)
    assert found.gap_outcome is hw.GapOutcome.WITHIN
    area = (4 + 2 * (1.8 + float(chord(22, 4.06)))) * 18
    assert found.area.m_as("mm^2") == pytest.approx(area)
    assert found.filler_volume.m_as("mm^3") == pytest.approx(area * hot)
    assert found.shear is not None
    assert found.shear.m_as("MPa") == pytest.approx(2 * 4000 / 22 / (4 * 18 * 0.7))
    assert found.carries is None
    assert "bottom of the slot alone" in found.assumes
    assert all(word in found.advice for word in ("last facing", "finish boring", "oxide"))
    gaps = {str(gap.filler): gap for gap in joint.published_gaps()}
    assert set(gaps) == {str(filler) for filler in hw.Filler}
    assert "from memory" in str(gaps["nickel"].source)


KEY = {"torque": "13.2 N m", "shaft_diameter": "22 mm", "width": "6 mm", "height": "6 mm", "length": "20 mm"}
CUT = {"cut_in": "hub", "diameter": "22 mm", "width": "4 mm", "depth": "1.8 mm"}
MARKS = {"bore": "22 mm", "tool_width": "4 mm", "left_mark": "0.6 mm", "right_mark": "0.36 mm"}
BRAZED = {"bore": "22 mm", "slot_width": "4.06 mm", "depth": "1.8 mm", "key_width": "4 mm", "length": "18 mm"}
STOCK = {"slot_width": "4 mm", "fit": "push", "height": "4 mm", "length": "18 mm"}


@pytest.mark.parametrize(
    ("call", "good", "bad", "kind", "says"),
    [
        (joint.key_strength, KEY, {"hub_length": "18 mm"}, hw.OutOfRangeError, "is 20 mm, above the hub's 18 mm"),
        (joint.key_strength, KEY, {"torque": "13 Hz"}, hw.TextError, "torque"),
        (joint.key_strength, KEY, {"torque": 13.2}, hw.UnitError, "without a unit"),
        (joint.keyway, CUT, {"width": "23 mm"}, hw.OutOfRangeError, "narrower than its bore"),
        (joint.keyway, CUT, {"cut_in": "nut"}, hw.TextError, "hub, shaft"),
        (joint.keyway, CUT, {"strokes_per_minute": "50 rpm"}, hw.TextError, "strokes_per_minute"),
        (joint.keyway, CUT, {"strokes_per_minute": 0}, hw.OutOfRangeError, "strokes_per_minute"),
        (joint.centre_slot, MARKS, {"right_mark": "0 mm"}, hw.OutOfRangeError, "one mark alone"),
        (joint.centre_slot, MARKS, {"right_mark": "3.5 mm"}, hw.OutOfRangeError, "past its corners"),
        (joint.key_stock, STOCK, {"fit": "H9"}, hw.TextError, "push"),
        (joint.key_stock, STOCK, {"fit": 9}, hw.TextError, "push"),
        (joint.key_stock, STOCK, {"hub_length": "17 mm"}, hw.OutOfRangeError, "the hub's 17 mm"),
        (joint.brazed_key, BRAZED, {"rise": "630 K"}, hw.MissingError, "hub_expansion"),
        (joint.brazed_key, BRAZED, {"torque": "4 N m"}, hw.MissingError, "sound_share"),
        (joint.brazed_key, BRAZED, {"allowed_shear": "25 MPa"}, hw.MissingError, "torque"),
        (joint.brazed_key, BRAZED, {"filler": "tin"}, hw.TextError, "copper-phosphorus"),
        (joint.brazed_key, BRAZED, {"hub_length": "17 mm"}, hw.OutOfRangeError, "the hub's 17 mm"),
    ],
)
def test_what_makes_no_sense_is_told(call, good, bad, kind, says) -> None:  # type: ignore[no-untyped-def]
    call(**good)
    with pytest.raises(kind) as caught:
        call(**(good | bad))
    text = str(caught.value)
    assert says in text, text
    assert "hint:" in text


@pytest.mark.parametrize(
    ("shaft", "standard", "says"),
    [
        ("5 mm", "DIN 6885-1", "over 6 up to 500 mm"),
        ("600 mm", "DIN 6885-1", "over 6 up to 500 mm"),
        ("23 mm", "DIN 6885-2", "between 22 and 24 mm"),
        ("7 in", "ANSI B17.1 square", "up to 6.5 in"),
    ],
)
def test_a_shaft_outside_the_table_is_told_how_far_it_reaches(shaft: str, standard: str, says: str) -> None:
    with pytest.raises(hw.OutOfRangeError, match=says) as caught:
        joint.key_for(shaft, standard)
    assert "shaft_diameter" in str(caught.value)


def test_a_mounting_with_an_overloaded_key_is_refused() -> None:
    key = hw.Key(
        shaft_diameter="22 mm", width="6 mm", height="6 mm", length="20 mm", torque="13.2 N m",
        allowed_shear="9 MPa", allowed_bearing="90 MPa",
    )  # fmt: skip
    verdict = hw.check(hw.Mounting(key=key))
    (found,) = (found for found in verdict.findings if found.rule.slug == "key-overloaded")
    assert found.outcome is hw.Outcome.REFUSE
    assert found.found.m_as("MPa") == pytest.approx(10)
    assert found.unit == "MPa"
    assert found.margin == pytest.approx(-1)
    same = joint.key_strength(**(KEY | {"allowed_shear": "9 MPa"}))
    assert same.carries is False
    assert same.shear.m_as("MPa") == pytest.approx(10)


def test_results_are_frozen_and_show_their_working() -> None:
    results = [
        joint.key_for("22 mm", "DIN 6885-1"), joint.key_strength(**KEY), joint.keyway(**CUT),
        joint.centre_slot(**MARKS), joint.key_stock(**STOCK), joint.brazed_key(**BRAZED),
    ]  # fmt: skip
    for result in results:
        steps = result.working().steps
        assert steps and all(str(step.source) for step in steps)
        with pytest.raises(AttributeError):
            result.width = 1


@pytest.mark.parametrize("slot", ["4.00 mm", "8.0 mm"])
def test_a_key_without_its_gap_is_not_brazed(slot: str) -> None:
    found = hw.joint.brazed_key(
        bore="22 mm", slot_width=slot, depth="1.8 mm", key_width="4.2 mm", length="18 mm", filler="silver, flux",
        torque="4 N m", sound_share=0.7, allowed_shear="25 MPa",
    )  # fmt: skip
    assert found.carries is False


def test_a_tool_that_stays_leaves_its_offset_too() -> None:
    found = hw.joint.centre_slot(
        bore="22 mm", tool_width="4 mm", left_mark="0.60 mm", right_mark="0.40 mm", measured_within="0.1 mm"
    )
    assert found.move_tool is hw.MoveTool.STAY
    assert found.left_over is not None and found.left_over.m_as("mm") == pytest.approx(0.2)
