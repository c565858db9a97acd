"""Markings of wheels as a Python user meets them."""

import pytest

import hubwright as hw
from hubwright.errors import HubwrightError


def test_a_marking_is_read_into_typed_parts() -> None:
    marking = hw.wheel.read_marking("type 41 125 x 1 x 22.23 9A60S4BF 80 m/s RE2")
    assert str(marking) == "type 41 125 x 1 x 22.23 mm 9A 60 S 4 BF 80 m/s RE2"
    assert marking.abrasive is hw.Abrasive.ALUMINIUM_OXIDE
    assert marking.bond is hw.Bond.REINFORCED_RESIN
    assert marking.hole is not None and marking.hole.m_as("mm") == pytest.approx(22.23)
    assert marking.rim_speed is not None and marking.rim_speed.m_as("m/s") == 80
    assert marking.grain is not None and marking.grain.least.m_as("um") == pytest.approx(260)
    assert marking.grain.source.status == "from memory, unverified"
    assert marking.restrictions == [(hw.Restriction.NO_HAND_CUTTING_OFF, "not for hand-held cutting-off")]
    assert marking.stripe == "one red stripe"
    assert marking.unread == [] and marking.doubts == []


def test_diamond_is_told_from_alumina() -> None:
    marking = hw.wheel.read_marking("1A1 200-20-5-31.75 D126 C100 B")
    assert marking.abrasive is hw.Abrasive.DIAMOND and marking.concentration == 100
    assert marking.grain is not None
    assert (marking.grain.least.m_as("um"), marking.grain.greatest.m_as("um")) == pytest.approx((106, 125))


@pytest.mark.parametrize("text", ["", "A" * 201, 60, None])
def test_what_is_no_marking_is_told(text: object) -> None:
    with pytest.raises((HubwrightError, ValueError, TypeError)) as error:
        hw.wheel.read_marking(text)  # type: ignore[arg-type]
    assert "`text`" in str(error.value) and "hint: " in str(error.value)


def test_a_wheel_is_filled_and_never_made_faster() -> None:
    marking = hw.wheel.read_marking("A60K7V 40 m/s")
    wheel = marking.fill(hw.Wheel(diameter="200 mm", marked_rim_speed="35 m/s"))
    assert wheel.marked_rim_speed.m_as("m/s") == 35
    verdict = hw.check(hw.Mounting("a", wheel=wheel))
    assert verdict.finding("marking-disagrees").outcome is hw.Outcome.CAUTION
    assert marking.fill().bond is hw.Bond.VITRIFIED


def test_rows_with_a_marking_are_judged_by_it() -> None:
    rows = [{"name": "a", "wheel marking": "A60K7V 2850 rpm", "spindle greatest speed [rpm]": n} for n in (2800, 2900)]
    checked = hw.check_rows(rows)
    found = [row.verdict.finding("over-speed").outcome for row in checked]
    assert found == [hw.Outcome.PASS, hw.Outcome.REFUSE]
