"""Limits and fits as a Python user meets them."""

import math
import pickle

import pint
import pytest

import hubwright as hw
from hubwright import joint

ureg = pint.get_application_registry()


@pytest.mark.parametrize(
    ("size", "upper", "lower"),
    [
        ("34 H11", 160, 0),  # Shigley, 9th edition, example 7-7
        ("34 c11", -120, -280),
        ("50 H8", 39, 0),  # an encyclopaedia's example of 50 H8/f7
        ("50 f7", -25, -50),
        ("60 k6", 21, 2),  # a mould-base maker's reference, p. 293
        ("24 F6", 33, 20),  # the same, p. 287
        ("24 P7", -14, -35),  # Machine Drawing, p. 221: -22 with delta 8
        ("280 M6", -9, -41),  # Machine Drawing, p. 219: the exception
    ],
)
def test_published_limits_come_out(size: str, upper: float, lower: float) -> None:
    found = joint.limits(size)
    assert (found.upper_um, found.lower_um) == (upper, lower)
    assert (found.upper_nm, found.lower_nm) == (upper * 1000, lower * 1000)
    nominal = float(size.split()[0])
    assert found.nominal.m_as("mm") == pytest.approx(nominal)
    assert found.largest.m_as("mm") == pytest.approx(nominal + upper / 1000, abs=1e-10)
    assert found.smallest.m_as("mm") == pytest.approx(nominal + lower / 1000, abs=1e-10)
    assert found.class_ == size.split()[1]
    assert found.feature is (hw.Feature.HOLE if found.class_[0].isupper() else hw.Feature.SHAFT)


def test_a_grade_worked_out_by_hand_is_the_tolerance() -> None:
    # ISO 286-1: i = 0.45 cbrt(D) + 0.001 D with D the geometric mean of the step; IT7 is 16 i, IT6 10 i.
    for over, to, size in [(18, 30, 20), (50, 80, 60), (80, 120, 100), (120, 180, 125), (180, 250, 200)]:
        d = math.sqrt(over * to)
        i = 0.45 * d ** (1 / 3) + 0.001 * d
        assert joint.limits(f"{size} H7").tolerance_um == round(16 * i)
        assert joint.limits(f"{size} h6").tolerance_um == round(10 * i)
        assert joint.tolerance_factor(d * ureg.mm).m_as("um") == pytest.approx(i, rel=1e-12)
        assert joint.grade_by_formula(f"{size} mm", "IT6").m_as("um") == pytest.approx(round(10 * i))
    # Shafts d to g follow powers of D: f of 30 to 50 mm is -5.5 D^0.41.
    f = -5.5 * math.sqrt(30 * 50) ** 0.41
    assert joint.limits("40 f7").upper_um == round(f)
    assert joint.deviation_by_formula("40 mm", "f").m_as("um") == pytest.approx(round(f))


@pytest.mark.parametrize("size", ["20H7", "20 mm H7", "Ø20 H7", "20.0 H7"])
def test_a_size_is_read_as_a_drawing_writes_it(size: str) -> None:
    assert repr(joint.limits(size)) == "<Limits 20 mm H7 +21 0 µm>"


def test_an_inch_size_is_converted_exactly() -> None:
    found = joint.limits("1-1/4 in js6")
    assert found.nominal.m_as("inch") == pytest.approx(1.25, rel=1e-15)
    assert (found.upper_um, found.lower_um) == (8.0, -8.0)
    assert found.largest.m_as("mm") == pytest.approx(31.758, abs=1e-10)


def test_js_keeps_half_a_micrometre() -> None:
    found = joint.limits("20 JS7")
    assert (found.upper_nm, found.lower_nm) == (10_500, -10_500)
    assert (found.upper_um, found.lower_um) == (10.5, -10.5)


def test_the_source_says_what_is_recalled() -> None:
    assert joint.limits("20 H7").source.status == "read in a reprint"
    assert "memory" in str(joint.limits("20 h16").source)
    assert {"iso286-1", "ansi-b4.2-preferred", "callister-b6"} <= {source.key for source in hw.sources()}


@pytest.mark.parametrize(
    ("measured", "outcome", "amount"),
    [
        ("18.059 mm", hw.SizeOutcome.WITHIN, 0),
        ("18.032 mm", hw.SizeOutcome.WITHIN, 0),
        ("18.04 mm", hw.SizeOutcome.WITHIN, 8000),
        ("18.0595 mm", hw.SizeOutcome.TOO_LARGE, 500),
        (pint.Quantity(18.03, "mm"), hw.SizeOutcome.TOO_SMALL, 2000),
        (pint.Quantity(18059, "um"), hw.SizeOutcome.WITHIN, 0),
    ],
)
def test_a_size_on_a_limit_is_within(measured: str, outcome: hw.SizeOutcome, amount: int) -> None:
    judged = joint.limits("18 E8").judge(measured)
    assert judged.outcome is outcome
    assert judged.amount_nm == amount
    assert judged.limits.class_ == "E8"


def test_a_fit_says_what_it_is() -> None:
    sliding = joint.fit("20 H7/g6")
    assert (sliding.kind, sliding.least_clearance_um, sliding.most_clearance_um) == ("clearance", 7, 41)
    assert (sliding.classes, sliding.basis) == ("H7/g6", hw.FitBasis.HOLE_BASIS)
    assert (sliding.hole.class_, sliding.shaft.class_) == ("H7", "g6")
    press = joint.fit("60 H7/s6")
    assert (press.kind, press.least_clearance_um, press.most_clearance_um) == ("interference", -72, -23)
    by_chance = joint.fit("1-1/4 in H7/k6")
    assert by_chance.kind is hw.FitKind.TRANSITION


def test_the_last_step_of_a_working_is_the_result() -> None:
    hole = joint.limits("24 P7")
    assert hole.working().steps[-1].result == hole.largest.m_as("mm")
    assert "-22 + 8 = -14 µm" in str(hole.working())
    fit = joint.fit("8 JS5/js5")
    assert fit.working().steps[-1].result == fit.most_clearance_um
    warm = joint.at_20_c("40.01 mm", "28 °C", "23.6 um/m/K")
    assert warm.working().steps[-1].result == warm.size.m_as("mm")


def test_fits_for_a_window_lie_inside_it_best_first() -> None:
    found = joint.fits_for("25 mm", "5 um", "45 um")
    assert found[0].fit.classes == "H7/g6"
    assert found[0].share == pytest.approx((41 - 7) / 40)
    assert [one.share for one in found] == sorted((one.share for one in found), reverse=True)
    assert all(5 <= one.fit.least_clearance_um <= one.fit.most_clearance_um <= 45 for one in found)
    assert "ANSI B4.2:1978" in str(found[0].source)
    press = joint.fits_for(25 * ureg.mm, -48 * ureg.um, "-14 um")
    assert press[0].fit.classes == "H7/s6"
    assert joint.fits_for("25 mm", "7 um", "8 um") == []


def test_a_warm_part_is_brought_to_20_degrees() -> None:
    # By the definition of expansion: 40 mm of aluminium grows by 23.6e-6 a kelvin.
    grown = 40 * (1 + 23.6e-6 * 8)
    found = joint.at_20_c(grown * ureg.mm, "28 °C", 23.6e-6 / ureg.kelvin)
    assert found.size.m_as("mm") == pytest.approx(40, abs=1e-9)
    for same in [pint.Quantity(28, "degC"), pint.Quantity(301.15, "K"), "82.4 °F", pint.Quantity(82.4, "degF")]:
        again = joint.at_20_c(grown * ureg.mm, same, "23.6 um/m/K").size
        assert again.m_as("mm") == pytest.approx(40, abs=1e-9)
    assert joint.at_20_c("40 mm", "20 °C", "23.6 um/m/K").size.m_as("mm") == 40
    assert found.temperature.m_as("degC") == pytest.approx(28)
    assert found.instrument_expansion is None
    steel = joint.published_expansion("steel")
    by_steel = joint.at_20_c("40 mm", "31 °C", steel.least, instrument_expansion=steel.least)
    assert by_steel.size.m_as("mm") == 40
    assert "Table B.6" in str(steel.source)
    # The kelvins of a difference are no temperature.
    with pytest.raises(hw.OutOfRangeError, match="outside -20 to 60 °C"):
        joint.at_20_c("40 mm", "8 K", "11.5 um/m/K")
    with pytest.raises(hw.UnitError, match="of another kind"):
        joint.at_20_c("40 mm", pint.Quantity(8, "mm"), "11.5 um/m/K")
    with pytest.raises(hw.UnitError, match="without a unit"):
        joint.at_20_c("40 mm", 28, "11.5 um/m/K")  # type: ignore[arg-type]


@pytest.mark.parametrize(
    ("size", "error", "code", "says"),
    [
        ("20", hw.TextError, "not-a-quantity", "`size` is \"20\""),
        ("H7", hw.TextError, "not-a-quantity", "no nominal size"),
        ("20,5 H7", hw.TextError, "not-a-quantity", "comma"),
        ("20 Q7", hw.TextError, "unknown-word", "`class` is \"Q7\""),
        ("20 H7/g6", hw.TextError, "unknown-word", "`fit`"),
        ("20 K9", hw.TextError, "unknown-word", "K3 to K8"),
        ("NaN H7", hw.TextError, "not-a-quantity", "no number"),
        ("-20 H7", hw.OutOfRangeError, "out-of-range", "`nominal` is -20 mm, not above 0 mm"),
        ("4000 H7", hw.OutOfRangeError, "out-of-range", "outside 0 to 3150 mm"),
        ("20 t6", hw.OutOfRangeError, "out-of-range", "not over 24 up to 3150 mm"),
    ],
)
def test_what_has_no_limits_is_refused_with_a_hint(
    size: str, error: type[hw.HubwrightError], code: str, says: str
) -> None:
    with pytest.raises(error) as caught:
        joint.limits(size)
    assert says in str(caught.value)
    assert "\nhint: " in str(caught.value)
    assert caught.value.code == code
    assert str(pickle.loads(pickle.dumps(caught.value))) == str(caught.value)


def test_a_window_that_is_none_and_a_fit_backwards_are_refused() -> None:
    with pytest.raises(hw.OutOfRangeError, match="`most_clearance` is 5 um, not above least_clearance 9 um"):
        joint.fits_for("20 mm", "9 um", "5 um")
    with pytest.raises(hw.UnitError, match="`least_clearance` is 9 without a unit"):
        joint.fits_for("20 mm", 9, "15 um")  # type: ignore[arg-type]
    with pytest.raises(hw.TextError, match="capitals"):
        joint.fit("20 g6/H7")
    with pytest.raises(hw.TextError, match="`metal`"):
        joint.published_expansion("wood")
    with pytest.raises(hw.UnitError, match="`size` is 20, not a size with a tolerance class: it is no text"):
        joint.limits(20)  # type: ignore[arg-type]


def test_results_cannot_be_changed() -> None:
    hole = joint.limits("20 H7")
    with pytest.raises(AttributeError):
        hole.upper_nm = 0  # type: ignore[misc]
