"""Kernels: identities against pint, units, bad input, columns."""

import math

import numpy as np
import pint
import polars
import pyarrow
import pytest

import hubwright as hw
from hubwright import wheel

ureg = pint.get_application_registry()


@pytest.mark.parametrize("rpm", [1, 60, 1450, 2850, 6000, 12_223.1, 60_000])
@pytest.mark.parametrize("diameter", ["3 mm", "125 mm", "7 in", "14 in", "0.4 m", "24 in"])
def test_rim_speed_is_what_pint_makes_of_the_formula(diameter: str, rpm: float) -> None:
    d, n = ureg.Quantity(diameter), ureg.Quantity(rpm, "rpm")
    expected = (d / 2 * n.to("rad/s")).m_as("mm * rad / s") / 1000
    assert wheel.rim_speed(d, n).m_as("m/s") == pytest.approx(expected, rel=1e-14)
    assert wheel.rim_speed(diameter, f"{rpm} rpm").m_as("m/s") == pytest.approx(expected, rel=1e-14)
    # There and back: the turns that give this rim speed, and the wheel that does.
    v = wheel.rim_speed(d, n)
    assert wheel.speed_for_rim(d, v).speed.m_as("rpm") == pytest.approx(rpm, rel=1e-14)
    assert wheel.largest_diameter(n, v).m_as("m") == pytest.approx(d.m_as("m"), rel=1e-14)


@pytest.mark.parametrize("unit", ["rad/s", "deg/s", "rpm", "revolution/s", "turn/minute"])
def test_a_speed_in_any_unit_that_names_turns_or_an_angle_is_taken(unit: str) -> None:
    n = ureg.Quantity(3000, "rpm").to(unit)
    assert wheel.rim_speed("200 mm", n).m_as("m/s") == pytest.approx(math.pi * 0.2 * 50, rel=1e-14)


@pytest.mark.parametrize("unit", ["Hz", "kHz", "1/s", "1/min", "count/s"])
def test_a_speed_that_may_be_radians_or_turns_is_refused(unit: str) -> None:
    with pytest.raises(hw.UnitError, match="names no turn or angle") as caught:
        wheel.rim_speed("200 mm", pint.Quantity(50, unit))
    assert "`speed`" in str(caught.value)
    assert "hint:" in str(caught.value)


@pytest.mark.parametrize(
    ("diameter", "error", "says"),
    [
        (200, hw.UnitError, "without a unit"),
        ("200", hw.UnitError, "without a unit"),
        (np.float64(200), hw.UnitError, "without a unit"),
        (pint.Quantity(200, "s"), hw.UnitError, "of another kind"),
        (pint.Quantity(200, "degC"), hw.UnitError, "of another kind"),
        (None, hw.UnitError, "neither text nor a quantity"),
        ([1, 2], hw.UnitError, "neither text nor a quantity"),
        (pint.Quantity([1, 2], "mm"), hw.UnitError, "not one number"),
        ("200 s", hw.TextError, "not a length"),
        ("2,5 mm", hw.TextError, "decimal comma"),
        ("5 mmm", hw.TextError, "not a length"),
        ("1e400 mm", hw.TextError, "beyond any number"),
        ("NaN mm", hw.TextError, "no number"),
        ("inf mm", hw.TextError, "no number"),
        ("wide", hw.TextError, "not a length"),
        ("", hw.TextError, "not a length"),
        ("mm", hw.TextError, "not a length"),
        ("5/0 in", hw.TextError, "divides by zero"),
        ("0 mm", hw.OutOfRangeError, "not above 0 mm"),
        ("-200 mm", hw.OutOfRangeError, "is -200 mm, not above 0 mm"),
        (pint.Quantity(math.nan, "mm"), hw.OutOfRangeError, "not a finite number"),
        (pint.Quantity(math.inf, "mm"), hw.OutOfRangeError, "not a finite number"),
    ],
)
def test_what_is_no_diameter_is_refused_with_its_name_and_a_hint(
    diameter: object, error: type[Exception], says: str
) -> None:
    with pytest.raises(error) as caught:
        wheel.rim_speed(diameter, "3000 rpm")  # type: ignore[arg-type]
    message = str(caught.value)
    assert says in message
    assert message.startswith("`diameter` is ")
    assert "\nhint: " in message


@pytest.mark.parametrize("bad", [hw.OutOfRangeError, hw.TextError, hw.UnitError, hw.TableError, hw.FileError])
def test_errors_are_caught_as_hubwrights_and_as_pythons_and_survive_pickling(bad: type[hw.HubwrightError]) -> None:
    import pickle

    copy = pickle.loads(pickle.dumps(bad("what\nhint: how", "a-code")))
    assert isinstance(copy, (ValueError, TypeError, OSError))
    assert (str(copy), copy.code) == ("what\nhint: how", "a-code")


@pytest.mark.parametrize(
    ("text", "mm"),
    [
        ("1-1/4 in", 31.75),
        ("1 1/4 in", 31.75),
        ("5/16 in", 7.9375),
        ('3/4"', 19.05),
        ("125mm", 125),
        ("125 MM", 125),
        ("12.5 cm", 125),
        ("250 um", 0.25),
        ("5 thou", 0.127),
        ("1 ft", 304.8),
    ],
)
def test_lengths_are_read_as_a_shop_writes_them(text: str, mm: float) -> None:
    limits = wheel.blotter_limits("type-1", text)
    assert limits.least_diameter is not None
    assert limits.least_diameter.value.m_as("mm") == pytest.approx(mm, rel=1e-14)


def test_the_marked_speed_is_a_ceiling_and_the_result_says_so() -> None:
    worn = wheel.speed_for_rim("280 mm", "35 m/s", marked_speed="1910 rpm")
    assert (worn.capped, worn.speed.m_as("rpm")) == (True, pytest.approx(1910))
    free = wheel.speed_for_rim("350 mm", "35 m/s", marked_speed="1910 rpm")
    assert not free.capped
    assert free.speed.m_as("rpm") == pytest.approx(60_000 * 35 / (math.pi * 350))
    assert worn.working().steps[-1].result == pytest.approx(1910)


def test_flange_limits_say_what_governs() -> None:
    # 29 CFR 1910.215, Table O-6 and (c)(1): the 14 in row is under a third, the 16 in row is not.
    third = wheel.flange_limits(hw.Shape.TYPE_1, "14 in", hw.FlangeKind.RELIEVED).least_diameter
    table = wheel.flange_limits("type-1", "16 in", "relieved").least_diameter
    assert third is not None and table is not None
    assert (third.governs, round(third.value.m_as("inch"), 3)) == ("ratio", 4.667)
    assert (table.governs, table.value.m_as("inch")) == ("table", pytest.approx(5.5))
    assert "Table O-6" in str(table.source)


def test_a_sleeve_needs_the_hole() -> None:
    with pytest.raises(hw.MissingError, match="`hole` is missing"):
        wheel.flange_limits("type-1", "20 in", "sleeve")
    # Table O-8: over 14 to 20 in, hole 8 in, flange 10 in.
    found = wheel.flange_limits("type-1", "20 in", "sleeve", hole="8 in").least_diameter
    assert found is not None and found.value.m_as("inch") == pytest.approx(10)


def test_an_unknown_word_is_answered_with_the_list() -> None:
    with pytest.raises(hw.TextError, match="type-1-cutting-off") as caught:
        wheel.flange_limits("type-99", "14 in", "relieved")
    assert "`shape`" in str(caught.value)


DIAMETERS = np.array([200.0, 355.6, 0.1, 1234.5, 0.0, -1.0, np.nan, np.inf])
SPEEDS = np.array([3000.0, 1910.0, 60_000.0, 0.0, 10.0, 10.0, 10.0, 10.0])


def test_a_column_equals_its_rows_bit_for_bit() -> None:
    column = wheel.rim_speed_column(DIAMETERS * ureg.mm, SPEEDS * ureg.rpm).m_as("m/s")
    for d, n, v in zip(DIAMETERS, SPEEDS, column, strict=True):
        try:
            assert wheel.rim_speed(d * ureg.mm, n * ureg.rpm).m_as("m/s") == v
        except hw.OutOfRangeError:
            assert math.isnan(v)


@pytest.mark.parametrize(
    "wrap",
    [np.asarray, lambda a: pyarrow.array(a), lambda a: pyarrow.chunked_array([a[:3], a[3:]]), polars.Series],
)
def test_a_column_with_stated_units_equals_its_rows_bit_for_bit(wrap: type) -> None:
    units = {"diameter": "mm", "speed": "rpm"}
    column = wheel.rim_speed_column(wrap(DIAMETERS), wrap(SPEEDS), units=units)
    if isinstance(column, wheel.ArrowColumn):
        values = pyarrow.array(column).to_pylist()
        assert column.name == "rim speed [m/s]"
    else:
        values = column.m_as("m/s")
    for d, n, v in zip(DIAMETERS, SPEEDS, values, strict=True):
        try:
            assert wheel.rim_speed(f"{d!r} mm".replace("np.float64(", "").replace(")", ""), f"{float(n)!r} rpm").m_as(
                "m/s"
            ) == v
        except (hw.OutOfRangeError, hw.TextError):
            assert math.isnan(v)


def test_a_null_in_an_arrow_column_is_a_row_without_an_answer() -> None:
    units = {"diameter": "mm", "speed": "rpm"}
    column = wheel.rim_speed_column(pyarrow.array([200.0, None]), pyarrow.array([3000.0, 3000.0]), units=units)
    values = pyarrow.array(column).to_pylist()
    assert values[0] == pytest.approx(31.415927)
    assert math.isnan(values[1])


def test_a_column_goes_into_an_array_that_is_given() -> None:
    out = np.empty(2)
    units = {"diameter": "mm", "speed": "rpm"}
    wheel.rim_speed_column(np.array([100.0, 200.0]), np.array([3000.0, 3000.0]), units=units, out=out)
    assert out[1] == pytest.approx(31.415927)
    with pytest.raises(hw.TableError, match="`out` has 3 rows, not 2"):
        wheel.rim_speed_column(np.array([100.0, 200.0]), np.array([3000.0, 3000.0]), units=units, out=np.empty(3))


def test_a_column_without_a_unit_or_of_unlike_length_is_refused() -> None:
    with pytest.raises(hw.UnitError, match="`diameter` is a column without a unit"):
        wheel.rim_speed_column(DIAMETERS, SPEEDS * ureg.rpm)
    with pytest.raises(hw.TextError, match="`speed` is \"mm\""):
        wheel.rim_speed_column(DIAMETERS, SPEEDS, units={"diameter": "mm", "speed": "mm"})
    with pytest.raises(hw.UnitError, match="names no turn or angle"):
        wheel.rim_speed_column(DIAMETERS * ureg.mm, SPEEDS * ureg.Hz)
    with pytest.raises(hw.TableError, match="`speed` has 3 rows, not 8"):
        wheel.rim_speed_column(DIAMETERS * ureg.mm, SPEEDS[:3] * ureg.rpm)
