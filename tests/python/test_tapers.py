"""Tapers by name as a Python user meets them; angles by SymPy to thirty figures."""

import pickle

import pint
import pytest
import sympy

import hubwright as hw
from hubwright import joint

ureg = pint.get_application_registry()


@pytest.mark.parametrize("x", [3, 4, 5, 6, 7, 8, 10, 12, 15, 20, 30, 50, 100, 200, 500])
def test_ratios_have_the_angle_of_their_right_triangle(x: int) -> None:
    found = joint.taper(f"1:{x}")
    half = sympy.atan(sympy.Rational(1, 2 * x)) * 180 / sympy.pi
    assert found.half_angle.m_as("degree") == pytest.approx(float(sympy.N(half, 30)), rel=1e-14)
    assert found.cone_angle.m_as("degree") == pytest.approx(float(sympy.N(2 * half, 30)), rel=1e-14)
    assert found.in_per_ft == pytest.approx(12 / x, rel=1e-14)
    assert (found.on_diameter, found.per_side) == pytest.approx((1 / x, 1 / x / 2), rel=1e-14)
    assert found.source.key == "gost53440"


def test_every_standard_taper_is_found_by_its_name() -> None:
    names = joint.standard_tapers()
    assert len(names) == 25
    for name in names:
        found = joint.taper(name)
        assert found.half_angle.m_as("degree") > 0
        assert found.working().steps[-1].result == found.cone_angle.m_as("degree")
        assert joint.taper(name) == found


def test_numbered_tapers_bring_their_sizes() -> None:
    jarno = joint.taper("Jarno 8")
    assert jarno.large_diameter is not None and jarno.small_diameter is not None and jarno.length is not None
    # No./8, No./10 and No./2 in.
    assert [size.m_as("in") for size in (jarno.large_diameter, jarno.small_diameter, jarno.length)] == pytest.approx([1, 0.8, 4])
    assert jarno.machine == "Jarno 8"
    assert joint.taper("steep 40").small_diameter is None
    assert "from memory" in str(joint.taper("steep 40").source)
    assert joint.taper("1:5").large_diameter is None


def test_diameters_and_shifts_take_text_and_quantities() -> None:
    taper = joint.taper("3 in/ft")
    assert taper.diameter_at(25 * ureg.mm, "40 mm").m_as("mm") == pytest.approx(35)
    assert taper.axial_shift(-0.02 * ureg.mm).m_as("mm") == pytest.approx(-0.08)
    assert taper.slant_of_one_side == pytest.approx(float(sympy.tan(2 * sympy.atan(sympy.Rational(1, 8)))))


def test_grades_are_from_memory_and_say_so() -> None:
    found = joint.taper_grade(7, "63 mm")
    assert found.cone_angle.m_as("radian") == pytest.approx(315e-6)
    assert found.on_diameter.m_as("um") == pytest.approx(19.845)
    assert found.source.status == "from memory, unverified"
    assert joint.finest_grade(315e-6 * ureg.radian, "63 mm").grade == 7  # type: ignore[union-attr]
    assert joint.finest_grade("5 deg", "63 mm") is None


@pytest.mark.parametrize(
    ("name", "error", "says"),
    [
        ("8.5 deg", hw.TextError, "included or the half angle"),
        ("Morse 9", hw.TextError, "Morse 0, 1, 2"),
        ("three in a foot", hw.TextError, "neither"),
        ("1:100000", hw.OutOfRangeError, "cylinder"),
        ("10:1", hw.OutOfRangeError, "plate"),
        (0.2, hw.UnitError, "no text"),
    ],
)
def test_what_is_no_taper_is_told_with_a_hint(name: str, error: type[hw.HubwrightError], says: str) -> None:
    with pytest.raises(error, match=says) as caught:
        joint.taper(name)
    assert "\nhint: " in str(caught.value)
    assert str(pickle.loads(pickle.dumps(caught.value))) == str(caught.value)
    with pytest.raises(hw.UnitError, match="grade"):
        joint.taper_grade(7.5, "50 mm")  # type: ignore[arg-type]
    with pytest.raises(hw.OutOfRangeError, match="`grade` is 13"):
        joint.taper_grade(13, "50 mm")


def test_tapers_cannot_be_changed() -> None:
    with pytest.raises(AttributeError):
        joint.taper("1:5").per_side = 1  # type: ignore[misc]
